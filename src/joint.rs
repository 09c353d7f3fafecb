//! Decisions about one bolted joint: which length, how many washers, where to cut; whether it holds; which
//! of many joints is best.
//!
//! ```
//! use shankline::prelude::*;
//! # fn main() -> Result<(), shankline::Error> {
//! // A clevis: two shear planes; every stock length of a 3/4 in bolt is tried.
//! let thread: Thread = "3/4-10 UNC".parse()?;
//! let washer = Washer::find(WasherStyle::TypeANarrow, &thread)?;
//! let nut = Nut::find(NutStyle::InsertLockNe, &thread)?;
//! let stack = Stack::builder()
//!     .ply("ear", inches(0.500).plus_minus(inches(0.015)))
//!     .ply("tongue", inches(1.000).plus_minus(inches(0.020)))
//!     .ply("ear", inches(0.500).plus_minus(inches(0.015)))
//!     .shear_planes([1, 2])
//!     .washers_under_nut(washer.thickness()?, 1)
//!     .build()?;
//! let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &thread)?;
//! let rules = LengthRules::fabrication(UnitSystem::UsCustomary);
//! let selection = LengthSearch::new(&stack, &screws, NutEnd::of(nut)?, rules)?.run()?;
//! let best = selection.best().expect("some length fits");
//! assert_eq!(best.screw.nominal, inches(4.0));
//! assert_eq!((best.planes_on_shank, best.washers_added), (2, 2));
//! # Ok(())
//! # }
//! ```
//!
//! | question | begins at |
//! |---|---|
//! | what the bolt goes through: plies, gaps, sleeves, soft plies, recesses, a tapped part | [`Stack::builder`] |
//! | what a trade asks of a length | [`RuleSet`], [`LengthRules`] |
//! | which stock length | [`LengthSearch`], in another order of preference with [`Ranking`] |
//! | which length a textbook takes, on nominal sizes: not the safe one | [`LengthSearch::textbook_length_without_tolerances`] |
//! | will the bolt in my hand do | [`BoltInHand::verdict`] |
//! | which of the bolts in my bins | [`Bin::pick`] |
//! | nothing fits: what to change | [`Arrangement::advice`] |
//! | where to cut, and may I | [`CutPlan`], [`BoltTrait`] |
//! | how likely is the worst case | [`JointTolerances`] |
//! | many joints, few part numbers | [`shopping_list`] |
//! | which dash number of an aircraft bolt | [`GripSearch`] |
//! | which kind of nut for the place | [`NutChoice`], [`Environment`] |
//! | what holds a screw in a tapped part, how far a bolt must pass a lock nut | [`screw_locking`], [`LeastProtrusion`] |
//! | does a cotter hole meet the slots | [`cotter_fit`] |
//! | which parts touch, and may their metals | [`JointParts::parts_in_contact`], [`galvanic_pair`], [`galling`] |
//! | may a bolt be used again | [`reuse`] |
//! | where every part of it is | [`Joint::assembly`] |
//! | does the joint hold | [`Joint::check`], with the working of each step [`Joint::check_with_working`] |
//! | which bolt, nut and washers, of many | [`Joint::design`], [`DesignSpace`], [`Objective`] |
//! | in which order to tighten a group | [`tightening_order`] |
//! | what the workshop builds from, and what to inspect later | [`Sheet`] |
//!
//! A bolt in shear or tension alone, a single ply or a bolt group needs no joint: see
//! [`strength`](crate::strength).
//!
//! # In data files
//!
//! With the feature `serde` [`Joint`], [`DesignSpace`] and [`Objective`] are read from JSON, TOML or another
//! self-describing format, and results written to it. Quantities are text with a unit (`"20 kN"`,
//! `"10 +/- 0.3 mm"`) or objects of value and unit; threads and grades are text as the trade writes it; names of
//! products, styles and methods are those of the variants in snake case (`iso_4014`). Fields that are not known
//! are refused by name. A part of your own stands as an object where the name of a listed one would: the `grade` and
//! `product` of the bolt ([`OwnStrength`], [`OwnScrew`]), the `style` of the nut ([`OwnNut`]), `material` and `timber` of a
//! ply ([`OwnMaterial`], [`OwnTimber`]). A bolt of one's own that comes in several lengths has a list of them, among which
//! the best is found as among those in stock. A washer needs its `style` alone, which has its thickness, or figures of its own.
//! The answers [`Report`] (with the sheet in it), [`LengthReport`] and [`DesignReport`] are read back as they were written. Take
//! the feature `float_roundtrip` of `serde_json`: without it a number may come back different in its last bit.
//! The feature `schema` has a JSON Schema of requests and answers, in the module `schema`.
//! Templates of requests are in `examples/data/`: `davit_socket.json`, `seesaw_pivot.json` (a pivot
//! with play) and `winch_foot.json` (a tapped part) for the example `check_joint`, `walkway_hanger_design.json`
//! for `design_joint`.
//!
//! # Caution
//!
//! A verdict covers what it lists as checked and no more; [`Verdict::missing`] has the rest. Results are
//! estimates: local codes and the maker's instructions rule, and where a failure can hurt someone a licensed
//! engineer must check the joint.

