//! MIL-HDBK-5, Table 8.1.5(a): aircraft bolts in shear, across the full shank only.

use super::{Factors, not_listed, sane_factor};
use crate::error::{Error, positive};
use crate::material::BoltGrade;
use crate::strength::interaction::Form;
use crate::strength::ply::{AskedDistance, DistanceKind, DistanceStanding as Standing, Limits};
use crate::strength::section::StressOf;
use crate::tables::methods;
use crate::units::Stress;

/// Steel bolts, shank in the plane: S^3 + T^2.
pub(in crate::strength) const INTERACTION: Form = Form::powers(3.0, 2.0, 1.0);

/// Allowable at limit load = nominal over the ultimate factor.
pub(in crate::strength) fn factors(ultimate_factor: f64) -> Result<Factors, Error> {
    let factor = sane_factor("ultimate factor", ultimate_factor)?;
    Ok(Factors::nominal(None, Some(factor)))
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

/// 1.5 of the hole at the end, below it by test; 2 by custom of aircraft repair.
pub(in crate::strength) fn distances(asked: &AskedDistance) -> Limits {
    if !asked.kind.is_edge() {
        return Limits::default();
    }
    let custom = Limits::default()
        .least(
            2.0 * asked.ply.hole,
            Standing::Permitted,
            methods::FAA_AC_43_13_1B_TWO_DIAMETERS,
        )
        .recalled(methods::FAA_AC_43_13_1B_EDGE_DISTANCES);
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
