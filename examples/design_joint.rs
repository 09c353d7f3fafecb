//! Which bolt, nut and washers? Searches a space described in JSON for the best joint.
//!
//! ```text
//! cargo run --features serde --example design_joint [REQUEST.json] [--json]
//! ```
//!
//! Without a file it takes `examples/data/walkway_hanger_design.json`, which is also the template for
//! requests of your own: a joint to start from, the space to choose from, and the objectives in their
//! order. `examples/data/walkway_hanger_designs.json` is the answer to it. Exit code: 0 if some design
//! holds, 1 if none does or nobody knows, 2 for a bad request.

use std::process::ExitCode;

use serde::Deserialize;
use shankline::joint::{DesignSpace, Joint, Objective};
use shankline::units::UnitSystem;

const DEMO: &str = include_str!("data/walkway_hanger_design.json");

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Request {
    joint: Joint,
    space: DesignSpace,
    #[serde(default)]
    objectives: Vec<Objective>,
}

fn main() -> ExitCode {
    let mut as_json = false;
    let mut text = DEMO.to_owned();
    for argument in std::env::args().skip(1) {
        match argument.as_str() {
            "--json" => as_json = true,
            path => match std::fs::read_to_string(path) {
                Ok(read) => text = read,
                Err(error) => {
                    eprintln!("{path}: {error}");
                    return ExitCode::from(2);
                }
            },
        }
    }
    match answer(&text, as_json) {
        Ok(holds) => ExitCode::from(u8::from(!holds)),
        Err(problem) => {
            eprintln!("{problem}");
            ExitCode::from(2)
        }
    }
}

fn answer(text: &str, as_json: bool) -> Result<bool, Box<dyn std::error::Error>> {
    let Request {
        joint,
        space,
        objectives,
    } = serde_json::from_str(text)?;
    let system = if joint.bolt.thread.is_unified() {
        UnitSystem::UsCustomary
    } else {
        UnitSystem::Si
    };
    let report = joint.design(&space, &objectives)?.report(system)?;
    if as_json {
        println!("{}", serde_json::to_string_pretty(&report)?);
    } else {
        print!("{report}");
    }
    Ok(report.best.is_some())
}
