//! An assembly as lines in a plane through its axis, in millimetres: what section and DXF both draw.
//!
//! Bolt, nut and washers are not cut (they are drawn from outside), what they hold is. Where a size is not read or not
//! stated, a stand-in by the diameter d is drawn, with a line of its own ([`Line::Unread`]). Chamfers of heads and nuts
//! (30 degrees from the width across flats) and the point of the bolt (45 degrees to the root of the thread) are drawn by
//! custom: no table has them.

use alloc::vec::Vec;

use super::holes::Widened;
use super::kinds::Line;
use crate::assembly::{Assembly, End, Layer, NutBody, Side, TappedBody};
use crate::joint::{HeadSeat, LayerKind};
use crate::parts::{HeadForm, Size};
use crate::units::Length;

/// Along the axis, and across it.
pub(super) type Point = [f64; 2];

/// The part a line belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Part {
    Bolt,
    Thread,
    Nut,
    Washer,
    /// With its place among the plies, sleeves and tapped part, which are hatched by turns.
    Cut(usize),
    Cutoff,
}

/// A line through points, or an area.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Shape {
    pub(super) part: Part,
    pub(super) line: Line,
    /// Whether the line returns to its beginning and hides what is behind.
    pub(super) closed: bool,
    pub(super) points: Vec<Point>,
}

/// A rectangle of a part in section, to be hatched: from, to, and the inner and outer radius.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Cutting {
    pub(super) turn: usize,
    pub(super) along: [f64; 2],
    pub(super) radii: [f64; 2],
}

/// Everything there is to draw, and how far it reaches.
#[derive(Clone, Debug, Default)]
pub(super) struct Shapes {
    pub(super) lines: Vec<Shape>,
    pub(super) cuttings: Vec<Cutting>,
    /// From where to where it reaches along the axis.
    pub(super) along: [f64; 2],
    /// How far the plies are drawn.
    pub(super) radius: f64,
    /// Radius over the crests of the thread.
    pub(super) crest: f64,
    /// The point in each layer, then each sleeve, then the tapped part and the nut that a leader ends in.
    pub(super) marks: Vec<Point>,
}

pub(super) fn mm(length: Length) -> f64 {
    length.value * 1e3
}

/// A size to draw, in millimetres, and whether it is read.
#[derive(Clone, Copy)]
pub(super) struct Drawn {
    pub(super) size: f64,
    pub(super) line: Line,
}

impl Drawn {
    pub(super) fn of(size: &Size, stand_in: f64) -> Self {
        match size.drawn() {
            Some(size) => Self {
                size: mm(size),
                line: Line::Outline,
            },
            None => Self {
                size: stand_in,
                line: Line::Unread,
            },
        }
    }

    fn of_corners(corners: &Size, flats: &Size, stand_in: f64) -> Self {
        /// Sharp corners over flats.
        const SHARP: f64 = 1.154_700_538;
        let flats = flats.drawn();
        match (corners.drawn(), flats) {
            (Some(corners), _) => Self {
                size: mm(corners),
                line: Line::Outline,
            },
            (None, Some(flats)) => Self {
                size: SHARP * mm(flats),
                line: Line::Outline,
            },
            (None, None) => Self {
                size: SHARP * stand_in,
                line: Line::Unread,
            },
        }
    }
}

/// Stand-ins, over the diameter: of holes, washers, heads and nuts nothing is known where these are drawn.
const HOLE: f64 = 1.1;
const WASHER: f64 = 2.0;
const FLATS: f64 = 1.5;
const HEAD: f64 = 0.65;
const TUBE: [f64; 2] = [1.08, 1.5];

pub(super) fn shapes(assembly: &Assembly) -> Shapes {
    let mut all = Builder {
        assembly,
        d: mm(assembly.bolt.diameter),
        out: Shapes::default(),
        reach: 0.0,
    };
    all.measure();
    all.plies();
    all.bolt();
    all.head();
    // From outside they hide what is within.
    all.washers();
    all.end();
    all.out
}

pub(super) struct Builder<'a> {
    pub(super) assembly: &'a Assembly,
    pub(super) d: f64,
    pub(super) out: Shapes,
    /// The widest part on the bolt, as a radius.
    reach: f64,
}

