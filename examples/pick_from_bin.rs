//! What is in the bins, and what is to be bought: the joints of a climbing tower (invented).
//!
//! ```text
//! cargo run --example pick_from_bin
//! ```

use shankline::{
    Error,
    caution::{self, Cautions},
    joint::{Bin, BinPick, BoltInHand, JointNeed, shopping_list},
    prelude::*,
};

const UNITS: UnitSystem = UnitSystem::Si;

/// What all joints of the tower have in common.
struct Tower {
    thread: Thread,
    screws: ScrewSeries,
    washer: Spread<Length>,
    nut: NutEnd,
    rules: LengthRules,
}

impl Tower {
    fn new() -> Result<Self, Error> {
        let thread: Thread = "M12".parse()?;
        Ok(Self {
            thread,
            screws: ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
            washer: Washer::find(WasherStyle::Iso7089, &thread)?.thickness()?,
            nut: NutEnd::of(Nut::find(NutStyle::Iso7040, &thread)?)?,
            // A playground wants short ends: one to three threads, and they may be cut.
            rules: LengthRules::fabrication(UNITS).with_protrusion(1.0, Some(3.0)),
        })
    }

    /// Two plates in millimetres with a shear plane between them.
    fn joint(&self, first: f64, second: f64) -> Result<Stack, Error> {
        let tolerance = millimetres(0.3);
        Stack::builder()
            .ply("first", millimetres(first).plus_minus(tolerance))
            .ply("second", millimetres(second).plus_minus(tolerance))
            .shear_planes([1])
            .washers_under_nut(self.washer, 1)
            .build()
    }
}

fn main() -> Result<(), Error> {
    let tower = Tower::new()?;
    println!("Climbing tower (invented): M12 ISO 4014, lock nut, 1 to 3 threads beyond it.\n");
    let cautions = post_feet_out_of_the_bins(&tower)?;
    println!();
    whole_tower_from_the_dealer(&tower)?;
    println!();
    for caution in caution::GENERAL.iter().chain(cautions.iter()) {
        println!("* {caution}");
    }
    Ok(())
}

fn post_feet_out_of_the_bins(tower: &Tower) -> Result<Cautions, Error> {
    let mm = millimetres;
    let (thread, screws) = (tower.thread, &tower.screws);
    let loose = BoltInHand::new(thread, mm(68.8), mm(30.5), mm(38.0))?;
    let fine = BoltInHand::new("M12x1.25".parse()?, mm(70.0), mm(33.0), mm(40.0))?;
    let bin = Bin::new()
        .product("drawer 1: M12 x 60", screws, mm(60.0), 5)?
        .product("drawer 2: M12 x 70", screws, mm(70.0), 4)?
        .product("drawer 3: M12 x 80", screws, mm(80.0), 30)?
        .measured("tin: about 69 mm", &loose.with_uncertainty(mm(0.3))?, 6)?
        .measured("tin: fine thread", &fine, 9)?;
    let stack = tower.joint(30.0, 15.0)?;
    let pick = bin.pick(&stack, &thread, tower.nut, tower.rules, 12)?;
    print_pick(&bin, &pick);
    Ok(pick.cautions)
}

fn print_pick(bin: &Bin, pick: &BinPick) {
    let name = |item: usize| bin.items()[item].part.as_str();
    println!("{} post feet of 30 + 15 mm, out of the bins:", pick.joints);
    for taken in &pick.taken {
        let c = &taken.candidate;
        let cut = match c.cut {
            Some(cut) => format!(", cut to {}", shown(cut.length, UNITS)),
            None if c.needs_cut => ", cut at fit-up".into(),
            None => String::new(),
        };
        println!(
            "  take {:>2} from {:<20} planes on shank {}, washers to add {}{cut}",
            taken.count,
            name(taken.item),
            c.planes_on_shank,
            c.washers_added,
        );
    }
    println!(
        "  bolts missing: {}; washers under the nuts in all: {}",
        pick.missing, pick.washers_under_nut
    );
    match pick.all_alike {
        Some(item) => println!("  all alike would be {}", name(item)),
        None => println!("  no one drawer has enough for all"),
    }
    for found in &pick.fitting {
        if pick.taken.iter().all(|taken| taken.item != found.item) {
            println!("  fits, but is not needed: {}", name(found.item));
        }
    }
    for found in &pick.rejected {
        let reasons: Vec<String> = found.candidate.reasons().map(|r| r.text(UNITS)).collect();
        println!(
            "  does not fit: {}: {}",
            name(found.item),
            reasons.join("; ")
        );
    }
    for &item in &pick.other_threads {
        println!("  another thread: {}", name(item));
    }
}

fn whole_tower_from_the_dealer(tower: &Tower) -> Result<(), Error> {
    println!("The whole tower, new bolts, as few different lengths as possible:");
    let mut needs = Vec::new();
    for (name, count, first, second) in [
        ("post feet", 12, 30.0, 15.0),
        ("rail ends", 16, 25.0, 20.0),
        ("slide head", 4, 20.0, 20.0),
        ("ladder rungs", 20, 35.0, 10.0),
        ("roof beams", 8, 40.0, 20.0),
        ("net anchors", 6, 30.0, 30.0),
    ] {
        let stack = tower.joint(first, second)?;
        let selection = LengthSearch::new(&stack, &tower.screws, tower.nut, tower.rules)?.run()?;
        let need = JointNeed::from_selection(name, count, &selection, |candidate| {
            let length = shown(candidate.screw.nominal, UNITS);
            format!("{} x {length:.0}", tower.thread)
        });
        let choices = need.choices.join(", ");
        println!("  {name:<13} {count:>2} joints, would take: {choices}");
        needs.push(need);
    }
    let list = shopping_list(&needs)?;
    for line in &list.lines {
        let joints = line.joints.iter().map(|&joint| needs[joint].name.as_str());
        let joints: Vec<&str> = joints.collect();
        println!(
            "  buy {:>2} of {:<12} for {}",
            line.count,
            line.part,
            joints.join(", ")
        );
    }
    for (need, line) in needs.iter().zip(&list.line_of_joint) {
        if line.is_none() {
            println!("  nothing for {}", need.name);
        }
    }
    if list.proven_fewest {
        println!("  No list with fewer lengths exists.");
    } else {
        println!("  The search was stopped: a shorter list may exist.");
    }
    Ok(())
}
