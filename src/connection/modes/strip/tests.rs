//! Strips by hand, in metres.

use super::*;
use crate::connection::tests::{outline, rectangle};
use alloc::vec;

fn near(found: f64, hand: f64) -> bool {
    (found - hand).abs() < 1e-7
}

/// 60 mm wide.
fn strip(foot: Vector, way: Vector) -> Strip {
    Strip {
        foot,
        way,
        arm: 0.05,
        left: 0.03,
        right: 0.03,
        force: 1000.0,
    }
}

const UP: Vector = (0.0, 1.0);

/// Seen along the way to its foot, a strip covers as much of another as lies side by side.
#[test]
fn shares_of_strips() {
    let own = strip((0.0, 0.0), UP);
    let half_way = (f64::sqrt(0.75), 0.5);
    let from = |foot, way| own.share(&strip(foot, way));
    for (foot, way, share) in [
        ((0.0, 0.0), UP, 1.0),
        ((0.03, 0.0), UP, 0.5),
        ((-0.03, 0.0), UP, 0.5),
        ((0.045, 0.01), UP, 0.25),
        // Side by side they touch.
        ((0.06, 0.0), UP, 0.0),
        ((-0.06, 0.0), UP, 0.0),
        // Behind it in line, up to both widths away.
        ((0.0, 0.119), UP, 1.0),
        ((0.0, 0.121), UP, 0.0),
        // From the other side, and square to it.
        ((0.0, 0.0), (0.0, -1.0), 0.0),
        ((0.0, 0.0), (1.0, 0.0), 0.0),
        // Around a corner by 60 degrees it covers 30 of the 60 mm: all of it here, half of it 30 mm aside.
        ((0.0, 0.0), half_way, 1.0),
        ((0.03, 0.0), half_way, 0.5),
        ((-0.03, 0.0), half_way, 0.5),
    ] {
        let found = from(foot, way);
        assert!(near(found, share), "{foot:?} {way:?}: {found}");
    }
    // One without width lies within or beside.
    let line = |x| Strip {
        left: 0.0,
        right: 0.0,
        ..strip((x, 0.0), UP)
    };
    assert!(near(own.share(&line(0.029)), 1.0));
    assert!(near(own.share(&line(-0.029)), 1.0));
    assert!(near(own.share(&line(0.031)), 0.0));
    assert!(near(line(0.0).share(&line(0.0)), 1.0));
    // The second reaches along the turned way, which falls in x here.
    let lopsided = Strip {
        left: 0.01,
        right: 0.03,
        ..strip((0.0, 0.0), UP)
    };
    assert!(near(lopsided.share(&line(0.005)), 1.0));
    let (one, other) = (lopsided.share(&line(0.02)), lopsided.share(&line(-0.02)));
    assert!(near(one + other, 1.0) && near(one * other, 0.0));
    assert_eq!(turned(UP), (-1.0, 0.0));
    assert!(near(other, 1.0));
}

/// 1 kN over 50 mm on 60 mm needs 833.3 N m to the metre; with half of a neighbour's 1.5 times that.
#[test]
fn strips_bear_what_comes_to_their_foot() {
    let own = || strip((0.0, 0.0), UP);
    let alone = [own()];
    assert!(are_stiff(&alone, 834.0));
    assert!(!are_stiff(&alone, 833.0));
    let two = [own(), strip((0.03, 0.0), UP)];
    assert!(are_stiff(&two, 1251.0));
    assert!(!are_stiff(&two, 1249.0));
    // What carries nothing itself takes nothing from others.
    let idle = Strip {
        force: 0.0,
        left: 0.001,
        right: 0.001,
        ..own()
    };
    assert!(are_stiff(&[own(), idle], 834.0));
    let little = Strip {
        force: 1.0,
        left: 0.001,
        right: 0.001,
        ..own()
    };
    assert!(!are_stiff(&[own(), little], 834.0));
    assert!(are_stiff(&[], 0.0));
}

