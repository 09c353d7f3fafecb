//! A report as text and as Markdown.

use alloc::{format, string::String, vec::Vec};
use core::fmt::{self, Write as _};

use super::{Report, ReportCheck, ReportLine, ReportStep, ReportStyle};
use crate::strength::check::{Level, Mode};
use crate::units::{UnitSystem, shown};

/// A report ready for `{}`; made by [`Report::render`].
///
/// ```
/// # use shankline::joint::{Report, ReportStyle};
/// fn text(report: &Report) -> String {
///     report.render(ReportStyle::Text).to_string()
/// }
/// ```
#[derive(Clone, Copy, Debug)]
pub struct RenderedReport<'a> {
    report: &'a Report,
    style: ReportStyle,
}

impl<'a> RenderedReport<'a> {
    pub(super) const fn of(report: &'a Report, style: ReportStyle) -> Self {
        Self { report, style }
    }

    fn is_markdown(&self) -> bool {
        self.style == ReportStyle::Markdown
    }

    fn title(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let title = if self.report.title.is_empty() {
            "Joint"
        } else {
            &self.report.title
        };
        let title = one_line(title);
        let title = title.as_str();
        if self.is_markdown() {
            writeln!(f, "# {}", escaped(title))
        } else {
            writeln!(f, "{title}\n{}", "=".repeat(title.chars().count()))
        }
    }

    fn heading(&self, f: &mut fmt::Formatter<'_>, text: &str) -> fmt::Result {
        if self.is_markdown() {
            writeln!(f, "\n## {text}\n")
        } else {
            writeln!(f, "\n{text}\n{}", "-".repeat(text.chars().count()))
        }
    }

    fn item(&self, f: &mut fmt::Formatter<'_>, text: &str) -> fmt::Result {
        if self.is_markdown() {
            writeln!(f, "- {}", escaped(text))
        } else {
            writeln!(f, "  {text}")
        }
    }

    fn list(&self, f: &mut fmt::Formatter<'_>, title: &str, lines: &[String]) -> fmt::Result {
        if lines.is_empty() {
            return Ok(());
        }
        self.heading(f, title)?;
        lines.iter().try_for_each(|line| self.item(f, line))
    }

    fn bolt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (report, bolt) = (self.report, &self.report.bolt);
        let show = |length| shown(length, report.units);
        self.heading(f, "Bolt")?;
        self.item(f, &bolt.name)?;
        if let Some(nut) = &bolt.nut {
            self.item(f, &format!("nut: {nut}"))?;
        }
        let added = match bolt.washers_added {
            0 => String::new(),
            count => format!(", {count} of them added"),
        };
        self.item(
            f,
            &format!(
                "washers: {} under the head, {} under the nut{added}",
                bolt.washers_under_head, bolt.washers_under_nut
            ),
        )?;
        self.item(
            f,
            &format!(
                "full shank at least to {}, full thread at the latest from {}, from under the head",
                show(bolt.body_length_min),
                show(bolt.grip_gaging_length_max)
            ),
        )?;
        for plane in &report.planes {
            let line = format!(
                "shear plane after ply {}: worst case at {}, on {}",
                plane.after_ply,
                show(plane.position.max),
                plane.worst
            );
            self.item(f, &line)?;
        }
        let protrusion = format!(
            "sticks out {} to {} as bought; {:.2} threads are clear between nut and run-out",
            show(bolt.protrusion.min),
            show(bolt.protrusion.max),
            bolt.clear_threads
        );
        self.item(f, &protrusion)?;
        match (bolt.is_cut, bolt.cut_to) {
            (true, Some(length)) => self.item(f, &format!("cut to {}", show(length))),
            (true, None) => self.item(f, "cut where it is marked at the fit-up"),
            _ => Ok(()),
        }
    }

    fn layers(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let show = |length| shown(length, self.report.units);
        self.heading(f, "Stack, from the head")?;
        for layer in &self.report.layers {
            let mut line = format!(
                "{:<32} {:>10} ({} to {})",
                layer.name,
                format!("{}", show(layer.thickness.nominal)),
                show(layer.thickness.min),
                show(layer.thickness.max)
            );
            if let Some(hole) = layer.hole {
                write!(line, ", hole {}", show(hole))?;
            }
            if let Some(material) = &layer.material {
                write!(line, ", {material}")?;
            }
            self.item(f, &line)?;
        }
        Ok(())
    }

    fn checks(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.report.checks.is_empty() {
            return Ok(());
        }
        self.heading(f, "Checks")?;
        if self.is_markdown() {
            writeln!(
                f,
                "| used | n | of | where | load | resistance | by |\n|---:|---:|---|---|---:|---:|---|"
            )?;
        } else {
            header(f)?;
        }
        let units = self.report.units;
        for check in &self.report.checks {
            if self.is_markdown() {
                writeln!(
                    f,
                    "| {:.0} % | {} | {} | {} | {} | {} | {} |",
                    check.used(),
                    check.n(),
                    check.mode,
                    check.place,
                    check.demand.shown(units),
                    check.resistance_of(units),
                    escaped(&check.method)
                )?;
            } else {
                check.row(f, units)?;
            }
        }
        if self.is_markdown() {
            writeln!(f)?;
        }
        for line in what_n_is(&self.report.checks) {
            self.item(f, line)?;
        }
        Ok(())
    }

    fn steps(&self, f: &mut fmt::Formatter<'_>, title: &str, steps: &[ReportStep]) -> fmt::Result {
        self.heading(f, title)?;
        for step in steps {
            if self.is_markdown() {
                writeln!(
                    f,
                    "- [ ] {} *({})*",
                    escaped(&step.line.text),
                    escaped(&step.source)
                )?;
            } else {
                writeln!(f, "  [ ] {}\n      ({})", step.line.text, step.source)?;
            }
        }
        Ok(())
    }
}

