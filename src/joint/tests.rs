//! Limits of the rules, on both sides, and parts in contact.

use super::*;
use crate::material::Severity;
use crate::parts::{ScrewLength, ScrewProduct, ScrewSeries};
use crate::spread::Spread;
use crate::tables::galvanic::{Exposure, Metal};
use crate::units::{Length, UnitSystem, millimetres, volts};
use alloc::vec::Vec;

#[test]
fn length_rules_have_limits() {
    let usual = LengthRules::fabrication(UnitSystem::Si);
    let cut = |tolerance: f64, step: f64| {
        usual.with_cut(CutRule::Allowed {
            tolerance: millimetres(tolerance),
            step: millimetres(step),
        })
    };
    for (number, (rules, right)) in [
        (usual, true),
        (usual.with_protrusion(2.0, None), true),
        (usual.with_protrusion(2.0, Some(2.0)), true),
        (usual.with_protrusion(2.0, Some(1.999)), false),
        (usual.with_protrusion(-0.001, None), false),
        (usual.with_protrusion(1e6, None), true),
        (usual.with_protrusion(1.001e6, None), false),
        (usual.with_protrusion(0.0, Some(1.001e6)), false),
        // The end that is not counted comes on top of the least.
        (
            usual
                .with_protrusion(2.0, Some(3.0))
                .with_end_not_counted(1.0),
            true,
        ),
        (
            usual
                .with_protrusion(2.0, Some(2.999))
                .with_end_not_counted(1.0),
            false,
        ),
        (usual.with_end_not_counted(-1.0), false),
        (usual.with_clear_threads(0.0), true),
        (usual.with_clear_threads(-0.001), false),
        (usual.with_thread_in_holes(0.0), true),
        (usual.with_thread_in_holes(-0.001), false),
        (usual.with_washers_under_nut(100), true),
        (usual.with_washers_under_nut(101), false),
        (usual.with_washers_under_head(100), true),
        (usual.with_washers_under_head(101), false),
        (usual.with_washers_in_all(200), true),
        (usual.with_washers_in_all(201), false),
        (cut(0.0, 1.0), true),
        (cut(25.0, 1.0), true),
        (cut(25.001, 1.0), false),
        (cut(-0.001, 1.0), false),
        (cut(0.5, 0.0), false),
    ]
    .into_iter()
    .enumerate()
    {
        assert_eq!(rules.checked().is_ok(), right, "{number}");
    }
}

#[test]
fn grip_rules_have_limits() {
    let usual = GripRules::faa();
    let protrusion = |protrusion_min_pitches, max| GripRules {
        protrusion_min_pitches,
        protrusion_max_pitches: Some(max),
        ..usual
    };
    let washers = |head, min, nut, all| GripRules {
        washers_under_head_max: head,
        washers_under_nut_min: min,
        washers_under_nut_max: nut,
        washers_max: all,
        ..usual
    };
    for (number, (rules, right)) in [
        (usual, true),
        (protrusion(1.0, 1.0), true),
        (protrusion(1.0, 0.999), false),
        (protrusion(1.0, 3.0), true),
        (washers(10, 1, 10, 20), true),
        (washers(11, 1, 10, 20), false),
        (washers(10, 1, 11, 20), false),
        (washers(2, 2, 2, 3), true),
        (washers(2, 3, 2, 3), false),
        (washers(2, 2, 3, 2), true),
        (washers(2, 3, 3, 2), false),
    ]
    .into_iter()
    .enumerate()
    {
        assert_eq!(rules.checked().is_ok(), right, "{number}");
    }
}

