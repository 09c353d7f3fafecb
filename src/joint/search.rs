//! Which stock length: the search and its ranking.

use alloc::{format, vec::Vec};

use super::candidate::{Candidate, Cut, Reason, Selection};
use super::{CutRule, LengthRules, NutEnd, Stack};
use crate::error::{Allowed, Error, out_of_range};
use crate::math::ceil;
use crate::parts::{SAME_LENGTH, ScrewLength, ScrewSeries, Zone};
use crate::spread::Spread;
use crate::thread::Thread;
use crate::units::Length;

/// A search over the stock lengths of one product for one stack and nut.
///
/// For each length the search tries every permitted number of washers under the nut and keeps the
/// best. With G the grip (head washers, plies, nut washers), m the nut height and x the position
/// of a shear plane, each at its minimum and maximum, it asks:
///
/// - jam margin J = G min - LG max: the nut must clamp before it reaches the run-out, J >= c P;
/// - protrusion from L min - G max - m max to L max - G min - m min, in pitches P;
/// - zone of each plane: shank if x max <= LB min, run-out to LG max, thread beyond.
///
/// Ranking, in this order: it fits; fewest planes in thread; fewest planes not on shank (both in
/// the worst case); no cut; fewest washers added; shortest. The order is total, so results never
/// depend on the order of the lengths.
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
    /// None for bolts in the hand, which no list of stock lengths goes with.
    screws: Option<&'a ScrewSeries>,
    pitch: Length,
    nut: NutEnd,
    rules: LengthRules,
}

/// One screw with one number of washers: what the choice among the numbers needs.
pub(super) struct Trial {
    pub(super) added: usize,
    grip: Spread<Length>,
    jam_margin: Length,
    protrusion: Spread<Length>,
    too_short: bool,
    pub(super) fits: bool,
    pub(super) needs_cut: bool,
}

impl Trial {
    /// Order of preference among the numbers of washers for one screw. The shear planes, which
    /// come before these in [`Candidate::compare`], are the same for all of them.
    fn order(&self) -> (bool, bool, usize) {
        (!self.fits, self.needs_cut, self.added)
    }

    /// Whether no further washer can make it better.
    fn is_final(&self) -> bool {
        self.too_short || (self.fits && !self.needs_cut)
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
            screws: Some(screws),
            ..Self::of_thread(stack, &screws.thread(), &nut, rules)?
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
        if let Some((_, start)) = stack.washers_under_nut() {
            if start > rules.washers_under_nut_max {
                return Err(out_of_range(
                    "number of washers under the nut",
                    start,
                    Allowed::AtMost(rules.washers_under_nut_max.into()),
                ));
            }
        }
        Ok(Self {
            stack,
            screws: None,
            pitch: thread.pitch(),
            nut: *nut,
            rules,
        })
    }

    /// Tries every stock length.
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
        let screws = self.screws.ok_or_else(|| Error::NoValue {
            quantity: "stock length",
            subject: "a bolt in the hand".into(),
            reason: "no product was named",
        })?;
        let mut candidates = Vec::with_capacity(40);
        let mut not_assessed = Vec::new();
        for length in screws.stock_lengths() {
            match screws.length(length) {
                Ok(screw) => candidates.push(self.candidate(screw)),
                // A hole in the tables must not hide the lengths that are known.
                Err(Error::NoValue { .. } | Error::NotInTable { .. }) => not_assessed.push(length),
                Err(error) => return Err(error),
            }
        }
        candidates.sort_unstable_by(Candidate::compare);
        let Some(first) = candidates.first() else {
            return Err(Error::NoValue {
                quantity: "stock length with all its dimensions",
                subject: format!("{screws}"),
                reason: "none has been read at that size",
            });
        };
        let cautions = screws.cautions(&first.screw).and(self.nut.cautions());
        let accepted = candidates.partition_point(Candidate::fits);
        Ok(Selection {
            candidates,
            accepted,
            not_assessed,
            cautions,
        })
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

