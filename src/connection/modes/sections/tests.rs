//! Which sections of a plate are known under which load, and that it does not matter where the origin lies.

use super::*;
use crate::connection::tests::{at, bolt_by, corners, force, rectangle};
use crate::connection::{ConnectionVerdict, InPlane, LoadCase, Side};
use crate::joint::{JointMethods, Word};
use crate::names::AiscEdition;
use crate::strength::check::Place;
use crate::units::millimetres;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

fn aisc() -> JointMethods {
    JointMethods::aisc_lrfd(AiscEdition::E2016)
}

/// A hanger of 20 mm, so thick that 130 mm from its bolts to where it is held do not buckle (20 / 0.15 = 133 mm); all of it moved
/// by some millimetres.
fn lap(
    methods: JointMethods,
    places: &[(f64, f64)],
    load: [f64; 3],
    (x, y): (f64, f64),
) -> ConnectionVerdict {
    let places: Vec<(f64, f64)> = places.iter().map(|own| (own.0 + x, own.1 + y)).collect();
    let plate = |low: f64, high: f64| rectangle((x - 70.0, y + low), (x + 70.0, y + high));
    let case = LoadCase {
        x: millimetres(x),
        y: millimetres(y),
        ..force(load)
    };
    Connection::builder(bolt_by(methods, "20 mm"))
        .bolts(at(&places))
        .in_plane(InPlane::Elastic)
        .plate("hanger", plate(-70.0, 130.0))
        .held(Side::Top)
        .plate("beam", plate(-130.0, 70.0))
        .held(Side::Bottom)
        .loaded("hanger")
        .cases([case])
        .build()
        .unwrap()
        .check()
        .unwrap()
}

/// Which sections of the hanger have a check, and which are missing.
fn known(found: &ConnectionVerdict) -> [(bool, bool); 2] {
    BOTH.map(|mode| {
        let mut checks = found.checks.iter().map(|own| &own.check);
        let mut missing = found.missing.iter();
        (
            checks.any(|own| own.mode == mode && own.place == Place::Ply(1)),
            missing.any(|own| own.mode == mode && own.place == Place::Ply(1)),
        )
    })
}

#[test]
fn sections_are_known_of_pulls_and_of_some_shears() {
    let en = JointMethods::en_1993;
    let machine = || JointMethods::machine_design(2.0);
    let four = corners(60.0);
    let (is, none) = ((true, false), (false, true));
    for (methods, load, sections) in [
        (en(), [0.0, 20.0, 0.0], [is, is]),
        (aisc(), [0.0, 20.0, 0.0], [is, is]),
        (machine(), [0.0, 20.0, 0.0], [is, is]),
        // A push bends plates that lap on one side.
        (en(), [0.0, -20.0, 0.0], [is, (true, true)]),
        // Along the held side: EN 1993 has its bending, AISC its shear alone.
        (en(), [20.0, 0.0, 0.0], [is, is]),
        (aisc(), [20.0, 0.0, 0.0], [is, (true, true)]),
        (machine(), [20.0, 0.0, 0.0], [none, none]),
        // What slants is not known, however little; a millionth of it is rounding.
        (en(), [20.0, 20.0, 0.0], [none, none]),
        (en(), [0.01, 20.0, 0.0], [none, none]),
        (en(), [20.0, -0.01, 0.0], [none, none]),
        (en(), [20.0, -1e-6, 0.0], [is, is]),
        (en(), [1e-7, 20.0, 0.0], [is, is]),
    ] {
        let found = lap(methods, &four, load, (0.0, 0.0));
        assert_eq!(known(&found), sections, "{load:?} {:?}", methods.plies);
        let is_open = sections.iter().any(|(_, missing)| *missing);
        let plates = found.missing.iter().filter(|own| BOTH.contains(&own.mode));
        assert_eq!(plates.count() > 0, is_open, "{load:?}");
        assert!(!is_open || found.word() != Word::Holds);
    }
}

/// What is told, in words, and how much is used of what.
fn said(found: &ConnectionVerdict) -> Vec<(String, f64)> {
    let checks = found.checks.iter().map(|own| &own.check);
    let of_bolts = found.bolts.iter().flat_map(|own| &own.verdict.checks);
    let checks = checks.chain(of_bolts).map(|own| {
        let what = [
            own.mode.to_string(),
            own.place.to_string(),
            own.method.citation.into(),
        ];
        (what.join("; "), own.utilisation.value)
    });
    let mut all: Vec<(String, f64)> = checks.collect();
    let missing = found.missing.iter();
    all.extend(missing.map(|own| {
        (
            alloc::format!("{:?}", (own.mode, own.place, &own.need)),
            0.0,
        )
    }));
    all.sort_by(|a, b| a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)));
    all
}

