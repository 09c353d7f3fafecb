//! What head and nut sit on: washers, pressure, pull-through, prying.

use alloc::vec::Vec;
use core::f64::consts::PI;

use super::tension::Tension;
use super::{between, pile};
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::joint::whole::case::{Case, CasePly};
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need, NotConcerned, Prying, Tightening};
use crate::joint::{JointWasher, OwnScrew};
use crate::material::{BoltGrade, PropertyClass};
use crate::math::{asin, sqrt};
use crate::parts::{ClampFace, WasherFace};
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::ply::{HoleKind, PlyMethod};
use crate::strength::surface::{
    SurfaceContact, SurfaceLimit, SurfaceOutcome, pull_through_en_1993, punching_by_statics,
    spread, surface_pressure,
};
use crate::strength::timber::TimberWasher;
use crate::strength::washers::{OuterHole, WasherFacts, WasherTightening, required_washers};
use crate::tables::grades::HardnessScale;
use crate::tables::methods;
use crate::tables::washer_rules::{
    WasherCase, WasherCode, WasherHardness, WasherNeed, WasherPairing, WasherRule, WasherSide,
    WasherStanding,
};
use crate::tables::washers::WasherStyle;
use crate::units::{Force, Length, SAME_LENGTH, from_base, megapascals};

/// What presses on a ply, and where.
pub(super) struct Side<'a> {
    pub(super) place: Place,
    /// The ply it presses on.
    own: &'a CasePly<'a>,
    pub(super) face: &'a Result<ClampFace, Error>,
}

pub(super) fn check(case: &Case, tension: &Tension, out: &mut Outcomes) {
    countersink(case, out);
    washers(case, out);
    pressure(case, tension, out);
    pull_through(case, out);
    prying(case, out);
}

/// What a countersunk head asks of its ply: that the cone ends in it, and leaves something beside it.
fn countersink(case: &Case, out: &mut Outcomes) {
    let (Some(own), Some(head), Some(ply)) = (
        case.plies.first(),
        case.countersunk(),
        case.joint.stack.plies().first(),
    ) else {
        return;
    };
    let place = own.place;
    let deep = case.joint.stack.head_seat().depth().max + head.height;
    if ply.clamped().min < deep - SAME_LENGTH {
        let why =
            "the countersunk head reaches through its ply: what it then bears on is not described";
        out.missing(Mode::Pressure, Place::Head, Need::Method(why));
        out.missing(Mode::Bearing, place, Need::Method(why));
    }
    if own.timber.is_some() {
        let why = "no rule here has a countersunk head in timber";
        out.missing(Mode::Pressure, Place::Head, Need::Method(why));
    }
    if ply.slot.is_some() {
        let why = "no rule here has a countersink over a slot";
        out.missing(Mode::Pressure, Place::Head, Need::Method(why));
    }
    let known = matches!(
        case.joint.methods.plies,
        PlyMethod::MachineDesign { .. } | PlyMethod::En1993
    );
    if case.is_sheared() && case.joint.methods.plies == PlyMethod::En1993 {
        let method = methods::EN_1993_1_8_TABLE_3_4_COUNTERSUNK;
        out.warn(&Cautions::default().with(Caution::of_method(method)));
    }
    if case.is_sheared() && !known {
        let why = "how a countersink counts for bearing was not read in the method";
        out.missing(Mode::Bearing, place, Need::Method(why));
    }
    // The cone is as wide as the head at least.
    let half = 0.5 * head.diameter;
    for (distance, least, mode, why) in [
        (
            ply.end_distance,
            half,
            Mode::TearOut,
            "the countersink reaches the end of the ply",
        ),
        (
            ply.edge_distance,
            half,
            Mode::NetSection,
            "the countersink reaches the side of the ply",
        ),
        (
            ply.width,
            head.diameter,
            Mode::NetSection,
            "the countersink takes the whole width",
        ),
    ] {
        if distance.is_some_and(|distance| distance <= least) {
            out.find(Finding::NothingLeft { place, mode, why });
        }
    }
}

/// The sides on which something presses on a ply.
pub(super) fn sides<'a>(case: &'a Case) -> impl Iterator<Item = Side<'a>> {
    let ends = [
        (Place::Head, case.plies.first()),
        (Place::Nut, case.plies.last()),
    ];
    ends.into_iter().filter_map(|(place, own)| {
        let (own, face) = (own?, case.seat_at(place).face.as_ref()?);
        Some(Side { place, own, face })
    })
}

