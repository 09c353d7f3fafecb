//! Plates that bend out of their plane: between an edge that presses and the bolts, and between what is fixed to them and bolts
//! that are pulled.
//!
//! What tilts as a rigid body is straight, and what does not pry is stiff. No method here has the bending of such plates:
//! beyond a part of its yield nothing is said.

use alloc::vec::Vec;
use core::ops::Range;

use super::strip::{Strip, are_stiff, front};
use super::{Own, Told};
use crate::connection::forces::Edge;
use crate::connection::outline::{Outline, Vector, dot};
use crate::connection::{BoltLoad, Connection};
use crate::joint::{Need, PlyFacts};
use crate::strength::check::{Mode, Place};

/// Part of its yield at which a plate may be taken for straight: common practice, no source.
const STRAIGHT: f64 = 0.6;
/// Just beside a corner, where the plate is as wide as there, in metres.
const NEXT_TO: f64 = 1e-5;

/// What is not known of a plate whose edge presses, and of the parts that it presses on.
pub(super) fn at_edge(
    connection: &Connection,
    own: &Own,
    edge: &Edge,
    told: &mut Vec<(Place, Vec<Told>)>,
) {
    let is_own = |facts: &&PlyFacts| facts.name.as_deref() == Some(&edge.ply);
    let parts = parts(connection).into_iter();
    let others = parts.map(|part| bearing(own, part));
    let others = others.filter(|part: &Vec<&PlyFacts>| !part.iter().any(is_own));
    let tilted: Vec<&PlyFacts> = own.plies.iter().filter(is_own).collect();
    for plies in core::iter::once(tilted).chain(others) {
        told.extend(of_part(&plies, |facts| {
            pressed(connection, own, edge, facts, is_own(&facts))
        }));
    }
}

/// What is told of a part: nothing if one of its plies lacks nothing, for that bears for all.
fn of_part(
    plies: &[&PlyFacts],
    lacks: impl Fn(&PlyFacts) -> Option<(Mode, Need)>,
) -> Option<(Place, Vec<Told>)> {
    let mut first = None;
    for facts in plies {
        let (mode, need) = lacks(facts)?;
        first.get_or_insert_with(|| (facts.place, alloc::vec![Told::Missing(mode, need)]));
    }
    first
}

/// What keeps a ply from being taken for straight where an edge presses it.
fn pressed(
    connection: &Connection,
    own: &Own,
    edge: &Edge,
    facts: &PlyFacts,
    is_tilted: bool,
) -> Option<(Mode, Need)> {
    // The plate of one bolt is shown to be stiff by the word of the caller, as far as nobody says what is fixed to it.
    let is_asked = own.places.len() > 1;
    let name = facts.name.as_deref();
    let Some(plate) = name.and_then(|name| connection.plate_of(name)) else {
        return is_asked.then_some((Mode::Prying, Need::Outline));
    };
    let bears = match bears(facts) {
        Ok(bears) => bears,
        Err(need) => return Some((Mode::GrossSection, need)),
    };
    let tilted = connection.plate_of(&edge.ply)?;
    let level = tilted.outline.levels(edge.up).fold(f64::INFINITY, f64::min);
    let factor = connection.joint.load_factor(connection.joint.methods.level);
    let to_bolts = || {
        let up = |at: &Vector| dot(*at, edge.up);
        let nearest = own.places.iter().min_by(|a, b| up(a).total_cmp(&up(b)))?;
        let (from, to) = plate.outline.cut(*nearest, edge.up)?;
        let moment = factor * edge.force.value * (up(nearest) - level);
        Some(moment <= bears * (to - from))
    };
    let is_straight = match &plate.footprint {
        None => true,
        Some(footprint) => is_straight_to(footprint, &plate.outline, edge, level, (factor, bears)),
    };
    if !is_straight || is_tilted && to_bolts() != Some(true) {
        return Some((
            Mode::GrossSection,
            Need::Method(
                "the edge that presses bends the plate out of its plane by more than it takes to yield, or nearly: no method here \
                 has that",
            ),
        ));
    }
    let is_unknown = plate.footprint.is_none() && is_asked;
    is_unknown.then_some((Mode::Prying, Need::Footprint))
}

/// Whether a plate stays straight between an edge that presses it at a level and what is fixed to it: past bolts that carry
/// nothing there, and over no more width than spreads at 45 degrees. A press beside the moment comes to the edge, too,
/// where both meet beyond what is fixed.
fn is_straight_to(
    footprint: &Outline,
    outline: &Outline,
    edge: &Edge,
    level: f64,
    (factor, bears): (f64, f64),
) -> bool {
    let corners = footprint.corners().iter();
    let corners = corners.map(|corner| (corner.x.value, corner.y.value));
    let up = |at: &Vector| dot(*at, edge.up);
    let lowest = corners.clone().min_by(|a, b| up(a).total_cmp(&up(b)));
    let highest = corners.max_by(|a, b| up(a).total_cmp(&up(b)));
    let (Some(lowest), Some(highest)) = (lowest, highest) else {
        return false;
    };
    let (foot, way) = if up(&lowest) > level {
        (lowest, edge.up)
    } else if up(&highest) < level {
        (highest, (-edge.up.0, -edge.up.1))
    } else {
        return true;
    };
    let arm = (up(&foot) - level).abs();
    let (left, right) = front(footprint, foot, way);
    let beside = edge.pressed.filter(|(_, meets)| *meets < up(&lowest));
    let force = edge.force.value + beside.map_or(0.0, |(press, _)| press.value);
    let (from, to) = (level.min(up(&foot)), level.max(up(&foot)));
    let corners = outline.levels(edge.up);
    let corners = corners.flat_map(|corner| [corner - NEXT_TO, corner + NEXT_TO]);
    let between = corners.filter(|corner| *corner > from && *corner < to);
    between.chain([up(&foot)]).all(|at| {
        let through = (at * edge.up.0, at * edge.up.1);
        let cut = outline.cut(through, edge.up);
        cut.is_some_and(|(from, to)| {
            let width = (to - from).min(left + right + 2.0 * arm);
            factor * force * (at - level).abs() <= bears * width
        })
    })
}