/// A plate of 200 by 200 mm about the origin, from 30 mm right of its middle.
#[test]
fn a_plate_reaches_to_both_sides_of_a_way() {
    let plate = rectangle((-100.0, -100.0), (100.0, 100.0));
    let sides = |plate: &Outline, from, way, far| {
        let (left, right) = beside(plate, from, way, far);
        (left.min(right), left.max(right))
    };
    let from = (0.03, 0.0);
    for way in [UP, (0.0, -1.0)] {
        let (small, large) = sides(&plate, from, way, 0.05);
        assert!(near(small, 0.07) && near(large, 0.13), "{small} {large}");
    }
    for way in [(1.0, 0.0), (-1.0, 0.0)] {
        let (small, large) = sides(&plate, from, way, 0.05);
        assert!(near(small, 0.1) && near(large, 0.1), "{small} {large}");
    }
    // On the way up the right edge comes first, on the way down the left one.
    assert!(near(beside(&plate, from, UP, 0.05).0, 0.07));
    assert!(near(beside(&plate, from, (0.0, -1.0), 0.05).0, 0.13));
    // The edge crosses a way that leaves the plate.
    assert_eq!(beside(&plate, from, UP, 0.11), (0.0, 0.0));
    assert_ne!(beside(&plate, from, UP, 0.099), (0.0, 0.0));
    // From 100 mm on both sides at the bottom to 40 at the top, 200 mm above: 0.3 a millimetre. 50 mm above the middle it is
    // 70 - 15 = 55 mm.
    let taper = outline(&[
        (-100.0, -100.0),
        (100.0, -100.0),
        (40.0, 100.0),
        (-40.0, 100.0),
    ]);
    for (way, least) in [(UP, 0.055), ((0.0, -1.0), 0.07)] {
        let (small, large) = sides(&taper, (0.0, 0.0), way, 0.05);
        assert!(near(small, least), "{small}");
        assert!(near(large, least), "{large}");
    }
    // A notch beside the way counts, one beyond it or behind it does not; one across it leaves nothing.
    let notched = |to: f64, from: f64| {
        outline(&[
            (-100.0, -100.0),
            (100.0, -100.0),
            (100.0, from),
            (to, from),
            (to, from + 10.0),
            (100.0, from + 10.0),
            (100.0, 100.0),
            (-100.0, 100.0),
        ])
    };
    for (to, from, least) in [
        (20.0, 20.0, 0.02),
        (20.0, 45.0, 0.02),
        (20.0, 51.0, 0.1),
        (20.0, -11.0, 0.1),
        (20.0, -9.0, 0.02),
        (-20.0, 20.0, 0.0),
    ] {
        let (small, _) = sides(&notched(to, from), (0.0, 0.0), UP, 0.05);
        assert!(near(small, least), "{to} {from}: {small}");
    }
}

/// To the side, and back: as far as the edge stays within 45 degrees of what is met first.
#[test]
fn edges_are_followed_as_far_as_they_do_not_fall_back() {
    let to = |points: &[Vector]| followed(points.iter().copied());
    for (points, far) in [
        (vec![(0.1, 0.0)], 0.1),
        (vec![(0.05, 0.0), (0.1, 0.0)], 0.1),
        (vec![(0.1, 0.1)], 0.1),
        (vec![(0.1, -0.1)], 0.1),
        // Steeper from the first on.
        (vec![(0.1, 0.2)], 0.0),
        // (0.05 + 0.05 t, 0.2 t) meets 45 degrees at t = 1/3.
        (vec![(0.05, 0.0), (0.1, 0.2)], 0.05 + 0.05 / 3.0),
        // From (0.05, 0.02): (0.05 + 0.05 t, 0.02 + 0.18 t), at t = 3/13.
        (vec![(0.05, 0.02), (0.1, 0.2)], 0.05 + 0.05 * 3.0 / 13.0),
        // It turns back, or goes straight behind.
        (vec![(0.05, 0.0), (0.05, 0.1), (0.2, 0.1)], 0.05),
        (vec![(0.05, 0.0), (0.03, 0.1)], 0.05),
        (vec![(-0.05, 0.0)], 0.0),
        // A corner that comes twice is no end.
        (
            vec![(0.0, 0.0), (0.05, 0.0), (0.05, 0.0), (0.08, 0.0)],
            0.08,
        ),
        (vec![], 0.0),
    ] {
        let found = to(&points);
        assert!(near(found, far), "{points:?}: {found}");
    }
}

#[test]
fn what_is_fixed_reaches_as_far_as_its_front() {
    // A post of 100 mm: at the middle of its side, 20 mm beside it, and at its corner.
    let post = rectangle((-50.0, -50.0), (50.0, 50.0));
    let slant = f64::sqrt(0.5);
    for (foot, way, one, other) in [
        ((0.0, 0.05), (0.0, -1.0), 0.05, 0.05),
        ((0.02, 0.05), (0.0, -1.0), 0.03, 0.07),
        ((0.05, 0.0), (-1.0, 0.0), 0.05, 0.05),
        ((-0.05, 0.01), (1.0, 0.0), 0.04, 0.06),
        ((0.05, 0.05), (-slant, -slant), 0.1 * slant, 0.1 * slant),
    ] {
        let (left, right) = front(&post, foot, way);
        let (small, large) = (left.min(right), left.max(right));
        assert!(
            near(small, one) && near(large, other),
            "{foot:?}: {left} {right}"
        );
    }
    // On the way down what rises in x comes last.
    let (left, right) = front(&post, (0.02, 0.05), (0.0, -1.0));
    assert!(near(left, 0.07) && near(right, 0.03), "{left} {right}");
    // A rib of 20 mm before the post is no wider for it, whichever way its corners go around.
    let mut rib = vec![
        (-10.0, 80.0),
        (-10.0, 50.0),
        (-50.0, 50.0),
        (-50.0, -50.0),
        (50.0, -50.0),
        (50.0, 50.0),
        (10.0, 50.0),
        (10.0, 80.0),
    ];
    for _ in 0..2 {
        let found = front(&outline(&rib), (0.0, 0.08), (0.0, -1.0));
        assert!(near(found.0, 0.01) && near(found.1, 0.01), "{found:?}");
        rib.reverse();
    }
}

