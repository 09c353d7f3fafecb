//! Bolts of one's own at the bounds of what they may be, and what a code asks of small holes.

use crate::joints::{across, frame, mm, near, plate, stacked, verdict};
use shankline::joint::{
    CountersunkHead, Finding, HeadSeat, Joint, JointMethods, OwnLength, OwnScrew, OwnStrength,
};
use shankline::prelude::*;
use shankline::strength::check::Mode;
use shankline::units::{celsius, degrees};

fn length(nominal: f64, shank: f64, start: f64) -> OwnLength {
    OwnLength::new(mm(nominal), millimetres(shank), millimetres(start))
}

fn turned(lengths: Vec<OwnLength>) -> OwnScrew {
    let mut screw = OwnScrew::new("turned bolt (invented)", lengths);
    screw.bearing_diameter = Some(millimetres(24.0));
    screw.head_height = Some(millimetres(10.0));
    screw
}

fn with(screw: OwnScrew) -> Joint {
    let mut joint = frame();
    joint.load.across = newtons(2e3);
    joint.with_screw(screw)
}

fn refusal(joint: &Joint) -> String {
    joint
        .check()
        .err()
        .map_or(String::new(), |error| error.to_string())
}

/// Thread and run-out take no more than the bolt is long; just all of it they may.
#[test]
fn a_thread_is_no_longer_than_its_bolt() {
    let of = |thread, run_out| OwnLength::of_thread(mm(50.0), mm(thread), millimetres(run_out));
    assert_eq!(of(50.0, 0.0).unwrap().shank, millimetres(0.0));
    assert!(of(50.1, 0.0).is_err());
    assert!(of(46.0, 4.0).is_ok());
    assert!(of(46.0, 4.1).is_err());
}

#[test]
fn two_lengths_differ() {
    let two = |other| {
        with(turned(vec![
            length(80.0, 40.0, 46.0),
            length(other, 40.0, 46.0),
        ]))
    };
    assert!(refusal(&two(80.0)).contains("which of them is meant"));
    assert_eq!(refusal(&two(85.0)), "");
    let mut missing = two(85.0);
    missing.bolt.length = Some(millimetres(82.0));
    assert!(refusal(&missing).contains("is not described"));
    missing.bolt.length = Some(millimetres(85.0));
    assert_eq!(refusal(&missing), "");
}

/// Wider than the thread and at most 4 diameters: M16, 64 mm.
#[test]
fn a_head_has_a_width() {
    for (width, right) in [(16.0, false), (16.1, true), (64.0, true), (64.1, false)] {
        let mut screw = turned(vec![length(80.0, 40.0, 46.0)]);
        screw.bearing_diameter = Some(millimetres(width));
        assert_eq!(refusal(&with(screw)).is_empty(), right, "{width}");
    }
}

/// A head of 0.6 diameters, M16: 9.6 mm, is as high as those of ISO 4014.
#[test]
fn a_low_head_is_not_shown_to_bear() {
    for (height, low, unsaid) in [
        (Some(9.6), false, false),
        (Some(9.5), true, false),
        (None, false, true),
    ] {
        let mut screw = turned(vec![length(80.0, 40.0, 46.0)]);
        screw.head_height = height.map(millimetres);
        let mut joint = with(screw);
        joint.load.along = newtons(1e3);
        let found = verdict(&joint);
        let lacks = |part: &str| {
            let mut missing = found
                .missing
                .iter()
                .filter(|own| own.mode == Mode::BoltTension);
            missing.any(|own| own.to_string().contains(part))
        };
        assert_eq!(
            lacks("its head is lower than 0.6 diameters"),
            low,
            "{height:?}"
        );
        assert_eq!(
            lacks("how high the head is is not stated"),
            unsaid,
            "{height:?}"
        );
    }
}

/// A countersunk head of 82 deg and 29 mm on M16 is 6.5 / tan 41 deg = 7.48 mm high at least; no shank and no thread reaches into
/// it, but that a thread may go to the head.
#[test]
fn a_countersunk_head_is_a_cone() {
    let sunk = |height: f64, shank: f64, start: f64| {
        let mut screw = OwnScrew::new("flat head (invented)", [length(80.0, shank, start)]);
        let (angle, top) = (degrees(82.0), millimetres(29.0));
        screw.countersunk = Some(CountersunkHead::new(angle, top, millimetres(height)));
        let mut joint = with(screw);
        let seat = HeadSeat::Countersunk {
            below_flush: mm(0.0),
            head_height: millimetres(height),
        };
        let stack = Stack::builder().head_seat(seat).add(plate("a", mm(20.0)));
        joint.stack = stack
            .add(plate("b", mm(20.0)))
            .shear_planes([1])
            .build()
            .unwrap();
        refusal(&joint)
    };
    assert_eq!(sunk(7.5, 40.0, 46.0), "");
    assert!(sunk(7.4, 40.0, 46.0).contains("height of the countersunk head"));
    assert_eq!(sunk(8.0, 8.0, 10.0), "");
    assert!(sunk(8.0, 7.9, 10.0).contains("shank of the bolt"));
    assert_eq!(sunk(8.0, 0.0, 10.0), "");
    assert_eq!(sunk(8.0, 0.0, 8.0), "");
    assert!(sunk(8.0, 0.0, 7.9).contains("thread start of the bolt"));
    assert!(sunk(8.0, 0.0, 0.0).contains("thread start of the bolt"));
}

