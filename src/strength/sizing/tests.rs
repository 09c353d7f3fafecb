use super::*;
use crate::units::{megapascals, millimetres, newtons};
use alloc::string::ToString;
use proptest::prelude::*;

const SERIES: [ThreadSeries; 4] = [
    ThreadSeries::METRIC_COARSE,
    ThreadSeries::METRIC_FINE,
    ThreadSeries::UNC,
    ThreadSeries::UNF,
];
const SECTIONS: [BoltSection; 4] = [
    BoltSection::Shank,
    BoltSection::StressArea,
    BoltSection::PrintedStressArea,
    BoltSection::Core,
];

/// A section that has just the area is large enough, whichever way the division rounds.
#[test]
fn just_enough_is_enough() {
    for section in SECTIONS {
        for series in SERIES {
            for stress in [1.0 / 3.0, 7.0, 100.0, 333.3] {
                let any = Demand::new(newtons(3e4), megapascals(100.0)).unwrap();
                let thread = any.least_thread(series, section).unwrap().thread;
                let stress = megapascals(stress);
                let load = section.area(&thread).unwrap() * stress;
                let found = Demand::new(load, stress).unwrap();
                let found = found.least_thread(series, section).unwrap();
                let (a, b) = (section.area(&thread), section.area(&found.thread));
                assert_eq!(a.unwrap(), b.unwrap(), "{thread} {}", found.thread);
            }
        }
    }
}

proptest! {
    /// The thread bears the load and no thread of the series with a smaller section does.
    #[test]
    fn least_thread_bears_the_load(load in 1.0..1e5f64, stress in 50.0..500.0f64, first: bool) {
        let demand = Demand::new(newtons(load), megapascals(stress)).unwrap();
        for series in SERIES.map(|series| if first { series.first_choice() } else { series }) {
            for section in SECTIONS {
                let Ok(found) = demand.least_thread(series, section) else { continue };
                prop_assert!(found.stress.value <= megapascals(stress).value * (1.0 + 1e-9));
                prop_assert!(found.derivation().check().is_ok());
            }
        }
    }

    #[test]
    fn no_number_breaks_it(f in any::<f64>(), s in any::<f64>(), n in any::<usize>(), d in any::<f64>()) {
        let Ok(demand) = Demand::new(newtons(f), megapascals(s)) else { return Ok(()) };
        let demands = [
            Ok(demand),
            demand.with_factor(d),
            demand.shared_by(n),
            demand.in_planes(n),
        ];
        let length = millimetres(d);
        for demand in demands.into_iter().flatten() {
            if let Ok(least) = demand.least_diameter() {
                prop_assert!(least.diameter.is_finite() && least.diameter.value > 0.0);
                prop_assert!(least.derivation().check().is_ok());
            }
            for length in [
                demand.least_width(length, length, n),
                demand.least_net_thickness(length, millimetres(1.0), n),
                demand.least_thickness(length),
            ].into_iter().flatten() {
                prop_assert!(length.length.is_finite() && length.derivation().check().is_ok());
            }
            if let Ok(one) = StressedArea::shear_of_pins(length, 1, 2) {
                if let Ok(least) = demand.least_bolts(&one) {
                    prop_assert!(least.number >= 1 && least.derivation().check().is_ok());
                }
            }
            let _ = demand.least_thread(ThreadSeries::UNC, BoltSection::Core);
        }
    }
}

/// Just enough bolts are enough, and a little more load wants one more.
#[test]
fn numbers_at_their_limits() {
    let one = StressedArea::shear_of_pins(millimetres(10.0), 1, 1).unwrap();
    let bears = one.load_at(megapascals(100.0), 1.0).unwrap();
    for (times, bolts) in [(0.001, 1), (1.0, 1), (3.0, 3), (3.0 + 1e-6, 4), (2.999, 3)] {
        let demand = Demand::new(times * bears, megapascals(100.0)).unwrap();
        assert_eq!(demand.least_bolts(&one).unwrap().number, bolts, "{times}");
    }
}

/// ASME B1.1: No. 12 is of second choice. 5.49 mm of shank, 23.7 mm2, is 12-24; in first choice 1/4-20. ISO 261: M14 is of
/// second choice, and M16 takes its place.
#[test]
fn first_choice_passes_over_second_sizes() {
    let named = |series: ThreadSeries, load| {
        let demand = Demand::new(newtons(load), megapascals(100.0)).unwrap();
        let found = demand.least_thread(series, BoltSection::Shank).unwrap();
        alloc::string::ToString::to_string(&found.thread)
    };
    assert_eq!(named(ThreadSeries::UNC, 2300.0), "#12-24 UNC");
    assert_eq!(
        named(ThreadSeries::UNC.first_choice(), 2300.0),
        "1/4-20 UNC"
    );
    assert_eq!(named(ThreadSeries::METRIC_COARSE, 15_000.0), "M14");
    assert_eq!(
        named(ThreadSeries::METRIC_COARSE.first_choice(), 15_000.0),
        "M16"
    );
}

/// Holes that take the whole width are refused by the width, and just less leaves a thickness.
#[test]
fn widths_that_holes_take() {
    let demand = Demand::new(newtons(1000.0), megapascals(100.0)).unwrap();
    let of = |width| demand.least_net_thickness(millimetres(width), millimetres(20.0), 2);
    let error = of(40.0).unwrap_err().to_string();
    assert!(error.contains("width"), "{error}");
    assert!(of(39.0).is_err());
    // 10 mm2 over 5 mm
    assert!((of(45.0).unwrap().length - millimetres(2.0)).abs() < millimetres(1e-9));
}
