//! The search over parts and patterns of a connection, beside a loop that tries everything.

use std::ops::ControlFlow;

use shankline::connection::{Connection, Outline, Side};
use shankline::joint::{DesignSpace, RuleSet, Word};
use shankline::prelude::*;
use shankline::strength::group::BoltPattern;
use shankline::tables::holes::HoleFit;

const THREADS: [&str; 4] = ["M10", "M12", "M16", "M20"];

/// The hanger of a walkway (invented): EN 1993-1-8, a load straight down through the centroid.
fn hanger(thread: &str, pattern: Option<&BoltPattern>, kilonewtons: f64) -> Connection {
    let bolt = Joint::builder(thread)
        .ply("hanger", "10 mm")
        .material("S275 steel")
        .ply("beam tab", "12 mm")
        .material("S275 steel")
        .washers(WasherStyle::Iso7090)
        .methods(JointMethods::en_1993())
        .load_factor(1.5)
        .rules(RuleSet::En1090.rules(UnitSystem::Si));
    let mut connection = Connection::builder(bolt)
        .rows_and_columns(2, 2, "70 mm", "70 mm")
        .plate("hanger", Outline::rectangle("190 mm", "260 mm").unwrap())
        .held(Side::Bottom)
        .plate("beam tab", Outline::rectangle("190 mm", "260 mm").unwrap())
        .held(Side::Top)
        .loaded("hanger")
        .case("crowd")
        .force("0 kN", &*format!("-{kilonewtons} kN"), "0 kN")
        .at("0 mm", "0 mm", "0 mm")
        .build()
        .unwrap();
    if let Some(pattern) = pattern {
        connection.bolts = pattern.clone();
    }
    connection
}

fn space() -> DesignSpace {
    DesignSpace::new()
        .threads(THREADS.map(|thread| thread.parse::<Thread>().unwrap()))
        .washers([WasherStyle::Iso7090])
        .holes(HoleFit::Normal)
}

fn patterns() -> [BoltPattern; 2] {
    let rows = |rows| {
        BoltPattern::rows_and_columns(rows, 2, millimetres(70.0), millimetres(70.0)).unwrap()
    };
    [rows(2), rows(3)]
}

/// Of each pattern the smallest bolt that holds, which is the lightest, as the loop finds it.
#[test]
fn the_lightest_that_holds_is_found() {
    for load in [40.0, 90.0, 150.0, 220.0, 4000.0] {
        let mut wanted = Vec::new();
        for (number, pattern) in patterns().iter().enumerate() {
            let holds = |thread: &&str| {
                let verdict = hanger(thread, Some(pattern), load).check();
                verdict.is_ok_and(|verdict| verdict.word() == Word::Holds)
            };
            if let Some(thread) = THREADS.iter().copied().find(|thread| holds(thread)) {
                wanted.push((number, thread));
            }
        }
        let designs = hanger("M16", None, load)
            .design(&space(), &patterns(), &[])
            .unwrap();
        let mut found: Vec<(usize, String)> = designs
            .iter()
            .map(|design| (design.pattern, design.choice.bolt.thread.to_string()))
            .collect();
        found.sort();
        let wanted: Vec<(usize, String)> = wanted
            .into_iter()
            .map(|(number, thread)| (number, thread.to_string()))
            .collect();
        assert_eq!(found, wanted, "{load} kN");
        assert!(
            designs
                .iter()
                .all(|design| design.verdict.word() == Word::Holds)
        );
        assert!(
            designs
                .iter()
                .all(|design| design.connection.check().as_ref() == Ok(&design.verdict))
        );
        let masses: Vec<f64> = designs
            .iter()
            .map(|design| design.mass.unwrap().value)
            .collect();
        assert!(masses.is_sorted(), "{masses:?}");
    }
}

#[test]
fn without_patterns_it_is_its_own() {
    let hanger = hanger("M16", None, 60.0);
    let designs = hanger.design(&space(), &[], &[]).unwrap();
    assert_eq!(designs.len(), 1);
    assert_eq!(designs[0].connection.bolts, hanger.bolts);
}

/// A pattern that stands outside the plate is an error of the caller, and says which it is.
#[test]
fn a_pattern_that_does_not_fit_is_named() {
    let wide = BoltPattern::rows_and_columns(2, 2, millimetres(400.0), millimetres(70.0)).unwrap();
    let [usual, _] = patterns();
    let error = hanger("M16", None, 60.0)
        .design(&space(), &[usual, wide], &[])
        .unwrap_err();
    assert!(error.to_string().starts_with("pattern 2: "), "{error}");
    let many = vec![patterns()[0].clone(); 1001];
    assert!(
        hanger("M16", None, 60.0)
            .design(&space(), &many, &[])
            .is_err()
    );
}

#[test]
fn it_can_be_stopped_anywhere() {
    let hanger = hanger("M16", None, 60.0);
    let mut calls = 0;
    let whole = hanger.design_watched(&space(), &patterns(), &[], |done, of| {
        assert!(done <= of);
        calls += 1;
        ControlFlow::Continue(())
    });
    assert!(matches!(whole, Ok(ControlFlow::Continue(designs)) if designs.len() == 2));
    for stop in 1..=calls {
        let mut left = stop;
        let stopped = hanger.design_watched(&space(), &patterns(), &[], |_, _| {
            left -= 1;
            if left == 0 {
                ControlFlow::Break(())
            } else {
                ControlFlow::Continue(())
            }
        });
        assert_eq!(stopped, Ok(ControlFlow::Break(())), "{stop}");
    }
}

/// What is wrong with one pattern of several names it; the only one needs no number.
#[test]
fn a_pattern_that_is_refused_is_named() {
    let hanger = hanger("M16", None, 40.0);
    let crowded = BoltPattern::rows_and_columns(2, 2, millimetres(5.0), millimetres(5.0)).unwrap();
    let [usual, _] = patterns();
    let said = |patterns: &[BoltPattern]| {
        let found = hanger.design(&space(), patterns, &[]);
        found.unwrap_err().to_string()
    };
    let alone = said(core::slice::from_ref(&crowded));
    assert!(
        alone.contains("stand in one another") && !alone.contains("pattern"),
        "{alone}"
    );
    let second = said(&[usual, crowded]);
    assert_eq!(second, format!("pattern 2: {alone}"));
}
