//! Least pretensions of structural bolts as codes print them.
//!
//! Codes round the share of the tensile load, and not always to the nearest: where a value is printed, it rules.

use super::{generated, nanometres, no_row, stock_thread};
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::names::AiscEdition;
use crate::source::Provenance;
use crate::thread::Thread;
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
}

impl core::fmt::Display for PretensionGroup {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.pad(match self {
            Self::A325 => "A325",
            Self::A490 => "A490",
            Self::Class10_9 => "class 10.9",
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
    /// assert_eq!(shankline::tables::pretension::Pretension::all_metric().len(), 36);
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::pretensions_metric::PRETENSIONS_METRIC
    }

    /// The least pretension of AISC 360 Tables J3.1 (inch) and J3.1M (metric).
    ///
    /// The tables of 2005 were read, those of 2016 and later are recalled. The columns for groups C, 144 and 200
    /// are not held.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] for a thread or a group the table does not have.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::pretension::{Pretension, PretensionGroup};
    /// use shankline::units::kips;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "1-1/8-7 UNC".parse()?;
    /// let of = |edition| Pretension::aisc(&thread, PretensionGroup::A325, edition);
    /// assert_eq!(of(AiscEdition::E2010)?.pretension, kips(56.0));
    /// assert_eq!(of(AiscEdition::E2016)?.pretension, kips(64.0));
    /// assert!(Pretension::aisc(&"2-4.5 UNC".parse()?, PretensionGroup::A325, AiscEdition::E2010).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn aisc(
        thread: &Thread,
        group: PretensionGroup,
        edition: AiscEdition,
    ) -> Result<&'static Self, Error> {
        let wanted = match edition {
            AiscEdition::E2005 | AiscEdition::E2010 => PretensionEditions::To2010,
            AiscEdition::E2016 | AiscEdition::E2022 => PretensionEditions::From2016,
        };
        Self::find("AISC 360 Table J3.1", thread, |row| {
            row.code == "AISC 360" && row.group == group && row.editions == Some(wanted)
        })
    }

    /// Fp,C* of class 10.9 as the German annex of EN 1993-1-8 prints it, rounded to 10 kN.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] for a thread it does not have.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::pretension::Pretension;
    /// use shankline::units::kilonewtons;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // 0.7 x 900 MPa x 245 mm2 would be 154 kN.
    /// assert_eq!(Pretension::german(&"M20".parse()?)?.pretension, kilonewtons(160.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn german(thread: &Thread) -> Result<&'static Self, Error> {
        Self::find("the German annex of EN 1993-1-8", thread, |row| {
            row.group == PretensionGroup::Class10_9
        })
    }

    fn find(
        table: &'static str,
        thread: &Thread,
        wanted: impl Fn(&&'static Self) -> bool + Copy,
    ) -> Result<&'static Self, Error> {
        stock_thread(table, thread)?;
        let rows = if thread.is_unified() {
            Self::all_inch()
        } else {
            Self::all_metric()
        };
        let size = nanometres(thread.nominal_diameter());
        let of_group = rows.iter().filter(wanted);
        let row = of_group
            .clone()
            .find(|row| nanometres(row.nominal_diameter) == size);
        match row {
            Some(row) if thread.is_coarse() => Ok(row),
            Some(_) => Err(Error::NotInTable {
                table,
                wanted: alloc::string::ToString::to_string(thread),
                available: "at that size it has the coarse thread only".into(),
            }),
            None => Err(no_row(table, thread, of_group, |row| {
                (row.nominal_diameter, row.size)
            })),
        }
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::pretension::{Pretension, PretensionGroup};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "3/4-10 UNC".parse()?;
    /// let count = |edition| -> Result<usize, shankline::Error> {
    ///     Ok(Pretension::aisc(&thread, PretensionGroup::A490, edition)?.cautions().iter().count())
    /// };
    /// assert_eq!((count(AiscEdition::E2005)?, count(AiscEdition::E2022)?), (0, 1));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("least pretension", self.provenance))
    }
}
