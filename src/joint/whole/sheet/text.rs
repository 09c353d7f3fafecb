//! Steps of a sheet in words.

use crate::source::Method;
use crate::tables::methods;
use alloc::{format, string::String, vec::Vec};

use super::{SheetStep, SheetWasher};
use crate::joint::Word;
use crate::parts::Locking;
use crate::units::{Length, UnitSystem, shown};

impl SheetStep {
    /// The step for a person. Figures are what a wrench or a rule can be set to: torques and preloads have three
    /// digits, a preload that must be reached is rounded up and one that must not be passed as well.
    ///
    /// ```
    /// use shankline::joint::SheetStep;
    /// use shankline::units::UnitSystem;
    /// assert!(SheetStep::Retorque.text(UnitSystem::Si).starts_with("To check the torque, one bolt at a time"));
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        self.of_parts(system)
            .or_else(|| self.of_tightening(system))
            .or_else(|| self.of_inspection(system))
            .unwrap_or_else(|| self.words().into())
    }

    /// The text of a step about parts and their sizes.
    fn of_parts(&self, system: UnitSystem) -> Option<String> {
        Some(match self {
            Self::DoNotBuild { word } => match word {
                Word::DoesNotHold => {
                    "DO NOT BUILD: the joint does not hold. What follows is for the discussion only."
                        .into()
                }
                _ => {
                    "DO NOT BUILD YET: the joint is undecided, something that matters could not be checked."
                        .into()
                }
            },
            Self::Side { head, end, tapped } => {
                if *tapped {
                    format!(
                        "Put the screw in from the side of \"{head}\", into the thread of \"{end}\"."
                    )
                } else {
                    format!(
                        "Put the bolt in from the side of \"{head}\", with the nut at \"{end}\": from the other side \
                         the thread may lie in a shear plane."
                    )
                }
            }
            Self::Parts {
                bolt,
                nut,
                washers_under_head,
                washers_under_nut,
            } => {
                let at_head = washers(washers_under_head, system);
                match nut {
                    None => format!("Bolt {bolt}; under the head: {at_head}."),
                    Some(nut) => format!(
                        "Bolt {bolt}; nut {nut}; under the head: {at_head}; under the nut: {}.",
                        washers(washers_under_nut, system)
                    ),
                }
            }
            Self::FitUp { mark, plain_nut } => {
                let mark = shown(*mark, system);
                let nut = if *plain_nut {
                    "a plain nut in place of the lock nut, which is kept for the end"
                } else {
                    "its nut"
                };
                format!(
                    "Put it together with {nut}, pull it up until the plies touch, mark the bolt {mark} past the face \
                     of the nut, and take it out."
                )
            }
            Self::Cut { mark: Some(mark) } => format!(
                "Cut the bolt {} from under the head and dress its end, before it is tightened for good.",
                shown(*mark, system)
            ),
            Self::Cut { mark: None } => {
                "Cut the bolt at the mark and dress its end, before it is tightened for good.".into()
            }
            Self::Engagement { least, depth } => {
                let least = shown(*least, system).rounded_up();
                match depth {
                    Some(depth) => format!(
                        "The screw fills at least {least} of the {} of thread, and does not meet its end: \
                         measure the depth of the hole.",
                        shown(*depth, system)
                    ),
                    None => format!("The screw fills at least {least} of the thread."),
                }
            }
            Self::Protrusion { least, most, pitch } => {
                let threads = |length: &Length| {
                    let count = (*length / *pitch).value;
                    let count = format!("{count:.1}");
                    let count = count.strip_suffix(".0").unwrap_or(&count);
                    if count == "1" {
                        format!("{count} thread")
                    } else {
                        format!("{count} threads")
                    }
                };
                let from = shown(*least, system).rounded_up();
                let from_threads = threads(least);
                match most {
                    Some(most) => format!(
                        "The bolt sticks out of the nut by {from} to {} ({from_threads} to {}).",
                        shown(*most, system).rounded_down(),
                        threads(most)
                    ),
                    None => format!(
                        "The bolt sticks out of the nut by at least {from} ({from_threads})."
                    ),
                }
            }
            _ => return None,
        })
    }

    /// The text of a step about torque.
    fn of_tightening(&self, system: UnitSystem) -> Option<String> {
        Some(match self {
            Self::Tighten {
                torque,
                preload,
                nut_factor: [least, nominal, most],
                nut_is_turned,
            } => {
                let turn = if *nut_is_turned {
                    "Turn the nut and hold the head. "
                } else {
                    ""
                };
                format!(
                    "{turn}Tighten to {}, for a nut factor of {nominal} ({least} to {most}): preload about {}, from \
                     {} to {}. Another lubricant or finish needs another torque.",
                    shown(*torque, system).figures(3),
                    shown(preload.nominal, system).figures(3),
                    shown(preload.min, system).figures(3).rounded_down(),
                    shown(preload.max, system).figures(3).rounded_up()
                )
            }
            Self::CheckRunningTorque { torque } => {
                format!(
                    "Turn the lock nut on until its lock grips the bolt and read the running torque before \
                     it seats: the torque below has {} for it. Outside {} to {} take another nut.",
                    shown(torque.nominal, system).figures(3),
                    shown(torque.min, system).figures(3),
                    shown(torque.max, system).figures(3)
                )
            }
            Self::Order(order) => format!("Order: {order}."),
            _ => return None,
        })
    }

    /// The text of a step for the inspector that has values in it.
    fn of_inspection(&self, system: UnitSystem) -> Option<String> {
        Some(match self {
            Self::MarkMeans { loosened } => {
                format!(
                    "A mark that moved by {:.0} has lost about {} of {}; at about {:.0} nothing is left.",
                    shown(loosened.angle, system),
                    shown(loosened.lost, system).figures(2),
                    shown(loosened.preload, system).figures(2),
                    shown(loosened.angle_to_zero, system)
                )
            }
            Self::Settling { loss } => {
                format!(
                    "Settling takes about {} of the preload, with the mark in line; the check has taken it \
                     off.",
                    shown(*loss, system).figures(2)
                )
            }
            Self::Reuse(rule) => format!("Taken apart: {rule}."),
            _ => return None,
        })
    }

    /// The text of a step without values.
    #[allow(clippy::too_many_lines)] // a sentence for each
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
            Self::Faces { slip: false } => {
                "Clean the faces of the plies and what head, nut and washers sit on: no burrs, loose rust, grit or thick \
                 paint between them."
            }
            Self::Faces { slip: true } => {
                "The joint counts on friction: make the faces between the plies as the slip class of the design says, \
                 without oil, paint or grit that it does not allow, and have them looked at before they are closed."
            }
            Self::ProveTorque => {
                "Prove the torque on the day it is used, with three of these bolts, nuts and washers in a tension \
                 calibrator, and take what is found there for the torque below."
            }
            Self::InTwoRounds => {
                "Bring every bolt of the group up until the plies touch, from the stiffest part of the joint to its free \
                 edges; then to the torque in the same order; then go round once more, for the first ones have lost \
                 preload to the last."
            }
            Self::FirstLookAtMarks => "Look at the marks after the first hours under load.",
            Self::RetightenTimber => {
                "Timber shrinks as it dries: look for play after the first dry months, and tighten again until the \
                 members touch."
            }
            Self::CoatEnd => "Coat the cut end again against rust.",
            Self::AddRunningTorque => {
                "Turn nut or screw on until the lock grips the thread; read the running torque before it \
                 seats, and add it to the torque below."
            }
            Self::TightenSnug => {
                "Tighten with an ordinary wrench until the plies touch: nothing here counts on preload."
            }
            Self::TightenOverGap => {
                "Turn the nut or screw by hand until head and nut bear without play: the gap between the plies stays open, \
                 and must not be pulled together."
            }
            Self::AskForTightening => {
                "No tightening is specified: nothing here counts on preload. Ask the designer."
            }
            Self::WrenchRange => {
                "Use a torque wrench that has been calibrated, above 20 % of its full scale."
            }
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
                "A broken or offset mark means the nut or the bolt may have turned and preload may be lost: find \
                 out why, and have it tightened or replaced as below."
            }
            Self::MarkShowsRotationOnly => {
                "A whole mark shows only that nothing has turned: preload lost to embedding, paint or creep leaves it \
                 whole."
            }
            Self::Retorque => {
                "To check the torque, one bolt at a time and with the load off: slacken it, tighten it to the value \
                 again, and mark it again. What has lost its clamp meanwhile is held by the others alone."
            }
            Self::TorqueWithoutSlackening => {
                "Do not slacken it to check the torque: this bolt is not to be tightened twice. Turn it on, in the \
                 direction of tightening, and read the torque at which it begins to move; well below the value, \
                 replace bolt and nut."
            }
            Self::Glue => {
                "Clean both threads, wet them with the adhesive as its maker says, tighten before it sets, and let it \
                 cure before it is loaded."
            }
            Self::LeaveGlued => {
                "Do not turn the screw to check its torque: that breaks the cured adhesive. One whose mark has moved is \
                 taken out, cleaned and fitted with new adhesive."
            }
            Self::LookAround => {
                "Look for rust, cracked paint at the ply edges, elongated holes, bent bolts and missing \
                 washers."
            }
            // Those are written with their values.
            _ => "",
        }
    }

    /// Who says so: a document that a reader can find, or that it is common practice.
    ///
    /// ```
    /// use shankline::joint::SheetStep;
    /// assert_eq!(SheetStep::AddRunningTorque.source().citation, "FAA AC 43.13-1B 7-40");
    /// ```
    #[must_use]
    pub const fn source(&self) -> &'static Method {
        match self {
            Self::DoNotBuild { .. } | Self::Parts { .. } => methods::VERDICT_ON_THIS_JOINT,
            Self::Side { .. } | Self::FitUp { .. } | Self::Cut { .. } | Self::Engagement { .. } => {
                methods::LENGTH_SELECTION_UNDER_THE_RULES_OF_THIS_JOINT
            }
            Self::Protrusion { .. } => methods::LENGTH_SELECTION_LOCK,
            Self::Tighten { .. } => methods::TORQUE_OF_THIS_JOINT,
            Self::Order(order) => order.rule.source(),
            Self::MarkMeans { .. } | Self::Settling { .. } => {
                methods::BOLT_AND_PLIES_AS_TWO_SPRINGS_STIFFNESS_OF_THIS_JOINT
            }
            Self::AddRunningTorque | Self::CheckRunningTorque { .. } => {
                methods::FAA_AC_43_13_1B_7_40
            }
            Self::UsedNut {
                locking: Locking::Insert | Locking::AllMetal,
            } => methods::FAA_AC_43_13_1B_TABLE_7_2_NAVEDTRA_14014_FOR_CRITICAL_PLACES,
            Self::TorqueWithoutSlackening => methods::TIGHTENING_TWICE,
            Self::Faces { slip: true } => methods::FAYING_SURFACES,
            Self::ProveTorque => methods::RCSC_SPECIFICATION_7_AND_8_2_2_RECALLED,
            Self::InTwoRounds => methods::TWO_ROUNDS,
            Self::RetightenTimber => methods::EN_1995_1_1_10_4_3_RECALLED,
            Self::Reuse(_) => methods::NAMED_IN_THE_LINE,
            _ => methods::COMMON_PRACTICE,
        }
    }
}

/// "2 ISO 7089 washer, M16 (2.70 to 3.30 mm)" and so on; "none".
fn washers(washers: &[SheetWasher], system: UnitSystem) -> String {
    let each: Vec<String> = washers
        .iter()
        .map(|washer| {
            format!(
                "{} x {} ({} to {} thick)",
                washer.count,
                washer.name,
                shown(washer.thickness.min, system),
                shown(washer.thickness.max, system)
            )
        })
        .collect();
    if each.is_empty() {
        "no washer".into()
    } else {
        each.join(" and ")
    }
}
