//! Machine design: distortion energy from yield or proof, proof load in tension.

use super::{Factors, not_listed, sane_factor};
use crate::error::Error;
use crate::material::BoltStrength;
use crate::strength::section::{Base, StressOf};
use crate::strength::shear::ShearBasis;

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
