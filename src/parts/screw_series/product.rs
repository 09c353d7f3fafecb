//! The products.

use core::{fmt, str::FromStr};

use crate::error::Error;
use crate::material::{AstmGrade, BoltGrade, BoltStrength, PropertyClass};
use crate::names::{Key, Named, code_of, keys, label_of};

/// Kinds of screw this crate knows the body lengths of.
///
/// ```
/// use shankline::prelude::*;
/// assert_eq!(ScrewProduct::Iso4014.to_string(), "hexagon bolt ISO 4014");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum ScrewProduct {
    /// Hex cap screw, inch, ASME B18.2.1. Short ones are threaded to the head.
    HexCapScrew,
    /// Hex bolt, inch, ASME B18.2.1. Its body is not computed: the rule read is that of screws.
    HexBolt,
    /// Heavy hex bolt, inch, ASME B18.2.1: no structural bolt. Its body is not computed either.
    HeavyHexBolt,
    /// Hex cap screw, metric, ASME B18.2.3.1M. Its lengths are not computed: their tolerance was not read.
    MetricHexCapScrew,
    /// Hexagon head bolt with shank, metric, ISO 4014.
    #[cfg_attr(feature = "serde", serde(rename = "iso_4014"))]
    Iso4014,
    /// Hexagon head screw threaded to the head, metric, ISO 4017.
    #[cfg_attr(feature = "serde", serde(rename = "iso_4017"))]
    Iso4017,
    /// Hexagon head bolt with shank, metric fine pitch thread, ISO 8765.
    #[cfg_attr(feature = "serde", serde(rename = "iso_8765"))]
    Iso8765,
    /// Heavy hex structural bolt, inch, ASME B18.2.6 (ASTM F3125 grades A325 and A490).
    StructuralBolt,
    /// Socket head cap screw, inch, ASME B18.3. Its body is not computed: see
    /// [`tables::sockets`](crate::tables::sockets).
    SocketHeadCapScrew,
    /// Socket head cap screw, metric, ISO 4762: the lengths that were read.
    #[cfg_attr(feature = "serde", serde(rename = "iso_4762"))]
    Iso4762,
    /// Structural bolt of system HR, metric, EN 14399-3.
    #[cfg_attr(feature = "serde", serde(rename = "en_14399_3"))]
    En14399_3,
    /// Structural bolt of system HV, metric, EN 14399-4.
    #[cfg_attr(feature = "serde", serde(rename = "en_14399_4"))]
    En14399_4,
    /// A bolt that the caller describes: see [`OwnScrew`](crate::joint::OwnScrew). No table knows it, and no name is read
    /// for it: its sizes are.
    #[cfg_attr(feature = "serde", serde(skip_deserializing))]
    Own,
}

/// Code and label of every member.
const NAMES: [Named<ScrewProduct>; 12] = [
    (
        ScrewProduct::HexCapScrew,
        "hex_cap_screw",
        "hex cap screw ASME B18.2.1",
    ),
    (ScrewProduct::HexBolt, "hex_bolt", "hex bolt ASME B18.2.1"),
    (
        ScrewProduct::HeavyHexBolt,
        "heavy_hex_bolt",
        "heavy hex bolt ASME B18.2.1",
    ),
    (
        ScrewProduct::MetricHexCapScrew,
        "metric_hex_cap_screw",
        "hex cap screw ASME B18.2.3.1M",
    ),
    (ScrewProduct::Iso4014, "iso_4014", "hexagon bolt ISO 4014"),
    (
        ScrewProduct::Iso4017,
        "iso_4017",
        "hexagon screw ISO 4017, fully threaded",
    ),
    (
        ScrewProduct::Iso8765,
        "iso_8765",
        "hexagon bolt ISO 8765, fine pitch",
    ),
    (
        ScrewProduct::StructuralBolt,
        "structural_bolt",
        "heavy hex structural bolt ASME B18.2.6",
    ),
    (
        ScrewProduct::SocketHeadCapScrew,
        "socket_head_cap_screw",
        "socket head cap screw ASME B18.3",
    ),
    (
        ScrewProduct::Iso4762,
        "iso_4762",
        "socket head cap screw ISO 4762",
    ),
    (
        ScrewProduct::En14399_3,
        "en_14399_3",
        "structural bolt EN 14399-3",
    ),
    (
        ScrewProduct::En14399_4,
        "en_14399_4",
        "structural bolt EN 14399-4",
    ),
];

impl Key for ScrewProduct {
    const FAMILY: &'static str = "screw product";
    const ALL: &'static [Self] = &keys(&NAMES);

    fn code(self) -> &'static str {
        if self == Self::Own {
            return "own";
        }
        code_of(&NAMES, self)
    }

    fn label(self) -> &'static str {
        // No member of a list to choose from: it comes with its sizes.
        if self == Self::Own {
            return "bolt of one's own";
        }
        label_of(&NAMES, self)
    }
}

impl FromStr for ScrewProduct {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for ScrewProduct {
    /// The label.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

impl ScrewProduct {
    /// Whether the product is made in the grade.
    ///
    /// Source: ASTM F3125 for structural bolts in inches, EN 14399-3 and -4 for metric ones (the last
    /// recalled), ASTM A574 and ISO 4762 for socket screws; for the others which documents belong to
    /// inch and which to metric parts: common practice, no source.
    pub(crate) fn is_made_in(self, strength: &BoltStrength) -> bool {
        use BoltGrade::{Astm, Iso, Sae, Stainless};
        use PropertyClass::{Class8_8, Class10_9, Class12_9};
        let grade = strength.grade;
        match self {
            Self::Own => false,
            Self::HexCapScrew | Self::HexBolt | Self::HeavyHexBolt => {
                strength.for_screws
                    && match grade {
                        Sae(_) => true,
                        Astm(grade) => !is_metric(grade),
                        _ => false,
                    }
            }
            Self::MetricHexCapScrew | Self::Iso4014 | Self::Iso4017 | Self::Iso8765 => {
                strength.for_screws
                    && match grade {
                        Iso(_) | Stainless(_) => true,
                        Astm(grade) => is_metric(grade),
                        _ => false,
                    }
            }
            Self::StructuralBolt => matches!(
                grade,
                Astm(
                    AstmGrade::F3125A325Type1
                        | AstmGrade::F3125A325Type3
                        | AstmGrade::F3125A490Type1
                        | AstmGrade::F3125A490Type3
                        | AstmGrade::A325To2014
                )
            ),
            Self::SocketHeadCapScrew => grade == Astm(AstmGrade::A574),
            Self::Iso4762 => {
                matches!(grade, Iso(Class8_8 | Class10_9 | Class12_9) | Stainless(_))
            }
            Self::En14399_3 => matches!(grade, Iso(Class8_8 | Class10_9)),
            Self::En14399_4 => grade == Iso(Class10_9),
        }
    }
}

/// Whether an ASTM grade is one of metric bolts.
const fn is_metric(grade: AstmGrade) -> bool {
    matches!(
        grade,
        AstmGrade::F568m4_6
            | AstmGrade::F568m4_8
            | AstmGrade::F568m5_8
            | AstmGrade::F568m8_8
            | AstmGrade::F568m8_8Boron
            | AstmGrade::F568m8_8_3
            | AstmGrade::F568m9_8
            | AstmGrade::F568m10_9
            | AstmGrade::F568m10_9Alloy
            | AstmGrade::F568m10_9_3
            | AstmGrade::F568m12_9
            | AstmGrade::F3125A325m
            | AstmGrade::F3125A490m
    )
}
