//! Strip areas, engagement, profiles, percentages and wires against print, and their invariants.
//!
//! A print is met to half a unit of its last digit. Prints that do not follow are named in the column
//! `exception` and must really differ.

mod support;

use proptest::prelude::*;
use shankline::prelude::*;
use shankline::strength::strip::{
    StripMethod, ThreadFailure, ThreadMaterial, engagement_for_load, minimum_engagement, stripping,
};
use shankline::tables::threads::{MetricThread, UnifiedThread};
use shankline::thread::percent::FullThread;
use shankline::thread::strip::{EndLoss, EngagedLength, StripAreas};
use shankline::thread::wires::LeadAngle;
use shankline::thread::{Profile, ThreadFit};
use shankline::uom::si::angle::degree;
use shankline::uom::si::force::newton;
use shankline::uom::si::length::{inch, millimeter};
use support::{Row, csv_rows, decimals, number};

fn thread(text: &str) -> Thread {
    text.parse().unwrap_or_else(|e| panic!("{text}: {e}"))
}

fn fit_of(bolt: &str, nut: &str) -> ThreadFit {
    ThreadFit::of(
        &thread(bolt).limits().unwrap(),
        &thread(nut).limits().unwrap(),
    )
    .unwrap()
}

fn full(length: Length) -> EngagedLength {
    EngagedLength::new(length).unwrap()
}

/// Within half a unit of the last printed digit, or not, where the row says why.
fn compare(row: &Row, found: f64, counts: &mut (usize, usize)) {
    let printed = &row["printed"];
    let value = number(row, "printed").unwrap();
    let half_a_unit = if printed.contains('.') || !printed.ends_with('0') {
        0.5 * 10f64.powi(-i32::try_from(decimals(printed)).unwrap())
    } else {
        0.5
    };
    let agrees = (found - value).abs() <= half_a_unit * (1.0 + 1e-9);
    if row["exception"].is_empty() {
        assert!(agrees, "{row:?}: found {found}");
        counts.0 += 1;
    } else {
        assert!(!agrees, "{row:?}: exception not needed, found {found}");
        counts.1 += 1;
    }
    assert!(
        matches!(&*row["basis"], "published" | "reproduced"),
        "{row:?}"
    );
}

#[test]
fn printed_strip_areas_and_engagements() {
    let mut counts = (0, 0);
    for row in csv_rows("tests/data/thread_strip.csv") {
        let fit = fit_of(&row["bolt"], &row["nut"]);
        let areas = fit.strip_areas(full(millimetres(10.0))).unwrap();
        let length = |length: Length| match &*row["unit"] {
            "in" => length.get::<inch>(),
            "mm" => length.get::<millimeter>(),
            other => panic!("{other}"),
        };
        let (load, stress) = (newtons(69_600.0), megapascals(130.0));
        let found = match &*row["quantity"] {
            // Square inches for each inch.
            "nut_area_per_length" => length(areas.nut_threads / areas.engagement),
            "nut_engagement" => {
                let needed = engagement_for_load(&areas, load, megapascals(720.0), stress);
                length(needed.unwrap().nut_threads)
            }
            "nut_engagement_at_9.968" => {
                // The same formula with the diameter of the print.
                let (d, en, p) = (9.968, 9.206, 1.5);
                let tan = 1.0 / 3.0_f64.sqrt();
                let rate = std::f64::consts::PI * d / p * (p / 2.0 + tan * (d - en));
                69_600.0 / 130.0 / rate
            }
            "breaking_load" => {
                // On the printed stress area.
                let area = fit.bolt.thread.tabulated_stress_area().unwrap();
                (megapascals(1200.0) * area).get::<newton>()
            }
            "bolt_major_max" => length(fit.bolt.crest_diameter.max),
            "nut_pitch_max" => length(fit.nut.pitch_diameter.max),
            other => panic!("{other}"),
        };
        compare(&row, found, &mut counts);
    }
    assert_eq!(counts, (12, 1));
}

