//! The parts of a case, looked up one by one; what cannot go together is refused.

use alloc::{boxed::Box, format, string::ToString, vec::Vec};

use super::{Case, CaseNut, CasePlane, CasePly, Closing, NutOf};
use crate::caution::{Caution, Cautions, StatedPart};
use crate::error::{Allowed, Error, out_of_range};
use crate::joint::whole::Joint;
use crate::joint::whole::material::{CaseMaterial, CaseTimber};
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::own::fits_seat;
use crate::joint::{
    Candidate, JointMaterial, JointPly, JointTimber, JointWasher, LengthSearch, NutEnd, Stack,
    TappedPart,
};
use crate::material::{BoltGrade, Finish, NutGrade, NutStrength, NutTapping};
use crate::parts::{Nut, ScrewSeries, Washer};
use crate::strength::check::Place;
use crate::tables::galvanic::Metal;
use crate::tables::nut_grades::NutShape;
use crate::tables::washer_rules::WasherHardness;
use crate::thread::Thread;
use crate::units::{Force, Length, SAME_LENGTH};

/// How many times as wide as the thread a washer of the caller's own is at most. The widest of the tables, a type B wide
/// #0, has 4.2 d; square plates on timber have some 6 (common practice, no source). A wider one is a slip of the pen, or
/// bends under its bolt.
const WIDEST_WASHER: f64 = 8.0;

/// Refuses parts that cannot go together: a hexagon head in a countersink, a washer thicker than its style, distances
/// to holes that are not there.
pub(super) fn fitting(joint: &Joint, has_others: bool) -> Result<(), Error> {
    let stack = &joint.stack;
    fits_seat(
        stack.head_seat(),
        joint.own.screw.as_ref(),
        joint.bolt.product,
    )?;
    let of_bolt =
        (joint.bolt.grade != BoltGrade::Stated).then(|| joint.bolt.grade.stainless_metal());
    let of_nut = joint.nut.and_then(|nut| nut.grade);
    for (part, finish, steel) in [
        ("bolt", joint.bolt.finish, of_bolt),
        (
            "nut",
            joint.nut.and_then(|nut| nut.finish),
            of_nut.map(NutGrade::stainless_metal),
        ),
    ] {
        if let (Some(Finish::Bare(metal)), Some(steel)) = (finish, steel) {
            if is_stainless(metal) != steel.is_some() {
                return Err(Error::Mismatch(format!(
                    "the {part} is bare {metal}, and its grade is of other steel"
                )));
            }
        }
    }
    for washer in washers(stack) {
        let Some(style) = washer.style else {
            if washer
                .inside
                .is_some_and(|inside| inside < joint.bolt.thread.nominal_diameter())
            {
                return Err(Error::Mismatch(format!(
                    "\"{}\" does not go over {}",
                    washer.name, joint.bolt.thread
                )));
            }
            let widest = WIDEST_WASHER * joint.bolt.thread.nominal_diameter();
            if let Some(outside) = washer.outside.filter(|outside| *outside > widest) {
                let quantity = format!("outside diameter of \"{}\"", washer.name);
                return Err(out_of_range(
                    quantity,
                    outside,
                    Allowed::AtMost(widest.into()),
                ));
            }
            continue;
        };
        // A style that is made in one hardness only has it.
        let fixed = WasherHardness::of(style).count() == 1 && washer.hardness.is_some();
        if washer.outside.is_some() || washer.inside.is_some() || fixed {
            return Err(Error::Mismatch(format!(
                "\"{}\" is a {style}, which has its diameters and hardness: give it the style or figures of its own",
                washer.name
            )));
        }
        let row = Washer::find(style, &joint.bolt.thread)?;
        if let Ok(thickness) = row.thickness() {
            if washer.thickness.min > thickness.max + SAME_LENGTH
                || washer.thickness.max < thickness.min - SAME_LENGTH
            {
                return Err(Error::Mismatch(format!(
                    "\"{}\" is not as thick as a {style} for {}",
                    washer.name, joint.bolt.thread
                )));
            }
        }
    }
    for ply in stack.plies() {
        let lone = joint.pattern.along() == 1 && ply.pitch.is_some()
            || joint.pattern.across() == 1 && ply.gauge.is_some();
        if lone && !has_others {
            return Err(Error::Mismatch(format!(
                "\"{}\" has a distance to the next hole, and the pattern has no other bolt in that direction",
                ply.name
            )));
        }
    }
    Ok(())
}

