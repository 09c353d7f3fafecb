//! Designations: every thread, class, profile, hand and number of starts reads back; nothing panics.

use proptest::prelude::*;
use shankline::error::{DesignationProblem, Error};
use shankline::prelude::*;
use shankline::tables::thread_tolerances::EngagementGroup;
use shankline::tables::threads::{MetricThread, UnifiedThread};
use shankline::thread::{Engagement, Hand, Profile, ThreadFit, ToleranceClass};

const UNIFIED_CLASSES: [&str; 6] = ["1A", "2A", "3A", "1B", "2B", "3B"];
const METRIC_CLASSES: [&str; 8] = ["6g", "6h", "4g6g", "4h6h", "7g6g", "6H", "5H", "4H5H"];
const PROFILES: [Profile; 5] = [
    Profile::Un,
    Profile::Unr,
    Profile::Unj,
    Profile::M,
    Profile::Mj,
];

fn table_threads() -> impl Iterator<Item = Thread> {
    let unified = UnifiedThread::all()
        .iter()
        .map(|row| Thread::unified(row.nominal_diameter, row.series).unwrap());
    let metric = MetricThread::all()
        .iter()
        .map(|row| Thread::metric(row.nominal_diameter, row.pitch).unwrap());
    unified.chain(metric)
}

fn classes(thread: &Thread) -> impl Iterator<Item = Option<ToleranceClass>> + use<> {
    let names: &[&str] = if thread.is_unified() {
        &UNIFIED_CLASSES
    } else {
        &METRIC_CLASSES
    };
    let given = names.iter().map(|name| Some(name.parse().unwrap()));
    std::iter::once(None).chain(given)
}

#[test]
fn every_thread_class_profile_hand_and_start_reads_back() {
    let mut count = 0_u32;
    for plain in table_threads() {
        for profile in PROFILES {
            let Ok(profiled) = plain.with_profile(profile) else {
                assert_ne!(profile.is_unified(), plain.is_unified());
                continue;
            };
            for class in classes(&plain) {
                let classed = match class.map(|class| profiled.with_class(class)) {
                    None => profiled,
                    Some(Ok(thread)) => thread,
                    Some(Err(_)) => {
                        assert!(profile == Profile::Unr && !class.unwrap().is_external());
                        continue;
                    }
                };
                for (hand, starts) in [(Hand::Right, 1), (Hand::Left, 1), (Hand::Right, 3)] {
                    let thread = classed.with_hand(hand).with_starts(starts).unwrap();
                    let text = thread.to_string();
                    assert_eq!(text.parse::<Thread>().unwrap(), thread, "{text}");
                    count += 1;
                }
            }
        }
    }
    // 281 Unified threads: UN 7, UNR 4, UNJ 7 classes or none; 213 metric: M, MJ 9 each; three ways.
    assert_eq!(count, 3 * (281 * (7 + 4 + 7) + 213 * (9 + 9)));
}

#[test]
fn engagements_read_back() {
    let thread: Thread = "M20x2-7g6g".parse().unwrap();
    for engagement in [
        Engagement::Group(EngagementGroup::Short),
        Engagement::Group(EngagementGroup::Long),
        Engagement::Length(millimetres(37.5)),
    ] {
        for hand in [Hand::Right, Hand::Left] {
            let thread = thread.with_engagement(Some(engagement)).unwrap();
            let thread = thread.with_hand(hand);
            assert_eq!(thread.to_string().parse::<Thread>().unwrap(), thread);
        }
    }
    let normal = Some(Engagement::Group(EngagementGroup::Normal));
    assert_eq!(thread.with_engagement(normal).unwrap(), thread);
    let long = Some(Engagement::Group(EngagementGroup::Long));
    assert!(
        "M20x2"
            .parse::<Thread>()
            .unwrap()
            .with_engagement(long)
            .is_err()
    );
    let inch: Thread = "1/2-13 UNC-2A-LH".parse().unwrap();
    assert!(inch.with_engagement(long).is_err());
    let special = Some(Engagement::Length(inches(0.8125)));
    let inch = inch.with_engagement(special).unwrap();
    assert_eq!(inch.to_string(), "1/2-13 UNC-2A-LH SE 0.8125");
    assert_eq!(inch.to_string().parse::<Thread>().unwrap(), inch);
    for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        let bad = Some(Engagement::Length(inches(bad)));
        assert!(inch.with_engagement(bad).is_err());
    }
}

