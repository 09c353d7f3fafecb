//! What each ply bears: bearing, tear-out, net and gross section.

use super::holes::{
    breaks_out, distances, hole_kind, hole_of, is_of_steel, neighbours, passes, ply_around,
};
use super::shear::Shear;
use crate::error::Error;
use crate::joint::JointPly;
use crate::joint::whole::case::{Case, CasePly};
use crate::joint::whole::material::CaseMaterial;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need, NotConcerned};
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::code::{en_1993, mil_hdbk_5};
use crate::strength::pin::{around_pin, en_1993_lug};
use crate::strength::ply::{Asked, Ply, PlyBolt, PlyMethod, PlyNeed, PlyOutcome};
use crate::units::{Force, Length, SAME_LENGTH, Stress, megapascals};

/// The modes that are worked out for each ply.
const OF_A_PLY: [Mode; 5] = [
    Mode::Bearing,
    Mode::BoltBearing,
    Mode::TearOut,
    Mode::NetSection,
    Mode::GrossSection,
];

pub(super) fn check(case: &Case, shear: &Shear, out: &mut Outcomes) {
    for own in &case.plies {
        // Those that bear are judged below, with the kinds of holes of the method.
        if own.timber.is_none() && !(case.is_sheared() && own.pulls()) {
            passes(case, own, out);
            // Packing that keeps the plies apart may be of steel or of cork.
            if case.is_sheared() && own.material.is_none() {
                out.missing(Mode::BoltShear, own.place, Need::Material);
            }
        }
    }
    if !case.is_sheared() {
        for mode in OF_A_PLY.into_iter().chain([Mode::Distances, Mode::Holes]) {
            out.not_concerned(mode, NotConcerned::NoLoadAcross);
        }
        return;
    }
    for distance in [|ply: &JointPly| ply.pitch, |ply: &JointPly| ply.gauge] {
        let mut given = case.plies.iter().filter_map(|own| distance(own.ply?));
        let first = given.next();
        if given.any(|other| first.is_some_and(|first| (first - other).abs() > SAME_LENGTH)) {
            let why = "the same bolts stand at other distances in one ply than in another";
            out.missing(Mode::Distances, Place::Joint, Need::Method(why));
        }
    }
    // The load across that the weakest ply bears.
    let mut bears: Option<Force> = None;
    for own in case.plies.iter().filter(|own| own.pulls()) {
        if own.timber.is_some() {
            continue;
        }
        if let Some(force) = one(case, own, out) {
            let whole = force * (case.across / own.load);
            bears = Some(bears.map_or(whole, |least| least.min(whole)));
        }
    }
    if let (Some(most), Some(bears)) = (shear.bearing_at_most, bears) {
        if bears > most {
            out.find(Finding::BearingMustGovern { bears, most });
        }
    }
    for mode in OF_A_PLY {
        out.not_concerned(
            mode,
            if case.has_timber() {
                NotConcerned::TimberElsewhere
            } else {
                NotConcerned::NotOfMethod
            },
        );
    }
    out.in_order(Mode::Holes);
    out.in_order(Mode::Distances);
}

