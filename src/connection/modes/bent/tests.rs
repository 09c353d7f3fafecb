//! Plates that an edge presses, by hand.

use super::*;
use crate::connection::tests::{at, bolt, corners, force, outline, rectangle};
use crate::joint::{TappedHole, TappedPart, Word};
use crate::units::{millimetres, newtons};
use alloc::vec;

type Corners = Vec<(f64, f64)>;

/// With its y axis along a direction.
fn along(up: Vector, corners: &[(f64, f64)]) -> Outline {
    let turned: Corners = corners
        .iter()
        .map(|(x, y)| (x * up.1 + y * up.0, y * up.1 - x * up.0))
        .collect();
    outline(&turned)
}

fn box_of(left: f64, bottom: f64, right: f64, top: f64) -> Corners {
    vec![(left, bottom), (right, bottom), (right, top), (left, top)]
}

fn edge(up: Vector, pressed: Option<(f64, f64)>) -> Edge {
    Edge {
        ply: "hanger".into(),
        up,
        force: newtons(1e4),
        pressed: pressed.map(|(force, meets)| (newtons(force), meets)),
    }
}

/// An edge at -100 mm presses with 10 kN times 1.5.
#[test]
fn a_plate_is_straight_to_what_is_fixed() {
    let wide = || box_of(-300.0, -100.0, 300.0, 300.0);
    let long = || box_of(-300.0, -300.0, 300.0, 300.0);
    let foot = || box_of(-50.0, -20.0, 50.0, 20.0);
    let begun = || {
        let mut corners = foot();
        corners.rotate_left(1);
        corners
    };
    // 80 mm from a foot of 100 mm: 1200 N m on 100 + 2 x 80 mm.
    let spread = 1200.0 / 0.26;
    // Between -60 and -50 mm the plate is 100 mm wide: 15e3 x 0.05 / 0.1, and just above -60 mm 15e3 x 0.04 / 0.1.
    let waist = || {
        vec![
            (-300.0, -100.0),
            (300.0, -100.0),
            (300.0, -60.0),
            (50.0, -60.0),
            (50.0, -50.0),
            (300.0, -50.0),
            (300.0, 300.0),
            (-300.0, 300.0),
            (-300.0, -50.0),
            (-50.0, -50.0),
            (-50.0, -60.0),
            (-300.0, -60.0),
        ]
    };
    // Just above -60 mm it is 20 mm wide, and at once wider: 15e3 x 0.04 / 0.02.
    let notch = || {
        vec![
            (-300.0, -100.0),
            (300.0, -100.0),
            (300.0, -60.0),
            (10.0, -60.0),
            (300.0, -50.0),
            (300.0, 300.0),
            (-300.0, 300.0),
            (-300.0, -50.0),
            (-10.0, -60.0),
            (-300.0, -60.0),
        ]
    };
    // Narrow beyond the foot, or beyond the edge: not between them.
    let head = || {
        vec![
            (-300.0, -100.0),
            (300.0, -100.0),
            (300.0, 5.0),
            (20.0, 5.0),
            (20.0, 300.0),
            (-20.0, 300.0),
            (-20.0, 5.0),
            (-300.0, 5.0),
        ]
    };
    // What is fixed below the edge, 50 mm from it: 750 N m. Its top is 20 mm wide and falls back steeper than 45 degrees, which
    // its sides meet 20 / 1.5 mm on: 33.3 mm and 2 x 50.
    let below = || {
        vec![
            (-10.0, -150.0),
            (10.0, -150.0),
            (50.0, -250.0),
            (-50.0, -250.0),
        ]
    };
    for up in [(0.0, 1.0), (1.0, 0.0), (0.0, -1.0), (-0.6, 0.8), (0.8, 0.6)] {
        for (name, plate, footprint, pressed, least) in [
            ("spread", wide(), foot(), None, spread),
            ("begun at its other corner", wide(), begun(), None, spread),
            (
                "narrow",
                box_of(-100.0, -100.0, 100.0, 300.0),
                foot(),
                None,
                1200.0 / 0.2,
            ),
            ("waist", waist(), foot(), None, 15e3 * 0.04999 / 0.1),
            ("notch", notch(), foot(), None, 15e3 * 0.04001 / 0.020_58),
            ("head", head(), foot(), None, spread),
            ("below", long(), below(), None, 750.0 / (0.1 + 0.1 / 3.0)),
            // 5 kN that press meet the moment below the foot, or above its lowest corner.
            ("beside", wide(), foot(), Some((5e3, -0.03)), 1.5 * spread),
            ("within", wide(), foot(), Some((5e3, -0.01)), spread),
        ] {
            let (plate, footprint) = (along(up, &plate), along(up, &footprint));
            let edge = edge(up, pressed);
            let is_straight = |bears| is_straight_to(&footprint, &plate, &edge, -0.1, (1.5, bears));
            assert!(is_straight(1.001 * least), "{name} {up:?}");
            assert!(!is_straight(0.999 * least), "{name} {up:?}");
        }
        // Where it is fixed from one side of the edge to the other, nothing bends.
        let over = along(up, &box_of(-50.0, -150.0, 50.0, 20.0));
        let plate = along(up, &long());
        assert!(is_straight_to(
            &over,
            &plate,
            &edge(up, None),
            -0.1,
            (1.5, 0.0)
        ));
    }
}

