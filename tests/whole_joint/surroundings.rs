//! Heat, turning, corrosion, coatings, and a length that does not fit.

use crate::joints::{faults, frame, is_open, open, plate, plus_minus, stacked, text, verdict};
use shankline::joint::{
    Environment, Finding, Finish, Joint, JointNut, JointPly, JointWasher, NutReason, Part, Repeats,
    Scope, SetAside, Word,
};
use shankline::material::Hydrogen;
use shankline::prelude::*;
use shankline::strength::check::{Check, Mode};
use shankline::tables::galvanic::{Exposure, Metal};
use shankline::units::{celsius, degrees, volts};

fn loaded() -> Joint {
    let mut joint = frame();
    joint.load.across = newtons(8e3);
    joint
}

#[test]
fn what_is_not_known_is_said() {
    let mut joint = loaded();
    joint.load.along = newtons(8e3);
    joint.load.prying = None;
    joint.tightening = None;
    joint.nut.as_mut().unwrap().grade = None;
    joint.environment.exposure = Exposure::Normal;
    for part in [
        "thread stripping, nut: the grade",
        "pair of bolt and nut, nut: the grade",
        "prying: nobody says",
        "separation: nobody says how the bolt is tightened",
        "corrosion, ply 1: what a surface is made of",
    ] {
        assert!(is_open(&joint, part), "{part}: {:?}", open(&joint));
    }
    assert_eq!(verdict(&joint).word(), Word::Undecided);
}

/// A load that reverses is as great one way as the other at most: everything but fatigue goes by the greater.
#[test]
fn a_load_that_is_greater_the_other_way_is_refused() {
    let mut joint = loaded();
    let between = |least: f64| Repeats::Between {
        across_least: newtons(least),
        along_least: newtons(0.0),
        cycles: None,
    };
    joint.load.repeats = between(-8e3);
    assert!(joint.check().is_ok());
    joint.load.repeats = between(-50e3);
    let error = joint.check().unwrap_err().to_string();
    assert!(
        error.starts_with("least load across the axis is -50"),
        "{error}"
    );
}

/// The bolt alone may be asked about: nothing of plies or nut is wanted then, and the word says so.
#[test]
fn the_bolt_alone_needs_no_plies() {
    let mut joint = loaded();
    let ply = || JointPly::new("plate", plus_minus(20.0, 0.3));
    joint.stack = stacked([ply(), ply()]);
    joint.nut.as_mut().unwrap().grade = None;
    joint.bolt.finish = None;
    joint.tightening = None;
    assert_eq!(verdict(&joint).word(), Word::Undecided);
    joint.scope = Scope::Bolt;
    assert_eq!(verdict(&joint).word(), Word::Holds, "{:?}", open(&joint));
    joint.load.across = newtons(40e3);
    assert_eq!(verdict(&joint).word(), Word::DoesNotHold);
}

/// What is set aside no longer keeps the word open; what speaks against the joint still does.
#[test]
fn what_is_set_aside_counts_only_against() {
    let mut joint = loaded();
    joint.nut.as_mut().unwrap().grade = None;
    assert_eq!(verdict(&joint).word(), Word::Undecided);
    joint.set_aside = [Mode::Stripping, Mode::Pairing]
        .map(|mode| SetAside::new(mode, "own test (invented)"))
        .to_vec();
    assert_eq!(verdict(&joint).word(), Word::Holds, "{:?}", open(&joint));
    joint.set_aside = vec![SetAside::new(Mode::BoltShear, "own test (invented)")];
    joint.load.across = newtons(40e3);
    assert_eq!(verdict(&joint).word(), Word::DoesNotHold);
}

#[test]
fn heat_and_turning_are_found() {
    let mut joint = loaded();
    joint.environment = Environment {
        hottest: celsius(200.0),
        rotates: true,
        vibration: true,
        ..Environment::workshop()
    };
    let found = verdict(&joint);
    let single: Vec<&Check> = found.checks.iter().filter(|check| !check.holds()).collect();
    // The lap of 40 mm turns: its bolt is bent more than it bears, 8 kN x 20.3 mm.
    assert!(
        single.iter().all(|check| matches!(
            check.mode.to_string().as_str(),
            "bolt bending" | "combined loads"
        )),
        "{single:?}"
    );
    let faults: Vec<Finding> = faults(&joint);
    assert_eq!(
        faults,
        [
            Finding::Nut(NutReason::SpinsFree),
            Finding::Nut(NutReason::FrictionLockTurns),
            Finding::BoltTooHot {
                limit: celsius(150.0)
            },
        ]
    );
    assert_eq!(found.word(), Word::DoesNotHold);
}

