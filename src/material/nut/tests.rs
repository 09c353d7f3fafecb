//! Names, what is not made, and nuts tapped oversize.

use alloc::string::ToString;

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

/// ISO 3506-2, 5.2.3 and 5.2.4: the number of the class is a tenth of the proof stress in MPa, for coarse and fine
/// threads. The extract gives A2-70, C1-110 and A4-040 as examples.
#[test]
fn the_class_of_a_stainless_nut_is_a_tenth_of_its_proof_stress() {
    let classes = NutGrade::all().filter(|grade| grade.to_string().starts_with(ISO_3506_2));
    let mut read = 0;
    for grade in classes {
        let name = grade.to_string();
        let class = name.strip_prefix(ISO_3506_2).unwrap();
        assert_eq!(class.parse::<NutGrade>().unwrap(), grade);
        let number = class.split_once('-').unwrap().1;
        let shapes: &[_] = if number.starts_with('0') {
            &[NutShape::Thin]
        } else {
            &[NutShape::Style1, NutShape::Style2]
        };
        for (shape, thread) in shapes
            .iter()
            .flat_map(|shape| ["M1.6", "M5", "M12", "M12x1.25", "M24"].map(|size| (*shape, size)))
        {
            let nut = grade.strength(shape, &thread.parse().unwrap(), NutTapping::Usual);
            let nut = nut.unwrap_or_else(|error| panic!("{error}"));
            let stress = 10.0 * number.parse::<f64>().unwrap();
            assert_eq!(nut.proof_stress, megapascals(stress), "{name} {thread}");
            assert_eq!(nut.cautions().iter().count(), 0);
        }
        assert!(grade.is_stainless(), "{name}");
        read += 1;
    }
    assert_eq!(read, 38);
    assert!(NutGrade::AstmF594Group1Cw1.is_stainless());
    assert!(!NutGrade::AstmA563Dh3.is_stainless());
}

#[test]
fn what_no_stainless_nut_is_made_for_is_told() {
    let ask = |grade: NutGrade, shape, thread: &str, tapping| {
        let thread = thread.parse().unwrap();
        grade.strength(shape, &thread, tapping)
    };
    let refused = |grade, shape, thread| {
        let error = ask(grade, shape, thread, NutTapping::Usual).unwrap_err();
        error.to_string()
    };
    let a4 = NutGrade::Iso3506_2ClassA4_70;
    for shape in [NutShape::Style1, NutShape::Style2] {
        let large = refused(a4, shape, "M42");
        assert!(
            large.ends_with("it must be from 1.600 mm (0.0630 in) to 39.000 mm (1.5354 in)"),
            "{large}"
        );
    }
    let ferritic = refused(NutGrade::Iso3506_2ClassF1_45, NutShape::Style1, "M30");
    assert!(ferritic.contains("to 24.000 mm"), "{ferritic}");
    let shapes = refused(a4, NutShape::Thin, "M12");
    assert!(
        shapes.ends_with("shapes of that grade: style 1, style 2"),
        "{shapes}"
    );
    let thread = refused(a4, NutShape::Style1, "1/2-13 UNC");
    assert!(
        thread.ends_with("its threads are metric, coarse and fine"),
        "{thread}"
    );
    let group = refused(NutGrade::AstmF594Group1Cw1, NutShape::Hex, "3/4-10 UNC");
    assert!(group.contains("to 15.875 mm (0.6250 in)"), "{group}");
    let noted = |thread| {
        let nut = ask(a4, NutShape::Style1, thread, NutTapping::Usual);
        nut.unwrap().note
    };
    assert_eq!(noted("M24"), None);
    assert!(noted("M27").is_some_and(|note| note.contains("M24")));
    // Not hot-dip galvanized, so that no strength of one tapped oversize is made up from ISO 10684.
    for thread in ["M8", "M16"] {
        let error = ask(a4, NutShape::Style1, thread, NutTapping::Oversize).unwrap_err();
        assert!(matches!(error, Error::NoValue { .. }), "{error}");
    }
}

/// Which threads a row of nut strengths holds for.
#[test]
fn threads_of_the_rows() {
    use crate::tables::nut_grades::NutThreads as T;
    use crate::tables::threads::MetricThread;
    let covered = |threads: T, name: &str| threads.covers(&name.parse().unwrap());
    for (threads, inside, outside) in [
        (
            T::Unc,
            &["1/2-13 UNC", "1-1/4-7 UNC"][..],
            &["1/2-20 UNF", "1-1/4-8 UN", "M12"][..],
        ),
        (
            T::Unc8un,
            &["1/2-13 UNC", "1-1/4-8 UN"],
            &["1-5/8-6 UN", "1/2-20 UNF"],
        ),
        (
            T::UncThen8un,
            &["1/2-13 UNC", "1-8 UNC", "1-1/8-8 UN"],
            &["1-1/8-7 UNC", "1-1/4-12 UNF"],
        ),
        (
            T::Un12AndFiner,
            &["1/4-28 UNF", "1-5/8-12 UN", "1-5/8-16 UN"],
            &["1/2-13 UNC", "1-5/8-8 UN", "M12x1.25"],
        ),
        (T::MetricCoarse, &["M12"], &["M12x1.25", "1/2-13 UNC"]),
        (T::MetricFine, &["M12x1.25"], &["M12", "1/2-20 UNF"]),
        (T::Metric, &["M12", "M12x1.25"], &["1/2-20 UNF"]),
    ] {
        for name in inside {
            assert!(covered(threads, name), "{threads:?} {name}");
        }
        for name in outside {
            assert!(!covered(threads, name), "{threads:?} {name}");
        }
    }
    // Sizes that have no coarse thread have no strength of nuts either.
    let mut met = 0;
    for row in MetricThread::all() {
        if MetricThread::coarse(row.nominal_diameter).is_none() {
            let name = format!(
                "M{}x{}",
                row.nominal_diameter.value * 1e3,
                row.pitch.value * 1e3
            );
            if let Ok(thread) = name.parse() {
                assert!(
                    !T::MetricFine.covers(&thread) && !T::Metric.covers(&thread),
                    "{name}"
                );
                met += 1;
            }
        }
    }
    assert!(met > 0);
}
