//! Plates that are pressed between their rows and behind the last of them.

use super::*;
use crate::connection::tests::{at, force, rectangle};
use crate::connection::{ConnectionVerdict, Side};
use crate::joint::{Joint, JointMethods, RuleSet};
use crate::parts::WasherStyle;
use crate::strength::check::Place;
use crate::units::UnitSystem;

/// A tongue of 16 mm between covers of 8, 140 mm wide, with two rows of two bolts: the tongue is pressed by `push` kN.
fn strut(pitch: f64, buckles_over: &str, push: f64) -> ConnectionVerdict {
    let names = [("cover", "8 mm"), ("tongue", "16 mm"), ("cover", "8 mm")];
    let bolt = names
        .iter()
        .fold(Joint::builder("M16"), |bolt, (name, thickness)| {
            bolt.ply(*name, *thickness).material("S275 steel")
        });
    let bolt = bolt
        .washers(WasherStyle::Iso7090)
        .methods(JointMethods::en_1993())
        .load_factor(1.0)
        .rules(RuleSet::En1090.rules(UnitSystem::Si));
    let (half, end) = (0.5 * pitch, 0.5 * pitch + 40.0);
    let plate = || rectangle((-70.0, -end), (70.0, end));
    Connection::builder(bolt)
        .bolts(at(&[
            (-30.0, -half),
            (30.0, -half),
            (30.0, half),
            (-30.0, half),
        ]))
        .plate("cover", plate())
        .held(Side::Bottom)
        .buckling_length("40 mm")
        .plate("tongue", plate())
        .held(Side::Top)
        .buckling_length(buckles_over)
        .loaded("tongue")
        .cases([force([0.0, -push, 0.0])])
        .build()
        .unwrap()
        .check()
        .unwrap()
}

fn tongue(found: &ConnectionVerdict) -> f64 {
    let checks = found.checks.iter().map(|own| &own.check);
    let own = checks.filter(|own| own.mode == MODE && own.place == Place::Ply(2));
    own.map(|own| own.utilisation.value).fold(0.0, f64::max)
}

/// Rows 600 mm apart buckle where 40 mm behind the last do not, though nothing else is said of them; rows 60 mm apart do not. What
/// is pulled does not either: 140 x 16 x 275 = 616 kN.
#[test]
fn between_its_rows_a_plate_buckles_too() {
    let whole = 100.0 / 616.0;
    let short = tongue(&strut(60.0, "40 mm", 100.0));
    let long = tongue(&strut(600.0, "40 mm", 100.0));
    assert!((short - whole).abs() < 0.1 * whole, "{short} {whole}");
    assert!(long > 1.5 * whole, "{long} {whole}");
    // Longer behind them than between them, that counts; and the longer, the worse.
    let behind = tongue(&strut(60.0, "400 mm", 100.0));
    assert!(behind > 1.5 * whole, "{behind}");
    assert!(tongue(&strut(600.0, "400 mm", 100.0)) >= long - 1e-9);
    let pulled = tongue(&strut(600.0, "400 mm", -100.0));
    assert!((pulled - whole).abs() < 0.01 * whole, "{pulled}");
}
