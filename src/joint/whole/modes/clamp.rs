//! What the clamp force holds: the plies on each other, and against slip.

use super::springs::Springs;
use crate::error::Error;
use crate::joint::whole::case::Case;
use crate::joint::whole::material::CaseMaterial;
use crate::joint::whole::outcome::{Outcomes, Turn};
use crate::joint::whole::{Finding, JointPreload, Need, NotConcerned, Slip, Tightening};
use crate::preload::PreloadTarget;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::slip::{
    As4100Faces, BEST_CLASS, SlipFaces, SlipMethod, SlipPreload, slip_resistance,
};
use crate::tables::methods;
use crate::tension::JointDiagram;
use crate::units::Force;

/// Whether the faces are shown not to slip; none if nobody knows.
pub(super) fn check(
    case: &Case,
    springs: Option<&Springs>,
    preload: Option<&JointPreload>,
    out: &mut Outcomes,
) -> Option<bool> {
    separation(case, springs, preload, out);
    slip(case, preload, out)
}

const GAP: &str = "the preload closes a gap before it clamps the faces";

/// Whether a preload has to pull plies together first: a gap anywhere that no sleeve keeps open.
fn closes_a_gap(case: &Case) -> bool {
    case.joint.stack.open_gaps().next().is_some()
}

/// Whether the plies stay together under the load along the axis.
fn separation(
    case: &Case,
    springs: Option<&Springs>,
    preload: Option<&JointPreload>,
    out: &mut Outcomes,
) {
    const MODE: Mode = Mode::Separation;
    if !case.is_pulled() {
        out.not_concerned(MODE, NotConcerned::NoLoadAlong);
        return;
    }
    let Some(preload) = preload else {
        match case.joint.tightening {
            // A snug joint parts under its load, and the bolt carries it whole.
            Some(Tightening::Snug) => out.not_concerned(MODE, NotConcerned::Snug),
            _ => out.missing(MODE, Place::Joint, Need::Tightening),
        }
        return;
    };
    if preload.in_service <= Force::default() {
        out.find(Finding::NoPreloadLeft);
        return;
    }
    if closes_a_gap(case) {
        out.missing(MODE, Place::Joint, Need::Method(GAP));
        return;
    }
    let separation = match springs {
        Some(springs) => JointDiagram::new(springs.share, preload.in_service)
            .map(|least| (least.separation_load, methods::JOINT_DIAGRAM)),
        None => Ok((preload.in_service, methods::JOINT_DIAGRAM_BOUNDS)),
    };
    let load = case.margin * case.joint.load.along;
    let check = separation.and_then(|(resistance, method)| {
        Check::new(MODE, Place::Joint, load, resistance, Level::Nominal, method)
    });
    out.try_check(MODE, Place::Joint, check);
}

const BEYOND_STATICS: &str = "IS 800 10.4.6 allows more shear beside this tension than the clamp force holds that statics \
                              leaves: tighten, or take more bolts";

/// The slip classes are of structural steel, and none holds better than the best.
fn of_steel(case: &Case, method: SlipMethod, out: &mut Outcomes) {
    let stated = match method {
        SlipMethod::Stated { friction, .. } => Some(friction),
        SlipMethod::As4100 {
            faces: As4100Faces::Tested { slip_factor },
        } => Some(slip_factor),
        _ => None,
    };
    if let Some(friction) = stated {
        if friction > BEST_CLASS {
            let why = "the friction stated is above that of every class of the codes, 0.5: set this aside with the test \
                       that shows it";
            out.missing(Mode::Slip, Place::Joint, Need::Method(why));
        }
        return;
    }
    let is_other = |material: CaseMaterial| !material.is_carbon_steel();
    for own in &case.plies {
        if own.timber.is_some() || own.material.is_some_and(is_other) {
            let why = "the slip classes are of structural steel, and the ply is of another material: state its friction";
            out.missing(Mode::Slip, own.place, Need::Method(why));
        }
    }
}

