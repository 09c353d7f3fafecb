//! Unified (ASME B1.1) and ISO metric (ISO 261) threads: sizes, pitches, printed areas.

use core::{fmt, str::FromStr};

use super::generated::{
    threads_metric::THREADS_METRIC as METRIC, threads_unified::THREADS_UNIFIED as UNIFIED,
};
use super::nanometres;
use crate::error::Error;
use crate::names::{Key, Named, code_of, keys, label_of};
use crate::source::{Basis, Provenance};
use crate::units::{Area, Length, inches};

/// Series of Unified threads.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::threads::UnifiedThread;
/// let coarse = UnifiedThread::all().iter().filter(|row| row.series == UnifiedSeries::Unc);
/// assert_eq!(coarse.count(), 33);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum UnifiedSeries {
    /// Coarse.
    Unc,
    /// Fine.
    Unf,
    /// Extra fine.
    Unef,
    /// Constant pitch, 4 threads per inch.
    Un4,
    /// Constant pitch, 6 threads per inch.
    Un6,
    /// Constant pitch, 8 threads per inch.
    Un8,
    /// Constant pitch, 12 threads per inch.
    Un12,
    /// Constant pitch, 16 threads per inch.
    Un16,
    /// Constant pitch, 20 threads per inch.
    Un20,
    /// Constant pitch, 28 threads per inch.
    Un28,
    /// Constant pitch, 32 threads per inch.
    Un32,
}

impl UnifiedSeries {
    /// The symbol of the series in a designation: `UNC`, `UNF`, `UNEF`, and `UN` for every
    /// constant-pitch series.
    ///
    /// ```
    /// use shankline::tables::threads::UnifiedSeries;
    /// assert_eq!(UnifiedSeries::Un8.symbol(), "UN");
    /// ```
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Unc => "UNC",
            Self::Unf => "UNF",
            Self::Unef => "UNEF",
            _ => "UN",
        }
    }

    /// The name of the series: constant-pitch ones differ by their pitch.
    pub(crate) const fn name(self) -> &'static str {
        match self {
            Self::Un4 => "4-UN",
            Self::Un6 => "6-UN",
            Self::Un8 => "8-UN",
            Self::Un12 => "12-UN",
            Self::Un16 => "16-UN",
            Self::Un20 => "20-UN",
            Self::Un28 => "28-UN",
            Self::Un32 => "32-UN",
            _ => self.symbol(),
        }
    }
}

/// Code and label of every member.
const UNIFIED_NAMES: [Named<UnifiedSeries>; 11] = [
    (UnifiedSeries::Unc, "unc", "UNC"),
    (UnifiedSeries::Unf, "unf", "UNF"),
    (UnifiedSeries::Unef, "unef", "UNEF"),
    (UnifiedSeries::Un4, "un4", "4-UN"),
    (UnifiedSeries::Un6, "un6", "6-UN"),
    (UnifiedSeries::Un8, "un8", "8-UN"),
    (UnifiedSeries::Un12, "un12", "12-UN"),
    (UnifiedSeries::Un16, "un16", "16-UN"),
    (UnifiedSeries::Un20, "un20", "20-UN"),
    (UnifiedSeries::Un28, "un28", "28-UN"),
    (UnifiedSeries::Un32, "un32", "32-UN"),
];

impl Key for UnifiedSeries {
    const FAMILY: &'static str = "series of Unified threads";
    const ALL: &'static [Self] = &keys(&UNIFIED_NAMES);

    fn code(self) -> &'static str {
        code_of(&UNIFIED_NAMES, self)
    }

    fn label(self) -> &'static str {
        label_of(&UNIFIED_NAMES, self)
    }
}

