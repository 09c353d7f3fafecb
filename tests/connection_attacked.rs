//! Connections described so as to look safer than they are. Sums by hand stand beside each.

use shankline::connection::{
    Combination, Connection, ConnectionBuilder, LoadCase, OutOfPlane, Outline, Side,
};
use shankline::error::Amount;
use shankline::joint::{
    JointBuilder, JointMaterial, MaterialKind, Need, OwnMaterial, Prying, RuleSet, Slip, Word,
};
use shankline::prelude::*;
use shankline::strength::check::{Check, Mode, Place};
use shankline::strength::slip::{SlipClass, SlipMethod};

fn bolt() -> JointBuilder {
    Joint::builder("M16")
        .ply("foot", "10 mm")
        .material("S275 steel")
        .ply("post", "12 mm")
        .material("S275 steel")
        .washers(WasherStyle::Iso7090)
        .methods(JointMethods::en_1993())
        .load_factor(1.5)
        .rules(RuleSet::En1090.rules(UnitSystem::Si))
}

fn square(side: &str) -> Outline {
    Outline::rectangle(side, side).unwrap()
}

fn force(name: &str, kilonewtons: [f64; 3]) -> LoadCase {
    LoadCase::new(
        name,
        kilonewtons.map(|own| newtons(1e3 * own)),
        [0.0; 3].map(millimetres),
    )
}

fn refused(connection: ConnectionBuilder) -> String {
    let connection = connection.build().unwrap();
    match connection.check() {
        Ok(verdict) => panic!("{}", verdict.headline(UnitSystem::Si)),
        Err(why) => why.to_string(),
    }
}

/// A factor of nothing leaves a case out as silence does.
#[test]
fn a_case_that_comes_with_no_factor_is_in_no_combination() {
    let lap = |wind: f64| {
        Connection::builder(bolt())
            .rows_and_columns(2, 2, "60 mm", "60 mm")
            .plate("foot", square("140 mm"))
            .held(Side::Bottom)
            .plate("post", square("140 mm"))
            .held(Side::Top)
            .loaded("foot")
            .cases([
                force("weight", [0.0, -10.0, 0.0]),
                force("wind", [0.0, -1000.0, 0.0]),
            ])
            .combination(
                Combination::new("ultimate")
                    .plus(1.35, "weight")
                    .plus(wind, "wind"),
            )
    };
    for nothing in [0.0, -0.0] {
        assert!(refused(lap(nothing)).contains("\"wind\" is in no combination"));
    }
    let with_wind = lap(1.5).build().unwrap().check().unwrap();
    assert_eq!(with_wind.word(), Word::DoesNotHold);
    // One combination may leave out what another has.
    let both = lap(0.0)
        .combination(Combination::new("storm").plus(1e-3, "wind"))
        .build()
        .unwrap();
    assert_eq!(both.check().unwrap().word(), Word::Holds);
}

/// Thin plates, whose bending is not asked here.
fn tilted(ply: &str) -> ConnectionBuilder {
    let ribbed = "bending of its ribs worked by hand (invented)";
    Connection::builder(
        bolt()
            .prying(Prying::None)
            .set_aside(Mode::GrossSection, ribbed)
            .set_aside(Mode::Prying, ribbed),
    )
    .rows_and_columns(2, 2, "60 mm", "60 mm")
    .out_of_plane(OutOfPlane::PressedEdge { ply: ply.into() })
    .cases([LoadCase::of_moment(
        "push",
        [20e3, 0.0, 0.0].map(newton_metres),
    )])
}

/// A foot of 600 mm on a post of 120 mm presses at the edge of the post: 20 kN m on bolts 30 and 90 mm from it pull the
/// upper with 20e6 * 90 / (2 (30^2 + 90^2)) = 100 kN; about the edge of the foot it would be 18.2 kN.
#[test]
fn an_edge_that_hangs_over_presses_on_nothing() {
    let overhanging = tilted("foot")
        .plate("foot", square("600 mm"))
        .plate("post", square("120 mm"));
    assert!(refused(overhanging).contains("\"post\""));
    let on_the_post = tilted("post")
        .plate("foot", square("600 mm"))
        .plate("post", square("120 mm"))
        .build()
        .unwrap();
    let most = on_the_post.forces("push").unwrap();
    let most = most.iter().map(|own| own.along.value).fold(0.0, f64::max);
    assert!((most - 100e3).abs() < 1e-3, "{most}");
    assert_eq!(on_the_post.check().unwrap().word(), Word::DoesNotHold);
    // Edges that lie on each other press; so does that of a foot within the post.
    for post in ["300 mm", "400 mm"] {
        let flush = tilted("foot")
            .plate("foot", square("300 mm"))
            .plate("post", square(post))
            .build()
            .unwrap();
        assert_eq!(flush.check().unwrap().word(), Word::Holds, "{post}");
    }
}

