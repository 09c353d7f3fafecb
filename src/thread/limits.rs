//! Limits of size of external and internal threads.
//!
//! A class bounds three diameters. D, d are the basic major diameters, P the pitch; D2 = D - 0.649519 P
//! and D1 = D - 1.082532 P are the basic pitch and minor diameters.
//!
//! | | external thread (bolt) | internal thread (nut) |
//! |---|---|---|
//! | major diameter | max = d - es, min = max - tolerance | min = D + EI, no max |
//! | pitch diameter | max = d2 - es, min = max - tolerance | min = D2 + EI, max = min + tolerance |
//! | minor diameter | max of the root, see below | min = D1 + EI, max = min + tolerance |
//!
//! es and EI are the [allowance](ThreadLimits::allowance), here always counted positive.
//!
//! # Unified threads
//!
//! In inches; LE is the length of engagement. T is the pitch diameter tolerance of class 2A:
//!
//! ```text
//! T = 0.0015 D^(1/3) + 0.0015 LE^(1/2) + 0.015 P^(2/3)
//! pitch diameter tolerance   1A 1.5 T, 2A T, 3A 0.75 T, 1B 1.95 T, 2B 1.3 T, 3B 0.975 T
//! allowance es               1A, 2A 0.300 T; the others 0
//! major diameter tolerance   1A 0.090 P^(2/3); 2A, 3A 0.060 P^(2/3)
//! minor diameter tolerance
//!   1B, 2B, D >= 1/4 in      0.25 P - 0.4 P^2 (n >= 4), 0.15 P (n < 4)
//!   1B, 2B, D < 1/4 in       m, not above 0.394 P, not below 0.25 P - 0.4 P^2
//!   3B                       m, not above 0.394 P, not below 0.23 P - 1.5 P^2 (n >= 13)
//!                            or 0.120 P (n <= 12)
//!   with                     m = 0.05 P^(2/3) + 0.03 P/D - 0.002
//! ```
//!
//! LE is D for UNC, UNF, 4-UN, 6-UN and 8-UN, 9 P for all others, unless a
//! [length is given](Thread::limits_for_engagement). Basic diameters, allowances and tolerances are
//! rounded to 0.0001 in, T before that to six decimals; minor diameters of nuts from #6 up to 0.001 in,
//! halves to the even one, but the maximum of class 3B to 0.0001 in. This rounding was found by fitting
//! it to the printed tables. The maximum minor diameter of a bolt is that of a rounded (UNR) root,
//! D1 - H/8 - es, for reference only: UN bolts have a flat or worn root that no table bounds.
//!
//! Source: ASME B1.1, formulas as reproduced in two places; limits as printed in Machinery's Handbook,
//! 27th ed., and on supplier pages. A few printed sizes differ from the formulas and are kept as
//! printed: [`UnifiedLimitException`](crate::tables::thread_tolerances::UnifiedLimitException).
//!
//! # Metric threads
//!
//! Deviations and tolerances are those of the tables of ISO 965-1, by pitch, range of diameters,
//! tolerance grade and position: [`thread_tolerances`](crate::tables::thread_tolerances). The maximum
//! minor diameter of a bolt is that of the flat root, d1 - es; the minimum is that of a root of radius
//! 0.125 P tangent to the flanks, d3 = d2min - 0.616025 P.
//!
//! Source: ISO 965-1:1998. Two in five values of the tables were read, most of them in Machinery's
//! Handbook, 27th and 31st ed. (ASME B1.13M prints the same values); nearly all others follow from the
//! formulas of clause 13, read in an open code file. With them 468 of 471 limits printed elsewhere come
//! out to the last digit. Limits that rest on one of the 13 values the formulas do not give carry a
//! [`Caution`](crate::caution::Caution): some of positions e and f, and grade 8 of 8 mm pitch.

use alloc::{format, string::ToString};

use super::{Engagement, MetricClass, Thread, ToleranceClass, area};
use crate::caution::Cautions;
use crate::error::{Error, sane_length};
use crate::source::Provenance;
use crate::tables::thread_tolerances::{EngagementGroup, EngagementLength, ThreadKind};
use crate::units::{Area, Length};

mod fit;
mod metric;
mod unified;

pub use fit::ThreadFit;

/// Least and greatest value.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let limits = "M12-6g".parse::<Thread>()?.limits()?;
/// assert_eq!(limits.pitch_diameter.max, millimetres(10.829));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits<T = Length> {
    /// The least value.
    pub min: T,
    /// The greatest value.
    pub max: T,
}

