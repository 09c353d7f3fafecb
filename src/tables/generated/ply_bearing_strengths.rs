// Written by tests/tables_are_current.rs from tables/ply_bearing_strengths.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::optional;
use crate::tables::plies::PlyBearing;
use crate::units::{ksi};

pub(in crate::tables) static PLY_BEARING_STRENGTHS: [PlyBearing; 7] = [
    PlyBearing { name: "AISI 4130 steel", edge_distance_ratio: 2.0, ultimate_strength: ksi(200.0), yield_strength: optional::ksi(129.0), provenance: known(&sources::HDBK5_2_3_1_C1, Basis::Memory) },
    PlyBearing { name: "6061-T6 aluminium, typical", edge_distance_ratio: 2.0, ultimate_strength: ksi(88.0), yield_strength: optional::ksi(56.0), provenance: known(&sources::AA_TYPICAL, Basis::Reproduced) },
    PlyBearing { name: "6061-T6 aluminium, A-basis", edge_distance_ratio: 1.5, ultimate_strength: ksi(67.0), yield_strength: optional::ksi(50.0), provenance: known(&sources::HDBK5_3_6_2_B1, Basis::Memory) },
    PlyBearing { name: "6061-T6 aluminium, A-basis", edge_distance_ratio: 2.0, ultimate_strength: ksi(88.0), yield_strength: optional::ksi(58.0), provenance: known(&sources::HDBK5_3_6_2_B1, Basis::Memory) },
    PlyBearing { name: "2024-T3 aluminium", edge_distance_ratio: 1.5, ultimate_strength: ksi(104.0), yield_strength: optional::ksi(73.0), provenance: known(&sources::HDBK5_3_2_3_B1, Basis::Memory) },
    PlyBearing { name: "2024-T3 aluminium", edge_distance_ratio: 2.0, ultimate_strength: ksi(129.0), yield_strength: optional::ksi(88.0), provenance: known(&sources::HDBK5_3_2_3_B1, Basis::Memory) },
    PlyBearing { name: "7075-T6 aluminium", edge_distance_ratio: 2.0, ultimate_strength: ksi(156.0), yield_strength: None, provenance: known(&sources::HDBK5_3_7_6_B1, Basis::Reproduced) },
];
