//! What the workshop builds from, and what the inspector looks at later.

use alloc::{string::String, vec::Vec};
use core::fmt;

use super::case::closing;
use super::{Joint, Slip, Verdict, Word};
use crate::error::Error;
use crate::joint::{CutMethod, CutPlan, Reuse, TighteningOrder, reuse};
use crate::material::Finish;
use crate::parts::Locking;
use crate::preload::Loosened;
use crate::spread::Spread;
use crate::units::{Force, Length, Torque, UnitSystem};

mod steps;
mod text;

pub(in crate::joint) use steps::bolt_and_nut;
use steps::{is_glued, locking, parts, play_kept, preload_inspection, protrusion, tightening};

/// Steps for the workshop and for the inspector.
///
/// ```
/// use shankline::joint::{Sheet, SheetStep};
/// use shankline::prelude::*;
#[doc = include_str!("example.txt")]
/// let verdict = joint.check()?;
/// let sheet = Sheet::new(&joint, &verdict)?;
/// assert!(matches!(sheet.assembly[0], SheetStep::Side { .. }));
/// let text = sheet.render(UnitSystem::Si).to_string();
/// assert!(text.contains("[ ] Bolt M12 x"));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Sheet {
    /// In the order of assembly.
    pub assembly: Vec<SheetStep>,
    /// For later inspections.
    pub inspection: Vec<SheetStep>,
}

/// One step of a [`Sheet`].
///
/// ```
/// use shankline::joint::SheetStep;
/// use shankline::units::UnitSystem;
/// assert!(SheetStep::WitnessMark.text(UnitSystem::Si).starts_with("Draw a witness mark"));
/// assert_eq!(SheetStep::FirstLook.source().citation, "common practice, no source");
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum SheetStep {
    /// The joint is not to be built as it is: it does not hold, or nobody knows.
    DoNotBuild {
        /// The word of the verdict.
        word: Word,
    },
    /// From which side the bolt goes in: the other side may put a shear plane into its thread.
    Side {
        /// The ply, or the washer's ply, under the head.
        head: String,
        /// The ply at the nut, or the tapped part.
        end: String,
        /// Whether the joint ends in a tapped part.
        tapped: bool,
    },
    /// The parts of one bolt.
    Parts {
        /// Bolt, with thread, length, product, grade and coating.
        bolt: String,
        /// The nut, with grade and coating; none in a tapped part.
        nut: Option<String>,
        /// Washers under the head, from the head to the ply.
        washers_under_head: Vec<SheetWasher>,
        /// Washers under the nut, from the ply to the nut.
        washers_under_nut: Vec<SheetWasher>,
    },
    /// How the faces have to be before they are clamped.
    Faces {
        /// Whether the joint counts on friction between them.
        slip: bool,
    },
    /// Put it together to see where it is to be cut.
    FitUp {
        /// Past the face of the nut.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        mark: Length,
        /// Whether a plain nut takes the place of a lock nut that is good once.
        plain_nut: bool,
    },
    /// Cut the bolt.
    Cut {
        /// Where to mark it, from under the head; none where it was marked at the fit-up.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round_option")
        )]
        mark: Option<Length>,
    },
    /// The cut end has lost its coating.
    CoatEnd,
    /// The hole for the pin comes after the cut.
    DrillAfterCut,
    /// Measure the running torque of a lock nut and add it to the torque.
    AddRunningTorque,
    /// Measure the running torque of a lock nut, whose range is in the torque.
    CheckRunningTorque {
        /// What the torque counts on.
        torque: Spread<Torque>,
    },
    /// In which order the bolts of the group are tightened.
    Order(TighteningOrder),
    /// Tighten.
    Tighten {
        /// Torque on the wrench.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        torque: Torque,
        /// Preload it gives, by the range of the nut factor.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::spread::quantity::round")
        )]
        preload: Spread<Force>,
        /// The nut factor: least, nominal and greatest.
        nut_factor: [f64; 3],
        /// Whether the nut is turned and the head held; else the head is turned.
        nut_is_turned: bool,
    },
    /// The torque is to be proved first, as RCSC wants it.
    ProveTorque,
    /// Every bolt of the group until the plies touch, then to the torque, then round once more.
    InTwoRounds,
    /// Tighten until the plies touch: nothing counts on preload.
    TightenSnug,
    /// Tighten until nothing has play, and leave the gap between the plies open.
    TightenOverGap,
    /// No tightening is specified; the step says so.
    AskForTightening,
    /// A wrench of the right size.
    WrenchRange,
    /// Line up the slots of a slotted nut within the range of its torque, and fit the pin.
    FitPin,
    /// Line up the slots of a slotted nut that no torque is given for, and fit the pin.
    FitPinByHand,
    /// Mark nut, bolt end and ply.
    WitnessMark,
    /// Mark head and ply.
    WitnessMarkAtHead,
    /// How much thread of a tapped part must be filled.
    Engagement {
        /// At least this.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        least: Length,
        /// Of so much full thread; none for a hole tapped through.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round_option")
        )]
        depth: Option<Length>,
    },
    /// How much of the bolt must show past the nut.
    Protrusion {
        /// From this.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        least: Length,
        /// To this; none for no limit.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round_option")
        )]
        most: Option<Length>,
        /// The pitch of the thread, to count in threads.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        pitch: Length,
    },
    /// Look again after the first hours under load.
    FirstLook,
    /// The same where the torque is not to be touched.
    FirstLookAtMarks,
    /// Timber shrinks as it dries.
    RetightenTimber,
    /// A mark that moved.
    MovedMark,
    /// What a mark that moved means in preload, by the stiffness of this joint.
    MarkMeans {
        /// The preload lost with a mark that moved so far.
        loosened: Loosened,
    },
    /// What settling takes, as far as it was given.
    Settling {
        /// Preload lost.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        loss: Force,
    },
    /// What a mark cannot show.
    MarkShowsRotationOnly,
    /// How to check the torque of a bolt that may be tightened again.
    Retorque,
    /// How to check the torque of a bolt that may not.
    TorqueWithoutSlackening,
    /// To put adhesive on the thread of a screw.
    Glue,
    /// That a screw held by adhesive is not turned.
    LeaveGlued,
    /// Whether the bolt may be used again.
    Reuse(Reuse),
    /// Used nuts.
    UsedNut {
        /// What locks it.
        locking: Locking,
    },
    /// What else to look at.
    LookAround,
}

