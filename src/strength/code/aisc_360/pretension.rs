//! AISC 360, Tables J3.1 and J3.1M: least pretensions.

use alloc::format;

use crate::error::Error;
use crate::material::BoltStrength;
use crate::strength::shear::AiscEdition;
use crate::tables::pretension::{Pretension, PretensionEditions, PretensionGroup};
use crate::thread::Thread;
use crate::units::{Length, Stress, inches, ksi, megapascals};

/// The row of Table J3.1 for a structural bolt.
pub(crate) fn pretension(
    thread: &Thread,
    strength: &BoltStrength,
    edition: AiscEdition,
) -> Result<&'static Pretension, Error> {
    let refused = |reason| Error::NoValue {
        quantity: "pretension by AISC 360 Table J3.1",
        subject: format!("{thread} of {}", strength.grade),
        reason,
    };
    let (group, least_tensile) = if strength.grade.is_a325() {
        (PretensionGroup::A325, LARGE_A325_FROM_2016)
    } else if strength.grade.is_a490() {
        (PretensionGroup::A490, megapascals(0.0))
    } else {
        return Err(refused(
            "the rows that are held are for A325 and A490 bolts and their twist-off and metric sisters",
        ));
    };
    let row = Pretension::aisc(thread, group, edition)?;
    // An old A325 over 1 in is weaker than the bolt that the later tables count on.
    if row.editions == Some(PretensionEditions::From2016)
        && thread.is_unified()
        && row.nominal_diameter > LARGE_FROM
        && strength.tensile_strength < least_tensile
    {
        return Err(refused(
            "editions from 2016 count on 120 ksi over 1 in, which these bolts have not",
        ));
    }
    Ok(row)
}

/// A325 over this diameter gained strength with ASTM F3125.
const LARGE_FROM: Length = inches(1.0 + 1e-9);
/// Tensile strength that the larger A325 of editions from 2016 has, with the slack of rounding.
const LARGE_A325_FROM_2016: Stress = ksi(120.0 - 1e-6);
