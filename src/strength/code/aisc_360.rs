//! AISC 360, J3 and J5: bolts in shear and tension, and both; against slip.

pub(in crate::strength) mod distances;
pub(in crate::strength) mod ply;
pub(crate) mod pretension;
pub(in crate::strength) mod slip;

use super::{BlockFaces, Factor, Factors, lesser, plane};
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range};
use crate::material::{AstmGrade, BoltGrade, BoltStrength};
use crate::source::Method;
use crate::strength::interaction::Form;
use crate::strength::ply::BlockShear;
use crate::strength::section::{Base, StressOf};
use crate::strength::shear::AiscEdition;
use crate::tables::methods;
use crate::tables::strengths::{
    DesignStress, StressBolts, StressCode, StressPlane, StressQuantity,
};
use crate::units::{Length, inches};

/// J3.7 (J3.8 in 2022): F'nt = 1.3 Fnt - (Fnt / (phi Fnv)) frv, at most Fnt.
pub(in crate::strength) const INTERACTION: Form = Form::Corner {
    sum: 1.3,
    tension: 1.0,
};

/// Where something breaks, of bolts (J3), plates (D2, J4) and pins (D5): phi and Omega.
pub(in crate::strength) const RUPTURE: (f64, f64) = (0.75, 2.00);
/// Where a section yields in tension (D2, D5).
pub(in crate::strength) const YIELDING: (f64, f64) = (0.90, 1.67);

pub(in crate::strength) const FACTORS: Factors = Factors::nominal(Some(RUPTURE.0), Some(RUPTURE.1));

/// What is cited for long joints, grips and packing.
pub(in crate::strength) const REDUCTIONS: [Option<&Method>; 3] = [
    Some(methods::AISC_360_TABLE_J3_2_END_LOADED_JOINTS),
    Some(methods::AISC_360_TABLE_J3_2_A307_BOLTS),
    Some(methods::AISC_360_J5_FILLERS),
];

const fn code(edition: AiscEdition) -> StressCode {
    match edition {
        AiscEdition::E2005 => StressCode::Aisc360_05,
        AiscEdition::E2010 => StressCode::Aisc360_10,
        AiscEdition::E2016 => StressCode::Aisc360_16,
        AiscEdition::E2022 => StressCode::Aisc360_22,
    }
}

/// The row of Table J3.2 that a grade belongs to: A307, A325 and A490 bolts with their twist-off kinds have rows of their
/// own; all other material is that of threaded parts.
fn bolts(grade: BoltGrade) -> StressBolts {
    match grade {
        grade if is_a307(grade) => StressBolts::A307,
        grade if grade.is_a325() => StressBolts::A325,
        grade if grade.is_a490() => StressBolts::A490,
        _ => StressBolts::ThreadedParts,
    }
}

/// Stress of Table J3.2; of threaded parts a share of the tensile strength, which `formula` writes. A354 BC is stronger than
/// the group that 2010 and later editions put it in, and gets no more than the group.
fn stress(
    edition: AiscEdition,
    strength: &BoltStrength,
    quantity: StressQuantity,
    plane: Option<StressPlane>,
    formula: impl Fn(f64) -> &'static str,
) -> Result<StressOf, Error> {
    let of = |bolts| {
        let row = DesignStress::get(code(edition), bolts, quantity, plane)?;
        match (row.stress, row.share_of_tensile) {
            (Some(stress), _) => Some(StressOf::table(stress)),
            (None, Some(share)) => {
                let base = Base::tensile("Fu", strength);
                Some(StressOf::share(share, base, formula(share)))
            }
            (None, None) => None,
        }
    };
    let grade = strength.grade;
    let own = of(bolts(grade)).ok_or_else(|| {
        super::not_listed(
            "nominal stress",
            grade,
            "AISC 360 Table J3.2 has no such row",
        )
    })?;
    if edition == AiscEdition::E2005 || grade != BoltGrade::Astm(AstmGrade::A354Bc) {
        return Ok(own);
    }
    let group = of(StressBolts::A325).filter(|group| group.stress < own.stress);
    Ok(group.unwrap_or(own))
}

/// Nominal shear stress Fnv on the area of the shank, in both zones: threads lower the stress.
pub(in crate::strength) fn shear(
    edition: AiscEdition,
    strength: &BoltStrength,
    in_shank: bool,
) -> Result<StressOf, Error> {
    let quantity = StressQuantity::ShearNominal;
    let formula = |share: f64| match (share > 0.5, in_shank) {
        (true, _) => "0.563 * Fu",
        (false, true) => "0.50 * Fu",
        (false, false) if share > 0.42 => "0.450 * Fu",
        (false, false) => "0.40 * Fu",
    };
    stress(edition, strength, quantity, Some(plane(in_shank)), formula)
}

/// Nominal tensile stress Fnt on the area of the shank.
pub(in crate::strength) fn tension(
    edition: AiscEdition,
    strength: &BoltStrength,
) -> Result<StressOf, Error> {
    let quantity = StressQuantity::TensionNominal;
    stress(edition, strength, quantity, None, |_| "0.75 * Fu")
}

pub(in crate::strength) fn is_a307(grade: BoltGrade) -> bool {
    matches!(grade, BoltGrade::Astm(AstmGrade::A307A | AstmGrade::A307B))
}

