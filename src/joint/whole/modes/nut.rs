//! What keeps nut or screw where it is.

use crate::error::Error;
use crate::joint::whole::case::{Case, past_the_nut};
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need};
use crate::joint::{LeastProtrusion, NutOption, NutReason, ScrewLockReason, screw_locking};
use crate::material::Severity;
use crate::strength::check::{Mode, Place};

const MODE: Mode = Mode::Locking;
/// 14 CFR 25.607(a).
const SECOND_LOCK: &str =
    "two separate locks are wanted where its loss is dangerous, and one is described";

/// What speaks for and against the nut in this environment.
pub(super) fn check(
    case: &Case,
    faces_held: Option<bool>,
    out: &mut Outcomes,
) -> Result<Option<NutOption>, Error> {
    out.in_order(MODE);
    let Some(nut) = case.nut() else {
        screw(case, faces_held, out);
        return Ok(None);
    };
    let mut own = match nut.style() {
        Some(style) => NutOption::of(style, case.thread, &case.joint.environment)?,
        None => NutOption::of_own(nut.locking, case.thread, &case.joint.environment)?,
    };
    // What is preloaded and shown not to slip does not shake loose (Junker), and needs no lock (EN 1090-2, 8.2.1; AISC).
    if faces_held == Some(true) {
        own.reasons.retain(|reason| *reason != NutReason::SpinsFree);
    }
    for reason in &own.reasons {
        out.find(Finding::Nut(*reason));
        if *reason == NutReason::SecondLock {
            out.missing(MODE, Place::Nut, Need::Method(SECOND_LOCK));
        }
    }
    // A lock that the bolt does not fill locks nothing.
    if let Some(wanted) = LeastProtrusion::of(nut.locking) {
        let least = past_the_nut(case);
        if !wanted.is_met(least, case.thread) {
            out.find(Finding::LockNotFilled {
                protrusion: least,
                least: wanted.length(case.thread),
                source: wanted.source,
            });
        }
    }
    Ok(Some(own))
}

/// A screw in a tapped part.
fn screw(case: &Case, faces_held: Option<bool>, out: &mut Outcomes) {
    let lock = case.tapped().and_then(|part| part.lock);
    let place = Place::TappedPart;
    for reason in screw_locking(lock, &case.joint.environment, faces_held) {
        match reason {
            ScrewLockReason::NotDescribed => out.missing(MODE, place, Need::ScrewLock),
            reason if reason.severity() == Severity::Undecided => {
                let why = "preload alone holds the screw, and it is not shown that the faces do not slip: ask for slip";
                out.missing(MODE, place, Need::Method(why));
            }
            reason => {
                out.find(Finding::ScrewLock(reason));
                if reason == ScrewLockReason::SecondLock {
                    out.missing(MODE, place, Need::Method(SECOND_LOCK));
                }
            }
        }
    }
}
