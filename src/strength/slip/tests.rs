use super::*;
use crate::error::Amount;
use crate::strength::shear::AiscEdition;
use crate::units::{kip, newtons, pounds_force};
use alloc::string::ToString;
use proptest::prelude::*;

fn standard(count: usize) -> SlipFaces {
    SlipFaces::new(count, SlipHole::Standard)
}

/// Of the kind that the method takes.
fn of(method: SlipMethod, force: Force) -> SlipPreload {
    if method.wants_specified_preload() {
        SlipPreload::Specified(force)
    } else {
        SlipPreload::Least(force)
    }
}

/// Quimby, A Beginner's Guide to the Steel Construction Manual, 13th ed., Example 4.1 (AISC
/// 360-05): eleven 3/4 in A325, class A: 11.1 a bolt, 122 in all, 81.2 kip allowable.
#[test]
fn published_splice() {
    let method = SlipMethod::Aisc360 {
        edition: AiscEdition::E2005,
        class: SlipClass::A,
    };
    let slip = slip_resistance(
        method,
        SlipPreload::Specified(pounds_force(28e3)),
        standard(1),
        newtons(0.0),
    )
    .unwrap();
    let at = |level| slip.resistance.at(level).unwrap().get::<kip>();
    assert!((at(Level::Nominal) - 11.1).abs() < 0.05);
    assert!((11.0 * at(Level::Design) - 122.0).abs() < 0.5);
    assert!((11.0 * at(Level::Allowable) - 81.2).abs() < 0.05);
}

/// Each kind of hole, factor and treatment of IS 800, and what of them was recalled.
#[test]
fn holes_and_factors_of_is_800() {
    let of = |surface, serviceability, hole| {
        let method = SlipMethod::Is800 {
            surface,
            serviceability,
        };
        let found = slip_resistance(
            method,
            SlipPreload::Specified(newtons(1e5)),
            SlipFaces::new(2, hole),
            newtons(0.0),
        );
        let found = found.unwrap();
        let design = found.resistance.at(Level::Design).unwrap().value;
        (design / 2e5, found.cautions().iter().count())
    };
    for (hole, kh) in [
        (SlipHole::Standard, 1.0),
        (SlipHole::Oversize, 0.85),
        (SlipHole::ShortSlotAcross, 0.85),
        (SlipHole::ShortSlotAlong, 0.85),
        (SlipHole::LongSlotAcross, 0.85),
        (SlipHole::LongSlotAlong, 0.7),
    ] {
        for (surface, mu, unread) in [
            (Is800Surface::Untreated, 0.20, 0),
            (Is800Surface::CleanMillScale, 0.33, 1),
            (Is800Surface::Blasted, 0.50, 1),
            (Is800Surface::SprayedZinc, 0.25, 1),
            (Is800Surface::SprayedAluminium, 0.50, 1),
            (Is800Surface::ZincSilicate, 0.30, 1),
            (Is800Surface::Galvanized, 0.10, 1),
            (Is800Surface::RedLead, 0.10, 1),
        ] {
            let (ultimate, cautions) = of(surface, false, hole);
            assert!(
                (ultimate - mu * kh / 1.25).abs() < 1e-12,
                "{surface} {hole:?}"
            );
            assert_eq!(cautions, unread, "{surface}");
            let (service, cautions) = of(surface, true, hole);
            assert!(
                (service - mu * kh / 1.10).abs() < 1e-12,
                "{surface} {hole:?}"
            );
            assert_eq!(cautions, 1, "{surface}");
        }
    }
}

/// IS 800 10.4.6 at its ends: without tension all is left, and Tdf = 0.9 fub Anb / 1.25 leaves nothing.
#[test]
fn ellipse_of_is_800() {
    let method = SlipMethod::Is800 {
        surface: Is800Surface::Untreated,
        serviceability: false,
    };
    let left = |tension: f64| {
        slip_resistance(
            method,
            of(method, newtons(0.7e5)),
            standard(1),
            newtons(tension),
        )
        .map(|found| found.resistance.at(Level::Design).unwrap().value / (0.2 * 0.7e5 / 1.25))
    };
    let most = 0.9e5 / 1.25;
    for part in [0.0, 0.3, 0.6, 0.8, 0.999] {
        let found = left(part * most).unwrap();
        assert!((found * found + part * part - 1.0).abs() < 1e-12, "{part}");
    }
    assert!(left(1.0001 * most).is_err());
    assert!(left(1.2 * most).is_err());
}

