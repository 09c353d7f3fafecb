//! Bolts of aircraft by MIL-HDBK-5: what the judged joints of `tests/data/judged/aircraft.toml` do not say. The rest of the set is
//! held there, on both sides of each limit.

#![cfg(feature = "serde")]

use serde_json::json;
use shankline::caution::Caution;
use shankline::joint::{BoltCase, CaseAnswer, Joint, JointMethods, Word};
use shankline::material::BoltStrength;
use shankline::parts::Zone;
use shankline::prelude::*;
use shankline::strength::bolt_tension::{HeadShape, TensionMethod, bolt_tension};
use shankline::strength::check::Level;
use shankline::tables::aircraft::AircraftBolt;
use shankline::tables::strengths::{LoadQuantity, LoadedPart, PublishedLoad};
use shankline::units::UnitSystem;

mod support;

#[path = "support/judged.rs"]
mod judged;

/// The bracket of the judged joints, with fields set by path.
fn bracket(set: &[(&str, serde_json::Value)]) -> Joint {
    let files = judged::files();
    let (_, file) = files
        .iter()
        .find(|(name, _)| name.ends_with("aircraft.toml"))
        .unwrap();
    let case = judged::Case {
        set: set
            .iter()
            .map(|(path, value)| ((*path).into(), value.clone()))
            .collect(),
        ..serde_json::from_value(json!({ "name": "", "base": "bracket", "hand": [], "source": "" }))
            .unwrap()
    };
    serde_json::from_value(judged::document(file, &case)).unwrap()
}

fn notes(joint: &Joint) -> Vec<String> {
    let verdict = joint.check().unwrap();
    let notes = verdict.findings.iter().filter(|found| !found.is_fault());
    notes.map(|found| found.text(UnitSystem::Si)).collect()
}

fn an_strength(bolt: &AircraftBolt) -> BoltStrength {
    BoltStrength::stated(bolt.nominal_diameter, None, None, ksi(125.0)).unwrap()
}

/// FAA AC 43.13-1B, notes to Tables 4-9 and 4-10: 2,126 lb in single shear of an AN-3 bolt.
#[test]
fn shear_of_an_an3_bolt_as_the_circular_prints_it() {
    let an3 = AircraftBolt::find("AN3").unwrap();
    let thread: Thread = "#10-32 UNF".parse().unwrap();
    let JointMethods { shear, .. } = JointMethods::mil_hdbk_5(ksi(75.0));
    let found = bolt_shear(&thread, &an_strength(an3), &[Zone::Shank], shear).unwrap();
    assert!((found.nominal - pounds_force(2126.0)).abs() < pounds_force(0.5));
    assert!((found.safety_factor - 1.725).abs() < 1e-12);
}

/// The loads of the drawings of AN bolts (recalled) are 125 ksi on the area at the root, not on the tensile stress area, of which
/// they would be 6 to 12 % less.
#[test]
fn tension_of_an_bolts_is_that_of_their_drawings() {
    let method = TensionMethod::MilHdbk5 {
        ultimate_factor: 1.5,
        fitting_factor: 1.15,
    };
    let loads = PublishedLoad::all().iter().filter(|row| {
        row.part == LoadedPart::AircraftBolt && row.quantity == LoadQuantity::Tension
    });
    let mut seen = 0;
    for row in loads {
        let bolt = AircraftBolt::find(row.size).unwrap();
        let thread = Thread::unified_special(bolt.nominal_diameter, bolt.threads_per_inch).unwrap();
        let found = bolt_tension(&thread, &an_strength(bolt), method, HeadShape::OnFace, None);
        let found = found.unwrap();
        found.derivation().check().unwrap();
        let nominal = found.resistance.at(Level::Nominal).unwrap();
        assert!(
            ((nominal / row.load).value - 1.0).abs() < 0.011,
            "{}",
            row.size
        );
        let by_stress_area = ksi(125.0) * thread.tensile_stress_area();
        assert!((by_stress_area / row.load).value > 1.05, "{}", row.size);
        assert_eq!(found.cautions().iter().count(), 1);
        seen += 1;
    }
    assert_eq!(seen, 11);
}

