//! The preload range of VDI 2230.

use super::{PreloadMethod, PreloadRange, in_service};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, positive};
use crate::spread::Spread;
use crate::tables::methods;
use crate::units::Force;

/// Preload range in the form of VDI 2230: least preload = greatest preload over the tightening
/// factor, less embedment and heat.
///
/// The greatest preload is commonly the one of
/// [`FrictionForm::assembly_preload`](crate::preload::FrictionForm::assembly_preload); the factor that of a
/// row of [`TighteningScatter`](crate::tables::tightening::TighteningScatter), or of
/// [`tightening_factor`](crate::preload::tightening_factor).
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
        serde(serialize_with = "crate::units::quantity::round")
    )]
    greatest: Force,
    tightening_factor: f64,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    embedment_loss: Force,
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

    /// Loss by embedment, of [`ElasticJoint::embedment_loss`](crate::preload::ElasticJoint::embedment_loss).
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
    /// [`ElasticJoint::thermal_change`](crate::preload::ElasticJoint::thermal_change).
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

    pub(super) fn derivation(&self, range: &PreloadRange) -> Derivation {
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
                .source(methods::VDI_2230_DEFINITION_OF_THE_TIGHTENING_FACTOR),
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
