//! Labels on a plan, where bolts may stand anywhere: each takes the first of its places that is free.

use alloc::vec::Vec;

use super::canvas::Drawing;
use super::kinds::{Anchor, Label};
use super::text::Style;

/// What a label stands by: where it begins, ends or has its middle.
pub(super) type Spot = (Anchor, [f64; 2]);

/// What stays free at both sides of a label.
const GAP: f64 = 2.0;

/// The room that is left.
pub(super) struct Room {
    /// Labels and parts, which nothing may cover.
    taken: Vec<[f64; 4]>,
    /// Arrows, which labels cover only where nothing else is left.
    crossed: Vec<[f64; 4]>,
    /// Left, top, right, bottom.
    bounds: [f64; 4],
    /// Labels that found no room.
    pub(super) left_out: usize,
}

impl Room {
    pub(super) const fn new(bounds: [f64; 4]) -> Self {
        Self {
            taken: Vec::new(),
            crossed: Vec::new(),
            bounds,
            left_out: 0,
        }
    }

    pub(super) fn take(&mut self, area: [f64; 4]) {
        self.taken.push(area);
    }

    /// A line, as small areas along it.
    pub(super) fn cross(&mut self, from: [f64; 2], to: [f64; 2]) {
        for step in 0..=8 {
            let part = f64::from(step) / 8.0;
            let [x, y] = [0, 1].map(|at: usize| {
                let [a, b] = [from, to].map(|own| own.get(at).copied().unwrap_or(0.0));
                a + part * (b - a)
            });
            self.crossed.push([x - 3.0, y - 3.0, x + 3.0, y + 3.0]);
        }
    }

    fn is_free(&self, area: [f64; 4], among_lines: bool) -> bool {
        let [left, top, right, bottom] = area;
        let within = left >= self.bounds[0]
            && top >= self.bounds[1]
            && right <= self.bounds[2]
            && bottom <= self.bounds[3];
        let apart = |other: &[f64; 4]| {
            right <= other[0] || other[2] <= left || bottom <= other[1] || other[3] <= top
        };
        within && self.taken.iter().all(apart) && (among_lines || self.crossed.iter().all(apart))
    }

    /// Writes a text at the first of its places that is free, with so much room left of it for a sign; returns the middle
    /// of that room. What finds no place is counted.
    pub(super) fn put(
        &mut self,
        page: &mut Drawing,
        style: Style,
        text: &str,
        sign: f64,
        spots: &[Spot],
    ) -> Option<[f64; 2]> {
        for among_lines in [false, true] {
            for (anchor, [x, y]) in spots {
                // The sign and the text are one.
                let x = match anchor {
                    Anchor::Start => x + sign,
                    Anchor::Middle => x + 0.5 * sign,
                    Anchor::End => *x,
                };
                let label = Label {
                    text: text.into(),
                    style,
                    at: [x, *y],
                    anchor: *anchor,
                    on_lines: true,
                };
                let [left, top, right, bottom] = label.bounds();
                let area = [left - sign - GAP, top, right + GAP, bottom];
                if self.is_free(area, among_lines) {
                    self.take(area);
                    page.label_on_lines(style, *anchor, label.at, text);
                    return Some([left - 0.5 * sign, 0.5 * (top + bottom)]);
                }
            }
        }
        self.left_out += 1;
        None
    }
}

/// Places around a point, near ones first.
pub(super) fn around([x, y]: [f64; 2], radius: f64) -> Vec<Spot> {
    let mut spots = Vec::with_capacity(32);
    for away in [3.0, 10.0, 20.0, 34.0] {
        let r = radius + away;
        let d = 0.7 * r;
        spots.extend([
            (Anchor::Start, [x + d, y - d]),
            (Anchor::End, [x - d, y - d]),
            (Anchor::Start, [x + d, y + d + 9.0]),
            (Anchor::End, [x - d, y + d + 9.0]),
            (Anchor::Start, [x + r, y + 4.0]),
            (Anchor::End, [x - r, y + 4.0]),
            (Anchor::Middle, [x, y - r]),
            (Anchor::Middle, [x, y + r + 9.0]),
        ]);
    }
    spots
}
