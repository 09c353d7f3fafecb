//! The nut for a thread.

use alloc::{format, string::ToString, vec::Vec};

use crate::error::{Error, sane_text};
use crate::tables::nuts::{Nut, NutStyle};
use crate::tables::threads::UnifiedSeries;
use crate::tables::{nanometres, rows_of, size_range};
use crate::thread::{Thread, rows::stock_thread};

impl Nut {
    /// The nut of a style for a thread, of the latest edition that there is a row of, which may be a recalled one
    /// (`provenance`); [`find_edition`](Self::find_edition) gives another. At M10 some ASME styles list a second nut with
    /// 15 mm flats; this gives the one with 16 mm flats.
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
        let rows = Self::rows_for(style, thread)?;
        Self::fitting(rows, thread)
            .next()
            .ok_or_else(|| Error::NotInTable {
                table: Self::table_of(rows),
                wanted: thread.to_string(),
                available: rows
                    .iter()
                    .find(|nut| {
                        nanometres(nut.nominal_diameter) == nanometres(thread.nominal_diameter())
                    })
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

    /// The nut of a style for a thread in one edition of its standard, by the name that
    /// [`Provenance::edition`](crate::source::Provenance::edition) of its rows gives.
    ///
    /// Of most nuts one edition alone was read. An edition that no row has is refused, never answered by another one.
    ///
    /// # Errors
    ///
    /// As [`find`](Self::find); and [`Error::NotInTable`] if no row of that size is of the edition: the message names
    /// those that are held.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread = "M20".parse()?;
    /// let new = Nut::find(NutStyle::Iso4034, &thread)?;
    /// let old = Nut::find_edition(NutStyle::Iso4034, &thread, "GB/T 41-2000")?;
    /// assert_eq!((new.height_max, old.height_max), (Some(millimetres(19.0)), Some(millimetres(18.7))));
    ///
    /// let none = Nut::find_edition(NutStyle::Iso4034, &thread, "1986").unwrap_err();
    /// assert_eq!(
    ///     none.to_string(),
    ///     "M20, edition 1986 is not in the table of ISO 4034 nuts; \
    ///      of that size it has: not later than 2020, GB/T 41-2000",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn find_edition(
        style: NutStyle,
        thread: &Thread,
        edition: &str,
    ) -> Result<&'static Self, Error> {
        sane_text("edition", edition)?;
        Self::find(style, thread)?;
        let rows = Self::rows_for(style, thread)?;
        Self::fitting(rows, thread)
            .find(|nut| nut.provenance.edition() == Some(edition))
            .ok_or_else(|| {
                let held: Vec<&str> = Self::fitting(rows, thread)
                    .map(|nut| nut.provenance.edition().unwrap_or("one that is not known"))
                    .collect();
                Error::NotInTable {
                    table: Self::table_of(rows),
                    wanted: format!("{thread}, edition {edition}"),
                    available: format!("of that size it has: {}", held.join(", ")),
                }
            })
    }

    /// The rows of a style, in the table for the thread: inch threads are found in the inch table, metric ones in the other.
    fn rows_for(style: NutStyle, thread: &Thread) -> Result<&'static [Self], Error> {
        stock_thread("the tables of nuts", thread)?;
        let own = if thread.is_unified() {
            Self::all_inch()
        } else {
            Self::all_metric()
        };
        Ok(match rows_of(own, &style, |nut| nut.style) {
            [] => Self::of_style(style),
            rows => rows,
        })
    }

    /// Those of them that fit the thread, the latest edition first.
    fn fitting(
        rows: &'static [Self],
        thread: &Thread,
    ) -> impl Iterator<Item = &'static Self> + use<> {
        let thread = *thread;
        rows.iter().filter(move |nut| {
            nanometres(nut.nominal_diameter) == nanometres(thread.nominal_diameter())
                && match nut.pitch {
                    Some(own) => nanometres(own) == nanometres(thread.pitch()),
                    None => nut.is_made_with(&thread),
                }
        })
    }

    fn table_of(rows: &[Self]) -> &'static str {
        rows.first()
            .map_or("the nut tables", |nut| nut.style.table())
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::names::Key;
    use crate::units::millimetres;

    /// Two documents: the heights of ISO 4034 in a DIN-ISO comparison table of a fastener catalogue (2020), and those of
    /// GB/T 41-2000 in a Chinese handbook table. M6, M20 and M36 differ; the later height of M6 and M36 is recalled.
    #[test]
    fn the_edition_decides_the_height_and_the_latest_is_found() {
        let prints = [
            ("M20", None, 19.0),
            ("M6", None, 6.4),
            ("M6", Some("GB/T 41-2000"), 6.1),
            ("M20", Some("GB/T 41-2000"), 18.7),
            ("M20", Some("not later than 2020"), 19.0),
            ("M36", None, 31.9),
            ("M36", Some("GB/T 41-2000"), 31.5),
            ("M42", Some("GB/T 41-2000"), 34.9),
        ];
        for (size, edition, height) in prints {
            let thread = size.parse().unwrap();
            let nut = match edition {
                Some(edition) => Nut::find_edition(NutStyle::Iso4034, &thread, edition),
                None => Nut::find(NutStyle::Iso4034, &thread),
            };
            assert_eq!(
                nut.unwrap().height_max,
                Some(millimetres(height)),
                "{size} {edition:?}"
            );
        }
    }

    /// An edition that was not read is refused, and so is the name of one that is no edition: no row stands in for it.
    #[test]
    fn an_edition_that_no_row_has_is_refused() {
        let m12 = "M12".parse().unwrap();
        let long = "2".repeat(10_000);
        for edition in ["2025", "", "gb/t 41-2000", &long] {
            for style in NutStyle::ALL.iter().copied() {
                assert!(
                    Nut::find_edition(style, &m12, edition).is_err(),
                    "{style:?}"
                );
            }
        }
    }

    /// Every row that knows its edition is found by it, and by it alone: no two rows of a size are of one edition. M10 of
    /// two widths across flats, and of one edition, is the exception.
    #[test]
    fn every_row_is_found_by_its_edition() {
        let mut several = 0;
        for thread in Thread::tabled() {
            for style in NutStyle::ALL.iter().copied() {
                let Ok(rows) = Nut::rows_for(style, &thread) else {
                    continue;
                };
                let fitting: Vec<_> = Nut::fitting(rows, &thread).collect();
                let one_width = fitting
                    .windows(2)
                    .all(|pair| pair[0].width_across_flats_max == pair[1].width_across_flats_max);
                if fitting.len() > 1 && one_width {
                    several += 1;
                    for nut in fitting {
                        let edition = nut.provenance.edition().unwrap();
                        assert_eq!(Nut::find_edition(style, &thread, edition), Ok(nut));
                    }
                }
            }
        }
        assert_eq!(several, 3);
    }
}
