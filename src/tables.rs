//! Reference tables: row types, and look-ups by name and size. What is found by a [`Thread`](crate::thread::Thread) (the
//! `find` of a [`Nut`](nuts::Nut), a [`ClearanceHole`](holes::ClearanceHole), ...) is added further up in the crate.
//!
//! The rows are written in `tables/*.csv` of the repository, the only place where a value is
//! edited; the arrays behind these functions are generated from them and checked in. Each row
//! carries its [`Provenance`]: the document, and whether the row was read in
//! it, in a reproduction of it, computed from its formula, or recalled. Where only part of a row
//! is known in another way, a second field says so (`minor_area_basis`, `limits_basis`, ...). With the feature
//! `serde` rows are written to data files whole, with units, codes and sources; only a
//! [`Washer`](washers::Washer) is named by its style and size. They are not read back.
//!
//! | module | rows |
//! |---|---|
//! | [`threads`] | Unified and ISO metric threads |
//! | [`thread_tolerances`] | deviations and tolerances of threads, lengths of engagement |
//! | [`grades`] | SAE J429 and ASTM grades, ISO 898-1 and ISO 3506-1 property classes |
//! | [`head_marks`] | marks on bolt heads, and the grades that bear a mark |
//! | [`nut_grades`] | proof stress and hardness of nuts; which nut for which bolt |
//! | [`nuts`] | nuts of every style, inch and metric |
//! | [`screws`] | hexagon head screws, their length tolerances and stock lengths |
//! | [`strengths`] | stresses of design codes, shear over tension, printed loads |
//! | [`metric_screws`] | metric hexagon head screws besides ISO 4014 and 4017: ASME, fine pitch |
//! | [`bolts`] | hex and heavy hex bolts, structural bolts |
//! | [`sockets`] | socket head cap screws |
//! | [`aircraft`] | aircraft bolts AN3 to AN20 and their grips |
//! | [`aircraft_torque`] | torques of aircraft nuts by thread |
//! | [`holes`] | clearance holes, structural holes and slots, tap drills |
//! | [`expansion`] | coefficients of expansion of bolts and families of metals |
//! | [`edge_distances`] | least edge distances of AISC 360 |
//! | [`en_holes`] | clearances of holes by EN 1090-2 |
//! | [`fatigue`] | endurance strengths of bolts |
//! | [`heat`] | yield strength of bolt steels in heat, limits of ply materials |
//! | [`galvanic`] | anodic index of metals, for contact of unlike ones |
//! | [`friction`] | nut factors, friction classes |
//! | [`pretension`] | least pretensions of structural bolts |
//! | [`tightening`] | scatter of tightening methods, embedment, turn of the nut |
//! | [`locking`] | prevailing torques of lock nuts, service temperatures |
//! | [`plies`] | materials of plies: modulus, expansion, strengths, bearing |
//! | [`timber`] | timbers: specific gravities, characteristic densities, strengths across the grain |
//! | [`surface`] | limiting pressures under head and nut |
//! | [`washers`] | plain, structural, aircraft and spring lock washers |
//! | [`washer_rules`] | hardness of washers, washers for a bolt, washers that codes require |
//! | [`wrench`] | nuts and heads by their width across flats, socket screws by their key |
//!
//! A value that nobody has read is `None`, never zero. Programs in other languages read the same CSV files:
//! they are a data package, described by `tables/datapackage.json`.

use alloc::{format, string::String, vec::Vec};

use crate::source::{Basis, Method, Provenance, Source};
use crate::units::Length;

pub mod aircraft;
pub mod aircraft_torque;
pub mod bolts;
pub mod edge_distances;
pub mod en_holes;
pub mod expansion;
pub mod fatigue;
pub mod friction;
pub mod galvanic;
pub mod grades;
pub mod head_marks;
pub mod heat;
pub mod holes;
pub mod hr_bolts;
pub mod locking;
pub mod metric_screws;
pub mod nut_grades;
pub mod nuts;
pub mod plies;
pub mod pretension;
pub mod screws;
pub mod sockets;
pub mod strengths;
pub mod surface;
pub mod thread_tolerances;
pub mod threads;
pub mod tightening;
pub mod timber;
pub mod washer_rules;
pub mod washers;
pub mod wrench;

// The literals keep the digits as printed, so that a reviewer can compare text with text: a knurled
// head of 3.14 mm is not pi.
#[allow(clippy::unreadable_literal, clippy::approx_constant)]
#[rustfmt::skip]
mod generated;
mod optional;

impl Source {
    /// Every source of every table.
    ///
    /// ```
    /// let mut all = shankline::source::Source::all().iter();
    /// assert!(all.any(|source| source.document == "SAE J429"));
    /// ```
    #[must_use]
    pub fn all() -> &'static [&'static Self] {
        &generated::sources::SOURCES
    }
}

impl Method {
    /// Every method of this crate, in the order of the table.
    ///
    /// ```
    /// use shankline::source::{Method, Publisher};
    /// let codes = Method::all().iter().filter(|method| method.publisher == Publisher::Cen);
    /// assert!(codes.count() > 30);
    /// ```
    #[must_use]
    pub fn all() -> &'static [&'static Self] {
        &generated::methods::METHODS
    }

    /// The method of a key.
    ///
    /// ```
    /// use shankline::source::Method;
    /// assert!(Method::get("en-1993-1-8-2005-table-3.4-bearing").is_some());
    /// assert!(Method::get("no such key").is_none());
    /// ```
    #[must_use]
    pub fn get(key: &str) -> Option<&'static Self> {
        Self::all().iter().copied().find(|method| method.key == key)
    }
}

/// The rows of `tables/methods.csv` by their keys.
pub(crate) use generated::methods;
/// Grades and sizes of bolts whose strengths one document alone has.
pub(crate) use generated::only_witnesses::ONLY_WITNESSES;

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
pub(crate) fn rows_of<T, K: PartialEq>(
    rows: &'static [T],
    key: &K,
    key_of: impl Fn(&T) -> K,
) -> &'static [T] {
    let Some(start) = rows.iter().position(|row| key_of(row) == *key) else {
        return &[];
    };
    let rest = rows.get(start..).unwrap_or_default();
    let end = rest.iter().position(|row| key_of(row) != *key);
    end.and_then(|end| rest.get(..end)).unwrap_or(rest)
}

/// Which sizes a table has and which of them is nearest to the one wanted, for messages.
#[cold]
pub(crate) fn size_range<'a, T: 'a>(
    rows: impl IntoIterator<Item = &'a T>,
    wanted: Length,
    size_of: impl Fn(&T) -> (Length, &'static str),
) -> String {
    let sizes: Vec<(Length, &str)> = rows.into_iter().map(size_of).collect();
    let wanted = nanometres(wanted);
    let nearest = sizes
        .iter()
        .min_by_key(|(size, _)| nanometres(*size).abs_diff(wanted));
    match (sizes.first(), sizes.last(), nearest) {
        (Some((_, first)), Some((_, last)), Some((_, nearest))) => {
            format!("its sizes run from {first} to {last}, the nearest is {nearest}")
        }
        _ => "it has no rows".into(),
    }
}
