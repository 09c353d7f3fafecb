//! Limits on both sides, and figures worked out by hand.

use super::*;
use crate::caution::{Caution, Cautions};
use crate::material::{BoltGrade, PropertyClass};
use crate::parts::Zone;
use crate::thread::Thread;
use crate::units::{
    Length, Stress, degrees, inches, kilonewtons, kips, ksi, megapascals, millimetres,
    newton_metres, newtons, newtons_per_millimetre, square_millimetres,
};

fn thread(text: &str) -> Thread {
    text.parse().unwrap()
}

#[track_caller]
fn near(found: f64, right: f64) {
    assert!(
        (found - right).abs() <= 2e-5 * right.abs(),
        "{found} is not {right}"
    );
}

fn count(cautions: &Cautions) -> usize {
    cautions.iter().count()
}

fn mpa(stress: Stress) -> f64 {
    stress.value / 1e6
}

fn mm(length: Length) -> f64 {
    length.value * 1e3
}

/// Fu = 65 ksi, 3/4 in bolts in 13/16 in holes, p = 4 in, b = 2 in, a = 1.75 in: b' = 1.625, a' = 2.125, rho = 0.764706,
/// delta = 0.796875; 4 b' / (phi p Fu) = 1 / 36 in2/kip.
fn flange(bolt: f64, hole: f64, p: f64, b: f64, a: f64) -> Result<AiscFlange, Error> {
    let [bolt, hole, p, b, a] = [bolt, hole, p, b, a].map(inches);
    AiscFlange::new(AiscBasis::Lrfd, ksi(65.0), bolt, hole, p, b, a)
}

#[test]
fn aisc_flange_by_hand() {
    let tee = flange(0.75, 0.8125, 4.0, 2.0, 1.75).unwrap();
    near(tee.lever_to_stem().value, inches(1.625).value);
    near(tee.lever_to_edge().value, inches(2.125).value);
    near(tee.rho(), 0.764_706);
    near(tee.delta(), 0.796_875);
    // No more of the edge than 1.25 b counts: 2.5 in.
    let wide = flange(0.75, 0.8125, 4.0, 2.0, 3.0).unwrap();
    near(wide.lever_to_edge().value, inches(2.875).value);
    let bare = tee.no_prying_thickness(kips(20.0)).unwrap();
    near(bare.value, inches(0.745_356).value);
    for (load, thickness) in [
        // beta = 2.59, 0.64, 0.251, 0: alpha = 1, 1, 0.4207, 0
        (10.0, 0.393_179),
        (20.0, 0.556_038),
        (25.0, 0.721_169),
        (29.8, 0.909_823),
    ] {
        let found = tee.required_thickness(kips(load), kips(29.8)).unwrap();
        near(found.value, inches(thickness).value);
    }
    assert!(tee.required_thickness(kips(29.801), kips(29.8)).is_err());
    for (load, thickness, available, alpha, prying) in [
        (20.0, 0.5, 16.171_87, 1.0, 5.484_375),
        (20.0, 0.8, 26.870_67, 0.0, 0.0),
        (25.0, 0.8, 26.870_67, 0.106_754, 1.498_83),
        (25.0, 0.95, 29.8, 0.0, 0.0),
    ] {
        let found = tee
            .check(kips(load), kips(29.8), inches(thickness))
            .unwrap();
        near(found.full_thickness.value, inches(0.909_823).value);
        near(found.available.value, kips(available).value);
        near(found.alpha, alpha);
        near(found.prying.value, kips(prying).value);
        near(found.bolt.value, kips(load + prying).value);
        near(found.utilisation.value, load / available);
        found.derivation().check().unwrap();
        assert_eq!(count(&found.cautions()), 0);
    }
}

#[test]
fn aisc_flange_has_limits() {
    for (bolt, hole, p, b, right) in [
        (0.75, 0.75, 4.0, 2.0, true),
        (0.75, 0.749, 4.0, 2.0, false),
        (0.75, 3.995, 4.0, 2.0, true),
        (0.75, 3.997, 4.0, 2.0, false),
        (0.75, 0.8125, 4.0, 0.3753, true),
        (0.75, 0.8125, 4.0, 0.375, false),
    ] {
        let found = flange(bolt, hole, p, b, 1.75);
        assert_eq!(found.is_ok(), right, "{bolt} {hole} {p} {b}");
    }
    // What rounding leaves of 2 b.
    let [bolt, hole, b] = [0.75, 0.8125, 2.0].map(inches);
    let p = 2.0 * b * (1.0 + 1e-9);
    let tee = AiscFlange::new(AiscBasis::Asd, ksi(65.0), bolt, hole, p, b, b);
    assert_eq!(count(&tee.unwrap().cautions()), 0);
    // As thick as the whole bolt strength wants: no prying, as its step says.
    let tee = flange(0.75, 0.8125, 4.0, 2.0, 1.75).unwrap();
    let thick = tee.check(kips(25.0), kips(29.8), inches(1.0)).unwrap();
    let just = tee
        .check(kips(25.0), kips(29.8), thick.full_thickness)
        .unwrap();
    assert_eq!(just.available, kips(29.8));
    let derivation = just.derivation();
    let step = derivation.steps().iter().find(|step| step.symbol() == "Ta");
    assert_eq!(step.unwrap().formula(), "B");
    // The Manual advises p of at most 2 b.
    for (p, cautions) in [(4.0, 0), (4.001, 1)] {
        let tee = flange(0.75, 0.8125, p, 2.0, 1.75).unwrap();
        assert_eq!(count(&tee.cautions()), cautions, "{p}");
    }
}

