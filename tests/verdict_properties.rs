//! What must hold of every verdict, whatever the joint: more load never helps, silence never helps, a stronger part
//! does no harm without a reason, and every mode is accounted for.
//!
//! Joints come from `support/joints.rs`. The seed is fixed; `VERDICT_SEED=7` takes another, `VERDICT_CASES=20000`
//! more of them.
#![cfg(feature = "serde")]

use std::cell::Cell;
use std::env;

use proptest::prelude::*;
use proptest::test_runner::{RngAlgorithm, TestCaseError, TestRng, TestRunner};
use shankline::error::Error;
use shankline::joint::*;
use shankline::strength::check::Mode;
use shankline::units::newtons;

#[path = "support/documents.rs"]
mod documents;
#[path = "support/joints.rs"]
mod joints;

use joints::Dice;

fn wanted(name: &str) -> Option<u64> {
    env::var(name).ok().and_then(|text| text.parse().ok())
}

/// Runs a property over random joints. The numbers come in two rows: those of the joint and those of what is done to
/// it. A failure shows the plainest joint found, as a document.
fn for_all(cases: u32, property: impl Fn(&Joint, &mut Dice) -> Result<(), String>) {
    let cases = wanted("VERDICT_CASES").map_or(cases, |cases| cases.try_into().unwrap());
    let config = ProptestConfig {
        cases,
        failure_persistence: None,
        max_shrink_iters: 3000,
        max_global_rejects: 10 * cases,
        ..ProptestConfig::default()
    };
    let mut seed = [0; 32];
    seed[..8].copy_from_slice(&wanted("VERDICT_SEED").unwrap_or(1).to_le_bytes());
    let rng = TestRng::from_seed(RngAlgorithm::ChaCha, &seed);
    let numbers = (
        prop::collection::vec(any::<u16>(), joints::NUMBERS),
        prop::collection::vec(any::<u16>(), 24),
    );
    let found = std::cell::RefCell::new(std::collections::BTreeMap::<String, u32>::new());
    let survey = wanted("VERDICT_SURVEY").is_some();
    let outcome = TestRunner::new_with_rng(config, rng).run(&numbers, |(of_joint, of_change)| {
        let Some(joint) = joints::joint(&of_joint) else {
            return Ok(());
        };
        property(&joint, &mut Dice::new(&of_change)).or_else(|why| {
            if survey {
                let key = why.lines().next().unwrap_or_default().to_string();
                *found.borrow_mut().entry(key).or_default() += 1;
                return Ok(());
            }
            let document = serde_json::to_string(&joint).unwrap();
            Err(TestCaseError::fail(format!("{why}\n{document}")))
        })
    });
    for (key, count) in found.borrow().iter() {
        println!("{count:5} {key}");
    }
    if let Err(error) = outcome {
        // Without the rows of numbers, which say nothing to a reader.
        let text = error.to_string();
        panic!("{}", text.split("\nminimal failing input").next().unwrap());
    }
}

/// The mode that an error would be an answer for: none is documented but these.
fn is_documented(error: &Error) -> bool {
    matches!(
        error,
        Error::NotInTable { .. }
            | Error::NoValue { .. }
            | Error::OutOfRange { .. }
            | Error::UnknownName { .. }
            | Error::Mismatch(_)
    )
}

/// Why a verdict is what it is, for a failure.
fn why(verdict: &Verdict) -> String {
    let accounts = Mode::ALL
        .into_iter()
        .map(|mode| (mode, verdict.account(mode)));
    let odd = accounts.filter(|(_, account)| matches!(account, Account::Fault | Account::Missing));
    let odd: Vec<String> = odd
        .map(|(mode, account)| format!("{mode} {account}"))
        .collect();
    let checks = verdict.checks.iter().filter(|check| !check.holds());
    let mut lines: Vec<String> = checks.map(|check| format!("  {check}")).collect();
    lines.extend(verdict.faults().map(|fault| format!("  {fault:?}")));
    lines.extend(verdict.open().map(|open| format!("  open: {open}")));
    format!(
        "{}: {}\n{}",
        verdict.word(),
        odd.join(", "),
        lines.join("\n")
    )
}

