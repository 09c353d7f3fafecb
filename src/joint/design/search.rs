//! The search: every combination of the parts of one thread, in every length that fits.

use alloc::vec::Vec;
use core::ops::ControlFlow;

use super::parts::{FoundNut, Parts, Screws, WasheredStack};
use super::{
    Design, DesignChoice, DesignSpace, Objective, RuledOut, RuledOutReason, TurnedDown,
    TurnedDownReason, mass,
};
use crate::error::Error;
use crate::joint::{
    Candidate, Finding, Joint, JointBolt, JointNut, LengthSearch, Missing, Need, Part, Verdict,
};
use crate::material::BoltStrength;
use crate::strength::check::{Check, Mode, Place};
use crate::strength::shear::ReductionNeed;
use crate::units::Force;

/// A search on its way.
pub(super) struct Search<'a> {
    space: &'a DesignSpace,
    objectives: &'a [Objective],
    /// The objectives before utilisation: what they say is known without a check.
    known_first: &'a [Objective],
    /// The joint as it is tried.
    joint: Joint,
    feasible: Vec<Design>,
    rejected: Vec<TurnedDown>,
    pub(super) ruled_out: Vec<RuledOut>,
}

/// The parts of one combination, but for the length.
struct Combination<'a> {
    washered: &'a WasheredStack,
    screws: &'a Screws,
    found: &'a FoundNut,
    nut: JointNut,
    strength: &'a BoltStrength,
}

impl<'a> Search<'a> {
    pub(super) fn new(joint: Joint, space: &'a DesignSpace, objectives: &'a [Objective]) -> Self {
        let known = objectives
            .iter()
            .take_while(|&&objective| objective != Objective::Utilisation)
            .count();
        Self {
            space,
            objectives,
            known_first: objectives.split_at(known).0,
            joint,
            feasible: Vec::new(),
            rejected: Vec::new(),
            ruled_out: Vec::new(),
        }
    }

    /// What was found, in order.
    pub(super) fn ranked(mut self) -> (Vec<Design>, Vec<TurnedDown>, Vec<RuledOut>) {
        let objectives = self.objectives;
        self.feasible.sort_by(|a, b| a.compare(b, objectives));
        self.rejected.sort_by(TurnedDown::compare);
        (self.feasible, self.rejected, self.ruled_out)
    }

    /// Every combination of the parts for one thread; before each kind of bolt and nut in each stack the watcher is told
    /// how many of them are done of how many, and may stop it.
    pub(super) fn of_thread(
        &mut self,
        parts: &Parts,
        mut watch: impl FnMut(usize, usize) -> ControlFlow<()>,
    ) -> Result<ControlFlow<()>, Error> {
        self.joint.bolt.thread = parts.thread;
        // Which grades each product has, and the nut grade for each grade, are the same for all stacks.
        let mut made_in = Vec::with_capacity(parts.screws.len());
        for screws in &parts.screws {
            made_in.push(self.grades_of(screws, parts));
        }
        let finish = self.joint.bolt.finish;
        let nuts: Vec<Vec<JointNut>> = parts
            .nuts
            .iter()
            .map(|found| {
                let of_grade = |strength| found.for_bolt(strength, finish, &parts.thread);
                parts.grades.iter().map(of_grade).collect()
            })
            .collect();
        let (mut done, steps) = (
            0,
            parts.stacks.len() * parts.screws.len() * parts.nuts.len(),
        );
        for washered in &parts.stacks {
            self.joint.stack.clone_from(&washered.stack);
            for (screws, grades) in parts.screws.iter().zip(&made_in) {
                self.joint.bolt.product = screws.series.product();
                for (found, nuts) in parts.nuts.iter().zip(&nuts) {
                    if watch(done, steps).is_break() {
                        return Ok(ControlFlow::Break(()));
                    }
                    done += 1;
                    if grades.is_empty() {
                        continue;
                    }
                    let lengths = self.lengths(washered, screws, found)?;
                    for &grade in grades {
                        let (Some(&nut), Some(strength)) =
                            (nuts.get(grade), parts.grades.get(grade))
                        else {
                            continue;
                        };
                        self.combination(
                            &Combination {
                                washered,
                                screws,
                                found,
                                nut,
                                strength,
                            },
                            &lengths,
                        );
                    }
                }
            }
        }
        Ok(ControlFlow::Continue(()))
    }

