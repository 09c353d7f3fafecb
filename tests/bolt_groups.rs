//! Bolt groups against print, and their invariants.

#![allow(clippy::cast_precision_loss)] // a few bolts at most

mod support;

use proptest::prelude::*;
use shankline::prelude::*;
use shankline::strength::check::{Level, Place};
use shankline::strength::group::{
    BoltForce, BoltPattern, DeformationLaw, GroupBolt, NeutralAxis, PlaneLoad,
};
use shankline::units::{Torque, degrees, newton_metres};
use support::{Row, csv_rows, number};

fn pattern_of(row: &Row) -> BoltPattern {
    let unit = length_unit(row);
    BoltPattern::new(row["bolts"].split(' ').map(|place| {
        let (x, y) = place.split_once(':').unwrap();
        GroupBolt::new(unit(x.parse().unwrap()), unit(y.parse().unwrap()))
    }))
    .unwrap()
}

fn length_unit(row: &Row) -> fn(f64) -> Length {
    match &*row["length_unit"] {
        "mm" => millimetres,
        "in" => inches,
        other => panic!("{other}"),
    }
}

/// Forces stand in kN: with the lengths scaled, kips give the same numbers.
fn kilonewtons(value: f64) -> Force {
    newtons(1e3 * value)
}

fn found(row: &Row) -> f64 {
    let cell = |column: &str| number(row, column).unwrap();
    let unit = length_unit(row);
    if row["quantity"] == "curve" {
        return DeformationLaw::Aisc.share(unit(cell("given")));
    }
    let pattern = pattern_of(row);
    let (px, py) = (kilonewtons(cell("px")), kilonewtons(cell("py")));
    let load = PlaneLoad::new(px, py, unit(cell("x")), unit(cell("y")));
    let elastic = pattern.elastic(&[load]).unwrap();
    let greatest = elastic.forces[elastic.governing].resultant;
    match &*row["quantity"] {
        "greatest" => greatest.value / 1e3,
        "least" => elastic
            .forces
            .iter()
            .map(|force| force.resultant.value / 1e3)
            .fold(f64::INFINITY, f64::min),
        "moment_part" => {
            let n = pattern.bolts().len() as f64;
            let force = elastic.forces[elastic.governing];
            (force.x - px / n).value.hypot((force.y - py / n).value) / 1e3
        }
        "stress" => greatest.value / cell("given"),
        "elastic_capacity" => cell("given") / (greatest / load.force_y.abs()).value,
        "coefficient" => pattern
            .instantaneous_centre(&[load], DeformationLaw::Aisc)
            .unwrap()
            .coefficient
            .unwrap(),
        "tilting_area" => {
            let moment: Torque = newton_metres(-py.value * 1e-3 * cell("given"));
            let edge = NeutralAxis::LowestEdge { y: unit(0.0) };
            let group = pattern.tension(moment, edge, &[load]).unwrap();
            let (t, v) = (
                group.tensions[group.governing],
                group.shears[group.governing],
            );
            let half = t.value / 2.0;
            (half + half.hypot(v.resultant.value)) / 35.0
        }
        other => panic!("{other}"),
    }
}

#[test]
fn printed_groups() {
    let mut from_memory = 0;
    for row in csv_rows("tests/data/bolt_groups.csv") {
        let (printed, tolerance) = (number(&row, "printed"), number(&row, "tolerance"));
        let found = found(&row);
        let off = (found - printed.unwrap()).abs();
        assert!(off <= tolerance.unwrap(), "{row:?}: found {found}");
        match &*row["basis"] {
            "published" | "reproduced" => {}
            "memory" => from_memory += 1,
            other => panic!("{other}"),
        }
    }
    assert_eq!(from_memory, 3);
}

fn load(fx: f64, fy: f64, x: f64, y: f64, moment: f64) -> PlaneLoad {
    PlaneLoad::new(newtons(fx), newtons(fy), millimetres(x), millimetres(y))
        .with_moment(newton_metres(moment))
}

fn bolts(places: &[(f64, f64, f64)]) -> BoltPattern {
    BoltPattern::new(places.iter().map(|&(x, y, area)| {
        GroupBolt::new(millimetres(x), millimetres(y)).with_relative_area(area)
    }))
    .unwrap()
}

fn places() -> impl Strategy<Value = Vec<(f64, f64, f64)>> {
    prop::collection::vec((-300.0..300.0, -300.0..300.0, 0.5..2.0), 2..13)
}

