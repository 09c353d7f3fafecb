//! The request and the answer in `examples/data` stay what the library reads and writes.
//!
//! `UPDATE_EXAMPLES=1 cargo test --all-features --test design_json` rewrites the answer.
#![cfg(feature = "serde")]

use serde::Deserialize;
use shankline::joint::{DesignReport, DesignSpace, Joint, Objective};
use shankline::units::UnitSystem;

const REQUEST: &str = "examples/data/walkway_hanger_design.json";
const ANSWER: &str = "examples/data/walkway_hanger_designs.json";

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Request {
    joint: Joint,
    space: DesignSpace,
    objectives: Vec<Objective>,
}

#[test]
fn the_answer_is_current() {
    let request: Request =
        serde_json::from_str(&std::fs::read_to_string(REQUEST).unwrap()).unwrap();
    let designs = request
        .joint
        .design(&request.space, &request.objectives)
        .unwrap();
    let report = designs.report(UnitSystem::Si).unwrap();
    let mut current = serde_json::to_string_pretty(&report).unwrap();
    current.push('\n');
    if std::env::var_os("UPDATE_EXAMPLES").is_some() {
        std::fs::write(ANSWER, &current).unwrap();
    }
    let kept = std::fs::read_to_string(ANSWER).unwrap();
    // Long texts, not to be printed.
    assert!(kept == current, "run this test with UPDATE_EXAMPLES=1");
    let back: DesignReport = serde_json::from_str(&kept).unwrap();
    assert_eq!(back, report);
    assert!(!back.feasible.is_empty() && !back.rejected.is_empty() && !back.ruled_out.is_empty());
    // The best one in full is the joint with the parts of the first.
    let best = back.best.unwrap();
    assert_eq!(best.bolt, back.feasible[0].bolt);
    assert!(!best.cautions.is_empty());
}

#[test]
fn a_space_comes_back_as_it_went() {
    let request: Request =
        serde_json::from_str(&std::fs::read_to_string(REQUEST).unwrap()).unwrap();
    let text = serde_json::to_string(&request.space).unwrap();
    let back: DesignSpace = serde_json::from_str(&text).unwrap();
    assert_eq!(back, request.space);
    assert_eq!(
        serde_json::from_str::<DesignSpace>("{}").unwrap(),
        DesignSpace::new()
    );
}

#[test]
fn bad_requests_name_what_is_wrong() {
    let text = std::fs::read_to_string(REQUEST).unwrap();
    for (right, wrong, named) in [
        ("\"space\"", "\"spaces\"", "spaces"),
        ("\"washers\"", "\"washer\"", "washer"),
        ("\"M16\"", "\"M16.3\"", "M16.3"),
        ("\"fit\"", "\"fits\"", "fits"),
        ("\"mass\"", "\"weight\"", "weight"),
        ("\"90 mm\"", "\"90\"", "no unit"),
        ("class 10.9", "class 10.8", "10.8"),
    ] {
        let spoiled = text.replacen(right, wrong, 1);
        assert_ne!(spoiled, text, "{right}");
        let error = serde_json::from_str::<Request>(&spoiled).unwrap_err();
        assert!(error.to_string().contains(named), "{named}: {error}");
    }
    for (right, wrong, named) in [
        (
            "\"utilisation_max\": 0.95",
            "\"utilisation_max\": 1.95",
            "greatest utilisation",
        ),
        (
            "\"washers\": [\"iso_7089\"],",
            "",
            "no style of washer is named",
        ),
    ] {
        let spoiled = text.replacen(right, wrong, 1);
        assert_ne!(spoiled, text, "{right}");
        let request: Request = serde_json::from_str(&spoiled).unwrap();
        let error = request
            .joint
            .design(&request.space, &[])
            .unwrap_err()
            .to_string();
        assert!(error.contains(named), "{named}: {error}");
    }
}
