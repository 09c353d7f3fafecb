//! Bolt groups: 12 bolts under an inclined load, by both methods.
//!
//! The hand-written elastic method returns the same forces in a new list, and checks nothing.

#![allow(clippy::cast_precision_loss)] // a few bolts at most

use criterion::{Criterion, criterion_group, criterion_main};
use shankline::strength::group::{BoltPattern, DeformationLaw, PlaneLoad};
use shankline::units::{degrees, millimetres, newtons};
use std::hint::black_box;

type Force = (f64, f64, f64);

fn by_hand(bolts: &[(f64, f64)], px: f64, py: f64, x: f64, y: f64) -> (Vec<Force>, usize) {
    let n = bolts.len() as f64;
    let (cx, cy) = bolts
        .iter()
        .fold((0.0, 0.0), |(a, b), (x, y)| (a + x / n, b + y / n));
    let polar: f64 = bolts
        .iter()
        .map(|(x, y)| (x - cx).powi(2) + (y - cy).powi(2))
        .sum();
    let turn = ((x - cx) * py - (y - cy) * px) / polar;
    let (mut worst, mut most) = (0, 0.0);
    let mut forces = Vec::with_capacity(bolts.len());
    for (i, (x, y)) in bolts.iter().enumerate() {
        let (fx, fy) = (px / n - turn * (y - cy), py / n + turn * (x - cx));
        let force = (fx * fx + fy * fy).sqrt();
        if force > most {
            (worst, most) = (i, force);
        }
        forces.push((fx, fy, force));
    }
    (forces, worst)
}

fn groups(c: &mut Criterion) {
    let pattern =
        BoltPattern::rows_and_columns(6, 2, millimetres(75.0), millimetres(140.0)).unwrap();
    let (e, angle) = (millimetres(300.0), degrees(30.0));
    let load = PlaneLoad::eccentric(&pattern, newtons(200e3), e, angle);
    let bolts: Vec<(f64, f64)> = pattern
        .bolts()
        .iter()
        .map(|bolt| (bolt.x.value, bolt.y.value))
        .collect();
    let law = DeformationLaw::Aisc;
    let steps = pattern.instantaneous_centre(&[load], law).unwrap();
    println!("instantaneous centre, 12 bolts: {} steps", steps.iterations);

    let mut group = c.benchmark_group("groups of 12 bolts");
    group.bench_function("elastic", |b| {
        b.iter(|| black_box(&pattern).elastic(black_box(&[load])));
    });
    group.bench_function("elastic by hand", |b| {
        let (px, py) = (load.force_x.value, load.force_y.value);
        let (x, y) = (load.at.x.value, load.at.y.value);
        b.iter(|| by_hand(black_box(&bolts), black_box(px), py, x, y));
    });
    group.bench_function("instantaneous centre", |b| {
        b.iter(|| black_box(&pattern).instantaneous_centre(black_box(&[load]), law));
    });
    group.finish();
}

criterion_group!(benches, groups);
criterion_main!(benches);