/// As text, in the units of the report.
impl fmt::Display for Report {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(&self.render(ReportStyle::Text), f)
    }
}

impl fmt::Display for RenderedReport<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let report = self.report;
        self.title(f)?;
        if self.is_markdown() {
            writeln!(f, "\n**{}**", escaped(&report.headline))?;
        } else {
            writeln!(f, "\n{}", report.headline)?;
        }
        if let Some(worst) = report.checks.first() {
            let line = format!("Governs: {}", worst.text);
            writeln!(f, "{}{line}", if self.is_markdown() { "\n" } else { "" })?;
        }
        self.list(f, "Faults", &texts(&report.faults))?;
        self.list(f, "Not checked", &texts(&report.missing))?;
        self.list(f, "What it was checked for", &report.conditions)?;
        self.bolt(f)?;
        self.layers(f)?;
        self.checks(f)?;
        self.list(f, "To know and to do", &texts(&report.notes))?;
        let set_aside = report.set_aside.iter();
        let set_aside: Vec<String> = set_aside
            .map(|aside| format!("{}: {}", aside.mode, aside.reason))
            .collect();
        self.list(f, "Set aside", &set_aside)?;
        let granted: Vec<String> = report.granted.iter().map(|own| format!("{own}")).collect();
        self.list(f, "Taken for granted", &granted)?;
        self.heading(f, "In order, and not concerned")?;
        if !report.in_order.is_empty() {
            self.item(f, &format!("in order: {}", modes(report.in_order.iter())))?;
        }
        let mut reasons: Vec<&str> = Vec::new();
        for own in &report.not_concerned {
            if !reasons.contains(&own.why.as_str()) {
                reasons.push(&own.why);
            }
        }
        for why in reasons {
            let of = report.not_concerned.iter().filter(|own| own.why == why);
            let line = format!("not concerned ({why}): {}", modes(of.map(|own| &own.mode)));
            self.item(f, &line)?;
        }
        self.steps(f, "For the workshop", &report.assembly)?;
        self.steps(f, "For the inspector", &report.inspection)?;
        let others: Vec<String> = report
            .other_lengths
            .iter()
            .map(|other| {
                let reasons = texts(&other.reasons);
                if reasons.is_empty() {
                    format!("{}: fits, but ranks behind", other.name)
                } else {
                    format!("{}: {}", other.name, reasons.join("; "))
                }
            })
            .collect();
        self.list(f, "Why not the other lengths", &others)?;
        self.list(f, "Where the numbers come from", &report.sources)?;
        self.list(f, "Cautions", &texts(&report.cautions))
    }
}

impl ReportCheck {
    /// Percent in use. A load just over its resistance is not shown as all of it.
    fn used(&self) -> f64 {
        if self.holds {
            (self.utilisation * 100.0).min(100.0)
        } else {
            (self.utilisation * 100.0).max(101.0)
        }
    }

    /// Resistance over load, rounded down, and below 1 where it does not hold; a dash where it is no factor.
    fn n(&self) -> String {
        let Some(n) = self.reserve else {
            return "-".into();
        };
        let n = if self.holds { n } else { n.min(0.99) };
        // What stands a hair below a figure for its last bit is that figure.
        let down = |steps: f64| -crate::math::ceil(-n * steps - 1e-9) / steps;
        if n < 10.0 {
            format!("{:.2}", down(100.0))
        } else if n < 100.0 {
            format!("{:.1}", down(10.0))
        } else {
            format!("{:.0}", down(1.0))
        }
    }

    /// The resistance and what it is.
    fn resistance_of(&self, units: UnitSystem) -> String {
        format!("{} ({})", self.resistance.shown(units), self.level)
    }

    /// The check as a row of a table of text.
    pub(in crate::joint) fn row(
        &self,
        f: &mut fmt::Formatter<'_>,
        units: UnitSystem,
    ) -> fmt::Result {
        writeln!(
            f,
            "  {:>4.0} %  {:>5}  {:<28}{:<15}{:>12} of {:<22} {}",
            self.used(),
            self.n(),
            self.mode,
            format!("{}", self.place),
            format!("{}", self.demand.shown(units)),
            self.resistance_of(units),
            self.method
        )
    }
}

/// One line, whatever the caller put in it: the word stands below it alone.
pub(super) fn one_line(title: &str) -> String {
    let plain = |c: char| if c.is_control() { ' ' } else { c };
    title.chars().map(plain).collect()
}

