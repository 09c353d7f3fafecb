//! The bolt in timber.

use crate::joint::whole::NotConcerned;
use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::strength::check::Mode;

pub(super) fn check(case: &Case, out: &mut Outcomes) {
    if !case.has_timber() {
        out.not_concerned(Mode::TimberYield, NotConcerned::NoTimber);
    }
}
