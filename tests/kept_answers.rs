//! What the library answers today, kept: nothing drifts unseen.
//!
//! Every judged joint, three hundred random joints and sixty connections are answered whole, with working, and the figures of
//! each answer stand in `tests/data/kept_answers.csv` as one number; the words of a whole group as another. A kept answer
//! is not known to be right: that is what the other tests are for. It says that a change changes no other answer than
//! those it is about.
//!
//! Where one differs, the whole answer lies in `target/tmp/kept/`. Take the change out, run this test, copy the folder, and
//! compare. Then `UPDATE_KEPT=1 cargo test --all-features --test kept_answers` keeps the new ones.
#![cfg(feature = "drawing")]

use std::collections::BTreeMap;
use std::fmt::Write;
use std::fs;
use std::path::PathBuf;

use shankline::derivation::Format;
use shankline::joint::{Joint, ReportStyle};
use shankline::units::UnitSystem;

mod support;

#[path = "drawing/connections.rs"]
mod connections;
#[path = "support/judged.rs"]
mod judged;
#[path = "support/verdicts.rs"]
mod verdicts;

const KEPT: &str = "tests/data/kept_answers.csv";
const BOTH: [UnitSystem; 2] = [UnitSystem::Si, UnitSystem::UsCustomary];

/// FNV-1a, of 64 bits.
fn sum(bytes: impl Iterator<Item = u8>) -> u64 {
    bytes.fold(0xcbf2_9ce4_8422_2325, |sum, byte| {
        (sum ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
    })
}

fn is_figure(letter: char) -> bool {
    letter.is_ascii_digit() || matches!(letter, '.' | '-' | '+')
}

/// The word and the whole answer of a joint: the document, the report and the working in both systems of units.
fn answer(joint: &Joint) -> (String, String) {
    let (verdict, workings) = match joint.check_with_working() {
        Ok(found) => found,
        Err(error) => return ("refused".into(), error.to_string()),
    };
    let mut text = String::new();
    for system in BOTH {
        let report = joint.report(system).unwrap();
        writeln!(text, "{}", serde_json::to_string_pretty(&report).unwrap()).unwrap();
        writeln!(text, "{}", report.render(ReportStyle::Text)).unwrap();
        for working in &workings {
            working.check().unwrap();
            writeln!(text, "{}", working.render(Format::Markdown, system)).unwrap();
        }
    }
    for caution in &verdict.cautions {
        writeln!(text, "{caution}").unwrap();
    }
    (verdict.word().to_string(), text)
}

/// The tests of this file run side by side, and each writes its own group.
static WRITES: std::sync::Mutex<()> = std::sync::Mutex::new(());

/// Compares a group with what is kept of it, or keeps it.
fn compare(group: &str, answers: Vec<(String, (String, String))>) {
    let file = support::repository(KEPT);
    let folder: PathBuf = [env!("CARGO_TARGET_TMPDIR"), "kept", group]
        .iter()
        .collect();
    fs::create_dir_all(&folder).unwrap();
    let mut rows = BTreeMap::new();
    let mut words = String::new();
    for (name, (word, text)) in answers {
        let figures = sum(text.chars().filter(|&c| is_figure(c)).map(|c| c as u8));
        words.extend(text.chars().filter(|&c| !is_figure(c)));
        fs::write(
            folder.join(name.replace(|c: char| !c.is_alphanumeric(), "_")),
            text,
        )
        .unwrap();
        let before = rows.insert(name.clone(), (word, format!("{figures:016x}")));
        assert!(before.is_none(), "two answers are called {name}");
    }
    rows.insert(
        "words of all".into(),
        (String::new(), format!("{:016x}", sum(words.bytes()))),
    );

    let guard = WRITES.lock();
    let mut all: BTreeMap<(String, String), (String, String)> = BTreeMap::new();
    for row in support::csv_rows(KEPT) {
        let cell = |column: &str| row.get(column).cloned().unwrap_or_default();
        all.insert((cell("group"), cell("name")), (cell("word"), cell("sum")));
    }
    if std::env::var_os("UPDATE_KEPT").is_some() {
        all.retain(|(of, _), _| of != group);
        all.extend(
            rows.into_iter()
                .map(|(name, kept)| ((group.to_string(), name), kept)),
        );
        let mut writer = csv::Writer::from_path(file).unwrap();
        writer
            .write_record(["group", "name", "word", "sum"])
            .unwrap();
        for ((group, name), (word, sum)) in all {
            writer.write_record([group, name, word, sum]).unwrap();
        }
        writer.flush().unwrap();
        return;
    }
    drop(guard);
    all.retain(|(of, _), _| of == group);
    let now: BTreeMap<_, _> = rows
        .into_iter()
        .map(|(name, kept)| ((group.to_string(), name), kept))
        .collect();
    let other: Vec<&String> = now
        .iter()
        .filter(|(key, kept)| all.get(*key) != Some(*kept))
        .map(|((_, name), _)| name)
        .collect();
    let gone: Vec<&String> = all
        .keys()
        .filter(|key| !now.contains_key(*key))
        .map(|(_, name)| name)
        .collect();
    assert!(
        other.is_empty() && gone.is_empty(),
        "{} answers of {group} are not as kept: {:?}; {} are gone: {gone:?}. See {}",
        other.len(),
        &other[..other.len().min(12)],
        gone.len(),
        folder.display()
    );
}

fn judged_of(ending: &str) {
    let (_, file) = judged::files()
        .into_iter()
        .find(|(name, _)| name.ends_with(&format!("/{ending}.toml")))
        .unwrap();
    let answers = file.case.iter().map(|case| {
        let joint = serde_json::from_value::<Joint>(judged::document(&file, case));
        (
            case.name.clone(),
            joint.map_or_else(
                |error| ("refused".into(), error.to_string()),
                |joint| answer(&joint),
            ),
        )
    });
    compare(ending, answers.collect());
}

#[test]
fn judged_by_aisc() {
    judged_of("aisc");
}

#[test]
fn judged_by_en_1993() {
    judged_of("en_1993");
}

#[test]
fn judged_with_faults() {
    judged_of("faults");
}

#[test]
fn judged_as_machines() {
    judged_of("machine_inch");
    judged_of("machine_metric");
    judged_of("inserts");
}

#[test]
fn judged_by_other_codes() {
    judged_of("other_codes");
    judged_of("slip_of_codes");
}

#[test]
fn judged_with_aircraft_bolts() {
    judged_of("aircraft");
}

#[test]
fn judged_with_own_parts_in_timber_and_undecided() {
    judged_of("own_parts");
    judged_of("timber");
    judged_of("undecided");
}

#[test]
fn every_file_of_judged_joints_is_kept() {
    let kept: Vec<String> = support::csv_rows(KEPT)
        .iter()
        .filter_map(|row| row.get("group").cloned())
        .collect();
    for (name, _) in judged::files() {
        let group = name
            .rsplit('/')
            .next()
            .unwrap()
            .trim_end_matches(".toml")
            .to_string();
        assert!(
            kept.contains(&group),
            "{group} is not kept: a line above, and UPDATE_KEPT=1"
        );
    }
}

fn random_joints(group: &str, first: u64) {
    let mut answers = Vec::new();
    for seed in first.. {
        let mut numbers = support::Random(seed);
        let row: Vec<u16> = (0..verdicts::joints::NUMBERS)
            .map(|_| numbers.below(1 << 16).try_into().unwrap())
            .collect();
        if let Some(joint) = verdicts::joints::joint(&row) {
            let (word, mut text) = answer(&joint);
            if let Some(found) = verdicts::selection(&joint) {
                for system in BOTH {
                    let found = found.report(system);
                    writeln!(text, "{}", serde_json::to_string(&found).unwrap()).unwrap();
                }
            }
            answers.push((seed.to_string(), (word, text)));
        }
        if answers.len() == 60 {
            break;
        }
    }
    compare(group, answers);
}

#[test]
fn random_joints_1() {
    random_joints("random 1", 10_000);
}

#[test]
fn random_joints_2() {
    random_joints("random 2", 20_000);
}

#[test]
fn random_joints_3() {
    random_joints("random 3", 30_000);
}

#[test]
fn random_joints_4() {
    random_joints("random 4", 40_000);
}

#[test]
fn random_joints_5() {
    random_joints("random 5", 50_000);
}

#[test]
fn chosen_and_random_connections() {
    let mut all: Vec<(String, shankline::connection::Connection)> = connections::chosen()
        .into_iter()
        .map(|(name, own, _)| (name.to_string(), own))
        .collect();
    all.extend(
        (0..200)
            .filter_map(|seed| Some((seed.to_string(), connections::random(seed)?)))
            .take(60),
    );
    let answers = all.into_iter().map(|(name, connection)| {
        let answer = match connection.check() {
            Ok(verdict) => {
                let mut text = BOTH
                    .map(|system| verdict.render(system).to_string())
                    .concat();
                write!(text, "{verdict:?}").unwrap();
                (verdict.word().to_string(), text)
            }
            Err(error) => ("refused".into(), error.to_string()),
        };
        (name, answer)
    });
    compare("connections", answers.collect());
}
