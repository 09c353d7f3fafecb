//! Where each rule begins and ends: the limit itself, and the two sides of it. Figures stand as the codes print them; what the
//! codes were read in is told by the rows of `tables/methods.csv`.

use alloc::vec;
use alloc::vec::Vec;

use super::{
    Factor, aisc_360, as_4100, bs_5950, csa_s16, en_1993, is_800, machine_design,
    packed_over_a_third,
};
use crate::error::{Allowed, Amount, Error};
use crate::material::{AstmGrade, BoltGrade, BoltStrength, PropertyClass};
use crate::strength::check::Mode;
use crate::strength::ply::{
    Asked, AskedDistance, BlockShear, DistanceConditions, DistanceKind, EdgeFinish, Exposure,
    HoleKind, Limits, Ply, PlyBolt, PlyMethod, PlyNeed, PlyOutcome,
};
use crate::strength::shear::AiscEdition;
use crate::strength::slip::{SlipClass, SlipHole};
use crate::tables::methods;
use crate::units::{Length, Stress, inches, ksi, megapascals, millimetres, square_millimetres};

const EDITIONS: [AiscEdition; 4] = [
    AiscEdition::E2005,
    AiscEdition::E2010,
    AiscEdition::E2016,
    AiscEdition::E2022,
];

fn same(one: f64, other: f64) -> bool {
    (one - other).abs() <= 1e-9 * other.abs().max(1e-12)
}

/// A factor of a formula, which stays out of the working where the rule does not apply.
fn applies(factor: Factor, value: f64) {
    assert!(same(factor.value, value), "{factor:?}, not {value}");
    assert!(!factor.formula.is_empty(), "{factor:?}");
}

fn does_not_apply(factor: Factor) {
    assert!(
        same(factor.value, 1.0) && factor.formula.is_empty(),
        "{factor:?}"
    );
}

fn refused(result: Result<Factor, Error>, limit: Allowed) {
    match result {
        Err(Error::OutOfRange { allowed, .. }) => assert_eq!(allowed, limit),
        other => panic!("{other:?}"),
    }
}

#[test]
fn long_joints() {
    let joint = aisc_360::long_joint;
    for edition in EDITIONS {
        // Table J3.2: over 50 in to 2005, over 38 in from 2010.
        let (limit, factor) = match edition {
            AiscEdition::E2005 => (50.0, 0.8),
            _ => (38.0, 0.833),
        };
        for (length, value) in [
            (limit - 0.01, 1.0),
            (limit, 1.0),
            (limit + 0.01, factor),
            (10.0 * limit, factor),
        ] {
            assert!(
                same(joint(edition, inches(length)).value, value),
                "{edition:?} {length}"
            );
        }
    }

    // Table 9.3.2.1 of AS 4100: 1.075 - L / 4000 over 300 mm, 0.75 over 1300 mm.
    does_not_apply(as_4100::long_joint(millimetres(299.0)));
    does_not_apply(as_4100::long_joint(millimetres(300.0)));
    applies(as_4100::long_joint(millimetres(304.0)), 0.999);
    applies(as_4100::long_joint(millimetres(1300.0)), 0.75);
    applies(as_4100::long_joint(millimetres(2000.0)), 0.75);

    // 6.3.2.4 of BS 5950-1: (5500 - L) / 5000 over 500 mm.
    let joint = |length| bs_5950::long_joint(millimetres(length));
    does_not_apply(joint(499.0).unwrap());
    does_not_apply(joint(500.0).unwrap());
    applies(joint(505.0).unwrap(), 0.999);
    applies(joint(5450.0).unwrap(), 0.01);
    for length in [5500.0, 5501.0] {
        refused(joint(length), Allowed::Below(millimetres(5500.0).into()));
    }

    // 13.12.1.2 of CSA S16: from 760 mm on.
    for (length, value) in [(759.9, 1.0), (760.0, 0.833), (761.0, 0.833)] {
        assert!(same(csa_s16::long_joint(millimetres(length)).value, value));
    }

    // Over 15 d: 3.8 of EN 1993-1-8 takes (L - 15 d) / 200 d, 10.3.3.1 of IS 800 has 1.075 - L / 200 d; both down to 0.75.
    let d = millimetres(16.0);
    for (in_d, value) in [(15.1, 0.9995), (35.0, 0.9), (65.0, 0.75), (80.0, 0.75)] {
        applies(en_1993::long_joint(in_d * d, d), value);
        applies(is_800::long_joint(in_d * d, d), value);
    }
    for in_d in [1.0, 14.9, 15.0] {
        does_not_apply(en_1993::long_joint(in_d * d, d));
        does_not_apply(is_800::long_joint(in_d * d, d));
    }
}

