//! Torque and preload from the friction of thread and face.

use core::f64::consts::PI;

use super::friction::{FLANK, Friction};
use super::{NutFactor, preload_of, torque_of};
use crate::caution::{Caution, Cautions};
use crate::error::{Error, not_negative};
use crate::math;
use crate::spread::{Spread, ordered};
use crate::tables::methods;
use crate::thread::Thread;
use crate::units::{Angle, Force, Length, Torque, from_base};

#[cfg(feature = "serde")]
mod data;
mod make;
mod split;

pub use split::TorqueSplit;

/// Formula between torque and preload.
///
/// ```
/// use shankline::preload::TorqueForm;
/// assert!(TorqueForm::Linear.to_string().contains("linear"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum TorqueForm {
    /// The thread as a power screw, exactly:
    /// T = F [(dm/2) (tan lambda + mu sec alpha) / (1 - mu tan lambda sec alpha) + muc Db/2],
    /// with tan lambda = P / (pi dm) and dm = (d + dr)/2, dr the root diameter of the stress tables.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., Eq. 8-26 (Example 8-3 is reproduced).
    LeadAngle,
    /// T = F [P / (2 pi) + mu d2 / (2 cos 30) + muk Db/2], d2 the pitch diameter. P is what one turn moves the
    /// nut: the lead, where the thread has several starts.
    ///
    /// Source: JIS B 1083, formulas for the tightening torque read in a public reproduction; VDI 2230
    /// (2001), whose printed torques it reproduces, rounds the constants to 0.16 and 0.58.
    Linear,
    /// T = F [P / (2 pi) + mu rt / cos 30 + muk rn], with contact radii of one's own in thread and
    /// face. The linear form where rt = d2/2 and rn = Db/2.
    ///
    /// Source: Motosh, as Bickford gives it; recalled.
    ThreeTerm,
}

impl core::fmt::Display for TorqueForm {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.pad(match self {
            Self::LeadAngle => "lead-angle form (Shigley, 9th ed.)",
            Self::Linear => "linear form (JIS B 1083, VDI 2230)",
            Self::ThreeTerm => "three-term form (Motosh)",
        })
    }
}

/// The torque form of one thread, face and friction.
///
/// Needs the friction of thread and face with its range, never a default: take it from a
/// test, or from [`Friction::of_class`].
///
/// ```
/// use shankline::prelude::*;
/// use shankline::uom::si::{force::kilonewton, torque::newton_meter};
/// # fn main() -> Result<(), shankline::Error> {
/// let face = BearingFace::new(millimetres(16.63), millimetres(13.5))?;
/// let bearing = face.effective_diameter(BearingPressure::UniformWear);
/// let friction = Friction::new(0.10, 0.14, 0.16)?;
/// let form = FrictionForm::linear(&"M12".parse()?, bearing, friction, friction)?;
/// let preload = form.preload(newton_metres(93.0))?;
/// assert!((preload.nominal.get::<kilonewton>() - 42.1).abs() < 0.1);
/// let torque = form.torque(preload.nominal)?;
/// assert!((torque.nominal.get::<newton_meter>() - 93.0).abs() < 1e-9);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "data::RawFrictionForm")
)]
pub struct FrictionForm {
    form: TorqueForm,
    thread: Thread,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    thread_diameter: Length,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    bearing_diameter: Length,
    thread_friction: Friction,
    bearing_friction: Friction,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    prevailing: Spread<Torque>,
    /// Torque over preload for least, nominal and greatest friction.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    arm: Spread<Length>,
}

/// Which way the nut turns.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Way {
    On,
    Off,
}