/// Each kind of hole by BS 5950-1 and AS 4100, their factors, and the levels they give.
#[test]
fn holes_and_factors_of_bs_5950_and_as_4100() {
    let of = |method: SlipMethod, hole| {
        let preload = SlipPreload::Specified(newtons(1e5));
        let found = slip_resistance(method, preload, SlipFaces::new(2, hole), newtons(0.0));
        let found = found.unwrap();
        // Both have recalled parts always.
        assert_eq!(found.cautions().iter().count(), 1);
        assert_eq!(
            found.resistance.nominal.is_some(),
            method.levels().contains(&Level::Nominal)
        );
        assert!(found.resistance.allowable.is_none());
        found.resistance.at(Level::Design).unwrap().value / 2e5
    };
    for (hole, ks, kh) in [
        (SlipHole::Standard, 1.0, 1.0),
        (SlipHole::Oversize, 0.85, 0.85),
        (SlipHole::ShortSlotAcross, 0.85, 0.85),
        (SlipHole::ShortSlotAlong, 0.85, 0.85),
        (SlipHole::LongSlotAcross, 0.85, 0.7),
        (SlipHole::LongSlotAlong, 0.6, 0.7),
    ] {
        for (class, mu) in [
            (SlipClass::A, 0.5),
            (SlipClass::B, 0.4),
            (SlipClass::C, 0.3),
            (SlipClass::D, 0.2),
        ] {
            for (serviceability, factor) in [(false, 0.9), (true, 1.1)] {
                let method = SlipMethod::Bs5950 {
                    class,
                    serviceability,
                };
                assert!(
                    (of(method, hole) - factor * ks * mu).abs() < 1e-12,
                    "{hole:?}"
                );
                assert_eq!(method.wants_factored_loads(Level::Design), !serviceability);
            }
        }
        let rolled = SlipMethod::As4100 {
            faces: As4100Faces::AsRolled,
        };
        assert!(
            (of(rolled, hole) - 0.7 * 0.35 * kh).abs() < 1e-12,
            "{hole:?}"
        );
        assert!(!rolled.wants_factored_loads(Level::Design));
    }
}

/// What tension leaves by BS 5950-1 6.4.4 and AS 4100 9.3.3.3 (recalled), and the workings of both.
#[test]
fn lines_of_bs_5950_and_as_4100() {
    let bs = |serviceability| SlipMethod::Bs5950 {
        class: SlipClass::C,
        serviceability,
    };
    let rolled = SlipMethod::As4100 {
        faces: As4100Faces::AsRolled,
    };
    for (method, most) in [(bs(false), 0.9), (bs(true), 1.1), (rolled, 0.7)] {
        let left = |tension: f64| {
            let force = SlipPreload::Specified(newtons(1e5));
            slip_resistance(method, force, standard(1), newtons(tension)).map(|found| {
                found.derivation().check().unwrap();
                found.resistance.at(Level::Design).unwrap().value
            })
        };
        let whole = left(0.0).unwrap();
        let half = left(0.5e5 * most).unwrap();
        assert!((half / whole - 0.5).abs() < 1e-12, "{method}");
        assert!(left(1.0001e5 * most).is_err(), "{method}");
    }
}

#[test]
fn fillers_that_nobody_read_of_are_refused() {
    let methods = [
        SlipMethod::Is800 {
            surface: Is800Surface::Untreated,
            serviceability: false,
        },
        SlipMethod::Bs5950 {
            class: SlipClass::D,
            serviceability: false,
        },
        SlipMethod::As4100 {
            faces: As4100Faces::AsRolled,
        },
    ];
    for method in methods {
        let faces = SlipFaces {
            fillers: 1,
            ..standard(1)
        };
        let found = slip_resistance(method, of(method, newtons(1e5)), faces, newtons(0.0));
        assert!(matches!(found, Err(Error::NoValue { .. })), "{method}");
    }
}

