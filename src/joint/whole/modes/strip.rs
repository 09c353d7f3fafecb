//! Stripping of the threads of nut or tapped part, and whether bolt and nut belong together.

use super::tension::Tension;
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::joint::OwnNut;
use crate::joint::whole::case::{Case, CaseNut, Closing, NutOf};
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need, NotConcerned};
use crate::material::{BoltGrade, NutGrade, PropertyClass};
use crate::parts::{NutStyle, ScrewProduct};
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::strip::{
    NotShown, Pairing, StripMethod, StrippingStrength, ThreadFailure, ThreadMaterial, nut_pairing,
    nut_proof, stripping,
};
use crate::tables::methods;
use crate::tables::nut_grades::NutShape;
use crate::thread::strip::{EndLoss, EngagedLength};
use crate::units::{Force, Length};

const MODE: Mode = Mode::Stripping;

pub(super) fn check(case: &Case, tension: &Tension, out: &mut Outcomes) {
    match &case.closing {
        Closing::Nut(nut) => of_nut(case, nut, tension.greatest, out),
        Closing::Tapped(_) => of_part(case, tension.greatest, out),
    }
    out.in_order(MODE);
}

fn of_nut(case: &Case, nut: &CaseNut, greatest: Force, out: &mut Outcomes) {
    if let NutOf::Own(own) = nut.of {
        of_own_nut(case, own, greatest, out);
        return;
    }
    for mode in [Mode::Pairing, MODE] {
        if nut.grade.is_none() {
            out.missing(mode, Place::Nut, Need::NutGrade);
        } else if nut.style().and_then(NutStyle::shape).is_none() && !is_structural_set(case, nut) {
            let why = "nut strengths are for other shapes of nut";
            out.missing(mode, Place::Nut, Need::Method(why));
        }
    }
    if is_structural_set(case, nut) {
        out.warn(
            &Cautions::default().with(Caution::of_method(methods::EN_14399_SETS_OF_BOLT_AND_NUT)),
        );
        out.in_order(Mode::Pairing);
        return;
    }
    let (Some(grade), Some(shape)) = (nut.grade, nut.style().and_then(NutStyle::shape)) else {
        return;
    };
    // Bolts of EN 14399 are made and tested as sets: with their own nut, in their own grades.
    if matches!(
        case.joint.bolt.product,
        ScrewProduct::En14399_3 | ScrewProduct::En14399_4
    ) {
        let why = "bolts of EN 14399 go with the nuts of their own set and grade";
        out.missing(Mode::Pairing, Place::Nut, Need::Method(why));
    }
    pair(case, nut, grade, shape, out);
    let strength = match &nut.strength {
        Some(Ok(strength)) => strength,
        Some(Err(error)) => {
            out.missing(MODE, Place::Nut, Need::Refused(error.clone()));
            return;
        }
        None => return,
    };
    let proof = nut_proof(case.thread, &case.strength, strength);
    let Some(proof) = out.attempt(MODE, Place::Nut, proof) else {
        return;
    };
    out.work(|| proof.derivation());
    out.warn(&strength.cautions());
    if greatest > Force::default() {
        let check = Check::new(
            MODE,
            Place::Nut,
            greatest,
            proof.nut_proof_load,
            Level::Nominal,
            methods::NUT_PROOF,
        );
        out.try_check(MODE, Place::Nut, check);
    }
}

/// No table pairs a nut of the caller's own: its proof load must reach the breaking load of the bolt.
fn of_own_nut(case: &Case, own: &OwnNut, greatest: Force, out: &mut Outcomes) {
    // ISO 898-2 (2012): regular nuts are at least 0.8 d high; in lower ones the threads of the bolt may strip, whatever
    // the nut is made of.
    if own.height.min < 0.8 * case.diameter {
        let why = "the nut is lower than 0.8 diameters: that its threads and those of the bolt do not strip is not shown";
        out.missing(MODE, Place::Nut, Need::Method(why));
    }
    let Some(proof) = own.proof_load(case.loads.tensile_stress_area) else {
        for mode in [Mode::Pairing, MODE] {
            out.missing(mode, Place::Nut, Need::NutProof);
        }
        return;
    };
    let ratio = proof / case.loads.tensile;
    // A proof load worked out from the same strength is the same load.
    if ratio.value < 1.0 - 1e-9 {
        let why = NotShown::Weaker { ratio };
        out.missing(Mode::Pairing, Place::Nut, Need::Pair(why));
    }
    out.in_order(Mode::Pairing);
    if greatest > Force::default() {
        let check = Check::new(
            MODE,
            Place::Nut,
            greatest,
            proof,
            Level::Nominal,
            methods::NUT_PROOF_STATED,
        );
        out.try_check(MODE, Place::Nut, check);
    }
}

