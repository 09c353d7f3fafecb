//! Dash numbers of aircraft bolts at the limits of their rules, by hand.
//!
//! AN4: 28 threads per inch, P = 0.0357 in. -7 has a grip of 0.438 in (0.422 to 0.454) and is 0.906 in long (0.890 to 0.937). Washers 0.063 in, light ones 0.032 in.

use shankline::joint::{GripCandidate, GripReason, GripRules, GripSearch, HeadSeat, StackBuilder};
use shankline::parts::AnWashers;
use shankline::prelude::*;
use shankline::tables::aircraft::AircraftBolt;

const HAIR: Length = millimetres(1e-6);

fn exact(value: f64) -> Spread<Length> {
    Spread::exact(inches(value))
}

fn ply(thickness: f64) -> StackBuilder {
    Stack::builder().ply("lug", exact(thickness))
}

/// AN4-7A with the best washers, nut of a height.
fn an4_7(stack: StackBuilder, nut: f64, rules: GripRules) -> GripCandidate {
    let bolt = AircraftBolt::find("AN4").unwrap();
    let nut = NutEnd::with_height(exact(nut)).unwrap();
    let (stack, washers) = (stack.build().unwrap(), AnWashers::of(bolt).unwrap());
    let search = GripSearch::new(&stack, bolt, nut, washers, rules).unwrap();
    let selection = search.run().unwrap();
    let mut all = (selection.accepted().iter()).chain(selection.rejected());
    all.find(|found| found.bolt.to_string() == "AN4-7A")
        .unwrap()
        .clone()
}

/// So many washers under the nut and no other: the best that is permitted is the only one.
fn with_one_washer(rules: GripRules) -> GripRules {
    let mut rules = rules;
    rules.washers_under_head_max = 0;
    rules.washers_under_nut_max = 1;
    rules
}

#[test]
fn a_washer_that_is_named_and_not_there_is_no_washer() {
    let bolt = AircraftBolt::find("AN4").unwrap();
    let nut = NutEnd::with_height(exact(0.22)).unwrap();
    for (count, is_taken) in [(0, true), (1, false)] {
        let stack = ply(0.43).washers_under_nut(exact(0.063), count);
        let stack = stack.build().unwrap();
        let washers = AnWashers::of(bolt).unwrap();
        let search = GripSearch::new(&stack, bolt, nut, washers, GripRules::faa());
        assert_eq!(search.is_ok(), is_taken, "{count}");
    }
}

/// 0.43 in: the nut must bear at 0.454 in or later, and at 0.890 - 0.38 - 0.0357 = 0.4743 in at most. 0.462 in with
/// one light washer, 0.493 in with a regular one, 0.494 in with two light ones.
#[test]
fn one_light_washer_is_enough_where_one_washer_is() {
    let found = an4_7(ply(0.43), 0.38, GripRules::faa());
    assert_eq!(found.reasons, []);
    let washers = found.washers;
    assert_eq!((washers.count(), washers.light_under_nut), (1, 1));
}

/// The nut may bear just where the longest grip ends: 0.391 + 0.063 = 0.454 in.
#[test]
fn the_nut_may_bear_where_the_grip_ends() {
    let mut rules = with_one_washer(GripRules::faa());
    rules.washers_under_nut_min = 1;
    let bolt = AircraftBolt::find("AN4").unwrap();
    let mut washers = AnWashers::of(bolt).unwrap();
    washers.light = None;
    let nut = NutEnd::with_height(exact(0.22)).unwrap();
    let judge = |thickness: f64| {
        let stack = ply(thickness).build().unwrap();
        let search = GripSearch::new(&stack, bolt, nut, washers, rules).unwrap();
        let selection = search.run().unwrap();
        let mut all = (selection.accepted().iter()).chain(selection.rejected());
        let found = all.find(|found| found.bolt.to_string() == "AN4-7A");
        found.unwrap().reasons.clone()
    };
    assert_eq!(judge(0.391), []);
    let [GripReason::NutReachesShank { by }] = judge(0.381)[..] else {
        panic!("the nut reaches the shank")
    };
    assert!((by - inches(0.01)).abs() < HAIR);
}

/// Material as thick as the grip has no thread in it, wherever the thicker part lies; and who permits a thread in the hole
/// without a word on the part permits it in any.
#[test]
fn only_thread_in_a_thin_part_is_thread_in_a_thin_part() {
    let two = |first: f64, last: f64| ply(first).ply("lug", exact(last));
    let thin = |found: GripCandidate| {
        let thin = |reason: &GripReason| matches!(reason, GripReason::ThreadInThinPly { .. });
        found.reasons.iter().any(thin)
    };
    assert!(!thin(an4_7(two(0.3375, 0.1), 0.22, GripRules::navy())));
    // 0.45 - 0.438 = 0.012 in, a third of a thread; at most three stand beyond a nut of 0.35 in with a light washer.
    assert!(thin(an4_7(two(0.35, 0.1), 0.22, GripRules::navy())));
    assert_eq!(
        an4_7(two(0.35, 0.1), 0.35, GripRules::builders()).reasons,
        []
    );
    // As thick as the other is thick enough; less by a hundredth is not.
    assert!(!thin(an4_7(two(0.24, 0.24), 0.22, GripRules::navy())));
    assert!(thin(an4_7(two(0.245, 0.235), 0.22, GripRules::navy())));
}

