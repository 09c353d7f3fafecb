//! Which number of washers serves a screw best, and where it stands among the others.

use super::LengthSearch;
use crate::joint::CutRule;
use crate::joint::ranking::{Merits, Rank};
use crate::joint::stack::Added;
use crate::parts::{ScrewLength, Zone};
use crate::spread::Spread;
use crate::units::{Length, SAME_LENGTH};

/// One screw with one number of washers: what the choice among the numbers needs.
pub(super) struct Trial {
    pub(super) added: Added,
    pub(super) grip: Spread<Length>,
    pub(super) jam_margin: Length,
    pub(super) protrusion: Spread<Length>,
    pub(super) too_short: bool,
    pub(super) fits: bool,
    pub(super) needs_cut: bool,
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
pub(super) struct ZoneCounts {
    pub(super) on_shank: usize,
    pub(super) in_run_out: usize,
    pub(super) in_thread: usize,
}

/// One screw with its best number of washers.
pub(super) struct Judged {
    pub(super) best: Trial,
    pub(super) zones: ZoneCounts,
    pub(super) rank: Rank,
}

impl LengthSearch<'_> {
    /// The best number of washers for one screw.
    pub(super) fn judged(&self, screw: &ScrewLength) -> Judged {
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

    /// The shear planes by zone, with so many washers added under the head.
    pub(super) fn zones(&self, screw: &ScrewLength, under_head: usize) -> ZoneCounts {
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

    /// Bolt length beyond the nut. Thick plies and a high nut leave least of a short bolt.
    pub(super) fn protrusion(
        &self,
        length: Spread<Length>,
        grip: Spread<Length>,
    ) -> Spread<Length> {
        length.less(grip).less(self.nut.height())
    }

    /// What the end of the bolt must reach beyond the nut, at least and at most.
    pub(super) fn window(&self) -> (Length, Option<Length>) {
        self.nut.window(&self.rules, self.pitch)
    }

    /// How much more thread lies in the holes than the rules permit; zero or less where it is little enough.
    pub(super) fn thread_in_holes(&self, screw: &ScrewLength, under_head: usize) -> Option<Length> {
        let most = self.rules.thread_in_holes_max_pitches? * self.pitch();
        let end = self.stack.holes_end().max + self.stack.head_washers(under_head).max;
        Some(end - screw.body_length_min - most)
    }

    /// One screw with more washers.
    pub(super) fn trial(&self, screw: &ScrewLength, added: Added) -> Trial {
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
}
