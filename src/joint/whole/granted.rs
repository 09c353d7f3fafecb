//! What a builder takes for granted, so that the answer can say it.

use alloc::{string::String, vec::Vec};
use core::fmt;

/// What nobody said and a [`JointBuilder`](super::JointBuilder) filled in.
///
/// ```
/// use shankline::joint::{Fact, Granted};
/// let granted = Granted::new(Fact::Grade, "SAE J429 grade 5");
/// assert_eq!(granted.to_string(), "grade of the bolt: SAE J429 grade 5");
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Granted {
    /// What.
    pub fact: Fact,
    /// What was taken, in words.
    pub value: String,
    /// The plies it was taken for, if it is no matter of the whole joint: counted from 1 at the head.
    #[cfg_attr(
        feature = "serde",
        serde(default, skip_serializing_if = "Vec::is_empty")
    )]
    pub plies: Vec<usize>,
}

impl Granted {
    /// A fact and what was taken for it.
    ///
    /// ```
    /// use shankline::joint::{Fact, Granted};
    /// assert_eq!(Granted::new(Fact::Nut, "ISO 4032").fact, Fact::Nut);
    /// ```
    #[must_use]
    pub fn new(fact: Fact, value: impl Into<String>) -> Self {
        Self {
            fact,
            value: value.into(),
            plies: Vec::new(),
        }
    }
}

impl fmt::Display for Granted {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.fact, self.value)
    }
}

/// A fact that can be taken for granted.
///
/// ```
/// use shankline::joint::Fact;
/// assert_eq!(Fact::Tightening.to_string(), "tightening");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Fact {
    /// The product standard of the bolt.
    Product,
    /// The grade of the bolt.
    Grade,
    /// The coating of the bolt.
    BoltFinish,
    /// The style of the nut.
    Nut,
    /// The grade of the nut.
    NutGrade,
    /// The coating of the nut.
    NutFinish,
    /// The washers.
    Washers,
    /// The holes of the plies that have none.
    Holes,
    /// Where the load across cuts the bolt.
    ShearPlanes,
    /// How many bolts there are.
    Pattern,
    /// Whether the load repeats.
    Repeats,
    /// The shock factor.
    Shock,
    /// The temperatures.
    Temperature,
    /// Dry or wet.
    Exposure,
    /// Whether it is shaken, turns, endangers anybody, or is taken apart.
    Surroundings,
    /// How the bolt is tightened.
    Tightening,
    /// The rules for the length.
    Rules,
    /// The methods of the check.
    Methods,
}

impl fmt::Display for Fact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Product => "bolt",
            Self::Grade => "grade of the bolt",
            Self::BoltFinish => "coating of the bolt",
            Self::Nut => "nut",
            Self::NutGrade => "grade of the nut",
            Self::NutFinish => "coating of the nut",
            Self::Washers => "washers",
            Self::Holes => "holes",
            Self::ShearPlanes => "shear planes",
            Self::Pattern => "bolts",
            Self::Repeats => "load",
            Self::Shock => "shock",
            Self::Temperature => "temperature",
            Self::Exposure => "exposure",
            Self::Surroundings => "surroundings",
            Self::Tightening => "tightening",
            Self::Rules => "rules for the length",
            Self::Methods => "methods",
        })
    }
}
