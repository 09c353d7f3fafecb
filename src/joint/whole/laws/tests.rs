//! Laws made by hand, at loads whose answers are worked out by hand.

// Binary fractions: every figure is exact.
#![allow(clippy::float_cmp)]

use alloc::vec;

use super::*;

/// Binary fractions all of them, so that limits are met to the last digit.
const FORCES: Forces = Forces {
    margin: 2.0,
    // 13.5 / (1 - 0.25)
    greatest: Spring {
        preload: 13.5,
        share: 0.25,
        separation: 18.0,
    },
    shock: 1.5,
    preloaded: true,
    // 8 / (1 - 0.5)
    least: Spring {
        preload: 8.0,
        share: 0.5,
        separation: 16.0,
    },
};

pub(super) fn loads(across: f64, along: f64, across_least: f64, along_least: f64) -> Loads {
    Loads {
        across,
        along,
        across_least,
        along_least,
    }
}

/// The greatest force of the bolt is 13.5 + 0.25 * 2 * 4 = 15.5 under the first, 16.5 under the second.
const FIRST: Loads = Loads {
    across: 16.0,
    along: 4.0,
    across_least: -4.0,
    along_least: -2.0,
};
const SECOND: Loads = Loads {
    across: 4.0,
    along: 6.0,
    across_least: 1.0,
    along_least: 2.0,
};

#[track_caller]
fn close(found: f64, expected: f64) {
    assert!(
        (found - expected).abs() <= 1e-12 * expected.abs(),
        "{found} in place of {expected}"
    );
}

#[test]
fn sixteen_kinds_of_load() {
    // None, steady, coming and going (down to nothing as well), reversing.
    let across = [
        (0.0, 0.0, 0),
        (5.0, 5.0, 1),
        (5.0, 2.0, 2),
        (5.0, 0.0, 2),
        (5.0, -2.0, 3),
    ];
    // None, pressed now and then, steady, coming and going.
    let along = [
        (0.0, 0.0, 0),
        (0.0, -3.0, 1),
        (4.0, 4.0, 2),
        (4.0, 1.0, 3),
        (4.0, -1.0, 3),
    ];
    for (most, least, of_across) in across {
        for (pull, least_pull, of_along) in along {
            let loads = loads(most, pull, least, least_pull);
            assert_eq!(loads.kind(), 4 * of_across + of_along, "{loads:?}");
        }
    }
}

#[test]
fn a_bolt_between_slack_and_parted() {
    // The separation is below that of the springs, so that both sides of it differ.
    let spring = Spring {
        preload: 12.0,
        share: 0.25,
        separation: 8.0,
    };
    for (load, force) in [
        (0.0, 12.0),
        (4.0, 13.0),
        (8.0, 14.0),
        (8.5, 8.5),
        (100.0, 100.0),
        (-8.0, 10.0),
        (-48.0, 0.0),
        (-64.0, 0.0),
    ] {
        assert_eq!(spring.bolt(load), force, "{load}");
    }
    for (range, expected) in [
        ([0.0, 8.0], [1.0, 1.0]),
        ([-8.0, 8.0], [2.0, 0.0]),
        ([4.0, 8.0], [0.5, 1.5]),
        // Below the preload on the mean: no mean above it.
        ([-16.0, 0.0], [2.0, 0.0]),
        ([-48.0, -16.0], [4.0, 0.0]),
    ] {
        assert_eq!(spring.half_and_above(range), expected, "{range:?}");
    }
    assert_eq!(Spring::NONE.bolt(7.0), 7.0);
    assert_eq!(Spring::NONE.bolt(-7.0), 0.0);
}

#[test]
fn the_greatest_force_has_the_margin_in_it_and_a_swing_the_shock() {
    assert_eq!(FORCES.greatest(&FIRST), 15.5);
    // 2 * 10 is beyond the separation.
    assert_eq!(FORCES.greatest(&loads(0.0, 10.0, 0.0, 10.0)), 20.0);
    let loose = Forces {
        preloaded: false,
        ..FORCES
    };
    assert_eq!(FORCES.swing(&FIRST), [-3.0, 6.0]);
    assert_eq!(loose.swing(&FIRST), [0.0, 6.0]); // nothing to take anything from
    assert_eq!(FORCES.swing(&SECOND), [3.0, 9.0]);
    assert_eq!(loose.swing(&SECOND), [3.0, 9.0]);
}

