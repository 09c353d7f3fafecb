//! The bolt in the hand: a verdict from what a caliper says.

use alloc::{format, string::String, vec::Vec};

use super::stack::Added;
use super::{Candidate, Cut, LengthRules, LengthSearch, NutEnd, Reason, Stack};
use crate::derivation::{Derivation, Step};
use crate::error::{Error, not_negative, sane_length};
use crate::parts::ScrewLength;
use crate::spread::Spread;
use crate::thread::Thread;
use crate::units::{Length, UnitSystem, shown};

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
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub length: Length,
    /// Plain shank of full diameter; zero for a bolt threaded to the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub shank: Length,
    /// Where a nut run on by hand stops.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub thread_start: Length,
    /// How far off any of these may be, either way.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
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
    /// closest standard thread of [`Thread::identify`].
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] if no standard thread is close; those of [`new`](Self::new).
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
    ) -> Result<Verdict, Error> {
        let search = LengthSearch::of_thread(stack, &self.thread, &nut, rules)?;
        let candidate = search.assess(self.screw()?)?;
        let at_head = candidate.washers_added_under_head;
        let washered = (at_head > 0).then(|| stack.to_builder().with_head_washers(at_head).build());
        let washered = washered.transpose()?;
        let stack = washered.as_ref().unwrap_or(stack);
        let wanted = WantedBolt::of(stack, &self.thread, nut, rules, candidate.washers_added)?;
        Ok(Verdict {
            bolt: *self,
            candidate,
            to_do: ToDo::list(&candidate, &wanted),
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
pub struct Verdict {
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

/// What a bolt must measure to suit a joint with a number of washers: what to look for in a drawer.
///
/// ```
/// use shankline::{joint::WantedBolt, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M10".parse()?;
/// let ply = millimetres(20.0).plus_minus(millimetres(0.2));
/// let stack = Stack::builder().ply("a", ply).ply("b", ply).shear_planes([1]).build()?;
/// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
/// let rules = LengthRules::fabrication(UnitSystem::Si);
/// let wanted = WantedBolt::of(&stack, &thread, nut, rules, 0)?;
/// assert!((wanted.shank_min - millimetres(20.2)).abs() < millimetres(1e-9));
/// assert!((wanted.thread_start_max - millimetres(39.6)).abs() < millimetres(1e-9));
/// assert!((wanted.length_min - millimetres(40.4 + 8.4 + 3.0)).abs() < millimetres(1e-9));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct WantedBolt {
    /// Washers under the nut beyond those always there.
    pub washers_added: usize,
    /// Least shank that has every shear plane in it; zero without shear planes.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub shank_min: Length,
    /// Latest start of usable thread with which the nut clamps and leaves the clear threads asked
    /// for. Negative if nothing can.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub thread_start_max: Length,
    /// Least length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub length_min: Length,
    /// Greatest length that needs no cut; none without a limit. It may lie below the least length:
    /// then no length suits every stack, and the end is cut at fit-up.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub length_max: Option<Length>,
    /// Everything between the bearing faces of head and nut, G.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    pub grip: Spread<Length>,
    /// Nut height, m.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    pub nut_height: Spread<Length>,
    /// Clear thread wanted under the nut, c P.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub clear_thread: Length,
    /// Least wanted protrusion, p req P.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub protrusion_min: Length,
    /// Greatest wanted protrusion, p lim P; none without a limit.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub protrusion_max: Option<Length>,
}

impl WantedBolt {
    /// The measures, from the same inequalities as the search: LB >= x max, LG <= G min - c P,
    /// L >= G max + m max + p P, and L <= G min + m min + p lim P.
    ///
    /// # Errors
    ///
    /// Those of [`LengthSearch::new`].
    ///
    /// ```
    /// use shankline::{joint::WantedBolt, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10".parse()?;
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(30.0))).build()?;
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// let rules = LengthRules::fabrication(UnitSystem::Si);
    /// assert_eq!(WantedBolt::of(&stack, &thread, nut, rules, 0)?.shank_min, millimetres(0.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn of(
        stack: &Stack,
        thread: &Thread,
        nut: NutEnd,
        rules: LengthRules,
        washers_added: usize,
    ) -> Result<Self, Error> {
        LengthSearch::of_thread(stack, thread, &nut, rules)?;
        let (height, pitch) = (nut.height(), thread.pitch());
        let grip = stack.grip_with(Added {
            under_head: 0,
            under_nut: washers_added,
        });
        let last = stack.plane_positions().last().map(|last| last.max);
        let holes = rules.thread_in_holes_max_pitches;
        let in_holes = holes.map(|most| stack.holes_end().max - most * pitch);
        let shank_min = [last, in_holes].into_iter().flatten();
        let clear_thread = rules.clear_threads_min * pitch;
        let (protrusion_min, protrusion_max) = nut.window(&rules, pitch);
        Ok(Self {
            washers_added,
            shank_min: shank_min.fold(Length::default(), Length::max),
            thread_start_max: grip.min - clear_thread,
            length_min: grip.max + height.max + protrusion_min,
            length_max: protrusion_max.map(|limit| grip.min + height.min + limit),
            grip,
            nut_height: height,
            clear_thread,
            protrusion_min,
            protrusion_max,
        })
    }

    /// The working.
    ///
    /// ```
    /// use shankline::{joint::WantedBolt, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10".parse()?;
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(30.0))).build()?;
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let derivation = WantedBolt::of(&stack, &thread, nut, rules, 0)?.derivation();
    /// derivation.check()?;
    /// assert_eq!(derivation.steps().len(), 4);
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let (grip, nut) = (self.grip, self.nut_height);
        let mut derivation = Derivation::new("What the bolt must measure")
            .step(Step::given(
                "least shank: the last shear plane, thickest plies",
                "LB",
                self.shank_min,
            ))
            .step(
                Step::new(
                    "latest start of thread",
                    "LG",
                    "Gmin - c",
                    self.thread_start_max,
                )
                .with("Gmin", grip.min)
                .with("c", self.clear_thread),
            )
            .step(
                Step::new(
                    "least length",
                    "Lmin",
                    "Gmax + mmax + preq",
                    self.length_min,
                )
                .with("Gmax", grip.max)
                .with("mmax", nut.max)
                .with("preq", self.protrusion_min),
            );
        if let (Some(longest), Some(limit)) = (self.length_max, self.protrusion_max) {
            let step = Step::new(
                "greatest length without a cut",
                "Lmax",
                "Gmin + mmin + plim",
                longest,
            );
            derivation = derivation.step(
                step.with("Gmin", grip.min)
                    .with("mmin", nut.min)
                    .with("plim", limit),
            );
        }
        derivation
    }
}

