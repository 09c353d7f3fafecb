//! The modules of the crate stand in an order, and know only what is below them.

use std::{collections::BTreeSet, fs, path::Path};

/// From the lowest room to the highest. Modules on one line do not know each other.
const ORDER: &[&[&str]] = &[
    &["math", "objects"],
    &["units"],
    &["source", "error"],
    &["spread", "caution", "derivation"],
    &["names"],
    &["schema"],
    &["tables"],
    &["thread"],
    &["material"],
    &["parts"],
    &["strength"],
    &["preload", "tension"],
    &["vdi_2230", "nasa_std_5020"],
    &["catalogue"],
    &["joint"],
    &["connection"],
    &["assembly"],
    &["drawing"],
];

/// What the root gives on from its modules; the root itself is above them all.
const ROOT: &[(&str, &str)] = &[
    ("Error", "error"),
    ("Spread", "spread"),
    ("PlusMinus", "spread"),
];

fn level(module: &str) -> Option<usize> {
    ORDER.iter().position(|level| level.contains(&module))
}

/// The code of a file without comments, doc examples and unit tests, which stand at its end; lines keep their numbers.
fn code(text: &str) -> String {
    let lines = text.lines().map(|line| line.split("//").next().unwrap());
    let lines: Vec<&str> = lines.collect();
    let tests = lines.windows(2).position(|two| {
        two[0].starts_with("#[cfg(") && two[0].contains("test") && two[1].ends_with('{')
    });
    lines[..tests.unwrap_or(lines.len())].join("\n")
}

/// The names that a path goes on with: one, or those of a group such as `{a::{b, c}, d}`.
fn heads(path: &str) -> Vec<String> {
    let word = |text: &str| -> String {
        let text = text.trim_start().chars();
        text.take_while(|c| c.is_alphanumeric() || *c == '_')
            .collect()
    };
    let Some(group) = path.trim_start().strip_prefix('{') else {
        return vec![word(path)];
    };
    let (mut depth, mut heads) = (1, vec![word(group)]);
    for (at, character) in group.char_indices() {
        match character {
            '{' => depth += 1,
            '}' => depth -= 1,
            ',' if depth == 1 => heads.push(word(&group[at + 1..])),
            _ => {}
        }
        if depth == 0 {
            break;
        }
    }
    heads.retain(|head| !head.is_empty());
    heads
}

/// Where paths begin that lead to the root, and what they go on with: after `crate::`, and after as many `super::` as the
/// module is deep. (A module within a file is deeper: the names its `super::` leads to are not those of `ORDER`.)
fn from_root(code: &str, depth: usize) -> Vec<(usize, &str)> {
    let supers = "super::".repeat(depth);
    let mut found = Vec::new();
    for start in ["crate::", &supers] {
        for (at, _) in code.match_indices(start) {
            let before = code[..at].chars().next_back();
            let inside = |c: char| c.is_alphanumeric() || c == '_' || c == ':';
            if !before.is_some_and(inside) {
                found.push((at, &code[at + start.len()..]));
            }
        }
    }
    found
}

fn look(folder: &Path, wrong: &mut BTreeSet<String>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            look(&path, wrong);
            continue;
        }
        let inner = path.strip_prefix("src").unwrap().with_extension("");
        let parts: Vec<&str> = inner.iter().map(|part| part.to_str().unwrap()).collect();
        let is_code = path.extension().is_some_and(|extension| extension == "rs");
        if !is_code || parts == ["lib"] || parts.last() == Some(&"tests") {
            continue;
        }
        let code = code(&fs::read_to_string(&path).unwrap());
        let own = level(parts[0]).unwrap_or_else(|| panic!("{} has no place", parts[0]));
        for (at, rest) in from_root(&code, parts.len()) {
            for head in heads(rest) {
                let given_on = ROOT.iter().find(|(name, _)| *name == head);
                let to = given_on.map_or(&*head, |(_, module)| module);
                if to != parts[0] && level(to).is_some_and(|level| level >= own) {
                    let line = 1 + code[..at].matches('\n').count();
                    wrong.insert(format!(
                        "{}:{line}: {} knows {to}",
                        path.display(),
                        parts[0]
                    ));
                }
            }
        }
    }
}

#[test]
fn every_module_knows_only_what_is_below_it() {
    let mut wrong = BTreeSet::new();
    look(Path::new("src"), &mut wrong);
    let list: Vec<String> = wrong.into_iter().collect();
    assert!(
        list.is_empty(),
        "{} edges go up:\n{}",
        list.len(),
        list.join("\n")
    );
}