/// Every mode of one ply; what it bears in design, where a bolt bears on it.
fn one(case: &Case, own: &CasePly, out: &mut Outcomes) -> Option<Force> {
    let Some(thickness) = own.thickness else {
        let why = "a ply around a sleeve bears on the sleeve: how much the sleeve bears is not known here";
        for mode in OF_A_PLY {
            out.missing(mode, own.place, Need::Method(why));
        }
        return None;
    };
    if own.tapped.is_some() && case.insert.is_some() && own.load > Force::default() {
        let why = "its insert is for tension: joints are to be built so that inserts take no load across (MS51778)";
        out.missing(Mode::Bearing, own.place, Need::Method(why));
    }
    let kind = hole_kind(case, own, out);
    let hole = hole_of(case, own);
    let mut ply = Ply {
        hole_kind: kind,
        slot_length: own.ply.and_then(|ply| ply.slot).map(|slot| slot.length),
        ..ply_around(own, thickness, hole.unwrap_or(case.diameter))
    };
    if hole.is_some() && breaks_out(own, &ply, out) {
        return None;
    }
    neighbours(case, own, &ply, out);
    let method = case.joint.methods.plies;
    of_steel(case, own, method, out);
    if let PlyMethod::MilHdbk5 { fitting_factor, .. } = method {
        moves(case, own, hole, fitting_factor, out);
        ply = with_bearing(own, ply, out);
    }
    // Rows end somewhere: a ply that says how far it is to the next hole only is not one without an end.
    let ended = Ply {
        pitch: ply.pitch.filter(|_| ply.end_distance.is_some()),
        gauge: ply.gauge.filter(|_| ply.edge_distance.is_some()),
        ..ply
    };
    let asked = ended.asked(case.diameter, PlyBolt::of(&case.strength), method);
    let mut bears = None;
    for mode in OF_A_PLY {
        if of_connection(case, mode) {
            out.not_concerned(mode, NotConcerned::OfConnection);
            continue;
        }
        let blind = hole.is_none() && needs_hole(method, mode);
        if blind {
            out.missing(mode, own.place, Need::Hole);
        }
        if blind || own.material.is_none() && mode != Mode::BoltBearing {
            without_figures(own, asked.as_ref(), mode, out);
            continue;
        }
        if let Some(force) = in_mode(case, own, asked.as_ref(), mode, out) {
            if mode == Mode::Bearing {
                bears = Some(force);
            }
        }
    }
    if own.material.is_some() && matches!(method, PlyMethod::MilHdbk5 { .. }) {
        let yielding = ply.yield_in_bearing(case.diameter, method);
        if let Some(yielding) = out.attempt(Mode::Bearing, own.place, yielding) {
            outcome(case, own, Mode::Bearing, &yielding, out);
        }
    }
    if method == PlyMethod::En1993 {
        if case.is_single_lap() {
            let lap = ply.single_lap(case.diameter, method);
            if let Some(lap) = out.attempt(Mode::Bearing, own.place, lap) {
                outcome(case, own, Mode::Bearing, &lap, out);
                let most = lap
                    .found()
                    .and_then(|lap| lap.resistance.at(case.level).ok());
                bears = match (bears, most) {
                    (Some(bears), Some(most)) if most < bears => Some(most),
                    _ => bears,
                };
            }
        }
        if case.joint.methods.slip.is_category_c()
            && case.member.is_none()
            && hole.is_some()
            && own.material.is_some()
        {
            let net = ply.net_section_without_slip(case.diameter, method);
            if let Some(net) = out.attempt(Mode::NetSection, own.place, net) {
                outcome(case, own, Mode::NetSection, &net, out);
            }
        }
        if case.joint.environment.rotates {
            around_pivot(case, own, &ply, out);
        }
    }
    distances(case, own, &ply, hole.is_some(), out);
    bears
}

/// Bearing strengths of the ply: those that are stated, else those of its material at this end distance.
fn with_bearing(own: &CasePly, ply: Ply, out: &mut Outcomes) -> Ply {
    let stated = own.ply.and_then(|ply| ply.bearing_strength);
    match (stated, own.material) {
        (None, Some(material)) => {
            let (ply, cautions) = material.with_bearing(ply);
            out.warn(&cautions);
            // Beside the strengths of the table a stated one does not help.
            let lesser = match (ply.bearing_yield, own.ply.and_then(|ply| ply.bearing_yield)) {
                (Some(listed), Some(stated)) if stated < listed => Some(stated),
                (listed, _) => listed,
            };
            Ply {
                bearing_yield: lesser,
                ..ply
            }
        }
        (Some(stated), material) => {
            if let Some(material) = material {
                stated_bearing(own, stated, material, out);
            }
            Ply {
                bearing_strength: Some(stated),
                bearing_yield: own.ply.and_then(|ply| ply.bearing_yield),
                ..ply
            }
        }
        _ => Ply {
            bearing_strength: stated,
            bearing_yield: own.ply.and_then(|ply| ply.bearing_yield),
            ..ply
        },
    }
}

/// A bearing strength that the caller states must be that of the material.
fn stated_bearing(own: &CasePly, stated: Stress, material: CaseMaterial, out: &mut Outcomes) {
    let there = own
        .thickness
        .and_then(|thickness| material.at_thickness(thickness).ok());
    match there.unwrap_or(material.without_thickness()).breaks {
        None => out.missing(Mode::Bearing, own.place, Need::TensileStrength),
        Some(breaks) if !mil_hdbk_5::can_bear(stated, breaks) => {
            let why = "the bearing strength that is stated is over 2.5 times the tensile strength of its material, which no row of \
                       the handbook is";
            out.missing(Mode::Bearing, own.place, Need::Method(why));
        }
        Some(_) => {}
    }
}

