//! Least pretensions of structural bolts as codes print them.
//!
//! Codes round the share of the tensile load, and not always to the nearest: where a value is printed, it rules.

use super::generated;
use crate::caution::{Caution, Cautions};
use crate::source::Provenance;
use crate::units::{Force, Length};

/// The bolts a column of pretensions is for.
///
/// ```
/// use shankline::tables::pretension::PretensionGroup;
/// assert_eq!(PretensionGroup::A325.to_string(), "A325");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum PretensionGroup {
    /// A325, A325M and F1852: group A of 2010 and 2016, group 120 of 2022.
    A325,
    /// A490, A490M and F2280: group B of 2010 and 2016, group 150 of 2022.
    A490,
    /// Class 10.9 to EN 14399.
    #[cfg_attr(feature = "serde", serde(rename = "class_10_9"))]
    Class10_9,
    /// Class 8.8: general grade of BS 4395-1, category 8.8/TF and 8.8/TB of AS 4100.
    #[cfg_attr(feature = "serde", serde(rename = "class_8_8"))]
    Class8_8,
}

impl core::fmt::Display for PretensionGroup {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.pad(match self {
            Self::A325 => "A325",
            Self::A490 => "A490",
            Self::Class10_9 => "class 10.9",
            Self::Class8_8 => "class 8.8",
        })
    }
}

/// Which editions of AISC 360 a pretension belongs to.
///
/// ```
/// use shankline::tables::pretension::{Pretension, PretensionEditions};
/// let rows = Pretension::all_inch();
/// assert!(rows.iter().any(|row| row.editions == Some(PretensionEditions::From2016)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum PretensionEditions {
    /// 2010 and earlier: A325 over 1 in has 105 ksi.
    To2010,
    /// 2016 and later: A325 over 1 in has 120 ksi.
    From2016,
}

/// The least pretension of one bolt.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::pretension::{Pretension, PretensionGroup};
/// use shankline::units::kips;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "7/8-9 UNC".parse()?;
/// let row = Pretension::aisc(&thread, PretensionGroup::A325, AiscEdition::E2005)?;
/// assert_eq!(row.pretension, kips(39.0)); // 0.7 x 120 ksi x 0.462 in2 is 38.8
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Pretension {
    /// The code.
    pub code: &'static str,
    /// The editions the row belongs to; none if the code has one.
    pub editions: Option<PretensionEditions>,
    /// The bolts it is for.
    pub group: PretensionGroup,
    /// Name of the bolt size.
    pub size: &'static str,
    /// Nominal diameter of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// The least pretension.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pretension: Force,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl Pretension {
    /// Every row for inch bolts, by group, edition and size.
    ///
    /// ```
    /// assert_eq!(shankline::tables::pretension::Pretension::all_inch().len(), 36);
    /// ```
    #[must_use]
    pub fn all_inch() -> &'static [Self] {
        &generated::pretensions_inch::PRETENSIONS_INCH
    }

    /// Every row for metric bolts, by code, group, edition and size.
    ///
    /// ```
    /// assert_eq!(shankline::tables::pretension::Pretension::all_metric().len(), 49);
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::pretensions_metric::PRETENSIONS_METRIC
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::pretension::{Pretension, PretensionGroup};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M20".parse()?;
    /// let count = |edition| -> Result<usize, shankline::Error> {
    ///     Ok(Pretension::aisc(&thread, PretensionGroup::A490, edition)?.cautions().iter().count())
    /// };
    /// assert_eq!((count(AiscEdition::E2005)?, count(AiscEdition::E2022)?), (0, 0)); // read or computed
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("least pretension", self.provenance))
    }
}
