//! Plates that are pressed between their rows and behind the last of them.

use super::*;
use crate::connection::tests::{at, force, outline, rectangle};
use crate::connection::{ConnectionVerdict, Side};
use crate::joint::{Joint, JointMethods, RuleSet};
use crate::parts::WasherStyle;
use crate::strength::check::Place;
use crate::units::UnitSystem;

/// A tongue of 16 mm between covers of 8, 140 mm wide, with two rows of two bolts: the tongue is pressed by `push` kN.
/// Beyond its last row it may be wider.
fn strut(pitch: f64, buckles_over: &str, push: f64, wider: f64) -> ConnectionVerdict {
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
    let (out, from) = (70.0 + wider, half + 20.0);
    let tongue = outline(&[
        (-70.0, -end),
        (70.0, -end),
        (70.0, from),
        (out, end),
        (-out, end),
        (-70.0, from),
    ]);
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
        .plate("tongue", tongue)
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

/// Rows 600 mm apart: 0.6 of that, by Table 3.3 of EN 1993-1-8, is 360 mm; over i = 16 / sqrt 12 = 4.6188 mm 77.94, of 86.815
/// it is 0.8978: phi = 0.5 (1 + 0.49 x 0.6978 + 0.8060) = 1.07398, chi = 1 / (1.07398 + sqrt(1.15343 - 0.80604)) = 0.6012. 40 mm
/// behind them, or 36 between rows, take nothing off 140 x 16 x 275 = 616 kN, nor does a pull.
#[test]
fn between_its_rows_a_plate_buckles_too() {
    let near = |found: f64, bears: f64| (found * bears - 100.0).abs() < 0.001 * 100.0;
    for wider in [0.0, 60.0] {
        let of = |pitch, length, push| tongue(&strut(pitch, length, push, wider));
        let short = of(60.0, "40 mm", 100.0);
        assert!(near(short, 616.0), "{short}");
        let long = of(600.0, "40 mm", 100.0);
        assert!(near(long, 0.6012 * 616.0), "{wider}: {long}");
        // Longer behind them than between them, that counts: 360 mm there.
        let behind = of(60.0, "360 mm", 100.0);
        assert!(near(behind, 0.6012 * 616.0), "{wider}: {behind}");
        let pulled = of(600.0, "360 mm", -100.0);
        assert!(near(pulled, 616.0), "{pulled}");
    }
}
