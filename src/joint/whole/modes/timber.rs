//! The bolt in timber: yield of timber and bolt together, holes, distances, washers, rows.

use crate::tables::methods;
use alloc::vec::Vec;

use super::seat;
use crate::error::Error;
use crate::joint::JointPly;
use crate::joint::whole::case::{Case, CasePly};
use crate::joint::whole::material::CaseTimber;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need, NotConcerned};
use crate::strength::check::{Mode, Place};
use crate::strength::timber::{
    BoltRow, Judged, MemberOnBolt, Requirement, TimberConnection, TimberDistances, TimberMember,
    TimberMethod, TimberWasher, en_axial_capacity, nds_bearing_diameter,
};
use crate::tables::galvanic::Exposure;
use crate::units::{Force, Length, Ratio, from_base};

const MODE: Mode = Mode::TimberYield;

pub(super) fn check(case: &Case, out: &mut Outcomes) {
    // Where a method for timber is chosen, what nobody says may be timber, and timber wants its washers.
    let outer = case.plies.first().into_iter().chain(case.plies.last());
    let unknown = outer.filter(|own| own.timber.is_none() && own.material.is_none());
    if case.joint.methods.timber.is_some() {
        for own in unknown {
            out.missing(Mode::Washers, own.place, Need::Material);
        }
    }
    if !case.has_timber() {
        out.not_concerned(MODE, NotConcerned::NoTimber);
        return;
    }
    for ply in &case.plies {
        if let Some(CaseTimber::Listed(row)) = ply.timber {
            out.warn(&row.cautions());
        }
    }
    let method = case.joint.methods.timber;
    // Head and nut want their washers whatever the load.
    match method {
        Some(method) => washers(case, method, out),
        None => out.missing(Mode::Washers, Place::Joint, Need::TimberMethod),
    }
    if !case.is_sheared() {
        out.not_concerned(MODE, NotConcerned::NoLoadAcross);
        return;
    }
    unknown_modes(case, out);
    wet(case, method, out);
    let Some(method) = method else {
        for mode in [MODE, Mode::Distances, Mode::Holes] {
            out.missing(mode, Place::Joint, Need::TimberMethod);
        }
        return;
    };
    let Some(joint) = connection(case, method, out) else {
        not_judged(case, method, out);
        return;
    };
    let details = details(case, &joint, method, out);
    let Some(geometry) = out.attempt(Mode::Distances, Place::Joint, details) else {
        return;
    };
    let Some(group) = row(case, &joint, method, out) else {
        return;
    };
    let method = rope(case, method, out);
    let found = joint
        .resistance(&case.strength, method)
        .and_then(|found| found.reduced(geometry, group));
    let Some(found) = out.attempt(MODE, Place::Joint, found) else {
        return;
    };
    out.work(|| found.derivation());
    let loads = case.planes.iter().map(|plane| plane.load);
    let check = found.check(loads.sum(), case.level);
    out.try_check(MODE, Place::Joint, check);
}

/// Wet timber bears less (NDS 2018, Table 11.3.3; EN 1995-1-1, Table 3.1: at most 0.9 in service class 3).
fn wet(case: &Case, method: Option<TimberMethod>, out: &mut Outcomes) {
    if case.joint.environment.exposure != Exposure::Harsh {
        return;
    }
    let shown = matches!(method, Some(TimberMethod::En1995 { kmod, .. }) if kmod <= 0.9);
    if method.is_some() && !shown {
        let why = "in the weather timber bears less: nobody says that the factor has that in it";
        out.missing(MODE, Place::Joint, Need::Method(why));
    }
}

/// What nobody here has a rule for.
fn unknown_modes(case: &Case, out: &mut Outcomes) {
    for ply in case
        .plies
        .iter()
        .filter(|ply| ply.timber.is_some() && ply.pulls())
    {
        out.missing(
            Mode::NetSection,
            ply.place,
            Need::Method("no method here knows the net section of timber"),
        );
        out.missing(
            Mode::TearOut,
            ply.place,
            Need::Method("row shear, block shear and splitting of timber are not known here"),
        );
    }
}

