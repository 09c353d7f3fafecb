// Written by tests/tables_are_current.rs from tables/endurance_strengths_metric.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::names::{BoltGrade, PropertyClass};
use crate::tables::fatigue::EnduranceRow;
use crate::units::{megapascals, millimetres};

pub(in crate::tables) static ENDURANCE_STRENGTHS_METRIC: [EnduranceRow; 4] = [
    EnduranceRow { bolt: BoltGrade::Iso(PropertyClass::Class8_8), size_from: millimetres(16.0), size_thru: millimetres(36.0), endurance_strength: megapascals(129.0), provenance: known(&sources::SHIGLEY_8_17, Basis::Reproduced) },
    EnduranceRow { bolt: BoltGrade::Iso(PropertyClass::Class9_8), size_from: millimetres(1.6), size_thru: millimetres(16.0), endurance_strength: megapascals(140.0), provenance: known(&sources::SHIGLEY_8_17, Basis::Reproduced) },
    EnduranceRow { bolt: BoltGrade::Iso(PropertyClass::Class10_9), size_from: millimetres(5.0), size_thru: millimetres(36.0), endurance_strength: megapascals(162.0), provenance: known(&sources::SHIGLEY_8_17, Basis::Reproduced) },
    EnduranceRow { bolt: BoltGrade::Iso(PropertyClass::Class12_9), size_from: millimetres(1.6), size_thru: millimetres(36.0), endurance_strength: megapascals(190.0), provenance: known(&sources::SHIGLEY_8_17, Basis::Reproduced) },
];
