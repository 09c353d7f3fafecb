//! Strips of a plate between its bolts and what is fixed to it.

use alloc::vec::Vec;

use crate::connection::outline::{Outline, Vector, away, dot, turned, unit};
use crate::math::hypot;

/// Nearer than this a bolt stands at the edge of what is fixed.
const NO_ARM: f64 = 1e-9;
/// Slack for lines at just 45 degrees, and for sides that end where a strip does.
const SLACK: f64 = 1e-6;

/// The strip that brings the force of one bolt to what is fixed to the plate.
pub(super) struct Strip {
    foot: Vector,
    /// From the bolt to the foot.
    way: Vector,
    arm: f64,
    /// How far it reaches to both sides.
    left: f64,
    right: f64,
    force: f64,
}

impl Strip {
    /// Spread at 45 degrees, no farther than there is room beside the bolt, than the plate is wide all the way, and than
    /// what is fixed reaches. None where there is no arm.
    pub(super) fn new(
        plate: &Outline,
        footprint: &Outline,
        at: Vector,
        room: f64,
        force: f64,
    ) -> Option<Self> {
        let foot = footprint.nearest_point(at);
        let arm = hypot(foot.0 - at.0, foot.1 - at.1);
        let way = unit((foot.0 - at.0, foot.1 - at.1)).filter(|_| arm > NO_ARM)?;
        let half = arm.min(room);
        let beside = beside(plate, at, way, arm);
        let front = front(footprint, foot, way);
        Some(Self {
            foot,
            way,
            arm,
            left: half.min(beside.0).min(front.0),
            right: half.min(beside.1).min(front.1),
            force,
        })
    }

    fn width(&self) -> f64 {
        self.left + self.right
    }

    /// Which part of another strip comes to the foot of this one.
    fn share(&self, other: &Self) -> f64 {
        let along = dot(self.way, other.way);
        let offset = (other.foot.0 - self.foot.0, other.foot.1 - self.foot.1);
        if along <= SLACK || hypot(offset.0, offset.1) > self.width() + other.width() {
            return 0.0;
        }
        let middle = dot(offset, turned(self.way));
        let low = (middle - along * other.left).max(-self.left);
        let high = (middle + along * other.right).min(self.right);
        let reach = along * other.width();
        if reach > 0.0 {
            (high - low).max(0.0) / reach
        } else if high >= low {
            1.0
        } else {
            0.0
        }
    }

    fn moment(&self) -> f64 {
        self.force * self.arm
    }
}

/// Whether no strip is bent by more than it bears by its width, with what comes to its foot from others: rows behind it, and
/// neighbours around a corner or a tube.
pub(super) fn are_stiff(strips: &[Strip], bears: f64) -> bool {
    strips.iter().enumerate().all(|(n, strip)| {
        let others = strips.iter().enumerate().filter(|(m, _)| *m != n);
        let beside: f64 = others
            .map(|(_, other)| strip.share(other) * other.moment())
            .sum();
        let moment = strip.moment() + if strip.force > 0.0 { beside } else { 0.0 };
        moment <= bears * strip.width()
    })
}

/// How far the plate reaches to both sides of a straight way, all along it; nothing if its edge crosses the way.
fn beside(plate: &Outline, from: Vector, way: Vector, far: f64) -> (f64, f64) {
    let far = far * (1.0 - SLACK);
    let across = turned(way);
    let (mut left, mut right) = (f64::INFINITY, f64::INFINITY);
    for (a, b) in plate.sides() {
        let seen = |p: Vector| {
            let offset = (p.0 - from.0, p.1 - from.1);
            (dot(offset, way), dot(offset, across))
        };
        let (a, b) = (seen(a), seen(b));
        if a.0.max(b.0) < 0.0 || a.0.min(b.0) > far {
            continue;
        }
        // The part of the side that lies beside the way.
        let (rise, run) = (b.0 - a.0, b.1 - a.1);
        let at = |level: f64, aside: f64| {
            if rise.abs() > 0.0 {
                a.1 + (level.clamp(0.0, far) - a.0) / rise * run
            } else {
                aside
            }
        };
        let (first, last) = (at(a.0, a.1), at(b.0, b.1));
        if first.min(last) <= 0.0 && first.max(last) >= 0.0 {
            return (0.0, 0.0);
        }
        if first > 0.0 {
            right = right.min(first.min(last));
        } else {
            left = left.min(-first.max(last));
        }
    }
    (left, right)
}

/// How far what is fixed reaches to both sides of the place that is met first on a way, as long as its edge falls back by no
/// more than 45 degrees: a rib is no wider for the post behind it.
pub(super) fn front(footprint: &Outline, foot: Vector, way: Vector) -> (f64, f64) {
    let across = turned(way);
    let corners = || footprint.sides().map(|(from, _)| from);
    let count = footprint.corners().len();
    let nearest = footprint
        .sides()
        .map(|side| away(foot, side))
        .enumerate()
        .min_by(|a, b| a.1.total_cmp(&b.1));
    let side = nearest.map_or(0, |(n, _)| n);
    // From the end of its side on around all corners, and from its begin back.
    let around = corners().chain(corners()).skip(side + 1).take(count);
    let around: Vec<Vector> = around.collect();
    let reach = |sign: f64| {
        let seen = move |p: &Vector| {
            let offset = (p.0 - foot.0, p.1 - foot.1);
            (sign * dot(offset, across), dot(offset, way))
        };
        let one = followed(around.iter().map(seen));
        one.max(followed(around.iter().rev().map(seen)))
    };
    (reach(-1.0), reach(1.0))
}

/// How far to the side a line of points goes before it turns back, or falls back by more than 45 degrees.
fn followed(points: impl Iterator<Item = Vector>) -> f64 {
    let mut last: Vector = (0.0, 0.0);
    for next in points {
        let (aside, behind) = (next.0 - last.0, next.1 - last.1);
        if hypot(aside, behind) <= NO_ARM {
            continue;
        }
        if aside <= NO_ARM {
            break;
        }
        if next.1 > next.0 * (1.0 + SLACK) + NO_ARM {
            let share = (last.0 - last.1).max(0.0) / (behind - aside);
            return last.0 + share.min(1.0) * aside;
        }
        last = next;
    }
    last.0
}

#[cfg(test)]
mod tests;
