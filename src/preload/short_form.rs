//! T = K F d.

use super::{NutFactor, no_prevailing, preload_of, torque_of};
use crate::derivation::{Derivation, Step};
use crate::error::{Error, positive};
use crate::spread::{Spread, ordered};
use crate::tables::methods;
use crate::units::{Force, Length, Torque};

/// The short torque form T = K F d.
///
/// T tightening torque, F preload, d nominal diameter, K nut factor. The prevailing torque of a
/// lock nut comes on top: [`with_prevailing`](Self::with_prevailing).
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
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "RawShortForm")
)]
pub struct ShortForm {
    nut_factor: NutFactor,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    diameter: Length,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    prevailing: Spread<Torque>,
}

#[cfg(feature = "serde")]
#[derive(serde::Deserialize)]
#[serde(
    crate = "crate::objects",
    deny_unknown_fields,
    expecting = "a torque form with nut_factor and diameter"
)]
struct RawShortForm {
    nut_factor: NutFactor,
    diameter: crate::units::quantity::RawQuantity,
    #[serde(default)]
    prevailing: Option<Spread<Torque>>,
}

#[cfg(feature = "serde")]
impl TryFrom<RawShortForm> for ShortForm {
    type Error = alloc::string::String;
    fn try_from(raw: RawShortForm) -> Result<Self, Self::Error> {
        let prevailing = raw.prevailing.unwrap_or_else(no_prevailing);
        Self::new(raw.nut_factor, raw.diameter.named("diameter")?)
            .and_then(|form| form.with_prevailing(prevailing))
            .map_err(|error| alloc::format!("{error}"))
    }
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
            prevailing: no_prevailing(),
        })
    }

    /// The form with the prevailing torque of a lock nut or insert: T = K F d + Tp.
    ///
    /// Source: FAA AC 43.13-1B, 7-40 (the friction drag torque is added to the desired torque).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a torque that is negative, not finite or out of order.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let form = ShortForm::new(NutFactor::new(0.15, 0.20, 0.25)?, millimetres(20.0))?;
    /// let locking = form.with_prevailing(Spread::exact(newton_metres(30.0)))?;
    /// let difference = locking.torque(newtons(50e3))?.nominal - form.torque(newtons(50e3))?.nominal;
    /// assert!((difference - newton_metres(30.0)).value.abs() < 1e-9);
    /// # Ok(())
    /// # }
    /// ```
    pub fn with_prevailing(self, torque: Spread<Torque>) -> Result<Self, Error> {
        Ok(Self {
            prevailing: ordered("prevailing torque", torque)?,
            ..self
        })
    }

    /// Prevailing torque; zero unless given.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let form = ShortForm::new(NutFactor::new(0.15, 0.20, 0.25)?, millimetres(20.0))?;
    /// assert_eq!(form.prevailing_torque().max, newton_metres(0.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn prevailing_torque(&self) -> Spread<Torque> {
        self.prevailing
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
        preload_of(Spread::exact(torque), self.arm(), self.prevailing)
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
        torque_of(preload, self.arm(), self.prevailing)
    }

    /// Preload that a torque with a tolerance gives: the least torque with the greatest K, the
    /// greatest with the least.
    ///
    /// # Errors
    ///
    /// As [`preload`](Self::preload), and for a torque out of order.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let form = ShortForm::new(NutFactor::new(0.15, 0.20, 0.25)?, millimetres(20.0))?;
    /// let wrench = Spread { min: newton_metres(380.0), nominal: newton_metres(400.0), max: newton_metres(420.0) };
    /// assert!((form.preload_within(wrench)?.min - newtons(76e3)).abs() < newtons(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    pub fn preload_within(&self, torque: Spread<Torque>) -> Result<Spread<Force>, Error> {
        preload_of(
            ordered("tightening torque", torque)?,
            self.arm(),
            self.prevailing,
        )
    }

    /// The working from a torque to the nominal preload.
    ///
    /// # Errors
    ///
    /// As [`preload`](Self::preload).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let form = ShortForm::new(NutFactor::new(0.15, 0.20, 0.25)?, millimetres(20.0))?;
    /// form.derivation(newton_metres(400.0))?.check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self, torque: Torque) -> Result<Derivation, Error> {
        let preload = self.preload(torque)?;
        let k = self.nut_factor;
        let step = |what: &'static str,
                    symbol: &'static str,
                    preload: Force,
                    k: f64,
                    prevailing: Torque| {
            Step::new(what, symbol, "(T - Tp) / (K * d)", preload)
                .with("T", torque)
                .with("Tp", prevailing)
                .with("K", k)
                .with("d", self.diameter)
                .source(methods::SHIGLEY_9TH_ED_EQ_8_27)
        };
        let prevailing = self.prevailing;
        Ok(Derivation::new("Preload from torque")
            .step(step(
                "preload",
                "F",
                preload.nominal,
                k.nominal(),
                prevailing.nominal,
            ))
            .step(step(
                "least preload",
                "Fmin",
                preload.min,
                k.max(),
                prevailing.max,
            ))
            .step(step(
                "greatest preload",
                "Fmax",
                preload.max,
                k.min(),
                prevailing.min,
            )))
    }

    /// Torque over preload: K d.
    #[inline]
    fn arm(&self) -> Spread<Length> {
        let k = self.nut_factor;
        Spread {
            min: k.min() * self.diameter,
            nominal: k.nominal() * self.diameter,
            max: k.max() * self.diameter,
        }
    }
}

