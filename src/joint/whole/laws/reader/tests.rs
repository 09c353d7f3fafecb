//! Laws read from joints of every form, held against the whole check. All joints are invented.

// Loads that laws are read at are what they are to the last digit.
#![allow(clippy::float_cmp)]

use alloc::string::{String, ToString};
use alloc::{format, vec};

use super::*;
use crate::joint::Scope;
use crate::joint::whole::laws::tests::loads;
use crate::joint::whole::{CaseAnswer, JointMethods, Repeats};

mod joints;

use joints::{STATED, Scenario, ellipse_of_slip, lap, slips, table, tight, torque, washed};

fn steady(across: f64, along: f64) -> Loads {
    loads(across, along, across, along)
}

fn times(times: f64, of: &Loads) -> Loads {
    loads(
        times * of.across,
        times * of.along,
        times * of.across_least,
        times * of.along_least,
    )
}

fn reader(joint: &Joint, kind: &Loads) -> Option<Reader> {
    let verdict = joint.check().unwrap();
    Reader::new(joint, &verdict.candidate, verdict.preload.as_ref(), kind)
}

fn read(joint: &Joint, kind: &Loads) -> Option<Laws> {
    reader(joint, kind)?.read()
}

fn whole(joint: &Joint, loads: &Loads) -> Verdict {
    let own = Joint {
        load: loads.case().of(&joint.load),
        ..joint.clone()
    };
    own.check().unwrap()
}

/// The forms of the laws, in the order of the alphabet.
fn forms(laws: &Laws) -> String {
    let mut names = Vec::new();
    for (_, law) in &laws.of_modes {
        let name = format!("{law:?}");
        let end = name.find(|c: char| !c.is_alphanumeric()).unwrap();
        names.push(name[..end].to_string());
    }
    names.sort();
    names.join(" ")
}

fn near(found: f64, expected: f64) -> bool {
    (found - expected).abs() <= 1e-9 * expected
}

/// Holds the answer against the whole check, and every law against its checks, those that do not govern too.
fn agree(name: &str, joint: &Joint, laws: &Laws, loads: &Loads) {
    let found = laws
        .answer(loads)
        .unwrap_or_else(|| panic!("{name}: no answer under {loads:?}"));
    let verdict = whole(joint, loads);
    let expected = CaseAnswer::from(&verdict);
    let context = || format!("{name} under {loads:?}: {found:?}, {expected:?}");
    assert_eq!(found.word, expected.word, "{}", context());
    assert_eq!(found.mode, expected.mode, "{}", context());
    let used = [found, expected].map(|answer| answer.utilisation.value);
    assert!(near(used[0], used[1]), "{}", context());
    for (mode, law) in &laws.of_modes {
        let used = law.at(loads, &laws.forces).unwrap();
        let mut alike = verdict.checks.iter().filter(|check| check.mode == *mode);
        assert!(
            alike.any(|check| near(used, check.utilisation.value)),
            "{law:?} is of no check of {mode:?}; {}",
            context()
        );
    }
}

#[test]
fn every_joint_is_answered_as_by_the_whole_check() {
    for own in table() {
        let Scenario { name, joint, .. } = &own;
        let laws = read(joint, &own.loads).unwrap_or_else(|| panic!("{name} is not read"));
        assert_eq!(forms(&laws), own.forms, "{name}");
        for by in [1e-3, 0.1, 0.5, 0.9, 1.1, 2.0, 3.0] {
            let loads = times(by, &own.loads);
            if by <= own.up_to {
                agree(name, joint, &laws, &loads);
            } else {
                assert_eq!(laws.answer(&loads), None, "{name} under {loads:?}");
            }
        }
    }
}

