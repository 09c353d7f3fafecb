//! Shear of the bolt, plane by plane.

use alloc::vec::Vec;

use crate::joint::whole::NotConcerned;
use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::strength::check::{Check, Mode, Place};
use crate::strength::shear::{LoadedPlane, PlaneRule, ShearReductions, shear_resistance};

/// The check of each plane that has one, with its number.
pub(super) fn check(case: &Case, out: &mut Outcomes) -> Vec<(usize, Check)> {
    let mut found = Vec::new();
    if !case.is_sheared() {
        out.not_concerned(Mode::BoltShear, NotConcerned::NoLoadAcross);
        return found;
    }
    for plane in &case.planes {
        let place = Place::Plane(plane.number);
        let alone = LoadedPlane {
            zone: plane.zone,
            share: 1.0,
        };
        let shear = shear_resistance(
            case.thread,
            &case.strength,
            &[alone],
            PlaneRule::Each,
            case.joint.methods.shear,
            &ShearReductions::default(),
        );
        let Some(shear) = out.attempt(Mode::BoltShear, place, shear) else {
            continue;
        };
        out.work_at(place, || shear.derivation());
        let check = shear.resistance.at(case.level).and_then(|resistance| {
            Check::new(Mode::BoltShear, place, plane.load, resistance, case.level)
        });
        if let Some(check) = out.attempt(Mode::BoltShear, place, check) {
            let check = check
                .by(case.joint.methods.shear.name())
                .warned(shear.cautions());
            out.check(check);
            found.push((plane.number, check));
        }
    }
    found
}
