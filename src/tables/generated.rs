//! Arrays written from `tables/*.csv` by `tests/tables_are_current.rs`. Not edited by hand.

#[rustfmt::skip]
pub(super) mod astm_grades;
#[rustfmt::skip]
pub(super) mod hex_cap_screw_full_thread_inch;
#[rustfmt::skip]
pub(super) mod hex_cap_screw_length_tolerances_inch;
#[rustfmt::skip]
pub(super) mod hex_cap_screw_stock_lengths_inch;
#[rustfmt::skip]
pub(super) mod hex_cap_screws_inch;
#[rustfmt::skip]
pub(super) mod hex_screws_metric;
#[rustfmt::skip]
pub(super) mod iso_3506_1_classes;
#[rustfmt::skip]
pub(super) mod iso_898_1_classes;
#[rustfmt::skip]
pub(super) mod length_tolerances_metric;
#[rustfmt::skip]
pub(super) mod nuts_inch;
#[rustfmt::skip]
pub(super) mod nuts_metric;
#[rustfmt::skip]
pub(super) mod sae_j429_grades;
#[rustfmt::skip]
pub(super) mod sources;
#[rustfmt::skip]
pub(super) mod stock_lengths_metric;
#[rustfmt::skip]
pub(super) mod threads_metric;
#[rustfmt::skip]
pub(super) mod threads_unified;
#[rustfmt::skip]
pub(super) mod washers_inch;
#[rustfmt::skip]
pub(super) mod washers_metric;
#[rustfmt::skip]
pub(super) mod clearance_holes_inch;
#[rustfmt::skip]
pub(super) mod clearance_holes_metric;
#[rustfmt::skip]
pub(super) mod structural_holes_inch;
#[rustfmt::skip]
pub(super) mod structural_holes_metric;
#[rustfmt::skip]
pub(super) mod tap_drills_inch;
#[rustfmt::skip]
pub(super) mod tap_drills_metric;
