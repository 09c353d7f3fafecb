//! Whether the loads can be held against the resistances at all.

use crate::joint::whole::Need;
use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::strength::check::{Level, Mode, Place};
use crate::units::Force;

pub(super) fn check(case: &Case, out: &mut Outcomes) {
    let load = &case.joint.load;
    let loaded = load.across > Force::default() || load.along > Force::default();
    // Of several bolts some may go without: the connection has a load.
    if !loaded && case.torque().is_none() && case.member.is_none() {
        out.missing(Mode::Loads, Place::Joint, Need::Load);
    }
    if loaded && case.level == Level::Design && load.load_factor.is_none() {
        out.missing(Mode::Loads, Place::Joint, Need::LoadFactor);
    }
    if loaded && case.level == Level::Nominal {
        let why =
            "a nominal resistance has no safety in it: a load that just equals it is at the limit";
        out.missing(Mode::Loads, Place::Joint, Need::Method(why));
    }
    if load.across > Force::default() && case.planes.is_empty() {
        out.missing(Mode::Loads, Place::Joint, Need::ShearPlanes);
    }
    out.in_order(Mode::Loads);
}
