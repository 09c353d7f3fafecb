//! Tests across the products.

use super::*;
use crate::tables::screws::ProductGrade;
use crate::units::{SAME_LENGTH, inches};

fn cap(thread: &str) -> ScrewSeries {
    ScrewSeries::new(ScrewProduct::HexCapScrew, &thread.parse().unwrap()).unwrap()
}

/// Each thread is one that a product or nut of the same size and pitch has, but for its mark.
#[test]
fn threads_of_no_stock_part_are_refused() {
    use crate::parts::{Nut, NutStyle};
    use ScrewProduct::{HexCapScrew, Iso4014, Iso8765, StructuralBolt};
    for (product, nut, plain, special, reason) in [
        (
            HexCapScrew,
            NutStyle::Hex,
            "3/8-16 UNC-2A",
            "3/8-16 UNC-2A-LH",
            "right-hand",
        ),
        (Iso4014, NutStyle::Iso4032, "M16", "M16-LH", "right-hand"),
        (
            Iso4014,
            NutStyle::Iso4032,
            "M16",
            "M16xPh4P2",
            "single start",
        ),
        (
            HexCapScrew,
            NutStyle::Hex,
            "3/8-16 UNC",
            "3/8-16 UNJC",
            "UN, UNR and M",
        ),
        (
            StructuralBolt,
            NutStyle::HeavyHex,
            "3/4-10 UNC",
            "3/4-10 UNJC-3A",
            "UN, UNR and M",
        ),
        (
            Iso4014,
            NutStyle::Iso4032,
            "M20",
            "MJ20x2.5",
            "UN, UNR and M",
        ),
    ] {
        let thread: Thread = plain.parse().unwrap();
        assert!(ScrewSeries::new(product, &thread).is_ok(), "{plain}");
        assert!(Nut::find(nut, &thread).is_ok(), "{plain}");
        let thread: Thread = special.parse().unwrap();
        for error in [
            ScrewSeries::new(product, &thread).unwrap_err(),
            Nut::find(nut, &thread).unwrap_err(),
        ] {
            assert!(matches!(error, Error::NotInTable { .. }), "{error}");
            assert!(error.to_string().contains(reason), "{error}");
        }
    }
    let fine = ScrewSeries::new(Iso8765, &"MJ12x1.5".parse().unwrap());
    assert!(fine.unwrap_err().to_string().contains("UN, UNR and M"));
    // The rounded root of UNR is that of the plain screw.
    assert!(ScrewSeries::new(HexCapScrew, &"3/8-16 UNRC".parse().unwrap()).is_ok());
}

#[test]
fn fine_thread_screws_keep_the_coarse_transition() {
    let coarse = cap("3/4-10 UNC").length(inches(4.0)).unwrap();
    let fine = cap("3/4-16 UNF").length(inches(4.0)).unwrap();
    assert_eq!(coarse.body_length_min, fine.body_length_min);
    assert_eq!(coarse.grip_gaging_length_max, fine.grip_gaging_length_max);
}

#[test]
fn long_screws_have_longer_thread() {
    let six = cap("3/4-10 UNC").length(inches(6.0)).unwrap();
    let longer = cap("3/4-10 UNC").length(inches(6.5)).unwrap();
    let thread = |screw: &ScrewLength| screw.nominal - screw.grip_gaging_length_max;
    assert!((thread(&six) - inches(1.75)).abs() < SAME_LENGTH);
    assert!((thread(&longer) - inches(2.0)).abs() < SAME_LENGTH);
}

#[test]
fn every_stock_length_is_answered_or_a_known_hole() {
    use crate::tables::threads::UnifiedSeries::{Un8, Unc, Unf};
    let (mut answered, mut holes) = (0, alloc::vec::Vec::new());
    let mut ask = |screws: &ScrewSeries| {
        for length in screws.stock_lengths() {
            match screws.length(length) {
                Ok(_) => answered += 1,
                Err(Error::NoValue { .. }) => holes.push(format!("{}", screws.thread())),
                Err(error) => panic!("{screws}: {error}"),
            }
        }
    };
    for row in HexCapScrew::all() {
        // 1-8 is both 8-UN and UNC.
        for series in [Unc, Unf, Un8] {
            if let Ok(thread) = Thread::unified(row.nominal_diameter, series) {
                ask(&ScrewSeries::new(ScrewProduct::HexCapScrew, &thread).unwrap());
            }
        }
    }
    for row in HexScrew::all()
        .iter()
        .filter(|row| row.product_grade == ProductGrade::A)
    {
        let thread = Thread::metric(row.nominal_diameter, row.pitch).unwrap();
        for product in [ScrewProduct::Iso4014, ScrewProduct::Iso4017] {
            ask(&ScrewSeries::new(product, &thread).unwrap());
        }
    }
    // No length tolerance was read for 7/8 and 1 in long screws of those diameters, and no run-out
    // for the smallest ISO 4017 screws.
    holes.sort();
    holes.dedup();
    assert_eq!(
        holes,
        [
            "1-12 UNF",
            "1-8 UNC",
            "7/8-14 UNF",
            "7/8-9 UNC",
            "M1.6",
            "M2",
            "M2.5"
        ]
    );
    assert!(answered > 1000, "{answered}");
}

#[test]
fn unread_rows_refuse() {
    let screws = cap("1-3/4-5 UNC");
    assert!(matches!(
        screws.length(inches(7.0)),
        Err(Error::NoValue { .. })
    ));
    assert_eq!(screws.stock_lengths().count(), 0);
    // Not "it must be at most 0 mm".
    let error = screws.stock_length_at_least(inches(7.0)).unwrap_err();
    assert!(matches!(error, Error::NoValue { .. }), "{error}");
}

#[test]
fn no_screw_is_longer_than_a_kilometre() {
    for (product, thread) in [
        (ScrewProduct::HexCapScrew, "1/2-13 UNC"),
        (ScrewProduct::StructuralBolt, "3/4-10 UNC"),
        (ScrewProduct::Iso4014, "M20"),
    ] {
        let screws = ScrewSeries::new(product, &thread.parse().unwrap()).unwrap();
        for length in [1e7, 1e300] {
            let error = screws.length(inches(length)).unwrap_err();
            assert!(matches!(error, Error::OutOfRange { .. }), "{error}");
        }
    }
    let huge = inches(1e300);
    assert!(ScrewLength::measured(huge, inches(1.0), inches(1.5)).is_err());
}
