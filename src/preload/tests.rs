//! Limits of what the forms take, on both sides, and figures worked out by hand.

use super::*;
use crate::caution::{Caution, Cautions};
use crate::strength::shear::AiscEdition;
use crate::tables::pretension::{Pretension, PretensionGroup};
use crate::tables::tightening::TighteningScatter;
use crate::thread::Thread;
use crate::units::{
    Ratio, celsius, degrees, kelvins, kilonewtons, kips, megapascals, micrometres, millimetres,
    newton_metres, newtons, newtons_per_millimetre, percent, ppm_per_kelvin,
};
use core::num::NonZeroU32;

fn thread(text: &str) -> Thread {
    text.parse().unwrap()
}

#[track_caller]
fn near(found: f64, right: f64) {
    assert!(
        (found - right).abs() <= 1e-5 * right.abs(),
        "{found} is not {right}"
    );
}

fn codes(cautions: &Cautions) -> usize {
    cautions.iter().count()
}

fn spread<T>(min: T, nominal: T, max: T) -> Spread<T> {
    Spread { min, nominal, max }
}

/// A coefficient of friction and a nut factor are at most 1, in order, and above zero.
#[test]
fn friction_and_nut_factor_have_limits() {
    for (min, nominal, max, right) in [
        (1.0, 1.0, 1.0, true),
        (0.1, 0.1, 0.1, true),
        (0.9, 1.0, 1.000_001, false),
        (0.2, 0.1, 0.3, false),
        (0.1, 0.3, 0.2, false),
        (0.0, 0.1, 0.2, false),
    ] {
        let friction = Friction::new(min, nominal, max);
        assert_eq!(friction.is_ok(), right, "{min} {nominal} {max}");
        assert_eq!(NutFactor::new(min, nominal, max).is_ok(), right);
        if let Ok(friction) = friction {
            assert_eq!(
                (friction.min(), friction.nominal(), friction.max()),
                (min, nominal, max)
            );
        }
    }
}

/// M12 (P = 1.75 mm, d2 = 10.8633 mm) with Db = 15 mm: P/(2 pi) = 0.278521 mm, d2/(2 cos 30) = 6.271929 mm, Db/2 = 7.5 mm.
#[test]
fn friction_of_a_measured_torque() {
    let m12 = thread("M12");
    let (preload, face) = (kilonewtons(40.0), millimetres(15.0));
    // (80/40 - 0.278521) / (6.271929 + 7.5)
    near(
        total_friction(newton_metres(80.0), preload, &m12, face).unwrap(),
        0.125_000_0,
    );
    // (1 - 0.278521) / 6.271929
    near(
        thread_friction(newton_metres(40.0), preload, &m12).unwrap(),
        0.115_032_9,
    );
    // 2 x 0.9 / 15
    near(
        bearing_friction(newton_metres(36.0), preload, face).unwrap(),
        0.12,
    );
    // K = 0.2: (2.4 - 0.278521) / 13.771929
    let k = NutFactor::new(0.1, 0.2, 0.3).unwrap();
    let friction = Friction::from_nut_factor(k, &m12, face).unwrap();
    near(friction.min(), 0.066_910_1);
    near(friction.nominal(), 0.154_043_6);
    near(friction.max(), 0.241_177_1);
    // 0.278521 mm x 40 kN = 11.14 N m turns the nut without any friction.
    for (torque, right) in [(11.15, true), (11.13, false), (5.0, false), (0.0, false)] {
        let torque = newton_metres(torque);
        let total = total_friction(torque, preload, &m12, face);
        assert_eq!(total.is_ok(), right, "{torque:?}");
        assert_eq!(thread_friction(torque, preload, &m12).is_ok(), right);
    }
    // 0.278521 / 12 = 0.0232101
    for (least, right) in [(0.023_22, true), (0.023_20, false)] {
        let k = NutFactor::new(least, 0.2, 0.3).unwrap();
        let friction = Friction::from_nut_factor(k, &m12, face);
        assert_eq!(friction.is_ok(), right, "{least}");
        if let Err(error) = friction {
            assert!(alloc::format!("{error}").contains("0.0232"), "{error}");
        }
    }
}

