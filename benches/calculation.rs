//! Typed calculations beside the same formula written by hand in plain f64, in the same run.
//!
//! Target: at most 1.05 times the hand-written formula. Each pair works on 1000 values, so that
//! the loop and not the call is measured; the hand-written twin makes the same checks where the
//! typed function must make them.

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use shankline::prelude::*;
use shankline::tables::threads::UnifiedThread;
use shankline::thread::area;
use shankline::thread::strip::{EngagedLength, bolt_thread_area, nut_thread_area};
use shankline::uom::si::length::meter;
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

/// Pitch diameter and major diameter of class 2A, rounded as the tables are, in inches.
fn limits_by_hand(d: f64, n: f64, engagement: f64) -> [f64; 5] {
    let round = |value: f64| (value * 1e4 + 0.5 + 1e-6).floor() / 1e4;
    let p = 1.0 / n;
    let p_23 = (p * p).cbrt();
    let t = 0.0015 * d.cbrt() + 0.0015 * engagement.sqrt() + 0.015 * p_23;
    let allowance = round(0.300 * t);
    let pitch = round(d - 0.649_519_052_838_329 * p) - allowance;
    let major = d - allowance;
    let root = round(d - 1.082_531_754_730_548 * p) - round(0.108_253_175_473_055 * p);
    [
        pitch,
        pitch - round(t),
        major,
        major - round(0.060 * p_23),
        root - allowance,
    ]
}

fn limits_of_size(c: &mut Criterion) {
    let mut group = c.benchmark_group("limits of size of every thread");
    let rows = UnifiedThread::all();
    group.throughput(Throughput::Elements(rows.len() as u64));
    let by_hand: Vec<(f64, f64, f64)> = rows
        .iter()
        .map(|row| {
            let d = row.nominal_diameter.value / 0.0254;
            (d, row.threads_per_inch, d)
        })
        .collect();
    group.bench_function("2A, f64 by hand", |b| {
        b.iter(|| {
            black_box(&by_hand)
                .iter()
                .map(|(d, n, engagement)| limits_by_hand(*d, *n, *engagement)[1])
                .sum::<f64>()
        });
    });
    let threads: Vec<Thread> = rows
        .iter()
        .map(|row| Thread::unified(row.nominal_diameter, row.series).unwrap())
        .collect();
    let class = "2A".parse().unwrap();
    group.bench_function("2A, typed", |b| {
        b.iter(|| {
            black_box(&threads)
                .iter()
                .filter_map(|thread| thread.limits_of(black_box(class)).ok())
                .map(|limits| limits.pitch_diameter.min)
                .sum::<Length>()
        });
    });
    group.finish();

    let mut group = c.benchmark_group("limits of size");
    for (text, name) in [("1/2-13 UNC", "2B"), ("M12", "6g"), ("M64", "6H")] {
        let thread: Thread = text.parse().unwrap();
        let class = name.parse().unwrap();
        group.bench_function(format!("{text}-{name}"), |b| {
            b.iter(|| black_box(&thread).limits_of(black_box(class)));
        });
    }
    group.finish();
}

/// One area of FED-STD-H28/2, with the checks the typed formula must make.
fn strip_by_hand(cylinder: f64, flank: f64, pitch: f64, length: f64) -> Option<f64> {
    const LONGEST: f64 = 1e3;
    let width = 0.5 * pitch + 0.577_350_269_189_625_8 * flank;
    let sound = cylinder > 0.0 && width > 0.0 && pitch > 0.0 && length > 0.0;
    let area = std::f64::consts::PI * (length / pitch) * (cylinder * width);
    let in_range = cylinder <= LONGEST && pitch <= LONGEST && length <= LONGEST;
    (sound && in_range && area > 0.0 && area < f64::INFINITY).then_some(area)
}

fn strip(c: &mut Criterion) {
    let mut group = c.benchmark_group("strip areas");
    let fit = "1/2-13 UNC".parse::<Thread>().unwrap();
    let fit = fit
        .fit("2A".parse().unwrap(), "2B".parse().unwrap())
        .unwrap();
    let pitch = fit.bolt.thread.pitch();
    // Cylinder and the pitch diameter on its other side, of bolt and of nut threads.
    let diameters = [
        fit.nut.crest_diameter.max,
        fit.bolt.pitch_diameter.min,
        fit.bolt.crest_diameter.min,
        fit.nut.pitch_diameter.max,
    ];
    group.throughput(Throughput::Elements(COUNT as u64));
    group.bench_function("checked, f64 by hand", |b| {
        b.iter(|| {
            let pitch = black_box(pitch).value;
            let [minor, bolt_pitch, major, nut_pitch] = black_box(diameters).map(|d| d.value);
            (0..COUNT)
                .filter_map(|i| {
                    let length = 0.01 * value(i);
                    let bolt = strip_by_hand(minor, bolt_pitch - minor, pitch, length)?;
                    Some(bolt.min(strip_by_hand(major, major - nut_pitch, pitch, length)?))
                })
                .sum::<f64>()
        });
    });
    group.bench_function("checked, typed", |b| {
        b.iter(|| {
            let pitch = black_box(pitch);
            let [minor, bolt_pitch, major, nut_pitch] = black_box(diameters);
            (0..COUNT)
                .filter_map(|i| {
                    let length = Length::new::<meter>(0.01 * value(i));
                    let bolt = bolt_thread_area(minor, bolt_pitch, pitch, length).ok()?;
                    Some(
                        bolt.min(nut_thread_area(major, nut_pitch, pitch, length).ok()?)
                            .value,
                    )
                })
                .sum::<f64>()
        });
    });
    group.bench_function("of a fit, with diameters and cautions", |b| {
        b.iter(|| {
            (0..COUNT)
                .filter_map(|i| EngagedLength::new(inches(0.01 * value(i))).ok())
                .filter_map(|engaged| black_box(&fit).strip_areas(engaged).ok())
                .map(|areas| areas.nut_threads.value)
                .sum::<f64>()
        });
    });
    group.finish();
}

criterion_group!(benches, stress_area, preload, shear, limits_of_size, strip);
criterion_main!(benches);
