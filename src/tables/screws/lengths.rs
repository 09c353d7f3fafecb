//! Tolerances of screw lengths, and the lengths that are stocked.

use super::super::{generated, nanometres, rows_of};
use crate::source::Provenance;
use crate::units::Length;

/// Tolerance on the nominal length of ASME B18.2.1 screws and bolts. Hex cap screws, which have a
/// point, may only be shorter; hex bolts and heavy hex bolts also longer.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::screws::InchLengthTolerance;
/// let screws = InchLengthTolerance::cap_screws();
/// let row = InchLengthTolerance::get(screws, inches(0.75), inches(4.0)).unwrap();
/// assert_eq!(row.tolerance_minus, inches(0.10));
/// let bolts = InchLengthTolerance::hex_bolts();
/// let row = InchLengthTolerance::get(bolts, inches(0.5), inches(2.0)).unwrap();
/// assert_eq!((row.tolerance_plus, row.tolerance_minus), (inches(0.04), inches(0.06)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct InchLengthTolerance {
    /// Smallest nominal diameter, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub size_from: Length,
    /// Largest nominal diameter, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub size_thru: Option<Length>,
    /// Length the row begins above, itself excluded.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub length_over: Length,
    /// Greatest length, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub length_thru: Option<Length>,
    /// How much longer than nominal a screw may be.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tolerance_plus: Length,
    /// How much shorter than nominal a screw may be.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tolerance_minus: Length,
    /// Source of the row.
    pub provenance: Provenance,
}

impl InchLengthTolerance {
    /// Every row for hex cap screws.
    ///
    /// ```
    /// assert_eq!(shankline::tables::screws::InchLengthTolerance::cap_screws().len(), 27);
    /// ```
    #[must_use]
    pub fn cap_screws() -> &'static [Self] {
        &generated::hex_cap_screw_length_tolerances_inch::HEX_CAP_SCREW_LENGTH_TOLERANCES_INCH
    }

    /// Every row for hex bolts and heavy hex bolts.
    ///
    /// ```
    /// assert_eq!(shankline::tables::screws::InchLengthTolerance::hex_bolts().len(), 27);
    /// ```
    #[must_use]
    pub fn hex_bolts() -> &'static [Self] {
        &generated::hex_bolt_length_tolerances_inch::HEX_BOLT_LENGTH_TOLERANCES_INCH
    }

    /// The tolerance of a size and length, of the rows for one kind of product.
    ///
    /// ```
    /// use shankline::{tables::screws::InchLengthTolerance, units::inches};
    /// for rows in [InchLengthTolerance::cap_screws(), InchLengthTolerance::hex_bolts()] {
    ///     assert!(InchLengthTolerance::get(rows, inches(0.1), inches(1.0)).is_none());
    /// }
    /// ```
    #[must_use]
    pub fn get(rows: &'static [Self], diameter: Length, length: Length) -> Option<&'static Self> {
        Self::among(Self::of_size(rows, diameter), length)
    }

    /// The rows of one nominal diameter, by rising length.
    pub(crate) fn of_size(rows: &'static [Self], diameter: Length) -> &'static [Self] {
        let size = nanometres(diameter);
        let covers = |row: &Self| {
            nanometres(row.size_from) <= size
                && row.size_thru.is_none_or(|thru| size <= nanometres(thru))
        };
        rows_of(rows, &true, covers)
    }

    /// The row of those of one diameter that covers a length.
    pub(crate) fn among(rows: &'static [Self], length: Length) -> Option<&'static Self> {
        let length = nanometres(length);
        rows.iter().find(|row| {
            nanometres(row.length_over) < length
                && row
                    .length_thru
                    .is_none_or(|thru| length <= nanometres(thru))
        })
    }
}

/// Steps in which hex cap screws are stocked: common practice, no source.
///
/// ```
/// use shankline::{tables::screws::StockStep, units::inches};
/// assert_eq!(StockStep::all()[1].increment, inches(0.25));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct StockStep {
    /// Smallest nominal diameter, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub size_from: Length,
    /// Largest nominal diameter, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub size_thru: Length,
    /// Shortest length of this step.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub length_from: Length,
    /// Longest length of this step.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub length_thru: Length,
    /// Difference between neighbouring lengths.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub increment: Length,
    /// Restrictions.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl StockStep {
    /// Every row.
    ///
    /// ```
    /// assert_eq!(shankline::tables::screws::StockStep::all().len(), 3);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::hex_cap_screw_stock_lengths_inch::HEX_CAP_SCREW_STOCK_LENGTHS_INCH
    }
}

/// ISO tolerance grade of a length, the same amount either way.
///
/// ```
/// use shankline::tables::screws::{LengthTolerance, ToleranceGrade};
/// use shankline::units::millimetres;
/// let tolerance = |grade| LengthTolerance::get(grade, millimetres(60.0)).unwrap().tolerance;
/// assert!(tolerance(ToleranceGrade::Js15) < tolerance(ToleranceGrade::Js17));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum ToleranceGrade {
    /// js15: product grade A up to 150 mm.
    Js15,
    /// js17: product grade B, and A above 150 mm.
    Js17,
}

/// Tolerance on the nominal length of metric screws.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::screws::{LengthTolerance, ToleranceGrade};
/// let row = LengthTolerance::get(ToleranceGrade::Js15, millimetres(110.0)).unwrap();
/// assert_eq!(row.tolerance, millimetres(0.7));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LengthTolerance {
    /// Tolerance grade.
    pub tolerance_grade: ToleranceGrade,
    /// Length the row begins above, itself excluded.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub length_over: Length,
    /// Greatest length, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub length_thru: Length,
    /// Tolerance either way.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tolerance: Length,
    /// Source of the row.
    pub provenance: Provenance,
}

impl LengthTolerance {
    /// Every row.
    ///
    /// ```
    /// assert_eq!(shankline::tables::screws::LengthTolerance::all().len(), 26);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::length_tolerances_metric::LENGTH_TOLERANCES_METRIC
    }

    /// The tolerance of a grade at a length.
    ///
    /// ```
    /// use shankline::tables::screws::{LengthTolerance, ToleranceGrade};
    /// use shankline::units::millimetres;
    /// assert!(LengthTolerance::get(ToleranceGrade::Js15, millimetres(600.0)).is_none());
    /// ```
    #[must_use]
    pub fn get(grade: ToleranceGrade, length: Length) -> Option<&'static Self> {
        let length = nanometres(length);
        Self::all().iter().find(|row| {
            row.tolerance_grade == grade
                && nanometres(row.length_over) < length
                && length <= nanometres(row.length_thru)
        })
    }
}

/// A nominal length of ISO 888.
///
/// ```
/// use shankline::tables::screws::StockLength;
/// let fifty_five = StockLength::all().iter().find(|row| row.nominal_length.value == 0.055).unwrap();
/// assert!(fifty_five.hex_screws && !fifty_five.preferred);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct StockLength {
    /// The length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_length: Length,
    /// Whether ISO 888 prefers it.
    pub preferred: bool,
    /// Whether ISO 4014 and ISO 4017 list it.
    pub hex_screws: bool,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl StockLength {
    /// Every length, rising.
    ///
    /// ```
    /// assert_eq!(shankline::tables::screws::StockLength::all().len(), 53);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::stock_lengths_metric::STOCK_LENGTHS_METRIC
    }
}
