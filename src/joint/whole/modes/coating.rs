//! What coatings do: hydrogen in hard bolts, threads that do not fit, galling, and whether the bolt may be used again.

use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need, NotConcerned};
use crate::joint::{galling, reuse};
use crate::material::{CoatedFit, Hydrogen, Severity, coated_fit, hydrogen};
use crate::strength::check::{Mode, Place};

pub(super) fn check(case: &Case, out: &mut Outcomes) {
    brittle(case, out);
    fit(case, out);
    seizing(case, out);
    again(case, out);
}

/// Whether hydrogen may have made the bolt brittle.
fn brittle(case: &Case, out: &mut Outcomes) {
    const MODE: Mode = Mode::Coating;
    out.in_order(MODE);
    for found in hydrogen(&case.strength, case.joint.bolt.finish) {
        match (found, found.severity()) {
            (Hydrogen::FinishUnknown, _) => {
                out.missing(MODE, Place::Bolt(1), Need::BoltFinish);
            }
            (_, Severity::Undecided) => {
                let why = "no greatest hardness of the grade has been read";
                out.missing(MODE, Place::Bolt(1), Need::Method(why));
            }
            _ => out.find(Finding::Hydrogen(found)),
        }
    }
}

/// Whether the nut goes on the bolt, and holds.
fn fit(case: &Case, out: &mut Outcomes) {
    const MODE: Mode = Mode::ThreadFit;
    let Some(nut) = case.nut() else {
        out.not_concerned(MODE, NotConcerned::NoNut);
        return;
    };
    out.in_order(MODE);
    let bolt = case.joint.bolt.finish;
    if bolt.is_none() {
        out.missing(MODE, Place::Bolt(1), Need::BoltFinish);
    }
    if nut.given.finish.is_none() {
        out.missing(MODE, Place::Nut, Need::NutFinish);
    }
    let (Some(bolt), Some(finish)) = (bolt, nut.given.finish) else {
        return;
    };
    let found = coated_fit(bolt, nut.given.grade, finish, case.thread);
    match out.attempt(MODE, Place::Nut, found) {
        Some(CoatedFit::NotFit { why }) => out.find(Finding::ThreadsDoNotFit { why }),
        Some(CoatedFit::Fits {
            note: Some(note), ..
        }) => {
            if note.severity() >= Severity::Undecided {
                out.missing(MODE, Place::Nut, Need::Fit(note));
            } else {
                out.find(Finding::Fit(note));
            }
        }
        _ => {}
    }
}

/// Whether the threads seize while they are turned: no standard has a number, so it is told and no more.
fn seizing(case: &Case, out: &mut Outcomes) {
    const MODE: Mode = Mode::Galling;
    let Some(nut) = case.nut() else {
        out.not_concerned(MODE, NotConcerned::NoNut);
        return;
    };
    let bolt = (case.joint.bolt.grade, case.joint.bolt.finish);
    match galling(bolt, (nut.given.grade, nut.given.finish), None) {
        Some(found) => {
            out.find(Finding::Galling(found));
            out.in_order(MODE);
        }
        None => out.not_concerned(MODE, NotConcerned::NoGalling),
    }
}

/// Whether it may be taken apart and put together again.
fn again(case: &Case, out: &mut Outcomes) {
    const MODE: Mode = Mode::Reuse;
    if case.joint.environment.refits == 0 {
        out.not_concerned(MODE, NotConcerned::NeverRefitted);
        return;
    }
    out.in_order(MODE);
    let target = case.torque().map(|torque| torque.target);
    let found = reuse(case.joint.bolt.grade, case.joint.bolt.finish, target);
    match found {
        crate::joint::Reuse::FinishUnknown => {
            out.missing(MODE, Place::Bolt(1), Need::BoltFinish);
        }
        // Nothing is known for or against it: common practice lets such bolts be used again.
        found => out.find(Finding::Reuse(found)),
    }
}
