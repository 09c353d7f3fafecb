//! Groups of bolts: under a load off their centroid, and what they bear together.
//!
//! | method | what it assumes | publisher |
//! |---|---|---|
//! | [`BoltPattern::elastic`] | rigid plates, bolts as springs | Shigley, 9th ed., Eq. 8-57; AISC Manual, Part 7 |
//! | [`BoltPattern::instantaneous_centre`] | rigid plates, bolts by their load-deformation curve | Crawford and Kulak; AISC Manual, Part 7 |
//! | [`BoltPattern::tension`] | moment out of the plane, tension linear from an axis | see [`NeutralAxis`] |
//! | [`BoltPattern::pull`] | the same with a pull, and about any axis | see [`Tilting`] |
//! | [`en_1993_fastener_group`] | load through the centroid; what all bear together | EN 1993-1-8 3.7(1) |
//!
//! x points right, y up, moments are positive anticlockwise. Forces on bolts are those which the loaded
//! plate puts on them, so they add up to the load.
//!
//! ```
//! use shankline::strength::group::{BoltPattern, PlaneLoad};
//! use shankline::units::{millimetres, newtons};
//! # fn main() -> Result<(), shankline::Error> {
//! // Shigley, 9th ed., Example 8-7: 16 kN at 425 mm from four bolts.
//! let pattern = BoltPattern::rows_and_columns(2, 2, millimetres(120.0), millimetres(150.0))?;
//! let load = PlaneLoad::new(newtons(0.0), newtons(-16e3), millimetres(425.0), millimetres(0.0));
//! let group = pattern.elastic(&[load])?;
//! assert!((group.forces[group.governing].resultant - newtons(20.97e3)).abs() < newtons(5.0));
//! # Ok(())
//! # }
//! ```
//!
//! These are estimates: a structure on which people depend is checked to the local code by a licensed
//! engineer, plates, edge distances and slip as well as bolts.

mod derive;
mod elastic;
mod fasteners;
mod instant;
mod load;
mod pattern;
mod pull;
mod solve;
mod tension;
#[cfg(test)]
mod tests;

pub use elastic::ElasticGroup;
pub use fasteners::{FastenerGroup, FastenerResistance, GroupRule, en_1993_fastener_group};
pub use instant::{DeformationLaw, InstantaneousCentre};
pub use load::{BoltForce, PlaneLoad, PlaneResultant};
pub use pattern::{BoltPattern, GroupBolt, Point};
pub use pull::{GroupPull, PullLoad, Tilting};
pub use tension::{GroupTension, NeutralAxis};
