//! The lengths a product is stocked in.

use alloc::{format, string::ToString};
use core::slice;

use super::{Rows, ScrewProduct, ScrewSeries, structural};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::source::Basis;
use crate::tables::nanometres;
use crate::tables::screws::{StockLength, StockStep};
use crate::tables::sockets::SocketHeadGrip;
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
        match self.rows {
            Rows::Inch { .. } => StockLengths::Steps {
                steps: StockStep::all().iter(),
                step: None,
                count: 0.0,
                diameter,
            },
            Rows::Metric { small, large } => match self.metric_range(small, large) {
                Some(range) => StockLengths::listed(range, false),
                None => StockLengths::NotKnown,
            },
            Rows::Structural(bolt) => {
                let range = structural::stock_range(bolt);
                if bolt.pitch.is_some() {
                    StockLengths::listed(range, false)
                } else {
                    StockLengths::Quarters { count: 0.0, range }
                }
            }
            // HR bolts come in steps of 5 mm too.
            Rows::Hr(bolt) => StockLengths::listed(
                Self::hr_range(bolt),
                self.product == ScrewProduct::En14399_3,
            ),
            Rows::Socket(screw) => StockLengths::Sockets {
                grips: SocketHeadGrip::all().iter(),
                diameter: screw.nominal_diameter,
            },
            Rows::Unread(_) => StockLengths::NotKnown,
        }
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

/// Stock lengths, one after the other. (Written out, and not as a chain of adapters: whatever goes over lengths is compiled
/// once for each adapter in the chain.)
enum StockLengths {
    NotKnown,
    /// Inch screws: steps of the size.
    Steps {
        steps: slice::Iter<'static, StockStep>,
        step: Option<&'static StockStep>,
        count: f64,
        diameter: Length,
    },
    /// Metric screws: lengths of ISO 888 in a range.
    Listed {
        rows: slice::Iter<'static, StockLength>,
        range: (Length, Length),
        with_fives: bool,
    },
    /// Inch structural bolts: quarters of an inch in a range.
    Quarters {
        count: f64,
        range: (Length, Length),
    },
    /// Socket screws: those whose body was read.
    Sockets {
        grips: slice::Iter<'static, SocketHeadGrip>,
        diameter: Length,
    },
}

impl StockLengths {
    fn listed(range: (Length, Length), with_fives: bool) -> Self {
        Self::Listed {
            rows: StockLength::all().iter(),
            range,
            with_fives,
        }
    }
}

impl Iterator for StockLengths {
    type Item = Length;

    fn next(&mut self) -> Option<Length> {
        match self {
            Self::NotKnown => None,
            Self::Steps {
                steps,
                step,
                count,
                diameter,
            } => {
                let size = nanometres(*diameter);
                loop {
                    let Some(own) = *step else {
                        let next = steps.find(|own| {
                            nanometres(own.size_from) <= size && size <= nanometres(own.size_thru)
                        })?;
                        // The first length of a step is the last of the one before.
                        *count = if next.length_from > inches(0.5) {
                            1.0
                        } else {
                            0.0
                        };
                        *step = Some(next);
                        continue;
                    };
                    let length = own.length_from + *count * own.increment;
                    *count += 1.0;
                    if length > own.length_thru + SAME_LENGTH {
                        *step = None;
                    } else if length >= *diameter - SAME_LENGTH {
                        return Some(length);
                    }
                }
            }
            Self::Listed {
                rows,
                range,
                with_fives,
            } => rows
                .find(|row| {
                    (row.hex_screws || *with_fives) && is_within(row.nominal_length, *range)
                })
                .map(|row| row.nominal_length),
            Self::Quarters { count, range } => loop {
                *count += 1.0;
                let length = *count * structural::STEP;
                if length > range.1 + SAME_LENGTH {
                    return None;
                }
                if is_within(length, *range) {
                    return Some(length);
                }
            },
            Self::Sockets { grips, diameter } => grips
                .find(|grip| (grip.nominal_diameter - *diameter).abs() < SAME_LENGTH)
                .map(|grip| grip.nominal_length),
        }
    }
}

fn is_within(length: Length, (from, thru): (Length, Length)) -> bool {
    length >= from - SAME_LENGTH && length <= thru + SAME_LENGTH
}
