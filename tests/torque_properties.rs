//! What must hold between torque, preload, turn and temperature, whatever the numbers.

use std::num::NonZeroU32;

use proptest::prelude::*;
use shankline::derivation::Derivation;
use shankline::preload::{bearing_friction, thread_friction, tightening_factor, total_friction};
use shankline::prelude::*;
use shankline::tables::threads::{MetricThread, UnifiedThread};
use shankline::units::{
    Angle, TemperatureCoefficient, TemperatureInterval, celsius, newtons_per_millimetre, percent,
    ppm_per_kelvin,
};
use shankline::uom::si::{
    angle::radian, force::newton, length::meter, pressure::pascal, ratio::ratio,
    temperature_coefficient::per_kelvin, temperature_interval::kelvin, torque::newton_meter,
};

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

/// One turn of the nut on a thread of two starts moves it by two pitches: against a preload it takes at least
/// that much work, F L = 2 pi T. The friction is left as it is.
#[test]
fn several_starts_lift_by_their_lead() {
    let one: Thread = "M16x2".parse().unwrap();
    let two: Thread = "M16xPh4P2".parse().unwrap();
    let d2 = one.basic_pitch_diameter();
    let (preload, db) = (newtons(50e3), millimetres(20.0));
    let mu = Friction::new(0.12, 0.12, 0.12).unwrap();
    let pitch_torque = 50e3 * 2e-3 / std::f64::consts::TAU;
    let linear = |thread: &Thread| FrictionForm::linear(thread, db, mu, mu).unwrap();
    let (single, double) = (linear(&one), linear(&two));
    let torque = |form: &FrictionForm| form.torque(preload).unwrap().nominal.value;
    assert!((torque(&double) - torque(&single) - pitch_torque).abs() < 1e-9);
    let off = |form: &FrictionForm| form.loosening_torque(preload).unwrap().nominal.value;
    assert!((off(&double) - off(&single) + pitch_torque).abs() < 1e-9);
    assert!((double.split(preload).unwrap().pitch.value - 2.0 * pitch_torque).abs() < 1e-9);
    // Lead-angle form: tan lambda = 4 / (pi d2) = 0.0866.
    let screw = FrictionForm::power_screw(&two, d2, db, mu, mu).unwrap();
    let tangent = 4e-3 / (std::f64::consts::PI * d2.value);
    assert!((screw.lead_angle_of_thread().value.tan() - tangent).abs() < 1e-12);
    let f = 0.12 / 30_f64.to_radians().cos();
    let arm = 0.5 * d2.value * (tangent + f) / (1.0 - f * tangent) + 0.06 * 20e-3;
    assert!((torque(&screw) / (50e3 * arm) - 1.0).abs() < 1e-12);
    for form in [double, screw] {
        form.split(preload).unwrap().derivation().check().unwrap();
        form.derivation(newton_metres(100.0))
            .unwrap()
            .check()
            .unwrap();
    }
    // Back from the torque to the friction.
    let t = newton_metres(torque(&double));
    assert!((total_friction(t, preload, &two, db).unwrap() - 0.12).abs() < 1e-12);
    // With this friction two starts hold and six do not.
    let slippery = Friction::new(0.08, 0.08, 0.08).unwrap();
    let holds = |starts| {
        let thread = one.with_starts(starts).unwrap();
        FrictionForm::linear(&thread, db, slippery, mu)
            .unwrap()
            .is_self_locking()
    };
    assert!(holds(2) && !holds(6));
}

fn any_friction() -> impl Strategy<Value = Friction> {
    (0.01..0.4f64, 0.5..1.0f64, 1.0..1.5f64)
        .prop_map(|(mu, low, high)| Friction::new(mu * low, mu, mu * high).unwrap())
}

/// Every form, on any thread.
fn any_form() -> impl Strategy<Value = FrictionForm> {
    (
        any_thread(),
        any_friction(),
        any_friction(),
        1.1..2.0f64,
        0..4,
        0.0..0.3f64,
    )
        .prop_map(|(thread, f, fc, face, kind, lock)| {
            let d = thread.nominal_diameter();
            let form = match kind {
                0 => FrictionForm::shigley(&thread, f, fc),
                1 => FrictionForm::linear(&thread, face * d, f, fc),
                2 => FrictionForm::three_term(&thread, 0.45 * d, 0.5 * face * d, f, fc),
                _ => FrictionForm::power_screw(
                    &thread,
                    thread.basic_pitch_diameter(),
                    face * d,
                    f,
                    fc,
                ),
            }
            .unwrap();
            // Up to 0.3 of a torque at 100 MPa in the bolt.
            let scale: Torque = form
                .torque(megapascals(100.0) * thread.tensile_stress_area())
                .unwrap()
                .nominal;
            let lock = lock * scale;
            form.with_prevailing(Spread {
                min: 0.5 * lock,
                nominal: lock,
                max: 1.5 * lock,
            })
            .unwrap()
        })
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs())
}

