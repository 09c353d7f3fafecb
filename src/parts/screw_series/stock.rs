//! The lengths a product is stocked in.

use alloc::{format, string::ToString};
use core::iter;

use super::{Rows, ScrewProduct, ScrewSeries, socket, structural};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::source::Basis;
use crate::tables::nanometres;
use crate::tables::screws::{StockLength, StockStep};
use crate::units::{Length, SAME_LENGTH, inches};

impl ScrewSeries {
    /// How the list of stock lengths and their range are known: for both systems from memory or
    /// trade practice.
    ///
    /// ```
    /// use shankline::{prelude::*, source::Basis};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4014, &"M20".parse()?)?;
    /// assert_eq!(screws.stock_basis(), Basis::Memory);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn stock_basis(&self) -> Basis {
        match self.rows {
            Rows::Inch { .. } => StockStep::all()
                .first()
                .map_or(Basis::Memory, |step| step.provenance.basis),
            Rows::Metric { .. } if self.product == ScrewProduct::Iso8765 => Basis::Memory,
            Rows::Metric { small, .. } => small.length_range_basis,
            Rows::Structural(_) => structural::STOCK_BASIS,
            // What was read is not what is stocked.
            Rows::Hr(_) | Rows::Socket(_) | Rows::Unread(_) => Basis::Memory,
        }
    }

    /// The lengths the product is stocked in, rising.
    ///
    /// Inch: steps of 1/8 in to 1 in, 1/4 in to 6 in and (from 3/8 in diameter) 1/2 in to 12 in,
    /// not shorter than the diameter, up to 1-1/2 in diameter: common practice, no source.
    /// Metric: the lengths of ISO 888 that ISO 4014 lists, within the range of the product; all of
    /// ISO 888 for EN 14399-3, up to 200 mm. Socket screws: those whose body was read, for want of
    /// a list of what is stocked; none in inches. None for products whose lengths are not known.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4014, &"M10".parse()?)?;
    /// let mut lengths = screws.stock_lengths();
    /// assert_eq!(lengths.next(), Some(millimetres(45.0)));
    /// assert_eq!(lengths.next(), Some(millimetres(50.0)));
    /// # Ok(())
    /// # }
    /// ```
    pub fn stock_lengths(&self) -> impl Iterator<Item = Length> + use<> {
        let diameter = self.thread.nominal_diameter();
        let (range, inch, structural, socket) = match self.rows {
            Rows::Inch { .. } => (None, true, None, None),
            Rows::Metric { small, large } => (self.metric_range(small, large), false, None, None),
            Rows::Structural(bolt) => (None, false, Some(bolt), None),
            Rows::Hr(bolt) => (Some(Self::hr_range(bolt)), false, None, None),
            Rows::Socket(screw) => (None, false, None, Some(screw)),
            Rows::Unread(_) => (None, false, None, None),
        };
        // HR bolts come in steps of 5 mm too.
        let hr = self.product == ScrewProduct::En14399_3;
        let size = nanometres(diameter);
        let steps = StockStep::all()
            .iter()
            .filter(move |step| {
                inch && nanometres(step.size_from) <= size && size <= nanometres(step.size_thru)
            })
            .flat_map(|step| {
                let mut count = 0.0;
                iter::from_fn(move || {
                    // The first length of a step is the last of the one before.
                    let from = if step.length_from > inches(0.5) {
                        1.0
                    } else {
                        0.0
                    };
                    let length = step.length_from + (count + from) * step.increment;
                    count += 1.0;
                    (length <= step.length_thru + SAME_LENGTH).then_some(length)
                })
            })
            .filter(move |length| *length >= diameter - SAME_LENGTH);
        let lengths = StockLength::all()
            .iter()
            .filter(move |row| row.hex_screws || hr)
            .map(|row| row.nominal_length)
            .filter(move |length| {
                range.is_some_and(|(from, thru)| {
                    *length >= from - SAME_LENGTH && *length <= thru + SAME_LENGTH
                })
            });
        let structural = structural.into_iter().flat_map(structural::stock_lengths);
        let sockets = socket.into_iter().flat_map(socket::lengths_read);
        steps.chain(lengths).chain(structural).chain(sockets)
    }

    /// The shortest stock length that is at least so long.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if the product is not stocked so long, or for a length that is not positive
    /// and finite; [`Error::NoValue`] if no stock lengths are known.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &"1/2-13 UNC".parse()?)?;
    /// assert_eq!(screws.stock_length_at_least(inches(2.3))?, inches(2.5));
    /// assert_eq!(screws.stock_length_at_least(inches(2.5))?, inches(2.5));
    /// # Ok(())
    /// # }
    /// ```
    pub fn stock_length_at_least(&self, length: Length) -> Result<Length, Error> {
        positive("screw length", length)?;
        let mut longest = Length::default();
        for stocked in self.stock_lengths() {
            if stocked >= length - SAME_LENGTH {
                return Ok(stocked);
            }
            longest = stocked;
        }
        if longest == Length::default() {
            return Err(Error::NoValue {
                quantity: "stock length",
                subject: self.to_string(),
                reason: "its lengths have not been read, or its size is none that is stocked",
            });
        }
        let quantity = format!("stock length of {} in {}", self.product, self.thread);
        Err(out_of_range(
            quantity,
            length,
            Allowed::AtMost(longest.into()),
        ))
    }
}
