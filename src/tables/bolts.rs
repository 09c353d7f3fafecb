//! Hex bolts, heavy hex bolts and structural bolts: heads, bodies, thread lengths, length tolerances.

use alloc::format;
use core::fmt;

use super::screws::{InchLengthTolerance, LengthTolerance, ToleranceGrade};
use super::{generated, nanometres, rows_of};
use crate::error::{Error, sane_length};
use crate::source::{Basis, Provenance};
use crate::spread::Spread;
use crate::units::{Length, UnitSystem, inches, shown};

/// Which hexagon an inch bolt has.
///
/// ```
/// use shankline::tables::bolts::{HexBolt, HexBoltStyle};
/// assert_eq!(HexBolt::of_style(HexBoltStyle::HeavyHex).first().unwrap().size, "1/2");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum HexBoltStyle {
    /// Hex bolt: the flats of a hex cap screw, a looser head and body.
    Hex,
    /// Heavy hex bolt: flats 1/8 in wider. It is no structural bolt, whose thread is shorter.
    HeavyHex,
}

/// Dimensions of an ASME B18.2.1 hex bolt or heavy hex bolt of one size, inch.
///
/// Its body may be larger than its nominal diameter, where that of a cap screw may not. Body and
/// grip gaging lengths of bolts were not read, and the rule of the cap screws is not stated for them.
///
/// ```
/// use shankline::{prelude::*, tables::bolts::{HexBolt, HexBoltStyle}};
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = HexBolt::find(HexBoltStyle::Hex, &"3/4-10 UNC".parse()?)?;
/// assert_eq!((bolt.body_diameter_max, bolt.thread_length_short), (inches(0.768), inches(1.75)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct HexBolt {
    /// Style.
    pub style: HexBoltStyle,
    /// Name of the size.
    pub size: &'static str,
    /// Nominal diameter D.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Greatest body diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub body_diameter_max: Length,
    /// Least body diameter; not read for heavy hex bolts.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub body_diameter_min: Option<Length>,
    /// Greatest width across flats F.
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
    /// Greatest width across corners G.
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
    /// Basic head height; not read for hex bolts.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub head_height_basic: Option<Length>,
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
    /// Thread length LT of bolts up to and including 6 in: 2 D + 1/4 in. Shorter bolts are threaded
    /// to the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread_length_short: Length,
    /// Thread length LT of bolts over 6 in: 2 D + 1/2 in.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread_length_long: Length,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// How the thread lengths are known.
    pub thread_length_basis: Basis,
    /// Source of the row.
    pub provenance: Provenance,
}

impl HexBolt {
    /// Every bolt of both styles.
    ///
    /// ```
    /// assert_eq!(shankline::tables::bolts::HexBolt::all().len(), 34);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::hex_bolts_inch::HEX_BOLTS_INCH
    }

    /// Every bolt of one style, by rising size.
    ///
    /// ```
    /// use shankline::tables::bolts::{HexBolt, HexBoltStyle};
    /// assert_eq!(HexBolt::of_style(HexBoltStyle::Hex).len(), 21);
    /// ```
    #[must_use]
    pub fn of_style(style: HexBoltStyle) -> &'static [Self] {
        rows_of(Self::all(), &style, |bolt| bolt.style)
    }

    /// Limits of the length of a bolt of a nominal length.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not positive and finite, [`Error::NotInTable`] if
    /// no tolerance is given for it.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::bolts::{HexBolt, HexBoltStyle}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = HexBolt::find(HexBoltStyle::Hex, &"3/4-10 UNC".parse()?)?;
    /// assert_eq!(bolt.length_limits(inches(4.0))?.max, inches(4.0) + inches(0.08));
    /// # Ok(())
    /// # }
    /// ```
    pub fn length_limits(&self, nominal: Length) -> Result<Spread<Length>, Error> {
        sane_length("nominal length", nominal)?;
        let rows = InchLengthTolerance::hex_bolts();
        InchLengthTolerance::get(rows, self.nominal_diameter, nominal)
            .map(|row| Spread {
                min: nominal - row.tolerance_minus,
                nominal,
                max: nominal + row.tolerance_plus,
            })
            .ok_or_else(|| Error::NotInTable {
                table: "the table of length tolerances of ASME B18.2.1 hex bolts",
                wanted: format!(
                    "{} x {:.3}",
                    self.size,
                    shown(nominal, UnitSystem::UsCustomary)
                ),
                available: "it begins above 1 in for sizes of 7/8 in and more".into(),
            })
    }
}

impl fmt::Display for HexBolt {
    /// `ASME B18.2.1 heavy hex bolt 3/4`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let style = match self.style {
            HexBoltStyle::Hex => "hex bolt",
            HexBoltStyle::HeavyHex => "heavy hex bolt",
        };
        f.pad(&format!("ASME B18.2.1 {style} {}", self.size))
    }
}

