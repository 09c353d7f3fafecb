//! A davit foot made of a shop's own parts: bolt of its own steel, nut, washer and plate. All figures are invented.
//!
//! ```text
//! cargo run --example own_parts
//! ```

use shankline::joint::{
    MaterialKind, NutProof, OwnMaterial, OwnNut, OwnScrew, OwnStrength, Prying,
};
use shankline::parts::Locking;
use shankline::prelude::*;
use shankline::units::ppm_per_kelvin;

fn main() -> Result<(), shankline::Error> {
    let thread: Thread = "M16".parse()?;

    // From the certificate of the bar, and from the drawings.
    let mut steel = OwnStrength::new("shop steel 42 (invented)", megapascals(900.0));
    steel.yield_strength = Some(megapascals(700.0));
    steel.proof_stress = Some(megapascals(600.0));
    let length = "70 +/- 0.5 mm".parse()?;
    let (shank, thread_start) = (millimetres(36.0), millimetres(42.0));
    let mut bolt = OwnScrew::new(
        "turned bolt, drawing 12 (invented)",
        length,
        shank,
        thread_start,
    );
    bolt.bearing_diameter = Some(millimetres(22.0));
    let height = "16 +/- 0.3 mm".parse()?;
    let mut nut = OwnNut::new("turned nut, drawing 13 (invented)", height, Locking::None);
    nut.proof = Some(NutProof::Stress(megapascals(910.0)));
    nut.bearing_diameter = Some(millimetres(22.0));
    let washer = JointWasher::new("turned washer (invented)", "4 +/- 0.1 mm".parse()?)
        .diameters(millimetres(34.0), millimetres(17.5))
        .hardness(200.0);
    let plate = OwnMaterial::new("shop plate 7 (invented)", MaterialKind::CarbonSteel)
        .strengths(megapascals(400.0), megapascals(520.0))
        .expansion(ppm_per_kelvin(12.0));

    let joint = |plate: OwnMaterial| {
        let listed = JointWasher::find(WasherStyle::Iso7089, &thread)?;
        Joint::builder(thread)
            .title("davit foot of a shop's own parts (invented)")
            .own_bolt(bolt.clone())
            .own_strength(steel.clone())
            .own_nut(nut.clone())
            .finish(Finish::ZincFlake)
            .stack(|stack| {
                stack
                    .washer_under_head(washer.clone())
                    .washers_under_nut(listed, 1)
            })
            .ply("foot", "20 +/- 0.3 mm")
            .material(plate)
            .end_distance("45 mm")
            .edge_distance("40 mm")
            .width("80 mm")
            .ply("base plate", "20 +/- 0.3 mm")
            .material("S355 steel")
            .end_distance("45 mm")
            .edge_distance("40 mm")
            .width("80 mm")
            .across("15 kN")
            .along("12 kN")
            .prying(Prying::None)
            .build()
    };

    let verdict = joint(plate.clone())?.check()?;
    println!("What the certificates leave unsaid\n");
    println!("{}\n", verdict.headline(UnitSystem::Si));
    for missing in verdict.open() {
        println!("  {missing}");
    }

    // What the plate bears under the head was measured (invented): with that the joint is decided.
    let measured = plate.surface_pressure(megapascals(800.0));
    println!("\nWith that measured\n");
    println!("{}", joint(measured)?.report(UnitSystem::Si)?);
    Ok(())
}