    /// The grades, by their position, that a product is made in and that are on hand where only those
    /// come into question.
    fn grades_of(&mut self, screws: &Screws, parts: &Parts) -> Vec<usize> {
        let product = screws.series.product();
        let combinations = parts.stacks.len() * parts.nuts.len();
        let mut grades = Vec::with_capacity(parts.grades.len());
        if combinations == 0 {
            return grades;
        }
        for (position, strength) in parts.grades.iter().enumerate() {
            let grade = strength.grade;
            let is_on_hand = screws.has_grade(grade);
            let reason = if !screws.is_made_in(strength) {
                RuledOutReason::GradeOfOtherProduct { product, grade }
            } else if self.space.only_on_hand && !is_on_hand {
                RuledOutReason::NotOnHand { product, grade }
            } else {
                grades.push(position);
                continue;
            };
            self.ruled_out.push(RuledOut {
                thread: parts.thread,
                reason,
                combinations,
            });
        }
        grades
    }

    /// Every length, those that fit first: all in stock, and those on hand.
    fn lengths(
        &self,
        washered: &WasheredStack,
        screws: &Screws,
        found: &FoundNut,
    ) -> Result<Vec<Candidate>, Error> {
        let search =
            LengthSearch::new(&washered.stack, &screws.series, found.end, self.joint.rules)?;
        let mut lengths = Vec::new();
        if screws.is_stocked && !self.space.only_on_hand {
            let selection = search.run()?;
            lengths.extend_from_slice(selection.accepted());
            lengths.extend_from_slice(selection.rejected());
        }
        let mut known: Vec<f64> = lengths
            .iter()
            .map(|candidate: &Candidate| candidate.screw.nominal.value)
            .collect();
        known.sort_by(f64::total_cmp);
        for screw in screws.lengths_on_hand() {
            let nominal = screw.nominal.value;
            if known
                .binary_search_by(|other| other.total_cmp(&nominal))
                .is_err()
            {
                lengths.push(search.assess(screw)?);
            }
        }
        Ok(lengths)
    }

    /// The best length of one combination, or the reasons against the one that comes nearest.
    fn combination(&mut self, parts: &Combination, lengths: &[Candidate]) {
        self.joint.bolt.grade = parts.strength.grade;
        self.joint.nut = Some(parts.nut);
        let on_hand = |candidate: &&Candidate| {
            parts
                .screws
                .has(candidate.screw.nominal, parts.strength.grade)
        };
        let may_be = |candidate: &&Candidate| !self.space.only_on_hand || on_hand(candidate);
        // What is known of each length before it is checked: everything but the utilisation.
        let mut fitting: Vec<Design> = lengths
            .iter()
            .filter(may_be)
            .filter(|length| length.fits())
            .map(|length| parts.design(&self.joint, length, on_hand(&length)))
            .collect();
        fitting.sort_by(|a, b| a.compare(b, self.known_first));
        if fitting.is_empty() {
            // Nothing fits: the nearest alone is checked, its reasons are enough.
            let nearest = lengths.iter().find(may_be);
            fitting
                .extend(nearest.map(|length| parts.design(&self.joint, length, on_hand(&length))));
        }
        let (mut best, mut least_bad): (Option<Design>, Option<TurnedDown>) = (None, None);
        for mut design in fitting {
            if let Some(best) = &best {
                // Utilisation comes after what is known and cannot make up for it.
                let decided = self.known_first.len() == self.objectives.len();
                if decided || !design.is_as_good(best, self.known_first) {
                    break;
                }
            }
            let choice = design.choice;
            self.joint.bolt.length = choice.bolt.length;
            match self.joint.check_candidate(&design.candidate) {
                Ok(check) => {
                    let reasons = reasons(&check, self.space);
                    if reasons.is_empty() {
                        design.governing = check
                            .checks
                            .iter()
                            .find(|check| is_of_loads(check))
                            .cloned();
                        if best
                            .as_ref()
                            .is_none_or(|best| design.compare(best, self.objectives).is_lt())
                        {
                            best = Some(design);
                        }
                        continue;
                    }
                    let hopeless =
                        is_hopeless(&reasons, &self.joint, parts.strength, &design.candidate);
                    keep_least_bad(&mut least_bad, TurnedDown { choice, reasons });
                    if hopeless {
                        break;
                    }
                }
                Err(error) => {
                    let reasons = Vec::from([TurnedDownReason::NotCheckable(error)]);
                    keep_least_bad(&mut least_bad, TurnedDown { choice, reasons });
                }
            }
        }
        match (best, least_bad) {
            (Some(design), _) => self.feasible.push(design),
            (None, Some(other)) => self.rejected.push(other),
            // No length at all: a product that is neither stocked nor on hand has been ruled out.
            (None, None) => {}
        }
    }
}

