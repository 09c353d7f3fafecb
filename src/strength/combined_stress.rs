//! Tension and shear of a bolt at once by the theories of strength, as textbooks size it.
//!
//! Of a normal stress s and a shear stress t on one section, and of a tension T and a shear V on one area:
//!
//! | theory | equivalent stress | equivalent tension Te |
//! |---|---|---|
//! | [`GreatestPrincipal`](StressTheory::GreatestPrincipal) (Rankine) | (s + sqrt(s^2 + 4 t^2)) / 2 | (T + sqrt(T^2 + 4 V^2)) / 2 |
//! | [`GreatestShear`](StressTheory::GreatestShear) (Tresca, Guest) | sqrt(s^2 + 4 t^2), twice the greatest shear | sqrt(T^2 + 4 V^2) |
//! | [`DistortionEnergy`](StressTheory::DistortionEnergy) (von Mises) | sqrt(s^2 + 3 t^2) | sqrt(T^2 + 3 V^2) |
//!
//! Te alone would strain the bolt as much as T and V do together: hold it against the allowable tensile stress, or
//! size the bolt by it with [`EquivalentTension::demand`]. By greatest shear, half of Te may be held against the
//! allowable shear stress: [`EquivalentTension::shear_demand`].
//!
//! Rankine's theory is for brittle materials; for bolts of steel textbooks take one of the others. Tresca is the
//! most cautious of the three. Codes have rules of their own: see [`interaction`](super::interaction).

use core::fmt;

use super::sizing::Demand;
use crate::derivation::{Derivation, Step};
use crate::error::{Error, not_negative, within};
use crate::math;
use crate::source::Method;
use crate::tables::methods;
use crate::units::{Force, Stress, from_base, megapascals, newtons};

/// A theory of strength.
///
/// ```
/// use shankline::strength::combined_stress::StressTheory;
/// assert_eq!(StressTheory::GreatestShear.to_string(), "greatest shear stress (Tresca)");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum StressTheory {
    /// Greatest principal stress (Rankine).
    GreatestPrincipal,
    /// Greatest shear stress (Tresca, Guest).
    GreatestShear,
    /// Distortion energy (von Mises).
    DistortionEnergy,
}

impl StressTheory {
    /// The theory, as workings cite it.
    ///
    /// ```
    /// use shankline::strength::combined_stress::StressTheory;
    /// assert_eq!(StressTheory::DistortionEnergy.method().citation, "distortion energy (von Mises)");
    /// ```
    #[must_use]
    pub const fn method(self) -> &'static Method {
        match self {
            Self::GreatestPrincipal => methods::GREATEST_PRINCIPAL_STRESS_RANKINE,
            Self::GreatestShear => methods::GREATEST_SHEAR_STRESS_TRESCA,
            Self::DistortionEnergy => methods::DISTORTION_ENERGY_VON_MISES,
        }
    }

    fn of(self, direct: f64, shear: f64) -> f64 {
        match self {
            Self::GreatestPrincipal => f64::midpoint(direct, math::hypot(direct, 2.0 * shear)),
            Self::GreatestShear => math::hypot(direct, 2.0 * shear),
            Self::DistortionEnergy => math::hypot(direct, math::sqrt(3.0) * shear),
        }
    }

    const fn formula(self) -> &'static str {
        match self {
            Self::GreatestPrincipal => "(T + sqrt(T^2 + 4 * V^2)) / 2",
            Self::GreatestShear => "sqrt(T^2 + 4 * V^2)",
            Self::DistortionEnergy => "sqrt(T^2 + 3 * V^2)",
        }
    }
}

impl fmt::Display for StressTheory {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.method().citation)
    }
}

