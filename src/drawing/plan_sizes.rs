//! Sizes of a plan: pitches of the bolts, distances to the edges of the plates.

use alloc::{format, string::String, vec::Vec};

use super::canvas::Drawing;
use super::kinds::{Anchor, Line};
use super::page::number;
use super::plan::{Frame, NOTHING, Place, add, corners, least_distance, places, tip};
use super::room::{Room, Spot};
use super::text::Style;
use crate::connection::Connection;
use crate::math::hypot;
use crate::units::{UnitSystem, from_base};

/// Between lines of sizes beside the plan, and below it.
const BESIDE: f64 = 64.0;
const BELOW: f64 = 26.0;
/// Lines of sizes of plates each way; the list says the least distance of every one.
const MOST: usize = 2;
/// What is one place, in millimetres: rounding of a drawing.
const SAME: f64 = 1e-4;

/// Sizes along one axis, a line of each chain: the places between which they lie.
type Chains = Vec<Vec<[f64; 2]>>;

pub(super) struct Sizes {
    system: UnitSystem,
    /// Pitches along x and y.
    pitches: [Vec<[f64; 2]>; 2],
    /// Distances to the edges of rectangles along x and y, with the levels at which their lines begin.
    edges: [Chains; 2],
    /// The radius and the centre, if the bolts stand in a circle.
    circle: Option<(f64, Place)>,
    /// From bolts to the nearest edge of plates that are no rectangles, in millimetres.
    slanting: Vec<[Place; 2]>,
}

/// The text of a length in millimetres.
fn value(millimetres: f64, system: UnitSystem) -> String {
    number(from_base(1e-3 * millimetres), system)
}

/// Different places in order.
fn stops(mut all: Vec<f64>) -> Vec<f64> {
    all.sort_by(f64::total_cmp);
    all.dedup_by(|a, b| (*a - *b).abs() < SAME);
    all
}

fn circle(bolts: &[Place]) -> Option<(f64, Place)> {
    if bolts.len() < 3 {
        return None;
    }
    #[allow(clippy::cast_precision_loss)] // a few hundred
    let count = bolts.len() as f64;
    let centre = [0, 1].map(|axis: usize| {
        let along = bolts.iter().filter_map(|own| own.get(axis));
        along.sum::<f64>() / count
    });
    let away = bolts
        .iter()
        .map(|own| hypot(own[0] - centre[0], own[1] - centre[1]));
    let (least, most) = away.fold((f64::INFINITY, 0.0_f64), |(least, most), own| {
        (least.min(own), most.max(own))
    });
    (most - least < SAME).then_some((most, centre))
}

impl Sizes {
    pub(super) fn new(connection: &Connection, system: UnitSystem) -> Self {
        let bolts = places(connection);
        let along = |axis: usize| -> Vec<f64> {
            stops(
                bolts
                    .iter()
                    .filter_map(|own| own.get(axis).copied())
                    .collect(),
            )
        };
        let stops = [along(0), along(1)];
        // Rows and columns have their sizes along both axes, even where they lie on a circle.
        let rows = stops[0].len() * stops[1].len() == bolts.len();
        let circle = circle(&bolts).filter(|_| !rows);
        let pitches = [0, 1].map(|axis: usize| {
            if circle.is_some() {
                return Vec::new();
            }
            let stops = stops.get(axis).map_or(&[][..], Vec::as_slice);
            let next = stops.iter().skip(1);
            stops.iter().zip(next).map(|(a, b)| [*a, *b]).collect()
        });
        let mut edges: [Chains; 2] = [Vec::new(), Vec::new()];
        let mut slanting = Vec::new();
        for plate in &connection.plates {
            let corners = corners(&plate.outline);
            let mut all = NOTHING;
            for corner in &corners {
                add(&mut all, *corner, 0.0);
            }
            let on_sides = corners.iter().all(|[x, y]| {
                let at = |place: f64, edge: f64| (place - edge).abs() < SAME;
                (at(*x, all[0]) || at(*x, all[2])) && (at(*y, all[1]) || at(*y, all[3]))
            });
            if !on_sides || corners.len() != 4 {
                if let Some(own) = least_distance(connection, plate) {
                    slanting.push([own.from, own.to]);
                }
                continue;
            }
            let ends = [[all[0], all[2]], [all[1], all[3]]];
            for ((chains, stops), [least, most]) in edges.iter_mut().zip(&stops).zip(ends) {
                if let (Some(first), Some(last)) = (stops.first(), stops.last()) {
                    let chain = Vec::from([[least, *first], [*last, most]]);
                    let is_new = chains.iter().all(|own| !same(own, &chain));
                    if is_new && chains.len() < MOST {
                        chains.push(chain);
                    }
                }
            }
        }
        Self {
            system,
            pitches,
            edges,
            circle,
            slanting,
        }
    }

