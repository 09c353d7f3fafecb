//! Friction faces as the codes name them that have no classes with letters.

use core::fmt;

/// Treatment of the friction faces by Table 20 of IS 800:2007. Faces that are not among them, or that another code names
/// otherwise, have no slip factor by IS 800: none of these stands for a class of another code.
///
/// ```
/// use shankline::strength::slip::Is800Surface;
/// assert_eq!(Is800Surface::Untreated.to_string(), "not treated");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Is800Surface {
    /// Not treated: 0.20.
    Untreated,
    /// Clean mill scale: 0.33, recalled.
    CleanMillScale,
    /// Blasted with shot or grit, loose rust removed, no pitting: 0.50, recalled.
    Blasted,
    /// Blasted and sprayed with zinc, 50 to 70 micrometres: 0.25, recalled.
    SprayedZinc,
    /// Blasted and sprayed with aluminium, over 50 micrometres: 0.50, recalled.
    SprayedAluminium,
    /// Blasted and painted with zinc silicate, 30 to 80 micrometres: 0.30, recalled.
    ZincSilicate,
    /// Blasted and hot-dip galvanized: 0.10, recalled.
    Galvanized,
    /// Painted with red lead: 0.10, recalled.
    RedLead,
}

impl fmt::Display for Is800Surface {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Untreated => "not treated",
            Self::CleanMillScale => "clean mill scale",
            Self::Blasted => "blasted",
            Self::SprayedZinc => "blasted and sprayed with zinc",
            Self::SprayedAluminium => "blasted and sprayed with aluminium",
            Self::ZincSilicate => "blasted and painted with zinc silicate",
            Self::Galvanized => "blasted and hot-dip galvanized",
            Self::RedLead => "painted with red lead",
        })
    }
}

/// Friction faces by AS 4100: as rolled, or of a slip factor that a test has shown.
///
/// ```
/// use shankline::strength::slip::{As4100Faces, SlipMethod};
/// let painted = SlipMethod::As4100 { faces: As4100Faces::Tested { slip_factor: -0.1 } };
/// assert!(painted.checked().is_err());
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum As4100Faces {
    /// Clean and as rolled, without paint or other coating: 0.35.
    AsRolled,
    /// Of any other kind, tested by the appendix of AS 4100 that is for it.
    Tested {
        /// What the test gave.
        slip_factor: f64,
    },
}
