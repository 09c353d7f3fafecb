//! Tolerances of threads: factors of the Unified formulas, ISO 965-1 tables of metric threads.
//!
//! [`Thread::limits`](crate::thread::Thread::limits) makes limits of size from these rows.
//!
//! Two in five of the metric values were read in reproductions of the tables or follow from limits
//! printed elsewhere, most of the common classes among them; nearly all others follow from the formulas
//! of ISO 965-1, clause 13, rounded to preferred numbers R40 (`Basis::Computed`). No value read
//! contradicts the tables.

use alloc::{format, string::String, vec::Vec};

use super::{generated, nanometres};
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::math::round;
use crate::source::Provenance;
use crate::units::Length;

use generated::{
    metric_crest_tolerances::METRIC_CREST_TOLERANCES as CREST,
    metric_engagement_lengths::METRIC_ENGAGEMENT_LENGTHS as ENGAGEMENT,
    metric_pitch_diameter_tolerances::METRIC_PITCH_DIAMETER_TOLERANCES as PITCH,
    metric_thread_deviations::METRIC_THREAD_DEVIATIONS as DEVIATIONS,
};

mod unified;

pub use unified::{UnifiedClassRow, UnifiedLimitException};

/// Of a bolt or of a nut.
///
/// ```
/// use shankline::{thread::ToleranceClass, tables::thread_tolerances::ThreadKind};
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!(ThreadKind::of("6H".parse::<ToleranceClass>()?), ThreadKind::Internal);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum ThreadKind {
    /// Of bolts and screws.
    External,
    /// Of nuts and tapped holes.
    Internal,
}

impl ThreadKind {
    const fn name(self) -> &'static str {
        match self {
            Self::External => "external",
            Self::Internal => "internal",
        }
    }
}

/// Fundamental deviation of one tolerance position at one pitch: es of e, f, g; EI of G. Those of h
/// and H are zero.
///
/// Source: ISO 965-1:1998, Table 1.
///
/// ```
/// use shankline::{prelude::*, tables::thread_tolerances::MetricDeviation, units::micrometres};
/// # fn main() -> Result<(), shankline::Error> {
/// let row = MetricDeviation::find('g', millimetres(1.5))?;
/// assert_eq!(row.deviation, micrometres(-32.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct MetricDeviation {
    /// Tolerance position: e, f, g or G.
    pub position: &'static str,
    /// Pitch.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch: Length,
    /// Deviation from the basic diameter: negative for bolts, positive for nuts.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub deviation: Length,
    /// Source of the row.
    pub provenance: Provenance,
}

impl MetricDeviation {
    /// Every deviation, by position, then by rising pitch.
    ///
    /// ```
    /// assert_eq!(shankline::tables::thread_tolerances::MetricDeviation::all().len(), 91);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &DEVIATIONS
    }

    /// The deviation of a position at a pitch.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if the standard has none; the message gives the pitches that have one.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::thread_tolerances::MetricDeviation};
    /// assert_eq!(
    ///     MetricDeviation::find('e', millimetres(0.35)).unwrap_err().to_string(),
    ///     "position e at a pitch of 0.35 mm is not in the table of fundamental deviations; \
    ///      that position has pitches 0.5 to 8 mm",
    /// );
    /// ```
    pub fn find(position: char, pitch: Length) -> Result<&'static Self, Error> {
        let size = nanometres(pitch);
        let mut rows = DEVIATIONS
            .iter()
            .filter(|row| row.position.starts_with(position));
        rows.clone()
            .find(|row| nanometres(row.pitch) == size)
            .ok_or_else(|| Error::NotInTable {
                table: "the table of fundamental deviations",
                wanted: format!("position {position} at a pitch of {} mm", mm(pitch)),
                available: match (rows.clone().next(), rows.next_back()) {
                    (Some(first), Some(last)) => {
                        let (first, last) = (mm(first.pitch), mm(last.pitch));
                        format!("that position has pitches {first} to {last} mm")
                    }
                    _ => "its positions are e, f, g and G; h and H have none".into(),
                },
            })
    }
}

/// Tolerance of the crest diameter: Td of the major diameter of bolts, TD1 of the minor diameter of
/// nuts.
///
/// Source: ISO 965-1:1998, Tables 3 and 4.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::{tables::thread_tolerances::{CrestTolerance, ThreadKind}, units::micrometres};
/// # fn main() -> Result<(), shankline::Error> {
/// let row = CrestTolerance::find(ThreadKind::External, millimetres(1.5), 6)?;
/// assert_eq!(row.tolerance, micrometres(236.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CrestTolerance {
    /// Of a bolt or a nut.
    pub kind: ThreadKind,
    /// Pitch.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch: Length,
    /// Tolerance grade: 4, 6, 8 of bolts, 4 to 8 of nuts.
    pub grade: u8,
    /// Tolerance.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tolerance: Length,
    /// Source of the row.
    pub provenance: Provenance,
}

