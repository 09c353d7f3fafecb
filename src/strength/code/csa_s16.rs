//! CSA S16, 13.12: bolts in shear and tension, and the plies they bear on.

pub(in crate::strength) mod ply;

use super::{BlockFaces, Factor, Factors, cautions_of};
use crate::caution::Cautions;
use crate::error::{Allowed, Error, out_of_range};
use crate::material::{BoltGrade, BoltStrength};
use crate::source::Method;
use crate::strength::check::Mode;
use crate::strength::interaction::Form;
use crate::strength::ply::BlockShear;
use crate::strength::section::{Base, StressOf};
use crate::tables::methods;
use crate::units::{Length, Stress, megapascals, millimetres};

/// 13.12.1.4: the ellipse, without a place for bending.
pub(in crate::strength) const INTERACTION: Form = Form::ELLIPSE;

/// phi b = 0.80.
pub(in crate::strength) const FACTORS: Factors = Factors::nominal(Some(0.80), None);

/// What is cited for long joints, grips and packing.
pub(in crate::strength) const REDUCTIONS: [Option<&Method>; 3] =
    [Some(methods::CSA_S16_13_12_1_2), None, None];

/// 13.12.1.2. The standard lowers the resistance by 30 % for threads; stress or area is the same.
pub(in crate::strength) fn shear(strength: &BoltStrength, in_shank: bool) -> StressOf {
    let base = Base::tensile("Fu", strength);
    if in_shank {
        StressOf::share(0.60, base, "0.60 * Fu")
    } else {
        StressOf::share(0.60 * 0.70, base, "0.60 * 0.70 * Fu")
    }
}

/// 13.12.1.3: on the shank, 0.75 stands for the threads.
pub(in crate::strength) fn tension(strength: &BoltStrength) -> StressOf {
    StressOf::share(0.75, Base::tensile("Fu", strength), "0.75 * Fu")
}

pub(in crate::strength) fn cautions(method: &'static Method, grade: BoltGrade) -> Cautions {
    cautions_of(method, grade, "ASTM structural bolts", |grade| {
        matches!(grade, BoltGrade::Astm(_))
    })
}

/// 13.12.1.2, long joints.
pub(in crate::strength) fn long_joint(length: Length) -> Factor {
    if length >= millimetres(760.0) {
        Factor::printed(0.833)
    } else {
        Factor::ONE
    }
}

/// Thicker fillers are to be extended beyond the joint and fastened there.
pub(in crate::strength) fn packing(packing: Length) -> Result<Factor, Error> {
    let most = millimetres(6.4);
    if packing > most {
        let what = "fillers for CSA S16 that are not fastened beyond the joint";
        return Err(out_of_range(what, packing, Allowed::AtMost(most.into())));
    }
    Ok(Factor::ONE)
}

/// phi br = 0.80 in bearing, phi u = 0.75 where the ply breaks, phi = 0.90 where it yields.
pub(in crate::strength) const fn ply_factor(mode: Mode) -> f64 {
    match mode {
        Mode::Bearing => 0.80,
        Mode::GrossSection => 0.90,
        _ => 0.75,
    }
}

/// 13.11: the mean of Fy and Fu; above 460 N/mm2 Fy alone (recalled).
pub(in crate::strength) fn tear_out(yielding: Stress, breaking: Stress) -> Stress {
    if yielding > megapascals(460.0) {
        yielding
    } else {
        0.5 * (yielding + breaking)
    }
}

/// 13.11: shear at the mean of yield and tensile strength, for steels over 460 MPa at yield (485 in 2009); Ut 1 for a block
/// that is pulled evenly. For others the code has 0.3 to 0.9 by the kind of member, and the least of them is taken.
pub(in crate::strength) fn block(block: &BlockShear, uniform: bool) -> BlockFaces {
    let (fy, fu) = (block.yield_strength, block.tensile_strength);
    let (stress, shear_formula) = if fy > megapascals(460.0) {
        (fy, "0.6 * Fy * Agv")
    } else {
        (0.5 * (fy + fu), "0.6 * (Fy + Fu) / 2 * Agv")
    };
    let ut = if uniform { 1.0 } else { 0.3 };
    BlockFaces {
        shear: 0.6 * stress * block.gross_shear,
        shear_formula,
        tension: ut * fu * block.net_tension,
        tension_formula: "k * Fu * Ant",
        factor: ut,
        factors: Factors::nominal(Some(ply_factor(Mode::BlockShear)), None),
    }
}