/// A derivation whose every step gives its value again.
fn sound(derivation: &Derivation) -> bool {
    derivation.check().is_ok()
}

proptest! {
    #[test]
    fn torque_and_preload_are_inverse(form in any_form(), stress in 1.0..900.0f64) {
        let preload = megapascals(stress) * form.thread().tensile_stress_area();
        let torque = form.torque(preload).unwrap();
        let lock = form.prevailing_torque();
        // Ends swap: the torque of the least friction gives the preload back at the least friction.
        for (torque, pick) in [(torque.min, 2), (torque.nominal, 1), (torque.max, 0)] {
            if torque < lock.max {
                prop_assert!(form.preload(torque).is_err());
                continue;
            }
            let back = form.preload(torque).unwrap();
            let back = [back.min, back.nominal, back.max][pick];
            prop_assert!(close(back.value, preload.value), "{back:?} {preload:?}");
        }
        let wide = Spread { min: torque.nominal.max(lock.max), nominal: torque.nominal.max(lock.max), max: torque.max.max(lock.max) };
        let exact = form.preload(wide.nominal).unwrap();
        let within = form.preload_within(wide).unwrap();
        prop_assert!(close(within.min.value, exact.min.value) && within.max >= exact.max);
    }

    #[test]
    fn short_form_with_drag_is_inverse(
        k in 0.05..0.5f64, d in 1.0..100.0f64, force in 1.0..1e6f64, lock in 0.0..10.0f64,
    ) {
        let form = ShortForm::new(NutFactor::new(k, k, k).unwrap(), millimetres(d)).unwrap()
            .with_prevailing(Spread::exact(newton_metres(lock))).unwrap();
        let torque = form.torque(newtons(force)).unwrap().nominal;
        let back = form.preload(torque).unwrap().nominal;
        // Taking off a drag much larger than the rest loses digits.
        let digits = 1e-15 * (1.0 + lock / (k * d * 1e-3 * force));
        prop_assert!(((back.value / force) - 1.0).abs() < 8.0 * digits);
        prop_assert!(sound(&form.derivation(torque).unwrap()));
    }

    #[test]
    fn split_adds_to_the_whole(form in any_form(), stress in 1.0..900.0f64) {
        let preload = megapascals(stress) * form.thread().tensile_stress_area();
        let split = form.split(preload).unwrap();
        let sum = split.pitch + split.thread + split.bearing + split.prevailing;
        prop_assert!(close(sum.value, split.total.value));
        prop_assert!(close(split.total.value, form.torque(preload).unwrap().nominal.value));
        for part in [split.pitch, split.thread, split.bearing, split.prevailing] {
            prop_assert!((0.0..=1.0).contains(&split.share(part).value));
        }
        prop_assert!(sound(&split.derivation()));
        prop_assert!(sound(&form.derivation(form.torque(preload).unwrap().max).unwrap()));
    }

    #[test]
    fn loosening_takes_less_than_tightening(form in any_form(), stress in 1.0..900.0f64) {
        let preload = megapascals(stress) * form.thread().tensile_stress_area();
        let (on, off) = (form.torque(preload).unwrap(), form.loosening_torque(preload).unwrap());
        prop_assert!(off.min < on.min && off.nominal < on.nominal && off.max < on.max);
        prop_assert!(off.min <= off.nominal && off.nominal <= off.max);
        if form.is_self_locking() {
            prop_assert!(off.min.value > 0.0);
        }
    }

    /// The two forms differ by the product f tan lambda sec alpha, which goes with the pitch.
    #[test]
    fn lead_angle_form_tends_to_the_linear_one(
        thread in any_thread(), f in any_friction(), fc in any_friction(), wide in 1.0..1e3f64,
    ) {
        // The same pitch at a larger and larger mean diameter: a smaller and smaller lead angle.
        let mean = wide * thread.basic_pitch_diameter();
        let bearing = 1.3 * mean;
        let exact = FrictionForm::power_screw(&thread, mean, bearing, f, fc).unwrap();
        let linear = FrictionForm::three_term(&thread, 0.5 * mean, 0.5 * bearing, f, fc).unwrap();
        let (a, b) = (exact.torque(newtons(1e3)).unwrap().nominal, linear.torque(newtons(1e3)).unwrap().nominal);
        let tangent = exact.lead_angle_of_thread().value.tan();
        let product = f.nominal() * tangent / (30f64.to_radians().cos());
        let off = (a / b).value - 1.0;
        prop_assert!(off >= -1e-12, "{off}");
        // The thread part is larger by 1/(1 - m l), the whole by less.
        prop_assert!(off <= product / (1.0 - product) + 1e-12, "{off} {product}");
    }

    #[test]
    fn three_term_form_with_half_diameters_is_the_linear_form(
        thread in any_thread(), f in any_friction(), fc in any_friction(), stress in 1.0..900.0f64,
    ) {
        let bearing = 1.3 * thread.nominal_diameter();
        let linear = FrictionForm::linear(&thread, bearing, f, fc).unwrap();
        let three = FrictionForm::three_term(&thread, 0.5 * thread.basic_pitch_diameter(), 0.5 * bearing, f, fc).unwrap();
        let preload = megapascals(stress) * thread.tensile_stress_area();
        prop_assert!(close(linear.torque(preload).unwrap().max.value, three.torque(preload).unwrap().max.value));
    }

    #[test]
    fn friction_comes_back_from_nut_factor_and_test(
        thread in any_thread(), mu in 0.02..0.4f64, face in 1.1..2.0f64,
    ) {
        let friction = Friction::new(mu, mu, mu).unwrap();
        let bearing = face * thread.nominal_diameter();
        let form = FrictionForm::linear(&thread, bearing, friction, friction).unwrap();
        let back = Friction::from_nut_factor(form.nut_factor().unwrap(), &thread, bearing).unwrap();
        prop_assert!(close(back.nominal(), mu));
        let preload = newtons(1e4);
        let split = form.split(preload).unwrap();
        prop_assert!(close(total_friction(split.total, preload, &thread, bearing).unwrap(), mu));
        prop_assert!(close(thread_friction(split.pitch + split.thread, preload, &thread).unwrap(), mu));
        prop_assert!(close(bearing_friction(split.bearing, preload, bearing).unwrap(), mu));
    }

    #[test]
    fn pressure_models_agree_within_their_bounds(hole in 1.0..100.0f64, wide in 1.001..4.0f64) {
        let face = BearingFace::new(millimetres(wide * hole), millimetres(hole)).unwrap();
        let wear = face.effective_diameter(BearingPressure::UniformWear);
        let pressure = face.effective_diameter(BearingPressure::UniformPressure);
        prop_assert!(face.hole() < wear && wear < pressure && pressure < face.outer());
        // As published, with cubes and squares.
        let (o, h) = (face.outer().value, face.hole().value);
        let published = 2.0 / 3.0 * (o.powi(3) - h.powi(3)) / (o.powi(2) - h.powi(2));
        prop_assert!((pressure.value / published - 1.0).abs() < 1e-10);
    }

    /// The assembly preload, put back into the stress, uses the share of yield it was asked for.
    #[test]
    fn assembly_preload_uses_what_it_was_asked_for(
        form in any_form(), strength in 300.0..1200.0f64, share in 0.5..1.0f64, plastic in any::<bool>(),
    ) {
        let model = if plastic { TorsionModel::Vdi2230 } else { TorsionModel::JisB1083 };
        let strength = megapascals(strength);
        let Ok(limit) = form.assembly_preload(strength, percent(100.0 * share), model) else {
            // The drag alone can be more than the bolt stands.
            let drag = form.tightening_stress(newtons(0.0), model).unwrap();
            prop_assert!(drag.equivalent.max >= 0.999 * share * strength);
            return Ok(());
        };
        let stress = form.tightening_stress(limit.preload.nominal, model).unwrap();
        let used = stress.utilisation(strength).unwrap().nominal.value;
        prop_assert!((used / share - 1.0).abs() < 1e-9, "{used} {share}");
        prop_assert!(limit.preload.min <= limit.preload.nominal && limit.preload.nominal <= limit.preload.max);
        prop_assert!(limit.torque.min <= limit.torque.nominal && limit.torque.nominal <= limit.torque.max);
        // A wrench set to the least torque passes no preload of the range.
        if let Ok(preload) = form.preload(limit.torque.min) {
            prop_assert!(preload.min <= limit.preload.min * (1.0 + 1e-9));
            prop_assert!(preload.nominal <= limit.preload.nominal * (1.0 + 1e-9));
            prop_assert!(preload.max <= limit.preload.max * (1.0 + 1e-9));
        }
        prop_assert!(sound(&limit.derivation()));
        prop_assert!(sound(&stress.derivation()));
        let later = stress.in_service(newtons(100.0), TighteningStress::VDI_TORSION_LEFT).unwrap();
        prop_assert!(later.torsion <= stress.torsion.nominal);
        prop_assert!(sound(&later.derivation()));
    }

    #[test]
    fn loosening_by_the_turn_removes_exactly_the_preload(
        pitch in 0.2..8.0f64, kb in 1e3..1e7f64, km in 1e3..1e8f64, force in 1.0..1e7f64, part in 0.0..3.0f64,
    ) {
        let joint = ElasticJoint::new(
            millimetres(pitch), newtons_per_millimetre(kb), newtons_per_millimetre(km),
        ).unwrap();
        let preload = newtons(force);
        let turn = joint.turn(preload).unwrap();
        prop_assert!(close(joint.preload(turn).unwrap().value, force));
        let all = joint.loosened(preload, turn).unwrap();
        prop_assert!(all.left.value <= 1e-9 * force && close(all.lost.value, force));
        let some = joint.loosened(preload, part * turn).unwrap();
        prop_assert!(close(some.lost.value, force * part.min(1.0)) || part < 1e-9);
        prop_assert!(close((some.lost + some.left).value, force));
        prop_assert!(sound(&some.derivation()));
        // The elongation of a full turn is one pitch.
        let loss = joint.embedment_loss(millimetres(pitch)).unwrap();
        let full = joint.preload(Angle::new::<radian>(std::f64::consts::TAU)).unwrap();
        prop_assert!(close(loss.value, full.value));
    }

    #[test]
    fn heat_changes_nothing_in_one_material(
        ppm in -5.0..30.0f64, change in -200.0..400.0f64, a in 1.0..50.0f64, b in 1.0..50.0f64,
    ) {
        let k = newtons_per_millimetre(3e5);
        let joint = ElasticJoint::new(millimetres(1.5), k, 3.0 * k).unwrap();
        let layer = |ppm: f64, length: f64| ThermalLayer {
            expansion: TemperatureCoefficient::new::<per_kelvin>(ppm * 1e-6),
            length: millimetres(length),
            change: TemperatureInterval::new::<kelvin>(change),
        };
        let same = joint.thermal_change(layer(ppm, a + b), &[layer(ppm, a), layer(ppm, b)]).unwrap();
        prop_assert!(same.change.value.abs() < 1e-6);
        // Members that grow more tighten when warm, and as much looser when cold.
        let more = joint.thermal_change(layer(ppm, a), &[layer(ppm + 10.0, a)]).unwrap();
        prop_assert!(more.change.value * change >= 0.0);
        prop_assert!(more.applied_to(newtons(1e4)).unwrap() >= newtons(0.0));
        prop_assert!(sound(&more.derivation()));
    }

    #[test]
    fn both_temperatures_are_those_of_the_single_change(
        bolt in 5.0..25.0f64, ply in 5.0..25.0f64, cold in -100.0..20.0f64, hot in 20.0..300.0f64,
        thickness in 1.0..100.0f64, plies in 1..20u8, force in 0.0..1e5f64,
    ) {
        let k = newtons_per_millimetre(3e5);
        let joint = ElasticJoint::new(millimetres(1.5), k, 3.0 * k).unwrap();
        let layers = vec![(millimetres(thickness), ppm_per_kelvin(ply)); usize::from(plies)];
        let range = joint
            .thermal_range(ppm_per_kelvin(bolt), &layers, celsius(20.0), celsius(cold), celsius(hot))
            .unwrap();
        let layer = |expansion: f64, change: f64| ThermalLayer {
            expansion: ppm_per_kelvin(expansion),
            length: f64::from(plies) * millimetres(thickness),
            change: TemperatureInterval::new::<kelvin>(change),
        };
        for (found, change) in [(range.at_coldest.change, cold - 20.0), (range.at_hottest.change, hot - 20.0)] {
            let alone = joint.thermal_change(layer(bolt, change), &[layer(ply, change)]).unwrap().change;
            prop_assert!((found - alone).abs() <= newtons(1e-6) + 1e-9 * alone.abs());
        }
        prop_assert!(range.least() <= newtons(0.0) && range.greatest() >= newtons(0.0));
        let service = range.applied_to(Spread::exact(newtons(force))).unwrap();
        prop_assert!(service.min <= service.nominal && service.nominal <= service.max);
        prop_assert!(sound(&range.derivation()));
    }

    #[test]
    fn a_nut_factor_twists_like_the_friction_it_implies(
        thread in any_thread(), friction in 0.05..0.4f64, wide in 1.1..1.8f64, stress in 1.0..900.0f64,
        elastic: bool,
    ) {
        let bearing = wide * thread.nominal_diameter();
        let mu = Friction::new(friction, friction, friction).unwrap();
        let full = FrictionForm::linear(&thread, bearing, mu, mu).unwrap();
        // Extremely coarse or slippery threads have no nut factor below 1.
        if let Ok(k) = full.nut_factor() {
            let model = if elastic { TorsionModel::JisB1083 } else { TorsionModel::Vdi2230 };
            let preload = megapascals(stress) * thread.tensile_stress_area();
            let lumped = ShortForm::new(k, thread.nominal_diameter()).unwrap()
                .tightening_stress(&thread, bearing, preload, megapascals(640.0), model).unwrap();
            let known = full.tightening_stress(preload, model).unwrap();
            prop_assert!(((lumped.equivalent() / known.equivalent.nominal).value - 1.0).abs() < 1e-9);
            prop_assert!(lumped.equivalent() > known.tension);
            prop_assert!(sound(&lumped.derivation()));
        }
    }

    #[test]
    fn ranges_are_in_order(
        force in 1.0..1e6f64, scatter in 0.0..0.9f64, bolts in 1..50u32, low in 0.8..1.0f64, high in 1.0..1.2f64,
    ) {
        let critical = NasaPreload::new(newtons(force), percent(100.0 * scatter)).unwrap()
            .with_torque_tolerance(percent(100.0 * low), percent(100.0 * high)).unwrap();
        let shared = critical.not_separation_critical(NonZeroU32::new(bolts).unwrap());
        let (critical, shared) = (critical.range().unwrap(), shared.range().unwrap());
        for range in [&critical, &shared] {
            prop_assert!(range.service_min <= range.initial.min);
            prop_assert!(range.initial.min <= range.initial.nominal && range.initial.nominal <= range.initial.max);
            prop_assert!(range.service_max >= range.initial.max);
            prop_assert!(sound(&range.derivation()));
        }
        prop_assert!(shared.initial.min >= critical.initial.min);
        prop_assert_eq!(shared.initial.max, critical.initial.max);
        let factor = tightening_factor(percent(100.0 * scatter)).unwrap();
        let vdi = VdiPreload::new(newtons(force), factor).unwrap().range().unwrap();
        let middle = vdi.initial.nominal;
        prop_assert!(close((vdi.initial.max / middle).value - 1.0, scatter) || scatter < 1e-6);
        prop_assert!(sound(&vdi.derivation()));
    }

    /// Any bit pattern at every door: an error or finite numbers, never a panic.
    #[test]
    fn nonsense_never_panics_nor_passes(
        a in any::<f64>(), b in any::<f64>(), c in any::<f64>(), thread in any_thread(), pick in any::<u8>(),
    ) {
        let mild = Friction::new(0.1, 0.12, 0.15).unwrap();
        let friction = Friction::new(a, b, c).unwrap_or(mild);
        // Extremes that are lawful by themselves.
        let wild = [0.0, f64::MIN_POSITIVE, 5e-324, 1e-300, 1e300, f64::MAX, a, b, c];
        let x = wild[usize::from(pick) % wild.len()];
        let bearing = Length::new::<meter>(x);
        for form in [
            FrictionForm::linear(&thread, bearing, friction, mild),
            FrictionForm::shigley(&thread, friction, mild),
            FrictionForm::power_screw(&thread, bearing, millimetres(20.0), friction, mild),
            FrictionForm::three_term(&thread, bearing, bearing, mild, friction),
        ].into_iter().flatten() {
            let lock = Spread { min: Torque::new::<newton_meter>(a), nominal: Torque::new::<newton_meter>(b), max: Torque::new::<newton_meter>(c) };
            let form = form.with_prevailing(lock).unwrap_or(form);
            for value in [x, a, b, c] {
                if let Ok(preload) = form.preload(Torque::new::<newton_meter>(value)) {
                    prop_assert!(preload.min.value >= 0.0 && preload.min <= preload.nominal && preload.nominal <= preload.max && preload.max.value.is_finite());
                }
                let force = Force::new::<newton>(value);
                if let Ok(torque) = form.torque(force) {
                    prop_assert!(torque.min.value >= 0.0 && torque.max.value.is_finite());
                    let off = form.loosening_torque(force).unwrap();
                    prop_assert!(off.min.value.is_finite() && off.max.value.is_finite());
                    prop_assert!(form.split(force).unwrap().thread.value.is_finite());
                }
                for model in [TorsionModel::Vdi2230, TorsionModel::JisB1083] {
                    if let Ok(stress) = form.tightening_stress(force, model) {
                        prop_assert!(stress.equivalent.max.value.is_finite());
                        let _ = stress.utilisation(Stress::new::<pascal>(b)).map(|share| assert!(share.max.value.is_finite()));
                        let _ = stress.in_service(Force::new::<newton>(b), Ratio::new::<ratio>(c)).map(|later| assert!(later.equivalent.value.is_finite()));
                    }
                    if let Ok(limit) = form.assembly_preload(Stress::new::<pascal>(value), percent(90.0), model) {
                        prop_assert!(limit.preload.min.value > 0.0 && limit.preload.max.value.is_finite() && limit.torque.max.value.is_finite());
                    }
                }
            }
            if let Ok(k) = form.nut_factor() {
                prop_assert!(k.max() <= 1.0);
            }
        }
        for (kb, km) in [(a, b), (x, c), (x, x)] {
            let stiffness = |value: f64| shankline::units::newtons_per_millimetre(1e-3 * value);
            let Ok(joint) = ElasticJoint::new(Length::new::<meter>(c.abs()), stiffness(kb), stiffness(km)) else { continue };
            prop_assert!(joint.stiffness().value > 0.0 && joint.stiffness().value.is_finite());
            for value in [x, a, b] {
                let _ = joint.preload(Angle::new::<radian>(value)).map(|f| assert!(f.value.is_finite()));
                let _ = joint.turn(Force::new::<newton>(value)).map(|t| assert!(t.value.is_finite()));
                let _ = joint.embedment_loss(Length::new::<meter>(value)).map(|f| assert!(f.value.is_finite()));
                let _ = joint.loosened(Force::new::<newton>(value), Angle::new::<radian>(a)).map(|l| assert!(l.left.value >= 0.0));
                let layer = ThermalLayer {
                    expansion: TemperatureCoefficient::new::<per_kelvin>(value),
                    length: Length::new::<meter>(b),
                    change: TemperatureInterval::new::<kelvin>(c),
                };
                let _ = joint.thermal_change(layer, &[layer, layer]).map(|t| assert!(t.change.value.is_finite()));
            }
        }
        let _ = NasaPreload::new(Force::new::<newton>(a), Ratio::new::<ratio>(b))
            .and_then(|p| p.with_torque_tolerance(Ratio::new::<ratio>(c), Ratio::new::<ratio>(x)).or(Ok(p)))
            .and_then(|p| p.with_thermal(Force::new::<newton>(x), Force::new::<newton>(c)).or(Ok(p)))
            .and_then(|p| p.range())
            .map(|range| assert!(range.service_min.value >= 0.0 && range.service_max.value.is_finite()));
        let _ = VdiPreload::new(Force::new::<newton>(x), a)
            .and_then(|p| p.range())
            .map(|range| assert!(range.service_min.value >= 0.0));
        let _ = PreloadSample::of(&[Force::new::<newton>(a), Force::new::<newton>(x), Force::new::<newton>(c)])
            .map(|sample| assert!(sample.standard_deviation.value.is_finite()));
        let _ = EnTorque::new(a, Length::new::<meter>(b), Force::new::<newton>(x));
        let _ = BearingFace::new(Length::new::<meter>(a), Length::new::<meter>(x));
    }
}