/// A foot of 300 mm tilts about its edge, 150 mm off the middle, so that bolts 120 and 180 mm from it pull 128 kN, all
/// four, and the edge is pressed by as much: 20e6 (120 and 180) / (120^2 and 180^2). That is 1.5 x 128 x 0.12 = 23 kN m in a
/// plate of 10 mm, which yields at 275 x 300 x 10^2 / 6, or 1.4 kN m; of 60 mm it yields at 255 x 300 x 60^2 / 6, or 46 kN m.
#[test]
fn a_plate_that_bends_before_its_edge_presses_is_not_known() {
    let on_edge = |thickness: &str| {
        let bolts = Joint::builder("M16")
            .ply("foot", thickness)
            .material("S275 steel")
            .ply("post", "12 mm")
            .material("S275 steel")
            .washers(WasherStyle::Iso7090)
            .methods(JointMethods::en_1993())
            .load_factor(1.5)
            .rules(RuleSet::En1090.rules(UnitSystem::Si))
            .prying(Prying::None)
            .set_aside(Mode::Prying, "ribs at every bolt (invented)");
        Connection::builder(bolts)
            .rows_and_columns(2, 2, "60 mm", "60 mm")
            .out_of_plane(OutOfPlane::PressedEdge { ply: "foot".into() })
            .plate("foot", square("300 mm"))
            .plate("post", square("300 mm"))
            .cases([LoadCase::of_moment(
                "push",
                [20e3, 0.0, 0.0].map(newton_metres),
            )])
            .build()
            .unwrap()
            .check()
            .unwrap()
    };
    let thin = on_edge("10 mm");
    assert_eq!(thin.word(), Word::Undecided);
    assert_eq!(thin.cases[0].word, Word::Undecided);
    let open: Vec<String> = thin.open().iter().map(ToString::to_string).collect();
    assert!(
        open.len() == 1 && open[0].contains("out of its plane"),
        "{open:?}"
    );
    assert_eq!(on_edge("60 mm").word(), Word::Holds);
}

/// The foot of before on a wider post: straight up to 0.6 of its yield, 1.5 x 128.2 kN x 0.12 m = 0.6 x 255 x 300 t^2 / 6 at
/// t = 54.9 mm. How wide the post is does not matter, and of what the foot is not known to be made nothing is said.
#[test]
fn a_plate_is_straight_up_to_a_part_of_its_yield() {
    let on_edge = |thickness: &str, material: Option<JointMaterial>| {
        let mut bolts = Joint::builder("M16").ply("foot", thickness);
        if let Some(material) = material {
            bolts = bolts.material(material);
        }
        let bolts = bolts
            .ply("post", "12 mm")
            .material("S275 steel")
            .washers(WasherStyle::Iso7090)
            .methods(JointMethods::en_1993())
            .load_factor(1.5)
            .rules(RuleSet::En1090.rules(UnitSystem::Si))
            .prying(Prying::None);
        let connection = Connection::builder(bolts)
            .rows_and_columns(2, 2, "60 mm", "60 mm")
            .out_of_plane(OutOfPlane::PressedEdge { ply: "foot".into() })
            .plate("post", square("400 mm"))
            .plate("foot", square("300 mm"))
            .cases([LoadCase::of_moment(
                "push",
                [20e3, 0.0, 0.0].map(newton_metres),
            )]);
        let verdict = connection.build().unwrap().check().unwrap();
        let of_plate = verdict.missing.iter();
        let of_plate = of_plate.filter(|own| own.mode == Mode::GrossSection);
        of_plate.map(|own| own.need.clone()).collect::<Vec<Need>>()
    };
    let steel = || Some(JointMaterial::from("S275 steel"));
    assert_eq!(on_edge("55.0 mm", steel()), []);
    let bent = on_edge("54.8 mm", steel());
    assert!(matches!(bent[..], [Need::Method(_)]), "{bent:?}");
    assert_eq!(on_edge("60 mm", None), [Need::Material]);
    let unread = OwnMaterial::new("plate of the yard", MaterialKind::CarbonSteel);
    let unread = on_edge("60 mm", Some(unread.into()));
    assert_eq!(unread, [Need::YieldStrength]);
}

