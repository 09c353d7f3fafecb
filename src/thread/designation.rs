//! Reads thread designations. The grammar stands in the documentation of [`Thread`].

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};
use core::str::FromStr;

use super::label::{not_standard_metric, not_standard_unified, threads_per_inch_of, unified_near};
use super::{Profile, Thread};
use crate::error::{DesignationProblem, Error, sane_text};
use crate::tables::threads::{MetricThread, UnifiedSeries, UnifiedThread};
use crate::units::{Length, inches, millimetres};

mod cursor;
mod marks;

use cursor::Cursor;
use marks::{read_marks, read_starts, starts_of};

impl FromStr for Thread {
    type Err = Error;

    /// Reads a designation.
    ///
    /// # Errors
    ///
    /// [`Error::Designation`] tells what is wrong and at which character; [`Error::OutOfRange`] for more than 1000 characters.
    fn from_str(text: &str) -> Result<Self, Error> {
        sane_text("thread designation", text)?;
        let mut cursor = Cursor {
            bytes: text.as_bytes(),
            at: 0,
        };
        read(&mut cursor).map_err(|(position, problem)| Error::Designation {
            text: text.into(),
            // The cursor counts bytes; a reader counts characters.
            position: text
                .char_indices()
                .take_while(|(at, _)| *at < position)
                .count(),
            problem,
        })
    }
}

type Failure = (usize, DesignationProblem);

fn read(cursor: &mut Cursor<'_>) -> Result<Thread, Failure> {
    cursor.skip_spaces();
    match cursor.peek() {
        None => Err((cursor.at, DesignationProblem::Empty)),
        Some(b'M' | b'm') => read_metric(cursor),
        Some(_) => read_unified(cursor),
    }
}

fn read_metric(cursor: &mut Cursor<'_>) -> Result<Thread, Failure> {
    let start = cursor.at;
    cursor.at += 1;
    let profile = if cursor.take_letter(b'J') {
        Profile::Mj
    } else {
        Profile::M
    };
    cursor.skip_spaces();
    let diameter = cursor
        .decimal()
        .filter(|d| *d > 0.0)
        .ok_or((cursor.at, DesignationProblem::Size))?;
    cursor.skip_spaces();
    // "x", "X", or the multiplication sign (two bytes in UTF-8).
    let has_pitch = cursor.take_letter(b'X')
        || {
            let sign = cursor.rest().starts_with("×".as_bytes());
            cursor.at += if sign { 2 } else { 0 };
            sign
        }
        || takes_hyphen_of_pitch(cursor);
    let (pitch, starts) = if has_pitch {
        cursor.skip_spaces();
        let (pitch, starts) = read_metric_pitch(cursor)?;
        (Some(pitch), starts)
    } else {
        (None, 1)
    };
    let size = millimetres(diameter);
    cursor.skip_spaces();
    let thread = match pitch.map(millimetres) {
        Some(pitch) if cursor.take_text("SPECIAL") => {
            Thread::metric_special(size, pitch).map_err(|_| (start, DesignationProblem::Size))?
        }
        pitch => {
            let row = match pitch {
                Some(pitch) => MetricThread::get(size, pitch),
                None => MetricThread::coarse(size),
            };
            Thread::from_metric(row.ok_or_else(|| (start, not_standard_metric(diameter)))?)
        }
    };
    let marks = read_marks(cursor, profile)?;
    Ok(Thread {
        profile,
        starts,
        class: marks.class,
        hand: marks.hand,
        engagement: marks.engagement,
        ..thread
    })
}

/// Takes the hyphen of `M12-1.75`. After a tolerance class (`M12-6g`) a letter stands, after a pitch none.
fn takes_hyphen_of_pitch(cursor: &mut Cursor<'_>) -> bool {
    let start = cursor.at;
    if cursor.take(b'-') {
        let after = cursor.at;
        cursor.skip_spaces();
        let number = cursor.decimal().is_some();
        if number && matches!(cursor.peek(), None | Some(b' ' | b'-')) {
            cursor.at = after;
            return true;
        }
    }
    cursor.at = start;
    false
}

