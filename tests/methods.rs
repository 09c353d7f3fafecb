//! The rows of `tables/methods.csv`: each is used, and what they say of modes and levels makes the table at the head of
//! `strength`: `UPDATE_TABLES=1 cargo test --test methods` writes it.

mod support;

use std::{collections::BTreeMap, fmt::Write, fs, path::Path};

use shankline::{
    catalogue::Key,
    source::{Basis, Method, Publisher},
    strength::check::{Level, Mode},
};
use support::{csv_rows, repository};

/// Every Rust file of the library but what is generated, without its tests.
fn code() -> Vec<(String, String)> {
    fn walk(folder: &Path, found: &mut Vec<(String, String)>) {
        for entry in fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                if !path.ends_with("generated") {
                    walk(&path, found);
                }
            } else if path.extension().is_some_and(|ending| ending == "rs") {
                let text = fs::read_to_string(&path).unwrap();
                let text = text.split("#[cfg(test)]\nmod tests {").next().unwrap();
                let lines = text
                    .lines()
                    .filter(|line| !line.trim_start().starts_with("//"));
                let name = path.strip_prefix(repository("src")).unwrap();
                found.push((
                    name.display().to_string(),
                    lines.collect::<Vec<_>>().join("\n"),
                ));
            }
        }
    }
    let mut found = Vec::new();
    walk(&repository("src"), &mut found);
    found
}

#[test]
fn every_row_is_read_by_a_computation() {
    let code = code();
    let unused: Vec<&str> = Method::all()
        .iter()
        .map(|method| method.key)
        .filter(|key| {
            let name = format!("methods::{}", key.to_uppercase().replace(['.', '-'], "_"));
            let whole = |text: &str| {
                text.match_indices(&name).any(|(at, _)| {
                    let next = text[at + name.len()..].chars().next();
                    !next.is_some_and(|c| c.is_ascii_alphanumeric() || c == '_')
                })
            };
            !code.iter().any(|(_, text)| whole(text))
        })
        .collect();
    assert_eq!(unused, [""; 0], "rows that nothing rests on");
}

#[test]
fn no_text_stands_in_place_of_a_method() {
    for (file, text) in code() {
        for call in [".source(\"", ".source(format!"] {
            assert!(!text.contains(call), "{file}: {call}");
        }
        // A recalled method is data: `Caution::of_method` looks at its row.
        let makes = text.contains("MethodFromMemory {") && !file.starts_with("caution");
        assert!(
            !makes,
            "{file} makes the caution of a recalled method by hand"
        );
    }
}

#[test]
fn rows_read_back() {
    let rows = csv_rows("tables/methods.csv");
    assert_eq!(rows.len(), Method::all().len());
    for (row, method) in rows.iter().zip(Method::all()) {
        assert_eq!(row["key"], method.key);
        assert_eq!(row["citation"], method.to_string());
        assert_eq!(row["document"], method.document);
        assert_eq!(row["edition"], method.edition.unwrap_or_default());
        assert_eq!(row["clause"], method.clause.unwrap_or_default());
        assert_eq!(row["basis"] == "memory", method.basis == Basis::Memory);
        assert_eq!(row["read_in"], method.read_in);
        assert_eq!(row["modes"], words(method.decides().map(Key::code)));
        assert_eq!(row["levels"], words(method.levels().map(Key::code)));
        assert_eq!(Method::get(method.key), Some(*method));
        // What is recalled says so where it is cited, or in how it is known; nothing else says so.
        let told = method.citation.contains("recalled");
        assert!(!told || method.basis == Basis::Memory, "{}", method.key);
    }
}

fn words(codes: impl Iterator<Item = &'static str>) -> String {
    codes.collect::<Vec<_>>().join(" ")
}

/// Modes that a publisher may give a resistance or a rule for.
const MODES: [Mode; 20] = [
    Mode::BoltShear,
    Mode::BoltTension,
    Mode::BoltBending,
    Mode::Combined,
    Mode::Fatigue,
    Mode::Preload,
    Mode::Stripping,
    Mode::Bearing,
    Mode::BoltBearing,
    Mode::TearOut,
    Mode::NetSection,
    Mode::GrossSection,
    Mode::BlockShear,
    Mode::TimberYield,
    Mode::Distances,
    Mode::Pressure,
    Mode::PullThrough,
    Mode::Prying,
    Mode::Separation,
    Mode::Slip,
];

