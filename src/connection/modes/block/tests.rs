//! Blocks of a plate of 2 rows and 3 columns, one by one by hand; lengths in metres.

use super::*;
use crate::connection::tests::{at, bolt, bolt_by, corners, force, rectangle};
use crate::connection::{BoltPattern, ConnectionVerdict, LoadCase, Side};
use crate::joint::JointMethods;
use crate::names::AiscEdition;
use crate::units::newtons;
use alloc::string::ToString;

#[test]
fn the_way_to_the_nearest_bolt_is_the_axis() {
    let of = |places: &[Vector]| axis(places).map(|own| (own.0.abs(), own.1.abs()));
    assert_eq!(
        of(&[(0.0, 0.0), (0.05, 0.0), (0.0, 0.06)]),
        Some((1.0, 0.0))
    );
    assert_eq!(
        of(&[(0.0, 0.0), (0.0, 0.06), (0.05, 0.0)]),
        Some((1.0, 0.0))
    );
    assert_eq!(
        of(&[(0.0, 0.0), (0.07, 0.0), (0.0, 0.06)]),
        Some((0.0, 1.0))
    );
    // The nearest two come last.
    assert_eq!(of(&[(0.0, 0.0), (0.3, 0.0), (0.3, 0.05)]), Some((0.0, 1.0)));
    // Of those as far as each other the first, whatever rounding says; a hundredth of a millimetre nearer is nearer.
    let square = |off: f64| [(0.0, 0.0), (0.06, 0.0), (0.0, 0.06 - off)];
    assert_eq!(of(&square(1e-6)), Some((1.0, 0.0)));
    assert_eq!(of(&square(2e-5)), Some((0.0, 1.0)));
    assert_eq!(of(&[(0.0, 0.0)]), None);
    assert_eq!(of(&[(0.0, 0.0), (1e-6, 0.0)]), None);
    assert_eq!(of(&[(0.0, 0.0), (1e-6, 0.0), (0.0, 0.1)]), Some((0.0, 1.0)));
}

#[test]
fn bolts_fill_rows_and_columns_or_they_do_not() {
    let fills = |places: &[Vector]| Grid::of(places, (0.0, 1.0)).is_some();
    let four = [(0.0, 0.0), (0.06, 0.0), (0.06, 0.06), (0.0, 0.06)];
    assert!(fills(&four));
    assert!(!fills(&four[..3]));
    // As many as crossings, and two at one of them.
    let doubled = [(0.0, 0.0), (0.06, 0.0), (0.06, 0.06), (0.06, 0.06)];
    assert!(!fills(&doubled));
    // A hundredth of a millimetre out of line is in line.
    for (off, is_full) in [(0.5e-5, true), (2e-5, false)] {
        assert_eq!(fills(&[four[0], four[1], four[2], (off, 0.06)]), is_full);
    }
}

/// Rows at 0 and 60 mm and columns at 0, 50 and 110, so that each bolt is known by what it brings.
const SIX: [(Vector, Vector); 6] = [
    ((0.0, 0.0), (1.0, 10.0)),
    ((0.05, 0.0), (2.0, 20.0)),
    ((0.11, 0.0), (4.0, 40.0)),
    ((0.0, 0.06), (8.0, 80.0)),
    ((0.05, 0.06), (16.0, 160.0)),
    ((0.11, 0.06), (32.0, 320.0)),
];

struct Whole {
    connection: Connection,
    forces: Vec<Vector>,
    places: Vec<Vector>,
    turned: bool,
}

fn whole(methods: JointMethods, turned: bool, times: f64) -> Whole {
    let bolts: Vec<(f64, f64)> = SIX.iter().map(|((x, y), _)| (1e3 * x, 1e3 * y)).collect();
    let plate = rectangle((-30.0, -35.0), (150.0, 110.0));
    let connection = Connection::builder(bolt_by(methods, "10 mm")).bolts(at(&bolts));
    let connection = connection
        .plate("hanger", plate)
        .cases([force([0.0, 1.0, 0.0])]);
    Whole {
        connection: connection.build().unwrap(),
        forces: SIX
            .iter()
            .map(|(_, (x, y))| (times * x, times * y))
            .collect(),
        places: SIX.iter().map(|(at, _)| *at).collect(),
        turned,
    }
}

