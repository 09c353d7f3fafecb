//! What is read first, and what is said of modes that no load reaches.

use super::*;
use crate::connection::ConnectionCheck;
use crate::connection::tests::hanger;
use crate::joint::{Finding, Missing, Need, SetAside};
use crate::strength::check::{Check, Level, Place};
use crate::tables::methods;
use crate::units::newtons;
use alloc::string::ToString;

/// So many newtons of 100.
fn check(load: f64) -> ConnectionCheck {
    let place = Place::Ply(1);
    let by = methods::WHITMORE_SECTION;
    let (load, bears) = (newtons(load), newtons(100.0));
    let check = Check::new(Mode::NetSection, place, load, bears, Level::Design, by);
    ConnectionCheck {
        case: 0,
        check: check.unwrap(),
    }
}

fn headline(verdict: &ConnectionVerdict) -> String {
    verdict.headline(UnitSystem::Si)
}

#[test]
fn what_holds_says_with_what() {
    let mut found = hanger(60.0);
    let granted = found.bolts[0].verdict.granted.len();
    assert!(granted > 1, "{granted}");
    let facts = format!("{granted} facts taken for granted");
    assert_eq!(
        headline(&found),
        format!("HOLDS (4 bolts, 1 case), with {facts}")
    );
    found.set_aside.push(SetAside {
        mode: Mode::Slip,
        reason: "the owner accepts it".into(),
    });
    let aside = format!("HOLDS (4 bolts, 1 case), with 1 mode set aside and {facts}");
    assert_eq!(headline(&found), aside);
    found.set_aside.clear();
    found.bolts[0].verdict.granted.clear();
    assert_eq!(headline(&found), "HOLDS (4 bolts, 1 case)");
}

/// A check of all bolts that fails is named before the worst bolt if it is used as much or more, or if no bolt fails; else a
/// finding is.
#[test]
fn the_first_fault_is_the_worst() {
    let begin = "DOES NOT HOLD (4 bolts, 1 case): ";
    let mut sound = hanger(60.0);
    let fails = check(120.0);
    sound.checks.insert(0, fails.clone());
    assert_eq!(
        headline(&sound),
        format!("{begin}{} in \"load\"", fails.check)
    );
    let mut nothing = hanger(60.0);
    let finding = Finding::NothingLeft {
        place: Place::Ply(1),
        mode: Mode::NetSection,
        why: "the holes take the whole width",
    };
    nothing.findings.push(finding);
    let text = nothing.findings.last().unwrap().text(UnitSystem::Si);
    assert_eq!(headline(&nothing), format!("{begin}{text}"));
    // 1200 kN on four M16 are too much for each.
    let broken = hanger(1200.0);
    let worst = broken.governing_bolt().unwrap().clone();
    let used = worst.utilisation.unwrap();
    assert!(used > 1.0 && worst.verdict.word() == Word::DoesNotHold);
    let bolt = format!(
        "{begin}bolt {} in \"load\": {}",
        worst.number,
        worst.verdict.headline(UnitSystem::Si)
    );
    for (load, names_bolt) in [
        (50.0, Some(true)),
        (99.0 * used, Some(true)),
        (101.0 * used, Some(false)),
        (100.0 * used, None),
    ] {
        let mut found = broken.clone();
        found.checks.clear();
        let own = check(load);
        let line = format!("{begin}{} in \"load\"", own.check);
        found.checks.push(own);
        if names_bolt.is_none() {
            // As much, to the last digit.
            let exact = found.checks[0].check.utilisation.value;
            let of_worst = found
                .bolts
                .iter_mut()
                .find(|own| own.number == worst.number);
            of_worst.unwrap().utilisation = Some(exact);
        }
        assert_eq!(
            headline(&found),
            if names_bolt == Some(true) {
                bolt.clone()
            } else {
                line
            }
        );
    }
    // With nothing but the bolt.
    let mut alone = broken;
    alone.checks.clear();
    assert_eq!(headline(&alone), bolt);
}

/// Of several bolts the modes of plates of which nothing is said; of one they are those of its joint.
#[test]
fn silent_modes_are_named() {
    let mut bare = hanger(60.0);
    bare.checks.clear();
    bare.missing.clear();
    bare.findings.clear();
    let line = |verdict: &ConnectionVerdict| {
        let text = verdict.render(UnitSystem::Si).to_string();
        let begin = "  not concerned (no load reaches it): ";
        let mut lines = text.lines();
        lines.find_map(|line| Some(line.strip_prefix(begin)?.to_string()))
    };
    let named = |modes: &[Mode]| {
        let modes: Vec<String> = modes.iter().map(ToString::to_string).collect();
        (!modes.is_empty()).then(|| modes.join(", "))
    };
    assert_eq!(line(&bare), named(&modes::OF_PLATES));
    for (n, mode) in modes::OF_PLATES.into_iter().enumerate() {
        let mut others = modes::OF_PLATES.to_vec();
        others.remove(n);
        let place = Place::Ply(1);
        let mut missing = bare.clone();
        missing.missing.push(Missing {
            mode,
            place,
            need: Need::HeldSide,
        });
        assert_eq!(line(&missing), named(&others), "{mode}");
        let mut finding = bare.clone();
        let why = "the holes take the whole width";
        finding
            .findings
            .push(Finding::NothingLeft { place, mode, why });
        assert_eq!(line(&finding), named(&others), "{mode}");
        let mut checked = bare.clone();
        let mut own = check(1.0);
        own.check.mode = mode;
        checked.checks.push(own);
        assert_eq!(line(&checked), named(&others), "{mode}");
    }
    bare.bolts.truncate(2);
    assert_eq!(line(&bare), named(&modes::OF_PLATES));
    bare.bolts.truncate(1);
    assert_eq!(line(&bare), None);
}
