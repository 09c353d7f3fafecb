//! Lengths of metric hexagon head screws: ISO 4014 and ISO 4017.

use alloc::format;

use super::{Rows, SAME_LENGTH, ScrewLength, ScrewProduct, ScrewSeries};
use crate::error::{Allowed, Error, out_of_range};
use crate::tables::screws::{HexScrew, LengthTolerance, ProductGrade, ToleranceGrade};
use crate::units::{Length, millimetres};

impl ScrewSeries {
    /// The row of the product grade a length is made in: grade A up to 10 d or 150 mm, whichever is
    /// shorter (ISO 4014, ISO 4017).
    pub(super) fn metric_row(&self, nominal: Length) -> Option<&'static HexScrew> {
        let Rows::Metric { small, large } = self.rows else {
            return None;
        };
        let limit = (10.0 * self.thread.nominal_diameter()).min(millimetres(150.0));
        Some(match large {
            Some(large) if nominal > limit + SAME_LENGTH => large,
            _ => small,
        })
    }

    pub(super) fn metric_length(
        &self,
        small: &HexScrew,
        large: Option<&HexScrew>,
        nominal: Length,
    ) -> Result<ScrewLength, Error> {
        let row = self.metric_row(nominal).unwrap_or(small);
        let range = self.metric_range(small, large);
        let (from, thru) = range.ok_or_else(|| self.unread())?;
        if nominal < from - SAME_LENGTH || nominal > thru + SAME_LENGTH {
            return Err(out_of_range(
                format!("nominal length of {self}"),
                nominal,
                Allowed::FromTo(from.into(), thru.into()),
            ));
        }
        let grade = match row.product_grade {
            ProductGrade::A if nominal <= millimetres(150.0) + SAME_LENGTH => ToleranceGrade::Js15,
            _ => ToleranceGrade::Js17,
        };
        let tolerance = LengthTolerance::find(grade, nominal)
            .ok_or_else(|| self.unread())?
            .tolerance;
        let (min, max) = (nominal - tolerance, nominal + tolerance);
        if self.product == ScrewProduct::Iso4017 {
            let run_out = row.full_thread_run_out_max.ok_or_else(|| self.unread())?;
            return ScrewLength {
                nominal,
                min,
                max,
                body_length_min: millimetres(0.0),
                grip_gaging_length_max: run_out,
                fully_threaded: true,
            }
            .checked();
        }
        let thread_length = if nominal <= millimetres(125.0) + SAME_LENGTH {
            row.thread_length_short
        } else if nominal <= millimetres(200.0) + SAME_LENGTH {
            row.thread_length_medium
        } else {
            row.thread_length_long
        }
        .ok_or_else(|| self.unread())?;
        let grip_gaging_length_max = nominal - thread_length;
        ScrewLength {
            nominal,
            min,
            max,
            body_length_min: grip_gaging_length_max - 5.0 * row.pitch,
            grip_gaging_length_max,
            fully_threaded: false,
        }
        .checked()
    }

    fn unread(&self) -> Error {
        Error::NoValue {
            quantity: "thread length or length range",
            subject: format!("{self} of that length"),
            reason: "the row of the standard has not been read there",
        }
    }

    pub(super) fn metric_range(
        &self,
        small: &HexScrew,
        large: Option<&HexScrew>,
    ) -> Option<(Length, Length)> {
        let last = large.unwrap_or(small);
        match self.product {
            ScrewProduct::Iso4014 => Some((
                small.part_thread_length_from?,
                last.part_thread_length_thru?,
            )),
            _ => Some((small.full_thread_length_from, last.full_thread_length_thru)),
        }
    }
}
