//! What stands around one bolt: distances to edges and other holes in the way of its force.

use alloc::vec::Vec;

use super::modes::BESIDE;
use super::outline::{Vector, dot, metres, turned, unit};
use super::{BoltLoad, Connection};
use crate::error::Error;
use crate::joint::{Joint, JointPly, Member};
use crate::math::{atan, hypot};
use crate::units::{Angle, Length, degrees, from_base};

/// One bolt as a joint of its own, and what stands around it; nothing does where it is the only one.
pub(super) fn joint_of(
    connection: &Connection,
    bolt: usize,
    load: &BoltLoad,
) -> Result<(Joint, Option<Member>), Error> {
    let bolts = connection.bolts.bolts();
    let places: Vec<Vector> = bolts.iter().map(|own| (own.x.value, own.y.value)).collect();
    let Some(&at) = places.get(bolt) else {
        return Err(Error::Mismatch(alloc::format!(
            "there is no bolt {}",
            bolt.saturating_add(1)
        )));
    };
    let loaded = unit((load.x.value, load.y.value));
    let direction = loaded.unwrap_or((1.0, 0.0));
    let diameter = connection.joint.bolt.thread.nominal_diameter();
    let [mut pitch, mut gauge] = neighbours(&places, bolt, direction);
    if loaded.is_none() {
        // Without a load across there is no end and no side: the nearest holds for both.
        let nearest = pitch.into_iter().chain(gauge).reduce(f64::min);
        (pitch, gauge) = (nearest, None);
    }
    let set = |ply: &mut JointPly| {
        ply.pitch = pitch.map(metres);
        ply.gauge = gauge.map(metres);
        let plate = connection.plate_of(&ply.name);
        if ply.timber.is_some() {
            // The angle in the template is that to one load; here every bolt may have its own.
            let grain = plate.and_then(|plate| plate.grain);
            ply.grain_angle = grain.zip(loaded).map(|(grain, load)| between(grain, load));
        }
        let Some(plate) = plate else {
            return;
        };
        let near = |direction| plate.outline.nearest(at, direction).map(metres);
        if loaded.is_some() {
            ply.end_distance = near(direction);
            ply.edge_distance = near(turned(direction));
        } else {
            let nearest = Some(metres(plate.outline.nearest_at_all(at)));
            (ply.end_distance, ply.edge_distance) = (nearest, nearest);
        }
        if places.len() == 1 {
            let cut = plate.outline.cut(at, direction);
            let hole = ply.hole.map_or(diameter, |hole| hole.max(diameter));
            let (beside, middle) = (BESIDE * hole.value, dot(at, turned(direction)));
            ply.width =
                cut.map(|(from, to)| metres(to.min(middle + beside) - from.max(middle - beside)));
        }
    };
    let joint = Joint {
        stack: connection.joint.stack.to_builder().each_ply(set).build()?,
        ..connection.joint.clone()
    };
    let several = places.len() > 1;
    Ok((joint, several.then(|| member(&places, direction, diameter))))
}

/// The nearest other hole along a direction, either way, and across it; one at 45 degrees counts as both.
fn neighbours(places: &[Vector], bolt: usize, direction: Vector) -> [Option<f64>; 2] {
    let across = turned(direction);
    let mut nearest = [None; 2];
    let Some(at) = places.get(bolt) else {
        return nearest;
    };
    for (n, other) in places.iter().enumerate() {
        if n == bolt {
            continue;
        }
        let offset = (other.0 - at.0, other.1 - at.1);
        let (u, v) = (dot(offset, direction).abs(), dot(offset, across).abs());
        let away = hypot(u, v);
        let slack = 1e-9 * away;
        let [pitch, gauge] = &mut nearest;
        for (is_there, slot) in [(u >= v - slack, pitch), (v >= u - slack, gauge)] {
            if is_there {
                *slot = Some(slot.map_or(away, |own: f64| own.min(away)));
            }
        }
    }
    nearest
}

/// Lines of bolts along a direction, and how long the joint is in it. Lines nearer than half a bolt are one.
fn member(places: &[Vector], direction: Vector, diameter: Length) -> Member {
    let across = turned(direction);
    let mut sides: Vec<f64> = places.iter().map(|place| dot(*place, across)).collect();
    sides.sort_by(f64::total_cmp);
    let (mut along, mut lines, mut count) = (1, 0, 0);
    let mut begun = f64::NEG_INFINITY;
    for side in sides {
        if side - begun > 0.5 * diameter.value {
            (begun, count) = (side, 0);
            lines += 1;
        }
        count += 1;
        along = along.max(count);
    }
    let ups = places.iter().map(|place| dot(*place, direction));
    let (least, most) = ups.fold((f64::INFINITY, f64::NEG_INFINITY), |(least, most), up| {
        (least.min(up), most.max(up))
    });
    Member {
        along,
        across: lines,
        length: metres(most - least),
    }
}

/// The angle between a grain and a load, from 0 to 90 degrees.
fn between(grain: Angle, load: Vector) -> Angle {
    let grain = (crate::math::cos(grain.value), crate::math::sin(grain.value));
    let along = dot(grain, load).abs();
    let across = dot(turned(grain), load).abs();
    if along <= 1e-12 {
        return degrees(90.0);
    }
    let angle: Angle = from_base(atan(across / along));
    angle.min(degrees(90.0))
}

#[cfg(test)]
mod tests;
