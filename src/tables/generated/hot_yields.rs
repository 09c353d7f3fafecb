// Written by tests/tables_are_current.rs from tables/hot_yields.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::optional;
use crate::tables::heat::{HotSteel, HotYield};
use crate::units::{celsius};

pub(in crate::tables) static HOT_YIELDS: [HotYield; 35] = [
    HotYield { steel: HotSteel::Class5_6, temperature: celsius(20.0), yield_strength: optional::megapascals(300.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class5_6, temperature: celsius(100.0), yield_strength: optional::megapascals(270.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class5_6, temperature: celsius(200.0), yield_strength: optional::megapascals(230.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class5_6, temperature: celsius(250.0), yield_strength: optional::megapascals(215.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class5_6, temperature: celsius(300.0), yield_strength: optional::megapascals(195.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class8_8, temperature: celsius(20.0), yield_strength: optional::megapascals(640.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class8_8, temperature: celsius(100.0), yield_strength: optional::megapascals(590.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class8_8, temperature: celsius(200.0), yield_strength: optional::megapascals(540.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class8_8, temperature: celsius(250.0), yield_strength: optional::megapascals(510.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class8_8, temperature: celsius(300.0), yield_strength: optional::megapascals(480.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class10_9, temperature: celsius(20.0), yield_strength: optional::megapascals(940.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class10_9, temperature: celsius(100.0), yield_strength: optional::megapascals(875.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class10_9, temperature: celsius(200.0), yield_strength: optional::megapascals(790.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class10_9, temperature: celsius(250.0), yield_strength: optional::megapascals(745.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class10_9, temperature: celsius(300.0), yield_strength: optional::megapascals(705.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class12_9, temperature: celsius(20.0), yield_strength: optional::megapascals(1100.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class12_9, temperature: celsius(100.0), yield_strength: optional::megapascals(1020.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class12_9, temperature: celsius(200.0), yield_strength: optional::megapascals(925.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class12_9, temperature: celsius(250.0), yield_strength: optional::megapascals(875.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Class12_9, temperature: celsius(300.0), yield_strength: optional::megapascals(825.0), yield_ratio: None, note: None, provenance: known(&sources::ISO898_1_1999_HOT, Basis::Reproduced) },
    HotYield { steel: HotSteel::Austenitic, temperature: celsius(20.0), yield_strength: None, yield_ratio: optional::percent(100.0), note: Some("by definition: the others are shares of it"), provenance: known(&sources::ISO3506_1_HOT, Basis::Computed) },
    HotYield { steel: HotSteel::Austenitic, temperature: celsius(100.0), yield_strength: None, yield_ratio: optional::percent(85.0), note: None, provenance: known(&sources::ISO3506_1_HOT, Basis::Memory) },
    HotYield { steel: HotSteel::Austenitic, temperature: celsius(200.0), yield_strength: None, yield_ratio: optional::percent(80.0), note: None, provenance: known(&sources::ISO3506_1_HOT, Basis::Memory) },
    HotYield { steel: HotSteel::Austenitic, temperature: celsius(300.0), yield_strength: None, yield_ratio: optional::percent(75.0), note: None, provenance: known(&sources::ISO3506_1_HOT, Basis::Memory) },
    HotYield { steel: HotSteel::Austenitic, temperature: celsius(400.0), yield_strength: None, yield_ratio: optional::percent(70.0), note: None, provenance: known(&sources::ISO3506_1_HOT, Basis::Memory) },
    HotYield { steel: HotSteel::MartensiticC1, temperature: celsius(20.0), yield_strength: None, yield_ratio: optional::percent(100.0), note: Some("by definition: the others are shares of it"), provenance: known(&sources::ISO3506_1_HOT, Basis::Computed) },
    HotYield { steel: HotSteel::MartensiticC1, temperature: celsius(100.0), yield_strength: None, yield_ratio: optional::percent(95.0), note: None, provenance: known(&sources::ISO3506_1_HOT, Basis::Memory) },
    HotYield { steel: HotSteel::MartensiticC1, temperature: celsius(200.0), yield_strength: None, yield_ratio: optional::percent(90.0), note: None, provenance: known(&sources::ISO3506_1_HOT, Basis::Memory) },
    HotYield { steel: HotSteel::MartensiticC1, temperature: celsius(300.0), yield_strength: None, yield_ratio: optional::percent(80.0), note: None, provenance: known(&sources::ISO3506_1_HOT, Basis::Memory) },
    HotYield { steel: HotSteel::MartensiticC1, temperature: celsius(400.0), yield_strength: None, yield_ratio: optional::percent(65.0), note: None, provenance: known(&sources::ISO3506_1_HOT, Basis::Memory) },
    HotYield { steel: HotSteel::MartensiticC3, temperature: celsius(20.0), yield_strength: None, yield_ratio: optional::percent(100.0), note: Some("by definition: the others are shares of it"), provenance: known(&sources::ISO3506_1_HOT, Basis::Computed) },
    HotYield { steel: HotSteel::MartensiticC3, temperature: celsius(100.0), yield_strength: None, yield_ratio: optional::percent(90.0), note: None, provenance: known(&sources::ISO3506_1_HOT, Basis::Memory) },
    HotYield { steel: HotSteel::MartensiticC3, temperature: celsius(200.0), yield_strength: None, yield_ratio: optional::percent(85.0), note: None, provenance: known(&sources::ISO3506_1_HOT, Basis::Memory) },
    HotYield { steel: HotSteel::MartensiticC3, temperature: celsius(300.0), yield_strength: None, yield_ratio: optional::percent(80.0), note: None, provenance: known(&sources::ISO3506_1_HOT, Basis::Memory) },
    HotYield { steel: HotSteel::MartensiticC3, temperature: celsius(400.0), yield_strength: None, yield_ratio: optional::percent(60.0), note: None, provenance: known(&sources::ISO3506_1_HOT, Basis::Memory) },
];
