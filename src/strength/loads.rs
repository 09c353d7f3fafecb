//! Loads to design for: shock, and loads that act together.
//!
//! Plain functions. Which factors belong to a joint is for its code and its engineer; a factor is
//! always an argument, and every term stays in the result.

use alloc::{format, string::String, vec::Vec};

use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, positive, sane_text};
use crate::math;
use crate::units::{Force, Length};

/// Factor of a load that is suddenly there but does not fall: 2.
///
/// Source: strength of materials texts (Gere and Timoshenko; Shigley): twice the static deflection of an
/// elastic system without damping.
///
/// ```
/// use shankline::{strength::loads::{SUDDEN, impact_factor}, units::millimetres};
/// assert_eq!(impact_factor(millimetres(0.0), millimetres(1.0)).unwrap(), SUDDEN);
/// ```
pub const SUDDEN: f64 = 2.0;

/// Factor of a weight that falls on an elastic system: 1 + sqrt(1 + 2 h / x).
///
/// h is the height of fall to the first touch, x the deflection under the weight at rest. Source: strength of
/// materials texts (Gere and Timoshenko, impact loading). Energy lost in the blow is left out, which is
/// the safe side.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a height that is negative, a deflection that is not positive, or a factor that
/// overflows.
///
/// ```
/// use shankline::{strength::loads::impact_factor, units::millimetres};
/// # fn main() -> Result<(), shankline::Error> {
/// // 40 mm onto a system that gives 10 mm at rest: 1 + sqrt(9)
/// assert_eq!(impact_factor(millimetres(40.0), millimetres(10.0))?, 4.0);
/// # Ok(())
/// # }
/// ```
pub fn impact_factor(height: Length, deflection: Length) -> Result<f64, Error> {
    let height = not_negative("height of fall", height)?;
    let deflection = positive("deflection at rest", deflection)?;
    not_negative(
        "impact factor",
        1.0 + math::sqrt(1.0 + 2.0 * (height / deflection).value),
    )
}

/// One load with the factor it enters a combination with.
///
/// ```
/// use shankline::{strength::loads::LoadTerm, units::newtons};
/// let dead = LoadTerm::new("own weight", newtons(2000.0), 1.35).unwrap();
/// assert!((dead.factored().value - 2700.0).abs() < 1e-9);
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LoadTerm {
    /// Name of the load.
    pub name: String,
    /// The load as it is, negative where it relieves the others.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub load: Force,
    /// Its factor: partial or combination factor, shock factor, or their product.
    pub factor: f64,
}

impl LoadTerm {
    /// A named load and its factor.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is not finite or a factor that is not from 0 to 100.
    ///
    /// ```
    /// use shankline::{strength::loads::LoadTerm, units::newtons};
    /// assert!(LoadTerm::new("wind", newtons(-500.0), 1.5).is_ok());
    /// assert!(LoadTerm::new("wind", newtons(500.0), -1.5).is_err());
    /// ```
    pub fn new(name: impl Into<String>, load: Force, factor: f64) -> Result<Self, Error> {
        let name = name.into();
        sane_text("name of a load", &name)?;
        not_negative("load", load.abs())?;
        if !(0.0..=100.0).contains(&factor) {
            let allowed = Allowed::FromTo(0.0.into(), 100.0.into());
            return Err(out_of_range(format!("factor of {name}"), factor, allowed));
        }
        Ok(Self { name, load, factor })
    }

    /// Load times factor.
    ///
    /// ```
    /// use shankline::{strength::loads::LoadTerm, units::newtons};
    /// assert_eq!(LoadTerm::new("crowd", newtons(100.0), 1.5).unwrap().factored(), newtons(150.0));
    /// ```
    #[must_use]
    pub fn factored(&self) -> Force {
        self.factor * self.load
    }
}

/// Loads along one line that act together.
///
/// ```
/// use shankline::strength::loads::{LoadTerm, combine};
/// use shankline::units::newtons;
/// # fn main() -> Result<(), shankline::Error> {
/// // A hoist eye (invented loads): own weight and a lifted load with a shock factor.
/// let together = combine([
///     LoadTerm::new("own weight", newtons(2000.0), 1.2)?,
///     LoadTerm::new("lifted load", newtons(9000.0), 1.6 * 1.25)?,
/// ])?;
/// assert!((together.total.value - 20_400.0).abs() < 1e-9);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CombinedLoad {
    /// What was added.
    pub terms: Vec<LoadTerm>,
    /// Sum of the factored loads.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub total: Force,
}

