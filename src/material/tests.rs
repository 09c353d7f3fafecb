use alloc::string::String;
use alloc::vec::Vec;

use super::*;
use crate::units::{inches, ksi, millimetres};

#[test]
fn strengths_of_one_document_say_so_by_name_and_size() {
    let of = |class: StainlessClass, size: f64| {
        let strength = class.strength(millimetres(size)).unwrap();
        let found: Vec<String> = strength
            .cautions()
            .iter()
            .map(ToString::to_string)
            .collect();
        found
    };
    let a5 = of(StainlessClass::A5_70, 12.0);
    assert_eq!(a5.len(), 1);
    assert!(a5[0].starts_with(
        "The strengths of ISO 3506-1 class A5-70 at this size were read in one document alone"
    ));
    // A second document has A4-80 up to M24.
    assert_eq!(of(StainlessClass::A4_80, 24.0).len(), 0);
    assert_eq!(of(StainlessClass::A4_80, 27.0).len(), 1);
    assert_eq!(of(StainlessClass::A2_70, 27.0).len(), 0);
    // Of every grade and size that the list names the caution comes, and comes once.
    for (grade, _, thru) in &ONLY_WITNESSES {
        let strength = grade.strength(*thru).unwrap();
        let cautions = strength.cautions();
        let one = cautions
            .iter()
            .filter(|c| matches!(c, Caution::OneWitness { .. }));
        assert_eq!(one.count(), 1, "{grade}");
    }
}

#[test]
fn a_weak_proof_stress_is_said_once() {
    let of = |grade: AstmGrade| {
        let strength = grade.strength(inches(0.75)).unwrap();
        strength.cautions().iter().copied().collect::<Vec<_>>()
    };
    assert_eq!(of(AstmGrade::A449Type1), []);
    // A structural bolt, with a recalled proof stress.
    let f2280 = of(AstmGrade::F3125F2280Type1);
    assert!(matches!(
        f2280[..],
        [
            Caution::NotForScrews,
            Caution::FromMemory {
                value: "proof stress",
                ..
            }
        ]
    ));
    // A row recalled as a whole.
    let f593 = of(AstmGrade::F593Group7Ah);
    assert!(matches!(
        f593[..],
        [Caution::FromMemory {
            value: "bolt strength",
            ..
        }]
    ));
}

#[test]
fn loads_beyond_the_range_of_numbers_are_refused() {
    use crate::units::from_base;
    let of = |stress: f64, area: f64| {
        let bolt = BoltStrength::stated(millimetres(12.0), None, None, from_base(stress));
        bolt.and_then(|bolt| bolt.loads_on(from_base(area)))
    };
    assert!(of(800e6, 84.3e-6).is_ok());
    assert!(of(1e308, 10.0).is_err());
    assert!(of(1e60, 10.0).is_err());
    // A product that vanishes is no load either.
    assert!(of(5e-324, 84.3e-6).is_err());
    assert!(of(1e-59, 84.3e-6).is_err());
    let nut = NutGrade::Iso898_2Class8;
    let nut = nut.strength(
        crate::tables::nut_grades::NutShape::Style1,
        &"M12".parse().unwrap(),
        NutTapping::Usual,
    );
    assert!(nut.unwrap().proof_load_on(from_base(1e300)).is_err());
}

#[test]
fn sizes_outside_a_grade_are_told_its_range() {
    let error = |grade: AstmGrade, size| grade.strength(inches(size)).unwrap_err().to_string();
    assert!(error(AstmGrade::A193B5, 4.25).ends_with("at most 101.600 mm (4.0000 in)"));
    assert!(error(AstmGrade::A449Type1, 3.25).contains("from 6.350 mm"));
    assert!(AstmGrade::A193B8Class1.strength(inches(6.0)).is_ok()); // all diameters
}

