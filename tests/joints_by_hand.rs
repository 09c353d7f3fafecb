//! Joints worked out by hand in `tests/data/whole_joints.toml`, each figure to a twentieth of a per cent.
#![cfg(feature = "serde")]

use serde::Deserialize;
use shankline::error::Amount;
use shankline::joint::{Candidate, Joint};
use shankline::prelude::*;
use shankline::strength::group::{BoltPattern, PlaneLoad};
use shankline::strength::pin::PinJoint;
use shankline::units::{degrees, parse, pound_force, pound_force_inch};

#[derive(Deserialize)]
struct File {
    case: Vec<Case>,
}

#[derive(Deserialize)]
struct Case {
    name: String,
    /// Of the verdict: `holds`, `does_not_hold`.
    word: String,
    joint: Joint,
    group: Option<Group>,
    length: Option<Fit>,
    pin: Option<Pin>,
    check: Vec<Expected>,
}

/// One comparison of the whole check.
#[derive(Deserialize)]
struct Expected {
    mode: String,
    place: String,
    /// Part of the name of the method, where a ply has the same mode by two.
    #[serde(default)]
    method: String,
    level: String,
    demand: f64,
    resistance: f64,
    unit: String,
    steps: Vec<String>,
    source: String,
}

/// A bolt group whose worst bolt has the load of the joint.
#[derive(Deserialize)]
struct Group {
    rows: usize,
    columns: usize,
    pitch: String,
    gauge: String,
    load: String,
    eccentricity: String,
    forces: Vec<f64>,
    unit: String,
    steps: Vec<String>,
    source: String,
}

/// The length that is found, how far it stands out of the nut, and where it is cut.
#[derive(Deserialize)]
struct Fit {
    length: f64,
    washers_added: usize,
    protrusion: [f64; 2],
    cut: f64,
    unit: String,
    steps: Vec<String>,
    source: String,
}

/// Bending of the bolt in service, nominal and worst.
#[derive(Deserialize)]
struct Pin {
    outer: [String; 2],
    inner: [String; 2],
    gap: [String; 2],
    load: String,
    moment: [f64; 2],
    stress: [f64; 2],
    steps: Vec<String>,
    source: String,
}

fn near(what: &str, found: f64, by_hand: f64) {
    assert!(
        (found / by_hand - 1.0).abs() < 5e-4,
        "{what}: {found}, by hand {by_hand}"
    );
}

fn in_unit(amount: Amount, unit: &str) -> f64 {
    match (amount, unit) {
        (Amount::Force(force), "lbf") => force.get::<pound_force>(),
        (Amount::Force(force), "N") => force.value,
        (Amount::Torque(moment), "lbf in") => moment.get::<pound_force_inch>(),
        (Amount::Torque(moment), "N m") => moment.value,
        (Amount::Number(number), "") => number,
        other => panic!("{other:?}"),
    }
}

fn explained(steps: &[String], source: &str) {
    assert!(!steps.is_empty() && !source.is_empty());
}

impl Group {
    fn check(&self, name: &str, joint: &Joint) {
        explained(&self.steps, &self.source);
        let (pitch, gauge) = (parse(&self.pitch).unwrap(), parse(&self.gauge).unwrap());
        let pattern = BoltPattern::rows_and_columns(self.rows, self.columns, pitch, gauge).unwrap();
        let (load, arm) = (
            parse(&self.load).unwrap(),
            parse(&self.eccentricity).unwrap(),
        );
        let load = PlaneLoad::eccentric(&pattern, load, arm, degrees(0.0));
        let elastic = pattern.elastic(&[load]).unwrap();
        assert_eq!(elastic.forces.len(), self.forces.len());
        for (found, by_hand) in elastic.forces.iter().zip(&self.forces) {
            near(name, in_unit(found.resultant.into(), &self.unit), *by_hand);
        }
        let worst = elastic.forces[elastic.governing].resultant;
        near(name, (joint.load.across / worst).value, 1.0);
    }
}

impl Fit {
    fn check(&self, name: &str, found: &Candidate) {
        explained(&self.steps, &self.source);
        let scale = if self.unit == "in" { 0.0254 } else { 0.001 };
        near(name, found.screw.nominal.value / scale, self.length);
        assert_eq!(found.washers_added, self.washers_added, "{name}");
        let [low, high] = self.protrusion;
        near(name, found.protrusion.min.value / scale, low);
        near(name, found.protrusion.max.value / scale, high);
        assert!(found.needs_cut, "{name}");
        near(name, found.cut.unwrap().length.value / scale, self.cut);
    }
}

impl Pin {
    fn check(&self, name: &str, diameter: Length) {
        explained(&self.steps, &self.source);
        let load = parse(&self.load).unwrap();
        for at in [0, 1] {
            let length = |texts: &[String; 2]| parse(&texts[at]).unwrap();
            let (outer, inner) = (length(&self.outer), length(&self.inner));
            let bent = PinJoint::new(diameter, outer, inner, length(&self.gap)).unwrap();
            near(name, bent.moment(load).unwrap().value, self.moment[at]);
            let stress = bent.bending_stress(load).unwrap().value / 1e6;
            near(name, stress, self.stress[at]);
        }
    }
}

#[test]
fn joints_worked_by_hand() {
    let text = std::fs::read_to_string("tests/data/whole_joints.toml").unwrap();
    let file: File = toml::from_str(&text).unwrap();
    let (mut checks, mut groups, mut fits, mut pins) = (0, 0, 0, 0);
    for case in file.case {
        let name = &case.name;
        let (verdict, workings) = case.joint.check_with_working().unwrap();
        for working in workings {
            working.check().unwrap();
        }
        let word = verdict.word().to_string().replace(' ', "_");
        assert_eq!(
            word,
            case.word,
            "{name}:\n{}",
            verdict.render(UnitSystem::Si)
        );
        if let Some(group) = &case.group {
            group.check(name, &case.joint);
            groups += 1;
        }
        if let Some(fit) = &case.length {
            fit.check(name, &verdict.candidate);
            fits += 1;
        }
        if let Some(pin) = &case.pin {
            pin.check(name, case.joint.bolt.thread.nominal_diameter());
            pins += 1;
        }
        for expected in &case.check {
            explained(&expected.steps, &expected.source);
            let what = format!("{name}, {} {}", expected.mode, expected.place);
            let found = verdict.checks.iter().find(|check| {
                check.mode.to_string() == expected.mode
                    && check.place.to_string() == expected.place
                    && check.method.citation.contains(&expected.method)
                    && check.level.to_string() == expected.level
            });
            let found = found.unwrap_or_else(|| panic!("{what}: not checked"));
            near(
                &what,
                in_unit(found.demand, &expected.unit),
                expected.demand,
            );
            near(
                &what,
                in_unit(found.resistance, &expected.unit),
                expected.resistance,
            );
            checks += 1;
        }
    }
    assert_eq!((checks, groups, fits, pins), (63, 1, 2, 1));
}
