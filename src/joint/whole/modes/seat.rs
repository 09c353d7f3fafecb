//! What head and nut sit on: washers, pressure, pull-through, prying.

use core::f64::consts::PI;

use super::tension::Tension;
use super::{between, pile, washers};
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::joint::OwnScrew;
use crate::joint::whole::case::{Case, CasePly};
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need, NotConcerned, Prying};
use crate::math::{asin, sqrt};
use crate::parts::{ClampFace, WasherFace};
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::ply::PlyMethod;
use crate::strength::surface::{
    SurfaceContact, SurfaceLimit, SurfaceOutcome, pull_through_en_1993, punching_by_statics,
    spread, surface_pressure,
};
use crate::strength::timber::TimberWasher;
use crate::tables::methods;
use crate::units::{Force, Length, SAME_LENGTH, from_base};

/// What presses on a ply, and where.
pub(super) struct Side<'a> {
    pub(super) place: Place,
    /// The ply it presses on.
    pub(super) own: &'a CasePly<'a>,
    pub(super) face: &'a Result<ClampFace, Error>,
}

pub(super) fn check(case: &Case, tension: &Tension, out: &mut Outcomes) {
    countersink(case, out);
    washers::check(case, out);
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