/// m = 40 mm, e = 45 mm, two bolts of 90 kN; leff 150 and 170 mm, S 235: Mpl = 0.25 leff t2 fy.
#[test]
fn en_t_stub_by_hand() {
    let of = |t: f64, gamma: f64| {
        let stub = EnTStub::new(millimetres(40.0), millimetres(45.0), kilonewtons(180.0));
        let (one, two) = (millimetres(150.0), millimetres(170.0));
        stub.and_then(|stub| stub.plate(one, two, millimetres(t), megapascals(235.0), gamma))
    };
    for (t, mode, one, two) in [
        (8.0, EnMode::FlangeYields, 56.4, 110.334_1),
        (
            15.0,
            EnMode::BoltsFailAndFlangeYields,
            198.281_25,
            148.169_1,
        ),
        (30.0, EnMode::BoltsFail, 793.125, 306.794_1),
    ] {
        let found = of(t, 1.0).unwrap().resistance().unwrap();
        near(found.mode_1.value, one * 1e3);
        near(found.mode_2.value, two * 1e3);
        near(found.mode_3.value, 180e3);
        assert_eq!(found.mode, mode);
        near(found.resistance.value, one.min(two).min(180.0) * 1e3);
        found.derivation().check().unwrap();
    }
    let thick = of(15.0, 1.25).unwrap().resistance().unwrap();
    near(thick.mode_1.value, 198_281.25 / 1.25);
    // Washers of 30 mm: ew = 7.5 mm, (360 - 15) Mpl1 / (3600 - 7.5 x 85).
    let washer = of(15.0, 1.0).unwrap().with_washer(millimetres(30.0));
    let washer = washer.unwrap().resistance().unwrap();
    near(washer.mode_1.value, 230_909.8);
    washer.derivation().check().unwrap();
    // n is at most 1.25 m.
    for (edge, n) in [(45.0, 45.0), (50.0, 50.0), (60.0, 50.0)] {
        let stub = EnTStub::new(millimetres(40.0), millimetres(edge), kilonewtons(180.0));
        near(mm(stub.unwrap().n), n);
    }
    for (gamma, right) in [(1.0, true), (2.0, true), (0.999, false), (2.001, false)] {
        assert_eq!(of(15.0, gamma).is_ok(), right, "{gamma}");
    }
    for (washer, right) in [(159.9, true), (160.0, false)] {
        let found = of(15.0, 1.0).unwrap().with_washer(millimetres(washer));
        assert_eq!(found.is_ok(), right, "{washer}");
    }
    // 8.8 x 40^3 x 353 / (150 x 15^3) = 392.71 mm of one row, twice that of two.
    for (rows, elongation, prying) in [
        (1, 392.6, true),
        (1, 392.8, false),
        (2, 785.3, true),
        (2, 785.5, false),
    ] {
        let bolts = TStubBolts {
            elongation: millimetres(elongation),
            stress_area: square_millimetres(353.0),
            rows,
        };
        let found = of(15.0, 1.0)
            .unwrap()
            .with_bolts(bolts)
            .unwrap()
            .resistance()
            .unwrap();
        assert_eq!(found.prying, Some(prying), "{rows} {elongation}");
        // 2 Mpl1 / m = 99.14 kN
        near(
            found.resistance.value,
            if prying { 148_169.1 } else { 99_140.63 },
        );
        found.derivation().check().unwrap();
    }
}

/// Where two modes give the same the plainer is named; the figures are powers of two, so that they are the same to the last bit.
#[test]
fn modes_of_a_t_stub_that_tie() {
    let stub = EnTStub::new(millimetres(31.25), millimetres(31.25), kilonewtons(1.0));
    let stub = EnTStub {
        thickness: millimetres(10.0),
        length_1: millimetres(100.0),
        ..stub.unwrap()
    };
    let long = TStubBolts {
        elongation: millimetres(1e5),
        stress_area: square_millimetres(353.0),
        rows: 1,
    };
    let of = |one: f64, two: f64, bolts: f64, bolts_in_it| {
        let stub = EnTStub {
            moment_1: newton_metres(one),
            moment_2: newton_metres(two),
            bolts: newtons(bolts),
            bolts_in_it,
            ..stub
        };
        stub.resistance().unwrap().mode
    };
    // 4 Mpl1 / m = 128 Mpl1; mode 2 = 32 Mpl2 + B / 2.
    assert_eq!(
        of(1000.0, 1000.0, 192e3, None),
        EnMode::FlangeYields,
        "1 and 2"
    );
    assert_eq!(
        of(1000.0, 3000.0, 128e3, None),
        EnMode::FlangeYields,
        "1 and 3"
    );
    assert_eq!(
        of(1000.0, 1000.0, 64e3, None),
        EnMode::BoltsFailAndFlangeYields,
        "2 and 3"
    );
    assert_eq!(
        of(1000.0, 1000.0, 64e3, Some(long)),
        EnMode::FlangeYieldsWithoutPrying,
        "1-2 and 3"
    );
    // Bolts as long as the limit still pry.
    let short = TStubBolts {
        elongation: millimetres(1.0),
        ..long
    };
    let stub = EnTStub {
        moment_1: newton_metres(1000.0),
        moment_2: newton_metres(1000.0),
        ..stub
    };
    let on = |bolts| stub.with_bolts(bolts).unwrap().resistance().unwrap();
    let elongation = on(short).limit.unwrap();
    assert_eq!(on(TStubBolts { elongation, ..long }).prying, Some(true));
    // Without washers the short formula is shown.
    let derivation = on(short).derivation();
    let step = derivation
        .steps()
        .iter()
        .find(|step| step.symbol() == "FT1");
    assert_eq!(step.unwrap().formula(), "4 * Mpl1 / m");
}

