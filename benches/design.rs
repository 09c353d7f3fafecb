//! The design search, from one diameter to the whole catalogue.

use core::hint::black_box;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use shankline::joint::{
    DesignSpace, Environment, Finish, Joint, JointBolt, JointLoad, JointMethods, JointNut,
    JointPly, JointWasher, Objective, Pattern, Prying, Repeats, Scope, Tightening,
    TorqueTightening,
};
use shankline::prelude::*;
use shankline::tables::holes::HoleFit;
use shankline::tables::metric_screws::FineHexScrew;
use shankline::tables::screws::{HexCapScrew, HexScrew, ProductGrade};
use shankline::units::percent;

/// Two plies with all that a check asks for, whatever the bolt; holes, nut and washers are those of the space.
fn start(thread: Thread, grade: impl Into<BoltGrade>, washer: WasherStyle) -> Joint {
    let (product, style) = if thread.is_unified() {
        (ScrewProduct::HexCapScrew, NutStyle::Hex)
    } else {
        (ScrewProduct::Iso4014, NutStyle::Iso4032)
    };
    let ply = |name: &str| {
        JointPly::new(name, millimetres(20.0).plus_minus(millimetres(0.3)))
            .material("ASTM A36 steel")
            .end_distance(millimetres(60.0))
            .edge_distance(millimetres(60.0))
            .width(millimetres(120.0))
    };
    let washer = JointWasher::find(washer, &thread).unwrap();
    let finish = Some(Finish::ZincPlated { baked: false });
    Joint {
        title: "benchmark".into(),
        bolt: JointBolt {
            product,
            thread,
            grade: grade.into(),
            length: None,
            finish,
        },
        nut: Some(JointNut {
            style,
            grade: None,
            finish,
        }),
        stack: Stack::builder()
            .washer_under_head(washer.clone())
            .add(ply("plate"))
            .add(ply("bracket"))
            .shear_planes([1])
            .washers_under_nut(washer, 1)
            .build()
            .unwrap(),
        pattern: Pattern::Single,
        load: JointLoad {
            across: newtons(20e3),
            along: newtons(8e3),
            prying: Some(Prying::None),
            repeats: Repeats::Between {
                across_least: newtons(20e3),
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
        tightening: Some(Tightening::Torque(
            TorqueTightening::new(
                NutFactor::new(0.15, 0.18, 0.22).unwrap(),
                PreloadTarget::Reusable,
            )
            .relaxation(percent(5.0)),
        )),
        rules: LengthRules::fabrication(UnitSystem::Si),
        methods: JointMethods::machine_design(2.0),
        scope: Scope::Joint,
        set_aside: Vec::new(),
    }
}

fn one_diameter() -> (Joint, DesignSpace) {
    let thread: Thread = "M16".parse().unwrap();
    let space = DesignSpace::new()
        .products([ScrewProduct::Iso4014, ScrewProduct::Iso4017])
        .grades([PropertyClass::Class8_8, PropertyClass::Class10_9])
        .nut_styles([NutStyle::Iso4032, NutStyle::Iso7040])
        .washers([WasherStyle::Iso7089])
        .holes(HoleFit::Normal);
    let joint = start(thread, PropertyClass::Class8_8, WasherStyle::Iso7089);
    (joint, space)
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
    let joint = start(threads[0], SaeGrade::Grade5, WasherStyle::TypeANarrow);
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
    (joint, space)
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
    let joint = start(threads[0], PropertyClass::Class8_8, WasherStyle::Iso7089);
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
    (joint, space)
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
