//! The length: shear planes on shank, a nut that clamps, protrusion, washers, cut.

use crate::joint::whole::Finding;
use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::parts::Zone;
use crate::strength::check::Mode;

pub(super) fn check(case: &Case, out: &mut Outcomes) {
    let candidate = &case.candidate;
    for reason in candidate.reasons() {
        out.find(Finding::Length(*reason));
    }
    for plane in case.planes.iter().filter(|plane| plane.zone != Zone::Shank) {
        out.find(Finding::PlaneInThread {
            after_ply: plane.after_ply,
        });
    }
    if candidate.washers_added_under_head > 0 {
        out.find(Finding::AddWashersUnderHead {
            count: candidate.washers_added_under_head,
        });
    }
    if candidate.washers_added > 0 {
        out.find(Finding::AddWashers {
            count: candidate.washers_added,
        });
    }
    if candidate.needs_cut {
        let to = candidate.cut.filter(|cut| cut.holds_window);
        out.find(Finding::Cut {
            to: to.map(|cut| cut.length),
        });
    }
    out.in_order(Mode::Length);
}
