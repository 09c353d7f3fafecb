//! What the clamp force holds: the plies on each other, and against slip.

use super::springs::Springs;
use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, JointPreload, Need, NotConcerned, Tightening};
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::slip::slip_resistance;
use crate::tension::JointDiagram;
use crate::units::Force;

pub(super) fn check(
    case: &Case,
    springs: Option<&Springs>,
    preload: Option<&JointPreload>,
    out: &mut Outcomes,
) {
    separation(case, springs, preload, out);
    slip(case, preload, out);
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
    let separation = match springs {
        Some(springs) => JointDiagram::new(springs.share, preload.in_service).map(|least| {
            (
                least.separation_load,
                "joint diagram (Shigley, 9th ed., Eqs. 8-24 to 8-30)",
            )
        }),
        None => Ok((
            preload.in_service,
            "bounds of the joint diagram for any stiffness",
        )),
    };
    let load = case.margin * case.joint.load.along;
    let check = separation.and_then(|(resistance, method)| {
        let check = Check::new(MODE, Place::Joint, load, resistance, Level::Nominal)?;
        Ok(check.by(method))
    });
    out.try_check(MODE, Place::Joint, check);
}

/// Slip of the face that takes most of the load.
fn slip(case: &Case, preload: Option<&JointPreload>, out: &mut Outcomes) {
    const MODE: Mode = Mode::Slip;
    if case.across <= Force::default() {
        out.not_concerned(MODE, NotConcerned::NoLoadAcross);
        return;
    }
    let Some(method) = case.joint.methods.slip else {
        out.not_concerned(MODE, NotConcerned::MaySlip);
        return;
    };
    let place = Place::Joint;
    let Some(preload) = preload else {
        out.missing(MODE, place, Need::ControlledPreload);
        return;
    };
    let stack = &case.joint.stack;
    if !stack.sleeves().is_empty() {
        let why = "the preload clamps a sleeve, not the plies around it";
        out.missing(MODE, place, Need::Method(why));
        return;
    }
    if case
        .planes
        .iter()
        .any(|plane| stack.gap_after(plane.after_ply).is_some())
    {
        let why = "the preload closes a gap before it clamps the faces";
        out.missing(MODE, place, Need::Method(why));
        return;
    }
    if preload.in_service <= Force::default() {
        out.find(Finding::Slips);
        return;
    }
    // Every face holds alike: the one that carries most slips first.
    for plane in &case.planes {
        let place = Place::Plane(plane.number);
        let check = slip_resistance(method, preload.in_service, 1, case.along).and_then(|slip| {
            out.work_at(place, || slip.derivation());
            slip.check(plane.load, case.level)
        });
        out.try_check(MODE, place, check);
    }
}
