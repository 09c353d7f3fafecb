//! Parts as they are bought: body, grip gaging length and length limits of screws of any length; nuts; washers.
//!
//! | question | begins at |
//! |---|---|
//! | where shank and thread of a bolt of a length lie | [`ScrewSeries::length`], [`ScrewLength::zone_at`] |
//! | which lengths are stocked | [`ScrewSeries::stock_lengths`] |
//! | sizes of a head or shank, of every product | [`ScrewSeries::head`], [`ScrewSeries::body_diameter`] |
//! | a bolt measured with a caliper | [`ScrewLength::measured`] |
//! | a nut or washer for a thread | [`Nut::find`], [`Washer::find`] |
//! | a nut by an older edition of its standard | [`Nut::find_edition`] |
//! | the face with which a head, nut or washer clamps | [`ClampFace::of_screw`], [`ClampFace::of_nut`], [`WasherFace::of`] |
//! | an aircraft bolt by its designation | [`AnBolt`] |
//! | a thread insert, its hole and how deep | [`WireInsert`] |
//!
//! All lengths count from the bearing face under the head:
//!
//! ```text
//!   |<-------- nominal length L ---------->|
//!  _|
//! | |======================/\/\/\/\/\/\/\/\|
//! |_|
//!   |<- LB min ->|<-- Y -->|<-- thread --->|
//!   |<---- LG max -------->|
//! ```
//!
//! The *body length* LB is only ever a minimum and the *grip gaging length* LG (how far a GO
//! ring gauge stops from the head) only ever a maximum. Between them, over the *transition length* Y, a given
//! screw may have shank, run-out or thread; this crate calls the whole stretch the run-out
//! ([`Zone::RunOut`]). ISO documents write ls for LB and lg for LG.
//!
//! In a joint, with two shear planes on sure shank, the grip, and what stands past the nut:
//!
#![cfg_attr(doc, doc = include_str!("drawing/pictures/section.html"))]

mod aircraft;
mod aircraft_torque;
mod bolts;
mod clamp_face;
mod holes;
mod insert;
mod metric_screws;
mod nut;
mod prevailing_torque;
mod screw_length;
mod screw_series;
mod size;
mod sockets;
mod washer;

pub use crate::tables::nuts::{Locking, Nut, NutStyle};
pub use crate::tables::washers::{Washer, WasherStyle};
pub use aircraft::{AnBolt, AnWashers};
pub use clamp_face::{ClampFace, FaceRule, WasherFace};
pub use insert::{InsertHole, InsertLength, LastTap, WireInsert};
pub use screw_length::{ScrewLength, Zone};
pub(crate) use screw_series::greatest_width;
pub use screw_series::{Head, HeadForm, ScrewProduct, ScrewSeries};
pub use size::{Origin, Size};
