//! The search over every stock length of one diameter, beside a hand-written f64 enumeration of
//! the same lengths, washers and planes.
//!
//! Target: at most 5 us for every stock length of one diameter with up to three added washers and
//! 8 toleranced plies, no heap allocation beyond the result and its order.

use criterion::{Criterion, criterion_group, criterion_main};
use shankline::prelude::*;
use std::hint::black_box;

fn stack(plies: usize) -> Stack {
    let mut builder = Stack::builder().shear_planes(1..plies);
    for _ in 0..plies {
        builder = builder.ply("ply", inches(0.25).plus_minus(inches(0.008)));
    }
    let thread: Thread = "3/4-10 UNC".parse().unwrap();
    let washer = Washer::find(WasherStyle::TypeANarrow, &thread)
        .unwrap()
        .thickness()
        .unwrap();
    builder.washers_under_nut(washer, 1).build().unwrap()
}

/// Best length by the same rules in plain f64: inches, B18.2.1 rule, no verdicts kept.
fn by_hand(
    plies: &[(f64, f64)],
    washer: (f64, f64),
    nut: (f64, f64),
) -> Option<(usize, f64, usize)> {
    let (lo, hi) = plies
        .iter()
        .fold((0.0, 0.0), |(lo, hi), ply| (lo + ply.0, hi + ply.1));
    let mut best: Option<((usize, usize, bool, usize), f64)> = None;
    let mut step = 0;
    loop {
        #[allow(clippy::cast_precision_loss)]
        let length = match step {
            0..=2 => 0.75 + 0.125 * f64::from(step),
            3..=22 => 1.0 + 0.25 * f64::from(step - 2),
            _ => 6.0 + 0.5 * f64::from(step - 22),
        };
        if length > 12.0 {
            break;
        }
        step += 1;
        let (lb, lg) = if length <= 2.5 {
            (0.0, 0.25)
        } else {
            let thread = if length <= 6.0 { 1.75 } else { 2.0 };
            (length - thread - 0.5, length - thread)
        };
        let minus = match length {
            l if l <= 1.0 => 0.03,
            l if l <= 2.5 => 0.08,
            l if l <= 6.0 => 0.10,
            _ => 0.18,
        };
        let (mut x, mut in_thread, mut not_shank) = (0.0, 0, 0);
        for ply in &plies[..plies.len() - 1] {
            x += ply.1;
            in_thread += usize::from(x > lg);
            not_shank += usize::from(x > lb);
        }
        for added in 0..=2_usize {
            #[allow(clippy::cast_precision_loss)]
            let washers = 1.0 + added as f64;
            let (g_min, g_max) = (lo + washers * washer.0, hi + washers * washer.1);
            let fits = g_min >= lg && length - minus - g_max - nut.1 >= 0.2;
            let cut = length - g_min - nut.0 > 0.5;
            let key = (in_thread, not_shank, cut, added);
            if fits && best.is_none_or(|(known, l)| (key, length) < (known, l)) {
                best = Some((key, length));
            }
        }
    }
    best.map(|((thread, ..), length)| (thread, length, 0))
}

fn search(c: &mut Criterion) {
    let mut group = c.benchmark_group("length search");
    let thread: Thread = "3/4-10 UNC".parse().unwrap();
    let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &thread).unwrap();
    let nut = NutEnd::of(Nut::find(NutStyle::InsertLockNe, &thread).unwrap()).unwrap();
    let rules = LengthRules::fabrication(UnitSystem::UsCustomary);
    for plies in [3, 8] {
        let stack = stack(plies);
        group.bench_function(format!("{plies} plies, 3/4 in, all stock lengths"), |b| {
            let search = LengthSearch::new(&stack, &screws, nut, rules).unwrap();
            b.iter(|| black_box(&search).run().unwrap());
        });
    }
    let plies = [(0.242, 0.258); 8];
    group.bench_function("8 plies, f64 by hand, best only", |b| {
        b.iter(|| {
            by_hand(
                black_box(&plies),
                black_box((0.108, 0.160)),
                black_box((0.860, 0.890)),
            )
        });
    });
    group.bench_function("build the stack of 8 plies", |b| {
        b.iter(|| stack(black_box(8)));
    });
    let m20 = ScrewSeries::new(ScrewProduct::Iso4014, &"M20".parse().unwrap()).unwrap();
    group.bench_function("8 plies, M20, all stock lengths", |b| {
        let stack = stack(8);
        let search = LengthSearch::new(&stack, &m20, nut, rules).unwrap();
        b.iter(|| black_box(&search).run().unwrap());
    });
    group.finish();
}

/// A drag in a drawing: one ply changes its thickness, and everything is searched again.
fn drag(c: &mut Criterion) {
    let mut group = c.benchmark_group("drag");
    let thread: Thread = "3/4-10 UNC".parse().unwrap();
    let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &thread).unwrap();
    let nut = NutEnd::of(Nut::find(NutStyle::InsertLockNe, &thread).unwrap()).unwrap();
    let rules = LengthRules::fabrication(UnitSystem::UsCustomary);
    let washer = Washer::find(WasherStyle::TypeANarrow, &thread)
        .unwrap()
        .thickness()
        .unwrap();
    let ear = inches(0.5).plus_minus(inches(0.015));
    let built = |thickness: f64| {
        Stack::builder()
            .ply("ear", ear)
            .ply("tongue", inches(thickness).plus_minus(inches(0.02)))
            .ply("ear", ear)
            .shear_planes([1, 2])
            .washers_under_nut(washer, 1)
            .build()
            .unwrap()
    };
    let every = |stack: &Stack| LengthSearch::new(stack, &screws, nut, rules).unwrap().run();
    let best = |stack: &Stack| {
        LengthSearch::new(stack, &screws, nut, rules)
            .unwrap()
            .best()
    };
    group.bench_function("one ply changes, stack built and searched again", |b| {
        let mut thickness = 0.5;
        b.iter(|| {
            thickness = if thickness > 3.0 {
                0.5
            } else {
                thickness + 0.001
            };
            every(&built(black_box(thickness))).unwrap()
        });
    });
    group.sample_size(10);
    // Ten thousand tongues from 0.3 to 3.3 in thick.
    let joints = || (0..10_000).map(|step| built(0.3 + 0.0003 * f64::from(step)));
    group.bench_function("10 000 joints, every stock length with its reasons", |b| {
        let found = |stack: Stack| every(&stack).unwrap().best().copied();
        b.iter(|| joints().filter_map(found).count());
    });
    group.bench_function("10 000 joints, the best length only", |b| {
        b.iter(|| joints().filter_map(|stack| best(&stack).unwrap()).count());
    });
    group.finish();
}

criterion_group!(benches, search, drag);
criterion_main!(benches);
