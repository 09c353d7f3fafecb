//! Loads in the plane of a group, and what they come to.

use alloc::string::ToString;

use super::pattern::{BoltPattern, Point, SPOT, coordinate};
use crate::error::{Error, not_negative};
use crate::math::{cos, hypot, sin};
use crate::units::{Angle, Force, Length, Torque, from_base};

/// A force in the shear plane at a point, with or without a moment.
///
/// ```
/// use shankline::strength::group::PlaneLoad;
/// use shankline::units::{millimetres, newton_metres, newtons};
/// let load = PlaneLoad::new(newtons(0.0), newtons(-5e3), millimetres(300.0), millimetres(0.0))
///     .with_moment(newton_metres(-200.0));
/// assert_eq!(load.moment, newton_metres(-200.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct PlaneLoad {
    /// Force to the right.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub force_x: Force,
    /// Force up.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub force_y: Force,
    /// Where it acts.
    pub at: Point,
    /// Moment besides, positive anticlockwise.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub moment: Torque,
}

impl PlaneLoad {
    /// A force at a point.
    ///
    /// ```
    /// use shankline::strength::group::PlaneLoad;
    /// use shankline::units::{millimetres, newtons};
    /// let load = PlaneLoad::new(newtons(1.0), newtons(2.0), millimetres(3.0), millimetres(4.0));
    /// assert_eq!(load.at.y, millimetres(4.0));
    /// ```
    #[must_use]
    pub const fn new(force_x: Force, force_y: Force, x: Length, y: Length) -> Self {
        Self {
            force_x,
            force_y,
            at: Point { x, y },
            moment: from_base(0.0),
        }
    }

    /// The load of the coefficient tables of the AISC Manual, Part 7: it passes a point level with the
    /// centroid of the group, at the horizontal distance `eccentricity` to its right, and points down,
    /// turned from the vertical by `angle` towards the right.
    ///
    /// ```
    /// use shankline::strength::group::{BoltPattern, PlaneLoad};
    /// use shankline::units::{degrees, inches, newtons};
    /// let line = BoltPattern::rows_and_columns(3, 1, inches(3.0), inches(3.0)).unwrap();
    /// let load = PlaneLoad::eccentric(&line, newtons(10.0), inches(3.0), degrees(0.0));
    /// assert_eq!((load.force_y, load.at.x), (newtons(-10.0), inches(3.0)));
    /// ```
    #[must_use]
    pub fn eccentric(
        pattern: &BoltPattern,
        force: Force,
        eccentricity: Length,
        angle: Angle,
    ) -> Self {
        let Point { x, y } = pattern.centroid();
        Self::new(
            sin(angle.value) * force,
            -cos(angle.value) * force,
            x + eccentricity,
            y,
        )
    }

    /// The load with a moment besides.
    ///
    /// ```
    /// use shankline::strength::group::PlaneLoad;
    /// use shankline::units::{millimetres, newton_metres, newtons};
    /// let nothing = PlaneLoad::new(newtons(0.0), newtons(0.0), millimetres(0.0), millimetres(0.0));
    /// assert_eq!(nothing.with_moment(newton_metres(7.0)).moment, newton_metres(7.0));
    /// ```
    #[must_use]
    pub const fn with_moment(mut self, moment: Torque) -> Self {
        self.moment = moment;
        self
    }
}

/// All loads together, moved to the centroid of the group.
///
/// ```
/// use shankline::strength::group::{BoltPattern, PlaneLoad};
/// use shankline::units::{millimetres, newton_metres, newtons};
/// # fn main() -> Result<(), shankline::Error> {
/// let pattern = BoltPattern::circle(4, millimetres(100.0))?;
/// let load = PlaneLoad::new(newtons(0.0), newtons(-5e3), millimetres(300.0), millimetres(0.0));
/// let group = pattern.elastic(&[load, load])?;
/// assert!((group.load.moment - newton_metres(-3000.0)).value.abs() < 1e-9);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PlaneResultant {
    /// Force to the right.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub force_x: Force,
    /// Force up.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub force_y: Force,
    /// Size of the force.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub force: Force,
    /// Moment about the centroid, positive anticlockwise.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub moment: Torque,
}

impl PlaneResultant {
    /// Refuses loads that are not finite or next to nothing, and a moment on bolts that are all in one spot.
    pub(super) fn of(loads: &[PlaneLoad], pattern: &BoltPattern) -> Result<Self, Error> {
        let centroid = pattern.centroid();
        let (mut x, mut y, mut moment) = (0.0, 0.0, 0.0);
        for load in loads {
            coordinate("coordinate of a load", load.at.x)?;
            coordinate("coordinate of a load", load.at.y)?;
            not_negative("size of a load in the plane", load.force_x.abs())?;
            not_negative("size of a load in the plane", load.force_y.abs())?;
            not_negative("size of a moment in the plane", load.moment.abs())?;
            x += load.force_x.value;
            y += load.force_y.value;
            moment += load.moment.value + (load.at.x - centroid.x).value * load.force_y.value
                - (load.at.y - centroid.y).value * load.force_x.value;
        }
        let force: Force = from_base(hypot(x, y));
        let moment: Torque = from_base(moment);
        if pattern.gyration().is_none() && moment.abs().value > SPOT * force.value {
            return Err(Error::Mismatch(
                "the bolts are all in one place and carry no moment".to_string(),
            ));
        }
        Ok(Self {
            force_x: from_base(x),
            force_y: from_base(y),
            force,
            moment,
        })
    }
}

/// The force on one bolt.
///
/// ```
/// use shankline::strength::group::{BoltPattern, PlaneLoad};
/// use shankline::units::{millimetres, newtons};
/// # fn main() -> Result<(), shankline::Error> {
/// let pattern = BoltPattern::circle(4, millimetres(100.0))?;
/// let load = PlaneLoad::new(newtons(400.0), newtons(0.0), millimetres(0.0), millimetres(0.0));
/// assert!((pattern.elastic(&[load])?.forces[2].x - newtons(100.0)).abs() < newtons(1e-9));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BoltForce {
    /// To the right.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub x: Force,
    /// Up.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub y: Force,
    /// Size of the resultant.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub resultant: Force,
}

impl BoltForce {
    #[inline]
    pub(super) fn new(x: f64, y: f64) -> Result<Self, Error> {
        // Squares of forces that fit any structure do not overflow; those that do are refused.
        let resultant = from_base(crate::math::sqrt(x * x + y * y));
        crate::error::not_negative("force on a bolt", resultant)?;
        Ok(Self {
            x: from_base(x),
            y: from_base(y),
            resultant,
        })
    }
}
