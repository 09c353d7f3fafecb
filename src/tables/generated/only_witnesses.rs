// Written by tests/tables_are_current.rs from tables/witnesses.csv. Not edited by hand.

use crate::names::{AstmGrade, BoltGrade, SaeGrade, StainlessClass};
use crate::units::{Length, inches, millimetres};

pub(crate) static ONLY_WITNESSES: [(BoltGrade, Option<Length>, Length); 22] = [
    (BoltGrade::Sae(SaeGrade::Grade4), None, inches(1.5)),
    (BoltGrade::Astm(AstmGrade::F3125A325m), None, millimetres(36.0)),
    (BoltGrade::Astm(AstmGrade::F568m10_9_3), None, millimetres(36.0)),
    (BoltGrade::Stainless(StainlessClass::A1_70), Some(millimetres(24.0)), millimetres(39.0)),
    (BoltGrade::Stainless(StainlessClass::A1_80), Some(millimetres(24.0)), millimetres(39.0)),
    (BoltGrade::Stainless(StainlessClass::A3_50), None, millimetres(39.0)),
    (BoltGrade::Stainless(StainlessClass::A3_70), None, millimetres(24.0)),
    (BoltGrade::Stainless(StainlessClass::A3_70), Some(millimetres(24.0)), millimetres(39.0)),
    (BoltGrade::Stainless(StainlessClass::A3_80), None, millimetres(24.0)),
    (BoltGrade::Stainless(StainlessClass::A4_80), Some(millimetres(24.0)), millimetres(39.0)),
    (BoltGrade::Stainless(StainlessClass::A5_50), None, millimetres(39.0)),
    (BoltGrade::Stainless(StainlessClass::A5_70), None, millimetres(24.0)),
    (BoltGrade::Stainless(StainlessClass::A5_70), Some(millimetres(24.0)), millimetres(39.0)),
    (BoltGrade::Stainless(StainlessClass::A5_80), None, millimetres(24.0)),
    (BoltGrade::Stainless(StainlessClass::A5_80), Some(millimetres(24.0)), millimetres(39.0)),
    (BoltGrade::Stainless(StainlessClass::C1_50), None, millimetres(39.0)),
    (BoltGrade::Stainless(StainlessClass::C1_70), None, millimetres(39.0)),
    (BoltGrade::Stainless(StainlessClass::C3_80), None, millimetres(39.0)),
    (BoltGrade::Stainless(StainlessClass::C4_50), None, millimetres(39.0)),
    (BoltGrade::Stainless(StainlessClass::C4_70), None, millimetres(39.0)),
    (BoltGrade::Stainless(StainlessClass::F1_45), None, millimetres(24.0)),
    (BoltGrade::Stainless(StainlessClass::F1_60), None, millimetres(24.0)),
];