/// Loads that the laws of each kind are read at: one newton across; along, a twentieth of the preload over the margin, and
/// without a preload one newton.
#[test]
fn the_small_loads_of_each_kind() {
    let loose = lap("M16").snug().build().unwrap();
    let tightened = tight(lap("M16"))
        .design_factor(10.0)
        .shock_factor(2.0)
        .build()
        .unwrap();
    let left = tightened.check().unwrap().preload.unwrap().in_service.value;
    let lost = lap("M16")
        .tightening(torque(crate::preload::PreloadTarget::Reusable, 100.0))
        .build()
        .unwrap();
    let across = [
        (0.0, 0.0, [0.0, 0.0]),
        (5e3, 5e3, [1.0, 1.0]),
        (5e3, 2e3, [1.0, 0.25]),
        (5e3, 0.0, [1.0, 0.25]),
        (5e3, -2e3, [1.0, -0.5]),
    ];
    let along = [
        (0.0, 0.0, [0.0, 0.0]),
        (0.0, -3e3, [0.0, -1.0]),
        (4e3, 4e3, [1.0, 1.0]),
        (4e3, 1e3, [1.0, 0.0]),
        (4e3, -1e3, [1.0, 0.0]),
    ];
    for (joint, pull) in [
        (&loose, 1.0),
        (&tightened, 0.05 * left / 20.0),
        (&lost, 1.0),
    ] {
        for (most, least, small_across) in across {
            for (greatest, least_along, small_along) in along {
                let kind = loads(most, greatest, least, least_along);
                let found = reader(joint, &kind).unwrap().small;
                assert_eq!([found.across, found.across_least], small_across, "{kind:?}");
                let found = [found.along, found.along_least];
                assert_eq!(found, small_along.map(|times| times * pull), "{kind:?}");
            }
        }
    }
}

/// Whether the plies slip decides what locks them as well: a scope without slip is left to the whole check, where there is
/// anything to slip under.
#[test]
fn slip_outside_the_scope_is_not_read() {
    let methods = slips(JointMethods::machine_design(2.0), STATED);
    let builder = tight(lap("M20"));
    let of_bolt = builder
        .clone()
        .methods(methods)
        .scope(Scope::Bolt)
        .build()
        .unwrap();
    let of_joint = builder.clone().methods(methods).build().unwrap();
    let may_slip = builder.scope(Scope::Bolt).build().unwrap();
    for (joint, across, is_read) in [
        (&of_bolt, 2e3, false),
        (&of_bolt, 0.0, true),
        (&of_joint, 2e3, true),
        (&may_slip, 2e3, true),
    ] {
        for along in [0.0, 5e3] {
            assert_eq!(
                read(joint, &steady(across, along)).is_some(),
                is_read,
                "{across}"
            );
        }
    }
}

/// An ellipse is flat at small loads: with a pull beside slip the whole check answers, without one a law does.
#[test]
fn an_ellipse_of_slip_is_left_to_the_whole_check() {
    let joint = ellipse_of_slip();
    assert!(read(&joint, &steady(30e3, 20e3)).is_none());
    let laws = read(&joint, &steady(30e3, 0.0)).unwrap();
    assert_eq!(forms(&laws), "Across Bolt Fixed Slip");
    for across in [10.0, 20e3, 40e3, 90e3] {
        agree("ellipse", &joint, &laws, &steady(across, 0.0));
    }
}

/// A load along the bolt under which its greatest force is this.
fn pull_for(force: f64, laws: &Laws) -> f64 {
    let spring = &laws.forces.greatest;
    (force - spring.preload) / (spring.share * laws.forces.margin)
}

