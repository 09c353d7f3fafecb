//! What is in the bins, and what is to be bought: the joints of a climbing tower (invented).
//!
//! ```text
//! cargo run --example pick_from_bin
//! ```

use shankline::{
    caution,
    joint::{Bin, BoltInHand, JointNeed, shopping_list},
    prelude::*,
};

const UNITS: UnitSystem = UnitSystem::Si;

fn main() -> Result<(), shankline::Error> {
    let thread: Thread = "M12".parse()?;
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    let washer = Washer::find(WasherStyle::Iso7089, &thread)?.thickness()?;
    let nut = NutEnd::of(Nut::find(NutStyle::Iso7040, &thread)?)?;
    // A playground wants short ends: one to three threads, and they may be cut.
    let rules = LengthRules::fabrication(UNITS).with_protrusion(1.0, Some(3.0));
    let mm = millimetres;

    // Two plates with one shear plane between them.
    let joint = |first: f64, second: f64| {
        Stack::builder()
            .ply("first", mm(first).plus_minus(mm(0.3)))
            .ply("second", mm(second).plus_minus(mm(0.3)))
            .shear_planes([1])
            .washers_under_nut(washer, 1)
            .build()
    };

    println!("Climbing tower (invented): M12 ISO 4014, lock nut, 1 to 3 threads beyond it.\n");
    let bin = Bin::new()
        .product("drawer 1: M12 x 60", &screws, mm(60.0), 5)?
        .product("drawer 2: M12 x 70", &screws, mm(70.0), 4)?
        .product("drawer 3: M12 x 80", &screws, mm(80.0), 30)?
        .measured(
            "tin: bolts of about 69 mm",
            &BoltInHand::new(thread, mm(68.8), mm(30.5), mm(38.0))?.with_uncertainty(mm(0.3))?,
            6,
        )?
        .measured(
            "tin: fine thread",
            &BoltInHand::new("M12x1.25".parse()?, mm(70.0), mm(33.0), mm(40.0))?,
            9,
        )?;
    let stack = joint(30.0, 15.0)?;
    let joints = 12;
    let pick = bin.pick(&stack, &thread, nut, rules, joints)?;
    println!("{joints} post feet of 30 + 15 mm, out of the bins:");
    for taken in &pick.taken {
        let c = &taken.candidate;
        println!(
            "  take {:>2} from {:<26} {} on shank, {} washer(s) more{}",
            taken.count,
            bin.items()[taken.item].part,
            c.planes_on_shank,
            c.washers_added,
            match c.cut {
                Some(cut) => format!(", cut to {}", shown(cut.length, UNITS)),
                None if c.needs_cut => ", cut at fit-up".into(),
                None => String::new(),
            }
        );
    }
    println!(
        "  {} bolt(s) missing; {} washers under the nuts in all",
        pick.missing, pick.washers_under_nut
    );
    match pick.all_alike {
        Some(item) => println!("  all alike would be: {}", bin.items()[item].part),
        None => println!("  no one drawer has enough for all"),
    }
    for found in &pick.fitting {
        if pick.taken.iter().all(|taken| taken.item != found.item) {
            println!("  not needed: {}", bin.items()[found.item].part);
        }
    }
    for found in &pick.rejected {
        let reasons: Vec<String> = found.candidate.reasons().map(|r| r.text(UNITS)).collect();
        println!(
            "  not {}: {}",
            bin.items()[found.item].part,
            reasons.join("; ")
        );
    }
    for &item in &pick.other_threads {
        println!(
            "  not {}: {}",
            bin.items()[item].part,
            bin.items()[item].thread
        );
    }

    println!("\nThe whole tower, new bolts, as few different lengths as possible:");
    let feet = [
        ("post feet", 12, 30.0, 15.0),
        ("rail ends", 16, 25.0, 20.0),
        ("slide head", 4, 20.0, 20.0),
        ("ladder rungs", 20, 35.0, 10.0),
        ("roof beams", 8, 40.0, 20.0),
        ("net anchors", 6, 30.0, 30.0),
    ];
    let mut needs = Vec::new();
    for (name, count, first, second) in feet {
        let stack = joint(first, second)?;
        let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
        let need = JointNeed::from_selection(name, count, &selection, |candidate| {
            format!("{thread} x {:.0}", shown(candidate.screw.nominal, UNITS))
        });
        println!(
            "  {name:<13} {count:>2} joints, would take: {}",
            need.choices.join(", ")
        );
        needs.push(need);
    }
    let list = shopping_list(&needs)?;
    for line in &list.lines {
        let names: Vec<&str> = line
            .joints
            .iter()
            .map(|&joint| needs[joint].name.as_str())
            .collect();
        println!(
            "  buy {:>2} of {:<12} for {}",
            line.count,
            line.part,
            names.join(", ")
        );
    }
    for (need, line) in needs.iter().zip(&list.line_of_joint) {
        if line.is_none() {
            println!("  nothing for {}", need.name);
        }
    }
    println!(
        "  {}",
        if list.proven_fewest {
            "No list with fewer lengths exists."
        } else {
            "The search was stopped: a shorter list may exist."
        }
    );
    println!();
    for caution in caution::GENERAL.iter().chain(pick.cautions.iter()) {
        println!("* {caution}");
    }
    Ok(())
}
