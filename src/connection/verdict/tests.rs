//! What one thing that fails, or is not known, makes of the word.

use super::*;
use crate::connection::tests::hanger;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::tables::methods;
use crate::units::newtons;

#[test]
fn one_fault_is_enough() {
    assert_eq!(hanger(60.0).word(), Word::Holds);
    assert!(hanger(60.0).holds());
    let changed = |change: fn(&mut ConnectionVerdict)| {
        let mut found = hanger(60.0);
        change(&mut found);
        (found.word(), found.holds())
    };
    let fault = (Word::DoesNotHold, false);
    let check = |load: f64| {
        let (mode, place) = (Mode::NetSection, Place::Ply(1));
        let by = methods::WHITMORE_SECTION;
        let check = Check::new(
            mode,
            place,
            newtons(load),
            newtons(100.0),
            Level::Design,
            by,
        );
        ConnectionCheck {
            case: 0,
            check: check.unwrap(),
        }
    };
    for (load, word) in [(100.0, Word::Holds), (100.1, Word::DoesNotHold)] {
        let mut found = hanger(60.0);
        found.checks.push(check(load));
        assert_eq!(found.word(), word);
        // Most of what is used, wherever.
        assert!((found.utilisation().unwrap() - 0.01 * load).abs() < 1e-9);
    }
    let nothing_left = |found: &mut ConnectionVerdict| {
        found.findings.push(Finding::NothingLeft {
            place: Place::Ply(1),
            mode: Mode::NetSection,
            why: "the holes take the whole width",
        });
    };
    assert_eq!(changed(nothing_left), fault);
    assert_eq!(changed(|own| own.bolts.clear()), fault);
    assert_eq!(changed(|own| own.cases[0].word = Word::DoesNotHold), fault);
    let open = (Word::Undecided, false);
    assert_eq!(changed(|own| own.cases[0].word = Word::Undecided), open);
}

/// A worse word comes first, and of one word what is used more; what has no figure is the least.
#[test]
fn the_worse_of_two_bolts() {
    let (holds, open, fails) = (Word::Holds, Word::Undecided, Word::DoesNotHold);
    for (one, other, is_so) in [
        ((open, Some(0.1)), (holds, Some(0.9)), true),
        ((fails, None), (open, Some(0.9)), true),
        ((holds, Some(0.9)), (open, Some(0.1)), false),
        ((holds, Some(0.9)), (holds, Some(0.8)), true),
        ((holds, Some(0.8)), (holds, Some(0.9)), false),
        ((holds, Some(0.8)), (holds, Some(0.8)), false),
        ((holds, Some(0.0)), (holds, None), true),
        ((holds, None), (holds, Some(0.0)), false),
    ] {
        assert_eq!(is_worse(one, other), is_so, "{one:?} {other:?}");
    }
}
