//! Tightening and what it is counted on for: clamping, slip, stripping, fatigue; and what is lost of it.

use crate::joints::{
    BARE, check_of, clevis, faults, force, frame, governing, is_open, near, open,
    slips_by_friction, tightened, torque, used, verdict, workings_are_true,
};
use shankline::joint::{
    Account, Finding, Joint, JointMethods, JointStiffness, Repeats, Tightening, TorqueTightening,
    Word,
};
use shankline::prelude::*;
use shankline::strength::check::{Level, Mode, Place};
use shankline::strength::slip::{SlipClass, SlipMethod};
use shankline::units::{micrometres, newtons_per_millimetre, percent};

/// Bolt and members as springs; C = 300 / (300 + 1200) = 0.2.
const FIRM: JointStiffness = JointStiffness {
    bolt: newtons_per_millimetre(300e3),
    members: newtons_per_millimetre(1200e3),
};

fn set(joint: &mut Joint, torque: TorqueTightening) {
    joint.tightening = Some(Tightening::Torque(torque));
}

#[test]
fn tightening_governs_and_passes_the_proof_load() {
    let mut joint = frame();
    joint.load.across = newtons(5e3);
    joint.tightening = tightened(0.12, 0.24);
    let (mode, place, _, found) = governing(&joint);
    assert_eq!((mode, place), (Mode::Tightening, Place::Joint));
    // By hand: 0.75 x 0.18 / 0.12 = 1.125 of the proof load.
    near(found, 1.125, 1e-9);
    // By hand, with torsion (VDI 2230, plastic): face (22 + 16) / 2 = 19 mm; friction
    // (0.12 x 16 - 2 / (2 pi)) / (14.701 / (2 cos 30) + 19 / 2) = 0.08904; 102.23 kN x (0.31831 + 0.08904 x
    // 8.4876) mm = 109.80 N m; 12 x 109.80 / (pi 14.1236^3) = 148.9 MPa, 652.5 MPa of tension;
    // sqrt(652.5^2 + 3 x 148.9^2) = 701.6 of 640 MPa.
    let twisted = used(&verdict(&joint), Mode::Tightening, Place::Bolt(1));
    near(twisted, 701.6 / 640.0, 2e-4);
    assert_eq!(verdict(&joint).word(), Word::DoesNotHold);
}

#[test]
fn separation_governs() {
    let mut joint = frame();
    joint.load.along = newtons(38e3);
    joint.methods = JointMethods::machine_design(1.0);
    let mut tight = torque(0.17, 0.34);
    tight.stiffness = Some(FIRM);
    set(&mut joint, tight);
    // By hand: 0.75 x 90.868 x 0.18 / 0.34 = 36.080 kN at least; over 1 - C: 45.100 kN.
    let separation = check_of(&verdict(&joint), Mode::Separation, Place::Joint);
    near(separation.utilisation.value, 38.0 / 45.100, 1e-4);
    assert_eq!(verdict(&joint).word(), Word::Holds, "{:?}", open(&joint));
    // A design factor counts here as elsewhere.
    joint.methods = JointMethods::machine_design(1.5);
    let separation = check_of(&verdict(&joint), Mode::Separation, Place::Joint);
    near(separation.utilisation.value, 1.5 * 38.0 / 45.100, 1e-4);
    // Relaxation leaves too little of the least preload: 0.4 x 36.080 / 0.8 = 18.040 kN.
    joint.methods = JointMethods::machine_design(1.0);
    set(&mut joint, tight.relaxation(percent(60.0)));
    let (mode, .., found) = governing(&joint);
    assert_eq!(mode, Mode::Separation);
    near(found, 38.0 / 18.040, 1e-4);
}

#[test]
fn slip_governs() {
    let mut joint = frame();
    joint.load.across = newtons(8e3);
    joint.tightening = tightened(0.17, 0.25);
    joint.methods.slip = slips_by_friction(0.15, 1.25);
    let (mode, place, _, found) = governing(&joint);
    assert_eq!((mode, place), (Mode::Slip, Place::Plane(1)));
    // By hand: 0.75 x 90.87 x 0.18 / 0.25 = 49.07 kN; 0.15 x 49.07 / 1.25 = 5.888 kN.
    near(found, 8.0 / 5.888, 1e-3);
    assert_eq!(verdict(&joint).word(), Word::DoesNotHold);
    joint.load.across = newtons(5.5e3);
    assert_eq!(verdict(&joint).word(), Word::Holds, "{:?}", open(&joint));
}

/// A pair that no table names, and a preload that passes the proof load of the nut.
#[test]
fn stripping_of_a_soft_nut_governs() {
    let mut joint = frame();
    joint.bolt.grade = BoltGrade::Iso(PropertyClass::Class12_9);
    joint.nut.as_mut().unwrap().grade = Some(NutGrade::Iso898_2Class5);
    joint.tightening = tightened(0.18, 0.18);
    let (mode, place, _, found) = governing(&joint);
    assert_eq!((mode, place), (Mode::Stripping, Place::Nut));
    // By hand: 0.75 x 970 x 156.67 = 113.98 kN; class 5, style 1, M16: 610 MPa x 156.67 mm2 = 95.57 kN.
    near(found, 113.98 / 95.57, 1e-3);
    assert_eq!(verdict(&joint).account(Mode::Pairing), Account::Missing);
}