/// The nut factor of a bare pitch is refused by its own name, also where no friction is left to the last bit.
#[test]
fn nut_factor_of_a_bare_pitch() {
    let mut met = 0;
    for text in ["M4", "M6", "M8", "M10", "M12", "M16", "M20", "M24", "M30"] {
        let (thread, two_pi) = (thread(text), 2.0 * core::f64::consts::PI);
        let bare = thread.lead().value / two_pi;
        let least = bare / thread.nominal_diameter().value;
        #[allow(clippy::float_cmp)]
        if least * thread.nominal_diameter().value == bare {
            met += 1;
            let k = NutFactor::new(least, 0.2, 0.3).unwrap();
            let error = Friction::from_nut_factor(k, &thread, millimetres(15.0)).unwrap_err();
            let error = alloc::format!("{error}");
            assert!(error.starts_with("nut factor is"), "{error}");
        }
    }
    assert!(met > 0);
}

/// The mean of two limits where the publisher gives no nominal value, and no range where he gives one value.
#[test]
fn ranges_of_tables() {
    for row in crate::tables::friction::NutFactorRow::all() {
        let found = NutFactor::from_row(row);
        match (row.k_min, row.k_max, row.k_nominal) {
            (Some(min), Some(max), nominal) => {
                let found = found.unwrap();
                assert_eq!((found.min(), found.max()), (min, max));
                near(found.nominal(), nominal.unwrap_or(f64::midpoint(min, max)));
            }
            _ => assert!(found.is_err()),
        }
    }
    for row in crate::tables::friction::FrictionClassRow::all() {
        match row.friction_max {
            Some(max) => {
                let found = Friction::of_class(row.class).unwrap();
                assert_eq!((found.min(), found.max()), (row.friction_min, max));
                near(found.nominal(), f64::midpoint(row.friction_min, max));
            }
            None => assert!(Friction::of_class(row.class).is_err()),
        }
    }
}

/// Db of a face of 18 mm over a hole of 13 mm: (18 + 13) / 2, and 2/3 (18^3 - 13^3) / (18^2 - 13^2).
#[test]
fn a_face_is_wider_than_its_hole() {
    let of = |outer, hole| BearingFace::new(millimetres(outer), millimetres(hole));
    let face = of(18.0, 13.0).unwrap();
    near(
        face.effective_diameter(BearingPressure::UniformWear).value,
        0.0155,
    );
    near(
        face.effective_diameter(BearingPressure::UniformPressure)
            .value,
        1e-3 * (2.0 / 3.0) * (5832.0 - 2197.0) / (324.0 - 169.0),
    );
    assert_eq!(
        (face.outer(), face.hole()),
        (millimetres(18.0), millimetres(13.0))
    );
    for (outer, hole, right) in [
        (13.001, 13.0, true),
        (13.0, 13.0, false),
        (12.999, 13.0, false),
        (13.0, 0.0, false),
        (1e6, 13.0, true),
        (1.1e6, 13.0, false),
    ] {
        assert_eq!(of(outer, hole).is_ok(), right, "{outer} {hole}");
    }
}

/// T = K F d with a drag: K d = 1.2, 2.4, 3.6 mm; drag 2, 5, 8 N m.
#[test]
fn drag_comes_off_before_the_bolt_is_stretched() {
    let k = NutFactor::new(0.1, 0.2, 0.3).unwrap();
    let lock = spread(newton_metres(2.0), newton_metres(5.0), newton_metres(8.0));
    let form = ShortForm::new(k, millimetres(12.0)).unwrap();
    let locked = form.with_prevailing(lock).unwrap();
    let preload = locked.preload(newton_metres(80.0)).unwrap();
    near(preload.min.value, 72.0 / 3.6e-3);
    near(preload.nominal.value, 75.0 / 2.4e-3);
    near(preload.max.value, 78.0 / 1.2e-3);
    let torque = locked.torque(kilonewtons(10.0)).unwrap();
    near(torque.min.value, 14.0);
    near(torque.nominal.value, 29.0);
    near(torque.max.value, 44.0);
    // A torque of the drag itself leaves no preload; less is none.
    let none = locked.preload(newton_metres(8.0)).unwrap();
    assert_eq!(none.min, newtons(0.0));
    let short = alloc::format!("{}", locked.preload(newton_metres(7.999)).unwrap_err());
    assert!(short.contains("at least 8.00 N m"), "{short}");
    assert_eq!(
        form.preload(newton_metres(0.0)).unwrap(),
        Spread::exact(newtons(0.0))
    );
    let short = alloc::format!("{}", form.preload(newton_metres(-0.001)).unwrap_err());
    assert!(short.contains("not negative"), "{short}");
    assert_eq!(
        form.torque(newtons(0.0)).unwrap(),
        Spread::exact(newton_metres(0.0))
    );
    assert!(form.torque(newtons(-0.001)).is_err());
    assert!(form.torque(newtons(f64::INFINITY)).is_err());
    locked
        .derivation(newton_metres(80.0))
        .unwrap()
        .check()
        .unwrap();
    let within = spread(
        newton_metres(70.0),
        newton_metres(80.0),
        newton_metres(90.0),
    );
    let within = locked.preload_within(within).unwrap();
    near(within.min.value, 62.0 / 3.6e-3);
    near(within.max.value, 88.0 / 1.2e-3);
}

