//! Every mode of one ply beside the same formulas in plain f64.

use core::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use shankline::prelude::*;
use shankline::strength::ply::{HoleKind, Ply, PlyBolt, PlyMethod};

fn plies(c: &mut Criterion) {
    let plate = Ply {
        thickness: millimetres(10.0),
        hole: millimetres(22.0),
        hole_kind: HoleKind::Standard,
        slot_length: None,
        yield_strength: Some(megapascals(275.0)),
        tensile_strength: Some(megapascals(430.0)),
        bearing_strength: None,
        bearing_yield: None,
        end_distance: Some(millimetres(40.0)),
        edge_distance: Some(millimetres(50.0)),
        pitch: Some(millimetres(70.0)),
        gauge: Some(millimetres(60.0)),
        width: Some(millimetres(110.0)),
    };
    let d = millimetres(20.0);
    let bolt = PlyBolt {
        yield_strength: None,
        tensile_strength: Some(megapascals(800.0)),
    };
    let aisc = PlyMethod::Aisc360 {
        edition: AiscEdition::E2016,
        deformation_matters: true,
    };
    let mut group = c.benchmark_group("full ply check");
    group.bench_function("AISC 360, typed", |b| {
        b.iter(|| black_box(&plate).assess(black_box(d), bolt, aisc));
    });
    group.bench_function("EN 1993, typed", |b| {
        b.iter(|| black_box(&plate).assess(black_box(d), bolt, PlyMethod::En1993));
    });
    group.bench_function("AISC 360, by hand", |b| {
        b.iter(|| {
            let (d, t, hole, e1, p1, w) = black_box((20.0, 10.0, 22.0, 40.0, 70.0, 110.0));
            let (fy, fu) = black_box((275.0, 430.0));
            let clear = f64::min(e1 - 0.5 * hole, p1 - hole);
            [
                0.75 * 2.4 * d * t * fu,
                0.75 * 1.2 * clear * t * fu,
                0.75 * (w - hole - 1.5875) * t * fu,
                0.90 * w * t * fy,
            ]
        });
    });
    group.finish();
}

criterion_group!(benches, plies);
criterion_main!(benches);
