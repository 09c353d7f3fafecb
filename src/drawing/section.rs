//! The section of a joint, and below it at the same scale where everything may lie in the worst case.

use alloc::{format, string::String, string::ToString, vec::Vec};

use super::canvas::{Drawing, spread_out};
use super::kinds::{Anchor, Fill, Line};
use super::legend::{description, notes, numbered, tables};
use super::page::{INNER, MARGIN, WIDTH, head, units};
use super::shapes::{Part, Shapes, mm, shapes};
use super::strip::strip;
use super::text::Style;
use crate::assembly::{Assembly, End};
use crate::joint::Verdict;
use crate::spread::Spread;
use crate::units::{Length, UnitSystem};

/// The section of a joint along the axis of its bolt. Below it, at the same scale, a strip shows in the worst case how far
/// the shank is sure to reach, from where on the thread is sure to be full, and where shear planes, faces of the nut and
/// end of the bolt may lie; then a list of the parts and of the planes.
///
/// The bolt, its nut and the washers are drawn from outside, as technical drawings have it; what they hold is cut.
/// Threads are drawn by ISO 6410: crests wide, roots narrow, the end of full thread as a wide line. The section has the
/// nominal sizes, but for shank and thread, of which standards give one limit each. Sizes that nobody has read or stated
/// are drawn dotted, and listed. Without a verdict the picture says that it is none.
///
#[cfg_attr(doc, doc = include_str!("pictures/section.html"))]
///
/// Numbers have a decimal point in both systems of units, as everywhere in this crate. (Drawings by ISO 129-1 have a comma.)
///
/// ```
/// use shankline::drawing;
/// use shankline::prelude::*;
#[doc = include_str!("../joint/whole/example.txt")]
/// let verdict = joint.check()?;
/// let assembly = joint.assembly(&verdict.candidate)?;
/// let page = drawing::section(&assembly, Some(&verdict), UnitSystem::Si);
/// assert!(page.overlaps().is_empty());
/// assert!(page.svg().contains("HOLDS"));
/// # Ok(())
/// # }
/// ```
#[must_use]
pub fn section(assembly: &Assembly, verdict: Option<&Verdict>, system: UnitSystem) -> Drawing {
    let geometry = shapes(assembly);
    let mut page = Drawing::new(WIDTH, &title(assembly), "");
    let mut top = head(
        &mut page,
        &title(assembly),
        &lines(assembly, system),
        verdict,
        system,
    );
    if verdict.is_none() {
        let none =
            "No verdict: the picture shows where the parts are, not whether the joint holds.";
        page.label(Style::Strong, Anchor::Start, [MARGIN, top], none);
        top += 20.0;
    }
    let scale = Scale::new(&geometry);
    let leaders = Leaders::new(assembly, &geometry, &scale, top);
    let middle = leaders.edge + geometry.radius * scale.k;
    view(&mut page, &geometry, &scale, middle);
    leaders.draw(&mut page, &scale, middle);
    let section = [leaders.edge, middle + geometry.radius * scale.k];
    let y = strip(&mut page, assembly, &scale, section, system);
    let y = tables(&mut page, assembly, y + 26.0, system);
    let y = notes(&mut page, assembly, y + 8.0);
    page.end_at(y + 8.0);
    page.describe(description(assembly, verdict, system));
    page
}

fn title(assembly: &Assembly) -> String {
    if assembly.title.trim().is_empty() {
        "Joint without a title".into()
    } else {
        assembly.title.clone()
    }
}

/// What is drawn, in a line or two.
fn lines(assembly: &Assembly, system: UnitSystem) -> Vec<String> {
    let bolt = &assembly.bolt;
    let grade = bolt.grade.as_deref().map(|grade| format!(", {grade}"));
    let mut lines = Vec::from([format!(
        "{} {}{}",
        bolt.designation,
        bolt.product,
        grade.unwrap_or_default()
    )]);
    lines.push(match &assembly.end {
        End::Nut(nut) => format!("{}. Sizes in {}.", nut.name, units(system)),
        End::Tapped(part) => format!("Screwed into {}. Sizes in {}.", part.name, units(system)),
    });
    lines
}

/// Room for the captions of the strip.
const CAPTIONS: f64 = 136.0;

/// From millimetres along the axis to the page.
pub(super) struct Scale {
    k: f64,
    left: f64,
    origin: f64,
}

impl Scale {
    /// As large as the page has room for, and not so large that a small bolt looks like a shaft. Left of the bearing face
    /// there is room for the captions of the strip.
    fn new(geometry: &Shapes) -> Self {
        /// What the axis stands out by.
        const OVER: f64 = 14.0;
        const HIGHEST: f64 = 330.0;
        let [from, to] = geometry.along;
        let room = INNER - 2.0 * OVER;
        let fitting = (room / (to - from).max(1e-3)).min((room - CAPTIONS) / to.max(1e-3));
        let k = fitting
            .min(HIGHEST / (2.0 * geometry.radius.max(1e-3)))
            .min(60.0);
        let left = (0.5 * (WIDTH - (to - from) * k)).max(MARGIN + OVER + CAPTIONS + from * k);
        Self {
            k,
            left: left.min(WIDTH - MARGIN - OVER - (to - from) * k),
            origin: from,
        }
    }

    fn x(&self, millimetres: f64) -> f64 {
        self.left + (millimetres - self.origin) * self.k
    }

    pub(super) fn at(&self, length: Length) -> f64 {
        self.x(mm(length)).clamp(4.0, WIDTH - 4.0)
    }

