//! What stands below the plan of a connection: its plates, bolts and loads.

use alloc::{format, string::String, string::ToString, vec::Vec};

use super::bars::percent;
use super::canvas::Drawing;
use super::kinds::Anchor;
use super::page::{INNER, MARGIN, Table, number};
use super::pattern::{Shown, along};
use super::plan::{least_distance, line_of};
use super::text::Style;
use crate::connection::{BoltVerdict, Plate, Side};
use crate::units::{UnitSystem, shown};

/// At most so many bolts are listed, those first that are nearest to their limit; and so many loads.
const MOST_BOLTS: usize = 60;
pub(super) const MOST_LOADS: usize = 12;

/// Plates, loads, bolts. Returns where they end.
pub(super) fn tables(page: &mut Drawing, own: &Shown<'_>, mut y: f64, system: UnitSystem) -> f64 {
    for (plate, which) in own.connection.plates.iter().zip(0..) {
        let line = [[MARGIN, y - 4.0], [MARGIN + 34.0, y - 4.0]];
        page.line(line_of(which), line[0], line[1]);
        let text = Style::Note.fit(&plate_text(own, plate, system), INNER - 44.0);
        page.label(Style::Note, Anchor::Start, [MARGIN + 44.0, y], &text);
        y += 16.0;
    }
    y += 10.0;
    y = draw(page, &loads(own, system), y) + 10.0;
    draw(page, &bolts(own, system), y)
}

/// Narrower where numbers are longer than anyone thought of.
fn draw(page: &mut Drawing, table: &Table, y: f64) -> f64 {
    let mut columns = table.columns(INNER);
    let over = Table::width(&columns) - INNER;
    if over > 0.0 {
        let sum: f64 = columns.iter().sum();
        for column in &mut columns {
            *column *= 1.0 - over / sum;
        }
    }
    table.draw(page, [MARGIN, y], &columns)
}

fn plate_text(own: &Shown<'_>, plate: &Plate, system: UnitSystem) -> String {
    let held = match plate.held {
        None => String::new(),
        Some(Side::Left) => ", held at its left".into(),
        Some(Side::Right) => ", held at its right".into(),
        Some(Side::Bottom) => ", held at its bottom".into(),
        Some(Side::Top) => ", held at its top".into(),
        Some(Side::Towards(angle)) => format!(", held towards {:.1} deg", angle.value.to_degrees()),
    };
    let nearest = least_distance(own.connection, plate).map_or_else(String::new, |own| {
        format!(
            "; least distance to its edge {}, of bolt {}",
            number(own.distance, system),
            own.bolt
        )
    });
    let name = Style::Note.fit(&plate.ply, 380.0);
    format!("{name}{held}{nearest}")
}

fn loads(own: &Shown<'_>, system: UnitSystem) -> Table {
    let rows = own.parts.iter().take(MOST_LOADS).map(|(factor, case)| {
        let mut row = Vec::from([case.name.clone(), factor.to_string()]);
        let forces = [case.force_x, case.force_y, case.force_z];
        row.extend(forces.map(|own| shown(own, system).to_string()));
        let moments = [case.moment_x, case.moment_y, case.moment_z];
        row.extend(moments.map(|own| shown(own, system).to_string()));
        row.extend([case.x, case.y, case.z].map(|own| number(own, system)));
        row
    });
    Table {
        head: [
            "Load", "Times", "Force x", "y", "z", "Moment x", "y", "z", "At x", "y", "z",
        ]
        .map(String::from)
        .into(),
        rows: rows.collect(),
        flexible: 0,
    }
}

