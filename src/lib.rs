//! Chooses and checks the bolt of a joint loaded across its axis: which length, so that the plain shank
//! and not the thread crosses every shear plane while the nut still clamps; how many washers, and where;
//! where to cut; what bolt, plies and nut carry, by named methods with their working; what torque gives what
//! preload; which nut; and what to inspect later. Behind it stand reference tables for threads, bolts,
//! screws, nuts, washers and holes as typed, sourced data.
//!
//! [`joint::Joint::check`] does all of it in one call and answers with one of three words: holds, does not hold,
//! undecided; [`joint::Joint::design`] searches many joints for the best one. Results are estimates: see the [caution](#caution) at the end.
//!
//! # Ten lines
//!
//! ```
//! use shankline::prelude::*;
//! # fn main() -> Result<(), shankline::Error> {
//! let joint = Joint::builder("M12")
//!     .ply("beam", "20 +/- 0.3 mm").material("ASTM A36 steel")
//!         .end_distance("35 mm").edge_distance("30 mm").width("60 mm")
//!     .ply("plate", "20 +/- 0.3 mm").material("ASTM A36 steel")
//!         .end_distance("35 mm").edge_distance("30 mm").width("60 mm")
//!     .across("4 kN").shock_factor(2.0).vibration(true)
//!     .build()?;
//! let report = joint.report(UnitSystem::Si)?;
//! println!("{report}"); // the word and why, the bolt, every check, what was taken for granted, the workshop sheet
//! assert_eq!(report.word, Word::Holds);
//!
//! // What diameter, grade, nut and washers, if nobody says?
//! let designs = Joint::any_size(UnitSystem::UsCustomary)
//!     .ply("lug", "3/8 in").material("ASTM A36 steel")
//!         .end_distance("1.5 in").edge_distance("1.5 in").width("3 in")
//!     .ply("base", "1/2 in").material("ASTM A36 steel")
//!         .end_distance("1.5 in").edge_distance("1.5 in").width("3 in")
//!     .across("2 kip")
//!     .choose()?;
//! assert!(designs.best_joint()?.is_some());
//! # Ok(())
//! # }
//! ```
//!
//! # The pieces, one by one
//!
//! ```
//! use shankline::prelude::*;
//! # fn main() -> Result<(), shankline::Error> {
//! let thread: Thread = "3/4-10 UNC".parse()?;
//! let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &thread)?;
//! let nut = Nut::find(NutStyle::InsertLockNe, &thread)?;
//! let washer = Washer::find(WasherStyle::TypeANarrow, &thread)?;
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
//! // What it carries: both planes cut full shank, in the worst case; with its working.
//! let strength = SaeGrade::Grade8.strength(thread.nominal_diameter())?;
//! let planes: Vec<Zone> = stack.planes(&best.screw).map(|plane| plane.worst).collect();
//! let method = ShearMethod::DistortionEnergy { basis: ShearBasis::Yield, design_factor: 2.0 };
//! let shear = bolt_shear(&thread, &strength, &planes, method)?;
//! let working = shear.derivation();
//! working.check()?;
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
//! Each module begins with a table of its own, from question to function.
//!
//! | module | holds |
//! |---|---|
//! | [`tables`] | rows and look-ups, from threads to ply materials; each with its source |
//! | [`thread`] | designations, profiles, stress areas, limits of size, fits, strip areas, percentage of thread, three wires |
//! | [`material`] | grades and classes of bolts and nuts; strength at a size; proof, yield and tensile loads |
//! | [`parts`] | body and grip gaging length of screws of any length; nuts; washers; thread inserts; aircraft bolts by dash number |
//! | [`strength`] | bolt in shear and tension and both, sizing as textbooks ask for it, covers under pressure, slip, pins, plies, timber, bolt groups, stripping, by named methods; one shape for every check |
//! | [`preload`] | torque to preload and back, tightening stress, scatter, loosening, heat |
//! | [`tension`] | a preloaded joint loaded along its bolt: stiffness, load share, separation, fatigue, prying |
//! | [`vdi_2230`] | the steps R1 to R13 of VDI 2230 Part 1 for one bolt clamped and loaded through its axis, with each safety |
//! | [`nasa_std_5020`] | NASA-STD-5020 for one bolt, from its greatest and least preload to its margins of safety |
//! | [`joint`] | stack (gaps, sleeves, soft plies, tapped parts), shear planes, length selection; bolts in the hand and in the bin, advice, cut plans, tolerances, shopping lists, dash numbers; the whole check of a joint, the search for the best one, nut choice, order of tightening, workshop sheet |
//! | [`connection`] | several bolts in a pattern with outlines of their plates and many load cases: what comes to each bolt, every bolt as a joint, block shear and sections |
//! | [`assembly`] | a joint as geometry: every part along and across the axis, with its tolerances and the source of each size |
//! | `drawing` (feature) | pictures as SVG: section with what lies where in the worst case, use of every check, stock lengths, springs, the pattern of a connection; section and pattern as DXF |
//! | [`catalogue`] | lists to choose from: every member of a family with its code and label, what fits what, names as people type them |
//! | [`derivation`] | the working behind a result, as text, Markdown or LaTeX |
//! | [`units`] | constructors, exact US customary units, quantities as text and in data files |
//! | [`guide`] | a cookbook of short programs, and a glossary |
//! | [`source`], [`caution`], [`error`] | where a value comes from, what to warn of, why a question was refused |
//!
//! Parts are facts, joints are decisions: only [`joint`] and what stands above it know of joints. [`prelude`] has what a
//! length search, a shear check and a preload need; the types of a whole joint are in [`joint`].
//!
//! Programs to run and to copy from, on invented joints, are in `examples/` of the package: `choose_bolt`, `pick_size`,
//! `check_joint` and `design_joint` (from TOML or JSON, feature `serde`), `connection` and `draw_joint` (features `serde` and
//! `drawing`), `homework`, `bolt_in_hand`, `own_parts`,
//! `pick_from_bin`, `odd_stacks`, `bracket`, `tension_joint`, `aircraft_grip`, `catalogue`.
//!
//! # Conventions
//!
//! - Every quantity with a unit is a [`uom`] type; plain coefficients are `f64`.
//! - [`Spread`] holds minimum, nominal and maximum of a toleranced value. Verdicts are worst case: between the
//!   guaranteed shank and the guaranteed thread lies the *run-out*, which counts as thread for strength and
//!   cannot hold the nut.
//! - "None" in a description is `Option::None`: nobody has read the value, or it does not exist. It is never
//!   zero and never a guess.
//! - Results keep inputs and intermediate values as public fields. `derivation()` writes the working of a
//!   result and costs nothing unless called.
//!
//! # Nominal, design, allowable
//!
//! A resistance says how much of the safety is in it ([`Level`](strength::check::Level)), by one publisher
//! in one edition. A method gives the levels its publisher defines, and asking for another is an error.
//!
//! | level | what is in it | what load it is held against |
//! |---|---|---|
//! | nominal | nothing: onset of yield or fracture, as the method says; characteristic values of EN | none, without a factor of your own |
//! | design | the resistance or partial factor of the code | factored loads (limit states, LRFD) |
//! | allowable | the whole factor of safety | service loads (ASD, machine design, limit loads of aircraft) |
//!
//! # Errors
//!
//! A function that can be asked nonsense returns a [`Result`]. [`Error`] names the quantity, the value with
//! its unit and what is permitted, or what the table has instead. NaN, infinity, zero and negative values are
//! refused where they have no meaning. Nothing panics on any input, and no table is extrapolated.
//!
//! ```
//! use shankline::prelude::*;
//! # fn main() -> Result<(), shankline::Error> {
//! let fine: Thread = "M20x1.5".parse()?;
//! assert_eq!(
//!     ScrewSeries::new(ScrewProduct::Iso4014, &fine).unwrap_err().to_string(),
//!     "M20x1.5 is not in the table of ISO 4014 and ISO 4017 screws; \
//!      they have the coarse pitch and sizes from M1.6 to M64",
//! );
//! # Ok(())
//! # }
//! ```
//!
//! # Cautions
//!
//! Each value knows its source and how it is known ([`Basis`](source::Basis)): read in the document, read in a
//! reproduction of it, computed from its formula, or recalled and not read. Results that rest on recalled
//! values or methods, on typical strengths or on a method outside its scope return a
//! [`Caution`](caution::Caution) from `cautions()`, and print it in their reports. A caution is no error:
//! the number stands, and the sentence says what to check before relying on it.
//!
//! ```
//! use shankline::prelude::*;
//! # fn main() -> Result<(), shankline::Error> {
//! let nut = Nut::find(NutStyle::Iso7042, &"M12".parse()?)?;
//! let caution = nut.cautions().iter().next().expect("its height is recalled").to_string();
//! assert!(caution.contains("was recalled and not read in any document; check it against ISO 7042"));
//! # Ok(())
//! # }
//! ```
//!
//! # Features
//!
//! | feature | default | what for |
//! |---|---|---|
//! | `std` | yes | square roots, powers and rounding from the standard library |
//! | `joint` | yes | whole joints, the search for a length, connections and their geometry: [`joint`], [`connection`], [`assembly`]; without it the crate builds in little more than half the time |
//! | `libm` | no | the same from `libm`, without the standard library (an allocator is needed) |
//! | `serde` | no | inputs from data files (a whole joint or a design request in JSON or TOML), results to them; see [`joint`] on joints and [`units`] on quantities |
//! | `drawing` | no | pictures of joints as SVG and DXF, without a further dependency; see `drawing` |
//! | `schema` | no | JSON Schema of a joint, of a design space and of the answers, and `schemars::JsonSchema` for their types; brings `serde`; see `joint::schema` |
//!
//! One of `std` and `libm` must be on.
//!
//! # Caution
//!
//! Results are estimates from published tables and formulas, not a certification. Local codes and
//! the maker's instructions rule. A verdict covers what it lists as checked and no more. Where a failure can
//! hurt someone (lifting, steering, guard rails, structures, pressure), a licensed engineer must check
//! the joint. [`caution::GENERAL`] has these sentences for your own reports.