#[test]
fn long_grips() {
    let d = millimetres(16.0);
    // 8 d / (3 d + G) over 5 d.
    for in_d in [1.0, 4.99, 5.0] {
        does_not_apply(bs_5950::long_grip(in_d * d, d));
        does_not_apply(is_800::long_grip(in_d * d, 20.0 * d, d).unwrap());
    }
    applies(bs_5950::long_grip(5.5 * d, d), 8.0 / 8.5);
    applies(bs_5950::long_grip(13.0 * d, d), 0.5);
    applies(is_800::long_grip(5.5 * d, 10.0 * d, d).unwrap(), 8.0 / 8.5);
    // 10.3.3.2 of IS 800: at most 8 d, and no more than the long joint has.
    applies(is_800::long_grip(8.0 * d, 10.0 * d, d).unwrap(), 8.0 / 11.0);
    applies(is_800::long_grip(5.5 * d, 35.0 * d, d).unwrap(), 0.9);
    applies(is_800::long_grip(5.5 * d, 16.0 * d, d).unwrap(), 8.0 / 8.5);
    refused(
        is_800::long_grip(8.01 * d, 10.0 * d, d),
        Allowed::AtMost((8.0 * d).into()),
    );

    // Table J3.2 of AISC 360: 1 % for each 1/16 in over 5 d. At 100 sixteenths nothing is left.
    let d = inches(1.0);
    let grip = |in_inches: f64| aisc_360::grip_of_a307(inches(in_inches), d);
    does_not_apply(grip(4.99).unwrap());
    does_not_apply(aisc_360::grip_of_a307(5.0 * d, d).unwrap());
    applies(grip(5.0625).unwrap(), 0.99);
    applies(grip(8.125).unwrap(), 0.5);
    applies(grip(11.125).unwrap(), 0.02);
    for grip in [grip(12.0), grip(11.26)] {
        refused(grip, Allowed::Below(inches(11.25).into()));
    }
    // A bolt of 1/16 in, whose limit is met to the last digit.
    let d = inches(0.0625);
    let at_the_limit = 5.0 * d + inches(6.25);
    match aisc_360::grip_of_a307(at_the_limit, d) {
        Err(Error::OutOfRange { value, .. }) => assert_eq!(value, Amount::from(at_the_limit)),
        other => panic!("{other:?}"),
    }
}

