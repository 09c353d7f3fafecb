//! The screws of one product with one thread, at any length.

use alloc::{format, string::ToString};
use core::{fmt, iter};

use super::{SAME_LENGTH, ScrewLength};
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, positive, sane_length};
use crate::source::{Basis, Provenance};
use crate::tables::bolts::StructuralBolt;
use crate::tables::nanometres;
use crate::tables::screws::{
    FullThreadLimit, HexCapScrew, HexScrew, InchLengthTolerance, StockLength, StockStep,
};
use crate::tables::sockets::SocketHeadCapScrew;
use crate::tables::stock_thread;
use crate::thread::Thread;
use crate::units::{Length, inches};

mod inch;
mod metric;
mod socket;
mod structural;
mod unread;

/// Kinds of screw this crate knows the body lengths of.
///
/// ```
/// use shankline::prelude::*;
/// assert_eq!(ScrewProduct::Iso4014.to_string(), "hexagon bolt ISO 4014");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum ScrewProduct {
    /// Hex cap screw, inch, ASME B18.2.1. Short ones are threaded to the head.
    HexCapScrew,
    /// Hex bolt, inch, ASME B18.2.1. Its body is not computed: the rule read is that of screws.
    HexBolt,
    /// Heavy hex bolt, inch, ASME B18.2.1: no structural bolt. Its body is not computed either.
    HeavyHexBolt,
    /// Hex cap screw, metric, ASME B18.2.3.1M. Its lengths are not computed: their tolerance was not read.
    MetricHexCapScrew,
    /// Hexagon head bolt with shank, metric, ISO 4014.
    #[cfg_attr(feature = "serde", serde(rename = "iso_4014"))]
    Iso4014,
    /// Hexagon head screw threaded to the head, metric, ISO 4017.
    #[cfg_attr(feature = "serde", serde(rename = "iso_4017"))]
    Iso4017,
    /// Hexagon head bolt with shank, metric fine pitch thread, ISO 8765.
    #[cfg_attr(feature = "serde", serde(rename = "iso_8765"))]
    Iso8765,
    /// Heavy hex structural bolt, inch, ASME B18.2.6 (ASTM F3125 grades A325 and A490).
    StructuralBolt,
    /// Socket head cap screw, inch, ASME B18.3. Its body is not computed: see
    /// [`tables::sockets`](crate::tables::sockets).
    SocketHeadCapScrew,
    /// Socket head cap screw, metric, ISO 4762: the lengths that were read.
    #[cfg_attr(feature = "serde", serde(rename = "iso_4762"))]
    Iso4762,
    /// Structural bolt of system HR, metric, EN 14399-3.
    #[cfg_attr(feature = "serde", serde(rename = "en_14399_3"))]
    En14399_3,
    /// Structural bolt of system HV, metric, EN 14399-4.
    #[cfg_attr(feature = "serde", serde(rename = "en_14399_4"))]
    En14399_4,
}

impl fmt::Display for ScrewProduct {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::HexCapScrew => "hex cap screw ASME B18.2.1",
            Self::HexBolt => "hex bolt ASME B18.2.1",
            Self::HeavyHexBolt => "heavy hex bolt ASME B18.2.1",
            Self::MetricHexCapScrew => "hex cap screw ASME B18.2.3.1M",
            Self::Iso4014 => "hexagon bolt ISO 4014",
            Self::Iso4017 => "hexagon screw ISO 4017, fully threaded",
            Self::Iso8765 => "hexagon bolt ISO 8765, fine pitch",
            Self::SocketHeadCapScrew => "socket head cap screw ASME B18.3",
            Self::Iso4762 => "socket head cap screw ISO 4762",
            Self::StructuralBolt => "heavy hex structural bolt ASME B18.2.6",
            Self::En14399_3 => "structural bolt EN 14399-3",
            Self::En14399_4 => "structural bolt EN 14399-4",
        })
    }
}

