//! The whole check: each mode can govern, checks against hand calculations, and no input breaks it.

use core::f64::consts::PI;

use proptest::prelude::*;
use shankline::error::Amount;
use shankline::joint::{
    Contact, Environment, Finding, Finish, Joint, JointBolt, JointLoad, JointMethods, JointNut,
    JointPly, JointStiffness, JointTapped, NutReason, Part, Sheet, Tightening,
};
use shankline::prelude::*;
use shankline::strength::check::{Check, Level, Mode, Place};
use shankline::strength::slip::{SlipClass, SlipMethod};
use shankline::strength::timber::TimberMethod;
use shankline::tables::galvanic::{Exposure, Metal};
use shankline::units::{celsius, newtons_per_millimetre, percent, volts};

/// Two plates of a mezzanine frame and one M16 bolt; invented.
fn frame() -> Joint {
    let thread: Thread = "M16".parse().unwrap();
    let ply = millimetres(20.0).plus_minus(millimetres(0.3));
    let washer = Washer::find(WasherStyle::Iso7089, &thread).unwrap();
    Joint {
        title: "frame plate".into(),
        bolt: JointBolt {
            product: ScrewProduct::Iso4014,
            thread,
            grade: BoltGrade::Iso(PropertyClass::Class8_8),
            length: None,
        },
        nut: Some(JointNut {
            style: NutStyle::Iso4032,
            grade: Some(NutGrade::Iso898_2Class8),
        }),
        tapped: None,
        stack: Stack::builder()
            .ply("plate", ply)
            .ply("bracket", ply)
            .shear_planes([1])
            .washers_under_nut(washer.thickness().unwrap(), 1)
            .build()
            .unwrap(),
        plies: vec![
            JointPly {
                material: Some("ASTM A36 steel".into()),
                ..JointPly::default()
            };
            2
        ],
        load: JointLoad::default(),
        environment: Environment::default(),
        tightening: None,
        rules: LengthRules::fabrication(UnitSystem::Si),
        methods: JointMethods::machine_design(2.0),
    }
}

// What the field of a joint takes.
#[allow(clippy::unnecessary_wraps)]
fn tightened(min: f64, max: f64) -> Option<Tightening> {
    let k = NutFactor::new(min, 0.18, max).unwrap();
    Some(Tightening::new(k, PreloadTarget::Reusable))
}

fn not_checked(joint: &Joint) -> Vec<String> {
    let verdict = joint.check().unwrap();
    verdict
        .not_checked
        .iter()
        .map(ToString::to_string)
        .collect()
}

fn governing(joint: &Joint) -> Check {
    *joint.check().unwrap().governing().unwrap()
}

#[test]
fn shear_of_the_bolt_governs() {
    let mut joint = frame();
    joint.load.across = newtons(30e3);
    let worst = governing(&joint);
    assert_eq!(worst.mode, Mode::BoltShear);
    // By hand: pi/4 x 16^2 = 201.06 mm2 on the shank; 0.577 x 640 x 201.06 / 2 = 37.12 kN.
    assert!((worst.utilisation.value - 30.0 / 37.124).abs() < 1e-4);
}

#[test]
fn tension_of_the_bolt_governs() {
    let mut joint = frame();
    joint.load.along = newtons(40e3);
    let worst = governing(&joint);
    assert_eq!(
        (worst.mode, worst.level),
        (Mode::BoltTension, Level::Allowable)
    );
    // By hand: At = pi/4 (16 - 0.9382 x 2)^2 = 156.67 mm2; 580 x 156.67 / 2 = 45.43 kN. (ISO 898-1
    // rounds the proof stress of 8.8 up to M16 to 580 MPa.)
    assert!((worst.utilisation.value - 40.0 / 45.434).abs() < 1e-4);
}

#[test]
fn both_together_govern() {
    let mut joint = frame();
    joint.load.across = newtons(25e3);
    joint.load.along = newtons(30e3);
    let worst = governing(&joint);
    assert_eq!(worst.mode, Mode::Combined);
    // By hand: S = 25 / 37.124 = 0.6734, T = 30 / 45.434 = 0.6603; sqrt(S^2 + T^2) = 0.9431.
    assert!((worst.utilisation.value - 0.9431).abs() < 1e-4);
}

#[test]
fn tightening_governs_and_passes_the_proof_load() {
    let mut joint = frame();
    joint.load.across = newtons(5e3);
    joint.tightening = tightened(0.12, 0.24);
    let worst = governing(&joint);
    assert_eq!(worst.mode, Mode::Tightening);
    // By hand: 0.75 x 0.18 / 0.12 = 1.125 of the proof load.
    assert!((worst.utilisation.value - 1.125).abs() < 1e-9);
    assert!(!joint.check().unwrap().holds());
}

#[test]
fn separation_governs() {
    let mut joint = frame();
    joint.load.along = newtons(38e3);
    joint.tightening = tightened(0.17, 0.34);
    joint.methods = JointMethods::machine_design(1.0);
    let verdict = joint.check().unwrap();
    let separation = verdict
        .checks
        .iter()
        .find(|check| check.mode == Mode::Separation);
    assert!(separation.unwrap().utilisation.value > 0.7);
    // Relaxation leaves too little of the least preload.
    joint.tightening.as_mut().unwrap().relaxation = percent(60.0);
    assert_eq!(governing(&joint).mode, Mode::Separation);
}

#[test]
fn slip_governs() {
    let mut joint = frame();
    joint.load.across = newtons(8e3);
    joint.tightening = tightened(0.17, 0.25);
    joint.methods.slip = Some(SlipMethod::Stated {
        friction: 0.15,
        safety_factor: 1.25,
    });
    let worst = governing(&joint);
    assert_eq!(worst.mode, Mode::Slip);
    // By hand: 0.75 x 90.87 x 0.18 / 0.25 = 49.07 kN; 0.15 x 49.07 / 1.25 = 5.888 kN.
    assert!((worst.utilisation.value - 8.0 / 5.888).abs() < 1e-3);
}

