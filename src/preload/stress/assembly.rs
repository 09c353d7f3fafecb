//! How far a bolt may be tightened.

use alloc::format;

use super::{SQRT_3, TorsionModel, section, section_steps};
use crate::caution::Cautions;
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, positive};
use crate::math;
use crate::preload::FrictionForm;
use crate::spread::Spread;
use crate::tables::methods;
use crate::units::{Area, Force, Length, Ratio, Stress, Torque, from_base, percent};

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
        serde(serialize_with = "crate::units::quantity::round")
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
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub stress_area: Area,
    /// Diameter d0 of a circle of that area.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub stress_diameter: Length,
    /// Preload at that stress: greatest with the least friction.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub preload: Spread<Force>,
    /// Torque at that stress, with friction of thread and face at the same end of their ranges. A
    /// wrench set to the least of them does not pass the stress at any of these.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub torque: Spread<Torque>,
}

impl AssemblyPreload {
    /// What the user must be told of the torque form.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let (thread, friction): (Thread, _) = ("M12".parse()?, Friction::new(0.10, 0.14, 0.16)?);
    /// let (rt, rn) = (millimetres(5.4), millimetres(7.5));
    /// let form = FrictionForm::three_term(&thread, rt, rn, friction, friction)?;
    /// assert_eq!(form.yield_point(megapascals(640.0), TorsionModel::Vdi2230)?.cautions().iter().count(), 1);
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
        let derivation = form.thread_steps(Derivation::new(title));
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
                .source(methods::VDI2230_PLASTIC_TORSION_LOAD),
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

impl FrictionForm {
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
    /// [`Error::OutOfRange`] for a strength that is not positive and finite, a share that is not above 0
    /// and at most 1, or a prevailing torque that uses up the strength by itself.
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
        for force in [preload.min, preload.max] {
            positive(
                "assembly preload",
                Force::new::<uom::si::force::newton>(force),
            )?;
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
