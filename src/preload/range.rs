//! The greatest and the least preload that a tightening method leaves.

use core::num::NonZeroU32;

use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, positive};
use crate::math;
use crate::spread::{Spread, ordered};
use crate::tables::tightening::TighteningScatter;
use crate::units::{Force, Ratio, percent};

/// Greatest scatter that a row of the table gives, as a share of the mean preload.
///
/// Where the publisher gives a tightening factor only, scatter = (factor - 1) / (factor + 1).
///
/// # Errors
///
/// [`Error::NoValue`] if the row gives neither.
///
/// ```
/// use shankline::preload::scatter_of;
/// use shankline::tables::tightening::{TighteningMethod, TighteningScatter};
/// use shankline::units::percent;
/// let rows = TighteningScatter::of_method(TighteningMethod::TorqueWrench);
/// assert_eq!(scatter_of(&rows[0]), Ok(percent(25.0)));
/// ```
pub fn scatter_of(row: &TighteningScatter) -> Result<Ratio, Error> {
    match (row.scatter_max, row.tightening_factor_max) {
        (Some(scatter), _) => Ok(scatter),
        (None, Some(factor)) => Ok(percent(100.0) * ((factor - 1.0) / (factor + 1.0))),
        (None, None) => Err(Error::NoValue {
            quantity: "scatter of the preload",
            subject: row.publisher.into(),
            reason: "the publisher gives none for this method",
        }),
    }
}

/// A mean preload with the greatest scatter that one publisher gives for a method of tightening.
///
/// Warn of a recalled row: [`TighteningScatter::cautions`].
///
/// # Errors
///
/// [`Error::OutOfRange`] for a preload that is negative or not finite; [`Error::NoValue`] as
/// [`scatter_of`].
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::tightening::{TighteningMethod, TighteningScatter};
/// # fn main() -> Result<(), shankline::Error> {
/// let row = &TighteningScatter::of_method(TighteningMethod::TorqueWrench)[0];
/// let preload = scattered(newtons(40e3), row)?;
/// assert!((preload.min - newtons(30e3)).abs() < newtons(1e-6));
/// assert!((preload.max - newtons(50e3)).abs() < newtons(1e-6));
/// # Ok(())
/// # }
/// ```
pub fn scattered(mean: Force, row: &TighteningScatter) -> Result<Spread<Force>, Error> {
    not_negative("preload", mean)?;
    let scatter = scatter_of(row)?.value;
    let preload = Spread {
        min: mean * (1.0 - scatter),
        nominal: mean,
        max: mean * (1.0 + scatter),
    };
    ordered("preload", preload)
}

/// Tightening factor of VDI 2230, greatest over least preload, of a scatter either way of the mean:
/// (1 + s) / (1 - s).
///
/// # Errors
///
/// [`Error::OutOfRange`] for a scatter that is not from 0 to below 1.
///
/// ```
/// use shankline::preload::tightening_factor;
/// use shankline::units::percent;
/// assert!((tightening_factor(percent(25.0)).unwrap() - 1.667).abs() < 5e-4);
/// assert!(tightening_factor(percent(100.0)).is_err());
/// ```
pub fn tightening_factor(scatter: Ratio) -> Result<f64, Error> {
    let share = scatter_below_one("scatter of the preload", scatter)?;
    Ok((1.0 + share) / (1.0 - share))
}

fn scatter_below_one(name: &'static str, scatter: Ratio) -> Result<f64, Error> {
    not_negative(name, scatter)?;
    if scatter.value < 1.0 {
        Ok(scatter.value)
    } else {
        // The largest number below one.
        let most = 1.0 - f64::EPSILON / 2.0;
        Err(out_of_range(name, scatter, Allowed::AtMost(most.into())))
    }
}

/// The method that a range of preload follows, with its inputs.
///
/// ```
/// use shankline::{preload::PreloadMethod, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// let range = VdiPreload::new(newtons(41.9e3), 1.8)?.range()?;
/// assert!(matches!(range.method, PreloadMethod::Vdi2230(_)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum PreloadMethod {
    /// NASA-STD-5020.
    NasaStd5020(NasaPreload),
    /// VDI 2230.
    Vdi2230(VdiPreload),
}