#[test]
fn starts_are_bounded() {
    let thread: Thread = "M20".parse().unwrap();
    for starts in [0, Thread::MOST_STARTS + 1, u8::MAX] {
        assert!(thread.with_starts(starts).is_err());
    }
    let most = thread.with_starts(Thread::MOST_STARTS).unwrap();
    assert_eq!(most.to_string().parse::<Thread>().unwrap(), most);
}

#[test]
fn fits_read_back() {
    let mut count = 0;
    for thread in table_threads() {
        let (bolts, nuts) = if thread.is_unified() {
            (["2A", "3A"], ["2B", "3B"])
        } else {
            (["6g", "4g6g"], ["6H", "5H"])
        };
        for (bolt, nut) in bolts.into_iter().zip(nuts) {
            for hand in [Hand::Right, Hand::Left] {
                let thread = thread.with_hand(hand);
                let Ok(fit) = thread.fit(bolt.parse().unwrap(), nut.parse().unwrap()) else {
                    continue; // a grade that pitch does not have
                };
                let text = fit.to_string();
                assert_eq!(text.parse::<ThreadFit>().unwrap(), fit, "{text}");
                count += 1;
            }
        }
    }
    assert!(count > 1800, "{count}");
    for (text, position) in [
        ("M6-6H", 5),
        ("M6-6H/6x", 6),
        ("M6-6H/6g-XX", 9),
        ("M6.1-6H/6g", 0),
        ("M6-6x/6g", 3),
        ("1/2-13 UNC-2B", 2),
    ] {
        let Err(Error::Designation { position: at, .. }) = text.parse::<ThreadFit>() else {
            panic!("{text}");
        };
        assert_eq!(at, position, "{text}");
    }
    // Both classes of bolts, and no class of the nut.
    assert!("M6-6g/6g".parse::<ThreadFit>().is_err());
    assert!("M6/6g".parse::<ThreadFit>().is_err());
}

fn any_thread() -> impl Strategy<Value = Thread> {
    (
        0..490_usize,
        0..9_usize,
        0..5_usize,
        any::<bool>(),
        1..=Thread::MOST_STARTS,
        0..4_u8,
        1..1000_u16,
    )
        .prop_map(
            |(index, class, profile, left, starts, engagement, length)| {
                let plain = table_threads().nth(index).unwrap();
                let class = classes(&plain).nth(class).flatten();
                let thread = class.map_or(plain, |class| plain.with_class(class).unwrap());
                let thread = thread.with_profile(PROFILES[profile]).unwrap_or(thread);
                let hand = if left { Hand::Left } else { Hand::Right };
                let thread = thread.with_hand(hand).with_starts(starts).unwrap();
                let length = f64::from(length) / 16.0;
                let engagement = match engagement {
                    0 => None,
                    1 => Some(Engagement::Group(EngagementGroup::Long)),
                    2 => Some(Engagement::Group(EngagementGroup::Short)),
                    _ if thread.is_unified() => Some(Engagement::Length(inches(length))),
                    _ => Some(Engagement::Length(millimetres(length))),
                };
                thread.with_engagement(engagement).unwrap_or(thread)
            },
        )
}

