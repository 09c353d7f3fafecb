//! The bolt: shear, tension, both, bending.

use crate::joints::{
    clevis, frame, governing, is_open, near, open, plate, plus_minus, used, verdict,
    workings_are_true,
};
use shankline::joint::{JointMethods, Pattern, Word};
use shankline::prelude::*;
use shankline::strength::check::{Check, Level, Mode, Place};

#[test]
fn shear_of_the_bolt_governs() {
    let mut joint = frame();
    joint.load.across = newtons(30e3);
    let (mode, place, level, used) = governing(&joint);
    assert_eq!(
        (mode, place, level),
        (Mode::BoltShear, Place::Plane(1), Level::Allowable)
    );
    // By hand: pi/4 x 16^2 = 201.06 mm2 on the shank; 0.577 x 640 x 201.06 / 2 = 37.12 kN.
    near(used, 30.0 / 37.124, 1e-4);
    assert_eq!(verdict(&joint).word(), Word::Holds, "{:?}", open(&joint));
}

#[test]
fn tension_of_the_bolt_governs() {
    let mut joint = frame();
    joint.load.along = newtons(40e3);
    let (mode, _, level, used) = governing(&joint);
    assert_eq!((mode, level), (Mode::BoltTension, Level::Allowable));
    // By hand: At = pi/4 (16 - 0.9382 x 2)^2 = 156.67 mm2; 580 x 156.67 / 2 = 45.43 kN. (ISO 898-1
    // rounds the proof stress of 8.8 up to M16 to 580 MPa.)
    near(used, 40.0 / 45.434, 1e-4);
    assert_eq!(verdict(&joint).word(), Word::Holds, "{:?}", open(&joint));
}

#[test]
fn both_together_govern() {
    let mut joint = frame();
    joint.load.across = newtons(25e3);
    joint.load.along = newtons(30e3);
    let (mode, .., used) = governing(&joint);
    assert_eq!(mode, Mode::Combined);
    // By hand: S = 25 / 37.124 = 0.6734, T = 30 / 45.434 = 0.6603; sqrt(S^2 + T^2) = 0.9431.
    near(used, 0.9431, 1e-4);
    assert_eq!(verdict(&joint).word(), Word::Holds, "{:?}", open(&joint));
}

/// Shear comes on top of bending; of what acts alone bending governs.
#[test]
fn bending_of_the_bolt_governs() {
    let mut joint = clevis();
    let found = verdict(&joint);
    let [both, worst, ..] = &found.checks[..] else {
        panic!("{:?}", found.checks)
    };
    assert_eq!(both.mode, Mode::Combined);
    assert_eq!(
        (worst.mode, worst.level),
        (Mode::BoltBending, Level::Allowable)
    );
    // By hand: e = 10.2 / 2 + 20.4 / 4 + 4 = 14.2 mm; M = 10 kN / 2 x 14.2 mm = 71.0 N m. One
    // plane cuts thread: the circle of At = 156.67 mm2 has 14.1236 mm; pi/32 x 14.1236^3 = 276.59 mm3;
    // 276.59 x 640 / 2 = 88.51 N m.
    near(worst.utilisation.value, 71.0 / 88.51, 1e-4);
    // By hand: root 13.546 mm, 144.12 mm2; 0.577 x 640 x 144.12 / 2 = 26.61 kN; 5 / 26.61 = 0.1879;
    // sqrt(0.8022^2 + 0.1879^2) = 0.8239.
    near(both.utilisation.value, 0.8239, 2e-4);
    assert_eq!(found.word(), Word::Holds, "{:?}", open(&joint));

    // By EN 1993-1-8, Table 3.10: 1.5 x 276.59 x 640 = 265.53 N m.
    joint.methods = JointMethods::en_1993();
    let bending = used(&verdict(&joint), Mode::BoltBending, Place::Bolt(1));
    near(bending, 71.0 / 265.53, 1e-4);
    workings_are_true(&joint);
}

