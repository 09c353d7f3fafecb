//! What is too much of a load, what is rounding, and the edge that a moment presses.

use super::*;
use crate::connection::tests::{at, bolt, bolt_by, corners, force, rectangle};
use crate::connection::{Outline, builder::ConnectionBuilder};
use crate::joint::JointMethods;
use crate::names::AiscEdition;
use crate::spread::Spread;
use crate::strength::group::DeformationLaw;
use crate::units::{millimetres, newton_metres, newtons};
use alloc::vec;

fn four() -> ConnectionBuilder {
    Connection::builder(bolt("10 mm")).bolts(at(&corners(60.0)))
}

fn found(builder: ConnectionBuilder, case: LoadCase) -> Result<Distribution, Error> {
    let connection = builder.cases([case]).build().unwrap();
    let case = Known::of(&connection).by_name("load")?;
    of_known(&connection, &case)
}

#[test]
fn a_slip_of_the_unit_is_refused() {
    type Set = fn(&mut LoadCase, f64);
    let forces: [Set; 3] = [
        |case, own| case.force_x = newtons(own),
        |case, own| case.force_y = newtons(own),
        |case, own| case.force_z = newtons(own),
    ];
    let moments: [Set; 3] = [
        |case, own| case.moment_x = newton_metres(own),
        |case, own| case.moment_y = newton_metres(own),
        |case, own| case.moment_z = newton_metres(own),
    ];
    let places: [Set; 3] = [
        |case, own| case.x = from_base(own),
        |case, own| case.y = from_base(own),
        |case, own| case.z = from_base(own),
    ];
    let limits = [
        (
            forces,
            1e12,
            Allowed::FromTo(newtons(-1e12).into(), newtons(1e12).into()),
        ),
        (
            moments,
            1e12,
            Allowed::FromTo(newton_metres(-1e12).into(), newton_metres(1e12).into()),
        ),
        (
            places,
            1e3,
            Allowed::FromTo((-LONGEST).into(), LONGEST.into()),
        ),
    ];
    for (sets, most, range) in limits {
        for set in sets {
            let with = |value: f64| {
                let mut case = force([1.0, 0.0, 0.0]);
                set(&mut case, value);
                sane(&case)
            };
            for fits in [most, -most, 0.0] {
                assert_eq!(with(fits), Ok(()));
            }
            for beyond in [most * 1.001, -most * 1.001, f64::NAN, f64::INFINITY] {
                match with(beyond) {
                    Err(Error::OutOfRange { allowed, .. }) => assert_eq!(allowed, range),
                    other => panic!("{beyond}: {other:?}"),
                }
            }
        }
    }
    // A case that is asked for by name is looked at, too.
    assert!(found(four(), force([1.1e9, 0.0, 0.0])).is_err());
    assert!(found(four(), force([1.0e9, 0.0, 0.0])).is_ok());
}

/// A billionth of the greatest is no load; what is more stays.
#[test]
fn what_is_left_of_forces_that_cancel_is_no_load() {
    // In kilonewtons: on each of four bolts 250 kN, and beside it 0.025 micronewtons or 0.25 N.
    for (kilonewtons, across, along) in [
        ([1e-10, 0.0, 1e3], 0.0, 250e3),
        ([1e-3, 0.0, 1e3], 0.25, 250e3),
        ([1e3, 0.0, 1e-10], 250e3, 0.0),
        ([0.0, 1e3, 1e-3], 250e3, 0.25),
    ] {
        let own = found(four(), force(kilonewtons)).unwrap();
        for load in own.loads {
            assert!((load.across.value - across).abs() < 1e-6, "{load:?}");
            assert!((load.along.value - along).abs() < 1e-6, "{load:?}");
            let size = hypot(load.x.value, load.y.value);
            assert!((size - across).abs() < 1e-6, "{load:?}");
            assert_eq!(across == 0.0, size == 0.0);
            assert_eq!(along == 0.0, load.along.value == 0.0);
        }
    }
}

#[test]
fn a_micrometre_is_no_arm() {
    for (micrometres, newton, turns) in [
        (0.5, 1e6, false),
        (2.0, 1e6, true),
        (0.5, 1.0, false),
        (2.0, 1.0, true),
        (0.0, 0.0, false),
    ] {
        let case = LoadCase {
            x: millimetres(1e-3 * micrometres),
            ..LoadCase::new(
                "load",
                [0.0, newton, 1e3].map(newtons),
                [0.0; 3].map(millimetres),
            )
        };
        // The pull beside it would tilt it by its own arm.
        let builder = four().out_of_plane(OutOfPlane::Clamped);
        let connection = builder.cases([case.clone()]).build().unwrap();
        let resolved = Known::of(&connection).by_name("load").unwrap();
        assert_eq!(is_turned(&connection.bolts, &resolved), Ok(turns));
        assert_eq!(of(&connection, &resolved).is_err(), turns, "{micrometres}");
    }
}

