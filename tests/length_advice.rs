//! Advice on joints with limits on all washers, spot faces, sleeves and thread in the holes, by hand.

use shankline::joint::{Alternative, Arrangement, Change, Goal, StackBuilder};
use shankline::prelude::*;

const HAIR: Length = millimetres(1e-6);

fn exact(value: f64) -> Spread<Length> {
    Spread::exact(millimetres(value))
}

/// ISO 4014 M12 bolts in a stack, a nut exactly 10 mm high, no upper limit of protrusion.
fn arrangement(stack: StackBuilder, rules: LengthRules) -> Arrangement {
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &"M12".parse().unwrap()).unwrap();
    let nut = NutEnd::with_height(exact(10.0)).unwrap();
    Arrangement::new(stack.build().unwrap(), screws, nut, rules)
}

fn rules() -> LengthRules {
    LengthRules::fabrication(UnitSystem::Si).with_protrusion(2.0, None)
}

fn changes(arrangement: &Arrangement, goal: Goal) -> Vec<Change> {
    let list = arrangement.advice(goal, &[]).unwrap();
    list.advice
        .iter()
        .flat_map(|advice| advice.changes.clone())
        .collect()
}

/// Two washers in all, one of them under the head: one is all there may be under the nut. The plane at
/// 2.5 + 30 mm asks for an 80 mm bolt, 41.25 mm of shank and thread from 50 mm; 44.5 mm and three washers
/// reach that.
#[test]
fn a_limit_on_all_washers_is_advised_upon() {
    let stack = Stack::builder()
        .washer_under_head(exact(2.5))
        .ply("thick", exact(30.0))
        .ply("thin", exact(12.0))
        .shear_planes([1])
        .washers_under_nut(exact(2.5), 1);
    let joint = arrangement(stack, rules().with_washers_in_all(2));
    assert_eq!(joint.best(Goal::EveryPlaneOnShank).unwrap(), None);
    let found = changes(&joint, Goal::EveryPlaneOnShank);
    let washers = found.iter().find_map(|change| match change {
        Change::AddWashers { count, permitted } => Some((*count, *permitted)),
        _ => None,
    });
    assert_eq!(washers, Some((3, 1)));
}

/// A spot face of 8 mm takes a spacer of 8 mm, and thread in the spacer is not thread in a hole.
#[test]
fn a_spacer_stands_in_a_spot_face_and_is_no_hole() {
    let stack = Stack::builder()
        .ply("lug", exact(33.0))
        .ply("lug", exact(14.0))
        .shear_planes([1])
        .spot_face_under_nut(exact(8.0));
    let joint = arrangement(stack, rules().with_thread_in_holes(3.0));
    let found = changes(&joint, Goal::EveryPlaneOnShank);
    assert!(
        found
            .iter()
            .any(|change| matches!(change, Change::Spacer { .. }))
    );
}

/// A hub thicker than the bushing in it would be clamped in its place, and no longer turn.
#[test]
fn a_ply_around_a_sleeve_is_not_made_thicker() {
    let stack = Stack::builder()
        .ply("arm", exact(32.0))
        .ply("hub", exact(8.0))
        .sleeve("bushing", exact(8.0), 2, 2)
        .shear_planes([1]);
    let joint = arrangement(stack, rules());
    let found = changes(&joint, Goal::EveryPlaneOnShank);
    assert!(
        found
            .iter()
            .any(|change| matches!(change, Change::Spacer { .. }))
    );
    let thicker = |change: &Change| matches!(change, Change::ThickerLastPly { .. });
    assert!(!found.iter().any(thicker), "{found:?}");
}

