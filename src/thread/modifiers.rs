//! What a designation says beside size, pitch, profile and class: hand, starts, length of engagement.

use alloc::format;
use core::f64::consts::PI;

use super::Thread;
use super::special::five_decimals;
use crate::error::{Allowed, Error, out_of_range, sane_length};
use crate::math::atan;
use crate::tables::thread_tolerances::EngagementGroup;
use crate::units::{Angle, INCH, Length, from_base, inches, millimetres};

/// Which way a thread winds. A designation without `LH` is right-hand.
///
/// ```
/// use shankline::{prelude::*, thread::Hand};
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!("1/4-20 UNC-2A-LH".parse::<Thread>()?.hand(), Hand::Left);
/// assert_eq!("M20".parse::<Thread>()?.hand(), Hand::Right);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum Hand {
    /// Goes in when turned clockwise.
    #[default]
    Right,
    /// Goes in when turned counter-clockwise.
    Left,
}

/// Length of engagement a designation calls for, where it is not the usual one.
///
/// ```
/// use shankline::{prelude::*, thread::Engagement};
/// use shankline::tables::thread_tolerances::EngagementGroup;
/// # fn main() -> Result<(), shankline::Error> {
/// let long: Thread = "M20x2-7g6g-L".parse()?;
/// assert_eq!(long.engagement(), Some(Engagement::Group(EngagementGroup::Long)));
/// assert_eq!("M20x2-7g6g-N".parse::<Thread>()?.engagement(), None);
/// # Ok(())
/// # }
/// ```
///
/// Lengths are equal if they are the same to the nanometre.
#[derive(Clone, Copy, Debug)]
#[non_exhaustive]
pub enum Engagement {
    /// A group of ISO 965-1: short or long. The normal group is implied.
    Group(EngagementGroup),
    /// A length.
    Length(Length),
}

impl Thread {
    /// The most starts a thread can have here. (Beyond four they are curiosities.)
    pub const MOST_STARTS: u8 = crate::error::MOST_STARTS;

    /// The same thread of a hand.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::Hand};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread = "M12-6g".parse::<Thread>()?.with_hand(Hand::Left);
    /// assert_eq!(thread.to_string(), "M12-6g-LH");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn with_hand(mut self, hand: Hand) -> Self {
        self.hand = hand;
        self
    }

    /// The same thread with a number of starts: that many threads side by side, each with the
    /// [lead](Self::lead) of all of them.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for none and for more than [`MOST_STARTS`](Self::MOST_STARTS).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread = "M16x1.5-6H".parse::<Thread>()?.with_starts(2)?;
    /// assert_eq!(thread.to_string(), "M16xPh3P1.5-6H");
    /// assert!(thread.with_starts(0).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn with_starts(self, starts: u8) -> Result<Self, Error> {
        if (1..=Self::MOST_STARTS).contains(&starts) {
            Ok(Self { starts, ..self })
        } else {
            let most = usize::from(Self::MOST_STARTS);
            Err(out_of_range(
                "number of starts",
                usize::from(starts),
                Allowed::FromTo(1_usize.into(), most.into()),
            ))
        }
    }

    /// The same thread with a length of engagement, or with the usual one. A length is taken to five decimals of an inch or a
    /// millimetre, as it is printed.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a group on a Unified thread, and for any engagement on a metric thread
    /// without class, which a designation cannot say; [`Error::OutOfRange`] for a length that is not
    /// positive and finite.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::Engagement};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "1/2-13 UNC-2A".parse()?;
    /// let special = thread.with_engagement(Some(Engagement::Length(inches(0.75))))?;
    /// assert_eq!(special.to_string(), "1/2-13 UNC-2A SE 0.75");
    /// # Ok(())
    /// # }
    /// ```
    pub fn with_engagement(self, engagement: Option<Engagement>) -> Result<Self, Error> {
        let engagement = match engagement {
            Some(Engagement::Group(EngagementGroup::Normal)) | None => None,
            Some(Engagement::Group(_)) if self.is_unified() => {
                return Err(Error::Mismatch(format!(
                    "{self} is a Unified thread: only metric ones have groups of length of engagement"
                )));
            }
            Some(_) if !self.is_unified() && self.class.is_none() => {
                return Err(Error::Mismatch(format!(
                    "{self} has no tolerance class: ISO 965-1 writes a length of engagement after one"
                )));
            }
            Some(Engagement::Length(length)) => {
                sane_length("length of engagement", length)?;
                let printed = if self.is_unified() {
                    inches(five_decimals(length.value / INCH))
                } else {
                    millimetres(five_decimals(length.value * 1e3))
                };
                // Next to nothing is printed as zero.
                sane_length("length of engagement", printed)?;
                Some(Engagement::Length(printed))
            }
            group => group,
        };
        Ok(Self { engagement, ..self })
    }

    /// Right or left hand.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::Hand};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!("M8x1-6g-LH".parse::<Thread>()?.hand(), Hand::Left);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn hand(&self) -> Hand {
        self.hand
    }

    /// Number of starts: 1 but for multiple-start threads.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "0.750-0.0625P-0.1875L (3 STARTS) UNS-2A".parse()?;
    /// assert_eq!((thread.starts(), thread.threads_per_inch()), (3, Some(16.0)));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn starts(&self) -> u8 {
        self.starts
    }

    /// The length of engagement the designation calls for; none is the usual one.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::Engagement};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M20x2-7g6g-40".parse()?;
    /// assert_eq!(thread.engagement(), Some(Engagement::Length(millimetres(40.0))));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn engagement(&self) -> Option<Engagement> {
        self.engagement
    }

    /// Lead: how far the thread goes in one turn, the pitch times the number of starts.
    ///
    /// Source: ASME B1.7 and ISO 5408 (terms).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!("M16xPh3P1.5".parse::<Thread>()?.lead(), millimetres(3.0));
    /// assert_eq!("M16".parse::<Thread>()?.lead(), millimetres(2.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn lead(&self) -> Length {
        f64::from(self.starts) * self.pitch
    }

    /// Lead angle at the basic pitch diameter, tan lambda = lead / (pi D2).
    ///
    /// Source: Machinery's Handbook, thread tables, which print it in degrees and minutes (recalled).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::angle::degree;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let angle = "1/4-20 UNC".parse::<Thread>()?.lead_angle();
    /// assert!((angle.get::<degree>() - (4.0 + 11.0 / 60.0)).abs() < 0.5 / 60.0); // 4 deg 11 min
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn lead_angle(&self) -> Angle {
        from_base(atan(self.lead_slope()))
    }

    /// Tangent of the lead angle.
    pub(crate) fn lead_slope(&self) -> f64 {
        self.lead().value / (PI * self.basic_pitch_diameter().value)
    }
}
