//! IS 800:2007, 10.3.4 and 6: what plies bear.

use alloc::vec::Vec;

use super::hole_factor;
use crate::derivation::{Derivation, Step};
use crate::error::{Amount, Error};
use crate::source::Method;
use crate::strength::check::Mode;
use crate::strength::ply::{Asked, Geometry, HoleKind, PlyNeed, PlyOutcome, PlyResistance, need};
use crate::tables::methods;

/// 6.3.1: alpha of the net section, with the factor of 0.9 on rupture.
pub(in crate::strength) const NET: f64 = 0.9;

/// Vnpb = 2.5 kb d t fu. A distance along the load is wanted, as EN 1993-1-8 wants it.
pub(in crate::strength) fn bearing(asked: &Asked) -> Result<PlyOutcome, Error> {
    let ply = asked.ply;
    let Some(hole) = hole_factor(ply.hole_kind) else {
        return Ok(PlyOutcome::NotGiven(
            "IS 800 10.3.4 has no bearing in slots along the load",
        ));
    };
    let d0 = ply.hole;
    let end = ply.end_distance.map(|e| (e / (3.0 * d0)).value);
    let pitch = ply.pitch.map(|p| (p / (3.0 * d0)).value - 0.25);
    let along = match (end, pitch) {
        (Some(end), Some(pitch)) => Some(end.min(pitch)),
        (end, pitch) => end.or(pitch),
    };
    let mut missing = Vec::new();
    let along = need(along, PlyNeed::EndDistance, &mut missing);
    let fu = need(ply.tensile_strength, PlyNeed::TensileStrength, &mut missing);
    let fub = asked.bolt.tensile_strength;
    let fub = need(fub, PlyNeed::BoltTensileStrength, &mut missing);
    let (Some(along), Some(fu), Some(fub)) = (along, fu, fub) else {
        return Ok(PlyOutcome::Missing(missing));
    };
    let kb = along.min((fub / fu).value).min(1.0);
    if kb <= 0.0 {
        return Ok(PlyOutcome::Nothing(
            "IS 800 10.3.4 leaves no bearing so near to the next hole",
        ));
    }
    let area = Geometry::new(asked.diameter * ply.thickness, "d * t", d0);
    asked.found(Mode::Bearing, hole * 2.5 * kb, fu, area)
}

/// kb of IS 800 10.3.4, with the distances that are known.
pub(in crate::strength) fn bearing_working(found: &PlyResistance) -> Derivation {
    let ply = &found.ply;
    let mut kb = Vec::from(["1", "fub / fu"]);
    let fub = found.bolt.tensile_strength.unwrap_or_default();
    let hole = hole_factor(ply.hole_kind).unwrap_or(1.0);
    let mut step = Vec::from([
        ("fub", Amount::from(fub)),
        ("fu", found.stress.into()),
        ("d0", ply.hole.into()),
        ("ch", hole.into()),
    ]);
    for (known, symbol, limit) in [
        (ply.end_distance, "e1", "e1 / (3 * d0)"),
        (ply.pitch, "p1", "p1 / (3 * d0) - 1 / 4"),
    ] {
        if let Some(length) = known {
            kb.push(limit);
            step.push((symbol, length.into()));
        }
    }
    let formula = alloc::format!("ch * 2.5 * min({})", kb.join(", "));
    let first = Step::new("coefficient 2.5 kb", "c", formula, found.coefficient)
        .source(found.method.method());
    Derivation::new("").step(
        step.into_iter()
            .fold(first, |step, (symbol, value)| step.with(symbol, value)),
    )
}

/// The clause of a mode that is not the one of bearing.
pub(in crate::strength) const fn clause(mode: Mode) -> Option<&'static Method> {
    match mode {
        Mode::NetSection => Some(methods::IS_800_2007_6_3),
        Mode::GrossSection => Some(methods::IS_800_2007_6_2),
        _ => None,
    }
}

/// What of it was recalled.
pub(in crate::strength) fn recalled(mode: Mode, hole: HoleKind) -> Option<&'static Method> {
    (mode == Mode::Bearing && hole != HoleKind::Standard)
        .then_some(methods::IS_800_2007_10_3_4_HOLES)
}
