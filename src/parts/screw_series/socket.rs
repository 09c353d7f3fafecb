//! Lengths of socket head cap screws: ISO 4762 as read; ASME B18.3 not at all.

use alloc::{format, string::ToString};

use super::{ScrewLength, ScrewProduct, ScrewSeries};
use crate::error::Error;
use crate::source::Provenance;
use crate::tables::screws::{LengthTolerance, ToleranceGrade};
use crate::tables::sockets::{SocketHeadCapScrew, SocketHeadGrip};
use crate::thread::Thread;
use crate::units::{Length, SAME_LENGTH, millimetres};

/// The first full thread of a screw threaded to the head lies within so many pitches of it (ISO 4762).
const RUN_OUT_PITCHES: f64 = 3.0;

pub(super) fn row(
    product: ScrewProduct,
    thread: &Thread,
) -> Result<&'static SocketHeadCapScrew, Error> {
    let inch = product == ScrewProduct::SocketHeadCapScrew;
    if thread.is_unified() == inch && (!inch || thread.is_of_cap_screws()) {
        return SocketHeadCapScrew::find(thread);
    }
    Err(Error::NotInTable {
        table: "the tables of socket head cap screws",
        wanted: thread.to_string(),
        available: if inch {
            "those of ASME B18.3 have UNC, UNF or 8-UN threads"
        } else {
            "those of ISO 4762 have metric coarse threads"
        }
        .into(),
    })
}

pub(super) fn provenance(thread: &Thread, nominal: Length) -> Option<Provenance> {
    let grip = SocketHeadGrip::find(thread, nominal).ok()?;
    Some(grip.provenance)
}

impl ScrewSeries {
    pub(super) fn socket_length(
        &self,
        screw: &SocketHeadCapScrew,
        nominal: Length,
    ) -> Result<ScrewLength, Error> {
        let no_value = |quantity, reason| Error::NoValue {
            quantity,
            subject: format!("{self} of that length"),
            reason,
        };
        let Some(pitch) = screw.pitch else {
            return Err(no_value(
                "body length",
                "the table of ASME B18.3 has not been read, and L - LT may promise a body that is not there",
            ));
        };
        let grip = SocketHeadGrip::find(&self.thread, nominal)?;
        let grade = if nominal <= millimetres(150.0) + SAME_LENGTH {
            ToleranceGrade::Js15
        } else {
            ToleranceGrade::Js17
        };
        let tolerance = LengthTolerance::get(grade, nominal)
            .ok_or_else(|| no_value("length tolerance", "no row has been read there"))?
            .tolerance;
        let (body_length_min, grip_gaging_length_max) = grip
            .body_length_min
            .zip(grip.grip_gaging_length_max)
            .unwrap_or((millimetres(0.0), RUN_OUT_PITCHES * pitch));
        ScrewLength {
            nominal,
            min: nominal - tolerance,
            max: nominal + tolerance,
            body_length_min,
            grip_gaging_length_max,
            fully_threaded: grip.is_threaded_to_the_head(),
        }
        .checked()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::inches;

    fn series(product: ScrewProduct, thread: &str) -> ScrewSeries {
        ScrewSeries::new(product, &thread.parse().unwrap()).unwrap()
    }

    #[test]
    fn bodies_are_those_that_were_read() {
        for grip in SocketHeadGrip::all() {
            let screws = series(ScrewProduct::Iso4762, grip.size);
            assert!(
                screws
                    .stock_lengths()
                    .any(|length| length == grip.nominal_length)
            );
            let screw = screws.length(grip.nominal_length).unwrap();
            assert_eq!(screw.fully_threaded, grip.body_length_min.is_none());
            assert_eq!(
                screw.body_length_min,
                grip.body_length_min.unwrap_or_default()
            );
            assert_eq!(screws.provenance(&screw), grip.provenance);
        }
    }

    #[test]
    fn bodies_that_were_not_read_are_refused() {
        let error = series(ScrewProduct::Iso4762, "M8").length(millimetres(50.0));
        assert!(matches!(error, Err(Error::NotInTable { .. })));
        assert_eq!(
            series(ScrewProduct::Iso4762, "M20").stock_lengths().count(),
            0
        );
        let inch = series(ScrewProduct::SocketHeadCapScrew, "1/2-13 UNC");
        let error = inch.length(inches(3.0)).unwrap_err();
        assert!(matches!(error, Error::NoValue { .. }), "{error}");
        assert_eq!(inch.stock_lengths().count(), 0);
    }

    #[test]
    fn other_threads_are_refused() {
        for (product, thread) in [
            (ScrewProduct::SocketHeadCapScrew, "M8"),
            (ScrewProduct::SocketHeadCapScrew, "1/2-28 UNEF"),
            (ScrewProduct::SocketHeadCapScrew, "1/2-16 UN"),
            (ScrewProduct::Iso4762, "1/2-13 UNC"),
            (ScrewProduct::Iso4762, "M8x1"),
        ] {
            assert!(
                ScrewSeries::new(product, &thread.parse().unwrap()).is_err(),
                "{thread}"
            );
        }
    }
}
