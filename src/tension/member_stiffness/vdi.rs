//! Plates by VDI 2230: deformation cone and sleeve.

use core::f64::consts::PI;

use super::{Layer, MemberStiffness, MembersMethod};
use crate::error::{Allowed, Error, out_of_range};
use crate::math;
use crate::tension::{part_length, sane_stiffness, within};
use crate::units::{Length, from_base};

/// Where the clamped plates end.
///
/// ```
/// use shankline::tension::ClampEnd;
/// assert_ne!(ClampEnd::ThroughBolt, ClampEnd::TappedHole);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum ClampEnd {
    /// Bolt and nut: a cone from either end, w = 1.
    ThroughBolt,
    /// Screw in a tapped hole: one cone from the head, w = 2.
    TappedHole,
}

/// Clamped plates by VDI 2230 Part 1, one material, not eccentric.
///
/// The cone opens with tan f = 0.362 + 0.032 ln(bL / 2) + 0.153 ln y for a through bolt and 0.348 +
/// 0.013 ln bL + 0.193 ln y in a tapped hole, bL = l / dw, y = DA / dw, and becomes a sleeve where it
/// meets the outside diameter DA. The angle formulas and the lengths of the standard were
/// recalled: the result carries a [`Caution`](crate::caution::Caution). The resilience of cone and sleeve themselves
/// follows from the geometry, and is the same as that of [`Cones`](super::Cones) of the same angle.
///
/// ```
/// use shankline::{prelude::*, tension::{ClampEnd, Layer, VdiPlates}};
/// # fn main() -> Result<(), shankline::Error> {
/// let plates = VdiPlates::new(
///     ClampEnd::ThroughBolt, millimetres(13.5), millimetres(16.6), millimetres(60.0),
/// )?;
/// let km = plates.stiffness(Layer::new(millimetres(30.0), megapascals(205e3))?)?;
/// assert_eq!(km.cautions().iter().count(), 1);
/// km.derivation().check()?;
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct VdiPlates {
    /// Bolt and nut, or tapped hole.
    pub end: ClampEnd,
    /// Hole dh.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub hole: Length,
    /// Diameter dw of the bearing face.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bearing: Length,
    /// Outside diameter DA of the members, or of the circle the interface allows.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub outside: Length,
}

impl VdiPlates {
    /// The plates.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for lengths outside the [ranges](crate::tension#ranges), or unless hole < bearing face <=
    /// outside diameter; narrower members are a [`hollow_cylinder`](super::hollow_cylinder).
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{ClampEnd, VdiPlates}};
    /// let (hole, face) = (millimetres(13.5), millimetres(16.6));
    /// assert!(VdiPlates::new(ClampEnd::ThroughBolt, hole, face, millimetres(15.0)).is_err());
    /// ```
    pub fn new(
        end: ClampEnd,
        hole: Length,
        bearing: Length,
        outside: Length,
    ) -> Result<Self, Error> {
        part_length("hole", hole)?;
        part_length("diameter of the bearing face", bearing)?;
        within(
            "diameter of the bearing face",
            bearing,
            hole * (1.0 + 1e-6),
            hole * 1e6,
        )?;
        within("outside diameter", outside, bearing, crate::error::LONGEST)?;
        Ok(Self {
            end,
            hole,
            bearing,
            outside,
        })
    }

    /// Stiffness of plates of one material, the grip as one layer.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] where the formula of the angle gives a cone that does not open (a grip far
    /// shorter than the bearing face is wide).
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{ClampEnd, Layer, VdiPlates}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let layer = Layer::new(millimetres(30.0), megapascals(205e3))?;
    /// let stiffness = |outside| {
    ///     VdiPlates::new(ClampEnd::ThroughBolt, millimetres(13.5), millimetres(16.6), outside)?
    ///         .stiffness(layer)
    /// };
    /// assert!(stiffness(millimetres(60.0))?.stiffness > stiffness(millimetres(20.0))?.stiffness);
    /// # Ok(())
    /// # }
    /// ```
    pub fn stiffness(&self, members: Layer) -> Result<MemberStiffness, Error> {
        let l = members.thickness;
        let length_ratio = (l / self.bearing).value;
        let width_ratio = (self.outside / self.bearing).value;
        let (tangent, w) = match self.end {
            ClampEnd::ThroughBolt => (
                0.362 + 0.032 * math::ln(0.5 * length_ratio) + 0.153 * math::ln(width_ratio),
                1.0,
            ),
            ClampEnd::TappedHole => (
                0.348 + 0.013 * math::ln(length_ratio) + 0.193 * math::ln(width_ratio),
                2.0,
            ),
        };
        if !(0.05..=10.0).contains(&tangent) {
            return Err(out_of_range(
                "tangent of the cone angle by VDI 2230",
                tangent,
                Allowed::FromTo(0.05.into(), 10.0.into()),
            ));
        }
        let cone_length = l.min((self.outside - self.bearing) / (w * tangent));
        let (dh, dw, da) = (self.hole.value, self.bearing.value, self.outside.value);
        let wide = dw + w * cone_length.value * tangent;
        let cone = 2.0 / (w * dh * tangent)
            * math::ln((dw + dh) * (wide - dh) / ((dw - dh) * (wide + dh)));
        let sleeve = 4.0 * (l - cone_length).value / (da * da - dh * dh);
        let stiffness = PI * members.modulus.value / (cone + sleeve);
        Ok(MemberStiffness {
            method: MembersMethod::Vdi2230 {
                plates: *self,
                tangent,
                cone_length,
            },
            members,
            stiffness: sane_stiffness("stiffness of the members", from_base(stiffness))?,
        })
    }
}

impl VdiPlates {
    pub(super) const fn w(&self) -> f64 {
        match self.end {
            ClampEnd::ThroughBolt => 1.0,
            ClampEnd::TappedHole => 2.0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tension::Cones;
    use crate::units::Angle;
    use crate::units::{megapascals, millimetres};

    /// The cone of VDI 2230 is the frustum of Shigley, given the angle.
    #[test]
    fn a_vdi_cone_is_a_frustum_of_the_same_angle() {
        let layer = Layer::new(millimetres(30.0), megapascals(205e3)).unwrap();
        let (hole, face) = (millimetres(13.5), millimetres(16.6));
        let plates = VdiPlates::new(ClampEnd::ThroughBolt, hole, face, millimetres(60.0)).unwrap();
        let vdi = plates.stiffness(layer).unwrap();
        let MembersMethod::Vdi2230 { tangent, .. } = vdi.method else {
            unreachable!()
        };
        let angle = Angle::new::<uom::si::angle::radian>(math::atan(tangent));
        let cones = Cones::new(hole, face, angle).unwrap();
        let shigley = cones.identical(layer).unwrap();
        assert!(((vdi.stiffness / shigley.stiffness).value - 1.0).abs() < 1e-12);
    }
}