/// The joints reach every word often: otherwise the properties below say little.
#[test]
fn all_three_words_come_often() {
    let counts = [const { Cell::new(0_u32) }; 4];
    for_all(2000, |joint, _| {
        let at = match joint.check().map(|verdict| verdict.word()) {
            Ok(Word::Holds) => 0,
            Ok(Word::DoesNotHold) => 1,
            Ok(Word::Undecided) => 2,
            Err(_) => 3,
        };
        counts[at].set(counts[at].get() + 1);
        Ok(())
    });
    let counts = counts.each_ref().map(Cell::get);
    let [holds, fails, undecided, refused] = counts;
    println!("holds {holds}, does not hold {fails}, undecided {undecided}, refused {refused}");
    assert!(holds > 200 && fails > 200 && undecided > 200, "{counts:?}");
    assert!(refused < 200, "{counts:?}");
}

/// 1. More load never turns "does not hold" into anything else.
#[test]
fn more_load_never_helps() {
    for_all(4000, |joint, dice| {
        let Ok(before) = joint.check() else {
            return Ok(());
        };
        if before.word() != Word::DoesNotHold {
            return Ok(());
        }
        let times = 1.01 * 100_f64.powf(dice.between(0.0, 0.99));
        let mut more = joint.clone();
        let load = &mut more.load;
        let what = match dice.below(4) {
            0 => {
                load.across *= times;
                "across"
            }
            1 => {
                load.along *= times;
                "along"
            }
            2 => {
                load.shock_factor = (load.shock_factor * times).min(100.0);
                "shock"
            }
            _ => {
                load.load_factor = load.load_factor.map(|factor| (factor * times).min(100.0));
                "load factor"
            }
        };
        match more.check() {
            Err(error) => Err(format!(
                "{what} x {times}: {error}; before {}",
                why(&before)
            )),
            Ok(after) if after.word() != Word::DoesNotHold => Err(format!(
                "{what} x {times}: {}\nbefore {}",
                why(&after),
                why(&before)
            )),
            Ok(_) => Ok(()),
        }
    });
}

/// 4, 6, 8. The verdict is the same with its workings, which prove themselves; every mode is accounted for; and a
/// joint is refused for documented reasons only.
#[test]
fn verdicts_are_whole() {
    for (at, mode) in Mode::ALL.into_iter().enumerate() {
        assert_eq!(
            mode as usize, at,
            "{mode}: Mode::ALL is not in the order of declaration"
        );
    }
    for_all(3000, |joint, _| {
        let verdict = match joint.check() {
            Ok(verdict) => verdict,
            Err(error) if is_documented(&error) => return Ok(()),
            Err(error) => return Err(format!("{error:?}")),
        };
        let (worked, workings) = joint
            .check_with_working()
            .map_err(|error| format!("with workings: {error}"))?;
        if worked != verdict {
            return Err(format!(
                "with workings {}\nwithout {}",
                why(&worked),
                why(&verdict)
            ));
        }
        for working in workings {
            working
                .check()
                .map_err(|error| format!("{}: {error}", working.title()))?;
        }
        accounted(&verdict, joint)
    });
}