/// 10 kN, b = 40, a = 50 mm, delta alpha = 0.4: Q = 10 x 0.8 x 0.4 / 1.4.
#[test]
fn thornton_by_hand() {
    let of = |net: f64, alpha: f64| {
        thornton_prying(
            kilonewtons(10.0),
            millimetres(40.0),
            millimetres(50.0),
            net,
            alpha,
        )
    };
    let found = of(0.8, 0.5).unwrap();
    near(found.prying.value, 2285.714);
    near(found.bolt.value, 12_285.714);
    near(found.stem_moment.value, 285.7143);
    found.derivation().check().unwrap();
    for (value, right) in [(0.0, true), (1.0, true), (1.001, false), (-0.001, false)] {
        assert_eq!(of(value, 0.5).is_ok(), right, "{value}");
        assert_eq!(of(0.5, value).is_ok(), right, "{value}");
    }
}

fn quarter(preload: f64) -> JointDiagram {
    JointDiagram::new(LoadShare::of_constant(0.25).unwrap(), newtons(preload)).unwrap()
}

/// C = 0.25 and 10 kN part at 13.3 kN, and slacken the bolt below -40 kN.
#[test]
fn joint_diagram_by_hand() {
    let joint = quarter(10e3);
    let parts = joint.separation_load;
    near(parts.value, 13_333.33);
    for (load, bolt, clamp, state) in [
        (0.0, 10e3, 10e3, JointState::Clamped),
        (12e3, 13e3, 1e3, JointState::Clamped),
        (13_333.4, 13_333.4, 0.0, JointState::Separated),
        (-40e3, 0.0, 40e3, JointState::Clamped),
        (-40_000.001, 0.0, 40_000.001, JointState::BoltSlack),
    ] {
        let found = joint.under(newtons(load)).unwrap();
        near(found.bolt.value, bolt);
        near(found.clamp.value, clamp);
        assert_eq!(found.state, state, "{load}");
    }
    assert_eq!(joint.under(parts).unwrap().state, JointState::Clamped);
    // A bolt that bears all parts from nothing, clamped or not.
    let all = LoadShare::of_constant(1.0).unwrap();
    let loose = JointDiagram::new(all, newtons(0.0)).unwrap();
    assert_eq!(loose.separation_load, newtons(f64::INFINITY));
    // 10 kN: the bolt has 12.5 kN.
    let strong = joint.check(newtons(10e3), newtons(20e3)).unwrap();
    near(strong.yield_factor, 1.6);
    near(strong.load_factor, 4.0);
    near(strong.separation_factor, 1.333_333);
    // It has parted long before: proof load over load.
    near(strong.overload_factor, 2.0);
    near(strong.utilisation().value, 0.625);
    let weak = joint.check(newtons(10e3), newtons(11e3)).unwrap();
    near(weak.load_factor, 0.4);
    near(weak.overload_factor, 0.4);
    let parted = joint.check(newtons(15e3), newtons(20e3)).unwrap();
    for check in [strong, weak, parted] {
        check.derivation().check().unwrap();
    }
    assert!(joint.check(newtons(10e3), newtons(10e3)).is_err());
    assert!(joint.check(newtons(10e3), newtons(10_000.001)).is_ok());
}

/// 0.25 x 2 x 100 / 10 = 5; a millionth of a bolt is rounding.
#[test]
fn bolts_needed_by_hand() {
    let of = |factor: f64, load: f64, proof: f64| {
        let share = LoadShare::of_constant(0.25).unwrap();
        bolts_needed(
            share,
            factor,
            newtons(load),
            newtons(proof),
            kilonewtons(10.0),
        )
    };
    for (factor, load, bolts) in [
        (2.0, 100e3, 5),
        (2.000_000_2, 100e3, 5),
        (2.000_001, 100e3, 6),
        (1e-3, 1.0, 1),
        (1.0, 4e10, 1_000_000),
    ] {
        assert_eq!(of(factor, load, 20e3).unwrap().bolts, bolts, "{factor}");
    }
    near(of(2.0, 90e3, 20e3).unwrap().quotient, 4.5);
    assert!(of(1.0, 4.000_01e10, 20e3).is_err());
    assert!(of(2.0, 100e3, 10e3).is_err());
    assert!(of(2.0, 100e3, 10_001.0).is_ok());
    let margin = margin_of_safety(newtons(15.0), 1.5, newtons(8.0)).unwrap();
    near(margin, 0.25);
}