#[test]
fn printed_profiles_percentages_and_wires() {
    let mut counts = (0, 0);
    for row in csv_rows("tests/data/thread_measures.csv") {
        let thread = thread(&row["thread"]);
        let profile = thread.basic_profile();
        let inches_or_mm = |value: f64| match &*row["unit"] {
            "in" => inches(value),
            _ => millimetres(value),
        };
        let length = |length: Length| match &*row["unit"] {
            "in" => length.get::<inch>(),
            "mm" => length.get::<millimeter>(),
            "P" => (length / thread.pitch()).value,
            other => panic!("{other}"),
        };
        let given = || inches_or_mm(number(&row, "value").unwrap());
        let found = match &*row["quantity"] {
            "over_wires" => {
                let d2 = thread.basic_pitch_diameter();
                let measured = thread.over_wires(d2, given(), LeadAngle::Neglected);
                length(measured.unwrap().over_wires)
            }
            "best_wire" => length(thread.best_wire()),
            "thread_percentage" => {
                let share = thread.thread_percentage(given(), FullThread::SharpRoot);
                100.0 * share.unwrap().value
            }
            "nut_minor_diameter" => length(profile.nut_minor_diameter),
            "bolt_root_diameter" => length(profile.bolt_root_diameter),
            "bolt_thread_height" => length(profile.bolt_thread_height),
            "overlap" => length(profile.overlap),
            "root_radius_max" => length(profile.bolt_root_radius.unwrap().max),
            "root_radius_min" => length(profile.bolt_root_radius.unwrap().min),
            other => panic!("{other}"),
        };
        compare(&row, found, &mut counts);
    }
    assert_eq!(counts, (16, 3));
}

/// Alexander and VDI 2230 write the formula in d, d2, D1, D2 and m/P; it is the same.
#[test]
fn metric_form_is_the_inch_form() {
    let fit = fit_of("M16-6g", "M16-6H");
    let m = millimetres(13.0);
    let areas = fit.strip_areas(full(m)).unwrap();
    let p = millimetres(2.0);
    let (d, d2) = (fit.bolt.crest_diameter.min, fit.bolt.pitch_diameter.min);
    let (d1, nut_d2) = (fit.nut.crest_diameter.max, fit.nut.pitch_diameter.max);
    let tan = std::f64::consts::FRAC_PI_6.tan();
    let sgm = std::f64::consts::PI * d * (m / p) * (0.5 * p + tan * (d - nut_d2));
    let sgs = std::f64::consts::PI * d1 * (m / p) * (0.5 * p + tan * (d2 - d1));
    assert!(((areas.nut_threads / sgm).value - 1.0).abs() < 1e-12);
    assert!(((areas.bolt_threads / sgs).value - 1.0).abs() < 1e-12);
}

/// At basic size the formula is 0.75 pi D1 LE and 0.875 pi D LE, for every thread of the tables.
#[test]
fn basic_form_is_a_share_of_the_cylinders() {
    for thread in table_threads() {
        let length = 5.0 * thread.pitch();
        let areas = thread.strip_areas_basic(full(length)).unwrap();
        let bolt = 0.75 * std::f64::consts::PI * (thread.basic_minor_diameter() * length);
        let nut = 0.875 * std::f64::consts::PI * (thread.nominal_diameter() * length);
        assert!(
            ((areas.bolt_threads / bolt).value - 1.0).abs() < 1e-9,
            "{thread}"
        );
        assert!(
            ((areas.nut_threads / nut).value - 1.0).abs() < 1e-9,
            "{thread}"
        );
        // Half the pitch cylinder is less than both.
        let short = thread.strip_areas_simplified(full(length)).unwrap();
        assert!(short.bolt_threads < areas.bolt_threads, "{thread}");
    }
}

fn table_threads() -> impl Iterator<Item = Thread> {
    let unified = UnifiedThread::all()
        .iter()
        .map(|row| Thread::unified(row.nominal_diameter, row.series).unwrap());
    let metric = MetricThread::all()
        .iter()
        .map(|row| Thread::metric(row.nominal_diameter, row.pitch).unwrap());
    unified.chain(metric)
}

/// Every thread of the tables in the classes of ordinary bolts: least material has less area than
/// basic size, and bolt threads less than nut threads but for coarse tolerances of fine threads.
#[test]
fn least_material_is_less_than_basic() {
    let mut pairs = 0;
    for thread in table_threads() {
        let (bolt, nut) = if thread.is_unified() {
            ("2A", "2B")
        } else {
            ("6g", "6H")
        };
        let Ok(fit) = thread.fit(bolt.parse().unwrap(), nut.parse().unwrap()) else {
            continue;
        };
        let engaged = full(thread.nominal_diameter());
        let least = fit.strip_areas(engaged).unwrap();
        let basic = thread.strip_areas_basic(engaged).unwrap();
        assert!(least.bolt_threads < basic.bolt_threads, "{thread}");
        assert!(least.nut_threads < basic.nut_threads, "{thread}");
        pairs += 1;
    }
    assert!(pairs > 440, "{pairs}");
}

