//! Typed calculations beside the same formula written by hand in plain f64, in the same run.
//!
//! Target: at most 1.05 times the hand-written formula. Each pair works on 1000 values, so that
//! the loop and not the call is measured; the hand-written twin makes the same checks where the
//! typed function must make them.

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use shankline::prelude::*;
use shankline::tables::threads::UnifiedThread;
use shankline::thread::area;
use std::f64::consts::FRAC_PI_4;
use std::hint::black_box;

const COUNT: usize = 1000;

#[allow(clippy::cast_precision_loss)]
fn value(index: usize) -> f64 {
    1.0 + index as f64 / COUNT as f64
}

fn stress_area(c: &mut Criterion) {
    let mut group = c.benchmark_group("tensile stress area");
    group.throughput(Throughput::Elements(COUNT as u64));
    let diameters: Vec<f64> = (0..COUNT).map(|i| 0.0254 * value(i)).collect();
    let pitch = 0.0254 / 8.0;
    group.bench_function("checked, f64 by hand", |b| {
        b.iter(|| {
            let mut sum = 0.0;
            for &d in black_box(&diameters) {
                let p = black_box(pitch);
                let effective = d - 0.974_278_579_257_493_4 * p;
                if p > 0.0 && p < f64::INFINITY && d > 0.0 && d < f64::INFINITY && effective > 0.0 {
                    sum += FRAC_PI_4 * (effective * effective);
                }
            }
            sum
        });
    });
    let typed: Vec<Length> = (0..COUNT).map(|i| inches(value(i))).collect();
    let typed_pitch = inches(1.0 / 8.0);
    group.bench_function("checked, typed", |b| {
        b.iter(|| {
            let mut sum = square_inches(0.0);
            for &d in black_box(&typed) {
                if let Ok(area) = area::unified(d, black_box(typed_pitch)) {
                    sum += area;
                }
            }
            sum
        });
    });
    let rows: Vec<(f64, f64)> = UnifiedThread::all()
        .iter()
        .map(|row| (row.nominal_diameter.value, row.pitch().value))
        .collect();
    let threads: Vec<Thread> = UnifiedThread::all()
        .iter()
        .map(|row| Thread::unified(row.nominal_diameter, row.series).unwrap())
        .collect();
    group.throughput(Throughput::Elements(rows.len() as u64));
    group.bench_function("of every thread, f64 by hand", |b| {
        b.iter(|| {
            black_box(&rows)
                .iter()
                .map(|(d, p)| {
                    let effective = d - 0.974_278_579_257_493_4 * p;
                    FRAC_PI_4 * (effective * effective)
                })
                .sum::<f64>()
        });
    });
    group.bench_function("of every thread, typed", |b| {
        b.iter(|| {
            black_box(&threads)
                .iter()
                .map(Thread::tensile_stress_area)
                .sum::<Area>()
        });
    });
    group.finish();
}

fn preload(c: &mut Criterion) {
    let mut group = c.benchmark_group("preload from torque");
    group.throughput(Throughput::Elements(COUNT as u64));
    let (low, nominal, high, d) = (0.15, 0.20, 0.25, 0.0127);
    let torques: Vec<f64> = (0..COUNT).map(|i| 100.0 * value(i)).collect();
    group.bench_function("f64 by hand", |b| {
        b.iter(|| {
            let mut sum = 0.0;
            for &t in black_box(&torques) {
                let (min, middle, max) = (t / (high * d), t / (nominal * d), t / (low * d));
                if (0.0..f64::INFINITY).contains(&max) {
                    sum += min + middle + max;
                }
            }
            sum
        });
    });
    let form = ShortForm::new(NutFactor::new(low, nominal, high).unwrap(), inches(0.5)).unwrap();
    let typed: Vec<Torque> = (0..COUNT)
        .map(|i| newton_metres(100.0 * value(i)))
        .collect();
    group.bench_function("typed", |b| {
        b.iter(|| {
            let mut sum = newtons(0.0);
            for &torque in black_box(&typed) {
                if let Ok(preload) = form.preload(torque) {
                    sum += preload.min + preload.nominal + preload.max;
                }
            }
            sum
        });
    });
    group.finish();
}

fn shear(c: &mut Criterion) {
    let mut group = c.benchmark_group("double shear");
    group.throughput(Throughput::Elements(COUNT as u64));
    let thread: Thread = "3/4-10 UNC".parse().unwrap();
    let strength = SaeGrade::Grade8.strength(inches(0.75)).unwrap();
    let planes = [Zone::Shank, Zone::RunOut];
    let factors: Vec<f64> = (0..COUNT).map(value).collect();
    let (d, p, yield_stress) = (
        0.75 * 0.0254,
        0.00254,
        strength.yield_strength.map(|stress| stress.value),
    );
    let zones = [false, true];
    group.bench_function("f64 by hand", |b| {
        b.iter(|| {
            let mut sum = 0.0;
            for &factor in black_box(&factors) {
                let (d, p) = black_box((d, p));
                let in_thread = black_box(&zones).iter().any(|zone| *zone);
                let effective = if in_thread {
                    d - 1.299_038_105_676_658 * p
                } else {
                    d
                };
                let area = FRAC_PI_4 * (effective * effective);
                // A grade may have no yield strength, and a factor may be nonsense.
                if let Some(stress) = black_box(yield_stress) {
                    if (1.0..=100.0).contains(&factor) {
                        sum += 2.0 * (0.577 * (stress * area)) / factor;
                    }
                }
            }
            sum
        });
    });
    group.bench_function("typed", |b| {
        b.iter(|| {
            let mut sum = newtons(0.0);
            for &design_factor in black_box(&factors) {
                let method = ShearMethod::DistortionEnergy {
                    basis: ShearBasis::Yield,
                    design_factor,
                };
                if let Ok(shear) =
                    bolt_shear(black_box(&thread), &strength, black_box(&planes), method)
                {
                    sum += shear.allowable;
                }
            }
            sum
        });
    });
    group.finish();
}

criterion_group!(benches, stress_area, preload, shear);
criterion_main!(benches);