#[test]
fn load_share_has_limits() {
    let of =
        |members: f64| LoadShare::new(newtons_per_millimetre(1e3), newtons_per_millimetre(members));
    near(of(3e3).unwrap().share.value, 0.25);
    for (members, right) in [
        (0.999e12, true),
        (1.001e12, false),
        (1.001e-6, true),
        (0.999e-6, false),
    ] {
        assert_eq!(of(members).is_ok(), right, "{members}");
    }
    let share = of(3e3).unwrap();
    for (introduced, right, cautions, steps) in [
        (1.0, true, 0, 1),
        (0.999, true, 1, 2),
        (1.001, false, 0, 0),
        (1e-9, true, 1, 2),
        (0.9e-9, false, 0, 0),
    ] {
        let found = share.introduced_at(introduced);
        assert_eq!(found.is_ok(), right, "{introduced}");
        let Ok(found) = found else { continue };
        near(found.share.value, 0.25 * introduced);
        assert_eq!(count(&found.cautions()), cautions, "{introduced}");
        assert_eq!(found.derivation().steps().len(), steps, "{introduced}");
        found.derivation().check().unwrap();
    }
    for (constant, right) in [(0.0, true), (1.0, true), (-0.001, false), (1.001, false)] {
        assert_eq!(LoadShare::of_constant(constant).is_ok(), right);
    }
}

fn strengths(endurance: f64, tensile: f64, proof: f64) -> Result<FatigueStrengths, Error> {
    FatigueStrengths::new(
        EnduranceStrength::stated(megapascals(endurance))?,
        megapascals(tensile),
        megapascals(proof),
    )
}

/// The strength lies on the curve that gives the criterion its name, Shigley Eq. 8-38 to 8-40.
#[test]
fn fatigue_criteria_meet_their_curves() {
    use FatigueCriterion::{AsmeElliptic, Gerber, Goodman, ProofLine};
    let (se, sut, sp) = (130.0, 830.0, 600.0);
    for (preload, amplitude, mean) in [
        (400.0, 50.0, 450.0),
        (400.0, 20.0, 500.0),
        (300.0, 70.0, 335.0),
        (0.0, 40.0, 40.0),
    ] {
        let [si, a, m] = [preload, amplitude, mean].map(megapascals);
        let stress = FatigueStress::new(si, a, m).unwrap();
        near(stress.slope(), amplitude / (mean - preload));
        for criterion in [Goodman, Gerber, AsmeElliptic, ProofLine] {
            let strengths = strengths(se, sut, sp).unwrap();
            let found = MachineDesignFatigue::new(strengths, stress, criterion).unwrap();
            let (a, m) = (mpa(found.strength_amplitude), mpa(found.strength_mean));
            let curve = match criterion {
                Goodman => a / se + m / sut,
                Gerber => a / se + (m / sut) * (m / sut),
                AsmeElliptic => (a / se) * (a / se) + (m / sp) * (m / sp),
                ProofLine => (a + m) / sp,
            };
            near(curve, 1.0);
            near(m - preload, a * (mean - preload) / amplitude);
            near(found.factor, a / amplitude);
            found.derivation().check().unwrap();
        }
    }
}

#[test]
fn fatigue_strengths_have_limits() {
    use FatigueCriterion::{AsmeElliptic, Gerber, Goodman, ProofLine};
    for (endurance, tensile, proof, right) in [
        (100.0, 800.0, 800.0, true),
        (100.0, 800.0, 800.1, false),
        (100.0, 800.0, 0.801, true),
        (100.0, 800.0, 0.799, false),
        (800.0, 800.0, 600.0, true),
        (800.1, 800.0, 600.0, false),
        (8.01e-4, 800.0, 600.0, true),
        (7.99e-4, 800.0, 600.0, false),
    ] {
        let found = strengths(endurance, tensile, proof);
        assert_eq!(found.is_ok(), right, "{endurance} {tensile} {proof}");
    }
    let rolled = EnduranceStrength::stated(megapascals(38.0)).unwrap();
    near(mpa(rolled.with_cut_threads().stress()), 30.0);
    assert!(rolled.provenance().is_none());
    for (criterion, preload, right) in [
        (Goodman, 829.9, true),
        (Goodman, 830.0, false),
        (Gerber, 829.9, true),
        (Gerber, 830.0, false),
        (AsmeElliptic, 599.9, true),
        (AsmeElliptic, 600.0, false),
        (ProofLine, 599.9, true),
        (ProofLine, 600.0, false),
    ] {
        let (preload, amplitude) = (megapascals(preload), megapascals(1.0));
        let stress = FatigueStress::new(preload, amplitude, preload + amplitude).unwrap();
        let own = strengths(130.0, 830.0, 600.0).unwrap();
        let found = MachineDesignFatigue::new(own, stress, criterion);
        assert_eq!(found.is_ok(), right, "{criterion} {preload:?}");
    }
}

/// Endurance strengths of the table belong to a preload: below half the proof stress a caution says so.
#[test]
fn endurance_of_the_table_wants_preload() {
    use FatigueCriterion::{Gerber, ProofLine};
    let bolt = PropertyClass::Class8_8.strength(millimetres(16.0)).unwrap();
    let half = 0.5 * bolt.proof_stress.unwrap();
    for (preload, criterion, cautions) in [
        (half, Gerber, 0),
        (half * 0.999, Gerber, 1),
        (half * 0.999, ProofLine, 0),
    ] {
        let strengths = FatigueStrengths::of_bolt(&bolt).unwrap();
        let amplitude = megapascals(10.0);
        let stress = FatigueStress::new(preload, amplitude, preload + amplitude).unwrap();
        let found = MachineDesignFatigue::new(strengths, stress, criterion).unwrap();
        assert_eq!(count(&found.cautions()), cautions, "{preload:?}");
    }
}

