//! How the bolt is tightened: the preload that gives, what is lost of it, and whether the bolt bears it.

use alloc::boxed::Box;
use alloc::string::ToString;
use alloc::vec::Vec;

use super::springs::Springs;
use super::tension::proof_unsaid;
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::Error;
use crate::joint::TappedPart;
use crate::joint::whole::case::{Case, CaseNut, NutOf};
use crate::joint::whole::material::CaseMaterial;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{
    Finding, JointPreload, Need, NotConcerned, Repeats, Slip, Tightening, TorqueTightening,
};
use crate::material::{BoltGrade, PropertyClass};
use crate::parts::{Locking, NutStyle, ScrewProduct};
use crate::preload::{PreloadAim, PreloadLimit, PreloadTarget, ShortForm, TorsionModel};
use crate::source::Method;
use crate::spread::Spread;
use crate::strength::bolt_tension::TensionMethod;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::shear::AiscEdition;
use crate::strength::slip::SlipMethod;
use crate::tables::expansion::Expansion;
use crate::tables::locking::PrevailingTorque;
use crate::tables::methods;
use crate::units::{Force, Length, celsius};

pub(super) fn check(
    case: &Case,
    springs: Option<&Springs>,
    out: &mut Outcomes,
) -> Option<JointPreload> {
    gaps(case, out);
    let torque = match &case.joint.tightening {
        None => {
            // Pressure asks by itself.
            for mode in [Mode::Tightening, Mode::Settling, Mode::Stripping] {
                out.missing(mode, Place::Joint, Need::Tightening);
            }
            out.not_concerned(Mode::Preload, NotConcerned::Snug);
            return None;
        }
        Some(Tightening::Snug) => {
            if pretension_for_tension(case).is_some() {
                out.find(Finding::PretensionWanted);
            }
            for mode in [Mode::Tightening, Mode::Settling, Mode::Preload] {
                out.not_concerned(mode, NotConcerned::Snug);
            }
            return None;
        }
        Some(Tightening::Torque(torque)) => torque,
    };
    proof_unsaid(case, Mode::Tightening, out);
    match worked(case, torque, springs, out) {
        Ok(preload) => Some(preload),
        Err(error) => {
            // No preload is known, so that nothing can be said of what counts on it.
            for mode in [
                Mode::Tightening,
                Mode::Preload,
                Mode::Settling,
                Mode::Stripping,
                Mode::Pressure,
            ] {
                out.missing(mode, Place::Joint, Need::Refused(error.clone().into()));
            }
            None
        }
    }
}

fn worked(
    case: &Case,
    torque: &TorqueTightening,
    springs: Option<&Springs>,
    out: &mut Outcomes,
) -> Result<JointPreload, Error> {
    let aim = torque.target.aim(case.thread, &case.strength)?;
    out.warn(&aim.cautions());
    let k = torque.nut_factor;
    if k.max() - k.min() < 0.05 * k.nominal() {
        out.warn(&Cautions::default().with(Some(Caution::AgainstAdvice {
            method: methods::SHIGLEY_9TH_ED_8_8,
            advice: "a scatter of the preload of 25 % or so for a torque wrench, and a nut factor with that range",
        })));
    }
    let mut form = ShortForm::new(torque.nut_factor, case.diameter)?;
    if let Some(prevailing) = torque.prevailing {
        form = form.with_prevailing(prevailing)?;
    } else if case
        .nut()
        .is_some_and(|nut| matches!(nut.locking, Locking::Insert | Locking::AllMetal))
        || case.tapped().is_some_and(TappedPart::drags)
    {
        out.find(Finding::AddRunningTorque);
    }
    // A pretension that a code requires is a least: the torque is the one that reaches it with the greatest
    // friction.
    let on_wrench = match aim.least_required {
        Some(least) => form.torque(least)?.max,
        None => form.torque(aim.preload)?.nominal,
    };
    let preload = form.preload(on_wrench)?;
    let lost = lost(case, torque, springs, out)?;
    let left = (1.0 - lost.share) * preload.min - lost.settling + lost.thermal[0];
    let worked = JointPreload {
        torque: on_wrench,
        prevailing: torque.prevailing,
        preload,
        limit: aim.limit,
        settling_loss: lost.settling,
        thermal: lost.thermal,
        in_service: left.max(Force::default()),
        greatest: preload.max + lost.thermal[1],
        springs: springs.map(|springs| springs.elastic),
    };
    bolt_bears_it(case, &form, &worked, out);
    least_reached(case, torque, &worked, out);
    if out.works() {
        let working = form.derivation(on_wrench)?;
        out.work(|| aim.derivation());
        out.work(|| torque_steps(&worked, &form, &aim, lost.share));
        out.work(|| working);
    }
    Ok(worked)
}

