//! Hex bolts, structural bolts, metric screws, socket screws and aircraft bolts: the rules of their
//! standards, and lengths that were read against the rules.

mod support;

use std::collections::{BTreeMap, BTreeSet};

use shankline::prelude::*;
use shankline::source::Basis;
use shankline::tables::aircraft::{AircraftBolt, AircraftGrip, AircraftGripRow};
use shankline::tables::bolts::{HexBolt, HexBoltStyle, StructuralBolt};
use shankline::tables::metric_screws::{FineHexScrew, MetricHexCapScrew};
use shankline::tables::screws::{HexCapScrew, HexScrew, InchLengthTolerance, ProductGrade};
use shankline::tables::sockets::{SocketHeadCapScrew, SocketHeadGrip};
use shankline::tables::threads::{MetricThread, UnifiedThread};
use shankline::tables::wrench::Hexagon;
use support::{csv_rows, number};

const COS_30: f64 = 0.866_025_403_784_438_6;

/// Half of the last place of three decimals of an inch, of two of a millimetre.
const ROUNDING_INCH: Length = inches(0.0005);
const ROUNDING_MM: Length = millimetres(0.005);

fn close(found: Length, expected: Length, rounding: Length) -> bool {
    (found - expected).abs() <= rounding + millimetres(1e-9)
}

