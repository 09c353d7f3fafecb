//! Coefficients of friction in thread and bearing face.

use core::f64::consts::PI;

use crate::error::{Allowed, Error, out_of_range, positive};
use crate::preload::NutFactor;
use crate::spread::{Spread, ordered};
use crate::tables::friction::{FrictionClass, FrictionClassRow};
use crate::thread::Thread;
use crate::units::{Force, Length, Torque};

/// 1 / cos 30: flank friction acts on the flank, not across the axis.
pub(super) const FLANK: f64 = 1.154_700_538_379_251_5;

/// A coefficient of friction, always with its range.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let oiled = Friction::new(0.08, 0.12, 0.16)?;
/// assert!(oiled.min() < oiled.nominal() && oiled.nominal() < oiled.max());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "RawFriction")
)]
pub struct Friction {
    min: f64,
    nominal: f64,
    max: f64,
}

#[cfg(feature = "serde")]
#[derive(serde::Deserialize)]
#[serde(
    crate = "crate::objects",
    deny_unknown_fields,
    expecting = "a coefficient of friction with min, nominal and max"
)]
struct RawFriction {
    min: f64,
    nominal: f64,
    max: f64,
}

#[cfg(feature = "serde")]
impl TryFrom<RawFriction> for Friction {
    type Error = Error;
    fn try_from(raw: RawFriction) -> Result<Self, Error> {
        Self::new(raw.min, raw.nominal, raw.max)
    }
}

impl Friction {
    /// Least, nominal and greatest coefficient.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless 0 < min <= nominal <= max <= 1.
    ///
    /// ```
    /// use shankline::preload::Friction;
    /// assert!(Friction::new(0.08, 0.12, 0.16).is_ok());
    /// assert!(Friction::new(0.0, 0.12, 0.16).is_err());
    /// ```
    pub fn new(min: f64, nominal: f64, max: f64) -> Result<Self, Error> {
        for friction in [min, nominal, max] {
            positive("coefficient of friction", friction)?;
            if friction > 1.0 {
                return Err(out_of_range(
                    "coefficient of friction",
                    friction,
                    Allowed::AtMost(1.0.into()),
                ));
            }
        }
        ordered("coefficient of friction", Spread { min, nominal, max })?;
        Ok(Self { min, nominal, max })
    }

    /// The range of a friction class of VDI 2230; its middle is taken as nominal.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for class E, which has no upper limit.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::friction::FrictionClass;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::of_class(FrictionClass::B)?;
    /// assert_eq!((friction.min(), friction.max()), (0.08, 0.16));
    /// assert!(Friction::of_class(FrictionClass::E).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_class(class: FrictionClass) -> Result<Self, Error> {
        match FrictionClassRow::all()
            .iter()
            .find(|row| row.class == class)
        {
            Some(row) => Self::from_row(row),
            None => Err(open_class()),
        }
    }

    /// The range of one row of the friction classes.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for a class without upper limit.
    ///
    /// ```
    /// use shankline::{preload::Friction, tables::friction::FrictionClassRow};
    /// let friction = Friction::from_row(&FrictionClassRow::all()[0]).unwrap();
    /// assert!((friction.nominal() - 0.07).abs() < 1e-12);
    /// ```
    pub fn from_row(row: &FrictionClassRow) -> Result<Self, Error> {
        let max = row.friction_max.ok_or_else(open_class)?;
        Self::new(row.friction_min, f64::midpoint(row.friction_min, max), max)
    }

    /// The coefficient that thread and face would both need for a nut factor, by the linear form:
    /// mu = (K d - P / (2 pi)) / (d2 / (2 cos 30) + Db / 2).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if the nut factor is below that of the bare pitch, P / (2 pi d), or the
    /// bearing diameter is not positive and finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let k = NutFactor::new(0.138, 0.161, 0.184)?;
    /// let friction = Friction::from_nut_factor(k, &"M12".parse()?, millimetres(15.07))?;
    /// assert!((friction.nominal() - 0.12).abs() < 1e-3);
    /// # Ok(())
    /// # }
    /// ```
    pub fn from_nut_factor(
        nut_factor: NutFactor,
        thread: &Thread,
        bearing_diameter: Length,
    ) -> Result<Self, Error> {
        positive("bearing diameter", bearing_diameter)?;
        let friction = |k: f64| {
            total(
                k * thread.nominal_diameter().value,
                thread,
                bearing_diameter,
            )
        };
        let (min, nominal, max) = (nut_factor.min(), nut_factor.nominal(), nut_factor.max());
        if friction(min) > 0.0 {
            Self::new(friction(min), friction(nominal), friction(max))
        } else {
            let bare = thread.lead() / (2.0 * PI * thread.nominal_diameter());
            Err(out_of_range("nut factor", min, Allowed::Above(bare.into())))
        }
    }

    /// Least coefficient: the highest preload for a torque.
    ///
    /// ```
    /// # use shankline::preload::Friction;
    /// assert_eq!(Friction::new(0.08, 0.12, 0.16).unwrap().min(), 0.08);
    /// ```
    #[must_use]
    pub const fn min(self) -> f64 {
        self.min
    }

    /// Nominal coefficient.
    ///
    /// ```
    /// # use shankline::preload::Friction;
    /// assert_eq!(Friction::new(0.08, 0.12, 0.16).unwrap().nominal(), 0.12);
    /// ```
    #[must_use]
    pub const fn nominal(self) -> f64 {
        self.nominal
    }

    /// Greatest coefficient: the lowest preload for a torque.
    ///
    /// ```
    /// # use shankline::preload::Friction;
    /// assert_eq!(Friction::new(0.08, 0.12, 0.16).unwrap().max(), 0.16);
    /// ```
    #[must_use]
    pub const fn max(self) -> f64 {
        self.max
    }
}