/// Rows and columns bring bolts onto the centre and governing bolts in pairs.
fn grid() -> impl Strategy<Value = Vec<(f64, f64, f64)>> {
    (1usize..6, 1usize..5, 20.0..120.0, 20.0..120.0).prop_filter_map("two bolts", |(r, c, p, g)| {
        let all = (0..r).flat_map(|i| (0..c).map(move |k| (k as f64 * g, i as f64 * p, 1.0)));
        (r * c > 1).then(|| all.collect())
    })
}

fn loads() -> impl Strategy<Value = PlaneLoad> {
    let force = -5e4..5e4;
    (force.clone(), force, -1e3..1e3, -1e3..1e3, -1e4..1e4)
        .prop_map(|(fx, fy, x, y, m)| load(fx, fy, x, y, m))
}

/// Forces and moment about the origin.
fn wrench(pattern: &BoltPattern, forces: &[BoltForce]) -> [f64; 3] {
    let mut sum = [0.0; 3];
    for (bolt, force) in pattern.bolts().iter().zip(forces) {
        sum[0] += force.x.value;
        sum[1] += force.y.value;
        sum[2] += (bolt.x * force.y - bolt.y * force.x).value;
    }
    sum
}

fn balanced(pattern: &BoltPattern, forces: &[BoltForce], loads: &[PlaneLoad], slack: f64) {
    let mut want = [0.0; 3];
    for load in loads {
        want[0] += load.force_x.value;
        want[1] += load.force_y.value;
        want[2] += load.moment.value;
        want[2] += (load.at.x * load.force_y - load.at.y * load.force_x).value;
    }
    let scale: f64 = forces.iter().map(|force| force.resultant.value).sum();
    let got = wrench(pattern, forces);
    for (got, want) in got.iter().zip(want) {
        assert!(
            (got - want).abs() <= slack * scale.max(want.abs()),
            "{got} {want} {scale}"
        );
    }
}

