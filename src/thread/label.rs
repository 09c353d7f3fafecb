//! Designations of threads and sizes, and what stands near a size that is not in the tables.

use alloc::{borrow::ToOwned, format, string::String, vec::Vec};
use core::fmt::{self, Write};

use super::designation::number_size;
use super::special::five_decimals;
use super::{Engagement, Form, Hand, Profile, Thread};
use crate::error::DesignationProblem;
use crate::math::round;
use crate::tables::nanometres;
use crate::tables::thread_tolerances::EngagementGroup;
use crate::tables::threads::{MetricThread, UnifiedThread};
use crate::units::{INCH, Length, inch_fraction, millimetres};

impl fmt::Display for Thread {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&designation(self))
    }
}

/// The canonical designation. The grammar stands in the documentation of [`Thread`].
fn designation(thread: &Thread) -> String {
    let mut text = match thread.form {
        Form::Unified(row) => unified_size(thread, row.size, row.threads_per_inch),
        Form::UnifiedSpecial(n) => unified_size(thread, &special_size(thread.diameter, n), n),
        Form::Metric(_) => metric_size(thread),
        Form::MetricSpecial => metric_size(thread) + " special",
    };
    // To a string nothing fails to be written.
    if let Some(class) = thread.class {
        let _ = write!(text, "-{class}");
    }
    if let (Some(mark), false) = (thread.engagement, thread.is_unified()) {
        let _ = match mark {
            Engagement::Group(EngagementGroup::Short) => write!(text, "-S"),
            Engagement::Group(EngagementGroup::Normal) => write!(text, "-N"),
            Engagement::Group(EngagementGroup::Long) => write!(text, "-L"),
            Engagement::Length(length) => write!(text, "-{}", trimmed(length)),
        };
    }
    if thread.hand == Hand::Left {
        text.push_str("-LH");
    }
    if let (Some(Engagement::Length(length)), true) = (thread.engagement, thread.is_unified()) {
        let _ = write!(text, " SE {}", trimmed_number(length.value / INCH));
    }
    text
}

/// The size of a special thread: a number where it is a number size, otherwise inches, with a decimal
/// where a whole number would be read as a number size.
fn special_size(diameter: Length, n: f64) -> String {
    let found = (0..=12).find(|&number| {
        number_size(number).is_some_and(|size| nanometres(size) == nanometres(diameter))
    });
    if let Some(number) = found {
        return format!("#{number}");
    }
    let text = without_zeros(format!("{:.7}", diameter.value / INCH));
    let number = text.parse().ok().and_then(number_size);
    if number.is_some_and(|size| Thread::unified_special(size, n).is_ok()) {
        format!("{text}.0")
    } else {
        text
    }
}

/// Size, pitch or starts, and series: `3/8-16 UNC`, `0.75-0.0625P-0.1875L (3 STARTS) UNS`.
fn unified_size(thread: &Thread, size: &str, n: f64) -> String {
    // The letter of the profile goes after UN.
    let letter = match thread.profile {
        Profile::Unr => "R",
        Profile::Unj => "J",
        _ => "",
    };
    let series = match thread.form {
        Form::Unified(row) => row.series.symbol(),
        _ => "UNS",
    };
    let kind = series.strip_prefix("UN").unwrap_or(series);
    if thread.starts == 1 {
        let n = trimmed_number(n);
        return format!("{size}-{n} UN{letter}{kind}");
    }
    let starts = thread.starts;
    let decimals = pitch_decimals(n);
    let length = |value: f64| pitch_text(value, decimals);
    let (pitch, lead) = (length(1.0 / n), length(f64::from(starts) / n));
    format!("{size}-{pitch}P-{lead}L ({starts} STARTS) UN{letter}{kind}")
}

/// A pitch or lead in inches. Beyond the four decimals of the standard zeros say how exact it is.
fn pitch_text(inches: f64, decimals: usize) -> String {
    let text = format!("{inches:.decimals$}");
    if decimals > 4 {
        text
    } else {
        without_zeros(text)
    }
}

/// As many decimals of the pitch in inches as bring the number of threads per inch back, at least
/// four, as the standard writes it.
fn pitch_decimals(n: f64) -> usize {
    let brings_back = |decimals: &usize| {
        let text = pitch_text(1.0 / n, *decimals);
        let places = text.split_once('.').map_or(0, |(_, places)| places.len());
        // Exactly: it is the same number or another thread.
        #[allow(clippy::float_cmp)]
        let same = |pitch| threads_per_inch_of(pitch, places) == n;
        text.parse().is_ok_and(same)
    };
    (4..8).find(brings_back).unwrap_or(8)
}

