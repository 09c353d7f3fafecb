//! Tension and shear of a bolt at once, with or without bending.
//!
//! S is the shear over what the bolt bears in shear alone, T the tension over what it bears in tension
//! alone, B the bending stress over what it bears in bending alone; all by one method and at one level
//! (design loads over design resistances, or service loads over allowable ones).
//!
//! | rule | holds while | known how |
//! |---|---|---|
//! | [`Aisc360`](InteractionRule::Aisc360) | S + T <= 1.3, S <= 1, T <= 1 | AISC 360-10 J3.7, Eq. J3-3a and J3-3b, read |
//! | [`En1993`](InteractionRule::En1993) | S + T / 1.4 <= 1, T <= 1 | EN 1993-1-8:2005 Table 3.4, read in two reproductions |
//! | [`Bs5950`](InteractionRule::Bs5950) | S + T <= 1.4, S <= 1, T <= 1 | BS 5950-1, 6.3.4.4; sum read, limits recalled |
//! | [`Is800`](InteractionRule::Is800) | S^2 + T^2 <= 1 | IS 800 10.3.6, read in a course book |
//! | [`As4100`](InteractionRule::As4100) | S^2 + T^2 <= 1 | AS 4100 9.3.2.3, recalled |
//! | [`CsaS16`](InteractionRule::CsaS16) | S^2 + T^2 <= 1 | CSA S16 13.12.1.4, read in three reference pages |
//! | [`Ellipse`](InteractionRule::Ellipse) | S^2 + (T + B)^2 <= 1 | follows from von Mises on one section; that AISC's commentary has it is recalled |
//! | [`AircraftSteel`](InteractionRule::AircraftSteel) | S^3 + (T + B)^2 <= 1 | ANC-5, MIL-HDBK-5, recalled |
//! | [`Nsts08307`](InteractionRule::Nsts08307) | (T + B / K)^2 + S^3 <= 1 | NSTS 08307 Revision A, quoted text read |
//! | [`NasaStd5020`](InteractionRule::NasaStd5020) | shank S^2.5 + (T + B)^1.5 <= 1; thread S^1.2 + (T + B)^2 <= 1 | NASA-STD-5020, Eq. 20 and 22, read as quoted with their numbers in a published comparison of methods |
//!
//! What is left of one load beside another: [`InteractionRule::tension_beside`], [`InteractionRule::shear_beside`]; with bending
//! [`InteractionRule::tension_left_bent`], [`InteractionRule::shear_left_bent`], [`InteractionRule::bending_left`]; as a
//! nominal stress of AISC 360, F'nt and F'nv, [`AiscStresses::modified_tension`], [`AiscStresses::modified_shear`].
//!
//! The utilisation is what all loads together would have to be divided by to be just carried, so it is 1
//! at the limit of every rule and doubles when the loads do. It is not the sum of the left side.
//!
//! Where thread lies in the plane the curve of NASA runs below the ellipse, for both stresses peak in
//! one section: the ellipse is not the cautious choice there. NASA's pair rests on tests of ductile
//! A-286 bolts, takes the applied tension without preload, and is not for brittle materials. Its second
//! pair of equations (21 and 23), with plastic bending as a term of its own, is not offered.

use crate::caution::Cautions;
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::math;
use crate::parts::Zone;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::tables::methods;
use crate::units::Ratio;

mod bent;
mod beside;
mod modified;
mod rule;

pub use beside::{Given, LoadBeside};
pub use modified::{AiscStresses, ModifiedStress};
pub(crate) use rule::Form;
pub use rule::InteractionRule;

/// Shear, tension and bending of one bolt together.
///
/// ```
/// use shankline::strength::interaction::{InteractionRule, interaction};
/// use shankline::{parts::Zone, units::percent};
/// # fn main() -> Result<(), shankline::Error> {
/// let none = percent(0.0);
/// let both = interaction(InteractionRule::En1993, percent(50.0), percent(70.0), none, Zone::Thread)?;
/// assert!((both.utilisation.value - 1.0).abs() < 1e-12); // 0.5 + 0.7 / 1.4
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Interaction {
    /// The rule.
    pub rule: InteractionRule,
    /// What lies in the shear plane.
    pub zone: Zone,
    /// Shear over its resistance, S.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub shear: Ratio,
    /// Tension over its resistance, T.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub tension: Ratio,
    /// Bending over its resistance, B.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub bending: Ratio,
    /// What all loads together would have to be divided by to be just carried.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub utilisation: Ratio,
}

/// Combines the ratios of shear, tension and bending.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a ratio that is negative, not finite or above a million, or a plastic
/// bending factor that is not from 1 to 2; [`Error::NoValue`] for bending under a rule that has
/// no place for it.
///
/// ```
/// use shankline::strength::interaction::{InteractionRule, interaction};
/// use shankline::{parts::Zone, units::percent};
/// # fn main() -> Result<(), shankline::Error> {
/// let rule = InteractionRule::Aisc360;
/// let both = interaction(rule, percent(44.7), percent(78.5), percent(0.0), Zone::Thread)?;
/// assert!(both.utilisation.value < 1.0);
/// assert!(interaction(rule, percent(10.0), percent(10.0), percent(5.0), Zone::Thread).is_err());
/// # Ok(())
/// # }
/// ```
pub fn interaction(
    rule: InteractionRule,
    shear: Ratio,
    tension: Ratio,
    bending: Ratio,
    zone: Zone,
) -> Result<Interaction, Error> {
    const MOST: f64 = 1e6;
    for (name, ratio) in [
        ("shear over its resistance", shear),
        ("tension over its resistance", tension),
        ("bending over its resistance", bending),
    ] {
        not_negative(name, ratio)?;
        if ratio.value > MOST {
            return Err(out_of_range(name, ratio, Allowed::AtMost(MOST.into())));
        }
    }
    let (s, t, b) = (shear.value, tension.value, bending.value);
    let form = rule.checked()?.form(zone);
    if b > 0.0 && !rule.takes_bending() {
        return Err(rule.no_place_for_bending());
    }
    let utilisation = form.utilisation(s, t, b);
    Ok(Interaction {
        rule,
        zone,
        shear,
        tension,
        bending,
        utilisation: Ratio::from(utilisation),
    })
}

