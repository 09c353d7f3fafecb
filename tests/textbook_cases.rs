//! Small printed cases that are one step of the crate each. Their identifiers are those of the other data
//! files of shear. Tolerance: the print's own rounding.

use shankline::prelude::*;
use shankline::strength::check::{Level, Mode};
use shankline::strength::ply::{HoleKind, Ply, PlyBolt, PlyMethod};
use shankline::tension::GripSections;
use shankline::units::kip;
use shankline::uom::si::{force::kilonewton, pressure::megapascal};

fn near(found: f64, printed: f64, tolerance: f64) {
    assert!(
        (found - printed).abs() <= tolerance,
        "{found}, printed {printed}"
    );
}

fn bar(yield_strength: Stress, thickness: Length, hole: Length, width: Option<Length>) -> Ply {
    Ply {
        thickness,
        hole,
        hole_kind: HoleKind::Standard,
        slot_length: None,
        yield_strength: Some(yield_strength),
        tensile_strength: None,
        bearing_strength: None,
        bearing_yield: None,
        end_distance: None,
        edge_distance: None,
        pitch: None,
        gauge: None,
        width,
    }
}

fn allowable(ply: &Ply, d: Length, design_factor: f64, mode: Mode) -> Force {
    let method = PlyMethod::MachineDesign { design_factor };
    let outcome = ply.in_mode(mode, d, PlyBolt::default(), method).unwrap();
    outcome
        .found()
        .unwrap()
        .resistance
        .at(Level::Allowable)
        .unwrap()
}

/// SH07: Shigley, Mechanical Engineering Design, 9th ed., Example 8-6: 144 kip by yield of the gross bar.
#[test]
fn gross_yield_of_a_bar() {
    let bar = bar(ksi(54.0), inches(1.0), inches(0.75), Some(inches(4.0)));
    near(
        allowable(&bar, inches(0.75), 1.5, Mode::GrossSection).get::<kip>(),
        144.0,
        0.05,
    );
}

/// SH14 and SH16: Shigley, 8th ed., instructor's solutions, problem 8-40: two 3/8 in bolts under 4 kip, shear
/// 18.1 ksi; bearing on the bolts (92 ksi, 1/4 in) has a factor of 4.32, printed from 21.3 ksi rounded.
#[test]
fn two_small_bolts() {
    let thread: Thread = "3/8-16 UNC".parse().unwrap();
    let stress = pounds_force(4000.0) / (2.0 * thread.shank_area());
    near((stress / ksi(1.0)).value, 18.1, 0.05);
    let bolts = bar(ksi(92.0), inches(0.25), inches(0.375), None);
    let load = 2.0 * allowable(&bolts, inches(0.375), 1.0, Mode::Bearing);
    near((load / pounds_force(4000.0)).value, 4.32, 0.012);
}

/// SH22 and SH24: Gere, Mechanics of Materials, 5th ed., 1.6-3 (three 5/8 in bolts in double shear under 8 kip:
/// 4350 psi) and 1.6-4 (a pin of 20 mm in double shear under 20 kN: 31.8 MPa).
#[test]
fn average_shear_stress() {
    let bolt: Thread = "5/8-11 UNC".parse().unwrap();
    let stress = pounds_force(8000.0) / (6.0 * bolt.shank_area());
    near(1000.0 * (stress / ksi(1.0)).value, 4350.0, 5.0);
    let pin: Thread = "M20".parse().unwrap();
    let stress = newtons(20e3) / (2.0 * pin.shank_area());
    near(stress.get::<megapascal>(), 31.8, 0.05);
}

/// SH26 and SH27: Singer and Pytel, Strength of Materials: a rivet that fills a hole of 20.5 mm, 60 MPa: 19.8 and
/// 39.6 kN.
#[test]
fn rivets() {
    use shankline::strength::shear::{ConnectionFacts, LoadedPlane, PlaneRule, shear_resistance};
    // A rivet has no thread: one of that diameter stands for it, and only its shank is cut.
    let rivet = Thread::unified_special(millimetres(20.5), 10.0).unwrap();
    let strength = BoltStrength::stated(millimetres(20.5), None, None, megapascals(400.0)).unwrap();
    let method = ShearMethod::MilHdbk5 {
        shear_strength: megapascals(60.0),
        ultimate_factor: 1.0,
        fitting_factor: 1.0,
    };
    for (zones, printed) in [
        (&[Zone::Shank][..], 19.8),
        (&[Zone::Shank, Zone::Shank], 39.6),
    ] {
        let planes = LoadedPlane::equal(zones);
        let none = ConnectionFacts::default();
        let shear = shear_resistance(&rivet, &strength, &planes, PlaneRule::Each, method, &none);
        let load = shear.unwrap().resistance.at(Level::Nominal).unwrap();
        near(load.get::<kilonewton>(), printed, 0.05);
    }
}

/// SH12, SH13: Shigley, 9th ed., Example 8-7: M16 x 46 has 38 mm of thread, its shank ends 8 mm from the head.
/// SH90: a homework solution on the same tables: 1/2-13 x 1-3/4 has 1-1/4 in of thread.
#[test]
fn thread_lengths_by_the_textbook() {
    let metric: Thread = "M16".parse().unwrap();
    let sections = GripSections::textbook(&metric, millimetres(46.0), millimetres(30.0)).unwrap();
    near(sections.shank.value * 1e3, 8.0, 1e-9);
    let inch: Thread = "1/2-13 UNC".parse().unwrap();
    let sections = GripSections::textbook(&inch, inches(1.75), inches(1.125)).unwrap();
    near((sections.shank / inches(1.0)).value, 1.75 - 1.25, 1e-9);
}

/// SH88 and SH89: the same homework: plates of 0.5 and 0.625 in and a nut of 7/16 in need 1.5625 in; a bolt of 1-3/4
/// in shows 2.44 threads.
#[test]
fn threads_past_the_nut() {
    let stack = Stack::builder()
        .ply("plate", Spread::exact(inches(0.5)))
        .ply("plate", Spread::exact(inches(0.625)))
        .shear_planes([1])
        .build()
        .unwrap();
    let nut = NutEnd::with_height(Spread::exact(inches(7.0 / 16.0))).unwrap();
    let thread: Thread = "1/2-13 UNC".parse().unwrap();
    let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &thread).unwrap();
    let rules = LengthRules::fabrication(UnitSystem::UsCustomary);
    let search = LengthSearch::new(&stack, &screws, nut, rules).unwrap();
    let bolt = ScrewLength::measured(inches(1.75), inches(0.5), inches(0.5)).unwrap();
    let found = search.assess(bolt).unwrap();
    let needed = bolt.nominal - found.protrusion.nominal;
    near((needed / inches(1.0)).value, 1.5625, 1e-4);
    near(
        (found.protrusion.nominal / thread.pitch()).value,
        2.44,
        0.005,
    );
}