#[test]
fn stripping_of_a_soft_nut_governs() {
    let mut joint = frame();
    joint.bolt.grade = BoltGrade::Iso(PropertyClass::Class12_9);
    joint.nut.as_mut().unwrap().grade = Some(NutGrade::Iso898_2Class5);
    joint.tightening = tightened(0.18, 0.18);
    let verdict = joint.check().unwrap();
    assert_eq!(verdict.governing().unwrap().mode, Mode::Stripping);
    assert!(
        verdict
            .findings
            .iter()
            .any(|finding| matches!(finding, Finding::NutWeaker { .. }))
    );
}

#[test]
fn fatigue_governs() {
    let mut joint = frame();
    joint.bolt.product = ScrewProduct::Iso4017;
    joint.nut.as_mut().unwrap().grade = None;
    joint.load.along = newtons(60e3);
    joint.load.alternates = true;
    joint.tightening = tightened(0.18, 0.18);
    joint.methods = JointMethods::machine_design(1.0);
    // Soft plies: the bolt takes much of the load.
    for ply in &mut joint.plies {
        ply.material = Some("6061-T6 aluminium, A-basis".into());
    }
    let worst = governing(&joint);
    assert_eq!(worst.mode, Mode::Fatigue);
}

/// The frame with a beam of C24 between its plates; M16 bolt of class 8.8, EN 1995.
fn timbered() -> Joint {
    let mut joint = plated();
    let plate = millimetres(8.0).plus_minus(millimetres(0.0));
    joint.stack = Stack::builder()
        .ply("plate", plate)
        .ply("beam", millimetres(100.0).plus_minus(millimetres(0.0)))
        .ply("plate", plate)
        .shear_planes([1, 2])
        .build()
        .unwrap();
    for ply in &mut joint.plies {
        ply.hole = Some(millimetres(17.0));
        ply.edge_distance = Some(millimetres(40.0));
    }
    let beam = JointPly {
        timber: Some("C24".into()),
        end_distance: Some(millimetres(120.0)),
        ..JointPly::default()
    };
    joint.plies.insert(1, beam);
    joint.methods = JointMethods::en_1993();
    joint.methods.timber = Some(TimberMethod::En1995 {
        axial: newtons(0.0),
        kmod: 0.7,
        gamma_m: 1.3,
    });
    joint
}

#[test]
fn yield_in_timber_governs() {
    let joint = timbered();
    let verdict = joint.check().unwrap();
    let worst = *verdict.governing().unwrap();
    assert_eq!(
        (worst.mode, worst.level),
        (Mode::TimberYield, Level::Design)
    );
    // By hand: fh = 0.082 (1 - 0.16) 350 = 24.108 MPa; My = 0.3 x 800 x 16^2.6 = 324 283 N mm; thin plates:
    // 0.5 x 24.108 x 100 x 16 = 19 286 N, 1.15 sqrt(2 x 324 283 x 24.108 x 16) = 18 189 N a plane;
    // 2 x 18 189 x 0.7 / 1.3 = 19 588 N.
    assert!((worst.utilisation.value - 20.0 / 19.588).abs() < 1e-4);
    // The steel plates are checked as before, the timber is not taken for one.
    let places: Vec<Place> = verdict.checks.iter().map(|check| check.place).collect();
    assert!(
        places.contains(&Place::Ply(1)) && !places.contains(&Place::Ply(2)),
        "{places:?} {:?}",
        verdict.not_checked
    );
}

#[test]
fn timber_without_a_method_or_of_another_build_is_not_checked() {
    let reason = |joint: &Joint| {
        let verdict = joint.check().unwrap();
        let mut found = verdict.not_checked.iter().map(ToString::to_string);
        found.find(|line| line.starts_with("yield in timber"))
    };
    let mut joint = timbered();
    assert_eq!(reason(&joint), None);
    joint.methods.level = Level::Allowable;
    joint.methods.shear = JointMethods::machine_design(2.0).shear;
    joint.methods.plies = JointMethods::machine_design(2.0).plies;
    assert!(reason(&joint).unwrap().contains("level of the loads"));
    joint.methods.timber = None;
    assert!(reason(&joint).unwrap().contains("no method"));
    // Nor is a gap in the equations of EN.
    let mut joint = timbered();
    let plate = millimetres(8.0).plus_minus(millimetres(0.0));
    joint.stack = Stack::builder()
        .ply("plate", plate)
        .gap(millimetres(2.0).plus_minus(millimetres(1.0)))
        .ply("beam", millimetres(100.0).plus_minus(millimetres(0.0)))
        .ply("plate", plate)
        .shear_planes([1, 2])
        .build()
        .unwrap();
    assert!(reason(&joint).unwrap().contains("gap"));
    // An American timber has no European density.
    let mut joint = timbered();
    joint.plies[1].timber = Some("Hem-Fir".into());
    assert!(
        reason(&joint)
            .unwrap()
            .contains("EN 1995-1-1 starts from it")
    );
    // What is steel cannot be timber.
    joint.plies[1].material = Some("ASTM A36 steel".into());
    assert!(joint.check().is_err());
}

/// Where one plane takes more, the timber is held to as much at the other.
#[test]
fn unequal_planes_of_timber_count_by_the_greater() {
    let yields = |joint: &Joint| {
        let verdict = joint.check().unwrap();
        let mut checks = verdict.checks.iter();
        let found = checks
            .find(|check| check.mode == Mode::TimberYield)
            .unwrap();
        found.utilisation.value
    };
    let mut joint = timbered();
    let even = yields(&joint);
    let plate = millimetres(8.0).plus_minus(millimetres(0.0));
    joint.stack = Stack::builder()
        .ply("plate", plate)
        .ply("beam", millimetres(100.0).plus_minus(millimetres(0.0)))
        .ply("plate", plate)
        .shear_planes([1, 2])
        .plane_shares([0.7, 0.3])
        .build()
        .unwrap();
    assert!((yields(&joint) / even - 1.4).abs() < 1e-12);
}

#[test]
fn short_ends_of_timber_are_faults() {
    let mut joint = timbered();
    joint.plies[1].end_distance = Some(millimetres(100.0));
    let text = joint.check().unwrap().render(UnitSystem::Si).to_string();
    assert!(
        text.contains("FAULT  ply 2: end distance 100.00 mm, must be at least 112.00 mm"),
        "{text}"
    );
}