/// AISC 360-05 J3.8 (recalled): slip in oversize holes and along slots is excluded at the required strength
/// level, 0.85 and 1.76, beside the hole factor.
#[test]
fn strength_level_of_2005() {
    for (hole, hsc, phi, omega, cautions) in [
        (SlipHole::Standard, 1.00, 1.00, 1.50, 0),
        (SlipHole::Oversize, 0.85, 0.85, 1.76, 1),
        (SlipHole::ShortSlotAcross, 0.85, 1.00, 1.50, 0),
        (SlipHole::ShortSlotAlong, 0.85, 0.85, 1.76, 1),
        (SlipHole::LongSlotAcross, 0.70, 1.00, 1.50, 0),
        (SlipHole::LongSlotAlong, 0.70, 0.85, 1.76, 1),
    ] {
        let method = SlipMethod::Aisc360 {
            edition: AiscEdition::E2005,
            class: SlipClass::A,
        };
        let slip = slip_resistance(
            method,
            of(method, newtons(1e5)),
            SlipFaces::new(2, hole),
            newtons(0.0),
        )
        .unwrap();
        let nominal = 0.35 * 1.13 * hsc * 2.0 * 1e5;
        for (level, expected) in [
            (Level::Nominal, nominal),
            (Level::Design, phi * nominal),
            (Level::Allowable, nominal / omega),
        ] {
            let found = slip.resistance.at(level).unwrap().value;
            assert!((found / expected - 1.0).abs() < 1e-12, "{hole:?} {level}");
        }
        assert_eq!(slip.cautions().iter().count(), cautions, "{hole:?}");
    }
}

/// The greatest tension a refusal names is the one at which the clamp force is gone.
#[test]
fn refusal_names_the_tension_that_opens_the_joint() {
    let aisc = SlipMethod::Aisc360 {
        edition: AiscEdition::E2010,
        class: SlipClass::A,
    };
    let en = SlipMethod::En1993 {
        class: SlipClass::A,
        serviceability: false,
    };
    let stated = SlipMethod::Stated {
        friction: 0.2,
        safety_factor: 1.5,
    };
    let limit = |error| match error {
        Error::OutOfRange {
            allowed: Allowed::AtMost(Amount::Force(most)),
            ..
        } => most.value,
        other => panic!("{other}"),
    };
    for (method, share) in [(aisc, 1.13), (en, 1.25), (stated, 1.0)] {
        for tension in [3e5, 1e60] {
            let error = slip_resistance(
                method,
                of(method, newtons(1e5)),
                standard(1),
                newtons(tension),
            );
            assert!((limit(error.unwrap_err()) / (share * 1e5) - 1.0).abs() < 1e-12);
        }
    }
    // 0.9 of the preload leaves clamp force for design loads and none for service loads.
    let slip = slip_resistance(aisc, of(aisc, newtons(1e5)), standard(1), newtons(9e4)).unwrap();
    assert!(slip.check(newtons(1.0), Level::Design).is_ok());
    let error = slip.check(newtons(1.0), Level::Allowable).unwrap_err();
    assert!((limit(error) / (1.13 / 1.5 * 1e5) - 1.0).abs() < 1e-12);
}

proptest! {
    #[test]
    fn grows_with_preload_and_falls_with_tension(
        preload in 1.0..1e6f64, tension in 0.0..1e6f64, faces in 1..9usize, mu in 0.05..0.8f64,
    ) {
        let methods = [
            SlipMethod::Stated { friction: mu, safety_factor: 1.5 },
            SlipMethod::En1993 { class: SlipClass::C, serviceability: true },
            SlipMethod::Is800 { surface: Is800Surface::Untreated, serviceability: false },
            SlipMethod::As4100 { faces: As4100Faces::Tested { slip_factor: mu } },
            SlipMethod::Aisc360 {
                edition: AiscEdition::E2016, class: SlipClass::B,
            },
        ];
        for method in methods {
            let nominal = |preload: f64, tension: f64| {
                slip_resistance(method, of(method, newtons(preload)), standard(faces), newtons(tension))
                    .map(|slip| slip.resistance.nominal.unwrap().value)
            };
            let whole = nominal(preload, 0.0).unwrap();
            prop_assert!(nominal(2.0 * preload, 0.0).unwrap() > whole);
            if let Ok(less) = nominal(preload, tension) {
                prop_assert!(less <= whole);
                let slip = slip_resistance(method, of(method, newtons(preload)), standard(faces), newtons(tension)).unwrap();
                prop_assert!(slip.derivation().check().is_ok());
                let load = slip.resistance.nominal.unwrap();
                let check = slip.check(load, Level::Nominal).unwrap();
                prop_assert!((check.utilisation.value - 1.0).abs() < 1e-15);
            }
        }
    }

    #[test]
    fn no_number_breaks_it(p in any::<f64>(), t in any::<f64>(), mu in any::<f64>(), n in any::<f64>(), faces: usize) {
        let method = SlipMethod::Stated { friction: mu, safety_factor: n };
        if let Ok(slip) = slip_resistance(method, SlipPreload::Least(newtons(p)), standard(faces), newtons(t)) {
            prop_assert!(slip.resistance.nominal.unwrap().value > 0.0);
        }
    }
}

