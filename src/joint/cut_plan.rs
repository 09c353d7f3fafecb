//! Cutting a bolt to length: where, how, and which bolts not.

use core::fmt;

use super::{Candidate, Cut, CutRule, LengthRules, NutEnd};
use crate::error::{Error, not_negative, sane_length};
use crate::spread::{Spread, ordered, sane_spread};
use crate::thread::Thread;
use crate::units::Length;

mod bench;
mod working;

pub use bench::{BoltTrait, CutObjection, CutStep};

/// How a bolt comes to its length.
///
/// ```
/// use shankline::joint::CutMethod;
/// assert_eq!(CutMethod::AtFitUp.to_string(), "at fit-up, to the stack in hand");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum CutMethod {
    /// It stays as bought.
    NotNeeded,
    /// All bolts are cut to one length at the bench: every assembly keeps the wanted protrusion.
    ToFixedLength,
    /// Each bolt is marked and cut on the tightened joint: no one length keeps the wanted protrusion.
    AtFitUp,
    /// Each screw is cut to its own stack, measured before it goes into the tapped part: no one length both
    /// fills the engagement and keeps from the end of the thread.
    ToMeasuredStack,
    /// No way to cut it keeps the wanted protrusion: the window is narrower than the cut is exact.
    NoWay,
}

impl fmt::Display for CutMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::NotNeeded => "no cut needed",
            Self::ToFixedLength => "to one fixed length",
            Self::AtFitUp => "at fit-up, to the stack in hand",
            Self::ToMeasuredStack => "each to its stack, measured before it goes in",
            Self::NoWay => "no cut holds the wanted protrusion",
        })
    }
}

/// A cut and what comes of it.
///
/// ```
/// use shankline::{joint::CutPlan, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
/// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
/// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
/// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
/// # let rules = LengthRules::fabrication(UnitSystem::Si);
/// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
/// let plan = CutPlan::new(selection.best().unwrap(), &thread, nut, rules)?;
/// let cut = plan.fixed.unwrap();
/// assert_eq!((cut.mark_from_head.min, cut.mark_from_head.max), (millimetres(53.0), millimetres(53.0)));
/// // From the outer face of the nut on a joint of nominal plies: 53 - 40 - 8.22
/// assert!((cut.mark_from_nut.nominal - millimetres(4.78)).abs() < millimetres(1e-9));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PlannedCut {
    /// Where the mark goes, from the bearing face of the head; one place for a fixed length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub mark_from_head: Spread<Length>,
    /// Where it goes from the outer face of the tightened nut; one place for a cut at fit-up. In a tapped
    /// part, from the depth of the wanted engagement.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub mark_from_nut: Spread<Length>,
    /// Length after the cut with its tolerance, from the bearing face of the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub finished: Spread<Length>,
    /// What comes off; the least may be zero, for a short bolt that is left as it is.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub removed: Spread<Length>,
    /// Thread between LG and the cut end, at least.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread_left: Length,
    /// Bolt length beyond the nut, or beyond the wanted engagement, after the cut, dressed end included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub protrusion: Spread<Length>,
    /// Whether every assembly keeps the wanted protrusion.
    pub holds_window: bool,
}

