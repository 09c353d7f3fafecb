//! Mechanical properties of nuts, and which nut a bolt standard names.
//!
//! The rows hold what the standards print. For "how strong is this nut on this thread", ask
//! [`material::NutGrade::strength`](crate::material::NutGrade::strength).

use core::fmt;

use super::generated;
use super::grades::HardnessScale;
use super::nanometres;
use super::nuts::NutStyle;
use crate::caution::{Caution, Cautions};
use crate::error::{Error, positive};
use crate::names::{BoltGrade, NutGrade};
use crate::source::{Basis, Provenance};
use crate::units::{Length, Stress};

/// Shapes of nut that the strength standards tell apart: the same grade is weaker in a thin nut.
///
/// ```
/// use shankline::prelude::*;
/// assert_eq!(NutStyle::HeavyHex.shape(), Some(NutShape::HeavyHex));
/// assert_eq!(NutStyle::Iso4033.shape(), Some(NutShape::Style2));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum NutShape {
    /// Square nut.
    Square,
    /// Hex nut.
    Hex,
    /// Hex flange nut.
    HexFlange,
    /// Hex jam nut.
    HexJam,
    /// Heavy hex jam nut.
    HeavyHexJam,
    /// Hex slotted nut.
    HexSlotted,
    /// Heavy hex nut.
    HeavyHex,
    /// Hex thick nut.
    HexThick,
    /// Nonmetallic insert lock nut, style NE.
    InsertLock,
    /// Metric nut of style 1, about 0.9 d high.
    #[cfg_attr(feature = "serde", serde(rename = "style_1"))]
    Style1,
    /// Metric nut of style 2, about 1 d high.
    #[cfg_attr(feature = "serde", serde(rename = "style_2"))]
    Style2,
    /// Metric thin nut (style 0).
    Thin,
}

impl NutShape {
    pub(crate) const fn label(self) -> &'static str {
        match self {
            Self::Square => "square",
            Self::Hex => "hex",
            Self::HexFlange => "hex flange",
            Self::HexJam => "hex jam",
            Self::HeavyHexJam => "heavy hex jam",
            Self::HexSlotted => "hex slotted",
            Self::HeavyHex => "heavy hex",
            Self::HexThick => "hex thick",
            Self::InsertLock => "insert lock",
            Self::Style1 => "style 1",
            Self::Style2 => "style 2",
            Self::Thin => "thin",
        }
    }
}

impl fmt::Display for NutShape {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

impl NutStyle {
    /// The shape under which the strength standards know nuts of this style. None where they do not
    /// (machine screw nuts, flange nuts of ISO 4161, lock nuts with standards of their own). DIN 934 nuts are lower than those of
    /// style 1 and have the classes of DIN 267-4, marked with bars.
    ///
    /// Source: the names of the standards; ISO 2320 gives metric prevailing-torque nuts the proof loads
    /// of ISO 898-2.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert_eq!(NutStyle::Iso7042.shape(), Some(NutShape::Style2));
    /// assert_eq!(NutStyle::Iso4161.shape(), None);
    /// ```
    #[must_use]
    pub const fn shape(self) -> Option<NutShape> {
        Some(match self {
            Self::Hex | Self::Din934 => NutShape::Hex,
            Self::HexJam => NutShape::HexJam,
            Self::HeavyHex => NutShape::HeavyHex,
            Self::HeavyHexJam => NutShape::HeavyHexJam,
            Self::HexSlotted => NutShape::HexSlotted,
            Self::HexThick => NutShape::HexThick,
            Self::InsertLockNe => NutShape::InsertLock,
            Self::Iso4032 | Self::Iso7040 | Self::Iso7719 | Self::Iso10512 | Self::B18_2_4_1m => {
                NutShape::Style1
            }
            Self::Iso4033 | Self::Iso7041 | Self::Iso7042 | Self::Iso7720 | Self::B18_2_4_2m => {
                NutShape::Style2
            }
            Self::Iso4035 | Self::Iso10511 => NutShape::Thin,
            _ => return None,
        })
    }
}

/// Threads a row of nut strengths holds for, as its standard writes them.
///
/// ```
/// use shankline::tables::nut_grades::NutThreads;
/// # fn main() -> Result<(), shankline::Error> {
/// assert!(NutThreads::Unc8un.covers(&"1-1/8-8 UN".parse()?));
/// assert!(!NutThreads::Unc8un.covers(&"1-1/8-12 UNF".parse()?));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum NutThreads {
    /// UNC.
    Unc,
    /// UNC and 8UN.
    Unc8un,
    /// UNC, 8UN and 6UN.
    Unc8un6un,
    /// UNC up to 1 in, 8UN above.
    UncThen8un,
    /// UNF, 12UN and finer.
    Un12AndFiner,
    /// ISO metric coarse.
    MetricCoarse,
    /// ISO metric fine.
    MetricFine,
    /// ISO metric, coarse and fine.
    Metric,
}