/// Dimensions of a structural bolt of one size: heavy hex, ASME B18.2.6 (ASTM F3125 grades A325 and
/// A490), or HV, EN 14399-4.
///
/// The thread length does not grow with the length of the bolt: LG = L - LT, LB = LG - Y. An inch
/// bolt shorter than `part_thread_length_min` is threaded to the head. The body may be larger than
/// the nominal diameter.
///
/// ```
/// use shankline::{prelude::*, tables::bolts::StructuralBolt};
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = StructuralBolt::find(&"3/4-10 UNC".parse()?)?;
/// assert_eq!((bolt.thread_length, bolt.transition_length), (inches(1.38), inches(0.25)));
/// let bolt = StructuralBolt::find(&"M20".parse()?)?;
/// assert_eq!((bolt.thread_length, bolt.transition_length), (millimetres(33.0), millimetres(7.5)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct StructuralBolt {
    /// The standard that fixes the dimensions.
    pub standard: &'static str,
    /// Name of the size.
    pub size: &'static str,
    /// Nominal diameter D, d.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Threads per inch of an inch bolt.
    pub threads_per_inch: Option<f64>,
    /// Pitch P of a metric bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub pitch: Option<Length>,
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
    /// Least diameter of the bearing face, metric.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub bearing_diameter_min: Option<Length>,
    /// Basic width across flats, inch.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub width_across_flats_basic: Option<Length>,
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
    /// Greatest width across corners, inch.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub width_across_corners_max: Option<Length>,
    /// Least width across corners.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub width_across_corners_min: Length,
    /// Basic head height, inch.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub head_height_basic: Option<Length>,
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
    /// Greatest thickness of the washer face.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub washer_face_thickness_max: Option<Length>,
    /// Least thickness of the washer face.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub washer_face_thickness_min: Option<Length>,
    /// Greatest diameter of the transition under the head, metric.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub transition_diameter_max: Option<Length>,
    /// Greatest fillet radius under the head, inch.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub fillet_radius_max: Option<Length>,
    /// Least fillet radius under the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub fillet_radius_min: Length,
    /// Greatest runout of the bearing face, full indicator movement, inch.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub bearing_runout_max: Option<Length>,
    /// Thread length LT (b), the same for every length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread_length: Length,
    /// Transition length Y between the body and the gaged thread; 3 P for EN 14399-4.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub transition_length: Length,
    /// Shortest inch bolt with a body.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub part_thread_length_min: Option<Length>,
    /// How much shorter than nominal an inch bolt up to 6 in may be; it may not be longer.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub length_minus_short: Option<Length>,
    /// The same over 6 in.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub length_minus_long: Option<Length>,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// How the transition length is known.
    pub transition_basis: Basis,
    /// Source of the row.
    pub provenance: Provenance,
}

impl StructuralBolt {
    /// Every inch bolt.
    ///
    /// ```
    /// assert_eq!(shankline::tables::bolts::StructuralBolt::all_inch().len(), 9);
    /// ```
    #[must_use]
    pub fn all_inch() -> &'static [Self] {
        &generated::structural_bolts_inch::STRUCTURAL_BOLTS_INCH
    }

    /// Every metric bolt.
    ///
    /// ```
    /// assert_eq!(shankline::tables::bolts::StructuralBolt::all_metric().len(), 8);
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::structural_bolts_metric::STRUCTURAL_BOLTS_METRIC
    }

    /// Limits of the length of a bolt of a nominal length: minus only for inch bolts, js17 either
    /// way for metric ones.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not positive and finite, [`Error::NotInTable`] for
    /// one that no tolerance is known for.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::bolts::StructuralBolt};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let limits = StructuralBolt::find(&"1-8 UNC".parse()?)?.length_limits(inches(4.0))?;
    /// assert_eq!((limits.min, limits.max), (inches(4.0) - inches(0.19), inches(4.0)));
    /// # Ok(())
    /// # }
    /// ```
    pub fn length_limits(&self, nominal: Length) -> Result<Spread<Length>, Error> {
        sane_length("nominal length", nominal)?;
        let minus = if nanometres(nominal) <= nanometres(inches(6.0)) {
            self.length_minus_short
        } else {
            self.length_minus_long
        };
        let js17 = || {
            let row = LengthTolerance::get(ToleranceGrade::Js17, nominal);
            row.map(|row| (row.tolerance, row.tolerance))
        };
        minus
            .map(|minus| (minus, Length::default()))
            .or_else(js17)
            .map(|(minus, plus)| Spread {
                min: nominal - minus,
                nominal,
                max: nominal + plus,
            })
            .ok_or_else(|| Error::NotInTable {
                table: "the table of length tolerances js17",
                wanted: format!("{:.1}", shown(nominal, UnitSystem::Si)),
                available: LengthTolerance::all()
                    .last()
                    .map_or_else(Default::default, |row| {
                        format!(
                            "it goes up to {:.0}",
                            shown(row.length_thru, UnitSystem::Si)
                        )
                    }),
            })
    }

    /// A row with every optional cell empty, which the generated arrays complete.
    pub(super) const BLANK: Self = Self {
        standard: "",
        size: "",
        nominal_diameter: inches(0.0),
        threads_per_inch: None,
        pitch: None,
        body_diameter_max: inches(0.0),
        body_diameter_min: inches(0.0),
        bearing_diameter_min: None,
        width_across_flats_basic: None,
        width_across_flats_max: inches(0.0),
        width_across_flats_min: inches(0.0),
        width_across_corners_max: None,
        width_across_corners_min: inches(0.0),
        head_height_basic: None,
        head_height_max: inches(0.0),
        head_height_min: inches(0.0),
        washer_face_thickness_max: None,
        washer_face_thickness_min: None,
        transition_diameter_max: None,
        fillet_radius_max: None,
        fillet_radius_min: inches(0.0),
        bearing_runout_max: None,
        thread_length: inches(0.0),
        transition_length: inches(0.0),
        part_thread_length_min: None,
        length_minus_short: None,
        length_minus_long: None,
        note: None,
        transition_basis: Basis::Memory,
        provenance: super::known(generated::sources::SOURCES[0], Basis::Memory),
    };
}

impl fmt::Display for StructuralBolt {
    /// `ASME B18.2.6 structural bolt 3/4`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&format!("{} structural bolt {}", self.standard, self.size))
    }
}