/// EN 1090-2: 0.75 and 1.10 of km d Fp,C, here 0.125 x 20 mm x 172 kN = 430 N m.
#[test]
fn steps_of_the_torque_method() {
    let steps = EnTorque::new(0.125, millimetres(20.0), kilonewtons(172.0)).unwrap();
    near(steps.reference.value, 430.0);
    near(steps.first_step.value, 322.5);
    near(steps.second_step.value, 473.0);
    steps.derivation().check().unwrap();
}

/// M12 by the linear form: thread arm 0.278521 + 6.271929 mu, face arm 7.5 mu; off, the pitch helps.
#[test]
fn linear_form_by_hand() {
    let m12 = thread("M12");
    let mu = Friction::new(0.10, 0.12, 0.16).unwrap();
    let muk = Friction::new(0.08, 0.10, 0.14).unwrap();
    let form = FrictionForm::linear(&m12, millimetres(15.0), mu, muk).unwrap();
    let lock = spread(newton_metres(1.0), newton_metres(2.0), newton_metres(3.0));
    let form = form.with_prevailing(lock).unwrap();
    let on = form.torque(kilonewtons(10.0)).unwrap();
    near(on.min.value, 10.0 * (0.278_521 + 0.627_192_9 + 0.6) + 1.0);
    near(
        on.nominal.value,
        10.0 * (0.278_521 + 0.752_631_5 + 0.75) + 2.0,
    );
    near(on.max.value, 10.0 * (0.278_521 + 1.003_508_7 + 1.05) + 3.0);
    let off = form.loosening_torque(kilonewtons(10.0)).unwrap();
    near(off.min.value, 10.0 * (-0.278_521 + 0.627_192_9 + 0.6) + 1.0);
    near(
        off.nominal.value,
        10.0 * (-0.278_521 + 0.752_631_5 + 0.75) + 2.0,
    );
    near(
        off.max.value,
        10.0 * (-0.278_521 + 1.003_508_7 + 1.05) + 3.0,
    );
    let k = form.nut_factor().unwrap();
    near(k.nominal(), (0.278_521 + 0.752_631_5 + 0.75) / 12.0);
    let split = form.split(kilonewtons(10.0)).unwrap();
    near(split.pitch.value, 2.785_21);
    near(split.thread.value, 7.526_315);
    near(split.bearing.value, 7.5);
    near(split.prevailing.value, 2.0);
    near(split.total.value, 19.811_525);
    near(split.share(split.bearing).value, 7.5 / 19.811_525);
    split.derivation().check().unwrap();
    form.derivation(newton_metres(20.0))
        .unwrap()
        .check()
        .unwrap();
    assert_eq!(codes(&split.cautions()), 0);
    // No torque has no shares.
    let free = form
        .with_prevailing(Spread::exact(newton_metres(0.0)))
        .unwrap();
    let nothing = free.split(newtons(0.0)).unwrap();
    assert_eq!(nothing.share(nothing.total), Ratio::default());
    let three = FrictionForm::three_term(&m12, millimetres(5.4), millimetres(7.5), mu, muk);
    // Motosh, recalled: 2 x 5.4 and 2 x 7.5.
    let three = three.unwrap();
    assert_eq!(three.thread_diameter(), millimetres(10.8));
    assert_eq!(three.bearing_diameter(), millimetres(15.0));
    assert_eq!(codes(&three.cautions()), 1);
    near(
        three.torque(kilonewtons(10.0)).unwrap().nominal.value,
        10.0 * (0.278_521 + 5.4 * 0.12 / 0.866_025_4 + 0.75),
    );
}

