//! What the pictures share: numbers in the reader's units, heads of pages, tables.

use alloc::{format, string::String, string::ToString, vec::Vec};

use super::canvas::Drawing;
use super::kinds::{Anchor, Fill, Line};
use super::number::push_fixed;
use super::text::Style;
use crate::joint::{Verdict, Word};
use crate::parts::{Origin, Size};
use crate::spread::Spread;
use crate::units::{Length, UnitSystem, shown};

/// Width of every page, and what stays free at its edges.
pub(super) const WIDTH: f64 = 960.0;
pub(super) const MARGIN: f64 = 24.0;
pub(super) const INNER: f64 = WIDTH - 2.0 * MARGIN;

/// The number of a length without its unit, as [`shown`] has it.
pub(super) fn number(length: Length, system: UnitSystem) -> String {
    let shown = shown(length, system);
    let decimals = shown.decimals();
    // Pages are full of numbers: those that are not about halfway between two of them are written without much ado.
    let power = if decimals == 2 { 100.0 } else { 1000.0 };
    let scaled = shown.value() * power;
    let rest = (scaled - crate::math::round(scaled)).abs();
    if matches!(decimals, 2 | 3) && scaled.abs() < 1e9 && rest < 0.499 {
        let mut text = String::with_capacity(12);
        push_fixed(&mut text, scaled, decimals);
        return text;
    }
    let mut text = shown.to_string();
    if let Some(at) = text.find(' ') {
        text.truncate(at);
    }
    text
}

pub(super) const fn units(system: UnitSystem) -> &'static str {
    match system {
        UnitSystem::Si => "millimetres",
        UnitSystem::UsCustomary => "inches",
    }
}

/// `12.00 (11.70 to 12.30)`; one number where the three are one.
pub(super) fn spread(of: Spread<Length>, system: UnitSystem) -> String {
    let [min, nominal, max] = [of.min, of.nominal, of.max].map(|own| number(own, system));
    if min == max {
        nominal
    } else {
        format!("{nominal} ({min} to {max})")
    }
}

/// A size as far as it is known.
pub(super) fn size(of: &Size, system: UnitSystem) -> String {
    let show = |own: Option<Length>| own.map(|own| number(own, system));
    match (show(of.min), show(of.nominal), show(of.max)) {
        (Some(min), None, Some(max)) if min == max => min,
        (Some(min), None, Some(max)) => format!("{min} to {max}"),
        (Some(min), Some(nominal), Some(max)) => format!("{nominal} ({min} to {max})"),
        (_, Some(nominal), _) => nominal,
        (None, None, Some(max)) => format!("at most {max}"),
        (Some(min), None, None) => format!("at least {min}"),
        (None, None, None) if of.origin == Origin::NotRead => "not known".into(),
        (None, None, None) => String::new(),
    }
}

/// The title, lines below it, and the word of the verdict in a frame. Returns where the picture may begin.
pub(super) fn head(
    page: &mut Drawing,
    title: &str,
    lines: &[String],
    verdict: Option<&Verdict>,
    system: UnitSystem,
) -> f64 {
    let mut y = 30.0;
    let title = Style::Heading.fit(title, INNER);
    page.label(Style::Heading, Anchor::Start, [MARGIN, y], &title);
    y += 20.0;
    for line in lines {
        y = page.paragraph(Style::Plain, [MARGIN, y], line, INNER, 2);
    }
    if let Some(verdict) = verdict {
        // It speaks of a list that a report has below it.
        let headline = verdict.headline(system).replace(" (see below)", "");
        y = word(page, y, verdict.word(), &headline);
    }
    y
}

/// The word in a frame: a full one where it holds, a broken one where it does not, a thin one where nobody knows.
pub(super) fn word(page: &mut Drawing, y: f64, word: Word, headline: &str) -> f64 {
    let top = y - 8.0;
    let bottom = page.paragraph(
        Style::Strong,
        [MARGIN + 12.0, y + 10.0],
        headline,
        INNER - 24.0,
        4,
    ) - 6.0;
    let line = match word {
        Word::Holds => Line::Outline,
        Word::DoesNotHold => Line::Plane,
        Word::Undecided => Line::Hidden,
    };
    let frame = [
        [MARGIN, top],
        [WIDTH - MARGIN, top],
        [WIDTH - MARGIN, bottom],
        [MARGIN, bottom],
    ];
    page.path(line, None, &frame, true);
    bottom + 22.0
}

