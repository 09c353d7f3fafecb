//! Blocks that tear out of one side of a plate, by hand beside each.

use shankline::connection::{Connection, InPlane, Outline, Side};
use shankline::error::Amount;
use shankline::joint::{RuleSet, Word};
use shankline::prelude::*;
use shankline::strength::check::{Check, Mode, Place};
use shankline::strength::group::Point;

/// M20 in two columns 200 mm apart and rows 60 mm apart, in a plate of 15 mm S275 from x -130 to `right`, whose end lies
/// 40 mm over the upper row.
fn bolted(methods: JointMethods, rows: u8, right: f64, at: &str) -> Connection {
    let corner = |x, y| Point {
        x: millimetres(x),
        y: millimetres(y),
    };
    let top = 30.0 * f64::from(rows - 1) + 40.0;
    let by_hand = "worked by hand (invented)";
    let bolt = Joint::builder("M20")
        .ply("hanger", "15 mm")
        .material("S275 steel")
        .hole("22 mm")
        .ply("post", "40 mm")
        .material("S275 steel")
        .hole("22 mm")
        .washers(WasherStyle::Iso7090)
        .methods(methods)
        .load_factor(1.0)
        .rules(RuleSet::En1090.rules(UnitSystem::Si))
        .set_aside(Mode::NetSection, by_hand)
        .set_aside(Mode::GrossSection, by_hand)
        .set_aside(Mode::Washers, "hardened, by their order (invented)");
    Connection::builder(bolt)
        .rows_and_columns(rows.into(), 2, "60 mm", "200 mm")
        .in_plane(InPlane::Elastic)
        .plate(
            "hanger",
            Outline::between(corner(-130.0, -400.0), corner(right, top)).unwrap(),
        )
        .held(Side::Bottom)
        .plate("post", Outline::rectangle("900 mm", "1000 mm").unwrap())
        .held(Side::Top)
        .loaded("hanger")
        .case("full")
        .force("0 kN", "-900 kN", "0 kN")
        .at(at, "0 mm", "0 mm")
        .build()
        .unwrap()
}

fn block(connection: &Connection) -> Check {
    let verdict = connection.check().unwrap();
    let of_hanger = |check: &&Check| check.mode == Mode::BlockShear && check.place == Place::Ply(1);
    let mut checks = verdict.checks.iter().map(|own| &own.check);
    checks.find(of_hanger).unwrap().clone()
}

fn near(found: Amount, kilonewtons: f64) {
    let Amount::Force(found) = found else {
        panic!("{found}");
    };
    let off = (found.value / 1e3 - kilonewtons).abs();
    assert!(off < 0.1, "{} for {kilonewtons} kN", found.value / 1e3);
}

/// 90 mm off the centroid the right column brings 6 (900 / 12 + 81e3 x 100 / 246 000) = 647.6 kN of 900, and tears out by
/// itself: 0.5 x 410 (30 - 11) 15 / 1.25 + 275 (340 - 5.5 x 22) 15 / 3^0.5 = 46.7 + 521.6 kN (EN 1993-1-8:2005 3.10.2).
#[test]
fn the_column_that_bears_most_tears_out_alone() {
    let bracket = bolted(JointMethods::en_1993(), 6, 130.0, "90 mm");
    let check = block(&bracket);
    near(check.demand, 647.6);
    near(check.resistance, 568.3);
    assert_eq!(bracket.check().unwrap().word(), Word::DoesNotHold);
}

/// Of two rows each column brings half of a load through the centroid. With 30 mm to the left edge the left one tears out at
/// 410 (30 - 11) 15 / 1.25 + 275 (100 - 1.5 x 22) 15 / 3^0.5 = 93.5 + 159.6 kN, however far it is to the other edge.
#[test]
fn the_column_next_to_the_nearer_edge_tears_out_alone() {
    for right in [130.0, 400.0] {
        let check = block(&bolted(JointMethods::en_1993(), 2, right, "0 mm"));
        let used = 450.0 / 253.1;
        assert!((check.utilisation.value - used).abs() < 1e-3, "{check}");
    }
}

/// One line of bolts off the middle of its block is torn unevenly: by CSA S16 13.11 Ut is 1 of symmetrical blocks only, and
/// less of one line beside an edge (0.9 in coped beams, 0.6 in angles; recalled).
#[test]
fn one_line_by_csa_is_not_torn_evenly() {
    let corner = |x, y| Point {
        x: millimetres(x),
        y: millimetres(y),
    };
    let bolt = Joint::builder("M20")
        .ply("hanger", "15 mm")
        .material("S275 steel")
        .hole("22 mm")
        .ply("post", "40 mm")
        .material("S275 steel")
        .hole("22 mm")
        .methods(JointMethods::csa_s16())
        .load_factor(1.0)
        .rules(RuleSet::En1090.rules(UnitSystem::Si));
    let line = Connection::builder(bolt)
        .rows_and_columns(2, 1, "60 mm", "60 mm")
        .plate(
            "hanger",
            Outline::between(corner(-60.0, -400.0), corner(60.0, 70.0)).unwrap(),
        )
        .plate("post", Outline::rectangle("900 mm", "1000 mm").unwrap())
        .loaded("hanger")
        .case("full")
        .force("0 kN", "-100 kN", "0 kN")
        .at("0 mm", "0 mm", "0 mm")
        .build()
        .unwrap();
    // 0.75 (0.3 x 410 (60 - 24 / 2) 15 + 0.6 x 100 x 15 (275 + 410) / 2)
    near(block(&line).resistance, 297.6);
}

/// BS 5950-1:2000 6.2.4 takes 2.5 holes off the tension face of two lines of bolts, and 0.5 off that of one (recalled):
/// 0.6 x 275 x 15 (100 + 1.2 (90 - 2.5 x 22)) of the two, torn to one side.
#[test]
fn two_lines_by_bs_5950_lose_two_and_a_half_holes() {
    let corner = |x, y| Point {
        x: millimetres(x),
        y: millimetres(y),
    };
    let bolt = Joint::builder("M20")
        .ply("hanger", "15 mm")
        .material("S275 steel")
        .hole("22 mm")
        .ply("post", "40 mm")
        .material("S275 steel")
        .hole("22 mm")
        .methods(JointMethods::bs_5950())
        .load_factor(1.0)
        .rules(RuleSet::En1090.rules(UnitSystem::Si));
    let tab = Connection::builder(bolt)
        .rows_and_columns(2, 2, "60 mm", "60 mm")
        .plate(
            "hanger",
            Outline::between(corner(-60.0, -400.0), corner(60.0, 70.0)).unwrap(),
        )
        .plate("post", Outline::rectangle("900 mm", "1000 mm").unwrap())
        .loaded("hanger")
        .case("full")
        .force("0 kN", "-100 kN", "0 kN")
        .at("0 mm", "0 mm", "0 mm")
        .build()
        .unwrap();
    let check = block(&tab);
    near(check.resistance, 351.5);
    assert!(
        check
            .cautions
            .iter()
            .any(|own| own.to_string().contains("two lines"))
    );
}
