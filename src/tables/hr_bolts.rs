//! Hexagon head bolts for preloading, system HR: EN 14399-3.

use super::generated;
use crate::source::Provenance;
use crate::units::{Length, SAME_LENGTH, millimetres};

/// A bolt of EN 14399-3 of one size.
///
/// ```
/// use shankline::{prelude::*, tables::hr_bolts::HrBolt};
/// # fn main() -> Result<(), shankline::Error> {
/// let m22 = HrBolt::find(&"M22".parse()?)?;
/// assert_eq!(m22.width_across_flats_max, millimetres(36.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct HrBolt {
    /// Name of the size.
    pub size: &'static str,
    /// Nominal diameter d.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Coarse pitch P.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch: Length,
    /// Thread length b up to and including 125 mm.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread_length_short: Length,
    /// Thread length b over 125 mm, up to and including 200 mm.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub thread_length_medium: Option<Length>,
    /// Thread length b over 200 mm.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub thread_length_long: Option<Length>,
    /// Greatest body diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub body_diameter_max: Length,
    /// Least body diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub body_diameter_min: Length,
    /// Least diameter of the bearing face.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bearing_diameter_min: Length,
    /// Nominal head height k.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub head_height_nominal: Length,
    /// Greatest head height.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub head_height_max: Length,
    /// Least head height.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub head_height_min: Length,
    /// Least height a wrench can grip.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub wrenching_height_min: Length,
    /// Greatest width across flats s.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub width_across_flats_max: Length,
    /// Least width across flats.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub width_across_flats_min: Length,
    /// Least width across corners e.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub width_across_corners_min: Length,
    /// Greatest thickness of the washer face.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub washer_face_thickness_max: Length,
    /// Least thickness of the washer face.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub washer_face_thickness_min: Length,
    /// Greatest diameter of the transition under the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub transition_diameter_max: Length,
    /// Least fillet radius under the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub fillet_radius_min: Length,
    /// Source of the row.
    pub provenance: Provenance,
}

impl HrBolt {
    /// Every size.
    ///
    /// ```
    /// assert_eq!(shankline::tables::hr_bolts::HrBolt::all().len(), 10);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::hr_bolts::HR_BOLTS
    }

    /// Thread length b of a bolt of a nominal length; none where the table has no such length.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::hr_bolts::HrBolt};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let m12 = HrBolt::find(&"M12".parse()?)?;
    /// assert_eq!(m12.thread_length(millimetres(80.0)), Some(millimetres(30.0)));
    /// assert_eq!(m12.thread_length(millimetres(130.0)), None);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn thread_length(&self, nominal: Length) -> Option<Length> {
        if nominal <= millimetres(125.0) + SAME_LENGTH {
            Some(self.thread_length_short)
        } else if nominal <= millimetres(200.0) + SAME_LENGTH {
            self.thread_length_medium
        } else {
            self.thread_length_long
        }
    }
}
