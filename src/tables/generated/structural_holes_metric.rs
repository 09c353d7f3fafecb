// Written by tests/tables_are_current.rs from tables/structural_holes_metric.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::holes::StructuralHole;
use crate::units::{millimetres};

pub(in crate::tables) static STRUCTURAL_HOLES_METRIC: [StructuralHole; 7] = [
    StructuralHole { size: "M16", nominal_diameter: millimetres(16.0), standard: millimetres(18.0), oversize: millimetres(20.0), slot_width: millimetres(18.0), short_slot_length: millimetres(22.0), long_slot_length: millimetres(40.0), provenance: known(&sources::AISC360_05_J3_3M, Basis::Reproduced), ..StructuralHole::BLANK },
    StructuralHole { size: "M20", nominal_diameter: millimetres(20.0), standard: millimetres(22.0), oversize: millimetres(24.0), slot_width: millimetres(22.0), short_slot_length: millimetres(26.0), long_slot_length: millimetres(50.0), provenance: known(&sources::AISC360_05_J3_3M, Basis::Reproduced), ..StructuralHole::BLANK },
    StructuralHole { size: "M22", nominal_diameter: millimetres(22.0), standard: millimetres(24.0), oversize: millimetres(28.0), slot_width: millimetres(24.0), short_slot_length: millimetres(30.0), long_slot_length: millimetres(55.0), provenance: known(&sources::AISC360_05_J3_3M, Basis::Reproduced), ..StructuralHole::BLANK },
    StructuralHole { size: "M24", nominal_diameter: millimetres(24.0), standard: millimetres(27.0), oversize: millimetres(30.0), slot_width: millimetres(27.0), short_slot_length: millimetres(32.0), long_slot_length: millimetres(60.0), provenance: known(&sources::AISC360_05_J3_3M, Basis::Reproduced), ..StructuralHole::BLANK },
    StructuralHole { size: "M27", nominal_diameter: millimetres(27.0), standard: millimetres(30.0), oversize: millimetres(35.0), slot_width: millimetres(30.0), short_slot_length: millimetres(37.0), long_slot_length: millimetres(67.0), provenance: known(&sources::AISC360_05_J3_3M, Basis::Reproduced), ..StructuralHole::BLANK },
    StructuralHole { size: "M30", nominal_diameter: millimetres(30.0), standard: millimetres(33.0), oversize: millimetres(38.0), slot_width: millimetres(33.0), short_slot_length: millimetres(40.0), long_slot_length: millimetres(75.0), note: Some("M36 and larger by formula: d + 3, d + 8, (d + 3) x (d + 10), (d + 3) x 2.5 d"), provenance: known(&sources::AISC360_05_J3_3M, Basis::Reproduced), ..StructuralHole::BLANK },
    StructuralHole { size: "M36", nominal_diameter: millimetres(36.0), standard: millimetres(39.0), oversize: millimetres(44.0), slot_width: millimetres(39.0), short_slot_length: millimetres(46.0), long_slot_length: millimetres(90.0), note: Some("M36 and larger by formula: d + 3, d + 8, (d + 3) x (d + 10), (d + 3) x 2.5 d"), provenance: known(&sources::AISC360_05_J3_3M, Basis::Computed), ..StructuralHole::BLANK },
];