/// What stands over the rows of a table of text.
pub(in crate::joint) fn header(f: &mut fmt::Formatter<'_>) -> fmt::Result {
    writeln!(
        f,
        "  {:>6}  {:>5}  {:<28}{:<15}{:>12} of {:<22} by",
        "used", "n", "of", "where", "load", "resistance"
    )
}

/// What the column n of a table says, for the kinds of rows that are in it.
pub(in crate::joint) fn what_n_is(checks: &[ReportCheck]) -> Vec<&'static str> {
    let has = |of: &dyn Fn(&ReportCheck) -> bool| checks.iter().any(of);
    let mut lines = Vec::from([
        "n is resistance over load as they stand in the row; shock, load factors and margin are in the load already.",
    ]);
    if has(&|check| check.level == Level::Nominal) {
        lines.push("Over a nominal resistance n is the factor of safety on it, beside the margin in the load.");
    }
    if has(&|check| check.level == Level::Allowable) {
        lines.push(
            "Over an allowable resistance n is what is left beside the safety factor in it: no factor of safety on yield.",
        );
    }
    if has(&|check| check.level == Level::Design) {
        lines.push(
            "Over a design resistance n is what is left beside the partial factor in it: no factor of safety on yield.",
        );
    }
    if has(&|check| check.mode == Mode::Combined) {
        lines.push("Of combined loads n is the load factor: all of them at once can grow by it.");
    }
    if has(&|check| check.mode == Mode::Tightening) {
        lines.push("Where preload is in the load it is in n, and does not grow with the load from outside.");
    }
    if has(&|check| check.reserve.is_none()) {
        lines.push(
            "A dash: no load, or n would be no factor on it (a distance, a contact pressure, friction beside a pull).",
        );
    }
    lines
}

fn texts(lines: &[ReportLine]) -> Vec<String> {
    lines.iter().map(|line| line.text.clone()).collect()
}

fn modes<'a>(modes: impl Iterator<Item = &'a Mode>) -> String {
    let names: Vec<String> = modes.map(|mode| format!("{mode}")).collect();
    names.join(", ")
}

/// Text in which Markdown sees no mark-up.
fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        if matches!(
            c,
            '\\' | '`' | '*' | '_' | '|' | '<' | '>' | '#' | '[' | ']'
        ) {
            out.push('\\');
        }
        out.push(c);
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::strength::check::{Check, Place};
    use crate::units::newtons;

    fn n(load: f64, resistance: f64) -> String {
        let (load, resistance) = (newtons(load), newtons(resistance));
        let place = Place::Bolt(1);
        let check = Check::new(
            Mode::BoltShear,
            place,
            load,
            resistance,
            Level::Nominal,
            &TEST,
        )
        .unwrap();
        ReportCheck::new(&check).n()
    }

    static TEST: crate::source::Method = crate::source::Method::own("test");

    #[test]
    fn n_is_resistance_over_load_rounded_down() {
        assert_eq!(n(40.0, 50.0), "1.25");
        assert_eq!(n(100.0, 115.0), "1.15");
        assert_eq!(n(3.0, 5.0), "1.66");
        assert_eq!(n(9.0, 100.0), "11.1");
        assert_eq!(n(1.5, 351.06), "234");
        assert_eq!(n(50.0, 50.0), "1.00");
        // Two figures behind the point below 10, one below 100.
        assert_eq!(n(1.0, 9.999), "9.99");
        assert_eq!(n(1.0, 10.0), "10.0");
        assert_eq!(n(1.0, 99.99), "99.9");
        assert_eq!(n(1.0, 100.0), "100");
        // What does not hold is never shown as 1, and what has no load has no factor.
        assert_eq!(n(50.0 * (1.0 + 1e-9), 50.0), "0.99");
        assert_eq!(n(200.0, 50.0), "0.25");
        assert_eq!(n(0.0, 50.0), "-");
    }

    #[test]
    fn what_is_no_factor_on_the_load_is_a_dash() {
        let place = Place::Ply(1);
        let (wanted, there) = (newtons(40.0), newtons(50.0));
        let check = Check::new(Mode::TearOut, place, wanted, there, Level::Design, &TEST).unwrap();
        let check = ReportCheck::new(&check.not_proportional());
        assert_eq!(check.n(), "-");
        let lines = what_n_is(&[check]).join("\n");
        assert!(
            lines.contains("design resistance") && lines.contains("A dash"),
            "{lines}"
        );
        assert!(
            !lines.contains("nominal") && !lines.contains("preload"),
            "{lines}"
        );
    }

    #[test]
    fn markdown_sees_no_mark_up_in_a_name() {
        for (text, shown) in [
            ("M12, 4 mm", "M12, 4 mm"),
            ("a_b*c", "a\\_b\\*c"),
            (
                "# [x](y) | <b> `c` \\",
                "\\# \\[x\\](y) \\| \\<b\\> \\`c\\` \\\\",
            ),
        ] {
            assert_eq!(escaped(text), shown);
        }
    }
}
