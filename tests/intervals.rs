//! Ranges are true: whatever the parts measure within their tolerances, the result stays within the range that was
//! reported; and narrower tolerances never spoil a joint that holds.
#![cfg(feature = "serde")]

use proptest::prelude::*;
use shankline::joint::{Joint, Word};
use shankline::preload::FrictionForm;
use shankline::prelude::*;
use shankline::units::newton_metres;

#[path = "support/verdicts.rs"]
mod verdicts;

/// A range and a point in it: often at one of its ends, where a range that is too narrow shows.
#[derive(Clone, Copy, Debug)]
struct Point {
    min: f64,
    nominal: f64,
    max: f64,
    at: f64,
}

fn point(least: f64, most: f64) -> impl Strategy<Value = Point> {
    let inside = prop_oneof![Just(0.0), Just(1.0), 0.0..=1.0_f64];
    (least..most, 0.0..0.2_f64, 0.0..0.2_f64, inside).prop_map(|(nominal, less, more, share)| {
        let (min, max) = (nominal * (1.0 - less), nominal * (1.0 + more));
        let at = (min + share * (max - min)).clamp(min, max);
        Point {
            min,
            nominal,
            max,
            at,
        }
    })
}

impl Point {
    fn spread<Q>(self, of: impl Fn(f64) -> Q) -> Spread<Q> {
        Spread {
            min: of(self.min),
            nominal: of(self.nominal),
            max: of(self.max),
        }
    }
}

/// In base units, but for rounding.
fn within(value: f64, min: f64, max: f64) -> bool {
    let slack = 1e-12 * min.abs().max(max.abs());
    (min - slack..=max + slack).contains(&value)
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(400) })]

    /// Grip and protrusion of every length that a search judges: plies, washers, a gap, the screw and its nut, each as
    /// it may come.
    #[test]
    fn lengths(
        plies in prop::collection::vec(point(2.0, 40.0), 1..5), washer in point(1.5, 4.0), gap in point(0.5, 3.0),
        has_gap in any::<bool>(), of_screw in 0.0..=1.0_f64, of_nut in 0.0..=1.0_f64,
    ) {
        let thread: Thread = "M16".parse().unwrap();
        let mut stack = Stack::builder();
        let mut grip = 0.0;
        for (number, ply) in plies.iter().enumerate() {
            stack = stack.ply("ply", ply.spread(millimetres));
            grip += 1e-3 * ply.at;
            if number == 0 && has_gap && plies.len() > 1 {
                stack = stack.gap(gap.spread(millimetres));
                grip += 1e-3 * gap.at;
            }
        }
        let stack = stack.washers_under_nut(washer.spread(millimetres), 1).build().unwrap();
        let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread).unwrap();
        let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread).unwrap()).unwrap();
        let rules = LengthRules::fabrication(UnitSystem::Si);
        let selection = LengthSearch::new(&stack, &screws, nut, rules).unwrap().run().unwrap();
        let mut judged = 0;
        for own in selection.accepted().iter().chain(selection.rejected()) {
            judged += 1;
            let washers = f64::from(u32::try_from(own.washers_under_nut).unwrap());
            let grip = grip + 1e-3 * washers * washer.at;
            prop_assert!(within(grip, own.grip.min.value, own.grip.max.value), "{} in {:?}", grip, own.grip);
            let screw = own.screw.min.value + of_screw * (own.screw.max - own.screw.min).value;
            let height = own.nut_height;
            let nut = height.min.value + of_nut * (height.max - height.min).value;
            let beyond = screw - grip - nut;
            prop_assert!(
                within(beyond, own.protrusion.min.value, own.protrusion.max.value),
                "{} beyond the nut, {:?}", beyond, own.protrusion
            );
        }
        prop_assert!(judged > 0);
    }

    /// Preload of a torque and torque of a preload by the nut factor, with the running torque of the nut.
    #[test]
    fn torque_by_nut_factor(
        factor in point(0.1, 0.3), torque in point(20.0, 400.0), running in point(0.1, 15.0), force in 1e3..1e5_f64, d in 5.0..40.0_f64,
    ) {
        let form = ShortForm::new(NutFactor::new(factor.min, factor.nominal, factor.max).unwrap(), millimetres(d)).unwrap();
        let form = form.with_prevailing(running.spread(newton_metres)).unwrap();
        let arm = factor.at * 1e-3 * d;
        let preload = form.preload_within(torque.spread(newton_metres)).unwrap();
        let own = ((torque.at - running.at) / arm).max(0.0);
        prop_assert!(within(own, preload.min.value, preload.max.value), "{} N in {:?}", own, preload);
        let needed = form.torque(newtons(force)).unwrap();
        let own = arm * force + running.at;
        prop_assert!(within(own, needed.min.value, needed.max.value), "{} N m in {:?}", own, needed);
    }

    /// The same by friction: a joint whose coefficients are known to the last digit is one of those in the range.
    #[test]
    fn torque_by_friction(
        of_thread in point(0.06, 0.25), of_face in point(0.06, 0.25), torque in point(20.0, 400.0), force in 1e3..1e5_f64,
    ) {
        let thread: Thread = "M16".parse().unwrap();
        let friction = |own: &Point| Friction::new(own.min, own.nominal, own.max).unwrap();
        let known = |own: &Point| Friction::new(own.at, own.at, own.at).unwrap();
        let bearing = millimetres(20.0);
        for make in [FrictionForm::lead_angle, FrictionForm::linear] {
            let wide = make(&thread, bearing, friction(&of_thread), friction(&of_face)).unwrap();
            let exact = make(&thread, bearing, known(&of_thread), known(&of_face)).unwrap();
            let range = wide.preload_within(torque.spread(newton_metres)).unwrap();
            let own = exact.preload(newton_metres(torque.at)).unwrap();
            prop_assert!(within(own.nominal.value, range.min.value, range.max.value), "{:?} in {:?}", own, range);
            let (range, own) = (wide.torque(newtons(force)).unwrap(), exact.torque(newtons(force)).unwrap());
            prop_assert!(within(own.nominal.value, range.min.value, range.max.value), "{:?} in {:?}", own, range);
            let (range, own) = (wide.nut_factor().unwrap(), exact.nut_factor().unwrap());
            prop_assert!(within(own.nominal(), range.min(), range.max()), "{:?} in {:?}", own, range);
        }
    }
}