/// Something to do, to make a bolt suit or to find one that does.
///
/// ```
/// use shankline::{joint::ToDo, prelude::*};
/// assert_eq!(
///     ToDo::LongerBolt { by: millimetres(2.5) }.text(UnitSystem::Si),
///     "take a bolt at least 2.50 mm longer",
/// );
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum ToDo {
    /// Put more washers under the nut.
    AddWashers {
        /// How many.
        count: usize,
    },
    /// Put more washers under the head.
    AddWashersUnderHead {
        /// How many.
        count: usize,
    },
    /// Cut the bolt to a fixed length before it goes in.
    Cut(Cut),
    /// Fit the bolt, then cut it to the stack in hand: no fixed length keeps the wanted protrusion.
    CutAtFitUp,
    /// Some shear planes are not on guaranteed shank: reckon their strength with the thread area.
    CountAsThread {
        /// How many planes.
        planes: usize,
    },
    /// Take a bolt with more plain shank: too much thread lies in the holes.
    LongerShank {
        /// By at least so much.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        by: Length,
    },
    /// Take a longer bolt.
    LongerBolt {
        /// By at least so much.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        by: Length,
    },
    /// Take a bolt whose thread begins nearer to the head: a shorter one, or one with more thread.
    ThreadNearerHead {
        /// By at least so much.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        by: Length,
    },
    /// Or put so many more washers under the nut, if whoever is responsible permits them.
    PermitWashers {
        /// More than are there now.
        count: usize,
        /// More that the rules permit now.
        permitted: usize,
    },
    /// Take a shorter bolt.
    ShorterBolt {
        /// By at least so much.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        by: Length,
    },
}