#[test]
fn packing() {
    // 9 d / (8 d + 3 t) over d / 3. One value is three times the other to the last digit.
    let third = millimetres(7.0);
    let d = 3.0 * third;
    does_not_apply(packed_over_a_third(millimetres(6.9), d));
    does_not_apply(packed_over_a_third(third, d));
    applies(packed_over_a_third(2.0 * third, d), 9.0 / 10.0);
    does_not_apply(en_1993::packing(third, d));
    applies(en_1993::packing(d, d), 9.0 / 11.0);

    // 6.3.2.2 of BS 5950-1: at most 4 d / 3.
    let d = millimetres(24.0);
    does_not_apply(bs_5950::packing(millimetres(8.0), d).unwrap());
    applies(bs_5950::packing(millimetres(24.0), d).unwrap(), 9.0 / 11.0);
    let quarter = millimetres(8.0);
    let (d, most) = (3.0 * quarter, 4.0 * quarter);
    applies(bs_5950::packing(most, d).unwrap(), 0.75);
    match bs_5950::packing(millimetres(32.1), d) {
        Err(Error::OutOfRange {
            allowed: Allowed::AtMost(Amount::Length(at_most)),
            ..
        }) => assert!(same(at_most.value, most.value)),
        other => panic!("{other:?}"),
    }

    // J5.2 of AISC 360: 1 - 0.4 (t - 0.25) over 1/4 in; to 3/4 in (2005), not under 0.85 (from 2010).
    for edition in EDITIONS {
        let fillers = |thickness| aisc_360::fillers(edition, inches(thickness));
        does_not_apply(fillers(0.2).unwrap());
        does_not_apply(fillers(0.25).unwrap());
        applies(fillers(0.30).unwrap(), 0.98);
        applies(fillers(0.625).unwrap(), 0.85);
        if edition == AiscEdition::E2005 {
            applies(fillers(0.75).unwrap(), 0.80);
            refused(fillers(0.76), Allowed::AtMost(inches(0.75).into()));
        } else {
            applies(fillers(0.75).unwrap(), 0.85);
            applies(fillers(3.0).unwrap(), 0.85);
        }
    }

    // 9.3.2.5 of AS 4100: 0.85 over 6 mm, to 20 mm, and 1 - 0.0154 (t - 6) where that is less.
    for (thickness, value) in [
        (5.9, 1.0),
        (6.0, 1.0),
        (6.1, 0.85),
        (18.0, 0.8152),
        (20.0, 0.7844),
    ] {
        let factor = as_4100::packing(millimetres(thickness)).unwrap();
        assert!(same(factor.value, value), "{thickness}");
    }
    refused(
        as_4100::packing(millimetres(20.1)),
        Allowed::AtMost(millimetres(20.0).into()),
    );

    // CSA S16: to 6.4 mm nothing is taken off, over it there is no value.
    does_not_apply(csa_s16::packing(millimetres(6.4)).unwrap());
    refused(
        csa_s16::packing(millimetres(6.5)),
        Allowed::AtMost(millimetres(6.4).into()),
    );

    // 10.3.3.3 of IS 800: 1 - 0.0125 t over 6 mm.
    does_not_apply(is_800::packing(millimetres(5.0)).unwrap());
    does_not_apply(is_800::packing(millimetres(6.0)).unwrap());
    applies(is_800::packing(millimetres(8.0)).unwrap(), 0.9);
    applies(is_800::packing(millimetres(79.0)).unwrap(), 0.0125);
    for thickness in [80.0, 81.0] {
        refused(
            is_800::packing(millimetres(thickness)),
            Allowed::Below(millimetres(80.0).into()),
        );
    }
}

#[test]
fn the_formula_of_threaded_parts_has_the_share_of_its_edition() {
    let strength = PropertyClass::Class8_8.strength(millimetres(20.0)).unwrap();
    // Table J3.2: 0.40 and 0.50 Fu in 2005, 0.450 and 0.563 Fu from 2010.
    for edition in EDITIONS {
        let old = edition == AiscEdition::E2005;
        for (in_shank, share, formula) in [
            (
                false,
                if old { 0.40 } else { 0.450 },
                if old { "0.40 * Fu" } else { "0.450 * Fu" },
            ),
            (
                true,
                if old { 0.50 } else { 0.563 },
                if old { "0.50 * Fu" } else { "0.563 * Fu" },
            ),
        ] {
            let of = aisc_360::shear(edition, &strength, in_shank).unwrap();
            assert!(same(
                of.stress.value,
                share * strength.tensile_strength.value
            ));
            let step = alloc::format!("{of:?}");
            assert!(step.contains(formula), "{step}");
        }
    }
}

/// Areas in mm2.
fn block(fy: f64, fu: f64, [agv, anv, agt, ant]: [f64; 4]) -> BlockShear {
    BlockShear {
        yield_strength: megapascals(fy),
        tensile_strength: megapascals(fu),
        gross_shear: square_millimetres(agv),
        net_shear: square_millimetres(anv),
        gross_tension: square_millimetres(agt),
        net_tension: square_millimetres(ant),
    }
}

