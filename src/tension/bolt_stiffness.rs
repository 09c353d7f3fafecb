//! Stiffness of the bolt along its axis, piece by piece.

use super::{part_length, sane_stress};
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::parts::ScrewLength;
use crate::tables::{methods, nanometres};
use crate::thread::Thread;
use crate::units::{Area, Length, Stiffness, Stress, from_base, inches, millimetres};

/// How much of the grip is plain shank, and how much is thread.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tension::GripSections;
/// # fn main() -> Result<(), shankline::Error> {
/// // Shigley, 9th ed., Example 8-4: 5/8-11 x 2-1/4 in a grip of 1.5 in.
/// let thread: Thread = "5/8-11 UNC".parse()?;
/// let sections = GripSections::textbook(&thread, inches(2.25), inches(1.5))?;
/// assert!((sections.shank - inches(0.75)).value.abs() < 1e-12);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct GripSections {
    /// Plain shank in the grip, ld.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub shank: Length,
    /// Thread in the grip, lt; run-out counts as thread.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread: Length,
}

impl GripSections {
    /// Lengths that the caller states.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a negative length, or if both together are no length of a part.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tension::GripSections;
    /// let sections = GripSections::new(inches(0.75), inches(0.75)).unwrap();
    /// assert_eq!(sections.grip(), inches(1.5));
    /// ```
    pub fn new(shank: Length, thread: Length) -> Result<Self, Error> {
        not_negative("shank in the grip", shank)?;
        not_negative("thread in the grip", thread)?;
        part_length("grip", shank + thread)?;
        Ok(Self { shank, thread })
    }

    /// What lies in a grip of a real screw, from under its head: shank up to the least body length,
    /// thread from there on.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a grip that is no length of a part or reaches the end of the screw.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tension::GripSections;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = ScrewLength::measured(millimetres(100.0), millimetres(60.0), millimetres(65.0))?;
    /// let sections = GripSections::of_screw(&bolt, millimetres(80.0))?;
    /// assert!((sections.thread - millimetres(20.0)).value.abs() < 1e-12);
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_screw(screw: &ScrewLength, grip: Length) -> Result<Self, Error> {
        part_length("grip", grip)?;
        super::at_most("grip", grip, screw.min)?;
        let shank = screw.body_length_min.min(grip);
        Self::new(shank, grip - shank)
    }

    /// What lies in the grip by the textbook thread length LT: inch sizes 2 d + 1/4 in up to 6 in of
    /// length and 2 d + 1/2 in beyond; metric 2 d + 6 mm up to 125 mm, 2 d + 12 mm up to 200 mm, 2 d
    /// + 25 mm beyond. Nominal, not the worst case: [`of_screw`](Self::of_screw) is.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., Table 8-7.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length outside the [ranges](crate::tension#ranges), or a grip beyond it.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tension::GripSections;
    /// let thread: Thread = "M16".parse().unwrap();
    /// let sections = GripSections::textbook(&thread, millimetres(80.0), millimetres(60.0)).unwrap();
    /// assert!((sections.shank - millimetres(42.0)).value.abs() < 1e-12); // 80 - (32 + 6)
    /// ```
    pub fn textbook(thread: &Thread, length: Length, grip: Length) -> Result<Self, Error> {
        part_length("screw length", length)?;
        part_length("grip", grip)?;
        super::at_most("grip", grip, length)?;
        // 152.4 mm are 6 in, whatever rounding makes of them.
        let to = |limit: Length| nanometres(length) <= nanometres(limit);
        let extra = if !thread.is_unified() {
            if to(millimetres(125.0)) {
                millimetres(6.0)
            } else if to(millimetres(200.0)) {
                millimetres(12.0)
            } else {
                millimetres(25.0)
            }
        } else if to(inches(6.0)) {
            inches(0.25)
        } else {
            inches(0.5)
        };
        let threaded = 2.0 * thread.nominal_diameter() + extra;
        let shank = (length - threaded).max(from_base(0.0)).min(grip);
        Self::new(shank, grip - shank)
    }