/// Two plies, or three with a plane on both sides of the middle one; all of them carry. Beside packing the bolt turns as the
/// equations do not have it.
fn connection(case: &Case, method: TimberMethod, out: &mut Outcomes) -> Option<TimberConnection> {
    let stack = &case.joint.stack;
    let gaps = case
        .planes
        .iter()
        .filter_map(|plane| stack.gap_after(plane.after_ply));
    let gap = gaps.fold(Length::default(), |widest, gap| widest.max(gap.max));
    let planes: Vec<usize> = case.planes.iter().map(|plane| plane.after_ply).collect();
    let (side, main, far) = match (case.plies.as_slice(), planes.as_slice()) {
        ([side, main], [1]) => (side, main, None),
        ([side, main, far], [1, 2]) => (side, main, Some(far)),
        _ => {
            let why = "only two plies, or three with a shear plane on both sides of the middle one, are known";
            out.missing(MODE, Place::Joint, Need::Method(why));
            return None;
        }
    };
    if case.plies.iter().any(|ply| !ply.pulls()) {
        let why = "packing beside timber is in no equation that is known here";
        out.missing(MODE, Place::Joint, Need::Method(why));
        return None;
    }
    // The hinges that the equations have are those of a joint that is alike on both sides.
    if let [first, second] = case.planes.as_slice() {
        if (first.share - second.share).abs() > 1e-9 {
            let why = "timber of which one plane takes more than the other is in no equation that is known here";
            out.missing(MODE, Place::Joint, Need::Method(why));
            return None;
        }
    }
    let side = member(side, MODE, out);
    let main = member(main, MODE, out);
    let far_side = far.map(|far| member(far, MODE, out));
    let diameter = bearing_diameter(case, method, out);
    Some(TimberConnection {
        diameter: diameter?,
        side: side?,
        main: main?,
        far_side: match far_side {
            None => None,
            Some(far) => Some(far?),
        },
        gap,
    })
}

/// The ply as a member of a timber joint.
fn member(own: &CasePly, mode: Mode, out: &mut Outcomes) -> Option<TimberMember> {
    let Some(thickness) = own.thickness else {
        let why = "a ply around a sleeve bears on the sleeve";
        out.missing(mode, own.place, Need::Method(why));
        return None;
    };
    if let Some(timber) = own.timber {
        let Some(angle) = own.ply.and_then(|ply| ply.grain_angle) else {
            out.missing(mode, own.place, Need::GrainAngle);
            return None;
        };
        return Some(timber.member(thickness, angle));
    }
    if own.tapped.is_some() {
        let why = "timber on a tapped part: how far a screw is held there is not known here";
        out.missing(mode, own.place, Need::Method(why));
        return None;
    }
    let Some(material) = own.material else {
        out.missing(mode, own.place, Need::Material);
        return None;
    };
    let hole = own.ply.and_then(|ply| ply.hole);
    if hole.is_none() {
        out.missing(mode, own.place, Need::Hole);
    }
    // Of some steels the strength is that of a thickness.
    let material = out.attempt(mode, own.place, material.at_thickness(thickness))?;
    if material.breaks.is_none() {
        out.missing(mode, own.place, Need::TensileStrength);
    }
    Some(TimberMember::steel(thickness, material.breaks?, hole?))
}

/// The diameter that bears: NDS takes the root where thread fills more than a quarter of a member.
fn bearing_diameter(case: &Case, method: TimberMethod, out: &mut Outcomes) -> Option<Length> {
    let TimberMethod::Nds { .. } = method else {
        return Some(case.diameter);
    };
    // From under the head outward, every length at its greatest.
    let stack = &case.joint.stack;
    let body = case.candidate.screw.body_length_min;
    let mut at = stack
        .washers_under_head()
        .iter()
        .fold(Length::default(), |sum, washer| sum + washer.thickness.max);
    if let Some(washer) = stack.washer_to_add_under_head() {
        for _ in 0..case.candidate.washers_added_under_head {
            at += washer.thickness.max;
        }
    }
    let mut members = Vec::with_capacity(case.plies.len());
    for (ply, number) in stack.plies().iter().zip(1..) {
        let end = at + ply.thickness.max;
        let member = MemberOnBolt::between(at, end, body);
        members.push(out.attempt(MODE, Place::Ply(number), member)?);
        at = end
            + stack
                .gap_after(number)
                .map_or(Length::default(), |gap| gap.max);
    }
    let found = nds_bearing_diameter(case.thread, &members);
    let found = out.attempt(MODE, Place::Bolt(1), found)?;
    out.warn(&found.cautions());
    Some(found.diameter)
}

