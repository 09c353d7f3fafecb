//! Parts of the caller's own: what they leave unsaid stays undecided, and what makes no sense is refused at the door.

use shankline::caution::{Caution, StatedPart};
use shankline::joint::*;
use shankline::parts::Locking;
use shankline::prelude::*;
use shankline::strength::check::Mode;
use shankline::tables::timber::TimberKind;
use shankline::units::{degrees, kilograms_per_cubic_metre, ppm_per_kelvin};

/// The foot of a davit on its base plate (invented), of listed parts alone.
fn davit() -> Joint {
    let thread: Thread = "M16".parse().unwrap();
    let ply = |name| {
        JointPly::new(name, millimetres(20.0).plus_minus(millimetres(0.3)))
            .material("S355 steel")
            .hole(millimetres(17.5))
            .end_distance(millimetres(45.0))
            .edge_distance(millimetres(40.0))
            .width(millimetres(80.0))
    };
    let washer = JointWasher::find(WasherStyle::Iso7089, &thread).unwrap();
    let finish = Some(Finish::ZincFlake);
    Joint {
        title: "davit foot (invented)".into(),
        bolt: JointBolt {
            product: ScrewProduct::Iso4014,
            thread,
            grade: PropertyClass::Class8_8.into(),
            length: None,
            finish,
        },
        nut: Some(JointNut {
            style: NutStyle::Iso7040,
            grade: Some(NutGrade::Iso898_2Class8),
            finish,
        }),
        stack: Stack::builder()
            .washer_under_head(washer.clone())
            .add(ply("foot"))
            .add(ply("base plate"))
            .shear_planes([1])
            .washers_under_nut(washer, 1)
            .build()
            .unwrap(),
        pattern: Pattern::Single,
        load: JointLoad::across(newtons(15e3)),
        environment: Environment::workshop(),
        tightening: Some(Tightening::Snug),
        rules: LengthRules::fabrication(UnitSystem::Si),
        methods: JointMethods::machine_design(2.0),
        scope: Scope::Joint,
        set_aside: Vec::new(),
        granted: Vec::new(),
        own: OwnParts::default(),
    }
}

/// The same with the first ply changed.
fn with_foot(joint: Joint, change: impl FnOnce(JointPly) -> JointPly) -> Result<Joint, Error> {
    let mut plies = joint.stack.plies().to_vec();
    plies[0] = change(plies[0].clone());
    let thread = joint.bolt.thread;
    let washer = JointWasher::find(WasherStyle::Iso7089, &thread)?;
    let mut builder = Stack::builder().washer_under_head(washer.clone());
    for ply in plies {
        builder = builder.add(ply);
    }
    let stack = builder
        .shear_planes([1])
        .washers_under_nut(washer, 1)
        .build()?;
    Ok(Joint { stack, ..joint })
}

fn steel() -> OwnMaterial {
    OwnMaterial::new("shop plate 7 (invented)", MaterialKind::CarbonSteel)
        .strengths(megapascals(355.0), megapascals(470.0))
}

fn with(change: impl FnOnce(&mut OwnMaterial)) -> OwnMaterial {
    let mut own = steel();
    change(&mut own);
    own
}

fn has(verdict: &Verdict, part: StatedPart) -> usize {
    let stated = |caution: &&Caution| **caution == Caution::Stated { part };
    verdict.cautions.iter().filter(stated).count()
}

#[test]
fn own_plate_counts_as_the_listed_one_and_is_cautioned() {
    let listed = davit().check().unwrap();
    assert!(listed.holds(), "{}", listed.render(UnitSystem::Si));
    assert_eq!(has(&listed, StatedPart::Material), 0);
    let own = with_foot(davit(), |ply| ply.material(steel())).unwrap();
    let verdict = own.check().unwrap();
    assert!(verdict.holds(), "{}", verdict.render(UnitSystem::Si));
    assert_eq!(has(&verdict, StatedPart::Material), 1);
}

