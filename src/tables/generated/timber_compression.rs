// Written by tests/tables_are_current.rs from tables/timber_compression.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::optional;
use crate::tables::timber::TimberCompression;

pub(in crate::tables) static TIMBER_COMPRESSION: [TimberCompression; 29] = [
    TimberCompression { name: "Douglas Fir-Larch", design_value: optional::ksi(0.625), characteristic: None, note: None, provenance: known(&sources::NDS_FC_PERP, Basis::Reproduced) },
    TimberCompression { name: "Douglas Fir-South", design_value: optional::ksi(0.520), characteristic: None, note: None, provenance: known(&sources::NDS_FC_PERP, Basis::Reproduced) },
    TimberCompression { name: "Eastern Softwoods", design_value: optional::ksi(0.335), characteristic: None, note: None, provenance: known(&sources::NDS_FC_PERP, Basis::Reproduced) },
    TimberCompression { name: "Hem-Fir", design_value: optional::ksi(0.405), characteristic: None, note: None, provenance: known(&sources::NDS_FC_PERP, Basis::Reproduced) },
    TimberCompression { name: "Redwood, close grain", design_value: optional::ksi(0.650), characteristic: None, note: None, provenance: known(&sources::NDS_FC_PERP, Basis::Reproduced) },
    TimberCompression { name: "Redwood, open grain", design_value: optional::ksi(0.425), characteristic: None, note: None, provenance: known(&sources::NDS_FC_PERP, Basis::Reproduced) },
    TimberCompression { name: "Southern Pine", design_value: optional::ksi(0.565), characteristic: None, note: Some("visually graded; dense grades have 0.660"), provenance: known(&sources::NDS_FC_PERP_4B, Basis::Reproduced) },
    TimberCompression { name: "Spruce-Pine-Fir", design_value: optional::ksi(0.425), characteristic: None, note: None, provenance: known(&sources::NDS_FC_PERP, Basis::Reproduced) },
    TimberCompression { name: "Spruce-Pine-Fir (South)", design_value: optional::ksi(0.335), characteristic: None, note: None, provenance: known(&sources::NDS_FC_PERP, Basis::Reproduced) },
    TimberCompression { name: "Western Cedars", design_value: optional::ksi(0.425), characteristic: None, note: None, provenance: known(&sources::NDS_FC_PERP, Basis::Reproduced) },
    TimberCompression { name: "Western Woods", design_value: optional::ksi(0.335), characteristic: None, note: None, provenance: known(&sources::NDS_FC_PERP, Basis::Reproduced) },
    TimberCompression { name: "Mixed Maple", design_value: optional::ksi(0.620), characteristic: None, note: None, provenance: known(&sources::NDS_FC_PERP, Basis::Reproduced) },
    TimberCompression { name: "Red Oak", design_value: optional::ksi(0.820), characteristic: None, note: None, provenance: known(&sources::NDS_FC_PERP, Basis::Reproduced) },
    TimberCompression { name: "White Oak", design_value: optional::ksi(0.800), characteristic: None, note: None, provenance: known(&sources::NDS_FC_PERP, Basis::Reproduced) },
    TimberCompression { name: "C14", design_value: None, characteristic: optional::megapascals(2.0), note: None, provenance: known(&sources::EN338_COMPRESSION, Basis::Reproduced) },
    TimberCompression { name: "C16", design_value: None, characteristic: optional::megapascals(2.2), note: None, provenance: known(&sources::EN338_COMPRESSION, Basis::Reproduced) },
    TimberCompression { name: "C18", design_value: None, characteristic: optional::megapascals(2.2), note: None, provenance: known(&sources::EN338_COMPRESSION, Basis::Reproduced) },
    TimberCompression { name: "C20", design_value: None, characteristic: optional::megapascals(2.3), note: None, provenance: known(&sources::EN338_COMPRESSION, Basis::Reproduced) },
    TimberCompression { name: "C22", design_value: None, characteristic: optional::megapascals(2.4), note: None, provenance: known(&sources::EN338_COMPRESSION, Basis::Reproduced) },
    TimberCompression { name: "C24", design_value: None, characteristic: optional::megapascals(2.5), note: None, provenance: known(&sources::PORTEOUS_COMPRESSION, Basis::Reproduced) },
    TimberCompression { name: "C27", design_value: None, characteristic: optional::megapascals(2.5), note: None, provenance: known(&sources::EN338_COMPRESSION, Basis::Reproduced) },
    TimberCompression { name: "C30", design_value: None, characteristic: optional::megapascals(2.7), note: None, provenance: known(&sources::EN338_COMPRESSION, Basis::Reproduced) },
    TimberCompression { name: "D30", design_value: None, characteristic: optional::megapascals(5.3), note: Some("8.0 in the editions before 2016"), provenance: known(&sources::EN338_COMPRESSION, Basis::Reproduced) },
    TimberCompression { name: "D40", design_value: None, characteristic: optional::megapascals(5.5), note: Some("8.3 in the editions before 2016"), provenance: known(&sources::EN338_COMPRESSION, Basis::Reproduced) },
    TimberCompression { name: "GL 24c", design_value: None, characteristic: optional::megapascals(2.5), note: None, provenance: known(&sources::EN14080_COMPRESSION, Basis::Reproduced) },
    TimberCompression { name: "GL 24h", design_value: None, characteristic: optional::megapascals(2.5), note: None, provenance: known(&sources::EN14080_COURSE, Basis::Reproduced) },
    TimberCompression { name: "GL 28c", design_value: None, characteristic: optional::megapascals(2.5), note: None, provenance: known(&sources::EN14080_COMPRESSION, Basis::Reproduced) },
    TimberCompression { name: "GL 28h", design_value: None, characteristic: optional::megapascals(2.5), note: None, provenance: known(&sources::EN14080_COURSE, Basis::Reproduced) },
    TimberCompression { name: "GL 32h", design_value: None, characteristic: optional::megapascals(2.5), note: None, provenance: known(&sources::EN14080_COURSE, Basis::Reproduced) },
];
