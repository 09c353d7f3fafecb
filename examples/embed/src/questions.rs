//! The questions, and how each is answered.

use serde::{Deserialize, Serialize};
use shankline::caution::{self, Caution};
use shankline::connection::{Connection, ConnectionVerdict};
use shankline::derivation::Format;
use shankline::drawing::{self, Drawing};
use shankline::joint::{
    self, DesignSpace, Joint, Missing, Objective, Report, ReportStyle, Scope, Sheet, Word,
};
use shankline::strength::check::{Mode, Place};
use shankline::strength::group::BoltPattern;
use shankline::units::{UnitSystem, shown};

use crate::INTERFACE;
use crate::catalogue::catalogue;
use crate::refusal::{Refusal, read};
#[cfg(feature = "tables")]
use crate::rows::tables;

/// How a question is answered: the request in, the answer out.
type Answerer = fn(&[u8]) -> Result<Vec<u8>, Refusal>;

/// Every question by its name. A name stays for as long as [`INTERFACE`] does.
pub const QUESTIONS: &[(&str, Answerer)] = &[
    ("version", version),
    ("verdict", verdict),
    ("check", check),
    ("lengths", lengths),
    ("design", design),
    ("explain", explain),
    ("draw", draw),
    ("assembly", assembly),
    ("check_connection", check_connection),
    ("draw_connection", draw_connection),
    ("catalogue", catalogue),
    #[cfg(feature = "tables")]
    ("tables", tables),
    #[cfg(feature = "schema")]
    ("schema", schema),
];

/// Answers a question by its name: a document, or a picture or a text where those are asked for.
///
/// ```
/// let answer = shankline_embed::answer("version", b"{}").unwrap();
/// assert!(answer.starts_with(b"{\"version\":"));
/// let refusal = shankline_embed::answer("check", b"{\"joint\": {}}").unwrap_err();
/// assert_eq!(refusal.place().unwrap().field.as_deref(), Some("joint"));
/// ```
///
/// # Errors
///
/// A [`Refusal`] for a name that is none, for a request that cannot be read, and for what the library refuses.
pub fn answer(question: &str, request: &[u8]) -> Result<Vec<u8>, Refusal> {
    if let Some((_, answerer)) = QUESTIONS.iter().find(|(name, _)| *name == question) {
        return answerer(request);
    }
    let names: Vec<&str> = QUESTIONS.iter().map(|(name, _)| *name).collect();
    let names = names.join(", ");
    let text = format!("\"{question}\" is no question here; there are {names}");
    Err(Refusal::new("question", text))
}

pub fn written(answer: &impl Serialize) -> Result<Vec<u8>, Refusal> {
    Ok(serde_json::to_vec(answer)?)
}

/// The units of texts: those that are asked for, or those of the thread.
fn units_for(asked: Option<UnitSystem>, joint: &Joint) -> UnitSystem {
    asked.unwrap_or(if joint.bolt.thread.is_unified() {
        UnitSystem::UsCustomary
    } else {
        UnitSystem::Si
    })
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Nothing {}

fn version(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Serialize)]
    struct Answer {
        version: &'static str,
        interface: u32,
        format: u32,
        questions: Vec<&'static str>,
        cautions: &'static [Caution],
    }
    let Nothing {} = read(request)?;
    written(&Answer {
        version: env!("CARGO_PKG_VERSION"),
        interface: INTERFACE,
        format: joint::FORMAT,
        questions: QUESTIONS.iter().map(|(name, _)| *name).collect(),
        cautions: caution::GENERAL,
    })
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct AboutJoint {
    joint: Joint,
    units: Option<UnitSystem>,
}

/// The word and why, for a program that asks often: a tenth of the time that the whole report takes.
fn verdict(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Serialize)]
    struct Governing {
        mode: Mode,
        place: Place,
        utilisation: f64,
        holds: bool,
    }
    #[derive(Serialize)]
    struct Answer {
        word: Word,
        scope: Scope,
        headline: String,
        length: String,
        governing: Option<Governing>,
        faults: Vec<String>,
        missing: Vec<String>,
        cautions: Vec<String>,
    }
    let AboutJoint { joint, units } = read(request)?;
    let units = units_for(units, &joint);
    let verdict = joint.check()?;
    written(&Answer {
        word: verdict.word(),
        scope: verdict.scope,
        headline: verdict.headline(units),
        length: shown(verdict.candidate.screw.nominal, units).to_string(),
        governing: verdict.governing().map(|check| Governing {
            mode: check.mode,
            place: check.place,
            utilisation: check.utilisation.value,
            holds: check.holds(),
        }),
        faults: verdict.faults().map(|own| own.text(units)).collect(),
        missing: verdict.open().map(Missing::to_string).collect(),
        cautions: verdict.cautions.iter().map(Caution::to_string).collect(),
    })
}