impl FrictionForm {
    /// The form with the prevailing torque of a lock nut or insert: T = F arm + Tp.
    ///
    /// The least preload goes with the greatest prevailing torque.
    ///
    /// Source: FAA AC 43.13-1B, 7-40 (the friction drag torque is added to the desired torque).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a torque that is negative, not finite or out of order.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.12, 0.14)?;
    /// let free = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// let lock = Spread { min: newton_metres(1.0), nominal: newton_metres(4.0), max: newton_metres(8.0) };
    /// let locking = free.with_prevailing(lock)?;
    /// let torque = newton_metres(80.0);
    /// let less = free.preload(torque - newton_metres(8.0))?.min;
    /// assert!((locking.preload(torque)?.min - less).abs() < newtons(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    pub fn with_prevailing(self, torque: Spread<Torque>) -> Result<Self, Error> {
        Ok(Self {
            prevailing: ordered("prevailing torque", torque)?,
            ..self
        })
    }

    /// The formula.
    ///
    /// ```
    /// # use shankline::{preload::TorqueForm, prelude::*};
    /// # let friction = Friction::new(0.1, 0.12, 0.14).unwrap();
    /// let form = FrictionForm::shigley(&"M12".parse().unwrap(), friction, friction).unwrap();
    /// assert_eq!(form.form(), TorqueForm::LeadAngle);
    /// ```
    #[must_use]
    pub const fn form(&self) -> TorqueForm {
        self.form
    }

    /// The thread.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # let friction = Friction::new(0.1, 0.12, 0.14).unwrap();
    /// let form = FrictionForm::shigley(&"M12".parse().unwrap(), friction, friction).unwrap();
    /// assert_eq!(form.thread().to_string(), "M12");
    /// ```
    #[must_use]
    pub const fn thread(&self) -> &Thread {
        &self.thread
    }

    /// Friction of the thread.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # let friction = Friction::new(0.1, 0.12, 0.14).unwrap();
    /// let form = FrictionForm::shigley(&"M12".parse().unwrap(), friction, friction).unwrap();
    /// assert_eq!(form.thread_friction(), friction);
    /// ```
    #[must_use]
    pub const fn thread_friction(&self) -> Friction {
        self.thread_friction
    }

    /// Friction of the bearing face.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # let friction = Friction::new(0.1, 0.12, 0.14).unwrap();
    /// let form = FrictionForm::shigley(&"M12".parse().unwrap(), friction, friction).unwrap();
    /// assert_eq!(form.bearing_friction(), friction);
    /// ```
    #[must_use]
    pub const fn bearing_friction(&self) -> Friction {
        self.bearing_friction
    }

    /// Diameter the thread friction acts at: dm, d2 or twice rt, as the form has it.
    ///
    /// ```
    /// # use shankline::{prelude::*, uom::si::length::inch};
    /// # let friction = Friction::new(0.1, 0.12, 0.14).unwrap();
    /// let form = FrictionForm::shigley(&"3/4-16".parse().unwrap(), friction, friction).unwrap();
    /// assert!((form.thread_diameter().get::<inch>() - 0.7093).abs() < 1e-4); // Example 8-3
    /// ```
    #[must_use]
    pub const fn thread_diameter(&self) -> Length {
        self.thread_diameter
    }

    /// Effective diameter of the face, Db.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # let friction = Friction::new(0.1, 0.12, 0.14).unwrap();
    /// let form = FrictionForm::shigley(&"M12".parse().unwrap(), friction, friction).unwrap();
    /// assert!((form.bearing_diameter() - millimetres(15.0)).value.abs() < 1e-12);
    /// ```
    #[must_use]
    pub const fn bearing_diameter(&self) -> Length {
        self.bearing_diameter
    }

    /// Prevailing torque; zero unless given.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # let friction = Friction::new(0.1, 0.12, 0.14).unwrap();
    /// let form = FrictionForm::shigley(&"M12".parse().unwrap(), friction, friction).unwrap();
    /// assert_eq!(form.prevailing_torque().max, newton_metres(0.0));
    /// ```
    #[must_use]
    pub const fn prevailing_torque(&self) -> Spread<Torque> {
        self.prevailing
    }

    /// What the user must be told: the three-term form was recalled.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # let friction = Friction::new(0.1, 0.12, 0.14).unwrap();
    /// let form = FrictionForm::shigley(&"M12".parse().unwrap(), friction, friction).unwrap();
    /// assert_eq!(form.cautions().iter().count(), 0);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let recalled = self.form == TorqueForm::ThreeTerm;
        Cautions::default().with(
            recalled
                .then_some(methods::MOTOSH)
                .and_then(Caution::of_method),
        )
    }

    /// Lead angle at the diameter the thread friction acts at: tan lambda = P / (pi dm).
    ///
    /// ```
    /// # use shankline::{prelude::*, uom::si::angle::degree};
    /// # let friction = Friction::new(0.1, 0.12, 0.14).unwrap();
    /// let form = FrictionForm::shigley(&"3/4-16".parse().unwrap(), friction, friction).unwrap();
    /// assert!((form.lead_angle_of_thread().get::<degree>() - 1.6066).abs() < 1.5e-4); // Example 8-3
    /// ```
    #[must_use]
    pub fn lead_angle_of_thread(&self) -> Angle {
        from_base(math::atan(self.lead_tangent()))
    }

    /// Whether the thread holds its preload without the friction of the face, at the least friction:
    /// mu / cos 30 > tan lambda.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.12, 0.14)?;
    /// assert!(FrictionForm::shigley(&"M12".parse()?, friction, friction)?.is_self_locking());
    /// let slippery = Friction::new(0.02, 0.03, 0.04)?;
    /// assert!(!FrictionForm::shigley(&"M12".parse()?, slippery, slippery)?.is_self_locking());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn is_self_locking(&self) -> bool {
        self.thread_friction.min() * FLANK > self.lead_tangent()
    }

    /// Preload that a torque gives. The least goes with the greatest friction and prevailing torque.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a torque that is negative, not finite or below the prevailing
    /// torque, or so large that the preload is not finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.12, 0.14)?;
    /// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// let preload = form.preload(newton_metres(80.0))?;
    /// assert!(preload.min < preload.nominal && preload.nominal < preload.max);
    /// assert!(form.preload(newton_metres(-1.0)).is_err());
    /// # Ok(())
    /// # }
    /// ```
    #[inline]
    pub fn preload(&self, torque: Torque) -> Result<Spread<Force>, Error> {
        preload_of(Spread::exact(torque), self.arm, self.prevailing)
    }

    /// Preload that a torque with a tolerance gives: the least torque with the greatest friction,
    /// the greatest with the least.
    ///
    /// # Errors
    ///
    /// As [`preload`](Self::preload), and for a torque out of order.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.12, 0.14)?;
    /// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// let wrench = Spread { min: newton_metres(76.0), nominal: newton_metres(80.0), max: newton_metres(84.0) };
    /// assert!(form.preload_within(wrench)?.min < form.preload(newton_metres(80.0))?.min);
    /// # Ok(())
    /// # }
    /// ```
    pub fn preload_within(&self, torque: Spread<Torque>) -> Result<Spread<Force>, Error> {
        preload_of(
            ordered("tightening torque", torque)?,
            self.arm,
            self.prevailing,
        )
    }

    /// Torque that gives a preload, for least, nominal and greatest friction and prevailing torque.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a preload that is negative or not finite, or so large that the
    /// torque is not finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.12, 0.14)?;
    /// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// let torque = form.torque(newtons(40e3))?;
    /// assert!(torque.min < torque.nominal && torque.nominal < torque.max);
    /// # Ok(())
    /// # }
    /// ```
    #[inline]
    pub fn torque(&self, preload: Force) -> Result<Spread<Torque>, Error> {
        torque_of(preload, self.arm, self.prevailing)
    }

    /// Torque that turns the nut off against a preload: the torque of the pitch helps.
    ///
    /// Linear and three-term form: the sign of P / (2 pi) turns; lead-angle form: that of
    /// tan lambda above and below the line. The prevailing torque is added. A negative torque means
    /// that the preload turns the nut off by itself. Rust, paint and locking compound are not in it.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a preload that is negative or not finite, or so large that the
    /// torque is not finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.10, 0.12, 0.14)?;
    /// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// let preload = newtons(40e3);
    /// let pitch = 40e3 * 1.75e-3 / std::f64::consts::PI;
    /// let difference = form.torque(preload)?.nominal - form.loosening_torque(preload)?.nominal;
    /// assert!((difference.value - pitch).abs() < 1e-9);
    /// # Ok(())
    /// # }
    /// ```
    pub fn loosening_torque(&self, preload: Force) -> Result<Spread<Torque>, Error> {
        // The greatest tightening torque bounds every loosening torque, and is finite.
        self.torque(preload)?;
        let arm = self.arms(Way::Off);
        let torque = |arm: Length, prevailing: Torque| -> Torque {
            from_base(preload.value * arm.value + prevailing.value)
        };
        Ok(Spread {
            min: torque(arm.min, self.prevailing.min),
            nominal: torque(arm.nominal, self.prevailing.nominal),
            max: torque(arm.max, self.prevailing.max),
        })
    }

    /// The nut factor K = T / (F d) of this thread, face and friction, without prevailing torque.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if K passes one.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.08, 0.12, 0.16)?;
    /// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// let k = form.nut_factor()?;
    /// assert!((k.min() - 0.115).abs() < 5e-4 && (k.max() - 0.207).abs() < 5e-4);
    /// # Ok(())
    /// # }
    /// ```
    pub fn nut_factor(&self) -> Result<NutFactor, Error> {
        let d = self.thread.nominal_diameter();
        let k = self.arm.map(|arm| (arm / d).value);
        NutFactor::new(k.min, k.nominal, k.max)
    }

    fn lead_tangent(&self) -> f64 {
        self.thread.lead().value / (PI * self.thread_diameter.value)
    }

    /// Torque in the thread over preload, in metres.
    pub(super) fn thread_arm_on(&self, friction: f64) -> f64 {
        self.thread_arm(friction, Way::On)
    }

    fn thread_arm(&self, friction: f64, way: Way) -> f64 {
        let radius = 0.5 * self.thread_diameter.value;
        let flank = friction * FLANK;
        match (self.form, way) {
            (TorqueForm::LeadAngle, way) => {
                let lead = match way {
                    Way::On => self.lead_tangent(),
                    Way::Off => -self.lead_tangent(),
                };
                radius * (lead + flank) / (1.0 - flank * lead)
            }
            (_, Way::On) => self.thread.lead().value / (2.0 * PI) + radius * flank,
            (_, Way::Off) => radius * flank - self.thread.lead().value / (2.0 * PI),
        }
    }

    fn face_arm(&self, friction: f64) -> f64 {
        0.5 * self.bearing_diameter.value * friction
    }

    fn arms(&self, way: Way) -> Spread<Length> {
        let arm = |thread: f64, face: f64| -> Length {
            from_base(self.thread_arm(thread, way) + self.face_arm(face))
        };
        let (thread, face) = (self.thread_friction, self.bearing_friction);
        Spread {
            min: arm(thread.min(), face.min()),
            nominal: arm(thread.nominal(), face.nominal()),
            max: arm(thread.max(), face.max()),
        }
    }

    /// Torque over preload, for the least, nominal and greatest friction.
    pub(super) const fn arm(&self) -> Spread<Length> {
        self.arm
    }
}

/// Refuses a preload that is negative or not finite.
pub(super) fn sane_preload(preload: Force) -> Result<Force, Error> {
    not_negative("preload", preload)
}
