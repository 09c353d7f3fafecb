//! Torque, preload and tightening stress against printed values and worked examples.
//!
//! Every value here was read in a reproduction of its source; none is recalled. Face and hole
//! diameters and yield strengths beside the VDI values are our inputs (ISO 4014, ISO 273, ISO 898-1): the
//! tables print class, friction and the 90 % only.

mod support;

use shankline::prelude::*;
use shankline::units::{kip, parse, percent, pound_force_inch};
use shankline::uom::si::{
    angle::degree, force::kilonewton, force::newton, length::inch, torque::newton_meter,
};
use support::{Row, csv_rows, number};

fn check(row: &Row, found: f64) {
    let expected = number(row, "expected").unwrap();
    let tolerance = number(row, "tolerance").unwrap();
    assert!(
        (found - expected).abs() <= tolerance + 1e-9 * expected.abs(),
        "{}: {found} is not {expected} +- {tolerance}",
        row["id"]
    );
    assert_eq!(row["basis"], "reproduced", "{}", row["id"]);
}

fn force(force: Force, unit: &str) -> f64 {
    match unit {
        "lbf" => force.get::<kip>() * 1000.0,
        "kip" => force.get::<kip>(),
        "kN" => force.get::<kilonewton>(),
        other => panic!("{other}"),
    }
}

fn exact(friction: f64) -> Friction {
    Friction::new(friction, friction, friction).unwrap()
}

#[test]
fn preload_targets() {
    let rows = csv_rows("tests/data/torque_targets.csv");
    assert_eq!(rows.len(), 61);
    for row in rows {
        let target = match row["target"].as_str() {
            "reusable" => PreloadTarget::Reusable,
            "aisc_j31" => PreloadTarget::AiscJ31 {
                edition: AiscEdition::E2005,
            },
            "en1993" => PreloadTarget::En1993,
            "en1993_german" => PreloadTarget::En1993German,
            other => panic!("{other}"),
        };
        if !row["thread"].is_empty() {
            let thread: Thread = row["thread"].parse().unwrap();
            let grade: BoltGrade = row["grade"].parse().unwrap();
            let bolt = grade.strength(thread.nominal_diameter()).unwrap();
            let aim = target.aim(&thread, &bolt).unwrap();
            check(&row, force(aim.preload, &row["unit"]));
            // A code counts on its preload as a least.
            assert_eq!(aim.least_required, Some(aim.preload));
            continue;
        }
        let load = if row["load"].is_empty() {
            parse::<Stress>(&row["strength"]).unwrap() * parse::<Area>(&row["area"]).unwrap()
        } else {
            parse::<Force>(&row["load"]).unwrap()
        };
        check(&row, force(target.fraction() * load, &row["unit"]));
    }
}

#[test]
fn second_steps_of_en_1090() {
    let rows = csv_rows("tests/data/torque_en1090.csv");
    assert_eq!(rows.len(), 8);
    for row in rows {
        let steps = EnTorque::new(
            number(&row, "k_mean").unwrap(),
            millimetres(number(&row, "diameter_mm").unwrap()),
            newtons(1e3 * number(&row, "preload_kn").unwrap()),
        )
        .unwrap();
        check(&row, steps.second_step.get::<newton_meter>());
        let part = (steps.first_step / steps.second_step).value;
        assert!((part - 0.75 / 1.1).abs() < 1e-12);
        steps.derivation().check().unwrap();
    }
}

/// Bearing diameter of the row; preloads do not depend on it.
fn bearing(row: &Row) -> Length {
    let face = number(row, "face_mm").unwrap_or(20.0);
    let hole = number(row, "hole_mm").unwrap_or(15.0);
    BearingFace::new(millimetres(face), millimetres(hole))
        .unwrap()
        .effective_diameter(BearingPressure::UniformWear)
}

