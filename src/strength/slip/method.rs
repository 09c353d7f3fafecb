//! Methods for the slip resistance, and their numbers.

use core::fmt;

use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::material::{BoltGrade, BoltStrength};
use crate::math::sqrt;
use crate::source::Method;
use crate::strength::check::Level;
use crate::strength::code::{aisc_360, as_4100, bs_5950, covered, en_1993, is_800};
use crate::strength::shear::AiscEdition;
use crate::tables::methods;
use crate::thread::Thread;
use crate::units::Force;

use super::{As4100Faces, Is800Surface, SlipPreload};

/// No plies hold on each other by more: a slip of the pen. Clean steel on steel has some 0.8 (common practice, no source).
const MOST_FRICTION: f64 = 1.0;
/// Friction that the caller states, by what it is called.
pub(in crate::strength) fn stated_friction(
    name: &'static str,
    friction: f64,
) -> Result<f64, Error> {
    positive(name, friction)?;
    if friction > MOST_FRICTION {
        return Err(out_of_range(
            name,
            friction,
            Allowed::AtMost(MOST_FRICTION.into()),
        ));
    }
    Ok(friction)
}

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
    /// IS 800:2007 10.4.3, friction grip bolts of class 8.8 or 10.9 to IS 3757.
    #[cfg_attr(feature = "serde", serde(rename = "is_800"))]
    Is800 {
        /// Treatment of the friction faces (Table 20).
        surface: Is800Surface,
        /// Whether slip is excluded at service loads only (partial factor 1.10 and not 1.25).
        serviceability: bool,
    },
    /// BS 5950-1:2000 6.4.2, preloaded bolts of class 8.8 to BS 4395-1.
    #[cfg_attr(feature = "serde", serde(rename = "bs_5950"))]
    Bs5950 {
        /// Class of the friction surfaces (Table 35).
        class: SlipClass,
        /// Whether slip is excluded in service only (1.1 and not 0.9), not under factored loads.
        serviceability: bool,
    },
    /// AS 4100 9.3.3, category 8.8/TF: always against slip in service.
    #[cfg_attr(feature = "serde", serde(rename = "as_4100"))]
    As4100 {
        /// The friction faces.
        faces: As4100Faces,
    },
    /// Friction and factor stated by the caller; holes and fillers lower nothing.
    Stated {
        /// Coefficient of friction between the plies, least value.
        friction: f64,
        /// What the nominal load is divided by.
        safety_factor: f64,
    },
}

/// Friction coefficient, further factors on the clamp force, and the factors of a method.
pub(in crate::strength) struct Numbers {
    pub(in crate::strength) friction: f64,
    /// Mean over specified pretension, Du.
    pub(in crate::strength) mean: f64,
    /// Holes and fillers.
    pub(in crate::strength) joint: f64,
    pub(in crate::strength) resistance: Option<f64>,
    pub(in crate::strength) safety: Option<f64>,
}

