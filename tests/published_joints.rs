//! Whole joints that others have worked and printed, mode by mode, through [`Joint::check`].
//!
//! `tests/data/published_joints.toml`. An example has its source, what is not in the print and was filled in, the
//! joint as a document, and rows. A row names a mode and a place and gives what is printed of it:
//!
//! | `what` | is |
//! |---|---|
//! | `resistance`, `demand` | of the check, in `unit` |
//! | `factor` | resistance over demand, the factor of safety of machine design |
//! | `squares` | of an ellipse: the sum of the squares of its shares, whose root the crate gives |
//! | `load_factor` | what the load along may be multiplied by: (resistance - preload) over (demand - preload) |
//! | `preload`, `torque` | of the tightening |
//!
//! `set` and `remove` change the document for one row: another bolt of the group, another load. `times` is how often
//! the figure of one bolt stands in the print. `takes` lists what the print takes for a factor of its product, and
//! what it is here: a rounded intermediate, a tabulated stress area, another strength of the same steel. It is the
//! only way in which a figure may differ by more than the print's own rounding.
#![cfg(feature = "serde")]

use std::collections::BTreeMap;
use std::fs;

use serde::Deserialize;
use serde_json::{Map, Value};
use shankline::error::Amount;
use shankline::joint::{Joint, Verdict};
use shankline::strength::check::Check;
use shankline::units::{Force, kip, ksi};
use shankline::uom::si::{force::kilonewton, pressure::megapascal};

mod support;

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    /// What every joint has, unless it says otherwise.
    common: Map<String, Value>,
    example: Vec<Example>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Example {
    name: String,
    source: String,
    basis: String,
    /// Whether its figures are checked in parts by other tests: then it is none of the ten.
    #[serde(default)]
    in_parts: bool,
    /// Where it was read.
    read: String,
    /// What the document needs and the print, as far as read, does not say.
    filled_in: Vec<String>,
    /// The facts that nobody printed and that keep it from a word.
    open: Vec<String>,
    joint: Map<String, Value>,
    row: Vec<Line>,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Line {
    mode: String,
    place: String,
    what: String,
    /// As printed: its digits are its rounding.
    printed: String,
    #[serde(default)]
    unit: Option<String>,
    #[serde(default)]
    set: BTreeMap<String, Value>,
    #[serde(default)]
    remove: Vec<String>,
    #[serde(default)]
    times: Option<Times>,
    #[serde(default)]
    takes: Vec<Taken>,
    /// Cut after its last digit instead of rounded.
    #[serde(default)]
    cut: bool,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Times {
    by: f64,
    why: String,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Taken {
    what: String,
    print: f64,
    here: f64,
}

fn file() -> File {
    let path = support::repository("tests/data/published_joints.toml");
    toml::from_str(&fs::read_to_string(path).unwrap()).unwrap_or_else(|e| panic!("{e}"))
}

fn step<'a>(at: &'a mut Value, key: &str) -> &'a mut Value {
    match key.parse::<usize>() {
        Ok(index) => at.get_mut(index).unwrap(),
        Err(_) => at
            .as_object_mut()
            .unwrap()
            .entry(key)
            .or_insert(Value::Object(Map::new())),
    }
}

fn document(file: &File, example: &Example, row: &Line) -> Value {
    let mut joint = file.common.clone();
    joint.extend(example.joint.clone());
    let mut joint = Value::Object(joint);
    for (path, value) in &row.set {
        *path.split('.').fold(&mut joint, step) = value.clone();
    }
    for path in &row.remove {
        let (parent, last) = path.rsplit_once('.').unwrap();
        let parent = parent.split('.').fold(&mut joint, step);
        let gone = parent.as_object_mut().unwrap().remove(last);
        assert!(gone.is_some(), "{}: nothing at {path}", example.name);
    }
    joint
}

/// A quantity as the print counts it.
fn in_unit(amount: Amount, unit: &str) -> f64 {
    match (amount, unit) {
        (Amount::Force(force), "kN") => force.get::<kilonewton>(),
        (Amount::Force(force), "kip") => force.get::<kip>(),
        (Amount::Torque(torque), "N m") => torque.value,
        (Amount::Stress(stress), "MPa") => stress.get::<megapascal>(),
        (Amount::Stress(stress), "ksi") => (stress / ksi(1.0)).value,
        other => panic!("{other:?}"),
    }
}

/// The check of a mode and a place: the one with the print's kind of quantity, if it has several.
fn found<'a>(verdict: &'a Verdict, row: &Line) -> Result<&'a Check, String> {
    let there =
        |check: &&Check| check.mode.to_string() == row.mode && check.place.to_string() == row.place;
    let mut checks = verdict.checks.iter().filter(there);
    let first = checks.next().ok_or_else(|| {
        let all: Vec<String> = verdict.checks.iter().map(ToString::to_string).collect();
        let open: Vec<String> = verdict.open().map(ToString::to_string).collect();
        format!("no check\n{all:#?}\n{open:#?}")
    })?;
    // The tension of a preloaded bolt is checked twice: by its method and in the joint diagram.
    match (row.what.as_str(), checks.next()) {
        ("load_factor", Some(_)) => verdict
            .checks
            .iter()
            .filter(there)
            .find(|check| check.method.citation.contains("joint diagram"))
            .ok_or_else(|| "no joint diagram".into()),
        (_, Some(_)) => Err("two checks of that mode and place".into()),
        (_, None) => Ok(first),
    }
}

