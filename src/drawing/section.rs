//! The section of a joint, and below it at the same scale where everything may lie in the worst case.

use alloc::{format, string::String, string::ToString, vec::Vec};

use super::canvas::{Anchor, Drawing, Fill, Line, spread_out};
use super::page::{INNER, MARGIN, Table, WIDTH, between, head, number, size, spread, units, zone};
use super::shapes::{Part, Shapes, mm, shapes};
use super::text::Style;
use crate::assembly::{Assembly, End, Layer};
use crate::joint::{HeadSeat, LayerKind, Verdict};
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
        let none = "No verdict: the picture shows where the parts are, not whether the joint holds.";
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
struct Scale {
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

    fn at(&self, length: Length) -> f64 {
        self.x(mm(length)).clamp(4.0, WIDTH - 4.0)
    }

    fn all(&self, of: Spread<Length>) -> [f64; 3] {
        [self.at(of.min), self.at(of.nominal), self.at(of.max)]
    }
}

/// The layers, then the sleeves, then what closes the joint: each has a number, but for gaps.
fn numbered(assembly: &Assembly) -> Vec<Option<usize>> {
    let mut next = 0;
    let mut number = |has: bool| {
        has.then(|| {
            next += 1;
            next
        })
    };
    let mut numbers: Vec<Option<usize>> = assembly
        .layers
        .iter()
        .map(|layer| number(layer.kind != LayerKind::Gap))
        .collect();
    numbers.extend(assembly.sleeves.iter().map(|_| number(true)));
    numbers.push(number(true));
    numbers
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
        for shape in geometry.shapes.iter().filter(|own| is_cut(own.part) == cut) {
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
        let step = [7.0, 7.0, 10.0, 10.0][first.turn % 4];
        page.hatch_all(Line::Hatch, &areas, first.turn % 2 == 0, step);
    }
}

/// Where everything may lie: a row each for bolt, shear planes, faces of the nut and end, then the dimensions. Returns where
/// it ends.
fn strip(
    page: &mut Drawing,
    assembly: &Assembly,
    scale: &Scale,
    section: [f64; 2],
    system: UnitSystem,
) -> f64 {
    let bolt = &assembly.bolt;
    let zero = scale.at(Length::default());
    let (shank, thread) = (scale.at(bolt.shank_end), scale.at(bolt.thread_start));
    let end = scale.all(bolt.end);
    let caption = |page: &mut Drawing, y: f64, text: &str| {
        let text = Style::Note.fit(text, zero - 10.0 - MARGIN);
        page.label(Style::Note, Anchor::Start, [MARGIN, y], &text);
    };
    let mut y = section[1] + 34.0;
    // The guides lie under everything else.
    let guides_from = page.mark();
    let (top, bottom) = (y, y + 18.0);
    let sure = end[0].max(thread);
    caption(page, y + 13.0, "Bolt, worst case");
    zone(page, Fill::Shank, [zero, top, shank, bottom]);
    zone(page, Fill::RunOut, [shank, top, thread, bottom]);
    zone(page, Fill::Thread, [thread, top, sure, bottom]);
    zone(page, Fill::Doubt, [sure, top, end[2].max(sure), bottom]);
    y = bottom + 6.0;
    if !assembly.planes.is_empty() {
        caption(page, y + 10.5, "Shear planes");
        y = planes(page, assembly, scale, section, [top, y]);
    }
    zone_names(page, [zero, shank, thread, sure], top);
    y += 12.0;
    let names = match &assembly.end {
        End::Nut(_) => ["Nut, bearing face", "Nut, outer face"],
        End::Tapped(_) => ["Thread begins", "Must be filled to"],
    };
    let faces = assembly.end.at();
    let mut rows = Vec::from([(names[0], faces.from), (names[1], faces.to)]);
    if assembly.bolt.cut.is_some() {
        rows.push(("End, as cut", bolt.end));
        rows.push(("End, as bought", bolt.length));
    } else {
        rows.push(("End of the bolt", bolt.end));
    }
    for (name, at) in rows {
        caption(page, y + 4.0, name);
        between(page, scale.all(at), y, 5.0);
        y += 15.0;
    }
    // The two limits go through all rows, so that whoever looks sees what lies on which side.
    page.under(guides_from, |page| {
        for x in [shank, thread].iter().filter(|x| **x > zero + 0.5) {
            page.line(Line::Thin, [*x, bottom], [*x, y]);
        }
    });
    dimensions(page, assembly, scale, y, system)
}