/// Of a whole joint: narrower tolerances of its plies give the grip, the protrusion, the shares of its planes and the
/// preload no wider ranges, and never spoil it.
#[test]
fn narrower_plies_never_spoil_a_joint() {
    let compared = std::cell::Cell::new(0);
    verdicts::for_all(600, |joint, dice| {
        let Ok(before) = joint.check() else {
            return Ok(());
        };
        let mut document = serde_json::to_value(joint).unwrap();
        let metres = |value: f64| serde_json::json!({ "value": value, "unit": "m" });
        for (own, ply) in document["stack"]["plies"]
            .as_array_mut()
            .unwrap()
            .iter_mut()
            .zip(joint.stack.plies())
        {
            let of = ply.thickness;
            let (less, more) = (dice.between(0.0, 1.0), dice.between(0.0, 1.0));
            own["thickness"]["min"] = metres((of.nominal - less * (of.nominal - of.min)).value);
            own["thickness"]["nominal"] = metres(of.nominal.value);
            own["thickness"]["max"] = metres((of.nominal + more * (of.max - of.nominal)).value);
        }
        let mut narrower: Joint = serde_json::from_value(document).unwrap();
        if joint.own.screw.is_none() {
            // The same bolt: the search might find another for other plies.
            narrower.bolt.length = Some(before.candidate.screw.nominal);
        }
        let Ok(after) = narrower.check() else {
            return Ok(());
        };
        let (wide, narrow) = (&before.candidate, &after.candidate);
        let same = wide.screw.nominal == narrow.screw.nominal
            && (
                wide.washers_added,
                wide.washers_added_under_head,
                wide.cut.is_some(),
            ) == (
                narrow.washers_added,
                narrow.washers_added_under_head,
                narrow.cut.is_some(),
            );
        if !same {
            return Ok(());
        }
        compared.set(compared.get() + 1);
        for (what, own, range) in [
            ("grip", narrow.grip, wide.grip),
            ("protrusion", narrow.protrusion, wide.protrusion),
        ] {
            let both = [own.min.value, own.max.value]
                .map(|own| within(own, range.min.value, range.max.value));
            if both != [true, true] && wide.cut.is_none() {
                return Err(format!("{what} {own:?} is not within {range:?}"));
            }
        }
        if let (Some(own), Some(range)) = (&after.preload, &before.preload) {
            let (own, range) = (own.preload, range.preload);
            if !within(own.min.value, range.min.value, range.max.value)
                || !within(own.max.value, range.min.value, range.max.value)
            {
                return Err(format!("preload {own:?} is not within {range:?}"));
            }
        }
        if before.word() == Word::Holds && after.word() != Word::Holds {
            return Err(format!(
                "narrower plies spoil it: {}",
                verdicts::why(&after)
            ));
        }
        Ok(())
    });
    assert!(
        compared.get() > 200,
        "only {} were compared",
        compared.get()
    );
}