impl NutThreads {
    pub(crate) const fn label(self) -> &'static str {
        match self {
            Self::Unc => "UNC",
            Self::Unc8un => "UNC and 8UN",
            Self::Unc8un6un => "UNC, 8UN and 6UN",
            Self::UncThen8un => "UNC to 1 in and 8UN above",
            Self::Un12AndFiner => "UNF, 12UN and finer",
            Self::MetricCoarse => "metric coarse",
            Self::MetricFine => "metric fine",
            Self::Metric => "metric, coarse and fine",
        }
    }
}

/// Strength of one grade of nut in one shape, for some threads and sizes.
///
/// ```
/// use shankline::{material::NutGrade, tables::nut_grades::NutGradeRow, units::ksi};
/// let mut rows = NutGradeRow::all_inch().iter();
/// let dh = rows.find(|row| row.grade == NutGrade::AstmA563Dh).unwrap();
/// assert_eq!(dh.proof_stress, ksi(150.0)); // a hex nut; a heavy hex nut has 175
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NutGradeRow {
    /// Grade or class.
    pub grade: NutGrade,
    /// Shape.
    pub shape: NutShape,
    /// Threads.
    pub threads: NutThreads,
    /// Smallest nominal size, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub size_from: Option<Length>,
    /// Nominal sizes over this.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub size_over: Option<Length>,
    /// Nominal sizes up to and including this.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub size_thru: Length,
    /// Proof stress: proof load over the tensile stress area of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub proof_stress: Stress,
    /// Proof stress of nuts tapped oversize for bolts with a zinc coating by hot dipping.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub proof_stress_overtapped: Option<Stress>,
    /// Least hardness, on the scale of the next field.
    pub hardness_min: Option<f64>,
    /// Scale of the least hardness.
    pub hardness_min_scale: Option<HardnessScale>,
    /// Greatest hardness, on the scale of the next field.
    pub hardness_max: Option<f64>,
    /// Scale of the greatest hardness.
    pub hardness_max_scale: Option<HardnessScale>,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// How the hardness is known.
    pub hardness_basis: Option<Basis>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl NutGradeRow {
    /// Every row of the inch standards: SAE J995, ASTM A563, A194 and F594, ASME B18.16.6.
    ///
    /// ```
    /// assert_eq!(shankline::tables::nut_grades::NutGradeRow::all_inch().len(), 124);
    /// ```
    #[must_use]
    pub fn all_inch() -> &'static [Self] {
        &generated::nut_grades_inch::NUT_GRADES_INCH
    }

    /// Every row of the metric standards: ISO 898-2, with the fine threads of former ISO 898-6,
    /// the oversize tapped nuts of ISO 10684, and ISO 3506-2.
    ///
    /// ```
    /// assert_eq!(shankline::tables::nut_grades::NutGradeRow::all_metric().len(), 149);
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::nut_grades_metric::NUT_GRADES_METRIC
    }

    /// A row with every cell empty that one of the two tables lacks.
    pub(super) const BLANK: Self = Self {
        grade: NutGrade::SaeJ995Grade2,
        shape: NutShape::Hex,
        threads: NutThreads::Unc,
        size_from: None,
        size_over: None,
        size_thru: crate::units::inches(0.0),
        proof_stress: crate::units::ksi(0.0),
        proof_stress_overtapped: None,
        hardness_min: None,
        hardness_min_scale: None,
        hardness_max: None,
        hardness_max_scale: None,
        note: None,
        hardness_basis: None,
        provenance: super::known(generated::sources::SOURCES[0], Basis::Memory),
    };
}

