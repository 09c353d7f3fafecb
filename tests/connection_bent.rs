//! Plates that bend between bolts that are pulled and what is fixed to them: stiff ones are shown to be, of others nothing is
//! said. Nothing of it is printed: the numbers are by hand.

use shankline::connection::{
    Connection, ConnectionBuilder, ConnectionVerdict, LoadCase, OutOfPlane, Outline,
};
use shankline::joint::{JointBuilder, Need, Prying, RuleSet, Word};
use shankline::prelude::*;
use shankline::strength::check::Mode;
use shankline::strength::group::{BoltPattern, Point};

fn square(side: &str) -> Outline {
    Outline::rectangle(side, side).unwrap()
}

/// A stem of 20 mm from the left to the right side of a plate of 200 mm.
fn stem() -> Outline {
    Outline::rectangle("200 mm", "20 mm").unwrap()
}

/// Through a hanger and a beam of 40 mm.
fn bolt(thickness: &str, methods: JointMethods, prying: Prying) -> JointBuilder {
    Joint::builder("M16")
        .ply("hanger", thickness)
        .material("S275 steel")
        .ply("beam", "40 mm")
        .material("S275 steel")
        .washers(WasherStyle::Iso7090)
        .methods(methods)
        .load_factor(1.5)
        .rules(RuleSet::En1090.rules(UnitSystem::Si))
        .prying(prying)
}

/// Four of them, 130 mm apart.
fn hanger(thickness: &str, methods: JointMethods, prying: Prying) -> ConnectionBuilder {
    Connection::builder(bolt(thickness, methods, prying)).rows_and_columns(2, 2, "130 mm", "130 mm")
}

fn pulled(builder: ConnectionBuilder, kilonewtons: f64) -> ConnectionVerdict {
    let force = [0.0, 0.0, 1e3 * kilonewtons].map(newtons);
    let case = LoadCase::new("pull", force, [0.0; 3].map(millimetres));
    builder.cases([case]).build().unwrap().check().unwrap()
}

fn both(builder: ConnectionBuilder, hanger: Outline) -> ConnectionBuilder {
    builder
        .plate("hanger", square("200 mm"))
        .footprint(hanger)
        .plate("beam", square("200 mm"))
        .footprint(stem())
}

fn open(verdict: &ConnectionVerdict) -> Vec<&Need> {
    let open = verdict.open().into_iter();
    open.filter(|own| own.mode == Mode::Prying)
        .map(|own| &own.need)
        .collect()
}

/// 20 kN x 1.5 on four bolts 55 mm from a stem of 20 mm, each on 2 x 35 mm for the side of the plate is so near:
/// 7.5e3 x 55 = 0.6 x 275 x 70 x t^2 / 6 at t = 14.64 mm.
#[test]
fn a_stiff_plate_is_shown_to_be_one() {
    for (thickness, word) in [("14.6 mm", Word::Undecided), ("14.7 mm", Word::Holds)] {
        let found = pulled(
            both(
                hanger(thickness, JointMethods::en_1993(), Prying::None),
                stem(),
            ),
            20.0,
        );
        assert_eq!(found.word(), word, "{}", found.render(UnitSystem::Si));
        assert_eq!(found.cases[0].word, word);
    }
    // A foot all around the bolts, 10 mm from them: 7.5e3 x 10 = 0.6 x 275 x 20 x t^2 / 6 at 11.7 mm.
    for (thickness, word) in [("11.6 mm", Word::Undecided), ("11.8 mm", Word::Holds)] {
        let around = square("150 mm");
        let found = pulled(
            both(
                hanger(thickness, JointMethods::en_1993(), Prying::None),
                around,
            ),
            20.0,
        );
        assert_eq!(found.word(), word, "{}", found.render(UnitSystem::Si));
    }
    // A post of 100 mm, whose corners are 15 sqrt(2) mm from the bolts: its sides lie behind its corner, and reach as far as the
    // load spreads, 7.5e3 x 21.2 = 0.6 x 275 x 2 x 21.2 x t^2 / 6 at 11.7 mm.
    for (thickness, word) in [("11.6 mm", Word::Undecided), ("11.8 mm", Word::Holds)] {
        let post = square("100 mm");
        let found = pulled(
            both(
                hanger(thickness, JointMethods::en_1993(), Prying::None),
                post,
            ),
            20.0,
        );
        assert_eq!(found.word(), word, "{}", found.render(UnitSystem::Si));
    }
}

/// 160 kN pull four M16 to two thirds of what they bear; 130 mm apart, that bends 10 mm of S275 long before, and the word of the
/// caller that nothing pries does not make it stiff.
#[test]
fn the_word_of_the_caller_makes_no_plate_stiff() {
    for prying in [Prying::None, Prying::InLoad] {
        let bolts = || hanger("10 mm", JointMethods::en_1993(), prying);
        let nothing = pulled(bolts(), 160.0);
        let beam = bolts().plate("hanger", square("200 mm")).footprint(stem());
        let silent = pulled(beam, 160.0);
        let thin = pulled(both(bolts(), stem()), 160.0);
        for verdict in [&nothing, &silent, &thin] {
            assert_eq!(verdict.word(), Word::Undecided);
            assert_eq!(verdict.cases[0].word, Word::Undecided);
            assert!(verdict.utilisation().unwrap() < 0.7);
        }
        assert_eq!(open(&nothing), [&Need::Outline, &Need::Outline]);
        assert!(matches!(
            open(&silent)[..],
            [Need::Method(_), Need::Outline]
        ));
        assert!(matches!(
            open(&thin)[..],
            [Need::Method(_), Need::Method(_)]
        ));
    }
}

