//! placeholder
#![no_std]
#[macro_use]
extern crate uom;
extern crate alloc;
#[cfg(feature = "std")]
extern crate std;
pub mod units;
