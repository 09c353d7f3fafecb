//! AS 4100, 9.3.2.4 and 7.2: what plies bear.

use alloc::vec::Vec;

use crate::error::Error;
use crate::source::Method;
use crate::strength::check::Mode;
use crate::strength::ply::{
    Asked, Geometry, NOTHING, OTHER_HOLES, PlyNeed, PlyOutcome, lesser, need,
};
use crate::tables::methods;
use crate::units::Length;

/// 9.3.2.4(1): times d t fu.
pub(in crate::strength) const BEARING: f64 = 3.2;
/// 7.2: of fu on the net section; kt is 1 where the whole width is bolted.
pub(in crate::strength) const NET: f64 = 0.85;

/// Vb = ae t fu, ae from the edge of the hole to the end, or to the edge of the next hole, and half the bolt.
pub(in crate::strength) fn tear_out(asked: &Asked) -> Result<PlyOutcome, Error> {
    let ply = asked.ply;
    if !ply.hole_kind.is_standard() {
        return Ok(OTHER_HOLES);
    }
    let mut missing = Vec::new();
    let fu = need(ply.tensile_strength, PlyNeed::TensileStrength, &mut missing);
    let end = ply.end_distance.map(|e| e - 0.5 * ply.hole);
    let inside = ply.pitch.map(|p| p - ply.hole);
    let clear = need(lesser(end, inside), PlyNeed::EndDistance, &mut missing);
    let (Some(fu), Some((clear, to_end))) = (fu, clear) else {
        return Ok(PlyOutcome::Missing(missing));
    };
    if clear <= Length::default() {
        return Ok(NOTHING);
    }
    let formula = if to_end {
        "(e1 - dh / 2 + d / 2) * t"
    } else {
        "(p1 - dh + d / 2) * t"
    };
    let area = (clear + 0.5 * asked.diameter) * ply.thickness;
    asked.found(
        Mode::TearOut,
        1.0,
        fu,
        Geometry::new(area, formula, ply.hole),
    )
}

/// The clause of a mode that is not the one of bearing.
pub(in crate::strength) const fn clause(mode: Mode) -> Option<&'static Method> {
    match mode {
        Mode::NetSection | Mode::GrossSection => Some(methods::AS_4100_7_2),
        _ => None,
    }
}