#[test]
fn preloads_and_torques_at_ninety_per_cent_of_yield() {
    let rows = csv_rows("tests/data/torque_yield.csv");
    assert_eq!(rows.len(), 28);
    for row in rows {
        let friction = exact(number(&row, "friction").unwrap());
        let thread: Thread = row["thread"].parse().unwrap();
        let form = FrictionForm::linear(&thread, bearing(&row), friction, friction).unwrap();
        let model = match row["model"].as_str() {
            "vdi2230" => TorsionModel::Vdi2230,
            "jis_b_1083" => TorsionModel::JisB1083,
            other => panic!("{other}"),
        };
        if row["quantity"] == "torque_of_preload" {
            let preload = newtons(1e3 * number(&row, "preload_kn").unwrap());
            let torque = form.torque(preload).unwrap().nominal;
            check(&row, torque.get::<newton_meter>());
            continue;
        }
        let limit = form
            .assembly_preload(
                megapascals(number(&row, "yield_mpa").unwrap()),
                percent(number(&row, "utilisation_pct").unwrap()),
                model,
            )
            .unwrap();
        limit.derivation().check().unwrap();
        match row["quantity"].as_str() {
            "preload" => check(&row, limit.preload.nominal.get::<kilonewton>()),
            "torque" => check(&row, limit.torque.nominal.get::<newton_meter>()),
            other => panic!("{other}"),
        }
    }
}

/// The whole fine-thread table of VDI 2230 (2001). Preloads agree within 0.6 %; torques within
/// 1.2 %: the print rounds the constants to 0.16 and 0.58, which adds half a per cent, and its last
/// digit as much.
#[test]
fn fine_thread_table_of_vdi_2230() {
    let rows = csv_rows("tests/data/torque_vdi_fine.csv");
    let mut cells = 0;
    for row in &rows {
        let thread: Thread = row["thread"].parse().unwrap();
        let friction = exact(number(row, "friction").unwrap());
        let form = FrictionForm::linear(&thread, bearing(row), friction, friction).unwrap();
        let eight = if thread.nominal_diameter() > millimetres(16.0) {
            660.0
        } else {
            640.0
        };
        for (class, strength) in [("8.8", eight), ("10.9", 940.0), ("12.9", 1100.0)] {
            let limit = form
                .assembly_preload(megapascals(strength), percent(90.0), TorsionModel::Vdi2230)
                .unwrap();
            let cell = |column: String| number(row, &column).unwrap();
            for (found, printed, tolerance) in [
                (
                    limit.preload.nominal.get::<kilonewton>(),
                    cell(format!("preload_{class}_kn")),
                    0.006,
                ),
                (
                    limit.torque.nominal.get::<newton_meter>(),
                    cell(format!("torque_{class}_nm")),
                    0.012,
                ),
            ] {
                cells += 1;
                let off = found / printed - 1.0;
                assert!(
                    off.abs() <= tolerance,
                    "{} {class} {friction:?}: {found} {printed} {off}",
                    row["thread"]
                );
            }
        }
    }
    assert_eq!(cells, 162);
}

#[test]
fn examples_of_the_textbook() {
    let rows = csv_rows("tests/data/torque_examples.csv");
    assert_eq!(rows.len(), 7);
    let thread: Thread = "3/4-16 UNF".parse().unwrap();
    let form = FrictionForm::shigley(&thread, exact(0.15), exact(0.15)).unwrap();
    for row in rows {
        let found = match row["quantity"].as_str() {
            quantity @ ("mean" | "standard_deviation") => {
                let preloads: Vec<Force> = row["first"]
                    .split(' ')
                    .map(|kilonewtons| newtons(1e3 * kilonewtons.parse::<f64>().unwrap()))
                    .collect();
                let sample = PreloadSample::of(&preloads).unwrap();
                force(
                    if quantity == "mean" {
                        sample.mean
                    } else {
                        sample.standard_deviation
                    },
                    "kN",
                )
            }
            "preload_stress" => {
                // The print divides by the rounded area of its table.
                let printed: Area = parse(&row["second"]).unwrap();
                assert_eq!(thread.tabulated_stress_area(), Some(printed));
                let stress = form
                    .tightening_stress(parse(&row["first"]).unwrap(), TorsionModel::JisB1083)
                    .unwrap();
                (stress.tension * (stress.stress_area / printed) / ksi(1.0)).value
            }
            "lead_angle_torque" => {
                let preload = parse(&row["first"]).unwrap();
                let torque = form.torque(preload).unwrap().nominal;
                form.split(preload).unwrap().derivation().check().unwrap();
                torque.get::<pound_force_inch>()
            }
            "lead_angle" => form.lead_angle_of_thread().get::<degree>(),
            "mean_diameter" => form.thread_diameter().get::<inch>(),
            "least_preload" => {
                let factor = row["second"].parse().unwrap();
                let preload = VdiPreload::new(parse(&row["first"]).unwrap(), factor).unwrap();
                force(preload.range().unwrap().initial.min, "kN")
            }
            other => panic!("{other}"),
        };
        check(&row, found);
    }
}

