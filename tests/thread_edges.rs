//! Threads at the edges of what is taken for one, and figures by hand that no table of the other tests has.

use shankline::error::Error;
use shankline::prelude::*;
use shankline::tables::threads::{MetricSeries, UnifiedThread};
use shankline::thread::percent::FullThread;
use shankline::thread::{AtLeast, Engagement, Limits};

fn mm(value: f64) -> Length {
    millimetres(value)
}

fn near(found: Length, by_hand: f64) -> bool {
    (found - mm(by_hand)).abs() < mm(1e-6)
}

/// The ranges stated with the constructors: each end is taken, and what lies just beyond is refused.
#[test]
fn special_threads_reach_to_the_ends_of_their_ranges() {
    assert!(Thread::unified_special(inches(100.0), 4.0).is_ok());
    assert!(Thread::unified_special(inches(100.000_01), 4.0).is_err());
    assert!(Thread::unified_special(inches(120.0), 4.0).is_err());
    assert!(Thread::unified_special(inches(3.0), 1.0).is_ok());
    assert!(Thread::unified_special(inches(2.999), 1.0).is_err());
    assert!(Thread::unified_special(inches(0.75), 4.0).is_ok());
    assert!(Thread::unified_special(inches(0.749), 4.0).is_err());
    assert!(Thread::metric_special(mm(2500.0), mm(25.0)).is_ok());
    assert!(Thread::metric_special(mm(2500.01), mm(25.0)).is_err());
    assert!(Thread::metric_special(mm(2500.0), mm(25.01)).is_err());
    assert!(Thread::metric_special(mm(1.0), mm(0.1)).is_ok());
    assert!(Thread::metric_special(mm(1.0), mm(0.0999)).is_err());
    assert!(Thread::metric_special(mm(3.0), mm(1.0)).is_ok());
    assert!(Thread::metric_special(mm(2.999), mm(1.0)).is_err());
}

/// M10, whose pitch is 1.5 mm: found from 0.25 P below its diameter (9.625) to 0.1 mm above, and within 0.05 P of its
/// pitch; not to be told from it within 0.2 P and 0.05 mm below (9.65), 0.05 mm above and 0.02 P.
#[test]
fn a_measured_thread_is_found_within_its_ranges() {
    let m10 = "M10".parse::<Thread>().unwrap();
    let found = |diameter: f64, pitch: f64| {
        let all = Thread::identify(mm(diameter), mm(pitch)).unwrap();
        all.into_iter().find(|found| found.thread == m10)
    };
    for (diameter, pitch, is_found, is_within) in [
        (9.626, 1.5, true, false),
        (9.624, 1.5, false, false),
        (9.649, 1.5, true, false),
        (9.651, 1.5, true, true),
        (10.049, 1.5, true, true),
        (10.051, 1.5, true, false),
        (10.099, 1.5, true, false),
        (10.101, 1.5, false, false),
        (9.85, 1.529, true, true),
        (9.85, 1.531, true, false),
        (9.85, 1.471, true, true),
        (9.85, 1.469, true, false),
        (9.85, 1.574, true, false),
        (9.85, 1.576, false, false),
        (9.85, 1.424, false, false),
    ] {
        let one = found(diameter, pitch);
        assert_eq!(one.is_some(), is_found, "{diameter} x {pitch}");
        let within = one.is_some_and(|one| one.within_uncertainty);
        assert_eq!(within, is_within, "{diameter} x {pitch}");
    }
    // Shares of the way from the expected diameter, 9.85, to the limits: 0.1 of 0.25 above, 0.1 of 0.225 below.
    for (diameter, pitch, share) in [
        (9.95, 1.5, 0.4),
        (9.75, 1.5, 0.1 / 0.225),
        (9.85, 1.515, 0.2),
    ] {
        let distance = found(diameter, pitch).unwrap().distance.value;
        assert!((distance - share).abs() < 1e-6, "{diameter}: {distance}");
    }
}

/// What is as near goes by what is common: 1 in has 12 threads per inch as UNF, and M14 x 1.5 is no thread of the shops.
#[test]
fn the_likelier_of_several_threads_stands_first() {
    for pair in ["M8", "M10", "M12", "1/2-13 UNC", "3/4-10 UNC", "1/4-28 UNF"] {
        let thread = pair.parse::<Thread>().unwrap();
        let worn = thread.nominal_diameter() - 0.1 * thread.pitch();
        let found = Thread::identify(worn, thread.pitch()).unwrap();
        assert_eq!(found[0].thread, thread);
    }
}

