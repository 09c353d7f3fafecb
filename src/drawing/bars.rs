//! How far every check is used.

use alloc::{format, string::String, string::ToString, vec::Vec};
use core::fmt::Write as _;

use super::canvas::Drawing;
use super::kinds::{Anchor, Fill, Line};
use super::page::{INNER, MARGIN, WIDTH, head};
use super::text::Style;
use crate::joint::{Account, Verdict};
use crate::strength::check::{Check, Mode};
use crate::units::UnitSystem;

/// Where bars begin and end.
const BARS: [f64; 2] = [306.0, 646.0];
/// Up to which utilisation they are drawn to scale.
const MOST: f64 = 2.0;

/// Every check of a verdict as a bar from nothing to all of its resistance, the one that governs first. The word of the
/// verdict stands above, and below it what is at fault, what could not be checked, and what was set aside: bars alone make
/// a joint look well that does not hold, or of which nobody knows.
///
#[cfg_attr(doc, doc = include_str!("pictures/checks.html"))]
///
/// ```
/// use shankline::drawing;
/// use shankline::prelude::*;
#[doc = include_str!("../joint/whole/example.txt")]
/// let verdict = joint.check()?;
/// let page = drawing::utilisation(&joint.title, &verdict, UnitSystem::Si);
/// assert!(page.overlaps().is_empty());
/// assert!(page.labels().iter().any(|label| label.text.starts_with("HOLDS")));
/// # Ok(())
/// # }
/// ```
#[must_use]
pub fn utilisation(title: &str, verdict: &Verdict, system: UnitSystem) -> Drawing {
    let title = format!("How far each check is used: {title}");
    let mut page = Drawing::new(WIDTH, &title, "");
    let mut y = head(&mut page, &title, &[], Some(verdict), system) + 6.0;
    let most = verdict
        .checks
        .iter()
        .map(|check| check.utilisation.value)
        .fold(1.2, f64::max)
        .min(MOST);
    let scale = (BARS[1] - BARS[0]) / most;
    let full = BARS[0] + scale;
    if verdict.checks.is_empty() {
        let none = "No check was possible: nothing was compared.";
        page.label(Style::Strong, Anchor::Start, [MARGIN, y], none);
        y += 18.0;
    } else {
        page.label(
            Style::Note,
            Anchor::Middle,
            [full, y],
            "100 %: all of the resistance",
        );
        let top = y + 5.0;
        y += 10.0;
        for check in &verdict.checks {
            bar(&mut page, check, scale, y, system);
            y += 21.0;
        }
        page.line(Line::Outline, [full, top], [full, y]);
        y += 18.0;
    }
    y = lists(&mut page, verdict, y, system);
    page.end_at(y + 6.0);
    page.describe(description(verdict, system));
    page
}

fn bar(page: &mut Drawing, check: &Check, scale: f64, y: f64, system: UnitSystem) {
    let used = check.utilisation.value;
    let name = format!("{}, {}", check.mode, check.place);
    let name = Style::Plain.fit(&name, BARS[0] - MARGIN - 8.0);
    page.label(Style::Plain, Anchor::End, [BARS[0] - 8.0, y + 11.5], &name);
    let end = BARS[0] + scale * used.min(MOST);
    page.rectangle(Fill::Rail, [BARS[0], y, BARS[1], y + 15.0]);
    let over = !check.holds();
    let fill = if over { Fill::Over } else { Fill::Bar };
    page.rectangle(fill, [BARS[0], y, end, y + 15.0]);
    if over {
        let beyond = [BARS[0] + scale, y, end, y + 15.0];
        page.hatch_all(Line::Thin, &[beyond], true, 4.0);
    }
    if used > MOST {
        // Broken off: it goes on.
        let edge = [
            [end - 14.0, y],
            [end - 8.0, y + 7.5],
            [end - 14.0, y + 15.0],
            [end - 9.0, y + 15.0],
            [end - 3.0, y + 7.5],
            [end - 9.0, y],
        ];
        page.area(Fill::Paper, &edge);
    }
    let percent = percent(used);
    // "over 9999 %" says it, and leaves no room for more.
    let word = if over && used < 100.0 { "exceeded" } else { "" };
    let text = format!("{percent} {word}");
    page.label(
        if over { Style::Strong } else { Style::Plain },
        Anchor::Start,
        [BARS[1] + 8.0, y + 11.5],
        text.trim(),
    );
    let amounts = amounts(check, system);
    let room = WIDTH - MARGIN - (BARS[1] + 142.0);
    let amounts = Style::Note.fit(&amounts, room);
    page.label(
        Style::Note,
        Anchor::Start,
        [BARS[1] + 142.0, y + 11.5],
        &amounts,
    );
}

