// Written by tests/tables_are_current.rs from tables/unified_thread_classes.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::thread_tolerances::UnifiedClassRow;
use crate::names::UnifiedClass;

pub(in crate::tables) static UNIFIED_THREAD_CLASSES: [UnifiedClassRow; 6] = [
    UnifiedClassRow { class: UnifiedClass::Class1A, pitch_tolerance_factor: 1.5, allowance_factor: 0.300, major_tolerance_factor: Some(0.090), provenance: known(&sources::B1_1_TOLERANCE_FORMULAS, Basis::Reproduced) },
    UnifiedClassRow { class: UnifiedClass::Class2A, pitch_tolerance_factor: 1.0, allowance_factor: 0.300, major_tolerance_factor: Some(0.060), provenance: known(&sources::B1_1_TOLERANCE_FORMULAS, Basis::Reproduced) },
    UnifiedClassRow { class: UnifiedClass::Class3A, pitch_tolerance_factor: 0.75, allowance_factor: 0.0, major_tolerance_factor: Some(0.060), provenance: known(&sources::B1_1_TOLERANCE_FORMULAS, Basis::Reproduced) },
    UnifiedClassRow { class: UnifiedClass::Class1B, pitch_tolerance_factor: 1.95, allowance_factor: 0.0, major_tolerance_factor: None, provenance: known(&sources::B1_1_TOLERANCE_FORMULAS, Basis::Reproduced) },
    UnifiedClassRow { class: UnifiedClass::Class2B, pitch_tolerance_factor: 1.3, allowance_factor: 0.0, major_tolerance_factor: None, provenance: known(&sources::B1_1_TOLERANCE_FORMULAS, Basis::Reproduced) },
    UnifiedClassRow { class: UnifiedClass::Class3B, pitch_tolerance_factor: 0.975, allowance_factor: 0.0, major_tolerance_factor: None, provenance: known(&sources::B1_1_TOLERANCE_FORMULAS, Basis::Reproduced) },
];
