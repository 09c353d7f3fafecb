//! What lies between head and nut.

use alloc::{borrow::Cow, string::String};

use super::Extent;
use crate::joint::{JointPly, JointWasher, LayerKind};
use crate::parts::{Origin, Size, Washer, WasherStyle};
use crate::spread::Spread;
use crate::strength::ply::Slot;
use crate::thread::Thread;
use crate::units::{Length, SAME_LENGTH};

/// On which side of the plies a washer lies.
///
/// ```
/// use shankline::assembly::Side;
/// assert_ne!(Side::Head, Side::Nut);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Side {
    /// Under the head.
    Head,
    /// Under the nut.
    Nut,
}

/// A washer, a ply or a gap of an [`Assembly`](super::Assembly).
///
/// ```
/// use shankline::{assembly::Layer, joint::LayerKind};
/// fn is_washer(layer: &Layer) -> bool {
///     layer.kind == LayerKind::Washer
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Layer {
    /// What it is.
    pub kind: LayerKind,
    /// Its name; of a gap "gap".
    pub name: String,
    /// Of a ply its number, counted from 1 at the head.
    pub ply: Option<usize>,
    /// Of a washer its side.
    pub side: Option<Side>,
    /// Of a washer its style, where it has a listed one.
    pub style: Option<WasherStyle>,
    /// Material, as it was named.
    pub material: Option<String>,
    /// Thickness, before anything is crushed.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub thickness: Spread<Length>,
    /// Where the thickness comes from.
    pub thickness_origin: Origin,
    /// From where to where it lies when it is clamped.
    pub at: Extent,
    /// Diameter of its hole, or inside diameter; of a slot its width.
    pub hole: Size,
    /// The slot, if the hole is one.
    pub slot: Option<Slot>,
    /// Outside diameter of a washer. How far a ply reaches is no matter of the bolt.
    pub outside: Size,
}

/// A sleeve around the bolt, in an [`Assembly`](super::Assembly).
///
/// ```
/// # use shankline::assembly::Tube;
/// fn reaches_over_two(tube: &Tube) -> bool {
///     tube.last_ply > tube.first_ply
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Tube {
    /// Its name.
    pub name: String,
    /// The first ply that it lies in, counted from 1.
    pub first_ply: usize,
    /// The last one.
    pub last_ply: usize,
    /// Its length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub length: Spread<Length>,
    /// From where to where it is clamped: where the plies around it are longer, they are.
    pub at: Extent,
    /// Outside diameter. A stack does not say it.
    pub outside: Size,
    /// Inside diameter. A stack does not say it.
    pub inside: Size,
}

impl Layer {
    pub(super) fn washer(washer: &JointWasher, thread: &Thread, side: Side, at: Extent) -> Self {
        let row = washer
            .style
            .and_then(|style| Washer::find(style, thread).ok());
        let (hole, outside) = match row {
            Some(row) => (
                Size::tabled(
                    row.inside_diameter_min,
                    row.inside_diameter_nominal,
                    row.inside_diameter_max,
                    row.provenance,
                ),
                Size::tabled(
                    row.outside_diameter_min,
                    row.outside_diameter_nominal,
                    row.outside_diameter_max,
                    row.provenance,
                ),
            ),
            None => (Size::stated(washer.inside), Size::stated(washer.outside)),
        };
        let tabled = row.filter(|row| row.thickness().is_ok_and(|own| same(own, washer.thickness)));
        Self {
            kind: LayerKind::Washer,
            name: match &washer.name {
                Cow::Borrowed(name) => (*name).into(),
                Cow::Owned(name) => name.clone(),
            },
            ply: None,
            side: Some(side),
            style: washer.style,
            material: None,
            thickness: washer.thickness,
            thickness_origin: tabled.map_or(Origin::Stated, |row| Origin::Tabled(row.provenance)),
            at,
            hole,
            slot: None,
            outside,
        }
    }

    pub(super) fn ply(ply: &JointPly, number: usize, at: Extent) -> Self {
        use alloc::string::ToString;
        let material = ply.material.as_ref().map(ToString::to_string);
        Self {
            kind: LayerKind::Ply,
            name: ply.name.clone(),
            ply: Some(number),
            side: None,
            style: None,
            material: material.or_else(|| ply.timber.as_ref().map(ToString::to_string)),
            thickness: ply.thickness,
            thickness_origin: Origin::Stated,
            at,
            hole: Size::stated(ply.hole),
            slot: ply.slot,
            outside: Size::NOT_READ,
        }
    }

    pub(super) fn gap(width: Spread<Length>, at: Extent) -> Self {
        Self {
            kind: LayerKind::Gap,
            name: "gap".into(),
            ply: None,
            side: None,
            style: None,
            material: None,
            thickness: width,
            thickness_origin: Origin::Stated,
            at,
            hole: Size::NOT_READ,
            slot: None,
            outside: Size::NOT_READ,
        }
    }
}

/// Whether two spreads are the same but for the rounding of their sums.
pub(super) fn same(a: Spread<Length>, b: Spread<Length>) -> bool {
    let near = |a: Length, b: Length| (a - b).abs() <= 10.0 * SAME_LENGTH;
    near(a.min, b.min) && near(a.nominal, b.nominal) && near(a.max, b.max)
}

#[cfg(feature = "serde")]
// serde wants a reference to the field.
#[allow(clippy::ref_option)]
pub(super) fn round_option<S: serde::Serializer>(
    spread: &Option<Spread<Length>>,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    match spread {
        Some(spread) => crate::spread::quantity::round(spread, serializer),
        None => serializer.serialize_none(),
    }
}