/// `1.5`, or lead and pitch of several starts: `Ph3P1.5`.
fn read_metric_pitch(cursor: &mut Cursor<'_>) -> Result<(f64, u8), Failure> {
    let positive = |cursor: &mut Cursor<'_>| {
        let at = cursor.at;
        let value = cursor
            .decimal_and_places()
            .filter(|(value, _)| *value > 0.0);
        value.ok_or((at, DesignationProblem::Pitch))
    };
    if !cursor.take_letter(b'P') {
        return Ok((positive(cursor)?.0, 1));
    }
    if !cursor.take_letter(b'H') {
        return Err((cursor.at, DesignationProblem::Pitch));
    }
    let lead_at = cursor.at;
    let lead = positive(cursor)?;
    cursor.skip_spaces();
    if !cursor.take_letter(b'P') {
        return Err((cursor.at, DesignationProblem::Pitch));
    }
    let pitch = positive(cursor)?;
    let starts = starts_of(lead, pitch).ok_or((lead_at, DesignationProblem::Starts))?;
    read_starts(cursor, starts)?;
    Ok((pitch.0, starts))
}

/// A nominal size as read: a length, and whether it may instead be a number size.
struct Size {
    diameter: Length,
    number: Option<Length>,
    named_by_number: bool,
}

impl Size {
    /// The diameters it may be, the number size first.
    fn diameters(&self) -> impl Iterator<Item = Length> {
        let inches = (!self.named_by_number).then_some(self.diameter);
        [self.number, inches].into_iter().flatten()
    }

    /// The diameter it is where nothing else tells number sizes from inches.
    fn only(&self) -> Length {
        match self.number {
            Some(number) if self.named_by_number => number,
            _ => self.diameter,
        }
    }
}

/// `5/16 UNF`: a size has one thread of UNC, of UNF and of UNEF. Of the constant-pitch series the pitch must be
/// written. A whole number could be a number size or inches (`1 UNC`), and must have its pitch or its `#`
/// where both have such a thread.
fn read_series_alone(
    cursor: &mut Cursor<'_>,
    size: &Size,
    start: usize,
) -> Result<Thread, Failure> {
    let at = cursor.at;
    let (profile, series) = read_series(cursor)?;
    let Some(Series::Named(series)) = series else {
        return Err((at, DesignationProblem::Pitch));
    };
    let mut rows = size
        .diameters()
        .filter_map(|diameter| UnifiedThread::get(diameter, series));
    let row = match (rows.next(), rows.next()) {
        (Some(row), None) => row,
        (Some(_), Some(_)) => return Err((at, no_pitch(size, &[series]))),
        (None, _) => return Err((start, not_standard_unified(size.only()))),
    };
    let marks = read_marks(cursor, profile)?;
    Ok(Thread {
        profile,
        class: marks.class,
        hand: marks.hand,
        engagement: marks.engagement,
        ..Thread::from_unified(row)
    })
}

/// What a size without pitch may be: its threads of some series, or the threads and sizes near it.
#[cold]
fn no_pitch(size: &Size, series: &[UnifiedSeries]) -> DesignationProblem {
    let threads = size.diameters().flat_map(|diameter| {
        let rows = series.iter();
        rows.filter_map(move |series| UnifiedThread::get(diameter, *series))
    });
    let names: Vec<String> = threads
        .map(|row| Thread::from_unified(row).to_string())
        .collect();
    let available = if names.is_empty() {
        unified_near(size.only())
    } else {
        format!("it may be {}", names.join(" or "))
    };
    DesignationProblem::NoPitch { available }
}

fn read_unified(cursor: &mut Cursor<'_>) -> Result<Thread, Failure> {
    let start = cursor.at;
    let size = read_size(cursor)?;
    cursor.skip_spaces();
    let at = cursor.at;
    let hyphen = cursor.take(b'-');
    cursor.skip_spaces();
    if matches!(cursor.peek(), Some(b'U' | b'u')) {
        return read_series_alone(cursor, &size, start);
    }
    if !hyphen && cursor.peek().is_none() {
        return Err((
            at,
            no_pitch(&size, &[UnifiedSeries::Unc, UnifiedSeries::Unf]),
        ));
    }
    if !hyphen {
        return Err((at, DesignationProblem::Pitch));
    }
    let (threads_per_inch, starts) = read_unified_pitch(cursor)?;
    cursor.skip_spaces();
    let (profile, series) = read_series(cursor)?;
    let row = size
        .diameters()
        .find_map(|diameter| find_row(diameter, threads_per_inch, series));
    let marks = read_marks(cursor, profile)?;
    let thread = match (row, series) {
        (Some(row), _) => Thread::from_unified(row),
        (None, Some(Series::Special)) => {
            // `10-36 UNS` is the number size, as ASME B1.1 writes it; where the number size has no room
            // for the pitch, as in `1-14 UNS`, the whole number is inches.
            let special = |diameter| Thread::unified_special(diameter, threads_per_inch);
            size.number
                .and_then(|number| special(number).ok())
                .or_else(|| {
                    special(size.diameter)
                        .ok()
                        .filter(|_| !size.named_by_number)
                })
                .ok_or((start, DesignationProblem::Size))?
        }
        (None, _) => {
            return Err((start, not_standard_unified(size.only())));
        }
    };
    Ok(Thread {
        profile,
        starts,
        class: marks.class,
        hand: marks.hand,
        engagement: marks.engagement,
        ..thread
    })
}