/// Whether the bolt bears its greatest preload: by the limit of the target's own code, or before it breaks where there is none; and
/// where the limit is proof or yield also with the torsion of the thread.
fn bolt_bears_it(case: &Case, form: &ShortForm, worked: &JointPreload, out: &mut Outcomes) {
    const MODE: Mode = Mode::Tightening;
    out.in_order(MODE);
    let Some(limit) = worked.limit.load() else {
        breaks_it(case, worked, out);
        return;
    };
    let method = match worked.limit {
        PreloadLimit::Proof { .. } => methods::GREATEST_PRELOAD_PROOF,
        PreloadLimit::Yield { .. } => methods::GREATEST_PRELOAD_YIELD,
        _ => methods::GREATEST_PRELOAD_CODE,
    };
    // Heat comes on top of what the wrench leaves.
    let check = Check::new(
        MODE,
        Place::Joint,
        worked.greatest,
        limit,
        Level::Nominal,
        method,
    );
    out.try_check(MODE, Place::Joint, check);
    if !matches!(
        worked.limit,
        PreloadLimit::Proof { .. } | PreloadLimit::Yield { .. }
    ) {
        return;
    }
    let place = Place::Bolt(1);
    let Some(yield_strength) = case.strength.yield_strength else {
        out.missing(MODE, place, Need::Method("the grade has no yield strength"));
        return;
    };
    // The smaller the bearing face, the more of the torque goes into the thread.
    let bearing = super::seat::bearing_diameter(case);
    let Some(form) = out.attempt(MODE, Place::Nut, with_running_torque(case, form)) else {
        return;
    };
    let stress = form.tightening_stress(
        case.thread,
        bearing,
        worked.preload.max,
        yield_strength,
        TorsionModel::Vdi2230,
    );
    let Some(stress) = out.attempt(MODE, place, stress) else {
        return;
    };
    out.work(|| stress.derivation());
    let check = Check::new(
        MODE,
        place,
        stress.equivalent(),
        yield_strength,
        Level::Nominal,
        methods::TIGHTENING_TORSION,
    );
    let check = check.map(|check| check.warned(stress.cautions()));
    out.try_check(MODE, place, check);
}

/// A code without a greatest preload leaves nothing to compare, until tightening breaks the bolt.
fn breaks_it(case: &Case, worked: &JointPreload, out: &mut Outcomes) {
    const MODE: Mode = Mode::Tightening;
    let place = Place::Bolt(1);
    let Some(loads) = out.attempt(MODE, place, case.strength.loads(case.thread)) else {
        return;
    };
    if worked.greatest <= loads.tensile {
        return;
    }
    let check = Check::new(
        MODE,
        place,
        worked.greatest,
        loads.tensile,
        Level::Nominal,
        methods::GREATEST_PRELOAD_TENSILE,
    );
    out.try_check(MODE, place, check);
}