    /// The grip: both together.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::tension::GripSections;
    /// let sections = GripSections::new(inches(0.0), inches(1.0)).unwrap();
    /// assert_eq!(sections.grip(), inches(1.0));
    /// ```
    #[must_use]
    pub fn grip(&self) -> Length {
        self.shank + self.thread
    }
}

/// Effective grip of a cap screw in a tapped hole: h + t2/2 where the tapped part is thinner than
/// the screw (t2 < d), otherwise h + d/2. h is everything above the tapped part, washers included.
///
/// Source: Shigley, Mechanical Engineering Design, 9th ed., Table 8-7.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a length outside the [ranges](crate::tension#ranges).
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tension::cap_screw_grip;
/// // Example 8-5: washer 1/16 in and plate 5/8 in over a 5/8 in cast iron part, 5/8 in screw.
/// let grip = cap_screw_grip(inches(0.6875), inches(0.625), inches(0.625)).unwrap();
/// assert!((grip - inches(1.0)).value.abs() < 1e-12);
/// ```
pub fn cap_screw_grip(
    above_tapped_part: Length,
    tapped_part: Length,
    diameter: Length,
) -> Result<Length, Error> {
    part_length("thickness above the tapped part", above_tapped_part)?;
    part_length("thickness of the tapped part", tapped_part)?;
    part_length("nominal diameter", diameter)?;
    Ok(above_tapped_part + 0.5 * tapped_part.min(diameter))
}

/// Head of the bolt, for the depth its deformation reaches by VDI 2230.
///
/// ```
/// use shankline::tension::BoltHead;
/// assert_ne!(BoltHead::Hexagon, BoltHead::SocketCap);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum BoltHead {
    /// Hexagon head: 0.5 d.
    Hexagon,
    /// Hexagon socket head: 0.4 d.
    SocketCap,
}

/// What the thread of the bolt is screwed into, with its modulus of elasticity.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tension::ThreadedEnd;
/// let end = ThreadedEnd::Nut { modulus: megapascals(205e3) };
/// assert_ne!(end, ThreadedEnd::TappedHole { modulus: megapascals(205e3) });
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum ThreadedEnd {
    /// A nut: 0.4 d.
    Nut {
        /// Modulus of elasticity of the nut.
        modulus: Stress,
    },
    /// A tapped hole: 0.33 d.
    TappedHole {
        /// Modulus of elasticity of the tapped part.
        modulus: Stress,
    },
}

/// A piece of the bolt that stretches.
///
/// ```
/// use shankline::tension::BoltPart;
/// assert_eq!(BoltPart::FreeThread.to_string(), "free thread");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum BoltPart {
    /// Head.
    Head,
    /// Plain shank.
    Shank,
    /// Thread in the grip, run-out included.
    FreeThread,
    /// Thread in the nut or the tapped hole.
    EngagedThread,
    /// Nut, or tapped part around the thread.
    Nut,
}

impl core::fmt::Display for BoltPart {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.pad(match self {
            Self::Head => "head",
            Self::Shank => "shank",
            Self::FreeThread => "free thread",
            Self::EngagedThread => "engaged thread",
            Self::Nut => "nut or tapped part",
        })
    }
}

/// One piece: its length, area and modulus; it stretches l / (E A) for each unit of force.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tension::{BoltStiffness, GripSections};
/// # fn main() -> Result<(), shankline::Error> {
/// let sections = GripSections::new(inches(0.75), inches(0.75))?;
/// let bolt = BoltStiffness::shigley(&"5/8-11 UNC".parse()?, sections, ksi(30e3))?;
/// assert_eq!(bolt.segments[1].length, inches(0.75));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BoltSegment {
    /// Which piece.
    pub part: BoltPart,
    /// Length; zero for a piece the method leaves out.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub length: Length,
    /// Area.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub area: Area,
    /// Modulus of elasticity.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub modulus: Stress,
}

impl BoltSegment {
    fn resilience(&self) -> f64 {
        self.length.value / (self.modulus.value * self.area.value)
    }
}