fn turned(x: f64, y: f64, angle: f64) -> (f64, f64) {
    let (sin, cos) = angle.sin_cos();
    (x * cos - y * sin, x * sin + y * cos)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn forces_balance_the_loads(places in prop_oneof![places(), grid()], one in loads(), two in loads()) {
        let pattern = bolts(&places);
        let elastic = pattern.elastic(&[one, two]).unwrap();
        balanced(&pattern, &elastic.forces, &[one, two], 1e-11);
        elastic.derivation().check().unwrap();
        let centre = pattern.instantaneous_centre(&[one, two], DeformationLaw::Aisc).unwrap();
        balanced(&pattern, &centre.forces, &[one, two], 1e-8);
        prop_assert!(centre.iterations <= 100, "{} iterations", centre.iterations);
        centre.derivation().check().unwrap();
        // Force and deformation of each bolt lie on the curve, the farthest at its end.
        for (force, (bolt, d)) in centre.forces.iter().zip(pattern.bolts().iter().zip(&centre.deformations)) {
            let on_curve = bolt.relative_area * centre.law.share(*d) * centre.strength_needed;
            prop_assert!((force.resultant - on_curve).abs() <= 1e-9 * centre.strength_needed);
            prop_assert!(*d <= inches(0.34 * (1.0 + 1e-9)));
        }
        prop_assert!((centre.deformations[centre.governing] - inches(0.34)).abs() < inches(1e-9));
    }

    #[test]
    fn ductility_never_costs_capacity_with_the_farthest_at_its_strength(places in grid(), one in loads()) {
        let pattern = bolts(&places);
        let elastic = pattern.elastic(&[one]).unwrap();
        let law = DeformationLaw::FarthestAtUltimate;
        let needed = pattern.instantaneous_centre(&[one], law).unwrap().strength_needed;
        prop_assert!(needed <= elastic.forces[elastic.governing].resultant * (1.0 + 1e-9));
    }

    #[test]
    fn turning_and_shifting_change_nothing(places in places(), one in loads(), angle in 0.0..6.3, dx in -500.0..500.0, dy in -500.0..500.0) {
        let moved: Vec<_> = places
            .iter()
            .map(|&(x, y, area)| {
                let (x, y) = turned(x, y, angle);
                (x + dx, y + dy, area)
            })
            .collect();
        let (fx, fy) = turned(one.force_x.value, one.force_y.value, angle);
        let (x, y) = turned(one.at.x.value * 1e3, one.at.y.value * 1e3, angle);
        let two = load(fx, fy, x + dx, y + dy, one.moment.value);
        let (a, b) = (bolts(&places), bolts(&moved));
        let elastic = (a.elastic(&[one]).unwrap(), b.elastic(&[two]).unwrap());
        for (a, b) in elastic.0.forces.iter().zip(&elastic.1.forces) {
            prop_assert!((a.resultant - b.resultant).abs() < newtons(1e-5));
        }
        let law = DeformationLaw::Aisc;
        let centre = (a.instantaneous_centre(&[one], law).unwrap(), b.instantaneous_centre(&[two], law).unwrap());
        let ratio = centre.0.strength_needed / centre.1.strength_needed;
        prop_assert!((ratio.value - 1.0).abs() < 1e-7, "{ratio:?}");
    }

    #[test]
    fn capacity_falls_with_eccentricity(places in grid(), angle in -90.0..90.0, e in 1.0..800.0, more in 1.0..300.0) {
        let pattern = bolts(&places);
        let (sin, cos) = f64::sin_cos(f64::to_radians(angle));
        let c = |e: f64| {
            // At right angles to the load, so that e is its arm.
            let at = pattern.centroid();
            let one = PlaneLoad::new(newtons(sin), newtons(-cos), at.x + millimetres(e * cos), at.y + millimetres(e * sin));
            pattern.instantaneous_centre(&[one], DeformationLaw::Aisc).unwrap().coefficient.unwrap()
        };
        prop_assert!(c(e + more) <= c(e) * (1.0 + 1e-9));
        prop_assert!(c(e) <= c(0.0) * (1.0 + 1e-9));
    }

    #[test]
    fn a_load_through_the_centroid_gives_the_plain_sum(places in places(), angle in 0.0..360.0) {
        let pattern = bolts(&places);
        let one = PlaneLoad::eccentric(&pattern, newtons(1e3), millimetres(0.0), degrees(angle));
        let group = pattern.instantaneous_centre(&[one], DeformationLaw::FarthestAtUltimate).unwrap();
        let total: f64 = places.iter().map(|place| place.2).sum();
        prop_assert!((group.coefficient.unwrap() - total).abs() < 1e-6 * total);
    }

    #[test]
    fn a_pure_moment_turns_a_symmetric_pattern_about_its_centroid(places in grid(), x in -200.0..200.0, moment in 1.0..1e4) {
        let shifted: Vec<_> = places.iter().map(|&(px, py, area)| (px + x, py - x, area)).collect();
        let pattern = bolts(&shifted);
        let twist = load(0.0, 0.0, 0.0, 0.0, moment);
        let group = pattern.instantaneous_centre(&[twist], DeformationLaw::Aisc).unwrap();
        let (centre, centroid) = (group.centre.unwrap(), pattern.centroid());
        prop_assert!((centre.x - centroid.x).abs() < millimetres(1e-4));
        prop_assert!((centre.y - centroid.y).abs() < millimetres(1e-4));
        prop_assert_eq!(group.coefficient, None);
        prop_assert!(group.capacity(newtons(1.0)).is_err());
    }

    #[test]
    fn extremes_are_answered_or_refused(
        places in prop::collection::vec((extreme(), extreme(), extreme()), 0..6),
        forces in prop::collection::vec(extreme(), 5..6),
    ) {
        let pattern = BoltPattern::new(places.iter().map(|&(x, y, area)| {
            GroupBolt::new(millimetres(x), millimetres(y)).with_relative_area(area)
        }));
        let one = load(forces[0], forces[1], forces[2], forces[3], forces[4]);
        let Ok(pattern) = pattern else { return Ok(()) };
        let finite = |forces: &[BoltForce]| forces.iter().all(|f| f.x.is_finite() && f.y.is_finite() && f.resultant.is_finite());
        if let Ok(group) = pattern.elastic(&[one, one]) {
            prop_assert!(finite(&group.forces));
            let _ = (group.derivation(), group.check(newtons(forces[0]), Level::Design));
        }
        if let Ok(group) = pattern.instantaneous_centre(&[one], DeformationLaw::Aisc) {
            prop_assert!(finite(&group.forces));
            prop_assert!(group.coefficient.is_none_or(f64::is_finite));
            prop_assert!(group.strength_needed.is_finite() && group.residual <= 1e-10);
            let _ = (group.derivation(), group.capacity(newtons(forces[0])), group.moment_capacity(newtons(forces[1])));
        }
        let edge = NeutralAxis::LowestEdge { y: millimetres(forces[2]) };
        for axis in [NeutralAxis::Centroid, edge] {
            if let Ok(group) = pattern.tension(newton_metres(forces[3]), axis, &[one]) {
                prop_assert!(group.tensions.iter().all(|t| t.is_finite()));
                let _ = group.derivation();
            }
        }
    }
}