/// 10 mm of S275 bear 0.6 x 275 x 10^2 / 6 = 2750 N: 385 N m on 140 mm. The bolts next to the edge are 40 mm from it, so that it
/// may press with 385 / (1.5 x 0.04) = 6416.7 N.
#[test]
fn a_plate_is_straight_to_the_bolts_next_to_the_edge() {
    let plate = || rectangle((-70.0, -70.0), (70.0, 70.0));
    let pair = || at(&corners(60.0));
    let one = || at(&[(0.0, -30.0)]);
    let bends = Some(Mode::GrossSection);
    let asks = Some(Mode::Prying);
    for (bolts, newton, tilted, other) in [
        (pair(), 6410.0, asks, asks),
        (pair(), 6420.0, bends, asks),
        // Of one bolt nobody asks what is fixed, nor for the plate that it presses on.
        (one(), 6410.0, None, None),
        (one(), 6420.0, bends, None),
    ] {
        let is_one = bolts.bolts().len() == 1;
        let connection = Connection::builder(bolt("10 mm")).bolts(bolts);
        let connection = connection
            .plate("hanger", plate())
            .cases([force([0.0, 0.0, 1.0])]);
        let connection = connection.build().unwrap();
        let own = Own::new(&connection).unwrap();
        let edge = Edge {
            force: newtons(newton),
            ..edge((0.0, 1.0), None)
        };
        let say = |n: usize, is_tilted| {
            let found = pressed(&connection, &own, &edge, &own.plies[n], is_tilted);
            found.map(|(mode, need)| {
                let is_named = match mode {
                    Mode::GrossSection => matches!(need, Need::Method(_)),
                    _ => {
                        need == if n == 0 {
                            Need::Footprint
                        } else {
                            Need::Outline
                        }
                    }
                };
                assert!(is_named, "{need:?}");
                mode
            })
        };
        assert_eq!(say(0, true), tilted, "{newton}");
        assert_eq!(say(0, false), other, "{newton}");
        assert_eq!(say(1, false), (!is_one).then_some(Mode::Prying));
    }
}

#[test]
fn parts_lie_between_faces() {
    let plies = |faces: &[usize]| {
        bolt("10 mm")
            .ply("foot", "10 mm")
            .ply("packing", "10 mm")
            .shear_planes(faces.iter().copied())
    };
    let bed = || TappedPart::new("bed").thread(millimetres(30.0), TappedHole::Through);
    let of = |builder| {
        let connection = Connection::builder(builder).bolts(at(&corners(60.0)));
        parts(&connection.cases([force([0.0, 0.0, 1.0])]).build().unwrap())
    };
    assert_eq!(of(plies(&[2])), [0..2, 2..4]);
    assert_eq!(of(plies(&[1, 3])), [0..1, 1..3, 3..4]);
    // The last one has the thread: what lies below the last face is that part, which is taken for a stiff one.
    assert_eq!(of(plies(&[2, 4]).tapped(bed())), [0..2, 2..4]);
    assert_eq!(
        of(plies(&[4]).tapped(bed())),
        core::slice::from_ref(&(0..4))
    );
    // Without a face nobody knows which part the middle belongs to.
    let alone = |builder| {
        let connection = Connection::builder(builder).bolts(at(&corners(60.0)));
        let mut connection = connection.cases([force([0.0, 0.0, 1.0])]).build().unwrap();
        let stack = connection.joint.stack.to_builder().shear_planes([]);
        connection.joint.stack = stack.build().unwrap();
        parts(&connection)
    };
    assert_eq!(alone(plies(&[2])), [0..1, 3..4]);
    assert_eq!(
        alone(plies(&[2]).tapped(bed())),
        core::slice::from_ref(&(0..1))
    );
}

/// Bolts in pairs 40 mm apart, 65 mm from a stem and 100 and more from the edges: each bends 2 x 20 mm. 10 kN x 1.5 on four:
/// 3750 x 65 = 0.6 x 275 x 40 x t^2 / 6 at 14.89 mm.
#[test]
fn a_bolt_shares_the_way_to_the_next() {
    let places = [(-20.0, -75.0), (20.0, -75.0), (20.0, 75.0), (-20.0, 75.0)];
    for (thickness, word) in [("14.8 mm", Word::Undecided), ("15 mm", Word::Holds)] {
        let bolts = bolt(thickness).prying(crate::joint::Prying::None);
        let plate = || rectangle((-200.0, -200.0), (200.0, 200.0));
        let stem = || rectangle((-200.0, -10.0), (200.0, 10.0));
        let connection = Connection::builder(bolts)
            .bolts(at(&places))
            .plate("hanger", plate())
            .footprint(stem())
            .plate("beam", plate())
            .footprint(stem())
            .cases([force([0.0, 0.0, 10.0])])
            .build()
            .unwrap();
        let found = connection.check().unwrap();
        assert_eq!(found.word(), word, "{thickness}");
    }
}
