// Written by tests/tables_are_current.rs from tables/embedments.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::optional;
use crate::tables::tightening::{Embedment, LoadDirection};
use crate::units::{micrometres};

pub(in crate::tables) static EMBEDMENTS: [Embedment; 6] = [
    Embedment { roughness_from: None, roughness_below: micrometres(10.0), load: LoadDirection::Axial, thread: micrometres(3.0), bearing_face: micrometres(2.5), interface: micrometres(1.5), provenance: known(&sources::VDI2230_T5, Basis::Memory) },
    Embedment { roughness_from: optional::micrometres(10.0), roughness_below: micrometres(40.0), load: LoadDirection::Axial, thread: micrometres(3.0), bearing_face: micrometres(3.0), interface: micrometres(2.0), provenance: known(&sources::VDI2230_T5, Basis::Memory) },
    Embedment { roughness_from: optional::micrometres(40.0), roughness_below: micrometres(160.0), load: LoadDirection::Axial, thread: micrometres(3.0), bearing_face: micrometres(4.0), interface: micrometres(3.0), provenance: known(&sources::VDI2230_T5, Basis::Memory) },
    Embedment { roughness_from: None, roughness_below: micrometres(10.0), load: LoadDirection::Shear, thread: micrometres(3.0), bearing_face: micrometres(3.0), interface: micrometres(2.0), provenance: known(&sources::VDI2230_T5, Basis::Memory) },
    Embedment { roughness_from: optional::micrometres(10.0), roughness_below: micrometres(40.0), load: LoadDirection::Shear, thread: micrometres(3.0), bearing_face: micrometres(4.5), interface: micrometres(2.5), provenance: known(&sources::VDI2230_T5, Basis::Memory) },
    Embedment { roughness_from: optional::micrometres(40.0), roughness_below: micrometres(160.0), load: LoadDirection::Shear, thread: micrometres(3.0), bearing_face: micrometres(6.5), interface: micrometres(3.5), provenance: known(&sources::VDI2230_T5, Basis::Memory) },
];
