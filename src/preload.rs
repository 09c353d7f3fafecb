//! From the wrench to the clamp force.
//!
//! ```
//! use shankline::prelude::*;
//! use shankline::units::pound_force;
//! # fn main() -> Result<(), shankline::Error> {
//! // 1/2-13 bolt, as received: K = 0.2 nominal, from 0.16 to 0.27
//! let form = ShortForm::new(NutFactor::new(0.16, 0.20, 0.27)?, inches(0.5))?;
//! let preload = form.preload(pound_force_feet(75.0))?;
//! assert!((preload.nominal.get::<pound_force>() - 9000.0).abs() < 1e-6);
//! assert!(preload.min < preload.nominal && preload.nominal < preload.max);
//! # Ok(())
//! # }
//! ```

use alloc::string::ToString;

use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::spread::{Spread, ordered};
use crate::tables::friction::NutFactorRow;
use crate::units::{Force, Length, Ratio, Torque, percent};

/// The nut factor K of T = K F d, always with its range.
///
/// K is not a friction coefficient: it lumps thread friction, face friction and geometry, and
/// belongs to one finish, one lubricant and a range of sizes. Published means lie from about 0.09
/// (anti-seize) to 0.5 (dry plating), and a single condition easily spreads by a third. What each
/// publisher gives is in [`tables::friction`](crate::tables::friction).
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let oiled = NutFactor::new(0.15, 0.18, 0.22)?;
/// assert!(oiled.min() < oiled.nominal() && oiled.nominal() < oiled.max());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "RawNutFactor")
)]
pub struct NutFactor {
    min: f64,
    nominal: f64,
    max: f64,
}

#[cfg(feature = "serde")]
#[derive(serde::Deserialize)]
#[serde(
    deny_unknown_fields,
    expecting = "a nut factor with min, nominal and max"
)]
struct RawNutFactor {
    min: f64,
    nominal: f64,
    max: f64,
}

#[cfg(feature = "serde")]
impl TryFrom<RawNutFactor> for NutFactor {
    type Error = Error;
    fn try_from(raw: RawNutFactor) -> Result<Self, Error> {
        Self::new(raw.min, raw.nominal, raw.max)
    }
}

impl NutFactor {
    /// Least, nominal and greatest K.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless 0 < min <= nominal <= max <= 1.
    ///
    /// ```
    /// use shankline::preload::NutFactor;
    /// assert!(NutFactor::new(0.16, 0.20, 0.27).is_ok());
    /// assert!(NutFactor::new(0.20, 0.16, 0.27).is_err());
    /// ```
    pub fn new(min: f64, nominal: f64, max: f64) -> Result<Self, Error> {
        for k in [min, nominal, max] {
            positive("nut factor", k)?;
            if k > 1.0 {
                return Err(out_of_range("nut factor", k, Allowed::AtMost(1.0.into())));
            }
        }
        ordered("nut factor", Spread { min, nominal, max })?;
        Ok(Self { min, nominal, max })
    }

    /// The nut factor of one row of the tables.
    ///
    /// Where the publisher gives the least and the greatest K only, the nominal is the middle
    /// between them.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the publisher gives a single K: no range is made up for it. Take the
    /// limits of [`NutFactorRow::across_publishers`], or of a test on your own parts.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::friction::{Condition, NutFactorRow};
    /// let rows = NutFactorRow::for_condition(Condition::Waxed);
    /// assert_eq!(
    ///     NutFactor::from_row(&rows[0]).unwrap_err().to_string(),
    ///     "no known range of K for waxed bolts by distributor torque guide: \
    ///      the publisher gives a single value",
    /// );
    /// let rows = NutFactorRow::for_condition(Condition::Moly);
    /// assert_eq!(NutFactor::from_row(&rows[0]).unwrap().max(), 0.18);
    /// ```
    pub fn from_row(row: &NutFactorRow) -> Result<Self, Error> {
        match (row.k_min, row.k_max) {
            (Some(min), Some(max)) => {
                let nominal = row.k_nominal.unwrap_or(f64::midpoint(min, max));
                Self::new(min, nominal, max)
            }
            _ => Err(Error::NoValue {
                quantity: "range of K",
                subject: row.to_string(),
                reason: "the publisher gives a single value",
            }),
        }
    }

    /// Least K: the highest preload for a torque.
    ///
    /// ```
    /// # use shankline::preload::NutFactor;
    /// assert_eq!(NutFactor::new(0.16, 0.20, 0.27).unwrap().min(), 0.16);
    /// ```
    #[must_use]
    pub const fn min(self) -> f64 {
        self.min
    }

    /// Nominal K.
    ///
    /// ```
    /// # use shankline::preload::NutFactor;
    /// assert_eq!(NutFactor::new(0.16, 0.20, 0.27).unwrap().nominal(), 0.20);
    /// ```
    #[must_use]
    pub const fn nominal(self) -> f64 {
        self.nominal
    }

