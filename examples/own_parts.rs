//! Joints made of a shop's own parts: a davit foot of own bolts, nut, washer and plate, and a hay rack post of own
//! timber. All figures are invented.
//!
//! ```text
//! cargo run --example own_parts
//! ```

use shankline::joint::{
    MaterialKind, NutProof, OwnLength, OwnMaterial, OwnNut, OwnScrew, OwnStrength, OwnTimber,
    Prying, TimberFigures,
};
use shankline::parts::Locking;
use shankline::prelude::*;
use shankline::strength::check::Mode;
use shankline::strength::timber::TimberMethod;
use shankline::tables::timber::TimberKind;
use shankline::units::ppm_per_kelvin;

/// What the shop has of M16, by certificates and drawings.
struct Shop {
    steel: OwnStrength,
    /// A drawer of three lengths.
    bolts: OwnScrew,
    nut: OwnNut,
    washer: JointWasher,
    plate: OwnMaterial,
}

impl Shop {
    fn new() -> Result<Self, shankline::Error> {
        let mut steel = OwnStrength::new("shop steel 42 (invented)", megapascals(900.0));
        steel.yield_strength = Some(megapascals(700.0));
        steel.proof_stress = Some(megapascals(600.0));
        let length = |length: f64| {
            let (shank, thread_start) = (millimetres(length - 34.0), millimetres(length - 28.0));
            let length = millimetres(length).plus_minus(millimetres(0.5));
            OwnLength::new(length, shank, thread_start)
        };
        let drawing = "turned bolt, drawing 12 (invented)";
        let mut bolts = OwnScrew::new(drawing, [60.0, 70.0, 130.0].map(length));
        bolts.bearing_diameter = Some(millimetres(22.0));
        bolts.head_height = Some(millimetres(10.0));
        let height = "16 +/- 0.3 mm".parse()?;
        let mut nut = OwnNut::new("turned nut, drawing 13 (invented)", height, Locking::None);
        nut.proof = Some(NutProof::Stress(megapascals(910.0)));
        nut.bearing_diameter = Some(millimetres(22.0));
        Ok(Self {
            steel,
            bolts,
            nut,
            washer: JointWasher::new("turned washer (invented)", "4 +/- 0.1 mm".parse()?)
                .diameters(millimetres(34.0), millimetres(17.5))
                .hardness(200.0),
            plate: OwnMaterial::new("shop plate 7 (invented)", MaterialKind::CarbonSteel)
                .strengths(megapascals(400.0), megapascals(520.0))
                .expansion(ppm_per_kelvin(12.0)),
        })
    }

    /// A joint with the shop's bolts and nut.
    fn joint(&self, title: &str) -> JointBuilder {
        Joint::builder("M16")
            .title(title)
            .own_bolt(self.bolts.clone())
            .own_strength(self.steel.clone())
            .own_nut(self.nut.clone())
            .finish(Finish::ZincFlake)
    }
}

fn davit(shop: &Shop, plate: OwnMaterial) -> Result<Joint, shankline::Error> {
    let listed = JointWasher::find(WasherStyle::Iso7089, &"M16".parse()?)?;
    shop.joint("davit foot of a shop's own parts (invented)")
        .stack(|stack| {
            stack
                .washer_under_head(shop.washer.clone())
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
}

/// A post of the shop's own timber in a shoe of its own plate.
fn post(shop: &Shop) -> Result<Joint, shankline::Error> {
    let figures = TimberFigures::Nds {
        specific_gravity: 0.50,
        compression_across: Some(megapascals(4.3)),
    };
    let larch = OwnTimber::new("sawmill larch (invented)", TimberKind::Softwood, figures);
    let plate = JointWasher::new("plate washer (invented)", "5 +/- 0.1 mm".parse()?)
        .diameters(millimetres(52.0), millimetres(17.5));
    let mut methods = JointMethods::machine_design(2.0);
    methods.timber = Some(TimberMethod::Nds {
        bending_yield: megapascals(310.0),
        adjustment: 1.0,
    });
    let by_hand = "rows and net section of the post checked by hand (invented)";
    shop.joint("hay rack post in its shoe (invented)")
        .stack(|stack| {
            stack
                .washer_under_head(shop.washer.clone())
                .washers_under_nut(plate, 1)
        })
        .ply("shoe", "8 +/- 0.2 mm")
        .material(shop.plate.clone())
        .hole("17.5 mm")
        .end_distance("45 mm")
        .edge_distance("40 mm")
        .width("80 mm")
        .ply("post", "90 +/- 1 mm")
        .timber(larch, "0 deg")
        .hole("17 mm")
        .end_distance("120 mm")
        .edge_distance("50 mm")
        .across("2 kN")
        .methods(methods)
        .set_aside(Mode::NetSection, by_hand)
        .set_aside(Mode::TearOut, by_hand)
        .build()
}

fn main() -> Result<(), shankline::Error> {
    let shop = Shop::new()?;

    let verdict = davit(&shop, shop.plate.clone())?.check()?;
    println!("What the certificates leave unsaid\n");
    println!("{}\n", verdict.headline(UnitSystem::Si));
    for missing in verdict.open() {
        println!("  {missing}");
    }

    // What the plate bears under the head was measured (invented): with that the joint is decided.
    let measured = shop.plate.clone().surface_pressure(megapascals(800.0));
    println!("\nWith that measured\n");
    println!("{}", davit(&shop, measured)?.report(UnitSystem::Si)?);

    println!("\nThe same bolts through own timber\n");
    println!("{}", post(&shop)?.report(UnitSystem::Si)?);
    Ok(())
}
