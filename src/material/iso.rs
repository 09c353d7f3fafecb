//! Property classes of ISO 898-1.

use core::fmt;

use super::names::name_of;
use super::{BoltGrade, BoltStrength, Sizes};
use crate::error::Error;
use crate::tables::grades::PropertyClassRow;
use crate::units::Length;

/// Property classes of ISO 898-1.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!(PropertyClass::Class10_9.strength(millimetres(12.0))?.proof_stress, Some(megapascals(830.0)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[non_exhaustive]
pub enum PropertyClass {
    /// Class 3.6, dropped from the 2009 edition.
    Class3_6,
    /// Class 4.6.
    Class4_6,
    /// Class 4.8.
    Class4_8,
    /// Class 5.6.
    Class5_6,
    /// Class 5.8.
    Class5_8,
    /// Class 6.8.
    Class6_8,
    /// Class 8.8.
    Class8_8,
    /// Class 9.8, up to 16 mm.
    Class9_8,
    /// Class 10.9.
    Class10_9,
    /// Class 12.9.
    Class12_9,
    /// Class 12.9 with the underlined marking: leaner steel, lower tempering temperature.
    Class12_9Underlined,
}

/// The numbers as the standard writes them.
pub(super) const NAMES: [(PropertyClass, &str); 11] = [
    (PropertyClass::Class3_6, "3.6"),
    (PropertyClass::Class4_6, "4.6"),
    (PropertyClass::Class4_8, "4.8"),
    (PropertyClass::Class5_6, "5.6"),
    (PropertyClass::Class5_8, "5.8"),
    (PropertyClass::Class6_8, "6.8"),
    (PropertyClass::Class8_8, "8.8"),
    (PropertyClass::Class9_8, "9.8"),
    (PropertyClass::Class10_9, "10.9"),
    (PropertyClass::Class12_9, "12.9"),
    (PropertyClass::Class12_9Underlined, "12.9 underlined"),
];

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

impl fmt::Display for PropertyClass {
    /// The number alone: `8.8`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(name_of(&NAMES, *self))
    }
}
