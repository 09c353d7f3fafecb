//! The margins of NASA-STD-5020 against a calculation that was made outside this crate, and what must hold of any joint.

mod support;

use std::num::NonZeroU32;

use proptest::prelude::*;
use shankline::nasa_std_5020::*;
use shankline::parts::Zone;
use shankline::prelude::*;
use shankline::strength::check::Mode;
use shankline::tension::LoadShare;
use shankline::units::percent;
use support::{csv_rows, number};

/// What is done to a sound joint.
type Spoil = fn(&mut FastenedJoint);

/// Invented: a bolt of a davit whose joint parts before the bolt breaks.
fn davit() -> FastenedJoint {
    FastenedJoint {
        preload: NasaPreload::new(newtons(30e3), percent(25.0))
            .unwrap()
            .with_torque_tolerance(percent(95.0), percent(105.0))
            .unwrap()
            .with_creep(newtons(0.0))
            .unwrap()
            .with_thermal(newtons(1.5e3), newtons(2e3))
            .unwrap(),
        share: LoadShare::of_constant(0.30)
            .unwrap()
            .introduced_at(0.5)
            .unwrap(),
        allowable: Allowable {
            of: AllowableOf::WeakestPart,
            ultimate_tension: newtons(62e3),
            yield_tension: newtons(48e3),
            ultimate_shear: newtons(44e3),
            plane: Zone::Thread,
            bending: megapascals(1100.0),
        },
        factors: Factors {
            fitting: 1.15,
            ultimate: 1.4,
            yielding: 1.25,
            hazard: SeparationHazard::Critical,
        },
        loads: LimitLoads {
            tension: newtons(9e3),
            shear: newtons(6e3),
            bending: megapascals(60.0),
            cycles: LoadCycles::Static,
        },
        slip: JointSlip::Resisted {
            bolts: NonZeroU32::new(4).unwrap(),
            tension: newtons(36e3),
            shear: newtons(4e3),
            friction: SlipFriction::Other,
            factor: 1.0,
        },
    }
}

/// Invented: a bolt of a hatch, tightened so far that it breaks before the joint parts.
fn hatch() -> FastenedJoint {
    let six = NonZeroU32::new(6).unwrap();
    FastenedJoint {
        preload: NasaPreload::new(newtons(44e3), percent(35.0))
            .unwrap()
            .with_torque_tolerance(percent(97.0), percent(103.0))
            .unwrap()
            .not_separation_critical(six)
            .with_creep(newtons(400.0))
            .unwrap()
            .with_thermal(newtons(0.0), newtons(900.0))
            .unwrap(),
        share: LoadShare::of_constant(0.40).unwrap(),
        allowable: Allowable {
            of: AllowableOf::WeakestPart,
            ultimate_tension: newtons(66e3),
            yield_tension: newtons(62e3),
            ultimate_shear: newtons(44e3),
            plane: Zone::Shank,
            bending: megapascals(1100.0),
        },
        factors: Factors {
            fitting: 1.0,
            ultimate: 2.0,
            yielding: 1.5,
            hazard: SeparationHazard::None { test: 1.0 },
        },
        loads: LimitLoads {
            tension: newtons(5e3),
            shear: newtons(12e3),
            bending: megapascals(0.0),
            cycles: LoadCycles::Static,
        },
        slip: JointSlip::Resisted {
            bolts: six,
            tension: newtons(30e3),
            shear: newtons(20e3),
            friction: SlipFriction::Bare,
            factor: 1.25,
        },
    }
}

/// Invented: a bolt of a conveyor's end plate, tightened to 40 +- 2 N m, M10, nut factor 0.2, lubricated.
fn end_plate() -> FastenedJoint {
    FastenedJoint {
        preload: NasaPreload::new(newtons(20e3), percent(25.0))
            .unwrap()
            .with_torque_tolerance(percent(95.0), percent(105.0))
            .unwrap()
            .with_creep(newtons(0.0))
            .unwrap()
            .with_thermal(newtons(800.0), newtons(1.1e3))
            .unwrap(),
        share: LoadShare::of_constant(0.24)
            .unwrap()
            .introduced_at(0.5)
            .unwrap(),
        allowable: Allowable {
            of: AllowableOf::WeakestPart,
            ultimate_tension: newtons(45e3),
            yield_tension: newtons(30e3),
            ultimate_shear: newtons(27e3),
            plane: Zone::Thread,
            bending: megapascals(1100.0),
        },
        factors: Factors {
            fitting: 1.15,
            ultimate: 1.4,
            yielding: 1.1,
            hazard: SeparationHazard::Catastrophic,
        },
        loads: LimitLoads {
            tension: newtons(6e3),
            shear: newtons(3e3),
            bending: megapascals(0.0),
            cycles: LoadCycles::Static,
        },
        slip: JointSlip::Resisted {
            bolts: NonZeroU32::new(4).unwrap(),
            tension: newtons(24e3),
            shear: newtons(2e3),
            friction: SlipFriction::Other,
            factor: 1.0,
        },
    }
}

