//! Yield-limit equations of one bolt in timber beside the same formulas in plain f64.

use core::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use shankline::prelude::*;
use shankline::strength::timber::{TimberConnection, TimberMember, TimberMethod};
use shankline::tables::timber::Timber;
use shankline::units::degrees;

/// Single shear by NDS, in inches and psi: G, D, lm, ls, Fyb, angles to the grain.
fn nds_by_hand(g: [f64; 2], d: f64, lm: f64, ls: f64, fyb: f64, angles: [f64; 2]) -> f64 {
    let bearing = |g: f64, a: f64| {
        let (p, q) = (11200.0 * g, 6100.0 * g.powf(1.45) / d.sqrt());
        p * q / (p * a.sin().powi(2) + q * a.cos().powi(2))
    };
    let (fem, fes) = (bearing(g[0], angles[0]), bearing(g[1], angles[1]));
    let (re, rt) = (fem / fes, lm / ls);
    let kt = 1.0 + angles[0].max(angles[1]) / core::f64::consts::TAU;
    let k1 = ((re + 2.0 * re * re * (1.0 + rt + rt * rt) + rt * rt * re.powi(3)).sqrt()
        - re * (1.0 + rt))
        / (1.0 + re);
    let k2 = (2.0 * (1.0 + re) + 2.0 * fyb * (1.0 + 2.0 * re) * d * d / (3.0 * fem * lm * lm))
        .sqrt()
        - 1.0;
    let k3 = (2.0 * (1.0 + re) / re + 2.0 * fyb * (2.0 + re) * d * d / (3.0 * fem * ls * ls))
        .sqrt()
        - 1.0;
    [
        d * lm * fem / (4.0 * kt),
        d * ls * fes / (4.0 * kt),
        k1 * d * ls * fes / (3.6 * kt),
        k2 * d * lm * fem / (1.0 + 2.0 * re) / (3.2 * kt),
        k3 * d * ls * fem / (2.0 + re) / (3.2 * kt),
        d * d * (2.0 * fem * fyb / (3.0 * (1.0 + re))).sqrt() / (3.2 * kt),
    ]
    .into_iter()
    .fold(f64::INFINITY, f64::min)
}

fn timber(c: &mut Criterion) {
    let larch = Timber::find("Douglas Fir-Larch").unwrap();
    let c24 = Timber::find("C24").unwrap();
    let joint = |timber| TimberConnection {
        diameter: inches(0.5),
        main: TimberMember::wood(inches(3.5), timber, degrees(0.0)),
        side: TimberMember::wood(inches(1.5), timber, degrees(0.0)),
        far_side: None,
        gap: inches(0.0),
    };
    let (nds, en) = (joint(larch), joint(c24));
    let by_nds = TimberMethod::Nds {
        bending_yield: ksi(45.0),
        adjustment: 1.0,
    };
    let by_en = TimberMethod::En1995 {
        axial: newtons(0.0),
        kmod: 0.8,
        gamma_m: 1.3,
    };
    let bolt = AstmGrade::A307A.strength(inches(0.5)).unwrap();
    let mut group = c.benchmark_group("bolt in timber, single shear");
    group.bench_function("NDS, typed", |b| {
        b.iter(|| black_box(&nds).resistance(&bolt, black_box(by_nds)));
    });
    group.bench_function("NDS, by hand", |b| {
        b.iter(|| {
            let (g, d, lm, ls, fyb) = black_box(([0.5, 0.5], 0.5, 3.5, 1.5, 45e3));
            nds_by_hand(g, d, lm, ls, fyb, black_box([0.0, 0.0]))
        });
    });
    group.bench_function("EN 1995, typed", |b| {
        b.iter(|| black_box(&en).resistance(&bolt, black_box(by_en)));
    });
    group.finish();
}

criterion_group!(benches, timber);
criterion_main!(benches);