#[test]
fn thread_in_a_plane_of_timber_takes_the_root_by_nds() {
    let mut joint = timbered();
    let post = |timber: &str| JointPly {
        timber: Some(timber.into()),
        ..JointPly::default()
    };
    let ply = millimetres(38.0).plus_minus(millimetres(0.0));
    joint.stack = Stack::builder()
        .ply("joist", ply)
        .ply("post", ply)
        .shear_planes([1])
        .build()
        .unwrap();
    joint.plies = vec![post("Southern Pine"), post("Southern Pine")];
    joint.methods = JointMethods::machine_design(2.0);
    joint.methods.timber = Some(TimberMethod::Nds {
        bending_yield: ksi(45.0),
        adjustment: 1.0,
    });
    let allowable = |product: ScrewProduct| {
        let mut joint = joint.clone();
        joint.bolt.product = product;
        let verdict = joint.check().unwrap();
        let mut checks = verdict.checks.iter();
        let found = checks
            .find(|check| check.mode == Mode::TimberYield)
            .unwrap();
        20e3 / found.utilisation.value
    };
    // A gap between the timbers costs strength.
    let mut apart = joint.clone();
    apart.stack = Stack::builder()
        .ply("joist", ply)
        .gap(millimetres(10.0).plus_minus(millimetres(2.0)))
        .ply("post", ply)
        .shear_planes([1])
        .build()
        .unwrap();
    let verdict = apart.check().unwrap();
    let bends = |check: &Check| check.mode == Mode::BoltBending;
    assert!(!verdict.checks.iter().any(bends)); // that is in the yield of the timber
    let mut checks = verdict.checks.iter();
    let found = checks
        .find(|check| check.mode == Mode::TimberYield)
        .unwrap();
    // By hand, mode II by the general equations: q = 42.472 x 16 = 679.55 N/mm; A = 1/(2 q), B = 38 + 12 mm,
    // C = q 38^2 / 2 N mm; Z = (sqrt(B^2 + 4 A C) - B) / (2 A) = q (sqrt(50^2 + 38^2) - 50) = 8 700 N; over 3.6.
    let q: f64 = 6160.0 * 6.894_757e-3 * 16.0;
    let by_hand = q * ((50_f64.powi(2) + 38_f64.powi(2)).sqrt() - 50.0) / 3.6;
    assert!((20e3 / found.utilisation.value / by_hand - 1.0).abs() < 1e-5);
    // By hand, mode II of equal members: k1 = sqrt(2) - 1, k1 D l Fe / 3.6; D = 16 mm on the shank, 16 - 1.226869 x 2
    // = 13.546 mm at the root; Fe = 6160 psi = 42.472 MPa.
    let on = |d: f64| (2_f64.sqrt() - 1.0) * d * 38.0 * 6160.0 * 6.894_757e-3 / 3.6;
    assert!((allowable(ScrewProduct::Iso4014) / on(16.0) - 1.0).abs() < 1e-5);
    assert!((allowable(ScrewProduct::Iso4017) / on(13.546_262) - 1.0).abs() < 1e-5);
}

fn plated() -> Joint {
    let mut joint = frame();
    for ply in &mut joint.plies {
        ply.hole = Some(millimetres(18.0));
        ply.end_distance = Some(millimetres(40.0));
        ply.width = Some(millimetres(80.0));
    }
    joint.load.across = newtons(20e3);
    joint
}

/// Plies of 19.7 mm in the worst case; ASTM A36, 36 ksi = 248.21 MPa; design factor 2.
#[test]
fn bearing_of_a_ply_governs() {
    let mut joint = plated();
    joint.bolt.grade = BoltGrade::Iso(PropertyClass::Class12_9);
    joint.nut.as_mut().unwrap().grade = None;
    joint.load.across = newtons(35e3);
    let worst = governing(&joint);
    assert_eq!(worst.mode, Mode::Bearing);
    // By hand: 248.21 x 16 x 19.7 / 2 = 39.118 kN.
    assert!((worst.utilisation.value - 35.0 / 39.118).abs() < 1e-4);
}

#[test]
fn tear_out_of_a_ply_governs() {
    let mut joint = plated();
    joint.plies[1].end_distance = Some(millimetres(19.0));
    let worst = governing(&joint);
    assert_eq!(worst.mode, Mode::TearOut);
    // By hand, 19 - 18 / 2 = 10 mm from the edge of the hole: 0.577 x 248.21 x 2 x 10 x 19.7 / 2 = 28.214 kN.
    assert!((worst.utilisation.value - 20.0 / 28.214).abs() < 1e-4);
}

#[test]
fn net_section_of_a_ply_governs() {
    let mut joint = plated();
    joint.plies[0].width = Some(millimetres(28.0));
    let worst = governing(&joint);
    assert_eq!(worst.mode, Mode::NetSection);
    // By hand: 248.21 x (28 - 18) x 19.7 / 2 = 24.449 kN.
    assert!((worst.utilisation.value - 20.0 / 24.449).abs() < 1e-4);
}

/// A thin strip of annealed stainless steel, which yields long before it tears, by AISC 360-16.
#[test]
fn gross_section_of_a_ply_governs() {
    let mut joint = plated();
    joint.methods = JointMethods::aisc_lrfd(AiscEdition::E2016);
    joint.stack = Stack::builder()
        .ply("strip", Spread::exact(millimetres(5.0)))
        .ply("bracket", Spread::exact(millimetres(30.0)))
        .shear_planes([1])
        .build()
        .unwrap();
    joint.plies[0].material = Some("304 stainless steel".into());
    joint.plies[0].width = Some(millimetres(60.0));
    joint.plies[0].end_distance = Some(millimetres(60.0));
    let worst = governing(&joint);
    assert_eq!(
        (worst.mode, worst.place),
        (Mode::GrossSection, Place::Ply(1))
    );
    // By hand: 0.9 x 206.84 x 60 x 5 = 55.847 kN, with Fy = 30 ksi.
    assert!((worst.utilisation.value - 20.0 / 55.847).abs() < 1e-4);
}

