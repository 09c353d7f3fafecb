use super::*;
use crate::units::{megapascals, millimetres, square_millimetres};
use alloc::string::ToString;

fn block() -> BlockShear {
    BlockShear {
        yield_strength: megapascals(250.0),
        tensile_strength: megapascals(400.0),
        gross_shear: square_millimetres(2000.0),
        net_shear: square_millimetres(1500.0),
        gross_tension: square_millimetres(800.0),
        net_tension: square_millimetres(600.0),
    }
}

/// A block torn to one side crosses half a hole at its edge and all others: n - 0.5 of them; by BS 5950-1 6.2.4 (recalled)
/// 2.5 of two lines.
#[test]
fn holes_in_a_block_torn_to_one_side() {
    let rule = |method| BlockRule::of(method).unwrap();
    for (method, lines, holes) in [
        (PlyMethod::En1993, 1, 0.5),
        (PlyMethod::En1993, 2, 1.5),
        (PlyMethod::En1993, 3, 2.5),
        (PlyMethod::Bs5950, 1, 0.5),
        (PlyMethod::Bs5950, 2, 2.5),
        (PlyMethod::Bs5950, 3, 3.5),
    ] {
        let found = rule(method).holes_to_one_side(lines);
        assert!((found - holes).abs() < 1e-12, "{method:?} {lines}");
    }
    for (method, lines, told) in [
        (PlyMethod::Bs5950, None, 0),
        (PlyMethod::Bs5950, Some(1), 0),
        (PlyMethod::Bs5950, Some(2), 1),
        (PlyMethod::Is800, Some(2), 0),
    ] {
        let cautions = rule(method).cautions_to_one_side(lines);
        assert_eq!(cautions.iter().count(), told, "{method:?} {lines:?}");
    }
}

/// Each publisher's own rule for tension that is even and that is not, and what it adds to a hole.
#[test]
fn rules_of_the_publishers() {
    let none = Length::default();
    for (method, even, uneven, oversize) in [
        (PlyMethod::En1993, 1.0, 0.5, none),
        (PlyMethod::As4100, 1.0, 0.5, none),
        (PlyMethod::CsaS16, 1.0, 0.3, millimetres(2.0)),
        (PlyMethod::Bs5950, 1.2, 1.2, none),
        (PlyMethod::Is800, 1.0, 1.0, none),
    ] {
        let rule = BlockRule::of(method).unwrap();
        assert_eq!(rule.oversize, oversize, "{method:?}");
        for (method, factor) in [(rule.even, even), (rule.uneven, uneven)] {
            let found = block_shear(&block(), method).unwrap();
            assert!((found.tension_factor - factor).abs() < 1e-12, "{method}");
        }
    }
    assert!(BlockRule::of(PlyMethod::MachineDesign { design_factor: 2.0 }).is_err());
    assert!(
        BlockRule::of(PlyMethod::MilHdbk5 {
            ultimate_factor: 1.5,
            fitting_factor: 1.15,
        })
        .is_err()
    );
}

/// A net area may be the gross one and no more.
#[test]
fn net_areas_at_their_limit() {
    let method = BlockMethod::As4100 {
        uniform_tension: true,
    };
    let full = BlockShear {
        net_shear: block().gross_shear,
        net_tension: block().gross_tension,
        ..block()
    };
    assert!(block_shear(&full, method).is_ok());
    let more = square_millimetres(0.001);
    for (what, one) in [
        (
            "net area in shear",
            BlockShear {
                net_shear: full.net_shear + more,
                ..full
            },
        ),
        (
            "net area in tension",
            BlockShear {
                net_tension: full.net_tension + more,
                ..full
            },
        ),
    ] {
        assert!(
            block_shear(&one, method)
                .unwrap_err()
                .to_string()
                .contains(what)
        );
    }
}

/// What was recalled is told with the check and not only with the resistance.
#[test]
fn a_check_tells_what_was_recalled() {
    for (method, told) in [
        (BlockMethod::Is800, 1),
        (
            BlockMethod::As4100 {
                uniform_tension: true,
            },
            1,
        ),
        (BlockMethod::En1993 { eccentric: false }, 0),
        (BlockMethod::AiscLrfd1999, 0),
    ] {
        let found = block_shear(&block(), method).unwrap();
        assert_eq!(found.cautions().iter().count(), told, "{method}");
        let check = found
            .check(crate::units::newtons(1.0), Level::Design, 2)
            .unwrap();
        assert_eq!(check.cautions().count(), told, "{method}");
        assert_eq!((check.mode, check.place), (Mode::BlockShear, Place::Ply(2)));
    }
}

/// AISC LRFD 1999 J4.3: where both terms of rupture are alike, Fu Ant >= 0.6 Fu Anv holds and yielding of the gross shear
/// area goes with it: 0.6 Fy Agv + Fu Ant, here above rupture of both, which limits it and was recalled.
#[test]
fn alike_terms_go_with_yielding_in_shear() {
    let fu: Stress = crate::units::from_base(f64::from(1 << 28)); // a power of two: products are alike to the bit
    let area = |value: f64| square_millimetres(1024.0 * value);
    let block = BlockShear {
        yield_strength: 0.875 * fu,
        tensile_strength: fu,
        gross_shear: area(2.0),
        net_shear: area(1.0),
        gross_tension: 0.6 * area(1.0),
        net_tension: 0.6 * area(1.0),
    };
    assert_eq!(
        block.tensile_strength * block.net_tension,
        0.6 * fu * block.net_shear
    );
    let found = block_shear(&block, BlockMethod::AiscLrfd1999).unwrap();
    assert_eq!(found.cautions().iter().count(), 1);
    assert_eq!(found.shear, 0.6 * fu * block.net_shear);
}