impl Limits<Length> {
    /// The tolerance: greatest less least value.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::length::micrometer;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let limits = "M12-6H".parse::<Thread>()?.limits()?;
    /// assert!((limits.pitch_diameter.tolerance().get::<micrometer>() - 200.0).abs() < 1e-6);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn tolerance(self) -> Length {
        self.max - self.min
    }

    fn both(self) -> Limits<Option<Length>> {
        Limits {
            min: Some(self.min),
            max: Some(self.max),
        }
    }
}

/// Limits of size of one thread of one class.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = "1/2-13 UNC-2A".parse::<Thread>()?.limits()?;
/// assert_eq!(bolt.major_diameter().max, Some(inches(0.4985)));
/// assert_eq!(bolt.pitch_diameter.min, inches(0.4435));
/// let nut = "1/2-13 UNC-2B".parse::<Thread>()?.limits()?;
/// assert_eq!(nut.pitch_diameter.max, inches(0.4565));
/// assert_eq!(nut.major_diameter().max, None); // the standard leaves it open
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ThreadLimits {
    /// The thread with the class these limits are of.
    pub thread: Thread,
    /// Pitch diameter.
    pub pitch_diameter: Limits<Length>,
    /// Diameter over the crests: the major diameter of a bolt, the minor diameter of a nut.
    pub crest_diameter: Limits<Length>,
    /// Diameter at the roots: the minor diameter of a bolt, the major diameter of a nut. None is a
    /// limit the standard does not set. The maximum of a Unified bolt is that of a rounded root and
    /// for reference.
    pub root_diameter: Limits<Option<Length>>,
    /// Allowance: how far a bolt stays below, or a nut above, the basic size at maximum material. The
    /// absolute value of the fundamental deviation of the pitch diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub allowance: Length,
    /// Least major diameter of a bolt of class 2A made from hot-rolled material that is not turned.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub unfinished_major_min: Option<Length>,
    /// Length of engagement the tolerance of a Unified thread was computed for. None for metric
    /// threads, whose tables do not depend on it.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub length_of_engagement: Option<Length>,
    /// Source of the tolerances; of several values the one known worst.
    pub provenance: Provenance,
    cautions: Cautions,
}

