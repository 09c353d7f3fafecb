//! Washers: how hard they are, which go with a bolt, and which ones codes require.

use core::fmt;

use super::generated;
use crate::caution::{Caution, Cautions};
use crate::names::BoltGrade;
use crate::source::Provenance;
use crate::tables::grades::HardnessScale;
use crate::tables::washers::WasherStyle;
use crate::units::Length;

/// The least hardness of a style of washer, in one of the classes it comes in.
///
/// Styles without a row have no hardness that was read: plain washers of ASME B18.21.1 are soft unless they are ordered
/// otherwise (common practice, no source).
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::grades::HardnessScale;
/// use shankline::tables::washer_rules::WasherHardness;
/// let hard = WasherHardness::of(WasherStyle::F436).next().unwrap();
/// assert_eq!((hard.hardness_min, hard.hardness_scale), (38.0, HardnessScale::RockwellC));
/// assert_eq!(WasherHardness::of(WasherStyle::Iso7089).count(), 2); // 200 HV and 300 HV
/// assert_eq!(WasherHardness::of(WasherStyle::TypeANarrow).count(), 0);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct WasherHardness {
    /// Style.
    pub style: WasherStyle,
    /// Property class, where the style comes in several or ISO 898-3 names one: `200HV`.
    pub property_class: Option<&'static str>,
    /// Least hardness on the scale of `hardness_scale`.
    pub hardness_min: f64,
    /// Scale of the hardness.
    pub hardness_scale: HardnessScale,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl WasherHardness {
    /// Every row.
    ///
    /// ```
    /// assert_eq!(shankline::tables::washer_rules::WasherHardness::all().len(), 15);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::washer_hardnesses::WASHER_HARDNESSES
    }

    /// The classes a style comes in, by rising hardness.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::washer_rules::WasherHardness;
    /// let softest = WasherHardness::of(WasherStyle::Iso7091).next().unwrap();
    /// assert_eq!(softest.property_class, Some("100HV"));
    /// ```
    pub fn of(style: WasherStyle) -> impl Iterator<Item = &'static Self> {
        Self::all().iter().filter(move |row| row.style == style)
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::washer_rules::WasherHardness;
    /// let rows = WasherHardness::of(WasherStyle::Iso7092);
    /// assert_eq!(rows.map(|row| row.cautions().iter().count()).sum::<usize>(), 2);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory(
            "hardness of the washer",
            self.provenance,
        ))
    }
}

/// How ISO 898-3 stands to a washer class with a bolt.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::washer_rules::{WasherPairing, WasherStanding};
/// let pair = WasherPairing::of(PropertyClass::Class10_9.into(), "200HV").unwrap();
/// assert_eq!(pair.standing, WasherStanding::IfVerified);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum WasherStanding {
    /// The recommended combination.
    Recommended,
    /// May be used.
    Usable,
    /// May be used if the design or tests have verified it.
    IfVerified,
    /// Is not to be used.
    Never,
}

/// A washer class of ISO 898-3 with a property class of bolts of ISO 898-1.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::washer_rules::{WasherPairing, WasherStanding};
/// let soft = WasherPairing::of(PropertyClass::Class8_8.into(), "100HV").unwrap();
/// assert_eq!(soft.standing, WasherStanding::Never);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct WasherPairing {
    /// The bolt.
    pub bolt: BoltGrade,
    /// The class of the washer: `100HV`, `200HV`, `300HV` or `380HV`.
    pub washer_class: &'static str,
    /// How the standard stands to the two together.
    pub standing: WasherStanding,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl WasherPairing {
    /// Every row, by bolt.
    ///
    /// ```
    /// assert_eq!(shankline::tables::washer_rules::WasherPairing::all().len(), 40);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::washer_pairings::WASHER_PAIRINGS
    }

    /// The standing of a washer class with a bolt; none for bolts that are not of ISO 898-1, or another class.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::washer_rules::WasherPairing;
    /// assert!(WasherPairing::of(SaeGrade::Grade8.into(), "200HV").is_none());
    /// ```
    #[must_use]
    pub fn of(bolt: BoltGrade, washer_class: &str) -> Option<&'static Self> {
        let mut rows = Self::all().iter();
        rows.find(|row| row.bolt == bolt && row.washer_class == washer_class)
    }
}

/// Codes whose rules for washers are tabled.
///
/// ```
/// use shankline::tables::washer_rules::WasherCode;
/// assert_eq!(WasherCode::Nds.to_string(), "NDS");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum WasherCode {
    /// RCSC Specification for Structural Joints, section 6 (6.2.5 was not read).
    Rcsc,
    /// AISC 360-05 J3, which has RCSC apply as well.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360,
    /// EN 1993-1-8.
    #[cfg_attr(feature = "serde", serde(rename = "en_1993_1_8"))]
    En1993_1_8,
    /// EN 1090-2, execution of steel structures.
    #[cfg_attr(feature = "serde", serde(rename = "en_1090_2"))]
    En1090_2,
    /// NDS, timber.
    Nds,
    /// EN 1995-1-1, timber.
    #[cfg_attr(feature = "serde", serde(rename = "en_1995_1_1"))]
    En1995_1_1,
}

