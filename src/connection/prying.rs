//! What a flange that bends adds to the load along a bolt.

use super::{Connection, PlatePrying};
use crate::error::Error;
use crate::joint::{Joint, JointLoad, Verdict};
use crate::strength::check::{Check, Level, Mode};
use crate::tables::methods;
use crate::tension::{AiscBasis, AiscFlange};
use crate::units::Force;

/// A bolt with its prying force.
pub(super) struct Pried {
    /// The load along the bolt with the prying force in it, in service.
    pub(super) along: Force,
    /// Flange and bolt together.
    pub(super) check: Check,
}

/// The prying of one bolt. None if something that it needs is not known.
pub(super) fn pried(
    connection: &Connection,
    plate: &PlatePrying,
    joint: &Joint,
    load: &JointLoad,
    before: &Verdict,
) -> Result<Option<Pried>, Error> {
    let level = joint.methods.level;
    let basis = match level {
        Level::Design => AiscBasis::Lrfd,
        Level::Allowable => AiscBasis::Asd,
        Level::Nominal => return Ok(None),
    };
    let plies = connection.joint.ply_facts()?;
    let ply = plies
        .iter()
        .find(|ply| ply.name.as_deref() == Some(plate.ply.as_str()));
    let Some((ply, strength, hole, thickness)) =
        ply.and_then(|ply| Some((ply, ply.breaks?, ply.hole?, ply.thickness?)))
    else {
        return Ok(None);
    };
    // What the bolt bears along its axis beside this load across.
    let of_bolt = before
        .checks
        .iter()
        .filter(|check| check.level == level)
        .filter(|check| matches!(check.mode, Mode::BoltTension | Mode::Combined));
    let used = of_bolt
        .map(|check| check.utilisation.value)
        .reduce(f64::max);
    let has_code = before
        .checks
        .iter()
        .any(|check| check.mode == Mode::BoltTension);
    let Some(used) = used.filter(|used| *used > 0.0 && has_code) else {
        return Ok(None);
    };
    let factor = joint.load_factor(level);
    let pull = factor * load.along;
    let flange = AiscFlange::new(
        basis,
        strength,
        joint.bolt.thread.nominal_diameter(),
        hole,
        plate.tributary,
        plate.to_stem,
        plate.to_edge,
    )?;
    let found = flange.check(pull, pull / used, thickness)?;
    let method = methods::AISC_MANUAL_PART_9_BY_WORKED_EXAMPLE;
    let check = Check::new(
        Mode::Prying,
        ply.place,
        pull,
        found.available,
        level,
        method,
    )?;
    Ok(Some(Pried {
        along: found.bolt / factor,
        check: check.warned(found.cautions()),
    }))
}