/// What is not known of plates between what is fixed to them and bolts that are pulled. Of a part of several plies the one
/// that bears most counts, as if the others were packing. A tapped part is taken for a stiff one. Of the plate of one bolt the
/// caller may say that it is stiff, unless what is fixed to it is said.
pub(super) fn between(
    connection: &Connection,
    own: &Own,
    loads: &[BoltLoad],
    told: &mut Vec<(Place, Vec<Told>)>,
) {
    let pulled = loads.iter().any(|load| load.along.value > 0.0);
    if !pulled {
        return;
    }
    for part in parts(connection) {
        told.extend(of_part(&bearing(own, part), |facts| {
            bends(connection, own, loads, facts).map(|need| (Mode::Prying, need))
        }));
    }
}

/// The plies between faces where the parts come apart, without a part that has a thread. Where no face is said it may be
/// any, and the outermost plies are all that surely belongs to a part.
fn parts(connection: &Connection) -> Vec<Range<usize>> {
    let stack = &connection.joint.stack;
    let count = stack.plies().len();
    let tapped = stack.tapped_part().is_some();
    let mut faces = stack.shear_planes().to_vec();
    if faces.is_empty() {
        let last = count.saturating_sub(1);
        let outermost = [Some(0..1), (!tapped).then_some(last..count)];
        return outermost.into_iter().flatten().collect();
    }
    faces.sort_unstable();
    let starts = core::iter::once(0).chain(faces.iter().copied());
    let end = (!tapped).then_some(count);
    let ends = faces.iter().copied().chain(end);
    let parts = starts.zip(ends).map(|(from, to)| from..to);
    parts.filter(|part| !part.is_empty()).collect()
}

/// The plies of a part that can bear for all: packing does not, where others pull.
fn bearing(own: &Own, part: Range<usize>) -> Vec<&PlyFacts> {
    let plies = own.plies.get(part).unwrap_or_default();
    let some = plies.iter().any(|facts| facts.pull != 0.0);
    plies
        .iter()
        .filter(|facts| !some || facts.pull != 0.0)
        .collect()
}

/// What keeps a ply from being taken for stiff.
fn bends(connection: &Connection, own: &Own, loads: &[BoltLoad], facts: &PlyFacts) -> Option<Need> {
    let name = facts.name.as_deref();
    let prying = connection.prying.as_ref();
    let pries = prying.is_some_and(|flange| Some(flange.ply.as_str()) == name);
    let plate = name.and_then(|name| connection.plate_of(name));
    let footprint = plate.and_then(|plate| plate.footprint.as_ref());
    if own.places.len() < 2 && footprint.is_none() {
        return None;
    }
    let Some(plate) = plate else {
        return Some(Need::Outline);
    };
    if pries {
        return None;
    }
    let Some(footprint) = footprint else {
        return Some(Need::Footprint);
    };
    let bears = match bears(facts) {
        Ok(bears) => bears,
        Err(need) => return Some(need),
    };
    let factor = connection.joint.load_factor(connection.joint.methods.level);
    let bolts = own.places.iter().zip(loads).enumerate();
    let strips = bolts.filter_map(|(n, (at, load))| {
        // Where the preload holds what a moment presses together, the plate brings that too.
        let force = factor * load.along.value.abs();
        let apart = own.apart().get(n).copied().unwrap_or(f64::INFINITY);
        let room = plate.outline.nearest_at_all(*at).min(0.5 * apart);
        Strip::new(&plate.outline, footprint, *at, room, force)
    });
    let strips: Vec<Strip> = strips.collect();
    if are_stiff(&strips, bears) {
        return None;
    }
    Some(Need::Method(
        "between the bolts and what is fixed to it the pull bends the plate by more than it takes to yield, or nearly, and it is no \
         stiff one: give it as a flange that pries, or set this aside with what shows that it holds",
    ))
}

/// The moment of a strip of the ply that leaves it straight, by its width.
fn bears(facts: &PlyFacts) -> Result<f64, Need> {
    if facts.is_timber {
        return Err(Need::Method(
            "a ply of timber is bent across its plane: no method here has that",
        ));
    }
    match (facts.thickness, facts.yields) {
        (Some(thickness), Some(yields)) => {
            Ok(STRAIGHT * yields.value * thickness.value * thickness.value / 6.0)
        }
        (_, None) if facts.has_material => Err(Need::YieldStrength),
        (_, None) => Err(Need::Material),
        (None, _) => Err(Need::Method(
            "plates of a tapped part, or around a sleeve, are not known here",
        )),
    }
}

#[cfg(test)]
mod tests;
