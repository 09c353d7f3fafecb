//! IS 800:2007, 10.3: bolts in shear and tension, and the plies they bear on; 10.4: against slip.

pub(in crate::strength) mod distances;
pub(in crate::strength) mod ply;
pub(crate) mod slip;

pub(in crate::strength) use super::cautions_of_metric as cautions;
use super::{BlockFaces, Factor, Factors, gripped_over_five, not_listed};
use crate::error::{Allowed, Error, out_of_range};
use crate::material::BoltStrength;
use crate::math::sqrt;
use crate::source::Method;
use crate::strength::check::{Level, Mode};
use crate::strength::interaction::Form;
use crate::strength::ply::{BlockShear, HoleKind};
use crate::strength::section::{Base, StressOf};
use crate::tables::methods;
use crate::units::{Length, Stress, millimetres};

/// 10.3.6: the ellipse, without a place for bending.
pub(in crate::strength) const INTERACTION: Form = Form::ELLIPSE;

/// gamma mb = 1.25.
pub(in crate::strength) const FACTORS: Factors = Factors::nominal(Some(0.80), None);

/// What is cited for long joints, grips and packing.
pub(in crate::strength) const REDUCTIONS: [Option<&Method>; 3] = [
    Some(methods::IS_800_2007_10_3_3_1),
    Some(methods::IS_800_2007_10_3_3_2),
    Some(methods::IS_800_2007_10_3_3_3),
];

/// Net area of a thread over shank area, as the design office tables have it.
pub(in crate::strength) const NET_OF_SHANK: f64 = 0.78;

/// The code writes sqrt 3.
const ONE_OVER_SQRT_3: f64 = 0.577_350_269_189_625_8;

/// 10.3.3.
pub(in crate::strength) fn shear(strength: &BoltStrength) -> StressOf {
    let base = Base::tensile("fub", strength);
    StressOf::share(ONE_OVER_SQRT_3, base, "fub / sqrt(3)")
}

/// 10.3.5: 0.9 fub on the tensile stress area.
pub(in crate::strength) fn tension(strength: &BoltStrength) -> StressOf {
    StressOf::share(0.9, Base::tensile("fub", strength), "0.9 * fub")
}

/// 10.3.5: fyb, and the stress of the shank at yield, fyb gamma mb / gamma m0 with 1.25 and 1.10, for the resistance is divided by
/// gamma mb.
pub(in crate::strength) fn yield_of_shank(
    strength: &BoltStrength,
) -> Result<(Stress, Stress), Error> {
    let Some(value) = strength.yield_strength else {
        let reason = "its standard gives no yield strength, which IS 800 10.3.5 asks for";
        return Err(not_listed("yield strength", strength.grade, reason));
    };
    Ok((value, 1.25 / 1.10 * value))
}

/// 10.3.3.1.
pub(in crate::strength) fn long_joint(length: Length, d: Length) -> Factor {
    let in_d = (length / d).value;
    if in_d > 15.0 {
        Factor::by(
            "min(max(1.075 - L / (200 * d), 0.75), 1)",
            (1.075 - in_d / 200.0).clamp(0.75, 1.0),
        )
    } else {
        Factor::ONE
    }
}

/// 10.3.3.2: never above the factor of the long joint.
pub(in crate::strength) fn long_grip(
    grip: Length,
    joint: Length,
    d: Length,
) -> Result<Factor, Error> {
    let most = 8.0 * d;
    if grip > most {
        let allowed = Allowed::AtMost(most.into());
        return Err(out_of_range("grip for IS 800", grip, allowed));
    }
    let (stiff, long) = (gripped_over_five(grip, d), long_joint(joint, d));
    Ok(if stiff.value < 1.0 && long.value < stiff.value {
        long
    } else {
        stiff
    })
}

/// 10.3.3.3.
pub(in crate::strength) fn packing(packing: Length) -> Result<Factor, Error> {
    if packing <= millimetres(6.0) {
        return Ok(Factor::ONE);
    }
    let factor = 1.0 - 0.0125 * (packing / millimetres(1.0)).value;
    if factor <= 0.0 {
        let allowed = Allowed::Below(millimetres(80.0).into());
        return Err(out_of_range("packing for IS 800", packing, allowed));
    }
    Ok(Factor::by("1 - 0.0125 * t / mm", factor))
}

/// 10.3.4: what is taken off in holes other than standard ones; slots along the load have no value.
pub(in crate::strength) const fn hole_factor(hole: HoleKind) -> Option<f64> {
    match hole {
        HoleKind::Standard => Some(1.0),
        HoleKind::Oversize | HoleKind::ShortSlotAcross => Some(0.7),
        HoleKind::LongSlotAcross => Some(0.5),
        HoleKind::ShortSlotAlong | HoleKind::LongSlotAlong => None,
    }
}

/// gamma mb and gamma m1 = 1.25, gamma m0 = 1.10 of the gross section.
pub(in crate::strength) const fn ply_factor(mode: Mode) -> f64 {
    match mode {
        Mode::GrossSection => 1.0 / 1.10,
        _ => 0.80,
    }
}

/// 6.4.1: yield in shear with rupture in tension, or rupture in shear with yield in tension, the lesser.
pub(in crate::strength) fn block(block: &BlockShear) -> BlockFaces {
    let (fy, fu) = (block.yield_strength, block.tensile_strength);
    let root = sqrt(3.0);
    let yields = fy * block.gross_shear / (root * 1.10);
    let tears = 0.9 * fu * block.net_tension / 1.25;
    let shears = 0.9 * fu * block.net_shear / (root * 1.25);
    let stretches = fy * block.gross_tension / 1.10;
    let (shear, shear_formula, tension, tension_formula) = if yields + tears <= shears + stretches {
        (
            yields,
            "Fy * Agv / (sqrt(3) * 1.1)",
            tears,
            "0.9 * Fu * Ant / 1.25",
        )
    } else {
        (
            shears,
            "0.9 * Fu * Anv / (sqrt(3) * 1.25)",
            stretches,
            "Fy * Agt / 1.1",
        )
    };
    BlockFaces {
        shear,
        shear_formula,
        tension,
        tension_formula,
        factor: 1.0,
        factors: Factors::within(Level::Design),
    }
}