/// Washers of one kind on a [`Sheet`].
///
/// ```
/// use shankline::joint::SheetWasher;
/// fn print(washer: &SheetWasher) {
///     println!("{} x {}", washer.count, washer.name);
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct SheetWasher {
    /// How many.
    pub count: usize,
    /// What they are, with the size.
    pub name: String,
    /// Thickness of one.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub thickness: Spread<Length>,
}

impl Sheet {
    /// The sheet of a joint that has been checked. That of a joint that does not hold, or is undecided, says so
    /// first.
    ///
    /// # Errors
    ///
    /// Those of [`CutPlan::new`] and of the look-up of the nut; [`Error::Mismatch`] if the verdict is that of another
    /// joint.
    ///
    /// ```
    /// # use shankline::joint::{Joint, Sheet, Verdict};
    /// fn steps(joint: &Joint, verdict: &Verdict) -> Result<usize, shankline::Error> {
    ///     Ok(Sheet::new(joint, verdict)?.assembly.len())
    /// }
    /// ```
    pub fn new(joint: &Joint, verdict: &Verdict) -> Result<Self, Error> {
        Self::of(joint, &verdict.confirmed(joint)?)
    }

    /// The sheet of a joint and the verdict it has just got.
    pub(in crate::joint) fn of(joint: &Joint, verdict: &Verdict) -> Result<Self, Error> {
        Self::of_word(joint, verdict, verdict.word())
    }

