//! The nominal stress of AISC 360 beside the other load: F'nt and F'nv as values.

use super::Given;
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, positive, sane_stress};
use crate::names::AiscEdition;
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::code::aisc_360::RUPTURE;
use crate::tables::methods;
use crate::units::{Area, Force, Stress};
use alloc::format;

const METHOD: &Method = methods::AISC_360_J3_7;
const PHI: f64 = RUPTURE.0;
const OMEGA: f64 = RUPTURE.1;

/// Nominal stresses of a bolt by AISC 360 Table J3.2.
///
/// ```
/// use shankline::{strength::interaction::AiscStresses, units::ksi};
/// // Group 120 (A325), threads in the plane
/// let bolt = AiscStresses { tension: ksi(90.0), shear: ksi(54.0) };
/// assert!(bolt.shear < bolt.tension);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct AiscStresses {
    /// Fnt.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub tension: Stress,
    /// Fnv, for what lies in the shear plane.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub shear: Stress,
}

/// The nominal stress of one kind that AISC 360 leaves beside a required stress of the other.
///
/// ```
/// use shankline::strength::{check::Level, interaction::AiscStresses, shear::AiscEdition};
/// use shankline::units::{kip, ksi, square_inches};
/// # fn main() -> Result<(), shankline::Error> {
/// // AISC, Design Examples, version 16, J.3: 8.00 kip of shear on 0.442 in2
/// let bolt = AiscStresses { tension: ksi(90.0), shear: ksi(54.0) };
/// let left = bolt.modified_tension(ksi(18.1), Level::Design, AiscEdition::E2022)?;
/// assert!((left.modified - ksi(76.8)).abs() < ksi(0.05));
/// assert!((left.load(square_inches(0.442))?.get::<kip>() - 25.5).abs() < 0.05);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ModifiedStress {
    /// The nominal stresses.
    pub stresses: AiscStresses,
    /// Edition of the specification.
    pub edition: AiscEdition,
    /// Design (LRFD) or allowable (ASD).
    pub level: Level,
    /// Of which load the stress is given.
    pub given: Given,
    /// The required stress that is given: frv, or frt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub required: Stress,
    /// Whether a user note lets the combination be left out, because the given stress is at most 30 % of the available
    /// one (20 % in 2005). The formulas give no less then.
    pub left_out: bool,
    /// F'nt beside a shear, F'nv beside a tension.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub modified: Stress,
}

/// What a nominal stress is multiplied by for the available one.
fn factor(level: Level) -> Result<f64, Error> {
    match level {
        Level::Design => Ok(PHI),
        Level::Allowable => Ok(1.0 / OMEGA),
        Level::Nominal => Err(Error::NoValue {
            quantity: "modified nominal stress",
            subject: METHOD.citation.into(),
            reason: "it depends on required stresses, which are of design or of service loads",
        }),
    }
}

const fn note(edition: AiscEdition) -> (f64, &'static Method) {
    match edition {
        AiscEdition::E2005 => (0.20, methods::AISC_360_05_J3_7_USER_NOTE),
        _ => (0.30, methods::AISC_360_J3_7_USER_NOTE),
    }
}

