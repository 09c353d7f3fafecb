//! Factors of the formulas of Unified threads, and the printed limits that do not follow from them.

use super::super::generated;
use crate::names::UnifiedClass;
use crate::source::Provenance;
use crate::units::Length;

use generated::{
    unified_limit_exceptions::UNIFIED_LIMIT_EXCEPTIONS as EXCEPTIONS,
    unified_thread_classes::UNIFIED_THREAD_CLASSES as CLASSES,
};

/// What a class of Unified threads puts into the tolerance formulas.
///
/// Source: ASME B1.1, as reproduced in two places.
///
/// ```
/// use shankline::{tables::thread_tolerances::UnifiedClassRow, thread::UnifiedClass};
/// let row = UnifiedClassRow::of(UnifiedClass::Class1B);
/// assert_eq!((row.pitch_tolerance_factor, row.allowance_factor), (1.95, 0.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct UnifiedClassRow {
    /// The class.
    pub class: UnifiedClass,
    /// Tolerance of the pitch diameter over that of class 2A.
    pub pitch_tolerance_factor: f64,
    /// Allowance over the pitch diameter tolerance of class 2A.
    pub allowance_factor: f64,
    /// Tolerance of the major diameter, in inches, over P^(2/3), P in inches. External only.
    pub major_tolerance_factor: Option<f64>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl UnifiedClassRow {
    /// Every class, external before internal.
    ///
    /// ```
    /// assert_eq!(shankline::tables::thread_tolerances::UnifiedClassRow::all().len(), 6);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &CLASSES
    }

    /// The row of a class.
    ///
    /// ```
    /// use shankline::{tables::thread_tolerances::UnifiedClassRow, thread::UnifiedClass};
    /// let row = UnifiedClassRow::of(UnifiedClass::Class3A);
    /// assert_eq!(row.major_tolerance_factor, Some(0.060));
    /// ```
    #[must_use]
    pub fn of(class: UnifiedClass) -> &'static Self {
        // The table and the enum are in the same order, which a test holds.
        #[allow(clippy::indexing_slicing)]
        &CLASSES[class as usize]
    }
}

/// A Unified thread whose printed limits do not follow from the formulas.
///
/// Source: ASME B1.1 tables to 1989, as reproduced; newer editions may print the formula's values.
///
/// ```
/// use shankline::{prelude::*, tables::thread_tolerances::UnifiedLimitException};
/// # fn main() -> Result<(), shankline::Error> {
/// let exception = UnifiedLimitException::get(&"5/8-11 UNC".parse()?).unwrap();
/// assert_eq!(exception.allowance, Some(inches(0.0016)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct UnifiedLimitException {
    /// Name of the size.
    pub size: &'static str,
    /// Nominal diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Threads per inch.
    pub threads_per_inch: f64,
    /// The printed allowance of classes 1A and 2A.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub allowance: Option<Length>,
    /// The diameter the print put into the formula of the pitch diameter tolerance.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub tolerance_diameter: Option<Length>,
    /// What is odd.
    pub note: &'static str,
    /// Source of the row.
    pub provenance: Provenance,
}

impl UnifiedLimitException {
    /// Every exception.
    ///
    /// ```
    /// assert_eq!(shankline::tables::thread_tolerances::UnifiedLimitException::all().len(), 4);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &EXCEPTIONS
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn classes_stand_in_the_order_of_the_enum() {
        for row in UnifiedClassRow::all() {
            assert_eq!(UnifiedClassRow::of(row.class), row);
        }
    }
}
