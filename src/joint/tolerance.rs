//! Tolerances of a joint two ways: worst case, and root sum square.

use alloc::{format, string::String, vec::Vec};
use core::fmt;

use super::{Candidate, NutEnd, Stack, normal};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Amount, Error, out_of_range, sane_length};
use crate::math::sqrt;
use crate::spread::Spread;
use crate::units::{Area, Length, Ratio, from_base};

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
    serde(rename_all = "snake_case")
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
        serde(serialize_with = "crate::units::quantity::serialize_spread")
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

    fn with(mut self, name: String, adds: bool, size: Spread<Length>) -> Self {
        self.terms.push(ChainTerm { name, adds, size });
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
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub nominal: Length,
    /// Middle between the worst limits: the mean that root sum square presumes. It differs from the
    /// nominal where a tolerance is not the same either way.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub middle: Length,
    /// Lower limit by the method.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub min: Length,
    /// Upper limit by the method.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub max: Length,
    /// Standard deviation; root sum square only.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub sigma: Option<Length>,
    /// How many of them the limits are from the middle; root sum square only.
    pub z: Option<f64>,
}

impl ChainRange {
    /// Share of all assemblies whose sum is below a limit; none for the worst case, which knows no
    /// shares.
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
        let sigma = self.sigma?;
        Some(from_base(if sigma.value > 0.0 {
            normal::share_below(((limit - self.middle) / sigma).value)
        } else if self.middle < limit {
            1.0
        } else {
            0.0
        }))
    }

    /// Share of all assemblies whose sum is above a limit; none for the worst case.
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
        let sigma = self.sigma?;
        Some(from_base(if sigma.value > 0.0 {
            normal::share_below(((self.middle - limit) / sigma).value)
        } else if self.middle > limit {
            1.0
        } else {
            0.0
        }))
    }
}

impl ToleranceChain {
    /// The working: limits of the sum, and for root sum square the standard deviation.
    ///
    /// # Errors
    ///
    /// Those of [`range`](Self::range).
    ///
    /// ```
    /// use shankline::{joint::{ToleranceChain, ToleranceMethod}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let plate = millimetres(10.0).plus_minus(millimetres(0.3));
    /// let chain = ToleranceChain::new().plus("plate", plate).plus("plate", plate);
    /// let method = ToleranceMethod::RootSumSquare { sigmas_per_tolerance: 3.0, confidence: 0.95 };
    /// let derivation = chain.derivation(method, "grip", "G")?;
    /// derivation.check()?;
    /// assert_eq!(derivation.steps().last().unwrap().formula(), "Gmid + z * sigma_G");
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(
        &self,
        method: ToleranceMethod,
        what: &str,
        symbol: &str,
    ) -> Result<Derivation, Error> {
        let range = self.range(method)?;
        let mut derivation = Derivation::new(format!("{what} by {method}"));
        for (index, term) in self.terms.iter().enumerate() {
            let given = Step::given(
                term.name.clone(),
                format!("t{}", index + 1),
                term.size.nominal,
            );
            derivation = derivation.step(given);
        }
        let nominal = self.summands("t", |term| term.size.nominal);
        let label = format!("{what}, nominal");
        derivation = total(
            derivation,
            &label,
            symbol,
            &nominal,
            "",
            range.nominal.into(),
        );
        Ok(match method {
            ToleranceMethod::WorstCase => self.worst_case_steps(&range, derivation, what, symbol),
            ToleranceMethod::RootSumSquare {
                sigmas_per_tolerance,
                ..
            } => {
                let k = sigmas_per_tolerance;
                self.root_sum_square_steps(&range, k, derivation, what, symbol)
            }
        })
    }

    fn summands(&self, letter: &str, of: impl Fn(&ChainTerm) -> Length) -> Vec<Summand> {
        let terms = self.terms.iter().enumerate();
        terms
            .map(|(index, term)| Summand {
                symbol: format!("{letter}{}", index + 1),
                adds: term.adds,
                value: of(term).into(),
            })
            .collect()
    }

    fn worst_case_steps(
        &self,
        range: &ChainRange,
        derivation: Derivation,
        what: &str,
        symbol: &str,
    ) -> Derivation {
        let low = self.summands("a", |term| {
            if term.adds {
                term.size.min
            } else {
                term.size.max
            }
        });
        let high = self.summands("b", |term| {
            if term.adds {
                term.size.max
            } else {
                term.size.min
            }
        });
        let (min, max) = (format!("{symbol}min"), format!("{symbol}max"));
        let label = format!("least {what}, every part at its worse limit");
        let derivation = total(derivation, &label, &min, &low, "", range.min.into());
        let label = format!("greatest {what}, every part at its other limit");
        total(derivation, &label, &max, &high, "", range.max.into())
    }