/// The frame with a coated bolt and nut on plies and washers of steel.
fn coated(finish: Finish, exposure: Exposure) -> Joint {
    let mut joint = loaded();
    joint.bolt.finish = Some(finish);
    let nut = joint.nut.as_mut().unwrap();
    nut.finish = Some(finish);
    if finish == Finish::Bare(Metal::Stainless18Chromium) {
        joint.bolt.grade = BoltGrade::Stainless(StainlessClass::A2_70);
        nut.grade = Some(NutGrade::Iso3506_2ClassA2_70);
    }
    joint.environment.exposure = exposure;
    joint.stack = on_metal(Some(Metal::Steel));
    joint
}

/// Plates and washers of steel; the second plate of something.
fn on_metal(second: Option<Metal>) -> Stack {
    let washer = JointWasher::find(WasherStyle::Iso7089, &"M16".parse().unwrap()).unwrap();
    let washer = washer.metal(Metal::Steel);
    let ply = plus_minus(20.0, 0.3);
    let mut bracket = plate("bracket", ply);
    bracket.metal = second;
    Stack::builder()
        .washer_under_head(washer.clone())
        .add(plate("plate", ply).metal(Metal::Steel))
        .add(bracket)
        .shear_planes([1])
        .washers_under_nut(washer, 1)
        .build()
        .unwrap()
}

#[test]
fn unlike_metals_are_found() {
    // By hand: stainless 0.50 and steel 0.85 are 0.35 V apart; 0.25 V is permitted, 0.50 V where it is controlled.
    let stainless = Finish::Bare(Metal::Stainless18Chromium);
    let joint = coated(stainless, Exposure::Normal);
    let expected = |anode| Finding::Galvanic {
        anode,
        cathode: Part::Bolt,
        difference: volts(0.85) - volts(0.50),
        permitted: volts(0.25),
    };
    let found = faults(&joint);
    for part in [
        Part::Ply(1),
        Part::Ply(2),
        Part::WasherUnderHead,
        Part::WasherUnderNut,
    ] {
        assert!(found.contains(&expected(part)), "{part}: {found:?}");
    }
    assert_eq!(found.len(), 5); // and the washer under the nut, of the nut
    assert_eq!(verdict(&joint).word(), Word::DoesNotHold);
    let text = text(&verdict(&joint));
    assert!(
        text.contains("ply 1 corrodes on bolt, 0.35 V apart, at most 0.25 V"),
        "{text}"
    );
    assert_eq!(faults(&coated(stainless, Exposure::Controlled)), []);
    let steel = coated(Finish::Bare(Metal::Steel), Exposure::Harsh);
    assert_eq!(faults(&steel), []);

    // Described in part only: what is known is checked, the rest is asked for.
    let mut half = coated(stainless, Exposure::Normal);
    half.stack = on_metal(None);
    assert!(faults(&half).contains(&expected(Part::Ply(1))));
    assert!(!faults(&half).contains(&expected(Part::Ply(2))));
    assert!(is_open(&half, "corrosion, ply 2: "));
    half.bolt.finish = None;
    assert!(is_open(&half, "corrosion, bolt 1: the coating of the bolt"));
    // Nobody need say so where it is dry.
    half.environment.exposure = Exposure::Dry;
    assert!(!is_open(&half, "corrosion"));
}

