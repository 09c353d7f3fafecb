//! The plan of a connection, and what comes to each bolt in one load case.

use alloc::{format, string::String, string::ToString, vec::Vec};
use core::fmt::Write as _;

use super::bars::percent;
use super::canvas::Drawing;
use super::page::{MARGIN, WIDTH, head, units, word};
use super::pattern_tables::{notes, tables};
use super::plan::plan;
use super::text::Style;
use crate::connection::{
    BoltLoad, CaseVerdict, Connection, ConnectionVerdict, Governing, LoadCase,
};
use crate::error::Error;
use crate::joint::Word;
use crate::units::{UnitSystem, shown};

/// The plan of a connection in one load case, combination or alternation: outlines of the plates, each bolt with its
/// number, what comes to it in the plane as an arrow with its size and along its axis as a sign with its size, the loads
/// and where they act, pitches and distances to edges. The worst bolt of that case has a second ring and the word. Above
/// stand the word of the verdict and what governs; below, every bolt and load as a table.
///
/// Without a name the governing case is drawn. The picture looks at the face between the parts from where z points to,
/// with x to the right and y up.
///
#[cfg_attr(doc, doc = include_str!("pictures/pattern.html"))]
///
/// # Errors
///
/// [`Error::UnknownName`] for a case that the verdict does not have; [`Error::Mismatch`] if the verdict is that of another
/// connection; those of [`Connection::forces`].
///
/// ```
/// use shankline::connection::{Connection, Outline, Side};
/// use shankline::drawing;
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = Joint::builder("M16")
///     .ply("hanger", "10 mm").material("S275 steel")
///     .ply("beam tab", "12 mm").material("S275 steel");
/// let hanger = Connection::builder(bolt)
///     .rows_and_columns(2, 2, "60 mm", "60 mm")
///     .plate("hanger", Outline::rectangle("140 mm", "140 mm")?).held(Side::Bottom)
///     .case("crowd").force("0 kN", "-60 kN", "0 kN").at("0 mm", "0 mm", "0 mm")
///     .build()?;
/// let page = drawing::pattern(&hanger, &hanger.check()?, None, UnitSystem::Si)?;
/// assert!(page.overlaps().is_empty());
/// assert!(page.svg().contains("15.00 kN"));
/// # Ok(())
/// # }
/// ```
pub fn pattern(
    connection: &Connection,
    verdict: &ConnectionVerdict,
    case: Option<&str>,
    system: UnitSystem,
) -> Result<Drawing, Error> {
    let governs = verdict.governing();
    let number = match case {
        None => governs.map_or(0, |own| own.case),
        Some(name) => {
            let found = verdict.cases.iter().position(|own| own.name == name);
            found.ok_or_else(|| unknown(verdict, name))?
        }
    };
    let shown = Shown::new(connection, verdict, number, governs)?;
    let title = if connection.title.trim().is_empty() {
        "Connection without a title"
    } else {
        connection.title.trim()
    };
    let governs = governs_text(verdict, governs);
    let mut page = Drawing::new(WIDTH, title, "");
    let lines = [
        format!(
            "{} {} {}, seen from where z points to. Sizes in {}.",
            verdict.bolts.len(),
            if verdict.bolts.len() == 1 {
                "bolt"
            } else {
                "bolts"
            },
            connection.joint.bolt.thread,
            units(system)
        ),
        format!(
            "Load case drawn: {} ({}; worst bolt {}).",
            quoted(&shown.case.name),
            shown.case.word,
            shown.case.bolt
        ),
        format!("Governs: {governs}."),
    ];
    let y = head(&mut page, title, &lines, None, system);
    let headline = verdict.headline(system).replace(" (see below)", "");
    let y = word(&mut page, y, verdict.word(), &headline);
    let (y, left_out) = plan(&mut page, &shown, y, system);
    let y = tables(&mut page, &shown, y + 26.0, system);
    let y = notes(&mut page, &shown, y + 8.0, left_out);
    page.end_at(y + 8.0);
    page.describe(description(&shown, &headline, &governs, system));
    Ok(page)
}

fn unknown(verdict: &ConnectionVerdict, name: &str) -> Error {
    let known = verdict.cases.iter().map(|own| own.name.as_str());
    Error::UnknownName {
        what: "load case of the verdict",
        text: name.into(),
        known: known.take(20).collect::<Vec<_>>().join(", "),
    }
}

/// A name as long as there is room for it in a line.
pub(super) fn quoted(name: &str) -> String {
    format!("\"{}\"", Style::Plain.fit(name, 360.0))
}