/// Heading, key in `method_holes.csv`, publishers of the rows.
type Column = (&'static str, &'static str, &'static [Publisher]);

const STEEL: [Column; 6] = [
    ("AISC", "aisc", &[Publisher::Aisc, Publisher::Rcsc]),
    ("EN", "cen", &[Publisher::Cen, Publisher::Din]),
    ("BS", "bsi", &[Publisher::Bsi]),
    ("IS 800", "bis", &[Publisher::Bis]),
    (
        "AS 4100",
        "standards_australia",
        &[Publisher::StandardsAustralia],
    ),
    ("CSA S16", "csa", &[Publisher::Csa]),
];

const OTHERS: [Column; 5] = [
    (
        "machine design",
        "machine",
        &[
            Publisher::Mechanics,
            Publisher::Textbook,
            Publisher::Sae,
            Publisher::Practice,
            Publisher::Caller,
        ],
    ),
    (
        "US military, FAA",
        "us_defense",
        &[Publisher::UsDefense, Publisher::Faa],
    ),
    ("NASA", "nasa", &[Publisher::Nasa]),
    ("VDI 2230", "vdi", &[Publisher::Vdi]),
    ("NDS", "awc", &[Publisher::Awc]),
];

fn cell(
    mode: Mode,
    (_, key, publishers): Column,
    holes: &mut BTreeMap<(String, String), (String, String)>,
) -> String {
    let given: Vec<String> = Method::all()
        .iter()
        .filter(|method| {
            publishers.contains(&method.publisher) && method.decides().any(|own| own == mode)
        })
        .map(|method| {
            let levels: String = method
                .levels()
                .map(|level| match level {
                    Level::Nominal => 'N',
                    Level::Design => 'D',
                    _ => 'A',
                })
                .collect();
            let known = match method.basis {
                Basis::Published => 'p',
                Basis::Reproduced => 'r',
                Basis::Computed => 'c',
                _ => 'm',
            };
            format!(
                "{} `{}`",
                method.citation,
                format!("{levels} {known}").trim()
            )
        })
        .collect();
    let hole = holes.remove(&(key.to_owned(), mode.code().to_owned()));
    match (given.is_empty(), hole) {
        (false, None) => given.join("; "),
        (true, Some((standing, note))) => {
            let standing = standing.replace('_', " ");
            if note.is_empty() {
                format!("*{standing}*")
            } else {
                format!("*{standing}*: {note}")
            }
        }
        (given, hole) => panic!("{key} {mode:?}: no row {given}, and in method_holes.csv {hole:?}"),
    }
}

#[test]
fn the_table_of_methods_is_current() {
    let mut holes: BTreeMap<_, _> = csv_rows("tests/data/method_holes.csv")
        .into_iter()
        .map(|row| {
            (
                (row["publisher"].clone(), row["mode"].clone()),
                (row["standing"].clone(), row["note"].clone()),
            )
        })
        .collect();
    let mut text = String::from(
        "Behind each citation: the levels it gives (N nominal, D design, A allowable; none for a rule), and how it is known \
         (p published, r reproduced, c computed, m from memory). *not given*: that publisher has nothing of the kind, as far \
         as is known here; *not built*: it has, in the place that is named (from memory), and this crate has not.\n",
    );
    for columns in [&STEEL[..], &OTHERS[..]] {
        text.push_str("\n| mode |");
        for (heading, ..) in columns {
            write!(text, " {heading} |").unwrap();
        }
        text.push_str("\n|---|");
        text.push_str(&"---|".repeat(columns.len()));
        text.push('\n');
        for mode in MODES {
            write!(text, "| {mode} |").unwrap();
            for column in columns {
                write!(text, " {} |", cell(mode, *column, &mut holes)).unwrap();
            }
            text.push('\n');
        }
    }
    assert!(holes.is_empty(), "holes that are none: {holes:?}");
    let path = repository("src/strength/methods.md");
    if fs::read_to_string(&path).unwrap_or_default() != text {
        assert!(
            std::env::var_os("UPDATE_TABLES").is_some(),
            "not current: run UPDATE_TABLES=1 cargo test --test methods"
        );
        fs::write(path, text).unwrap();
    }
}

/// A source in words is a source that no table knows: what is shown in brackets comes from a row.
#[test]
fn no_source_stands_in_a_text() {
    const NAMES: [&str; 12] = [
        "AISC",
        "ASTM",
        "BS ",
        "EN ",
        "FAA",
        "ISO ",
        "NDS",
        "RCSC",
        "SAE",
        "Shigley",
        "VDI",
        "common practice",
    ];
    for (path, text) in code() {
        for line in text.lines() {
            let named = NAMES.iter().find(|name| line.contains(&format!("[{name}")));
            assert_eq!(named, None, "{path}: {}", line.trim());
        }
    }
}
