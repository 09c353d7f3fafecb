// Written by tests/tables_are_current.rs from tables/turns.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::tightening::{NutTurn, OuterFaces, TurnRule};
use crate::units::{degrees};

pub(in crate::tables) static TURNS: [NutTurn; 12] = [
    NutTurn { rule: TurnRule::Rcsc, faces: OuterFaces::BothNormal, diameters_from: 0.0, diameters_to: 4.0, turn: degrees(120.0), provenance: known(&sources::RCSC_TURN, Basis::Reproduced) },
    NutTurn { rule: TurnRule::Rcsc, faces: OuterFaces::BothNormal, diameters_from: 4.0, diameters_to: 8.0, turn: degrees(180.0), provenance: known(&sources::RCSC_TURN, Basis::Reproduced) },
    NutTurn { rule: TurnRule::Rcsc, faces: OuterFaces::BothNormal, diameters_from: 8.0, diameters_to: 12.0, turn: degrees(240.0), provenance: known(&sources::RCSC_TURN, Basis::Reproduced) },
    NutTurn { rule: TurnRule::Rcsc, faces: OuterFaces::OneSloped, diameters_from: 0.0, diameters_to: 4.0, turn: degrees(180.0), provenance: known(&sources::RCSC_TURN, Basis::Reproduced) },
    NutTurn { rule: TurnRule::Rcsc, faces: OuterFaces::OneSloped, diameters_from: 4.0, diameters_to: 8.0, turn: degrees(240.0), provenance: known(&sources::RCSC_TURN, Basis::Reproduced) },
    NutTurn { rule: TurnRule::Rcsc, faces: OuterFaces::OneSloped, diameters_from: 8.0, diameters_to: 12.0, turn: degrees(300.0), provenance: known(&sources::RCSC_TURN, Basis::Reproduced) },
    NutTurn { rule: TurnRule::Rcsc, faces: OuterFaces::BothSloped, diameters_from: 0.0, diameters_to: 4.0, turn: degrees(240.0), provenance: known(&sources::RCSC_TURN, Basis::Reproduced) },
    NutTurn { rule: TurnRule::Rcsc, faces: OuterFaces::BothSloped, diameters_from: 4.0, diameters_to: 8.0, turn: degrees(300.0), provenance: known(&sources::RCSC_TURN, Basis::Reproduced) },
    NutTurn { rule: TurnRule::Rcsc, faces: OuterFaces::BothSloped, diameters_from: 8.0, diameters_to: 12.0, turn: degrees(360.0), provenance: known(&sources::RCSC_TURN, Basis::Reproduced) },
    NutTurn { rule: TurnRule::En1090Combined, faces: OuterFaces::BothNormal, diameters_from: 0.0, diameters_to: 2.0, turn: degrees(60.0), provenance: known(&sources::EN1090_COMBINED, Basis::Reproduced) },
    NutTurn { rule: TurnRule::En1090Combined, faces: OuterFaces::BothNormal, diameters_from: 2.0, diameters_to: 6.0, turn: degrees(90.0), provenance: known(&sources::EN1090_COMBINED, Basis::Reproduced) },
    NutTurn { rule: TurnRule::En1090Combined, faces: OuterFaces::BothNormal, diameters_from: 6.0, diameters_to: 10.0, turn: degrees(120.0), provenance: known(&sources::EN1090_COMBINED, Basis::Reproduced) },
];
