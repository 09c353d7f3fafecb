//! The outcome of a length search: candidates, their cuts, and reasons against them.

use alloc::{format, string::String, vec::Vec};

mod working;

use super::ranking::Rank;
use crate::caution::Cautions;
use crate::parts::ScrewLength;
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
/// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
/// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
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
    /// All washers under the nut of the kind that may be added.
    pub washers_under_nut: usize,
    /// Washers to add under the head.
    pub washers_added_under_head: usize,
    /// Everything between the bearing faces of head and nut, G.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub grip: Spread<Length>,
    /// Height of the nut, m; of a tapped part, the wanted engagement.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub nut_height: Spread<Length>,
    /// Pitch P of the thread.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch: Length,
    /// Jam margin J = G min - LG max: how far the nut is from the run-out when it clamps the
    /// thinnest stack. Negative: it may jam before it clamps.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub jam_margin: Length,
    /// Clear full threads between the clamped nut and the run-out: the jam margin in pitches.
    pub clear_threads: f64,
    /// Bolt length beyond the nut as bought; negative where the nut is not filled. In a tapped part,
    /// beyond the wanted engagement.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub protrusion: Spread<Length>,
    /// Shear planes on guaranteed shank, in the worst case.
    pub planes_on_shank: usize,
    /// Shear planes that may lie in the run-out, in the worst case.
    pub planes_in_run_out: usize,
    /// Shear planes in full thread, in the worst case.
    pub planes_in_thread: usize,
    /// Whether the screw ends in a tapped part: then the engagement wanted there stands for the nut.
    pub ends_in_tapped_part: bool,
    /// Whether the bolt may stick out too far, or reach the end of the tapped thread, and is to be cut.
    pub needs_cut: bool,
    /// The fixed length to cut to. None where no cut is needed, and where no fixed length helps:
    /// then the end is cut at fit-up, to the stack in hand.
    pub cut: Option<Cut>,
    #[cfg_attr(feature = "serde", serde(serialize_with = "serde_lists::reasons"))]
    pub(super) reasons: [Option<Reason>; 4],
    #[cfg_attr(feature = "serde", serde(skip))]
    pub(super) rank: Rank,
}

/// How a bolt is cut to length.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
/// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
/// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
/// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
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
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Cut {
    /// Finished length, from under the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub length: Length,
    /// The same with its tolerance. A bolt at its least length may be shorter than the cut, and is
    /// then left as it is.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub finished: Spread<Length>,
    /// What comes off the nominal length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub removed: Length,
    /// Thread left between LG and the cut end.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub thread_left: Length,
    /// Bolt length beyond the nut after the cut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub protrusion: Spread<Length>,
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
            serde(serialize_with = "crate::units::quantity::round")
        )]
        by: Length,
    },
    /// The nut reaches the run-out before it clamps the thinnest stack.
    NutJams {
        /// How far the thinnest stack falls short of the grip gaging length.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        by: Length,
        /// More washers under the nut that would clear it; none if no washer is given.
        washers_needed: Option<usize>,
        /// More washers under the nut that the rules permit.
        washers_permitted: usize,
    },
    /// The run-out reaches the thread of the tapped part before the screw clamps the thinnest stack.
    RunOutMeetsThread {
        /// How far the thinnest stack falls short of the grip gaging length.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        by: Length,
    },
    /// The bolt clamps, but leaves fewer full threads than asked between the nut, or the tapped thread, and
    /// its run-out.
    TooFewClearThreads {
        /// How much is missing.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        by: Length,
        /// More washers under the nut that would do; none if no washer is given.
        washers_needed: Option<usize>,
        /// More washers under the nut that the rules permit.
        washers_permitted: usize,
    },
    /// Washers that would clear the run-out are permitted, but with them the bolt is too short.
    WashersMakeItShort {
        /// How many washers.
        washers: usize,
        /// How much is then missing.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        by: Length,
    },
    /// More thread lies in the holes of the plies than the rules permit.
    ThreadInHoles {
        /// How much too much.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        by: Length,
    },
    /// The screw reaches the end of the thread of the tapped hole before it clamps, and must not be cut.
    Bottoms {
        /// How much too long it is.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        by: Length,
    },
    /// The bolt may stick out too far and must not be cut.
    TooLong {
        /// How much too far.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        by: Length,
    },
}

