//! The preload range of NASA-STD-5020.

use core::num::NonZeroU32;

use super::{PreloadMethod, PreloadRange, in_service, scatter_below_one};
use crate::derivation::{Derivation, Step};
use crate::error::{Error, not_negative, positive};
use crate::math;
use crate::spread::{Spread, ordered};
use crate::tables::methods;
use crate::units::{Force, Ratio, percent};

/// Preload range in the form of NASA-STD-5020. **Recalled**: no text of the standard could be read.
///
/// | | |
/// |---|---|
/// | greatest, after tightening | cmax (1 + G) P |
/// | least, separation-critical joint | cmin (1 - G) P |
/// | least, otherwise | cmin (1 - G / sqrt(nf)) P |
/// | greatest in service | greatest + thermal gain |
/// | least in service | least - relaxation - creep - thermal loss |
///
/// P nominal preload, of [`ShortForm::preload`](crate::preload::ShortForm::preload) or another form, the
/// prevailing torque taken off; G preload variation of the tightening method; c the least and greatest
/// torque over the nominal one; nf number of bolts in the joint.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::units::percent;
/// # fn main() -> Result<(), shankline::Error> {
/// let range = NasaPreload::new(newtons(40e3), percent(25.0))?
///     .with_torque_tolerance(percent(95.0), percent(105.0))?
///     .with_thermal(newtons(2e3), newtons(3e3))?
///     .range()?;
/// assert!((range.initial.max - newtons(52.5e3)).abs() < newtons(1e-6));
/// assert!((range.initial.min - newtons(28.5e3)).abs() < newtons(1e-6));
/// assert!((range.service_max - newtons(54.5e3)).abs() < newtons(1e-6));
/// // 5 % relaxation unless another value is given, and the thermal loss.
/// assert!((range.service_min - newtons(24.075e3)).abs() < newtons(1e-6));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct NasaPreload {
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    nominal: Force,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    variation: Ratio,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    torque_min: Ratio,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    torque_max: Ratio,
    /// Number of bolts, where the joint is not separation-critical.
    bolts: Option<NonZeroU32>,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    relaxation: Ratio,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    creep: Force,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    thermal_gain: Force,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    thermal_loss: Force,
    #[cfg_attr(feature = "serde", serde(skip))]
    said: Said,
}

/// What was stated and is not the zero that stands for it until then: no tolerance, no creep, no heat.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Said {
    torque_tolerance: bool,
    creep: bool,
    thermal: bool,
}

impl NasaPreload {
    /// Short-term relaxation of joints of metal: 5 % of the least initial preload (recalled).
    pub const RELAXATION: Ratio = percent(5.0);

    /// A separation-critical joint with [`RELAXATION`](Self::RELAXATION). Until they are stated it counts no tolerance of the
    /// torque, no creep and no heat; where all of it matters, as in
    /// [`FastenedJoint::check`](crate::nasa_std_5020::FastenedJoint::check), what nobody stated is missing, and a zero or
    /// 100 % has to be said.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a preload that is not positive and finite, or a variation not from 0
    /// to below 1.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::percent;
    /// assert!(NasaPreload::new(newtons(40e3), percent(35.0)).is_ok());
    /// assert!(NasaPreload::new(newtons(40e3), percent(100.0)).is_err());
    /// ```
    pub fn new(nominal: Force, variation: Ratio) -> Result<Self, Error> {
        positive("nominal preload", nominal)?;
        scatter_below_one("preload variation", variation)?;
        let zero = Force::default();
        Ok(Self {
            nominal,
            variation,
            torque_min: percent(100.0),
            torque_max: percent(100.0),
            bolts: None,
            relaxation: Self::RELAXATION,
            creep: zero,
            thermal_gain: zero,
            thermal_loss: zero,
            said: Said::default(),
        })
    }

    /// Least and greatest torque over the nominal torque: 95 % and 105 % for 40 +- 2 N m.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless 0 <= least <= 100 % <= greatest, and finite.
    ///
    /// ```
    /// # use shankline::{prelude::*, units::percent};
    /// let preload = NasaPreload::new(newtons(40e3), percent(25.0)).unwrap();
    /// assert!(preload.with_torque_tolerance(percent(105.0), percent(95.0)).is_err());
    /// ```
    pub fn with_torque_tolerance(self, least: Ratio, greatest: Ratio) -> Result<Self, Error> {
        let nominal = percent(100.0);
        ordered(
            "torque over nominal torque",
            Spread {
                min: least,
                nominal,
                max: greatest,
            },
        )?;
        Ok(Self {
            torque_min: least,
            torque_max: greatest,
            said: Said {
                torque_tolerance: true,
                ..self.said
            },
            ..self
        })
    }

