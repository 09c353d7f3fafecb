//! The whole check of a joint, and a sweep of its loads.

use core::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use shankline::joint::{
    BoltCase, CaseAnswer, Environment, Finish, Joint, JointBolt, JointLoad, JointMethods, JointNut,
    JointPly, JointWasher, Pattern, Prying, Repeats, Scope, Tightening, TorqueTightening,
};
use shankline::parts::Locking;
use shankline::prelude::*;
use shankline::tables::locking::PrevailingTorque;
use shankline::units::{Force, Length, percent};

/// One bolt in single shear under a steady load, in tension under one that comes and goes, shaken; with all that
/// its check asks for.
fn joint(length: Option<Length>) -> Joint {
    let thread: Thread = "M16".parse().unwrap();
    let ply = |name: &str| {
        JointPly::new(name, millimetres(20.0).plus_minus(millimetres(0.3)))
            .material("ASTM A36 steel")
            .hole(millimetres(17.5))
            .end_distance(millimetres(45.0))
            .edge_distance(millimetres(40.0))
            .width(millimetres(80.0))
    };
    let washer = JointWasher::find(WasherStyle::Iso7089, &thread).unwrap();
    let finish = Some(Finish::ZincPlated { baked: false });
    let running = PrevailingTorque::range(&thread, Locking::Insert, Some("8")).unwrap();
    Joint {
        title: "benchmark".into(),
        bolt: JointBolt {
            product: ScrewProduct::Iso4014,
            thread,
            grade: BoltGrade::Iso(PropertyClass::Class8_8),
            length,
            finish,
        },
        nut: Some(JointNut {
            style: NutStyle::Iso7040,
            grade: Some(NutGrade::Iso898_2Class8),
            finish,
        }),
        stack: Stack::builder()
            .washer_under_head(washer.clone())
            .add(ply("plate"))
            .add(ply("bracket"))
            .shear_planes([1])
            .washers_under_nut(washer, 1)
            .build()
            .unwrap(),
        pattern: Pattern::Single,
        load: JointLoad {
            across: newtons(20e3),
            along: newtons(8e3),
            prying: Some(Prying::None),
            repeats: only_along_comes_and_goes(newtons(20e3)),
            shock_factor: 1.5,
            load_factor: None,
        },
        environment: Environment {
            vibration: true,
            ..Environment::workshop()
        },
        tightening: Some(Tightening::Torque(
            TorqueTightening::new(
                NutFactor::new(0.15, 0.18, 0.22).unwrap(),
                PreloadTarget::Reusable,
            )
            .relaxation(percent(5.0))
            .prevailing(running),
        )),
        rules: LengthRules::fabrication(UnitSystem::Si),
        methods: JointMethods::machine_design(2.0),
        scope: Scope::Joint,
        set_aside: Vec::new(),
        granted: Vec::new(),
        own: OwnParts::default(),
    }
}

fn only_along_comes_and_goes(across: Force) -> Repeats {
    Repeats::Between {
        across_least: across,
        along_least: newtons(0.0),
        cycles: None,
    }
}

fn whole_check(c: &mut Criterion) {
    let mut group = c.benchmark_group("whole check");
    let given = joint(Some(millimetres(75.0)));
    assert!(given.check().unwrap().holds());
    group.bench_function("length given", |b| b.iter(|| black_box(&given).check()));
    let searched = joint(None);
    assert!(searched.check().unwrap().holds());
    group.bench_function("length searched", |b| {
        b.iter(|| black_box(&searched).check());
    });
    group.finish();
}

/// Loads of a million cases, in a fixed order that looks like none.
fn cases(count: u32) -> Vec<BoltCase> {
    let mut state = 1_u32;
    let mut next = |most: f64| {
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        newtons(most * f64::from(state) / f64::from(u32::MAX))
    };
    let one = |_| {
        let (across, along) = (next(30e3), next(12e3));
        BoltCase {
            along_least: newtons(0.0),
            ..BoltCase::steady(across, along)
        }
    };
    (0..count).map(one).collect()
}