fn figure(verdict: &Verdict, row: &Line) -> Result<f64, String> {
    let unit = || row.unit.as_deref().ok_or("a unit is wanted");
    let preload = || verdict.preload.as_ref().ok_or("no preload");
    match row.what.as_str() {
        "preload" => return Ok(in_unit(preload()?.greatest.into(), unit()?)),
        "torque" => return Ok(in_unit(preload()?.torque.into(), unit()?)),
        _ => {}
    }
    let check = found(verdict, row)?;
    Ok(match row.what.as_str() {
        "resistance" => in_unit(check.resistance, unit()?),
        "demand" => in_unit(check.demand, unit()?),
        "squares" => check.utilisation.value.powi(2),
        "factor" => 1.0 / check.utilisation.value,
        "load_factor" => {
            let (Amount::Force(bolt), Amount::Force(limit)) = (check.demand, check.resistance)
            else {
                return Err("no forces".into());
            };
            let preload: Force = preload()?.greatest;
            ((limit - preload) / (bolt - preload)).value
        }
        other => return Err(format!("no such figure: {other}")),
    })
}

fn compare(file: &File, example: &Example, row: &Line) -> Result<(), String> {
    let joint: Joint =
        serde_json::from_value(document(file, example, row)).map_err(|e| e.to_string())?;
    let verdict = joint.check().map_err(|e| e.to_string())?;
    let mut own = figure(&verdict, row)?;
    if let Some(times) = &row.times {
        own *= times.by;
    }
    for taken in &row.takes {
        own *= taken.print / taken.here;
    }
    let printed: f64 = row.printed.parse().map_err(|_| "no number printed")?;
    let digits = row
        .printed
        .split_once('.')
        .map_or(0, |(_, after)| after.len());
    let last = 10_f64.powi(-i32::try_from(digits).unwrap());
    let close = if row.cut {
        own >= printed * (1.0 - 1e-9) && own < printed + last
    } else {
        (own - printed).abs() <= 0.5 * last * (1.0 + 1e-6)
    };
    if close {
        Ok(())
    } else {
        Err(format!("{own}, printed {}", row.printed))
    }
}

