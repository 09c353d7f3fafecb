//! Limits of Unified threads by the formulas of ASME B1.1, rounded as its tables are.

use super::{Limits, ThreadLimits};
use crate::caution::Cautions;
use crate::error::{Allowed, Error, out_of_range, sane_length};
use crate::math::{cbrt, sqrt};
use crate::source::{Basis, Provenance};
use crate::tables::nanometres;
use crate::tables::thread_tolerances::{UnifiedClassRow, UnifiedLimitException};
use crate::tables::threads::UnifiedSeries;
use crate::thread::{Thread, UnifiedClass, area::H_PER_PITCH};
use crate::units::{INCH, Length, inches};

impl UnifiedLimitException {
    /// The exception of a standard Unified thread, if there is one.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::thread_tolerances::UnifiedLimitException};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert!(UnifiedLimitException::get(&"1/2-13 UNC".parse()?).is_none());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn get(thread: &Thread) -> Option<&'static Self> {
        let row = thread.unified_row()?;
        let size = nanometres(row.nominal_diameter);
        // Threads per inch are whole or half numbers in both tables: exact.
        #[allow(clippy::float_cmp)]
        Self::all().iter().find(|exception| {
            nanometres(exception.nominal_diameter) == size
                && exception.threads_per_inch == row.threads_per_inch
        })
    }
}

/// A length in ten-thousandths of an inch, which every limit is a whole number of.
type Count = i32;

/// To the nearest whole number, halves up. The last term keeps a half that f64 cannot hold a half.
fn rounded(value: f64) -> Count {
    // No limit is longer than the 100 in of a special thread; `as` saturates anyway.
    #[allow(clippy::cast_possible_truncation)]
    let count = (value + 0.5 + 1e-6) as Count;
    count
}

fn count(inches: f64) -> Count {
    rounded(inches * 1e4)
}

fn length(count: Count) -> Length {
    inches(f64::from(count) / 1e4)
}

/// To thousandths of an inch, halves to the even one.
fn thousandths(count: Count) -> Count {
    let down = count - count % 10;
    match count % 10 {
        0..5 => down,
        5 if (down / 10) % 2 == 0 => down,
        _ => down + 10,
    }
}

