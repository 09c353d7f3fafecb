//! Lengths in a row and what they add up to.

use alloc::{format, string::String, vec::Vec};
use core::fmt;

use super::normal;
use crate::error::{Allowed, Error, at_most, out_of_range, sane_length, sane_text};
use crate::math::sqrt;
use crate::spread::Spread;
use crate::units::{Length, Ratio, from_base};

/// How tolerances add up.
///
/// | method | limits of a sum | what it presumes |
/// |---|---|---|
/// | worst case | every part at its limit at once | nothing |
/// | root sum square | middle -+ z sigma, sigma = sqrt(sum of sigma i squared) | parts independent, normal, centred; half the tolerance width is k sigma i |
///
/// Verdicts of this crate are worst case. Root sum square answers another question: how much of a
/// production run keeps a limit. It is wrong for one batch of washers stamped on one day (not
/// independent) and for plies that all came from one thick plate.
///
/// ```
/// use shankline::joint::ToleranceMethod;
/// let method = ToleranceMethod::RootSumSquare { sigmas_per_tolerance: 3.0, confidence: 0.9973 };
/// assert_ne!(method, ToleranceMethod::WorstCase);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        deny_unknown_fields,
        rename_all = "snake_case"
    )
)]
#[non_exhaustive]
pub enum ToleranceMethod {
    /// Every part at its limit at once.
    WorstCase,
    /// Independent normal parts.
    RootSumSquare {
        /// k: half the width of every tolerance is so many standard deviations; 3 by custom, less
        /// for a process that is not watched. From 0.1 to 20.
        sigmas_per_tolerance: f64,
        /// Share of all assemblies between the limits that are returned, from 0.5 to 0.999999999.
        confidence: f64,
    },
}

impl fmt::Display for ToleranceMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::WorstCase => f.pad("worst case"),
            Self::RootSumSquare {
                sigmas_per_tolerance,
                confidence,
            } => write!(
                f,
                "root sum square ({} % of assemblies; tolerances of {sigmas_per_tolerance} sigma, parts independent)",
                100.0 * confidence
            ),
        }
    }
}

impl ToleranceMethod {
    fn checked(self) -> Result<Self, Error> {
        if let Self::RootSumSquare {
            sigmas_per_tolerance,
            confidence,
        } = self
        {
            for (quantity, value, low, high) in [
                (
                    "standard deviations per tolerance",
                    sigmas_per_tolerance,
                    0.1,
                    20.0,
                ),
                ("confidence", confidence, 0.5, 0.999_999_999),
            ] {
                if !(low..=high).contains(&value) {
                    let allowed = Allowed::FromTo(low.into(), high.into());
                    return Err(out_of_range(quantity, value, allowed));
                }
            }
        }
        Ok(self)
    }
}

/// One length of a chain.
///
/// ```
/// use shankline::{joint::ToleranceChain, prelude::*};
/// let chain = ToleranceChain::new().minus("plate", Spread::exact(millimetres(10.0)));
/// assert!(!chain.terms()[0].adds);
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ChainTerm {
    /// What it is.
    pub name: String,
    /// Whether it adds to the sum; otherwise it is taken off.
    pub adds: bool,
    /// Its size.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub size: Spread<Length>,
}

/// Lengths in a row, some counted forward and some back, whose sum is a gap or a margin.
///
/// ```
/// use shankline::{joint::{ToleranceChain, ToleranceMethod}, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// // Ten parts of +/- 0.1 mm: +/- 1 mm at worst, +/- 0.316 mm by root sum square.
/// let mut chain = ToleranceChain::new();
/// for _ in 0..10 {
///     chain = chain.plus("part", millimetres(5.0).plus_minus(millimetres(0.1)));
/// }
/// let worst = chain.range(ToleranceMethod::WorstCase)?;
/// assert!((worst.max - millimetres(51.0)).abs() < millimetres(1e-9));
/// let method = ToleranceMethod::RootSumSquare { sigmas_per_tolerance: 3.0, confidence: 0.9973 };
/// let likely = chain.range(method)?;
/// assert!((likely.max - millimetres(50.316)).abs() < millimetres(0.0005));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[must_use]
pub struct ToleranceChain {
    terms: Vec<ChainTerm>,
}