/// Whether bolt and nut are a set of EN 14399-3 or EN 14399-4, which is made and tested so that the bolt breaks.
fn is_structural_set(case: &Case, nut: &CaseNut) -> bool {
    let of_one_part = matches!(
        (case.joint.bolt.product, nut.style()),
        (ScrewProduct::En14399_3, Some(NutStyle::En14399_3))
            | (ScrewProduct::En14399_4, Some(NutStyle::En14399_4))
    );
    let grades = matches!(
        (case.strength.grade, nut.grade),
        (
            BoltGrade::Iso(PropertyClass::Class8_8),
            Some(NutGrade::Iso898_2Class8 | NutGrade::Iso898_2Class10)
        ) | (
            BoltGrade::Iso(PropertyClass::Class10_9),
            Some(NutGrade::Iso898_2Class10)
        )
    );
    // That of EN 14399-4 it is 10.9 is seen to before: in another grade no such bolt is made.
    of_one_part && grades
}

/// Whether bolt and nut belong together: by the tables of the standards first.
fn pair(case: &Case, nut: &CaseNut, grade: NutGrade, shape: NutShape, out: &mut Outcomes) {
    const MODE: Mode = Mode::Pairing;
    let structural = case.strength.grade.is_a325() || case.strength.grade.is_a490();
    if structural && shape != NutShape::HeavyHex {
        let why = "structural bolts take heavy hex nuts (ASTM F3125; RCSC 2.4)";
        out.missing(MODE, Place::Nut, Need::Method(why));
    }
    let found = nut_pairing(
        &case.strength,
        case.joint.bolt.finish,
        grade,
        nut.finish,
        shape,
        case.thread,
    );
    let Some(found) = out.attempt(MODE, Place::Nut, found) else {
        return;
    };
    out.warn(&found.cautions());
    match found {
        Pairing::NotShown {
            why: NotShown::Finish,
        } => {
            for (finish, place, need) in [
                (case.joint.bolt.finish, Place::Bolt(1), Need::BoltFinish),
                (nut.finish, Place::Nut, Need::NutFinish),
            ] {
                if finish.is_none() {
                    out.missing(MODE, place, need);
                }
            }
        }
        Pairing::NotShown { why } => out.missing(MODE, Place::Nut, Need::Pair(why)),
        Pairing::NotFit { why } => out.find(Finding::ThreadsDoNotFit { why }),
        _ => out.in_order(MODE),
    }
}

/// Stripping of both threads in a tapped part, over the engagement of the shortest screw in the thickest
/// stack, less one pitch for the chamfers of screw and hole; of the part around an insert, if the hole has one.
fn of_part(case: &Case, greatest: Force, out: &mut Outcomes) {
    out.not_concerned(Mode::Pairing, NotConcerned::NoNut);
    let place = Place::TappedPart;
    let own = case.plies.last().filter(|ply| ply.tapped.is_some());
    let Some(material) = own.and_then(|ply| ply.material) else {
        out.missing(MODE, place, Need::Material);
        return;
    };
    let Some(engaged) = own.and_then(|ply| ply.thickness) else {
        return;
    };
    let part = match material.thread(engaged) {
        Ok(part) => part,
        Err(need) => {
            out.missing(MODE, place, need);
            return;
        }
    };
    let Some(found) = out.attempt(MODE, place, stripped(case, engaged, &part)) else {
        return;
    };
    out.work(|| found.derivation());
    out.warn(&found.cautions());
    wall(case, out);
    if found.first != ThreadFailure::Bolt {
        out.find(Finding::ThreadsWeaker {
            ratio: found.ultimate / found.breaking_load,
        });
    }
    if greatest > Force::default() {
        let usual = methods::FED_STD_H28_2_HALF_OF_THE_TENSILE_STRENGTH;
        let of_part = match case.insert {
            Some(_) => methods::FED_STD_H28_2_AROUND_AN_INSERT_OF_WIRE,
            None => usual,
        };
        for (place, resistance, method) in [
            (Place::Bolt(1), found.bolt_threads, usual),
            (Place::TappedPart, found.nut_threads, of_part),
        ] {
            let check = Check::new(MODE, place, greatest, resistance, Level::Nominal, method);
            out.try_check(MODE, place, check);
        }
    }
}

