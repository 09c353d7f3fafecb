//! How the bolt is tightened: the preload that gives, what is lost of it, and whether the bolt bears it.

use super::springs::Springs;
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{
    Finding, JointPreload, Need, NotConcerned, Tightening, TorqueTightening,
};
use crate::parts::Locking;
use crate::preload::ShortForm;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::units::{Force, Length};

pub(super) fn check(
    case: &Case,
    springs: Option<&Springs>,
    out: &mut Outcomes,
) -> Option<JointPreload> {
    gaps(case, out);
    let torque = match &case.joint.tightening {
        None => {
            out.missing(Mode::Tightening, Place::Joint, Need::Tightening);
            out.missing(Mode::Settling, Place::Joint, Need::Tightening);
            out.not_concerned(Mode::Preload, NotConcerned::Snug);
            return None;
        }
        Some(Tightening::Snug) => {
            for mode in [Mode::Tightening, Mode::Settling, Mode::Preload] {
                out.not_concerned(mode, NotConcerned::Snug);
            }
            return None;
        }
        Some(Tightening::Torque(torque)) => torque,
    };
    let answer = worked(case, torque, springs, out);
    out.attempt(Mode::Tightening, Place::Joint, answer)
}

fn worked(
    case: &Case,
    torque: &TorqueTightening,
    springs: Option<&Springs>,
    out: &mut Outcomes,
) -> Result<JointPreload, Error> {
    let aim = torque.target.of(&case.loads)?;
    let mut form = ShortForm::new(torque.nut_factor, case.diameter)?;
    if let Some(prevailing) = torque.prevailing {
        form = form.with_prevailing(prevailing)?;
    } else if case
        .nut()
        .is_some_and(|nut| matches!(nut.locking, Locking::Insert | Locking::AllMetal))
    {
        out.find(Finding::AddRunningTorque);
    }
    let on_wrench = form.torque(aim)?.nominal;
    let preload = form.preload(on_wrench)?;
    let limit = case.loads.proof.map(|proof| (proof, "proof load"));
    if let Some((limit, _)) = limit {
        let check = Check::new(
            Mode::Tightening,
            Place::Joint,
            preload.max,
            limit,
            Level::Nominal,
        )?;
        out.check(check.by("T = K F d, greatest preload against the proof load"));
    }
    let lost = lost(case, torque, springs, out)?;
    let left = (1.0 - lost.share) * preload.min - lost.settling + lost.thermal[0];
    let preload = JointPreload {
        torque: on_wrench,
        prevailing: torque.prevailing,
        preload,
        limit,
        settling_loss: lost.settling,
        thermal: lost.thermal,
        in_service: left.max(Force::default()),
        greatest: preload.max + lost.thermal[1],
        springs: springs.map(|springs| springs.elastic),
    };
    if out.works() {
        let working = form.derivation(on_wrench)?;
        out.work(|| torque_steps(&preload, &form, aim, lost.share));
        out.work(|| working);
    }
    Ok(preload)
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
        lost.share = not_negative("relaxation", relaxation)?.value;
        if lost.share > 1.0 {
            let allowed = Allowed::AtMost(1.0.into());
            return Err(out_of_range("relaxation", lost.share, allowed));
        }
    } else if torque.settling.is_none() {
        out.missing(MODE, Place::Joint, Need::Relaxation);
    }
    if let Some(settling) = torque.settling {
        not_negative("settling", settling)?;
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
    out.in_order(MODE);
    out.in_order(Mode::Tightening);
    out.not_concerned(Mode::Preload, NotConcerned::NoRule);
    Ok(lost)
}

/// Gaps that a preload has to pull together first, because no sleeve keeps them open.
fn gaps(case: &Case, out: &mut Outcomes) {
    if case.torque().is_none() {
        return;
    }
    let stack = &case.joint.stack;
    for gap in stack.gaps() {
        let inside = |sleeve: &crate::joint::Sleeve| {
            (sleeve.first_ply..sleeve.last_ply).contains(&gap.after_ply)
        };
        if !stack.sleeves().iter().any(inside) {
            out.find(Finding::GapUnderPreload {
                after_ply: gap.after_ply,
                width: gap.width.max,
            });
        }
    }
}

/// Torque and what is left of the preload, step by step.
fn torque_steps(
    preload: &JointPreload,
    form: &ShortForm,
    aim: Force,
    relaxation: f64,
) -> Derivation {
    Derivation::new("Tightening torque")
        .step(
            Step::new(
                "torque on the wrench",
                "T",
                "K * F * d + Tp",
                preload.torque,
            )
            .with("K", form.nut_factor().nominal())
            .with("F", aim)
            .with("d", form.nominal_diameter())
            .with("Tp", form.prevailing_torque().nominal)
            .source("Shigley, 9th ed., Eq. 8-27; FAA AC 43.13-1B, 7-40 for Tp"),
        )
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
