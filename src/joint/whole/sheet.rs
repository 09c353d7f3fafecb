//! What the workshop builds from, and what the inspector looks at later.

use alloc::{format, string::String, vec::Vec};
use core::fmt;

use super::case::closing;
use super::{Joint, Verdict};
use crate::error::Error;
use crate::joint::{CutMethod, CutPlan, TighteningOrder};
use crate::parts::{Locking, Nut};
use crate::preload::Loosened;
use crate::spread::Spread;
use crate::units::{Angle, Force, Length, Torque, UnitSystem, degrees, shown};

/// A mark that moved so far is plain to see: common practice, no source.
const MARK: Angle = degrees(10.0);

mod text;

/// Steps for the workshop and for the inspector.
///
/// ```
/// use shankline::joint::{Sheet, SheetStep};
/// use shankline::prelude::*;
#[doc = include_str!("example.txt")]
/// let verdict = joint.check()?;
/// let sheet = Sheet::new(&joint, &verdict)?;
/// assert!(matches!(sheet.assembly[0], SheetStep::Parts { .. }));
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
/// assert_eq!(SheetStep::FirstLook.source(), "common practice, no source");
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum SheetStep {
    /// The parts of one bolt.
    Parts {
        /// Bolt, with thread, length, product and grade.
        bolt: String,
        /// The nut, or the part it is screwed into.
        nut: String,
        /// Washers under the head.
        washers_under_head: usize,
        /// Washers under the nut; none where there is no nut.
        washers_under_nut: Option<usize>,
    },
    /// Cut the bolt.
    Cut {
        /// How.
        method: CutMethod,
        /// Where to mark it: from under the head for a fixed length, from the face of the tightened
        /// nut for a cut at fit-up.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        mark: Length,
    },
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
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        torque: Torque,
        /// Preload it gives, by the range of the nut factor.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_spread")
        )]
        preload: Spread<Force>,
        /// The nut factor: least, nominal and greatest.
        nut_factor: [f64; 3],
    },
    /// No tightening is specified, so that no preload is counted on; the step says so.
    TightenSnug,
    /// A wrench of the right size.
    WrenchRange,
    /// The hole for the pin comes after the cut.
    DrillAfterCut,
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
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        least: Length,
        /// Of so much full thread; none for a hole tapped through.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_option")
        )]
        depth: Option<Length>,
    },
    /// How much of the bolt must show past the nut.
    Protrusion {
        /// From this.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        least: Length,
        /// To this; none for no limit.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_option")
        )]
        most: Option<Length>,
    },
    /// Look again after the first hours under load.
    FirstLook,
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
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        loss: Force,
    },
    /// What a mark cannot show.
    MarkShowsRotationOnly,
    /// How to check the torque.
    Retorque,
    /// Used nuts.
    UsedNut {
        /// What locks it.
        locking: Locking,
    },
    /// What else to look at.
    LookAround,
}

