// Written by tests/tables_are_current.rs from tables/hex_cap_screw_stock_lengths_inch.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::screws::StockStep;
use crate::units::{inches};

pub(in crate::tables) static HEX_CAP_SCREW_STOCK_LENGTHS_INCH: [StockStep; 3] = [
    StockStep { size_from: inches(0.25), size_thru: inches(1.5), length_from: inches(0.5), length_thru: inches(1.0), increment: inches(0.125), note: Some("short sizes start near 1 to 1.5 D"), provenance: known(&sources::STOCK_PRACTICE_INCH, Basis::Memory) },
    StockStep { size_from: inches(0.25), size_thru: inches(1.5), length_from: inches(1.0), length_thru: inches(6.0), increment: inches(0.25), note: Some("1/8 steps persist to about 1-1/2 to 2 in for sizes up to 3/8 at many stockists"), provenance: known(&sources::STOCK_PRACTICE_INCH, Basis::Memory) },
    StockStep { size_from: inches(0.375), size_thru: inches(1.5), length_from: inches(6.0), length_thru: inches(12.0), increment: inches(0.5), note: Some("scarcer; 1 in steps common above 8 in"), provenance: known(&sources::STOCK_PRACTICE_INCH, Basis::Memory) },
];