impl Whole {
    fn seen<T>(&self, see: impl FnOnce(&Loaded) -> T) -> T {
        let facts = self.connection.joint.ply_facts().unwrap();
        see(&Loaded {
            facts: &facts[0],
            plate: self.connection.plate_of("hanger"),
            places: &self.places,
            forces: self.forces.clone(),
            sense: None,
            in_line: false,
            level: Level::Design,
            turned: self.turned,
            net_widths: &core::cell::OnceCell::new(),
        })
    }
}

/// Upwards. Seen so, columns rise to the left: that of 110 mm is the first. Ahead of the rows at 0 and 60 mm lie 110 and 50 mm
/// of plate; 40 mm lie beside the first column and 30 beside the last.
#[test]
fn every_block_by_hand() {
    let own = whole(JointMethods::en_1993(), false, 1.0);
    let rule = BlockRule::of(PlyMethod::En1993).unwrap();
    let plate = own.connection.plate_of("hanger").unwrap();
    let plate = Plate {
        outline: &plate.outline,
        thickness: metres(0.01),
        hole: metres(0.018),
        yields: crate::units::megapascals(275.0),
        breaks: crate::units::megapascals(410.0),
    };
    let grid = Grid::of(&own.places, (0.0, 1.0)).unwrap();
    assert_eq!((grid.rows.len(), grid.columns.len()), (2, 3));
    // From the row, of the columns so counted: what they bring (that of x is a tenth of y), shear and its holes, tension and its
    // holes, lines of those torn to a side, and whether it is even.
    let mut hand = Vec::new();
    for (row, shear, holes, [a, b, c]) in [
        (0, 0.11, 1.5, [360.0, 180.0, 90.0]),
        (1, 0.05, 0.5, [320.0, 160.0, 80.0]),
    ] {
        let mut side = |brings: f64, tension: f64, lines: usize| {
            let tension_holes = [0.5, 1.5, 2.5][lines - 1];
            hand.push((
                row,
                brings,
                shear,
                holes,
                tension,
                tension_holes,
                Some(lines),
                lines < 3,
            ));
        };
        side(a, 0.04, 1);
        side(a + b, 0.1, 2);
        side(a + b + c, 0.15, 3);
        side(a + b + c, 0.14, 3);
        side(b + c, 0.08, 2);
        side(c, 0.03, 1);
        let mut two = |within: f64, gap: f64, beyond: f64, between: f64| {
            let (shear, holes) = (2.0 * shear, 2.0 * holes);
            hand.push((row, within, shear, holes, gap, between, None, true));
            let rest = 0.18 - gap;
            hand.push((row, beyond, shear, holes, rest, 3.0 - between, None, true));
        };
        two(a + b, 0.06, a + b + c, 1.0);
        two(a + b + c, 0.11, a + c, 2.0);
        two(b + c, 0.05, a + b + c, 1.0);
    }
    own.seen(|loaded| {
        let sums = Sums::of(&grid, loaded);
        let all = 63.0 * f64::sqrt(101.0);
        assert!((sums.size - all).abs() < 1e-9, "{}", sums.size);
        let mut found = Vec::new();
        grid.each_block(&plate, &rule, |takes, block| {
            let sum = sums.of_block(&takes);
            assert!((sum.1 - 10.0 * sum.0).abs() < 1e-9, "{sum:?}");
            let own = block.unwrap();
            found.push((
                takes.from_row,
                sum.1,
                own.shear,
                own.shear_holes,
                own.tension,
                own.tension_holes,
                own.to_one_side,
                own.even,
            ));
        });
        assert_eq!(found.len(), hand.len());
        for one in &hand {
            let close = |a: f64, b: f64| (a - b).abs() < 1e-9;
            let is_it = |own: &&(usize, f64, f64, f64, f64, f64, Option<usize>, bool)| {
                (own.0, own.6, own.7) == (one.0, one.6, one.7)
                    && close(own.1, one.1)
                    && close(own.2, one.2)
                    && close(own.3, one.3)
                    && close(own.4, one.4)
                    && close(own.5, one.5)
            };
            assert!(found.iter().any(|own| is_it(&own)), "{one:?} of {found:?}");
        }
    });
}

