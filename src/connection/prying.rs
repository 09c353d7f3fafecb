//! What a flange that bends adds to the load along a bolt.

use alloc::{format, vec::Vec};

use super::modes::{axis, levels};
use super::outline::{Outline, Vector, dot, turned};
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

/// What a flange has room for, with its stem along a direction.
struct Room {
    tributary: f64,
    /// Less than this lies between a line of bolts and the stem midway.
    to_stem: f64,
    /// None without an outline.
    to_edge: Option<f64>,
}

/// Refuses a flange that is not the one of the method: bolts in two lines alike with the stem midway between them, and no
/// longer distances than pattern and outline leave. A shorter one to the edge is on the safe side.
pub(super) fn fits(connection: &Connection, flange: &PlatePrying) -> Result<(), Error> {
    let bolts = connection.bolts.bolts().iter();
    let places: Vec<Vector> = bolts.map(|own| (own.x.value, own.y.value)).collect();
    let plate = connection.plate_of(&flange.ply);
    let outline = plate.map(|plate| &plate.outline);
    let footprint = plate.and_then(|plate| plate.footprint.as_ref());
    let away = places.iter();
    let away = away.filter_map(|at| Some(footprint?.nearest_at_all(*at)));
    let away = away.fold(0.0, f64::max);
    if flange.to_stem.value < away * (1.0 - 1e-6) {
        let away: Length = from_base(away);
        return Err(out_of_range(
            "way from the bolts to the stem, by the outline of what is fixed to the flange",
            flange.to_stem,
            Allowed::AtLeast(away.into()),
        ));
    }
    let axis = axis(&places);
    let ways = axis.map(|axis| [axis, turned(axis)]);
    let ways = ways.into_iter().flatten();
    let rooms: Vec<Room> = ways
        .filter_map(|along| room(&places, outline, along))
        .collect();
    if rooms.is_empty() {
        return Err(Error::Mismatch(
            "prying is worked out here for bolts in two lines alike, with the stem midway between them: for others say in the \
             template whether the load has it in it"
                .into(),
        ));
    }
    let slack = 1.0 + 1e-9;
    let is_long = |room: &Room| flange.tributary.value <= room.tributary * slack;
    let is_wide = |room: &Room| {
        let edge = room.to_edge.unwrap_or(f64::INFINITY);
        flange.to_stem.value < room.to_stem && flange.to_edge.value <= edge * slack
    };
    if rooms.iter().any(|room| is_long(room) && is_wide(room)) {
        return Ok(());
    }
    if rooms.iter().any(is_long) {
        return Err(Error::Mismatch(format!(
            "the flange \"{}\" is said to reach farther from its bolts to its stem, or to its edge, than where they stand and \
             its outline leave: the stem is midway between their lines",
            flange.ply
        )));
    }
    let most = rooms.iter().map(|room| room.tributary);
    let most: Length = from_base(most.fold(0.0, f64::max));
    let allowed = Allowed::AtMost(most.into());
    Err(out_of_range(
        "length of flange that belongs to one bolt",
        flange.tributary,
        allowed,
    ))
}

/// None if the bolts do not stand in two lines along a direction.
fn room(places: &[Vector], outline: Option<&Outline>, along: Vector) -> Option<Room> {
    let across = turned(along);
    let rows = levels(places, along);
    let lines = levels(places, across);
    let [low, high] = lines.as_slice() else {
        return None;
    };
    if rows.len() * lines.len() != places.len() {
        return None;
    }
    let gaps = rows.iter().zip(rows.iter().skip(1)).map(|(a, b)| b - a);
    let apart = gaps.reduce(f64::max).unwrap_or(f64::INFINITY);
    // To each bolt belongs half the way to the next, and at the ends what is there.
    let back = (-along.0, -along.1);
    let end = |row: Option<&f64>, line: f64, way: Vector| {
        let row = *row?;
        let at = (
            row * along.0 + line * across.0,
            row * along.1 + line * across.1,
        );
        outline?.reach(at, way)
    };
    let share = |line: &f64| {
        let halves = rows.iter().zip(rows.iter().skip(1));
        let halves = halves.map(|(a, b)| Some(0.5 * (b - a)));
        let before = end(rows.first(), *line, back);
        let behind = end(rows.last(), *line, along);
        let before = core::iter::once(before).chain(halves.clone());
        let both = before.zip(halves.chain([behind]));
        let shares = both.filter_map(|(before, behind)| Some(before? + behind?));
        shares.fold(f64::INFINITY, f64::min)
    };
    let whole = lines.iter().map(share).fold(f64::INFINITY, f64::min);
    let middle = 0.5 * (low + high);
    let outward = |at: &Vector| {
        let sign = if dot(*at, across) < middle { -1.0 } else { 1.0 };
        (sign * across.0, sign * across.1)
    };
    let to_edge = outline.and_then(|outline| {
        let ways = places
            .iter()
            .filter_map(|at| outline.reach(*at, outward(at)));
        ways.reduce(f64::min)
    });
    Some(Room {
        tributary: apart.min(whole),
        to_stem: 0.5 * (high - low),
        to_edge,
    })
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

#[cfg(test)]
mod tests;