    pub(super) fn all(&self, of: Spread<Length>) -> [f64; 3] {
        [self.at(of.min), self.at(of.nominal), self.at(of.max)]
    }
}

/// Numbers in circles above the section, each with a line to its part (ISO 6433, as recalled).
struct Leaders {
    /// Number, place across the page, point in the part from the axis, place of the circle.
    items: Vec<(usize, f64, f64, f64)>,
    rows: usize,
    first: f64,
    last: f64,
    /// Where the plies begin.
    edge: f64,
}

impl Leaders {
    const RADIUS: f64 = 10.0;

    fn new(assembly: &Assembly, geometry: &Shapes, scale: &Scale, top: f64) -> Self {
        let numbers = numbered(assembly);
        let mut items: Vec<(usize, f64, f64, f64)> = numbers
            .iter()
            .zip(&geometry.marks)
            .filter_map(|(number, [x, r])| Some(((*number)?, scale.x(*x), *r, 0.0)))
            .collect();
        items.sort_by(|a, b| a.1.total_cmp(&b.1).then(a.0.cmp(&b.0)));
        // So many circles stand in a row; more take turns in two or more rows.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let in_a_row = (INNER / (2.0 * Self::RADIUS + 3.0)) as usize;
        let rows = items.len().div_ceil(in_a_row.max(1)).max(1);
        #[allow(clippy::cast_precision_loss)] // a handful of rows
        let count = rows as f64;
        let places: Vec<f64> = items.iter().map(|item| item.1).collect();
        let halves: Vec<f64> = items.iter().map(|_| Self::RADIUS / count).collect();
        let apart = spread_out(&places, &halves, 3.0 / count, [MARGIN, WIDTH - MARGIN]);
        for (item, place) in items.iter_mut().zip(apart) {
            item.3 = place;
        }
        let first = top + Self::RADIUS;
        let last = first + (count - 1.0) * 24.0;
        Self {
            items,
            rows,
            first,
            last,
            edge: last + Self::RADIUS + 26.0,
        }
    }

    fn draw(&self, page: &mut Drawing, scale: &Scale, middle: f64) {
        for (at, (_, x, r, place)) in self.items.iter().enumerate() {
            #[allow(clippy::cast_precision_loss)] // a handful of rows
            let y = self.first + 24.0 * (at % self.rows) as f64;
            let mark = [*x, middle - r * scale.k];
            let bend = [*x, self.edge - 6.0];
            let below = [*place, self.last + Self::RADIUS + 2.0];
            let line = [[*place, y + Self::RADIUS], below, bend, mark];
            page.path(Line::Thin, None, &line, false);
            page.dot(mark, 2.0);
        }
        // Over all lines.
        for (at, (number, .., place)) in self.items.iter().enumerate() {
            #[allow(clippy::cast_precision_loss)] // a handful of rows
            let y = self.first + 24.0 * (at % self.rows) as f64;
            page.circle(Line::Thin, [*place, y], Self::RADIUS);
            let text = number.to_string();
            page.label(Style::Note, Anchor::Middle, [*place, y + 4.0], &text);
        }
    }
}

/// The section itself.
fn view(page: &mut Drawing, geometry: &Shapes, scale: &Scale, middle: f64) {
    let place = |[x, r]: [f64; 2]| [scale.x(x), middle - r * scale.k];
    let is_cut = |part: Part| matches!(part, Part::Cut(_));
    for cut in [true, false] {
        for shape in geometry.lines.iter().filter(|own| is_cut(own.part) == cut) {
            let mut points: Vec<[f64; 2]> = shape.points.iter().map(|own| place(*own)).collect();
            if shape.part == Part::Thread && shape.line == Line::Thin {
                // Crest and root stay apart where the thread is small.
                for point in &mut points {
                    let from_axis = point[1] - middle;
                    let most = (scale.k * geometry.crest - 2.2).max(0.0);
                    point[1] = middle + from_axis.clamp(-most, most);
                }
            }
            let fill = shape.closed.then_some(Fill::Paper);
            page.path(shape.line, fill, &points, shape.closed);
        }
        if cut {
            hatching(page, geometry, scale, middle);
        }
    }
    let [from, to] = geometry.along;
    let ends = [[scale.x(from) - 14.0, middle], [scale.x(to) + 14.0, middle]];
    page.line(Line::Centre, ends[0], ends[1]);
}

/// Each part in section is hatched its own way: the direction changes from part to part, and the distance of the lines.
fn hatching(page: &mut Drawing, geometry: &Shapes, scale: &Scale, middle: f64) {
    let mut cuttings = geometry.cuttings.iter().peekable();
    while let Some(first) = cuttings.next() {
        let mut areas = Vec::with_capacity(8);
        let mut add = |along: [f64; 2], radii: [f64; 2]| {
            let (left, right) = (scale.x(along[0]), scale.x(along[1]));
            let (inner, outer) = (radii[0] * scale.k, radii[1] * scale.k);
            areas.push([left, middle - outer, right, middle - inner]);
            areas.push([left, middle + inner, right, middle + outer]);
        };
        add(first.along, first.radii);
        while let Some(next) = cuttings.next_if(|next| next.turn == first.turn) {
            add(next.along, next.radii);
        }
        // A part too thin to be hatched is black.
        let widest = areas.iter().map(|area| area[2] - area[0]);
        if widest.fold(0.0, f64::max) < 2.5 {
            for area in &areas {
                page.rectangle(Fill::Ink, *area);
            }
            continue;
        }
        let step = if first.turn % 4 < 2 { 7.0 } else { 10.0 };
        page.hatch_all(Line::Hatch, &areas, first.turn % 2 == 0, step);
    }
}
