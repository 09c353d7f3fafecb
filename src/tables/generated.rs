//! Arrays written from `tables/*.csv` by `tests/tables_are_current.rs`. Not edited by hand.

pub(super) mod astm_grades;
pub(super) mod clearance_holes_inch;
pub(super) mod clearance_holes_metric;
pub(super) mod hex_cap_screw_full_thread_inch;
pub(super) mod hex_cap_screw_length_tolerances_inch;
pub(super) mod hex_cap_screw_stock_lengths_inch;
pub(super) mod hex_cap_screws_inch;
pub(super) mod hex_screws_metric;
pub(super) mod iso_3506_1_classes;
pub(super) mod iso_898_1_classes;
pub(super) mod length_tolerances_metric;
pub(super) mod nuts_inch;
pub(super) mod nuts_metric;
pub(super) mod sae_j429_grades;
pub(super) mod sources;
pub(super) mod stock_lengths_metric;
pub(super) mod structural_holes_inch;
pub(super) mod structural_holes_metric;
pub(super) mod tap_drills_inch;
pub(super) mod tap_drills_metric;
pub(super) mod threads_metric;
pub(super) mod threads_unified;
pub(super) mod washers_inch;
pub(super) mod washers_metric;
