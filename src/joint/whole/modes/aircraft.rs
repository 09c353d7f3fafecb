//! What the practice of aircraft repair says of a bolt that is checked as one of an aircraft.

use crate::joint::whole::Finding;
use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::parts::WasherStyle;
use crate::strength::bolt_tension::TensionMethod;
use crate::strength::check::Place;
use crate::strength::shear::ShearMethod;
use crate::units::{Length, SAME_LENGTH, inches};

/// FAA AC 43.13-1B, 7-41: the diameter of No. 10.
const LEAST: Length = inches(0.190);

const fn is_spring_lock(style: WasherStyle) -> bool {
    matches!(
        style,
        WasherStyle::SpringLockRegular
            | WasherStyle::SpringLockHeavy
            | WasherStyle::SpringLockExtraDuty
            | WasherStyle::SpringLockHighCollar
    )
}

pub(super) fn check(case: &Case, out: &mut Outcomes) {
    let methods = &case.joint.methods;
    if !matches!(methods.shear, ShearMethod::MilHdbk5 { .. })
        && !matches!(methods.tension, TensionMethod::MilHdbk5 { .. })
    {
        return;
    }
    if case.diameter < LEAST - SAME_LENGTH {
        out.find(Finding::SmallForStructure);
    }
    for place in [Place::Head, Place::Nut] {
        let washers = case.washers_at(place);
        let mut styles = washers.iter().filter_map(|washer| washer.style);
        if styles.any(is_spring_lock) {
            out.find(Finding::LockWasherInStructure {
                place,
                dangerous: case.joint.environment.dangerous_if_lost,
            });
        }
    }
}