const fn is_stainless(metal: Metal) -> bool {
    matches!(
        metal,
        Metal::Stainless12Chromium | Metal::Stainless18Chromium
    )
}

/// Every washer of a stack, and those that may be added.
fn washers(stack: &Stack) -> impl Iterator<Item = &JointWasher> {
    let at_nut = stack.washers_under_nut().map(|(washer, _)| washer);
    stack
        .washers_under_head()
        .iter()
        .chain(stack.other_washers_under_nut())
        .chain(stack.washer_to_add_under_head())
        .chain(at_nut)
}

const fn is_own_washer(washer: &JointWasher) -> bool {
    washer.outside.is_some() || washer.inside.is_some() || washer.hardness.is_some()
}

/// What the caller states of parts that no table has: nothing here vouches for it.
pub(super) fn stated(joint: &Joint, out: &mut Outcomes) {
    let stack = &joint.stack;
    let plies = stack.plies().iter().map(|ply| ply.material.as_ref());
    let mut materials = plies.chain(stack.tapped_part().map(|part| part.material.as_ref()));
    let mut timbers = stack.plies().iter().map(|ply| ply.timber.as_ref());
    for (part, is_own) in [
        (
            StatedPart::Material,
            materials.any(|own| matches!(own, Some(JointMaterial::Own(_)))),
        ),
        (
            StatedPart::Timber,
            timbers.any(|own| matches!(own, Some(JointTimber::Own(_)))),
        ),
        (StatedPart::Washer, washers(stack).any(is_own_washer)),
        (StatedPart::Nut, joint.own.nut.is_some()),
    ] {
        out.warn(&Cautions::default().with(is_own.then_some(Caution::Stated { part })));
    }
}

/// The nut or the tapped thread, whichever the stack goes with.
pub(in crate::joint::whole) fn closing(joint: &Joint) -> Result<Closing<'_>, Error> {
    if let (None, Some(own)) = (joint.stack.tapped_part(), &joint.own.nut) {
        own.checked(&joint.bolt.thread)?;
        return Ok(Closing::Nut(CaseNut {
            of: NutOf::Own(own),
            grade: None,
            finish: own.finish,
            locking: own.locking,
            strength: None,
        }));
    }
    if let (Some(part), Some(own)) = (joint.stack.tapped_part(), &joint.own.nut) {
        return Err(Error::Mismatch(format!(
            "the stack ends in the thread of \"{}\": it has no nut, and \"{}\" is one",
            part.name, own.name
        )));
    }
    match (joint.stack.tapped_part(), joint.nut) {
        (None, Some(given)) => {
            let row = Nut::find(given.style, &joint.bolt.thread)?;
            let strength = given.grade.zip(given.style.shape()).map(|(grade, shape)| {
                weaker_nut(grade, shape, &joint.bolt.thread, given.finish).map_err(Box::new)
            });
            Ok(Closing::Nut(CaseNut {
                of: NutOf::Listed(row),
                grade: given.grade,
                finish: given.finish,
                locking: given.style.locking(),
                strength,
            }))
        }
        (Some(part), None) => Ok(Closing::Tapped(part)),
        (None, None) => Err(Error::Mismatch(
            "a stack without a tapped part ends in a nut: give it".into(),
        )),
        (Some(part), Some(_)) => Err(Error::Mismatch(format!(
            "the stack ends in the thread of \"{}\": it has no nut",
            part.name
        ))),
    }
}

