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

use core::fmt;

use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::math;
use crate::parts::Zone;
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::code::{
    aisc_360, as_4100, bs_5950, csa_s16, en_1993, is_800, mil_hdbk_5, nasa_std_5020,
};
use crate::tables::methods;
use crate::units::Ratio;

mod bent;
mod beside;
mod modified;

pub use beside::{Given, LoadBeside};
pub use modified::{AiscStresses, ModifiedStress};

/// A published rule for tension and shear at once.
///
/// ```
/// use shankline::strength::interaction::InteractionRule;
/// assert_eq!(InteractionRule::En1993.method().citation, "EN 1993-1-8:2005 Table 3.4");
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
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum InteractionRule {
    /// AISC 360 J3.7 (J3.8 in 2022), bearing type: F'nt = 1.3 Fnt - (Fnt / (phi Fnv)) frv <= Fnt. The specification
    /// lets it be left out where either ratio is at most 0.30 (0.20 in 2005); the rule gives the same there.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360,
    /// EN 1993-1-8:2005 Table 3.4.
    #[cfg_attr(feature = "serde", serde(rename = "en_1993_1_8"))]
    En1993,
    /// BS 5950-1, 6.3.4.4, for non-preloaded bolts.
    #[cfg_attr(feature = "serde", serde(rename = "bs_5950"))]
    Bs5950,
    /// IS 800:2007, 10.3.6: the ellipse, without a place for bending.
    #[cfg_attr(feature = "serde", serde(rename = "is_800"))]
    Is800,
    /// AS 4100, 9.3.2.3: the ellipse, without a place for bending.
    #[cfg_attr(feature = "serde", serde(rename = "as_4100"))]
    As4100,
    /// CSA S16, 13.12.1.4: the ellipse, without a place for bending.
    #[cfg_attr(feature = "serde", serde(rename = "csa_s16"))]
    CsaS16,
    /// The ellipse: von Mises stress where one section carries both.
    Ellipse,
    /// Steel aircraft bolts, shank in the plane.
    AircraftSteel,
    /// Space shuttle criteria for preloaded bolts.
    #[cfg_attr(feature = "serde", serde(rename = "nsts_08307"))]
    Nsts08307 {
        /// Plastic bending factor K: 1 at the least preload; at the greatest from the stress-strain
        /// curve, with a permanent strain of at most 0.2 %.
        plastic_bending_factor: f64,
    },
    /// NASA-STD-5020 Eq. 20 and 22, exponents by what lies in the shear plane; bending without plastic
    /// reserve. Read as quoted, not in the standard itself.
    #[cfg_attr(feature = "serde", serde(rename = "nasa_std_5020"))]
    NasaStd5020,
}

impl InteractionRule {
    /// The rule, if the numbers in it are in their ranges; [`interaction`] checks them too, but only where the rule
    /// is used.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a plastic bending factor that is not from 1 to 2.
    ///
    /// ```
    /// use shankline::strength::interaction::InteractionRule;
    /// assert!(InteractionRule::Nsts08307 { plastic_bending_factor: -3.0 }.checked().is_err());
    /// ```
    pub fn checked(self) -> Result<Self, Error> {
        match self {
            Self::Nsts08307 {
                plastic_bending_factor: factor,
            } if !(1.0..=2.0).contains(&factor) => {
                let allowed = Allowed::FromTo(1.0.into(), 2.0.into());
                Err(out_of_range("plastic bending factor", factor, allowed))
            }
            _ => Ok(self),
        }
    }

