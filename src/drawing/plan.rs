//! The plan itself: plates, bolts, arrows.

use alloc::{format, string::ToString, vec::Vec};

use super::canvas::Drawing;
use super::kinds::{Anchor, Fill, Line};
use super::pattern::{SIDES, Shown, along};
use super::pattern_tables::MOST_LOADS;
use super::plan_loads::{ARC, Load};
use super::plan_sizes::{Sizes, room_left};
use super::room::{Room, Spot, around};
use super::shapes::mm;
use super::text::Style;
use crate::connection::{BoltLoad, Connection, Outline, Plate};
use crate::math::hypot;
use crate::units::{Length, UnitSystem, from_base, shown};

/// The most that the plan is wide and high, and the radius of a bolt in it.
const LARGEST: [f64; 2] = [560.0, 400.0];
const BOLT: [f64; 2] = [2.5, 26.0];
/// The length of the longest arrow of a bolt.
const ARROWS: [f64; 2] = [26.0, 64.0];

/// A point of the page or in millimetres.
pub(super) type Place = [f64; 2];
/// Left, top, right, bottom of the page; least x, least y, greatest x, greatest y in millimetres.
pub(super) type Box4 = [f64; 4];

pub(super) fn add(to: &mut Box4, [x, y]: Place, by: f64) {
    *to = [
        to[0].min(x - by),
        to[1].min(y - by),
        to[2].max(x + by),
        to[3].max(y + by),
    ];
}

pub(super) const NOTHING: Box4 = [
    f64::INFINITY,
    f64::INFINITY,
    f64::NEG_INFINITY,
    f64::NEG_INFINITY,
];

/// From millimetres to the page.
#[derive(Clone, Copy)]
pub(super) struct Frame {
    k: f64,
    /// Where the origin of the pattern is.
    zero: Place,
}

impl Frame {
    pub(super) fn at(&self, [x, y]: Place) -> Place {
        [self.zero[0] + self.k * x, self.zero[1] - self.k * y]
    }
}

/// The line of the outline of a plate.
pub(super) const fn line_of(plate: usize) -> Line {
    match plate % 4 {
        0 => Line::Outline,
        1 => Line::Hidden,
        2 => Line::Thin,
        _ => Line::Removed,
    }
}

pub(super) fn corners(outline: &Outline) -> Vec<Place> {
    let corners = outline.corners().iter();
    corners.map(|own| [mm(own.x), mm(own.y)]).collect()
}

pub(super) fn places(connection: &Connection) -> Vec<Place> {
    let bolts = connection.bolts.bolts().iter();
    bolts.map(|own| [mm(own.x), mm(own.y)]).collect()
}

/// The bolt that is nearest to the edge of a plate.
pub(super) struct Least {
    pub(super) distance: Length,
    /// Counted from 1.
    pub(super) bolt: usize,
    /// The bolt, and the nearest point of the edge, in millimetres.
    pub(super) from: Place,
    pub(super) to: Place,
}

pub(super) fn least_distance(connection: &Connection, plate: &Plate) -> Option<Least> {
    let corners = corners(&plate.outline);
    let next = corners.iter().cycle().skip(1);
    let sides: Vec<(&Place, &Place)> = corners.iter().zip(next).collect();
    let mut least: Option<(f64, Least)> = None;
    for (from, bolt) in places(connection).into_iter().zip(1..) {
        for (a, b) in &sides {
            let (u, v) = ([b[0] - a[0], b[1] - a[1]], [from[0] - a[0], from[1] - a[1]]);
            let square = u[0] * u[0] + u[1] * u[1];
            let part = if square > 0.0 {
                ((u[0] * v[0] + u[1] * v[1]) / square).clamp(0.0, 1.0)
            } else {
                0.0
            };
            let to = [a[0] + part * u[0], a[1] + part * u[1]];
            let away = hypot(to[0] - from[0], to[1] - from[1]);
            // Not another bolt for a rounding.
            if least.as_ref().is_none_or(|own| away < own.0 - 1e-9) {
                let distance = from_base(1e-3 * away);
                least = Some((
                    away,
                    Least {
                        distance,
                        bolt,
                        from,
                        to,
                    },
                ));
            }
        }
    }
    least.map(|own| own.1)
}

