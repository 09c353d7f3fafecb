//! Plies against print, and the laws every ply keeps.

mod support;

use proptest::prelude::*;
use shankline::prelude::*;
use shankline::strength::check::{Level, Mode};
use shankline::strength::ply::{
    BlockMethod, BlockShear, HoleKind, Ply, PlyMethod, PlyResistance, block_shear,
};
use shankline::units::kip;
use shankline::uom::si::force::kilonewton;
use support::{csv_rows, number};

fn one(ply: &Ply, d: Length, bolt: Option<Stress>, method: PlyMethod, mode: Mode) -> PlyResistance {
    let modes = ply.resistances(d, bolt, method).unwrap();
    *modes.iter().find(|found| found.mode == mode).unwrap()
}

#[test]
fn printed_cases() {
    let mut count = 0;
    for row in csv_rows("tests/data/ply_checks.csv") {
        let inch = row["unit_length"] == "in";
        let length = |column: &str| {
            let unit: fn(f64) -> Length = if inch { inches } else { millimetres };
            number(&row, column).map(unit)
        };
        let stress = |column: &str| {
            let unit: fn(f64) -> Stress = if inch { ksi } else { megapascals };
            number(&row, column).map(unit)
        };
        let ply = Ply {
            thickness: length("thickness").unwrap(),
            hole: length("hole").unwrap(),
            hole_kind: HoleKind::Standard,
            yield_strength: stress("yield"),
            tensile_strength: stress("tensile"),
            bearing_strength: Some(ksi(100.0)),
            end_distance: length("end"),
            edge_distance: length("edge"),
            pitch: length("pitch"),
            gauge: length("gauge"),
            width: length("width"),
        };
        let factor = number(&row, "factor").unwrap_or(1.0);
        let (method, level) = match &*row["method"] {
            "machine_design" => (
                PlyMethod::MachineDesign {
                    design_factor: factor,
                },
                Level::Allowable,
            ),
            "aisc_360" => (
                PlyMethod::Aisc360 {
                    edition: AiscEdition::E2010,
                    deformation_matters: true,
                },
                Level::Design,
            ),
            "en_1993_1_8" => (PlyMethod::En1993, Level::Design),
            _ => (
                PlyMethod::MilHdbk5 {
                    ultimate_factor: factor,
                },
                Level::Allowable,
            ),
        };
        let mode = match &*row["quantity"] {
            "bearing" => Mode::Bearing,
            "tear_out" => Mode::TearOut,
            _ => Mode::NetSection,
        };
        let bolt = stress("bolt_tensile");
        let found = one(&ply, length("diameter").unwrap(), bolt, method, mode);
        found.derivation().check().unwrap();
        let load = found.resistance.at(level).unwrap() * number(&row, "times").unwrap();
        let load = match &*row["expected_unit"] {
            "kip" => load.get::<kip>(),
            "lbf" => 1000.0 * load.get::<kip>(),
            _ => load.get::<kilonewton>(),
        };
        let (expected, tolerance) = (
            number(&row, "expected").unwrap(),
            number(&row, "tolerance").unwrap(),
        );
        assert!(
            (load - expected).abs() <= tolerance,
            "{}: {load} and {expected}",
            row["id"]
        );
        count += 1;
    }
    assert_eq!(count, 22);
}

/// Chen, Structural Engineering Handbook, chapter 4: C8x11.5 web, A36: 88.8 kip. Steel Buildings in
/// Europe, part 5: fin plate, Ant 770 and Anv 2210 mm2: 483 kN.
#[test]
fn printed_blocks() {
    let web = BlockShear {
        yield_strength: ksi(36.0),
        tensile_strength: ksi(58.0),
        gross_shear: square_inches(3.3),
        net_shear: square_inches(2.72),
        gross_tension: square_inches(0.66),
        net_tension: square_inches(0.41),
    };
    let old = block_shear(&web, BlockMethod::AiscLrfd1999).unwrap();
    assert!((old.resistance.at(Level::Design).unwrap().get::<kip>() - 88.8).abs() < 0.1);
    assert!((old.shear.get::<kip>() - 94.7).abs() < 0.1);
    let fin = BlockShear {
        yield_strength: megapascals(275.0),
        tensile_strength: megapascals(430.0),
        gross_shear: square_millimetres(3200.0),
        net_shear: square_millimetres(2210.0),
        gross_tension: square_millimetres(1100.0),
        net_tension: square_millimetres(770.0),
    };
    let eccentric = block_shear(&fin, BlockMethod::En1993 { eccentric: true }).unwrap();
    let design = eccentric
        .resistance
        .at(Level::Design)
        .unwrap()
        .get::<kilonewton>();
    assert!((design - 483.0).abs() < 0.8);
    for method in [
        BlockMethod::Aisc360 {
            uniform_tension: false,
        },
        BlockMethod::AiscLrfd1999,
        BlockMethod::En1993 { eccentric: false },
    ] {
        block_shear(&fin, method)
            .unwrap()
            .derivation()
            .check()
            .unwrap();
    }
}

