//! A value with its tolerance: minimum, nominal, maximum.

use alloc::format;
use core::{
    ops::{Add, Sub},
    str::FromStr,
};

use crate::error::{Allowed, Amount, Error, Finite, not_negative, out_of_range, sane_length};
use crate::units::{Length, Measured, parse};

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

/// `"12 mm"`, `"0.500 +/- 0.015 in"`, `"12 mm ± 0.5 mm"`: a value with its unit, and the tolerance either way.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::units::Length;
/// let ply: Spread<Length> = "20 +/- 0.3 mm".parse().unwrap();
/// assert_eq!(ply.nominal, millimetres(20.0));
/// assert!("20 +/- 0.3".parse::<Spread<Length>>().is_err()); // no unit
/// ```
impl<Q: Measured + Add<Output = Q> + Sub<Output = Q>> FromStr for Spread<Q> {
    type Err = Error;

    fn from_str(text: &str) -> Result<Self, Error> {
        let split = text.split_once("+/-").or_else(|| text.split_once('±'));
        let Some((nominal, tolerance)) = split else {
            return Ok(Self::exact(parse(text)?));
        };
        let starts_unit = |c: char| c.is_alphabetic() || c == '"';
        let nominal: Q = if nominal.contains(starts_unit) {
            parse(nominal)?
        } else {
            // "0.500 +/- 0.015 in": the unit stands once, at the end.
            let unit_at = tolerance.find(starts_unit).unwrap_or(tolerance.len());
            let (_, unit) = tolerance.split_at(unit_at);
            parse(&format!("{nominal} {unit}"))?
        };
        let tolerance = parse(tolerance)?;
        Ok(Self {
            min: nominal - tolerance,
            nominal,
            max: nominal + tolerance,
        })
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
