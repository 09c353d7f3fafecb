//! Prints the JSON Schema of a document that programs exchange with the crate.
//!
//! ```text
//! cargo run --features schema --example schema [joint | design_space | report | length_report | design_report]
//! ```
//!
//! Without a name it prints that of a joint. Exit code: 2 for a name that is none.

use std::process::ExitCode;

use shankline::joint::schema;

fn main() -> ExitCode {
    let name = std::env::args().nth(1).unwrap_or_else(|| "joint".into());
    if let Some(text) = schema::named(&name) {
        print!("{text}");
        ExitCode::SUCCESS
    } else {
        let names = schema::NAMES.join(", ");
        eprintln!("no schema \"{name}\"; there are {names}");
        ExitCode::from(2)
    }
}
