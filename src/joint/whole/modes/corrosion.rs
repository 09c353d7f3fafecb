//! Corrosion of unlike metals in contact.

use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need, NotConcerned};
use crate::joint::{JointParts, JointWasher, Part, galvanic_pair};
use crate::material::{Finish, Severity};
use crate::strength::check::{Mode, Place};
use crate::tables::galvanic::{Exposure, Metal};

const MODE: Mode = Mode::Corrosion;

/// Every pair of parts that touch. Timber is no metal.
pub(super) fn check(case: &Case, out: &mut Outcomes) {
    let exposure = case.joint.environment.exposure;
    if exposure == Exposure::Dry {
        out.not_concerned(MODE, NotConcerned::Dry);
        return;
    }
    if exposure == Exposure::Harsh && case.joint.bolt.finish == Some(Finish::Bare(Metal::Steel)) {
        let why = "bare steel rusts in the weather: what that takes off is not known";
        out.missing(MODE, Place::Bolt(1), Need::Method(why));
    }
    if case.insert.is_some() {
        let why = "the stainless wire of its insert lies between screw and part: what the three do to each other is not looked at";
        out.missing(MODE, Place::TappedPart, Need::Method(why));
    }
    let under_head = case.washer_at(Place::Head);
    let under_nut = case.nut().and_then(|_| case.washer_at(Place::Nut));
    let parts = JointParts {
        plies: case.plies.len(),
        nut: case.nut().is_some(),
        washer_under_head: under_head.is_some(),
        washer_under_nut: under_nut.is_some(),
    };
    for (a, b) in parts.parts_in_contact() {
        if is_timber(case, a) || is_timber(case, b) {
            continue;
        }
        let metals = [a, b].map(|part| (part, metal(case, part, under_head, under_nut, out)));
        let pair = galvanic_pair(exposure, metals[0], metals[1]);
        out.warn_of(pair.recalled);
        if let (Severity::Fault, Some(difference)) = (pair.severity(), pair.difference) {
            out.find(Finding::Galvanic {
                anode: pair.anode,
                cathode: pair.cathode,
                difference,
                permitted: pair.permitted,
            });
        }
    }
    out.in_order(MODE);
}

fn is_timber(case: &Case, part: Part) -> bool {
    match part {
        Part::Ply(number) => case
            .plies
            .iter()
            .any(|ply| ply.number == number && ply.timber.is_some()),
        _ => false,
    }
}

/// What a part is made of; what is not known is listed.
fn metal(
    case: &Case,
    part: Part,
    under_head: Option<&JointWasher>,
    under_nut: Option<&JointWasher>,
    out: &mut Outcomes,
) -> Option<Metal> {
    let (metal, place, need) = match part {
        Part::Bolt => (
            case.joint.bolt.finish.and_then(Finish::metal),
            Place::Bolt(1),
            Need::BoltFinish,
        ),
        Part::Nut => (
            case.nut()
                .and_then(|nut| nut.finish)
                .and_then(Finish::metal),
            Place::Nut,
            Need::NutFinish,
        ),
        Part::WasherUnderHead => (
            under_head.and_then(|washer| washer.metal),
            Place::Head,
            Need::WasherMetal,
        ),
        Part::WasherUnderNut => (
            under_nut.and_then(|washer| washer.metal),
            Place::Nut,
            Need::WasherMetal,
        ),
        Part::Ply(number) => {
            let own = case.plies.iter().find(|ply| ply.number == number);
            let metal = own.and_then(|own| match (own.ply, own.tapped) {
                (Some(ply), _) => ply.metal,
                (None, tapped) => tapped.and_then(|part| part.metal),
            });
            (
                metal,
                own.map_or(Place::Joint, |own| own.place),
                Need::Metal,
            )
        }
    };
    if metal.is_none() {
        out.missing(MODE, place, need);
    }
    metal
}
