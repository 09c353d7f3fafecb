//! Machine design: distortion energy from yield or proof, proof load in tension.

use alloc::vec::Vec;

use super::{Factors, not_listed, sane_factor};
use crate::error::Error;
use crate::material::BoltStrength;
use crate::strength::ply::{AskedDistance, DistanceStanding as Standing, Limits, PlyNeed};
use crate::strength::section::{Base, StressOf};
use crate::strength::shear::ShearBasis;
use crate::tables::methods;

/// Shear yield over tensile yield by the distortion-energy theory, 1/sqrt 3, as Shigley prints it.
const DISTORTION_ENERGY: f64 = 0.577;

/// Allowable = nominal over the factor of the caller.
pub(in crate::strength) fn factors(design_factor: f64) -> Result<Factors, Error> {
    let factor = sane_factor("design factor", design_factor)?;
    Ok(Factors::nominal(None, Some(factor)))
}

/// 0.577 of the yield or the proof strength.
#[inline]
pub(in crate::strength) fn shear(
    basis: ShearBasis,
    strength: &BoltStrength,
) -> Result<StressOf, Error> {
    let (stress, what, symbol, formula) = match basis {
        ShearBasis::Yield => (
            strength.yield_strength,
            "yield strength",
            "Sy",
            "0.577 * Sy",
        ),
        ShearBasis::Proof => (strength.proof_stress, "proof stress", "Sp", "0.577 * Sp"),
    };
    let value =
        stress.ok_or_else(|| not_listed(what, strength.grade, "its standard gives none"))?;
    let base = Base {
        what,
        symbol,
        value,
        table: None,
    };
    Ok(StressOf::share(DISTORTION_ENERGY, base, formula))
}

/// Practice of machine design and riveted joints: one diameter, else a fault; 1.5 of the hole, else undecided.
pub(in crate::strength) fn distances(asked: &AskedDistance, missing: &mut Vec<PlyNeed>) -> Limits {
    if !asked.kind.is_edge() {
        return Limits::default();
    }
    let slot = asked.half_slot(missing);
    Limits::default()
        .least(
            asked.diameter + slot,
            Standing::Fault,
            methods::DISTANCE_ONE_DIAMETER,
        )
        .least(
            1.5 * asked.ply.hole + slot,
            Standing::Undecided,
            methods::DISTANCE_RIVETED,
        )
}