/// The lead-angle form seizes at mu = cos(alpha) / tan(lambda): of 20 starts on M12, with dm of 10.5 mm
/// tan(lambda) = 35 / (10.5 pi) = 1.061033, so at 0.816210.
#[test]
fn a_steep_thread_seizes() {
    let steep = thread("M12xPh35P1.75");
    let of = |mu: f64| {
        let mu = Friction::new(0.1, 0.1, mu).unwrap();
        let muk = Friction::new(0.1, 0.1, 0.1).unwrap();
        FrictionForm::power_screw(&steep, millimetres(10.5), millimetres(15.0), mu, muk)
    };
    let below = of(0.816).unwrap();
    // On: 5.25 (1.061033 + 0.115470) / (1 - 0.115470 x 1.061033) + 0.75
    near(
        below.torque(kilonewtons(1.0)).unwrap().nominal.value,
        5.25 * 1.176_503 / 0.877_482_5 + 0.75,
    );
    // Off: 5.25 (0.115470 - 1.061033) / (1 + 0.115470 x 1.061033) + 0.75: it turns by itself.
    near(
        below
            .loosening_torque(kilonewtons(1.0))
            .unwrap()
            .nominal
            .value,
        5.25 * -0.945_563 / 1.122_517_5 + 0.75,
    );
    let above = alloc::format!("{}", of(0.8163).unwrap_err());
    assert!(above.contains("at most 0.816"), "{above}");
    assert!(of(0.816_20).is_ok());
    assert!(of(0.816_22).is_err());
    // At the limit itself the denominator is zero, or what rounding leaves of it.
    let tangent = steep.lead().value / (core::f64::consts::PI * millimetres(10.5).value);
    assert!(of(1.0 / (tangent * friction::FLANK)).is_err());
}

/// A nut stays where mu > tan(lambda) cos(alpha), and not where both are the same.
#[test]
fn friction_as_large_as_the_slope_does_not_hold_a_nut() {
    let mut met = 0;
    for text in ["M4", "M6", "M8", "M10", "M12", "M16", "M20", "M24", "M30"] {
        let thread = thread(text);
        let mean = 0.9 * thread.nominal_diameter();
        let slope = thread.lead().value / (core::f64::consts::PI * mean.value);
        let holds = |mu: f64| {
            let least = Friction::new(mu, 0.5, 0.5).unwrap();
            FrictionForm::power_screw(&thread, mean, 1.5 * mean, least, least)
                .unwrap()
                .is_self_locking()
        };
        let mu = slope / friction::FLANK;
        assert!(holds(mu * 1.000_001) && !holds(mu * 0.999_999), "{text}");
        // The product is the slope to the last bit of some.
        #[allow(clippy::float_cmp)]
        if mu * friction::FLANK == slope {
            met += 1;
            assert!(!holds(mu), "{text}");
        }
    }
    assert!(met > 0);
}

/// Shigley: the mean diameter is that of d and the root; the collar is 1.25 d.
#[test]
fn lead_angle_takes_the_mean_of_crest_and_root() {
    let mu = Friction::new(0.15, 0.15, 0.15).unwrap();
    // 1/2-13: Ar = 0.1257 in2 as printed, dr = 0.40006 in.
    let form = FrictionForm::shigley(&thread("1/2-13 UNC"), mu, mu).unwrap();
    near(form.thread_diameter().value, 0.450_029 * 25.4e-3);
    near(form.bearing_diameter().value, 0.625 * 25.4e-3);
    // M12: dr = 12 - 1.226869 x 1.75 = 9.852979 mm.
    let form = FrictionForm::shigley(&thread("M12"), mu, mu).unwrap();
    near(form.thread_diameter().value, 10.926_490e-3);
}

/// Nominal at the target and greatest at the proof load warn of nothing; just beyond they do, the stronger first.
#[test]
fn preload_beside_the_proof_load() {
    let of = |nominal: f64, max: f64| {
        let preload = spread(
            newtons(nominal),
            newtons(nominal),
            newtons(max.max(nominal)),
        );
        proof_use(preload, newtons(100.0), PreloadTarget::Reusable).unwrap()
    };
    let word = |usage: &ProofUse| {
        usage
            .cautions()
            .iter()
            .map(|caution| match caution {
                Caution::PreloadAboveProof { fraction } => ("proof", fraction.value),
                Caution::PreloadAboveTarget { fraction, target } => {
                    assert_eq!(*target, percent(75.0));
                    ("target", fraction.value)
                }
                other => panic!("{other:?}"),
            })
            .next()
    };
    assert_eq!(word(&of(75.0, 100.0)), None);
    assert_eq!(word(&of(75.000_000_01, 100.0)), None);
    assert_eq!(word(&of(75.001, 90.0)), Some(("target", 0.9)));
    assert_eq!(word(&of(75.0, 100.001)).unwrap().0, "proof");
    assert_eq!(word(&of(80.0, 110.0)), Some(("proof", 1.1)));
    // What rounding leaves of 75 %.
    let rounded = Spread::exact(newtons(0.75 * (1.0 + 1e-9)));
    let usage = proof_use(rounded, newtons(1.0), PreloadTarget::Reusable).unwrap();
    assert_eq!(codes(&usage.cautions()), 0);
    let usage = of(80.0, 110.0);
    assert_eq!(usage.fraction.nominal, percent(80.0));
    usage.derivation().check().unwrap();
    let preload = Spread::exact(newtons(70.0));
    for (target, right) in [
        (PreloadTarget::Reusable, true),
        (PreloadTarget::Permanent, true),
        (PreloadTarget::JuvinallMarshek, true),
        (PreloadTarget::En1993, false),
        (PreloadTarget::En1993German, false),
        (PreloadTarget::Is800, false),
    ] {
        assert_eq!(
            proof_use(preload, newtons(100.0), target).is_ok(),
            right,
            "{target}"
        );
    }
}