fn quantity(check: &FastenedCheck, name: &str) -> f64 {
    let margins = &check.margins;
    let both = check.combined.as_ref().unwrap();
    let force = |force: Force| force.value;
    match name {
        "Ppi-max" => force(check.preload.initial.max),
        "Ppi-min" => force(check.preload.initial.min),
        "Pp-max" => force(check.preload.service_max),
        "Pp-min" => force(check.preload.service_min),
        "Ppr" => force(check.preload.settling),
        "n phi" => check.joint.share.share.value,
        "P'sep" => force(check.separation_load.unwrap()),
        "P'tu" => force(check.rupture_load.unwrap()),
        "P'ty" => force(check.yield_load.unwrap()),
        "ultimate" => force(check.ultimate),
        "yield" => force(check.yielding),
        "MS ultimate" => margins.ultimate_tension.unwrap(),
        "MS yield" => margins.yielding.unwrap(),
        "FSsep" => check.joint.factors.separation(),
        "MS separation" => margins.separation.unwrap(),
        "MS shear" => margins.shear.unwrap(),
        "S" => both.shear.value,
        "T" => both.tension.value,
        "B" => both.bending.value,
        "sum" => {
            let (s, t) = if both.zone == Zone::Shank {
                (2.5, 1.5)
            } else {
                (1.2, 2.0)
            };
            both.shear.value.powf(s) + (both.tension.value + both.bending.value).powf(t)
        }
        "combined" => both.utilisation.value,
        "MS combined" => margins.combined.unwrap(),
        "MS slip" => margins.slip.unwrap(),
        other => panic!("{other}"),
    }
}

#[test]
fn steps_of_two_joints() {
    let joints = [
        ("davit", davit().check().unwrap()),
        ("hatch", hatch().check().unwrap()),
        ("end plate", end_plate().check().unwrap()),
    ];
    let rows = csv_rows("tests/data/nasa_std_5020_steps.csv");
    assert_eq!(rows.len(), 64);
    for row in &rows {
        let (_, check) = joints
            .iter()
            .find(|(name, _)| *name == row["joint"])
            .unwrap();
        let found = quantity(check, &row["quantity"]);
        let (expected, slack) = (
            number(row, "expected").unwrap(),
            number(row, "tolerance").unwrap(),
        );
        assert!(
            (found - expected).abs() <= slack,
            "{}: {found} and not {expected}",
            row["id"]
        );
    }
    for (name, check) in &joints {
        check.derivation().check().unwrap();
        assert_eq!(check.checks.len(), 6, "{name}");
        // Each bolt has more than its part of the shear of its joint.
        let missing: Vec<Mode> = check.missing.iter().map(|missing| missing.mode).collect();
        assert_eq!(missing, [Mode::Slip], "{name}");
    }
    let [(_, davit), (_, hatch), (_, end_plate)] = &joints;
    // The davit slips, the hatch yields under its load and has no room for shear beside its preload; all else holds.
    let failing = |check: &FastenedCheck| -> Vec<Mode> {
        let failing = check.checks.iter().filter(|check| !check.holds());
        failing.map(|check| check.mode).collect()
    };
    assert_eq!(failing(davit), [Mode::Slip]);
    assert_eq!(failing(hatch), [Mode::BoltTension, Mode::Combined]);
    assert!(davit.separates_before_rupture() && !hatch.separates_before_rupture());
    // With the least preload of Eq. 5, 14 693.75 N, the end plate would not slip: 0.4 x 14 693.75 / 5060 - 1 = 0.162.
    assert_eq!(failing(end_plate), [Mode::Slip]);
    assert_eq!((davit.holds(), hatch.holds()), (Some(false), Some(false)));
}