#[test]
fn holes_in_a_group_may_tear_out_together() {
    let mut joint = plated();
    let says = |joint: &Joint| {
        let missing = not_checked(joint);
        missing.iter().any(|text| text.starts_with("block shear: "))
    };
    assert!(!says(&joint));
    joint.plies[1].pitch = Some(millimetres(60.0));
    assert!(says(&joint));
}

#[test]
fn short_distances_are_faults_by_their_code() {
    let mut joint = plated();
    joint.methods = JointMethods::en_1993();
    for ply in &mut joint.plies {
        ply.end_distance = Some(millimetres(20.0));
        ply.edge_distance = Some(millimetres(30.0));
    }
    let verdict = joint.check().unwrap();
    let text = verdict.render(UnitSystem::Si).to_string();
    assert!(
        text.contains("FAULT  ply 2: end distance 20.00 mm, must be at least 21.60 mm"),
        "{text}"
    );
}

/// A link of 20 mm between two ears of 10 mm, 2 to 4 mm of play on each side; invented.
fn clevis() -> Joint {
    let mut joint = frame();
    let ear = millimetres(10.0).plus_minus(millimetres(0.2));
    let play = Spread {
        min: millimetres(2.0),
        nominal: millimetres(3.0),
        max: millimetres(4.0),
    };
    joint.stack = Stack::builder()
        .ply("ear", ear)
        .gap(play)
        .ply("link", millimetres(20.0).plus_minus(millimetres(0.4)))
        .gap(play)
        .ply("ear", ear)
        .shear_planes([1, 2])
        .build()
        .unwrap();
    joint.plies.resize(3, joint.plies[0].clone());
    joint.load.across = newtons(10e3);
    joint
}

#[test]
fn bending_of_the_bolt_governs() {
    let mut joint = clevis();
    let verdict = joint.check().unwrap();
    // Shear comes on top of it; of what acts alone bending governs.
    let [both, worst, ..] = verdict.checks[..] else {
        panic!("{:?}", verdict.checks)
    };
    assert_eq!(both.mode, Mode::Combined);
    assert_eq!(
        (worst.mode, worst.level),
        (Mode::BoltBending, Level::Allowable)
    );
    // By hand: e = 10.2 / 2 + 20.4 / 4 + 4 = 14.2 mm; M = 10 kN / 2 x 14.2 mm = 71.0 N m. One
    // plane cuts thread: the circle of At = 156.67 mm2 has 14.1236 mm; pi/32 x 14.1236^3 = 276.59 mm3;
    // 276.59 x 640 / 2 = 88.51 N m.
    assert!((worst.utilisation.value - 71.0 / 88.51).abs() < 1e-4);
    // By hand: root 13.546 mm, 144.12 mm2; 0.577 x 640 x 144.12 / 2 = 26.61 kN; 5 / 26.61 = 0.1879;
    // sqrt(0.8022^2 + 0.1879^2) = 0.8239.
    assert!((both.utilisation.value - 0.8239).abs() < 2e-4);

    // By EN 1993-1-8, Table 3.10: 1.5 x 276.59 x 640 = 265.53 N m.
    joint.methods = JointMethods::en_1993();
    let verdict = joint.check().unwrap();
    let bending = verdict
        .checks
        .iter()
        .find(|check| check.mode == Mode::BoltBending)
        .unwrap();
    assert!((bending.utilisation.value - 71.0 / 265.53).abs() < 1e-4);
    for working in joint.check_with_working().unwrap().1 {
        working.check().unwrap();
    }
}

/// The same link without play: clamped it is not checked for bending, as a pivot it is.
#[test]
fn a_pivot_bends_without_gaps() {
    let mut joint = clevis();
    let ear = millimetres(10.0).plus_minus(millimetres(0.2));
    joint.stack = Stack::builder()
        .ply("ear", ear)
        .ply("link", millimetres(20.0).plus_minus(millimetres(0.4)))
        .ply("ear", ear)
        .shear_planes([1, 2])
        .build()
        .unwrap();
    let bends = |joint: &Joint| {
        let verdict = joint.check().unwrap();
        let bending = |check: &&Check| check.mode == Mode::BoltBending;
        verdict.checks.iter().find(bending).copied()
    };
    assert_eq!(bends(&joint), None);
    assert!(
        not_checked(&joint)
            .iter()
            .any(|line| line.starts_with("bolt bending: the plies touch"))
    );
    joint.environment.rotates = true;
    // By hand: e = 10.2 mm, M = 51.0 N m.
    assert!((bends(&joint).unwrap().utilisation.value - 51.0 / 88.51).abs() < 1e-4);
}

/// The link turns on a bushing that is 0.1 to 0.9 mm longer than it.
#[test]
fn end_play_on_a_sleeve_bends_the_bolt() {
    let mut joint = clevis();
    let ear = millimetres(10.0).plus_minus(millimetres(0.2));
    joint.stack = Stack::builder()
        .ply("ear", ear)
        .ply("link", millimetres(20.0).plus_minus(millimetres(0.2)))
        .ply("ear", ear)
        .sleeve(
            "bushing",
            millimetres(20.5).plus_minus(millimetres(0.2)),
            2,
            2,
        )
        .shear_planes([1, 2])
        .build()
        .unwrap();
    let verdict = joint.check().unwrap();
    let bending = |check: &&Check| check.mode == Mode::BoltBending;
    let bending = verdict.checks.iter().find(bending).unwrap();
    // By hand: e = 10.2 / 2 + 20.2 / 4 + 0.9 = 11.05 mm; M = 5 kN x 11.05 mm = 55.25 N m.
    assert!((bending.utilisation.value - 55.25 / 88.51).abs() < 1e-4);
}

#[test]
fn a_gap_under_preload_is_found() {
    let mut joint = clevis();
    joint.tightening = tightened(0.16, 0.20);
    let gaps = |joint: &Joint| {
        let findings = joint.check().unwrap().findings;
        let gap = |finding: &&Finding| matches!(finding, Finding::GapUnderPreload { .. });
        findings.iter().filter(gap).count()
    };
    assert_eq!(gaps(&joint), 2);
    joint.tightening = None;
    assert_eq!(gaps(&joint), 0);
}

