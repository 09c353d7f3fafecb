// Written by tests/tables_are_current.rs from tables/aircraft_bolt_grips.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::aircraft::AircraftGripRow;
use crate::units::{inches};

pub(in crate::tables) static AIRCRAFT_BOLT_GRIPS: [AircraftGripRow; 36] = [
    AircraftGripRow { bolt: "AN3", dash: 3, grip: inches(0.063), length: inches(0.469), note: Some("does not follow the eighths rule"), provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN3", dash: 4, grip: inches(0.125), length: inches(0.531), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN3", dash: 5, grip: inches(0.250), length: inches(0.656), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN3", dash: 6, grip: inches(0.375), length: inches(0.781), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN3", dash: 7, grip: inches(0.500), length: inches(0.906), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN3", dash: 10, grip: inches(0.625), length: inches(1.031), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN3", dash: 11, grip: inches(0.750), length: inches(1.156), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN3", dash: 12, grip: inches(0.875), length: inches(1.281), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN3", dash: 13, grip: inches(1.000), length: inches(1.406), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN3", dash: 14, grip: inches(1.125), length: inches(1.531), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN4", dash: 3, grip: inches(0.063), length: inches(0.469), note: Some("does not follow the eighths rule"), provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN4", dash: 4, grip: inches(0.063), length: inches(0.531), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN4", dash: 5, grip: inches(0.188), length: inches(0.656), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN4", dash: 6, grip: inches(0.313), length: inches(0.781), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN4", dash: 7, grip: inches(0.438), length: inches(0.906), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN4", dash: 10, grip: inches(0.563), length: inches(1.031), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN4", dash: 11, grip: inches(0.688), length: inches(1.156), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN4", dash: 12, grip: inches(0.813), length: inches(1.281), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN4", dash: 13, grip: inches(0.938), length: inches(1.406), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN4", dash: 14, grip: inches(1.063), length: inches(1.531), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN5", dash: 4, grip: inches(0.063), length: inches(0.594), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN5", dash: 5, grip: inches(0.188), length: inches(0.719), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN5", dash: 6, grip: inches(0.313), length: inches(0.844), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN5", dash: 7, grip: inches(0.438), length: inches(0.969), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN5", dash: 10, grip: inches(0.563), length: inches(1.094), note: Some("length printed 1.064: misprint of 1.094"), provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN5", dash: 11, grip: inches(0.688), length: inches(1.219), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN5", dash: 12, grip: inches(0.813), length: inches(1.344), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN5", dash: 13, grip: inches(0.938), length: inches(1.469), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN5", dash: 14, grip: inches(1.063), length: inches(1.594), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN6", dash: 5, grip: inches(0.063), length: inches(0.703), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN6", dash: 6, grip: inches(0.188), length: inches(0.828), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN6", dash: 7, grip: inches(0.313), length: inches(0.953), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN6", dash: 10, grip: inches(0.438), length: inches(1.078), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN6", dash: 11, grip: inches(0.563), length: inches(1.203), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN6", dash: 12, grip: inches(0.688), length: inches(1.328), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
    AircraftGripRow { bolt: "AN6", dash: 13, grip: inches(0.813), length: inches(1.453), note: None, provenance: known(&sources::AN_GRIP_TABLE, Basis::Reproduced) },
];