/// Everything in millimetres.
struct World<'a> {
    bolts: Vec<Place>,
    /// Of bolts and plates.
    core: Box4,
    /// And of loads.
    all: Box4,
    diameter: f64,
    loads: Vec<Load<'a>>,
}

impl<'a> World<'a> {
    fn new(own: &Shown<'a>) -> Self {
        let connection = own.connection;
        let diameter = mm(connection.joint.bolt.thread.nominal_diameter());
        let bolts = places(connection);
        let mut core = NOTHING;
        for bolt in &bolts {
            add(&mut core, *bolt, 1.2 * diameter);
        }
        for plate in &connection.plates {
            for corner in corners(&plate.outline) {
                add(&mut core, corner, 0.0);
            }
        }
        let span = (core[2] - core[0]).max(core[3] - core[1]);
        let reach = 0.7 * span;
        let mut all = core;
        let loads = own.parts.iter().take(MOST_LOADS).map(|(factor, case)| {
            let [x, y] = [mm(case.x), mm(case.y)];
            let at = [
                x.clamp(core[0] - reach, core[2] + reach),
                y.clamp(core[1] - reach, core[3] + reach),
            ];
            Load {
                case,
                factor: *factor,
                at,
                is_far: at[0].to_bits() != x.to_bits() || at[1].to_bits() != y.to_bits(),
            }
        });
        let loads: Vec<Load<'_>> = loads.collect();
        for load in &loads {
            add(&mut all, load.at, 0.0);
        }
        Self {
            bolts,
            core,
            all,
            diameter,
            loads,
        }
    }

    /// The least distance between two bolts.
    fn closest(&self) -> f64 {
        let pairs = self.bolts.iter().enumerate().flat_map(|(n, a)| {
            let others = self.bolts.iter().skip(n + 1);
            others.map(move |b| hypot(a[0] - b[0], a[1] - b[1]))
        });
        pairs.fold(f64::INFINITY, f64::min)
    }
}

/// An arrow in the plane, from its tail to its tip.
pub(super) type Arrow = [Place; 2];

fn arrow_of(load: &BoltLoad, centre: Place, radius: f64, length: f64) -> Option<Arrow> {
    let size = hypot(load.x.value, load.y.value);
    if size <= 0.0 || load.across.value <= 0.0 {
        return None;
    }
    let way = [load.x.value / size, -load.y.value / size];
    let at = |far: f64| [centre[0] + far * way[0], centre[1] + far * way[1]];
    Some([at(radius), at(radius + length)])
}

/// Draws the plan and its sizes. Returns where they end, and how many labels found no room.
pub(super) fn plan(
    page: &mut Drawing,
    own: &Shown<'_>,
    top: f64,
    system: UnitSystem,
) -> (f64, usize) {
    let world = World::new(own);
    let sizes = Sizes::new(own.connection, system);
    let [wide, high] = [world.all[2] - world.all[0], world.all[3] - world.all[1]];
    let k = (LARGEST[0] / wide.max(1e-3))
        .min(LARGEST[1] / high.max(1e-3))
        .min(2.0 * BOLT[1] / world.diameter.max(1e-3));
    let radius = (0.5 * k * world.diameter).max(BOLT[0]);
    let longest = (0.75 * k * world.closest()).clamp(ARROWS[0], ARROWS[1]);
    let mut frame = Frame {
        k,
        zero: [-k * world.all[0], k * world.all[3]],
    };
    // Once to see how far arrows reach, and then in its place.
    let reach = reach(own, &world, &frame, radius, longest);
    let left = room_left(&sizes) + SIDES[0];
    let free = SIDES[1] - left - (reach[2] - reach[0]);
    frame.zero[0] += left + (0.5 * free).max(0.0) - reach[0];
    frame.zero[1] += top + 22.0 - reach[1];
    let reach = self::reach(own, &world, &frame, radius, longest);
    let bottom = reach[3] + 22.0;

    let below = sizes.height();
    let mut room = Room::new([SIDES[0], top, SIDES[1], bottom + below]);
    for (plate, which) in own.connection.plates.iter().zip(0..) {
        let points: Vec<Place> = corners(&plate.outline)
            .iter()
            .map(|own| frame.at(*own))
            .collect();
        held(page, plate, &points);
        page.path(line_of(which), None, &points, true);
    }
    sizes.draw_circle(page, &frame);
    axes(page, &world, &frame);
    let mut bolts = Bolts {
        own,
        centres: world.bolts.iter().map(|bolt| frame.at(*bolt)).collect(),
        radius,
        arrows: Vec::new(),
    };
    bolts.draw(page, &mut room, longest);
    for load in &world.loads {
        load.draw(page, &mut room, frame.at(load.at));
    }
    // What was drawn has its place: now its labels, the most wanted first.
    let edges = [reach[0], bottom];
    sizes.draw(page, &mut room, &frame, edges, (&world.bolts, radius));
    bolts.numbers(page, &mut room);
    for load in &world.loads {
        load.label(page, &mut room, frame.at(load.at), system);
    }
    bolts.forces(page, &mut room, system);
    for plate in &own.connection.plates {
        let points: Vec<Place> = corners(&plate.outline)
            .iter()
            .map(|own| frame.at(*own))
            .collect();
        name(page, &mut room, &plate.ply, &points);
    }
    (bottom + below, room.left_out)
}

