//! How the bolt is tightened, and what preload that gives.

use super::checks::Report;
use super::{Joint, Subject};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::material::BoltLoads;
use crate::parts::Locking;
use crate::preload::{ElasticJoint, NutFactor, PreloadTarget, ShortForm};
use crate::spread::Spread;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::tension::LoadShare;
use crate::units::{Force, Length, Ratio, Stiffness, Torque};

/// How the bolt of a [`Joint`] is tightened.
///
/// ```
/// use shankline::joint::Tightening;
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let oiled = Tightening::new(NutFactor::new(0.15, 0.18, 0.22)?, PreloadTarget::Reusable);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct Tightening {
    /// Nut factor with its range.
    pub nut_factor: NutFactor,
    /// What share of which load the nominal preload is to be.
    pub target: PreloadTarget,
    /// Share of the preload that is lost to settling and relaxation; a NASA default is 5 %.
    #[cfg_attr(
        feature = "serde",
        serde(
            default,
            serialize_with = "crate::units::quantity::serialize_ratio",
            deserialize_with = "crate::units::quantity::deserialize_ratio"
        )
    )]
    pub relaxation: Ratio,
    /// Running (prevailing) torque of a lock nut, which comes on top of K F d; none if unknown.
    ///
    /// Measured, the maker's, or
    /// [`PrevailingTorque::range`](crate::tables::locking::PrevailingTorque::range).
    #[cfg_attr(feature = "serde", serde(default))]
    pub prevailing: Option<Spread<Torque>>,
    /// How far threads, bearing faces and joint faces settle together (embedment); none to leave it to
    /// `relaxation`.
    #[cfg_attr(
        feature = "serde",
        serde(
            default,
            serialize_with = "crate::units::quantity::serialize_option",
            deserialize_with = "crate::units::quantity::deserialize_option"
        )
    )]
    pub settling: Option<Length>,
    /// Stiffness of bolt and members; none to have it computed, where every ply has its material.
    #[cfg_attr(feature = "serde", serde(default))]
    pub stiffness: Option<JointStiffness>,
}

/// Stiffness of bolt and members, measured or computed elsewhere.
///
/// ```
/// use shankline::joint::JointStiffness;
/// use shankline::units::newtons_per_millimetre;
/// let measured = JointStiffness {
///     bolt: newtons_per_millimetre(300e3),
///     members: newtons_per_millimetre(1200e3),
/// };
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct JointStiffness {
    /// Of the bolt with head and nut, kb.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub bolt: Stiffness,
    /// Of plies and washers, km.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub members: Stiffness,
}

impl Tightening {
    /// Tightening without relaxation, settling and running torque.
    ///
    /// ```
    /// use shankline::joint::Tightening;
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let dry = Tightening::new(NutFactor::new(0.18, 0.22, 0.28)?, PreloadTarget::Reusable);
    /// assert_eq!(dry.relaxation.value, 0.0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn new(nut_factor: NutFactor, target: PreloadTarget) -> Self {
        Self {
            nut_factor,
            target,
            relaxation: crate::units::percent(0.0),
            prevailing: None,
            settling: None,
            stiffness: None,
        }
    }

    /// The same with the running torque of a lock nut.
    ///
    /// ```
    /// use shankline::joint::Tightening;
    /// use shankline::parts::Locking;
    /// use shankline::prelude::*;
    /// use shankline::tables::locking::PrevailingTorque;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let running = PrevailingTorque::range(&"1/2-13 UNC".parse()?, Locking::Insert, None)?;
    /// let nut_factor = NutFactor::new(0.15, 0.18, 0.22)?;
    /// let locked = Tightening::new(nut_factor, PreloadTarget::Reusable).with_prevailing(running);
    /// assert!(locked.prevailing.is_some());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn with_prevailing(self, torque: Spread<Torque>) -> Self {
        Self {
            prevailing: Some(torque),
            ..self
        }
    }
}

/// Torque and preload of a [`Joint`].
///
/// ```
/// use shankline::joint::JointPreload;
/// use shankline::units::{UnitSystem, shown};
/// fn wrench_setting(preload: &JointPreload) -> String {
///     shown(preload.torque, UnitSystem::Si).to_string() // such as "79.2 N m"
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct JointPreload {
    /// Torque for the wrench: K F d and the running torque, if it is given.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub torque: Torque,
    /// The running torque in it; none if unknown, and then it comes on top.
    pub prevailing: Option<Spread<Torque>>,
    /// Preload this torque gives, by the ranges of nut factor and running torque: the greatest with the
    /// least of both.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    pub preload: Spread<Force>,
    /// Preload lost to settling, as far as it was given in length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub settling_loss: Force,
    /// Least preload left in service.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub in_service: Force,
}

