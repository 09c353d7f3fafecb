//! A verdict as text.

use alloc::{format, string::String, vec::Vec};
use core::fmt::{self, Write as _};

use super::{Account, Need, NotConcerned, Verdict, Word};
use crate::joint::ReportCheck;
use crate::joint::report::{header, what_n_is};
use crate::strength::check::{Mode, Place};
use crate::units::UnitSystem;

/// A verdict ready for `{}`; made by [`Verdict::render`].
///
/// ```
/// # use shankline::joint::Verdict;
/// # use shankline::units::UnitSystem;
/// fn print(verdict: &Verdict) {
///     print!("{}", verdict.render(UnitSystem::Si));
/// }
/// ```
#[derive(Clone, Copy, Debug)]
pub struct RenderedVerdict<'a> {
    verdict: &'a Verdict,
    system: UnitSystem,
}

impl Verdict {
    /// The verdict as text: the word and why, what governs, every check, what was found, what is missing, what
    /// was set aside, and which modes are not concerned.
    ///
    /// The cautions are not in it, so that a program can set them where they are seen: write
    /// [`cautions`](Self::cautions) with every report.
    ///
    /// ```
    /// # use shankline::joint::Verdict;
    /// # use shankline::units::UnitSystem;
    /// fn report(verdict: &Verdict) -> String {
    ///     let mut text = verdict.render(UnitSystem::UsCustomary).to_string();
    ///     for caution in &verdict.cautions {
    ///         text += &format!("{caution}\n");
    ///     }
    ///     text
    /// }
    /// ```
    #[must_use]
    pub const fn render(&self, system: UnitSystem) -> RenderedVerdict<'_> {
        RenderedVerdict {
            verdict: self,
            system,
        }
    }

    /// Modes that are in order, and of which no check tells.
    pub(in crate::joint) fn in_order_without_figure(&self) -> impl Iterator<Item = Mode> {
        Mode::ALL.into_iter().filter(|&mode| {
            self.account(mode) == Account::InOrder
                && !self.checks.iter().any(|check| check.mode == mode)
        })
    }

    /// The word, what it speaks of, and why, in one line.
    ///
    /// ```
    /// # use shankline::joint::Verdict;
    /// # use shankline::units::UnitSystem;
    /// fn headline(verdict: &Verdict) -> String {
    ///     verdict.headline(UnitSystem::Si)
    /// }
    /// ```
    #[must_use]
    pub fn headline(&self, system: UnitSystem) -> String {
        let scope = self.scope;
        match self.word() {
            Word::Holds => {
                let counted = |count: usize, one: &str, many: &str| match count {
                    0 => None,
                    1 => Some(format!("1 {one}")),
                    count => Some(format!("{count} {many}")),
                };
                // A mode is set aside once, however often it is said.
                let is_aside = |mode: &Mode| self.set_aside.iter().any(|aside| aside.mode == *mode);
                let modes = Mode::ALL.iter().filter(|mode| is_aside(mode)).count();
                let aside = counted(modes, "mode set aside", "modes set aside");
                let granted = counted(
                    self.granted.len(),
                    "fact taken for granted",
                    "facts taken for granted",
                );
                let with: Vec<String> = aside.into_iter().chain(granted).collect();
                if with.is_empty() {
                    format!("HOLDS ({scope})")
                } else {
                    format!("HOLDS ({scope}), with {}", with.join(" and "))
                }
            }
            Word::DoesNotHold => {
                let exceeded = self.checks.iter().filter(|check| !check.holds());
                let loads = exceeded.map(|check| format!("{check}"));
                let faults = self.faults().map(|finding| finding.text(system));
                let reasons: Vec<String> = loads.chain(faults).collect();
                let first = reasons.first().map_or("", String::as_str);
                match reasons.len() {
                    0 | 1 => format!("DOES NOT HOLD ({scope}): {first}"),
                    2 => format!("DOES NOT HOLD ({scope}): {first}; and 1 reason more"),
                    count => {
                        format!(
                            "DOES NOT HOLD ({scope}): {first}; and {} reasons more",
                            count - 1
                        )
                    }
                }
            }
            Word::Undecided => {
                let facts: Vec<String> = self
                    .to_decide()
                    .iter()
                    .map(|(need, places)| wanted(need, places))
                    .collect();
                let others = self
                    .open()
                    .filter(|missing| !missing.need.is_fact())
                    .count();
                let mut line = format!("UNDECIDED ({scope})");
                match facts.as_slice() {
                    [] => {}
                    facts => {
                        let _ = write!(line, ": say {}", facts.join("; "));
                    }
                }
                if others > 0 {
                    let begins = if facts.is_empty() { ":" } else { ";" };
                    let noun = if others == 1 {
                        "check has"
                    } else {
                        "checks have"
                    };
                    let _ = write!(line, "{begins} {others} {noun} no answer here (see below)");
                }
                line
            }
        }
    }
}

