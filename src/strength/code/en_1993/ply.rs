//! EN 1993-1-8:2005, 3.6.1 and Table 3.4, EN 1993-1-1, 6.2.3: what plies bear.

use alloc::vec::Vec;

use super::GAMMA_M2;
use crate::derivation::{Derivation, Step};
use crate::error::{Amount, Error};
use crate::math::sqrt;
use crate::source::Method;
use crate::strength::check::{Mode, Resistance};
use crate::strength::ply::{
    Asked, Geometry, PlateShear, PlyMethod, PlyNeed, PlyOutcome, PlyResistance, euler, need,
};
use crate::tables::methods;
use crate::units::{Force, Length, Stress, megapascals};

/// EN 1993-1-1, 6.2.3(2): of fu on the net section.
pub(in crate::strength) const NET: f64 = 0.9;
/// EN 1993-1-8, 3.6.1(10): the most a ply bears in a single lap with one row of bolts, over fu d t.
const SINGLE_LAP: f64 = 1.5;
const SINGLE_LAP_CLAUSE: &Method = methods::EN_1993_1_8_2005_3_6_1_10_SINGLE_LAP_ONE_ROW_OF_BOLTS;
const WITHOUT_SLIP_CLAUSE: &Method = methods::EN_1993_1_1_2005_6_2_3_4_CATEGORY_C_RECALLED;

/// gamma M2 1.25, gamma M0 1.0 of the gross section, both as recommended.
pub(in crate::strength) const fn factor(mode: Mode) -> f64 {
    match mode {
        Mode::GrossSection => 1.0,
        _ => 1.0 / GAMMA_M2,
    }
}

/// k1 ab of EN 1993-1-8 Table 3.4, which has no value without a distance along and one across the load. An
/// inner hole may have a pitch or a gauge in their place.
pub(in crate::strength) fn bearing(asked: &Asked) -> Result<PlyOutcome, Error> {
    let ply = asked.ply;
    let Some(hole) = ply.hole_kind.en_bearing_factor() else {
        return Ok(PlyOutcome::NotGiven(
            "EN 1993-1-8 Table 3.4 has no bearing in slots along the load",
        ));
    };
    let d0 = ply.hole;
    let end = ply.end_distance.map(|e1| (e1 / (3.0 * d0)).value);
    let pitch = ply.pitch.map(|p1| (p1 / (3.0 * d0)).value - 0.25);
    let edge = ply.edge_distance.map(|e2| 2.8 * (e2 / d0).value - 1.7);
    let gauge = ply.gauge.map(|p2| 1.4 * (p2 / d0).value - 1.7);
    let lesser = |a: Option<f64>, b: Option<f64>| match (a, b) {
        (Some(a), Some(b)) => Some(a.min(b)),
        (a, b) => a.or(b),
    };
    let mut missing = Vec::new();
    let along = need(lesser(end, pitch), PlyNeed::EndDistance, &mut missing);
    let side = need(lesser(edge, gauge), PlyNeed::EdgeDistance, &mut missing);
    let fu = need(ply.tensile_strength, PlyNeed::TensileStrength, &mut missing);
    let fub = asked.bolt.tensile_strength;
    let fub = need(fub, PlyNeed::BoltTensileStrength, &mut missing);
    let (Some(along), Some(side), Some(fu), Some(fub)) = (along, side, fu, fub) else {
        return Ok(PlyOutcome::Missing(missing));
    };
    let alpha = along.min((fub / fu).value).min(1.0);
    let k1 = side.min(2.5);
    if alpha <= 0.0 || k1 <= 0.0 {
        return Ok(PlyOutcome::Nothing(
            "EN 1993-1-8 Table 3.4 leaves no bearing so near to an edge or to the next hole",
        ));
    }
    let area = Geometry::new(asked.diameter * ply.thickness, "d * t", d0);
    asked.found(Mode::Bearing, hole * k1 * alpha, fu, area)
}

pub(in crate::strength) fn single_lap(asked: &Asked) -> Result<PlyOutcome, Error> {
    if asked.method != PlyMethod::En1993 {
        return Ok(PlyOutcome::NotNeeded("the rule is of EN 1993-1-8 only"));
    }
    let Some(stress) = asked.ply.tensile_strength else {
        return Ok(PlyOutcome::Missing([PlyNeed::TensileStrength].into()));
    };
    let area = Geometry::new(
        asked.diameter * asked.ply.thickness,
        "d * t",
        asked.ply.hole,
    );
    let mut outcome = asked.found(Mode::Bearing, SINGLE_LAP, stress, area)?;
    if let PlyOutcome::Found(resistance) = &mut outcome {
        resistance.clause = SINGLE_LAP_CLAUSE;
    }
    Ok(outcome)
}

