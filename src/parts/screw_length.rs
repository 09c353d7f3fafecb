//! One screw as a length search sees it, and the zones along it.

use core::fmt;

use crate::error::{Allowed, Error, not_negative, out_of_range, sane_length};
use crate::spread::{Spread, ordered};
use crate::units::{Length, SAME_LENGTH};

/// The lengths that matter of one screw.
///
/// From [`ScrewSeries::length`](crate::parts::ScrewSeries::length), or measured on a bolt in the
/// hand.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// // A bolt in the hand: 100 mm long, 60 mm plain, thread usable from 65 mm.
/// let bolt = ScrewLength::measured(millimetres(100.0), millimetres(60.0), millimetres(65.0))?;
/// assert_eq!(bolt.zone_at(millimetres(62.0)), Zone::RunOut);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ScrewLength {
    /// Nominal length L, from under the head to the end.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal: Length,
    /// Least length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub min: Length,
    /// Greatest length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub max: Length,
    /// Body length LB, a minimum: up to here the shank is sure to be full. Zero for screws
    /// threaded to the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub body_length_min: Length,
    /// Grip gaging length LG, a maximum: from here on the thread is sure to be full.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub grip_gaging_length_max: Length,
    /// Whether the screw is threaded to the head.
    pub fully_threaded: bool,
}

/// What a point along a screw is sure to be, for strength and for clamping.
///
/// ```
/// use shankline::prelude::*;
/// // From the head: shank, then run-out, then thread.
/// assert!(Zone::Shank < Zone::RunOut && Zone::RunOut < Zone::Thread);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Zone {
    /// Full shank: at or before LB min.
    Shank,
    /// Between LB min and LG max: may be shank, run-out or thread. Counts as thread for strength
    /// and cannot hold a nut.
    RunOut,
    /// Full thread: beyond LG max.
    Thread,
}

impl fmt::Display for Zone {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Shank => "shank",
            Self::RunOut => "run-out",
            Self::Thread => "thread",
        })
    }
}

impl ScrewLength {
    /// A bolt in the hand, all lengths from the bearing face of its head: the whole length, the plain
    /// shank, and where the thread begins that a nut can run on.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless 0 <= shank <= thread start < length, all finite and at most a kilometre.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert!(ScrewLength::measured(inches(4.0), inches(2.0), inches(2.25)).is_ok());
    /// assert!(ScrewLength::measured(inches(4.0), inches(2.5), inches(2.25)).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn measured(length: Length, shank: Length, thread_start: Length) -> Result<Self, Error> {
        Self {
            nominal: length,
            min: length,
            max: length,
            body_length_min: shank,
            grip_gaging_length_max: thread_start,
            fully_threaded: shank.value == 0.0,
        }
        .checked()
    }

    /// Transition length Y = LG max - LB min: what may be shank, run-out or thread.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4014, &"M20".parse()?)?;
    /// let transition = screws.length(millimetres(110.0))?.transition_length();
    /// assert!((transition - millimetres(12.5)).abs() < millimetres(1e-9)); // 5 P
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn transition_length(&self) -> Length {
        self.grip_gaging_length_max - self.body_length_min
    }

    /// What the screw is at distance `x` from the bearing face of its head. Beyond the end of the
    /// screw there is nothing; that is not looked at here.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &"3/4-10 UNC".parse()?)?;
    /// let four = screws.length(inches(4.0))?; // LB 1.750, LG 2.250
    /// assert_eq!(four.zone_at(inches(1.535)), Zone::Shank);
    /// assert_eq!(four.zone_at(inches(2.0)), Zone::RunOut);
    /// assert_eq!(four.zone_at(inches(2.5)), Zone::Thread);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    #[inline]
    pub fn zone_at(&self, x: Length) -> Zone {
        if x <= self.body_length_min + SAME_LENGTH {
            Zone::Shank
        } else if x <= self.grip_gaging_length_max + SAME_LENGTH {
            Zone::RunOut
        } else {
            Zone::Thread
        }
    }

    /// Length with its tolerance.
    pub(crate) const fn length(&self) -> Spread<Length> {
        Spread {
            min: self.min,
            nominal: self.nominal,
            max: self.max,
        }
    }

    /// Refuses lengths that are not finite or not in the order of the picture above.
    pub(crate) fn checked(self) -> Result<Self, Error> {
        sane_length("nominal length", self.nominal)?;
        sane_length("minimum length", self.min)?;
        sane_length("maximum length", self.max)?;
        not_negative("body length", self.body_length_min)?;
        not_negative("grip gaging length", self.grip_gaging_length_max)?;
        ordered("nominal length", self.length())?;
        if self.body_length_min > self.grip_gaging_length_max {
            return Err(out_of_range(
                "body length",
                self.body_length_min,
                Allowed::AtMost(self.grip_gaging_length_max.into()),
            ));
        }
        if self.grip_gaging_length_max >= self.min {
            // No thread is left: the screw is too short for its own run-out.
            return Err(out_of_range(
                "length of the screw",
                self.min,
                Allowed::Above(self.grip_gaging_length_max.into()),
            ));
        }
        Ok(self)
    }
}
