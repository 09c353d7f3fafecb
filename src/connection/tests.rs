//! What the tests of this folder are made of; all of it invented. Lengths in millimetres, forces in kilonewtons.

use super::*;
use crate::joint::{JointBuilder, JointMethods, RuleSet};
use crate::parts::WasherStyle;
use crate::strength::group::{GroupBolt, Point};
use crate::units::{UnitSystem, millimetres, newtons};

/// Through a hanger and a beam of S275, both of a thickness.
pub(super) fn bolt(thickness: &str) -> JointBuilder {
    bolt_by(JointMethods::en_1993(), thickness)
}

/// The same by other methods.
pub(super) fn bolt_by(methods: JointMethods, thickness: &str) -> JointBuilder {
    Joint::builder("M16")
        .ply("hanger", thickness)
        .material("S275 steel")
        .ply("beam", thickness)
        .material("S275 steel")
        .washers(WasherStyle::Iso7090)
        .methods(methods)
        .load_factor(1.5)
        .rules(RuleSet::En1090.rules(UnitSystem::Si))
}

pub(super) fn outline(corners: &[(f64, f64)]) -> Outline {
    Outline::polygon(corners.iter().map(|(x, y)| Point {
        x: millimetres(*x),
        y: millimetres(*y),
    }))
    .unwrap()
}

pub(super) fn rectangle(from: (f64, f64), to: (f64, f64)) -> Outline {
    outline(&[from, (to.0, from.1), to, (from.0, to.1)])
}

pub(super) fn at(places: &[(f64, f64)]) -> BoltPattern {
    let bolts = places
        .iter()
        .map(|(x, y)| GroupBolt::new(millimetres(*x), millimetres(*y)));
    BoltPattern::new(bolts).unwrap()
}

/// Four corners of a square about the origin.
pub(super) fn corners(side: f64) -> [(f64, f64); 4] {
    let half = 0.5 * side;
    [(-half, -half), (half, -half), (half, half), (-half, half)]
}

pub(super) fn force(kilonewtons: [f64; 3]) -> LoadCase {
    let force = kilonewtons.map(|own| newtons(1e3 * own));
    LoadCase::new("load", force, [0.0; 3].map(millimetres))
}

/// The verdict on four M16 in plates of 12 mm.
pub(super) fn hanger(kilonewtons: f64) -> ConnectionVerdict {
    Connection::builder(bolt("12 mm"))
        .bolts(at(&corners(60.0)))
        .plate("hanger", rectangle((-70.0, -70.0), (70.0, 70.0)))
        .held(Side::Bottom)
        .plate("beam", rectangle((-80.0, -80.0), (80.0, 80.0)))
        .held(Side::Top)
        .loaded("hanger")
        .cases([force([0.0, -kilonewtons, 0.0])])
        .build()
        .unwrap()
        .check()
        .unwrap()
}
