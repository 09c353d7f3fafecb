//! Cuts and tolerances of screws that end in a tapped part, and of candidates that someone tampered with.

use shankline::joint::{Candidate, CutMethod, CutPlan, JointTolerances, ToleranceMethod};
use shankline::prelude::*;

const HAIR: Length = millimetres(1e-6);

fn exact(value: f64) -> Spread<Length> {
    Spread::exact(millimetres(value))
}

/// A cover of 20 mm on a bed with 18 mm of thread, 15 of them wanted, and an M12 screw of 50 mm exactly.
fn screw_in_a_bed(tolerance: f64) -> (Stack, NutEnd, LengthRules, Candidate) {
    let cover = millimetres(20.0).plus_minus(millimetres(tolerance));
    let builder = Stack::builder().ply("cover", cover);
    let stack = builder.tapped_part("bed", exact(0.0)).build().unwrap();
    let hole = NutEnd::tapped(millimetres(15.0), Some(millimetres(18.0))).unwrap();
    let rules = LengthRules::fabrication(UnitSystem::Si);
    let [length, shank, start] = [50.0, 10.0, 15.0].map(millimetres);
    let screw = ScrewLength::measured(length, shank, start).unwrap();
    let screws = ScrewSeries::new(ScrewProduct::Iso4017, &thread()).unwrap();
    let search = LengthSearch::new(&stack, &screws, hole, rules).unwrap();
    let candidate = search.assess(screw).unwrap();
    (stack, hole, rules, candidate)
}

fn thread() -> Thread {
    "M12".parse().unwrap()
}

#[test]
fn a_screw_for_a_tapped_part_is_cut_to_a_fixed_length_or_to_its_stack() {
    // 20.2 + 15 + 0.5 = 35.7, cut to 36 mm: 36.5 - 19.8 = 16.7 mm deep at most.
    let (_, hole, rules, candidate) = screw_in_a_bed(0.2);
    let plan = CutPlan::new(&candidate, &thread(), hole, rules).unwrap();
    assert_eq!(plan.method, CutMethod::ToFixedLength);
    let cut = plan.cut().unwrap();
    assert!((cut.finished.nominal - millimetres(36.0)).abs() < HAIR);
    assert!((cut.protrusion.max - millimetres(1.7)).abs() < HAIR);
    // The cover varies by 3 mm, as much as there is room: each to its own, 15.5 mm longer.
    let (_, hole, rules, candidate) = screw_in_a_bed(1.5);
    let plan = CutPlan::new(&candidate, &thread(), hole, rules).unwrap();
    assert_eq!(plan.method, CutMethod::ToMeasuredStack);
    let mark = plan.cut().unwrap().mark_from_head;
    assert!((mark.min - millimetres(34.0)).abs() < HAIR);
    assert!((mark.max - millimetres(37.0)).abs() < HAIR);
    let working = plan.derivation();
    working.check().unwrap();
    let labels: Vec<&str> = working
        .steps()
        .iter()
        .map(shankline::derivation::Step::what)
        .collect();
    let text = format!("{} {}", working.title(), labels.join("; "));
    for word in ["nut", "fit-up", "protrusion"] {
        assert!(!text.contains(word), "{text}");
    }
}

#[test]
fn a_candidate_for_a_tapped_part_takes_no_nut() {
    let (stack, hole, rules, candidate) = screw_in_a_bed(0.2);
    let nut = NutEnd::with_height(exact(15.0)).unwrap();
    let worst = ToleranceMethod::WorstCase;
    assert!(CutPlan::new(&candidate, &thread(), nut, rules).is_err());
    assert!(JointTolerances::of(&stack, &candidate, nut, worst).is_err());
    let margins = JointTolerances::of(&stack, &candidate, hole, worst).unwrap();
    let working = margins.derivation();
    working.check().unwrap();
    for step in working.steps() {
        let what = step.what();
        assert!(
            !what.contains("nut") && !what.contains("protrusion"),
            "{what}"
        );
    }
}

#[test]
fn a_tampered_cut_is_refused() {
    let (_, hole, rules, good) = screw_in_a_bed(0.2);
    let cut = good.cut.unwrap();
    for value in [f64::NAN, f64::INFINITY, -1.0, 1e300] {
        let value = millimetres(value);
        let (mut length, mut finished) = (cut, cut);
        length.length = value;
        finished.finished.max = value;
        for cut in [length, finished] {
            let mut candidate = good;
            candidate.cut = Some(cut);
            let plan = CutPlan::new(&candidate, &thread(), hole, rules);
            assert!(plan.is_err(), "{plan:?}");
        }
    }
    // What is promised of a cut is reckoned anew.
    let mut lying = good;
    let mut long = cut;
    long.finished = exact(45.0);
    long.length = millimetres(45.0);
    lying.cut = Some(long);
    assert!(
        !CutPlan::new(&lying, &thread(), hole, rules)
            .unwrap()
            .fixed
            .unwrap()
            .holds_window
    );
    for tolerance in [f64::MAX, f64::INFINITY, f64::NAN] {
        let rule = CutRule::Allowed {
            tolerance: millimetres(tolerance),
            step: millimetres(1.0),
        };
        assert!(CutPlan::new(&good, &thread(), hole, rules.with_cut(rule)).is_err());
    }
}