    /// How much it takes below the plan.
    pub(super) fn height(&self) -> f64 {
        let [pitches, _] = &self.pitches;
        let [edges, _] = &self.edges;
        BELOW * lines(pitches, edges)
    }

    /// Draws them around the plan, which takes an area of the page.
    pub(super) fn draw(
        &self,
        page: &mut Drawing,
        room: &mut Room,
        frame: &Frame,
        [reach, bottom]: [f64; 2],
        (bolts, radius): (&[Place], f64),
    ) {
        let least = |axis: usize| {
            let along = bolts.iter().filter_map(|own| own.get(axis).copied());
            along.fold(f64::INFINITY, f64::min)
        };
        let corner = [least(0), least(1)];
        // Lines begin below or left of the outermost bolt there; those to edges, of all.
        let start = |stop: f64, axis: usize| {
            let at = |own: &&Place| own.get(axis).is_some_and(|own| (own - stop).abs() < SAME);
            let own = bolts.iter().filter(at);
            let across = own.filter_map(|own| own.get(1 - axis).copied());
            across
                .reduce(f64::min)
                .or_else(|| corner.get(1 - axis).copied())
                .unwrap_or(0.0)
        };
        let [x_pitches, y_pitches] = &self.pitches;
        let [x_edges, y_edges] = &self.edges;
        let mut y = bottom;
        for (chain, is_pitch) in all(x_pitches, x_edges) {
            let chain = on_page(chain, |own| frame.at([own, 0.0])[0]);
            let chain = self.joined(&chain, is_pitch, |own| own.has_room_across(self.system));
            for stop in stops(chain.iter().flat_map(|own| own.stops).collect()) {
                let [x, from] = frame.at([stop, start(stop, 0)]);
                page.line(Line::Thin, [x, from + radius + 6.0], [x, y + 4.0]);
            }
            self.along_x(page, room, &chain, y);
            y += BELOW;
        }
        let mut x = reach - 14.0 - 0.5 * BESIDE;
        for (chain, is_pitch) in all(y_pitches, y_edges) {
            let chain = on_page(chain, |own| frame.at([0.0, own])[1]);
            let chain = self.joined(&chain, is_pitch, Span::has_room_up);
            for stop in stops(chain.iter().flat_map(|own| own.stops).collect()) {
                let [from, y] = frame.at([start(stop, 1), stop]);
                page.line(Line::Thin, [from - radius - 6.0, y], [x - 4.0, y]);
            }
            self.along_y(page, room, &chain, x);
            x -= BESIDE;
        }
        self.label_circle(page, room, frame);
        for [from, to] in &self.slanting {
            let size = value(hypot(to[0] - from[0], to[1] - from[1]), self.system);
            let ends = [frame.at(*from), frame.at(*to)];
            page.line(Line::Thin, ends[0], ends[1]);
            tip(page, ends, 8.0, 2.2);
            // By its arrow: where two lines lie on each other it is that which tells them apart.
            let [x, y] = ends[1];
            let mut spots: Vec<Spot> = Vec::from([
                (Anchor::Start, [x + 4.0, y - 5.0]),
                (Anchor::End, [x - 4.0, y - 5.0]),
            ]);
            spots.extend(super::room::around(ends[1], 0.0));
            room.put(page, Style::Plain, &size, 0.0, &spots);
        }
    }

    /// The circle on which the bolts stand, which lies under them.
    pub(super) fn draw_circle(&self, page: &mut Drawing, frame: &Frame) {
        if let Some(circle) = self.circle {
            let points: Vec<Place> = (0..72).map(|step| on_circle(frame, circle, step)).collect();
            page.path(Line::Centre, None, &points, true);
        }
    }