/// A made bolt keeps the thread out of the holes also where no plane asks for shank.
#[test]
fn a_special_bolt_has_the_shank_that_the_holes_ask_for() {
    let stack = Stack::builder().ply("plate", exact(37.0));
    let joint = arrangement(stack, rules().with_thread_in_holes(1.0));
    assert_eq!(joint.best(Goal::Fits).unwrap(), None);
    let found = changes(&joint, Goal::Fits);
    let special = found.iter().find_map(|change| match change {
        Change::SpecialBolt(wanted) => Some(*wanted),
        _ => None,
    });
    // 37 - 1.75
    let wanted = special.expect("a special bolt does");
    assert!((wanted.shank_min - millimetres(35.25)).abs() < HAIR);
    let text = Change::SpecialBolt(wanted).text(UnitSystem::Si);
    assert_eq!(
        text,
        "find or have made a bolt with 35.25 mm of plain shank, thread from 37.00 mm and a length of 50.50 mm"
    );
}

/// Two threads wanted beyond a chamfer of two: less protrusion is still advised, in what counts.
#[test]
fn less_protrusion_leaves_out_the_chamfer() {
    let stack = Stack::builder().ply("plate", exact(45.0));
    let rules = rules().with_end_not_counted(2.0);
    // Of the lengths that clamp 70 mm is the longest, 69.4 mm at least: 69.4 - 45 - 10 = 14.4 mm.
    let strict = rules.with_protrusion(9.5, None);
    let joint = arrangement(stack, strict);
    let found = changes(&joint, Goal::Fits);
    let pitches = found.iter().find_map(|change| match change {
        Change::LessProtrusion { pitches, .. } => Some(*pitches),
        _ => None,
    });
    let expected = 14.4 / 1.75 - 2.0;
    assert!(
        (pitches.unwrap() - expected).abs() < 1e-6,
        "{pitches:?} {expected}"
    );
}

/// A washer of another diameter goes under the head as well, and none under a nut that is not there.
#[test]
fn an_alternative_brings_its_washer_for_the_head() {
    let stack = Stack::builder()
        .ply("cover", exact(20.0))
        .tapped_part("bed", exact(0.0))
        .washer_to_add_under_head(exact(2.5))
        .build()
        .unwrap();
    let hole = NutEnd::tapped(millimetres(14.0), Some(millimetres(18.0))).unwrap();
    let screws =
        |thread: &str| ScrewSeries::new(ScrewProduct::Iso4017, &thread.parse().unwrap()).unwrap();
    let joint = Arrangement::new(stack, screws("M12"), hole, rules());
    let other = Alternative::new(screws("M16"), hole, Some(exact(3.0)));
    let changed = Change::OtherDiameter(other).applied(&joint).unwrap();
    let washer = changed.stack.washer_to_add_under_head().unwrap();
    assert_eq!(washer.thickness, exact(3.0));
    assert_eq!(changed.stack.washers_under_nut(), None);
}

/// The changes of each advice, and none that is an error.
fn advised(arrangement: &Arrangement, goal: Goal) -> Vec<Vec<Change>> {
    let list = arrangement.advice(goal, &[]).unwrap();
    list.advice
        .into_iter()
        .map(|advice| advice.changes)
        .collect()
}

fn special(arrangement: &Arrangement, goal: Goal) -> shankline::joint::WantedBolt {
    let found = changes(arrangement, goal);
    let special = found.iter().find_map(|change| match change {
        Change::SpecialBolt(wanted) => Some(*wanted),
        _ => None,
    });
    special.unwrap_or_else(|| panic!("{found:?}"))
}

fn is_near(length: Length, by_hand: f64) -> bool {
    (length - millimetres(by_hand)).abs() < HAIR
}

