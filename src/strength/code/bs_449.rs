//! BS 449-2: bolts in shear. Its stresses are allowable ones, on the area of the shank.

use super::{Factors, not_listed, row_for_class};
use crate::error::Error;
use crate::material::BoltGrade;
use crate::strength::check::Level;
use crate::strength::section::StressOf;
use crate::tables::strengths::{StressCode, StressPlane, StressQuantity};

pub(in crate::strength) const FACTORS: Factors = Factors::within(Level::Allowable);

/// Allowable shear stress as printed tables of loads have it.
pub(in crate::strength) fn shear(grade: BoltGrade) -> Result<StressOf, Error> {
    let (of, plane) = (StressQuantity::ShearAllowable, Some(StressPlane::Either));
    row_for_class(StressCode::Bs449_2, grade, of, plane)
        .and_then(|row| row.stress)
        .map(StressOf::table)
        .ok_or_else(|| {
            let reason = "of BS 449-2, those of classes 6.8, 8.8 and 10.9 are known";
            not_listed("allowable shear stress", grade, reason)
        })
}
