//! What the bolt feels while the nut is turned, and how far it may be tightened.

use alloc::format;
use core::f64::consts::PI;

use super::FrictionForm;
use super::form::sane_preload;
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, positive};
use crate::math;
use crate::spread::Spread;
use crate::thread::area;
use crate::units::{Area, Force, Length, Ratio, Stress, Torque, from_base, percent};

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
    /// Elastic torsion, W = pi d0^3 / 16: JIS B 1083, yield clamp force, read in a public
    /// reproduction. It also fits torque tables that suppliers call those of 1986 (inferred).
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

    const fn source(self) -> &'static str {
        match self {
            Self::Vdi2230 => "VDI 2230 (2001 and later), plastic torsion",
            Self::JisB1083 => "JIS B 1083, elastic torsion",
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
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub preload: Force,
    /// Tensile stress area As of the thread.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub stress_area: Area,
    /// Diameter d0 of a circle of that area.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub stress_diameter: Length,
    /// Torque in the thread, with the prevailing torque.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    pub thread_torque: Spread<Torque>,
    /// Tension F / As.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub tension: Stress,
    /// Torsion, thread torque over W.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    pub torsion: Spread<Stress>,
    /// Equivalent stress by von Mises, sqrt(sigma^2 + 3 tau^2).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
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

    /// The preload and torque that use a share of the yield strength, tension and torsion together:
    /// FM = nu Rp As / sqrt(1 + 3 (As Tth / (F W))^2).
    ///
    /// VDI 2230 takes nu = 90 % for its table values.
    ///
    /// Source: VDI 2230 (2001); the printed preloads and torques of its fine-thread table are
    /// reproduced. With the torsion of JIS B 1083, its yield clamp force.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a strength that is not positive and finite, a share not over 0 and up
    /// to 1, or a prevailing torque that uses up the strength by itself.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::{force::kilonewton, torque::newton_meter};
    /// use shankline::units::percent;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.14, 0.14, 0.14)?;
    /// let face = BearingFace::new(millimetres(16.63), millimetres(13.5))?;
    /// let bearing = face.effective_diameter(BearingPressure::UniformWear);
    /// let form = FrictionForm::linear(&"M12".parse()?, bearing, friction, friction)?;
    /// let limit = form.assembly_preload(megapascals(640.0), percent(90.0), TorsionModel::Vdi2230)?;
    /// assert!((limit.preload.nominal.get::<kilonewton>() - 41.9).abs() < 0.3); // VDI 2230
    /// assert!((limit.torque.nominal.get::<newton_meter>() - 93.0).abs() < 1.0);
    /// # Ok(())
    /// # }
    /// ```
    pub fn assembly_preload(
        &self,
        yield_strength: Stress,
        utilisation: Ratio,
        model: TorsionModel,
    ) -> Result<AssemblyPreload, Error> {
        positive("yield strength", yield_strength)?;
        positive("utilisation of yield", utilisation)?;
        if utilisation.value > 1.0 {
            return Err(out_of_range(
                "utilisation of yield",
                utilisation,
                Allowed::AtMost(1.0.into()),
            ));
        }
        let (area, diameter) = section(self);
        let allowed = (yield_strength * utilisation * area).value;
        // Torque in the thread times this is its equivalent force: sqrt(3) As / W.
        let per_torque = SQRT_3 * 0.25 * model.divisor() / diameter.value;
        let (friction, lock) = (self.thread_friction(), self.prevailing_torque());
        let force = |friction: f64, lock: Torque| -> f64 {
            // F^2 + (c F + t)^2 = allowed^2, with c and t the equivalent forces of friction and drag.
            let c = per_torque * self.thread_arm_on(friction);
            let t = per_torque * lock.value;
            let square = 1.0 + c * c;
            let left = (allowed - t) * (allowed + t);
            // The positive root, written so that nothing cancels.
            left / (c * t + math::sqrt(c * c * t * t + square * left))
        };
        if per_torque * lock.max.value >= allowed {
            return Err(out_of_range(
                "prevailing torque",
                lock.max,
                Allowed::AtMost(
                    from_base::<uom::si::torque::Dimension, uom::si::SI<f64>>(allowed / per_torque)
                        .into(),
                ),
            ));
        }
        let preload = Spread {
            min: force(friction.max(), lock.max),
            nominal: force(friction.nominal(), lock.nominal),
            max: force(friction.min(), lock.min),
        };
        if !(preload.min > 0.0 && preload.max.is_finite()) {
            return Err(out_of_range(
                "yield strength",
                yield_strength,
                Allowed::Positive,
            ));
        }
        let arm = self.arm();
        let torque = |force: f64, arm: Length, lock: Torque| force * arm.value + lock.value;
        let slippery = torque(preload.max, arm.min, lock.min);
        let nominal = torque(preload.nominal, arm.nominal, lock.nominal);
        let rough = torque(preload.min, arm.max, lock.max);
        let torque = Spread {
            min: from_base(slippery.min(nominal).min(rough)),
            nominal: from_base(nominal),
            max: from_base(slippery.max(nominal).max(rough)),
        };
        not_negative("yield strength", torque.max)
            .map_err(|_| out_of_range("yield strength", yield_strength, Allowed::Positive))?;
        Ok(AssemblyPreload {
            form: *self,
            model,
            yield_strength,
            utilisation,
            stress_area: area,
            stress_diameter: diameter,
            preload: preload.map(from_base),
            torque,
        })
    }

    /// The preload and torque at which the bolt yields: all of the yield strength used.
    ///
    /// For yield-controlled tightening, and as the torque no wrench may reach.
    ///
    /// # Errors
    ///
    /// As [`assembly_preload`](Self::assembly_preload).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.12, 0.16)?;
    /// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// let limit = form.yield_point(megapascals(640.0), TorsionModel::Vdi2230)?;
    /// // Less friction yields the bolt at less torque, and at more preload.
    /// assert!(limit.torque.min < limit.torque.max && limit.preload.min < limit.preload.max);
    /// # Ok(())
    /// # }
    /// ```
    pub fn yield_point(
        &self,
        yield_strength: Stress,
        model: TorsionModel,
    ) -> Result<AssemblyPreload, Error> {
        self.assembly_preload(yield_strength, percent(100.0), model)
    }
}

