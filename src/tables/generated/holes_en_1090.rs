// Written by tests/tables_are_current.rs from tables/holes_en_1090.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::optional;
use crate::tables::en_holes::EnHole;
use crate::units::{millimetres};

pub(in crate::tables) static HOLES_EN_1090: [EnHole; 4] = [
    EnHole { diameter_from: millimetres(12.0), diameter_thru: optional::millimetres(14.0), normal_clearance: millimetres(1.0), oversize_clearance: millimetres(3.0), short_slot_clearance: millimetres(4.0), long_slot_clearance_ratio: 1.5, note: Some("towers and masts 0.5 mm less, as recalled; a 2 mm hole is allowed by EN 1993-1-8 3.6.1(5)"), provenance: known(&sources::EN1090_2_11, Basis::Reproduced) },
    EnHole { diameter_from: millimetres(16.0), diameter_thru: optional::millimetres(22.0), normal_clearance: millimetres(2.0), oversize_clearance: millimetres(4.0), short_slot_clearance: millimetres(6.0), long_slot_clearance_ratio: 1.5, note: None, provenance: known(&sources::EN1090_2_11, Basis::Reproduced) },
    EnHole { diameter_from: millimetres(24.0), diameter_thru: optional::millimetres(24.0), normal_clearance: millimetres(2.0), oversize_clearance: millimetres(6.0), short_slot_clearance: millimetres(8.0), long_slot_clearance_ratio: 1.5, note: None, provenance: known(&sources::EN1090_2_11, Basis::Reproduced) },
    EnHole { diameter_from: millimetres(27.0), diameter_thru: None, normal_clearance: millimetres(3.0), oversize_clearance: millimetres(8.0), short_slot_clearance: millimetres(10.0), long_slot_clearance_ratio: 1.5, note: None, provenance: known(&sources::EN1090_2_11, Basis::Reproduced) },
];