/// Whether a head or nut of the caller's own may have any width over that of the thread.
pub(super) fn is_own_width_unsaid(case: &Case) -> bool {
    let own = &case.joint.own;
    let widths = [
        own.screw.as_ref().map(OwnScrew::width),
        own.nut.as_ref().map(|nut| nut.bearing_diameter),
    ];
    widths.contains(&Some(None))
}

/// Mean diameter on which head or nut turns, on the safe side: the smaller of their faces over the bolt itself.
pub(super) fn bearing_diameter(case: &Case) -> Length {
    if is_own_width_unsaid(case) {
        return case.diameter;
    }
    let outer = sides(case)
        .filter_map(|side| side.face.as_ref().ok())
        .map(|face| face.outer_min)
        .reduce(Length::min);
    // Where no face is tabled, narrower than any standard head.
    outer.map_or(1.2 * case.diameter, |outer| (outer + case.diameter) / 2.0)
}

/// The hole in the face under a head or nut of some diameter; of a slot the round hole that takes as much of the face.
pub(super) fn hole_under(own: &CasePly, face: Length) -> Option<Length> {
    let ply = own.ply?;
    let width = ply.hole?;
    let Some(slot) = ply.slot.filter(|_| width < face) else {
        return Some(width);
    };
    // A strip as wide as the slot across the face, or the whole slot, if it ends within the face.
    let ratio = (width / face).value;
    let strip = 0.5 * face * face * (ratio * sqrt(1.0 - ratio * ratio) + asin(ratio));
    let whole = width * (slot.length - width) + 0.25 * PI * width * width;
    let lost = strip.min(whole);
    Some(width.max(from_base(sqrt(4.0 / PI * lost.value))))
}

fn pressure(case: &Case, tension: &Tension, out: &mut Outcomes) {
    const MODE: Mode = Mode::Pressure;
    for side in sides(case) {
        one_pressure(case, &side, tension.greatest, out);
    }
    between::check(case, tension.greatest, out);
    if case.joint.tightening.is_none() {
        out.missing(MODE, Place::Joint, Need::Tightening);
    }
    if tension.greatest > Force::default() {
        out.in_order(MODE);
    } else {
        out.not_concerned(MODE, NotConcerned::Snug);
    }
}

fn one_pressure(case: &Case, side: &Side, force: Force, out: &mut Outcomes) {
    const MODE: Mode = Mode::Pressure;
    let place = side.place;
    let Some(face) = pile::last_face(case, side, force, out) else {
        return;
    };
    let face = &face;
    if side.own.timber.is_some() {
        timber_pressure(case, side, force, out);
        return;
    }
    let pressed = force > Force::default();
    if side.own.thickness.is_none() {
        // A sleeve lies under it: its faces are not described.
        if pressed {
            let why = "a sleeve lies under it, whose faces are not described";
            out.missing(MODE, place, Need::Method(why));
        }
        return;
    }
    let washer = case.seat_at(place).washer.as_ref();
    let washer = washer.and_then(Option::as_ref);
    let outer = washer.map_or(face.outer_min, |washer| spread(face, washer));
    let Some(hole) = hole_under(side.own, outer) else {
        // The head of a bolt without any clamp force may still fall through.
        out.missing(MODE, side.own.place, Need::Hole);
        if pressed {
            limit(side, out);
        }
        return;
    };
    let contact = match &case.seat_at(place).washer {
        None => SurfaceContact::under(face, hole),
        Some(None) => {
            out.missing(MODE, place, Need::Washer);
            return;
        }
        Some(Some(washer)) => SurfaceContact::new(outer, hole.max(washer.inner_max)),
    };
    let Some(contact) = out.attempt(MODE, place, contact) else {
        return;
    };
    if contact.area().is_none() {
        out.find(Finding::FallsThrough {
            place,
            face: contact.outer,
            hole: contact.inner,
        });
        return;
    }
    if !pressed {
        return;
    }
    out.warn(&face.cautions());
    let Some(limit) = limit(side, out) else {
        return;
    };
    let bears = surface_pressure(force, contact, limit);
    let Some(SurfaceOutcome::Bears(bears)) = out.attempt(MODE, place, bears) else {
        return;
    };
    out.work_at(place, || bears.derivation());
    out.try_check(MODE, place, bears.check(place));
}