#![cfg_attr(not(feature = "std"), no_std)]
// Without joints some of what only they ask for is idle.
#![cfg_attr(not(feature = "joint"), allow(dead_code, unused_imports))]
#![cfg_attr(docsrs, feature(doc_cfg))]
#![forbid(unsafe_code)]
#![deny(missing_docs)]
// No input makes it panic. Where an index is right by how a list was made, a local `allow` says so.
#![cfg_attr(
    not(test),
    deny(
        clippy::indexing_slicing,
        clippy::string_slice,
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::panic,
        clippy::unreachable,
        clippy::todo,
        clippy::unimplemented
    )
)]

/// The quantity library, so that dependents use the same version.
#[macro_use]
pub extern crate uom;
extern crate alloc;

#[cfg(feature = "joint")]
pub mod assembly;
pub mod catalogue;
pub mod caution;
#[cfg(feature = "joint")]
pub mod connection;
pub mod derivation;
#[cfg(feature = "drawing")]
pub mod drawing;
pub mod error;
#[cfg(feature = "joint")]
pub mod joint;
pub mod material;
mod math;
mod names;
pub mod nasa_std_5020;
#[cfg(feature = "serde")]
mod objects;
pub mod parts;
pub mod preload;
#[cfg(feature = "schema")]
mod schema;
pub mod source;
mod spread;
pub mod strength;
pub mod tables;
pub mod tension;
pub mod thread;
pub mod units;
pub mod vdi_2230;

