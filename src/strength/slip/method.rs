//! Methods for the slip resistance, and their numbers.

use core::fmt;

use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::strength::shear::AiscEdition;

/// Classes of friction faces. AISC has A and B only, and calls other finishes A than EN.
///
/// ```
/// use shankline::strength::slip::SlipClass;
/// assert_eq!(SlipClass::A.to_string(), "class A");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum SlipClass {
    /// AISC: clean mill scale. EN: blasted, loose rust removed, no pitting.
    A,
    /// AISC: blast-cleaned. EN: blasted and metallized with aluminium or zinc, or painted with
    /// alkali-zinc silicate.
    B,
    /// EN: wire-brushed or flame-cleaned.
    C,
    /// EN: as rolled.
    D,
}

impl fmt::Display for SlipClass {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::A => "class A",
            Self::B => "class B",
            Self::C => "class C",
            Self::D => "class D",
        })
    }
}

/// Holes of a slip-resistant joint.
///
/// ```
/// use shankline::strength::slip::SlipHole;
/// assert_eq!(SlipHole::default(), SlipHole::Standard);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum SlipHole {
    /// Standard (normal) holes.
    #[default]
    Standard,
    /// Oversize holes.
    Oversize,
    /// Short slots across the load.
    ShortSlotAcross,
    /// Short slots along the load.
    ShortSlotAlong,
    /// Long slots across the load.
    LongSlotAcross,
    /// Long slots along the load.
    LongSlotAlong,
}

/// A published method for the slip resistance.
///
/// ```
/// use shankline::strength::slip::{SlipClass, SlipHole, SlipMethod};
/// let method = SlipMethod::En1993 {
///     class: SlipClass::B,
///     hole: SlipHole::Standard,
///     serviceability: false,
/// };
/// assert_eq!(method.name(), "EN 1993-1-8:2005 3.9");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
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
pub enum SlipMethod {
    /// AISC 360 J3.8 (J3.9 in 2022), slip-critical connections.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360 {
        /// Edition.
        edition: AiscEdition,
        /// Class of the faying surfaces: A or B.
        class: SlipClass,
        /// Holes.
        hole: SlipHole,
        /// Two or more fillers between the plies (2010 on: factor 0.85).
        fillers: bool,
    },
    /// EN 1993-1-8:2005 3.9.1, preloaded bolts of class 8.8 or 10.9.
    #[cfg_attr(feature = "serde", serde(rename = "en_1993_1_8"))]
    En1993 {
        /// Class of the friction surfaces (EN 1090-2).
        class: SlipClass,
        /// Holes.
        hole: SlipHole,
        /// Whether slip is excluded in serviceability only (category B, partial factor 1.1).
        serviceability: bool,
    },
    /// Friction and factor stated by the caller.
    Stated {
        /// Coefficient of friction between the plies, least value.
        friction: f64,
        /// What the nominal load is divided by.
        safety_factor: f64,
    },
}

/// Mean installed pretension over the least specified one, AISC 360 J3.8.
const DU: f64 = 1.13;

/// Friction coefficient, further multiplier, and the factors of a method.
pub(super) struct Numbers {
    pub(super) friction: f64,
    pub(super) multiplier: f64,
    pub(super) resistance: Option<f64>,
    pub(super) safety: Option<f64>,
}

impl SlipMethod {
    /// The method, if the numbers in it are in their ranges; a resistance checks them too, but only where the
    /// method is used.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a friction that is not positive or above 2, or a safety factor that is not from 1
    /// to 100; those of a class or hole that the method does not have.
    ///
    /// ```
    /// use shankline::strength::slip::SlipMethod;
    /// assert!(SlipMethod::Stated { friction: 0.15, safety_factor: -3.0 }.checked().is_err());
    /// ```
    pub fn checked(self) -> Result<Self, Error> {
        self.numbers()?;
        Ok(self)
    }