/// All lengths of one product with one thread.
///
/// | product | thread length | body and grip gaging length | source |
/// |---|---|---|---|
/// | hex cap screw | LT = 2 D + 0.25 in, 2 D + 0.50 in over 6 in | LG = L - LT; LB = LG - Y, Y = 5 coarse pitches, also on fine threads | ASME B18.2.1-2010, 4.7 |
/// | ISO 4014 | b = 2 d + 6, 2 d + 12 over 125 mm, 2 d + 25 over 200 mm | lg = l - b; ls = lg - 5 P | ISO 888, ISO 4014 |
/// | ISO 8765 | as ISO 4014 | lg = l - b; ls = lg - 5 P of the coarse pitch | ISO 8765; the coarse pitch and the range of lengths, taken from ISO 4014, from memory |
/// | structural bolt, inch | LT by size | LG = L - LT; LB = LG - Y, Y by size, 2.4 to 2.7 pitches | ASME B18.2.6 |
/// | EN 14399-4 | b by size | lg = l - b; ls = lg - 3 P | EN 14399-4 |
/// | EN 14399-3 | as ISO 4014 | lg = l - b; ls = lg - 5 P; refused where ls would be below 0.5 d | from memory |
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
            ScrewProduct::HexCapScrew => HexCapScrew::find(diameter)
                .filter(|_| thread.is_of_cap_screws())
                .map(|dimensions| Rows::Inch {
                    dimensions,
                    full_thread: FullThreadLimit::find(diameter),
                    tolerances: InchLengthTolerance::of_size(
                        InchLengthTolerance::cap_screws(),
                        diameter,
                    ),
                })
                .ok_or_else(|| Error::NotInTable {
                    table: "the table of ASME B18.2.1 hex cap screws",
                    wanted: thread.to_string(),
                    available: "they have UNC, UNF or 8-UN threads and sizes from 1/4 to 3 in"
                        .into(),
                })?,
            ScrewProduct::Iso4014
            | ScrewProduct::Iso4017
            | ScrewProduct::Iso8765
            | ScrewProduct::En14399_3 => metric::rows(product, thread)?,
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
                Some(_) if self.product == ScrewProduct::En14399_3 => metric::HR,
                Some(_) if self.product == ScrewProduct::Iso8765 => {
                    metric::fine(&self.thread).unwrap_or_else(|| self.unknown_screw())
                }
                Some(row) => row.provenance,
                None => self.unknown_screw(),
            },
            Rows::Structural(bolt) => bolt.provenance,
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
            Rows::Metric { .. }
                if matches!(
                    self.product,
                    ScrewProduct::Iso8765 | ScrewProduct::En14399_3
                ) =>
            {
                Basis::Memory
            }
            Rows::Metric { small, .. } => small.length_range_basis,
            Rows::Structural(_) => structural::STOCK_BASIS,
            // What was read is not what is stocked.
            Rows::Socket(_) | Rows::Unread(_) => Basis::Memory,
        }
    }

    /// The provenance of a screw this series has no row for: the weakest there is.
    fn unknown_screw(&self) -> Provenance {
        let source = match self.rows {
            Rows::Inch { dimensions, .. } => dimensions.provenance.source,
            Rows::Metric { small, .. } => small.provenance.source,
            Rows::Structural(bolt) => bolt.provenance.source,
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
            Rows::Socket(screw) => self.socket_length(screw, nominal),
            Rows::Unread(_) => Err(self.unread_length()),
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tables::screws::ProductGrade;

    fn cap(thread: &str) -> ScrewSeries {
        ScrewSeries::new(ScrewProduct::HexCapScrew, &thread.parse().unwrap()).unwrap()
    }

    /// Each thread is one that a product or nut of the same size and pitch has, but for its mark.
    #[test]
    fn threads_of_no_stock_part_are_refused() {
        use crate::parts::{Nut, NutStyle};
        use ScrewProduct::{HexCapScrew, Iso4014, Iso8765, StructuralBolt};
        for (product, nut, plain, special, reason) in [
            (
                HexCapScrew,
                NutStyle::Hex,
                "3/8-16 UNC-2A",
                "3/8-16 UNC-2A-LH",
                "right-hand",
            ),
            (Iso4014, NutStyle::Iso4032, "M16", "M16-LH", "right-hand"),
            (
                Iso4014,
                NutStyle::Iso4032,
                "M16",
                "M16xPh4P2",
                "single start",
            ),
            (
                HexCapScrew,
                NutStyle::Hex,
                "3/8-16 UNC",
                "3/8-16 UNJC",
                "UN, UNR and M",
            ),
            (
                StructuralBolt,
                NutStyle::HeavyHex,
                "3/4-10 UNC",
                "3/4-10 UNJC-3A",
                "UN, UNR and M",
            ),
            (
                Iso4014,
                NutStyle::Iso4032,
                "M20",
                "MJ20x2.5",
                "UN, UNR and M",
            ),
        ] {
            let thread: Thread = plain.parse().unwrap();
            assert!(ScrewSeries::new(product, &thread).is_ok(), "{plain}");
            assert!(Nut::find(nut, &thread).is_ok(), "{plain}");
            let thread: Thread = special.parse().unwrap();
            for error in [
                ScrewSeries::new(product, &thread).unwrap_err(),
                Nut::find(nut, &thread).unwrap_err(),
            ] {
                assert!(matches!(error, Error::NotInTable { .. }), "{error}");
                assert!(error.to_string().contains(reason), "{error}");
            }
        }
        let fine = ScrewSeries::new(Iso8765, &"MJ12x1.5".parse().unwrap());
        assert!(fine.unwrap_err().to_string().contains("UN, UNR and M"));
        // The rounded root of UNR is that of the plain screw.
        assert!(ScrewSeries::new(HexCapScrew, &"3/8-16 UNRC".parse().unwrap()).is_ok());
    }

    #[test]
    fn fine_thread_screws_keep_the_coarse_transition() {
        let coarse = cap("3/4-10 UNC").length(inches(4.0)).unwrap();
        let fine = cap("3/4-16 UNF").length(inches(4.0)).unwrap();
        assert_eq!(coarse.body_length_min, fine.body_length_min);
        assert_eq!(coarse.grip_gaging_length_max, fine.grip_gaging_length_max);
    }

    #[test]
    fn long_screws_have_longer_thread() {
        let six = cap("3/4-10 UNC").length(inches(6.0)).unwrap();
        let longer = cap("3/4-10 UNC").length(inches(6.5)).unwrap();
        let thread = |screw: &ScrewLength| screw.nominal - screw.grip_gaging_length_max;
        assert!((thread(&six) - inches(1.75)).abs() < SAME_LENGTH);
        assert!((thread(&longer) - inches(2.0)).abs() < SAME_LENGTH);
    }

    #[test]
    fn every_stock_length_is_answered_or_a_known_hole() {
        use crate::tables::threads::UnifiedSeries::{Un8, Unc, Unf};
        let (mut answered, mut holes) = (0, alloc::vec::Vec::new());
        let mut ask = |screws: &ScrewSeries| {
            for length in screws.stock_lengths() {
                match screws.length(length) {
                    Ok(_) => answered += 1,
                    Err(Error::NoValue { .. }) => holes.push(format!("{}", screws.thread())),
                    Err(error) => panic!("{screws}: {error}"),
                }
            }
        };
        for row in HexCapScrew::all() {
            // 1-8 is both 8-UN and UNC.
            for series in [Unc, Unf, Un8] {
                if let Ok(thread) = Thread::unified(row.nominal_diameter, series) {
                    ask(&ScrewSeries::new(ScrewProduct::HexCapScrew, &thread).unwrap());
                }
            }
        }
        for row in HexScrew::all()
            .iter()
            .filter(|row| row.product_grade == ProductGrade::A)
        {
            let thread = Thread::metric(row.nominal_diameter, row.pitch).unwrap();
            for product in [ScrewProduct::Iso4014, ScrewProduct::Iso4017] {
                ask(&ScrewSeries::new(product, &thread).unwrap());
            }
        }
        // No length tolerance was read for 7/8 and 1 in long screws of those diameters, and no run-out
        // for the smallest ISO 4017 screws.
        holes.sort();
        holes.dedup();
        assert_eq!(
            holes,
            [
                "1-12 UNF",
                "1-8 UNC",
                "7/8-14 UNF",
                "7/8-9 UNC",
                "M1.6",
                "M2",
                "M2.5"
            ]
        );
        assert!(answered > 1000, "{answered}");
    }

    #[test]
    fn unread_rows_refuse() {
        let screws = cap("1-3/4-5 UNC");
        assert!(matches!(
            screws.length(inches(7.0)),
            Err(Error::NoValue { .. })
        ));
        assert_eq!(screws.stock_lengths().count(), 0);
        // Not "it must be at most 0 mm".
        let error = screws.stock_length_at_least(inches(7.0)).unwrap_err();
        assert!(matches!(error, Error::NoValue { .. }), "{error}");
    }

    #[test]
    fn no_screw_is_longer_than_a_kilometre() {
        for (product, thread) in [
            (ScrewProduct::HexCapScrew, "1/2-13 UNC"),
            (ScrewProduct::StructuralBolt, "3/4-10 UNC"),
            (ScrewProduct::Iso4014, "M20"),
        ] {
            let screws = ScrewSeries::new(product, &thread.parse().unwrap()).unwrap();
            for length in [1e7, 1e300] {
                let error = screws.length(inches(length)).unwrap_err();
                assert!(matches!(error, Error::OutOfRange { .. }), "{error}");
            }
        }
        let huge = inches(1e300);
        assert!(ScrewLength::measured(huge, inches(1.0), inches(1.5)).is_err());
    }
}