/// Scatter is the greatest the publisher prints, or (alpha - 1) / (alpha + 1).
#[test]
fn scatter_of_publishers() {
    for row in TighteningScatter::all() {
        let right = match (row.scatter_max, row.tightening_factor_max) {
            (Some(scatter), _) => scatter.value,
            (None, Some(factor)) => (factor - 1.0) / (factor + 1.0),
            (None, None) => {
                assert!(scatter_of(row).is_err());
                continue;
            }
        };
        near(scatter_of(row).unwrap().value, right);
        let preload = scattered(kilonewtons(10.0), row).unwrap();
        near(preload.min.value, 10e3 * (1.0 - right));
        near(preload.nominal.value, 10e3);
        near(preload.max.value, 10e3 * (1.0 + right));
    }
    near(tightening_factor(percent(25.0)).unwrap(), 1.25 / 0.75);
    near(tightening_factor(percent(0.0)).unwrap(), 1.0);
    assert!(tightening_factor(percent(99.999)).is_ok());
    for bad in [percent(100.0), percent(101.0), percent(-1.0)] {
        assert!(tightening_factor(bad).is_err(), "{bad:?}");
    }
}

/// 40 kN, 25 %, torque from 95 to 105 %, four bolts: least 40 x 0.95 (1 - 0.25 / 2) = 33.25 kN, greatest 40 x 1.05 x 1.25
/// = 52.5 kN; 5 % of the least relax.
#[test]
fn nasa_range_by_hand() {
    let plain = NasaPreload::new(kilonewtons(40.0), percent(25.0)).unwrap();
    let range = plain.range().unwrap();
    near(range.initial.min.value, 30e3);
    near(range.settling.value, 1.5e3);
    near(range.service_min.value, 28.5e3);
    near(range.service_max.value, 50e3);
    let nasa = plain
        .with_torque_tolerance(percent(95.0), percent(105.0))
        .unwrap()
        .not_separation_critical(NonZeroU32::new(4).unwrap())
        .with_creep(kilonewtons(1.0))
        .unwrap()
        .with_thermal(kilonewtons(2.0), kilonewtons(3.0))
        .unwrap();
    let range = nasa.range().unwrap();
    near(range.initial.min.value, 33.25e3);
    near(range.initial.nominal.value, 40e3);
    near(range.initial.max.value, 52.5e3);
    near(range.settling.value, 1662.5);
    near(range.service_min.value, 33.25e3 - 1662.5 - 4e3);
    near(range.service_max.value, 54.5e3);
    range.derivation().check().unwrap();
    // Recalled.
    assert_eq!(codes(&range.cautions()), 1);
    // A loss of all the preload leaves none; more is refused.
    let all = |creep| {
        plain
            .with_relaxation(percent(0.0))
            .and_then(|nasa| nasa.with_creep(newtons(creep)))
            .and_then(|nasa| nasa.range())
    };
    assert_eq!(all(30e3).unwrap().service_min, newtons(0.0));
    assert!(all(30e3 + 0.001).is_err());
    for (least, greatest, right) in [
        (100.0, 100.0, true),
        (100.001, 105.0, false),
        (95.0, 99.999, false),
    ] {
        let found = plain.with_torque_tolerance(percent(least), percent(greatest));
        assert_eq!(found.is_ok(), right, "{least} {greatest}");
    }
    assert!(plain.with_relaxation(percent(100.0)).is_err());
    assert!(plain.with_relaxation(percent(99.9)).is_ok());
    assert!(NasaPreload::new(kilonewtons(40.0), percent(100.0)).is_err());
    assert!(NasaPreload::new(kilonewtons(0.0), percent(25.0)).is_err());
}