    /// The same of a bolt of a connection, which has a word of its own.
    pub(crate) fn of_word(joint: &Joint, verdict: &Verdict, word: Word) -> Result<Self, Error> {
        let thread = joint.bolt.thread;
        let candidate = &verdict.candidate;
        let locking = locking(joint);
        let mut assembly = Vec::with_capacity(12);
        if word != Word::Holds {
            assembly.push(SheetStep::DoNotBuild { word });
        }
        assembly.extend(parts(joint, verdict)?);
        let slip = matches!(joint.methods.slip, Slip::Resisted(_));
        assembly.push(SheetStep::Faces { slip });
        // The bolt is cut before it is tightened for good.
        let plan = CutPlan::new(candidate, &thread, closing(joint)?.end()?, joint.rules);
        let plan = match plan {
            Ok(plan) => Some(plan),
            // No length suits, and the first step says not to build it.
            Err(_) if word != Word::Holds => None,
            Err(error) => return Err(error),
        };
        if let Some((plan, cut)) = plan.as_ref().and_then(|plan| Some((plan, plan.cut()?))) {
            let at_fit_up = plan.method == CutMethod::AtFitUp;
            if at_fit_up {
                assembly.push(SheetStep::FitUp {
                    mark: cut.mark_from_nut.nominal + play_kept(joint),
                    plain_nut: matches!(locking, Some(Locking::Insert | Locking::AllMetal)),
                });
            }
            assembly.push(SheetStep::Cut {
                mark: (!at_fit_up).then_some(cut.mark_from_head.nominal),
            });
            let coated = joint
                .bolt
                .finish
                .is_some_and(|finish| !matches!(finish, Finish::Bare(_)));
            assembly.extend(coated.then_some(SheetStep::CoatEnd));
            let slotted = locking == Some(Locking::Slotted);
            assembly.extend(slotted.then_some(SheetStep::DrillAfterCut));
        }
        assembly.extend(is_glued(joint).then_some(SheetStep::Glue));
        tightening(joint, verdict, locking, &mut assembly);
        let protrusion = protrusion(joint);
        assembly.extend(protrusion.clone());
        // Without a torque there is none to mark after, to check or to lose.
        if verdict.preload.is_some() {
            assembly.push(if locking.is_some() {
                SheetStep::WitnessMark
            } else {
                SheetStep::WitnessMarkAtHead
            });
        }
        let mut inspection = preload_inspection(joint, verdict)?;
        inspection.extend(protrusion);
        let in_timber = joint.stack.plies().iter().any(|ply| ply.timber.is_some());
        inspection.extend(in_timber.then_some(SheetStep::RetightenTimber));
        if joint.environment.refits > 0 {
            let target = joint.torque().map(|torque| torque.target);
            let rule = reuse(joint.bolt.grade, joint.bolt.finish, target);
            inspection.push(SheetStep::Reuse(rule));
        }
        inspection.extend(locking.map(|locking| SheetStep::UsedNut { locking }));
        inspection.push(SheetStep::LookAround);
        Ok(Self {
            assembly,
            inspection,
        })
    }

    /// The sheet for a group of such bolts: their order comes before the tightening.
    ///
    /// ```
    /// # use shankline::joint::{Joint, Sheet, Verdict, tightening_order};
    /// # use shankline::strength::group::BoltPattern;
    /// fn sheet(joint: &Joint, verdict: &Verdict, group: &BoltPattern) -> Result<Sheet, shankline::Error> {
    ///     Ok(Sheet::new(joint, verdict)?.for_group(tightening_order(group)))
    /// }
    /// ```
    #[must_use]
    pub fn for_group(mut self, order: TighteningOrder) -> Self {
        let tightening = |step: &SheetStep| {
            matches!(
                step,
                SheetStep::InTwoRounds
                    | SheetStep::Tighten { .. }
                    | SheetStep::TightenSnug
                    | SheetStep::TightenOverGap
                    | SheetStep::AskForTightening
            )
        };
        let place = self.assembly.iter().position(tightening);
        let place = place.unwrap_or(self.assembly.len());
        self.assembly.insert(place, SheetStep::Order(order));
        self
    }

    /// The sheet as text, with boxes to tick. The cautions are not in it: write
    /// [`Verdict::cautions`] on every sheet.
    ///
    /// ```
    /// # use shankline::joint::Sheet;
    /// # use shankline::units::UnitSystem;
    /// fn text(sheet: &Sheet) -> String {
    ///     sheet.render(UnitSystem::UsCustomary).to_string()
    /// }
    /// ```
    #[must_use]
    pub const fn render(&self, system: UnitSystem) -> RenderedSheet<'_> {
        RenderedSheet {
            sheet: self,
            system,
        }
    }
}

/// A sheet ready for `{}`; made by [`Sheet::render`].
///
/// ```
/// # use shankline::joint::Sheet;
/// # use shankline::units::UnitSystem;
/// fn print(sheet: &Sheet) {
///     println!("{}", sheet.render(UnitSystem::Si));
/// }
/// ```
#[derive(Clone, Copy, Debug)]
pub struct RenderedSheet<'a> {
    sheet: &'a Sheet,
    system: UnitSystem,
}

impl fmt::Display for RenderedSheet<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (title, steps) in [
            ("Assembly", &self.sheet.assembly),
            ("Inspection", &self.sheet.inspection),
        ] {
            writeln!(f, "{title}")?;
            for step in steps {
                writeln!(f, "  [ ] {}", step.text(self.system))?;
                writeln!(f, "      ({})", step.source())?;
            }
        }
        Ok(())
    }
}