#[test]
fn every_printed_figure_is_met() {
    let file = file();
    let mut wrong = Vec::new();
    for example in &file.example {
        for row in &example.row {
            if let Err(why) = compare(&file, example, row) {
                let Line { mode, place, .. } = row;
                wrong.push(format!("{}: {mode}, {place}: {why}", example.name));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// An example prints what it works out, not all that decides a joint: the verdict asks for the rest and does not hold.
#[test]
fn what_is_not_printed_is_asked_for() {
    let file = file();
    for example in &file.example {
        let joint = document(&file, example, &example.row[0]);
        let joint: Joint = serde_json::from_value(joint).unwrap();
        let verdict = joint.check().unwrap();
        assert!(!verdict.holds(), "{}", example.name);
        let asked: Vec<&str> = verdict
            .to_decide()
            .iter()
            .map(|(need, _)| need.name())
            .collect();
        for fact in &example.open {
            let there = asked.contains(&fact.as_str());
            assert!(there, "{}: {fact} is not among {asked:?}", example.name);
        }
    }
}

/// Two rules that want the same washer say so once: the brace of an A490 bolt said it twice.
#[test]
fn no_finding_stands_twice() {
    let file = file();
    for example in &file.example {
        let joint = document(&file, example, &example.row[0]);
        let joint: Joint = serde_json::from_value(joint).unwrap();
        let findings = joint.check().unwrap().findings;
        for (at, finding) in findings.iter().enumerate() {
            assert!(
                !findings[..at].contains(finding),
                "{}: {finding:?}",
                example.name
            );
        }
    }
}

/// What is claimed of the collection: ten read examples of several modes each, thirty-five figures in them.
#[test]
fn there_are_ten_of_several_modes() {
    let file = file();
    let (mut examples, mut figures) = (0, 0);
    for example in &file.example {
        assert!(!example.source.is_empty() && !example.read.is_empty());
        assert!(
            ["published", "reproduced", "memory"].contains(&example.basis.as_str()),
            "{}",
            example.name
        );
        let modes: std::collections::BTreeSet<&str> =
            example.row.iter().map(|row| row.mode.as_str()).collect();
        if example.basis != "memory" && !example.in_parts && modes.len() > 1 {
            examples += 1;
            figures += example.row.len();
        }
    }
    assert!(examples >= 10 && figures >= 35, "{examples}, {figures}");
}

/// A named exception says what it is, and is one: no factor stands for another without need, and none is a way to
/// meet any figure.
#[test]
fn exceptions_are_named_and_small() {
    let file = file();
    let mut needless = Vec::new();
    for example in &file.example {
        for row in &example.row {
            for Taken { what, print, here } in &row.takes {
                let ratio = print / here;
                assert!(!what.is_empty() && (ratio - 1.0).abs() > 1e-6, "{what}");
                assert!((0.7..=1.6).contains(&ratio), "{}: {what}", example.name);
            }
            if let Some(times) = &row.times {
                assert!(!times.why.is_empty(), "{}", example.name);
            }
            let rounded = Line {
                cut: false,
                ..row.clone()
            };
            if row.cut && compare(&file, example, &rounded).is_ok() {
                needless.push(format!("{}, {}: cut", example.name, row.printed));
            }
            for (at, Taken { what, .. }) in row.takes.iter().enumerate() {
                if compare(&file, example, &without(row, at)).is_ok() {
                    needless.push(format!("{}, {}: {what}", example.name, row.printed));
                }
            }
        }
        assert!(example.filled_in.iter().all(|fact| !fact.is_empty()));
    }
    assert!(needless.is_empty(), "met without: {needless:#?}");
}

/// A row without one of its exceptions.
fn without(row: &Line, at: usize) -> Line {
    let mut without = row.clone();
    without.takes.remove(at);
    without
}

#[test]
fn the_readme_counts_them() {
    let examples = file().example;
    let figures: usize = examples.iter().map(|example| example.row.len()).sum();
    let counted = format!(
        "{} joints of printed worked examples, whose {figures} figures",
        examples.len()
    );
    let readme = fs::read_to_string(support::repository("README.md")).unwrap();
    assert!(
        readme.contains(&counted),
        "the README does not say: {counted}"
    );
}
