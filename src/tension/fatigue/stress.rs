//! Stresses in the thread under a load that comes and goes.

use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::tension::{JointDiagram, JointState, at_most, sane_area, sane_stress};
use crate::units::{Area, Force, Stress};

/// Stresses in the thread under a load that comes and goes.
///
/// ```
/// use shankline::{prelude::*, tension::FatigueStress};
/// // Shigley, Example 8-5.
/// let stress = FatigueStress::new(ksi(63.72), ksi(3.10), ksi(66.82)).unwrap();
/// assert!((stress.slope() - 1.0).abs() < 1e-9);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct FatigueStress {
    /// Stress of the preload alone, `sigma_i`.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub preload: Stress,
    /// Amplitude `sigma_a`.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub amplitude: Stress,
    /// Mean stress `sigma_m`.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub mean: Stress,
}

impl FatigueStress {
    /// Stresses that the caller states.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for an amplitude that is not positive, a negative preload stress, a
    /// mean stress below it, or one a million times the amplitude above it.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::FatigueStress};
    /// assert!(FatigueStress::new(ksi(60.0), ksi(3.0), ksi(50.0)).is_err());
    /// ```
    pub fn new(preload: Stress, amplitude: Stress, mean: Stress) -> Result<Self, Error> {
        not_negative("stress of the preload", preload)?;
        sane_stress("stress amplitude", amplitude)?;
        not_negative("mean stress", mean)?;
        at_most("mean stress", mean, preload + 1e6 * amplitude)?;
        if mean < preload {
            return Err(out_of_range(
                "mean stress",
                mean,
                Allowed::AtLeast(preload.into()),
            ));
        }
        Ok(Self {
            preload,
            amplitude,
            mean,
        })
    }

    /// Stresses of a joint whose load goes between two values: `sigma_i` = Fi / At, `sigma_a` and `sigma_m` half
    /// the difference and half the sum of the bolt forces over At.
    ///
    /// With Fi = 0 the bolt carries the whole load (C = 1). A least load below zero presses the plies together and takes
    /// its share C off the preload in the bolt; a mean below the preload counts as the preload.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., Eqs. 8-35 to 8-37.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless 0 <= least < greatest load, and if the greatest separates a
    /// preloaded joint: then the load share no longer holds, and the joint fails in fatigue soon.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{FatigueStress, JointDiagram, LoadShare}};
    /// # use shankline::units::newtons_per_millimetre;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let share = LoadShare::new(newtons_per_millimetre(1e5), newtons_per_millimetre(3e5))?;
    /// let joint = JointDiagram::new(share, newtons(60e3))?;
    /// let area = square_millimetres(100.0);
    /// let stress = FatigueStress::of_joint(&joint, area, newtons(0.0), newtons(8e3))?;
    /// assert!((stress.amplitude - megapascals(10.0)).value.abs() < 1e-3);
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_joint(
        joint: &JointDiagram,
        stress_area: Area,
        least: Force,
        greatest: Force,
    ) -> Result<Self, Error> {
        let (low, high) = bolt_range(joint, stress_area, least, greatest)?;
        let preload: Stress = joint.preload / stress_area;
        let mean: Stress = 0.5 * (high + low) / stress_area;
        // A mean below the preload would allow more: that is not counted on.
        Self::new(preload, 0.5 * (high - low) / stress_area, mean.max(preload))
    }

    /// Slope of the load line, `sigma_a` / (`sigma_m` - `sigma_i`); infinite if the mean is that of the
    /// preload. 1 for a load that falls to zero.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::FatigueStress};
    /// let stress = FatigueStress::new(ksi(60.0), ksi(3.0), ksi(66.0)).unwrap();
    /// assert!((stress.slope() - 0.5).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn slope(&self) -> f64 {
        self.amplitude.value / (self.mean - self.preload).value
    }
}

/// Bolt forces at the least and the greatest load, of a joint that stays clamped.
pub(in crate::tension) fn bolt_range(
    joint: &JointDiagram,
    stress_area: Area,
    least: Force,
    greatest: Force,
) -> Result<(Force, Force), Error> {
    sane_area("stress area", stress_area)?;
    let (low, high) = (joint.under(least)?, joint.under(greatest)?);
    if greatest <= least {
        return Err(out_of_range(
            "greatest load",
            greatest,
            Allowed::Above(least.into()),
        ));
    }
    if high.state == JointState::Separated && joint.preload.value > 0.0 {
        return Err(out_of_range(
            "greatest load",
            greatest,
            Allowed::AtMost(joint.separation_load.into()),
        ));
    }
    Ok((low.bolt, high.bolt))
}