/// The area that the plan takes with its arrows.
fn reach(own: &Shown<'_>, world: &World<'_>, frame: &Frame, radius: f64, longest: f64) -> Box4 {
    let mut reach = NOTHING;
    for at in [
        [world.core[0], world.core[1]],
        [world.core[2], world.core[3]],
    ] {
        add(&mut reach, frame.at(at), 9.0);
    }
    let most = own.most_across();
    for (bolt, load) in world.bolts.iter().zip(&own.case.loads) {
        let centre = frame.at(*bolt);
        add(&mut reach, centre, radius + 7.0);
        let length = length_of(load, most, longest);
        if let Some([_, tip]) = arrow_of(load, centre, radius, length) {
            add(&mut reach, tip, 3.0);
        }
    }
    for load in &world.loads {
        let at = frame.at(load.at);
        add(&mut reach, at, 8.0);
        if load.case.moment_z.value != 0.0 {
            add(&mut reach, at, ARC + 5.0);
        }
        if let Some([_, tip]) = load.arrow(at) {
            add(&mut reach, tip, 5.0);
        }
    }
    reach
}

/// As long as its size, and never shorter than its head.
fn length_of(load: &BoltLoad, most: f64, longest: f64) -> f64 {
    if most > 0.0 {
        (longest * load.across.value / most).max(10.0)
    } else {
        10.0
    }
}

/// A filled head with its tip at the end of a line.
pub(super) fn tip(page: &mut Drawing, [from, to]: Arrow, long: f64, half: f64) {
    let away = [to[0] - from[0], to[1] - from[1]];
    let size = hypot(away[0], away[1]);
    if size <= 0.0 {
        return;
    }
    let way = [away[0] / size, away[1] / size];
    let back = [to[0] - long * way[0], to[1] - long * way[1]];
    let corner = |side: f64| [back[0] - side * way[1], back[1] + side * way[0]];
    page.area(Fill::Ink, &[to, corner(half), corner(-half)]);
}

/// Strokes outside of the sides that face where a plate is held.
fn held(page: &mut Drawing, plate: &Plate, points: &[Place]) {
    let Some(side) = plate.held else {
        return;
    };
    let (x, y) = side.direction();
    let towards = [x, -y];
    let turn: f64 = {
        let next = points.iter().cycle().skip(1);
        let sides = points.iter().zip(next);
        sides.map(|(a, b)| a[0] * b[1] - a[1] * b[0]).sum()
    };
    let next = points.iter().cycle().skip(1);
    let mut strokes = Vec::new();
    for (a, b) in points.iter().zip(next) {
        let along = [b[0] - a[0], b[1] - a[1]];
        let long = hypot(along[0], along[1]);
        if long <= 0.0 {
            continue;
        }
        let sign = turn.signum() / long;
        let out = [sign * along[1], -sign * along[0]];
        if out[0] * towards[0] + out[1] * towards[1] < 0.7 {
            continue;
        }
        let mut far = 3.0;
        while far < long && strokes.len() < 400 {
            let at = [a[0] + along[0] * far / long, a[1] + along[1] * far / long];
            let slant = [out[0] + along[0] / long, out[1] + along[1] / long];
            strokes.push([at, [at[0] + 5.0 * slant[0], at[1] + 5.0 * slant[1]]]);
            far += 7.0;
        }
    }
    page.lines(Line::Thin, strokes.into_iter());
}

