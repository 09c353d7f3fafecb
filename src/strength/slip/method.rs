//! Methods for the slip resistance, and their numbers.

use core::fmt;

use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::material::{AstmGrade, BoltGrade, PropertyClass};
use crate::source::Method;
use crate::strength::check::Level;
use crate::strength::shear::AiscEdition;
use crate::tables::methods;

/// No plies hold on each other by more: a slip of the pen. Clean steel on steel has some 0.8 (common practice, no source).
const MOST_FRICTION: f64 = 1.0;
/// The best faces of the codes: class A of EN 1090-2, class B of AISC 360.
pub(crate) const BEST_CLASS: f64 = 0.5;

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
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
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

/// Faces that slip on each other under one bolt, and what lies about them.
///
/// ```
/// use shankline::strength::slip::{SlipFaces, SlipHole};
/// let lap = SlipFaces::new(1, SlipHole::Standard);
/// assert_eq!((lap.count, lap.fillers), (1, 0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct SlipFaces {
    /// Number of friction faces.
    pub count: usize,
    /// Kind of hole, of all plies the worst: [`SlipMethod::worst_hole`].
    pub hole: SlipHole,
    /// Number of fillers between the plies at a face. From two on AISC 360 takes 0.85 (from 2010 on).
    pub fillers: usize,
}

impl SlipFaces {
    /// Faces without fillers.
    ///
    /// ```
    /// use shankline::strength::slip::{SlipFaces, SlipHole};
    /// assert_eq!(SlipFaces::new(2, SlipHole::Oversize).hole, SlipHole::Oversize);
    /// ```
    #[must_use]
    pub const fn new(count: usize, hole: SlipHole) -> Self {
        Self {
            count,
            hole,
            fillers: 0,
        }
    }
}

/// A published method for the slip resistance.
///
/// ```
/// use shankline::strength::slip::{SlipClass, SlipMethod};
/// let method = SlipMethod::En1993 {
///     class: SlipClass::B,
///     serviceability: false,
/// };
/// assert_eq!(method.method().citation, "EN 1993-1-8:2005 3.9");
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
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum SlipMethod {
    /// AISC 360 J3.8 (J3.9 in 2022), slip-critical connections.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360 {
        /// Edition.
        edition: AiscEdition,
        /// Class of the faying surfaces: A or B.
        class: SlipClass,
    },
    /// EN 1993-1-8:2005 3.9.1, preloaded bolts of class 8.8 or 10.9.
    #[cfg_attr(feature = "serde", serde(rename = "en_1993_1_8"))]
    En1993 {
        /// Class of the friction surfaces (EN 1090-2).
        class: SlipClass,
        /// Whether slip is excluded in serviceability only (category B, partial factor 1.1).
        serviceability: bool,
    },
    /// Friction and factor stated by the caller; holes and fillers lower nothing.
    Stated {
        /// Coefficient of friction between the plies, least value.
        friction: f64,
        /// What the nominal load is divided by.
        safety_factor: f64,
    },
}

/// Mean installed pretension over the least specified one, AISC 360 J3.8.
const DU: f64 = 1.13;

/// Friction coefficient, further factors on the clamp force, and the factors of a method.
pub(super) struct Numbers {
    pub(super) friction: f64,
    /// Mean over specified pretension, Du.
    pub(super) mean: f64,
    /// Holes and fillers.
    pub(super) joint: f64,
    pub(super) resistance: Option<f64>,
    pub(super) safety: Option<f64>,
}

impl SlipMethod {
    /// The method, if the numbers in it are in their ranges; a resistance checks them too, but only where the
    /// method is used.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a friction that is not positive or above 1, or a safety factor that is not from 1
    /// to 100; those of a class or hole that the method does not have.
    ///
    /// ```
    /// use shankline::strength::slip::SlipMethod;
    /// assert!(SlipMethod::Stated { friction: 0.15, safety_factor: -3.0 }.checked().is_err());
    /// ```
    pub fn checked(self) -> Result<Self, Error> {
        self.numbers(SlipFaces::new(1, SlipHole::Standard))?;
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
    pub const fn method(self) -> &'static Method {
        match self {
            Self::Aisc360 { edition, .. } => match edition {
                AiscEdition::E2005 => methods::AISC_360_05_J3_8,
                AiscEdition::E2010 => methods::AISC_360_10_J3_8,
                AiscEdition::E2016 => methods::AISC_360_16_J3_8,
                AiscEdition::E2022 => methods::AISC_360_22_J3_9,
            },
            Self::En1993 { .. } => methods::EN_1993_1_8_2005_3_9,
            Self::Stated { .. } => methods::FRICTION_STATED,
        }
    }