/// The u for which (s / u)^a + (t / u)^b is 1, for exponents of at least 1.
///
/// The logarithm of the left side is convex in ln u and falls, and at the larger of both it is not
/// below zero: Newton's method comes from there without passing the root, in a handful of steps. The
/// logarithm is that of u over the larger.
fn divisor(s: f64, a: f64, t: f64, b: f64) -> f64 {
    if s <= 0.0 || t <= 0.0 {
        return s.max(t);
    }
    if (a - 2.0).abs() < f64::EPSILON && (b - 2.0).abs() < f64::EPSILON {
        return math::hypot(s, t);
    }
    let most = s.max(t);
    let (at_s, at_t) = (a * math::ln(s / most), b * math::ln(t / most));
    let mut log = 0.0;
    for _ in 0..50 {
        let (left, right) = (math::exp(at_s - a * log), math::exp(at_t - b * log));
        let sum = left + right;
        let step = math::ln(sum) * sum / (a * left + b * right);
        log += step;
        if step <= 1e-16 {
            break;
        }
    }
    most * math::exp(log)
}

impl Interaction {
    /// The comparison for a list of checks: utilisation beside 1.
    ///
    /// # Errors
    ///
    /// None in practice: the utilisation is finite and not negative.
    ///
    /// ```
    /// use shankline::strength::check::Level;
    /// use shankline::strength::interaction::{InteractionRule, interaction};
    /// use shankline::{parts::Zone, units::percent};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let both = interaction(InteractionRule::Ellipse, percent(60.0), percent(80.0), percent(0.0), Zone::Shank)?;
    /// assert!((both.check(Level::Allowable)?.utilisation.value - 1.0).abs() < 1e-12);
    /// # Ok(())
    /// # }
    /// ```
    pub fn check(&self, level: Level) -> Result<Check, Error> {
        let check = Check::new(
            Mode::Combined,
            Place::Joint,
            self.utilisation.value,
            1.0,
            level,
            self.rule.method(),
        )?;
        Ok(check.warned(self.cautions()))
    }

    /// What the user must be told: rules that were recalled and not read.
    ///
    /// ```
    /// use shankline::strength::interaction::{InteractionRule, interaction};
    /// use shankline::{parts::Zone, units::percent};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let ratio = percent(50.0);
    /// let steel = interaction(InteractionRule::AircraftSteel, ratio, ratio, ratio, Zone::Shank)?;
    /// assert_eq!(steel.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.rule.cautions()
    }

    /// The working: the rule at the utilisation gives its limit.
    ///
    /// ```
    /// use shankline::strength::interaction::{InteractionRule, interaction};
    /// use shankline::{parts::Zone, units::percent};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let ratio = percent(50.0);
    /// for rule in [InteractionRule::Aisc360, InteractionRule::NasaStd5020] {
    ///     interaction(rule, ratio, ratio, percent(0.0), Zone::Thread)?.derivation().check()?;
    /// }
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let source = self.rule.method();
        let derivation = Derivation::new("Tension and shear together")
            .step(
                Step::given("shear over its resistance", "S", self.shear)
                    .source(methods::SHEAR_ALONE),
            )
            .step(
                Step::given("tension over its resistance", "T", self.tension)
                    .source(methods::TENSION_ALONE),
            );
        let (s, t, b, u) = (
            self.shear.value,
            self.tension.value,
            self.bending.value,
            self.utilisation.value,
        );
        match self.rule.form(self.zone) {
            Form::Corner { sum, tension } => derivation.step(
                Step::new(
                    "utilisation",
                    "U",
                    "max(S, T, (S + T / a) / c)",
                    self.utilisation,
                )
                .with("S", s)
                .with("T", t)
                .with("a", tension)
                .with("c", sum)
                .source(source),
            ),
            Form::Powers {
                shear,
                tension,
                bending,
            } => {
                let tb = t + b / bending;
                let derivation = derivation
                    .step(
                        Step::given("bending over its resistance", "B", self.bending)
                            .source(methods::BENDING_ALONE),
                    )
                    .step(
                        Step::new("tension and bending", "TB", "T + B / K", tb)
                            .with("T", t)
                            .with("B", b)
                            .with("K", bending),
                    )
                    .step(
                        Step::given("utilisation, for which the rule gives 1", "U", u)
                            .source(source),
                    );
                if u > 0.0 {
                    let left = math::powf(s / u, shear) + math::powf(tb / u, tension);
                    derivation.step(
                        Step::new("left side of the rule", "R", "(S / U)^m + (TB / U)^n", left)
                            .with("S", s)
                            .with("U", u)
                            .with("m", shear)
                            .with("TB", tb)
                            .with("n", tension),
                    )
                } else {
                    derivation
                }
            }
        }
    }
}

#[cfg(test)]
mod tests;