    fn label_circle(&self, page: &mut Drawing, room: &mut Room, frame: &Frame) {
        let Some(circle) = self.circle else {
            return;
        };
        let text = format!("circle {}", value(2.0 * circle.0, self.system));
        let [x, y] = frame.at(circle.1);
        let mut spots: Vec<Spot> = Vec::from([(Anchor::Middle, [x, y + 44.0])]);
        for step in [9, 27, 45, 63, 5, 14, 23, 32, 41, 50, 59, 68] {
            let [x, y] = on_circle(frame, circle, step);
            spots.push((Anchor::Middle, [x, y + 4.0]));
        }
        room.put(page, Style::Plain, &text, 0.0, &spots);
    }

    /// Pitches of which one has no room are said together.
    fn joined(&self, chain: &[Span], is_pitch: bool, fits: impl Fn(&Span) -> bool) -> Vec<Span> {
        merged(chain, self.system, is_pitch && !chain.iter().all(fits))
    }

    fn along_x(&self, page: &mut Drawing, room: &mut Room, chain: &[Span], y: f64) {
        for (own, at) in chain.iter().zip(0..) {
            let text = own
                .said
                .clone()
                .unwrap_or_else(|| own.text(self.system))
                .join(" ");
            let wide = Style::Plain.width(&text);
            let middle = (Anchor::Middle, [0.5 * (own.from + own.to), y - 3.0]);
            let left = (Anchor::End, [own.from - 18.0, y + 4.0]);
            let right = (Anchor::Start, [own.to + 18.0, y + 4.0]);
            let inside = own.to - own.from >= wide + 14.0;
            let spots = match (inside, at) {
                (true, _) => Vec::from([middle]),
                (false, 0) => Vec::from([left, right]),
                (false, _) => Vec::from([right, left]),
            };
            if own.to - own.from < 0.5 {
                continue;
            }
            if room.put(page, Style::Plain, &text, 0.0, &spots).is_some() {
                line_between(page, [own.from, y], [own.to, y]);
            }
        }
    }

    fn along_y(&self, page: &mut Drawing, room: &mut Room, chain: &[Span], x: f64) {
        for own in chain {
            let lines = own.said.clone().unwrap_or_else(|| own.text(self.system));
            let middle = 0.5 * (own.from + own.to);
            if own.to - own.from < 0.5 {
                continue;
            }
            let text = lines.join(" ");
            let two = lines.len() > 1 && own.to - own.from >= 50.0;
            let put = if two {
                let mut put = true;
                for (line, y) in lines.iter().zip([middle - 3.0, middle + 13.0]) {
                    let spot = [(Anchor::Middle, [x, y])];
                    put &= room.put(page, Style::Plain, line, 0.0, &spot).is_some();
                }
                put
            } else {
                let mut spots = Vec::new();
                if own.to - own.from >= 34.0 {
                    spots.push((Anchor::Middle, [x, middle + 4.0]));
                }
                let (below, above) = (
                    (Anchor::Middle, [x, own.to + 27.0]),
                    (Anchor::Middle, [x, own.from - 18.0]),
                );
                // Outside of the plan, away from what lies between.
                if own.is_last {
                    spots.extend([above, below]);
                } else {
                    spots.extend([below, above]);
                }
                room.put(page, Style::Plain, &text, 0.0, &spots).is_some()
            };
            if put {
                line_between(page, [x, own.from], [x, own.to]);
            }
        }
    }
}

/// A point of a circle, in steps of five degrees.
fn on_circle(frame: &Frame, (radius, centre): (f64, Place), step: i32) -> Place {
    let angle = core::f64::consts::TAU * f64::from(step) / 72.0;
    let (sin, cos) = (crate::math::sin(angle), crate::math::cos(angle));
    frame.at([centre[0] + radius * cos, centre[1] + radius * sin])
}

/// How much room they take at the left.
pub(super) fn room_left(sizes: &Sizes) -> f64 {
    let [_, pitches] = &sizes.pitches;
    let [_, edges] = &sizes.edges;
    BESIDE * lines(pitches, edges) + 14.0
}