#[test]
fn what_an_own_plate_leaves_unsaid_is_missing() {
    let need = |own: OwnMaterial, change: fn(&mut Joint)| {
        let mut joint = with_foot(davit(), |ply| ply.material(own)).unwrap();
        change(&mut joint);
        let verdict = joint.check().unwrap();
        assert_eq!(verdict.word(), Word::Undecided);
        let needs = verdict
            .missing
            .iter()
            .filter(|missing| missing.need.is_fact());
        needs
            .map(|missing| (missing.mode, missing.need.clone()))
            .collect::<Vec<_>>()
    };
    let mut none = steel();
    none.yield_strength = None;
    assert!(need(none, |_| ()).contains(&(Mode::Bearing, Need::YieldStrength)));
    let pulled = |joint: &mut Joint| {
        joint.load.along = newtons(5e3);
        joint.load.prying = Some(Prying::None);
    };
    assert_eq!(
        need(steel(), pulled),
        [(Mode::Pressure, Need::SurfacePressure)]
    );
}

#[test]
fn figures_that_are_none_are_refused() {
    let refused = |own: OwnMaterial| with_foot(davit(), |ply| ply.material(own)).unwrap_err();
    for bad in [f64::NAN, f64::INFINITY, 0.0, -1.0] {
        let stress = megapascals(bad);
        for own in [
            with(|own| own.yield_strength = Some(stress)),
            with(|own| own.tensile_strength = Some(stress)),
            steel().elastic_modulus(stress),
            steel().surface_pressure(stress),
            steel().surface_pressure(megapascals(9000.0)),
            steel().expansion(ppm_per_kelvin(bad)),
            steel().shear_ratio(bad),
            steel().thickness(millimetres(bad), millimetres(30.0)),
            steel().thickness(millimetres(3.0), millimetres(bad)),
        ] {
            assert!(matches!(refused(own), Error::OutOfRange { .. }));
        }
        let nds = TimberFigures::Nds {
            specific_gravity: bad,
            compression_across: None,
        };
        let density = kilograms_per_cubic_metre(bad);
        let en = TimberFigures::En1995 {
            characteristic_density: density,
            compression_across: None,
        };
        for figures in [nds, en] {
            let own = OwnTimber::new("larch", TimberKind::Softwood, figures);
            let timbered = |mut ply: JointPly| {
                ply.material = None;
                ply.timber(own, degrees(0.0))
            };
            assert!(with_foot(davit(), timbered).is_err());
        }
    }
    let message = |own: OwnMaterial| refused(own).to_string();
    assert!(
        message(steel().strengths(megapascals(500.0), megapascals(400.0)))
            .contains("yield strength of \"foot\"")
    );
    assert!(
        message(steel().thickness(millimetres(3.0), millimetres(16.0)))
            .contains("outside the thicknesses")
    );
    let nameless = with(|own| own.name = " ".into());
    assert!(message(nameless).contains("wants a name"));
}

fn own_strength() -> OwnStrength {
    let mut own = OwnStrength::new("shop steel 42 (invented)", megapascals(900.0));
    own.yield_strength = Some(megapascals(700.0));
    own.proof_stress = Some(megapascals(600.0));
    own
}

fn own_screw() -> OwnScrew {
    let length = millimetres(70.0).plus_minus(millimetres(0.5));
    let only = OwnLength::new(length, millimetres(36.0), millimetres(42.0));
    let mut own = OwnScrew::new("turned bolt (invented)", [only]);
    own.bearing_diameter = Some(millimetres(22.0));
    own
}

fn own_nut() -> OwnNut {
    let height = millimetres(16.0).plus_minus(millimetres(0.3));
    let mut own = OwnNut::new("turned nut (invented)", height, Locking::Insert);
    own.proof = Some(NutProof::Load(newtons(150e3)));
    own.bearing_diameter = Some(millimetres(22.0));
    own.finish = Some(Finish::ZincFlake);
    own
}

/// The davit with every part of the shop's own.
fn turned() -> Joint {
    davit()
        .with_strength(own_strength())
        .with_screw(own_screw())
        .with_nut(own_nut())
}

#[test]
fn own_bolt_and_nut_hold_with_one_caution_each() {
    let verdict = turned().check().unwrap();
    assert!(verdict.holds(), "{}", verdict.render(UnitSystem::Si));
    for part in [StatedPart::BoltStrength, StatedPart::Bolt, StatedPart::Nut] {
        assert_eq!(has(&verdict, part), 1, "{part}");
    }
    // What the workshop builds from names them.
    let sheet = Sheet::new(&turned(), &verdict).unwrap();
    let text = sheet.render(UnitSystem::Si).to_string();
    for name in ["shop steel 42", "turned bolt", "turned nut"] {
        assert!(text.contains(name), "{text}");
    }
}