    /// A joint of several bolts that is not separation-critical: the scatter of the least preload
    /// averages out over them.
    ///
    /// ```
    /// # use shankline::{prelude::*, units::percent};
    /// # use std::num::NonZeroU32;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let four = NonZeroU32::new(4).unwrap();
    /// let range = NasaPreload::new(newtons(40e3), percent(20.0))?.not_separation_critical(four).range()?;
    /// assert!((range.initial.min - newtons(36e3)).abs() < newtons(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn not_separation_critical(self, bolts: NonZeroU32) -> Self {
        Self {
            bolts: Some(bolts),
            ..self
        }
    }

    /// Another short-term relaxation, as a share of the least initial preload.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a share not from 0 to below 1.
    ///
    /// ```
    /// # use shankline::{prelude::*, units::percent};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let range = NasaPreload::new(newtons(40e3), percent(25.0))?.with_relaxation(percent(10.0))?.range()?;
    /// assert!((range.service_min - newtons(27e3)).abs() < newtons(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    pub fn with_relaxation(self, relaxation: Ratio) -> Result<Self, Error> {
        scatter_below_one("relaxation", relaxation)?;
        Ok(Self { relaxation, ..self })
    }

    /// Loss by creep over the life of the joint.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a loss that is negative or not finite.
    ///
    /// ```
    /// # use shankline::{prelude::*, units::percent};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let range = NasaPreload::new(newtons(40e3), percent(25.0))?.with_creep(newtons(1e3))?.range()?;
    /// assert!((range.service_min - newtons(27.5e3)).abs() < newtons(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    pub fn with_creep(self, creep: Force) -> Result<Self, Error> {
        not_negative("loss by creep", creep)?;
        Ok(Self {
            creep,
            said: Said {
                creep: true,
                ..self.said
            },
            ..self
        })
    }

    /// Greatest gain and greatest loss by a change of temperature, of
    /// [`ElasticJoint::thermal_change`](crate::preload::ElasticJoint::thermal_change).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a force that is negative or not finite.
    ///
    /// ```
    /// # use shankline::{prelude::*, units::percent};
    /// # let preload = NasaPreload::new(newtons(40e3), percent(25.0)).unwrap();
    /// assert!(preload.with_thermal(newtons(2e3), newtons(-3e3)).is_err());
    /// ```
    pub fn with_thermal(self, gain: Force, loss: Force) -> Result<Self, Error> {
        not_negative("thermal gain", gain)?;
        not_negative("thermal loss", loss)?;
        Ok(Self {
            thermal_gain: gain,
            thermal_loss: loss,
            said: Said {
                thermal: true,
                ..self.said
            },
            ..self
        })
    }

    /// The bolts over which the scatter averages out; none of a separation-critical joint.
    pub(crate) const fn bolts(&self) -> Option<NonZeroU32> {
        self.bolts
    }

    /// Less than any way of tightening is known to have: instrumented bolts have 1 % (recalled).
    pub(super) fn is_without_scatter(&self) -> bool {
        self.variation < percent(1.0)
    }

    pub(crate) const fn is_torque_tolerance_said(&self) -> bool {
        self.said.torque_tolerance
    }

    pub(crate) const fn is_creep_said(&self) -> bool {
        self.said.creep
    }

    pub(crate) const fn is_thermal_said(&self) -> bool {
        self.said.thermal
    }

    fn averaged(&self) -> f64 {
        self.bolts
            .map_or(1.0, |bolts| math::sqrt(f64::from(bolts.get())))
    }

    /// The range.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if the losses pass the least preload, or a preload is not finite.
    ///
    /// ```
    /// # use shankline::{prelude::*, units::percent};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let preload = NasaPreload::new(newtons(40e3), percent(25.0))?;
    /// assert!(preload.range()?.initial.nominal == newtons(40e3));
    /// assert!(preload.with_creep(newtons(40e3))?.range().is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn range(&self) -> Result<PreloadRange, Error> {
        let variation = self.variation.value;
        let initial = Spread {
            min: self.nominal * self.torque_min * (1.0 - variation / self.averaged()),
            nominal: self.nominal,
            max: self.nominal * self.torque_max * (1.0 + variation),
        };
        let settling = initial.min * self.relaxation;
        let losses = settling + self.creep + self.thermal_loss;
        in_service(
            PreloadMethod::NasaStd5020(*self),
            initial,
            settling,
            losses,
            self.thermal_gain,
        )
    }

    pub(super) fn derivation(&self, range: &PreloadRange) -> Derivation {
        let source = methods::NASA_STD_5020_PRELOAD;
        Derivation::new("Preload range by NASA-STD-5020")
            .step(
                Step::new(
                    "greatest initial preload",
                    "Pmax",
                    "cmax * (1 + G) * P",
                    range.initial.max,
                )
                .with("cmax", self.torque_max)
                .with("G", self.variation)
                .with("P", self.nominal)
                .source(source),
            )
            .step(
                Step::new(
                    "least initial preload",
                    "Pmin",
                    "cmin * (1 - G / s) * P",
                    range.initial.min,
                )
                .with("cmin", self.torque_min)
                .with("G", self.variation)
                .with("s", self.averaged())
                .with("P", self.nominal)
                .source(source),
            )
            .step(
                Step::new("relaxation", "Pr", "r * Pmin", range.settling)
                    .with("r", self.relaxation)
                    .with("Pmin", range.initial.min)
                    .source(source),
            )
            .step(
                Step::new(
                    "greatest preload in service",
                    "Psmax",
                    "Pmax + Ptg",
                    range.service_max,
                )
                .with("Pmax", range.initial.max)
                .with("Ptg", self.thermal_gain),
            )
            .step(
                Step::new(
                    "least preload in service",
                    "Psmin",
                    "Pmin - (Pr + Pc + Ptl)",
                    range.service_min,
                )
                .with("Pmin", range.initial.min)
                .with("Pr", range.settling)
                .with("Pc", self.creep)
                .with("Ptl", self.thermal_loss),
            )
    }
}
