//! Failure under loads that come and go.

use super::springs::Springs;
use crate::error::Error;
use crate::joint::whole::case::Case;
use crate::joint::whole::material::CaseMaterial;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{JointPreload, Need, NotConcerned, Repeats, Slip};
use crate::source::Method;
use crate::strength::bolt_tension::TensionMethod;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::shear::ShearMethod;
use crate::tables::methods;
use crate::tension::{
    AiscClamping, AiscFatigue, EnFatigue, EnduranceStrength, FatigueCriterion, FatigueStrengths,
    FatigueStress, GammaMf, JointDiagram, MachineDesignFatigue,
};
use crate::units::Force;

const MODE: Mode = Mode::Fatigue;
const EN: &Method = methods::EN_1993_1_9_2005_TABLE_8_1_PARTIAL_FACTOR_1_35;
/// Cycles that nobody counts are for ever; the curves are level long before.
const FOR_EVER: f64 = 1e9;
/// Where the curves begin: of EN 1993-1-9 in tension and in shear, of AISC 360 Appendix 3. Fewer cycles are held to
/// tire the bolt as many as that.
const EN_TENSION_FROM: f64 = 1e4;
const EN_SHEAR_FROM: f64 = 1e5;
const AISC_FROM: f64 = 20_000.0;

/// EN 1993-1-8: bolts without preload are not for tension that varies often (3.4.2(1)), nor joints that may slip for
/// shear that reverses (2.6(2)).
fn categories(case: &Case, out: &mut Outcomes) {
    let Repeats::Between {
        across_least,
        along_least,
        ..
    } = case.joint.load.repeats
    else {
        return;
    };
    let load = &case.joint.load;
    if case.joint.methods.tension == TensionMethod::En1993
        && case.is_pulled()
        && along_least < load.along
        && case.torque().is_none()
    {
        let why = "EN 1993-1-8 3.4.2 wants preloaded bolts where the tension varies often";
        out.missing(Mode::Preload, Place::Bolt(1), Need::Method(why));
    }
    if case.joint.methods.shear == ShearMethod::En1993
        && across_least < Force::default()
        && case.joint.methods.slip == Slip::Permitted
        && !case.joint.environment.rotates
    {
        let why = "EN 1993-1-8 2.6 wants joints that do not slip where shear reverses, but for wind bracing: ask for slip";
        out.missing(Mode::Slip, Place::Joint, Need::Method(why));
    }
}

pub(super) fn check(
    case: &Case,
    springs: Option<&Springs>,
    preload: Option<&JointPreload>,
    out: &mut Outcomes,
) {
    categories(case, out);
    let Repeats::Between {
        along_least,
        across_least,
        cycles,
    } = case.joint.load.repeats
    else {
        out.not_concerned(MODE, NotConcerned::Steady);
        return;
    };
    let cycles = cycles.unwrap_or(FOR_EVER);
    if across_least < case.joint.load.across {
        across(case, across_least, cycles, out);
    }
    if along_least < case.joint.load.along {
        if case.is_countersunk() {
            let why = "the endurance of bolts is that of their thread, and a countersunk head may tire first";
            out.missing(MODE, Place::Head, Need::Method(why));
        }
        along(case, along_least, cycles, springs, preload, out);
    }
    out.not_concerned(MODE, NotConcerned::Steady);
}

/// The bolt sheared again and again, unless friction keeps the load from it; the plies in any case.
fn across(case: &Case, least: Force, cycles: f64, out: &mut Outcomes) {
    out.missing(
        MODE,
        Place::Joint,
        Need::Method("of the plies at their holes, under a load across that comes and goes: no method is known here"),
    );
    if case.joint.methods.slip != Slip::Permitted {
        return;
    }
    if case.joint.methods.shear != ShearMethod::En1993 {
        out.missing(
            MODE,
            Place::Bolt(1),
            Need::Method(
                "of a bolt sheared again and again: the publisher of the method gives no value",
            ),
        );
        return;
    }
    for plane in case.planes.iter().filter(|plane| plane.share > 0.0) {
        let place = Place::Plane(plane.number);
        let service = case.joint.load.shock_factor * plane.share;
        let forces = (service * least, service * case.joint.load.across);
        let fatigue = EnFatigue::shear(
            case.diameter,
            case.strength.grade,
            plane.zone,
            false,
            forces,
            cycles.max(EN_SHEAR_FROM),
            GammaMf::default(),
        );
        let check = fatigue.and_then(|fatigue| {
            out.work_at(place, || fatigue.derivation());
            let check = Check::new(
                MODE,
                place,
                fatigue.range,
                fatigue.resistance,
                Level::Design,
                EN,
            )?;
            Ok(check.warned(fatigue.cautions()))
        });
        out.try_check(MODE, place, check);
    }
}

