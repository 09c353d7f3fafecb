// Written by tests/tables_are_current.rs from tables/metric_engagement_lengths.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::thread_tolerances::EngagementLength;
use crate::units::{millimetres};

pub(in crate::tables) static METRIC_ENGAGEMENT_LENGTHS: [EngagementLength; 42] = [
    EngagementLength { diameter_over: millimetres(0.99), diameter_thru: millimetres(1.4), pitch: millimetres(0.2), normal_over: millimetres(0.5), normal_thru: millimetres(1.4), provenance: known(&sources::ISO965_1_RECALLED, Basis::Memory) },
    EngagementLength { diameter_over: millimetres(0.99), diameter_thru: millimetres(1.4), pitch: millimetres(0.25), normal_over: millimetres(0.6), normal_thru: millimetres(1.7), provenance: known(&sources::ISO965_6H_PAGE, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(0.99), diameter_thru: millimetres(1.4), pitch: millimetres(0.3), normal_over: millimetres(0.7), normal_thru: millimetres(2.0), provenance: known(&sources::ISO965_6H_PAGE, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(1.4), diameter_thru: millimetres(2.8), pitch: millimetres(0.2), normal_over: millimetres(0.5), normal_thru: millimetres(1.5), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(1.4), diameter_thru: millimetres(2.8), pitch: millimetres(0.25), normal_over: millimetres(0.6), normal_thru: millimetres(1.9), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(1.4), diameter_thru: millimetres(2.8), pitch: millimetres(0.35), normal_over: millimetres(0.8), normal_thru: millimetres(2.6), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(1.4), diameter_thru: millimetres(2.8), pitch: millimetres(0.4), normal_over: millimetres(1.0), normal_thru: millimetres(3.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(1.4), diameter_thru: millimetres(2.8), pitch: millimetres(0.45), normal_over: millimetres(1.3), normal_thru: millimetres(3.8), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(2.8), diameter_thru: millimetres(5.6), pitch: millimetres(0.35), normal_over: millimetres(1.0), normal_thru: millimetres(3.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(2.8), diameter_thru: millimetres(5.6), pitch: millimetres(0.5), normal_over: millimetres(1.5), normal_thru: millimetres(4.5), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(2.8), diameter_thru: millimetres(5.6), pitch: millimetres(0.6), normal_over: millimetres(1.7), normal_thru: millimetres(5.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(2.8), diameter_thru: millimetres(5.6), pitch: millimetres(0.7), normal_over: millimetres(2.0), normal_thru: millimetres(6.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(2.8), diameter_thru: millimetres(5.6), pitch: millimetres(0.75), normal_over: millimetres(2.2), normal_thru: millimetres(6.7), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(2.8), diameter_thru: millimetres(5.6), pitch: millimetres(0.8), normal_over: millimetres(2.5), normal_thru: millimetres(7.5), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(5.6), diameter_thru: millimetres(11.2), pitch: millimetres(0.75), normal_over: millimetres(2.4), normal_thru: millimetres(7.1), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(5.6), diameter_thru: millimetres(11.2), pitch: millimetres(1.0), normal_over: millimetres(3.0), normal_thru: millimetres(9.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(5.6), diameter_thru: millimetres(11.2), pitch: millimetres(1.25), normal_over: millimetres(4.0), normal_thru: millimetres(12.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(5.6), diameter_thru: millimetres(11.2), pitch: millimetres(1.5), normal_over: millimetres(5.0), normal_thru: millimetres(15.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(11.2), diameter_thru: millimetres(22.4), pitch: millimetres(1.0), normal_over: millimetres(3.8), normal_thru: millimetres(11.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(11.2), diameter_thru: millimetres(22.4), pitch: millimetres(1.25), normal_over: millimetres(4.5), normal_thru: millimetres(13.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(11.2), diameter_thru: millimetres(22.4), pitch: millimetres(1.5), normal_over: millimetres(5.6), normal_thru: millimetres(16.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(11.2), diameter_thru: millimetres(22.4), pitch: millimetres(1.75), normal_over: millimetres(6.0), normal_thru: millimetres(18.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(11.2), diameter_thru: millimetres(22.4), pitch: millimetres(2.0), normal_over: millimetres(8.0), normal_thru: millimetres(24.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(11.2), diameter_thru: millimetres(22.4), pitch: millimetres(2.5), normal_over: millimetres(10.0), normal_thru: millimetres(30.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(22.4), diameter_thru: millimetres(45.0), pitch: millimetres(1.0), normal_over: millimetres(4.0), normal_thru: millimetres(12.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(22.4), diameter_thru: millimetres(45.0), pitch: millimetres(1.5), normal_over: millimetres(6.3), normal_thru: millimetres(19.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(22.4), diameter_thru: millimetres(45.0), pitch: millimetres(2.0), normal_over: millimetres(8.5), normal_thru: millimetres(25.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(22.4), diameter_thru: millimetres(45.0), pitch: millimetres(3.0), normal_over: millimetres(12.0), normal_thru: millimetres(36.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(22.4), diameter_thru: millimetres(45.0), pitch: millimetres(3.5), normal_over: millimetres(15.0), normal_thru: millimetres(45.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(22.4), diameter_thru: millimetres(45.0), pitch: millimetres(4.0), normal_over: millimetres(18.0), normal_thru: millimetres(53.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(22.4), diameter_thru: millimetres(45.0), pitch: millimetres(4.5), normal_over: millimetres(21.0), normal_thru: millimetres(63.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(45.0), diameter_thru: millimetres(90.0), pitch: millimetres(1.5), normal_over: millimetres(7.5), normal_thru: millimetres(22.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(45.0), diameter_thru: millimetres(90.0), pitch: millimetres(2.0), normal_over: millimetres(9.5), normal_thru: millimetres(28.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(45.0), diameter_thru: millimetres(90.0), pitch: millimetres(3.0), normal_over: millimetres(15.0), normal_thru: millimetres(45.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(45.0), diameter_thru: millimetres(90.0), pitch: millimetres(4.0), normal_over: millimetres(19.0), normal_thru: millimetres(56.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(45.0), diameter_thru: millimetres(90.0), pitch: millimetres(5.0), normal_over: millimetres(24.0), normal_thru: millimetres(71.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(45.0), diameter_thru: millimetres(90.0), pitch: millimetres(5.5), normal_over: millimetres(28.0), normal_thru: millimetres(85.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(45.0), diameter_thru: millimetres(90.0), pitch: millimetres(6.0), normal_over: millimetres(32.0), normal_thru: millimetres(95.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(90.0), diameter_thru: millimetres(180.0), pitch: millimetres(2.0), normal_over: millimetres(12.0), normal_thru: millimetres(36.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(90.0), diameter_thru: millimetres(180.0), pitch: millimetres(3.0), normal_over: millimetres(18.0), normal_thru: millimetres(53.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(90.0), diameter_thru: millimetres(180.0), pitch: millimetres(4.0), normal_over: millimetres(24.0), normal_thru: millimetres(71.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
    EngagementLength { diameter_over: millimetres(90.0), diameter_thru: millimetres(180.0), pitch: millimetres(6.0), normal_over: millimetres(36.0), normal_thru: millimetres(106.0), provenance: known(&sources::B1_13M_7, Basis::Reproduced) },
];