/// Whole numbers and halves of threads per inch, and odd ones with two decimals.
fn any_special() -> impl Strategy<Value = Thread> {
    let n = prop_oneof![
        (8..=200_u16).prop_map(|halves| f64::from(halves) / 2.0),
        (400..=10_000_u16).prop_map(|hundredths| f64::from(hundredths) / 100.0),
    ];
    (1000..100_000_u32, n, 1..=Thread::MOST_STARTS, 0..3_usize).prop_map(
        |(size, n, starts, profile)| {
            let thread = Thread::unified_special(inches(f64::from(size) / 1e4), n)
                .or_else(|_| Thread::unified_special(inches(9.5), n))
                .unwrap();
            let thread = thread.with_profile(PROFILES[profile]).unwrap();
            thread.with_starts(starts).unwrap()
        },
    )
}

/// Diameters and pitches that are no round decimals, too.
fn any_metric_special() -> impl Strategy<Value = Thread> {
    let profiles = [Profile::M, Profile::Mj];
    (
        0.1..25.0_f64,
        3.0..50.0_f64,
        1..=Thread::MOST_STARTS,
        0..2_usize,
    )
        .prop_map(move |(pitch, pitches, starts, profile)| {
            let thread =
                Thread::metric_special(millimetres(pitches * pitch + 1e-4), millimetres(pitch))
                    .unwrap();
            let thread = thread.with_profile(profiles[profile]).unwrap();
            thread.with_starts(starts).unwrap()
        })
}

/// Pitch and lead may both end in a five that is rounded, 0.15625 and 1.71875 in.
#[test]
fn every_tenth_of_a_thread_per_inch_reads_back() {
    for tenths in 40..=1000_u16 {
        let special = Thread::unified_special(inches(5.6042), f64::from(tenths) / 10.0).unwrap();
        for starts in 1..=Thread::MOST_STARTS {
            let thread = special.with_starts(starts).unwrap();
            let back: Thread = thread.to_string().parse().unwrap();
            assert_eq!(
                back.threads_per_inch(),
                thread.threads_per_inch(),
                "{thread}"
            );
            assert_eq!(back.starts(), starts, "{thread}");
        }
    }
}