impl AiscStresses {
    /// F'nt, the nominal tension stress of a bolt in a bearing-type joint that is sheared as well: 1.3 Fnt - (Fnt / (phi
    /// Fnv)) frv <= Fnt for design loads, 1.3 Fnt - (Omega Fnt / Fnv) frv <= Fnt for service loads.
    ///
    /// frv is the required shear stress on the area of the shank, with the shear of one plane. Source: AISC 360-10 J3.7,
    /// Eq. J3-3a and J3-3b (J3.8 in 2022).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a nominal stress outside 1 Pa to 1e6 GPa, or a required one that is negative or above
    /// what is available in shear; [`Error::NoValue`] at the nominal level.
    ///
    /// ```
    /// use shankline::strength::{check::Level, interaction::AiscStresses, shear::AiscEdition};
    /// use shankline::units::ksi;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = AiscStresses { tension: ksi(90.0), shear: ksi(54.0) };
    /// let left = bolt.modified_tension(ksi(12.1), Level::Allowable, AiscEdition::E2010)?;
    /// assert!((left.modified - ksi(76.7)).abs() < ksi(0.05));
    /// assert!(bolt.modified_tension(ksi(28.0), Level::Allowable, AiscEdition::E2010).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn modified_tension(
        self,
        required_shear: Stress,
        level: Level,
        edition: AiscEdition,
    ) -> Result<ModifiedStress, Error> {
        self.modified(Given::Shear, required_shear, level, edition)
    }

    /// F'nv, the nominal shear stress of a bolt in a bearing-type joint that is pulled as well: 1.3 Fnv - (Fnv / (phi
    /// Fnt)) frt <= Fnv for design loads, 1.3 Fnv - (Omega Fnv / Fnt) frt <= Fnv for service loads.
    ///
    /// The same rule solved for the shear. Source: AISC 360, commentary, Eq. C-J3-6a and C-J3-6b (2022).
    ///
    /// # Errors
    ///
    /// As [`modified_tension`](Self::modified_tension), with tension and shear changed over.
    ///
    /// ```
    /// use shankline::strength::{check::Level, interaction::AiscStresses, shear::AiscEdition};
    /// use shankline::units::ksi;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = AiscStresses { tension: ksi(90.0), shear: ksi(54.0) };
    /// // At 0.8 of 67.5 ksi in tension half of the shear is left.
    /// let left = bolt.modified_shear(ksi(54.0), Level::Design, AiscEdition::E2010)?;
    /// assert!((left.modified - ksi(27.0)).abs() < ksi(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn modified_shear(
        self,
        required_tension: Stress,
        level: Level,
        edition: AiscEdition,
    ) -> Result<ModifiedStress, Error> {
        self.modified(Given::Tension, required_tension, level, edition)
    }

    fn modified(
        self,
        given: Given,
        required: Stress,
        level: Level,
        edition: AiscEdition,
    ) -> Result<ModifiedStress, Error> {
        let factor = factor(level)?;
        sane_stress("nominal tension stress", self.tension)?;
        sane_stress("nominal shear stress", self.shear)?;
        let (what, own, other) = match given {
            Given::Shear => ("required shear stress", self.shear, self.tension),
            Given::Tension => ("required tension stress", self.tension, self.shear),
        };
        not_negative(what, required)?;
        let available = factor * own;
        if required > available {
            return Err(out_of_range(
                what,
                required,
                Allowed::AtMost(available.into()),
            ));
        }
        let ratio = (required / available).value;
        let modified = if ratio < 0.3 { 1.0 } else { 1.3 - ratio } * other;
        Ok(ModifiedStress {
            stresses: self,
            edition,
            level,
            given,
            required,
            left_out: ratio <= note(edition).0,
            modified: positive("modified nominal stress", modified)?,
        })
    }
}

