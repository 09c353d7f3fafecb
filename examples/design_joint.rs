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
use shankline::joint::{DesignSpace, Designs, Joint, Objective};
use shankline::prelude::*;

const DEMO: &str = include_str!("data/walkway_hanger_design.json");

/// How many of those that do not hold are shown.
const NEAREST: usize = 6;

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
    let designs = joint.design(&space, &objectives)?;
    if as_json {
        println!("{}", serde_json::to_string_pretty(&designs)?);
    } else {
        report(&joint, &designs);
    }
    Ok(designs.best().is_some())
}

fn report(joint: &Joint, designs: &Designs) {
    let system = if joint.bolt.thread.is_unified() {
        UnitSystem::UsCustomary
    } else {
        UnitSystem::Si
    };
    println!("{}", joint.title);
    println!("{} combinations\n", designs.combinations);

    println!("Hold, the best first");
    for (rank, design) in designs.feasible().iter().enumerate() {
        println!("{:>3}. {}", rank + 1, design.choice.text(system));
        let scores: Vec<String> = designs
            .objectives
            .iter()
            .map(|&objective| format!("{objective} {}", design.score(objective).text(system)))
            .collect();
        println!("     {}", scores.join(", "));
        if let Some(check) = &design.governing {
            println!("     {check}");
        }
        if let Some(objective) = designs.decided_by(rank) {
            println!("     before the next by: {objective}");
        }
    }
    println!("\nDo not hold or are undecided, the nearest first");
    let (shown, more) = designs
        .rejected()
        .split_at(designs.rejected().len().min(NEAREST));
    for other in shown {
        println!("  {}", other.choice.text(system));
        for reason in &other.reasons {
            println!("     {}", reason.text(system));
        }
    }
    if !more.is_empty() {
        println!("  and {} more", more.len());
    }
    println!("\nCannot be put together");
    for group in designs.ruled_out() {
        println!(
            "  {} combinations with {}: {}",
            group.combinations, group.thread, group.reason
        );
    }

    let Some(verdict) = &designs.verdict else {
        return;
    };
    println!("\nThe best one in full\n{}", verdict.render(system));
    println!("Cautions");
    for caution in &verdict.cautions {
        println!("  * {caution}");
    }
}
