//! The whole check where its parts meet: thread and timber, gaps and play, bending and tension, slip and
//! sleeves, pivots; and what it says of them that it does not check.
#![cfg(feature = "serde")]

use serde_json::{Value, json};
use shankline::joint::{Joint, JointCheck};
use shankline::prelude::*;
use shankline::strength::check::{Check, Mode, Place};

/// Two ears and a link, M16 of class 8.8; loads invented.
fn clevis() -> Value {
    let steel = json!({
        "material": "ASTM A36 steel", "hole": "18 mm", "end_distance": "60 mm", "edge_distance": "40 mm",
        "width": "80 mm",
    });
    json!({
        "title": "link of a playground bridge (invented)",
        "bolt": { "product": "iso_4014", "thread": "M16", "grade": "ISO 898-1 class 8.8" },
        "nut": { "style": "iso_4032", "grade": "ISO 898-2 class 8" },
        "stack": {
            "plies": [
                { "name": "ear", "thickness": "10 +/- 0.2 mm" },
                { "name": "link", "thickness": "20 +/- 0.4 mm" },
                { "name": "ear", "thickness": "10 +/- 0.2 mm" },
            ],
            "shear_planes": [1, 2],
        },
        "plies": [steel, steel, steel],
        "load": { "across": "10 kN" },
        "rules": serde_json::to_value(LengthRules::fabrication(UnitSystem::Si)).unwrap(),
        "methods": serde_json::to_value(shankline::joint::JointMethods::machine_design(2.0)).unwrap(),
    })
}

fn checked(joint: &Value) -> JointCheck {
    let joint: Joint = serde_json::from_value(joint.clone()).unwrap();
    let (verdict, workings) = joint.check_with_working().unwrap();
    for working in workings {
        working.check().unwrap();
    }
    verdict
}

fn of(verdict: &JointCheck, mode: Mode) -> Vec<Check> {
    let checks = verdict.checks.iter().copied();
    checks.filter(|check| check.mode == mode).collect()
}

fn used(verdict: &JointCheck, mode: Mode) -> f64 {
    let used = of(verdict, mode).into_iter();
    used.map(|check| check.utilisation.value)
        .fold(f64::NAN, f64::max)
}

fn said(verdict: &JointCheck, start: &str) -> bool {
    let mut lines = verdict.not_checked.iter().map(ToString::to_string);
    lines.any(|line| line.starts_with(start))
}

/// Washers added under the head push the plane of the timber into the thread: then NDS takes the root.
#[test]
fn a_washer_under_the_head_brings_thread_into_timber() {
    let mut joint = clevis();
    let timber = json!({ "timber": "Southern Pine" });
    joint["plies"] = json!([timber, timber]);
    joint["methods"]["timber"] = json!({ "nds": { "bending_yield": "45 ksi", "adjustment": 1.0 } });
    joint["bolt"]["length"] = json!("80 mm");
    let mut seen = [false; 2];
    // 80 mm long, 38 mm of thread: the body ends at 32 mm at least.
    for thick in 220..330 {
        let first = f64::from(thick) / 10.0;
        joint["stack"] = json!({
            "plies": [
                { "name": "rail", "thickness": format!("{first} mm") },
                { "name": "post", "thickness": format!("{} mm", 38.5 - first) },
            ],
            "washer_to_add_under_head": "3 mm",
            "shear_planes": [1],
        });
        joint["rules"]["washers_under_head_max"] = json!(2);
        let verdict = checked(&joint);
        let candidate = verdict.candidate;
        let in_thread = candidate.planes_in_run_out + candidate.planes_in_thread > 0;
        let mut workings = serde_json::from_value::<Joint>(joint.clone())
            .unwrap()
            .check_with_working()
            .unwrap()
            .1
            .into_iter();
        let working = workings
            .find(|working| working.title() == "Bolt in timber")
            .unwrap();
        let text = working
            .render(shankline::derivation::Format::Text, UnitSystem::Si)
            .to_string();
        assert_eq!(
            !text.contains("16.0"),
            in_thread,
            "{first}: {candidate:?} {text}"
        );
        if candidate.washers_added_under_head > 0 {
            seen[usize::from(in_thread)] = true;
        }
    }
    assert_eq!(seen, [true; 2]);
}

#[test]
fn a_bolt_that_the_method_for_timber_does_not_know_leaves_the_other_checks() {
    let mut joint = clevis();
    joint["bolt"] = json!({
        "product": "hex_cap_screw", "thread": "1 1/4-7 UNC", "grade": "SAE J429 grade 5", "length": "6 in",
    });
    joint["nut"] = json!({ "style": "hex" });
    let timber = json!({ "timber": "Southern Pine", "end_distance": "1 in" });
    joint["plies"] = json!([timber, timber]);
    joint["stack"] = json!({
        "plies": [
            { "name": "rail", "thickness": "2 in" },
            { "name": "post", "thickness": "2 in" },
        ],
        "shear_planes": [1],
    });
    joint["methods"]["timber"] = json!({ "nds": { "bending_yield": "45 ksi", "adjustment": 1.0 } });
    let verdict = checked(&joint);
    assert!(said(&verdict, "yield in timber: the method does not know"));
    assert_eq!(of(&verdict, Mode::BoltShear).len(), 1);
}

