//! What the workshop builds from, and what the inspector looks at later.

use alloc::{format, string::String, vec::Vec};
use core::fmt;

use super::{Joint, JointCheck};
use crate::error::Error;
use crate::joint::{CutMethod, CutPlan, NutEnd, TighteningOrder};
use crate::parts::{Locking, Nut};
use crate::preload::Loosened;
use crate::spread::Spread;
use crate::units::{Angle, Force, Length, Torque, UnitSystem, degrees, shown};

/// A mark that moved so far is plain to see: common practice, no source.
const MARK: Angle = degrees(10.0);

/// Steps for the workshop and for the inspector.
///
/// ```
/// use shankline::joint::{Joint, JointCheck, Sheet};
/// use shankline::units::UnitSystem;
/// fn print(joint: &Joint, check: &JointCheck) -> Result<(), shankline::Error> {
///     let sheet = Sheet::new(joint, check)?;
///     println!("{}", sheet.render(UnitSystem::Si));
///     Ok(())
/// }
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
        /// Nut.
        nut: String,
        /// Washers under the head.
        washers_under_head: usize,
        /// Washers under the nut.
        washers_under_nut: usize,
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
    /// The tightening is nobody's: say so.
    TightenSnug,
    /// A wrench of the right size.
    WrenchRange,
    /// Line up the slots of a slotted nut and fit the pin.
    FitPin,
    /// Mark nut, bolt end and ply.
    WitnessMark,
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
    /// # use shankline::joint::{Joint, JointCheck, Sheet};
    /// fn steps(joint: &Joint, check: &JointCheck) -> Result<usize, shankline::Error> {
    ///     Ok(Sheet::new(joint, check)?.assembly.len())
    /// }
    /// ```
    pub fn new(joint: &Joint, check: &JointCheck) -> Result<Self, Error> {
        let thread = joint.bolt.thread;
        let nut = Nut::find(joint.nut.style, &thread)?;
        let candidate = &check.candidate;
        let locking = joint.nut.style.locking();
        let mut assembly = Vec::from([SheetStep::Parts {
            bolt: format!(
                "{thread} x {} {}, {}",
                length_name(candidate.screw.nominal, thread.is_unified()),
                joint.bolt.product,
                joint.bolt.grade
            ),
            nut: format!("{nut}"),
            washers_under_head: joint.stack.washers_under_head().len(),
            washers_under_nut: candidate.washers_under_nut,
        }]);
        let plan = CutPlan::new(candidate, &thread, NutEnd::of(nut)?, joint.rules)?;
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
            None if matches!(locking, Locking::Insert | Locking::AllMetal) => {
                assembly.push(SheetStep::AddRunningTorque);
            }
            None => {}
        }
        match (joint.tightening, check.preload) {
            (Some(tightening), Some(preload)) => {
                let k = tightening.nut_factor;
                assembly.push(SheetStep::Tighten {
                    torque: preload.torque,
                    preload: preload.preload,
                    nut_factor: [k.min(), k.nominal(), k.max()],
                });
                assembly.push(SheetStep::WrenchRange);
            }
            _ => assembly.push(SheetStep::TightenSnug),
        }
        if locking == Locking::Slotted {
            assembly.push(SheetStep::FitPin);
        }
        if plan.method == CutMethod::AtFitUp {
            assembly.extend(cut);
        }
        let pitch = thread.pitch();
        let protrusion = SheetStep::Protrusion {
            least: joint.rules.protrusion_min_pitches * pitch,
            most: joint.rules.protrusion_max_pitches.map(|most| most * pitch),
        };
        assembly.extend([protrusion.clone(), SheetStep::WitnessMark]);
        let mut inspection = Vec::from([SheetStep::FirstLook, SheetStep::MovedMark]);
        if let Some(preload) = check.preload {
            if let Some(springs) = joint.springs(joint.load_share(candidate)?)? {
                let loosened = springs.loosened(preload.preload.nominal, MARK)?;
                inspection.push(SheetStep::MarkMeans { loosened });
            }
            if preload.settling_loss > Force::default() {
                let loss = preload.settling_loss;
                inspection.push(SheetStep::Settling { loss });
            }
        }
        inspection.extend([
            SheetStep::MarkShowsRotationOnly,
            SheetStep::Retorque,
            protrusion,
            SheetStep::UsedNut { locking },
            SheetStep::LookAround,
        ]);
        Ok(Self {
            assembly,
            inspection,
        })
    }

    /// The sheet for a group of such bolts: their order comes before the tightening.
    ///
    /// ```
    /// # use shankline::joint::{Joint, JointCheck, Sheet, tightening_order};
    /// # use shankline::strength::group::BoltPattern;
    /// fn sheet(joint: &Joint, check: &JointCheck, group: &BoltPattern) -> Result<Sheet, shankline::Error> {
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

    /// The sheet as text, with boxes to tick.
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