/// More than the thickest stack has, whose plies, gaps and washers are 2300 at most.
const MOST_TERMS: usize = 10_000;

impl ToleranceChain {
    /// An empty chain.
    ///
    /// ```
    /// assert!(shankline::joint::ToleranceChain::new().terms().is_empty());
    /// ```
    pub const fn new() -> Self {
        Self { terms: Vec::new() }
    }

    /// The chain with a length added. Nothing is checked before [`range`](Self::range).
    ///
    /// ```
    /// use shankline::{joint::ToleranceChain, prelude::*};
    /// let chain = ToleranceChain::new().plus("plate", Spread::exact(millimetres(10.0)));
    /// assert!(chain.terms()[0].adds);
    /// ```
    pub fn plus(self, name: impl Into<String>, size: Spread<Length>) -> Self {
        self.with(name.into(), true, size)
    }

    /// The chain with a length taken off.
    ///
    /// ```
    /// use shankline::{joint::{ToleranceChain, ToleranceMethod}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let chain = ToleranceChain::new()
    ///     .plus("hole depth", millimetres(30.0).plus_minus(millimetres(0.5)))
    ///     .minus("screw", millimetres(28.0).plus_minus(millimetres(0.5)));
    /// let clearance = chain.range(ToleranceMethod::WorstCase)?;
    /// assert!((clearance.min - millimetres(1.0)).abs() < millimetres(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn minus(self, name: impl Into<String>, size: Spread<Length>) -> Self {
        self.with(name.into(), false, size)
    }

    fn with(self, name: String, adds: bool, size: Spread<Length>) -> Self {
        self.and(ChainTerm { name, adds, size })
    }

    pub(super) fn and(mut self, term: ChainTerm) -> Self {
        self.terms.push(term);
        self
    }

    /// The lengths.
    ///
    /// ```
    /// use shankline::{joint::ToleranceChain, prelude::*};
    /// let chain = ToleranceChain::new().plus("plate", Spread::exact(millimetres(10.0)));
    /// assert_eq!(chain.terms()[0].name, "plate");
    /// ```
    #[must_use]
    pub fn terms(&self) -> &[ChainTerm] {
        &self.terms
    }

    /// What the sum may be.
    ///
    /// Source: worst case is arithmetic; the root sum square of tolerances is in every textbook of
    /// tolerancing (ten parts of 0.1 give 0.316: read on two pages).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for parameters of the method out of their range, and for a length that
    /// is negative, not finite, out of order or beyond a kilometre.
    ///
    /// ```
    /// use shankline::{joint::{ToleranceChain, ToleranceMethod}, prelude::*};
    /// let chain = ToleranceChain::new().plus("plate", Spread::exact(millimetres(-1.0)));
    /// assert!(chain.range(ToleranceMethod::WorstCase).is_err());
    /// ```
    pub fn range(&self, method: ToleranceMethod) -> Result<ChainRange, Error> {
        let method = method.checked()?;
        at_most("number of lengths of a chain", self.terms.len(), MOST_TERMS)?;
        let zero = Length::default();
        let mut worst = Spread::exact(zero);
        // Square metres, as plain numbers: uom has no square root without std.
        let mut squares = 0.0;
        for term in &self.terms {
            sane_term(term)?;
            let size = term.size;
            worst = if term.adds {
                worst + size
            } else {
                Spread {
                    min: worst.min - size.max,
                    nominal: worst.nominal - size.nominal,
                    max: worst.max - size.min,
                }
            };
            let half = 0.5 * (size.max - size.min).value;
            squares += half * half;
        }
        let middle = 0.5 * (worst.min + worst.max);
        Ok(match method {
            ToleranceMethod::WorstCase => ChainRange {
                method,
                nominal: worst.nominal,
                middle,
                min: worst.min,
                max: worst.max,
                sigma: None,
                z: None,
            },
            ToleranceMethod::RootSumSquare {
                sigmas_per_tolerance,
                confidence,
            } => {
                let sigma: Length = from_base(sqrt(squares) / sigmas_per_tolerance);
                let z = normal::two_sided_quantile(confidence);
                ChainRange {
                    method,
                    nominal: worst.nominal,
                    middle,
                    min: middle - z * sigma,
                    max: middle + z * sigma,
                    sigma: Some(sigma),
                    z: Some(z),
                }
            }
        })
    }
}