/// What is pulled or clamped presses on the timber, loaded across or not, and the timber gives way to it.
#[test]
fn timber_under_pull_and_preload_is_said() {
    let mut joint = clevis();
    let timber = json!({ "timber": "C24" });
    joint["plies"][1] = timber;
    joint["load"] = json!({ "along": "4 kN" });
    let verdict = checked(&joint);
    assert!(said(
        &verdict,
        "bearing: head, nut and washers on the timber"
    ));
    assert!(!said(&verdict, "preload lost to creep"));
    joint["load"] = json!({ "across": "4 kN" });
    joint["tightening"] = json!({
        "nut_factor": { "min": 0.16, "nominal": 0.18, "max": 0.21 }, "target": "reusable",
    });
    assert!(said(&checked(&joint), "preload lost to creep"));
    joint["plies"] = json!([]);
    assert!(!said(&checked(&joint), "preload lost to creep"));
    joint["stack"]["plies"][1]["crush"] = json!("1 mm");
    assert!(said(&checked(&joint), "preload lost to creep"));
}

/// Bolts in a row along the grain do not share evenly: EN 1995 counts fewer, the check of one bolt does not.
#[test]
fn rows_in_timber_are_said() {
    let mut joint = clevis();
    joint["plies"][1] = json!({ "timber": "C24", "end_distance": "120 mm" });
    joint["methods"] = serde_json::to_value(shankline::joint::JointMethods::en_1993()).unwrap();
    joint["methods"]["timber"] =
        json!({ "en_1995_1_1": { "axial": "0 N", "kmod": 0.7, "gamma_m": 1.3 } });
    let verdict = checked(&joint);
    assert_eq!(of(&verdict, Mode::TimberYield).len(), 1);
    assert!(!said(&verdict, "yield in timber"));
    joint["plies"][1]["pitch"] = json!("90 mm");
    assert!(said(
        &checked(&joint),
        "yield in timber: of a row along the grain"
    ));
}

/// A bushing longer than its link, between ears that do not touch the bushing: both add up.
#[test]
fn end_play_adds_to_the_gap() {
    let mut joint = clevis();
    joint["stack"]["gaps"] = json!([
        { "after_ply": 1, "width": "2 +/- 1 mm" }, { "after_ply": 2, "width": "2 +/- 1 mm" },
    ]);
    joint["stack"]["sleeves"] = json!([
        { "name": "bushing", "length": "20.9 +/- 0.1 mm", "first_ply": 2, "last_ply": 2 },
    ]);
    let bending = of(&checked(&joint), Mode::BoltBending)[0];
    // By hand: play 21.0 - 19.6 = 1.4 mm; e = 10.2 / 2 + 20.4 / 4 + 3.0 + 1.4 = 14.6 mm, M = 73.0 N m.
    let shankline::error::Amount::Torque(moment) = bending.demand else {
        panic!("{bending:?}")
    };
    assert!((moment - newton_metres(73.0)).abs() < newton_metres(1e-9));
}

/// Ears of two plies that lie apart: half the load acts further out.
#[test]
fn gaps_within_an_ear_lengthen_the_arm() {
    let mut joint = clevis();
    joint["stack"]["plies"] = json!([
        { "name": "ear", "thickness": "5 mm" }, { "name": "ear", "thickness": "5 mm" },
        { "name": "link", "thickness": "20 mm" },
        { "name": "ear", "thickness": "5 mm" }, { "name": "ear", "thickness": "5 mm" },
    ]);
    joint["stack"]["gaps"] = json!([
        { "after_ply": 1, "width": "4 mm" }, { "after_ply": 4, "width": "6 mm" },
    ]);
    joint["stack"]["shear_planes"] = json!([2, 3]);
    joint["plies"] = json!([]);
    joint["environment"] = json!({ "rotates": true });
    let bending = of(&checked(&joint), Mode::BoltBending)[0];
    // By hand: e = (5 + 6 + 5) / 2 + 20 / 4 = 13 mm, M = 65 N m.
    let shankline::error::Amount::Torque(moment) = bending.demand else {
        panic!("{bending:?}")
    };
    assert!((moment - newton_metres(65.0)).abs() < newton_metres(1e-9));
}