impl Joint {
    /// Whether any check has a use for the stiffness of bolt and members.
    pub(super) fn needs_stiffness(&self) -> bool {
        self.tightening.is_some_and(|tightening| {
            self.load.along > Force::default() || tightening.settling.is_some()
        })
    }

    /// Bolt and members as two springs.
    pub(super) fn springs(&self, share: Option<LoadShare>) -> Result<Option<ElasticJoint>, Error> {
        share
            .map(|share| ElasticJoint::new(self.bolt.thread.pitch(), share.bolt, share.members))
            .transpose()
    }

    /// Torque, preload, and whether the greatest preload passes the proof load.
    pub(super) fn preload(
        &self,
        loads: &BoltLoads,
        share: Option<LoadShare>,
        report: &mut Report,
    ) -> Result<Option<JointPreload>, Error> {
        let Some(tightening) = self.tightening else {
            report.skip(Mode::Tightening, "nobody controls the tightening");
            return Ok(None);
        };
        let aim = tightening.target.of(loads)?;
        let mut form = ShortForm::new(tightening.nut_factor, self.bolt.thread.nominal_diameter())?;
        if let Some(prevailing) = tightening.prevailing {
            form = form.with_prevailing(prevailing)?;
        } else if self
            .locking()
            .is_some_and(|locking| matches!(locking, Locking::Insert | Locking::AllMetal))
        {
            report.miss(
                Subject::RunningTorque,
                "it is not given, so the torque here is without it: measure it and add it",
            );
        }
        let torque = form.torque(aim)?.nominal;
        let preload = form.preload(torque)?;
        if let Some(proof) = loads.proof {
            let check = Check::new(
                Mode::Tightening,
                Place::Joint,
                preload.max,
                proof,
                Level::Nominal,
            )?;
            report
                .checks
                .push(check.by("T = K F d, greatest preload against the proof load"));
        } else {
            report.skip_bolt(Mode::Tightening, "the grade has no proof load");
        }
        let relaxation = not_negative("relaxation", tightening.relaxation)?.value;
        if relaxation > 1.0 {
            let allowed = Allowed::AtMost(1.0.into());
            return Err(out_of_range("relaxation", relaxation, allowed));
        }
        let settling_loss = self.settling_loss(share, report)?;
        let left = (1.0 - relaxation) * preload.min - settling_loss;
        let preload = JointPreload {
            torque,
            prevailing: tightening.prevailing,
            preload,
            settling_loss,
            in_service: left.max(Force::default()),
        };
        if report.works() {
            let working = form.derivation(torque)?;
            report.work(|| preload.torque_working(&form, aim, relaxation));
            report.work(|| working);
        }
        Ok(Some(preload))
    }

    fn settling_loss(&self, share: Option<LoadShare>, report: &mut Report) -> Result<Force, Error> {
        let Some(settling) = self.tightening.and_then(|tightening| tightening.settling) else {
            return Ok(Force::default());
        };
        not_negative("settling", settling)?;
        let Some(springs) = self.springs(share)? else {
            report.miss(
                Subject::Settling,
                "neither the stiffness nor the materials of all plies are given",
            );
            return Ok(Force::default());
        };
        springs.embedment_loss(settling)
    }
}

impl JointPreload {
    fn torque_working(&self, form: &ShortForm, aim: Force, relaxation: f64) -> Derivation {
        Derivation::new("Tightening torque")
            .step(
                Step::new("torque on the wrench", "T", "K * F * d + Tp", self.torque)
                    .with("K", form.nut_factor().nominal())
                    .with("F", aim)
                    .with("d", form.nominal_diameter())
                    .with("Tp", form.prevailing_torque().nominal)
                    .source("Shigley, 9th ed., Eq. 8-27; FAA AC 43.13-1B, 7-40 for Tp"),
            )
            .step(
                Step::new(
                    "least preload in service",
                    "Fs",
                    "max((1 - r) * Fmin - Fz, 0 * Fz)",
                    self.in_service,
                )
                .with("r", relaxation)
                .with("Fmin", self.preload.min)
                .with("Fz", self.settling_loss),
            )
    }
}