/// 48 kN with alpha = 1.6: least 30 kN, mean 39 kN; 4 kN of embedment and heat.
#[test]
fn vdi_range_by_hand() {
    let vdi = VdiPreload::new(kilonewtons(48.0), 1.6)
        .unwrap()
        .with_embedment_loss(kilonewtons(4.0))
        .unwrap()
        .with_thermal(kilonewtons(2.0), kilonewtons(3.0))
        .unwrap();
    let range = vdi.range().unwrap();
    near(range.initial.min.value, 30e3);
    near(range.initial.nominal.value, 39e3);
    near(range.initial.max.value, 48e3);
    near(range.settling.value, 4e3);
    near(range.service_min.value, 23e3);
    near(range.service_max.value, 50e3);
    range.derivation().check().unwrap();
    assert_eq!(codes(&range.cautions()), 0);
    for (factor, right) in [
        (1.0, true),
        (0.999_999, false),
        (4.0, true),
        (f64::INFINITY, false),
        (f64::NAN, false),
    ] {
        let found = VdiPreload::new(kilonewtons(48.0), factor);
        assert_eq!(found.is_ok(), right, "{factor}");
    }
}

/// The mean and the deviation with n - 1: 90, 100, 110 have 100 and 10.
#[test]
fn a_sample_has_two_at_least() {
    let of = |kn: &[f64]| {
        let all: alloc::vec::Vec<_> = kn.iter().map(|&force| kilonewtons(force)).collect();
        PreloadSample::of(&all)
    };
    assert!(of(&[]).is_err());
    assert!(of(&[90.0]).is_err());
    let two = of(&[90.0, 110.0]).unwrap();
    near(two.standard_deviation.value, 14_142.14);
    let three = of(&[90.0, 100.0, 110.0]).unwrap();
    assert_eq!(three.count, 3);
    near(three.sum.value, 300e3);
    near(three.mean.value, 100e3);
    near(three.standard_deviation.value, 10e3);
    near(three.variation().value, 0.1);
    three.derivation().check().unwrap();
    assert!(of(&[0.0, 0.0]).is_err());
    assert!(of(&[90.0, -1.0]).is_err());
}

/// P = 2 mm, kb = 300, km = 600 kN/mm: k = 200 kN/mm, 400 kN a turn.
#[test]
fn two_springs_by_hand() {
    let of = |pitch: f64, bolt: f64, members: f64| {
        ElasticJoint::new(
            millimetres(pitch),
            newtons_per_millimetre(bolt),
            newtons_per_millimetre(members),
        )
    };
    for joint in [of(2.0, 300e3, 600e3), of(2.0, 600e3, 300e3)] {
        near(joint.unwrap().stiffness().value, 200e6);
    }
    let joint = of(2.0, 300e3, 600e3).unwrap();
    near(joint.preload(degrees(90.0)).unwrap().value, 100e3);
    near(
        joint.turn(kilonewtons(100.0)).unwrap().value,
        degrees(90.0).value,
    );
    near(
        joint.embedment_loss(micrometres(10.0)).unwrap().value,
        2000.0,
    );
    assert_eq!(
        joint.embedment_loss(micrometres(0.0)).unwrap(),
        newtons(0.0)
    );
    assert!(joint.embedment_loss(micrometres(-0.001)).is_err());
    assert!(joint.embedment_loss(micrometres(f64::INFINITY)).is_err());
    for (turn, lost) in [(9.0, 10e3), (89.0, 98_888.89), (90.0, 100e3), (91.0, 100e3)] {
        let loosened = joint.loosened(kilonewtons(100.0), degrees(turn)).unwrap();
        near(loosened.lost.value, lost);
        assert_eq!(loosened.left, loosened.preload - loosened.lost);
        near(loosened.angle_to_zero.value, degrees(90.0).value);
        loosened.derivation().check().unwrap();
    }
    assert!(joint.preload(degrees(-0.001)).is_err());
    assert!(joint.turn(newtons(-0.001)).is_err());
    assert_eq!(joint.preload(degrees(0.0)).unwrap(), newtons(0.0));
}

