//! The section of a bolt that a stress is taken on, and how it is stressed.

use crate::error::Error;
use crate::strength::section::Section;
use crate::thread::Thread;
use crate::units::Area;

/// The section of a bolt that a stress is taken on.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::stressed::BoltSection;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M20".parse()?;
/// assert_eq!(BoltSection::PrintedStressArea.area(&thread)?, square_millimetres(245.0));
/// assert!(BoltSection::Core.area(&thread)? < BoltSection::StressArea.area(&thread)?);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum BoltSection {
    /// The plain shank, A = (pi/4) d^2.
    Shank,
    /// The tensile stress area by its formula, [`Thread::tensile_stress_area`].
    StressArea,
    /// The tensile stress area as the tables print it, [`Thread::tabulated_stress_area`].
    PrintedStressArea,
    /// The core of the thread, (pi/4) dc^2 with the root diameter dc: [`Thread::minor_area`].
    Core,
}

impl BoltSection {
    /// Area of the section.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for the printed area of a special thread, which no table has.
    ///
    /// ```
    /// use shankline::strength::stressed::BoltSection;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert!(BoltSection::PrintedStressArea.area(&"0.9-14 UNS".parse()?).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn area(self, thread: &Thread) -> Result<Area, Error> {
        Ok(self.section(thread)?.area(thread))
    }

    pub(in crate::strength) fn section(self, thread: &Thread) -> Result<Section, Error> {
        match self {
            Self::Shank => Ok(Section::Shank),
            Self::StressArea => Ok(Section::Stress),
            Self::PrintedStressArea => Section::Stress.as_printed(thread),
            Self::Core => Ok(Section::Root),
        }
    }

    /// What the section is called.
    ///
    /// ```
    /// use shankline::strength::stressed::BoltSection;
    /// assert_eq!(BoltSection::Core.name(), "core area");
    /// ```
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Shank => "shank area",
            Self::StressArea => "tensile stress area",
            Self::PrintedStressArea => "printed tensile stress area",
            Self::Core => "core area",
        }
    }
}

/// How an area is stressed.
///
/// ```
/// use shankline::strength::stressed::Stressing;
/// assert_eq!(Stressing::ThreadShear.name(), "shear of the threads");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Stressing {
    /// Shear across bolts or pins.
    Shear,
    /// Tension along bolts or rods.
    Tension,
    /// Bearing of bolts on a ply, on the projected area.
    Bearing,
    /// Tension of a ply across its holes.
    NetSection,
    /// Shear of the threads at their root.
    ThreadShear,
    /// Pressure on the flanks of the threads.
    ThreadCrushing,
}

impl Stressing {
    /// What the stress is called.
    ///
    /// ```
    /// use shankline::strength::stressed::Stressing;
    /// assert_eq!(Stressing::Shear.name(), "shear");
    /// ```
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Shear => "shear",
            Self::Tension => "tension",
            Self::Bearing => "bearing",
            Self::NetSection => "tension of the net section",
            Self::ThreadShear => "shear of the threads",
            Self::ThreadCrushing => "crushing of the threads",
        }
    }
}
