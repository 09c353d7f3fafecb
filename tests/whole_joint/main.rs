//! The whole check: each mode can govern, checks against hand calculations, and what is not known is said.
//!
//! One file a subject. Loads and dimensions are invented; where a figure is compared, its arithmetic stands beside it.

mod bending;
mod between;
mod bolt;
mod bounds;
mod conditions;
mod holes;
mod joints;
#[cfg(feature = "serde")]
mod meeting;
mod numbers;
mod own_screws;
mod plies;
mod preload;
mod seats;
mod sheet;
mod surroundings;
mod tapped;
mod timber;
mod told;
