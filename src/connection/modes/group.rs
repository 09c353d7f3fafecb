//! What all bolts bear together under a load through their centroid, by EN 1993-1-8 3.7(1).

use alloc::vec::Vec;

use crate::connection::{BoltLoad, Connection};
use crate::joint::Verdict;
use crate::strength::check::{Check, Level, Mode};
use crate::strength::group::{FastenerResistance, en_1993_fastener_group};
use crate::strength::ply::PlyMethod;
use crate::strength::shear::ShearMethod;
use crate::units::Force;

/// What one bolt bears across its axis, in shear and in bearing, by the checks of its verdict.
pub(in crate::connection) fn fastener(
    connection: &Connection,
    load: &BoltLoad,
    verdict: &Verdict,
) -> Option<FastenerResistance> {
    let across = connection.joint.load_factor(Level::Design) * load.across;
    let bears = |mode: Mode| -> Option<Force> {
        let checks = verdict.checks.iter().filter(|check| check.mode == mode);
        let used = checks
            .map(|check| check.utilisation.value)
            .reduce(f64::max)?;
        (used > 0.0).then(|| across / used)
    };
    Some(FastenerResistance {
        shear: bears(Mode::BoltShear)?,
        bearing: bears(Mode::Bearing)?,
    })
}

/// The check of all of them; none where the clause is not of the methods, or not of the load.
pub(in crate::connection) fn check(
    connection: &Connection,
    loads: &[BoltLoad],
    turned: bool,
    fasteners: Vec<Option<FastenerResistance>>,
) -> Option<Check> {
    let methods = &connection.joint.methods;
    let of_code = methods.plies == PlyMethod::En1993
        && methods.shear == ShearMethod::En1993
        && methods.level == Level::Design;
    let pulled = loads.iter().any(|load| load.along > Force::default());
    if !of_code || turned || pulled || loads.len() < 2 {
        return None;
    }
    let fasteners: Option<Vec<FastenerResistance>> = fasteners.into_iter().collect();
    let factor = connection.joint.load_factor(Level::Design);
    let load = loads
        .iter()
        .fold(Force::default(), |sum, load| sum + load.across);
    let group = en_1993_fastener_group(&fasteners?).ok()?;
    group.check(factor * load).ok()
}

#[cfg(test)]
mod tests;
