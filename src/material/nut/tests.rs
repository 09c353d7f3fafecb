//! Names, what is not made, and nuts tapped oversize.

use super::*;
use crate::units::{ksi, megapascals};

#[test]
fn every_grade_prints_and_reads_back() {
    for grade in NutGrade::all() {
        assert_eq!(grade.to_string().parse::<NutGrade>().unwrap(), grade);
        assert!(rows().any(|row| row.grade == grade), "{grade}");
    }
    assert!("A563".parse::<NutGrade>().is_err());
}

#[test]
fn what_is_not_made_is_told_with_what_is() {
    let ask = |grade: NutGrade, shape, thread: &str| {
        let error = grade
            .strength(shape, &thread.parse().unwrap(), NutTapping::Usual)
            .unwrap_err();
        error.to_string()
    };
    let size = ask(NutGrade::SaeJ995Grade5, NutShape::Hex, "1-3/4-5 UNC");
    assert!(
        size.ends_with("it must be from 6.350 mm (0.2500 in) to 38.100 mm (1.5000 in)"),
        "{size}"
    );
    let thread = ask(NutGrade::AstmA563C, NutShape::HeavyHex, "3/4-16 UNF");
    assert!(
        thread.ends_with("its threads are UNC, 8UN and 6UN"),
        "{thread}"
    );
    let small = ask(NutGrade::Iso898_2Class4, NutShape::Style1, "M12");
    assert!(small.contains("over 16"), "{small}");
}

#[test]
fn fine_and_coarse_differ_in_sae_grade_5() {
    let stress = |thread: &str| {
        let thread = thread.parse().unwrap();
        NutGrade::SaeJ995Grade5
            .strength(NutShape::Hex, &thread, NutTapping::Usual)
            .unwrap()
            .proof_stress
    };
    assert_eq!(stress("1/2-13 UNC"), ksi(120.0));
    assert_eq!(stress("1/2-20 UNF"), ksi(109.0));
}

/// ASTM A563 Table 3 (zinc-coated nuts) and ISO 10684 Tables A.2, as reproduced.
#[test]
fn nuts_tapped_oversize_bear_less() {
    let stress = |grade: NutGrade, shape, thread: &str| {
        let thread = thread.parse().unwrap();
        grade
            .strength(shape, &thread, NutTapping::Oversize)
            .map(|nut| nut.proof_stress)
    };
    let heavy = NutShape::HeavyHex;
    let b = stress(NutGrade::AstmA563B, heavy, "3/4-10 UNC");
    assert_eq!(b.unwrap(), ksi(100.0));
    let c = stress(NutGrade::AstmA563C, heavy, "3/4-10 UNC");
    assert_eq!(c.unwrap(), ksi(144.0));
    for unknown in [NutGrade::SaeJ995Grade5, NutGrade::AsmeB18_16_6GradeN5] {
        let shape = rows().find(|row| row.grade == unknown).unwrap().shape;
        let error = stress(unknown, shape, "1/2-13 UNC").unwrap_err();
        assert!(matches!(error, Error::NoValue { .. }), "{error}");
    }
    // M8 and M10 by ISO 10684, whether the class is named with its Z or not; from M12 on as ISO 898-2.
    for class in [NutGrade::Iso898_2Class8, NutGrade::Iso10684Class8z] {
        let stress = |thread| stress(class, NutShape::Style1, thread);
        assert_eq!(stress("M8").unwrap(), megapascals(698.0));
        assert_eq!(stress("M10").unwrap(), megapascals(728.0));
        assert_eq!(stress("M12").unwrap(), megapascals(880.0));
        assert_eq!(stress("M20").unwrap(), megapascals(920.0));
        assert!(matches!(stress("M6"), Err(Error::NoValue { .. })));
        assert!(matches!(stress("M12x1.25"), Err(Error::NoValue { .. })));
    }
}

#[test]
fn a_class_with_z_is_oversize_whatever_is_asked() {
    let thread = "M8".parse().unwrap();
    let z = NutGrade::Iso10684Class8z;
    let nut = z.strength(NutShape::Style1, &thread, NutTapping::Usual);
    let nut = nut.unwrap();
    assert_eq!(nut.tapping, NutTapping::Oversize);
    assert_eq!(nut.proof_stress, megapascals(698.0));
}
