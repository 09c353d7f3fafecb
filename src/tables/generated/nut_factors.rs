// Written by tests/tables_are_current.rs from tables/nut_factors.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::friction::{Condition, NutFactorRow};

pub(in crate::tables) static NUT_FACTORS: [NutFactorRow; 37] = [
    NutFactorRow { condition: Condition::Plain, publisher: "trade guides", k_min: None, k_nominal: Some(0.20), k_max: None, note: Some("dry"), provenance: known(&sources::K_TRADE_GUIDES, Basis::Reproduced) },
    NutFactorRow { condition: Condition::Plain, publisher: "machine design notes", k_min: None, k_nominal: Some(0.20), k_max: None, note: Some("cleaned and dry"), provenance: known(&sources::K_NOTES, Basis::Reproduced) },
    NutFactorRow { condition: Condition::Plain, publisher: "fastener maker", k_min: Some(0.18), k_nominal: None, k_max: Some(0.27), note: Some("dry"), provenance: known(&sources::K_SUPPLIER, Basis::Reproduced) },
    NutFactorRow { condition: Condition::Plain, publisher: "Bickford and Nassar", k_min: None, k_nominal: Some(0.2), k_max: None, note: Some("bare steel"), provenance: known(&sources::K_BICKFORD_NASSAR, Basis::Reproduced) },
    NutFactorRow { condition: Condition::Plain, publisher: "Bickford", k_min: Some(0.158), k_nominal: Some(0.199), k_max: Some(0.267), note: Some("as received"), provenance: known(&sources::K_BICKFORD, Basis::Memory) },
    NutFactorRow { condition: Condition::BlackOxide, publisher: "Shigley", k_min: None, k_nominal: Some(0.30), k_max: None, note: Some("nonplated, black finish"), provenance: known(&sources::SHIGLEY_8_15, Basis::Reproduced) },
    NutFactorRow { condition: Condition::BlackOxide, publisher: "Bickford", k_min: Some(0.109), k_nominal: Some(0.179), k_max: Some(0.279), note: None, provenance: known(&sources::K_BICKFORD, Basis::Memory) },
    NutFactorRow { condition: Condition::ZincPlated, publisher: "Shigley", k_min: None, k_nominal: Some(0.20), k_max: None, note: Some("state of lubrication not given"), provenance: known(&sources::SHIGLEY_8_15, Basis::Reproduced) },
    NutFactorRow { condition: Condition::ZincPlated, publisher: "distributor torque guide", k_min: None, k_nominal: Some(0.17), k_max: None, note: Some("dry"), provenance: known(&sources::K_DISTRIBUTOR, Basis::Reproduced) },
    NutFactorRow { condition: Condition::ZincPlated, publisher: "fastener maker", k_min: Some(0.17), k_nominal: None, k_max: Some(0.35), note: None, provenance: known(&sources::K_SUPPLIER, Basis::Reproduced) },
    NutFactorRow { condition: Condition::ZincPlated, publisher: "Bickford and Nassar", k_min: None, k_nominal: Some(0.295), k_max: None, note: Some("dry"), provenance: known(&sources::K_BICKFORD_NASSAR, Basis::Reproduced) },
    NutFactorRow { condition: Condition::ZincPlated, publisher: "Bickford", k_min: Some(0.075), k_nominal: Some(0.295), k_max: Some(0.53), note: Some("dry"), provenance: known(&sources::K_BICKFORD, Basis::Memory) },
    NutFactorRow { condition: Condition::CadmiumPlated, publisher: "Shigley", k_min: None, k_nominal: Some(0.16), k_max: None, note: Some("state of lubrication not given"), provenance: known(&sources::SHIGLEY_8_15, Basis::Reproduced) },
    NutFactorRow { condition: Condition::CadmiumPlated, publisher: "fastener maker", k_min: Some(0.15), k_nominal: None, k_max: Some(0.19), note: None, provenance: known(&sources::K_SUPPLIER, Basis::Reproduced) },
    NutFactorRow { condition: Condition::CadmiumPlated, publisher: "Bickford and Nassar", k_min: None, k_nominal: Some(0.2), k_max: None, note: Some("dry"), provenance: known(&sources::K_BICKFORD_NASSAR, Basis::Reproduced) },
    NutFactorRow { condition: Condition::CadmiumPlated, publisher: "Bickford", k_min: Some(0.106), k_nominal: Some(0.20), k_max: Some(0.328), note: Some("dry"), provenance: known(&sources::K_BICKFORD, Basis::Memory) },
    NutFactorRow { condition: Condition::Plated, publisher: "distributor torque guide", k_min: None, k_nominal: Some(0.15), k_max: None, note: None, provenance: known(&sources::K_DISTRIBUTOR, Basis::Reproduced) },
    NutFactorRow { condition: Condition::Plated, publisher: "IFI", k_min: None, k_nominal: Some(0.15), k_max: None, note: None, provenance: known(&sources::K_IFI, Basis::Reproduced) },
    NutFactorRow { condition: Condition::ZincFlake, publisher: "fastener maker", k_min: Some(0.16), k_nominal: None, k_max: Some(0.32), note: None, provenance: known(&sources::K_SUPPLIER, Basis::Reproduced) },
    NutFactorRow { condition: Condition::Lubricated, publisher: "Shigley", k_min: None, k_nominal: Some(0.18), k_max: None, note: None, provenance: known(&sources::SHIGLEY_8_15, Basis::Reproduced) },
    NutFactorRow { condition: Condition::Lubricated, publisher: "distributor torque guide", k_min: None, k_nominal: Some(0.15), k_max: None, note: None, provenance: known(&sources::K_DISTRIBUTOR, Basis::Reproduced) },
    NutFactorRow { condition: Condition::Oiled, publisher: "machine design notes", k_min: None, k_nominal: Some(0.15), k_max: None, note: Some("any oil at all"), provenance: known(&sources::K_NOTES, Basis::Reproduced) },
    NutFactorRow { condition: Condition::Oiled, publisher: "fastener maker", k_min: Some(0.10), k_nominal: None, k_max: Some(0.26), note: Some("machine oil"), provenance: known(&sources::K_SUPPLIER, Basis::Reproduced) },
    NutFactorRow { condition: Condition::Oiled, publisher: "Bickford", k_min: Some(0.10), k_nominal: Some(0.21), k_max: Some(0.225), note: Some("machine oil"), provenance: known(&sources::K_BICKFORD, Basis::Memory) },
    NutFactorRow { condition: Condition::PhosphateAndOil, publisher: "fastener maker", k_min: Some(0.15), k_nominal: None, k_max: Some(0.22), note: None, provenance: known(&sources::K_SUPPLIER, Basis::Reproduced) },
    NutFactorRow { condition: Condition::Moly, publisher: "Bickford", k_min: Some(0.10), k_nominal: Some(0.13), k_max: Some(0.18), note: Some("paste or grease"), provenance: known(&sources::K_BICKFORD, Basis::Memory) },
    NutFactorRow { condition: Condition::AntiSeize, publisher: "Shigley", k_min: None, k_nominal: Some(0.12), k_max: None, note: Some("anti-seize paste"), provenance: known(&sources::SHIGLEY_8_15, Basis::Reproduced) },
    NutFactorRow { condition: Condition::AntiSeize, publisher: "Bickford", k_min: Some(0.11), k_nominal: Some(0.17), k_max: Some(0.21), note: Some("paste"), provenance: known(&sources::K_BICKFORD, Basis::Memory) },
    NutFactorRow { condition: Condition::CopperAntiSeize, publisher: "Bickford", k_min: Some(0.08), k_nominal: Some(0.132), k_max: Some(0.23), note: None, provenance: known(&sources::K_BICKFORD, Basis::Memory) },
    NutFactorRow { condition: Condition::Waxed, publisher: "distributor torque guide", k_min: None, k_nominal: Some(0.15), k_max: None, note: None, provenance: known(&sources::K_DISTRIBUTOR, Basis::Reproduced) },
    NutFactorRow { condition: Condition::WaxedLockNut, publisher: "distributor torque guide", k_min: Some(0.12), k_nominal: None, k_max: Some(0.16), note: Some("all-metal top-lock nut, waxed"), provenance: known(&sources::K_DISTRIBUTOR, Basis::Reproduced) },
    NutFactorRow { condition: Condition::GripNut, publisher: "Shigley", k_min: None, k_nominal: Some(0.09), k_max: None, note: Some("grip nuts"), provenance: known(&sources::SHIGLEY_8_15, Basis::Reproduced) },
    NutFactorRow { condition: Condition::StainlessLubricated, publisher: "distributor torque guide", k_min: None, k_nominal: Some(0.16), k_max: None, note: Some("A2-70, F593"), provenance: known(&sources::K_DISTRIBUTOR, Basis::Reproduced) },
    NutFactorRow { condition: Condition::StainlessDry, publisher: "distributor torque guide", k_min: None, k_nominal: Some(0.35), k_max: None, note: Some("A2-70, F593"), provenance: known(&sources::K_DISTRIBUTOR, Basis::Reproduced) },
    NutFactorRow { condition: Condition::StainlessDry, publisher: "fastener maker", k_min: Some(0.30), k_nominal: None, k_max: Some(0.50), note: Some("302 on 302; no lubricant named"), provenance: known(&sources::K_SUPPLIER, Basis::Reproduced) },
    NutFactorRow { condition: Condition::En14399K1, publisher: "EN 14399", k_min: Some(0.10), k_nominal: None, k_max: Some(0.16), note: Some("limits of each assembly; tests read elsewhere gave means of 0.119 to 0.131"), provenance: known(&sources::EN14399_1, Basis::Memory) },
    NutFactorRow { condition: Condition::En14399K2, publisher: "EN 14399", k_min: Some(0.10), k_nominal: None, k_max: Some(0.23), note: Some("limits of the mean; its coefficient of variation is at most 0.06 (0.10 in an edition of 2005)"), provenance: known(&sources::EN14399_1, Basis::Memory) },
];