fn keep_least_bad(kept: &mut Option<TurnedDown>, other: TurnedDown) {
    if kept.as_ref().is_none_or(|kept| other.compare(kept).is_lt()) {
        *kept = Some(other);
    }
}

/// Everything that speaks against a joint; nothing if it holds.
fn reasons(verdict: &Verdict, space: &DesignSpace) -> Vec<TurnedDownReason> {
    let limit = space.utilisation_max;
    let mut reasons = Vec::with_capacity(8);
    for check in &verdict.checks {
        if !check.holds() {
            reasons.push(TurnedDownReason::Overloaded(check.clone()));
        } else if is_of_loads(check) && check.utilisation > limit {
            reasons.push(TurnedDownReason::AboveLimit {
                check: check.clone(),
                limit,
            });
        }
    }
    let faults = verdict.faults();
    reasons.extend(faults.copied().map(TurnedDownReason::Fault));
    // What is not checked is no reserve: such a bolt would win over those that were.
    reasons.extend(verdict.open().cloned().map(TurnedDownReason::Undecided));
    reasons
}

impl Combination<'_> {
    /// The design with one length, before it is checked.
    fn design(&self, joint: &Joint, candidate: &Candidate, on_hand: bool) -> Design {
        let stack = &self.washered.stack;
        let of_style = candidate.washers_under_nut
            + candidate.washers_added_under_head
            + stack.washers_under_head().len();
        // Other washers of the stack are not from the tables.
        let washers = of_style + stack.other_washers_under_nut().len();
        let mass = match (&self.screws.mass, self.found.mass, self.washered.washer) {
            (Some(bolt), Some(nut), Some(washer)) => {
                Some(mass::of_parts(bolt, nut, washer, of_style, candidate))
            }
            _ => None,
        };
        Design {
            choice: DesignChoice {
                bolt: JointBolt {
                    length: Some(candidate.screw.nominal),
                    ..joint.bolt
                },
                nut: self.nut,
                washers: self.washered.style,
            },
            candidate: *candidate,
            governing: None,
            mass,
            washers,
            on_hand,
            tensile_strength: self.strength.tensile_strength,
        }
    }
}

/// Whether a reason against one length is one against every length: then no other is checked.
fn is_hopeless(
    reasons: &[TurnedDownReason],
    joint: &Joint,
    strength: &BoltStrength,
    candidate: &Candidate,
) -> bool {
    let against = Against {
        joint,
        // Long screws of some grades are weaker.
        same_strength: strength.length_limit.is_none(),
        all_on_shank: candidate.planes_in_run_out + candidate.planes_in_thread == 0,
    };
    reasons.iter().any(|reason| match reason {
        TurnedDownReason::Fault(finding) => against.fault(finding),
        TurnedDownReason::Overloaded(check) | TurnedDownReason::AboveLimit { check, .. } => {
            against.check(check)
        }
        TurnedDownReason::Undecided(missing) => against.missing(missing),
        TurnedDownReason::NotCheckable(_) => false,
    })
}

