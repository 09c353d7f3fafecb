//! A stronger part does no harm without a reason, and no ply changes the figures of another.
#![cfg(feature = "serde")]

use shankline::joint::*;
use shankline::strength::check::Mode;

#[path = "support/verdicts.rs"]
mod verdicts;

use verdicts::{documents, for_all, is_odd, why};

/// A ladder of parts, each stronger than the one before it in every respect but those of the named modes.
type Ladder = &'static [&'static [&'static str]];

const BOLTS: Ladder = &[
    &[
        "ISO 898-1 class 5.6",
        "ISO 898-1 class 8.8",
        "ISO 898-1 class 10.9",
        "ISO 898-1 class 12.9",
    ],
    &["SAE J429 grade 2", "SAE J429 grade 5", "SAE J429 grade 8"],
    &["ASTM F3125 A325 type 1", "ASTM F3125 A490 type 1"],
];
const NUTS: Ladder = &[
    &[
        "ISO 898-2 class 5",
        "ISO 898-2 class 8",
        "ISO 898-2 class 10",
        "ISO 898-2 class 12",
    ],
    &["SAE J995 grade 2", "SAE J995 grade 5", "SAE J995 grade 8"],
    &["ASTM A563 C", "ASTM A563 DH"],
];
const STEELS: Ladder = &[
    &["S235 steel", "S275 steel", "S355 steel"],
    &["ASTM A36 steel", "ASTM A992 steel"],
];

/// One step up a ladder; nothing at its top.
fn step_up(document: &mut serde_json::Value, path: &str, ladder: Ladder) {
    let path: Vec<String> = path.split('.').map(str::to_string).collect();
    let Some(own) = documents::at(document, &path) else {
        return;
    };
    for steps in ladder {
        for pair in steps.windows(2) {
            if own == pair[0] {
                *own = pair[1].into();
                return;
            }
        }
    }
}

/// Where more is not better: what is changed, the mode that may then forbid the joint, and why.
const MORE_IS_NOT_BETTER: &[(&str, Mode, &str)] = &[
    (
        "bolt",
        Mode::Preload,
        "AISC 360, J3.1: high-strength bolts must be pretensioned where others may be snug",
    ),
    (
        "bolt",
        Mode::Coating,
        "harder bolts are brittle with hydrogen",
    ),
    (
        "bolt",
        Mode::Pressure,
        "a target is a share of the strength: more preload",
    ),
    (
        "bolt",
        Mode::Stripping,
        "a target is a share of the strength: more preload; stronger than the threads it is in",
    ),
    (
        "bolt",
        Mode::Washers,
        "some washers are too soft for harder bolts",
    ),
    (
        "bolt",
        Mode::Reuse,
        "some strong bolts are never used again",
    ),
    (
        "bolt",
        Mode::Tightening,
        "proof lies nearer to yield in harder bolts, and torsion counts against yield",
    ),
    (
        "thickness",
        Mode::Washers,
        "washers that a length wanted may fall away",
    ),
    (
        "thickness",
        Mode::BoltShear,
        "another length may cut thread; long grips carry less",
    ),
    ("thickness", Mode::BoltBending, "longer arms"),
    (
        "thickness",
        Mode::Combined,
        "longer arms, or thread in a plane",
    ),
    (
        "thickness",
        Mode::Stripping,
        "another length may fill less thread",
    ),
    (
        "material",
        Mode::Holes,
        "EN 1993-1-8, 3.6.1(5): bearing must be weaker than shear",
    ),
    (
        "end_distance",
        Mode::Holes,
        "EN 1993-1-8, 3.6.1(5): bearing must be weaker than shear",
    ),
    (
        "bolt",
        Mode::Fatigue,
        "a target is a share of the strength: more preload, and a higher mean",
    ),
    (
        "thickness",
        Mode::Bearing,
        "another length may fill less of a tapped part",
    ),
    (
        "thickness",
        Mode::BoltBearing,
        "another length may fill less of a tapped part",
    ),
    (
        "thickness",
        Mode::TearOut,
        "another length may fill less of a tapped part",
    ),
    (
        "thickness",
        Mode::Tightening,
        "more of what swells with heat",
    ),
    (
        "thickness",
        Mode::Separation,
        "softer members leave the bolt another share; more of what shrinks with cold",
    ),
    (
        "thickness",
        Mode::BoltTension,
        "softer members leave the bolt a greater share",
    ),
    (
        "thickness",
        Mode::Fatigue,
        "softer members leave the bolt a greater share",
    ),
    (
        "gauge",
        Mode::Distances,
        "codes have greatest distances too",
    ),
    (
        "pitch",
        Mode::Distances,
        "codes have greatest distances too",
    ),
    ("pitch", Mode::BoltShear, "long joints carry less"),
    (
        "edge_distance",
        Mode::Holes,
        "EN 1993-1-8, 3.6.1(5): bearing must be weaker than shear",
    ),
    (
        "gauge",
        Mode::Holes,
        "EN 1993-1-8, 3.6.1(5): bearing must be weaker than shear",
    ),
    (
        "pitch",
        Mode::Holes,
        "EN 1993-1-8, 3.6.1(5): bearing must be weaker than shear",
    ),
    ("thickness", Mode::Length, "no stock length may suit"),
    (
        "thickness",
        Mode::Locking,
        "another length ends elsewhere in the lock",
    ),
    (
        "thickness",
        Mode::Holes,
        "EN 1993-1-8, 3.6.1(5): bearing must be weaker than shear",
    ),
    (
        "thickness",
        Mode::Pressure,
        "thick plates yield at less; another number of washers",
    ),
    (
        "edge_distance",
        Mode::Distances,
        "codes have greatest distances too",
    ),
    (
        "end_distance",
        Mode::Distances,
        "codes have greatest distances too",
    ),
];

/// A stronger, thicker or wider part never makes a joint fail that held; nor a mode that was in order, whatever
/// became of the others.
#[test]
fn a_stronger_part_does_no_harm() {
    for_all(2500, |joint, dice| {
        let Ok(before) = joint.check() else {
            return Ok(());
        };
        for _ in 0..6 {
            let mut document = serde_json::to_value(joint).unwrap();
            let ply = dice.below(joint.stack.plies().len());
            let what = dice.one(&[
                "thickness",
                "material",
                "end_distance",
                "edge_distance",
                "pitch",
                "gauge",
                "width",
                "bolt",
                "nut",
            ]);
            match what {
                "bolt" => step_up(&mut document, "bolt.grade", BOLTS),
                "nut" => step_up(&mut document, "nut.grade", NUTS),
                "material" => step_up(
                    &mut document,
                    &format!("stack.plies.{ply}.material"),
                    STEELS,
                ),
                _ => {
                    let times = dice.between(1.0, 2.5);
                    documents::scale(&mut document, &format!("stack.plies.{ply}.{what}"), times);
                }
            }
            let Ok(more) = serde_json::from_value::<Joint>(document) else {
                continue;
            };
            let Ok(after) = more.check() else { continue };
            let harmed = Mode::ALL.into_iter().find(|mode| {
                let named = MORE_IS_NOT_BETTER
                    .iter()
                    .any(|(change, own, _)| *change == what && own == mode);
                let was_fine = !is_odd(&before, *mode);
                was_fine && after.account(*mode) == Account::Fault && !named
            });
            if let Some(mode) = harmed {
                return Err(format!(
                    "more {what}: {mode}: ply {}\n{}",
                    ply + 1,
                    why(&after)
                ));
            }
        }
        Ok(())
    });
}

/// What is said of one ply changes no figure of another.
#[test]
fn plies_have_figures_of_their_own() {
    for_all(3000, |joint, dice| {
        let Ok(before) = joint.check() else {
            return Ok(());
        };
        let count = joint.stack.plies().len();
        let ply = dice.below(count);
        let mut document = serde_json::to_value(joint).unwrap();
        let what = dice.one(&[
            "material",
            "hole",
            "end_distance",
            "edge_distance",
            "edge_finish",
            "width",
            "pitch",
            "gauge",
            "slot",
            "metal",
        ]);
        let path = format!("stack.plies.{ply}.{what}");
        if dice.below(2) == 0 {
            let path: Vec<String> = path.split('.').map(str::to_string).collect();
            documents::remove(&mut document, &path);
        } else {
            documents::scale(&mut document, &path, dice.between(0.5, 2.0));
            step_up(&mut document, &path, STEELS);
        }
        let Ok(other) = serde_json::from_value::<Joint>(document) else {
            return Ok(());
        };
        let Ok(after) = other.check() else {
            return Ok(());
        };
        for own in (1..=count).filter(|own| *own != ply + 1) {
            let of = |verdict: &Verdict| {
                let place = shankline::strength::check::Place::Ply(own);
                let mut checks: Vec<_> = verdict
                    .checks
                    .iter()
                    .filter(|check| check.place == place)
                    .map(|check| format!("{check}"))
                    .collect();
                checks.sort();
                let missing = verdict
                    .missing
                    .iter()
                    .filter(|missing| missing.place == place);
                // In timber one joint yields as a whole.
                let own = missing.map(|missing| format!("{missing}"));
                checks.extend(own.filter(|text| !text.contains("the yield of the joint")));
                checks
            };
            let (was, is) = (of(&before), of(&after));
            if was != is {
                return Err(format!(
                    "{what} of ply {}: ply {own}\n{was:#?}\n{is:#?}",
                    ply + 1
                ));
            }
        }
        Ok(())
    });
}
