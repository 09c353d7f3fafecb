//! The whole check of a joint, and a sweep of its loads.

use core::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use shankline::joint::{
    Environment, Finish, Joint, JointBolt, JointLoad, JointMethods, JointNut, JointPly,
    JointWasher, Pattern, Prying, Repeats, Scope, Tightening, TorqueTightening,
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

fn sweep(c: &mut Criterion) {
    let mut joint = joint(Some(millimetres(75.0)));
    let mut group = c.benchmark_group("sweep");
    group.sample_size(10);
    group.bench_function("10 000 loads of one joint", |b| {
        b.iter(|| {
            let mut held = 0;
            for step in 0..10_000 {
                let across = newtons(f64::from(step) * 10.0);
                joint.load.across = across;
                joint.load.repeats = only_along_comes_and_goes(across);
                held += usize::from(joint.check().is_ok_and(|verdict| verdict.holds()));
            }
            held
        });
    });
    group.finish();
}

criterion_group!(benches, whole_check, sweep);
criterion_main!(benches);
