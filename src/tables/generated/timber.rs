// Written by tests/tables_are_current.rs from tables/timber.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::optional;
use crate::tables::timber::{Timber, TimberKind};

pub(in crate::tables) static TIMBER: [Timber; 29] = [
    Timber { name: "Douglas Fir-Larch", publisher: "NDS", kind: TimberKind::Softwood, specific_gravity: Some(0.50), characteristic_density: None, note: None, provenance: known(&sources::NDS_G_READ, Basis::Reproduced) },
    Timber { name: "Douglas Fir-South", publisher: "NDS", kind: TimberKind::Softwood, specific_gravity: Some(0.46), characteristic_density: None, note: None, provenance: known(&sources::NDS_G_FILE, Basis::Reproduced) },
    Timber { name: "Eastern Softwoods", publisher: "NDS", kind: TimberKind::Softwood, specific_gravity: Some(0.36), characteristic_density: None, note: None, provenance: known(&sources::NDS_G_FILE, Basis::Reproduced) },
    Timber { name: "Hem-Fir", publisher: "NDS", kind: TimberKind::Softwood, specific_gravity: Some(0.43), characteristic_density: None, note: None, provenance: known(&sources::NDS_G_READ, Basis::Reproduced) },
    Timber { name: "Redwood, close grain", publisher: "NDS", kind: TimberKind::Softwood, specific_gravity: Some(0.44), characteristic_density: None, note: None, provenance: known(&sources::NDS_G, Basis::Memory) },
    Timber { name: "Redwood, open grain", publisher: "NDS", kind: TimberKind::Softwood, specific_gravity: Some(0.37), characteristic_density: None, note: None, provenance: known(&sources::NDS_G, Basis::Memory) },
    Timber { name: "Southern Pine", publisher: "NDS", kind: TimberKind::Softwood, specific_gravity: Some(0.55), characteristic_density: None, note: None, provenance: known(&sources::NDS_G_READ, Basis::Reproduced) },
    Timber { name: "Spruce-Pine-Fir", publisher: "NDS", kind: TimberKind::Softwood, specific_gravity: Some(0.42), characteristic_density: None, note: None, provenance: known(&sources::NDS_G_READ, Basis::Reproduced) },
    Timber { name: "Spruce-Pine-Fir (South)", publisher: "NDS", kind: TimberKind::Softwood, specific_gravity: Some(0.36), characteristic_density: None, note: None, provenance: known(&sources::NDS_G_FILE, Basis::Reproduced) },
    Timber { name: "Western Cedars", publisher: "NDS", kind: TimberKind::Softwood, specific_gravity: Some(0.36), characteristic_density: None, note: None, provenance: known(&sources::NDS_G_FILE, Basis::Reproduced) },
    Timber { name: "Western Woods", publisher: "NDS", kind: TimberKind::Softwood, specific_gravity: Some(0.36), characteristic_density: None, note: None, provenance: known(&sources::NDS_G_FILE, Basis::Reproduced) },
    Timber { name: "Mixed Maple", publisher: "NDS", kind: TimberKind::Hardwood, specific_gravity: Some(0.55), characteristic_density: None, note: None, provenance: known(&sources::NDS_G_FILE, Basis::Reproduced) },
    Timber { name: "Red Oak", publisher: "NDS", kind: TimberKind::Hardwood, specific_gravity: Some(0.67), characteristic_density: None, note: None, provenance: known(&sources::NDS_G_FILE, Basis::Reproduced) },
    Timber { name: "White Oak", publisher: "NDS", kind: TimberKind::Hardwood, specific_gravity: Some(0.73), characteristic_density: None, note: None, provenance: known(&sources::NDS_G_FILE, Basis::Reproduced) },
    Timber { name: "C14", publisher: "EN 338", kind: TimberKind::Softwood, specific_gravity: None, characteristic_density: optional::kilograms_per_cubic_metre(290.0), note: None, provenance: known(&sources::EN338_READ, Basis::Reproduced) },
    Timber { name: "C16", publisher: "EN 338", kind: TimberKind::Softwood, specific_gravity: None, characteristic_density: optional::kilograms_per_cubic_metre(310.0), note: None, provenance: known(&sources::EN338_READ, Basis::Reproduced) },
    Timber { name: "C18", publisher: "EN 338", kind: TimberKind::Softwood, specific_gravity: None, characteristic_density: optional::kilograms_per_cubic_metre(320.0), note: None, provenance: known(&sources::EN338_C18, Basis::Reproduced) },
    Timber { name: "C20", publisher: "EN 338", kind: TimberKind::Softwood, specific_gravity: None, characteristic_density: optional::kilograms_per_cubic_metre(330.0), note: None, provenance: known(&sources::EN338_READ, Basis::Reproduced) },
    Timber { name: "C22", publisher: "EN 338", kind: TimberKind::Softwood, specific_gravity: None, characteristic_density: optional::kilograms_per_cubic_metre(340.0), note: None, provenance: known(&sources::PORTEOUS_DENSITY, Basis::Reproduced) },
    Timber { name: "C24", publisher: "EN 338", kind: TimberKind::Softwood, specific_gravity: None, characteristic_density: optional::kilograms_per_cubic_metre(350.0), note: None, provenance: known(&sources::PORTEOUS_DENSITY, Basis::Reproduced) },
    Timber { name: "C27", publisher: "EN 338", kind: TimberKind::Softwood, specific_gravity: None, characteristic_density: optional::kilograms_per_cubic_metre(360.0), note: Some("370 in the editions before 2016"), provenance: known(&sources::EN338_READ, Basis::Reproduced) },
    Timber { name: "C30", publisher: "EN 338", kind: TimberKind::Softwood, specific_gravity: None, characteristic_density: optional::kilograms_per_cubic_metre(380.0), note: None, provenance: known(&sources::EN338_READ, Basis::Reproduced) },
    Timber { name: "D30", publisher: "EN 338", kind: TimberKind::Hardwood, specific_gravity: None, characteristic_density: optional::kilograms_per_cubic_metre(530.0), note: None, provenance: known(&sources::EN338_COURSE, Basis::Reproduced) },
    Timber { name: "D40", publisher: "EN 338", kind: TimberKind::Hardwood, specific_gravity: None, characteristic_density: optional::kilograms_per_cubic_metre(550.0), note: None, provenance: known(&sources::EN338_COURSE, Basis::Reproduced) },
    Timber { name: "GL 24c", publisher: "EN 14080", kind: TimberKind::Softwood, specific_gravity: None, characteristic_density: optional::kilograms_per_cubic_metre(365.0), note: Some("glued laminated timber of two grades of lamella"), provenance: known(&sources::EN14080, Basis::Reproduced) },
    Timber { name: "GL 24h", publisher: "EN 14080", kind: TimberKind::Softwood, specific_gravity: None, characteristic_density: optional::kilograms_per_cubic_metre(385.0), note: Some("glued laminated timber of one grade of lamella"), provenance: known(&sources::EN14080, Basis::Reproduced) },
    Timber { name: "GL 28c", publisher: "EN 14080", kind: TimberKind::Softwood, specific_gravity: None, characteristic_density: optional::kilograms_per_cubic_metre(390.0), note: Some("glued laminated timber of two grades of lamella"), provenance: known(&sources::EN14080, Basis::Reproduced) },
    Timber { name: "GL 28h", publisher: "EN 14080", kind: TimberKind::Softwood, specific_gravity: None, characteristic_density: optional::kilograms_per_cubic_metre(425.0), note: Some("glued laminated timber of one grade of lamella"), provenance: known(&sources::EN14080, Basis::Reproduced) },
    Timber { name: "GL 32h", publisher: "EN 14080", kind: TimberKind::Softwood, specific_gravity: None, characteristic_density: optional::kilograms_per_cubic_metre(440.0), note: Some("glued laminated timber of one grade of lamella"), provenance: known(&sources::EN14080, Basis::Reproduced) },
];
