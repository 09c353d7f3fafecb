// Written by tests/tables_are_current.rs from tables/socket_head_grips_metric.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::optional;
use crate::tables::sockets::SocketHeadGrip;
use crate::units::{millimetres};

pub(in crate::tables) static SOCKET_HEAD_GRIPS_METRIC: [SocketHeadGrip; 10] = [
    SocketHeadGrip { size: "M4", nominal_diameter: millimetres(4.0), nominal_length: millimetres(25.0), body_length_min: None, grip_gaging_length_max: None, provenance: known(&sources::ISO4762_LENGTHS, Basis::Reproduced) },
    SocketHeadGrip { size: "M5", nominal_diameter: millimetres(5.0), nominal_length: millimetres(30.0), body_length_min: optional::millimetres(4.0), grip_gaging_length_max: optional::millimetres(8.0), provenance: known(&sources::ISO4762_LENGTHS, Basis::Reproduced) },
    SocketHeadGrip { size: "M5", nominal_diameter: millimetres(5.0), nominal_length: millimetres(35.0), body_length_min: optional::millimetres(9.0), grip_gaging_length_max: optional::millimetres(13.0), provenance: known(&sources::ISO4762_LENGTHS, Basis::Reproduced) },
    SocketHeadGrip { size: "M5", nominal_diameter: millimetres(5.0), nominal_length: millimetres(40.0), body_length_min: optional::millimetres(14.0), grip_gaging_length_max: optional::millimetres(18.0), provenance: known(&sources::ISO4762_LENGTHS, Basis::Reproduced) },
    SocketHeadGrip { size: "M6", nominal_diameter: millimetres(6.0), nominal_length: millimetres(30.0), body_length_min: None, grip_gaging_length_max: None, provenance: known(&sources::ISO4762_LENGTHS, Basis::Reproduced) },
    SocketHeadGrip { size: "M6", nominal_diameter: millimetres(6.0), nominal_length: millimetres(35.0), body_length_min: optional::millimetres(6.0), grip_gaging_length_max: optional::millimetres(11.0), provenance: known(&sources::ISO4762_LENGTHS, Basis::Reproduced) },
    SocketHeadGrip { size: "M6", nominal_diameter: millimetres(6.0), nominal_length: millimetres(40.0), body_length_min: optional::millimetres(11.0), grip_gaging_length_max: optional::millimetres(16.0), provenance: known(&sources::ISO4762_LENGTHS, Basis::Reproduced) },
    SocketHeadGrip { size: "M8", nominal_diameter: millimetres(8.0), nominal_length: millimetres(35.0), body_length_min: None, grip_gaging_length_max: None, provenance: known(&sources::ISO4762_LENGTHS, Basis::Reproduced) },
    SocketHeadGrip { size: "M8", nominal_diameter: millimetres(8.0), nominal_length: millimetres(40.0), body_length_min: optional::millimetres(5.75), grip_gaging_length_max: optional::millimetres(12.0), provenance: known(&sources::ISO4762_LENGTHS, Basis::Reproduced) },
    SocketHeadGrip { size: "M10", nominal_diameter: millimetres(10.0), nominal_length: millimetres(40.0), body_length_min: None, grip_gaging_length_max: None, provenance: known(&sources::ISO4762_LENGTHS, Basis::Reproduced) },
];