    fn root_sum_square_steps(
        &self,
        range: &ChainRange,
        k: f64,
        derivation: Derivation,
        what: &str,
        symbol: &str,
    ) -> Derivation {
        let (sigma, z) = (range.sigma.unwrap_or_default(), range.z.unwrap_or_default());
        let name = |tail: &str| format!("{symbol}{tail}");
        let middle = self.summands("c", |term| 0.5 * (term.size.min + term.size.max));
        let label = format!("middle between the limits of {what}");
        let derivation = total(
            derivation,
            &label,
            &name("mid"),
            &middle,
            "",
            range.middle.into(),
        );
        let half = |term: &ChainTerm| 0.5 * (term.size.max - term.size.min);
        let mut halves = self.summands("h", half);
        for half in &mut halves {
            half.adds = true;
        }
        let squares = self
            .terms
            .iter()
            .map(|term| half(term) * half(term))
            .fold(Area::default(), |sum, square| sum + square);
        let label = "sum of the squares of half the tolerance widths";
        let derivation = total(
            derivation,
            label,
            &name("sq"),
            &halves,
            " ^ 2",
            squares.into(),
        );
        let deviation = format!("sigma_{symbol}");
        let limit = |what: String, tail: &str, sign: &str, value: Length| {
            let formula = format!("{symbol}mid {sign} z * {deviation}");
            Step::new(what, name(tail), formula, value)
                .with(name("mid"), range.middle)
                .with("z", z)
                .with(deviation.clone(), sigma)
        };
        let spread = Step::new(
            "standard deviation, half a tolerance being k of its own",
            deviation.clone(),
            format!("sqrt({symbol}sq) / k"),
            sigma,
        );
        derivation
            .step(spread.with(name("sq"), squares).with("k", k))
            .step(limit(
                format!("lower limit of {what}"),
                "min",
                "-",
                range.min,
            ))
            .step(limit(
                format!("upper limit of {what}"),
                "max",
                "+",
                range.max,
            ))
    }
}

/// One part of a sum in a derivation.
struct Summand {
    symbol: String,
    adds: bool,
    value: Amount,
}

/// A sum as one step, or as running sums where one formula would be too long to read.
fn total(
    mut derivation: Derivation,
    what: &str,
    symbol: &str,
    parts: &[Summand],
    power: &str,
    value: Amount,
) -> Derivation {
    const IN_ONE_FORMULA: usize = 12;
    let groups = parts.chunks(IN_ONE_FORMULA);
    let last = groups.len().saturating_sub(1);
    let mut carried: Option<(String, Amount)> = None;
    let mut running = 0.0;
    for (index, group) in groups.enumerate() {
        let mut formula = String::new();
        let mut terms: Vec<(String, Amount)> = Vec::new();
        if let Some((symbol, value)) = carried.take() {
            formula.push_str(&symbol);
            terms.push((symbol, value));
        }
        for part in group {
            formula.push_str(match (part.adds, formula.is_empty()) {
                (true, true) => "",
                (true, false) => " + ",
                (false, true) => "-",
                (false, false) => " - ",
            });
            formula.push_str(&part.symbol);
            formula.push_str(power);
            let size = part.value.base();
            let size = if power.is_empty() { size } else { size * size };
            running += if part.adds { size } else { -size };
            terms.push((part.symbol.clone(), part.value));
        }
        let step = if index == last {
            Step::new(String::from(what), String::from(symbol), formula, value)
        } else {
            let so_far = match value {
                Amount::Area(_) => Amount::Area(from_base(running)),
                _ => Amount::Length(from_base(running)),
            };
            let name = format!("{symbol}_{}", index + 1);
            carried = Some((name.clone(), so_far));
            Step::new(format!("{what}, so far"), name, formula, so_far)
        };
        let step = terms
            .into_iter()
            .fold(step, |step, (symbol, value)| step.with(symbol, value));
        derivation = derivation.step(step);
    }
    derivation
}

/// The margins of one bolt in one joint, by one method.
///
/// Body length LB and grip gaging length LG have only one limit in the standards. Both methods take
/// them at that limit, so the shares of root sum square are on the safe side.
///
/// ```
/// use shankline::{joint::{JointTolerances, ToleranceMethod}, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
/// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
/// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
/// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
/// # let rules = LengthRules::fabrication(UnitSystem::Si);
/// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
/// let best = selection.best().unwrap();
/// let worst = JointTolerances::of(&stack, best, nut, ToleranceMethod::WorstCase)?;
/// assert!((worst.jam_margin.min - best.jam_margin).abs() < millimetres(1e-9));
/// assert_eq!(worst.planes_to_run_out.len(), 1);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct JointTolerances {
    /// The method.
    pub method: ToleranceMethod,
    /// Length of the bolt: as bought, or as cut where the candidate is to be cut to a fixed length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    pub length: Spread<Length>,
    /// Everything between the bearing faces of head and nut, G.
    pub grip: ChainRange,
    /// G - LG: below zero the nut reaches the run-out before it clamps.
    pub jam_margin: ChainRange,
    /// Bolt length beyond the nut.
    pub protrusion: ChainRange,
    /// LB - x of every shear plane, from the head: below zero it is not on guaranteed shank.
    pub planes_to_run_out: Vec<ChainRange>,
    /// What was added up for each of these, in this order, with its symbol.
    #[cfg_attr(feature = "serde", serde(skip))]
    chains: Vec<(String, String, ToleranceChain)>,
}

