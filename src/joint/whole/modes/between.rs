//! Plies between others: the clamp force goes through them too.

use super::seat::{across_the_grain, counted_on_timber, hole_under, sides};
use crate::error::Error;
use crate::joint::whole::Need;
use crate::joint::whole::case::{Case, CasePly};
use crate::joint::whole::outcome::{Outcomes, Turn};
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::surface::{SurfaceContact, SurfaceLimit, SurfaceOutcome, surface_pressure};
use crate::strength::timber::TimberWasher;
use crate::units::{Force, Length};

/// How much wider the pressed zone gets for each unit of thickness: twice the tangent of 30 degrees, the cone of Shigley's
/// chapter 8. The narrowest cone in use, and so the safe side: VDI 2230 spreads by 1.6 through washers, 45 degrees are 2.
const CONE: f64 = 1.154_700_5;

const MODE: Mode = Mode::Pressure;

/// Whether every ply between others bears the greatest force of the bolt. Only a ply that does not is shown: how far a
/// force spreads is too rough to stand beside others as a share of what is borne.
pub(super) fn check(case: &Case, force: Force, out: &mut Outcomes) {
    // The tapped part, if there is one, is the last.
    let last = case.plies.len().saturating_sub(1);
    for (index, own) in case.plies.iter().enumerate().take(last).skip(1) {
        if own.thickness.is_none() {
            // A sleeve goes through it, and takes the force.
            continue;
        }
        if own.timber.is_some() {
            timber(case, index, own, force, out);
        } else if force > Force::default() {
            metal(case, index, own, force, out);
        }
    }
}

fn metal(case: &Case, index: usize, own: &CasePly, force: Force, out: &mut Outcomes) {
    if !case.joint.stack.sleeves().is_empty() {
        let why = "a sleeve may press on it, whose faces are not described";
        out.missing(MODE, own.place, Need::Method(why));
        return;
    }
    let limit = limit(own, out);
    let (hole, width) = (
        own.ply.and_then(|ply| ply.hole),
        own.ply.and_then(|ply| ply.width),
    );
    if hole.is_none() {
        out.missing(MODE, own.place, Need::Hole);
    }
    let Some([face, cone]) = zone(case, index) else {
        return;
    };
    let (Some(limit), Some(_)) = (limit, hole) else {
        // Asked for together: whether it matters hangs on what is missing.
        if width.is_none() {
            out.missing(MODE, own.place, Need::Width);
        }
        return;
    };
    let reached = width.map_or(cone, |width| cone.min(width));
    let spread = pressed(own, reached, force, limit);
    turns(&spread, force, out);
    match spread {
        Err(need) => out.missing(MODE, own.place, need),
        Ok(check) if !check.holds() => out.check(check),
        // Without the load factor nobody knows the force: it is asked for together with that.
        Ok(_) if width.is_none() && is_factor_open(case) => {
            out.missing(MODE, own.place, Need::Width);
        }
        // In a ply as narrow as the face itself the force would not spread.
        Ok(_) if width.is_none() => {
            let narrow = pressed(own, face, force, limit);
            turns(&narrow, force, out);
            if !narrow.is_ok_and(|check| check.holds()) {
                out.missing(MODE, own.place, Need::Width);
            }
        }
        Ok(_) => {}
    }
}

fn is_factor_open(case: &Case) -> bool {
    case.level == Level::Design && case.is_pulled() && case.joint.load.load_factor.is_none()
}

/// The force that would just be borne.
fn turns(check: &Result<Check, Need>, force: Force, out: &mut Outcomes) {
    if let Ok(check) = check {
        out.turns_at(Turn::Bolt(force / check.utilisation.value));
    }
}

