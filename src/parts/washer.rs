//! The washer for a thread.

use alloc::format;

use crate::error::Error;
use crate::names::Key;
use crate::tables::washers::{Washer, WasherStyle};
use crate::tables::{nanometres, size_range};
use crate::thread::Thread;

impl Washer {
    /// The washer of a style for a bolt.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if the style is not made for that size; the message gives the sizes
    /// of the style.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert!(Washer::find(WasherStyle::F436, &"M20".parse()?).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(style: WasherStyle, thread: &Thread) -> Result<&'static Self, Error> {
        let size = nanometres(thread.nominal_diameter());
        // Washers for inch threads are found in the inch table, metric ones in the other: looked at first.
        let (own, other) = if thread.is_unified() {
            (Self::all_inch(), Self::all_metric())
        } else {
            (Self::all_metric(), Self::all_inch())
        };
        let is_it = |row: &&Self| row.style == style && nanometres(row.nominal_diameter) == size;
        own.iter()
            .find(is_it)
            .or_else(|| other.iter().find(is_it))
            .ok_or_else(|| Error::NotInTable {
                table: "the washer tables",
                wanted: format!("{} for {thread}", style.label()),
                available: size_range(Self::of_style(style), thread.nominal_diameter(), |washer| {
                    (washer.nominal_diameter, washer.size)
                }),
            })
    }
}