/// Adds factored loads along one line.
///
/// # Errors
///
/// [`Error::OutOfRange`] without terms, or if the sum overflows.
///
/// ```
/// assert!(shankline::strength::loads::combine([]).is_err());
/// ```
pub fn combine(terms: impl IntoIterator<Item = LoadTerm>) -> Result<CombinedLoad, Error> {
    let terms: Vec<LoadTerm> = terms.into_iter().collect();
    if terms.is_empty() {
        let allowed = Allowed::AtLeast(1_usize.into());
        return Err(out_of_range("number of loads", terms.len(), allowed));
    }
    let total: Force = terms.iter().map(LoadTerm::factored).sum();
    not_negative("sum of the loads", total.abs())?;
    Ok(CombinedLoad { terms, total })
}

/// The combination with the greatest load, without regard to sign; the first of equals.
///
/// ```
/// use shankline::strength::loads::governing;
/// assert_eq!(governing([]), None);
/// ```
#[must_use]
pub fn governing(combinations: impl IntoIterator<Item = CombinedLoad>) -> Option<CombinedLoad> {
    combinations.into_iter().reduce(|most, next| {
        if next.total.abs() > most.total.abs() {
            next
        } else {
            most
        }
    })
}

impl CombinedLoad {
    /// The working.
    ///
    /// ```
    /// use shankline::strength::loads::{LoadTerm, combine};
    /// use shankline::units::newtons;
    /// # fn main() -> Result<(), shankline::Error> {
    /// combine([LoadTerm::new("crowd", newtons(100.0), 1.5)?])?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let mut derivation = Derivation::new("Loads together");
        let mut sum: Force = crate::units::from_base(0.0);
        for (index, term) in self.terms.iter().enumerate() {
            let before = sum;
            sum += term.factored();
            let number = index + 1;
            derivation = derivation.step(
                Step::new(
                    format!("with {}", term.name),
                    format!("F{number}"),
                    "F0 + g * Fk",
                    sum,
                )
                .with("F0", before)
                .with("g", term.factor)
                .with("Fk", term.load),
            );
        }
        derivation
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::newtons;

    #[test]
    fn a_fall_is_more_than_a_load_that_is_set_down() {
        let millimetres = crate::units::millimetres;
        // By hand: 1 + sqrt(1 + 2 x 40 / 10).
        let fallen = impact_factor(millimetres(40.0), millimetres(10.0)).unwrap();
        assert!((fallen - 4.0).abs() < 1e-12);
    }

    #[test]
    fn the_working_adds_the_terms() {
        let terms = [(1000.0, 1.35), (-400.0, 1.5), (250.0, 0.9)];
        let terms = terms.map(|(load, factor)| LoadTerm::new("a", newtons(load), factor).unwrap());
        let found = combine(terms).unwrap();
        found.derivation().check().unwrap();
        assert!((found.total.value - 975.0).abs() < 1e-9);
    }

    #[test]
    fn the_greatest_combination_governs_whatever_its_sign() {
        let sum = |name: &'static str, load: f64| {
            combine([LoadTerm::new(name, newtons(load), 1.0).unwrap()]).unwrap()
        };
        for (loads, first) in [
            ([1.0, 2.0, -3.0], "c"),
            ([1.0, 2.0, -2.0], "b"),
            ([-2.0, 2.0, 1.0], "a"),
            ([3.0, -2.0, 1.0], "a"),
        ] {
            let all = ["a", "b", "c"].into_iter().zip(loads);
            let most = governing(all.map(|(name, load)| sum(name, load))).unwrap();
            assert_eq!(most.terms[0].name, first, "{loads:?}");
        }
    }

    #[test]
    fn the_working_counts_loads_from_one() {
        let term = |name: &'static str| LoadTerm::new(name, newtons(100.0), 1.5).unwrap();
        let working = combine([term("crowd"), term("wind")]).unwrap().derivation();
        let symbols: alloc::vec::Vec<&str> = working.steps().iter().map(Step::symbol).collect();
        assert_eq!(symbols, ["F1", "F2"]);
    }
}