#[test]
fn blocks() {
    // J4.3 of 1999: with Fu Ant = 0.6 Fu Anv the tension face is the one at rupture. Fu Ant 288 kN, 0.6 Fy Agv 225 kN.
    let at = aisc_360::block_of_1999(&block(250.0, 400.0, [1500.0, 1200.0, 900.0, 720.0]));
    assert!(same(at.shear.value, 225e3), "{}", at.shear.value);
    assert!(same(at.tension.value, 288e3));
    assert_eq!(at.shear_formula, "min(0.6 * Fy * Agv, 0.6 * Fu * Anv)");
    // Below it the shear faces are: 0.6 Fu Anv 288 kN, Fy Agt 200 kN.
    let below = aisc_360::block_of_1999(&block(250.0, 400.0, [1500.0, 1200.0, 800.0, 719.0]));
    assert!(same(below.shear.value, 288e3));
    assert!(same(below.tension.value, 200e3));

    // 13.11 of CSA S16: (Fy + Fu) / 2 to 460 MPa, Fy above.
    for (fy, stress, formula) in [
        (450.0, 525.0, "0.6 * (Fy + Fu) / 2 * Agv"),
        (460.0, 530.0, "0.6 * (Fy + Fu) / 2 * Agv"),
        (461.0, 461.0, "0.6 * Fy * Agv"),
        (550.0, 550.0, "0.6 * Fy * Agv"),
    ] {
        let faces = csa_s16::block(&block(fy, 600.0, [1000.0, 900.0, 500.0, 400.0]), true);
        assert!(same(faces.shear.value, 0.6 * stress * 1000.0), "{fy}");
        assert_eq!(faces.shear_formula, formula);
        let tears = csa_s16::tear_out(megapascals(fy), megapascals(600.0));
        assert!(same(tears.value, stress * 1e6), "{fy}");
    }
}

#[test]
fn design_strengths_of_bs_5950() {
    // 3.4.3: Ke 1.2 to S275, 1.1 to S355, 1.0 above, where Us / 1.2 py is more.
    for (fy, ke) in [
        (275.0, 1.2),
        (275.1, 1.1),
        (355.0, 1.1),
        (355.1, 1.0),
        (460.0, 1.0),
    ] {
        let (py, found) = bs_5950::net_section(megapascals(fy), megapascals(900.0));
        assert!(same(py.value, fy * 1e6) && same(found, ke), "{fy}: {found}");
    }
    // Of a steel that breaks soon after it yields, both are less: Us / 1.2 = 250, Ke = 1.
    let (py, ke) = bs_5950::net_section(megapascals(275.0), megapascals(300.0));
    assert!(same(py.value, 250e6) && same(ke, 1.0));
    // Tables 31 and 32: read are the strengths of S275, S355, 4.6 and 8.8.
    for (stress, read) in [
        (460.0, true),
        (550.0, true),
        (1000.0, true),
        (670.0, false),
        (1300.0, false),
    ] {
        assert_eq!(
            bs_5950::is_bearing_read(megapascals(stress)),
            read,
            "{stress}"
        );
    }
}