    /// Greatest K: the lowest preload for a torque.
    ///
    /// ```
    /// # use shankline::preload::NutFactor;
    /// assert_eq!(NutFactor::new(0.16, 0.20, 0.27).unwrap().max(), 0.27);
    /// ```
    #[must_use]
    pub const fn max(self) -> f64 {
        self.max
    }
}

/// The short torque form T = K F d.
///
/// T tightening torque, F preload, d nominal diameter, K nut factor. The running torque of a lock
/// nut is not in it: add that to T, or take it off before asking for F.
///
/// Source: Shigley, Mechanical Engineering Design, 9th ed., Eq. 8-27; supplier torque guides.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::uom::si::torque::newton_meter;
/// use shankline::uom;
/// # fn main() -> Result<(), shankline::Error> {
/// let form = ShortForm::new(NutFactor::new(0.15, 0.20, 0.25)?, millimetres(16.0))?;
/// let torque = form.torque(newtons(50e3))?;
/// assert!((torque.nominal.get::<newton_meter>() - 160.0).abs() < 1e-9);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct ShortForm {
    nut_factor: NutFactor,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    diameter: Length,
}

impl ShortForm {
    /// The form for one nut factor and nominal diameter.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter that is not positive and finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let k = NutFactor::new(0.16, 0.20, 0.27).unwrap();
    /// assert!(ShortForm::new(k, inches(0.0)).is_err());
    /// ```
    pub fn new(nut_factor: NutFactor, diameter: Length) -> Result<Self, Error> {
        positive("nominal diameter", diameter)?;
        Ok(Self {
            nut_factor,
            diameter,
        })
    }

    /// The nut factor.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let form = ShortForm::new(NutFactor::new(0.15, 0.20, 0.25)?, millimetres(20.0))?;
    /// assert_eq!(form.nut_factor().nominal(), 0.20);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn nut_factor(&self) -> NutFactor {
        self.nut_factor
    }

    /// The nominal diameter.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let form = ShortForm::new(NutFactor::new(0.15, 0.20, 0.25)?, millimetres(20.0))?;
    /// assert_eq!(form.nominal_diameter(), millimetres(20.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn nominal_diameter(&self) -> Length {
        self.diameter
    }

    /// Preload that a torque gives: F = T / (K d). The least preload goes with the greatest K.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a torque that is negative or not finite, or so large that the
    /// preload is not finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::force::kilonewton;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let form = ShortForm::new(NutFactor::new(0.15, 0.20, 0.25)?, millimetres(20.0))?;
    /// let preload = form.preload(newton_metres(400.0))?;
    /// assert!((preload.nominal.get::<kilonewton>() - 100.0).abs() < 1e-9);
    /// assert!((preload.min.get::<kilonewton>() - 80.0).abs() < 1e-9);
    /// # Ok(())
    /// # }
    /// ```
    #[inline]
    pub fn preload(&self, torque: Torque) -> Result<Spread<Force>, Error> {
        let force = |k: f64| crate::units::from_base(torque.value / (k * self.diameter.value));
        let k = self.nut_factor;
        let preload = Spread {
            min: force(k.max),
            nominal: force(k.nominal),
            max: force(k.min),
        };
        finite_result("tightening torque", torque, preload)
    }

    /// Torque that gives a preload: T = K F d, for least, nominal and greatest K.
    ///
    /// The torque to set on the wrench is the nominal one; the preload it then gives spreads as
    /// [`preload`](Self::preload) of it says.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a preload that is negative or not finite, or so large that the
    /// torque is not finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::torque::newton_meter;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let form = ShortForm::new(NutFactor::new(0.15, 0.20, 0.25)?, millimetres(20.0))?;
    /// let torque = form.torque(newtons(100e3))?;
    /// assert!((torque.nominal.get::<newton_meter>() - 400.0).abs() < 1e-9);
    /// # Ok(())
    /// # }
    /// ```
    #[inline]
    pub fn torque(&self, preload: Force) -> Result<Spread<Torque>, Error> {
        let torque = |k: f64| crate::units::from_base(k * preload.value * self.diameter.value);
        let k = self.nut_factor;
        let torques = Spread {
            min: torque(k.min),
            nominal: torque(k.nominal),
            max: torque(k.max),
        };
        finite_result("preload", preload, torques)
    }
}

/// One check for both ends: the greatest result is finite and not negative only if the argument is.
#[inline]
fn finite_result<A, R>(
    name: &'static str,
    argument: A,
    result: Spread<R>,
) -> Result<Spread<R>, Error>
where
    A: Copy + Into<crate::error::Amount>,
    R: Copy + crate::error::Finite,
{
    if result.max.raw() >= 0.0 && result.max.raw() < f64::INFINITY {
        Ok(result)
    } else {
        Err(out_of_range(name, argument, Allowed::NotNegative))
    }
}

/// How much of the proof load a preload should use.
///
/// ```
/// use shankline::prelude::*;
/// assert!(PreloadTarget::Reusable.fraction() < PreloadTarget::Permanent.fraction());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum PreloadTarget {
    /// 75 % of the proof load, for joints that are taken apart and bolts that are used again.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., Eq. 8-31; supplier torque guides.
    Reusable,
    /// 90 % of the proof load, for permanent joints.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., Eq. 8-31.
    Permanent,
}

