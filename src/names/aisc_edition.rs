//! Editions of AISC 360.

/// Editions of AISC 360, Specification for Structural Steel Buildings.
///
/// ```
/// use shankline::prelude::*;
/// let method = ShearMethod::Aisc360 { edition: AiscEdition::E2016 };
/// assert_eq!(method.to_string(), "AISC 360-16 J3.6");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum AiscEdition {
    /// AISC 360-05.
    #[cfg_attr(feature = "serde", serde(rename = "2005"))]
    E2005,
    /// AISC 360-10.
    #[cfg_attr(feature = "serde", serde(rename = "2010"))]
    E2010,
    /// AISC 360-16. Stresses recalled, the same as in 2010.
    #[cfg_attr(feature = "serde", serde(rename = "2016"))]
    E2016,
    /// AISC 360-22. Stresses recalled, the same as in 2010.
    #[cfg_attr(feature = "serde", serde(rename = "2022"))]
    E2022,
}