/// AISC takes the tension of several lines that are torn to one side for uneven where nothing like them tears on the other, or
/// where the load turns; EN 1993 and CSA that of every block that is turned.
#[test]
fn even_and_uneven_tension() {
    let aisc = JointMethods::aisc_lrfd(AiscEdition::E2016).plies;
    let en = PlyMethod::En1993;
    for (method, lines, even, turned, is_even) in [
        (aisc, Some(1), true, false, true),
        (aisc, Some(1), false, false, true),
        (aisc, Some(1), false, true, true),
        (aisc, Some(2), true, false, true),
        (aisc, Some(2), true, true, false),
        (aisc, Some(2), false, false, false),
        (aisc, Some(2), false, true, false),
        (aisc, None, true, true, true),
        (aisc, None, false, false, false),
        (en, None, true, false, true),
        (en, None, true, true, false),
        (en, Some(1), true, false, true),
        (en, Some(1), false, false, false),
        (en, Some(1), true, true, false),
        (PlyMethod::CsaS16, Some(1), true, true, false),
        (PlyMethod::CsaS16, Some(1), true, false, true),
    ] {
        let block = Block {
            shear: 0.1,
            shear_holes: 0.5,
            tension: 0.1,
            tension_holes: 0.5,
            even,
            to_one_side: lines,
        };
        let found = block.is_even(method, turned);
        assert_eq!(found, is_even, "{method:?} {lines:?} {even} {turned}");
    }
}

/// What of it is told: a check where bolts bring something, nothing of it where none does, and why there is no check.
#[test]
fn a_mode_says_what_it_found() {
    let told = |own: &Whole| {
        own.seen(|loaded| {
            let mut told = Vec::new();
            look(&own.connection, loaded, &mut told);
            told
        })
    };
    let en = JointMethods::en_1993;
    let of = told(&whole(en(), false, 1.0));
    assert!(matches!(&of[..], [Told::Check(check)] if check.mode == MODE));
    let none = told(&whole(en(), false, 0.0));
    assert!(matches!(none[..], [Told::NotConcerned(MODE)]));
    let machine = told(&whole(JointMethods::machine_design(2.0), false, 1.0));
    assert!(matches!(
        machine[..],
        [Told::Missing(MODE, Need::Method(_))]
    ));
    // Columns 7.5 mm apart: holes of 18 mm leave nothing between them.
    let mut crowded = whole(en(), false, 1.0);
    let close: Vec<(f64, f64)> = SIX
        .iter()
        .map(|((x, y), _)| (150.0 * x, 300.0 * y))
        .collect();
    crowded.places = close.iter().map(|(x, y)| (1e-3 * x, 1e-3 * y)).collect();
    let refused = told(&crowded);
    let is_refused = |own: &Told| matches!(own, Told::Missing(MODE, Need::Refused(_)));
    assert!(refused.iter().any(is_refused));
    assert!(
        !refused
            .iter()
            .any(|own| matches!(own, Told::NotConcerned(_)))
    );
}

fn used(
    places: &[(f64, f64)],
    outline: Outline,
    load: LoadCase,
) -> (Option<f64>, ConnectionVerdict) {
    let bolts: BoltPattern = at(places);
    let connection = Connection::builder(bolt("10 mm"))
        .bolts(bolts)
        .plate("hanger", outline)
        .held(Side::Top)
        .plate("beam", rectangle((-200.0, -200.0), (200.0, 200.0)))
        .held(Side::Bottom)
        .loaded("hanger")
        .cases([load]);
    let found = connection.build().unwrap().check().unwrap();
    let own = found.checks.iter().map(|own| &own.check);
    let own = own.filter(|own| own.mode == MODE && own.place.to_string() == "ply 1");
    (own.map(|own| own.utilisation.value).reduce(f64::max), found)
}