#[test]
fn a_change_that_is_mere_rounding_has_no_answer() {
    for (by, force, counts) in [
        (0.1, 0.0, false),
        (0.100_001, 0.0, true),
        (0.05, 1.0, false),
        // A millionth of the force, either way it acts.
        (2.0, 2e6, false),
        (2.000_001, 2e6, true),
        (2.0, -2e6, false),
        (2.000_001, -2e6, true),
        (-5.0, 1.0, false),
    ] {
        let expected = if counts { Some(by) } else { None };
        let found = Some(change(by, force)).filter(|change| !change.is_nan());
        assert_eq!(found, expected, "{by} of {force}");
    }
}

/// S = 3 and T + B = 4 under the first load: 5 on the ellipse. Under the second S = 0.75 and T + B = 1.8: 1.95.
const TOGETHER: Together = Together {
    rule: InteractionRule::Ellipse,
    zone: Zone::Thread,
    shear: 0.187_5,
    tension: 0.16,
    bending: 0.21,
};

/// Every form with its utilisation under both loads, and the number by which two of it compare.
fn forms() -> [(Law, [f64; 2], Option<f64>); 14] {
    let en = Together {
        rule: InteractionRule::En1993,
        tension: 0.7,
        bending: 0.0,
        ..TOGETHER
    };
    let bs = Together {
        rule: InteractionRule::Bs5950,
        ..en
    };
    [
        (Law::Fixed(0.5), [0.5, 0.5], Some(0.5)),
        (Law::Across(0.25), [4.0, 1.0], Some(0.25)),
        (Law::AcrossRoot(0.25), [1.0, 0.5], Some(0.25)),
        (
            Law::AcrossFrom {
                start: 0.5,
                per: 0.25,
            },
            [4.5, 1.5],
            None,
        ),
        (Law::Along(0.5), [2.0, 3.0], Some(0.5)),
        (Law::Bolt(0.5), [7.75, 8.25], Some(0.5)),
        (Law::Together(TOGETHER), [5.0, 1.95], None),
        // 3 + 2.8 / 1.4; 0.75 + 4.2 / 1.4, and the tension alone is more.
        (Law::Together(en), [5.0, 4.2], None),
        // (3 + 2.8) / 1.4; again the tension alone.
        (Law::Together(bs), [5.8 / 1.4, 4.2], None),
        // Left of the clamp force: 1 - 0.125 * 4; 1 - 0.125 * 6, the least that is answered.
        (
            Law::Slip {
                across: 0.25,
                along: 0.125,
            },
            [8.0, 4.0],
            Some(0.25),
        ),
        (Law::AcrossSwing(0.25), [5.0, 0.75], Some(0.25)),
        // 1.5 times 6 and 4.
        (Law::AlongSwing(0.25), [2.25, 1.5], Some(0.25)),
        // From 8 - 1.5 to 8 + 3; from 8 + 1.5 to 8 + 4.5.
        (Law::BoltSwing(0.25), [1.125, 0.75], Some(0.25)),
        // From 13.5 - 0.75 to 13.5 + 1.5: half of it 1.125, 0.375 above; from 0.75 to 2.25 above: 0.75 and 1.5.
        (
            Law::Goodman {
                amplitude: 2.0,
                mean: 4.0,
            },
            [3.75, 7.5],
            None,
        ),
    ]
}

#[test]
fn every_form_under_two_loads() {
    let mut lanes = Lanes::<3>::new();
    lanes.put(0, &FIRST);
    lanes.put(1, &SECOND);
    lanes.put(2, &FIRST);
    for (law, [first, second], per) in forms() {
        assert_eq!(law.per(), per, "{law:?}");
        close(law.at(&FIRST, &FORCES).unwrap(), first);
        close(law.at(&SECOND, &FORCES).unwrap(), second);
        let mut most = Most {
            used: [0.0; 3],
            law: [0; 3],
            open: [0; 3],
        };
        let bolt = [15.5, 16.5, 15.5];
        law.raise(7, &lanes, &FORCES, &bolt, &mut most);
        for (found, expected) in most.used.iter().zip([first, second, first]) {
            close(*found, expected);
        }
        assert_eq!((most.law, most.open), ([7; 3], [0; 3]), "{law:?}");
    }
}

