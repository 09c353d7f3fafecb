//! The bolt in the hand: a verdict from what a caliper says.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};

use super::{Candidate, LengthRules, LengthSearch, NutEnd, Stack};
use crate::error::{Error, not_negative, sane_length};
use crate::parts::ScrewLength;
use crate::thread::Thread;
use crate::units::{Length, UnitSystem, shown};

mod to_do;
mod wanted;

pub use to_do::{Contradiction, ToDo};
pub use wanted::WantedBolt;

/// A bolt as measured, all lengths from the bearing face of its head.
///
/// The thread start is where a nut stops that is run on by hand as far as it goes: its face toward
/// the head. The shank ends where the full diameter does, before the run-out.
///
/// ```
/// use shankline::{joint::BoltInHand, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = BoltInHand::new(
///     "M12".parse()?,
///     millimetres(99.4),
///     millimetres(58.0),
///     millimetres(68.5),
/// )?
/// .with_uncertainty(millimetres(0.2))?;
/// assert!(bolt.screw()?.body_length_min < millimetres(58.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "data::RawBoltInHand")
)]
#[non_exhaustive]
pub struct BoltInHand {
    /// The thread.
    pub thread: Thread,
    /// Whole length without the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub length: Length,
    /// Plain shank of full diameter; zero for a bolt threaded to the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub shank: Length,
    /// Where a nut run on by hand stops.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread_start: Length,
    /// How far off any of these may be, either way.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub uncertainty: Length,
}

impl BoltInHand {
    /// A measured bolt of a known thread.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless 0 <= shank <= thread start < length, all finite and sane.
    ///
    /// ```
    /// use shankline::{joint::BoltInHand, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "1/2-13 UNC".parse()?;
    /// assert!(BoltInHand::new(thread, inches(3.0), inches(1.4), inches(1.75)).is_ok());
    /// assert!(BoltInHand::new(thread, inches(3.0), inches(1.9), inches(1.75)).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn new(
        thread: Thread,
        length: Length,
        shank: Length,
        thread_start: Length,
    ) -> Result<Self, Error> {
        sane_length("length of the bolt", length)?;
        let bolt = Self {
            thread,
            length,
            shank,
            thread_start,
            uncertainty: Length::default(),
        };
        bolt.screw()?;
        Ok(bolt)
    }

    /// The same, with the length of usable thread measured from the end in place of its start.
    ///
    /// # Errors
    ///
    /// Those of [`new`](Self::new).
    ///
    /// ```
    /// use shankline::{joint::BoltInHand, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "1/2-13 UNC".parse()?;
    /// let bolt = BoltInHand::with_thread_length(thread, inches(3.0), inches(1.4), inches(1.25))?;
    /// assert!((bolt.thread_start - inches(1.75)).abs() < inches(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn with_thread_length(
        thread: Thread,
        length: Length,
        shank: Length,
        thread_length: Length,
    ) -> Result<Self, Error> {
        sane_length("thread length", thread_length)?;
        Self::new(thread, length, shank, length - thread_length)
    }

    /// The same bolt with its thread taken from a caliper over the crests and a pitch gauge: the
    /// first of [`Thread::identify`]. Whatever else is listed there the bolt may be too: try a nut by hand.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] if no standard thread is close, or if the measures cannot tell between two that shops
    /// stock, such as M5 and #10-32; those of [`new`](Self::new).
    ///
    /// ```
    /// use shankline::{joint::BoltInHand, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = BoltInHand::by_caliper(
    ///     millimetres(11.85), millimetres(1.75),
    ///     millimetres(99.4), millimetres(58.0), millimetres(68.5),
    /// )?;
    /// assert_eq!(bolt.thread.to_string(), "M12");
    /// # Ok(())
    /// # }
    /// ```
    pub fn by_caliper(
        major_diameter: Length,
        pitch: Length,
        length: Length,
        shank: Length,
        thread_start: Length,
    ) -> Result<Self, Error> {
        let found = Thread::identify(major_diameter, pitch)?;
        let closest = found.first().ok_or_else(|| {
            let (d, p) = (major_diameter, pitch);
            Error::Mismatch(format!(
                "no standard thread measures {:.2} over its crests with a pitch of {:.3}",
                shown(d, UnitSystem::Si),
                shown(p, UnitSystem::Si)
            ))
        })?;
        let others: Vec<String> = found
            .iter()
            .filter(|other| other.within_uncertainty && other.thread.is_common())
            .map(|other| other.thread.to_string())
            .collect();
        if others.len() > 1 {
            return Err(Error::Mismatch(format!(
                "the measures fit {}: try a nut of each by hand, and name the thread",
                others.join(" and ")
            )));
        }
        Self::new(closest.thread, length, shank, thread_start)
    }

    /// The same bolt with another uncertainty of its measures, either way.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for an uncertainty that is negative or not finite, or so large that no thread
    /// would be sure to be left.
    ///
    /// ```
    /// use shankline::{joint::BoltInHand, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M8".parse()?;
    /// let bolt = BoltInHand::new(thread, millimetres(40.0), millimetres(10.0), millimetres(16.0))?;
    /// assert!(bolt.with_uncertainty(millimetres(30.0)).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn with_uncertainty(mut self, uncertainty: Length) -> Result<Self, Error> {
        self.uncertainty = not_negative("uncertainty of the measures", uncertainty)?;
        self.screw()?;
        Ok(self)
    }

    /// The bolt as a length search sees it: shortest shank and latest thread that the measures admit.
    ///
    /// # Errors
    ///
    /// Those of [`new`](Self::new), if a field was changed since.
    ///
    /// ```
    /// use shankline::{joint::BoltInHand, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M8".parse()?;
    /// let bolt = BoltInHand::new(thread, millimetres(40.0), millimetres(10.0), millimetres(16.0))?;
    /// assert_eq!(bolt.screw()?.transition_length(), millimetres(16.0) - millimetres(10.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn screw(&self) -> Result<ScrewLength, Error> {
        let doubt = self.uncertainty;
        let mut screw = ScrewLength::measured(self.length, self.shank, self.thread_start)?;
        screw.min = self.length - doubt;
        screw.max = self.length + doubt;
        screw.body_length_min = (self.shank - doubt).max(Length::default());
        screw.grip_gaging_length_max = self.thread_start + doubt;
        screw.checked()
    }

    /// Whether the bolt will do in a joint, why not, and what to do about it.
    ///
    /// # Errors
    ///
    /// Those of [`screw`](Self::screw) and of [`LengthSearch::new`].
    ///
    /// ```
    /// use shankline::{joint::{BoltInHand, ToDo}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M12".parse()?;
    /// let ply = millimetres(20.0).plus_minus(millimetres(0.5));
    /// let stack = Stack::builder()
    ///     .ply("arm", ply)
    ///     .ply("post", ply)
    ///     .shear_planes([1])
    ///     .washers_under_nut(Washer::find(WasherStyle::Iso7089, &thread)?.thickness()?, 1)
    ///     .build()?;
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// let bolt = BoltInHand::new(thread, millimetres(69.6), millimetres(33.0), millimetres(40.0))?;
    /// let verdict = bolt.verdict(&stack, nut, LengthRules::fabrication(UnitSystem::Si))?;
    /// assert!(verdict.candidate.fits());
    /// assert!(matches!(verdict.to_do[..], [ToDo::Cut(_)])); // it sticks out too far
    /// # Ok(())
    /// # }
    /// ```
    pub fn verdict(
        &self,
        stack: &Stack,
        nut: NutEnd,
        rules: LengthRules,
    ) -> Result<HandVerdict, Error> {
        let search = LengthSearch::of_thread(stack, &self.thread, &nut, rules)?;
        let candidate = search.assess(self.screw()?)?;
        let at_head = candidate.washers_added_under_head;
        let washered = (at_head > 0).then(|| stack.to_builder().with_head_washers(at_head).build());
        let washered = washered.transpose()?;
        let stack = washered.as_ref().unwrap_or(stack);
        let wanted = WantedBolt::of(stack, &self.thread, nut, rules, candidate.washers_added)?;
        let to_do = match search.contradiction().filter(|_| !candidate.fits()) {
            Some(because) => alloc::vec![ToDo::NoBolt { because }],
            None => ToDo::list(&candidate, &wanted, stack, &rules),
        };
        Ok(HandVerdict {
            bolt: *self,
            candidate,
            to_do,
            wanted,
            look_alikes: self.thread.look_alikes(),
        })
    }
}