/// J and Q of the handbook say what the strengths say: at that engagement the weaker thread just holds
/// the breaking load.
#[test]
fn least_engagement_by_the_handbook_is_that_of_the_strengths() {
    for (bolt, nut, strengths) in [
        ("1/2-13 UNC-2A", "1/2-13 UNC-2B", (90.0, 30.0)),
        ("1/2-13 UNC-2A", "1/2-13 UNC-2B", (90.0, 90.0)),
        ("1-8 UNC-2A", "1-8 UNC-2B", (150.0, 60.0)),
        ("3/8-24 UNF-3A", "3/8-24 UNF-3B", (180.0, 200.0)),
        ("M20-6g", "M20-6H", (120.0, 40.0)),
    ] {
        let fit = fit_of(bolt, nut);
        let material = |strength| ThreadMaterial::new(ksi(strength), None).unwrap();
        let (bolt, nut) = (material(strengths.0), material(strengths.1));
        let least = minimum_engagement(&fit, &bolt, &nut).unwrap();
        let areas = fit.strip_areas(full(least.engagement)).unwrap();
        let result = stripping(&areas, &bolt, &nut, StripMethod::FedStdH28).unwrap();
        let weaker = result.bolt_threads.min(result.nut_threads);
        assert!(((weaker / result.breaking_load).value - 1.0).abs() < 1e-12);
        assert!(((result.minimum_engagement() / least.engagement).value - 1.0).abs() < 1e-12);
        assert_eq!(least.derivation().check(), Ok(()));
        assert_eq!(
            least.strength_ratio > 1.0,
            least.engagement > least.equal_materials
        );
        let load = engagement_for_load(
            &areas,
            result.breaking_load,
            result.bolt_shear_strength,
            result.nut_shear_strength,
        )
        .unwrap();
        assert!(((load.engagement / least.engagement).value - 1.0).abs() < 1e-12);
    }
}

/// Factors shift what fails first: a narrow nut of a bolt's own strength strips by Alexander.
#[test]
fn nut_dilation_weakens_both_threads() {
    let fit = fit_of("M12-6g", "M12-6H");
    let areas = fit.strip_areas(full(millimetres(8.0))).unwrap();
    let steel = ThreadMaterial::new(megapascals(800.0), None).unwrap();
    let of = |width: Option<f64>| {
        let width_across_flats = width.map(millimetres);
        let method = StripMethod::Alexander { width_across_flats };
        stripping(&areas, &steel, &steel, method).unwrap()
    };
    let (narrow, wide, block) = (of(Some(17.0)), of(Some(22.0)), of(None));
    assert!(narrow.bolt_threads < wide.bolt_threads && wide.bolt_threads < block.bolt_threads);
    assert!(narrow.nut_threads < wide.nut_threads && wide.nut_threads < block.nut_threads);
    assert_eq!(narrow.first, ThreadFailure::BoltThreads);
}

#[test]
fn profiles_that_go_into_each_other() {
    let goes = |bolt: &str, nut: &str| thread(bolt).goes_into(&thread(nut));
    for (bolt, nut) in [
        ("1/4-28 UNF-2A", "1/4-28 UNF-2B"),
        ("1/4-28 UNRF-2A", "1/4-28 UNF-2B"),
        ("1/4-28 UNF-3A", "1/4-28 UNJF-3B"),
        ("1/4-28 UNRF-3A", "1/4-28 UNJF-3B"),
        ("1/4-28 UNJF-3A", "1/4-28 UNJF-3B"),
        ("M6-6g", "MJ6x1-4H5H"),
        ("MJ6x1-4h6h", "MJ6x1-4H5H"),
        ("M8-6g-LH", "M8-6H-LH"),
        ("M16xPh4P2-6g", "M16xPh4P2-6H"),
    ] {
        assert!(goes(bolt, nut).is_ok(), "{bolt} {nut}");
    }
    for (bolt, nut, reason) in [
        ("1/4-28 UNJF-3A", "1/4-28 UNF-3B", "large root radius"),
        ("MJ6x1-4h6h", "M6-6H", "large root radius"),
        ("1/4-28 UNF-2A", "1/4-28 UNRF", "external threads only"),
        ("M8-6g-LH", "M8-6H", "left-hand"),
        ("M8-6g", "M8-6H-LH", "left-hand"),
        ("M16xPh4P2-6g", "M16-6H", "starts"),
        ("M8-6H", "M8-6H", "class of the bolt"),
    ] {
        let error = goes(bolt, nut).unwrap_err().to_string();
        assert!(error.contains(reason), "{bolt} {nut}: {error}");
    }
}

