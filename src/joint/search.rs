//! Which stock length: the search and its ranking.

use alloc::{format, vec::Vec};

use super::candidate::{Candidate, Selection};
use super::stack::Added;
use super::{LengthRules, NutEnd, OwnScrew, Ranking, Stack};
use crate::caution::{Caution, Cautions, StatedPart};
use crate::error::{Allowed, Error, out_of_range};
use crate::parts::{ScrewLength, ScrewSeries};
use crate::thread::Thread;
use crate::units::{Length, SAME_LENGTH};

mod judge;
mod no_length;
mod textbook;
mod told;

use judge::Judged;
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

    pub(super) fn nut_washers_available(&self, under_head: usize) -> usize {
        let in_all = self.available_in_all.saturating_sub(under_head);
        self.available.under_nut.min(in_all)
    }

    const fn pitch(&self) -> Length {
        self.pitch
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