#[test]
fn size_ranges_are_over_and_through() {
    let grade2 = BoltGrade::from(SaeGrade::Grade2);
    assert_eq!(
        grade2.strength(inches(0.75)).unwrap().proof_stress,
        Some(ksi(55.0))
    );
    assert_eq!(
        grade2.strength(inches(0.7501)).unwrap().proof_stress,
        Some(ksi(33.0))
    );
    assert!(grade2.strength(inches(0.2499)).is_err());
    assert!(PropertyClass::Class9_8.strength(millimetres(18.0)).is_err());
    for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        assert!(grade2.strength(inches(bad)).is_err());
        assert!(grade2.strength_at_length(inches(0.5), inches(bad)).is_err());
    }
}

#[test]
fn grade_2_over_six_inches_is_grade_1_only_up_to_three_quarters() {
    let grade2 = BoltGrade::from(SaeGrade::Grade2);
    let long = |size| {
        grade2
            .strength_at_length(inches(size), inches(8.0))
            .unwrap()
    };
    assert_eq!(long(0.5).tensile_strength, ksi(60.0));
    assert_eq!(long(1.0).tensile_strength, ksi(60.0));
    assert_eq!(
        grade2.strength(inches(0.5)).unwrap().length_limit,
        Some(inches(6.0))
    );
}

/// A row recalled as a whole says so once, and not of its proof stress again.
#[test]
fn what_was_recalled_is_told_once() {
    let row = AstmGrade::F593Group7Ah.strength(inches(0.5)).unwrap();
    let both = BoltStrength {
        proof_stress: Some(ksi(50.0)),
        proof_basis: Some(Basis::Memory),
        ..row
    };
    assert_eq!(row.cautions().iter().count(), 1);
    assert_eq!(both.cautions(), row.cautions());
}

/// A range over a size begins beyond it, one from and thru a size has it.
#[test]
fn sizes_at_their_limits() {
    let mm = millimetres;
    let row = |from: Option<f64>, over: Option<f64>, thru: Option<f64>| Sizes {
        from: from.map(mm),
        over: over.map(mm),
        thru: thru.map(mm),
    };
    for (sizes, size, covered) in [
        (row(Some(5.0), None, Some(16.0)), 5.0, true),
        (row(Some(5.0), None, Some(16.0)), 4.999, false),
        (row(Some(5.0), None, Some(16.0)), 16.0, true),
        (row(None, Some(16.0), Some(39.0)), 16.0, false),
        (row(None, Some(16.0), Some(39.0)), 16.001, true),
        (row(None, Some(16.0), Some(39.0)), 39.001, false),
    ] {
        assert_eq!(sizes.cover(mm(size)), covered, "{size}");
    }
    // SAE J429 has grade 2 up to 6 in, and over.
    for (length, rows) in [(6.0, 1), (6.001, 1)] {
        let d = inches(0.5);
        let all = sae::rows(SaeGrade::Grade2, d, Some(inches(length)));
        assert_eq!(
            all.filter(|(sizes, _)| sizes.cover(d)).count(),
            rows,
            "{length}"
        );
    }
    let told = |size: f64| widest([row(None, Some(16.0), Some(39.0))].into_iter(), mm(size));
    let over = Allowed::OverThru(mm(16.0).into(), mm(39.0).into());
    assert_eq!(told(5.0), over);
    assert_eq!(told(16.0), over);
    assert_eq!(told(40.0), Allowed::AtMost(mm(39.0).into()));
}

/// Martensitic classes C1 and C4, ASTM A193 B6, have about 12 % chromium; C3 and the austenitic ones 16 % and more.
#[test]
fn chromium_by_class() {
    for (grade, metal) in [
        (
            BoltGrade::Stainless(StainlessClass::A2_70),
            Some(Metal::Stainless18Chromium),
        ),
        (
            StainlessClass::C1_70.into(),
            Some(Metal::Stainless12Chromium),
        ),
        (
            StainlessClass::C3_80.into(),
            Some(Metal::Stainless18Chromium),
        ),
        (AstmGrade::A193B6.into(), Some(Metal::Stainless12Chromium)),
        (
            AstmGrade::A193B8Class1.into(),
            Some(Metal::Stainless18Chromium),
        ),
        (PropertyClass::Class8_8.into(), None),
    ] {
        assert_eq!(grade.stainless_metal(), metal, "{grade}");
    }
}
