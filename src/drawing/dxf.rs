//! The section as DXF: R12, plain ASCII, 1 to 1.

use alloc::{string::String, vec::Vec};
use core::fmt::{Display, Write as _};

use super::kinds::Line;
use super::number::push_millionths;
use super::shapes::{Part, Point, Shape, mm, shapes};
use crate::assembly::{Assembly, End};
use crate::units::UnitSystem;

/// The layers, each with its colour by number and the pattern of its lines.
const LAYERS: [(&str, u8, &str); 9] = [
    ("BOLT", 7, "CONTINUOUS"),
    ("THREAD", 8, "CONTINUOUS"),
    ("NUT", 7, "CONTINUOUS"),
    ("WASHERS", 7, "CONTINUOUS"),
    ("PLIES", 7, "CONTINUOUS"),
    ("AXIS", 8, "CENTER"),
    ("PLANES", 30, "DASHED"),
    ("CUT", 8, "PHANTOM"),
    ("UNREAD", 1, "DOT"),
];

/// Patterns of lines: what they look like, and dashes (positive) and gaps, in millimetres.
const PATTERNS: [(&str, &str, &[f64]); 4] = [
    ("CENTER", "long dash, dot", &[10.0, -1.5, 1.0, -1.5]),
    ("DASHED", "dash", &[4.0, -1.5]),
    (
        "PHANTOM",
        "long dash, two dots",
        &[10.0, -1.5, 1.0, -1.5, 1.0, -1.5],
    ),
    ("DOT", "dots", &[0.6, -1.2]),
];

/// The section of a joint as a DXF document for drawing programs: release 12, ASCII, layers, 1 to 1 in millimetres or
/// inches. The axis of the bolt is the X axis, and the bearing face of its head (the top of a countersunk one) is at X = 0.
///
/// | layer | what |
/// |---|---|
/// | `BOLT`, `THREAD`, `NUT`, `WASHERS`, `PLIES` | outlines as in [`section`](super::section); names stand over the plies |
/// | `AXIS`, `PLANES` | the axis; the shear planes at their nominal places |
/// | `CUT` | what a cut takes away |
/// | `UNREAD` | outlines by the diameter, as nobody has read or stated the size |
///
/// Letters beyond ASCII become question marks, which that release knows no others than.
///
/// ```
/// use shankline::drawing;
/// use shankline::prelude::*;
#[doc = include_str!("../joint/whole/example.txt")]
/// let assembly = joint.assembly(&joint.check()?.candidate)?;
/// let dxf = drawing::section_dxf(&assembly, UnitSystem::Si);
/// assert!(dxf.is_ascii() && dxf.contains("POLYLINE"));
/// # Ok(())
/// # }
/// ```
#[must_use]
pub fn section_dxf(assembly: &Assembly, system: UnitSystem) -> String {
    let geometry = shapes(assembly);
    let mut file = Dxf::new("section of a bolted joint", &LAYERS, system);
    // Washers and nut hide the bolt within them.
    let mut hidden: Vec<[f64; 2]> = Vec::new();
    let washers = assembly.layers.iter().filter(|layer| layer.side.is_some());
    hidden.extend(washers.map(|own| [mm(own.at.from.nominal), mm(own.at.to.nominal)]));
    if let End::Nut(nut) = &assembly.end {
        hidden.push([mm(nut.at.from.nominal), mm(nut.at.to.nominal)]);
    }
    for shape in &geometry.lines {
        let within = matches!(shape.part, Part::Bolt | Part::Thread) && shape.line != Line::Hidden;
        let pieces = if within {
            visible(shape, &hidden)
        } else {
            None
        };
        match pieces {
            Some(pieces) => {
                for [from, to] in pieces {
                    file.line(layer_of(shape), from, to);
                }
            }
            None => file.shape(shape),
        }
    }
    let [from, to] = geometry.along;
    let over = 0.3 * mm(assembly.bolt.diameter);
    file.line("AXIS", [from - over, 0.0], [to + over, 0.0]);
    let far = geometry.radius;
    for plane in &assembly.planes {
        let x = mm(plane.position.nominal);
        file.line("PLANES", [x, -far - over], [x, far + over]);
    }
    // Names, one above the other, so that none lies on another.
    let height = 0.25 * mm(assembly.bolt.diameter);
    let mut up = far + 2.0 * over;
    for layer in assembly.layers.iter().filter(|layer| layer.ply.is_some()) {
        let x = mm(layer.at.from.nominal);
        file.text("PLIES", [x, up], height, &layer.name);
        up += 1.6 * height;
    }
    let top = up + height;
    if !assembly.title.is_empty() {
        file.text("BOLT", [from, top], 1.4 * height, &assembly.title);
    }
    file.text(
        "BOLT",
        [from, -far - 3.0 * over],
        height,
        &assembly.bolt.designation,
    );
    file.end()
}