#[test]
fn what_was_recalled() {
    use methods as m;
    let ply = aisc_360::ply::recalled;
    for edition in EDITIONS {
        let own = match edition {
            AiscEdition::E2005 | AiscEdition::E2010 => None,
            AiscEdition::E2016 => Some(m::AISC_360_16_J3_10),
            AiscEdition::E2022 => Some(m::AISC_360_22_J3_11),
        };
        let (bearing, standard) = (Mode::Bearing, HoleKind::Standard);
        assert_eq!(ply(edition, true, bearing, standard), own);
        assert_eq!(ply(edition, true, bearing, HoleKind::LongSlotAlong), own);
        assert_eq!(
            ply(edition, false, bearing, standard),
            Some(m::AISC_360_J3_10_3_0_AND_1_5)
        );
        for matters in [true, false] {
            assert_eq!(
                ply(edition, matters, Mode::TearOut, HoleKind::LongSlotAcross),
                Some(m::AISC_360_J3_10_2_0_AND_1_0_OF_LONG_SLOTS)
            );
            for mode in [Mode::NetSection, Mode::GrossSection] {
                assert_eq!(ply(edition, matters, mode, standard), Some(m::AISC_360_D2));
            }
        }
    }

    // EN 1993-1-8, 3.9: classes A and B in standard holes without tension were read.
    let slips = en_1993::slip::recalled;
    let because = Some(m::EN_1993_1_8_3_9_CLASSES_SLOTS_AND_TENSION);
    for class in [SlipClass::A, SlipClass::B] {
        assert_eq!(slips(class, SlipHole::Standard, false), None);
        assert_eq!(slips(class, SlipHole::Standard, true), because);
        assert_eq!(slips(class, SlipHole::Oversize, false), because);
    }
    for class in [SlipClass::C, SlipClass::D] {
        assert_eq!(slips(class, SlipHole::Standard, false), because);
        assert_eq!(slips(class, SlipHole::LongSlotAlong, true), because);
    }

    // IS 800, 10.3.4: what holes take off.
    let holes = is_800::ply::recalled;
    assert_eq!(holes(Mode::Bearing, HoleKind::Standard), None);
    assert_eq!(holes(Mode::NetSection, HoleKind::Oversize), None);
    assert_eq!(
        holes(Mode::Bearing, HoleKind::Oversize),
        Some(m::IS_800_2007_10_3_4_HOLES)
    );
}

#[test]
fn holes_that_slip() {
    // J3.8 of 2005: hsc 0.85 with phi 0.85 of slots along the load, 1.0 of those across; from 2010 phi alone.
    for (hole, old, new) in [
        (SlipHole::Standard, 1.0, 1.0),
        (SlipHole::ShortSlotAcross, 0.85, 1.0),
        (SlipHole::Oversize, 0.85 * 0.85, 0.85),
        (SlipHole::ShortSlotAlong, 0.85 * 0.85, 0.85),
        (SlipHole::LongSlotAcross, 0.70, 0.70),
        (SlipHole::LongSlotAlong, 0.70 * 0.85, 0.70),
    ] {
        for edition in EDITIONS {
            let share = if edition == AiscEdition::E2005 {
                old
            } else {
                new
            };
            assert!(
                same(aisc_360::slip::hole_share(edition, hole), share),
                "{edition:?} {hole:?}"
            );
        }
    }
}

#[test]
fn sizes_with_pretension() {
    let class = PropertyClass::Class10_9;
    for (size, listed) in [
        ("M10", false),
        ("M12", true),
        ("M36", true),
        ("M39", false),
        ("M20x1.5", false),
    ] {
        let thread = size.parse().unwrap();
        let area = en_1993::pretension::stress_area(&thread, BoltGrade::Iso(class));
        assert_eq!(area.is_ok(), listed, "EN 14399 {size}");
    }
    for (size, listed) in [
        ("M14", false),
        ("M16", true),
        ("M36", true),
        ("M39", false),
        ("M20x1.5", false),
    ] {
        let thread: crate::thread::Thread = size.parse().unwrap();
        let strength = class.strength(thread.nominal_diameter()).unwrap();
        let proof = is_800::slip::specified(&thread, &strength);
        assert_eq!(proof.is_ok(), listed, "IS 3757 {size}");
    }
    // An A325 to 2014 is of 120 ksi to 1 in and of 105 ksi above, which editions from 2016 do not count on.
    for (size, edition, listed) in [
        ("7/8-9 UNC", AiscEdition::E2016, true),
        ("1-8 UNC", AiscEdition::E2016, true),
        ("1 1/8-7 UNC", AiscEdition::E2010, true),
        ("1 1/8-7 UNC", AiscEdition::E2016, false),
        ("1 1/8-7 UNC", AiscEdition::E2022, false),
    ] {
        let thread: crate::thread::Thread = size.parse().unwrap();
        let strength = AstmGrade::A325To2014
            .strength(thread.nominal_diameter())
            .unwrap();
        let row = aisc_360::pretension::pretension(&thread, &strength, edition);
        assert_eq!(row.is_ok(), listed, "{size} {edition:?}");
    }
}

