//! Sizing: the least thread, number of bolts, width or thickness that bears a load at an allowable stress.
//!
//! A [`Demand`] is a load beside the stress that is allowed under it, and by how many bolts and planes it is shared.
//!
//! | question | answer |
//! |---|---|
//! | least area of a section | [`Demand::area`]: A = n F / (S z p) |
//! | least diameter, as a number | [`Demand::least_diameter`]: d = sqrt(4 A / pi) |
//! | least standard thread | [`Demand::least_thread`] |
//! | number of bolts | [`Demand::least_bolts`] |
//! | least width of a ply across its holes | [`Demand::least_width`] |
//! | least thickness of a ply in bearing | [`Demand::least_thickness`] |
//! | least thickness of a ply across its holes | [`Demand::least_net_thickness`] |
//! | number of threads to engage | [`Demand::least_threads`] |
//! | load for a wanted factor of safety | [`StressedArea::load_at`] |
//!
//! F is the load, S the allowable stress or, with a factor of safety n, the strength, z the number of bolts, p that
//! of shear planes or other equal shares of each.
//!
//! A thread that comes out bears the load by this one stress. It is the size to begin with: shank or thread in the
//! plane, bearing, net section, preload and fatigue are further questions.

mod least;

pub use least::{LeastDiameter, LeastLength, LeastNumber, LeastThread};

use alloc::format;

use super::stressed::{BoltSection, StressedArea, count, sane_factor, sane_force};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, part_length, sane_stress, within};
use crate::math;
use crate::tables::methods;
use crate::tables::threads::{MetricSeries, SizeChoice, UnifiedSeries};
use crate::thread::{AtLeast, Thread};
use crate::units::{Area, Force, Length, Stress, from_base, square_millimetres};

/// The threads that may come out: a series, all its sizes or only those of first choice.
///
/// ```
/// use shankline::strength::sizing::ThreadSeries;
/// assert_ne!(ThreadSeries::METRIC_COARSE, ThreadSeries::METRIC_COARSE.first_choice());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ThreadSeries {
    series: Series,
    first_choice: bool,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Series {
    Metric(MetricSeries),
    Unified(UnifiedSeries),
}

impl ThreadSeries {
    /// ISO metric coarse threads, sizes that are seldom stocked (M9, M14, M18) with the others; for the usual ones
    /// [`first_choice`](Self::first_choice).
    pub const METRIC_COARSE: Self = Self::metric(MetricSeries::Coarse);
    /// ISO metric fine threads, of each diameter the coarser pitches first.
    pub const METRIC_FINE: Self = Self::metric(MetricSeries::Fine);
    /// Unified coarse threads.
    pub const UNC: Self = Self::unified(UnifiedSeries::Unc);
    /// Unified fine threads.
    pub const UNF: Self = Self::unified(UnifiedSeries::Unf);

    /// All sizes of a metric series.
    ///
    /// ```
    /// use shankline::{strength::sizing::ThreadSeries, tables::threads::MetricSeries};
    /// assert_eq!(ThreadSeries::metric(MetricSeries::Coarse), ThreadSeries::METRIC_COARSE);
    /// ```
    #[must_use]
    pub const fn metric(series: MetricSeries) -> Self {
        Self {
            series: Series::Metric(series),
            first_choice: false,
        }
    }

    /// All sizes of a Unified series.
    ///
    /// ```
    /// use shankline::{strength::sizing::ThreadSeries, tables::threads::UnifiedSeries};
    /// assert_eq!(ThreadSeries::unified(UnifiedSeries::Unf), ThreadSeries::UNF);
    /// ```
    #[must_use]
    pub const fn unified(series: UnifiedSeries) -> Self {
        Self {
            series: Series::Unified(series),
            first_choice: false,
        }
    }

    /// Only the sizes of first choice: ISO 261 choice 1, so no M14 or M22; primary sizes of ASME B1.1.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::{sizing::{Demand, ThreadSeries}, stressed::BoltSection};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let demand = Demand::new(newtons(11e3), megapascals(100.0))?;
    /// let least = |series| demand.least_thread(series, BoltSection::StressArea);
    /// assert_eq!(least(ThreadSeries::METRIC_COARSE)?.thread.to_string(), "M14");
    /// assert_eq!(least(ThreadSeries::METRIC_COARSE.first_choice())?.thread.to_string(), "M16");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn first_choice(self) -> Self {
        Self {
            first_choice: true,
            ..self
        }
    }

    fn least(self, needed: AtLeast) -> Result<Thread, Error> {
        let chosen = move |thread: &Thread| !self.first_choice || is_first_choice(thread);
        let found = match self.series {
            Series::Metric(series) => Thread::metric_at_least(series, needed)?.find(chosen),
            Series::Unified(series) => Thread::unified_at_least(series, needed)?.find(chosen),
        };
        found.ok_or_else(|| Error::NotInTable {
            table: "the threads of first choice",
            wanted: format!("a thread with {needed}"),
            available: "larger ones are of second choice".into(),
        })
    }
}

