//! One joint, one verdict.
//!
//! A [`Joint`] is looked up once (the case); each mode of failure turns the case into figures, faults, what is
//! missing, or why it is not concerned; the [`Verdict`] accounts for every one of them.

use alloc::{string::String, vec::Vec};

use super::{Candidate, Environment, LengthRules, Stack};
use crate::derivation::Derivation;
use crate::error::Error;

mod builder;
mod case;
mod contradictions;
#[cfg(feature = "serde")]
mod data;
mod findings;
mod granted;
mod laws;
mod load;
mod material;
mod member;
mod methods;
mod modes;
mod need;
mod outcome;
mod own;
mod parts;
mod prepared;
mod report;
mod sheet;
mod sources;
mod tightening;
mod verdict;

pub use builder::JointBuilder;
pub use findings::Finding;
pub use granted::{Fact, Granted};
pub use load::{JointLoad, Prying, Repeats};
pub(crate) use member::{Member, PlyFacts};
pub use methods::{JointMethods, Slip};
pub use need::{Missing, Need, NotConcerned};
pub use own::{CountersunkHead, NutProof, OwnLength, OwnNut, OwnParts, OwnScrew, OwnStrength};
pub use parts::{JointBolt, JointNut, Pattern, Scope, SetAside};
pub use prepared::{BoltCase, CaseAnswer, PreparedJoint};
pub use report::RenderedVerdict;
pub(super) use sheet::bolt_and_nut;
pub use sheet::{RenderedSheet, Sheet, SheetStep, SheetWasher};
pub(super) use sources::sources;
pub use tightening::{JointPreload, JointStiffness, Tightening, TorqueTightening};
pub use verdict::{Account, Verdict, Word};

use case::Case;
use outcome::{Outcomes, Turn};

/// A joint described once: parts, loads, surroundings, and the methods to check it by.
///
/// Plain data. Everything is per bolt: of several, take the loads of the one that carries most.
///
/// | asked about | where it is described |
/// |---|---|
/// | length, washers, cut | [`Joint::stack`], [`Joint::rules`] |
/// | shear, tension, bending of the bolt | [`JointLoad`]; [`JointPly::pull`](super::JointPly::pull); gaps, sleeves with play, [`Environment::rotates`] |
/// | the plies | [`JointPly`](super::JointPly); [`Joint::pattern`] |
/// | preload, separation, slip, fatigue | [`Tightening`], [`Slip`], [`Repeats`] |
/// | stripping, pairing, fit, locking, reuse | [`JointNut`], [`Finish`](super::Finish), [`TappedPart`](super::TappedPart), [`Environment`] |
/// | pressure under head and nut | [`JointWasher`](super::JointWasher) |
/// | heat, corrosion, brittle bolts | [`Environment`]; finishes; [`JointPly::metal`](super::JointPly::metal) |
/// | parts that no table has | [`OwnParts`], [`OwnMaterial`](super::OwnMaterial), [`OwnTimber`](super::OwnTimber), [`JointWasher::diameters`](super::JointWasher::diameters) |
/// | timber | [`JointPly::timber`](super::JointPly::timber), [`JointMethods::timber`] |
///
/// What is not described and matters makes the verdict undecided, and [`Verdict::to_decide`] names it.
///
/// ```
/// use shankline::prelude::*;
#[doc = include_str!("whole/example.txt")]
/// let verdict = joint.check()?;
/// assert!(verdict.holds());
/// println!("{}", verdict.render(UnitSystem::Si));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Deserialize),
    serde(try_from = "data::RawJoint")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(!try_from, deny_unknown_fields))]
pub struct Joint {
    /// What a drawing would call it.
    pub title: String,
    /// The bolt.
    #[cfg_attr(feature = "schema", schemars(with = "data::RawBolt"))]
    pub bolt: JointBolt,
    /// Its nut; none where the stack ends in a [tapped part](super::TappedPart).
    #[cfg_attr(feature = "schema", schemars(with = "Option<data::RawNut>"))]
    pub nut: Option<JointNut>,
    /// What it goes through.
    pub stack: Stack,
    /// How many such bolts stand together.
    pub pattern: Pattern,
    /// What it carries.
    pub load: JointLoad,
    /// What it lives through.
    pub environment: Environment,
    /// How it is tightened; none if nobody says.
    pub tightening: Option<Tightening>,
    /// Rules for its length.
    #[cfg_attr(
        feature = "schema",
        schemars(with = "crate::joint::data::ListedOr<crate::joint::RuleSet, LengthRules>")
    )]
    pub rules: LengthRules,
    /// By which methods.
    #[cfg_attr(feature = "schema", schemars(with = "crate::joint::schema::Methods"))]
    pub methods: JointMethods,
    /// What the verdict is to speak of.
    #[cfg_attr(feature = "schema", schemars(default))]
    pub scope: Scope,
    /// Modes that need not be decided here, each with a reason.
    #[cfg_attr(feature = "schema", schemars(default))]
    pub set_aside: Vec<SetAside>,
    /// What a [`JointBuilder`] took for granted; the verdict repeats it.
    #[cfg_attr(
        feature = "schema",
        schemars(default, skip_serializing_if = "Vec::is_empty")
    )]
    pub granted: Vec<Granted>,
    /// Parts of the caller's own, in place of a listed bolt, bolt strength or nut. In data files they stand in those
    /// places themselves.
    #[cfg_attr(feature = "schema", schemars(skip))]
    pub own: OwnParts,
}