#[test]
fn plates_in_compression() {
    // J4.4 and E3 of AISC 360: Fy to KL/r 25; at 4.71 sqrt(E / Fy) still the curve of E3, beyond it 0.877 Fe.
    let (yields, modulus) = (ksi(50.0), ksi(29_000.0));
    let pressed = |slender| aisc_360::ply::pressed(yields, slender).value / yields.value;
    assert!(same(pressed(25.0), 1.0));
    // Fe = pi^2 29 000 / 676 = 423.4 ksi, 0.658^(50 / 423.4) = 0.9518.
    assert!((pressed(26.0) - 0.9518).abs() < 1e-4);
    let edge = 4.71 * crate::math::sqrt((modulus / yields).value);
    let fe = |slender: f64| core::f64::consts::PI.powi(2) * 29_000.0 / 50.0 / slender.powi(2);
    assert!(same(pressed(edge), 0.658_f64.powf(1.0 / fe(edge))));
    assert!(same(pressed(edge + 1e-6), 0.877 * fe(edge + 1e-6)));

    // EN 1993-1-1, 6.3.1 with curve c: nothing to a ratio of 0.2, 0.540 at 1.0 (Table of handbooks, worked out: phi = 1.196).
    let yields = megapascals(235.0);
    let at_one = core::f64::consts::PI * crate::math::sqrt(210e3 / 235.0);
    let pressed = |ratio: f64| en_1993::ply::pressed(yields, ratio * at_one).value / yields.value;
    assert!(same(pressed(0.19), 1.0));
    assert!((pressed(1.0) - 0.540).abs() < 5e-4);

    // Table 3.3, notes: no buckling between fasteners to 9 epsilon t; epsilon 0.8136 of S355, 9 * 0.8136 * 10 = 73.2 mm.
    let between = |pitch| {
        en_1993::ply::length_between(millimetres(pitch), millimetres(10.0), megapascals(355.0))
    };
    assert_eq!(between(73.0), None);
    assert_eq!(between(75.0), Some(millimetres(45.0)));
}

const SHEARED: DistanceConditions = DistanceConditions {
    finish: Some(EdgeFinish::Sheared),
    exposure: Some(Exposure::Sheltered),
};

/// The least and greatest distances in mm, of a bolt of 20 mm in a slot 22 mm wide and 40 mm long in a ply of 10 mm.
fn distances(
    hole: HoleKind,
    kind: DistanceKind,
    limits: impl Fn(&AskedDistance, &mut Vec<PlyNeed>) -> Limits,
) -> (Vec<f64>, Vec<f64>) {
    let ply = Ply {
        hole_kind: hole,
        slot_length: (!hole.is_standard()).then_some(millimetres(40.0)),
        yield_strength: Some(megapascals(355.0)),
        ..Ply::without_strengths(millimetres(10.0), millimetres(22.0))
    };
    let asked = AskedDistance {
        ply: &ply,
        diameter: millimetres(20.0),
        conditions: SHEARED,
        kind,
    };
    let mut missing = Vec::new();
    let limits = limits(&asked, &mut missing);
    assert!(missing.is_empty(), "{missing:?}");
    let in_mm = |length: Length| (length / millimetres(0.1)).value.round() / 10.0;
    (
        limits
            .least
            .iter()
            .map(|limit| in_mm(limit.length))
            .collect(),
        limits
            .greatest
            .iter()
            .map(|limit| in_mm(limit.length))
            .collect(),
    )
}

