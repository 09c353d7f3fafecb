//! Faults that random joints brought to light (`support/joints.rs`), each by the plainest joint that shows it.
#![cfg(feature = "serde")]

use serde_json::{Value, json};
use shankline::joint::*;
use shankline::material::Finish;
use shankline::prelude::*;
use shankline::strength::check::{Mode, Place};
use shankline::tables::galvanic::Metal;
use shankline::units::{celsius, percent};

/// A lap of two plates, invented: it holds.
fn lap() -> Value {
    let file = include_str!("data/judged/machine_metric.toml");
    let file: Value = toml::from_str(file).unwrap();
    file["base"]["lap"].clone()
}

fn joint(document: Value) -> Joint {
    serde_json::from_value(document).unwrap()
}

// What the field of a joint takes.
#[allow(clippy::unnecessary_wraps)]
fn torque(target: PreloadTarget) -> Option<Tightening> {
    let oiled = NutFactor::new(0.15, 0.16, 0.18).unwrap();
    let torque = TorqueTightening::new(oiled, target).relaxation(percent(5.0));
    Some(Tightening::Torque(torque))
}

fn is_open(verdict: &Verdict, mode: Mode, place: Place, need: &Need) -> bool {
    let mut open = verdict.open();
    open.any(|own| own.mode == mode && own.place == place && own.need == *need)
}

/// "It was not looked at" stood where the preload had been refused.
#[test]
fn a_preload_that_is_refused_is_named_in_every_mode_that_lives_on_it() {
    let mut joint = joint(lap());
    // EN 1993-1-8 preloads classes 8.8 and 10.9 only.
    joint.bolt.grade = BoltGrade::Iso(PropertyClass::Class5_6);
    joint.tightening = torque(PreloadTarget::En1993);
    let verdict = joint.check().unwrap();
    for mode in [Mode::Tightening, Mode::Preload, Mode::Settling] {
        let mut open = verdict.open().filter(|own| own.mode == mode);
        assert!(
            open.any(|own| matches!(own.need, Need::Refused(_))),
            "{mode}"
        );
    }
}

/// A bolt that was too short gave an error about its grip where a load pulled and the materials were told, in place of
/// a verdict.
#[test]
fn a_bolt_that_does_not_reach_through_has_a_verdict() {
    let mut document = lap();
    document["bolt"]["length"] = "50 mm".into();
    document["stack"]["plies"][0]["thickness"] = "30 +/- 0.3 mm".into();
    let mut joint = joint(document);
    joint.tightening = torque(PreloadTarget::Reusable);
    joint.load.along = newtons(500.0);
    joint.load.prying = Some(Prying::None);
    let verdict = joint.check().unwrap();
    assert_eq!(verdict.account(Mode::Length), Account::Fault);
}

/// The sheet said what a mark on the nut means only where workings had been asked for.
#[test]
fn workings_change_nothing_in_the_verdict() {
    let mut joint = joint(lap());
    joint.tightening = torque(PreloadTarget::Reusable);
    let (worked, _) = joint.check_with_working().unwrap();
    assert_eq!(joint.check().unwrap(), worked);
}

/// Asked about the bolt alone, a joint held whose tightening nobody had said, and failed with the torque that it had.
#[test]
fn tension_of_a_bolt_asks_how_it_is_tightened() {
    let mut joint = joint(lap());
    joint.scope = Scope::Bolt;
    joint.load.along = newtons(1e3);
    joint.load.prying = Some(Prying::None);
    assert!(joint.check().unwrap().holds());
    joint.tightening = None;
    let verdict = joint.check().unwrap();
    assert!(is_open(
        &verdict,
        Mode::BoltTension,
        Place::Bolt(1),
        &Need::Tightening
    ));
}

/// In rows a ply was taken for one without an end or sides where only the distances between its holes were given.
#[test]
fn rows_have_an_end_and_sides() {
    for (key, need) in [
        ("end_distance", Need::EndDistance),
        ("edge_distance", Need::EdgeDistance),
    ] {
        let mut document = lap();
        document["pattern"] = json!({ "rows": { "along": 2, "across": 2 } });
        for ply in 0..2 {
            let ply = &mut document["stack"]["plies"][ply];
            ply["pitch"] = "45 mm".into();
            ply["gauge"] = "45 mm".into();
        }
        let ply = document["stack"]["plies"][1].as_object_mut().unwrap();
        ply.remove(key);
        let verdict = joint(document).check().unwrap();
        assert!(
            is_open(&verdict, Mode::Distances, Place::Ply(2), &need),
            "{key}"
        );
        if key == "end_distance" {
            assert!(is_open(&verdict, Mode::TearOut, Place::Ply(2), &need));
        }
    }
}

