use super::*;
use proptest::prelude::*;

pub(super) const RULES: [InteractionRule; 10] = [
    InteractionRule::Aisc360,
    InteractionRule::En1993,
    InteractionRule::Bs5950,
    InteractionRule::Is800,
    InteractionRule::As4100,
    InteractionRule::CsaS16,
    InteractionRule::Ellipse,
    InteractionRule::AircraftSteel,
    InteractionRule::Nsts08307 {
        plastic_bending_factor: 1.5,
    },
    InteractionRule::NasaStd5020,
];

fn used(rule: InteractionRule, s: f64, t: f64, zone: Zone) -> f64 {
    let none = Ratio::from(0.0);
    let both = interaction(rule, Ratio::from(s), Ratio::from(t), none, zone).unwrap();
    both.utilisation.value
}

/// Allowed T for a given S, worked out apart from this crate.
#[test]
fn meets_the_allowed_tension_of_each_rule() {
    use InteractionRule as R;
    for (rule, zone, cells) in [
        (R::Ellipse, Zone::Shank, [0.980, 0.954, 0.866, 0.714, 0.436]),
        // The same by hand, sqrt(1 - S^2), for want of a worked example.
        (R::Is800, Zone::Thread, [0.980, 0.954, 0.866, 0.714, 0.436]),
        (R::As4100, Zone::Thread, [0.980, 0.954, 0.866, 0.714, 0.436]),
        (R::CsaS16, Zone::Thread, [0.980, 0.954, 0.866, 0.714, 0.436]),
        (
            R::AircraftSteel,
            Zone::Shank,
            [0.996, 0.986, 0.935, 0.811, 0.521],
        ),
        (
            R::NasaStd5020,
            Zone::Shank,
            [0.988, 0.967, 0.878, 0.703, 0.377],
        ),
        (
            R::NasaStd5020,
            Zone::Thread,
            [0.925, 0.874, 0.751, 0.590, 0.345],
        ),
        (R::En1993, Zone::Shank, [1.000, 0.980, 0.700, 0.420, 0.140]),
        (R::Aisc360, Zone::Shank, [1.000, 1.000, 0.800, 0.600, 0.400]),
        (R::Bs5950, Zone::Shank, [1.000, 1.000, 0.900, 0.700, 0.500]),
    ] {
        for (s, t) in [0.2, 0.3, 0.5, 0.7, 0.9].into_iter().zip(cells) {
            assert!(
                (used(rule, s, t, zone) - 1.0).abs() < 0.001,
                "{rule} {s} {t}"
            );
        }
    }
}

/// Loads of any ratio: the left side of the rule is 1 at the answer, and bisection finds the same.
#[test]
fn divisor_solves_the_rule() {
    for (a, b) in [(3.0, 2.0), (2.5, 1.5), (1.2, 2.0)] {
        for i in -40..=40 {
            let (s, t) = (1.0, math::powf(10.0, f64::from(i) / 4.0));
            let u = divisor(s, a, t, b);
            let left = math::powf(s / u, a) + math::powf(t / u, b);
            assert!((left - 1.0).abs() < 1e-14, "{a} {b} {t}");
            let (mut low, mut high) = (s.max(t), s + t);
            for _ in 0..60 {
                let middle = f64::midpoint(low, high);
                if math::powf(s / middle, a) + math::powf(t / middle, b) > 1.0 {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            assert!((u / low - 1.0).abs() < 1e-14, "{a} {b} {t}");
        }
    }
}

proptest! {
    #[test]
    fn scales_with_the_loads_and_rises_with_each(
        s in 0.0..3.0f64, t in 0.0..3.0f64, b in 0.0..1.0f64, k in 0.01..100.0f64, thread: bool,
    ) {
        let zone = if thread { Zone::Thread } else { Zone::Shank };
        for rule in RULES {
            let one = used(rule, s, t, zone);
            prop_assert!((used(rule, k * s, k * t, zone) - k * one).abs() <= 1e-12 * k * one);
            prop_assert!(one >= s.max(t) * (1.0 - 1e-12) && one <= (s + t) * (1.0 + 1e-12));
            prop_assert!(used(rule, s + b, t, zone) >= one * (1.0 - 1e-12));
            prop_assert!(used(rule, s, t + b, zone) >= one * (1.0 - 1e-12));
            let ratio = Ratio::from;
            if let Ok(bent) = interaction(rule, ratio(s), ratio(t), ratio(b), zone) {
                prop_assert!(bent.utilisation.value >= one * (1.0 - 1e-12));
                prop_assert!(bent.derivation().check().is_ok());
            }
        }
    }

    #[test]
    fn no_number_breaks_it(s in any::<f64>(), t in any::<f64>(), b in any::<f64>(), k in any::<f64>()) {
        let ratio = Ratio::from;
        let odd = InteractionRule::Nsts08307 { plastic_bending_factor: k };
        for rule in RULES.into_iter().chain([odd]) {
            if let Ok(both) = interaction(rule, ratio(s), ratio(t), ratio(b), Zone::Thread) {
                prop_assert!(both.utilisation.value.is_finite());
                prop_assert!(both.check(Level::Design).is_ok());
            }
        }
    }
}

#[test]
fn ratios_to_a_million_are_taken() {
    let ratio = Ratio::from;
    for (value, good) in [
        (0.0, true),
        (999_999.0, true),
        (1e6, true),
        (1.01e6, false),
        (2e6, false),
    ] {
        for [s, t, b] in [[value, 0.0, 0.0], [0.0, value, 0.0], [0.0, 0.0, value]] {
            let found = interaction(
                InteractionRule::NasaStd5020,
                ratio(s),
                ratio(t),
                ratio(b),
                Zone::Shank,
            );
            assert_eq!(found.is_ok(), good, "{s} {t} {b}");
        }
    }
}

/// NSTS 08307: S^3 + (T + B / K)^2 = 1 with a plastic bending factor K.
#[test]
fn bending_counts_over_the_plastic_factor() {
    let ratio = Ratio::from;
    let rule = InteractionRule::Nsts08307 {
        plastic_bending_factor: 1.5,
    };
    for (s, t, b, u) in [
        (0.0, 0.3, 0.6, 0.7),
        (0.0, 0.0, 1.2, 0.8),
        (0.0, 0.0, 3.0, 2.0),
        // (1/2)^(2/3) cubed is 1/4, and sqrt(3/4) = 0.5 + 0.549 / 1.5.
        (
            0.629_960_524_947_436_6,
            0.5,
            1.5 * 0.366_025_403_784_438_6,
            1.0,
        ),
    ] {
        let found = interaction(rule, ratio(s), ratio(t), ratio(b), Zone::Shank).unwrap();
        assert!((found.utilisation.value - u).abs() < 1e-12, "{found:?}");
    }
    let none = interaction(rule, ratio(0.0), ratio(0.0), ratio(0.0), Zone::Shank).unwrap();
    assert_eq!(none.utilisation, ratio(0.0));
    none.derivation().check().unwrap();
}