mod advice;
mod aircraft;
mod bin;
mod candidate;
mod corrosion;
mod cotter;
mod cut_plan;
#[cfg(feature = "serde")]
pub(crate) mod data;
mod design;
mod environment;
mod given;
mod in_hand;
mod locking;
mod nut_choice;
mod nut_end;
mod order;
mod ranking;
mod report;
mod reuse;
mod rule_set;
mod rules;
#[cfg(feature = "schema")]
pub mod schema;
mod search;
mod shopping;
mod stack;
mod tolerance;
mod whole;

pub use crate::material::Finish;
pub use advice::{Advice, AdviceList, Alternative, Arrangement, Change, Goal};
pub use aircraft::{GripCandidate, GripReason, GripRules, GripSearch, GripSelection, WasherSet};
pub use bin::{Bin, BinCandidate, BinItem, BinPick, Taken};
pub use candidate::{Candidate, Cut, Reason, Selection};
pub use corrosion::{Galling, GalvanicPair, JointParts, Part, galling, galvanic_pair};
pub use cotter::{CotterFit, CotterHole, cotter_fit};
pub use cut_plan::{BoltTrait, CutMethod, CutObjection, CutPlan, CutStep, PlannedCut};
pub use design::{
    Design, DesignChoice, DesignSpace, Designs, HoleRule, Objective, OnHand, PartsMass, RuledOut,
    RuledOutReason, Score, TurnedDown, TurnedDownReason,
};
pub use environment::Environment;
pub use given::Given;
pub use in_hand::{BoltInHand, Contradiction, HandVerdict, ToDo, WantedBolt};
pub use locking::{LeastProtrusion, ScrewLockReason, ScrewLocking, screw_locking};
pub use nut_choice::{NutChoice, NutOption, NutReason};
pub use nut_end::NutEnd;
pub use order::{OrderRule, TighteningOrder, tightening_order};
pub use ranking::{Criterion, Ranking};
#[cfg(feature = "serde")]
pub use report::Datum;
pub(crate) use report::length_name;
pub use report::{
    DesignReport, FORMAT, LayerKind, LengthReport, RenderedReport, Report, ReportBolt,
    ReportCandidate, ReportCheck, ReportCut, ReportDesign, ReportLayer, ReportLength, ReportLine,
    ReportPlane, ReportRuledOut, ReportScore, ReportStep, ReportStyle, ReportTightening,
    ReportTurnedDown, ReportUnconcerned,
};
pub use reuse::{Reuse, reuse};
pub use rule_set::RuleSet;
pub use rules::{CutRule, LengthRules};
pub use search::{LengthSearch, TextbookLength};
pub use shopping::{JointNeed, ShoppingLine, ShoppingList, shopping_list};
pub use stack::{
    Gap, HeadSeat, JointMaterial, JointPly, JointTimber, JointWasher, MaterialKind, OwnMaterial,
    OwnTimber, Plane, Sleeve, Stack, StackBuilder, TappedHole, TappedPart, TimberFigures,
};
pub(crate) use stack::{STRONGEST, own_name, sane_strength};
pub use tolerance::{ChainRange, ChainTerm, JointTolerances, ToleranceChain, ToleranceMethod};
pub use whole::{
    Account, BoltCase, CaseAnswer, CountersunkHead, Fact, Finding, Granted, Joint, JointBolt,
    JointBuilder, JointLoad, JointMethods, JointNut, JointPreload, JointStiffness, Missing, Need,
    NotConcerned, NutProof, OwnLength, OwnNut, OwnParts, OwnScrew, OwnStrength, Pattern,
    PreparedJoint, Prying, RenderedSheet, RenderedVerdict, Repeats, Scope, SetAside, Sheet,
    SheetStep, SheetWasher, Slip, Tightening, TorqueTightening, Verdict, Word,
};
pub(crate) use whole::{Member, PlyFacts};

#[cfg(test)]
mod tests;