/// Where the members make no connection that is known, holes are judged all the same, and distances are not: what
/// they must be depends on the members.
fn not_judged(case: &Case, method: TimberMethod, out: &mut Outcomes) {
    for own in &case.plies {
        let (Some(ply), Some(_)) = (own.ply, own.timber) else {
            continue;
        };
        // Whatever they must be, they are asked for.
        for (need, distance) in [
            (Need::EndDistance, ply.end_distance),
            (Need::EdgeDistance, ply.edge_distance),
        ] {
            if distance.is_none() {
                out.missing(Mode::Distances, own.place, need);
            }
        }
        several(case, own.place, ply, out);
        if ply.hole.is_none() {
            out.missing(Mode::Holes, own.place, Need::Hole);
        }
        let Some(member) = member(own, Mode::Holes, out) else {
            out.missing(Mode::Distances, own.place, Need::GrainAngle);
            continue;
        };
        let why = "the distances are judged with the yield of the joint, which is not";
        out.missing(Mode::Distances, own.place, Need::Method(why));
        let rule = member.hole_rule(ply.hole, case.diameter, method);
        if let Some(rule) = out.attempt(Mode::Holes, own.place, rule) {
            judged(own.place, &rule, Mode::Holes, out);
        }
    }
}

/// Holes and distances of every member; the share of the load that short distances leave.
fn details(
    case: &Case,
    joint: &TimberConnection,
    method: TimberMethod,
    out: &mut Outcomes,
) -> Result<Ratio, Error> {
    let mut geometry: Ratio = from_base(1.0);
    let slenderness = joint.slenderness(case.diameter)?;
    for own in &case.plies {
        let (Some(ply), Some(member)) = (own.ply, member(own, Mode::Holes, out)) else {
            continue;
        };
        let rule = member.hole_rule(ply.hole, case.diameter, method)?;
        judged(own.place, &rule, Mode::Holes, out);
        if own.timber.is_none() {
            continue;
        }
        let distances = distances(case, ply);
        let found = distances.judged(&member, case.diameter, slenderness, method)?;
        for rule in &found.rules {
            judged(own.place, rule, Mode::Distances, out);
        }
        several(case, own.place, ply, out);
        if found.geometry < geometry {
            geometry = found.geometry;
        }
    }
    Ok(geometry)
}

fn distances(case: &Case, ply: &JointPly) -> TimberDistances {
    // At most 1000 rows: exact.
    #[allow(clippy::cast_precision_loss)]
    let rows = case.across_count() as f64;
    TimberDistances {
        end: ply.end_distance,
        edge: ply.edge_distance,
        pitch: ply.pitch,
        gauge: ply.gauge,
        row_spread: ply
            .gauge
            .filter(|_| case.across_count() > 1)
            .map(|gauge| (rows - 1.0) * gauge),
        ..TimberDistances::default()
    }
}

/// Several bolts have distances from each other.
fn several(case: &Case, place: Place, ply: &JointPly, out: &mut Outcomes) {
    if case.along() > 1 && ply.pitch.is_none() {
        out.missing(Mode::Distances, place, Need::Pitch);
    }
    if case.across_count() > 1 && ply.gauge.is_none() {
        out.missing(Mode::Distances, place, Need::Gauge);
    }
}

