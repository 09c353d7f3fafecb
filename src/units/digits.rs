//! Numbers of answers: to twelve digits, and as text with so many decimals.

use alloc::{format, string::String};

/// A number without the last digits of its arithmetic.
pub(crate) fn twelve_digits(value: f64) -> f64 {
    quick_twelve_digits(value).unwrap_or_else(|| slow_twelve_digits(value))
}

fn slow_twelve_digits(value: f64) -> f64 {
    format!("{value:.11e}").parse().unwrap_or(value)
}

/// The same to the bit, by arithmetic alone, for it is a third of the time of a report.
///
/// The value times a power of ten, of 12 digits before the point, is off by 1.2e-4 at most: one rounding. Where it does not lie
/// so near to the middle of two whole numbers that this matters, the nearest is the right one; and that and the power are
/// exact, so that their quotient or product is rounded once, as a reader of the digits rounds.
fn quick_twelve_digits(value: f64) -> Option<f64> {
    const LEAST: f64 = 1e11;
    const MOST: f64 = 1e12;
    let size = value.abs();
    // Within what exact powers of ten reach; with this, never NaN.
    if !(1e-9..1e30).contains(&size) {
        return None;
    }
    let times = |power: i32| {
        let ten = POWERS_OF_TEN.get(power.unsigned_abs() as usize)?;
        Some(if power < 0 { size / ten } else { size * ten })
    };
    let [high, low] = [size.to_bits() >> 52, 1023].map(|bits| i32::try_from(bits).unwrap_or(0));
    // 0.30103 is the logarithm of 2: the exponent of ten, or one less.
    let exponent = (high - low) * 30_103 / 100_000 - i32::from(high < low);
    let mut power = 11 - exponent;
    let mut scaled = times(power)?;
    if scaled >= MOST {
        power -= 1;
        scaled = times(power)?;
    }
    if !(LEAST..MOST).contains(&scaled) {
        return None;
    }
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        clippy::cast_precision_loss
    )] // between 1e11 and 1e12
    let below = scaled as u64 as f64;
    let rest = scaled - below;
    if (rest - 0.5).abs() < 1e-3 {
        return None;
    }
    let nearest = if rest > 0.5 { below + 1.0 } else { below };
    let ten = POWERS_OF_TEN.get(power.unsigned_abs() as usize)?;
    let rounded = if power < 0 {
        nearest * ten
    } else {
        nearest / ten
    };
    Some(rounded.copysign(value))
}

/// Those that a double holds exactly.
const POWERS_OF_TEN: [f64; 23] = [
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16,
    1e17, 1e18, 1e19, 1e20, 1e21, 1e22,
];

/// The text of a number with so many decimals: that of `{:.decimals$}`, in a third of the time for numbers as answers have them.
pub(crate) fn with_decimals(value: f64, decimals: usize) -> String {
    quick_with_decimals(value, decimals).unwrap_or_else(|| format!("{value:.decimals$}"))
}

