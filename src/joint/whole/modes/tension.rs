//! Tension of the bolt: by the code for the whole load, and as a preloaded joint shares it.

use super::CODE_OF_LISTED;
use super::springs::Springs;
use crate::error::Error;
use crate::joint::whole::case::{Case, NutOf};
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{JointPreload, Need, NotConcerned, Tightening};
use crate::preload::PreloadLimit;
use crate::strength::bolt_tension::{TensionMethod, bolt_tension};
use crate::strength::check::{Check, Level, Mode, Place};
use crate::tables::methods;
use crate::tension::JointDiagram;
use crate::units::Force;

/// What pulls the bolt.
pub(super) struct Tension {
    /// The check by the code, for the whole load along the axis.
    pub(super) code: Option<Check>,
    /// The greatest force in the bolt: its greatest preload with its share of the load along it, or all of that
    /// load where the share is not known. The margin of the methods is in the load.
    pub(super) greatest: Force,
}

pub(super) fn check(
    case: &Case,
    springs: Option<&Springs>,
    preload: Option<&JointPreload>,
    out: &mut Outcomes,
) -> Tension {
    const MODE: Mode = Mode::BoltTension;
    let load = case.margin * case.joint.load.along;
    let Some(greatest) = out.attempt(MODE, Place::Bolt(1), greatest(load, springs, preload)) else {
        return Tension {
            code: None,
            greatest: Force::default(),
        };
    };
    head(case, greatest, out);
    if !case.is_pulled() {
        out.not_concerned(MODE, NotConcerned::NoLoadAlong);
        return Tension {
            code: None,
            greatest,
        };
    }
    let place = Place::Bolt(1);
    let by_tensile = matches!(case.joint.methods.tension, TensionMethod::MilHdbk5 { .. });
    if by_tensile {
        shear_nut(case, out);
    } else {
        proof_unsaid(case, MODE, out);
    }
    if case.joint.methods.tension == TensionMethod::CsaS16 && case.torque().is_none() {
        let why =
            "CSA S16 section 22 says which bolts in tension must be pretensioned, and was not read";
        out.missing(Mode::Preload, place, Need::Method(why));
    }
    let listed_only =
        !by_tensile && !matches!(case.joint.methods.tension, TensionMethod::Proof { .. });
    if case.joint.own.strength.is_some() && listed_only {
        out.missing(MODE, place, Need::Method(CODE_OF_LISTED));
        return Tension {
            code: None,
            greatest,
        };
    }
    let code = bolt_tension(
        case.thread,
        &case.strength,
        case.joint.methods.tension,
        case.joint.stack.head_seat().shape(),
        Some(case.grip()),
    )
    .and_then(|tension| {
        out.work(|| tension.derivation());
        tension.check(case.along, case.level)
    });
    let code = out.attempt(MODE, place, code);
    if let Some(code) = &code {
        out.check(code.clone());
    }
    match (preload, &case.joint.tightening) {
        (Some(preload), _) => with_preload(case, greatest, springs, preload, out),
        (None, Some(Tightening::Snug)) => {}
        // A preload that nobody states may be all that the bolt bears.
        (None, _) => out.missing(MODE, place, Need::Tightening),
    }
    Tension { code, greatest }
}

/// Low nuts, as AN320 and MS20364 are, are for bolts in shear (FAA AC 43.13-1B, 7-67, read); that a low nut takes what pulls the
/// bolt is not shown. One that is no lower is told by its proof load.
fn shear_nut(case: &Case, out: &mut Outcomes) {
    let is_low = match case.nut().map(|nut| nut.of) {
        Some(NutOf::Listed(row)) => row.style.is_thin(),
        Some(NutOf::Own(own)) => own.height.min < 0.8 * case.diameter,
        None => false,
    };
    if is_low {
        let why = "the nut is low, and low nuts are for bolts in shear: take one that is made for tension";
        out.missing(Mode::BoltTension, Place::Nut, Need::Method(why));
    }
}