/// Rounded up, so that what is exceeded never reads as 100 %, and what is not never reads as more.
pub(super) fn percent(used: f64) -> String {
    let exact = used * 100.0;
    if used > 1.0 {
        if used >= 100.0 {
            return "over 9999 %".into();
        }
        let shown = crate::math::ceil(exact * 10.0) / 10.0;
        return if exact < 110.0 {
            format!("{shown:.1} %")
        } else {
            format!("{:.0} %", crate::math::ceil(exact))
        };
    }
    format!("{:.0} %", crate::math::ceil(exact - 1e-9))
}

fn amounts(check: &Check, system: UnitSystem) -> String {
    let [demand, resistance] = [check.demand, check.resistance].map(|own| own.shown(system));
    format!("{demand} of {resistance}")
}

/// What bars do not show.
fn lists(page: &mut Drawing, verdict: &Verdict, mut y: f64, system: UnitSystem) -> f64 {
    let faults: Vec<String> = verdict.faults().map(|own| own.text(system)).collect();
    let missing = not_checked(verdict);
    let aside: Vec<String> = verdict
        .set_aside
        .iter()
        .map(|own| format!("{}: {}", own.mode, own.reason))
        .collect();
    let names = |wanted: fn(Account) -> bool| {
        let modes = Mode::ALL
            .iter()
            .filter(|mode| wanted(verdict.account(**mode)));
        let modes: Vec<String> = modes
            .filter(|mode| !verdict.checks.iter().any(|check| check.mode == **mode))
            .map(ToString::to_string)
            .collect();
        if modes.is_empty() {
            Vec::new()
        } else {
            Vec::from([modes.join(", ")])
        }
    };
    let in_order = names(|account| account == Account::InOrder);
    let unconcerned = names(|account| matches!(account, Account::NotConcerned(_)));
    for (heading, entries) in [
        ("At fault, besides what is exceeded", faults),
        ("Not checked", missing),
        ("Set aside by the caller", aside),
        ("In order, without a figure", in_order),
        ("Not concerned", unconcerned),
    ] {
        if entries.is_empty() {
            continue;
        }
        page.label(Style::Strong, Anchor::Start, [MARGIN, y], heading);
        y += 17.0;
        for entry in &entries {
            page.dot([MARGIN + 6.0, y - 4.0], 1.8);
            y = page.paragraph(
                Style::Note,
                [MARGIN + 14.0, y],
                entry,
                INNER - 14.0,
                usize::MAX,
            );
        }
        y += 7.0;
    }
    y
}

/// What could not be checked: each fact or reason once, with the modes that want it and where.
fn not_checked(verdict: &Verdict) -> Vec<String> {
    let mut wanted: Vec<(String, Mode, Vec<String>)> = Vec::new();
    for missing in verdict.open() {
        let need = missing.need.to_string();
        let known = wanted
            .iter_mut()
            .find(|own| own.0 == need && own.1 == missing.mode);
        match known {
            Some((_, _, places)) => places.push(missing.place.to_string()),
            None => wanted.push((need, missing.mode, Vec::from([missing.place.to_string()]))),
        }
    }
    let mut lines: Vec<(String, String)> = Vec::new();
    for (need, mode, places) in wanted {
        let text = format!("{mode} ({})", places.join(", "));
        match lines.iter_mut().find(|own| own.0 == need) {
            Some((_, line)) => {
                line.push_str("; ");
                line.push_str(&text);
            }
            None => lines.push((need, text)),
        }
    }
    lines
        .into_iter()
        .map(|(need, line)| format!("{need}: {line}"))
        .collect()
}

fn description(verdict: &Verdict, system: UnitSystem) -> String {
    let mut text = verdict.headline(system);
    for check in &verdict.checks {
        let used = percent(check.utilisation.value);
        // Writing to a string does not fail.
        let _ = write!(text, ". {}, {}: {used}", check.mode, check.place);
    }
    text.push('.');
    text
}