    /// Publisher, edition and clause.
    ///
    /// ```
    /// use shankline::strength::interaction::InteractionRule;
    /// assert_eq!(InteractionRule::Ellipse.method().citation, "ellipse (von Mises on one section)");
    /// ```
    #[must_use]
    pub const fn method(self) -> &'static Method {
        match self {
            Self::Aisc360 => methods::AISC_360_J3_7,
            Self::En1993 => methods::EN_1993_1_8_2005_TABLE_3_4,
            Self::Bs5950 => methods::BS_5950_1_2000_6_3_4_4,
            Self::Is800 => methods::IS_800_2007_10_3_6,
            Self::As4100 => methods::AS_4100_9_3_2_3,
            Self::CsaS16 => methods::CSA_S16_13_12_1_4,
            Self::Ellipse => methods::ELLIPSE,
            Self::AircraftSteel => methods::MIL_HDBK_5_STEEL_AIRCRAFT_BOLTS,
            Self::Nsts08307 { .. } => methods::NSTS_08307_REVISION_A,
            Self::NasaStd5020 => methods::NASA_STD_5020_EQ_20_AND_22,
        }
    }

    /// Its form for what lies in the shear plane.
    pub(crate) const fn form(self, zone: Zone) -> Form {
        match self {
            Self::Aisc360 => aisc_360::INTERACTION,
            Self::En1993 => en_1993::INTERACTION,
            Self::Bs5950 => bs_5950::INTERACTION,
            Self::Is800 => is_800::INTERACTION,
            Self::As4100 => as_4100::INTERACTION,
            Self::CsaS16 => csa_s16::INTERACTION,
            Self::Ellipse => Form::ELLIPSE,
            Self::AircraftSteel => mil_hdbk_5::INTERACTION,
            Self::Nsts08307 {
                plastic_bending_factor,
            } => nasa_std_5020::nsts_08307(plastic_bending_factor),
            Self::NasaStd5020 => nasa_std_5020::interaction(zone),
        }
    }

    /// Whether the rule has a place for bending of the bolt.
    const fn takes_bending(self) -> bool {
        matches!(
            self,
            Self::Ellipse | Self::AircraftSteel | Self::Nsts08307 { .. } | Self::NasaStd5020
        )
    }

    fn cautions(self) -> Cautions {
        let recalled = match self {
            Self::Aisc360
            | Self::En1993
            | Self::Ellipse
            | Self::Nsts08307 { .. }
            | Self::NasaStd5020 => None,
            Self::Is800 | Self::As4100 | Self::CsaS16 => Some(self.method()),
            Self::Bs5950 => Some(methods::THE_LIMITS_OF_BS_5950_1_6_3_4_4),
            Self::AircraftSteel => Some(methods::THE_EXPONENTS_OF_MIL_HDBK_5),
        };
        Cautions::default().with(recalled.and_then(Caution::of_method))
    }
}

impl fmt::Display for InteractionRule {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.method().citation)
    }
}

/// The two shapes the rules have.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Form {
    /// S + T / tension <= sum, with S <= 1 and T <= 1.
    Corner { sum: f64, tension: f64 },
    /// S^shear + (T + B / bending)^tension <= 1.
    Powers {
        shear: f64,
        tension: f64,
        bending: f64,
    },
}

impl Form {
    /// The ellipse.
    pub(crate) const ELLIPSE: Self = Self::powers(2.0, 2.0, 1.0);

    pub(crate) const fn powers(shear: f64, tension: f64, bending: f64) -> Self {
        Self::Powers {
            shear,
            tension,
            bending,
        }
    }

