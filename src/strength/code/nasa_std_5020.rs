//! NASA-STD-5020B, Eq. 12 to 14: bolts in shear.

use crate::error::{Error, positive};
use crate::parts::Zone;
use crate::strength::interaction::Form;
use crate::strength::section::StressOf;
use crate::units::Stress;

/// Eq. 20 and 22: exponents by what lies in the plane.
pub(in crate::strength) const fn interaction(zone: Zone) -> Form {
    match zone {
        Zone::Shank => Form::powers(2.5, 1.5, 1.0),
        Zone::RunOut | Zone::Thread => Form::powers(1.2, 2.0, 1.0),
    }
}

/// The criteria of the shuttle before it, NSTS 08307 Revision A, with its plastic bending factor.
pub(in crate::strength) const fn nsts_08307(bending: f64) -> Form {
    Form::powers(3.0, 2.0, bending)
}

/// Fsu, of the full diameter or of the minor area.
pub(in crate::strength) fn shear(shear_strength: Stress) -> Result<StressOf, Error> {
    positive("shear strength", shear_strength).map(StressOf::stated)
}
