//! Derivations as plain text, Markdown and LaTeX.

use alloc::{format, string::String};
use core::fmt::{self, Write};

use super::expression::{self, Notation, Substitute, Written, write_latex_symbol};
use super::{Derivation, Step};
use crate::error::Amount;
use crate::units::UnitSystem;

/// The form a derivation is written in.
///
/// ```
/// use shankline::derivation::{Derivation, Format, Step};
/// use shankline::units::UnitSystem;
/// let planes = Derivation::new("Planes").step(Step::given("shear planes", "n", 2));
/// let markdown = planes.render(Format::Markdown, UnitSystem::Si).to_string();
/// assert_eq!(markdown, "### Planes\n\n1. shear planes: `n = 2`\n");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Format {
    /// For a terminal or a mail: one line each for formula, substitution and result.
    Text,
    /// A heading and a numbered list.
    Markdown,
    /// A paragraph heading and a numbered list, whose notes and maths wrap; it needs no package.
    Latex,
}

/// A derivation ready for `{}`; made by [`Derivation::render`].
///
/// ```
/// use shankline::derivation::{Derivation, Format};
/// use shankline::units::UnitSystem;
/// let empty = Derivation::new("Nothing");
/// assert_eq!(empty.render(Format::Text, UnitSystem::Si).to_string(), "Nothing\n");
/// ```
#[derive(Clone, Copy, Debug)]
pub struct Rendered<'a> {
    pub(super) derivation: &'a Derivation,
    pub(super) format: Format,
    pub(super) system: UnitSystem,
}

impl fmt::Display for Rendered<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.format {
            Format::Text => self.text(f),
            Format::Markdown => self.markdown(f),
            Format::Latex => self.latex(f),
        }
    }
}

impl Rendered<'_> {
    fn text(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "{}", self.derivation.title())?;
        for (index, step) in self.derivation.steps().iter().enumerate() {
            let number = index + 1;
            write!(f, "{number:>3}. {}", step.what())?;
            if let Some(source) = step.published_in() {
                write!(f, "  [{source}]")?;
            }
            writeln!(f)?;
            let parts = Parts::of(step, Notation::Plain, self.system);
            let indent = step.symbol().chars().count();
            let mut parts = parts.iter();
            if let Some(first) = parts.next() {
                writeln!(f, "     {} = {first}", step.symbol())?;
            }
            for part in parts {
                writeln!(f, "     {:indent$} = {part}", "")?;
            }
        }
        Ok(())
    }

    fn markdown(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "### {}\n", self.derivation.title())?;
        for (index, step) in self.derivation.steps().iter().enumerate() {
            let number = index + 1;
            write!(f, "{number}. {}: `{}", step.what(), step.symbol())?;
            for part in Parts::of(step, Notation::Plain, self.system).iter() {
                write!(f, " = {part}")?;
            }
            f.write_char('`')?;
            if let Some(source) = step.published_in() {
                write!(f, " ({source})")?;
            }
            writeln!(f)?;
        }
        Ok(())
    }

    /// Notes are text, and maths stands in lines of text too: both wrap, which displays do not.
    fn latex(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        // Without the box a list begins in the line of the heading.
        writeln!(
            f,
            "\\paragraph{{{}}}\\mbox{{}}",
            escaped(self.derivation.title())
        )?;
        if self.derivation.steps().is_empty() {
            return Ok(());
        }
        writeln!(f, "\\begin{{enumerate}}\\raggedright")?;
        for step in self.derivation.steps() {
            write!(f, "\\item {}", escaped(step.what()))?;
            if let Some(source) = step.published_in() {
                write!(f, " ({})", escaped(&format!("{source}")))?;
            }
            let mut symbol = String::new();
            write_latex_symbol(&mut symbol, step.symbol())?;
            let parts = Parts::of(step, Notation::Latex, self.system);
            // A value alone needs no line of its own.
            let given = parts.formula.is_none();
            write!(f, "{}", if given { ": " } else { "\\\\\n" })?;
            for (index, part) in parts.iter().enumerate() {
                if index == 0 {
                    write!(f, "$\\displaystyle {symbol} = {part}$")?;
                } else {
                    write!(f, "\\\\\n$\\displaystyle \\phantom{{{symbol}}} = {part}$")?;
                }
            }
            writeln!(f)?;
        }
        writeln!(f, "\\end{{enumerate}}")
    }
}