/// End-loaded joints: 0.8 over 50 in (2005), 0.833 over 38 in.
pub(in crate::strength) fn long_joint(edition: AiscEdition, length: Length) -> Factor {
    match edition {
        AiscEdition::E2005 if length > inches(50.0) => Factor::printed(0.8),
        AiscEdition::E2010 | AiscEdition::E2016 | AiscEdition::E2022 if length > inches(38.0) => {
            Factor::printed(0.833)
        }
        _ => Factor::ONE,
    }
}

/// 1 % less for each 1/16 in of grip over 5 d: Table J3.2, A307 bolts, in shear and in tension.
pub(in crate::strength) fn grip_of_a307(grip: Length, d: Length) -> Result<Factor, Error> {
    let short = 5.0 * d;
    if grip <= short {
        return Ok(Factor::ONE);
    }
    let sixteenths = ((grip - short) / inches(1.0 / 16.0)).value;
    let factor = 1.0 - 0.01 * sixteenths;
    if factor > 0.0 {
        return Ok(Factor::by("1 - 0.01 * (G - 5 * d) / (in / 16)", factor));
    }
    let allowed = Allowed::Below((short + inches(100.0 / 16.0)).into());
    Err(out_of_range("grip of an A307 bolt", grip, allowed))
}

/// J5.2, fillers that are not fastened beyond the joint.
pub(in crate::strength) fn fillers(edition: AiscEdition, packing: Length) -> Result<Factor, Error> {
    if packing <= inches(0.25) {
        return Ok(Factor::ONE);
    }
    let factor = 1.0 - 0.4 * ((packing - inches(0.25)) / inches(1.0)).value;
    if edition != AiscEdition::E2005 {
        Ok(Factor::by(
            "max(1 - 0.4 * (t / in - 0.25), 0.85)",
            factor.max(0.85),
        ))
    } else if packing <= inches(0.75) {
        Ok(Factor::by("1 - 0.4 * (t / in - 0.25)", factor))
    } else {
        let allowed = Allowed::AtMost(inches(0.75).into());
        Err(out_of_range("fillers for AISC 360-05", packing, allowed))
    }
}

/// What the user must be told: of bolts that J3.2 is not written for, and of editions that nobody has read.
pub(in crate::strength) fn cautions(edition: AiscEdition, grade: BoltGrade) -> Cautions {
    let by_analogy = match grade {
        BoltGrade::Stated => false, // the caller has been told already
        BoltGrade::Sae(_) | BoltGrade::Iso(_) | BoltGrade::Stainless(_) => true,
        BoltGrade::Astm(grade) => matches!(grade.standard(), "A574" | "F593"),
    };
    let analogy = by_analogy.then_some(Caution::MaterialOutsideMethod {
        method: methods::AISC_360_TABLE_J3_2,
        written_for: "ASTM structural bolts and threaded parts",
    });
    let table = match edition {
        AiscEdition::E2005 | AiscEdition::E2010 => methods::AISC_360_TABLE_J3_2,
        AiscEdition::E2016 => methods::AISC_360_16_TABLE_J3_2,
        AiscEdition::E2022 => methods::AISC_360_22_TABLE_J3_2,
    };
    Cautions::default()
        .with(analogy)
        .with(Caution::of_method(table))
}

/// J4.3 (Ubs 1 where the tension is uniform, else 0.5), from 2005 on.
pub(in crate::strength) fn block(block: &BlockShear, uniform: bool) -> BlockFaces {
    let net_rupture = 0.6 * block.tensile_strength * block.net_shear;
    let gross_yield = 0.6 * block.yield_strength * block.gross_shear;
    let ubs = if uniform { 1.0 } else { 0.5 };
    BlockFaces {
        shear: lesser(net_rupture, gross_yield),
        shear_formula: "min(0.6 * Fu * Anv, 0.6 * Fy * Agv)",
        tension: ubs * block.tensile_strength * block.net_tension,
        tension_formula: "k * Fu * Ant",
        factor: ubs,
        factors: FACTORS,
    }
}

/// J4.3 of the LRFD specification of 1999: the larger term of rupture decides; together at most rupture of both faces, and of
/// the two terms one is at rupture already.
pub(in crate::strength) fn block_of_1999(block: &BlockShear) -> BlockFaces {
    let net_rupture = 0.6 * block.tensile_strength * block.net_shear;
    let gross_yield = 0.6 * block.yield_strength * block.gross_shear;
    let net_tension = block.tensile_strength * block.net_tension;
    let (shear, shear_formula, tension, tension_formula) = if net_tension >= net_rupture {
        (
            lesser(gross_yield, net_rupture),
            "min(0.6 * Fy * Agv, 0.6 * Fu * Anv)",
            net_tension,
            "k * Fu * Ant",
        )
    } else {
        (
            net_rupture,
            "0.6 * Fu * Anv",
            lesser(block.yield_strength * block.gross_tension, net_tension),
            "min(k * Fy * Agt, k * Fu * Ant)",
        )
    };
    BlockFaces {
        shear,
        shear_formula,
        tension,
        tension_formula,
        factor: 1.0,
        factors: Factors::nominal(Some(RUPTURE.0), None),
    }
}
