//! One shear plane, and a bolt bending across a gap, beside the same in plain f64.

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use shankline::prelude::*;
use shankline::strength::pin::PinJoint;
use shankline::strength::shear::{ConnectionFacts, LoadedPlane, PlaneRule, shear_resistance};
use std::f64::consts::FRAC_PI_4;
use std::hint::black_box;

const COUNT: u32 = 1000;

fn one_plane(c: &mut Criterion) {
    let thread: Thread = "M20".parse().unwrap();
    let strength = PropertyClass::Class8_8.strength(millimetres(20.0)).unwrap();
    let planes = LoadedPlane::equal(&[Zone::Thread]);
    let none = ConnectionFacts::default();
    let mut group = c.benchmark_group("one plane");
    group.bench_function("f64 by hand", |b| {
        b.iter(|| {
            let (d, p, fub) = black_box((20.0, 2.5, 800.0));
            let effective = d - 0.938_194_187_433_076_9 * p;
            0.6 * fub * (FRAC_PI_4 * effective * effective) / 1.25
        });
    });
    for (name, method) in [
        ("EN 1993-1-8, class looked up", ShearMethod::En1993),
        ("AS 4100", ShearMethod::As4100),
    ] {
        group.bench_function(name, |b| {
            b.iter(|| {
                shear_resistance(
                    black_box(&thread),
                    &strength,
                    black_box(&planes),
                    PlaneRule::Each,
                    method,
                    &none,
                )
            });
        });
    }
    group.finish();
}

fn bending(c: &mut Criterion) {
    let mut group = c.benchmark_group("bolt bending across a gap");
    group.throughput(Throughput::Elements(u64::from(COUNT)));
    let loads: Vec<f64> = (0..COUNT).map(|i| 1e3 + f64::from(i)).collect();
    group.bench_function("f64 by hand", |b| {
        b.iter(|| {
            let (outer, inner, gap) = black_box((0.012, 0.020, 0.001));
            black_box(&loads)
                .iter()
                .filter(|load| (0.0..f64::INFINITY).contains(*load))
                .map(|load| 0.5 * load * (0.5 * outer + 0.25 * inner + gap))
                .filter(|moment| (0.0..f64::INFINITY).contains(moment))
                .sum::<f64>()
        });
    });
    let mm = millimetres;
    let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0)).unwrap();
    let typed: Vec<Force> = loads.iter().map(|&load| newtons(load)).collect();
    group.bench_function("typed", |b| {
        b.iter(|| {
            let joint = black_box(&joint);
            black_box(&typed)
                .iter()
                .filter_map(|&load| joint.moment(load).ok())
                .sum::<Torque>()
        });
    });
    group.finish();
}

criterion_group!(benches, one_plane, bending);
criterion_main!(benches);