/// C = 0.25, 10 kN, 100 mm2.
#[test]
fn fatigue_stress_of_a_joint() {
    let area = square_millimetres(100.0);
    let of = |preload: f64, least: f64, greatest: f64| {
        FatigueStress::of_joint(&quarter(preload), area, newtons(least), newtons(greatest))
    };
    for (preload, least, greatest, stress) in [
        (10e3, 0.0, 8e3, [100.0, 10.0, 110.0]),
        // A mean below the preload is not counted on.
        (10e3, -4e3, 2e3, [100.0, 7.5, 100.0]),
        // Without preload the bolt bears all.
        (0.0, 0.0, 8e3, [0.0, 40.0, 40.0]),
    ] {
        let found = of(preload, least, greatest).unwrap();
        near(mpa(found.preload), stress[0]);
        near(mpa(found.amplitude), stress[1]);
        near(mpa(found.mean), stress[2]);
    }
    for (least, greatest, right) in [
        (0.0, 13_333.0, true),
        (0.0, 13_334.0, false),
        (8e3, 8e3, false),
        (8e3, 7e3, false),
        (7.9e3, 8e3, true),
    ] {
        let found = of(10e3, least, greatest);
        assert_eq!(found.is_ok(), right, "{least}");
        if let Err(error) = found {
            assert!(
                alloc::format!("{error}").starts_with("greatest load"),
                "{error}"
            );
        }
    }
    let of = |mean: f64| {
        FatigueStress::new(megapascals(100.0), megapascals(1e-3), megapascals(mean)).is_ok()
    };
    assert!(of(100.0) && of(1099.0));
    assert!(!of(99.999) && !of(1101.0));
}

#[test]
fn aisc_fatigue_has_limits() {
    for (cycles, right) in [
        (20_000.0, true),
        (19_999.0, false),
        (1e12, true),
        (f64::INFINITY, false),
        (f64::NAN, false),
    ] {
        let found = AiscFatigue::of_stress(ksi(5.0), cycles);
        assert_eq!(found.is_ok(), right, "{cycles}");
    }
    let found = AiscFatigue::of_stress(ksi(3.5), 1e9).unwrap();
    near(found.utilisation.value, 0.5);
    found.derivation().check().unwrap();
    let range = |clamping| AiscFatigue::assumed_range(kips(10.0), clamping).unwrap();
    near(
        range(AiscClamping::PretensionedSteel).value,
        kips(2.0).value,
    );
    near(range(AiscClamping::Other).value, kips(10.0).value);
    let half = thread("1/2-13 UNC");
    let found = AiscFatigue::tension(&half, kips(1.0), 1e6).unwrap();
    near(
        found.range.value,
        (kips(1.0) / half.tensile_stress_area()).value,
    );
}

/// 0.85 (150 / d + 45), times 2 - q where the thread is rolled last; M4 to M39, 10 000 to 2 000 000 cycles.
#[test]
fn vdi_fatigue_by_hand() {
    use VdiThread::{RolledAfterHeatTreatment, RolledBeforeHeatTreatment};
    let late = |preload_ratio| RolledAfterHeatTreatment { preload_ratio };
    let of = |d: f64, thread| VdiFatigueStrength::new(millimetres(d), thread);
    for (d, thread, right) in [
        (4.0, RolledBeforeHeatTreatment, Some(70.125)),
        (12.0, RolledBeforeHeatTreatment, Some(48.875)),
        (39.0, RolledBeforeHeatTreatment, Some(41.519_23)),
        (3.999, RolledBeforeHeatTreatment, None),
        (39.001, RolledBeforeHeatTreatment, None),
        (12.0, late(0.3), Some(48.875 * 1.7)),
        (12.0, late(0.7), Some(48.875 * 1.3)),
        (12.0, late(0.999), Some(48.875 * 1.001)),
        (12.0, late(0.299), None),
        (12.0, late(1.0), None),
        (12.0, late(f64::NAN), None),
    ] {
        match (of(d, thread), right) {
            (Ok(found), Some(right)) => near(mpa(found.amplitude), right),
            (found, right) => assert_eq!(found.is_ok(), right.is_some(), "{d} {thread:?}"),
        }
    }
    for (thread, cycles, factor) in [
        (RolledBeforeHeatTreatment, 1e4, Some(5.848_035)),
        (late(0.7), 1e4, Some(2.418_271)),
        (RolledBeforeHeatTreatment, 2.5e5, Some(2.0)),
        (RolledBeforeHeatTreatment, 2e6, Some(1.0)),
        (RolledBeforeHeatTreatment, 9_999.0, None),
        (RolledBeforeHeatTreatment, 2_000_001.0, None),
    ] {
        let whole = of(12.0, thread).unwrap();
        match (whole.for_cycles(cycles), factor) {
            (Ok(found), Some(factor)) => {
                near(mpa(found.amplitude), mpa(whole.amplitude) * factor);
                // Asked again it begins from the whole.
                let again = found.for_cycles(2e6).unwrap();
                near(mpa(again.amplitude), mpa(whole.amplitude));
                assert_eq!(count(&found.cautions()), 1);
            }
            (found, factor) => assert_eq!(found.is_ok(), factor.is_some(), "{cycles}"),
        }
    }
    // 2 kN of range on 84.27 mm2.
    let joint = quarter(10e3);
    for strength in [RolledBeforeHeatTreatment, late(0.7)] {
        let strength = of(12.0, strength).unwrap();
        let on =
            |text| VdiFatigue::new(strength, &joint, &thread(text), newtons(0.0), newtons(8e3));
        let found = on("M12").unwrap();
        near(mpa(found.amplitude), 11.867_1);
        near(found.safety, mpa(strength.amplitude) / 11.867_1);
        found.derivation().check().unwrap();
        assert!(on("M14").is_err());
        assert!(on("1/2-13 UNC").is_err());
    }
}

