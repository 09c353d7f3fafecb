//! The screws of one product with one thread, at any length.

use alloc::{format, string::ToString};
use core::fmt;

use super::ScrewLength;
use crate::caution::{Caution, Cautions};
use crate::error::{Error, sane_length};
use crate::source::{Basis, Provenance};
use crate::tables::bolts::StructuralBolt;
use crate::tables::hr_bolts::HrBolt;
use crate::tables::screws::{FullThreadLimit, HexCapScrew, HexScrew, InchLengthTolerance};
use crate::tables::sockets::SocketHeadCapScrew;
use crate::thread::{
    Thread,
    rows::{no_row, stock_thread},
};
use crate::units::Length;

mod head;
mod inch;
mod metric;
mod product;
mod socket;
mod stock;
mod structural;
mod unread;

pub(crate) use head::greatest_width;
pub use head::{Head, HeadForm};
pub use product::ScrewProduct;

/// All lengths of one product with one thread.
///
/// | product | thread length | body and grip gaging length | source |
/// |---|---|---|---|
/// | hex cap screw | LT = 2 D + 0.25 in, 2 D + 0.50 in over 6 in | LG = L - LT; LB = LG - Y, Y = 5 coarse pitches, also on fine threads | ASME B18.2.1-2010, 4.7 |
/// | ISO 4014 | b = 2 d + 6, 2 d + 12 over 125 mm, 2 d + 25 over 200 mm | lg = l - b; ls = lg - 5 P | ISO 888, ISO 4014 |
/// | ISO 8765 | as ISO 4014 | lg = l - b; ls = lg - 5 P of the coarse pitch | ISO 8765; the coarse pitch and the range of lengths, taken from ISO 4014, from memory |
/// | structural bolt, inch | LT by size | LG = L - LT; LB = LG - Y, Y by size, 2.4 to 2.7 pitches | ASME B18.2.6 |
/// | EN 14399-4 | b by size | lg = l - b; ls = lg - 3 P | EN 14399-4 |
/// | EN 14399-3 | its table | lg = l - b; ls = lg - 5 P; refused where ls would be below 0.5 d | reproduced; the transition from memory |
/// | ISO 4762 | b = 2 d + 12 | as read, row by row; other lengths are refused | ISO 4762 |
/// | socket head cap screw, inch | not read | refused: several lengths may share one LG | ASME B18.3 |
/// | hex bolt, heavy hex bolt | LT = 2 D + 0.25 in, 2 D + 0.50 in over 6 in | refused: the rule of ASME B18.2.1-2010, 4.7 is that of screws, and bolts have wider limits | ASME B18.2.1 |
/// | hex cap screw, metric | as ISO 4014 | refused: the length tolerance was not read | ASME B18.2.3.1M |
/// | threaded to the head | whole length | LB = 0; LG = 2.5 P (inch, to 1 in), 3.5 P (inch, above), a max = 3 P (ISO 4017) | inch: from memory; ISO 4017 |
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let screws = ScrewSeries::new(ScrewProduct::Iso4014, &"M20".parse()?)?;
/// let screw = screws.length(millimetres(110.0))?;
/// assert!((screw.grip_gaging_length_max - millimetres(64.0)).abs() < millimetres(1e-9));
/// assert!((screw.body_length_min - millimetres(51.5)).abs() < millimetres(1e-9));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ScrewSeries {
    product: ScrewProduct,
    thread: Thread,
    rows: Rows,
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum Rows {
    Inch {
        dimensions: &'static HexCapScrew,
        full_thread: Option<&'static FullThreadLimit>,
        tolerances: &'static [InchLengthTolerance],
    },
    /// Product grade A where the size has it, and grade B where it has that too; one of them alone
    /// stands in `small`.
    Metric {
        small: &'static HexScrew,
        large: Option<&'static HexScrew>,
    },
    Structural(&'static StructuralBolt),
    Hr(&'static HrBolt),
    Socket(&'static SocketHeadCapScrew),
    /// Made with the thread, but of unknown lengths.
    Unread(Provenance),
}

impl ScrewSeries {
    /// The screws of a product with a thread.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if the product is not made with the thread: hex cap screws, hex bolts and inch
    /// socket screws are Unified coarse, fine or 8-UN, ISO 4014, ISO 4017 and ISO 4762 screws metric coarse,
    /// ISO 8765 bolts metric fine. No product is made with left-hand, multi-start, UNJ or MJ threads.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let error = ScrewSeries::new(ScrewProduct::Iso4014, &"M20x1.5".parse()?).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "M20x1.5 is not in the table of ISO 4014 and ISO 4017 screws; they have the coarse \
    ///      pitch and sizes from M1.6 to M64",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn new(product: ScrewProduct, thread: &Thread) -> Result<Self, Error> {
        stock_thread("the tables of screws", thread)?;
        let diameter = thread.nominal_diameter();
        let rows = match product {
            ScrewProduct::Own => {
                return Err(Error::NotInTable {
                    table: "the tables of screws",
                    wanted: product.to_string(),
                    available: "a joint has it described".into(),
                });
            }
            ScrewProduct::HexCapScrew => HexCapScrew::get(diameter)
                .filter(|_| thread.is_of_cap_screws())
                .map(|dimensions| Rows::Inch {
                    dimensions,
                    full_thread: FullThreadLimit::get(diameter),
                    tolerances: InchLengthTolerance::of_size(
                        InchLengthTolerance::cap_screws(),
                        diameter,
                    ),
                })
                .ok_or_else(|| no_cap_screw(thread))?,
            ScrewProduct::Iso4014 | ScrewProduct::Iso4017 | ScrewProduct::Iso8765 => {
                metric::rows(product, thread)?
            }
            ScrewProduct::En14399_3 => Rows::Hr(HrBolt::find(thread)?),
            ScrewProduct::SocketHeadCapScrew | ScrewProduct::Iso4762 => {
                Rows::Socket(socket::row(product, thread)?)
            }
            ScrewProduct::HexBolt
            | ScrewProduct::HeavyHexBolt
            | ScrewProduct::MetricHexCapScrew => Rows::Unread(unread::provenance(product, thread)?),
            ScrewProduct::StructuralBolt | ScrewProduct::En14399_4 => {
                let inch = product == ScrewProduct::StructuralBolt;
                if thread.is_unified() != inch {
                    return Err(Error::NotInTable {
                        table: "the tables of structural bolts",
                        wanted: thread.to_string(),
                        available: if inch {
                            "those of ASME B18.2.6 have UNC threads"
                        } else {
                            "those of EN 14399-4 have metric coarse threads"
                        }
                        .into(),
                    });
                }
                Rows::Structural(StructuralBolt::find(thread)?)
            }
        };
        Ok(Self {
            product,
            thread: *thread,
            rows,
        })
    }

    /// The product.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4017, &"M8".parse()?)?;
    /// assert_eq!(screws.product(), ScrewProduct::Iso4017);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn product(&self) -> ScrewProduct {
        self.product
    }

    /// The thread.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4017, &"M8".parse()?)?;
    /// assert_eq!(screws.thread().to_string(), "M8");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn thread(&self) -> Thread {
        self.thread
    }

    /// Source of what fixes the lengths of one of these screws.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &"3/4-10 UNC".parse()?)?;
    /// let four = screws.length(inches(4.0))?;
    /// assert_eq!(screws.provenance(&four).source.document, "ASME B18.2.1");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn provenance(&self, screw: &ScrewLength) -> Provenance {
        match self.rows {
            Rows::Inch { dimensions, .. } if screw.fully_threaded => Provenance {
                source: dimensions.full_thread_run_out_source,
                basis: dimensions.full_thread_run_out_basis,
            },
            Rows::Inch { dimensions, .. } => dimensions.provenance,
            Rows::Metric { .. } => match self.metric_row(screw.nominal) {
                Some(row) if screw.fully_threaded => Provenance {
                    source: row.full_thread_run_out_source,
                    basis: row.full_thread_run_out_basis,
                },
                Some(_) if self.product == ScrewProduct::Iso8765 => {
                    metric::fine(&self.thread).unwrap_or_else(|| self.unknown_screw())
                }
                Some(row) => row.provenance,
                None => self.unknown_screw(),
            },
            Rows::Structural(bolt) => bolt.provenance,
            Rows::Hr(bolt) => metric::hr(bolt),
            Rows::Socket(_) => socket::provenance(&self.thread, screw.nominal)
                .unwrap_or_else(|| self.unknown_screw()),
            Rows::Unread(_) => self.unknown_screw(),
        }
    }

    /// What the user of a screw must be told: whether the values that fix its lengths, or the list
    /// of stock lengths, were recalled or are mere practice.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &"1/2-13 UNC".parse()?)?;
    /// assert_eq!(screws.cautions(&screws.length(inches(4.0))?).iter().count(), 1);
    /// // How far from the head the thread of a short screw begins is known from memory only.
    /// assert_eq!(screws.cautions(&screws.length(inches(1.0))?).iter().count(), 2);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self, screw: &ScrewLength) -> Cautions {
        let value = if screw.fully_threaded {
            "unthreaded length under the head"
        } else {
            "set of screw dimensions"
        };
        let stock = self
            .stock_basis()
            .is_weak()
            .then_some(Caution::StockLengths);
        Cautions::default()
            .with(Caution::from_memory(value, self.provenance(screw)))
            .with(stock)
    }

    /// The provenance of a screw this series has no row for: the weakest there is.
    fn unknown_screw(&self) -> Provenance {
        let source = match self.rows {
            Rows::Inch { dimensions, .. } => dimensions.provenance.source,
            Rows::Metric { small, .. } => small.provenance.source,
            Rows::Structural(bolt) => bolt.provenance.source,
            Rows::Hr(bolt) => bolt.provenance.source,
            Rows::Socket(screw) => screw.provenance.source,
            Rows::Unread(row) => row.source,
        };
        Provenance {
            source,
            basis: Basis::Memory,
        }
    }

    /// The screw of a nominal length, by the rules of the product.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not positive and finite, beyond a kilometre or outside the
    /// range of the product; [`Error::NoValue`] where the standard's table has not been read at that size.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &"1/2-13 UNC".parse()?)?;
    /// assert!(screws.length(inches(1.5))?.fully_threaded);
    /// assert!(!screws.length(inches(2.0))?.fully_threaded);
    /// assert!(screws.length(inches(0.0)).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn length(&self, nominal: Length) -> Result<ScrewLength, Error> {
        sane_length("nominal length", nominal)?;
        match self.rows {
            Rows::Inch {
                dimensions,
                full_thread,
                tolerances,
            } => self.inch_length(dimensions, full_thread, tolerances, nominal),
            Rows::Metric { small, large } => self.metric_length(small, large, nominal),
            Rows::Structural(bolt) => self.structural_length(bolt, nominal),
            Rows::Hr(bolt) => self.hr_length(bolt, nominal),
            Rows::Socket(screw) => self.socket_length(screw, nominal),
            Rows::Unread(_) => Err(self.unread_length()),
        }
    }
}

impl Thread {
    /// Whether the screws of ASME B18.2.1 and B18.3 are made with it: UNC, UNF or 8-UN.
    fn is_of_cap_screws(&self) -> bool {
        use crate::tables::threads::UnifiedSeries::{Un8, Unc, Unf};
        let series = self.unified_row().map(|row| row.series);
        matches!(series, Some(Unc | Unf | Un8))
    }
}

impl fmt::Display for ScrewSeries {
    /// `3/4-10 UNC hex cap screw ASME B18.2.1`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&format!("{} {}", self.thread, self.product))
    }
}

#[cold]
fn no_cap_screw(thread: &Thread) -> Error {
    let table = "the table of ASME B18.2.1 hex cap screws";
    if thread.is_of_cap_screws() {
        let size = |row: &HexCapScrew| (row.nominal_diameter, row.size);
        return no_row(table, thread, HexCapScrew::all(), size);
    }
    Error::NotInTable {
        table,
        wanted: thread.to_string(),
        available: "they have UNC, UNF or 8-UN threads and sizes from 1/4 to 3 in".into(),
    }
}

#[cfg(test)]
mod tests;