/// Limits nobody has read are refused, and say so.
#[test]
fn no_limits_of_large_roots_and_several_starts() {
    for text in ["1/4-28 UNJF-3A", "MJ6x1-4h6h", "M16xPh4P2-6g"] {
        let error = thread(text).limits().unwrap_err();
        assert!(matches!(error, Error::NoValue { .. }), "{text}: {error}");
    }
    // UNR bolts have the limits of UN bolts and go into UN nuts.
    let unr: Thread = thread("1/2-20 UNRF");
    let fit = unr
        .fit("2A".parse().unwrap(), "2B".parse().unwrap())
        .unwrap();
    assert_eq!(fit.nut.thread.profile(), Profile::Un);
    let un = thread("1/2-20 UNF-2A").limits().unwrap();
    assert_eq!(fit.bolt.pitch_diameter, un.pitch_diameter);
    // A special length of engagement in the designation is the one the limits are for.
    let special = thread("1/2-13 UNC-2A SE 0.75").limits().unwrap();
    assert_eq!(special.length_of_engagement, Some(inches(0.75)));
}

/// As the tables print it: degrees and whole minutes.
#[test]
fn lead_angles_follow_the_starts() {
    let one = thread("1/2-13 UNC");
    let three = one.with_starts(3).unwrap();
    let ratio = three.lead_angle().value.tan() / one.lead_angle().value.tan();
    assert!((ratio - 3.0).abs() < 1e-12);
    assert!((three.lead() - 3.0 * one.pitch()).abs() < inches(1e-12));
}

/// The formulas shown for every profile are those of the values.
#[test]
fn workings_of_every_profile() {
    for text in [
        "3/4-10 UNC",
        "3/4-10 UNRC",
        "3/4-10 UNJC",
        "M12",
        "MJ12x1.75",
    ] {
        let thread = thread(text);
        assert_eq!(
            thread.basic_profile().derivation().check(),
            Ok(()),
            "{text}"
        );
        let engaged = full(thread.nominal_diameter());
        for areas in [
            thread.strip_areas_basic(engaged).unwrap(),
            thread.strip_areas_simplified(engaged).unwrap(),
        ] {
            assert_eq!(areas.derivation().check(), Ok(()), "{text}");
        }
    }
}

#[cfg(feature = "serde")]
mod data {
    use super::*;
    use serde_json::{from_value, json, to_value};

    #[test]
    fn inputs_read_back_and_results_carry_units() {
        let engaged = full(millimetres(12.0))
            .less(EndLoss::Chamfers(1), &thread("M10"))
            .unwrap();
        let back: EngagedLength = from_value(to_value(engaged).unwrap()).unwrap();
        assert_eq!(back, engaged);
        let block = ThreadMaterial::new(megapascals(250.0), Some(megapascals(150.0))).unwrap();
        let back: ThreadMaterial = from_value(to_value(&block).unwrap()).unwrap();
        assert_eq!(back, block);
        for method in [
            StripMethod::FedStdH28,
            StripMethod::ShearStrength,
            StripMethod::Alexander {
                width_across_flats: Some(millimetres(16.0)),
            },
            StripMethod::Vdi2230 {
                width_across_flats: None,
            },
        ] {
            let back: StripMethod = from_value(to_value(method).unwrap()).unwrap();
            assert_eq!(back, method);
            let areas = thread("M10").strip_areas_basic(engaged).unwrap();
            let block = block.clone().with_shear_ratio(0.6).unwrap();
            let result = to_value(stripping(&areas, &block, &block, method).unwrap()).unwrap();
            assert_eq!(result["ultimate"]["unit"], "N");
            assert_eq!(result["areas"]["thread"], "M10");
        }
        let text: ThreadMaterial = from_value(json!({"tensile_strength": "60 ksi"})).unwrap();
        assert_eq!(text.shear_strength(), None);
    }

