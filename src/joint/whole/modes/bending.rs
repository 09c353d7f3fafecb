//! Bending of the bolt, where gaps or play let it bend.

use alloc::vec::Vec;
use core::f64::consts::PI;

use crate::joint::whole::case::{Case, CasePlane, CasePly};
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Need, NotConcerned};
use crate::math::sqrt;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::code::en_1993;
use crate::strength::pin::{
    BoltEnds, EnPin, PinJoint, PinStrengths, SingleShear, en_1993_pin, single_shear_bending,
    yielding_pin,
};
use crate::strength::shear::{ReductionNeed, ShearMethod};
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
/// its tensile stress area. Packing carries nothing, so it keeps the plies apart as a gap does; alone, between plies
/// that touch it, it counts from a third of the diameter (EN 1993-1-8, 3.6.1(12)), where the method takes nothing off
/// the shear for it.
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
    if open_gap(case) <= Length::default() && !case.joint.environment.rotates && !is_packed(case) {
        out.not_concerned(MODE, NotConcerned::PliesTouch);
        return Bending::default();
    }
    let place = Place::Bolt(1);
    if case.tapped().is_some() {
        let why = "how far a screw bends at a tapped part is not modelled";
        out.missing(MODE, place, Need::Method(why));
        return Bending::default();
    }
    match case.planes.as_slice() {
        [only] => single(case, [only; 2], gap, out),
        // Packing between the two plies that pull passes the load on: they are as far apart as it is thick.
        [first, .., last] if are_packing(case, first.after_ply + 1..=last.after_ply) => {
            single(case, [first, last], gap, out)
        }
        [first, second] if (first.share - second.share).abs() < 1e-9 => {
            double(case, [first, second], gap, out)
        }
        _ => {
            let why = "a method is known for one plane, and for two that carry alike: gaps and play bend other bolts too";
            out.missing(MODE, place, Need::Method(why));
            Bending::default()
        }
    }
}

/// The thickness of one ply whose load would lie as far from the plane as that of the plies of one side: of a single
/// ply its own. The plies come from the plane outward; packing beside it belongs to the gap. Of their load the share
/// `counted` next to the plane is taken.
fn side(case: &Case, outward: &[usize], counted: f64) -> Length {
    let stack = &case.joint.stack;
    let pulls = stack.pulls();
    let pull = |ply: usize| pulls.get(ply - 1).map_or(0.0, |pull| pull.abs());
    let whole: f64 = outward.iter().map(|&ply| pull(ply)).sum();
    let (mut at, mut taken, mut moment) = (Length::default(), 0.0, Length::default());
    let plies = outward.iter().skip_while(|&&ply| is_packing(case, ply));
    let mut before: Option<usize> = None;
    for &ply in plies {
        if let Some(gap) = before.and_then(|before| stack.gap_after(before.min(ply))) {
            at += gap.max;
        }
        before = Some(ply);
        let thickness = stack
            .plies()
            .get(ply - 1)
            .map_or(Length::default(), |own| own.thickness.max);
        let share = pull(ply).min(counted * whole - taken).max(0.0);
        if share > 0.0 {
            let borne = thickness * (share / pull(ply));
            moment += share * (at + 0.5 * borne);
            taken += share;
        }
        at += thickness;
    }
    // Of every side something is taken: a plane is loaded by what pulls beside it.
    2.0 * (moment / taken)
}

/// How many times the load across a share of it is: plies that pull may pull more than all of it, and shares that are
/// rounded down are all of it.
const fn times(share: f64) -> f64 {
    share.max(1.0)
}

/// Two plies that pull, with a plane at the side of each: nothing holds the ends but they, so they are taken as free to
/// tilt.
fn single(case: &Case, planes: [&CasePlane; 2], gap: Length, out: &mut Outcomes) -> Bending {
    const MODE: Mode = Mode::BoltBending;
    let place = Place::Bolt(1);
    let [first, second] = planes;
    let load = times(first.share) * case.across;
    let sides = [before(first.after_ply, 0), after(case, second.after_ply)];
    let [first, second] = sides.map(|plies| side(case, &plies, 1.0));
    let bent = SingleShear::new(bending_diameter(case), first, second, gap)
        .and_then(|joint| single_shear_bending(&joint, load, BoltEnds::Free));
    let Some(bent) = out.attempt(MODE, place, bent) else {
        return Bending::default();
    };
    match case.joint.methods.shear {
        ShearMethod::DistortionEnergy { design_factor, .. } => {
            let Some(yield_strength) = case.strength.yield_strength else {
                out.missing(MODE, place, Need::Method("the grade has no yield strength"));
                return Bending::default();
            };
            out.work(|| bent.derivation());
            let check = bent.yield_check(yield_strength, design_factor, case.level);
            let check = out.attempt(MODE, place, check);
            out.checks.extend(check.clone());
            Bending {
                check,
                combined: false,
            }
        }
        ShearMethod::En1993 => {
            let Some((pin_yield, pin_tensile)) = en_strengths(case, out) else {
                return Bending::default();
            };
            let Some([bending, combined]) =
                out.attempt(MODE, place, bent.en_checks(pin_yield, pin_tensile))
            else {
                return Bending::default();
            };
            let working = bent.en_derivation(pin_yield, pin_tensile);
            if let Some(working) = out.attempt(MODE, place, working) {
                out.work(|| working);
            }
            out.checks.extend([bending.clone(), combined]);
            if case.joint.environment.rotates {
                let why = "EN 1993-1-8 has the limits of a pivot in service for pins in double shear only";
                out.missing(MODE, place, Need::Method(why));
            }
            Bending {
                check: Some(bending),
                combined: true,
            }
        }
        _ => {
            out.missing(MODE, place, Need::Method(NO_BENDING));
            Bending::default()
        }
    }
}