/// The state of stress of a section under a normal and a shear stress.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::combined_stress::{CombinedStress, StressTheory};
/// # fn main() -> Result<(), shankline::Error> {
/// let state = CombinedStress::new(megapascals(60.0), megapascals(40.0))?;
/// assert!((state.greatest_shear - megapascals(50.0)).abs() < megapascals(1e-9));
/// assert!((state.greatest_principal - megapascals(80.0)).abs() < megapascals(1e-9));
/// assert!((state.least_principal + megapascals(20.0)).abs() < megapascals(1e-9));
/// assert!((state.von_mises - megapascals(91.65)).abs() < megapascals(0.005));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CombinedStress {
    /// Normal stress s, tension.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub normal: Stress,
    /// Shear stress t.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub shear: Stress,
    /// Greatest shear stress, sqrt(s^2 + 4 t^2) / 2.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub greatest_shear: Stress,
    /// Greatest principal stress, (s + sqrt(s^2 + 4 t^2)) / 2.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub greatest_principal: Stress,
    /// Least principal stress, (s - sqrt(s^2 + 4 t^2)) / 2: a compression.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub least_principal: Stress,
    /// Von Mises stress, sqrt(s^2 + 3 t^2).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub von_mises: Stress,
}

/// Refuses what is not zero and not from least to most: the square of less would vanish.
fn none_or<Q>(what: &'static str, value: Q, least: Q, most: Q) -> Result<Q, Error>
where
    Q: Copy + PartialOrd + Into<crate::error::Amount> + crate::error::Finite,
{
    not_negative(what, value)?;
    if value.raw() > 0.0 {
        within(what, value, least, most)
    } else {
        Ok(value)
    }
}

impl CombinedStress {
    /// The state of stress; either stress may be zero.
    ///
    /// Source: statics (Mohr's circle).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a stress that is not zero and not from 1 Pa to 1e6 GPa.
    ///
    /// ```
    /// use shankline::{strength::combined_stress::CombinedStress, units::megapascals};
    /// assert!(CombinedStress::new(megapascals(-60.0), megapascals(40.0)).is_err());
    /// ```
    pub fn new(normal: Stress, shear: Stress) -> Result<Self, Error> {
        let (least, most) = (megapascals(1e-6), megapascals(1e9));
        none_or("normal stress", normal, least, most)?;
        none_or("shear stress", shear, least, most)?;
        let by =
            |theory: StressTheory| -> Stress { from_base(theory.of(normal.value, shear.value)) };
        let circle = by(StressTheory::GreatestShear);
        Ok(Self {
            normal,
            shear,
            greatest_shear: 0.5 * circle,
            greatest_principal: by(StressTheory::GreatestPrincipal),
            least_principal: 0.5 * (normal - circle),
            von_mises: by(StressTheory::DistortionEnergy),
        })
    }

    /// The uniaxial tension that a theory puts in the place of both stresses: by greatest shear it is twice
    /// [`greatest_shear`](Self::greatest_shear).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::combined_stress::{CombinedStress, StressTheory};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let state = CombinedStress::new(megapascals(60.0), megapascals(40.0))?;
    /// assert!((state.equivalent(StressTheory::GreatestShear) - megapascals(100.0)).abs() < megapascals(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn equivalent(&self, theory: StressTheory) -> Stress {
        match theory {
            StressTheory::GreatestPrincipal => self.greatest_principal,
            StressTheory::GreatestShear => 2.0 * self.greatest_shear,
            StressTheory::DistortionEnergy => self.von_mises,
        }
    }

    /// The working.
    ///
    /// ```
    /// use shankline::{strength::combined_stress::CombinedStress, units::megapascals};
    /// let state = CombinedStress::new(megapascals(60.0), megapascals(40.0)).unwrap();
    /// state.derivation().check().unwrap();
    /// ```
    pub fn derivation(&self) -> Derivation {
        let step = |what, symbol, formula, value: Stress| {
            Step::new(what, symbol, formula, value)
                .with("s", self.normal)
                .with("t", self.shear)
        };
        let with_source = |step: Step| step.source(methods::STATICS_MOHRS_CIRCLE);
        Derivation::new("Stresses together")
            .step(Step::given("normal stress", "s", self.normal))
            .step(Step::given("shear stress", "t", self.shear))
            .step(with_source(step(
                "greatest shear stress",
                "tmax",
                "sqrt(s^2 + 4 * t^2) / 2",
                self.greatest_shear,
            )))
            .step(with_source(step(
                "greatest principal stress",
                "s1",
                "(s + sqrt(s^2 + 4 * t^2)) / 2",
                self.greatest_principal,
            )))
            .step(with_source(step(
                "least principal stress",
                "s2",
                "(s - sqrt(s^2 + 4 * t^2)) / 2",
                self.least_principal,
            )))
            .step(
                step(
                    "von Mises stress",
                    "se",
                    "sqrt(s^2 + 3 * t^2)",
                    self.von_mises,
                )
                .source(methods::DISTORTION_ENERGY),
            )
    }
}

