//! IS 800:2007, 10.4: friction grip bolts in joints that must not slip.

use alloc::string::ToString;

use crate::error::Error;
use crate::material::{BoltGrade, BoltStrength, PropertyClass};
use crate::source::Method;
use crate::strength::code::covered;
use crate::strength::slip::{Is800Surface, Numbers, SlipFaces, SlipHole, Symbols, fillers_unread};
use crate::tables::methods;
use crate::thread::Thread;
use crate::units::{Force, SAME_LENGTH, millimetres};

pub(in crate::strength) const COVERED: &str =
    "IS 800 has friction grip bolts to IS 3757, of classes 8.8 and 10.9";

/// IS 3757.
pub(in crate::strength) fn covers(grade: BoltGrade) -> bool {
    matches!(
        grade,
        BoltGrade::Iso(PropertyClass::Class8_8 | PropertyClass::Class10_9)
    )
}

/// F0 = 0.70 fub Anb, of the sizes of IS 3757.
pub(in crate::strength) fn specified(
    thread: &Thread,
    strength: &BoltStrength,
) -> Result<Force, Error> {
    let loads = strength.loads(thread)?;
    let size = thread.nominal_diameter();
    let of_size =
        millimetres(16.0) <= size + SAME_LENGTH && size <= millimetres(36.0) + SAME_LENGTH;
    if !of_size || thread.is_unified() || !thread.is_coarse() {
        return Err(Error::NoValue {
            quantity: "proof load by IS 800 10.4.3",
            subject: thread.to_string(),
            reason: "IS 3757 has bolts of M16 to M36 with coarse thread",
        });
    }
    Ok(0.70 * loads.tensile)
}

/// T over F0 is this much less than T over Tdf of the ellipse of 10.4.6. Tdf = 0.9 fub Anb / 1.25 by 10.4.5, which is 9/7 F0 / 1.25:
/// the yield of the shank, which 10.4.5 has too, never governs classes 8.8 and 10.9. Its factor stays 1.25 in service.
pub(in crate::strength) const TAKEN_OFF: [f64; 2] = [7.0 * 1.25 / 9.0, 7.0 * 1.25 / 9.0];

/// Kh.
pub(in crate::strength) const fn hole_factor(hole: SlipHole) -> f64 {
    match hole {
        SlipHole::Standard => 1.0,
        SlipHole::Oversize
        | SlipHole::ShortSlotAcross
        | SlipHole::ShortSlotAlong
        | SlipHole::LongSlotAcross => 0.85,
        SlipHole::LongSlotAlong => 0.7,
    }
}

/// mu f of Table 20, and gamma mf: 1.10 against slip at service loads, 1.25 at ultimate loads.
pub(in crate::strength) fn numbers(
    surface: Is800Surface,
    serviceability: bool,
    faces: SlipFaces,
) -> Result<Numbers, Error> {
    fillers_unread(faces, "IS 800 10.4")?;
    Ok(Numbers {
        friction: match surface {
            Is800Surface::Untreated => 0.20,
            Is800Surface::CleanMillScale => 0.33,
            Is800Surface::Blasted | Is800Surface::SprayedAluminium => 0.50,
            Is800Surface::SprayedZinc => 0.25,
            Is800Surface::ZincSilicate => 0.30,
            Is800Surface::Galvanized | Is800Surface::RedLead => 0.10,
        },
        mean: 1.0,
        joint: hole_factor(faces.hole),
        resistance: Some(1.0 / if serviceability { 1.10 } else { 1.25 }),
        safety: None,
    })
}

/// What of it was recalled.
pub(in crate::strength) fn recalled(
    surface: Is800Surface,
    serviceability: bool,
) -> Option<&'static Method> {
    let read = surface == Is800Surface::Untreated && !serviceability;
    (!read).then_some(methods::IS_800_2007_10_4_3_SURFACES_AND_SERVICE)
}

/// How 10.4.3 and 10.4.6 write their formulas: T over Tdf = 0.9 fub Anb / 1.25, and F0 = 0.7 fub Anb.
pub(in crate::strength) const fn symbols(own: &'static Method) -> Symbols {
    let left = "sqrt(1 - (1.25 * 7 * T / (9 * F0))^2)";
    let ellipse = methods::IS_800_2007_10_4_6;
    Symbols {
        share: ("share that the tension leaves", ellipse),
        ..Symbols::new(["proof load", "F0"], own, "Kh", left, own)
    }
}

/// F0 of a bolt to IS 3757, which its tension is to reach.
pub(crate) fn least_tension(thread: &Thread, strength: &BoltStrength) -> Result<Force, Error> {
    let grade = strength.grade;
    covered(covers(grade), "least tension of the bolt", grade, COVERED)?;
    specified(thread, strength)
}
