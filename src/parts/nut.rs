//! The nut for a thread.

use alloc::{format, string::ToString};

use crate::error::Error;
use crate::tables::nuts::{Nut, NutStyle};
use crate::tables::threads::UnifiedSeries;
use crate::tables::{nanometres, rows_of, size_range};
use crate::thread::{Thread, rows::stock_thread};

impl Nut {
    /// The nut of a style for a thread. At M10 some ASME styles list a second nut with 15 mm
    /// flats; this gives the one with 16 mm flats.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if the style is not made for the thread; the message gives the sizes
    /// of the style, or the thread series it is made in at that size. Left-hand, multi-start, UNJ
    /// and MJ threads are refused: the tables hold none of their nuts.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let error = Nut::find(NutStyle::Iso7042, &"M4".parse()?).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "M4 is not in the table of ISO 7042 nuts; its sizes run from M5 to M36, the nearest is M5",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(style: NutStyle, thread: &Thread) -> Result<&'static Self, Error> {
        stock_thread("the tables of nuts", thread)?;
        let size = nanometres(thread.nominal_diameter());
        let pitch = nanometres(thread.pitch());
        // Inch threads are found in the inch table, metric ones in the other: looked at first.
        let own = if thread.is_unified() {
            Self::all_inch()
        } else {
            Self::all_metric()
        };
        let rows = match rows_of(own, &style, |nut| nut.style) {
            [] => Self::of_style(style),
            rows => rows,
        };
        rows.iter()
            .find(|nut| {
                nanometres(nut.nominal_diameter) == size
                    && match nut.pitch {
                        Some(own) => nanometres(own) == pitch,
                        None => nut.is_made_with(thread),
                    }
            })
            .ok_or_else(|| Error::NotInTable {
                table: rows
                    .first()
                    .map_or("the nut tables", |nut| nut.style.table()),
                wanted: thread.to_string(),
                available: rows
                    .iter()
                    .find(|nut| nanometres(nut.nominal_diameter) == size)
                    .and_then(|nut| nut.thread_series)
                    .map_or_else(
                        || {
                            size_range(rows, thread.nominal_diameter(), |nut| {
                                (nut.nominal_diameter, nut.size)
                            })
                        },
                        |series| format!("at that size it is made with {series} threads"),
                    ),
            })
    }

    /// Whether an inch nut is made in the series of a thread: `thread_series` lists them.
    fn is_made_with(&self, thread: &Thread) -> bool {
        let symbol = match thread.unified_row().map(|row| row.series) {
            Some(UnifiedSeries::Un8) => "8UN",
            Some(series) => series.symbol(),
            None => return false,
        };
        self.thread_series
            .is_some_and(|list| list.split(['/', ' ']).any(|listed| listed == symbol))
    }
}
