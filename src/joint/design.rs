//! Which of many joints: the search over thread, product, grade, length, nut and washers.

use alloc::vec::Vec;

mod mass;
mod objective;
mod outcome;
mod parts;
mod space;

pub use mass::PartsMass;
pub use objective::{Objective, Score};
pub use outcome::{
    Design, DesignChoice, Designs, RuledOut, RuledOutReason, TurnedDown, TurnedDownReason,
};
pub use space::{DesignSpace, HoleRule, OnHand};

use super::{Candidate, Finding, Joint, JointBolt, JointCheck, JointNut, LengthSearch};
use crate::error::Error;
use crate::material::BoltStrength;
use crate::strength::check::Mode;
use outcome::is_of_loads;
use parts::{FoundNut, Parts, Screws, WasheredStack};

impl Joint {
    /// The best of many joints: this one with every combination of thread, product, grade, nut and
    /// washers of a space, in every length that fits.
    ///
    /// What is not varied stays as it is: plies, loads, environment, tightening (its target is a share of
    /// the strength, so torque and preload follow the bolt), rules, methods. Holes and washers follow the
    /// thread as the space says. A given length is not kept: the length follows the stack.
    ///
    /// Lengths that fit are checked by [`check`](Self::check), nothing is estimated: all of them but
    /// those that cannot be better any more, or that fail for the same reason as one before.
    /// A design is feasible if the check [holds](JointCheck::holds) and the loads use no more than the
    /// space permits. Of each combination the best length under the objectives is kept. Without
    /// loads it is a search for parts and length only. No objective at all means [`Objective::DEFAULT`]. Equal designs are ordered by diameter, strength of
    /// the bolt, and the order of the parts in their types, so that neither the order of the lists nor
    /// repetitions in them change anything.
    ///
    /// What the check does not look at the design does not either:
    /// [`JointCheck::not_checked`] of the winner says what that is.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for loads, temperatures, rules or a greatest utilisation that make no sense,
    /// and for more than [`DesignSpace::MOST_COMBINATIONS`]; [`Error::Mismatch`] if the stack has washers,
    /// the diameter varies and no style of washer is named, or for bolts on hand without a length.
    /// Parts that do not exist are no error: see [`Designs::ruled_out`].
    ///
    /// ```
    /// use shankline::joint::{
    ///     DesignSpace, Environment, Joint, JointBolt, JointLoad, JointMethods, JointNut, Objective,
    ///     TurnedDownReason,
    /// };
    /// use shankline::prelude::*;
    /// use shankline::tables::holes::HoleFit;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // The hanger of a mezzanine walkway, shaken by steps; loads invented.
    /// let cleat = millimetres(15.0).plus_minus(millimetres(0.4));
    /// let hanger = Joint {
    ///     title: "mezzanine hanger (invented)".into(),
    ///     bolt: JointBolt {
    ///         product: ScrewProduct::Iso4014,
    ///         thread: "M12".parse()?,
    ///         grade: PropertyClass::Class8_8.into(),
    ///         length: None,
    ///     },
    ///     nut: JointNut { style: NutStyle::Iso7040, grade: None },
    ///     stack: Stack::builder()
    ///         .ply("cleat", cleat)
    ///         .ply("hanger", millimetres(20.0).plus_minus(millimetres(0.5)))
    ///         .ply("cleat", cleat)
    ///         .shear_planes([1, 2])
    ///         .washers_under_nut(Washer::find(WasherStyle::Iso7089, &"M12".parse()?)?.thickness()?, 1)
    ///         .build()?,
    ///     plies: Vec::new(),
    ///     load: JointLoad { across: newtons(40e3), shock_factor: 1.25, ..JointLoad::default() },
    ///     environment: Environment { vibration: true, ..Environment::default() },
    ///     tightening: None,
    ///     rules: LengthRules::fabrication(UnitSystem::Si),
    ///     methods: JointMethods::machine_design(2.0),
    /// };
    /// let space = DesignSpace::new()
    ///     .threads(["M10".parse()?, "M12".parse()?, "M16".parse()?, "M20".parse()?])
    ///     .grades([PropertyClass::Class8_8, PropertyClass::Class10_9])
    ///     .nut_styles([NutStyle::Iso4032, NutStyle::Iso7040])
    ///     .washers([WasherStyle::Iso7089])
    ///     .holes(HoleFit::Normal);
    /// let designs = hanger.design(&space, &[Objective::Mass])?;
    ///
    /// let best = designs.best().expect("something holds");
    /// assert_eq!(best.choice.bolt.thread.to_string(), "M12");
    /// assert_eq!(best.choice.bolt.grade, PropertyClass::Class10_9.into());
    /// assert_eq!(best.choice.nut.style, NutStyle::Iso7040); // a plain nut spins off
    /// assert!(designs.joint(&best.choice)?.check()?.holds());
    /// // M10 is too weak in any grade, and the reason says by how much.
    /// let small = designs.rejected().iter().find(|other| other.choice.bolt.thread.to_string() == "M10");
    /// assert!(matches!(small.unwrap().reasons[0], TurnedDownReason::Overloaded(check) if !check.holds()));
    /// # Ok(())
    /// # }
    /// ```
    pub fn design(&self, space: &DesignSpace, objectives: &[Objective]) -> Result<Designs, Error> {
        self.load.check()?;
        self.environment.check()?;
        let rules = self.rules.checked()?;
        let lists = space.of(self)?;
        let objectives = if objectives.is_empty() {
            Objective::DEFAULT
        } else {
            objectives
        };
        let known = objectives
            .iter()
            .take_while(|&&objective| objective != Objective::Utilisation)
            .count();
        let mut search = Search {
            space,
            objectives,
            known_first: objectives.split_at(known).0,
            joint: Self {
                rules,
                ..self.clone()
            },
            feasible: Vec::new(),
            rejected: Vec::new(),
            ruled_out: Vec::new(),
        };
        for &thread in &lists.threads {
            let parts = Parts::find(self, space, &lists, thread, &mut search.ruled_out)?;
            if let Some(parts) = parts {
                search.of_thread(&parts)?;
            }
        }
        let Search {
            mut feasible,
            mut rejected,
            ruled_out,
            ..
        } = search;
        feasible.sort_by(|a, b| a.compare(b, objectives));
        rejected.sort_by(TurnedDown::compare);
        Ok(Designs {
            objectives: objectives.to_vec(),
            combinations: lists.combinations(),
            feasible,
            rejected,
            ruled_out,
            start: self.clone(),
            holes: space.holes,
        })
    }
}

