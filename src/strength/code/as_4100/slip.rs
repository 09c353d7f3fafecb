//! AS 4100, 9.3.3: friction-type connections, at the serviceability limit state.

use crate::error::Error;
use crate::material::{BoltGrade, BoltStrength, PropertyClass};
use crate::source::Method;
use crate::strength::code::covered;
use crate::strength::slip::{
    As4100Faces, Numbers, SlipFaces, SlipHole, Symbols, fillers_unread, stated_friction,
};
use crate::tables::methods;
use crate::tables::pretension::Pretension;
use crate::thread::Thread;
use crate::units::Force;

pub(in crate::strength) const COVERED: &str =
    "AS 4100 has friction-type joints of bolts of class 8.8, category 8.8/TF";

pub(in crate::strength) fn covers(grade: BoltGrade) -> bool {
    grade == BoltGrade::Iso(PropertyClass::Class8_8)
}

/// Nti of Table 15.2.5.1.
pub(in crate::strength) fn specified(thread: &Thread) -> Result<Force, Error> {
    Pretension::as_4100(thread).map(|row| row.pretension)
}

/// phi of Table 3.4, in service.
const PHI: f64 = 0.7;

/// One over the tension that takes all: V over phi Vsf and T over phi Nti go along a line.
pub(in crate::strength) const TAKEN_OFF: [f64; 2] = [1.0 / PHI, 1.0 / PHI];

/// kh.
pub(in crate::strength) const fn hole_factor(hole: SlipHole) -> f64 {
    match hole {
        SlipHole::Standard => 1.0,
        SlipHole::Oversize | SlipHole::ShortSlotAcross | SlipHole::ShortSlotAlong => 0.85,
        SlipHole::LongSlotAcross | SlipHole::LongSlotAlong => 0.7,
    }
}

pub(in crate::strength) fn numbers(faces: As4100Faces, under: SlipFaces) -> Result<Numbers, Error> {
    fillers_unread(under, "AS 4100 9.3.3")?;
    let friction = match faces {
        As4100Faces::AsRolled => 0.35,
        As4100Faces::Tested { slip_factor } => stated_friction("slip factor", slip_factor)?,
    };
    Ok(Numbers {
        friction,
        mean: 1.0,
        joint: hole_factor(under.hole),
        resistance: Some(PHI),
        safety: None,
    })
}

/// Holes, tension and Table 15.2.5.1.
pub(in crate::strength) const RECALLED: &Method = methods::AS_4100_9_3_3_RECALLED;

/// How 9.3.3 writes its formulas.
pub(in crate::strength) const fn symbols(own: &'static Method) -> Symbols {
    let left = "1 - T / (0.7 * Nti)";
    Symbols::new(
        ["least tension of the bolt", "Nti"],
        RECALLED,
        "kh",
        left,
        own,
    )
}

/// Nti of a bolt of category 8.8/TF, which its tension is to reach.
pub(crate) fn least_tension(
    thread: &Thread,
    strength: &BoltStrength,
) -> Result<&'static Pretension, Error> {
    let grade = strength.grade;
    covered(covers(grade), "least tension of the bolt", grade, COVERED)?;
    Pretension::as_4100(thread)
}