fn extreme() -> impl Strategy<Value = f64> {
    prop_oneof![
        Just(0.0),
        Just(1.0),
        Just(-1.0),
        Just(f64::NAN),
        Just(f64::INFINITY),
        Just(1e-300),
        Just(1e300),
        Just(-1e300),
        Just(1e6),
        Just(1e-9),
        Just(f64::MAX),
        -10.0..10.0,
    ]
}

#[test]
fn coincident_bolts_share_a_force_and_refuse_a_moment() {
    let pair = bolts(&[(40.0, 0.0, 1.0), (40.0, 0.0, 3.0)]);
    let through = load(0.0, -8e3, 40.0, 0.0, 0.0);
    let law = DeformationLaw::FarthestAtUltimate;
    let group = pair.instantaneous_centre(&[through], law).unwrap();
    assert!((group.coefficient.unwrap() - 4.0).abs() < 1e-12);
    assert!((pair.elastic(&[through]).unwrap().forces[1].y + newtons(6e3)).abs() < newtons(1e-9));
    assert!(pair.elastic(&[load(0.0, -8e3, 41.0, 0.0, 0.0)]).is_err());
    assert!(
        pair.instantaneous_centre(&[load(0.0, 0.0, 0.0, 0.0, 1.0)], law)
            .is_err()
    );
    assert!(pair.instantaneous_centre(&[], law).is_err());
    assert!(
        pair.tension(newton_metres(1.0), NeutralAxis::Centroid, &[])
            .is_err()
    );
}

#[test]
fn larger_bolts_carry_more_and_are_checked_for_it() {
    let pair = bolts(&[(0.0, 0.0, 1.0), (100.0, 0.0, 2.0)]);
    let down = load(0.0, -3e3, 200.0 / 3.0, 0.0, 0.0);
    let group = pair.elastic(&[down]).unwrap();
    assert!((group.forces[1].resultant - newtons(2e3)).abs() < newtons(1e-9));
    let check = group.check(newtons(2e3), Level::Nominal).unwrap();
    assert_eq!(check.place, Place::Bolt(1));
    assert!((check.utilisation.value - 0.5).abs() < 1e-12);
}

#[test]
fn the_working_of_many_bolts_stays_readable() {
    let pattern = BoltPattern::rows_and_columns(25, 20, millimetres(50.0), millimetres(60.0));
    let (pattern, one) = (pattern.unwrap(), load(3e3, -5e5, 900.0, 0.0, 0.0));
    let mut group = pattern
        .instantaneous_centre(&[one], DeformationLaw::Aisc)
        .unwrap();
    let mut elastic = pattern.elastic(&[one]).unwrap();
    for derivation in [group.derivation(), elastic.derivation()] {
        derivation.check().unwrap();
        assert!(
            derivation
                .steps()
                .iter()
                .all(|step| step.formula().len() <= 600)
        );
    }
    // Public fields may be changed; nothing may panic.
    (group.governing, elastic.governing) = (usize::MAX, 500);
    let _ = (group.derivation(), elastic.derivation());
    assert!(elastic.check(newtons(1.0), Level::Nominal).is_err());
}

#[cfg(feature = "serde")]
#[test]
fn patterns_are_checked_when_read() {
    let pattern = BoltPattern::rows_and_columns(2, 1, inches(3.0), inches(3.0)).unwrap();
    let text = serde_json::to_string(&pattern).unwrap();
    // Text rounds to twelve digits, so it is the text that must come back.
    let read: BoltPattern = serde_json::from_str(&text).unwrap();
    assert_eq!(serde_json::to_string(&read).unwrap(), text);
    assert_eq!(read.bolts().len(), 2);
    assert!(serde_json::from_str::<BoltPattern>("[]").is_err());
    let one = r#"[{"x": "0 mm", "y": "1 in", "relative_area": -1}]"#;
    assert!(serde_json::from_str::<BoltPattern>(one).is_err());
    let group = pattern.elastic(&[load(1.0, 0.0, 0.0, 9.0, 0.0)]).unwrap();
    assert!(
        serde_json::to_string(&group)
            .unwrap()
            .contains("relative_area")
    );
}