/// The wall around the thread, which must be said on all sides: a narrow one that nobody mentions would hold. E. M. Alexander,
/// SAE 770420: threads in a boss narrower than 1.9 diameters lose strength as it widens (recalled). A maker wants 1.75 diameters
/// of the hole around an insert (read).
fn wall(case: &Case, out: &mut Outcomes) {
    let Some(part) = case.tapped() else { return };
    let outer = match case.insert {
        None => case.diameter,
        Some(insert) => insert.hole().major_diameter,
    };
    let twice = |distance: Option<Length>| distance.map(|distance| 2.0 * distance);
    let mut thin = false;
    for (wall, need) in [
        (twice(part.edge_distance), Need::EdgeDistance),
        (part.width, Need::Width),
        (twice(part.end_distance), Need::EndDistance),
    ] {
        match wall {
            Some(wall) => thin |= wall < 1.9 * outer,
            None => out.missing(MODE, Place::TappedPart, need),
        }
    }
    if thin {
        let why = "the wall around the thread is thin and widens under load: what that costs is not modelled";
        out.missing(MODE, Place::TappedPart, Need::Method(why));
    }
}

fn stripped(
    case: &Case,
    engaged: Length,
    part: &ThreadMaterial,
) -> Result<StrippingStrength, Error> {
    // The usual fit.
    let (bolt, hole) = if case.thread.is_unified() {
        ("2A", "2B")
    } else {
        ("6g", "6H")
    };
    let fit = case.thread.fit(bolt.parse()?, hole.parse()?)?;
    let areas = if let Some(insert) = case.insert {
        insert.strip_areas(&fit, insert.engaged(engaged)?)?
    } else {
        let engaged = EngagedLength::new(engaged)?;
        fit.strip_areas(engaged.less(EndLoss::Chamfers(1), case.thread)?)?
    };
    let bolt = ThreadMaterial::of_bolt(&case.strength);
    stripping(&areas, &bolt, part, StripMethod::FedStdH28)
}

#[cfg(test)]
mod tests {
    use crate::joint::{Account, Joint};
    use crate::strength::check::Mode;

    /// A bolt of EN 14399 goes with the nut of its own part in the grade for it, and with no other. Of EN 14399-4 there is
    /// 10.9 alone.
    #[test]
    fn sets_of_en_14399_belong_together() {
        let (four, three) = ("EN 14399-4", "EN 14399-3");
        for (bolt, grade, nut, class, is_set) in [
            (four, "10.9", four, "ISO 898-2 class 10", true),
            (three, "10.9", three, "ISO 898-2 class 10", true),
            (three, "8.8", three, "ISO 898-2 class 8", true),
            (three, "8.8", three, "ISO 898-2 class 10", true),
            (three, "10.9", three, "ISO 898-2 class 8", false),
            (four, "10.9", three, "ISO 898-2 class 10", false),
            (three, "10.9", four, "ISO 898-2 class 10", false),
            (four, "10.9", "ISO 4032", "ISO 898-2 class 10", false),
        ] {
            let said = Joint::builder("M20").ply("a", "20 mm").ply("b", "20 mm");
            let said = said.product(bolt).grade(grade).nut(nut).nut_grade(class);
            let found = said.across("1 kN").build().unwrap().check().unwrap();
            let account = found.account(Mode::Pairing);
            let is_open = account == Account::Missing;
            assert_eq!(
                !is_open, is_set,
                "{bolt} {grade} {nut} {class}: {account:?}"
            );
        }
        let said = Joint::builder("M20").ply("a", "20 mm").ply("b", "20 mm");
        let said = said
            .product(four)
            .grade("8.8")
            .nut(four)
            .nut_grade("ISO 898-2 class 8");
        assert!(said.across("1 kN").build().unwrap().check().is_err());
    }
}