/// The form with the running torque of the lock nut, which twists the bolt as well: if nobody says it, the greatest
/// that its standard lets a new one have.
fn with_running_torque(case: &Case, form: &ShortForm) -> Result<ShortForm, Error> {
    let lock = case
        .nut()
        .filter(|nut| matches!(nut.locking, Locking::Insert | Locking::AllMetal));
    let unsaid = case
        .torque()
        .is_some_and(|torque| torque.prevailing.is_none());
    let Some(nut) = lock.filter(|_| unsaid) else {
        return Ok(*form);
    };
    if let NutOf::Own(own) = nut.of {
        return Err(Error::NoValue {
            quantity: "running torque",
            subject: own.name.clone(),
            reason: "it is a lock nut of one's own, and the tightening does not state it",
        });
    }
    // The tables go by the number of a metric class, "8" of "ISO 898-2 class 8".
    let grade = nut.grade.map(|grade| grade.to_string());
    let class = grade
        .as_deref()
        .filter(|_| !case.thread.is_unified())
        .and_then(|grade| grade.rsplit(' ').next());
    let range = PrevailingTorque::range(case.thread, nut.locking, class)?;
    form.with_prevailing(Spread::exact(range.max))
}

/// The edition of AISC 360 that wants a bolt pretensioned for the pull on it, J3.1: A490 always, A325 where vibration or
/// fatigue counts.
fn pretension_for_tension(case: &Case) -> Option<AiscEdition> {
    let TensionMethod::Aisc360 { edition } = case.joint.methods.tension else {
        return None;
    };
    let load = &case.joint.load;
    let repeats = match load.repeats {
        Repeats::Between { along_least, .. } => along_least < load.along,
        Repeats::Never => false,
    };
    let grade = case.strength.grade;
    let shaken = repeats || case.joint.environment.vibration;
    let wanted = grade.is_a490() || grade.is_a325() && shaken;
    (case.is_pulled() && wanted).then_some(edition)
}

/// Whether the least preload reaches what its code counts on.
fn least_reached(
    case: &Case,
    torque: &TorqueTightening,
    worked: &JointPreload,
    out: &mut Outcomes,
) {
    const MODE: Mode = Mode::Preload;
    let by_en = matches!(
        torque.target,
        PreloadTarget::En1993 | PreloadTarget::En1993German
    ) || matches!(
        case.joint.methods.slip,
        Slip::Resisted(SlipMethod::En1993 { .. })
    );
    let style = case.nut().and_then(CaseNut::style);
    let is_set = match (case.joint.bolt.product, style) {
        (ScrewProduct::En14399_3, Some(NutStyle::En14399_3)) => true,
        (ScrewProduct::En14399_4, Some(NutStyle::En14399_4)) => {
            case.strength.grade == BoltGrade::Iso(PropertyClass::Class10_9)
        }
        _ => false,
    };
    if by_en && !is_set {
        let why = "EN 1993-1-8 3.1.2 preloads sets to EN 14399 only: bolt and nut of one part, HV of class 10.9";
        out.missing(MODE, Place::Bolt(1), Need::Method(why));
    }
    if let Slip::Resisted(method) = case.joint.methods.slip {
        let written_for = match method {
            SlipMethod::Is800 { .. } => Some("friction grip bolts to IS 3757"),
            SlipMethod::Bs5950 { .. } => Some("friction grip bolts to BS 4395"),
            SlipMethod::As4100 { .. } => Some("structural bolts to AS/NZS 1252"),
            _ => None,
        };
        if let Some(written_for) = written_for.filter(|_| is_set) {
            let method = method.method();
            out.warn(
                &Cautions::default().with(Some(Caution::MaterialOutsideMethod {
                    method,
                    written_for,
                })),
            );
        } else if written_for.is_some() {
            let why = "the code has structural bolts of its own against slip, IS 3757, BS 4395 or AS/NZS 1252: none but a set for \
                       preloading, as to EN 14399, comes near to them";
            out.missing(MODE, Place::Bolt(1), Need::Method(why));
        }
    }
    let required = match case.joint.methods.slip {
        Slip::Resisted(SlipMethod::Aisc360 { edition, .. }) => {
            Some(PreloadTarget::AiscJ31 { edition })
        }
        Slip::Resisted(SlipMethod::Is800 { .. }) => Some(PreloadTarget::Is800),
        Slip::Resisted(SlipMethod::Bs5950 { .. }) => Some(PreloadTarget::Bs4604),
        Slip::Resisted(SlipMethod::As4100 { .. }) => Some(PreloadTarget::As4100),
        _ => pretension_for_tension(case).map(|edition| PreloadTarget::AiscJ31 { edition }),
    };
    let Some(required) = required else {
        out.not_concerned(MODE, NotConcerned::NoRule);
        return;
    };
    out.warn(&against_torque(required));
    if torque.target == required {
        // The torque is the one that reaches it.
        out.in_order(MODE);
        return;
    }
    let Some(aim) = out.attempt(
        MODE,
        Place::Joint,
        required.aim(case.thread, &case.strength),
    ) else {
        return;
    };
    let check = Check::new(
        MODE,
        Place::Joint,
        aim.least_required.unwrap_or(aim.preload),
        worked.preload.min,
        Level::Nominal,
        required.rule(),
    );
    let check = check.map(|check| check.warned(aim.cautions()));
    out.try_check(MODE, Place::Joint, check);
}

