//! Parts of the caller's own: what they leave unsaid stays undecided, and what makes no sense is refused at the door.

use shankline::caution::{Caution, StatedPart};
use shankline::joint::*;
use shankline::parts::Locking;
use shankline::prelude::*;
use shankline::strength::check::{Mode, Place};
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
    own.head_height = Some(millimetres(10.0));
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
            screw(&|own| own.head_height = Some(length)),
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

/// Bolts of ISO 4014 as the table has them, described as if they were one's own: the search finds the same among them, in
/// whatever order they lie, with every washer, reason and cut.
#[test]
fn own_lengths_are_searched_as_those_in_stock() {
    let thread: Thread = "M16".parse().unwrap();
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread).unwrap();
    let lengths = screws
        .stock_lengths()
        .filter_map(|length| screws.length(length).ok());
    let mut lengths: Vec<OwnLength> = lengths
        .map(|screw| {
            let length = Spread {
                min: screw.min,
                nominal: screw.nominal,
                max: screw.max,
            };
            OwnLength::new(length, screw.body_length_min, screw.grip_gaging_length_max)
        })
        .collect();
    assert!(lengths.len() > 10);
    lengths.reverse();
    lengths.rotate_left(3);
    let drawer = OwnScrew::new("as ISO 4014", lengths);
    let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread).unwrap()).unwrap();
    let washer = JointWasher::find(WasherStyle::Iso7089, &thread).unwrap();
    let mut found = 0;
    for tenths in 100..1500 {
        let ply = millimetres(f64::from(tenths) / 20.0).plus_minus(millimetres(0.3));
        let stack = Stack::builder()
            .ply("a", ply)
            .ply("b", ply)
            .shear_planes([1])
            .washers_under_nut(washer.clone(), 0)
            .build()
            .unwrap();
        for rules in [
            LengthRules::fabrication(UnitSystem::Si),
            LengthRules::fabrication(UnitSystem::Si)
                .with_protrusion(1.0, Some(3.0))
                .with_cut(CutRule::Never),
        ] {
            let listed = LengthSearch::new(&stack, &screws, nut, rules).unwrap();
            let own = LengthSearch::of_own(&stack, &drawer, &thread, nut, rules).unwrap();
            assert_eq!(own.best().unwrap(), listed.best().unwrap());
            let (own, listed) = (own.run().unwrap(), listed.run().unwrap());
            assert_eq!(own.accepted(), listed.accepted());
            assert_eq!(own.rejected(), listed.rejected());
            let stated = Caution::Stated {
                part: StatedPart::Bolt,
            };
            assert!(own.cautions().iter().any(|caution| *caution == stated));
            found += own.accepted().len();
        }
    }
    assert!(found > 1000, "{found}");
}

/// A drawer with the bolt of the other tests among others.
fn drawer() -> OwnScrew {
    let length = |nominal: f64| {
        let length = millimetres(nominal).plus_minus(millimetres(0.5));
        OwnLength::new(
            length,
            millimetres(nominal - 34.0),
            millimetres(nominal - 28.0),
        )
    };
    let mut own = own_screw();
    own.lengths = vec![length(90.0), length(62.5), own.lengths[0]];
    own
}

#[test]
fn the_best_of_a_drawer_is_found_and_told() {
    let joint = turned().with_screw(drawer());
    let alone = turned().check().unwrap();
    let verdict = joint.check().unwrap();
    assert_eq!(verdict.candidate, alone.candidate);
    assert_eq!(has(&verdict, StatedPart::Bolt), 1);
    // The report says why not the others, by lengths that are not whole as well.
    let report = joint.report(UnitSystem::Si).unwrap();
    let others: Vec<&str> = report
        .other_lengths
        .iter()
        .map(|other| other.name.as_str())
        .collect();
    assert_eq!(others, ["62.50 mm", "90 mm"]);
    assert!(
        report
            .other_lengths
            .iter()
            .all(|other| !other.reasons.is_empty())
    );
    // One that is named is taken, and judged.
    let mut named = joint.clone();
    named.bolt.length = Some(millimetres(62.5));
    let verdict = named.check().unwrap();
    assert_eq!(verdict.word(), Word::DoesNotHold);
    assert_eq!(verdict.candidate.screw.nominal, millimetres(62.5));
    // The builder takes the drawer too, and makes it again.
    let built = named.to_builder().length("70 mm").build().unwrap();
    assert_eq!(built.own.screw, Some(drawer()));
    assert_eq!(built.check().unwrap().candidate, alone.candidate);
    assert_eq!(built.to_builder().build().unwrap(), built);
}

