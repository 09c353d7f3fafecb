//! Why combinations are turned down or ruled out.

use alloc::{format, string::String, vec::Vec};
use core::cmp::Ordering;

use super::{DesignChoice, order};
use crate::error::Error;
use crate::joint::{Finding, Missing};
use crate::material::BoltGrade;
use crate::parts::{NutStyle, ScrewProduct, WasherStyle};
use crate::strength::check::Check;
use crate::thread::Thread;
use crate::units::{Length, Ratio, UnitSystem};

/// A combination that does not hold, or is undecided, with the length that comes nearest.
///
/// ```
/// use shankline::joint::TurnedDown;
/// use shankline::units::UnitSystem;
/// fn print(other: &TurnedDown) {
///     for reason in &other.reasons {
///         println!("{}", reason.text(UnitSystem::Si));
///     }
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct TurnedDown {
    /// The parts. The length is the one with the fewest reasons against it, and of those the one least
    /// overloaded, among the lengths that were checked: where a reason holds for every length, the first.
    pub choice: DesignChoice,
    /// All reasons, overloads first, the worst of them first.
    pub reasons: Vec<TurnedDownReason>,
}

impl TurnedDown {
    /// The highest utilisation among the reasons.
    pub(super) fn worst(&self) -> f64 {
        self.reasons
            .iter()
            .map(|reason| match reason {
                TurnedDownReason::Overloaded(check)
                | TurnedDownReason::AboveLimit { check, .. } => check.utilisation.value,
                _ => 0.0,
            })
            .fold(0.0, f64::max)
    }

    /// The least bad first; total.
    pub(super) fn compare(&self, other: &Self) -> Ordering {
        self.reasons
            .len()
            .cmp(&other.reasons.len())
            .then(self.worst().total_cmp(&other.worst()))
            .then_with(|| order::choices(&self.choice, &other.choice))
    }
}

/// Why a combination is turned down.
///
/// ```
/// use shankline::joint::{NutReason, Finding, TurnedDownReason};
/// use shankline::units::UnitSystem;
/// let reason = TurnedDownReason::Fault(Finding::Nut(NutReason::SpinsFree));
/// assert!(reason.text(UnitSystem::Si).starts_with("nut: nothing but preload holds it"));
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum TurnedDownReason {
    /// A load is more than its resistance.
    Overloaded(Check),
    /// A load uses more of its resistance than the space permits.
    AboveLimit {
        /// The check.
        check: Check,
        /// What is permitted.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_ratio")
        )]
        limit: Ratio,
    },
    /// Something found forbids it: of the length, the nut, a distance, the temperature.
    Fault(Finding),
    /// A mode that is concerned could not be checked, and the caller has not
    /// [set it aside](crate::joint::SetAside): what is undecided is not proposed.
    Undecided(Missing),
    /// The methods do not apply to these parts.
    NotCheckable(Error),
}

impl TurnedDownReason {
    /// One line for a person.
    ///
    /// ```
    /// use shankline::joint::{Finding, TurnedDownReason};
    /// use shankline::units::{UnitSystem, celsius};
    /// let reason = TurnedDownReason::Fault(Finding::BoltTooHot { limit: celsius(150.0) });
    /// assert_eq!(reason.text(UnitSystem::Si), "the bolt is specified up to 150 °C only");
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        match self {
            Self::Overloaded(check) => format!(
                "{check}: {} on {}",
                check.demand.shown(system),
                check.resistance.shown(system)
            ),
            Self::AboveLimit { check, limit } => {
                format!("{check}, above {:.1} %", limit.value * 100.0)
            }
            Self::Fault(finding) => finding.text(system),
            Self::Undecided(missing) => format!("undecided: {missing}"),
            Self::NotCheckable(error) => format!("cannot be checked: {error}"),
        }
    }
}

/// Combinations that were not checked, because of something that they have in common.
///
/// ```
/// use shankline::joint::RuledOut;
/// fn print(group: &RuledOut) {
///     println!("{} combinations with {}: {}", group.combinations, group.thread, group.reason);
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct RuledOut {
    /// Their thread.
    pub thread: Thread,
    /// What rules them out.
    pub reason: RuledOutReason,
    /// How many they are. A combination with several reasons is counted with the first: holes, washers,
    /// product, nut, grade, grade in the product, stock.
    pub combinations: usize,
}

/// Why combinations cannot be put together. `Display` writes a sentence.
///
/// ```
/// use shankline::joint::RuledOutReason;
/// use shankline::material::SaeGrade;
/// use shankline::parts::ScrewProduct;
/// let reason = RuledOutReason::GradeOfOtherProduct {
///     product: ScrewProduct::Iso4014,
///     grade: SaeGrade::Grade8.into(),
/// };
/// assert_eq!(reason.to_string(), "hexagon bolt ISO 4014 is not made in SAE J429 grade 8");
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum RuledOutReason {
    /// The table has no hole for the thread.
    NoHole {
        /// What the table says.
        error: Error,
    },
    /// The thread does not pass through a hole that is kept.
    HoleTooSmall {
        /// Ply, counted from 1 at the head.
        ply: usize,
        /// Its hole.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        hole: Length,
    },
    /// A hole that is kept is larger than a loose clearance hole for the thread.
    HoleTooLarge {
        /// Ply, counted from 1 at the head.
        ply: usize,
        /// Its hole.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        hole: Length,
        /// The loose clearance hole.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        largest: Length,
    },
    /// There is no such washer, or its thickness is not known.
    NoWasher {
        /// Its style.
        style: WasherStyle,
        /// What the tables say.
        error: Error,
    },
    /// There is no such screw, or none of known lengths.
    NoScrew {
        /// The product.
        product: ScrewProduct,
        /// What the tables say.
        error: Error,
    },
    /// There is no such nut, its height is not known, or it does not come in the grade.
    NoNut {
        /// The nut.
        style: NutStyle,
        /// What the tables say.
        error: Error,
    },
    /// The grade is not made in the size.
    NoGrade {
        /// The grade.
        grade: BoltGrade,
        /// What the tables say.
        error: Error,
    },
    /// The product is not made in the grade.
    GradeOfOtherProduct {
        /// The product.
        product: ScrewProduct,
        /// The grade.
        grade: BoltGrade,
    },
    /// Too few are on hand in any length.
    NotOnHand {
        /// The product.
        product: ScrewProduct,
        /// The grade.
        grade: BoltGrade,
    },
}

impl core::fmt::Display for RuledOutReason {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        use crate::error::Amount;
        match self {
            Self::NoHole { error }
            | Self::NoWasher { error, .. }
            | Self::NoScrew { error, .. }
            | Self::NoNut { error, .. }
            | Self::NoGrade { error, .. } => error.fmt(f),
            Self::HoleTooSmall { ply, hole } => write!(
                f,
                "it does not pass the hole of {} in ply {ply}",
                Amount::from(*hole)
            ),
            Self::HoleTooLarge { ply, hole, largest } => write!(
                f,
                "the hole of {} in ply {ply} is too large, a loose one is {}",
                Amount::from(*hole),
                Amount::from(*largest)
            ),
            Self::GradeOfOtherProduct { product, grade } => {
                write!(f, "{product} is not made in {grade}")
            }
            Self::NotOnHand { product, grade } => {
                write!(f, "too few {product} in {grade} are on hand")
            }
        }
    }
}