impl FromStr for UnifiedSeries {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for UnifiedSeries {
    /// The label.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

/// Whether a standard prefers a size.
///
/// ```
/// use shankline::tables::threads::{SizeChoice, UnifiedThread};
/// assert_eq!(UnifiedThread::all()[0].choice, SizeChoice::Primary); // #0-80 UNF
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum SizeChoice {
    /// Preferred.
    Primary,
    /// Used where a primary size will not do.
    Secondary,
}

/// One Unified thread.
///
/// Source: ASME B1.1 series as printed in Machinery's Handbook; areas as printed there or, where
/// the basis is `Computed`, by the formula of [`thread::area`](crate::thread::area).
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::threads::{UnifiedSeries, UnifiedThread};
/// let row = UnifiedThread::get(inches(0.375), UnifiedSeries::Unc).unwrap();
/// assert_eq!((row.size, row.threads_per_inch), ("3/8", 16.0));
/// assert_eq!(row.tensile_stress_area, square_inches(0.0775));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct UnifiedThread {
    /// Name of the size: `#10`, `3/8`, `1-1/2`.
    pub size: &'static str,
    /// Basic major diameter D.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Threads per inch n; the pitch is P = 1/n in.
    pub threads_per_inch: f64,
    /// Series.
    pub series: UnifiedSeries,
    /// Printed tensile stress area.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile_stress_area: Area,
    /// Printed area at the minor diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub minor_area: Area,
    /// Whether the size is preferred.
    pub choice: SizeChoice,
    /// The constant-pitch series this coarse, fine or extra-fine thread also belongs to.
    pub constant_pitch_series: Option<UnifiedSeries>,
    /// How the minor area is known, where it differs from the rest of the row.
    pub minor_area_basis: Basis,
    /// Source of the row.
    pub provenance: Provenance,
}

impl UnifiedThread {
    /// Every Unified thread, by rising diameter, then by falling pitch.
    ///
    /// ```
    /// assert_eq!(shankline::tables::threads::UnifiedThread::all().len(), 281);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &UNIFIED
    }

    /// Every thread of one nominal diameter; empty if there is none.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::threads::UnifiedThread;
    /// let pitches = UnifiedThread::of_diameter(inches(0.5)).iter().map(|row| row.threads_per_inch);
    /// assert!(pitches.eq([13.0, 16.0, 20.0, 28.0, 32.0]));
    /// ```
    #[must_use]
    #[inline]
    pub fn of_diameter(diameter: Length) -> &'static [Self] {
        of_diameter(&UNIFIED, &UNIFIED_DIAMETERS, diameter)
    }

    /// The thread of a diameter and series, if the series has that diameter.
    ///
    /// A coarse, fine or extra-fine thread is also found under the constant-pitch series it
    /// belongs to.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::threads::{UnifiedSeries, UnifiedThread};
    /// assert!(UnifiedThread::get(inches(2.0), UnifiedSeries::Unf).is_none());
    /// ```
    #[must_use]
    #[inline]
    pub fn get(diameter: Length, series: UnifiedSeries) -> Option<&'static Self> {
        Self::of_diameter(diameter)
            .iter()
            .find(|row| row.series == series || row.constant_pitch_series == Some(series))
    }

    /// Pitch P = 1/n.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::threads::{UnifiedSeries, UnifiedThread};
    /// let row = UnifiedThread::get(inches(0.75), UnifiedSeries::Unc).unwrap();
    /// assert_eq!(row.pitch(), inches(0.1));
    /// ```
    #[must_use]
    pub fn pitch(&self) -> Length {
        inches(1.0 / self.threads_per_inch)
    }
}

/// Series of ISO metric threads.
///
/// ```
/// use shankline::tables::threads::{MetricSeries, MetricThread};
/// let coarse = MetricThread::all().iter().filter(|row| row.series == MetricSeries::Coarse);
/// assert_eq!(coarse.count(), 40);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum MetricSeries {
    /// The coarse pitch, which a designation need not write.
    Coarse,
    /// Any finer pitch, which a designation must write.
    Fine,
}

/// Code and label of every member.
const METRIC_NAMES: [Named<MetricSeries>; 2] = [
    (MetricSeries::Coarse, "coarse", "metric coarse"),
    (MetricSeries::Fine, "fine", "metric fine"),
];