/// A pivot that is pulled too: the outer fibre has tension and bending, the section shear.
#[test]
fn bending_counts_with_tension_and_shear() {
    let mut joint = clevis();
    joint["environment"] = json!({ "rotates": true });
    let verdict = checked(&joint);
    let (shear, bending) = (
        used(&verdict, Mode::BoltShear),
        used(&verdict, Mode::BoltBending),
    );
    assert!((used(&verdict, Mode::Combined) - shear.hypot(bending)).abs() < 1e-12);
    joint["load"]["along"] = json!("5 kN");
    let verdict = checked(&joint);
    let tension = used(&verdict, Mode::BoltTension);
    let by_hand = shear.hypot(tension + bending);
    assert!(tension > 0.1 && (used(&verdict, Mode::Combined) - by_hand).abs() < 1e-12);
    // EN 1993-1-8 has a rule for a pin, and none for one that is pulled.
    joint["methods"] = serde_json::to_value(shankline::joint::JointMethods::en_1993()).unwrap();
    assert!(said(&checked(&joint), "combined loads: the rule"));
    joint["load"]["along"] = json!("0 N");
    let verdict = checked(&joint);
    assert_eq!(of(&verdict, Mode::Combined).len(), 1);
    assert!(!said(&verdict, "combined loads"));
}

/// EN 1993-1-8, 3.6.1(10): one row of bolts in a single lap bears 1.5 fu d t / 1.25 at most, and warns that the
/// factor was recalled.
#[test]
fn a_single_lap_with_one_row_bears_less() {
    let mut joint = clevis();
    joint["methods"] = serde_json::to_value(shankline::joint::JointMethods::en_1993()).unwrap();
    joint["stack"] = json!({
        "plies": [
            { "name": "rail", "thickness": "20 mm" }, { "name": "post", "thickness": "20 mm" },
        ],
        "shear_planes": [1],
    });
    for ply in 0..2 {
        joint["plies"][ply]["end_distance"] = json!("60 mm");
    }
    joint["plies"].as_array_mut().unwrap().pop();
    let one_row = |joint: &Value| {
        let checks = of(&checked(joint), Mode::Bearing).into_iter();
        checks
            .filter(|check| check.method.contains("single lap"))
            .collect::<Vec<_>>()
    };
    let found = one_row(&joint);
    assert_eq!(found.len(), 2);
    // By hand: A36, 58 ksi = 399.9 MPa: 1.5 x 399.9 x 16 x 20 / 1.25 = 153.56 kN.
    assert!((found[0].utilisation.value - 10.0 / 153.56).abs() < 1e-5);
    for ply in 0..2 {
        joint["plies"][ply]["pitch"] = json!("60 mm");
    }
    assert_eq!(one_row(&joint), []);
    assert_eq!(one_row(&clevis()), []);
}

/// Table 3.4 of EN 1993-1-8 takes 0.8 of the bearing in oversize holes.
#[test]
fn oversize_holes_bear_less_by_en() {
    let mut joint = clevis();
    joint["methods"] = serde_json::to_value(shankline::joint::JointMethods::en_1993()).unwrap();
    joint["plies"][1]["end_distance"] = json!("100 mm");
    joint["plies"][1]["edge_distance"] = json!("100 mm");
    let link = |joint: &Value| {
        let verdict = checked(joint);
        let mut bearing = of(&verdict, Mode::Bearing).into_iter();
        let found = bearing.find(|check| check.place == Place::Ply(2)).unwrap();
        10.0 / found.utilisation.value
    };
    // By hand, ends far away: 2.5 x 399.9 x 16 x 19.6 / 1.25 = 250.82 kN.
    assert!((link(&joint) / 250.82 - 1.0).abs() < 1e-4);
    joint["plies"][1]["hole"] = json!("20 mm");
    assert!((link(&joint) / (0.8 * 250.82) - 1.0).abs() < 1e-4);
}

/// What shakes across the axis tires bolt and plies too; nothing here checks that.
#[test]
fn fatigue_across_the_axis_is_said() {
    let mut joint = clevis();
    assert!(!said(&checked(&joint), "fatigue"));
    joint["load"]["alternates"] = json!(true);
    assert!(said(&checked(&joint), "fatigue: of bolt and plies"));
    joint["load"]["alternates"] = json!(false);
    joint["environment"] = json!({ "vibration": true });
    assert!(said(&checked(&joint), "fatigue: of bolt and plies"));
}

/// A ply of two materials is refused whatever the load.
#[test]
fn a_ply_is_of_one_material() {
    let mut joint = clevis();
    joint["plies"][1]["timber"] = json!("C24");
    for load in [
        json!({ "across": "1 kN" }),
        json!({ "along": "1 kN" }),
        json!({}),
    ] {
        joint["load"] = load;
        let both: Joint = serde_json::from_value(joint.clone()).unwrap();
        assert!(
            both.check()
                .unwrap_err()
                .to_string()
                .contains("is said to be of")
        );
    }
}