#[test]
fn lengths_that_contradict_themselves_are_refused() {
    let refuse = |change: &dyn Fn(&mut OwnScrew)| {
        let mut own = drawer();
        change(&mut own);
        davit().with_screw(own).check().unwrap_err().to_string()
    };
    assert!(refuse(&|own| own.lengths.clear()).contains("has no length"));
    assert!(refuse(&|own| own.lengths.push(own.lengths[1])).contains("two lengths of 62.50 mm"));
    let many = |own: &mut OwnScrew| {
        own.lengths = (0..1001)
            .map(|more| {
                let length = Spread::exact(millimetres(70.0 + f64::from(more)));
                OwnLength::new(length, millimetres(36.0), millimetres(42.0))
            })
            .collect();
    };
    assert!(refuse(&many).contains("number of lengths"));
    // Told apart by less than anybody measures.
    let hair = millimetres(1e-8);
    let twin = |own: &mut OwnScrew| {
        let mut twin = own.lengths[1];
        twin.length = (twin.length.nominal + hair).plus_minus(millimetres(0.5));
        own.lengths.push(twin);
    };
    assert!(refuse(&twin).contains("two lengths"));
    // Whichever of them is wrong, even one that would not be taken.
    for at in 0..3 {
        for bad in [f64::NAN, f64::INFINITY, -1.0, 1e9] {
            let bad = millimetres(bad);
            for change in [
                |own: &mut OwnLength, bad| own.length = Spread::exact(bad),
                |own: &mut OwnLength, bad| own.length.max = bad,
                |own: &mut OwnLength, bad| own.shank = bad,
                |own: &mut OwnLength, bad| own.thread_start = bad,
            ] {
                refuse(&|own| change(&mut own.lengths[at], bad));
            }
        }
        refuse(&|own| own.lengths[at].shank = own.lengths[at].thread_start * 1.01);
        refuse(&|own| own.lengths[at].thread_start = own.lengths[at].length.min);
    }
}

#[test]
fn a_thread_that_is_dimensioned_from_the_end_is_no_better_than_its_worst() {
    let (length, thread) = (
        millimetres(70.0).plus_minus(millimetres(0.5)),
        millimetres(30.0).plus_minus(millimetres(1.0)),
    );
    let own = OwnLength::of_thread(length, thread, millimetres(4.0)).unwrap();
    // Whatever a bolt of that drawing measures, its shank is no shorter and its thread begins no later.
    for l in [69.5, 70.0, 70.5] {
        for b in [29.0, 30.0, 31.0] {
            for u in [0.0, 2.0, 4.0] {
                assert!(millimetres(l - b - u) >= own.shank - millimetres(1e-9));
                assert!(millimetres(l - b) <= own.thread_start + millimetres(1e-9));
            }
        }
    }
    for bad in [f64::NAN, f64::INFINITY, -1.0] {
        let bad = millimetres(bad);
        assert!(OwnLength::of_thread(Spread::exact(bad), thread, millimetres(4.0)).is_err());
        assert!(OwnLength::of_thread(length, Spread::exact(bad), millimetres(4.0)).is_err());
        assert!(OwnLength::of_thread(length, thread, bad).is_err());
    }
    let error = OwnLength::of_thread(length, thread, millimetres(38.6)).unwrap_err();
    assert!(error.to_string().contains("length of its run-out"));
    let error = OwnLength::of_thread(thread, length, millimetres(0.0)).unwrap_err();
    assert!(error.to_string().contains("length of its thread"));
}

/// The davit foot with countersunk bolts of the shop's own.
fn sunk(change: impl FnOnce(&mut CountersunkHead)) -> Joint {
    let mut head = CountersunkHead::new(degrees(90.0), millimetres(30.0), millimetres(8.0));
    head.proof_load = Some(newtons(80e3));
    change(&mut head);
    let only = OwnLength::new(
        millimetres(68.0).plus_minus(millimetres(0.5)),
        millimetres(34.0),
        millimetres(40.0),
    );
    let mut own = OwnScrew::new("countersunk bolt (invented)", [only]);
    own.countersunk = Some(head);
    let mut builder = Stack::builder().head_seat(HeadSeat::Countersunk {
        below_flush: Spread::exact(millimetres(0.0)),
        head_height: head.height,
    });
    for ply in davit().stack.plies() {
        builder = builder.add(ply.clone());
    }
    let washer = JointWasher::find(WasherStyle::Iso7089, &davit().bolt.thread).unwrap();
    let builder = builder.shear_planes([1]).washers_under_nut(washer, 1);
    let mut joint = davit().with_screw(own);
    joint.stack = builder.build().unwrap();
    joint
}

