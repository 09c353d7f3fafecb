//! The torque of an aircraft nut on a thread.

use crate::error::Error;
use crate::tables::aircraft_torque::AircraftTorque;
use crate::tables::nanometres;
use crate::thread::{Thread, rows::no_row};
use crate::units::inches;

impl AircraftTorque {
    /// The row of a thread.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if there is none; the message gives the sizes.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::aircraft_torque::AircraftTorque};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(
    ///     AircraftTorque::find(&"1-8 UNC".parse()?).unwrap_err().to_string(),
    ///     "1-8 UNC is not in the table of aircraft torques; \
    ///      its sizes run from #8 to 1-1/4, the nearest is 1",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(thread: &Thread) -> Result<&'static Self, Error> {
        let size = nanometres(thread.nominal_diameter());
        let pitch = nanometres(thread.pitch());
        Self::all()
            .iter()
            .find(|row| {
                thread.is_unified()
                    && nanometres(row.nominal_diameter) == size
                    && nanometres(inches(1.0 / row.threads_per_inch)) == pitch
            })
            .ok_or_else(|| {
                no_row(
                    "the table of aircraft torques",
                    thread,
                    Self::all(),
                    |row| (row.nominal_diameter, row.size),
                )
            })
    }
}
