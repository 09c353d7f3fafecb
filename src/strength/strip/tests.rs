use super::*;
use crate::thread::{Thread, strip::EngagedLength};
use crate::units::{megapascals, millimetres};
use alloc::string::ToString;

#[test]
fn refuses_nonsense() {
    let steel = ThreadMaterial::new(megapascals(800.0), None).unwrap();
    for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        assert!(ThreadMaterial::new(megapascals(bad), None).is_err());
        assert!(ThreadMaterial::new(megapascals(1.0), Some(megapascals(bad))).is_err());
        assert!(steel.clone().with_shear_ratio(bad).is_err());
        assert!(AlexanderFactors::new(None, millimetres(10.0), bad).is_err());
        let width = Some(millimetres(bad));
        assert!(AlexanderFactors::new(width, millimetres(10.0), 1.0).is_err());
    }
    assert!(ThreadMaterial::new(megapascals(1.0), Some(megapascals(2.0))).is_err());
    let thread: Thread = "M12".parse().unwrap();
    let engaged = EngagedLength::new(millimetres(10.0)).unwrap();
    let areas = thread.strip_areas_basic(engaged).unwrap();
    let strip = |material, method| stripping(&areas, &steel, material, method);
    assert!(strip(&steel, StripMethod::ShearStrength).is_err());
    // A strength that no product of which is a number: once a ratio of strengths without end, by numbers at random.
    for stress in [1.7e302, 4.9e-318] {
        assert!(ThreadMaterial::new(megapascals(stress), None).is_err());
    }
}

/// A shear strength may be the tensile strength and no more, a ratio of the two 1 and no more.
#[test]
fn shear_strengths_at_their_limits() {
    let mpa = megapascals;
    assert!(ThreadMaterial::new(mpa(800.0), Some(mpa(800.0))).is_ok());
    assert!(ThreadMaterial::new(mpa(800.0), Some(mpa(800.1))).is_err());
    let steel = ThreadMaterial::new(mpa(800.0), None).unwrap();
    let whole = steel.clone().with_shear_ratio(1.0).unwrap();
    assert_eq!(whole.shear_strength(), Some(mpa(800.0)));
    for ratio in [1.001, 1.5, 0.0, -0.5] {
        let error = steel
            .clone()
            .with_shear_ratio(ratio)
            .unwrap_err()
            .to_string();
        assert!(
            error.contains("shear over tensile strength"),
            "{ratio}: {error}"
        );
    }
}

/// What was stated of bolt or nut is told with the proof of the nut.
#[test]
fn proofs_of_nuts_tell_what_was_stated() {
    use crate::material::{BoltStrength, NutGrade, NutTapping, PropertyClass};
    use crate::tables::nut_grades::NutShape;
    let thread: Thread = "M12".parse().unwrap();
    let d = thread.nominal_diameter();
    let nut = NutGrade::Iso898_2Class8
        .strength(NutShape::Style1, &thread, NutTapping::Usual)
        .unwrap();
    let class = PropertyClass::Class8_8.strength(d).unwrap();
    let own = BoltStrength::stated(d, None, Some(megapascals(640.0)), megapascals(800.0)).unwrap();
    for (bolt, told) in [(class, 0), (own, 1)] {
        let proof = nut_proof(&thread, &bolt, &nut).unwrap();
        assert_eq!(proof.cautions().iter().count(), told);
    }
}

/// Machinery's Handbook: formula 2b, pi (E / 2 - 0.16238 P)^2 with the least pitch diameter E, is of Unified threads of steel over
/// 100 ksi; 2a, 0.7854 (D - 0.9743 P)^2, of steel up to it, and of diameters that are basic. 1/2-13: E 0.4435, 0.1376 and
/// 0.1419 in2.
#[test]
fn stress_areas_of_strong_steel() {
    use crate::thread::ThreadFit;
    use crate::units::square_inches;
    let engaged = EngagedLength::new(crate::units::inches(0.5)).unwrap();
    let limits = |name: &str| name.parse::<Thread>().unwrap().limits().unwrap();
    let fit = ThreadFit::of(&limits("1/2-13 UNC-2A"), &limits("1/2-13 UNC-2B")).unwrap();
    let inch = fit.strip_areas(engaged).unwrap();
    let basic = "1/2-13 UNC"
        .parse::<Thread>()
        .unwrap()
        .strip_areas_basic(engaged)
        .unwrap();
    for (areas, strength, by_hand) in [
        (&inch, 100.0, 0.1419),
        (&inch, 100.001, 0.1376),
        (&inch, 180.0, 0.1376),
        (&inch, 60.0, 0.1419),
        (&basic, 180.0, 0.1419),
    ] {
        let found = handbook_stress_area(areas, ksi(strength)).unwrap();
        assert!(
            (found - square_inches(by_hand)).abs() < square_inches(5e-5),
            "{strength}"
        );
    }
}
