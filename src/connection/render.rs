//! The verdict on a connection as text.

use alloc::{format, string::String, vec::Vec};
use core::fmt;

use super::{ConnectionVerdict, modes};
use crate::joint::{Scope, Word};
use crate::strength::check::Mode;
use crate::units::{UnitSystem, shown};

/// A verdict ready for `{}`; made by [`ConnectionVerdict::render`].
///
/// ```
/// # use shankline::connection::ConnectionVerdict;
/// # use shankline::units::UnitSystem;
/// fn print(verdict: &ConnectionVerdict) {
///     print!("{}", verdict.render(UnitSystem::Si));
/// }
/// ```
#[derive(Clone, Copy, Debug)]
pub struct RenderedConnection<'a> {
    verdict: &'a ConnectionVerdict,
    system: UnitSystem,
}

impl ConnectionVerdict {
    /// The verdict as text: the word and why, a line for each bolt in its worst case, what the bolts do together, what
    /// is missing, set aside and taken for granted, and the whole verdict of the worst bolt.
    ///
    /// The cautions are not in it: write [`cautions`](Self::cautions) with every report.
    ///
    /// ```
    /// # use shankline::connection::ConnectionVerdict;
    /// # use shankline::units::UnitSystem;
    /// fn report(verdict: &ConnectionVerdict) -> String {
    ///     let mut text = verdict.render(UnitSystem::UsCustomary).to_string();
    ///     for caution in &verdict.cautions {
    ///         text += &format!("{caution}\n");
    ///     }
    ///     text
    /// }
    /// ```
    #[must_use]
    pub const fn render(&self, system: UnitSystem) -> RenderedConnection<'_> {
        RenderedConnection {
            verdict: self,
            system,
        }
    }

    fn case(&self, number: usize) -> &str {
        self.cases.get(number).map_or("", |case| case.name.as_str())
    }

    /// The word and why, in one line.
    ///
    /// ```
    /// # use shankline::connection::ConnectionVerdict;
    /// # use shankline::units::UnitSystem;
    /// fn headline(verdict: &ConnectionVerdict) -> String {
    ///     verdict.headline(UnitSystem::Si)
    /// }
    /// ```
    #[must_use]
    pub fn headline(&self, system: UnitSystem) -> String {
        let cases = self.cases.len();
        let scope = self.bolts.first().map(|bolt| bolt.verdict.scope);
        let scope = scope.filter(|scope| *scope != Scope::Joint);
        let scope = scope.map_or_else(String::new, |scope| format!("{scope}; "));
        let of = format!(
            "({scope}{} {}, {cases} {})",
            self.bolts.len(),
            plural(self.bolts.len(), "bolt", "bolts"),
            plural(cases, "case", "cases")
        );
        match self.word() {
            Word::Holds => {
                let granted = self
                    .bolts
                    .first()
                    .map_or(0, |own| own.verdict.granted.len());
                let counted = |count: usize, one: &str, many: &str| {
                    (count > 0).then(|| format!("{count} {}", plural(count, one, many)))
                };
                let with = [
                    counted(self.set_aside.len(), "mode set aside", "modes set aside"),
                    counted(granted, "fact taken for granted", "facts taken for granted"),
                ];
                let with: Vec<String> = with.into_iter().flatten().collect();
                if with.is_empty() {
                    format!("HOLDS {of}")
                } else {
                    format!("HOLDS {of}, with {}", with.join(" and "))
                }
            }
            Word::Undecided => {
                let count = self.open().len();
                format!(
                    "UNDECIDED {of}: {count} {} no answer here (see below)",
                    plural(count, "check has", "checks have")
                )
            }
            Word::DoesNotHold => format!("DOES NOT HOLD {of}: {}", self.fault(system)),
        }
    }

    /// What speaks against it first.
    fn fault(&self, system: UnitSystem) -> String {
        let bolt = self
            .governing_bolt()
            .filter(|bolt| bolt.verdict.word() == Word::DoesNotHold);
        let own = self.checks.first().filter(|own| !own.check.holds());
        let used = bolt.and_then(|bolt| bolt.utilisation).unwrap_or(0.0);
        if let Some(own) = own.filter(|own| own.check.utilisation.value >= used) {
            return format!("{} in \"{}\"", own.check, self.case(own.case));
        }
        if let Some(bolt) = bolt {
            return format!(
                "bolt {} in \"{}\": {}",
                bolt.number,
                self.case(bolt.case),
                bolt.verdict.headline(system)
            );
        }
        let finding = self.findings.iter().find(|finding| finding.is_fault());
        finding.map_or_else(String::new, |finding| finding.text(system))
    }
}

