//! Which dash number: aircraft bolts for two brackets (invented), by four sets of rules.
//!
//! ```text
//! cargo run --example aircraft_grip
//! ```

use shankline::{
    caution,
    joint::{GripCandidate, GripRules, GripSearch},
    parts::{AnBolt, AnWashers},
    prelude::*,
    tables::aircraft::AircraftBolt,
};

const UNITS: UnitSystem = UnitSystem::UsCustomary;

fn main() -> Result<(), shankline::Error> {
    println!("Aircraft bolts by their grip. Invented brackets; measures in inches.\n");
    let hinge = Stack::builder()
        .ply("hinge ear", inches(0.125).plus_minus(inches(0.005)))
        .ply("rib fitting", inches(0.313).plus_minus(inches(0.005)))
        .shear_planes([1])
        .build()?;
    let strut = Stack::builder()
        .ply("strut fork", inches(0.090).plus_minus(inches(0.003)))
        .ply("strut end", inches(0.375).plus_minus(inches(0.005)))
        .ply("strut fork", inches(0.090).plus_minus(inches(0.003)))
        .shear_planes([1, 2])
        .build()?;
    let rule_sets = [
        ("FAA", GripRules::faa()),
        ("Navy", GripRules::navy()),
        ("light aircraft", GripRules::light_aircraft()),
        ("builders", GripRules::builders()),
    ];
    let mut cautions = Vec::new();
    // The hinge turns: castle nut and cotter pin, so a drilled shank. The strut does not.
    // Heights of the nuts as measured (invented): no table here has aircraft nuts.
    for (title, stack, name, nut, drilled) in [
        (
            "Hinge bracket, 0.438 in of material, turns in use",
            &hinge,
            "AN4",
            0.280,
            true,
        ),
        (
            "Strut fork, 0.555 in of material, does not turn",
            &strut,
            "AN5",
            0.400,
            false,
        ),
    ] {
        let bolt = AircraftBolt::find(name)?;
        let nut = NutEnd::with_height(inches(nut).plus_minus(inches(0.005)))?;
        let washers = AnWashers::of(bolt)?;
        println!("{title}: {name}");
        for (rule_name, rules) in rule_sets {
            let selection = GripSearch::new(stack, bolt, nut, washers, rules)?
                .drilled(false, drilled)
                .run()?;
            match selection.best() {
                Some(best) => println!("  {rule_name:<15} {}", describe(best)),
                None => println!("  {rule_name:<15} no dash number keeps the rule"),
            }
            // Its neighbours, or those nearest to the rule.
            let mut others: Vec<&GripCandidate> = selection.rejected().iter().collect();
            if let Some(best) = selection.best() {
                others.sort_by_key(|c| c.bolt.grip.dash.abs_diff(best.bolt.grip.dash));
            }
            for close in others.iter().take(2) {
                let reasons: Vec<String> = close.reasons.iter().map(|r| r.text(UNITS)).collect();
                println!("  {:<15} not {}: {}", "", close.bolt, reasons.join("; "));
            }
            cautions = selection
                .cautions()
                .iter()
                .map(ToString::to_string)
                .collect();
        }
        println!();
    }
    println!("Reading a designation:");
    for text in ["AN4H-7A", "AN4-7", "AN5-13A"] {
        let bolt: AnBolt = text.parse()?;
        println!(
            "  {text:<8} {}, grip {}, length {}; head {}, shank {}",
            bolt.thread()?,
            shown(bolt.grip.grip.nominal, UNITS),
            shown(bolt.grip.length.nominal, UNITS),
            if bolt.head_drilled {
                "drilled for safety wire"
            } else {
                "plain"
            },
            if bolt.shank_drilled {
                "drilled for a cotter pin"
            } else {
                "plain"
            },
        );
    }
    println!("\nThe rules:");
    for (name, rules) in rule_sets {
        println!("  {name:<15} {}", rules.source);
    }
    println!("\nThe aircraft's own manual rules over all of these. Never cut an aircraft bolt.");
    cautions.dedup();
    for caution in caution::GENERAL
        .iter()
        .map(ToString::to_string)
        .chain(cautions)
    {
        println!("* {caution}");
    }
    Ok(())
}

fn describe(best: &GripCandidate) -> String {
    format!(
        "{:<8} grip {}, washers {} under the head, {} + {} light under the nut; {:.1} threads in the hole, {} of {} planes on shank",
        best.bolt.to_string(),
        shown(best.bolt.grip.grip.nominal, UNITS),
        best.washers.under_head,
        best.washers.under_nut,
        best.washers.light_under_nut,
        best.threads_in_hole,
        best.planes_on_shank,
        best.planes_on_shank + best.planes_off_shank
    )
}
