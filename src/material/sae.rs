//! Strength of the grades of SAE J429.

use super::{BoltGrade, BoltStrength, SaeGrade, Sizes};
use crate::error::Error;
use crate::tables::grades::SaeGradeRow;
use crate::tables::nanometres;
use crate::units::Length;

impl SaeGrade {
    /// [`BoltGrade::strength`] of this grade.
    ///
    /// # Errors
    ///
    /// Those of [`BoltGrade::strength`].
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(SaeGrade::Grade8_2.strength(inches(1.125)).is_err());
    /// ```
    pub fn strength(self, diameter: Length) -> Result<BoltStrength, Error> {
        BoltGrade::Sae(self).strength(diameter)
    }

    /// [`BoltGrade::strength_at_length`] of this grade.
    ///
    /// # Errors
    ///
    /// Those of [`BoltGrade::strength_at_length`].
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let long = SaeGrade::Grade2.strength_at_length(inches(0.5), inches(8.0))?;
    /// assert_eq!(long.tensile_strength, ksi(60.0)); // grade 2 over 6 in is grade 1
    /// # Ok(())
    /// # }
    /// ```
    pub fn strength_at_length(
        self,
        diameter: Length,
        length: Length,
    ) -> Result<BoltStrength, Error> {
        BoltGrade::Sae(self).strength_at_length(diameter, length)
    }
}

/// The rows of a grade; of those that differ by length, the ones for the shorter screws if no length
/// is given.
pub(super) fn rows(
    grade: SaeGrade,
    diameter: Length,
    length: Option<Length>,
) -> impl Iterator<Item = (Sizes, BoltStrength)> + Clone {
    let length = length.map(nanometres);
    let is_for = move |row: &&SaeGradeRow| match length {
        None => row.length_over.is_none(),
        Some(length) => {
            row.length_over.is_none_or(|over| nanometres(over) < length)
                && row
                    .length_thru
                    .is_none_or(|thru| length <= nanometres(thru))
        }
    };
    SaeGradeRow::all()
        .iter()
        .filter(move |row| row.grade == grade)
        .filter(is_for)
        .map(move |row| {
            let sizes = Sizes {
                from: row.size_from,
                over: row.size_over,
                thru: Some(row.size_thru),
            };
            let strength = BoltStrength {
                proof_stress: Some(row.proof_stress),
                yield_strength: row.yield_strength,
                length_limit: row.length_thru,
                note: row.note,
                for_screws: row.for_bolts || row.for_screws,
                provenance: Some(row.provenance),
                ..BoltStrength::of(grade, diameter, row.tensile_strength)
            };
            (sizes, strength)
        })
}
