//! Strength of bolts and plies across the axis of the bolt.

pub mod check;
pub mod interaction;
pub mod shear;
pub mod strip;