/// What the ply bears, or what of it is missing.
fn limit(side: &Side, out: &mut Outcomes) -> Option<SurfaceLimit> {
    let limit = side
        .own
        .material
        .ok_or(Need::Material)
        .and_then(|material| material.surface_limit(side.own.thickness));
    limit
        .map_err(|need| out.missing(Mode::Pressure, side.own.place, need))
        .ok()
}

fn timber_pressure(case: &Case, side: &Side, force: Force, out: &mut Outcomes) {
    let place = side.place;
    // The publishers of timber have their own safety in what it bears: without a preload the load comes without the
    // margin.
    let force = match case.torque() {
        None => case.along,
        Some(_) => force,
    };
    if force <= Force::default() {
        return;
    }
    let washer = case.seat_at(place).washer.flatten();
    let washer = washer.map(|washer| counted_on_timber(washer, case.diameter));
    let check = across_the_grain(case, side.own, place, washer, force, out);
    out.checks.extend(check);
}

/// What a washer presses on timber; none where something is missing, which is said.
pub(super) fn across_the_grain(
    case: &Case,
    own: &CasePly,
    place: Place,
    washer: Option<TimberWasher>,
    force: Force,
    out: &mut Outcomes,
) -> Option<Check> {
    const MODE: Mode = Mode::Pressure;
    let Some(method) = case.joint.methods.timber else {
        out.missing(MODE, place, Need::TimberMethod);
        return None;
    };
    let strength = own
        .timber
        .and_then(|timber| timber.compression_across(method));
    let bearing = TimberWasher::bearing(washer.as_ref(), case.diameter, strength, method);
    let bearing = out.attempt(MODE, place, bearing)?;
    out.warn(&bearing.cautions);
    for fact in &bearing.missing {
        out.missing(MODE, place, Need::of_timber(*fact));
    }
    let check = bearing.resistance?.at(case.level).and_then(|resistance| {
        let method = methods::PRESSURE_OF_THE_WASHER_ACROSS_THE_GRAIN;
        Check::new(MODE, place, force, resistance, case.level, method)
    });
    out.attempt(MODE, place, check)
}

/// A washer as the rules of timber see it. What is wider than 25 thicknesses bends, and does not press so far out: those
/// of the standards have at most 23 (common practice, no source).
pub(super) fn timber_washer(washer: WasherFace) -> TimberWasher {
    TimberWasher {
        width: washer.outer_min.min(25.0 * washer.thickness_min),
        thickness: washer.thickness_min,
        hole: washer.inner_max,
        square: false,
    }
}

/// A washer as far as it spreads a load on timber. One of the caller's own counts as wide as the standard ones are, 3 d,
/// and beyond that as a steel plate of its thickness: a wide thin one bends.
pub(super) fn counted_on_timber(washer: WasherFace, diameter: Length) -> TimberWasher {
    let washer_on_timber = timber_washer(washer);
    if washer.provenance.is_some() {
        return washer_on_timber;
    }
    let plate = TimberWasher::of_plate(washer.thickness_min, washer.inner_max, diameter);
    TimberWasher {
        width: washer_on_timber.width.min(plate.width.max(3.0 * diameter)),
        ..washer_on_timber
    }
}