/// A head let in by 0.15 in leaves 0.2 in of the first part, less than the 0.3 in of the last; thread 0.062 in deep.
#[test]
fn the_recess_of_the_head_thins_the_first_part() {
    let depth = exact(0.15);
    let stack = ply(0.35)
        .ply("lug", exact(0.3))
        .head_seat(HeadSeat::Recessed { depth });
    let found = an4_7(stack, 0.22, GripRules::navy());
    assert_eq!(found.reasons, []);
    assert!((found.threads_in_hole - 0.062 * 28.0).abs() < 1e-6);
    // And of two alike the last one, let in under the nut, is the thinner.
    let stack = ply(0.3)
        .ply("lug", exact(0.3))
        .spot_face_under_nut(exact(0.1));
    let found = an4_7(stack, 0.22, GripRules::navy());
    assert!(matches!(
        found.reasons[..],
        [GripReason::ThreadInThinPly { .. }]
    ));
}

#[test]
fn each_reason_says_how_far() {
    let by = inches(0.047);
    for (reason, text) in [
        (
            GripReason::GripTooShort {
                threads_in_hole: 1.316,
                by,
            },
            "grip too short by 0.047 in: 1.3 threads lie in the hole",
        ),
        (
            GripReason::ThreadInThinPly {
                threads_in_hole: 0.35,
            },
            "0.3 threads lie in the hole of a part that is not the thickest",
        ),
        (
            GripReason::NutReachesShank { by },
            "nut reaches the shank 0.047 in before it clamps",
        ),
        (GripReason::TooShort { by }, "too short by 0.047 in"),
        (GripReason::TooLong { by }, "sticks out 0.047 in too far"),
    ] {
        assert_eq!(reason.text(UnitSystem::UsCustomary), text);
    }
    let text = GripReason::TooShort { by }.text(UnitSystem::Si);
    assert_eq!(text, "too short by 1.19 mm"); // 0.047 x 25.4 = 1.1938
}

/// Beyond 1 to 3 threads by the builders' notes, with the one washer that is permitted: 0.890 - t - 0.063 - h and
/// 0.937 - t - 0.063 - h, from 0.0357 to 0.1071 in.
#[test]
fn the_end_is_long_enough_and_not_too_long() {
    let mut rules = with_one_washer(GripRules::builders());
    rules.washers_max = 1;
    let bolt = AircraftBolt::find("AN4").unwrap();
    let mut washers = AnWashers::of(bolt).unwrap();
    washers.light = None;
    let stack = ply(0.43).build().unwrap();
    let judge = |nut: f64| {
        let nut = NutEnd::with_height(exact(nut)).unwrap();
        let search = GripSearch::new(&stack, bolt, nut, washers, rules).unwrap();
        let selection = search.run().unwrap();
        let mut all = (selection.accepted().iter()).chain(selection.rejected());
        let found = all.find(|found| found.bolt.to_string() == "AN4-7A");
        found.unwrap().reasons.clone()
    };
    // 0.397 - 0.0357 = 0.3613 in at most, 0.444 - 0.1071 = 0.3369 in at least.
    assert_eq!(judge(0.361), []);
    assert_eq!(judge(0.337), []);
    let short = inches(0.371 - 0.397 + 1.0 / 28.0);
    assert!(matches!(judge(0.371)[..], [GripReason::TooShort { by }] if (by - short).abs() < HAIR));
    let far = inches(0.444 - 0.327 - 3.0 / 28.0);
    assert!(matches!(judge(0.327)[..], [GripReason::TooLong { by }] if (by - far).abs() < HAIR));
}

/// The limits of the shank of AN4 were recalled, and whoever chooses by them is told.
#[test]
fn what_was_recalled_is_told() {
    let bolt = AircraftBolt::find("AN4").unwrap();
    let stack = ply(0.43).build().unwrap();
    let nut = NutEnd::with_height(exact(0.22)).unwrap();
    let search = GripSearch::new(
        &stack,
        bolt,
        nut,
        AnWashers::of(bolt).unwrap(),
        GripRules::faa(),
    );
    let told = search.unwrap().run().unwrap().cautions();
    for own in bolt.cautions().iter() {
        assert!(told.iter().any(|caution| caution == own));
    }
    assert!(bolt.cautions().iter().count() > 0);
}