/// Refuses fillers where nobody has read what the code takes for them.
pub(in crate::strength) fn fillers_unread(
    faces: SlipFaces,
    code: &'static str,
) -> Result<(), Error> {
    if faces.fillers == 0 {
        return Ok(());
    }
    Err(Error::NoValue {
        quantity: "slip resistance",
        subject: alloc::format!("faces with fillers by {code}"),
        reason: "what fillers take of it was not read",
    })
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
        let preload = SlipPreload::Least(Force::default());
        self.numbers(SlipFaces::new(1, SlipHole::Standard), preload)?;
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
            Self::Is800 { .. } => methods::IS_800_2007_10_4_3,
            Self::Bs5950 { .. } => methods::BS_5950_1_2000_6_4_2,
            Self::As4100 { .. } => methods::AS_4100_9_3_3,
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
            Self::En1993 { .. } | Self::Is800 { .. } | Self::As4100 { .. } => {
                &[Level::Nominal, Level::Design]
            }
            Self::Bs5950 { .. } => &[Level::Design],
            Self::Stated { .. } => &[Level::Nominal, Level::Allowable],
        }
    }

    /// Whether loads and tension must carry their load factors at a level: as
    /// [`Level::wants_factored_loads`], but not for EN 1993-1-8 in serviceability (category B) and its like in IS 800,
    /// BS 5950-1 and AS 4100, whose design resistance is for loads in service.
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
            } | Self::Is800 {
                serviceability: true,
                ..
            } | Self::Bs5950 {
                serviceability: true,
                ..
            } | Self::As4100 { .. }
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
    /// EN 1993-1-8 3.1.2 and 3.9: classes 8.8 and 10.9; IS 800 10.4 and IS 3757: the same. BS 5950-1
    /// (general grade of BS 4395) and AS 4100: class 8.8. AISC 360 J3.8: the high-strength bolts of Table J3.1,
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
        let (is_covered, reason) = match self {
            Self::Aisc360 { .. } => (aisc_360::slip::covers(grade), aisc_360::slip::COVERED),
            Self::En1993 { .. } => (en_1993::slip::covers(grade), en_1993::slip::COVERED),
            Self::Is800 { .. } => (is_800::slip::covers(grade), is_800::slip::COVERED),
            Self::Bs5950 { .. } => (bs_5950::slip::covers(grade), bs_5950::slip::COVERED),
            Self::As4100 { .. } => (as_4100::slip::covers(grade), as_4100::slip::COVERED),
            Self::Stated { .. } => (true, ""),
        };
        covered(is_covered, "slip resistance", grade, reason)
    }

    /// The least tension of the bolt that the code counts on, where it has one of its own and a joint need not be tightened
    /// by it: F0 = 0.70 fub Anb of IS 800 10.4.3, with the tensile strength and the stress area of ISO 898-1; Po of BS 4604
    /// and Nti of AS 4100, both as printed.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for a method without such a load, and for IS 800 outside M16 to M36 of the coarse series, the
    /// sizes of IS 3757; [`Error::NotInTable`] for sizes that BS 4604 or AS 4100 does not print; [`Error::Mismatch`] if the strengths are those of another diameter.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::slip::{Is800Surface, SlipMethod};
    /// use shankline::units::kilonewtons;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let method = SlipMethod::Is800 { surface: Is800Surface::Untreated, serviceability: false };
    /// let thread: Thread = "M20".parse()?;
    /// let bolt = PropertyClass::Class8_8.strength(thread.nominal_diameter())?;
    /// // 0.70 x 830 MPa x 244.8 mm2
    /// assert!((method.specified_preload(&thread, &bolt)? - kilonewtons(142.2)).abs() < kilonewtons(0.05));
    /// assert!(method.specified_preload(&"M12".parse()?, &bolt).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn specified_preload(
        self,
        thread: &Thread,
        strength: &BoltStrength,
    ) -> Result<Force, Error> {
        match self {
            Self::Is800 { .. } => is_800::slip::specified(thread, strength),
            Self::Bs5950 { .. } => bs_5950::slip::specified(thread),
            Self::As4100 { .. } => as_4100::slip::specified(thread),
            _ => Err(Error::NoValue {
                quantity: "least tension of the bolt",
                subject: alloc::format!("{self}"),
                reason: "the preload is a target, or the least that the joint has",
            }),
        }
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
            Self::Aisc360 { edition, .. } => aisc_360::slip::hole_share(edition, hole),
            Self::En1993 { .. } | Self::Stated { .. } => en_1993::slip::hole_factor(hole),
            Self::Is800 { .. } => is_800::slip::hole_factor(hole),
            Self::Bs5950 { .. } => bs_5950::slip::hole_factor(hole),
            Self::As4100 { .. } => as_4100::slip::hole_factor(hole),
        };
        holes.into_iter().fold(SlipHole::Standard, |worst, hole| {
            if share(hole) < share(worst) {
                hole
            } else {
                worst
            }
        })
    }

    pub(super) fn numbers(self, faces: SlipFaces, preload: SlipPreload) -> Result<Numbers, Error> {
        match self {
            Self::Aisc360 { edition, class } => aisc_360::slip::numbers(edition, class, faces),
            Self::En1993 {
                class,
                serviceability,
            } => Ok(en_1993::slip::numbers(class, serviceability, faces.hole)),
            Self::Is800 {
                surface,
                serviceability,
            } => is_800::slip::numbers(surface, serviceability, faces),
            Self::Bs5950 {
                class,
                serviceability,
            } => bs_5950::slip::numbers(class, serviceability, faces, preload),
            Self::As4100 { faces: own } => as_4100::slip::numbers(own, faces),
            Self::Stated {
                friction,
                safety_factor,
            } => {
                let friction = stated_friction("friction between the plies", friction)?;
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

    /// One over the tension that takes all of the clamp force, in preloads: for design loads and for service loads.
    pub(super) const fn taken_off(self, preload: SlipPreload) -> [f64; 2] {
        match self {
            Self::Aisc360 { .. } => aisc_360::slip::TAKEN_OFF,
            Self::En1993 { .. } => en_1993::slip::TAKEN_OFF,
            Self::Is800 { .. } => is_800::slip::TAKEN_OFF,
            Self::Bs5950 { serviceability, .. } => {
                let share = 1.0 / bs_5950::slip::factor(serviceability, preload);
                [share, share]
            }
            Self::As4100 { .. } => as_4100::slip::TAKEN_OFF,
            Self::Stated { .. } => [1.0, 1.0],
        }
    }

    /// Whether [`specified_preload`](Self::specified_preload) has what it counts on.
    pub(crate) const fn counts_on_its_own(self) -> bool {
        matches!(
            self,
            Self::Is800 { .. } | Self::Bs5950 { .. } | Self::As4100 { .. }
        )
    }

    /// Whether shear and tension go together as an ellipse, and not along a line.
    pub(crate) const fn is_ellipse(self) -> bool {
        matches!(self, Self::Is800 { .. })
    }

    /// What a tension of so many preloads leaves of the slip resistance, for design loads and for service loads; nothing
    /// or less where it takes all.
    pub(super) fn left(self, used: f64, preload: SlipPreload) -> [f64; 2] {
        self.taken_off(preload).map(|share| {
            let part = share * used;
            if self.is_ellipse() && part < 1.0 {
                sqrt(1.0 - part * part)
            } else {
                1.0 - part
            }
        })
    }

    pub(super) fn cautions(self, hole: SlipHole, tension: bool) -> Cautions {
        let recalled = match self {
            Self::Aisc360 { edition, .. } => aisc_360::slip::recalled(edition, hole),
            Self::En1993 { class, .. } => en_1993::slip::recalled(class, hole, tension),
            Self::Is800 {
                surface,
                serviceability,
            } => is_800::slip::recalled(surface, serviceability),
            Self::Bs5950 { .. } => Some(bs_5950::slip::RECALLED),
            Self::As4100 { .. } => Some(as_4100::slip::RECALLED),
            Self::Stated { .. } => None,
        };
        Cautions::default().with(recalled.and_then(Caution::of_method))
    }
}

impl fmt::Display for SlipMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.method().citation)
    }
}