/// Slip of the face that takes most of the load.
fn slip(case: &Case, preload: Option<&JointPreload>, out: &mut Outcomes) -> Option<bool> {
    const MODE: Mode = Mode::Slip;
    if case.across <= Force::default() {
        out.not_concerned(MODE, NotConcerned::NoLoadAcross);
        return preload.map(|preload| preload.in_service > Force::default());
    }
    let Slip::Resisted(method) = case.joint.methods.slip else {
        out.not_concerned(MODE, NotConcerned::MaySlip);
        return None;
    };
    let place = Place::Joint;
    let Some(preload) = preload else {
        out.missing(MODE, place, Need::ControlledPreload);
        return None;
    };
    if !case.joint.stack.sleeves().is_empty() {
        let why = "the preload clamps a sleeve, not the plies around it";
        out.missing(MODE, place, Need::Method(why));
        return None;
    }
    if closes_a_gap(case) {
        out.missing(MODE, place, Need::Method(GAP));
        return None;
    }
    if preload.in_service <= Force::default() {
        out.find(Finding::Slips);
        return Some(false);
    }
    let answer = counted_on(case, method, preload);
    let force = out.attempt(MODE, place, answer)?;
    // A method for loads in service takes the tension in service as well.
    let load = &case.joint.load;
    let factor = if method.wants_factored_loads(case.level) {
        load.factor(case.level)
    } else {
        load.shock_factor
    };
    let along = factor * load.along;
    out.turns_at(Turn::Along(force.force() / factor));
    if force.force() <= along {
        // The pull takes all of the clamp force.
        out.find(Finding::Slips);
        return Some(false);
    }
    of_steel(case, method, out);
    let hole = super::holes::slip_hole(case, method, out);
    let mut held = Some(true);
    // Every face holds alike: the one that carries most slips first.
    for plane in case.planes.iter().filter(|plane| plane.share > 0.0) {
        let place = Place::Plane(plane.number);
        let faces = SlipFaces {
            count: 1,
            hole,
            fillers: plane.packings,
        };
        let check = slip_resistance(method, force, faces, along).and_then(|slip| {
            out.work_at(place, || slip.derivation());
            let load = if method.wants_factored_loads(case.level) {
                plane.load
            } else {
                plane.share * (case.joint.load.shock_factor * case.joint.load.across)
            };
            let mut check = slip.check(load, case.level)?;
            check.place = place;
            if check.holds() && slip.is_beyond_statics(load, case.level)? {
                out.missing(MODE, place, Need::Method(BEYOND_STATICS));
                held = None;
            }
            Ok(check)
        });
        let check = out.attempt(MODE, place, check);
        held = match (held, &check) {
            (_, None) => None,
            (held, Some(check)) => held.map(|held| held && check.holds()),
        };
        out.checks.extend(check);
    }
    held
}

/// The clamp force that the method counts on: what its code specifies, or the least in service.
fn counted_on(
    case: &Case,
    method: SlipMethod,
    preload: &JointPreload,
) -> Result<SlipPreload, Error> {
    method.covers(case.strength.grade)?;
    if method.counts_on_its_own() {
        // A joint that is tightened less has less, one that is tightened more no more by the code.
        let specified = method.specified_preload(case.thread, &case.strength)?;
        return Ok(if preload.in_service >= specified {
            SlipPreload::Specified(specified)
        } else {
            SlipPreload::Least(preload.in_service)
        });
    }
    let target = case.torque().map(|torque| torque.target);
    // The codes tighten to a tenth above (EN 1090-2, 8.5.1): that much may be lost and no more. Who aims at something else has no
    // such tenth.
    let (specified, enough) = match method {
        SlipMethod::Aisc360 { edition, .. } => (PreloadTarget::AiscJ31 { edition }, 0.9),
        SlipMethod::En1993 { .. } if target == Some(PreloadTarget::En1993) => {
            (PreloadTarget::En1993, 0.9)
        }
        SlipMethod::En1993 { .. } => (PreloadTarget::En1993, 1.0),
        _ => return Ok(SlipPreload::Least(preload.in_service)),
    };
    let aim = specified.aim(case.thread, &case.strength)?;
    let force = aim.least_required.unwrap_or(aim.preload) + preload.thermal[0];
    if preload.in_service < enough * force {
        return Ok(SlipPreload::Least(preload.in_service));
    }
    Ok(SlipPreload::Specified(force.max(Force::default())))
}
