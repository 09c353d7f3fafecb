//! Metric hexagon head screws besides ISO 4014 and ISO 4017 for a thread.

use alloc::{format, string::ToString, vec::Vec};

use crate::error::Error;
use crate::tables::metric_screws::{FineHexScrew, MetricHexCapScrew};
use crate::tables::{nanometres, size_range};
use crate::thread::{Thread, rows::coarse_row};

impl MetricHexCapScrew {
    /// The screw with a coarse metric thread.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if there is none; the message gives the sizes.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::metric_screws::MetricHexCapScrew};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let error = MetricHexCapScrew::find(&"M8x1".parse()?).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "M8x1 is not in the table of ASME B18.2.3.1M hex cap screws; \
    ///      at that size it has the coarse thread only",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(thread: &Thread) -> Result<&'static Self, Error> {
        let table = "the table of ASME B18.2.3.1M hex cap screws";
        coarse_row(table, thread, Self::all(), |row| {
            (row.nominal_diameter, row.size)
        })
    }
}

impl FineHexScrew {
    /// The screw with a fine pitch thread.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if there is none; the message gives the fine threads of that diameter,
    /// or the sizes.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::metric_screws::FineHexScrew};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let error = FineHexScrew::find(&"M10".parse()?).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "M10 is not in the table of ISO 8765 bolts; at that size it has M10x1.25, M10x1",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(thread: &Thread) -> Result<&'static Self, Error> {
        let size = nanometres(thread.nominal_diameter());
        let pitch = nanometres(thread.pitch());
        let same_size =
            |row: &&Self| !thread.is_unified() && nanometres(row.nominal_diameter) == size;
        Self::all()
            .iter()
            .find(|row| same_size(row) && nanometres(row.pitch) == pitch)
            .ok_or_else(|| {
                let near: Vec<&str> = Self::all()
                    .iter()
                    .filter(same_size)
                    .map(|row| row.size)
                    .collect();
                Error::NotInTable {
                    table: "the table of ISO 8765 bolts",
                    wanted: thread.to_string(),
                    available: if near.is_empty() {
                        size_range(Self::all(), thread.nominal_diameter(), |row| {
                            (row.nominal_diameter, row.size)
                        })
                    } else {
                        format!("at that size it has {}", near.join(", "))
                    },
                }
            })
    }
}
