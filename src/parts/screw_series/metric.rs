//! Lengths of metric hexagon head screws: ISO 4014, ISO 4017, ISO 8765, EN 14399-3.

use alloc::{format, string::ToString};

use super::{Rows, ScrewLength, ScrewProduct, ScrewSeries};
use crate::error::{Allowed, Error, out_of_range};
use crate::source::{Basis, Provenance};
use crate::tables::hr_bolts::HrBolt;
use crate::tables::metric_screws::FineHexScrew;
use crate::tables::screws::{HexScrew, LengthTolerance, ProductGrade, ToleranceGrade};
use crate::thread::{Thread, rows::no_row};
use crate::units::{Length, SAME_LENGTH, millimetres};

const TABLE: &str = "the table of ISO 4014 and ISO 4017 screws";

/// The rows of a product with a thread. A fine thread bolt has the head, the body and the thread lengths
/// of the coarse one of its diameter.
pub(super) fn rows(product: ScrewProduct, thread: &Thread) -> Result<Rows, Error> {
    let diameter = thread.nominal_diameter();
    let a = HexScrew::get(diameter, ProductGrade::A);
    let b = HexScrew::get(diameter, ProductGrade::B);
    let made = if product == ScrewProduct::Iso8765 {
        FineHexScrew::find(thread)?;
        true
    } else {
        thread.metric_row().is_some() && thread.is_coarse()
    };
    match (a, b) {
        (Some(small), large) if made => Ok(Rows::Metric { small, large }),
        (None, Some(small)) if made => Ok(Rows::Metric { small, large: None }),
        _ if made => Err(no_row(TABLE, thread, HexScrew::all(), |row| {
            (row.nominal_diameter, row.size)
        })),
        _ => Err(Error::NotInTable {
            table: TABLE,
            wanted: thread.to_string(),
            available: "they have the coarse pitch and sizes from M1.6 to M64".into(),
        }),
    }
}

/// How the lengths of an HR bolt are known: its thread length was read, but that the body ends five pitches before the
/// thread is recalled.
pub(super) fn hr(bolt: &HrBolt) -> Provenance {
    Provenance {
        basis: Basis::Memory,
        ..bolt.provenance
    }
}

/// Longest HR bolt the crate answers for: longer ones are made to order.
const HR_LONGEST: Length = millimetres(200.0);

