//! From two plates and a load to diameter, grade, length, nut and washers.
//!
//! ```text
//! cargo run --example pick_size [LOAD THICKNESS THICKNESS MATERIAL]
//! cargo run --example pick_size "9 kN" "10 mm" "8 mm" "S235 steel"
//! ```
//!
//! Ends and edges are taken three diameters of an M16 away; a load in lbf or kip gives inch parts. What nobody says is
//! listed in the report as taken for granted.

use shankline::prelude::*;

fn main() -> Result<(), Error> {
    let given: Vec<String> = std::env::args().skip(1).collect();
    let demo = ["6 kN", "10 mm", "8 mm", "S235 steel"].map(String::from);
    let [load, first, second, material] = <[String; 4]>::try_from(given).unwrap_or(demo);
    let units = if load.ends_with("kip") || load.ends_with("lbf") {
        UnitSystem::UsCustomary
    } else {
        UnitSystem::Si
    };
    let mut builder = Joint::any_size(units).title("swing arm on its post (invented)");
    for (name, thickness) in [("post plate", first), ("arm", second)] {
        builder = builder
            .ply(name, thickness.as_str())
            .material(material.as_str())
            .end_distance("48 mm")
            .edge_distance("48 mm")
            .width("96 mm");
    }
    let designs = builder.across(load.as_str()).vibration(true).choose()?;
    if let Some(joint) = designs.best_joint()? {
        println!("{}", joint.report(units)?);
        return Ok(());
    }
    println!("nothing holds; the nearest:");
    for other in designs.rejected().iter().take(3) {
        println!("  {}", other.choice.text(units));
        for reason in &other.reasons {
            println!("    {}", reason.text(units));
        }
    }
    Ok(())
}