fn along(
    case: &Case,
    least: Force,
    cycles: f64,
    springs: Option<&Springs>,
    preload: Option<&JointPreload>,
    out: &mut Outcomes,
) {
    let place = Place::Bolt(1);
    let shock = case.joint.load.shock_factor;
    // A load that presses the plies together takes its share off a preloaded bolt; of one without preload it takes
    // nothing, for there is nothing.
    let least = match preload {
        Some(_) => shock * least,
        None => shock * least.max(Force::default()),
    };
    let greatest = shock * case.joint.load.along;
    if greatest <= least {
        return;
    }
    if let TensionMethod::Aisc360 { .. } = case.joint.methods.tension {
        let check = aisc(case, greatest - least, cycles, preload, out);
        out.try_check(MODE, place, check);
        return;
    }
    let by_en = case.joint.methods.tension == TensionMethod::En1993;
    let check = match (preload, springs) {
        (Some(_), None) => {
            out.missing(MODE, place, Need::Stiffness);
            return;
        }
        (Some(preload), Some(springs)) if by_en => {
            // The least preload leaves the bolt most of the change.
            JointDiagram::new(springs.share, preload.in_service).and_then(|diagram| {
                let range = diagram.under(greatest)?.bolt - diagram.under(least)?.bolt;
                en(case, range, cycles, out)
            })
        }
        (Some(preload), Some(springs)) => goodman(case, least, greatest, springs, preload, out),
        // Without preload the bolt bears the whole change, and the handbook's endurance strengths at zero mean do
        // not hold for it: the curve of EN 1993-1-9 is the safe one.
        (None, _) => en(case, greatest - least, cycles, out),
    };
    out.try_check(MODE, place, check);
}

fn en(case: &Case, range: Force, cycles: f64, out: &mut Outcomes) -> Result<Check, Error> {
    let cycles = cycles.max(EN_TENSION_FROM);
    let fatigue = EnFatigue::tension(case.thread, range, cycles, GammaMf::default())?;
    out.work(|| fatigue.derivation());
    let (range, resistance) = (fatigue.range, fatigue.resistance);
    let check = Check::new(MODE, Place::Bolt(1), range, resistance, Level::Design, EN)?;
    Ok(check.warned(fatigue.cautions()))
}

fn aisc(
    case: &Case,
    range: Force,
    cycles: f64,
    preload: Option<&JointPreload>,
    out: &mut Outcomes,
) -> Result<Check, Error> {
    let tightened = preload.is_some_and(|preload| preload.limit.load().is_none());
    let steel = case
        .plies
        .iter()
        .all(|ply| ply.material.is_some_and(CaseMaterial::is_steel));
    let clamping = if tightened && steel {
        AiscClamping::PretensionedSteel
    } else {
        AiscClamping::Other
    };
    let range = AiscFatigue::assumed_range(range, clamping)?;
    let fatigue = AiscFatigue::tension(case.thread, range, cycles.max(AISC_FROM))?;
    out.work(|| fatigue.derivation());
    let (range, resistance) = (fatigue.range, fatigue.resistance);
    let method = methods::AISC_360_APPENDIX_3_BOLTS_IN_TENSION;
    let place = Place::Bolt(1);
    Check::new(MODE, place, range, resistance, Level::Allowable, method)
}

/// The strengths of a grade, or those that the caller states: without a stated endurance there is none.
fn strengths(case: &Case) -> Result<FatigueStrengths, Error> {
    let stated = case.joint.own.strength.as_ref();
    let endurance = stated.and_then(|own| own.endurance);
    let (Some(endurance), Some(proof)) = (endurance, case.strength.proof_stress) else {
        return FatigueStrengths::of_bolt(&case.strength);
    };
    FatigueStrengths::new(
        EnduranceStrength::stated(endurance)?,
        case.strength.tensile_strength,
        proof,
    )
}

/// By the machine-design system with the Goodman line, at the greatest preload.
fn goodman(
    case: &Case,
    least: Force,
    greatest: Force,
    springs: &Springs,
    preload: &JointPreload,
    out: &mut Outcomes,
) -> Result<Check, Error> {
    let strengths = strengths(case)?;
    let diagram = JointDiagram::new(springs.share, preload.greatest)?;
    let area = case.loads.tensile_stress_area;
    let stress = FatigueStress::of_joint(&diagram, area, least, greatest)?;
    let fatigue = MachineDesignFatigue::new(strengths, stress, FatigueCriterion::Goodman)?;
    out.work(|| fatigue.derivation());
    let check = Check::new(
        MODE,
        Place::Bolt(1),
        case.joint.methods.margin * fatigue.stress.amplitude,
        fatigue.strength_amplitude,
        Level::Nominal,
        methods::GOODMAN,
    )?;
    Ok(check.warned(fatigue.cautions()))
}