/// How one bolt of a joint is cut to length.
///
/// A fixed length can keep every assembly inside the wanted protrusion only if the stack, the nut
/// and the cut vary by no more than the window is wide:
/// window margin = (p lim - p req) P - (G max - G min) - (m max - m min) - 2 u, u the tolerance of
/// the cut. Where it cannot, the cut is made on the tightened joint: the mark goes p req P + u
/// from the face of the nut, and only the cut itself varies.
///
/// In a tapped part the wanted engagement takes the place of the nut, the depth of the thread that of the
/// greatest protrusion, and each screw is cut to a stack measured beforehand.
///
/// Source: arithmetic on the quantities of [`LengthSearch`](super::LengthSearch).
///
/// ```
/// use shankline::{joint::{CutMethod, CutPlan}, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// // A timber post varies by more than the window: mark it at fit-up.
/// let thread: Thread = "M12".parse()?;
/// let bracket = millimetres(6.0).plus_minus(millimetres(0.2));
/// let stack = Stack::builder()
///     .ply("bracket", bracket)
///     .ply("timber post", millimetres(70.0).plus_minus(millimetres(1.0)))
///     .ply("bracket", bracket)
///     .shear_planes([1, 2])
///     .washers_under_nut(Washer::find(WasherStyle::Iso7089, &thread)?.thickness()?, 1)
///     .build()?;
/// let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
/// let nut = NutEnd::of(Nut::find(NutStyle::Iso7040, &thread)?)?;
/// let rules = LengthRules::fabrication(UnitSystem::Si).with_protrusion(1.0, Some(2.0));
/// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
/// let plan = CutPlan::new(selection.best().unwrap(), &thread, nut, rules)?;
/// assert_eq!(plan.method, CutMethod::AtFitUp);
/// // 1 pitch and the tolerance of the cut from the face of the nut
/// let mark = plan.at_fit_up.unwrap().mark_from_nut.nominal;
/// assert!((mark - millimetres(1.75 + 0.5)).abs() < millimetres(1e-9));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CutPlan {
    /// What to do.
    pub method: CutMethod,
    /// The cut to one length, where a length is to come off; also where it does not hold the window.
    pub fixed: Option<PlannedCut>,
    /// The cut to the stack in hand, where a length is to come off: on the tightened joint, or for a tapped
    /// part to the stack as measured.
    pub at_fit_up: Option<PlannedCut>,
    /// Whether the screw ends in a tapped part.
    pub ends_in_tapped_part: bool,
    /// Length as bought.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub bought: Spread<Length>,
    /// Everything between the bearing faces of head and nut, G.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub grip: Spread<Length>,
    /// Nut height, m; of a tapped part, the wanted engagement.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub nut_height: Spread<Length>,
    /// Least wanted protrusion, p req P.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub protrusion_min: Length,
    /// Greatest wanted protrusion, p lim P; none without a limit.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub protrusion_max: Option<Length>,
    /// How exactly a cut is made, either way, u; zero where the rules know no cut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub cut_tolerance: Length,
    /// By how much the wanted window is wider than everything that varies; negative if no fixed
    /// length can hold it. None without an upper limit.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub window_margin: Option<Length>,
    /// Grip gaging length of the bolt, LG: the cut does not move it.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread_start: Length,
    /// Length of the chamfer that takes the end, at 45 degrees, from the nominal diameter to the
    /// root of the thread. It carries no full thread: the locking part of a nut must be past it.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub chamfer: Length,
}