impl Sheet {
    /// The sheet of a joint that has been checked.
    ///
    /// # Errors
    ///
    /// Those of [`CutPlan::new`] and of the look-up of the nut.
    ///
    /// ```
    /// # use shankline::joint::{Joint, Verdict, Sheet};
    /// fn steps(joint: &Joint, check: &Verdict) -> Result<usize, shankline::Error> {
    ///     Ok(Sheet::new(joint, check)?.assembly.len())
    /// }
    /// ```
    pub fn new(joint: &Joint, check: &Verdict) -> Result<Self, Error> {
        let thread = joint.bolt.thread;
        let nut = match (joint.nut, joint.stack.tapped_part()) {
            (Some(nut), _) => format!("nut {}", Nut::find(nut.style, &thread)?),
            (None, part) => {
                let name = part.map(|part| part.name.as_str());
                format!("into the thread of \"{}\"", name.unwrap_or_default())
            }
        };
        let candidate = &check.candidate;
        let locking = joint.nut.map(|nut| nut.style.locking());
        let mut assembly = Vec::from([SheetStep::Parts {
            bolt: format!(
                "{thread} x {} {}, {}",
                length_name(candidate.screw.nominal, thread.is_unified()),
                joint.bolt.product,
                joint.bolt.grade
            ),
            nut,
            washers_under_head: joint.stack.washers_under_head().len()
                + candidate.washers_added_under_head,
            washers_under_nut: joint
                .nut
                .map(|_| joint.stack.other_washers_under_nut().len() + candidate.washers_under_nut),
        }]);
        let plan = CutPlan::new(candidate, &thread, closing(joint)?.end()?, joint.rules)?;
        let cut = plan.cut().map(|cut| SheetStep::Cut {
            method: plan.method,
            mark: match plan.method {
                CutMethod::AtFitUp => cut.mark_from_nut.nominal,
                _ => cut.mark_from_head.nominal,
            },
        });
        if plan.method == CutMethod::ToFixedLength {
            assembly.extend(cut.clone());
        }
        let prevailing = check.preload.and_then(|preload| preload.prevailing);
        match prevailing {
            Some(torque) => assembly.push(SheetStep::CheckRunningTorque { torque }),
            None if matches!(locking, Some(Locking::Insert | Locking::AllMetal)) => {
                assembly.push(SheetStep::AddRunningTorque);
            }
            None => {}
        }
        match (joint.torque(), check.preload) {
            (Some(torque), Some(preload)) => {
                let k = torque.nut_factor;
                assembly.push(SheetStep::Tighten {
                    torque: preload.torque,
                    preload: preload.preload,
                    nut_factor: [k.min(), k.nominal(), k.max()],
                });
                assembly.push(SheetStep::WrenchRange);
            }
            _ => assembly.push(SheetStep::TightenSnug),
        }
        let is_cut = cut.is_some();
        if plan.method == CutMethod::AtFitUp {
            assembly.extend(cut);
        }
        if locking == Some(Locking::Slotted) {
            assembly.extend(is_cut.then_some(SheetStep::DrillAfterCut));
            assembly.push(match check.preload {
                Some(_) => SheetStep::FitPin,
                None => SheetStep::FitPinByHand,
            });
        }
        let pitch = thread.pitch();
        let protrusion = match joint.stack.tapped_part() {
            Some(part) => SheetStep::Engagement {
                least: part.engagement.unwrap_or_default(),
                depth: part.depth,
            },
            None => SheetStep::Protrusion {
                least: joint.rules.least_protrusion_pitches() * pitch,
                most: joint.rules.protrusion_max_pitches.map(|most| most * pitch),
            },
        };
        assembly.push(protrusion.clone());
        // Without a torque there is none to mark after, to check or to lose.
        if check.preload.is_some() {
            assembly.push(if joint.nut.is_some() {
                SheetStep::WitnessMark
            } else {
                SheetStep::WitnessMarkAtHead
            });
        }
        let mut inspection = preload_inspection(check)?;
        inspection.push(protrusion);
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
    /// # use shankline::joint::{Joint, Verdict, Sheet, tightening_order};
    /// # use shankline::strength::group::BoltPattern;
    /// fn sheet(joint: &Joint, check: &Verdict, group: &BoltPattern) -> Result<Sheet, shankline::Error> {
    ///     Ok(Sheet::new(joint, check)?.for_group(tightening_order(group)))
    /// }
    /// ```
    #[must_use]
    pub fn for_group(mut self, order: TighteningOrder) -> Self {
        let tightening =
            |step: &SheetStep| matches!(step, SheetStep::Tighten { .. } | SheetStep::TightenSnug);
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

/// What a mark shows of the preload, if there is one.
fn preload_inspection(check: &Verdict) -> Result<Vec<SheetStep>, Error> {
    let Some(preload) = check.preload else {
        return Ok(Vec::new());
    };
    let mut steps = Vec::from([SheetStep::FirstLook, SheetStep::MovedMark]);
    if let Some(springs) = preload.springs {
        let loosened = springs.loosened(preload.preload.nominal, MARK)?;
        steps.push(SheetStep::MarkMeans { loosened });
    }
    if preload.settling_loss > Force::default() {
        let loss = preload.settling_loss;
        steps.push(SheetStep::Settling { loss });
    }
    steps.extend([SheetStep::MarkShowsRotationOnly, SheetStep::Retorque]);
    Ok(steps)
}

/// A length as its product is sold: `4 in`, `80 mm`.
fn length_name(length: Length, inch: bool) -> String {
    match crate::units::inch_fraction(length).filter(|_| inch) {
        Some(fraction) => format!("{fraction} in"),
        None if inch => format!("{}", shown(length, UnitSystem::UsCustomary)),
        None => format!("{:.0}", shown(length, UnitSystem::Si)),
    }
}