/// Torques of the torque method of EN 1090-2 for preloaded structural assemblies.
///
/// Mr = km d Fp,C, km the mean k-factor that the maker declares. The first step goes to 0.75 Mr on
/// all bolts, the second to 1.10 Mr.
///
/// Source: EN 1090-2:2008+A1:2011, torque method; second steps of a supplier table are reproduced.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::uom::si::torque::newton_meter;
/// # fn main() -> Result<(), shankline::Error> {
/// // M20 of class 10.9, km = 0.119, Fp,C = 172 kN: printed 450 N m
/// let steps = EnTorque::new(0.119, millimetres(20.0), newtons(172e3))?;
/// assert!((steps.second_step.get::<newton_meter>() - 450.0).abs() < 3.0);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct EnTorque {
    /// Mean k-factor.
    pub k_mean: f64,
    /// Nominal diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter: Length,
    /// Preload aimed at, Fp,C.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub preload: Force,
    /// Reference torque Mr = km d Fp,C.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub reference: Torque,
    /// First step, 0.75 Mr.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub first_step: Torque,
    /// Second step, 1.10 Mr.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub second_step: Torque,
}

impl EnTorque {
    /// The two steps.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a factor that is not above 0 and at most 1, a diameter that is not positive and
    /// finite, or a preload that is negative or too large.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(EnTorque::new(0.0, millimetres(20.0), newtons(172e3)).is_err());
    /// ```
    pub fn new(k_mean: f64, diameter: Length, preload: Force) -> Result<Self, Error> {
        let form = ShortForm::new(NutFactor::new(k_mean, k_mean, k_mean)?, diameter)?;
        // The larger step is asked first, so that it is finite.
        let second_step = form.torque(preload * 1.10)?.nominal;
        let reference = form.torque(preload)?.nominal;
        Ok(Self {
            k_mean,
            diameter,
            preload,
            reference,
            first_step: 0.75 * reference,
            second_step,
        })
    }

    /// The working.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let steps = EnTorque::new(0.119, millimetres(20.0), newtons(172e3)).unwrap();
    /// assert!(steps.derivation().check().is_ok());
    /// ```
    pub fn derivation(&self) -> Derivation {
        let step =
            |what: &'static str, symbol: &'static str, formula: &'static str, torque: Torque| {
                Step::new(what, symbol, formula, torque)
                    .with("Mr", self.reference)
                    .source(methods::EN_1090_2_TORQUE_METHOD)
            };
        Derivation::new("Torque method of EN 1090-2")
            .step(
                Step::new("reference torque", "Mr", "km * d * FpC", self.reference)
                    .with("km", self.k_mean)
                    .with("d", self.diameter)
                    .with("FpC", self.preload)
                    .source(methods::EN1090_2_PRELOAD),
            )
            .step(step("first step", "M1", "0.75 * Mr", self.first_step))
            .step(step("second step", "M2", "1.10 * Mr", self.second_step))
    }
}
