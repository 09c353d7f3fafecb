//! Whatever the numbers: verdicts are in order, workings give their numbers again, nothing breaks.

use proptest::prelude::*;
use shankline::joint::{
    Joint, JointLoad, JointMethods, JointStiffness, JointWasher, Repeats, Sheet, Tightening,
    TorqueTightening, Word,
};
use shankline::prelude::*;
use shankline::strength::check::{Mode, Place};
use shankline::units::{celsius, newtons_per_millimetre, percent};

use crate::joints::{clevis, frame, slips_by_friction, tightened, torque, used, verdict};

/// Every working of the whole check gives its numbers again.
#[test]
fn workings_are_true() {
    let mut joint = frame();
    joint.load.across = newtons(20e3);
    joint.load.along = newtons(10e3);
    joint.load.repeats = Repeats::Between {
        across_least: newtons(20e3),
        along_least: newtons(0.0),
        cycles: Some(1e5),
    };
    joint.tightening = tightened(0.16, 0.22);
    joint.methods.slip = slips_by_friction(0.15, 1.25);
    for methods in [
        joint.methods,
        JointMethods::aisc_lrfd(AiscEdition::E2010),
        JointMethods::en_1993(),
    ] {
        joint.methods = methods;
        let (found, workings) = joint.check_with_working().unwrap();
        assert_eq!(found, verdict(&joint));
        assert!(workings.len() > 10, "{}", workings.len());
        for working in workings {
            working.check().unwrap();
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    /// Twice the load is twice the utilisation where nothing but the load is compared.
    #[test]
    fn shear_scales_with_the_load(load in 1.0..50e3f64, factor in 1.0..3.0f64) {
        let mut joint = frame();
        joint.load.across = newtons(load);
        let shear = |joint: &Joint| used(&verdict(joint), Mode::BoltShear, Place::Plane(1));
        let once = shear(&joint);
        joint.load.shock_factor = factor;
        prop_assert!((shear(&joint) / once - factor).abs() < 1e-9);
    }

    /// Checks fall in order, every utilisation is a number, and the sheet can be written.
    #[test]
    fn sane_joints_give_sane_verdicts(
        across in 0.0..100e3f64, along in 0.0..100e3f64, shock in 1.0..3.0f64,
        k in 0.1..0.3f64, repeats: bool, tight: bool, codes in 0..3usize,
    ) {
        let mut joint = frame();
        joint.load = JointLoad {
            across: newtons(across),
            along: newtons(along),
            shock_factor: shock,
            repeats: if repeats {
                let none = newtons(0.0);
                Repeats::Between { across_least: none, along_least: none, cycles: None }
            } else {
                Repeats::Never
            },
            ..joint.load
        };
        if tight {
            let k = NutFactor::new(0.8 * k, k, 1.3 * k).unwrap();
            let torque = TorqueTightening::new(k, PreloadTarget::Reusable);
            joint.tightening = Some(Tightening::Torque(torque));
        }
        joint.methods = [
            JointMethods::machine_design(1.5),
            JointMethods::aisc_lrfd(AiscEdition::E2010),
            JointMethods::en_1993(),
        ][codes];
        let found = verdict(&joint);
        let used: Vec<f64> = found.checks.iter().map(|check| check.utilisation.value).collect();
        prop_assert!(used.iter().all(|used| used.is_finite() && *used >= 0.0));
        prop_assert!(used.windows(2).all(|pair| pair[0] >= pair[1]));
        let sheet = Sheet::new(&joint, &found).unwrap();
        prop_assert!(!sheet.render(UnitSystem::UsCustomary).to_string().is_empty());
    }

    /// No number breaks it.
    #[test]
    fn no_number_breaks_it(numbers in proptest::array::uniform7(any::<f64>())) {
        let [a, b, c, d, e, f, g] = numbers;
        let mut joint = frame();
        joint.load = JointLoad {
            across: newtons(a),
            along: newtons(b),
            repeats: Repeats::Between {
                across_least: newtons(c),
                along_least: newtons(c),
                cycles: Some(g),
            },
            shock_factor: d,
            load_factor: Some(e),
            ..joint.load
        };
        joint.environment.hottest = celsius(f);
        if let Ok(verdict) = joint.check() {
            prop_assert!(verdict.checks.iter().all(|check| check.utilisation.value.is_finite()));
        }
    }

    /// Nor does any number of a ply, of its washers, or of a tapped part.
    #[test]
    fn no_number_of_a_ply_breaks_it(
        numbers in proptest::array::uniform9(prop_oneof![any::<f64>(), -10.0..100.0f64]), codes in 0..3usize,
    ) {
        let [thick, hole, end, edge, width, outside, inside, along, across] = numbers;
        let mm = |value: f64| millimetres(value);
        let ply = || {
            crate::joints::plate("plate", Spread::exact(mm(thick)))
                .hole(mm(hole))
                .end_distance(mm(end))
                .edge_distance(mm(edge))
                .width(mm(width))
        };
        let washer = JointWasher::new("washer", Spread::exact(mm(3.0))).diameters(mm(outside), mm(inside));
        let stack = Stack::builder()
            .washer_under_head(washer.clone())
            .add(ply())
            .add(ply())
            .shear_planes([1])
            .washers_under_nut(washer, 1)
            .build();
        let Ok(stack) = stack else { return Ok(()) };
        let mut joint = frame();
        joint.stack = stack;
        joint.load.along = newtons(1e3 * along);
        joint.load.across = newtons(1e3 * across);
        joint.tightening = tightened(0.16, 0.20);
        joint.methods = [
            JointMethods::machine_design(1.5),
            JointMethods::aisc_lrfd(AiscEdition::E2016),
            JointMethods::en_1993(),
        ][codes];
        if let Ok((found, workings)) = joint.check_with_working() {
            prop_assert!(found.checks.iter().all(|check| check.utilisation.value.is_finite()));
            for working in workings {
                prop_assert!(working.check().is_ok());
            }
            // A bolt of no length that fits has no sheet.
            prop_assert!(Sheet::new(&joint, &found).is_ok() || found.word() == Word::DoesNotHold);
        }
    }

    /// Nor does any number of the tightening or of the gaps.
    #[test]
    fn no_number_of_the_tightening_breaks_it(
        numbers in proptest::array::uniform6(any::<f64>()), relaxation in any::<f64>(),
    ) {
        let [least, nominal, most, settling, bolt, members] = numbers;
        let mut joint = clevis();
        joint.load.along = newtons(5e3);
        let mut tight = torque(0.16, 0.20);
        tight.prevailing = Some(Spread {
            min: newton_metres(least),
            nominal: newton_metres(nominal),
            max: newton_metres(most),
        });
        for case in 0..4 {
            joint.tightening = Some(Tightening::Torque(tight));
            if let Ok((found, workings)) = joint.check_with_working() {
                if let Some(preload) = found.preload {
                    prop_assert!(preload.torque.is_finite() && preload.in_service.is_finite());
                    prop_assert!(preload.in_service.value >= 0.0);
                } else {
                    prop_assert!(!found.holds());
                }
                for working in workings {
                    prop_assert!(working.check().is_ok());
                }
                prop_assert!(Sheet::new(&joint, &found).is_ok());
            }
            match case {
                0 => tight.prevailing = None,
                1 => tight.settling = Some(millimetres(settling)),
                _ => {
                    tight.relaxation = Some(percent(relaxation));
                    tight.stiffness = Some(JointStiffness {
                        bolt: newtons_per_millimetre(bolt),
                        members: newtons_per_millimetre(members),
                    });
                }
            }
        }
    }
}
