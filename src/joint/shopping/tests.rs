//! Lists against brute force, and what is refused.

use super::*;
use alloc::string::ToString;
use proptest::prelude::*;

/// Every subset of the parts: fewest parts, then least cost.
fn brute_force(needs: &[JointNeed]) -> (usize, usize) {
    let (parts, _) = Problem::of(needs).unwrap();
    (0_u32..1 << parts.len())
        .filter_map(|set| {
            let bought = |name: &String| {
                let number = parts.iter().position(|part| part == name);
                number.is_some_and(|number| set >> number & 1 == 1)
            };
            let needs = needs.iter().filter(|need| !need.choices.is_empty());
            // None of a need that nothing bought serves: then this is no list.
            let steps: Option<usize> = needs
                .map(|need| Some(need.count * need.choices.iter().position(bought)?))
                .sum();
            Some((set.count_ones() as usize, steps?))
        })
        .min()
        .unwrap()
}

/// 4 bolts on their second choice and 8 on their third: 4 x 1 + 8 x 2 = 20 steps; a joint without a choice has none.
#[test]
fn steps_are_counted_by_bolt() {
    let list = shopping_list(&[
        JointNeed::new("foot", 4, ["a", "c"]),
        JointNeed::new("arm", 8, ["b", "d", "c"]),
        JointNeed::new("odd one", 9, Vec::<String>::new()),
    ]);
    let list = list.unwrap();
    assert_eq!((list.lines.len(), list.steps_below_best), (1, 20));
    assert_eq!(list.lines[0].part, "c");
}

/// Of lists that are as good the one with the parts that are named first is kept, and no branch is spent on another.
#[test]
fn of_equals_the_first_named_is_bought() {
    let needs = [
        JointNeed::new("foot", 4, ["a", "b"]),
        JointNeed::new("arm", 4, ["b", "a"]),
    ];
    let list = shopping_list(&needs).unwrap();
    assert_eq!((list.lines.len(), list.steps_below_best), (1, 4));
    assert_eq!(list.lines[0].part, "a");
    // The greedy list is the best that can be: the first branch sees it, and the second is left.
    let one = shopping_list_within(&[JointNeed::new("foot", 4, ["a", "b"])], 2).unwrap();
    assert!(one.proven_fewest);
    let one = shopping_list_within(&[JointNeed::new("foot", 4, ["a", "b"])], 1).unwrap();
    assert!(!one.proven_fewest);
}

/// 50 million looks at a choice: 200000 branches of up to 250 choices, 500 of 100000.
#[test]
fn long_lists_of_choices_have_fewer_branches() {
    for (choices, branches) in [
        (0, 200_000),
        (1, 200_000),
        (250, 200_000),
        (251, 199_203),
        (500, 100_000),
        (100_000, 500),
    ] {
        assert_eq!(branches_for(choices), branches, "{choices}");
    }
}

fn any_needs() -> impl Strategy<Value = Vec<JointNeed>> {
    let parts: Vec<usize> = (0..10).collect();
    let choices = proptest::sample::subsequence(parts, 0..5).prop_shuffle();
    let need = (choices, 0..20_usize).prop_map(|(choices, count)| {
        JointNeed::new("joint", count, choices.iter().map(ToString::to_string))
    });
    proptest::collection::vec(need, 0..9)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 3000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn agrees_with_brute_force(needs in any_needs()) {
        let list = shopping_list(&needs).unwrap();
        prop_assert!(list.proven_fewest);
        prop_assert_eq!((list.lines.len(), list.steps_below_best), brute_force(&needs));
        prop_assert_eq!(list.fewest_possible, list.lines.len());
        let bought: usize = list.lines.iter().map(|line| line.count).sum();
        let wanted: usize = needs.iter().filter(|need| !need.choices.is_empty()).map(|need| need.count).sum();
        prop_assert_eq!(bought, wanted);
        for (need, line) in needs.iter().zip(&list.line_of_joint) {
            prop_assert_eq!(line.is_none(), need.choices.is_empty());
            if let Some(line) = line {
                prop_assert!(need.choices.contains(&list.lines[*line].part));
            }
        }
    }

    #[test]
    fn stopped_early_it_still_serves_everyone(needs in any_needs(), branches in 0..4_usize) {
        let list = shopping_list_within(&needs, branches).unwrap();
        let (fewest, _) = brute_force(&needs);
        prop_assert!(list.fewest_possible <= fewest && fewest <= list.lines.len());
        for (need, line) in needs.iter().zip(&list.line_of_joint) {
            prop_assert_eq!(line.is_none(), need.choices.is_empty());
        }
    }
}

#[test]
fn a_whole_playground_is_proven() {
    // 200 joints that each accept a run of neighbouring lengths out of 40.
    let needs: Vec<JointNeed> = (0..200_usize)
        .map(|joint| {
            let (first, run) = (joint * 7 % 36, 2 + joint % 4);
            let lengths = (first..40.min(first + run)).map(|step| format!("M12 x {}", 5 * step));
            JointNeed::new(format!("joint {joint}"), 1 + joint % 8, lengths)
        })
        .collect();
    let list = shopping_list(&needs).unwrap();
    assert!(list.proven_fewest, "{} lines", list.lines.len());
}

#[test]
fn groups_that_share_nothing_are_proven_apart() {
    // Any two of the three joints of a triangle share a part, so two parts serve three joints; the
    // bound of joints that share nothing sees only one.
    let needs: Vec<JointNeed> = (0..999_usize)
        .map(|joint| {
            let (triangle, corner) = (joint / 3, joint % 3);
            let sides = [corner, (corner + 1) % 3].map(|side| format!("{triangle}-{side}"));
            JointNeed::new("joint", 1, sides)
        })
        .collect();
    let list = shopping_list(&needs).unwrap();
    assert!(list.proven_fewest);
    assert_eq!((list.fewest_possible, list.lines.len()), (666, 666));
}

#[test]
fn a_hard_list_stops_in_time() {
    let needs: Vec<JointNeed> = (0..600_usize)
        .map(|joint| {
            let mut parts = [
                joint * joint % 199,
                (37 * joint + 11) % 199,
                (joint / 3 * 53) % 199,
            ]
            .to_vec();
            parts.sort_unstable();
            parts.dedup();
            JointNeed::new("joint", 1, parts.iter().map(ToString::to_string))
        })
        .collect();
    let list = shopping_list(&needs).unwrap();
    assert!(!list.proven_fewest && list.fewest_possible < list.lines.len());
    assert!(list.line_of_joint.iter().all(Option::is_some));
}

#[test]
fn stopping_is_said() {
    let needs: Vec<JointNeed> = (0..6)
        .map(|joint| JointNeed::new("joint", 1, [joint, (joint + 1) % 6].map(|p| p.to_string())))
        .collect();
    let stopped = shopping_list_within(&needs, 1).unwrap();
    assert!(!stopped.proven_fewest && stopped.fewest_possible == 3);
    assert!(shopping_list(&needs).unwrap().proven_fewest);
}

#[test]
fn bad_needs_are_refused() {
    let twice = JointNeed::new("hinge", 1, ["a", "a"]);
    assert!(matches!(shopping_list(&[twice]), Err(Error::Mismatch(_))));
    let many = JointNeed::new("hinge", usize::MAX, ["a"]);
    assert!(matches!(
        shopping_list(&[many]),
        Err(Error::OutOfRange { .. })
    ));
}