/// Larger-term rule of 1999 by hand, with its upper limit 0.6 Fu Anv + Fu Ant, for both branches.
#[test]
fn larger_term_is_limited_by_rupture() {
    for (agv, anv, agt, ant) in [
        (3.0, 2.0, 1.5, 1.0),
        (3.0, 2.0, 2.5, 2.0),
        (2.1, 2.0, 2.5, 2.0),
    ] {
        let (fy, fu): (f64, f64) = (50.0, 65.0);
        let block = BlockShear {
            yield_strength: ksi(fy),
            tensile_strength: ksi(fu),
            gross_shear: square_inches(agv),
            net_shear: square_inches(anv),
            gross_tension: square_inches(agt),
            net_tension: square_inches(ant),
        };
        let larger: f64 = if fu * ant >= 0.6 * fu * anv {
            0.6 * fy * agv + fu * ant
        } else {
            0.6 * fu * anv + fy * agt
        };
        let limit = 0.6 * fu * anv + fu * ant;
        let found = block_shear(&block, BlockMethod::AiscLrfd1999).unwrap();
        let nominal = found.resistance.at(Level::Nominal).unwrap().get::<kip>();
        assert!((nominal / larger.min(limit) - 1.0).abs() < 1e-12);
        assert_eq!(found.cautions().iter().count(), usize::from(limit < larger));
        found.derivation().check().unwrap();
    }
}

/// fub / fu is one of the limits of EN's coefficient: a 4.6 bolt in S355 is softer than the plate. Without
/// fub there is no bearing resistance, not one that leaves the limit out.
#[test]
fn en_bearing_asks_for_the_bolt() {
    let s355 = Ply {
        tensile_strength: Some(megapascals(470.0)),
        ..plate(10.0, 22.0, 80.0, 60.0, 120.0, 120.0, 200.0)
    };
    let d = millimetres(20.0);
    assert!(s355.resistances(d, None, PlyMethod::En1993).is_err());
    let fub = Some(megapascals(400.0));
    let bearing = one(&s355, d, fub, PlyMethod::En1993, Mode::Bearing);
    // 2.5 x 400/470 x 470 x 20 x 10 N
    assert!((bearing.resistance.nominal.unwrap().value / 200e3 - 1.0).abs() < 1e-12);
}

/// Long slots and the later editions of AISC were recalled: they say so in every mode.
#[test]
fn recalled_numbers_of_plies_are_told() {
    let told = |edition, hole_kind, mode| {
        let ply = Ply {
            hole_kind,
            ..plate(10.0, 22.0, 80.0, 60.0, 120.0, 120.0, 200.0)
        };
        let method = PlyMethod::Aisc360 {
            edition,
            deformation_matters: true,
        };
        let found = one(&ply, millimetres(20.0), None, method, mode);
        found.cautions().iter().count()
    };
    for mode in [Mode::Bearing, Mode::TearOut] {
        assert_eq!(told(AiscEdition::E2010, HoleKind::Standard, mode), 0);
        assert_eq!(told(AiscEdition::E2010, HoleKind::LongSlotAcross, mode), 1);
        assert_eq!(told(AiscEdition::E2016, HoleKind::Standard, mode), 1);
        assert_eq!(told(AiscEdition::E2022, HoleKind::Standard, mode), 1);
    }
}

