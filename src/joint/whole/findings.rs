//! What a check of a joint finds besides numbers.

use alloc::{format, string::String};
use core::fmt;

use crate::joint::{NutReason, Reason};
use crate::strength::check::Mode;
use crate::strength::ply::DistanceKind;
use crate::units::{Length, Ratio, ThermodynamicTemperature, UnitSystem, shown};

/// Something found that is no comparison of a load with a resistance.
///
/// ```
/// use shankline::joint::{Finding, NutReason};
/// use shankline::units::UnitSystem;
/// let finding = Finding::Nut(NutReason::SpinsFree);
/// assert!(finding.is_fault());
/// assert!(finding.text(UnitSystem::Si).starts_with("nut: nothing but preload holds it"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Finding {
    /// Fault: why the length does not fit.
    Length(Reason),
    /// What speaks against, is asked for with, or speaks for the kind of nut.
    Nut(NutReason),
    /// Fault: the nut strips before the bolt breaks, which nobody would see coming.
    NutWeaker {
        /// Proof load of the nut over the breaking load of the bolt.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_ratio")
        )]
        ratio: Ratio,
    },
    /// Fault: the joint gets hotter than the bolt material is specified for.
    BoltTooHot {
        /// Highest temperature of its standard.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        limit: ThermodynamicTemperature,
    },
    /// Fault: the joint gets colder than the bolt material is specified for.
    BoltTooCold {
        /// Lowest temperature of its standard.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        limit: ThermodynamicTemperature,
    },
    /// Fault: a hole lies nearer to an edge or to the next hole than the code permits.
    ShortDistance {
        /// Ply, counted from 1 at the head.
        ply: usize,
        /// Which distance.
        kind: DistanceKind,
        /// What it is.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        distance: Length,
        /// What it must be at least.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        least: Length,
    },
    /// A shear plane is not on plain shank in the worst case. Capacities are those of the thread.
    PlaneInThread {
        /// The plane lies after this ply, counted from 1 at the head.
        after_ply: usize,
    },
    /// To do: washers to add under the nut.
    AddWashers {
        /// How many.
        count: usize,
    },
    /// To do: washers to add under the head.
    AddWashersUnderHead {
        /// How many.
        count: usize,
    },
    /// To do: the bolt is to be cut.
    Cut {
        /// To this length; none to cut it at fit-up, to the stack in hand.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_option")
        )]
        to: Option<Length>,
    },
}

impl Finding {
    /// Whether it forbids the joint as it is.
    ///
    /// ```
    /// use shankline::joint::Finding;
    /// assert!(!Finding::AddWashers { count: 1 }.is_fault());
    /// ```
    #[must_use]
    pub const fn is_fault(&self) -> bool {
        match self {
            Self::Length(_)
            | Self::NutWeaker { .. }
            | Self::ShortDistance { .. }
            | Self::BoltTooHot { .. }
            | Self::BoltTooCold { .. } => true,
            Self::Nut(reason) => reason.is_objection(),
            Self::PlaneInThread { .. }
            | Self::AddWashers { .. }
            | Self::AddWashersUnderHead { .. }
            | Self::Cut { .. } => false,
        }
    }

    /// One line for a person.
    ///
    /// ```
    /// use shankline::joint::Finding;
    /// use shankline::units::UnitSystem;
    /// let line = Finding::AddWashers { count: 2 }.text(UnitSystem::Si);
    /// assert_eq!(line, "add 2 washers under the nut");
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        match *self {
            Self::Length(reason) => format!("length: {}", reason.text(system)),
            Self::Nut(reason) => format!("nut: {reason}"),
            Self::NutWeaker { ratio } => format!(
                "the nut holds {:.0} % of the breaking load of the bolt: it strips first",
                ratio.value * 100.0
            ),
            Self::BoltTooHot { limit } => {
                format!("the bolt is specified up to {} only", shown(limit, system))
            }
            Self::BoltTooCold { limit } => {
                format!(
                    "the bolt is specified down to {} only",
                    shown(limit, system)
                )
            }
            Self::ShortDistance {
                ply,
                kind,
                distance,
                least,
            } => format!(
                "ply {ply}: {kind} {}, must be at least {}",
                shown(distance, system),
                shown(least, system)
            ),
            Self::PlaneInThread { after_ply } => format!(
                "the shear plane after ply {after_ply} may cut thread: its capacity is that of thread"
            ),
            Self::AddWashers { count: 1 } => "add 1 washer under the nut".into(),
            Self::AddWashers { count } => format!("add {count} washers under the nut"),
            Self::AddWashersUnderHead { count: 1 } => "add 1 washer under the head".into(),
            Self::AddWashersUnderHead { count } => format!("add {count} washers under the head"),
            Self::Cut { to: Some(length) } => format!("cut to {}", shown(length, system)),
            Self::Cut { to: None } => "mark and cut at fit-up, to the stack in hand".into(),
        }
    }
}

/// Something a check of a joint may be about.
///
/// ```
/// use shankline::joint::Subject;
/// assert_eq!(Subject::Corrosion.to_string(), "corrosion between unlike metals");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Subject {
    /// A mode of failure.
    Mode(Mode),
    /// Corrosion between bolt, nut and plies of unlike metals.
    Corrosion,
    /// Embrittlement of hard bolts by hydrogen of plating and pickling.
    Embrittlement,
}

impl fmt::Display for Subject {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Mode(mode) => mode.fmt(f),
            Self::Corrosion => f.pad("corrosion between unlike metals"),
            Self::Embrittlement => f.pad("hydrogen embrittlement of plated bolts"),
        }
    }
}

/// What was not checked, and why.
///
/// ```
/// use shankline::joint::NotChecked;
/// fn print(missing: &NotChecked) {
///     println!("{missing}");
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NotChecked {
    /// What.
    pub subject: Subject,
    /// Why.
    pub reason: &'static str,
}

impl fmt::Display for NotChecked {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.subject, self.reason)
    }
}
