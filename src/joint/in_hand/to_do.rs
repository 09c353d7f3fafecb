//! What to do with a bolt in the hand.

use alloc::{format, string::String, vec::Vec};

use super::WantedBolt;
use crate::joint::{Candidate, Cut, Reason};
use crate::units::{Length, UnitSystem, shown};

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
    pub(super) fn list(candidate: &Candidate, wanted: &WantedBolt) -> Vec<Self> {
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
