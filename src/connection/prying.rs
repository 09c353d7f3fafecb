//! What a flange that bends adds to the load along a bolt.

use alloc::vec::Vec;

use super::modes::{axis, levels};
use super::outline::{Vector, turned};
use super::{Connection, PlatePrying};
use crate::error::{Allowed, Error, out_of_range};
use crate::joint::{Joint, JointLoad, Verdict};
use crate::strength::check::{Check, Level, Mode};
use crate::tables::methods;
use crate::tension::{AiscBasis, AiscFlange};
use crate::units::{Force, Length, from_base};

/// A bolt with its prying force.
pub(super) struct Pried {
    /// The load along the bolt with the prying force in it, in service.
    pub(super) along: Force,
    /// Flange and bolt together.
    pub(super) check: Check,
}

/// Refuses a flange that is not the one of the method: bolts in two lines alike with the stem midway between them, and no more
/// flange for each than there is.
pub(super) fn fits(connection: &Connection, flange: &PlatePrying) -> Result<(), Error> {
    let bolts = connection.bolts.bolts().iter();
    let places: Vec<Vector> = bolts.map(|own| (own.x.value, own.y.value)).collect();
    let plate = connection.plates.iter().find(|own| own.ply == flange.ply);
    let most = |along: Vector| -> Option<f64> {
        let rows = levels(&places, along);
        let lines = levels(&places, turned(along)).len();
        if lines != 2 || rows.len() * lines != places.len() {
            return None;
        }
        let gaps = rows.iter().zip(rows.iter().skip(1)).map(|(a, b)| b - a);
        let apart = gaps.reduce(f64::max).unwrap_or(f64::INFINITY);
        let whole = plate.map_or(f64::INFINITY, |plate| {
            let ends = plate.outline.levels(along);
            let (least, most) = ends.fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), end| {
                (a.min(end), b.max(end))
            });
            // At most 500: exact.
            #[allow(clippy::cast_precision_loss)]
            let count = rows.len() as f64;
            (most - least) / count
        });
        Some(apart.min(whole))
    };
    let found = axis(&places).map(|axis| [most(axis), most(turned(axis))]);
    let most = found.into_iter().flatten().flatten().reduce(f64::max);
    let Some(most) = most else {
        return Err(Error::Mismatch(
            "prying is worked out here for bolts in two lines alike, with the stem midway between them: for others say in the \
             template whether the load has it in it"
                .into(),
        ));
    };
    if flange.tributary.value <= most * (1.0 + 1e-9) {
        return Ok(());
    }
    let most: Length = from_base(most);
    let allowed = Allowed::AtMost(most.into());
    Err(out_of_range(
        "length of flange that belongs to one bolt",
        flange.tributary,
        allowed,
    ))
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
