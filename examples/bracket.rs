//! A bracket under the edge of a mezzanine floor, on six bolts, loaded off their centroid: both methods side
//! by side. All figures are invented.
//!
//! ```text
//! cargo run --example bracket
//! ```

use shankline::caution;
use shankline::prelude::*;
use shankline::strength::check::Level;
use shankline::strength::group::{BoltPattern, DeformationLaw, PlaneLoad};
use shankline::units::degrees;

fn main() -> Result<(), shankline::Error> {
    // Two columns of three bolts, 80 mm apart both ways; 45 kN hang 220 mm to the right of their middle,
    // and a tie pulls a little to the right.
    let pattern = BoltPattern::rows_and_columns(3, 2, millimetres(80.0), millimetres(80.0))?;
    let (force, arm) = (newtons(45e3), millimetres(220.0));
    let load = PlaneLoad::eccentric(&pattern, force, arm, degrees(10.0));
    // What one bolt carries across its axis, for factored loads, from a check of bolt, bearing and tear-out.
    let resistance = newtons(60e3);

    let elastic = pattern.elastic(&[load])?;
    let centre = pattern.instantaneous_centre(&[load], DeformationLaw::Aisc)?;

    println!("A BRACKET ON SIX BOLTS (invented example)");
    println!();
    println!("  load          45.0 kN, 10 degrees off the vertical, 220 mm from the centroid");
    let moment = elastic.load.moment.value / 1e3;
    println!("  at the centroid        {moment:.2} kN m (anticlockwise is positive)");
    println!();
    println!("  force on each bolt, kN        elastic   instantaneous centre");
    println!("  bolt    x mm    y mm       x      y  total       x      y  total");
    let kn = |force: shankline::units::Force| force.value / 1e3;
    for (n, bolt) in pattern.bolts().iter().enumerate() {
        let (a, b) = (elastic.forces[n], centre.forces[n]);
        println!(
            "  {:>4} {:>7.0} {:>7.0}  {:>6.1} {:>6.1} {:>6.1}  {:>6.1} {:>6.1} {:>6.1}",
            n + 1,
            bolt.x.value * 1e3,
            bolt.y.value * 1e3,
            kn(a.x),
            kn(a.y),
            kn(a.resultant),
            kn(b.x),
            kn(b.y),
            kn(b.resultant),
        );
    }
    println!();
    for (name, point) in [
        ("elastic", elastic.centre),
        ("instantaneous", centre.centre),
    ] {
        if let Some(at) = point {
            let (x, y) = (at.x.value * 1e3, at.y.value * 1e3);
            println!("  {name:<14} the plate turns about x = {x:.1} mm, y = {y:.1} mm");
        }
    }
    println!();
    let by_elastic = elastic.check(resistance, Level::Design)?;
    let by_centre = centre.check(resistance, Level::Design)?;
    let capacity = force / by_elastic.utilisation;
    println!("  with bolts good for {:.0} kN each:", kn(resistance));
    println!(
        "  elastic        carries {:>5.1} kN, {by_elastic}",
        kn(capacity)
    );
    let capacity = centre.capacity(resistance)?;
    println!(
        "  instantaneous  carries {:>5.1} kN, {by_centre}",
        kn(capacity)
    );
    if let Some(c) = centre.coefficient {
        let steps = centre.iterations;
        println!(
            "                 as much as C = {c:.2} bolts without eccentricity ({steps} steps)"
        );
    }
    println!("  governs: bolt {} (elastic)", elastic.governing + 1);
    println!();
    println!(
        "  The instantaneous centre counts on ductile bolts in bearing. Neither method checks plates,"
    );
    println!(
        "  edges, slip or the weld of the bracket. People stand under it: a licensed engineer and the"
    );
    println!("  local code decide.");
    println!();
    for caution in caution::GENERAL {
        println!("  {caution}");
    }
    Ok(())
}
