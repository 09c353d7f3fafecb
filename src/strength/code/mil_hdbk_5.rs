//! MIL-HDBK-5: aircraft bolts in shear across the full shank (Table 8.1.5(a)), in tension at the root of the thread (Table
//! 8.1.5(b)), and the bearing of what they join. The factors on limit loads are those of 14 CFR part 25.

use super::not_listed;
use crate::caution::{Caution, Cautions};
use crate::error::{Error, positive};
use crate::material::{BoltGrade, BoltStrength};
use crate::strength::check::{Mode, Resistance};
use crate::strength::interaction::Form;
use crate::strength::ply::{
    Asked, AskedDistance, DistanceKind, DistanceStanding as Standing, Geometry, Limits, PlyMethod,
    PlyNeed, PlyOutcome, need,
};
use crate::strength::section::{Base, StressOf};
use crate::tables::methods;
use crate::units::Stress;
use alloc::vec::Vec;

/// Steel bolts, shank in the plane: S^3 + T^2.
pub(in crate::strength) const INTERACTION: Form = Form::powers(3.0, 2.0, 1.0);

/// Ultimate load over limit load, 14 CFR 25.303.
pub(crate) const ULTIMATE: f64 = 1.5;

/// 14 CFR 25.625: the least fitting factor where tests do not prove the fitting.
pub(crate) const FITTING: f64 = 1.15;

/// Shear over tensile strength of the bolts of the procurement specifications: 75 of 125 ksi, 96 of 160 and 108 of 180; FAA AC
/// 43.13-1B Table 7-1 has 0.6 too, 24 000 of 40 000 psi and 54 000 of 90 000. Fsu of more is that of another bolt.
const SHEAR_OF_TENSILE: f64 = 0.6;

/// Diameter over thickness up to which bearing strengths hold: of thinner sheet tests show what a joint bears (MIL-HDBK-5, 8.1,
/// recalled).
const THIN: f64 = 5.5;

/// Bearing over tensile strength, which no row of the handbook passes: at two diameters 129 of 64, 88 of 42, 156 of 78 and 200
/// of 95 ksi.
const BEARING_OF_TENSILE: f64 = 2.5;

/// The fitting factor of who says none.
#[cfg(feature = "serde")]
pub(crate) const fn fitting() -> f64 {
    FITTING
}

/// That a factor is less than the regulations have it: of safety unless the loads are ultimate, of a fitting without a test.
pub(in crate::strength) fn low_factors(ultimate_factor: f64, fitting_factor: f64) -> Cautions {
    let against = |method, advice| Caution::AgainstAdvice { method, advice };
    let loads =
        "a factor of safety of 1.5 on limit loads, and less only on loads that have it in them";
    let fitting = "a fitting factor of at least 1.15, and less only where limit and ultimate tests prove the fitting";
    Cautions::default()
        .with((ultimate_factor < ULTIMATE).then_some(against(methods::CFR_25_303, loads)))
        .with((fitting_factor < FITTING).then_some(against(methods::CFR_25_625, fitting)))
}

/// Fsu of the shank; none across the thread.
pub(in crate::strength) fn shear(
    shear_strength: Stress,
    grade: BoltGrade,
    in_shank: bool,
) -> Result<StressOf, Error> {
    if !in_shank {
        let reason = "MIL-HDBK-5 Table 8.1.5(a) gives that of the full shank only";
        return Err(not_listed(
            "shear strength across the thread",
            grade,
            reason,
        ));
    }
    positive("shear strength", shear_strength).map(StressOf::stated)
}

/// Whether Fsu can be that of a bolt of such tensile strength.
pub(crate) fn can_have(shear_strength: Stress, tensile_strength: Stress) -> bool {
    // Ksi and MPa of the same bolt are rounded.
    shear_strength <= 1.001 * SHEAR_OF_TENSILE * tensile_strength
}

