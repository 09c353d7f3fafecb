//! What to change when no length does what is wanted.

use alloc::{string::String, vec::Vec};

use super::stack::Added;
use super::{Candidate, CutRule, LengthRules, LengthSearch, NutEnd, Stack, WantedBolt};
use crate::error::Error;
use crate::parts::{SAME_LENGTH, ScrewLength, ScrewSeries};
use crate::tables::nanometres;
use crate::units::{Length, UnitSystem};

mod change;

#[cfg(feature = "serde")]
use change::serialize_screws;
pub use change::{Alternative, Change};

/// What a bolt length is wanted to do.
///
/// ```
/// use shankline::joint::Goal;
/// assert!(Goal::Fits < Goal::EveryPlaneOnShank);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Goal {
    /// Clamp, and reach through the nut, by the rules.
    Fits,
    /// That, and no shear plane in full thread in the worst case; run-out is let pass.
    NoPlaneInThread,
    /// That, and every shear plane on guaranteed shank in the worst case.
    EveryPlaneOnShank,
}

impl Goal {
    /// Whether a candidate does it.
    ///
    /// ```
    /// use shankline::{joint::Goal, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// assert!(Goal::EveryPlaneOnShank.is_met_by(selection.best().unwrap()));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn is_met_by(self, candidate: &Candidate) -> bool {
        let planes = match self {
            Self::Fits => 0,
            Self::NoPlaneInThread => candidate.planes_in_thread,
            Self::EveryPlaneOnShank => candidate.planes_in_run_out + candidate.planes_in_thread,
        };
        candidate.fits() && planes == 0
    }
}

/// Stack, product, nut and rules of one length search, to change and search again.
///
/// ```
/// use shankline::{joint::{Arrangement, Change, Goal}, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// // A stage rail: a thin base under the nut leaves no room for the run-out.
/// let thread: Thread = "M10".parse()?;
/// let stack = Stack::builder()
///     .ply("post foot", millimetres(30.0).plus_minus(millimetres(0.3)))
///     .ply("base plate", millimetres(6.0).plus_minus(millimetres(0.2)))
///     .shear_planes([1])
///     .washers_under_nut(millimetres(2.0).plus_minus(millimetres(0.2)), 1)
///     .build()?;
/// let arrangement = Arrangement::new(
///     stack,
///     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
///     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
///     LengthRules::fabrication(UnitSystem::Si).with_washers_under_nut(1),
/// );
/// assert!(arrangement.best(Goal::EveryPlaneOnShank)?.is_none());
/// let advice = arrangement.advice(Goal::EveryPlaneOnShank, &[])?;
/// // The least effort: put the bolt in from the other side, so that the thick ply is at the nut.
/// assert_eq!(advice.advice[0].changes, [Change::TurnBolt]);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Arrangement {
    /// What the bolt goes through.
    pub stack: Stack,
    /// The product.
    #[cfg_attr(feature = "serde", serde(serialize_with = "serialize_screws"))]
    pub screws: ScrewSeries,
    /// The nut.
    pub nut: NutEnd,
    /// The rules.
    pub rules: LengthRules,
}

/// A change, or two together, and what the search finds with them.
///
/// ```
/// use shankline::{joint::{Arrangement, Goal}, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let ply = millimetres(4.0).plus_minus(millimetres(0.1));
/// # let stack = Stack::builder().ply("a", ply).ply("b", ply).shear_planes([1]).build()?;
/// # let arrangement = Arrangement::new(
/// #     stack,
/// #     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
/// #     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
/// #     LengthRules::fabrication(UnitSystem::Si),
/// # );
/// for advice in arrangement.advice(Goal::EveryPlaneOnShank, &[])?.advice {
///     assert!(Goal::EveryPlaneOnShank.is_met_by(&advice.outcome));
///     println!("{}", advice.text(UnitSystem::Si));
/// }
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Advice {
    /// The change; two where no single one does, the second reckoned with the first made.
    pub changes: Vec<Change>,
    /// The best candidate with the changes made.
    pub outcome: Candidate,
}