#[test]
fn bending_without_a_method_is_said() {
    let mut joint = clevis();
    joint.methods = JointMethods::aisc_lrfd(AiscEdition::E2010);
    let no_method = "bolt bending: the method for shear gives no resistance";
    assert!(
        not_checked(&joint)
            .iter()
            .any(|line| line.starts_with(no_method))
    );
    let mut single = frame();
    single.load.across = newtons(8e3);
    single.environment.rotates = true;
    let single_shear = "bolt bending: only double shear";
    assert!(
        not_checked(&single)
            .iter()
            .any(|line| line.starts_with(single_shear))
    );
}

#[test]
fn the_running_torque_is_in_the_torque_and_scatters_the_preload() {
    let mut joint = frame();
    joint.nut.as_mut().unwrap().style = NutStyle::Iso7040;
    joint.load.across = newtons(5e3);
    joint.tightening = tightened(0.15, 0.22);
    let lock = "running torque of the lock nut: it is not given";
    assert!(
        not_checked(&joint)
            .iter()
            .any(|line| line.starts_with(lock))
    );
    let running = Spread {
        min: newton_metres(4.0),
        nominal: newton_metres(14.0),
        max: newton_metres(24.0),
    };
    joint.tightening = joint.tightening.map(|tight| tight.with_prevailing(running));
    assert!(
        !not_checked(&joint)
            .iter()
            .any(|line| line.starts_with("running"))
    );
    let (verdict, workings) = joint.check_with_working().unwrap();
    let preload = verdict.preload.unwrap();
    // By hand: 0.75 x 90.868 = 68.151 kN; T = 0.18 x 68.151 x 16 + 14 = 210.27 N m;
    // most (210.27 - 4) / (0.15 x 16) = 85.948 kN, least (210.27 - 24) / (0.22 x 16) = 52.919 kN.
    assert!((preload.torque - newton_metres(210.274)).abs() < newton_metres(0.01));
    assert!((preload.preload.max - newtons(85_948.0)).abs() < newtons(5.0));
    assert!((preload.preload.min - newtons(52_919.0)).abs() < newtons(5.0));
    for working in workings {
        working.check().unwrap();
    }
    let sheet = Sheet::new(&joint, &verdict)
        .unwrap()
        .render(UnitSystem::Si)
        .to_string();
    assert!(
        sheet.contains("has 14.0 N m for it. Outside 4.00 N m to 24.0 N m"),
        "{sheet}"
    );
}

#[test]
fn settling_takes_preload_where_the_stiffness_is_known() {
    let mut joint = frame();
    joint.load.across = newtons(5e3);
    let mut tight = tightened(0.18, 0.18).unwrap();
    tight.settling = Some(shankline::units::micrometres(11.0));
    joint.tightening = Some(tight);
    for ply in &mut joint.plies {
        ply.material = None;
    }
    assert!(
        not_checked(&joint)
            .iter()
            .any(|line| line.starts_with("preload lost to settling"))
    );
    tight.stiffness = Some(JointStiffness {
        bolt: newtons_per_millimetre(300e3),
        members: newtons_per_millimetre(1200e3),
    });
    joint.tightening = Some(tight);
    let verdict = joint.check().unwrap();
    let preload = verdict.preload.unwrap();
    // By hand: 11 um x 240 kN/mm = 2640 N.
    assert!((preload.settling_loss - newtons(2640.0)).abs() < newtons(1e-6));
    assert!((preload.preload.min - preload.in_service - newtons(2640.0)).abs() < newtons(1e-6));
    // By hand: 10/360 x 2 mm x 240 kN/mm = 13.33 kN of 68.15; all of it at 51.1 deg.
    let sheet = Sheet::new(&joint, &verdict)
        .unwrap()
        .render(UnitSystem::Si)
        .to_string();
    let lost = "moved by 10.0 deg has lost 13.33 kN of 68.15 kN; at 51.1 deg nothing is left";
    assert!(sheet.contains(lost), "{sheet}");
    assert!(sheet.contains("Settling takes about 2.64 kN"), "{sheet}");

    // What settles away cannot keep the faces together.
    joint.load.along = newtons(40e3);
    tight.settling = Some(shankline::units::micrometres(150.0));
    joint.tightening = Some(tight);
    assert_eq!(governing(&joint).mode, Mode::Separation);
}

#[test]
fn preload_that_is_gone_is_a_fault() {
    let mut joint = frame();
    joint.load.along = newtons(8e3);
    let mut tight = tightened(0.18, 0.18).unwrap();
    tight.relaxation = percent(100.0);
    joint.tightening = Some(tight);
    assert_eq!(faults(&joint), [Finding::NoPreloadLeft]);
    joint.load.across = newtons(1e3);
    joint.methods.slip = Some(SlipMethod::Stated {
        friction: 0.2,
        safety_factor: 1.0,
    });
    assert_eq!(faults(&joint), [Finding::NoPreloadLeft, Finding::Slips]);
    tight.relaxation = percent(120.0);
    joint.tightening = Some(tight);
    assert!(joint.check().is_err());
}

/// A winch foot on a cast bed: M12 of class 8.8, 20 mm of thread wanted of 32 mm, in grey iron of 207 MPa.
fn foot() -> Joint {
    let thread: Thread = "M12".parse().unwrap();
    Joint {
        title: "winch foot (invented)".into(),
        bolt: JointBolt {
            product: ScrewProduct::Iso4017,
            thread,
            grade: BoltGrade::Iso(PropertyClass::Class8_8),
            length: Some(millimetres(50.0)),
        },
        nut: None,
        tapped: Some(JointTapped {
            engagement: millimetres(20.0),
            depth: Some(millimetres(32.0)),
            material: Some("grey cast iron class 30".into()),
        }),
        stack: Stack::builder()
            .ply("foot", millimetres(20.0).plus_minus(millimetres(0.3)))
            .tapped_part("bed", Spread::exact(millimetres(0.0)))
            .shear_planes([1])
            .build()
            .unwrap(),
        plies: vec![JointPly::default()],
        load: JointLoad {
            across: newtons(3e3),
            along: newtons(5e3),
            ..JointLoad::default()
        },
        ..frame()
    }
}

