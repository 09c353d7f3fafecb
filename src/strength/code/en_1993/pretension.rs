//! EN 1993-1-8, 3.4.1 and 3.6.1, EN 1090-2: preloads of bolts to EN 14399.

use alloc::format;

use crate::error::Error;
use crate::material::{BoltGrade, PropertyClass};
use crate::thread::{Thread, rows::stock_thread};
use crate::units::{Area, Ratio, SAME_LENGTH, millimetres, percent};

/// Upper fractile of the preload by the methods of EN 1090-2, as a share of fub As.
pub(crate) const UPPER: Ratio = percent(90.0);

/// The stress area that the code prints with, of a thread and class that EN 14399 has.
pub(crate) fn stress_area(thread: &Thread, grade: BoltGrade) -> Result<Area, Error> {
    let refused = |reason| Error::NoValue {
        quantity: "preload by EN 1993-1-8",
        subject: format!("{thread} of {grade}"),
        reason,
    };
    let BoltGrade::Iso(PropertyClass::Class8_8 | PropertyClass::Class10_9) = grade else {
        return Err(refused(
            "3.4.1 preloads classes 8.8 and 10.9 to EN 14399 only",
        ));
    };
    stock_thread("EN 14399", thread)?;
    let size = thread.nominal_diameter();
    let in_range =
        millimetres(12.0) <= size + SAME_LENGTH && size <= millimetres(36.0) + SAME_LENGTH;
    match thread.tabulated_stress_area() {
        Some(area) if in_range && thread.is_coarse() && !thread.is_unified() => Ok(area),
        _ => Err(refused(
            "EN 14399 has bolts of M12 to M36 with coarse thread",
        )),
    }
}