#[allow(clippy::cast_precision_loss)] // three at most
fn lines(pitches: &[[f64; 2]], edges: &Chains) -> f64 {
    (usize::from(!pitches.is_empty()) + edges.len()) as f64
}

/// The chains in the order of their lines, and which is that of the pitches.
fn all<'a>(
    pitches: &'a [[f64; 2]],
    edges: &'a Chains,
) -> impl Iterator<Item = (&'a [[f64; 2]], bool)> {
    let first = (!pitches.is_empty()).then_some((pitches, true));
    let edges = edges.iter().map(|own| (own.as_slice(), false));
    first.into_iter().chain(edges)
}

fn same(a: &[[f64; 2]], b: &[[f64; 2]]) -> bool {
    let (a, b) = (a.iter().flatten(), b.iter().flatten());
    a.zip(b).all(|(a, b)| (a - b).abs() < SAME)
}

/// A size on the page.
#[derive(Clone)]
struct Span {
    from: f64,
    to: f64,
    millimetres: f64,
    /// Its ends in millimetres.
    stops: [f64; 2],
    /// What it says in place of its length, in lines.
    said: Option<Vec<String>>,
    is_last: bool,
}

impl Span {
    fn has_room_across(&self, system: UnitSystem) -> bool {
        let wide = Style::Plain.width(&value(self.millimetres, system));
        self.to - self.from >= wide + 14.0
    }

    fn has_room_up(&self) -> bool {
        self.to - self.from >= 34.0
    }

    fn text(&self, system: UnitSystem) -> Vec<String> {
        Vec::from([value(self.millimetres, system)])
    }
}

fn on_page(chain: &[[f64; 2]], place: impl Fn(f64) -> f64) -> Vec<Span> {
    let count = chain.len();
    let spans = chain.iter().zip(1..).map(|([a, b], at)| {
        let (from, to) = (place(*a), place(*b));
        Span {
            from: from.min(to),
            to: from.max(to),
            millimetres: b - a,
            stops: [*a, *b],
            said: None,
            is_last: at == count,
        }
    });
    spans.collect()
}

/// One size for all where each has no room: as many times the pitch, or their sum.
fn merged(chain: &[Span], system: UnitSystem, wanted: bool) -> Vec<Span> {
    let (Some(first), true) = (chain.first(), wanted && chain.len() > 1) else {
        return chain.to_vec();
    };
    let sum: f64 = chain.iter().map(|own| own.millimetres).sum();
    let equal = chain
        .iter()
        .all(|own| (own.millimetres - first.millimetres).abs() < SAME);
    let total = value(sum, system);
    let said = if equal {
        let each = value(first.millimetres, system);
        Vec::from([format!("{} x {each}", chain.len()), format!("= {total}")])
    } else {
        Vec::from([total])
    };
    Vec::from([Span {
        from: chain
            .iter()
            .map(|own| own.from)
            .fold(f64::INFINITY, f64::min),
        to: chain
            .iter()
            .map(|own| own.to)
            .fold(f64::NEG_INFINITY, f64::max),
        millimetres: sum,
        stops: [
            first.stops[0],
            chain.last().map_or(first.stops[1], |own| own.stops[1]),
        ],
        said: Some(said),
        is_last: true,
    }])
}

/// The line of a size with its arrows; from outside where there is no room between.
fn line_between(page: &mut Drawing, from: Place, to: Place) {
    let away = hypot(to[0] - from[0], to[1] - from[1]);
    let way = [(to[0] - from[0]) / away, (to[1] - from[1]) / away];
    let beyond = |at: Place, far: f64| [at[0] + far * way[0], at[1] + far * way[1]];
    if away >= 22.0 {
        page.line(Line::Thin, from, to);
        tip(page, [to, from], 8.0, 2.2);
        tip(page, [from, to], 8.0, 2.2);
        return;
    }
    let (before, behind) = (beyond(from, -14.0), beyond(to, 14.0));
    page.line(Line::Thin, before, behind);
    tip(page, [before, from], 8.0, 2.2);
    tip(page, [behind, to], 8.0, 2.2);
}