impl Reason {
    /// The reason as a sentence, lengths in the reader's units.
    ///
    /// ```
    /// use shankline::{joint::Reason, prelude::*};
    /// let reason =
    ///     Reason::NutJams { by: inches(0.442), washers_needed: Some(5), washers_permitted: 2 };
    /// assert_eq!(
    ///     reason.text(UnitSystem::UsCustomary),
    ///     "nut reaches the run-out 0.442 in before it clamps (5 more washers would clear it, 2 are \
    ///      permitted)",
    /// );
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        // Nobody stacks more than a handful, so larger numbers are not worth a word.
        let washers = |needed: &Option<usize>, permitted: &usize| match needed {
            Some(count @ 1..=5) => format!(
                " ({count} more washer{} would clear it{})",
                if *count == 1 { "" } else { "s" },
                if count > permitted {
                    format!(", {permitted} are permitted")
                } else {
                    String::new()
                }
            ),
            _ => String::new(),
        };
        // Rounded up: so much more, or less, is enough.
        let enough = |by: Length| shown(by, system).rounded_up();
        match self {
            Self::TooShort { by } => format!("too short by {}", enough(*by)),
            Self::NutJams {
                by,
                washers_needed,
                washers_permitted,
            } => format!(
                "nut reaches the run-out {} before it clamps{}",
                enough(*by),
                washers(washers_needed, washers_permitted)
            ),
            Self::RunOutMeetsThread { by } => format!(
                "its run-out meets the tapped thread {} before it clamps",
                enough(*by)
            ),
            Self::TooFewClearThreads {
                by,
                washers_needed,
                washers_permitted,
            } => format!(
                "clear thread before the run-out too short by {}{}",
                enough(*by),
                washers(washers_needed, washers_permitted)
            ),
            Self::WashersMakeItShort { washers, by } => format!(
                "with {washers} more washer{} too short by {}",
                if *washers == 1 { "" } else { "s" },
                enough(*by)
            ),
            Self::ThreadInHoles { by } => {
                format!("{} too much thread in the holes of the plies", enough(*by))
            }
            Self::Bottoms { by } => format!(
                "meets the end of the tapped thread {} before it clamps",
                enough(*by)
            ),
            Self::TooLong { by } => {
                format!("sticks out {} too far and must not be cut", enough(*by))
            }
        }
    }
}

impl Candidate {
    /// Whether the nut clamps and the bolt reaches through it by as much as is asked, in the worst
    /// case. It may still stick out too far and need a cut: see [`needs_cut`](Self::needs_cut) and
    /// [`holds_window`](Self::holds_window).
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("a", ply).ply("b", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
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
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
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

    /// Whether every assembly of this length keeps to the wanted protrusion: nothing is to be cut, or
    /// one fixed cut length holds it. Otherwise the end is cut at fit-up, to the stack in hand.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// // A stack that varies by 12 mm: no fixed length keeps 2 to 5 threads.
    /// let timber = millimetres(40.0).plus_minus(millimetres(6.0));
    /// let stack = Stack::builder().ply("timber", timber).build()?;
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// let best = selection.best().unwrap();
    /// assert!(best.fits() && !best.holds_window());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn holds_window(&self) -> bool {
        !self.needs_cut || self.cut.is_some_and(|cut| cut.holds_window)
    }
}

/// Every stock length, best first: those that fit, then those that do not. As a document it is a
/// [`LengthReport`](super::LengthReport): see [`report`](Self::report).
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
/// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
/// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
/// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
/// # let rules = LengthRules::fabrication(UnitSystem::Si);
/// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
/// assert_eq!(selection.accepted().len() + selection.rejected().len(), screws.stock_lengths().count());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Selection {
    /// All lengths in order of preference.
    pub(super) candidates: Vec<Candidate>,
    /// How many of them fit.
    pub(super) accepted: usize,
    /// Stock lengths whose dimensions are not known.
    pub(super) not_assessed: Vec<Length>,
    pub(super) cautions: Cautions,
}

impl Selection {
    /// Those that fit, and the others.
    fn split(&self) -> (&[Candidate], &[Candidate]) {
        let all = self.candidates.as_slice();
        all.split_at_checked(self.accepted).unwrap_or((all, &[]))
    }

    /// The best length that fits, if any.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let stack = Stack::builder().ply("wall", Spread::exact(millimetres(900.0))).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
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
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// assert_eq!(selection.accepted().first(), selection.best());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn accepted(&self) -> &[Candidate] {
        let (accepted, _) = self.split();
        accepted
    }

    /// The lengths that do not fit, with their reasons; the least bad first.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
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
        let (_, rejected) = self.split();
        rejected
    }

    /// Stock lengths that could not be judged, because a dimension of theirs has not been read.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "1-8 UNC".parse()?;
    /// let stack = Stack::builder().ply("plate", Spread::exact(inches(2.0))).build()?;
    /// let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &thread)?;
    /// let nut = NutEnd::of(Nut::find(NutStyle::Hex, &thread)?)?;
    /// let rules = LengthRules::fabrication(UnitSystem::UsCustomary);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// assert_eq!(selection.not_assessed(), [inches(1.0)]); // no length tolerance was read there
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn not_assessed(&self) -> &[Length] {
        &self.not_assessed
    }

    /// What the user of the choice must be told, beyond the
    /// [general cautions](crate::caution::GENERAL): values that were recalled, not read.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let stack = Stack::builder().ply("plate", Spread::exact(millimetres(40.0))).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso7042, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// for caution in selection.cautions().iter() {
    ///     println!("{caution}"); // the nut heights of ISO 7042
    /// }
    /// # assert_eq!(selection.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.cautions.clone()
    }
}

#[cfg(feature = "serde")]
mod serde_lists {
    use super::Reason;
    use serde::Serializer;

    pub(super) fn reasons<S: Serializer>(
        reasons: &[Option<Reason>; 4],
        serializer: S,
    ) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(reasons.iter().flatten())
    }
}