const fn plural<'a>(count: usize, one: &'a str, many: &'a str) -> &'a str {
    if count == 1 { one } else { many }
}

/// One line, whatever the caller called it.
fn one_line(name: &str) -> String {
    let plain = |c: char| if c.is_control() { ' ' } else { c };
    name.chars().map(plain).collect()
}

impl fmt::Display for RenderedConnection<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (verdict, system) = (self.verdict, self.system);
        writeln!(f, "  {}", one_line(&verdict.headline(system)))?;
        if let Some(bolt) = verdict.governing_bolt() {
            let case = one_line(verdict.case(bolt.case));
            writeln!(f, "  Worst bolt: {} in \"{case}\"", bolt.number)?;
        }
        writeln!(
            f,
            "  {:>6}  {:<6}{:>14}{:>14}  {:<16}in",
            "used", "bolt", "across", "along", "word"
        )?;
        for bolt in &verdict.bolts {
            let used = bolt
                .verdict
                .governing()
                .map(|check| check.utilisation.value);
            writeln!(
                f,
                "  {:>6}  {:<6}{:>14}{:>14}  {:<16}{}",
                used.map_or_else(
                    || String::from("-"),
                    |used| format!("{:.0} %", 100.0 * used)
                ),
                bolt.number,
                format!("{}", shown(bolt.load.across, system)),
                format!("{}", shown(bolt.load.along, system)),
                format!("{}", bolt.verdict.word()),
                one_line(verdict.case(bolt.case)),
            )?;
        }
        if !verdict.methods.is_empty() {
            let methods = verdict.methods.iter().map(|own| own.citation);
            let methods: Vec<&str> = methods.collect();
            writeln!(f, "  Loads come to the bolts by: {}", methods.join("; "))?;
        }
        if !verdict.checks.is_empty() {
            writeln!(f, "  All bolts together:")?;
        }
        for own in &verdict.checks {
            let check = &own.check;
            writeln!(
                f,
                "  {:>4.0} %  {:<16}{:<9}{:>12} of {:<22} {}, in \"{}\"",
                100.0 * check.utilisation.value,
                check.mode,
                format!("{}", check.place),
                format!("{}", check.demand.shown(system)),
                format!("{} ({})", check.resistance.shown(system), check.level),
                check.method,
                one_line(verdict.case(own.case))
            )?;
        }
        for finding in &verdict.findings {
            let sign = if finding.is_fault() { "FAULT" } else { "note " };
            writeln!(f, "  {sign}  {}", finding.text(system))?;
        }
        for missing in verdict.open() {
            writeln!(f, "  not checked  {missing}")?;
        }
        self.not_concerned(f)?;
        for aside in &verdict.set_aside {
            writeln!(f, "  set aside  {}: {}", aside.mode, aside.reason)?;
        }
        writeln!(f, "  Tightening: {}", verdict.order)?;
        if let Some(bolt) = verdict.governing_bolt() {
            writeln!(f, "  Bolt {} by itself:", bolt.number)?;
            write!(f, "{}", bolt.verdict.render(system))?;
        }
        Ok(())
    }
}

impl RenderedConnection<'_> {
    /// Modes of the plates of which nothing is said because no load reaches them.
    fn not_concerned(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let verdict = self.verdict;
        let is_said = |mode: &Mode| {
            verdict.checks.iter().any(|own| own.check.mode == *mode)
                || verdict.missing.iter().any(|missing| missing.mode == *mode)
                || verdict
                    .findings
                    .iter()
                    .any(|finding| finding.mode() == *mode)
        };
        let silent = modes::OF_PLATES.into_iter().filter(|mode| !is_said(mode));
        let silent: Vec<String> = silent.map(|mode| format!("{mode}")).collect();
        if silent.is_empty() || verdict.bolts.len() < 2 {
            return Ok(());
        }
        writeln!(
            f,
            "  not concerned (no load reaches it): {}",
            silent.join(", ")
        )
    }
}

#[cfg(test)]
mod tests;
