//! Least distances of holes from edges by AISC 360: Tables J3.4 and J3.4M with the additions of J3.5 and J3.5M.

use alloc::format;

use super::{generated, nanometres, size_range};
use crate::caution::{Caution, Cautions};
use crate::error::{Amount, Error, sane_length};
use crate::names::AiscEdition;
use crate::source::{Basis, Provenance};
use crate::units::Length;

/// Over the last size of Table J3.4 the least distance is 1.25 d, at a sheared edge (to 2005) 1.75 d.
const OVER_THE_TABLE: (f64, f64) = (1.25, 1.75);
/// Inch sizes over the table are whole sixteenths.
const SIXTEENTH: i64 = 1_587_500;

/// Which editions of AISC 360 an edge distance belongs to.
///
/// ```
/// use shankline::tables::edge_distances::{EdgeDistance, EdgeEditions};
/// assert_eq!(EdgeDistance::all_inch()[0].editions, EdgeEditions::To2005);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum EdgeEditions {
    /// 2005 and earlier, with a greater distance at sheared edges.
    To2005,
    /// 2010 and later: one column. Read in 2016; 2010 and 2022 are taken to be the same.
    From2010,
}

/// Least distance from the centre of a standard hole to an edge, and what other holes add.
///
/// ```
/// use shankline::{prelude::*, tables::edge_distances::EdgeDistance};
/// # fn main() -> Result<(), shankline::Error> {
/// let row = EdgeDistance::at(inches(0.75), AiscEdition::E2016)?;
/// assert_eq!((row.least, row.sheared), (inches(1.0), None));
/// let old = EdgeDistance::at(inches(0.75), AiscEdition::E2005)?;
/// assert_eq!(old.sheared, Some(inches(1.25)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct EdgeDistance {
    /// The editions the row belongs to.
    pub editions: EdgeEditions,
    /// Name of the bolt size.
    pub size: &'static str,
    /// Nominal diameter of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Least distance at an edge; to 2005 at one that is not sheared.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub least: Length,
    /// Least distance at a sheared edge, to 2005.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub sheared: Option<Length>,
    /// How the distance at a sheared edge is known.
    pub sheared_basis: Option<Basis>,
    /// What an oversize hole adds, C2.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub oversize_addition: Length,
    /// What a short slot adds whose long axis points to the edge, C2. A long slot adds 0.75 d.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub short_slot_addition: Length,
    /// How the additions are known.
    pub additions_basis: Basis,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl EdgeDistance {
    /// Every row for inch bolts.
    ///
    /// ```
    /// assert_eq!(shankline::tables::edge_distances::EdgeDistance::all_inch().len(), 14);
    /// ```
    #[must_use]
    pub fn all_inch() -> &'static [Self] {
        &generated::edge_distances_inch::EDGE_DISTANCES_INCH
    }

    /// Every row for metric bolts.
    ///
    /// ```
    /// assert_eq!(shankline::tables::edge_distances::EdgeDistance::all_metric().len(), 14);
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::edge_distances_metric::EDGE_DISTANCES_METRIC
    }

    /// The distances of a bolt of nominal diameter d in an edition. Over 1-1/4 in and M36 they are 1.25 d (1.75 d
    /// at sheared edges), with the additions of the last row.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter that is not positive and finite; [`Error::NotInTable`] for a size
    /// below or between those of the tables.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::edge_distances::EdgeDistance};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let large = EdgeDistance::at(inches(2.0), AiscEdition::E2022)?;
    /// assert_eq!(large.least, inches(2.5));
    /// assert!(EdgeDistance::at(millimetres(12.0), AiscEdition::E2022).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn at(diameter: Length, edition: AiscEdition) -> Result<Self, Error> {
        let size = nanometres(sane_length("bolt diameter", diameter)?);
        let wanted = match edition {
            AiscEdition::E2005 => EdgeEditions::To2005,
            _ => EdgeEditions::From2010,
        };
        let of_edition = |rows: &'static [Self]| rows.iter().filter(move |r| r.editions == wanted);
        let mut rows = of_edition(Self::all_inch()).chain(of_edition(Self::all_metric()));
        if let Some(row) = rows.find(|row| nanometres(row.nominal_diameter) == size) {
            return Ok(*row);
        }
        // No metric size over M36 is a whole number of sixteenths of an inch.
        let system = if Self::is_inch_size(diameter) {
            Self::all_inch()
        } else {
            Self::all_metric()
        };
        let last = of_edition(system).next_back();
        match last.filter(|last| nanometres(last.nominal_diameter) < size) {
            Some(last) => Ok(Self {
                size: "over the table",
                nominal_diameter: diameter,
                least: OVER_THE_TABLE.0 * diameter,
                sheared: last.sheared.map(|_| OVER_THE_TABLE.1 * diameter),
                ..*last
            }),
            None => Err(Error::NotInTable {
                table: "AISC 360 Tables J3.4 and J3.4M",
                wanted: format!("a bolt of {}", Amount::from(diameter)),
                available: size_range(of_edition(system), diameter, |row| {
                    (row.nominal_diameter, row.size)
                }),
            }),
        }
    }

    /// Whether a bolt is of an inch size: a whole number of sixteenths.
    pub(crate) const fn is_inch_size(diameter: Length) -> bool {
        nanometres(diameter) % SIXTEENTH == 0
    }

    /// What the user of this row must be told: distances or additions that were recalled and not read.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::edge_distances::EdgeDistance};
    /// # fn main() -> Result<(), shankline::Error> {
    /// // Of the edition of 2005 the row of 1/2 in bolts was recalled.
    /// let row = EdgeDistance::at(inches(0.5), AiscEdition::E2005)?;
    /// assert_eq!(row.cautions().iter().count(), 1);
    /// let row = EdgeDistance::at(inches(0.75), AiscEdition::E2016)?;
    /// assert_eq!(row.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let by = |basis| Provenance {
            basis,
            ..self.provenance
        };
        let sheared = by(self.sheared_basis.unwrap_or(self.provenance.basis));
        Cautions::default()
            .with(
                Caution::from_memory("least edge distance", self.provenance)
                    .or_else(|| Caution::from_memory("least distance of a sheared edge", sheared)),
            )
            .with(Caution::from_memory(
                "addition to the edge distance",
                by(self.additions_basis),
            ))
    }
}
