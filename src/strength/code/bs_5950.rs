//! BS 5950-1:2000, 6.3: bolts in shear and tension. Its stresses are design strengths.

use super::{Factor, Factors, gripped_over_five, not_listed, packed_over_a_third, row_for_class};
use crate::error::{Allowed, Error, out_of_range};
use crate::material::BoltGrade;
use crate::source::Method;
use crate::strength::check::Level;
use crate::strength::section::{Base, StressOf};
use crate::tables::methods;
use crate::tables::strengths::{StressCode, StressPlane, StressQuantity};
use crate::units::{Length, Stress, millimetres};

pub(in crate::strength) const FACTORS: Factors = Factors::within(Level::Design);

/// What is cited for long joints, grips and packing.
pub(in crate::strength) const REDUCTIONS: [Option<&Method>; 3] = [
    Some(methods::BS_5950_1_2000_6_3_2_4),
    Some(methods::BS_5950_1_2000_6_3_2_3),
    Some(methods::BS_5950_1_2000_6_3_2_2),
];

/// ps of Table 30 or pt of Table 34.
fn stress(
    grade: BoltGrade,
    of: StressQuantity,
    plane: Option<StressPlane>,
    quantity: &'static str,
) -> Result<Stress, Error> {
    row_for_class(StressCode::Bs5950_1, grade, of, plane)
        .and_then(|row| row.stress)
        .ok_or_else(|| not_listed(quantity, grade, "BS 5950-1 has classes 4.6, 8.8 and 10.9"))
}

/// 6.3.2.1: ps.
pub(in crate::strength) fn shear(grade: BoltGrade) -> Result<StressOf, Error> {
    let (of, quantity) = (StressQuantity::ShearDesign, "design strength in shear");
    stress(grade, of, Some(StressPlane::Either), quantity).map(StressOf::table)
}

/// 6.3.4.3: pt; 6.3.4.2, the simple method: 0.8 pt, which has prying in it.
pub(in crate::strength) fn tension(grade: BoltGrade, simple: bool) -> Result<StressOf, Error> {
    let (of, quantity) = (StressQuantity::TensionDesign, "design strength in tension");
    let value = stress(grade, of, None, quantity)?;
    let base = Base {
        what: "tension strength",
        symbol: "pt",
        value,
        table: Some(methods::BS_5950_1_2000),
    };
    Ok(if simple {
        StressOf::share(0.8, base, "0.8 * pt")
    } else {
        StressOf::table(value)
    })
}

/// 6.3.2.4.
pub(in crate::strength) fn long_joint(length: Length) -> Result<Factor, Error> {
    if length <= millimetres(500.0) {
        return Ok(Factor::ONE);
    }
    let most = millimetres(5500.0);
    if length >= most {
        let allowed = Allowed::Below(most.into());
        return Err(out_of_range(
            "length of the joint for BS 5950-1",
            length,
            allowed,
        ));
    }
    Ok(Factor::by(
        "(5500 * mm - L) / (5000 * mm)",
        ((most - length) / millimetres(5000.0)).value,
    ))
}

/// 6.3.2.3.
pub(in crate::strength) fn long_grip(grip: Length, d: Length) -> Factor {
    gripped_over_five(grip, d)
}

/// 6.3.2.2.
pub(in crate::strength) fn packing(packing: Length, d: Length) -> Result<Factor, Error> {
    if 3.0 * packing > 4.0 * d {
        let allowed = Allowed::AtMost((4.0 / 3.0 * d).into());
        return Err(out_of_range("packing for BS 5950-1", packing, allowed));
    }
    Ok(packed_over_a_third(packing, d))
}