/// What is written is read back to the same bits, and what nobody divides an inch into is no size.
#[test]
fn fractions_of_special_threads_read_back_or_are_none() {
    for (text, printed) in [
        ("2-33/64-8 UNS", "2.515625-8 UNS"),
        ("5/128-80 UNS", "0.0390625-80 UNS"),
        ("1-7/128-8 UNS", "1.0546875-8 UNS"),
        ("3/4-15 UNS", "0.75-15 UNS"),
    ] {
        let thread: Thread = text.parse().unwrap();
        assert_eq!(thread.to_string(), printed);
        let back: Thread = printed.parse().unwrap();
        let bits = |own: &Thread| own.nominal_diameter().value.to_bits();
        assert_eq!(bits(&back), bits(&thread), "{text}");
    }
    for text in [
        "2-5/6-8 UNS",
        "5/6-8 UNS",
        "1-1/3-8 UNS",
        "3/256-80 UNS",
        "8/6-18 UNS",
        "1-4/2-8 UNS",
    ] {
        let error = text.parse::<Thread>().unwrap_err();
        assert!(
            matches!(
                error,
                Error::Designation {
                    problem: DesignationProblem::Size,
                    ..
                }
            ),
            "{text}: {error}"
        );
    }
    let third: Thread = "1/2-13 UNC-2A SE 0.3333333".parse().unwrap();
    assert_eq!(third.to_string().parse::<Thread>().unwrap(), third);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2048, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_thread_reads_back(thread in any_thread()) {
        let text = thread.to_string();
        prop_assert_eq!(text.parse::<Thread>().unwrap(), thread, "{}", text);
    }

    #[test]
    fn any_metric_special_reads_back(thread in any_metric_special()) {
        let text = thread.to_string();
        prop_assert_eq!(text.parse::<Thread>().unwrap(), thread, "{}", text);
    }

    #[test]
    fn any_special_reads_back(thread in any_special()) {
        let text = thread.to_string();
        let back: Thread = text.parse().unwrap();
        prop_assert_eq!(back.nominal_diameter().value.to_bits(), thread.nominal_diameter().value.to_bits());
        prop_assert_eq!(back.pitch().value.to_bits(), thread.pitch().value.to_bits(), "{}", &text);
        prop_assert_eq!((back.starts(), back.profile()), (thread.starts(), thread.profile()));
        prop_assert_eq!(back.to_string(), text);
    }

    /// Whatever size, number of threads and length of engagement somebody computed: what is printed is what it has.
    #[test]
    fn any_computed_special_reads_back(
        size in 0.2..99.0_f64,
        n in 20.0..100.0_f64,
        length in 0.1..9.0_f64,
    ) {
        let engagement = Some(Engagement::Length(inches(length)));
        let thread = Thread::unified_special(inches(size), n).unwrap().with_engagement(engagement).unwrap();
        let text = thread.to_string();
        let back: Thread = text.parse().unwrap();
        prop_assert_eq!(back.nominal_diameter().value.to_bits(), thread.nominal_diameter().value.to_bits());
        prop_assert_eq!(back.pitch().value.to_bits(), thread.pitch().value.to_bits(), "{}", &text);
        prop_assert_eq!(back.engagement(), thread.engagement());
        prop_assert_eq!(back, thread);
    }

    /// Case of letters and spaces between the parts do not matter, but for those of the class.
    #[test]
    fn spaces_and_case_are_free(thread in any_thread()) {
        let text = thread.to_string();
        let spaced = text.replace('-', " - ");
        // A mixed number holds a hyphen of its own: 1-1/2.
        if !spaced.contains('/') {
            prop_assert_eq!(spaced.parse::<Thread>().unwrap(), thread, "{}", spaced);
        }
        if thread.class().is_none() {
            let lower = text.to_ascii_lowercase();
            prop_assert_eq!(lower.parse::<Thread>().unwrap(), thread, "{}", lower);
        }
    }

    #[test]
    fn no_fit_panics(text in "[#M0-9/. xX×UNCHghAB-]{0,20}", at in 0..12_usize, byte in any::<char>()) {
        let _ = text.parse::<ThreadFit>();
        let mut near: Vec<char> = "M6x1-6H/6g-LH".chars().collect();
        near[at] = byte;
        let _ = near.into_iter().collect::<String>().parse::<ThreadFit>();
    }

    #[test]
    fn no_text_panics(text in "\\PC{0,40}") {
        check(&text)?;
    }

    #[test]
    fn no_text_of_the_alphabet_panics(text in "[#M0-9/. xX×UNCRJFESPhLTAHgB()-]{0,30}") {
        check(&text)?;
    }

    /// Good designations with bytes changed, put in, and taken out.
    #[test]
    fn no_near_designation_panics(
        thread in prop_oneof![any_thread(), any_special()],
        changes in prop::collection::vec((0..45_usize, any::<u8>(), 0..3_u8), 1..4),
    ) {
        let mut bytes = thread.to_string().into_bytes();
        for (at, byte, change) in changes {
            let at = at.min(bytes.len());
            match change {
                0 => bytes.insert(at, byte),
                1 if at < bytes.len() => bytes[at] = byte,
                _ if at < bytes.len() => { bytes.remove(at); }
                _ => {}
            }
        }
        check(&String::from_utf8_lossy(&bytes))?;
    }
}

/// What is read is written so that it reads back; what is not has its fault inside the text.
fn check(text: &str) -> Result<(), TestCaseError> {
    match text.parse::<Thread>() {
        Ok(thread) => {
            let canonical = thread.to_string();
            let back = canonical.parse::<Thread>();
            prop_assert!(back.is_ok(), "{text:?} {canonical} {back:?}");
            prop_assert_eq!(back.unwrap().to_string(), canonical, "{:?}", text);
        }
        Err(Error::Designation {
            position, problem, ..
        }) => {
            prop_assert!(position <= text.chars().count(), "{text:?}");
            if problem == DesignationProblem::Empty {
                prop_assert!(text.trim_matches(' ').is_empty(), "{text:?}");
            }
        }
        Err(other) => prop_assert!(false, "{text:?}: {other:?}"),
    }
    Ok(())
}