/// Two planes that carry alike: the middle ply between the outer two.
fn double(case: &Case, planes: [&CasePlane; 2], gap: Length, out: &mut Outcomes) -> Bending {
    const MODE: Mode = Mode::BoltBending;
    let times = times(2.0 * planes[0].share);
    let [first, second] = planes.map(|plane| plane.after_ply);
    let outer = side(case, &before(first, 0), 1.0).max(side(case, &after(case, second), 1.0));
    // A quarter of a single inner ply is the arm of the half of its load.
    let inner: Vec<usize> = (first + 1..=second).collect();
    let inner = side(case, &inner, 0.5).max(side(case, &before(second, first), 0.5));
    let diameter = bending_diameter(case);
    let pin = PinJoint::new(diameter, outer, 2.0 * inner, gap);
    let Some(pin) = out.attempt(MODE, Place::Bolt(1), pin) else {
        return Bending::default();
    };
    let count = case.joint.stack.plies().len();
    let outer = thinnest(case, 0..first).min(thinnest(case, second..count));
    let thin = PinJoint::new(diameter, outer, thinnest(case, first..second), gap);
    match out.attempt(MODE, Place::Bolt(1), thin) {
        Some(thin) => bent(case, &pin, &thin, times, out),
        None => Bending::default(),
    }
}

/// Least thickness of the plies of one side that bear: not of packing.
fn thinnest(case: &Case, plies: core::ops::Range<usize>) -> Length {
    let plies = case.joint.stack.plies().get(plies).unwrap_or_default();
    let bear = plies.iter().filter(|ply| ply.pull != Some(0.0));
    bear.fold(Length::default(), |sum, ply| sum + ply.thickness.min)
}

const NO_BENDING: &str = "the method for shear gives no resistance of a bolt in bending";

/// The diameter that bends: that of the stress area, if thread may lie in a plane.
fn bending_diameter(case: &Case) -> Length {
    if case.thread_in_planes() {
        from_base(sqrt(4.0 / PI * case.loads.tensile_stress_area.value))
    } else {
        case.diameter
    }
}

fn bent(case: &Case, pin: &PinJoint, thin: &PinJoint, times: f64, out: &mut Outcomes) -> Bending {
    const MODE: Mode = Mode::BoltBending;
    let place = Place::Bolt(1);
    let (level, load) = (case.level, times * case.across);
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
            if let Some(check) = &check {
                out.check(check.clone());
            }
            Bending {
                check,
                combined: false,
            }
        }
        (ShearMethod::En1993, Level::Design) => en_bent(case, pin, thin, times, out),
        _ => {
            out.missing(MODE, place, Need::Method(NO_BENDING));
            Bending::default()
        }
    }
}

fn en_strengths(case: &Case, out: &mut Outcomes) -> Option<(Stress, Stress)> {
    let grade = case.strength.grade;
    let strengths =
        en_1993::yield_strength(grade).and_then(|fyb| Ok((fyb, en_1993::tensile_strength(grade)?)));
    out.attempt(Mode::BoltBending, Place::Bolt(1), strengths)
}

fn en_bent(
    case: &Case,
    pin: &PinJoint,
    thin: &PinJoint,
    times: f64,
    out: &mut Outcomes,
) -> Bending {
    const MODE: Mode = Mode::BoltBending;
    let place = Place::Bolt(1);
    let ply_yield = weakest_ply(case, MODE, out);
    let strengths = en_strengths(case, out);
    let (Some(ply_yield), Some((pin_yield, pin_tensile))) = (ply_yield, strengths) else {
        return Bending::default();
    };
    let strengths = PinStrengths {
        pin_yield,
        pin_tensile,
        ply_yield,
    };
    let Some(pin) = out.attempt(MODE, place, en_1993_pin(pin, &strengths)) else {
        return Bending::default();
    };
    out.work(|| pin.derivation());
    let Some(checks) = out.attempt(MODE, place, pin.checks(times * case.across)) else {
        return Bending::default();
    };
    let mut bending = Bending::default();
    // Shear and bearing of plies have their own checks.
    for check in checks {
        match check.mode {
            Mode::BoltBending => bending.check = Some(check.clone()),
            Mode::Combined => bending.combined = true,
            _ => continue,
        }
        out.check(check);
    }
    if case.joint.environment.rotates {
        if let Some(thin) = out.attempt(MODE, place, en_1993_pin(thin, &strengths)) {
            in_service(case, &pin, &thin, times, out);
        }
    }
    bending
}

