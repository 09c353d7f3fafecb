//! Verdicts on bolts in the hand and what to do, by hand: a nut of exactly 10 mm, M12, P = 1.75 mm.

use shankline::joint::{Bin, BoltInHand, HandVerdict, Reason, StackBuilder, ToDo, WantedBolt};
use shankline::prelude::*;

const HAIR: Length = millimetres(1e-6);

fn exact(value: f64) -> Spread<Length> {
    Spread::exact(millimetres(value))
}

fn thread() -> Thread {
    "M12".parse().unwrap()
}

fn verdict(stack: StackBuilder, rules: LengthRules, measures: [f64; 3]) -> HandVerdict {
    let [length, shank, start] = measures.map(millimetres);
    let bolt = BoltInHand::new(thread(), length, shank, start).unwrap();
    let nut = NutEnd::with_height(exact(10.0)).unwrap();
    bolt.verdict(&stack.build().unwrap(), nut, rules).unwrap()
}

fn rules() -> LengthRules {
    LengthRules::fabrication(UnitSystem::Si).with_protrusion(2.0, None)
}

fn near(found: Length, millimetre: f64) -> bool {
    (found - millimetres(millimetre)).abs() < HAIR
}

/// The nut stops 1.5 mm before it clamps 37 mm, which one washer of 2.5 mm cures; 17 mm of thread lies in
/// the hole where 3 P = 5.25 mm may, which no washer cures.
#[test]
fn permitted_washers_are_put_on_not_argued_about() {
    let stack = Stack::builder()
        .ply("plate", exact(37.0))
        .washers_under_nut(exact(2.5), 0);
    let found = verdict(stack, rules().with_thread_in_holes(3.0), [70.0, 20.0, 38.5]);
    let [ToDo::AddWashers { count: 1 }, ToDo::LongerShank { by }] = found.to_do[..] else {
        panic!("{:?}", found.to_do)
    };
    assert!(near(by, 11.75));
}

/// Two more washers would clear the run-out, but then the bolt no longer passes the nut.
#[test]
fn no_washers_are_asked_for_that_make_the_bolt_too_short() {
    let joint = |length| {
        let stack = Stack::builder()
            .ply("plate", exact(37.0))
            .washers_under_nut(exact(2.5), 0);
        verdict(
            stack,
            rules().with_washers_under_nut(1),
            [length, 20.0, 40.0],
        )
        .to_do
    };
    // 52.5 - 37 - 10 = 5.5 mm, less 5 mm of washers: 0.5 where 3.5 are wanted.
    assert!(matches!(joint(52.5)[..], [ToDo::ThreadNearerHead { by }] if near(by, 3.0)));
    assert!(matches!(
        joint(55.5)[..],
        [
            ToDo::ThreadNearerHead { .. },
            ToDo::PermitWashers {
                count: 2,
                permitted: 1
            }
        ]
    ));
    // Permitted all the same, they are no reason to ask for a longer bolt, whose thread begins later still.
    let stack = Stack::builder()
        .ply("plate", exact(37.0))
        .washers_under_nut(exact(2.5), 0);
    let found = verdict(stack, rules(), [52.5, 20.0, 40.0]);
    assert!(
        found
            .candidate
            .reasons()
            .any(|r| matches!(r, Reason::WashersMakeItShort { .. }))
    );
    assert!(
        matches!(found.to_do[..], [ToDo::ThreadNearerHead { .. }]),
        "{:?}",
        found.to_do
    );
}

/// A bolt that jams is judged as it lies there, not with a washer under the head that nobody was told of.
#[test]
fn a_bolt_that_does_not_do_is_judged_without_head_washers() {
    let stack = Stack::builder()
        .ply("plate", exact(37.0))
        .washer_to_add_under_head(exact(2.5));
    let rules = rules()
        .with_protrusion(2.0, Some(7.0))
        .with_washers_under_head(1);
    let found = verdict(stack, rules, [60.0, 40.0, 50.0]);
    assert!(!found.candidate.fits());
    assert_eq!(found.candidate.washers_added_under_head, 0);
    assert!(matches!(found.to_do[..], [ToDo::ThreadNearerHead { by }] if near(by, 13.0)));
}