/// A joint on whose separation nothing hangs must not part in its test either: the factor of the test counts where it is above 1.
#[test]
fn the_factor_of_the_test_counts() {
    for (test, margin) in [(1.0, 5.690_502), (1.25, 6.690_502 / 1.25 - 1.0)] {
        let mut joint = hatch();
        joint.factors.hazard = SeparationHazard::None { test };
        let found = joint.check().unwrap().margins.separation.unwrap();
        assert!((found - margin).abs() < 1e-6, "{test}: {found}");
    }
    for test in [0.99, f64::NAN, 1e3] {
        let mut joint = hatch();
        joint.factors.hazard = SeparationHazard::None { test };
        assert!(joint.check().is_err(), "{test}");
    }
}

/// A margin and its check say the same, on both sides of nothing.
#[test]
fn each_margin_turns_where_its_check_does() {
    let of = |spoil: &dyn Fn(&mut FastenedJoint)| {
        let mut joint = FastenedJoint {
            slip: JointSlip::Permitted,
            ..davit()
        };
        spoil(&mut joint);
        joint.check().unwrap()
    };
    // 18 306.25 N over 1.15 x 1.25
    let parts = 18_306.25 / (1.15 * 1.25);
    for (share, holds) in [(0.9999, true), (1.0001, false)] {
        let check = of(&|joint| {
            joint.loads = LimitLoads {
                tension: newtons(share * parts),
                shear: newtons(0.0),
                bending: megapascals(0.0),
                cycles: LoadCycles::Static,
            };
        });
        assert_eq!(check.margins.separation.unwrap() >= 0.0, holds);
        assert_eq!(check.holds(), Some(holds));
        assert_eq!(check.governing().unwrap().mode, Mode::Separation);
        assert_eq!((check.margins.shear, check.margins.combined), (None, None));
        // 44 kN over 1.15 x 1.4
        let check = of(&|joint| {
            joint.loads = LimitLoads {
                tension: newtons(0.0),
                shear: newtons(share * 44e3 / (1.15 * 1.4)),
                bending: megapascals(0.0),
                cycles: LoadCycles::Static,
            };
        });
        assert_eq!(check.margins.shear.unwrap() >= 0.0, holds);
        assert_eq!(check.holds(), Some(holds));
        // 4 x 0.1 x 18 306.25 N over 1.15, beside no tension
        let check = of(&|joint| {
            let shear = newtons(share * 0.4 * 18_306.25 / 1.15);
            joint.loads.shear = shear / 4.0;
            joint.slip = JointSlip::Resisted {
                bolts: NonZeroU32::new(4).unwrap(),
                tension: newtons(0.0),
                shear,
                friction: SlipFriction::Other,
                factor: 1.0,
            };
        });
        assert_eq!(check.margins.slip.unwrap() >= 0.0, holds);
        assert_eq!(check.holds(), Some(holds));
    }
}

#[test]
fn what_nobody_said_is_missing() {
    let sound = FastenedJoint {
        slip: JointSlip::Permitted,
        ..davit()
    };
    assert_eq!(sound.check().unwrap().holds(), Some(true));
    let mut repeated = sound.clone();
    repeated.loads.cycles = LoadCycles::Repeated;
    let mut alone = sound.clone();
    alone.allowable.of = AllowableOf::Bolt;
    for (joint, mode) in [(repeated, Mode::Fatigue), (alone, Mode::Stripping)] {
        let check = joint.check().unwrap();
        assert_eq!(check.holds(), None);
        assert_eq!(check.missing.len(), 1);
        assert_eq!(check.missing[0].mode, mode);
    }
}

