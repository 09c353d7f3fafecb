//! AS 4100, 9.3.2: bolts in shear and tension, and the plies they bear on; 9.3.3: against slip; 9.6: distances. The clauses are
//! those of 1998; in 2020 they are 9.2.2, 9.2.3 and 9.5.

pub(in crate::strength) mod distances;
pub(in crate::strength) mod ply;
pub(crate) mod slip;

pub(in crate::strength) use super::cautions_of_metric as cautions;
use super::{BlockFaces, Factor, Factors, lesser};
use crate::error::{Allowed, Error, out_of_range};
use crate::material::BoltStrength;
use crate::source::Method;
use crate::strength::interaction::Form;
use crate::strength::ply::BlockShear;
use crate::strength::section::{Base, StressOf};
use crate::tables::methods;
use crate::units::{Length, Stress, megapascals, millimetres};

/// 9.3.2.3: the ellipse, without a place for bending.
pub(in crate::strength) const INTERACTION: Form = Form::ELLIPSE;

/// phi = 0.80.
pub(in crate::strength) const FACTORS: Factors = Factors::nominal(Some(0.80), None);

/// What is cited for long joints, grips and packing.
pub(in crate::strength) const REDUCTIONS: [Option<&Method>; 3] = [
    Some(methods::AS_4100_TABLE_9_3_2_1),
    None,
    Some(methods::AS_4100_9_3_2_5),
];

/// Bolts that the edition of 2020 lowers where their thread is in the plane: it says so of grade 10.9, and no stronger one is
/// more ductile. That of 1998 does not have the grade.
const BRITTLE: Stress = megapascals(1000.0);

/// 9.3.2.1, with krd 0.83 of 2020.
pub(in crate::strength) fn shear(strength: &BoltStrength, in_shank: bool) -> StressOf {
    let base = Base::tensile("fuf", strength);
    if in_shank || strength.tensile_strength < BRITTLE {
        StressOf::share(0.62, base, "0.62 * fuf")
    } else {
        StressOf::share(0.62 * 0.83, base, "0.62 * 0.83 * fuf")
    }
}

/// 9.3.2.2: on the tensile stress area.
pub(in crate::strength) fn tension(strength: &BoltStrength) -> StressOf {
    StressOf::share(1.0, Base::tensile("fuf", strength), "fuf")
}

/// Table 9.3.2.1.
pub(in crate::strength) fn long_joint(length: Length) -> Factor {
    if length > millimetres(300.0) {
        Factor::by(
            "max(1.075 - L / (4000 * mm), 0.75)",
            (1.075 - (length / millimetres(4000.0)).value).max(0.75),
        )
    } else {
        Factor::ONE
    }
}

/// 9.3.2.5: 0.85 in 1998, a line in 2020 that falls below it over 15.7 mm; the lesser of the two.
pub(in crate::strength) fn packing(packing: Length) -> Result<Factor, Error> {
    let most = millimetres(20.0);
    if packing > most {
        let allowed = Allowed::AtMost(most.into());
        return Err(out_of_range("packing for AS 4100", packing, allowed));
    }
    Ok(if packing > millimetres(6.0) {
        let line = 1.0 - 0.0154 * ((packing / millimetres(1.0)).value - 6.0);
        Factor::by("min(0.85, 1 - 0.0154 * (t / mm - 6))", line.min(0.85))
    } else {
        Factor::ONE
    })
}

/// phi = 0.90 of plies, in bearing and in tension.
pub(in crate::strength) const PLY_FACTOR: f64 = 0.90;

/// 9.1.9 (amendment of 2012): kbs 1 where the tension is uniform, else 0.5.
pub(in crate::strength) fn block(block: &BlockShear, uniform: bool) -> BlockFaces {
    let ruptures = 0.6 * block.tensile_strength * block.net_shear;
    let yields = 0.6 * block.yield_strength * block.gross_shear;
    let kbs = if uniform { 1.0 } else { 0.5 };
    BlockFaces {
        shear: lesser(ruptures, yields),
        shear_formula: "min(0.6 * Fu * Anv, 0.6 * Fy * Agv)",
        tension: kbs * block.tensile_strength * block.net_tension,
        tension_formula: "k * Fu * Ant",
        factor: kbs,
        factors: Factors::nominal(Some(0.75), None),
    }
}
