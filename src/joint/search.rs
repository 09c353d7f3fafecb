//! Which stock length: the search and its ranking.

use alloc::{format, vec::Vec};

use super::candidate::{Candidate, Cut, Reason, Selection};
use super::in_hand::Contradiction;
use super::ranking::{Merits, Rank};
use super::stack::Added;
use super::{CutRule, LengthRules, NutEnd, OwnScrew, Ranking, Stack};
use crate::caution::{Caution, Cautions, StatedPart};
use crate::error::{Allowed, Error, out_of_range};
use crate::math::ceil;
use crate::parts::{ScrewLength, ScrewSeries, Zone};
use crate::spread::Spread;
use crate::thread::Thread;
use crate::units::{Length, SAME_LENGTH};

mod textbook;

pub use textbook::TextbookLength;

/// A search over the stock lengths of one product for one stack and nut.
///
/// For each length the search tries every permitted number of washers under the nut, and under the head
/// where the stack and the rules let it add some, and keeps the best. With G the grip (head washers, plies,
/// nut washers), m the nut height and x the position of a shear plane, each at its minimum and maximum, it
/// asks:
///
/// - jam margin J = G min - LG max: the nut must clamp before it reaches the run-out, J >= c P;
/// - protrusion from L min - G max - m max to L max - G min - m min, in pitches P;
/// - zone of each plane: shank if x max <= LB min, run-out to LG max, thread beyond.
///
/// Where the rules ask for it, also how much thread lies in the holes of the plies: their far face less LB.
/// A bolt in a [tapped part](NutEnd::tapped) must reach the wanted engagement and not the end of the thread.
///
/// Ranking, in this order: it fits; fewest planes in thread; fewest planes not on shank (both in
/// the worst case); no cut; fewest washers added; shortest. A caller may [have another](Self::ranked). Of those that do
/// not fit, the one that lacks the least length: too short, jammed, thread in the holes, or too long, whichever is
/// most. The order is total, so results never depend on the order of the lengths.
///
/// Source: ASME B18.2.1-2010, 4.7, for LB and LG; the method is worst-case arithmetic on them.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
/// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
/// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
/// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
/// # let rules = LengthRules::fabrication(UnitSystem::Si);
/// let search = LengthSearch::new(&stack, &screws, nut, rules)?;
/// assert_eq!(search.run()?.best().unwrap().screw.nominal, millimetres(55.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug)]
pub struct LengthSearch<'a> {
    stack: &'a Stack,
    lengths: Lengths<'a>,
    pitch: Length,
    nut: NutEnd,
    rules: LengthRules,
    ranking: Ranking,
    /// Washers that may be added at each end, and in all.
    available: Added,
    available_in_all: usize,
}

/// What the lengths are chosen from.
#[derive(Clone, Copy, Debug)]
enum Lengths<'a> {
    /// A bolt in the hand, which no list of lengths goes with.
    InHand,
    Stock(&'a ScrewSeries),
    /// Those of a bolt of the caller's own.
    Own(&'a OwnScrew, Thread),
}

impl<'a> Lengths<'a> {
    /// Every nominal length.
    fn nominal(self) -> Result<impl Iterator<Item = Length> + use<'a>, Error> {
        let (stock, own) = match self {
            Self::InHand => return Err(no_product()),
            Self::Stock(screws) => (Some(screws.stock_lengths()), None),
            Self::Own(own, _) => (None, Some(own.nominal_lengths())),
        };
        let stock = stock.into_iter().flatten();
        Ok(stock.chain(own.into_iter().flatten()))
    }

    fn screw(self, nominal: Length) -> Result<ScrewLength, Error> {
        match self {
            Self::InHand => Err(no_product()),
            Self::Stock(screws) => screws.length(nominal),
            Self::Own(own, thread) => own.length(nominal, &thread),
        }
    }

    fn cautions(self, screw: &ScrewLength) -> Cautions {
        match self {
            Self::InHand => Cautions::default(),
            Self::Stock(screws) => screws.cautions(screw),
            Self::Own(..) => Cautions::default().with(Some(Caution::Stated {
                part: StatedPart::Bolt,
            })),
        }
    }

    #[cold]
    fn nothing_read(self) -> Error {
        let Self::Stock(screws) = self else {
            return no_product();
        };
        Error::NoValue {
            quantity: "stock length with all its dimensions",
            subject: format!("{screws}"),
            reason: "none has been read at that size",
        }
    }
}

