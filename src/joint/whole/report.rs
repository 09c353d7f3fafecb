//! A verdict as text.

use alloc::format;
use core::fmt;

use super::JointCheck;
use crate::units::UnitSystem;

/// A verdict ready for `{}`; made by [`JointCheck::render`].
///
/// ```
/// # use shankline::joint::JointCheck;
/// # use shankline::units::UnitSystem;
/// fn print(verdict: &JointCheck) {
///     print!("{}", verdict.render(UnitSystem::Si));
/// }
/// ```
#[derive(Clone, Copy, Debug)]
pub struct RenderedCheck<'a> {
    check: &'a JointCheck,
    system: UnitSystem,
}

impl JointCheck {
    /// The verdict as text: what governs, every check, what was found, what was not checked.
    ///
    /// The cautions are not in it, so that a program can set them where they are seen: write
    /// [`cautions`](Self::cautions) with every report.
    ///
    /// ```
    /// # use shankline::joint::JointCheck;
    /// # use shankline::units::UnitSystem;
    /// fn report(verdict: &JointCheck) -> String {
    ///     let mut text = verdict.render(UnitSystem::UsCustomary).to_string();
    ///     for caution in &verdict.cautions {
    ///         text += &format!("{caution}\n");
    ///     }
    ///     text
    /// }
    /// ```
    #[must_use]
    pub const fn render(&self, system: UnitSystem) -> RenderedCheck<'_> {
        RenderedCheck {
            check: self,
            system,
        }
    }
}

impl fmt::Display for RenderedCheck<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let verdict = if self.check.holds() {
            "HOLDS, as far as it was checked"
        } else {
            "DOES NOT HOLD"
        };
        match self.check.governing() {
            Some(worst) => writeln!(f, "  {verdict}; {worst} governs")?,
            None => writeln!(f, "  {verdict}")?,
        }
        writeln!(
            f,
            "  {:>6}  {:<28}{:<15}{:>12} of {:<22} by",
            "used", "of", "where", "load", "resistance"
        )?;
        for check in &self.check.checks {
            let resistance = format!("{} ({})", check.resistance.shown(self.system), check.level);
            writeln!(
                f,
                "  {:>4.0} %  {:<28}{:<15}{:>12} of {resistance:<22} {}",
                check.utilisation.value * 100.0,
                check.mode,
                format!("{}", check.place),
                format!("{}", check.demand.shown(self.system)),
                check.method
            )?;
        }
        writeln!(
            f,
            "  Each load stands beside a resistance of its own level: nominal has no margin, design"
        )?;
        writeln!(
            f,
            "  has the code's factor for factored loads, allowable the whole factor for service loads."
        )?;
        for finding in &self.check.findings {
            let sign = if finding.is_fault() { "FAULT" } else { "note " };
            writeln!(f, "  {sign}  {}", finding.text(self.system))?;
        }
        for missing in &self.check.not_checked {
            writeln!(f, "  not checked: {missing}")?;
        }
        Ok(())
    }
}