pub use error::Error;
pub use spread::{PlusMinus, Spread};

pub mod prelude {
    //! What most programs need, for `use shankline::prelude::*`.
    //!
    //! | from | items |
    //! |---|---|
    //! | [`units`] | types of quantities, constructors such as [`inches`] and [`newtons`], [`UnitSystem`], [`shown`] |
    //! | [`thread`], [`tables`] | [`Thread`], [`AtLeast`], series of threads, [`NutShape`] |
    //! | [`material`] | grades of bolts and nuts and their strengths |
    //! | [`parts`] | [`ScrewSeries`], [`ScrewLength`], [`Zone`], [`Nut`] and [`Washer`] with their styles |
    //! | [`joint`] | [`Joint`] with its builder, parts, [`Verdict`] and [`Report`]; [`Stack`], [`LengthSearch`], [`LengthRules`] |
    //! | [`strength`] | [`bolt_shear`] with [`ShearMethod`], [`ShearBasis`], [`AiscEdition`] |
    //! | [`preload`] | torque forms, targets, ranges and tightening stresses |
    //! | the rest | [`Error`], [`Caution`], [`Spread`], [`PlusMinus`], [`Key`] |
    //!
    //! The design search and the details of a joint are imported by name from [`joint`].
    //!
    //! [`units`]: crate::units
    //! [`thread`]: crate::thread
    //! [`tables`]: crate::tables
    //! [`material`]: crate::material
    //! [`parts`]: crate::parts
    //! [`joint`]: crate::joint
    //! [`strength`]: crate::strength
    //! [`preload`]: crate::preload

    pub use crate::catalogue::Key;
    pub use crate::caution::Caution;
    pub use crate::error::Error;
    #[cfg(feature = "joint")]
    pub use crate::joint::{
        CutRule, Environment, Fact, Finish, Given, Joint, JointBolt, JointBuilder, JointLoad,
        JointMethods, JointNut, JointPly, JointWasher, LengthRules, LengthSearch, NutEnd, OwnParts,
        Pattern, Report, ReportStyle, Scope, Sheet, Stack, Tightening, TorqueTightening, Verdict,
        Word,
    };
    pub use crate::material::{
        AstmGrade, BoltGrade, BoltStrength, NutGrade, NutStrength, NutTapping, PropertyClass,
        SaeGrade, StainlessClass,
    };
    pub use crate::parts::{
        Nut, NutStyle, ScrewLength, ScrewProduct, ScrewSeries, Washer, WasherStyle, Zone,
    };
    pub use crate::preload::{
        BearingFace, BearingPressure, ElasticJoint, EnTorque, Friction, FrictionForm, NasaPreload,
        NutFactor, PreloadAim, PreloadLimit, PreloadSample, PreloadTarget, ShortForm, ThermalLayer,
        TighteningStress, TorsionModel, VdiPreload, proof_use, scattered,
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

#[cfg(feature = "joint")]
pub mod guide {
    //! What to read beside the reference.
    //!
    //! | page | what |
    //! |---|---|
    //! | [`cookbook`] | short questions, each with the whole program for it |
    //! | [`glossary`] | terms and symbols of the trade, as this crate uses them |

    #[doc = include_str!("guide/cookbook.md")]
    pub mod cookbook {}

    #[doc = include_str!("guide/glossary.md")]
    pub mod glossary {}
}

/// Keeps the code in the README compiling.
#[cfg(doctest)]
#[doc = include_str!("../README.md")]
struct ReadmeExamples;