#[test]
fn two_parts_in_one_place_are_refused() {
    let message = |joint: Joint| joint.check().unwrap_err().to_string();
    let mut joint = turned();
    joint.bolt.grade = PropertyClass::Class8_8.into();
    assert!(message(joint).contains("two strengths of the bolt"));
    let mut joint = turned();
    joint.bolt.product = ScrewProduct::Iso4014;
    assert!(message(joint).contains("two bolts"));
    let mut joint = turned();
    joint.bolt.length = Some(millimetres(75.0));
    assert!(message(joint).contains("is not described 75.00 mm long, only 70.00 mm"));
    let mut joint = turned();
    joint.nut = davit().nut;
    assert!(message(joint).contains("two nuts"));
    // And a place with none.
    let mut joint = turned();
    joint.own = OwnParts::default();
    assert!(message(joint).contains("is not described"));
}

#[test]
fn own_bolts_and_nuts_that_are_none_are_refused() {
    for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 0.0, -1.0] {
        let (stress, length) = (megapascals(bad), millimetres(bad));
        let strength = |change: &dyn Fn(&mut OwnStrength)| {
            let mut own = own_strength();
            change(&mut own);
            davit().with_strength(own)
        };
        let screw = |change: &dyn Fn(&mut OwnScrew)| {
            let mut own = own_screw();
            change(&mut own);
            davit().with_screw(own)
        };
        let nut = |change: &dyn Fn(&mut OwnNut)| {
            let mut own = own_nut();
            change(&mut own);
            davit().with_nut(own)
        };
        for joint in vec![
            strength(&|own| own.tensile_strength = stress),
            strength(&|own| own.yield_strength = Some(stress)),
            strength(&|own| own.proof_stress = Some(stress)),
            strength(&|own| own.endurance = Some(stress)),
            strength(&|own| own.elastic_modulus = Some(stress)),
            strength(&|own| own.expansion = Some(ppm_per_kelvin(bad))),
            screw(&|own| own.lengths[0].length = Spread::exact(length)),
            screw(&|own| own.lengths[0].thread_start = length),
            nut(&|own| own.height = Spread::exact(length)),
            nut(&|own| own.proof = Some(NutProof::Stress(stress))),
            nut(&|own| own.proof = Some(NutProof::Load(newtons(bad)))),
            nut(&|own| own.bearing_diameter = Some(length)),
            nut(&|own| own.across_flats = Some(length)),
        ] {
            assert!(
                matches!(joint.check(), Err(Error::OutOfRange { .. })),
                "{bad}"
            );
        }
        // A head that is no wider than its thread presses on nothing.
        for width in [length, millimetres(16.0)] {
            assert!(
                !screw(&|own| own.bearing_diameter = Some(width))
                    .check()
                    .is_ok_and(|own| own.holds())
            );
        }
        let washer =
            |hardness| JointWasher::new("own", Spread::exact(millimetres(3.0))).hardness(hardness);
        let stack = Stack::builder()
            .washer_under_head(washer(bad))
            .ply("a", Spread::exact(millimetres(9.0)));
        assert!(stack.build().is_err());
    }
    let mut weak = own_strength();
    weak.proof_stress = Some(megapascals(800.0));
    assert!(davit().with_strength(weak).check().is_err());
}

#[test]
fn the_design_search_does_not_replace_own_parts() {
    let own = turned().design(&DesignSpace::new(), &[]).unwrap_err();
    assert!(
        own.to_string()
            .contains("would put them in place of those of your own")
    );
    // Plates of one's own are kept.
    let plated = with_foot(davit(), |ply| ply.material(steel())).unwrap();
    let designs = plated.design(&DesignSpace::new(), &[]).unwrap();
    let best = designs.joint(&designs.best().unwrap().choice).unwrap();
    assert_eq!(best.stack.plies()[0].material, Some(steel().into()));
}

#[cfg(feature = "serde")]
mod in_files {
    use super::*;
    use serde_json::{Value, json};

