//! Torque, preload, tightening stress and turn beside the same formulas by hand in plain f64, in the
//! same run. The hand-written twin makes the same checks and keeps the same spread.

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use shankline::prelude::*;
use shankline::units::{Angle, newtons_per_millimetre, percent};
use shankline::uom::si::angle::radian;
use std::f64::consts::{FRAC_PI_4, PI};
use std::hint::black_box;

const COUNT: usize = 1000;
/// 1 / cos 30.
const FLANK: f64 = 1.154_700_538_379_251_5;

#[allow(clippy::cast_precision_loss)]
fn values(scale: f64) -> Vec<f64> {
    (0..COUNT)
        .map(|i| scale * (1.0 + i as f64 / COUNT as f64))
        .collect()
}

fn m12() -> (Thread, Length, Friction) {
    let friction = Friction::new(0.10, 0.12, 0.16).unwrap();
    ("M12".parse().unwrap(), millimetres(15.065), friction)
}

fn lock() -> Spread<Torque> {
    Spread {
        min: newton_metres(1.0),
        nominal: newton_metres(3.0),
        max: newton_metres(6.0),
    }
}

/// Arms of the linear form for M12, in metres.
fn arm(mu: f64) -> f64 {
    let (p, d2, db) = (1.75e-3, 10.863_366e-3, 15.065e-3);
    p / (2.0 * PI) + mu * (0.5 * FLANK * d2 + 0.5 * db)
}

fn preload(c: &mut Criterion) {
    let mut group = c.benchmark_group("preload from torque, linear form with drag");
    group.throughput(Throughput::Elements(COUNT as u64));
    let torques = values(60.0);
    let arms = black_box([arm(0.10), arm(0.12), arm(0.16)]);
    let drag = black_box([1.0, 3.0, 6.0]);
    group.bench_function("f64 by hand", |b| {
        b.iter(|| {
            let mut sum = 0.0;
            for &t in black_box(&torques) {
                let min = (t - drag[2]) / arms[2];
                let nominal = (t - drag[1]) / arms[1];
                let max = (t - drag[0]) / arms[0];
                if t >= drag[2] && max < f64::INFINITY {
                    sum += min + nominal + max;
                }
            }
            sum
        });
    });
    let (thread, bearing, friction) = m12();
    let form = FrictionForm::linear(&thread, bearing, friction, friction)
        .unwrap()
        .with_prevailing(lock())
        .unwrap();
    let typed: Vec<Torque> = torques.iter().map(|&t| newton_metres(t)).collect();
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

fn torque(c: &mut Criterion) {
    let mut group = c.benchmark_group("torque from preload, linear form with drag");
    group.throughput(Throughput::Elements(COUNT as u64));
    let forces = values(30e3);
    let arms = black_box([arm(0.10), arm(0.12), arm(0.16)]);
    let drag = black_box([1.0, 3.0, 6.0]);
    group.bench_function("f64 by hand", |b| {
        b.iter(|| {
            let mut sum = 0.0;
            for &f in black_box(&forces) {
                let min = f * arms[0] + drag[0];
                let nominal = f * arms[1] + drag[1];
                let max = f * arms[2] + drag[2];
                if f >= 0.0 && max < f64::INFINITY {
                    sum += min + nominal + max;
                }
            }
            sum
        });
    });
    let (thread, bearing, friction) = m12();
    let form = FrictionForm::linear(&thread, bearing, friction, friction)
        .unwrap()
        .with_prevailing(lock())
        .unwrap();
    let typed: Vec<Force> = forces.iter().map(|&f| newtons(f)).collect();
    group.bench_function("typed", |b| {
        b.iter(|| {
            let mut sum = newton_metres(0.0);
            for &force in black_box(&typed) {
                if let Ok(torque) = form.torque(force) {
                    sum += torque.min + torque.nominal + torque.max;
                }
            }
            sum
        });
    });
    group.finish();
}

fn yielding(c: &mut Criterion) {
    let mut group = c.benchmark_group("preload and torque at 90 % of yield");
    group.throughput(Throughput::Elements(COUNT as u64));
    let strengths = values(640e6);
    group.bench_function("f64 by hand", |b| {
        b.iter(|| {
            let mut sum = 0.0;
            for &strength in black_box(&strengths) {
                // Each time a new thread and friction, as for the typed function.
                let (d, p): (f64, f64) = black_box((12e-3, 1.75e-3));
                let frictions = black_box([0.16, 0.12, 0.10]);
                let drags = black_box([6.0, 3.0, 1.0]);
                let d0 = (d - 0.938_194_3 * p).abs();
                let allowed = 0.9 * strength * FRAC_PI_4 * d0 * d0;
                let per_torque = 3f64.sqrt() * 3.0 / d0;
                let mut least = f64::INFINITY;
                for (mu, drag) in frictions.into_iter().zip(drags) {
                    let thread = p / (2.0 * PI) + 0.5 * FLANK * mu * (d - 0.649_519 * p);
                    let (c, t) = (per_torque * thread, per_torque * drag);
                    let left = (allowed - t) * (allowed + t);
                    let root = (c * c * t * t + (1.0 + c * c) * left).sqrt();
                    let force = left / (c * t + root);
                    let torque = force * (thread + 0.5 * 15.065e-3 * mu) + drag;
                    least = least.min(torque);
                    sum += force + torque;
                }
                sum += least;
            }
            sum
        });
    });
    let (thread, bearing, friction) = m12();
    let form = FrictionForm::linear(&thread, bearing, friction, friction)
        .unwrap()
        .with_prevailing(lock())
        .unwrap();
    let typed: Vec<Stress> = strengths.iter().map(|&s| megapascals(s * 1e-6)).collect();
    group.bench_function("typed, keeps its intermediates", |b| {
        b.iter(|| {
            let mut sum = (newtons(0.0), newton_metres(0.0));
            for &strength in black_box(&typed) {
                if let Ok(limit) =
                    form.assembly_preload(strength, percent(90.0), TorsionModel::Vdi2230)
                {
                    sum.0 += limit.preload.min + limit.preload.nominal + limit.preload.max;
                    sum.1 += limit.torque.min + limit.torque.nominal + limit.torque.max;
                }
            }
            sum
        });
    });
    group.finish();
}

fn turn(c: &mut Criterion) {
    let mut group = c.benchmark_group("preload from turn");
    group.throughput(Throughput::Elements(COUNT as u64));
    let angles = values(1.0);
    group.bench_function("f64 by hand", |b| {
        b.iter(|| {
            let (kb, km, p): (f64, f64, f64) = black_box((3e8, 12e8, 1.75e-3));
            let factor = kb * km / (kb + km) * p / (2.0 * PI);
            let mut sum = 0.0;
            for &angle in black_box(&angles) {
                let force = angle * factor;
                if angle >= 0.0 && force < f64::INFINITY {
                    sum += force;
                }
            }
            sum
        });
    });
    let (kb, km) = (
        newtons_per_millimetre(300e3),
        newtons_per_millimetre(1200e3),
    );
    let joint = ElasticJoint::new(millimetres(1.75), kb, km).unwrap();
    let typed: Vec<Angle> = angles.iter().map(|&a| Angle::new::<radian>(a)).collect();
    group.bench_function("typed", |b| {
        b.iter(|| {
            let joint = black_box(joint);
            let mut sum = newtons(0.0);
            for &angle in black_box(&typed) {
                if let Ok(preload) = joint.preload(angle) {
                    sum += preload;
                }
            }
            sum
        });
    });
    group.finish();
}

criterion_group!(benches, preload, torque, yielding, turn);
criterion_main!(benches);
