//! Limits on both sides, and figures worked out by hand or printed.

use super::strip::{EndLoss, EngagedLength, bolt_thread_area, nut_thread_area};
use super::*;
use crate::error::DesignationProblem;
use crate::error::LONGEST;
use crate::units::{inches, millimetres, square_millimetres};
use alloc::string::ToString;
use alloc::vec::Vec;
use core::hash::{Hash, Hasher};

fn thread(text: &str) -> Thread {
    text.parse().unwrap()
}

fn problem(text: &str) -> DesignationProblem {
    match text.parse::<Thread>() {
        Err(Error::Designation { problem, .. }) => problem,
        other => panic!("{text}: {other:?}"),
    }
}

#[track_caller]
fn near(found: f64, right: f64) {
    assert!(
        (found - right).abs() <= 2e-6 * right.abs(),
        "{found} is not {right}"
    );
}

fn mm(length: Length) -> f64 {
    length.value * 1e3
}

#[test]
fn threads_of_one_size() {
    for (one, other, same) in [
        ("M12", "M12x1.75", true),
        ("M12", "M12-6g-LH", true),
        ("M12", "M12x1.25", false),
        ("M12", "M14x1.75 special", false),
        ("1/2-13 UNC", "1/2-20 UNF", false),
        ("1-8 UNC", "M25.4x3.175 special", false),
    ] {
        assert_eq!(
            thread(one).is_same_size(&thread(other)),
            same,
            "{one} {other}"
        );
    }
}

#[test]
fn areas_have_limits() {
    let more = LONGEST + millimetres(1.0);
    for (diameter, pitch, right) in [
        (LONGEST, millimetres(1.0), true),
        (more, millimetres(1.0), false),
        (LONGEST, LONGEST, true),
        (LONGEST, more, false),
    ] {
        assert_eq!(area::metric(diameter, pitch).is_ok(), right, "{diameter:?}");
    }
}

/// The thread that has just what is needed is large enough.
#[test]
fn at_least_is_met_by_as_much() {
    use crate::tables::threads::MetricSeries::Coarse;
    let m12 = thread("M12");
    for needed in [
        AtLeast::Diameter(m12.nominal_diameter()),
        AtLeast::StressArea(m12.tensile_stress_area()),
        AtLeast::PrintedStressArea(m12.tabulated_stress_area().unwrap()),
        AtLeast::CoreArea(m12.minor_area()),
        AtLeast::ShankArea(m12.shank_area()),
    ] {
        let found = Thread::metric_at_least(Coarse, needed).unwrap().next();
        assert_eq!(found, Some(m12), "{needed}");
    }
    let much = square_millimetres(1e6);
    for (needed, words) in [
        (
            AtLeast::StressArea(much),
            "tensile stress area of a metric coarse",
        ),
        (
            AtLeast::PrintedStressArea(much),
            "tensile stress area of a metric coarse",
        ),
        (AtLeast::CoreArea(much), "core area of a metric coarse"),
        (AtLeast::ShankArea(much), "shank area of a metric coarse"),
    ] {
        let error = Thread::metric_at_least(Coarse, needed).err().unwrap();
        assert!(error.to_string().starts_with(words), "{error}");
    }
}

/// A pitch before the symbol of a series repeats the pitch.
#[test]
fn every_series_may_have_its_pitch_before_it() {
    for text in [
        "2-5/8-4 UN",
        "2-5/8-6 UN",
        "2-5/8-8 UN",
        "2-5/8-12 UN",
        "2-5/8-16 UN",
        "2-5/8-20 UN",
        "13/16-28 UN",
        "7/16-32 UN",
    ] {
        let (size, pitch) = text.strip_suffix(" UN").unwrap().rsplit_once('-').unwrap();
        for long in [
            alloc::format!("{size}-{pitch} {pitch}-UN"),
            alloc::format!("{size}-{pitch} {pitch}UN"),
        ] {
            assert_eq!(
                thread(&long).to_string(),
                thread(text).to_string(),
                "{long}"
            );
        }
        assert_eq!(
            problem(&alloc::format!("{size}-{pitch} 7-UN")),
            DesignationProblem::Series
        );
    }
    // A number that is none of a series is not passed over, however long.
    for number in ["1000000", "1000001", "4294967295", "99999999999"] {
        assert_eq!(
            problem(&alloc::format!("1-12 {number}UN")),
            DesignationProblem::Series,
            "{number}"
        );
    }
}

