//! Connections as somebody describes them who has not built them: what a competent engineer would refuse must not hold.
//! Plates, loads and parts are invented; what each asks is worked out by hand beside it.

use shankline::connection::{
    Combination, Connection, ConnectionBuilder, ConnectionVerdict, LoadCase, OutOfPlane, Outline,
    PlatePrying,
};
use shankline::joint::{Prying, RuleSet, Word};
use shankline::prelude::*;
use shankline::strength::group::{BoltPattern, GroupBolt, Point};
use shankline::strength::shear::AiscEdition;

fn point(x: f64, y: f64) -> Point {
    Point {
        x: millimetres(x),
        y: millimetres(y),
    }
}

fn polygon(corners: &[(f64, f64)]) -> Outline {
    Outline::polygon(corners.iter().map(|(x, y)| point(*x, *y))).unwrap()
}

fn between(low: (f64, f64), high: (f64, f64)) -> Outline {
    Outline::between(point(low.0, low.1), point(high.0, high.1)).unwrap()
}

/// The same outline turned about the origin.
fn at_angle(corners: &[(f64, f64)], degrees: f64) -> Outline {
    let (sin, cos) = degrees.to_radians().sin_cos();
    let turned = corners
        .iter()
        .map(|(x, y)| (x * cos - y * sin, x * sin + y * cos));
    polygon(&turned.collect::<Vec<_>>())
}

fn pattern(places: &[(f64, f64)]) -> BoltPattern {
    let bolts = places
        .iter()
        .map(|(x, y)| GroupBolt::new(millimetres(*x), millimetres(*y)));
    BoltPattern::new(bolts).unwrap()
}

fn bolt(foot: &str, ground: &str) -> JointBuilder {
    Joint::builder("M16")
        .ply("foot", foot)
        .material("S275 steel")
        .ply("ground", ground)
        .material("S275 steel")
        .washers(WasherStyle::Iso7090)
        .methods(JointMethods::en_1993())
        .load_factor(1.5)
        .prying(Prying::None)
        .rules(RuleSet::En1090.rules(UnitSystem::Si))
}

/// A foot on a ground that is welded to something everywhere.
fn on_ground(bolt: JointBuilder, foot: Outline, footprint: Outline) -> ConnectionBuilder {
    let ground = Outline::rectangle("800 mm", "800 mm").unwrap();
    let everywhere = Outline::rectangle("798 mm", "798 mm").unwrap();
    Connection::builder(bolt)
        .plate("foot", foot)
        .footprint(footprint)
        .plate("ground", ground)
        .footprint(everywhere)
}

fn pulled(connection: ConnectionBuilder, kilonewtons: f64, at: (f64, f64)) -> ConnectionVerdict {
    let force = [0.0, 0.0, 1e3 * kilonewtons].map(newtons);
    let at = [at.0, at.1, 0.0].map(millimetres);
    let case = LoadCase::new("pull", force, at);
    connection.cases([case]).build().unwrap().check().unwrap()
}

fn tilted(
    connection: ConnectionBuilder,
    moment: f64,
    press: f64,
) -> Result<ConnectionVerdict, Error> {
    let force = [0.0, 0.0, -1e3 * press].map(newtons);
    let case = LoadCase::new("tilt", force, [0.0; 3].map(millimetres))
        .with_moment([moment, 0.0, 0.0].map(newton_metres));
    let edge = OutOfPlane::PressedEdge { ply: "foot".into() };
    connection.out_of_plane(edge).cases([case]).build()?.check()
}

#[track_caller]
fn holds(verdict: &ConnectionVerdict) {
    assert_eq!(
        verdict.word(),
        Word::Holds,
        "{}",
        verdict.render(UnitSystem::Si)
    );
}

#[track_caller]
fn undecided(verdict: &ConnectionVerdict) {
    assert_eq!(
        verdict.word(),
        Word::Undecided,
        "{}",
        verdict.render(UnitSystem::Si)
    );
}

/// Four bolts around a post of 100 mm on a plate of 20 mm: 20 kN in all, or 7.5 kN a bolt with its factor. From a bolt to
/// the corner of the post it is sqrt(2) x 30 = 42 mm, over which 7.5 kN x 42 mm = 318 N m act on a strip of 80 mm (40 mm of
/// room on both sides): 0.6 x 265 MPa x 80 x 20^2 / 6 = 848 N m.
#[test]
fn a_sound_base_plate_holds() {
    let foot = Outline::rectangle("240 mm", "240 mm").unwrap();
    let post = Outline::rectangle("100 mm", "100 mm").unwrap();
    let sound = on_ground(bolt("20 mm", "40 mm"), foot, post);
    holds(&pulled(
        sound.rows_and_columns(2, 2, "160 mm", "160 mm"),
        20.0,
        (0.0, 0.0),
    ));
}

