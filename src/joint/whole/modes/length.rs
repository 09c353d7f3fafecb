//! The length: shear planes on shank, a nut that clamps, protrusion, washers, cut.

use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need};
use crate::parts::{ScrewProduct, Zone};
use crate::strength::check::{Mode, Place};
use crate::strength::ply::PlyMethod;

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
    clear_threads(case, out);
    if case.tapped().is_some_and(|part| part.hole.is_none()) {
        out.missing(Mode::Length, Place::TappedPart, Need::TappedHole);
    }
    out.in_order(Mode::Length);
}

/// EN 1090-2, 8.2.2 (2008, a scan of the page): full threads that stay clear between nut and shank, one of a bolt that is
/// not preloaded and four of one that is. Sets of EN 14399-4 have a table of clamp lengths instead, which is not here.
fn clear_threads(case: &Case, out: &mut Outcomes) {
    // A pin that turns clamps nothing.
    let clamps = case.nut().is_some() && !case.joint.environment.rotates;
    if case.joint.methods.plies != PlyMethod::En1993 || !clamps || case.has_timber() {
        return;
    }
    let preloaded = case.torque().is_some();
    if preloaded && case.joint.bolt.product == ScrewProduct::En14399_4 {
        let why = "EN 1090-2 has a table of clamp lengths for preloaded bolts of EN 14399-4, which was not read";
        out.missing(Mode::Length, Place::Bolt(1), Need::Method(why));
        return;
    }
    let least = if preloaded { 4.0 } else { 1.0 };
    let found = case.candidate.clear_threads;
    if found < least {
        out.find(Finding::ClearThreads { found, least });
    }
}