/// Which pieces a stiffness counts.
///
/// ```
/// use shankline::tension::BoltStiffnessMethod;
/// assert_ne!(BoltStiffnessMethod::Shigley, BoltStiffnessMethod::Vdi2230);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum BoltStiffnessMethod {
    /// Shigley, 9th ed., Eq. 8-17: shank and thread within the grip.
    Shigley,
    /// VDI 2230 Part 1: head, shank, free and engaged thread, nut.
    #[cfg_attr(feature = "serde", serde(rename = "vdi_2230"))]
    Vdi2230,
}

/// Stiffness of a bolt along its axis by one method.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tension::{BoltStiffness, GripSections};
/// # fn main() -> Result<(), shankline::Error> {
/// // Shigley, 9th ed., Example 8-4: 5.21 Mlbf/in.
/// let sections = GripSections::new(inches(0.75), inches(0.75))?;
/// let bolt = BoltStiffness::shigley(&"5/8-11 UNC".parse()?, sections, ksi(30e3))?;
/// let mlbf_in = shankline::units::pounds_force_per_inch(1e6);
/// assert!(((bolt.stiffness / mlbf_in).value - 5.21).abs() < 0.005);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct BoltStiffness {
    /// Method.
    pub method: BoltStiffnessMethod,
    /// Head, shank, free thread, engaged thread, nut, from the head on.
    pub segments: [BoltSegment; 5],
    /// Stiffness kb.
    pub stiffness: Stiffness,
}

impl BoltStiffness {
    /// Shigley's stiffness kb = Ad At E / (Ad lt + At ld), with the shank area Ad and the tensile
    /// stress area At.
    ///
    /// Head, nut and engaged thread are taken as rigid: the stiffness is high, and so is the bolt's
    /// share of the load.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., Eq. 8-17. Checked against its
    /// Example 8-4.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a modulus outside the [ranges](crate::tension#ranges).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tension::{BoltStiffness, GripSections};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M16".parse()?;
    /// let (short, long) = (millimetres(30.0), millimetres(60.0));
    /// let stiffness = |length| {
    ///     let sections = GripSections::new(millimetres(0.0), length)?;
    ///     BoltStiffness::shigley(&thread, sections, megapascals(207e3))
    /// };
    /// assert!(stiffness(short)?.stiffness > stiffness(long)?.stiffness);
    /// # Ok(())
    /// # }
    /// ```
    #[inline]
    pub fn shigley(
        thread: &Thread,
        sections: GripSections,
        modulus: Stress,
    ) -> Result<Self, Error> {
        sane_stress("modulus of elasticity", modulus)?;
        let zero = from_base(0.0);
        let (shank, root) = (thread.shank_area(), thread.tensile_stress_area());
        let segment = |part, length, area| BoltSegment {
            part,
            length,
            area,
            modulus,
        };
        Ok(Self::of(
            BoltStiffnessMethod::Shigley,
            [
                segment(BoltPart::Head, zero, shank),
                segment(BoltPart::Shank, sections.shank, shank),
                segment(BoltPart::FreeThread, sections.thread, root),
                segment(BoltPart::EngagedThread, zero, root),
                segment(BoltPart::Nut, zero, shank),
            ],
        ))
    }