/// The origin of the pattern, if it is in the picture.
fn axes(page: &mut Drawing, world: &World<'_>, frame: &Frame) {
    let all = world.all;
    if all[0] > 0.0 || all[1] > 0.0 || all[2] < 0.0 || all[3] < 0.0 {
        return;
    }
    let [x, y] = frame.at([0.0, 0.0]);
    for end in [[x + 13.0, y], [x, y - 13.0]] {
        page.line(Line::Thin, [x, y], end);
        tip(page, [[x, y], end], 6.0, 2.0);
    }
    page.circle(Line::Thin, [x, y], 2.5);
}

struct Bolts<'a, 'b> {
    own: &'a Shown<'b>,
    centres: Vec<Place>,
    radius: f64,
    arrows: Vec<Option<Arrow>>,
}

impl Bolts<'_, '_> {
    fn worst(&self, at: usize) -> bool {
        at + 1 == self.own.case.bolt
    }

    fn draw(&mut self, page: &mut Drawing, room: &mut Room, longest: f64) {
        let most = self.own.most_across();
        let radius = self.radius;
        for (at, [x, y]) in self.centres.iter().enumerate() {
            if self.worst(at) {
                page.circle(Line::Outline, [*x, *y], radius + 5.0);
            }
        }
        let crosses = self.centres.iter().flat_map(|[x, y]| {
            let (from, to) = (radius, radius + 4.0);
            [
                [[x + from, *y], [x + to, *y]],
                [[x - from, *y], [x - to, *y]],
                [[*x, y + from], [*x, y + to]],
                [[*x, y - from], [*x, y - to]],
            ]
        });
        page.lines(Line::Thin, crosses);
        for centre in &self.centres {
            page.circle(Line::Outline, *centre, radius);
        }
        for (at, (centre, load)) in self.centres.iter().zip(&self.own.case.loads).enumerate() {
            let arrow = arrow_of(load, *centre, radius, length_of(load, most, longest));
            if let Some([from, to]) = arrow {
                page.line(Line::Outline, from, to);
                tip(page, [from, to], 9.0, 3.2);
                room.cross(from, to);
            }
            self.arrows.push(arrow);
            let [x, y] = *centre;
            let ring = radius + if self.worst(at) { 6.0 } else { 1.0 };
            if self.numbered_within(at) {
                let text = (at + 1).to_string();
                page.label(Style::Plain, Anchor::Middle, [x, y + 4.0], &text);
            }
            room.take([x - ring, y - ring, x + ring, y + ring]);
        }
    }

    /// Whether its number stands within its circle.
    fn numbered_within(&self, at: usize) -> bool {
        let wide = Style::Plain.width(&(at + 1).to_string());
        !self.worst(at) && 0.5 * hypot(wide, 12.0) < self.radius
    }

    fn numbers(&self, page: &mut Drawing, room: &mut Room) {
        let mut all: Vec<usize> = (0..self.centres.len()).collect();
        all.sort_by_key(|at| !self.worst(*at));
        for at in all {
            if self.numbered_within(at) {
                continue;
            }
            let Some(centre) = self.centres.get(at) else {
                continue;
            };
            let (style, ring, text) = if self.worst(at) {
                let text = format!("{}, {}", at + 1, self.own.mark());
                (Style::Strong, self.radius + 6.0, text)
            } else {
                (Style::Plain, self.radius + 1.0, (at + 1).to_string())
            };
            let mut spots = around(*centre, ring);
            if !self.worst(at) {
                // Farther away it would be the number of another one.
                spots.truncate(16);
            }
            room.put(page, style, &text, 0.0, &spots);
        }
    }