fn sane_term(term: &ChainTerm) -> Result<(), Error> {
    sane_text("name of a length of a chain", &term.name)?;
    let checked = crate::spread::ordered("length", term.size).and_then(|size| {
        if size.max > Length::default() {
            sane_length("length", size.max)?;
        }
        Ok(())
    });
    checked.map_err(|error| match error {
        Error::OutOfRange {
            quantity,
            value,
            allowed,
        } => Error::OutOfRange {
            quantity: format!("{quantity} of \"{}\"", term.name),
            value,
            allowed,
        },
        other => other,
    })
}

/// What a chain of lengths adds up to, and by which method.
///
/// ```
/// use shankline::{joint::{ToleranceChain, ToleranceMethod}, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// let chain = ToleranceChain::new().plus("plate", millimetres(10.0).plus_minus(millimetres(0.3)));
/// let range = chain.range(ToleranceMethod::WorstCase)?;
/// assert_eq!((range.method, range.sigma), (ToleranceMethod::WorstCase, None));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ChainRange {
    /// The method, with its parameters.
    pub method: ToleranceMethod,
    /// Sum of the nominal lengths.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal: Length,
    /// Middle between the worst limits: the mean that root sum square presumes. It differs from the
    /// nominal where a tolerance is not the same either way.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub middle: Length,
    /// Lower limit by the method.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub min: Length,
    /// Upper limit by the method.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub max: Length,
    /// Standard deviation; root sum square only.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub sigma: Option<Length>,
    /// How many of them the limits are from the middle; root sum square only.
    pub z: Option<f64>,
}

impl ChainRange {
    /// Share of all assemblies whose sum is below a limit; none for the worst case, which knows no
    /// shares, and for a limit that is not a number.
    ///
    /// ```
    /// use shankline::{joint::{ToleranceChain, ToleranceMethod}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let chain = ToleranceChain::new().plus("gap", millimetres(1.0).plus_minus(millimetres(1.5)));
    /// # let chain = ToleranceChain::new()
    /// #     .plus("gap", millimetres(11.0).plus_minus(millimetres(1.5)))
    /// #     .minus("shim", Spread::exact(millimetres(10.0)));
    /// let method = ToleranceMethod::RootSumSquare { sigmas_per_tolerance: 3.0, confidence: 0.95 };
    /// // sigma is 0.5 mm and the middle 1 mm: 2.3 % of the gaps are no gaps.
    /// let share = chain.range(method)?.share_below(millimetres(0.0)).unwrap();
    /// assert!((share.value - 0.02275).abs() < 1e-5);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn share_below(&self, limit: Length) -> Option<Ratio> {
        let sigma = self.sigma.filter(|_| !limit.value.is_nan())?;
        Some(from_base(if sigma.value > 0.0 {
            normal::share_below(((limit - self.middle) / sigma).value)
        } else if self.middle < limit {
            1.0
        } else {
            0.0
        }))
    }

    /// Share of all assemblies whose sum is above a limit; none for the worst case, and for a limit that is not
    /// a number.
    ///
    /// ```
    /// use shankline::{joint::{ToleranceChain, ToleranceMethod}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let chain = ToleranceChain::new().plus("end", millimetres(6.0).plus_minus(millimetres(1.5)));
    /// let method = ToleranceMethod::RootSumSquare { sigmas_per_tolerance: 3.0, confidence: 0.95 };
    /// let share = chain.range(method)?.share_above(millimetres(6.0)).unwrap();
    /// assert!((share.value - 0.5).abs() < 1e-9);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn share_above(&self, limit: Length) -> Option<Ratio> {
        let sigma = self.sigma.filter(|_| !limit.value.is_nan())?;
        Some(from_base(if sigma.value > 0.0 {
            normal::share_below(((self.middle - limit) / sigma).value)
        } else if self.middle > limit {
            1.0
        } else {
            0.0
        }))
    }
}