/// A force in the plane half a micrometre above it tilts nothing, and two micrometres above it does, whichever way it acts.
#[test]
fn above_the_plane_a_micrometre_is_no_arm() {
    for force in [[1e6, 0.0], [0.0, -1e6], [8e5, 6e5]] {
        for (micrometres, tilts) in [(0.5, false), (2.0, true)] {
            let case = LoadCase {
                z: millimetres(1e-3 * micrometres),
                ..LoadCase::new(
                    "load",
                    [force[0], force[1], 0.0].map(newtons),
                    [0.0; 3].map(millimetres),
                )
            };
            let builder = four().out_of_plane(OutOfPlane::Clamped);
            let found = self::found(builder, case).unwrap();
            let most = found.loads.iter().map(|own| own.along.value.abs());
            assert_eq!(
                most.fold(0.0, f64::max) > 0.0,
                tilts,
                "{force:?} {micrometres}"
            );
        }
    }
}

#[test]
fn a_method_is_named_where_it_was_used() {
    let elastic = Some(InPlane::Elastic.source());
    let turning = LoadCase::of_moment("load", [0.0, 0.0, 1e3].map(newton_metres));
    for (case, by) in [
        (force([0.0, -10.0, 0.0]), [elastic, None]),
        (turning, [elastic, None]),
        (force([0.0, 0.0, 10.0]), [None, None]),
    ] {
        let own = found(four().in_plane(InPlane::Elastic), case).unwrap();
        assert_eq!(own.methods, by);
    }
}

/// It is the method of AISC for bolts in shear alone; a load that only pulls does not ask for it.
#[test]
fn an_instantaneous_centre_is_of_bolts_in_shear() {
    let centre = InPlane::InstantaneousCentre(DeformationLaw::Aisc);
    let aisc = || {
        let bolt = bolt_by(JointMethods::aisc_lrfd(AiscEdition::E2016), "10 mm");
        let four = Connection::builder(bolt).bolts(at(&corners(60.0)));
        four.in_plane(centre)
    };
    let by = |found: Result<Distribution, Error>| found.map(|own| own.methods);
    let sheared = by(found(aisc(), force([0.0, -10.0, 0.0])));
    assert_eq!(sheared, Ok([Some(centre.source()), None]));
    assert!(found(aisc(), force([0.0, -10.0, 1.0])).is_err());
    assert_eq!(by(found(aisc(), force([0.0, 0.0, 10.0]))), Ok([None, None]));
    let other = || four().in_plane(centre);
    assert!(found(other(), force([0.0, -10.0, 0.0])).is_err());
    assert_eq!(
        by(found(other(), force([0.0, 0.0, 10.0]))),
        Ok([None, None])
    );
}

/// A moment about x that is positive pulls what lies above, one about y what lies to the left.
#[test]
fn the_edge_lies_where_the_moment_presses() {
    for (x, y, up) in [
        (5.0, 0.0, (0.0, 1.0)),
        (-5.0, 0.0, (0.0, -1.0)),
        (0.0, 5.0, (-1.0, 0.0)),
        (0.0, -5.0, (1.0, 0.0)),
        (3.0, 4.0, (-0.8, 0.6)),
    ] {
        let case = Resolved {
            name: "load".into(),
            plane: vec![],
            pull: PullLoad {
                force: newtons(0.0),
                about_x: newton_metres(x),
                about_y: newton_metres(y),
            },
        };
        let found = away_from_edge(&case);
        let off = hypot(found.0 - up.0, found.1 - up.1);
        assert!(off < 1e-12, "{x} {y}: {found:?}");
    }
}

fn tilted(
    places: &[(f64, f64)],
    beam: Option<Outline>,
    case: LoadCase,
) -> Result<Distribution, Error> {
    let (x, y) = (
        0.5 * (places[0].0 + places[2].0),
        0.5 * (places[0].1 + places[2].1),
    );
    let hanger = rectangle((x - 70.0, y - 70.0), (x + 70.0, y + 70.0));
    let mut builder = Connection::builder(bolt("10 mm"))
        .bolts(at(places))
        .out_of_plane(OutOfPlane::PressedEdge {
            ply: "hanger".into(),
        })
        .plate("hanger", hanger);
    if let Some(beam) = beam {
        builder = builder.plate("beam", beam);
    }
    let case = LoadCase {
        x: millimetres(x),
        y: millimetres(y),
        ..case
    };
    found(builder, case)
}

fn moment(x: f64, y: f64, kilonewtons: f64) -> LoadCase {
    force([0.0, 0.0, kilonewtons]).with_moment([x, y, 0.0].map(newton_metres))
}

/// Bolts about a place far from the origin, so that a sign of it counts.
const FAR: [(f64, f64); 4] = [
    (270.0, 170.0),
    (330.0, 170.0),
    (330.0, 230.0),
    (270.0, 230.0),
];

