// Written by tests/tables_are_current.rs from tables/length_tolerances_metric.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::screws::{LengthTolerance, ToleranceGrade};
use crate::units::{millimetres};

pub(in crate::tables) static LENGTH_TOLERANCES_METRIC: [LengthTolerance; 26] = [
    LengthTolerance { tolerance_grade: ToleranceGrade::Js15, length_over: millimetres(0.0), length_thru: millimetres(3.0), tolerance: millimetres(0.2), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js15, length_over: millimetres(3.0), length_thru: millimetres(6.0), tolerance: millimetres(0.24), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js15, length_over: millimetres(6.0), length_thru: millimetres(10.0), tolerance: millimetres(0.29), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js15, length_over: millimetres(10.0), length_thru: millimetres(18.0), tolerance: millimetres(0.35), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Reproduced) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js15, length_over: millimetres(18.0), length_thru: millimetres(30.0), tolerance: millimetres(0.42), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Reproduced) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js15, length_over: millimetres(30.0), length_thru: millimetres(50.0), tolerance: millimetres(0.5), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Reproduced) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js15, length_over: millimetres(50.0), length_thru: millimetres(80.0), tolerance: millimetres(0.6), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Reproduced) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js15, length_over: millimetres(80.0), length_thru: millimetres(120.0), tolerance: millimetres(0.7), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Reproduced) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js15, length_over: millimetres(120.0), length_thru: millimetres(180.0), tolerance: millimetres(0.8), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Reproduced) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js15, length_over: millimetres(180.0), length_thru: millimetres(250.0), tolerance: millimetres(0.925), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js15, length_over: millimetres(250.0), length_thru: millimetres(315.0), tolerance: millimetres(1.05), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js15, length_over: millimetres(315.0), length_thru: millimetres(400.0), tolerance: millimetres(1.15), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js15, length_over: millimetres(400.0), length_thru: millimetres(500.0), tolerance: millimetres(1.25), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js17, length_over: millimetres(0.0), length_thru: millimetres(3.0), tolerance: millimetres(0.5), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js17, length_over: millimetres(3.0), length_thru: millimetres(6.0), tolerance: millimetres(0.6), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js17, length_over: millimetres(6.0), length_thru: millimetres(10.0), tolerance: millimetres(0.75), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js17, length_over: millimetres(10.0), length_thru: millimetres(18.0), tolerance: millimetres(0.9), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js17, length_over: millimetres(18.0), length_thru: millimetres(30.0), tolerance: millimetres(1.05), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js17, length_over: millimetres(30.0), length_thru: millimetres(50.0), tolerance: millimetres(1.25), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Reproduced) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js17, length_over: millimetres(50.0), length_thru: millimetres(80.0), tolerance: millimetres(1.5), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Reproduced) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js17, length_over: millimetres(80.0), length_thru: millimetres(120.0), tolerance: millimetres(1.75), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Reproduced) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js17, length_over: millimetres(120.0), length_thru: millimetres(180.0), tolerance: millimetres(2.0), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js17, length_over: millimetres(180.0), length_thru: millimetres(250.0), tolerance: millimetres(2.3), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js17, length_over: millimetres(250.0), length_thru: millimetres(315.0), tolerance: millimetres(2.6), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js17, length_over: millimetres(315.0), length_thru: millimetres(400.0), tolerance: millimetres(2.85), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
    LengthTolerance { tolerance_grade: ToleranceGrade::Js17, length_over: millimetres(400.0), length_thru: millimetres(500.0), tolerance: millimetres(3.15), provenance: known(&sources::ISO4759_1_LENGTH, Basis::Computed) },
];
