//! Screw threads: designation, basic profile, areas, limits of size.
//!
//! | question | begins at |
//! |---|---|
//! | read a designation; a thread by size | [`Thread`], [`Thread::unified`], [`Thread::metric`] |
//! | a thread that is in no list | [`Thread::unified_special`], [`Thread::metric_special`] |
//! | which thread is this, and what is it taken for | [`Thread::identify`], [`Thread::look_alikes`] |
//! | the smallest thread that is large enough | [`Thread::unified_at_least`], [`Thread::metric_at_least`] |
//! | stress area, root area, shank area | [`Thread::tensile_stress_area`], [`Thread::minor_area`], [`Thread::shank_area`], [`area`] |
//! | basic dimensions for a drawing | [`Thread::basic_profile`] |
//! | limits of size, fit of bolt and nut | [`Thread::limits`], [`Thread::fit`] |
//! | shear areas for stripping | [`strip`] |
//! | percentage of thread and its drill | [`percent`] |
//! | pitch diameter over three wires | [`wires`] |
//!
//! A [`Thread`] is read from a designation or looked up by size:
//!
//! ```
//! use shankline::prelude::*;
//! # fn main() -> Result<(), shankline::Error> {
//! let thread: Thread = "3/4-10 UNC-2A".parse()?;
//! assert_eq!(thread, Thread::unified(inches(0.75), UnifiedSeries::Unc)?.with_class("2A".parse()?)?);
//! # Ok(())
//! # }
//! ```

use alloc::format;

use crate::error::Error;
use crate::source::Provenance;
use crate::tables::nanometres;
use crate::tables::threads::{MetricSeries, MetricThread, UnifiedSeries, UnifiedThread};
use crate::units::Length;

pub mod area;
mod at_least;
mod basic_size;
mod class;
mod designation;
mod equal;
mod identify;
mod label;
pub mod limits;
mod modifiers;
pub mod percent;
pub mod profile;
pub(crate) mod rows;
#[cfg(feature = "schema")]
mod schema;
mod special;
pub mod strip;
mod tap_drill;
pub mod wires;
mod working;

use label::{inch_label, metric_near, trimmed, unified_near};

pub use crate::names::UnifiedClass;
pub use at_least::AtLeast;
pub use class::{MetricClass, ToleranceClass};
pub use identify::ThreadMatch;
pub use limits::{Limits, ThreadFit, ThreadLimits};
pub use modifiers::{Engagement, Hand};
pub use profile::Profile;

/// A 60 degree screw thread: Unified or ISO metric, of any of their profiles, of either hand, with
/// one or more starts.
///
/// Reads from a designation, with optional spaces between its parts and letters of series, hand and
/// engagement in either case:
///
/// ```text
/// unified = size "-" (threads-per-inch | starts) [series] ["-" class] ["-" LH] [SE inches]
///         | size ["-"] (UNC | UNF | UNEF) ["-" class] ["-" LH] [SE inches], with R or J after UN
/// size    = "#" digits | whole | [whole ("-" | " ")] digits "/" digits | decimal
/// starts  = pitch "P" "-" lead "L" ["(" number STARTS ")"], pitch and lead in inches
/// series  = UNC | UNF | UNEF | UNS | [threads-per-inch ["-"]] UN, with R or J after UN: UNRC, UNJF
/// metric  = ("M" | "MJ") decimal [("x" | "-") (pitch | "Ph" lead "P" pitch) [SPECIAL]]
///           ["-" class ["-" (S | N | L | millimetres)]] ["-" LH]
/// class   = 1A | 2A | 3A | 1B | 2B | 3B | such as 6g, 6H, 4g6g
/// ```
///
/// A whole number without "#" is a number size where such a thread exists (`10-32 UNF`), or could exist as a
/// special one (`10-36 UNS`), as ASME B1.1 writes it, otherwise inches (`1-8 UNC`, `1-14 UNS`). A Unified
/// thread without series is the standard one of that pitch. A metric thread without pitch is the coarse one, as
/// ISO 965-1 writes it; a Unified size alone (`1/2`, `#4`) is refused, with its coarse and its fine thread, as ASME B1.1
/// always writes the pitch and both the coarse and the fine thread are on the shelf. A space may stand for the hyphen before `LH`. Right hand, one start and the engagement group N are implied.
/// `SPECIAL` is this crate's own: a metric thread that ISO 261 does not have must say so (`M10x0.9 special`), lest a slip of
/// the pen become a thread. Gaging systems (`(21)`) and modified limits (`MOD`) are refused: what they say would be lost.
///
/// Source: the syntax of ASME B1.1 and of ISO 965-1 was recalled; the plain forms were read in a design
/// handbook, `LH` in a guide to thread notes.
///
/// `Display` writes the canonical designation, which parses back to the same thread. (A special
/// thread is written with at most five decimals.)
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// for text in [
///     "3/8-16 UNC", "5/8-18 UNF-2A", "#10-32 UNF", "1/2-20 UNRF-2A", "1/4-20 UNC-2A-LH",
///     "0.75-0.0625P-0.1875L (3 STARTS) UNS-2A", "M12", "M12x1.25", "M10-6g", "MJ6x1-4h6h",
///     "M16xPh3P1.5-6H", "M20x2-7g6g-L-LH", "M10x0.9 special",
/// ] {
///     let thread: Thread = text.parse()?;
///     assert_eq!(thread.to_string(), text);
/// }
/// # Ok(())
/// # }
/// ```
/// Two threads are equal if they are of the same system and series, if diameter and pitch are the same to the
/// nanometre, and if profile, class, hand, starts and length of engagement are the same. Equal threads print alike,
/// hash alike, and may be keys of a map. They sort Unified before metric, by diameter, then from coarse to fine pitch.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!("M12".parse::<Thread>()?, "M12x1.75".parse()?);
/// assert_eq!(Thread::unified(millimetres(19.05), UnifiedSeries::Unc)?, "3/4-10".parse()?);
/// assert!("M12".parse::<Thread>()? < "M12x1.5".parse()?);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug)]
pub struct Thread {
    diameter: Length,
    pitch: Length,
    form: Form,
    class: Option<ToleranceClass>,
    profile: Profile,
    hand: Hand,
    starts: u8,
    engagement: Option<Engagement>,
}