impl ToDo {
    fn list(candidate: &Candidate, wanted: &WantedBolt) -> Vec<Self> {
        let mut list = Vec::new();
        for reason in candidate.reasons() {
            match *reason {
                Reason::TooShort { by } | Reason::WashersMakeItShort { by, .. } => {
                    list.push(Self::LongerBolt { by });
                }
                Reason::NutJams {
                    washers_needed,
                    washers_permitted,
                    ..
                }
                | Reason::TooFewClearThreads {
                    washers_needed,
                    washers_permitted,
                    ..
                } => {
                    // The clear threads asked for included.
                    let start = candidate.screw.grip_gaging_length_max;
                    list.push(Self::ThreadNearerHead {
                        by: start - wanted.thread_start_max,
                    });
                    // Nobody stacks more than a handful.
                    let more =
                        washers_needed.filter(|count| (washers_permitted + 1..=5).contains(count));
                    if let Some(count) = more {
                        list.push(Self::PermitWashers {
                            count,
                            permitted: washers_permitted,
                        });
                    }
                }
                Reason::ThreadInHoles { by } => list.push(Self::LongerShank { by }),
                Reason::TooLong { by } | Reason::Bottoms { by } => {
                    list.push(Self::ShorterBolt { by });
                }
            }
        }
        if !candidate.fits() {
            return list;
        }
        if candidate.washers_added_under_head > 0 {
            list.push(Self::AddWashersUnderHead {
                count: candidate.washers_added_under_head,
            });
        }
        if candidate.washers_added > 0 {
            list.push(Self::AddWashers {
                count: candidate.washers_added,
            });
        }
        if candidate.needs_cut {
            let fixed = candidate.cut.filter(|cut| cut.holds_window);
            list.push(fixed.map_or(Self::CutAtFitUp, Self::Cut));
        }
        let planes = candidate.planes_in_run_out + candidate.planes_in_thread;
        if planes > 0 {
            list.push(Self::CountAsThread { planes });
        }
        list
    }

    /// What to do as a sentence, lengths in the reader's units.
    ///
    /// ```
    /// use shankline::{joint::ToDo, prelude::*};
    /// assert_eq!(
    ///     ToDo::AddWashers { count: 2 }.text(UnitSystem::Si),
    ///     "put 2 more washers under the nut",
    /// );
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        let plural = |count: usize| if count == 1 { "" } else { "s" };
        match self {
            Self::AddWashers { count } => {
                format!("put {count} more washer{} under the nut", plural(*count))
            }
            Self::AddWashersUnderHead { count } => {
                format!("put {count} more washer{} under the head", plural(*count))
            }
            Self::LongerShank { by } => format!(
                "take a bolt with at least {} more plain shank",
                shown(*by, system)
            ),
            Self::Cut(cut) => format!(
                "cut it to {} from under the head: {} comes off",
                shown(cut.length, system),
                shown(cut.removed, system)
            ),
            Self::CutAtFitUp => "fit it, then mark and cut it to the stack in hand".into(),
            Self::CountAsThread { planes } => format!(
                "reckon {planes} shear plane{} with the thread area: not on guaranteed shank",
                plural(*planes)
            ),
            Self::LongerBolt { by } => {
                format!("take a bolt at least {} longer", shown(*by, system))
            }
            Self::ThreadNearerHead { by } => format!(
                "take a bolt whose thread begins at least {} nearer to the head",
                shown(*by, system)
            ),
            Self::PermitWashers { count, permitted } => format!(
                "or put {count} more washer{} under the nut ({permitted} more permitted)",
                plural(*count)
            ),
            Self::ShorterBolt { by } => {
                format!("take a bolt at least {} shorter", shown(*by, system))
            }
        }
    }
}

#[cfg(feature = "serde")]
mod data {
    use super::BoltInHand;
    use crate::thread::Thread;
    use crate::units::quantity::RawQuantity;
    use alloc::string::{String, ToString};

    #[derive(Clone, Debug, serde::Deserialize)]
    #[serde(deny_unknown_fields)]
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