    /// Every part of one's own, and every figure of it.
    fn all() -> Joint {
        let mut strength = own_strength();
        strength.endurance = Some(megapascals(70.0));
        strength.elastic_modulus = Some(megapascals(205e3));
        strength.expansion = Some(ppm_per_kelvin(11.5));
        let mut screw = own_screw();
        screw.across_flats = Some(millimetres(23.7));
        let mut nut = own_nut();
        nut.across_flats = Some(millimetres(23.7));
        let plate = steel()
            .elastic_modulus(megapascals(205e3))
            .expansion(ppm_per_kelvin(12.0))
            .shear_ratio(0.6)
            .surface_pressure(megapascals(700.0))
            .thickness(millimetres(3.0), millimetres(40.0));
        let figures = TimberFigures::En1995 {
            characteristic_density: kilograms_per_cubic_metre(560.0),
            compression_across: Some(megapascals(7.0)),
        };
        let oak = OwnTimber::new("sleeper oak (invented)", TimberKind::Hardwood, figures);
        let washer = JointWasher::new("turned washer", Spread::exact(millimetres(4.0)))
            .diameters(millimetres(34.0), millimetres(17.5))
            .hardness(300.0);
        let ply = |name| JointPly::new(name, Spread::exact(millimetres(20.0)));
        let stack = Stack::builder()
            .washer_under_head(washer)
            .add(ply("foot").material(plate))
            .add(ply("sleeper").timber(oak, degrees(0.0)))
            .shear_planes([1])
            .build()
            .unwrap();
        Joint { stack, ..davit() }
            .with_strength(strength)
            .with_screw(screw)
            .with_nut(nut)
    }

    #[test]
    fn a_joint_of_own_parts_comes_back_as_it_went() {
        let text = serde_json::to_string(&all()).unwrap();
        assert_eq!(serde_json::from_str::<Joint>(&text).unwrap(), all());
        let toml = toml::to_string(&serde_json::to_value(all()).unwrap());
        if let Ok(toml) = toml {
            assert_eq!(toml::from_str::<Joint>(&toml).unwrap(), all());
        }
        let before = turned().check().unwrap().render(UnitSystem::Si).to_string();
        let again: Joint = serde_json::from_value(serde_json::to_value(turned()).unwrap()).unwrap();
        assert_eq!(
            again.check().unwrap().render(UnitSystem::Si).to_string(),
            before
        );
    }

    #[test]
    fn a_washer_of_a_style_needs_no_thickness() {
        let whole = serde_json::to_value(davit()).unwrap();
        let mut short = whole.clone();
        short["stack"]["washers_under_head"] = json!([{ "style": "iso_7089" }]);
        short["stack"]["washers_under_nut"] = json!({ "style": "iso_7089", "count": 1 });
        let read: Joint = serde_json::from_value(short.clone()).unwrap();
        assert_eq!(read, davit());
        // A stack alone has no thread to look it up for.
        let alone = serde_json::from_value::<Stack>(short["stack"].clone()).unwrap_err();
        assert!(
            alone.to_string().contains("a stack alone has no thread"),
            "{alone}"
        );
        let refuse = |value: Value| {
            let mut joint = short.clone();
            joint["stack"]["washers_under_head"] = json!([value]);
            serde_json::from_value::<Joint>(joint)
                .unwrap_err()
                .to_string()
        };
        assert!(refuse(json!({ "name": "own" })).contains("missing field `thickness` of \"own\""));
        let inch = refuse(json!({ "style": "f436" }));
        assert!(inch.contains("M16"), "{inch}");
    }

    #[test]
    fn slips_of_the_pen_are_named() {
        let refuse = |path: [&str; 2], value: Value| {
            let mut joint = serde_json::to_value(turned()).unwrap();
            joint[path[0]][path[1]] = value;
            serde_json::from_value::<Joint>(joint)
                .unwrap_err()
                .to_string()
        };
        let strength = json!({ "name": "x", "tensile_strenght": "900 MPa" });
        assert!(refuse(["bolt", "grade"], strength).contains("tensile_strenght"));
        assert!(refuse(["bolt", "grade"], json!({ "name": "x" })).contains("tensile_strength"));
        assert!(
            refuse(["bolt", "grade"], json!("stated strengths")).contains("not a known bolt grade")
        );
        assert!(refuse(["bolt", "product"], json!("iso_4041")).contains("iso_4041"));
        assert!(
            refuse(["nut", "style"], json!([]))
                .contains("an object that describes a part of your own")
        );
        assert!(
            refuse(["nut", "grade"], json!("ISO 898-2 class 8")).contains("no grade of the tables")
        );
        // The word for one's own is no description of it.
        assert!(refuse(["bolt", "product"], json!("own")).contains("`own`"));
    }
}