/// A pull that takes all of the clamp force leaves no resistance, at the limit itself: Fi of machine design, 1.13 Tb of AISC,
/// of which service loads take 1.5 times as much.
#[test]
fn pulls_that_leave_no_clamp_force() {
    let stated = SlipMethod::Stated {
        friction: 0.2,
        safety_factor: 2.0,
    };
    let left = |method, preload, pull| slip_resistance(method, preload, standard(1), newtons(pull));
    let preload = SlipPreload::Least(newtons(1000.0));
    assert!(left(stated, preload, 999.0).is_ok());
    let error = left(stated, preload, 1000.0).unwrap_err().to_string();
    assert!(error.contains("which must leave clamp force"), "{error}");
    let aisc = SlipMethod::Aisc360 {
        edition: AiscEdition::E2022,
        class: SlipClass::A,
    };
    let preload = SlipPreload::Specified(newtons(1500.0));
    for (pull, holds) in [(1129.0, true), (1130.0, false), (1131.0, false)] {
        let found = left(aisc, preload, pull).unwrap();
        assert_eq!(found.resistance.allowable.is_some(), holds, "{pull}");
        assert!(found.check(newtons(0.1), Level::Design).is_ok());
        match found.check(newtons(0.1), Level::Allowable) {
            Ok(_) => assert!(holds, "{pull}"),
            Err(error) => {
                let text = error.to_string();
                assert!(
                    !holds && text.contains("which must leave clamp force"),
                    "{pull}: {text}"
                );
            }
        }
    }
}

/// A check under a pull does not grow in proportion with the load; the interplay of EN 1993-1-8 was recalled.
#[test]
fn a_pull_is_told() {
    let en = SlipMethod::En1993 {
        class: SlipClass::A,
        serviceability: false,
    };
    for (pull, proportional, cautions) in [(0.0, true, 0), (1.0, false, 1)] {
        let preload = of(en, newtons(1e5));
        let found = slip_resistance(en, preload, standard(1), newtons(pull)).unwrap();
        assert_eq!(found.cautions().iter().count(), cautions);
        let check = found.check(newtons(1.0), Level::Design).unwrap();
        assert_eq!(check.proportional, proportional);
        assert_eq!(check.cautions().count(), cautions);
    }
}

/// IS 800 10.4.6: without a pull the ellipse and statics are one, and a load at the resistance is not beyond it; half of what
/// the ellipse ends at, 0.9 / (1.25 x 0.7) of the preload, leaves 0.866 by it and 0.486 by statics.
#[test]
fn the_ellipse_goes_beyond_statics() {
    let is = SlipMethod::Is800 {
        surface: Is800Surface::Untreated,
        serviceability: false,
    };
    let found =
        |pull| slip_resistance(is, of(is, newtons(70e3)), standard(1), newtons(pull)).unwrap();
    let alone = found(0.0);
    let whole = alone.resistance.at(Level::Design).unwrap();
    assert!(!alone.is_beyond_statics(whole, Level::Design).unwrap());
    assert!(
        alone
            .is_beyond_statics(1.001 * whole, Level::Design)
            .unwrap()
    );
    let half = found(36e3);
    let by_statics = 1.0 - 36.0 / 70.0;
    assert!(
        !half
            .is_beyond_statics((by_statics - 1e-9) * whole, Level::Design)
            .unwrap()
    );
    assert!(
        half.is_beyond_statics((by_statics + 1e-9) * whole, Level::Design)
            .unwrap()
    );
    assert!(half.resistance.at(Level::Design).unwrap() > 0.866 * whole);
    // Other methods have no ellipse.
    let bs = SlipMethod::Bs5950 {
        class: SlipClass::A,
        serviceability: false,
    };
    let other = slip_resistance(bs, of(bs, newtons(70e3)), standard(1), newtons(36e3)).unwrap();
    assert!(
        !other
            .is_beyond_statics(newtons(1e6), Level::Design)
            .unwrap()
    );
}

/// Of holes that take as much off the first is named.
#[test]
fn the_worst_of_holes() {
    use SlipHole::{LongSlotAlong, Oversize, ShortSlotAlong, Standard};
    let is = SlipMethod::Is800 {
        surface: Is800Surface::Untreated,
        serviceability: false,
    };
    for (holes, worst) in [
        (&[][..], Standard),
        (&[Oversize, ShortSlotAlong], Oversize),
        (&[ShortSlotAlong, Oversize], ShortSlotAlong),
        (&[Oversize, LongSlotAlong, Standard], LongSlotAlong),
    ] {
        assert_eq!(is.worst_hole(holes.iter().copied()), worst, "{holes:?}");
    }
}
