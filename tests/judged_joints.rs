//! Judged joints: for each the word, the mode that governs and its utilisation, worked out by hand beside it.
//!
//! `tests/data/judged/*.toml`. A file has bases, each a whole joint as a request would have it, and cases: a base with
//! values set and removed by path (`"load.across"`, `"stack.plies.0.hole"`), and what must come out:
//!
//! | key | means |
//! |---|---|
//! | `word` | `holds`, `does_not_hold` or `undecided` |
//! | `mode`, `place` | what governs (a case that holds or is overloaded), is at fault, or is missing |
//! | `utilisation` | of that check, to four digits, by the arithmetic in `hand` |
//! | `fault` | what the text of the fault must contain |
//! | `missing` | every line that is not checked must contain one of these, and each must stand somewhere |
//! | `error` | what the refusal must contain, in place of a word |
//! | `hand` | the arithmetic, step by step |
//! | `source` | who states the rule |

#![cfg(feature = "serde")]

use std::collections::BTreeMap;

use serde_json::Value;
use shankline::joint::{Account, Joint, Verdict, Word};
use shankline::strength::check::Mode;
use shankline::units::UnitSystem;

mod support;

#[path = "support/judged.rs"]
mod judged;

use judged::{Case, document, files};

/// What came out other than it must, if anything did.
fn judge(case: &Case, joint: Value) -> Result<Option<Verdict>, String> {
    let joint: Result<Joint, _> = serde_json::from_value(joint);
    let verdict = joint
        .map_err(|error| error.to_string())
        .and_then(|joint| joint.check().map_err(|error| error.to_string()));
    let verdict = match (verdict, &case.error) {
        (Err(error), Some(wanted)) if error.contains(wanted.as_str()) => return Ok(None),
        (Err(error), _) => return Err(format!("refused: {error}")),
        (Ok(verdict), Some(wanted)) => {
            return Err(format!("not refused ({wanted}), but {}", verdict.word()));
        }
        (Ok(verdict), None) => verdict,
    };
    let wanted = match case.word.as_deref() {
        Some("holds") => Word::Holds,
        Some("does_not_hold") => Word::DoesNotHold,
        Some("undecided") => Word::Undecided,
        other => return Err(format!("no such word: {other:?}")),
    };
    if verdict.word() != wanted {
        return Err(format!(
            "{} instead of {wanted}\n{}",
            verdict.word(),
            verdict.render(UnitSystem::Si)
        ));
    }
    if let Some(utilisation) = case.utilisation {
        governs(case, &verdict, utilisation)?;
    }
    if let Some(fault) = &case.fault {
        let texts: Vec<String> = verdict
            .faults()
            .map(|finding| finding.text(UnitSystem::Si))
            .collect();
        if !texts.iter().any(|text| text.contains(fault.as_str())) {
            return Err(format!("no fault \"{fault}\" among {texts:#?}"));
        }
    }
    let open: Vec<String> = verdict.open().map(ToString::to_string).collect();
    if wanted == Word::Undecided {
        if case.missing.is_empty() {
            return Err("an undecided case says what is missing".into());
        }
        for line in &open {
            if !case.missing.iter().any(|part| line.contains(part.as_str())) {
                return Err(format!("missing as well: {line}"));
            }
        }
        for part in &case.missing {
            if !open.iter().any(|line| line.contains(part.as_str())) {
                return Err(format!("\"{part}\" is not among {open:#?}"));
            }
        }
    }
    Ok(Some(verdict))
}

fn governs(case: &Case, verdict: &Verdict, utilisation: f64) -> Result<(), String> {
    let (mode, place) = (case.mode.as_deref(), case.place.as_deref());
    let Some(worst) = verdict.governing() else {
        return Err("nothing was compared".into());
    };
    let is = |check: &shankline::strength::check::Check| {
        mode.is_none_or(|mode| check.mode.to_string() == mode)
            && place.is_none_or(|place| check.place.to_string() == place)
    };
    // Of equals any may stand first.
    let equals = verdict
        .checks
        .iter()
        .filter(|check| check.utilisation.value > worst.utilisation.value * (1.0 - 1e-9));
    let Some(own) = equals.into_iter().find(|check| is(check)) else {
        return Err(format!(
            "{worst} governs\n{}",
            verdict.render(UnitSystem::Si)
        ));
    };
    let found = own.utilisation.value;
    // Four digits by hand.
    if (found - utilisation).abs() > 6e-4 * utilisation.max(1.0) {
        return Err(format!(
            "{mode:?} {place:?}: {found:.5}, by hand {utilisation}"
        ));
    }
    Ok(())
}

