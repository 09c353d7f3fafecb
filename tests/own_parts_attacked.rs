//! Every figure of parts of the caller's own taken away, misspelt and made absurd: nothing holds then that must not.
#![cfg(feature = "serde")]

use std::fs;

use serde_json::{Map, Value, json};
use shankline::joint::{Joint, Verdict};
use shankline::units::UnitSystem;

mod support;

/// A base of the judged joints, sheared, pulled, tightened and warmed, so that every figure of its parts counts.
fn loaded() -> Value {
    let text = fs::read_to_string(support::repository("tests/data/judged/own_parts.toml")).unwrap();
    let file: Value = toml::from_str(&text).unwrap();
    let mut foot = file["base"]["foot"].clone();
    foot["load"]["along"] = json!("2 kN");
    foot["load"]["across"] = json!("5 kN");
    foot["environment"]["hottest"] = json!("34 C");
    foot["tightening"] = json!({ "torque": {
        "nut_factor": { "min": 0.15, "nominal": 0.18, "max": 0.22 },
        "target": "reusable", "relaxation": 0.05, "stiffness": null } });
    foot["rules"]["protrusion_max_pitches"] = json!(6.0);
    foot["stack"]["plies"][1]["material"] = foot["stack"]["plies"][0]["material"].clone();
    foot
}

fn verdict(joint: &Value) -> Result<Verdict, String> {
    let joint: Joint = serde_json::from_value(joint.clone()).map_err(|error| error.to_string())?;
    joint.check().map_err(|error| error.to_string())
}

fn holds(joint: &Value) -> bool {
    verdict(joint).is_ok_and(|verdict| verdict.holds())
}

/// Where parts of one's own stand.
const PARTS: [&str; 5] = [
    "/bolt/product",
    "/bolt/grade",
    "/nut/style",
    "/stack/washers_under_head/0",
    "/stack/plies/0/material",
];

/// Every figure of them.
fn figures(joint: &Value) -> Vec<(String, String)> {
    let mut found = Vec::new();
    for part in PARTS {
        let of: &Map<String, Value> = joint.pointer(part).unwrap().as_object().unwrap();
        for (key, value) in of {
            let text = value
                .as_str()
                .is_some_and(|text| text.starts_with(|c: char| c.is_ascii_digit()));
            if text || value.is_number() {
                found.push((part.to_owned(), key.clone()));
            }
        }
    }
    found.push(("/nut/style/proof".into(), "stress".into()));
    found
}

fn with(joint: &Value, (part, key): &(String, String), value: Value) -> Value {
    let mut changed = joint.clone();
    changed.pointer_mut(part).unwrap()[key] = value;
    changed
}

/// `"70 +/- 0.5 mm"` with its first number times a factor, and its unit.
fn scaled(value: &Value, factor: f64) -> Value {
    let Some(text) = value.as_str() else {
        return json!(value.as_f64().unwrap() * factor);
    };
    let (number, rest) = text.split_once(' ').unwrap();
    let number: f64 = number.parse().unwrap();
    json!(format!("{} {rest}", number * factor))
}

#[test]
fn the_joint_that_is_attacked_holds() {
    let verdict = verdict(&loaded()).unwrap();
    assert!(verdict.holds(), "{}", verdict.render(UnitSystem::Si));
    assert_eq!(figures(&loaded()).len(), 25);
}

/// What may be left unsaid and the joint still hold: nothing here asks for it.
const NEEDLESS: [(&str, &str); 6] = [
    // ISO 898-3 pairs washers with classes of ISO 898-1, and the strength of this bolt is stated.
    ("/stack/washers_under_head/0", "hardness"),
    // The method of pull-through is statics with the bearing face; EN 1993-1-8 alone wants the flats.
    ("/bolt/product", "across_flats"),
    ("/nut/style", "across_flats"),
    // Within which the strengths hold: a limit, and no fact that bears.
    ("/stack/plies/0/material", "thickness_from"),
    ("/stack/plies/0/material", "thickness_thru"),
    // A ply of machine design bears by its yield strength.
    ("/stack/plies/0/material", "tensile_strength"),
];

#[test]
fn a_figure_that_is_taken_away_or_misspelt_is_missed() {
    let joint = loaded();
    for at in figures(&joint) {
        let (part, key) = &at;
        let mut without = joint.clone();
        let of = without.pointer_mut(part).unwrap().as_object_mut().unwrap();
        let value = of.remove(key).unwrap();
        let needless = NEEDLESS.contains(&(part.as_str(), key.as_str()));
        assert_eq!(holds(&without), needless, "{part}/{key} taken away");
        let of = without.pointer_mut(part).unwrap();
        let misspelt = format!("{key}_");
        of[&misspelt] = value;
        let refused = verdict(&without).unwrap_err();
        assert!(refused.contains(&misspelt), "{refused}");
    }
}

#[test]
fn a_figure_that_is_none_is_refused() {
    let joint = loaded();
    for at in figures(&joint) {
        let value = joint.pointer(&at.0).unwrap()[&at.1].clone();
        let unit = value.as_str().and_then(|text| text.rsplit(' ').next());
        let mut bad = vec![
            scaled(&value, -1.0),
            scaled(&value, f64::NAN),
            scaled(&value, f64::INFINITY),
        ];
        if let Some(unit) = unit {
            bad.extend([
                json!(format!("NaN {unit}")),
                json!(format!("1e400 {unit}")),
                json!("17 kg"),
                json!("17"),
            ]);
        }
        bad.extend([json!([]), json!({}), json!("many"), json!(true)]);
        if !(at.1 == "shank") {
            bad.push(scaled(&value, 0.0));
        }
        for bad in bad {
            let spoiled = with(&joint, &at, bad.clone());
            let needless = NEEDLESS.contains(&(at.0.as_str(), at.1.as_str()));
            // NaN is null in JSON: left unsaid.
            let refused = if bad.is_null() {
                needless || !holds(&spoiled)
            } else {
                verdict(&spoiled).is_err()
            };
            assert!(refused, "{at:?} {bad}");
        }
    }
}

/// A slip of a thousand, as from m to mm or from GPa to MPa: the joint does not hold, but for what lies on the safe
/// side, or holds nothing.
#[test]
fn a_figure_in_another_unit_never_makes_it_hold() {
    const SAFE: [(&str, &str, f64); 7] = [
        // Less shank: the plane is in thread.
        ("/bolt/product", "shank", 1e-3),
        // No figure of the joint needs flats.
        ("/bolt/product", "across_flats", 0.0),
        ("/nut/style", "across_flats", 0.0),
        // Of limits of thickness, those that are wider.
        ("/stack/plies/0/material", "thickness_from", 1e-3),
        ("/stack/plies/0/material", "thickness_thru", 1e3),
        // A bolt that grows less than it does; see the next test.
        ("/bolt/grade", "expansion", 1e-3),
        ("/stack/plies/0/material", "expansion", 1e-3),
    ];
    let joint = loaded();
    let mut held = Vec::new();
    for at in figures(&joint) {
        let value = joint.pointer(&at.0).unwrap()[&at.1].clone();
        for factor in [1e-3, 1e3] {
            let slip = with(&joint, &at, scaled(&value, factor));
            let safe = SAFE
                .iter()
                .any(|(part, key, by)| at.0 == *part && at.1 == *key && factor == *by);
            if holds(&slip) && !safe {
                held.push((at.clone(), factor));
            }
        }
    }
    assert!(held.is_empty(), "{held:#?}");
}
