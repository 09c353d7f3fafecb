//! What stands below a section: its parts, its planes, what its lines mean, and all of it in words.

use alloc::{format, string::String, string::ToString, vec::Vec};
use core::fmt::Write as _;

use super::canvas::Drawing;
use super::page::{INNER, MARGIN, Table, WIDTH, number, size, spread, units};
use super::text::Style;
use crate::assembly::{Assembly, End, Layer};
use crate::joint::{HeadSeat, LayerKind, Verdict};
use crate::spread::Spread;
use crate::units::{Length, UnitSystem};

/// The layers, then the sleeves, then what closes the joint: each has a number, but for gaps.
pub(super) fn numbered(assembly: &Assembly) -> Vec<Option<usize>> {
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

/// The parts, and the planes beside them if there is room.
pub(super) fn tables(page: &mut Drawing, assembly: &Assembly, top: f64, system: UnitSystem) -> f64 {
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
            format!("flats {}", size(&nut.across_flats, system)),
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
        head: [
            "",
            "Part",
            "Thickness (least to greatest)",
            "Hole",
            "Outside",
        ]
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
pub(super) fn notes(page: &mut Drawing, assembly: &Assembly, mut y: f64) -> f64 {
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
    notes.push(
        "Chamfers and the point of the bolt are drawn by custom. Plies are broken off.".into(),
    );
    for note in notes {
        y = page.paragraph(Style::Note, [MARGIN, y], &note, INNER, 4);
    }
    y
}

/// The picture in words.
pub(super) fn description(
    assembly: &Assembly,
    verdict: Option<&Verdict>,
    system: UnitSystem,
) -> String {
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
    let _ = write!(
        text,
        ". Grip {}, sure shank to {}, sure thread from {}, end of the bolt at {}, in {}.",
        spread(assembly.grip, system),
        number(bolt.shank_end, system),
        number(bolt.thread_start, system),
        spread(bolt.end, system),
        units(system)
    );
    for (plane, number) in assembly.planes.iter().zip(1..) {
        let _ = write!(
            text,
            " Shear plane {number} at {}, in the worst case in {}.",
            spread(plane.position, system),
            plane.worst
        );
    }
    text
}