/// The number of threads per inch that a pitch written with some decimals stands for: the roundest
/// whose pitch is that one rounded. `0.0769` and `0.07692` are 13 threads per inch.
pub(super) fn threads_per_inch_of(pitch: f64, decimals: usize) -> f64 {
    let exact = five_decimals(1.0 / pitch);
    if decimals < 4 {
        return exact;
    }
    let half_a_unit = match decimals {
        4 => 5e-5,
        5 => 5e-6,
        6 => 5e-7,
        _ => 5e-8,
    };
    [1.0, 10.0, 100.0, 1000.0]
        .into_iter()
        .map(|scale| round(scale / pitch) / scale)
        .find(|n| (1.0 / n - pitch).abs() <= half_a_unit)
        .unwrap_or(exact)
}

fn metric_size(thread: &Thread) -> String {
    let symbol = thread.profile.symbol();
    let diameter = trimmed(thread.diameter);
    let pitch = trimmed(thread.pitch);
    if thread.starts > 1 {
        format!("{symbol}{diameter}xPh{}P{pitch}", trimmed(thread.lead()))
    } else if thread.is_coarse() && thread.profile == Profile::M {
        format!("{symbol}{diameter}")
    } else {
        format!("{symbol}{diameter}x{pitch}")
    }
}

/// A length in millimetres, without trailing zeros.
pub(super) fn trimmed(length: Length) -> String {
    trimmed_number(length.value * 1e3)
}

pub(super) fn trimmed_number(value: f64) -> String {
    without_zeros(format!("{value:.5}"))
}

fn without_zeros(mut text: String) -> String {
    text.truncate(text.trim_end_matches('0').trim_end_matches('.').len());
    text
}

pub(super) fn inch_label(diameter: Length) -> String {
    let name = inch_fraction(diameter).unwrap_or_else(|| trimmed_number(diameter.value / INCH));
    format!("{name} in")
}

fn at_that_diameter(threads: impl Iterator<Item = Thread>) -> String {
    let names: Vec<String> = threads.map(|thread| designation(&thread)).collect();
    format!("at that diameter there are {}", names.join(", "))
}

/// Standard threads at a diameter, or the sizes either side of it.
pub(super) fn unified_near(diameter: Length) -> String {
    let rows = UnifiedThread::of_diameter(diameter);
    if !rows.is_empty() {
        return at_that_diameter(rows.iter().map(Thread::from_unified));
    }
    let all = UnifiedThread::all();
    let after = all.partition_point(|row| row.nominal_diameter < diameter);
    neighbours(
        all.get(..after)
            .and_then(<[_]>::last)
            .map(|row| row.size.to_owned()),
        all.get(after).map(|row| row.size.to_owned()),
    )
}

pub(super) fn metric_near(diameter: Length) -> String {
    let rows = MetricThread::of_diameter(diameter);
    if !rows.is_empty() {
        return at_that_diameter(rows.iter().map(Thread::from_metric));
    }
    let all = MetricThread::all();
    let after = all.partition_point(|row| row.nominal_diameter < diameter);
    let name = |row: &MetricThread| format!("M{}", trimmed(row.nominal_diameter));
    neighbours(
        all.get(..after).and_then(<[_]>::last).map(name),
        all.get(after).map(name),
    )
}

pub(super) fn neighbours(below: Option<String>, above: Option<String>) -> String {
    match (below, above) {
        (Some(below), Some(above)) => format!("the nearest sizes are {below} and {above}"),
        (Some(one), None) | (None, Some(one)) => format!("the nearest size is {one}"),
        (None, None) => "the table is empty".to_owned(),
    }
}

/// What a designation that no standard thread answers to could have meant.
pub(super) fn not_standard_unified(diameter: Length) -> DesignationProblem {
    DesignationProblem::NotStandard {
        available: unified_near(diameter),
    }
}

pub(super) fn not_standard_metric(diameter_mm: f64) -> DesignationProblem {
    DesignationProblem::NotStandard {
        available: metric_near(millimetres(diameter_mm)),
    }
}
