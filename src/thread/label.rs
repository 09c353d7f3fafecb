//! Names of threads and sizes, and what stands near a size that is not in the tables.

use alloc::{borrow::ToOwned, format, string::String, vec::Vec};

use crate::error::DesignationProblem;
use crate::tables::threads::{MetricSeries, MetricThread, UnifiedThread};
use crate::units::{INCH, Length, inch_fraction, millimetres};

pub(super) fn unified_label(row: &UnifiedThread) -> String {
    format!(
        "{}-{} {}",
        row.size,
        row.threads_per_inch,
        row.series.symbol()
    )
}

pub(super) fn metric_label(row: &MetricThread) -> String {
    let diameter = trimmed(row.nominal_diameter);
    match row.series {
        MetricSeries::Coarse => format!("M{diameter}"),
        MetricSeries::Fine => format!("M{diameter}x{}", trimmed(row.pitch)),
    }
}

/// A length in millimetres, without trailing zeros.
pub(super) fn trimmed(length: Length) -> String {
    trimmed_number(length.value * 1e3)
}

pub(super) fn trimmed_number(value: f64) -> String {
    let text = format!("{value:.5}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

pub(super) fn inch_label(diameter: Length) -> String {
    let name = inch_fraction(diameter).unwrap_or_else(|| trimmed_number(diameter.value / INCH));
    format!("{name} in")
}

/// Standard threads at a diameter, or the sizes either side of it.
pub(super) fn unified_near(diameter: Length) -> String {
    let rows = UnifiedThread::of_diameter(diameter);
    if !rows.is_empty() {
        let names: Vec<String> = rows.iter().map(unified_label).collect();
        return format!("at that diameter there are {}", names.join(", "));
    }
    let all = UnifiedThread::all();
    let after = all.partition_point(|row| row.nominal_diameter < diameter);
    neighbours(
        after.checked_sub(1).map(|i| all[i].size.to_owned()),
        all.get(after).map(|row| row.size.to_owned()),
    )
}

pub(super) fn metric_near(diameter: Length) -> String {
    let rows = MetricThread::of_diameter(diameter);
    if !rows.is_empty() {
        let names: Vec<String> = rows.iter().map(metric_label).collect();
        return format!("at that diameter there are {}", names.join(", "));
    }
    let all = MetricThread::all();
    let after = all.partition_point(|row| row.nominal_diameter < diameter);
    let name = |row: &MetricThread| format!("M{}", trimmed(row.nominal_diameter));
    neighbours(
        after.checked_sub(1).map(|i| name(&all[i])),
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