/// 40 mm from a stem, beside the edge of the plate by 25 mm, with room for 30.
#[test]
fn a_strip_is_no_wider_than_all_that_bounds_it() {
    let plate = rectangle((-100.0, -100.0), (100.0, 100.0));
    let stem = rectangle((-100.0, -10.0), (100.0, 10.0));
    let of = |stem: &Outline, x: f64, room: f64| {
        let strip = Strip::new(&plate, stem, (x, 0.05), room, 10.0).unwrap();
        assert!(near(strip.arm, 0.04));
        assert!(near(strip.moment(), 0.4));
        strip.width()
    };
    assert!(near(of(&stem, 0.0, 1.0), 0.08));
    assert!(near(of(&stem, 0.0, 0.03), 0.06));
    assert!(near(of(&stem, 0.075, 1.0), 0.065));
    assert!(near(of(&stem, -0.075, 1.0), 0.065));
    // A rib that reaches 15 mm to one side of the bolt.
    let rib = rectangle((-100.0, -10.0), (15.0, 10.0));
    assert!(near(of(&rib, 0.0, 1.0), 0.055));
    // Within what is fixed, at its edge, there is no arm.
    assert!(Strip::new(&plate, &stem, (0.0, 0.01), 1.0, 10.0).is_none());
}

/// An edge that falls back by just 45 degrees is followed, in small steps and in large ones; one that falls back by more is
/// not, from where it does on.
#[test]
fn an_edge_is_followed_to_45_degrees() {
    let far = |points: &[Vector]| followed(points.iter().copied());
    for (points, reach) in [
        (&[(0.01, 0.01), (0.02, 0.02)][..], 0.02),
        (&[(0.0005, 0.0005), (0.001, 0.001)], 0.001),
        (&[(1.0, 1.0), (2.0, 2.0)], 2.0),
        (&[(0.01, 0.0), (0.02, 0.03)], 0.015),
        (&[(0.01, 0.010_001), (0.02, 0.020_002)], 0.0),
        (&[(0.01, 0.0), (0.005, 0.01), (0.03, 0.01)], 0.01),
    ] {
        let found = far(points);
        assert!(near(found, reach), "{points:?}: {found}");
    }
}

/// A bolt without a pull bends nothing, whatever comes to its foot from others; one with the least of a pull does.
#[test]
fn what_is_not_pulled_is_not_bent() {
    let narrow = |force| Strip {
        left: 0.0,
        right: 0.0,
        force,
        ..strip((0.0, 0.0), UP)
    };
    let stiff = |force| are_stiff(&[narrow(force), strip((0.0, 0.0), UP)], 50.0 / 0.06 * 1.001);
    assert!(stiff(0.0) && !stiff(1e-3));
}

/// From the origin upwards 60 mm: a notch whose tip lies on the way crosses it, from either side; a side at its end does not.
#[test]
fn a_tip_on_the_way_leaves_nothing() {
    let notched = |sign: f64, tip: f64| {
        outline(&[
            (sign * 50.0, -50.0),
            (sign * 50.0, 20.0),
            (sign * tip, 30.0),
            (sign * 50.0, 40.0),
            (sign * 50.0, 100.0),
            (sign * -50.0, 100.0),
            (sign * -50.0, -50.0),
        ])
    };
    for sign in [1.0, -1.0] {
        let of = |tip| {
            let found = beside(&notched(sign, tip), (0.0, 0.0), UP, 0.06);
            (found.0.min(found.1), found.0.max(found.1))
        };
        assert_eq!(of(0.0), (0.0, 0.0));
        assert_eq!(of(-1.0), (0.0, 0.0));
        let (narrow, wide) = of(1.0);
        assert!(near(narrow, 0.001) && near(wide, 0.05), "{narrow} {wide}");
    }
    // What is fixed lies at the edge of the plate: to there it is as wide as it is.
    let (plate, fixed) = (
        rectangle((-50.0, -50.0), (50.0, 60.0)),
        rectangle((-50.0, 60.0), (50.0, 90.0)),
    );
    let found = Strip::new(&plate, &fixed, (0.0, 0.0), 1.0, 1.0).unwrap();
    assert!(near(found.width(), 0.1), "{}", found.width());
}