/// What a code has against a torque that was worked out, where its least tension is to be reached; and that it was recalled.
fn against_torque(required: PreloadTarget) -> Cautions {
    let by_turn = "part turn from snug, or a device that indicates the tension, for the code does not tighten by torque";
    let advice = match required {
        PreloadTarget::AiscJ31 { .. } => Some(Caution::AgainstAdvice {
            method: methods::RCSC_2014_SECTIONS_7_AND_8_2_RECALLED,
            advice: "a torque found by the pre-installation test of every lot, none from a table or a formula",
        }),
        PreloadTarget::Is800 => Some(Caution::AgainstAdvice {
            method: methods::IS_4000_1992_TIGHTENING,
            advice: by_turn,
        }),
        PreloadTarget::As4100 => Some(Caution::AgainstAdvice {
            method: methods::AS_4100_15_2_5_TIGHTENING,
            advice: by_turn,
        }),
        _ => None,
    };
    Cautions::default()
        .with(advice)
        .with(Caution::of_method(required.rule()))
}

/// What is taken off a preload.
struct Lost {
    /// Relaxation.
    share: f64,
    settling: Force,
    /// The least and the greatest change with the temperature.
    thermal: [Force; 2],
}

fn lost(
    case: &Case,
    torque: &TorqueTightening,
    springs: Option<&Springs>,
    out: &mut Outcomes,
) -> Result<Lost, Error> {
    const MODE: Mode = Mode::Settling;
    let none = Force::default();
    let mut lost = Lost {
        share: 0.0,
        settling: none,
        thermal: [none; 2],
    };
    if let Some(relaxation) = torque.relaxation {
        lost.share = relaxation.value;
    } else if torque.settling.is_none() {
        out.missing(MODE, Place::Joint, Need::Relaxation);
    }
    if let Some(settling) = torque.settling {
        if let Some(springs) = springs {
            lost.settling = springs.elastic.embedment_loss(settling)?;
        } else {
            out.missing(MODE, Place::Joint, Need::Stiffness);
        }
    }
    let crushed = case.joint.stack.plies().iter();
    let mut soft = crushed.map(|ply| ply.crush > Length::default());
    if soft.any(|soft| soft) || case.has_timber() {
        let why = "soft plies and timber creep: measure it, and tighten again after some time";
        out.missing(MODE, Place::Joint, Need::Method(why));
    }
    thermal(case, springs, &mut lost, out)?;
    out.in_order(MODE);
    Ok(lost)
}

