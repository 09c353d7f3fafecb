// Written by tests/tables_are_current.rs from tables/friction_classes.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::friction::{FrictionClass, FrictionClassRow};

pub(in crate::tables) static FRICTION_CLASSES: [FrictionClassRow; 5] = [
    FrictionClassRow { class: FrictionClass::A, friction_min: 0.04, friction_max: Some(0.10), provenance: known(&sources::VDI2230_FRICTION, Basis::Reproduced) },
    FrictionClassRow { class: FrictionClass::B, friction_min: 0.08, friction_max: Some(0.16), provenance: known(&sources::VDI2230_FRICTION, Basis::Reproduced) },
    FrictionClassRow { class: FrictionClass::C, friction_min: 0.14, friction_max: Some(0.24), provenance: known(&sources::VDI2230_FRICTION, Basis::Reproduced) },
    FrictionClassRow { class: FrictionClass::D, friction_min: 0.20, friction_max: Some(0.35), provenance: known(&sources::VDI2230_FRICTION, Basis::Reproduced) },
    FrictionClassRow { class: FrictionClass::E, friction_min: 0.30, friction_max: None, provenance: known(&sources::VDI2230_FRICTION, Basis::Reproduced) },
];