/// Threads by FED-STD-H28/2: shear areas over the engagement, half of the tensile strength.
#[test]
fn both_threads_of_a_tapped_part_are_checked() {
    let mut joint = foot();
    joint.tightening = tightened(0.16, 0.20);
    let (verdict, workings) = joint.check_with_working().unwrap();
    for working in &workings {
        working.check().unwrap();
    }
    let stripping = |place: Place| {
        let mut checks = verdict.checks.iter();
        let found = checks.find(|check| check.mode == Mode::Stripping && check.place == place);
        let found = found.unwrap();
        let Amount::Force(resistance) = found.resistance else {
            panic!("{found:?}")
        };
        (found.demand, resistance.value)
    };
    // Shortest screw, thickest foot: 49.5 - 20.3 = 29.2 mm, less a pitch of 1.75: 27.45 mm.
    // 6g and 6H limits of M12 (ISO 965-2): d min 11.701, d2 min 10.679, D2 max 11.063, D1 max 10.441.
    let (length, pitch) = (27.45_f64, 1.75_f64);
    let root_3 = 3.0_f64.sqrt();
    let bolt = PI * length / pitch * 10.441 * (pitch / 2.0 + (10.679 - 10.441) / root_3);
    let bed = PI * length / pitch * 11.701 * (pitch / 2.0 + (11.701 - 11.063) / root_3);
    let (demand, of_bolt) = stripping(Place::Bolt(1));
    let (_, of_bed) = stripping(Place::TappedPart);
    assert!(
        (of_bolt / (bolt * 800.0 / 2.0) - 1.0).abs() < 1e-3,
        "{of_bolt}"
    );
    assert!(
        (of_bed / (bed * 207.0 / 2.0) - 1.0).abs() < 5e-3,
        "{of_bed}"
    );
    // No stiffness is known: all of the load comes on top of the greatest preload.
    let most = verdict.preload.unwrap().preload.max + newtons(5e3);
    assert_eq!(demand, Amount::Force(most));
    // 74.1 kN in the iron, more than the 800 MPa x 84.3 mm2 = 67.4 kN that break the bolt.
    assert!(
        !verdict
            .findings
            .iter()
            .any(|found| matches!(found, Finding::ThreadsWeaker { .. }))
    );
    assert_eq!(verdict.nut, None);
    assert!(verdict.holds(), "{:?}", verdict.findings);
}

#[test]
fn a_short_thread_strips_first_and_that_is_a_fault() {
    let mut joint = foot();
    joint.tapped.as_mut().unwrap().engagement = millimetres(8.0);
    joint.bolt.length = Some(millimetres(30.0));
    let verdict = joint.check().unwrap();
    let weaker = |found: &&Finding| matches!(found, Finding::ThreadsWeaker { .. });
    let Some(Finding::ThreadsWeaker { ratio }) = verdict.findings.iter().find(weaker) else {
        panic!("{:?}", verdict.findings)
    };
    // 29.5 - 20.3 - 1.75 = 7.45 mm in place of the 27.45 mm that hold 74.1 kN.
    let by_hand = 74.1 / 67.4 * 7.45 / 27.45;
    assert!((ratio.value / by_hand - 1.0).abs() < 0.02, "{ratio:?}");
    assert!(!verdict.holds());
}

#[test]
fn the_sheet_of_a_screw_in_a_part_speaks_of_no_nut() {
    let joint = foot();
    let verdict = joint.check().unwrap();
    let sheet = Sheet::new(&joint, &verdict).unwrap();
    let text = sheet.render(UnitSystem::Si).to_string();
    assert!(text.contains("into the thread of \"bed\""), "{text}");
    assert!(
        text.contains("fills at least 20.00 mm of the 32.00 mm of thread"),
        "{text}"
    );
    assert!(
        !text.contains("nut ISO") && !text.contains("used nut"),
        "{text}"
    );
    let missing = not_checked(&joint);
    assert!(
        missing
            .iter()
            .any(|text| text.starts_with("bearing: the tapped part"))
    );
    let mut shaken = joint;
    shaken.environment.vibration = true;
    assert!(
        not_checked(&shaken)
            .iter()
            .any(|text| text.starts_with("locking of the screw"))
    );
}

#[test]
fn nut_and_tapped_part_are_one_or_the_other() {
    let nut = frame().nut;
    let both = Joint { nut, ..foot() };
    let neither = Joint {
        tapped: None,
        ..foot()
    };
    let nut_only = Joint {
        nut,
        tapped: None,
        ..foot()
    };
    let stray = Joint {
        tapped: foot().tapped,
        ..frame()
    };
    let none = Joint {
        nut: None,
        ..frame()
    };
    for joint in [both, neither, nut_only, stray, none] {
        let error = joint.check().unwrap_err();
        assert!(error.to_string().contains("tapped"), "{error}");
    }
    assert!(foot().check().is_ok() && frame().check().is_ok());
    let space = shankline::joint::DesignSpace::new();
    assert!(foot().design(&space, &[]).is_err());
}

/// EN 1993-1-8 has no allowable loads: its slip cannot stand beside the others of this joint, which are.
#[test]
fn slip_of_another_level_is_not_checked() {
    let mut joint = frame();
    joint.load.across = newtons(1e3);
    joint.tightening = tightened(0.16, 0.20);
    joint.methods.slip = Some(SlipMethod::En1993 {
        class: SlipClass::B,
        serviceability: false,
    });
    assert!(
        not_checked(&joint)
            .contains(&"slip: its method defines no resistance of this level".to_string())
    );
}

