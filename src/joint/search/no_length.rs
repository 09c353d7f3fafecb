//! Why no bolt of a thread will do, of whatever length.

use super::LengthSearch;
use crate::joint::CutRule;
use crate::joint::in_hand::Contradiction;
use crate::joint::stack::Added;
use crate::units::{Length, SAME_LENGTH};

impl LengthSearch<'_> {
    /// Why no bolt of the thread will do, with any permitted number of washers; none if one may.
    pub(in crate::joint) fn contradiction(&self) -> Option<Contradiction> {
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
}
