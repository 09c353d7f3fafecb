//! How the bolt is tightened, and what preload that gives.

use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::preload::{ElasticJoint, NutFactor, PreloadLimit, PreloadTarget};
use crate::spread::{Spread, ordered};
use crate::tension::LoadShare;
use crate::units::{Force, Length, Ratio, Stiffness, Torque};

/// How the bolt of a [`Joint`](super::Joint) is tightened.
///
/// ```
/// use shankline::joint::{Tightening, TorqueTightening};
/// use shankline::units::percent;
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let oiled = NutFactor::new(0.15, 0.18, 0.22)?;
/// let torque = TorqueTightening::new(oiled, PreloadTarget::Reusable).relaxation(percent(5.0));
/// let tightening = Tightening::Torque(torque);
/// # Ok(())
/// # }
/// ```
// One of them a joint: their size does not matter.
#[allow(clippy::large_enum_variant)]
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Tightening {
    /// With an ordinary wrench until the plies touch: nothing is counted on.
    Snug,
    /// To a torque.
    Torque(TorqueTightening),
}

/// Tightening to a torque, T = K F d.
///
/// ```
/// use shankline::joint::TorqueTightening;
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let dry = TorqueTightening::new(NutFactor::new(0.18, 0.22, 0.28)?, PreloadTarget::Reusable);
/// assert_eq!(dry.relaxation, None); // nobody has said
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct TorqueTightening {
    /// Nut factor with its range.
    pub nut_factor: NutFactor,
    /// What share of which load the nominal preload is to be.
    pub target: PreloadTarget,
    /// Share of the preload that is lost to settling and relaxation; a NASA default is 5 %. None if nobody says:
    /// then nothing that counts on the preload is decided, unless `settling` is given.
    #[cfg_attr(
        feature = "serde",
        serde(
            default,
            serialize_with = "crate::units::quantity::serialize_ratio_option",
            deserialize_with = "crate::units::quantity::deserialize_ratio_option"
        )
    )]
    #[cfg_attr(feature = "schema", schemars(with = "Option<f64>"))]
    pub relaxation: Option<Ratio>,
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
        serde(default, with = "crate::units::quantity::option")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
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
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct JointStiffness {
    /// Of the bolt with head and nut, kb.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "crate::schema::Quantity<Stiffness>")
    )]
    pub bolt: Stiffness,
    /// Of plies and washers, km.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "crate::schema::Quantity<Stiffness>")
    )]
    pub members: Stiffness,
}

impl TorqueTightening {
    /// Tightening of which neither relaxation, settling nor running torque is said.
    ///
    /// ```
    /// use shankline::joint::TorqueTightening;
    /// use shankline::units::percent;
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let dry = TorqueTightening::new(NutFactor::new(0.18, 0.22, 0.28)?, PreloadTarget::Reusable);
    /// assert!(dry.prevailing.is_none());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn new(nut_factor: NutFactor, target: PreloadTarget) -> Self {
        Self {
            nut_factor,
            target,
            relaxation: None,
            prevailing: None,
            settling: None,
            stiffness: None,
        }
    }

    /// Refuses numbers that make no sense.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a relaxation that is not from 0 to 1, settling or running torques that are negative
    /// or not finite, running torques out of order, or a stiffness that is not positive.
    ///
    /// ```
    /// use shankline::joint::TorqueTightening;
    /// use shankline::units::percent;
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let dry = TorqueTightening::new(NutFactor::new(0.18, 0.22, 0.28)?, PreloadTarget::Reusable);
    /// assert!(dry.validate().is_ok());
    /// assert!(dry.relaxation(percent(120.0)).validate().is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn validate(&self) -> Result<(), Error> {
        if let Some(relaxation) = self.relaxation {
            let share = not_negative("relaxation", relaxation)?.value;
            if share > 1.0 {
                let allowed = Allowed::AtMost(1.0.into());
                return Err(out_of_range("relaxation", share, allowed));
            }
        }
        if let Some(settling) = self.settling {
            not_negative("settling", settling)?;
        }
        if let Some(prevailing) = self.prevailing {
            ordered("prevailing torque", prevailing)?;
        }
        if let Some(given) = self.stiffness {
            LoadShare::new(given.bolt, given.members)?;
        }
        Ok(())
    }

    /// The same with the share of the preload that is lost.
    ///
    /// ```
    /// use shankline::joint::TorqueTightening;
    /// use shankline::units::percent;
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let dry = TorqueTightening::new(NutFactor::new(0.18, 0.22, 0.28)?, PreloadTarget::Reusable);
    /// assert_eq!(dry.relaxation(percent(5.0)).relaxation, Some(percent(5.0)));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn relaxation(self, share: Ratio) -> Self {
        Self {
            relaxation: Some(share),
            ..self
        }
    }

    /// The same with the running torque of a lock nut.
    ///
    /// ```
    /// use shankline::joint::TorqueTightening;
    /// use shankline::units::percent;
    /// use shankline::parts::Locking;
    /// use shankline::prelude::*;
    /// use shankline::tables::locking::PrevailingTorque;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let running = PrevailingTorque::range(&"1/2-13 UNC".parse()?, Locking::Insert, None)?;
    /// let nut_factor = NutFactor::new(0.15, 0.18, 0.22)?;
    /// let locked = TorqueTightening::new(nut_factor, PreloadTarget::Reusable).prevailing(running);
    /// assert!(locked.prevailing.is_some());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn prevailing(self, torque: Spread<Torque>) -> Self {
        Self {
            prevailing: Some(torque),
            ..self
        }
    }
}

/// Torque and preload of a [`Joint`](super::Joint).
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
        serde(serialize_with = "crate::spread::quantity::serialize")
    )]
    pub preload: Spread<Force>,
    /// Preload lost to settling, as far as it was given in length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub settling_loss: Force,
    /// The least and the greatest change with the temperature, between assembly and service; the least below zero.
    #[cfg_attr(feature = "serde", serde(skip))]
    pub thermal: [Force; 2],
    /// Least preload left in service.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub in_service: Force,
    /// Greatest preload in service.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub greatest: Force,
    #[cfg_attr(feature = "serde", serde(skip))]
    pub(super) limit: PreloadLimit,
    /// Bolt and members as springs, as far as they are known.
    #[cfg_attr(feature = "serde", serde(skip))]
    pub(super) springs: Option<ElasticJoint>,
}

impl JointPreload {
    /// Bolt and members as two springs, where their stiffnesses are given or follow from the materials of the plies; how
    /// they share a load along the bolt.
    ///
    /// ```
    /// use shankline::prelude::*;
    #[doc = include_str!("example.txt")]
    /// let preload = joint.check()?.preload;
    /// assert!(preload.and_then(|own| own.load_share()).is_none()); // it is only snug
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn load_share(&self) -> Option<LoadShare> {
        let [bolt, members] = self.springs?.stiffnesses();
        LoadShare::new(bolt, members).ok()
    }
}
