//! What is left beside a given load: the inverse of each rule.

use super::{Form, InteractionRule};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::math;
use crate::parts::Zone;
use crate::strength::stressed::sane_force;
use crate::tables::methods;
use crate::units::{Force, Ratio};

/// Which of both loads is given.
///
/// ```
/// use shankline::strength::interaction::Given;
/// assert_ne!(Given::Shear, Given::Tension);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum Given {
    /// The shear; the tension beside it is asked for.
    Shear,
    /// The tension; the shear beside it is asked for.
    Tension,
}

/// What a bolt still bears of one kind of load beside a given one of the other.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::interaction::InteractionRule;
/// # fn main() -> Result<(), shankline::Error> {
/// // EN 1993-1-8: 94.1 kN in shear, 141.1 kN in tension; beside 50 kN of shear 92.6 kN of tension
/// let (shear, tension) = (newtons(94.08e3), newtons(141.12e3));
/// let left = InteractionRule::En1993.tension_beside(newtons(50e3), shear, tension, Zone::Thread)?;
/// assert!((left.load - newtons(92.57e3)).abs() < newtons(5.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LoadBeside {
    /// The rule.
    pub rule: InteractionRule,
    /// What lies in the shear plane.
    pub zone: Zone,
    /// Which load is given.
    pub given: Given,
    /// The given load.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub given_load: Force,
    /// The given load over its resistance alone.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub given_ratio: Ratio,
    /// What is left of the other resistance, as a part of it.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub ratio: Ratio,
    /// The other resistance alone.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub resistance: Force,
    /// The other load that is just carried beside the given one.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub load: Force,
}

impl InteractionRule {
    /// The part of the tension resistance that is left beside a shear of S times the shear resistance.
    ///
    /// | rule | T left |
    /// |---|---|
    /// | AISC 360 | min(1, 1.3 - S) |
    /// | EN 1993-1-8 | min(1, 1.4 (1 - S)) |
    /// | BS 5950 | min(1, 1.4 - S) |
    /// | the others, S^m + T^n <= 1 | (1 - S^m)^(1/n) |
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a ratio that is not from 0 to 1, or a number of the rule out of its range.
    ///
    /// ```
    /// use shankline::{parts::Zone, strength::interaction::InteractionRule, units::percent};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let left = InteractionRule::Aisc360.tension_left(percent(50.0), Zone::Thread)?;
    /// assert!((left.value - 0.8).abs() < 1e-12);
    /// assert!(InteractionRule::Aisc360.tension_left(percent(101.0), Zone::Thread).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn tension_left(self, shear: Ratio, zone: Zone) -> Result<Ratio, Error> {
        let s = part("shear over its resistance", shear)?;
        Ok(Ratio::from(match self.checked()?.form(zone) {
            Form::Corner { sum, tension } => (tension * (sum - s)).clamp(0.0, 1.0),
            Form::Powers { shear, tension, .. } => {
                math::powf((1.0 - math::powf(s, shear)).max(0.0), 1.0 / tension)
            }
        }))
    }

    /// The part of the shear resistance that is left beside a tension of T times the tension resistance.
    ///
    /// | rule | S left |
    /// |---|---|
    /// | AISC 360 | min(1, 1.3 - T) |
    /// | EN 1993-1-8 | 1 - T / 1.4 |
    /// | BS 5950 | min(1, 1.4 - T) |
    /// | the others, S^m + T^n <= 1 | (1 - T^n)^(1/m) |
    ///
    /// # Errors
    ///
    /// As [`tension_left`](Self::tension_left).
    ///
    /// ```
    /// use shankline::{parts::Zone, strength::interaction::InteractionRule, units::percent};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let left = InteractionRule::Ellipse.shear_left(percent(60.0), Zone::Shank)?;
    /// assert!((left.value - 0.8).abs() < 1e-12);
    /// # Ok(())
    /// # }
    /// ```
    pub fn shear_left(self, tension: Ratio, zone: Zone) -> Result<Ratio, Error> {
        let t = part("tension over its resistance", tension)?;
        Ok(Ratio::from(match self.checked()?.form(zone) {
            Form::Corner { sum, tension } => (sum - t / tension).clamp(0.0, 1.0),
            Form::Powers { shear, tension, .. } => {
                math::powf((1.0 - math::powf(t, tension)).max(0.0), 1.0 / shear)
            }
        }))
    }

    /// The tension a bolt still bears beside a shear. Both resistances are those of one method and one level.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a shear that is negative or above its resistance, or a resistance that is not from
    /// 1e-6 to 1e15 N.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::interaction::InteractionRule;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let rule = InteractionRule::Bs5950;
    /// let left = rule.tension_beside(newtons(60e3), newtons(100e3), newtons(50e3), Zone::Thread)?;
    /// assert!((left.load - newtons(40e3)).abs() < newtons(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    pub fn tension_beside(
        self,
        shear: Force,
        shear_resistance: Force,
        tension_resistance: Force,
        zone: Zone,
    ) -> Result<LoadBeside, Error> {
        not_negative("shear", shear)?;
        sane_force("shear resistance", shear_resistance)?;
        sane_force("tension resistance", tension_resistance)?;
        let given_ratio = shear / shear_resistance;
        let ratio = self.tension_left(given_ratio, zone)?;
        Ok(LoadBeside {
            rule: self,
            zone,
            given: Given::Shear,
            given_load: shear,
            given_ratio,
            ratio,
            resistance: tension_resistance,
            load: ratio.value * tension_resistance,
        })
    }

    /// The shear a bolt still bears beside a tension. Both resistances are those of one method and one level.
    ///
    /// # Errors
    ///
    /// As [`tension_beside`](Self::tension_beside).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::interaction::InteractionRule;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let rule = InteractionRule::En1993;
    /// let left = rule.shear_beside(newtons(70e3), newtons(100e3), newtons(100e3), Zone::Thread)?;
    /// assert!((left.load - newtons(50e3)).abs() < newtons(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    pub fn shear_beside(
        self,
        tension: Force,
        shear_resistance: Force,
        tension_resistance: Force,
        zone: Zone,
    ) -> Result<LoadBeside, Error> {
        not_negative("tension", tension)?;
        sane_force("shear resistance", shear_resistance)?;
        sane_force("tension resistance", tension_resistance)?;
        let given_ratio = tension / tension_resistance;
        let ratio = self.shear_left(given_ratio, zone)?;
        Ok(LoadBeside {
            rule: self,
            zone,
            given: Given::Tension,
            given_load: tension,
            given_ratio,
            ratio,
            resistance: shear_resistance,
            load: ratio.value * shear_resistance,
        })
    }
}

