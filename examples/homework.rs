//! A textbook problem with its full working beside the printed answers.
//!
//! ```text
//! cargo run --example homework [markdown | latex]
//! ```
//!
//! The problem is that of Shigley, Mechanical Engineering Design, 9th ed., Example 8-6, told in our own
//! words; its printed answers stand beside what the crate finds.

use shankline::derivation::{Derivation, Format};
use shankline::prelude::*;
use shankline::strength::check::{Level, Mode};
use shankline::strength::ply::{HoleKind, Ply, PlyBolt, PlyMethod};
use shankline::strength::shear::{ConnectionFacts, LoadedPlane, PlaneRule, shear_resistance};
use shankline::units::kip;

fn main() -> Result<(), shankline::Error> {
    let format = match std::env::args().nth(1).as_deref() {
        Some("markdown") => Format::Markdown,
        Some("latex") => Format::Latex,
        _ => Format::Text,
    };
    println!(
        "A splice pulls a 1 x 4 in bar of cold-drawn AISI 1018 (Sy = 54 ksi) between two plates. On each"
    );
    println!(
        "side of the joint two 3/4-16 bolts of SAE grade 5 (Sp = 85 ksi) stand beside each other, each in"
    );
    println!(
        "double shear, 1-1/8 in from the end. Design factor 1.5. What load does each way of failing allow?\n"
    );

    let thread: Thread = "3/4-16 UNF".parse()?;
    let strength = SaeGrade::Grade5.strength(thread.nominal_diameter())?;
    let method = ShearMethod::DistortionEnergy {
        basis: ShearBasis::Proof,
        design_factor: 1.5,
    };
    let shear = |zone| {
        shear_resistance(
            &thread,
            &strength,
            &LoadedPlane::equal(&[zone, zone]),
            PlaneRule::Each,
            method,
            &ConnectionFacts::default(),
        )
    };
    let (shank, in_thread) = (shear(Zone::Shank)?, shear(Zone::Thread)?);

    // The example checks the bolts in bearing with their proof stress.
    let bolt = PlyBolt {
        yield_strength: strength.proof_stress,
        ..PlyBolt::default()
    };
    let modes = bar().assess(
        thread.nominal_diameter(),
        bolt,
        PlyMethod::MachineDesign { design_factor: 1.5 },
    )?;
    let modes: Vec<_> = modes
        .iter()
        .filter_map(|mode| mode.outcome.found())
        .collect();

    let show = |derivation: Derivation| {
        println!("{}", derivation.render(format, UnitSystem::UsCustomary));
    };
    show(thread.area_derivation());
    show(shank.derivation());
    show(in_thread.derivation());
    for mode in &modes {
        show(mode.derivation());
    }

    println!("Two bolts, in kip:");
    println!("  {:<34}{:>8}{:>10}", "", "found", "printed");
    let line = |what: &str, one_bolt: Force, printed: &str| {
        println!(
            "  {what:<34}{:>8.1}{printed:>10}",
            2.0 * one_bolt.get::<kip>()
        );
    };
    let allowable = Level::Allowable;
    line(
        "shear, thread not in the planes",
        shank.resistance.at(allowable)?,
        "57.8",
    );
    line(
        "shear, thread in the planes",
        in_thread.resistance.at(allowable)?,
        "45.9",
    );
    for mode in &modes {
        let printed = match mode.mode {
            Mode::Bearing => "54",
            Mode::BoltBearing => "85",
            Mode::TearOut => "(93.5)",
            Mode::NetSection => "90",
            _ => "-",
        };
        line(
            &mode.mode.to_string(),
            mode.resistance.at(allowable)?,
            printed,
        );
    }
    println!(
        "\nThe example tears the bar out from the centre of the hole, where there is no metal: here from its edge."
    );
    for caution in shankline::caution::GENERAL {
        println!("* {caution}");
    }
    Ok(())
}

/// The bar of the example, the half that one of its two bolts holds.
fn bar() -> Ply {
    Ply {
        thickness: inches(1.0),
        hole: inches(0.75),
        hole_kind: HoleKind::Standard,
        slot_length: None,
        yield_strength: Some(ksi(54.0)),
        tensile_strength: None,
        bearing_strength: None,
        bearing_yield: None,
        end_distance: Some(inches(1.125)),
        edge_distance: None,
        pitch: None,
        gauge: None,
        width: Some(inches(2.0)), // 4 in over two bolts
    }
}
