//! EN 1993-1-8:2005, 3.9: bolts in joints that must not slip.

use crate::material::{BoltGrade, PropertyClass};
use crate::source::Method;
use crate::strength::slip::{Numbers, SlipClass, SlipHole, Symbols};
use crate::tables::methods;

/// What tension takes from the clamp force (3.9.2).
pub(in crate::strength) const TAKEN_OFF: [f64; 2] = [0.8, 0.8];

pub(in crate::strength) const COVERED: &str = "EN 1993-1-8 preloads bolts of classes 8.8 and 10.9";

/// 3.1.2 and 3.9.1.
pub(in crate::strength) fn covers(grade: BoltGrade) -> bool {
    matches!(
        grade,
        BoltGrade::Iso(PropertyClass::Class8_8 | PropertyClass::Class10_9)
    )
}

/// ks of Table 3.6.
pub(in crate::strength) const fn hole_factor(hole: SlipHole) -> f64 {
    match hole {
        SlipHole::Standard => 1.0,
        SlipHole::Oversize | SlipHole::ShortSlotAcross => 0.85,
        SlipHole::LongSlotAcross => 0.7,
        SlipHole::ShortSlotAlong => 0.76,
        SlipHole::LongSlotAlong => 0.63,
    }
}

/// mu of Table 3.7; gamma M3, and gamma M3,ser for serviceability, as recommended.
pub(in crate::strength) fn numbers(
    class: SlipClass,
    serviceability: bool,
    hole: SlipHole,
) -> Numbers {
    Numbers {
        friction: match class {
            SlipClass::A => 0.5,
            SlipClass::B => 0.4,
            SlipClass::C => 0.3,
            SlipClass::D => 0.2,
        },
        mean: 1.0,
        joint: hole_factor(hole),
        resistance: Some(1.0 / if serviceability { 1.1 } else { 1.25 }),
        safety: None,
    }
}

/// What of it was recalled.
pub(in crate::strength) fn recalled(
    class: SlipClass,
    hole: SlipHole,
    tension: bool,
) -> Option<&'static Method> {
    let read = matches!(class, SlipClass::A | SlipClass::B) && hole == SlipHole::Standard;
    (!read || tension).then_some(methods::EN_1993_1_8_3_9_CLASSES_SLOTS_AND_TENSION)
}

/// How 3.9 writes its formula.
pub(in crate::strength) const fn symbols(own: &'static Method) -> Symbols {
    let specified = methods::EN_1993_1_8_2005_3_9_1_SPECIFIED_PRELOAD;
    let left = "1 - 0.8 * T / FpC";
    Symbols {
        joint: Some(("holes", "ks", methods::EN_1993_1_8_2005_TABLE_3_6)),
        ..Symbols::new(["preload", "FpC"], specified, "ks", left, own)
    }
}
