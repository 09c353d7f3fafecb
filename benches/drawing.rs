//! From a verdict to its geometry, and from there to a picture.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use shankline::drawing;
use shankline::prelude::*;

/// Three plies, washers at both ends, two shear planes.
fn joint() -> Joint {
    Joint::builder("M16")
        .title("seesaw pivot (invented)")
        .ply("lug", "12 +/- 0.3 mm")
        .hole("17.5 mm")
        .ply("boss", "30 +/- 0.3 mm")
        .hole("17.5 mm")
        .ply("lug", "12 +/- 0.3 mm")
        .hole("17.5 mm")
        .across("9 kN")
        .build()
        .expect("a joint")
}

fn pictures(c: &mut Criterion) {
    let joint = joint();
    let verdict = joint.check().expect("a verdict");
    let assembly = joint.assembly(&verdict.candidate).expect("an assembly");
    let si = UnitSystem::Si;
    c.bench_function("assembly of a joint", |b| {
        b.iter(|| black_box(&joint).assembly(black_box(&verdict.candidate)));
    });
    c.bench_function("section as SVG", |b| {
        b.iter(|| drawing::section(black_box(&assembly), Some(black_box(&verdict)), si).svg());
    });
    c.bench_function("section as DXF", |b| {
        b.iter(|| drawing::section_dxf(black_box(&assembly), si));
    });
    c.bench_function("use of every check as SVG", |b| {
        b.iter(|| drawing::utilisation(&joint.title, black_box(&verdict), si).svg());
    });
}

criterion_group!(benches, pictures);
criterion_main!(benches);
