//! Tension, shear and bending of the bolt together, those that act.

use super::bending::Bending;
use super::shear::Shear;
use super::tension::Tension;
use crate::joint::whole::NotConcerned;
use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::parts::Zone;
use crate::strength::check::{Mode, Place};
use crate::strength::interaction::interaction;
use crate::units::Ratio;

pub(super) fn check(
    case: &Case,
    shear: &Shear,
    bending: &Bending,
    tension: &Tension,
    out: &mut Outcomes,
) {
    const MODE: Mode = Mode::Combined;
    let none = Ratio::from(0.0);
    let bent = bending
        .check
        .as_ref()
        .map_or(none, |check| check.utilisation);
    let pulled = tension.code.as_ref().map(|check| check.utilisation);
    // A pin by EN 1993-1-8 has shear and bending together already.
    let done = !case.is_pulled() && (bent <= none || bending.combined);
    if !case.is_sheared() || done {
        out.not_concerned(MODE, NotConcerned::OneLoad);
        return;
    }
    // What one of them lacks is listed with it; together they lack the same.
    let lacks = !shear.complete || case.is_pulled() && pulled.is_none();
    if lacks {
        let lacking = out
            .missing
            .iter()
            .rev()
            .find(|missing| matches!(missing.mode, Mode::BoltShear | Mode::BoltTension));
        if let Some(need) = lacking.map(|missing| missing.need.clone()) {
            out.missing(MODE, Place::Bolt(1), need);
        }
        return;
    }
    let used = shear.planes.iter().map(|check| check.utilisation);
    let worst = used.fold(none, Ratio::max);
    // What any plane may cut decides the exponents.
    let zone = if case.thread_in_planes() {
        Zone::Thread
    } else {
        Zone::Shank
    };
    let together = interaction(
        case.joint.methods.interaction,
        worst,
        pulled.unwrap_or(none),
        bent,
        zone,
    );
    let check = together.and_then(|together| {
        out.work(|| together.derivation());
        together.check(case.level)
    });
    out.try_check(MODE, Place::Bolt(1), check);
}