    /// Publisher, edition and clause.
    ///
    /// ```
    /// use shankline::strength::slip::SlipMethod;
    /// let own = SlipMethod::Stated { friction: 0.15, safety_factor: 1.5 };
    /// assert_eq!(own.to_string(), "friction as stated");
    /// ```
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Aisc360 { edition, .. } => match edition {
                AiscEdition::E2005 => "AISC 360-05 J3.8",
                AiscEdition::E2010 => "AISC 360-10 J3.8",
                AiscEdition::E2016 => "AISC 360-16 J3.8",
                AiscEdition::E2022 => "AISC 360-22 J3.9",
            },
            Self::En1993 { .. } => "EN 1993-1-8:2005 3.9",
            Self::Stated { .. } => "friction as stated",
        }
    }

    pub(super) fn numbers(self) -> Result<Numbers, Error> {
        match self {
            Self::Aisc360 {
                edition,
                class,
                hole,
                fillers,
            } => aisc_numbers(edition, class, hole, fillers),
            Self::En1993 {
                class,
                hole,
                serviceability,
            } => Ok(Numbers {
                friction: match class {
                    SlipClass::A => 0.5,
                    SlipClass::B => 0.4,
                    SlipClass::C => 0.3,
                    SlipClass::D => 0.2,
                },
                multiplier: match hole {
                    SlipHole::Standard => 1.0,
                    SlipHole::Oversize | SlipHole::ShortSlotAcross => 0.85,
                    SlipHole::LongSlotAcross => 0.7,
                    SlipHole::ShortSlotAlong => 0.76,
                    SlipHole::LongSlotAlong => 0.63,
                },
                resistance: Some(1.0 / if serviceability { 1.1 } else { 1.25 }),
                safety: None,
            }),
            Self::Stated {
                friction,
                safety_factor,
            } => {
                positive("friction between the plies", friction)?;
                if friction > 2.0 {
                    let allowed = Allowed::AtMost(2.0.into());
                    return Err(out_of_range(
                        "friction between the plies",
                        friction,
                        allowed,
                    ));
                }
                if !(1.0..=100.0).contains(&safety_factor) {
                    let allowed = Allowed::FromTo(1.0.into(), 100.0.into());
                    return Err(out_of_range("safety factor", safety_factor, allowed));
                }
                Ok(Numbers {
                    friction,
                    multiplier: 1.0,
                    resistance: None,
                    safety: Some(safety_factor),
                })
            }
        }
    }

    /// What tension takes from the clamp force, for design loads and for service loads.
    pub(super) const fn taken_off(self) -> [f64; 2] {
        match self {
            Self::Aisc360 { .. } => [1.0 / DU, 1.5 / DU],
            Self::En1993 { .. } => [0.8, 0.8],
            Self::Stated { .. } => [1.0, 1.0],
        }
    }

    pub(super) fn cautions(self, tension: bool) -> Cautions {
        let recalled = match self {
            Self::Aisc360 {
                edition: AiscEdition::E2005,
                hole,
                ..
            } => along(hole).then_some("AISC 360-05 J3.8, factors for the required strength level"),
            Self::Aisc360 { .. } => Some("AISC 360 J3.8"),
            Self::En1993 { class, hole, .. } => {
                let read =
                    matches!(class, SlipClass::A | SlipClass::B) && hole == SlipHole::Standard;
                (!read || tension).then_some("EN 1993-1-8 3.9, classes, slots and tension")
            }
            Self::Stated { .. } => None,
        };
        Cautions::default().with(recalled.map(|method| Caution::MethodFromMemory { method }))
    }
}

/// Holes in which AISC 360-05 J3.8 excludes slip at the required strength level, not in service only.
const fn along(hole: SlipHole) -> bool {
    matches!(
        hole,
        SlipHole::Oversize | SlipHole::ShortSlotAlong | SlipHole::LongSlotAlong
    )
}

fn aisc_numbers(
    edition: AiscEdition,
    class: SlipClass,
    hole: SlipHole,
    fillers: bool,
) -> Result<Numbers, Error> {
    let old = edition == AiscEdition::E2005;
    let friction = match (class, old) {
        (SlipClass::A, true) => 0.35,
        (SlipClass::A, false) => 0.30,
        (SlipClass::B, _) => 0.50,
        (SlipClass::C | SlipClass::D, _) => {
            return Err(Error::Mismatch(alloc::format!(
                "AISC 360 J3.8 has the classes A and B, not {class}"
            )));
        }
    };
    let (old_hole, phi, omega) = match hole {
        SlipHole::Standard | SlipHole::ShortSlotAcross => (1.0, 1.00, 1.50),
        SlipHole::Oversize | SlipHole::ShortSlotAlong => (0.85, 0.85, 1.76),
        SlipHole::LongSlotAcross | SlipHole::LongSlotAlong => (0.70, 0.70, 2.14),
    };
    Ok(if old {
        Numbers {
            friction,
            // The factor of 2005 for short slots does not ask for their direction.
            multiplier: DU
                * if hole == SlipHole::ShortSlotAcross {
                    0.85
                } else {
                    old_hole
                },
            resistance: Some(if along(hole) { 0.85 } else { 1.0 }),
            safety: Some(if along(hole) { 1.76 } else { 1.5 }),
        }
    } else {
        Numbers {
            friction,
            multiplier: DU * if fillers { 0.85 } else { 1.0 },
            resistance: Some(phi),
            safety: Some(omega),
        }
    })
}

impl fmt::Display for SlipMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.name())
    }
}
