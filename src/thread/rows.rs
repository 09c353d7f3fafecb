//! Rows of the tables by thread: which threads stock parts have, and how the others are refused.

use alloc::string::ToString;

use super::{Hand, Thread};
use crate::error::Error;
use crate::tables::{nanometres, size_range};
use crate::units::Length;

/// Refuses a thread that no stock part has: left-hand, of several starts, or with the large root radius
/// of UNJ and MJ, whose parts have standards of their own.
pub(crate) fn stock_thread(table: &'static str, thread: &Thread) -> Result<(), Error> {
    let available = if thread.hand() != Hand::Right || thread.starts() != 1 {
        "they hold right-hand parts of a single start"
    } else if thread.profile().has_large_root() {
        "they hold parts with UN, UNR and M threads"
    } else {
        return Ok(());
    };
    Err(Error::NotInTable {
        table,
        wanted: thread.to_string(),
        available: available.into(),
    })
}

/// The refusal of a thread that none of the rows is for.
#[cold]
pub(crate) fn no_row<'a, T: 'a>(
    table: &'static str,
    thread: &Thread,
    rows: impl IntoIterator<Item = &'a T>,
    size_of: impl Fn(&T) -> (Length, &'static str),
) -> Error {
    Error::NotInTable {
        table,
        wanted: thread.to_string(),
        available: size_range(rows, thread.nominal_diameter(), size_of),
    }
}

/// The row for a coarse thread, in a table that has coarse threads only and one row a size.
pub(crate) fn coarse_row<T>(
    table: &'static str,
    thread: &Thread,
    rows: &'static [T],
    size_of: impl Fn(&T) -> (Length, &'static str),
) -> Result<&'static T, Error> {
    let size = nanometres(thread.nominal_diameter());
    match rows.iter().find(|row| nanometres(size_of(row).0) == size) {
        Some(row) if thread.is_coarse() => Ok(row),
        Some(_) => Err(Error::NotInTable {
            table,
            wanted: thread.to_string(),
            available: "at that size it has the coarse thread only".into(),
        }),
        None => Err(no_row(table, thread, rows, size_of)),
    }
}
