//! Pins that bend before the plies bear evenly.

use super::PinJoint;
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, positive, sane_stress};
use crate::math;
use crate::tables::methods;
use crate::units::{Force, Length, Stress, Torque};

/// A pin too weak in bending for plies bearing evenly: they bear only next to the shear faces.
///
/// ```
/// use shankline::strength::pin::{PinJoint, weak_pin};
/// use shankline::units::{megapascals, millimetres, newton_metres};
/// # fn main() -> Result<(), shankline::Error> {
/// let mm = millimetres;
/// let joint = PinJoint::new(mm(20.0), mm(40.0), mm(60.0), mm(0.0))?;
/// let bearing = megapascals(400.0);
/// let weak = weak_pin(&joint, newton_metres(500.0), bearing, bearing)?;
/// // With even bearing 500 N m would be reached at 2 M / e = 28.6 kN.
/// assert!(weak.load.value > 28.6e3);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct WeakPin {
    /// The joint.
    pub joint: PinJoint,
    /// Moment strength of the pin.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub moment: Torque,
    /// Bearing strength of an outer ply.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub outer_bearing: Stress,
    /// Bearing strength of the inner ply.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub inner_bearing: Stress,
    /// Load at which the pin fails in bending, at the level of the strengths.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub load: Force,
    /// Thickness of each outer ply that bears, F / (2 d Fbo).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub outer_active: Length,
    /// Thickness of the inner ply that bears, half of it at each face, F / (d Fbi).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub inner_active: Length,
}

/// Load of a pin whose plies bear at full strength next to the shear faces only.
///
/// With line strengths wo = d Fbo of one outer ply and wi = d Fbi of the inner ply, and
/// C = wo wi / (wo + wi): F = 2 C (sqrt(c^2 + 2 M / C) - c).
///
/// Source: derived here from equilibrium (the bearing blocks as long as the load needs); the lug method
/// of the Air Force manual is recalled to have the same form. The result carries a caution.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a moment that is not positive and finite, a stress outside 1 Pa to 1e6 GPa, and where the load would need
/// more thickness than a ply has: then the pin is not the weak part, and the plies govern with even bearing.
///
/// ```
/// use shankline::strength::pin::{PinJoint, weak_pin};
/// use shankline::units::{megapascals, millimetres, newton_metres};
/// # fn main() -> Result<(), shankline::Error> {
/// let mm = millimetres;
/// let joint = PinJoint::new(mm(20.0), mm(4.0), mm(6.0), mm(0.0))?;
/// let bearing = megapascals(400.0);
/// assert!(weak_pin(&joint, newton_metres(500.0), bearing, bearing).is_err()); // thin plies govern
/// # Ok(())
/// # }
/// ```
pub fn weak_pin(
    joint: &PinJoint,
    moment: Torque,
    outer_bearing: Stress,
    inner_bearing: Stress,
) -> Result<WeakPin, Error> {
    let strength = positive("moment strength of the pin", moment)?.value;
    let d = joint.diameter.value;
    let outer = d * sane_stress("bearing strength of the outer ply", outer_bearing)?.value;
    let inner = d * sane_stress("bearing strength of the inner ply", inner_bearing)?.value;
    // As 1 / (1/wo + 1/wi), so that the product cannot overflow.
    let both = 1.0 / (1.0 / outer + 1.0 / inner);
    let gap = joint.gap.value;
    // 2 C (sqrt(c^2 + q) - c) without the difference of near equals.
    let q = 2.0 * strength / both;
    let load: Force = crate::units::from_base(2.0 * both * (q / (math::sqrt(gap * gap + q) + gap)));
    positive("load of the pin", load)?;
    let outer_active: Length = crate::units::from_base(load.value / (2.0 * outer));
    let inner_active: Length = crate::units::from_base(load.value / inner);
    for (name, active, ply) in [
        ("bearing length in the outer ply", outer_active, joint.outer),
        ("bearing length in the inner ply", inner_active, joint.inner),
    ] {
        if active > ply {
            return Err(out_of_range(name, active, Allowed::AtMost(ply.into())));
        }
    }
    Ok(WeakPin {
        joint: *joint,
        moment,
        outer_bearing,
        inner_bearing,
        load,
        outer_active,
        inner_active,
    })
}

impl WeakPin {
    /// What the user must be told: the form was derived and recalled, not read.
    ///
    /// ```
    /// # use shankline::strength::pin::{PinJoint, weak_pin};
    /// # use shankline::units::{megapascals, millimetres, newton_metres};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let mm = millimetres;
    /// # let joint = PinJoint::new(mm(20.0), mm(40.0), mm(60.0), mm(0.0))?;
    /// let weak = weak_pin(&joint, newton_metres(500.0), megapascals(400.0), megapascals(400.0))?;
    /// assert_eq!(weak.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::of_method(methods::WEAK_PIN))
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::strength::pin::{PinJoint, weak_pin};
    /// # use shankline::units::{megapascals, millimetres, newton_metres};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let mm = millimetres;
    /// # let joint = PinJoint::new(mm(20.0), mm(40.0), mm(60.0), mm(2.0))?;
    /// let weak = weak_pin(&joint, newton_metres(500.0), megapascals(400.0), megapascals(300.0))?;
    /// weak.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        const FORMULA: &str = "2 * d * Fo * Fi / (Fo + Fi) \
             * (sqrt(c^2 + 2 * M * (Fo + Fi) / (d * Fo * Fi)) - c)";
        Derivation::new("Weak pin").step(
            Step::new("load at which the pin bends", "F", FORMULA, self.load)
                .with("d", self.joint.diameter)
                .with("Fo", self.outer_bearing)
                .with("Fi", self.inner_bearing)
                .with("c", self.joint.gap)
                .with("M", self.moment)
                .source(methods::EQUILIBRIUM_OF_BEARING_BLOCKS_AT_THE_SHEAR_FACES),
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{megapascals, millimetres, newton_metres};

    /// The active blocks put back into the statics give the moment strength again.
    #[test]
    fn weak_pin_is_in_equilibrium() {
        let mm = millimetres;
        for gap in [0.0, 0.5, 8.0] {
            let joint = PinJoint::new(mm(20.0), mm(60.0), mm(90.0), mm(gap)).unwrap();
            let (outer, inner) = (megapascals(300.0), megapascals(450.0));
            let weak = weak_pin(&joint, newton_metres(700.0), outer, inner).unwrap();
            let active =
                PinJoint::new(mm(20.0), weak.outer_active, weak.inner_active, mm(gap)).unwrap();
            // Each block bears with its strength over the diameter: 20 mm x 300 MPa and 20 mm x 450 MPa.
            let borne = [
                2.0 * 6e6 * weak.outer_active.value,
                9e6 * weak.inner_active.value,
            ];
            for borne in borne {
                assert!((borne / weak.load.value - 1.0).abs() < 1e-12, "{borne}");
            }
            let moment = active.moment(weak.load).unwrap();
            assert!((moment.value - 700.0).abs() < 1e-9, "{moment:?}");
        }
    }
}