/// Checks whose print deviates. One that is not needed any more fails.
struct Exceptions(BTreeSet<&'static str>);

impl Exceptions {
    fn check(&mut self, name: &str, holds: bool) {
        let known = self.0.remove(name);
        assert!(holds != known, "{name}: holds {holds}, exception {known}");
    }

    fn end(self) {
        assert!(self.0.is_empty(), "not needed: {:?}", self.0);
    }
}

/// ASME B18.2.1 and B18.2.6: G max is the basic flats over cos 30 deg, G min 1.14 times F min.
#[test]
fn inch_corners_follow_from_flats() {
    let mut exceptions = Exceptions(BTreeSet::from([
        // 1.14 x 1.212 in is 1.382; both tables print 1.383.
        "ASME B18.2.1 heavy hex bolt 3/4 least",
        "ASME B18.2.6 structural bolt 3/4 least",
    ]));
    let hex = HexBolt::all().iter().map(|bolt| {
        let corners = (bolt.width_across_corners_min, bolt.width_across_corners_max);
        (Hexagon::HexBolt(bolt), bolt.width_across_flats_min, corners)
    });
    let structural = StructuralBolt::all_inch().iter().map(|bolt| {
        let greatest = bolt.width_across_corners_max.unwrap();
        let corners = (bolt.width_across_corners_min, greatest);
        (
            Hexagon::StructuralBolt(bolt),
            bolt.width_across_flats_min,
            corners,
        )
    });
    for (bolt, least_flats, (least, greatest)) in hex.chain(structural) {
        let basic = bolt.wrench_size().unwrap();
        exceptions.check(
            &format!("{bolt} greatest"),
            close(greatest, basic / COS_30, ROUNDING_INCH),
        );
        exceptions.check(
            &format!("{bolt} least"),
            // The flats are rounded too.
            close(least, 1.14 * least_flats, 2.14 * ROUNDING_INCH),
        );
    }
    exceptions.end();
}

/// ISO 4759-1 and EN 14399-4: e min is 1.13 times s min; the large ASME heads take 1.14.
#[test]
fn metric_corners_follow_from_flats() {
    let mut exceptions = Exceptions(BTreeSet::from([
        // 1.13 x 20.67 mm is 23.36, as ISO 4014 prints.
        "ASME B18.2.3.1M hex cap screw M14",
    ]));
    for bolt in StructuralBolt::all_metric() {
        exceptions.check(
            &bolt.to_string(),
            close(
                bolt.width_across_corners_min,
                1.13 * bolt.width_across_flats_min,
                ROUNDING_MM,
            ),
        );
    }
    for screw in MetricHexCapScrew::all() {
        let large = screw.nominal_diameter > millimetres(36.5);
        let factor = if large { 1.14 } else { 1.13 };
        exceptions.check(
            &screw.to_string(),
            close(
                screw.width_across_corners_min,
                factor * screw.width_across_flats_min,
                ROUNDING_MM,
            ),
        );
    }
    exceptions.end();
}

/// ASME B18.2.1: LT = 2 D + 1/4 in, over 6 in 2 D + 1/2 in. Heavy flats are 1/8 in wider, and those
/// of a structural bolt are heavy.
#[test]
fn hex_bolts_follow_their_rules() {
    for bolt in HexBolt::all() {
        let d = bolt.nominal_diameter;
        let size = nominal(bolt.size);
        assert!(close(d, size, ROUNDING_INCH / 10.0), "{bolt}");
        let short = close(
            bolt.thread_length_short,
            2.0 * d + inches(0.25),
            inches(0.0),
        );
        let long = close(bolt.thread_length_long, 2.0 * d + inches(0.5), inches(0.0));
        assert!(short && long, "{bolt}");
    }
    let flats = |bolt| Hexagon::HexBolt(bolt).wrench_size().unwrap();
    for heavy in HexBolt::of_style(HexBoltStyle::HeavyHex) {
        let same = |bolt: &&HexBolt| bolt.size == heavy.size;
        let hex = HexBolt::of_style(HexBoltStyle::Hex)
            .iter()
            .find(same)
            .unwrap();
        assert!(
            close(flats(heavy), flats(hex) + inches(0.125), inches(0.0)),
            "{heavy}"
        );
        assert_eq!(heavy.body_diameter_max, hex.body_diameter_max);
        assert_eq!(heavy.head_height_max, hex.head_height_max);
    }
    for bolt in StructuralBolt::all_inch() {
        let same = |heavy: &&HexBolt| heavy.size == bolt.size;
        let heavy = HexBolt::of_style(HexBoltStyle::HeavyHex)
            .iter()
            .find(same)
            .unwrap();
        assert_eq!(bolt.width_across_flats_max, heavy.width_across_flats_max);
        assert_eq!(bolt.width_across_flats_min, heavy.width_across_flats_min);
        assert_eq!(
            bolt.width_across_corners_min,
            heavy.width_across_corners_min
        );
        assert_eq!(bolt.body_diameter_max, heavy.body_diameter_max);
        assert!(bolt.thread_length < heavy.thread_length_short, "{bolt}");
    }
}

/// Notes to ASME B18.2.1-1996: every limit of a hex cap screw lies within those of the hex bolt of
/// its size, so that one may stand in for the other.
#[test]
fn cap_screws_lie_within_the_limits_of_hex_bolts() {
    let mut exceptions = Exceptions(BTreeSet::from([
        // The least heads of the cap screws are 0.016 in lower (0.962 and 0.978, 1.114 and 1.130 in).
        "height 1-5/8",
        "height 1-7/8",
    ]));
    let mut compared = 0;
    for bolt in HexBolt::of_style(HexBoltStyle::Hex) {
        let Some(screw) = HexCapScrew::get(bolt.nominal_diameter) else {
            continue;
        };
        let within = |inner: (Length, Length), outer: (Length, Length)| {
            outer.0 <= inner.0 && inner.1 <= outer.1
        };
        let flats = (screw.width_across_flats_min, screw.width_across_flats_max);
        let outer = (bolt.width_across_flats_min, bolt.width_across_flats_max);
        assert!(within(flats, outer), "flats {bolt}");
        let heights = (screw.head_height_min, screw.head_height_max);
        let outer = (bolt.head_height_min, bolt.head_height_max);
        exceptions.check(&format!("height {}", bolt.size), within(heights, outer));
        let bodies = (screw.body_diameter_min, screw.body_diameter_max);
        let outer = (bolt.body_diameter_min.unwrap(), bolt.body_diameter_max);
        assert!(within(bodies, outer), "body {bolt}");
        compared += 1;
    }
    assert_eq!(compared, 21);
    exceptions.end();
}

/// ASME B18.2.1: the length tolerances of pointed and other products share their rows and their
/// minus side.
#[test]
fn hex_bolts_may_be_as_short_as_cap_screws() {
    let (bolts, screws) = (
        InchLengthTolerance::hex_bolts(),
        InchLengthTolerance::cap_screws(),
    );
    assert_eq!(bolts.len(), screws.len());
    for (bolt, screw) in bolts.iter().zip(screws) {
        assert_eq!(
            (
                bolt.size_from,
                bolt.size_thru,
                bolt.length_over,
                bolt.length_thru
            ),
            (
                screw.size_from,
                screw.size_thru,
                screw.length_over,
                screw.length_thru
            )
        );
        assert_eq!(bolt.tolerance_minus, screw.tolerance_minus);
        assert!(
            bolt.tolerance_plus > screw.tolerance_plus
                && bolt.tolerance_plus <= bolt.tolerance_minus
        );
    }
}

/// Lengths that were read: LB = L - LT - Y of ASME B18.2.6; lg = l - b, ls = lg - 3 P and js17 of
/// EN 14399-4.
#[test]
fn structural_body_lengths_as_read() {
    let mut cells = BTreeMap::<String, usize>::new();
    let mut shortest = BTreeMap::<&str, Length>::new();
    for row in csv_rows("tests/data/structural_grips.csv") {
        let inch = row["unit"] == "in";
        let unit: fn(f64) -> Length = if inch { inches } else { millimetres };
        let value = |column: &str| number(&row, column).map(unit);
        let (bolts, rounding) = if inch {
            (StructuralBolt::all_inch(), inches(0.005))
        } else {
            (StructuralBolt::all_metric(), ROUNDING_MM)
        };
        let diameter = value("diameter").unwrap();
        let bolt = bolts
            .iter()
            .find(|bolt| close(bolt.nominal_diameter, diameter, inches(0.0)));
        let (bolt, length) = (bolt.unwrap(), value("length").unwrap());
        let gaging = length - bolt.thread_length;
        let limits = bolt.length_limits(length).unwrap();
        for (column, expected) in [
            ("body_length_min", gaging - bolt.transition_length),
            ("grip_gaging_length_max", gaging),
            ("length_min", limits.min),
            ("length_max", limits.max),
        ] {
            if let Some(read) = value(column) {
                assert!(
                    close(read, expected, rounding),
                    "{bolt} x {length:?} {column}"
                );
                *cells.entry(row["basis"].clone()).or_default() += 1;
            }
        }
        let least = shortest.entry(bolt.size).or_insert(length);
        *least = if length < *least { length } else { *least };
    }
    assert_eq!(cells, BTreeMap::from([("reproduced".into(), 88 + 4 * 34)]));
    for bolt in StructuralBolt::all_inch() {
        assert_eq!(
            bolt.part_thread_length_min,
            Some(shortest[bolt.size]),
            "{bolt}"
        );
        // Less than three pitches, where a cap screw has five.
        let pitch = inches(1.0 / bolt.threads_per_inch.unwrap());
        assert!(bolt.transition_length < 3.0 * pitch, "{bolt}");
    }
}

/// Every pitch is that of a thread of the thread tables, and the bolt is found by it.
#[test]
fn bolts_are_found_by_their_threads() {
    for bolt in StructuralBolt::all_inch() {
        let thread = Thread::unified(bolt.nominal_diameter, UnifiedSeries::Unc).unwrap();
        assert_eq!(thread.threads_per_inch(), bolt.threads_per_inch);
        assert_eq!(StructuralBolt::find(&thread), Ok(bolt));
    }
    let metric = |size: Length, pitch: Length| Thread::metric(size, pitch).unwrap();
    for bolt in StructuralBolt::all_metric() {
        let thread = metric(bolt.nominal_diameter, bolt.pitch.unwrap());
        assert_eq!(StructuralBolt::find(&thread), Ok(bolt));
    }
    for screw in MetricHexCapScrew::all() {
        let thread = metric(screw.nominal_diameter, screw.pitch);
        assert_eq!(MetricHexCapScrew::find(&thread), Ok(screw));
    }
    for screw in FineHexScrew::all() {
        let thread = metric(screw.nominal_diameter, screw.pitch);
        assert_eq!(thread.to_string(), screw.size);
        assert_eq!(FineHexScrew::find(&thread), Ok(screw));
    }
    for screw in SocketHeadCapScrew::all_metric() {
        let thread = metric(screw.nominal_diameter, screw.pitch.unwrap());
        assert_eq!(SocketHeadCapScrew::find(&thread), Ok(screw));
    }
    for bolt in AircraftBolt::all() {
        let threads = UnifiedThread::of_diameter(bolt.nominal_diameter);
        let own = threads
            .iter()
            .find(|t| (t.threads_per_inch - bolt.threads_per_inch).abs() < 1e-9);
        let thread = match own {
            Some(row) => Thread::unified(row.nominal_diameter, row.series),
            None => Thread::unified_special(bolt.nominal_diameter, bolt.threads_per_inch),
        };
        assert_eq!(AircraftBolt::of_thread(&thread.unwrap()), Ok(bolt));
    }
    for row in MetricThread::all() {
        let thread = metric(row.nominal_diameter, row.pitch);
        assert!(HexBolt::find(HexBoltStyle::Hex, &thread).is_err());
        assert!(AircraftBolt::of_thread(&thread).is_err());
    }
}

/// ISO 888: b = 2 d + 6, 12, 25 mm. Bodies, flats and coarse pitches against ISO 4014, read apart.
#[test]
fn metric_screws_follow_iso_4014() {
    // As geometry of the two standards differs from M20 up: looser heads in ASME.
    let mut same_flats = 0;
    for screw in MetricHexCapScrew::all() {
        let d = screw.nominal_diameter;
        for (length, extra) in [
            (screw.thread_length_short, 6.0),
            (screw.thread_length_medium, 12.0),
            (screw.thread_length_long, 25.0),
        ] {
            assert!(
                close(length, 2.0 * d + millimetres(extra), millimetres(0.0)),
                "{screw}"
            );
        }
        let iso = HexScrew::get(d, ProductGrade::A)
            .or_else(|| HexScrew::get(d, ProductGrade::B))
            .unwrap();
        assert_eq!(screw.pitch, iso.pitch);
        assert_eq!(screw.width_across_flats_max, iso.width_across_flats_max);
        same_flats += u32::from(screw.width_across_flats_min == iso.width_across_flats_min);
    }
    assert_eq!(same_flats, 9); // to M16, and M30 and M36, whose ISO rows are grade B
    for screw in FineHexScrew::all() {
        let iso = HexScrew::get(screw.nominal_diameter, ProductGrade::A)
            .or_else(|| HexScrew::get(screw.nominal_diameter, ProductGrade::B))
            .unwrap();
        assert!(screw.pitch < iso.pitch, "{}", screw.size);
        assert_eq!(Some(screw.thread_length_medium), iso.thread_length_medium);
    }
}

/// ASME B18.3: body and head height of the nominal diameter. ISO 4762: body h13, b = 2 d + 12 mm,
/// knurled heads as much above the nominal as the least plain head is below it.
#[test]
fn socket_screws_follow_their_rules() {
    for screw in SocketHeadCapScrew::all_inch() {
        assert_eq!(screw.body_diameter_max, screw.nominal_diameter);
        assert_eq!(screw.size, size_name(screw.nominal_diameter));
        let height = screw.head_height_max;
        assert!(
            height.is_none_or(|height| close(height, screw.nominal_diameter, ROUNDING_INCH)),
            "{screw}"
        );
    }
    let mut exceptions = Exceptions(BTreeSet::from([
        // The rule gives 15.2 mm; 15 is printed.
        "ISO 4762 socket head cap screw M1.6",
    ]));
    for screw in SocketHeadCapScrew::all_metric() {
        let d = screw.nominal_diameter;
        exceptions.check(
            &screw.to_string(),
            close(
                screw.thread_length,
                2.0 * d + millimetres(12.0),
                millimetres(0.0),
            ),
        );
        // IT13 of ISO 286-1 by diameter.
        let it13 = [
            (3.0, 0.14),
            (6.0, 0.18),
            (10.0, 0.22),
            (18.0, 0.27),
            (30.0, 0.33),
            (50.0, 0.39),
            (80.0, 0.46),
        ]
        .into_iter()
        .find(|(thru, _)| d <= millimetres(*thru + 1e-9))
        .map(|(_, tolerance)| millimetres(tolerance))
        .unwrap();
        assert!(
            close(screw.body_diameter_min, d - it13, millimetres(0.0)),
            "{screw}"
        );
        let (plain, knurled) = (
            screw.head_diameter_max.unwrap(),
            screw.head_diameter_knurled_max.unwrap(),
        );
        let above_and_below = 2.0 * plain - screw.head_diameter_min.unwrap();
        assert!(close(knurled, above_and_below, millimetres(0.0)), "{screw}");
    }
    exceptions.end();
}

/// Cells of ISO 4762 that were read: lg = l - b, ls = lg - 5 P; no shank where ls would be under
/// 0.5 d.
#[test]
fn socket_body_lengths_as_read() {
    for row in SocketHeadGrip::all() {
        let screws = SocketHeadCapScrew::all_metric();
        let screw = screws.iter().find(|screw| screw.size == row.size).unwrap();
        let gaging = row.nominal_length - screw.thread_length;
        let body = gaging - 5.0 * screw.pitch.unwrap();
        let shank = body >= 0.5 * row.nominal_diameter;
        assert_eq!(row.is_threaded_to_the_head(), !shank, "{row:?}");
        if let (Some(read_body), Some(read_gaging)) =
            (row.body_length_min, row.grip_gaging_length_max)
        {
            assert!(close(read_body, body, ROUNDING_MM), "{row:?}");
            assert!(close(read_gaging, gaging, ROUNDING_MM), "{row:?}");
        }
    }
}

/// The rule of eighths against every row that was read.
#[test]
fn aircraft_grips_follow_the_rule_of_eighths() {
    let mut exceptions = Exceptions(BTreeSet::from([
        // The shortest bolts keep 1/16 in of grip, AN4-3 with a shorter thread portion.
        "AN3-3",
        "AN4-3",
        "AN4-3 portion",
    ]));
    for row in AircraftGripRow::all() {
        let bolt = AircraftBolt::find(row.bolt).unwrap();
        let eighths = inches(f64::from(row.dash / 10) + f64::from(row.dash % 10) / 8.0);
        let grip = close(row.grip, eighths - bolt.grip_offset.unwrap(), ROUNDING_INCH);
        let length = close(
            row.length,
            eighths + bolt.length_offset.unwrap(),
            ROUNDING_INCH,
        );
        exceptions.check(&format!("{}-{}", row.bolt, row.dash), grip && length);
        // Grip and thread portion make up the length.
        let portion = bolt.thread_portion.unwrap();
        exceptions.check(
            &format!("{}-{} portion", row.bolt, row.dash),
            close(row.grip + portion, row.length, 3.0 * ROUNDING_INCH),
        );
        let found = AircraftGrip::find(&format!("{}-{}A", row.bolt, row.dash)).unwrap();
        assert_eq!(
            (found.grip.nominal, found.provenance),
            (row.grip, row.provenance)
        );
    }
    exceptions.end();
}

#[test]
fn aircraft_grips_of_other_pages() {
    for row in csv_rows("tests/data/aircraft_grips.csv") {
        let found = AircraftGrip::find(&row["designation"]).unwrap();
        assert_eq!(found.provenance.basis, Basis::Computed, "{found}");
        let read = inches(number(&row, "grip").unwrap());
        assert!(close(found.grip.nominal, read, ROUNDING_INCH), "{found}");
    }
}

#[test]
fn aircraft_grips_rise_and_are_found_again() {
    for bolt in AircraftBolt::all() {
        let grips: Vec<AircraftGrip> = (0..=u8::MAX)
            .filter_map(|dash| AircraftGrip::of(bolt, dash).ok())
            .collect();
        assert_eq!(
            grips.is_empty(),
            bolt.grip_offset.is_none(),
            "{}",
            bolt.name
        );
        for pair in grips.windows(2) {
            // AN4-3 and AN4-4 share their grip.
            assert!(pair[0].grip.nominal <= pair[1].grip.nominal, "{}", pair[1]);
            assert!(
                pair[0].length.nominal < pair[1].length.nominal,
                "{}",
                pair[1]
            );
            let found = AircraftGrip::at_least(bolt, pair[1].grip.nominal).unwrap();
            assert_eq!(found.grip.nominal, pair[1].grip.nominal);
            let hair = millimetres(0.001);
            let found = AircraftGrip::at_least(bolt, pair[0].grip.nominal + hair).unwrap();
            assert!(found.grip.nominal >= pair[0].grip.nominal + hair, "{found}");
        }
        for bad in [f64::NAN, f64::INFINITY, 0.0, -1.0, 100.0] {
            assert!(AircraftGrip::at_least(bolt, inches(bad)).is_err());
        }
    }
}

#[test]
fn aircraft_designations() {
    for (text, name) in [
        ("AN4-7", "AN4-7"),
        (" an4-7a ", "AN4-7"),
        ("AN5H-27A", "AN5-27"),
        ("AN5-H27", "AN5-27"),
        ("AN5H27A", "AN5-27"),
    ] {
        assert_eq!(AircraftGrip::find(text).unwrap().to_string(), name);
    }
    for text in [
        "", "A", "AN", "AN-7", "AN4", "AN4-", "AN4-A", "AN4--7", "AN4-+7", "AN4-7B", "AN4C7",
        "AN4-999", "NA4-7", "AN4-18", "AN4-0", "AN99-7", "äN4-7", "AN4-ä", "ä", "AN4-81", "AN7-10",
    ] {
        assert!(AircraftGrip::find(text).is_err(), "{text}");
    }
    let error = AircraftGrip::find("AN3-79").unwrap_err().to_string();
    assert!(
        error.ends_with("its neighbours are AN3-77 and AN3-80"),
        "{error}"
    );
    let error = AircraftGrip::find("AN3-88").unwrap_err().to_string();
    assert!(error.ends_with("it goes from AN3-3 to AN3-80"), "{error}");
    let error = AircraftGrip::find("AN8-12").unwrap_err().to_string();
    assert_eq!(
        error,
        "no known grip for AN8: nobody has read its grips; those of AN3 to AN6 are known"
    );
}

#[test]
fn lengths_that_are_none_are_refused() {
    let thread: Thread = "M20".parse().unwrap();
    for bad in [f64::NAN, f64::INFINITY, 0.0, -1.0] {
        assert!(HexBolt::all()[0].length_limits(inches(bad)).is_err());
        assert!(
            StructuralBolt::all_inch()[0]
                .length_limits(inches(bad))
                .is_err()
        );
        assert!(
            StructuralBolt::all_metric()[0]
                .length_limits(inches(bad))
                .is_err()
        );
        assert!(SocketHeadGrip::find(&thread, inches(bad)).is_err());
    }
    let long = StructuralBolt::all_metric()[0].length_limits(millimetres(900.0));
    assert_eq!(
        long.unwrap_err().to_string(),
        "900.0 mm is not in the table of length tolerances js17; it goes up to 500 mm"
    );
}

/// The diameter a size label names.
fn nominal(size: &str) -> Length {
    match size.strip_prefix('#') {
        Some(number) => inches(0.060 + 0.013 * number.parse::<f64>().unwrap()),
        None => shankline::units::parse(&format!("{size} in")).unwrap(),
    }
}

/// The size label of a diameter, by the thread table.
fn size_name(diameter: Length) -> &'static str {
    UnifiedThread::of_diameter(diameter).first().unwrap().size
}