/// Every joint of one file.
fn judged(wanted: &str) {
    let files = files();
    let file = files.iter().find(|(name, _)| name.ends_with(wanted));
    let (_, file) = file.unwrap_or_else(|| panic!("no file {wanted}"));
    let mut wrong = Vec::new();
    for case in &file.case {
        assert!(!case.hand.is_empty(), "{}: nothing by hand", case.name);
        assert!(!case.source.is_empty(), "{}: no source", case.name);
        if let Err(why) = judge(case, document(file, case)) {
            wrong.push(format!("{}: {why}", case.name));
        }
    }
    assert!(
        wrong.is_empty(),
        "{} of {} joints of {wanted}:\n{}",
        wrong.len(),
        file.case.len(),
        wrong.join("\n")
    );
}

// One test a file: what is changed in the crate is soon seen.

#[test]
fn aisc() {
    judged("aisc.toml");
}

#[test]
fn en_1993() {
    judged("en_1993.toml");
}

#[test]
fn faults() {
    judged("faults.toml");
}

#[test]
fn machine_inch() {
    judged("machine_inch.toml");
}

#[test]
fn machine_metric() {
    judged("machine_metric.toml");
}

#[test]
fn other_codes() {
    judged("other_codes.toml");
}

#[test]
fn own_parts() {
    judged("own_parts.toml");
}

#[test]
fn slip_of_codes() {
    judged("slip_of_codes.toml");
}

#[test]
fn aircraft() {
    judged("aircraft.toml");
}

#[test]
fn inserts() {
    judged("inserts.toml");
}

#[test]
fn timber() {
    judged("timber.toml");
}

#[test]
fn undecided() {
    judged("undecided.toml");
}

#[test]
fn every_file_is_judged_and_counted() {
    let files = files();
    let own = std::fs::read_to_string(support::repository("tests/judged_joints.rs")).unwrap();
    for (name, _) in &files {
        let file = name.rsplit(['/', '\\']).next().unwrap();
        assert!(own.contains(&format!("judged(\"{file}\")")), "{file}");
    }
    let count: usize = files.iter().map(|(_, file)| file.case.len()).sum();
    let readme = std::fs::read_to_string("README.md").unwrap();
    let counted = format!("by {count} invented joints");
    assert!(
        readme.contains(&counted),
        "the README does not say: {counted}"
    );
}

/// Every mode that compares figures governs somewhere, on both sides of its limit; every other one is at fault
/// somewhere; every mode is missing, or never can be.
#[test]
fn every_mode_decides_somewhere() {
    let mut governs: BTreeMap<Mode, [usize; 2]> = BTreeMap::new();
    let mut faults: BTreeMap<Mode, usize> = BTreeMap::new();
    for (name, file) in files() {
        for case in &file.case {
            let Ok(Some(verdict)) = judge(case, document(&file, case)) else {
                continue;
            };
            for mode in Mode::ALL {
                if verdict.account(mode) == Account::Fault {
                    *faults.entry(mode).or_default() += 1;
                }
            }
            if let (Some(worst), Some(_)) = (verdict.governing(), case.utilisation) {
                let at = usize::from(!worst.holds());
                governs.entry(worst.mode).or_default()[at] += 1;
            }
            assert!(!name.is_empty());
        }
    }
    // Modes that are never more than a caution or a missing fact.
    let never = [
        Mode::Loads,
        // A nut too weak strips; threads that do not fit are at fault for their fit.
        Mode::Pairing,
        Mode::Galling,
        Mode::Prying,
        Mode::BlockShear,
        Mode::Settling,
    ];
    let silent: Vec<Mode> = Mode::ALL
        .into_iter()
        .filter(|mode| !never.contains(mode))
        .filter(|mode| !faults.contains_key(mode))
        .collect();
    assert!(silent.is_empty(), "never at fault: {silent:?}");
    let one_sided: Vec<_> = governs
        .iter()
        .filter(|(_, [below, above])| *below == 0 || *above == 0)
        .collect();
    assert!(
        one_sided.is_empty(),
        "governs on one side of its limit only: {one_sided:?}"
    );
}
