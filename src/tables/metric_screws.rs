//! Metric hexagon head screws besides ISO 4014 and ISO 4017: ASME B18.2.3.1M and fine pitch threads.

use alloc::format;
use core::fmt;

use super::generated;
use crate::caution::{Caution, Cautions};
use crate::source::{Basis, Provenance};
use crate::units::Length;

/// Dimensions of an ASME B18.2.3.1M metric hex cap screw of one size.
///
/// From M20 its head is looser than that of ISO 4014 grade A. Grip gaging length lg = l - b; body
/// length ls = lg - 5 P, both to one decimal of a millimetre.
///
/// ```
/// use shankline::{prelude::*, tables::metric_screws::MetricHexCapScrew};
/// # fn main() -> Result<(), shankline::Error> {
/// let screw = MetricHexCapScrew::find(&"M20".parse()?)?;
/// assert_eq!(screw.width_across_flats_min, millimetres(29.16));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct MetricHexCapScrew {
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
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread_length_medium: Length,
    /// Thread length b over 200 mm.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread_length_long: Length,
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
    /// Greatest width across flats.
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
    /// Least width across corners.
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
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// How the thread lengths are known.
    pub thread_length_basis: Basis,
    /// Source of the row.
    pub provenance: Provenance,
}

impl MetricHexCapScrew {
    /// Every size.
    ///
    /// ```
    /// assert_eq!(shankline::tables::metric_screws::MetricHexCapScrew::all().len(), 15);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::hex_cap_screws_metric::HEX_CAP_SCREWS_METRIC
    }
}

impl fmt::Display for MetricHexCapScrew {
    /// `ASME B18.2.3.1M hex cap screw M12`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&format!("ASME B18.2.3.1M hex cap screw {}", self.size))
    }
}

/// Thread length of an ISO 8765 hexagon bolt (ISO 8676 screw, if threaded to the head) with a fine
/// pitch thread.
///
/// Head and body are those of the ISO 4014 screw of the same diameter:
/// [`HexScrew`](super::screws::HexScrew). As recalled, not read, the body length keeps the coarse pitch of
/// that row: ls = lg - 5 P coarse.
///
/// ```
/// use shankline::{prelude::*, tables::metric_screws::FineHexScrew};
/// # fn main() -> Result<(), shankline::Error> {
/// let screw = FineHexScrew::find(&"M12x1.5".parse()?)?;
/// assert_eq!(screw.thread_length_short, Some(millimetres(30.0)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct FineHexScrew {
    /// Name of the thread.
    pub size: &'static str,
    /// Nominal diameter d.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Fine pitch.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch: Length,
    /// Thread length b of ISO 8765 bolts up to and including 125 mm, where there are such.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub thread_length_short: Option<Length>,
    /// Thread length b over 125 mm, up to and including 200 mm.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread_length_medium: Length,
    /// Thread length b over 200 mm, where there are such.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub thread_length_long: Option<Length>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl FineHexScrew {
    /// Every thread.
    ///
    /// ```
    /// assert_eq!(shankline::tables::metric_screws::FineHexScrew::all().len(), 16);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::hex_screws_metric_fine::HEX_SCREWS_METRIC_FINE
    }

    /// What the user must be told, if the row was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::metric_screws::FineHexScrew;
    /// assert!(FineHexScrew::all().iter().all(|row| row.cautions().iter().count() == 0));
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory(
            "thread length of fine pitch screws",
            self.provenance,
        ))
    }
}