#[test]
fn a_proof_stress_is_no_more_than_yield() {
    for (proof, right) in [(640.0, true), (640.1, false)] {
        let mut strength = OwnStrength::new("shop steel (invented)", megapascals(800.0));
        strength.yield_strength = Some(megapascals(640.0));
        strength.proof_stress = Some(megapascals(proof));
        let joint = across(2.0);
        assert_eq!(
            refusal(&joint.with_strength(strength)).is_empty(),
            right,
            "{proof}"
        );
    }
}

/// So many plies of a kind with a full-thread M12 of class 4.6, a plane between any two; 2 kN by EN 1993-1-8.
fn small_bolt(ply: &JointPly, plies: usize) -> Joint {
    let mut joint = across(2.0);
    joint.bolt.product = ScrewProduct::Iso4017;
    joint.bolt.thread = "M12".parse().unwrap();
    joint.bolt.grade = PropertyClass::Class4_6.into();
    let stack = (0..plies).fold(Stack::builder(), |stack, _| stack.add(ply.clone()));
    joint.stack = stack.shear_planes(1..plies).build().unwrap();
    joint.methods = JointMethods::en_1993();
    joint
}

/// EN 1993-1-8, 3.6.1(5): in holes of 14 mm M12 is held to bear less than it is sheared by; so the hole is asked for. Two planes
/// bear twice as much.
#[test]
fn the_hole_of_a_small_bolt_counts_for_its_shear() {
    let of = |hole: Option<f64>, plies: usize| {
        let mut ply = plate("plate", mm(20.0));
        ply.hole = hole.map(millimetres);
        verdict(&small_bolt(&ply, plies))
    };
    let most = |hole, plies| {
        let found = of(Some(hole), plies).findings.into_iter();
        let mut found = found.filter_map(|finding| match finding {
            Finding::BearingMustGovern { most, .. } => Some(most),
            _ => None,
        });
        found.next()
    };
    assert_eq!(most(13.0, 2), None);
    let (lap, clevis) = (most(14.0, 2).unwrap(), most(14.0, 3).unwrap());
    assert!((clevis - 2.0 * lap).abs() < newtons(1e-6));
    let asked = |hole| {
        let found = of(hole, 2).missing.into_iter();
        let mut found = found.filter(|own| own.mode == Mode::BoltShear);
        found.any(|own| own.to_string().contains("its hole"))
    };
    assert!(asked(None) && !asked(Some(14.0)));
}

/// A coating is good up to its temperature, and at that too.
#[test]
fn a_coating_has_its_greatest_heat() {
    let limit = |hottest: Option<shankline::units::ThermodynamicTemperature>, hot: f64| {
        let mut joint = across(2.0);
        joint.stack = stacked(["a", "b"].map(|name| plate(name, mm(20.0))));
        joint.bolt.finish = Some(Finish::CadmiumPlated { baked: true });
        joint.environment.hottest = hottest.unwrap_or(celsius(hot));
        let found = verdict(&joint).findings.into_iter();
        let mut found = found.filter_map(|finding| match finding {
            Finding::CoatingTooHot { limit, .. } => Some(limit),
            _ => None,
        });
        found.next()
    };
    let greatest = limit(None, 400.0).unwrap();
    assert_eq!(limit(Some(greatest), 0.0), None);
    assert_eq!(limit(None, 20.0), None);
}

/// M12 of class 4.6 in holes of 14 mm, plies of A36 (399.9 MPa), 20 mm thick: 2.5 x a x 399.9 x 12 x 20 / 1.25 with a = e / 42 mm; in a
/// single lap 1.5 x 399.9 x 12 x 20 / 1.25 = 115.17 kN at most. Of a clevis the link bears all of the load.
#[test]
fn the_weakest_ply_is_held_against_the_shear() {
    for (end, plies, by_hand) in [
        (40.0, 2, 115_170.0),
        (20.0, 2, 91_405.0),
        (40.0, 3, 182_810.0),
    ] {
        let ply = plate("plate", mm(20.0)).hole(millimetres(14.0));
        let ply = ply.end_distance(millimetres(end));
        let found = verdict(&small_bolt(&ply, plies)).findings.into_iter();
        let mut found = found.filter_map(|finding| match finding {
            Finding::BearingMustGovern { bears, .. } => Some(bears.value),
            _ => None,
        });
        near(found.next().unwrap(), by_hand, 2e-4);
    }
}
