//! What the practice of aircraft repair says of a bolt that is checked as one of an aircraft.

use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need};
use crate::parts::WasherStyle;
use crate::strength::bolt_tension::TensionMethod;
use crate::strength::check::{Mode, Place};
use crate::strength::code::mil_hdbk_5;
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
    yields(case, out);
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

/// The bolt must not yield at limit load either (14 CFR 25.305(a)), and the handbook has what breaks it.
fn yields(case: &Case, out: &mut Outcomes) {
    let why = match mil_hdbk_5::yields_late(&case.strength) {
        Some(true) => return,
        Some(false) => {
            "its yield strength is less than its tensile strength over 1.5: that it does not yield at limit load is not shown"
        }
        None => {
            "the yield strength of the bolt is not stated: that it does not yield at limit load is not shown"
        }
    };
    let methods = &case.joint.methods;
    let sheared = case.is_sheared() && matches!(methods.shear, ShearMethod::MilHdbk5 { .. });
    let pulled = case.is_pulled() && matches!(methods.tension, TensionMethod::MilHdbk5 { .. });
    for (mode, is_loaded) in [(Mode::BoltShear, sheared), (Mode::BoltTension, pulled)] {
        if is_loaded {
            out.missing(mode, Place::Bolt(1), Need::Method(why));
        }
    }
}