/// A rib of 8 mm that points at the bolts, with a wide post behind it. Each bolt brings 15 kN x 40 mm = 600 N m to the end of
/// the rib: a strip of 8 mm takes 0.6 x 265 x 8 x 25^2 / 6 = 133 N m, the 80 mm of the spread 1325 N m. The ribs beside
/// it are the same seen at another angle.
#[test]
fn a_rib_is_no_wider_than_it_is() {
    let rib = [
        (-30.0, -4.0),
        (-30.0, 4.0),
        (-5.0, 4.0),
        (-5.0, 60.0),
        (5.0, 60.0),
        (5.0, 4.0),
        (30.0, 4.0),
        (30.0, -4.0),
        (5.0, -4.0),
        (5.0, -60.0),
        (-5.0, -60.0),
        (-5.0, -4.0),
    ];
    for degrees in [0.0, 30.0, 45.0] {
        let foot = at_angle(
            &[
                (-120.0, -90.0),
                (120.0, -90.0),
                (120.0, 90.0),
                (-120.0, 90.0),
            ],
            degrees,
        );
        let (sin, cos) = f64::to_radians(degrees).sin_cos();
        let bolts = [-70.0, 70.0].map(|x| (x * cos, x * sin));
        let connection = on_ground(bolt("25 mm", "40 mm"), foot, at_angle(&rib, degrees));
        undecided(&pulled(connection.bolts(pattern(&bolts)), 20.0, (0.0, 0.0)));
    }
}

/// The plate has a neck of 10 mm between each bolt and the post, or a slot right across the straight way.
#[test]
fn a_plate_is_no_wider_than_its_neck() {
    let post = Outline::rectangle("60 mm", "120 mm").unwrap();
    let necked = polygon(&[
        (-160.0, -50.0),
        (-100.0, -50.0),
        (-100.0, -5.0),
        (-45.0, -5.0),
        (-45.0, -70.0),
        (45.0, -70.0),
        (45.0, -5.0),
        (100.0, -5.0),
        (100.0, -50.0),
        (160.0, -50.0),
        (160.0, 50.0),
        (100.0, 50.0),
        (100.0, 5.0),
        (45.0, 5.0),
        (45.0, 70.0),
        (-45.0, 70.0),
        (-45.0, 5.0),
        (-100.0, 5.0),
        (-100.0, 50.0),
        (-160.0, 50.0),
    ]);
    let connection = on_ground(bolt("25 mm", "40 mm"), necked, post.clone());
    let bolts = pattern(&[(-130.0, 0.0), (130.0, 0.0)]);
    undecided(&pulled(connection.bolts(bolts), 10.0, (0.0, 0.0)));
    let slotted = polygon(&[
        (-160.0, -70.0),
        (160.0, -70.0),
        (160.0, 70.0),
        (-60.0, 70.0),
        (-60.0, -50.0),
        (-64.0, -50.0),
        (-64.0, 70.0),
        (-160.0, 70.0),
    ]);
    let connection = on_ground(bolt("25 mm", "40 mm"), slotted, post);
    let bolts = pattern(&[(-100.0, 0.0), (100.0, 0.0)]);
    undecided(&pulled(connection.bolts(bolts), 10.0, (0.0, 0.0)));
}

/// Five rows behind one another, 60 mm apart, the first 50 mm from the post: to a strip of 60 mm come F x 850 mm, the sum of
/// 50, 110, 170, 230 and 290 mm, not the 290 mm of the last alone. A plate of 40 mm takes 0.6 x 265 x 60 x 40^2 / 6, or
/// 2.54 kN m: 1.99 kN a bolt without the factor, where the last alone would have 5.85.
#[test]
fn rows_behind_one_another_bend_the_plate_together() {
    let rows = [50.0, 110.0, 170.0, 230.0, 290.0].map(|x| x + 50.0);
    let bolts: Vec<(f64, f64)> = rows
        .iter()
        .flat_map(|x| [-30.0, 30.0].map(|y| [(*x, y), (-x, y)]))
        .flatten()
        .collect();
    let foot = Outline::rectangle("760 mm", "120 mm").unwrap();
    let post = Outline::rectangle("100 mm", "120 mm").unwrap();
    let of = |kilonewtons: f64| {
        let connection = Connection::builder(bolt("40 mm", "60 mm"))
            .plate("foot", foot.clone())
            .footprint(post.clone())
            .plate("ground", foot.clone())
            .footprint(post.clone());
        pulled(connection.bolts(pattern(&bolts)), kilonewtons, (0.0, 0.0))
    };
    holds(&of(20.0 * 1.9));
    undecided(&of(20.0 * 2.1));
}