/// The same link without play: clamped it is not bent, as a pivot it is.
#[test]
fn a_pivot_bends_without_gaps() {
    let mut joint = clevis();
    let ear = plate("ear", plus_minus(10.0, 0.2));
    joint.stack = Stack::builder()
        .add(ear.clone())
        .add(plate("link", plus_minus(20.0, 0.4)))
        .add(ear)
        .shear_planes([1, 2])
        .build()
        .unwrap();
    let bends = |check: &&Check| check.mode == Mode::BoltBending;
    assert_eq!(verdict(&joint).checks.iter().find(bends), None);
    assert_eq!(
        verdict(&joint).account(Mode::BoltBending).to_string(),
        "not concerned: the plies touch and nothing turns"
    );
    joint.environment.rotates = true;
    // By hand: e = 10.2 mm, M = 51.0 N m.
    let bending = used(&verdict(&joint), Mode::BoltBending, Place::Bolt(1));
    near(bending, 51.0 / 88.51, 1e-4);
}

/// The link turns on a bushing that is 0.1 to 0.9 mm longer than it.
#[test]
fn end_play_on_a_sleeve_bends_the_bolt() {
    let mut joint = clevis();
    let ear = plate("ear", plus_minus(10.0, 0.2));
    joint.stack = Stack::builder()
        .add(ear.clone())
        .add(plate("link", plus_minus(20.0, 0.2)))
        .add(ear)
        .sleeve("bushing", plus_minus(20.5, 0.2), 2, 2)
        .shear_planes([1, 2])
        .build()
        .unwrap();
    // By hand: e = 10.2 / 2 + 20.2 / 4 + 0.9 = 11.05 mm; M = 5 kN x 11.05 mm = 55.25 N m.
    let bending = used(&verdict(&joint), Mode::BoltBending, Place::Bolt(1));
    near(bending, 55.25 / 88.51, 1e-4);
    // What the bushing bears in the link nobody says.
    assert!(is_open(&joint, "bearing, ply 2: a ply around a sleeve"));
    assert_eq!(verdict(&joint).word(), Word::Undecided);
}

#[test]
fn bending_without_a_method_keeps_the_word_open() {
    let mut joint = clevis();
    joint.methods = JointMethods::aisc_lrfd(AiscEdition::E2010);
    let no_method = "bolt bending, bolt 1: the method for shear gives no resistance";
    assert!(is_open(&joint, no_method), "{:?}", open(&joint));
}

/// A single lap that turns: the bolt is cantilevered from one ply to the other, its ends free to tilt.
#[test]
fn a_pivot_in_single_shear_bends() {
    let mut joint = frame();
    joint.load.across = newtons(2e3);
    joint.environment.rotates = true;
    joint.nut.as_mut().unwrap().style = NutStyle::Iso7040;
    // By hand: 2 kN x (20.3 / 2 + 20.3 / 2) mm = 40.6 N m on pi/32 16^3 = 402.12 mm3: 100.96 of 640 / 2 MPa.
    let bending = used(&verdict(&joint), Mode::BoltBending, Place::Bolt(1));
    near(bending, 100.96 / 320.0, 1e-4);
    workings_are_true(&joint);
    // EN 1993-1-8 limits a pivot in service too, in double shear: for this one nobody knows.
    joint.methods = JointMethods::en_1993();
    let service = "bolt bending, bolt 1: EN 1993-1-8 has the limits of a pivot in service";
    assert!(is_open(&joint, service), "{:?}", open(&joint));
}

/// Every bolt of a group carries as the worst does; the group is named, for blocks of the plies tear out together.
#[test]
fn one_bolt_speaks_for_its_group() {
    let mut joint = frame();
    joint.load.across = newtons(30e3);
    let alone = governing(&joint);
    joint.pattern = Pattern::Rows {
        along: 1,
        across: 2,
    };
    assert_eq!(governing(&joint), alone);
    assert!(is_open(&joint, "block shear"));
}