/// Head or nut pulled through the ply under it.
fn pull_through(case: &Case, out: &mut Outcomes) {
    const MODE: Mode = Mode::PullThrough;
    if !case.is_pulled() {
        out.not_concerned(MODE, NotConcerned::NoLoadAlong);
        return;
    }
    let by_en = case.joint.methods.plies == PlyMethod::En1993;
    for side in sides(case) {
        let place = side.place;
        if side.own.timber.is_some() {
            // The pressure of its washer is what pulls through.
            continue;
        }
        let Some(thickness) = side.own.thickness else {
            let why = "a sleeve lies under it, whose faces are not described";
            out.missing(MODE, place, Need::Method(why));
            continue;
        };
        if side.own.ply.is_some_and(|ply| ply.slot.is_some()) {
            let why = "no rule here has the pull-through of a head over a slot";
            out.missing(MODE, place, Need::Method(why));
            continue;
        }
        if place == Place::Head && case.is_countersunk() {
            let why = "no rule here has the pull-through of a countersunk head, which wedges its ply apart as well";
            out.missing(MODE, place, Need::Method(why));
            continue;
        }
        let Some(face) = out.attempt(MODE, place, side.face.clone()) else {
            continue;
        };
        let Some(material) = side.own.material else {
            out.missing(MODE, side.own.place, Need::Material);
            continue;
        };
        let Some(material) = out.attempt(MODE, place, material.at_thickness(thickness)) else {
            continue;
        };
        let (strength, need) = if by_en {
            (material.breaks, Need::TensileStrength)
        } else {
            (material.yields, Need::YieldStrength)
        };
        let Some(strength) = strength else {
            out.missing(MODE, side.own.place, need);
            continue;
        };
        let found = if by_en {
            let Some(width) = face.mean_width_min() else {
                let why = "the width of the head or nut is not in the tables";
                out.missing(MODE, place, Need::Method(why));
                continue;
            };
            pull_through_en_1993(width, thickness, strength)
                .map(|found| (found, case.along, Level::Design))
        } else {
            // The margin is in the load.
            let pull = case.margin * case.joint.load.along;
            punching_by_statics(face.outer_min, thickness, strength, 1.0)
                .map(|found| (found, pull, Level::Nominal))
        };
        let Some((found, pull, level)) = out.attempt(MODE, place, found) else {
            continue;
        };
        out.work_at(place, || found.derivation());
        out.try_check(MODE, place, found.check(pull, place, level));
    }
    out.in_order(MODE);
}

fn prying(case: &Case, out: &mut Outcomes) {
    const MODE: Mode = Mode::Prying;
    if !case.is_pulled() {
        out.not_concerned(MODE, NotConcerned::NoLoadAlong);
    } else if let Some(prying) = case.joint.load.prying {
        out.not_concerned(
            MODE,
            match prying {
                Prying::None => NotConcerned::NoPrying,
                Prying::InLoad => NotConcerned::StatedInLoad,
            },
        );
    } else {
        out.missing(MODE, Place::Joint, Need::Prying);
    }
}

/// Washers that the code of the plies demands, and washers that are too soft for the bolt.
fn washers(case: &Case, out: &mut Outcomes) {
    const MODE: Mode = Mode::Washers;
    soft(case, out);
    let codes: &[WasherCode] = match case.joint.methods.plies {
        PlyMethod::Aisc360 { .. } => &[WasherCode::Rcsc, WasherCode::Aisc360],
        PlyMethod::En1993 => &[WasherCode::En1993_1_8, WasherCode::En1090_2],
        _ => &[],
    };
    let unread = matches!(
        case.joint.methods.plies,
        PlyMethod::Bs5950 | PlyMethod::Is800 | PlyMethod::As4100 | PlyMethod::CsaS16
    );
    if codes.is_empty() && !unread {
        out.not_concerned(MODE, NotConcerned::NoRule);
        return;
    }
    out.in_order(MODE);
    for side in sides(case).filter(|side| side.own.timber.is_none()) {
        if unread && case.washer_at(side.place).is_none() {
            let why = "where the code of the plies wants washers was not read, and there is none";
            out.missing(MODE, side.place, Need::Method(why));
        }
        let facts = facts(case, &side);
        for &code in codes {
            let Some(required) = out.attempt(MODE, side.place, required_washers(code, &facts))
            else {
                continue;
            };
            for required in required {
                if !concerns(required.rule.side, side.place) {
                    continue;
                }
                let thickness = required.rule.thickness_min;
                // RCSC 6.1.2: over a slot a common plate must be as thick, or the washer one of F436.
                let hardened_will_do = required.rule.case == WasherCase::SnugSlot;
                let is_there = case.washer_at(side.place).is_some_and(|own| {
                    let thick = |least| own.thickness.min >= least - SAME_LENGTH;
                    thickness.is_none_or(thick)
                        || hardened_will_do && own.style == Some(WasherStyle::F436)
                });
                if is_there {
                    let washer = case.washer_at(side.place);
                    if required.certain
                        && wants_hard(case, required.rule)
                        && !washer.is_some_and(|own| is_hard(own, code))
                    {
                        out.warn(&required.rule.cautions());
                        out.missing(MODE, side.place, Need::HardenedWasher);
                    }
                    continue;
                }
                if required.certain && side.place == Place::Head && case.is_countersunk() {
                    out.warn(&required.rule.cautions());
                    let why = "the code wants a washer there, and a countersunk head has none";
                    out.missing(MODE, side.place, Need::Method(why));
                } else if required.certain {
                    out.warn(&required.rule.cautions());
                    out.find(Finding::WasherWanted {
                        place: side.place,
                        thickness,
                        clause: required.rule.provenance.source.document,
                    });
                } else {
                    out.missing(MODE, side.own.place, Need::Hole);
                }
            }
        }
    }
}

