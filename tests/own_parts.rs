//! Parts of the caller's own: what they leave unsaid stays undecided, and what makes no sense is refused at the door.

use shankline::caution::{Caution, StatedPart};
use shankline::joint::*;
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
