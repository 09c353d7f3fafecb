//! Reads names as people type them, and finds those that are near.

use alloc::{borrow::ToOwned, format, string::String, vec::Vec};

use super::Key;
use crate::error::{Error, sane_text};

/// A family so small that an error lists all of it.
const FEW: usize = 8;

/// As many near names are offered.
const OFFERED: usize = 4;

/// As many members are offered that a text could mean.
const MEANT: usize = 10;

/// What no name begins with: it would not say of what.
const CONTINUES: [&str; 3] = ["type", "to", "group"];

/// A code and its label.
type Name = (&'static str, &'static str);

pub(super) fn key<K: Key>(text: &str) -> Result<K, Error> {
    // A program gives the label itself, and often.
    if let Some(key) = K::ALL.iter().find(|key| text == key.label()) {
        return Ok(*key);
    }
    sane_text(K::FAMILY, text)?;
    // What follows is compiled once, and not for every family.
    let mut names: Vec<Name> = Vec::with_capacity(K::ALL.len());
    for key in K::ALL {
        names.push((key.code(), key.label()));
    }
    match place(text, &names) {
        Ok(at) => K::ALL
            .get(at)
            .copied()
            .ok_or_else(|| unknown(K::FAMILY, text, String::new())),
        Err(known) => Err(unknown(K::FAMILY, text, known)),
    }
}

#[cold]
fn unknown(what: &'static str, text: &str, known: String) -> Error {
    Error::UnknownName {
        what,
        text: text.into(),
        known,
    }
}

/// Which of the names is meant, or what there is instead.
fn place(text: &str, names: &[Name]) -> Result<usize, String> {
    let wanted = Wanted::of(text);
    let whole = |(code, label): &Name| wanted.code == *code || wanted.squeezed == squeezed(label);
    if let Some(at) = names.iter().position(whole) {
        return Ok(at);
    }
    let mut meant = Vec::new();
    if wanted.may_end() {
        meant = members(names, &|label| wanted.ends(label));
        // "dry" is no name of dry stainless bolts.
        if meant.is_empty() && wanted.has_digit() {
            meant = members(names, &|label| wanted.is_part(label));
        }
    }
    match meant[..] {
        [one] => Ok(one),
        _ => Err(instead(&wanted, names, &meant)),
    }
}

fn members(names: &[Name], is_meant: &dyn Fn(&[String]) -> bool) -> Vec<usize> {
    let places = names.iter().enumerate();
    places
        .filter(|(_, (_, label))| is_meant(&words(label)))
        .map(|(at, _)| at)
        .collect()
}

/// What was typed, made ready to compare.
struct Wanted {
    /// To compare with codes, which have underscores: "structural bolt" could be one of several products.
    code: String,
    /// Without what separates words.
    squeezed: String,
    words: Vec<String>,
}

impl Wanted {
    fn of(text: &str) -> Self {
        let words = words(text);
        Self {
            code: text.trim().to_lowercase(),
            squeezed: words.concat(),
            words,
        }
    }

    /// Whether it can be told from a slip of the hand as the end of a label: see [`Key::read`].
    fn may_end(&self) -> bool {
        let letters = self.squeezed.chars().filter(|c| c.is_alphabetic()).count();
        let begins = self.words.first().map_or("", String::as_str);
        letters > 0
            && self.squeezed.chars().count() >= 2
            && (letters <= 3 || self.has_digit())
            && !CONTINUES.contains(&begins)
    }

    fn has_digit(&self) -> bool {
        self.squeezed.chars().any(|c| c.is_ascii_digit())
    }

    /// Whether it is the end of a label, or has its words in their order up to the last.
    fn ends(&self, label: &[String]) -> bool {
        let is_end = |at: &usize| {
            let end = label.get(*at..).unwrap_or_default();
            end.concat() == self.squeezed
        };
        let mut ends = (0..label.len()).filter(is_end);
        ends.any(|at| may_begin(label, at))
            || (self.words.last() == label.last() && self.is_part(label))
    }

    /// How far the last number of a label is from its own, in hundredths.
    fn gap(&self, label: &[String]) -> u64 {
        let number =
            |words: &[String]| words.iter().rev().find_map(|word| word.parse::<f64>().ok());
        let gap = number(&self.words)
            .zip(number(label))
            .map(|(a, b)| 100.0 * (a - b).abs());
        // `as` saturates. Nothing is computed with it: it sorts names.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        gap.map_or(u64::MAX, |gap| gap as u64)
    }

    /// Whether a label has all its words, of which there are some.
    fn has_words_of(&self, label: &[String]) -> bool {
        !self.words.is_empty() && self.words.iter().all(|word| label.contains(word))
    }

    /// Whether a label has all its words that hold a digit, of which there are some.
    fn has_numbers_of(&self, label: &[String]) -> bool {
        let numbers = || {
            let words = self.words.iter();
            words.filter(|word| word.contains(|c: char| c.is_ascii_digit()))
        };
        numbers().next().is_some() && numbers().all(|word| label.contains(word))
    }

    /// Whether a label has all its words in their order.
    fn is_part(&self, label: &[String]) -> bool {
        let Some((first, others)) = self.words.split_first() else {
            return false;
        };
        let begins = |at: &usize| label.get(*at) == Some(first) && may_begin(label, *at);
        (0..label.len()).filter(begins).any(|at| {
            let mut rest = label.iter().skip(at + 1);
            others.iter().all(|word| rest.any(|other| other == word))
        })
    }
}

