//! What room a flange has, by hand; lengths in millimetres.

use super::*;
use crate::connection::tests::{at, bolt, force, outline, rectangle};
use crate::units::millimetres;

/// Its x axis along a direction.
fn along(way: Vector, corners: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let corners = corners.iter();
    let corners = corners.map(|(x, y)| (x * way.0 - y * way.1, x * way.1 + y * way.0));
    corners.collect()
}

/// Rows at 0, 60 and 130 in a flange from -35 to 150, in lines at 60 and 140 from 30 to 160. To the rows belong 35 + 30, 30 +
/// 35 and 35 + 20; the lines are 30 and 20 from the edges, and the stem is 40 from both. Without its outline nobody knows what
/// the outer rows have: 65 belong to the middle one.
#[test]
fn room_of_a_flange() {
    let places = [
        (0.0, 60.0),
        (60.0, 60.0),
        (130.0, 60.0),
        (0.0, 140.0),
        (60.0, 140.0),
        (130.0, 140.0),
    ];
    let flange = [(-35.0, 30.0), (150.0, 30.0), (150.0, 160.0), (-35.0, 160.0)];
    let near = |found: f64, hand: f64| (found * 1e3 - hand).abs() < 1e-6;
    for way in [
        (1.0, 0.0),
        (0.0, 1.0),
        (-1.0, 0.0),
        (0.0, -1.0),
        (0.6, 0.8),
        (-0.8, 0.6),
    ] {
        let own = outline(&along(way, &flange));
        let places: Vec<Vector> = along(way, &places)
            .iter()
            .map(|(x, y)| (1e-3 * x, 1e-3 * y))
            .collect();
        for way in [way, (-way.0, -way.1)] {
            let found = room(&places, Some(&own), way).unwrap();
            assert!(near(found.tributary, 55.0), "{way:?}: {}", found.tributary);
            assert!(near(found.to_stem, 40.0), "{way:?}: {}", found.to_stem);
            assert!(
                near(found.to_edge.unwrap(), 20.0),
                "{way:?}: {:?}",
                found.to_edge
            );
            let bare = room(&places, None, way).unwrap();
            assert!(near(bare.tributary, 65.0), "{way:?}: {}", bare.tributary);
            assert!(bare.to_edge.is_none());
            assert!(room(&places[..5], Some(&own), way).is_none());
        }
        // The other line is the nearer one to its edge.
        let flange = [(-35.0, 40.0), (150.0, 40.0), (150.0, 170.0), (-35.0, 170.0)];
        let own = outline(&along(way, &flange));
        for way in [way, (-way.0, -way.1)] {
            let found = room(&places, Some(&own), way).unwrap();
            assert!(near(found.to_edge.unwrap(), 20.0), "{way:?}");
        }
        // Three lines.
        assert!(room(&places, Some(&own), turned(way)).is_none());
    }
}

/// Bolts 60 by 90 apart in a flange of 140 by 160. With its stem along the 60: 60 belong to a bolt, the stem is less than 45
/// away, the edge 35. Along the 90: 40 + 35 + 5, less than 30, and 40.
#[test]
fn a_flange_reaches_no_farther_than_it_can() {
    let fits = |[p, b, a]: [f64; 3], stem: bool| {
        let places = [(-30.0, -45.0), (30.0, -45.0), (30.0, 45.0), (-30.0, 45.0)];
        let flange = rectangle((-70.0, -80.0), (70.0, 80.0));
        let mut builder = Connection::builder(bolt("10 mm"))
            .bolts(at(&places))
            .plate("hanger", flange);
        if stem {
            builder = builder.footprint(rectangle((-70.0, -10.0), (70.0, 10.0)));
        }
        let connection = builder.cases([force([0.0, 0.0, 1.0])]).build().unwrap();
        let [p, b, a] = [p, b, a].map(millimetres);
        match fits(&connection, &PlatePrying::new("hanger", p, b, a)) {
            Ok(()) => "fits",
            Err(Error::Mismatch(_)) => "farther",
            Err(Error::OutOfRange { .. }) => "beyond",
            Err(other) => panic!("{other}"),
        }
    };
    for (flange, word) in [
        ([60.0, 44.9, 35.0], "fits"),
        ([60.0, 45.0, 35.0], "farther"),
        ([60.0, 44.9, 35.1], "farther"),
        ([60.1, 44.9, 35.0], "farther"),
        ([80.0, 29.9, 40.0], "fits"),
        ([80.0, 30.0, 40.0], "farther"),
        ([80.0, 29.9, 40.1], "farther"),
        ([80.1, 29.9, 40.0], "beyond"),
    ] {
        assert_eq!(fits(flange, false), word, "{flange:?}");
    }
    // What is fixed to it is 35 from the bolts.
    assert_eq!(fits([60.0, 35.0, 35.0], true), "fits");
    assert_eq!(fits([60.0, 34.9, 35.0], true), "beyond");
}