/// What stands between the equal signs of a step.
struct Parts {
    formula: Option<String>,
    substituted: Option<String>,
    value: String,
}

impl Parts {
    fn of(step: &Step, notation: Notation, system: UnitSystem) -> Self {
        let value = shown(step.value(), notation, system);
        let Some(expression) = expression::read(step.formula()) else {
            // No formula, or one of the caller's that is not of the language: shown as it stands.
            let formula = (!step.formula().is_empty()).then(|| step.formula().into());
            return Self {
                formula,
                substituted: None,
                value,
            };
        };
        let formula = Written::new(&expression, notation, |_: &str| None);
        let substituted = expression.has_names().then(|| {
            let value = |name: &str| {
                let amount = step.term(name).filter(|_| !is_unit(name))?;
                Some(Substitute {
                    text: shown(amount, notation, system),
                    compound: has_unit(amount) || amount.base() < 0.0,
                })
            };
            format!("{}", Written::new(&expression, notation, value))
        });
        Self {
            formula: Some(format!("{formula}")),
            substituted,
            value,
        }
    }

    fn iter(&self) -> impl Iterator<Item = &str> {
        let formula = self.formula.as_deref();
        // The substitution of `F = Fi` is its value.
        let substituted = self
            .substituted
            .as_deref()
            .filter(|text| *text != self.value);
        formula
            .into_iter()
            .chain(substituted)
            .chain([self.value.as_str()])
    }
}

/// Symbols that stand for one unit of measurement in a formula written for numbers.
fn is_unit(name: &str) -> bool {
    matches!(
        name,
        "mm" | "mm2" | "in" | "in2" | "N" | "kN" | "lbf" | "kip" | "MPa" | "ksi" | "psi"
    )
}

const fn has_unit(amount: Amount) -> bool {
    !matches!(amount, Amount::Number(_) | Amount::Count(_))
}

/// An amount with at least three significant digits.
fn shown(amount: Amount, notation: Notation, system: UnitSystem) -> String {
    let text = format!("{}", amount.shown(system));
    match notation {
        Notation::Plain => text,
        Notation::Latex => match text.split_once(' ') {
            Some((number, unit)) => {
                let unit = unit
                    .replace('²', "^{2}")
                    .replace('°', "{}^{\\circ}")
                    .replace(' ', "\\,");
                format!("{number}\\,\\mathrm{{{unit}}}")
            }
            None => text,
        },
    }
}

