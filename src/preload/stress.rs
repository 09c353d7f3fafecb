//! What the bolt feels while the nut is turned, and how far it may be tightened.

use alloc::format;
use core::f64::consts::PI;

use super::FrictionForm;
use super::form::sane_preload;
use crate::caution::Cautions;
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::math;
use crate::source::Method;
use crate::spread::Spread;
use crate::tables::methods;
use crate::thread::area;
use crate::units::{Area, Force, Length, Ratio, Stress, Torque, from_base};

mod assembly;
mod lumped;
mod service;

pub use assembly::AssemblyPreload;
pub use lumped::LumpedStress;
pub use service::ServiceStress;

/// How the torsion of the thread becomes a stress.
///
/// | | section modulus | at 90 % of yield, M12 8.8, friction 0.14 |
/// |---|---|---|
/// | [`Vdi2230`](Self::Vdi2230) | pi d0^3 / 12: the whole section yields | 41.9 kN, 93 N m |
/// | [`JisB1083`](Self::JisB1083) | pi d0^3 / 16: the surface yields | 38.4 kN, 85 N m |
///
/// Tables by both are in use, so a torque compares with another only by its edition.
///
/// ```
/// use shankline::preload::TorsionModel;
/// assert_ne!(TorsionModel::Vdi2230, TorsionModel::JisB1083);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum TorsionModel {
    /// Fully plastic torsion, W = pi d0^3 / 12: VDI 2230 from 2001 on, whose tables of preload and
    /// torque it reproduces.
    Vdi2230,
    /// Elastic torsion, W = pi d0^3 / 16: the yield clamp force of JIS B 1083, read in a public
    /// reproduction (which has lost its root sign). It also fits torque tables that suppliers call those
    /// of 1986 (inferred).
    JisB1083,
}

impl TorsionModel {
    /// W = pi d0^3 / divisor.
    const fn divisor(self) -> f64 {
        match self {
            Self::Vdi2230 => 12.0,
            Self::JisB1083 => 16.0,
        }
    }

    const fn source(self) -> &'static Method {
        match self {
            Self::Vdi2230 => methods::VDI2230_PLASTIC_TORSION,
            Self::JisB1083 => methods::JIS_B_1083_ELASTIC_TORSION,
        }
    }
}

/// Von Mises counts torsion this much more than tension.
const SQRT_3: f64 = 1.732_050_807_568_877_2;

/// Tensile stress area and the diameter of a circle of that area.
fn section(form: &FrictionForm) -> (Area, Length) {
    let thread = form.thread();
    let lost = if thread.is_unified() {
        area::UNIFIED_LOSS
    } else {
        area::METRIC_LOSS
    };
    let diameter = thread.nominal_diameter() - lost * thread.pitch();
    (area::circle(diameter), diameter)
}

/// Stresses at the end of tightening, for least, nominal and greatest friction of the thread.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let friction = Friction::new(0.10, 0.14, 0.16)?;
/// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
/// let stress = form.tightening_stress(newtons(41.9e3), TorsionModel::Vdi2230)?;
/// let share = stress.utilisation(megapascals(640.0))?;
/// assert!((share.nominal.value - 0.90).abs() < 0.003);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TighteningStress {
    /// The form.
    pub form: FrictionForm,
    /// The torsion model.
    pub model: TorsionModel,
    /// Preload F.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub preload: Force,
    /// Tensile stress area As of the thread.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub stress_area: Area,
    /// Diameter d0 of a circle of that area.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub stress_diameter: Length,
    /// Torque in the thread, with the prevailing torque.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub thread_torque: Spread<Torque>,
    /// Tension F / As.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tension: Stress,
    /// Torsion, thread torque over W.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub torsion: Spread<Stress>,
    /// Equivalent stress by von Mises, sqrt(sigma^2 + 3 tau^2).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub equivalent: Spread<Stress>,
}

fn von_mises(tension: Stress, torsion: Stress) -> Stress {
    from_base(math::hypot(tension.value, SQRT_3 * torsion.value))
}

