//! Bolt and members as two springs: turn of the nut, loosening, embedment, heat.

use core::f64::consts::PI;

use crate::derivation::{Derivation, Step};
use crate::error::{Error, not_negative, sane_length, sane_stiffness};
use crate::units::{Angle, Force, Length, Stiffness, from_base};

mod range;
mod thermal;

pub use range::ThermalRange;
pub use thermal::{ThermalChange, ThermalLayer};

/// A bolt that clamps members, both elastic: what an elongation is worth in preload.
///
/// The stiffness of the bolt includes head and nut, that of the members all plies and washers.
/// Before the plies touch all over, and beyond yield, the preload grows less than this says: count
/// turns from snug.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::units::{degrees, newtons_per_millimetre};
/// # fn main() -> Result<(), shankline::Error> {
/// let joint = ElasticJoint::new(
///     millimetres(1.75),
///     newtons_per_millimetre(300e3),
///     newtons_per_millimetre(1200e3),
/// )?;
/// let preload = joint.preload(degrees(60.0))?;
/// assert!((preload - newtons(70e3)).abs() < newtons(1e-6));
/// assert!((joint.turn(preload)? - degrees(60.0)).value.abs() < 1e-12);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "RawElasticJoint")
)]
pub struct ElasticJoint {
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pitch: Length,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    bolt: Stiffness,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    members: Stiffness,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    both: Stiffness,
}

#[cfg(feature = "serde")]
#[derive(serde::Deserialize)]
#[serde(
    crate = "crate::objects",
    deny_unknown_fields,
    expecting = "an elastic joint with pitch, bolt and members"
)]
struct RawElasticJoint {
    pitch: crate::units::quantity::RawQuantity,
    bolt: crate::units::quantity::RawQuantity,
    members: crate::units::quantity::RawQuantity,
    /// Written out, and computed again.
    #[serde(default, rename = "both")]
    _both: Option<serde::de::IgnoredAny>,
}

#[cfg(feature = "serde")]
impl TryFrom<RawElasticJoint> for ElasticJoint {
    type Error = alloc::string::String;
    fn try_from(raw: RawElasticJoint) -> Result<Self, Self::Error> {
        Self::new(
            raw.pitch.named("pitch")?,
            raw.bolt.named("bolt")?,
            raw.members.named("members")?,
        )
        .map_err(|error| alloc::format!("{error}"))
    }
}

impl ElasticJoint {
    /// Bolt and members.
    pub(crate) const fn stiffnesses(&self) -> [Stiffness; 2] {
        [self.bolt, self.members]
    }

    /// The joint of a thread pitch and the two stiffnesses. Of a thread of several starts it is the
    /// [lead](crate::thread::Thread::lead): what one turn of the nut moves it.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a pitch that is not positive or beyond a kilometre, or a stiffness outside 1e-6 to
    /// 1e18 N/mm.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::newtons_per_millimetre;
    /// let (kb, km) = (newtons_per_millimetre(0.0), newtons_per_millimetre(1200e3));
    /// assert!(ElasticJoint::new(millimetres(1.75), kb, km).is_err());
    /// ```
    pub fn new(pitch: Length, bolt: Stiffness, members: Stiffness) -> Result<Self, Error> {
        sane_length("pitch", pitch)?;
        sane_stiffness("bolt stiffness", bolt)?;
        sane_stiffness("member stiffness", members)?;
        let both = bolt / (1.0 + (bolt / members).value);
        Ok(Self {
            pitch,
            bolt,
            members,
            both,
        })
    }

    /// Pitch P.
    ///
    /// ```
    /// # use shankline::{prelude::*, units::newtons_per_millimetre};
    /// # let k = newtons_per_millimetre(300e3);
    /// assert_eq!(ElasticJoint::new(millimetres(1.75), k, k).unwrap().pitch(), millimetres(1.75));
    /// ```
    #[must_use]
    pub const fn pitch(&self) -> Length {
        self.pitch
    }

    /// Stiffness of the bolt, kb.
    ///
    /// ```
    /// # use shankline::{prelude::*, units::newtons_per_millimetre};
    /// # let k = newtons_per_millimetre(300e3);
    /// assert_eq!(ElasticJoint::new(millimetres(1.75), k, k).unwrap().bolt(), k);
    /// ```
    #[must_use]
    pub const fn bolt(&self) -> Stiffness {
        self.bolt
    }

    /// Stiffness of the members, km.
    ///
    /// ```
    /// # use shankline::{prelude::*, units::newtons_per_millimetre};
    /// # let k = newtons_per_millimetre(300e3);
    /// assert_eq!(ElasticJoint::new(millimetres(1.75), k, k).unwrap().members(), k);
    /// ```
    #[must_use]
    pub const fn members(&self) -> Stiffness {
        self.members
    }

    /// Preload over elongation of bolt and members together: kb km / (kb + km).
    ///
    /// ```
    /// # use shankline::{prelude::*, units::newtons_per_millimetre};
    /// let k = newtons_per_millimetre(300e3);
    /// let joint = ElasticJoint::new(millimetres(1.75), k, k).unwrap();
    /// assert!(((joint.stiffness() / k).value - 0.5).abs() < 1e-12);
    /// ```
    #[must_use]
    pub const fn stiffness(&self) -> Stiffness {
        self.both
    }

    /// Preload that a turn of the nut from snug gives: F = theta / (2 pi) P kb km / (kb + km).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for an angle that is negative, not finite or too large.
    ///
    /// ```
    /// # use shankline::{prelude::*, units::{degrees, newtons_per_millimetre}};
    /// # let k = newtons_per_millimetre(300e3);
    /// let joint = ElasticJoint::new(millimetres(2.0), k, k).unwrap();
    /// assert!((joint.preload(degrees(90.0)).unwrap() - newtons(75e3)).abs() < newtons(1e-6));
    /// ```
    #[inline]
    pub fn preload(&self, turn: Angle) -> Result<Force, Error> {
        let turn = not_negative("turn", turn)?;
        let per_radian = self.pitch.value * (self.both.value / (2.0 * PI));
        Ok(from_base(turn.value * per_radian))
    }

