//! EN 1993-1-8:2005, section 3: bolts in shear and tension, and both; against slip.

pub(in crate::strength) mod distances;
pub(in crate::strength) mod ply;
pub(crate) mod pretension;
pub(in crate::strength) mod slip;

use super::{BlockFaces, Factor, Factors, not_listed, packed_over_a_third, plane, row_for_class};
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::material::{BoltGrade, PropertyClass};
use crate::math::sqrt;
use crate::source::Method;
use crate::strength::check::Level;
use crate::strength::interaction::Form;
use crate::strength::ply::BlockShear;
use crate::strength::section::{Base, StressOf};
use crate::tables::methods;
use crate::tables::strengths::{StressCode, StressQuantity};
use crate::thread::Thread;
use crate::units::{Length, Stress, millimetres};

/// Table 3.4: S + T / 1.4, at most 1.
pub(in crate::strength) const INTERACTION: Form = Form::Corner {
    sum: 1.0,
    tension: 1.4,
};

const CODE: StressCode = StressCode::En1993_1_8;

/// The recommended gamma M2: of bolts, pins and whatever breaks.
pub(in crate::strength) const GAMMA_M2: f64 = 1.25;

/// The recommended partial factor gamma M2 = 1.25, which is the 0.80 that others multiply by.
pub(in crate::strength) const FACTORS: Factors = Factors::nominal(Some(0.80), None);

/// What is cited for long joints, grips and packing.
pub(in crate::strength) const REDUCTIONS: [Option<&Method>; 3] = [
    Some(methods::EN_1993_1_8_2005_3_8),
    None,
    Some(methods::EN_1993_1_8_2005_3_6_1_12),
];

/// EN 1090-2, Table 11: clearance of normal holes for M12 and M14.
const SMALL_CLEARANCE: Length = millimetres(1.0);
/// So that a sum of lengths stands on the near side of its limit.
const TOLERANCE: Length = millimetres(1e-6);

fn strength(grade: BoltGrade, of: StressQuantity) -> Option<Stress> {
    row_for_class(CODE, grade, of, None)?.stress
}

fn listed(grade: BoltGrade, of: StressQuantity, quantity: &'static str) -> Result<Stress, Error> {
    strength(grade, of).ok_or_else(|| {
        let reason = "EN 1993-1-8 Table 3.1 has classes 4.6 to 10.9";
        not_listed(quantity, grade, reason)
    })
}

/// [`tensile_strength`] where the table has the grade.
pub(crate) fn tensile_strength_if_listed(grade: BoltGrade) -> Option<Stress> {
    strength(grade, StressQuantity::TensileStrength)
}

/// Nominal tensile strength fub of Table 3.1, below that of ISO 898-1 for class 8.8.
pub(crate) fn tensile_strength(grade: BoltGrade) -> Result<Stress, Error> {
    listed(grade, StressQuantity::TensileStrength, "tensile strength")
}

/// Nominal yield strength fyb of Table 3.1.
pub(crate) fn yield_strength(grade: BoltGrade) -> Result<Stress, Error> {
    listed(grade, StressQuantity::YieldStrength, "yield strength")
}

/// fub for a working.
fn base(grade: BoltGrade) -> Result<Base, Error> {
    Ok(Base {
        what: "nominal tensile strength",
        symbol: "fub",
        value: tensile_strength(grade)?,
        table: Some(methods::EN_1993_1_8_2005_TABLE_3_1),
    })
}

/// Table 3.4: alpha v times fub.
pub(in crate::strength) fn shear(grade: BoltGrade, in_shank: bool) -> Result<StressOf, Error> {
    let base = base(grade)?;
    let plane = Some(plane(in_shank));
    row_for_class(CODE, grade, StressQuantity::ShearNominal, plane)
        .and_then(|row| row.share_of_tensile)
        .map(|share| StressOf::factor(("av", share), base, "av * fub"))
        .ok_or_else(|| {
            let reason = "EN 1993-1-8 Table 3.4 has no such class";
            not_listed("shear stress", grade, reason)
        })
}

/// Table 3.4: k2 times fub, k2 = 0.9, of countersunk bolts 0.63.
pub(in crate::strength) fn tension(grade: BoltGrade, countersunk: bool) -> Result<StressOf, Error> {
    let k2 = if countersunk { 0.63 } else { 0.9 };
    Ok(StressOf::factor(("k2", k2), base(grade)?, "k2 * fub"))
}

/// 3.8(1).
pub(in crate::strength) fn long_joint(length: Length, d: Length) -> Factor {
    let in_d = (length / d).value;
    if in_d > 15.0 {
        Factor::by(
            "max(1 - (L - 15 * d) / (200 * d), 0.75)",
            (1.0 - (in_d - 15.0) / 200.0).max(0.75),
        )
    } else {
        Factor::ONE
    }
}

/// 3.6.1(12).
pub(in crate::strength) fn packing(packing: Length, d: Length) -> Factor {
    packed_over_a_third(packing, d)
}

/// Sizes whose normal hole has 1 mm of clearance in EN 1090-2, Table 11.
pub(in crate::strength) fn has_small_hole(thread: &Thread) -> bool {
    let d = thread.nominal_diameter();
    [millimetres(12.0), millimetres(14.0)]
        .iter()
        .any(|size| (*size - d).abs() < TOLERANCE)
}

/// Whether the hole is one of 3.6.1(5): M12 and M14 with more than 1 mm of clearance.
pub(in crate::strength) fn is_wide_hole(thread: &Thread, hole: Length) -> bool {
    has_small_hole(thread) && hole > thread.nominal_diameter() + SMALL_CLEARANCE + TOLERANCE
}

/// 3.6.1(5): 0.85 but for classes 4.6 and 5.6.
pub(in crate::strength) fn wide_hole(grade: BoltGrade) -> Factor {
    let soft = matches!(
        grade,
        BoltGrade::Iso(PropertyClass::Class4_6 | PropertyClass::Class5_6)
    );
    if soft {
        Factor::ONE
    } else {
        Factor::printed(0.85)
    }
}

/// Strengths of Table 3.1 that were recalled, if the table has such: at present none.
pub(in crate::strength) fn cautions(grade: BoltGrade) -> Cautions {
    let row = row_for_class(CODE, grade, StressQuantity::TensileStrength, None);
    Cautions::default()
        .with(row.and_then(|row| Caution::from_memory("nominal tensile strength", row.provenance)))
}

/// 3.10.2, with gamma M2 1.25 and gamma M0 1.0; half of the tension where the load is eccentric.
pub(in crate::strength) fn block(block: &BlockShear, eccentric: bool) -> BlockFaces {
    let k = if eccentric { 0.5 } else { 1.0 };
    BlockFaces {
        shear: block.yield_strength * block.net_shear / sqrt(3.0),
        shear_formula: "Fy * Anv / sqrt(3)",
        tension: k * block.tensile_strength * block.net_tension / GAMMA_M2,
        tension_formula: "k * Fu * Ant / 1.25",
        factor: k,
        factors: Factors::within(Level::Design),
    }
}