/// Neighbours in the stack touch, and the bolt touches all of them.
#[test]
fn parts_touch_their_neighbours() {
    use Part::{Bolt, Nut, Ply, WasherUnderHead, WasherUnderNut};
    for (plies, nut, head, under_nut, right) in [
        (0, false, true, false, &[(Bolt, WasherUnderHead)][..]),
        (0, true, false, false, &[(Bolt, Nut)]),
        (1, false, false, false, &[(Bolt, Ply(1))]),
        (
            1,
            true,
            true,
            true,
            &[
                (Bolt, Nut),
                (Bolt, WasherUnderHead),
                (WasherUnderHead, Ply(1)),
                (Bolt, Ply(1)),
                (Bolt, WasherUnderNut),
                (Nut, WasherUnderNut),
                (WasherUnderNut, Ply(1)),
            ],
        ),
        (
            2,
            true,
            false,
            false,
            &[
                (Bolt, Nut),
                (Bolt, Ply(1)),
                (Ply(1), Ply(2)),
                (Bolt, Ply(2)),
                (Nut, Ply(2)),
            ],
        ),
    ] {
        let parts = JointParts {
            plies,
            nut,
            washer_under_head: head,
            washer_under_nut: under_nut,
        };
        assert_eq!(parts.parts_in_contact(), right, "{parts:?}");
    }
}

/// A difference of the permitted one is permitted, and of half a hundredth more is not. Of equals the first is the anode.
#[test]
fn differences_of_potential() {
    let pair = |metal| {
        let steel = Some(Metal::Steel);
        galvanic_pair(Exposure::Harsh, (Part::Bolt, steel), (Part::Nut, metal))
    };
    let same = pair(Some(Metal::Steel));
    assert_eq!((same.anode, same.cathode), (Part::Bolt, Part::Nut));
    assert_eq!(pair(None).severity(), Severity::Undecided);
    let zinc = pair(Some(Metal::Zinc));
    assert_eq!((zinc.anode, zinc.cathode), (Part::Nut, Part::Bolt));
    let permitted = Exposure::Harsh.permitted();
    for (more, severity) in [
        (0.0, Severity::Fine),
        (4e-4, Severity::Fine),
        (6e-4, Severity::Fault),
    ] {
        let difference = Some(permitted + volts(more));
        let found = GalvanicPair { difference, ..same };
        assert_eq!(found.severity(), severity, "{more}");
    }
}

/// A bolt of 50 mm whose thread begins at 40 mm, in a grip of 39.5 mm: it jams by 0.5 mm, which one washer of 2 mm cures; but
/// then 0.5 mm are left beyond a nut of 8 mm, where one pitch of 1.5 mm is asked for.
#[test]
fn washers_that_make_a_bolt_short_are_told_of_where_they_are_permitted() {
    let thread = "M10".parse().unwrap();
    let exact = |length| Spread::exact(millimetres(length));
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread).unwrap();
    let [length, shank, start] = [50.0, 36.0, 40.0].map(millimetres);
    let screw = ScrewLength::measured(length, shank, start).unwrap();
    let stack = Stack::builder()
        .ply("plate", exact(39.5))
        .washers_under_nut(exact(2.0), 0)
        .build()
        .unwrap();
    let nut = NutEnd::with_height(exact(8.0)).unwrap();
    let rules = LengthRules::fabrication(UnitSystem::Si)
        .with_protrusion(1.0, None)
        .with_clear_threads(0.0);
    let reasons = |permitted| {
        let rules = rules.with_washers_under_nut(permitted);
        let search = LengthSearch::new(&stack, &screws, nut, rules).unwrap();
        let candidate = search.assess(screw).unwrap();
        candidate.reasons().copied().collect::<Vec<_>>()
    };
    let near = |found: Length, wanted: f64| (found - millimetres(wanted)).abs() < millimetres(1e-9);
    let jams = |reason: &Reason| matches!(reason, Reason::NutJams { by, washers_needed: Some(1), .. } if near(*by, 0.5));
    let none = reasons(0);
    assert!(none.len() == 1 && jams(&none[0]), "{none:?}");
    let one = reasons(1);
    assert!(one.len() == 2 && jams(&one[0]), "{one:?}");
    assert!(matches!(one[1], Reason::WashersMakeItShort { washers: 1, by } if near(by, 1.0)));
}