/// Wherever the origin lies, the same is said.
#[test]
fn the_origin_is_anywhere() {
    let four = corners(60.0);
    let one = [(0.0, 0.0)];
    let zigzag = [(-30.0, -30.0), (0.0, 0.0), (30.0, -30.0)];
    let aside = [(-10.0, -30.0), (40.0, -30.0), (40.0, 30.0), (-10.0, 30.0)];
    for places in [&four[..], &one[..], &zigzag[..], &aside[..]] {
        for load in [
            [0.0, -20.0, 0.0],
            [0.0, 20.0, 0.0],
            [20.0, 0.0, 0.0],
            [20.0, 10.0, 0.0],
        ] {
            for methods in [JointMethods::en_1993(), aisc()] {
                let here = said(&lap(methods, places, load, (0.0, 0.0)));
                assert!(here.iter().any(|own| own.1 > 0.0));
                for by in [(500.0, 300.0), (-700.0, 40.0), (30.0, -900.0)] {
                    let there = said(&lap(methods, places, load, by));
                    assert_eq!(here.len(), there.len(), "{places:?} {load:?} {by:?}");
                    for (a, b) in here.iter().zip(&there) {
                        let is_same = a.0 == b.0 && (a.1 - b.1).abs() <= 1e-7 * a.1.max(1e-3);
                        assert!(is_same, "{places:?} {load:?} {by:?}: {a:?} {b:?}");
                    }
                }
            }
        }
    }
}

/// What is told of a hanger that is held at its top, whose bolts bring these forces: of the net section and of the gross one
/// whether it is checked, missing or not concerned, and how often.
fn told_of(places: &[(f64, f64)], forces: &[Vector]) -> [[usize; 3]; 2] {
    let plate = rectangle((-70.0, -70.0), (70.0, 130.0));
    let connection = Connection::builder(bolt_by(JointMethods::en_1993(), "20 mm"));
    let connection = connection.bolts(at(places)).plate("hanger", plate);
    let connection = connection.held(Side::Top).loaded("hanger");
    let connection = connection.cases([force([0.0, 1.0, 0.0])]).build().unwrap();
    let facts = connection.joint.ply_facts().unwrap();
    let places: Vec<Vector> = places.iter().map(|(x, y)| (1e-3 * x, 1e-3 * y)).collect();
    let mut told = Vec::new();
    let loaded = Loaded {
        facts: &facts[0],
        plate: connection.plate_of("hanger"),
        places: &places,
        forces: forces.to_vec(),
        sense: Some(1.0),
        in_line: false,
        level: Level::Design,
        turned: false,
        net_widths: &core::cell::OnceCell::new(),
    };
    if places.len() == 1 {
        of_one_bolt(&connection, &loaded, &mut told);
    } else {
        look(&connection, &loaded, &mut told);
    }
    BOTH.map(|mode| {
        let mut counts = [0; 3];
        for one in &told {
            match one {
                Told::Check(own) => counts[0] += usize::from(own.mode == mode),
                Told::Missing(own, _) => counts[1] += usize::from(*own == mode),
                Told::NotConcerned(own) => counts[2] += usize::from(*own == mode),
                Told::Find(_) => {}
            }
        }
        counts
    })
}

/// Bolts that bring nothing load no section; a couple bends them, though no force comes through; a pull beside the middle bends
/// the plate of one bolt and of two.
#[test]
fn what_bends_a_plate_is_not_passed_over() {
    let pair = [(-30.0, 0.0), (30.0, 0.0)];
    let (up, down, none) = ((0.0, 1e4), (0.0, -1e4), (0.0, 0.0));
    let missing = [[0, 1, 0]; 2];
    let idle = [[0, 0, 1]; 2];
    assert_eq!(told_of(&pair, &[none, none]), idle);
    assert_eq!(told_of(&pair, &[up, down]), missing);
    assert_eq!(told_of(&pair, &[up, none]), missing);
    // Rows that turn against each other: a couple without a force, again.
    let column = [(0.0, -30.0), (0.0, 30.0)];
    assert_eq!(told_of(&column, &[(1e4, 0.0), (-1e4, 0.0)])[1][1], 1);
    // At its row, and just before and behind the corners beyond: what is pulled in the middle has a check at each.
    let pulled = told_of(&pair, &[up, up]);
    assert!(
        pulled.iter().all(|own| own[0] > 0 && own[1..] == [0, 0]),
        "{pulled:?}"
    );
    // The plate of one bolt asks for no section of its own, unless the load bends it.
    let one = |x: f64, load| told_of(&[(x, 0.0)], &[load])[1];
    assert_eq!(one(0.0, up), [0, 0, 1]);
    assert_eq!(one(0.0, none), [0, 0, 1]);
    for (x, load) in [
        (20.0, up),
        (-20.0, up),
        (0.0, (1e4, 0.0)),
        (0.0, (1e4, 1e4)),
    ] {
        assert_eq!(one(x, load), [0, 1, 0], "{x} {load:?}");
    }
}
