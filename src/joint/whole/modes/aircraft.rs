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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::joint::{Joint, JointMethods};
    use crate::units::ksi;

    /// FAA AC 43.13-1B, 7-41: nothing smaller than No. 10 in structure; of what is no aircraft nothing is said. One of the two
    /// methods is enough.
    #[test]
    fn small_bolts_are_told_of_in_aircraft() {
        let aircraft = JointMethods::mil_hdbk_5(ksi(75.0));
        let usual = JointMethods::machine_design(2.0);
        let sheared = JointMethods {
            tension: usual.tension,
            ..aircraft
        };
        let pulled = JointMethods {
            shear: usual.shear,
            interaction: usual.interaction,
            ..aircraft
        };
        for (methods, told) in [
            (aircraft, true),
            (sheared, true),
            (pulled, true),
            (usual, false),
        ] {
            for (thread, small) in [("M4", true), ("M5", false)] {
                let said = Joint::builder(thread).ply("a", "3 mm").ply("b", "3 mm");
                let joint = said.no_washers().across("100 N").methods(methods).build();
                let found = joint.unwrap().check().unwrap().findings;
                let is_told = found.contains(&Finding::SmallForStructure);
                assert_eq!(is_told, told && small, "{thread}: {:?}", methods.shear);
            }
        }
    }

    /// 7-87: no spring lock washers in structure, under head or nut; others may be there.
    #[test]
    fn spring_lock_washers_are_told_of_in_aircraft() {
        let told = |methods, style| {
            let thickness = crate::spread::Spread::exact(crate::units::millimetres(1.6));
            let mut washer = crate::joint::JointWasher::new("washer", thickness);
            washer.style = Some(style);
            let said = Joint::builder("1/4-28 UNF")
                .ply("a", "3 mm")
                .ply("b", "3 mm");
            let said = said.stack(|stack| {
                let stack = stack.washer_under_head(washer.clone());
                stack.washers_under_nut(washer.clone(), 1)
            });
            let joint = said.across("100 N").methods(methods).build();
            let found = joint.unwrap().check().unwrap().findings;
            let places = found.iter().filter_map(|own| match own {
                Finding::LockWasherInStructure { place, .. } => Some(*place),
                _ => None,
            });
            places.collect::<alloc::vec::Vec<_>>()
        };
        let aircraft = JointMethods::mil_hdbk_5(ksi(75.0));
        let both = [Place::Head, Place::Nut];
        let spring = WasherStyle::SpringLockRegular;
        assert_eq!(told(aircraft, spring), both);
        assert_eq!(told(JointMethods::machine_design(2.0), spring), []);
        assert_eq!(told(aircraft, WasherStyle::TypeANarrow), []);
    }
}
