//! Steps of a sheet in words.

use alloc::{format, string::String};

use super::SheetStep;
use crate::joint::CutMethod;
use crate::parts::Locking;
use crate::units::{UnitSystem, shown};

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
        self.with_values(system)
            .unwrap_or_else(|| self.words().into())
    }

    /// The text of a step that has values in it.
    fn with_values(&self, system: UnitSystem) -> Option<String> {
        Some(match self {
            Self::Parts {
                bolt,
                nut,
                washers_under_head,
                washers_under_nut,
            } => {
                let at_nut = washers_under_nut.map(|count| format!(", {count} under the nut"));
                format!(
                    "Bolt {bolt}; {nut}; washers: {washers_under_head} under the head{}.",
                    at_nut.unwrap_or_default()
                )
            }
            Self::Cut { method, mark } => {
                let mark = shown(*mark, system);
                match method {
                    CutMethod::AtFitUp => format!(
                        "Mark the bolt {mark} past the face of the tightened nut; take it out, cut and \
                         dress it, and fit it again."
                    ),
                    _ => format!("Cut the bolt {mark} from under the head and dress its end."),
                }
            }
            Self::Tighten {
                torque,
                preload,
                nut_factor: [least, nominal, most],
            } => {
                format!(
                    "Tighten to {}, for a nut factor of {nominal} ({least} to {most}): preload {}, from \
                     {} to {}. Another lubricant or finish needs another torque.",
                    shown(*torque, system),
                    shown(preload.nominal, system),
                    shown(preload.min, system),
                    shown(preload.max, system)
                )
            }
            Self::CheckRunningTorque { torque } => {
                format!(
                    "Turn the lock nut on until its lock grips the bolt and read the running torque before \
                     it seats: the torque below has {} for it. Outside {} to {} take another nut.",
                    shown(torque.nominal, system),
                    shown(torque.min, system),
                    shown(torque.max, system)
                )
            }
            Self::Order(order) => format!("Order: {order}."),
            Self::MarkMeans { loosened } => {
                format!(
                    "A mark that moved by {} has lost {} of {}; at {} nothing is left.",
                    shown(loosened.angle, system),
                    shown(loosened.lost, system),
                    shown(loosened.preload, system),
                    shown(loosened.angle_to_zero, system)
                )
            }
            Self::Settling { loss } => {
                format!(
                    "Settling takes about {} of the preload, with the mark in line; the check has taken it \
                     off.",
                    shown(*loss, system)
                )
            }
            Self::Engagement { least, depth } => {
                let least = shown(*least, system);
                match depth {
                    Some(depth) => format!(
                        "The screw fills at least {least} of the {} of thread, and does not meet its end: \
                         measure the depth of the hole.",
                        shown(*depth, system)
                    ),
                    None => format!("The screw fills at least {least} of the thread."),
                }
            }
            Self::Protrusion { least, most } => {
                let least = shown(*least, system);
                match most {
                    Some(most) => format!(
                        "{least} to {} of the bolt shows past the nut.",
                        shown(*most, system)
                    ),
                    None => format!("At least {least} of the bolt shows past the nut."),
                }
            }
            _ => return None,
        })
    }

    /// The text of a step without values.
    const fn words(&self) -> &'static str {
        match self {
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
            Self::DrillAfterCut => {
                "Drill the bolt for the pin after the cut; a bolt that came drilled must not be cut."
            }
            Self::FitPinByHand => {
                "Turn the nut until slot and hole meet, without clamping what must turn. Fit a new cotter pin."
            }
            Self::WitnessMark => {
                "Draw a witness mark across bolt end, nut and ply after the final torque."
            }
            Self::WitnessMarkAtHead => {
                "Draw a witness mark across the head and the ply under it after the final torque."
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
            // Those are written with their values.
            Self::Parts { .. }
            | Self::Cut { .. }
            | Self::Tighten { .. }
            | Self::CheckRunningTorque { .. }
            | Self::Order(_)
            | Self::MarkMeans { .. }
            | Self::Settling { .. }
            | Self::Engagement { .. }
            | Self::Protrusion { .. } => "",
        }
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
            Self::Parts { .. }
            | Self::Cut { .. }
            | Self::Engagement { .. }
            | Self::Protrusion { .. } => "length selection under the rules of this joint",
            Self::Tighten { .. } => "T = K F d with the nut factor of this joint",
            Self::Order(order) => order.rule.source(),
            Self::MarkMeans { .. } | Self::Settling { .. } => {
                "bolt and plies as two springs, stiffness of this joint"
            }
            Self::AddRunningTorque | Self::CheckRunningTorque { .. } => "FAA AC 43.13-1B 7-40",
            Self::WrenchRange => "a university's torquing procedure for space hardware",
            Self::FitPin => "helicopter maintenance manual, section 20-70",
            Self::WitnessMark | Self::WitnessMarkAtHead => "an aerospace worker's account",
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
            | Self::DrillAfterCut
            | Self::FitPinByHand
            | Self::FirstLook
            | Self::MarkShowsRotationOnly
            | Self::LookAround => "common practice, no source",
        }
    }
}
