//! Neighbours, lines of bolts, and angles to a grain.

use super::*;
use crate::units::millimetres;

const RIGHT: Vector = (1.0, 0.0);
const UP: Vector = (0.0, 1.0);

#[test]
fn neighbours_lie_along_a_direction_or_across_it() {
    let found = |places: &[Vector], direction| {
        neighbours(places, 0, direction).map(|own| own.map(|far| (far * 1e6).round()))
    };
    // 3, 4, 5: less than 45 degrees off the one, more off the other.
    let steep = [(0.0, 0.0), (0.04, 0.03)];
    assert_eq!(found(&steep, RIGHT), [Some(50e3), None]);
    assert_eq!(found(&steep, UP), [None, Some(50e3)]);
    // At 45 degrees it is both; 10 nm beside them it is not.
    let slanting = [(0.0, 0.0), (-0.03, 0.03)];
    assert_eq!(found(&slanting, RIGHT), [Some(42_426.0); 2]);
    assert_eq!(found(&slanting, UP), [Some(42_426.0); 2]);
    let off = [(0.0, 0.0), (0.03 + 1e-8, 0.03)];
    assert_eq!(found(&off, RIGHT), [Some(42_426.0), None]);
    assert_eq!(found(&off, UP), [None, Some(42_426.0)]);
    // The nearest either way, whatever their order.
    let cross = [
        (0.0, 0.0),
        (-0.05, 0.0),
        (0.03, 0.0),
        (0.0, 0.07),
        (0.0, -0.09),
    ];
    assert_eq!(found(&cross, RIGHT), [Some(30e3), Some(70e3)]);
    assert_eq!(neighbours(&cross, 5, RIGHT), [None; 2]);
    assert_eq!(neighbours(&cross[..1], 0, RIGHT), [None; 2]);
}

/// Lines are counted from their first bolt on: up to half a bolt beside it is the same line.
#[test]
fn lines_of_bolts() {
    let of = |places: &[Vector], direction| {
        let found = member(places, direction, millimetres(16.0));
        (
            found.along,
            found.across,
            (found.length.value * 1e3).round(),
        )
    };
    let two_by_three = [
        (0.0, 0.0),
        (0.06, 0.0),
        (0.12, 0.0),
        (0.0, 0.05),
        (0.06, 0.05),
        (0.12, 0.05),
    ];
    assert_eq!(of(&two_by_three, RIGHT), (3, 2, 120.0));
    assert_eq!(of(&two_by_three, UP), (2, 3, 50.0));
    assert_eq!(of(&[(0.0, 0.0), (0.06, 0.008)], RIGHT), (2, 1, 60.0));
    assert_eq!(of(&[(0.0, 0.0), (0.06, 0.0081)], RIGHT), (1, 2, 60.0));
    // 0, 6 and 12 mm: the third is a line of its own, as it is 12 mm from where the first began.
    let stairs = [(0.0, 0.0), (0.06, 0.006), (0.12, 0.012)];
    assert_eq!(of(&stairs, RIGHT), (2, 2, 120.0));
}

#[test]
fn angles_to_a_grain() {
    for (grain, load, angle) in [
        (0.0, 0.0, 0.0),
        (0.0, 60.0, 60.0),
        (0.0, 20.0, 20.0),
        (0.0, 90.0, 90.0),
        (90.0, 0.0, 90.0),
        (90.0, 90.0, 0.0),
        // A grain has no sense, and no angle to it is obtuse.
        (0.0, 120.0, 60.0),
        (0.0, -60.0, 60.0),
        (30.0, 75.0, 45.0),
        (30.0, 210.0, 0.0),
    ] {
        let load = f64::to_radians(load);
        let found = between(degrees(grain), (load.cos(), load.sin()));
        let found = found.value.to_degrees();
        assert!((found - angle).abs() < 1e-9, "{grain} {load}: {found}");
    }
}