/// Text that LaTeX takes as it is meant.
fn escaped(text: &str) -> String {
    let mut escaped = String::new();
    for c in text.chars() {
        match c {
            '%' | '&' | '_' | '#' | '$' | '{' | '}' => {
                escaped.push('\\');
                escaped.push(c);
            }
            '\\' => escaped.push_str("\\textbackslash{}"),
            '^' => escaped.push_str("\\textasciicircum{}"),
            '~' => escaped.push_str("\\textasciitilde{}"),
            '<' => escaped.push_str("\\textless{}"),
            '>' => escaped.push_str("\\textgreater{}"),
            '|' => escaped.push_str("\\textbar{}"),
            // After an item it would be another mark for it.
            '[' => escaped.push_str("{[}"),
            // An empty line ends what takes one paragraph.
            c if c.is_control() => escaped.push(' '),
            _ => escaped.push(c),
        }
    }
    escaped
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{inches, ksi, millimetres, newtons, square_millimetres};
    use alloc::string::ToString;

    fn shear() -> Derivation {
        let area = core::f64::consts::PI / 4.0 * 0.75 * 0.75;
        let area_si = square_millimetres(area * 25.4 * 25.4);
        Derivation::new("Shear of 1 bolt, 100 % of it")
            .step(
                Step::new("shank area", "A", "pi / 4 * d^2", area_si)
                    .with("d", inches(0.75))
                    .source("geometry"),
            )
            .step(
                Step::new(
                    "shear load",
                    "V",
                    "0.577 * Sy * A",
                    0.577 * ksi(130.0) * area_si,
                )
                .with("Sy", ksi(130.0))
                .with("A", area_si),
            )
    }

    #[test]
    fn text_shows_formula_substitution_and_result() {
        assert!(shear().check().is_ok());
        let text = shear()
            .render(Format::Text, UnitSystem::UsCustomary)
            .to_string();
        let expected = "\
Shear of 1 bolt, 100 % of it
  1. shank area  [geometry]
     A = π / 4 × d^2
       = π / 4 × (0.750 in)^2
       = 0.4418 in²
  2. shear load
     V = 0.577 × Sy × A
       = 0.577 × 130.0 ksi × 0.4418 in²
       = 33138 lbf
";
        assert_eq!(text, expected);
    }

    #[test]
    fn latex_and_markdown() {
        let latex = shear().render(Format::Latex, UnitSystem::Si).to_string();
        let expected = "\
\\paragraph{Shear of 1 bolt, 100 \\% of it}\\mbox{}
\\begin{enumerate}\\raggedright
\\item shank area (geometry)\\\\
$\\displaystyle A = \\frac{\\pi}{4} \\times d^{2}$\\\\
$\\displaystyle \\phantom{A} = \\frac{\\pi}{4} \\times \\left(19.05\\,\\mathrm{mm}\\right)^{2}$\\\\
$\\displaystyle \\phantom{A} = 285.0\\,\\mathrm{mm^{2}}$
";
        assert!(latex.starts_with(expected), "{latex}");
        assert!(latex.ends_with("\n\\end{enumerate}\n"));
        // A list of nothing is an error of LaTeX.
        let empty = Derivation::new("Nothing")
            .render(Format::Latex, UnitSystem::Si)
            .to_string();
        assert_eq!(empty, "\\paragraph{Nothing}\\mbox{}\n");
        let markdown = shear().render(Format::Markdown, UnitSystem::Si).to_string();
        assert!(markdown.contains(
            "2. shear load: `V = 0.577 × Sy × A = 0.577 × 896 MPa × 285.0 mm² = 147.41 kN`\n"
        ));
    }

    #[test]
    fn latex_takes_any_text_as_it_is_meant() {
        let odd = "[a] <b> | 5 % & #1_x {c}\n\nd";
        let steps = Derivation::new(odd).step(Step::given(odd, "n", 2));
        let latex = steps.render(Format::Latex, UnitSystem::Si).to_string();
        let text = "{[}a] \\textless{}b\\textgreater{} \\textbar{} 5 \\% \\& \\#1\\_x \\{c\\}  d";
        assert!(
            latex.starts_with(&format!("\\paragraph{{{text}}}")),
            "{latex}"
        );
        assert!(latex.contains(&format!("\\item {text}: $")), "{latex}");
    }

    #[test]
    fn units_in_formulas_stay_names() {
        let step = Step::new(
            "amplitude",
            "sA",
            "0.85 * (150 * mm / d + 45) * MPa",
            ksi(0.0),
        )
        .with("d", millimetres(10.0))
        .with("mm", millimetres(1.0))
        .with("MPa", crate::units::megapascals(1.0));
        let text = Derivation::new("t")
            .step(step)
            .render(Format::Markdown, UnitSystem::Si)
            .to_string();
        assert!(
            text.contains("0.85 × (150 × mm / 10.00 mm + 45) × MPa"),
            "{text}"
        );
    }

    #[test]
    fn small_values_keep_three_digits() {
        let show = |amount: Amount| amount.shown(UnitSystem::Si).to_string();
        assert_eq!(show(newtons(1.234).into()), "0.00123 kN");
        assert_eq!(show(millimetres(0.042).into()), "0.0420 mm");
        assert_eq!(show(Amount::Number(0.2)), "0.2");
        assert_eq!(show(Amount::Number(1.0 / 3.0)), "0.3333");
        assert_eq!(show(Amount::Number(12345.678)), "12346");
        assert_eq!(show(Amount::Number(0.0)), "0");
        assert_eq!(show(Amount::Number(2.0)), "2");
        assert_eq!(show(millimetres(0.0).into()), "0.00 mm");
    }
}