/// The names of the zones, above the bar; where one has no room, it moves.
fn zone_names(page: &mut Drawing, ends: [f64; 4], bar: f64) {
    let [zero, shank, thread, sure] = ends;
    let named = [
        (zero, shank, "shank"),
        (shank, thread, "run-out"),
        (thread, sure, "thread"),
    ];
    let there: Vec<_> = named.iter().filter(|own| own.1 - own.0 > 0.1).collect();
    let places: Vec<f64> = there.iter().map(|own| 0.5 * (own.0 + own.1)).collect();
    let halves: Vec<f64> = there
        .iter()
        .map(|own| 0.5 * Style::Note.width(own.2))
        .collect();
    let apart = spread_out(&places, &halves, 10.0, [MARGIN, WIDTH - MARGIN]);
    for ((own, place), x) in there.iter().zip(&places).zip(&apart) {
        if (x - place).abs() > 4.0 {
            page.line(Line::Thin, [*x, bar - 5.0], [*place, bar + 4.0]);
            page.dot([*place, bar + 4.0], 1.5);
        }
        page.label(Style::Note, Anchor::Middle, [*x, bar - 7.0], own.2);
    }
}

/// Each shear plane as a band from its least to its greatest place, in as many rows as keep them apart, and a line through
/// the section and the bar of the bolt at its nominal place. Returns where they end.
fn planes(
    page: &mut Drawing,
    assembly: &Assembly,
    scale: &Scale,
    section: [f64; 2],
    [bar, top]: [f64; 2],
) -> f64 {
    const ROW: f64 = 15.0;
    let mut ends: Vec<f64> = Vec::new();
    let mut feet = Vec::with_capacity(assembly.planes.len());
    for (plane, number) in assembly.planes.iter().zip(1..) {
        let [least, nominal, greatest] = scale.all(plane.position);
        let greatest = greatest.max(least + 1.0);
        let name = format!("{number}");
        let from = least - 6.0 - Style::Note.width(&name);
        let row = ends.iter().position(|end| *end < from - 2.0);
        let row = row.unwrap_or(ends.len());
        match ends.get_mut(row) {
            Some(end) => *end = greatest,
            None => ends.push(greatest),
        }
        #[allow(clippy::cast_precision_loss)] // a handful of rows
        let y = top + ROW * row as f64;
        page.rectangle(Fill::PlaneDoubt, [least, y + 1.0, greatest, y + 12.0]);
        // The edge that counts: the worst case is the greatest distance from the head.
        page.line(Line::Outline, [greatest, y], [greatest, y + 13.0]);
        page.label_on_lines(Style::Note, Anchor::End, [least - 4.0, y + 10.5], &name);
        feet.push([nominal, y + 12.0]);
    }
    for [x, y] in feet {
        page.line(Line::Plane, [x, section[0]], [x, section[1] + 3.0]);
        page.line(Line::Plane, [x, bar - 2.0], [x, y]);
    }
    #[allow(clippy::cast_precision_loss)] // a handful of rows
    let rows = ends.len().max(1) as f64;
    top + ROW * rows
}

