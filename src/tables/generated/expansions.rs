// Written by tests/tables_are_current.rs from tables/expansions.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::optional;
use crate::tables::expansion::{Expansion, ExpandingMetal};
use crate::units::{ppm_per_kelvin};

pub(in crate::tables) static EXPANSIONS: [Expansion; 9] = [
    Expansion { metal: ExpandingMetal::CarbonAndAlloySteel, expansion: ppm_per_kelvin(11.7), from: None, thru: None, note: Some("the same as 6.5 ppm per degF; EN 1993-1-1 takes 12 for structural steel"), provenance: known(&sources::STRUCTURAL_STEEL_DESIGNERS, Basis::Reproduced) },
    Expansion { metal: ExpandingMetal::StructuralSteel, expansion: ppm_per_kelvin(12.0), from: None, thru: optional::celsius(100.0), note: Some("14 in fire is recalled"), provenance: known(&sources::EN1993_1_1_EXPANSION, Basis::Reproduced) },
    Expansion { metal: ExpandingMetal::AusteniticStainlessSteel, expansion: ppm_per_kelvin(16.0), from: optional::celsius(20.0), thru: optional::celsius(100.0), note: Some("US handbooks print 17.3"), provenance: known(&sources::EN10088_EXPANSION, Basis::Reproduced) },
    Expansion { metal: ExpandingMetal::DuplexStainlessSteel, expansion: ppm_per_kelvin(13.0), from: optional::celsius(20.0), thru: optional::celsius(100.0), note: Some("1.4462"), provenance: known(&sources::EN10088_EXPANSION, Basis::Reproduced) },
    Expansion { metal: ExpandingMetal::FerriticStainlessSteel, expansion: ppm_per_kelvin(10.0), from: optional::celsius(20.0), thru: optional::celsius(100.0), note: None, provenance: known(&sources::EN10088_EXPANSION, Basis::Reproduced) },
    Expansion { metal: ExpandingMetal::MartensiticStainlessSteel, expansion: ppm_per_kelvin(10.5), from: optional::celsius(20.0), thru: optional::celsius(100.0), note: Some("1.4006; of 1.4057 (431) 10.0 is recalled"), provenance: known(&sources::EN10088_EXPANSION, Basis::Reproduced) },
    Expansion { metal: ExpandingMetal::PrecipitationHardenedStainlessSteel, expansion: ppm_per_kelvin(10.9), from: optional::celsius(20.0), thru: optional::celsius(100.0), note: Some("1.4542 (630)"), provenance: known(&sources::EN10088_EXPANSION, Basis::Reproduced) },
    Expansion { metal: ExpandingMetal::Aluminium, expansion: ppm_per_kelvin(23.0), from: None, thru: None, note: Some("6061 is 23.6 from 20 to 100 degC"), provenance: known(&sources::EN1999_1_1_EXPANSION, Basis::Reproduced) },
    Expansion { metal: ExpandingMetal::GreyIron, expansion: ppm_per_kelvin(12.1), from: None, thru: None, note: Some("6.7 ppm per degF; a gear catalogue prints 6.0"), provenance: known(&sources::UGURAL_D1, Basis::Computed) },
];
