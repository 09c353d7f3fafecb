use alloc::vec::Vec;

use super::*;
use crate::material::SaeGrade;
use crate::units::{fahrenheit, inches, ksi, megapascals, millimetres};

fn ratio(strength: &BoltStrength, temperature: f64) -> Option<f64> {
    let hot = strength.at_temperature(celsius(temperature)).ok()?;
    hot.derivation().check().unwrap();
    Some(hot.ratio.value)
}

/// ISO 898-1:1999 Annex A, recalled: 590, 540, 510, 480 of 640 MPa; VDI 2230 takes nothing off up to 120 C.
#[test]
fn class_8_8_falls_from_120_on() {
    let bolt = PropertyClass::Class8_8.strength(millimetres(20.0)).unwrap();
    assert_eq!(ratio(&bolt, 20.0), Some(1.0));
    assert_eq!(ratio(&bolt, 120.0), Some(1.0));
    // 590 - 50 x 0.5 = 565
    let at_150 = ratio(&bolt, 150.0).unwrap();
    assert!((at_150 - 565.0 / 640.0).abs() < 1e-12);
    assert!((ratio(&bolt, 300.0).unwrap() - 480.0 / 640.0).abs() < 1e-12);
    assert_eq!(ratio(&bolt, 300.1), None);
    assert_eq!(ratio(&bolt, -50.1), None);
    let hot = bolt.at_temperature(celsius(150.0)).unwrap().strength;
    // M20: 660 and 600 MPa in print.
    let close = |a: f64, b: f64| (a / b - 1.0).abs() < 1e-12;
    assert!(close(
        (hot.yield_strength.unwrap() / megapascals(660.0)).value,
        565.0 / 640.0
    ));
    assert!(close(
        (hot.proof_stress.unwrap() / megapascals(600.0)).value,
        565.0 / 640.0
    ));
}

/// ISO 3506-1:1997 Annex F, recalled: 85, 80, 75 and 70 % at 100, 200, 300 and 400 C.
#[test]
fn stainless_falls_from_the_start() {
    let bolt = StainlessClass::A4_70.strength(millimetres(12.0)).unwrap();
    assert_eq!(ratio(&bolt, 30.0), Some(1.0));
    let at = |t| ratio(&bolt, t).unwrap();
    assert!((at(60.0) - 0.925).abs() < 1e-12);
    assert!((at(100.0) - 0.85).abs() < 1e-12);
    assert!((at(150.0) - 0.825).abs() < 1e-12);
    assert!(ratio(&bolt, 401.0).is_none());
    // Class 50 is not in the annex.
    let soft = StainlessClass::A4_50.strength(millimetres(12.0)).unwrap();
    assert_eq!(ratio(&soft, 35.0), Some(1.0));
    assert_eq!(ratio(&soft, 60.0), None);
}

#[test]
fn class_5_6_by_its_own_values() {
    let bolt = PropertyClass::Class5_6.strength(millimetres(12.0)).unwrap();
    assert!((ratio(&bolt, 100.0).unwrap() - 0.9).abs() < 1e-12);
    let soft = PropertyClass::Class4_6.strength(millimetres(12.0)).unwrap();
    assert_eq!(ratio(&soft, 120.0), Some(1.0));
    assert_eq!(ratio(&soft, 121.0), None);
}

#[test]
fn grades_without_values_say_so() {
    let b7 = AstmGrade::A193B7.strength(inches(1.0)).unwrap();
    assert_eq!(ratio(&b7, 100.0), Some(1.0));
    assert!(matches!(
        b7.at_temperature(fahrenheit(700.0)),
        Err(Error::NoValue { .. })
    ));
    let stated = BoltStrength::stated(inches(1.0), None, None, ksi(100.0)).unwrap();
    assert_eq!(ratio(&stated, 35.0), Some(1.0));
    assert_eq!(ratio(&stated, 36.0), None);
    for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        assert!(b7.at_temperature(crate::units::from_base(bad)).is_err());
    }
}

#[test]
fn limits_by_grade() {
    let of = |grade: BoltGrade| {
        let limits = grade.service_temperatures();
        (limits.min(), limits.max())
    };
    assert_eq!(
        of(StainlessClass::C1_70.into()),
        (Some(celsius(-20.0)), Some(celsius(150.0)))
    );
    assert_eq!(
        of(PropertyClass::Class12_9.into()),
        (Some(celsius(-50.0)), Some(celsius(150.0)))
    );
    let cold = Some(fahrenheit(-65.0));
    for grade in [
        BoltGrade::from(SaeGrade::Grade5),
        AstmGrade::A307A.into(),
        AstmGrade::F3125A325Type1.into(),
        AstmGrade::A193B7m.into(),
        AstmGrade::F568m8_8.into(),
    ] {
        assert_eq!(of(grade), (cold, None), "{grade}");
    }
    assert_eq!(
        of(AstmGrade::A193B7.into()),
        (cold, Some(fahrenheit(700.0)))
    );
    for grade in [
        BoltGrade::Stated,
        AstmGrade::A193B8mClass1.into(),
        AstmGrade::F593Group1Cw1.into(),
        AstmGrade::A193B6.into(),
    ] {
        assert_eq!(of(grade), (None, None), "{grade}");
    }
}

/// A hotter bolt is never stronger.
#[test]
fn strength_falls_with_the_temperature() {
    let bolts = [
        PropertyClass::Class8_8.strength(millimetres(12.0)),
        PropertyClass::Class10_9.strength(millimetres(12.0)),
        PropertyClass::Class12_9.strength(millimetres(12.0)),
        PropertyClass::Class5_6.strength(millimetres(12.0)),
        StainlessClass::C3_80.strength(millimetres(12.0)),
        StainlessClass::A2_80.strength(millimetres(12.0)),
    ];
    for bolt in bolts {
        let bolt = bolt.unwrap();
        let ratios: Vec<f64> = (0..=60)
            .map_while(|step| ratio(&bolt, f64::from(step) * 5.0))
            .collect();
        assert_eq!(ratios.len(), 61);
        assert!(ratios.is_sorted_by(|a, b| a >= b), "{}", bolt.grade);
    }
}

/// ISO 898-1 goes down to -50 degrees C, that temperature taken in, and full strength up to 35.
#[test]
fn temperatures_at_their_limits() {
    let bolt = PropertyClass::Class8_8.strength(millimetres(12.0)).unwrap();
    assert_eq!(ratio(&bolt, -50.0), Some(1.0));
    assert_eq!(ratio(&bolt, -50.001), None);
    let a4 = StainlessClass::A4_70.strength(millimetres(12.0)).unwrap();
    assert_eq!(ratio(&a4, 35.0), Some(1.0));
    assert!(ratio(&a4, 35.1).unwrap() < 1.0);
}
