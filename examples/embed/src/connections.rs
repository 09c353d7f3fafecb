//! Several bolts in load cases, and their plan.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};
use shankline::caution::Caution;
use shankline::connection::{Connection, ConnectionVerdict};
use shankline::drawing;
use shankline::joint::Need;
use shankline::strength::check::{Check, Mode, Place};
use shankline::units::UnitSystem;

use crate::pictures::Ink;
use crate::questions::{units_for, written};
use crate::refusal::{Refusal, read};

pub fn check_connection(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Asked {
        connection: Connection,
        units: Option<UnitSystem>,
    }
    #[derive(Serialize)]
    struct Governing<'a> {
        case: &'a str,
        /// None where it is what all bolts do together.
        bolt: Option<usize>,
        check: Option<&'a Check>,
        holds: bool,
        text: String,
    }
    #[derive(Serialize)]
    struct Open<'a> {
        mode: Mode,
        place: Place,
        need: &'a Need,
        text: String,
    }
    #[derive(Serialize)]
    struct Answer<'a> {
        headline: String,
        governing: Option<Governing<'a>>,
        faults: Vec<String>,
        missing: Vec<Open<'a>>,
        cautions: Vec<String>,
        text: String,
        verdict: &'a ConnectionVerdict,
    }
    let Asked { connection, units } = read(request)?;
    let units = units_for(units, &connection.joint);
    let verdict = connection.check()?;
    let governing = verdict.governing().map(|own| Governing {
        case: verdict.cases.get(own.case).map_or("", |case| &case.name),
        bolt: own.bolt.map(|bolt| bolt.number),
        check: own.check,
        holds: own.check.is_some_and(Check::holds),
        text: own.check.map(Check::to_string).unwrap_or_default(),
    });
    let bolts = verdict.bolts.iter();
    let findings = bolts.flat_map(|bolt| bolt.verdict.faults());
    let findings = findings.chain(verdict.findings.iter().filter(|own| own.is_fault()));
    // All bolts have most of them alike.
    let faults: BTreeSet<String> = findings.map(|own| own.text(units)).collect();
    written(&Answer {
        headline: verdict.headline(units),
        governing,
        faults: faults.into_iter().collect(),
        missing: (verdict.open().into_iter())
            .map(|own| Open {
                mode: own.mode,
                place: own.place,
                need: &own.need,
                text: own.to_string(),
            })
            .collect(),
        cautions: verdict.cautions.iter().map(Caution::to_string).collect(),
        text: verdict.render(units).to_string(),
        verdict: &verdict,
    })
}

pub fn draw_connection(request: &[u8]) -> Result<Vec<u8>, Refusal> {
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
