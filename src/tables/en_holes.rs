//! Nominal clearances of holes for bolts by EN 1090-2, Table 11.

use super::{generated, nanometres};
use crate::caution::{Caution, Cautions};
use crate::error::{Amount, Error, sane_length};
use crate::source::Provenance;
use crate::units::Length;
use alloc::format;

/// How much larger than the bolt a hole of each kind is, for a range of sizes.
///
/// ```
/// use shankline::{prelude::*, tables::en_holes::EnHole};
/// # fn main() -> Result<(), shankline::Error> {
/// let row = EnHole::at(millimetres(24.0))?;
/// assert_eq!((row.normal_clearance, row.oversize_clearance), (millimetres(2.0), millimetres(6.0)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct EnHole {
    /// Least nominal diameter of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter_from: Length,
    /// Greatest nominal diameter of the bolt; none: no limit.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub diameter_thru: Option<Length>,
    /// Clearance of a normal round hole, and of the width of a slot.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub normal_clearance: Length,
    /// Clearance of an oversize round hole.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub oversize_clearance: Length,
    /// Clearance of a short slot over its length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub short_slot_clearance: Length,
    /// Clearance of a long slot over its length, in bolt diameters.
    pub long_slot_clearance_ratio: f64,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl EnHole {
    /// Every row, by rising diameter.
    ///
    /// ```
    /// assert_eq!(shankline::tables::en_holes::EnHole::all().len(), 4);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::holes_en_1090::HOLES_EN_1090
    }

    /// The row for a bolt of nominal diameter d.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter that is not positive and finite; [`Error::NotInTable`] below M12, which
    /// is the least structural bolt, and between the rows.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::en_holes::EnHole};
    /// assert!(EnHole::at(millimetres(36.0)).is_ok());
    /// assert!(EnHole::at(inches(1.0)).is_err());
    /// ```
    pub fn at(diameter: Length) -> Result<&'static Self, Error> {
        let size = nanometres(sane_length("bolt diameter", diameter)?);
        Self::all()
            .iter()
            .find(|row| {
                nanometres(row.diameter_from) <= size
                    && row
                        .diameter_thru
                        .is_none_or(|thru| size <= nanometres(thru))
            })
            .ok_or_else(|| Error::NotInTable {
                table: "EN 1090-2 Table 11",
                wanted: format!("a bolt of {}", Amount::from(diameter)),
                available: "it has M12 to M14, M16 to M22, M24, and M27 and more".into(),
            })
    }

    /// What the user of this row must be told, if it was recalled and not read.
    ///
    /// ```
    /// assert_eq!(shankline::tables::en_holes::EnHole::all()[0].cautions().iter().count(), 0);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("hole clearance", self.provenance))
    }
}