/// A plate tears out to whichever end is the nearest, whether the load acts that way or the other.
#[test]
fn all_four_ends_are_tried() {
    let even = |load: [f64; 3]| {
        let all = rectangle((-70.0, -70.0), (70.0, 70.0));
        used(&corners(60.0), all, force(load)).0.unwrap()
    };
    for sign in [1.0, -1.0] {
        let (x, y) = ([20.0 * sign, 0.0, 0.0], [0.0, 20.0 * sign, 0.0]);
        let short = [
            (rectangle((-70.0, -70.0), (55.0, 70.0)), x),
            (rectangle((-55.0, -70.0), (70.0, 70.0)), x),
            (rectangle((-70.0, -70.0), (70.0, 55.0)), y),
            (rectangle((-70.0, -55.0), (70.0, 70.0)), y),
        ];
        let found =
            short.map(|(outline, load)| used(&corners(60.0), outline, force(load)).0.unwrap());
        for one in found {
            assert!((one - found[0]).abs() < 1e-9, "{found:?}");
            assert!(one > 1.01 * even(x), "{one}");
        }
    }
}

/// A load at 45 degrees counts as one along rows and as one along columns: with the short end on any side it tears out there.
#[test]
fn a_load_at_45_degrees_tears_both_ways() {
    let slant = |x: f64, y: f64| LoadCase {
        force_x: newtons(x * 2e4),
        force_y: newtons(y * 2e4),
        ..force([0.0; 3])
    };
    let of = |outline: Outline| used(&corners(60.0), outline, slant(1.0, 1.0)).0;
    let even = of(rectangle((-70.0, -70.0), (70.0, 70.0))).unwrap();
    let right = of(rectangle((-70.0, -70.0), (55.0, 70.0))).unwrap();
    let top = of(rectangle((-70.0, -70.0), (70.0, 55.0))).unwrap();
    assert!((right - top).abs() < 1e-9, "{right} {top}");
    assert!(right > 1.01 * even, "{right} {even}");
}

/// With a short side beside its bolts a plate tears out to that side, whichever it is, and more easily than a wide one.
#[test]
fn both_sides_are_tried() {
    let of = |outline: Outline, load| used(&corners(60.0), outline, force(load)).0.unwrap();
    for sign in [1.0, -1.0] {
        let (x, y) = ([20.0 * sign, 0.0, 0.0], [0.0, 20.0 * sign, 0.0]);
        for (pair, wide, load) in [
            (
                [
                    ((-70.0, -50.0), (50.0, 70.0)),
                    ((-70.0, -70.0), (50.0, 50.0)),
                ],
                ((-70.0, -70.0), (50.0, 70.0)),
                x,
            ),
            (
                [
                    ((-50.0, -50.0), (70.0, 70.0)),
                    ((-50.0, -70.0), (70.0, 50.0)),
                ],
                ((-50.0, -70.0), (70.0, 70.0)),
                x,
            ),
            (
                [
                    ((-50.0, -70.0), (70.0, 50.0)),
                    ((-70.0, -70.0), (50.0, 50.0)),
                ],
                ((-70.0, -70.0), (70.0, 50.0)),
                y,
            ),
            (
                [
                    ((-50.0, -50.0), (70.0, 70.0)),
                    ((-70.0, -50.0), (50.0, 70.0)),
                ],
                ((-70.0, -50.0), (70.0, 70.0)),
                y,
            ),
        ] {
            let [one, other] = pair.map(|(from, to)| of(rectangle(from, to), load));
            let wide = of(rectangle(wide.0, wide.1), load);
            assert!((one - other).abs() < 1e-9, "{one} {other} {load:?}");
            assert!(one > 1.01 * wide, "{one} {wide} {load:?}");
        }
    }
}

/// Bolts from which no edge is found: that is said, and not that no load reaches the blocks.
#[test]
fn a_block_without_an_edge_is_missing() {
    let mut own = whole(JointMethods::en_1993(), false, 1.0);
    for place in &mut own.places {
        *place = (place.0 + 10.0, place.1 + 10.0);
    }
    let mut told = Vec::new();
    own.seen(|loaded| look(&own.connection, loaded, &mut told));
    assert!(
        matches!(told[..], [Told::Missing(MODE, Need::Method(_))]),
        "{} told",
        told.len()
    );
}