/// Whether a rule asks for a hardened washer. EN 1993-1-8 3.6.1(11) does in a single lap for classes 8.8 and 10.9
/// (recalled).
fn wants_hard(case: &Case, rule: &WasherRule) -> bool {
    let strong = matches!(
        case.strength.grade,
        BoltGrade::Iso(PropertyClass::Class8_8 | PropertyClass::Class10_9)
    );
    rule.washer == WasherNeed::Hardened || rule.case == WasherCase::SingleLapOneRow && strong
}

/// Whether a washer is hardened as the code has it: one of F436 for RCSC and AISC (38 HRC, some 370 HV), of 300 HV for
/// EN 1090-2.
fn is_hard(washer: &JointWasher, code: WasherCode) -> bool {
    let (style, least) = match code {
        WasherCode::Rcsc | WasherCode::Aisc360 => (WasherStyle::F436, 370.0),
        _ => (WasherStyle::En14399_6, 300.0),
    };
    let stated = washer.hardness.is_some_and(|hardness| hardness >= least);
    washer.style == Some(style) || washer.style == Some(WasherStyle::F436) || stated
}

/// Whether a rule is about this side. The nut is the part that is turned.
const fn concerns(side: WasherSide, place: Place) -> bool {
    match side {
        WasherSide::TurnedPart | WasherSide::Nut => matches!(place, Place::Nut),
        _ => true,
    }
}

fn facts(case: &Case, side: &Side) -> WasherFacts {
    let kind = side.own.ply.and_then(|ply| {
        let rule = super::holes::hole_rule(case.joint.methods.plies);
        super::holes::kind_of(case, ply, rule)
    });
    let preloaded = case.torque().is_some();
    WasherFacts {
        tightening: Some(if preloaded {
            WasherTightening::CalibratedWrench
        } else {
            WasherTightening::Snug
        }),
        outer_hole: kind.map(|kind| match kind {
            HoleKind::Oversize => OuterHole::Oversize,
            HoleKind::ShortSlotAcross | HoleKind::ShortSlotAlong => OuterHole::ShortSlot,
            HoleKind::LongSlotAcross | HoleKind::LongSlotAlong => OuterHole::LongSlot,
            _ => OuterHole::Standard,
        }),
        outer_yield: side
            .own
            .material
            .and_then(|material| material.without_thickness().yields),
        // Faces are square to the bolt: a stack has no slopes.
        steep_face: Some(false),
        single_lap_one_row: Some(case.is_sheared() && case.is_single_lap()),
        ..WasherFacts::of(case.strength.grade, case.diameter)
    }
}

/// Classes of ISO 898-3, the softest first.
const CLASSES: [(f64, &str); 4] = [
    (100.0, "100HV"),
    (200.0, "200HV"),
    (300.0, "300HV"),
    (380.0, "380HV"),
];

/// The hardest class that a washer reaches; none below the softest.
fn class_of(hardness: f64) -> Option<&'static str> {
    let reached = CLASSES.iter().rev().find(|(least, _)| hardness >= *least);
    reached.map(|(_, class)| *class)
}

/// The class that a style comes in: by name, or as hard as it is.
fn class_of_row(row: &WasherHardness) -> Option<&'static str> {
    row.property_class.or_else(|| match row.hardness_scale {
        HardnessScale::Vickers => class_of(row.hardness_min),
        // From 38 HRC, some 370 HV.
        HardnessScale::RockwellC if row.hardness_min >= 38.0 => class_of(370.0),
        _ => None,
    })
}

