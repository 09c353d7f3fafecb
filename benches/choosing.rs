//! Verdicts, bins, advice, tolerances and shopping lists. The tolerance sum stands beside the same
//! sum in plain f64; the others have no hand-written twin and are here to be watched.

use criterion::{Criterion, criterion_group, criterion_main};
use shankline::{
    joint::{
        Arrangement, Bin, BoltInHand, Goal, JointNeed, ToleranceChain, ToleranceMethod,
        shopping_list,
    },
    prelude::*,
};
use std::hint::black_box;

fn arrangement(last_ply: f64) -> Arrangement {
    let thread: Thread = "M16".parse().unwrap();
    let washer = Washer::find(WasherStyle::Iso7089, &thread)
        .unwrap()
        .thickness()
        .unwrap();
    let ply = |thickness: f64| millimetres(thickness).plus_minus(millimetres(0.3));
    let stack = Stack::builder()
        .ply("flange", ply(10.0))
        .ply("core", ply(25.0))
        .ply("backing", ply(last_ply))
        .shear_planes([1, 2])
        .washers_under_nut(washer, 1)
        .build()
        .unwrap();
    Arrangement::new(
        stack,
        ScrewSeries::new(ScrewProduct::Iso4014, &thread).unwrap(),
        NutEnd::of(Nut::find(NutStyle::Iso4032, &thread).unwrap()).unwrap(),
        LengthRules::fabrication(UnitSystem::Si).with_washers_under_nut(1),
    )
}

fn choosing(c: &mut Criterion) {
    let mut group = c.benchmark_group("choosing");
    let joint = arrangement(8.0);
    let thread = joint.screws.thread();
    let mm = millimetres;
    let bolt = BoltInHand::new(thread, mm(89.6), mm(43.5), mm(51.2)).unwrap();
    group.bench_function("verdict on a bolt in the hand", |b| {
        b.iter(|| {
            black_box(&bolt)
                .verdict(&joint.stack, joint.nut, joint.rules)
                .unwrap()
        });
    });
    let mut bin = Bin::new();
    for item in 0..100_u32 {
        let length = mm(60.0 + 0.5 * f64::from(item));
        let bolt = BoltInHand::new(thread, length, length - mm(48.0), length - mm(38.0)).unwrap();
        bin = bin.measured(format!("box {item}"), &bolt, 3).unwrap();
    }
    group.bench_function("pick 24 out of a bin of 100 kinds", |b| {
        b.iter(|| {
            black_box(&bin)
                .pick(&joint.stack, &thread, joint.nut, joint.rules, 24)
                .unwrap()
        });
    });
    group.bench_function("advice where no length does", |b| {
        b.iter(|| {
            black_box(&joint)
                .advice(Goal::EveryPlaneOnShank, &[])
                .unwrap()
        });
    });
    let needs: Vec<JointNeed> = (0..200_usize)
        .map(|joint| {
            let (first, run) = (joint * 7 % 36, 2 + joint % 4);
            let lengths = (first..40.min(first + run)).map(|step| format!("M12 x {}", 5 * step));
            JointNeed::new(format!("joint {joint}"), 1 + joint % 8, lengths)
        })
        .collect();
    group.bench_function("shopping list of 200 joints, 40 lengths, proven", |b| {
        b.iter(|| shopping_list(black_box(&needs)).unwrap());
    });
    group.finish();
}

fn tolerances(c: &mut Criterion) {
    let mut group = c.benchmark_group("tolerances of 20 parts");
    let part = millimetres(5.0).plus_minus(millimetres(0.1));
    let chain = (0..20).fold(ToleranceChain::new(), |chain, _| chain.plus("part", part));
    for (name, method) in [
        ("worst case", ToleranceMethod::WorstCase),
        (
            "root sum square",
            ToleranceMethod::RootSumSquare {
                sigmas_per_tolerance: 3.0,
                confidence: 0.9973,
            },
        ),
    ] {
        group.bench_function(name, |b| {
            b.iter(|| black_box(&chain).range(black_box(method)).unwrap());
        });
    }
    let parts = [(4.9e-3, 5.0e-3, 5.1e-3); 20];
    group.bench_function("root sum square, f64 by hand, quantile given", |b| {
        b.iter(|| {
            let (mut middle, mut squares) = (0.0, 0.0_f64);
            for &(low, _, high) in black_box(&parts) {
                let half = 0.5 * (high - low);
                middle += 0.5 * (low + high);
                squares += half * half;
            }
            let reach = black_box(3.0) * squares.sqrt() / black_box(3.0);
            (middle - reach, middle + reach)
        });
    });
    group.finish();
}

criterion_group!(benches, choosing, tolerances);
criterion_main!(benches);
