//! Endurance strengths of bolts, by the machine-design system.

use super::generated;
use crate::error::Error;
use crate::names::BoltGrade;
use crate::source::Provenance;
use crate::units::{Length, Stress};

/// Fully corrected endurance strength Se of a grade with rolled threads under repeated axial load, at
/// zero mean stress; the stress concentration of the thread is in it.
///
/// Source: Shigley, Mechanical Engineering Design, 9th ed., Table 8-17.
///
/// ```
/// use shankline::{prelude::*, tables::fatigue::EnduranceRow};
/// let row = EnduranceRow::find(PropertyClass::Class10_9.into(), millimetres(12.0)).unwrap();
/// assert_eq!(row.endurance_strength, megapascals(162.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct EnduranceRow {
    /// Grade.
    pub bolt: BoltGrade,
    /// Least nominal diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub size_from: Length,
    /// Greatest nominal diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub size_thru: Length,
    /// Endurance strength Se.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub endurance_strength: Stress,
    /// Source of the row.
    pub provenance: Provenance,
}

impl EnduranceRow {
    /// Inch grades.
    ///
    /// ```
    /// assert_eq!(shankline::tables::fatigue::EnduranceRow::all_inch().len(), 4);
    /// ```
    #[must_use]
    pub fn all_inch() -> &'static [Self] {
        &generated::endurance_strengths_inch::ENDURANCE_STRENGTHS_INCH
    }

    /// Metric classes.
    ///
    /// ```
    /// assert_eq!(shankline::tables::fatigue::EnduranceRow::all_metric().len(), 4);
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::endurance_strengths_metric::ENDURANCE_STRENGTHS_METRIC
    }

    /// The row of a grade at a nominal diameter.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for a grade or a size the table does not have.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::fatigue::EnduranceRow};
    /// // Between 1 and 1-1/8 in the table has no grade 5.
    /// assert!(EnduranceRow::find(SaeGrade::Grade5.into(), inches(1.0625)).is_err());
    /// ```
    pub fn find(grade: BoltGrade, diameter: Length) -> Result<&'static Self, Error> {
        use alloc::format;
        let slack = crate::units::SAME_LENGTH;
        Self::all_inch()
            .iter()
            .chain(Self::all_metric())
            .find(|row| {
                row.bolt == grade
                    && row.size_from <= diameter + slack
                    && diameter <= row.size_thru + slack
            })
            .ok_or_else(|| Error::NoValue {
                quantity: "endurance strength",
                subject: format!(
                    "{grade} at {}",
                    crate::error::Amount::from(diameter)
                ),
                reason: "Shigley's Table 8-17 has SAE grades 5, 7 and 8 from 1/4 to 1-1/2 in, classes 8.8 \
                         from M16 and 10.9 from M5 to M36, 9.8 from M1.6 to M16, 12.9 from M1.6 to M36",
            })
    }
}