/// The strength of the nut as its coating has it tapped; of one whose coating nobody says, the weaker.
pub(super) fn weaker_nut(
    grade: NutGrade,
    shape: NutShape,
    thread: &Thread,
    finish: Option<Finish>,
) -> Result<NutStrength, Error> {
    if let Some(finish) = finish {
        return grade.strength(shape, thread, finish.nut_tapping());
    }
    let usual = grade.strength(shape, thread, NutTapping::Usual)?;
    match grade.strength(shape, thread, NutTapping::Oversize) {
        Ok(oversize) if oversize.proof_stress < usual.proof_stress => Ok(oversize),
        _ => Ok(usual),
    }
}

impl Closing<'_> {
    /// The same as a length search sees it.
    pub(in crate::joint::whole) fn end(&self) -> Result<NutEnd, Error> {
        match self {
            Self::Nut(nut) => match nut.of {
                NutOf::Listed(row) => NutEnd::of(row),
                NutOf::Own(own) => NutEnd::with_height(own.height),
            },
            Self::Tapped(part) => {
                let Some(engagement) = part.engagement else {
                    return Err(Error::Mismatch(format!(
                        "\"{}\" does not say how much of its thread must be filled",
                        part.name
                    )));
                };
                NutEnd::tapped(engagement, part.depth())
            }
        }
    }
}

/// The length given, or the best one; if nothing fits, the nearest, with the reasons against it.
pub(super) fn candidate(
    joint: &Joint,
    closing: &Closing<'_>,
    out: &mut Outcomes,
) -> Result<Candidate, Error> {
    let end = closing.end()?;
    out.warn(&end.cautions());
    let screws = stock(joint)?;
    let search = length_search(joint, screws.as_ref(), end)?;
    let candidate = if let Some(length) = joint.bolt.length {
        search.of_length(length)?
    } else {
        match search.best()? {
            Some(best) => best,
            // Of those that do not fit, the nearest tells why.
            None => *search
                .run()?
                .rejected()
                .first()
                .ok_or_else(|| Error::NoValue {
                    quantity: "stock length",
                    subject: joint.bolt.product.to_string(),
                    reason: "none has been read at that size",
                })?,
        }
    };
    out.warn(&search.cautions(&candidate));
    Ok(candidate)
}

/// The product as it is sold; none for a bolt of the caller's own.
pub(in crate::joint::whole) fn stock(joint: &Joint) -> Result<Option<ScrewSeries>, Error> {
    match joint.own.screw {
        Some(_) => Ok(None),
        None => ScrewSeries::new(joint.bolt.product, &joint.bolt.thread).map(Some),
    }
}

/// The search among the lengths of the bolt: those in stock, or those of the caller's own.
pub(in crate::joint::whole) fn length_search<'a>(
    joint: &'a Joint,
    screws: Option<&'a ScrewSeries>,
    end: NutEnd,
) -> Result<LengthSearch<'a>, Error> {
    let (stack, thread, rules) = (&joint.stack, &joint.bolt.thread, joint.rules);
    match (&joint.own.screw, screws) {
        (Some(own), _) => LengthSearch::of_own(stack, own, thread, end, rules),
        (None, Some(screws)) => LengthSearch::new(stack, screws, end, rules),
        (None, None) => LengthSearch::of_thread(stack, thread, &end, rules),
    }
}

pub(super) fn plies<'a>(
    joint: &'a Joint,
    closing: &Closing<'a>,
    candidate: &Candidate,
    across: Force,
) -> Result<Vec<CasePly<'a>>, Error> {
    let stack = &joint.stack;
    let mut pulls = stack.pulls().iter();
    let mut load = || pulls.next().map_or(0.0, |pull| pull.abs()) * across;
    let mut plies = Vec::with_capacity(stack.plies().len() + 1);
    for (ply, number) in stack.plies().iter().zip(1..) {
        let material = ply.material.as_ref().map(CaseMaterial::of).transpose()?;
        let timber = ply.timber.as_ref().map(CaseTimber::of).transpose()?;
        plies.push(CasePly {
            place: Place::Ply(number),
            number,
            ply: Some(ply),
            tapped: None,
            material,
            timber,
            thickness: stack.bearing_thickness(number),
            load: load(),
        });
    }
    if let Closing::Tapped(part) = closing {
        let material = part.material.as_ref().map(CaseMaterial::of).transpose()?;
        plies.push(CasePly {
            place: Place::TappedPart,
            number: plies.len() + 1,
            ply: None,
            tapped: Some(part),
            material,
            timber: None,
            thickness: engaged(part, candidate),
            load: load(),
        });
    }
    Ok(plies)
}