#[test]
fn what_has_no_meaning_is_refused() {
    let spoils: [Spoil; 16] = [
        |joint| joint.factors.fitting = 0.99,
        |joint| joint.factors.ultimate = 0.0,
        |joint| joint.factors.yielding = f64::NAN,
        |joint| joint.factors.ultimate = 1e3,
        |joint| joint.allowable.ultimate_tension = newtons(0.0),
        |joint| joint.allowable.yield_tension = newtons(63e3),
        |joint| joint.allowable.ultimate_shear = newtons(-1.0),
        |joint| joint.allowable.bending = megapascals(0.0),
        |joint| joint.loads.tension = newtons(-1.0),
        |joint| joint.loads.shear = newtons(f64::INFINITY),
        |joint| joint.loads.bending = megapascals(-1.0),
        |joint| joint.preload = joint.preload.with_creep(newtons(25e3)).unwrap(),
        |joint| {
            joint.preload = joint
                .preload
                .not_separation_critical(NonZeroU32::new(4).unwrap());
        },
        |joint| {
            if let JointSlip::Resisted { friction, .. } = &mut joint.slip {
                *friction = SlipFriction::Tested(1.2);
            }
        },
        |joint| {
            if let JointSlip::Resisted { factor, .. } = &mut joint.slip {
                *factor = 0.5;
            }
        },
        |joint| {
            if let JointSlip::Resisted { shear, .. } = &mut joint.slip {
                *shear = newtons(f64::NAN);
            }
        },
    ];
    for (number, spoil) in spoils.into_iter().enumerate() {
        let mut joint = davit();
        spoil(&mut joint);
        assert!(joint.check().is_err(), "{number}");
    }
    // Nothing hangs on the separation: then the scatter may average out.
    let mut joint = davit();
    joint.factors.hazard = SeparationHazard::None { test: 1.0 };
    joint.preload = joint
        .preload
        .not_separation_critical(NonZeroU32::new(4).unwrap());
    assert!(joint.check().is_ok());
}

/// Tightened beyond what it bears, a bolt holds under no load.
#[test]
fn a_bolt_that_tightening_breaks_does_not_hold() {
    for tension in [0.0, 1.0, 9e3] {
        let mut joint = davit();
        joint.slip = JointSlip::Permitted;
        joint.preload = NasaPreload::new(newtons(50e3), percent(25.0)).unwrap();
        joint.loads.tension = newtons(tension);
        let check = joint.check().unwrap();
        assert!(check.rupture_load.unwrap() < newtons(0.0));
        assert_eq!(check.holds(), Some(false));
        check.derivation().check().unwrap();
    }
}

/// Members that are rigid hide no bolt that its preload breaks.
#[test]
fn rigid_members_do_not_save_a_broken_bolt() {
    for (nominal, holds) in [(35e3, true), (50e3, false), (49.6e3, false)] {
        let mut joint = davit();
        joint.slip = JointSlip::Permitted;
        joint.share = LoadShare::rigid_members();
        joint.preload = all_said(nominal, 25.0);
        let check = joint.check().unwrap();
        assert_eq!(check.rupture_load, None);
        assert_eq!(check.holds(), Some(holds), "{nominal}");
        check.derivation().check().unwrap();
        // 49.6 kN and a quarter are the 62 kN that break it.
        joint.loads.tension = newtons(70e3);
        assert_eq!(joint.check().unwrap().holds(), Some(false));
    }
}

/// What the joint needs to hold, so that one thing alone can be spoilt.
fn sound() -> FastenedJoint {
    FastenedJoint {
        slip: JointSlip::Permitted,
        ..davit()
    }
}

/// A preload of which nothing but the scatter moves, and this is said.
fn all_said(nominal: f64, variation: f64) -> NasaPreload {
    let (none, whole) = (newtons(0.0), percent(100.0));
    NasaPreload::new(newtons(nominal), percent(variation))
        .and_then(|preload| preload.with_torque_tolerance(whole, whole))
        .and_then(|preload| preload.with_creep(none))
        .and_then(|preload| preload.with_thermal(none, none))
        .unwrap()
}

/// Silence on the torque, on creep or on heat is no statement that there is none.
#[test]
fn what_nobody_said_of_the_preload_is_missing() {
    let holds = |preload: NasaPreload| {
        let check = FastenedJoint { preload, ..sound() }.check().unwrap();
        let missing = check.missing.iter().map(|missing| missing.mode);
        (check.holds(), missing.collect::<Vec<_>>())
    };
    let none = newtons(0.0);
    let whole = percent(100.0);
    let bare = NasaPreload::new(newtons(30e3), percent(25.0)).unwrap();
    assert_eq!(
        holds(bare),
        (None, vec![Mode::Tightening, Mode::Settling, Mode::Settling])
    );
    let torque = bare.with_torque_tolerance(whole, whole).unwrap();
    assert_eq!(holds(torque), (None, vec![Mode::Settling, Mode::Settling]));
    let creep = torque.with_creep(none).unwrap();
    assert_eq!(holds(creep), (None, vec![Mode::Settling]));
    let all = creep.with_thermal(none, none).unwrap();
    assert_eq!(holds(all), (Some(true), vec![]));
}