/// Prying and pull-through are nowhere in the check of a load along the bolt.
#[test]
fn what_a_pull_does_to_the_plies_is_said() {
    let mut joint = clevis();
    let verdict = checked(&joint);
    assert!(!said(&verdict, "prying") && !said(&verdict, "pull-through"));
    joint["load"]["along"] = json!("5 kN");
    let verdict = checked(&joint);
    assert!(said(&verdict, "prying") && said(&verdict, "pull-through"));
}

#[test]
fn slip_counts_by_the_face_that_takes_most() {
    let mut joint = clevis();
    joint["load"]["across"] = json!("5 kN");
    joint["tightening"] = json!({
        "nut_factor": { "min": 0.16, "nominal": 0.18, "max": 0.21 }, "target": "reusable",
    });
    joint["methods"]["slip"] = json!({ "stated": { "friction": 0.2, "safety_factor": 1.5 } });
    let even = used(&checked(&joint), Mode::Slip);
    joint["stack"]["plane_shares"] = json!([0.7, 0.3]);
    assert!((used(&checked(&joint), Mode::Slip) / even - 1.4).abs() < 1e-12);
    // A longer sleeve in the link takes the preload, and the link turns freely.
    joint["stack"]["sleeves"] = json!([
        { "name": "bushing", "length": "20.9 +/- 0.1 mm", "first_ply": 2, "last_ply": 2 },
    ]);
    let verdict = checked(&joint);
    assert!(
        of(&verdict, Mode::Slip).is_empty() && said(&verdict, "slip: the preload clamps a sleeve")
    );
    joint["stack"]["sleeves"] = json!([]);
    joint["stack"]["gaps"] = json!([{ "after_ply": 1, "width": "2 +/- 1 mm" }]);
    let verdict = checked(&joint);
    assert!(
        of(&verdict, Mode::Slip).is_empty() && said(&verdict, "slip: the preload closes a gap")
    );
    // Friction that is none is an error, no slip.
    joint["stack"]["gaps"] = json!([]);
    joint["methods"]["slip"]["stated"]["friction"] = json!(-0.2);
    let refused: Joint = serde_json::from_value(joint).unwrap();
    assert!(refused.check().is_err());
}

/// EN 1993-1-8, 3.13.1(1): pins that turn bear by Table 3.10, 1.5 t d fy, not by Table 3.4.
#[test]
fn plies_that_turn_bear_as_on_a_pin() {
    let mut joint = clevis();
    joint["methods"] = serde_json::to_value(shankline::joint::JointMethods::en_1993()).unwrap();
    joint["environment"] = json!({ "rotates": true });
    let verdict = checked(&joint);
    let bearing = of(&verdict, Mode::Bearing);
    let pin = |ply| {
        let mut checks = bearing.iter();
        let found = checks
            .find(|check| check.place == Place::Ply(ply) && check.method.contains("Table 3.10"));
        found.unwrap().utilisation.value
    };
    // By hand: A36, 248.2 MPa: 1.5 x 19.6 x 16 x 248.21 = 116.76 kN; 1.5 x 9.8 x 16 x 248.21 = 58.38 kN.
    assert!((pin(2) - 10.0 / 116.76).abs() < 1e-5);
    assert!((pin(1) - 5.0 / 58.38).abs() < 1e-5);
    assert!(said(
        &verdict,
        "tear-out: ends and widths of plies that turn"
    ));
    joint["environment"]["rotates"] = json!(false);
    assert_eq!(of(&checked(&joint), Mode::Bearing).len(), bearing.len() - 3);
}

/// ASTM F593 has no proof load: its preload rests on the yield strength, and nobody can say what it holds beyond it.
#[test]
fn preload_without_a_proof_load_is_said() {
    let mut joint = clevis();
    joint["bolt"] = json!({
        "product": "hex_cap_screw", "thread": "5/8-11 UNC",
        "grade": serde_json::to_value(BoltGrade::Astm(AstmGrade::F593Group1Cw1)).unwrap(),
    });
    joint["nut"] = json!({ "style": "hex" });
    joint["load"]["along"] = json!("1 kN");
    let methods = shankline::joint::JointMethods::aisc_lrfd(AiscEdition::E2010);
    joint["methods"] = serde_json::to_value(methods).unwrap();
    let no_proof = "bolt tension: with the preload: the grade has no proof load";
    assert!(!said(&checked(&joint), no_proof));
    joint["tightening"] = json!({
        "nut_factor": { "min": 0.16, "nominal": 0.18, "max": 0.21 }, "target": "reusable",
    });
    let verdict = checked(&joint);
    assert!(said(&verdict, no_proof));
    assert_eq!(of(&verdict, Mode::BoltTension).len(), 1);
}
