// Written by tests/tables_are_current.rs from tables/washer_hardnesses.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::grades::HardnessScale;
use crate::tables::washer_rules::WasherHardness;
use crate::tables::washers::WasherStyle;

pub(in crate::tables) static WASHER_HARDNESSES: [WasherHardness; 15] = [
    WasherHardness { style: WasherStyle::F436, property_class: None, hardness_min: 38.0, hardness_scale: HardnessScale::RockwellC, note: Some("26 HRC at least if hot-dip galvanized"), provenance: known(&sources::F436_HARDNESS, Basis::Reproduced) },
    WasherHardness { style: WasherStyle::Iso7089, property_class: Some("200HV"), hardness_min: 200.0, hardness_scale: HardnessScale::Vickers, note: None, provenance: known(&sources::WASHER_CLASSES, Basis::Reproduced) },
    WasherHardness { style: WasherStyle::Iso7089, property_class: Some("300HV"), hardness_min: 300.0, hardness_scale: HardnessScale::Vickers, note: None, provenance: known(&sources::WASHER_CLASSES, Basis::Reproduced) },
    WasherHardness { style: WasherStyle::Iso7090, property_class: Some("200HV"), hardness_min: 200.0, hardness_scale: HardnessScale::Vickers, note: None, provenance: known(&sources::ISO7090_HARDNESS, Basis::Reproduced) },
    WasherHardness { style: WasherStyle::Iso7090, property_class: Some("300HV"), hardness_min: 300.0, hardness_scale: HardnessScale::Vickers, note: None, provenance: known(&sources::ISO7090_HARDNESS, Basis::Reproduced) },
    WasherHardness { style: WasherStyle::Din125, property_class: None, hardness_min: 140.0, hardness_scale: HardnessScale::Vickers, note: None, provenance: known(&sources::WASHER_CLASSES, Basis::Reproduced) },
    WasherHardness { style: WasherStyle::Din125, property_class: Some("200HV"), hardness_min: 200.0, hardness_scale: HardnessScale::Vickers, note: Some("editions to 1990"), provenance: known(&sources::WASHER_HARDNESS_RECALLED, Basis::Memory) },
    WasherHardness { style: WasherStyle::Din125, property_class: Some("300HV"), hardness_min: 300.0, hardness_scale: HardnessScale::Vickers, note: Some("editions to 1990"), provenance: known(&sources::WASHER_HARDNESS_RECALLED, Basis::Memory) },
    WasherHardness { style: WasherStyle::Iso7091, property_class: Some("100HV"), hardness_min: 100.0, hardness_scale: HardnessScale::Vickers, note: None, provenance: known(&sources::WASHER_CLASSES, Basis::Reproduced) },
    WasherHardness { style: WasherStyle::Iso7092, property_class: Some("200HV"), hardness_min: 200.0, hardness_scale: HardnessScale::Vickers, note: None, provenance: known(&sources::WASHER_HARDNESS_RECALLED, Basis::Memory) },
    WasherHardness { style: WasherStyle::Iso7092, property_class: Some("300HV"), hardness_min: 300.0, hardness_scale: HardnessScale::Vickers, note: None, provenance: known(&sources::WASHER_HARDNESS_RECALLED, Basis::Memory) },
    WasherHardness { style: WasherStyle::Iso7093, property_class: Some("200HV"), hardness_min: 200.0, hardness_scale: HardnessScale::Vickers, note: None, provenance: known(&sources::ISO7093_GBT96_1, Basis::Reproduced) },
    WasherHardness { style: WasherStyle::Iso7093, property_class: Some("300HV"), hardness_min: 300.0, hardness_scale: HardnessScale::Vickers, note: None, provenance: known(&sources::ISO7093_GBT96_1, Basis::Reproduced) },
    WasherHardness { style: WasherStyle::Iso7094, property_class: Some("100HV"), hardness_min: 100.0, hardness_scale: HardnessScale::Vickers, note: None, provenance: known(&sources::ISO7094_GBT5287, Basis::Reproduced) },
    WasherHardness { style: WasherStyle::En14399_6, property_class: None, hardness_min: 300.0, hardness_scale: HardnessScale::Vickers, note: Some("300 to 370 HV"), provenance: known(&sources::EN14399_6_HARDNESS, Basis::Reproduced) },
];
