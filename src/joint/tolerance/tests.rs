//! Ranges by hand, at their limits.

use super::*;
use crate::error::Amount;
use crate::joint::{LengthRules, LengthSearch};
use crate::parts::{ScrewProduct, ScrewSeries};
use crate::spread::PlusMinus;
use crate::thread::Thread;
use crate::units::{UnitSystem, millimetres as mm};
use alloc::string::ToString;

fn root(sigmas_per_tolerance: f64, confidence: f64) -> ToleranceMethod {
    ToleranceMethod::RootSumSquare {
        sigmas_per_tolerance,
        confidence,
    }
}

fn near(found: Length, by_hand: f64) -> bool {
    (found - mm(by_hand)).abs() < mm(1e-9)
}

/// 20 +- 0.3 less 5 +- 0.4: 14.3 to 15.7 at worst, and half a millimetre by the root of the squares.
#[test]
fn two_lengths_by_hand() {
    let chain = ToleranceChain::new()
        .plus("ply", mm(20.0).plus_minus(mm(0.3)))
        .minus("recess", mm(5.0).plus_minus(mm(0.4)));
    let worst = chain.range(ToleranceMethod::WorstCase).unwrap();
    assert!(near(worst.min, 14.3) && near(worst.max, 15.7) && near(worst.middle, 15.0));
    assert_eq!((worst.sigma, worst.z), (None, None));
    assert_eq!(worst.share_below(mm(15.0)), None);
    // Tolerances of one sigma; 68.27 % lie within one, to four digits.
    let likely = chain.range(root(1.0, 0.682_689_492_137)).unwrap();
    assert!(near(likely.sigma.unwrap(), 0.5));
    assert!((likely.min - mm(14.5)).abs() < mm(1e-6) && (likely.max - mm(15.5)).abs() < mm(1e-6));
    let share = |limit: f64| {
        let (below, above) = (likely.share_below(mm(limit)), likely.share_above(mm(limit)));
        (below.unwrap().value, above.unwrap().value)
    };
    let (below, above) = share(14.5);
    assert!((below - 0.158_655_254).abs() < 1e-6 && (above - 0.841_344_746).abs() < 1e-6);
    let (below, above) = share(15.0);
    assert!((below - 0.5).abs() < 1e-9 && (above - 0.5).abs() < 1e-9);
    // Without tolerances every one is 15 mm.
    let exact = ToleranceChain::new().plus("ply", Spread::exact(mm(15.0)));
    let exact = exact.range(root(3.0, 0.9973)).unwrap();
    let shares = |limit: f64| {
        let (below, above) = (exact.share_below(mm(limit)), exact.share_above(mm(limit)));
        (below.unwrap().value, above.unwrap().value)
    };
    assert_eq!(shares(14.9), (0.0, 1.0));
    assert_eq!(shares(15.1), (1.0, 0.0));
    assert_eq!(shares(15.0), (0.0, 0.0));
}

#[test]
fn the_method_has_limits() {
    let chain = ToleranceChain::new().plus("ply", mm(20.0).plus_minus(mm(0.3)));
    for (sigmas, confidence, right) in [
        (0.1, 0.9, true),
        (0.099, 0.9, false),
        (20.0, 0.9, true),
        (20.1, 0.9, false),
        (3.0, 0.5, true),
        (3.0, 0.499, false),
        (3.0, 0.999_999_999, true),
        (3.0, 0.999_999_999_9, false),
    ] {
        let found = chain.range(root(sigmas, confidence)).is_ok();
        assert_eq!(found, right, "{sigmas} {confidence}");
    }
    let shims = |count: usize| {
        let shim = Spread::exact(mm(0.1));
        let chain = (0..count).fold(ToleranceChain::new(), |own, _| own.plus("shim", shim));
        chain.range(ToleranceMethod::WorstCase).is_ok()
    };
    assert!(shims(10_000) && !shims(10_001));
    // Nothing is a length that is not there; less than nothing is none.
    let of = |size| {
        let chain = ToleranceChain::new().plus("gap", size);
        chain.range(ToleranceMethod::WorstCase).is_ok()
    };
    assert!(of(Spread::exact(mm(0.0))) && of(mm(1.0).plus_minus(mm(1.0))));
    assert!(!of(mm(1.0).plus_minus(mm(1.1))) && !of(Spread::exact(mm(1e7))));
}

/// 200 washers are counted, and more are refused, on either side.
#[test]
fn washers_have_a_limit() {
    let thread: Thread = "M12".parse().unwrap();
    let washer = mm(2.0).plus_minus(mm(0.1));
    let stack = Stack::builder()
        .washer_to_add_under_head(washer)
        .ply("a", mm(20.0).plus_minus(mm(0.2)))
        .ply("b", mm(20.0).plus_minus(mm(0.2)))
        .shear_planes([1])
        .washers_under_nut(washer, 0)
        .build()
        .unwrap();
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread).unwrap();
    let nut = NutEnd::with_height(Spread::exact(mm(10.0))).unwrap();
    let rules = LengthRules::fabrication(UnitSystem::Si).with_protrusion(2.0, None);
    let search = LengthSearch::new(&stack, &screws, nut, rules).unwrap();
    let candidate = search.assess(screws.length(mm(65.0)).unwrap()).unwrap();
    let of = |head: usize, at_nut: usize| {
        let mut candidate = candidate;
        candidate.washers_added_under_head = head;
        candidate.washers_under_nut = at_nut;
        JointTolerances::of(&stack, &candidate, nut, ToleranceMethod::WorstCase)
    };
    assert!(of(200, 200).is_ok());
    assert!(of(201, 0).is_err() && of(0, 201).is_err());
    // 40 mm, two washers and one: 46 mm, each a tenth and each ply two tenths.
    let found = of(1, 2).unwrap();
    assert!(near(found.grip.min, 45.3) && near(found.grip.max, 46.7));
    // 65 mm: 64.4 to 65.6, thread from 35 mm, shank to 26.25 mm.
    assert!(near(found.protrusion.min, 64.4 - 56.7) && near(found.protrusion.max, 65.6 - 55.3));
    assert!(near(found.jam_margin.min, 45.3 - 35.0) && near(found.jam_margin.max, 46.7 - 35.0));
    let [plane] = found.planes_to_run_out[..] else {
        panic!("one plane")
    };
    // A washer under the head and a ply: 22 mm within 0.3.
    assert!(near(plane.min, 26.25 - 22.3) && near(plane.max, 26.25 - 21.7));
    assert!(found.derivation().check().is_ok());
}