/// A washer as hard as this bears 4 MPa for each HV of it under the head, and no more is answered: on both sides of that
/// force, and where the laws are read above it.
#[test]
fn outcomes_end_where_a_washer_is_pressed_too_hard() {
    // Of an M16 bolt of class 12.9: 22.5 mm of its head less 17.5 mm of the washer.
    let area = core::f64::consts::PI / 4.0 * (22.5 * 22.5 - 17.5 * 17.5);
    let start = read(&washed(300.0), &steady(0.0, 1e3)).unwrap().forces;
    let small = start.greatest.bolt(0.05 * start.least.preload);
    // Harder than what the laws are read at, and just softer.
    for (force, ends_above) in [(small + 300.0, true), (small - 300.0, false)] {
        let joint = washed(force / (4.0 * area));
        let laws = read(&joint, &steady(0.0, 1e3)).unwrap();
        for (by, answered) in [
            (1.0 - 1e-6, ends_above),
            (1.0 - 2e-9, ends_above),
            (1.0 - 0.5e-9, false),
            (1.0 + 0.5e-9, false),
            (1.0 + 2e-9, !ends_above),
            (1.0 + 1e-6, !ends_above),
        ] {
            let pull = pull_for(by * force, &laws);
            let loads = steady(0.0, pull);
            if answered {
                agree("washed", &joint, &laws, &loads);
            } else {
                assert_eq!(laws.answer(&loads), None, "{by} of {force}");
            }
        }
    }
}

/// Ends and sides of a plate around a pin: read so far apart that rounding does not show, also far beyond what is borne.
#[test]
fn plates_around_a_pin_to_the_last_digits() {
    let pivot = table().into_iter().find(|own| own.name == "pivot").unwrap();
    let laws = read(&pivot.joint, &pivot.loads).unwrap();
    let around = laws
        .of_modes
        .iter()
        .filter(|(mode, _)| *mode == Mode::TearOut);
    let load = steady(2e6, 0.0);
    let verdict = whole(&pivot.joint, &load);
    let mut count = 0;
    for (_, law) in around {
        let used = law.at(&load, &laws.forces).unwrap();
        let mut ends = verdict
            .checks
            .iter()
            .filter(|own| own.mode == Mode::TearOut);
        let found = ends.any(|own| (own.utilisation.value - used).abs() < 1e-13 * used);
        assert!(found, "{law:?} comes to {used}");
        count += 1;
    }
    assert_eq!(count, 6); // end and side of three plates
}

/// The reader with every law, those too that do not govern.
fn all_laws(joint: &Joint, kind: &Loads) -> (Reader, Laws) {
    let mut reader = reader(joint, kind).unwrap();
    let small = reader.small;
    let (verdict, _) = reader.run(&small).unwrap();
    let bolt = reader.forces.greatest(&small);
    let mut of_modes = Vec::new();
    for check in &verdict.checks {
        of_modes.push((check.mode, reader.law(&verdict, check, bolt).unwrap()));
    }
    let laws = Laws {
        word: without_loads(&verdict),
        of_modes,
        forces: reader.forces,
        ranges: ANYWHERE,
    };
    (reader, laws)
}

const ANYWHERE: [[f64; 2]; 2] = [[f64::NEG_INFINITY, f64::INFINITY]; 2];

/// One that goes so many times as steeply.
fn steeper(law: Law, by: f64) -> Law {
    match law {
        Law::Fixed(per) => Law::Fixed(by * per),
        Law::Across(per) => Law::Across(by * per),
        Law::Along(per) => Law::Along(by * per),
        Law::Bolt(per) => Law::Bolt(by * per),
        Law::Together(own) => Law::Together(Together {
            shear: by * own.shear,
            tension: by * own.tension,
            ..own
        }),
        other => panic!("{other:?}"),
    }
}

