//! Percentage of full thread of a tapped hole, and the drill for one.
//!
//! Two definitions of 100 per cent are in use, and a chart seldom says which:
//!
//! | definition | full thread depth, both sides | 75 % of 1/4-20 |
//! |---|---|---|
//! | [`FullThread::SharpRoot`] | 3H/2 = 1.299038 P, of a bolt with a flat root | 0.2013 in |
//! | [`FullThread::BasicProfile`] | 5H/4 = 1.082532 P, the overlap of bolt and nut | 0.2094 in |
//!
//! Of cut threads only: a forming tap pushes the metal up from a larger hole.

use alloc::string::ToString;

use super::{Profile, Thread, area::UNIFIED_ROOT_LOSS};
use crate::error::{Allowed, Error, out_of_range, sane_length};
use crate::units::{Length, Ratio};

/// What a full thread is, of which a tapped hole has a percentage.
///
/// ```
/// use shankline::{prelude::*, thread::percent::FullThread};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "1/4-20 UNC".parse()?;
/// let share = thread.thread_percentage(inches(0.201), FullThread::SharpRoot)?;
/// assert!((share.value - 0.7544).abs() < 5e-5); // printed 75.44 %
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
pub enum FullThread {
    /// 3H/2 = 1.299038 P, the depth of a bolt thread with a flat root: the percentages of tap makers'
    /// charts (constants 0.01299 and 76.98).
    ///
    /// Source: a tap maker's technical formulas, read.
    SharpRoot,
    /// 5H/4 = 1.082532 P, the basic thread overlap.
    ///
    /// Source: an engineering page on ANSI/ASME B1.1 and ISO 68, read.
    BasicProfile,
}

impl FullThread {
    fn depth_per_pitch(self) -> f64 {
        match self {
            Self::SharpRoot => UNIFIED_ROOT_LOSS,
            Self::BasicProfile => UNIFIED_ROOT_LOSS * (5.0 / 6.0),
        }
    }
}

impl Thread {
    /// How much of a full thread a hole of a diameter leaves: (D - hole) / full depth.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless the hole is positive and smaller than D and leaves not more than a
    /// full thread; [`Error::NoValue`] for UNJ and MJ, which have other depths that no source read
    /// turns into a percentage.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::percent::FullThread};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M8".parse()?;
    /// let share = thread.thread_percentage(millimetres(6.8), FullThread::SharpRoot)?;
    /// assert!((share.value - 0.739).abs() < 5e-4); // printed 73.90 %
    /// # Ok(())
    /// # }
    /// ```
    pub fn thread_percentage(&self, hole: Length, of: FullThread) -> Result<Ratio, Error> {
        let depth = self.full_depth(of)?;
        sane_length("hole diameter", hole)?;
        let (least, most) = (self.diameter - depth, self.diameter);
        // A hole for 100 % comes back as that in spite of rounding.
        let slack = 1e-9 * depth;
        if hole < least - slack || hole >= most {
            let allowed = Allowed::FromBelow(least.into(), most.into());
            return Err(out_of_range("hole diameter", hole, allowed));
        }
        Ok((self.diameter - hole) / depth)
    }

    /// The hole that leaves a percentage of a full thread: D - share x full depth. Choose the nearest
    /// drill, and remember that drills cut oversize.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless the share is above 0 and at most 1; [`Error::NoValue`] for UNJ and MJ.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::percent::FullThread, units::percent};
    /// use shankline::uom::si::length::inch;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "1/4-20 UNC".parse()?;
    /// let hole = thread.hole_for_percentage(percent(75.0), FullThread::SharpRoot)?;
    /// assert!((hole.get::<inch>() - 0.2013).abs() < 5e-5); // a no. 7 drill, 0.2010 in
    /// # Ok(())
    /// # }
    /// ```
    pub fn hole_for_percentage(&self, share: Ratio, of: FullThread) -> Result<Length, Error> {
        let depth = self.full_depth(of)?;
        if share.value > 0.0 && share.value <= 1.0 {
            Ok(self.diameter - share * depth)
        } else {
            let allowed = Allowed::OverThru(0.0.into(), 1.0.into());
            Err(out_of_range("share of a full thread", share, allowed))
        }
    }

    fn full_depth(&self, of: FullThread) -> Result<Length, Error> {
        if matches!(self.profile, Profile::Unj | Profile::Mj) {
            return Err(Error::NoValue {
                quantity: "percentage of full thread",
                subject: self.to_string(),
                reason: "UNJ and MJ threads have another depth, and no source read gives percentages",
            });
        }
        Ok(of.depth_per_pitch() * self.pitch)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{inches, millimetres, percent};

    #[test]
    fn hole_and_percentage_are_inverse_and_bounded() {
        let thread: Thread = "1/2-13 UNC".parse().unwrap();
        for of in [FullThread::SharpRoot, FullThread::BasicProfile] {
            for share in [1.0, 55.0, 75.0, 100.0] {
                let hole = thread.hole_for_percentage(percent(share), of).unwrap();
                let back = thread.thread_percentage(hole, of).unwrap();
                assert!((back.value * 100.0 - share).abs() < 1e-9);
            }
            for bad in [0.0, -1.0, 100.1, f64::NAN, f64::INFINITY] {
                assert!(thread.hole_for_percentage(percent(bad), of).is_err());
            }
            for bad in [0.0, 0.2, 0.5, 0.6, f64::NAN, f64::INFINITY] {
                assert!(thread.thread_percentage(inches(bad), of).is_err(), "{bad}");
            }
        }
        // A hole as large as the thread leaves nothing, and the message does not say that it may be so.
        let error = thread.thread_percentage(inches(0.5), FullThread::SharpRoot);
        let message = error.unwrap_err().to_string();
        assert!(
            message.ends_with("to below 12.700 mm (0.5000 in)"),
            "{message}"
        );
        let aircraft: Thread = "MJ6x1".parse().unwrap();
        let hole = millimetres(5.2);
        assert!(
            aircraft
                .thread_percentage(hole, FullThread::SharpRoot)
                .is_err()
        );
    }
}
