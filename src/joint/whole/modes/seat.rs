//! What head and nut sit on.

use super::tension::Tension;
use crate::joint::whole::NotConcerned;
use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::strength::check::Mode;

pub(super) fn check(case: &Case, tension: &Tension, out: &mut Outcomes) {
    let _ = (case, tension);
    for mode in [
        Mode::Washers,
        Mode::Pressure,
        Mode::PullThrough,
        Mode::Prying,
    ] {
        out.not_concerned(mode, NotConcerned::NoRule);
    }
}
