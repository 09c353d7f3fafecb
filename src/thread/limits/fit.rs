//! A bolt thread in a nut thread.

use alloc::{format, string::ToString};
use core::{fmt, str::FromStr};

use super::{Limits, ThreadLimits};
use crate::error::{DesignationProblem, Error, sane_text};
use crate::tables::nanometres;
use crate::thread::{Profile, Thread, ToleranceClass};
use crate::units::{Length, millimetres};

/// Limits of a bolt thread and of the nut thread it goes into.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let fit = "M12".parse::<Thread>()?.fit("6g".parse()?, "6H".parse()?)?;
/// assert!(fit.pitch_clearance.min >= millimetres(0.034) - millimetres(1e-9));
/// assert!(!fit.may_touch());
/// assert_eq!(fit, "M12-6H/6g".parse()?);
/// assert_eq!(fit.to_string(), "M12-6H/6g");
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ThreadFit {
    /// Limits of the external thread.
    pub bolt: ThreadLimits,
    /// Limits of the internal thread.
    pub nut: ThreadLimits,
    /// Pitch diameter of the nut less that of the bolt. The least is the allowance of the fit.
    pub pitch_clearance: Limits<Length>,
}

impl ThreadFit {
    /// The fit of a bolt and a nut.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] with the reason if the bolt does not go into the nut, as
    /// [`Thread::goes_into`].
    ///
    /// ```
    /// use shankline::{prelude::*, thread::ThreadFit};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = "1/2-13 UNC-3A".parse::<Thread>()?.limits()?;
    /// let nut = "1/2-13 UNC-2B".parse::<Thread>()?.limits()?;
    /// assert!(ThreadFit::of(&bolt, &nut)?.may_touch()); // class 3A has no allowance
    /// assert!(ThreadFit::of(&nut, &bolt).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn of(bolt: &ThreadLimits, nut: &ThreadLimits) -> Result<Self, Error> {
        bolt.thread.goes_into(&nut.thread)?;
        Ok(Self {
            bolt: bolt.clone(),
            nut: nut.clone(),
            pitch_clearance: Limits {
                min: nut.pitch_diameter.min - bolt.pitch_diameter.max,
                max: nut.pitch_diameter.max - bolt.pitch_diameter.min,
            },
        })
    }

    /// Allowance of the fit: least clearance by the classes, that of the bolt and that of the nut.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let fit = "3/4-10 UNC".parse::<Thread>()?.fit("2A".parse()?, "2B".parse()?)?;
    /// assert_eq!(fit.allowance(), inches(0.0018));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn allowance(&self) -> Length {
        self.bolt.allowance + self.nut.allowance
    }

    /// Whether bolt and nut within their limits may have no clearance at all on the pitch diameter:
    /// metal to metal at maximum material of both, as 3A in 3B or 6h in 6H. A coating needs more.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M12".parse()?;
    /// assert!(thread.fit("6h".parse()?, "6H".parse()?)?.may_touch());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn may_touch(&self) -> bool {
        self.pitch_clearance.min < LEAST_CLEARANCE
    }

    /// Whether the pitch diameter of the bolt may be larger than that of the nut, so that the thread
    /// must be forced. No pair of classes of these standards is so: their threads are clearance fits.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let fit = "3/4-10 UNC".parse::<Thread>()?.fit("3A".parse()?, "3B".parse()?)?;
    /// assert!(fit.may_touch() && !fit.may_interfere());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn may_interfere(&self) -> bool {
        self.pitch_clearance.min < -LEAST_CLEARANCE
    }
}

/// Limits are whole micrometres or ten-thousandths of an inch: less than this is the noise of a
/// difference.
const LEAST_CLEARANCE: Length = millimetres(1e-6);