/// Timber is no metal: only bolt, nut and washers are left, and they are alike.
#[test]
fn timber_does_not_corrode() {
    let stainless = Finish::Bare(Metal::Stainless18Chromium);
    let mut joint = coated(stainless, Exposure::Harsh);
    let washer = JointWasher::find(WasherStyle::Iso7093, &joint.bolt.thread).unwrap();
    let washer = washer.metal(Metal::Stainless18Chromium);
    let rail =
        JointPly::new("rail", plus_minus(40.0, 1.0)).timber("Douglas fir-larch", degrees(0.0));
    joint.stack = Stack::builder()
        .washer_under_head(washer.clone())
        .add(rail.clone())
        .add(rail)
        .shear_planes([1])
        .washers_under_nut(washer, 1)
        .build()
        .unwrap();
    assert!(!is_open(&joint, "corrosion"), "{:?}", open(&joint));
    let corroded = |found: &Finding| matches!(found, Finding::Galvanic { .. });
    assert!(!faults(&joint).iter().any(corroded));
}

#[test]
fn coatings_of_hard_bolts_are_found() {
    let plated = |class, baked| {
        let mut joint = coated(Finish::ZincPlated { baked }, Exposure::Controlled);
        joint.bolt.grade = BoltGrade::Iso(class);
        let nut = joint.nut.as_mut().unwrap();
        nut.grade = Some(NutGrade::Iso898_2Class12);
        verdict(&joint)
    };
    let not_baked = Finding::Hydrogen(Hydrogen::NotBaked { hardness: 44.0 });
    let faults_of = |class, baked| plated(class, baked).faults().copied().collect::<Vec<_>>();
    assert_eq!(faults_of(PropertyClass::Class10_9, false), []); // up to 39 HRC
    assert_eq!(faults_of(PropertyClass::Class12_9, false), [not_baked]);
    assert_eq!(faults_of(PropertyClass::Class12_9, true), []);
    let note = Finding::Hydrogen(Hydrogen::PlatedHard { hardness: 44.0 });
    let baked = plated(PropertyClass::Class12_9, true);
    assert!(baked.findings.contains(&note)); // a note, no fault

    let mut galvanized = coated(Finish::HotDipGalvanized, Exposure::Controlled);
    galvanized.bolt.grade = BoltGrade::Iso(PropertyClass::Class12_9);
    let too_hard =
        |found: &Finding| matches!(found, Finding::Hydrogen(Hydrogen::TooHardToDip { .. }));
    assert!(
        faults(&galvanized).iter().any(too_hard),
        "{:?}",
        faults(&galvanized)
    );

    let mut hot = coated(Finish::CadmiumPlated { baked: false }, Exposure::Controlled);
    hot.environment.hottest = celsius(240.0);
    let limit = shankline::units::fahrenheit(446.0);
    for part in [Part::Bolt, Part::Nut] {
        assert!(faults(&hot).contains(&Finding::CoatingTooHot { part, limit }));
    }
}

#[test]
fn structural_bolts_of_the_hardest_grade_stay_bare() {
    let dipped = Finish::HotDipGalvanized;
    let mut joint = loaded();
    joint.bolt.product = ScrewProduct::StructuralBolt;
    joint.bolt.thread = "5/8-11 UNC".parse().unwrap();
    joint.bolt.grade = BoltGrade::Astm(AstmGrade::F3125A490Type1);
    joint.bolt.finish = Some(dipped);
    joint.nut = Some(JointNut {
        style: NutStyle::HeavyHex,
        grade: None,
        finish: Some(dipped),
    });
    let ply = plus_minus(20.0, 0.3);
    joint.stack = Stack::builder()
        .add(plate("plate", ply))
        .add(plate("bracket", ply))
        .shear_planes([1])
        .build()
        .unwrap();
    let forbidden = Finding::Hydrogen(Hydrogen::CoatingForbidden);
    assert!(faults(&joint).contains(&forbidden), "{:?}", faults(&joint));
}

#[test]
fn a_length_that_does_not_fit_is_a_fault_with_its_reason() {
    let mut joint = loaded();
    let ply = plus_minus(20.0, 0.3);
    joint.stack = stacked([plate("plate", ply), plate("bracket", ply)]);
    joint.bolt.length = Some(millimetres(120.0));
    let found = verdict(&joint);
    assert_eq!(found.word(), Word::DoesNotHold);
    let text = text(&found);
    assert!(text.contains("DOES NOT HOLD"), "{text}");
    assert!(
        text.contains("FAULT  length: nut reaches the run-out"),
        "{text}"
    );
}
