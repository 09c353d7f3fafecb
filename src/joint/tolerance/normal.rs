//! The normal distribution, as far as tolerances need it.

use core::f64::consts::PI;

use crate::math::{exp, sqrt};

/// Share of a standard normal population below `z`.
///
/// Near the middle by the series F(z) = 1/2 + f(z) (z + z^3/3 + z^5/(3*5) + ...), in the tails by
/// the continued fraction f(z) / (z + 1/(z + 2/(z + 3/(z + ...)))).
///
/// Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.11 and 26.2.14; from
/// memory, checked against printed shares.
pub(super) fn share_below(z: f64) -> f64 {
    const MIDDLE: f64 = 3.0;
    if z.is_nan() {
        return z;
    }
    let density = exp(-0.5 * z * z) / sqrt(2.0 * PI);
    if z.abs() < MIDDLE {
        let (mut term, mut sum, mut odd) = (z, z, 1.0);
        while term.abs() > 1e-17 * sum.abs() {
            odd += 2.0;
            term *= z * z / odd;
            sum += term;
        }
        return 0.5 + density * sum;
    }
    let x = z.abs();
    let fraction = (1..=60)
        .rev()
        .fold(x, |below, step| x + f64::from(step) / below);
    // Both are zero beyond z = 38: the share is then smaller than any number.
    let tail = density / fraction;
    if z < 0.0 { tail } else { 1.0 - tail }
}

/// The z for which a share `confidence` of a standard normal population lies within -z and z.
/// `confidence` must lie between 0 and 1.
pub(super) fn two_sided_quantile(confidence: f64) -> f64 {
    let tail = 0.5 * (1.0 - confidence);
    // The share beyond z falls and is convex, so Newton's steps from zero approach from the left.
    let mut z = 0.0;
    for _ in 0..100 {
        let density = exp(-0.5 * z * z) / sqrt(2.0 * PI);
        let step = (share_below(-z) - tail) / density;
        z += step;
        if step < 1e-14 * z {
            break;
        }
    }
    z
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn shares_as_printed() {
        // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1, its examples: read there.
        for (z, share) in [
            (0.5, 0.5 + 0.191_46),
            (1.0, 0.5 + 0.341_34),
            (1.53, 0.936_99),
            (-1.53, 0.063_01),
        ] {
            assert!((share_below(z) - share).abs() < 0.5e-5, "{z}");
        }
        // A table of shares below z on a mathematics tables page: read there.
        for (z, share) in [
            (-4.0, 0.000_03),
            (-3.5, 0.000_23),
            (-3.1, 0.000_97),
            (-3.0, 0.001_35),
            (-2.99, 0.001_39),
            (-2.8, 0.002_56),
            (-2.5, 0.006_21),
        ] {
            assert!((share_below(z) - share).abs() < 0.5e-5, "{z}");
            assert!((share_below(-z) - (1.0 - share)).abs() < 0.5e-5, "-{z}");
        }
    }

    #[test]
    fn both_formulas_meet() {
        let (left, right) = (share_below(-3.0 - 1e-12), share_below(-3.0 + 1e-12));
        assert!((left / right - 1.0).abs() < 1e-10, "{left} {right}");
        assert!((share_below(-3.0) / 1.349_898_031_630_095e-3 - 1.0).abs() < 1e-12);
        assert!(share_below(f64::NEG_INFINITY) <= 0.0);
        assert!(share_below(f64::INFINITY) >= 1.0);
        assert!(share_below(f64::NAN).is_nan());
    }

    #[test]
    fn quantiles_return() {
        for z in [0.1, 0.674_489_75, 1.0, 1.959_963_985, 3.0, 4.5, 6.0] {
            let confidence = 1.0 - 2.0 * share_below(-z);
            assert!((two_sided_quantile(confidence) - z).abs() < 1e-6, "{z}");
        }
        // 99.73 % is what the trade calls three sigma.
        assert!((two_sided_quantile(0.9973) - 3.0).abs() < 1e-3);
    }
}
