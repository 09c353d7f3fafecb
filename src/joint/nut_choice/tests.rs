//! Each environment has its nut, and what is refused.

use super::*;
use crate::units::{celsius, pound_force_inches};
use alloc::string::ToString;

fn choose(thread: &str, environment: Environment) -> NutChoice {
    NutChoice::new(&thread.parse().unwrap(), &environment).unwrap()
}

fn best(thread: &str, environment: Environment) -> Option<Locking> {
    choose(thread, environment)
        .best()
        .map(|option| option.locking)
}

#[test]
fn each_environment_has_its_nut() {
    let calm = Environment::workshop();
    let shaken = Environment {
        vibration: true,
        ..calm
    };
    for thread in ["1/2-13 UNC", "M12"] {
        assert_eq!(best(thread, calm), Some(Locking::None));
        assert_eq!(best(thread, shaken), Some(Locking::Insert));
        let hot = Environment {
            hottest: celsius(121.0),
            ..shaken
        };
        assert_eq!(best(thread, hot), Some(Locking::AllMetal));
        let cold = Environment {
            coldest: celsius(-60.0),
            ..shaken
        };
        assert_eq!(best(thread, cold), Some(Locking::Slotted));
        let hinge = Environment {
            rotates: true,
            ..calm
        };
        assert_eq!(best(thread, hinge), Some(Locking::Slotted));
    }
}

#[test]
fn limits_of_temperature_are_included() {
    let at_limit = Environment {
        vibration: true,
        hottest: celsius(120.0),
        coldest: celsius(-50.0),
        ..Environment::workshop()
    };
    assert_eq!(best("M12", at_limit), Some(Locking::Insert));
}

#[test]
fn reuse_asks_for_the_larger_torque() {
    let environment = Environment {
        vibration: true,
        refits: 3,
        ..Environment::workshop()
    };
    let choice = choose("1/2-20 UNF", environment);
    let least = Some(pound_force_inches(18.0)); // US Army; the FAA has 10
    let asked = NutReason::MeasureRunningTorque { least };
    assert!(choice.best().unwrap().reasons.contains(&asked));
    assert!(asked.to_string().contains("below 2.0 N m (18 lbf in)"));
}

#[test]
fn danger_asks_for_two_locks() {
    let environment = Environment {
        dangerous_if_lost: true,
        ..Environment::workshop()
    };
    for option in choose("3/8-16 UNC", environment).options {
        let plain = matches!(option.locking, Locking::None | Locking::Serrated);
        assert_eq!(option.is_suitable(), !plain);
        assert_eq!(option.reasons.contains(&NutReason::SecondLock), !plain);
    }
}

#[test]
fn a_thread_without_nuts_is_refused() {
    let thread: Thread = "M10x0.75".parse().unwrap();
    assert!(NutChoice::new(&thread, &Environment::workshop()).is_err());
}