    /// Turn of the nut from snug to a preload: theta = 2 pi F (1/kb + 1/km) / P.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a preload that is negative, not finite or too large.
    ///
    /// ```
    /// # use shankline::{prelude::*, units::{degrees, newtons_per_millimetre}};
    /// # let k = newtons_per_millimetre(300e3);
    /// let joint = ElasticJoint::new(millimetres(2.0), k, k).unwrap();
    /// assert!((joint.turn(newtons(75e3)).unwrap() - degrees(90.0)).value.abs() < 1e-9);
    /// ```
    #[inline]
    pub fn turn(&self, preload: Force) -> Result<Angle, Error> {
        let preload = not_negative("preload", preload)?;
        let per_radian = self.pitch.value * (self.both.value / (2.0 * PI));
        Ok(from_base(preload.value / per_radian))
    }

    /// What a nut that turned back has lost: how to read a witness mark that no longer lines up.
    ///
    /// The mark shows the turn of nut against bolt. Embedment, creep and a stretched bolt lose preload
    /// with the mark still in line, and a mark across nut and ply moves too when the bolt turns with
    /// its nut: a mark in line proves nothing.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a preload or an angle that is negative, not finite or too large.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::{degrees, newtons_per_millimetre};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let (kb, km) = (newtons_per_millimetre(300e3), newtons_per_millimetre(1200e3));
    /// let joint = ElasticJoint::new(millimetres(1.75), kb, km)?;
    /// let loosened = joint.loosened(newtons(35e3), degrees(20.0))?;
    /// // Twenty degrees take two thirds of the preload.
    /// assert!((loosened.lost - newtons(23_333.3)).abs() < newtons(0.1));
    /// assert!((loosened.angle_to_zero - degrees(30.0)).value.abs() < 1e-9);
    /// # Ok(())
    /// # }
    /// ```
    pub fn loosened(&self, preload: Force, angle: Angle) -> Result<Loosened, Error> {
        let angle_to_zero = self.turn(preload)?;
        let lost = self.preload(angle)?.min(preload);
        Ok(Loosened {
            joint: *self,
            preload,
            angle,
            lost,
            left: preload - lost,
            angle_to_zero,
        })
    }

    /// Preload that an embedment takes: FZ = fZ kb km / (kb + km).
    ///
    /// Guide values of VDI 2230 for fZ are in
    /// [`Embedment`](crate::tables::tightening::Embedment) (recalled).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for an embedment that is negative, not finite or too large.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::{micrometres, newtons_per_millimetre};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let (kb, km) = (newtons_per_millimetre(300e3), newtons_per_millimetre(1200e3));
    /// let joint = ElasticJoint::new(millimetres(1.75), kb, km)?;
    /// assert!((joint.embedment_loss(micrometres(11.0))? - newtons(2640.0)).abs() < newtons(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    pub fn embedment_loss(&self, embedment: Length) -> Result<Force, Error> {
        let embedment = not_negative("embedment", embedment)?;
        Ok(from_base(embedment.value * self.both.value))
    }
}

impl ElasticJoint {
    fn steps(&self, title: &'static str) -> Derivation {
        Derivation::new(title).step(
            Step::new(
                "stiffness of bolt and members in series",
                "k",
                "1 / (1 / kb + 1 / km)",
                self.both,
            )
            .with("kb", self.bolt)
            .with("km", self.members),
        )
    }
}

/// What is left of a preload after the nut turned back.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::units::{degrees, newtons_per_millimetre};
/// # fn main() -> Result<(), shankline::Error> {
/// let k = newtons_per_millimetre(300e3);
/// let joint = ElasticJoint::new(millimetres(1.75), k, k)?;
/// let loosened = joint.loosened(newtons(30e3), joint.turn(newtons(30e3))?)?;
/// assert!(loosened.left < newtons(1e-6));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Loosened {
    /// The joint.
    pub joint: ElasticJoint,
    /// Preload before.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub preload: Force,
    /// Turn of nut against bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub angle: Angle,
    /// Preload lost, all of it at most.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub lost: Force,
    /// Preload left.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub left: Force,
    /// Turn at which nothing is left.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub angle_to_zero: Angle,
}

impl Loosened {
    /// The working.
    ///
    /// ```
    /// # use shankline::{prelude::*, units::{degrees, newtons_per_millimetre}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let k = newtons_per_millimetre(300e3);
    /// let joint = ElasticJoint::new(millimetres(1.75), k, k)?;
    /// joint.loosened(newtons(30e3), degrees(10.0))?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        self.joint
            .steps("Preload lost by loosening")
            .step(
                Step::new(
                    "turn that takes all",
                    "theta0",
                    "2 * pi * F / (P * k)",
                    self.angle_to_zero,
                )
                .with("F", self.preload)
                .with("P", self.joint.pitch)
                .with("k", self.joint.both),
            )
            .step(
                Step::new(
                    "preload lost",
                    "dF",
                    "min(theta / (2 * pi) * P * k, F)",
                    self.lost,
                )
                .with("theta", self.angle)
                .with("P", self.joint.pitch)
                .with("k", self.joint.both)
                .with("F", self.preload),
            )
            .step(
                Step::new("preload left", "Fl", "F - dF", self.left)
                    .with("F", self.preload)
                    .with("dF", self.lost),
            )
    }
}