    /// What ratios of shear, tension and bending come to together.
    #[inline]
    pub(crate) fn utilisation(self, s: f64, t: f64, b: f64) -> f64 {
        match self {
            Self::Corner { sum, tension } => s.max(t).max((s + t / tension) / sum),
            Self::Powers {
                shear,
                tension,
                bending,
            } => divisor(s, shear, t + b / bending, tension),
        }
    }
}

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
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn rules() -> [InteractionRule; 10] {
        [
            InteractionRule::Aisc360,
            InteractionRule::En1993,
            InteractionRule::Bs5950,
            InteractionRule::Is800,
            InteractionRule::As4100,
            InteractionRule::CsaS16,
            InteractionRule::Ellipse,
            InteractionRule::AircraftSteel,
            InteractionRule::Nsts08307 {
                plastic_bending_factor: 1.5,
            },
            InteractionRule::NasaStd5020,
        ]
    }

    fn used(rule: InteractionRule, s: f64, t: f64, zone: Zone) -> f64 {
        let none = Ratio::from(0.0);
        let both = interaction(rule, Ratio::from(s), Ratio::from(t), none, zone).unwrap();
        both.utilisation.value
    }

    /// Allowed T for a given S, worked out apart from this crate.
    #[test]
    fn meets_the_allowed_tension_of_each_rule() {
        use InteractionRule as R;
        for (rule, zone, cells) in [
            (R::Ellipse, Zone::Shank, [0.980, 0.954, 0.866, 0.714, 0.436]),
            // The same by hand, sqrt(1 - S^2), for want of a worked example.
            (R::Is800, Zone::Thread, [0.980, 0.954, 0.866, 0.714, 0.436]),
            (R::As4100, Zone::Thread, [0.980, 0.954, 0.866, 0.714, 0.436]),
            (R::CsaS16, Zone::Thread, [0.980, 0.954, 0.866, 0.714, 0.436]),
            (
                R::AircraftSteel,
                Zone::Shank,
                [0.996, 0.986, 0.935, 0.811, 0.521],
            ),
            (
                R::NasaStd5020,
                Zone::Shank,
                [0.988, 0.967, 0.878, 0.703, 0.377],
            ),
            (
                R::NasaStd5020,
                Zone::Thread,
                [0.925, 0.874, 0.751, 0.590, 0.345],
            ),
            (R::En1993, Zone::Shank, [1.000, 0.980, 0.700, 0.420, 0.140]),
            (R::Aisc360, Zone::Shank, [1.000, 1.000, 0.800, 0.600, 0.400]),
            (R::Bs5950, Zone::Shank, [1.000, 1.000, 0.900, 0.700, 0.500]),
        ] {
            for (s, t) in [0.2, 0.3, 0.5, 0.7, 0.9].into_iter().zip(cells) {
                assert!(
                    (used(rule, s, t, zone) - 1.0).abs() < 0.001,
                    "{rule} {s} {t}"
                );
            }
        }
    }

    /// Loads of any ratio: the left side of the rule is 1 at the answer, and bisection finds the same.
    #[test]
    fn divisor_solves_the_rule() {
        for (a, b) in [(3.0, 2.0), (2.5, 1.5), (1.2, 2.0)] {
            for i in -40..=40 {
                let (s, t) = (1.0, math::powf(10.0, f64::from(i) / 4.0));
                let u = divisor(s, a, t, b);
                let left = math::powf(s / u, a) + math::powf(t / u, b);
                assert!((left - 1.0).abs() < 1e-14, "{a} {b} {t}");
                let (mut low, mut high) = (s.max(t), s + t);
                for _ in 0..60 {
                    let middle = f64::midpoint(low, high);
                    if math::powf(s / middle, a) + math::powf(t / middle, b) > 1.0 {
                        low = middle;
                    } else {
                        high = middle;
                    }
                }
                assert!((u / low - 1.0).abs() < 1e-14, "{a} {b} {t}");
            }
        }
    }

    proptest! {
        #[test]
        fn scales_with_the_loads_and_rises_with_each(
            s in 0.0..3.0f64, t in 0.0..3.0f64, b in 0.0..1.0f64, k in 0.01..100.0f64, thread: bool,
        ) {
            let zone = if thread { Zone::Thread } else { Zone::Shank };
            for rule in rules() {
                let one = used(rule, s, t, zone);
                prop_assert!((used(rule, k * s, k * t, zone) - k * one).abs() <= 1e-12 * k * one);
                prop_assert!(one >= s.max(t) * (1.0 - 1e-12) && one <= (s + t) * (1.0 + 1e-12));
                prop_assert!(used(rule, s + b, t, zone) >= one * (1.0 - 1e-12));
                prop_assert!(used(rule, s, t + b, zone) >= one * (1.0 - 1e-12));
                let ratio = Ratio::from;
                if let Ok(bent) = interaction(rule, ratio(s), ratio(t), ratio(b), zone) {
                    prop_assert!(bent.utilisation.value >= one * (1.0 - 1e-12));
                    prop_assert!(bent.derivation().check().is_ok());
                }
            }
        }

        #[test]
        fn no_number_breaks_it(s in any::<f64>(), t in any::<f64>(), b in any::<f64>(), k in any::<f64>()) {
            let ratio = Ratio::from;
            let odd = InteractionRule::Nsts08307 { plastic_bending_factor: k };
            for rule in rules().into_iter().chain([odd]) {
                if let Ok(both) = interaction(rule, ratio(s), ratio(t), ratio(b), Zone::Thread) {
                    prop_assert!(both.utilisation.value.is_finite());
                    prop_assert!(both.check(Level::Design).is_ok());
                }
            }
        }
    }

    #[test]
    fn ratios_to_a_million_are_taken() {
        let ratio = Ratio::from;
        for (value, good) in [
            (0.0, true),
            (999_999.0, true),
            (1e6, true),
            (1.01e6, false),
            (2e6, false),
        ] {
            for [s, t, b] in [[value, 0.0, 0.0], [0.0, value, 0.0], [0.0, 0.0, value]] {
                let found = interaction(
                    InteractionRule::NasaStd5020,
                    ratio(s),
                    ratio(t),
                    ratio(b),
                    Zone::Shank,
                );
                assert_eq!(found.is_ok(), good, "{s} {t} {b}");
            }
        }
    }

    /// NSTS 08307: S^3 + (T + B / K)^2 = 1 with a plastic bending factor K.
    #[test]
    fn bending_counts_over_the_plastic_factor() {
        let ratio = Ratio::from;
        let rule = InteractionRule::Nsts08307 {
            plastic_bending_factor: 1.5,
        };
        for (s, t, b, u) in [
            (0.0, 0.3, 0.6, 0.7),
            (0.0, 0.0, 1.2, 0.8),
            (0.0, 0.0, 3.0, 2.0),
            // (1/2)^(2/3) cubed is 1/4, and sqrt(3/4) = 0.5 + 0.549 / 1.5.
            (
                0.629_960_524_947_436_6,
                0.5,
                1.5 * 0.366_025_403_784_438_6,
                1.0,
            ),
        ] {
            let found = interaction(rule, ratio(s), ratio(t), ratio(b), Zone::Shank).unwrap();
            assert!((found.utilisation.value - u).abs() < 1e-12, "{found:?}");
        }
        let none = interaction(rule, ratio(0.0), ratio(0.0), ratio(0.0), Zone::Shank).unwrap();
        assert_eq!(none.utilisation, ratio(0.0));
        none.derivation().check().unwrap();
    }
}