/// What decides the word, or is nearest to it, in words.
fn governs_text(verdict: &ConnectionVerdict, governs: Option<Governing<'_>>) -> String {
    let Some(governs) = governs else {
        return "nothing, as there is no bolt".into();
    };
    let case = verdict.cases.get(governs.case);
    let case = quoted(case.map_or("", |own| &own.name));
    let check = governs.check;
    let Some(bolt) = governs.bolt else {
        let check = check.map(ToString::to_string).unwrap_or_default();
        return format!("all bolts together in {case}, {check}");
    };
    let word = bolt.verdict.word();
    let check = match check {
        None => "of which nothing was compared".to_string(),
        Some(check) if word == Word::DoesNotHold && check.holds() => {
            format!("by a fault; what was compared is used less, most in {check}")
        }
        Some(check) if word == Word::Undecided => format!("as far as it was compared: {check}"),
        Some(check) => check.to_string(),
    };
    format!("bolt {} in {case}, {check}", bolt.number)
}

/// What is drawn.
pub(super) struct Shown<'a> {
    pub(super) connection: &'a Connection,
    pub(super) verdict: &'a ConnectionVerdict,
    pub(super) case: &'a CaseVerdict,
    /// The loads in it, with their factors.
    pub(super) parts: Vec<(f64, &'a LoadCase)>,
    /// Whether they are those of two ends between which the load alternates.
    pub(super) alternates: bool,
    /// Whether its worst bolt is the governing one, in the case that governs.
    pub(super) governs: bool,
}

impl<'a> Shown<'a> {
    fn new(
        connection: &'a Connection,
        verdict: &'a ConnectionVerdict,
        number: usize,
        governs: Option<Governing<'_>>,
    ) -> Result<Self, Error> {
        let other = || {
            Error::Mismatch(format!(
                "the verdict is not that of the connection \"{}\": check it again",
                connection.title
            ))
        };
        let case = verdict.cases.get(number).ok_or_else(other)?;
        let bolts = connection.bolts.bolts();
        let same = bolts.len() == verdict.bolts.len()
            && bolts.len() == case.loads.len()
            && bolts
                .iter()
                .zip(&verdict.bolts)
                .all(|(bolt, own)| bolt.x == own.at.x && bolt.y == own.at.y);
        if !same || connection.title != verdict.title {
            return Err(other());
        }
        let (parts, alternates) = if let Some(parts) = parts_of(connection, &case.name) {
            (parts, false)
        } else {
            let ends = connection.alternations.iter().find(|own| {
                let name = format!("{} <> {}", own.from, own.to);
                name == case.name
            });
            let ends = ends.ok_or_else(other)?;
            let ends = [&ends.from, &ends.to].map(|name| parts_of(connection, name));
            (ends.into_iter().flatten().flatten().collect(), true)
        };
        if !alternates && connection.forces(&case.name)? != case.loads {
            return Err(other());
        }
        Ok(Self {
            connection,
            verdict,
            case,
            parts,
            alternates,
            governs: governs.is_some_and(|own| {
                own.case == number && own.bolt.is_some_and(|bolt| bolt.number == case.bolt)
            }),
        })
    }

    /// The greatest force across any bolt.
    pub(super) fn most_across(&self) -> f64 {
        let loads = self.case.loads.iter();
        loads.map(|own| own.across.value).fold(0.0, f64::max)
    }

    /// What the ring of the worst bolt means.
    pub(super) const fn mark(&self) -> &'static str {
        if self.governs { "governs" } else { "worst" }
    }
}

/// The load cases of a name.
fn parts_of<'a>(connection: &'a Connection, name: &str) -> Option<Vec<(f64, &'a LoadCase)>> {
    let find = |name: &str| connection.cases.iter().find(|own| own.name == name);
    if let Some(case) = find(name) {
        return Some(Vec::from([(1.0, case)]));
    }
    let combination = connection
        .combinations
        .iter()
        .find(|own| own.name == name)?;
    let parts = combination.parts.iter();
    Some(
        parts
            .filter_map(|own| Some((own.factor, find(&own.case)?)))
            .collect(),
    )
}

/// What comes to a bolt along its axis, in words.
pub(super) fn along(load: &BoltLoad, system: UnitSystem) -> Option<String> {
    let size = shown(load.along.abs(), system);
    match load.along.value {
        own if own > 0.0 => Some(format!("pull {size}")),
        own if own < 0.0 => Some(format!("press {size}")),
        _ => None,
    }
}

fn description(own: &Shown<'_>, headline: &str, governs: &str, system: UnitSystem) -> String {
    let mut text = format!(
        "Plan of a connection. {headline}. Governs: {}. Forces on the bolts in {}:",
        governs,
        quoted(&own.case.name)
    );
    for (load, bolt) in own.case.loads.iter().zip(&own.verdict.bolts) {
        // Writing to a string does not fail.
        let _ = write!(
            text,
            " bolt {}: {} across",
            bolt.number,
            shown(load.across, system)
        );
        if let Some(along) = along(load, system) {
            let _ = write!(text, ", {along}");
        }
        if let Some(used) = bolt.utilisation {
            let _ = write!(text, ", used up to {}", percent(used));
        }
        text.push('.');
    }
    let _ = write!(text, " The worst bolt of this case is {}.", own.case.bolt);
    text
}

/// The inner width of the page.
pub(super) const SIDES: [f64; 2] = [MARGIN, WIDTH - MARGIN];