/// Printed by Shigley as the same whatever the size, 0.20 for f = fc = 0.15; the formula falls with it.
#[test]
fn nut_factor_of_the_lead_angle_form_falls_with_the_size() {
    let k = |thread: &str| {
        FrictionForm::shigley(&thread.parse().unwrap(), exact(0.15), exact(0.15))
            .unwrap()
            .nut_factor()
            .unwrap()
            .nominal()
    };
    let found = ["1/4-20", "1/2-13", "1-8", "1-1/2-12"].map(k);
    for (found, expected) in found.iter().zip([0.2023, 0.1972, 0.1940, 0.1864]) {
        assert!((found - expected).abs() < 5e-4, "{found} {expected}");
    }
}

/// A drag of 1 lbf in and a required torque of 4 make 5 on the wrench (published in a university procedure
/// for space hardware after NASA-STD-5020A; the FAA says the same).
#[test]
fn drag_is_added_to_the_torque() {
    let form = FrictionForm::shigley(&"#10-32".parse().unwrap(), exact(0.15), exact(0.15)).unwrap();
    let inch_pound = |value: f64| pound_force_feet(value / 12.0);
    let free = form.preload(inch_pound(4.0)).unwrap().nominal;
    let locking = form
        .with_prevailing(Spread::exact(inch_pound(1.0)))
        .unwrap();
    let torque = locking.torque(free).unwrap().nominal;
    assert!((torque.get::<pound_force_inch>() - 5.0).abs() < 1e-9);
    assert!(free.get::<newton>() > 0.0);
}

/// Tension and torsion of stainless bolts at 90 % of Rp0.2: a supplier's loads by thread friction. The print rounds down
/// in some cells and to the nearest in others, so it is held to one unit of its last digit.
#[test]
fn stainless_clamp_loads_of_a_supplier() {
    let rows = csv_rows("tests/data/torque_stainless.csv");
    assert_eq!(rows.len(), 36);
    for row in rows {
        assert_eq!(row["basis"], "reproduced");
        let thread: Thread = row["thread"].parse().unwrap();
        let class: BoltGrade = row["class"].parse().unwrap();
        let bolt = class.strength(thread.nominal_diameter()).unwrap();
        let yields = bolt.yield_strength.unwrap();
        let friction = exact(number(&row, "friction").unwrap());
        let bearing = 1.25 * thread.nominal_diameter();
        let form = FrictionForm::linear(&thread, bearing, friction, friction).unwrap();
        let model = TorsionModel::Vdi2230;
        let limit = form.assembly_preload(yields, percent(90.0), model).unwrap();
        let printed = number(&row, "preload_kn").unwrap();
        let tolerance = number(&row, "tolerance_kn").unwrap();
        let found = limit.preload.nominal.get::<kilonewton>();
        assert!((found - printed).abs() <= tolerance, "{row:?} {found}");
        // Back from the nut factor of that form, with nothing but K known.
        let short = ShortForm::new(form.nut_factor().unwrap(), thread.nominal_diameter()).unwrap();
        let stress = short
            .tightening_stress(&thread, bearing, limit.preload.nominal, yields, model)
            .unwrap();
        assert!((stress.utilisation.value - 0.9).abs() < 1e-9, "{row:?}");
    }
}