#[derive(Clone, Copy, Debug)]
enum Form {
    Unified(&'static UnifiedThread),
    /// A Unified thread of special diameter and pitch (UNS): threads per inch.
    UnifiedSpecial(f64),
    Metric(&'static MetricThread),
    /// A metric thread of special diameter or pitch.
    MetricSpecial,
}

impl Thread {
    /// The Unified thread of a nominal diameter and series.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if the series has no such size; the message gives the threads of that
    /// diameter or the nearest sizes of the series.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(Thread::unified(inches(0.5), UnifiedSeries::Unf)?.to_string(), "1/2-20 UNF");
    /// let error = Thread::unified(inches(2.0), UnifiedSeries::Unf).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "2 in UNF is not in the table of Unified threads; at that diameter there are 2-4.5 UNC, \
    ///      2-6 UN, 2-8 UN, 2-12 UN, 2-16 UN, 2-20 UN",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn unified(diameter: Length, series: UnifiedSeries) -> Result<Self, Error> {
        UnifiedThread::get(diameter, series)
            .map(Self::from_unified)
            .ok_or_else(|| Error::NotInTable {
                table: "the table of Unified threads",
                wanted: format!("{} {}", inch_label(diameter), series.name()),
                available: unified_near(diameter),
            })
    }

    /// The ISO metric thread of a nominal diameter and pitch.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if ISO 261 has no such thread; the message gives the pitches of that
    /// diameter or the nearest diameters.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread = Thread::metric(millimetres(12.0), millimetres(1.75))?;
    /// assert_eq!(thread.to_string(), "M12");
    /// let error = Thread::metric(millimetres(12.0), millimetres(1.3)).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "M12x1.3 is not in the table of ISO metric threads; at that diameter there are M12, \
    ///      M12x1.5, M12x1.25, M12x1",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn metric(diameter: Length, pitch: Length) -> Result<Self, Error> {
        MetricThread::get(diameter, pitch)
            .map(Self::from_metric)
            .ok_or_else(|| Error::NotInTable {
                table: "the table of ISO metric threads",
                wanted: format!("M{}x{}", trimmed(diameter), trimmed(pitch)),
                available: metric_near(diameter),
            })
    }

    pub(crate) fn from_unified(row: &'static UnifiedThread) -> Self {
        let form = Form::Unified(row);
        Self::plain(row.nominal_diameter, row.pitch(), form, Profile::Un)
    }

    pub(crate) fn from_metric(row: &'static MetricThread) -> Self {
        let form = Form::Metric(row);
        Self::plain(row.nominal_diameter, row.pitch, form, Profile::M)
    }

    /// What a designation without further marks implies.
    const fn plain(diameter: Length, pitch: Length, form: Form, profile: Profile) -> Self {
        Self {
            diameter,
            pitch,
            form,
            class: None,
            profile,
            hand: Hand::Right,
            starts: 1,
            engagement: None,
        }
    }

