//! The questions, and how each is answered.

use serde::{Deserialize, Serialize};
use shankline::caution::{self, Caution};
use shankline::joint::{self, Joint, Missing, Scope, Word};
use shankline::strength::check::{Mode, Place};
use shankline::units::{UnitSystem, shown};

use crate::INTERFACE;
use crate::catalogue::catalogue;
#[cfg(feature = "connections")]
use crate::connections::{check_connection, draw_connection};
#[cfg(feature = "design")]
use crate::design::design;
#[cfg(feature = "pictures")]
use crate::pictures::draw;
use crate::refusal::{Refusal, read};
#[cfg(feature = "reports")]
use crate::reports::{assembly, check, explain, lengths};
#[cfg(feature = "tables")]
use crate::rows::tables;

/// How a question is answered: the request in, the answer out.
type Answerer = fn(&[u8]) -> Result<Vec<u8>, Refusal>;

/// Every question by its name. A name stays for as long as [`INTERFACE`] does.
pub const QUESTIONS: &[(&str, Answerer)] = &[
    ("version", version),
    ("verdict", verdict),
    #[cfg(feature = "reports")]
    ("check", check),
    #[cfg(feature = "reports")]
    ("lengths", lengths),
    #[cfg(feature = "design")]
    ("design", design),
    #[cfg(feature = "reports")]
    ("explain", explain),
    #[cfg(feature = "pictures")]
    ("draw", draw),
    #[cfg(feature = "reports")]
    ("assembly", assembly),
    #[cfg(feature = "connections")]
    ("check_connection", check_connection),
    #[cfg(feature = "connections")]
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
    // A report has 20 to 30 kB: it is not copied from room to larger room while it grows.
    let mut text = Vec::with_capacity(32 * 1024);
    serde_json::to_writer(&mut text, answer)?;
    Ok(text)
}

/// The units of texts: those that are asked for, or those of the thread.
pub fn units_for(asked: Option<UnitSystem>, joint: &Joint) -> UnitSystem {
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
pub struct AboutJoint {
    pub joint: Joint,
    pub units: Option<UnitSystem>,
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

#[cfg(any(feature = "reports", feature = "pictures"))]
pub fn unwritten(text: &str) -> Refusal {
    Refusal::new("request", text).in_field("format")
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