fn check(request: &[u8]) -> Result<Vec<u8>, Refusal> {
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

fn lengths(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    let AboutJoint { joint, units } = read(request)?;
    written(&joint.lengths()?.report(units_for(units, &joint)))
}

fn design(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Asked {
        joint: Joint,
        space: DesignSpace,
        #[serde(default)]
        objectives: Vec<Objective>,
        units: Option<UnitSystem>,
    }
    let asked: Asked = read(request)?;
    let units = units_for(asked.units, &asked.joint);
    let designs = asked.joint.design(&asked.space, &asked.objectives)?;
    written(&designs.report(units)?)
}

fn explain(request: &[u8]) -> Result<Vec<u8>, Refusal> {
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

fn unwritten(text: &str) -> Refusal {
    Refusal::new("request", text).in_field("format")
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

#[derive(Clone, Copy, Deserialize)]
#[serde(rename_all = "snake_case")]
enum Ink {
    Svg,
    Dxf,
}

fn not_drawn(text: &str) -> Refusal {
    Refusal::new("not_drawn", text)
}

fn draw(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Clone, Copy, Deserialize)]
    #[serde(rename_all = "snake_case")]
    enum Picture {
        Section,
        Checks,
        Lengths,
        Springs,
    }
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Asked {
        joint: Joint,
        picture: Picture,
        format: Ink,
        units: Option<UnitSystem>,
    }
    let Asked {
        joint,
        picture,
        format,
        units,
    } = read(request)?;
    let units = units_for(units, &joint);
    let svg = |page: Drawing| Ok(page.svg().into_bytes());
    match (picture, format) {
        (Picture::Lengths, Ink::Svg) => svg(drawing::lengths(&joint, &joint.lengths()?, units)),
        (Picture::Section, format) => {
            let verdict = joint.check()?;
            let assembly = joint.assembly(&verdict.candidate)?;
            match format {
                Ink::Svg => svg(drawing::section(&assembly, Some(&verdict), units)),
                Ink::Dxf => Ok(drawing::section_dxf(&assembly, units).into_bytes()),
            }
        }
        (Picture::Checks, Ink::Svg) => {
            svg(drawing::utilisation(&joint.title, &joint.check()?, units))
        }
        (Picture::Springs, Ink::Svg) => {
            match drawing::joint_diagram(&joint, &joint.check()?, units) {
                Some(page) => svg(page),
                None => Err(not_drawn(
                    "no preload is known, or not how stiff the parts are",
                )),
            }
        }
        (_, Ink::Dxf) => Err(unwritten("only the section is drawn as dxf")),
    }
}

/// The geometry of every part, for a drawing program.
fn assembly(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Asked {
        joint: Joint,
    }
    let Asked { joint } = read(request)?;
    let candidate = joint.check()?.candidate;
    written(&joint.assembly(&candidate)?)
}

fn check_connection(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Asked {
        connection: Connection,
        units: Option<UnitSystem>,
    }
    #[derive(Serialize)]
    struct Answer<'a> {
        headline: String,
        text: String,
        verdict: &'a ConnectionVerdict,
    }
    let Asked { connection, units } = read(request)?;
    let units = units_for(units, &connection.joint);
    let verdict = connection.check()?;
    written(&Answer {
        headline: verdict.headline(units),
        text: verdict.render(units).to_string(),
        verdict: &verdict,
    })
}

fn draw_connection(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Asked {
        connection: Connection,
        format: Ink,
        case: Option<String>,
        units: Option<UnitSystem>,
    }
    let Asked {
        connection,
        format,
        case,
        units,
    } = read(request)?;
    let units = units_for(units, &connection.joint);
    // A connection that is refused has no picture either.
    let verdict = connection.check()?;
    match (format, case) {
        (Ink::Svg, case) => {
            let page = drawing::pattern(&connection, &verdict, case.as_deref(), units)?;
            Ok(page.svg().into_bytes())
        }
        (Ink::Dxf, None) => Ok(drawing::pattern_dxf(&connection, units).into_bytes()),
        (Ink::Dxf, Some(_)) => {
            let text = "the pattern as dxf is that of every case: leave the case out";
            Err(Refusal::new("request", text).in_field("case"))
        }
    }
}

#[cfg(feature = "schema")]
fn schema(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Asked {
        document: String,
    }
    let Asked { document } = read(request)?;
    let text = match document.as_str() {
        "connection" => Some(shankline::connection::schema()),
        "assembly" => Some(shankline::assembly::schema()),
        name => joint::schema::named(name),
    };
    text.map(String::into_bytes).ok_or_else(|| {
        let names = joint::schema::NAMES.join(", ");
        let text = format!("no schema \"{document}\"; there are {names}, connection, assembly");
        Refusal::new("request", text).in_field("document")
    })
}
