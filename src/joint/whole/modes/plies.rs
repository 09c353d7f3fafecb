//! What each ply bears: bearing, tear-out, net and gross section, block shear, distances, holes.

use crate::joint::whole::case::{Case, CasePly};
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need, NotConcerned};
use crate::strength::check::{Mode, Place};
use crate::strength::ply::{HoleKind, Ply};

/// The modes of a ply that a load across concerns.
const MODES: [Mode; 7] = [
    Mode::Bearing,
    Mode::TearOut,
    Mode::NetSection,
    Mode::GrossSection,
    Mode::BlockShear,
    Mode::Distances,
    Mode::Holes,
];

pub(super) fn check(case: &Case, out: &mut Outcomes) {
    if !case.is_sheared() {
        for mode in MODES {
            out.not_concerned(mode, NotConcerned::NoLoadAcross);
        }
        return;
    }
    for ply in &case.plies {
        if ply.timber.is_none() && ply.pulls() {
            one(case, ply, out);
        }
    }
    if case.joint.pattern == crate::joint::Pattern::Single {
        out.not_concerned(Mode::BlockShear, NotConcerned::SingleBolt);
    } else {
        let why =
            "a joint is one bolt of its group here: check the holes together by strength::ply";
        out.missing(Mode::BlockShear, Place::Joint, Need::Method(why));
    }
    for mode in MODES {
        out.not_concerned(mode, NotConcerned::NotOfMethod);
    }
}

fn one(case: &Case, own: &CasePly, out: &mut Outcomes) {
    let method = case.joint.methods.plies;
    let Some(material) = own.material else {
        for mode in [
            Mode::Bearing,
            Mode::TearOut,
            Mode::NetSection,
            Mode::GrossSection,
        ] {
            out.missing(mode, own.place, Need::Material);
        }
        return;
    };
    let (Some(detail), Some(thickness)) = (own.ply, own.thickness) else {
        let why = "a ply around a sleeve bears on the sleeve";
        out.missing(Mode::Bearing, own.place, Need::Method(why));
        return;
    };
    let Some(hole) = detail.hole else {
        out.missing(Mode::Bearing, own.place, Need::Hole);
        return;
    };
    let ply = Ply {
        hole_kind: HoleKind::Standard,
        end_distance: detail.end_distance,
        edge_distance: detail.edge_distance,
        pitch: detail.pitch,
        gauge: detail.gauge,
        width: detail.width,
        ..Ply::of(material, thickness, hole)
    };
    let modes = ply.resistances(case.diameter, None, method);
    let Some(modes) = out.attempt(Mode::Bearing, own.place, modes) else {
        return;
    };
    for mode in modes {
        out.work_at(own.place, || mode.derivation());
        let check = mode.check(own.load, case.level, own.number);
        out.try_check(Mode::Bearing, own.place, check);
    }
    let short = ply.short_distances(case.diameter, method);
    if let Some(short) = out.attempt(Mode::Distances, own.place, short) {
        for short in short {
            out.warn(short.cautions());
            out.find(Finding::ShortDistance {
                ply: own.number,
                kind: short.kind,
                distance: short.distance,
                least: short.least,
            });
        }
    }
}