#[test]
fn laws_are_confirmed_one_and_all() {
    let joint = tight(lap("M16")).build().unwrap();
    let (mut reader, laws) = all_laws(&joint, &steady(5e3, 10e3));
    assert_eq!(laws.word, Word::Holds);
    let mut confirms = |laws: &Laws| reader.confirms(laws).is_some();
    assert!(confirms(&laws));
    for place in 0..laws.of_modes.len() {
        for (by, is_confirmed) in [
            (1.0 + 1e-8, false),
            (1.0 - 1e-8, false),
            (1.0 + 1e-10, true),
            (1.0 - 1e-10, true),
            (f64::NAN, false),
        ] {
            let mut other = laws.clone();
            other.of_modes[place].1 = steeper(laws.of_modes[place].1, by);
            assert_eq!(
                confirms(&other),
                is_confirmed,
                "{:?} {by}",
                laws.of_modes[place]
            );
        }
        let mut fewer = laws.clone();
        fewer.of_modes.remove(place);
        assert!(!confirms(&fewer));
    }
    let mut more = laws.clone();
    more.of_modes.push(laws.of_modes[0]);
    assert!(!confirms(&more));
    for word in [Word::Undecided, Word::DoesNotHold] {
        assert!(!confirms(&Laws {
            word,
            ..laws.clone()
        }));
        // Where none of these outcomes are, nothing can be confirmed: no answer comes from there.
        for (place, beyond) in [
            (0, [0.0, 1.0]),
            (0, [1e9, 2e9]),
            (1, [0.0, 1.0]),
            (1, [1e9, 2e9]),
        ] {
            let mut ranges = ANYWHERE;
            ranges[place] = beyond;
            assert!(confirms(&Laws {
                word,
                ranges,
                ..laws.clone()
            }));
        }
    }
}

/// Somewhat below what is borne: at 0.55 of it across, and along where there is no preload; else at 2.3 times what the laws
/// are read at.
#[test]
fn laws_are_confirmed_at_ordinary_loads() {
    let loose = lap("M16").snug().build().unwrap();
    let tightened = tight(lap("M16")).build().unwrap();
    let pull = 0.025 * tightened.check().unwrap().preload.unwrap().in_service.value;
    let slip = Law::Slip {
        across: 4e-3,
        along: 1.0,
    };
    let across = [Law::Across(1e-3), Law::Across(2e-3), Law::Fixed(7.0)];
    let along = [Law::Along(1e-3), Law::Along(5e-4), Law::Fixed(7.0)];
    let both = [across, along].concat();
    for (joint, kind, of_modes, expected) in [
        (&loose, steady(5e3, 4e3), &both[..], steady(275.0, 550.0)),
        (
            &loose,
            steady(5e3, 4e3),
            &[Law::Bolt(5.0)],
            steady(3.0, 2.3),
        ),
        (
            &loose,
            steady(5e3, 0.0),
            &[slip, Law::Across(2e-3)],
            steady(137.5, 0.0),
        ),
        // A quarter of it is what comes and goes at small loads, half of it what reverses; nine tenths of those.
        (
            &loose,
            loads(5e3, 4e3, 2e3, 1e3),
            &both,
            loads(275.0, 550.0, 61.875, 110.0),
        ),
        (
            &loose,
            loads(5e3, 0.0, -2e3, 0.0),
            &across,
            loads(275.0, 0.0, -123.75, 0.0),
        ),
        (
            &loose,
            loads(0.0, 4e3, 0.0, -1e3),
            &along,
            loads(0.0, 550.0, 0.0, 110.0),
        ),
        (
            &tightened,
            steady(5e3, 4e3),
            &both,
            steady(275.0, 2.3 * pull),
        ),
        (
            &tightened,
            loads(0.0, 4e3, 0.0, 1e3),
            &along,
            loads(0.0, 2.3 * pull, 0.0, 0.46 * pull),
        ),
        (
            &tightened,
            loads(0.0, 0.0, 0.0, -1e3),
            &[Law::Fixed(7.0)],
            loads(0.0, 0.0, 0.0, -1.84 * pull),
        ),
    ] {
        let mut reader = reader(joint, &kind).unwrap();
        let laws = Laws {
            word: Word::Holds,
            of_modes: of_modes.iter().map(|law| (Mode::Bearing, *law)).collect(),
            forces: reader.forces,
            ranges: ANYWHERE,
        };
        // They are no laws of this joint: what counts is where they are held against it.
        assert!(reader.confirms(&laws).is_none());
        let load = reader.joint.load;
        let (across_least, along_least) = match load.repeats {
            Repeats::Between {
                across_least,
                along_least,
                ..
            } => (across_least, along_least),
            Repeats::Never => (load.across, load.along),
        };
        let found = [load.across, load.along, across_least, along_least];
        let expected = [
            expected.across,
            expected.along,
            expected.across_least,
            expected.along_least,
        ];
        for (found, expected) in found.iter().zip(expected) {
            let off = (found.value - expected).abs();
            assert!(
                off <= 1e-12 * expected.abs(),
                "{kind:?}: {found:?}, {expected}"
            );
        }
    }
}