/// The net section of EN 1993-1-8 category C.
pub(in crate::strength) fn net_section_without_slip(asked: &Asked) -> Result<PlyOutcome, Error> {
    if asked.method != PlyMethod::En1993 {
        return Ok(PlyOutcome::NotNeeded("the rule is of EN 1993-1-8 only"));
    }
    let mut outcome = asked.net_section()?;
    let Some(fy) = asked.ply.yield_strength else {
        return Ok(PlyOutcome::Missing([PlyNeed::YieldStrength].into()));
    };
    if let PlyOutcome::Found(found) = &mut outcome {
        let nominal = fy * found.area;
        found.coefficient = 1.0;
        found.stress = fy;
        found.resistance_factor = Some(1.0);
        found.resistance = Resistance::from_levels(Some(nominal), Some(nominal), None)?;
        found.clause = WITHOUT_SLIP_CLAUSE;
    }
    Ok(outcome)
}

/// k1 and ab of EN 1993-1-8 Table 3.4, with the distances that are known.
pub(in crate::strength) fn bearing_working(found: &PlyResistance) -> Derivation {
    let ply = &found.ply;
    let mut alpha = Vec::from(["1"]);
    let mut k1 = Vec::from(["2.5"]);
    let mut terms = Vec::from([("d0", Amount::from(ply.hole)), ("fu", found.stress.into())]);
    for (known, symbol, limit, list) in [
        (ply.end_distance, "e1", "e1 / (3 * d0)", &mut alpha),
        (ply.edge_distance, "e2", "2.8 * e2 / d0 - 1.7", &mut k1),
    ] {
        if let Some(length) = known {
            list.push(limit);
            terms.push((symbol, length.into()));
        }
    }
    for (known, symbol, limit, list) in [
        (ply.pitch, "p1", "p1 / (3 * d0) - 1 / 4", &mut alpha),
        (ply.gauge, "p2", "1.4 * p2 / d0 - 1.7", &mut k1),
    ] {
        if let Some(length) = known {
            list.push(limit);
            terms.push((symbol, length.into()));
        }
    }
    if let Some(bolt) = found.bolt.tensile_strength {
        alpha.push("fub / fu");
        terms.push(("fub", bolt.into()));
    }
    // No bearing was worked out where the table has no factor.
    let hole = ply.hole_kind.en_bearing_factor().unwrap_or(1.0);
    let formula = alloc::format!("ch * min({}) * min({})", k1.join(", "), alpha.join(", "));
    let step = Step::new("coefficient ch k1 ab", "c", formula, found.coefficient)
        .with("ch", hole)
        .source(found.method.method());
    let step = terms
        .into_iter()
        .fold(step, |step, (symbol, value)| step.with(symbol, value));
    Derivation::new("").step(step)
}

/// The clause of a mode that is not the one of bearing.
pub(in crate::strength) const fn clause(mode: Mode) -> Option<&'static Method> {
    match mode {
        Mode::NetSection | Mode::GrossSection => Some(methods::EN_1993_1_1_2005_6_2_3),
        _ => None,
    }
}

/// Whether the coefficient is that of Table 3.4.
pub(in crate::strength) fn is_by_table_3_4(found: &PlyResistance) -> bool {
    found.method == PlyMethod::En1993
        && found.mode == Mode::Bearing
        && found.clause != SINGLE_LAP_CLAUSE
}

/// Plates that carry the load in shear (Steel Buildings in Europe, Part 5, after EN 1993-1-1 6.2.6): of the gross section, what
/// bending beside it takes.
pub(in crate::strength) const fn bent(bent: bool) -> f64 {
    if bent { 1.27 } else { 1.0 }
}

/// Such a plate: yielding of its gross section, rupture of its net section, both design resistances.
pub(in crate::strength) fn plate_shear(plate: &PlateShear, is_bent: bool) -> [Force; 2] {
    let root = sqrt(3.0);
    [
        plate.yield_strength * plate.gross / (bent(is_bent) * root),
        plate.tensile_strength * plate.net / (root * GAMMA_M2),
    ]
}

/// EN 1993-1-1, imperfection of curve c, which Table 6.2 gives solid sections.
const CURVE_C: f64 = 0.49;

/// EN 1993-1-1, 6.3.1: chi fy by curve c.
pub(in crate::strength) fn pressed(yields: Stress, slender: f64) -> Stress {
    let ratio = sqrt((yields / euler(megapascals(210e3), slender)).value);
    let phi = 0.5 * (1.0 + CURVE_C * (ratio - 0.2) + ratio * ratio);
    let chi = 1.0 / (phi + sqrt((phi * phi - ratio * ratio).max(0.0)));
    if ratio <= 0.2 {
        return yields;
    }
    chi.min(1.0) * yields
}

/// EN 1993-1-8 Table 3.3, notes: a pitch of so many epsilon t needs no check of buckling between fasteners.
const NEAR: f64 = 9.0;
/// The same: buckling length between fasteners over their pitch.
const BETWEEN: f64 = 0.6;

/// The buckling length between two rows of bolts so far apart; none where nothing buckles between them.
pub(in crate::strength) fn length_between(
    pitch: Length,
    thickness: Length,
    yields: Stress,
) -> Option<Length> {
    let epsilon = sqrt((megapascals(235.0) / yields).value);
    (pitch > NEAR * epsilon * thickness).then_some(BETWEEN * pitch)
}
