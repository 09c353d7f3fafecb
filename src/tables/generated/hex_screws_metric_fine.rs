// Written by tests/tables_are_current.rs from tables/hex_screws_metric_fine.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::optional;
use crate::tables::metric_screws::FineHexScrew;
use crate::units::{millimetres};

pub(in crate::tables) static HEX_SCREWS_METRIC_FINE: [FineHexScrew; 16] = [
    FineHexScrew { size: "M8x1", nominal_diameter: millimetres(8.0), pitch: millimetres(1.0), thread_length_short: optional::millimetres(22.0), thread_length_medium: millimetres(28.0), thread_length_long: None, provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
    FineHexScrew { size: "M10x1.25", nominal_diameter: millimetres(10.0), pitch: millimetres(1.25), thread_length_short: optional::millimetres(26.0), thread_length_medium: millimetres(32.0), thread_length_long: optional::millimetres(45.0), provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
    FineHexScrew { size: "M10x1", nominal_diameter: millimetres(10.0), pitch: millimetres(1.0), thread_length_short: optional::millimetres(26.0), thread_length_medium: millimetres(32.0), thread_length_long: optional::millimetres(45.0), provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
    FineHexScrew { size: "M12x1.5", nominal_diameter: millimetres(12.0), pitch: millimetres(1.5), thread_length_short: optional::millimetres(30.0), thread_length_medium: millimetres(36.0), thread_length_long: optional::millimetres(49.0), provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
    FineHexScrew { size: "M12x1.25", nominal_diameter: millimetres(12.0), pitch: millimetres(1.25), thread_length_short: optional::millimetres(30.0), thread_length_medium: millimetres(36.0), thread_length_long: optional::millimetres(49.0), provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
    FineHexScrew { size: "M14x1.5", nominal_diameter: millimetres(14.0), pitch: millimetres(1.5), thread_length_short: optional::millimetres(34.0), thread_length_medium: millimetres(40.0), thread_length_long: optional::millimetres(53.0), provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
    FineHexScrew { size: "M16x1.5", nominal_diameter: millimetres(16.0), pitch: millimetres(1.5), thread_length_short: optional::millimetres(38.0), thread_length_medium: millimetres(44.0), thread_length_long: optional::millimetres(57.0), provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
    FineHexScrew { size: "M20x2", nominal_diameter: millimetres(20.0), pitch: millimetres(2.0), thread_length_short: optional::millimetres(46.0), thread_length_medium: millimetres(52.0), thread_length_long: optional::millimetres(65.0), provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
    FineHexScrew { size: "M20x1.5", nominal_diameter: millimetres(20.0), pitch: millimetres(1.5), thread_length_short: optional::millimetres(46.0), thread_length_medium: millimetres(52.0), thread_length_long: optional::millimetres(65.0), provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
    FineHexScrew { size: "M24x2", nominal_diameter: millimetres(24.0), pitch: millimetres(2.0), thread_length_short: optional::millimetres(54.0), thread_length_medium: millimetres(60.0), thread_length_long: optional::millimetres(73.0), provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
    FineHexScrew { size: "M30x2", nominal_diameter: millimetres(30.0), pitch: millimetres(2.0), thread_length_short: optional::millimetres(66.0), thread_length_medium: millimetres(72.0), thread_length_long: optional::millimetres(85.0), provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
    FineHexScrew { size: "M36x3", nominal_diameter: millimetres(36.0), pitch: millimetres(3.0), thread_length_short: optional::millimetres(78.0), thread_length_medium: millimetres(84.0), thread_length_long: optional::millimetres(97.0), provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
    FineHexScrew { size: "M42x3", nominal_diameter: millimetres(42.0), pitch: millimetres(3.0), thread_length_short: None, thread_length_medium: millimetres(96.0), thread_length_long: optional::millimetres(109.0), provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
    FineHexScrew { size: "M48x3", nominal_diameter: millimetres(48.0), pitch: millimetres(3.0), thread_length_short: None, thread_length_medium: millimetres(108.0), thread_length_long: optional::millimetres(121.0), provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
    FineHexScrew { size: "M56x4", nominal_diameter: millimetres(56.0), pitch: millimetres(4.0), thread_length_short: None, thread_length_medium: millimetres(124.0), thread_length_long: optional::millimetres(137.0), provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
    FineHexScrew { size: "M64x4", nominal_diameter: millimetres(64.0), pitch: millimetres(4.0), thread_length_short: None, thread_length_medium: millimetres(140.0), thread_length_long: optional::millimetres(153.0), provenance: known(&sources::ISO8765_CAD, Basis::Reproduced) },
];