fn is_first_choice(thread: &Thread) -> bool {
    match (thread.metric_row(), thread.unified_row()) {
        (Some(row), _) => row.iso261_choice == 1,
        (_, Some(row)) => row.choice == SizeChoice::Primary,
        _ => false,
    }
}

/// A load beside the stress that is allowed under it.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::{sizing::{Demand, ThreadSeries}, stressed::BoltSection};
/// # fn main() -> Result<(), shankline::Error> {
/// // An eye bolt lifts 60 kN; 100 MPa are allowed on the core: 27.6 mm, so M33 (the M30 has 25.7 mm).
/// let demand = Demand::new(newtons(60e3), megapascals(100.0))?;
/// assert!((demand.least_diameter()?.diameter - millimetres(27.64)).abs() < millimetres(0.005));
/// let bolt = demand.least_thread(ThreadSeries::METRIC_COARSE, BoltSection::Core)?;
/// assert_eq!(bolt.thread.to_string(), "M33");
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Demand {
    /// The load F, all bolts together.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub load: Force,
    /// The allowable stress or, where there is a factor of safety, the strength S.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub strength: Stress,
    /// Factor of safety n.
    pub factor: f64,
    /// Number of bolts z that share the load alike.
    pub bolts: usize,
    /// Sections p of each bolt that share its load alike: shear planes, or legs of a U-bolt.
    pub planes: usize,
}

impl Demand {
    /// A load on one section at an allowable stress.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is not from 1e-6 to 1e15 N, or a stress that is not from 1 Pa to 1e6 GPa.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::sizing::Demand;
    /// assert!(Demand::new(newtons(-60e3), megapascals(100.0)).is_err());
    /// ```
    pub fn new(load: Force, allowable: Stress) -> Result<Self, Error> {
        sane_force("load", load)?;
        sane_stress("allowable stress", allowable)?;
        Ok(Self {
            load,
            strength: allowable,
            factor: 1.0,
            bolts: 1,
            planes: 1,
        })
    }

