//! Failure under loads that come and go.

use super::springs::Springs;
use crate::error::Error;
use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{JointPreload, Need, NotConcerned, Repeats};
use crate::strength::check::{Check, Level, Mode, Place};
use crate::tension::{
    FatigueCriterion, FatigueStrengths, FatigueStress, JointDiagram, MachineDesignFatigue,
};
use crate::units::Force;

pub(super) fn check(
    case: &Case,
    springs: Option<&Springs>,
    preload: Option<&JointPreload>,
    out: &mut Outcomes,
) {
    const MODE: Mode = Mode::Fatigue;
    let Repeats::Between {
        along_least,
        across_least,
        ..
    } = case.joint.load.repeats
    else {
        out.not_concerned(MODE, NotConcerned::Steady);
        return;
    };
    let place = Place::Bolt(1);
    if across_least < case.joint.load.across {
        out.missing(
            MODE,
            place,
            Need::Method("of a load across the axis that comes and goes: no method is known here"),
        );
    }
    if along_least < case.joint.load.along {
        match (preload, springs) {
            (Some(preload), Some(springs)) => {
                let check = of_diagram(case, along_least, springs, preload, out);
                out.try_check(MODE, place, check);
            }
            (Some(_), None) => out.missing(MODE, place, Need::Stiffness),
            (None, _) => out.missing(MODE, place, Need::ControlledPreload),
        }
    }
    out.in_order(MODE);
}

/// By the machine-design system with the Goodman line, at the greatest preload.
fn of_diagram(
    case: &Case,
    along_least: Force,
    springs: &Springs,
    preload: &JointPreload,
    out: &mut Outcomes,
) -> Result<Check, Error> {
    let strengths = FatigueStrengths::of_bolt(&case.strength)?;
    let diagram = JointDiagram::new(springs.share, preload.greatest)?;
    let shock = case.joint.load.shock_factor;
    let (least, greatest) = (
        shock * along_least.max(Force::default()),
        shock * case.joint.load.along,
    );
    let area = case.loads.tensile_stress_area;
    let stress = FatigueStress::of_joint(&diagram, area, least, greatest)?;
    let fatigue = MachineDesignFatigue::new(strengths, stress, FatigueCriterion::Goodman)?;
    out.work(|| fatigue.derivation());
    let margin = case.margin / shock;
    let check = Check::new(
        Mode::Fatigue,
        Place::Bolt(1),
        margin * fatigue.stress.amplitude,
        fatigue.strength_amplitude,
        Level::Nominal,
    )?;
    Ok(check
        .by("Goodman (Shigley, 9th ed., 8-11), rolled threads")
        .warned(fatigue.cautions()))
}