/// M12 by ISO 4014: 5 P = 8.75 mm of run-out. What is left after the last plane, less that, less what is to stay clear.
#[test]
fn the_margin_is_what_stays_after_the_run_out() {
    let lugs = || {
        Stack::builder()
            .ply("lug", exact(4.0))
            .ply("lug", exact(6.0))
    };
    let margin = |stack: StackBuilder, rules| {
        let list = arrangement(stack, rules).advice(Goal::Fits, &[]);
        list.unwrap().margin
    };
    let sheared = || lugs().shear_planes([1]);
    assert!(is_near(margin(sheared(), rules()).unwrap(), 6.0 - 8.75));
    // Two washers of 2 mm may be added, one is there.
    let washered = sheared().washers_under_nut(exact(2.0), 1);
    assert!(is_near(margin(washered, rules()).unwrap(), 12.0 - 8.75));
    let clear = rules().with_clear_threads(1.0);
    assert!(is_near(margin(sheared(), clear).unwrap(), 6.0 - 10.5));
    assert_eq!(margin(lugs(), rules()), None);
    let screws = ScrewSeries::new(ScrewProduct::Iso4017, &"M12".parse().unwrap()).unwrap();
    let mut threaded = arrangement(sheared(), rules());
    threaded.screws = screws;
    assert_eq!(threaded.advice(Goal::Fits, &[]).unwrap().margin, None);
}

/// 30 mm and 5 mm: turned, the plane lies at 5 mm and 30 mm follow. Not where the head is countersunk.
#[test]
fn a_bolt_is_turned_where_its_head_can_be_changed_over() {
    let plies = || {
        Stack::builder()
            .ply("thick", exact(30.0))
            .ply("thin", exact(5.0))
            .shear_planes([1])
    };
    let goal = Goal::EveryPlaneOnShank;
    let first = advised(&arrangement(plies(), rules()), goal);
    assert_eq!(first[0], [Change::TurnBolt]);
    let countersunk = shankline::joint::HeadSeat::Countersunk {
        below_flush: exact(0.0),
        head_height: millimetres(7.0),
    };
    let held = advised(&arrangement(plies().head_seat(countersunk), rules()), goal);
    assert!(!held.is_empty() && !held.contains(&vec![Change::TurnBolt]));
}

/// Three washers may be under the nut, and two are there, one of them of another kind.
#[test]
fn washers_of_both_kinds_are_counted() {
    let stack = Stack::builder()
        .ply("thick", exact(30.0))
        .ply("thin", exact(6.0))
        .shear_planes([1])
        .washer_under_nut(exact(1.5))
        .washers_under_nut(exact(1.0), 1);
    // The plane at 30 mm asks for 70 mm, 31.25 mm of shank and thread from 40 mm. 38.5 mm are there and 39.5 permitted.
    let found = changes(&arrangement(stack, rules()), Goal::EveryPlaneOnShank);
    let expected = Change::AddWashers {
        count: 4,
        permitted: 3,
    };
    assert!(found.contains(&expected), "{found:?}");
}

/// Ten threads beyond the nut: 28.1 mm of a bolt of 52 to 80 mm past the stack, and its thread from 30 mm before its end. So
/// a stack of 41 mm takes 70 mm, and those of 37 and 39 mm take none. Of two washers in all one is under the nut: one may be
/// under the head, and two are needed.
#[test]
fn washers_under_the_head_share_the_limit_on_all() {
    let stack = Stack::builder()
        .washer_to_add_under_head(exact(2.0))
        .ply("plate", exact(35.0))
        .washers_under_nut(exact(2.0), 1);
    let rules = rules()
        .with_protrusion(10.0, None)
        .with_washers_under_nut(1)
        .with_washers_under_head(5)
        .with_washers_in_all(2);
    let found = changes(&arrangement(stack, rules), Goal::Fits);
    let expected = Change::AddWashersUnderHead {
        count: 2,
        permitted: 1,
    };
    assert!(found.contains(&expected), "{found:?}");
}

/// Uncut and with two to three threads beyond the nut, 3.5 to 5.25 mm: 60 mm (59.4 to 60.6) goes with 45.35 to 45.9 mm.
fn narrow() -> LengthRules {
    rules()
        .with_protrusion(2.0, Some(3.0))
        .with_cut(CutRule::Never)
}

