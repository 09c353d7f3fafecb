// Written by tests/tables_are_current.rs from tables/anodic_indices.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::galvanic::{AnodicIndex, Metal};
use crate::units::{volts};

pub(in crate::tables) static ANODIC_INDICES: [AnodicIndex; 19] = [
    AnodicIndex { metal: Metal::Magnesium, anodic_index: volts(1.75), note: None, provenance: known(&sources::ANODIC_INDEX_LOW, Basis::Reproduced) },
    AnodicIndex { metal: Metal::Zinc, anodic_index: volts(1.25), note: Some("wrought, die cast and plated; a chromate on it does not count"), provenance: known(&sources::ANODIC_INDEX_LOW, Basis::Reproduced) },
    AnodicIndex { metal: Metal::HotDipZinc, anodic_index: volts(1.20), note: None, provenance: known(&sources::ANODIC_INDEX_RECALLED, Basis::Memory) },
    AnodicIndex { metal: Metal::Cadmium, anodic_index: volts(0.95), note: Some("plated; a chromate on it does not count"), provenance: known(&sources::ANODIC_INDEX_LOW, Basis::Reproduced) },
    AnodicIndex { metal: Metal::Aluminium, anodic_index: volts(0.90), note: Some("wrought alloys other than the 2000 series"), provenance: known(&sources::ANODIC_INDEX_LOW, Basis::Reproduced) },
    AnodicIndex { metal: Metal::Steel, anodic_index: volts(0.85), note: Some("plain carbon and low-alloy steel and iron"), provenance: known(&sources::ANODIC_INDEX_LOW, Basis::Reproduced) },
    AnodicIndex { metal: Metal::Aluminium2000, anodic_index: volts(0.75), note: Some("wrought alloys of the 2000 series"), provenance: known(&sources::ANODIC_INDEX, Basis::Reproduced) },
    AnodicIndex { metal: Metal::Lead, anodic_index: volts(0.70), note: None, provenance: known(&sources::ANODIC_INDEX, Basis::Reproduced) },
    AnodicIndex { metal: Metal::Tin, anodic_index: volts(0.65), note: Some("tin plate and tin-lead solder"), provenance: known(&sources::ANODIC_INDEX, Basis::Reproduced) },
    AnodicIndex { metal: Metal::Chromium, anodic_index: volts(0.60), note: Some("plated"), provenance: known(&sources::ANODIC_INDEX, Basis::Reproduced) },
    AnodicIndex { metal: Metal::Stainless12Chromium, anodic_index: volts(0.60), note: None, provenance: known(&sources::ANODIC_INDEX, Basis::Reproduced) },
    AnodicIndex { metal: Metal::Stainless18Chromium, anodic_index: volts(0.50), note: Some("one connector maker puts austenitic steels beside copper"), provenance: known(&sources::ANODIC_INDEX, Basis::Reproduced) },
    AnodicIndex { metal: Metal::HighBrass, anodic_index: volts(0.45), note: Some("high brasses and bronzes"), provenance: known(&sources::ANODIC_INDEX, Basis::Reproduced) },
    AnodicIndex { metal: Metal::Brass, anodic_index: volts(0.40), note: Some("brasses and bronzes"), provenance: known(&sources::ANODIC_INDEX, Basis::Reproduced) },
    AnodicIndex { metal: Metal::Copper, anodic_index: volts(0.35), note: Some("low brasses and bronzes and high copper-nickel alloys too"), provenance: known(&sources::ANODIC_INDEX, Basis::Reproduced) },
    AnodicIndex { metal: Metal::Nickel, anodic_index: volts(0.30), note: None, provenance: known(&sources::ANODIC_INDEX, Basis::Reproduced) },
    AnodicIndex { metal: Metal::Titanium, anodic_index: volts(0.30), note: None, provenance: known(&sources::ANODIC_INDEX, Basis::Reproduced) },
    AnodicIndex { metal: Metal::Silver, anodic_index: volts(0.15), note: None, provenance: known(&sources::ANODIC_INDEX, Basis::Reproduced) },
    AnodicIndex { metal: Metal::Gold, anodic_index: volts(0.00), note: Some("what the others are counted from"), provenance: known(&sources::ANODIC_INDEX, Basis::Reproduced) },
];
