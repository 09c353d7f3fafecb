//! placeholder
#![cfg_attr(not(feature = "std"), no_std)]
#![forbid(unsafe_code)]
#![deny(missing_docs)]

/// The quantity library, so that dependents use the same version.
#[macro_use]
pub extern crate uom;
extern crate alloc;

pub mod caution;
pub mod error;
pub mod joint;
pub mod material;
mod math;
pub mod parts;
pub mod preload;
pub mod source;
mod spread;
pub mod strength;
pub mod tables;
pub mod thread;
pub mod units;

pub use error::Error;
pub use spread::{PlusMinus, Spread};

/// What most programs need, for `use shankline::prelude::*`.
pub mod prelude {
    pub use crate::caution::Caution;
    pub use crate::error::Error;
    pub use crate::joint::{CutRule, LengthRules, LengthSearch, Stack};
    pub use crate::material::{BoltGrade, PropertyClass, SaeGrade};
    pub use crate::parts::{
        Nut, NutStyle, ScrewLength, ScrewProduct, ScrewSeries, Washer, WasherStyle, Zone,
    };
    pub use crate::preload::{NutFactor, PreloadTarget, ShortForm, proof_use};
    pub use crate::spread::{PlusMinus, Spread};
    pub use crate::strength::shear::{AiscEdition, ShearBasis, ShearMethod, bolt_shear};
    pub use crate::tables::threads::UnifiedSeries;
    pub use crate::thread::Thread;
    pub use crate::units::{
        Area, Force, Length, Ratio, Stress, Torque, UnitSystem, inches, ksi, megapascals,
        millimetres, newton_metres, newtons, pound_force_feet, pounds_force, shown, square_inches,
        square_millimetres,
    };
}