#[test]
fn nothing_is_no_size_and_no_pitch() {
    for (text, wrong) in [
        ("M0", DesignationProblem::Size),
        ("M0x1", DesignationProblem::Size),
        ("M12x0", DesignationProblem::Pitch),
        ("M16xPh0P1.5", DesignationProblem::Pitch),
        ("M16xPh3P0", DesignationProblem::Pitch),
        ("1/2-0 UNC", DesignationProblem::Pitch),
        ("1/2-0P-0.1L UNC", DesignationProblem::Pitch),
        ("0.0-20 UNS", DesignationProblem::Size),
        ("1/2-13 UNC-2A SE 0", DesignationProblem::Engagement),
        ("M20-7g6g-0", DesignationProblem::Engagement),
        ("M1.2.0", DesignationProblem::Size),
        ("1-40000000000/1-8 UNC", DesignationProblem::Pitch),
    ] {
        assert_eq!(problem(text), wrong, "{text}");
    }
    // A decimal size has no fraction after it.
    assert!("1.5-1/2 UNC".parse::<Thread>().is_err());
    assert_eq!(thread("1-1/2 UNC").nominal_diameter(), inches(1.5));
}

/// What a thread in no table is near to.
#[test]
fn near_sizes_are_named() {
    for (text, words, never) in [
        ("#2 UNEF", "#2-56 UNC", "2-4.5"),
        ("2 UNEF", "2-4.5 UNC", "#2-56"),
        ("M71", "the nearest sizes are M70 and M72", "M12"),
        ("M10x0.9", "at that diameter there are M10, ", "M12"),
        ("0.33-20 UN", "the nearest sizes are 5/16 and 3/8", "1/2"),
    ] {
        let available = match problem(text) {
            DesignationProblem::NotStandard { available } => available,
            other => panic!("{text}: {other:?}"),
        };
        assert!(available.contains(words), "{text}: {available}");
        assert!(!available.contains(never), "{text}: {available}");
    }
    let error = Thread::unified(inches(0.33), crate::tables::threads::UnifiedSeries::Unc);
    let error = error.unwrap_err().to_string();
    assert!(error.starts_with("0.33 in UNC is not in"), "{error}");
}

/// Pitches of several starts as they are read and written.
#[test]
fn pitches_of_several_starts() {
    for (text, written) in [
        // Fewer than four decimals are exact.
        (
            "1-.125P-.25L (2 STARTS) UNC",
            "1-0.125P-0.25L (2 STARTS) UNC",
        ),
        // Six decimals are rounded to half a millionth: 1/13 = 0.076923077.
        (
            "1/2-0.076923P-0.153846L UNC",
            "1/2-0.0769P-0.1538L (2 STARTS) UNC",
        ),
        // 1/13.004 = 0.0768994: five decimals, of which the zero tells it from 1/13.
        (
            "1-0.07690P-0.15380L UNS",
            "1-0.07690P-0.15380L (2 STARTS) UNS",
        ),
        (
            "0.75-0.062667P-0.188L UNS",
            "0.75-0.062667P-0.188001L (3 STARTS) UNS",
        ),
    ] {
        let found = thread(text).to_string();
        assert_eq!(found, written);
        assert_eq!(thread(&found), thread(text));
    }
    // Three pitches of 0.062666 +- 0.0000005 in are 0.187998 +- 0.0000015, and 0.188 is none of them.
    assert_eq!(
        problem("0.75-0.062666P-0.188L UNS"),
        DesignationProblem::Starts
    );
}

#[derive(Default)]
struct Bytes(Vec<u8>);

impl Hasher for Bytes {
    fn finish(&self) -> u64 {
        0
    }
    fn write(&mut self, bytes: &[u8]) {
        self.0.extend_from_slice(bytes);
    }
}

/// What is not the same is hashed and sorted apart: inch threads before metric ones, coarse before fine.
#[test]
fn threads_are_hashed_and_sorted() {
    fn hash(one: impl Hash) -> Vec<u8> {
        let mut bytes = Bytes::default();
        one.hash(&mut bytes);
        bytes.0
    }
    let order = [
        "1/2-13 UNC",
        "1/2-20 UNF",
        "4-4 UNC",
        "M1.6",
        "M12",
        "M12x1.25",
        "M14",
    ]
    .map(thread);
    assert!(order.is_sorted());
    for pair in order.windows(2) {
        assert!(pair[0] < pair[1]);
        assert_ne!(hash(pair[0]), hash(pair[1]));
    }
    assert_eq!(hash(thread("M12")), hash(thread("M12x1.75")));
    let [short, long] = [10.0, 20.0].map(|length| Engagement::Length(millimetres(length)));
    assert!(short < long);
    assert_eq!(short.partial_cmp(&long), Some(core::cmp::Ordering::Less));
    assert_ne!(hash(short), hash(long));
}