/// Fewer cycles than the curves begin with were refused, and cycles that nobody had counted were not.
#[test]
fn few_cycles_are_no_worse_than_many() {
    let mut joint = joint(lap());
    joint.methods = JointMethods::en_1993();
    joint.load = JointLoad::along(newtons(400.0));
    joint.load.load_factor = Some(1.5);
    joint.load.prying = Some(Prying::None);
    let mut account = |cycles| {
        joint.load.repeats = Repeats::Between {
            across_least: newtons(0.0),
            along_least: newtons(0.0),
            cycles,
        };
        joint.check().unwrap().account(Mode::Fatigue)
    };
    for cycles in [None, Some(1e9), Some(1e4), Some(9e3), Some(1.0)] {
        assert_eq!(account(cycles), Account::InOrder, "{cycles:?}");
    }
}

/// The washers of single laps were wanted of a joint that nothing loads across.
#[test]
fn a_lap_that_is_only_pulled_needs_no_washers_of_laps() {
    let mut document = lap();
    let stack = document["stack"].as_object_mut().unwrap();
    stack.remove("washers_under_head");
    let mut joint = joint(document);
    joint.methods = JointMethods::en_1993();
    joint.load = JointLoad::along(newtons(400.0));
    let wanted = |verdict: &Verdict| verdict.account(Mode::Washers) == Account::Fault;
    assert!(!wanted(&joint.check().unwrap()));
    joint.load = JointLoad::across(newtons(400.0));
    assert!(wanted(&joint.check().unwrap())); // EN 1993-1-8, 3.6.1(10)
}

/// Heat passed over plies whose material nobody had said, where the verdict did not speak of the plies.
#[test]
fn heat_asks_for_materials() {
    let mut document = lap();
    document["stack"]["plies"][1]
        .as_object_mut()
        .unwrap()
        .remove("material");
    let mut joint = joint(document);
    joint.environment.hottest = celsius(90.0);
    joint.scope = Scope::BoltAndNut;
    joint.bolt.finish = Some(Finish::Bare(Metal::Steel));
    joint.tightening = torque(PreloadTarget::Reusable);
    let verdict = joint.check().unwrap();
    assert!(is_open(
        &verdict,
        Mode::Temperature,
        Place::Ply(2),
        &Need::Material
    ));
    // The preload changes with the heat too, by how much is not known.
    assert_eq!(verdict.account(Mode::Tightening), Account::Missing);
}

/// A packing of timber hid the blocks of the steel plies on both sides of it.
#[test]
fn packing_of_timber_hides_no_blocks() {
    let mut document = lap();
    document["pattern"] = json!({ "rows": { "along": 2, "across": 2 } });
    let plies = document["stack"]["plies"].as_array_mut().unwrap();
    plies[0]["pull"] = 1.0.into();
    plies[1]["pull"] = (-1.0).into();
    plies.insert(
        1,
        json!({ "name": "pad", "thickness": "10 mm", "timber": "C24", "grain_angle": "0 deg", "pull": 0.0 }),
    );
    document["stack"]["shear_planes"] = json!([1, 2]);
    document["bolt"]["length"] = "75 mm".into();
    let verdict = joint(document).check().unwrap();
    assert_eq!(verdict.account(Mode::BlockShear), Account::Missing);
}

/// Timber on a tapped part asked for the hole of that part, which nobody can say: it has a thread.
#[test]
fn no_hole_is_asked_of_a_tapped_part() {
    let mut document = lap();
    document["nut"] = Value::Null;
    document["stack"] = json!({
        "plies": [{
            "name": "sleeper", "thickness": "45 mm", "timber": "C24", "grain_angle": "0 deg", "hole": "13 mm",
            "end_distance": "120 mm", "edge_distance": "60 mm",
        }],
        "shear_planes": [1],
        "tapped_part": { "name": "rail", "engagement": "16 mm", "material": "S355 steel" },
    });
    let mut joint = joint(document);
    joint.bolt.length = None;
    joint.methods.timber = Some(shankline::strength::timber::TimberMethod::En1995 {
        axial: newtons(0.0),
        kmod: 0.8,
        gamma_m: 1.3,
    });
    let verdict = joint.check().unwrap();
    assert!(!is_open(
        &verdict,
        Mode::TimberYield,
        Place::TappedPart,
        &Need::Hole
    ));
    assert_eq!(verdict.account(Mode::TimberYield), Account::Missing);
}

/// Of a washer with a style and one of two diameters the diameter was passed over; with both, the style.
#[test]
fn a_washer_has_a_style_or_diameters() {
    for (key, value) in [("outside", "24 mm"), ("inside", "13.5 mm")] {
        let mut document = lap();
        document["stack"]["washers_under_nut"][key] = value.into();
        let error = joint(document).check().unwrap_err();
        assert!(
            matches!(error, shankline::error::Error::Mismatch(_)),
            "{error}"
        );
    }
}