    /// Sizes of arrows and pulls, the worst bolt first and then the greatest.
    fn forces(&self, page: &mut Drawing, room: &mut Room, system: UnitSystem) {
        let mut all: Vec<usize> = (0..self.centres.len()).collect();
        let size = |at: usize| {
            let load = self.own.case.loads.get(at);
            load.map_or(0.0, |own| own.across.value.max(own.along.value.abs()))
        };
        all.sort_by(|a, b| {
            let first = self.worst(*b).cmp(&self.worst(*a));
            first.then(size(*b).total_cmp(&size(*a)))
        });
        for at in all {
            let (Some(centre), Some(load)) = (self.centres.get(at), self.own.case.loads.get(at))
            else {
                continue;
            };
            if let Some(Some(arrow)) = self.arrows.get(at) {
                let mut spots = at_tip(*arrow);
                spots.extend(around(*centre, self.radius));
                let text = shown(load.across, system).to_string();
                room.put(page, Style::Plain, &text, 0.0, &spots);
            }
            if let Some(text) = along(load, system) {
                let spots = around(*centre, self.radius);
                if let Some(sign) = room.put(page, Style::Plain, &text, 16.0, &spots) {
                    out_of_plane(page, sign, load.along.value > 0.0);
                }
            }
        }
    }
}

/// A dot in a circle comes out of the page, a cross goes into it.
pub(super) fn out_of_plane(page: &mut Drawing, [x, y]: Place, out: bool) {
    page.circle(Line::Thin, [x, y], 5.5);
    if out {
        page.dot([x, y], 2.0);
    } else {
        let d = 3.9;
        let cross = [
            [[x - d, y - d], [x + d, y + d]],
            [[x - d, y + d], [x + d, y - d]],
        ];
        page.lines(Line::Thin, cross.into_iter());
    }
}

/// Places by the tip of an arrow, and then beside it.
pub(super) fn at_tip([from, to]: Arrow) -> Vec<Spot> {
    let [x, y] = to;
    let (right, down) = (to[0] >= from[0], to[1] >= from[1]);
    let beyond = (Anchor::Middle, [x, if down { y + 13.0 } else { y - 5.0 }]);
    let start = (Anchor::Start, [x + 5.0, y + 4.0]);
    let end = (Anchor::End, [x - 5.0, y + 4.0]);
    let flat = (to[0] - from[0]).abs() > (to[1] - from[1]).abs();
    let mut spots = Vec::with_capacity(44);
    match (flat, right) {
        (true, true) => spots.extend([start, beyond, end]),
        (true, false) => spots.extend([end, beyond, start]),
        (false, true) => spots.extend([beyond, start, end]),
        (false, false) => spots.extend([beyond, end, start]),
    }
    let middle = [0.5 * (from[0] + to[0]), 0.5 * (from[1] + to[1])];
    spots.extend([
        (Anchor::Start, [middle[0] + 6.0, middle[1] + 4.0]),
        (Anchor::End, [middle[0] - 6.0, middle[1] + 4.0]),
        (Anchor::Middle, [middle[0], middle[1] - 6.0]),
        (Anchor::Middle, [middle[0], middle[1] + 14.0]),
    ]);
    spots
}

/// The name of a plate at one of its sides, on the line.
fn name(page: &mut Drawing, room: &mut Room, name: &str, points: &[Place]) {
    let text = Style::Note.fit(name, 150.0);
    let next = points.iter().cycle().skip(1);
    let mut sides: Vec<(&Place, &Place)> = points.iter().zip(next).collect();
    let long = |(a, b): &(&Place, &Place)| hypot(b[0] - a[0], b[1] - a[1]);
    sides.sort_by(|a, b| long(b).total_cmp(&long(a)));
    let mut spots = Vec::with_capacity(128);
    for part in [0.5, 0.25, 0.75, 0.05, 0.95] {
        for (a, b) in sides.iter().take(24) {
            let (x, y) = (a[0] + part * (b[0] - a[0]), a[1] + part * (b[1] - a[1]));
            if (b[0] - a[0]).abs() > 1.5 * (b[1] - a[1]).abs() {
                spots.extend([
                    (Anchor::Middle, [x, y - 4.0]),
                    (Anchor::Middle, [x, y + 14.0]),
                ]);
            } else {
                spots.extend([(Anchor::Start, [x + 5.0, y]), (Anchor::End, [x - 5.0, y])]);
            }
        }
    }
    room.put(page, Style::Note, &text, 0.0, &spots);
}