/// Twelve bolts on a circle of 240 mm around a tube of 120 mm: of its 377 mm each has 31.4 mm, not the 60 mm between bolts.
#[test]
fn a_tube_is_no_longer_than_its_circumference() {
    let foot = Outline::round("300 mm").unwrap();
    let tube = Outline::round("120 mm").unwrap();
    let of = |kilonewtons: f64| {
        let connection = on_ground(bolt("20 mm", "40 mm"), foot.clone(), tube.clone());
        pulled(connection.circle(12, "240 mm"), kilonewtons, (0.0, 0.0))
    };
    // 0.6 x 265 x 31.4 x 20^2 / 6 = 333 N m over 60 mm: 5.55 kN a bolt, 44 kN in all without the factor.
    holds(&of(20.0));
    undecided(&of(60.0));
}

/// What presses an edge comes to the post over the whole way from the edge, past bolts that carry nothing there.
///
/// Bolts pull beside the post at the top, and 200 mm below it the edge presses: 6 kN m x 1.5 / 0.28 m = 32 kN, which bend the
/// plate by 32 kN x 200 mm = 6.4 kN m. A plate of 20 mm and 200 mm in width takes 0.6 x 265 x 200 x 20^2 / 6 = 2.1 kN m.
#[test]
fn an_edge_bends_the_plate_as_far_as_what_is_fixed_to_it() {
    let foot = Outline::rectangle("200 mm", "340 mm").unwrap();
    let post = between((-95.0, 60.0), (95.0, 110.0));
    let of = |thickness: &str, post: &Outline| {
        let connection = on_ground(bolt(thickness, "60 mm"), foot.clone(), post.clone());
        tilted(
            connection.rows_and_columns(2, 2, "280 mm", "120 mm"),
            6000.0,
            0.0,
        )
        .unwrap()
    };
    undecided(&of("20 mm", &post));
    holds(&of("45 mm", &post));
    holds(&of("20 mm", &between((-95.0, -125.0), (95.0, 125.0))));
}

/// The edge presses the ground as well: one that is held at its pulled bolts alone bends there, by 32 kN x 210 mm = 6.6 kN m
/// where it takes 0.6 x 265 x 300 x 25^2 / 6 = 5.0 kN m.
#[test]
fn an_edge_bends_what_it_presses_on() {
    let foot = Outline::rectangle("200 mm", "340 mm").unwrap();
    let post = between((-95.0, -125.0), (95.0, 125.0));
    let ground = |thickness: &str, fixed: Outline| {
        let connection = Connection::builder(bolt("25 mm", thickness))
            .plate("foot", foot.clone())
            .footprint(post.clone())
            .plate("ground", Outline::rectangle("300 mm", "600 mm").unwrap())
            .footprint(fixed)
            .rows_and_columns(2, 2, "280 mm", "120 mm");
        tilted(connection, 6000.0, 0.0).unwrap()
    };
    let everywhere = Outline::rectangle("280 mm", "580 mm").unwrap();
    let at_top = between((-140.0, -125.0), (140.0, 290.0));
    let far = between((-140.0, 40.0), (140.0, 290.0));
    holds(&ground("25 mm", everywhere));
    holds(&ground("30 mm", at_top));
    undecided(&ground("25 mm", far));
}

/// A press beside the moment comes to the edge, too, where both meet beyond the post: 60 kN and 8 kN m meet
/// 133 mm off, and (48 + 90) kN x 140 mm are more than 0.6 x 265 x 200 x 35^2 / 6 = 6.5 kN m.
#[test]
fn a_press_beyond_the_post_bends_the_plate_too() {
    let foot = Outline::rectangle("200 mm", "400 mm").unwrap();
    let post = Outline::rectangle("190 mm", "120 mm").unwrap();
    let of = |moment: f64, press: f64| {
        let connection = on_ground(bolt("35 mm", "60 mm"), foot.clone(), post.clone());
        tilted(
            connection.rows_and_columns(2, 2, "340 mm", "120 mm"),
            moment,
            press,
        )
        .unwrap()
    };
    holds(&of(5000.0, 0.0));
    holds(&of(5000.0, 200.0));
    holds(&of(8000.0, 0.0));
    undecided(&of(8000.0, 60.0));
}