impl Builder<'_> {
    pub(super) fn push(&mut self, part: Part, line: Line, closed: bool, points: Vec<Point>) {
        self.out.lines.push(Shape {
            part,
            line,
            closed,
            points,
        });
    }

    /// The same on both sides of the axis.
    pub(super) fn both(&mut self, part: Part, line: Line, points: &[Point]) {
        for sign in [1.0, -1.0] {
            let points = points.iter().map(|[x, r]| [*x, sign * r]).collect();
            self.push(part, line, false, points);
        }
    }

    pub(super) fn washer_radius(&self, layer: &Layer) -> Drawn {
        let outside = Drawn::of(&layer.outside, WASHER * self.d);
        Drawn {
            size: 0.5 * outside.size,
            ..outside
        }
    }

    pub(super) fn head_radius(&self) -> Drawn {
        let head = &self.assembly.bolt.head;
        let wide = match head.form {
            HeadForm::Hexagon | HeadForm::Other => {
                Drawn::of_corners(&head.across_corners, &head.across_flats, FLATS * self.d)
            }
            HeadForm::Countersunk => Drawn::of(&head.diameter, WASHER * self.d),
            HeadForm::Socket => Drawn::of(&head.diameter, FLATS * self.d),
        };
        Drawn {
            size: 0.5 * wide.size,
            ..wide
        }
    }

    pub(super) fn head_height(&self) -> Drawn {
        Drawn::of(&self.assembly.bolt.head.height, HEAD * self.d)
    }

    /// Where the cone of a countersunk head has come down to the shank: by its angle, or at the end of the head.
    pub(super) fn cone_height(&self) -> f64 {
        let (radius, height) = (self.head_radius().size, self.head_height().size);
        let angle = self.assembly.bolt.head.cone_angle;
        let steep = angle.map_or(0.0, |angle| crate::math::tan(0.5 * angle.value));
        if steep > 1e-3 {
            ((radius - 0.5 * self.d) / steep).clamp(0.0, height)
        } else {
            height
        }
    }

    pub(super) fn nut_radius(&self, nut: &NutBody) -> Drawn {
        let wide = Drawn::of_corners(&nut.across_corners, &nut.across_flats, FLATS * self.d);
        Drawn {
            size: 0.5 * wide.size,
            ..wide
        }
    }

    /// How far everything reaches.
    fn measure(&mut self) {
        let assembly = self.assembly;
        let head = self.head_radius().size;
        let mut reach = head;
        for layer in &assembly.layers {
            if layer.kind == LayerKind::Washer {
                reach = reach.max(self.washer_radius(layer).size);
            } else if let Some(hole) = layer.hole.drawn() {
                reach = reach.max(0.62 * mm(hole));
            }
        }
        let mut end = mm(assembly.bolt.length.max).max(mm(assembly.bolt.end.max));
        match &assembly.end {
            End::Nut(nut) => {
                reach = reach.max(self.nut_radius(nut).size);
                if let Some(flange) = nut.flange_diameter.drawn() {
                    reach = reach.max(0.5 * mm(flange));
                }
                end = end.max(mm(nut.at.to.max));
            }
            End::Tapped(part) => {
                let thread = mm(part.at.from.nominal);
                let depth = part.depth.map_or(mm(part.at.to.nominal) - thread, mm);
                end = end
                    .max(thread + depth + 0.9 * self.d)
                    .max(end + 0.3 * self.d);
            }
        }
        if !assembly.sleeves.is_empty() {
            reach = reach.max(0.5 * TUBE[1] * self.d);
        }
        let first = assembly.layers.first();
        let top = first.map_or(0.0, |layer| mm(layer.at.from.nominal));
        let ply = assembly.layers.iter().find(|layer| layer.ply == Some(1));
        let top = top.min(ply.map_or(0.0, |layer| mm(layer.at.from.nominal)));
        let height = if assembly.bolt.head.form == HeadForm::Countersunk {
            0.0
        } else {
            self.head_height().size
        };
        self.reach = reach;
        self.out.radius = 1.4 * reach;
        self.out.crest = 0.5 * self.d;
        self.out.along = [top.min(-height), end];
    }

    fn widened(&self) -> Widened {
        let assembly = self.assembly;
        let at_head = |layer: &&Layer| layer.side == Some(Side::Head);
        let at_nut = |layer: &&Layer| layer.side == Some(Side::Nut);
        let radius = |layer: &Layer| self.washer_radius(layer).size;
        let mut head_washers = assembly.layers.iter().filter(at_head);
        let seat = head_washers.clone().map(radius).fold(0.0, f64::max);
        let seat_end = head_washers
            .next_back()
            .map_or(0.0, |layer| mm(layer.at.to.nominal));
        let (mut recess, mut cone) = (None, None);
        match assembly.seat {
            HeadSeat::Recessed { .. } => {
                let wide = 1.12 * seat.max(self.head_radius().size);
                recess = Some([seat_end, wide]);
            }
            HeadSeat::Countersunk { .. } => {
                let height = self.cone_height();
                cone = Some([self.head_radius().size, 0.5 * self.d, height]);
            }
            HeadSeat::Flat => {}
        }
        let spot_face = assembly.spot_face_under_nut.map(|_| {
            let last = assembly.layers.iter().rfind(|layer| layer.ply.is_some());
            let start = last.map_or(0.0, |layer| mm(layer.at.to.nominal));
            let depth = assembly
                .spot_face_under_nut
                .map_or(0.0, |own| mm(own.nominal));
            let washers = assembly.layers.iter().filter(at_nut).map(radius);
            let nut = match &assembly.end {
                End::Nut(nut) => self.nut_radius(nut).size,
                End::Tapped(_) => 0.0,
            };
            [start - depth, 1.12 * washers.fold(nut, f64::max)]
        });
        let sleeves = assembly.sleeves.iter().map(|tube| {
            [
                mm(tube.at.from.nominal),
                mm(tube.at.to.nominal),
                0.5 * TUBE[1] * self.d,
            ]
        });
        Widened {
            recess,
            cone,
            spot_face,
            sleeves: sleeves.collect(),
        }
    }

    fn hole(&self, layer: &Layer) -> Drawn {
        let hole = Drawn::of(&layer.hole, HOLE * self.d);
        Drawn {
            size: 0.5 * hole.size,
            ..hole
        }
    }

    /// Plies, sleeves and the tapped part, in section.
    fn plies(&mut self) {
        let assembly = self.assembly;
        let widened = self.widened();
        let far = self.out.radius;
        let mut turn = 0;
        for layer in &assembly.layers {
            if layer.kind == LayerKind::Gap {
                self.out.marks.push([
                    0.5 * (mm(layer.at.from.nominal) + mm(layer.at.to.nominal)),
                    far,
                ]);
                continue;
            }
            let (from, to) = (mm(layer.at.from.nominal), mm(layer.at.to.nominal));
            let middle = 0.5 * (from + to);
            if layer.kind == LayerKind::Washer {
                let radius = self.washer_radius(layer).size;
                self.out.marks.push([middle, radius - 0.06 * self.reach]);
                continue;
            }
            self.out.marks.push([middle, far - 0.08 * self.reach]);
            let hole = self.hole(layer);
            let wall = widened.wall(hole.size, from, to);
            self.cut_part(turn, hole.line, &wall, far);
            turn += 1;
        }
        let next = turn;
        for tube in &assembly.sleeves {
            // The other way than the ply that it begins in.
            let turn = if tube.first_ply % 2 == 1 { 3 } else { 2 };
            let (from, to) = (mm(tube.at.from.nominal), mm(tube.at.to.nominal));
            let [inside, outside] = TUBE.map(|times| 0.5 * times * self.d);
            self.out
                .marks
                .push([from + 0.35 * (to - from), 0.5 * (inside + outside)]);
            for sign in [1.0, -1.0] {
                let (a, b) = (sign * inside, sign * outside);
                let ring = Vec::from([[from, a], [to, a], [to, b], [from, b]]);
                self.push(Part::Cut(turn), Line::Unread, true, ring);
            }
            self.out.cuttings.push(Cutting {
                turn,
                along: [from, to],
                radii: [inside, outside],
            });
        }
        let turn = next;
        if let End::Tapped(part) = &assembly.end {
            self.tapped(part, turn);
        }
    }

    /// One part in section: its faces, the wall of its hole, and a thin line where it is broken off.
    fn cut_part(&mut self, turn: usize, line: Line, wall: &[Point], far: f64) {
        let (Some(&[from, first]), Some(&[to, last])) = (wall.first(), wall.last()) else {
            return;
        };
        let part = Part::Cut(turn);
        for two in wall.windows(2) {
            let &[a, b] = two else { continue };
            if b[0] - a[0] > 1e-9 {
                self.out.cuttings.push(Cutting {
                    turn,
                    along: [a[0], b[0]],
                    // Of a countersink the head hides the rest.
                    radii: [a[1].min(b[1]), far],
                });
            }
        }
        self.both(part, line, wall);
        self.both(part, Line::Outline, &[[from, first], [from, far]]);
        self.both(part, Line::Outline, &[[to, last], [to, far]]);
        self.both(
            part,
            Line::Thin,
            &broken_off(from, to, far, 0.05 * self.reach),
        );
    }

    fn tapped(&mut self, tapped: &TappedBody, turn: usize) {
        let far = self.out.radius;
        let (face, start) = (mm(tapped.face.nominal), mm(tapped.at.from.nominal));
        let right = self.out.along[1];
        let (minor, major) = (0.5 * mm(tapped.minor_diameter), 0.5 * self.d);
        let tip = mm(self.assembly.bolt.end.nominal);
        let part = Part::Cut(turn);
        // What nobody says of the hole is drawn as one that ends beyond the bolt, dotted.
        let stated = tapped.depth.is_some() || tapped.through;
        let line = if stated { Line::Outline } else { Line::Unread };
        let bottom = match tapped.depth {
            Some(depth) => start + mm(depth),
            None if tapped.through => right,
            None => (right - 0.5 * self.d).max(start),
        };
        self.out
            .marks
            .push([0.5 * (face + right), far - 0.08 * self.reach]);
        self.both(part, Line::Outline, &[[face, minor], [face, far]]);
        self.both(
            part,
            Line::Thin,
            &broken_off(face, right, far, 0.05 * self.reach),
        );
        let zigzag = broken_off(-far, far, 0.0, 0.05 * self.reach);
        let zigzag = zigzag.iter().map(|[r, off]| [right + off, *r]).collect();
        self.push(part, Line::Thin, false, zigzag);
        if start > face {
            let wide = 0.5 * HOLE * self.d;
            self.both(
                part,
                Line::Unread,
                &[[face, wide], [start, wide], [start, minor]],
            );
            self.hatched(turn, [face, start], [wide, far]);
        }
        // The bolt covers the thread as far as it is screwed in. Beyond: minor diameter wide, major diameter narrow.
        let begin = tip.clamp(start, bottom.max(start));
        self.both(part, line, &[[begin, minor], [bottom, minor]]);
        self.both(part, Line::Thin, &[[begin, major], [bottom, major]]);
        if !tapped.through {
            // The drill has a point of 118 degrees, drawn as 120, beyond the end of full thread.
            let drilled = (bottom + 0.2 * self.d).min(right);
            let tip = (drilled + 0.577 * minor).min(right);
            self.both(part, line, &[[bottom, minor], [bottom, major]]);
            self.both(part, line, &[[bottom, minor], [drilled, minor], [tip, 0.0]]);
            self.both(part, line, &[[drilled, minor], [drilled, 0.0]]);
            self.hatched(turn, [bottom, drilled], [minor, far]);
            // In slices, as the cone of the drill narrows.
            for step in 0..6 {
                let at = |step: i32| f64::from(step) / 6.0;
                let along = [at(step), at(step + 1)].map(|part| drilled + part * (tip - drilled));
                self.hatched(turn, along, [minor * (1.0 - at(step + 1)), far]);
            }
            self.hatched(turn, [tip, right], [0.0, far]);
        }
        self.hatched(turn, [start, bottom], [minor, far]);
    }

    fn hatched(&mut self, turn: usize, along: [f64; 2], radii: [f64; 2]) {
        if along[1] > along[0] {
            self.out.cuttings.push(Cutting { turn, along, radii });
        }
    }
}

/// A thin line with one zigzag in it, as where a part is broken off; without one where there is no room.
fn broken_off(from: f64, to: f64, radius: f64, size: f64) -> Vec<Point> {
    // Beside the middle, where leaders end.
    let middle = 0.72 * from + 0.28 * to;
    if to - from < 8.0 * size {
        return Vec::from([[from, radius], [to, radius]]);
    }
    Vec::from([
        [from, radius],
        [middle - size, radius],
        [middle - 0.5 * size, radius + size],
        [middle + 0.5 * size, radius - size],
        [middle + size, radius],
        [to, radius],
    ])
}