    #[test]
    fn bad_inputs_are_refused_by_name() {
        let message = |value| from_value::<ThreadMaterial>(value).unwrap_err().to_string();
        assert!(message(json!({"tensile_strength": "5 mm"})).contains("tensile_strength"));
        assert!(message(json!({"tensile_strength": "-5 MPa"})).contains("greater than zero"));
        assert!(message(json!({"tensile": "5 MPa"})).contains("unknown field"));
        let engaged = json!({"overlap": "5 mm", "lost": "6 mm"});
        assert!(from_value::<EngagedLength>(engaged).is_err());
        let method = json!({"alexander": {"width": "16 mm"}});
        assert!(from_value::<StripMethod>(method).is_err());
    }
}

fn any_fit() -> impl Strategy<Value = ThreadFit> {
    let names = [
        ("#10-32 UNF-2A", "#10-32 UNF-2B"),
        ("1/4-20 UNC-1A", "1/4-20 UNC-1B"),
        ("1/2-13 UNC-2A", "1/2-13 UNC-2B"),
        ("1-8 UNC-3A", "1-8 UNC-3B"),
        ("M6-6g", "M6-6H"),
        ("M20-6h", "M20-6G"),
        ("M36x3-6e", "M36x3-7H"),
    ];
    prop::sample::select(names.to_vec()).prop_map(|(bolt, nut)| fit_of(bolt, nut))
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 512, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn strip_areas_rise_with_engagement(fit in any_fit(), short in 0.1..100.0f64, more in 1e-3..100.0f64) {
        let of = |length| fit.strip_areas(full(millimetres(length))).unwrap();
        let (a, b) = (of(short), of(short + more));
        prop_assert!(a.bolt_threads < b.bolt_threads && a.nut_threads < b.nut_threads);
        let over = a.over(b.engagement).unwrap();
        prop_assert!(((over.nut_threads / b.nut_threads).value - 1.0).abs() < 1e-12);
        // Worst limits lie below a pair at basic size.
        let basic = fit.bolt.thread.strip_areas_basic(full(millimetres(short))).unwrap();
        prop_assert!(a.nut_threads < basic.nut_threads && a.bolt_threads < basic.bolt_threads);
    }

    #[test]
    fn ends_take_off_what_they_say(overlap in 1.0..100.0f64, ends in 0..6_u8, loss in 0.0..20.0f64) {
        let thread = thread("M10");
        let engaged = full(millimetres(overlap));
        let lost = 1.5 * f64::from(ends) + loss + 1.2;
        let left = engaged
            .less(EndLoss::Chamfers(ends), &thread)
            .and_then(|e| e.less(EndLoss::Length(millimetres(loss)), &thread))
            .and_then(|e| e.less(EndLoss::Vdi2230, &thread));
        match left {
            Ok(left) => prop_assert!(
                (left.full_threads() - millimetres(overlap - lost)).abs() < millimetres(1e-9)
            ),
            Err(_) => prop_assert!(lost >= overlap - 1e-9),
        }
    }

    /// More of either thread or strength never lowers the load, by any method that answers.
    #[test]
    fn stripping_is_monotone_and_consistent(
        fit in any_fit(), length in 1.0..60.0f64,
        bolt in 200.0..1600.0f64, nut in 100.0..1600.0f64, width in 1.4..2.5f64,
    ) {
        let thread = fit.bolt.thread;
        let areas = fit.strip_areas(full(millimetres(length))).unwrap();
        let material = |strength| {
            ThreadMaterial::new(megapascals(strength), None).unwrap().with_shear_ratio(0.6).unwrap()
        };
        let width_across_flats = Some(width * thread.nominal_diameter());
        for method in [
            StripMethod::FedStdH28,
            StripMethod::ShearStrength,
            StripMethod::Alexander { width_across_flats },
            StripMethod::Vdi2230 { width_across_flats: None },
        ] {
            let Ok(result) = stripping(&areas, &material(bolt), &material(nut), method) else {
                prop_assert!(!matches!(method, StripMethod::FedStdH28 | StripMethod::ShearStrength));
                continue;
            };
            let least = result.breaking_load.min(result.bolt_threads).min(result.nut_threads);
            prop_assert_eq!(result.ultimate, least);
            let named = match result.first {
                ThreadFailure::Bolt => result.breaking_load,
                ThreadFailure::BoltThreads => result.bolt_threads,
                ThreadFailure::NutThreads => result.nut_threads,
            };
            prop_assert_eq!(named, least);
            prop_assert_eq!(result.derivation().check(), Ok(()));
            // With the least engagement the bolt breaks; with a little less it does not.
            let enough = areas.over(1.000_001 * result.minimum_engagement()).unwrap();
            let again = stripping(&enough, &material(bolt), &material(nut), method).unwrap();
            prop_assert_eq!(again.first, ThreadFailure::Bolt);
            let scarce = areas.over(0.999_999 * result.minimum_engagement()).unwrap();
            let again = stripping(&scarce, &material(bolt), &material(nut), method).unwrap();
            prop_assert!(again.first != ThreadFailure::Bolt);
        }
    }

    #[test]
    fn wires_are_inverse(
        index in 0..490_usize, wire in 0.51..1.0f64, off in -0.2..0.2f64, corrected in any::<bool>(),
    ) {
        let thread = table_threads().nth(index).unwrap();
        let lead = if corrected { LeadAngle::Corrected } else { LeadAngle::Neglected };
        let pitch_diameter = thread.basic_pitch_diameter() + off * thread.pitch();
        let wire = wire * thread.pitch();
        let Ok(over) = thread.over_wires(pitch_diameter, wire, lead) else {
            // Fine numbers of large pitch climb above 5 degrees.
            prop_assert!(thread.lead_angle().get::<degree>() > 5.0);
            return Ok(());
        };
        let back = thread.pitch_diameter_by_wires(over.over_wires, wire, lead).unwrap();
        prop_assert!((back.pitch_diameter - pitch_diameter).abs() < millimetres(1e-9));
        prop_assert_eq!(over.derivation().check(), Ok(()));
        // The wires stand above the crests of a full thread.
        if off >= 0.0 {
            prop_assert!(over.over_wires > thread.nominal_diameter());
        }
        prop_assert!(over.lead_correction >= millimetres(0.0));
    }

    /// Nothing panics, and no answer is without meaning, whatever the numbers.
    #[test]
    fn extremes_are_refused_or_answered(a in any::<f64>(), b in any::<f64>(), c in any::<f64>()) {
        let thread = thread("M10");
        let sound = |areas: &StripAreas| {
            areas.bolt_threads.is_finite() && areas.bolt_threads > square_millimetres(0.0)
        };
        if let Ok(engaged) = EngagedLength::new(millimetres(a)) {
            let loss = EndLoss::Length(millimetres(b));
            let engaged = engaged.less(loss, &thread).unwrap_or(engaged);
            if let Ok(areas) = thread.strip_areas_basic(engaged) {
                prop_assert!(sound(&areas) || a < 1e-290);
                if let (Ok(bolt), Ok(nut)) =
                    (ThreadMaterial::new(megapascals(b), None), ThreadMaterial::new(megapascals(c), None))
                {
                    for method in [
                        StripMethod::FedStdH28,
                        StripMethod::Alexander { width_across_flats: Some(millimetres(b)) },
                    ] {
                        if let Ok(result) = stripping(&areas, &bolt, &nut, method) {
                            prop_assert!(result.ultimate.is_finite() && result.ultimate > newtons(0.0));
                        }
                    }
                }
                if let Ok(found) = engagement_for_load(&areas, newtons(b), megapascals(c), megapascals(b)) {
                    prop_assert!(found.engagement.is_finite());
                }
            }
        }
        let _ = thread.over_wires(millimetres(a), millimetres(b), LeadAngle::Corrected);
        let _ = thread.pitch_diameter_by_wires(millimetres(a), millimetres(b), LeadAngle::Neglected);
        let _ = thread.thread_percentage(millimetres(a), FullThread::SharpRoot);
    }
}

/// Strengths of SAE and ISO grades change with the size: those of another size are refused, as everywhere.
#[test]
fn nut_proof_refuses_the_strength_of_another_size() {
    let thread: Thread = "M16".parse().unwrap();
    let nut = NutGrade::Iso898_2Class8
        .strength(NutShape::Style1, &thread, NutTapping::Usual)
        .unwrap();
    let bolt = |d| PropertyClass::Class8_8.strength(millimetres(d)).unwrap();
    assert!(shankline::strength::strip::nut_proof(&thread, &bolt(16.0), &nut).is_ok());
    assert!(shankline::strength::strip::nut_proof(&thread, &bolt(20.0), &nut).is_err());
}
