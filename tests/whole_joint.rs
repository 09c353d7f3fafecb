//! The whole check: each mode can govern, checks against hand calculations, and no input breaks it.

use proptest::prelude::*;
use shankline::joint::{
    Environment, Finding, Joint, JointBolt, JointLoad, JointMethods, JointNut, JointPly, NutReason,
    Sheet, Tightening,
};
use shankline::prelude::*;
use shankline::strength::check::{Check, Level, Mode, Place};
use shankline::strength::slip::SlipMethod;
use shankline::strength::timber::TimberMethod;
use shankline::units::{celsius, percent};

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
        nut: JointNut {
            style: NutStyle::Iso4032,
            grade: Some(NutGrade::Iso898_2Class8),
        },
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
    joint.nut.grade = Some(NutGrade::Iso898_2Class5);
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
    joint.nut.grade = None;
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
    let mut joint = timbered();
    joint.plies[2].hole = Some(millimetres(18.0));
    assert!(reason(&joint).unwrap().contains("outer plies differ"));
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
    joint.nut.grade = None;
    joint.load.across = newtons(35e3);
    let worst = governing(&joint);
    assert_eq!(worst.mode, Mode::Bearing);
    // By hand: 248.21 x 16 x 19.7 / 2 = 39.118 kN.
    assert!((worst.utilisation.value - 35.0 / 39.118).abs() < 1e-4);
}

#[test]
fn tear_out_of_a_ply_governs() {
    let mut joint = plated();
    joint.plies[1].end_distance = Some(millimetres(10.0));
    let worst = governing(&joint);
    assert_eq!(worst.mode, Mode::TearOut);
    // By hand: 0.577 x 248.21 x 2 x 10 x 19.7 / 2 = 28.214 kN.
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
    joint.nut.grade = None;
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