impl CrestTolerance {
    /// Every tolerance, by kind, pitch and grade.
    ///
    /// ```
    /// assert_eq!(shankline::tables::thread_tolerances::CrestTolerance::all().len(), 171);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &CREST
    }

    /// The tolerance of a grade at a pitch.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if the standard has none; the message gives the grades that pitch has.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::thread_tolerances::{CrestTolerance, ThreadKind}};
    /// let error = CrestTolerance::find(ThreadKind::External, millimetres(1.5), 5).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "grade 5 of external threads of pitch 1.5 mm is not in the table of crest diameter \
    ///      tolerances; that pitch has grades 4, 6, 8",
    /// );
    /// ```
    pub fn find(kind: ThreadKind, pitch: Length, grade: u8) -> Result<&'static Self, Error> {
        let size = nanometres(pitch);
        let rows = CREST
            .iter()
            .filter(|row| row.kind == kind && nanometres(row.pitch) == size);
        rows.clone()
            .find(|row| row.grade == grade)
            .ok_or_else(|| Error::NotInTable {
                table: "the table of crest diameter tolerances",
                wanted: format!(
                    "grade {grade} of {} threads of pitch {} mm",
                    kind.name(),
                    mm(pitch)
                ),
                available: format!("that pitch has {}", grades(rows.map(|row| row.grade))),
            })
    }
}

/// Tolerance of the pitch diameter: Td2 of bolts, TD2 of nuts.
///
/// Source: ISO 965-1:1998, Tables 5 and 6.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::{tables::thread_tolerances::{PitchDiameterTolerance, ThreadKind}, units::micrometres};
/// # fn main() -> Result<(), shankline::Error> {
/// let (diameter, pitch) = (millimetres(12.0), millimetres(1.75));
/// let row = PitchDiameterTolerance::find(ThreadKind::Internal, diameter, pitch, 6)?;
/// assert_eq!(row.tolerance, micrometres(200.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PitchDiameterTolerance {
    /// Of a bolt or a nut.
    pub kind: ThreadKind,
    /// Nominal diameters over this,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter_over: Length,
    /// up to and including this.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter_thru: Length,
    /// Pitch.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch: Length,
    /// Tolerance grade: 3 to 9 of bolts, 4 to 8 of nuts.
    pub grade: u8,
    /// Tolerance.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tolerance: Length,
    /// Source of the row.
    pub provenance: Provenance,
}

impl PitchDiameterTolerance {
    /// Every tolerance, by kind, diameter, pitch and grade.
    ///
    /// ```
    /// assert_eq!(shankline::tables::thread_tolerances::PitchDiameterTolerance::all().len(), 441);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &PITCH
    }

    /// The tolerance of a grade for a nominal diameter and pitch.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if the standard has none; the message gives the grades, or the pitches,
    /// that there are.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::thread_tolerances::{PitchDiameterTolerance, ThreadKind}};
    /// let find = |grade| {
    ///     PitchDiameterTolerance::find(ThreadKind::External, millimetres(3.0), millimetres(0.5), grade)
    /// };
    /// assert!(find(6).is_ok());
    /// assert_eq!(
    ///     find(9).unwrap_err().to_string(),
    ///     "grade 9 of external threads 3x0.5 mm is not in the table of pitch diameter tolerances; \
    ///      that thread has grades 3, 4, 5, 6, 7",
    /// );
    /// ```
    pub fn find(
        kind: ThreadKind,
        diameter: Length,
        pitch: Length,
        grade: u8,
    ) -> Result<&'static Self, Error> {
        let size = nanometres(pitch);
        let in_range = range_of(&PITCH, kind, diameter, |row| {
            (row.kind, row.diameter_over, row.diameter_thru)
        });
        let of_pitch = in_range.iter().filter(|row| nanometres(row.pitch) == size);
        of_pitch
            .clone()
            .find(|row| row.grade == grade)
            .ok_or_else(|| Error::NotInTable {
                table: "the table of pitch diameter tolerances",
                wanted: format!(
                    "grade {grade} of {} threads {}x{} mm",
                    kind.name(),
                    mm(diameter),
                    mm(pitch)
                ),
                available: if of_pitch.clone().next().is_some() {
                    format!("that thread has {}", grades(of_pitch.map(|row| row.grade)))
                } else {
                    pitches(in_range.iter().map(|row| row.pitch))
                },
            })
    }
}

/// Group of lengths of engagement.
///
/// ```
/// use shankline::{prelude::*, tables::thread_tolerances::EngagementGroup};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M12".parse()?;
/// assert_eq!(thread.engagement_group(millimetres(10.0))?, EngagementGroup::Normal);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum EngagementGroup {
    /// S, short.
    Short,
    /// N, normal; a designation without letter means it.
    Normal,
    /// L, long.
    Long,
}

