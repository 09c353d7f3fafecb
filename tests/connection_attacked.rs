//! Connections described so as to look safer than they are. Sums by hand stand beside each.

use shankline::connection::{
    Alternation, Combination, Connection, ConnectionBuilder, LoadCase, OutOfPlane, Outline, Side,
};
use shankline::joint::{JointBuilder, Prying, RuleSet, Word};
use shankline::prelude::*;

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

fn tilted(ply: &str) -> ConnectionBuilder {
    Connection::builder(bolt().prying(Prying::None))
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
        .alternation(Alternation::new("up", "down"))
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
