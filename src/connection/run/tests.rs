//! Loads that alternate, and the bolt that is asked for.

use super::*;
use crate::connection::tests::{at, bolt, corners, force};
use crate::connection::{ConnectionBuilder, LoadCase};

fn case(name: &str, load: [f64; 3]) -> LoadCase {
    LoadCase {
        name: name.into(),
        ..force(load)
    }
}

fn four() -> ConnectionBuilder {
    Connection::builder(bolt("10 mm")).bolts(at(&corners(60.0)))
}

/// A quarter of each on every bolt. The greater of both is the load, whichever is said first, and it falls by the way between
/// them, to no less than the same the other way.
#[test]
fn a_load_alternates_between_its_ends() {
    let (none, pull) = ([0.0, 0.0, 0.4], [0.0, 0.0, 40.0]);
    for (a, b, across, least, along, along_least) in [
        ([40.0, 0.0, 0.0], [20.0, 0.0, 0.0], 10e3, 5e3, 0.0, 0.0),
        ([40.0, 0.0, 0.0], none, 10e3, 0.0, 100.0, 0.0),
        ([40.0, 0.0, 0.0], [-40.0, 0.0, 0.0], 10e3, -10e3, 0.0, 0.0),
        ([40.0, 0.0, 0.0], [-20.0, 0.0, 0.0], 10e3, -5e3, 0.0, 0.0),
        // Across it by as much: 10 sqrt 2 kN apart.
        (
            [40.0, 0.0, 0.0],
            [0.0, 40.0, 0.0],
            10e3,
            10e3 * (1.0 - f64::sqrt(2.0)),
            0.0,
            0.0,
        ),
        (pull, none, 0.0, 0.0, 10e3, 100.0),
        // What presses takes the clamp force off again.
        (pull, [0.0, 0.0, -20.0], 0.0, 0.0, 10e3, -5e3),
    ] {
        for (a, b) in [(a, b), (b, a)] {
            let alternation = Alternation {
                cycles: Some(1e6),
                ..Alternation::new("a", "b")
            };
            let connection = four().cases([case("a", a), case("b", b)]);
            let connection = connection.alternation(alternation.clone()).build().unwrap();
            let asked = alternating(&connection, &Known::of(&connection), &alternation).unwrap();
            assert_eq!(asked.len(), 4);
            for own in asked {
                let Repeats::Between {
                    across_least,
                    along_least: low,
                    cycles,
                } = own.repeats
                else {
                    panic!("{a:?} {b:?}");
                };
                let near = |found: Force, hand: f64| (found.value - hand).abs() < 1e-6;
                assert!(near(own.load.across, across), "{a:?} {b:?}: {:?}", own.load);
                assert!(near(across_least, least), "{a:?} {b:?}: {across_least:?}");
                assert!(near(own.load.along, along), "{a:?} {b:?}: {:?}", own.load);
                assert!(near(low, along_least), "{a:?} {b:?}: {low:?}");
                assert_eq!(cycles, Some(1e6));
            }
        }
    }
}

/// Two bolts in line with a load at a third of the way: two thirds on the nearer, by moments about the other.
#[test]
fn bolts_are_counted_from_one() {
    let connection = Connection::builder(bolt("10 mm"))
        .bolts(at(&[(0.0, 0.0), (90.0, 0.0)]))
        .in_plane(crate::connection::InPlane::Elastic)
        .cases([LoadCase {
            x: crate::units::millimetres(30.0),
            ..force([0.0, 9.0, 0.0])
        }])
        .build()
        .unwrap();
    let loads = connection.forces("load").unwrap();
    assert!(
        (loads[0].across.value - 6e3).abs() < 1e-6 && (loads[1].across.value - 3e3).abs() < 1e-6
    );
    let used = |bolt| {
        let verdict = one_bolt(&connection, "load", bolt).unwrap();
        let checks = verdict.checks.iter();
        let mut shear = checks.filter(|own| own.mode == crate::strength::check::Mode::BoltShear);
        shear.next().unwrap().utilisation.value
    };
    assert!((used(1) - 2.0 * used(2)).abs() < 1e-9 && used(2) > 0.0);
    assert!(one_bolt(&connection, "load", 0).is_err());
    assert!(one_bolt(&connection, "load", 3).is_err());
    assert!(one_bolt(&connection, "other", 1).is_err());
}

#[test]
fn the_greater_of_two_that_may_not_be() {
    assert_eq!(greater(None, None), None);
    assert_eq!(greater(Some(0.3), None), Some(0.3));
    assert_eq!(greater(None, Some(0.3)), Some(0.3));
    assert_eq!(greater(Some(0.3), Some(0.4)), Some(0.4));
    assert_eq!(greater(Some(0.4), Some(0.3)), Some(0.4));
}

/// The sheet is of the verdict that the connection has now; several bolts have an order, one has none.
#[test]
fn a_sheet_is_of_its_own_verdict() {
    use crate::joint::SheetStep;
    let of = |places: &[(f64, f64)]| {
        let connection = Connection::builder(bolt("10 mm")).bolts(at(places));
        connection.cases([force([4.0, 0.0, 0.0])]).build().unwrap()
    };
    let steps = |connection: &Connection| {
        let verdict = connection.check().unwrap();
        let sheet = sheet(connection, &verdict).unwrap();
        let orders = sheet.assembly.iter();
        let orders = orders.filter(|step| matches!(step, SheetStep::Order(_)));
        (orders.count(), sheet.inspection)
    };
    let (one, two) = (of(&[(0.0, 0.0)]), of(&[(0.0, 0.0), (90.0, 0.0)]));
    let four = of(&corners(60.0));
    assert_eq!([&one, &two, &four].map(|own| steps(own).0), [0, 1, 1]);
    let of_two = two.check().unwrap();
    assert!(sheet(&one, &of_two).is_err() && sheet(&four, &of_two).is_err());
    let mut other = of_two.clone();
    other.title.push('!');
    assert!(sheet(&two, &other).is_err());
}