impl TighteningStress {
    /// Torsion that VDI 2230 still counts when the service load comes: half of it (recalled).
    pub const VDI_TORSION_LEFT: Ratio = percent(50.0);

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
        let derivation = Derivation::new(title).step(Step::given("preload", "F", self.preload));
        let lock = form.prevailing_torque().nominal;
        section_steps(
            form.thread_steps(derivation, self.preload),
            self.stress_area,
            self.stress_diameter,
        )
        .step(
            Step::new("tension", "sigma", "F / As", self.tension)
                .with("F", self.preload)
                .with("As", self.stress_area),
        )
        .step(
            Step::new(
                "torsion",
                "tau",
                "(Tth + Tl) * k / (pi * d0 ^ 3)",
                self.torsion.nominal,
            )
            .with("Tth", self.thread_torque.nominal - lock)
            .with("Tl", lock)
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
            .source("von Mises"),
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
        serde(serialize_with = "crate::units::quantity::serialize")
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
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub tension: Stress,
    /// Torsion that is left, at the nominal friction.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub torsion: Stress,
    /// Equivalent stress by von Mises.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
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
        Cautions::default().with(recalled.then_some(Caution::MethodFromMemory {
            method: "VDI 2230, half the torsion left in service",
        }))
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
                .source("von Mises"),
            )
    }
}

/// How far a bolt may be tightened.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let friction = Friction::new(0.10, 0.14, 0.16)?;
/// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
/// let limit = form.yield_point(megapascals(640.0), TorsionModel::Vdi2230)?;
/// // A wrench set to `torque.min` does not yield the bolt, slippery or rough.
/// assert!(form.preload(limit.torque.min)?.max <= limit.preload.max * 1.000001);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AssemblyPreload {
    /// The form.
    pub form: FrictionForm,
    /// The torsion model.
    pub model: TorsionModel,
    /// Yield strength Rp of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub yield_strength: Stress,
    /// Share of it that is used, nu.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub utilisation: Ratio,
    /// Tensile stress area As of the thread.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub stress_area: Area,
    /// Diameter d0 of a circle of that area.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub stress_diameter: Length,
    /// Preload at that stress: greatest with the least friction.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    pub preload: Spread<Force>,
    /// Torque at that stress, with friction of thread and face at the same end of their ranges. A
    /// wrench set to the least of them does not pass the stress at any of these.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    pub torque: Spread<Torque>,
}

impl AssemblyPreload {
    /// The working at the nominal friction.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.14, 0.16)?;
    /// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// form.yield_point(megapascals(640.0), TorsionModel::Vdi2230)?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let form = &self.form;
        let title = format!("Assembly preload of {}", form.thread());
        let friction = form.thread_friction().nominal();
        let arm: Length = from_base(form.thread_arm_on(friction));
        let per_torque = SQRT_3 * 0.25 * self.model.divisor() / self.stress_diameter.value;
        let lock = form.prevailing_torque().nominal;
        let (c, t): (f64, Force) = (per_torque * arm.value, from_base(per_torque * lock.value));
        let allowed = self.yield_strength * self.utilisation * self.stress_area;
        // Any preload shows the torque per preload; the one that results is as good as another.
        let preload = self.preload.nominal;
        let derivation = form.thread_steps(Derivation::new(title), preload).step(
            Step::new("thread torque over preload", "a", "Tth / F", arm)
                .with(
                    "Tth",
                    from_base::<uom::si::torque::Dimension, uom::si::SI<f64>>(
                        preload.value * arm.value,
                    ),
                )
                .with("F", preload),
        );
        section_steps(derivation, self.stress_area, self.stress_diameter)
            .step(
                Step::new("force at the stress used", "Fa", "nu * Rp * As", allowed)
                    .with("nu", self.utilisation)
                    .with("Rp", self.yield_strength)
                    .with("As", self.stress_area),
            )
            .step(
                Step::new("equivalent force of the torsion", "c", "sqrt(3) * k / (4 * d0) * a", c)
                    .with("k", self.model.divisor())
                    .with("d0", self.stress_diameter)
                    .with("a", arm)
                    .source(self.model.source()),
            )
            .step(
                Step::new("equivalent force of the drag", "t", "sqrt(3) * k / (4 * d0) * Tl", t)
                    .with("k", self.model.divisor())
                    .with("d0", self.stress_diameter)
                    .with("Tl", lock),
            )
            .step(
                Step::new(
                    "assembly preload",
                    "FM",
                    "(Fa ^ 2 - t ^ 2) / (c * t + sqrt(c ^ 2 * t ^ 2 + (1 + c ^ 2) * (Fa ^ 2 - t ^ 2)))",
                    self.preload.nominal,
                )
                .with("Fa", allowed)
                .with("c", c)
                .with("t", t)
                .source("VDI 2230; the root of FM^2 + (c FM + t)^2 = Fa^2"),
            )
            .step(
                Step::new("assembly torque", "MA", "FM * a + FM * muk * Db / 2 + Tl", self.torque.nominal)
                    .with("FM", self.preload.nominal)
                    .with("a", arm)
                    .with("muk", form.bearing_friction().nominal())
                    .with("Db", form.bearing_diameter())
                    .with("Tl", lock),
            )
    }
}
