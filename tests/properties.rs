//! Invariants over random inputs.

use proptest::prelude::*;
use shankline::prelude::*;
use shankline::strength::shear::BoltShear;
use shankline::tables::threads::{MetricThread, UnifiedThread};
use shankline::thread::area;
use shankline::units::{inch_fraction, parse};

fn any_thread() -> impl Strategy<Value = Thread> {
    let unified = (0..UnifiedThread::all().len()).prop_map(|i| {
        let row = &UnifiedThread::all()[i];
        Thread::unified(row.nominal_diameter, row.series).unwrap()
    });
    let metric = (0..MetricThread::all().len()).prop_map(|i| {
        let row = &MetricThread::all()[i];
        Thread::metric(row.nominal_diameter, row.pitch).unwrap()
    });
    prop_oneof![unified, metric]
}

/// Series with stock lengths, of every product.
fn any_screws() -> impl Strategy<Value = ScrewSeries> {
    let names = [
        (ScrewProduct::HexCapScrew, "1/4-20 UNC"),
        (ScrewProduct::HexCapScrew, "3/8-24 UNF"),
        (ScrewProduct::HexCapScrew, "1/2-13 UNC"),
        (ScrewProduct::HexCapScrew, "3/4-10 UNC"),
        (ScrewProduct::HexCapScrew, "1-8 UNC"),
        (ScrewProduct::HexCapScrew, "1-1/4-7 UNC"),
        (ScrewProduct::Iso4014, "M8"),
        (ScrewProduct::Iso4014, "M12"),
        (ScrewProduct::Iso4014, "M20"),
        (ScrewProduct::Iso4014, "M36"),
        (ScrewProduct::Iso4017, "M6"),
        (ScrewProduct::Iso4017, "M16"),
    ];
    proptest::sample::select(names.to_vec())
        .prop_map(|(product, thread)| ScrewSeries::new(product, &thread.parse().unwrap()).unwrap())
}

/// Plies of 1 to 40 mm with tolerances up to 5 %, shear planes between all of them, washers.
fn any_stack() -> impl Strategy<Value = Stack> {
    let ply = (1.0..40.0f64, 0.0..0.05f64);
    (
        proptest::collection::vec(ply, 2..8),
        0..3_usize,
        0..3_usize,
        1.0..4.0f64,
    )
        .prop_map(|(plies, head, under_nut, washer)| {
            let washer = millimetres(washer).plus_minus(millimetres(0.2));
            let mut builder = Stack::builder().shear_planes(1..plies.len());
            for _ in 0..head {
                builder = builder.washer_under_head(washer);
            }
            for (thickness, tolerance) in plies {
                let thickness = millimetres(thickness);
                builder = builder.ply("ply", thickness.plus_minus(tolerance * thickness));
            }
            builder
                .washers_under_nut(washer, under_nut)
                .build()
                .unwrap()
        })
}

fn any_rules() -> impl Strategy<Value = LengthRules> {
    (
        0.0..3.0f64,
        prop::option::of(0.0..5.0f64),
        0.0..5.0f64,
        2..6_usize,
        any::<bool>(),
    )
        .prop_map(|(low, extra, clear, washers, may_cut)| {
            let rules = LengthRules::fabrication(UnitSystem::Si)
                .with_protrusion(low, extra.map(|extra| low + extra))
                .with_clear_threads(clear)
                .with_washers_under_nut(washers);
            if may_cut {
                rules
            } else {
                rules.with_cut(CutRule::Never)
            }
        })
}

fn nut_of(screws: &ScrewSeries) -> NutEnd {
    let d = screws.thread().nominal_diameter();
    NutEnd::with_height((0.9 * d).plus_minus(0.03 * d)).unwrap()
}

const NOT_FINITE: [f64; 3] = [f64::NAN, f64::INFINITY, f64::NEG_INFINITY];

