//! Lengths of inch hex cap screws: ASME B18.2.1.

use alloc::format;

use super::{ScrewLength, ScrewSeries};
use crate::error::Error;
use crate::tables::screws::{FullThreadLimit, HexCapScrew, InchLengthTolerance};
use crate::units::{Length, SAME_LENGTH, UnitSystem, inches, shown};

/// A screw on which less than so many pitches of body would be left is threaded to the head.
///
/// Source: 14 of the 17 limits read of ASME B18.2.1 Table 11 follow from it. Those of 1, 2, 2-1/4 and 2-1/2 in
/// do not, and until the print itself is read the side is taken that claims no shank.
const LEAST_BODY_PITCHES: f64 = 2.5;

impl ScrewSeries {
    pub(super) fn inch_length(
        &self,
        dimensions: &HexCapScrew,
        full_thread: Option<&FullThreadLimit>,
        tolerances: &'static [InchLengthTolerance],
        nominal: Length,
    ) -> Result<ScrewLength, Error> {
        let no_value = |quantity, reason| Error::NoValue {
            quantity,
            subject: format!("{self} of that length"),
            reason,
        };
        let unread = || {
            no_value(
                "limit of full-length threading",
                "its row of ASME B18.2.1 Table 11 has not been read",
            )
        };
        let tolerance = InchLengthTolerance::among(tolerances, nominal).ok_or_else(|| {
            no_value(
                "length tolerance",
                "no row of ASME B18.2.1 has been read there",
            )
        })?;
        let min = nominal - tolerance.tolerance_minus;
        let max = nominal + tolerance.tolerance_plus;
        let row = full_thread.ok_or_else(unread)?;
        let full_max = row.full_thread_length_max.ok_or_else(unread)?;
        // 2-1/2 in has no printed shortest screw with a body: it begins just above the limit.
        let part_min = row.part_thread_length_min.unwrap_or(full_max);
        if nominal <= full_max + SAME_LENGTH {
            return ScrewLength {
                nominal,
                min,
                max,
                body_length_min: inches(0.0),
                grip_gaging_length_max: dimensions.full_thread_run_out_max_pitches
                    * self.thread.pitch(),
                fully_threaded: true,
            }
            .checked();
        }
        if nominal < part_min - SAME_LENGTH {
            // Between the two limits the standard's table has no screw.
            return Err(Error::NotInTable {
                table: "the table of full-length threading",
                wanted: format!("{self} {:.4} long", shown(nominal, UnitSystem::UsCustomary)),
                available: format!(
                    "up to {:.4} it is threaded to the head, from {:.4} it has a body",
                    shown(full_max, UnitSystem::UsCustomary),
                    shown(part_min, UnitSystem::UsCustomary)
                ),
            });
        }
        let thread_length = if nominal <= inches(6.0) + SAME_LENGTH {
            dimensions.thread_length_short.ok_or_else(|| {
                no_value(
                    "thread length",
                    "at this size screws up to 6 in are threaded to the head",
                )
            })?
        } else {
            dimensions.thread_length_long
        };
        let grip_gaging_length_max = nominal - thread_length;
        // The rule, not the printed transition length, which is rounded to three decimals.
        let coarse_pitch = inches(1.0 / dimensions.coarse_threads_per_inch);
        let body = grip_gaging_length_max - 5.0 * coarse_pitch;
        let is_sure = body > LEAST_BODY_PITCHES * coarse_pitch + SAME_LENGTH;
        ScrewLength {
            nominal,
            min,
            max,
            // Without a sure body the thread may begin at the head, or where a body would leave it.
            body_length_min: if is_sure { body } else { inches(0.0) },
            grip_gaging_length_max,
            fully_threaded: false,
        }
        .checked()
    }
}
