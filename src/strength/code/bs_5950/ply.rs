//! BS 5950-1:2000, 6.3.3 and 4.6: what plies bear.

use alloc::vec::Vec;

use super::{
    RECALLED_BEARING, bearing_of_bolt, bearing_of_ply, hole_factor, is_bearing_read, net_section,
};
use crate::error::Error;
use crate::source::Method;
use crate::strength::check::Mode;
use crate::strength::ply::{Asked, Geometry, PlyNeed, PlyOutcome, need};
use crate::tables::methods;
use crate::units::{Length, Stress};

/// Pbs = kbs d t pbs, at most 0.5 kbs e t pbs. A hole with no end before it is not told from one whose end is not known.
pub(in crate::strength) fn bearing(asked: &Asked) -> Result<PlyOutcome, Error> {
    let ply = asked.ply;
    let mut missing = Vec::new();
    let end = need(ply.end_distance, PlyNeed::EndDistance, &mut missing);
    let fy = need(ply.yield_strength, PlyNeed::YieldStrength, &mut missing);
    let fu = need(ply.tensile_strength, PlyNeed::TensileStrength, &mut missing);
    let (Some(end), Some(fy), Some(fu)) = (end, fy, fu) else {
        return Ok(PlyOutcome::Missing(missing));
    };
    let width = asked.diameter.min(0.5 * end);
    let area = Geometry::new(width * ply.thickness, "min(d, e1 / 2) * t", ply.hole);
    let stress = bearing_of_ply(fy, fu);
    asked.found(Mode::Bearing, hole_factor(ply.hole_kind), stress, area)
}

/// Pbb = d t pbb.
pub(in crate::strength) fn bolt_bearing(asked: &Asked) -> Result<PlyOutcome, Error> {
    let mut missing = Vec::new();
    let yielding = asked.bolt.yield_strength;
    let yielding = need(yielding, PlyNeed::BoltYieldStrength, &mut missing);
    let breaking = asked.bolt.tensile_strength;
    let breaking = need(breaking, PlyNeed::BoltTensileStrength, &mut missing);
    let (Some(yielding), Some(breaking)) = (yielding, breaking) else {
        return Ok(PlyOutcome::Missing(missing));
    };
    let Some(stress) = bearing_of_bolt(yielding, breaking) else {
        return Ok(PlyOutcome::NotGiven(
            "BS 5950-1 Table 31 has classes 4.6, 8.8 and 10.9, and the bolt is softer than all",
        ));
    };
    let area = Geometry::new(
        asked.diameter * asked.ply.thickness,
        "d * t",
        asked.ply.hole,
    );
    asked.found(Mode::BoltBearing, 1.0, stress, area)
}

/// py Ag, and py Ke An, which counts no more than the gross section: both are checked.
pub(in crate::strength) fn section(asked: &Asked, mode: Mode) -> Result<PlyOutcome, Error> {
    let ply = asked.ply;
    let mut missing = Vec::new();
    let fy = need(ply.yield_strength, PlyNeed::YieldStrength, &mut missing);
    let fu = need(ply.tensile_strength, PlyNeed::TensileStrength, &mut missing);
    let width = need(ply.width, PlyNeed::Width, &mut missing);
    let (hole, formula) = if mode == Mode::GrossSection {
        (Some(Length::default()), "w * t")
    } else {
        let hole = need(ply.hole_across(), PlyNeed::SlotLength, &mut missing);
        (hole, "(w - dh) * t")
    };
    let (Some(fy), Some(fu), Some(width), Some(hole)) = (fy, fu, width, hole) else {
        return Ok(PlyOutcome::Missing(missing));
    };
    let left = width - hole;
    if left <= Length::default() {
        return Ok(PlyOutcome::Nothing("the hole takes the whole width"));
    }
    let (py, ke) = net_section(fy, fu);
    let coefficient = if mode == Mode::GrossSection { 1.0 } else { ke };
    let shown = if mode == Mode::GrossSection {
        ply.hole
    } else {
        hole
    };
    let area = Geometry::new(left * ply.thickness, formula, shown);
    asked.found(mode, coefficient, py, area)
}

/// The clause of a mode that is not the one of bearing.
pub(in crate::strength) const fn clause(mode: Mode) -> Option<&'static Method> {
    match mode {
        Mode::BoltBearing => Some(methods::BS_5950_1_2000_6_3_3_2),
        Mode::NetSection | Mode::GrossSection => Some(methods::BS_5950_1_2000_4_6_1),
        _ => None,
    }
}

/// What of it was recalled.
pub(in crate::strength) fn recalled(mode: Mode, stress: Stress) -> Option<&'static Method> {
    let section = matches!(mode, Mode::NetSection | Mode::GrossSection);
    (!section && !is_bearing_read(stress)).then_some(RECALLED_BEARING)
}
