//! What holds of every joint.

use serde_json::Value;
use shankline::joint::{Joint, Report, Verdict, Word};
use shankline::units::UnitSystem;

use crate::any_joint::Dice;
use crate::{finite, places};

const ODD: [f64; 14] = [
    0.5,
    2.0,
    0.1,
    10.0,
    0.999_999_999,
    1.000_000_001,
    1e-3,
    1e3,
    1e-6,
    1e6,
    1e-12,
    1e12,
    1e-30,
    1e30,
];

const ODDEST: [f64; 8] = [0.0, -0.0, -1.0, 5e-324, 1e-308, 1e308, -1e308, f64::MAX];

/// Some figures of a document made others, up to three.
pub fn spoil(document: &mut Value, dice: &mut Dice) {
    let all = places::paths(document);
    for _ in 0..dice.below(4) {
        if all.is_empty() {
            return;
        }
        let place = &all[dice.below(all.len())];
        let Some(own) = places::at(document, place) else {
            continue;
        };
        let own = if own.get("value").is_some() {
            &mut own["value"]
        } else {
            own
        };
        let Some(figure) = own.as_f64() else { continue };
        let odd = match dice.below(8) {
            0 => ODDEST[dice.below(ODDEST.len())],
            1 => -figure,
            _ => figure * ODD[dice.below(ODD.len())],
        };
        if figure.fract() == 0.0 && own.is_u64() && (0.0..1e15).contains(&odd) {
            #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // within its range
            let whole = odd.round() as u64;
            *own = whole.into();
        } else {
            *own = odd.into();
        }
    }
}

/// The answer to a joint is sound: its figures, its workings, its documents; and more load and silence never help.
pub fn joint(joint: &Joint, dice: &mut Dice) -> Result<(), String> {
    let document = reads_back(joint)?;
    let verdict = match joint.check() {
        Ok(verdict) => verdict,
        Err(why) => {
            // It names what was given, which may be no number in the other unit.
            return match joint.check_with_working() {
                Ok(_) => Err(format!("refused, and not with its working: {why}")),
                Err(_) => Ok(()),
            };
        }
    };
    answer(joint, &verdict).map_err(|why| format!("{why}\n{document}"))?;
    if verdict.word() == Word::DoesNotHold {
        more_load(joint, dice).map_err(|why| format!("{why}\n{document}"))?;
    }
    if !verdict.holds() {
        silence(joint, &document, dice).map_err(|why| format!("{why}\n{document}"))?;
    }
    Ok(())
}

fn reads_back(joint: &Joint) -> Result<Value, String> {
    let document = serde_json::to_value(joint).map_err(|why| format!("not written: {why}"))?;
    let text = document.to_string();
    let again: Joint =
        serde_json::from_str(&text).map_err(|why| format!("not read back: {why}\n{text}"))?;
    let written =
        serde_json::to_value(&again).map_err(|why| format!("not written again: {why}"))?;
    if written != document {
        return Err(format!("reads back as another\n{text}\n{written}"));
    }
    Ok(document)
}

fn answer(joint: &Joint, verdict: &Verdict) -> Result<(), String> {
    finite(&format!("{verdict:?}"))?;
    let (worked, workings) = joint
        .check_with_working()
        .map_err(|why| format!("with its working refused: {why}"))?;
    if worked != *verdict {
        return Err("another verdict with its working".into());
    }
    for working in &workings {
        working
            .check()
            .map_err(|why| format!("an untrue working: {why}"))?;
    }
    for system in [UnitSystem::Si, UnitSystem::UsCustomary] {
        let report = joint
            .report(system)
            .map_err(|why| format!("no report: {why}"))?;
        let text =
            serde_json::to_string(&report).map_err(|why| format!("report not written: {why}"))?;
        let read = serde_json::from_str::<Report>(&text);
        let again = read.map_err(|why| format!("report not read back: {why}\n{text}"))?;
        if again != report {
            return Err(format!("the report reads back as another\n{text}"));
        }
        finite(&verdict.render(system).to_string())?;
    }
    Ok(())
}

fn more_load(joint: &Joint, dice: &mut Dice) -> Result<(), String> {
    let times = 1.01 * 100_f64.powf(dice.between(0.0, 0.99));
    let mut more = joint.clone();
    let load = &mut more.load;
    match dice.below(4) {
        0 => load.across *= times,
        1 if load.along.value > 0.0 => load.along *= times,
        2 => load.shock_factor *= times,
        _ => load.load_factor = load.load_factor.map(|factor| factor * times),
    }
    match more.check() {
        // Loads and factors have limits, and refusing is not holding.
        Err(_) => Ok(()),
        Ok(after) if after.word() == Word::DoesNotHold => Ok(()),
        Ok(after) => Err(format!(
            "{times} times the load helps: {:?} {}",
            more.load,
            after.word()
        )),
    }
}

fn silence(joint: &Joint, document: &Value, dice: &mut Dice) -> Result<(), String> {
    let all = places::paths(document);
    for _ in 0..3 {
        let place = &all[dice.below(all.len())];
        if places::is_another_question(joint, place) {
            continue;
        }
        let mut less = document.clone();
        places::remove(&mut less, place);
        let Ok(less) = serde_json::from_value::<Joint>(less) else {
            continue;
        };
        if less.check().is_ok_and(|after| after.holds()) {
            return Err(format!("it holds without {place:?}"));
        }
    }
    Ok(())
}
