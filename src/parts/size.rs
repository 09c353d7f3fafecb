//! One size of a part, between its limits, and where it comes from.

use crate::source::{Basis, Provenance};
use crate::units::Length;

/// How a [`Size`] is known.
///
/// ```
/// use shankline::parts::{Origin, Size};
/// assert_eq!(Size::NOT_READ.origin, Origin::NotRead);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Origin {
    /// A row of the tables.
    Tabled(Provenance),
    /// It follows from other sizes of the part: how.
    Follows(&'static str),
    /// Stated by the caller.
    Stated,
    /// Nobody has read it, or stated it. There is no value.
    NotRead,
}

impl Origin {
    /// Whether the value was recalled, and read in no document.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let inch = ScrewSeries::new(ScrewProduct::HexCapScrew, &"3/4-10 UNC".parse()?)?;
    /// let head = inch.head(inches(4.0));
    /// assert!(head.fillet_radius.origin.is_recalled());
    /// assert!(!head.height.origin.is_recalled());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn is_recalled(&self) -> bool {
        match self {
            Self::Tabled(known) => matches!(known.basis, Basis::Memory),
            Self::Follows(_) | Self::Stated | Self::NotRead => false,
        }
    }
}

/// One size of a part: the limits that are known of it, and where they come from. What is not known is `None`, never a
/// guess.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let screws = ScrewSeries::new(ScrewProduct::Iso4014, &"M12".parse()?)?;
/// let height = screws.head(millimetres(60.0)).height;
/// assert_eq!(height.nominal, Some(millimetres(7.5)));
/// assert!(height.min < height.max);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Size {
    /// The least.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub min: Option<Length>,
    /// The one aimed at.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub nominal: Option<Length>,
    /// The greatest.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub max: Option<Length>,
    /// Where it comes from.
    pub origin: Origin,
}

impl Size {
    /// A size that nobody has read.
    pub const NOT_READ: Self = Self {
        min: None,
        nominal: None,
        max: None,
        origin: Origin::NotRead,
    };

    /// What a row has of it; not read where the row has nothing.
    pub(crate) const fn tabled(
        min: Option<Length>,
        nominal: Option<Length>,
        max: Option<Length>,
        provenance: Provenance,
    ) -> Self {
        if min.is_none() && nominal.is_none() && max.is_none() {
            return Self::NOT_READ;
        }
        Self {
            min,
            nominal,
            max,
            origin: Origin::Tabled(provenance),
        }
    }

    /// What the caller states, without a tolerance; not read where nothing is stated.
    pub(crate) const fn stated(nominal: Option<Length>) -> Self {
        match nominal {
            Some(_) => Self {
                nominal,
                origin: Origin::Stated,
                ..Self::NOT_READ
            },
            None => Self::NOT_READ,
        }
    }

    /// What the caller states as the least.
    pub(crate) const fn at_least(min: Option<Length>) -> Self {
        Self {
            min,
            nominal: None,
            ..Self::stated(min)
        }
    }

    /// What the caller states as the greatest.
    pub(crate) const fn at_most(max: Option<Length>) -> Self {
        Self {
            max,
            nominal: None,
            ..Self::stated(max)
        }
    }

    /// Whether anything is known of it.
    ///
    /// ```
    /// assert!(!shankline::parts::Size::NOT_READ.is_read());
    /// ```
    #[must_use]
    pub const fn is_read(&self) -> bool {
        !matches!(self.origin, Origin::NotRead)
    }

    /// The size as a drawing shows it: the nominal one; without it the middle of the limits; the only limit where there
    /// is one.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4762, &"M8".parse()?)?;
    /// assert_eq!(screws.head(millimetres(40.0)).socket_flats.drawn(), Some(millimetres(6.0)));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn drawn(&self) -> Option<Length> {
        let middle = || Some((self.min? + self.max?) / 2.0);
        self.nominal.or_else(middle).or(self.max).or(self.min)
    }
}