/// Greatest and least preload, just after tightening and in service.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let range = VdiPreload::new(newtons(41.9e3), 1.8)?
///     .with_embedment_loss(newtons(4e3))?
///     .range()?;
/// assert!((range.initial.min - newtons(23.278e3)).abs() < newtons(1.0));
/// assert!((range.service_min - newtons(19.278e3)).abs() < newtons(1.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PreloadRange {
    /// The method and its inputs.
    pub method: PreloadMethod,
    /// Preload just after tightening.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    pub initial: Spread<Force>,
    /// Loss by short-term relaxation (NASA) or embedment (VDI).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub settling: Force,
    /// Least preload in service, after settling, creep and heat.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub service_min: Force,
    /// Greatest preload in service: nothing settled, heat added.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub service_max: Force,
}

/// Loads that pass beyond f64 or below nothing are refused.
fn in_service(
    method: PreloadMethod,
    initial: Spread<Force>,
    settling: Force,
    losses: Force,
    gain: Force,
) -> Result<PreloadRange, Error> {
    ordered("preload", initial)?;
    let service_min = initial.min - losses;
    let service_max = initial.max + gain;
    if service_min < Force::default() {
        return Err(out_of_range(
            "loss of preload",
            losses,
            Allowed::AtMost(initial.min.into()),
        ));
    }
    not_negative("greatest preload", service_max)?;
    Ok(PreloadRange {
        method,
        initial,
        settling,
        service_min,
        service_max,
    })
}

impl PreloadRange {
    /// What the user must be told: the equations of NASA-STD-5020 were recalled.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::percent;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let nasa = NasaPreload::new(newtons(40e3), percent(25.0))?.range()?;
    /// assert_eq!(nasa.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let recalled = matches!(self.method, PreloadMethod::NasaStd5020(_));
        Cautions::default().with(recalled.then_some(Caution::MethodFromMemory {
            method: "NASA-STD-5020, maximum and minimum preload",
        }))
    }

    /// The working.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::percent;
    /// # fn main() -> Result<(), shankline::Error> {
    /// NasaPreload::new(newtons(40e3), percent(25.0))?.range()?.derivation().check()?;
    /// VdiPreload::new(newtons(41.9e3), 1.8)?.range()?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        match &self.method {
            PreloadMethod::NasaStd5020(nasa) => nasa.derivation(self),
            PreloadMethod::Vdi2230(vdi) => vdi.derivation(self),
        }
    }
}

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
/// P nominal preload, of [`ShortForm::preload`](super::ShortForm::preload) or another form, the
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
        serde(serialize_with = "crate::units::quantity::serialize")
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
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    creep: Force,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    thermal_gain: Force,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    thermal_loss: Force,
}

impl NasaPreload {
    /// Short-term relaxation of joints of metal: 5 % of the least initial preload (recalled).
    pub const RELAXATION: Ratio = percent(5.0);

