// Written by tests/tables_are_current.rs from tables/shear_ratios.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::strengths::ShearRatio;

pub(in crate::tables) static SHEAR_RATIOS: [ShearRatio; 8] = [
    ShearRatio { bolts: "inch fasteners, trade rule", shear_to_tensile: 0.60, provenance: known(&sources::RATIO_TRADE, Basis::Reproduced) },
    ShearRatio { bolts: "A325 and A490 bolts, mean of tests", shear_to_tensile: 0.62, provenance: known(&sources::RATIO_TESTS, Basis::Memory) },
    ShearRatio { bolts: "yield in shear over yield in tension, distortion energy", shear_to_tensile: 0.577, provenance: known(&sources::RATIO_MISES, Basis::Computed) },
    ShearRatio { bolts: "socket head cap screws to ASTM A574, body", shear_to_tensile: 0.60, provenance: known(&sources::RATIO_SOCKET, Basis::Reproduced) },
    ShearRatio { bolts: "AN aircraft bolts", shear_to_tensile: 0.60, provenance: known(&sources::RATIO_AN, Basis::Reproduced) },
    ShearRatio { bolts: "aircraft bolts of 160 ksi", shear_to_tensile: 0.594, provenance: known(&sources::RATIO_160, Basis::Reproduced) },
    ShearRatio { bolts: "aircraft bolts to MIL-B-8831B, 180 ksi", shear_to_tensile: 0.60, provenance: known(&sources::RATIO_8831, Basis::Published) },
    ShearRatio { bolts: "internal wrenching aircraft bolts to MIL-B-7838C, 160 ksi", shear_to_tensile: 0.60, provenance: known(&sources::RATIO_7838, Basis::Published) },
];