#[test]
fn a_form_is_like_itself_alone() {
    let forms = forms();
    for (a, (law, ..)) in forms.iter().enumerate() {
        for (b, (other, ..)) in forms.iter().enumerate() {
            let both_together = (6..=8).contains(&a) && (6..=8).contains(&b);
            assert_eq!(
                law.is_like(other),
                a == b || both_together,
                "{law:?}, {other:?}"
            );
        }
    }
}

/// NASA's exponents go by what lies in the plane: what the loads have to be divided by solves the rule.
#[test]
fn the_zone_decides_the_exponents_of_nasa() {
    for (zone, of_shear, of_tension) in [(Zone::Thread, 1.2, 2.0), (Zone::Shank, 2.5, 1.5)] {
        let law = Law::Together(Together {
            rule: InteractionRule::NasaStd5020,
            zone,
            ..TOGETHER
        });
        for (loads, shear, along) in [(FIRST, 3.0, 4.0), (SECOND, 0.75, 1.8)] {
            let used = law.at(&loads, &FORCES).unwrap();
            let sum = math::powf(shear / used, of_shear) + math::powf(along / used, of_tension);
            assert!((sum - 1.0).abs() < 1e-9, "{zone:?}: {sum}");
        }
    }
}

#[test]
fn what_no_law_answers() {
    let slip = Law::Slip {
        across: 0.25,
        along: 0.125,
    };
    let goodman = Law::Goodman {
        amplitude: 2.0,
        mean: 4.0,
    };
    for (law, loads, answered) in [
        (slip, loads(4.0, 6.0, 4.0, 6.0), true),
        (slip, loads(4.0, 6.001, 4.0, 6.001), false),
        (slip, loads(4.0, 9.0, 4.0, 9.0), false),
        (Law::AcrossSwing(1.0), loads(4.0, 0.0, 3.875, 0.0), true),
        (Law::AcrossSwing(1.0), loads(4.0, 0.0, 3.937_5, 0.0), false),
        (Law::AlongSwing(1.0), loads(0.0, 4.0, 0.0, 3.875), true),
        (Law::AlongSwing(1.0), loads(0.0, 4.0, 0.0, 3.937_5), false),
        // 1.5 * 0.5 of them comes to the bolt.
        (Law::BoltSwing(1.0), loads(0.0, 4.0, 0.0, 3.75), true),
        (Law::BoltSwing(1.0), loads(0.0, 4.0, 0.0, 3.875), false),
        // Half of a quarter, times 1.5.
        (goodman, loads(0.0, 4.0, 0.0, 3.25), true),
        (goodman, loads(0.0, 4.0, 0.0, 3.5), false),
        // Parted above 18 = 1.5 * 12.
        (goodman, loads(0.0, 12.0, 0.0, 2.0), true),
        (goodman, loads(0.0, 12.001, 0.0, 2.0), false),
    ] {
        assert_eq!(
            law.at(&loads, &FORCES).is_some(),
            answered,
            "{law:?} {loads:?}"
        );
    }
    // The change is held against the mean force: 12 of a preload of 12e6 with 2e6 on top is mere rounding, 15 is not.
    let heavy = Forces {
        shock: 1.0,
        greatest: Spring {
            preload: 12e6,
            share: 0.25,
            separation: 16e6,
        },
        ..FORCES
    };
    assert!(
        goodman
            .at(&loads(0.0, 8e6, 0.0, 8e6 - 96.0), &heavy)
            .is_none()
    );
    assert!(
        goodman
            .at(&loads(0.0, 8e6, 0.0, 8e6 - 120.0), &heavy)
            .is_some()
    );
}

#[test]
fn lanes_keep_their_loads_apart() {
    let mut lanes = Lanes::<2>::new();
    lanes.put(1, &FIRST);
    lanes.put(2, &SECOND); // there is none: nothing happens
    for (lane, expected) in [(0, loads(0.0, 0.0, 0.0, 0.0)), (1, FIRST)] {
        let found = lanes.one(lane);
        let as_row = |own: Loads| [own.across, own.along, own.across_least, own.along_least];
        assert_eq!(as_row(found), as_row(expected), "{lane}");
    }
}

const ANYWHERE: [[f64; 2]; 2] = [[f64::NEG_INFINITY, f64::INFINITY]; 2];