/// What one rule of detail says.
fn judged(place: Place, rule: &Requirement, mode: Mode, out: &mut Outcomes) {
    out.in_order(mode);
    match rule.judged() {
        Judged::Missing => out.missing(mode, place, Need::of_timber(rule.fact)),
        Judged::TooSmall | Judged::TooGreat => {
            out.warn(&rule.cautions());
            out.find(Finding::TimberDetail {
                place,
                fact: rule.fact,
                own: rule.own.unwrap_or_default(),
                least: rule.least,
                greatest: rule.greatest,
                clause: rule.clause,
            });
        }
        Judged::Reduces => out.warn(&rule.cautions()),
        _ => {}
    }
}

/// What each bolt of a row still carries.
fn row(
    case: &Case,
    joint: &TimberConnection,
    method: TimberMethod,
    out: &mut Outcomes,
) -> Option<Ratio> {
    let pitches = case.joint.stack.plies().iter().filter_map(|ply| ply.pitch);
    let row = BoltRow {
        bolts: u32::try_from(case.along()).ok(),
        pitch: pitches.reduce(Length::min),
        ..BoltRow::default()
    };
    let found = out.attempt(MODE, Place::Joint, row.factor(joint, case.diameter, method))?;
    out.warn(&found.cautions);
    for fact in &found.missing {
        out.missing(MODE, Place::Joint, Need::of_timber(*fact));
    }
    found.share
}

/// The sides on which head or nut press on timber, with the washer there.
fn pressed<'a>(case: &'a Case) -> impl Iterator<Item = (Place, &'a CasePly<'a>)> {
    let first = case.plies.first().map(|ply| (Place::Head, ply));
    let last = case.plies.last().map(|ply| (Place::Nut, ply));
    first
        .into_iter()
        .chain(last)
        .filter(|(_, ply)| ply.timber.is_some())
}

fn washers(case: &Case, method: TimberMethod, out: &mut Outcomes) {
    for (place, _) in pressed(case) {
        let Some(washer) = case.seat_at(place).washer else {
            out.find(Finding::WasherWanted {
                place,
                thickness: None,
                clause: methods::TIMBER_WASHERS.citation,
            });
            continue;
        };
        let washer = washer.map(seat::timber_washer);
        let rules = TimberWasher::rules(washer.as_ref(), case.diameter, method);
        if let Some(rules) = out.attempt(Mode::Washers, place, rules) {
            for rule in &rules {
                judged(place, rule, Mode::Washers, out);
            }
        }
    }
    out.in_order(Mode::Washers);
}

/// The pull of the bolt that EN 1995 counts is no more than what washers and bolt bear.
fn rope(case: &Case, method: TimberMethod, out: &mut Outcomes) -> TimberMethod {
    let TimberMethod::En1995 { axial, .. } = method else {
        return method;
    };
    if axial <= Force::default() {
        return method;
    }
    // What the bolt holds along its axis is not counted twice.
    if case.is_pulled() {
        return method.with_axial_at_most(Force::default());
    }
    let bearing = |place: Place| {
        let washer = case.seat_at(place).washer.flatten();
        let washer = washer.map(|washer| seat::counted_on_timber(washer, case.diameter));
        let ply = match place {
            Place::Head => case.plies.first(),
            _ => case.plies.last(),
        };
        let strength = ply
            .and_then(|ply| ply.timber)
            .and_then(|timber| timber.compression_across(method));
        TimberWasher::bearing(washer.as_ref(), case.diameter, strength, method)
    };
    let stated = case
        .joint
        .own
        .strength
        .as_ref()
        .map(|own| own.tensile_strength);
    let tension = stated
        .map_or_else(
            || crate::strength::code::en_1993::tensile_strength(case.strength.grade),
            Ok,
        )
        .map(|tensile| 0.9 * tensile * case.loads.tensile_stress_area);
    let capacity = bearing(Place::Head)
        .and_then(|head| en_axial_capacity(&head, &bearing(Place::Nut)?, tension.ok()));
    match out.attempt(MODE, Place::Joint, capacity) {
        Some(capacity) => {
            out.warn(&capacity.cautions);
            method.with_axial_at_most(capacity.axial)
        }
        None => method.with_axial_at_most(Force::default()),
    }
}
