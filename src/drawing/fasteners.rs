//! Bolt, head, nut and washers, from outside.

use alloc::vec::Vec;

use super::kinds::Line;
use super::shapes::{Builder, Drawn, Part, Point, mm};
use crate::assembly::{End, NutBody};
use crate::joint::LayerKind;
use crate::parts::{Head, HeadForm, Locking};
use crate::units::Length;

impl Builder<'_> {
    /// Washers, from outside.
    pub(super) fn washers(&mut self) {
        for layer in &self.assembly.layers {
            if layer.kind == LayerKind::Washer {
                let (from, to) = (mm(layer.at.from.nominal), mm(layer.at.to.nominal));
                let Drawn { size, line } = self.washer_radius(layer);
                let points = rectangle(from, to, size);
                self.push(Part::Washer, line, true, points);
            }
        }
    }

    /// Shank, run-out, thread and point.
    pub(super) fn bolt(&mut self) {
        let bolt = &self.assembly.bolt;
        let crest = 0.5 * self.d;
        let body = Drawn::of(&bolt.body_diameter, self.d);
        let root = 0.5 * mm(bolt.root_diameter);
        let (shank, thread) = (mm(bolt.shank_end), mm(bolt.thread_start));
        let (tip, whole) = (mm(bolt.end.nominal), mm(bolt.length.nominal));
        let point = (crest - root).min(0.5 * (tip - thread)).max(0.0);
        let has_shank = bolt.shank_end > Length::default();
        let (neck, line) = if has_shank {
            (0.5 * body.size, body.line)
        } else {
            (crest, Line::Outline)
        };
        let start = if bolt.head.form == HeadForm::Countersunk {
            self.cone_height().min(thread)
        } else {
            0.0
        };
        let ending = [
            [tip - point, crest],
            [tip, crest - point],
            [tip, point - crest],
            [tip - point, -crest],
        ];
        let shank_points = [
            [start, neck],
            [thread, neck],
            [thread, -neck],
            [start, -neck],
        ];
        self.push(Part::Bolt, line, true, Vec::from(shank_points));
        let mut points = Vec::from([[thread, crest]]);
        points.extend(ending);
        points.push([thread, -crest]);
        self.push(Part::Bolt, Line::Outline, true, points);
        let across = |x: f64, r: f64| Vec::from([[x, r], [x, -r]]);
        if bolt.cut.is_none() {
            self.push(Part::Bolt, Line::Outline, false, across(tip - point, crest));
        }
        self.push(Part::Thread, Line::Outline, false, across(thread, crest));
        self.both(
            Part::Thread,
            Line::Thin,
            &[[thread, root], [tip - point * 0.2, root]],
        );
        if thread > shank {
            // The run-out: from the root up to the surface, where the shank is sure to have begun.
            self.both(
                Part::Thread,
                Line::Thin,
                &[[thread, root], [shank.max(start), neck]],
            );
        }
        if bolt.cut.is_some() && whole > tip {
            let end = [
                [tip, crest],
                [whole - point, crest],
                [whole, crest - point],
                [whole, point - crest],
                [whole - point, -crest],
                [tip, -crest],
            ];
            self.push(Part::Cutoff, Line::Removed, false, Vec::from(end));
        }
    }

    pub(super) fn head(&mut self) {
        let head = self.assembly.bolt.head;
        let (radius, height) = (self.head_radius(), self.head_height());
        let line = worse(radius.line, height.line);
        let (r, h) = (radius.size, height.size);
        match head.form {
            HeadForm::Hexagon => self.hexagon(Part::Bolt, line, [0.0, -h], r, collar(&head)),
            HeadForm::Countersunk => {
                let neck = 0.5 * self.d;
                let end = self.cone_height();
                let cone = [[0.0, r], [end, neck], [end, -neck], [0.0, -r]];
                self.push(Part::Bolt, line, true, Vec::from(cone));
            }
            _ => {
                self.push(Part::Bolt, line, true, rectangle(-h, 0.0, r));
                if let (Some(key), Some(depth)) =
                    (head.socket_flats.drawn(), head.socket_depth.drawn())
                {
                    // Hidden: the head is not cut.
                    let (half, bottom) = (0.577_35 * mm(key), mm(depth) - h);
                    let socket = [[-h, half], [bottom, half], [bottom, -half], [-h, -half]];
                    self.push(Part::Bolt, Line::Hidden, false, Vec::from(socket));
                    for edge in [0.5, -0.5] {
                        let edge = [[-h, edge * half], [bottom, edge * half]];
                        self.push(Part::Bolt, Line::Hidden, false, Vec::from(edge));
                    }
                }
            }
        }
    }

    pub(super) fn end(&mut self) {
        let assembly = self.assembly;
        let End::Nut(nut) = &assembly.end else {
            return;
        };
        let (from, to) = (mm(nut.at.from.nominal), mm(nut.at.to.nominal));
        let radius = self.nut_radius(nut);
        self.nut_body(nut, radius, from, to);
        self.out
            .marks
            .push([from + 0.35 * (to - from), 0.75 * radius.size]);
        // A bolt that does not reach through ends where nobody sees it.
        let tip = mm(assembly.bolt.end.nominal);
        if tip < to - 1e-6 && tip > from {
            let crest = 0.5 * self.d;
            let hidden = [[from, crest], [tip, crest], [tip, -crest], [from, -crest]];
            self.push(Part::Bolt, Line::Hidden, false, Vec::from(hidden));
        }
    }

    fn nut_body(&mut self, nut: &NutBody, radius: Drawn, from: f64, to: f64) {
        let Drawn { size: r, line } = radius;
        let height = to - from;
        let mut foot = from;
        if let Some(flange) = nut.flange_diameter.drawn() {
            let wide = 0.5 * mm(flange);
            let rim = Drawn::of(&nut.flange_height, 0.08 * self.d);
            let rim = from + rim.size.min(0.4 * height);
            // From the rim the flange falls off to the hexagon.
            let shoulder = (rim + 0.45 * (wide - r).max(0.0)).min(from + 0.6 * height);
            let ring = [
                [from, wide],
                [rim, wide],
                [shoulder, r.min(wide)],
                [shoulder, -r.min(wide)],
                [rim, -wide],
                [from, -wide],
            ];
            self.push(Part::Nut, line, true, Vec::from(ring));
            let edge = Vec::from([[rim, wide], [rim, -wide]]);
            self.push(Part::Nut, Line::Outline, false, edge);
            foot = shoulder;
        }
        match nut.locking {
            Locking::Insert | Locking::AllMetal => {
                // The collar that holds the insert, or that is squeezed: above the flats.
                let flats = nut.wrenching_height.min.or(nut.thread_height.min);
                let share = if nut.locking == Locking::Insert {
                    0.7
                } else {
                    0.75
                };
                let flats = flats
                    .map_or(share * height, mm)
                    .clamp(0.3 * height, 0.9 * height);
                let shoulder = (from + flats).max(foot);
                let wide = 0.78 * r;
                let top = if nut.locking == Locking::Insert {
                    0.72 * r
                } else {
                    0.66 * r
                };
                let ring = [
                    [shoulder, wide],
                    [to - 0.25 * (to - shoulder), wide],
                    [to, top],
                    [to, -top],
                    [to - 0.25 * (to - shoulder), -wide],
                    [shoulder, -wide],
                ];
                self.push(Part::Nut, line, true, Vec::from(ring));
                self.hexagon(Part::Nut, line, [foot, shoulder], r, None);
                if nut.locking == Locking::Insert {
                    // A fine line where the collar is crimped over the insert.
                    let x = to - 0.25 * (to - shoulder);
                    self.push(
                        Part::Nut,
                        Line::Thin,
                        false,
                        Vec::from([[x, wide], [x, -wide]]),
                    );
                }
            }
            _ => {
                self.hexagon(Part::Nut, line, [foot, to], r, None);
                if let (Some(width), Some(base)) =
                    (nut.slot_width.drawn(), nut.unslotted_height.drawn())
                {
                    let (half, base) = (0.5 * mm(width), from + mm(base));
                    let slot = [[to, half], [base, half], [base, -half], [to, -half]];
                    self.push(Part::Nut, Line::Outline, false, Vec::from(slot));
                }
            }
        }
    }

    /// A hexagon across its corners, from its bearing face to its outer face, whose corners are chamfered at 30 degrees.
    fn hexagon(
        &mut self,
        part: Part,
        line: Line,
        [foot, top]: [f64; 2],
        r: f64,
        collar: Option<[f64; 2]>,
    ) {
        const FLAT: f64 = 0.866_025_4;
        const STEEP: f64 = 0.577_350_27;
        let way = if top > foot { 1.0 } else { -1.0 };
        let high = (top - foot).abs();
        let foot = match collar {
            Some([height, wide]) if height < 0.4 * high && wide < r => {
                let face = foot + way * height;
                let (a, b) = (foot.min(face), foot.max(face));
                self.push(part, line, true, rectangle(a, b, wide));
                face
            }
            _ => foot,
        };
        // The circle in which the chamfer meets the outer face, and how far the chamfer reaches down corners and flats.
        let circle = 0.95 * FLAT * r;
        let corner = ((r - circle) * STEEP).min(0.3 * high);
        let flat = ((FLAT * r - circle) * STEEP).min(corner);
        let (low, peak) = (top - way * corner, top - way * flat);
        let mut points = Vec::from([[foot, r], [low, r], [top, circle], [top, -circle]]);
        points.extend([[low, -r], [foot, -r]]);
        self.push(part, line, true, points);
        for edge in [0.5 * r, -0.5 * r] {
            self.push(part, line, false, Vec::from([[foot, edge], [low, edge]]));
        }
        // On each face the chamfer leaves an arc, which is drawn as a parabola through seven points.
        for [a, b] in [[r, 0.5 * r], [0.5 * r, -0.5 * r], [-0.5 * r, -r]] {
            let arc = (0..=6).map(|step| {
                let part = f64::from(step) / 6.0;
                let bulge = 4.0 * part * (1.0 - part);
                [low + bulge * (peak - low), a + part * (b - a)]
            });
            let arc = arc.collect();
            self.push(part, line, false, arc);
        }
    }
}

/// The washer face of a head: its height and its radius.
fn collar(head: &Head) -> Option<[f64; 2]> {
    let height = mm(head.washer_face_height.drawn()?);
    let wide = 0.5 * mm(head.bearing_diameter.drawn()?);
    Some([height, wide])
}

fn rectangle(from: f64, to: f64, radius: f64) -> Vec<Point> {
    Vec::from([[from, radius], [to, radius], [to, -radius], [from, -radius]])
}

/// Of two lines the one that says that nobody has read the size.
fn worse(a: Line, b: Line) -> Line {
    if a == Line::Unread { a } else { b }
}
