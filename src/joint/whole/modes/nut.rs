//! What keeps nut or screw where it is.

use crate::error::Error;
use crate::joint::NutOption;
use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, JointPreload, Need};
use crate::strength::check::{Mode, Place};

/// What speaks for and against the nut in this environment.
pub(super) fn check(
    case: &Case,
    preload: Option<&JointPreload>,
    out: &mut Outcomes,
) -> Result<Option<NutOption>, Error> {
    const MODE: Mode = Mode::Locking;
    let _ = preload;
    let environment = &case.joint.environment;
    out.in_order(MODE);
    let Some(nut) = case.nut() else {
        if environment.vibration || environment.rotates || environment.dangerous_if_lost {
            out.missing(MODE, Place::TappedPart, Need::ScrewLock);
        }
        return Ok(None);
    };
    let own = NutOption::of(nut.given.style, case.thread, environment)?;
    for reason in &own.reasons {
        out.find(Finding::Nut(*reason));
    }
    Ok(Some(own))
}
