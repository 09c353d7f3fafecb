//! Stresses when the wrench is off and the service load is on.

use super::{TighteningStress, von_mises};
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::tables::methods;
use crate::units::{Force, Ratio, Stress, percent};

/// Stresses of a tightened bolt under its service load.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let friction = Friction::new(0.10, 0.14, 0.16)?;
/// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
/// let stress = form.tightening_stress(newtons(40e3), TorsionModel::Vdi2230)?;
/// let later = stress.in_service(newtons(3e3), TighteningStress::VDI_TORSION_LEFT)?;
/// assert!(later.tension > stress.tension);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ServiceStress {
    /// Stresses at the end of tightening.
    pub tightening: TighteningStress,
    /// Load that the bolt takes on top of its preload.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_load: Force,
    /// Share of the torsion that is left.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub torsion_left: Ratio,
    /// Tension (F + bolt load) / As.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tension: Stress,
    /// Torsion that is left, at the nominal friction.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub torsion: Stress,
    /// Equivalent stress by von Mises.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub equivalent: Stress,
}

impl ServiceStress {
    /// What the user must be told: the half of the torsion that VDI 2230 keeps was recalled.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let friction = Friction::new(0.10, 0.14, 0.16)?;
    /// # let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// let stress = form.tightening_stress(newtons(40e3), TorsionModel::Vdi2230)?;
    /// assert_eq!(stress.in_service(newtons(0.0), TighteningStress::VDI_TORSION_LEFT)?.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let recalled = self.torsion_left == TighteningStress::VDI_TORSION_LEFT;
        let form = self.tightening.form.cautions();
        form.with(
            recalled
                .then_some(methods::VDI2230_SERVICE_TORSION)
                .and_then(Caution::of_method),
        )
    }

    /// The working, after that of the tightening.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let friction = Friction::new(0.10, 0.14, 0.16)?;
    /// # let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// let stress = form.tightening_stress(newtons(40e3), TorsionModel::Vdi2230)?;
    /// stress.in_service(newtons(3e3), TighteningStress::VDI_TORSION_LEFT)?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let before = &self.tightening;
        before
            .derivation()
            .step(
                Step::new(
                    "tension in service",
                    "sigmaz",
                    "(F + Fb) / As",
                    self.tension,
                )
                .with("F", before.preload)
                .with("Fb", self.bolt_load)
                .with("As", before.stress_area),
            )
            .step(
                Step::new("torsion left", "taul", "kt * tau", self.torsion)
                    .with("kt", self.torsion_left)
                    .with("tau", before.torsion.nominal),
            )
            .step(
                Step::new(
                    "equivalent stress in service",
                    "sigmaB",
                    "sqrt(sigmaz ^ 2 + 3 * taul ^ 2)",
                    self.equivalent,
                )
                .with("sigmaz", self.tension)
                .with("taul", self.torsion)
                .source(methods::VON_MISES),
            )
    }
}

impl TighteningStress {
    /// Torsion that VDI 2230 still counts when the service load comes: half of it (recalled).
    pub const VDI_TORSION_LEFT: Ratio = percent(50.0);

    /// Stresses in service, when part of the torsion has died away and a service load is on the bolt.
    ///
    /// `bolt_load` is the share of the service load that the bolt takes on top of its preload;
    /// `torsion_left` what is left of the torsion, [`VDI_TORSION_LEFT`](Self::VDI_TORSION_LEFT) if
    /// nothing is known. Some or all of the torsion springs back when the wrench comes off.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is negative or not finite, or a share not from 0 to 1.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.14, 0.16)?;
    /// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// let stress = form.tightening_stress(newtons(40e3), TorsionModel::Vdi2230)?;
    /// let later = stress.in_service(newtons(0.0), TighteningStress::VDI_TORSION_LEFT)?;
    /// assert!(later.equivalent < stress.equivalent.nominal && later.equivalent > stress.tension);
    /// assert_eq!(later.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    pub fn in_service(
        &self,
        bolt_load: Force,
        torsion_left: Ratio,
    ) -> Result<ServiceStress, Error> {
        not_negative("bolt load", bolt_load)?;
        not_negative("torsion left", torsion_left)?;
        if torsion_left.value > 1.0 {
            return Err(out_of_range(
                "torsion left",
                torsion_left,
                Allowed::AtMost(1.0.into()),
            ));
        }
        let tension = (self.preload + bolt_load) / self.stress_area;
        let torsion = self.torsion.nominal * torsion_left;
        let equivalent = von_mises(tension, torsion);
        not_negative("bolt load", equivalent)
            .map_err(|_| out_of_range("bolt load", bolt_load, Allowed::NotNegative))?;
        Ok(ServiceStress {
            tightening: *self,
            bolt_load,
            torsion_left,
            tension,
            torsion,
            equivalent,
        })
    }
}
