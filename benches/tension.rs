//! Stiffness, load share and fatigue beside the same formulas by hand in plain f64, in the same run.

use std::f64::consts::PI;
use std::hint::black_box;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use shankline::prelude::*;
use shankline::tension::{
    Cones, EnduranceStrength, FatigueCriterion, FatigueStrengths, FatigueStress, JointDiagram,
    Layer, LoadShare, MachineDesignFatigue,
};
use shankline::units::{Stiffness, newtons_per_millimetre};

const COUNT: usize = 1000;

#[allow(clippy::cast_precision_loss)]
fn value(index: usize) -> f64 {
    1.0 + index as f64 / COUNT as f64
}

fn frusta(c: &mut Criterion) {
    let mut group = c.benchmark_group("members of four layers");
    group.throughput(Throughput::Elements(COUNT as u64));
    let stacks: Vec<[(f64, f64); 4]> = (0..COUNT)
        .map(|i| {
            let v = value(i);
            [
                (0.003, 207e9),
                (0.012 * v, 207e9),
                (0.020 * v, 100e9),
                (0.003, 207e9),
            ]
        })
        .collect();
    let typed: Vec<[Layer; 4]> = stacks
        .iter()
        .map(|stack| {
            stack.map(|(t, e)| Layer::new(millimetres(1000.0 * t), megapascals(1e-6 * e)).unwrap())
        })
        .collect();
    group.bench_function("f64 by hand", |b| {
        b.iter(|| {
            let mut sum = 0.0;
            for stack in &stacks {
                let stack: &[(f64, f64)] = black_box(stack); // any number of layers, as there
                let (d, dw, tan) = black_box((0.016, 0.024, 0.577_350_269_189_625_8));
                let grip: f64 = stack.iter().map(|l| l.0).sum();
                let (mut top, mut resilience) = (0.0, 0.0);
                let mut add = |t: f64, e: f64, s: f64| {
                    let large = 2.0 * t * tan + s;
                    resilience += (((large - d) * (s + d)) / ((large + d) * (s - d))).ln()
                        / (PI * tan * e * d);
                };
                for &(t, e) in stack {
                    let (bottom, middle): (f64, f64) = (top + t, 0.5 * grip);
                    if top < middle {
                        add(bottom.min(middle) - top, e, dw + 2.0 * tan * top);
                    }
                    if bottom > middle {
                        add(
                            bottom - top.max(middle),
                            e,
                            dw + 2.0 * tan * (grip - bottom),
                        );
                    }
                    top = bottom;
                }
                sum += 1.0 / resilience;
            }
            sum
        });
    });
    let cones = Cones::shigley(millimetres(16.0)).unwrap();
    group.bench_function("typed", |b| {
        b.iter(|| {
            let mut sum = newtons_per_millimetre(0.0);
            for stack in &typed {
                if let Ok(stiffness) = black_box(&cones).stiffness(black_box(stack)) {
                    sum += stiffness;
                }
            }
            sum
        });
    });
    group.finish();
}

fn share_and_factors(c: &mut Criterion) {
    let mut group = c.benchmark_group("share and factors");
    group.throughput(Throughput::Elements(COUNT as u64));
    let raw: Vec<f64> = (0..COUNT).map(|i| 1e9 * value(i)).collect();
    let typed: Vec<Stiffness> = raw
        .iter()
        .map(|k| newtons_per_millimetre(1e-3 * k))
        .collect();
    let positive = |x: f64| x > 0.0 && x < 1e20;
    group.bench_function("checked, f64 by hand", |b| {
        b.iter(|| {
            let mut sum = 0.0;
            for &kb in black_box(&raw) {
                let (km, fi, p, fp) = black_box((3e9, 60e3, 10e3, 90e3));
                if positive(kb) && positive(km) && positive(fi) && positive(p) && fi < fp {
                    let c = kb / (kb + km);
                    let np = fp / (c * p + fi);
                    let nl = (fp - fi) / (c * p);
                    let n0 = fi / (p * (1.0 - c));
                    sum += np + nl + n0;
                }
            }
            sum
        });
    });
    group.bench_function("checked, typed", |b| {
        b.iter(|| {
            let mut sum = 0.0;
            for &kb in black_box(&typed) {
                let (km, fi, p, fp) = black_box((
                    newtons_per_millimetre(3e6),
                    newtons(60e3),
                    newtons(10e3),
                    newtons(90e3),
                ));
                let check = LoadShare::new(kb, km)
                    .and_then(|share| JointDiagram::new(share, fi))
                    .and_then(|joint| joint.check(p, fp));
                if let Ok(check) = check {
                    sum += check.yield_factor + check.load_factor + check.separation_factor;
                }
            }
            sum
        });
    });
    group.finish();
}

fn fatigue(c: &mut Criterion) {
    let mut group = c.benchmark_group("fatigue by Gerber");
    group.throughput(Throughput::Elements(COUNT as u64));
    let raw: Vec<f64> = (0..COUNT).map(|i| 20e6 * value(i)).collect();
    let stresses: Vec<FatigueStress> = raw
        .iter()
        .map(|sa| {
            let sa = megapascals(1e-6 * sa);
            FatigueStress::new(megapascals(440.0), sa, megapascals(440.0) + sa).unwrap()
        })
        .collect();
    group.bench_function("f64 by hand", |b| {
        b.iter(|| {
            let mut sum = 0.0;
            for &sa in black_box(&raw) {
                let (si, se, sut) = black_box((440e6, 129e6, 830e6));
                if si < sut {
                    let s = (si + sa - si) / sa;
                    let b: f64 = 2.0 * s * si + sut * sut / se;
                    let c = sut * sut - si * si;
                    sum += 2.0 * c / (b + (b * b + 4.0 * s * s * c).sqrt()) / sa;
                }
            }
            sum
        });
    });
    let se = EnduranceStrength::stated(megapascals(129.0)).unwrap();
    let strengths = FatigueStrengths::new(se, megapascals(830.0), megapascals(600.0)).unwrap();
    group.bench_function("typed", |b| {
        b.iter(|| {
            let mut sum = 0.0;
            for &stress in black_box(&stresses) {
                let strengths = black_box(strengths);
                if let Ok(found) =
                    MachineDesignFatigue::new(strengths, stress, FatigueCriterion::Gerber)
                {
                    sum += found.factor;
                }
            }
            sum
        });
    });
    group.finish();
}

criterion_group!(benches, frusta, share_and_factors, fatigue);
criterion_main!(benches);
