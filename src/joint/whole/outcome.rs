//! What a mode finds: figures, faults, what is missing, or why it is not concerned.

use alloc::collections::BTreeMap;
use alloc::{boxed::Box, vec::Vec};

use super::{Finding, Missing, Need, NotConcerned};
use crate::caution::{Caution, Cautions};
use crate::derivation::Derivation;
use crate::error::Error;
use crate::strength::check::{Check, Mode, Place};
use crate::units::Force;

/// A load beyond which there are outcomes of another kind.
#[derive(Clone, Copy, Debug)]
pub(super) enum Turn {
    /// The greatest force of the bolt.
    Bolt(Force),
    /// The load along the axis as it was given.
    Along(Force),
}

/// How many modes there are.
pub(super) const MODES: usize = Mode::ALL.len();

/// What is collected on the way. Modes only add to it: none reads what another has written.
pub(super) struct Outcomes {
    pub(super) checks: Vec<Check>,
    pub(super) findings: Vec<Finding>,
    pub(super) missing: Vec<Missing>,
    /// Which of what is missing is of a mode at a place, so that no list of a thousand plies is compared with itself.
    missing_at: BTreeMap<(usize, Place), Vec<usize>>,
    pub(super) in_order: [bool; MODES],
    pub(super) not_concerned: [Option<NotConcerned>; MODES],
    pub(super) cautions: Vec<Caution>,
    /// Loads beyond which there are outcomes of another kind: figures that are only shown where they are exceeded,
    /// faults and questions that only then arise.
    pub(super) turns: Vec<Turn>,
    /// The workings, if they are wanted.
    pub(super) workings: Option<Vec<Derivation>>,
}

impl Outcomes {
    pub(super) fn new(with_working: bool) -> Self {
        // Room for what most joints need, so that the lists grow once.
        Self {
            checks: Vec::with_capacity(32),
            findings: Vec::with_capacity(8),
            missing: Vec::new(),
            missing_at: BTreeMap::new(),
            in_order: [false; MODES],
            not_concerned: [None; MODES],
            cautions: Vec::with_capacity(8),
            turns: Vec::new(),
            workings: with_working.then(Vec::new),
        }
    }

    /// A load held against a resistance.
    #[allow(clippy::large_types_passed_by_value)] // it is kept
    pub(super) fn check(&mut self, check: Check) {
        self.checks.push(check);
    }

    /// A comparison that may itself be refused.
    pub(super) fn try_check(&mut self, mode: Mode, place: Place, check: Result<Check, Error>) {
        match check {
            Ok(check) => self.checks.push(check),
            Err(error) => self.missing(mode, place, Need::Refused(Box::new(error))),
        }
    }

    /// A fault, or something to know or to do; once, though two rules may say it.
    pub(super) fn find(&mut self, finding: Finding) {
        if !self.findings.contains(&finding) {
            self.findings.push(finding);
        }
    }

    /// Lists what a mode lacks, once.
    pub(super) fn missing(&mut self, mode: Mode, place: Place, need: Need) {
        let missing = Missing::new(mode, place, need);
        let known = self.missing_at.entry((mode as usize, place)).or_default();
        let mut same = known.iter().filter_map(|at| self.missing.get(*at));
        if same.all(|own| *own != missing) {
            known.push(self.missing.len());
            self.missing.push(missing);
        }
    }

    /// What a room answers; what it refuses is missing, whatever the reason.
    #[inline]
    pub(super) fn attempt<T>(
        &mut self,
        mode: Mode,
        place: Place,
        answer: Result<T, Error>,
    ) -> Option<T> {
        match answer {
            Ok(answer) => Some(answer),
            Err(error) => {
                self.missing(mode, place, Need::Refused(Box::new(error)));
                None
            }
        }
    }

    /// Looked at and found in order, where there are no figures to show.
    pub(super) fn in_order(&mut self, mode: Mode) {
        if let Some(slot) = self.in_order.get_mut(mode as usize) {
            *slot = true;
        }
    }

    pub(super) fn not_concerned(&mut self, mode: Mode, why: NotConcerned) {
        if let Some(slot) = self.not_concerned.get_mut(mode as usize) {
            slot.get_or_insert(why);
        }
    }

    /// Notes that outcomes are of another kind beyond a load.
    pub(super) fn turns_at(&mut self, turn: Turn) {
        self.turns.push(turn);
    }

    /// Whether workings are wanted.
    pub(super) const fn works(&self) -> bool {
        self.workings.is_some()
    }

    /// Keeps a working, if workings are wanted: otherwise it is not even written.
    pub(super) fn work(&mut self, derivation: impl FnOnce() -> Derivation) {
        if let Some(workings) = &mut self.workings {
            workings.push(derivation());
        }
    }

    /// The same of one of several alike, with the place in its title.
    pub(super) fn work_at(&mut self, place: Place, derivation: impl FnOnce() -> Derivation) {
        self.work(|| {
            let derivation = derivation();
            let title = alloc::format!("{}, {place}", derivation.title());
            derivation.titled(title)
        });
    }

    pub(super) fn warn(&mut self, cautions: &Cautions) {
        self.warn_of(cautions.iter().copied());
    }

    pub(super) fn warn_of(
        &mut self,
        cautions: impl IntoIterator<Item = impl Into<Option<Caution>>>,
    ) {
        for caution in cautions.into_iter().filter_map(Into::into) {
            if !self.cautions.contains(&caution) {
                self.cautions.push(caution);
            }
        }
    }
}