/// What an edge presses on must be there: to leave its outline out helps nobody.
#[test]
fn an_edge_that_presses_on_an_unknown_plate_is_refused() {
    let mut bolts = bolt().prying(Prying::None);
    bolts = bolts.end_distance("30 mm").edge_distance("30 mm"); // of the post
    let unsaid = Connection::builder(bolts)
        .rows_and_columns(2, 2, "60 mm", "60 mm")
        .out_of_plane(OutOfPlane::PressedEdge { ply: "foot".into() })
        .cases([LoadCase::of_moment(
            "push",
            [20e3, 0.0, 0.0].map(newton_metres),
        )])
        .plate("foot", square("600 mm"));
    assert!(refused(unsaid).contains("\"post\""));
}

/// What a file leaves out is not taken for nothing: loads without their factors, or loads that alternate.
#[cfg(feature = "serde")]
#[test]
fn a_file_says_that_there_are_no_combinations_and_that_nothing_alternates() {
    let lap = Connection::builder(bolt())
        .rows_and_columns(2, 2, "60 mm", "60 mm")
        .cases([
            force("up", [0.0, 10.0, 0.0]),
            force("down", [0.0, -10.0, 0.0]),
        ])
        .combination(Combination::new("most").plus(90.0, "up").plus(1.0, "down"))
        .alternation(shankline::connection::Alternation::new("up", "down"))
        .build()
        .unwrap();
    let whole = serde_json::to_value(&lap).unwrap();
    assert!(serde_json::from_value::<Connection>(whole.clone()).is_ok());
    for fact in ["combinations", "alternations", "cases"] {
        let mut silent = whole.clone();
        silent.as_object_mut().unwrap().remove(fact).unwrap();
        let why = serde_json::from_value::<Connection>(silent).unwrap_err();
        assert!(why.to_string().contains(fact), "{why}");
    }
}

/// The flange of a tee with 3 in between its bolts has 3 in for each of them, and 20 kip on four at b = 1.75 in take 41 % of it;
/// with 40 in each it would be 17 %. A ring of bolts, or four lines of them, is no tee.
#[test]
fn no_bolt_has_more_flange_than_there_is() {
    use shankline::connection::PlatePrying;
    use shankline::strength::group::BoltPattern;
    let tee = |bolts: BoltPattern, tributary: f64, to_stem: f64| {
        let bolt = Joint::builder("3/4-10 UNC")
            .grade("ASTM F3125 A325 type 1")
            .product("heavy hex structural bolt ASME B18.2.6")
            .ply("flange", "0.5 in")
            .material("ASTM A36 steel")
            .ply("beam", "1 in")
            .material("ASTM A36 steel")
            .methods(JointMethods::aisc_lrfd(AiscEdition::E2016))
            .load_factor(1.0);
        Connection::builder(bolt)
            .bolts(bolts)
            .plate("flange", Outline::rectangle("14 in", "6 in").unwrap())
            .plate("beam", square("14 in"))
            .prying(PlatePrying::new(
                "flange",
                inches(tributary),
                inches(to_stem),
                inches(1.0),
            ))
            .cases([force("pull", [0.0, 0.0, 89.0])])
    };
    let grid =
        |rows, columns| BoltPattern::rows_and_columns(rows, columns, inches(3.0), inches(4.0));
    assert!(
        tee(grid(2, 2).unwrap(), 3.0, 1.75)
            .build()
            .unwrap()
            .check()
            .is_ok()
    );
    // The stem may stand either way; 2 x 4 in have 14 in of outline.
    assert!(
        tee(grid(2, 2).unwrap(), 4.0, 1.25)
            .build()
            .unwrap()
            .check()
            .is_ok()
    );
    for (bolts, tributary, why) in [
        (grid(2, 2), 4.01, "flange"),
        (grid(2, 2), 40.0, "flange"),
        (grid(1, 2), 6.01, "flange"), // the height of the outline
        (grid(1, 4), 3.0, "two lines"),
        (grid(1, 1), 3.0, "two lines"),
        (BoltPattern::circle(8, inches(5.0)), 1.5, "two lines"),
    ] {
        let said = refused(tee(bolts.unwrap(), tributary, 1.25));
        assert!(said.contains(why), "{said}");
    }
}