pub(super) fn limits(
    thread: Thread,
    class: UnifiedClass,
    engagement: Option<Length>,
) -> Result<ThreadLimits, Error> {
    let row = UnifiedClassRow::of(class);
    let usual = usual_engagement(&thread);
    let engagement = match engagement {
        Some(length) => allowed_engagement(&thread, length)?,
        None => usual,
    };
    // What the tables print besides the formula they print for their own length.
    let exception =
        UnifiedLimitException::get(&thread).filter(|_| nanometres(engagement) == nanometres(usual));

    let in_inches = |length: Length| length.value / INCH;
    let (d, p, le) = (
        in_inches(thread.diameter),
        in_inches(thread.pitch),
        in_inches(engagement),
    );
    let tolerance_d = exception
        .and_then(|e| e.tolerance_diameter)
        .map_or(d, in_inches);
    let pitch_23 = cbrt(p * p);
    // T, the pitch diameter tolerance of class 2A, to six decimals.
    let t = 0.0015 * cbrt(tolerance_d) + 0.0015 * sqrt(le) + 0.015 * pitch_23;
    let t = f64::from(rounded(t * 1e6)) / 1e6;
    let pitch_tolerance = count(row.pitch_tolerance_factor * t);
    let allowance = match exception.and_then(|e| e.allowance) {
        Some(printed) if row.allowance_factor > 0.0 => count(in_inches(printed)),
        _ => count(row.allowance_factor * t),
    };
    let basic_major = count(d);
    let basic_pitch = count(d - 0.75 * H_PER_PITCH * p);
    let basic_minor = count(d - 1.25 * H_PER_PITCH * p);

    let mut limits = ThreadLimits {
        thread,
        pitch_diameter: between(basic_pitch, basic_pitch + pitch_tolerance),
        crest_diameter: between(basic_minor, basic_minor),
        root_diameter: Limits {
            min: Some(length(basic_major)),
            max: None,
        },
        allowance: length(allowance),
        unfinished_major_min: None,
        length_of_engagement: Some(engagement),
        provenance: exception.map_or(
            Provenance {
                basis: Basis::Computed,
                ..row.provenance
            },
            |exception| exception.provenance,
        ),
        cautions: Cautions::default(),
    };
    if let Some(factor) = row.major_tolerance_factor {
        let (major, pitch) = (basic_major - allowance, basic_pitch - allowance);
        limits.crest_diameter = between(major - count(factor * pitch_23), major);
        limits.pitch_diameter = between(pitch - pitch_tolerance, pitch);
        // UNR root, H/8 below the basic minor diameter; the tables round each term.
        let root = basic_minor - count(0.125 * H_PER_PITCH * p) - allowance;
        limits.root_diameter = Limits {
            min: None,
            max: Some(length(root)),
        };
        limits.unfinished_major_min =
            (class == UnifiedClass::Class2A).then(|| length(major - count(0.090 * pitch_23)));
    } else {
        let minor = (
            basic_minor,
            basic_minor + count(minor_tolerance(class, d, p)),
        );
        // Sizes #6 and larger are printed to three decimals, but the maximum of class 3B to four.
        limits.crest_diameter = match (basic_major >= 1380, class == UnifiedClass::Class3B) {
            (false, _) => between(minor.0, minor.1),
            (true, true) => between(thousandths(minor.0), minor.1),
            (true, false) => between(thousandths(minor.0), thousandths(minor.1)),
        };
    }
    Ok(limits)
}

fn between(min: Count, max: Count) -> Limits<Length> {
    Limits {
        min: length(min),
        max: length(max),
    }
}

/// Tolerance of the minor diameter of an internal thread; all in inches.
fn minor_tolerance(class: UnifiedClass, d: f64, p: f64) -> f64 {
    let close = 0.05 * cbrt(p * p) + 0.03 * p / d - 0.002;
    let close = close.min(0.394 * p);
    let n = 1.0 / p;
    // Whole numbers of threads per inch come back from the pitch a little off.
    let at_least = |count: f64| n > count - 1e-6;
    if class == UnifiedClass::Class3B {
        let least = if at_least(13.0) {
            0.23 * p - 1.5 * p * p
        } else {
            0.120 * p
        };
        return close.max(least);
    }
    let wide = if at_least(4.0) {
        0.25 * p - 0.4 * p * p
    } else {
        0.15 * p
    };
    if d < 0.25 - 1e-6 {
        close.max(wide)
    } else {
        wide
    }
}

/// Whether the tables use the diameter as the length of engagement; otherwise nine pitches.
fn by_diameter(thread: &Thread) -> bool {
    use UnifiedSeries::{Un4, Un6, Un8, Unc, Unf};
    thread
        .unified_row()
        .is_some_and(|row| matches!(row.series, Unc | Unf | Un4 | Un6 | Un8))
}

fn usual_engagement(thread: &Thread) -> Length {
    if by_diameter(thread) {
        thread.diameter
    } else {
        9.0 * thread.pitch
    }
}

fn allowed_engagement(thread: &Thread, length: Length) -> Result<Length, Error> {
    sane_length("length of engagement", length)?;
    let (least, most) = if by_diameter(thread) {
        (inches(0.0), 1.5 * thread.diameter)
    } else {
        (5.0 * thread.pitch, 15.0 * thread.pitch)
    };
    if (nanometres(least)..=nanometres(most)).contains(&nanometres(length)) {
        Ok(length)
    } else {
        let allowed = Allowed::FromTo(least.into(), most.into());
        Err(out_of_range("length of engagement", length, allowed))
    }
}