/// How the lengths of an ISO 8765 bolt are known: its thread length was read, but that the body keeps the
/// coarse transition is recalled.
pub(super) fn fine(thread: &Thread) -> Option<Provenance> {
    let row = FineHexScrew::find(thread).ok()?;
    Some(Provenance {
        basis: Basis::Memory,
        ..row.provenance
    })
}

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
        let tolerance = LengthTolerance::get(grade, nominal)
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

    /// A short HR bolt is threaded to the head so that enough thread is left to stretch (EN 14399-2). Where that
    /// begins was not read: a body below 0.5 d is not relied upon.
    pub(super) fn hr_range(bolt: &HrBolt) -> (Length, Length) {
        let body = 5.0 * bolt.pitch + 0.5 * bolt.nominal_diameter;
        let longest = match bolt.thread_length_medium {
            Some(_) => HR_LONGEST,
            None => millimetres(125.0),
        };
        (bolt.thread_length_short + body, longest)
    }

    pub(super) fn hr_length(&self, bolt: &HrBolt, nominal: Length) -> Result<ScrewLength, Error> {
        let (from, thru) = Self::hr_range(bolt);
        if nominal < from - SAME_LENGTH || nominal > thru + SAME_LENGTH {
            return Err(out_of_range(
                format!("nominal length of {self}"),
                nominal,
                Allowed::FromTo(from.into(), thru.into()),
            ));
        }
        let tolerance = LengthTolerance::get(ToleranceGrade::Js17, nominal)
            .ok_or_else(|| self.unread())?
            .tolerance;
        let thread_length = bolt.thread_length(nominal).ok_or_else(|| self.unread())?;
        let grip_gaging_length_max = nominal - thread_length;
        ScrewLength {
            nominal,
            min: nominal - tolerance,
            max: nominal + tolerance,
            body_length_min: grip_gaging_length_max - 5.0 * bolt.pitch,
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
            ScrewProduct::Iso4014 | ScrewProduct::Iso8765 => Some((
                small.part_thread_length_from?,
                last.part_thread_length_thru?,
            )),
            _ => Some((small.full_thread_length_from, last.full_thread_length_thru)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::vec::Vec;

    /// The rows of ISO 8765 hold the thread lengths that the search takes from ISO 4014.
    #[test]
    fn fine_threads_have_the_thread_lengths_of_the_coarse_screw() {
        for fine in FineHexScrew::all() {
            let thread = Thread::metric(fine.nominal_diameter, fine.pitch).unwrap();
            let Ok(Rows::Metric { small, .. }) = rows(ScrewProduct::Iso8765, &thread) else {
                panic!("{thread}")
            };
            assert_eq!(
                fine.thread_length_short, small.thread_length_short,
                "{thread}"
            );
            let series = ScrewSeries::new(ScrewProduct::Iso8765, &thread).unwrap();
            let lengths: Vec<_> = series.stock_lengths().collect();
            assert!(lengths.len() > 5, "{thread}");
            for nominal in lengths {
                let screw = series.length(nominal).unwrap();
                let printed = if nominal <= millimetres(125.0) {
                    fine.thread_length_short
                } else if nominal <= millimetres(200.0) {
                    Some(fine.thread_length_medium)
                } else {
                    fine.thread_length_long
                };
                let thread_length = nominal - screw.grip_gaging_length_max;
                assert!(
                    (thread_length - printed.unwrap()).abs() < SAME_LENGTH,
                    "{thread}"
                );
                assert!(screw.body_length_min > millimetres(0.0), "{thread}");
            }
        }
    }

    #[test]
    fn hr_bolts_never_have_a_stub_of_body() {
        for size in [
            "M12", "M14", "M16", "M18", "M20", "M22", "M24", "M27", "M30", "M36",
        ] {
            let thread: Thread = size.parse().unwrap();
            let series = ScrewSeries::new(ScrewProduct::En14399_3, &thread).unwrap();
            let lengths: Vec<_> = series.stock_lengths().collect();
            assert!(lengths.len() > 5, "{size}");
            for nominal in lengths {
                let screw = series.length(nominal).unwrap();
                assert!(
                    screw.body_length_min >= 0.5 * thread.nominal_diameter() - SAME_LENGTH,
                    "{size}"
                );
                assert_eq!(series.provenance(&screw).source.document, "EN 14399-3");
                assert_eq!(series.cautions(&screw).iter().count(), 2);
            }
            assert!(series.length(millimetres(205.0)).is_err());
        }
        for other in ["M10", "M20x1.5", "3/4-10 UNC"] {
            let thread = other.parse().unwrap();
            assert!(
                ScrewSeries::new(ScrewProduct::En14399_3, &thread).is_err(),
                "{other}"
            );
        }
    }

    #[test]
    fn fine_threads_keep_the_coarse_transition_and_say_so() {
        let fine = ScrewSeries::new(ScrewProduct::Iso8765, &"M20x1.5".parse().unwrap()).unwrap();
        let coarse = ScrewSeries::new(ScrewProduct::Iso4014, &"M20".parse().unwrap()).unwrap();
        let (of_fine, of_coarse) = (
            fine.length(millimetres(110.0)).unwrap(),
            coarse.length(millimetres(110.0)).unwrap(),
        );
        assert_eq!(of_fine, of_coarse);
        let cautions = |series: &ScrewSeries| series.cautions(&of_fine).iter().count();
        assert_eq!((cautions(&fine), cautions(&coarse)), (2, 1));
        assert!(ScrewSeries::new(ScrewProduct::Iso8765, &"M20".parse().unwrap()).is_err());
        assert!(ScrewSeries::new(ScrewProduct::Iso8765, &"3/4-16 UNF".parse().unwrap()).is_err());
    }
}