/// Coating of a bolt, as far as the choice of its nut depends on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum BoltCoating {
    /// Any coating; only rows of the table say so.
    Any,
    /// None, or so thin that usual nuts go on; also thick zinc over a thread cut undersize.
    Plain,
    /// Zinc, so thick that the nut is tapped oversize (hot dip or mechanical).
    ZincCoated,
}

/// Standing of a nut in the bolt standard.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum NutStanding {
    /// The nut the standard names.
    Named,
    /// One it lets stand in.
    Suitable,
}

/// Which nut a standard names for a bolt. Whether a given nut is right for a bolt, finishes and all, is judged by
/// [`nut_pairing`](crate::strength::strip::nut_pairing).
///
/// The standards let a nut of higher proof stress stand in everywhere (read in ASTM A354; for
/// ISO 898-2 in an extract of DIN EN 20898-2). Of stainless steel that was not read.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::nut_grades::{BoltCoating, NutPairing};
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = AstmGrade::A354Bc.into();
/// let nuts = |coating| -> Result<Vec<_>, shankline::Error> {
///     Ok(NutPairing::for_bolt(bolt, inches(1.0), coating)?.map(|row| row.nut).collect())
/// };
/// assert_eq!(nuts(BoltCoating::Plain)?, [NutGrade::AstmA563C]);
/// assert_eq!(nuts(BoltCoating::ZincCoated)?, [NutGrade::AstmA563Dh]);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NutPairing {
    /// Grade of the bolt.
    pub bolt: BoltGrade,
    /// Coating of the bolt.
    pub coating: BoltCoating,
    /// Nominal sizes over this.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub size_over: Option<Length>,
    /// Nominal sizes up to and including this.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub size_thru: Option<Length>,
    /// Grade of the nut.
    pub nut: NutGrade,
    /// Shape of the nut; none where the standard leaves it open. It never means a thin nut.
    pub shape: Option<NutShape>,
    /// Whether the standard names the nut or lets it stand in.
    pub standing: NutStanding,
    /// Restrictions.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl NutPairing {
    /// Every pairing.
    ///
    /// ```
    /// assert_eq!(shankline::tables::nut_grades::NutPairing::all().len(), 93);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::nut_pairings::NUT_PAIRINGS
    }

    /// The nuts for a bolt of this grade, size and coating; [`BoltCoating::Any`] lists those for all
    /// coatings. None at all means that no pairing was read, not that no nut fits.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter that is not positive and finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::nut_grades::{BoltCoating, NutPairing};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = PropertyClass::Class8_8.into();
    /// let nut = NutPairing::for_bolt(bolt, millimetres(16.0), BoltCoating::Plain)?.next().unwrap();
    /// assert_eq!(nut.nut, NutGrade::Iso898_2Class8);
    /// # Ok(())
    /// # }
    /// ```
    pub fn for_bolt(
        bolt: BoltGrade,
        diameter: Length,
        coating: BoltCoating,
    ) -> Result<impl Iterator<Item = &'static Self>, Error> {
        let size = nanometres(positive("nominal diameter", diameter)?);
        let any = BoltCoating::Any;
        Ok(Self::all().iter().filter(move |row| {
            row.bolt == bolt
                && (row.coating == coating || row.coating == any || coating == any)
                && row.size_over.is_none_or(|over| nanometres(over) < size)
                && row.size_thru.is_none_or(|thru| size <= nanometres(thru))
        }))
    }

    /// What the user of this pairing must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::nut_grades::{BoltCoating, NutPairing}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let named = |grade: SaeGrade| NutPairing::for_bolt(grade.into(), inches(0.5), BoltCoating::Any);
    /// let warned = |pairing: &NutPairing| pairing.cautions().iter().next().is_some();
    /// assert!(named(SaeGrade::Grade1)?.any(warned));
    /// assert!(!named(SaeGrade::Grade8)?.any(warned));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory(
            "pairing of bolt and nut",
            self.provenance,
        ))
    }
}
