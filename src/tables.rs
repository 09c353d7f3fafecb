//! Reference tables: row types and look-ups.
//!
//! The rows are written in `tables/*.csv` of the repository, the only place where a value is
//! edited; the arrays behind these functions are generated from them and checked in. Each row
//! carries its [`Provenance`]: the document, and whether the row was read in
//! it, in a reproduction of it, computed from its formula, or recalled. Where only part of a row
//! is known in another way, a second field says so (`minor_area_basis`, `limits_basis`, ...).
//!
//! | module | rows |
//! |---|---|
//! | [`threads`] | Unified and ISO metric threads |
//! | [`grades`] | SAE J429 and ASTM grades, ISO 898-1 and ISO 3506-1 property classes |
//! | [`nuts`] | nuts of every style, inch and metric |
//! | [`screws`] | hexagon head screws, their length tolerances and stock lengths |
//! | [`metric_screws`] | metric hexagon head screws besides ISO 4014 and 4017: ASME, fine pitch |
//! | [`bolts`] | hex and heavy hex bolts, structural bolts |
//! | [`sockets`] | socket head cap screws |
//! | [`aircraft`] | aircraft bolts AN3 to AN20 and their grips |
//! | [`holes`] | clearance holes, structural holes and slots, tap drills |
//! | [`washers`] | plain, structural, aircraft and spring lock washers |
//! | [`wrench`] | nuts and heads by their width across flats, socket screws by their key |
//!
//! A value that nobody has read is `None`, never zero.

use crate::source::{Basis, Provenance, Source};
use crate::units::Length;

pub mod aircraft;
pub mod bolts;
pub mod grades;
pub mod holes;
pub mod metric_screws;
pub mod nuts;
pub mod screws;
pub mod sockets;
pub mod threads;
pub mod washers;
pub mod wrench;

// The literals keep the digits as printed, so that a reviewer can compare text with text: a knurled
// head of 3.14 mm is not pi.
#[allow(clippy::unreadable_literal, clippy::approx_constant)]
#[rustfmt::skip]
mod generated;

pub(crate) fn all_sources() -> &'static [&'static Source] {
    &generated::sources::SOURCES
}

const fn known(source: &'static Source, basis: Basis) -> Provenance {
    Provenance { source, basis }
}

/// A length as a whole number of nanometres. Every nominal size, inch or metric, is one, which
/// makes look-ups by size exact.
#[inline]
pub(crate) const fn nanometres(length: Length) -> i64 {
    // `as` saturates, and NaN becomes 0: neither is the size of a row.
    #[allow(clippy::cast_possible_truncation)]
    let count = (length.value * 1e9 + 0.5) as i64;
    count
}

/// The rows of one style (or other key) of a table sorted by that key first.
fn rows_of<T, K: PartialEq>(rows: &'static [T], key: &K, key_of: impl Fn(&T) -> K) -> &'static [T] {
    let Some(start) = rows.iter().position(|row| key_of(row) == *key) else {
        return &[];
    };
    let rest = &rows[start..];
    let end = rest
        .iter()
        .position(|row| key_of(row) != *key)
        .unwrap_or(rest.len());
    &rest[..end]
}

/// "rows run from A to B", for messages.
fn size_range<T>(rows: &[T], size_of: impl Fn(&T) -> &'static str) -> alloc::string::String {
    match (rows.first(), rows.last()) {
        (Some(first), Some(last)) => {
            alloc::format!("its sizes run from {} to {}", size_of(first), size_of(last))
        }
        _ => "it has no rows".into(),
    }
}

/// What a table has near a thread it has no row for: another pitch at that size, or its sizes.
fn size_or_range<T>(
    rows: &[T],
    size_of: impl Fn(&T) -> &'static str,
    same_size: impl Fn(&T) -> bool,
) -> alloc::string::String {
    if rows.iter().any(same_size) {
        "at that size it has the coarse thread only".into()
    } else {
        size_range(rows, size_of)
    }
}