#[test]
fn distances_of_slots() {
    use DistanceKind::{Edge, End, Gauge, Pitch};
    use HoleKind::{LongSlotAcross, LongSlotAlong, ShortSlotAcross, ShortSlotAlong, Standard};
    // Half of what the slot is longer than wide, 9 mm, is added to an edge it points to, all of it between two slots.
    // EN 1993-1-8 Table 3.3: 1.2 d0 (slots 1.5 d0), 2.2 d0 along and 2.4 d0 across.
    for (hole, kind, least) in [
        (Standard, End, 26.4),
        (Standard, Edge, 26.4),
        (Standard, Pitch, 48.4),
        (Standard, Gauge, 52.8),
        (ShortSlotAlong, End, 42.0),
        (ShortSlotAlong, Edge, 33.0),
        (LongSlotAlong, Pitch, 66.4),
        (LongSlotAlong, Gauge, 52.8),
        (LongSlotAcross, End, 33.0),
        (LongSlotAcross, Edge, 42.0),
        (ShortSlotAcross, Pitch, 48.4),
        (ShortSlotAcross, Gauge, 70.8),
    ] {
        let (found, _) = distances(hole, kind, en_1993::distances::limits);
        assert_eq!(found, [least], "EN {hole:?} {kind:?}");
    }
    // 10.2 of IS 800: 1.5 d0, 1.7 d0 sheared, 2.5 d between holes; 12 epsilon t = 12 sqrt(250 / 355) 10 = 100.7 mm.
    for (hole, kind, least, greatest) in [
        (Standard, End, vec![33.0, 37.4], vec![100.7]),
        (LongSlotAlong, End, vec![42.0, 46.4], vec![100.7]),
        (LongSlotAlong, Edge, vec![33.0, 37.4], vec![100.7]),
        (LongSlotAcross, Edge, vec![42.0, 46.4], vec![100.7]),
        (LongSlotAlong, Pitch, vec![68.0], vec![120.0, 300.0]),
        (LongSlotAlong, Gauge, vec![50.0], vec![120.0, 300.0]),
    ] {
        let found = distances(hole, kind, is_800::distances::limits);
        assert_eq!(found, (least, greatest), "IS 800 {hole:?} {kind:?}");
    }
    // 6.2 of BS 5950-1: 1.25 d0, 1.4 d0 of ends and sheared edges, 11 t epsilon = 11 sqrt(275 / 355) 10 = 96.8 mm.
    let found = distances(Standard, End, bs_5950::distances::limits);
    assert_eq!(found, (vec![27.5, 30.8], vec![96.8]));
    // 9.6 of AS 4100: 1.25, 1.5 and 1.75 d, of slots from the edge of the hole and with half the bolt: 9 + 1 mm more towards their
    // ends, 1 mm to their sides; 12 t = 120 mm.
    for (hole, kind, more) in [
        (Standard, End, 0.0),
        (LongSlotAlong, End, 10.0),
        (LongSlotAlong, Edge, 1.0),
    ] {
        let found = distances(hole, kind, as_4100::distances::limits);
        let least = [25.0, 30.0, 35.0].map(|own| own + more);
        assert_eq!(found, (least.to_vec(), vec![120.0]), "AS {hole:?} {kind:?}");
    }
    // 2.5 d; 4 t + 100 = 140 mm and 15 t = 150 mm.
    let found = distances(LongSlotAlong, Pitch, as_4100::distances::limits);
    assert_eq!(found, (vec![68.0], vec![140.0, 150.0]));
    let found = distances(Standard, Gauge, as_4100::distances::limits);
    assert_eq!(found, (vec![50.0], vec![150.0]));
    // Common practice: one diameter and 1.5 d0.
    let found = distances(LongSlotAlong, End, machine_design::distances);
    assert_eq!(found, (vec![29.0, 42.0], vec![]));
    let found = distances(LongSlotAlong, Edge, machine_design::distances);
    assert_eq!(found, (vec![20.0, 33.0], vec![]));
}