    /// The same with a factor of safety n: the stress given to [`new`](Self::new) is then a strength.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a factor that is not from 0.01 to 1000.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::{sizing::{Demand, ThreadSeries}, stressed::BoltSection};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let demand = Demand::new(newtons(5e3), megapascals(200.0))?.with_factor(5.0)?;
    /// assert!((demand.area() - square_millimetres(125.0)).abs() < square_millimetres(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    pub fn with_factor(self, factor: f64) -> Result<Self, Error> {
        let factor = sane_factor(factor)?;
        Ok(Self { factor, ..self })
    }

    /// The same shared alike by a number of bolts.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a number that is not from 1 to a million.
    ///
    /// ```
    /// # use shankline::{prelude::*, strength::sizing::Demand};
    /// let demand = Demand::new(newtons(5e3), megapascals(50.0)).unwrap();
    /// assert!(demand.shared_by(0).is_err());
    /// ```
    pub fn shared_by(self, bolts: usize) -> Result<Self, Error> {
        count("number of bolts", bolts)?;
        Ok(Self { bolts, ..self })
    }

    /// The same with a number of shear planes in each bolt: 2 in double shear.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a number that is not from 1 to a million.
    ///
    /// ```
    /// # use shankline::{prelude::*, strength::sizing::Demand};
    /// // A clevis under 400 kN, 300 MPa in double shear: 29.1 mm
    /// let clevis = Demand::new(newtons(400e3), megapascals(300.0)).unwrap().in_planes(2).unwrap();
    /// let least = clevis.least_diameter().unwrap();
    /// assert!((least.diameter - millimetres(29.13)).abs() < millimetres(0.005));
    /// ```
    pub fn in_planes(self, planes: usize) -> Result<Self, Error> {
        count("number of shear planes", planes)?;
        Ok(Self { planes, ..self })
    }

    /// Area each section must have: A = n F / (S z p).
    ///
    /// ```
    /// # use shankline::{prelude::*, strength::sizing::Demand};
    /// let demand = Demand::new(newtons(40e3), megapascals(100.0)).unwrap().shared_by(4).unwrap();
    /// assert!((demand.area() - square_millimetres(100.0)).abs() < square_millimetres(1e-9));
    /// ```
    #[must_use]
    pub fn area(&self) -> Area {
        self.all_sections() / self.sections()
    }

    /// n F / S.
    fn all_sections(&self) -> Area {
        self.factor * self.load / self.strength
    }

    fn sections(&self) -> f64 {
        // At most a million each: exact in f64.
        #[allow(clippy::cast_precision_loss)]
        let sections = self.bolts as f64 * self.planes as f64;
        sections
    }

    fn sane_area(&self) -> Result<Area, Error> {
        within(
            "area that is needed",
            self.area(),
            square_millimetres(1e-12),
            square_millimetres(1e12),
        )
    }

    /// The least diameter of a round section: d = sqrt(4 A / pi). For a thread it is the diameter of the core, or
    /// that of the circle of its stress area.
    ///
    /// Source: statics.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for an area below 1e-12 or above 1e12 mm2.
    ///
    /// ```
    /// # use shankline::{prelude::*, strength::sizing::Demand};
    /// let demand = Demand::new(newtons(10e3), megapascals(66.67)).unwrap();
    /// let least = demand.least_diameter().unwrap();
    /// assert!((least.diameter - millimetres(13.82)).abs() < millimetres(0.005));
    /// ```
    pub fn least_diameter(&self) -> Result<LeastDiameter, Error> {
        let area = self.sane_area()?;
        let diameter: Length = from_base(math::sqrt(area.value / core::f64::consts::FRAC_PI_4));
        Ok(LeastDiameter {
            demand: *self,
            area,
            diameter,
        })
    }

    /// The least standard thread of a series whose section bears the load.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if no thread of the series is large enough; [`Error::NotInTable`] if only one of
    /// second choice is.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::{sizing::{Demand, ThreadSeries}, stressed::BoltSection};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let demand = Demand::new(pounds_force(6300.0), ksi(55.0))?.with_factor(2.5)?;
    /// let bolt = demand.least_thread(ThreadSeries::UNC, BoltSection::StressArea)?;
    /// assert_eq!(bolt.thread.to_string(), "3/4-10 UNC");
    /// assert!(bolt.stress < ksi(22.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn least_thread(
        &self,
        series: ThreadSeries,
        section: BoltSection,
    ) -> Result<LeastThread, Error> {
        /// An area that is short by rounding alone is not short.
        const ROUNDING: f64 = 1.0 - 1e-12;
        let needed = ROUNDING * self.sane_area()?;
        let thread = series.least(match section {
            BoltSection::Shank => AtLeast::ShankArea(needed),
            BoltSection::StressArea => AtLeast::StressArea(needed),
            BoltSection::PrintedStressArea => AtLeast::PrintedStressArea(needed),
            BoltSection::Core => AtLeast::CoreArea(needed),
        })?;
        let area = section.area(&thread)?;
        Ok(LeastThread {
            demand: *self,
            section,
            needed: self.area(),
            thread,
            area,
            stress: self.load / (self.sections() * area),
        })
    }

    /// The least number of bolts, each with the given area (of one bolt, all its planes).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for more than a million bolts.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::{sizing::Demand, stressed::StressedArea};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let one = StressedArea::shear_of_pins(millimetres(20.0), 1, 2)?;
    /// let least = Demand::new(newtons(200e3), megapascals(60.0))?.least_bolts(&one)?;
    /// assert_eq!(least.number, 6); // 5.31
    /// # Ok(())
    /// # }
    /// ```
    pub fn least_bolts(&self, one: &StressedArea) -> Result<LeastNumber, Error> {
        self.number(one, "number of bolts")
    }

    /// The least number of threads to engage, each with the given area.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for more than a million threads.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::{sizing::Demand, stressed::StressedArea};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let flank = StressedArea::thread_crushing(millimetres(32.0), millimetres(28.0), 1.0)?;
    /// let least = Demand::new(newtons(6400.0), megapascals(10.0))?.least_threads(&flank)?;
    /// assert_eq!(least.number, 4); // 3.40
    /// # Ok(())
    /// # }
    /// ```
    pub fn least_threads(&self, one: &StressedArea) -> Result<LeastNumber, Error> {
        self.number(one, "number of threads")
    }

    fn number(&self, one: &StressedArea, what: &'static str) -> Result<LeastNumber, Error> {
        let quotient = self.all_sections() / one.area;
        let quotient = within(what, quotient.value, 0.0, 1e6)?;
        // A billionth of a bolt is rounding. Between 1 and a million the cast is exact.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let number = math::ceil(quotient - 1e-9).max(1.0) as usize;
        Ok(LeastNumber {
            demand: *self,
            one: one.clone(),
            quotient,
            number,
        })
    }

    /// The least width of a ply of thickness t with m holes of diameter dh across: w = A / t + m dh. Bolts and planes
    /// of the demand do not enter: the section bears the whole load.
    ///
    /// Source: statics.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not from 1 nm to 1 km, more than a million holes, or a width
    /// beyond a kilometre.
    ///
    /// ```
    /// # use shankline::{prelude::*, strength::sizing::Demand};
    /// let bar = Demand::new(newtons(80e3), megapascals(100.0)).unwrap();
    /// let width = bar.least_width(millimetres(10.0), millimetres(20.0), 1).unwrap();
    /// assert!((width.length - millimetres(100.0)).abs() < millimetres(1e-9));
    /// ```
    pub fn least_width(
        &self,
        thickness: Length,
        hole: Length,
        holes: usize,
    ) -> Result<LeastLength, Error> {
        part_length("thickness", thickness)?;
        part_length("diameter of the hole", hole)?;
        let across = if holes == 0 {
            0.0
        } else {
            count("number of holes", holes)?
        };
        let area = self.all_sections();
        let length = part_length("width", area / thickness + across * hole)?;
        let step = Step::new("least width", "w", "A / t + m * dh", length)
            .with("A", area)
            .with("t", thickness)
            .with("m", holes)
            .with("dh", hole);
        Ok(self.length(length, "Least width", area, step))
    }

    /// The least thickness of a ply on which bolts of diameter d bear: t = n F / (S z d). The planes of the demand do
    /// not enter.
    ///
    /// Source: statics, projected area.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not from 1 nm to 1 km.
    ///
    /// ```
    /// # use shankline::{prelude::*, strength::sizing::Demand};
    /// let ply = Demand::new(newtons(18.85e3), megapascals(120.0)).unwrap();
    /// let least = ply.least_thickness(millimetres(20.0)).unwrap();
    /// assert!((least.length - millimetres(7.85)).abs() < millimetres(0.005));
    /// ```
    pub fn least_thickness(&self, diameter: Length) -> Result<LeastLength, Error> {
        part_length("diameter", diameter)?;
        let bolts = count("number of bolts", self.bolts)?;
        let area = self.all_sections();
        let length = part_length("thickness", area / (bolts * diameter))?;
        let step = Step::new("least thickness", "t", "A / (z * d)", length)
            .with("A", area)
            .with("z", self.bolts)
            .with("d", diameter);
        Ok(self.length(length, "Least thickness", area, step))
    }

    /// The least thickness of a ply of width w with m holes of diameter dh across: t = A / (w - m dh). Bolts and
    /// planes of the demand do not enter: the section bears the whole load.
    ///
    /// Source: statics.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not from 1 nm to 1 km, more than a million holes, or holes that
    /// leave nothing.
    ///
    /// ```
    /// # use shankline::{prelude::*, strength::sizing::Demand};
    /// let bar = Demand::new(newtons(250e3), megapascals(70.0)).unwrap();
    /// let least = bar.least_net_thickness(millimetres(200.0), millimetres(25.0), 2).unwrap();
    /// assert!((least.length - millimetres(23.81)).abs() < millimetres(0.005));
    /// ```
    pub fn least_net_thickness(
        &self,
        width: Length,
        hole: Length,
        holes: usize,
    ) -> Result<LeastLength, Error> {
        part_length("width", width)?;
        part_length("diameter of the hole", hole)?;
        let across = if holes == 0 {
            0.0
        } else {
            count("number of holes", holes)?
        };
        if width <= across * hole {
            let allowed = Allowed::Above((across * hole).into());
            return Err(out_of_range("width", width, allowed));
        }
        let area = self.all_sections();
        let length = part_length("thickness", area / (width - across * hole))?;
        let step = Step::new("least thickness", "t", "A / (w - m * dh)", length)
            .with("A", area)
            .with("w", width)
            .with("m", holes)
            .with("dh", hole);
        Ok(self.length(length, "Least thickness of a net section", area, step))
    }

    fn length(&self, length: Length, title: &'static str, area: Area, step: Step) -> LeastLength {
        let working = Derivation::new(title)
            .step(self.area_step(area))
            .step(step.source(methods::STATICS));
        LeastLength {
            demand: *self,
            length,
            working,
        }
    }

    fn area_step(&self, all: Area) -> Step {
        Step::new("area for the whole load", "A", "n * F / S", all)
            .with("n", self.factor)
            .with("F", self.load)
            .with("S", self.strength)
            .source(methods::STATICS)
    }

    fn section_step(&self, area: Area) -> Step {
        Step::new(
            "area each section must have",
            "Aneed",
            "n * F / (S * z * p)",
            area,
        )
        .with("n", self.factor)
        .with("F", self.load)
        .with("S", self.strength)
        .with("z", self.bolts)
        .with("p", self.planes)
        .source(methods::STATICS_EQUAL_SHARES)
    }
}

#[cfg(test)]
mod tests;