fn two_laws() -> Laws {
    Laws {
        word: Word::Undecided,
        of_modes: vec![
            (Mode::Bearing, Law::Across(0.125)),
            (Mode::BoltTension, Law::Along(0.25)),
        ],
        forces: FORCES,
        ranges: ANYWHERE,
    }
}

fn answer(word: Word, mode: Mode, used: f64) -> CaseAnswer {
    CaseAnswer {
        word,
        mode: Some(mode),
        utilisation: Ratio::from(used),
    }
}

#[test]
fn the_highest_governs_and_of_equals_the_first() {
    let steady = |across: f64, along: f64| loads(across, along, across, along);
    let mut lanes = Lanes::<4>::new();
    let cases = [
        (
            steady(4.0, 1.0),
            answer(Word::Undecided, Mode::Bearing, 0.5),
        ),
        (
            steady(2.0, 2.0),
            answer(Word::Undecided, Mode::BoltTension, 0.5),
        ),
        (
            steady(4.0, 2.0),
            answer(Word::Undecided, Mode::Bearing, 0.5),
        ),
        (
            steady(4.0, 5.0),
            answer(Word::DoesNotHold, Mode::BoltTension, 1.25),
        ),
    ];
    for (lane, (loads, _)) in cases.iter().enumerate() {
        lanes.put(lane, loads);
    }
    let laws = two_laws();
    let mut answers = [CaseAnswer::default(); 4];
    assert!(laws.answers(&lanes, &mut answers));
    for ((loads, expected), found) in cases.iter().zip(answers) {
        assert_eq!(found, *expected, "{loads:?}");
        assert_eq!(laws.answer(loads), Some(*expected), "{loads:?}");
    }
    // One of them that has no answer leaves all to the whole check.
    for open in [steady(0.0, 0.0), steady(f64::NAN, 1.0), steady(8.0, 0.0)] {
        assert_eq!(laws.answer(&open), None, "{open:?}");
        lanes.put(2, &open);
        assert!(!laws.answers(&lanes, &mut answers), "{open:?}");
    }
    let modes = [0, 1, 2, 3].map(|law| laws.mode_of(law));
    assert_eq!(
        modes,
        [None, Some(Mode::Bearing), Some(Mode::BoltTension), None]
    );
}

#[test]
fn what_is_left_to_the_whole_check() {
    let only = |law| Laws {
        of_modes: vec![(Mode::Bearing, law)],
        ..two_laws()
    };
    let used = |used: f64| only(Law::Fixed(used)).answer(&FIRST);
    for plain in [1e-300, 0.5, 1.0 - 1.1e-9, 1.0 + 1.1e-9, 2.0, 99_999.9] {
        let word = if plain > 1.0 {
            Word::DoesNotHold
        } else {
            Word::Undecided
        };
        assert_eq!(used(plain), Some(answer(word, Mode::Bearing, plain)));
    }
    // At the limit rounding decides, far above it methods refuse, and nothing is no figure.
    for not in [
        1.0,
        1.0 - 0.9e-9,
        1.0 + 0.9e-9,
        1e5,
        1e6,
        f64::NAN,
        0.0,
        -1.0,
    ] {
        assert_eq!(used(not), None, "{not}");
    }
    // Where no check is made, none is expected.
    let none = Laws {
        of_modes: vec![],
        ..two_laws()
    };
    let nothing = CaseAnswer {
        word: Word::Undecided,
        mode: None,
        utilisation: Ratio::from(0.0),
    };
    assert_eq!(none.answer(&FIRST), Some(nothing));
}

/// Of the bolt 15.5 under the first load, 16.5 under the second; along 4 and 6. Both ends belong to the range.
#[test]
fn outcomes_are_those_of_a_range() {
    for (of_bolt, of_load, answered) in [
        ([15.5, 16.5], [4.0, 6.0], [true, true]),
        ([15.500_1, 99.0], [0.0, 9.0], [false, true]),
        ([0.0, 16.499_9], [0.0, 9.0], [true, false]),
        ([0.0, 99.0], [4.000_1, 9.0], [false, true]),
        ([0.0, 99.0], [0.0, 5.999_9], [true, false]),
    ] {
        let laws = Laws {
            ranges: [of_bolt, of_load],
            ..two_laws()
        };
        let found = [FIRST, SECOND].map(|loads| laws.answer(&loads).is_some());
        assert_eq!(found, answered, "{of_bolt:?} {of_load:?}");
    }
}
