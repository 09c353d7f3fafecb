// Written by tests/tables_are_current.rs from tables/washer_pairings.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::names::{BoltGrade, PropertyClass};
use crate::tables::washer_rules::{WasherPairing, WasherStanding};

pub(in crate::tables) static WASHER_PAIRINGS: [WasherPairing; 40] = [
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class4_6), washer_class: "100HV", standing: WasherStanding::Recommended, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class4_6), washer_class: "200HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class4_6), washer_class: "300HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class4_6), washer_class: "380HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class4_8), washer_class: "100HV", standing: WasherStanding::Recommended, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class4_8), washer_class: "200HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class4_8), washer_class: "300HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class4_8), washer_class: "380HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class5_6), washer_class: "100HV", standing: WasherStanding::Recommended, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class5_6), washer_class: "200HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class5_6), washer_class: "300HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class5_6), washer_class: "380HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class5_8), washer_class: "100HV", standing: WasherStanding::Recommended, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class5_8), washer_class: "200HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class5_8), washer_class: "300HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class5_8), washer_class: "380HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class6_8), washer_class: "100HV", standing: WasherStanding::Never, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class6_8), washer_class: "200HV", standing: WasherStanding::Recommended, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class6_8), washer_class: "300HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class6_8), washer_class: "380HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class8_8), washer_class: "100HV", standing: WasherStanding::Never, note: Some("a national foreword (British) sets it aside for structural bolts without preload"), provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class8_8), washer_class: "200HV", standing: WasherStanding::Recommended, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class8_8), washer_class: "300HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class8_8), washer_class: "380HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class9_8), washer_class: "100HV", standing: WasherStanding::Never, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class9_8), washer_class: "200HV", standing: WasherStanding::IfVerified, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class9_8), washer_class: "300HV", standing: WasherStanding::Recommended, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class9_8), washer_class: "380HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class10_9), washer_class: "100HV", standing: WasherStanding::Never, note: Some("a national foreword (British) sets it aside for structural bolts without preload"), provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class10_9), washer_class: "200HV", standing: WasherStanding::IfVerified, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class10_9), washer_class: "300HV", standing: WasherStanding::Recommended, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class10_9), washer_class: "380HV", standing: WasherStanding::Usable, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class12_9), washer_class: "100HV", standing: WasherStanding::Never, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class12_9), washer_class: "200HV", standing: WasherStanding::Never, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class12_9), washer_class: "300HV", standing: WasherStanding::IfVerified, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class12_9), washer_class: "380HV", standing: WasherStanding::Recommended, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class12_9Underlined), washer_class: "100HV", standing: WasherStanding::Never, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class12_9Underlined), washer_class: "200HV", standing: WasherStanding::Never, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class12_9Underlined), washer_class: "300HV", standing: WasherStanding::IfVerified, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
    WasherPairing { bolt: BoltGrade::Iso(PropertyClass::Class12_9Underlined), washer_class: "380HV", standing: WasherStanding::Recommended, note: None, provenance: known(&sources::ISO898_3_PAIRS, Basis::Reproduced) },
];