impl ThreadLimits {
    /// Whether these are limits of a bolt or of a nut.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::thread_tolerances::ThreadKind};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!("M12-6g".parse::<Thread>()?.limits()?.kind(), ThreadKind::External);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn kind(&self) -> ThreadKind {
        // The thread has its class since the limits were made.
        self.thread
            .class
            .map_or(ThreadKind::External, ThreadKind::of)
    }

    /// Limits of the major diameter.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let limits = "M12-6g".parse::<Thread>()?.limits()?;
    /// assert_eq!(limits.major_diameter().min, Some(millimetres(11.701)));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn major_diameter(&self) -> Limits<Option<Length>> {
        match self.kind() {
            ThreadKind::External => self.crest_diameter.both(),
            ThreadKind::Internal => self.root_diameter,
        }
    }

    /// Limits of the minor diameter.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let limits = "M12-6H".parse::<Thread>()?.limits()?;
    /// assert_eq!(limits.minor_diameter().max, Some(millimetres(10.441)));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn minor_diameter(&self) -> Limits<Option<Length>> {
        match self.kind() {
            ThreadKind::External => self.root_diameter,
            ThreadKind::Internal => self.crest_diameter.both(),
        }
    }

    /// What to be warned of: tolerances that were recalled and not read.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!("1/2-13 UNC-2A".parse::<Thread>()?.limits()?.cautions().iter().count(), 0);
    /// assert_eq!("M12-6f".parse::<Thread>()?.limits()?.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.cautions.clone()
    }

    /// Tensile stress area of a bolt at minimum and at maximum material.
    ///
    /// Unified: A = pi (d2/2 - 3H/16)^2 ([`area::unified_high_strength`], formula 2b of Machinery's
    /// Handbook for steels over 100 ksi at d2min). Metric: A = (pi/4) ((d2 + d3)/2)^2, the formula of
    /// ISO 898-1, with d3 = d2 - 0.616025 P at minimum material (root radius 0.125 P) and the design
    /// root d3 = d2 - 2H/3 at most. That formula at limits is our own use of it; no table prints
    /// the result.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for an internal thread.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::area::square_inch;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let limits = "1/2-13 UNC-2A".parse::<Thread>()?.limits()?;
    /// let area = limits.tensile_stress_area()?;
    /// assert!((area.min.get::<square_inch>() - 0.1376).abs() < 5e-5); // nominal 0.1419
    /// # Ok(())
    /// # }
    /// ```
    pub fn tensile_stress_area(&self) -> Result<Limits<Area>, Error> {
        self.external("tensile stress area")?;
        let (pitch, diameter) = (self.thread.pitch, self.pitch_diameter);
        if self.thread.is_unified() {
            return Ok(Limits {
                min: area::unified_high_strength(diameter.min, pitch)?,
                max: area::unified_high_strength(diameter.max, pitch)?,
            });
        }
        let root = 2.0 / 3.0 * self.thread.sharp_height();
        Ok(Limits {
            min: area::circle(diameter.min - 0.5 * metric::root_depth(pitch)),
            max: area::circle(diameter.max - 0.5 * root),
        })
    }

    /// Area of a bolt at the root of the thread, at minimum and at maximum material.
    ///
    /// Unified: the circle of d2 - 3H/4, which is the minor area of the handbook with the limits of the
    /// pitch diameter in place of its basic value. Metric: the circle of d3, by the roots of
    /// [`tensile_stress_area`](Self::tensile_stress_area). Our own use of the formulas; no table
    /// prints the result.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for an internal thread; [`Error::OutOfRange`] for a special thread so fine that
    /// nothing is left inside its tolerance.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "3/4-10 UNC-2A".parse()?;
    /// let area = thread.limits()?.minor_area()?;
    /// assert!(area.min < area.max && area.max < thread.minor_area());
    /// # Ok(())
    /// # }
    /// ```
    pub fn minor_area(&self) -> Result<Limits<Area>, Error> {
        self.external("minor area")?;
        let (pitch, height) = (self.thread.pitch, self.thread.sharp_height());
        let (deepest, design) = if self.thread.is_unified() {
            (0.75 * height, 0.75 * height)
        } else {
            (metric::root_depth(pitch), 2.0 / 3.0 * height)
        };
        let left = |diameter| crate::error::positive("diameter at the root", diameter);
        Ok(Limits {
            min: area::circle(left(self.pitch_diameter.min - deepest)?),
            max: area::circle(left(self.pitch_diameter.max - design)?),
        })
    }

    fn external(&self, quantity: &'static str) -> Result<(), Error> {
        match self.kind() {
            ThreadKind::External => Ok(()),
            ThreadKind::Internal => Err(Error::NoValue {
                quantity,
                subject: self.thread.to_string(),
                reason: "a nut has no section that carries the bolt's tension",
            }),
        }
    }
}

