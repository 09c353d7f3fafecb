//! The least pretension of a structural bolt as codes print it.

use alloc::string::ToString;

use crate::error::Error;
use crate::names::AiscEdition;
use crate::tables::nanometres;
use crate::tables::pretension::{Pretension, PretensionEditions, PretensionGroup};
use crate::thread::{
    Thread,
    rows::{no_row, stock_thread},
};

impl Pretension {
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

    /// Po, the least tension of a friction grip bolt of general grade by BS 4604-1, recalled.
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
    /// assert_eq!(Pretension::bs_4604(&"M20".parse()?)?.pretension, kilonewtons(144.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn bs_4604(thread: &Thread) -> Result<&'static Self, Error> {
        Self::find("BS 4604-1", thread, |row| row.code == "BS 4604")
    }

    /// Nti, the least tension of a bolt of class 8.8 by AS 4100 Table 15.2.5.1, recalled but for M20.
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
    /// assert_eq!(Pretension::as_4100(&"M20".parse()?)?.pretension, kilonewtons(145.0));
    /// assert!(Pretension::as_4100(&"M22".parse()?).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn as_4100(thread: &Thread) -> Result<&'static Self, Error> {
        Self::find("AS 4100 Table 15.2.5.1", thread, |row| {
            row.code == "AS 4100"
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
                wanted: thread.to_string(),
                available: "at that size it has the coarse thread only".into(),
            }),
            None => Err(no_row(table, thread, of_group, |row| {
                (row.nominal_diameter, row.size)
            })),
        }
    }
}
