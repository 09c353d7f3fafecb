//! Below the section: where everything may lie in the worst case, and the dimensions.

use alloc::{format, vec::Vec};

use super::canvas::{Drawing, spread_out};
use super::kinds::{Anchor, Fill, Line};
use super::page::{MARGIN, WIDTH, between, number, zone};
use super::section::Scale;
use super::text::Style;
use crate::assembly::{Assembly, End};
use crate::units::{Length, UnitSystem};

/// Where everything may lie: a row each for bolt, shear planes, faces of the nut and end, then the dimensions. Returns where
/// it ends.
pub(super) fn strip(
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
            page.dimension(
                from,
                to,
                y,
                &format!("past the nut {}", number(past, system)),
            );
            y += 20.0;
        }
    }
    y - 12.0
}
