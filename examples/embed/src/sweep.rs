//! One joint under many load cases: numbers in, numbers out.

use serde::Deserialize;
use shankline::joint::{BoltCase, CaseAnswer, Joint, PreparedJoint, Word};
use shankline::strength::check::Mode;
use shankline::units::newtons;

use crate::refusal::{Refusal, read};

/// The load cases, in newtons: one column for each number, all of the same length.
#[derive(Clone, Copy, Debug)]
pub struct Cases<'a> {
    /// Greatest load across the axis.
    pub across: &'a [f64],
    /// Greatest load along the axis; below zero for one that presses the plies together.
    pub along: &'a [f64],
    /// Least load across; none if it is steady.
    pub across_least: Option<&'a [f64]>,
    /// Least load along; none if it is steady.
    pub along_least: Option<&'a [f64]>,
}

/// Room for the answers, as long as the cases.
#[derive(Debug)]
pub struct Answers<'a> {
    /// 0 undecided, 1 holds, 2 does not hold.
    pub words: &'a mut [u8],
    /// The mode of the highest utilisation, by its place in the list `modes` of the catalogue; 255 if nothing was compared.
    pub modes: &'a mut [u8],
    /// The highest utilisation; 0 if nothing was compared.
    pub utilisations: &'a mut [f64],
}

/// How many cases are laid side by side at a time: some that stay near the processor.
const BLOCK: usize = 256;

/// Answers every case. The request has the `joint`, whose shock factor, load factor, prying and cycles count, and
/// whose own loads do not.
///
/// # Errors
///
/// A [`Refusal`] with the place of the first case that is refused. That case and those after it are undecided.
pub fn sweep(request: &[u8], cases: Cases<'_>, answers: Answers<'_>) -> Result<(), Refusal> {
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Asked {
        joint: Joint,
    }
    let Answers {
        words,
        modes,
        utilisations,
    } = answers;
    words.fill(number_of(Word::Undecided));
    modes.fill(NO_MODE);
    utilisations.fill(0.0);
    let count = cases.across.len();
    let columns = [Some(cases.along), cases.across_least, cases.along_least];
    let alike = columns.iter().flatten().all(|column| column.len() == count);
    if !alike || [words.len(), modes.len(), utilisations.len()] != [count; 3] {
        return Err(Refusal::new(
            "request",
            "loads and answers are not of one length",
        ));
    }
    let Asked { joint } = read(request)?;
    let mut prepared = joint.prepare()?;

    let mut block = [BoltCase::steady(newtons(0.0), newtons(0.0)); BLOCK];
    let mut found = [CaseAnswer::default(); BLOCK];
    for from in (0..count).step_by(BLOCK) {
        let to = count.min(from + BLOCK);
        let (block, found) = (&mut block[..to - from], &mut found[..to - from]);
        lay_out(block, &cases, from);
        let refused = prepared.sweep(block, found).is_err();
        let good = if refused {
            good_until(&mut prepared, block, found)
        } else {
            block.len()
        };
        for (at, answer) in found.iter().enumerate().take(good) {
            words[from + at] = number_of(answer.word);
            modes[from + at] = answer.mode.map_or(NO_MODE, number_of_mode);
            utilisations[from + at] = answer.utilisation.value;
        }
        if let Some(case) = block.get(good) {
            let error = prepared.answer(case).err();
            let refusal = error.map_or_else(Refusal::internal, Refusal::from);
            return Err(refusal.in_case(from + good));
        }
    }
    Ok(())
}

fn lay_out(block: &mut [BoltCase], cases: &Cases<'_>, from: usize) {
    for (at, case) in (from..).zip(block) {
        let (across, along) = (cases.across[at], cases.along[at]);
        *case = BoltCase {
            across: newtons(across),
            along: newtons(along),
            across_least: newtons(cases.across_least.map_or(across, |column| column[at])),
            along_least: newtons(cases.along_least.map_or(along, |column| column[at])),
        };
    }
}

/// How many cases stand before the one that is refused.
#[cold]
fn good_until(prepared: &mut PreparedJoint, block: &[BoltCase], found: &mut [CaseAnswer]) -> usize {
    for (at, (case, answer)) in block.iter().zip(found).enumerate() {
        match prepared.answer(case) {
            Ok(own) => *answer = own,
            Err(_) => return at,
        }
    }
    block.len()
}

const NO_MODE: u8 = u8::MAX;

const fn number_of(word: Word) -> u8 {
    match word {
        Word::Undecided => 0,
        Word::Holds => 1,
        Word::DoesNotHold => 2,
    }
}

fn number_of_mode(mode: Mode) -> u8 {
    let place = Mode::ALL.iter().position(|own| *own == mode);
    place
        .and_then(|place| u8::try_from(place).ok())
        .unwrap_or(NO_MODE)
}