impl Key for MetricSeries {
    const FAMILY: &'static str = "series of metric threads";
    const ALL: &'static [Self] = &keys(&METRIC_NAMES);

    fn code(self) -> &'static str {
        code_of(&METRIC_NAMES, self)
    }

    fn label(self) -> &'static str {
        label_of(&METRIC_NAMES, self)
    }
}

impl FromStr for MetricSeries {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for MetricSeries {
    /// The label.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

/// One ISO metric thread.
///
/// Source: diameters and pitches of ISO 261; stress areas as printed in ISO 898-1 and GB/T 16823.1
/// reproductions or, where the basis is `Computed`, by the formula of
/// [`thread::area`](crate::thread::area).
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::threads::MetricThread;
/// let row = MetricThread::coarse(millimetres(20.0)).unwrap();
/// assert_eq!(row.pitch, millimetres(2.5));
/// assert_eq!(row.tensile_stress_area, square_millimetres(245.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct MetricThread {
    /// Basic major diameter d.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Pitch P.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch: Length,
    /// Coarse or fine.
    pub series: MetricSeries,
    /// First, second or third choice of diameter in ISO 261.
    pub iso261_choice: u8,
    /// Whether ISO 262 selects it for bolts, screws and nuts.
    pub iso262_selected: bool,
    /// Printed nominal stress area.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile_stress_area: Area,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl MetricThread {
    /// Every metric thread, by rising diameter, then by falling pitch.
    ///
    /// ```
    /// assert_eq!(shankline::tables::threads::MetricThread::all().len(), 213);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &METRIC
    }

    /// Every thread of one nominal diameter; empty if there is none.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::threads::MetricThread;
    /// assert_eq!(MetricThread::of_diameter(millimetres(12.0)).len(), 4);
    /// ```
    #[must_use]
    #[inline]
    pub fn of_diameter(diameter: Length) -> &'static [Self] {
        of_diameter(&METRIC, &METRIC_DIAMETERS, diameter)
    }

    /// The coarse thread of a diameter. ISO 261 has none above 68 mm.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::threads::MetricThread;
    /// assert!(MetricThread::coarse(millimetres(72.0)).is_none());
    /// ```
    #[must_use]
    pub fn coarse(diameter: Length) -> Option<&'static Self> {
        Self::of_diameter(diameter)
            .iter()
            .find(|row| row.series == MetricSeries::Coarse)
    }

    /// The thread of a diameter and pitch.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::threads::MetricThread;
    /// assert!(MetricThread::get(millimetres(12.0), millimetres(1.25)).is_some());
    /// ```
    #[must_use]
    #[inline]
    pub fn get(diameter: Length, pitch: Length) -> Option<&'static Self> {
        let pitch = nanometres(pitch);
        Self::of_diameter(diameter)
            .iter()
            .find(|row| nanometres(row.pitch) == pitch)
    }
}

/// The nominal diameters of a table in a dense array of its own: a search through it stays within
/// a few cache lines, which one through the rows would not.
macro_rules! diameters {
    ($rows:expr) => {{
        let rows = &$rows;
        let mut keys = [0; $rows.len()];
        let mut index = 0;
        while index < keys.len() {
            keys[index] = nanometres(rows[index].nominal_diameter);
            index += 1;
        }
        keys
    }};
}

// Filled when the library is built.
#[allow(clippy::indexing_slicing)]
static UNIFIED_DIAMETERS: [i64; UNIFIED.len()] = diameters!(UNIFIED);
#[allow(clippy::indexing_slicing)]
static METRIC_DIAMETERS: [i64; METRIC.len()] = diameters!(METRIC);

#[inline]
fn of_diameter<T>(rows: &'static [T], diameters: &[i64], diameter: Length) -> &'static [T] {
    let size = nanometres(diameter);
    let start = diameters.partition_point(|known| *known < size);
    let count = diameters
        .iter()
        .skip(start)
        .take_while(|known| **known == size)
        .count();
    rows.get(start..start + count).unwrap_or_default()
}