/// A mark from the least to the greatest, with a stroke at the nominal place.
pub(super) fn between(page: &mut Drawing, [least, nominal, greatest]: [f64; 3], y: f64, half: f64) {
    let greatest = greatest.max(least + 0.5);
    let ends = [least, greatest].map(|x| [[x, y - half], [x, y + half]]);
    let all = [[[least, y], [greatest, y]]].into_iter().chain(ends);
    page.lines(Line::Thin, all);
    page.line(Line::Outline, [nominal, y - half], [nominal, y + half]);
}

/// A bar of a zone, with the pattern that goes with its colour.
pub(super) fn zone(page: &mut Drawing, fill: Fill, area: [f64; 4]) {
    let [left, top, right, bottom] = area;
    if right - left < 0.05 {
        return;
    }
    page.rectangle(fill, area);
    match fill {
        Fill::RunOut => page.hatch(area, true, 5.0),
        Fill::Thread => {
            // Crests and roots, seen from far.
            let places = core::iter::successors(Some(left + 3.0), |x| Some(x + 4.0));
            let places = places.take_while(|x| *x < right && *x < 2.0 * WIDTH);
            page.lines(Line::Thin, places.map(|x| [[x, top], [x, top + 4.0]]));
        }
        _ => {}
    }
    let frame = [[left, top], [right, top], [right, bottom], [left, bottom]];
    page.path(Line::Thin, None, &frame, true);
}

/// A table: its head, its rows, and which column may be shortened.
pub(super) struct Table {
    pub(super) head: Vec<String>,
    pub(super) rows: Vec<Vec<String>>,
    pub(super) flexible: usize,
}

const GAP: f64 = 14.0;
const ROW: f64 = 16.0;

impl Table {
    /// The width of its columns, within a width if that can be had by shortening the flexible one.
    pub(super) fn columns(&self, width: f64) -> Vec<f64> {
        let mut columns: Vec<f64> = self
            .head
            .iter()
            .map(|text| Style::Strong.width(text))
            .collect();
        for row in &self.rows {
            for (column, text) in columns.iter_mut().zip(row) {
                *column = column.max(Style::Note.width(text));
            }
        }
        #[allow(clippy::cast_precision_loss)] // a handful
        let gaps = GAP * columns.len().saturating_sub(1) as f64;
        let over = columns.iter().sum::<f64>() + gaps - width;
        if over > 0.0 {
            if let Some(column) = columns.get_mut(self.flexible) {
                *column = (*column - over).max(90.0_f64.min(*column));
            }
        }
        columns
    }

    /// How wide it is then.
    pub(super) fn width(columns: &[f64]) -> f64 {
        columns.iter().map(|column| column + GAP).sum::<f64>() - GAP
    }

    /// Draws it, and returns where it ends.
    pub(super) fn draw(&self, page: &mut Drawing, [left, top]: [f64; 2], columns: &[f64]) -> f64 {
        let mut y = top;
        let line = |page: &mut Drawing, style: Style, texts: &[String], y: f64| {
            let mut x = left;
            for (text, column) in texts.iter().zip(columns) {
                let text = style.fit(text, *column);
                page.label(style, Anchor::Start, [x, y], &text);
                x += column + GAP;
            }
        };
        line(page, Style::Strong, &self.head, y);
        page.line(
            Line::Thin,
            [left, y + 4.5],
            [left + Self::width(columns), y + 4.5],
        );
        for row in &self.rows {
            y += ROW;
            line(page, Style::Note, row, y + 2.0);
        }
        y + ROW
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{inches, millimetres};

    #[test]
    fn numbers_are_those_of_reports() {
        for step in -4000..4000_i32 {
            // Halves, whole numbers, and what lies between.
            for length in [
                inches(f64::from(step) / 1600.0),
                millimetres(f64::from(step) / 700.0),
            ] {
                for system in [UnitSystem::Si, UnitSystem::UsCustomary] {
                    let long = shown(length, system).to_string();
                    let (plain, _) = long.split_once(' ').unwrap();
                    assert_eq!(number(length, system), plain);
                }
            }
        }
        assert_eq!(number(inches(0.8125), UnitSystem::UsCustomary), "0.812");
    }
}