impl ModifiedStress {
    /// The stress that is available: phi F' or F' / Omega.
    ///
    /// # Errors
    ///
    /// None in practice: the level was looked at before.
    ///
    /// ```
    /// use shankline::strength::{check::Level, interaction::AiscStresses, shear::AiscEdition};
    /// use shankline::units::ksi;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = AiscStresses { tension: ksi(90.0), shear: ksi(54.0) };
    /// let alone = bolt.modified_tension(ksi(0.0), Level::Design, AiscEdition::E2016)?;
    /// assert!((alone.available()? - ksi(67.5)).abs() < ksi(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn available(&self) -> Result<Stress, Error> {
        Ok(factor(self.level)? * self.modified)
    }

    /// The load that is available on an area: of the shank Ab, in tension; times the planes, in shear.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for an area that is not positive, or a load that overflows.
    ///
    /// ```
    /// use shankline::strength::{check::Level, interaction::AiscStresses, shear::AiscEdition};
    /// use shankline::units::{kip, ksi, square_inches};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = AiscStresses { tension: ksi(90.0), shear: ksi(54.0) };
    /// let alone = bolt.modified_tension(ksi(0.0), Level::Allowable, AiscEdition::E2016)?;
    /// assert!((alone.load(square_inches(0.442))?.get::<kip>() - 19.9).abs() < 0.05);
    /// # Ok(())
    /// # }
    /// ```
    pub fn load(&self, area: Area) -> Result<Force, Error> {
        positive("area of the shank", area)?;
        positive("available load", self.available()? * area)
    }

    /// Checks the required stress of the other kind.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a stress that is negative or not finite.
    ///
    /// ```
    /// use shankline::strength::{check::Level, interaction::AiscStresses, shear::AiscEdition};
    /// use shankline::units::ksi;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = AiscStresses { tension: ksi(90.0), shear: ksi(54.0) };
    /// let left = bolt.modified_tension(ksi(18.1), Level::Design, AiscEdition::E2022)?;
    /// assert!(left.check(ksi(52.9))?.holds()); // of 57.6 ksi
    /// assert!(!left.check(ksi(58.0))?.holds());
    /// # Ok(())
    /// # }
    /// ```
    pub fn check(&self, required: Stress) -> Result<Check, Error> {
        let available = self.available()?;
        let (mode, place) = (Mode::Combined, Place::Joint);
        let check = Check::new(mode, place, required, available, self.level, METHOD)?;
        // With both loads the resistance changes as well: no factor on the load.
        Ok(check.not_proportional())
    }

    /// The working.
    ///
    /// ```
    /// use shankline::strength::{check::Level, interaction::AiscStresses, shear::AiscEdition};
    /// use shankline::units::ksi;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = AiscStresses { tension: ksi(113.0), shear: ksi(68.0) };
    /// bolt.modified_tension(ksi(20.0), Level::Allowable, AiscEdition::E2005)?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let AiscStresses { tension, shear } = self.stresses;
        let (title, own, other, required, symbol) = match self.given {
            Given::Shear => (
                "Nominal tension stress beside a shear",
                ("Fnv", shear),
                ("Fnt", tension),
                "frv",
                "Fnt'",
            ),
            Given::Tension => (
                "Nominal shear stress beside a tension",
                ("Fnt", tension),
                ("Fnv", shear),
                "frt",
                "Fnv'",
            ),
        };
        let (factor, value, share) = match self.level {
            Level::Allowable => ("Omega", OMEGA, format!("Omega * {} / {}", other.0, own.0)),
            _ => ("phi", PHI, format!("{} / (phi * {})", other.0, own.0)),
        };
        let formula = format!("min({0}, 1.3 * {0} - {share} * {required})", other.0);
        let available = match self.level {
            Level::Allowable => format!("{symbol} / Omega"),
            _ => format!("phi * {symbol}"),
        };
        let derivation = Derivation::new(title).step(
            Step::new("modified nominal stress", symbol, formula, self.modified)
                .with(other.0, other.1)
                .with(own.0, own.1)
                .with(factor, value)
                .with(required, self.required)
                .source(METHOD),
        );
        let derivation = if self.left_out {
            let (most, method) = note(self.edition);
            derivation.step(
                Step::given(
                    "share of the available stress up to which the other may be taken alone",
                    "s",
                    most,
                )
                .source(method),
            )
        } else {
            derivation
        };
        let Ok(stress) = self.available() else {
            return derivation;
        };
        derivation.step(
            Step::new("available stress", "F", available, stress)
                .with(symbol, self.modified)
                .with(factor, value)
                .source(METHOD),
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::parts::Zone;
    use crate::strength::interaction::InteractionRule;
    use crate::units::ksi;
    use proptest::prelude::*;

    const BOLT: fn() -> AiscStresses = || AiscStresses {
        tension: ksi(90.0),
        shear: ksi(54.0),
    };

    #[test]
    fn nothing_is_left_out_without_being_small() {
        // 0.25 of 40.5 ksi: left out since 2010, not in 2005; the stress is whole either way.
        let quarter = ksi(0.25 * 40.5);
        for (edition, left_out) in [
            (AiscEdition::E2005, false),
            (AiscEdition::E2010, true),
            (AiscEdition::E2016, true),
            (AiscEdition::E2022, true),
        ] {
            let found = BOLT()
                .modified_tension(quarter, Level::Design, edition)
                .unwrap();
            assert_eq!((found.left_out, found.modified), (left_out, ksi(90.0)));
            found.derivation().check().unwrap();
        }
    }

    #[test]
    fn refusals() {
        let bolt = BOLT();
        let edition = AiscEdition::E2010;
        assert!(
            bolt.modified_tension(ksi(1.0), Level::Nominal, edition)
                .is_err()
        );
        for wrong in [-1.0, 40.6, f64::NAN, f64::INFINITY] {
            assert!(
                bolt.modified_tension(ksi(wrong), Level::Design, edition)
                    .is_err()
            );
        }
        assert!(
            bolt.modified_shear(ksi(67.6), Level::Design, edition)
                .is_err()
        );
        let none = AiscStresses {
            tension: ksi(0.0),
            ..bolt
        };
        assert!(
            none.modified_shear(ksi(0.0), Level::Design, edition)
                .is_err()
        );
        let found = bolt
            .modified_shear(ksi(60.0), Level::Design, edition)
            .unwrap();
        assert!(found.check(ksi(f64::NAN)).is_err());
        assert!(found.load(crate::units::square_inches(0.0)).is_err());
    }

    proptest! {
        /// The stress is the part of the tension resistance that the interaction leaves, and each form undoes the other.
        #[test]
        fn one_rule_in_stresses_and_in_parts(s in 0.0..=1.0f64, lrfd: bool) {
            let level = if lrfd { Level::Design } else { Level::Allowable };
            let edition = AiscEdition::E2016;
            let bolt = BOLT();
            let given = s * factor(level).unwrap() * bolt.shear;
            let found = bolt.modified_tension(given, level, edition).unwrap();
            let left = InteractionRule::Aisc360.tension_left(s.into(), Zone::Thread).unwrap();
            prop_assert!(((found.modified / bolt.tension) - left).value.abs() < 1e-12);
            found.derivation().check().unwrap();
            let back = bolt.modified_shear(found.available().unwrap(), level, edition).unwrap();
            back.derivation().check().unwrap();
            let shear = back.available().unwrap();
            prop_assert!(shear >= given * (1.0 - 1e-12));
            prop_assert!(s < 0.3 || (shear / given).value - 1.0 < 1e-12);
        }
    }

    /// J3.7: a stress of less than 30 % of what is available (20 % in 2005) need not be looked at, and from 30 % on less is left.
    #[test]
    fn what_may_be_left_out_ends_at_its_share() {
        // phi Fnv = 0.75 x 53 1/3 = 40 ksi. Of 0.3: 12 ksi; of 0.2: 8 ksi.
        let bolt = AiscStresses {
            tension: ksi(90.0),
            shear: ksi(160.0 / 3.0),
        };
        for (edition, stress, left_out, modified) in [
            (AiscEdition::E2005, 7.99, true, 90.0),
            (AiscEdition::E2005, 8.01, false, 90.0),
            (AiscEdition::E2016, 11.99, true, 90.0),
            (AiscEdition::E2016, 12.01, false, 89.9775),
            (AiscEdition::E2016, 20.0, false, 72.0),
            (AiscEdition::E2016, 40.0, false, 27.0),
        ] {
            let found = bolt
                .modified_tension(ksi(stress), Level::Design, edition)
                .unwrap();
            assert_eq!(found.left_out, left_out, "{edition:?} {stress}");
            assert!(
                (found.modified - ksi(modified)).abs() < ksi(1e-9),
                "{found:?}"
            );
        }
        for (edition, share) in [(AiscEdition::E2005, 0.20), (AiscEdition::E2016, 0.30)] {
            let limit = share * (0.75 * bolt.shear);
            let found = bolt
                .modified_tension(limit, Level::Design, edition)
                .unwrap();
            assert!(found.left_out, "{edition:?}");
        }
    }
}
