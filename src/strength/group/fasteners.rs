//! Fasteners that share a load through their centroid, by EN 1993-1-8 3.7.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use crate::derivation::{Derivation, Step};
use crate::error::Error;
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::stressed::sane_force;
use crate::tables::methods;
use crate::units::Force;

const METHOD: &Method = methods::EN_1993_1_8_2005_3_7_1;

/// Design resistances of one fastener of a group.
///
/// ```
/// use shankline::{strength::group::FastenerResistance, units::newtons};
/// let end = FastenerResistance { shear: newtons(68e3), bearing: newtons(126e3) };
/// assert!(end.shear < end.bearing);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct FastenerResistance {
    /// In shear, all planes together and with every reduction, Fv,Rd.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub shear: Force,
    /// In bearing, of the weaker side, Fb,Rd.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub bearing: Force,
}

impl FastenerResistance {
    fn least(self) -> Force {
        self.shear.min(self.bearing)
    }
}

/// Which sentence of EN 1993-1-8 3.7(1) a group comes under.
///
/// ```
/// use shankline::strength::group::GroupRule;
/// assert_ne!(GroupRule::SumOfBearings, GroupRule::SmallestTimesNumber);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
pub enum GroupRule {
    /// No fastener is weaker in shear than in bearing: the holes yield one after the other until all carry.
    SumOfBearings,
    /// One is, and would shear before the others bear: the smallest resistance of all times their number.
    SmallestTimesNumber,
}

/// Resistance of a group of fasteners by EN 1993-1-8 3.7(1).
///
/// ```
/// # use shankline::strength::group::FastenerGroup;
/// fn each(group: &FastenerGroup) -> usize {
///     group.fasteners.len()
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct FastenerGroup {
    /// The fasteners.
    pub fasteners: Vec<FastenerResistance>,
    /// The sentence it comes under.
    pub rule: GroupRule,
    /// Which fastener has the smallest resistance, counted from 0; the first of equals.
    pub weakest: usize,
    /// Design resistance of the group.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub resistance: Force,
}

/// Design resistance of a group of fasteners by EN 1993-1-8:2005 3.7(1): the sum of the bearing resistances if every
/// fastener bears at least as much in shear as in bearing, else the number of fasteners times the smallest resistance of
/// any of them, in shear or in bearing.
///
/// For a load through the centroid of the group, along which the bearing resistances were found; for another
/// [`BoltPattern::elastic`](super::BoltPattern::elastic) gives what falls on each fastener. Plies have their own modes:
/// net section, block shear.
///
/// Sources: Steel Buildings in Europe, Part 5: Joint Design, 2.2.4 and 5.2.1.3, and its examples 2.4 and 5.4. The guide
/// takes 0.8 of the group of an end plate, whose bolts are pulled as well; that factor is the guide's, and not in here.
///
/// # Errors
///
/// [`Error::Mismatch`] if there is no fastener; [`Error::OutOfRange`] for a resistance that is not from 1e-6 to 1e15 N.
///
/// ```
/// use shankline::strength::group::{FastenerResistance, GroupRule, en_1993_fastener_group};
/// use shankline::units::newtons;
/// # fn main() -> Result<(), shankline::Error> {
/// let fastener = |shear, bearing| FastenerResistance {
///     shear: newtons(shear),
///     bearing: newtons(bearing),
/// };
/// // Steel Buildings in Europe, part 5, column splice: 4 x 68 = 272 kN
/// let end = fastener(68e3, 126e3);
/// let inner = fastener(68e3, 206e3);
/// let splice = en_1993_fastener_group(&[end, end, inner, inner])?;
/// assert!((splice.resistance - newtons(272e3)).abs() < newtons(1e-6));
/// // Thin plates: 60 + 80 kN
/// let thin = en_1993_fastener_group(&[fastener(94e3, 60e3), fastener(94e3, 80e3)])?;
/// assert_eq!(thin.rule, GroupRule::SumOfBearings);
/// assert!((thin.resistance - newtons(140e3)).abs() < newtons(1e-6));
/// # Ok(())
/// # }
/// ```
pub fn en_1993_fastener_group(fasteners: &[FastenerResistance]) -> Result<FastenerGroup, Error> {
    let Some((first, rest)) = fasteners.split_first() else {
        return Err(Error::Mismatch("no fastener to carry the load".into()));
    };
    for fastener in fasteners {
        sane_force("shear resistance of the fastener", fastener.shear)?;
        sane_force("bearing resistance of the fastener", fastener.bearing)?;
    }
    let (mut weakest, mut smallest) = (0, first.least());
    for (i, fastener) in rest.iter().enumerate() {
        if fastener.least() < smallest {
            (weakest, smallest) = (i + 1, fastener.least());
        }
    }
    let bears = fasteners.iter().all(|one| one.shear >= one.bearing);
    let (rule, resistance) = if bears {
        let sum = fasteners.iter().map(|one| one.bearing).sum();
        (GroupRule::SumOfBearings, sum)
    } else {
        (GroupRule::SmallestTimesNumber, number(fasteners) * smallest)
    };
    Ok(FastenerGroup {
        fasteners: fasteners.to_vec(),
        rule,
        weakest,
        resistance,
    })
}

/// How many, as a factor. No memory holds so many that a double could not count them.
#[allow(clippy::cast_precision_loss)]
fn number<T>(things: &[T]) -> f64 {
    things.len() as f64
}