/// Two rows of bolts, 1.5 in from the middle of the tee.
const PAIR: [f64; 2] = [1.5, -1.5];

/// A tee of 4 in between its lines of bolts, with a stem of 0.4 in: 1.8 in from bolts to stem, 1.5 in to its edges.
fn tee(
    flange: &str,
    pries: PlatePrying,
    outline: bool,
    stem: bool,
    rows: &[f64],
) -> Result<ConnectionVerdict, Error> {
    let last = rows.iter().fold(0.0_f64, |most, y| most.max(y.abs()));
    let height = 2.0 * last + 3.0;
    let bolt = Joint::builder("3/4-10 UNC")
        .product(ScrewProduct::StructuralBolt)
        .grade("ASTM F3125 A325 type 1")
        .nut(NutStyle::HeavyHex)
        .nut_grade("ASTM A563 DH")
        .ply("flange", flange)
        .material("ASTM A36 steel");
    let bolt = if outline {
        bolt
    } else {
        bolt.end_distance("1.5 in").edge_distance("1.5 in")
    };
    let bolt = bolt
        .ply("packing", "2 in")
        .material("ASTM A36 steel")
        .pulls(0.0)
        .ply("beam", "2 in")
        .material("ASTM A36 steel")
        .shear_planes([2])
        .washers(WasherStyle::F436)
        .methods(JointMethods::aisc_lrfd(AiscEdition::E2016))
        .load_factor(1.6)
        .snug()
        .rules(RuleSet::Rcsc.rules(UnitSystem::UsCustomary));
    let mut connection = Connection::builder(bolt);
    if outline {
        connection = connection.plate("flange", Outline::rectangle("7 in", inches(height))?);
        if stem {
            connection = connection.footprint(Outline::rectangle("0.4 in", inches(height))?);
        }
    }
    for ply in ["packing", "beam"] {
        let plate = Outline::rectangle("8 in", "10 in")?;
        let web = Outline::rectangle("0.4 in", "10 in")?;
        connection = connection.plate(ply, plate).footprint(web);
    }
    let bolts = rows.iter().flat_map(|y| [-2.0, 2.0].map(|x| (x, *y)));
    let bolts: Vec<GroupBolt> = bolts
        .map(|(x, y)| GroupBolt::new(inches(x), inches(y)))
        .collect();
    let each = 5.0 * 4448.0;
    #[allow(clippy::cast_precision_loss)]
    let load = LoadCase::new(
        "hang",
        [0.0, 0.0, each * bolts.len() as f64].map(newtons),
        [0.0, 0.0, 0.0].map(inches),
    );
    let pattern = BoltPattern::new(bolts)?;
    connection
        .bolts(pattern.clone())
        .prying(pries)
        .cases([LoadCase {
            y: pattern.centroid().y,
            ..load
        }])
        .build()?
        .check()
}

fn pries(ply: &str, tributary: f64, to_stem: f64) -> PlatePrying {
    PlatePrying::new(ply, inches(tributary), inches(to_stem), inches(1.5))
}

#[test]
fn a_sound_tee_holds() {
    holds(&tee("1.25 in", pries("flange", 3.0, 1.8), true, true, &PAIR).unwrap());
    holds(&tee("1.25 in", pries("flange", 3.0, 1.8), true, false, &PAIR).unwrap());
}

/// A flange of a quarter inch: 0.9 x 58 ksi x 3 x 0.25^2 / 4 = 2.4 kip in a bolt against 8 kip x 1.4 in.
#[test]
fn packing_does_not_pry_in_place_of_the_flange() {
    match tee("0.25 in", pries("packing", 3.0, 1.8), true, true, &PAIR) {
        Err(_) => {}
        Ok(verdict) => undecided(&verdict),
    }
}

/// By its footprint the stem is 1.8 in from the bolts.
#[test]
fn a_stem_is_not_nearer_than_what_is_fixed_to_the_flange() {
    assert!(tee("0.5 in", pries("flange", 3.0, 0.8), true, true, &PAIR).is_err());
}

/// Without an outline nobody knows how much flange there is to two bolts beside each other; with one it is 3 in.
#[test]
fn a_flange_is_no_longer_than_somebody_says() {
    undecided(&tee("0.5 in", pries("flange", 40.0, 1.8), false, false, &[0.0]).unwrap());
    assert!(tee("0.5 in", pries("flange", 40.0, 1.8), true, false, &[0.0]).is_err());
}

