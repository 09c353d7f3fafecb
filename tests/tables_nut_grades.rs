//! What must hold between the rows of nut strengths and pairings.

use shankline::prelude::*;
use shankline::tables::nut_grades::{NutGradeRow, NutPairing};

fn rows() -> impl Iterator<Item = &'static NutGradeRow> {
    NutGradeRow::all_inch()
        .iter()
        .chain(NutGradeRow::all_metric())
}

/// No size is in two rows of one grade, shape and thread.
#[test]
fn size_ranges_do_not_overlap() {
    for (index, a) in rows().enumerate() {
        for b in rows().skip(index + 1) {
            if (a.grade, a.shape, a.threads) != (b.grade, b.shape, b.threads) {
                continue;
            }
            let apart = |low: &NutGradeRow, high: &NutGradeRow| {
                high.size_over.is_some_and(|over| low.size_thru <= over)
                    || high.size_from.is_some_and(|from| low.size_thru < from)
            };
            assert!(apart(a, b) || apart(b, a), "{a:?} {b:?}");
        }
    }
}

/// A thin, jam or slotted nut is never stronger than a full one of its grade, nor a tapped-oversize one
/// stronger than a plain one.
#[test]
fn weaker_shapes_are_weaker() {
    let mut compared = 0;
    for weak in rows() {
        assert!(
            weak.proof_stress_overtapped
                .is_none_or(|over| over <= weak.proof_stress)
        );
        let full = match weak.shape {
            NutShape::HexJam | NutShape::HexSlotted | NutShape::HeavyHexJam => NutShape::Hex,
            NutShape::Hex => NutShape::HeavyHex,
            _ => continue,
        };
        for strong in rows() {
            if (strong.grade, strong.shape, strong.threads) == (weak.grade, full, weak.threads)
                && strong.size_thru >= weak.size_thru
                && strong.size_from == weak.size_from
                && strong.size_over == weak.size_over
            {
                compared += 1;
                assert!(weak.proof_stress <= strong.proof_stress, "{weak:?}");
            }
        }
    }
    assert_eq!(compared, 31);
}

/// Metric nuts: the proof stress of a class is at least the tensile strength of the bolts ISO 898-2
/// pairs with it; only class 12 stays below 12.9.
#[test]
fn a_nut_outlasts_the_bolt_it_is_named_for() {
    let mut compared = 0;
    for pairing in NutPairing::all() {
        let BoltGrade::Iso(class) = pairing.bolt else {
            continue;
        };
        for size in ["M5", "M8", "M12", "M16", "M20", "M24"] {
            let thread: Thread = size.parse().unwrap();
            let Ok(bolt) = class.strength(thread.nominal_diameter()) else {
                continue; // class 9.8 stops at M16
            };
            for shape in [NutShape::Style1, NutShape::Style2] {
                let Ok(nut) = pairing.nut.strength(shape, &thread, NutTapping::Usual) else {
                    continue;
                };
                compared += 1;
                // 1140 to 1200 MPa against 1220 MPa.
                let weaker = class == PropertyClass::Class12_9;
                let holds = nut.proof_stress >= bolt.tensile_strength;
                assert_ne!(weaker, holds, "{class} {size} {shape}: {nut:?}");
            }
        }
    }
    assert!(compared > 40, "{compared}");
}

/// Every pairing names a nut the strength table has, in that shape, for a size in its range.
#[test]
fn every_named_nut_has_a_strength() {
    for pairing in NutPairing::all() {
        let rows: Vec<_> = rows()
            .filter(|row| row.grade == pairing.nut)
            .filter(|row| pairing.shape.is_none_or(|shape| shape == row.shape))
            .filter(|row| pairing.size_over.is_none_or(|over| over < row.size_thru))
            .collect();
        assert!(!rows.is_empty(), "{pairing:?}");
    }
}
