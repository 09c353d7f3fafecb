//! The holes that a bolt goes through.

use crate::error::Error;
use crate::names::AiscEdition;
use crate::tables::holes::{ClearanceHole, HoleEditions, HoleFit, StructuralHole};
use crate::tables::nanometres;
use crate::thread::{Thread, rows::no_row};

impl ClearanceHole {
    /// The clearance hole for a bolt: ASME B18.2.8 for an inch thread, ISO 273 for a metric one, and BS 4186
    /// for M7, which ISO 273 does not have.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if the standard has no hole of that fit for the size; the message gives
    /// the sizes it has.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::holes::{ClearanceHole, HoleFit}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let hole = ClearanceHole::find(&"M16".parse()?, HoleFit::Normal)?;
    /// assert_eq!(hole.diameter_min, millimetres(17.5)); // BS 4186 says 18
    /// let error = ClearanceHole::find(&"2-4.5 UNC".parse()?, HoleFit::Normal).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "2-4.5 UNC is not in the table of clearance holes of that fit; its sizes run from #0 to 1-1/2, the nearest is 1-1/2",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(thread: &Thread, fit: HoleFit) -> Result<&'static Self, Error> {
        let size = nanometres(thread.nominal_diameter());
        let rows = if thread.is_unified() {
            Self::all_inch()
        } else {
            // ISO 273 stands first, so BS 4186 adds only the sizes ISO does not have: M7.
            Self::all_metric()
        };
        let of_fit = rows.iter().filter(|hole| hole.fit == fit);
        of_fit
            .clone()
            .find(|hole| nanometres(hole.nominal_diameter) == size)
            .ok_or_else(|| {
                let table = "the table of clearance holes of that fit";
                no_row(table, thread, of_fit, |hole| {
                    (hole.nominal_diameter, hole.size)
                })
            })
    }
}

impl StructuralHole {
    /// The holes for a bolt in an edition of AISC 360. Metric holes were read in the 2005 edition
    /// only and are given for all.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if there is no such row; the message gives the sizes.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::holes::StructuralHole};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let hole = StructuralHole::find(&"M20".parse()?, AiscEdition::E2005)?;
    /// assert_eq!(hole.standard, millimetres(22.0));
    /// assert!(StructuralHole::find(&"M12".parse()?, AiscEdition::E2005).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(thread: &Thread, edition: AiscEdition) -> Result<&'static Self, Error> {
        let size = nanometres(thread.nominal_diameter());
        let wanted = match edition {
            AiscEdition::E2005 | AiscEdition::E2010 => HoleEditions::To2010,
            AiscEdition::E2016 | AiscEdition::E2022 => HoleEditions::From2016,
        };
        let rows = if thread.is_unified() {
            Self::all_inch()
        } else {
            Self::all_metric()
        };
        let of_edition = rows.iter().filter(|hole| {
            hole.editions
                .is_none_or(|editions| editions == HoleEditions::All || editions == wanted)
        });
        of_edition
            .clone()
            .find(|hole| nanometres(hole.nominal_diameter) == size)
            .ok_or_else(|| {
                no_row("AISC 360 Table J3.3", thread, of_edition, |hole| {
                    (hole.nominal_diameter, hole.size)
                })
            })
    }
}

#[cfg(test)]
mod tests {
    use alloc::string::ToString;

    use super::*;

    /// #1 has a loose hole only: the nearest size with a normal one is another size.
    #[test]
    fn the_nearest_size_is_one_that_has_the_fit() {
        let thread = "#1-64 UNC".parse().unwrap();
        assert!(ClearanceHole::find(&thread, HoleFit::Loose).is_ok());
        let error = ClearanceHole::find(&thread, HoleFit::Normal).unwrap_err();
        let message = error.to_string();
        assert!(message.ends_with("the nearest is #0"), "{message}");
    }
}
