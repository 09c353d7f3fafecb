//! The plies: bearing, tear-out, sections, distances, blocks. ASTM A36, 36 ksi = 248.21 MPa; 19.7 mm in the worst case.

use crate::joints::{
    check_of, frame, governing, is_open, near, open, plate, stacked, text, verdict, with_ply,
};
use shankline::joint::{Joint, JointMethods, Pattern, Word};
use shankline::prelude::*;
use shankline::strength::check::{Mode, Place};

fn loaded(across: f64) -> Joint {
    let mut joint = frame();
    joint.load.across = newtons(across);
    joint
}

#[test]
fn bearing_of_a_ply_governs() {
    let mut joint = loaded(35e3);
    joint.bolt.grade = BoltGrade::Iso(PropertyClass::Class12_9);
    joint.nut.as_mut().unwrap().grade = Some(NutGrade::Iso898_2Class12);
    let (mode, .., used) = governing(&joint);
    assert_eq!(mode, Mode::Bearing);
    // By hand: 248.21 x 16 x 19.7 / 2 = 39.118 kN.
    near(used, 35.0 / 39.118, 1e-4);
    assert_eq!(verdict(&joint).word(), Word::Holds, "{:?}", open(&joint));
}

/// Hard plies bear on a softer bolt: the bolt's own strength counts too.
#[test]
fn bearing_on_the_bolt_is_checked() {
    let joint = loaded(20e3);
    let found = check_of(&verdict(&joint), Mode::BoltBearing, Place::Ply(1));
    // By hand: 640 x 16 x 19.7 / 2 = 100.86 kN.
    near(found.utilisation.value, 20.0 / 100.864, 1e-4);
}

/// 1.5 diameters of the hole are 27 mm: an end nearer than that is not shown to be enough.
#[test]
fn tear_out_of_a_ply_governs() {
    let mut joint = loaded(20e3);
    with_ply(&mut joint, 2, |ply| {
        ply.end_distance = Some(millimetres(19.0));
    });
    let (mode, place, _, used) = governing(&joint);
    assert_eq!((mode, place), (Mode::TearOut, Place::Ply(2)));
    // By hand, 19 - 18 / 2 = 10 mm from the edge of the hole: 0.577 x 248.21 x 2 x 10 x 19.7 / 2 = 28.214 kN.
    near(used, 20.0 / 28.214, 1e-4);
    assert_eq!(open(&joint).len(), 1, "{:?}", open(&joint));
    assert!(is_open(&joint, "distances of holes, ply 2: "));
}

#[test]
fn net_section_of_a_ply_governs() {
    let mut joint = loaded(20e3);
    with_ply(&mut joint, 1, |ply| ply.width = Some(millimetres(28.0)));
    let (mode, .., used) = governing(&joint);
    assert_eq!(mode, Mode::NetSection);
    // By hand: 248.21 x (28 - 18) x 19.7 / 2 = 24.449 kN.
    near(used, 20.0 / 24.449, 1e-4);
}

/// A thin strip of annealed stainless steel, which yields long before it tears, by AISC 360-16.
#[test]
fn gross_section_of_a_ply_governs() {
    let mut joint = loaded(20e3);
    joint.methods = JointMethods::aisc_lrfd(AiscEdition::E2016);
    let strip = plate("strip", Spread::exact(millimetres(5.0)))
        .material("304 stainless steel")
        .width(millimetres(60.0))
        .end_distance(millimetres(60.0));
    let bracket = plate("bracket", Spread::exact(millimetres(30.0)));
    joint.stack = stacked([strip, bracket]);
    let (mode, place, _, used) = governing(&joint);
    assert_eq!((mode, place), (Mode::GrossSection, Place::Ply(1)));
    // By hand: 0.9 x 206.84 x 60 x 5 = 55.847 kN, with Fy = 30 ksi.
    near(used, 20.0 / 55.847, 1e-4);
}

#[test]
fn holes_in_a_group_may_tear_out_together() {
    let mut joint = loaded(20e3);
    assert!(!is_open(&joint, "block shear"));
    joint.pattern = Pattern::Rows {
        along: 2,
        across: 1,
    };
    // Each ply is asked for its pitch; with it the block is still open.
    assert!(is_open(
        &joint,
        "distances of holes, ply 1: the distance to the next hole"
    ));
    for number in [1, 2] {
        with_ply(&mut joint, number, |ply| {
            ply.pitch = Some(millimetres(60.0));
        });
    }
    let left = open(&joint);
    assert!(
        left.iter().all(|line| line.starts_with("block shear, ply")),
        "{left:?}"
    );
    // By hand, AISC 360-10 J4.3, to one edge: shear over 40 + 60 mm, tension over 40 mm, holes of 18 mm and 1/16 in:
    // Anv (100 - 1.5 x 19.588) x 19.7 = 1391 mm2, Agv 1970 mm2, Ant (40 - 9.794) x 19.7 = 595.1 mm2; 0.6 Fy Agv = 293.4
    // kN is the less; 0.75 x (293.4 + 0.5 x 399.9 x 0.5951) = 309.3 kN against both bolts.
    joint.methods = JointMethods::aisc_lrfd(AiscEdition::E2010);
    let found = verdict(&joint);
    let mut blocks = found.checks.iter();
    let block = blocks.find(|check| check.mode == Mode::BlockShear).unwrap();
    near(block.utilisation.value, 40.0 / 309.3, 1e-3);
    joint.methods = JointMethods::machine_design(2.0);
    // A distance to a hole that is not there is a slip of the pen.
    joint.pattern = Pattern::Single;
    let error = joint.check().unwrap_err().to_string();
    assert!(error.contains("no other bolt in that direction"), "{error}");
}

#[test]
fn short_distances_are_faults_by_their_code() {
    let mut joint = loaded(20e3);
    joint.methods = JointMethods::en_1993();
    for number in [1, 2] {
        with_ply(&mut joint, number, |ply| {
            ply.end_distance = Some(millimetres(20.0));
            ply.edge_distance = Some(millimetres(30.0));
        });
    }
    let text = text(&verdict(&joint));
    // By hand: 1.2 x 18 mm.
    assert!(
        text.contains("FAULT  ply 2: end distance 20.00 mm, must be at least 21.60 mm"),
        "{text}"
    );
}
