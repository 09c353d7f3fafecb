//! Checks a bracket of twelve bolts in two hundred load cases: the connection from JSON, its cases from CSV.
//!
//! ```text
//! cargo run --features serde,drawing --example connection [CONNECTION.json CASES.csv] [--sheet] [--draw FOLDER]
//! ```
//!
//! Without files it takes `examples/data/mezzanine_bracket.json` and `mezzanine_bracket_cases.csv`, which are templates
//! too: the cases are rows of name, force in kN and the point where it acts in mm, in the plane of the bracket. With a folder
//! it writes `pattern.svg` (the governing case) and `pattern.dxf` into it. Exit code:
//! 0 if it holds, 1 if it does not or is undecided, 2 for a bad request.

use std::process::ExitCode;

use shankline::connection::{Connection, LoadCase};
use shankline::drawing;
use shankline::prelude::*;

const CONNECTION: &str = include_str!("data/mezzanine_bracket.json");
const CASES: &str = include_str!("data/mezzanine_bracket_cases.csv");

fn main() -> ExitCode {
    match run() {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::from(1),
        Err(problem) => {
            eprintln!("{problem}");
            ExitCode::from(2)
        }
    }
}

fn run() -> Result<bool, Box<dyn std::error::Error>> {
    let (mut sheet, mut folder, mut files) = (false, None, Vec::new());
    let mut arguments = std::env::args().skip(1);
    while let Some(argument) = arguments.next() {
        match argument.as_str() {
            "--sheet" => sheet = true,
            "--draw" => folder = Some(arguments.next().ok_or("--draw needs a folder")?),
            path => {
                files.push(std::fs::read_to_string(path).map_err(|why| format!("{path}: {why}"))?);
            }
        }
    }
    let (connection, cases) = match files.as_slice() {
        [] => (CONNECTION, CASES),
        [connection, cases] => (connection.as_str(), cases.as_str()),
        _ => return Err("give a connection and its cases, or neither".into()),
    };
    let mut connection: Connection = serde_json::from_str(connection)?;
    connection.cases.extend(read(cases)?);
    let verdict = connection.check()?;
    println!("{}\n", connection.title);
    print!("{}", verdict.render(UnitSystem::Si));
    if sheet {
        print!("\n{}", connection.sheet(&verdict)?.render(UnitSystem::Si));
    }
    if let Some(folder) = folder {
        let folder = std::path::Path::new(&folder);
        std::fs::create_dir_all(folder)?;
        let page = drawing::pattern(&connection, &verdict, None, UnitSystem::Si)?;
        std::fs::write(folder.join("pattern.svg"), page.svg())?;
        let dxf = drawing::pattern_dxf(&connection, UnitSystem::Si);
        std::fs::write(folder.join("pattern.dxf"), dxf)?;
    }
    println!("\nCautions");
    for caution in &verdict.cautions {
        println!("  {caution}");
    }
    Ok(verdict.holds())
}

/// One case a row. A cell that is empty or no number is an error, and not a load of nothing.
fn read(text: &str) -> Result<Vec<LoadCase>, Box<dyn std::error::Error>> {
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let rows = reader.deserialize::<(String, f64, f64, f64, f64)>();
    rows.map(|row| {
        let (name, x, y, at_x, at_y) = row?;
        let force = [1e3 * x, 1e3 * y, 0.0].map(newtons);
        Ok(LoadCase::new(
            name,
            force,
            [at_x, at_y, 0.0].map(millimetres),
        ))
    })
    .collect()
}