#[test]
fn en_fatigue_has_limits() {
    use EnFatigueDetail::{Shear, Tension};
    use PropertyClass::{Class4_6, Class5_6, Class8_8, Class10_9, Class12_9};
    for (detail, cycles, right) in [
        (Tension, 10_000.0, true),
        (Tension, 9_999.0, false),
        (Shear, 100_000.0, true),
        (Shear, 99_999.0, false),
        (Tension, f64::INFINITY, false),
        (Tension, f64::NAN, false),
    ] {
        let factor = GammaMf::SafeLifeLow;
        let range = megapascals(10.0);
        let found = EnFatigue::of_stress(detail, millimetres(16.0), range, cycles, factor);
        assert_eq!(found.is_ok(), right, "{cycles}");
    }
    for (factor, right) in [
        (GammaMf::DamageTolerantLow, Some(1.0)),
        (GammaMf::DamageTolerantHigh, Some(1.15)),
        (GammaMf::SafeLifeLow, Some(1.15)),
        (GammaMf::SafeLifeHigh, Some(1.35)),
        (GammaMf::Stated(1.0), Some(1.0)),
        (GammaMf::Stated(10.0), Some(10.0)),
        (GammaMf::Stated(0.999), None),
        (GammaMf::Stated(10.001), None),
    ] {
        assert_eq!(factor.value().ok(), right, "{factor:?}");
    }
    let shear = |class: PropertyClass, zone, fitted, least: f64, greatest: f64| {
        let forces = (kilonewtons(least), kilonewtons(greatest));
        let grade = BoltGrade::Iso(class);
        let factor = GammaMf::DamageTolerantLow;
        EnFatigue::shear(millimetres(20.0), grade, zone, fitted, forces, 2e6, factor)
    };
    for (class, zone, fitted, least, greatest, right) in [
        (Class8_8, Zone::Shank, false, 0.0, 10.0, true),
        (Class5_6, Zone::Shank, false, 0.0, 10.0, true),
        (Class10_9, Zone::Shank, false, 0.0, 10.0, true),
        (Class4_6, Zone::Shank, false, 0.0, 10.0, false),
        (Class12_9, Zone::Shank, false, 0.0, 10.0, false),
        (Class8_8, Zone::Thread, false, 0.0, 10.0, false),
        // The force may change its way in fitted holes only.
        (Class8_8, Zone::Shank, false, -10.0, 0.0, true),
        (Class8_8, Zone::Shank, false, -0.1, 9.9, false),
        (Class8_8, Zone::Shank, false, -10.0, 0.1, false),
        (Class8_8, Zone::Shank, true, -5.0, 5.0, true),
        (Class8_8, Zone::Shank, true, 5.0, 5.0, false),
    ] {
        let found = shear(class, zone, fitted, least, greatest);
        assert_eq!(found.is_ok(), right, "{class:?} {least} {greatest}");
        if let (Err(error), true) = (&found, fitted) {
            assert!(alloc::format!("{error}").starts_with("greatest force across"));
        }
        let Ok(found) = found else { continue };
        // 10 kN on 314.16 mm2 of the category of 100 MPa.
        near(found.utilisation.value, 10e3 / 314.159_3 / 100.0);
        assert_eq!(count(&found.cautions()), 1);
        found.derivation().check().unwrap();
    }
    let metric = EnFatigue::tension(&thread("M16"), kilonewtons(1.0), 2e6, GammaMf::SafeLifeHigh);
    let metric = metric.unwrap();
    assert_eq!(count(&metric.cautions()), 1);
    metric.derivation().check().unwrap();
}

/// Thread in the grip by the textbook: 2 d + 6, 12, 25 mm to 125, 200 mm and over; 2 d + 1/4 and 1/2 in to 6 in and over.
#[test]
fn textbook_thread_lengths() {
    for (text, length, grip, shank) in [
        ("M12", 125.0, 100.0, 95.0),
        ("M12", 125.1, 100.0, 89.1),
        ("M12", 200.0, 190.0, 164.0),
        ("M12", 200.1, 190.0, 151.1),
        ("M12", 20.0, 20.0, 0.0),
        ("M12", 125.0, 60.0, 60.0),
        ("1/2-13 UNC", 152.4, 140.0, 120.65),
        ("1/2-13 UNC", 152.5, 140.0, 114.4),
    ] {
        let [l, g] = [length, grip].map(millimetres);
        let found = GripSections::textbook(&thread(text), l, g).unwrap();
        near(mm(found.shank), shank);
        near(mm(found.grip()), grip);
    }
    let of = |grip: f64| {
        GripSections::textbook(&thread("M12"), millimetres(50.0), millimetres(grip)).is_ok()
    };
    assert!(of(50.0));
    assert!(!of(50.001));
    let grip = |tapped: f64| {
        mm(cap_screw_grip(millimetres(20.0), millimetres(tapped), millimetres(12.0)).unwrap())
    };
    near(grip(30.0), 26.0);
    near(grip(12.0), 26.0);
    near(grip(8.0), 24.0);
}