#[test]
fn a_countersunk_head_of_ones_own_holds_in_shear_and_is_cautioned() {
    let verdict = sunk(|_| ()).check().unwrap();
    assert!(verdict.holds(), "{}", verdict.render(UnitSystem::Si));
    assert_eq!(has(&verdict, StatedPart::Bolt), 1);
    // Unproved it may still be sheared; pulled or tightened it is undecided.
    let unproved = sunk(|head| head.proof_load = None);
    assert!(unproved.check().unwrap().holds());
    let mut pulled = unproved.clone();
    pulled.load.along = newtons(1e3);
    pulled.load.prying = Some(Prying::None);
    let mut tightened = unproved;
    let factor = NutFactor::new(0.15, 0.18, 0.22).unwrap();
    let torque = TorqueTightening::new(factor, PreloadTarget::Reusable);
    tightened.tightening = Some(Tightening::Torque(torque));
    for joint in [pulled, tightened] {
        let verdict = joint.check().unwrap();
        assert_eq!(verdict.word(), Word::Undecided);
        let open: Vec<String> = verdict.open().map(ToString::to_string).collect();
        assert!(
            open.iter()
                .any(|line| line.contains("proof load of the countersunk head")),
            "{open:#?}"
        );
    }
}

#[test]
fn a_countersunk_head_is_left_undecided_where_no_rule_is_known() {
    let undecided = |change: &dyn Fn(&mut Joint), what: &str| {
        let mut joint = sunk(|_| ());
        change(&mut joint);
        let verdict = joint.check().unwrap();
        assert!(!verdict.holds(), "{what}");
        let open: Vec<String> = verdict.open().map(ToString::to_string).collect();
        assert!(open.iter().any(|line| line.contains(what)), "{open:#?}");
    };
    let pulled = |joint: &mut Joint| {
        joint.load.along = newtons(1e3);
        joint.load.prying = Some(Prying::None);
    };
    undecided(&pulled, "pull-through of a countersunk head");
    undecided(
        &|joint| {
            pulled(joint);
            joint.load.repeats = Repeats::Between {
                across_least: joint.load.across,
                along_least: newtons(0.0),
                cycles: Some(1e6),
            };
        },
        "a countersunk head may tire first",
    );
    undecided(
        &|joint| joint.methods = JointMethods::named("aisc_asd_2016").unwrap(),
        "how a countersink counts for bearing was not read",
    );
}

