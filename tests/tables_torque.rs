//! What must hold in the tables of friction, lock nuts and ply materials.

mod support;

use std::collections::BTreeMap;

use shankline::preload::{scatter_of, tightening_factor};
use shankline::prelude::*;
use shankline::source::Basis;
use shankline::tables::aircraft_torque::AircraftTorque;
use shankline::tables::friction::{Condition, FrictionClassRow, FrictionSurface, NutFactorRow};
use shankline::tables::locking::{
    PrevailingTorque, PrevailingTorqueKind, ServiceTemperature, TemperatureLimited,
};
use shankline::tables::nuts::Locking;
use shankline::tables::plies::{PlyBearing, PlyMaterial, StrengthKind};
use shankline::tables::threads::{UnifiedSeries, UnifiedThread};
use shankline::tables::tightening::{
    Embedment, LoadDirection, NutTurn, OuterFaces, TighteningScatter, TurnRule,
};
use shankline::units::{
    Torque, celsius, fahrenheit, kip_per_square_inch, micrometres, newton_metres, pound_force_inch,
};
use shankline::uom::si::{angle::degree, pressure::megapascal, ratio::ratio, torque::newton_meter};
use support::{csv_rows, number};

#[test]
fn nut_factors_of_the_textbook() {
    let rows = csv_rows("tests/data/nut_factors.csv");
    assert_eq!(rows.len(), 6);
    for row in rows {
        let condition = match row["condition"].as_str() {
            "black_oxide" => Condition::BlackOxide,
            "zinc_plated" => Condition::ZincPlated,
            "lubricated" => Condition::Lubricated,
            "cadmium_plated" => Condition::CadmiumPlated,
            "anti_seize" => Condition::AntiSeize,
            "grip_nut" => Condition::GripNut,
            other => panic!("{other}"),
        };
        let found = NutFactorRow::for_condition(condition)
            .iter()
            .find(|found| found.publisher == "Shigley")
            .unwrap();
        let expected = number(&row, "nut_factor").unwrap();
        let tolerance = number(&row, "tolerance").unwrap();
        let k = found.k_nominal.unwrap();
        assert!((k - expected).abs() <= tolerance, "{}: {k}", row["id"]);
        // A single value makes no nut factor.
        assert!(NutFactor::from_row(found).is_err());
    }
}

#[test]
fn every_condition_has_publishers_and_a_range_across_them() {
    let mut rows = 0;
    for condition in Condition::ALL {
        let found = NutFactorRow::for_condition(condition);
        rows += found.len();
        let across = NutFactorRow::across_publishers(condition);
        assert!(
            *across.start() >= 0.05 && *across.end() <= 0.6,
            "{across:?}"
        );
        for row in found {
            let values = [row.k_min, row.k_nominal, row.k_max];
            assert!(values.iter().any(Option::is_some), "{row}");
            assert_eq!(row.k_min.is_some(), row.k_max.is_some(), "{row}");
            assert!(values.iter().flatten().all(|k| across.contains(k)), "{row}");
            assert_eq!(
                NutFactor::from_row(row).is_ok(),
                row.k_min.is_some(),
                "{row}"
            );
            let recalled = row.provenance.basis == Basis::Memory;
            assert_eq!(row.cautions().iter().count(), usize::from(recalled));
        }
    }
    // No row stands outside the run of its condition, where the look-up would miss it.
    assert_eq!(rows, NutFactorRow::all().len());
}

#[test]
fn publishers_disagree_on_black_and_zinc() {
    // Dry plain bolts 0.20 (trade), black ones 0.30 (Shigley) or 0.179 (Bickford).
    let black = NutFactorRow::across_publishers(Condition::BlackOxide);
    assert_eq!(black, 0.109..=0.30);
    let nominal: Vec<f64> = NutFactorRow::for_condition(Condition::ZincPlated)
        .iter()
        .filter_map(|row| row.k_nominal)
        .collect();
    assert_eq!(nominal, [0.20, 0.17, 0.295, 0.295]);
    // A range without a nominal gives its middle.
    let wax = &NutFactorRow::for_condition(Condition::WaxedLockNut)[0];
    let k = NutFactor::from_row(wax).unwrap();
    assert!((k.nominal() - 0.14).abs() < 1e-12);
}

