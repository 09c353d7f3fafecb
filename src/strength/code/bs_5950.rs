//! BS 5950-1:2000, 6.3: bolts in shear and tension, and the plies they bear on; 6.4: against slip. Its stresses are design strengths.

pub(in crate::strength) mod distances;
pub(in crate::strength) mod ply;
pub(crate) mod slip;

use super::{
    BlockFaces, Factor, Factors, gripped_over_five, lesser, not_listed, packed_over_a_third,
    row_for_class,
};
use crate::error::{Allowed, Error, out_of_range};
use crate::material::BoltGrade;
use crate::source::Method;
use crate::strength::check::Level;
use crate::strength::interaction::Form;
use crate::strength::ply::{BlockShear, HoleKind};
use crate::strength::section::{Base, StressOf};
use crate::tables::methods;
use crate::tables::strengths::{StressCode, StressPlane, StressQuantity};
use crate::units::{Length, Stress, megapascals, millimetres};

/// 6.3.4.4: S + T, at most 1.4.
pub(in crate::strength) const INTERACTION: Form = Form::Corner {
    sum: 1.4,
    tension: 1.0,
};

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

/// Strengths in bearing that were not met in print.
pub(in crate::strength) const RECALLED_BEARING: &Method =
    methods::BS_5950_1_2000_TABLES_31_AND_32_RECALLED;

/// Table 32: pbs of S275, S355 and S460, of whatever is as strong, and 0.67 (Us + Ys) of other steels.
pub(in crate::strength) fn bearing_of_ply(yielding: Stress, breaking: Stress) -> Stress {
    strongest(
        &[
            (460.0, 540.0, 670.0),
            (355.0, 470.0, 550.0),
            (275.0, 410.0, 460.0),
        ],
        yielding,
        breaking,
    )
    .unwrap_or(0.67 * (breaking + yielding))
}

/// The strength in bearing of the strongest grade that both strengths reach, in N/mm2.
fn strongest(grades: &[(f64, f64, f64)], yielding: Stress, breaking: Stress) -> Option<Stress> {
    grades
        .iter()
        .find(|(yields, breaks, _)| {
            yielding >= megapascals(*yields) && breaking >= megapascals(*breaks)
        })
        .map(|(_, _, bearing)| megapascals(*bearing))
}

/// Table 31: pbb of classes 4.6, 8.8 and 10.9; a bolt has that of the strongest class it reaches.
pub(in crate::strength) fn bearing_of_bolt(yielding: Stress, breaking: Stress) -> Option<Stress> {
    strongest(
        &[
            (900.0, 1000.0, 1300.0),
            (640.0, 800.0, 1000.0),
            (240.0, 400.0, 460.0),
        ],
        yielding,
        breaking,
    )
}

/// Whether such a strength in bearing was met in print: those of S275, S355 and classes 4.6 and 8.8.
pub(in crate::strength) fn is_bearing_read(stress: Stress) -> bool {
    [460.0, 550.0, 1000.0]
        .iter()
        .any(|read| (stress - megapascals(*read)).abs() < megapascals(1e-6))
}

/// 6.3.3.3: kbs.
pub(in crate::strength) const fn hole_factor(hole: HoleKind) -> f64 {
    match hole {
        HoleKind::Standard => 1.0,
        HoleKind::Oversize | HoleKind::ShortSlotAcross | HoleKind::ShortSlotAlong => 0.7,
        HoleKind::LongSlotAcross | HoleKind::LongSlotAlong => 0.5,
    }
}

/// py, at most Us / 1.2 (3.1.1), and Ke of 3.4.3: 1.2 for S275, 1.1 for S355, 1.0 for S460, Us / 1.2 py for other steels. They go
/// by their yield strength here, and Ke is never more than either.
pub(in crate::strength) fn net_section(yields: Stress, breaks: Stress) -> (Stress, f64) {
    let py = lesser(yields, breaks / 1.2);
    let listed = if yields <= megapascals(275.0) {
        1.2
    } else if yields <= megapascals(355.0) {
        1.1
    } else {
        1.0
    };
    (py, lesser(listed, (breaks / (1.2 * py)).value))
}

/// 6.2.4: 0.6 py t (Lv + Ke (Lt - k Dt)).
pub(in crate::strength) fn block(block: &BlockShear) -> BlockFaces {
    let (py, ke) = net_section(block.yield_strength, block.tensile_strength);
    BlockFaces {
        shear: 0.6 * py * block.gross_shear,
        shear_formula: "0.6 * min(Fy, Fu / 1.2) * Agv",
        tension: 0.6 * py * ke * block.net_tension,
        tension_formula: "0.6 * min(Fy, Fu / 1.2) * k * Ant",
        factor: ke,
        factors: FACTORS,
    }
}