/// The lengths from the head on, the shortest first. Returns where they end.
fn dimensions(
    page: &mut Drawing,
    assembly: &Assembly,
    scale: &Scale,
    top: f64,
    system: UnitSystem,
) -> f64 {
    let bolt = &assembly.bolt;
    let mut all = Vec::from([("grip", assembly.grip.nominal), ("L", bolt.length.nominal)]);
    if bolt.shank_end > Length::default() {
        all.push(("LB min", bolt.shank_end));
    }
    if bolt.thread_start > Length::default() {
        all.push(("LG max", bolt.thread_start));
    }
    if let Some(cut) = &bolt.cut {
        all.push(("cut to", cut.length));
    }
    all.sort_by(|a, b| a.1.value.total_cmp(&b.1.value));
    let zero = scale.at(Length::default());
    let mut y = top + 14.0;
    for (name, length) in &all {
        let x = scale.at(*length);
        let value = format!("{name} {}", number(*length, system));
        page.line(Line::Thin, [x, top - 4.0], [x, y + 3.0]);
        page.dimension_beside(zero, x, y, &value, true);
        y += 20.0;
    }
    page.line(Line::Thin, [zero, top - 4.0], [zero, y - 17.0]);
    // What stands past the nut, or is missing there.
    if let End::Nut(nut) = &assembly.end {
        let past = bolt.end.nominal - nut.at.to.nominal;
        if past > Length::default() {
            let (from, to) = (scale.at(nut.at.to.nominal), scale.at(bolt.end.nominal));
            for x in [from, to] {
                page.line(Line::Thin, [x, top - 4.0], [x, y + 3.0]);
            }
            page.dimension(from, to, y, &format!("past the nut {}", number(past, system)));
            y += 20.0;
        }
    }
    y - 12.0
}

/// The parts, and the planes beside them if there is room.
fn tables(page: &mut Drawing, assembly: &Assembly, top: f64, system: UnitSystem) -> f64 {
    let parts = parts(assembly, system);
    let planes = plane_table(assembly, system);
    if planes.rows.is_empty() {
        let columns = parts.columns(INNER);
        return parts.draw(page, [MARGIN, top], &columns);
    }
    let planes_columns = planes.columns(INNER);
    let planes_width = Table::width(&planes_columns);
    let parts_columns = parts.columns(INNER);
    let parts_width = Table::width(&parts_columns);
    if parts_width + 28.0 + planes_width <= INNER {
        let a = parts.draw(page, [MARGIN, top], &parts_columns);
        let left = WIDTH - MARGIN - planes_width;
        let b = planes.draw(page, [left, top], &planes_columns);
        return a.max(b);
    }
    let y = parts.draw(page, [MARGIN, top], &parts_columns);
    planes.draw(page, [MARGIN, y + 10.0], &planes_columns)
}

fn parts(assembly: &Assembly, system: UnitSystem) -> Table {
    let mut rows = Vec::with_capacity(assembly.layers.len() + 2);
    let mut numbers = numbered(assembly).into_iter();
    let mut label = || match numbers.next().flatten() {
        Some(number) => number.to_string(),
        None => "-".into(),
    };
    let name = |layer: &Layer| match &layer.material {
        Some(material) => format!("{}, {material}", layer.name),
        None => layer.name.clone(),
    };
    for layer in &assembly.layers {
        let hole = match (&layer.slot, layer.kind) {
            (_, LayerKind::Gap) => String::new(),
            (Some(slot), _) => format!(
                "{} x {} slot",
                size(&layer.hole, system),
                number(slot.length, system)
            ),
            (None, _) => size(&layer.hole, system),
        };
        let outside = match layer.kind {
            LayerKind::Washer => size(&layer.outside, system),
            LayerKind::Ply | LayerKind::Gap => String::new(),
        };
        rows.push(Vec::from([
            label(),
            name(layer),
            spread(layer.thickness, system),
            hole,
            outside,
        ]));
    }
    for tube in &assembly.sleeves {
        rows.push(Vec::from([
            label(),
            tube.name.clone(),
            spread(tube.length, system),
            size(&tube.inside, system),
            size(&tube.outside, system),
        ]));
    }
    rows.push(match &assembly.end {
        End::Nut(nut) => Vec::from([
            label(),
            nut.name.clone(),
            spread(nut_height(assembly), system),
            String::new(),
            match nut.across_flats.is_read() {
                true => format!("flats {}", size(&nut.across_flats, system)),
                false => "flats not known".into(),
            },
        ]),
        End::Tapped(part) => Vec::from([
            label(),
            match &part.material {
                Some(material) => format!("{}, {material}", part.name),
                None => part.name.clone(),
            },
            format!(
                "fill {}",
                number(part.at.to.nominal - part.at.from.nominal, system)
            ),
            match part.depth {
                Some(depth) => format!("thread {}", number(depth, system)),
                None if part.through => "through".into(),
                None => "not known".into(),
            },
            String::new(),
        ]),
    });
    Table {
        head: ["", "Part", "Thickness (least to greatest)", "Hole", "Outside"]
            .map(String::from)
            .into(),
        rows,
        flexible: 1,
    }
}