#[test]
fn a_spacer_takes_up_what_must_not_be_cut() {
    let spacer = |stack, rules| {
        let found = changes(&arrangement(stack, rules), Goal::Fits);
        found.iter().find_map(|change| match change {
            Change::Spacer { at_least, at_most } => Some((*at_least, *at_most)),
            _ => None,
        })
    };
    let plate = || Stack::builder().ply("plate", exact(42.35));
    let (least, most) = spacer(plate(), narrow()).expect("a spacer does");
    assert!(is_near(least, 3.0) && is_near(most, 3.55));
    // A washer of 1.6 to 2.4 mm would ask for 1.4 to 1.15 mm, which is no spacer.
    let washer = millimetres(2.0).plus_minus(millimetres(0.4));
    let washered = plate().washers_under_nut(washer, 0);
    let (least, most) =
        spacer(washered, narrow().with_washers_under_nut(1)).expect("a spacer does");
    assert!(is_near(least, 3.0) && is_near(most, 3.55));
    // 37 mm with one thread in the hole at most: 35.25 mm of shank, that of 80 mm; its thread begins at 50 mm, and 79.4 mm
    // leave 65.9 mm. The 70 mm bolt would ask for 3 mm only, and its 31.25 mm of shank are too short.
    let plate = Stack::builder().ply("plate", exact(37.0));
    let (least, most) = spacer(plate, rules().with_thread_in_holes(1.0)).expect("a spacer does");
    assert!(
        is_near(least, 13.0) && is_near(most, 28.9),
        "{least:?} {most:?}"
    );
}

#[test]
fn a_cut_is_advised_where_it_is_forbidden_and_no_rule_is_relaxed_that_asks_nothing() {
    let plate = || Stack::builder().ply("plate", exact(42.35));
    let found = changes(&arrangement(plate(), narrow()), Goal::Fits);
    let rule = CutRule::usual(UnitSystem::Si);
    assert!(found.contains(&Change::AllowCut { rule }), "{found:?}");
    // 60.6 - 42.35 - 10 = 8.25 mm at most.
    let more = found.iter().find_map(|change| match change {
        Change::MoreProtrusion { pitches, permitted } => Some((*pitches, *permitted)),
        _ => None,
    });
    let (pitches, permitted) = more.expect("a longer end does");
    assert!((pitches - 8.25 / 1.75).abs() < 1e-6 && (permitted - 3.0).abs() < 1e-9);
    // 54.4 - 52.35 = 2.05 mm of 55 mm remain.
    let less = found.iter().find_map(|change| match change {
        Change::LessProtrusion { pitches, wanted } => Some((*pitches, *wanted)),
        _ => None,
    });
    let (pitches, wanted) = less.expect("a shorter end does");
    assert!((pitches - 2.05 / 1.75).abs() < 1e-6 && (wanted - 2.0).abs() < 1e-9);
    // Where it may be cut it is not advised: here ten threads are asked for.
    let free = rules().with_protrusion(10.0, None);
    let plate = Stack::builder().ply("plate", exact(37.0));
    let found = changes(&arrangement(plate, free), Goal::Fits);
    let cut = |change: &Change| matches!(change, Change::AllowCut { .. });
    assert!(!found.is_empty() && !found.iter().any(cut), "{found:?}");
    let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &"1/2-13 UNC".parse().unwrap());
    let mut inch = arrangement(Stack::builder().ply("plate", exact(42.35)), narrow());
    inch.screws = screws.unwrap();
    inch.rules = inch.rules.with_protrusion(2.0, Some(2.1));
    let rule = CutRule::usual(UnitSystem::UsCustomary);
    let found = changes(&inch, Goal::Fits);
    assert!(found.contains(&Change::AllowCut { rule }), "{found:?}");
}

/// 65 mm: its thread begins at 35 mm. In a stack of 36 mm there is 1 mm of clear thread, and 1.5 threads are asked for;
/// 60 mm, which has 6 mm, would not reach ten threads beyond the nut.
#[test]
fn fewer_clear_threads_are_advised_where_some_are_asked_for() {
    let plate = || Stack::builder().ply("plate", exact(36.0));
    let strict = rules().with_protrusion(10.0, None).with_clear_threads(1.5);
    let found = changes(&arrangement(plate(), strict), Goal::Fits);
    let fewer = found.iter().find_map(|change| match change {
        Change::FewerClearThreads { threads, wanted } => Some((*threads, *wanted)),
        _ => None,
    });
    let (threads, wanted) = fewer.expect("fewer clear threads do");
    assert!((threads - 1.0 / 1.75).abs() < 1e-6 && (wanted - 1.5).abs() < 1e-9);
}