impl Thread {
    /// The fit of this thread as a bolt of one class in a nut of another. A UNR bolt goes into a UN nut.
    ///
    /// # Errors
    ///
    /// Those of [`limits_of`](Self::limits_of); [`Error::Mismatch`] unless the first class is of an
    /// external thread and the second of an internal one.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let fit = "1/2-13 UNC".parse::<Thread>()?.fit("2A".parse()?, "2B".parse()?)?;
    /// assert_eq!(fit.bolt.pitch_diameter.max, inches(0.4485));
    /// assert!("1/2-13 UNC".parse::<Thread>()?.fit("2B".parse()?, "2A".parse()?).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn fit(&self, bolt: ToleranceClass, nut: ToleranceClass) -> Result<ThreadFit, Error> {
        ThreadFit::of(&self.limits_of(bolt)?, &self.of_nut().limits_of(nut)?)
    }

    /// The thread of the nut that goes on this one.
    pub(crate) fn of_nut(&self) -> Self {
        let profile = match self.profile {
            Profile::Unr => Profile::Un,
            other => other,
        };
        Self {
            profile,
            class: None,
            ..*self
        }
    }

    /// Whether this thread, as a bolt, goes into a nut with another one: the same system, diameter,
    /// pitch, starts and hand, profiles that fit, and classes, if given, of a bolt and a nut.
    ///
    /// UN, UNR and M bolts go into nuts of their own system of any profile; UNJ and MJ bolts only into
    /// UNJ and MJ nuts, whose minor diameter leaves room for the large root radius. (Source: a
    /// comparison of UN and UNJ by a maker of ring gauges.) UNR is no profile of nuts.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] with the reason why it does not.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt: Thread = "3/8-16 UNC-2A".parse()?;
    /// assert!(bolt.goes_into(&"3/8-16 UNC-3B".parse()?).is_ok());
    /// assert_eq!(
    ///     bolt.goes_into(&"3/8-24 UNF-2B".parse()?).unwrap_err().to_string(),
    ///     "3/8-16 UNC-2A does not go into 3/8-24 UNF-2B: the pitches differ",
    /// );
    /// let aircraft: Thread = "1/4-28 UNJF-3A".parse()?;
    /// assert!(aircraft.goes_into(&"1/4-28 UNF-3B".parse()?).is_err());
    /// assert!("1/4-28 UNF-3A".parse::<Thread>()?.goes_into(&"1/4-28 UNJF-3B".parse()?).is_ok());
    /// # Ok(())
    /// # }
    /// ```
    pub fn goes_into(&self, nut: &Self) -> Result<(), Error> {
        let reason = if self.is_unified() != nut.is_unified() {
            "one is a Unified (inch) thread, the other a metric one, however alike they look"
        } else if nanometres(self.diameter) != nanometres(nut.diameter) {
            "the diameters differ"
        } else if nanometres(self.pitch) != nanometres(nut.pitch) {
            "the pitches differ"
        } else if self.starts != nut.starts {
            "the numbers of starts differ, and with them the leads"
        } else if self.hand != nut.hand {
            "one is a right-hand thread, the other a left-hand one"
        } else if nut.profile == Profile::Unr {
            "UNR is a profile of external threads only"
        } else if self.profile.has_large_root() && !nut.profile.has_large_root() {
            "the large root radius of the bolt meets the crests of the nut, whose minor diameter is \
             smaller than that of UNJ and MJ nuts"
        } else if self.class.is_some_and(|class| !class.is_external()) {
            "the class of the bolt is one of internal threads"
        } else if nut.class.is_some_and(ToleranceClass::is_external) {
            "the class of the nut is one of external threads"
        } else {
            return Ok(());
        };
        Err(Error::Mismatch(format!(
            "{self} does not go into {nut}: {reason}"
        )))
    }
}

impl FromStr for ThreadFit {
    type Err = Error;

    /// Reads the designation of a fit: that of the nut with the class of the bolt after a stroke,
    /// `M6-6H/6g`, as ISO 965-1 writes it (syntax recalled), or `1/2-13 UNC-2B/2A`.
    ///
    /// # Errors
    ///
    /// [`Error::Designation`] tells what is wrong and at which character; those of
    /// [`Thread::limits`] and [`Thread::goes_into`].
    fn from_str(text: &str) -> Result<Self, Error> {
        sane_text("designation of a fit", text)?;
        let wrong = |before: &str, problem| Error::Designation {
            text: text.into(),
            position: before.chars().count(),
            problem,
        };
        // The stroke of a size such as 1/2 stands before any class.
        let Some((nut, rest)) = text.rsplit_once('/') else {
            return Err(wrong(text, DesignationProblem::Class));
        };
        let end = rest.find([' ', '-']).unwrap_or(rest.len());
        let (class, marks) = rest.split_at(end);
        let bolt: ToleranceClass = class.parse().map_err(|_| {
            wrong(
                text.get(..=nut.len()).unwrap_or(text),
                DesignationProblem::Class,
            )
        })?;
        let after_class = nut.len() + 1 + end;
        let thread: Thread = format!("{nut}{marks}")
            .parse()
            .map_err(|error| match error {
                Error::Designation {
                    position, problem, ..
                } => {
                    let in_nut = nut.chars().count();
                    let skipped = text.get(nut.len()..after_class);
                    let skipped = skipped.map_or(0, |skipped| skipped.chars().count());
                    Error::Designation {
                        text: text.into(),
                        position: position + if position > in_nut { skipped } else { 0 },
                        problem,
                    }
                }
                other => other,
            })?;
        Self::of(&thread.limits_of(bolt)?, &thread.limits()?)
    }
}

impl fmt::Display for ThreadFit {
    /// `M6-6H/6g`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let nut = self.nut.thread.to_string();
        let class = |thread: &Thread| {
            let class = thread.class.map(|class| class.to_string());
            class.unwrap_or_default()
        };
        let (of_nut, of_bolt) = (class(&self.nut.thread), class(&self.bolt.thread));
        let both = format!("-{of_nut}/{of_bolt}");
        f.pad(&nut.replacen(&format!("-{of_nut}"), &both, 1))
    }
}