pub(super) fn part(what: &'static str, ratio: Ratio) -> Result<f64, Error> {
    if (0.0..=1.0).contains(&ratio.value) {
        Ok(ratio.value)
    } else {
        let allowed = Allowed::FromTo(0.0.into(), 1.0.into());
        Err(out_of_range(what, ratio, allowed))
    }
}

impl LoadBeside {
    /// What the user must be told: rules that were recalled and not read.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::interaction::InteractionRule;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let (rule, ten) = (InteractionRule::AircraftSteel, newtons(10e3));
    /// assert_eq!(rule.shear_beside(newtons(5e3), ten, ten, Zone::Shank)?.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> crate::caution::Cautions {
        self.rule.cautions()
    }

    /// The working.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::interaction::InteractionRule;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let (rule, ten) = (InteractionRule::NasaStd5020, newtons(10e3));
    /// rule.shear_beside(newtons(5e3), ten, ten, Zone::Shank)?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let form = self.rule.form(self.zone);
        let (g, r) = (self.given_ratio.value, self.ratio.value);
        let (title, what, symbol, left, formula) = match (self.given, form) {
            (Given::Shear, Form::Corner { .. }) => (
                "Tension beside a shear",
                "shear",
                "S",
                "T",
                "max(0, min(1, a * (c - S)))",
            ),
            (Given::Tension, Form::Corner { .. }) => (
                "Shear beside a tension",
                "tension",
                "T",
                "S",
                "max(0, min(1, c - T / a))",
            ),
            (Given::Shear, Form::Powers { .. }) => (
                "Tension beside a shear",
                "shear",
                "S",
                "T",
                "(1 - S^m)^(1 / n)",
            ),
            (Given::Tension, Form::Powers { .. }) => (
                "Shear beside a tension",
                "tension",
                "T",
                "S",
                "(1 - T^n)^(1 / m)",
            ),
        };
        let step = Step::new(
            "part of the other resistance that is left",
            left,
            formula,
            r,
        )
        .with(symbol, g);
        let step = match form {
            Form::Corner { sum, tension } => step.with("a", tension).with("c", sum),
            Form::Powers { shear, tension, .. } => step.with("m", shear).with("n", tension),
        };
        Derivation::new(title)
            .step(
                Step::given(alloc::format!("{what} over its resistance"), symbol, g)
                    .source(methods::CHECKED_ALONE),
            )
            .step(step.source(self.rule.method()))
            .step(
                Step::new(
                    "load that is left",
                    "Fleft",
                    alloc::format!("{left} * R"),
                    self.load,
                )
                .with(left, r)
                .with("R", self.resistance),
            )
    }
}

#[cfg(test)]
mod tests {
    use super::super::interaction;
    use super::super::tests::RULES;
    use super::*;
    use crate::units::newtons;
    use proptest::prelude::*;

    proptest! {
        /// The rule asked forward at the answer is just met.
        #[test]
        fn meets_the_rule(x in 0.0..=1.0f64, shank: bool) {
            let zone = if shank { Zone::Shank } else { Zone::Thread };
            let none = Ratio::from(0.0);
            for rule in RULES {
                let given = Ratio::from(x);
                let left = rule.tension_left(given, zone).unwrap();
                let both = interaction(rule, given, left, none, zone).unwrap();
                prop_assert!(both.utilisation.value <= 1.0 + 1e-9);
                prop_assert!(left.value >= 1.0 || both.utilisation.value >= 1.0 - 1e-9);
                let left = rule.shear_left(given, zone).unwrap();
                let both = interaction(rule, left, given, none, zone).unwrap();
                prop_assert!(both.utilisation.value <= 1.0 + 1e-9);
                prop_assert!(left.value >= 1.0 || both.utilisation.value >= 1.0 - 1e-9);
                let (load, rv, rt) = (newtons(1e5 * x), newtons(1e5), newtons(2e5));
                let found = rule.tension_beside(load, rv, rt, zone).unwrap();
                prop_assert!(found.derivation().check().is_ok());
            }
        }

        #[test]
        fn no_number_breaks_it(a in any::<f64>(), b in any::<f64>(), c in any::<f64>()) {
            for rule in RULES {
                for found in [
                    rule.tension_beside(newtons(a), newtons(b), newtons(c), Zone::Thread),
                    rule.shear_beside(newtons(a), newtons(b), newtons(c), Zone::Thread),
                ].into_iter().flatten() {
                    prop_assert!(found.load.is_finite() && found.load.value >= 0.0);
                }
            }
        }
    }
}