/// 14 CFR 25.623 (read): a part with clearance under pounding or vibration, and one that turns, wants a bearing factor, of which
/// it gives no number.
fn moves(
    case: &Case,
    own: &CasePly,
    hole: Option<Length>,
    fitting_factor: f64,
    out: &mut Outcomes,
) {
    let environment = &case.joint.environment;
    let is_free = hole.is_none_or(|hole| hole > case.diameter + SAME_LENGTH);
    if (environment.rotates || environment.vibration && is_free)
        && !mil_hdbk_5::is_for_moving(fitting_factor)
    {
        let why = "a joint that turns, or is shaken in a hole with clearance, wants a bearing factor, of which the regulation \
                   has no number: state one of 2 or more in place of the fitting factor";
        out.missing(Mode::Bearing, own.place, Need::Method(why));
    }
}

/// Whether the bolts of a connection have a mode together, and the connection looks at it.
fn of_connection(case: &Case, mode: Mode) -> bool {
    case.member.is_some() && matches!(mode, Mode::NetSection | Mode::GrossSection)
}

/// The structural codes are written for steel.
fn of_steel(case: &Case, own: &CasePly, method: PlyMethod, out: &mut Outcomes) {
    if is_of_steel(method)
        && own
            .material
            .is_some_and(|material| !material.is_carbon_steel())
    {
        let why = "the code is written for structural steel, and the ply is of another material";
        outside_code(case, own, why, out);
    }
    // EN 1993-1-8, 1.1 (recalled); the listed steels all are.
    let is_beyond = |material: CaseMaterial| matches!(material, CaseMaterial::Own(own) if own.yield_strength > Some(megapascals(460.0)));
    let part_read = matches!(
        method,
        PlyMethod::Bs5950 | PlyMethod::Is800 | PlyMethod::As4100 | PlyMethod::CsaS16
    );
    if part_read && case.joint.environment.rotates {
        let why = "how a ply bears on a pin that it turns on was not read in the code of the plies";
        out.missing(Mode::Bearing, own.place, Need::Method(why));
    }
    if part_read && own.material.is_some_and(is_beyond) {
        let why = "which steels above 460 N/mm2 the code is written for was not read";
        outside_code(case, own, why, out);
    }
    if method == PlyMethod::En1993 && own.material.is_some_and(is_beyond) {
        let why =
            "EN 1993-1-8 is written for steels up to S460, and the ply is stated to be stronger";
        outside_code(case, own, why, out);
    }
}

fn outside_code(case: &Case, own: &CasePly, why: &'static str, out: &mut Outcomes) {
    for mode in [
        Mode::Bearing,
        Mode::TearOut,
        Mode::NetSection,
        Mode::GrossSection,
    ] {
        if of_connection(case, mode) {
            continue;
        }
        out.missing(mode, own.place, Need::Method(why));
    }
}

/// Whether a mode cannot be worked out without the hole.
fn needs_hole(method: PlyMethod, mode: Mode) -> bool {
    match mode {
        Mode::Bearing => matches!(method, PlyMethod::En1993 | PlyMethod::Is800),
        // Others have no tear-out, or no sections.
        Mode::TearOut => matches!(
            method,
            PlyMethod::MachineDesign { .. } | PlyMethod::Aisc360 { .. } | PlyMethod::As4100
        ),
        Mode::NetSection => !matches!(method, PlyMethod::MilHdbk5 { .. }),
        _ => false,
    }
}

/// What a mode of a ply lacks besides its hole: all of it, whatever else is not known of the ply.
fn without_figures(own: &CasePly, asked: Result<&Asked, &Error>, mode: Mode, out: &mut Outcomes) {
    let answer = asked.map(|asked| asked.in_mode(mode));
    // What the method does not want needs no material.
    if let Ok(Ok(PlyOutcome::NotNeeded(_))) = answer {
        return;
    }
    let of_none = own.material.is_none();
    if of_none && mode != Mode::BoltBearing {
        out.missing(mode, own.place, Need::Material);
    }
    if let Ok(Ok(PlyOutcome::Missing(needs))) = answer {
        for need in needs {
            let of_material = matches!(need, PlyNeed::YieldStrength | PlyNeed::TensileStrength);
            if !(of_none && (of_material || need == PlyNeed::BearingStrength)) {
                out.missing(mode, own.place, needed(own, need));
            }
        }
    }
}

fn in_mode(
    case: &Case,
    own: &CasePly,
    asked: Result<&Asked, &Error>,
    mode: Mode,
    out: &mut Outcomes,
) -> Option<Force> {
    let answer = asked
        .map_err(Clone::clone)
        .and_then(|asked| asked.in_mode(mode));
    match answer {
        Ok(ref answer) => {
            outcome(case, own, mode, answer, out);
            answer.found()?.resistance.at(case.level).ok()
        }
        Err(error) => {
            out.missing(mode, own.place, Need::Refused(error.into()));
            None
        }
    }
}