    /// The stiffness of VDI 2230 Part 1, 1 / kb = sum l / (E A): head 0.5 d (socket head 0.4 d), shank
    /// and nut 0.4 d (tapped hole 0.33 d) on the area of the nominal diameter; free thread, and 0.5 d of
    /// engaged thread, on the area of the minor diameter d3.
    ///
    /// The lengths of head, engaged thread and nut were recalled and not read: the result carries a
    /// [`Caution`].
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a modulus outside the [ranges](crate::tension#ranges).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tension::{BoltHead, BoltStiffness, GripSections, ThreadedEnd};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let (thread, steel) = ("M12".parse()?, megapascals(205e3));
    /// let sections = GripSections::new(millimetres(20.0), millimetres(10.0))?;
    /// let nut = ThreadedEnd::Nut { modulus: steel };
    /// let vdi = BoltStiffness::vdi_2230(&thread, sections, BoltHead::Hexagon, steel, nut)?;
    /// assert!(vdi.stiffness < BoltStiffness::shigley(&thread, sections, steel)?.stiffness);
    /// assert_eq!(vdi.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    pub fn vdi_2230(
        thread: &Thread,
        sections: GripSections,
        head: BoltHead,
        modulus: Stress,
        end: ThreadedEnd,
    ) -> Result<Self, Error> {
        sane_stress("modulus of elasticity", modulus)?;
        let d = thread.nominal_diameter();
        let (shank, root) = (thread.shank_area(), thread.minor_area());
        let head_length = match head {
            BoltHead::Hexagon => 0.5 * d,
            BoltHead::SocketCap => 0.4 * d,
        };
        let (nut_length, nut_modulus) = match end {
            ThreadedEnd::Nut { modulus } => (0.4 * d, modulus),
            ThreadedEnd::TappedHole { modulus } => (0.33 * d, modulus),
        };
        sane_stress("modulus of elasticity of the nut", nut_modulus)?;
        let segment = |part, length, area, modulus| BoltSegment {
            part,
            length,
            area,
            modulus,
        };
        Ok(Self::of(
            BoltStiffnessMethod::Vdi2230,
            [
                segment(BoltPart::Head, head_length, shank, modulus),
                segment(BoltPart::Shank, sections.shank, shank, modulus),
                segment(BoltPart::FreeThread, sections.thread, root, modulus),
                segment(BoltPart::EngagedThread, 0.5 * d, root, modulus),
                segment(BoltPart::Nut, nut_length, shank, nut_modulus),
            ],
        ))
    }

    fn of(method: BoltStiffnessMethod, segments: [BoltSegment; 5]) -> Self {
        let resilience: f64 = segments.iter().map(BoltSegment::resilience).sum();
        Self {
            method,
            segments,
            stiffness: from_base(1.0 / resilience),
        }
    }

    /// What the user of this stiffness must be told, beyond the
    /// [general cautions](crate::caution::GENERAL).
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::tension::{BoltStiffness, GripSections};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let sections = GripSections::new(inches(0.75), inches(0.75))?;
    /// let bolt = BoltStiffness::shigley(&"5/8-11 UNC".parse()?, sections, ksi(30e3))?;
    /// assert_eq!(bolt.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(match self.method {
            BoltStiffnessMethod::Shigley => None,
            BoltStiffnessMethod::Vdi2230 => {
                Caution::of_method(methods::VDI_2230_PART_1_RESILIENCE_OF_THE_BOLT)
            }
        })
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::tension::{BoltStiffness, GripSections};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let sections = GripSections::new(inches(0.75), inches(0.75))?;
    /// let bolt = BoltStiffness::shigley(&"5/8-11 UNC".parse()?, sections, ksi(30e3))?;
    /// bolt.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let [head, shank, free, engaged, nut] = self.segments;
        let derivation = Derivation::new("Stiffness of the bolt");
        match self.method {
            BoltStiffnessMethod::Shigley => derivation.step(
                Step::new(
                    "stiffness of the bolt",
                    "kb",
                    "Ad * At * E / (Ad * lt + At * ld)",
                    self.stiffness,
                )
                .with("Ad", shank.area)
                .with("At", free.area)
                .with("E", shank.modulus)
                .with("lt", free.length)
                .with("ld", shank.length)
                .source(methods::SHIGLEY_9TH_ED_EQ_8_17),
            ),
            BoltStiffnessMethod::Vdi2230 => derivation.step(
                Step::new(
                    "stiffness of the bolt",
                    "kb",
                    "1 / (((lSK + l1) / AN + (lGew + lG) / Ad3) / E + lM / (EM * AN))",
                    self.stiffness,
                )
                .with("lSK", head.length)
                .with("l1", shank.length)
                .with("AN", shank.area)
                .with("lGew", free.length)
                .with("lG", engaged.length)
                .with("Ad3", free.area)
                .with("E", shank.modulus)
                .with("lM", nut.length)
                .with("EM", nut.modulus)
                .source(methods::VDI2230),
            ),
        }
    }
}

/// Refuses a ratio outside (0, 1].
pub(super) fn share(quantity: &'static str, value: f64) -> Result<f64, Error> {
    if (1e-9..=1.0).contains(&value) {
        Ok(value)
    } else {
        Err(out_of_range(
            quantity,
            value,
            Allowed::FromTo(1e-9.into(), 1.0.into()),
        ))
    }
}