/// The verdict on a bolt in the hand.
///
/// ```
/// use shankline::{joint::{BoltInHand, Reason, ToDo}, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M12".parse()?;
/// let plate = millimetres(10.0).plus_minus(millimetres(0.3));
/// let stack = Stack::builder().ply("a", plate).ply("b", plate).shear_planes([1]).build()?;
/// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
/// let bolt = BoltInHand::new(thread, millimetres(59.8), millimetres(22.0), millimetres(30.5))?;
/// let verdict = bolt.verdict(&stack, nut, LengthRules::fabrication(UnitSystem::Si))?;
/// assert!(matches!(verdict.candidate.reasons().next(), Some(Reason::NutJams { .. })));
/// assert!(matches!(verdict.to_do[0], ToDo::ThreadNearerHead { .. }));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct HandVerdict {
    /// The bolt as measured.
    pub bolt: BoltInHand,
    /// Its margins, its zones at the shear planes, its cut, and the reasons against it.
    pub candidate: Candidate,
    /// What any bolt of the thread would have to measure, with as many washers.
    pub wanted: WantedBolt,
    /// What to do, in the order to do it; nothing if the bolt goes in as it is.
    pub to_do: Vec<ToDo>,
    /// Threads of the other system that this one is easily taken for: try the nut by hand first.
    pub look_alikes: Vec<Thread>,
}

#[cfg(feature = "serde")]
mod data {
    use super::BoltInHand;
    use crate::thread::Thread;
    use crate::units::quantity::RawQuantity;
    use alloc::string::{String, ToString};

    #[derive(Clone, Debug, serde::Deserialize)]
    #[serde(crate = "crate::objects", deny_unknown_fields)]
    pub(super) struct RawBoltInHand {
        thread: Thread,
        length: RawQuantity,
        shank: RawQuantity,
        thread_start: RawQuantity,
        #[serde(default)]
        uncertainty: Option<RawQuantity>,
    }

    impl TryFrom<RawBoltInHand> for BoltInHand {
        type Error = String;
        fn try_from(raw: RawBoltInHand) -> Result<Self, String> {
            let bolt = Self::new(
                raw.thread,
                raw.length.named("length")?,
                raw.shank.named("shank")?,
                raw.thread_start.named("thread_start")?,
            );
            let doubt = raw.uncertainty.map(|doubt| doubt.named("uncertainty"));
            let doubt = doubt.transpose()?.unwrap_or_default();
            bolt.and_then(|bolt| bolt.with_uncertainty(doubt))
                .map_err(|error| error.to_string())
        }
    }
}
