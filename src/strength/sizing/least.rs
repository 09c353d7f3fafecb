//! What comes out of a sizing, with its working.

use alloc::format;

use super::super::stressed::{BoltSection, StressedArea};
use super::Demand;
use crate::derivation::{Derivation, Step};
use crate::tables::methods;
use crate::thread::Thread;
use crate::units::{Area, Length, Stress};

/// The least diameter of a round section under a demand.
///
/// ```
/// # use shankline::{prelude::*, strength::sizing::Demand};
/// let demand = Demand::new(newtons(10e3), megapascals(100.0)).unwrap();
/// demand.least_diameter().unwrap().derivation().check().unwrap();
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LeastDiameter {
    /// What was asked.
    pub demand: Demand,
    /// Area the section must have.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub area: Area,
    /// The diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter: Length,
}

impl LeastDiameter {
    /// The nominal diameter by the rule of thumb dc = 0.84 d: d = dc / 0.84, for the core diameter found.
    ///
    /// Textbooks take it where no table of threads is at hand. It is fair for coarse threads of M20 to M36; the core
    /// of an M6 is 0.80 d, that of an M64 0.89 d. A table is better: [`Demand::least_thread`].
    ///
    /// Source: Khurmi and Gupta, A Textbook of Machine Design, read as quoted for cylinder head studs.
    ///
    /// ```
    /// # use shankline::{prelude::*, strength::sizing::Demand};
    /// let demand = Demand::new(newtons(32_702.0), megapascals(65.0)).unwrap().shared_by(6).unwrap();
    /// let studs = demand.least_diameter().unwrap().nominal_by_rule_of_thumb();
    /// assert!((studs - millimetres(12.3)).abs() < millimetres(0.05));
    /// ```
    #[must_use]
    pub fn nominal_by_rule_of_thumb(&self) -> Length {
        self.diameter / 0.84
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::{prelude::*, strength::sizing::Demand};
    /// let demand = Demand::new(newtons(10e3), megapascals(100.0)).unwrap();
    /// assert_eq!(demand.least_diameter().unwrap().derivation().steps().len(), 2);
    /// ```
    pub fn derivation(&self) -> Derivation {
        Derivation::new("Least diameter")
            .step(self.demand.section_step(self.area))
            .step(
                Step::new("least diameter", "d", "sqrt(4 * Aneed / pi)", self.diameter)
                    .with("Aneed", self.area),
            )
    }
}

/// The least standard thread under a demand.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::{sizing::{Demand, ThreadSeries}, stressed::BoltSection};
/// # fn main() -> Result<(), shankline::Error> {
/// let demand = Demand::new(newtons(60e3), megapascals(100.0))?;
/// let bolt = demand.least_thread(ThreadSeries::METRIC_COARSE, BoltSection::Core)?;
/// bolt.derivation().check()?;
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LeastThread {
    /// What was asked.
    pub demand: Demand,
    /// The section that bears the load.
    pub section: BoltSection,
    /// Area the section must have.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub needed: Area,
    /// The thread.
    pub thread: Thread,
    /// Area its section has.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub area: Area,
    /// Stress on that section under the load, no factor in it.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub stress: Stress,
}

impl LeastThread {
    /// The working.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::{sizing::{Demand, ThreadSeries}, stressed::BoltSection};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let demand = Demand::new(pounds_force(6300.0), ksi(22.0))?;
    /// let bolt = demand.least_thread(ThreadSeries::UNC, BoltSection::PrintedStressArea)?;
    /// bolt.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let mut derivation = Derivation::new(format!("Least thread: {}", self.thread))
            .step(self.demand.section_step(self.needed));
        if let Ok(section) = self.section.section(&self.thread) {
            derivation = derivation.step(section.step(&self.thread));
        }
        derivation.step(
            Step::new("stress under the load", "s", "F / (z * p * A)", self.stress)
                .with("F", self.demand.load)
                .with("z", self.demand.bolts)
                .with("p", self.demand.planes)
                .with("A", self.area)
                .source(methods::STATICS_EQUAL_SHARES),
        )
    }
}

/// The least number of bolts or threads under a demand.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::{sizing::Demand, stressed::StressedArea};
/// # fn main() -> Result<(), shankline::Error> {
/// let one = StressedArea::shear_of_pins(millimetres(20.0), 1, 1)?;
/// let least = Demand::new(newtons(100e3), megapascals(60.0))?.least_bolts(&one)?;
/// assert!((least.quotient - 5.305).abs() < 0.0005 && least.number == 6);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LeastNumber {
    /// What was asked.
    pub demand: Demand,
    /// What one of them bears on.
    pub one: StressedArea,
    /// The number before it is rounded up.
    pub quotient: f64,
    /// The whole number.
    pub number: usize,
}

impl LeastNumber {
    /// The working.
    ///
    /// ```
    /// # use shankline::{prelude::*, strength::{sizing::Demand, stressed::StressedArea}};
    /// let one = StressedArea::shear_of_pins(millimetres(20.0), 1, 1).unwrap();
    /// let demand = Demand::new(newtons(100e3), megapascals(60.0)).unwrap();
    /// demand.least_bolts(&one).unwrap().derivation().check().unwrap();
    /// ```
    pub fn derivation(&self) -> Derivation {
        let all = self.demand.all_sections();
        Derivation::new("Least number")
            .and(self.one.derivation())
            .step(self.demand.area_step(all))
            .step(
                Step::new("number, to be rounded up", "N", "A / Az", self.quotient)
                    .with("A", all)
                    .with("Az", self.one.area)
                    .source(methods::STATICS_EQUAL_SHARES),
            )
    }
}

/// The least width or thickness under a demand.
///
/// ```
/// # use shankline::{prelude::*, strength::sizing::Demand};
/// let bar = Demand::new(newtons(80e3), megapascals(100.0)).unwrap();
/// bar.least_width(millimetres(10.0), millimetres(20.0), 1).unwrap().derivation().check().unwrap();
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LeastLength {
    /// What was asked.
    pub demand: Demand,
    /// The length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub length: Length,
    #[cfg_attr(feature = "serde", serde(skip))]
    pub(super) working: Derivation,
}

impl LeastLength {
    /// The working.
    ///
    /// ```
    /// # use shankline::{prelude::*, strength::sizing::Demand};
    /// let ply = Demand::new(newtons(18.85e3), megapascals(120.0)).unwrap();
    /// ply.least_thickness(millimetres(20.0)).unwrap().derivation().check().unwrap();
    /// ```
    pub fn derivation(&self) -> Derivation {
        self.working.clone()
    }
}