/// Whether the account of every mode is what checks, findings and missing facts say.
fn accounted(verdict: &Verdict, joint: &Joint) -> Result<(), String> {
    for mode in Mode::ALL {
        let account = verdict.account(mode);
        let checks = || verdict.checks.iter().filter(|check| check.mode == mode);
        let fault = checks().any(|check| !check.holds())
            || verdict.faults().any(|fault| fault.mode() == mode);
        let missing = verdict.missing.iter().any(|missing| missing.mode == mode);
        let aside = joint.set_aside.iter().any(|own| own.mode == mode);
        let fits = match account {
            Account::Fault => fault,
            Account::Missing => missing && !fault && !aside,
            Account::SetAside => missing && !fault && aside,
            Account::InOrder => !fault && !missing,
            Account::NotConcerned(_) => !fault && !missing && checks().next().is_none(),
            _ => false,
        };
        if !fits {
            return Err(format!("{mode} is {account}: {}", why(verdict)));
        }
        if !joint.scope.covers(mode) && account != Account::NotConcerned(NotConcerned::OutOfScope) {
            return Err(format!("{mode} is outside the scope and {account}"));
        }
    }
    if let Some(missing) = verdict
        .missing
        .iter()
        .find(|missing| matches!(missing.need, Need::Method(why) if why.contains("not looked at")))
    {
        return Err(format!("{missing}"));
    }
    let open = verdict.open().count() > 0;
    let faulty = verdict.faults().count() > 0 || verdict.checks.iter().any(|check| !check.holds());
    let word = match (faulty, open) {
        (true, _) => Word::DoesNotHold,
        (false, true) => Word::Undecided,
        (false, false) => Word::Holds,
    };
    if word != verdict.word() {
        return Err(format!("{} by its lists: {}", word, why(verdict)));
    }
    let used: Vec<f64> = verdict
        .checks
        .iter()
        .map(|check| check.utilisation.value)
        .collect();
    if !used.is_sorted_by(|a, b| a >= b) || used.iter().any(|used| !used.is_finite()) {
        return Err(format!("utilisations {used:?}"));
    }
    Ok(())
}

/// 7. Report and sheet can be written of every verdict in both systems of units, and change nothing in it.
#[test]
fn every_verdict_can_be_written() {
    use shankline::units::UnitSystem;
    for_all(1500, |joint, _| {
        let Ok(verdict) = joint.check() else {
            return Ok(());
        };
        let kept = verdict.clone();
        let sheet = match Sheet::new(joint, &verdict) {
            Ok(sheet) => Some(sheet),
            // A bolt that does not suit and cannot be cut to suit is not fitted: there is nothing to tell the fitter.
            Err(_) if verdict.account(Mode::Length) == Account::Fault => None,
            Err(error) => return Err(format!("sheet: {error}")),
        };
        for system in [UnitSystem::Si, UnitSystem::UsCustomary] {
            let report = verdict.render(system).to_string();
            let word = verdict.word().to_string();
            if !report.to_lowercase().contains(&word) {
                return Err(format!("the report does not say \"{word}\":\n{report}"));
            }
            let text = sheet.as_ref().map(|sheet| sheet.render(system).to_string());
            let text = text.unwrap_or_default();
            for odd in ["NaN", "inf ", "-inf"] {
                if report.contains(odd) || text.contains(odd) {
                    return Err(format!("{odd} in\n{report}\n{text}"));
                }
            }
        }
        if kept == verdict && joint.check().as_ref() == Ok(&kept) {
            Ok(())
        } else {
            Err("the verdict is not what it was".into())
        }
    });
}

/// What may be left out without the verdict having to fall silent, by path, each with its reason. To leave any of
/// these out asks about another joint, or about the same with a standing rule in place of the fact. Elements of lists
/// are parts, and are not told apart here: a joint without them is another joint.
const ANOTHER_QUESTION: &[(&str, &str)] = &[
    ("bolt.length", "the best length is looked for: another bolt"),
    (
        "stack.washers_under_head",
        "no washers there: another stack",
    ),
    ("stack.washers_under_nut", "no washers there: another stack"),
    (
        "stack.other_washers_under_nut",
        "no washers there: another stack",
    ),
    (
        "stack.washer_to_add_under_head",
        "none to add: another stack",
    ),
    ("stack.gaps", "plies that touch: another stack"),
    ("stack.sleeves", "no sleeve: another stack"),
    ("stack.head_seat", "a flat seat: another part"),
    ("stack.spot_face_under_nut", "a flat seat: another part"),
    (
        "stack.tapped_part.counterbore",
        "thread from the face on: another part",
    ),
    ("stack.tapped_part.depth", "tapped through: another part"),
    (
        "stack.tapped_part.lock",
        "no lock: another screw, which may do where nothing shakes",
    ),
    ("stack.plies.*.crush", "a hard ply: another part"),
    ("stack.plies.*.slot", "a round hole: another part"),
    (
        "stack.plies.*.pull",
        "the planes are loaded alike: another load on the same parts",
    ),
    (
        "rules.protrusion_max_pitches",
        "no such limit is set: another rule",
    ),
    (
        "rules.washers_under_head_max",
        "no such limit is set: another rule",
    ),
    ("rules.washers_max", "no such limit is set: another rule"),
    (
        "rules.thread_in_holes_max_pitches",
        "no such limit is set: another rule",
    ),
    (
        "rules.end_not_counted_pitches",
        "chamfers count: another rule",
    ),
    (
        "tightening.torque.settling",
        "left to the relaxation, which is then the whole loss",
    ),
    (
        "tightening.torque.relaxation",
        "left to the settling, which is then the whole loss; without both nothing is decided",
    ),
    (
        "tightening.torque.prevailing",
        "measured on each nut and added: a thing to do",
    ),
    ("tightening.torque.stiffness", "worked out from the parts"),
];

