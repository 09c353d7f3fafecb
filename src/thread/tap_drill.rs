//! The tap drill of a thread.

use alloc::{format, string::ToString};

use super::Thread;
use crate::error::Error;
use crate::tables::holes::TapDrill;
use crate::tables::nanometres;
use crate::units::Length;

impl TapDrill {
    /// The tap drill of a thread.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if no chart that was read has the thread.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::holes::TapDrill};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(TapDrill::find(&"M8".parse()?)?.drill_diameter, millimetres(6.8));
    /// assert!(TapDrill::find(&"1-1/16-8 UN".parse()?).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(thread: &Thread) -> Result<&'static Self, Error> {
        let size = nanometres(thread.nominal_diameter());
        let pitch = nanometres(thread.pitch());
        let rows = if thread.is_unified() {
            Self::all_inch()
        } else {
            Self::all_metric()
        };
        rows.iter()
            .find(|row| {
                nanometres(row.nominal_diameter) == size && nanometres(row.thread_pitch()) == pitch
            })
            .ok_or_else(|| Error::NotInTable {
                table: "the table of tap drills",
                wanted: thread.to_string(),
                available: format!(
                    "for about 75 % thread drill {:.2} mm",
                    // (D - drill) / (1.299 P) = 0.75
                    1e3 * (thread.nominal_diameter() - 0.75 * 1.299_038 * thread.pitch()).value
                ),
            })
    }

    fn thread_pitch(&self) -> Length {
        match (self.threads_per_inch, self.pitch) {
            (Some(n), _) => crate::units::inches(1.0 / n),
            (None, Some(pitch)) => pitch,
            (None, None) => crate::units::inches(0.0),
        }
    }
}
