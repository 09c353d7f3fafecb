//! Hexagon head screws: heads, bodies, thread lengths, length tolerances, stock lengths.
//!
//! The rows hold what the standards print. For the body and grip gaging length of a screw of a
//! given length, ask [`parts::ScrewSeries`](crate::parts::ScrewSeries), which applies the rules.

use super::{generated, nanometres};
use crate::source::{Basis, Provenance, Source};
use crate::units::Length;

mod lengths;

pub use lengths::{InchLengthTolerance, LengthTolerance, StockLength, StockStep, ToleranceGrade};

/// Dimensions of an ASME B18.2.1 hex cap screw of one size.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::screws::HexCapScrew;
/// let row = HexCapScrew::get(inches(0.75)).unwrap();
/// assert_eq!(row.thread_length_short, Some(inches(1.75)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct HexCapScrew {
    /// Name of the size.
    pub size: &'static str,
    /// Nominal diameter D.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Threads per inch of the coarse thread, which fixes the transition length.
    pub coarse_threads_per_inch: f64,
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
    /// Basic width across flats.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub width_across_flats_basic: Length,
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
    /// Greatest width across corners.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub width_across_corners_max: Length,
    /// Least width across corners.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub width_across_corners_min: Length,
    /// Basic head height.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub head_height_basic: Length,
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
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub wrenching_height_min: Option<Length>,
    /// Greatest fillet radius under the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub fillet_radius_max: Option<Length>,
    /// Least fillet radius under the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub fillet_radius_min: Option<Length>,
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
    /// Thread length LT of screws up to and including 6 in.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub thread_length_short: Option<Length>,
    /// Thread length LT of screws over 6 in.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread_length_long: Length,
    /// Transition length Y, printed to three decimals; the rule is five coarse pitches.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub transition_length: Length,
    /// Greatest runout of the bearing face, full indicator movement.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub bearing_runout_max: Option<Length>,
    /// Greatest unthreaded length under the head of a screw threaded to the head, in pitches.
    pub full_thread_run_out_max_pitches: f64,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// How the unthreaded length is known.
    pub full_thread_run_out_basis: Basis,
    /// Source of the unthreaded length.
    pub full_thread_run_out_source: &'static Source,
    /// How the fillet radii are known, where there are any.
    pub fillet_basis: Option<Basis>,
    /// How the washer face is known.
    pub washer_face_basis: Basis,
    /// Source of the row.
    pub provenance: Provenance,
}

impl HexCapScrew {
    /// Every size.
    ///
    /// ```
    /// assert_eq!(shankline::tables::screws::HexCapScrew::all().len(), 22);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::hex_cap_screws_inch::HEX_CAP_SCREWS_INCH
    }

    /// The row of a size.
    ///
    /// ```
    /// use shankline::{tables::screws::HexCapScrew, units::inches};
    /// assert!(HexCapScrew::get(inches(0.2)).is_none());
    /// ```
    #[must_use]
    pub fn get(diameter: Length) -> Option<&'static Self> {
        let size = nanometres(diameter);
        Self::all()
            .iter()
            .find(|row| nanometres(row.nominal_diameter) == size)
    }
}

/// Up to which length ASME B18.2.1 hex cap screws of one size are threaded to the head.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::screws::FullThreadLimit;
/// let row = FullThreadLimit::get(inches(0.5)).unwrap();
/// assert_eq!(row.full_thread_length_max, Some(inches(1.75)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct FullThreadLimit {
    /// Name of the size.
    pub size: &'static str,
    /// Nominal diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Longest screw that is threaded to the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub full_thread_length_max: Option<Length>,
    /// Shortest screw with a body.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub part_thread_length_min: Option<Length>,
    /// Least thread length of screws with a body.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub thread_length_min: Option<Length>,
    /// Greatest thread length of screws with a body.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub thread_length_max: Option<Length>,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl FullThreadLimit {
    /// Every size.
    ///
    /// ```
    /// assert_eq!(shankline::tables::screws::FullThreadLimit::all().len(), 18);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::hex_cap_screw_full_thread_inch::HEX_CAP_SCREW_FULL_THREAD_INCH
    }

    /// The row of a size.
    ///
    /// ```
    /// use shankline::{tables::screws::FullThreadLimit, units::inches};
    /// assert!(FullThreadLimit::get(inches(1.625)).is_none()); // nobody has read it
    /// ```
    #[must_use]
    pub fn get(diameter: Length) -> Option<&'static Self> {
        let size = nanometres(diameter);
        Self::all()
            .iter()
            .find(|row| nanometres(row.nominal_diameter) == size)
    }
}

