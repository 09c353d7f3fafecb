//! Cases of load one by one and many at once, against the whole check. The joint is invented.

use alloc::{vec, vec::Vec};

use super::*;
use crate::joint::{JointMethods, Prying};
use crate::strength::slip::{Is800Surface, SlipMethod};
use crate::units::newtons;

fn case(across: f64, along: f64, across_least: f64, along_least: f64) -> BoltCase {
    BoltCase {
        across: newtons(across),
        along: newtons(along),
        across_least: newtons(across_least),
        along_least: newtons(along_least),
    }
}

fn steady(across: f64, along: f64) -> BoltCase {
    case(across, along, across, along)
}

/// A step of a mezzanine, snug.
fn step() -> crate::joint::JointBuilder {
    let plate = |builder: crate::joint::JointBuilder, name: &str| {
        let builder = builder.ply(name, "20 mm").material("S355 steel");
        let builder = builder.end_distance("70 mm").edge_distance("60 mm");
        builder.width("120 mm")
    };
    let builder = Joint::builder("M16").across("1 kN").along("1 kN");
    plate(plate(builder.prying(Prying::None), "cleat"), "beam").snug()
}

#[test]
#[allow(clippy::float_cmp)] // whole numbers and halves
fn loads_that_make_sense() {
    for (case, is_sane) in [
        (case(0.0, 0.0, 0.0, 0.0), true),
        (case(5.0, 4.0, 5.0, 4.0), true),
        (case(5.0, 4.0, -5.0, -9.0), true),
        (case(5.0, 4.0, -5.001, 4.0), false),
        (case(5.0, 4.0, 5.001, 4.0), false),
        (case(5.0, 4.0, 5.0, 4.001), false),
        (case(-0.001, 0.0, -0.001, 0.0), false),
        (case(1e12, 1e12, -1e12, -1e12), true),
        (case(1.001e12, 0.0, 0.0, 0.0), false),
        (case(0.0, 1.001e12, 0.0, 0.0), false),
        (case(0.0, 0.0, 0.0, -1.001e12), false),
        (case(f64::NAN, 0.0, 0.0, 0.0), false),
        (case(0.0, f64::NAN, 0.0, 0.0), false),
        (case(0.0, 0.0, f64::NAN, 0.0), false),
        (case(0.0, 0.0, 0.0, f64::NAN), false),
    ] {
        assert_eq!(case.loads().is_some(), is_sane, "{case:?}");
        // So does the whole check.
        let load = case.of(&JointLoad::none());
        assert_eq!(load.validate().is_ok(), is_sane, "{case:?}");
    }
    // What presses all the time pulls by nothing; what it changes by is kept.
    let pressed = case(3.0, -4.0, 1.0, -6.5).loads().unwrap();
    let found = [
        pressed.across,
        pressed.along,
        pressed.across_least,
        pressed.along_least,
    ];
    assert_eq!(found, [3.0, 0.0, 1.0, -2.5]);
}

fn whole(joint: &Joint, case: &BoltCase) -> CaseAnswer {
    let own = Joint {
        load: case.of(&joint.load),
        ..joint.clone()
    };
    CaseAnswer::from(&own.check().unwrap())
}

#[track_caller]
fn agree(joint: &Joint, case: &BoltCase, found: CaseAnswer) {
    let expected = whole(joint, case);
    let off = (found.utilisation - expected.utilisation).value.abs();
    assert!(
        off <= 1e-9 * expected.utilisation.value,
        "{case:?}: {found:?}"
    );
    assert_eq!(
        (found.word, found.mode),
        (expected.word, expected.mode),
        "{case:?}"
    );
}

#[test]
fn many_cases_are_answered_in_their_order() {
    let joint = step().build().unwrap();
    let mut prepared = joint.prepare().unwrap();
    // Two blocks and a remainder: of one kind, with another kind in the second, and with some that laws leave open.
    let mut cases: Vec<BoltCase> = (0..75_u8)
        .map(|n| steady(1e3 + 900.0 * f64::from(n), 0.0))
        .collect();
    cases[40] = steady(5e3, 20e3);
    cases[70] = steady(0.0, 0.0);
    cases[71] = case(5e3, 3e3, -5e3, -8e3);
    for _ in 0..2 {
        let mut answers = vec![CaseAnswer::default(); cases.len()];
        prepared.sweep(&cases, &mut answers).unwrap();
        for (case, answer) in cases.iter().zip(&answers) {
            agree(&joint, case, *answer);
            assert_eq!(prepared.answer(case).unwrap(), *answer);
        }
    }
    let mut room = vec![CaseAnswer::default(); 3];
    assert!(prepared.sweep(&cases[..2], &mut room).is_err());
    assert!(prepared.sweep(&cases[..4], &mut room).is_err());
    // What is refused ends it; what came before stands.
    let refused = [cases[1], cases[2], steady(-1.0, 0.0)];
    assert!(prepared.sweep(&refused, &mut room).is_err());
    assert_eq!(room[1], prepared.answer(&cases[2]).unwrap());
    assert_eq!(room[2], CaseAnswer::default());
}