/// A factor of next to nothing leaves a case out as nothing does.
#[test]
fn a_factor_that_hides_its_case_is_refused() {
    for tiny in [1e-300, -1e-300, 1e-9, 0.9e-3, f64::MIN_POSITIVE] {
        let hidden = Connection::builder(bolt())
            .rows_and_columns(2, 2, "60 mm", "60 mm")
            .cases([
                force("weight", [0.0, -10.0, 0.0]),
                force("wind", [0.0, -1000.0, 0.0]),
            ])
            .combination(
                Combination::new("ultimate")
                    .plus(1.35, "weight")
                    .plus(tiny, "wind"),
            );
        let why = refused(hidden);
        assert!(why.contains("factor of a load case"), "{why}");
    }
}

/// A strap of S235, 5 mm thick, in a lap of two bolts M16 behind each other, 70 mm apart, on a plate a metre wide: by 30
/// degrees the load comes to 2 x 40.4 mm, and 2.5 holes either side count at least, 87.5 mm:
/// (87.5 - 17.5) x 5 x 0.9 x 360 / 1.25 = 90.72 kN.
#[test]
fn a_plate_much_wider_than_its_bolts_counts_what_the_load_spreads_to() {
    let strap = |width: &str, load: f64| {
        let bolt = Joint::builder("M16")
            .ply("strap", "5 mm")
            .material("S235 steel")
            .ply("post", "20 mm")
            .material("S275 steel")
            .washers(WasherStyle::Iso7090)
            .methods(JointMethods::en_1993())
            .load_factor(1.0)
            .rules(RuleSet::En1090.rules(UnitSystem::Si));
        let outline = Outline::rectangle(width, "190 mm").unwrap();
        Connection::builder(bolt)
            .rows_and_columns(2, 1, "70 mm", "70 mm")
            .plate("strap", outline.clone())
            .held(Side::Bottom)
            .plate("post", outline)
            .held(Side::Top)
            .loaded("strap")
            .cases([force("pull", [0.0, -load, 0.0])])
            .build()
            .unwrap()
            .check()
            .unwrap()
    };
    let wide = strap("1000 mm", 110.0);
    assert_eq!(
        wide.word(),
        Word::DoesNotHold,
        "{}",
        wide.render(UnitSystem::Si)
    );
    let net = wide.checks.iter().map(|own| &own.check);
    let net = net.filter(|own| own.mode == shankline::strength::check::Mode::NetSection);
    let used = net.map(|own| own.utilisation.value).fold(0.0, f64::max);
    assert!((used - 110.0 / 90.72).abs() < 1e-9, "{used}");
    assert_eq!(strap("1000 mm", 90.7).word(), Word::Holds);
    // Where the plate is no wider than that nothing is taken off: 62.5 x 5 x 0.9 x 360 / 1.25 = 81 kN.
    for (load, word) in [(80.9, Word::Holds), (81.1, Word::DoesNotHold)] {
        assert_eq!(strap("80 mm", load).word(), word);
    }
}

/// Three bolts in one row at -30, 30 and 60 mm, so that the load acts at 20 mm, on a plate a metre wide about that line. The
/// plate counts from -73.75 to 103.75 mm by 2.5 holes of 17.5 mm; of that only what lies evenly about the load, 2 x 83.75 mm:
/// (167.5 - 3 x 17.5) x 10 x 0.9 x 410 / 1.25 = 339.48 kN.
#[test]
fn what_counts_of_a_wide_plate_lies_evenly_about_its_load() {
    use shankline::strength::check::Mode;
    use shankline::strength::group::{BoltPattern, GroupBolt};
    let at = |x: f64| GroupBolt::new(millimetres(x), millimetres(0.0));
    let outline = |half: f64| {
        let corner = |x: f64, y: f64| shankline::strength::group::Point {
            x: millimetres(x),
            y: millimetres(y),
        };
        Outline::between(corner(20.0 - half, -60.0), corner(20.0 + half, 60.0)).unwrap()
    };
    let lap = Connection::builder(bolt())
        .bolts(BoltPattern::new([at(-30.0), at(30.0), at(60.0)]).unwrap())
        .plate("foot", outline(500.0))
        .held(Side::Bottom)
        .plate("post", outline(500.0))
        .held(Side::Top)
        .loaded("foot")
        .case("pull")
        .force("0 kN", "-100 kN", "0 kN")
        .at("20 mm", "0 mm", "0 mm")
        .build();
    let verdict = lap.unwrap().check().unwrap();
    let checks = verdict.checks.iter().map(|own| &own.check);
    let net = checks.filter(|own| own.mode == Mode::NetSection && own.place.to_string() == "ply 1");
    let used = net.map(|own| own.utilisation.value).fold(0.0, f64::max);
    assert!((used - 150.0 / 339.48).abs() < 1e-5, "{used}");
}