fn bolts(own: &Shown<'_>, system: UnitSystem) -> Table {
    let mut all: Vec<_> = own.verdict.bolts.iter().zip(&own.case.loads).collect();
    if all.len() > MOST_BOLTS {
        all.sort_by(|(a, _), (b, _)| {
            let rank = |own: &BoltVerdict| (own.verdict.word().severity(), own.utilisation);
            let (a, b) = (rank(a), rank(b));
            let used = |own: Option<f64>| own.unwrap_or(-1.0);
            b.0.cmp(&a.0).then(used(b.1).total_cmp(&used(a.1)))
        });
    }
    let rows = all.into_iter().take(MOST_BOLTS).map(|(bolt, load)| {
        let used = bolt
            .verdict
            .governing()
            .map_or_else(|| "-".into(), |own| percent(own.utilisation.value));
        let case = own.verdict.cases.get(bolt.case);
        Vec::from([
            if bolt.number == own.case.bolt {
                format!("{}, {}", bolt.number, own.mark())
            } else {
                bolt.number.to_string()
            },
            number(bolt.at.x, system),
            number(bolt.at.y, system),
            shown(load.x, system).to_string(),
            shown(load.y, system).to_string(),
            shown(load.across, system).to_string(),
            along(load, system).unwrap_or_else(|| "-".into()),
            used,
            bolt.verdict.word().to_string(),
            case.map_or_else(String::new, |own| own.name.clone()),
        ])
    });
    Table {
        head: [
            "Bolt", "At x", "y", "Force x", "y", "Across", "Along", "Used", "Word", "Worst in",
        ]
        .map(String::from)
        .into(),
        rows: rows.collect(),
        flexible: 9,
    }
}

/// What the signs mean, and what is not drawn.
pub(super) fn notes(page: &mut Drawing, own: &Shown<'_>, mut y: f64, left_out: usize) -> f64 {
    let mut notes: Vec<String> = Vec::from([String::from(
        "x points to the right, y up, z towards the reader, from the origin of the pattern. Black arrow at a bolt: what comes to it in the plane, as long as its size, but never shorter than its head. A dot in a circle: pull along the bolt, towards the reader; a cross: pressed away.",
    )]);
    notes.push(
        "Two rings: the worst bolt of this case, and whether it governs all. Thick arrow at a dot: a load where it acts; an arc: a moment in the plane. Strokes along a side: where a plate is held."
            .into(),
    );
    let load = &own.connection.joint.load;
    notes.push(format!(
        "Forces are those of the loads as given: the checks multiply them by the load factor ({}) and by shock, and add prying.",
        load.load_factor.map_or_else(|| "not said".into(), |own| own.to_string())
    ));
    if own.alternates {
        notes.push("The load alternates: both its ends are drawn, and of each bolt the greater of both forces.".into());
    }
    let plies = own.connection.joint.stack.plies().iter();
    let mut without: Vec<&str> = plies
        .map(|ply| ply.name.as_str())
        .filter(|name| own.connection.plates.iter().all(|own| own.ply != *name))
        .collect();
    without.dedup();
    if !without.is_empty() {
        notes.push(format!(
            "Not drawn, as no outline is given: {}.",
            without.join(", ")
        ));
    }
    let count = own.verdict.bolts.len();
    if count > MOST_BOLTS {
        notes.push(format!(
            "Listed are the {MOST_BOLTS} bolts nearest to their limit; {} are not.",
            count - MOST_BOLTS
        ));
    }
    if own.parts.len() > MOST_LOADS {
        notes.push(format!(
            "Drawn and listed are {MOST_LOADS} loads; {} are not, and are in the forces of the bolts.",
            own.parts.len() - MOST_LOADS
        ));
    }
    if left_out > 0 {
        notes.push(format!(
            "{left_out} labels had no room in the plan: what they say is in the tables."
        ));
    }
    let mut open: Vec<String> = Vec::new();
    for missing in own.verdict.open() {
        let text = missing.to_string();
        if !open.contains(&text) {
            open.push(text);
        }
    }
    if !open.is_empty() {
        page.label(Style::Strong, Anchor::Start, [MARGIN, y], "Not checked");
        y += 16.0;
        y = page.paragraph(
            Style::Note,
            [MARGIN, y],
            &open.join("; "),
            INNER,
            usize::MAX,
        ) + 6.0;
    }
    for note in notes {
        y = page.paragraph(Style::Note, [MARGIN, y], &note, INNER, 4);
    }
    y
}
