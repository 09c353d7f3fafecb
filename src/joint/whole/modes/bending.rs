//! Bending of the bolt, where gaps or play let it bend.

use core::f64::consts::PI;

use crate::joint::JointPly;
use crate::joint::whole::case::{Case, CasePly};
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Need, NotConcerned};
use crate::math::sqrt;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::pin::{PinJoint, PinStrengths, en_1993_pin, yielding_pin};
use crate::strength::shear::{ShearMethod, en_tensile_strength, en_yield_strength};
use crate::units::{Length, Stress, from_base};

/// What bending takes of the bolt.
#[derive(Default)]
pub(super) struct Bending {
    pub(super) check: Option<Check>,
    /// Whether the method has shear and bending together already.
    pub(super) combined: bool,
}

/// Bending of a bolt across gaps, or of a pivot, which nothing clamps.
///
/// With the plies at their greatest thickness and the wider gap on both sides; neither a sleeve over the
/// bolt nor the clamping of its ends is counted on. If a plane may cut thread, the whole bolt bends as
/// its tensile stress area.
pub(super) fn check(case: &Case, out: &mut Outcomes) -> Bending {
    const MODE: Mode = Mode::BoltBending;
    if !case.is_sheared() {
        out.not_concerned(MODE, NotConcerned::NoLoadAcross);
        return Bending::default();
    }
    if case.has_timber() {
        // In timber the bolt bends within its yield, which has a check of its own.
        out.not_concerned(MODE, NotConcerned::TimberElsewhere);
        return Bending::default();
    }
    let gap = widest_gap(case);
    if gap <= Length::default() && !case.joint.environment.rotates {
        out.not_concerned(MODE, NotConcerned::PliesTouch);
        return Bending::default();
    }
    let place = Place::Bolt(1);
    let mut none = |why: &'static str| {
        out.missing(MODE, place, Need::Method(why));
        Bending::default()
    };
    if case.tapped().is_some() {
        return none("how far a screw bends at a tapped part is not modelled");
    }
    let [first, second] = case.planes.as_slice() else {
        return none("only double shear has a method here: gaps and play bend other bolts too");
    };
    if (first.share - second.share).abs() > 1e-9 {
        return none("the two shear planes carry unequal loads");
    }
    let stack = &case.joint.stack;
    let thickness = |plies: &[JointPly]| {
        let each = plies.iter().map(|ply| ply.thickness.max);
        each.fold(Length::default(), |sum, thickness| sum + thickness)
    };
    let plies = stack.plies();
    let (first, second) = (first.after_ply, second.after_ply);
    let (Some(before), Some(inside), Some(after)) = (
        plies.get(..first),
        plies.get(first..second),
        plies.get(second..),
    ) else {
        return Bending::default();
    };
    // Gaps between the plies of one side put its load further out.
    let apart = |plies: core::ops::Range<usize>| {
        let gaps = plies.filter_map(|ply| stack.gap_after(ply));
        gaps.fold(Length::default(), |sum, gap| sum + gap.max)
    };
    let outer = (thickness(before) + apart(1..first))
        .max(thickness(after) + apart(second + 1..plies.len()));
    let pin = PinJoint::new(bending_diameter(case), outer, thickness(inside), gap);
    let Some(pin) = out.attempt(MODE, place, pin) else {
        return Bending::default();
    };
    bent(case, &pin, out)
}

/// The diameter that bends: that of the stress area, if thread may lie in a plane.
fn bending_diameter(case: &Case) -> Length {
    if case.thread_in_planes() {
        from_base(sqrt(4.0 / PI * case.loads.tensile_stress_area.value))
    } else {
        case.diameter
    }
}

fn bent(case: &Case, pin: &PinJoint, out: &mut Outcomes) -> Bending {
    const MODE: Mode = Mode::BoltBending;
    let place = Place::Bolt(1);
    let (level, load) = (case.level, case.across);
    match (case.joint.methods.shear, level) {
        (
            ShearMethod::DistortionEnergy { design_factor, .. },
            Level::Allowable | Level::Nominal,
        ) => {
            let Some(yield_strength) = case.strength.yield_strength else {
                out.missing(MODE, place, Need::Method("the grade has no yield strength"));
                return Bending::default();
            };
            let check = yielding_pin(pin, yield_strength, design_factor).and_then(|pin| {
                out.work(|| pin.derivation());
                pin.check(load, level)
            });
            let check = out.attempt(MODE, place, check);
            if let Some(check) = check {
                out.check(check);
            }
            Bending {
                check,
                combined: false,
            }
        }
        (ShearMethod::En1993, Level::Design) => en_bent(case, pin, out),
        _ => {
            out.missing(
                MODE,
                place,
                Need::Method("the method for shear gives no resistance of a bolt in bending"),
            );
            Bending::default()
        }
    }
}

fn en_bent(case: &Case, pin: &PinJoint, out: &mut Outcomes) -> Bending {
    const MODE: Mode = Mode::BoltBending;
    let place = Place::Bolt(1);
    let Some(ply_yield) = weakest_ply(case, MODE, out) else {
        return Bending::default();
    };
    let strengths = en_yield_strength(case.strength.grade)
        .and_then(|pin_yield| Ok((pin_yield, en_tensile_strength(case.strength.grade)?)));
    let Some((pin_yield, pin_tensile)) = out.attempt(MODE, place, strengths) else {
        return Bending::default();
    };
    let strengths = PinStrengths {
        pin_yield,
        pin_tensile,
        ply_yield,
        replaceable: false,
    };
    let checks = en_1993_pin(pin, &strengths).and_then(|pin| {
        out.work(|| pin.derivation());
        pin.checks(case.across)
    });
    let Some(checks) = out.attempt(MODE, place, checks) else {
        return Bending::default();
    };
    let mut bending = Bending::default();
    // Shear and bearing of plies have their own checks.
    for check in checks {
        match check.mode {
            Mode::BoltBending => bending.check = Some(check),
            Mode::Combined => bending.combined = true,
            _ => continue,
        }
        out.check(check);
    }
    bending
}

/// The greatest distance of the plies at a shear plane: its gap, and with it the end play of plies on
/// sleeves that end there, which may lie all on one side.
fn widest_gap(case: &Case) -> Length {
    let none = Length::default();
    let stack = &case.joint.stack;
    let at_plane = |plane: usize| {
        let sleeves = stack.sleeves().iter();
        let plays = sleeves
            .filter(|sleeve| sleeve.last_ply == plane || sleeve.first_ply == plane + 1)
            .map(|sleeve| sleeve.play.max.max(none));
        let gap = stack.gap_after(plane).map_or(none, |gap| gap.max);
        plays.fold(gap, |sum, play| sum + play)
    };
    let planes = case.planes.iter().map(|plane| at_plane(plane.after_ply));
    planes.fold(none, Length::max)
}

/// The least yield strength of the plies that bear, if all are known; what is missing is listed for the mode.
pub(super) fn weakest_ply(case: &Case, mode: Mode, out: &mut Outcomes) -> Option<Stress> {
    let mut weakest: Option<Stress> = None;
    let mut all = true;
    for ply in case.plies.iter().filter(|ply| ply.pulls()) {
        match yield_of(ply) {
            Ok(strength) => {
                weakest = Some(weakest.map_or(strength, |least| least.min(strength)));
            }
            Err(need) => {
                out.missing(mode, ply.place, need);
                all = false;
            }
        }
    }
    weakest.filter(|_| all)
}

fn yield_of(ply: &CasePly) -> Result<Stress, Need> {
    let material = ply.material.ok_or(Need::Material)?;
    material.yield_strength.ok_or(Need::YieldStrength)
}
