//! Numbers of a picture as text: the same on every machine, short, and quick, as a section has some two thousand of them.

use alloc::string::String;

/// The numbers from 000 to 999, one after the other.
const TRIPLES: &str = match core::str::from_utf8(&triples()) {
    Ok(text) => text,
    Err(_) => "",
};

// Runs when the library is built.
#[allow(clippy::indexing_slicing)]
const fn triples() -> [u8; 3000] {
    let mut text = [b'0'; 3000];
    let mut at = 0;
    let mut number: u16 = 0;
    while number < 1000 {
        // Digits.
        #[allow(clippy::cast_possible_truncation)]
        {
            text[at] += (number / 100) as u8;
            text[at + 1] += (number / 10 % 10) as u8;
            text[at + 2] += (number % 10) as u8;
        }
        at += 3;
        number += 1;
    }
    text
}

/// The digits of a number below a thousand: three of them, less those that are left out before and after.
fn digits(number: u32, before: usize, after: usize) -> &'static str {
    let at = 3 * number as usize;
    TRIPLES.get(at + before..at + 3 - after).unwrap_or_default()
}

/// Adds a coordinate, in hundredths at most. What is not finite, which no caller has, becomes zero.
pub(super) fn push_number(document: &mut String, value: f64) {
    let (whole, rest) = split(document, value, 100);
    push_whole(document, whole);
    if rest > 0 {
        document.push('.');
        push_digit(document, rest / 10);
        if rest % 10 > 0 {
            push_digit(document, rest % 10);
        }
    }
}

/// Adds a number with six decimals; what is not finite, which no caller has, becomes zero.
pub(super) fn push_millionths(document: &mut String, value: f64) {
    let (whole, rest) = split(document, value, 1_000_000);
    push_whole(document, whole);
    document.push('.');
    document.push_str(digits(rest / 1000, 0, 0));
    document.push_str(digits(rest % 1000, 0, 0));
}

/// Adds a number that is given in its last decimals, of which there are two or three.
pub(super) fn push_fixed(document: &mut String, scaled: f64, decimals: usize) {
    let (parts, before) = if decimals == 2 { (100, 1) } else { (1000, 0) };
    let (whole, rest) = split(document, scaled / f64::from(parts), parts);
    push_whole(document, whole);
    document.push('.');
    document.push_str(digits(rest, before, 0));
}

fn push_digit(document: &mut String, digit: u32) {
    // One digit: with the mask a single byte of text.
    #[allow(clippy::cast_possible_truncation)]
    document.push(char::from((b'0' + digit as u8) & 0x7f));
}

fn push_whole(document: &mut String, number: u32) {
    if number < 1000 {
        if number >= 100 {
            push_digit(document, number / 100);
        }
        if number >= 10 {
            push_digit(document, number / 10 % 10);
        }
        push_digit(document, number % 10);
    } else {
        push_whole(document, number / 1000);
        document.push_str(digits(number % 1000, 0, 0));
    }
}

/// Writes the sign, and splits what is left into what stands before and after the point.
fn split(document: &mut String, value: f64, parts: u32) -> (u32, u32) {
    let scaled = value * f64::from(parts);
    let scaled = if scaled.is_finite() { scaled } else { 0.0 };
    // Rounded by hand: what is added to half a step and cut off is what `round` gives.
    let size = scaled.abs() + 0.5;
    if scaled < 0.0 && size >= 1.0 {
        document.push('-');
    }
    // Not negative, and within the ranges of the types: nearly everything on a page is small, and divides faster.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    if size < 4e9 {
        let size = size as u32;
        (size / parts, size % parts)
    } else {
        let size = size.min(4e9 * f64::from(parts)) as u64;
        let parts = u64::from(parts);
        ((size / parts) as u32, (size % parts) as u32)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn number(value: f64) -> String {
        let mut text = String::new();
        push_number(&mut text, value);
        text
    }

    #[test]
    fn numbers_are_short_and_never_strange() {
        for (value, text) in [
            (0.0, "0"),
            (-0.001, "0"),
            (12.0, "12"),
            (12.5, "12.5"),
            (12.34, "12.34"),
            (-12.056, "-12.06"),
            (0.05, "0.05"),
            (1000.0, "1000"),
            (f64::NAN, "0"),
            (f64::NEG_INFINITY, "0"),
            (1e300, "4000000000"),
        ] {
            assert_eq!(number(value), text);
        }
    }

    #[test]
    fn numbers_are_what_the_standard_library_writes() {
        let mut value = -3.0e6;
        while value < 3.0e6 {
            let mut text = String::new();
            push_millionths(&mut text, value);
            assert_eq!(text, format!("{value:.6}"));
            let short = number(value);
            let parsed: f64 = short.parse().unwrap();
            assert!(
                (parsed - value).abs() <= 0.005 + 1e-9,
                "{short} for {value}"
            );
            // Sixty-fourths have six decimals and no more.
            value += 1234.0 + 37.0 / 64.0;
        }
        for (scaled, decimals, text) in [
            (0.0, 2, "0.00"),
            (7.0, 2, "0.07"),
            (-1999.0, 3, "-1.999"),
            (123_456_789.0, 3, "123456.789"),
        ] {
            let mut own = String::new();
            push_fixed(&mut own, scaled, decimals);
            assert_eq!(own, text);
        }
    }
}