/// The packing of the tee is 2 in thick and said to be welded to something: it still bears nothing for the flange.
#[test]
fn packing_does_not_stiffen_a_flange() {
    let thin = tee("0.25 in", pries("beam", 3.0, 1.8), true, true, &PAIR).unwrap();
    undecided(&thin);
    let open: Vec<String> = thin.open().iter().map(ToString::to_string).collect();
    assert!(open.iter().any(|need| need.contains("ply 1")), "{open:?}");
}

/// On the line of its own wall a bolt has no arm at all: 37.5 kN would hold on any plate.
#[test]
fn a_bolt_does_not_stand_in_the_wall_of_a_post() {
    let plate = || Outline::rectangle("240 mm", "240 mm").unwrap();
    for side in ["160 mm", "150 mm", "172 mm"] {
        let connection = on_ground(bolt("10 mm", "40 mm"), plate(), {
            Outline::rectangle(side, side).unwrap()
        });
        let case = LoadCase::new(
            "pull",
            [0.0, 0.0, 1e5].map(newtons),
            [0.0; 3].map(millimetres),
        );
        let made = connection
            .rows_and_columns(2, 2, "160 mm", "160 mm")
            .cases([case]);
        let why = made.build().unwrap().check().unwrap_err().to_string();
        assert!(why.contains("stands in the edge"), "{why}");
    }
}

/// 1.5 times 60 kN down and once 90 kN up are no load: nothing is checked, and nothing holds.
#[test]
fn loads_that_cancel_show_nothing() {
    let of = |up: f64| {
        let case = |name: &str, y: f64| {
            LoadCase::new(
                name,
                [0.0, 1e3 * y, 0.0].map(newtons),
                [0.0; 3].map(millimetres),
            )
        };
        Connection::builder(bolt("10 mm", "10 mm"))
            .rows_and_columns(2, 2, "60 mm", "60 mm")
            .cases([case("crowd", -60.0), case("wind", up)])
            .combination(
                Combination::new("both")
                    .plus(1.5, "crowd")
                    .plus(1.0, "wind"),
            )
            .build()
            .unwrap()
            .check()
    };
    assert!(of(90.0).is_err());
    assert!(of(89.0).is_ok());
}

/// Rows 2 in and 4 in apart, and 1.5 in from the ends: to the first belong 1 + 1.5 in, not the third part of 9 in.
#[test]
fn a_bolt_has_no_more_flange_than_its_own() {
    let rows = [-3.0, -1.0, 3.0];
    let of = |tributary: f64| {
        tee(
            "1.25 in",
            pries("flange", tributary, 1.8),
            true,
            true,
            &rows,
        )
    };
    holds(&of(2.5).unwrap());
    assert!(of(2.6).is_err());
}

/// A foot of 10 mm on a bigger plate of packing that is loose: the foot presses by its own edge, 60 mm from the bolts and not 160.
#[test]
fn packing_does_not_lengthen_a_foot() {
    let bolt = Joint::builder("M16")
        .ply("foot", "10 mm")
        .material("S275 steel")
        .ply("packing", "40 mm")
        .material("S275 steel")
        .pulls(0.0)
        .ply("ground", "20 mm")
        .material("S275 steel")
        .shear_planes([2])
        .washers(WasherStyle::Iso7090)
        .methods(JointMethods::en_1993())
        .load_factor(1.5)
        .prying(Prying::None)
        .rules(RuleSet::En1090.rules(UnitSystem::Si));
    let tilting = |ply: &str| {
        let square = |side: &str| Outline::rectangle(side, side).unwrap();
        let case = LoadCase::of_moment("tilt", [2000.0, 0.0, 0.0].map(newton_metres));
        Connection::builder(bolt.clone())
            .rows_and_columns(2, 2, "140 mm", "140 mm")
            .plate("foot", square("200 mm"))
            .footprint(square("110 mm"))
            .plate("packing", square("400 mm"))
            .footprint(square("199 mm"))
            .plate("ground", square("500 mm"))
            .footprint(square("499 mm"))
            .out_of_plane(OutOfPlane::PressedEdge { ply: ply.into() })
            .cases([case])
            .build()
            .unwrap()
            .check()
    };
    let foot = tilting("foot").unwrap();
    assert!(
        foot.word() != Word::Holds,
        "{}",
        foot.render(UnitSystem::Si)
    );
    let longer = tilting("packing");
    let longer = longer.map(|found| found.render(UnitSystem::Si).to_string());
    assert!(longer.is_err(), "{longer:?}");
}
