//! What is refused, and what lies beside it and is not.

use super::*;
use crate::connection::Outline;
use crate::connection::tests::{at, bolt, corners, force, outline, rectangle};
use crate::connection::{ConnectionBuilder, LoadCase, Side};
use crate::joint::{Joint, JointPly, Stack};
use crate::units::{millimetres, newtons};
use alloc::string::ToString;

fn with_bolts(places: &[(f64, f64)]) -> ConnectionBuilder {
    Connection::builder(bolt("10 mm"))
        .bolts(at(places))
        .cases([force([0.0, 1.0, 0.0])])
}

fn four() -> ConnectionBuilder {
    with_bolts(&corners(60.0))
}

fn said(connection: &Connection) -> String {
    checked(connection).map_or_else(|why| why.to_string(), |()| "sane".into())
}

fn of(builder: ConnectionBuilder) -> String {
    said(&builder.build().unwrap())
}

/// Bolts of 16 mm stand beside each other 16 mm apart and no nearer, wherever they are.
#[test]
fn bolts_do_not_stand_in_one_another() {
    let pair = |from: (f64, f64), offset: (f64, f64)| {
        let to = (from.0 + offset.0, from.1 + offset.1);
        of(with_bolts(&[from, (500.0, 500.0), to]))
    };
    for from in [
        (0.0, 0.0),
        (8.0, -8.0),
        (-95.0, 130.0),
        (1.0, 15.9),
        (-15.9, -1.0),
    ] {
        for (x, y) in [(1.0, 0.0), (0.0, 1.0), (-1.0, 0.0), (0.0, -1.0)] {
            assert_eq!(
                pair(from, (16.01 * x, 16.01 * y)),
                "sane",
                "{from:?} {x} {y}"
            );
            let within = pair(from, (15.9 * x, 15.9 * y));
            assert!(
                within.contains("bolts 1 and 3 "),
                "{from:?} {x} {y}: {within}"
            );
            // Askew by 45 degrees 11 mm are 15.6, and 12 are 17.
            let (right, up) = (x - y, x + y);
            assert_eq!(pair(from, (12.0 * right, 12.0 * up)), "sane");
            assert!(pair(from, (11.0 * right, 11.0 * up)).contains("bolts 1 and 3 "));
        }
    }
    assert_eq!(pair((0.0, 0.0), (0.0, 16.0)), "sane");
}

#[test]
fn a_template_says_nothing_that_the_connection_says() {
    type Change = fn(&mut Joint);
    let changes: [(Change, bool, bool); 6] = [
        (|own| own.load.across = newtons(1.0), true, true),
        (|own| own.load.along = newtons(1.0), true, true),
        (
            |own| own.stack = with(own, |ply| ply.pitch = Some(millimetres(60.0))),
            true,
            true,
        ),
        (
            |own| own.stack = with(own, |ply| ply.gauge = Some(millimetres(60.0))),
            true,
            true,
        ),
        // One bolt may have a width where nobody gives its plate.
        (
            |own| own.stack = with(own, |ply| ply.width = Some(millimetres(60.0))),
            true,
            false,
        ),
        (
            |own| own.stack = with(own, |ply| ply.end_distance = Some(millimetres(60.0))),
            false,
            false,
        ),
    ];
    for (change, of_four, of_one) in changes {
        for (builder, is_refused) in [(four(), of_four), (with_bolts(&[(0.0, 0.0)]), of_one)] {
            let mut connection = builder.build().unwrap();
            assert_eq!(said(&connection), "sane");
            change(&mut connection.joint);
            assert_eq!(
                said(&connection) != "sane",
                is_refused,
                "{}",
                said(&connection)
            );
        }
    }
}

/// What a plate is said to be is said once, after it; of another plate it may be said again.
#[test]
fn a_plate_is_described_once() {
    type Says = fn(ConnectionBuilder) -> ConnectionBuilder;
    let says: [(&str, Says); 4] = [
        ("where a plate is held", |own| own.held(Side::Left)),
        ("buckling length", |own| own.buckling_length("80 mm")),
        ("grain of a plate", |own| own.grain("30 deg")),
        ("what is fixed to a plate", |own| {
            own.footprint(rectangle((-10.0, -10.0), (10.0, 10.0)))
        }),
    ];
    let plate = || rectangle((-70.0, -70.0), (70.0, 70.0));
    for (what, say) in says {
        let one = || say(four().plate("hanger", plate()));
        assert!(one().build().is_ok(), "{what}");
        assert!(say(one().plate("beam", plate())).build().is_ok(), "{what}");
        let twice = say(one()).build().unwrap_err().to_string();
        assert!(twice.contains("said twice"), "{what}: {twice}");
        let early = say(four()).build().unwrap_err().to_string();
        assert!(early.contains("before any plate"), "{what}: {early}");
    }
    let grained = four().plate("hanger", plate()).grain("30 deg").build();
    let grain = grained.unwrap().plates[0].grain.unwrap();
    assert!((grain.value.to_degrees() - 30.0).abs() < 1e-9);
}

/// A bolt that has a load is refused where the connection is put together, whichever way it pulls.
#[test]
fn a_loaded_bolt_is_no_template() {
    for (across, along, right) in [
        ("0 kN", "0 kN", true),
        ("1 kN", "0 kN", false),
        ("0 kN", "1 kN", false),
        ("1 kN", "1 kN", false),
    ] {
        let bolt = bolt("10 mm").across(across).along(along);
        let built = Connection::builder(bolt)
            .bolts(at(&corners(60.0)))
            .cases([force([0.0, 1.0, 0.0])])
            .build();
        assert_eq!(built.is_ok(), right, "{across}, {along}");
    }
}

