//! What fits a thread: products with their grades, nuts, washers and holes, from the tables.
//!
//! ```text
//! cargo run --example catalogue -- M12
//! cargo run --example catalogue -- 1/2-13
//! ```

use shankline::{
    prelude::*,
    tables::holes::{ClearanceHole, HoleFit},
    tables::nut_grades::BoltCoating,
    units::{Measured, UnitSystem},
};

fn main() {
    let text = std::env::args().nth(1).unwrap_or_else(|| "M12".into());
    if let Err(error) = run(&text) {
        eprintln!("{error}");
        std::process::exit(1);
    }
}

fn run(text: &str) -> Result<(), shankline::Error> {
    let thread: Thread = text.parse()?;
    let system = if thread.is_unified() {
        UnitSystem::UsCustomary
    } else {
        UnitSystem::Si
    };
    println!(
        "What fits {thread}, by code and label\n\nScrews and bolts, and the grades they are made in:"
    );
    for product in ScrewProduct::made_with(&thread) {
        println!("  {:28} {product}", product.code());
        grades(product.grades(&thread));
    }
    println!("\nNuts, and the grades whose strength is known:");
    for style in NutStyle::made_with(&thread) {
        println!("  {:28} {style}", style.code());
        grades(style.grades(&thread, NutTapping::Usual));
    }
    println!("\nWashers:");
    for style in WasherStyle::made_for(&thread) {
        let thickness = Washer::find(style, &thread)?.thickness();
        let thickness = thickness.map_or_else(
            |_| "thickness not known".into(),
            |limits| {
                format!(
                    "{} to {}",
                    length(limits.min, system),
                    length(limits.max, system)
                )
            },
        );
        println!("  {:28} {style}, {thickness}", style.code());
    }
    println!("\nClearance holes:");
    for fit in HoleFit::ALL {
        match ClearanceHole::find(&thread, *fit) {
            Ok(hole) => println!(
                "  {fit:28} {} ({})",
                length(hole.diameter_min, system),
                hole.standard
            ),
            Err(error) => println!("  {fit:28} {error}"),
        }
    }
    println!("\nNuts that the standard of the bolt names, without thick zinc:");
    for grade in BoltGrade::made_for(&thread) {
        let nuts = grade.named_nuts(&thread, BoltCoating::Plain)?;
        if !nuts.is_empty() {
            println!(
                "  {:28} {grade}: {}",
                grade.code(),
                labels(nuts.into_iter())
            );
        }
    }
    println!();
    for caution in shankline::caution::GENERAL {
        println!("{caution}");
    }
    Ok(())
}

/// The labels of grades, a few in a line.
fn grades<K: Key>(keys: impl Iterator<Item = K>) {
    let labels: Vec<&str> = keys.map(Key::label).collect();
    for some in labels.chunks(4) {
        println!("  {:28}   {}", "", some.join(", "));
    }
}

fn labels<K: Key>(keys: impl Iterator<Item = K>) -> String {
    keys.map(Key::label).collect::<Vec<_>>().join(", ")
}

fn length<Q: Measured>(quantity: Q, system: UnitSystem) -> String {
    shown(quantity, system).to_string()
}