/// "the material of plies 1 and 2".
fn wanted(need: &Need, places: &[Place]) -> String {
    let plies: Vec<String> = places
        .iter()
        .filter_map(|place| match place {
            Place::Ply(number) => Some(format!("{number}")),
            _ => None,
        })
        .collect();
    let others: Vec<String> = places
        .iter()
        .filter_map(|place| match place {
            Place::Ply(_) | Place::Joint => None,
            // The need names the part.
            Place::Bolt(_) | Place::Nut if need.names_part() => None,
            other => Some(format!("{other}")),
        })
        .collect();
    let mut of: Vec<String> = Vec::new();
    match plies.as_slice() {
        [] => {}
        [one] => of.push(format!("ply {one}")),
        [all @ .., last] => of.push(format!("plies {} and {last}", all.join(", "))),
    }
    of.extend(others);
    if of.is_empty() {
        format!("the {}", need.name())
    } else {
        format!("the {} of {}", need.name(), of.join(" and "))
    }
}

impl fmt::Display for RenderedVerdict<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let verdict = self.verdict;
        writeln!(f, "  {}", verdict.headline(self.system))?;
        if let Some(worst) = verdict.governing() {
            writeln!(f, "  Governs: {worst}")?;
        }
        let checks: Vec<ReportCheck> = verdict.checks.iter().map(ReportCheck::new).collect();
        if !checks.is_empty() {
            header(f)?;
        }
        for check in &checks {
            check.row(f, self.system)?;
        }
        if !checks.is_empty() {
            for line in what_n_is(&checks) {
                writeln!(f, "  {line}")?;
            }
        }
        for finding in &verdict.findings {
            let sign = if finding.is_fault() { "FAULT" } else { "note " };
            writeln!(f, "  {sign}  {}", finding.text(self.system))?;
        }
        for missing in verdict.open() {
            writeln!(f, "  not checked  {missing}")?;
        }
        for aside in &verdict.set_aside {
            writeln!(f, "  set aside  {}: {}", aside.mode, aside.reason)?;
        }
        for granted in &verdict.granted {
            writeln!(f, "  taken for granted  {granted}")?;
        }
        self.not_concerned(f)
    }
}

impl RenderedVerdict<'_> {
    /// Modes that are in order without a figure, and those that are not concerned, by reason.
    fn not_concerned(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let verdict = self.verdict;
        let in_order = verdict.in_order_without_figure();
        let in_order: Vec<String> = in_order.map(|mode| format!("{mode}")).collect();
        if !in_order.is_empty() {
            writeln!(f, "  in order: {}", in_order.join(", "))?;
        }
        let mut reasons: Vec<(NotConcerned, Vec<String>)> = Vec::new();
        for mode in Mode::ALL {
            let Account::NotConcerned(why) = verdict.account(mode) else {
                continue;
            };
            match reasons.iter_mut().find(|(own, _)| *own == why) {
                Some((_, modes)) => modes.push(format!("{mode}")),
                None => reasons.push((why, Vec::from([format!("{mode}")]))),
            }
        }
        for (why, modes) in reasons {
            writeln!(f, "  not concerned ({why}): {}", modes.join(", "))?;
        }
        Ok(())
    }
}