/// 40 mm of 12 and 24 ppm by 100 K: 0.048 and 0.096 mm, 9.6 kN of 200 kN/mm.
#[test]
fn heat_by_hand() {
    let joint = ElasticJoint::new(
        millimetres(2.0),
        newtons_per_millimetre(300e3),
        newtons_per_millimetre(600e3),
    )
    .unwrap();
    let layer = |ppm, length, change| ThermalLayer {
        expansion: ppm_per_kelvin(ppm),
        length: millimetres(length),
        change: kelvins(change),
    };
    let bolt = layer(12.0, 40.0, 100.0);
    let members = [layer(24.0, 30.0, 100.0), layer(24.0, 10.0, 100.0)];
    let hot = joint.thermal_change(bolt, &members).unwrap();
    near(hot.bolt_growth.value, 48e-6);
    near(hot.member_growth.value, 96e-6);
    near(hot.change.value, 9600.0);
    hot.derivation().check().unwrap();
    near(hot.applied_to(newtons(400.0)).unwrap().value, 10e3);
    let members = [layer(24.0, 40.0, -100.0)];
    let cold = joint
        .thermal_change(layer(12.0, 40.0, -100.0), &members)
        .unwrap();
    near(cold.change.value, -9600.0);
    near(cold.applied_to(newtons(10e3)).unwrap().value, 400.0);
    // No clamp pushes: what is lost leaves none.
    for preload in [9600.0, 9000.0, 0.0] {
        let left = cold.applied_to(newtons(preload)).unwrap();
        assert!(left < newtons(1e-6), "{left:?}");
        assert!(left >= newtons(0.0), "{left:?}");
    }
    assert!(cold.applied_to(newtons(-1.0)).is_err());
}

/// The coldest may be the hottest; twelve layers are written out and thirteen are not.
#[test]
fn a_range_of_temperatures_has_limits() {
    let joint = ElasticJoint::new(
        millimetres(2.0),
        newtons_per_millimetre(300e3),
        newtons_per_millimetre(600e3),
    )
    .unwrap();
    let of = |layers: usize, coldest: f64, hottest: f64| {
        let layers = alloc::vec![(millimetres(2.0), ppm_per_kelvin(24.0)); layers];
        let bolt = ppm_per_kelvin(12.0);
        let [start, cold, hot] = [20.0, coldest, hottest].map(celsius);
        joint.thermal_range(bolt, &layers, start, cold, hot)
    };
    assert!(of(1, 30.0, 30.0).is_ok());
    assert!(of(1, 30.001, 30.0).is_err());
    for (layers, terms) in [(12, 25), (13, 0)] {
        let derivation = of(layers, 0.0, 30.0).unwrap().derivation();
        derivation.check().unwrap();
        let step = derivation
            .steps()
            .iter()
            .find(|step| step.symbol() == "gmh");
        assert_eq!(step.unwrap().terms().len(), terms, "{layers}");
    }
    // 12 ppm more than the bolt over 20 mm by 100 K: 0.024 mm of 200 kN/mm.
    let range = of(10, -80.0, 20.0).unwrap();
    near(range.least().value, -4800.0);
    for (preload, left) in [(5000.0, 200.0), (4800.0, 0.0), (100.0, 0.0)] {
        let preload = range.applied_to(Spread::exact(newtons(preload))).unwrap();
        assert!((preload.min - newtons(left)).abs() < newtons(1e-6));
    }
}

/// M12, As = 84.27 mm2 by formula, d0 = 10.358 mm; 40 kN with a thread arm of 1.2 mm and a drag of 4 N m:
/// 52 N m over pi d0^3 / 12 and / 16.
#[test]
fn tension_and_torsion_by_hand() {
    let m12 = thread("M12");
    // (1.2 - 0.278521) / 6.271929
    let mu = 0.146_921_0;
    let mu = Friction::new(mu, mu, mu).unwrap();
    let form = FrictionForm::linear(&m12, millimetres(15.0), mu, mu).unwrap();
    let form = form
        .with_prevailing(Spread::exact(newton_metres(4.0)))
        .unwrap();
    for (model, torsion) in [
        (TorsionModel::Vdi2230, 178.726),
        (TorsionModel::JisB1083, 238.301),
    ] {
        let stress = form.tightening_stress(kilonewtons(40.0), model).unwrap();
        let close = |found: crate::units::Stress, mpa: f64| {
            assert!(
                (found - megapascals(mpa)).abs() < megapascals(0.05),
                "{found:?} {mpa}"
            );
        };
        near(stress.thread_torque.nominal.value, 52.0);
        close(stress.tension, 474.68);
        close(stress.torsion.nominal, torsion);
        close(
            stress.equivalent.nominal,
            (474.68_f64 * 474.68 + 3.0 * torsion * torsion).sqrt(),
        );
        stress.derivation().check().unwrap();
        let usage = stress.utilisation(megapascals(640.0)).unwrap();
        near(usage.nominal.value, stress.equivalent.nominal.value / 640e6);
        // VDI leaves half of the torsion, which is recalled; another share is one's own.
        let half = TighteningStress::VDI_TORSION_LEFT;
        for (left, right, recalled) in [
            (percent(0.0), true, 0),
            (half, true, 1),
            (percent(100.0), true, 0),
            (percent(100.001), false, 0),
        ] {
            let service = stress.in_service(kilonewtons(5.0), left);
            assert_eq!(service.is_ok(), right, "{left:?}");
            let Ok(service) = service else { continue };
            assert_eq!(codes(&service.cautions()), recalled, "{left:?}");
            close(service.tension, 474.68 * 45.0 / 40.0);
            close(service.torsion, torsion * left.value);
            service.derivation().check().unwrap();
        }
    }
}