impl CutPlan {
    /// The plan for a candidate that fits, with the nut and rules it was found by.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a candidate that does not fit: cutting does not help it, or for a nut in place
    /// of the tapped part it was found for; [`Error::OutOfRange`] for rules or lengths that make no sense.
    ///
    /// ```
    /// use shankline::{joint::{CutMethod, CutPlan}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let stack = Stack::builder().ply("plate", Spread::exact(millimetres(40.0))).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// let rules = LengthRules::fabrication(UnitSystem::Si).with_protrusion(1.0, None);
    /// let search = LengthSearch::new(&stack, &screws, nut, rules)?;
    /// let fits = search.assess(screws.length(millimetres(60.0))?)?;
    /// assert_eq!(CutPlan::new(&fits, &thread, nut, rules)?.method, CutMethod::NotNeeded);
    /// let short = search.assess(screws.length(millimetres(45.0))?)?;
    /// assert!(CutPlan::new(&short, &thread, nut, rules).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn new(
        candidate: &Candidate,
        thread: &Thread,
        nut: NutEnd,
        rules: LengthRules,
    ) -> Result<Self, Error> {
        let rules = rules.checked()?;
        if !candidate.fits() {
            return Err(Error::Mismatch(
                "the bolt does not suit the joint, and no cut makes it suit".into(),
            ));
        }
        if candidate.ends_in_tapped_part != nut.is_tapped() {
            return Err(Error::Mismatch(
                "the candidate was found for a nut and not for a tapped part, or the other way"
                    .into(),
            ));
        }
        let (pitch, nut_height) = (thread.pitch(), nut.height());
        // The fields of a candidate are open to all: what was put there must still make sense.
        let screw = candidate.screw.checked()?;
        let grip = ordered("grip", candidate.grip)?;
        let cut_tolerance = match rules.cut {
            CutRule::Allowed { tolerance, .. } => not_negative("cut tolerance", tolerance)?,
            CutRule::Never => Length::default(),
        };
        let width = |spread: Spread<Length>| spread.max - spread.min;
        let (protrusion_min, protrusion_max) = nut.window(&rules, pitch);
        let mut plan = Self {
            method: CutMethod::NotNeeded,
            fixed: None,
            at_fit_up: None,
            ends_in_tapped_part: nut.is_tapped(),
            bought: screw.length(),
            grip,
            nut_height,
            protrusion_min,
            protrusion_max,
            cut_tolerance,
            window_margin: protrusion_max.map(|max| {
                max - protrusion_min - width(grip) - width(nut_height) - 2.0 * cut_tolerance
            }),
            thread_start: screw.grip_gaging_length_max,
            chamfer: 0.5 * (thread.nominal_diameter() - thread.rounded_root_diameter()),
        };
        if candidate.needs_cut {
            plan.fixed = candidate.cut.map(|cut| plan.fixed_cut(&cut)).transpose()?;
            plan.at_fit_up = Some(plan.cut_at_fit_up());
            let holds = |cut: Option<PlannedCut>| cut.is_some_and(|cut| cut.holds_window);
            plan.method = if holds(plan.fixed) {
                CutMethod::ToFixedLength
            } else if !holds(plan.at_fit_up) {
                CutMethod::NoWay
            } else if plan.ends_in_tapped_part {
                CutMethod::ToMeasuredStack
            } else {
                CutMethod::AtFitUp
            };
        }
        Ok(plan)
    }

    /// How far an end at `length` stands beyond the nut.
    fn beyond_nut(&self, length: Spread<Length>) -> Spread<Length> {
        length.less(self.grip).less(self.nut_height)
    }

    fn removed(&self, finished: Spread<Length>) -> Spread<Length> {
        let none = Length::default();
        let left = self.bought.less(finished);
        left.map(|length| length.max(none))
    }

    fn fixed_cut(&self, cut: &Cut) -> Result<PlannedCut, Error> {
        let length = sane_length("length after the cut", cut.length)?;
        sane_spread("length after the cut", cut.finished)?;
        let finished = cut.finished;
        let protrusion = self.beyond_nut(finished);
        Ok(PlannedCut {
            mark_from_head: Spread::exact(length),
            mark_from_nut: self.beyond_nut(Spread::exact(length)),
            finished,
            removed: self.removed(finished),
            thread_left: finished.min - self.thread_start,
            protrusion,
            holds_window: self.keeps_below_most(protrusion),
        })
    }

    fn keeps_below_most(&self, protrusion: Spread<Length>) -> bool {
        let most = self.protrusion_max;
        most.is_none_or(|most| protrusion.max <= most + crate::units::SAME_LENGTH)
    }

    fn cut_at_fit_up(&self) -> PlannedCut {
        let (u, mark) = (self.cut_tolerance, self.protrusion_min + self.cut_tolerance);
        let mark_from_head = self.grip + self.nut_height + Spread::exact(mark);
        // A bolt that ends before its mark is left as it is.
        let finished = Spread {
            min: self.bought.min.min(mark_from_head.min - u),
            nominal: self.bought.nominal.min(mark_from_head.nominal),
            max: self.bought.max.min(mark_from_head.max + u),
        };
        let protrusion = Spread {
            min: mark - u,
            nominal: mark,
            max: mark + u,
        };
        PlannedCut {
            mark_from_head,
            mark_from_nut: Spread::exact(mark),
            finished,
            removed: self.removed(finished),
            thread_left: finished.min - self.thread_start,
            protrusion,
            holds_window: self.keeps_below_most(protrusion),
        }
    }

    /// The cut to make, if one is to be made.
    ///
    /// ```
    /// use shankline::{joint::CutPlan, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// let plan = CutPlan::new(selection.best().unwrap(), &thread, nut, rules)?;
    /// assert_eq!(plan.cut().unwrap().finished.nominal, millimetres(53.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn cut(&self) -> Option<PlannedCut> {
        match self.method {
            CutMethod::ToFixedLength => self.fixed,
            CutMethod::AtFitUp | CutMethod::ToMeasuredStack => self.at_fit_up,
            CutMethod::NotNeeded | CutMethod::NoWay => None,
        }
    }

    /// Full thread beyond the nut, or beyond the wanted engagement, after the cut, at least: the protrusion
    /// less the chamfer. Below zero the chamfer eats into the engagement.
    ///
    /// ```
    /// use shankline::{joint::CutPlan, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// let plan = CutPlan::new(selection.best().unwrap(), &thread, nut, rules)?;
    /// assert!(plan.full_thread_beyond_nut().unwrap() > thread.pitch());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn full_thread_beyond_nut(&self) -> Option<Length> {
        self.cut().map(|cut| cut.protrusion.min - self.chamfer)
    }
}