proptest! {
    #![proptest_config(ProptestConfig { cases: 512, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn area_rises_with_diameter(d in 3.0..150.0f64, step in 0.001..10.0f64, p in 0.2..2.0f64) {
        for formula in [area::unified, area::metric, area::unified_minor, area::metric_minor] {
            let small = formula(millimetres(d), millimetres(p)).unwrap();
            let large = formula(millimetres(d + step), millimetres(p)).unwrap();
            prop_assert!(large > small);
        }
    }

    #[test]
    fn area_is_the_same_in_inches_and_millimetres(d in 0.2..6.0f64, n in 8.0..80.0f64) {
        let inch = area::unified(inches(d), inches(1.0 / n)).unwrap();
        let metric = area::unified(millimetres(25.4 * d), millimetres(25.4 / n)).unwrap();
        prop_assert!(((inch / metric).value - 1.0).abs() < 1e-12);
    }

    #[test]
    fn areas_of_a_thread_are_in_order(thread in any_thread()) {
        prop_assert!(thread.minor_area() < thread.tensile_stress_area());
        prop_assert!(thread.tensile_stress_area() < thread.shank_area());
        prop_assert!(thread.rounded_root_diameter() < thread.basic_minor_diameter());
        prop_assert!(thread.basic_minor_diameter() < thread.basic_pitch_diameter());
    }

    #[test]
    fn designation_reads_back(thread in any_thread()) {
        prop_assert_eq!(thread.to_string().parse::<Thread>().unwrap(), thread);
    }

    #[test]
    fn torque_and_preload_are_inverse(
        k in 0.05..0.5f64, low in 0.5..1.0f64, high in 1.0..2.0f64,
        d in 1.0..100.0f64, force in 0.0..1e7f64,
    ) {
        let form = ShortForm::new(NutFactor::new(k * low, k, k * high).unwrap(), millimetres(d)).unwrap();
        let torque = form.torque(newtons(force)).unwrap();
        let back = form.preload(torque.nominal).unwrap();
        prop_assert!((back.nominal - newtons(force)).abs() <= newtons(1e-9 * force.max(1.0)));
        prop_assert!(back.min <= back.nominal && back.nominal <= back.max);
        prop_assert!(torque.min <= torque.nominal && torque.nominal <= torque.max);
        // The torque for the least K, applied when K is least, gives the preload too.
        let least = form.preload(torque.min).unwrap();
        prop_assert!((least.max - newtons(force)).abs() <= newtons(1e-9 * force.max(1.0)));
    }

    #[test]
    fn zones_come_in_order_along_the_screw(screws in any_screws(), a in 0.0..400.0f64, b in 0.0..400.0f64) {
        let (near, far) = (millimetres(a.min(b)), millimetres(a.max(b)));
        for screw in screws.stock_lengths().filter_map(|length| screws.length(length).ok()) {
            prop_assert!(screw.zone_at(near) <= screw.zone_at(far));
            prop_assert!(screw.body_length_min <= screw.grip_gaging_length_max);
            prop_assert!(screw.grip_gaging_length_max < screw.min);
        }
    }

    #[test]
    fn washers_under_the_nut_move_no_plane(stack in any_stack(), screws in any_screws(), rules in any_rules()) {
        let selection = LengthSearch::new(&stack, &screws, nut_of(&screws), rules).unwrap().run().unwrap();
        let plies: Spread<Length> = stack
            .washers_under_head()
            .iter()
            .map(|washer| washer.thickness)
            .chain(stack.plies().iter().map(|ply| ply.thickness))
            .fold(Spread::exact(millimetres(0.0)), |sum, thickness| sum + thickness);
        for candidate in selection.accepted().iter().chain(selection.rejected()) {
            let planes: Vec<_> = stack.planes(&candidate.screw).collect();
            prop_assert_eq!(planes.len(), stack.plies().len() - 1);
            for pair in planes.windows(2) {
                prop_assert!(pair[0].position.max < pair[1].position.max);
                prop_assert!(pair[0].worst <= pair[1].worst);
            }
            prop_assert!(planes.iter().all(|plane| plane.nominal <= plane.worst));
            prop_assert!(planes.iter().all(|plane| plane.position.max < plies.max));
            let count = |zone| planes.iter().filter(|plane| plane.worst == zone).count();
            prop_assert_eq!(count(Zone::Shank), candidate.planes_on_shank);
            prop_assert_eq!(count(Zone::RunOut), candidate.planes_in_run_out);
            prop_assert_eq!(count(Zone::Thread), candidate.planes_in_thread);
        }
    }

    /// All planes on shank and no jam, for any length, needs a clamp margin that is not negative.
    #[test]
    fn shank_and_clamp_identity(stack in any_stack(), screws in any_screws(), rules in any_rules()) {
        let selection = LengthSearch::new(&stack, &screws, nut_of(&screws), rules).unwrap().run().unwrap();
        for candidate in selection.accepted().iter().chain(selection.rejected()) {
            let both = candidate.planes_on_shank == stack.shear_planes().len()
                && candidate.jam_margin >= millimetres(0.0);
            let transition = candidate.screw.grip_gaging_length_max - candidate.screw.body_length_min;
            let margin = stack
                .shank_and_clamp_margin(transition, candidate.washers_added)
                .unwrap()
                .unwrap();
            prop_assert!(!both || margin >= millimetres(-1e-6), "{candidate:?} {margin:?}");
        }
    }

    #[test]
    fn ranking_puts_what_fits_first_and_is_total(stack in any_stack(), screws in any_screws(), rules in any_rules()) {
        let search = LengthSearch::new(&stack, &screws, nut_of(&screws), rules).unwrap();
        let selection = search.run().unwrap();
        prop_assert_eq!(&selection, &search.run().unwrap());
        prop_assert_eq!(
            selection.accepted().len() + selection.rejected().len() + selection.not_assessed().len(),
            screws.stock_lengths().count()
        );
        for candidate in selection.accepted() {
            let pitch = screws.thread().pitch();
            prop_assert!(candidate.fits() && candidate.reasons().next().is_none());
            prop_assert!(candidate.jam_margin >= rules.clear_threads_min * pitch - millimetres(1e-6));
            prop_assert!(candidate.protrusion.min >= rules.protrusion_min_pitches * pitch - millimetres(1e-6));
            if let (Some(limit), CutRule::Never) = (rules.protrusion_max_pitches, rules.cut) {
                prop_assert!(candidate.protrusion.max <= limit * pitch + millimetres(1e-6));
            }
            prop_assert!(candidate.washers_under_nut <= rules.washers_under_nut_max);
            if let Some(cut) = candidate.cut {
                prop_assert!(cut.length <= candidate.screw.nominal && cut.thread_left > millimetres(0.0));
                prop_assert!(cut.protrusion.min >= rules.protrusion_min_pitches * pitch - millimetres(1e-6));
            }
        }
        for candidate in selection.rejected() {
            prop_assert!(candidate.reasons().count() >= 1);
            for reason in candidate.reasons() {
                prop_assert!(!reason.text(UnitSystem::Si).contains(" -"), "{reason:?}");
            }
        }
    }

    #[test]
    fn shear_capacity_rises_with_planes_and_shank(thread in any_thread(), n in 1..6_usize, factor in 1.0..3.0f64) {
        let grade: BoltGrade = if thread.is_unified() { SaeGrade::Grade8.into() } else { PropertyClass::Class8_8.into() };
        let Ok(strength) = grade.strength(thread.nominal_diameter()) else { return Ok(()) };
        for method in [
            ShearMethod::DistortionEnergy { basis: ShearBasis::Yield, design_factor: factor },
            ShearMethod::DistortionEnergy { basis: ShearBasis::Proof, design_factor: factor },
            ShearMethod::Aisc360 { edition: AiscEdition::E2005 },
            ShearMethod::Aisc360 { edition: AiscEdition::E2022 },
        ] {
            let shear = |zones: &[Zone]| -> BoltShear { bolt_shear(&thread, &strength, zones, method).unwrap() };
            let shank = shear(&vec![Zone::Shank; n]);
            let mixed = shear(&[vec![Zone::Shank; n], vec![Zone::RunOut]].concat());
            prop_assert!(shear(&vec![Zone::Shank; n + 1]).nominal > shank.nominal);
            prop_assert!(mixed.plane_nominal < shank.plane_nominal);
            prop_assert_eq!(mixed.governing_plane, n + 1);
            prop_assert!(shank.allowable <= shank.nominal);
            prop_assert!(shank.design.is_none_or(|design| design <= shank.nominal));
        }
    }

    /// Whatever finite numbers come, results are finite or refused; no panic.
    #[test]
    fn finite_inputs_make_finite_results(a in any_number(), b in any_number(), c in any_number()) {
        check_finite(a, b, c)?;
    }

    /// Not one public door lets NaN or infinity in.
    #[test]
    fn no_non_finite_input_is_accepted(index in 0..3_usize, good in 0.1..10.0f64) {
        let bad = NOT_FINITE[index];
        for formula in [area::unified, area::metric, area::unified_minor, area::metric_minor, area::unified_high_strength] {
            assert!(formula(millimetres(bad), millimetres(good)).is_err());
            assert!(formula(millimetres(good), millimetres(bad)).is_err());
        }
        assert!(Thread::unified_special(inches(bad), good + 5.0).is_err());
        assert!(Thread::unified_special(inches(good), bad).is_err());
        assert!(Thread::metric_special(millimetres(bad), millimetres(good)).is_err());
        assert!(Thread::metric_special(millimetres(good), millimetres(bad)).is_err());
        assert!(Thread::unified(inches(bad), UnifiedSeries::Unc).is_err());
        assert!(Thread::metric(millimetres(bad), millimetres(1.0)).is_err());
        assert!(Thread::metric(millimetres(12.0), millimetres(bad)).is_err());
        assert!(SaeGrade::Grade5.strength(inches(bad)).is_err());
        assert!(BoltGrade::from(PropertyClass::Class8_8).strength_at_length(millimetres(12.0), millimetres(bad)).is_err());
        for k in [(bad, 0.2, 0.3), (0.1, bad, 0.3), (0.1, 0.2, bad)] {
            assert!(NutFactor::new(k.0, k.1, k.2).is_err());
        }
        let k = NutFactor::new(0.1, 0.2, 0.3).unwrap();
        assert!(ShortForm::new(k, millimetres(bad)).is_err());
        let form = ShortForm::new(k, millimetres(good)).unwrap();
        assert!(form.preload(newton_metres(bad)).is_err());
        assert!(form.torque(newtons(bad)).is_err());
        let exact = Spread::exact(newtons(good));
        assert!(proof_use(exact, newtons(bad), PreloadTarget::Reusable).is_err());
        assert!(proof_use(Spread::exact(newtons(bad)), newtons(good), PreloadTarget::Reusable).is_err());
        for thickness in [
            Spread { min: millimetres(bad), ..Spread::exact(millimetres(good)) },
            Spread { nominal: millimetres(bad), ..Spread::exact(millimetres(good)) },
            Spread { max: millimetres(bad), ..Spread::exact(millimetres(good)) },
        ] {
            assert!(Stack::builder().ply("ply", thickness).build().is_err());
            assert!(Stack::builder().ply("ply", Spread::exact(millimetres(good))).washers_under_nut(thickness, 1).build().is_err());
            assert!(Stack::builder().washer_under_head(thickness).ply("ply", Spread::exact(millimetres(good))).build().is_err());
        }
        let stack = Stack::builder().ply("ply", Spread::exact(millimetres(good))).build().unwrap();
        let screws = ScrewSeries::new(ScrewProduct::Iso4014, &"M12".parse().unwrap()).unwrap();
        assert!(screws.length(millimetres(bad)).is_err());
        let rules = LengthRules::fabrication(UnitSystem::Si);
        let nut = nut_of(&screws);
        let height = nut.height();
        for height in [
            Spread { min: millimetres(bad), ..height },
            Spread { nominal: millimetres(bad), ..height },
            Spread { max: millimetres(bad), ..height },
        ] {
            assert!(NutEnd::with_height(height).is_err());
        }
        let cut = |tolerance, step| CutRule::Allowed { tolerance: millimetres(tolerance), step: millimetres(step) };
        for rules in [
            rules.with_protrusion(bad, None),
            rules.with_protrusion(2.0, Some(bad)),
            rules.with_clear_threads(bad),
            rules.with_cut(cut(bad, 1.0)),
            rules.with_cut(cut(0.5, bad)),
        ] {
            assert!(LengthSearch::new(&stack, &screws, nut, rules).is_err());
        }
        assert!(stack.shank_and_clamp_margin(millimetres(bad), 0).is_err());
        for (length, shank, thread) in [(bad, 10.0, 20.0), (60.0, bad, 20.0), (60.0, 10.0, bad)] {
            assert!(ScrewLength::measured(millimetres(length), millimetres(shank), millimetres(thread)).is_err());
        }
        assert!(BoltStrength::stated(inches(bad), None, None, ksi(120.0)).is_err());
        assert!(BoltStrength::stated(inches(0.5), Some(ksi(bad)), None, ksi(120.0)).is_err());
        assert!(BoltStrength::stated(inches(0.5), None, Some(ksi(bad)), ksi(120.0)).is_err());
        assert!(BoltStrength::stated(inches(0.5), None, None, ksi(bad)).is_err());
        let strength = SaeGrade::Grade5.strength(inches(0.5)).unwrap();
        assert!(strength.loads_on(square_inches(bad)).is_err());
        let method = ShearMethod::DistortionEnergy { basis: ShearBasis::Yield, design_factor: bad };
        assert!(bolt_shear(&"1/2-13 UNC".parse().unwrap(), &strength, &[Zone::Shank], method).is_err());
    }

    #[test]
    fn no_text_panics(text in "\\PC{0,24}") {
        let _ = text.parse::<Thread>();
        let _ = text.parse::<BoltGrade>();
        let _ = text.parse::<shankline::thread::ToleranceClass>();
        let _ = parse::<Length>(&text);
        let _ = parse::<Torque>(&text);
    }

    /// Text close to designations: their alphabet, and one byte changed in a good one.
    #[test]
    fn no_near_designation_panics(
        text in "[#M0-9/. xX×UNCFES-]{0,20}",
        thread in any_thread(), at in 0..12_usize, byte in any::<char>(),
    ) {
        if let Ok(read) = text.parse::<Thread>() {
            prop_assert_eq!(read.to_string().parse::<Thread>().unwrap(), read);
        }
        let mut changed: Vec<char> = thread.to_string().chars().collect();
        if at < changed.len() {
            changed[at] = byte;
        }
        let _ = changed.into_iter().collect::<String>().parse::<Thread>();
    }
}

