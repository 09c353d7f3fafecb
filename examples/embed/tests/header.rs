//! `shankline.h` says what `door.rs` has; `.ci/run` compares the symbols of the library with it as well.

use shankline_embed::{INTERFACE, QUESTIONS, door};

const HEADER: &str = include_str!("../shankline.h");
const DOOR: &str = include_str!("../src/door.rs");

/// The words of a text that begin so and stand before a bracket.
fn functions<'a>(text: &'a str, before: &str) -> Vec<&'a str> {
    let mut names: Vec<&str> = text
        .split(before)
        .skip(1)
        .filter_map(|rest| rest.split_once('(').map(|(name, _)| name))
        .filter(|name| name.starts_with("shankline_") && !name.contains(char::is_whitespace))
        .collect();
    names.sort_unstable();
    names
}

#[test]
fn the_functions_are_the_same() {
    let native = DOOR
        .split("#[cfg(target_arch = \"wasm32\")]")
        .next()
        .unwrap();
    let prototypes: Vec<&str> = HEADER
        .lines()
        .filter(|line| line.contains(" shankline_") && line.contains('('))
        .collect();
    let prototypes = prototypes
        .join("\n")
        .replace("uint32_t ", "fn ")
        .replace("int32_t ", "fn ")
        .replace("void ", "fn ");
    assert_eq!(functions(&prototypes, "fn "), functions(native, "fn "));
    assert_eq!(functions(native, "fn ").len(), 4);
    assert_eq!(native.matches("no_mangle").count(), 4);
}

#[test]
fn the_numbers_are_the_same() {
    let number = |name: &str| -> u32 {
        let after = HEADER.split(&format!("#define {name} ")).nth(1).unwrap();
        let digits = after.split(|c: char| !c.is_ascii_digit()).next().unwrap();
        digits.parse().unwrap()
    };
    assert_eq!(number("SHANKLINE_INTERFACE"), INTERFACE);
    assert_eq!(number("SHANKLINE_INTERFACE"), door::shankline_interface());
    let known = [
        ("ANSWERED", door::ANSWERED),
        ("REFUSED", door::REFUSED),
        ("MISUSED", door::MISUSED),
    ];
    for (name, status) in known {
        assert_eq!(
            i64::from(number(&format!("SHANKLINE_{name}"))),
            i64::from(status)
        );
    }
}

/// The header, the README and the Python module name every question, and the README no other.
#[test]
fn every_question_is_told() {
    let readme = include_str!("../README.md");
    for (name, _) in QUESTIONS {
        assert!(
            HEADER.contains(&format!("\"{name}\"")),
            "{name} in the header"
        );
        assert!(
            readme.contains(&format!("\n| `{name}` |")),
            "{name} in the README"
        );
    }
    let rows = readme
        .lines()
        .filter(|line| line.starts_with("| `") && line.contains("` | `{"));
    assert_eq!(rows.count(), QUESTIONS.len());
}