/// The same joint by hand, in bare numbers: what each thing bears is written down, in newtons as the verdict has it, and
/// the loads of a case are held against all of it. Answers less: no word and no mode.
fn by_hand(case: &BoltCase) -> f64 {
    const SHOCK: f64 = 1.5;
    const MARGIN: f64 = 2.0;
    const SHEAR: f64 = 37_124.074_723_764_44;
    const TENSION: f64 = 45_433.836_694_052_836;
    /// Bearing, bearing on the bolt, tear-out, net and gross section; both plies.
    const ACROSS: [f64; 10] = [
        39_118.094_978_520_01,
        39_118.094_978_520_01,
        100_864.0,
        100_864.0,
        102_275.481_761_808_62,
        102_275.481_761_808_62,
        152_805.058_509_843_77,
        152_805.058_509_843_77,
        195_590.474_892_600_03,
        195_590.474_892_600_03,
    ];
    /// Separation, head and nut through the plies.
    const ALONG: [f64; 3] = [
        64_979.450_987_960_29,
        195_119.033_455_756_67,
        199_464.866_473_634_87,
    ];
    /// Proof of the bolt, of the nut, pressure under both.
    const BOLT: [f64; 4] = [
        90_867.673_388_105_67,
        137_868.194_106_091_37,
        148_740.26,
        158_759.6,
    ];
    /// With the torsion of tightening, and without.
    const TIGHTENING: [f64; 2] = [0.957_479_89, 0.926_366_2];
    const PRELOAD: f64 = 84_176.739_382_628_42;
    const SHARE: f64 = 809_978_828.486_803 / (809_978_828.486_803 + 3_071_557_439.387_712_5);
    const STRESS_AREA: f64 = 156.668_402_393_285_63;
    const TENSILE: f64 = 800.0;
    const ENDURANCE: f64 = 129.0;
    let across = SHOCK * case.across.value;
    let (low, high) = (SHOCK * case.along_least.value, SHOCK * case.along.value);
    let mut used = TIGHTENING[0]
        .max(TIGHTENING[1])
        .max(across / SHEAR)
        .max(high / TENSION);
    for bears in ACROSS {
        used = used.max(across / bears);
    }
    for bears in ALONG {
        used = used.max(MARGIN * high / bears);
    }
    let parted = PRELOAD / (1.0 - SHARE);
    let force = |load: f64| {
        if load > parted {
            load
        } else {
            PRELOAD + SHARE * load
        }
    };
    for bears in BOLT {
        used = used.max(force(MARGIN * high) / bears);
    }
    used = used.max((across / SHEAR).hypot(high / TENSION));
    let amplitude = 0.5 * (force(high) - force(low)) / STRESS_AREA;
    let above = 0.5 * (force(high) + force(low)) / STRESS_AREA - PRELOAD / STRESS_AREA;
    let bears = (TENSILE - PRELOAD / STRESS_AREA) / (TENSILE / ENDURANCE + above / amplitude);
    used.max(MARGIN * amplitude / bears)
}

fn sweep(c: &mut Criterion) {
    let joint = joint(Some(millimetres(75.0)));
    let mut prepared = joint.prepare().unwrap();
    let million = cases(1_000_000);
    let mut answers = vec![CaseAnswer::default(); million.len()];
    prepared.sweep(&million, &mut answers).unwrap();
    assert_eq!(prepared.unread_kinds(), 0);
    for (case, answer) in million.iter().zip(&answers).step_by(997) {
        let verdict = prepared.verdict(case).unwrap();
        assert_eq!(answer.word, verdict.word());
    }
    let held = answers.iter().filter(|answer| answer.word == Word::Holds);
    let held = held.count();
    assert!((100_000..900_000).contains(&held), "{held}");

    let mut group = c.benchmark_group("sweep");
    group.sample_size(20);
    group.bench_function("prepare, with the first case", |b| {
        b.iter(|| joint.prepare().unwrap().answer(&million[0]));
    });
    let mut at = million.iter().cycle();
    group.bench_function("one prepared case", |b| {
        b.iter(|| prepared.answer(at.next().unwrap()));
    });
    group.bench_function("a million cases in a slice", |b| {
        b.iter(|| prepared.sweep(black_box(&million), &mut answers));
    });
    group.bench_function("the worst of a million cases", |b| {
        b.iter(|| prepared.worst(black_box(&million)));
    });
    // The same question, to the digits written down here.
    for (case, answer) in million.iter().zip(&answers) {
        let used = by_hand(case);
        assert!(
            (used / answer.utilisation.value - 1.0).abs() < 1e-6,
            "{case:?}: {used} {answer:?}"
        );
    }
    let mut used = vec![0.0; million.len()];
    group.bench_function("a million cases by hand in f64", |b| {
        b.iter(|| {
            for (case, used) in black_box(&million).iter().zip(&mut used) {
                *used = by_hand(case);
            }
        });
    });
    let few = &million[..100];
    group.bench_function("10 000 bolts of ten kinds, 100 cases each", |b| {
        b.iter(|| {
            let mut worst = 0.0_f64;
            for _ in 0..10 {
                let mut kind = joint.prepare().unwrap();
                for _ in 0..1000 {
                    let (_, answer) = kind.worst(black_box(few)).unwrap().unwrap();
                    worst = worst.max(answer.utilisation.value);
                }
            }
            worst
        });
    });
    group.finish();
}

criterion_group!(benches, whole_check, sweep);
criterion_main!(benches);
