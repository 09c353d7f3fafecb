//! The design search, from one diameter to the whole catalogue.

use core::hint::black_box;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use shankline::joint::{
    DesignSpace, Environment, Finish, Joint, JointBolt, JointLoad, JointMethods, JointNut,
    JointPly, Objective, Pattern, Prying, Repeats, Scope, Tightening, TorqueTightening,
};
use shankline::prelude::*;
use shankline::tables::holes::HoleFit;
use shankline::tables::metric_screws::FineHexScrew;
use shankline::tables::screws::{HexCapScrew, HexScrew, ProductGrade};
use shankline::units::percent;

/// A joint of which everything is said, so that its verdict is decided.
fn start(bolt: JointBolt, style: NutStyle) -> Joint {
    let ply = |name: &str| {
        JointPly::new(name, millimetres(20.0).plus_minus(millimetres(0.3)))
            .material("ASTM A36 steel")
            .end_distance(millimetres(60.0))
            .edge_distance(millimetres(60.0))
            .width(millimetres(120.0))
    };
    let washer = Spread::exact(millimetres(3.0));
    let factor = NutFactor::new(0.15, 0.18, 0.2).unwrap();
    let torque = TorqueTightening::new(factor, PreloadTarget::Reusable).relaxation(percent(5.0));
    let across = newtons(20e3);
    Joint {
        title: "benchmark".into(),
        bolt,
        nut: Some(JointNut {
            style,
            grade: None,
            finish: bolt.finish,
        }),
        stack: Stack::builder()
            .washer_under_head(washer)
            .add(ply("plate"))
            .add(ply("bracket"))
            .shear_planes([1])
            .washers_under_nut(washer, 1)
            .build()
            .unwrap(),
        pattern: Pattern::Single,
        load: JointLoad {
            across,
            along: newtons(8e3),
            prying: Some(Prying::None),
            // Across it is steady.
            repeats: Repeats::Between {
                across_least: across,
                along_least: newtons(0.0),
                cycles: None,
            },
            shock_factor: 1.5,
            load_factor: None,
        },
        environment: Environment {
            vibration: true,
            ..Environment::workshop()
        },
        tightening: Some(Tightening::Torque(torque)),
        rules: LengthRules::fabrication(UnitSystem::Si),
        methods: JointMethods::machine_design(2.0),
        scope: Scope::Joint,
        set_aside: Vec::new(),
        granted: Vec::new(),
        own: OwnParts::default(),
    }
}

fn bolt(product: ScrewProduct, thread: Thread, grade: BoltGrade) -> JointBolt {
    JointBolt {
        product,
        thread,
        grade,
        length: None,
        finish: Some(Finish::ZincPlated { baked: false }),
    }
}

fn one_diameter() -> (Joint, DesignSpace) {
    let thread: Thread = "M16".parse().unwrap();
    let bolt = bolt(
        ScrewProduct::Iso4014,
        thread,
        PropertyClass::Class8_8.into(),
    );
    let space = DesignSpace::new()
        .products([ScrewProduct::Iso4014, ScrewProduct::Iso4017])
        .grades([PropertyClass::Class8_8, PropertyClass::Class10_9])
        .nut_styles([NutStyle::Iso4032, NutStyle::Iso7040])
        .washers([WasherStyle::Iso7089])
        .holes(HoleFit::Normal);
    (start(bolt, NutStyle::Iso4032), space)
}

/// Every UNC and UNF size of hex cap screw, SAE grades, five nuts, two washers.
fn inch_catalogue() -> (Joint, DesignSpace) {
    let threads: Vec<Thread> = HexCapScrew::all()
        .iter()
        .flat_map(|row| {
            [UnifiedSeries::Unc, UnifiedSeries::Unf]
                .map(|series| Thread::unified(row.nominal_diameter, series))
        })
        .flatten()
        .collect();
    let bolt = bolt(
        ScrewProduct::HexCapScrew,
        threads[0],
        SaeGrade::Grade5.into(),
    );
    let space = DesignSpace::new()
        .threads(threads)
        .grades([
            SaeGrade::Grade1,
            SaeGrade::Grade2,
            SaeGrade::Grade5,
            SaeGrade::Grade8,
        ])
        .nut_styles([
            NutStyle::Hex,
            NutStyle::HeavyHex,
            NutStyle::HexThick,
            NutStyle::InsertLockNe,
            NutStyle::AllMetalLock,
        ])
        .washers([WasherStyle::TypeANarrow, WasherStyle::F436])
        .holes(HoleFit::Normal);
    (start(bolt, NutStyle::Hex), space)
}

/// Every coarse and fine size of ISO 4014, 4017 and 8765, property classes, five nuts, two washers.
fn metric_catalogue() -> (Joint, DesignSpace) {
    let coarse = HexScrew::all()
        .iter()
        .filter(|row| row.product_grade == ProductGrade::A)
        .map(|row| Thread::metric(row.nominal_diameter, row.pitch));
    let fine = FineHexScrew::all()
        .iter()
        .map(|row| Thread::metric(row.nominal_diameter, row.pitch));
    let threads: Vec<Thread> = coarse.chain(fine).flatten().collect();
    let bolt = bolt(
        ScrewProduct::Iso4014,
        threads[0],
        PropertyClass::Class8_8.into(),
    );
    let space = DesignSpace::new()
        .threads(threads)
        .products([
            ScrewProduct::Iso4014,
            ScrewProduct::Iso4017,
            ScrewProduct::Iso8765,
        ])
        .grades([
            PropertyClass::Class5_8,
            PropertyClass::Class8_8,
            PropertyClass::Class10_9,
            PropertyClass::Class12_9,
        ])
        .nut_styles([
            NutStyle::Iso4032,
            NutStyle::Iso4033,
            NutStyle::Iso7040,
            NutStyle::Iso7042,
            NutStyle::Iso10512,
        ])
        .washers([WasherStyle::Iso7089, WasherStyle::Iso7093])
        .holes(HoleFit::Normal);
    (start(bolt, NutStyle::Iso4032), space)
}

fn design(c: &mut Criterion) {
    let mut group = c.benchmark_group("design");
    for (name, (joint, space)) in [
        ("one diameter", one_diameter()),
        ("inch catalogue", inch_catalogue()),
        ("metric catalogue", metric_catalogue()),
    ] {
        let designs = joint.design(&space, &[Objective::Mass]).unwrap();
        let ruled_out: usize = designs
            .ruled_out()
            .iter()
            .map(|group| group.combinations)
            .sum();
        println!(
            "{name}: {} combinations, {} feasible, {} rejected, {ruled_out} ruled out",
            designs.combinations,
            designs.feasible().len(),
            designs.rejected().len(),
        );
        group.throughput(Throughput::Elements(designs.combinations as u64));
        group.bench_function(name, |b| {
            b.iter(|| black_box(&joint).design(&space, &[Objective::Mass]));
        });
    }
    group.finish();
}

criterion_group!(benches, design);
criterion_main!(benches);
