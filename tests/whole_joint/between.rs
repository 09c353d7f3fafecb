//! Plies between others: the force of the bolt goes through them, spread as a cone.

use crate::joints::{check_of, frame, is_open, near, plate, verdict};
use shankline::joint::{Joint, JointMethods, MaterialKind, OwnMaterial};
use shankline::prelude::*;
use shankline::strength::check::{Mode, Place};

/// Three plates without washers, pulled by 10 kN with a factor of 2, the middle one of a stuff that bears so much.
fn pulled(bears: f64, width: Option<f64>) -> Joint {
    let mm = |length| Spread::exact(millimetres(length));
    let mut stuff = OwnMaterial::new("filler (invented)", MaterialKind::Other);
    stuff.surface_pressure = Some(megapascals(bears));
    let mut middle = JointPly::new("filler", mm(20.0));
    middle = middle.material(stuff).hole(millimetres(18.0));
    middle.width = width.map(millimetres);
    let mut joint = frame();
    let stack = Stack::builder().add(plate("plate", mm(10.0))).add(middle);
    joint.stack = stack.add(plate("plate", mm(10.0))).build().unwrap();
    joint.load.along = newtons(10e3);
    joint
}

/// Whether the middle ply is shown as pressed too hard, and whether its width is asked for.
fn said(joint: &Joint) -> [bool; 2] {
    let found = verdict(joint);
    let mut checks = found.checks.iter();
    let pressed = checks.any(|check| (check.mode, check.place) == (Mode::Pressure, Place::Ply(2)));
    let width = is_open(
        joint,
        "pressure under head and nut, ply 2: its width is not given",
    );
    [pressed, width]
}

/// ISO 4014 and ISO 4032, M16: faces of 22 mm. 10 mm deeper the cone of 30 degrees has 22 + 1.1547 x 10 = 33.547 mm:
/// over a hole of 18 mm 629.4 mm2, and 20 kN press with 31.78 MPa; on the bare face 125.7 mm2 and 159.2 MPa.
#[test]
fn what_a_cone_presses_on() {
    let wide = Some(80.0);
    assert_eq!(said(&pulled(31.5, wide)), [true, false]);
    assert_eq!(said(&pulled(32.0, wide)), [false, false]);
    let shown = check_of(&verdict(&pulled(31.5, wide)), Mode::Pressure, Place::Ply(2));
    near(shown.utilisation.value, 31.775 / 31.5, 1e-4);
    // Narrower than the cone: pi/4 (30^2 - 18^2) = 452.4 mm2, 44.2 MPa.
    assert_eq!(said(&pulled(44.0, Some(30.0))), [true, false]);
    assert_eq!(said(&pulled(44.5, Some(30.0))), [false, false]);
    // Nobody knows how wide: it may be as narrow as the face.
    assert_eq!(said(&pulled(31.5, None)), [true, false]);
    assert_eq!(said(&pulled(32.0, None)), [false, true]);
    assert_eq!(said(&pulled(158.5, None)), [false, true]);
    assert_eq!(said(&pulled(160.0, None)), [false, false]);
    // Nothing pulls, nothing presses.
    let mut still = pulled(30.0, None);
    (still.load.along, still.load.across) = (newtons(0.0), newtons(1e3));
    assert_eq!(said(&still), [false, false]);
}

/// Without the load factor of a code nobody knows the force: the width is asked for together with it, however much the ply
/// bears.
#[test]
fn the_width_is_asked_for_with_the_load_factor() {
    let mut joint = pulled(500.0, None);
    joint.methods = JointMethods::en_1993();
    assert_eq!(said(&joint), [false, false]);
    joint.load.load_factor = None;
    assert_eq!(said(&joint), [false, true]);
    joint.methods = JointMethods::machine_design(2.0);
    assert_eq!(said(&joint), [false, false]);
}

/// What the middle ply lacks is listed for it.
#[test]
fn what_is_not_known_of_it_is_missing() {
    let mut joint = pulled(500.0, None);
    let mut plies = joint.stack.plies().to_vec();
    plies[1].hole = None;
    let mut stack = Stack::builder();
    for ply in plies {
        stack = stack.add(ply);
    }
    joint.stack = stack.build().unwrap();
    let start = "pressure under head and nut, ply 2: its ";
    for need in ["hole", "width"] {
        assert!(
            is_open(&joint, &format!("{start}{need} is not given")),
            "{need}"
        );
    }
}

/// With 5 mm on one side the cone from there is the narrower one. At the head 22 + 1.1547 x 5 = 27.774 mm, over a hole of 18 mm
/// 351.4 mm2, and 20 kN press with 56.92 MPa; at the nut, whose face has 22.5 mm, 28.274 mm, 373.4 mm2 and 53.57 MPa.
#[test]
fn the_thinner_side_spreads_less() {
    for (thickness, presses) in [
        ([5.0, 10.0], 56.92),
        ([10.0, 5.0], 53.57),
        ([5.0, 5.0], 56.92),
    ] {
        let of = |bears: f64| {
            let mut joint = pulled(bears, Some(80.0));
            let middle = joint.stack.plies()[1].clone();
            let [first, last] =
                thickness.map(|own| plate("plate", Spread::exact(millimetres(own))));
            let stack = Stack::builder().add(first).add(middle).add(last);
            joint.stack = stack.build().unwrap();
            said(&joint)
        };
        assert_eq!(of(presses - 0.3), [true, false], "{thickness:?}");
        assert_eq!(of(presses + 0.3), [false, false], "{thickness:?}");
    }
}
