//! One screw as a length search sees it, and the zones along it.

use core::fmt;

use crate::error::{Allowed, Error, not_negative, out_of_range, positive};
use crate::units::Length;

/// The lengths that matter of one screw.
///
/// Plain data: a caller may also fill it in from measurements of a bolt in the hand.
///
/// ```
/// use shankline::prelude::*;
/// // A bolt in the hand, measured: 100 mm long, 60 mm plain, thread usable from 65 mm.
/// let bolt = ScrewLength {
///     nominal: millimetres(100.0),
///     min: millimetres(100.0),
///     max: millimetres(100.0),
///     body_length_min: millimetres(60.0),
///     grip_gaging_length_max: millimetres(65.0),
///     fully_threaded: false,
/// };
/// assert_eq!(bolt.zone_at(millimetres(62.0)), Zone::RunOut);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct ScrewLength {
    /// Nominal length L, from under the head to the end.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub nominal: Length,
    /// Least length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub min: Length,
    /// Greatest length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub max: Length,
    /// Body length LB, a minimum: up to here the shank is sure to be full. Zero for screws
    /// threaded to the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub body_length_min: Length,
    /// Grip gaging length LG, a maximum: from here on the thread is sure to be full.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
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

/// Lengths that print the same are the same: tables and stacks carry rounding residues of 1e-18 m.
pub(crate) const SAME_LENGTH: Length = crate::units::from_base(1e-10);

impl ScrewLength {
    /// What the screw is at distance `x` from the bearing face of its head.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, "3/4-10 UNC".parse()?)?;
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

    /// Refuses lengths that are not finite or not in the order of the picture above.
    pub(crate) fn checked(self) -> Result<Self, Error> {
        positive("nominal length", self.nominal)?;
        positive("minimum length", self.min)?;
        positive("maximum length", self.max)?;
        not_negative("body length", self.body_length_min)?;
        not_negative("grip gaging length", self.grip_gaging_length_max)?;
        if self.min > self.nominal || self.nominal > self.max {
            return Err(out_of_range(
                "nominal length",
                self.nominal,
                Allowed::Ordered,
            ));
        }
        if self.body_length_min > self.grip_gaging_length_max {
            return Err(out_of_range(
                "body length",
                self.body_length_min,
                Allowed::AtMost(self.grip_gaging_length_max.into()),
            ));
        }
        if self.grip_gaging_length_max >= self.min {
            return Err(out_of_range(
                "grip gaging length",
                self.grip_gaging_length_max,
                Allowed::AtMost(self.min.into()),
            ));
        }
        Ok(self)
    }
}