#[test]
fn friction_classes_rise_and_overlap() {
    let rows = FrictionClassRow::all();
    assert_eq!(rows.len(), 5);
    for pair in rows.windows(2) {
        assert!(pair[0].class < pair[1].class);
        assert!(pair[0].friction_min < pair[1].friction_min);
        let top = pair[0].friction_max.unwrap();
        assert!(top > pair[0].friction_min && top > pair[1].friction_min);
        assert!(pair[1].friction_max.is_none_or(|next| next > top));
    }
    assert_eq!(rows[4].friction_max, None);
    let by_class: usize = rows
        .iter()
        .map(|row| FrictionSurface::of_class(row.class).len())
        .sum();
    assert_eq!(by_class, FrictionSurface::all().len());
    for row in FrictionSurface::all() {
        let classes: Vec<_> = FrictionSurface::of(row.surface, row.lubrication)
            .map(|found| found.class)
            .collect();
        assert!(classes.is_sorted() && classes.contains(&row.class));
    }
}

#[test]
fn scatter_follows_from_the_tightening_factor() {
    let mut checked = 0;
    let mut rows = 0;
    for row in TighteningScatter::all() {
        let of_method = TighteningScatter::of_method(row.method);
        assert!(of_method.contains(row));
        rows += usize::from(of_method[0] == *row) * of_method.len();
        if row.tightening_factor_max.is_none() {
            assert!(row.tightening_factor_basis.is_none());
            continue;
        }
        assert!(row.tightening_factor_min < row.tightening_factor_max);
        for (factor, scatter) in [
            (row.tightening_factor_min, row.scatter_min),
            (row.tightening_factor_max, row.scatter_max),
        ] {
            let (Some(factor), Some(scatter)) = (factor, scatter) else {
                continue;
            };
            checked += 1;
            let scatter = scatter.get::<ratio>();
            // Both are rounded: the factor to 0.1 (once to 0.01), the scatter to a whole per cent.
            let from = |factor: f64| (factor - 1.0) / (factor + 1.0);
            assert!(
                from(factor - 0.05) - 0.005 <= scatter && scatter <= from(factor + 0.05) + 0.005,
                "{row:?}"
            );
        }
    }
    assert_eq!(checked, 14);
    assert_eq!(rows, TighteningScatter::all().len());
}

#[test]
fn embedment_rises_with_roughness_and_is_refused_beyond() {
    for load in [LoadDirection::Axial, LoadDirection::Shear] {
        let found: Vec<_> = [9.9, 10.0, 39.9, 40.0, 159.9]
            .map(|rz| Embedment::find(micrometres(rz), load).unwrap())
            .into();
        for pair in found.windows(2) {
            assert!(pair[0].bearing_face <= pair[1].bearing_face);
            assert!(pair[0].interface <= pair[1].interface);
        }
        assert_eq!(found[1], found[2]);
        assert_ne!(found[0], found[1]);
        for row in found {
            assert!(
                row.roughness_from
                    .is_none_or(|from| from < row.roughness_below)
            );
        }
        for bad in [0.0, -1.0, 160.0, f64::NAN, f64::INFINITY] {
            assert!(Embedment::find(micrometres(bad), load).is_err(), "{bad}");
        }
    }
}

