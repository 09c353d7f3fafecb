// Written by tests/tables_are_current.rs from tables/ply_temperature_limits.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::heat::PlyTemperatureLimit;
use crate::units::{celsius};

pub(in crate::tables) static PLY_TEMPERATURE_LIMITS: [PlyTemperatureLimit; 12] = [
    PlyTemperatureLimit { ply: "ASTM A36 steel", full_strength_thru: celsius(100.0), note: Some("proportional limit still in full at 100 C (0.807 of it at 200 C, 0.613 at 300 C)"), provenance: known(&sources::EN1993_1_2_31, Basis::Reproduced) },
    PlyTemperatureLimit { ply: "ASTM A992 steel", full_strength_thru: celsius(100.0), note: Some("proportional limit still in full at 100 C (0.807 of it at 200 C, 0.613 at 300 C)"), provenance: known(&sources::EN1993_1_2_31, Basis::Reproduced) },
    PlyTemperatureLimit { ply: "AISI 1018 steel", full_strength_thru: celsius(100.0), note: Some("proportional limit still in full at 100 C (0.807 of it at 200 C, 0.613 at 300 C)"), provenance: known(&sources::EN1993_1_2_31, Basis::Reproduced) },
    PlyTemperatureLimit { ply: "AISI 1020 steel", full_strength_thru: celsius(100.0), note: Some("proportional limit still in full at 100 C (0.807 of it at 200 C, 0.613 at 300 C)"), provenance: known(&sources::EN1993_1_2_31, Basis::Reproduced) },
    PlyTemperatureLimit { ply: "ASTM A500 grade B steel, shaped", full_strength_thru: celsius(100.0), note: Some("proportional limit still in full at 100 C (0.807 of it at 200 C, 0.613 at 300 C)"), provenance: known(&sources::EN1993_1_2_31, Basis::Reproduced) },
    PlyTemperatureLimit { ply: "ASTM A500 grade B steel, round", full_strength_thru: celsius(100.0), note: Some("proportional limit still in full at 100 C (0.807 of it at 200 C, 0.613 at 300 C)"), provenance: known(&sources::EN1993_1_2_31, Basis::Reproduced) },
    PlyTemperatureLimit { ply: "AISI 4130 steel", full_strength_thru: celsius(100.0), note: Some("as of structural steel: no value of its own"), provenance: known(&sources::EN1993_1_2_31, Basis::Memory) },
    PlyTemperatureLimit { ply: "6061-T6 aluminium, typical", full_strength_thru: celsius(80.0), note: Some("from 80 to 100 C the standard wants a reduction; short heat of 100 C leaves 90 to 95 % (fire part)"), provenance: known(&sources::EN1999_1_1_HEAT, Basis::Memory) },
    PlyTemperatureLimit { ply: "6061-T6 aluminium, A-basis", full_strength_thru: celsius(80.0), note: Some("from 80 to 100 C the standard wants a reduction; short heat of 100 C leaves 90 to 95 % (fire part)"), provenance: known(&sources::EN1999_1_1_HEAT, Basis::Memory) },
    PlyTemperatureLimit { ply: "2024-T3 aluminium", full_strength_thru: celsius(80.0), note: Some("from 80 to 100 C the standard wants a reduction; short heat of 100 C leaves 90 to 95 % (fire part)"), provenance: known(&sources::EN1999_1_1_HEAT, Basis::Memory) },
    PlyTemperatureLimit { ply: "2024-T4 aluminium", full_strength_thru: celsius(80.0), note: Some("from 80 to 100 C the standard wants a reduction; short heat of 100 C leaves 90 to 95 % (fire part)"), provenance: known(&sources::EN1999_1_1_HEAT, Basis::Memory) },
    PlyTemperatureLimit { ply: "7075-T6 aluminium", full_strength_thru: celsius(80.0), note: Some("from 80 to 100 C the standard wants a reduction; short heat of 100 C leaves 90 to 95 % (fire part)"), provenance: known(&sources::EN1999_1_1_HEAT, Basis::Memory) },
];