/// A plate with one bolt is pulled or pressed as well, and it bends where the load goes across it.
#[test]
fn the_plate_of_one_bolt_is_not_passed_over() {
    use shankline::joint::Need;
    let link = |load: [f64; 2], side: Option<Side>, loaded: Option<&str>| {
        let mut link = Connection::builder(bolt())
            .rows_and_columns(1, 1, "60 mm", "60 mm")
            .plate("foot", square("90 mm"));
        if let Some(side) = side {
            link = link.held(side);
        }
        link = link.plate("post", square("90 mm")).held(Side::Top);
        if let Some(ply) = loaded {
            link = link.loaded(ply);
        }
        let case = force("load", [load[0], load[1], 0.0]);
        let verdict = link.cases([case]).build().unwrap().check().unwrap();
        let open = verdict.open().into_iter();
        let of_plates =
            open.filter(|own| own.mode == shankline::strength::check::Mode::GrossSection);
        of_plates.map(|own| own.need.clone()).collect::<Vec<_>>()
    };
    let (down, foot) = (Some(Side::Bottom), Some("foot"));
    assert_eq!(link([0.0, -20.0], down, foot), []);
    let bends = |needs: &[Need]| matches!(needs, [Need::Method(_), ..]);
    assert!(bends(&link([0.0, 20.0], down, foot)));
    assert!(bends(&link([20.0, 0.0], down, foot)));
    assert_eq!(link([0.0, -20.0], None, foot), [Need::HeldSide]);
    assert!(link([0.0, -20.0], down, None).contains(&Need::LoadedPly));
}

/// The same lap pulled and pressed: pressed it may buckle, and nobody says over which length.
#[test]
fn a_pressed_plate_is_not_passed_over() {
    for sign in [1.0, -1.0] {
        let lap = Connection::builder(bolt())
            .rows_and_columns(2, 2, "60 mm", "60 mm")
            .plate("foot", square("140 mm"))
            .held(Side::Bottom)
            .plate("post", square("1400 mm"))
            .held(Side::Top)
            .cases([force("load", [0.0, sign * 40.0, 0.0])])
            .build()
            .unwrap();
        let verdict = lap.check().unwrap();
        assert_ne!(verdict.word(), Word::Holds);
    }
}

/// From a line of bolts to the edge of the flange there is what the outline has, and to the stem less than half of what lies
/// between both lines: more would leave prying out.
#[test]
fn stated_distances_of_a_flange_are_those_of_its_outline() {
    use shankline::connection::PlatePrying;
    let tee = |to_stem: f64, to_edge: f64| {
        let bolt = Joint::builder("3/4-10 UNC")
            .grade("ASTM F3125 A325 type 1")
            .product("heavy hex structural bolt ASME B18.2.6")
            .ply("flange", "0.5 in")
            .material("ASTM A36 steel")
            .ply("beam", "1 in")
            .material("ASTM A36 steel")
            .methods(JointMethods::aisc_lrfd(AiscEdition::E2016))
            .load_factor(1.0);
        Connection::builder(bolt)
            .rows_and_columns(2, 2, "3 in", "4 in")
            .plate("flange", Outline::rectangle("7 in", "6 in").unwrap())
            .plate("beam", square("14 in"))
            .prying(PlatePrying::new(
                "flange",
                inches(3.0),
                inches(to_stem),
                inches(to_edge),
            ))
            .cases([force("pull", [0.0, 0.0, 89.0])])
    };
    let is_said = |to_stem, to_edge| tee(to_stem, to_edge).build().unwrap().check().is_ok();
    assert!(is_said(1.75, 1.5));
    assert!(is_said(1.75, 1.0)); // less is on the safe side
    for (to_stem, to_edge) in [(1.75, 1.51), (1.75, 20.0), (2.01, 1.5), (2.0, 1.5)] {
        let why = refused(tee(to_stem, to_edge));
        assert!(why.contains("flange"), "{why}");
    }
}

