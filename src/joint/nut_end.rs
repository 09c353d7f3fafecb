//! What closes the joint at the far end of the bolt.

use crate::caution::Cautions;
use crate::error::Error;
use crate::spread::{Spread, sane_spread};
use crate::tables::nuts::Nut;
use crate::units::Length;

/// The nut as a length search sees it: its height, and what must be said of it.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let from_table = NutEnd::of(Nut::find(NutStyle::Hex, &"3/4-10 UNC".parse()?)?)?;
/// let measured = NutEnd::with_height(Spread::exact(inches(0.64)))?;
/// assert!(from_table.height().min < measured.height().nominal);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct NutEnd {
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    height: Spread<Length>,
    cautions: Cautions,
}

impl NutEnd {
    /// A nut of the tables.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] where the table has only one limit of its height.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso7042, &"M12".parse()?)?)?;
    /// assert_eq!(nut.cautions().iter().count(), 1); // its height was recalled, not read
    /// # Ok(())
    /// # }
    /// ```
    pub fn of(nut: &Nut) -> Result<Self, Error> {
        Ok(Self {
            height: nut.height()?,
            cautions: nut.cautions(),
        })
    }

    /// A nut of a stated or measured height.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless the height is positive, finite and in order.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(NutEnd::with_height(Spread::exact(millimetres(0.0))).is_err());
    /// ```
    pub fn with_height(height: Spread<Length>) -> Result<Self, Error> {
        sane_spread("nut height", height)?;
        Ok(Self {
            height,
            cautions: Cautions::default(),
        })
    }

    /// Height of the nut.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &"M20".parse()?)?)?;
    /// assert_eq!(nut.height().max, millimetres(18.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn height(&self) -> Spread<Length> {
        self.height
    }

    /// What the user of the nut must be told.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &"M20".parse()?)?)?;
    /// assert_eq!(nut.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn cautions(&self) -> Cautions {
        self.cautions
    }
}
