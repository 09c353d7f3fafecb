//! The smallest standard thread that is large enough.

use alloc::format;
use core::fmt;

use super::Thread;
use crate::error::{Amount, Error, out_of_range, positive};
use crate::tables::nanometres;
use crate::tables::threads::{MetricSeries, MetricThread, UnifiedSeries, UnifiedThread};
use crate::units::{Area, Length};

/// What a thread must have at least.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// // 40 kN at 225 MPa, the proof stress of class 4.6.
/// let needed = AtLeast::StressArea(newtons(40_000.0) / megapascals(225.0));
/// let thread = Thread::metric_at_least(MetricSeries::Coarse, needed)?.next().unwrap();
/// assert_eq!(thread.to_string(), "M18");
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum AtLeast {
    /// A nominal diameter.
    Diameter(Length),
    /// A tensile stress area.
    StressArea(Area),
    /// A tensile stress area as the tables print it, [`Thread::tabulated_stress_area`].
    PrintedStressArea(Area),
    /// An area of the core, [`Thread::minor_area`]: textbooks size bolts in tension on it.
    CoreArea(Area),
    /// An area of the plain shank, [`Thread::shank_area`].
    ShankArea(Area),
}

impl fmt::Display for AtLeast {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::Diameter(length) => {
                write!(f, "a nominal diameter of at least {}", Amount::from(length))
            }
            Self::StressArea(area) | Self::PrintedStressArea(area) => {
                write!(
                    f,
                    "a tensile stress area of at least {}",
                    Amount::from(area)
                )
            }
            Self::CoreArea(area) => write!(f, "a core area of at least {}", Amount::from(area)),
            Self::ShankArea(area) => write!(f, "a shank area of at least {}", Amount::from(area)),
        }
    }
}

impl AtLeast {
    fn check(self) -> Result<Self, Error> {
        match self {
            Self::Diameter(length) => positive("nominal diameter", length).map(Self::Diameter),
            Self::StressArea(area) => positive("tensile stress area", area).map(Self::StressArea),
            Self::PrintedStressArea(area) => {
                positive("tensile stress area", area).map(Self::PrintedStressArea)
            }
            Self::CoreArea(area) => positive("core area", area).map(Self::CoreArea),
            Self::ShankArea(area) => positive("shank area", area).map(Self::ShankArea),
        }
    }

    fn met_by(self, thread: &Thread) -> bool {
        match self {
            Self::Diameter(length) => nanometres(thread.nominal_diameter()) >= nanometres(length),
            Self::StressArea(area)
            | Self::PrintedStressArea(area)
            | Self::CoreArea(area)
            | Self::ShankArea(area) => self.area_of(thread) >= area,
        }
    }

    /// The area of the thread that is asked for.
    fn area_of(self, thread: &Thread) -> Area {
        match self {
            Self::StressArea(_) => thread.tensile_stress_area(),
            Self::PrintedStressArea(_) => thread.tabulated_stress_area().unwrap_or_default(),
            Self::CoreArea(_) => thread.minor_area(),
            Self::Diameter(_) | Self::ShankArea(_) => thread.shank_area(),
        }
    }
}

impl Thread {
    /// The threads of a Unified series that are large enough, the smallest first; there is at least
    /// one. The first may be a size the trade seldom stocks: its row tells whether a size is
    /// [preferred](crate::tables::threads::SizeChoice).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if no thread of the series is large enough, and for a wish that is not
    /// positive and finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let needed = AtLeast::StressArea(square_inches(0.30));
    /// let coarse = Thread::unified_at_least(UnifiedSeries::Unc, needed)?.next().unwrap();
    /// assert_eq!(coarse.to_string(), "3/4-10 UNC");
    /// let error = Thread::unified_at_least(UnifiedSeries::Unf, AtLeast::Diameter(inches(2.0)));
    /// assert_eq!(
    ///     error.err().unwrap().to_string(),
    ///     "nominal diameter of a UNF thread is 50.800 mm (2.0000 in); \
    ///      it must be at most 38.100 mm (1.5000 in)",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn unified_at_least(
        series: UnifiedSeries,
        needed: AtLeast,
    ) -> Result<impl Iterator<Item = Self> + Clone, Error> {
        let threads = UnifiedThread::all()
            .iter()
            .filter(move |row| row.series == series || row.constant_pitch_series == Some(series))
            .map(Self::from_unified);
        large_enough(threads, needed, series.name())
    }

    /// The ISO metric threads of a series that are large enough, the smallest first, coarser pitches
    /// before finer; there is at least one. The first may be of second or third choice.
    ///
    /// # Errors
    ///
    /// As [`unified_at_least`](Self::unified_at_least).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let needed = AtLeast::Diameter(millimetres(17.0));
    /// let first_choice = Thread::metric_at_least(MetricSeries::Coarse, needed)?
    ///     .find(|thread| thread.metric_row().is_some_and(|row| row.iso261_choice == 1));
    /// assert_eq!(first_choice.unwrap().to_string(), "M20");
    /// # Ok(())
    /// # }
    /// ```
    pub fn metric_at_least(
        series: MetricSeries,
        needed: AtLeast,
    ) -> Result<impl Iterator<Item = Self> + Clone, Error> {
        let name = match series {
            MetricSeries::Coarse => "metric coarse",
            MetricSeries::Fine => "metric fine",
        };
        let threads = MetricThread::all()
            .iter()
            .filter(move |row| row.series == series)
            .map(Self::from_metric);
        large_enough(threads, needed, name)
    }
}

