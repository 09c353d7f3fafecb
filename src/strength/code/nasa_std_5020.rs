//! NASA-STD-5020B, Eq. 12 to 14: bolts in shear.

use super::{Factors, sane_factor};
use crate::error::{Error, positive};
use crate::strength::section::StressOf;
use crate::units::Stress;

/// Allowable at limit load = nominal over ultimate and fitting factor.
pub(in crate::strength) fn factors(
    ultimate_factor: f64,
    fitting_factor: f64,
) -> Result<Factors, Error> {
    let factor = sane_factor("ultimate factor", ultimate_factor)?
        * sane_factor("fitting factor", fitting_factor)?;
    Ok(Factors::nominal(None, Some(factor)))
}

/// Fsu, of the full diameter or of the minor area.
pub(in crate::strength) fn shear(shear_strength: Stress) -> Result<StressOf, Error> {
    positive("shear strength", shear_strength).map(StressOf::stated)
}
