//! Where the parts of the check meet: thread and timber, gaps and play, bending and tension, slip and sleeves,
//! pivots; and what it says of them that it does not check.

use serde_json::{Value, json};
use shankline::error::Amount;
use shankline::joint::{Account, Joint, JointMethods, Verdict, Word};
use shankline::prelude::*;
use shankline::strength::check::{Check, Level, Mode, Place};

use crate::joints::near;

/// Two ears and a link, M16 of class 8.8; loads invented.
fn clevis() -> Value {
    let ply = |name: &str, thickness: &str| {
        json!({
            "name": name, "thickness": thickness, "material": "ASTM A36 steel", "hole": "18 mm",
            "end_distance": "60 mm", "edge_distance": "40 mm", "width": "80 mm",
        })
    };
    let ear = ply("ear", "10 +/- 0.2 mm");
    let bare = json!({ "bare": "steel" });
    json!({
        "title": "link of a playground bridge (invented)",
        "bolt": {
            "product": "iso_4014", "thread": "M16", "grade": "ISO 898-1 class 8.8", "finish": bare,
        },
        "nut": { "style": "iso_4032", "grade": "ISO 898-2 class 8", "finish": bare },
        "stack": { "plies": [ear, ply("link", "20 +/- 0.4 mm"), ear], "shear_planes": [1, 2] },
        "pattern": "single",
        "load": {
            "across": "10 kN", "along": "0 N", "prying": "none", "repeats": "never", "shock_factor": 1.0,
            "load_factor": 1.0,
        },
        "environment": serde_json::to_value(shankline::joint::Environment::workshop()).unwrap(),
        "tightening": "snug",
        "rules": serde_json::to_value(LengthRules::fabrication(UnitSystem::Si)).unwrap(),
        "methods": methods(JointMethods::machine_design(2.0)),
    })
}

fn methods(methods: JointMethods) -> Value {
    serde_json::to_value(methods).unwrap()
}

fn by_en() -> Value {
    let mut joint = clevis();
    joint["methods"] = methods(JointMethods::en_1993());
    joint
}

fn timber(name: &str, thickness: &str, kind: &str) -> Value {
    json!({
        "name": name, "thickness": thickness, "timber": kind, "grain_angle": "0 deg", "hole": "17 mm",
        "end_distance": "120 mm", "edge_distance": "70 mm",
    })
}

fn torque() -> Value {
    json!({ "torque": {
        "nut_factor": { "min": 0.16, "nominal": 0.18, "max": 0.21 }, "target": "reusable", "relaxation": 0.05,
    } })
}

fn read(joint: &Value) -> Joint {
    serde_json::from_value(joint.clone()).unwrap()
}

fn checked(joint: &Value) -> Verdict {
    let (verdict, workings) = read(joint).check_with_working().unwrap();
    for working in workings {
        working.check().unwrap();
    }
    verdict
}

fn of(verdict: &Verdict, mode: Mode) -> Vec<Check> {
    let checks = verdict.checks.iter().cloned();
    checks.filter(|check| check.mode == mode).collect()
}

fn used(verdict: &Verdict, mode: Mode) -> f64 {
    let used = of(verdict, mode).into_iter();
    used.map(|check| check.utilisation.value)
        .fold(f64::NAN, f64::max)
}

/// What keeps the word open, and begins so.
fn said(verdict: &Verdict, start: &str) -> bool {
    let mut lines = verdict.open().map(ToString::to_string);
    lines.any(|line| line.starts_with(start))
}

fn moment(verdict: &Verdict) -> Torque {
    let bending = of(verdict, Mode::BoltBending)[0].clone();
    match bending.demand {
        Amount::Torque(moment) => moment,
        other => panic!("{other:?}"),
    }
}