/// ISO product grade: how close the tolerances are.
///
/// ```
/// use shankline::tables::screws::{HexScrew, ProductGrade};
/// assert!(HexScrew::all().iter().any(|row| row.product_grade == ProductGrade::B));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub enum ProductGrade {
    /// Grade A: up to M24, up to 10 d and 150 mm long.
    A,
    /// Grade B: everything larger or longer.
    B,
}

/// Dimensions of an ISO 4014 or ISO 4017 hexagon head screw of one size and product grade.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::screws::{HexScrew, ProductGrade};
/// let row = HexScrew::get(millimetres(20.0), ProductGrade::A).unwrap();
/// assert_eq!(row.thread_length_short, Some(millimetres(46.0)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct HexScrew {
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
    /// Product grade.
    pub product_grade: ProductGrade,
    /// Thread length b of ISO 4014 screws up to and including 125 mm.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub thread_length_short: Option<Length>,
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
    /// Least head height.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub head_height_min: Length,
    /// Greatest head height.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub head_height_max: Length,
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
    /// Least thickness of the washer face.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub washer_face_thickness_min: Length,
    /// Greatest thickness of the washer face.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub washer_face_thickness_max: Length,
    /// Greatest diameter of the transition under the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub transition_diameter_max: Option<Length>,
    /// Least fillet radius under the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub fillet_radius_min: Length,
    /// Greatest distance from the head of an ISO 4017 screw to its first full thread.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub full_thread_run_out_max: Option<Length>,
    /// Least distance from the head of an ISO 4017 screw to its first full thread.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub full_thread_run_out_min: Option<Length>,
    /// Shortest ISO 4014 screw.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub part_thread_length_from: Option<Length>,
    /// Longest ISO 4014 screw.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub part_thread_length_thru: Option<Length>,
    /// Shortest ISO 4017 screw.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub full_thread_length_from: Length,
    /// Longest ISO 4017 screw.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub full_thread_length_thru: Length,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// How the distance to the first full thread is known.
    pub full_thread_run_out_basis: Basis,
    /// Source of the distance to the first full thread.
    pub full_thread_run_out_source: &'static Source,
    /// How the thread lengths are known.
    pub thread_length_basis: Basis,
    /// How the body diameters are known.
    pub body_diameter_basis: Basis,
    /// How the head heights are known.
    pub head_height_basis: Basis,
    /// How the ranges of nominal length are known.
    pub length_range_basis: Basis,
    /// Source of the ranges of nominal length.
    pub length_range_source: &'static Source,
    /// Source of the row.
    pub provenance: Provenance,
}

impl HexScrew {
    /// Every size and grade.
    ///
    /// ```
    /// assert_eq!(shankline::tables::screws::HexScrew::all().len(), 23);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::hex_screws_metric::HEX_SCREWS_METRIC
    }

    /// The row of a size and product grade.
    ///
    /// ```
    /// use shankline::tables::screws::{HexScrew, ProductGrade};
    /// use shankline::units::millimetres;
    /// assert!(HexScrew::get(millimetres(30.0), ProductGrade::A).is_none());
    /// ```
    #[must_use]
    pub fn get(diameter: Length, grade: ProductGrade) -> Option<&'static Self> {
        let size = nanometres(diameter);
        Self::all()
            .iter()
            .find(|row| nanometres(row.nominal_diameter) == size && row.product_grade == grade)
    }
}
