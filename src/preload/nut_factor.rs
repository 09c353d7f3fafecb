//! The nut factor K.

use alloc::string::ToString;

use crate::error::{Allowed, Error, out_of_range, positive};
use crate::spread::{Spread, ordered};
use crate::tables::friction::NutFactorRow;

/// The nut factor K of T = K F d, always with its range.
///
/// K is not a friction coefficient: it lumps thread friction, face friction and geometry, and
/// belongs to one finish, one lubricant and a range of sizes. Published means lie from about 0.09
/// (anti-seize) to 0.5 (dry plating), and a single condition easily spreads by a third. What each
/// publisher gives is in [`tables::friction`](crate::tables::friction).
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let oiled = NutFactor::new(0.15, 0.18, 0.22)?;
/// assert!(oiled.min() < oiled.nominal() && oiled.nominal() < oiled.max());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "RawNutFactor")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct NutFactor {
    min: f64,
    nominal: f64,
    max: f64,
}

#[cfg(feature = "serde")]
#[derive(serde::Deserialize)]
#[serde(
    crate = "crate::objects",
    deny_unknown_fields,
    expecting = "a nut factor with min, nominal and max"
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
struct RawNutFactor {
    min: f64,
    nominal: f64,
    max: f64,
}

#[cfg(feature = "serde")]
impl TryFrom<RawNutFactor> for NutFactor {
    type Error = Error;
    fn try_from(raw: RawNutFactor) -> Result<Self, Error> {
        Self::new(raw.min, raw.nominal, raw.max)
    }
}

impl NutFactor {
    /// Least, nominal and greatest K.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless 0 < min <= nominal <= max <= 1.
    ///
    /// ```
    /// use shankline::preload::NutFactor;
    /// assert!(NutFactor::new(0.16, 0.20, 0.27).is_ok());
    /// assert!(NutFactor::new(0.20, 0.16, 0.27).is_err());
    /// ```
    pub fn new(min: f64, nominal: f64, max: f64) -> Result<Self, Error> {
        for k in [min, nominal, max] {
            positive("nut factor", k)?;
            if k > 1.0 {
                return Err(out_of_range("nut factor", k, Allowed::AtMost(1.0.into())));
            }
        }
        ordered("nut factor", Spread { min, nominal, max })?;
        Ok(Self { min, nominal, max })
    }

    /// The nut factor of one row of the tables.
    ///
    /// Where the publisher gives the least and the greatest K only, the nominal is the middle
    /// between them.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the publisher gives a single K: no range is made up for it. Take the
    /// limits of [`NutFactorRow::across_publishers`], or of a test on your own parts.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::friction::{Condition, NutFactorRow};
    /// let rows = NutFactorRow::for_condition(Condition::Waxed);
    /// assert_eq!(
    ///     NutFactor::from_row(&rows[0]).unwrap_err().to_string(),
    ///     "no known range of K for waxed bolts by distributor torque guide: \
    ///      the publisher gives a single value",
    /// );
    /// let rows = NutFactorRow::for_condition(Condition::Moly);
    /// assert_eq!(NutFactor::from_row(&rows[0]).unwrap().max(), 0.18);
    /// ```
    pub fn from_row(row: &NutFactorRow) -> Result<Self, Error> {
        match (row.k_min, row.k_max) {
            (Some(min), Some(max)) => {
                let nominal = row.k_nominal.unwrap_or(f64::midpoint(min, max));
                Self::new(min, nominal, max)
            }
            _ => Err(Error::NoValue {
                quantity: "range of K",
                subject: row.to_string(),
                reason: "the publisher gives a single value",
            }),
        }
    }

    /// Least K: the highest preload for a torque.
    ///
    /// ```
    /// # use shankline::preload::NutFactor;
    /// assert_eq!(NutFactor::new(0.16, 0.20, 0.27).unwrap().min(), 0.16);
    /// ```
    #[must_use]
    pub const fn min(self) -> f64 {
        self.min
    }

    /// Nominal K.
    ///
    /// ```
    /// # use shankline::preload::NutFactor;
    /// assert_eq!(NutFactor::new(0.16, 0.20, 0.27).unwrap().nominal(), 0.20);
    /// ```
    #[must_use]
    pub const fn nominal(self) -> f64 {
        self.nominal
    }

    /// Greatest K: the lowest preload for a torque.
    ///
    /// ```
    /// # use shankline::preload::NutFactor;
    /// assert_eq!(NutFactor::new(0.16, 0.20, 0.27).unwrap().max(), 0.27);
    /// ```
    #[must_use]
    pub const fn max(self) -> f64 {
        self.max
    }
}
