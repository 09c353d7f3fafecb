// Written by tests/tables_are_current.rs from tables/endurance_strengths_inch.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::names::{BoltGrade, SaeGrade};
use crate::tables::fatigue::EnduranceRow;
use crate::units::{inches, ksi};

pub(in crate::tables) static ENDURANCE_STRENGTHS_INCH: [EnduranceRow; 4] = [
    EnduranceRow { bolt: BoltGrade::Sae(SaeGrade::Grade5), size_from: inches(0.25), size_thru: inches(1.0), endurance_strength: ksi(18.6), provenance: known(&sources::SHIGLEY_8_17, Basis::Reproduced) },
    EnduranceRow { bolt: BoltGrade::Sae(SaeGrade::Grade5), size_from: inches(1.125), size_thru: inches(1.5), endurance_strength: ksi(16.3), provenance: known(&sources::SHIGLEY_8_17, Basis::Reproduced) },
    EnduranceRow { bolt: BoltGrade::Sae(SaeGrade::Grade7), size_from: inches(0.25), size_thru: inches(1.5), endurance_strength: ksi(20.6), provenance: known(&sources::SHIGLEY_8_17, Basis::Reproduced) },
    EnduranceRow { bolt: BoltGrade::Sae(SaeGrade::Grade8), size_from: inches(0.25), size_thru: inches(1.5), endurance_strength: ksi(23.2), provenance: known(&sources::SHIGLEY_8_17, Basis::Reproduced) },
];