/// The tension that a theory puts in the place of a tension and a shear on one section.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::combined_stress::{EquivalentTension, StressTheory};
/// # fn main() -> Result<(), shankline::Error> {
/// // A bolt pulled with 20 kN and sheared with 10 kN, 100 MPa allowed, by greatest shear: 18.98 mm
/// let both = EquivalentTension::new(StressTheory::GreatestShear, newtons(20e3), newtons(10e3))?;
/// assert!((both.load - newtons(28_284.0)).abs() < newtons(0.5));
/// let least = both.demand(megapascals(100.0))?.least_diameter()?;
/// assert!((least.diameter - millimetres(18.98)).abs() < millimetres(0.005));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct EquivalentTension {
    /// The theory.
    pub theory: StressTheory,
    /// Tension T of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tension: Force,
    /// Shear V of the bolt, on the section that has the tension.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub shear: Force,
    /// Equivalent tension Te.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub load: Force,
}

impl EquivalentTension {
    /// Equivalent tension of a bolt; either load may be zero.
    ///
    /// Source: statics, each theory as in any textbook of the strength of materials.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is not zero and not from 1e-6 to 1e15 N.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::combined_stress::{EquivalentTension, StressTheory};
    /// let theory = StressTheory::DistortionEnergy;
    /// let both = EquivalentTension::new(theory, newtons(20e3), newtons(10e3)).unwrap();
    /// assert!((both.load - newtons(26_458.0)).abs() < newtons(0.5));
    /// ```
    pub fn new(theory: StressTheory, tension: Force, shear: Force) -> Result<Self, Error> {
        let (least, most) = (newtons(1e-6), newtons(1e15));
        none_or("tension", tension, least, most)?;
        none_or("shear", shear, least, most)?;
        Ok(Self {
            theory,
            tension,
            shear,
            load: from_base(theory.of(tension.value, shear.value)),
        })
    }

    /// The equivalent shear Te / 2 of the theory of greatest shear stress: the area carries it at the allowable
    /// shear stress.
    ///
    /// ```
    /// # use shankline::{prelude::*, strength::combined_stress::{EquivalentTension, StressTheory}};
    /// let theory = StressTheory::GreatestShear;
    /// let both = EquivalentTension::new(theory, newtons(6e3), newtons(4e3)).unwrap();
    /// assert!((both.equivalent_shear().unwrap() - newtons(5e3)).abs() < newtons(1e-9));
    /// ```
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for the other theories, which hold no shear stress against a limit.
    pub fn equivalent_shear(&self) -> Result<Force, Error> {
        if self.theory == StressTheory::GreatestShear {
            Ok(0.5 * self.load)
        } else {
            Err(Error::NoValue {
                quantity: "equivalent shear",
                subject: self.theory.method().citation.into(),
                reason: "it holds no shear stress against a limit; take the equivalent tension",
            })
        }
    }

    /// The sizing that follows from an allowable tensile stress: least diameter, least thread.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if there is no load, or for a stress that is not from 1 Pa to 1e6 GPa.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::combined_stress::{EquivalentTension, StressTheory};
    /// use shankline::strength::{sizing::ThreadSeries, stressed::BoltSection};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let both = EquivalentTension::new(StressTheory::GreatestPrincipal, newtons(20e3), newtons(10e3))?;
    /// let bolt = both.demand(megapascals(100.0))?.least_thread(ThreadSeries::METRIC_COARSE, BoltSection::Core)?;
    /// assert_eq!(bolt.thread.to_string(), "M22"); // 241.4 mm2; the core of M20 has 225.2 mm2
    /// # Ok(())
    /// # }
    /// ```
    pub fn demand(&self, allowable: Stress) -> Result<Demand, Error> {
        Demand::new(self.load, allowable)
    }