fn with(joint: &Joint, set: fn(&mut JointPly)) -> Stack {
    joint.stack.to_builder().each_ply(set).build().unwrap()
}

/// The load acts on a ply that is there, and that pulls one way.
#[test]
fn the_loaded_ply_pulls() {
    let three = |pulls: [f64; 3], loaded: &str| {
        let bolt = Joint::builder("M16");
        let names = ["cover", "tongue", "cover"];
        let bolt = names.iter().zip(pulls).fold(bolt, |bolt, (name, pull)| {
            bolt.ply(*name, "8 mm").material("S275 steel").pulls(pull)
        });
        let places = at(&corners(60.0));
        let builder = Connection::builder(bolt).bolts(places).loaded(loaded);
        of(builder.cases([force([0.0, 1.0, 0.0])]))
    };
    assert_eq!(three([0.5, -1.0, 0.5], "tongue"), "sane");
    assert_eq!(three([0.5, -1.0, 0.5], "cover"), "sane");
    assert_eq!(three([1.0, -1.0, 0.0], "cover"), "sane");
    assert_eq!(three([-1.0, 1.0, 0.0], "cover"), "sane");
    assert!(three([1.0, 0.0, -1.0], "cover").contains("both ways"));
    assert!(three([-1.0, 0.0, 1.0], "cover").contains("both ways"));
    assert!(three([1.0, 0.0, -1.0], "tongue").contains("packing"));
    let unknown = three([0.5, -1.0, 0.5], "tonge");
    assert!(unknown.contains("cover, tongue, cover"), "{unknown}");
}

/// No ends make it buckle over less than half the way from its last row, 40 mm here.
#[test]
fn a_plate_buckles_over_half_its_way_at_least() {
    let over = |outline: Outline, length: f64| {
        let builder = four().plate("hanger", outline).held(Side::Top);
        of(builder.buckling_length(millimetres(length)))
    };
    let straight = || rectangle((-70.0, -70.0), (70.0, 70.0));
    assert_eq!(over(straight(), 20.0), "sane");
    assert_eq!(over(straight(), 20.001), "sane");
    assert!(over(straight(), 19.99).contains("buckling length of \"hanger\""));
    // A side that rises from 40 to 120 mm over 140: the mean of the ways of both bolts at 30 mm is half of 80 - 30 mm.
    let slanting = || outline(&[(-70.0, -70.0), (70.0, -70.0), (70.0, 120.0), (-70.0, 40.0)]);
    assert_eq!(over(slanting(), 25.0), "sane");
    assert_ne!(over(slanting(), 24.9), "sane");
    let nowhere = four().plate("hanger", straight()).buckling_length("40 mm");
    assert!(of(nowhere).contains("is held nowhere"));
}

/// It may reach to the edge of its plate, and half a bolt of 16 mm beside a bolt.
#[test]
fn what_is_fixed_lies_on_its_plate_beside_the_bolts() {
    let fixed = |footprint: Outline| {
        let plate = rectangle((-70.0, -70.0), (70.0, 70.0));
        of(four().plate("hanger", plate).footprint(footprint))
    };
    assert_eq!(fixed(rectangle((-70.0, -10.0), (70.0, 10.0))), "sane");
    assert!(fixed(rectangle((-70.1, -10.0), (70.0, 10.0))).contains("beyond its outline"));
    assert_eq!(fixed(rectangle((-70.0, -21.9), (70.0, 21.9))), "sane");
    assert!(fixed(rectangle((-70.0, -22.1), (70.0, 10.0))).contains("bolt 1 "));
    assert!(fixed(rectangle((-70.0, -10.0), (70.0, 22.1))).contains("bolt 3 "));
}

#[test]
fn factors_of_combinations_have_their_limits() {
    let with = |factor: f64| {
        let combination = Combination::new("ultimate").plus(factor, "load");
        checked(&four().combination(combination).build().unwrap())
    };
    for fits in [1e3, -1e3, 1e-3, -1e-3, 1.0] {
        assert_eq!(with(fits), Ok(()), "{fits}");
    }
    let size = Allowed::FromTo(LEAST_FACTOR.into(), MOST_FACTOR.into());
    let whole = Allowed::FromTo((-1e3).into(), 1e3.into());
    for (beyond, range) in [
        (1000.1, whole),
        (-1000.1, whole),
        (f64::NAN, whole),
        (0.000_99, size),
        (-0.000_99, size),
    ] {
        match with(beyond) {
            Err(Error::OutOfRange { allowed, .. }) => assert_eq!(allowed, range, "{beyond}"),
            other => panic!("{beyond}: {other:?}"),
        }
    }
    let other = LoadCase {
        name: "other".into(),
        ..force([1.0, 0.0, 0.0])
    };
    let one = Combination::new("ultimate").plus(1.0, "load");
    let left_out = four().cases([other]).combination(one);
    assert!(of(left_out).contains("\"other\" is in no combination"));
}

#[test]
fn an_outline_is_of_a_ply_that_is_there() {
    let plate = || rectangle((-70.0, -70.0), (70.0, 70.0));
    assert_eq!(of(four().plate("beam", plate())), "sane");
    let unknown = of(four().plate("beem", plate()));
    assert!(unknown.contains("hanger, beam"), "{unknown}");
    let twice = of(four().plate("beam", plate()).plate("beam", plate()));
    assert!(twice.contains("two outlines"), "{twice}");
    let outside = rectangle((-70.0, -70.0), (70.0, 29.0));
    assert!(of(four().plate("beam", outside)).contains("bolt 3 is outside"));
}