#[test]
fn forces_of_a_joint() {
    let of = |builder: crate::joint::JointBuilder| {
        let joint = builder.build().unwrap();
        let preload = joint.check().unwrap().preload;
        (Forces::of(&joint, preload.as_ref()).unwrap(), preload)
    };
    // The load factor is of methods for factored loads alone.
    let loose = lap("M16")
        .snug()
        .shock_factor(1.5)
        .load_factor(1.4)
        .design_factor(3.0);
    let (forces, none) = of(loose.clone());
    assert!(none.is_none() && !forces.preloaded);
    assert_eq!((forces.margin, forces.shock), (4.5, 1.5));
    for spring in [forces.greatest, forces.least] {
        assert_eq!(
            (spring.preload, spring.share, spring.separation),
            (0.0, 1.0, f64::INFINITY)
        );
    }
    let factored = lap("M16").snug().shock_factor(1.5).load_factor(1.4);
    let (forces, _) = of(factored.methods(JointMethods::en_1993()));
    assert_eq!((forces.margin, forces.shock), (1.5 * 1.4, 1.5));
    let (forces, preload) = of(tight(lap("M16")));
    let preload = preload.unwrap();
    let share = preload.load_share().unwrap().share.value;
    assert!(forces.preloaded && 0.0 < share && share < 1.0);
    for (spring, force) in [
        (forces.greatest, preload.greatest),
        (forces.least, preload.in_service),
    ] {
        assert_eq!((spring.preload, spring.share), (force.value, share));
        assert!(near(spring.separation, force.value / (1.0 - share)));
    }
}

#[test]
fn of_laws_alike_the_one_that_governs() {
    let slip = |across| Law::Slip { across, along: 0.5 };
    let from = |per| Law::AcrossFrom { start: 0.1, per };
    let all = Laws {
        word: Word::Undecided,
        of_modes: vec![
            (Mode::Bearing, Law::Across(1.0)),
            (Mode::TearOut, from(2.0)),
            (Mode::BoltShear, Law::Across(2.0)),
            (Mode::GrossSection, Law::Across(2.0)),
            (Mode::Slip, slip(3.0)),
            (Mode::NetSection, Law::Across(0.5)),
            (Mode::Tightening, Law::Fixed(0.5)),
            (Mode::Preload, Law::Fixed(0.5)),
            // Neither of two such always governs.
            (Mode::TearOut, from(1.0)),
            (Mode::Slip, slip(4.0)),
        ],
        forces: reader(&lap("M16").snug().build().unwrap(), &steady(1.0, 0.0))
            .unwrap()
            .forces,
        ranges: [[1.0, 2.0], [3.0, 4.0]],
    };
    let ranges = all.ranges;
    let kept = governing_only(all);
    let found = format!("{:?}", kept.of_modes);
    let expected = vec![
        (Mode::BoltShear, Law::Across(2.0)),
        (Mode::TearOut, from(2.0)),
        (Mode::Slip, slip(4.0)),
        (Mode::Tightening, Law::Fixed(0.5)),
        (Mode::TearOut, from(1.0)),
    ];
    assert_eq!(found, format!("{expected:?}"));
    assert_eq!((kept.word, kept.ranges), (Word::Undecided, ranges));
}
