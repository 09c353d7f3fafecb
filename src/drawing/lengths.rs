//! Why this length and not another: stock lengths below each other, at one scale.

use alloc::{format, string::String, vec::Vec};
use core::fmt::Write as _;

use super::canvas::Drawing;
use super::kinds::{Anchor, Fill, Line};
use super::page::{INNER, MARGIN, WIDTH, between, head, zone};
use super::shapes::mm;
use super::text::Style;
use crate::joint::{Candidate, Joint, Selection, length_name};
use crate::spread::Spread;
use crate::units::{Length, UnitSystem};

/// At most so many lengths: the rest is counted.
const MOST: usize = 16;
const BARS: [f64; 2] = [120.0, 600.0];
const ROW: f64 = 44.0;

/// The lengths that a bolt comes in, each as a bar of shank, run-out and thread, against what the joint asks of it: shear
/// planes, faces of the nut, and how far it must reach. Beside each stands whether it fits, or why it does not.
///
/// Lengths far from those that fit are counted, and not drawn.
///
#[cfg_attr(doc, doc = include_str!("pictures/lengths.html"))]
///
/// ```
/// use shankline::drawing;
/// use shankline::prelude::*;
#[doc = include_str!("../joint/whole/example.txt")]
/// let page = drawing::lengths(&joint, &joint.lengths()?, UnitSystem::Si);
/// assert!(page.overlaps().is_empty());
/// assert!(page.labels().iter().any(|label| label.text.starts_with("too short by")));
/// # Ok(())
/// # }
/// ```
#[must_use]
pub fn lengths(joint: &Joint, selection: &Selection, system: UnitSystem) -> Drawing {
    let mut all: Vec<&Candidate> = selection
        .accepted()
        .iter()
        .chain(selection.rejected())
        .collect();
    all.sort_by(|a, b| a.screw.nominal.value.total_cmp(&b.screw.nominal.value));
    let best = selection.best().or(selection.rejected().first());
    let (shown, hidden) = near(&all, best);
    let title = format!("Stock lengths: {}", joint.title);
    let mut page = Drawing::new(WIDTH, &title, "");
    let what = match (&joint.own.screw, selection.best()) {
        (_, None) => "No length fits: beside each stands why.",
        (Some(_), Some(_)) => "The lengths of a bolt of your own.",
        (None, Some(_)) => "The length with the wide frame is the one that the search takes.",
    };
    let mut y = head(&mut page, &title, &[what.into()], None, system);
    y = key(&mut page, y + 8.0);
    let mut described = String::from(what);
    let reach = shown.iter().map(|own| {
        let nut = own.grip.max + own.nut_height.max;
        mm(own.screw.max).max(mm(nut))
    });
    let k = (BARS[1] - BARS[0]) / reach.fold(1e-3, f64::max);
    for own in shown {
        let is_best = selection
            .best()
            .is_some_and(|best| best.screw.nominal == own.screw.nominal);
        let text = row(&mut page, joint, own, is_best, k, y, system);
        described.push(' ');
        described.push_str(&text);
        y += ROW;
    }
    y += 6.0;
    for (count, which) in [(hidden[0], "shorter"), (hidden[1], "longer")] {
        if count > 0 {
            let text = format!(
                "{count} {which} length{} not drawn.",
                if count == 1 { " is" } else { "s are" }
            );
            page.label(Style::Note, Anchor::Start, [MARGIN, y], &text);
            y += 15.0;
        }
    }
    let unread = selection.not_assessed();
    if !unread.is_empty() {
        let inch = joint.bolt.thread.is_unified();
        let names: Vec<String> = unread.iter().map(|own| length_name(*own, inch)).collect();
        let text = format!(
            "Not assessed, as a dimension of them has not been read in any table: {}.",
            names.join(", ")
        );
        y = page.paragraph(Style::Note, [MARGIN, y], &text, INNER, 4);
    }
    page.end_at(y + 4.0);
    page.describe(described);
    page
}

/// Those around the best one, and how many shorter and longer ones are left out.
fn near<'a>(
    all: &'a [&'a Candidate],
    best: Option<&Candidate>,
) -> (&'a [&'a Candidate], [usize; 2]) {
    let at = best
        .and_then(|best| {
            all.iter()
                .position(|own| own.screw.nominal == best.screw.nominal)
        })
        .unwrap_or(0);
    let from = at
        .saturating_sub(MOST / 2)
        .min(all.len().saturating_sub(MOST));
    let to = (from + MOST).min(all.len());
    (all.get(from..to).unwrap_or(all), [from, all.len() - to])
}