/// A fitting factor under that of 14 CFR 25.625 is told by every method it stands in.
#[test]
fn low_fitting_factors_are_told() {
    let advised = |joint: &Joint| {
        let verdict = joint.check().unwrap();
        let own = verdict.cautions.iter();
        own.filter(|caution| matches!(caution, Caution::AgainstAdvice { .. }))
            .count()
    };
    let pulled = ("load.along", json!("100 lbf"));
    let with = |shear: f64, tension: f64, plies: f64| {
        let methods = json!({
            "shear": { "mil_hdbk_5": { "shear_strength": "75 ksi", "ultimate_factor": 1.5, "fitting_factor": shear } },
            "tension": { "mil_hdbk_5": { "ultimate_factor": 1.5, "fitting_factor": tension } },
            "plies": { "mil_hdbk_5": { "ultimate_factor": 1.5, "fitting_factor": plies } },
            "interaction": "aircraft_steel", "slip": "permitted", "level": "allowable", "margin": 1.725,
        });
        bracket(&[pulled.clone(), ("methods", methods)])
    };
    assert_eq!(advised(&with(1.15, 1.15, 1.15)), 0);
    for low in [
        with(1.14, 1.15, 1.15),
        with(1.15, 1.14, 1.15),
        with(1.15, 1.15, 1.14),
    ] {
        assert_eq!(advised(&low), 1);
    }
    for (shear, tension, plies) in [(0.99, 1.15, 1.15), (1.15, 0.99, 1.15), (1.15, 1.15, 0.99)] {
        assert!(with(shear, tension, plies).check().is_err());
    }
}

/// Less than 1.5 is for loads that are ultimate already, and whoever states limit loads beside it must hear of it.
#[test]
fn low_ultimate_factors_are_told() {
    let advised = |factor: f64| {
        let methods = json!({
            "shear": { "mil_hdbk_5": { "shear_strength": "75 ksi", "ultimate_factor": factor } },
            "tension": { "mil_hdbk_5": { "ultimate_factor": factor } },
            "plies": { "mil_hdbk_5": { "ultimate_factor": factor } },
            "interaction": "aircraft_steel", "slip": "permitted", "level": "allowable", "margin": 1.725,
        });
        let verdict = bracket(&[("methods", methods)]).check().unwrap();
        let mut own = verdict.cautions.iter();
        own.any(|caution| caution.to_string().contains("25.303"))
    };
    assert!(advised(1.0) && advised(1.49));
    assert!(!advised(1.5) && !advised(2.0));
}

/// Files that were written before there was a fitting factor have the one of the regulation.
#[test]
fn a_fitting_factor_that_nobody_says_is_that_of_the_regulation() {
    let methods: JointMethods = serde_json::from_value(json!({
        "shear": { "mil_hdbk_5": { "shear_strength": "75 ksi", "ultimate_factor": 1.5 } },
        "tension": { "mil_hdbk_5": { "ultimate_factor": 1.5 } },
        "plies": { "mil_hdbk_5": { "ultimate_factor": 1.5 } },
        "interaction": "aircraft_steel", "slip": "permitted", "level": "allowable", "margin": 1.725,
    }))
    .unwrap();
    let named = JointMethods::named("mil_hdbk_5").unwrap();
    assert!((named.margin - methods.margin).abs() < 1e-12);
    let margin = named.margin;
    assert_eq!(JointMethods { margin, ..methods }, named);
}