/// The pressure on a zone around the hole, or what is missing.
fn pressed(own: &CasePly, zone: Length, force: Force, limit: SurfaceLimit) -> Result<Check, Need> {
    let refused = |error: Error| Need::Refused(error.into());
    let hole = hole_under(own, zone).ok_or(Need::Hole)?;
    let contact = SurfaceContact::new(zone, hole).map_err(refused)?;
    match surface_pressure(force, contact, limit).map_err(refused)? {
        SurfaceOutcome::Bears(bears) => bears.check(own.place).map_err(refused),
        SurfaceOutcome::FallsIn(_) => Err(Need::Method(
            "its hole is as wide as what presses on it there: the ply beside it would have to bridge the hole, and no rule \
             here has that",
        )),
    }
}

/// What its material bears: of one of the caller's own without a surface pressure its yield strength, as it is pressed by
/// a ply and not by the rim of a head.
fn limit(own: &CasePly, out: &mut Outcomes) -> Option<SurfaceLimit> {
    let limit = own.material.ok_or(Need::Material).and_then(|material| {
        match (
            material.surface_limit(own.thickness),
            material.without_thickness().yields,
        ) {
            (Err(Need::SurfacePressure), Some(yields)) => {
                SurfaceLimit::yielding(yields).map_err(|error| Need::Refused(error.into()))
            }
            (limit, _) => limit,
        }
    });
    limit
        .map_err(|need| out.missing(MODE, own.place, need))
        .ok()
}

/// How wide the zone is that is pressed on a ply: at the face of head or nut, and where the cone from there reaches the
/// ply; the narrower of the two ends. None if no face is known, which its own check says.
fn zone(case: &Case, index: usize) -> Option<[Length; 2]> {
    let reached = sides(case).filter_map(|side| {
        let face = side.face.as_ref().ok()?.outer_min;
        let way = match side.place {
            Place::Head => case.plies.get(..index)?,
            _ => case.plies.get(index + 1..)?,
        };
        let deep = way.iter().filter_map(|ply| ply.thickness);
        let deep = deep.fold(Length::default(), |sum, own| sum + own);
        Some([face, face + CONE * deep])
    });
    reached.reduce(|[face, cone], [other, reached]| [face.min(other), cone.min(reached)])
}

/// Timber between others: steel plates beside it press as EN 1995-1-1 has them for washers; through timber alone, the
/// washers of that end do.
fn timber(case: &Case, index: usize, own: &CasePly, force: Force, out: &mut Outcomes) {
    // As under a washer: without a preload the load comes without the margin.
    let force = case.torque().map_or(case.along, |_| force);
    if force <= Force::default() {
        return;
    }
    let above = case.plies.get(..index).unwrap_or_default().iter().rev();
    let below = case.plies.get(index + 1..).unwrap_or_default().iter();
    let plates = [
        (Place::Head, above.clone().find(|ply| ply.timber.is_none())),
        (Place::Nut, below.clone().find(|ply| ply.timber.is_none())),
    ];
    for (end, plate) in plates {
        let washer = if let Some(plate) = plate {
            let Some(thickness) = plate.thickness else {
                let why = "a sleeve lies beside it, whose faces are not described";
                out.missing(MODE, own.place, Need::Method(why));
                continue;
            };
            if plate.ply.is_some_and(|ply| ply.hole.is_none()) {
                out.missing(MODE, plate.place, Need::Hole);
            }
            // A thread fills its hole.
            let hole = plate.ply.and_then(|ply| ply.hole);
            let hole = hole.unwrap_or(case.diameter);
            Some(TimberWasher::of_plate(thickness, hole, case.diameter))
        } else {
            let washer = case.seat_at(end).washer.flatten();
            washer.map(|washer| counted_on_timber(washer, case.diameter))
        };
        let check = across_the_grain(case, own, own.place, washer, force, out);
        if let Some(check) = &check {
            // Without a preload the greatest force has the margin in it as well.
            let margin = case.torque().map_or(case.joint.methods.margin, |_| 1.0);
            out.turns_at(Turn::Bolt(margin * force / check.utilisation.value));
        }
        out.checks.extend(check.filter(|check| !check.holds()));
    }
}