/// The layer that the lines of a part lie on.
const fn layer_of(shape: &Shape) -> &'static str {
    match (shape.line, shape.part) {
        (Line::Unread, _) => "UNREAD",
        (_, Part::Bolt) => "BOLT",
        (_, Part::Thread) => "THREAD",
        (_, Part::Nut) => "NUT",
        (_, Part::Washer) => "WASHERS",
        (_, Part::Cut(_)) => "PLIES",
        (_, Part::Cutoff) => "CUT",
    }
}

/// The pieces of a shape that lie within none of some stretches of the axis; none where all of it is seen.
fn visible(shape: &Shape, hidden: &[[f64; 2]]) -> Option<Vec<[Point; 2]>> {
    const SLACK: f64 = 1e-9;
    let mut pieces = Vec::new();
    let mut cut = false;
    let next = shape.points.iter().skip(1);
    let back = shape.closed.then(|| shape.points.first()).flatten();
    for (&from, &to) in shape.points.iter().zip(next.chain(back)) {
        let (a, b) = if from[0] <= to[0] {
            (from, to)
        } else {
            (to, from)
        };
        let mut left = Vec::from([[a, b]]);
        for [begin, end] in hidden {
            let mut rest = Vec::with_capacity(2);
            for [a, b] in left {
                let apart = b[0] <= begin + SLACK || a[0] >= end - SLACK;
                if apart {
                    rest.push([a, b]);
                    continue;
                }
                cut = true;
                // Where the line enters, and where it leaves.
                let at = |x: f64| {
                    let part = (x - a[0]) / (b[0] - a[0]).max(SLACK);
                    [x, a[1] + part * (b[1] - a[1])]
                };
                if a[0] < begin - SLACK {
                    rest.push([a, at(*begin)]);
                }
                if b[0] > end + SLACK {
                    rest.push([at(*end), b]);
                }
            }
            left = rest;
        }
        pieces.extend(left);
    }
    cut.then_some(pieces)
}

/// A document that grows.
pub(super) struct Dxf {
    text: String,
    /// One millimetre in the unit of the document.
    unit: f64,
}

impl Dxf {
    /// A document without entities yet.
    pub(super) fn new<Name: AsRef<str>>(
        what: &str,
        layers: &[(Name, u8, &str)],
        system: UnitSystem,
    ) -> Self {
        let (unit, name) = match system {
            UnitSystem::Si => (1.0, "millimetres"),
            UnitSystem::UsCustomary => (1.0 / 25.4, "inches"),
        };
        let mut file = Self {
            text: String::with_capacity(32 * 1024),
            unit,
        };
        file.pair(999, format_args!("{what}, 1 to 1, in {name}"));
        file.head(layers);
        file
    }

    pub(super) fn end(mut self) -> String {
        self.pair(0, "ENDSEC");
        self.pair(0, "EOF");
        self.text
    }

    fn pair(&mut self, code: u16, value: impl Display) {
        // Writing to a string does not fail.
        let _ = write!(self.text, "{code:3}\n{value}\n");
    }

    fn number(&mut self, code: u16, millimetres: f64) {
        let _ = writeln!(self.text, "{code:3}");
        push_millionths(&mut self.text, millimetres * self.unit);
        self.text.push('\n');
    }