/// A pivot is taken out and put back: Table 3.10 has limits in service for it, at the characteristic load. The
/// thickest plies bend it most, the thinnest bear least.
fn in_service(case: &Case, thick: &EnPin, thin: &EnPin, times: f64, out: &mut Outcomes) {
    const MODE: Mode = Mode::BoltBending;
    let service = times * case.joint.load.shock_factor * case.joint.load.across;
    for (pin, mode, name) in [
        (thick, MODE, "thickest plies"),
        (thin, Mode::Bearing, "thinnest plies"),
    ] {
        let Some(checks) = out.attempt(mode, Place::Bolt(1), pin.service_checks(service)) else {
            continue;
        };
        out.checks
            .extend(checks.into_iter().filter(|check| check.mode == mode));
        let hole = widest_hole(case).filter(|_| mode == Mode::Bearing);
        if let Ok(working) = pin.service_derivation(service, hole) {
            out.work(|| {
                let title = alloc::format!("{}, {name}", working.title());
                working.titled(title)
            });
        }
    }
    // A hole that is not known is missing with the bearing of its ply.
    if let Some(hole) = widest_hole(case) {
        let check = thin.contact_check(service, hole);
        out.try_check(Mode::Bearing, Place::Joint, check);
    }
}

/// The widest hole of the plies that bear, if every one is known.
fn widest_hole(case: &Case) -> Option<Length> {
    let mut plies = case.plies.iter().filter(|ply| ply.pulls());
    plies.try_fold(Length::default(), |widest, own| {
        Some(widest.max(own.ply?.hole?))
    })
}

/// The plies before a plane, from it towards the head, down to one that no longer counts.
fn before(plane: usize, down_to: usize) -> Vec<usize> {
    (down_to + 1..=plane).rev().collect()
}

/// The plies behind a plane, from it towards the nut.
fn after(case: &Case, plane: usize) -> Vec<usize> {
    (plane + 1..=case.joint.stack.plies().len()).collect()
}

fn is_packing(case: &Case, ply: usize) -> bool {
    let own = case.joint.stack.plies().get(ply - 1);
    own.is_some_and(|own| own.pull == Some(0.0))
}

/// Whether these plies are packing, every one.
fn are_packing(case: &Case, mut plies: core::ops::RangeInclusive<usize>) -> bool {
    plies.all(|ply| is_packing(case, ply))
}

/// Whether packing too thick to pass over lies at a plane, and the method for shear has no rule for it.
fn is_packed(case: &Case) -> bool {
    let method = case.joint.methods.shear;
    let needs = method.needs(case.thread, case.strength.grade);
    !needs.contains(ReductionNeed::Packing)
        && case
            .planes
            .iter()
            .any(|plane| plane.share > 0.0 && 3.0 * plane.packing > case.diameter)
}

/// The widest gap at a shear plane, beside packing as well as at the plane itself.
fn open_gap(case: &Case) -> Length {
    let planes = case.planes.iter();
    let gaps = planes.map(|plane| gap_beside(case, plane.after_ply));
    gaps.fold(Length::default(), Length::max)
}

/// The greatest distance of the plies that pull at a shear plane: gap and packing.
fn widest_gap(case: &Case) -> Length {
    let planes = case.planes.iter();
    let apart = planes.map(|plane| gap_beside(case, plane.after_ply) + plane.packing);
    apart.fold(Length::default(), Length::max)
}

/// The gaps at a plane and beside the packing there, with the end play of plies on sleeves that end there, which may
/// lie all on one side. In a counterbore over its thread a tapped part does not bear on the screw either.
fn gap_beside(case: &Case, plane: usize) -> Length {
    let none = Length::default();
    let stack = &case.joint.stack;
    let gap_after = |ply: usize| stack.gap_after(ply).map_or(none, |gap| gap.max);
    let plays = stack.sleeves().iter();
    let plays = plays.filter(|sleeve| sleeve.last_ply == plane || sleeve.first_ply == plane + 1);
    let plays = plays.fold(none, |sum, sleeve| sum + sleeve.play.max.max(none));
    let towards_head = (1..=plane).rev().take_while(|&ply| is_packing(case, ply));
    let towards_nut = (plane + 1..=stack.plies().len()).take_while(|&ply| is_packing(case, ply));
    let gap = towards_head.fold(gap_after(plane) + plays, |sum, ply| {
        sum + gap_after(ply - 1)
    });
    let counterbore = match stack.tapped_part() {
        Some(part) if towards_nut.clone().count() == stack.plies().len().saturating_sub(plane) => {
            part.counterbore.max
        }
        _ => none,
    };
    towards_nut.fold(gap + counterbore, |sum, ply| sum + gap_after(ply))
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
    // Structural steels have theirs by thickness; around a sleeve none is known.
    let material = match ply.thickness {
        Some(thickness) => material
            .at_thickness(thickness)
            .map_err(|_| Need::YieldStrength)?,
        None => material.without_thickness(),
    };
    material.yields.ok_or(Need::YieldStrength)
}
