//! Fatigue of bolts in tension by AISC 360, Appendix 3.

use super::{sane_load, sane_stress};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::math;
use crate::tables::methods;
use crate::thread::Thread;
use crate::units::{Area, Force, Ratio, Stress, ksi, percent};

/// Cf of bolts and threaded parts in tension, for ranges in ksi.
const CF: f64 = 3.9e8;
/// The exponent as it is printed, not a third.
const EXPONENT: f64 = 0.333;
/// The range that any number of cycles may have.
const THRESHOLD: Stress = ksi(7.0);
/// Up to this many cycles AISC asks for no check.
const FEWEST: f64 = 20_000.0;

/// How a joint is clamped, as AISC 360 App. 3.4 tells two cases apart.
///
/// ```
/// use shankline::tension::AiscClamping;
/// assert_ne!(AiscClamping::Other, AiscClamping::PretensionedSteel);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum AiscClamping {
    /// Tightened to Table J3.1, and all material in the grip is steel.
    PretensionedSteel,
    /// All else: the bolt bears the whole range.
    Other,
}

/// Fatigue of a bolt in tension by AISC: a range of stress against F = (3.9e8 / N)^0.333 ksi, and not below 7 ksi.
///
/// N are the cycles. The stress is that of *service* loads on the net tensile area, with moment and prying; the mean
/// stress does not count. There is no value for bolts in shear: AISC checks the connected material there.
///
/// Source: AISC LRFD Specification (1999), K3.4, its page read; AISC 360-22 Appendix 3.4 has the same curve.
///
/// ```
/// use shankline::{prelude::*, tension::*, units::kips};
/// # fn main() -> Result<(), shankline::Error> {
/// let fatigue = AiscFatigue::tension(&"3/4-10 UNC".parse()?, kips(2.0), 1e7)?;
/// assert_eq!(fatigue.resistance, ksi(7.0));
/// assert!((fatigue.utilisation.value - 2.0 / 0.3345 / 7.0).abs() < 1e-3);
/// fatigue.derivation().check()?;
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AiscFatigue {
    /// Cycles.
    pub cycles: f64,
    /// Range of the force and the area it is on, if it was given as a force.
    #[cfg_attr(feature = "serde", serde(skip))]
    pub force: Option<(Force, Area)>,
    /// Range of the stress: greatest less least.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub range: Stress,
    /// Allowable: the range these cycles may have under service loads.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub resistance: Stress,
    /// Range over resistance.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub utilisation: Ratio,
}

impl AiscFatigue {
    /// A bolt from the range of the force in it.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a range that is not positive and finite, or fewer cycles than 20 000, for which AISC
    /// asks for no check.
    ///
    /// ```
    /// use shankline::{prelude::*, tension::*, units::kips};
    /// let thread: Thread = "3/4-10 UNC".parse().unwrap();
    /// assert!(AiscFatigue::tension(&thread, kips(2.0), 1e3).is_err());
    /// ```
    pub fn tension(thread: &Thread, range: Force, cycles: f64) -> Result<Self, Error> {
        positive(
            "range of the force",
            sane_load("range of the force", range)?,
        )?;
        let area = thread.tensile_stress_area();
        Ok(Self {
            force: Some((range, area)),
            ..Self::of_stress(range / area, cycles)?
        })
    }

    /// A bolt from the range of the stress on its net tensile area.
    ///
    /// # Errors
    ///
    /// As [`tension`](Self::tension).
    ///
    /// ```
    /// use shankline::{prelude::*, tension::AiscFatigue};
    /// let fatigue = AiscFatigue::of_stress(ksi(10.0), 1e5).unwrap();
    /// assert!((fatigue.resistance - ksi(15.70)).abs() < ksi(0.01));
    /// ```
    pub fn of_stress(range: Stress, cycles: f64) -> Result<Self, Error> {
        sane_stress("range of the stress", range)?;
        if !(cycles >= FEWEST && cycles.is_finite()) {
            return Err(out_of_range(
                "number of cycles",
                cycles,
                Allowed::AtLeast(FEWEST.into()),
            ));
        }
        let finite = ksi(math::powf(CF / cycles, EXPONENT));
        let resistance = finite.max(THRESHOLD);
        Ok(Self {
            cycles,
            force: None,
            range,
            resistance,
            utilisation: range / resistance,
        })
    }