/// A double is a whole number over a power of two: times the power of ten it is rounded as a whole number, exactly, and to
/// the even one of two that are as near.
fn quick_with_decimals(value: f64, decimals: usize) -> Option<String> {
    const POWERS: [u128; 10] = [
        1,
        10,
        100,
        1_000,
        10_000,
        100_000,
        1_000_000,
        10_000_000,
        100_000_000,
        1_000_000_000,
    ];
    // Below 2^53, so that nothing is left of 1; and not so small that the halves go beyond 128 bits.
    if !(1e-15..9e15).contains(&value.abs()) {
        return None;
    }
    let ten = *POWERS.get(decimals)?;
    let bits = value.abs().to_bits();
    let mantissa = u128::from((bits & ((1 << 52) - 1)) | (1 << 52));
    let halvings = u32::try_from(1075 - (bits >> 52)).ok()?;
    let scaled = mantissa * ten;
    let (below, rest) = (scaled >> halvings, scaled & ((1 << halvings) - 1));
    let middle = (1 << halvings) >> 1;
    let up = rest > middle || (rest == middle && rest > 0 && below % 2 == 1);
    let nearest = u64::try_from(below + u128::from(up)).ok()?;
    let ten = u64::try_from(ten).ok()?;
    let sign = if value < 0.0 { "-" } else { "" };
    let (whole, part) = (nearest / ten, nearest % ten);
    Some(match decimals {
        0 => format!("{sign}{whole}"),
        _ => format!("{sign}{whole}.{part:0decimals$}"),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// In the middle between two, next to it, on whole numbers, and anywhere.
    #[test]
    fn decimals_by_whole_numbers_are_those_of_the_text() {
        let mut quick = 0;
        let mut same = |value: f64| {
            for decimals in 0..11 {
                for value in [value, -value] {
                    let found = with_decimals(value, decimals);
                    assert_eq!(found, format!("{value:.decimals$}"), "{value:e}");
                    quick += i32::from(quick_with_decimals(value, decimals).is_some());
                }
            }
        };
        let mut bits = 0x1234_5678_9abc_def1_u64;
        for _ in 0..2_000 {
            bits ^= bits << 13;
            bits ^= bits >> 7;
            bits ^= bits << 17;
            same(f64::from_bits(bits));
            // Of the size that quantities have.
            same(f64::from_bits(
                (bits >> 12) | ((1023 - 52 + bits % 108) << 52),
            ));
            #[allow(clippy::cast_precision_loss)]
            let whole = (bits % 1_000_000) as f64;
            for parts in [1.0, 2.0, 8.0, 1000.0, 1024.0, 1e6] {
                for step in 0..2 {
                    same(f64::from_bits((whole / parts).to_bits() + step));
                    same(f64::from_bits(
                        (whole / parts).to_bits().saturating_sub(step),
                    ));
                }
            }
        }
        for odd in [
            0.0,
            f64::NAN,
            f64::INFINITY,
            f64::MIN_POSITIVE,
            f64::MAX,
            1e-15,
            9e15,
        ] {
            same(odd);
        }
        assert!(quick > 200_000, "{quick}");
    }

    /// Around every decimal of few digits, in the middle between two of twelve, at powers of ten and of two, and anywhere.
    #[test]
    fn twelve_digits_by_arithmetic_are_those_of_the_text() {
        let mut quick = 0;
        let mut same = |value: f64| {
            for value in [value, -value] {
                let found = twelve_digits(value);
                assert_eq!(
                    found.to_bits(),
                    slow_twelve_digits(value).to_bits(),
                    "{value:e}"
                );
                quick += i32::from(quick_twelve_digits(value).is_some());
            }
        };
        let around = |value: f64, same: &mut dyn FnMut(f64)| {
            for step in 0..4 {
                same(f64::from_bits(value.to_bits() + step));
                same(f64::from_bits(value.to_bits().saturating_sub(step)));
            }
        };
        for power in -40..40 {
            let ten: f64 = format!("1e{power}").parse().unwrap();
            for digits in [
                1.0,
                1.5,
                2.54,
                25.4,
                9.999_999_999_99,
                9.999_999_999_995,
                1.000_000_000_005,
            ] {
                around(digits * ten, &mut same);
            }
            around(2.0_f64.powi(power), &mut same);
        }
        let mut bits = 0x1234_5678_9abc_def1_u64;
        for _ in 0..100_000 {
            bits ^= bits << 13;
            bits ^= bits >> 7;
            bits ^= bits << 17;
            same(f64::from_bits(bits));
            // Of the size that quantities have.
            let exponent = 1023 - 40 + bits % 130;
            same(f64::from_bits((bits >> 12) | (exponent << 52)));
            // Thirteen digits that end in a five.
            #[allow(clippy::cast_precision_loss)]
            same((bits % 1_000_000_000_000) as f64 / 1e9 + 0.5e-9);
        }
        for odd in [0.0, f64::INFINITY, f64::MIN_POSITIVE, f64::MAX, 1e11, 1e12] {
            same(odd);
        }
        assert!(twelve_digits(f64::NAN).is_nan());
        assert!(quick > 200_000, "{quick}");
    }
}
