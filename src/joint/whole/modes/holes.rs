//! Holes of plies, and their distances: by the code of the plies, and by plain geometry.

use super::plies::needed;
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::joint::JointPly;
use crate::joint::whole::case::{Case, CasePly};
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need, Slip};
use crate::strength::check::Mode;
use crate::strength::ply::{
    DistanceConditions, DistanceFinding, DistanceStanding, Exposure, Hole, HoleClass, HoleKind,
    HoleRule, Ply, PlyDistances, PlyMethod,
};
use crate::strength::slip::{SlipHole, SlipMethod};
use crate::tables::{galvanic, methods};
use crate::units::Length;

/// Whether a hole reaches beyond its ply or into the next hole: a fault, not a question.
pub(super) fn breaks_out(own: &CasePly, ply: &Ply, out: &mut Outcomes) -> bool {
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

/// The hole of a ply; of a tapped part the thread fills it, or that of its insert.
pub(super) fn hole_of(case: &Case, own: &CasePly) -> Option<Length> {
    let lined = case.insert.map(|insert| insert.hole().major_diameter);
    match own.ply {
        Some(ply) => ply.hole,
        None => lined.or(Some(case.diameter)),
    }
}

/// A ply around a hole with what is told of it, which the rooms judge.
pub(super) fn ply_around(own: &CasePly, thickness: Length, hole: Length) -> Ply {
    let mut ply = match own.material {
        Some(material) => material.ply(thickness, hole),
        None => Ply::without_strengths(thickness, hole),
    };
    [
        ply.end_distance,
        ply.edge_distance,
        ply.pitch,
        ply.gauge,
        ply.width,
    ] = details(own);
    ply
}

/// End, edge, pitch, gauge and width, as far as they are given.
fn details(own: &CasePly) -> [Option<Length>; 5] {
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

/// Whether a method is that of a structural code, written for steel.
pub(super) const fn is_of_steel(method: PlyMethod) -> bool {
    matches!(
        method,
        PlyMethod::Aisc360 { .. }
            | PlyMethod::En1993
            | PlyMethod::Bs5950
            | PlyMethod::Is800
            | PlyMethod::As4100
            | PlyMethod::CsaS16
    )
}

/// The rule of a method for kinds of holes.
pub(super) const fn hole_rule(method: PlyMethod) -> HoleRule {
    match method {
        PlyMethod::Aisc360 { edition, .. } => HoleRule::Aisc360 { edition },
        PlyMethod::En1993 => HoleRule::En1090,
        PlyMethod::Bs5950 | PlyMethod::Is800 | PlyMethod::As4100 | PlyMethod::CsaS16 => {
            HoleRule::Steelwork
        }
        _ => HoleRule::MachineDesign,
    }
}

fn classified(case: &Case, ply: &JointPly, rule: HoleRule) -> Option<Result<HoleClass, Error>> {
    let hole = Hole {
        diameter: ply.hole?,
        slot: ply.slot,
    };
    Some(hole.classify(case.thread, rule))
}

/// The kind of a ply's hole, as far as it is known and has one.
pub(super) fn kind_of(case: &Case, ply: &JointPly, rule: HoleRule) -> Option<HoleKind> {
    match classified(case, ply, rule)? {
        Ok(HoleClass::Known { kind, .. }) => Some(kind),
        _ => None,
    }
}

/// Whether the bolt enters a hole on which it does not bear.
pub(super) fn passes(case: &Case, own: &CasePly, out: &mut Outcomes) {
    let rule = hole_rule(case.joint.methods.plies);
    if let Some(Ok(HoleClass::TooSmall { least })) =
        own.ply.and_then(|ply| classified(case, ply, rule))
    {
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
    let hole = hole_of(case, own);
    let ply = ply_around(own, thickness, hole.unwrap_or(case.diameter));
    how_far_apart(case, own, out);
    let collides = hole.is_some() && neighbours(case, own, &ply, out);
    let is_cut = hole.is_some() && breaks_out(own, &ply, out);
    if own.tapped.is_some() || is_cut || collides {
        return;
    }
    // The codes' least distances do not ask which way the load acts.
    if is_of_steel(case.joint.methods.plies) {
        ends_unsaid(own, &ply, out);
    }
    if hole.is_none() {
        out.missing(Mode::Distances, own.place, Need::Hole);
    }
    too_near(case, own, &ply, hole.is_some(), out);
}

/// Several bolts must not lie on each other, whatever loads them: one ply at least says how far apart they are.
fn how_far_apart(case: &Case, own: &CasePly, out: &mut Outcomes) {
    let pattern = case.joint.pattern;
    let plies = case.joint.stack.plies();
    for (count, is_said, need) in [
        (
            pattern.along(),
            plies.iter().any(|ply| ply.pitch.is_some()),
            Need::Pitch,
        ),
        (
            pattern.across(),
            plies.iter().any(|ply| ply.gauge.is_some()),
            Need::Gauge,
        ),
    ] {
        if own.ply.is_some() && count > 1 && !is_said {
            out.missing(Mode::Distances, own.place, need);
        }
    }
}

/// Whether washers or heads of neighbouring bolts would lie on each other.
pub(super) fn neighbours(case: &Case, own: &CasePly, ply: &Ply, out: &mut Outcomes) -> bool {
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
    let has_neighbours = ply.pitch.or(ply.gauge).is_some();
    if has_neighbours && super::seat::is_own_width_unsaid(case) {
        let why = "how wide a head or nut of one's own is is not stated: neighbouring ones may lie on each other";
        out.missing(Mode::Distances, own.place, Need::Method(why));
    }
    found
}

/// Distances that are given and too short by the code of the plies, where no load across asks for the others.
fn too_near(case: &Case, own: &CasePly, ply: &Ply, has_hole: bool, out: &mut Outcomes) {
    let method = case.joint.methods.plies;
    // Refused is a hole that the bolt does not enter, which is at fault already.
    let Ok(judged) = judged(case, own, ply) else {
        return;
    };
    let of_code = is_of_steel(method);
    if of_code {
        for need in &judged.missing {
            out.missing(Mode::Distances, own.place, needed(own, *need));
        }
    }
    for found in judged.findings.into_iter().filter(|_| has_hole) {
        if found.standing != DistanceStanding::Undecided {
            too_short(own, &found, out);
        } else if of_code && (found.least.is_some() || found.kind.is_edge()) {
            // How far apart bolts may stand goes by the member that they hold together, and nothing is to be held across here.
            out.missing(Mode::Distances, own.place, undecided(own, method, &found));
        }
    }
}

/// The distances of a ply by the code of the plies.
fn judged(case: &Case, own: &CasePly, ply: &Ply) -> Result<PlyDistances, Error> {
    let weather = case.joint.environment.exposure == galvanic::Exposure::Harsh;
    let conditions = DistanceConditions {
        finish: own.ply.and_then(|ply| ply.edge_finish),
        exposure: Some(if weather {
            Exposure::Corrosive
        } else {
            Exposure::Sheltered
        }),
    };
    ply.distances(case.diameter, case.joint.methods.plies.into(), conditions)
}

/// What kind of hole a ply has, by the code of the plies; a hole that is none of its kinds is at fault.
pub(super) fn hole_kind(case: &Case, own: &CasePly, out: &mut Outcomes) -> HoleKind {
    const MODE: Mode = Mode::Holes;
    let rule = hole_rule(case.joint.methods.plies);
    if own.tapped.is_some() {
        return HoleKind::Standard;
    }
    let Some(class) = own.ply.and_then(|ply| classified(case, ply, rule)) else {
        out.missing(MODE, own.place, Need::Hole);
        return HoleKind::Standard;
    };
    match out.attempt(MODE, own.place, class) {
        None => HoleKind::Standard,
        Some(HoleClass::Known { kind, cautions, .. }) => {
            if kind != HoleKind::Standard || rule == HoleRule::Steelwork {
                out.warn(&cautions);
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
        Some(HoleClass::TooLarge {
            size: hole,
            greatest,
        }) => {
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
        method if method.counts_on_its_own() => HoleRule::Steelwork,
        _ => hole_rule(case.joint.methods.plies),
    };
    let mut holes = alloc::vec::Vec::with_capacity(case.plies.len());
    for own in case.plies.iter().filter(|own| own.tapped.is_none()) {
        match own.ply.and_then(|ply| classified(case, ply, rule)) {
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

/// The distances of a ply that bears; without its hole what else they lack.
pub(super) fn distances(case: &Case, own: &CasePly, ply: &Ply, has_hole: bool, out: &mut Outcomes) {
    const MODE: Mode = Mode::Distances;
    let method = case.joint.methods.plies;
    let Some(judged) = out.attempt(MODE, own.place, judged(case, own, ply)) else {
        return;
    };
    if !has_hole {
        out.missing(MODE, own.place, Need::Hole);
    }
    for need in &judged.missing {
        out.missing(MODE, own.place, needed(own, *need));
    }
    unsaid(case, own, ply, out);
    if !has_hole {
        return;
    }
    if method == PlyMethod::Is800 {
        let recalled = Caution::of_method(methods::IS_800_2007_10_2);
        out.warn(&Cautions::default().with(recalled));
    }
    for found in judged.findings {
        out.warn(&found.cautions);
        if found.standing == DistanceStanding::Undecided {
            out.missing(MODE, own.place, undecided(own, method, &found));
            continue;
        }
        too_short(own, &found, out);
    }
}

/// Distances that nobody said.
fn unsaid(case: &Case, own: &CasePly, ply: &Ply, out: &mut Outcomes) {
    // Every ply of a joint has an end and sides, whatever the distances between its holes.
    ends_unsaid(own, ply, out);
    // A connection knows where its other holes are.
    if case.member.is_some() {
        return;
    }
    let pattern = case.joint.pattern;
    if own.ply.is_some() && pattern.along() > 1 && ply.pitch.is_none() {
        out.missing(Mode::Distances, own.place, Need::Pitch);
    }
    if own.ply.is_some() && pattern.across() > 1 && ply.gauge.is_none() {
        out.missing(Mode::Distances, own.place, Need::Gauge);
    }
}

fn ends_unsaid(own: &CasePly, ply: &Ply, out: &mut Outcomes) {
    for (need, distance) in [
        (Need::EndDistance, ply.end_distance),
        (Need::EdgeDistance, ply.edge_distance),
    ] {
        if distance.is_none() {
            out.missing(Mode::Distances, own.place, need);
        }
    }
}

/// What would decide a distance that is neither long enough in any case nor too short in every one.
fn undecided(own: &CasePly, method: PlyMethod, found: &DistanceFinding) -> Need {
    let finish = own.ply.and_then(|ply| ply.edge_finish);
    if found.kind.is_edge() && finish.is_none() && matches!(method, PlyMethod::Aisc360 { .. }) {
        return Need::EdgeFinish;
    }
    Need::Distance(found.clause)
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