impl FastenerGroup {
    /// Checks the load on the group, in the mode that limits it.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is negative or not finite.
    ///
    /// ```
    /// # use shankline::strength::group::{FastenerResistance, en_1993_fastener_group};
    /// # use shankline::strength::check::Mode;
    /// # use shankline::units::newtons;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let one = FastenerResistance { shear: newtons(94e3), bearing: newtons(107e3) };
    /// let check = en_1993_fastener_group(&[one; 6])?.check(newtons(550e3))?;
    /// assert_eq!((check.mode, check.holds()), (Mode::BoltShear, true)); // of 564 kN
    /// # Ok(())
    /// # }
    /// ```
    pub fn check(&self, load: Force) -> Result<Check, Error> {
        let shears = self
            .fasteners
            .get(self.weakest)
            .is_some_and(|weakest| weakest.shear < weakest.bearing);
        let mode = if shears {
            Mode::BoltShear
        } else {
            Mode::Bearing
        };
        let design = Level::Design;
        Check::new(mode, Place::Joint, load, self.resistance, design, METHOD)
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::strength::group::{FastenerResistance, en_1993_fastener_group};
    /// # use shankline::units::newtons;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let one = FastenerResistance { shear: newtons(94e3), bearing: newtons(60e3) };
    /// en_1993_fastener_group(&[one; 6])?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let derivation = Derivation::new("Group of fasteners");
        let step = |formula| {
            Step::new("resistance of the group", "FRd", formula, self.resistance).source(METHOD)
        };
        let weakest = self.fasteners.get(self.weakest);
        if let (GroupRule::SmallestTimesNumber, Some(weakest)) = (self.rule, weakest) {
            return derivation
                .step(
                    Step::new("smallest resistance", "F", "min(Fv, Fb)", weakest.least())
                        .with("Fv", weakest.shear)
                        .with("Fb", weakest.bearing)
                        .source(METHOD),
                )
                .step(
                    step(String::from("n * F"))
                        .with("n", number(&self.fasteners))
                        .with("F", weakest.least()),
                );
        }
        // Fasteners alike stand together: the formula is short where the group is regular.
        let mut alike: Vec<(Force, f64)> = Vec::new();
        for fastener in &self.fasteners {
            let same = alike
                .iter_mut()
                .find(|(bearing, _)| *bearing == fastener.bearing);
            match same {
                Some((_, n)) => *n += 1.0,
                None => alike.push((fastener.bearing, 1.0)),
            }
        }
        let terms: Vec<String> = (1..=alike.len()).map(|i| format!("n{i} * Fb{i}")).collect();
        let mut sum = step(terms.join(" + "));
        for (i, (bearing, n)) in (1..).zip(alike) {
            sum = sum.with(format!("n{i}"), n).with(format!("Fb{i}"), bearing);
        }
        derivation.step(sum)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::newtons;
    use proptest::prelude::*;

    fn fastener(shear: f64, bearing: f64) -> FastenerResistance {
        FastenerResistance {
            shear: newtons(shear),
            bearing: newtons(bearing),
        }
    }

    #[test]
    fn one_bolt_that_shears_first_takes_the_sum_away() {
        let thin = [fastener(90e3, 60e3), fastener(90e3, 90e3)];
        let sum = en_1993_fastener_group(&thin).unwrap();
        assert_eq!(sum.rule, GroupRule::SumOfBearings);
        assert!((sum.resistance.value - 150e3).abs() < 1e-6);
        assert_eq!(sum.check(newtons(1.0)).unwrap().mode, Mode::Bearing);
        let one = [thin[0], fastener(89.9e3, 90e3)];
        let smallest = en_1993_fastener_group(&one).unwrap();
        assert_eq!(smallest.rule, GroupRule::SmallestTimesNumber);
        // Bearing of the first is the smallest still
        assert!((smallest.resistance.value - 120e3).abs() < 1e-6);
        assert_eq!(smallest.check(newtons(1.0)).unwrap().mode, Mode::Bearing);
    }

    #[test]
    fn no_fastener_and_no_resistance_are_refused() {
        assert!(en_1993_fastener_group(&[]).is_err());
        let good = fastener(1e3, 1e3);
        for wrong in [f64::NAN, 0.0, -1.0, f64::INFINITY] {
            assert!(en_1993_fastener_group(&[good, fastener(wrong, 1e3)]).is_err());
            assert!(en_1993_fastener_group(&[good, fastener(1e3, wrong)]).is_err());
        }
        let group = en_1993_fastener_group(&[good]).unwrap();
        assert!(group.check(newtons(f64::NAN)).is_err());
    }

    proptest! {
        /// Never more than what each could carry by itself, never less than the weakest times their number.
        #[test]
        fn between_its_bounds(pairs in prop::collection::vec((1.0..1e6f64, 1.0..1e6f64), 1..12)) {
            let group: Vec<_> = pairs.iter().map(|(v, b)| fastener(*v, *b)).collect();
            let found = en_1993_fastener_group(&group).unwrap();
            found.derivation().check().unwrap();
            let each: f64 = pairs.iter().map(|(v, b)| v.min(*b)).sum();
            let least = pairs.iter().map(|(v, b)| v.min(*b)).fold(f64::INFINITY, f64::min);
            prop_assert!(found.resistance.value <= each * (1.0 + 1e-12));
            prop_assert!(found.resistance.value >= least * number(&pairs) * (1.0 - 1e-12));
        }
    }
}
