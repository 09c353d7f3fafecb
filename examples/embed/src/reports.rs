//! The answers to a joint for people: the report, the stock lengths, texts; and its geometry for drawing programs.

use serde::Deserialize;
use shankline::derivation::Format;
use shankline::joint::{self, Joint, Report, ReportStyle, Sheet};
use shankline::strength::group::BoltPattern;
use shankline::units::UnitSystem;

use crate::questions::{AboutJoint, units_for, unwritten, written};
use crate::refusal::{Refusal, read};

pub fn check(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Asked {
        joint: Joint,
        units: Option<UnitSystem>,
        group: Option<BoltPattern>,
    }
    let asked: Asked = read(request)?;
    let units = units_for(asked.units, &asked.joint);
    let report = match asked.group {
        None => asked.joint.report(units)?,
        Some(group) => {
            let order = joint::tightening_order(&group);
            Report::new(&asked.joint, &asked.joint.check()?, Some(order), units)?
        }
    };
    written(&report)
}

pub fn lengths(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    let AboutJoint { joint, units } = read(request)?;
    written(&joint.lengths()?.report(units_for(units, &joint)))
}

pub fn explain(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Clone, Copy, Deserialize)]
    #[serde(rename_all = "snake_case")]
    enum Show {
        Working,
        Report,
        Sheet,
    }
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Asked {
        joint: Joint,
        show: Show,
        format: Format,
        units: Option<UnitSystem>,
    }
    let Asked {
        joint,
        show,
        format,
        units,
    } = read(request)?;
    let units = units_for(units, &joint);
    let text = match (show, format) {
        (Show::Working, format) => working(&joint, format, units)?,
        (Show::Report, Format::Text) => joint.report(units)?.render(ReportStyle::Text).to_string(),
        (Show::Report, Format::Markdown) => joint
            .report(units)?
            .render(ReportStyle::Markdown)
            .to_string(),
        (Show::Sheet, Format::Text) => Sheet::new(&joint, &joint.check()?)?
            .render(units)
            .to_string(),
        (Show::Report, _) => return Err(unwritten("a report is written as text or markdown")),
        (Show::Sheet, _) => return Err(unwritten("a sheet is written as text")),
    };
    Ok(text.into_bytes())
}

/// The working of every step, and what to be warned of.
fn working(joint: &Joint, format: Format, units: UnitSystem) -> Result<String, Refusal> {
    let (verdict, workings) = joint.check_with_working()?;
    let mut text = match format {
        Format::Markdown => format!("# {}\n", joint.title),
        Format::Latex => String::new(),
        _ => format!("{}\n", joint.title),
    };
    for steps in workings {
        text.push('\n');
        text.push_str(&steps.render(format, units).to_string());
    }
    let cautions = verdict.cautions.iter();
    let (before, mark, after) = match format {
        Format::Markdown => ("\n### Cautions\n\n", "- ", ""),
        Format::Latex => (
            "\n\\paragraph{Cautions}\\mbox{}\n\\begin{itemize}\\raggedright\n",
            "\\item ",
            "\\end{itemize}\n",
        ),
        _ => ("\nCautions\n", "- ", ""),
    };
    text.push_str(before);
    for caution in cautions {
        let caution = caution.to_string();
        let caution = match format {
            Format::Latex => in_latex(&caution),
            _ => caution,
        };
        text.extend([mark, &caution, "\n"]);
    }
    text.push_str(after);
    Ok(text)
}

/// Text in which nothing is a command.
fn in_latex(text: &str) -> String {
    let mut safe = String::new();
    for letter in text.chars() {
        match letter {
            '\\' => safe.push_str("\\textbackslash{}"),
            '~' => safe.push_str("\\textasciitilde{}"),
            '^' => safe.push_str("\\textasciicircum{}"),
            '<' => safe.push_str("\\textless{}"),
            '>' => safe.push_str("\\textgreater{}"),
            '#' | '$' | '%' | '&' | '_' | '{' | '}' => safe.extend(['\\', letter]),
            letter => safe.push(letter),
        }
    }
    safe
}

/// The geometry of every part, for a drawing program.
pub fn assembly(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Asked {
        joint: Joint,
    }
    let Asked { joint } = read(request)?;
    let candidate = joint.check()?.candidate;
    written(&joint.assembly(&candidate)?)
}