/// ISO 965-1: EI of position G and es of g are 32 um at a pitch of 1.5 mm; basic diameters of M10 are 9.026 and 8.376 mm.
#[test]
fn positions_of_crest_and_pitch_diameter_count_each_for_its_own() {
    let of = |name: &str| name.parse::<Thread>().unwrap().limits().unwrap();
    let least = |limits: Limits<Option<Length>>| limits.min.unwrap();
    let nut = of("M10-6G");
    assert!(near(nut.pitch_diameter.min, 9.058));
    assert!(near(least(nut.minor_diameter()), 8.408));
    assert!(near(least(nut.major_diameter()), 10.032));
    let bolt = of("M10-4g6h");
    assert!(near(bolt.pitch_diameter.max, 8.994));
    assert!(near(bolt.major_diameter().max.unwrap(), 10.0));
}

/// 1.082532 P is 1.6238 mm at a pitch of 1.5 mm: all of the basic profile leaves a hole of 8.3762 mm.
#[test]
fn all_of_the_basic_profile_is_the_basic_minor_diameter() {
    let thread = "M10".parse::<Thread>().unwrap();
    let whole = shankline::units::percent(100.0);
    let hole = thread
        .hole_for_percentage(whole, FullThread::BasicProfile)
        .unwrap();
    assert!((hole - mm(8.3762)).abs() < mm(5e-5));
    let back = thread.thread_percentage(hole, FullThread::BasicProfile);
    assert!((back.unwrap() - whole).value.abs() < 1e-9);
    assert!(
        thread
            .thread_percentage(mm(8.37), FullThread::BasicProfile)
            .is_err()
    );
    assert!(
        thread
            .thread_percentage(mm(10.0), FullThread::BasicProfile)
            .is_err()
    );
}

/// ASME B1.1 names the series of constant pitch by their pitch: 12-UN, which people also write 12UN.
#[test]
fn series_of_constant_pitch_are_read_by_name() {
    for count in [4, 6, 8, 12, 16, 20, 28, 32] {
        let name = format!("{count}-UN");
        let row = UnifiedThread::all()
            .iter()
            .find(|row| row.series.to_string() == name)
            .unwrap_or_else(|| panic!("no thread of {name}"));
        for name in [name.clone(), name.replace('-', "")] {
            let text = format!("{}-{count} {name}", row.size);
            let read = text.parse::<Thread>();
            let read = read.unwrap_or_else(|error| panic!("{text}: {error}"));
            assert_eq!(read.unified_row(), Some(row), "{text}");
        }
    }
}

/// What an area that no thread has is called, and that a thread has its own.
#[test]
fn areas_are_asked_for_by_what_they_are() {
    let huge = mm(1000.0) * mm(1000.0);
    for (asked, name) in [
        (AtLeast::CoreArea(huge), "core area"),
        (AtLeast::ShankArea(huge), "shank area"),
        (AtLeast::StressArea(huge), "tensile stress area"),
    ] {
        let error = Thread::metric_at_least(MetricSeries::Coarse, asked).map(|_| ());
        assert!(error.unwrap_err().to_string().contains(name), "{name}");
    }
    let m12 = "M12".parse::<Thread>().unwrap();
    for asked in [
        AtLeast::CoreArea(m12.minor_area()),
        AtLeast::ShankArea(m12.shank_area()),
        AtLeast::StressArea(m12.tensile_stress_area()),
    ] {
        let mut found = Thread::metric_at_least(MetricSeries::Coarse, asked).unwrap();
        assert_eq!(found.next(), Some(m12));
    }
}

#[test]
fn a_length_of_engagement_is_kept_in_the_unit_of_its_thread() {
    let metric = "M10-6g".parse::<Thread>().unwrap();
    let long = metric
        .with_engagement(Some(Engagement::Length(mm(20.0))))
        .unwrap();
    assert_eq!(long.engagement(), Some(Engagement::Length(mm(20.0))));
    assert_eq!(long.to_string().parse::<Thread>().unwrap(), long);
}

/// Sizes on either side of one that is none.
#[test]
fn the_nearest_sizes_are_told() {
    let of = |text: &str| match text.parse::<Thread>() {
        Err(error @ Error::Designation { .. }) => error.to_string(),
        other => panic!("{text}: {other:?}"),
    };
    let metric = of("M9.5");
    assert!(
        metric.contains("the nearest sizes are M9 and M10"),
        "{metric}"
    );
    let unified = of("0.9-9 UNC");
    assert!(
        unified.contains("the nearest sizes are 7/8 and 15/16"),
        "{unified}"
    );
}

/// The lead of a thread of several starts is printed so that the number of threads per inch comes back.
#[test]
fn any_number_of_threads_per_inch_comes_back_beside_a_lead() {
    for count in [
        1.5, 3.7, 7.0, 7.777_77, 11.5, 13.0, 27.0, 33.333_33, 64.0, 99.999_99,
    ] {
        let one = Thread::unified_special(inches(3.0), count).unwrap();
        for starts in [2, 3, 4] {
            let several = one.with_starts(starts).unwrap();
            let text = several.to_string();
            let back = text
                .parse::<Thread>()
                .unwrap_or_else(|error| panic!("{text}: {error}"));
            assert_eq!(back, several, "{text}");
        }
    }
}
