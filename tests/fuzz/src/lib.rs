//! Random input at every door of `shankline`.
//!
//! | target | input | what must hold, beside no panic and no number that is none |
//! |---|---|---|
//! | `texts` | text | what a name or a quantity prints is read as the same |
//! | `documents` | JSON | what is read is written and read again the same; the invariants of `joints` for a joint in it |
//! | `joints` | numbers that choose a joint, and spoil some of its figures | workings are true and change nothing, answers read back, more load never helps, silence never helps |
//! | `numbers` | numbers for the functions below the joint | workings are true |
//! | `connections` | numbers that choose a connection and its loads | it reads back; more load and silence never help |
//! | `drawings` | numbers that choose a joint or a connection | every picture and every parts list can be made |
//!
//! `cargo run --release -- all 60` throws mutated seeds at each for a minute; `cargo run --release -- joints 600 7` at
//! one, with another seed of the random numbers. What it finds is made short and put into `findings/TARGET/`, where
//! `cargo test --release` runs it ever after. With a tool that is guided by coverage (libFuzzer):
//! `RUSTC_BOOTSTRAP=1 cargo fuzz run --fuzz-dir tests/fuzz --features guided joints`.
//!
//! A target is a function of bytes, so that both engines drive it. Bytes that choose are the row of numbers of
//! `tests/support/joints.rs`: zero is the plainest choice everywhere.

#[allow(dead_code)] // shared with the tests of the library
#[path = "../../support/joints.rs"]
mod any_joint;
mod connections;
mod documents;
mod drawings;
mod joints;
mod numbers;
#[allow(dead_code)]
#[path = "../../support/documents.rs"]
mod places;
#[path = "../../support/random.rs"]
mod random;
mod sound;
mod texts;

pub use random::Random;

/// One door: what runs, seeds to begin with, and how an input is changed.
#[derive(Clone, Copy, Debug)]
pub struct Target {
    /// Its name, of which also its folder of findings is called.
    pub name: &'static str,
    /// Says what does not hold. May panic, which is a finding too.
    pub run: fn(&[u8]) -> Result<(), String>,
    /// Inputs to begin with.
    pub seeds: fn() -> Vec<Vec<u8>>,
    /// Another input from this one and from others.
    pub mutate: fn(&[u8], &[Vec<u8>], &mut Random) -> Vec<u8>,
}

/// All doors.
pub const TARGETS: [Target; 6] = [
    Target {
        name: "texts",
        run: texts::run,
        seeds: texts::seeds,
        mutate: texts::mutate,
    },
    Target {
        name: "documents",
        run: documents::run,
        seeds: documents::seeds,
        mutate: documents::mutate,
    },
    Target {
        name: "joints",
        run: joints::run,
        seeds: no_choice,
        mutate: choices,
    },
    Target {
        name: "numbers",
        run: numbers::run,
        seeds: no_choice,
        mutate: choices,
    },
    Target {
        name: "connections",
        run: connections::run,
        seeds: no_choice,
        mutate: choices,
    },
    Target {
        name: "drawings",
        run: drawings::run,
        seeds: no_choice,
        mutate: choices,
    },
];

/// The target of a name.
///
/// # Panics
///
/// For a name that is none.
#[must_use]
pub fn target(name: &str) -> Target {
    let found = TARGETS.into_iter().find(|target| target.name == name);
    found.unwrap_or_else(|| panic!("no target is called {name}"))
}

/// For an engine that waits for panics.
///
/// # Panics
///
/// If something does not hold.
pub fn must_pass(name: &str, input: &[u8]) {
    if let Err(why) = (target(name).run)(input) {
        panic!("{why}");
    }
}

/// Bytes as a row of numbers to choose from, and the rest of it.
fn row(input: &[u8]) -> Vec<u16> {
    let pairs = input.chunks(2);
    pairs
        .map(|pair| u16::from_le_bytes([pair[0], pair.get(1).copied().unwrap_or(0)]))
        .collect()
}

fn no_choice() -> Vec<Vec<u8>> {
    vec![Vec::new(), vec![0x80; 64]]
}

/// A fresh row of numbers mostly, else one with a few of them changed.
fn choices(own: &[u8], _: &[Vec<u8>], random: &mut Random) -> Vec<u8> {
    const LONGEST: usize = 440;
    if random.once_in(2) || own.is_empty() {
        let length = 2 * random.below(LONGEST / 2 + 1);
        return (0..length).map(|_| random.byte()).collect();
    }
    let mut bytes = own.to_vec();
    for _ in 0..=random.below(4) {
        let at = random.below(bytes.len());
        bytes[at] = if random.once_in(3) { 0 } else { random.byte() };
    }
    if random.once_in(4) {
        bytes.truncate(random.below(bytes.len()));
    }
    bytes
}

/// No number that is none, in what a result shows of itself. Names in quotation marks are passed over.
fn finite(shown: &str) -> Result<(), String> {
    for (at, part) in shown.split('"').enumerate() {
        if at % 2 == 1 {
            continue;
        }
        let words = part.split(|c: char| !c.is_ascii_alphanumeric() && c != '_');
        if words.into_iter().any(|word| word == "NaN" || word == "inf") {
            let around: String = part.chars().take(400).collect();
            return Err(format!("a number that is none: {around}"));
        }
    }
    Ok(())
}