/// The thread begins at the last plane or after it, and the room between decides whether the shank is told.
#[test]
fn a_special_bolt_is_told_its_shank_where_a_plane_hangs_on_it() {
    let plies = |first: f64, last: f64| {
        Stack::builder()
            .ply("plate", exact(first))
            .ply("sheet", exact(last))
            .shear_planes([1])
    };
    // 60 mm has its thread from 30 mm, 65 mm from 35 mm: neither has the plane at 32 mm before it and clamps.
    let goal = Goal::NoPlaneInThread;
    let hairline = special(&arrangement(plies(32.0, 0.04), rules()), goal);
    assert!(is_near(hairline.shank_min, 32.0) && is_near(hairline.thread_start_max, 32.04));
    assert!(is_near(hairline.length_min, 32.04 + 10.0 + 3.5));
    let room = special(&arrangement(plies(32.0, 0.06), rules()), goal);
    assert_eq!(room.shank_min, Length::default());
    let on_shank = special(
        &arrangement(plies(32.0, 0.06), rules()),
        Goal::EveryPlaneOnShank,
    );
    assert!(is_near(on_shank.shank_min, 32.0));
    // Ten threads beyond the nut: no bolt goes with 37.04 mm, and the plane asks for nothing.
    let ten = rules().with_protrusion(10.0, None);
    let anywhere = special(&arrangement(plies(37.0, 0.04), ten), Goal::Fits);
    assert_eq!(anywhere.shank_min, Length::default());
}

/// Turned, the plane lies at 5 mm, and a cut takes what the tolerance of the plate leaves: either alone does nothing.
#[test]
fn two_changes_together_are_named_once() {
    let stack = Stack::builder()
        .ply("thick", millimetres(30.0).plus_minus(millimetres(2.0)))
        .ply("thin", exact(5.0))
        .shear_planes([1]);
    let found = advised(&arrangement(stack, narrow()), Goal::EveryPlaneOnShank);
    let cut = Change::AllowCut {
        rule: CutRule::usual(UnitSystem::Si),
    };
    assert!(found.contains(&vec![Change::TurnBolt, cut]), "{found:?}");
    assert!(!found.contains(&vec![cut, Change::TurnBolt]));
    let cut_and_spacer =
        |pair: &Vec<Change>| pair[0] == cut && matches!(pair[1], Change::Spacer { .. });
    assert!(found.iter().any(cut_and_spacer), "{found:?}");
    assert!(found.iter().all(|pair| pair.len() == 2));
}

#[test]
fn a_range_without_width_is_one_figure() {
    let plate = Stack::builder().ply("plate", exact(37.0));
    let joint = arrangement(plate, rules().with_thread_in_holes(1.0));
    let mut wanted = special(&joint, Goal::Fits);
    let length = |wanted, expected: &str| {
        let text = Change::SpecialBolt(wanted).text(UnitSystem::Si);
        assert!(text.ends_with(expected), "{text}");
    };
    wanted.length_max = Some(wanted.length_min + millimetres(2.0));
    length(wanted, "a length of 50.50 mm to 52.50 mm");
    wanted.length_max = Some(wanted.length_min);
    length(wanted, "a length of 50.50 mm");
    let text = wanted
        .length_max
        .map(|_| Change::SpecialBolt(wanted).text(UnitSystem::Si));
    assert!(!text.unwrap().contains("50.50 mm to"));
    // As printed both ends are one, and more digits would say no more.
    let (at_least, at_most) = (millimetres(8.0), millimetres(8.0));
    let spacer = Change::Spacer { at_least, at_most };
    assert_eq!(
        spacer.text(UnitSystem::Si),
        "put a spacer sleeve of 8.00 mm to 8.00 mm under the nut"
    );
}