/// M12: 113.097, 84.266 and 76.247 mm2; 20 mm of shank and 10 mm of thread, 205 GPa.
#[test]
fn bolt_stiffness_by_hand() {
    let m12 = thread("M12");
    let sections = GripSections::new(millimetres(20.0), millimetres(10.0)).unwrap();
    let steel = megapascals(205e3);
    let (an, at, a3) = (113.0973, 84.2665, 76.2474);
    let plain = BoltStiffness::shigley(&m12, sections, steel).unwrap();
    near(plain.stiffness.value, 205e6 / (20.0 / an + 10.0 / at));
    assert_eq!(count(&plain.cautions()), 0);
    plain.derivation().check().unwrap();
    let nut = ThreadedEnd::Nut { modulus: steel };
    let hole = ThreadedEnd::TappedHole {
        modulus: megapascals(70e3),
    };
    for (head, end, all) in [
        (
            BoltHead::Hexagon,
            nut,
            (6.0 + 20.0 + 4.8) / an + (10.0 + 6.0) / a3,
        ),
        (
            BoltHead::SocketCap,
            nut,
            (4.8 + 20.0 + 4.8) / an + (10.0 + 6.0) / a3,
        ),
        (
            BoltHead::Hexagon,
            hole,
            (6.0 + 20.0 + 3.96 * 205.0 / 70.0) / an + (10.0 + 6.0) / a3,
        ),
    ] {
        let found = BoltStiffness::vdi_2230(&m12, sections, head, steel, end).unwrap();
        near(found.stiffness.value, 205e6 / all);
        assert_eq!(count(&found.cautions()), 1);
        found.derivation().check().unwrap();
    }
    let rod = rod_stiffness(square_millimetres(100.0), steel, millimetres(50.0));
    near(rod.unwrap().value, 410e6);
    for (area, modulus, length, right) in [
        (1e-6, 1e9, 1.0, true),
        (0.9e-6, 1e9, 1.0, false),
        (1e12, 1e-3, 1e3, true),
        (1.1e12, 1e-3, 1e3, false),
    ] {
        let (area, modulus) = (square_millimetres(area), megapascals(modulus));
        let rod = rod_stiffness(area, modulus, millimetres(length));
        assert_eq!(rod.is_ok(), right, "{area:?}");
    }
}

fn layer(thickness: f64) -> Layer {
    Layer::new(millimetres(thickness), megapascals(205e3)).unwrap()
}

#[test]
fn members_by_hand() {
    use WilemanMaterial::{Aluminium, Copper, General, GrayCastIron, Steel};
    let all = [2e5, 3e5, 6e5].map(newtons_per_millimetre);
    near(in_series(&all).unwrap().value, 1e8);
    assert!(in_series(&[]).is_err());
    let tube = |outside: f64, hole: f64| {
        hollow_cylinder(millimetres(outside), millimetres(hole), layer(40.0))
    };
    // 205 GPa x pi (30^2 - 14^2) / 160 mm
    near(tube(30.0, 14.0).unwrap().stiffness.value, 2.833_717e9);
    tube(30.0, 14.0).unwrap().derivation().check().unwrap();
    assert!(tube(14.000_001, 14.0).is_err());
    assert!(tube(14.001, 14.0).is_ok());
    for (material, recalled) in [
        (Steel, 0),
        (Aluminium, 1),
        (Copper, 1),
        (GrayCastIron, 0),
        (General, 0),
    ] {
        let found = wileman(material, millimetres(12.0), layer(40.0)).unwrap();
        assert_eq!(count(&found.cautions()), recalled, "{material:?}");
        found.derivation().check().unwrap();
    }
    // 205 GPa x 12 mm x 0.78715 exp(0.62873 x 0.3)
    let steel = wileman(Steel, millimetres(12.0), layer(40.0)).unwrap();
    near(steel.stiffness.value, 2.338_346e9);
}

/// dh = 13.5, dw = 16.6, l = 30 mm: tangent 0.362 + 0.032 ln(l / 2 dw) + 0.153 ln(DA / dw) of a through bolt.
#[test]
fn vdi_plates_by_hand() {
    use ClampEnd::{TappedHole, ThroughBolt};
    let of = |end, outside: f64| {
        VdiPlates::new(
            end,
            millimetres(13.5),
            millimetres(16.6),
            millimetres(outside),
        )
    };
    for (end, outside, right, cones) in [
        (ThroughBolt, 60.0, 0.555_353, 30.0),
        (ThroughBolt, 25.0, 0.421_405, 19.933),
        (TappedHole, 60.0, 0.603_687, 30.0),
        (TappedHole, 25.0, 0.434_72, 9.661_4),
        (ThroughBolt, 16.6, 0.358_757, 0.0),
    ] {
        let found = of(end, outside).unwrap().stiffness(layer(30.0)).unwrap();
        found.derivation().check().unwrap();
        assert_eq!(count(&found.cautions()), 1);
        let MembersMethod::Vdi2230 {
            tangent,
            cone_length,
            ..
        } = found.method
        else {
            panic!("{found:?}");
        };
        assert!((tangent - right).abs() < 2e-5, "{tangent} {right}");
        assert!((mm(cone_length) - cones).abs() < 2e-3, "{cone_length:?}");
    }
    assert!(of(ThroughBolt, 16.599).is_err());
    let face = |face: f64| {
        let [hole, face, outside] = [13.5, face, 60.0].map(millimetres);
        VdiPlates::new(ThroughBolt, hole, face, outside).is_ok()
    };
    assert!(face(13.501));
    assert!(!face(13.500_001));
}