impl Thread {
    /// Limits of size of the class in the designation.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the thread has no class; those of [`limits_of`](Self::limits_of).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!("3/8-16 UNC-3A".parse::<Thread>()?.limits()?.allowance, inches(0.0));
    /// assert_eq!(
    ///     "3/8-16 UNC".parse::<Thread>()?.limits().unwrap_err().to_string(),
    ///     "no known limits of size for 3/8-16 UNC: the thread has no tolerance class; \
    ///      give one, such as 2A or 2B, 6g or 6H",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn limits(&self) -> Result<ThreadLimits, Error> {
        let class = self.class.ok_or_else(|| Error::NoValue {
            quantity: "limits of size",
            subject: self.to_string(),
            reason: "the thread has no tolerance class; give one, such as 2A or 2B, 6g or 6H",
        })?;
        self.limits_of(class)
    }

    /// Limits of size of a class, whatever class the designation has.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a class of the other system; [`Error::NotInTable`] for a tolerance grade
    /// or position that ISO 965-1 does not give for the thread, with those it gives;
    /// [`Error::NoValue`] for UNJ and MJ threads and for several starts, whose limits nobody has read;
    /// [`Error::OutOfRange`] for a special length of engagement in the designation that
    /// [`limits_for_engagement`](Self::limits_for_engagement) refuses.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10".parse()?;
    /// assert_eq!(thread.limits_of("6g".parse()?)?.allowance, millimetres(0.032));
    /// assert_eq!(
    ///     thread.limits_of("5g".parse()?).unwrap_err().to_string(),
    ///     "grade 5 of external threads of pitch 1.5 mm is not in the table of crest diameter \
    ///      tolerances; that pitch has grades 4, 6, 8",
    /// );
    /// assert!(thread.limits_of("5g6g".parse()?).is_ok());
    /// # Ok(())
    /// # }
    /// ```
    pub fn limits_of(&self, class: ToleranceClass) -> Result<ThreadLimits, Error> {
        let thread = self.with_class(class)?;
        thread.has_known_limits()?;
        let special = match self.engagement {
            Some(Engagement::Length(length)) => Some(length),
            _ => None,
        };
        match class {
            ToleranceClass::Unified(class) => unified::limits(thread, class, special),
            ToleranceClass::Metric(class) => metric::limits(thread, class),
        }
    }

    /// Limits of size of a Unified thread for a special length of engagement.
    ///
    /// The allowance follows the tolerance, es = 0.300 T with the T of that length; the text of the
    /// standard on this was not read. At the length the tables use the result is that of
    /// [`limits_of`](Self::limits_of), and only there do printed exceptions stand.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length the formula is not valid for: above 1.5 D for UNC, UNF, 4-UN,
    /// 6-UN and 8-UN, outside 5 P to 15 P for the others. [`Error::Mismatch`] for a metric thread or
    /// class: metric tolerances do not follow from the length; choose a class for the
    /// [group](Self::engagement_group) of the length instead.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "1/2-13 UNC".parse()?;
    /// let tolerance = |length| -> Result<Length, shankline::Error> {
    ///     Ok(thread.limits_for_engagement("2A".parse()?, length)?.pitch_diameter.tolerance())
    /// };
    /// assert!(tolerance(inches(0.75))? > tolerance(inches(0.5))?);
    /// assert!(tolerance(inches(0.8)).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn limits_for_engagement(
        &self,
        class: ToleranceClass,
        length: Length,
    ) -> Result<ThreadLimits, Error> {
        let thread = self.with_class(class)?;
        thread.has_known_limits()?;
        match class {
            ToleranceClass::Unified(class) => unified::limits(thread, class, Some(length)),
            ToleranceClass::Metric(_) => Err(Error::Mismatch(format!(
                "limits of {thread} do not depend on the length of engagement: choose a class for \
                 its group (short, normal, long)"
            ))),
        }
    }

    /// Refuses threads whose limits are other than those of UN and M threads of one start.
    fn has_known_limits(&self) -> Result<(), Error> {
        let reason = if self.profile.has_large_root() {
            "those of UNJ and MJ threads stand in SAE AS8879, ASME B1.15, ISO 5855 and ASME B1.21M, \
             which were not read"
        } else if self.starts > 1 {
            "those of threads with several starts were not read"
        } else {
            return Ok(());
        };
        Err(Error::NoValue {
            quantity: "limits of size",
            subject: self.to_string(),
            reason,
        })
    }

    /// Group of a length of engagement of a metric thread: short, normal or long.
    ///
    /// Source: ISO 965-1:1998, Table 2, as [`EngagementLength`], whose
    /// [`cautions`](EngagementLength::cautions) tell which row was recalled (that of 0.2 mm pitch up to
    /// 1.4 mm).
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a Unified thread, [`Error::NotInTable`] if the table lacks the thread,
    /// [`Error::OutOfRange`] for a length that is not positive and finite.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::thread_tolerances::EngagementGroup};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let group = "M20".parse::<Thread>()?.engagement_group(millimetres(35.0))?;
    /// assert_eq!(group, EngagementGroup::Long);
    /// # Ok(())
    /// # }
    /// ```
    pub fn engagement_group(&self, length: Length) -> Result<EngagementGroup, Error> {
        sane_length("length of engagement", length)?;
        if self.is_unified() {
            return Err(Error::Mismatch(format!(
                "{self} is a Unified thread: only metric ones have groups of length of engagement"
            )));
        }
        Ok(EngagementLength::find(self.diameter, self.pitch)?.group(length))
    }
}

#[cfg(feature = "serde")]
mod serde_limits {
    use super::Limits;
    use crate::units::{Length, quantity::AsRounded};
    use serde::{Serialize, Serializer, ser::SerializeStruct};

    impl Serialize for Limits<Length> {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            self.both().serialize(serializer)
        }
    }

    impl Serialize for Limits<Option<Length>> {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut object = serializer.serialize_struct("Limits", 2)?;
            object.serialize_field("min", &self.min.map(AsRounded))?;
            object.serialize_field("max", &self.max.map(AsRounded))?;
            object.end()
        }
    }
}