/// Threads per inch, or pitch and lead of several starts in inches: `0.0625P-0.1875L (3 STARTS)`.
fn read_unified_pitch(cursor: &mut Cursor<'_>) -> Result<(f64, u8), Failure> {
    let at = cursor.at;
    let missing = |at| (at, DesignationProblem::Pitch);
    let positive = |read: Option<(f64, usize)>| read.filter(|(value, _)| *value > 0.0);
    let (value, places) = positive(cursor.decimal_and_places()).ok_or(missing(at))?;
    if !cursor.take_letter(b'P') {
        return Ok((value, 1));
    }
    cursor.skip_spaces();
    if !cursor.take(b'-') {
        return Err(missing(cursor.at));
    }
    cursor.skip_spaces();
    let at = cursor.at;
    let lead = positive(cursor.decimal_and_places()).ok_or(missing(at))?;
    if !cursor.take_letter(b'L') {
        return Err(missing(cursor.at));
    }
    let starts = starts_of(lead, (value, places)).ok_or((at, DesignationProblem::Starts))?;
    read_starts(cursor, starts)?;
    Ok((threads_per_inch_of(value, places), starts))
}

fn read_size(cursor: &mut Cursor<'_>) -> Result<Size, Failure> {
    let start = cursor.at;
    let bad = |at| (at, DesignationProblem::Size);
    if cursor.take(b'#') {
        let padded = is_padded(cursor);
        let number = cursor.whole().and_then(number_size).filter(|_| !padded);
        let number = number.ok_or(bad(start))?;
        return Ok(Size {
            diameter: number,
            number: Some(number),
            named_by_number: true,
        });
    }
    let fraction = |numerator: u32, denominator: u32| f64::from(numerator) / f64::from(denominator);
    let first_at = cursor.at;
    let padded = is_padded(cursor);
    let value = cursor.decimal().ok_or(bad(first_at))?;
    let number = cursor.bytes.get(first_at..cursor.at).unwrap_or_default();
    let is_whole = !number.contains(&b'.');
    // Nine digits at most, so a whole value fits.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let whole = value as u32;
    if is_whole && cursor.take(b'/') {
        let at = cursor.at;
        let denominator = cursor.whole().filter(|d| is_of_a_rule(whole, *d));
        let denominator = denominator.ok_or(bad(at))?;
        return size_in_inches(fraction(whole, denominator), None, start);
    }
    // "1-1/2" and "1 1/2": look ahead for a fraction, else the hyphen belongs to the pitch.
    if is_whole && matches!(cursor.peek(), Some(b'-' | b' ')) {
        let mark = cursor.at;
        cursor.at += 1;
        if let Some(numerator) = cursor.whole() {
            if cursor.take(b'/') {
                let at = cursor.at;
                let denominator = cursor.whole().filter(|d| is_of_a_rule(numerator, *d));
                let denominator = denominator.ok_or(bad(at))?;
                return size_in_inches(value + fraction(numerator, denominator), None, start);
            }
        }
        cursor.at = mark;
    }
    if is_whole && padded {
        return Err(bad(start));
    }
    let number = if is_whole { number_size(whole) } else { None };
    size_in_inches(value, number, start)
}

/// Whether a fraction is one of those that inches are divided into: halves to 128ths, below 1. Whoever writes 5/6 or 8/6
/// means another, and may have left out a digit of 5/16.
fn is_of_a_rule(numerator: u32, denominator: u32) -> bool {
    numerator < denominator && denominator <= 128 && denominator.is_power_of_two()
}

