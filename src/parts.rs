//! Screws as they are bought: body length, grip gaging length and length limits at any length.
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
//! ring gage stops from the head) only ever a maximum. Between them a given screw may have
//! shank, run-out or thread.

mod aircraft;
mod screw_length;
mod screw_series;

pub use crate::tables::nuts::{Locking, Nut, NutStyle};
pub use crate::tables::washers::{Washer, WasherStyle};
pub use aircraft::{AnBolt, AnWashers};
pub(crate) use screw_length::SAME_LENGTH;
pub use screw_length::{ScrewLength, Zone};
pub use screw_series::{ScrewProduct, ScrewSeries};