impl PreloadTarget {
    /// The fraction of the proof load.
    ///
    /// ```
    /// use shankline::preload::PreloadTarget;
    /// use shankline::uom::si::ratio::percent;
    /// assert_eq!(PreloadTarget::Reusable.fraction().get::<percent>(), 75.0);
    /// ```
    #[must_use]
    pub const fn fraction(self) -> Ratio {
        match self {
            Self::Reusable => percent(75.0),
            Self::Permanent => percent(90.0),
        }
    }
}

/// A preload beside the proof load of its bolt.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let usage = proof_use(Spread::exact(newtons(80e3)), newtons(100e3), PreloadTarget::Reusable)?;
/// assert!(matches!(usage.cautions().iter().next(), Some(Caution::PreloadAboveTarget { .. })));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ProofUse {
    /// Preload over proof load.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio_spread")
    )]
    pub fraction: Spread<Ratio>,
    /// The target it was held against.
    pub target: PreloadTarget,
    cautions: Cautions,
}

impl ProofUse {
    /// A warning, if the nominal preload passes the target or the greatest passes the proof load.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let usage = proof_use(Spread::exact(newtons(70e3)), newtons(100e3), PreloadTarget::Reusable)?;
    /// assert_eq!(usage.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn cautions(&self) -> Cautions {
        self.cautions
    }
}

/// Holds a preload against the proof load of the bolt.
///
/// Warns if the *nominal* preload is above the target, and more strongly if the *greatest* one is
/// above the proof load itself.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a preload or proof load that is not finite, or a proof load that is
/// not positive.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "1/2-13 UNC".parse()?;
/// let proof = SaeGrade::Grade5.strength(thread.nominal_diameter())?.loads(&thread)?.proof.unwrap();
/// let form = ShortForm::new(NutFactor::new(0.18, 0.20, 0.22)?, thread.nominal_diameter())?;
/// let gentle = proof_use(form.preload(pound_force_feet(70.0))?, proof, PreloadTarget::Reusable)?;
/// assert_eq!(gentle.cautions().iter().count(), 0);
/// let heavy = proof_use(form.preload(pound_force_feet(100.0))?, proof, PreloadTarget::Reusable)?;
/// assert!(matches!(heavy.cautions().iter().next(), Some(Caution::PreloadAboveProof { .. })));
/// # Ok(())
/// # }
/// ```
pub fn proof_use(
    preload: Spread<Force>,
    proof_load: Force,
    target: PreloadTarget,
) -> Result<ProofUse, Error> {
    let preload = ordered("preload", preload)?;
    positive("proof load", proof_load)?;
    let fraction = preload.map(|force| force / proof_load);
    if !fraction.max.value.is_finite() {
        let least = preload.max / f64::MAX;
        return Err(out_of_range(
            "proof load",
            proof_load,
            Allowed::Above(least.into()),
        ));
    }
    // Aiming at the target exactly must not warn: leave the last bits of T = K F d and back.
    let above = |value: Ratio, limit: Ratio| value.value > limit.value * (1.0 + 1e-9);
    let caution = if above(fraction.max, percent(100.0)) {
        Some(Caution::PreloadAboveProof {
            fraction: fraction.max,
        })
    } else if above(fraction.nominal, target.fraction()) {
        Some(Caution::PreloadAboveTarget {
            fraction: fraction.max,
            target: target.fraction(),
        })
    } else {
        None
    };
    Ok(ProofUse {
        fraction,
        target,
        cautions: Cautions::default().with(caution),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{inches, newton_metres, newtons, pounds_force};

    #[test]
    fn refuses_nonsense_at_the_door() {
        for bad in [0.0, -0.1, 1.1, f64::NAN, f64::INFINITY] {
            assert!(NutFactor::new(bad, bad, bad).is_err(), "{bad}");
        }
        let form = ShortForm::new(NutFactor::new(0.1, 0.2, 0.3).unwrap(), inches(0.5)).unwrap();
        for bad in [-1.0, f64::NAN, f64::INFINITY] {
            assert!(form.preload(newton_metres(bad)).is_err(), "{bad}");
            assert!(form.torque(newtons(bad)).is_err(), "{bad}");
        }
        // Finite, but the preload would not be.
        assert!(form.preload(newton_metres(f64::MAX)).is_err());
        let exact = Spread::exact(pounds_force(100.0));
        assert!(proof_use(exact, pounds_force(0.0), PreloadTarget::Reusable).is_err());
    }

    #[test]
    fn target_torque_does_not_warn_at_its_own_nominal() {
        let form = ShortForm::new(NutFactor::new(0.19, 0.2, 0.21).unwrap(), inches(0.75)).unwrap();
        let proof = pounds_force(40_080.0);
        let torque = form.torque(0.75 * proof).unwrap().nominal;
        let result = proof_use(
            form.preload(torque).unwrap(),
            proof,
            PreloadTarget::Reusable,
        )
        .unwrap();
        assert_eq!(result.cautions().iter().count(), 0);
    }
}
