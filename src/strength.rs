//! Strength of bolts and plies across the axis of the bolt.

pub mod bolt_tension;
pub mod check;
pub mod group;
pub mod interaction;
pub mod loads;
pub mod pin;
pub mod ply;
pub mod shear;
pub mod slip;
pub mod strip;
pub mod timber;