    /// The range of force in the bolt that may be assumed without an analysis of the stiffness: a fifth of the range of
    /// the load where the joint is pretensioned and all steel, else all of it. Prying comes on top.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a range that is negative or not finite.
    ///
    /// ```
    /// use shankline::tension::{AiscClamping, AiscFatigue};
    /// use shankline::units::kips;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let range = |clamping| AiscFatigue::assumed_range(kips(10.0), clamping);
    /// assert_eq!(range(AiscClamping::Other)?, kips(10.0));
    /// assert!((range(AiscClamping::PretensionedSteel)? - kips(2.0)).abs() < kips(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn assumed_range(load_range: Force, clamping: AiscClamping) -> Result<Force, Error> {
        sane_load("range of the load", load_range)?;
        Ok(match clamping {
            AiscClamping::PretensionedSteel => percent(20.0) * load_range,
            AiscClamping::Other => load_range,
        })
    }

    /// The working.
    ///
    /// ```
    /// use shankline::{prelude::*, tension::AiscFatigue};
    /// AiscFatigue::of_stress(ksi(10.0), 1e5).unwrap().derivation().check().unwrap();
    /// ```
    pub fn derivation(&self) -> Derivation {
        let range = match self.force {
            Some((force, area)) => Step::new("range of the stress", "fsr", "dF / At", self.range)
                .with("dF", force)
                .with("At", area),
            None => Step::given("range of the stress", "fsr", self.range),
        };
        Derivation::new("Fatigue in tension, AISC")
            .step(range)
            .step(
                Step::new(
                    "range these cycles may have",
                    "FSR",
                    "max((Cf / N)^0.333 * ksi, FTH)",
                    self.resistance,
                )
                .with("Cf", CF)
                .with("N", self.cycles)
                .with("ksi", ksi(1.0))
                .with("FTH", THRESHOLD)
                .source(methods::AISC_LRFD_1999_K3_4_AISC_360_APP_3_4),
            )
            .step(
                Step::new("utilisation", "u", "fsr / FSR", self.utilisation)
                    .with("fsr", self.range)
                    .with("FSR", self.resistance),
            )
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{kips, megapascals};

    #[test]
    fn the_curve_meets_its_threshold_beyond_a_million_cycles() {
        let of = |cycles: f64| AiscFatigue::of_stress(ksi(1.0), cycles).unwrap().resistance;
        // 3.9e8 / 7^3 is 1.137 million.
        assert!(of(1.1e6) > ksi(7.0));
        assert_eq!(of(1.2e6), ksi(7.0));
        assert_eq!(of(1e12), ksi(7.0));
        // 48 MPa in the metric print.
        assert!((of(1e12) - megapascals(48.0)).abs() < megapascals(0.5));
        // By hand: 3900^0.333 = 15.697.
        assert!((of(1e5) - ksi(15.697)).abs() < ksi(0.001));
    }

    #[test]
    fn refuses_nonsense_at_the_door() {
        let thread: Thread = "3/4-10 UNC".parse().unwrap();
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            assert!(AiscFatigue::tension(&thread, kips(bad), 1e6).is_err());
            assert!(AiscFatigue::of_stress(ksi(1.0), bad).is_err());
        }
        for bad in [-1.0, f64::NAN, f64::INFINITY] {
            assert!(AiscFatigue::assumed_range(kips(bad), AiscClamping::Other).is_err());
        }
        AiscFatigue::tension(&thread, kips(1.0), 1e6)
            .unwrap()
            .derivation()
            .check()
            .unwrap();
    }
}