/// Plausible numbers mostly, extremes and special ones among them; all finite.
fn any_number() -> impl Strategy<Value = f64> {
    prop_oneof![
        4 => 1e-3..1e3f64,
        4 => 0.1..2.0f64,
        1 => -1e3..1e3f64,
        1 => prop::sample::select(vec![
            0.0, -0.0, f64::MIN_POSITIVE, 5e-324, 1e-300, 1e300, f64::MAX, f64::MIN, 1e150, 1e-150,
        ]),
        1 => any::<f64>().prop_map(|x| if x.is_finite() { x } else { 1.0 }),
    ]
}

fn check_finite(a: f64, b: f64, c: f64) -> Result<(), TestCaseError> {
    for formula in [
        area::unified,
        area::metric,
        area::unified_minor,
        area::metric_minor,
        area::unified_high_strength,
    ] {
        if let Ok(area) = formula(millimetres(a), millimetres(b)) {
            prop_assert!(
                area.is_finite() && area > square_millimetres(0.0),
                "{a} {b}"
            );
        }
    }
    if let Ok(thread) = Thread::unified_special(inches(a), b) {
        prop_assert!(thread.tensile_stress_area().is_finite());
        prop_assert!(thread.minor_area() > square_millimetres(0.0));
    }
    if let Ok(thread) = Thread::metric_special(millimetres(a), millimetres(b)) {
        prop_assert!(thread.tensile_stress_area().is_finite());
        prop_assert!(thread.minor_area() > square_millimetres(0.0));
    }
    if let Ok(strength) = BoltStrength::stated(inches(0.5), Some(ksi(a)), None, ksi(b)) {
        if let Ok(loads) = strength.loads_on(square_inches(c)) {
            prop_assert!(loads.tensile >= newtons(0.0) && loads.proof.unwrap() <= loads.tensile);
        }
    }
    if let Ok(form) = NutFactor::new(a, b, c).and_then(|k| ShortForm::new(k, millimetres(c))) {
        if let Ok(preload) = form.preload(newton_metres(a)) {
            prop_assert!(preload.min.is_finite() && preload.max.is_finite());
            if let Ok(usage) = proof_use(preload, newtons(b), PreloadTarget::Reusable) {
                prop_assert!(usage.fraction.max.is_finite());
            }
        }
        if let Ok(torque) = form.torque(newtons(b)) {
            prop_assert!(torque.min.is_finite() && torque.max.is_finite());
        }
    }
    let spread = Spread {
        min: millimetres(a),
        nominal: millimetres(b),
        max: millimetres(c),
    };
    let built = Stack::builder()
        .ply("first", spread)
        .ply("second", millimetres(b).plus_minus(millimetres(a)))
        .shear_planes([1])
        .washers_under_nut(Spread::exact(millimetres(c)), 1)
        .build();
    if let Ok(stack) = built {
        prop_assert!(stack.grip().min.is_finite() && stack.grip().max.is_finite());
        if let Ok(Some(margin)) = stack.shank_and_clamp_margin(millimetres(a), 2) {
            prop_assert!(margin.is_finite());
        }
        let screws = ScrewSeries::new(ScrewProduct::Iso4014, &"M8".parse().unwrap()).unwrap();
        let rules = LengthRules::fabrication(UnitSystem::Si)
            .with_protrusion(a, Some(b))
            .with_cut(CutRule::Allowed {
                tolerance: millimetres(a),
                step: millimetres(b),
            });
        let search = NutEnd::with_height(spread)
            .and_then(|nut| LengthSearch::new(&stack, &screws, nut, rules));
        if let Ok(selection) = search.and_then(|search| search.run()) {
            for candidate in selection.accepted().iter().chain(selection.rejected()) {
                prop_assert!(candidate.jam_margin.is_finite());
                prop_assert!(candidate.protrusion.min <= candidate.protrusion.max);
                prop_assert!(candidate.cut.is_none_or(|cut| cut.length.is_finite()));
            }
        }
    }
    let _ = inch_fraction(inches(a));
    let _ = SaeGrade::Grade5.strength(inches(a));
    let screws =
        ScrewSeries::new(ScrewProduct::HexCapScrew, &"1/2-13 UNC".parse().unwrap()).unwrap();
    if let Ok(screw) = screws.length(inches(a)) {
        prop_assert!(screw.max.is_finite() && screw.body_length_min >= inches(0.0));
    }
    Ok(())
}