/// A distance of exactly the least the code wants is not short, whatever the rounding of its unit.
#[test]
fn a_distance_at_the_limit_is_not_short() {
    for tenths in 60..800 {
        let d0 = f64::from(tenths) / 10.0;
        let at = |factor: f64| Some(millimetres((factor * d0 * 1e4).round() / 1e4));
        let ply = Ply {
            end_distance: at(1.2),
            edge_distance: at(1.2),
            pitch: at(2.2),
            gauge: at(2.4),
            ..plate(10.0, d0, 80.0, 60.0, 120.0, 120.0, 200.0)
        };
        let ply = Ply { width: None, ..ply };
        let short = ply.short_distances(millimetres(0.9 * d0), PlyMethod::En1993);
        assert_eq!(short.unwrap(), [], "{d0}");
    }
}

fn methods() -> [PlyMethod; 4] {
    [
        PlyMethod::MachineDesign { design_factor: 2.0 },
        PlyMethod::Aisc360 {
            edition: AiscEdition::E2016,
            deformation_matters: false,
        },
        PlyMethod::En1993,
        PlyMethod::MilHdbk5 {
            ultimate_factor: 1.5,
        },
    ]
}

fn plate(t: f64, hole: f64, e1: f64, e2: f64, p1: f64, p2: f64, w: f64) -> Ply {
    Ply {
        thickness: millimetres(t),
        hole: millimetres(hole),
        hole_kind: HoleKind::Standard,
        yield_strength: Some(megapascals(275.0)),
        tensile_strength: Some(megapascals(430.0)),
        bearing_strength: Some(megapascals(700.0)),
        end_distance: Some(millimetres(e1)),
        edge_distance: Some(millimetres(e2)),
        pitch: Some(millimetres(p1)),
        gauge: Some(millimetres(p2)),
        width: Some(millimetres(w)),
    }
}

proptest! {
    /// More ply never bears less, and the load at capacity uses exactly all of it.
    #[test]
    fn grows_with_thickness_distance_and_width(
        t in 2.0..40.0f64, e1 in 24.0..80.0f64, e2 in 24.0..80.0f64, p1 in 45.0..120.0f64,
        p2 in 45.0..120.0f64, w in 40.0..200.0f64, more in 0.1..20.0f64,
    ) {
        let d = millimetres(20.0);
        let fub = Some(megapascals(800.0));
        let base = plate(t, 22.0, e1, e2, p1, p2, w);
        for method in methods() {
            let modes = base.resistances(d, fub, method).unwrap();
            for larger in [
                plate(t + more, 22.0, e1, e2, p1, p2, w),
                plate(t, 22.0, e1 + more, e2, p1, p2, w),
                plate(t, 22.0, e1, e2 + more, p1, p2, w),
                plate(t, 22.0, e1, e2, p1 + more, p2, w),
                plate(t, 22.0, e1, e2, p1, p2 + more, w),
                plate(t, 22.0, e1, e2, p1, p2, w + more),
            ] {
                for (a, b) in modes.iter().zip(larger.resistances(d, fub, method).unwrap()) {
                    prop_assert!(b.resistance.nominal >= a.resistance.nominal);
                }
            }
            for mode in modes {
                prop_assert!(mode.derivation().check().is_ok());
                let load = mode.resistance.at(Level::Nominal).unwrap();
                let check = mode.check(load, Level::Nominal, 1).unwrap();
                prop_assert!((check.utilisation.value - 1.0).abs() < 1e-15);
            }
        }
    }

    #[test]
    fn no_number_breaks_it(n in proptest::array::uniform8(any::<f64>()), d in any::<f64>(), fub in any::<f64>()) {
        let odd = plate(n[0], n[1], n[2], n[3], n[4], n[5], n[6]);
        let odd = Ply { tensile_strength: Some(megapascals(n[7])), ..odd };
        for method in methods() {
            let _ = odd.short_distances(millimetres(d), method);
            if let Ok(modes) = odd.resistances(millimetres(d), Some(megapascals(fub)), method) {
                for mode in modes {
                    prop_assert!(mode.resistance.nominal.unwrap().value.is_finite());
                }
            }
        }
    }
}