impl Advice {
    /// The changes as a sentence, lengths in the reader's units.
    ///
    /// ```
    /// # use shankline::{joint::{Arrangement, Goal}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let stack = Stack::builder()
    /// #     .ply("a", Spread::exact(millimetres(30.0)))
    /// #     .ply("b", Spread::exact(millimetres(5.0)))
    /// #     .shear_planes([1])
    /// #     .build()?;
    /// # let arrangement = Arrangement::new(
    /// #     stack,
    /// #     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
    /// #     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
    /// #     LengthRules::fabrication(UnitSystem::Si),
    /// # );
    /// let list = arrangement.advice(Goal::EveryPlaneOnShank, &[])?;
    /// assert!(list.advice[0].text(UnitSystem::Si).starts_with("put the bolt in from the other side"));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        let texts: Vec<String> = self
            .changes
            .iter()
            .map(|change| change.text(system))
            .collect();
        texts.join(", and ")
    }
}

/// What would do, in the order of effort: changes that do it alone, or, where there is none, pairs.
///
/// ```
/// use shankline::{joint::{Arrangement, Goal}, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let arrangement = |ply| -> Result<Arrangement, shankline::Error> { Ok(Arrangement::new(
/// #     Stack::builder().ply("a", ply).ply("b", ply).shear_planes([1]).build()?,
/// #     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
/// #     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
/// #     LengthRules::fabrication(UnitSystem::Si),
/// # )) };
/// // Two 4 mm plies: M10 has a transition of 7.5 mm.
/// let thin = arrangement(Spread::exact(millimetres(4.0)))?;
/// let advice = thin.advice(Goal::EveryPlaneOnShank, &[])?;
/// assert!((advice.margin.unwrap() + millimetres(3.5)).abs() < millimetres(1e-9));
/// // Nothing to advise where a length does what is wanted.
/// let thick = arrangement(Spread::exact(millimetres(20.0)))?;
/// assert!(thick.advice(Goal::EveryPlaneOnShank, &[])?.advice.is_empty());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AdviceList {
    /// What was wanted.
    pub goal: Goal,
    /// The feasibility identity at the shortest transition of the product and with every permitted
    /// washer: (least thickness after the last plane) - Y - c P - (spread up to the last plane).
    /// Negative: no length whatever of the product has every plane on shank and clamps. None
    /// without shear planes, and for products threaded to the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub margin: Option<Length>,
    /// The advice; empty if a length does what is wanted already, or if nothing here helps.
    pub advice: Vec<Advice>,
}

/// Beyond so many washers nobody stacks more: a spacer is the better part.
const MOST_WASHERS: usize = 6;