/// The head of a bolt of the caller's own may shear or tear off before the thread breaks: it is as high as those of the
/// standards, and of a countersunk one the greatest force in the bolt is held against what it is proved to.
fn head(case: &Case, greatest: Force, out: &mut Outcomes) {
    const MODE: Mode = Mode::BoltTension;
    let Some(own) = case.joint.own.screw.as_ref() else {
        return;
    };
    if greatest <= Force::default() {
        return;
    }
    if !case.is_countersunk() {
        match own.has_full_head(case.thread) {
            Some(true) => {}
            Some(false) => {
                let why = "its head is lower than 0.6 diameters: that it bears what the thread bears is not shown";
                out.missing(MODE, Place::Head, Need::Method(why));
            }
            None => out.missing(MODE, Place::Head, Need::HeadHeight),
        }
        return;
    }
    if !matches!(case.joint.methods.tension, TensionMethod::Proof { .. }) {
        let why = "codes have their tension for countersunk heads of their own standards, and this one is stated";
        out.missing(MODE, Place::Head, Need::Method(why));
    }
    let Some(proof) = out.attempt(MODE, Place::Head, own.head_proof()) else {
        return;
    };
    let method = methods::HEAD_PROOF_STATED;
    let check = Check::new(MODE, Place::Head, greatest, proof, Level::Nominal, method);
    out.try_check(MODE, Place::Head, check);
}

/// Where a standard gives no proof stress, 0.85 of the yield strength stands in for it; not for one that the caller
/// leaves unsaid, which may be less.
pub(super) fn proof_unsaid(case: &Case, mode: Mode, out: &mut Outcomes) {
    let own = case.joint.own.strength.as_ref();
    if own.is_some_and(|own| own.proof_stress.is_none()) {
        out.missing(mode, Place::Bolt(1), Need::ProofStress);
    }
}

fn greatest(
    load: Force,
    springs: Option<&Springs>,
    preload: Option<&JointPreload>,
) -> Result<Force, Error> {
    match (preload, springs) {
        (None, _) => Ok(load),
        (Some(preload), _) if load <= Force::default() => Ok(preload.greatest),
        (Some(preload), Some(springs)) => {
            let diagram = JointDiagram::new(springs.share, preload.greatest)?;
            Ok(diagram.under(load)?.bolt)
        }
        (Some(preload), None) => Ok(preload.greatest + load),
    }
}

/// The greatest force in the bolt against what it may be stretched to.
fn with_preload(
    case: &Case,
    greatest: Force,
    springs: Option<&Springs>,
    preload: &JointPreload,
    out: &mut Outcomes,
) {
    // A code whose pretension is a least has the pull in its tension check already.
    let (PreloadLimit::Proof { load: limit } | PreloadLimit::Yield { load: limit }) = preload.limit
    else {
        return;
    };
    let place = Place::Bolt(1);
    let method = match springs {
        Some(_) => methods::JOINT_DIAGRAM,
        None => methods::JOINT_DIAGRAM_BOUNDS,
    };
    let check = Check::new(
        Mode::BoltTension,
        place,
        greatest,
        limit,
        Level::Nominal,
        method,
    );
    out.try_check(Mode::BoltTension, place, check);
    if let (true, Some(springs)) = (out.works(), springs) {
        let load = case.margin * case.joint.load.along;
        for (force, name) in [
            (preload.greatest, "greatest preload"),
            (preload.in_service, "preload in service"),
        ] {
            let working = JointDiagram::new(springs.share, force)
                .and_then(|diagram| diagram.check(load, limit));
            match working {
                Ok(check) => out.work(|| {
                    let derivation = check.derivation();
                    let title = alloc::format!("{}, {name}", derivation.title());
                    derivation.titled(title)
                }),
                // The bolt is stretched beyond the limit by the preload alone: there are no factors to show.
                Err(_) => out.work(|| springs.share.derivation()),
            }
        }
    }
}