/// A block is answered at once only if it is whole, of one kind, prepared, and nothing in it is left open.
#[test]
fn a_block_is_of_one_kind() {
    let joint = step().build().unwrap();
    let mut prepared = joint.prepare().unwrap();
    let mut answers = [CaseAnswer::default(); BLOCK];
    let alike = [steady(5e3, 0.0); BLOCK];
    assert!(!prepared.block(&alike, &mut answers)); // of no kind that came before
    let expected = prepared.answer(&alike[0]).unwrap();
    assert!(prepared.block(&alike, &mut answers));
    assert_eq!(answers, [expected; BLOCK]);
    assert!(!prepared.block(&alike[1..], &mut answers[1..]));
    for other in [steady(5e3, 1e3), steady(-1.0, 0.0), steady(1e12, 0.0)] {
        let mut mixed = alike;
        mixed[BLOCK - 1] = other;
        assert!(!prepared.block(&mixed, &mut answers), "{other:?}");
    }
}

#[test]
fn kinds_that_are_left_to_the_whole_check_are_counted() {
    let slip = SlipMethod::Is800 {
        surface: Is800Surface::Untreated,
        serviceability: false,
    };
    let methods = JointMethods {
        slip: super::super::Slip::Resisted(slip),
        ..JointMethods::is_800()
    };
    let target = crate::preload::PreloadTarget::Is800;
    let oiled = crate::preload::NutFactor::new(0.17, 0.18, 0.19).unwrap();
    let torque = crate::joint::TorqueTightening::new(oiled, target);
    let torque = torque.relaxation(crate::units::percent(5.0));
    let joint = step().methods(methods).load_factor(1.5);
    let tight = crate::joint::Tightening::Torque(torque);
    // Tightened once, said once.
    let joint = Joint {
        tightening: Some(tight),
        ..joint.build().unwrap()
    };
    let mut prepared = joint.prepare().unwrap();
    for (case, unread) in [
        (steady(5e3, 0.0), 0),
        (steady(5e3, 4e3), 1),
        (steady(7e3, 4e3), 1),
        (steady(0.0, 4e3), 1),
        (case(7e3, 4e3, 7e3, 1e3), 2),
    ] {
        let found = prepared.answer(&case).unwrap();
        agree(&joint, &case, found);
        assert_eq!(prepared.unread_kinds(), unread, "{case:?}");
    }
}

#[test]
fn the_worst_word_comes_before_the_highest_utilisation() {
    let answer = |word, used| CaseAnswer {
        word,
        mode: None,
        utilisation: Ratio::from(used),
    };
    let (holds, open, not) = (Word::Holds, Word::Undecided, Word::DoesNotHold);
    for (first, second, is_worse) in [
        (answer(not, 0.1), answer(open, 0.9), true),
        (answer(open, 0.1), answer(holds, 0.9), true),
        (answer(holds, 0.9), answer(open, 0.1), false),
        (answer(open, 0.9), answer(not, 0.1), false),
        (answer(open, 0.6), answer(open, 0.5), true),
        (answer(open, 0.5), answer(open, 0.6), false),
        (answer(open, 0.5), answer(open, 0.5), false),
    ] {
        assert_eq!(
            first.is_worse_than(&second),
            is_worse,
            "{first:?} {second:?}"
        );
    }
    let mut prepared = step().build().unwrap().prepare().unwrap();
    let cases = [
        steady(5e3, 0.0),
        steady(9e3, 0.0),
        steady(9e3, 0.0),
        steady(2e3, 1e3),
    ];
    let (place, worst) = prepared.worst(&cases).unwrap().unwrap();
    assert_eq!((place, worst), (1, prepared.answer(&cases[1]).unwrap()));
    assert_eq!(prepared.worst(&[]).unwrap(), None);
    assert!(prepared.worst(&[cases[0], steady(-1.0, 0.0)]).is_err());
}
