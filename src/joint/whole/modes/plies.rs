//! What each ply bears: bearing, tear-out, net and gross section, distances, holes.

use super::shear::Shear;
use crate::joint::JointPly;
use crate::joint::whole::case::{Case, CasePly};
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need, NotConcerned, Slip};
use crate::parts::SAME_LENGTH;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::pin::{around_pin, en_1993_lug};
use crate::strength::ply::{
    DistanceConditions, DistanceFinding, DistanceStanding, Exposure, Hole, HoleClass, HoleKind,
    HoleRule, Ply, PlyBolt, PlyMethod, PlyNeed, PlyOutcome,
};
use crate::strength::shear::en_yield_strength;
use crate::strength::slip::{SlipHole, SlipMethod};
use crate::tables::galvanic;
use crate::units::Force;

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
    if let (Some(most), Some(bears)) = (shear.bearing_at_most, bears)
        && bears > most
    {
        out.find(Finding::BearingMustGovern { bears, most });
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
    let kind = hole_kind(case, own, out);
    let hole = match (own.ply, own.tapped) {
        (Some(ply), _) => ply.hole,
        // The thread fills its hole.
        (None, _) => Some(case.diameter),
    };
    let details = details(own);
    let mut ply = match own.material {
        Some(material) => Ply::of(material, thickness, hole.unwrap_or(case.diameter)),
        None => Ply::without_strengths(thickness, hole.unwrap_or(case.diameter)),
    };
    ply.hole_kind = kind;
    ply.slot_length = own.ply.and_then(|ply| ply.slot).map(|slot| slot.length);
    [
        ply.end_distance,
        ply.edge_distance,
        ply.pitch,
        ply.gauge,
        ply.width,
    ] = details;
    if hole.is_some() && breaks_out(own, &ply, out) {
        return None;
    }
    neighbours(case, own, &ply, out);
    let method = case.joint.methods.plies;
    of_steel(own, method, out);
    if let PlyMethod::MilHdbk5 { .. } = method {
        let stated = own.ply.and_then(|ply| ply.bearing_strength);
        ply = match (stated, own.material) {
            (None, Some(material)) => ply.with_bearing_of(material),
            _ => Ply {
                bearing_strength: stated,
                ..ply
            },
        };
    }
    // Rows end somewhere: a ply that says how far it is to the next hole only is not one without an end.
    let ended = Ply {
        pitch: ply.pitch.filter(|_| ply.end_distance.is_some()),
        gauge: ply.gauge.filter(|_| ply.edge_distance.is_some()),
        ..ply
    };
    let bolt = PlyBolt::of(&case.strength);
    let mut bears = None;
    for mode in OF_A_PLY {
        if hole.is_none() && needs_hole(method, mode) {
            out.missing(mode, own.place, Need::Hole);
            continue;
        }
        if let Some(force) = in_mode(case, own, &ended, bolt, mode, out)
            && mode == Mode::Bearing
        {
            bears = Some(force);
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
        let at_the_limit = matches!(
            case.joint.methods.slip,
            Slip::Resisted(SlipMethod::En1993 {
                serviceability: false,
                ..
            })
        );
        if at_the_limit && hole.is_some() && own.material.is_some() {
            let net = ply.net_section_without_slip(case.diameter, method);
            if let Some(net) = out.attempt(Mode::NetSection, own.place, net) {
                outcome(case, own, Mode::NetSection, &net, out);
            }
        }
        if case.joint.environment.rotates {
            around_pivot(case, own, &ply, out);
        }
    }
    if hole.is_some() {
        distances(case, own, &ply, out);
    } else {
        out.missing(Mode::Distances, own.place, Need::Hole);
    }
    bears
}

/// The structural codes are written for steel.
fn of_steel(own: &CasePly, method: PlyMethod, out: &mut Outcomes) {
    if matches!(method, PlyMethod::Aisc360 { .. } | PlyMethod::En1993)
        && own
            .material
            .is_some_and(|material| !material.is_carbon_steel())
    {
        let why = "the code is written for structural steel, and the ply is of another material";
        for mode in [
            Mode::Bearing,
            Mode::TearOut,
            Mode::NetSection,
            Mode::GrossSection,
        ] {
            out.missing(mode, own.place, Need::Method(why));
        }
    }
}

/// Whether a hole reaches beyond its ply or into the next hole: a fault, not a question.
fn breaks_out(own: &CasePly, ply: &Ply, out: &mut Outcomes) -> bool {
    let half = 0.5 * ply.hole;
    let mut found = false;
    for (distance, least, mode, why) in [
        (
            ply.end_distance,
            half,
            Mode::TearOut,
            "the hole reaches the end of the ply",
        ),
        (
            ply.pitch,
            ply.hole,
            Mode::TearOut,
            "the hole reaches the next one along the load",
        ),
        (
            ply.edge_distance,
            half,
            Mode::NetSection,
            "the hole reaches the side of the ply",
        ),
        (
            ply.gauge,
            ply.hole,
            Mode::NetSection,
            "the hole reaches the next one across the load",
        ),
        (
            ply.width,
            ply.hole,
            Mode::NetSection,
            "the hole takes the whole width",
        ),
    ] {
        if distance.is_some_and(|distance| distance <= least) {
            let place = own.place;
            out.find(Finding::NothingLeft { place, mode, why });
            found = true;
        }
    }
    found
}

/// End, edge, pitch, gauge and width, as far as they are given.
fn details(own: &CasePly) -> [Option<crate::units::Length>; 5] {
    match (own.ply, own.tapped) {
        (Some(ply), _) => [
            ply.end_distance,
            ply.edge_distance,
            ply.pitch,
            ply.gauge,
            ply.width,
        ],
        (None, Some(part)) => [
            part.end_distance,
            part.edge_distance,
            None,
            None,
            part.width,
        ],
        (None, None) => [None; 5],
    }
}

/// Whether a mode cannot be worked out without the hole.
fn needs_hole(method: PlyMethod, mode: Mode) -> bool {
    match mode {
        Mode::Bearing => method == PlyMethod::En1993,
        // Others have no tear-out, or no sections.
        Mode::TearOut => matches!(
            method,
            PlyMethod::MachineDesign { .. } | PlyMethod::Aisc360 { .. }
        ),
        Mode::NetSection => !matches!(method, PlyMethod::MilHdbk5 { .. }),
        _ => false,
    }
}

fn in_mode(
    case: &Case,
    own: &CasePly,
    ply: &Ply,
    bolt: PlyBolt,
    mode: Mode,
    out: &mut Outcomes,
) -> Option<Force> {
    if own.material.is_none() && mode != Mode::BoltBearing {
        // What the method does not want needs no material.
        let answer = ply.in_mode(mode, case.diameter, bolt, case.joint.methods.plies);
        if let Ok(PlyOutcome::NotNeeded(_)) = answer {
            return None;
        }
        out.missing(mode, own.place, Need::Material);
        return None;
    }
    match ply.in_mode(mode, case.diameter, bolt, case.joint.methods.plies) {
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
                Mode::NetSection | Mode::GrossSection => case.joint.pattern.along() as f64,
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
                out.missing(mode, own.place, of_ply(*need));
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

const fn of_ply(need: PlyNeed) -> Need {
    match need {
        PlyNeed::YieldStrength => Need::YieldStrength,
        PlyNeed::TensileStrength => Need::TensileStrength,
        PlyNeed::BearingStrength => Need::BearingStrength,
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

/// The rule of a method for kinds of holes.
pub(super) const fn hole_rule(method: PlyMethod) -> HoleRule {
    match method {
        PlyMethod::Aisc360 { edition, .. } => HoleRule::Aisc360 { edition },
        PlyMethod::En1993 => HoleRule::En1090,
        _ => HoleRule::MachineDesign,
    }
}

fn classified(
    case: &Case,
    own: &CasePly,
    rule: HoleRule,
) -> Option<Result<HoleClass, crate::error::Error>> {
    let ply = own.ply?;
    let hole = Hole {
        diameter: ply.hole?,
        slot: ply.slot,
    };
    Some(hole.classify(case.thread, rule))
}

/// The kind of a ply's hole, as far as it is known and has one.
pub(super) fn kind_of(case: &Case, ply: &JointPly, rule: HoleRule) -> Option<HoleKind> {
    let hole = Hole {
        diameter: ply.hole?,
        slot: ply.slot,
    };
    match hole.classify(case.thread, rule) {
        Ok(HoleClass::Known { kind, .. }) => Some(kind),
        _ => None,
    }
}

/// Whether the bolt enters a hole on which it does not bear.
fn passes(case: &Case, own: &CasePly, out: &mut Outcomes) {
    let rule = hole_rule(case.joint.methods.plies);
    if let Some(Ok(HoleClass::TooSmall { least })) = classified(case, own, rule) {
        let hole = own.ply.and_then(|ply| ply.hole).unwrap_or_default();
        out.find(Finding::HoleTooSmall {
            place: own.place,
            hole,
            least,
        });
    }
    // Packing in a joint that is loaded across carries nothing.
    if case.is_sheared() {
        return;
    }
    let thickness = own.thickness.unwrap_or(case.diameter);
    let hole = match own.ply {
        Some(ply) => ply.hole,
        None => Some(case.diameter),
    };
    let Some(hole) = hole else {
        out.missing(Mode::Distances, own.place, Need::Hole);
        return;
    };
    let mut ply = own.material.map_or_else(
        || Ply::without_strengths(thickness, hole),
        |material| Ply::of(material, thickness, hole),
    );
    [
        ply.end_distance,
        ply.edge_distance,
        ply.pitch,
        ply.gauge,
        ply.width,
    ] = details(own);
    let collides = neighbours(case, own, &ply, out);
    if !breaks_out(own, &ply, out) && !collides {
        too_near(case, own, &ply, out);
    }
}

/// Whether washers or heads of neighbouring bolts would lie on each other.
fn neighbours(case: &Case, own: &CasePly, ply: &Ply, out: &mut Outcomes) -> bool {
    let mut widest = case.diameter;
    for seat in &case.seats {
        let face = seat.face.as_ref().and_then(|face| face.as_ref().ok());
        let washer = seat.washer.flatten().map(|washer| washer.outer_min);
        widest = face.map_or(widest, |face| widest.max(face.outer_min));
        widest = washer.map_or(widest, |outer| widest.max(outer));
    }
    let mut found = false;
    for distance in [ply.pitch, ply.gauge] {
        if distance.is_some_and(|distance| distance < widest) {
            out.find(Finding::NothingLeft {
                place: own.place,
                mode: Mode::Distances,
                why: "heads or washers of neighbouring bolts would lie on each other",
            });
            found = true;
        }
    }
    found
}

/// Distances that are given and too short by the code of the plies, where no load across asks for the others.
fn too_near(case: &Case, own: &CasePly, ply: &Ply, out: &mut Outcomes) {
    if own.tapped.is_some() {
        return;
    }
    let conditions = DistanceConditions {
        finish: own.ply.and_then(|ply| ply.edge_finish),
        exposure: Some(Exposure::Sheltered),
    };
    let judged = ply.distances(case.diameter, case.joint.methods.plies.into(), conditions);
    let Ok(judged) = judged else { return };
    // The codes' least distances do not ask which way the load acts.
    if matches!(
        case.joint.methods.plies,
        PlyMethod::Aisc360 { .. } | PlyMethod::En1993
    ) {
        for (need, distance) in [
            (Need::EndDistance, ply.end_distance),
            (Need::EdgeDistance, ply.edge_distance),
        ] {
            if distance.is_none() {
                out.missing(Mode::Distances, own.place, need);
            }
        }
    }
    for found in judged.findings {
        if found.standing != DistanceStanding::Undecided {
            too_short(own, &found, out);
        }
    }
}

/// What kind of hole a ply has, by the code of the plies; a hole that is none of its kinds is at fault.
fn hole_kind(case: &Case, own: &CasePly, out: &mut Outcomes) -> HoleKind {
    const MODE: Mode = Mode::Holes;
    let rule = hole_rule(case.joint.methods.plies);
    if own.tapped.is_some() {
        return HoleKind::Standard;
    }
    let Some(class) = classified(case, own, rule) else {
        out.missing(MODE, own.place, Need::Hole);
        return HoleKind::Standard;
    };
    match out.attempt(MODE, own.place, class) {
        None => HoleKind::Standard,
        Some(HoleClass::Known { kind, cautions, .. }) => {
            if kind != HoleKind::Standard {
                out.warn(cautions);
            }
            // AISC 360 J3.2: oversize and slots along the load are for joints that must not slip.
            if matches!(rule, HoleRule::Aisc360 { .. })
                && kind.needs_slip_critical()
                && case.joint.methods.slip == Slip::Permitted
            {
                out.find(Finding::HoleWantsSlip { place: own.place });
            }
            kind
        }
        Some(HoleClass::TooSmall { least }) => {
            let hole = own.ply.and_then(|ply| ply.hole).unwrap_or_default();
            out.find(Finding::HoleTooSmall {
                place: own.place,
                hole,
                least,
            });
            HoleKind::Standard
        }
        Some(HoleClass::TooLarge { greatest }) => {
            let hole = own.ply.and_then(|ply| ply.hole).unwrap_or_default();
            out.find(Finding::HoleTooLarge {
                place: own.place,
                hole,
                greatest,
            });
            HoleKind::Oversize
        }
        Some(HoleClass::NotGiven(why)) => {
            out.missing(MODE, own.place, Need::Method(why));
            HoleKind::Standard
        }
    }
}

/// The worst of the holes for a slip method, by the rule of its own code.
pub(super) fn slip_hole(case: &Case, method: SlipMethod, out: &mut Outcomes) -> SlipHole {
    let rule = match method {
        SlipMethod::Aisc360 { edition, .. } => HoleRule::Aisc360 { edition },
        SlipMethod::En1993 { .. } => HoleRule::En1090,
        _ => hole_rule(case.joint.methods.plies),
    };
    let mut holes = alloc::vec::Vec::with_capacity(case.plies.len());
    for own in case.plies.iter().filter(|own| own.tapped.is_none()) {
        match classified(case, own, rule) {
            None => out.missing(Mode::Slip, own.place, Need::Hole),
            Some(Ok(HoleClass::Known { kind, .. })) => holes.push(kind.slip_hole()),
            Some(Ok(HoleClass::NotGiven(why))) => {
                out.missing(Mode::Slip, own.place, Need::Method(why));
            }
            // What is no hole of the code is at fault with the holes.
            Some(_) => holes.push(SlipHole::Oversize),
        }
    }
    method.worst_hole(holes)
}

fn distances(case: &Case, own: &CasePly, ply: &Ply, out: &mut Outcomes) {
    const MODE: Mode = Mode::Distances;
    let weather = case.joint.environment.exposure == galvanic::Exposure::Harsh;
    let conditions = DistanceConditions {
        finish: own.ply.and_then(|ply| ply.edge_finish),
        exposure: Some(if weather {
            Exposure::Corrosive
        } else {
            Exposure::Sheltered
        }),
    };
    let judged = ply.distances(case.diameter, case.joint.methods.plies.into(), conditions);
    let Some(judged) = out.attempt(MODE, own.place, judged) else {
        return;
    };
    for need in &judged.missing {
        out.missing(MODE, own.place, of_ply(*need));
    }
    // Every ply of a joint has an end and sides, whatever the distances between its holes.
    for (need, distance) in [
        (Need::EndDistance, ply.end_distance),
        (Need::EdgeDistance, ply.edge_distance),
    ] {
        if distance.is_none() {
            out.missing(MODE, own.place, need);
        }
    }
    let pattern = case.joint.pattern;
    if own.ply.is_some() && pattern.along() > 1 && ply.pitch.is_none() {
        out.missing(MODE, own.place, Need::Pitch);
    }
    if own.ply.is_some() && pattern.across() > 1 && ply.gauge.is_none() {
        out.missing(MODE, own.place, Need::Gauge);
    }
    for found in judged.findings {
        out.warn(found.cautions);
        if found.standing == DistanceStanding::Undecided {
            out.missing(MODE, own.place, Need::Method(found.clause));
            continue;
        }
        too_short(own, &found, out);
    }
}

fn too_short(own: &CasePly, found: &DistanceFinding, out: &mut Outcomes) {
    out.find(Finding::Distance {
        place: own.place,
        kind: found.kind,
        distance: found.distance,
        least: found.least,
        greatest: found.greatest,
        permitted: found.standing == DistanceStanding::Permitted,
        clause: found.clause,
    });
}

/// A ply that turns on the bolt bears by the rule of pins, and its end and sides by that of Table 3.9.
fn around_pivot(case: &Case, own: &CasePly, ply: &Ply, out: &mut Outcomes) {
    if case.level != Level::Design {
        let why = "EN 1993-1-8 has pins at the level of design only";
        out.missing(Mode::Bearing, own.place, Need::Method(why));
        return;
    }
    let pin_yield = en_yield_strength(case.strength.grade);
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