/// What is said of a screw in a tapped hole speaks of no nut.
#[test]
fn a_tapped_hole_is_not_called_a_nut() {
    let cover = |spread| {
        Stack::builder()
            .ply("cover", spread)
            .tapped_part("bed", exact(0.0))
            .build()
            .unwrap()
    };
    let hole = NutEnd::tapped(millimetres(15.0), Some(millimetres(18.0))).unwrap();
    let judge = |stack: &Stack, measures: [f64; 3], rules| {
        let [length, shank, start] = measures.map(millimetres);
        let bolt = BoltInHand::new(thread(), length, shank, start).unwrap();
        bolt.verdict(stack, hole, rules).unwrap()
    };
    let si = UnitSystem::Si;
    // Thread from 22 mm through a cover of 20 mm.
    let jams = judge(&cover(exact(20.0)), [37.0, 15.0, 22.0], rules());
    let reasons: Vec<String> = jams
        .candidate
        .reasons()
        .map(|reason| reason.text(si))
        .collect();
    assert_eq!(
        reasons,
        ["its run-out meets the tapped thread 2.00 mm before it clamps"]
    );
    assert!(matches!(jams.to_do[..], [ToDo::ThreadNearerHead { by }] if near(by, 2.0)));
    // A cover of 20 +- 1.5 mm, 3 mm of room: only a cut to the measured cover does, 15 + 0.5 mm beyond it.
    let varied = millimetres(20.0).plus_minus(millimetres(1.5));
    let long = judge(&cover(varied), [50.0, 10.0, 15.0], rules());
    let [ToDo::CutToMeasuredStack { beyond }] = long.to_do[..] else {
        panic!("{:?}", long.to_do)
    };
    assert!(near(beyond, 15.5));
    let labels = |found: &HandVerdict| {
        let working = found.candidate.derivation();
        let labels = working.steps().iter().map(|step| step.what().to_owned());
        labels.collect::<Vec<_>>().join("; ")
    };
    for text in [long.to_do[0].text(si), labels(&long), labels(&jams)] {
        assert!(
            !text.contains("nut") && !text.contains("protrusion"),
            "{text}"
        );
    }
    // 1 mm of room and a cut held within 0.6 mm: no.
    let tight = NutEnd::tapped(millimetres(15.0), Some(millimetres(16.0))).unwrap();
    let coarse = rules().with_cut(CutRule::Allowed {
        tolerance: millimetres(0.6),
        step: millimetres(1.0),
    });
    let bolt = BoltInHand::new(
        thread(),
        millimetres(50.0),
        millimetres(10.0),
        millimetres(15.0),
    )
    .unwrap();
    let found = bolt.verdict(&cover(varied), tight, coarse).unwrap();
    assert!(matches!(found.to_do[..], [ToDo::CutMoreExactly { within }] if near(within, 0.5)));
}

#[test]
fn washers_that_cannot_be_are_refused() {
    let nut = NutEnd::with_height(exact(10.0)).unwrap();
    let bare = Stack::builder().ply("plate", exact(37.0));
    let washered = bare
        .clone()
        .washers_under_nut(exact(2.5), 0)
        .build()
        .unwrap();
    let bare = bare.build().unwrap();
    let of = |stack: &Stack, washers| WantedBolt::of(stack, &thread(), nut, rules(), washers);
    assert!(of(&bare, 0).is_ok() && of(&washered, 3).is_ok());
    assert!(of(&bare, 1).is_err());
    assert!(of(&washered, 100).is_ok() && of(&washered, 101).is_err());
    assert!(of(&washered, usize::MAX).is_err());
}

/// A cover of 27 mm, 14 of 18 mm of thread wanted: 45 mm screws want a washer each under their heads.
#[test]
fn a_bin_counts_the_washers_under_the_heads() {
    let stack = Stack::builder()
        .ply("cover", millimetres(27.0).plus_minus(millimetres(0.2)))
        .tapped_part("bed", exact(0.0))
        .washer_to_add_under_head(millimetres(2.5).plus_minus(millimetres(0.2)))
        .build()
        .unwrap();
    let hole = NutEnd::tapped(millimetres(14.0), Some(millimetres(18.0))).unwrap();
    let rules = rules().with_cut(CutRule::Never).with_washers_under_head(1);
    let screws = ScrewSeries::new(ScrewProduct::Iso4017, &thread()).unwrap();
    let bin = Bin::new()
        .product("drawer", &screws, millimetres(45.0), 9)
        .unwrap();
    let pick = bin.pick(&stack, &thread(), hole, rules, 6).unwrap();
    assert_eq!(
        (
            pick.missing,
            pick.washers_added_under_head,
            pick.washers_under_nut
        ),
        (0, 6, 0)
    );
}

/// A stack thicker than the longest bolt: of the lengths that do not fit the longest lacks least, and a verdict speaks of
/// it and not of the shortest.
#[test]
fn of_lengths_that_do_not_fit_the_nearest_is_told() {
    let thread: Thread = "M10".parse().unwrap();
    let ply = Spread::exact(millimetres(200.0));
    let stack = Stack::builder()
        .ply("a", ply)
        .ply("b", ply)
        .shear_planes([1])
        .build()
        .unwrap();
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread).unwrap();
    let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread).unwrap()).unwrap();
    let rules = LengthRules::fabrication(UnitSystem::Si);
    let selection = LengthSearch::new(&stack, &screws, nut, rules)
        .unwrap()
        .run()
        .unwrap();
    let longest = screws.stock_lengths().fold(millimetres(0.0), Length::max);
    assert!(selection.accepted().is_empty());
    assert_eq!(selection.rejected()[0].screw.nominal, longest);
    // Each misses by more than the one before.
    let lacks: Vec<f64> = selection
        .rejected()
        .iter()
        .map(|one| -one.protrusion.min.value)
        .collect();
    assert!(lacks.is_sorted(), "{lacks:?}");
}