/// Of no project is the factor on yield the greater: the two were swapped.
#[test]
fn swapped_factors_are_refused() {
    let mut joint = sound();
    (joint.factors.ultimate, joint.factors.yielding) = (1.25, 1.4);
    let error = joint.check().unwrap_err().to_string();
    assert!(error.contains("yield factor"), "{error}");
    joint.factors.ultimate = 1.4;
    assert_eq!(joint.check().unwrap().holds(), Some(true));
}

/// A worse hazard never wants less against separation.
#[test]
fn a_catastrophe_wants_no_less_than_a_critical_hazard() {
    for (ultimate, yielding) in [(1.0, 1.0), (1.1, 1.1), (1.25, 1.25), (1.4, 1.0), (2.0, 1.5)] {
        let factor = |hazard| {
            Factors {
                fitting: 1.15,
                ultimate,
                yielding,
                hazard,
            }
            .separation()
        };
        let critical = factor(SeparationHazard::Critical);
        assert!(
            factor(SeparationHazard::Catastrophic) >= critical,
            "{ultimate}"
        );
    }
}

/// The fields of a share are open: one that is none is refused.
#[test]
fn a_share_that_is_none_is_refused() {
    for share in [f64::NAN, -0.5, -1e9, 1.000_1, 5.0, f64::INFINITY] {
        let mut joint = sound();
        joint.share.share = Ratio::from(share);
        assert!(joint.check().is_err(), "{share}");
    }
}

/// Rigid members, and a preload that is all the bolt bears to the newton: margins and checks agree, and the shear beside it is
/// looked at.
#[test]
fn a_preload_that_is_the_allowable_hides_no_other_check() {
    let none = newtons(0.0);
    let mut joint = sound();
    joint.share = LoadShare::rigid_members();
    joint.preload = all_said(62e3, 0.0);
    joint.allowable.yield_tension = newtons(62e3);
    joint.loads.bending = megapascals(0.0);
    // 99 % of the shear that it bears alone.
    joint.loads.shear = newtons(0.99 * 44e3 / (1.15 * 1.4));
    let check = joint.check().unwrap();
    assert_eq!(check.holds(), Some(false));
    assert!(check.margins.combined.unwrap() < 0.0);
    joint.loads.shear = none;
    let check = joint.check().unwrap();
    assert_eq!(check.holds(), Some(true));
    assert!(check.margins.yielding.unwrap() >= 0.0);
}

/// Shear meets the tension that is in the bolt: of a joint that stays closed until the bolt breaks, preload and share of the load.
#[test]
fn shear_beside_a_bolt_that_is_full_of_preload() {
    let mut joint = sound();
    joint.preload = all_said(45e3, 0.0);
    joint.share = LoadShare::of_constant(0.5).unwrap();
    joint.loads.tension = newtons(100.0);
    joint.loads.bending = megapascals(0.0);
    joint.loads.shear = newtons(0.98 * 44e3 / (1.15 * 1.4));
    let check = joint.check().unwrap();
    assert!(!check.separates_before_rupture());
    // (45 kN + 0.5 x 161 N) / 62 kN
    let both = check.combined.as_ref().unwrap();
    assert!((both.tension.value - 45_080.5 / 62e3).abs() < 1e-12);
    assert_eq!(check.holds(), Some(false));
    check.derivation().check().unwrap();
}

/// The scatter averages out over the bolts of the joint, and not over those of another one.
#[test]
fn the_bolts_of_slip_and_of_preload_are_the_same() {
    let mut joint = sound();
    joint.factors.hazard = SeparationHazard::None { test: 1.0 };
    for (bolts, sound) in [(4, true), (100, false), (2, false)] {
        let preload = joint.preload;
        joint.preload = preload.not_separation_critical(NonZeroU32::new(bolts).unwrap());
        joint.slip = davit().slip;
        assert_eq!(joint.check().is_ok(), sound, "{bolts}");
    }
}