/// How far the bolt sticks out of the nut at least: of the shortest screw in the thickest stack, or as cut. Cut to the
/// stack in hand, by what the rules want and no more.
pub(in crate::joint::whole) fn past_the_nut(case: &Case) -> Length {
    let wanted = case.joint.rules.least_protrusion_pitches() * case.thread.pitch();
    past_the_end(&case.candidate, wanted)
}

/// The same past any end of the joint.
fn past_the_end(candidate: &Candidate, wanted: Length) -> Length {
    let fixed = candidate.cut.filter(|cut| cut.holds_window);
    match (candidate.needs_cut, fixed) {
        (false, _) => candidate.protrusion.min,
        (true, Some(cut)) => cut.protrusion.min,
        (true, None) => wanted,
    }
}

/// Least length of thread that the screw fills: of the shortest screw in the thickest stack. Cut to the stack in
/// hand, it fills what is wanted and no more; so it does in a hole tapped through, of which only the engagement is
/// known to be there.
pub(in crate::joint::whole) fn engaged(part: &TappedPart, candidate: &Candidate) -> Option<Length> {
    let reached = part.engagement? + past_the_end(candidate, Length::default());
    Some(reached.min(part.depth().unwrap_or(part.engagement?)))
}

pub(super) fn planes(joint: &Joint, candidate: &Candidate, across: Force) -> Vec<CasePlane> {
    let stack = &joint.stack;
    let plies = stack.plies();
    let packing = |after_ply: usize| {
        let packs = |ply: &&JointPly| ply.pull == Some(0.0);
        let thickness = |sum: Length, ply: &JointPly| sum + ply.thickness.max;
        let before = plies.iter().take(after_ply).rev().take_while(packs);
        let after = plies.iter().skip(after_ply).take_while(packs);
        let beside = before.chain(after);
        (
            beside.clone().fold(Length::default(), thickness),
            beside.count(),
        )
    };
    let planes = stack.planes_of(candidate);
    (1..)
        .zip(planes.zip(stack.plane_shares()))
        .map(|(number, (plane, &share))| {
            let (packing, packings) = packing(plane.after_ply);
            CasePlane {
                number,
                after_ply: plane.after_ply,
                zone: plane.worst,
                load: share * across,
                share,
                packing,
                packings,
            }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// ASTM A563, Table 3, DH at 1-8 UNC: heavy hex 175 ksi, and 150 ksi tapped oversize for thick zinc; hex 150 ksi either way.
    #[test]
    fn of_an_unknown_coating_the_weaker_nut_is_taken() {
        let thread: Thread = "1-8 UNC".parse().unwrap();
        let (dip, plated) = (
            Finish::HotDipGalvanized,
            Finish::ZincPlated { baked: false },
        );
        for (shape, finish, ksi, tapping) in [
            (NutShape::HeavyHex, None, 150.0, NutTapping::Oversize),
            (NutShape::HeavyHex, Some(dip), 150.0, NutTapping::Oversize),
            (NutShape::HeavyHex, Some(plated), 175.0, NutTapping::Usual),
            (NutShape::Hex, None, 150.0, NutTapping::Usual),
            (NutShape::Hex, Some(dip), 150.0, NutTapping::Oversize),
        ] {
            let nut = weaker_nut(NutGrade::AstmA563Dh, shape, &thread, finish).unwrap();
            let off = nut.proof_stress - crate::units::ksi(ksi);
            assert!(off.value.abs() < 1.0, "{shape:?} {finish:?}: {nut:?}");
            assert_eq!(nut.tapping, tapping, "{shape:?} {finish:?}");
        }
    }
}