/// How hard a washer is at least; none if neither it nor its style says so.
pub(super) fn least_hardness(washer: &JointWasher) -> Option<f64> {
    let least = |row: &WasherHardness| match row.hardness_scale {
        HardnessScale::Vickers => Some(row.hardness_min),
        // 38 HRC are some 370 HV.
        HardnessScale::RockwellC if row.hardness_min >= 38.0 => Some(370.0),
        _ => None,
    };
    washer.hardness.or_else(|| {
        let rows = WasherHardness::of(washer.style?).filter_map(least);
        rows.reduce(f64::min)
    })
}

/// How soft a washer may be for the class of the bolt: every one that lies there, as each is pressed by all of the
/// preload.
fn soft(case: &Case, out: &mut Outcomes) {
    let bolt = BoltGrade::Iso(as_class(case));
    for place in [Place::Head, Place::Nut] {
        for washer in case.washers_at(place) {
            one_soft(case, bolt, place, washer, out);
        }
    }
}

/// The property class of the bolt; of any other standard, or of a strength of one's own, the one that is as strong.
fn as_class(case: &Case) -> PropertyClass {
    if let BoltGrade::Iso(class) = case.strength.grade {
        return class;
    }
    let breaks = case.strength.tensile_strength;
    let at_least = |class: f64| breaks >= megapascals(class);
    match () {
        () if at_least(1200.0) => PropertyClass::Class12_9,
        () if at_least(1000.0) => PropertyClass::Class10_9,
        () if at_least(900.0) => PropertyClass::Class9_8,
        () if at_least(800.0) => PropertyClass::Class8_8,
        () if at_least(600.0) => PropertyClass::Class6_8,
        () => PropertyClass::Class4_6,
    }
}

/// One washer by table 1 of ISO 898-3. What it may be of by its style, or may be at all, counts as what it is.
fn one_soft(case: &Case, bolt: BoltGrade, place: Place, washer: &JointWasher, out: &mut Outcomes) {
    const MODE: Mode = Mode::Washers;
    let standing = |class: &str| WasherPairing::of(bolt, class).map(|row| row.standing);
    let never = |class: &&str| standing(class) == Some(WasherStanding::Never);
    let pressed = match place {
        Place::Head => case.plies.first(),
        _ => case.plies.last(),
    };
    // Timber gives way before a washer does.
    let on_timber = pressed.is_some_and(|ply| ply.timber.is_some());
    let of_style = washer.style.filter(|_| washer.hardness.is_none());
    let mut all = CLASSES.iter().map(|(_, class)| *class);
    let standings: Vec<Option<WasherStanding>> = match (washer.hardness, of_style) {
        (Some(_), _) if on_timber => return,
        (None, None) if on_timber || !all.clone().any(|class| never(&class)) => return,
        // Softer than the softest class is as bad as that.
        (Some(hardness), _) => {
            let class = class_of(hardness).or_else(|| all.next());
            class.map(standing).into_iter().collect()
        }
        (None, Some(style)) => {
            let classes = WasherHardness::of(style).filter_map(class_of_row);
            classes.map(standing).collect()
        }
        (None, None) => all.map(standing).collect(),
    };
    let count = |of| standings.iter().filter(|own| **own == Some(of)).count();
    let (too_soft, to_verify) = (
        count(WasherStanding::Never),
        count(WasherStanding::IfVerified),
    );
    if too_soft > 0 && too_soft == standings.len() {
        let softest = CLASSES.iter().rev().map(|(_, class)| *class).find(never);
        out.find(match (washer.hardness, washer.style, softest) {
            (Some(hardness), _, Some(class)) => Finding::OwnWasherTooSoft {
                place,
                hardness,
                class,
            },
            (_, Some(style), _) => Finding::WasherTooSoft { place, style },
            _ => return,
        });
    } else if too_soft > 0 {
        out.missing(MODE, place, Need::WasherHardness);
    } else if to_verify > 0 && case.joint.tightening == Some(Tightening::Snug) {
        // What is to be verified is that it bears the preload, and none is counted on.
        out.find(Finding::WasherToVerify { place });
    } else if to_verify > 0 {
        let need = if to_verify == standings.len() {
            Need::VerifiedWasher
        } else {
            Need::WasherHardness
        };
        out.missing(MODE, place, need);
    }
}