fn large_enough<T: Iterator<Item = Thread> + Clone>(
    threads: T,
    needed: AtLeast,
    series: &str,
) -> Result<impl Iterator<Item = Thread> + Clone + use<T>, Error> {
    let needed = needed.check()?;
    let found = threads.clone().filter(move |thread| needed.met_by(thread));
    if found.clone().next().is_some() {
        return Ok(found);
    }
    Err(match needed {
        AtLeast::Diameter(length) => {
            let most = threads.map(|thread| thread.nominal_diameter());
            let most = most.fold(Length::default(), Length::max);
            let quantity = format!("nominal diameter of a {series} thread");
            out_of_range(quantity, length, crate::error::Allowed::AtMost(most.into()))
        }
        AtLeast::StressArea(area)
        | AtLeast::PrintedStressArea(area)
        | AtLeast::CoreArea(area)
        | AtLeast::ShankArea(area) => {
            let most = threads.map(|thread| needed.area_of(&thread));
            let most = most.fold(Area::default(), Area::max);
            let what = match needed {
                AtLeast::CoreArea(_) => "core area",
                AtLeast::ShankArea(_) => "shank area",
                _ => "tensile stress area",
            };
            let quantity = format!("{what} of a {series} thread");
            out_of_range(quantity, area, crate::error::Allowed::AtMost(most.into()))
        }
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{inches, millimetres, square_millimetres};

    /// The one before the first is too small, whatever is asked.
    #[test]
    fn the_first_is_the_smallest() {
        for size in [0.5, 1.6, 1.61, 5.9, 6.0, 20.0, 63.9] {
            let needed = AtLeast::Diameter(millimetres(size));
            let found = Thread::metric_at_least(MetricSeries::Coarse, needed)
                .unwrap()
                .next()
                .unwrap();
            let smaller = MetricThread::all().iter().filter(|row| {
                row.series == MetricSeries::Coarse
                    && row.nominal_diameter < found.nominal_diameter()
            });
            assert!(found.nominal_diameter() >= millimetres(size));
            for row in smaller {
                assert!(row.nominal_diameter < millimetres(size), "{found} {row:?}");
            }
        }
    }

    #[test]
    fn nothing_is_large_enough() {
        // There are larger UN threads, but not in this series.
        let needed = AtLeast::Diameter(inches(2.0));
        let error = Thread::unified_at_least(UnifiedSeries::Un28, needed)
            .err()
            .unwrap();
        let message = alloc::string::ToString::to_string(&error);
        assert!(
            message.starts_with("nominal diameter of a 28-UN thread"),
            "{message}"
        );
        let error = Thread::unified(inches(2.0), UnifiedSeries::Un28).unwrap_err();
        let message = alloc::string::ToString::to_string(&error);
        assert!(message.starts_with("2 in 28-UN is not in"), "{message}");
        let needed = AtLeast::StressArea(square_millimetres(1e6));
        assert!(Thread::metric_at_least(MetricSeries::Fine, needed).is_err());
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            let needed = AtLeast::Diameter(inches(bad));
            assert!(Thread::unified_at_least(UnifiedSeries::Unc, needed).is_err());
        }
    }

    /// 1-14 UNS is not UNF, but 1-12 UNF also stands in the 12-UN series.
    #[test]
    fn constant_pitch_series_hold_the_fine_threads_of_their_pitch() {
        let needed = AtLeast::Diameter(inches(1.0));
        let found = Thread::unified_at_least(UnifiedSeries::Un12, needed)
            .unwrap()
            .next()
            .unwrap();
        assert_eq!(found.nominal_diameter(), inches(1.0));
    }
}
