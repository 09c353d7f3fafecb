//! The outcome of a length search: candidates, their cuts, and reasons against them.

use alloc::{format, string::String, vec::Vec};
use core::cmp::Ordering;

use super::search::Trial;
use crate::parts::{ScrewLength, Zone};
use crate::spread::Spread;
use crate::units::{Length, UnitSystem, shown};

/// One length with the best number of washers for it.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
/// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
/// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, thread)?;
/// # let nut = Nut::find(NutStyle::Iso4032, &thread)?.height()?;
/// # let rules = LengthRules::fabrication(UnitSystem::Si);
/// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
/// let best = selection.best().unwrap();
/// assert_eq!((best.planes_on_shank, best.planes_in_thread), (1, 0));
/// assert!(best.jam_margin > millimetres(0.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Candidate {
    /// The screw.
    pub screw: ScrewLength,
    /// Washers to add under the nut, beyond those always there.
    pub washers_added: usize,
    /// All washers under the nut.
    pub washers_under_nut: usize,
    /// Everything between the bearing faces of head and nut, G.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    pub grip: Spread<Length>,
    /// Jam margin J = G min - LG max: how far the nut is from the run-out when it clamps the
    /// thinnest stack. Negative: it may jam before it clamps.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub jam_margin: Length,
    /// Least bolt length beyond the nut; negative if the nut is not filled.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub protrusion_min: Length,
    /// Greatest bolt length beyond the nut, before any cut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub protrusion_max: Length,
    /// Shear planes on guaranteed shank, in the worst case.
    pub planes_on_shank: usize,
    /// Shear planes that may lie in the run-out, in the worst case.
    pub planes_in_run_out: usize,
    /// Shear planes in full thread, in the worst case.
    pub planes_in_thread: usize,
    /// The cut that brings the protrusion down, if it is too long and may be cut.
    pub cut: Option<Cut>,
    pub(super) reasons: [Option<Reason>; 3],
    #[cfg_attr(feature = "serde", serde(skip))]
    pub(super) rank: u32,
}

/// How a bolt is cut to length.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
/// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
/// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, thread)?;
/// # let nut = Nut::find(NutStyle::Iso4032, &thread)?.height()?;
/// # let rules = LengthRules::fabrication(UnitSystem::Si);
/// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
/// let cut = selection.best().unwrap().cut.unwrap(); // 55 mm sticks out 5.3 threads at most
/// assert_eq!((cut.length, cut.removed), (millimetres(53.0), millimetres(55.0) - millimetres(53.0)));
/// assert!(cut.holds_window);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Cut {
    /// Finished length, from under the head. Equal to the nominal length where no fixed cut
    /// helps: then the end is cut at fit-up.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub length: Length,
    /// What comes off the nominal length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub removed: Length,
    /// Thread left between LG and the cut end.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub thread_left: Length,
    /// Least protrusion after the cut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub protrusion_min: Length,
    /// Greatest protrusion after the cut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub protrusion_max: Length,
    /// Whether this one length keeps every assembly inside the wanted protrusion. If not, cut to
    /// the measured stack at fit-up, or widen the window.
    pub holds_window: bool,
}

/// Why a length will not do.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::joint::Reason;
/// let reason = Reason::TooShort { by: millimetres(2.5) };
/// assert_eq!(reason.text(UnitSystem::Si), "too short by 2.50 mm");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Reason {
    /// In the worst case the bolt does not pass the nut by as much as is asked.
    TooShort {
        /// How much is missing.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        by: Length,
    },
    /// The nut reaches the run-out before it clamps the thinnest stack.
    NutJams {
        /// How far the thinnest stack falls short of the grip gaging length.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        by: Length,
        /// More washers under the nut that would clear it; none if no washer is given.
        washers_needed: Option<u16>,
    },
    /// The nut clamps, but leaves fewer full threads than asked between it and the run-out.
    TooFewClearThreads {
        /// How much is missing.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        by: Length,
        /// More washers under the nut that would do; none if no washer is given.
        washers_needed: Option<u16>,
    },
    /// Washers that would clear the run-out are permitted, but with them the bolt is too short.
    WashersMakeItShort {
        /// How many washers.
        washers: u16,
        /// How much is then missing.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        by: Length,
    },
    /// The bolt may stick out too far and must not be cut.
    TooLong {
        /// How much too far.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        by: Length,
    },
}