/// A caliper reads M12: listed from a quarter of a pitch below to 0.1 mm above, within 5 % of the pitch.
#[test]
fn a_measured_thread() {
    let of = |diameter: f64, pitch: f64| {
        let found = Thread::identify(millimetres(diameter), millimetres(pitch)).unwrap();
        found
            .into_iter()
            .find(|found| found.thread == thread("M12"))
    };
    for (diameter, pitch, listed) in [
        (11.563, 1.75, true),
        (11.562, 1.75, false),
        (12.099, 1.75, true),
        (12.101, 1.75, false),
        (11.8, 1.75 * 1.049, true),
        (11.8, 1.75 * 1.051, false),
        (11.8, 1.75 * 0.951, true),
        (11.8, 1.75 * 0.949, false),
    ] {
        assert_eq!(of(diameter, pitch).is_some(), listed, "{diameter} {pitch}");
    }
    // Of what lies between the mean, 0.1 P below, and the end of what is listed.
    near(of(12.05, 1.75).unwrap().distance.value, 0.225 / 0.275);
    near(of(11.7, 1.75).unwrap().distance.value, 0.125 / 0.2625);
    near(of(11.825, 1.75 * 1.03).unwrap().distance.value, 0.6);
    for (diameter, pitch, within) in [
        (11.825, 1.75, true),
        (11.601, 1.75, true),
        (11.599, 1.75, false),
        (12.049, 1.75, true),
        (12.051, 1.75, false),
        (11.825, 1.75 * 1.019, true),
        (11.825, 1.75 * 1.021, false),
        (11.825, 1.75 * 0.979, false),
    ] {
        assert_eq!(
            of(diameter, pitch).unwrap().within_uncertainty,
            within,
            "{diameter} {pitch}"
        );
    }
}

#[test]
fn common_threads_are_coarse_fine_or_selected() {
    for (text, common) in [
        ("M12", true),
        ("M12x1.25", true),
        ("M11", true),
        ("M12x1", false),
        ("1/2-13 UNC", true),
        ("1/2-20 UNF", true),
        ("1/2-28 UNEF", false),
        ("1/2-16 UN", false),
        ("M10x0.9 special", false),
    ] {
        assert_eq!(thread(text).is_common(), common, "{text}");
    }
}

/// ISO 965-2, M12-6H/6g: pitch diameters 10.863 to 11.063 and 10.679 to 10.829; G and g are 34 um off.
#[test]
fn metric_limits_in_print() {
    let fit = thread("M12")
        .fit("6g".parse().unwrap(), "6H".parse().unwrap())
        .unwrap();
    near(mm(fit.pitch_clearance.min), 0.034);
    near(mm(fit.pitch_clearance.max), 0.384);
    assert!(!fit.may_touch() && !fit.may_interfere());
    for (least, touches, interferes) in [
        (1e-6, false, false),
        (0.0, true, false),
        (-1e-6, true, false),
        (-1e-3, true, true),
    ] {
        let pitch_clearance = Limits {
            min: millimetres(least),
            ..fit.pitch_clearance
        };
        let fit = ThreadFit {
            pitch_clearance,
            ..fit.clone()
        };
        assert_eq!(
            (fit.may_touch(), fit.may_interfere()),
            (touches, interferes),
            "{least}"
        );
    }
    let nut = thread("M12-6G").limits().unwrap();
    near(mm(nut.pitch_diameter.min), 10.897);
    near(mm(nut.crest_diameter.min), 10.140);
    near(mm(nut.root_diameter.min.unwrap()), 12.034);
    // Positions of pitch and crest diameter each count for their own.
    let bolt = thread("M12-6g6h").limits().unwrap();
    near(mm(bolt.pitch_diameter.max), 10.829);
    near(mm(bolt.crest_diameter.max), 12.0);
    let bolt = thread("M12-6h6g").limits().unwrap();
    near(mm(bolt.pitch_diameter.max), 10.863);
    near(mm(bolt.crest_diameter.max), 11.966);
    assert_eq!(bolt.cautions().iter().count(), 0);
    // 1180 um of grade 8 for 8 mm was recalled.
    let coarse = thread("M130x8 special-8g");
    if let Ok(limits) = coarse.limits() {
        assert_eq!(limits.cautions().iter().count(), 1);
    }
}