    /// A separation-critical joint, no tolerance on the torque, [`RELAXATION`](Self::RELAXATION),
    /// no creep, no heat.
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
        Ok(Self { creep, ..self })
    }

    /// Greatest gain and greatest loss by a change of temperature, of
    /// [`ElasticJoint::thermal_change`](super::ElasticJoint::thermal_change).
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
            ..self
        })
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

    fn derivation(&self, range: &PreloadRange) -> Derivation {
        let source = "NASA-STD-5020 (recalled)";
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

/// Preload range in the form of VDI 2230: least preload = greatest preload over the tightening
/// factor, less embedment and heat.
///
/// The greatest preload is commonly the one of
/// [`FrictionForm::assembly_preload`](super::FrictionForm::assembly_preload); the factor that of a row of
/// [`TighteningScatter`], or of [`tightening_factor`].
///
/// Source: VDI 2230 (2001), definition of the tightening factor on a supplier's page; the example of a
/// distributor after VDI 2230 (2015) is reproduced.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::uom::si::force::kilonewton;
/// # fn main() -> Result<(), shankline::Error> {
/// let range = VdiPreload::new(newtons(41.9e3), 1.8)?.range()?;
/// assert!((range.initial.min.get::<kilonewton>() - 23.3).abs() < 0.05); // printed 23.3 kN
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct VdiPreload {
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    greatest: Force,
    tightening_factor: f64,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    embedment_loss: Force,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    thermal_gain: Force,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    thermal_loss: Force,
}

impl VdiPreload {
    /// The greatest assembly preload and the tightening factor.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a preload that is not positive and finite, or a factor below one or
    /// not finite.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// assert!(VdiPreload::new(newtons(41.9e3), 0.9).is_err());
    /// ```
    pub fn new(greatest: Force, tightening_factor: f64) -> Result<Self, Error> {
        positive("assembly preload", greatest)?;
        if !(1.0..f64::INFINITY).contains(&tightening_factor) {
            return Err(out_of_range(
                "tightening factor",
                tightening_factor,
                Allowed::AtLeast(1.0.into()),
            ));
        }
        let zero = Force::default();
        Ok(Self {
            greatest,
            tightening_factor,
            embedment_loss: zero,
            thermal_gain: zero,
            thermal_loss: zero,
        })
    }

    /// Loss by embedment, of [`ElasticJoint::embedment_loss`](super::ElasticJoint::embedment_loss).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a loss that is negative or not finite.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # let preload = VdiPreload::new(newtons(41.9e3), 1.8).unwrap();
    /// assert!(preload.with_embedment_loss(newtons(4e3)).is_ok());
    /// ```
    pub fn with_embedment_loss(self, loss: Force) -> Result<Self, Error> {
        not_negative("loss by embedment", loss)?;
        Ok(Self {
            embedment_loss: loss,
            ..self
        })
    }

    /// Greatest gain and greatest loss by a change of temperature, of
    /// [`ElasticJoint::thermal_change`](super::ElasticJoint::thermal_change).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a force that is negative or not finite.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # let preload = VdiPreload::new(newtons(41.9e3), 1.8).unwrap();
    /// assert!(preload.with_thermal(newtons(2e3), newtons(3e3)).is_ok());
    /// ```
    pub fn with_thermal(self, gain: Force, loss: Force) -> Result<Self, Error> {
        not_negative("thermal gain", gain)?;
        not_negative("thermal loss", loss)?;
        Ok(Self {
            thermal_gain: gain,
            thermal_loss: loss,
            ..self
        })
    }

    /// The range. The nominal initial preload is the middle of greatest and least.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if the losses pass the least preload, or a preload is not finite.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let preload = VdiPreload::new(newtons(41.9e3), 1.8)?;
    /// assert!(preload.with_embedment_loss(newtons(30e3))?.range().is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn range(&self) -> Result<PreloadRange, Error> {
        let least = self.greatest / self.tightening_factor;
        let initial = Spread {
            min: least,
            nominal: least + 0.5 * (self.greatest - least),
            max: self.greatest,
        };
        in_service(
            PreloadMethod::Vdi2230(*self),
            initial,
            self.embedment_loss,
            self.embedment_loss + self.thermal_loss,
            self.thermal_gain,
        )
    }

    fn derivation(&self, range: &PreloadRange) -> Derivation {
        Derivation::new("Preload range by VDI 2230")
            .step(Step::given(
                "greatest assembly preload",
                "FMmax",
                self.greatest,
            ))
            .step(
                Step::new(
                    "least assembly preload",
                    "FMmin",
                    "FMmax / alphaA",
                    range.initial.min,
                )
                .with("FMmax", self.greatest)
                .with("alphaA", self.tightening_factor)
                .source("VDI 2230, definition of the tightening factor"),
            )
            .step(
                Step::new(
                    "greatest preload in service",
                    "FVmax",
                    "FMmax + Ftg",
                    range.service_max,
                )
                .with("FMmax", self.greatest)
                .with("Ftg", self.thermal_gain),
            )
            .step(
                Step::new(
                    "least preload in service",
                    "FVmin",
                    "FMmin - (FZ + Ftl)",
                    range.service_min,
                )
                .with("FMmin", range.initial.min)
                .with("FZ", self.embedment_loss)
                .with("Ftl", self.thermal_loss),
            )
    }
}