/// Pressing bends nothing here; nor does one bolt alone have anything beside it.
#[test]
fn what_presses_is_not_asked() {
    let bolts = || hanger("10 mm", JointMethods::en_1993(), Prying::None);
    let plain = bolts()
        .plate("hanger", square("200 mm"))
        .plate("beam", square("200 mm"));
    assert_eq!(pulled(plain, -160.0).word(), Word::Holds);
    let alone = BoltPattern::rows_and_columns(1, 1, millimetres(60.0), millimetres(60.0)).unwrap();
    let alone =
        Connection::builder(bolt("10 mm", JointMethods::en_1993(), Prying::None)).bolts(alone);
    let one = pulled(alone, 20.0);
    assert!(open(&one).is_empty());
}

/// What shows that it holds may stand elsewhere: then the headline has it.
#[test]
fn set_aside_is_in_the_headline() {
    let bolts = bolt("10 mm", JointMethods::en_1993(), Prying::InLoad);
    let bolts = bolts.set_aside(
        Mode::Prying,
        "yield lines of a calculation of its own (invented)",
    );
    let grid = Connection::builder(bolts)
        .rows_and_columns(2, 2, "130 mm", "130 mm")
        .plate("hanger", square("200 mm"))
        .plate("beam", square("200 mm"));
    let verdict = pulled(grid, 160.0);
    assert_eq!(verdict.word(), Word::Holds);
    assert!(
        verdict
            .headline(UnitSystem::Si)
            .contains("1 mode set aside")
    );
}

/// Preload holds a plate to what a moment presses it on, and the plate brings both: 1.04 kN m on bolts 130 mm apart pulls two
/// with 4 kN and relieves two by as much. Pulled bolts stand 15 mm from a foot that lies to their side, the others 115 mm:
/// 1.5 x 4e3 x 115 = 0.6 x 275 x 70 x t^2 / 6 at 18.93 mm, of 265 MPa 19.28 mm.
#[test]
fn the_side_that_a_moment_presses_bends_too() {
    let point = |x: f64, y: f64| Point {
        x: millimetres(x),
        y: millimetres(y),
    };
    let foot = Outline::between(point(-100.0, 50.0), point(100.0, 50.1)).unwrap();
    for (thickness, word) in [("19 mm", Word::Undecided), ("19.5 mm", Word::Holds)] {
        let bolts = bolt(thickness, JointMethods::en_1993(), Prying::None).torque(
            NutFactor::new(0.15, 0.18, 0.22).unwrap(),
            PreloadTarget::Reusable,
        );
        let verdict = Connection::builder(bolts)
            .rows_and_columns(2, 2, "130 mm", "130 mm")
            .out_of_plane(OutOfPlane::Clamped)
            .plate("hanger", square("200 mm"))
            .footprint(foot.clone())
            .plate("beam", square("200 mm"))
            .footprint(stem())
            .cases([LoadCase::of_moment(
                "push",
                [1040.0, 0.0, 0.0].map(newton_metres),
            )])
            .build()
            .unwrap()
            .check()
            .unwrap();
        let needs = open(&verdict);
        assert_eq!(
            needs.is_empty(),
            word == Word::Holds,
            "{thickness}: {}",
            verdict.render(UnitSystem::Si)
        );
    }
}

/// Where no face between the parts is said the outermost plies count; where it is, the stiffest ply of each part.
#[test]
fn of_each_part_the_stiffest_ply_counts() {
    let stack = |faces: Option<usize>| {
        let bolt = Joint::builder("M16")
            .ply("pack", "8 mm")
            .material("S275 steel")
            .ply("hanger", "30 mm")
            .material("S275 steel")
            .ply("beam", "30 mm")
            .material("S275 steel")
            .washers(WasherStyle::Iso7090)
            .methods(JointMethods::en_1993())
            .load_factor(1.5)
            .rules(RuleSet::En1090.rules(UnitSystem::Si))
            .prying(Prying::None);
        let bolt = match faces {
            Some(face) => bolt.shear_planes([face]),
            None => bolt,
        };
        // 40 mm from the stem, on 80 mm: of 8 mm bent to 2.1 times what leaves it straight.
        let mut grid = Connection::builder(bolt).rows_and_columns(2, 2, "100 mm", "100 mm");
        for ply in ["pack", "hanger", "beam"] {
            grid = grid.plate(ply, square("200 mm")).footprint(stem());
        }
        pulled(grid, 20.0)
    };
    assert_eq!(stack(Some(2)).word(), Word::Holds);
    assert_eq!(stack(Some(1)).word(), Word::Undecided);
    assert_eq!(stack(None).word(), Word::Undecided);
}

/// What is fixed to a plate lies on it.
#[test]
fn a_footprint_beyond_its_plate_is_refused() {
    let bolts = || hanger("30 mm", JointMethods::en_1993(), Prying::None);
    for (foot, taken) in [("200 mm", true), ("200.1 mm", false), ("3 m", false)] {
        let built = both(bolts(), square(foot));
        let force = [0.0, 0.0, 1e3].map(newtons);
        let case = LoadCase::new("pull", force, [0.0; 3].map(millimetres));
        let found = built.cases([case]).build().unwrap().check();
        assert_eq!(found.is_ok(), taken, "{foot}");
    }
    let twice = both(bolts(), stem()).footprint(stem()).build();
    assert!(twice.unwrap_err().to_string().contains("said twice"));
}
