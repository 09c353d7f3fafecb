//! Each environment has its nut, and what is refused.

use super::*;
use crate::units::{celsius, pound_force_inches};
use alloc::string::ToString;
use alloc::vec;

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

/// What is said of each kind of nut, and no more: in calm, shaken, on a hinge, where its loss would endanger somebody, and
/// taken off twice.
#[test]
fn each_kind_of_nut_is_told_what_it_lacks() {
    use NutReason as Said;
    let thread: Thread = "M12".parse().unwrap();
    let calm = Environment::workshop();
    let passed = Said::ThreadsThrough { pitches: 2.0 };
    let least = PrevailingTorque::greatest_reuse_minimum(&thread);
    let measured = Said::MeasureRunningTorque { least };
    let (turns, second) = (Said::FrictionLockTurns, Said::SecondLock);
    for (locking, calmly, shaken, hinged, lost, refitted) in [
        (
            Locking::None,
            vec![Said::HeldByPreload],
            vec![Said::SpinsFree, Said::HeldByPreload],
            vec![turns, Said::HeldByPreload],
            vec![Said::NoLock, Said::HeldByPreload],
            vec![Said::HeldByPreload],
        ),
        (
            Locking::Serrated,
            vec![Said::MarksFace, Said::HeldByPreload],
            vec![Said::SpinsFree, Said::MarksFace, Said::HeldByPreload],
            vec![turns, Said::MarksFace, Said::HeldByPreload],
            vec![Said::NoLock, Said::MarksFace, Said::HeldByPreload],
            vec![Said::MarksFace, Said::HeldByPreload],
        ),
        (
            Locking::Insert,
            vec![passed, Said::HoldsWithoutPreload, Said::KindToThread],
            vec![passed, Said::HoldsWithoutPreload, Said::KindToThread],
            vec![turns, passed, Said::HoldsWithoutPreload, Said::KindToThread],
            vec![
                passed,
                second,
                Said::HoldsWithoutPreload,
                Said::KindToThread,
            ],
            vec![
                passed,
                measured,
                Said::HoldsWithoutPreload,
                Said::KindToThread,
            ],
        ),
        (
            Locking::AllMetal,
            vec![passed, Said::HoldsWithoutPreload],
            vec![passed, Said::HoldsWithoutPreload],
            vec![turns, passed, Said::HoldsWithoutPreload],
            vec![passed, second, Said::HoldsWithoutPreload],
            vec![passed, measured, Said::WearsBolt, Said::HoldsWithoutPreload],
        ),
        (
            Locking::Slotted,
            vec![Said::DrilledBolt, Said::PositiveLock],
            vec![Said::DrilledBolt, Said::PositiveLock],
            vec![Said::DrilledBolt, Said::PositiveLock],
            vec![Said::DrilledBolt, second, Said::PositiveLock],
            vec![Said::DrilledBolt, Said::NewPin, Said::PositiveLock],
        ),
    ] {
        for (environment, expected) in [
            (calm, calmly),
            (
                Environment {
                    vibration: true,
                    ..calm
                },
                shaken,
            ),
            (
                Environment {
                    rotates: true,
                    ..calm
                },
                hinged,
            ),
            (
                Environment {
                    dangerous_if_lost: true,
                    ..calm
                },
                lost,
            ),
            (Environment { refits: 1, ..calm }, refitted),
        ] {
            let found = reasons(locking, false, &thread, &environment);
            assert_eq!(found, expected, "{locking:?} {environment:?}");
        }
        let thin = reasons(locking, true, &thread, &calm);
        assert_eq!(thin.first(), Some(&Said::Thin));
    }
}

/// A locking element is good from its lowest to its highest temperature, both included (ISO 2320:2015).
#[test]
fn each_element_has_two_limits() {
    for (locking, coldest, hottest) in [
        (Locking::Insert, -50.0, 120.0),
        (Locking::AllMetal, -50.0, 150.0),
    ] {
        let objects = |coldest, hottest| {
            let environment = Environment {
                coldest: celsius(coldest),
                hottest: celsius(hottest),
                ..Environment::workshop()
            };
            let thread = "M12".parse().unwrap();
            let reasons = reasons(locking, false, &thread, &environment);
            let of_temperature = |reason: &&NutReason| {
                matches!(reason, NutReason::TooHot { .. } | NutReason::TooCold { .. })
            };
            reasons.iter().filter(of_temperature).count()
        };
        assert_eq!(objects(coldest, hottest), 0);
        assert_eq!(objects(coldest - 0.01, hottest), 1);
        assert_eq!(objects(coldest, hottest + 0.01), 1);
        assert_eq!(objects(coldest - 0.01, hottest + 0.01), 2);
    }
}
