//! All that is to be said of a screw that has been judged: reasons against it, and where it is cut.

use super::LengthSearch;
use super::judge::Judged;
use crate::joint::CutRule;
use crate::joint::candidate::{Candidate, Cut, Reason};
use crate::joint::stack::Added;
use crate::math::ceil;
use crate::parts::ScrewLength;
use crate::spread::Spread;
use crate::units::SAME_LENGTH;

impl LengthSearch<'_> {
    /// All that is to be said of a screw that has been judged.
    pub(super) fn told(&self, screw: ScrewLength, judged: &Judged) -> Candidate {
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
