//! A value with its tolerance: minimum, nominal, maximum.

use alloc::{borrow::ToOwned, format};
use core::ops::{Add, Sub};
use core::str::FromStr;

use crate::error::{
    Allowed, Amount, Error, Finite, TextProblem, not_negative, out_of_range, sane_length,
};
use crate::units::{Length, Measured, is_too_long, parse, starts_unit, too_long};

#[cfg(feature = "serde")]
pub(crate) mod quantity;

/// Minimum, nominal and maximum of one value.
///
/// Plain data: functions that take one check that it is finite and in order.
///
/// ```
/// use shankline::prelude::*;
/// let ply = inches(0.500).plus_minus(inches(0.015));
/// assert_eq!(ply.min, inches(0.500) - inches(0.015));
/// let two = ply + ply;
/// assert_eq!(two.nominal, inches(1.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread<T> {
    /// The least value.
    pub min: T,
    /// The value aimed at.
    pub nominal: T,
    /// The greatest value.
    pub max: T,
}

impl<T: Copy> Spread<T> {
    /// A value without tolerance.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let exact = Spread::exact(millimetres(12.0));
    /// assert_eq!(exact.min, exact.max);
    /// ```
    #[must_use]
    pub const fn exact(value: T) -> Self {
        Self {
            min: value,
            nominal: value,
            max: value,
        }
    }

    /// The same function applied to all three values; it must be increasing.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let doubled = Spread { min: 1.0, nominal: 2.0, max: 3.0 }.map(|x| 2.0 * x);
    /// assert_eq!(doubled.max, 6.0);
    /// ```
    #[must_use]
    pub fn map<U>(self, function: impl Fn(T) -> U) -> Spread<U> {
        Spread {
            min: function(self.min),
            nominal: function(self.nominal),
            max: function(self.max),
        }
    }
}

impl<Q: Measured + Add<Output = Q> + Sub<Output = Q>> FromStr for Spread<Q> {
    type Err = Error;

    /// Reads a quantity with its tolerance as a drawing writes it: `20 mm`, `20 +/- 0.3 mm`, `20 mm ± 0.3 mm`,
    /// `20 mm +0.1/-0.2`, `20 +0.1 -0.2 mm`, `20 mm +0.1/-0`. A unit that stands once is that of all numbers. How
    /// quantities are written is told by [`parse`].
    ///
    /// # Errors
    ///
    /// [`Error::QuantityText`] for what [`parse`] refuses and for a tolerance that is negative or lacks one of its
    /// two sides.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let ply: Spread<Length> = "20 mm +0.1/-0.2".parse()?;
    /// assert!((ply.min - millimetres(19.8)).abs() < millimetres(1e-9));
    /// assert!((ply.max - millimetres(20.1)).abs() < millimetres(1e-9));
    /// assert_eq!("0.5 in".parse::<Spread<Length>>()?, Spread::exact(inches(0.5)));
    /// assert!("20 mm +0.1".parse::<Spread<Length>>().is_err());
    /// # Ok(())
    /// # }
    /// ```
    fn from_str(text: &str) -> Result<Self, Error> {
        if is_too_long(text) {
            return Err(too_long(text, Q::DIMENSION).into());
        }
        // Text from a drawing has a minus sign where a keyboard has a hyphen.
        let text = &text.replace('−', "-");
        let lacking = || Error::QuantityText {
            text: text.into(),
            expected: Q::DIMENSION,
            problem: TextProblem::Tolerance,
        };
        let (nominal, plus, minus) = if let Some((nominal, both)) =
            text.split_once("+/-").or_else(|| text.split_once('±'))
        {
            (nominal, both, both)
        } else if let Some((nominal, rest)) = text.trim_start().split_once('+') {
            if nominal.is_empty() {
                return Ok(Self::exact(parse(text)?));
            }
            // "+0.1/-0.2" and "+0.1 -0.2": a hyphen within a fraction has no blank and no stroke before it.
            let at = rest.rfind("/-").or_else(|| rest.rfind(" -"));
            let (plus, minus) = rest.split_at(at.ok_or_else(lacking)?);
            let plus = plus.trim_end().trim_end_matches('/');
            (nominal, plus, minus.get(2..).unwrap_or_default())
        } else {
            return Ok(Self::exact(parse(text)?));
        };
        // The last unit that is written is that of a number without one; "20 mm +0.1/-0.2" has its unit in front.
        let unit_of = |part: &str| {
            part.find(starts_unit)
                .and_then(|at| part.get(at..))
                .map(|unit| unit.trim().to_owned())
        };
        let unit = unit_of(minus)
            .or_else(|| unit_of(plus))
            .or_else(|| unit_of(nominal));
        let read = |part: &str| match (part.contains(starts_unit), &unit) {
            (false, Some(unit)) => parse::<Q>(&format!("{} {unit}", part.trim())),
            _ => parse::<Q>(part),
        };
        let (nominal, plus, minus) = (read(nominal)?, read(plus)?, read(minus)?);
        if plus.base() < 0.0 || minus.base() < 0.0 {
            return Err(lacking());
        }
        Ok(Self {
            min: nominal - minus,
            nominal,
            max: nominal + plus,
        })
    }
}

/// Refuses a spread that is negative, not finite or out of order.
pub(crate) fn ordered<T>(quantity: &'static str, spread: Spread<T>) -> Result<Spread<T>, Error>
where
    T: Copy + PartialOrd + Finite + Into<Amount>,
{
    not_negative(quantity, spread.min)?;
    not_negative(quantity, spread.nominal)?;
    not_negative(quantity, spread.max)?;
    if spread.min <= spread.nominal && spread.nominal <= spread.max {
        Ok(spread)
    } else {
        Err(out_of_range(quantity, spread.nominal, Allowed::Ordered))
    }
}

/// Refuses a thickness or height that is not in order, or no length of a part.
pub(crate) fn sane_spread(quantity: &'static str, spread: Spread<Length>) -> Result<(), Error> {
    ordered(quantity, spread)?;
    sane_length(quantity, spread.min)?;
    sane_length(quantity, spread.max)?;
    Ok(())
}

impl Spread<Length> {
    /// What is left when another length is taken off: least of the shortest less the longest.
    pub(crate) fn less(self, other: Self) -> Self {
        Self {
            min: self.min - other.max,
            nominal: self.nominal - other.nominal,
            max: self.max - other.min,
        }
    }
}

impl<T: Add<Output = T>> Add for Spread<T> {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            min: self.min + other.min,
            nominal: self.nominal + other.nominal,
            max: self.max + other.max,
        }
    }
}

/// Lengths with a tolerance, written as on a drawing.
///
/// ```
/// use shankline::prelude::*;
/// assert_eq!(inches(0.5).plus_minus(inches(0.0)), Spread::exact(inches(0.5)));
/// ```
pub trait PlusMinus {
    /// This value with the same tolerance either way.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let web = millimetres(12.0).plus_minus(millimetres(0.5));
    /// assert_eq!(web.max, millimetres(12.0) + millimetres(0.5));
    /// ```
    #[must_use]
    fn plus_minus(self, tolerance: Length) -> Spread<Length>;
}

impl PlusMinus for Length {
    fn plus_minus(self, tolerance: Length) -> Spread<Length> {
        Spread {
            min: self - tolerance,
            nominal: self,
            max: self + tolerance,
        }
    }
}