fn nut_height(assembly: &Assembly) -> Spread<Length> {
    let at = assembly.end.at();
    Spread {
        min: at.to.min - at.from.min,
        nominal: at.to.nominal - at.from.nominal,
        max: at.to.max - at.from.max,
    }
}

fn plane_table(assembly: &Assembly, system: UnitSystem) -> Table {
    let rows = assembly.planes.iter().zip(1..).map(|(plane, number)| {
        Vec::from([
            format!("{number}, after ply {}", plane.after_ply),
            spread(plane.position, system),
            plane.worst.to_string(),
        ])
    });
    Table {
        head: ["Shear plane", "From the head", "Cuts, worst case"]
            .map(String::from)
            .into(),
        rows: rows.collect(),
        flexible: 0,
    }
}

/// What the lines mean, and what is not known.
fn notes(page: &mut Drawing, assembly: &Assembly, mut y: f64) -> f64 {
    let mut notes = Vec::new();
    if !assembly.planes.is_empty() {
        notes.push(String::from(
            "Marks and bands reach from the least to the greatest. Dashed, in colour: shear planes; what the far edge of a band meets counts.",
        ));
    }
    if assembly.bolt.cut.is_some() {
        notes.push("Dash and two dots: what the cut takes away.".into());
    }
    if assembly.bolt.cut_at_fit_up {
        notes.push(
            "The bolt is cut at fit-up, to the stack in hand: no fixed length will do. Drawn as bought."
                .into(),
        );
    }
    let recessed = matches!(assembly.seat, HeadSeat::Recessed { .. });
    if recessed || assembly.spot_face_under_nut.is_some() {
        notes.push("The width of recesses and spot faces is drawn by custom.".into());
    }
    let unread: Vec<String> = assembly.not_read();
    let dotted: Vec<&str> = unread
        .iter()
        .map(String::as_str)
        .filter(|own| *own != "length of the point")
        .collect();
    if !dotted.is_empty() {
        notes.push(format!(
            "Dotted outlines are drawn by the diameter, as nobody has read or stated: {}.",
            dotted.join(", ")
        ));
    }
    notes.push("Chamfers and the point of the bolt are drawn by custom. Plies are broken off.".into());
    for note in notes {
        y = page.paragraph(Style::Note, [MARGIN, y], &note, INNER, 4);
    }
    y
}

/// The picture in words.
fn description(assembly: &Assembly, verdict: Option<&Verdict>, system: UnitSystem) -> String {
    let mut text = String::from("Section along the axis of the bolt. ");
    if let Some(verdict) = verdict {
        text.push_str(&verdict.headline(system));
        text.push_str(". ");
    }
    text.push_str("From the head: ");
    for (at, layer) in assembly.layers.iter().enumerate() {
        if at > 0 {
            text.push_str(", ");
        }
        text.push_str(&layer.name);
        text.push(' ');
        text.push_str(&spread(layer.thickness, system));
    }
    let bolt = &assembly.bolt;
    text.push_str(&format!(
        ". Grip {}, sure shank to {}, sure thread from {}, end of the bolt at {}, in {}.",
        spread(assembly.grip, system),
        number(bolt.shank_end, system),
        number(bolt.thread_start, system),
        spread(bolt.end, system),
        units(system)
    ));
    for (plane, number) in assembly.planes.iter().zip(1..) {
        text.push_str(&format!(
            " Shear plane {number} at {}, in the worst case in {}.",
            spread(plane.position, system),
            plane.worst
        ));
    }
    text
}
