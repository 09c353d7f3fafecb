//! The plan of a connection as DXF.

use alloc::{format, string::String, vec::Vec};

use super::dxf::Dxf;
use super::shapes::mm;
use crate::connection::Connection;
use crate::units::{Length, UnitSystem};

/// The plan of a connection as a DXF document for drawing programs: release 12, ASCII, layers, 1 to 1 in millimetres or
/// inches, with the origin and the axes of the pattern.
///
/// | layer | what |
/// |---|---|
/// | `BOLTS` | each bolt as a circle of its nominal diameter |
/// | `HOLES` | each hole of each size that is stated; none where none is |
/// | `AXIS` | a cross through every bolt |
/// | `NUMBERS` | the numbers of the bolts, those of [`BoltVerdict::number`](crate::connection::BoltVerdict::number) |
/// | `PLATE_1`, `PLATE_2`, ... | the outline of each plate in the order of [`Connection::plates`], with its name |
///
/// Loads are not in it: it is what is cut and drilled.
///
/// ```
/// use shankline::connection::{Connection, Outline};
/// use shankline::drawing;
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = Joint::builder("M16").ply("foot", "10 mm").ply("deck", "12 mm");
/// let davit = Connection::builder(bolt)
///     .circle(6, "180 mm")
///     .plate("foot", Outline::round("240 mm")?)
///     .case("lift").force("0 kN", "0 kN", "9 kN").at("0 mm", "0 mm", "0 mm")
///     .build()?;
/// let dxf = drawing::pattern_dxf(&davit, UnitSystem::Si);
/// assert_eq!(dxf.matches("CIRCLE").count(), 12); // six bolts, and their holes
/// assert!(dxf.contains("PLATE_1"));
/// # Ok(())
/// # }
/// ```
#[must_use]
pub fn pattern_dxf(connection: &Connection, system: UnitSystem) -> String {
    let mut layers: Vec<(String, u8, &str)> = [
        ("BOLTS", 7, "CONTINUOUS"),
        ("HOLES", 8, "CONTINUOUS"),
        ("AXIS", 8, "CENTER"),
        ("NUMBERS", 7, "CONTINUOUS"),
    ]
    .map(|(name, colour, pattern)| (name.into(), colour, pattern))
    .into();
    let plates = connection.plates.iter().zip(1..);
    layers.extend(
        plates
            .clone()
            .map(|(_, number)| (format!("PLATE_{number}"), 7, "CONTINUOUS")),
    );
    let mut file = Dxf::new("plan of a connection", &layers, system);
    let diameter = mm(connection.joint.bolt.thread.nominal_diameter());
    let height = 0.35 * diameter;
    let mut low: f64 = 0.0;
    for (plate, number) in plates {
        let layer = format!("PLATE_{number}");
        let corners = plate.outline.corners().iter();
        let corners: Vec<[f64; 2]> = corners.map(|own| [mm(own.x), mm(own.y)]).collect();
        file.polyline(&layer, None, &corners, true);
        low = corners.iter().fold(low, |low, corner| low.min(corner[1]));
    }
    let mut holes: Vec<Length> = Vec::new();
    for hole in connection
        .joint
        .stack
        .plies()
        .iter()
        .filter_map(|own| own.hole)
    {
        if !holes.contains(&hole) {
            holes.push(hole);
        }
    }
    for (bolt, number) in connection.bolts.bolts().iter().zip(1_usize..) {
        let [x, y] = [mm(bolt.x), mm(bolt.y)];
        file.circle("BOLTS", [x, y], 0.5 * diameter);
        for hole in &holes {
            file.circle("HOLES", [x, y], 0.5 * mm(*hole));
        }
        file.line("AXIS", [x - diameter, y], [x + diameter, y]);
        file.line("AXIS", [x, y - diameter], [x, y + diameter]);
        let beside = [x + 0.6 * diameter, y + 0.6 * diameter];
        file.text("NUMBERS", beside, height, &format!("{number}"));
        low = low.min(y - diameter);
    }
    // Names, one below the other, so that none lies on another.
    for (plate, number) in connection.plates.iter().zip(1..) {
        low -= 2.0 * height;
        let text = format!("{number}: {}", plate.ply);
        file.text(&format!("PLATE_{number}"), [0.0, low], height, &text);
    }
    file.end()
}