impl Joint {
    /// Finds the length if none is given, and checks every mode that is concerned.
    ///
    /// Checks come by falling utilisation, so that the first one governs; equal ones in the order of
    /// the modes. What cannot be checked is listed with what it lacks.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] or [`Error::NoValue`] for parts that do not exist, [`Error::OutOfRange`]
    /// for loads, temperatures or rules that make no sense, [`Error::UnknownName`] for a material that no table
    /// has, [`Error::Mismatch`] for parts that cannot go together, a product in a grade that it is not made in
    /// ([`ScrewProduct::grades`](crate::parts::ScrewProduct::grades)), or a mode that is set aside without a reason.
    ///
    /// Of a bolt made to order, in a strength that its standard has not, state the strength as your own
    /// ([`with_strength`](Self::with_strength)).
    ///
    /// ```
    /// use shankline::joint::Word;
    /// use shankline::prelude::*;
    #[doc = include_str!("whole/example.txt")]
    /// # let mut joint = joint;
    /// joint.nut = joint.nut.map(|nut| JointNut { style: NutStyle::Iso4032, ..nut });
    /// let verdict = joint.check()?;
    /// assert!(verdict.checks.iter().all(|check| check.holds()));
    /// assert_eq!(verdict.word(), Word::DoesNotHold); // strong enough, but a plain nut shakes loose
    /// # Ok(())
    /// # }
    /// ```
    pub fn check(&self) -> Result<Verdict, Error> {
        self.run(None, None, false).map(|run| run.verdict)
    }

    /// Every length that the bolt comes in, those that fit first: why this one, and why not the others.
    ///
    /// # Errors
    ///
    /// As [`check`](Self::check), of what concerns the length.
    ///
    /// ```
    /// use shankline::prelude::*;
    #[doc = include_str!("whole/example.txt")]
    /// let lengths = joint.lengths()?;
    /// assert_eq!(*lengths.best().expect("a length fits"), joint.check()?.candidate);
    /// # Ok(())
    /// # }
    /// ```
    pub fn lengths(&self) -> Result<super::Selection, Error> {
        let screws = case::stock(self)?;
        let end = case::closing(self)?.end()?;
        case::length_search(self, screws.as_ref(), end)?.run()
    }

    /// The same with a length that a search has assessed for these parts. What its tables caution is left to
    /// [`check`](Self::check).
    pub(super) fn check_candidate(&self, candidate: &Candidate) -> Result<Verdict, Error> {
        self.run(Some(candidate), None, false)
            .map(|run| run.verdict)
    }

    /// The check with the working of every step that has one.
    ///
    /// # Errors
    ///
    /// Those of [`check`](Self::check).
    ///
    /// ```
    /// use shankline::derivation::Format;
    /// use shankline::joint::Joint;
    /// use shankline::units::UnitSystem;
    /// fn homework(joint: &Joint) -> Result<(), shankline::Error> {
    ///     let (verdict, workings) = joint.check_with_working()?;
    ///     for working in workings {
    ///         println!("{}", working.render(Format::Markdown, UnitSystem::Si));
    ///     }
    ///     println!("{}", verdict.render(UnitSystem::Si));
    ///     Ok(())
    /// }
    /// ```
    pub fn check_with_working(&self) -> Result<(Verdict, Vec<Derivation>), Error> {
        let run = self.run(None, None, true)?;
        Ok((run.verdict, run.workings))
    }

    /// The verdict, with the loads at which outcomes of other kinds begin.
    fn turns(&self, candidate: &Candidate) -> Result<(Verdict, Vec<Turn>), Error> {
        let run = self.run(Some(candidate), None, false)?;
        Ok((run.verdict, run.turns))
    }

    /// How the torque is controlled, if it is.
    pub(crate) const fn torque(&self) -> Option<&TorqueTightening> {
        match &self.tightening {
            Some(Tightening::Torque(torque)) => Some(torque),
            Some(Tightening::Snug) | None => None,
        }
    }

    fn run(
        &self,
        known: Option<&Candidate>,
        member: Option<&Member>,
        with_working: bool,
    ) -> Result<Run, Error> {
        let mut out = Outcomes::new(with_working);
        out.cautions.extend_from_slice(crate::caution::GENERAL);
        let case = Case::new(self, known, member, &mut out)?;
        let worked = modes::run(&case, &mut out)?;
        let parts = verdict::Parts {
            candidate: case.candidate,
            strength: case.strength,
            loads: case.loads,
            preload: worked.preload,
            nut: worked.nut,
        };
        Ok(Run {
            workings: out.workings.take().unwrap_or_default(),
            turns: core::mem::take(&mut out.turns),
            verdict: Verdict::new(self, parts, out),
        })
    }
}

/// What a check comes to.
struct Run {
    verdict: Verdict,
    workings: Vec<Derivation>,
    turns: Vec<Turn>,
}