/// ASME B1.1: the tolerance of the minor diameter, 0.15 P below 4 threads per inch, and 0.23 P - 1.5 P2 of class 3B from 13.
#[test]
fn unified_minor_diameters_by_formula() {
    for (text, least, greatest) in [
        // 4 - 1.082532 / 3 = 3.6392, + 0.0500
        ("4-3 UNS-2B", 3.639, 3.689),
        // 4 - 1.082532 / 13 = 3.9167, + 0.0088
        ("4-13 UNS-3B", 3.917, 3.9255),
        ("1/2-13 UNC-3B", 0.417, 0.4284),
        ("1/2-13 UNC-2B", 0.417, 0.434),
    ] {
        let limits = thread(text).limits().unwrap();
        near(limits.crest_diameter.min.value, inches(least).value);
        near(limits.crest_diameter.max.value, inches(greatest).value);
    }
}

#[test]
fn strip_areas_have_limits() {
    let of =
        |k: Length, e: Length, pitch: Length, le: Length| bolt_thread_area(k, e, pitch, le).is_ok();
    let [k, e, pitch, le] = [10.0, 11.0, 1.75, 10.0].map(millimetres);
    let more = LONGEST + millimetres(1.0);
    assert!(of(k, e, pitch, le));
    // Two that are negative do not make an area.
    assert!(!of(millimetres(-12.0), millimetres(-20.0), pitch, le));
    assert!(!of(k, e, -pitch, -le));
    assert!(of(k, e, pitch, LONGEST) && !of(k, e, pitch, more));
    assert!(of(LONGEST, LONGEST, pitch, le) && !of(more, more, pitch, le));
    assert!(of(k, e, LONGEST, le) && !of(k, e, more, le));
    assert!(!of(k, e, crate::units::from_base(5e-324), le));
    let zero = millimetres(0.0);
    assert!(!of(zero, e, pitch, le) && !of(k, e, zero, le) && !of(k, e, pitch, zero));
    assert!(nut_thread_area(k, e, pitch, le).is_ok());
    // P / 2 + (E - K) / sqrt 3 = 0
    assert!(!of(millimetres(12.0), millimetres(10.0), pitch, le));
    let engaged = EngagedLength::new(le).unwrap();
    let m12 = thread("M12");
    for (end, lost, cautions) in [
        (EndLoss::Chamfers(2), 3.5, 0),
        (EndLoss::Vdi2230, 1.4, 1),
        (EndLoss::Length(millimetres(3.0)), 3.0, 0),
    ] {
        let left = engaged.less(end, &m12).unwrap();
        near(mm(left.full_threads()), 10.0 - lost);
        let areas = m12.strip_areas_basic(left).unwrap();
        assert_eq!(areas.cautions().iter().count(), cautions, "{end:?}");
        areas.derivation().check().unwrap();
    }
    let all = |length| engaged.less(EndLoss::Length(length), &m12).is_ok();
    assert!(all(millimetres(9.999)) && !all(le));
}

/// Wires touch the flanks from 7/12 to 7/6 of the height of the sharp thread.
#[test]
fn wires_at_their_limits() {
    use super::wires::LeadAngle::Neglected;
    for text in ["M20", "M12", "1-8 UNC"] {
        let thread = thread(text);
        let d2 = thread.basic_pitch_diameter();
        for (share, right) in [
            (7.0 / 12.0, true),
            (0.583, false),
            (7.0 / 6.0, true),
            (1.167, false),
        ] {
            let wire = share * area::H_PER_PITCH * thread.pitch();
            assert_eq!(
                thread.over_wires(d2, wire, Neglected).is_ok(),
                right,
                "{share}"
            );
        }
        let at = |share: f64| {
            thread
                .over_wires(d2 + share * thread.pitch(), thread.best_wire(), Neglected)
                .is_ok()
        };
        assert!(at(0.249) && at(-0.249) && !at(0.251) && !at(-0.251));
    }
}