/// Cones meet at half the grip, wherever the layers do.
#[test]
fn cones_through_layers() {
    let cones = Cones::new(millimetres(12.0), millimetres(18.0), degrees(30.0)).unwrap();
    let wide = 18.0 + 2.0 * 10.0 * 0.577_350_3;
    for (layers, pieces) in [
        (&[15.0, 15.0][..], &[(15.0, 18.0), (15.0, 18.0)][..]),
        (&[10.0, 20.0], &[(10.0, 18.0), (5.0, wide), (15.0, 18.0)]),
        (&[20.0, 10.0], &[(15.0, 18.0), (5.0, wide), (10.0, 18.0)]),
        (
            &[10.0, 10.0, 10.0],
            &[(10.0, 18.0), (5.0, wide), (5.0, wide), (10.0, 18.0)],
        ),
        (&[30.0], &[(15.0, 18.0), (15.0, 18.0)]),
    ] {
        let layers: alloc::vec::Vec<_> = layers.iter().map(|&t| layer(t)).collect();
        let found = cones.frusta(&layers).unwrap();
        assert_eq!(found.pieces.len(), pieces.len());
        for (piece, (thickness, small)) in found.pieces.iter().zip(pieces) {
            near(mm(piece.thickness), *thickness);
            near(mm(piece.small_diameter), *small);
        }
        found.derivation().check().unwrap();
        let whole = cones.identical(layer(30.0)).unwrap();
        near(found.stiffness.value, whole.stiffness.value);
        near(
            cones.stiffness(&layers).unwrap().value,
            whole.stiffness.value,
        );
        whole.derivation().check().unwrap();
        assert_eq!(count(&whole.cautions()), 0);
    }
    // To 40 frusta stand in one step; 42 in two groups.
    for (layers, steps) in [(40, 41), (41, 45)] {
        let layers = alloc::vec![layer(1.0); layers];
        let derivation = cones.frusta(&layers).unwrap().derivation();
        assert_eq!(derivation.steps().len(), steps);
        derivation.check().unwrap();
    }
    assert!(cones.stiffness(&[]).is_err());
    // A film between metres, around a hole of next to nothing: its frustum is as stiff as no number says.
    let needle = Cones::new(millimetres(1e-4), millimetres(1.5e-4), degrees(30.0)).unwrap();
    assert!(
        needle
            .frusta(&[layer(20e3), layer(1e-5), layer(25e3)])
            .is_err()
    );
}

#[test]
fn cones_have_limits() {
    for (bearing, angle, right) in [
        (18.0, 1.0, true),
        (18.0, 60.0, true),
        (18.0, 0.999, false),
        (18.0, 60.001, false),
        (12.001, 30.0, true),
        (12.000_001, 30.0, false),
        (1200.0, 30.0, true),
        (1200.1, 30.0, false),
    ] {
        let found = Cones::new(millimetres(12.0), millimetres(bearing), degrees(angle));
        assert_eq!(found.is_ok(), right, "{bearing} {angle}");
    }
    let cones = Cones::shigley(millimetres(12.0)).unwrap();
    near(mm(cones.bearing_diameter()), 18.0);
    for (small, right) in [
        (12.001, true),
        (12.000_001, false),
        (12e3, true),
        (12.001e3, false),
    ] {
        let found = cones.frustum(layer(15.0), millimetres(small));
        assert_eq!(found.is_ok(), right, "{small}");
    }
    // Shigley, Eq. 8-20: 0.5774 pi E d / ln((1.155 t + D - d)(D + d) / ((1.155 t + D + d)(D - d))), t = 15, D = 18, d = 12.
    let wide = 2.0 * 15.0 * 0.577_350_3_f64;
    let log = crate::math::ln((wide + 6.0) * 30.0 / ((wide + 30.0) * 6.0));
    let stiffness = cones.frustum(layer(15.0), millimetres(18.0)).unwrap();
    near(
        stiffness.value,
        0.577_350_3 * core::f64::consts::PI * 205e9 * 0.012 / log,
    );
}

/// The strongest warnings of a share and of prying go with what is computed from them.
#[test]
fn cautions_are_handed_on() {
    let share = LoadShare::of_constant(0.25)
        .and_then(|share| share.introduced_at(0.5))
        .unwrap();
    let joint = JointDiagram::new(share, newtons(10e3)).unwrap();
    let check = joint.check(newtons(1e3), newtons(20e3)).unwrap();
    assert_eq!(count(&check.cautions()), 1);
    let tee = flange(0.75, 0.8125, 4.1, 2.0, 1.75).unwrap();
    let check = tee.check(kips(20.0), kips(29.8), inches(0.8)).unwrap();
    assert!(matches!(
        check.cautions().iter().next(),
        Some(Caution::AgainstAdvice { .. })
    ));
}
