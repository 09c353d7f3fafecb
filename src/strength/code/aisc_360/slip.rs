//! AISC 360, J3.8 (J3.9 in 2022): bolts in slip-critical joints.

use alloc::format;

use crate::error::Error;
use crate::material::BoltGrade;
use crate::source::Method;
use crate::strength::shear::AiscEdition;
use crate::strength::slip::{CLAMP_LEFT, Numbers, SlipClass, SlipFaces, SlipHole, Symbols};
use crate::tables::methods;

/// Mean installed pretension over the least specified one, Du.
const DU: f64 = 1.13;

/// What tension takes from the clamp force, for design loads and for service loads (J3.9, one bolt).
pub(in crate::strength) const TAKEN_OFF: [f64; 2] = [1.0 / DU, 1.5 / DU];

pub(in crate::strength) const COVERED: &str =
    "AISC 360 has slip-critical joints of A325 and A490 bolts and their twist-off kinds";

pub(in crate::strength) const fn covers(grade: BoltGrade) -> bool {
    grade.is_a325() || grade.is_a490()
}

/// Holes in which the edition of 2005 excludes slip at the required strength level, not in service only.
const fn along(hole: SlipHole) -> bool {
    matches!(
        hole,
        SlipHole::Oversize | SlipHole::ShortSlotAlong | SlipHole::LongSlotAlong
    )
}

/// phi and omega from 2010 on.
const fn hole_factors(hole: SlipHole) -> (f64, f64) {
    match hole {
        SlipHole::Standard | SlipHole::ShortSlotAcross => (1.00, 1.50),
        SlipHole::Oversize | SlipHole::ShortSlotAlong => (0.85, 1.76),
        SlipHole::LongSlotAcross | SlipHole::LongSlotAlong => (0.70, 2.14),
    }
}

/// hsc, phi and omega of 2005. Its factor for short slots does not ask for their direction.
const fn hole_factors_of_2005(hole: SlipHole) -> (f64, f64, f64) {
    let hsc = match hole {
        SlipHole::Standard => 1.0,
        SlipHole::Oversize | SlipHole::ShortSlotAcross | SlipHole::ShortSlotAlong => 0.85,
        SlipHole::LongSlotAcross | SlipHole::LongSlotAlong => 0.70,
    };
    let (phi, omega) = if along(hole) {
        (0.85, 1.76)
    } else {
        (1.0, 1.5)
    };
    (hsc, phi, omega)
}

/// What a kind of hole leaves of the design resistance.
pub(in crate::strength) fn hole_share(edition: AiscEdition, hole: SlipHole) -> f64 {
    if edition == AiscEdition::E2005 {
        let (hsc, phi, _) = hole_factors_of_2005(hole);
        hsc * phi
    } else {
        hole_factors(hole).0
    }
}

pub(in crate::strength) fn numbers(
    edition: AiscEdition,
    class: SlipClass,
    faces: SlipFaces,
) -> Result<Numbers, Error> {
    let old = edition == AiscEdition::E2005;
    let friction = match (class, old) {
        (SlipClass::A, true) => 0.35,
        (SlipClass::A, false) => 0.30,
        (SlipClass::B, _) => 0.50,
        (SlipClass::C | SlipClass::D, _) => {
            return Err(Error::NoValue {
                quantity: "slip coefficient",
                subject: format!("{class} faces"),
                reason: "AISC 360 J3.8 has the classes A and B",
            });
        }
    };
    let (joint, phi, omega) = if old {
        hole_factors_of_2005(faces.hole)
    } else {
        let (phi, omega) = hole_factors(faces.hole);
        let fillers = if faces.fillers > 1 { 0.85 } else { 1.0 };
        (fillers, phi, omega)
    };
    Ok(Numbers {
        friction,
        mean: DU,
        joint,
        resistance: Some(phi),
        safety: Some(omega),
    })
}

/// What of it was recalled.
pub(in crate::strength) fn recalled(
    edition: AiscEdition,
    hole: SlipHole,
) -> Option<&'static Method> {
    match edition {
        AiscEdition::E2005 => {
            along(hole).then_some(methods::AISC_360_05_J3_8_FACTORS_FOR_THE_REQUIRED_STRENGTH_LEVEL)
        }
        AiscEdition::E2010 => Some(methods::AISC_360_10_J3_8),
        AiscEdition::E2016 | AiscEdition::E2022 => None,
    }
}

/// How J3.8 writes its formula. Holes and fillers are one factor: h is for the hole in 2005, for fillers from 2010 on.
pub(in crate::strength) const fn symbols(own: &'static Method) -> Symbols {
    Symbols {
        preload: ["specified pretension", "Tb"],
        specified: methods::AISC_360_TABLE_J3_1_SPECIFIED,
        mean: Some("Du"),
        joint: Some(("holes and fillers", "h", own)),
        share: (CLAMP_LEFT, own),
        left: ["1 - T / (1.13 * Tb)", "1 - 1.5 * T / (1.13 * Tb)"],
    }
}
