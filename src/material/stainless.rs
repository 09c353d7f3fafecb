//! Strength of the property classes of stainless steel bolts and screws.

use super::{BoltGrade, BoltStrength, Sizes, StainlessClass};
use crate::error::Error;
use crate::tables::grades::StainlessClassRow;
use crate::units::Length;

impl StainlessClass {
    /// [`BoltGrade::strength`] of this class.
    ///
    /// # Errors
    ///
    /// Those of [`BoltGrade::strength`].
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(StainlessClass::F1_45.strength(millimetres(24.0)).is_ok());
    /// assert!(StainlessClass::F1_45.strength(millimetres(27.0)).is_err());
    /// ```
    pub fn strength(self, diameter: Length) -> Result<BoltStrength, Error> {
        BoltGrade::Stainless(self).strength(diameter)
    }
}

pub(super) fn rows(
    class: StainlessClass,
    diameter: Length,
) -> impl Iterator<Item = (Sizes, BoltStrength)> + Clone {
    StainlessClassRow::all()
        .iter()
        .filter(move |row| row.class == class)
        .map(move |row| {
            let sizes = Sizes {
                from: row.size_from,
                over: row.size_over,
                thru: Some(row.size_thru),
            };
            let strength = BoltStrength {
                yield_strength: Some(row.yield_strength),
                note: row.note,
                provenance: Some(row.provenance),
                ..BoltStrength::of(class, diameter, row.tensile_strength)
            };
            (sizes, strength)
        })
}

#[cfg(test)]
mod tests {
    use alloc::string::ToString;

    use super::*;
    use crate::units::{megapascals, millimetres};

    #[test]
    fn sizes_over_m24_are_as_strong_and_known() {
        for class in [
            StainlessClass::A1_70,
            StainlessClass::A4_70,
            StainlessClass::A5_80,
        ] {
            let of = |size| class.strength(millimetres(size)).unwrap();
            // Above M24 one page alone has A1 and A5, a second one A4-70.
            let one_page = usize::from(class != StainlessClass::A4_70);
            assert_eq!(of(24.1).cautions().iter().count(), one_page, "{class}");
            assert_eq!(of(39.0).cautions().iter().count(), one_page, "{class}");
            assert_eq!(of(24.0).tensile_strength, of(39.0).tensile_strength);
            let error = class.strength(millimetres(42.0)).unwrap_err().to_string();
            assert!(
                error.contains("from 1.600 mm") && error.contains("to 39.000 mm"),
                "{error}"
            );
        }
        let a2 = StainlessClass::A2_70.strength(millimetres(30.0)).unwrap();
        assert_eq!(a2.yield_strength, Some(megapascals(450.0)));
        assert_eq!(a2.cautions().iter().count(), 0);
    }
}