impl Arrangement {
    /// Puts the parts of a search together; they are checked when it runs.
    ///
    /// ```
    /// use shankline::{joint::Arrangement, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10".parse()?;
    /// let arrangement = Arrangement::new(
    ///     Stack::builder().ply("plate", Spread::exact(millimetres(40.0))).build()?,
    ///     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
    ///     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
    ///     LengthRules::fabrication(UnitSystem::Si),
    /// );
    /// assert!(arrangement.search()?.run()?.best().is_some());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn new(stack: Stack, screws: ScrewSeries, nut: NutEnd, rules: LengthRules) -> Self {
        Self {
            stack,
            screws,
            nut,
            rules,
        }
    }

    /// The search over the stock lengths.
    ///
    /// # Errors
    ///
    /// Those of [`LengthSearch::new`].
    ///
    /// ```
    /// # use shankline::{joint::Arrangement, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let arrangement = Arrangement::new(
    /// #     Stack::builder().ply("plate", Spread::exact(millimetres(40.0))).build()?,
    /// #     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
    /// #     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
    /// #     LengthRules::fabrication(UnitSystem::Si),
    /// # );
    /// assert!(!arrangement.search()?.run()?.accepted().is_empty());
    /// # Ok(())
    /// # }
    /// ```
    pub fn search(&self) -> Result<LengthSearch<'_>, Error> {
        LengthSearch::new(&self.stack, &self.screws, self.nut, self.rules)
    }

    /// The best stock length that does what is wanted, if any.
    ///
    /// # Errors
    ///
    /// Those of [`LengthSearch::new`].
    ///
    /// ```
    /// # use shankline::{joint::{Arrangement, Goal}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let arrangement = Arrangement::new(
    /// #     Stack::builder().ply("plate", Spread::exact(millimetres(40.0))).build()?,
    /// #     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
    /// #     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
    /// #     LengthRules::fabrication(UnitSystem::Si),
    /// # );
    /// assert_eq!(arrangement.best(Goal::Fits)?.unwrap().screw.nominal, millimetres(55.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn best(&self, goal: Goal) -> Result<Option<Candidate>, Error> {
        match self.search()?.run() {
            Ok(selection) => {
                let mut accepted = selection.accepted().iter();
                Ok(accepted
                    .find(|candidate| goal.is_met_by(candidate))
                    .copied())
            }
            // Nothing is stocked at that size.
            Err(Error::NoValue { .. }) => Ok(None),
            Err(error) => Err(error),
        }
    }

    /// The smallest changes that would do what is wanted, in the order of effort: each by itself, or,
    /// where no single one does, a turned bolt, a cut or another product together with a second.
    ///
    /// Amounts come from the inequalities of the search, LB >= x max and LG <= G min - c P, over the
    /// stock lengths; every change that is returned was made and searched again. `others` are the
    /// products and diameters that could be had.
    ///
    /// # Errors
    ///
    /// Those of [`LengthSearch::new`].
    ///
    /// ```
    /// use shankline::{joint::{Arrangement, Change, Goal}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10".parse()?;
    /// let ply = Spread::exact(millimetres(8.0));
    /// let arrangement = Arrangement::new(
    ///     Stack::builder()
    ///         .ply("rail foot", ply)
    ///         .ply("base plate", ply)
    ///         .shear_planes([1])
    ///         .washers_under_nut(Spread::exact(millimetres(2.0)), 1)
    ///         .build()?,
    ///     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
    ///     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
    ///     LengthRules::fabrication(UnitSystem::Si).with_washers_under_nut(1),
    /// );
    /// // The shortest ISO 4014 bolt is 45 mm: its thread begins at 19 mm, the stack ends at 18 mm.
    /// let advice = arrangement.advice(Goal::Fits, &[])?;
    /// assert_eq!(advice.advice[0].changes, [Change::AddWashers { count: 2, permitted: 1 }]);
    /// let Change::Spacer { at_least, .. } = advice.advice[1].changes[0] else { panic!() };
    /// assert!((at_least - millimetres(1.0)).abs() < millimetres(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn advice(&self, goal: Goal, others: &[Alternative]) -> Result<AdviceList, Error> {
        let mut list = AdviceList {
            goal,
            margin: self.margin()?,
            advice: Vec::new(),
        };
        if self.best(goal)?.is_some() {
            return Ok(list);
        }
        let products: Vec<Change> = self.same_diameter(others, true).collect();
        let diameters: Vec<Change> = self.same_diameter(others, false).collect();
        let one = |(change, outcome)| Advice {
            changes: alloc::vec![change],
            outcome,
        };
        let singles = self.single_changes(goal, &products, &diameters)?;
        list.advice.extend(singles.into_iter().map(one));
        if !list.advice.is_empty() {
            return Ok(list);
        }
        let firsts = self
            .turn()
            .into_iter()
            .chain(self.allow_cut())
            .chain(products);
        for first in firsts {
            let changed = first.applied(self)?;
            for (second, outcome) in changed.single_changes(goal, &[], &diameters)? {
                // A turn and a cut come in this order alone.
                if second != Change::TurnBolt {
                    list.advice.push(Advice {
                        changes: alloc::vec![first, second],
                        outcome,
                    });
                }
            }
        }
        Ok(list)
    }

    /// Other products of the diameter, or other diameters.
    fn same_diameter<'a>(
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
    fn single_changes(
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

    fn turn(&self) -> Option<Change> {
        self.stack.can_be_turned().then_some(Change::TurnBolt)
    }

    /// Washers that may be added under the nut.
    fn washers_available(&self) -> Result<usize, Error> {
        Ok(self.search()?.nut_washers_available(0))
    }

    /// All washers under the nut that are always there, and under the head.
    fn washers_there(&self) -> (usize, usize) {
        let stack = &self.stack;
        let start = stack.washers_under_nut().map_or(0, |(_, start)| start);
        let at_nut = start + stack.other_washers_under_nut().len();
        (at_nut, stack.washers_under_head().len())
    }

    fn margin(&self) -> Result<Option<Length>, Error> {
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
    fn allow_cut(&self) -> Option<Change> {
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
                    .washers_under_nut(washer, start + added)
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
        use crate::parts::Zone;
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
        // The last plane may lie in the run-out, or anywhere.
        if goal < Goal::EveryPlaneOnShank {
            wanted.shank_min = WantedBolt::shank_in_holes(&self.stack, &self.rules, thread.pitch());
        }
        Ok(Change::SpecialBolt(wanted))
    }
}