/// Where nothing says how far a load spreads, 2.5 holes of 17.5 mm beside the bolts count. A shear along the held side, by two
/// bolts 60 mm apart on a plate a metre high: 60 + 87.5 = 147.5 mm, 147.5 x 10 x 275 / (1.27 sqrt 3) = 184.40 kN. One bolt on a
/// plate a metre wide: 87.5 x 10 x 275 = 240.6 kN.
#[test]
fn no_plate_counts_to_edges_that_its_load_does_not_reach() {
    use shankline::strength::check::{Check, Mode};
    let gross = |checks: &mut dyn Iterator<Item = &Check>| {
        let own = checks.filter(|own| {
            own.mode == Mode::GrossSection
                && own.place.to_string() == "ply 1"
                && matches!(own.demand, shankline::error::Amount::Force(_))
        });
        own.map(|own| own.utilisation.value).fold(0.0, f64::max)
    };
    let high = Outline::rectangle("100 mm", "1000 mm").unwrap();
    let fin = Connection::builder(bolt())
        .rows_and_columns(2, 1, "60 mm", "60 mm")
        .plate("foot", high.clone())
        .held(Side::Left)
        .plate("post", high)
        .held(Side::Right)
        .cases([force("down", [0.0, -20.0, 0.0])])
        .build()
        .unwrap()
        .check()
        .unwrap();
    let used = gross(&mut fin.checks.iter().map(|own| &own.check));
    assert!((used - 30.0 / 184.40).abs() < 1e-5, "{used}");
    let wide = Outline::rectangle("1000 mm", "100 mm").unwrap();
    let link = Connection::builder(bolt())
        .rows_and_columns(1, 1, "60 mm", "60 mm")
        .plate("foot", wide.clone())
        .held(Side::Bottom)
        .plate("post", wide)
        .held(Side::Top)
        .loaded("foot")
        .cases([force("down", [0.0, -20.0, 0.0])])
        .build()
        .unwrap()
        .check()
        .unwrap();
    let used = gross(&mut link.bolts[0].verdict.checks.iter());
    assert!((used - 30.0 / 240.625).abs() < 1e-6, "{used}");
}

/// Joints of category C may not slip at the limit, and their net section may not yield either (EN 1993-1-8 3.4.1, recalled):
/// 275 (140 - 2 x 18) 10 N = 286.0 kN, less than the 0.9 x 410 x 1040 / 1.25 = 307.0 kN at which it breaks.
#[test]
fn what_may_not_slip_may_not_yield_at_its_holes() {
    let resisting = |serviceability| {
        let slip = SlipMethod::En1993 {
            class: SlipClass::B,
            serviceability,
        };
        let methods = JointMethods {
            slip: Slip::Resisted(slip),
            ..JointMethods::en_1993()
        };
        let bolts = Joint::builder("M16")
            .ply("foot", "10 mm")
            .material("S275 steel")
            .hole("18 mm")
            .ply("post", "12 mm")
            .material("S275 steel")
            .hole("18 mm")
            .washers(WasherStyle::Iso7090)
            .methods(methods)
            .load_factor(1.5)
            .rules(RuleSet::En1090.rules(UnitSystem::Si));
        let strap = Connection::builder(bolts)
            .rows_and_columns(2, 2, "60 mm", "60 mm")
            .plate("foot", square("140 mm"))
            .held(Side::Bottom)
            .plate("post", square("140 mm"))
            .held(Side::Top)
            .loaded("foot")
            .cases([force("pull", [0.0, -60.0, 0.0])])
            .build()
            .unwrap();
        let verdict = strap.check().unwrap();
        let of_foot =
            |check: &&Check| check.mode == Mode::NetSection && check.place == Place::Ply(1);
        let checks = verdict.checks.iter().map(|own| &own.check);
        let bears = checks.filter(of_foot).map(|check| match check.resistance {
            Amount::Force(force) => force.value,
            other => panic!("{other}"),
        });
        bears.fold(f64::INFINITY, f64::min)
    };
    assert!((resisting(true) - 307.0e3).abs() < 100.0);
    assert!((resisting(false) - 286.0e3).abs() < 100.0);
}
