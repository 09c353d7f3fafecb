// Written by tests/tables_are_current.rs from tables/tap_drills_metric.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::optional;
use crate::tables::holes::TapDrill;
use crate::units::{millimetres, percent};

pub(in crate::tables) static TAP_DRILLS_METRIC: [TapDrill; 41] = [
    TapDrill { nominal_diameter: millimetres(1.6), pitch: optional::millimetres(0.35), drill_diameter: millimetres(1.25), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(2.0), pitch: optional::millimetres(0.4), drill_diameter: millimetres(1.6), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(2.5), pitch: optional::millimetres(0.45), drill_diameter: millimetres(2.05), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(3.0), pitch: optional::millimetres(0.5), drill_diameter: millimetres(2.5), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(3.5), pitch: optional::millimetres(0.6), drill_diameter: millimetres(2.9), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(4.0), pitch: optional::millimetres(0.7), drill_diameter: millimetres(3.3), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(5.0), pitch: optional::millimetres(0.8), drill_diameter: millimetres(4.2), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(6.0), pitch: optional::millimetres(1.0), drill_diameter: millimetres(5.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(8.0), pitch: optional::millimetres(1.25), drill_diameter: millimetres(6.8), thread: percent(74.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(8.0), pitch: optional::millimetres(1.0), drill_diameter: millimetres(7.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(10.0), pitch: optional::millimetres(1.5), drill_diameter: millimetres(8.5), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(10.0), pitch: optional::millimetres(1.25), drill_diameter: millimetres(8.75), thread: percent(77.0), note: Some("shops often round 8.75 to 8.8 and 10.75 to 10.8"), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(10.0), pitch: optional::millimetres(1.0), drill_diameter: millimetres(9.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(12.0), pitch: optional::millimetres(1.75), drill_diameter: millimetres(10.2), thread: percent(79.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(12.0), pitch: optional::millimetres(1.5), drill_diameter: millimetres(10.5), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(12.0), pitch: optional::millimetres(1.25), drill_diameter: millimetres(10.75), thread: percent(77.0), note: Some("shops often round 8.75 to 8.8 and 10.75 to 10.8"), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(14.0), pitch: optional::millimetres(2.0), drill_diameter: millimetres(12.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(14.0), pitch: optional::millimetres(1.5), drill_diameter: millimetres(12.5), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(16.0), pitch: optional::millimetres(2.0), drill_diameter: millimetres(14.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(16.0), pitch: optional::millimetres(1.5), drill_diameter: millimetres(14.5), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(18.0), pitch: optional::millimetres(2.5), drill_diameter: millimetres(15.5), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(18.0), pitch: optional::millimetres(1.5), drill_diameter: millimetres(16.5), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(20.0), pitch: optional::millimetres(2.5), drill_diameter: millimetres(17.5), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(20.0), pitch: optional::millimetres(2.0), drill_diameter: millimetres(18.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(20.0), pitch: optional::millimetres(1.5), drill_diameter: millimetres(18.5), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(22.0), pitch: optional::millimetres(2.5), drill_diameter: millimetres(19.5), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(22.0), pitch: optional::millimetres(1.5), drill_diameter: millimetres(20.5), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(24.0), pitch: optional::millimetres(3.0), drill_diameter: millimetres(21.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(24.0), pitch: optional::millimetres(2.0), drill_diameter: millimetres(22.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(27.0), pitch: optional::millimetres(3.0), drill_diameter: millimetres(24.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(27.0), pitch: optional::millimetres(2.0), drill_diameter: millimetres(25.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(30.0), pitch: optional::millimetres(3.5), drill_diameter: millimetres(26.5), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(30.0), pitch: optional::millimetres(2.0), drill_diameter: millimetres(28.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(33.0), pitch: optional::millimetres(3.5), drill_diameter: millimetres(29.5), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(36.0), pitch: optional::millimetres(4.0), drill_diameter: millimetres(32.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(36.0), pitch: optional::millimetres(3.0), drill_diameter: millimetres(33.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(39.0), pitch: optional::millimetres(4.0), drill_diameter: millimetres(35.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_RULE, Basis::Computed), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(42.0), pitch: optional::millimetres(4.5), drill_diameter: millimetres(37.5), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(48.0), pitch: optional::millimetres(5.0), drill_diameter: millimetres(43.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(56.0), pitch: optional::millimetres(5.5), drill_diameter: millimetres(50.5), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
    TapDrill { nominal_diameter: millimetres(64.0), pitch: optional::millimetres(6.0), drill_diameter: millimetres(58.0), thread: percent(77.0), provenance: known(&sources::TAP_DRILL_METRIC, Basis::Reproduced), ..TapDrill::BLANK },
];
