//! Thread look-up and designation parsing.
//!
//! Targets: look-up by size and series at most 20 ns, designation at most 200 ns.

use criterion::{Criterion, criterion_group, criterion_main};
use shankline::prelude::*;
use shankline::tables::threads::{MetricThread, UnifiedThread};
use std::hint::black_box;

fn lookup(c: &mut Criterion) {
    let mut group = c.benchmark_group("lookup");
    group.bench_function("unified by size and series", |b| {
        let size = inches(0.75);
        b.iter(|| UnifiedThread::get(black_box(size), black_box(UnifiedSeries::Unc)));
    });
    group.bench_function("metric by size and pitch", |b| {
        let (size, pitch) = (millimetres(20.0), millimetres(2.5));
        b.iter(|| MetricThread::get(black_box(size), black_box(pitch)));
    });
    let thread: Thread = "3/4-10 UNC".parse().unwrap();
    group.bench_function("nut by style and thread", |b| {
        b.iter(|| Nut::find(black_box(NutStyle::InsertLockNe), black_box(&thread)));
    });
    group.bench_function("grade strength at a size", |b| {
        let grade = BoltGrade::from(SaeGrade::Grade8);
        b.iter(|| black_box(grade).strength(black_box(inches(0.75))));
    });
    group.finish();

    let mut group = c.benchmark_group("designation");
    for text in [
        "3/4-10 UNC",
        "#10-32 UNF",
        "1-1/2-6 UNC-2A",
        "M12x1.25",
        "M10 x 1.5 - 6g",
        "1-1/2-12 UNRF-2A-LH",
        "0.750-0.0625P-0.1875L (3 STARTS) UNS-2A",
        "M20x2-7g6g-L-LH",
    ] {
        group.bench_function(text, |b| b.iter(|| black_box(text).parse::<Thread>()));
    }
    group.finish();
}

criterion_group!(benches, lookup);
criterion_main!(benches);