/// What the marks mean.
fn key(page: &mut Drawing, y: f64) -> f64 {
    let mut x = MARGIN;
    for (fill, name) in [
        (Fill::Shank, "sure shank"),
        (Fill::RunOut, "run-out"),
        (Fill::Thread, "sure thread"),
        (Fill::PlaneDoubt, "where a shear plane may lie"),
    ] {
        zone(page, fill, [x, y - 10.0, x + 26.0, y]);
        page.label(Style::Note, Anchor::Start, [x + 32.0, y], name);
        x += 32.0 + Style::Note.width(name) + 22.0;
    }
    let name = "faces of the nut";
    between(page, [x, x + 10.0, x + 20.0], y - 5.0, 4.0);
    page.label(Style::Note, Anchor::Start, [x + 28.0, y], name);
    y + 24.0
}

/// One length. Returns what it says.
fn row(
    page: &mut Drawing,
    joint: &Joint,
    own: &Candidate,
    is_best: bool,
    k: f64,
    y: f64,
    system: UnitSystem,
) -> String {
    let x = |length: Length| (BARS[0] + mm(length) * k).clamp(BARS[0] - 12.0, BARS[1] + 2.0);
    let all = |of: Spread<Length>| [x(of.min), x(of.nominal), x(of.max)];
    let screw = &own.screw;
    let name = length_name(screw.nominal, joint.bolt.thread.is_unified());
    let style = if is_best { Style::Strong } else { Style::Plain };
    let name = style.fit(&name, BARS[0] - MARGIN - 20.0);
    page.label(style, Anchor::Start, [MARGIN + 4.0, y + 14.0], &name);
    let [top, bottom] = [y + 4.0, y + 16.0];
    let (zero, shank, thread) = (
        x(Length::default()),
        x(screw.body_length_min),
        x(screw.grip_gaging_length_max),
    );
    let cut = own.cut.filter(|cut| cut.holds_window);
    let finished = cut.map_or(
        Spread {
            min: screw.min,
            nominal: screw.nominal,
            max: screw.max,
        },
        |cut| cut.finished,
    );
    let sure = x(finished.min).max(thread);
    // The head, as a sign of where the bolt begins.
    page.rectangle(Fill::Ink, [zero - 7.0, y + 1.0, zero, y + 19.0]);
    zone(page, Fill::Shank, [zero, top, shank, bottom]);
    zone(page, Fill::RunOut, [shank, top, thread, bottom]);
    zone(page, Fill::Thread, [thread, top, sure, bottom]);
    if cut.is_some() {
        let end = x(screw.nominal);
        let frame = [[sure, top], [end, top], [end, bottom], [sure, bottom]];
        page.path(Line::Removed, None, &frame, false);
    }
    for plane in joint.stack.planes_of(own) {
        let [least, _, greatest] = all(plane.position);
        let band = [least, y, greatest.max(least + 1.0), y + 20.0];
        page.rectangle(Fill::PlaneDoubt, band);
        page.line(Line::Outline, [band[2], y - 1.0], [band[2], y + 21.0]);
    }
    let outer = Spread {
        min: own.grip.min + own.nut_height.min,
        nominal: own.grip.nominal + own.nut_height.nominal,
        max: own.grip.max + own.nut_height.max,
    };
    let (from, to) = (all(own.grip), all(outer));
    page.line(Line::Thin, [from[1], y + 25.0], [to[1], y + 25.0]);
    between(page, from, y + 25.0, 3.5);
    between(page, to, y + 25.0, 3.5);
    if is_best {
        let frame = [
            [MARGIN - 4.0, y - 6.0],
            [WIDTH - MARGIN + 4.0, y - 6.0],
            [WIDTH - MARGIN + 4.0, y + ROW - 8.0],
            [MARGIN - 4.0, y + ROW - 8.0],
        ];
        page.path(Line::Outline, None, &frame, true);
    }
    let mut text = says(own, is_best, system);
    let left = BARS[1] + 14.0;
    page.paragraph(
        if is_best { Style::Strong } else { Style::Note },
        [left, y + 9.0],
        &text,
        WIDTH - MARGIN - left,
        2,
    );
    text.insert_str(0, &format!("{name}: "));
    text.push('.');
    text
}

fn says(own: &Candidate, is_best: bool, system: UnitSystem) -> String {
    let reasons: Vec<String> = own.reasons().map(|reason| reason.text(system)).collect();
    if !reasons.is_empty() {
        return reasons.join("; ");
    }
    let mut text = String::from(if is_best { "fits, taken" } else { "fits" });
    let off = own.planes_in_run_out.saturating_add(own.planes_in_thread);
    if off > 0 {
        let many = if off == 1 { "" } else { "s" };
        let _ = write!(text, ", {off} shear plane{many} in run-out or thread");
    }
    let added = own
        .washers_added
        .saturating_add(own.washers_added_under_head);
    if added > 0 {
        let many = if added == 1 { "" } else { "s" };
        let _ = write!(text, ", {added} washer{many} added");
    }
    if own.needs_cut {
        text.push_str(match own.cut {
            Some(cut) if cut.holds_window => ", cut to length",
            _ => ", cut at fit-up",
        });
    }
    text
}