/// What a room says of a mode.
fn outcome(case: &Case, own: &CasePly, mode: Mode, answer: &PlyOutcome, out: &mut Outcomes) {
    match answer {
        PlyOutcome::Found(found) => {
            out.work_at(own.place, || found.derivation());
            // Behind each other, the bolts of a row load the same strip of the ply.
            // At most 1000: exact.
            #[allow(clippy::cast_precision_loss)]
            let bolts = match mode {
                Mode::NetSection | Mode::GrossSection => case.along() as f64,
                _ => 1.0,
            };
            match found.check(bolts * own.load, case.level, own.number) {
                Ok(check) => out.check(Check {
                    place: own.place,
                    ..check
                }),
                Err(error) => out.missing(mode, own.place, Need::Refused(error.into())),
            }
        }
        PlyOutcome::Missing(needs) => {
            for need in needs {
                out.missing(mode, own.place, needed(own, *need));
            }
        }
        PlyOutcome::NotNeeded(_) => {}
        PlyOutcome::NotGiven(why) => out.missing(mode, own.place, Need::Method(why)),
        PlyOutcome::Nothing(why) => out.find(Finding::NothingLeft {
            place: own.place,
            mode,
            why,
        }),
    }
}

/// What is to be said of a ply where a room lacks a figure: its material if it has none, and the end distance by which that has its
/// bearing strengths.
pub(super) fn needed(own: &CasePly, need: PlyNeed) -> Need {
    match need {
        PlyNeed::YieldStrength | PlyNeed::TensileStrength if own.material.is_none() => {
            Need::Material
        }
        PlyNeed::BearingStrength | PlyNeed::BearingYield
            if own.material.is_some_and(CaseMaterial::has_bearing)
                && own.ply.is_some_and(|ply| ply.end_distance.is_none()) =>
        {
            Need::EndDistance
        }
        _ => of_ply(need),
    }
}

const fn of_ply(need: PlyNeed) -> Need {
    match need {
        PlyNeed::YieldStrength => Need::YieldStrength,
        PlyNeed::TensileStrength => Need::TensileStrength,
        PlyNeed::BearingStrength => Need::BearingStrength,
        PlyNeed::BearingYield => Need::BearingYield,
        PlyNeed::BoltYieldStrength => Need::Method("the grade of the bolt has no yield strength"),
        PlyNeed::BoltTensileStrength => {
            Need::Method("the code of the plies does not know the grade of the bolt")
        }
        PlyNeed::EndDistance => Need::EndDistance,
        PlyNeed::EdgeDistance => Need::EdgeDistance,
        PlyNeed::SlotLength => Need::SlotLength,
        PlyNeed::Width => Need::Width,
    }
}

/// A ply that turns on the bolt bears by the rule of pins, and its end and sides by that of Table 3.9.
fn around_pivot(case: &Case, own: &CasePly, ply: &Ply, out: &mut Outcomes) {
    if case.level != Level::Design {
        let why = "EN 1993-1-8 has pins at the level of design only";
        out.missing(Mode::Bearing, own.place, Need::Method(why));
        return;
    }
    let pin_yield = en_1993::yield_strength(case.strength.grade);
    let Some(pin_yield) = out.attempt(Mode::Bearing, own.place, pin_yield) else {
        return;
    };
    // A ply without a material is missing with its bearing.
    let Some(ply_yield) = ply.yield_strength else {
        return;
    };
    let fy = ply_yield.min(pin_yield);
    let pin = around_pin(ply.thickness, case.diameter, fy, own.load);
    if let Some((mut check, working)) = out.attempt(Mode::Bearing, own.place, pin) {
        check.place = own.place;
        out.work_at(own.place, || working);
        out.check(check);
    }
    let lug = en_1993_lug(
        ply.thickness,
        ply.hole,
        ply_yield,
        own.load,
        [ply.end_distance, ply.edge_distance],
    );
    let Some(lug) = out.attempt(Mode::TearOut, own.place, lug) else {
        return;
    };
    for (need, side) in [Need::EndDistance, Need::EdgeDistance].into_iter().zip(lug) {
        match side {
            None => out.missing(Mode::TearOut, own.place, need),
            Some(mut check) => {
                check.place = own.place;
                out.check(check);
            }
        }
    }
}
