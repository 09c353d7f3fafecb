//! Silence never helps: what is left out of a joint never makes it hold.
#![cfg(feature = "serde")]

use shankline::joint::*;
use shankline::strength::check::{Mode, Place};

#[path = "support/verdicts.rs"]
mod verdicts;

use verdicts::{documents, for_all, is_odd, why};

/// Taking information away never makes a joint hold that did not; nor does it settle a mode that was not, unless
/// it leaves another one open for it. (So a fault is seen also where the joint fails for other reasons too.)
#[test]
fn silence_never_helps() {
    for_all(400, |joint, dice| {
        let Ok(before) = joint.check() else {
            return Ok(());
        };
        if before.holds() {
            return Ok(());
        }
        let document = serde_json::to_value(joint).unwrap();
        let paths: Vec<_> = documents::paths(&document)
            .into_iter()
            .filter(|path| !documents::is_another_question(joint, path))
            .collect();
        let pairs: Vec<_> = (0..8)
            .map(|_| {
                [
                    &paths[dice.below(paths.len())],
                    &paths[dice.below(paths.len())],
                ]
            })
            .collect();
        let singles = paths.iter().map(std::slice::from_ref);
        for gone in singles
            .map(|one| vec![&one[0]])
            .chain(pairs.iter().map(|two| two.to_vec()))
        {
            let mut less = document.clone();
            for path in &gone {
                documents::remove(&mut less, path);
            }
            let Ok(less) = serde_json::from_value::<Joint>(less) else {
                continue;
            };
            let Ok(after) = less.check() else { continue };
            let settled = Mode::ALL
                .into_iter()
                .filter(|mode| is_odd(&before, *mode) && !is_odd(&after, *mode));
            let settled: Vec<String> = settled.map(|mode| mode.to_string()).collect();
            let opened = after
                .missing
                .iter()
                .any(|missing| !before.missing.contains(missing));
            if after.holds() || !settled.is_empty() && !opened {
                let gone: Vec<String> = gone.iter().map(|path| general(path)).collect();
                return Err(format!(
                    "without {gone:?} {settled:?} is settled\n{}\nwithout it {}",
                    why(&before),
                    why(&after)
                ));
            }
        }
        Ok(())
    });
}

/// A path without the number of the element.
fn general(path: &[String]) -> String {
    let key = |key: &String| {
        if key.parse::<usize>().is_ok() {
            "*".into()
        } else {
            key.clone()
        }
    };
    path.iter().map(key).collect::<Vec<_>>().join(".")
}

/// Facts that a ply, a nut or a load lacks do not hide each other: what is asked for when one of them is gone is asked for
/// when several are. So whoever answers `to_decide` is not asked again.
#[test]
fn everything_is_asked_for_at_once() {
    const FACTS: [&str; 12] = [
        "material",
        "hole",
        "end_distance",
        "edge_distance",
        "width",
        "pitch",
        "gauge",
        "grain_angle",
        "prying",
        "load_factor",
        "grade",
        "finish",
    ];
    let asked = |verdict: &Verdict| -> Vec<(Need, Place)> {
        let facts = verdict.to_decide().into_iter();
        facts
            .flat_map(|(need, places)| places.into_iter().map(|place| (need.clone(), place)))
            .collect()
    };
    for_all(400, |joint, dice| {
        let Ok(before) = joint.check() else {
            return Ok(());
        };
        let before = asked(&before);
        let document = serde_json::to_value(joint).unwrap();
        let paths: Vec<_> = documents::paths(&document)
            .into_iter()
            .filter(|path| {
                path.last()
                    .is_some_and(|last| FACTS.contains(&last.as_str()))
                    && path.first().is_some_and(|first| first != "bolt")
            })
            .collect();
        if paths.is_empty() {
            return Ok(());
        }
        let checked = |gone: &[&Vec<String>]| {
            let mut less = document.clone();
            for path in gone {
                documents::remove(&mut less, path);
            }
            serde_json::from_value::<Joint>(less).ok()?.check().ok()
        };
        let gone: Vec<&Vec<String>> = (0..4).map(|_| &paths[dice.below(paths.len())]).collect();
        let Some(all) = checked(&gone) else {
            return Ok(());
        };
        let (without, all) = (asked(&all), &all);
        for &path in &gone {
            let Some(one) = checked(&[path]) else {
                continue;
            };
            for (need, place) in asked(&one) {
                let is_new = !before.contains(&(need.clone(), place));
                if is_new && !without.contains(&(need.clone(), place)) {
                    let gone: Vec<String> = gone.iter().map(|path| path.join(".")).collect();
                    return Err(format!(
                        "{} is hidden when {:?} is gone too\n{place}, without {gone:?}\n{}",
                        need.name(),
                        general(path),
                        why(all)
                    ));
                }
            }
        }
        Ok(())
    });
}