/// The loads of the bolt and of its joint, where both are stated, say the same.
#[test]
fn slip_beside_the_loads_of_the_bolt() {
    let of = |bolts, tension: f64, shear: f64| {
        let slip = JointSlip::Resisted {
            bolts: NonZeroU32::new(bolts).unwrap(),
            tension: newtons(tension),
            shear: newtons(shear),
            friction: SlipFriction::Tested(1.0),
            factor: 1.0,
        };
        FastenedJoint { slip, ..sound() }.check()
    };
    // The bolt has 9 kN and 6 kN.
    assert_eq!(of(4, 30e3, 24e3).unwrap().holds(), Some(true));
    // A moment in the plane, or one bolt without its fellows: the sum knows nothing of it.
    for (bolts, shear) in [(4, 0.0), (4, 4e3), (1, 100.0)] {
        let check = of(bolts, 0.0, shear).unwrap();
        assert_eq!(check.holds(), None, "{shear}");
        assert_eq!(check.missing[0].mode, Mode::Slip);
    }
    // The most loaded bolt has its part at least.
    assert!(of(4, 37e3, 24e3).is_err());
    assert!(of(4, 30e3, 25e3).is_err());
}

/// No metal bears more in shear than in tension, and none yields after it breaks.
#[test]
fn swapped_strengths_are_refused() {
    let thread: Thread = "M10".parse().unwrap();
    let of = |tensile, yielding, shear| {
        let [tensile, yielding, shear] = [tensile, yielding, shear].map(megapascals);
        Allowable::of_strengths(&thread, tensile, yielding, shear, Zone::Shank)
    };
    assert!(of(1100.0, 830.0, 650.0).is_ok());
    assert!(of(650.0, 830.0, 1100.0).is_err());
    assert!(of(1100.0, 830.0, 6500.0).is_err());
    assert!(of(830.0, 1100.0, 650.0).is_err());
}

/// TFSR 8: whether the joint may slip changes no margin but that of slip, so friction takes no shear from the bolt.
#[test]
fn friction_carries_no_ultimate_load() {
    let held = davit().check().unwrap();
    let free = FastenedJoint {
        slip: JointSlip::Permitted,
        ..davit()
    };
    let free = free.check().unwrap();
    assert!(held.margins.slip.is_some());
    let mut but_slip = held.margins;
    but_slip.slip = None;
    assert_eq!(but_slip, free.margins);
}

/// Eq. 4 and 5: of a separation-critical joint slip has the lesser preload, that of Eq. 4: 0.95 x 40 kN x 0.65 in place of
/// 0.95 x 40 kN x (1 - 0.35 / 2) of four bolts, less 5 %, over 1.15.
#[test]
fn slip_has_no_more_preload_than_its_joint() {
    let four = NonZeroU32::new(4).unwrap();
    let margin = |preload: NasaPreload, hazard| {
        let joint = FastenedJoint {
            preload: preload
                .with_torque_tolerance(percent(95.0), percent(105.0))
                .unwrap()
                .with_creep(newtons(0.0))
                .unwrap()
                .with_thermal(newtons(0.0), newtons(0.0))
                .unwrap(),
            factors: Factors {
                hazard,
                ..davit().factors
            },
            loads: LimitLoads {
                tension: newtons(0.0),
                shear: newtons(1e3),
                ..davit().loads
            },
            slip: JointSlip::Resisted {
                bolts: four,
                tension: newtons(0.0),
                shear: newtons(4e3),
                friction: SlipFriction::Other,
                factor: 1.0,
            },
            ..davit()
        };
        joint.check().unwrap().margins.slip.unwrap()
    };
    let all = NasaPreload::new(newtons(40e3), percent(35.0)).unwrap();
    let holds = |share: f64| 0.4 * 0.95 * 0.95 * 40e3 * share / (1.15 * 4e3) - 1.0;
    let critical = margin(all, SeparationHazard::Critical);
    assert!((critical - holds(0.65)).abs() < 1e-9);
    let averaged = margin(
        all.not_separation_critical(four),
        SeparationHazard::None { test: 1.0 },
    );
    assert!((averaged - holds(1.0 - 0.35 / 2.0)).abs() < 1e-9);
}

/// Slip brings no caution of its own, and a low fitting factor is against advice.
#[test]
fn cautions() {
    let count = |joint: &FastenedJoint| joint.check().unwrap().cautions().iter().count();
    let mut joint = davit();
    let before = count(&joint);
    joint.factors.fitting = 1.0;
    assert_eq!(count(&joint), before + 1);
    joint.slip = JointSlip::Permitted;
    assert_eq!(count(&joint), before + 1);
    // No way of tightening is without scatter, as far as is recalled.
    for (variation, more) in [(25.0, 0), (1.0, 0), (0.9, 1), (0.0, 1)] {
        joint.preload = all_said(30e3, variation);
        assert_eq!(count(&joint), before + 1 + more, "{variation}");
    }
}

