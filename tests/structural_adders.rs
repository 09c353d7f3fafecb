//! The published way to a length of structural bolt, grip + washers + adder up to the next quarter of an
//! inch, against the bolts themselves. The adder holds the heavy hex nut and the tolerances of the parts.

mod support;

use shankline::{
    joint::{Candidate, Reason, RuleSet},
    prelude::*,
};
use support::{Row, csv_rows, number};

const QUARTER: f64 = 0.25;

fn value(row: &Row, column: &str) -> f64 {
    number(row, column).unwrap()
}

/// The verdict on a bolt of so many inches on a grip that is exact.
fn verdict(thread: &Thread, grip: f64, washers: usize, length: f64) -> Candidate {
    // 5/32 in for a washer, as the adders count it.
    let stack = Stack::builder()
        .ply("plate", Spread::exact(inches(grip)))
        .washers_under_nut(Spread::exact(inches(5.0 / 32.0)), washers)
        .build()
        .unwrap();
    let screws = ScrewSeries::new(ScrewProduct::StructuralBolt, thread).unwrap();
    let nut = NutEnd::of(Nut::find(NutStyle::HeavyHex, thread).unwrap()).unwrap();
    // As many washers as the adder has counted, no more.
    let rules = RuleSet::Rcsc
        .rules(UnitSystem::UsCustomary)
        .with_washers_under_nut(washers);
    let search = LengthSearch::new(&stack, &screws, nut, rules).unwrap();
    search
        .assess(screws.length(inches(length)).unwrap())
        .unwrap()
}

/// Over every grip of sixteenths that leads to a bolt of 4 in: the bolt of the published rule is flush with
/// the nut or longer at its worst, and its nut does not jam. The adders are no larger than they need be:
/// a quarter less fails at the longest grip.
#[test]
fn published_adders_reach_through_the_nut_and_clamp() {
    let rows = csv_rows("tests/data/structural_adders.csv");
    assert_eq!(rows.len(), 9);
    for row in &rows {
        let thread: Thread = row["thread"].parse().unwrap();
        for washers in 0..=2_u8 {
            let taken = value(row, "adder") + f64::from(washers) * 5.0 / 32.0;
            let washers = usize::from(washers);
            for step in 0..4 {
                let grip = 4.0 - taken - f64::from(step) / 16.0;
                let candidate = verdict(&thread, grip, washers, 4.0);
                assert!(candidate.fits(), "{thread}, {washers} washers, step {step}");
            }
            let short = verdict(&thread, 4.0 - taken, washers, 4.0 - QUARTER);
            assert!(
                short
                    .reasons()
                    .any(|r| matches!(r, Reason::TooShort { .. })),
                "{thread}, {washers} washers"
            );
        }
    }
}

/// How far the full thread may reach into the grip, without a washer: printed to the next eighth at 1/2 in.
#[test]
fn thread_reaches_into_the_grip_as_far_as_printed() {
    for row in csv_rows("tests/data/structural_adders.csv") {
        let thread: Thread = row["thread"].parse().unwrap();
        let candidate = verdict(&thread, 4.0 - value(&row, "adder"), 0, 4.0);
        let printed = inches(value(&row, "thread_in_grip"));
        let allowed = inches(value(&row, "tolerance") + 1e-9);
        let off = (candidate.jam_margin - printed).abs();
        assert!(off <= allowed, "{thread}: {:?}", candidate.jam_margin);
    }
}

/// Canadian Institute of Steel Construction, "Bolt length selection aid" (read): 7/8 in bolt, 10 mm shear tab
/// on a 9.7 mm web, no washer: 2 in.
#[test]
fn shear_tab_of_the_handbook_chart() {
    let thread: Thread = "7/8-9 UNC".parse().unwrap();
    let row = csv_rows("tests/data/structural_adders.csv")
        .into_iter()
        .find(|row| row["thread"] == "7/8-9 UNC")
        .unwrap();
    let grip = (10.0 + 9.7) / 25.4;
    let rounded = ((grip + value(&row, "adder")) / QUARTER).ceil() * QUARTER;
    assert!((rounded - 2.0).abs() < 1e-9, "{rounded}");
    // So short a bolt is threaded further than the standard's length: its body is not promised.
    let screws = ScrewSeries::new(ScrewProduct::StructuralBolt, &thread).unwrap();
    assert!(screws.length(inches(2.0)).is_err());
}