#[test]
fn a_yield_strength_that_is_missing_is_named_once() {
    let ply = Ply::without_strengths(millimetres(10.0), millimetres(22.0));
    for limits in [bs_5950::distances::limits, is_800::distances::limits] {
        let mut missing = Vec::new();
        for kind in [DistanceKind::End, DistanceKind::Edge] {
            let asked = AskedDistance {
                ply: &ply,
                diameter: millimetres(20.0),
                conditions: SHEARED,
                kind,
            };
            assert!(limits(&asked, &mut missing).greatest.is_empty());
            assert_eq!(missing, [PlyNeed::YieldStrength]);
        }
    }
}

/// What a mode of a ply says of a bolt of 16 mm in a hole of 18 mm.
fn asked(ply: &Ply, method: PlyMethod, ask: fn(&Asked) -> Result<PlyOutcome, Error>) -> PlyOutcome {
    let strength: BoltStrength = PropertyClass::Class8_8.strength(millimetres(16.0)).unwrap();
    ask(&Asked {
        ply,
        diameter: millimetres(16.0),
        bolt: PlyBolt::of(&strength),
        method,
    })
    .unwrap()
}

fn s275(thickness: Length) -> Ply {
    let strength = |value| -> Option<Stress> { Some(megapascals(value)) };
    Ply {
        yield_strength: strength(275.0),
        tensile_strength: strength(410.0),
        ..Ply::without_strengths(thickness, millimetres(18.0))
    }
}

#[test]
fn where_nothing_is_left_of_a_ply() {
    let thick = millimetres(10.0);
    let nothing = |outcome: &PlyOutcome| matches!(outcome, PlyOutcome::Nothing(_));
    // AS 4100 9.3.2.4(2): ae from the edge of the hole, here 0 and 1 mm.
    let as_4100 = |end| {
        let ply = Ply {
            end_distance: Some(end),
            ..s275(thick)
        };
        asked(&ply, PlyMethod::As4100, as_4100::ply::tear_out)
    };
    assert!(nothing(&as_4100(0.5 * millimetres(18.0))));
    let found = as_4100(millimetres(10.0));
    assert!(same(
        found.found().unwrap().area.value,
        square_millimetres(90.0).value
    ));
    // BS 5950-1 4.6: a hole as wide as the ply, and the two sections of one of 60 mm.
    let section = |width, ask| {
        let ply = Ply {
            width: Some(width),
            ..s275(thick)
        };
        asked(&ply, PlyMethod::Bs5950, ask)
    };
    let net = |asked: &Asked| bs_5950::ply::section(asked, Mode::NetSection);
    let gross = |asked: &Asked| bs_5950::ply::section(asked, Mode::GrossSection);
    assert!(nothing(&section(millimetres(18.0), net)));
    assert!(!nothing(&section(millimetres(18.0), gross)));
    for (outcome, coefficient, area) in [
        (section(millimetres(60.0), net), 1.2, 420.0),
        (section(millimetres(60.0), gross), 1.0, 600.0),
    ] {
        let found = outcome.found().unwrap();
        assert!(same(found.coefficient, coefficient));
        assert!(same(found.area.value, square_millimetres(area).value));
    }
    // EN 1993-1-8 and IS 800: p1 / (3 d0) - 1/4 is nothing at 0.75 d0.
    for (method, ask) in [
        (PlyMethod::En1993, en_1993::ply::bearing as fn(&Asked) -> _),
        (PlyMethod::Is800, is_800::ply::bearing),
    ] {
        let on_the_limit = 0.25 * (3.0 * millimetres(18.0));
        for (pitch, none) in [
            (on_the_limit, true),
            (millimetres(13.0), true),
            (millimetres(14.0), false),
        ] {
            let ply = Ply {
                pitch: Some(pitch),
                edge_distance: Some(millimetres(40.0)),
                ..s275(thick)
            };
            assert_eq!(
                nothing(&asked(&ply, method, ask)),
                none,
                "{method:?} {pitch:?}"
            );
        }
    }
}