prop_compose! {
    fn joints()(
        nominal in 5e3..60e3f64, variation in 5.0..40.0f64, c in 0.0..=1.0f64, n in 0.05..=1.0f64,
        ultimate in 20e3..90e3f64, yields in 0.5..=1.0f64, fitting in 1.0..1.3f64, fsu in 1.0..3.0f64, fsy in 0.0..=1.0f64,
        tension in 0.0..40e3f64, shear in 0.0..40e3f64, bending in 1.0..500.0f64, bent: bool, thread: bool, hazard in 0..3usize,
    ) -> FastenedJoint {
        FastenedJoint {
            preload: NasaPreload::new(newtons(nominal), percent(variation)).unwrap(),
            share: LoadShare::of_constant(c).unwrap().introduced_at(n).unwrap(),
            allowable: Allowable {
                of: AllowableOf::WeakestPart,
                ultimate_tension: newtons(ultimate),
                yield_tension: newtons(yields * ultimate),
                ultimate_shear: newtons(0.6 * ultimate),
                plane: if thread { Zone::RunOut } else { Zone::Shank },
                bending: megapascals(1000.0),
            },
            factors: Factors {
                fitting,
                ultimate: fsu,
                yielding: 1.0 + fsy * (fsu - 1.0),
                hazard: [SeparationHazard::None { test: 1.0 }, SeparationHazard::Critical, SeparationHazard::Catastrophic][hazard],
            },
            loads: LimitLoads {
                tension: newtons(tension),
                shear: newtons(shear),
                bending: megapascals(if bent { bending } else { 0.0 }),
                cycles: LoadCycles::Static,
            },
            slip: JointSlip::Permitted,
        }
    }
}

proptest! {
    /// Whichever comes first, the allowable is the lesser of the two: the branch of the standard has no step in it. Workings are
    /// true, margins and checks agree, and more load never helps.
    #[test]
    fn of_any_joint(joint in joints(), more in 1.0..2.0f64) {
        let check = joint.check().unwrap();
        check.derivation().check().unwrap();
        for (counts, closed, own) in [
            (check.ultimate, check.rupture_load, joint.allowable.ultimate_tension),
            (check.yielding, check.yield_load, joint.allowable.yield_tension),
        ] {
            let lesser = closed.map_or(own, |closed| closed.min(own));
            prop_assert!((counts - lesser).abs() <= 1e-9 * own, "{counts:?} {lesser:?}");
        }
        let margins = &check.margins;
        let all = [
            margins.ultimate_tension, margins.yielding, margins.separation, margins.shear, margins.combined,
        ];
        let least = all.into_iter().flatten().fold(f64::INFINITY, f64::min);
        let used = check.governing().unwrap().utilisation.value;
        if (used - 1.0).abs() > 1e-9 {
            // A bolt without a load has no margin, and may be broken all the same.
            prop_assert!((least >= 0.0) == (used <= 1.0) || least.is_infinite() || joint.loads.tension == newtons(0.0));
        }
        let mut heavier = joint.clone();
        heavier.loads.tension = more * heavier.loads.tension;
        heavier.loads.shear = more * heavier.loads.shear;
        heavier.loads.bending = more * heavier.loads.bending;
        let heavier = heavier.check().unwrap();
        prop_assert!(heavier.governing().unwrap().utilisation.value >= used * (1.0 - 1e-12));
    }

    #[test]
    fn no_number_breaks_it(figures in prop::array::uniform10(any::<f64>())) {
        let [a, b, c, d, e, f, g, h, i, k] = figures;
        let mut joint = davit();
        joint.allowable.ultimate_tension = newtons(a);
        joint.allowable.yield_tension = newtons(b);
        joint.allowable.ultimate_shear = newtons(c);
        joint.allowable.bending = megapascals(d);
        joint.loads.tension = newtons(e);
        joint.loads.shear = newtons(f);
        joint.loads.bending = megapascals(g);
        joint.factors.fitting = h;
        joint.factors.ultimate = i;
        joint.factors.yielding = k;
        if let Ok(check) = joint.check() {
            prop_assert!(check.checks.iter().all(|check| check.utilisation.value.is_finite()));
        }
    }
}
