//! The whole check of a joint, and a sweep of a million.

use core::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use shankline::joint::{
    Environment, Joint, JointBolt, JointLoad, JointMethods, JointNut, JointPly, Tightening,
};
use shankline::prelude::*;

fn joint(length: Option<Length>) -> Joint {
    let thread: Thread = "M16".parse().unwrap();
    let ply = millimetres(20.0).plus_minus(millimetres(0.3));
    let washer = Washer::find(WasherStyle::Iso7089, &thread).unwrap();
    Joint {
        title: "benchmark".into(),
        bolt: JointBolt {
            product: ScrewProduct::Iso4014,
            thread,
            grade: BoltGrade::Iso(PropertyClass::Class8_8),
            length,
        },
        nut: Some(JointNut {
            style: NutStyle::Iso7040,
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
        load: JointLoad {
            across: newtons(20e3),
            along: newtons(8e3),
            alternates: true,
            shock_factor: 1.5,
            ..JointLoad::default()
        },
        environment: Environment {
            vibration: true,
            ..Environment::default()
        },
        tightening: Some(Tightening::new(
            NutFactor::new(0.15, 0.18, 0.22).unwrap(),
            PreloadTarget::Reusable,
        )),
        rules: LengthRules::fabrication(UnitSystem::Si),
        methods: JointMethods::machine_design(2.0),
    }
}

fn whole_check(c: &mut Criterion) {
    let mut group = c.benchmark_group("whole check");
    let given = joint(Some(millimetres(70.0)));
    group.bench_function("length given", |b| b.iter(|| black_box(&given).check()));
    let searched = joint(None);
    group.bench_function("length searched", |b| {
        b.iter(|| black_box(&searched).check());
    });
    group.finish();
}

fn sweep(c: &mut Criterion) {
    let mut joint = joint(Some(millimetres(70.0)));
    let mut group = c.benchmark_group("sweep");
    group.sample_size(10);
    group.bench_function("10 000 loads of one joint", |b| {
        b.iter(|| {
            let mut held = 0;
            for step in 0..10_000 {
                joint.load.across = newtons(f64::from(step) * 10.0);
                held += usize::from(joint.check().is_ok_and(|verdict| verdict.holds()));
            }
            held
        });
    });
    group.finish();
}

criterion_group!(benches, whole_check, sweep);
criterion_main!(benches);
