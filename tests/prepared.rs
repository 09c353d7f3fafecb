//! A prepared joint answers as the whole check does, whatever the joint and the load.
#![cfg(feature = "serde")]

use std::cell::Cell;

use shankline::joint::*;
use shankline::prelude::*;
use shankline::units::percent;

#[path = "support/verdicts.rs"]
mod verdicts;

use verdicts::{Dice, for_all};

/// A load of any size: from nothing through what bolts carry to what none does.
fn load(dice: &mut Dice) -> f64 {
    match dice.below(6) {
        0 => 0.0,
        1 => 10_f64.powf(dice.between(-3.0, 11.0)),
        _ => 10_f64.powf(dice.between(2.0, 5.5)),
    }
}

/// A longer row of numbers from one.
fn row(seed: usize) -> Vec<u16> {
    let mut state = seed as u64;
    let next = |_| {
        state = state
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        u16::try_from(state >> 48).unwrap()
    };
    (0..200).map(next).collect()
}

fn case(dice: &mut Dice) -> BoltCase {
    let (across, along) = (load(dice), load(dice));
    let along = if dice.now_and_then(10.0) {
        -along
    } else {
        along
    };
    let steady = BoltCase::steady(newtons(across), newtons(along));
    let across_least = match dice.below(4) {
        0 => across * dice.between(-1.0, 0.0),
        1 => across * dice.between(0.0, 1.0),
        _ => across,
    };
    let along_least = match dice.below(4) {
        0 => along - along.abs() * dice.between(0.0, 3.0),
        1 => along - load(dice),
        _ => along,
    };
    BoltCase {
        across_least: newtons(across_least),
        along_least: newtons(along_least),
        ..steady
    }
}

/// A load close to where some check is just borne.
fn at_the_limit(joint: &Joint, case: BoltCase, dice: &mut Dice) -> BoltCase {
    let own = Joint {
        load: case.of(&joint.load),
        ..joint.clone()
    };
    let Ok(verdict) = own.check() else {
        return case;
    };
    let checks = &verdict.checks;
    let Some(check) = checks.get(dice.below(checks.len().max(1))) else {
        return case;
    };
    let times = 1.0 / check.utilisation.value * (1.0 + dice.between(-1e-3, 1e-3));
    if !(1e-9..1e9).contains(&times) {
        return case;
    }
    BoltCase {
        across: times * case.across,
        along: times * case.along,
        across_least: times * case.across_least,
        along_least: times * case.along_least,
    }
}

fn agree(joint: &Joint, prepared: &mut PreparedJoint, case: &BoltCase) -> Result<(), String> {
    let own = Joint {
        load: case.of(&joint.load),
        ..joint.clone()
    };
    match (prepared.answer(case), own.check()) {
        (Ok(answer), Ok(verdict)) => {
            let expected = CaseAnswer::from(&verdict);
            let (used, wanted) = (answer.utilisation.value, expected.utilisation.value);
            let close = (used - wanted).abs() <= 1e-9 * wanted;
            // The mode may be that of another check that comes out alike.
            let alike = verdict.checks.iter().any(|check| {
                Some(check.mode) == answer.mode
                    && (check.utilisation.value - wanted).abs() <= 1e-9 * wanted
            });
            let same_mode = answer.mode == expected.mode || alike;
            if answer.word == expected.word && close && same_mode {
                Ok(())
            } else {
                Err(format!(
                    "{answer:?} in place of {expected:?}\nunder {case:?}"
                ))
            }
        }
        (Err(a), Err(b)) if a == b => Ok(()),
        (a, b) => Err(format!("{a:?}\nand\n{b:?}\nunder {case:?}")),
    }
}

#[test]
fn it_answers_as_the_whole_check_does() {
    let kinds = [const { Cell::new(0_usize) }; 2];
    for_all(1500, |joint, dice| {
        let Ok(mut prepared) = joint.prepare() else {
            return Ok(());
        };
        let numbers = row(dice.below(1 << 16));
        let dice = &mut Dice::new(&numbers);
        for _ in 0..6 {
            let case = case(dice);
            agree(joint, &mut prepared, &case)?;
            let close = at_the_limit(joint, case, dice);
            agree(joint, &mut prepared, &close)?;
            let other = self::case(dice);
            agree(joint, &mut prepared, &other)?;
        }
        kinds[0].set(kinds[0].get() + 1);
        let unread = prepared.unread_kinds();
        if unread > 0 && std::env::var("SHOW_UNREAD").is_ok() {
            return Err(format!("{unread} unread"));
        }
        kinds[1].set(kinds[1].get() + usize::from(unread > 0));
        Ok(())
    });
    let [joints, slow] = kinds.each_ref().map(Cell::get);
    println!("{slow} of {joints} joints have a kind of load that is left to the whole check");
    assert!(20 * slow < joints, "{slow} of {joints} are slow");
}

/// Faults that begin at some pull, where slip has no figure of its own: EN 1993-1-8 has no allowable load for slip, so
/// that nothing is compared, and yet a pull above all of the clamp force lets the joint slip.
#[test]
fn a_pull_beyond_the_clamp_force_is_a_fault_without_a_figure() {
    use shankline::strength::slip::{SlipClass, SlipMethod};
    let slip = SlipMethod::En1993 {
        class: SlipClass::A,
        serviceability: false,
    };
    let scatter = NutFactor::new(0.17, 0.18, 0.19).unwrap();
    let ply = |builder: JointBuilder, name: &str| {
        let ply = builder.ply(name, "20 mm").material("S355 steel");
        ply.end_distance("60 mm")
            .edge_distance("50 mm")
            .width("100 mm")
    };
    let joint = ply(ply(Joint::builder("M20"), "gusset"), "beam")
        .across("1 kN")
        .along("1 kN")
        .methods(JointMethods {
            slip: Slip::Resisted(slip),
            ..JointMethods::machine_design(1.0)
        })
        .tightening(Tightening::Torque(
            TorqueTightening::new(scatter, PreloadTarget::Reusable).relaxation(percent(5.0)),
        ))
        .build()
        .unwrap();
    let left = joint.check().unwrap().preload.unwrap().in_service;
    let mut prepared = joint.prepare().unwrap();
    let mut words = Vec::new();
    for share in [0.1, 0.9, 0.99, 1.01, 1.05, 1.2, 2.0, 5.0] {
        let case = BoltCase::steady(newtons(100.0), share * left);
        agree(&joint, &mut prepared, &case).unwrap();
        words.push(prepared.answer(&case).unwrap().word);
    }
    assert_eq!(words[2..4], [Word::Undecided, Word::DoesNotHold]);
}
