//! Which stock length: the search and its ranking.

use alloc::{format, vec::Vec};

use super::candidate::{Candidate, Cut, Reason, Selection};
use super::{CutRule, LengthRules, Stack};
use crate::error::{Error, positive};
use crate::math::ceil;
use crate::parts::{SAME_LENGTH, ScrewLength, ScrewSeries, Zone};
use crate::spread::{Spread, ordered};
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
/// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, thread)?;
/// # let nut = Nut::find(NutStyle::Iso4032, &thread)?.height()?;
/// # let rules = LengthRules::fabrication(UnitSystem::Si);
/// let search = LengthSearch::new(&stack, &screws, nut, rules)?;
/// assert_eq!(search.run()?.best().unwrap().screw.nominal, millimetres(55.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug)]
pub struct LengthSearch<'a> {
    stack: &'a Stack,
    screws: &'a ScrewSeries,
    nut_height: Spread<Length>,
    rules: LengthRules,
}

/// One screw with one number of washers: what the choice among the numbers needs.
pub(super) struct Trial {
    pub(super) added: usize,
    grip: Spread<Length>,
    jam_margin: Length,
    protrusion_min: Length,
    protrusion_max: Length,
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
    /// [`Error::OutOfRange`] for rules or a nut height that make no sense.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(10.0))).build()?;
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4017, "M10".parse()?)?;
    /// let flat = Spread::exact(millimetres(0.0));
    /// let rules = LengthRules::fabrication(UnitSystem::Si);
    /// assert!(LengthSearch::new(&stack, &screws, flat, rules).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn new(
        stack: &'a Stack,
        screws: &'a ScrewSeries,
        nut_height: Spread<Length>,
        rules: LengthRules,
    ) -> Result<Self, Error> {
        ordered("nut height", nut_height)?;
        positive("nut height", nut_height.min)?;
        Ok(Self {
            stack,
            screws,
            nut_height,
            rules: rules.checked()?,
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
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4017, thread)?;
    /// let nut = Nut::find(NutStyle::Iso4032, &thread)?;
    /// let rules = LengthRules {
    ///     protrusion_min: 1.0,
    ///     protrusion_max: None,
    ///     clear_threads_min: 1.0,
    ///     ..LengthRules::fabrication(UnitSystem::Si)
    /// };
    /// let selection = LengthSearch::new(&stack, &screws, nut.height()?, rules)?.run()?;
    /// assert_eq!(selection.best().unwrap().screw.nominal, millimetres(50.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn run(&self) -> Result<Selection, Error> {
        let mut candidates = Vec::with_capacity(40);
        for length in self.screws.stock_lengths() {
            candidates.push(self.candidate(self.screws.length(length)?));
        }
        if candidates.is_empty() {
            return Err(Error::NoValue {
                quantity: "list of stock lengths",
                subject: format!("{}", self.screws),
                reason: "none has been read at that size",
            });
        }
        candidates.sort_unstable_by(Candidate::compare);
        let accepted = candidates.partition_point(Candidate::fits);
        Ok(Selection {
            candidates,
            accepted,
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
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4014, thread)?;
    /// let nut = Nut::find(NutStyle::Iso4032, &thread)?.height()?;
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
            jam_margin: best.jam_margin,
            protrusion_min: best.protrusion_min,
            protrusion_max: best.protrusion_max,
            planes_on_shank: counts[Zone::Shank as usize],
            planes_in_run_out: counts[Zone::RunOut as usize],
            planes_in_thread: counts[Zone::Thread as usize],
            cut: None,
            reasons: [None; 3],
            rank: Candidate::rank(counts, &best),
        };
        if best.needs_cut {
            candidate.cut = self.cut(&candidate);
        }
        if !best.fits {
            candidate.reasons = self.reasons(&candidate, available);
        }
        candidate
    }

    fn pitch(&self) -> Length {
        self.screws.thread().pitch()
    }

    fn least_protrusion(&self) -> Length {
        self.rules.protrusion_min * self.pitch()
    }

    /// One screw with `added` more washers under the nut.
    fn trial(&self, screw: ScrewLength, added: usize) -> Trial {
        let grip = self.stack.grip_with(added);
        let jam_margin = grip.min - screw.grip_gaging_length_max;
        let protrusion_min = screw.min - grip.max - self.nut_height.max;
        let protrusion_max = screw.max - grip.min - self.nut_height.min;
        let too_short = protrusion_min < self.least_protrusion() - SAME_LENGTH;
        let clears = jam_margin >= self.rules.clear_threads_min * self.pitch() - SAME_LENGTH;
        let too_long = match self.rules.protrusion_max {
            Some(limit) => protrusion_max > limit * self.pitch() + SAME_LENGTH,
            None => false,
        };
        let may_cut = self.rules.cut != CutRule::Never;
        Trial {
            added,
            grip,
            jam_margin,
            protrusion_min,
            protrusion_max,
            too_short,
            fits: clears && !too_short && (!too_long || may_cut),
            needs_cut: too_long && may_cut,
        }
    }

    fn jam_reason(&self, candidate: &Candidate) -> Option<Reason> {
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
            .map(|(washer, _)| ceil((missing - SAME_LENGTH).value / washer.min.value) as u16);
        Some(if candidate.jam_margin < -SAME_LENGTH {
            Reason::NutJams {
                by: -candidate.jam_margin,
                washers_needed,
            }
        } else {
            Reason::TooFewClearThreads {
                by: missing,
                washers_needed,
            }
        })
    }

    /// All reasons why a candidate does not fit.
    fn reasons(&self, candidate: &Candidate, available: usize) -> [Option<Reason>; 3] {
        let short = self.least_protrusion() - candidate.protrusion_min;
        let too_short = (short > SAME_LENGTH).then_some(Reason::TooShort { by: short });
        let jam = self.jam_reason(candidate);
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
            ) if too_short.is_none() && usize::from(washers) <= available => {
                let grip = self
                    .stack
                    .grip_with(candidate.washers_added + usize::from(washers));
                let by = self.least_protrusion()
                    - (candidate.screw.min - grip.max - self.nut_height.max);
                (by > SAME_LENGTH).then_some(Reason::WashersMakeItShort { washers, by })
            }
            _ => None,
        };
        let too_long = match (self.rules.protrusion_max, self.rules.cut) {
            (Some(limit), CutRule::Never) => {
                let excess = candidate.protrusion_max - limit * self.pitch();
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

    /// The cut a candidate needs, if it sticks out too far and may be cut.
    fn cut(&self, candidate: &Candidate) -> Option<Cut> {
        let limit = self.rules.protrusion_max? * self.pitch();
        let CutRule::Allowed { tolerance, step } = self.rules.cut else {
            return None;
        };
        if candidate.protrusion_max <= limit + SAME_LENGTH {
            return None;
        }
        let (grip, nut) = (candidate.grip, self.nut_height);
        let wanted = grip.max + nut.max + self.least_protrusion() + tolerance;
        let on_step = ceil((wanted - SAME_LENGTH).value / step.value) * step;
        let nominal = candidate.screw.nominal;
        let (length, protrusion_min, protrusion_max) = if on_step < nominal - SAME_LENGTH {
            (
                on_step,
                on_step - tolerance - grip.max - nut.max,
                on_step + tolerance - grip.min - nut.min,
            )
        } else {
            (nominal, candidate.protrusion_min, candidate.protrusion_max)
        };
        Some(Cut {
            length,
            removed: nominal - length,
            thread_left: length - candidate.screw.grip_gaging_length_max,
            protrusion_min,
            protrusion_max,
            holds_window: protrusion_max <= limit + SAME_LENGTH,
        })
    }
}