/// Stack, candidate and nut end alike, or nothing is added up.
#[test]
fn what_ends_otherwise_is_refused() {
    let thread: Thread = "M12".parse().unwrap();
    let screws = ScrewSeries::new(ScrewProduct::Iso4017, &thread).unwrap();
    let nut = NutEnd::with_height(Spread::exact(mm(10.0))).unwrap();
    let hole = NutEnd::tapped(mm(15.0), None).unwrap();
    let cover = Stack::builder().ply("cover", Spread::exact(mm(20.0)));
    let through = cover.clone().build().unwrap();
    let into = cover
        .tapped_part("bed", Spread::exact(mm(0.0)))
        .build()
        .unwrap();
    let rules = LengthRules::fabrication(UnitSystem::Si);
    let assessed = |stack: &Stack, end| {
        let search = LengthSearch::new(stack, &screws, end, rules).unwrap();
        search.assess(screws.length(mm(40.0)).unwrap()).unwrap()
    };
    let (with_nut, screwed) = (assessed(&through, nut), assessed(&into, hole));
    for (stack, candidate, end, right) in [
        (&through, &with_nut, nut, true),
        (&into, &screwed, hole, true),
        (&into, &with_nut, nut, false),
        (&through, &screwed, nut, false),
        (&through, &with_nut, hole, false),
        (&into, &screwed, nut, false),
        (&into, &with_nut, hole, false),
        (&through, &screwed, hole, false),
    ] {
        let found = JointTolerances::of(stack, candidate, end, ToleranceMethod::WorstCase);
        assert_eq!(found.is_ok(), right);
    }
}

/// 20 +- 0.3 less 5 +- 0.4, and thirteen of 1 +- 0.2: what each sum is made of, by hand.
#[test]
fn every_length_stands_in_the_working() {
    let two = ToleranceChain::new()
        .plus("ply", mm(20.0).plus_minus(mm(0.3)))
        .minus("recess", mm(5.0).plus_minus(mm(0.4)));
    let formulas = |chain: &ToleranceChain, method| {
        let working = chain.derivation(method, "grip", "G").unwrap();
        working.check().unwrap();
        let lines = working.steps().iter().map(|step| {
            let inputs = step.terms().iter().map(|term| term.value.base());
            (
                step.symbol().to_string(),
                step.formula().to_string(),
                inputs.collect::<Vec<_>>(),
            )
        });
        lines.collect::<Vec<_>>()
    };
    let has =
        |found: &[(String, String, Vec<f64>)], symbol: &str, formula: &str, inputs: &[f64]| {
            let line = found.iter().find(|(own, ..)| own == symbol);
            let (_, own, values) = line.unwrap_or_else(|| panic!("{symbol} in {found:?}"));
            let near = values
                .iter()
                .zip(inputs)
                .all(|(a, b)| (a - b / 1e3).abs() < 1e-12);
            assert!(
                own == formula && values.len() == inputs.len() && near,
                "{found:?}"
            );
        };
    let worst = formulas(&two, ToleranceMethod::WorstCase);
    has(&worst, "G", "t1 - t2", &[20.0, 5.0]);
    has(&worst, "Gmin", "a1 - a2", &[19.7, 5.4]);
    has(&worst, "Gmax", "b1 - b2", &[20.3, 4.6]);
    let likely = formulas(&two, root(3.0, 0.9973));
    has(&likely, "Gmid", "c1 - c2", &[20.0, 5.0]);
    has(&likely, "Gsq", "h1 ^ 2 + h2 ^ 2", &[0.3, 0.4]);
    // Twelve go into one formula, and the thirteenth onto their sum: a length, or an area of 12 x 0.2^2 mm2.
    let one = || mm(1.0).plus_minus(mm(0.2));
    let thirteen = (0..13).fold(ToleranceChain::new(), |chain, _| chain.plus("shim", one()));
    let likely = thirteen.derivation(root(3.0, 0.9973), "grip", "G").unwrap();
    likely.check().unwrap();
    let so_far = |symbol: &str| {
        let step = likely.steps().iter().find(|step| step.symbol() == symbol);
        step.unwrap().value()
    };
    let Amount::Length(sum) = so_far("G_1") else {
        panic!("a length")
    };
    assert!(near(sum, 12.0));
    let Amount::Area(squares) = so_far("Gsq_1") else {
        panic!("an area")
    };
    assert!((squares / (mm(1.0) * mm(1.0))).value - 0.48 < 1e-9);
    assert!((squares / (mm(1.0) * mm(1.0))).value - 0.48 > -1e-9);
}
