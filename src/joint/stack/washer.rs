//! A washer of a stack, with what it is.

use alloc::{borrow::Cow, string::ToString};

use crate::error::Error;
use crate::spread::Spread;
use crate::tables::galvanic::Metal;
use crate::tables::washers::{Washer, WasherStyle};
use crate::thread::Thread;
use crate::units::Length;

/// A washer of a [`Stack`](super::Stack): its thickness, and which it is.
///
/// A thickness alone is enough to find a length. Pressure under head and nut asks for the style, which the
/// tables know the diameters of, or for the diameters themselves; a bolt of ISO 898-1, or of a strength of your own, asks how hard it is (ISO 898-3).
///
/// ```
/// use shankline::joint::JointWasher;
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let hard = JointWasher::find(WasherStyle::F436, &"3/4-10 UNC".parse()?)?;
/// assert_eq!(hard.style, Some(WasherStyle::F436));
/// let own: JointWasher = millimetres(3.0).plus_minus(millimetres(0.3)).into(); // nothing else known
/// assert_eq!(own.style, None);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "super::super::data::RawWasher")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(
    feature = "schema",
    schemars(
        !try_from,
        deny_unknown_fields,
        extend("anyOf" = [
            { "required": ["thickness"], "properties": { "thickness": { "not": { "type": "null" } } } },
            { "required": ["style"], "properties": { "style": { "not": { "type": "null" } } } }
        ])
    )
)]
#[non_exhaustive]
pub struct JointWasher {
    /// What a drawing would call it.
    #[cfg_attr(feature = "schema", schemars(with = "Option<alloc::string::String>"))]
    pub name: Cow<'static, str>,
    /// Thickness of one.
    #[cfg_attr(feature = "schema", schemars(with = "Option<Spread<Length>>"))]
    pub thickness: Spread<Length>,
    /// Its style in the tables, which has its diameters; none for a washer that is not from them.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub style: Option<WasherStyle>,
    /// Least outside diameter (of a square washer, its side), for a washer without a style.
    #[cfg_attr(
        feature = "serde",
        serde(
            skip_serializing_if = "Option::is_none",
            serialize_with = "crate::units::quantity::serialize_option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub outside: Option<Length>,
    /// What its surface is made of: for corrosion in contact only.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub metal: Option<Metal>,
    /// Greatest inside diameter, for a washer without a style.
    #[cfg_attr(
        feature = "serde",
        serde(
            skip_serializing_if = "Option::is_none",
            serialize_with = "crate::units::quantity::serialize_option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub inside: Option<Length>,
    /// Least Vickers hardness, for a washer without a style.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub hardness: Option<f64>,
}

impl JointWasher {
    /// A washer of which nothing but the thickness is known.
    ///
    /// ```
    /// use shankline::{joint::JointWasher, prelude::*};
    /// assert_eq!(JointWasher::new("plate washer", Spread::exact(millimetres(6.0))).outside, None);
    /// ```
    #[must_use]
    pub fn new(name: impl Into<Cow<'static, str>>, thickness: Spread<Length>) -> Self {
        Self {
            name: name.into(),
            thickness,
            style: None,
            metal: None,
            outside: None,
            inside: None,
            hardness: None,
        }
    }

    /// The washer of a style for a thread.
    ///
    /// # Errors
    ///
    /// Those of [`Washer::find`] and [`Washer::thickness`].
    ///
    /// ```
    /// use shankline::{joint::JointWasher, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let washer = JointWasher::find(WasherStyle::Iso7089, &"M20".parse()?)?;
    /// assert_eq!(washer.thickness.nominal, millimetres(3.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(style: WasherStyle, thread: &Thread) -> Result<Self, Error> {
        let row = Washer::find(style, thread)?;
        Ok(Self {
            style: Some(style),
            ..Self::new(style.to_string(), row.thickness()?)
        })
    }

    /// The washer with what its surface is made of.
    ///
    /// ```
    /// use shankline::{joint::JointWasher, prelude::*, tables::galvanic::Metal};
    /// let own = JointWasher::new("plate washer", Spread::exact(millimetres(6.0)));
    /// assert_eq!(own.metal(Metal::HotDipZinc).metal, Some(Metal::HotDipZinc));
    /// ```
    #[must_use]
    pub const fn metal(mut self, metal: Metal) -> Self {
        self.metal = Some(metal);
        self
    }

    /// The washer with its least outside and greatest inside diameter.
    ///
    /// ```
    /// use shankline::{joint::JointWasher, prelude::*};
    /// let own = JointWasher::new("plate washer", Spread::exact(millimetres(6.0)));
    /// assert!(own.diameters(millimetres(50.0), millimetres(17.0)).outside.is_some());
    /// ```
    #[must_use]
    pub const fn diameters(mut self, outside: Length, inside: Length) -> Self {
        self.outside = Some(outside);
        self.inside = Some(inside);
        self
    }
}

impl JointWasher {
    /// The washer with its least Vickers hardness.
    ///
    /// ```
    /// use shankline::{joint::JointWasher, prelude::*};
    /// let own = JointWasher::new("plate washer", Spread::exact(millimetres(6.0)));
    /// assert_eq!(own.hardness(300.0).hardness, Some(300.0));
    /// ```
    #[must_use]
    pub const fn hardness(mut self, vickers: f64) -> Self {
        self.hardness = Some(vickers);
        self
    }
}

impl From<Spread<Length>> for JointWasher {
    fn from(thickness: Spread<Length>) -> Self {
        Self::new("washer", thickness)
    }
}
