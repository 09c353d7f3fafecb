//! The greatest and the least preload that a tightening method leaves.

use crate::caution::{Caution, Cautions};
use crate::derivation::Derivation;
use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::spread::{Spread, ordered};
use crate::tables::methods;
use crate::tables::tightening::TighteningScatter;
use crate::units::{Force, Ratio, percent};

mod nasa;
mod vdi;

pub use nasa::NasaPreload;
pub use vdi::VdiPreload;

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
        let allowed = Allowed::FromBelow(percent(0.0).into(), percent(100.0).into());
        Err(out_of_range(name, scatter, allowed))
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
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub initial: Spread<Force>,
    /// Loss by short-term relaxation (NASA) or embedment (VDI).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub settling: Force,
    /// Least preload in service, after settling, creep and heat.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub service_min: Force,
    /// Greatest preload in service: nothing settled, heat added.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
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
    /// What the user must be told: the equations of NASA-STD-5020 were recalled, and no way of tightening is without scatter.
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
        let PreloadMethod::NasaStd5020(nasa) = self.method else {
            return Cautions::default();
        };
        Cautions::default()
            .with(Caution::of_method(
                methods::NASA_STD_5020_MAXIMUM_AND_MINIMUM_PRELOAD,
            ))
            .with(nasa.is_without_scatter().then_some(Caution::AgainstAdvice {
                method: methods::NASA_STD_5020_PRELOAD,
                advice: "a variation of the preload that tests show or that is typical of the way of tightening, none below 1 %",
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