/// Thread 40 mm long on a bolt of 60 mm begins at 20 mm.
#[test]
fn the_length_of_the_thread_tells_its_start() {
    let [length, shank, thread_length] = [60.0, 15.0, 40.0].map(millimetres);
    let bolt = BoltInHand::with_thread_length(thread(), length, shank, thread_length).unwrap();
    assert!(near(bolt.thread_start, 20.0) && near(bolt.shank, 15.0) && near(bolt.length, 60.0));
}

/// 37 mm and a thread from 39 mm: with the washer that may go under the head the nut bears at 39.5 mm.
#[test]
fn a_washer_under_the_head_is_put_on_and_reckoned_with() {
    let stack = || {
        Stack::builder()
            .ply("plate", exact(37.0))
            .washer_to_add_under_head(exact(2.5))
    };
    let washered = rules().with_washers_under_head(1);
    let found = verdict(stack(), washered, [60.0, 20.0, 39.0]);
    assert_eq!(found.to_do, [ToDo::AddWashersUnderHead { count: 1 }]);
    assert!(near(found.wanted.thread_start_max, 39.5));
    let found = verdict(stack(), washered, [60.0, 20.0, 37.0]);
    assert_eq!(found.to_do, []);
    assert!(near(found.wanted.thread_start_max, 37.0));
}

/// Washers of 1 mm, as many as it takes, but no more than five; those that are permitted are put on, unless the bolt is too
/// long for any.
#[test]
fn nobody_stacks_more_than_five_washers() {
    let stack = || {
        Stack::builder()
            .ply("plate", exact(37.0))
            .washers_under_nut(exact(1.0), 0)
    };
    let holes = rules().with_thread_in_holes(3.0);
    let to_do = |rules, measures| verdict(stack(), rules, measures).to_do;
    // 17 mm of thread in the hole are too many for any washer: so the search puts none on.
    for (most, start, expected) in [(6, 42.0, Some(5)), (5, 42.0, Some(5)), (6, 43.0, None)] {
        let found = to_do(holes.with_washers_under_nut(most), [70.0, 20.0, start]);
        match expected {
            Some(count) => assert!(
                matches!(found[..], [ToDo::AddWashers { count: own }, ToDo::LongerShank { .. }] if own == count),
                "{found:?}"
            ),
            None => assert!(
                matches!(found[..], [ToDo::ThreadNearerHead { by }, ToDo::LongerShank { .. }] if near(by, 6.0)),
                "{found:?}"
            ),
        }
    }
    // 70 - 47 = 23 mm beyond the nut where four threads may be, and no cut: no washer is named, permitted or not.
    let uncut = rules()
        .with_protrusion(2.0, Some(4.0))
        .with_cut(CutRule::Never);
    for most in [1, 2] {
        let found = to_do(uncut.with_washers_under_nut(most), [70.0, 20.0, 38.0]);
        assert!(
            matches!(found[..], [ToDo::ThreadNearerHead { by }, ToDo::ShorterBolt { .. }] if near(by, 1.0)),
            "{found:?}"
        );
    }
}

/// A plate of 20 mm within 1.5 mm, and 1.75 mm of room beyond the nut: no fixed cut does, and a nut shows where to cut.
#[test]
fn a_bolt_in_a_nut_is_cut_to_the_stack() {
    let plate = || Stack::builder().ply("plate", millimetres(20.0).plus_minus(millimetres(1.5)));
    let window = rules().with_protrusion(2.0, Some(3.0));
    let found = verdict(plate(), window, [60.0, 10.0, 15.0]);
    assert_eq!(found.to_do, [ToDo::CutAtFitUp]);
    // 0.875 mm either way is just as exact as it must be.
    let cut = |tolerance| {
        let rule = CutRule::Allowed {
            tolerance: millimetres(tolerance),
            step: millimetres(1.0),
        };
        verdict(plate(), window.with_cut(rule), [60.0, 10.0, 15.0]).to_do
    };
    assert_eq!(cut(0.875), [ToDo::CutAtFitUp]);
    assert!(matches!(cut(0.876)[..], [ToDo::CutMoreExactly { within }] if near(within, 0.875)));
}

#[test]
fn one_washer_is_one() {
    let si = UnitSystem::Si;
    for (to_do, text) in [
        (
            ToDo::AddWashers { count: 1 },
            "put 1 more washer under the nut",
        ),
        (
            ToDo::AddWashers { count: 2 },
            "put 2 more washers under the nut",
        ),
        (
            ToDo::AddWashersUnderHead { count: 1 },
            "put 1 more washer under the head",
        ),
        (
            ToDo::CountAsThread { planes: 2 },
            "reckon 2 shear planes with the thread area: not on guaranteed shank",
        ),
    ] {
        assert_eq!(to_do.text(si), text);
    }
}
