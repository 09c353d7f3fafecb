//! The loads in a plan.

use alloc::{format, string::String, string::ToString, vec::Vec};

use super::canvas::Drawing;
use super::kinds::Line;
use super::plan::{Arrow, Place, at_tip, out_of_plane, tip};
use super::room::{Room, around};
use super::text::Style;
use crate::connection::LoadCase;
use crate::math::{cos, hypot, sin};
use crate::units::{Force, Torque, UnitSystem, from_base, shown};

/// The length of the arrow of a load.
const LONG: f64 = 58.0;
/// The radius of the arc of a moment.
pub(super) const ARC: f64 = 22.0;

/// A load on the page.
pub(super) struct Load<'a> {
    pub(super) case: &'a LoadCase,
    pub(super) factor: f64,
    /// Where it is drawn, in millimetres, and whether it acts farther away.
    pub(super) at: Place,
    pub(super) is_far: bool,
}

impl Load<'_> {
    pub(super) fn arrow(&self, at: Place) -> Option<Arrow> {
        let (x, y) = (
            self.factor * self.case.force_x.value,
            self.factor * self.case.force_y.value,
        );
        let size = hypot(x, y);
        (size > 0.0).then(|| [at, [at[0] + LONG * x / size, at[1] - LONG * y / size]])
    }

    pub(super) fn draw(&self, page: &mut Drawing, room: &mut Room, at: Place) {
        if let Some([from, to]) = self.arrow(at) {
            page.line(Line::First, from, [to[0], to[1]]);
            tip(page, [from, to], 14.0, 5.0);
            room.cross(from, to);
        }
        let moment = self.factor * self.case.moment_z.value;
        if moment != 0.0 {
            // From the lower right three quarters around, as the moment turns; on the page y points down.
            let point = |step: i32| {
                let angle = core::f64::consts::PI * (-0.25 + 1.5 * f64::from(step) / 24.0);
                let angle = if moment > 0.0 {
                    -angle
                } else {
                    core::f64::consts::PI + angle
                };
                [at[0] + ARC * cos(angle), at[1] + ARC * sin(angle)]
            };
            let arc: Vec<Place> = (0..=24).map(point).collect();
            page.path(Line::First, None, &arc, false);
            tip(page, [point(22), point(24)], 10.0, 4.0);
            for step in [0, 6, 12, 18] {
                room.cross(point(step), point(step + 6));
            }
        }
        page.circle(Line::Outline, at, 6.0);
        page.dot(at, 2.5);
        if self.is_far {
            // Broken off: it goes on.
            let wave = [-9.0, -3.0, 3.0, 9.0].map(|x| {
                [
                    at[0] + x,
                    at[1] + 11.0 + 0.4 * x * if x.abs() > 5.0 { 1.0 } else { -1.0 },
                ]
            });
            page.path(Line::Thin, None, &wave, false);
            room.take([at[0] - 9.0, at[1] + 6.0, at[0] + 9.0, at[1] + 16.0]);
        }
        room.take([at[0] - 7.0, at[1] - 7.0, at[0] + 7.0, at[1] + 7.0]);
    }

    pub(super) fn label(&self, page: &mut Drawing, room: &mut Room, at: Place, system: UnitSystem) {
        let (case, factor) = (self.case, self.factor);
        let mut text = Style::Note.fit(&case.name, 110.0);
        let mut says = |part: String, first: &mut bool| {
            text.push_str(if *first { ": " } else { ", " });
            text.push_str(&part);
            *first = false;
        };
        let mut first = true;
        let across = hypot(case.force_x.value, case.force_y.value);
        if across > 0.0 {
            let size: Force = from_base(factor.abs() * across);
            says(shown(size, system).to_string(), &mut first);
        }
        let out = factor * case.force_z.value;
        if out != 0.0 {
            let size = shown((factor * case.force_z).abs(), system);
            let word = if out > 0.0 { "pull" } else { "press" };
            says(format!("{word} {size}"), &mut first);
        }
        if case.moment_z.value != 0.0 {
            let size = shown((factor * case.moment_z).abs(), system);
            says(format!("turns {size}"), &mut first);
        }
        if case.moment_x.value != 0.0 || case.moment_y.value != 0.0 {
            let size = hypot(case.moment_x.value, case.moment_y.value);
            let size: Torque = from_base(factor.abs() * size);
            says(format!("tilts {}", shown(size, system)), &mut first);
        }
        if self.is_far {
            says("acts farther away".into(), &mut first);
        }
        let mut spots = self.arrow(at).map_or_else(Vec::new, at_tip);
        spots.extend(around(at, ARC));
        spots.extend(around(at, 8.0));
        spots.extend(around(at, LONG));
        // A dot in a circle or a cross for what leaves the plane, as at the bolts.
        let sign = if out == 0.0 { 0.0 } else { 16.0 };
        if let Some(place) = room.put(page, Style::Note, &text, sign, &spots) {
            if out != 0.0 {
                out_of_plane(page, place, out > 0.0);
            }
        }
    }
}