#[test]
fn a_countersunk_head_that_is_none_is_refused() {
    for bad in [f64::NAN, f64::INFINITY, 0.0, -1.0] {
        for change in [
            |head: &mut CountersunkHead, bad| head.angle = degrees(bad),
            |head: &mut CountersunkHead, bad| head.diameter = millimetres(bad),
            |head: &mut CountersunkHead, bad| head.proof_load = Some(newtons(bad)),
        ] {
            assert!(sunk(|head| change(head, bad)).check().is_err(), "{bad}");
        }
    }
    for change in [
        |head: &mut CountersunkHead| head.angle = degrees(59.9),
        |head: &mut CountersunkHead| head.angle = degrees(120.1),
        // No wider than the thread, and wider than 4 d.
        |head: &mut CountersunkHead| head.diameter = millimetres(16.0),
        |head: &mut CountersunkHead| head.diameter = millimetres(64.1),
        // (30 - 16) / 2 = 7 mm of cone.
        |head: &mut CountersunkHead| head.height = millimetres(6.9),
        // 3000 MPa on the shank: 603.2 kN.
        |head: &mut CountersunkHead| head.proof_load = Some(newtons(604e3)),
    ] {
        assert!(sunk(change).check().is_err());
    }
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
    fn a_drawer_of_lengths_comes_back_as_it_went() {
        for joint in [turned().with_screw(drawer()), sunk(|_| ()), {
            let mut awkward = drawer();
            awkward.lengths[0].length.nominal = inches(3.0) + millimetres(0.1);
            awkward.lengths[1].shank = millimetres(0.1 + 0.2);
            turned().with_screw(awkward)
        }] {
            let text = serde_json::to_string(&joint).unwrap();
            let again: Joint = serde_json::from_str(&text).unwrap();
            assert_eq!(again, joint);
            assert_eq!(serde_json::to_string(&again).unwrap(), text);
        }
        // One length stands without a list.
        let one = serde_json::to_value(turned()).unwrap();
        assert!(one["bolt"]["product"]["lengths"].is_null());
        let listed = json!({ "name": "turned bolt (invented)", "bearing_diameter": "22 mm", "head_height": "10 mm",
            "lengths": [{ "length": "70 +/- 0.5 mm", "shank": "36 mm", "thread_start": "42 mm" }] });
        let mut joint = one.clone();
        joint["bolt"]["product"] = listed;
        assert_eq!(serde_json::from_value::<Joint>(joint).unwrap(), turned());
        // By thread and run-out.
        let mut joint = one;
        joint["bolt"]["product"] = json!({ "name": "x", "lengths": [
            { "length": "70 +/- 0.5 mm", "thread_length": "30 +/- 1 mm", "run_out": "4 mm" }] });
        let read: Joint = serde_json::from_value(joint).unwrap();
        let own = read.own.screw.unwrap().lengths[0];
        assert!((own.shank - millimetres(34.5)).abs() < millimetres(1e-9));
    }

    #[test]
    fn lengths_that_are_half_said_are_refused() {
        let refuse = |product: Value| {
            let mut joint = serde_json::to_value(turned()).unwrap();
            joint["bolt"]["product"] = product;
            serde_json::from_value::<Joint>(joint)
                .unwrap_err()
                .to_string()
        };
        let full = json!({ "length": "70 mm", "shank": "36 mm", "thread_start": "42 mm" });
        let with = |key: &str, value: Value| {
            let mut own = full.clone();
            own[key] = value;
            own
        };
        for (own, says) in [
            (
                json!({ "length": "70 mm", "shank": "36 mm" }),
                "shank and thread_start",
            ),
            (json!({ "length": "70 mm" }), "shank and thread_start"),
            (
                json!({ "shank": "36 mm", "thread_start": "42 mm" }),
                "length",
            ),
            (with("run_out", json!("3 mm")), "thread_length and run_out"),
            (
                with("thread_length", json!("30 mm")),
                "thread_length and run_out",
            ),
            (with("lenght", json!("70 mm")), "lenght"),
            (with("shank", json!("36 kg")), "kg"),
            (with("shank", json!("36")), "36"),
            (with("length", json!([])), "sequence"),
        ] {
            let mut alone = own.clone();
            alone["name"] = json!("x");
            for product in [alone, json!({ "name": "x", "lengths": [own] })] {
                let refused = refuse(product.clone());
                assert!(refused.contains(says), "{product}: {refused}");
            }
        }
        for lengths in [
            json!([]),
            json!({}),
            json!("70 mm"),
            json!([[]]),
            json!([1]),
        ] {
            refuse(json!({ "name": "x", "lengths": lengths }));
        }
        let mut both = full.clone();
        both["name"] = json!("x");
        both["lengths"] = json!([full]);
        assert!(refuse(both).contains("lengths: each has its own"));
        // What no description has.
        let waisted = json!({ "name": "x", "lengths": [full], "waist": "13 mm" });
        assert!(refuse(waisted).contains("waist"));
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

/// A head that is low, or of which nobody says how high it is, may shear off before the thread breaks: whatever stretches
/// the bolt is then undecided. (0.6 diameters of M16: 9.6 mm.)
#[test]
fn a_head_must_be_as_high_as_those_of_the_standards() {
    let with_height = |height: Option<f64>| {
        let mut own = own_screw();
        own.head_height = height.map(millimetres);
        let mut joint = davit().with_screw(own);
        joint.load.along = newtons(1e3);
        joint.check().unwrap()
    };
    let of_head = |verdict: &Verdict| {
        let mut open = verdict.open();
        open.find(|missing| missing.place == Place::Head && missing.mode == Mode::BoltTension)
            .map(|missing| missing.need.clone())
    };
    assert_eq!(of_head(&with_height(Some(9.6))), None);
    assert!(matches!(
        of_head(&with_height(Some(9.5))),
        Some(Need::Method(_))
    ));
    assert_eq!(of_head(&with_height(None)), Some(Need::HeadHeight));
    assert!(!with_height(None).holds() && !with_height(Some(5.0)).holds());
}