    fn head<Name: AsRef<str>>(&mut self, layers: &[(Name, u8, &str)]) {
        for (code, value) in [
            (0, "SECTION"),
            (2, "HEADER"),
            (9, "$ACADVER"),
            (1, "AC1009"),
        ] {
            self.pair(code, value);
        }
        for (code, value) in [
            (0, "ENDSEC"),
            (0, "SECTION"),
            (2, "TABLES"),
            (0, "TABLE"),
            (2, "LTYPE"),
        ] {
            self.pair(code, value);
        }
        self.pair(70, PATTERNS.len() + 1);
        self.pattern("CONTINUOUS", "solid", &[]);
        for (name, looks, dashes) in PATTERNS {
            self.pattern(name, looks, dashes);
        }
        for (code, value) in [(0, "ENDTAB"), (0, "TABLE"), (2, "LAYER")] {
            self.pair(code, value);
        }
        self.pair(70, layers.len());
        for (name, colour, pattern) in layers {
            self.pair(0, "LAYER");
            self.pair(2, name.as_ref());
            self.pair(70, 0);
            self.pair(62, colour);
            self.pair(6, pattern);
        }
        for (code, value) in [
            (0, "ENDTAB"),
            (0, "ENDSEC"),
            (0, "SECTION"),
            (2, "ENTITIES"),
        ] {
            self.pair(code, value);
        }
    }

    fn pattern(&mut self, name: &str, looks: &str, dashes: &[f64]) {
        self.pair(0, "LTYPE");
        self.pair(2, name);
        self.pair(70, 0);
        self.pair(3, looks);
        self.pair(72, 65);
        self.pair(73, dashes.len());
        self.number(40, dashes.iter().map(|dash| dash.abs()).sum());
        for dash in dashes {
            self.number(49, *dash);
        }
    }

    fn shape(&mut self, shape: &Shape) {
        let pattern = match shape.line {
            Line::Hidden => Some("DASHED"),
            _ => None,
        };
        self.polyline(layer_of(shape), pattern, &shape.points, shape.closed);
    }

    pub(super) fn polyline(
        &mut self,
        layer: &str,
        pattern: Option<&str>,
        points: &[Point],
        closed: bool,
    ) {
        self.pair(0, "POLYLINE");
        self.pair(8, layer);
        if let Some(pattern) = pattern {
            self.pair(6, pattern);
        }
        self.pair(66, 1);
        self.point([0.0, 0.0]);
        self.pair(70, u8::from(closed));
        for point in points {
            self.pair(0, "VERTEX");
            self.pair(8, layer);
            self.point(*point);
        }
        self.pair(0, "SEQEND");
        self.pair(8, layer);
    }

    fn point(&mut self, [x, y]: [f64; 2]) {
        self.number(10, x);
        self.number(20, y);
        self.number(30, 0.0);
    }

    pub(super) fn circle(&mut self, layer: &str, centre: Point, radius: f64) {
        self.pair(0, "CIRCLE");
        self.pair(8, layer);
        self.point(centre);
        self.number(40, radius);
    }

    pub(super) fn line(&mut self, layer: &str, from: [f64; 2], to: [f64; 2]) {
        self.pair(0, "LINE");
        self.pair(8, layer);
        self.point(from);
        for (code, value) in [(11, to[0]), (21, to[1]), (31, 0.0)] {
            self.number(code, value);
        }
    }

    pub(super) fn text(&mut self, layer: &str, at: [f64; 2], height: f64, text: &str) {
        self.pair(0, "TEXT");
        self.pair(8, layer);
        self.point(at);
        self.number(40, height);
        let mut plain: String = text
            .chars()
            .map(|own| match own {
                // Each of them begins a code.
                '%' | '^' | '\\' => ' ',
                own if own.is_control() => ' ',
                own if own.is_ascii() => own,
                _ => '?',
            })
            .collect();
        // The longest text that the release knows.
        plain.truncate(250);
        self.pair(1, plain);
    }
}
