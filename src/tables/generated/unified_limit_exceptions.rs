// Written by tests/tables_are_current.rs from tables/unified_limit_exceptions.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::optional;
use crate::tables::thread_tolerances::UnifiedLimitException;
use crate::units::{inches};

pub(in crate::tables) static UNIFIED_LIMIT_EXCEPTIONS: [UnifiedLimitException; 4] = [
    UnifiedLimitException { size: "5/8", nominal_diameter: inches(0.625), threads_per_inch: 11.0, allowance: optional::inches(0.0016), tolerance_diameter: None, note: "the formula gives 0.00165 and so 0.0017", provenance: known(&sources::B1_1_FIVE_EIGHTHS, Basis::Reproduced) },
    UnifiedLimitException { size: "15/16", nominal_diameter: inches(0.9375), threads_per_inch: 12.0, allowance: None, tolerance_diameter: optional::inches(1.0000), note: "printed with the pitch-diameter tolerance of the next primary diameter; class 3A pitch minimum fits neither", provenance: known(&sources::B1_1_LIMITS_PAGE, Basis::Reproduced) },
    UnifiedLimitException { size: "15/16", nominal_diameter: inches(0.9375), threads_per_inch: 16.0, allowance: None, tolerance_diameter: optional::inches(1.0000), note: "printed with the pitch-diameter tolerance of the next primary diameter", provenance: known(&sources::B1_1_LIMITS_PAGE, Basis::Reproduced) },
    UnifiedLimitException { size: "2-3/8", nominal_diameter: inches(2.375), threads_per_inch: 20.0, allowance: None, tolerance_diameter: optional::inches(2.5000), note: "printed with the pitch-diameter tolerance of the next primary diameter", provenance: known(&sources::MH27_3, Basis::Reproduced) },
];
