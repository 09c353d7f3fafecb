//! Properties of verdicts over random joints: the runner, and what a failure shows.
//!
//! The seed is fixed; `VERDICT_SEED=7` takes another, `VERDICT_CASES=20000` more joints, and `VERDICT_SURVEY=1` counts
//! the failures by their first lines in place of stopping at the first.
#![allow(dead_code)] // each test file uses its own part

use std::env;

use proptest::prelude::*;
use proptest::test_runner::{RngAlgorithm, TestCaseError, TestRng, TestRunner};
use shankline::joint::*;
use shankline::strength::check::Mode;

#[path = "documents.rs"]
pub mod documents;
#[path = "joints.rs"]
pub mod joints;

pub use joints::Dice;

pub fn wanted(name: &str) -> Option<u64> {
    env::var(name).ok().and_then(|text| text.parse().ok())
}

/// Runs a property over random joints. The numbers come in two rows: those of the joint and those of what is done to
/// it. A failure shows the plainest joint found, as a document.
pub fn for_all(cases: u32, property: impl Fn(&Joint, &mut Dice) -> Result<(), String>) {
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

/// Every stock length of a joint, judged; none for a screw or nut of the caller's own.
pub fn selection(joint: &Joint) -> Option<Selection> {
    use shankline::parts::{Nut, ScrewSeries};
    let thread = &joint.bolt.thread;
    let screws = ScrewSeries::new(joint.bolt.product, thread).ok()?;
    let end = match (joint.nut, joint.stack.tapped_part()) {
        (Some(nut), _) => NutEnd::of(Nut::find(nut.style, thread).ok()?).ok()?,
        (None, Some(part)) => NutEnd::tapped(part.engagement?, part.depth()).ok()?,
        (None, None) => return None,
    };
    let search = LengthSearch::new(&joint.stack, &screws, end, joint.rules).ok()?;
    search.run().ok()
}

/// A small space for a random joint: what is searched stays the joint's own but for threads and grades, and now and
/// then nuts and washers.
pub fn space(joint: &Joint, dice: &mut Dice) -> DesignSpace {
    use shankline::material::{PropertyClass, SaeGrade};
    use shankline::parts::{NutStyle, WasherStyle};
    let own = joint.bolt.thread;
    let (threads, styles, washer) = if own.is_unified() {
        let styles = [NutStyle::Hex, NutStyle::InsertLockNe];
        (
            ["1/2-13 UNC", "3/4-10 UNC"],
            styles,
            WasherStyle::TypeANarrow,
        )
    } else {
        let styles = [NutStyle::Iso4032, NutStyle::Iso7040];
        (["M12", "M20"], styles, WasherStyle::Iso7089)
    };
    let mut space = DesignSpace::new();
    if dice.now_and_then(60.0) {
        let more = threads.map(|thread| thread.parse().unwrap());
        space = space.threads([own, more[0], more[1]]);
    }
    if dice.now_and_then(60.0) {
        space = if own.is_unified() {
            space.grades([SaeGrade::Grade5, SaeGrade::Grade8])
        } else {
            space.grades([PropertyClass::Class8_8, PropertyClass::Class10_9])
        };
    }
    if dice.now_and_then(40.0) {
        space = space.nut_styles(styles);
    }
    if dice.now_and_then(40.0) {
        space = space.washers([washer]);
    }
    if dice.now_and_then(60.0) {
        space = space.holes(shankline::tables::holes::HoleFit::Normal);
    }
    space
}

/// Why a verdict is what it is, for a failure.
pub fn why(verdict: &Verdict) -> String {
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

/// Whether a mode speaks against the word "holds".
pub fn is_odd(verdict: &Verdict, mode: Mode) -> bool {
    matches!(verdict.account(mode), Account::Fault | Account::Missing)
}