/// A bolt as soft as its plies, which takes half of the load.
#[test]
fn fatigue_governs() {
    let mut joint = frame();
    joint.bolt.product = ScrewProduct::Iso4017;
    joint.load.along = newtons(30e3);
    joint.load.repeats = Repeats::Between {
        across_least: newtons(0.0),
        along_least: newtons(0.0),
        cycles: None,
    };
    joint.methods = JointMethods::machine_design(1.0);
    let mut tight = torque(0.18, 0.18);
    tight.stiffness = Some(JointStiffness {
        bolt: FIRM.bolt,
        members: FIRM.bolt,
    });
    set(&mut joint, tight);
    let (mode, .., found) = governing(&joint);
    assert_eq!(mode, Mode::Fatigue);
    // By hand: amplitude 0.5 x 30 kN / (2 x 156.67 mm2) = 47.87 MPa on 68.151 kN / 156.67 mm2 = 435.0 MPa;
    // Se = 129 MPa, Sut = 800 MPa: 129 x (800 - 435.0) / (800 + 129) = 50.68 MPa.
    near(found, 47.87 / 50.68, 1e-3);
    assert_eq!(verdict(&joint).word(), Word::Holds, "{:?}", open(&joint));
    // A design factor multiplies the amplitude.
    joint.methods.margin = 1.2;
    let found = used(&verdict(&joint), Mode::Fatigue, Place::Bolt(1));
    near(found, 1.2 * 47.87 / 50.68, 1e-3);
}

/// EN 1993-1-8 has no allowable loads: its slip cannot stand beside the others of this joint, which are.
#[test]
fn slip_of_another_level_is_missing() {
    let mut joint = frame();
    joint.load.across = newtons(1e3);
    joint.tightening = tightened(0.16, 0.20);
    joint.methods.slip = shankline::joint::Slip::Resisted(SlipMethod::En1993 {
        class: SlipClass::B,
        serviceability: false,
    });
    assert_eq!(verdict(&joint).account(Mode::Slip), Account::Missing);
    assert!(
        is_open(&joint, "slip, shear plane 1: "),
        "{:?}",
        open(&joint)
    );
    assert_eq!(verdict(&joint).word(), Word::Undecided);
}

#[test]
fn the_running_torque_is_in_the_torque_and_scatters_the_preload() {
    let mut joint = frame();
    joint.nut.as_mut().unwrap().style = NutStyle::Iso7040;
    joint.load.across = newtons(5e3);
    joint.tightening = tightened(0.15, 0.22);
    assert!(
        verdict(&joint)
            .findings
            .contains(&Finding::AddRunningTorque)
    );
    let running = Spread {
        min: newton_metres(4.0),
        nominal: newton_metres(14.0),
        max: newton_metres(24.0),
    };
    set(&mut joint, torque(0.15, 0.22).prevailing(running));
    assert!(
        !verdict(&joint)
            .findings
            .contains(&Finding::AddRunningTorque)
    );
    let preload = verdict(&joint).preload.unwrap();
    // By hand: 0.75 x 90.868 = 68.151 kN; T = 0.18 x 68.151 x 16 + 14 = 210.27 N m;
    // most (210.27 - 4) / (0.15 x 16) = 85.948 kN, least (210.27 - 24) / (0.22 x 16) = 52.919 kN.
    assert!((preload.torque - newton_metres(210.274)).abs() < newton_metres(0.01));
    assert!((preload.preload.max - newtons(85_948.0)).abs() < newtons(5.0));
    assert!((preload.preload.min - newtons(52_919.0)).abs() < newtons(5.0));
    workings_are_true(&joint);
}

#[test]
fn settling_takes_preload_where_the_stiffness_is_known() {
    let mut joint = frame();
    joint.load.across = newtons(5e3);
    let mut tight = torque(0.18, 0.18);
    tight.settling = Some(micrometres(11.0));
    set(&mut joint, tight);
    crate::joints::with_ply(&mut joint, 1, |ply| ply.material = None);
    assert!(is_open(&joint, "preload lost: neither the stiffness"));
    tight.stiffness = Some(FIRM);
    set(&mut joint, tight);
    let preload = verdict(&joint).preload.unwrap();
    // By hand: 11 um x 1 / (1/300 + 1/1200) kN/mm = 11 um x 240 kN/mm = 2640 N.
    assert!((preload.settling_loss - newtons(2640.0)).abs() < newtons(1e-6));
    assert!((preload.preload.min - preload.in_service - newtons(2640.0)).abs() < newtons(1e-6));

    // What settles away cannot keep the faces together.
    joint.load.along = newtons(20e3);
    tight.settling = Some(micrometres(150.0));
    set(&mut joint, tight);
    assert_eq!(governing(&joint).0, Mode::Separation);
    // By hand: 68.151 - 150 um x 240 kN/mm = 32.151 kN, over 0.8; the factor of 2 is in the load.
    let separation = check_of(&verdict(&joint), Mode::Separation, Place::Joint);
    near(force(separation.resistance), 40_189.0, 1e-4);
    near(force(separation.demand), 40e3, 1e-9);
}

