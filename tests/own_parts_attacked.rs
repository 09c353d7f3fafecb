//! Every figure of parts of the caller's own taken away, misspelt and made absurd: nothing holds then that must not.
#![cfg(feature = "serde")]

use std::fs;

use serde_json::{Value, json};
use shankline::caution::Caution;
use shankline::joint::{Joint, Verdict};
use shankline::units::UnitSystem;

mod support;

/// A joint that holds, and where its own parts stand.
struct Attacked {
    joint: Value,
    /// Objects whose figures are attacked.
    parts: &'static [&'static str],
    /// How many figures they have.
    count: usize,
    /// What may be left unsaid and the joint still hold: nothing in it asks for it.
    needless: &'static [(&'static str, &'static str)],
    /// What holds in a unit a thousand times greater, or smaller, for it lies on the safe side then.
    safe: &'static [(&'static str, &'static str, Slip)],
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum Slip {
    Smaller,
    Greater,
}

impl Slip {
    const fn factor(self) -> f64 {
        match self {
            Self::Smaller => 1e-3,
            Self::Greater => 1e3,
        }
    }
}

/// The bases of the judged joints, loaded so that every figure of their parts counts.
fn attacked() -> [Attacked; 2] {
    let text = fs::read_to_string(support::repository("tests/data/judged/own_parts.toml")).unwrap();
    let file: Value = toml::from_str(&text).unwrap();
    let torque = json!({ "torque": {
        "nut_factor": { "min": 0.15, "nominal": 0.18, "max": 0.22 },
        "target": "reusable", "relaxation": 0.05 } });
    // Sheared, pulled, tightened and warmed.
    let mut foot = file["base"]["foot"].clone();
    foot["load"]["along"] = json!("2 kN");
    foot["load"]["across"] = json!("5 kN");
    foot["environment"]["hottest"] = json!("34 C");
    foot["tightening"] = torque;
    foot["rules"]["protrusion_max_pitches"] = json!(6.0);
    foot["stack"]["plies"][1]["material"] = foot["stack"]["plies"][0]["material"].clone();
    // Sheared and pulled.
    let mut hatch = file["base"]["hatch"].clone();
    hatch["load"]["along"] = json!("2 kN");
    hatch["load"]["across"] = json!("5 kN");
    hatch["rules"]["protrusion_max_pitches"] = json!(8.0);
    hatch["set_aside"] = json!([{ "mode": "pull_through", "reason": "tested (invented)" }]);
    [
        Attacked {
            joint: foot,
            parts: &[
                "/bolt/product",
                "/bolt/grade",
                "/nut/style",
                "/nut/style/proof",
                "/stack/washers_under_head/0",
                "/stack/plies/0/material",
            ],
            count: 26,
            needless: &[
                // The method of pull-through is statics with the bearing face; EN 1993-1-8 alone wants the flats.
                ("/bolt/product", "across_flats"),
                ("/nut/style", "across_flats"),
                // Within which the strengths hold: a limit, and no fact that bears.
                ("/stack/plies/0/material", "thickness_from"),
                ("/stack/plies/0/material", "thickness_thru"),
                // A ply of machine design bears by its yield strength.
                ("/stack/plies/0/material", "tensile_strength"),
            ],
            safe: &[
                // Less shank: the plane is in thread.
                ("/bolt/product", "shank", Slip::Smaller),
                // Of limits of thickness, those that are wider.
                ("/stack/plies/0/material", "thickness_from", Slip::Smaller),
                ("/stack/plies/0/material", "thickness_thru", Slip::Greater),
                // A bolt that hardly grows, as of some nickel irons: 14 K do not stretch it much.
                ("/bolt/grade", "expansion", Slip::Smaller),
            ],
        },
        Attacked {
            joint: hatch,
            parts: &["/bolt/product/countersunk", "/bolt/product/lengths/1"],
            count: 7,
            needless: &[],
            safe: &[],
        },
    ]
}

fn verdict(joint: &Value) -> Result<Verdict, String> {
    let joint: Joint = serde_json::from_value(joint.clone()).map_err(|error| error.to_string())?;
    joint.check().map_err(|error| error.to_string())
}

fn holds(joint: &Value) -> bool {
    verdict(joint).is_ok_and(|verdict| verdict.holds())
}