/// A torque that nobody gave is neither marked nor checked.
#[test]
fn a_joint_without_tightening_has_no_torque_to_inspect() {
    let mut joint = frame();
    joint.load.across = newtons(1e3);
    let sheet = |joint: &Joint| {
        let verdict = joint.check().unwrap();
        let sheet = Sheet::new(joint, &verdict).unwrap();
        sheet.render(UnitSystem::Si).to_string()
    };
    for word in ["witness mark", "check the torque", "Tighten to"] {
        assert!(!sheet(&joint).contains(word), "{word}");
    }
    joint.tightening = tightened(0.16, 0.20);
    for word in ["witness mark", "check the torque", "Tighten to"] {
        assert!(sheet(&joint).contains(word), "{word}");
    }
}

#[test]
fn the_sheet_of_a_group_has_its_order() {
    use shankline::joint::tightening_order;
    use shankline::strength::group::BoltPattern;
    let mut joint = frame();
    joint.load.along = newtons(8e3);
    joint.tightening = tightened(0.16, 0.20);
    let verdict = joint.check().unwrap();
    let flange = BoltPattern::circle(4, millimetres(160.0)).unwrap();
    let sheet = Sheet::new(&joint, &verdict)
        .unwrap()
        .for_group(tightening_order(&flange))
        .render(UnitSystem::Si)
        .to_string();
    let order = sheet
        .find("Order: bolts 1, 3, 2, 4; all of them to 30 %, then 70 %")
        .unwrap();
    assert!(order < sheet.find("Tighten to").unwrap());
}

/// Every working of the whole check gives its numbers again.
#[test]
fn workings_are_true() {
    let mut joint = plated();
    joint.load.along = newtons(10e3);
    joint.load.alternates = true;
    joint.tightening = tightened(0.16, 0.22);
    joint.methods.slip = Some(SlipMethod::Stated {
        friction: 0.15,
        safety_factor: 1.25,
    });
    for methods in [joint.methods, JointMethods::aisc_lrfd(AiscEdition::E2010)] {
        joint.methods = methods;
        let (verdict, workings) = joint.check_with_working().unwrap();
        assert_eq!(verdict, joint.check().unwrap());
        assert!(workings.len() > 10, "{}", workings.len());
        for working in workings {
            working.check().unwrap();
        }
    }
}

#[test]
fn what_is_not_known_is_said() {
    let mut joint = frame();
    joint.load.across = newtons(8e3);
    joint.load.along = newtons(8e3);
    joint.nut.as_mut().unwrap().grade = None;
    let verdict = joint.check().unwrap();
    let missing: Vec<String> = verdict
        .not_checked
        .iter()
        .map(ToString::to_string)
        .collect();
    for part in [
        "thread stripping: the grade",
        "separation: nobody controls",
        "corrosion between unlike metals",
    ] {
        assert!(
            missing.iter().any(|line| line.starts_with(part)),
            "{part}: {missing:?}"
        );
    }
}

#[test]
fn heat_and_turning_are_found() {
    let mut joint = frame();
    joint.load.across = newtons(8e3);
    joint.environment = Environment {
        hottest: celsius(200.0),
        rotates: true,
        vibration: true,
        ..Environment::default()
    };
    let verdict = joint.check().unwrap();
    assert!(verdict.checks.iter().all(Check::holds) && !verdict.holds());
    let faults: Vec<Finding> = verdict
        .findings
        .iter()
        .copied()
        .filter(Finding::is_fault)
        .collect();
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
}

fn faults(joint: &Joint) -> Vec<Finding> {
    let findings = joint.check().unwrap().findings;
    findings.into_iter().filter(Finding::is_fault).collect()
}

/// The frame with a coated bolt and nut on steel plies.
fn coated(finish: Finish, exposure: Exposure) -> Joint {
    let mut joint = frame();
    joint.nut.as_mut().unwrap().grade = None;
    joint.load.across = newtons(8e3);
    for ply in &mut joint.plies {
        ply.metal = Some(Metal::Steel);
    }
    joint.environment.contact = Some(Contact {
        exposure,
        bolt: finish,
        nut: finish,
    });
    joint
}

#[test]
fn unlike_metals_are_found() {
    // By hand: stainless 0.50 and steel 0.85 are 0.35 V apart; 0.25 V is permitted, 0.50 V where it is dry.
    let stainless = Finish::Bare(Metal::Stainless18Chromium);
    let joint = coated(stainless, Exposure::Normal);
    let expected = |ply| Finding::Galvanic {
        anode: Part::Ply(ply),
        cathode: Part::Bolt,
        difference: volts(0.85) - volts(0.50),
        permitted: volts(0.25),
    };
    let found = faults(&joint);
    assert!(
        found.contains(&expected(1)) && found.contains(&expected(2)),
        "{found:?}"
    );
    assert_eq!(found.len(), 3); // and the nut on the last ply
    assert!(!joint.check().unwrap().holds());
    let text = found[0].text(UnitSystem::Si);
    assert!(
        text.contains("ply 1 corrodes on bolt, 0.35 V apart, at most 0.25 V"),
        "{text}"
    );
    assert_eq!(faults(&coated(stainless, Exposure::Controlled)), []);
    assert_eq!(
        faults(&coated(Finish::Bare(Metal::Steel), Exposure::Harsh)),
        []
    );

    // Timber is no metal: only bolt and nut are left, and they are alike.
    let mut timber = coated(stainless, Exposure::Harsh);
    for ply in &mut timber.plies {
        ply.metal = None;
        ply.material = None;
        ply.timber = Some("Douglas fir-larch".into());
    }
    assert!(
        !not_checked(&timber)
            .iter()
            .any(|line| line.starts_with("corrosion"))
    );

    // Described in part only: what is known is checked, the rest is said.
    let mut half = coated(stainless, Exposure::Normal);
    half.plies[1].metal = None;
    assert_eq!(faults(&half), [expected(1)]);
    assert!(
        not_checked(&half)
            .iter()
            .any(|line| line.starts_with("corrosion"))
    );
    half.environment.contact = None;
    assert!(
        not_checked(&half)
            .iter()
            .any(|line| line.ends_with("are not described"))
    );
}