/// A washer added under the head pushes thread out of the post: NDS takes the root where thread fills more than a
/// quarter of what a member has of the bolt (12.3.7.2).
#[test]
fn thread_that_fills_more_than_a_quarter_of_a_member_counts() {
    let mut joint = clevis();
    joint["methods"]["timber"] = json!({ "nds": { "bending_yield": "45 ksi", "adjustment": 1.0 } });
    joint["rules"]["washers_under_head_max"] = json!(2);
    let mut seen = [false; 2];
    // 38 mm of thread, 10 mm of run-out: the body of 80 mm ends at 32 mm at least, that of 90 mm at 42 mm.
    let lengths = [80.0, 90.0].into_iter();
    for (length, first) in
        lengths.flat_map(|length| [22.0, 25.5, 29.0, 32.5].map(|first| (length, first)))
    {
        let body = length - 48.0;
        joint["bolt"]["length"] = json!(format!("{length} mm"));
        let second = 38.5 - first;
        joint["stack"] = json!({
            "plies": [
                timber("rail", &format!("{first} mm"), "Southern Pine"),
                timber("post", &format!("{second} mm"), "Southern Pine"),
            ],
            "washer_to_add_under_head": { "thickness": "3 mm" },
            "shear_planes": [1],
        });
        let verdict = checked(&joint);
        let added = f64::from(u32::try_from(verdict.candidate.washers_added_under_head).unwrap());
        // By hand: the rail from 3 mm a washer, the post after it; thread is what lies past the body.
        let start = 3.0 * added;
        let thread = |from: f64, to: f64| (to - from.max(body)).max(0.0) / (to - from);
        let quarter = thread(start, start + first) > 0.25
            || thread(start + first, start + first + second) > 0.25;
        let workings = read(&joint).check_with_working().unwrap().1;
        let mut workings = workings.into_iter();
        let working = workings
            .find(|working| working.title().starts_with("Bolt in timber"))
            .unwrap();
        let text = working
            .render(shankline::derivation::Format::Text, UnitSystem::Si)
            .to_string();
        assert_eq!(
            text.contains("13.55 mm"),
            quarter,
            "{first}: {added} {text}"
        );
        seen[usize::from(quarter)] = true;
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
    joint["stack"] = json!({
        "plies": [
            timber("rail", "2 in", "Southern Pine"), timber("post", "2 in", "Southern Pine"),
        ],
        "shear_planes": [1],
    });
    for ply in 0..2 {
        joint["stack"]["plies"][ply]["hole"] = json!("1.3125 in");
    }
    joint["methods"]["timber"] = json!({ "nds": { "bending_yield": "45 ksi", "adjustment": 1.0 } });
    let verdict = checked(&joint);
    assert_eq!(verdict.account(Mode::TimberYield), Account::Missing);
    assert_eq!(of(&verdict, Mode::TimberYield), []);
    assert_eq!(of(&verdict, Mode::BoltShear).len(), 1);
}

/// What is pulled or clamped presses on the timber, loaded across or not, and the timber gives way to it.
#[test]
fn timber_under_pull_and_preload_is_said() {
    let mut joint = clevis();
    joint["stack"]["plies"][2] = timber("rail", "40 mm", "C24");
    joint["load"]["across"] = json!("0 N");
    joint["load"]["along"] = json!("4 kN");
    let verdict = checked(&joint);
    assert!(said(
        &verdict,
        "pressure under head and nut, nut: no method for bolts in timber"
    ));
    assert!(!said(&verdict, "preload lost"));
    joint["load"]["across"] = json!("4 kN");
    joint["load"]["along"] = json!("0 N");
    joint["tightening"] = torque();
    let creep = "preload lost: soft plies and timber creep";
    assert!(said(&checked(&joint), creep));
    let mut joint = clevis();
    joint["tightening"] = torque();
    assert!(!said(&checked(&joint), creep));
    joint["stack"]["plies"][1]["crush"] = json!("1 mm");
    assert!(said(&checked(&joint), creep));
}

/// Bolts in a row along the grain do not share evenly: EN 1995-1-1, 8.5.1.1(4), counts fewer of them.
#[test]
fn a_row_in_timber_counts_fewer_bolts() {
    let mut joint = by_en();
    joint["stack"]["plies"][1] = timber("beam", "20 mm", "C24");
    joint["methods"]["timber"] =
        json!({ "en_1995_1_1": { "axial": "0 N", "kmod": 0.7, "gamma_m": 1.3 } });
    let alone = used(&checked(&joint), Mode::TimberYield);
    joint["pattern"] = json!({ "rows": { "along": 2, "across": 1 } });
    let verdict = checked(&joint);
    assert!(said(
        &verdict,
        "yield in timber: the distance to the next hole along"
    ));
    for ply in 0..3 {
        joint["stack"]["plies"][ply]["pitch"] = json!("90 mm");
    }
    // By hand: 2^0.9 (90 / (13 x 16))^0.25 = 1.5135 bolts of two.
    near(
        used(&checked(&joint), Mode::TimberYield) / alone,
        2.0 / 1.5135,
        1e-4,
    );
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
    // By hand: play 21.0 - 19.6 = 1.4 mm; e = 10.2 / 2 + 20.4 / 4 + 3.0 + 1.4 = 14.6 mm, M = 73.0 N m.
    assert!((moment(&checked(&joint)) - newton_metres(73.0)).abs() < newton_metres(1e-9));
}

/// Ears of two plies that lie apart: half the load acts further out.
#[test]
fn gaps_within_an_ear_lengthen_the_arm() {
    let mut joint = clevis();
    let ply = |name: &str, thickness: &str| json!({ "name": name, "thickness": thickness });
    joint["stack"]["plies"] = json!([
        ply("ear", "5 mm"),
        ply("ear", "5 mm"),
        ply("link", "20 mm"),
        ply("ear", "5 mm"),
        ply("ear", "5 mm"),
    ]);
    joint["stack"]["gaps"] = json!([
        { "after_ply": 1, "width": "4 mm" }, { "after_ply": 4, "width": "6 mm" },
    ]);
    joint["stack"]["shear_planes"] = json!([2, 3]);
    for (ply, pull) in [(0, 0.25), (1, 0.25), (2, -1.0), (3, 0.25), (4, 0.25)] {
        joint["stack"]["plies"][ply]["pull"] = json!(pull);
    }
    joint["environment"]["rotates"] = json!(true);
    // By hand: e = (5 + 6 + 5) / 2 + 20 / 4 = 13 mm, M = 65 N m.
    assert!((moment(&checked(&joint)) - newton_metres(65.0)).abs() < newton_metres(1e-9));
}

/// A pivot that is pulled too: the outer fibre has tension and bending, the section shear.
#[test]
fn bending_counts_with_tension_and_shear() {
    let mut joint = clevis();
    joint["environment"]["rotates"] = json!(true);
    let verdict = checked(&joint);
    let shear = used(&verdict, Mode::BoltShear);
    let bending = used(&verdict, Mode::BoltBending);
    assert!((used(&verdict, Mode::Combined) - shear.hypot(bending)).abs() < 1e-12);
    joint["load"]["along"] = json!("5 kN");
    let verdict = checked(&joint);
    let tension = used(&verdict, Mode::BoltTension);
    let by_hand = shear.hypot(tension + bending);
    assert!(tension > 0.1 && (used(&verdict, Mode::Combined) - by_hand).abs() < 1e-12);
    // EN 1993-1-8 has a rule for a pin, and none for one that is pulled.
    joint["methods"] = methods(JointMethods::en_1993());
    assert!(said(&checked(&joint), "combined loads, bolt 1: "));
    joint["load"]["along"] = json!("0 N");
    let verdict = checked(&joint);
    assert_eq!(of(&verdict, Mode::Combined).len(), 1);
    assert!(!said(&verdict, "combined loads"));
}

/// EN 1993-1-8, 3.6.1(10): one row of bolts in a single lap bears 1.5 fu d t / 1.25 at most, and warns that the
/// factor was recalled.
#[test]
fn a_single_lap_with_one_row_bears_less() {
    let mut joint = by_en();
    joint["stack"]["plies"].as_array_mut().unwrap().pop();
    joint["stack"]["shear_planes"] = json!([1]);
    for ply in 0..2 {
        joint["stack"]["plies"][ply]["thickness"] = json!("20 mm");
    }
    let one_row = |joint: &Value| {
        let checks = of(&checked(joint), Mode::Bearing).into_iter();
        checks
            .filter(|check| check.method.citation.contains("single lap"))
            .collect::<Vec<_>>()
    };
    let found = one_row(&joint);
    assert_eq!(found.len(), 2);
    // By hand: A36, 58 ksi = 399.9 MPa: 1.5 x 399.9 x 16 x 20 / 1.25 = 153.56 kN.
    assert!((found[0].utilisation.value - 10.0 / 153.56).abs() < 1e-5);
    joint["pattern"] = json!({ "rows": { "along": 2, "across": 1 } });
    for ply in 0..2 {
        joint["stack"]["plies"][ply]["pitch"] = json!("60 mm");
    }
    assert_eq!(one_row(&joint), []);
    assert_eq!(one_row(&by_en()), []);
}

/// Table 3.4 of EN 1993-1-8 takes 0.8 of the bearing in oversize holes.
#[test]
fn oversize_holes_bear_less_by_en() {
    let mut joint = by_en();
    joint["stack"]["plies"][1]["end_distance"] = json!("100 mm");
    joint["stack"]["plies"][1]["edge_distance"] = json!("100 mm");
    let link = |joint: &Value| {
        let verdict = checked(joint);
        let mut bearing = of(&verdict, Mode::Bearing).into_iter();
        let found = bearing.find(|check| check.place == Place::Ply(2)).unwrap();
        10.0 / found.utilisation.value
    };
    // By hand, ends far away: 2.5 x 399.9 x 16 x 19.6 / 1.25 = 250.82 kN.
    near(link(&joint), 250.82, 1e-4);
    joint["stack"]["plies"][1]["hole"] = json!("20 mm");
    near(link(&joint), 0.8 * 250.82, 1e-4);
}

/// What comes and goes across the axis tires bolt and plies too; machine design has nothing for that.
#[test]
fn fatigue_across_the_axis_is_said() {
    let mut joint = clevis();
    assert!(!said(&checked(&joint), "fatigue"));
    joint["load"]["repeats"] =
        json!({ "between": { "across_least": "0 N", "along_least": "0 N" } });
    let verdict = checked(&joint);
    assert!(said(&verdict, "fatigue: of the plies at their holes"));
    assert!(said(
        &verdict,
        "fatigue, bolt 1: of a bolt sheared again and again"
    ));
    // What shakes loosens a nut first of all.
    let mut joint = clevis();
    joint["environment"]["vibration"] = json!(true);
    assert_eq!(checked(&joint).account(Mode::Locking), Account::Fault);
}

/// Prying and pull-through belong to a load along the bolt.
#[test]
fn what_a_pull_does_to_the_plies_is_said() {
    let mut joint = clevis();
    joint["load"].as_object_mut().unwrap().remove("prying");
    let verdict = checked(&joint);
    assert!(!said(&verdict, "prying") && of(&verdict, Mode::PullThrough).is_empty());
    joint["load"]["along"] = json!("5 kN");
    let verdict = checked(&joint);
    assert!(said(&verdict, "prying: nobody says"));
    assert_eq!(of(&verdict, Mode::PullThrough).len(), 2);
}

#[test]
fn slip_counts_by_the_face_that_takes_most() {
    let mut joint = clevis();
    joint["load"]["across"] = json!("5 kN");
    joint["tightening"] = torque();
    joint["methods"]["slip"] =
        json!({ "resisted": { "stated": { "friction": 0.2, "safety_factor": 1.5 } } });
    let even = used(&checked(&joint), Mode::Slip);
    for (ply, pull) in [(0, 0.7), (1, -1.0), (2, 0.3)] {
        joint["stack"]["plies"][ply]["pull"] = json!(pull);
    }
    assert!((used(&checked(&joint), Mode::Slip) / even - 1.4).abs() < 1e-12);
    // A longer sleeve in the link takes the preload, and the link turns freely.
    joint["stack"]["sleeves"] = json!([
        { "name": "bushing", "length": "20.9 +/- 0.1 mm", "first_ply": 2, "last_ply": 2 },
    ]);
    let verdict = checked(&joint);
    assert!(of(&verdict, Mode::Slip).is_empty());
    assert!(said(&verdict, "slip: the preload clamps a sleeve"));
    joint["stack"]["sleeves"] = json!([]);
    joint["stack"]["gaps"] = json!([{ "after_ply": 1, "width": "2 +/- 1 mm" }]);
    let verdict = checked(&joint);
    assert!(of(&verdict, Mode::Slip).is_empty());
    assert!(said(&verdict, "slip: the preload closes a gap"));
    // Friction that is none is an error, no slip.
    joint["stack"]["gaps"] = json!([]);
    joint["methods"]["slip"]["resisted"]["stated"]["friction"] = json!(-0.2);
    assert!(read(&joint).check().is_err());
}

/// EN 1993-1-8, 3.13.1(1): pins that turn bear by Table 3.10, 1.5 t d fy, as well as by Table 3.4.
#[test]
fn plies_that_turn_bear_as_on_a_pin() {
    let mut joint = by_en();
    joint["environment"]["rotates"] = json!(true);
    let verdict = checked(&joint);
    let bearing = of(&verdict, Mode::Bearing);
    let pin = |ply| {
        let checks = bearing.iter();
        let found = checks
            .filter(|check| check.place == Place::Ply(ply) && check.level == Level::Design)
            .find(|check| check.method.citation.contains("Table 3.10"));
        found.unwrap().utilisation.value
    };
    // By hand: A36, 248.2 MPa: 1.5 x 19.6 x 16 x 248.21 = 116.76 kN; 1.5 x 9.8 x 16 x 248.21 = 58.38 kN.
    assert!((pin(2) - 10.0 / 116.76).abs() < 1e-5);
    assert!((pin(1) - 5.0 / 58.38).abs() < 1e-5);
    // In service, by the thinnest link, the section that of the thread: 0.6 x 19.6 x 14.124 x 248.21 = 41.23 kN.
    let service = bearing.iter().filter(|check| check.place == Place::Ply(2));
    let mut service = service.filter(|check| check.level == Level::Allowable);
    near(
        service.next().unwrap().utilisation.value,
        10.0 / 41.23,
        1e-3,
    );
    assert!(
        of(&verdict, Mode::TearOut)
            .iter()
            .any(|check| check.method.citation.contains("Table 3.9"))
    );
    joint["environment"]["rotates"] = json!(false);
    // Three plies on a pin, the limit in service, and the pressure of contact.
    assert_eq!(of(&checked(&joint), Mode::Bearing).len(), bearing.len() - 5);
}

/// A joint with everything said has a word.
#[test]
fn a_clevis_that_is_described_whole_is_decided() {
    let verdict = checked(&clevis());
    assert_eq!(
        verdict.open().count(),
        0,
        "{}",
        verdict.render(UnitSystem::Si)
    );
    assert_eq!(verdict.word(), Word::Holds);
}