#[cold]
fn open_class() -> Error {
    Error::NoValue {
        quantity: "range of friction",
        subject: "this friction class of VDI 2230".into(),
        reason: "the class has no upper limit",
    }
}

/// The coefficient of both contacts for a torque over a preload, in metres.
fn total(arm: f64, thread: &Thread, bearing_diameter: Length) -> f64 {
    let flank_arm = 0.5 * FLANK * thread.basic_pitch_diameter().value;
    (arm - thread.lead().value / (2.0 * PI)) / (flank_arm + 0.5 * bearing_diameter.value)
}

/// Total coefficient of friction from a torque test, thread and face taken as equal:
/// mu = (T/F - P / (2 pi)) / (d2 / (2 cos 30) + Db / 2).
///
/// T measured torque (prevailing torque taken off), F measured preload, P pitch (of several starts, the
/// lead), d2 pitch diameter, Db effective bearing diameter. The linear form solved for the friction; ISO
/// 16047 evaluates its tests so (recalled).
///
/// # Errors
///
/// [`Error::OutOfRange`] for a torque, preload or bearing diameter that is not positive and
/// finite, and for a torque below that of the bare pitch.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::preload::total_friction;
/// # fn main() -> Result<(), shankline::Error> {
/// let friction =
///     total_friction(newton_metres(93.0), newtons(41.98e3), &"M12".parse()?, millimetres(15.07))?;
/// assert!((friction - 0.14).abs() < 1e-3);
/// # Ok(())
/// # }
/// ```
pub fn total_friction(
    torque: Torque,
    preload: Force,
    thread: &Thread,
    bearing_diameter: Length,
) -> Result<f64, Error> {
    positive("measured torque", torque)?;
    positive("preload", preload)?;
    positive("bearing diameter", bearing_diameter)?;
    let friction = total(torque.value / preload.value, thread, bearing_diameter);
    measured("measured torque", torque, friction)
}

/// Coefficient of friction of the thread from its share of the torque:
/// mu = (Tth/F - P / (2 pi)) / (d2 / (2 cos 30)).
///
/// # Errors
///
/// [`Error::OutOfRange`] for a torque or preload that is not positive and finite, and for a
/// torque below that of the bare pitch.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::preload::thread_friction;
/// # fn main() -> Result<(), shankline::Error> {
/// let friction = thread_friction(newton_metres(48.0), newtons(41.98e3), &"M12".parse()?)?;
/// assert!((friction - 0.138).abs() < 1e-3);
/// # Ok(())
/// # }
/// ```
pub fn thread_friction(
    thread_torque: Torque,
    preload: Force,
    thread: &Thread,
) -> Result<f64, Error> {
    positive("thread torque", thread_torque)?;
    positive("preload", preload)?;
    let friction = total(
        thread_torque.value / preload.value,
        thread,
        crate::units::millimetres(0.0),
    );
    measured("thread torque", thread_torque, friction)
}

/// Coefficient of friction of the bearing face from its share of the torque: mu = Tb / (F Db / 2).
///
/// # Errors
///
/// [`Error::OutOfRange`] for a torque, preload or bearing diameter that is not positive and finite.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::preload::bearing_friction;
/// # fn main() -> Result<(), shankline::Error> {
/// let friction = bearing_friction(newton_metres(45.0), newtons(40e3), millimetres(15.0))?;
/// assert!((friction - 0.15).abs() < 1e-12);
/// # Ok(())
/// # }
/// ```
pub fn bearing_friction(
    bearing_torque: Torque,
    preload: Force,
    bearing_diameter: Length,
) -> Result<f64, Error> {
    positive("bearing torque", bearing_torque)?;
    positive("preload", preload)?;
    positive("bearing diameter", bearing_diameter)?;
    let friction = 2.0 * (bearing_torque.value / preload.value) / bearing_diameter.value;
    measured("bearing torque", bearing_torque, friction)
}

/// A friction from a test, if it is one.
fn measured(name: &'static str, torque: Torque, friction: f64) -> Result<f64, Error> {
    positive("coefficient of friction", friction)
        .map_err(|_| out_of_range(name, torque, Allowed::Positive))
}
