//! The walls of holes in section: recesses, countersinks, spot faces and sleeves widen them.

use alloc::vec::Vec;

use super::shapes::Point;

/// What widens the holes near head and nut, and along sleeves.
pub(super) struct Widened {
    /// Up to where, and how wide.
    pub(super) recess: Option<[f64; 2]>,
    /// Radius at the top of the countersink, radius at its end, height.
    pub(super) cone: Option<[f64; 3]>,
    /// From where on, and how wide.
    pub(super) spot_face: Option<[f64; 2]>,
    /// From where to where, and how wide.
    pub(super) sleeves: Vec<[f64; 3]>,
}

impl Widened {
    /// The radius of a hole at a place, which lies on one side of `middle`, a point without a step between.
    fn radius(&self, hole: f64, x: f64, middle: f64) -> f64 {
        let mut radius = hole;
        if let Some([end, wide]) = self.recess {
            if middle < end {
                radius = radius.max(wide);
            }
        }
        if let Some([top, neck, height]) = self.cone {
            if middle < 0.0 {
                radius = radius.max(top);
            } else if middle < height {
                radius = radius.max(top - (top - neck) * x / height);
            }
        }
        if let Some([start, wide]) = self.spot_face {
            if middle > start {
                radius = radius.max(wide);
            }
        }
        for [from, to, wide] in &self.sleeves {
            if middle > *from && middle < *to {
                radius = radius.max(*wide);
            }
        }
        radius
    }

    /// The wall of a hole from one face of a part to the other.
    pub(super) fn wall(&self, hole: f64, from: f64, to: f64) -> Vec<Point> {
        let mut steps: Vec<f64> = Vec::from([from, to]);
        if let Some([end, _]) = self.recess {
            steps.push(end);
        }
        if let Some([top, neck, height]) = self.cone {
            steps.push(0.0);
            steps.push(height);
            if top > neck && hole > neck {
                // Where the cone is as wide as the hole.
                steps.push(height * (top - hole) / (top - neck));
            }
        }
        if let Some([start, _]) = self.spot_face {
            steps.push(start);
        }
        steps.extend(self.sleeves.iter().flat_map(|own| [own[0], own[1]]));
        steps.retain(|&x| x >= from && x <= to);
        steps.sort_by(f64::total_cmp);
        let mut wall: Vec<Point> = Vec::with_capacity(8);
        let mut push = |point: Point| {
            if wall.last() != Some(&point) {
                wall.push(point);
            }
        };
        for two in steps.windows(2) {
            let &[a, b] = two else { continue };
            if b - a < 1e-9 {
                continue;
            }
            let middle = 0.5 * (a + b);
            push([a, self.radius(hole, a, middle)]);
            push([b, self.radius(hole, b, middle)]);
        }
        if wall.is_empty() {
            wall.extend([[from, hole], [to, hole]]);
        }
        wall
    }
}