/// Nobody who says nothing of relaxation has a preload to count on.
#[test]
fn relaxation_is_asked_for() {
    let mut joint = frame();
    joint.load.across = newtons(5e3);
    let mut tight = torque(0.18, 0.18);
    tight.relaxation = None;
    set(&mut joint, tight);
    assert_eq!(
        open(&joint),
        ["preload lost: nobody says what relaxation and settling take off the preload"]
    );
    joint.tightening = None;
    assert!(is_open(&joint, "tightening: nobody says how"));
    joint.tightening = Some(Tightening::Snug);
    assert_eq!(verdict(&joint).word(), Word::Holds, "{:?}", open(&joint));
}

#[test]
fn preload_that_is_gone_is_a_fault() {
    let mut joint = frame();
    joint.load.along = newtons(8e3);
    set(&mut joint, torque(0.18, 0.18).relaxation(percent(100.0)));
    assert_eq!(faults(&joint), [Finding::NoPreloadLeft]);
    joint.load.across = newtons(1e3);
    joint.methods.slip = slips_by_friction(0.2, 1.0);
    assert_eq!(faults(&joint), [Finding::NoPreloadLeft, Finding::Slips]);
}

/// Numbers that make no sense are refused at the door, not answered with "undecided".
#[test]
fn senseless_numbers_of_the_tightening_are_refused() {
    let refused = |tight: TorqueTightening| {
        let mut joint = frame();
        joint.load.across = newtons(1e3);
        set(&mut joint, tight);
        joint.check().unwrap_err().to_string()
    };
    let sound = torque(0.18, 0.18);
    for share in [-1.0, 120.0, f64::NAN] {
        let error = refused(sound.relaxation(percent(share)));
        assert!(error.starts_with("relaxation is"), "{error}");
    }
    for settling in [-1.0, f64::INFINITY] {
        let error = refused(TorqueTightening {
            settling: Some(micrometres(settling)),
            ..sound
        });
        assert!(error.starts_with("settling is"), "{error}");
    }
    let backwards = Spread {
        min: newton_metres(9.0),
        nominal: newton_metres(5.0),
        max: newton_metres(1.0),
    };
    let error = refused(sound.prevailing(backwards));
    assert!(error.contains("torque"), "{error}");
    let error = refused(TorqueTightening {
        stiffness: Some(JointStiffness {
            bolt: newtons_per_millimetre(0.0),
            ..FIRM
        }),
        ..sound
    });
    assert!(error.contains("stiffness"), "{error}");
}

#[test]
fn a_gap_under_preload_is_found() {
    let mut joint = clevis();
    joint.tightening = tightened(0.16, 0.20);
    let gaps = |joint: &Joint| {
        let findings = verdict(joint).findings;
        let gap = |finding: &&Finding| matches!(finding, Finding::GapUnderPreload { .. });
        findings.iter().filter(gap).count()
    };
    assert_eq!(gaps(&joint), 2);
    joint.tightening = Some(Tightening::Snug);
    assert_eq!(gaps(&joint), 0);
}

/// ASTM F593 has no proof load: its preload rests on the yield strength and is held against that.
#[test]
fn preload_without_a_proof_load_is_held_against_yield() {
    let mut joint = frame();
    joint.bolt.product = ScrewProduct::HexCapScrew;
    joint.bolt.thread = "5/8-11 UNC".parse().unwrap();
    joint.bolt.grade = BoltGrade::Astm(AstmGrade::F593Group1Cw1);
    joint.bolt.finish = Some(Finish::Bare(
        shankline::tables::galvanic::Metal::Stainless18Chromium,
    ));
    joint.nut = Some(shankline::joint::JointNut {
        style: NutStyle::Hex,
        grade: None,
        finish: BARE,
    });
    joint.stack = Stack::builder()
        .ply("lid", Spread::exact(millimetres(20.0)))
        .ply("rim", Spread::exact(millimetres(20.0)))
        .build()
        .unwrap();
    joint.load.along = newtons(1e3);
    joint.tightening = tightened(0.16, 0.21);
    let found = verdict(&joint);
    let tightening = check_of(&found, Mode::Tightening, Place::Joint);
    assert_eq!(tightening.level, Level::Nominal);
    assert!(
        tightening.method.citation.contains("yield load"),
        "{tightening:?}"
    );
    // By hand: 0.75 of 0.85 of the yield load (Shigley, 9th ed., 8-9), x 0.18 / 0.16.
    near(tightening.utilisation.value, 0.717_187_5, 1e-9);
}
