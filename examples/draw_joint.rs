//! Draws a joint described in JSON: every picture of it into a folder.
//!
//! ```text
//! cargo run --features serde,drawing --example draw_joint FOLDER [JOINT.json] [--inch | --mm]
//! ```
//!
//! Without a file it takes `examples/data/seesaw_pivot.json`. Written are `section.svg`, `section.dxf`, `checks.svg`,
//! `lengths.svg`, `springs.svg` where preload and stiffnesses are known, and `assembly.json` with the numbers behind
//! them. The units are those of the thread, unless told. Exit code: 0 if all was written, whatever the verdict; 2 for a bad
//! request.

use std::path::PathBuf;
use std::process::ExitCode;

use shankline::drawing::{self, Drawing};
use shankline::joint::Joint;
use shankline::prelude::*;

const DEMO: &str = include_str!("data/seesaw_pivot.json");

fn main() -> ExitCode {
    let (mut folder, mut text, mut units) = (None, DEMO.to_owned(), None);
    for argument in std::env::args().skip(1) {
        match argument.as_str() {
            "--inch" => units = Some(UnitSystem::UsCustomary),
            "--mm" => units = Some(UnitSystem::Si),
            path if folder.is_none() => folder = Some(PathBuf::from(path)),
            path => match std::fs::read_to_string(path) {
                Ok(read) => text = read,
                Err(error) => {
                    eprintln!("{path}: {error}");
                    return ExitCode::from(2);
                }
            },
        }
    }
    let Some(folder) = folder else {
        eprintln!("draw_joint FOLDER [JOINT.json] [--inch | --mm]");
        return ExitCode::from(2);
    };
    match draw(&folder, &text, units) {
        Ok(headline) => {
            println!("{headline}");
            ExitCode::SUCCESS
        }
        Err(problem) => {
            eprintln!("{problem}");
            ExitCode::from(2)
        }
    }
}

fn draw(
    folder: &std::path::Path,
    text: &str,
    units: Option<UnitSystem>,
) -> Result<String, Box<dyn std::error::Error>> {
    let joint: Joint = serde_json::from_str(text)?;
    let verdict = joint.check()?;
    let usual = if joint.bolt.thread.is_unified() {
        UnitSystem::UsCustomary
    } else {
        UnitSystem::Si
    };
    let units = units.unwrap_or(usual);
    let assembly = joint.assembly(&verdict.candidate)?;
    std::fs::create_dir_all(folder)?;
    let write = |name: &str, text: String| {
        let file = folder.join(name);
        std::fs::write(&file, text)?;
        println!("{}", file.display());
        Ok::<(), std::io::Error>(())
    };
    let page = |name: &str, page: Drawing| write(name, page.svg());
    page(
        "section.svg",
        drawing::section(&assembly, Some(&verdict), units),
    )?;
    page(
        "checks.svg",
        drawing::utilisation(&joint.title, &verdict, units),
    )?;
    page(
        "lengths.svg",
        drawing::lengths(&joint, &joint.lengths()?, units),
    )?;
    match drawing::joint_diagram(&joint, &verdict, units) {
        Some(springs) => page("springs.svg", springs)?,
        None => println!("no springs.svg: no preload, or nobody says how stiff the parts are"),
    }
    write("section.dxf", drawing::section_dxf(&assembly, units))?;
    write("assembly.json", serde_json::to_string_pretty(&assembly)?)?;
    Ok(verdict.headline(units))
}