impl Reason {
    /// The reason as a sentence, lengths in the reader's units.
    ///
    /// ```
    /// use shankline::{joint::Reason, prelude::*};
    /// let reason = Reason::NutJams { by: inches(0.442), washers_needed: Some(5) };
    /// assert_eq!(
    ///     reason.text(UnitSystem::UsCustomary),
    ///     "nut reaches the run-out 0.442 in before it clamps (5 more washers would clear it)",
    /// );
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        let washers = |needed: &Option<u16>| match needed {
            Some(1) => String::from(" (1 more washer would clear it)"),
            Some(count @ 2..=5) => format!(" ({count} more washers would clear it)"),
            // Nobody stacks more than that.
            _ => String::new(),
        };
        match self {
            Self::TooShort { by } => format!("too short by {}", shown(*by, system)),
            Self::NutJams { by, washers_needed } => format!(
                "nut reaches the run-out {} before it clamps{}",
                shown(*by, system),
                washers(washers_needed)
            ),
            Self::TooFewClearThreads { by, washers_needed } => format!(
                "clear thread under the nut too short by {}{}",
                shown(*by, system),
                washers(washers_needed)
            ),
            Self::WashersMakeItShort { washers, by } => format!(
                "with {washers} more washer{} too short by {}",
                if *washers == 1 { "" } else { "s" },
                shown(*by, system)
            ),
            Self::TooLong { by } => {
                format!(
                    "sticks out {} too far and must not be cut",
                    shown(*by, system)
                )
            }
        }
    }
}

impl Candidate {
    /// Whether the length meets the rules, if need be after its cut.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("a", ply).ply("b", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, thread)?;
    /// # let nut = Nut::find(NutStyle::Iso4032, &thread)?.height()?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// assert!(selection.accepted().iter().all(|candidate| candidate.fits()));
    /// assert!(selection.rejected().iter().all(|candidate| candidate.reasons().count() > 0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn fits(&self) -> bool {
        self.reasons[0].is_none()
    }

    /// Why the length will not do; nothing if it fits.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::joint::Reason;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, thread)?;
    /// # let nut = Nut::find(NutStyle::Iso4032, &thread)?.height()?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let search = LengthSearch::new(&stack, &screws, nut, rules)?;
    /// let short = search.assess(screws.length(millimetres(45.0))?)?;
    /// assert!(matches!(short.reasons().next(), Some(Reason::TooShort { .. })));
    /// # Ok(())
    /// # }
    /// ```
    pub fn reasons(&self) -> impl Iterator<Item = &Reason> {
        self.reasons.iter().flatten()
    }

    /// Clear full threads between the clamped nut and the run-out, in pitches.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("a", ply).ply("b", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, thread)?;
    /// # let nut = Nut::find(NutStyle::Iso4032, &thread)?.height()?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// # let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// let best = selection.best().unwrap();
    /// assert!((best.clear_threads(thread.pitch()) - 7.067).abs() < 1e-3); // 10.6 mm of 1.5 mm
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn clear_threads(&self, pitch: Length) -> f64 {
        self.jam_margin.value / pitch.value
    }

    /// Order of preference, see [`LengthSearch`]: what comes before the length, in one number.
    pub(super) fn rank(counts: [usize; 3], trial: &Trial) -> u32 {
        // More than 255 planes or washers rank alike; no stack has them.
        let byte = |count: usize| u32::from(u8::try_from(count).unwrap_or(u8::MAX));
        let in_thread = counts[Zone::Thread as usize];
        let not_on_shank = counts[Zone::RunOut as usize] + in_thread;
        u32::from(!trial.fits) << 25
            | byte(in_thread) << 17
            | byte(not_on_shank) << 9
            | u32::from(trial.needs_cut) << 8
            | byte(trial.added)
    }

    pub(super) fn compare(&self, other: &Self) -> Ordering {
        let length = |c: &Self| c.screw.nominal.value;
        self.rank
            .cmp(&other.rank)
            .then(length(self).total_cmp(&length(other)))
    }
}

/// Every stock length, best first: those that fit, then those that do not.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
/// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
/// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, thread)?;
/// # let nut = Nut::find(NutStyle::Iso4032, &thread)?.height()?;
/// # let rules = LengthRules::fabrication(UnitSystem::Si);
/// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
/// assert_eq!(selection.accepted().len() + selection.rejected().len(), screws.stock_lengths().count());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Selection {
    /// All lengths in order of preference.
    pub(super) candidates: Vec<Candidate>,
    /// How many of them fit.
    pub(super) accepted: usize,
}

impl Selection {
    /// The best length that fits, if any.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let stack = Stack::builder().ply("wall", Spread::exact(millimetres(900.0))).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, thread)?;
    /// # let nut = Nut::find(NutStyle::Iso4032, &thread)?.height()?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// assert!(selection.best().is_none()); // no M10 bolt goes through 900 mm
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn best(&self) -> Option<&Candidate> {
        self.accepted().first()
    }

    /// The lengths that fit, best first.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, thread)?;
    /// # let nut = Nut::find(NutStyle::Iso4032, &thread)?.height()?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// assert_eq!(selection.accepted().first(), selection.best());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn accepted(&self) -> &[Candidate] {
        &self.candidates[..self.accepted]
    }

    /// The lengths that do not fit, with their reasons; the least bad first.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, thread)?;
    /// # let nut = Nut::find(NutStyle::Iso4032, &thread)?.height()?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// for other in selection.rejected() {
    ///     for reason in other.reasons() {
    ///         println!("{}: {}", shown(other.screw.nominal, UnitSystem::Si), reason.text(UnitSystem::Si));
    ///     }
    /// }
    /// # assert!(!selection.rejected().is_empty());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn rejected(&self) -> &[Candidate] {
        &self.candidates[self.accepted..]
    }
}
