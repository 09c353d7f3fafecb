//! Reference tables for bolts, screws, nuts and washers as typed, sourced data, and the
//! calculations that turn them into a decision about one bolted joint loaded across its axis:
//! which length, so that the plain shank and not the thread crosses every shear plane while the nut
//! still clamps; how many washers, and where; where to cut; what bolt, plies and nut bear, by named
//! methods with their working; what torque gives what preload; which nut; and what to look at later.
//! [`joint::Joint::check`] does all of it in one call.
//!
//! # A joint from end to end
//!
//! ```
//! use shankline::prelude::*;
//! use shankline::units::kip;
//! # fn main() -> Result<(), shankline::Error> {
//! let thread: Thread = "3/4-10 UNC".parse()?;
//! let strength = SaeGrade::Grade8.strength(thread.nominal_diameter())?;
//!
//! // The parts, from the tables.
//! let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &thread)?;
//! let nut = Nut::find(NutStyle::InsertLockNe, &thread)?;
//! let washer = Washer::find(WasherStyle::TypeANarrow, &thread)?;
//!
//! // What the bolt goes through.
//! let stack = Stack::builder()
//!     .ply("ear", inches(0.500).plus_minus(inches(0.015)))
//!     .ply("tongue", inches(1.000).plus_minus(inches(0.020)))
//!     .ply("ear", inches(0.500).plus_minus(inches(0.015)))
//!     .shear_planes([1, 2])
//!     .washers_under_nut(washer.thickness()?, 1)
//!     .build()?;
//!
//! // Which stock length, and why not the others.
//! let rules = LengthRules::fabrication(UnitSystem::UsCustomary);
//! let selection = LengthSearch::new(&stack, &screws, NutEnd::of(nut)?, rules)?.run()?;
//! let best = selection.best().expect("a length fits");
//! assert_eq!(best.screw.nominal, inches(4.0));
//!
//! // What it carries: both planes cut full shank, in the worst case.
//! let planes: Vec<Zone> = stack.planes(&best.screw).map(|plane| plane.worst).collect();
//! let method = ShearMethod::DistortionEnergy { basis: ShearBasis::Yield, design_factor: 2.0 };
//! let shear = bolt_shear(&thread, &strength, &planes, method)?;
//! assert!((shear.allowable.get::<kip>() - 33.1).abs() < 0.05);
//!
//! // And how tight.
//! let proof = strength.loads(&thread)?.proof.expect("grade 8 has a proof load");
//! let form = ShortForm::new(NutFactor::new(0.15, 0.18, 0.22)?, thread.nominal_diameter())?;
//! let torque = form.torque(PreloadTarget::Reusable.fraction() * proof)?;
//! let preload = form.preload(torque.nominal)?;
//! assert!(preload.min < preload.nominal && preload.nominal < preload.max);
//! # Ok(())
//! # }
//! ```
//!
//! # Where things are
//!
//! | module | holds |
//! |---|---|
//! | [`tables`] | rows and look-ups, from threads to ply materials; each with its source |
//! | [`thread`] | designations, profiles, stress areas, limits of size, fits, strip areas, percentage of thread, three wires |
//! | [`material`] | grades and classes of bolts and nuts; strength at a size; proof, yield and tensile loads |
//! | [`parts`] | body and grip gaging length of screws of any length; nuts; washers |
//! | [`strength`] | bolt in shear and tension and both, slip, pins, plies, timber, bolt groups, stripping, by named methods; one shape for every check |
//! | [`preload`] | torque to preload and back, tightening stress, scatter, loosening, heat |
//! | [`tension`] | a preloaded joint loaded along its bolt: stiffness, load share, separation, fatigue, prying |
//! | [`joint`] | stack, shear planes, length selection; bolts in the hand and in the bin, advice, cut plans, tolerances, shopping lists, dash numbers; the whole check of a joint, the search for the best one, nut choice, workshop sheet |
//! | [`derivation`] | the working behind a result, as text, Markdown or LaTeX |
//! | [`units`] | constructors, exact US customary units, quantities as text and in data files |
//! | [`source`], [`caution`], [`error`] | where a value comes from, what to warn of, why a question was refused |
//!
//! Parts are facts, joints are decisions: only [`joint`] knows of joints.
//!
//! # Conventions
//!
//! - Every quantity with a unit is a [`uom`] type; plain coefficients are `f64`.
//! - A function that can be asked nonsense returns a [`Result`]; [`Error`] names the quantity, the
//!   value with its unit and what is permitted. NaN, infinity, zero and negative values are refused
//!   where they have no meaning. Nothing panics on any input, and no table is extrapolated.
//! - [`Spread`] holds minimum, nominal and maximum of a toleranced value. Verdicts are worst case.
//! - A capacity says what it is: nominal, design or allowable, by one publisher in one edition.
//! - Values recalled rather than read carry [`Basis::Memory`](source::Basis), and the parts that
//!   rest on them return a [`Caution`](caution::Caution).
//!
//! # Features
//!
//! | feature | default | what for |
//! |---|---|---|
//! | `std` | yes | rounding from the standard library |
//! | `libm` | no | rounding from `libm`, without the standard library (an allocator is needed) |
//! | `serde` | no | inputs from and results to data files; see [`units`] on quantities |
//!
//! # Caution
//!
//! Results are estimates from published tables and formulas, not a certification. Local codes and
//! the maker's instructions rule. Where a failure can hurt someone, a licensed engineer must check
//! the joint.

#![cfg_attr(not(feature = "std"), no_std)]
#![forbid(unsafe_code)]
#![deny(missing_docs)]

/// The quantity library, so that dependents use the same version.
#[macro_use]
pub extern crate uom;
extern crate alloc;

pub mod caution;
pub mod derivation;
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
pub mod tension;
pub mod thread;
pub mod units;

pub use error::Error;
pub use spread::{PlusMinus, Spread};

/// What most programs need, for `use shankline::prelude::*`.
pub mod prelude {
    pub use crate::caution::Caution;
    pub use crate::error::Error;
    pub use crate::joint::{CutRule, LengthRules, LengthSearch, NutEnd, Stack};
    pub use crate::material::{
        AstmGrade, BoltGrade, BoltStrength, NutGrade, NutStrength, PropertyClass, SaeGrade,
        StainlessClass,
    };
    pub use crate::parts::{
        Nut, NutStyle, ScrewLength, ScrewProduct, ScrewSeries, Washer, WasherStyle, Zone,
    };
    pub use crate::preload::{
        BearingFace, BearingPressure, ElasticJoint, EnTorque, Friction, FrictionForm, NasaPreload,
        NutFactor, PreloadSample, PreloadTarget, ShortForm, ThermalLayer, TighteningStress,
        TorsionModel, VdiPreload, proof_use, scattered,
    };
    pub use crate::spread::{PlusMinus, Spread};
    pub use crate::strength::shear::{AiscEdition, ShearBasis, ShearMethod, bolt_shear};
    pub use crate::tables::nut_grades::NutShape;
    pub use crate::tables::threads::{MetricSeries, UnifiedSeries};
    pub use crate::thread::{AtLeast, Thread};
    pub use crate::units::{
        Area, Force, Length, Ratio, Stress, Torque, UnitSystem, inches, ksi, megapascals,
        millimetres, newton_metres, newtons, pound_force_feet, pounds_force, shown, square_inches,
        square_millimetres,
    };
}

/// Keeps the code in the README compiling.
#[cfg(doctest)]
#[doc = include_str!("../README.md")]
struct ReadmeExamples;