impl JointTolerances {
    /// The margins of a candidate of a length search.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for parameters of the method out of their range, or a candidate with more
    /// than 200 washers under the nut.
    ///
    /// ```
    /// use shankline::{joint::{JointTolerances, ToleranceMethod}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// let method = ToleranceMethod::RootSumSquare { sigmas_per_tolerance: 3.0, confidence: 0.9973 };
    /// let likely = JointTolerances::of(&stack, selection.best().unwrap(), nut, method)?;
    /// // How many bolts of a run show fewer than two threads?
    /// let share = likely.protrusion.share_below(2.0 * thread.pitch()).unwrap();
    /// assert!(share.value < 1e-3);
    /// # Ok(())
    /// # }
    /// ```
    pub fn of(
        stack: &Stack,
        candidate: &Candidate,
        nut: NutEnd,
        method: ToleranceMethod,
    ) -> Result<Self, Error> {
        // The fields of a candidate are open to all.
        if candidate.washers_under_nut > 200 {
            return Err(out_of_range(
                "number of washers under the nut",
                candidate.washers_under_nut,
                Allowed::AtMost(200_usize.into()),
            ));
        }
        let bought = candidate.screw.length();
        let length = candidate.cut.map_or(bought, |cut| cut.finished);
        let grip = layers(stack, stack.plies().len(), candidate.washers_under_nut);
        let sum = |layers: &[(String, Spread<Length>)]| {
            let chain = ToleranceChain::new();
            layers
                .iter()
                .fold(chain, |chain, (name, size)| chain.plus(name.clone(), *size))
        };
        let taken_off = |chain: ToleranceChain, layers: &[(String, Spread<Length>)]| {
            layers.iter().fold(chain, |chain, (name, size)| {
                chain.minus(name.clone(), *size)
            })
        };
        let thread_start = Spread::exact(candidate.screw.grip_gaging_length_max);
        let shank = Spread::exact(candidate.screw.body_length_min);
        let mut chains = alloc::vec![
            ("grip".into(), "G".into(), sum(&grip)),
            (
                "jam margin".into(),
                "J".into(),
                sum(&grip).minus("grip gaging length of the bolt", thread_start),
            ),
            (
                "protrusion".into(),
                "p".into(),
                taken_off(ToleranceChain::new().plus("bolt", length), &grip)
                    .minus("nut", nut.height()),
            ),
        ];
        for (index, &after_ply) in stack.shear_planes().iter().enumerate() {
            let chain = ToleranceChain::new().plus("shank of the bolt", shank);
            chains.push((
                format!("shank beyond shear plane {}", index + 1),
                format!("s{}", index + 1),
                taken_off(chain, &layers(stack, after_ply, 0)),
            ));
        }
        let range = |index: usize| {
            let chain = chains.get(index).map(|(_, _, chain)| chain);
            chain.unwrap_or(&ToleranceChain::new()).range(method)
        };
        let planes = (3..chains.len()).map(range);
        Ok(Self {
            method,
            length,
            grip: range(0)?,
            jam_margin: range(1)?,
            protrusion: range(2)?,
            planes_to_run_out: planes.collect::<Result<_, _>>()?,
            chains,
        })
    }
}

impl JointTolerances {
    /// The working of every margin.
    ///
    /// ```
    /// use shankline::{joint::{JointTolerances, ToleranceMethod}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// let best = selection.best().unwrap();
    /// let worst = JointTolerances::of(&stack, best, nut, ToleranceMethod::WorstCase)?;
    /// assert!(worst.derivation().check().is_ok());
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let title = format!("Margins by {}", self.method);
        let chains = self.chains.iter();
        // They were summed without a refusal before.
        let workings = chains
            .filter_map(|(what, symbol, chain)| chain.derivation(self.method, what, symbol).ok());
        workings.fold(Derivation::new(title), Derivation::and)
    }
}

/// Washers under the head, the first plies, and washers under the nut, each by itself.
fn layers(stack: &Stack, plies: usize, under_nut: usize) -> Vec<(String, Spread<Length>)> {
    let fixed = stack
        .washers_under_head()
        .iter()
        .chain(stack.plies().iter().take(plies))
        .map(|layer| (layer.name.clone(), layer.thickness));
    let washers = stack
        .washers_under_nut()
        .map(|(thickness, _)| (String::from("washer under the nut"), thickness));
    fixed
        .chain(washers.into_iter().cycle().take(under_nut))
        .collect()
}