    /// The levels at which the method states a resistance.
    ///
    /// ```
    /// use shankline::strength::{check::Level, slip::SlipMethod};
    /// let own = SlipMethod::Stated { friction: 0.15, safety_factor: 1.5 };
    /// assert_eq!(own.levels(), [Level::Nominal, Level::Allowable]);
    /// ```
    #[must_use]
    pub const fn levels(self) -> &'static [Level] {
        match self {
            Self::Aisc360 { .. } => &[Level::Nominal, Level::Design, Level::Allowable],
            Self::En1993 { .. } => &[Level::Nominal, Level::Design],
            Self::Stated { .. } => &[Level::Nominal, Level::Allowable],
        }
    }

    /// Whether loads and tension must carry their load factors at a level: as
    /// [`Level::wants_factored_loads`], but not for EN 1993-1-8 in serviceability (category B), whose design
    /// resistance is for loads in service.
    ///
    /// ```
    /// use shankline::strength::{check::Level, slip::{SlipClass, SlipMethod}};
    /// let category_b = SlipMethod::En1993 { class: SlipClass::B, serviceability: true };
    /// assert!(!category_b.wants_factored_loads(Level::Design));
    /// ```
    #[must_use]
    pub const fn wants_factored_loads(self, level: Level) -> bool {
        let serviceability = matches!(
            self,
            Self::En1993 {
                serviceability: true,
                ..
            }
        );
        level.wants_factored_loads() && !serviceability
    }

    /// Whether the method takes the preload its code specifies, and no other: then the joint's least preload
    /// has to reach it ([`SlipPreload::reached_by`](super::SlipPreload::reached_by)), and a higher one brings
    /// nothing. AISC: its Du is mean over specified pretension.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::slip::{SlipClass, SlipMethod};
    /// let aisc = SlipMethod::Aisc360 { edition: AiscEdition::E2010, class: SlipClass::A };
    /// assert!(aisc.wants_specified_preload());
    /// ```
    #[must_use]
    pub const fn wants_specified_preload(self) -> bool {
        matches!(self, Self::Aisc360 { .. })
    }

    /// Refuses a bolt that the code does not preload against slip.
    ///
    /// EN 1993-1-8 3.1.2 and 3.9: classes 8.8 and 10.9. AISC 360 J3.8: the high-strength bolts of Table J3.1,
    /// A325 and A490 with their twist-off kinds; others of that strength (A449, A354 BC, BD), which the table
    /// names for sizes that those do not reach, are refused here.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for any other grade.
    ///
    /// ```
    /// use shankline::material::{BoltGrade, PropertyClass};
    /// use shankline::strength::slip::{SlipClass, SlipMethod};
    /// let en = SlipMethod::En1993 { class: SlipClass::B, serviceability: false };
    /// assert!(en.covers(PropertyClass::Class10_9.into()).is_ok());
    /// assert!(en.covers(PropertyClass::Class12_9.into()).is_err());
    /// ```
    pub fn covers(self, grade: BoltGrade) -> Result<(), Error> {
        use AstmGrade as G;
        use alloc::string::ToString;
        let (covered, reason) = match self {
            Self::Aisc360 { .. } => (
                matches!(
                    grade,
                    BoltGrade::Astm(
                        G::A325To2014
                            | G::F3125A325Type1
                            | G::F3125A325Type3
                            | G::F3125A325m
                            | G::F3125F1852Type1
                            | G::F3125F1852Type3
                            | G::F3125A490Type1
                            | G::F3125A490Type3
                            | G::F3125A490m
                            | G::F3125F2280Type1
                            | G::F3125F2280Type3
                    )
                ),
                "AISC 360 has slip-critical joints of A325 and A490 bolts and their twist-off kinds",
            ),
            Self::En1993 { .. } => (
                matches!(
                    grade,
                    BoltGrade::Iso(PropertyClass::Class8_8 | PropertyClass::Class10_9)
                ),
                "EN 1993-1-8 preloads bolts of classes 8.8 and 10.9",
            ),
            Self::Stated { .. } => (true, ""),
        };
        if covered {
            return Ok(());
        }
        Err(Error::NoValue {
            quantity: "slip resistance",
            subject: grade.to_string(),
            reason,
        })
    }

    /// Of several kinds of hole the one with the least slip resistance, standard for none: the kind to hand to
    /// [`slip_resistance`](super::slip_resistance) where the plies differ.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::slip::{SlipClass, SlipHole, SlipMethod};
    /// let aisc = SlipMethod::Aisc360 { edition: AiscEdition::E2010, class: SlipClass::A };
    /// let plies = [SlipHole::Standard, SlipHole::LongSlotAlong, SlipHole::Oversize];
    /// assert_eq!(aisc.worst_hole(plies), SlipHole::LongSlotAlong);
    /// ```
    #[must_use]
    pub fn worst_hole(self, holes: impl IntoIterator<Item = SlipHole>) -> SlipHole {
        let share = |hole: SlipHole| match self {
            Self::Aisc360 {
                edition: AiscEdition::E2005,
                ..
            } => {
                let (hsc, phi, _) = aisc_2005_hole(hole);
                hsc * phi
            }
            Self::Aisc360 { .. } => aisc_hole(hole).0,
            Self::En1993 { .. } | Self::Stated { .. } => en_hole(hole),
        };
        holes.into_iter().fold(SlipHole::Standard, |worst, hole| {
            if share(hole) < share(worst) {
                hole
            } else {
                worst
            }
        })
    }

    pub(super) fn numbers(self, faces: SlipFaces) -> Result<Numbers, Error> {
        match self {
            Self::Aisc360 { edition, class } => aisc_numbers(edition, class, faces),
            Self::En1993 {
                class,
                serviceability,
            } => Ok(Numbers {
                friction: match class {
                    SlipClass::A => 0.5,
                    SlipClass::B => 0.4,
                    SlipClass::C => 0.3,
                    SlipClass::D => 0.2,
                },
                mean: 1.0,
                joint: en_hole(faces.hole),
                resistance: Some(1.0 / if serviceability { 1.1 } else { 1.25 }),
                safety: None,
            }),
            Self::Stated {
                friction,
                safety_factor,
            } => {
                positive("friction between the plies", friction)?;
                if friction > MOST_FRICTION {
                    let allowed = Allowed::AtMost(MOST_FRICTION.into());
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
                    mean: 1.0,
                    joint: 1.0,
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

    pub(super) fn cautions(self, hole: SlipHole, tension: bool) -> Cautions {
        let recalled = match self {
            Self::Aisc360 {
                edition: AiscEdition::E2005,
                ..
            } => along(hole)
                .then_some(methods::AISC_360_05_J3_8_FACTORS_FOR_THE_REQUIRED_STRENGTH_LEVEL),
            Self::Aisc360 { .. } => Some(methods::AISC_360_J3_8),
            Self::En1993 { class, .. } => {
                let read =
                    matches!(class, SlipClass::A | SlipClass::B) && hole == SlipHole::Standard;
                (!read || tension).then_some(methods::EN_1993_1_8_3_9_CLASSES_SLOTS_AND_TENSION)
            }
            Self::Stated { .. } => None,
        };
        Cautions::default().with(recalled.and_then(Caution::of_method))
    }
}

/// Holes in which AISC 360-05 J3.8 excludes slip at the required strength level, not in service only.
const fn along(hole: SlipHole) -> bool {
    matches!(
        hole,
        SlipHole::Oversize | SlipHole::ShortSlotAlong | SlipHole::LongSlotAlong
    )
}

/// ks of EN 1993-1-8 Table 3.6.
const fn en_hole(hole: SlipHole) -> f64 {
    match hole {
        SlipHole::Standard => 1.0,
        SlipHole::Oversize | SlipHole::ShortSlotAcross => 0.85,
        SlipHole::LongSlotAcross => 0.7,
        SlipHole::ShortSlotAlong => 0.76,
        SlipHole::LongSlotAlong => 0.63,
    }
}

/// phi and omega of AISC 360 J3.8 from 2010 on.
const fn aisc_hole(hole: SlipHole) -> (f64, f64) {
    match hole {
        SlipHole::Standard | SlipHole::ShortSlotAcross => (1.00, 1.50),
        SlipHole::Oversize | SlipHole::ShortSlotAlong => (0.85, 1.76),
        SlipHole::LongSlotAcross | SlipHole::LongSlotAlong => (0.70, 2.14),
    }
}

/// hsc, phi and omega of AISC 360-05 J3.8. Its factor for short slots does not ask for their direction.
const fn aisc_2005_hole(hole: SlipHole) -> (f64, f64, f64) {
    let hsc = match hole {
        SlipHole::Standard => 1.0,
        SlipHole::Oversize | SlipHole::ShortSlotAcross | SlipHole::ShortSlotAlong => 0.85,
        SlipHole::LongSlotAcross | SlipHole::LongSlotAlong => 0.70,
    };
    let (phi, omega) = if along(hole) {
        (0.85, 1.76)
    } else {
        (1.0, 1.5)
    };
    (hsc, phi, omega)
}

fn aisc_numbers(
    edition: AiscEdition,
    class: SlipClass,
    faces: SlipFaces,
) -> Result<Numbers, Error> {
    let old = edition == AiscEdition::E2005;
    let friction = match (class, old) {
        (SlipClass::A, true) => 0.35,
        (SlipClass::A, false) => 0.30,
        (SlipClass::B, _) => 0.50,
        (SlipClass::C | SlipClass::D, _) => {
            return Err(Error::NoValue {
                quantity: "slip coefficient",
                subject: alloc::format!("{class} faces"),
                reason: "AISC 360 J3.8 has the classes A and B",
            });
        }
    };
    let (joint, phi, omega) = if old {
        aisc_2005_hole(faces.hole)
    } else {
        let (phi, omega) = aisc_hole(faces.hole);
        let fillers = if faces.fillers > 1 { 0.85 } else { 1.0 };
        (fillers, phi, omega)
    };
    Ok(Numbers {
        friction,
        mean: DU,
        joint,
        resistance: Some(phi),
        safety: Some(omega),
    })
}

impl fmt::Display for SlipMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.method().citation)
    }
}
