//! The products.

use core::fmt;

/// Kinds of screw this crate knows the body lengths of.
///
/// ```
/// use shankline::prelude::*;
/// assert_eq!(ScrewProduct::Iso4014.to_string(), "hexagon bolt ISO 4014");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
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
    /// A bolt that the caller describes: see [`OwnScrew`](crate::joint::OwnScrew). No table knows it.
    Own,
}

impl fmt::Display for ScrewProduct {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::HexCapScrew => "hex cap screw ASME B18.2.1",
            Self::HexBolt => "hex bolt ASME B18.2.1",
            Self::HeavyHexBolt => "heavy hex bolt ASME B18.2.1",
            Self::MetricHexCapScrew => "hex cap screw ASME B18.2.3.1M",
            Self::Iso4014 => "hexagon bolt ISO 4014",
            Self::Iso4017 => "hexagon screw ISO 4017, fully threaded",
            Self::Iso8765 => "hexagon bolt ISO 8765, fine pitch",
            Self::SocketHeadCapScrew => "socket head cap screw ASME B18.3",
            Self::Iso4762 => "socket head cap screw ISO 4762",
            Self::StructuralBolt => "heavy hex structural bolt ASME B18.2.6",
            Self::En14399_3 => "structural bolt EN 14399-3",
            Self::En14399_4 => "structural bolt EN 14399-4",
            Self::Own => "bolt of one's own",
        })
    }
}
