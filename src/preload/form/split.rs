//! What a torque goes into, and its working.

use alloc::format;
use core::f64::consts::PI;

use super::{FrictionForm, TorqueForm, Way};
use crate::caution::Cautions;
use crate::derivation::{Derivation, Step};
use crate::error::Error;
use crate::tables::methods;
use crate::units::{Force, Length, Ratio, Torque, degrees, from_base};

/// What a tightening torque goes into.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let friction = Friction::new(0.10, 0.12, 0.14)?;
/// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
/// let split = form.split(newtons(40e3))?;
/// let sum = split.pitch + split.thread + split.bearing + split.prevailing;
/// assert!((sum - split.total).value.abs() < 1e-9);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TorqueSplit {
    /// The form.
    pub form: FrictionForm,
    /// Preload.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub preload: Force,
    /// Stretches the bolt: F P / (2 pi).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch: Torque,
    /// Overcomes the friction of the thread.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread: Torque,
    /// Overcomes the friction of the turned face.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bearing: Torque,
    /// Overcomes the drag of the lock nut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub prevailing: Torque,
    /// All of them.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub total: Torque,
}

impl TorqueSplit {
    /// A part over the total.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.12, 0.14)?;
    /// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// let split = form.split(newtons(40e3))?;
    /// assert!((split.share(split.bearing).value - 0.47).abs() < 0.005);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn share(&self, part: Torque) -> Ratio {
        if self.total.value > 0.0 {
            part / self.total
        } else {
            Ratio::default()
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
    /// assert_eq!(form.split(newtons(30e3))?.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.form.cautions()
    }

    /// The working: torque in the thread, in the face, and the whole.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.12, 0.14)?;
    /// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// form.split(newtons(40e3))?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let form = &self.form;
        let thread = self.pitch + self.thread;
        let arm: Length = from_base(form.thread_arm(form.thread_friction.nominal(), Way::On));
        let title = format!("Torque of {} by the {}", form.thread, form.form);
        form.thread_steps(Derivation::new(title))
            .step(
                Step::new("torque in the thread", "Tth", "F * a", thread)
                    .with("F", self.preload)
                    .with("a", arm),
            )
            .step(
                Step::new(
                    "torque that stretches the bolt",
                    "Tp",
                    "F * P / (2 * pi)",
                    self.pitch,
                )
                .with("F", self.preload)
                .with("P", form.thread.lead()),
            )
            .step(
                Step::new("torque of the face", "Tb", "F * muk * Db / 2", self.bearing)
                    .with("F", self.preload)
                    .with("muk", form.bearing_friction.nominal())
                    .with("Db", form.bearing_diameter),
            )
            .step(
                Step::new("tightening torque", "T", "Tth + Tb + Tl", self.total)
                    .with("Tth", thread)
                    .with("Tb", self.bearing)
                    .with("Tl", self.prevailing),
            )
    }
}

impl FrictionForm {
    /// What the torque for a preload goes into, at the nominal friction.
    ///
    /// # Errors
    ///
    /// As [`torque`](Self::torque).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.12, 0.14)?;
    /// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// let split = form.split(newtons(40e3))?;
    /// // About a seventh of the torque stretches the bolt.
    /// assert!((split.share(split.pitch).value - 0.14).abs() < 0.005);
    /// # Ok(())
    /// # }
    /// ```
    pub fn split(&self, preload: Force) -> Result<TorqueSplit, Error> {
        let total = self.torque(preload)?.nominal;
        let part = |arm: f64| -> Torque { from_base(preload.value * arm) };
        let pitch = self.thread.lead().value / (2.0 * PI);
        let thread = self.thread_arm(self.thread_friction.nominal(), Way::On);
        Ok(TorqueSplit {
            form: *self,
            preload,
            pitch: part(pitch),
            thread: part(thread - pitch),
            bearing: part(self.face_arm(self.bearing_friction.nominal())),
            prevailing: self.prevailing.nominal,
            total,
        })
    }

    /// The working from a torque to the nominal preload and the nut factor.
    ///
    /// # Errors
    ///
    /// As [`preload`](Self::preload).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.12, 0.14)?;
    /// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// form.derivation(newton_metres(80.0))?.check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self, torque: Torque) -> Result<Derivation, Error> {
        let preload = self.preload(torque)?.nominal;
        let thread: Length = from_base(self.thread_arm(self.thread_friction.nominal(), Way::On));
        let face: Length = from_base(self.face_arm(self.bearing_friction.nominal()));
        let diameter = self.thread.nominal_diameter();
        let title = format!("Preload of {} by the {}", self.thread, self.form);
        Ok(self
            .thread_steps(Derivation::new(title))
            .step(
                Step::new("torque of the face over preload", "b", "muk * Db / 2", face)
                    .with("muk", self.bearing_friction.nominal())
                    .with("Db", self.bearing_diameter),
            )
            .step(
                Step::new("nut factor", "K", "(a + b) / d", (thread + face) / diameter)
                    .with("a", thread)
                    .with("b", face)
                    .with("d", diameter),
            )
            .step(
                Step::new("preload", "F", "(T - Tl) / (a + b)", preload)
                    .with("T", torque)
                    .with("Tl", self.prevailing.nominal)
                    .with("a", thread)
                    .with("b", face),
            ))
    }

    /// Torque in the thread over preload by the steps of the form; leaves the symbols P, dm, a.
    pub(in crate::preload) fn thread_steps(&self, derivation: Derivation) -> Derivation {
        let friction = self.thread_friction.nominal();
        let arm: Length = from_base(self.thread_arm(friction, Way::On));
        let linear = "P / (2 * pi) + mu * dm / (2 * cos(alpha))";
        let (formula, source) = match self.form {
            TorqueForm::LeadAngle => (
                "dm / 2 * (tl + mu / cos(alpha)) / (1 - mu * tl / cos(alpha))",
                methods::SHIGLEY_9TH_ED_EQ_8_26,
            ),
            TorqueForm::Linear => (linear, methods::JIS_B_1083_VDI_2230),
            TorqueForm::ThreeTerm => (linear, methods::MOTOSH_RECALLED),
        };
        let derivation = derivation
            .step(Step::given(
                "lead, which is the pitch of one start",
                "P",
                self.thread.lead(),
            ))
            .step(Step::given(
                "diameter of the thread friction",
                "dm",
                self.thread_diameter,
            ));
        let step = Step::new("torque in the thread over preload", "a", formula, arm)
            .with("dm", self.thread_diameter)
            .with("mu", friction)
            .with("alpha", degrees(30.0))
            .source(source);
        if self.form != TorqueForm::LeadAngle {
            return derivation.step(step.with("P", self.thread.lead()));
        }
        let tangent = self.lead_tangent();
        derivation
            .step(
                Step::new("tangent of the lead angle", "tl", "P / (pi * dm)", tangent)
                    .with("P", self.thread.lead())
                    .with("dm", self.thread_diameter),
            )
            .step(step.with("tl", tangent))
    }
}