/// A search on its way.
struct Search<'a> {
    space: &'a DesignSpace,
    objectives: &'a [Objective],
    /// The objectives before utilisation: what they say is known without a check.
    known_first: &'a [Objective],
    /// The joint as it is tried.
    joint: Joint,
    feasible: Vec<Design>,
    rejected: Vec<TurnedDown>,
    ruled_out: Vec<RuledOut>,
}

/// The parts of one combination, but for the length.
struct Combination<'a> {
    washered: &'a WasheredStack,
    screws: &'a Screws,
    found: &'a FoundNut,
    nut: JointNut,
    strength: &'a BoltStrength,
}

impl Search<'_> {
    fn of_thread(&mut self, parts: &Parts) -> Result<(), Error> {
        self.joint.plies.clone_from(&parts.plies);
        self.joint.bolt.thread = parts.thread;
        // Which grades each product has, and the nut grade for each grade, are the same for all stacks.
        let mut made_in = Vec::with_capacity(parts.screws.len());
        for screws in &parts.screws {
            made_in.push(self.grades_of(screws, parts));
        }
        let nuts: Vec<Vec<JointNut>> = parts
            .nuts
            .iter()
            .map(|found| {
                let of_grade = |strength| found.for_bolt(strength, &parts.thread);
                parts.grades.iter().map(of_grade).collect()
            })
            .collect();
        for washered in &parts.stacks {
            self.joint.stack.clone_from(&washered.stack);
            for (screws, grades) in parts.screws.iter().zip(&made_in) {
                self.joint.bolt.product = screws.series.product();
                for (found, nuts) in parts.nuts.iter().zip(&nuts) {
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
        Ok(())
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
            let is_on_hand = screws.on_hand.iter().any(|(_, own)| *own == grade);
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
        for (screw, _) in &screws.on_hand {
            if !lengths
                .iter()
                .any(|known: &Candidate| known.screw.nominal == screw.nominal)
            {
                lengths.push(search.assess(*screw)?);
            }
        }
        Ok(lengths)
    }

    /// The best length of one combination, or the reasons against the one that comes nearest.
    fn combination(&mut self, parts: &Combination, lengths: &[Candidate]) {
        self.joint.bolt.grade = parts.strength.grade;
        self.joint.nut = parts.nut;
        let on_hand = |candidate: &&Candidate| {
            parts.screws.on_hand.iter().any(|(screw, grade)| {
                *grade == parts.strength.grade && screw.nominal == candidate.screw.nominal
            })
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
            match self.joint.check() {
                Ok(check) => {
                    let reasons = reasons(&check, self.space);
                    if reasons.is_empty() {
                        design.governing = check.checks.iter().copied().find(is_of_loads);
                        if best
                            .as_ref()
                            .is_none_or(|best| design.compare(best, self.objectives).is_lt())
                        {
                            best = Some(design);
                        }
                        continue;
                    }
                    let hopeless = is_hopeless(&reasons, parts.strength, &design.candidate);
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
fn reasons(check: &JointCheck, space: &DesignSpace) -> Vec<TurnedDownReason> {
    let limit = space.utilisation_max;
    let mut reasons = Vec::new();
    for check in &check.checks {
        if !check.holds() {
            reasons.push(TurnedDownReason::Overloaded(*check));
        } else if is_of_loads(check) && check.utilisation > limit {
            reasons.push(TurnedDownReason::AboveLimit {
                check: *check,
                limit,
            });
        }
    }
    let faults = check.findings.iter().filter(|finding| finding.is_fault());
    reasons.extend(faults.copied().map(TurnedDownReason::Fault));
    reasons
}

impl Combination<'_> {
    /// The design with one length, before it is checked.
    fn design(&self, joint: &Joint, candidate: &Candidate, on_hand: bool) -> Design {
        let stack = &self.washered.stack;
        let washers = candidate.washers_under_nut
            + candidate.washers_added_under_head
            + stack.washers_under_head().len();
        // Other washers of the stack are not from the tables.
        let of_style = washers.saturating_sub(stack.other_washers_under_nut().len());
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
    strength: &BoltStrength,
    candidate: &Candidate,
) -> bool {
    // Long screws of some grades are weaker.
    let same_strength = strength.length_limit.is_none();
    let all_on_shank = candidate.planes_in_run_out + candidate.planes_in_thread == 0;
    reasons.iter().any(|reason| match reason {
        TurnedDownReason::Fault(finding) => match finding {
            Finding::Nut(_)
            | Finding::BoltTooHot { .. }
            | Finding::BoltTooCold { .. }
            | Finding::ShortDistance { .. } => true,
            Finding::NutWeaker { .. } => same_strength,
            _ => false,
        },
        TurnedDownReason::Overloaded(check) | TurnedDownReason::AboveLimit { check, .. } => {
            same_strength
                && match check.mode {
                    Mode::Bearing
                    | Mode::TearOut
                    | Mode::NetSection
                    | Mode::Stripping
                    | Mode::Tightening => true,
                    // No length has more than the whole shank.
                    Mode::BoltShear => all_on_shank,
                    _ => false,
                }
        }
        TurnedDownReason::NotCheckable(_) => false,
    })
}
