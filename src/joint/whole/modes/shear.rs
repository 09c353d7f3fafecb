//! Shear of the bolt, plane by plane, with what the code takes off for the connection.

use alloc::vec::Vec;

use super::CODE_OF_LISTED;
use crate::joint::whole::case::{Case, CasePlane};
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Need, NotConcerned};
use crate::strength::check::{Check, Mode, Place};
use crate::strength::code::mil_hdbk_5;
use crate::strength::shear::{
    ConnectionFacts, JointLength, LoadedPlane, PlaneRule, ReductionNeed, ShearMethod,
    ShearResistance, shear_resistance,
};
use crate::units::{Force, Length};

const MODE: Mode = Mode::BoltShear;

const OF_ANOTHER_BOLT: &str = "the shear strength of the method is over 0.6 of the tensile strength of the bolt, which no pair of the handbook is: state that of this bolt";

/// What shears the bolt.
#[derive(Default)]
pub(super) struct Shear {
    /// The check of each plane that has one.
    pub(super) planes: Vec<Check>,
    /// Whether every plane that carries load was checked.
    pub(super) complete: bool,
    /// Load across that the weakest plane bears, where EN 1993-1-8 wants bearing to govern.
    pub(super) bearing_at_most: Option<Force>,
}

pub(super) fn check(case: &Case, out: &mut Outcomes) -> Shear {
    let mut shear = Shear::default();
    if !case.is_sheared() {
        out.not_concerned(MODE, NotConcerned::NoLoadAcross);
        return shear;
    }
    shear.complete = true;
    let refused = match case.joint.methods.shear {
        ShearMethod::DistortionEnergy { .. } => None,
        // It has the strength of the caller, who may have that of another bolt in mind.
        ShearMethod::MilHdbk5 { shear_strength, .. } => {
            let tensile = case.strength.tensile_strength;
            (!mil_hdbk_5::can_have(shear_strength, tensile)).then_some(OF_ANOTHER_BOLT)
        }
        _ => case.joint.own.strength.is_some().then_some(CODE_OF_LISTED),
    };
    if let Some(why) = refused {
        shear.complete = false;
        out.missing(MODE, Place::Bolt(1), Need::Method(why));
        return shear;
    }
    for plane in case.planes.iter().filter(|plane| plane.share > 0.0) {
        let place = Place::Plane(plane.number);
        let found = resistance(case, plane, out);
        let Some(found) = out.attempt(MODE, place, found) else {
            shear.complete = false;
            continue;
        };
        for need in found.unknown.iter() {
            unknown(case, place, need, out);
        }
        out.work(|| found.derivation());
        let check = found.check(plane.load, case.level);
        let Some(check) = out.attempt(MODE, place, check) else {
            shear.complete = false;
            continue;
        };
        if found.bearing_must_govern {
            if let Ok(most) = found.resistance.at(case.level) {
                let whole = most / plane.share;
                shear.bearing_at_most = Some(match shear.bearing_at_most {
                    Some(least) => least.min(whole),
                    None => whole,
                });
            }
        }
        shear.planes.push(check.clone());
        out.check(check);
    }
    out.in_order(MODE);
    shear
}

fn resistance(
    case: &Case,
    plane: &CasePlane,
    _out: &mut Outcomes,
) -> Result<ShearResistance, crate::error::Error> {
    let alone = LoadedPlane {
        number: plane.number,
        zone: plane.zone,
        share: 1.0,
    };
    let joint_length = match case.joint_length() {
        _ if case.along() == 1 => JointLength::SingleBolt,
        Some(length) => JointLength::Known(length),
        None => JointLength::Unknown,
    };
    let facts = ConnectionFacts {
        joint_length,
        grip: Some(case.grip()),
        packing: Some(plane.packing),
        hole: widest_hole(case),
    };
    shear_resistance(
        case.thread,
        &case.strength,
        &[alone],
        PlaneRule::Each,
        case.joint.methods.shear,
        &facts,
    )
}

/// The widest hole of the plies that bear, if every one is known.
fn widest_hole(case: &Case) -> Option<Length> {
    let mut widest = Length::default();
    for ply in case.plies.iter().filter(|ply| ply.pulls()) {
        if let Some(ply) = ply.ply {
            widest = widest.max(ply.hole?);
        }
    }
    Some(widest)
}

/// A fact of the connection that could lower the capacity.
fn unknown(case: &Case, place: Place, need: ReductionNeed, out: &mut Outcomes) {
    match need {
        ReductionNeed::JointLength => out.missing(MODE, Place::Joint, Need::Pitch),
        ReductionNeed::Hole => {
            for ply in case.plies.iter().filter(|ply| ply.pulls()) {
                if ply.ply.is_some_and(|ply| ply.hole.is_none()) {
                    out.missing(MODE, ply.place, Need::Hole);
                }
            }
        }
        _ => out.missing(
            MODE,
            place,
            Need::Method("grip or packing at the plane is not known"),
        ),
    }
}
