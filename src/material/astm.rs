//! Strength of the bolt grades of ASTM standards.

use super::{AstmGrade, BoltGrade, BoltStrength, Sizes};
use crate::error::Error;
use crate::tables::grades::AstmGradeRow;
use crate::units::Length;

impl AstmGrade {
    /// [`BoltGrade::strength`] of this grade.
    ///
    /// # Errors
    ///
    /// Those of [`BoltGrade::strength`].
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let b7 = AstmGrade::A193B7.strength(inches(2.75))?;
    /// assert_eq!(b7.yield_strength, Some(ksi(95.0))); // over 2-1/2 through 4 in
    /// assert_eq!(
    ///     AstmGrade::F593Group1Cw2.strength(inches(0.5)).unwrap_err().to_string(),
    ///     "nominal diameter for ASTM F593 group 1 CW2 is 12.700 mm (0.5000 in); \
    ///      it must be over 15.875 mm (0.6250 in) and up to 38.100 mm (1.5000 in)",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn strength(self, diameter: Length) -> Result<BoltStrength, Error> {
        BoltGrade::Astm(self).strength(diameter)
    }
}

pub(super) fn rows(
    grade: AstmGrade,
    diameter: Length,
) -> impl Iterator<Item = (Sizes, BoltStrength)> + Clone {
    AstmGradeRow::all_inch()
        .iter()
        .chain(AstmGradeRow::all_metric())
        .filter(move |row| row.grade == grade)
        .map(move |row| {
            let sizes = Sizes {
                from: row.size_from,
                over: row.size_over,
                thru: row.size_thru,
            };
            let strength = BoltStrength {
                proof_stress: row.proof_stress,
                proof_basis: row.proof_basis,
                yield_strength: row.yield_strength,
                note: row.note,
                for_screws: row.for_hex_screws,
                provenance: Some(row.provenance),
                ..BoltStrength::of(grade, diameter, row.tensile_strength)
            };
            (sizes, strength)
        })
}