impl fmt::Display for WasherCode {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Rcsc => "RCSC",
            Self::Aisc360 => "AISC 360",
            Self::En1993_1_8 => "EN 1993-1-8",
            Self::En1090_2 => "EN 1090-2",
            Self::Nds => "NDS",
            Self::En1995_1_1 => "EN 1995-1-1",
        })
    }
}

/// What calls for a washer.
///
/// ```
/// use shankline::tables::washer_rules::{WasherCase, WasherRule};
/// assert!(WasherRule::all().iter().any(|rule| rule.case == WasherCase::LongSlot));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum WasherCase {
    /// An outer face that slopes more than 1:20 to a plane across the bolt.
    SlopedFace,
    /// A slot in an outer ply of a snug joint.
    SnugSlot,
    /// A pretensioned bolt of grade A490 or F2280 on steel of less than 40 ksi yield strength.
    A490OnSoftSteel,
    /// Pretensioned with a calibrated wrench.
    CalibratedWrench,
    /// A twist-off bolt.
    TwistOff,
    /// Pretensioned with direct tension indicators.
    DirectTensionIndicator,
    /// A bolt of grade A490 over 1 in, and an oversize hole or slot in an outer ply.
    LargeA490OverHole,
    /// An oversize hole in an outer ply.
    OversizeHole,
    /// A short slot in an outer ply.
    ShortSlot,
    /// A long slot in an outer ply.
    LongSlot,
    /// A single lap with one row of bolts.
    SingleLapOneRow,
    /// A preloaded bolt of class 8.8.
    #[cfg_attr(feature = "serde", serde(rename = "preloaded_8_8"))]
    Preloaded8_8,
    /// A preloaded bolt of class 10.9.
    #[cfg_attr(feature = "serde", serde(rename = "preloaded_10_9"))]
    Preloaded10_9,
    /// Timber under head or nut.
    Timber,
}

/// What kind of washer is called for.
///
/// ```
/// use shankline::tables::washer_rules::WasherNeed;
/// assert_eq!(WasherNeed::Plate.to_string(), "plate washer");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum WasherNeed {
    /// Any washer.
    Plain,
    /// A hardened one.
    Hardened,
    /// A plate or bar that covers the hole.
    Plate,
    /// A bevelled one.
    Bevelled,
}

impl fmt::Display for WasherNeed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Plain => "washer",
            Self::Hardened => "hardened washer",
            Self::Plate => "plate washer",
            Self::Bevelled => "bevelled washer",
        })
    }
}

/// Where it has to lie.
///
/// ```
/// use shankline::tables::washer_rules::WasherSide;
/// assert_eq!(WasherSide::Both.to_string(), "under head and nut");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum WasherSide {
    /// On the face that calls for it.
    ThatFace,
    /// Over the hole or slot of the outer ply.
    OverHole,
    /// Under head and nut.
    Both,
    /// Under the part that is turned.
    TurnedPart,
    /// Under the nut.
    Nut,
}

impl fmt::Display for WasherSide {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::ThatFace => "on that face",
            Self::OverHole => "over the hole",
            Self::Both => "under head and nut",
            Self::TurnedPart => "under the part that is turned",
            Self::Nut => "under the nut",
        })
    }
}

/// One rule of a code that calls for a washer.
///
/// [`required_washers`](crate::strength::washers::required_washers) picks those that hold for a bolt.
///
/// ```
/// use shankline::tables::washer_rules::{WasherCode, WasherRule};
/// assert_eq!(WasherRule::of(WasherCode::Aisc360).count(), 4);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct WasherRule {
    /// Code.
    pub code: WasherCode,
    /// What calls for the washer.
    pub case: WasherCase,
    /// Which washer.
    pub washer: WasherNeed,
    /// Where it lies.
    pub side: WasherSide,
    /// Its least thickness.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub thickness_min: Option<Length>,
    /// Its least diameter or side, in diameters of the bolt.
    pub width_min_diameters: Option<f64>,
    /// Its least thickness, in diameters of the bolt.
    pub thickness_min_diameters: Option<f64>,
    /// Restrictions.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl WasherRule {
    /// Every rule, by code.
    ///
    /// ```
    /// assert_eq!(shankline::tables::washer_rules::WasherRule::all().len(), 15);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::washer_rules::WASHER_RULES
    }

    /// The rules of a code.
    ///
    /// ```
    /// use shankline::tables::washer_rules::{WasherCase, WasherCode, WasherRule};
    /// let mut rules = WasherRule::of(WasherCode::En1993_1_8);
    /// assert_eq!(rules.next().unwrap().case, WasherCase::SingleLapOneRow);
    /// ```
    pub fn of(code: WasherCode) -> impl Iterator<Item = &'static Self> {
        Self::all().iter().filter(move |row| row.code == code)
    }

    /// What the user of this rule must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::washer_rules::{WasherCode, WasherRule};
    /// assert!(WasherRule::of(WasherCode::En1090_2).all(|rule| rule.cautions().iter().count() == 1));
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("rule for washers", self.provenance))
    }
}
