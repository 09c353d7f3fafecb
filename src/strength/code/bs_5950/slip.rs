//! BS 5950-1:2000, 6.4: preloaded bolts in joints that must not slip. Its slip resistance is a design resistance.

use crate::error::Error;
use crate::material::{BoltGrade, BoltStrength, PropertyClass};
use crate::source::Method;
use crate::strength::code::covered;
use crate::strength::slip::{
    Numbers, SlipClass, SlipFaces, SlipHole, SlipPreload, Symbols, fillers_unread,
};
use crate::tables::methods;
use crate::tables::pretension::Pretension;
use crate::thread::Thread;
use crate::units::Force;

pub(in crate::strength) const COVERED: &str = "BS 5950-1 has friction grip bolts to BS 4395, of which the general grade, class 8.8, is \
                                               held here";

pub(in crate::strength) fn covers(grade: BoltGrade) -> bool {
    grade == BoltGrade::Iso(PropertyClass::Class8_8)
}

/// Po, the least tension of BS 4604.
pub(in crate::strength) fn specified(thread: &Thread) -> Result<Force, Error> {
    Pretension::bs_4604(thread).map(|row| row.pretension)
}

/// What Ks mu Po is multiplied by: against slip in service, or under factored loads. The 1.1 is of bolts that were tightened to Po and
/// beyond: of a preload that is only known to be there at least, friction gives what statics does.
pub(in crate::strength) const fn factor(serviceability: bool, preload: SlipPreload) -> f64 {
    match (serviceability, preload) {
        (true, SlipPreload::Specified(_)) => 1.1,
        (true, SlipPreload::Least(_)) => 1.0,
        (false, _) => 0.9,
    }
}

/// Ks. Long slots along the load are recalled as 0.7 and, of the edition of 1990, as 0.6: the lesser is taken.
pub(in crate::strength) const fn hole_factor(hole: SlipHole) -> f64 {
    match hole {
        SlipHole::Standard => 1.0,
        SlipHole::Oversize
        | SlipHole::ShortSlotAcross
        | SlipHole::ShortSlotAlong
        | SlipHole::LongSlotAcross => 0.85,
        SlipHole::LongSlotAlong => 0.6,
    }
}

/// mu of Table 35.
pub(in crate::strength) fn numbers(
    class: SlipClass,
    serviceability: bool,
    faces: SlipFaces,
    preload: SlipPreload,
) -> Result<Numbers, Error> {
    fillers_unread(faces, "BS 5950-1 6.4")?;
    Ok(Numbers {
        friction: match class {
            SlipClass::A => 0.5,
            SlipClass::B => 0.4,
            SlipClass::C => 0.3,
            SlipClass::D => 0.2,
        },
        mean: 1.0,
        joint: hole_factor(faces.hole),
        resistance: Some(factor(serviceability, preload)),
        safety: None,
    })
}

/// The classes, with the tensions of BS 4604 and the line of 6.4.4.
pub(in crate::strength) const RECALLED: &Method = methods::BS_5950_1_2000_TABLE_35_RECALLED;

/// How 6.4.2 and 6.4.4 write their formulas.
pub(in crate::strength) const fn symbols(
    serviceability: bool,
    preload: SlipPreload,
    own: &'static Method,
) -> Symbols {
    let left = match (serviceability, preload) {
        (true, SlipPreload::Specified(_)) => "1 - T / (1.1 * Po)",
        (true, SlipPreload::Least(_)) => "1 - T / Po",
        (false, _) => "1 - T / (0.9 * Po)",
    };
    Symbols::new(
        ["least tension of the bolt", "Po"],
        RECALLED,
        "Ks",
        left,
        own,
    )
}

/// Po of a bolt of general grade, which its tension is to reach.
pub(crate) fn least_tension(
    thread: &Thread,
    strength: &BoltStrength,
) -> Result<&'static Pretension, Error> {
    let grade = strength.grade;
    covered(covers(grade), "least tension of the bolt", grade, COVERED)?;
    Pretension::bs_4604(thread)
}