/// Whether a part of a label may begin at a word: not at a bare number within it. "2A" is a class of threads, and
/// not the end of "F593 group 2 A".
fn may_begin(label: &[String], at: usize) -> bool {
    let word = label.get(at);
    at == 0 || word.is_some_and(|word| word.contains(char::is_alphabetic))
}

/// The words of a text in small letters; a point is part of a word, what else is no letter and no digit stands
/// between two.
fn words(text: &str) -> Vec<String> {
    let lower = text.to_lowercase();
    let split = lower.split(|c: char| !(c.is_alphanumeric() || c == '.'));
    let split = split.map(|word| word.trim_matches('.'));
    let mut words = Vec::new();
    for word in split.filter(|word| !word.is_empty()) {
        let number = |short: &str| {
            word.strip_prefix(short)
                .filter(|rest| rest.starts_with(|c: char| c.is_ascii_digit()))
        };
        match word {
            "gr" => words.push("grade".to_owned()),
            "cl" => words.push("class".to_owned()),
            _ => {
                if let Some(rest) = number("gr.").or_else(|| number("gr")) {
                    words.push("grade".to_owned());
                    words.push(rest.to_owned());
                } else {
                    words.push(word.to_owned());
                }
            }
        }
    }
    words
}

fn squeezed(text: &str) -> String {
    words(text).concat()
}

#[cold]
fn instead(wanted: &Wanted, names: &[Name], meant: &[usize]) -> String {
    let count = names.len();
    let mut offered: Vec<&str> = if count <= FEW {
        names.iter().map(|(_, label)| *label).collect()
    } else if meant.is_empty() {
        near(wanted, names)
    } else {
        let meant = meant.iter().filter_map(|at| names.get(*at));
        meant.map(|(_, label)| *label).collect()
    };
    offered.truncate(MEANT);
    let mut known = offered.join("; ");
    if offered.len() < count {
        known = format!("{known} (the nearest of {count})");
    }
    known
}

/// The labels nearest to a text: first those that have its words, then those that have its numbers, then by the
/// fewest letters to change, then by the nearest number.
fn near(wanted: &Wanted, names: &[Name]) -> Vec<&'static str> {
    let mut ranked: Vec<(u8, usize, u64, &'static str)> = names
        .iter()
        .map(|(code, name)| {
            let label = words(name);
            // The text against every run of words, as people leave words out at both ends.
            let runs = (0..label.len()).flat_map(|from| {
                let ends = from + 1..=label.len();
                ends.map(move |end| (from, end))
            });
            let runs = runs.filter_map(|(from, end)| label.get(from..end));
            let runs = runs.map(|run| distance(&wanted.squeezed, &run.concat()));
            let lacks = if wanted.has_words_of(&label) {
                0
            } else {
                // "grade 8.8" is more likely class 8.8 than grade 8.2.
                2 - u8::from(wanted.has_numbers_of(&label))
            };
            let code = distance(&wanted.code, code);
            (
                lacks,
                runs.min().unwrap_or(usize::MAX).min(code),
                wanted.gap(&label),
                *name,
            )
        })
        .collect();
    // Stable: what is equally near stays in the order of the list.
    ranked.sort_by_key(|(lacks, distance, gap, _)| (*lacks, *distance, *gap));
    let with = ranked.iter().filter(|(lacks, ..)| *lacks == 0).count();
    let shown = with.clamp(OFFERED, MEANT);
    ranked
        .into_iter()
        .take(shown)
        .map(|(.., label)| label)
        .collect()
}

/// How many letters must be put in, left out or changed to make one text of the other. Beyond what is counted the
/// rest does not matter: no name is so long.
fn distance(a: &str, b: &str) -> usize {
    const COUNTED: usize = 50;
    let b: Vec<char> = b.chars().take(COUNTED).collect();
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for from in a.chars().take(COUNTED) {
        let mut fields = row.iter_mut();
        let Some(first) = fields.next() else { break };
        // Of the row before the field to the upper left of the next one, and of this row the one to its left.
        let mut before = *first;
        *first += 1;
        let mut left = *first;
        for (field, to) in fields.zip(&b) {
            let change = before + usize::from(from != *to);
            before = *field;
            *field = change.min(before + 1).min(left + 1);
            left = *field;
        }
    }
    row.last().copied().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn counts_changed_letters() {
        for (a, b, expected) in [
            ("", "", 0),
            ("", "ab", 2),
            ("8.8", "8.9", 1),
            ("iso4032", "iso403", 1),
            ("abc", "cab", 2),
        ] {
            assert_eq!(distance(a, b), expected, "{a} {b}");
            assert_eq!(distance(b, a), expected, "{b} {a}");
        }
    }

    #[test]
    fn splits_what_people_run_together() {
        assert_eq!(words(" Gr.5 "), ["grade", "5"]);
        assert_eq!(words("gr 5"), ["grade", "5"]);
        assert_eq!(words("A2-70"), ["a2", "70"]);
        assert_eq!(
            words("ISO 898-1, Cl. 8.8."),
            ["iso", "898", "1", "class", "8.8"]
        );
        assert!(words(" .-_ ").is_empty());
    }
}