/// What heat and cold add and take, where the joint is warmer or colder than it was assembled.
fn thermal(
    case: &Case,
    springs: Option<&Springs>,
    lost: &mut Lost,
    out: &mut Outcomes,
) -> Result<(), Error> {
    let environment = &case.joint.environment;
    if environment.is_at_room_temperature() {
        return Ok(());
    }
    let Some(springs) = springs else {
        unknown(case, Place::Joint, &Need::Stiffness, out);
        return Ok(());
    };
    let bolt = match &case.joint.own.strength {
        Some(own) => own.expansion.ok_or(Need::Expansion),
        None => Expansion::of_bolt(case.strength.grade)
            .map(|row| {
                out.warn(&row.cautions());
                row.expansion
            })
            .map_err(|error| Need::Refused(Box::new(error))),
    };
    let mut layers = Vec::with_capacity(case.plies.len());
    let mut all = true;
    for own in case.plies.iter().filter(|own| own.tapped.is_none()) {
        let Some(ply) = own.ply else { continue };
        let expansion = own.material.ok_or(Need::Material);
        match expansion.and_then(CaseMaterial::expansion) {
            Ok(expansion) => layers.push((ply.thickness.nominal, expansion)),
            Err(need) => {
                all = false;
                unknown(case, own.place, &need, out);
            }
        }
    }
    let bolt = match bolt {
        Ok(bolt) if all => bolt,
        Ok(_) => return Ok(()),
        Err(need) => {
            unknown(case, Place::Bolt(1), &need, out);
            return Ok(());
        }
    };
    let range = springs.elastic.thermal_range(
        bolt,
        &layers,
        celsius(20.0),
        environment.coldest,
        environment.hottest,
    )?;
    out.work(|| range.derivation());
    lost.thermal = [range.least(), range.greatest()];
    Ok(())
}

/// Without what heat does to it, nobody knows the greatest preload either: what stretches the bolt is open too, also
/// where the verdict speaks of the bolt alone.
fn unknown(case: &Case, place: Place, need: &Need, out: &mut Outcomes) {
    out.missing(Mode::Settling, place, need.clone());
    out.missing(Mode::Tightening, place, need.clone());
    if case.is_pulled() {
        out.missing(Mode::BoltTension, place, need.clone());
    }
}

/// Gaps that a preload has to pull together first, because no sleeve keeps them open.
fn gaps(case: &Case, out: &mut Outcomes) {
    if case.torque().is_none() {
        return;
    }
    for gap in case.joint.stack.open_gaps() {
        out.find(Finding::GapUnderPreload {
            after_ply: gap.after_ply,
            width: gap.width.max,
        });
    }
}

const TORQUE: &Method = methods::SHIGLEY_9TH_ED_EQ_8_27_FAA_AC_43_13_1B_7_40_FOR_TP;

/// Torque and what is left of the preload, step by step.
fn torque_steps(
    preload: &JointPreload,
    form: &ShortForm,
    aim: &PreloadAim,
    relaxation: f64,
) -> Derivation {
    Derivation::new("Tightening torque")
        .step(match aim.least_required {
            Some(least) => Step::new(
                "torque on the wrench, that reaches the least",
                "T",
                "K * F * d + Tp",
                preload.torque,
            )
            .with("K", form.nut_factor().max())
            .with("F", least)
            .with("d", form.nominal_diameter())
            .with("Tp", form.prevailing_torque().max)
            .source(TORQUE),
            None => Step::new(
                "torque on the wrench",
                "T",
                "K * F * d + Tp",
                preload.torque,
            )
            .with("K", form.nut_factor().nominal())
            .with("F", aim.preload)
            .with("d", form.nominal_diameter())
            .with("Tp", form.prevailing_torque().nominal)
            .source(TORQUE),
        })
        .step(
            Step::new(
                "least preload in service",
                "Fs",
                "max((1 - r) * Fmin - Fz + Ft, 0 * Fz)",
                preload.in_service,
            )
            .with("r", relaxation)
            .with("Fmin", preload.preload.min)
            .with("Fz", preload.settling_loss)
            .with("Ft", preload.thermal[0]),
        )
}
