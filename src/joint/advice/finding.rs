//! The changes that might do, and how much of each.

use alloc::vec::Vec;

use super::{Alternative, Arrangement, Change, Goal};
use crate::error::Error;
use crate::joint::stack::Added;
use crate::joint::{Candidate, CutRule, LengthRules, LengthSearch, WantedBolt};
use crate::parts::{ScrewLength, ScrewSeries, Zone};
use crate::tables::nanometres;
use crate::units::{Length, SAME_LENGTH, UnitSystem, millimetres};

/// Beyond so many washers nobody stacks more: a spacer is the better part.
const MOST_WASHERS: usize = 6;

impl Arrangement {
    /// Other products of the diameter, or other diameters.
    pub(super) fn same_diameter<'a>(
        &self,
        others: &'a [Alternative],
        same: bool,
    ) -> impl Iterator<Item = Change> + use<'a> {
        let size = |screws: &ScrewSeries| nanometres(screws.thread().nominal_diameter());
        let own = size(&self.screws);
        others
            .iter()
            .filter(move |other| (size(&other.screws) == own) == same)
            .map(move |&other| {
                if same {
                    Change::OtherProduct(other)
                } else {
                    Change::OtherDiameter(other)
                }
            })
    }

    /// Every change that does what is wanted by itself, with what the search then finds.
    pub(super) fn single_changes(
        &self,
        goal: Goal,
        products: &[Change],
        diameters: &[Change],
    ) -> Result<Vec<(Change, Candidate)>, Error> {
        let spacer = self.thicker(goal, false)?;
        let spacer = spacer.map(|(at_least, at_most)| Change::Spacer { at_least, at_most });
        let ply = self.thicker(goal, true)?;
        let ply = ply.map(|(at_least, at_most)| Change::ThickerLastPly { at_least, at_most });
        let changes = self
            .turn()
            .into_iter()
            .chain(self.more_washers(goal)?)
            .chain(self.more_head_washers(goal)?)
            .chain(self.allow_cut())
            .chain(self.other_rules(goal)?)
            .chain(spacer)
            .chain(products.iter().copied())
            .chain(ply)
            .chain(diameters.iter().copied())
            .chain([self.special_bolt(goal)?]);
        let mut found = Vec::new();
        for change in changes {
            if let Some(outcome) = change.outcome(self, goal)? {
                found.push((change, outcome));
            }
        }
        Ok(found)
    }

    pub(super) fn turn(&self) -> Option<Change> {
        self.stack.can_be_turned().then_some(Change::TurnBolt)
    }

    /// Washers that may be added under the nut.
    fn washers_available(&self) -> Result<usize, Error> {
        Ok(self.search()?.nut_washers_available(0))
    }

    /// All washers under the nut that are always there, and under the head.
    pub(super) fn washers_there(&self) -> (usize, usize) {
        let stack = &self.stack;
        let start = stack.washers_under_nut().map_or(0, |(_, start)| start);
        let at_nut = start + stack.other_washers_under_nut().len();
        (at_nut, stack.washers_under_head().len())
    }

    pub(super) fn margin(&self) -> Result<Option<Length>, Error> {
        let mut shortest: Option<Length> = None;
        for screw in self.stock() {
            if !screw.fully_threaded {
                let transition = screw.transition_length();
                shortest = Some(shortest.map_or(transition, |y| y.min(transition)));
            }
        }
        let Some(transition) = shortest else {
            return Ok(None);
        };
        let clear = self.rules.clear_threads_min * self.screws.thread().pitch();
        let margin = self
            .stack
            .shank_and_clamp_margin(transition, self.washers_available()?)?;
        Ok(margin.map(|margin| margin - clear))
    }

    /// Stock lengths whose dimensions are known.
    fn stock(&self) -> impl Iterator<Item = ScrewLength> {
        let lengths = self.screws.stock_lengths();
        lengths.filter_map(|length| self.screws.length(length).ok())
    }

    /// More washers than the rules permit: the fewest that do.
    fn more_washers(&self, goal: Goal) -> Result<Option<Change>, Error> {
        let permitted = self.washers_there().0 + self.washers_available()?;
        if self.stack.washers_under_nut().is_none() {
            return Ok(None);
        }
        for count in permitted + 1..=MOST_WASHERS {
            let change = Change::AddWashers { count, permitted };
            if change.outcome(self, goal)?.is_some() {
                return Ok(Some(change));
            }
        }
        Ok(None)
    }

    /// More washers under the head than the rules permit: the fewest that do.
    fn more_head_washers(&self, goal: Goal) -> Result<Option<Change>, Error> {
        if self.stack.washer_to_add_under_head().is_none() {
            return Ok(None);
        }
        let (at_nut, there) = self.washers_there();
        let in_all = self
            .rules
            .washers_max
            .map_or(usize::MAX, |most| most - at_nut.min(most));
        let permitted = self
            .rules
            .washers_under_head_max
            .unwrap_or(there)
            .min(in_all);
        for count in permitted + 1..=MOST_WASHERS {
            let change = Change::AddWashersUnderHead { count, permitted };
            if change.outcome(self, goal)?.is_some() {
                return Ok(Some(change));
            }
        }
        Ok(None)
    }

    /// Cutting allowed, where it is not.
    pub(super) fn allow_cut(&self) -> Option<Change> {
        let system = if self.screws.thread().is_unified() {
            UnitSystem::UsCustomary
        } else {
            UnitSystem::Si
        };
        (self.rules.cut == CutRule::Never).then_some(Change::AllowCut {
            rule: CutRule::usual(system),
        })
    }

    /// One rule relaxed, by as little as does.
    fn other_rules(&self, goal: Goal) -> Result<Vec<Change>, Error> {
        let rules = self.rules;
        let pitch = self.screws.thread().pitch();
        let in_pitches = |length: Length| length.value / pitch.value;
        let mut changes = Vec::new();
        if rules.clear_threads_min > 0.0 {
            let none = rules.with_clear_threads(0.0);
            let most = self.least_bad(goal, none, |candidate| candidate.clear_threads)?;
            changes.extend(most.map(|threads| Change::FewerClearThreads {
                threads: threads.max(0.0),
                wanted: rules.clear_threads_min,
            }));
        }
        if rules.protrusion_min_pitches > 0.0 {
            let flush = rules.with_protrusion(0.0, rules.protrusion_max_pitches);
            let most = self.least_bad(goal, flush, |candidate| {
                in_pitches(candidate.protrusion.min) - rules.end_not_counted_pitches
            })?;
            changes.extend(most.map(|pitches| Change::LessProtrusion {
                pitches: pitches.max(0.0),
                wanted: rules.protrusion_min_pitches,
            }));
        }
        if let (Some(permitted), CutRule::Never) = (rules.protrusion_max_pitches, rules.cut) {
            let free = rules.with_protrusion(rules.protrusion_min_pitches, None);
            let least = self.least_bad(goal, free, |candidate| {
                -in_pitches(candidate.protrusion.max)
            })?;
            changes.extend(least.map(|pitches| Change::MoreProtrusion {
                pitches: -pitches,
                permitted,
            }));
        }
        Ok(changes)
    }

    /// The greatest value of a measure over all lengths and permitted numbers of washers that do
    /// what is wanted by other rules.
    fn least_bad(
        &self,
        goal: Goal,
        rules: LengthRules,
        measure: impl Fn(&Candidate) -> f64,
    ) -> Result<Option<f64>, Error> {
        let mut best: Option<f64> = None;
        for added in 0..=self.washers_available()? {
            // Exactly so many washers: the search itself would take as few as it can.
            let stack = match self.stack.washers_under_nut() {
                Some((washer, start)) => self
                    .stack
                    .to_builder()
                    .washers_under_nut(washer.clone(), start + added)
                    .build()?,
                None => self.stack.clone(),
            };
            let others = stack.other_washers_under_nut().len();
            let count = stack.washers_under_nut().map_or(0, |(_, count)| count);
            let exactly = rules.with_washers_under_nut(count + others);
            let search = LengthSearch::new(&stack, &self.screws, self.nut, exactly)?;
            for screw in self.stock() {
                let candidate = search.assess(screw)?;
                if goal.is_met_by(&candidate) {
                    let value = measure(&candidate);
                    best = Some(best.map_or(value, |best| best.max(value)));
                }
            }
        }
        Ok(best)
    }

    /// How much thicker the stack must be after its last plane, at least and at most: the smallest
    /// over all lengths and permitted numbers of washers. `ply`: whether it is the last ply that grows,
    /// and with it the thread in its hole.
    fn thicker(&self, goal: Goal, ply: bool) -> Result<Option<(Length, Length)>, Error> {
        let in_sleeve = || {
            let last = self.stack.plies().len();
            self.stack.bearing_thickness(last).is_none()
        };
        // A tapped part begins where the last ply ends; of a sleeve and its plies the longer is clamped.
        if self.nut.is_tapped() || (ply && in_sleeve()) {
            return Ok(None);
        }
        let washers = self.washers_available()?;
        let (rules, nut) = (self.rules, self.nut.height());
        let pitch = self.screws.thread().pitch();
        let least = rules.least_protrusion_pitches() * pitch;
        let none = Length::default();
        let mut best: Option<(Length, Length)> = None;
        for screw in self.stock().filter(|screw| self.planes_suit(screw, goal)) {
            for added in 0..=washers {
                let grip = self.stack.grip_with(Added {
                    under_head: 0,
                    under_nut: added,
                });
                let clear = rules.clear_threads_min * pitch;
                let mut low = (screw.grip_gaging_length_max + clear - grip.min).max(none);
                if let (Some(limit), CutRule::Never) = (rules.protrusion_max_pitches, rules.cut) {
                    low = low.max(screw.max - grip.min - nut.min - limit * pitch);
                }
                let mut high = screw.min - grip.max - nut.max - least;
                if let (true, Some(most)) = (ply, rules.thread_in_holes_max_pitches) {
                    high = high.min(most * pitch - self.thread_in_holes(&screw));
                }
                if low > SAME_LENGTH && low <= high && best.is_none_or(|(least, _)| low < least) {
                    best = Some((low, high));
                }
            }
        }
        Ok(best)
    }

    /// Thread and run-out in the holes; below zero the sure shank reaches beyond them.
    fn thread_in_holes(&self, screw: &ScrewLength) -> Length {
        self.stack.holes_end().max - screw.body_length_min
    }

    /// Whether the shear planes lie on a screw as the goal wants; nothing after the last plane, and
    /// no washer under the nut, moves them.
    fn planes_suit(&self, screw: &ScrewLength, goal: Goal) -> bool {
        let worst = match goal {
            Goal::Fits => Zone::Thread,
            Goal::NoPlaneInThread => Zone::RunOut,
            Goal::EveryPlaneOnShank => Zone::Shank,
        };
        if let Some(most) = self.rules.thread_in_holes_max_pitches {
            let most = most * self.screws.thread().pitch();
            if self.thread_in_holes(screw) > most + SAME_LENGTH {
                return false;
            }
        }
        let mut positions = self.stack.plane_positions().iter();
        positions.all(|position| screw.zone_at(position.max) <= worst)
    }

    /// The measures of a bolt that would do, with every permitted washer.
    fn special_bolt(&self, goal: Goal) -> Result<Change, Error> {
        let thread = self.screws.thread();
        let washers = self.washers_available()?;
        let mut wanted = WantedBolt::of(&self.stack, &thread, self.nut, self.rules, washers)?;
        // The last plane may lie in the run-out, or anywhere. Where the run-out that may hold it is shorter than the last
        // printed digit, the shank is told too: printed with it, the thread still begins behind the plane.
        let planes = self.stack.plane_positions().iter();
        let last = planes.fold(Length::default(), |last, plane| last.max(plane.max));
        let hairline = goal == Goal::NoPlaneInThread
            && last > Length::default()
            && wanted.thread_start_max - last < millimetres(0.05);
        if goal < Goal::EveryPlaneOnShank && !hairline {
            wanted.shank_min = WantedBolt::shank_in_holes(&self.stack, &self.rules, thread.pitch());
        }
        Ok(Change::SpecialBolt(wanted))
    }
}
