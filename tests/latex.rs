//! Workings as LaTeX: notes are text that wraps, and stand outside the maths. The workings of the demonstrations are laid
//! out for `.ci/run`, which typesets them where there is a `pdflatex`.
#![cfg(feature = "serde")]

use shankline::derivation::{Derivation, Format};
use shankline::joint::Joint;
use shankline::units::UnitSystem;

#[path = "support/verdicts.rs"]
mod verdicts;

use verdicts::for_all;

const DEMONSTRATIONS: [&str; 3] = ["davit_socket", "seesaw_pivot", "winch_foot"];
const SYSTEMS: [UnitSystem; 2] = [UnitSystem::Si, UnitSystem::UsCustomary];

fn workings(demonstration: &str) -> Vec<Derivation> {
    let file = format!("examples/data/{demonstration}.json");
    let joint: Joint = serde_json::from_str(&std::fs::read_to_string(file).unwrap()).unwrap();
    joint.check_with_working().unwrap().1
}

/// What stands in maths, and what does not.
fn maths_and_text(latex: &str) -> [Vec<&str>; 2] {
    // A dollar of the text is escaped.
    let mut parts = [Vec::new(), Vec::new()];
    let (mut from, mut in_maths) = (0, false);
    for (at, _) in latex.match_indices('$') {
        if latex[..at].ends_with('\\') {
            continue;
        }
        parts[usize::from(!in_maths)].push(&latex[from..at]);
        (from, in_maths) = (at + 1, !in_maths);
    }
    assert!(!in_maths, "maths is left open\n{latex}");
    parts[1].push(&latex[from..]);
    parts
}

fn holds_together(working: &Derivation, system: UnitSystem) -> Result<(), String> {
    let latex = working.render(Format::Latex, system).to_string();
    let [maths, text] = maths_and_text(&latex);
    for maths in maths {
        if maths.contains("\\text{") || maths.contains('\n') || maths.contains('\u{b0}') {
            return Err(format!("{maths}\n{latex}"));
        }
        let count = |of: &str| maths.matches(of).count();
        if count("{") != count("}") || count("\\left") != count("\\right") {
            return Err(format!("brackets: {maths}"));
        }
    }
    // A display does not wrap.
    if latex.contains("align") || latex.contains("\\[") {
        return Err(latex);
    }
    // Every note is text, in its place in the list.
    let items: Vec<&str> = latex.split("\\item ").skip(1).collect();
    let text = text.join("$");
    if items.len() != working.steps().len() || text.matches("\\item ").count() != items.len() {
        return Err(format!("{} steps\n{latex}", working.steps().len()));
    }
    Ok(())
}

#[test]
fn notes_wrap_and_stand_outside_the_maths() {
    for working in DEMONSTRATIONS.into_iter().flat_map(workings) {
        for system in SYSTEMS {
            holds_together(&working, system).unwrap();
        }
    }
    for_all(150, |joint, _| {
        let Ok((_, workings)) = joint.check_with_working() else {
            return Ok(());
        };
        workings
            .iter()
            .try_for_each(|working| holds_together(working, UnitSystem::Si))
    });
}

/// A page as students have it, of the demonstrations, and one of random joints.
#[test]
fn the_workings_are_laid_out() {
    let lay_out = |name: &str, workings: &str| {
        let path = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
        let page = format!(
            "\\documentclass{{article}}\n\\begin{{document}}\n{workings}\\end{{document}}\n"
        );
        std::fs::write(path, page).unwrap();
    };
    let mut demonstrations = String::new();
    for system in SYSTEMS {
        for working in DEMONSTRATIONS.into_iter().flat_map(workings) {
            demonstrations += &working.render(Format::Latex, system).to_string();
        }
    }
    lay_out("workings.tex", &demonstrations);
    let random = std::cell::RefCell::new(String::new());
    for_all(40, |joint, _| {
        let workings = joint.check_with_working().map(|(_, workings)| workings);
        for working in workings.iter().flatten() {
            *random.borrow_mut() += &working.render(Format::Latex, UnitSystem::Si).to_string();
        }
        Ok(())
    });
    lay_out("random_workings.tex", &random.borrow());
}