/// The assembly preload is what tightens to the share of yield that was asked for, with the friction of either end.
#[test]
fn assembly_preload_reaches_its_share_of_yield() {
    let mu = Friction::new(0.10, 0.12, 0.16).unwrap();
    let form = FrictionForm::linear(&thread("M12"), millimetres(15.0), mu, mu).unwrap();
    let rp = megapascals(640.0);
    let of = |drag: f64, share: f64| {
        form.with_prevailing(Spread::exact(newton_metres(drag)))?
            .assembly_preload(rp, percent(share), TorsionModel::Vdi2230)
    };
    for drag in [0.0, 12.0] {
        let assembly = of(drag, 90.0).unwrap();
        let lock = Spread::exact(newton_metres(drag));
        let form = form.with_prevailing(lock).unwrap();
        let share = |preload, pick: fn(Spread<Ratio>) -> Ratio| {
            let stress = form.tightening_stress(preload, TorsionModel::Vdi2230);
            pick(stress.unwrap().utilisation(rp).unwrap()).value
        };
        near(share(assembly.preload.min, |share| share.max), 0.9);
        near(share(assembly.preload.nominal, |share| share.nominal), 0.9);
        near(share(assembly.preload.max, |share| share.min), 0.9);
        let torque = form.torque(assembly.preload.nominal).unwrap().nominal;
        near(assembly.torque.nominal.value, torque.value);
        let (slippery, rough) = (
            form.torque(assembly.preload.max).unwrap().min,
            form.torque(assembly.preload.min).unwrap().max,
        );
        let low = slippery.value.min(torque.value).min(rough.value);
        let high = slippery.value.max(torque.value).max(rough.value);
        near(assembly.torque.min.value, low);
        near(assembly.torque.max.value, high);
        assembly.derivation().check().unwrap();
    }
    assert!(of(0.0, 100.0).is_ok());
    assert!(of(0.0, 100.001).is_err());
    assert!(of(0.0, 0.0).is_err());
    // The drag alone twists M12 to yield at pi d0^3 / 12 x 640 / sqrt 3 = 290.94 mm3 x 369.5 MPa = 107.5 N m.
    assert!(of(107.4, 100.0).is_ok());
    let over = alloc::format!("{}", of(107.7, 100.0).unwrap_err());
    assert!(over.contains("at most 107.51 N m"), "{over}");
}

/// What the tables of codes print, by edition and thread.
#[test]
fn printed_pretensions() {
    use PretensionGroup::{A325, A490};
    for (size, group, edition, kip) in [
        ("1-1/8-7 UNC", A325, AiscEdition::E2005, 56.0),
        ("1-1/8-7 UNC", A325, AiscEdition::E2010, 56.0),
        ("1-1/8-7 UNC", A325, AiscEdition::E2016, 64.0),
        ("1-1/8-7 UNC", A325, AiscEdition::E2022, 64.0),
        ("7/8-9 UNC", A490, AiscEdition::E2010, 49.0),
    ] {
        let row = Pretension::aisc(&thread(size), group, edition).unwrap();
        assert_eq!(row.pretension, kips(kip), "{size}");
    }
    let of = |size: &str| Pretension::aisc(&thread(size), A325, AiscEdition::E2010);
    assert!(of("M20").is_ok());
    for (size, words) in [
        ("3/4-16 UNF", "coarse thread only"),
        ("M20x1.5", "coarse thread only"),
        ("9/16-12 UNC", "the nearest is 1/2"),
        ("M18", "the nearest is"),
    ] {
        let error = alloc::format!("{}", of(size).unwrap_err());
        assert!(error.contains(words), "{error}");
    }
    for (found, kn) in [
        (Pretension::german(&thread("M12")), 50.0),
        (Pretension::bs_4604(&thread("M20")), 144.0),
        (Pretension::as_4100(&thread("M20")), 145.0),
    ] {
        assert_eq!(found.unwrap().pretension, kilonewtons(kn));
    }
}