/// The bearing strengths of 2024-T3 in the tables were recalled: a joint that rests on them says so.
#[test]
fn recalled_bearing_strengths_are_told() {
    let told = |joint: &Joint| {
        let verdict = joint.check().unwrap();
        assert_eq!(verdict.word(), Word::Holds);
        let mut own = verdict.cautions.iter();
        own.any(|caution| caution.to_string().contains("bearing strength"))
    };
    assert!(!told(&bracket(&[])));
    let mut listed = bracket(&[("stack.plies.0.thickness", json!("0.1 in"))]);
    let mut document = serde_json::to_value(&listed).unwrap();
    let ply = document["stack"]["plies"][0].as_object_mut().unwrap();
    ply.insert("material".into(), json!("2024-T3 aluminium"));
    ply.remove("bearing_strength");
    ply.remove("bearing_yield");
    document["stack"]["plies"][1]["thickness"] = json!("0.28 in");
    listed = serde_json::from_value(document).unwrap();
    assert!(told(&listed));
}

/// Strengths of plies that are no minima, or that nobody read: the table says so, and a joint that rests on them too.
#[test]
fn weak_strengths_of_plies_are_told() {
    let told = |material: &str, caution: &str| {
        let mut document = serde_json::to_value(bracket(&[])).unwrap();
        document["stack"]["plies"][0]["material"] = json!(material);
        let joint: Joint = serde_json::from_value(document).unwrap();
        let verdict = joint.check().unwrap();
        let mut own = verdict.cautions.iter();
        own.any(|own| own.to_string().contains(caution))
    };
    for typical in ["6061-T6 aluminium, typical", "2024-T4 aluminium"] {
        assert!(told(typical, "typical values and not minima"), "{typical}");
    }
    assert!(!told("7075-T6 aluminium", "typical values"));
    for recalled in ["AISI 4130 steel", "grey cast iron class 30"] {
        assert!(
            told(recalled, "set of strengths was recalled"),
            "{recalled}"
        );
    }
    assert!(!told("ASTM A36 steel", "set of strengths"));
}

/// FAA AC 43.13-1B, 7-41 and 7-87: what is not for structure is said, and forbids nothing where nobody says that the joint is of it.
#[test]
fn small_bolts_and_lock_washers_are_noted() {
    let small = |joint: &Joint| notes(joint).iter().any(|note| note.contains("No. 10-32"));
    assert!(!small(&bracket(&[])));
    assert!(!small(&bracket(&[("bolt.thread", json!("#10-32 UNF"))])));
    assert!(small(&bracket(&[
        ("bolt.thread", json!("#8-32 UNC")),
        ("bolt.product.bearing_diameter", json!("0.3 in")),
        ("bolt.product.across_flats", json!("0.31 in")),
        ("nut.style.bearing_diameter", json!("0.3 in")),
        ("nut.style.across_flats", json!("0.31 in")),
    ])));
    let sprung = json!({ "style": "spring_lock_regular", "thickness": "0.062 in", "count": 1 });
    let locked = |joint: &Joint| {
        notes(joint)
            .iter()
            .any(|note| note.contains("lock washers"))
    };
    assert!(!locked(&bracket(&[])));
    assert!(locked(&bracket(&[("stack.washers_under_nut", sprung)])));
}

/// Prepared for many cases of load it gives the answers of the whole check.
#[test]
fn many_loads_give_the_same_answers() {
    let joint = bracket(&[]);
    let mut prepared = joint.prepare().unwrap();
    for across in [0.0, 500.0, 1494.0, 2100.0, 2200.0] {
        for along in [0.0, 800.0, 1864.0, 1960.0, 2400.0] {
            let case = BoltCase::steady(pounds_force(across), pounds_force(along));
            let own = Joint {
                load: case.of(&joint.load),
                ..joint.clone()
            };
            let answer = prepared.answer(&case).unwrap();
            let expected = CaseAnswer::from(&own.check().unwrap());
            assert_eq!(answer.word, expected.word, "{across} {along}");
            let (used, wanted) = (answer.utilisation.value, expected.utilisation.value);
            assert!((used - wanted).abs() <= 1e-9 * wanted, "{across} {along}");
        }
    }
}