    /// The same thread with a tolerance class.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a metric class on a Unified thread or the reverse, and for a class of
    /// internal threads on a UNR thread.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread = "M10".parse::<Thread>()?.with_class("6g".parse()?)?;
    /// assert_eq!(thread.to_string(), "M10-6g");
    /// assert!("M10".parse::<Thread>()?.with_class("2A".parse()?).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn with_class(self, class: ToleranceClass) -> Result<Self, Error> {
        if matches!(class, ToleranceClass::Unified(_)) != self.is_unified() {
            return Err(Error::Mismatch(format!(
                "class {class} does not belong to thread {self}"
            )));
        }
        if self.profile == Profile::Unr && !class.is_external() {
            return Err(Error::Mismatch(format!(
                "class {class} does not belong to thread {self}: UNR is a profile of external threads, \
                 their nuts are UN"
            )));
        }
        Ok(Self {
            class: Some(class),
            ..self
        })
    }

    /// Basic major diameter D or d.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!("#10-32 UNF".parse::<Thread>()?.nominal_diameter(), inches(0.19));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn nominal_diameter(&self) -> Length {
        self.diameter
    }

    /// Pitch P: the distance from thread to thread.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!("M12".parse::<Thread>()?.pitch(), millimetres(1.75));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn pitch(&self) -> Length {
        self.pitch
    }

    /// Same diameter, pitch and system, whatever the tolerance class.
    pub(crate) fn is_same_size(&self, other: &Self) -> bool {
        self.is_unified() == other.is_unified()
            && nanometres(self.nominal_diameter()) == nanometres(other.nominal_diameter())
            && nanometres(self.pitch()) == nanometres(other.pitch())
    }

    /// The tolerance class, if the designation gave one.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!("1/2-13 UNC-2A".parse::<Thread>()?.class().unwrap().to_string(), "2A");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn class(&self) -> Option<ToleranceClass> {
        self.class
    }

    /// Threads per inch of a Unified thread.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!("3/4-10 UNC".parse::<Thread>()?.threads_per_inch(), Some(10.0));
    /// assert_eq!("M20".parse::<Thread>()?.threads_per_inch(), None);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn threads_per_inch(&self) -> Option<f64> {
        match self.form {
            Form::Unified(row) => Some(row.threads_per_inch),
            Form::UnifiedSpecial(threads_per_inch) => Some(threads_per_inch),
            Form::Metric(_) | Form::MetricSpecial => None,
        }
    }

    /// Whether this is a Unified (inch) thread; otherwise it is metric.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert!("1/4-20 UNC".parse::<Thread>()?.is_unified());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn is_unified(&self) -> bool {
        matches!(self.form, Form::Unified(_) | Form::UnifiedSpecial(_))
    }

    /// Whether this is the coarse thread of its diameter: UNC or ISO coarse.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert!(!"M12x1.25".parse::<Thread>()?.is_coarse());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn is_coarse(&self) -> bool {
        match self.form {
            Form::Unified(row) => row.series == UnifiedSeries::Unc,
            Form::Metric(row) => row.series == MetricSeries::Coarse,
            Form::UnifiedSpecial(_) | Form::MetricSpecial => false,
        }
    }

    /// The row of the table of Unified threads, if the thread is a standard one.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "3/8-16 UNC".parse()?;
    /// assert_eq!(thread.unified_row().unwrap().series, UnifiedSeries::Unc);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn unified_row(&self) -> Option<&'static UnifiedThread> {
        match self.form {
            Form::Unified(row) => Some(row),
            _ => None,
        }
    }

    /// The row of the table of metric threads, if the thread is a standard one.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!("M3".parse::<Thread>()?.metric_row().unwrap().iso261_choice, 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn metric_row(&self) -> Option<&'static MetricThread> {
        match self.form {
            Form::Metric(row) => Some(row),
            _ => None,
        }
    }

    /// Source of the table row, if the thread is a standard one.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let line = "M20".parse::<Thread>()?.provenance().unwrap().to_string();
    /// assert_eq!(line, "ISO 898-1, nominal stress area table, coarse threads, reproduced");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn provenance(&self) -> Option<Provenance> {
        match self.form {
            Form::Unified(row) => Some(row.provenance),
            Form::Metric(row) => Some(row.provenance),
            Form::UnifiedSpecial(_) | Form::MetricSpecial => None,
        }
    }
}

#[cfg(feature = "serde")]
mod serde_text {
    use super::Thread;
    use alloc::string::String;

    impl serde::Serialize for Thread {
        fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            serializer.collect_str(self)
        }
    }

    impl<'de> serde::Deserialize<'de> for Thread {
        fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
            String::deserialize(deserializer)?
                .parse()
                .map_err(serde::de::Error::custom)
        }
    }
}

#[cfg(test)]
mod tests;
