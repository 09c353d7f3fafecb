//! What to do with a bolt in the hand.

use alloc::{format, string::String, vec::Vec};
use core::fmt;

use super::WantedBolt;
use crate::joint::{Candidate, Cut, CutRule, LengthRules, Reason, Stack};
use crate::units::{Length, SAME_LENGTH, UnitSystem, shown};

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
    /// Measure the stack in hand and cut the screw so much longer than it: no fixed length both fills the
    /// wanted engagement of a tapped part and keeps from the end of its thread.
    CutToMeasuredStack {
        /// From where the thread of the tapped part begins to the mark.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        beyond: Length,
    },
    /// It is too long, and the cut that the rules permit is not exact enough for what is wanted: take
    /// another length, or have it cut more exactly.
    CutMoreExactly {
        /// How exact a cut must be, either way.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        within: Length,
    },
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
            serde(serialize_with = "crate::units::quantity::round")
        )]
        by: Length,
    },
    /// Take a longer bolt.
    LongerBolt {
        /// By at least so much.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        by: Length,
    },
    /// Take a bolt whose thread begins nearer to the head: a shorter one, or one with more thread.
    ThreadNearerHead {
        /// By at least so much.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
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
    /// Change the rules or the parts: what they ask for contradicts itself, whatever the bolt measures.
    NoBolt {
        /// Why no bolt of the thread will do.
        because: Contradiction,
    },
    /// Take a shorter bolt.
    ShorterBolt {
        /// By at least so much.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        by: Length,
    },
}

/// Why no bolt of a thread will do, with any permitted number of washers. `Display` writes it as a sentence.
///
/// ```
/// use shankline::joint::Contradiction;
/// assert!(Contradiction::Protrusion.to_string().contains("must not be cut"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Contradiction {
    /// More clear thread is asked for than all that is clamped is thick.
    ClearThreads,
    /// The thread must begin nearer to the head than it may for the holes.
    ThreadInHoles,
    /// What is clamped varies by more than the end of the bolt may stick out, and nothing may be cut.
    Protrusion,
}

impl fmt::Display for Contradiction {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::ClearThreads => {
                "more clear thread is asked for than all that is clamped is thick"
            }
            Self::ThreadInHoles => {
                "for the nut its thread must begin nearer to the head than the thread in the holes permits"
            }
            Self::Protrusion => {
                "what is clamped varies by more than the end may stick out, and it must not be cut"
            }
        })
    }
}

impl ToDo {
    pub(super) fn list(
        candidate: &Candidate,
        wanted: &WantedBolt,
        stack: &Stack,
        rules: &LengthRules,
    ) -> Vec<Self> {
        let mut list = Vec::new();
        let is_too_long = |reason: &Reason| matches!(reason, Reason::TooLong { .. });
        let too_long = candidate.reasons().any(is_too_long);
        for reason in candidate.reasons() {
            match *reason {
                Reason::TooShort { by } => list.push(Self::LongerBolt { by }),
                // A thread that begins nearer to the head, asked for already, makes do without them.
                Reason::WashersMakeItShort { .. } => {}
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
                    // Nobody stacks more than a handful, nor any that make the bolt too short.
                    let helps = |count: &usize| {
                        let left = candidate.protrusion.min - stack.nut_washers(*count).max;
                        *count <= 5 && left >= wanted.protrusion_min - SAME_LENGTH
                    };
                    match washers_needed.filter(helps) {
                        Some(count) if count <= washers_permitted && !too_long => {
                            list.push(Self::AddWashers { count });
                        }
                        helping => {
                            list.push(Self::thread_nearer_head(candidate, wanted));
                            if let Some(count) = helping.filter(|&count| count > washers_permitted)
                            {
                                list.push(Self::PermitWashers {
                                    count,
                                    permitted: washers_permitted,
                                });
                            }
                        }
                    }
                }
                Reason::RunOutMeetsThread { .. } => {
                    list.push(Self::thread_nearer_head(candidate, wanted));
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
            list.push(fixed.map_or_else(|| Self::cut_by_stack(wanted, rules), Self::Cut));
        }
        let in_run_out = candidate.planes_in_run_out;
        let planes = in_run_out.saturating_add(candidate.planes_in_thread);
        if planes > 0 {
            list.push(Self::CountAsThread { planes });
        }
        list
    }

    /// The clear threads asked for included.
    fn thread_nearer_head(candidate: &Candidate, wanted: &WantedBolt) -> Self {
        let start = candidate.screw.grip_gaging_length_max;
        Self::ThreadNearerHead {
            by: start - wanted.thread_start_max,
        }
    }

    /// The cut where no fixed length does.
    fn cut_by_stack(wanted: &WantedBolt, rules: &LengthRules) -> Self {
        let tolerance = match rules.cut {
            CutRule::Allowed { tolerance, .. } => tolerance,
            CutRule::Never => Length::default(),
        };
        let window = wanted
            .protrusion_max
            .map(|most| most - wanted.protrusion_min);
        match window.map(|window| 0.5 * window) {
            Some(within) if tolerance > within + SAME_LENGTH => Self::CutMoreExactly { within },
            _ if wanted.ends_in_tapped_part => Self::CutToMeasuredStack {
                beyond: wanted.nut_height.max + wanted.protrusion_min + tolerance,
            },
            _ => Self::CutAtFitUp,
        }
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
        // Rounded up: so much more, or less, is enough.
        let enough = |by: Length| shown(by, system).rounded_up();
        match self {
            Self::AddWashers { count } => {
                format!("put {count} more washer{} under the nut", plural(*count))
            }
            Self::AddWashersUnderHead { count } => {
                format!("put {count} more washer{} under the head", plural(*count))
            }
            Self::LongerShank { by } => {
                format!("take a bolt with at least {} more plain shank", enough(*by))
            }
            Self::Cut(cut) => format!(
                "cut it to {} from under the head: {} comes off",
                shown(cut.length, system),
                shown(cut.removed, system)
            ),
            Self::CutAtFitUp => "fit it, then mark and cut it to the stack in hand".into(),
            Self::CutToMeasuredStack { beyond } => format!(
                "measure from under the head to where the tapped thread begins, and cut it {} longer",
                shown(*beyond, system)
            ),
            Self::CutMoreExactly { within } => format!(
                "take another length, or have it cut to the stack in hand within {} either way",
                shown(*within, system).rounded_down()
            ),
            Self::CountAsThread { planes } => format!(
                "reckon {planes} shear plane{} with the thread area: not on guaranteed shank",
                plural(*planes)
            ),
            Self::LongerBolt { by } => {
                format!("take a bolt at least {} longer", enough(*by))
            }
            Self::ThreadNearerHead { by } => format!(
                "take a bolt whose thread begins at least {} nearer to the head",
                enough(*by)
            ),
            Self::PermitWashers { count, permitted } => format!(
                "or put {count} more washer{} under the nut ({permitted} more permitted)",
                plural(*count)
            ),
            Self::NoBolt { because } => format!("no bolt of this thread will do: {because}"),
            Self::ShorterBolt { by } => {
                format!("take a bolt at least {} shorter", enough(*by))
            }
        }
    }
}