/// Whether a bolt that does not break at ultimate load does not yield at limit load, 14 CFR 25.305(a) (recalled): the handbook has
/// bolts by what breaks them. None if its yield strength is not known.
pub(crate) fn yields_late(strength: &BoltStrength) -> Option<bool> {
    let yields = strength.yield_strength?;
    // Ksi and MPa of the same bolt are rounded.
    Some(1.001 * ULTIMATE * yields >= strength.tensile_strength)
}

/// Whether a bearing strength can be that of a material of such tensile strength.
pub(crate) fn can_bear(bearing_strength: Stress, tensile_strength: Stress) -> bool {
    bearing_strength <= BEARING_OF_TENSILE * tensile_strength
}

/// That the sheet is too thin for the bearing strengths, if it is.
pub(in crate::strength) fn too_thin(asked: &Asked) -> Option<PlyOutcome> {
    let is_thin = asked.diameter > (THIN + 1e-9) * asked.ply.thickness;
    is_thin.then_some(PlyOutcome::NotGiven(
        "the diameter is more than 5.5 times the thickness: of so thin a sheet MIL-HDBK-5 wants tests",
    ))
}

/// Ftu on the area at the root of the thread.
pub(in crate::strength) fn tension(strength: &BoltStrength) -> StressOf {
    let base = Base {
        what: "tensile strength",
        symbol: "Ftu",
        value: strength.tensile_strength,
        table: None,
    };
    StressOf::share(1.0, base, "Ftu")
}

/// Bearing at limit load without yield of the ply, 14 CFR 25.305: Fbry over the fitting factor alone. None of other methods.
pub(in crate::strength) fn yield_in_bearing(asked: &Asked) -> Result<PlyOutcome, Error> {
    let PlyMethod::MilHdbk5 { fitting_factor, .. } = asked.method else {
        return Ok(PlyOutcome::NotNeeded("the method has no yield in bearing"));
    };
    if let Some(thin) = too_thin(asked) {
        return Ok(thin);
    }
    let mut missing = Vec::new();
    let stress = need(asked.ply.bearing_yield, PlyNeed::BearingYield, &mut missing);
    let Some(stress) = stress else {
        return Ok(PlyOutcome::Missing(missing));
    };
    let area = Geometry::new(
        asked.diameter * asked.ply.thickness,
        "d * t",
        asked.ply.hole,
    );
    let mut outcome = asked.found(Mode::Bearing, 1.0, stress, area)?;
    if let PlyOutcome::Found(found) = &mut outcome {
        let load = stress * found.area;
        found.safety_factor = Some(fitting_factor);
        found.resistance = Resistance::from_levels(Some(load), None, Some(load / fitting_factor))?;
        found.clause = methods::MIL_HDBK_5_BEARING_YIELD;
    }
    Ok(outcome)
}

/// The least bearing factor that was read for joints that move, of cable controls; 14 CFR 25.623 asks for one and has no number.
const MOVING: f64 = 2.0;

/// Whether a special factor in place of the fitting factor is one for joints that move.
pub(crate) fn is_for_moving(fitting_factor: f64) -> bool {
    fitting_factor >= MOVING
}

/// 1.5 of the hole at the end, below it by test; 2 and a spacing of 3 as of rivets in a single row.
pub(in crate::strength) fn distances(asked: &AskedDistance) -> Limits {
    if !asked.kind.is_edge() {
        return Limits::default().least(
            3.0 * asked.diameter,
            Standing::Undecided,
            methods::FAA_AC_43_13_1B_THREE_DIAMETERS,
        );
    }
    let custom = Limits::default().least(
        2.0 * asked.ply.hole,
        Standing::Permitted,
        methods::FAA_AC_43_13_1B_TWO_DIAMETERS,
    );
    if asked.kind == DistanceKind::Edge {
        return custom;
    }
    custom
        .least(
            1.5 * asked.ply.hole,
            Standing::Undecided,
            methods::MIL_HDBK_5_BELOW_1_5_DIAMETERS_BY_TEST,
        )
        .recalled(methods::MIL_HDBK_5_LEAST_EDGE_DISTANCE)
}
