//! Checks a joint described in JSON, and answers with a report or with JSON.
//!
//! ```text
//! cargo run --features serde --example check_joint [JOINT.json] [--json | --sheet] [--group GROUP.json]
//! ```
//!
//! Without a file it takes `examples/data/davit_socket.json`, which is also the template for requests
//! of your own (beside it `seesaw_pivot.json`, a pivot with play, and `winch_foot.json`, a foot screwed into a
//! tapped casting); `davit_group.json` says where the four
//! bolts of the davit are. `examples/data/davit_socket_report.json` is the answer to it. Exit code: 0 if the joint
//! holds, 1 if it does not or is undecided, 2 for a bad request.

use std::process::ExitCode;

use shankline::joint::{Joint, Report, ReportStyle, Sheet, tightening_order};
use shankline::prelude::*;
use shankline::strength::group::BoltPattern;

const DEMO: &str = include_str!("data/davit_socket.json");

fn main() -> ExitCode {
    let mut form = Form::Report;
    let mut text = DEMO.to_owned();
    let mut group = None;
    let mut group_follows = false;
    for argument in std::env::args().skip(1) {
        match argument.as_str() {
            "--json" => form = Form::Json,
            "--sheet" => form = Form::Sheet,
            "--group" => group_follows = true,
            path => match std::fs::read_to_string(path) {
                Ok(read) if std::mem::take(&mut group_follows) => group = Some(read),
                Ok(read) => text = read,
                Err(error) => {
                    eprintln!("{path}: {error}");
                    return ExitCode::from(2);
                }
            },
        }
    }
    if group_follows {
        eprintln!("--group: no file is named");
        return ExitCode::from(2);
    }
    match answer(&text, group.as_deref(), form) {
        Ok(holds) => ExitCode::from(u8::from(!holds)),
        Err(problem) => {
            eprintln!("{problem}");
            ExitCode::from(2)
        }
    }
}

#[derive(Clone, Copy)]
enum Form {
    Report,
    Json,
    Sheet,
}

fn answer(text: &str, group: Option<&str>, form: Form) -> Result<bool, Box<dyn std::error::Error>> {
    let joint: Joint = serde_json::from_str(text)?;
    let verdict = joint.check()?;
    let group = group.map(serde_json::from_str::<BoltPattern>).transpose()?;
    let order = group.map(|group| tightening_order(&group));
    let system = if joint.bolt.thread.is_unified() {
        UnitSystem::UsCustomary
    } else {
        UnitSystem::Si
    };
    match form {
        Form::Sheet => {
            let sheet = Sheet::new(&joint, &verdict)?;
            let sheet = match order {
                Some(order) => sheet.for_group(order),
                None => sheet,
            };
            print!("{}", sheet.render(system));
        }
        Form::Json => {
            let report = Report::new(&joint, &verdict, order, system)?;
            println!("{}", serde_json::to_string_pretty(&report)?);
        }
        Form::Report => {
            let report = Report::new(&joint, &verdict, order, system)?;
            print!("{}", report.render(ReportStyle::Text));
        }
    }
    Ok(verdict.holds())
}
