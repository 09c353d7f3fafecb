use alloc::vec::Vec;

use super::*;
use crate::tables::threads::{MetricThread, UnifiedThread};
use crate::uom::si::length::millimeter;

const PRODUCTS: [ScrewProduct; 12] = [
    ScrewProduct::HexCapScrew,
    ScrewProduct::HexBolt,
    ScrewProduct::HeavyHexBolt,
    ScrewProduct::MetricHexCapScrew,
    ScrewProduct::Iso4014,
    ScrewProduct::Iso4017,
    ScrewProduct::Iso8765,
    ScrewProduct::StructuralBolt,
    ScrewProduct::SocketHeadCapScrew,
    ScrewProduct::Iso4762,
    ScrewProduct::En14399_3,
    ScrewProduct::En14399_4,
];

/// A screw that can be had has a face, and it reaches beyond the nominal diameter and not beyond the head.
#[test]
fn every_screw_has_a_face() {
    let unified = UnifiedThread::all()
        .iter()
        .filter_map(|row| Thread::unified(row.nominal_diameter, row.series).ok());
    let metric = MetricThread::all()
        .iter()
        .filter_map(|row| Thread::metric(row.nominal_diameter, row.pitch).ok());
    let (mut faces, mut refused) = (0, Vec::new());
    for thread in unified.chain(metric) {
        for product in PRODUCTS {
            if ScrewSeries::new(product, &thread).is_err() {
                continue;
            }
            let Ok(face) = ClampFace::of_screw(product, &thread) else {
                refused.push(thread.to_string());
                continue;
            };
            faces += 1;
            assert!(
                face.outer_min > thread.nominal_diameter(),
                "{product} {thread}"
            );
            let head = face.across_flats_min.or(face.head_diameter_min);
            assert!(
                head.is_some_and(|head| face.outer_min <= head),
                "{product} {thread}"
            );
            if let Some(inner) = face.inner_max {
                assert!(inner < face.outer_min, "{product} {thread}");
            }
        }
    }
    assert!(faces > 200, "{faces}");
    assert!(refused.is_empty(), "{refused:?}");
}

/// A nut does not bear on its countersink, 13 mm of M12 and 1.08 in of an inch, which a close hole leaves open.
#[test]
fn nuts_do_not_bear_on_their_countersinks() {
    for (style, thread, inner) in [
        (NutStyle::Iso4032, "M12", millimetres(13.0)),
        (NutStyle::Hex, "1-8 UNC", crate::units::inches(1.08)),
    ] {
        let nut = Nut::find(style, &thread.parse().unwrap()).unwrap();
        let face = ClampFace::of_nut(nut).unwrap();
        assert_eq!(face.inner_max, Some(inner));
    }
    for nut in Nut::all_inch().iter().chain(Nut::all_metric()) {
        if let Ok(face) = ClampFace::of_nut(nut) {
            let bears = face.inner_max.is_none_or(|inner| inner < face.outer_min);
            assert!(bears, "{nut}");
        }
    }
}

/// The notes of ASME B18.2.2 to hex nuts, and of B18.2.6 to heavy hex nuts of structural bolts: 95 % of the least width
/// across flats at least, 0.428 in of 1/4 in and 1.212 in of 3/4 in. Of nuts without a rule the smaller face stays.
#[test]
fn hex_nuts_have_the_face_of_their_notes_and_other_inch_nuts_less() {
    let face = |style, thread: &str| {
        ClampFace::of_nut(Nut::find(style, &thread.parse().unwrap()).unwrap()).unwrap()
    };
    for (style, thread, flats) in [
        (NutStyle::Hex, "1/4-20 UNC", 0.428),
        (NutStyle::HeavyHex, "3/4-10 UNC", 1.212),
    ] {
        let nut = face(style, thread);
        assert_eq!(nut.rule, FaceRule::InchNutFlats);
        let expected = crate::units::inches(0.95 * flats);
        assert!((nut.outer_min - expected).abs() < millimetres(1e-9));
        assert_eq!(nut.cautions().iter().count(), 0);
    }
    for style in [NutStyle::HexSlotted, NutStyle::HexJam, NutStyle::HexThick] {
        let nut = face(style, "3/4-10 UNC");
        assert_eq!(nut.rule, FaceRule::InchFlats);
        assert!(nut.outer_min < face(NutStyle::Hex, "3/4-10 UNC").outer_min);
        assert_eq!(nut.cautions().iter().count(), 1);
    }
}

/// M20: 28.19 mm of grade A, 27.7 mm of grade B; the length is not known here.
#[test]
fn of_two_product_grades_the_smaller_face_counts() {
    let head = ClampFace::of_screw(ScrewProduct::Iso4014, &"M20".parse().unwrap()).unwrap();
    assert_eq!(head.outer_min, millimetres(27.7));
}

/// ISO 4759-1 against every face of ISO 4014 that the table has, to the rounding of the print: all 23 follow. Of M48
/// 69.445 is printed as 69.45.
#[test]
fn the_metric_rule_gives_the_printed_faces() {
    for row in HexScrew::all() {
        let rule = metric_face(row.width_across_flats_max, row.width_across_flats_min);
        let off = (rule - row.bearing_diameter_min).get::<millimeter>();
        assert!(off.abs() < 0.0051, "{}: {off}", row.size);
    }
}

/// The rules for inch parts against the metric rows: never more than those print.
#[test]
fn the_inch_rule_is_the_cautious_one() {
    for row in HexScrew::all() {
        let face = inch_face(row.width_across_flats_min);
        assert!(
            face <= row.bearing_diameter_min + millimetres(0.001),
            "{}",
            row.size
        );
    }
    for screw in SocketHeadCapScrew::all_metric() {
        let (Some(head), Some(face)) = (screw.head_diameter_min, screw.bearing_diameter_min) else {
            continue;
        };
        assert!(0.9 * head <= face, "{}", screw.size);
    }
}

#[test]
fn nuts_and_washers_without_numbers_say_so() {
    let (mut known, mut holes) = (0, 0);
    for nut in Nut::all_inch().iter().chain(Nut::all_metric()) {
        match ClampFace::of_nut(nut) {
            Ok(face) => {
                assert!(face.outer_min > nut.nominal_diameter, "{nut}");
                known += 1;
            }
            Err(Error::NoValue { .. }) => {
                let expected = matches!(nut.style, NutStyle::Din985 | NutStyle::AllMetalLock);
                assert!(expected, "{nut}");
                holes += 1;
            }
            Err(other) => panic!("{nut}: {other}"),
        }
    }
    assert_eq!((known, holes), (589 - 29, 29));
    let washers = Washer::all_inch().iter().chain(Washer::all_metric());
    let faces: Vec<WasherFace> = washers
        .filter_map(|washer| WasherFace::of(washer).ok())
        .collect();
    assert!(faces.len() > 180, "{}", faces.len());
    assert!(faces.iter().all(|face| face.inner_max < face.outer_min));
}
