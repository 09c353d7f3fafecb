//! Strength of bolts across their axis.

pub mod shear;
pub mod strip;
