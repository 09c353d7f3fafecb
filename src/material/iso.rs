//! Strength of the property classes of ISO 898-1.

use super::{BoltGrade, BoltStrength, PropertyClass, Sizes};
use crate::error::Error;
use crate::tables::grades::PropertyClassRow;
use crate::units::Length;

impl PropertyClass {
    /// [`BoltGrade::strength`] of this class.
    ///
    /// # Errors
    ///
    /// Those of [`BoltGrade::strength`].
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let m16 = PropertyClass::Class8_8.strength(millimetres(16.0))?;
    /// assert_eq!(m16.tensile_strength, megapascals(800.0)); // 830 MPa begins above 16 mm
    /// # Ok(())
    /// # }
    /// ```
    pub fn strength(self, diameter: Length) -> Result<BoltStrength, Error> {
        BoltGrade::Iso(self).strength(diameter)
    }
}

pub(super) fn rows(
    class: PropertyClass,
    diameter: Length,
) -> impl Iterator<Item = (Sizes, BoltStrength)> + Clone {
    PropertyClassRow::all()
        .iter()
        .filter(move |row| row.class == class)
        .map(move |row| {
            let sizes = Sizes {
                from: row.size_from,
                over: row.size_over,
                thru: Some(row.size_thru),
            };
            let strength = BoltStrength {
                proof_stress: Some(row.proof_stress),
                yield_strength: Some(row.yield_strength),
                note: row.note,
                provenance: Some(row.provenance),
                ..BoltStrength::of(class, diameter, row.tensile_strength)
            };
            (sizes, strength)
        })
}