/// What tells a reason against one length from one against all. With the length change the planes that cut thread,
/// the number of washers and with it what they lie between, the grip, the cut, and the stiffness of the bolt.
struct Against<'a> {
    joint: &'a Joint,
    same_strength: bool,
    all_on_shank: bool,
}

impl Against<'_> {
    fn fault(&self, finding: &Finding) -> bool {
        match finding {
            Finding::Nut(_)
            | Finding::BoltTooHot { .. }
            | Finding::BoltTooCold { .. }
            | Finding::CoatingTooHot { .. }
            | Finding::Distance { .. }
            | Finding::HoleTooSmall { .. }
            | Finding::HoleTooLarge { .. }
            | Finding::HoleWantsSlip { .. }
            | Finding::ThreadsDoNotFit { .. }
            | Finding::Reuse(_) => true,
            Finding::Hydrogen(_) | Finding::NothingLeft { .. } => self.same_strength,
            Finding::Galvanic { anode, cathode, .. } => {
                // A washer more parts nut and ply.
                let stays = |part: &Part| matches!(part, Part::Bolt | Part::Ply(_));
                stays(anode) && stays(cathode)
            }
            _ => false,
        }
    }

    fn check(&self, check: &Check) -> bool {
        let is_of_ply = matches!(check.place, Place::Ply(_));
        self.same_strength
            && match check.mode {
                Mode::Bearing
                | Mode::BoltBearing
                | Mode::TearOut
                | Mode::NetSection
                | Mode::GrossSection => is_of_ply,
                Mode::Stripping => !self.force_varies(),
                Mode::Tightening => !self.heat_varies(),
                // No length has more than the whole shank, but by a rule for long grips.
                Mode::BoltShear => self.all_on_shank && !self.grip_matters(),
                _ => false,
            }
    }

    fn missing(&self, missing: &Missing) -> bool {
        match missing.mode {
            Mode::Loads | Mode::ThreadFit | Mode::Reuse | Mode::Prying | Mode::BlockShear => true,
            Mode::Tightening => missing.need == Need::Tightening,
            Mode::Pairing | Mode::Coating | Mode::Temperature => self.same_strength,
            Mode::Bearing
            | Mode::BoltBearing
            | Mode::TearOut
            | Mode::NetSection
            | Mode::GrossSection
            | Mode::Distances
            | Mode::Holes => self.same_strength && matches!(missing.place, Place::Ply(_)),
            Mode::Fatigue => missing.place == Place::Joint,
            _ => false,
        }
    }

    /// Whether the length of the bolt decides how the preloaded joint shares its load, or what heat does to it.
    fn force_varies(&self) -> bool {
        let load = &self.joint.load;
        let torque = self.joint.torque();
        let computed = torque.is_some_and(|torque| torque.stiffness.is_none());
        computed && load.along > Force::default() || self.heat_varies()
    }

    fn heat_varies(&self) -> bool {
        self.joint.torque().is_some() && !self.joint.environment.is_at_room_temperature()
    }

    /// Whether the method takes something off the shear of a bolt with a long grip.
    fn grip_matters(&self) -> bool {
        let bolt = &self.joint.bolt;
        let needs = self.joint.methods.shear.needs(&bolt.thread, bolt.grade);
        needs.contains(ReductionNeed::Grip)
    }
}

/// Whether a check says something of the loads: see [`Objective::Utilisation`].
fn is_of_loads(check: &Check) -> bool {
    check.mode != Mode::Tightening
}

#[cfg(test)]
mod tests;
