//! Socket head cap screws for a thread.

use alloc::{format, string::String, vec::Vec};

use crate::error::{Error, sane_length};
use crate::tables::sockets::{SocketHeadCapScrew, SocketHeadGrip};
use crate::tables::{nanometres, size_range};
use crate::thread::{
    Thread,
    rows::{coarse_row, no_row},
};
use crate::units::{Length, UnitSystem, shown};

impl SocketHeadCapScrew {
    /// The screw with a thread: ASME B18.3 for a Unified thread of any pitch, ISO 4762 for a coarse
    /// metric one.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if there is none; the message gives the sizes.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::sockets::SocketHeadCapScrew};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let error = SocketHeadCapScrew::find(&"1-1/4-7 UNC".parse()?).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "1-1/4-7 UNC is not in the table of ASME B18.3 socket head cap screws; \
    ///      its sizes run from #0 to 1, the nearest is 1",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(thread: &Thread) -> Result<&'static Self, Error> {
        let size_of = |row: &Self| (row.nominal_diameter, row.size);
        if thread.is_unified() {
            let size = nanometres(thread.nominal_diameter());
            let mut rows = Self::all_inch().iter();
            rows.find(|row| nanometres(row.nominal_diameter) == size)
                .ok_or_else(|| {
                    let table = "the table of ASME B18.3 socket head cap screws";
                    no_row(table, thread, Self::all_inch(), size_of)
                })
        } else {
            let table = "the table of ISO 4762 screws";
            coarse_row(table, thread, Self::all_metric(), size_of)
        }
    }
}

impl SocketHeadGrip {
    /// The row of a coarse metric thread and a nominal length.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not positive and finite, [`Error::NotInTable`] if
    /// nobody has read the row; the message gives the lengths that were read.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::sockets::SocketHeadGrip};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let error = SocketHeadGrip::find(&"M8".parse()?, millimetres(50.0)).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "M8 x 50 mm is not in the table of ISO 4762 body lengths; \
    ///      of that size it has 35 mm, 40 mm",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(thread: &Thread, length: Length) -> Result<&'static Self, Error> {
        sane_length("nominal length", length)?;
        let size = nanometres(thread.nominal_diameter());
        let of_size = |row: &&Self| nanometres(row.nominal_diameter) == size && thread.is_coarse();
        Self::all()
            .iter()
            .find(|row| of_size(row) && nanometres(row.nominal_length) == nanometres(length))
            .ok_or_else(|| {
                let millimetres = |length| format!("{:.0}", shown(length, UnitSystem::Si));
                let near: Vec<String> = Self::all()
                    .iter()
                    .filter(of_size)
                    .map(|row| millimetres(row.nominal_length))
                    .collect();
                Error::NotInTable {
                    table: "the table of ISO 4762 body lengths",
                    wanted: format!("{} x {}", thread, millimetres(length)),
                    available: if near.is_empty() {
                        size_range(Self::all(), thread.nominal_diameter(), |row| {
                            (row.nominal_diameter, row.size)
                        })
                    } else {
                        format!("of that size it has {}", near.join(", "))
                    },
                }
            })
    }
}