/// 2. Taking information away never makes a joint hold that did not; nor does it settle a mode that was not, unless
/// it leaves another one open for it. (So a fault is seen also where the joint fails for other reasons too.)
#[test]
fn silence_never_helps() {
    for_all(400, |joint, dice| {
        let Ok(before) = joint.check() else {
            return Ok(());
        };
        if before.holds() {
            return Ok(());
        }
        let document = serde_json::to_value(joint).unwrap();
        let paths: Vec<_> = documents::paths(&document)
            .into_iter()
            .filter(|path| !is_another_question(joint, path))
            .collect();
        let pairs: Vec<_> = (0..8)
            .map(|_| {
                [
                    &paths[dice.below(paths.len())],
                    &paths[dice.below(paths.len())],
                ]
            })
            .collect();
        let singles = paths.iter().map(std::slice::from_ref);
        for gone in singles
            .map(|one| vec![&one[0]])
            .chain(pairs.iter().map(|two| two.to_vec()))
        {
            let mut less = document.clone();
            for path in &gone {
                documents::remove(&mut less, path);
            }
            let Ok(less) = serde_json::from_value::<Joint>(less) else {
                continue;
            };
            let Ok(after) = less.check() else { continue };
            let settled = Mode::ALL
                .into_iter()
                .filter(|mode| is_odd(&before, *mode) && !is_odd(&after, *mode));
            let settled: Vec<String> = settled.map(|mode| mode.to_string()).collect();
            let opened = after
                .missing
                .iter()
                .any(|missing| !before.missing.contains(missing));
            if after.holds() || !settled.is_empty() && !opened {
                let gone: Vec<String> = gone.iter().map(|path| general(path)).collect();
                return Err(format!(
                    "without {gone:?} {settled:?} is settled\n{}\nwithout it {}",
                    why(&before),
                    why(&after)
                ));
            }
        }
        Ok(())
    });
}

/// Whether a mode speaks against the word "holds".
fn is_odd(verdict: &Verdict, mode: Mode) -> bool {
    matches!(verdict.account(mode), Account::Fault | Account::Missing)
}

/// A path without the number of the element.
fn general(path: &[String]) -> String {
    let key = |key: &String| {
        if key.parse::<usize>().is_ok() {
            "*".into()
        } else {
            key.clone()
        }
    };
    path.iter().map(key).collect::<Vec<_>>().join(".")
}

fn is_another_question(joint: &Joint, path: &[String]) -> bool {
    // Where nothing is sheared, planes say only where shank has to be: a rule for the length.
    if documents::is_like(path, "stack.shear_planes") && joint.load.across == newtons(0.0) {
        return true;
    }
    let element = path
        .last()
        .is_some_and(|last| last.parse::<usize>().is_ok());
    element
        || ANOTHER_QUESTION
            .iter()
            .any(|(own, _)| documents::is_like(path, own))
}

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

/// 3. A stronger, thicker or wider part never makes a joint fail that held; nor a mode that was in order, whatever
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

/// 5. What is said of one ply changes no figure of another.
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
                checks.extend(missing.map(|missing| format!("{missing}")));
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