impl FrictionForm {
    /// Stresses in the thread when tightening to a preload.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a preload that is negative, not finite or so large that the stress is
    /// not finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.14, 0.16)?;
    /// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// let stress = form.tightening_stress(newtons(30e3), TorsionModel::Vdi2230)?;
    /// // Torsion raises the stress of the preload by a sixth.
    /// assert!((stress.equivalent.nominal / stress.tension).value > 1.1);
    /// # Ok(())
    /// # }
    /// ```
    pub fn tightening_stress(
        &self,
        preload: Force,
        model: TorsionModel,
    ) -> Result<TighteningStress, Error> {
        sane_preload(preload)?;
        let (area, diameter) = section(self);
        let friction = self.thread_friction();
        let prevailing = self.prevailing_torque();
        let torque = |friction: f64, prevailing: Torque| -> Torque {
            from_base(preload.value * self.thread_arm_on(friction) + prevailing.value)
        };
        let thread_torque = Spread {
            min: torque(friction.min(), prevailing.min),
            nominal: torque(friction.nominal(), prevailing.nominal),
            max: torque(friction.max(), prevailing.max),
        };
        let tension = preload / area;
        let modulus = PI * diameter.value * diameter.value * diameter.value / model.divisor();
        let torsion = thread_torque.map(|torque| from_base(torque.value / modulus));
        let equivalent = torsion.map(|torsion| von_mises(tension, torsion));
        if !equivalent.max.value.is_finite() {
            return Err(out_of_range("preload", preload, Allowed::NotNegative));
        }
        Ok(TighteningStress {
            form: *self,
            model,
            preload,
            stress_area: area,
            stress_diameter: diameter,
            thread_torque,
            tension,
            torsion,
            equivalent,
        })
    }
}

impl TighteningStress {
    /// Equivalent stress over yield strength.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a strength that is not positive and finite, or so small that the
    /// share is not finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.14, 0.16)?;
    /// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// let stress = form.tightening_stress(newtons(30e3), TorsionModel::Vdi2230)?;
    /// assert!(stress.utilisation(megapascals(640.0))?.max.value < 0.7);
    /// # Ok(())
    /// # }
    /// ```
    pub fn utilisation(&self, yield_strength: Stress) -> Result<Spread<Ratio>, Error> {
        positive("yield strength", yield_strength)?;
        let share = self.equivalent.map(|stress| stress / yield_strength);
        if share.max.value.is_finite() {
            Ok(share)
        } else {
            Err(out_of_range(
                "yield strength",
                yield_strength,
                Allowed::Positive,
            ))
        }
    }

    /// What the user must be told of the torque form.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let (thread, friction): (Thread, _) = ("M12".parse()?, Friction::new(0.10, 0.14, 0.16)?);
    /// let (rt, rn) = (millimetres(5.4), millimetres(7.5));
    /// let form = FrictionForm::three_term(&thread, rt, rn, friction, friction)?;
    /// assert_eq!(form.tightening_stress(newtons(30e3), TorsionModel::Vdi2230)?.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.form.cautions()
    }

    /// The working at the nominal friction.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.14, 0.16)?;
    /// let form = FrictionForm::shigley(&"1/2-13".parse()?, friction, friction)?;
    /// form.tightening_stress(newtons(40e3), TorsionModel::Vdi2230)?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let form = &self.form;
        let title = format!("Stress of {} during tightening", form.thread());
        let lock = form.prevailing_torque().nominal;
        let thread = self.thread_torque.nominal;
        let arm: Length = from_base(form.thread_arm_on(form.thread_friction().nominal()));
        let derivation = form.thread_steps(Derivation::new(title)).step(
            Step::new("torque in the thread", "Tth", "F * a + Tl", thread)
                .with("F", self.preload)
                .with("a", arm)
                .with("Tl", lock),
        );
        section_steps(derivation, self.stress_area, self.stress_diameter)
            .step(
                Step::new("tension", "sigma", "F / As", self.tension)
                    .with("F", self.preload)
                    .with("As", self.stress_area),
            )
            .step(
                Step::new(
                    "torsion",
                    "tau",
                    "Tth * k / (pi * d0 ^ 3)",
                    self.torsion.nominal,
                )
                .with("Tth", thread)
                .with("k", self.model.divisor())
                .with("d0", self.stress_diameter)
                .source(self.model.source()),
            )
            .step(
                Step::new(
                    "equivalent stress",
                    "sigmae",
                    "sqrt(sigma ^ 2 + 3 * tau ^ 2)",
                    self.equivalent.nominal,
                )
                .with("sigma", self.tension)
                .with("tau", self.torsion.nominal)
                .source(methods::VON_MISES),
            )
    }
}

fn section_steps(derivation: Derivation, area: Area, diameter: Length) -> Derivation {
    derivation
        .step(Step::given("tensile stress area", "As", area))
        .step(
            Step::new(
                "diameter of the stress area",
                "d0",
                "sqrt(4 * As / pi)",
                diameter,
            )
            .with("As", area),
        )
}
