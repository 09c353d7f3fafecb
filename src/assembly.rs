//! A joint as geometry: every part along the axis of the bolt and across it, in one record.
//!
//! ```
//! use shankline::assembly::End;
//! use shankline::prelude::*;
#![doc = include_str!("joint/whole/example.txt")]
//! let verdict = joint.check()?;
//! let assembly = joint.assembly(&verdict.candidate)?;
//! // The nut bears where the grip ends, and nothing of it is a guess.
//! let End::Nut(nut) = &assembly.end else { panic!("it has a nut") };
//! assert_eq!(nut.at.from, verdict.candidate.grip);
//! assert!(nut.across_flats.is_read() && !nut.flange_diameter.is_read());
//! # Ok(())
//! # }
//! ```
//!
//! | question | begins at |
//! |---|---|
//! | where every part of a joint is | [`Joint::assembly`](crate::joint::Joint::assembly) |
//! | the same for a length that a search found, without a joint | [`Assembly::of_length`] |
//! | what is clamped, in order | [`Assembly::layers`], [`Assembly::sleeves`] |
//! | what closes it | [`Assembly::end`] |
//! | how wide a head or nut can be | [`Head::greatest_width`](crate::parts::Head::greatest_width), [`NutBody::greatest_width`] |
//! | what no table has | [`Assembly::not_read`] |
//!
//! Positions count from the bearing face of the head towards the nut; from the top of a countersunk head, whose length
//! does too. Each has its least, its nominal and its greatest value: the tolerances of everything before it add up, as in
//! the length search. Sizes across the axis are [`Size`]s with their origin. A size that nobody has
//! read or stated is there as *not read*: a picture may draw a stand-in for it, and must say so.

use alloc::{string::String, vec::Vec};

use crate::joint::{Cut, Plane};
use crate::parts::{Head, Size};
use crate::spread::Spread;
use crate::thread::Thread;
use crate::units::Length;

mod build;
mod layer;
mod nut;

pub use layer::{Layer, Side, Tube};
pub use nut::{End, NutBody, TappedBody};

/// From where to where along the axis.
///
/// ```
/// # use shankline::assembly::Extent;
/// # use shankline::units::Length;
/// fn nominal_length(part: &Extent) -> Length {
///     part.to.nominal - part.from.nominal
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Extent {
    /// The end nearer to the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub from: Spread<Length>,
    /// The end nearer to the nut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub to: Spread<Length>,
}

/// The bolt of an [`Assembly`]: its head, and what lies along it.
///
/// ```
/// # use shankline::assembly::Bolt;
/// fn has_shank(bolt: &Bolt) -> bool {
///     bolt.shank_end > shankline::units::millimetres(0.0)
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Bolt {
    /// Thread and length, as it is sold: `M16 x 80 mm`.
    pub designation: String,
    /// Product, as its standard calls it, or the name of a bolt of the caller's own.
    pub product: String,
    /// Grade or class; none where only a length was asked about.
    pub grade: Option<String>,
    /// Its thread.
    pub thread: Thread,
    /// Pitch P.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub pitch: Length,
    /// Basic major diameter d.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub diameter: Length,
    /// Diameter at the root of its thread, by the design profile.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub root_diameter: Length,
    /// Its head.
    pub head: Head,
    /// Diameter of the plain shank. A bolt without a shank has none.
    pub body_diameter: Size,
    /// How far the plain shank is sure to reach, LB min.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub shank_end: Length,
    /// From where on the thread is sure to be full, LG max. Between the two lies the run-out.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub thread_start: Length,
    /// Its length as bought.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub length: Spread<Length>,
    /// Where it ends: its length, or what a cut leaves of it.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub end: Spread<Length>,
    /// Length of its point or chamfer.
    pub point: Size,
    /// The fixed length that it is cut to.
    pub cut: Option<Cut>,
    /// Whether it is cut at fit-up, to the stack in hand, as no fixed length will do.
    pub cut_at_fit_up: bool,
    /// How far it stands past the nut, or past the wanted engagement in a tapped part; after the cut, if there is one.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub protrusion: Spread<Length>,
}

/// Every part of a joint along and across the axis of its bolt.
///
/// ```
/// use shankline::assembly::Assembly;
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M10".parse()?;
/// let ply = millimetres(20.0).plus_minus(millimetres(0.2));
/// let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
/// let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
/// let nut = Nut::find(NutStyle::Iso4032, &thread)?;
/// let rules = LengthRules::fabrication(UnitSystem::Si);
/// let selection = LengthSearch::new(&stack, &screws, NutEnd::of(nut)?, rules)?.run()?;
/// let best = selection.best().expect("a length fits");
/// let assembly = Assembly::of_length(&stack, &screws, Some(nut), best)?;
/// assert_eq!(assembly.layers[1].at.from.nominal, millimetres(20.0));
/// assert_eq!(assembly.planes[0].worst, Zone::Shank);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Assembly {
    /// What a drawing would call it; empty where only a length was asked about.
    pub title: String,
    /// The bolt with its head.
    pub bolt: Bolt,
    /// How the head sits: on a face, recessed, countersunk.
    pub seat: crate::joint::HeadSeat,
    /// Washers, plies and gaps, from the head.
    pub layers: Vec<Layer>,
    /// Sleeves around the bolt, which are clamped in place of the plies around them.
    pub sleeves: Vec<Tube>,
    /// Depth of a spot face in the last ply, under the nut.
    #[cfg_attr(feature = "serde", serde(serialize_with = "layer::round_option"))]
    pub spot_face_under_nut: Option<Spread<Length>>,
    /// The nut, or the thread that stands for it.
    pub end: End,
    /// The shear planes, each with what it cuts nominally and in the worst case.
    pub planes: Vec<Plane>,
    /// Everything between the bearing faces of head and nut, G.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub grip: Spread<Length>,
    /// By how much the grip clears the run-out in the worst case, J = G min - LG max; negative where the nut may jam.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub jam_margin: Length,
}

/// JSON Schema (draft 2020-12) of an [`Assembly`] as it is written; kept as `examples/data/assembly.schema.json`. A later
/// version may add fields.
///
/// ```
/// assert!(shankline::assembly::schema().contains("\"jam_margin\""));
/// ```
#[cfg(feature = "schema")]
#[must_use]
pub fn schema() -> String {
    use schemars::generate::SchemaSettings;
    crate::joint::schema::text_of::<Assembly>(SchemaSettings::draft2020_12().for_serialize())
}