/// Normal length of engagement of metric threads, group N.
///
/// Source: ISO 965-1:1998, Table 2.
///
/// ```
/// use shankline::{prelude::*, tables::thread_tolerances::EngagementLength};
/// # fn main() -> Result<(), shankline::Error> {
/// let row = EngagementLength::find(millimetres(12.0), millimetres(1.75))?;
/// assert_eq!((row.normal_over, row.normal_thru), (millimetres(6.0), millimetres(18.0)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct EngagementLength {
    /// Nominal diameters over this,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter_over: Length,
    /// up to and including this.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter_thru: Length,
    /// Pitch.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch: Length,
    /// Longer than this is normal; this and less is short.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub normal_over: Length,
    /// Up to this is normal; longer is long.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub normal_thru: Length,
    /// Source of the row.
    pub provenance: Provenance,
}

impl EngagementLength {
    /// Every row, by diameter and pitch.
    ///
    /// ```
    /// assert_eq!(shankline::tables::thread_tolerances::EngagementLength::all().len(), 43);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &ENGAGEMENT
    }

    /// The row for a nominal diameter and pitch.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if the standard has none; the message gives the pitches there are.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::thread_tolerances::EngagementLength};
    /// let error = EngagementLength::find(millimetres(12.0), millimetres(0.5)).unwrap_err();
    /// assert!(error.to_string().contains("that range of diameters has pitches 1, 1.25, 1.5"));
    /// ```
    pub fn find(diameter: Length, pitch: Length) -> Result<&'static Self, Error> {
        let size = nanometres(pitch);
        let in_range = range_of(&ENGAGEMENT, (), diameter, |row| {
            ((), row.diameter_over, row.diameter_thru)
        });
        in_range
            .iter()
            .find(|row| nanometres(row.pitch) == size)
            .ok_or_else(|| Error::NotInTable {
                table: "the table of lengths of engagement",
                wanted: format!("{}x{} mm", mm(diameter), mm(pitch)),
                available: pitches(in_range.iter().map(|row| row.pitch)),
            })
    }

    /// The group a length of engagement belongs to.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::thread_tolerances::{EngagementGroup, EngagementLength}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let row = EngagementLength::find(millimetres(12.0), millimetres(1.75))?;
    /// assert_eq!(row.group(millimetres(6.0)), EngagementGroup::Short);
    /// assert_eq!(row.group(millimetres(19.0)), EngagementGroup::Long);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn group(&self, length: Length) -> EngagementGroup {
        if nanometres(length) <= nanometres(self.normal_over) {
            EngagementGroup::Short
        } else if nanometres(length) <= nanometres(self.normal_thru) {
            EngagementGroup::Normal
        } else {
            EngagementGroup::Long
        }
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::thread_tolerances::EngagementLength};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let row = EngagementLength::find(millimetres(1.0), millimetres(0.2))?;
    /// assert_eq!(row.cautions().iter().count(), 1);
    /// assert_eq!(EngagementLength::find(millimetres(20.0), millimetres(2.5))?.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory(
            "range of lengths of engagement",
            self.provenance,
        ))
    }
}

/// The rows of one key whose range of diameters holds a diameter, in a table sorted by both.
fn range_of<T, K: Ord + Copy>(
    rows: &'static [T],
    key: K,
    diameter: Length,
    of: impl Fn(&T) -> (K, Length, Length),
) -> &'static [T] {
    let size = nanometres(diameter);
    let start = rows.partition_point(|row| {
        let (row_key, _, thru) = of(row);
        (row_key, nanometres(thru)) < (key, size)
    });
    let rest = rows.get(start..).unwrap_or_default();
    let end = rest.partition_point(|row| {
        let (row_key, over, _) = of(row);
        row_key == key && nanometres(over) < size
    });
    rest.get(..end).unwrap_or_default()
}

/// A length in millimetres for a message, without the noise of the conversion.
fn mm(length: Length) -> f64 {
    round(length.value * 1e6) / 1e3
}

#[cold]
fn grades(found: impl Iterator<Item = u8>) -> String {
    let list: Vec<String> = found.map(|grade| format!("{grade}")).collect();
    if list.is_empty() {
        "no grades".into()
    } else {
        format!("grades {}", list.join(", "))
    }
}

#[cold]
fn pitches(found: impl Iterator<Item = Length>) -> String {
    let mut list: Vec<String> = found.map(|pitch| format!("{}", mm(pitch))).collect();
    list.dedup();
    if list.is_empty() {
        "its diameters run from over 0.99 to 180 mm".into()
    } else {
        format!("that range of diameters has pitches {} mm", list.join(", "))
    }
}
