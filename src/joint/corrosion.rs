//! What the parts of a joint are coated with, and how wet they live.

use core::fmt;

use crate::tables::galvanic::{Exposure, Metal};
use crate::tables::locking::TemperatureLimited;

/// What lies outermost on a bolt or a nut.
///
/// ```
/// use shankline::joint::Finish;
/// let finish = Finish::ZincPlated { baked: true };
/// assert!(finish.is_electroplated());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[non_exhaustive]
pub enum Finish {
    /// The bare metal, oiled, blackened or phosphated.
    Bare(Metal),
    /// Electroplated zinc.
    ZincPlated {
        /// Whether it was baked after plating, to drive hydrogen out.
        baked: bool,
    },
    /// Electroplated cadmium.
    CadmiumPlated {
        /// Whether it was baked after plating, to drive hydrogen out.
        baked: bool,
    },
    /// Hot-dip galvanized.
    HotDipGalvanized,
    /// Mechanically deposited zinc.
    MechanicalZinc,
    /// Zinc flakes in a binder, not electroplated.
    ZincFlake,
}

impl Finish {
    /// The metal that touches other parts; none where no index is known for it.
    ///
    /// ```
    /// use shankline::{joint::Finish, tables::galvanic::Metal};
    /// assert_eq!(Finish::HotDipGalvanized.metal(), Some(Metal::HotDipZinc));
    /// assert_eq!(Finish::ZincFlake.metal(), None);
    /// ```
    #[must_use]
    pub const fn metal(self) -> Option<Metal> {
        match self {
            Self::Bare(metal) => Some(metal),
            Self::ZincPlated { .. } | Self::MechanicalZinc => Some(Metal::Zinc),
            Self::CadmiumPlated { .. } => Some(Metal::Cadmium),
            Self::HotDipGalvanized => Some(Metal::HotDipZinc),
            Self::ZincFlake => None,
        }
    }

    /// Whether it was put on electrolytically, which charges hard steel with hydrogen.
    ///
    /// ```
    /// use shankline::joint::Finish;
    /// assert!(!Finish::ZincFlake.is_electroplated());
    /// ```
    #[must_use]
    pub const fn is_electroplated(self) -> bool {
        matches!(self, Self::ZincPlated { .. } | Self::CadmiumPlated { .. })
    }

    /// What limits its temperature, if a limit is known.
    pub(super) const fn temperature_limited(self) -> Option<TemperatureLimited> {
        match self {
            Self::ZincPlated { .. } => Some(TemperatureLimited::ZincPlating),
            Self::CadmiumPlated { .. } => Some(TemperatureLimited::CadmiumPlating),
            _ => None,
        }
    }
}

/// What a joint says of corrosion.
///
/// ```
/// use shankline::joint::{Contact, Finish};
/// use shankline::tables::galvanic::Exposure;
/// let davit = Contact {
///     exposure: Exposure::Harsh,
///     bolt: Finish::HotDipGalvanized,
///     nut: Finish::HotDipGalvanized,
/// };
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct Contact {
    /// How hard the surroundings are on unlike metals.
    pub exposure: Exposure,
    /// The bolt.
    pub bolt: Finish,
    /// The nut.
    pub nut: Finish,
}

/// A part of a joint, for [`Finding`](super::Finding)s on two of them.
///
/// ```
/// use shankline::joint::Part;
/// assert_eq!(Part::Ply(2).to_string(), "ply 2");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Part {
    /// The bolt.
    Bolt,
    /// The nut.
    Nut,
    /// A ply, counted from 1 at the head.
    Ply(usize),
}

impl fmt::Display for Part {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Bolt => f.pad("bolt"),
            Self::Nut => f.pad("nut"),
            Self::Ply(number) => write!(f, "ply {number}"),
        }
    }
}
