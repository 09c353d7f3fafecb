//! The washers that a code wants under head and nut, and how hard they are.

use alloc::vec::Vec;

use super::seat::{Side, sides};
use crate::joint::JointWasher;
use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need, NotConcerned, Tightening};
use crate::material::{BoltGrade, PropertyClass};
use crate::strength::check::{Mode, Place};
use crate::strength::ply::{HoleKind, PlyMethod};
use crate::strength::washers::{OuterHole, WasherFacts, WasherTightening, required_washers};
use crate::tables::grades::HardnessScale;
use crate::tables::washer_rules::{
    WasherCase, WasherCode, WasherHardness, WasherNeed, WasherPairing, WasherRule, WasherSide,
    WasherStanding,
};
use crate::tables::washers::WasherStyle;
use crate::units::{SAME_LENGTH, megapascals};

/// Washers that the code of the plies demands, and washers that are too soft for the bolt.
pub(super) fn check(case: &Case, out: &mut Outcomes) {
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