/// The edge of a hanger from 230 to 370 and from 130 to 270 lies on a beam that reaches as far, and over the edge of one that
/// ends 1 mm before.
#[test]
fn an_edge_hangs_over_on_its_own_side() {
    let reaches = |left, bottom, right, top| {
        rectangle((230.0 + left, 130.0 + bottom), (370.0 - right, 270.0 - top))
    };
    for (x, y, short) in [
        (1e3, 0.0, reaches(0.0, 1.0, 0.0, 0.0)),
        (-1e3, 0.0, reaches(0.0, 0.0, 0.0, 1.0)),
        (0.0, 1e3, reaches(0.0, 0.0, 1.0, 0.0)),
        (0.0, -1e3, reaches(1.0, 0.0, 0.0, 0.0)),
    ] {
        let flush = tilted(&FAR, Some(reaches(0.0, 0.0, 0.0, 0.0)), moment(x, y, 0.0));
        let edge = flush.unwrap().edge.unwrap();
        assert_eq!(edge.ply, "hanger");
        let over = tilted(&FAR, Some(short), moment(x, y, 0.0));
        assert!(over.is_err(), "{x} {y}");
        // A beam that ends elsewhere is none of its business.
        let other = reaches(
            if y < 0.0 { 0.0 } else { 1.0 },
            if x > 0.0 { 0.0 } else { 1.0 },
            if y > 0.0 { 0.0 } else { 1.0 },
            if x < 0.0 { 0.0 } else { 1.0 },
        );
        assert!(
            tilted(&FAR, Some(other), moment(x, y, 0.0)).is_ok(),
            "{x} {y}"
        );
    }
    // Onto a corner, 70 mm to the right and below.
    let on_corner = |beam| tilted(&FAR, Some(beam), moment(1e3, 1e3, 0.0));
    assert!(on_corner(reaches(0.0, 0.0, 0.0, 0.0)).is_ok());
    assert!(on_corner(reaches(1.0, 0.0, 0.0, 1.0)).is_ok());
    assert!(on_corner(reaches(0.0, 1.0, 0.0, 0.0)).is_err());
    assert!(on_corner(reaches(0.0, 0.0, 1.0, 0.0)).is_err());
}

/// A press of 20 kN beside 5 kN m about x acts 250 mm below the middle of the bolts, which is at 200 mm.
#[test]
fn what_presses_beside_a_moment_meets_it() {
    let beam = || Some(rectangle((0.0, 0.0), (600.0, 400.0)));
    let pressed = tilted(&FAR, beam(), moment(5e3, 0.0, -20.0)).unwrap();
    let (force, meets) = pressed.edge.unwrap().pressed.unwrap();
    assert!((force.value - 20e3).abs() < 1e-6);
    assert!((meets - (0.2 - 0.25)).abs() < 1e-9, "{meets}");
    for beside in [0.0, 5.0] {
        let alone = tilted(&FAR, beam(), moment(5e3, 0.0, beside)).unwrap();
        assert!(alone.edge.unwrap().pressed.is_none());
    }
}

/// 0.1 kN m on bolts 60 mm apart takes 0.83 kN off each of two that 100 kN pull with 25: nothing presses, so that nobody asks
/// what lies there. The moment alone presses on what is not said.
#[test]
fn where_all_bolts_pull_no_edge_presses() {
    let lifted = tilted(&FAR, None, moment(100.0, 0.0, 100.0)).unwrap();
    assert!(lifted.edge.is_none());
    assert!(lifted.loads.iter().all(|own| own.along.value > 24e3));
    assert!(tilted(&FAR, None, moment(100.0, 0.0, 0.0)).is_err());
}

#[test]
fn what_a_ply_may_press_on() {
    let stack = |names: &str, faces: &[usize]| {
        let mut builder = Stack::builder();
        for name in names.chars() {
            builder = builder.ply(name, Spread::exact(millimetres(10.0)));
        }
        builder.shear_planes(faces.iter().copied()).build().unwrap()
    };
    for (names, faces, ply, presses_on) in [
        // A face between b and c: from a ply to the first beyond it.
        ("abcd", &[2][..], "a", "bc"),
        ("abcd", &[2], "b", "c"),
        ("abcd", &[2], "c", "b"),
        ("abcd", &[2], "d", "bc"),
        // Two faces: either way to the first beyond the nearest.
        ("abcd", &[1, 3], "a", "b"),
        ("abcd", &[1, 3], "b", "acd"),
        ("abcd", &[1, 3], "c", "abd"),
        ("abcd", &[1, 3], "d", "c"),
        // Without a face, the neighbours.
        ("abcd", &[], "a", "b"),
        ("abcd", &[], "b", "ac"),
        ("abcd", &[], "c", "bd"),
        ("abcd", &[], "d", "c"),
        // Of a name that comes twice each is asked, and none twice.
        ("aba", &[1, 2], "a", "b"),
        ("aab", &[], "a", "b"),
    ] {
        let stack = stack(names, faces);
        let mut found = beside(&stack, ply);
        found.sort_unstable();
        assert_eq!(found.concat(), presses_on, "{ply} of {names} {faces:?}");
    }
}
