//! The bolt and the nut of a joint, how many stand beside it, and what the verdict is to speak of.

use alloc::string::String;
use core::fmt;

use crate::error::{Allowed, Error, out_of_range};
use crate::joint::Finish;
use crate::material::{BoltGrade, NutGrade};
use crate::parts::{NutStyle, ScrewProduct};
use crate::strength::check::Mode;
use crate::thread::Thread;
use crate::units::Length;

/// The bolt of a [`Joint`](super::Joint).
///
/// ```
/// use shankline::joint::JointBolt;
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = JointBolt {
///     product: ScrewProduct::Iso4014,
///     thread: "M16".parse()?,
///     grade: BoltGrade::Iso(PropertyClass::Class8_8),
///     length: Some(millimetres(80.0)),
///     finish: None,
/// };
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct JointBolt {
    /// The product; [`ScrewProduct::Own`] for one that [`Joint::with_screw`](super::Joint::with_screw) describes.
    pub product: ScrewProduct,
    /// Its thread.
    pub thread: Thread,
    /// Its grade; [`BoltGrade::Stated`] for strengths that [`Joint::with_strength`](super::Joint::with_strength) describes.
    pub grade: BoltGrade,
    /// Its nominal length; none to have the best found of those in stock, or of those of one's own bolt.
    #[cfg_attr(
        feature = "serde",
        serde(default, with = "crate::units::quantity::option")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub length: Option<Length>,
    /// Its coating; none if nobody says.
    #[cfg_attr(feature = "serde", serde(default))]
    pub finish: Option<Finish>,
}

/// The nut of a [`Joint`](super::Joint).
///
/// ```
/// use shankline::joint::JointNut;
/// use shankline::prelude::*;
/// let nut = JointNut {
///     style: NutStyle::Iso4032,
///     grade: Some(NutGrade::Iso898_2Class8),
///     finish: None,
/// };
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct JointNut {
    /// Its style.
    pub style: NutStyle,
    /// Its grade; none if unknown.
    #[cfg_attr(feature = "serde", serde(default))]
    pub grade: Option<NutGrade>,
    /// Its coating; none if nobody says.
    #[cfg_attr(feature = "serde", serde(default))]
    pub finish: Option<Finish>,
}

/// How the bolts of the connection stand. Everything else in a [`Joint`](super::Joint) is of one of them: the
/// one that carries most.
///
/// ```
/// use shankline::joint::Pattern;
/// assert_eq!(Pattern::Rows { along: 3, across: 2 }.along(), 3);
/// assert_eq!(Pattern::Single.across(), 1);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Pattern {
    /// One bolt.
    Single,
    /// Rows and columns.
    Rows {
        /// How many stand behind each other, along the load.
        along: usize,
        /// How many stand beside each other, across the load.
        across: usize,
    },
}

impl Pattern {
    /// How many bolts stand behind each other, along the load.
    ///
    /// ```
    /// assert_eq!(shankline::joint::Pattern::Single.along(), 1);
    /// ```
    #[must_use]
    pub const fn along(self) -> usize {
        match self {
            Self::Single => 1,
            Self::Rows { along, .. } => along,
        }
    }

    /// How many bolts stand beside each other, across the load.
    ///
    /// ```
    /// assert_eq!(shankline::joint::Pattern::Single.across(), 1);
    /// ```
    #[must_use]
    pub const fn across(self) -> usize {
        match self {
            Self::Single => 1,
            Self::Rows { across, .. } => across,
        }
    }

    pub(super) fn validate(self) -> Result<(), Error> {
        const MOST: usize = 1000;
        for (name, count) in [
            ("bolts along the load", self.along()),
            ("bolts across the load", self.across()),
        ] {
            if !(1..=MOST).contains(&count) {
                let allowed = Allowed::FromTo(1_usize.into(), MOST.into());
                return Err(out_of_range(name, count, allowed));
            }
        }
        Ok(())
    }
}

/// What a verdict is to speak of.
///
/// ```
/// use shankline::joint::Scope;
/// use shankline::strength::check::Mode;
/// assert!(Scope::Bolt.covers(Mode::BoltShear));
/// assert!(!Scope::Bolt.covers(Mode::Bearing)); // the plies are not asked about
/// assert!(Scope::Joint.covers(Mode::Bearing));
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Scope {
    /// The bolt alone: its length and what it carries.
    Bolt,
    /// Bolt and nut, or tapped thread: tightening, stripping, locking as well.
    BoltAndNut,
    /// The whole joint: the plies as well.
    #[default]
    Joint,
}

impl Scope {
    /// Whether the mode belongs to it.
    ///
    /// ```
    /// use shankline::{joint::Scope, strength::check::Mode};
    /// assert!(Mode::ALL.iter().all(|mode| Scope::Joint.covers(*mode)));
    /// ```
    #[must_use]
    pub fn covers(self, mode: Mode) -> bool {
        Self::least(mode) <= self
    }

    /// The narrowest scope that a mode belongs to.
    const fn least(mode: Mode) -> Self {
        match mode {
            Mode::Loads
            | Mode::Length
            | Mode::BoltShear
            | Mode::BoltTension
            | Mode::BoltBending
            | Mode::Combined
            | Mode::BoltBearing
            | Mode::Fatigue => Self::Bolt,
            Mode::Temperature
            | Mode::Coating
            | Mode::Tightening
            | Mode::Preload
            | Mode::Pairing
            | Mode::Stripping
            | Mode::ThreadFit
            | Mode::Locking
            | Mode::Galling
            | Mode::Reuse => Self::BoltAndNut,
            _ => Self::Joint,
        }
    }
}

impl fmt::Display for Scope {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Bolt => "the bolt alone",
            Self::BoltAndNut => "bolt and nut",
            Self::Joint => "the whole joint",
        })
    }
}

/// A mode that the caller sets aside, and why: it no longer keeps a verdict undecided. What the mode finds
/// against the joint still counts.
///
/// ```
/// use shankline::joint::SetAside;
/// use shankline::strength::check::Mode;
/// let tested = SetAside::new(Mode::Fatigue, "own test of 2 million cycles, report 17 (invented)");
/// assert_eq!(tested.mode, Mode::Fatigue);
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct SetAside {
    /// Which mode.
    pub mode: Mode,
    /// Why. It stands in every report.
    pub reason: String,
}

impl SetAside {
    /// A mode set aside for a reason.
    ///
    /// ```
    /// # use shankline::{joint::SetAside, strength::check::Mode};
    /// assert_eq!(SetAside::new(Mode::Prying, "stiff end plate").reason, "stiff end plate");
    /// ```
    #[must_use]
    pub fn new(mode: Mode, reason: impl Into<String>) -> Self {
        Self {
            mode,
            reason: reason.into(),
        }
    }
}
