//! CSA S16, 13.12.1.2, 13.11 and 13.2: what plies bear.

use alloc::vec::Vec;

use crate::error::Error;
use crate::source::Method;
use crate::strength::check::Mode;
use crate::strength::ply::{Asked, Geometry, OTHER_HOLES, PlyNeed, PlyOutcome, lesser, need};
use crate::tables::methods;
use crate::units::{Length, millimetres};

/// 13.12.1.2: times d t Fu.
pub(in crate::strength) const BEARING: f64 = 3.0;
/// Punched holes count so much more in the net section; drilled ones are taken like them.
pub(in crate::strength) const MORE_OF_HOLE: Length = millimetres(2.0);
/// The net area with it.
pub(in crate::strength) const NET_AREA: &str = "(w - dh - 2 * mm) * t";

/// 0.6 Agv (Fy + Fu) / 2, two planes from the centre of the hole to the end or to the next one.
pub(in crate::strength) fn tear_out(asked: &Asked) -> Result<PlyOutcome, Error> {
    let ply = asked.ply;
    if !ply.hole_kind.is_standard() {
        return Ok(OTHER_HOLES);
    }
    let mut missing = Vec::new();
    let fy = need(ply.yield_strength, PlyNeed::YieldStrength, &mut missing);
    let fu = need(ply.tensile_strength, PlyNeed::TensileStrength, &mut missing);
    let along = lesser(ply.end_distance, ply.pitch);
    let along = need(along, PlyNeed::EndDistance, &mut missing);
    let (Some(fy), Some(fu), Some((length, to_end))) = (fy, fu, along) else {
        return Ok(PlyOutcome::Missing(missing));
    };
    let formula = if to_end { "2 * e1 * t" } else { "2 * p1 * t" };
    let area = Geometry::new(2.0 * (length * ply.thickness), formula, ply.hole);
    asked.found(Mode::TearOut, 0.6, super::tear_out(fy, fu), area)
}

/// The clause of a mode that is not the one of bearing.
pub(in crate::strength) const fn clause(mode: Mode) -> Option<&'static Method> {
    match mode {
        Mode::TearOut => Some(methods::CSA_S16_13_11_TEAR_OUT),
        Mode::NetSection | Mode::GrossSection => Some(methods::CSA_S16_13_2),
        _ => None,
    }
}
