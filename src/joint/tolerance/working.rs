//! The working of a chain of lengths.

use alloc::{format, string::String, vec::Vec};

use super::{ChainRange, ChainTerm, ToleranceChain, ToleranceMethod};
use crate::derivation::{Derivation, Step};
use crate::error::{Amount, Error};
use crate::units::{Area, Length, from_base};

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
        for (index, term) in self.terms().iter().enumerate() {
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
        let terms = self.terms().iter().enumerate();
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
            .terms()
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