/// Whether a whole number begins with a zero more than it needs: 00 and 000 are sizes of watch screws
/// below 0, which no table here has.
fn is_padded(cursor: &Cursor<'_>) -> bool {
    matches!(cursor.rest(), [b'0', b'0'..=b'9', ..])
}

fn size_in_inches(value: f64, number: Option<Length>, at: usize) -> Result<Size, Failure> {
    if value > 0.0 || number.is_some() {
        Ok(Size {
            diameter: inches(value),
            number,
            named_by_number: false,
        })
    } else {
        Err((at, DesignationProblem::Size))
    }
}

/// Diameter of a number size: 0.060 in + 0.013 in for each number, exact (ASME B1.1).
pub(super) fn number_size(number: u32) -> Option<Length> {
    (number <= 12).then(|| inches(f64::from(60 + 13 * number) / 1000.0))
}

#[derive(Clone, Copy)]
enum Series {
    Named(UnifiedSeries),
    /// `UN`: the constant-pitch series of the pitch.
    ConstantPitch,
    /// `UNS`.
    Special,
}

fn read_series(cursor: &mut Cursor<'_>) -> Result<(Profile, Option<Series>), Failure> {
    let at = cursor.at;
    if matches!(cursor.peek(), None | Some(b'-')) {
        return Ok((Profile::Un, None));
    }
    // "8-UN" and "8UN" repeat the pitch before the symbol.
    let prefix = cursor.whole();
    if prefix.is_some() {
        cursor.take(b'-');
    }
    let mut symbol = [0; 5];
    let word = cursor.word();
    let Some(symbol) = symbol.get_mut(..word.len()) else {
        return Err((at, DesignationProblem::Series));
    };
    symbol.copy_from_slice(word);
    symbol.make_ascii_uppercase();
    // The hand may follow a pitch without series.
    if prefix.is_none() && symbol == b"LH" {
        cursor.at = at;
        return Ok((Profile::Un, None));
    }
    let Some(rest) = symbol.strip_prefix(b"UN") else {
        return Err((at, DesignationProblem::Series));
    };
    let (profile, kind) = match rest {
        [b'R', kind @ ..] => (Profile::Unr, kind),
        [b'J', kind @ ..] => (Profile::Unj, kind),
        kind => (Profile::Un, kind),
    };
    let series = match (prefix, kind) {
        (None, b"C") => Series::Named(UnifiedSeries::Unc),
        (None, b"F") => Series::Named(UnifiedSeries::Unf),
        (None, b"EF") => Series::Named(UnifiedSeries::Unef),
        (None, b"") => Series::ConstantPitch,
        (None, b"S") => Series::Special,
        (Some(4), b"") => Series::Named(UnifiedSeries::Un4),
        (Some(6), b"") => Series::Named(UnifiedSeries::Un6),
        (Some(8), b"") => Series::Named(UnifiedSeries::Un8),
        (Some(12), b"") => Series::Named(UnifiedSeries::Un12),
        (Some(16), b"") => Series::Named(UnifiedSeries::Un16),
        (Some(20), b"") => Series::Named(UnifiedSeries::Un20),
        (Some(28), b"") => Series::Named(UnifiedSeries::Un28),
        (Some(32), b"") => Series::Named(UnifiedSeries::Un32),
        _ => return Err((at, DesignationProblem::Series)),
    };
    Ok((profile, Some(series)))
}

fn find_row(
    diameter: Length,
    threads_per_inch: f64,
    series: Option<Series>,
) -> Option<&'static UnifiedThread> {
    UnifiedThread::of_diameter(diameter).iter().find(|row| {
        // Threads per inch are whole or half numbers in the table and in the text: exact.
        #[allow(clippy::float_cmp)]
        let same_pitch = row.threads_per_inch == threads_per_inch;
        same_pitch
            && match series {
                None => true,
                Some(Series::Named(named)) => {
                    row.series == named || row.constant_pitch_series == Some(named)
                }
                Some(Series::ConstantPitch) => {
                    row.series.symbol() == "UN" || row.constant_pitch_series.is_some()
                }
                Some(Series::Special) => false,
            }
    })
}

#[cfg(test)]
mod tests;