/// One screw with one number of washers: what the choice among the numbers needs.
struct Trial {
    added: Added,
    grip: Spread<Length>,
    jam_margin: Length,
    protrusion: Spread<Length>,
    too_short: bool,
    fits: bool,
    needs_cut: bool,
}

impl Trial {
    /// Order of preference among the numbers of washers under the nut for one screw: all else that a
    /// ranking looks at is the same for them.
    fn order(&self, cut_before_washers: bool) -> (bool, bool, usize) {
        let cut = cut_before_washers && self.fits && self.needs_cut;
        (!self.fits, cut, self.added.under_nut)
    }

    /// Whether no further washer under the nut can make it better, by whatever ranking: the planes stay
    /// where they are, and there is no cut to save.
    const fn is_final(&self) -> bool {
        self.too_short || (self.fits && !self.needs_cut)
    }
}

/// Planes by their zone in the worst case.
#[derive(Clone, Copy, Default)]
struct ZoneCounts {
    on_shank: usize,
    in_run_out: usize,
    in_thread: usize,
}

/// One screw with its best number of washers.
struct Judged {
    best: Trial,
    zones: ZoneCounts,
    rank: Rank,
}

impl<'a> LengthSearch<'a> {
    /// Prepares a search.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for rules that make no sense, or if the stack already has more washers
    /// under the nut than the rules permit.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(10.0))).build()?;
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4017, &"M10".parse()?)?;
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &"M10".parse()?)?)?;
    /// let rules = LengthRules::fabrication(UnitSystem::Si).with_protrusion(3.0, Some(2.0));
    /// assert!(LengthSearch::new(&stack, &screws, nut, rules).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn new(
        stack: &'a Stack,
        screws: &'a ScrewSeries,
        nut: NutEnd,
        rules: LengthRules,
    ) -> Result<Self, Error> {
        Ok(Self {
            lengths: Lengths::Stock(screws),
            ..Self::of_thread(stack, &screws.thread(), &nut, rules)?
        })
    }

    /// Prepares a search over the lengths of a bolt of the caller's own.
    ///
    /// # Errors
    ///
    /// Those of [`new`](Self::new); [`Error::OutOfRange`] or [`Error::Mismatch`] for a bolt whose figures are none, that has
    /// no length, or one twice.
    ///
    /// ```
    /// use shankline::joint::{OwnLength, OwnScrew};
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10".parse()?;
    /// let drawer = OwnScrew::new("turned bolt (invented)", [45.0, 55.0, 65.0].map(|length| {
    ///     OwnLength::new(Spread::exact(millimetres(length)), millimetres(length - 24.0), millimetres(length - 20.0))
    /// }));
    /// let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let search = LengthSearch::of_own(&stack, &drawer, &thread, nut, rules)?;
    /// assert_eq!(search.best()?.unwrap().screw.nominal, millimetres(55.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_own(
        stack: &'a Stack,
        own: &'a OwnScrew,
        thread: &Thread,
        nut: NutEnd,
        rules: LengthRules,
    ) -> Result<Self, Error> {
        own.checked(thread)?;
        Ok(Self {
            lengths: Lengths::Own(own, *thread),
            ..Self::of_thread(stack, thread, &nut, rules)?
        })
    }

    /// A search that can only assess bolts in the hand, of a thread that no product need have.
    pub(super) fn of_thread(
        stack: &'a Stack,
        thread: &Thread,
        nut: &NutEnd,
        rules: LengthRules,
    ) -> Result<Self, Error> {
        let rules = rules.checked()?;
        if nut.is_tapped() != stack.tapped_part().is_some() {
            return Err(Error::Mismatch(if nut.is_tapped() {
                "the thread of a tapped part goes with a stack that ends in one".into()
            } else {
                "the stack ends in a tapped part: its thread takes the place of the nut".into()
            }));
        }
        let at_nut = stack.washers_under_nut().map_or(0, |(_, start)| start)
            + stack.other_washers_under_nut().len();
        let at_head = stack.washers_under_head().len();
        let left = |quantity: &'static str, there: usize, most: Option<usize>| match most {
            Some(most) if there > most => {
                Err(out_of_range(quantity, there, Allowed::AtMost(most.into())))
            }
            Some(most) => Ok(most - there),
            None => Ok(0),
        };
        let nut_left = Some(rules.washers_under_nut_max);
        let nut_left = left("number of washers under the nut", at_nut, nut_left)?;
        let head_left = rules.washers_under_head_max;
        let head_left = left("number of washers under the head", at_head, head_left)?;
        let in_all = left("number of washers", at_nut + at_head, rules.washers_max)?;
        Ok(Self {
            stack,
            lengths: Lengths::InHand,
            pitch: thread.pitch(),
            nut: *nut,
            rules,
            ranking: Ranking::default(),
            available: Added {
                under_head: stack.washer_to_add_under_head().map_or(0, |_| head_left),
                under_nut: stack.washers_under_nut().map_or(0, |_| nut_left),
            },
            available_in_all: rules.washers_max.map_or(usize::MAX, |_| in_all),
        })
    }

    /// The same search with another order of preference.
    ///
    /// ```
    /// use shankline::joint::{Criterion, Ranking};
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si).with_protrusion(2.0, Some(6.0));
    /// let search = LengthSearch::new(&stack, &screws, nut, rules)?;
    /// let shortest = search.ranked(Ranking::by(&[Criterion::Length])).run()?;
    /// let first = shortest.best().unwrap();
    /// assert!(shortest.accepted().iter().all(|other| other.screw.nominal >= first.screw.nominal));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn ranked(mut self, ranking: Ranking) -> Self {
        self.ranking = ranking;
        self
    }

    /// Tries every length in stock, or of the caller's own.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if no stock lengths of the product are known at that size.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M20".parse()?;
    /// let stack = Stack::builder()
    ///     .ply("cleat", millimetres(10.0).plus_minus(millimetres(0.4)))
    ///     .ply("web", millimetres(12.0).plus_minus(millimetres(0.4)))
    ///     .shear_planes([1])
    ///     .washers_under_nut(Washer::find(WasherStyle::Iso7089, &thread)?.thickness()?, 1)
    ///     .build()?;
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4017, &thread)?;
    /// let nut = Nut::find(NutStyle::Iso4032, &thread)?;
    /// let rules = LengthRules::fabrication(UnitSystem::Si)
    ///     .with_protrusion(1.0, None)
    ///     .with_clear_threads(1.0);
    /// let selection = LengthSearch::new(&stack, &screws, NutEnd::of(nut)?, rules)?.run()?;
    /// assert_eq!(selection.best().unwrap().screw.nominal, millimetres(50.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn run(&self) -> Result<Selection, Error> {
        let mut candidates = Vec::with_capacity(40);
        let mut not_assessed = Vec::new();
        for length in self.lengths.nominal()? {
            match self.lengths.screw(length) {
                Ok(screw) => candidates.push(self.candidate(screw)),
                // A hole in the tables must not hide the lengths that are known.
                Err(Error::NoValue { .. } | Error::NotInTable { .. }) => not_assessed.push(length),
                Err(error) => return Err(error),
            }
        }
        candidates.sort_by_cached_key(|candidate| candidate.rank);
        let Some(first) = candidates.first() else {
            return Err(self.lengths.nothing_read());
        };
        let cautions = self.cautions(first).and(self.nut.cautions());
        let accepted = candidates.partition_point(Candidate::fits);
        Ok(Selection {
            candidates,
            accepted,
            not_assessed,
            cautions,
        })
    }

    /// The best stock length alone, if any fits: the same as [`run`](Self::run) finds, without the others and
    /// the reasons against them. For sweeps over many joints.
    ///
    /// # Errors
    ///
    /// Those of [`run`](Self::run).
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let search = LengthSearch::new(&stack, &screws, nut, rules)?;
    /// assert_eq!(search.best()?.as_ref(), search.run()?.best());
    /// # Ok(())
    /// # }
    /// ```
    pub fn best(&self) -> Result<Option<Candidate>, Error> {
        let lengths = self.lengths;
        let grip = self.stack.grip_with(Added::default());
        // No bolt is longer at its least than its nominal length: what is too short by that needs no look-up.
        let shortest = grip.max + self.nut.height().max + self.window().0 - SAME_LENGTH;
        let mut first: Option<(ScrewLength, Judged)> = None;
        for length in lengths.nominal()?.filter(|&length| length >= shortest) {
            let screw = match lengths.screw(length) {
                Ok(screw) => screw,
                Err(Error::NoValue { .. } | Error::NotInTable { .. }) => continue,
                Err(error) => return Err(error),
            };
            let judged = self.judged(&screw);
            let better = |(_, first): &(_, Judged)| judged.rank < first.rank;
            if judged.best.fits && first.as_ref().is_none_or(better) {
                first = Some((screw, judged));
            }
        }
        match first {
            Some((screw, judged)) => Ok(Some(self.told(screw, &judged))),
            None if lengths
                .nominal()?
                .any(|length| lengths.screw(length).is_ok()) =>
            {
                Ok(None)
            }
            None => Err(lengths.nothing_read()),
        }
    }

    /// The verdict on one screw, such as one measured in the hand.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if its lengths are not positive, finite and in order.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10".parse()?;
    /// let ply = millimetres(8.0).plus_minus(millimetres(0.2));
    /// let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let verdict = LengthSearch::new(&stack, &screws, nut, rules)?
    ///     .assess(screws.length(millimetres(50.0))?)?;
    /// assert!(!verdict.fits()); // the nut jams on the run-out
    /// # Ok(())
    /// # }
    /// ```
    pub fn assess(&self, screw: ScrewLength) -> Result<Candidate, Error> {
        Ok(self.candidate(screw.checked()?))
    }

    /// The verdict on the screw of one nominal length.
    pub(super) fn of_length(&self, nominal: Length) -> Result<Candidate, Error> {
        self.assess(self.lengths.screw(nominal)?)
    }

    /// What the lengths of a screw rest on.
    pub(super) fn cautions(&self, candidate: &Candidate) -> Cautions {
        self.lengths.cautions(&candidate.screw)
    }

    fn candidate(&self, screw: ScrewLength) -> Candidate {
        self.told(screw, &self.judged(&screw))
    }

    /// The best number of washers for one screw.
    fn judged(&self, screw: &ScrewLength) -> Judged {
        let mut zones = self.zones(screw, 0);
        let mut best = self.best_at_nut(screw, 0);
        let mut rank = self.rank(screw, &best, zones);
        for under_head in 1..=self.available.under_head.min(self.available_in_all) {
            let next = self.best_at_nut(screw, under_head);
            // What is too short with fewest washers is shorter still with more.
            if next.too_short {
                break;
            }
            let next_zones = self.zones(screw, under_head);
            let next_rank = self.rank(screw, &next, next_zones);
            // A bolt that does not do is judged without them: whoever reads why would not know of them.
            if next.fits && next_rank < rank {
                (best, zones, rank) = (next, next_zones, next_rank);
            }
        }
        Judged { best, zones, rank }
    }

    /// All that is to be said of a screw that has been judged.
    fn told(&self, screw: ScrewLength, judged: &Judged) -> Candidate {
        let Judged { best, zones, rank } = judged;
        let start = self.stack.washers_under_nut().map_or(0, |(_, start)| start);
        let mut candidate = Candidate {
            screw,
            washers_added: best.added.under_nut,
            washers_under_nut: start + best.added.under_nut,
            washers_added_under_head: best.added.under_head,
            grip: best.grip,
            nut_height: self.nut.height(),
            pitch: self.pitch(),
            jam_margin: best.jam_margin,
            clear_threads: best.jam_margin.value / self.pitch().value,
            protrusion: best.protrusion,
            planes_on_shank: zones.on_shank,
            planes_in_run_out: zones.in_run_out,
            planes_in_thread: zones.in_thread,
            ends_in_tapped_part: self.nut.is_tapped(),
            needs_cut: best.needs_cut,
            cut: None,
            reasons: [None; 4],
            rank: *rank,
        };
        if best.fits {
            candidate.cut = self.cut(&candidate);
        } else {
            candidate.reasons = self.reasons(&candidate);
        }
        candidate
    }

    /// The best number of washers under the nut, with so many added under the head.
    fn best_at_nut(&self, screw: &ScrewLength, under_head: usize) -> Trial {
        let cut_first = self.ranking.cut_before_washers();
        let trial = |under_nut| {
            let added = Added {
                under_head,
                under_nut,
            };
            self.trial(screw, added)
        };
        let mut best = trial(0);
        // The jam margin grows and the protrusion shrinks with every washer: once the bolt is too
        // short, more washers cannot help.
        for under_nut in 1..=self.nut_washers_available(under_head) {
            if best.is_final() {
                break;
            }
            let next = trial(under_nut);
            if next.too_short {
                break;
            }
            if next.order(cut_first) < best.order(cut_first) {
                best = next;
            }
        }
        best
    }

    fn rank(&self, screw: &ScrewLength, trial: &Trial, zones: ZoneCounts) -> Rank {
        if !trial.fits {
            return Rank::of_misfit(self.misses(screw, trial), screw.nominal);
        }
        let in_thread = zones.in_thread;
        self.ranking.rank(&Merits {
            planes_in_thread: in_thread,
            planes_off_shank: zones.in_run_out + in_thread,
            needs_cut: trial.needs_cut,
            added_under_head: trial.added.under_head,
            added_under_nut: trial.added.under_nut,
            length: screw.nominal,
        })
    }

    /// By what length it misses: the most of what speaks against it.
    fn misses(&self, screw: &ScrewLength, trial: &Trial) -> Length {
        let (least, most) = self.window();
        let too_long = match (most, self.rules.cut) {
            (Some(most), CutRule::Never) => trial.protrusion.max - most,
            _ => Length::default(),
        };
        let in_holes = self.thread_in_holes(screw, trial.added.under_head);
        (least - trial.protrusion.min)
            .max(self.rules.clear_threads_min * self.pitch() - trial.jam_margin)
            .max(in_holes.unwrap_or_default())
            .max(too_long)
    }

    pub(super) fn nut_washers_available(&self, under_head: usize) -> usize {
        let in_all = self.available_in_all.saturating_sub(under_head);
        self.available.under_nut.min(in_all)
    }

    /// Why no bolt of the thread will do, with any permitted number of washers; none if one may.
    pub(super) fn contradiction(&self) -> Option<Contradiction> {
        let mut first = None;
        for under_head in 0..=self.available.under_head.min(self.available_in_all) {
            for under_nut in 0..=self.nut_washers_available(under_head) {
                let added = Added {
                    under_head,
                    under_nut,
                };
                first = first.or(Some(self.contradiction_with(added)?));
            }
        }
        first
    }

    fn contradiction_with(&self, added: Added) -> Option<Contradiction> {
        let (grip, nut, rules) = (self.stack.grip_with(added), self.nut.height(), self.rules);
        let start = grip.min - rules.clear_threads_min * self.pitch();
        let holes_end = self.stack.holes_end().max + self.stack.head_washers(added.under_head).max;
        let too_late = |most: f64| holes_end - most * self.pitch() > start + SAME_LENGTH;
        let (least, most) = self.window();
        let too_short =
            |most: Length| grip.min + nut.min + most < grip.max + nut.max + least - SAME_LENGTH;
        if start < -SAME_LENGTH {
            Some(Contradiction::ClearThreads)
        } else if rules.thread_in_holes_max_pitches.is_some_and(too_late) {
            Some(Contradiction::ThreadInHoles)
        } else if rules.cut == CutRule::Never && most.is_some_and(too_short) {
            Some(Contradiction::Protrusion)
        } else {
            None
        }
    }

    /// The shear planes by zone, with so many washers added under the head.
    fn zones(&self, screw: &ScrewLength, under_head: usize) -> ZoneCounts {
        let moved = self.stack.head_washers(under_head).max;
        let mut counts = ZoneCounts::default();
        for position in self.stack.plane_positions() {
            match screw.zone_at(position.max + moved) {
                Zone::Shank => counts.on_shank += 1,
                Zone::RunOut => counts.in_run_out += 1,
                Zone::Thread => counts.in_thread += 1,
            }
        }
        counts
    }

    const fn pitch(&self) -> Length {
        self.pitch
    }

    /// Bolt length beyond the nut. Thick plies and a high nut leave least of a short bolt.
    fn protrusion(&self, length: Spread<Length>, grip: Spread<Length>) -> Spread<Length> {
        length.less(grip).less(self.nut.height())
    }

    /// What the end of the bolt must reach beyond the nut, at least and at most.
    fn window(&self) -> (Length, Option<Length>) {
        self.nut.window(&self.rules, self.pitch)
    }

    /// How much more thread lies in the holes than the rules permit; zero or less where it is little enough.
    fn thread_in_holes(&self, screw: &ScrewLength, under_head: usize) -> Option<Length> {
        let most = self.rules.thread_in_holes_max_pitches? * self.pitch();
        let end = self.stack.holes_end().max + self.stack.head_washers(under_head).max;
        Some(end - screw.body_length_min - most)
    }

    /// One screw with more washers.
    fn trial(&self, screw: &ScrewLength, added: Added) -> Trial {
        let grip = self.stack.grip_with(added);
        let jam_margin = grip.min - screw.grip_gaging_length_max;
        let protrusion = self.protrusion(screw.length(), grip);
        let (least, most) = self.window();
        let too_short = protrusion.min < least - SAME_LENGTH;
        let clears = jam_margin >= self.rules.clear_threads_min * self.pitch() - SAME_LENGTH;
        let too_long = most.is_some_and(|most| protrusion.max > most + SAME_LENGTH);
        let in_holes = self.thread_in_holes(screw, added.under_head);
        let shank_reaches = in_holes.is_none_or(|by| by <= SAME_LENGTH);
        let may_cut = self.rules.cut != CutRule::Never;
        let fits = clears && !too_short && shank_reaches && (!too_long || may_cut);
        Trial {
            added,
            grip,
            jam_margin,
            protrusion,
            too_short,
            fits,
            needs_cut: too_long && may_cut,
        }
    }

    fn jam_reason(&self, candidate: &Candidate, washers_permitted: usize) -> Option<Reason> {
        let wanted = self.rules.clear_threads_min * self.pitch();
        let missing = wanted - candidate.jam_margin;
        if missing <= SAME_LENGTH {
            return None;
        }
        // A washer is at least as thick as its minimum, so this many are enough. The ratio is
        // finite and not negative, and `as` saturates.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let washers_needed = self.stack.washers_under_nut().map(|(washer, _)| {
            ceil((missing - SAME_LENGTH).value / washer.thickness.min.value) as usize
        });
        Some(if candidate.jam_margin < -SAME_LENGTH {
            let by = -candidate.jam_margin;
            if self.nut.is_tapped() {
                Reason::RunOutMeetsThread { by }
            } else {
                Reason::NutJams {
                    by,
                    washers_needed,
                    washers_permitted,
                }
            }
        } else {
            Reason::TooFewClearThreads {
                by: missing,
                washers_needed,
                washers_permitted,
            }
        })
    }

    /// All reasons why a candidate does not fit.
    fn reasons(&self, candidate: &Candidate) -> [Option<Reason>; 4] {
        let (least, most) = self.window();
        let under_head = candidate.washers_added_under_head;
        let available = self.nut_washers_available(under_head);
        let short = least - candidate.protrusion.min;
        let too_short = (short > SAME_LENGTH).then_some(Reason::TooShort { by: short });
        let jam = self.jam_reason(candidate, available);
        let washers_short = match jam {
            Some(
                Reason::NutJams {
                    washers_needed: Some(washers),
                    ..
                }
                | Reason::TooFewClearThreads {
                    washers_needed: Some(washers),
                    ..
                },
            ) if too_short.is_none() && washers <= available => {
                let grip = self.stack.grip_with(Added {
                    under_head,
                    under_nut: candidate.washers_added + washers,
                });
                let left = self.protrusion(candidate.screw.length(), grip).min;
                let by = least - left;
                (by > SAME_LENGTH).then_some(Reason::WashersMakeItShort { washers, by })
            }
            _ => None,
        };
        let in_holes = self.thread_in_holes(&candidate.screw, under_head);
        let in_holes = in_holes
            .filter(|&by| by > SAME_LENGTH)
            .map(|by| Reason::ThreadInHoles { by });
        let too_long = match (most, self.rules.cut) {
            (Some(limit), CutRule::Never) => {
                let by = candidate.protrusion.max - limit;
                let reason = if self.nut.is_tapped() {
                    Reason::Bottoms { by }
                } else {
                    Reason::TooLong { by }
                };
                (by > SAME_LENGTH).then_some(reason)
            }
            _ => None,
        };
        // Without gaps, so that the first entry tells whether there is any. Four slots do: washers
        // can only make a bolt short that is not too short without them.
        let mut reasons = [None; 4];
        for (slot, reason) in reasons.iter_mut().zip(
            [too_short, jam, washers_short, in_holes, too_long]
                .into_iter()
                .flatten(),
        ) {
            *slot = Some(reason);
        }
        reasons
    }

    /// The fixed length that brings the protrusion of a candidate down, if it must be and can be.
    fn cut(&self, candidate: &Candidate) -> Option<Cut> {
        let (least, most) = self.window();
        let limit = most?;
        let CutRule::Allowed { tolerance, step } = self.rules.cut else {
            return None;
        };
        let (grip, screw) = (candidate.grip, candidate.screw);
        let wanted = grip.max + self.nut.height().max + least + tolerance;
        let length = ceil((wanted - SAME_LENGTH).value / step.value) * step;
        if !candidate.needs_cut || length >= screw.nominal - SAME_LENGTH {
            return None;
        }
        let finished = Spread {
            min: screw.min.min(length - tolerance),
            nominal: length,
            max: screw.max.min(length + tolerance),
        };
        let protrusion = self.protrusion(finished, grip);
        Some(Cut {
            length,
            finished,
            removed: screw.nominal - length,
            thread_left: length - screw.grip_gaging_length_max,
            protrusion,
            holds_window: protrusion.max <= limit + SAME_LENGTH,
        })
    }
}

#[cold]
fn no_product() -> Error {
    Error::NoValue {
        quantity: "stock length",
        subject: "a bolt in the hand".into(),
        reason: "no product was named",
    }
}