#[test]
fn coatings_of_hard_bolts_are_found() {
    let plated = |class, baked| {
        let mut joint = coated(Finish::ZincPlated { baked }, Exposure::Controlled);
        joint.bolt.grade = BoltGrade::Iso(class);
        faults(&joint)
    };
    assert_eq!(plated(PropertyClass::Class10_9, false), []); // up to 39 HRC
    assert_eq!(
        plated(PropertyClass::Class12_9, false),
        [Finding::NotBaked { hardness: 44.0 }]
    );
    assert_eq!(plated(PropertyClass::Class12_9, true), []);
    let mut baked = coated(Finish::ZincPlated { baked: true }, Exposure::Controlled);
    baked.bolt.grade = BoltGrade::Iso(PropertyClass::Class12_9);
    let findings = baked.check().unwrap().findings;
    assert!(findings.contains(&Finding::PlatedHard { hardness: 44.0 })); // a note, no fault

    let mut galvanized = coated(Finish::HotDipGalvanized, Exposure::Controlled);
    galvanized.bolt.grade = BoltGrade::Iso(PropertyClass::Class12_9);
    assert_eq!(
        faults(&galvanized),
        [Finding::GalvanizedTooStrong {
            strength: megapascals(1220.0),
            most: ksi(150.0)
        }]
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
    let mut joint = coated(Finish::HotDipGalvanized, Exposure::Controlled);
    joint.bolt.product = ScrewProduct::HexCapScrew;
    joint.bolt.thread = "5/8-11 UNC".parse().unwrap();
    joint.bolt.grade = BoltGrade::Astm(AstmGrade::F3125A490Type1);
    joint.nut = Some(JointNut {
        style: NutStyle::Hex,
        grade: None,
    });
    assert!(faults(&joint).contains(&Finding::CoatingForbidden));
}

#[test]
fn a_length_that_does_not_fit_is_a_fault_with_its_reason() {
    let mut joint = frame();
    joint.load.across = newtons(8e3);
    joint.bolt.length = Some(millimetres(120.0));
    let verdict = joint.check().unwrap();
    assert!(!verdict.holds());
    let text = verdict.render(UnitSystem::Si).to_string();
    assert!(text.starts_with("  DOES NOT HOLD"), "{text}");
    assert!(
        text.contains("FAULT  length: nut reaches the run-out"),
        "{text}"
    );
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    /// Twice the load is twice the utilisation where nothing but the load is compared.
    #[test]
    fn shear_scales_with_the_load(load in 1.0..50e3f64, factor in 1.0..3.0f64) {
        let mut joint = frame();
        joint.load.across = newtons(load);
        let once = governing(&joint).utilisation.value;
        joint.load.shock_factor = factor;
        let shocked = governing(&joint).utilisation.value;
        prop_assert!((shocked / once - factor).abs() < 1e-9);
    }

    /// Checks fall in order, every utilisation is a number, and the sheet can be written.
    #[test]
    fn sane_joints_give_sane_verdicts(
        across in 0.0..100e3f64, along in 0.0..100e3f64, shock in 1.0..3.0f64,
        k in 0.1..0.3f64, alternates: bool, tight: bool, codes in 0..3usize,
    ) {
        let mut joint = frame();
        joint.load = JointLoad {
            across: newtons(across),
            along: newtons(along),
            shock_factor: shock,
            alternates,
            ..JointLoad::default()
        };
        joint.tightening = tight.then(|| {
            Tightening::new(NutFactor::new(0.8 * k, k, 1.3 * k).unwrap(), PreloadTarget::Reusable)
        });
        joint.methods = [
            JointMethods::machine_design(1.5),
            JointMethods::aisc_lrfd(AiscEdition::E2010),
            JointMethods::en_1993(),
        ][codes];
        let verdict = joint.check().unwrap();
        let used: Vec<f64> = verdict.checks.iter().map(|check| check.utilisation.value).collect();
        prop_assert!(used.iter().all(|used| used.is_finite() && *used >= 0.0));
        prop_assert!(used.windows(2).all(|pair| pair[0] >= pair[1]));
        let sheet = Sheet::new(&joint, &verdict).unwrap();
        prop_assert!(!sheet.render(UnitSystem::UsCustomary).to_string().is_empty());
    }

    /// No number breaks it.
    #[test]
    fn no_number_breaks_it(numbers in proptest::array::uniform6(any::<f64>())) {
        let [a, b, c, d, e, f] = numbers;
        let mut joint = frame();
        joint.load = JointLoad {
            across: newtons(a),
            along: newtons(b),
            along_least: newtons(c),
            alternates: true,
            shock_factor: d,
            load_factor: e,
        };
        joint.environment.hottest = celsius(f);
        if let Ok(verdict) = joint.check() {
            prop_assert!(verdict.checks.iter().all(|check| check.utilisation.value.is_finite()));
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    /// Nor does any number of the tightening or of the gaps.
    #[test]
    fn no_number_of_the_tightening_breaks_it(
        numbers in proptest::array::uniform6(any::<f64>()), relaxation in any::<f64>(),
    ) {
        let [least, nominal, most, settling, bolt, members] = numbers;
        let mut joint = clevis();
        joint.load.along = newtons(5e3);
        let mut tight = tightened(0.16, 0.20).unwrap();
        tight.prevailing = Some(Spread {
            min: newton_metres(least),
            nominal: newton_metres(nominal),
            max: newton_metres(most),
        });
        for case in 0..4 {
            joint.tightening = Some(tight);
            if let Ok((verdict, workings)) = joint.check_with_working() {
                let preload = verdict.preload.unwrap();
                prop_assert!(preload.torque.is_finite() && preload.in_service.is_finite());
                prop_assert!(preload.in_service.value >= 0.0);
                for working in workings {
                    prop_assert!(working.check().is_ok());
                }
                prop_assert!(Sheet::new(&joint, &verdict).is_ok());
            }
            match case {
                0 => tight.prevailing = None,
                1 => tight.settling = Some(millimetres(settling)),
                _ => {
                    tight.relaxation = percent(relaxation);
                    tight.stiffness = Some(JointStiffness {
                        bolt: newtons_per_millimetre(bolt),
                        members: newtons_per_millimetre(members),
                    });
                }
            }
        }
    }
}
