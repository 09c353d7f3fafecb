//! What is left where the bolt bends as well: the inverse of each rule that has a place for bending.

use alloc::string::ToString;

use super::beside::part;
use super::{Form, InteractionRule};
use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::parts::Zone;
use crate::units::Ratio;

/// What rounding leaves of a sum that is 1.
const ROUNDING: f64 = 1e-12;

impl InteractionRule {
    /// The part of the tension resistance that is left beside a shear and a bending of the bolt, S and B times what it bears of
    /// each alone: (1 - S^m)^(1/n) - B / K of a rule S^m + (T + B / K)^n <= 1. Derived from the [rule](super::interaction).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a ratio that is not from 0 to 1 (a bending: from 0 to K), a bending that is more than is left
    /// beside the shear, or a number of the rule out of its range; [`Error::NoValue`] for bending under a rule that has no place for
    /// it.
    ///
    /// ```
    /// use shankline::{parts::Zone, strength::interaction::InteractionRule, units::percent};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let rule = InteractionRule::Ellipse;
    /// let left = rule.tension_left_bent(percent(60.0), percent(30.0), Zone::Shank)?;
    /// assert!((left.value - 0.5).abs() < 1e-12); // 0.6^2 + (0.5 + 0.3)^2 = 1
    /// assert!(rule.tension_left_bent(percent(60.0), percent(81.0), Zone::Shank).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn tension_left_bent(
        self,
        shear: Ratio,
        bending: Ratio,
        zone: Zone,
    ) -> Result<Ratio, Error> {
        let room = self.tension_left(shear, zone)?.value;
        let (taken, factor) = self.taken(bending, zone)?;
        if taken > room + ROUNDING {
            let allowed = Allowed::AtMost((factor * room).into());
            return Err(out_of_range(
                "bending over its resistance",
                bending,
                allowed,
            ));
        }
        Ok(Ratio::from((room - taken).max(0.0)))
    }

    /// The part of the shear resistance that is left beside a tension and a bending of the bolt: (1 - (T + B / K)^n)^(1/m).
    ///
    /// # Errors
    ///
    /// As [`tension_left_bent`](Self::tension_left_bent); for a bending that is more than is left beside the tension.
    ///
    /// ```
    /// use shankline::{parts::Zone, strength::interaction::InteractionRule, units::percent};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let rule = InteractionRule::Ellipse;
    /// let left = rule.shear_left_bent(percent(50.0), percent(30.0), Zone::Shank)?;
    /// assert!((left.value - 0.6).abs() < 1e-12);
    /// # Ok(())
    /// # }
    /// ```
    pub fn shear_left_bent(
        self,
        tension: Ratio,
        bending: Ratio,
        zone: Zone,
    ) -> Result<Ratio, Error> {
        let t = part("tension over its resistance", tension)?;
        let (taken, factor) = self.taken(bending, zone)?;
        if t + taken > 1.0 + ROUNDING {
            let allowed = Allowed::AtMost((factor * (1.0 - t)).into());
            return Err(out_of_range(
                "bending over its resistance",
                bending,
                allowed,
            ));
        }
        self.shear_left(Ratio::from((t + taken).min(1.0)), zone)
    }

    /// The part of the bending resistance that is left beside a shear and a tension of the bolt: K ((1 - S^m)^(1/n) - T). With a
    /// plastic bending factor it may be over 1.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a ratio that is not from 0 to 1, a tension that is more than is left beside the shear, or a number
    /// of the rule out of its range; [`Error::NoValue`] of a rule that has no place for bending.
    ///
    /// ```
    /// use shankline::{parts::Zone, strength::interaction::InteractionRule, units::percent};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let rule = InteractionRule::Nsts08307 { plastic_bending_factor: 1.5 };
    /// let left = rule.bending_left(percent(0.0), percent(40.0), Zone::Shank)?;
    /// assert!((left.value - 0.9).abs() < 1e-12); // 1.5 x (1 - 0.4)
    /// assert!(InteractionRule::Aisc360.bending_left(percent(0.0), percent(40.0), Zone::Shank).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn bending_left(self, shear: Ratio, tension: Ratio, zone: Zone) -> Result<Ratio, Error> {
        let room = self.tension_left(shear, zone)?.value;
        let t = part("tension over its resistance", tension)?;
        let factor = match self.form(zone) {
            Form::Powers { bending, .. } if self.takes_bending() => bending,
            _ => return Err(self.no_place_for_bending()),
        };
        if t > room + ROUNDING {
            let allowed = Allowed::AtMost(room.into());
            return Err(out_of_range(
                "tension over its resistance",
                tension,
                allowed,
            ));
        }
        Ok(Ratio::from((factor * (room - t)).max(0.0)))
    }

    /// What a bending takes of the tension, B / K, and K.
    fn taken(self, bending: Ratio, zone: Zone) -> Result<(f64, f64), Error> {
        not_negative("bending over its resistance", bending)?;
        match self.checked()?.form(zone) {
            Form::Powers {
                bending: factor, ..
            } if self.takes_bending() => Ok((bending.value / factor, factor)),
            _ if bending.value > 0.0 => Err(self.no_place_for_bending()),
            _ => Ok((0.0, 1.0)),
        }
    }

    /// The refusal of rules without bending.
    #[cold]
    pub(super) fn no_place_for_bending(self) -> Error {
        Error::NoValue {
            quantity: "rule for bending beside tension and shear",
            subject: self.to_string(),
            reason: "it has no place for bending; take a rule that has, or carry it elsewhere",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::interaction;
    use super::*;
    use crate::math::powf;
    use proptest::prelude::*;

    const RULES: [InteractionRule; 4] = [
        InteractionRule::Ellipse,
        InteractionRule::AircraftSteel,
        InteractionRule::Nsts08307 {
            plastic_bending_factor: 1.5,
        },
        InteractionRule::NasaStd5020,
    ];

    fn ratio(value: f64) -> Ratio {
        Ratio::from(value)
    }

    /// A refusal says how much bending there may be beside the rest.
    #[test]
    fn refusals_tell_what_is_left() {
        let most = |answer: Result<Ratio, Error>| match answer {
            Err(Error::OutOfRange {
                allowed: Allowed::AtMost(most),
                ..
            }) => most,
            other => panic!("{other:?}"),
        };
        let rule = InteractionRule::Nsts08307 {
            plastic_bending_factor: 1.5,
        };
        let shank = Zone::Shank;
        // By hand: 1.5 x (1 - 0.4) beside the tension, and no shear.
        let beside = most(rule.shear_left_bent(ratio(0.4), ratio(0.95), shank));
        assert!((beside.base() - 0.9).abs() < 1e-12, "{beside}");
        let beside = most(rule.tension_left_bent(ratio(0.0), ratio(1.6), shank));
        assert!((beside.base() - 1.5).abs() < 1e-12, "{beside}");
        // 0.6^2 + 0.8^2 = 1.
        let beside =
            most(InteractionRule::Ellipse.tension_left_bent(ratio(0.6), ratio(0.9), shank));
        assert!((beside.base() - 0.8).abs() < 1e-12, "{beside}");
    }

    proptest! {
        /// The rule asked forward at the answer is just met; beyond what is left it refuses, and is passed.
        #[test]
        fn meets_the_rule(x in 0.0..=1.0f64, y in 0.0..1.5f64, shank: bool) {
            let zone = if shank { Zone::Shank } else { Zone::Thread };
            for rule in RULES {
                let used = |s, t, b| {
                    interaction(rule, ratio(s), ratio(t), ratio(b), zone).unwrap().utilisation.value
                };
                match rule.tension_left_bent(ratio(x), ratio(y), zone) {
                    Ok(left) => prop_assert!((used(x, left.value, y) - 1.0).abs() < 1e-9),
                    Err(_) => prop_assert!(used(x, 0.0, y) > 1.0),
                }
                match rule.shear_left_bent(ratio(x), ratio(y), zone) {
                    Ok(left) => prop_assert!((used(left.value, x, y) - 1.0).abs() < 1e-9),
                    Err(_) => prop_assert!(used(0.0, x, y) > 1.0),
                }
                let t = y.min(1.0);
                match rule.bending_left(ratio(x), ratio(t), zone) {
                    Ok(left) => prop_assert!((used(x, t, left.value) - 1.0).abs() < 1e-9),
                    Err(_) => prop_assert!(used(x, t, 0.0) > 1.0),
                }
            }
        }

        #[test]
        fn no_number_breaks_it(a in any::<f64>(), b in any::<f64>()) {
            for rule in RULES.into_iter().chain([InteractionRule::En1993, InteractionRule::Is800]) {
                for found in [
                    rule.tension_left_bent(ratio(a), ratio(b), Zone::Thread),
                    rule.shear_left_bent(ratio(a), ratio(b), Zone::Thread),
                    rule.bending_left(ratio(a), ratio(b), Zone::Thread),
                ].into_iter().flatten() {
                    prop_assert!((0.0..=2.0).contains(&found.value));
                }
            }
        }
    }

    /// By hand: 0.5^3 + (T + 0.3 / 1.5)^2 = 1 at T = 0.735414; without bending the rules without a place for it answer too.
    #[test]
    fn by_hand() {
        let nsts = InteractionRule::Nsts08307 {
            plastic_bending_factor: 1.5,
        };
        let left = nsts.tension_left_bent(ratio(0.5), ratio(0.3), Zone::Shank);
        assert!((left.unwrap().value - (powf(0.875, 0.5) - 0.2)).abs() < 1e-12);
        for rule in [InteractionRule::Aisc360, InteractionRule::Is800] {
            let (half, none) = (ratio(0.5), ratio(0.0));
            let same = rule.tension_left(half, Zone::Thread);
            assert_eq!(rule.tension_left_bent(half, none, Zone::Thread), same);
            let same = rule.shear_left(half, Zone::Thread);
            assert_eq!(rule.shear_left_bent(half, none, Zone::Thread), same);
            assert!(
                rule.tension_left_bent(half, ratio(0.1), Zone::Thread)
                    .is_err()
            );
            assert!(
                rule.shear_left_bent(half, ratio(0.1), Zone::Thread)
                    .is_err()
            );
            assert!(rule.bending_left(half, none, Zone::Thread).is_err());
        }
    }
}