impl SheetStep {
    /// The step for a person.
    ///
    /// ```
    /// use shankline::joint::SheetStep;
    /// use shankline::units::UnitSystem;
    /// assert!(SheetStep::Retorque.text(UnitSystem::Si).contains("quarter turn"));
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        let fixed = match self {
            Self::Parts {
                bolt,
                nut,
                washers_under_head,
                washers_under_nut,
            } => {
                return format!(
                    "Bolt {bolt}; nut {nut}; washers: {washers_under_head} under the head, \
                     {washers_under_nut} under the nut."
                );
            }
            Self::Cut { method, mark } => {
                let mark = shown(*mark, system);
                return match method {
                    CutMethod::AtFitUp => format!(
                        "Mark the bolt {mark} past the face of the tightened nut; take it out, cut and \
                         dress it, and fit it again."
                    ),
                    _ => format!("Cut the bolt {mark} from under the head and dress its end."),
                };
            }
            Self::Tighten {
                torque,
                preload,
                nut_factor: [least, nominal, most],
            } => {
                return format!(
                    "Tighten to {}, for a nut factor of {nominal} ({least} to {most}): preload {}, from \
                     {} to {}. Another lubricant or finish needs another torque.",
                    shown(*torque, system),
                    shown(preload.nominal, system),
                    shown(preload.min, system),
                    shown(preload.max, system)
                );
            }
            Self::CheckRunningTorque { torque } => {
                return format!(
                    "Turn the lock nut on until its lock grips the bolt and read the running torque before \
                     it seats: the torque below has {} for it. Outside {} to {} take another nut.",
                    shown(torque.nominal, system),
                    shown(torque.min, system),
                    shown(torque.max, system)
                );
            }
            Self::Order(order) => return format!("Order: {order}."),
            Self::MarkMeans { loosened } => {
                return format!(
                    "A mark that moved by {} has lost {} of {}; at {} nothing is left.",
                    shown(loosened.angle, system),
                    shown(loosened.lost, system),
                    shown(loosened.preload, system),
                    shown(loosened.angle_to_zero, system)
                );
            }
            Self::Settling { loss } => {
                return format!(
                    "Settling takes about {} of the preload, with the mark in line; the check has taken it \
                     off.",
                    shown(*loss, system)
                );
            }
            Self::Protrusion { least, most } => {
                let least = shown(*least, system);
                return match most {
                    Some(most) => format!(
                        "{least} to {} of the bolt shows past the nut.",
                        shown(*most, system)
                    ),
                    None => format!("At least {least} of the bolt shows past the nut."),
                };
            }
            Self::UsedNut { locking } => match locking {
                Locking::Insert | Locking::AllMetal => {
                    "Measure the running torque of a used lock nut before it seats; below the least one \
                     it is thrown away. In critical places always take a new one."
                }
                Locking::Slotted => "Take a new cotter pin each time.",
                Locking::None | Locking::Serrated => {
                    "Look at the threads and faces of a used nut; take a new one where they are marked."
                }
            },
            Self::AddRunningTorque => {
                "Turn the lock nut on until its lock grips the bolt; read the running torque before it \
                 seats, and add it to the torque below."
            }
            Self::TightenSnug => {
                "No tightening is specified: nothing here counts on preload. Ask the designer."
            }
            Self::WrenchRange => "Use a torque wrench above 20 % of its full scale.",
            Self::FitPin => {
                "Begin at the low end of the torque and go on until slot and hole meet; never beyond the \
                 high end: change the washer instead. Fit a new cotter pin."
            }
            Self::WitnessMark => {
                "Draw a witness mark across bolt end, nut and ply after the final torque."
            }
            Self::FirstLook => {
                "Look at the marks, and check the torque, after the first hours under load."
            }
            Self::MovedMark => {
                "A broken or offset mark means the nut or the bolt has turned and preload is lost: find \
                 out why, tighten again, and mark again."
            }
            Self::MarkShowsRotationOnly => {
                "A whole mark shows only that nothing has turned: preload lost to embedding, paint or creep leaves it \
                 whole."
            }
            Self::Retorque => {
                "To check the torque, slacken by a quarter turn and tighten to the value again."
            }
            Self::LookAround => {
                "Look for rust, cracked paint at the ply edges, elongated holes, bent bolts and missing \
                 washers."
            }
        };
        fixed.into()
    }

    /// Who says so.
    ///
    /// ```
    /// use shankline::joint::SheetStep;
    /// assert_eq!(SheetStep::AddRunningTorque.source(), "FAA AC 43.13-1B 7-40");
    /// ```
    #[must_use]
    pub const fn source(&self) -> &'static str {
        match self {
            Self::Parts { .. } | Self::Cut { .. } | Self::Protrusion { .. } => {
                "length selection under the rules of this joint"
            }
            Self::Tighten { .. } => "T = K F d with the nut factor of this joint",
            Self::Order(order) => order.rule.source(),
            Self::MarkMeans { .. } | Self::Settling { .. } => {
                "bolt and plies as two springs, stiffness of this joint"
            }
            Self::AddRunningTorque | Self::CheckRunningTorque { .. } => "FAA AC 43.13-1B 7-40",
            Self::WrenchRange => "a university's torquing procedure for space hardware",
            Self::FitPin => "helicopter maintenance manual, section 20-70",
            Self::WitnessMark => "an aerospace worker's account",
            Self::MovedMark => "a maker's inspection guide",
            Self::Retorque => "a maker's service manual, 1996",
            Self::UsedNut { locking } => match locking {
                Locking::Insert | Locking::AllMetal => {
                    "FAA AC 43.13-1B Table 7-2; NAVEDTRA 14014 for critical places"
                }
                Locking::Slotted => "helicopter maintenance manual, section 20-70",
                Locking::None | Locking::Serrated => "common practice, no source",
            },
            Self::TightenSnug
            | Self::FirstLook
            | Self::MarkShowsRotationOnly
            | Self::LookAround => "common practice, no source",
        }
    }
}

/// A length as its product is sold: `4 in`, `80 mm`.
fn length_name(length: Length, inch: bool) -> String {
    match crate::units::inch_fraction(length).filter(|_| inch) {
        Some(fraction) => format!("{fraction} in"),
        None if inch => format!("{}", shown(length, UnitSystem::UsCustomary)),
        None => format!("{:.0}", shown(length, UnitSystem::Si)),
    }
}
