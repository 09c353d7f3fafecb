//! A davit foot made of a shop's own parts: turned bolt of its own steel, turned nut and washer, and own plate. All figures are invented.
//!
//! ```text
//! cargo run --example own_parts
//! ```

use shankline::joint::{
    MaterialKind, NutProof, OwnMaterial, OwnNut, OwnScrew, OwnStrength, Prying, Slip,
};
use shankline::parts::Locking;
use shankline::prelude::*;
use shankline::units::ppm_per_kelvin;

fn main() -> Result<(), shankline::Error> {
    let thread: Thread = "M16".parse()?;
    let finish = Some(Finish::ZincFlake);

    // From the certificate of the bar, and from the drawings.
    let mut steel = OwnStrength::new("shop steel 42 (invented)", megapascals(900.0));
    steel.yield_strength = Some(megapascals(700.0));
    steel.proof_stress = Some(megapascals(600.0));

    let length = millimetres(70.0).plus_minus(millimetres(0.5));
    let mut bolt = OwnScrew::new(
        "turned bolt, drawing 12 (invented)",
        length,
        millimetres(36.0),
        millimetres(42.0),
    );
    bolt.bearing_diameter = Some(millimetres(22.0));

    let height = millimetres(16.0).plus_minus(millimetres(0.3));
    let mut nut = OwnNut::new("turned nut, drawing 13 (invented)", height, Locking::None);
    nut.proof = Some(NutProof::Stress(megapascals(910.0)));
    nut.bearing_diameter = Some(millimetres(22.0));
    nut.finish = finish;

    let plate = OwnMaterial::new("shop plate 7 (invented)", MaterialKind::CarbonSteel)
        .strengths(megapascals(400.0), megapascals(520.0))
        .expansion(ppm_per_kelvin(12.0));

    let own_washer = JointWasher::new(
        "turned washer (invented)",
        millimetres(4.0).plus_minus(millimetres(0.1)),
    )
    .diameters(millimetres(34.0), millimetres(17.5))
    .hardness(200.0);
    let ply = |name: &str| {
        JointPly::new(name, millimetres(20.0).plus_minus(millimetres(0.3)))
            .hole(millimetres(17.5))
            .end_distance(millimetres(45.0))
            .edge_distance(millimetres(40.0))
            .width(millimetres(80.0))
    };

    let joint = Joint {
        title: "davit foot of a shop's own parts (invented)".into(),
        bolt: JointBolt {
            product: ScrewProduct::Iso4014,
            thread,
            grade: PropertyClass::Class8_8.into(),
            length: None,
            finish,
        },
        nut: None,
        stack: Stack::builder()
            .washer_under_head(own_washer)
            .add(ply("foot").material(plate.clone()))
            .add(ply("base plate").material("S355 steel"))
            .shear_planes([1])
            .washers_under_nut(JointWasher::find(WasherStyle::Iso7089, &thread)?, 1)
            .build()?,
        pattern: Pattern::Single,
        load: JointLoad {
            along: newtons(12e3),
            prying: Some(Prying::None),
            ..JointLoad::across(newtons(15e3))
        },
        environment: Environment::workshop(),
        tightening: Some(Tightening::Snug),
        rules: LengthRules::fabrication(UnitSystem::Si),
        methods: JointMethods {
            slip: Slip::Permitted,
            ..JointMethods::machine_design(2.0)
        },
        scope: Scope::Joint,
        set_aside: Vec::new(),
        granted: Vec::new(),
        own: OwnParts::default(),
    }
    // In place of the listed parts above.
    .with_strength(steel)
    .with_screw(bolt)
    .with_nut(nut);

    println!("WHAT THE CERTIFICATES LEAVE UNSAID");
    println!();
    println!("{}", joint.check()?.render(UnitSystem::Si));

    // What the plate bears under the head was measured (invented): with that the joint is decided.
    let plate = plate.surface_pressure(megapascals(800.0));
    let plies = joint.stack.plies().iter().cloned();
    let mut builder =
        Stack::builder().washer_under_head(joint.stack.washers_under_head()[0].clone());
    for (number, ply) in plies.enumerate() {
        builder = builder.add(if number == 0 {
            ply.material(plate.clone())
        } else {
            ply
        });
    }
    let stack = builder
        .shear_planes([1])
        .washers_under_nut(JointWasher::find(WasherStyle::Iso7089, &thread)?, 1)
        .build()?;
    let verdict = Joint { stack, ..joint }.check()?;
    println!();
    println!("WITH THE PRESSURE MEASURED");
    println!();
    println!("{}", verdict.render(UnitSystem::Si));
    println!();
    for caution in &verdict.cautions {
        println!("* {caution}");
    }
    Ok(())
}
