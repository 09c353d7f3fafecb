use super::*;

fn kind(thread: &str, hole: Hole, rule: HoleRule) -> Option<HoleKind> {
    match hole.classify(&thread.parse().unwrap(), rule).unwrap() {
        HoleClass::Known { kind, .. } => Some(kind),
        _ => None,
    }
}

fn round(diameter: Length) -> Hole {
    Hole {
        diameter,
        slot: None,
    }
}

/// What differs from the greatest size by no more than what rounding leaves is of the kind, of each rule.
#[test]
fn sizes_hold_but_for_rounding() {
    use HoleKind::{Oversize, Standard};
    let aisc = HoleRule::Aisc360 {
        edition: AiscEdition::E2016,
    };
    for (thread, rule, greatest, within, beyond) in [
        // AISC Table J3.3M, M20: 22 and 24 mm
        ("M20", aisc, 22.0, Some(Standard), Some(Oversize)),
        ("M20", aisc, 24.0, Some(Oversize), None),
        // ISO 273, M20 coarse: 24 mm
        ("M20", HoleRule::MachineDesign, 24.0, Some(Standard), None),
        // 1 mm of clearance under 16 mm, 2 mm from there
        ("M14", HoleRule::Steelwork, 15.0, Some(Standard), None),
        ("M16", HoleRule::Steelwork, 18.0, Some(Standard), None),
        (
            "M12",
            HoleRule::En1090,
            14.0,
            Some(Standard),
            Some(Oversize),
        ),
    ] {
        let greatest = millimetres(greatest);
        for (hole, wanted) in [
            (greatest, within),
            (greatest + SAME_LENGTH, within),
            (greatest + 1.1 * SAME_LENGTH, beyond),
            (greatest + millimetres(0.01), beyond),
        ] {
            assert_eq!(
                kind(thread, round(hole), rule),
                wanted,
                "{thread} {hole:?} {rule:?}"
            );
        }
    }
}

/// EN 1993-1-8 3.6.1(5): what is over 1 mm on M12, and not what rounding leaves, takes the 2 mm.
#[test]
fn two_millimetres_begin_over_one() {
    for (hole, wide) in [
        (millimetres(13.0), false),
        (millimetres(13.0) + SAME_LENGTH, false),
        (millimetres(13.01), true),
        (millimetres(14.0) + SAME_LENGTH, true),
    ] {
        let class = round(hole)
            .classify(&"M12".parse().unwrap(), HoleRule::En1090)
            .unwrap();
        let HoleClass::Known {
            two_millimetre_clearance,
            ..
        } = class
        else {
            panic!("{hole:?}")
        };
        assert_eq!(two_millimetre_clearance, wide, "{hole:?}");
    }
}

/// A bolt passes a hole of its own size, whatever rounding made of it.
#[test]
fn a_hole_as_wide_as_its_bolt_is_not_too_small() {
    let d = millimetres(20.0);
    for (hole, passes) in [
        (d, true),
        (d - SAME_LENGTH, true),
        (d - 1.1 * SAME_LENGTH, false),
    ] {
        let class = round(hole)
            .classify(&"M20".parse().unwrap(), HoleRule::En1090)
            .unwrap();
        assert_eq!(
            !matches!(class, HoleClass::TooSmall { .. }),
            passes,
            "{hole:?}"
        );
    }
}

/// ISO 273 and ASME B18.2.8 have no slots, EN 1090-2 Table 11 no bolts between its rows: M14 to M16, M22 to M24, M24 to M27.
#[test]
fn what_a_rule_does_not_have() {
    let slot = Slot {
        length: millimetres(14.0),
        direction: SlotDirection::Across,
    };
    let hole = Hole {
        diameter: millimetres(13.0),
        slot: Some(slot),
    };
    assert_eq!(kind("M12", hole, HoleRule::MachineDesign), None);
    assert_eq!(kind("M12", hole, HoleRule::Steelwork), None);
    assert_eq!(
        kind("M12", hole, HoleRule::En1090),
        Some(HoleKind::ShortSlotAcross)
    );
    assert_eq!(
        kind("M12", round(millimetres(13.0)), HoleRule::MachineDesign),
        Some(HoleKind::Standard)
    );
    for (thread, hole) in [("M15x1", 16.0), ("M25x2", 26.0), ("M26x1.5", 27.0)] {
        assert_eq!(
            kind(thread, round(millimetres(hole)), HoleRule::En1090),
            None,
            "{thread}"
        );
    }
}