    /// The best number of washers for one screw.
    fn candidate(&self, screw: ScrewLength) -> Candidate {
        let (start, available) = match self.stack.washers_under_nut() {
            Some((_, start)) => (
                start,
                self.rules.washers_under_nut_max.saturating_sub(start),
            ),
            None => (0, 0),
        };
        let mut best = self.trial(screw, 0);
        // The jam margin grows and the protrusion shrinks with every washer: once the bolt is too
        // short, more washers cannot help.
        for added in 1..=available {
            if best.is_final() {
                break;
            }
            let next = self.trial(screw, added);
            if next.too_short {
                break;
            }
            if next.order() < best.order() {
                best = next;
            }
        }
        let mut counts = [0_usize; 3];
        for position in self.stack.plane_positions() {
            counts[screw.zone_at(position.max) as usize] += 1;
        }
        let mut candidate = Candidate {
            screw,
            washers_added: best.added,
            washers_under_nut: start + best.added,
            grip: best.grip,
            nut_height: self.nut.height(),
            pitch: self.pitch(),
            jam_margin: best.jam_margin,
            clear_threads: best.jam_margin.value / self.pitch().value,
            protrusion: best.protrusion,
            planes_on_shank: counts[Zone::Shank as usize],
            planes_in_run_out: counts[Zone::RunOut as usize],
            planes_in_thread: counts[Zone::Thread as usize],
            needs_cut: best.needs_cut,
            cut: None,
            reasons: [None; 3],
            rank: Candidate::rank(counts, &best),
        };
        if best.fits {
            candidate.cut = self.cut(&candidate);
        } else {
            candidate.reasons = self.reasons(&candidate, available);
        }
        candidate
    }

    const fn pitch(&self) -> Length {
        self.pitch
    }

    /// Bolt length beyond the nut. Thick plies and a high nut leave least of a short bolt.
    fn protrusion(&self, length: Spread<Length>, grip: Spread<Length>) -> Spread<Length> {
        let nut = self.nut.height();
        Spread {
            min: length.min - grip.max - nut.max,
            nominal: length.nominal - grip.nominal - nut.nominal,
            max: length.max - grip.min - nut.min,
        }
    }

    fn least_protrusion(&self) -> Length {
        self.rules.protrusion_min_pitches * self.pitch()
    }

    /// One screw with `added` more washers under the nut.
    fn trial(&self, screw: ScrewLength, added: usize) -> Trial {
        let grip = self.stack.grip_with(added);
        let jam_margin = grip.min - screw.grip_gaging_length_max;
        let protrusion = self.protrusion(screw.length(), grip);
        let too_short = protrusion.min < self.least_protrusion() - SAME_LENGTH;
        let clears = jam_margin >= self.rules.clear_threads_min * self.pitch() - SAME_LENGTH;
        let too_long = match self.rules.protrusion_max_pitches {
            Some(limit) => protrusion.max > limit * self.pitch() + SAME_LENGTH,
            None => false,
        };
        let may_cut = self.rules.cut != CutRule::Never;
        Trial {
            added,
            grip,
            jam_margin,
            protrusion,
            too_short,
            fits: clears && !too_short && (!too_long || may_cut),
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
        let washers_needed = self
            .stack
            .washers_under_nut()
            .map(|(washer, _)| ceil((missing - SAME_LENGTH).value / washer.min.value) as usize);
        Some(if candidate.jam_margin < -SAME_LENGTH {
            Reason::NutJams {
                by: -candidate.jam_margin,
                washers_needed,
                washers_permitted,
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
    fn reasons(&self, candidate: &Candidate, available: usize) -> [Option<Reason>; 3] {
        let short = self.least_protrusion() - candidate.protrusion.min;
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
                let grip = self.stack.grip_with(candidate.washers_added + washers);
                let left = self.protrusion(candidate.screw.length(), grip).min;
                let by = self.least_protrusion() - left;
                (by > SAME_LENGTH).then_some(Reason::WashersMakeItShort { washers, by })
            }
            _ => None,
        };
        let too_long = match (self.rules.protrusion_max_pitches, self.rules.cut) {
            (Some(limit), CutRule::Never) => {
                let excess = candidate.protrusion.max - limit * self.pitch();
                (excess > SAME_LENGTH).then_some(Reason::TooLong { by: excess })
            }
            _ => None,
        };
        // Without gaps, so that the first entry tells whether there is any. Three slots do: washers
        // can only make a bolt short that is not too short without them.
        let mut reasons = [None; 3];
        for (slot, reason) in reasons.iter_mut().zip(
            [too_short, jam, washers_short, too_long]
                .into_iter()
                .flatten(),
        ) {
            *slot = Some(reason);
        }
        reasons
    }

    /// The fixed length that brings the protrusion of a candidate down, if it must be and can be.
    fn cut(&self, candidate: &Candidate) -> Option<Cut> {
        let limit = self.rules.protrusion_max_pitches? * self.pitch();
        let CutRule::Allowed { tolerance, step } = self.rules.cut else {
            return None;
        };
        let (grip, screw) = (candidate.grip, candidate.screw);
        let wanted = grip.max + self.nut.height().max + self.least_protrusion() + tolerance;
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
