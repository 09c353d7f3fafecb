//! Plates that bend out of their plane: between an edge that presses and the bolts, and between what is fixed to them and bolts
//! that are pulled.
//!
//! What tilts as a rigid body is straight, and what does not pry is stiff. No method here has the bending of such plates:
//! beyond a part of its yield nothing is said.

use alloc::vec::Vec;
use core::ops::Range;

use super::{Own, Told};
use crate::connection::forces::Edge;
use crate::connection::outline::{Outline, Vector, dot, turned, unit};
use crate::connection::{BoltLoad, Connection};
use crate::joint::{Need, PlyFacts};
use crate::math::hypot;
use crate::strength::check::{Mode, Place};

/// Part of its yield at which a plate may be taken for straight: common practice, no source.
const STRAIGHT: f64 = 0.6;

/// What is not known of a plate whose edge presses. The part that is fixed to it may lie farther from the edge than the
/// bolts next to it, but hardly nearer.
pub(super) fn at_edge(
    connection: &Connection,
    own: &Own,
    edge: &Edge,
    told: &mut Vec<(Place, Vec<Told>)>,
) {
    const MODE: Mode = Mode::GrossSection;
    let named = |facts: &&PlyFacts| facts.name.as_deref() == Some(&edge.ply);
    let Some(facts) = own.plies.iter().find(named) else {
        return;
    };
    let plate = connection.plates.iter().find(|plate| plate.ply == edge.ply);
    let up = |at: &Vector| dot(*at, edge.up);
    let nearest = own.places.iter().min_by(|a, b| up(a).total_cmp(&up(b)));
    let (Some(plate), Some(nearest)) = (plate, nearest) else {
        return;
    };
    let need = match bears(facts) {
        Err(need) => need,
        Ok(bears) => {
            let corners = plate.outline.levels(edge.up);
            let arm = up(nearest) - corners.fold(f64::INFINITY, f64::min);
            let factor = connection.joint.load_factor(connection.joint.methods.level);
            let moment = factor * edge.force.value * arm;
            let width = plate.outline.cut(*nearest, edge.up);
            if width.is_some_and(|(from, to)| moment <= bears * (to - from)) {
                return;
            }
            Need::Method(
                "the edge that presses bends the plate out of its plane by more than it takes to yield, or nearly: no method here \
                 has that",
            )
        }
    };
    told.push((facts.place, alloc::vec![Told::Missing(MODE, need)]));
}

/// What is not known of plates between what is fixed to them and bolts that are pulled. Of a part of several plies the one
/// that bears most counts, as if the others were packing. A tapped part is taken for a stiff one.
pub(super) fn between(
    connection: &Connection,
    own: &Own,
    loads: &[BoltLoad],
    told: &mut Vec<(Place, Vec<Told>)>,
) {
    const MODE: Mode = Mode::Prying;
    let pulled = loads.iter().any(|load| load.along.value > 0.0);
    if !pulled || own.places.len() < 2 {
        return;
    }
    for part in parts(connection) {
        let plies = own.plies.get(part).unwrap_or_default();
        let mut needs = plies
            .iter()
            .filter_map(|facts| Some((facts, bends(connection, own, loads, facts)?)));
        if needs.clone().count() < plies.len() {
            continue;
        }
        if let Some((facts, need)) = needs.next() {
            told.push((facts.place, alloc::vec![Told::Missing(MODE, need)]));
        }
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

/// What keeps a ply from being taken for stiff.
fn bends(connection: &Connection, own: &Own, loads: &[BoltLoad], facts: &PlyFacts) -> Option<Need> {
    let name = facts.name.as_deref();
    let prying = connection.prying.as_ref();
    if prying.is_some_and(|flange| Some(flange.ply.as_str()) == name) {
        return None;
    }
    let plate = connection
        .plates
        .iter()
        .find(|plate| Some(plate.ply.as_str()) == name);
    let Some(plate) = plate else {
        return Some(Need::Outline);
    };
    let Some(footprint) = &plate.footprint else {
        return Some(Need::Footprint);
    };
    let bears = match bears(facts) {
        Ok(bears) => bears,
        Err(need) => return Some(need),
    };
    let factor = connection.joint.load_factor(connection.joint.methods.level);
    let stiff = own
        .places
        .iter()
        .zip(loads)
        .enumerate()
        .all(|(n, (at, load))| {
            // Where the preload holds what a moment presses together, the plate brings that too.
            let force = factor * load.along.value.abs();
            let others = own.places.iter().enumerate().filter(|(m, _)| *m != n);
            let apart = others.map(|(_, other)| hypot(other.0 - at.0, other.1 - at.1));
            let apart = apart.fold(f64::INFINITY, f64::min);
            let room = plate.outline.nearest_at_all(*at).min(0.5 * apart);
            let (arm, width) = spread(footprint, *at, room);
            force * arm <= bears * width
        });
    if stiff {
        return None;
    }
    Some(Need::Method(
        "between the bolts and what is fixed to it the pull bends the plate by more than it takes to yield, or nearly, and it is no \
         stiff one: give it as a flange that pries, or set this aside with what shows that it holds",
    ))
}

/// How far it is from a bolt to what is fixed to the plate, and over which width its force comes there: at 45 degrees, no
/// farther than there is room beside the bolt, nor than what is fixed reaches.
fn spread(footprint: &Outline, at: Vector, room: f64) -> (f64, f64) {
    let foot = footprint.nearest_point(at);
    let arm = hypot(foot.0 - at.0, foot.1 - at.1);
    let Some(way) = unit((foot.0 - at.0, foot.1 - at.1)) else {
        return (0.0, 0.0);
    };
    let half = arm.min(room);
    let across = turned(way);
    let middle = dot(foot, across);
    let reach = footprint.levels(across).map(|level| level - middle);
    let (low, high) = reach.fold((0.0_f64, 0.0_f64), |(low, high), level| {
        (low.min(level), high.max(level))
    });
    (arm, half.min(-low) + half.min(high))
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