fn torque(rows: &[&'static PrevailingTorque], kind: PrevailingTorqueKind) -> Option<Torque> {
    rows.iter()
        .find(|row| row.kind == kind)
        .map(|row| row.torque)
}

/// FAA running torque and US Army breakaway torque are two authorities' limits, not two readings
/// of one: the Army's is the larger for every thread both list. Both must rise with the size.
#[test]
fn army_minimum_for_reuse_is_above_that_of_the_faa() {
    let mut common = 0;
    let mut alone = 0;
    for thread in UnifiedThread::all() {
        let thread: Thread = format!("{}-{}", thread.size, thread.threads_per_inch)
            .parse()
            .unwrap();
        let Ok(rows) = PrevailingTorque::reuse_minimum(&thread) else {
            continue;
        };
        assert!(rows.iter().all(|row| row.kind.is_for_reuse()));
        let faa = torque(&rows, PrevailingTorqueKind::ReuseRunningMin);
        let army = torque(&rows, PrevailingTorqueKind::ReuseBreakawayMin);
        match (faa, army) {
            (Some(faa), Some(army)) => {
                common += 1;
                assert!(army > 1.5 * faa && army < 2.5 * faa, "{thread}");
            }
            _ => alone += 1,
        }
    }
    assert_eq!(common, 15);
    assert!(alone > 5);
}

#[test]
fn first_removal_is_above_the_fifth_and_below_the_first_installation() {
    let mut groups = BTreeMap::<String, Vec<&'static PrevailingTorque>>::new();
    for row in PrevailingTorque::all_inch()
        .iter()
        .chain(PrevailingTorque::all_metric())
    {
        assert!(row.torque > newton_metres(0.0));
        for locking in [Locking::Insert, Locking::AllMetal] {
            if row.locking.is_none_or(|only| only == locking) {
                let key = format!(
                    "{} {} {:?} {locking}",
                    row.publisher, row.size, row.nut_classes
                );
                groups.entry(key).or_default().push(row);
            }
        }
    }
    let mut complete = 0;
    for (key, rows) in groups {
        let of = |kind| torque(&rows, kind);
        let Some(most) = of(PrevailingTorqueKind::FirstInstallationMax) else {
            continue;
        };
        let first = of(PrevailingTorqueKind::FirstRemovalMin).unwrap();
        let fifth = of(PrevailingTorqueKind::FifthRemovalMin).unwrap();
        assert!(most > first && first > fifth, "{key}");
        complete += 1;
    }
    assert_eq!(complete, 10 + 2 * (19 + 4 + 9 + 9));
}

/// ISO 2320: a new nut with an insert may turn half as hard as an all-metal one; the least torques are the same.
#[test]
fn metric_insert_nuts_turn_half_as_hard_as_all_metal_ones() {
    for size in ["M5", "M6", "M8", "M10", "M12", "M14", "M16", "M20", "M24"] {
        let thread = size.parse().unwrap();
        for class in ["5", "6", "8", "10"] {
            let of = |locking| PrevailingTorque::range(&thread, locking, Some(class)).unwrap();
            let (insert, metal) = (of(Locking::Insert), of(Locking::AllMetal));
            let half = 0.5 * metal.max;
            assert!(
                (insert.max - half).abs() <= newton_metres(0.005),
                "{size} {class}"
            );
            assert_eq!(insert.min, metal.min, "{size} {class}");
        }
    }
    let m8 = PrevailingTorque::range(&"M8".parse().unwrap(), Locking::Insert, Some("8")).unwrap();
    assert_eq!(m8.max, newton_metres(3.0));
}

#[test]
fn prevailing_torques_rise_with_the_size() {
    let mut last = BTreeMap::<String, (Length, Torque)>::new();
    for row in PrevailingTorque::all_inch()
        .iter()
        .chain(PrevailingTorque::all_metric())
    {
        // Coarse and fine threads are two columns.
        let fine = row.threads_per_inch.is_some_and(|n| is_fine(row.size, n));
        let key = format!(
            "{} {:?} {:?} {:?} {fine}",
            row.publisher, row.kind, row.locking, row.nut_classes
        );
        if let Some((size, torque)) = last.insert(key, (row.nominal_diameter, row.torque)) {
            assert!(
                row.nominal_diameter > size && row.torque > torque,
                "{row:?}"
            );
        }
    }
    assert!(last.len() > 15);
}

/// Of the fine column of a print. 1-1/8-8 stands in the coarse one, beside 1-1/8-7.
fn is_fine(size: &str, threads_per_inch: f64) -> bool {
    let coarse = UnifiedThread::all()
        .iter()
        .find(|row| row.size == size && row.series == UnifiedSeries::Unc)
        .unwrap();
    threads_per_inch > coarse.threads_per_inch + 1.0
}

#[test]
fn the_army_prints_the_same_torque_in_newton_metres() {
    // TM 10-4320-346-12&P, Table H-2, prints both: lbf in, and N m to 0.01.
    let printed = [
        ("#10-32", 0.23),
        ("1/4-28", 0.40),
        ("5/16-24", 0.73),
        ("3/8-24", 1.07),
        ("7/16-20", 1.58),
        ("1/2-20", 2.03),
        ("9/16-18", 2.71),
        ("5/8-18", 3.62),
        ("3/4-16", 5.65),
        ("7/8-14", 7.91),
        ("1-12", 10.17),
        ("1-1/8-12", 13.22),
    ];
    for (thread, expected) in printed {
        let rows = PrevailingTorque::reuse_minimum(&thread.parse().unwrap()).unwrap();
        let found = torque(&rows, PrevailingTorqueKind::ReuseBreakawayMin).unwrap();
        let found = found.get::<newton_meter>();
        assert!((found - expected).abs() <= 0.0055, "{thread}: {found}");
    }
    let half = PrevailingTorque::reuse_minimum(&"1/2-13".parse().unwrap()).unwrap();
    let army = torque(&half, PrevailingTorqueKind::ReuseBreakawayMin).unwrap();
    assert!((army.get::<pound_force_inch>() - 24.0).abs() < 1e-9);
}

#[test]
fn service_temperatures() {
    assert_eq!(Locking::Insert.temperature_max(), Some(celsius(120.0)));
    assert_eq!(Locking::AllMetal.temperature_max(), Some(celsius(150.0)));
    for free in [Locking::None, Locking::Slotted, Locking::Serrated] {
        assert_eq!(free.temperature_max(), None);
    }
    // Editions disagree by a factor of two.
    let all_metal: Vec<_> = ServiceTemperature::of(TemperatureLimited::AllMetalNut)
        .map(|row| (row.provenance.source.edition, row.temperature_max))
        .collect();
    assert_eq!(all_metal[0], (Some("1997"), Some(celsius(300.0))));
    assert_eq!(all_metal[2], (Some("2015"), Some(celsius(150.0))));
    for row in ServiceTemperature::all_celsius()
        .iter()
        .chain(ServiceTemperature::all_fahrenheit())
    {
        assert!(row.temperature_min.is_some() || row.temperature_max.is_some());
        if let (Some(min), Some(max)) = (row.temperature_min, row.temperature_max) {
            assert!(min < max);
        }
        assert!(ServiceTemperature::of(row.element).any(|found| found == row));
    }
    // The 250 F of nylon nuts is the 120 C of ISO 2320, within its rounding.
    let inch = ServiceTemperature::lowest_max(TemperatureLimited::SelfLockingNut250F).unwrap();
    assert_eq!(inch, fahrenheit(250.0));
    assert!((inch.value - celsius(120.0).value).abs() < 1.5);
    assert!(ServiceTemperature::latest(TemperatureLimited::AllMetalNut, "nobody").is_none());
}

#[test]
fn ply_materials_hang_together() {
    for row in PlyMaterial::all() {
        assert_eq!(PlyMaterial::find(&row.name.to_uppercase()).unwrap(), row);
        let ksi = |stress: Option<shankline::units::Stress>| {
            stress.map(|stress| stress.get::<kip_per_square_inch>())
        };
        let (yielding, tensile) = (ksi(row.yield_strength), ksi(row.tensile_strength));
        if let (Some(yielding), Some(tensile)) = (yielding, tensile) {
            assert!(yielding < tensile, "{row}");
        }
        if let (Some(shear), Some(tensile)) = (ksi(row.shear_strength), tensile) {
            let part = shear / tensile;
            assert!((0.55..0.72).contains(&part), "{row} {part}");
        }
        assert_eq!(
            row.poisson_ratio.is_some(),
            row.poisson_ratio_basis.is_some()
        );
        assert_eq!(row.expansion.is_some(), row.expansion_basis.is_some());
        assert_eq!(row.expansion.is_some(), row.expansion_source.is_some());
        assert_eq!(
            row.shear_strength.is_some(),
            row.shear_strength_basis.is_some()
        );
        assert_eq!(row.expansion_from.is_some(), row.expansion_thru.is_some());
        assert!(row.poisson_ratio.is_none_or(|nu| (0.2..0.35).contains(&nu)));
        let typical = row
            .cautions()
            .iter()
            .any(|c| *c == Caution::TypicalStrength);
        let has_strength = yielding.is_some() || tensile.is_some();
        assert_eq!(
            typical,
            has_strength && row.strength_kind == StrengthKind::Typical
        );
        let recalled = row.provenance.basis == Basis::Memory;
        assert!(!recalled || row.cautions().iter().count() > 0, "{row}");
    }
}

/// The names of ductile iron state tensile and yield strength: 60-40-18.
#[test]
fn names_of_ductile_iron_state_the_strengths() {
    let mut irons = 0;
    for row in PlyMaterial::all() {
        let Some(grade) = row.name.strip_prefix("ductile iron ") else {
            continue;
        };
        let numbers: Vec<f64> = grade.split('-').map(|n| n.parse().unwrap()).collect();
        assert_eq!(row.tensile_strength, Some(ksi(numbers[0])));
        assert_eq!(row.yield_strength, Some(ksi(numbers[1])));
        irons += 1;
    }
    assert_eq!(irons, 3);
}

/// AS 1442 prints 200 and 400 MPa, which the table has in ksi.
#[test]
fn converted_strengths_of_1020_go_back_to_the_print() {
    let row = PlyMaterial::find("AISI 1020 steel").unwrap();
    assert_eq!(row.provenance.basis, Basis::Computed);
    let half_ksi = 3.5;
    for (stress, printed) in [(row.yield_strength, 200.0), (row.tensile_strength, 400.0)] {
        assert!((stress.unwrap().get::<megapascal>() - printed).abs() <= half_ksi);
    }
}

#[test]
fn bearing_strength_rises_with_the_edge_distance() {
    let mut rows = 0;
    for material in PlyMaterial::all() {
        let bearing = material.bearing();
        rows += bearing.len();
        for row in bearing {
            assert!(row.yield_strength.is_none_or(|y| y < row.ultimate_strength));
            let tensile = material.tensile_strength;
            assert!(tensile.is_none_or(|tensile| row.ultimate_strength > tensile));
        }
        for pair in bearing.windows(2) {
            assert!(pair[0].edge_distance_ratio < pair[1].edge_distance_ratio);
            assert!(pair[0].ultimate_strength < pair[1].ultimate_strength);
        }
    }
    // Every bearing row belongs to a material, and to one run of rows.
    assert_eq!(rows, PlyBearing::all().len());
}

#[test]
fn names_of_plies_are_offered_by_their_nearness() {
    let message = |name: &str| PlyMaterial::find(name).unwrap_err().to_string();
    assert!(message("ASTM A37").contains("known are ASTM A36 steel; "));
    assert!(message("ASTM A36 stee").contains("known are ASTM A36 steel; "));
    for strange in ["", "   ", "é", "unobtainium"] {
        assert!(
            message(strange).ends_with("(the nearest of 34)"),
            "{strange:?}"
        );
    }
}

/// The shear columns are about 0.6 of the tension ones, as the stresses at their heads (24 / 40 and 54 / 90
/// ksi); and no one nut factor stands behind the table.
#[test]
fn aircraft_torques_hang_together() {
    let rows = AircraftTorque::all();
    let (mut least, mut greatest) = (f64::INFINITY, 0.0_f64);
    for row in rows {
        // 1-14 is a special thread since 12 threads became the fine series.
        let thread = format!("{}-{}", row.size, row.threads_per_inch)
            .parse()
            .or_else(|_| Thread::unified_special(row.nominal_diameter, row.threads_per_inch))
            .unwrap();
        assert_eq!(AircraftTorque::find(&thread).unwrap(), row);
        assert!(row.tension_nut_min < row.tension_nut_max);
        assert!(row.tension_nut_max < row.tension_nut_limit);
        assert!(row.shear_nut_min < row.shear_nut_max);
        assert!(row.shear_nut_max < row.shear_nut_limit);
        for (shear, tension, band) in [
            (row.shear_nut_min, row.tension_nut_min, 0.52..0.65),
            (row.shear_nut_max, row.tension_nut_max, 0.52..0.65),
            (row.shear_nut_limit, row.tension_nut_limit, 0.57..0.63),
        ] {
            let part = (shear / tension).get::<ratio>();
            assert!(band.contains(&part), "{} {part}", row.size);
        }
        let aimed = ksi(40.0) * thread.tensile_stress_area();
        let middle = 0.5 * (row.tension_nut_min + row.tension_nut_max);
        let k = middle.value / (aimed.value * thread.nominal_diameter().value);
        (least, greatest) = (least.min(k), greatest.max(k));
    }
    assert!((least - 0.130).abs() < 1e-3 && (greatest - 0.229).abs() < 1e-3);
    let estimated: Vec<_> = rows
        .iter()
        .filter(|row| row.shear_nut_estimated)
        .map(|row| row.size)
        .collect();
    assert_eq!(estimated, ["1", "1-1/8", "1-1/4"]);
    // Coarse or fine, torques rise with the size. 7/16-20 reads high, but is still below the next.
    for fine in [false, true] {
        let column: Vec<_> = rows
            .iter()
            .filter(|row| is_fine(row.size, row.threads_per_inch) == fine)
            .collect();
        assert!(column.len() > 10);
        for pair in column.windows(2) {
            assert!(
                pair[0].tension_nut_max < pair[1].tension_nut_max,
                "{}",
                pair[1].size
            );
            assert!(
                pair[0].shear_nut_limit < pair[1].shear_nut_limit,
                "{}",
                pair[1].size
            );
        }
    }
}

#[test]
fn turns_rise_with_length_and_slope() {
    let find = |faces, diameters: f64| {
        NutTurn::find(
            TurnRule::Rcsc,
            faces,
            diameters * inches(0.75),
            inches(0.75),
        )
        .map(|row| row.turn.get::<degree>())
    };
    let near = |found: f64, expected: f64| (found - expected).abs() < 1e-9;
    for (diameters, sixths) in [
        (0.1, 2.0),
        (4.0, 2.0),
        (4.01, 3.0),
        (8.0, 3.0),
        (8.01, 4.0),
        (12.0, 4.0),
    ] {
        for (faces, more) in [
            (OuterFaces::BothNormal, 0.0),
            (OuterFaces::OneSloped, 1.0),
            (OuterFaces::BothSloped, 2.0),
        ] {
            let turn = find(faces, diameters).unwrap();
            assert!(near(turn, 60.0 * (sixths + more)), "{diameters} {turn}");
        }
    }
    for bad in [12.01, 0.0, -1.0, f64::NAN, f64::INFINITY] {
        assert!(find(OuterFaces::BothNormal, bad).is_err(), "{bad}");
    }
    let combined = |grip: f64| {
        NutTurn::find(
            TurnRule::En1090Combined,
            OuterFaces::BothNormal,
            millimetres(grip),
            millimetres(24.0),
        )
        .map(|row| row.turn.get::<degree>())
    };
    for (grip, turn) in [
        (47.9, 60.0),
        (48.0, 90.0),
        (143.9, 90.0),
        (144.0, 120.0),
        (240.0, 120.0),
    ] {
        assert!(near(combined(grip).unwrap(), turn), "{grip}");
    }
    assert!(combined(240.1).is_err());
    let sloped = NutTurn::find(
        TurnRule::En1090Combined,
        OuterFaces::OneSloped,
        millimetres(50.0),
        millimetres(24.0),
    );
    assert!(
        sloped
            .unwrap_err()
            .to_string()
            .contains("the code asks for a test")
    );
    // Each row is found, and each ends where the next begins.
    for row in NutTurn::all() {
        let middle = 0.5 * (row.diameters_from + row.diameters_to);
        let found = NutTurn::find(row.rule, row.faces, middle * inches(1.0), inches(1.0)).unwrap();
        assert_eq!(found, row);
    }
}

#[test]
fn embedment_of_a_joint_adds_up() {
    let row = Embedment::find(micrometres(20.0), LoadDirection::Shear).unwrap();
    let sum = row.thread + 2.0 * row.bearing_face + 3.0 * row.interface;
    assert!((row.of_joint(2, 3) - sum).value.abs() < 1e-15);
    assert_eq!(row.of_joint(0, 0), row.thread);
}

#[test]
fn every_row_of_scatter_gives_a_range() {
    for row in TighteningScatter::all() {
        let scatter = scatter_of(row).unwrap();
        let preload = scattered(newtons(10e3), row).unwrap();
        assert!(preload.min > newtons(0.0) && preload.min < preload.max);
        let factor = tightening_factor(scatter).unwrap();
        let (most, least) = (preload.max.value, preload.min.value);
        assert!((most / least - factor).abs() < 1e-9 * factor);
        assert!(scattered(newtons(f64::NAN), row).is_err());
    }
}

#[test]
fn friction_classes_make_frictions() {
    for row in FrictionClassRow::all() {
        match (Friction::of_class(row.class), row.friction_max) {
            (Ok(friction), Some(max)) => {
                assert_eq!((friction.min(), friction.max()), (row.friction_min, max));
                assert!((friction.nominal() - 0.5 * (row.friction_min + max)).abs() < 1e-12);
            }
            (found, max) => assert!(found.is_err() && max.is_none()),
        }
    }
}

/// EN 1563 prints MPa, the first number of the name is the tensile strength; no walls over 30 mm.
#[test]
fn irons_of_en_1563_are_as_strong_as_their_names_say() {
    for (name, yielding) in [
        ("EN-GJS-400-15 ductile iron", 250.0),
        ("EN-GJS-450-10 ductile iron", 310.0),
        ("EN-GJS-500-7 ductile iron", 320.0),
        ("EN-GJS-600-3 ductile iron", 370.0),
        ("EN-GJS-700-2 ductile iron", 420.0),
    ] {
        let iron = PlyMaterial::find(name).unwrap();
        let wall = iron.at_thickness(millimetres(30.0)).unwrap();
        let tensile: f64 = name[7..10].parse().unwrap();
        for (stress, printed) in [
            (wall.yield_strength, yielding),
            (wall.tensile_strength, tensile),
        ] {
            assert!(
                (stress.unwrap().get::<megapascal>() - printed).abs() < 0.01,
                "{name}"
            );
        }
        assert!(iron.at_thickness(millimetres(31.0)).is_err(), "{name}");
    }
}