    /// The sizing that follows from an allowable shear stress, by the theory of greatest shear stress.
    ///
    /// # Errors
    ///
    /// As [`demand`](Self::demand) and [`equivalent_shear`](Self::equivalent_shear).
    ///
    /// ```
    /// # use shankline::{prelude::*, strength::combined_stress::{EquivalentTension, StressTheory}};
    /// let theory = StressTheory::GreatestShear;
    /// let both = EquivalentTension::new(theory, newtons(6e3), newtons(4e3)).unwrap();
    /// let area = both.shear_demand(megapascals(50.0)).unwrap().area();
    /// assert!((area - square_millimetres(100.0)).abs() < square_millimetres(1e-9));
    /// ```
    pub fn shear_demand(&self, allowable_shear: Stress) -> Result<Demand, Error> {
        Demand::new(self.equivalent_shear()?, allowable_shear)
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::{prelude::*, strength::combined_stress::{EquivalentTension, StressTheory}};
    /// let theory = StressTheory::GreatestPrincipal;
    /// let both = EquivalentTension::new(theory, newtons(6e3), newtons(4e3)).unwrap();
    /// both.derivation().check().unwrap();
    /// ```
    pub fn derivation(&self) -> Derivation {
        let derivation = Derivation::new("Equivalent tension")
            .step(Step::given("tension of the bolt", "T", self.tension))
            .step(Step::given("shear of the bolt", "V", self.shear))
            .step(
                Step::new("equivalent tension", "Te", self.theory.formula(), self.load)
                    .with("T", self.tension)
                    .with("V", self.shear)
                    .source(self.theory.method()),
            );
        match self.equivalent_shear() {
            Ok(shear) => derivation.step(
                Step::new("equivalent shear", "Ve", "Te / 2", shear)
                    .with("Te", self.load)
                    .source(self.theory.method()),
            ),
            Err(_) => derivation,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const ALL: [StressTheory; 3] = [
        StressTheory::GreatestPrincipal,
        StressTheory::GreatestShear,
        StressTheory::DistortionEnergy,
    ];

    #[test]
    fn pure_tension_is_itself_and_pure_shear_by_the_theory() {
        for theory in ALL {
            let alone = EquivalentTension::new(theory, newtons(100.0), newtons(0.0)).unwrap();
            assert!((alone.load - newtons(100.0)).abs() < newtons(1e-9));
        }
        for (theory, times) in ALL.into_iter().zip([1.0, 2.0, 1.732_050_807_568_877_2]) {
            let alone = EquivalentTension::new(theory, newtons(0.0), newtons(100.0)).unwrap();
            assert!((alone.load - newtons(100.0 * times)).abs() < newtons(1e-9));
        }
    }

    fn survives(t: f64, v: f64) -> Result<(), TestCaseError> {
        for theory in ALL {
            if let Ok(both) = EquivalentTension::new(theory, newtons(t), newtons(v)) {
                prop_assert!(both.load.is_finite());
                prop_assert!(both.derivation().check().is_ok());
                if let Ok(demand) = both.demand(megapascals(100.0)) {
                    prop_assert!(demand.area().is_finite());
                }
            }
        }
        if let Ok(state) = CombinedStress::new(megapascals(t), megapascals(v)) {
            prop_assert!(state.von_mises.is_finite());
        }
        Ok(())
    }

    /// A case that was found once: the square of the load is no number of full precision.
    #[test]
    fn the_square_of_a_tiny_load_breaks_nothing() {
        survives(0.0, 4.354_845_476_343_424e-274).unwrap();
    }

    proptest! {
        #[test]
        fn no_number_breaks_it(t in any::<f64>(), v in any::<f64>()) {
            survives(t, v)?;
        }

        /// Tresca is never below von Mises, nor that below Rankine.
        #[test]
        fn theories_stand_in_order(t in 0.0..1e6f64, v in 0.0..1e6f64) {
            let load = |theory| EquivalentTension::new(theory, newtons(t), newtons(v)).unwrap().load.value;
            let [rankine, tresca, mises] = ALL.map(load);
            prop_assert!(tresca >= mises && mises >= rankine * (1.0 - 1e-12));
        }
    }

    #[test]
    fn a_stress_is_nothing_or_from_a_pascal_on() {
        for (stress, good) in [
            (0.0, true),
            (0.9e-6, false),
            (1e-6, true),
            (1e9, true),
            (1.1e9, false),
        ] {
            let one = CombinedStress::new(megapascals(stress), megapascals(40.0));
            let other = CombinedStress::new(megapascals(40.0), megapascals(stress));
            assert_eq!((one.is_ok(), other.is_ok()), (good, good), "{stress}");
        }
    }
}