impl Attacked {
    /// Every figure: where it stands, its key and its value.
    fn figures(&self) -> Vec<(&'static str, String, Value)> {
        let mut found = Vec::new();
        for &part in self.parts {
            let of = self.joint.pointer(part).unwrap().as_object().unwrap();
            for (key, value) in of {
                let digit = |text: &str| text.starts_with(|c: char| c.is_ascii_digit());
                if value.as_str().is_some_and(digit) || value.is_number() {
                    found.push((part, key.clone(), value.clone()));
                }
            }
        }
        found
    }

    fn with(&self, part: &str, key: &str, value: Value) -> Value {
        let mut changed = self.joint.clone();
        changed.pointer_mut(part).unwrap()[key] = value;
        changed
    }

    fn is_needless(&self, part: &str, key: &str) -> bool {
        self.needless.contains(&(part, key))
    }
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
fn the_joints_that_are_attacked_hold() {
    for of in attacked() {
        let verdict = verdict(&of.joint).unwrap();
        assert!(verdict.holds(), "{}", verdict.render(UnitSystem::Si));
        assert_eq!(of.figures().len(), of.count);
    }
}

#[test]
fn a_figure_that_is_taken_away_or_misspelt_is_missed() {
    for of in attacked() {
        for (part, key, value) in of.figures() {
            let mut without = of.joint.clone();
            let own = without.pointer_mut(part).unwrap().as_object_mut().unwrap();
            own.remove(&key).unwrap();
            let needless = of.is_needless(part, &key);
            assert_eq!(holds(&without), needless, "{part}/{key} taken away");
            let misspelt = format!("{key}_");
            without.pointer_mut(part).unwrap()[&misspelt] = value;
            let refused = verdict(&without).unwrap_err();
            assert!(refused.contains(&misspelt), "{refused}");
        }
    }
}

#[test]
fn a_figure_that_is_none_is_refused() {
    for of in attacked() {
        for (part, key, value) in of.figures() {
            let unit = value.as_str().and_then(|text| text.rsplit(' ').next());
            let mut bad: Vec<Value> = [-1.0, f64::NAN, f64::INFINITY]
                .map(|factor| scaled(&value, factor))
                .into();
            if let Some(unit) = unit {
                bad.push(json!(format!("1e400 {unit}")));
                bad.extend([json!("17 kg"), json!("17")]);
            }
            bad.extend([json!([]), json!({}), json!("many"), json!(true)]);
            // No shank is a bolt that is threaded to the head.
            if key != "shank" {
                bad.push(scaled(&value, 0.0));
            }
            for bad in bad {
                let spoiled = of.with(part, &key, bad.clone());
                // NaN is null in JSON: left unsaid.
                let unsaid = bad.is_null() && !holds(&spoiled) || of.is_needless(part, &key);
                let refused = verdict(&spoiled).is_err();
                assert!(refused || bad.is_null() && unsaid, "{part}/{key} {bad}");
            }
        }
    }
}

/// A slip of a thousand, as from m to mm or from GPa to MPa.
#[test]
fn a_figure_in_another_unit_never_makes_it_hold() {
    let mut held = Vec::new();
    for of in attacked() {
        for (part, key, value) in of.figures() {
            for slip in [Slip::Smaller, Slip::Greater] {
                let safe = of.safe.contains(&(part, key.as_str(), slip));
                let slipped = of.with(part, &key, scaled(&value, slip.factor()));
                if holds(&slipped) != safe {
                    held.push((part, key.clone(), slip));
                }
            }
        }
    }
    assert!(held.is_empty(), "{held:#?}");
}

/// Nobody can tell a figure from half or twice of it: whatever holds says whose figures they are.
#[test]
fn what_holds_says_what_was_stated() {
    for of in attacked() {
        let cautions = |joint: &Value| {
            let verdict = verdict(joint).ok().filter(Verdict::holds)?;
            let stated = |caution: &&Caution| matches!(caution, Caution::Stated { .. });
            Some(verdict.cautions.iter().filter(stated).count())
        };
        let all = cautions(&of.joint).unwrap();
        let mut held = 0;
        for (part, key, value) in of.figures() {
            for factor in [0.5, 0.9, 1.1, 2.0] {
                let changed = of.with(part, &key, scaled(&value, factor));
                if let Some(told) = cautions(&changed) {
                    assert_eq!(told, all, "{part}/{key} {factor}");
                    held += 1;
                }
            }
        }
        assert!(held > of.count, "{held}");
    }
}
