//! What must hold of every verdict, whatever the joint: more load never helps, every mode is accounted for, workings
//! and reports change nothing. (Silence: `verdict_silence.rs`; stronger parts: `verdict_parts.rs`.)
#![cfg(feature = "serde")]

use std::cell::Cell;

use shankline::error::Error;
use shankline::joint::*;
use shankline::strength::check::Mode;

#[path = "support/verdicts.rs"]
mod verdicts;

use verdicts::{for_all, why};

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
    let all: u32 = counts.iter().sum();
    // A twelfth of each at least; of what is refused, a twelfth at most.
    for often in [holds, fails, undecided] {
        assert!(12 * often > all, "{counts:?}");
    }
    assert!(12 * refused < all, "{counts:?}");
}

/// More load never turns "does not hold" into anything else.
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

/// The verdict is the same with its workings, which prove themselves; every mode is accounted for; and a
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

/// Report and sheet can be written of every verdict in both systems of units, and change nothing in it.
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
