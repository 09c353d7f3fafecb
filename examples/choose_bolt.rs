//! From a stack of plies and a load to bolt, length, washers, torque and verdict, described in one file.
//!
//! ```text
//! cargo run --features serde --example choose_bolt [JOINT.toml | JOINT.json] [--si | --us] [--markdown]
//! ```
//!
//! Without a file it takes `examples/data/harrow_clevis.toml`, which is also the template for joints of your own; a
//! joint in JSON, as `check_joint` takes it, is read as well. The file has every fact that decides: what is left out
//! is asked for. Exit code: 0 if the joint holds, 1 if it does not or is undecided, 2 for a bad file.

use std::process::ExitCode;

use shankline::joint::{Joint, Report, ReportStyle};
use shankline::prelude::*;

const DEMO: &str = include_str!("data/harrow_clevis.toml");

fn main() -> ExitCode {
    let (mut text, mut system, mut style) = (DEMO.to_owned(), None, ReportStyle::Text);
    for argument in std::env::args().skip(1) {
        match argument.as_str() {
            "--si" => system = Some(UnitSystem::Si),
            "--us" => system = Some(UnitSystem::UsCustomary),
            "--markdown" => style = ReportStyle::Markdown,
            path => match std::fs::read_to_string(path) {
                Ok(read) => text = read,
                Err(error) => {
                    eprintln!("{path}: {error}");
                    return ExitCode::from(2);
                }
            },
        }
    }
    match report(&text, system) {
        Ok(report) => {
            print!("{}", report.render(style));
            ExitCode::from(u8::from(report.word != Word::Holds))
        }
        Err(problem) => {
            eprintln!("{problem}");
            ExitCode::from(2)
        }
    }
}

fn report(text: &str, system: Option<UnitSystem>) -> Result<Report, Box<dyn std::error::Error>> {
    let joint: Joint = if text.trim_start().starts_with('{') {
        serde_json::from_str(text)?
    } else {
        toml::from_str(text)?
    };
    let own = if joint.bolt.thread.is_unified() {
        UnitSystem::UsCustomary
    } else {
        UnitSystem::Si
    };
    Ok(joint.report(system.unwrap_or(own))?)
}
