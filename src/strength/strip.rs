//! Stripping of bolt and nut threads, and the engagement at which the bolt breaks first.
//!
//! Three ways to fail share the engaged length: the bolt breaks in the thread outside the nut, its
//! threads strip, or those of the nut or tapped hole do. The first is wanted: a broken bolt is seen.
//!
//! | method | shear strength | factors on the areas |
//! |---|---|---|
//! | [`FedStdH28`](StripMethod::FedStdH28) | half the tensile strength | none |
//! | [`ShearStrength`](StripMethod::ShearStrength) | stated, of each material | none |
//! | [`Alexander`](StripMethod::Alexander) | 0.6 of the tensile strength | C1 C2 (bolt), C1 C3 (nut) |
//! | [`Vdi2230`](StripMethod::Vdi2230) | stated, of each material | the same |
//!
//! The factors of E. M. Alexander (SAE 770420, 1977; ISO/TR 16224): s is the width across flats of a nut
//! (none for a tapped block), d the nominal diameter, Rs the ratio of the shear strengths of nut and
//! bolt threads, (strength x area of the nut) / (strength x area of the bolt):
//!
//! ```text
//! C1 = 3.8 s/d - (s/d)^2 - 2.61                       1.4 <= s/d <= 1.9; 1 beyond, and in a block
//! C2 = 0.897                                          Rs <= 1
//!      5.594 - 13.682 Rs + 14.107 Rs^2 - 6.057 Rs^3 + 0.9353 Rs^4      1 < Rs < 2.2
//! C3 = 0.728 + 1.769 Rs - 2.896 Rs^2 + 1.296 Rs^3     0.4 < Rs < 1; 0.897 for Rs >= 1
//! ```
//!
//! C1 has its top, 1.00, at s/d = 1.9. Beyond Rs = 2.2 the value there, 1.187, is kept: a stronger nut
//! cannot weaken the bolt. Below Rs = 0.4 nothing is known and the method refuses; FED-STD-H28 serves. The
//! polynomials were recalled and not read, so both methods carry a caution; they meet at Rs = 1.
//!
//! Strengths of materials are usually minima. That is right for the threads and wrong for the bolt that
//! should break first: state the greatest tensile strength it may have (a handbook example takes the
//! nominal strength of the next class). Fatigue, bending, worn, coated or oversize-tapped threads and
//! heat are not covered.

use core::fmt;

use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::material::{BoltStrength, NutStrength};
use crate::tables::plies::{PlyMaterial, StrengthKind};
use crate::thread::strip::{EngagedLength, StripAreas, StripForm};
use crate::thread::{Thread, ThreadFit, area};
use crate::units::{Area, Force, Length, Ratio, Stress, ksi};

/// A published method for the stripping strength of threads.
///
/// ```
/// use shankline::{prelude::*, strength::strip::StripMethod};
/// let nut = StripMethod::Alexander { width_across_flats: Some(millimetres(18.0)) };
/// assert_eq!(nut.to_string(), "Alexander, SAE 770420");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum StripMethod {
    /// FED-STD-H28/2 and Machinery's Handbook: shear strength half of the tensile strength, areas as
    /// they are. On the safe side for steel.
    FedStdH28,
    /// Shear strengths as stated, areas as they are: handbooks of fasteners and of airframes.
    ShearStrength,
    /// Alexander, SAE 770420, as in ISO/TR 16224: 0.6 of the tensile strength, and factors for the
    /// stretching of the nut and the bending of the threads. Recalled.
    Alexander {
        /// Width across flats of the nut; none for a tapped hole in a block.
        width_across_flats: Option<Length>,
    },
    /// VDI 2230-1: stated shear strengths with the factors of Alexander. Take 0.8 P off the
    /// engagement ([`EndLoss::Vdi2230`](crate::thread::strip::EndLoss::Vdi2230)). Recalled.
    Vdi2230 {
        /// Width across flats of the nut; none for a tapped hole in a block.
        width_across_flats: Option<Length>,
    },
}

impl fmt::Display for StripMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::FedStdH28 => "FED-STD-H28/2",
            Self::ShearStrength => "stated shear strengths",
            Self::Alexander { .. } => "Alexander, SAE 770420",
            Self::Vdi2230 { .. } => "VDI 2230",
        })
    }
}

/// Material of a thread.
///
/// ```
/// use shankline::{prelude::*, strength::strip::ThreadMaterial};
/// use shankline::tables::plies::PlyMaterial;
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = ThreadMaterial::of_bolt(&PropertyClass::Class8_8.strength(millimetres(12.0))?);
/// let hole = ThreadMaterial::of_ply(PlyMaterial::find("ASTM A36 steel")?)?;
/// assert!(bolt.tensile_strength() > hole.tensile_strength());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct ThreadMaterial {
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    tensile_strength: Stress,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    shear_strength: Option<Stress>,
    cautions: Cautions,
}

impl ThreadMaterial {
    /// A material of a tensile strength and, if known, a shear strength, both ultimate.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless both are positive and finite and the shear strength is not above
    /// the tensile strength.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::ThreadMaterial};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let aluminium = ThreadMaterial::new(megapascals(240.0), Some(megapascals(130.0)))?;
    /// assert_eq!(aluminium.shear_strength(), Some(megapascals(130.0)));
    /// assert!(ThreadMaterial::new(megapascals(0.0), None).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn new(tensile_strength: Stress, shear_strength: Option<Stress>) -> Result<Self, Error> {
        positive("tensile strength", tensile_strength)?;
        if let Some(stress) = shear_strength {
            positive("shear strength", stress)?;
            if stress > tensile_strength {
                let allowed = Allowed::AtMost(tensile_strength.into());
                return Err(out_of_range("shear strength", stress, allowed));
            }
        }
        Ok(Self {
            tensile_strength,
            shear_strength,
            cautions: Cautions::default(),
        })
    }

    /// The material of a bolt: its minimum tensile strength, no shear strength.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::ThreadMaterial};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = ThreadMaterial::of_bolt(&SaeGrade::Grade5.strength(inches(0.5))?);
    /// assert_eq!(bolt.tensile_strength(), ksi(120.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn of_bolt(bolt: &BoltStrength) -> Self {
        let of_tensile_strength = bolt.cautions().iter().copied().find(|caution| {
            matches!(
                caution,
                Caution::StatedStrength
                    | Caution::FromMemory {
                        value: "bolt strength",
                        ..
                    }
            )
        });
        Self {
            tensile_strength: bolt.tensile_strength,
            shear_strength: None,
            cautions: Cautions::default().with(of_tensile_strength),
        }
    }

    /// The material of a tapped hole: tensile and shear strength of a ply material.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the table has no tensile strength of it.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::ThreadMaterial};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let sheet = ThreadMaterial::of_ply(PlyMaterial::find("6061-T6 aluminium, A-basis")?)?;
    /// assert!(sheet.shear_strength().is_some());
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_ply(material: &PlyMaterial) -> Result<Self, Error> {
        let tensile_strength = material.tensile_strength.ok_or_else(|| Error::NoValue {
            quantity: "tensile strength",
            subject: material.name.into(),
            reason: "the table of ply materials has none",
        })?;
        let typical = material.strength_kind == StrengthKind::Typical;
        let recalled =
            Caution::from_memory("set of strengths", material.provenance).or_else(|| {
                let basis = material.shear_strength_basis?;
                let provenance = crate::source::Provenance {
                    basis,
                    ..material.provenance
                };
                Caution::from_memory("shear strength", provenance)
            });
        Ok(Self {
            tensile_strength,
            shear_strength: material.shear_strength,
            cautions: Cautions::default()
                .with(typical.then_some(Caution::TypicalStrength))
                .with(recalled),
        })
    }

    /// The same with a shear strength that is a share of the tensile strength. VDI 2230 has 0.65 for
    /// class 8.8, 0.62 for 10.9 and 0.60 for 12.9 (recalled).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless the share is above 0 and at most 1.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::ThreadMaterial};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = ThreadMaterial::new(megapascals(800.0), None)?.with_shear_ratio(0.65)?;
    /// assert_eq!(bolt.shear_strength(), Some(megapascals(520.0)));
    /// # Ok(())
    /// # }
    /// ```
    pub fn with_shear_ratio(self, ratio: f64) -> Result<Self, Error> {
        if ratio > 0.0 && ratio <= 1.0 {
            let stress = positive("shear strength", ratio * self.tensile_strength)?;
            Ok(Self {
                shear_strength: Some(stress),
                ..self
            })
        } else {
            let allowed = Allowed::OverThru(0.0.into(), 1.0.into());
            Err(out_of_range("shear over tensile strength", ratio, allowed))
        }
    }

    /// Tensile strength.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::ThreadMaterial};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(ThreadMaterial::new(ksi(60.0), None)?.tensile_strength(), ksi(60.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn tensile_strength(&self) -> Stress {
        self.tensile_strength
    }

    /// Shear strength, if known.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::ThreadMaterial};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(ThreadMaterial::new(ksi(60.0), None)?.shear_strength(), None);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn shear_strength(&self) -> Option<Stress> {
        self.shear_strength
    }

    fn known_shear_strength(&self, of: &'static str) -> Result<Stress, Error> {
        self.shear_strength.ok_or_else(|| Error::NoValue {
            quantity: "shear strength",
            subject: of.into(),
            reason: "the method needs one: state it, or its ratio to the tensile strength",
        })
    }
}

/// What fails first when a bolt is pulled until something does.
///
/// ```
/// use shankline::strength::strip::ThreadFailure;
/// assert_eq!(ThreadFailure::NutThreads.to_string(), "the nut threads strip");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
pub enum ThreadFailure {
    /// The bolt breaks, outside the nut.
    Bolt,
    /// The bolt threads strip.
    BoltThreads,
    /// The threads of the nut or tapped hole strip.
    NutThreads,
}

impl fmt::Display for ThreadFailure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Bolt => "the bolt breaks",
            Self::BoltThreads => "the bolt threads strip",
            Self::NutThreads => "the nut threads strip",
        })
    }
}

/// Ultimate axial loads of a bolt and of the threads that hold it.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::strip::{StripMethod, ThreadFailure, ThreadMaterial, stripping};
/// use shankline::thread::strip::EngagedLength;
/// # fn main() -> Result<(), shankline::Error> {
/// // A davit foot: M16 class 8.8 in an aluminium block, 20 mm of full threads (strengths invented).
/// let fit = "M16".parse::<Thread>()?.fit("6g".parse()?, "6H".parse()?)?;
/// let areas = fit.strip_areas(EngagedLength::new(millimetres(20.0))?)?;
/// let bolt = ThreadMaterial::new(megapascals(1000.0), None)?; // the most a class 8.8 bolt may have
/// let block = ThreadMaterial::new(megapascals(260.0), None)?;
/// let result = stripping(&areas, &bolt, &block, StripMethod::FedStdH28)?;
/// assert_eq!(result.first, ThreadFailure::NutThreads);
/// assert!(result.minimum_engagement() > millimetres(28.0)); // longer, or a softer bolt
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct StrippingStrength {
    /// Shear areas and engagement.
    pub areas: StripAreas,
    /// Material of the bolt.
    pub bolt: ThreadMaterial,
    /// Material of the nut or tapped part.
    pub nut: ThreadMaterial,
    /// Shear strength of the bolt threads, by the method.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub bolt_shear_strength: Stress,
    /// Shear strength of the nut threads, by the method.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub nut_shear_strength: Stress,
    /// Shear strength times area of the nut over that of the bolt, Rs.
    pub strength_ratio: f64,
    /// Factors on the areas.
    pub factors: AlexanderFactors,
    /// Ultimate load of the bolt threads.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub bolt_threads: Force,
    /// Ultimate load of the nut threads.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub nut_threads: Force,
    /// Tensile stress area of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub tensile_stress_area: Area,
    /// Breaking load of the bolt: tensile strength times tensile stress area.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub breaking_load: Force,
    /// The least of the three ultimate loads.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub ultimate: Force,
    /// What fails at that load.
    pub first: ThreadFailure,
    cautions: Cautions,
}

/// Factors of Alexander on the shear areas; all 1 for methods without them.
///
/// ```
/// use shankline::{prelude::*, strength::strip::AlexanderFactors};
/// # fn main() -> Result<(), shankline::Error> {
/// let factors = AlexanderFactors::new(Some(millimetres(24.0)), millimetres(16.0), 1.0)?;
/// assert!((factors.dilation - 0.84).abs() < 1e-12);
/// assert!((factors.nut_bending - 0.897).abs() < 1e-12);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AlexanderFactors {
    /// C1, the nut stretches under the wedging of the threads.
    pub dilation: f64,
    /// C2, the bolt threads bend.
    pub bolt_bending: f64,
    /// C3, the nut threads bend.
    pub nut_bending: f64,
}

impl AlexanderFactors {
    const NONE: Self = Self {
        dilation: 1.0,
        bolt_bending: 1.0,
        nut_bending: 1.0,
    };

    /// The factors for a nut of a width across flats (none for a tapped block) on a nominal diameter, and
    /// a ratio Rs. Recalled: see the [module](self).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a nut narrower than 1.4 d and for Rs below 0.4 or not finite.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::AlexanderFactors};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let block = AlexanderFactors::new(None, millimetres(16.0), 0.5)?;
    /// assert!((block.dilation - 1.0).abs() < 1e-12 && block.nut_bending > 1.0);
    /// assert!(AlexanderFactors::new(None, millimetres(16.0), 0.3).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn new(
        width_across_flats: Option<Length>,
        nominal_diameter: Length,
        strength_ratio: f64,
    ) -> Result<Self, Error> {
        positive("nominal diameter", nominal_diameter)?;
        let dilation = match width_across_flats {
            None => 1.0,
            Some(width) => {
                positive("width across flats", width)?;
                let x = (width / nominal_diameter).value;
                if x < 1.4 {
                    let least = 1.4 * nominal_diameter;
                    let allowed = Allowed::AtLeast(least.into());
                    return Err(out_of_range("width across flats", width, allowed));
                }
                let x = x.min(1.9);
                3.8 * x - x * x - 2.61
            }
        };
        if !(strength_ratio >= 0.4 && strength_ratio < f64::INFINITY) {
            let allowed = Allowed::AtLeast(0.4.into());
            let quantity = "ratio Rs of the shear strengths of nut and bolt threads";
            return Err(out_of_range(quantity, strength_ratio, allowed));
        }
        let bolt_bending = if strength_ratio <= 1.0 {
            0.897
        } else {
            let r = strength_ratio.min(2.2);
            5.594 + r * (-13.682 + r * (14.107 + r * (-6.057 + r * 0.9353)))
        };
        let nut_bending = if strength_ratio >= 1.0 {
            0.897
        } else {
            let r = strength_ratio;
            0.728 + r * (1.769 + r * (-2.896 + r * 1.296))
        };
        Ok(Self {
            dilation,
            bolt_bending,
            nut_bending,
        })
    }
}

impl StrippingStrength {
    /// What to be warned of: methods, strengths and tolerances that were recalled, not read.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::strip::{StripMethod, ThreadMaterial, stripping};
    /// use shankline::thread::strip::EngagedLength;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let fit = "1/2-13 UNC".parse::<Thread>()?.fit("2A".parse()?, "2B".parse()?)?;
    /// let areas = fit.strip_areas(EngagedLength::new(inches(0.4375))?)?;
    /// let steel = ThreadMaterial::new(ksi(120.0), None)?;
    /// let method = StripMethod::Alexander { width_across_flats: Some(inches(0.75)) };
    /// let result = stripping(&areas, &steel, &steel, method)?;
    /// assert_eq!(result.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn cautions(&self) -> Cautions {
        self.cautions
    }

    /// Engaged length of full threads at which both threads hold the breaking load of the bolt, all else
    /// as here. Add what the ends lose.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::strip::{StripMethod, ThreadMaterial, stripping};
    /// use shankline::thread::strip::EngagedLength;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let fit = "1/2-13 UNC".parse::<Thread>()?.fit("2A".parse()?, "2B".parse()?)?;
    /// let areas = fit.strip_areas(EngagedLength::new(inches(1.0))?)?;
    /// let steel = ThreadMaterial::new(ksi(90.0), None)?;
    /// let least = stripping(&areas, &steel, &steel, StripMethod::FedStdH28)?.minimum_engagement();
    /// assert!(inches(0.36) < least && least < inches(0.38)); // a nut is 7/16 in high
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn minimum_engagement(&self) -> Length {
        let weaker = self.bolt_threads.min(self.nut_threads);
        (self.breaking_load / weaker) * self.areas.engagement
    }
}

/// Ultimate loads of a bolt and of the threads of bolt and nut, by one method.
///
/// The breaking load is taken on the tensile stress area of the thread; by
/// [`StripMethod::FedStdH28`], for Unified bolts stronger than 100 ksi at minimum material, on the area at
/// the least pitch diameter, as Machinery's Handbook does.
///
/// # Errors
///
/// [`Error::NoValue`] if the method needs a shear strength that is not stated; [`Error::OutOfRange`] for
/// what [`AlexanderFactors::new`] refuses and for loads that are not finite.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::strip::{StripMethod, ThreadFailure, ThreadMaterial, stripping};
/// use shankline::thread::strip::EngagedLength;
/// # fn main() -> Result<(), shankline::Error> {
/// let fit = "M12".parse::<Thread>()?.fit("6g".parse()?, "6H".parse()?)?;
/// let areas = fit.strip_areas(EngagedLength::new(millimetres(9.0))?)?;
/// let bolt = ThreadMaterial::of_bolt(&PropertyClass::Class8_8.strength(millimetres(12.0))?);
/// let nut = ThreadMaterial::new(megapascals(800.0), None)?;
/// let method = StripMethod::Alexander { width_across_flats: Some(millimetres(18.0)) };
/// let result = stripping(&areas, &bolt, &nut, method)?;
/// assert_eq!(result.first, ThreadFailure::Bolt);
/// # Ok(())
/// # }
/// ```
pub fn stripping(
    areas: &StripAreas,
    bolt: &ThreadMaterial,
    nut: &ThreadMaterial,
    method: StripMethod,
) -> Result<StrippingStrength, Error> {
    let (bolt_shear_strength, nut_shear_strength) = match method {
        StripMethod::FedStdH28 => (0.5 * bolt.tensile_strength, 0.5 * nut.tensile_strength),
        StripMethod::Alexander { .. } => (0.6 * bolt.tensile_strength, 0.6 * nut.tensile_strength),
        StripMethod::ShearStrength | StripMethod::Vdi2230 { .. } => (
            bolt.known_shear_strength("the bolt")?,
            nut.known_shear_strength("the nut or tapped part")?,
        ),
    };
    let bolt_plain = positive(
        "load of the bolt threads",
        bolt_shear_strength * areas.bolt_threads,
    )?;
    let nut_plain = positive(
        "load of the nut threads",
        nut_shear_strength * areas.nut_threads,
    )?;
    let strength_ratio = (nut_plain / bolt_plain).value;
    let factors = match method {
        StripMethod::Alexander { width_across_flats }
        | StripMethod::Vdi2230 { width_across_flats } => {
            let diameter = areas.thread.nominal_diameter();
            AlexanderFactors::new(width_across_flats, diameter, strength_ratio)?
        }
        StripMethod::FedStdH28 | StripMethod::ShearStrength => AlexanderFactors::NONE,
    };
    let bolt_threads = factors.dilation * factors.bolt_bending * bolt_plain;
    let nut_threads = factors.dilation * factors.nut_bending * nut_plain;
    let tensile_stress_area = match method {
        StripMethod::FedStdH28 => handbook_stress_area(areas, bolt.tensile_strength)?,
        _ => areas.thread.tensile_stress_area(),
    };
    let breaking_load = bolt.tensile_strength * tensile_stress_area;
    positive("breaking load of the bolt", breaking_load)?;
    let ultimate = breaking_load.min(bolt_threads).min(nut_threads);
    let first = if breaking_load <= ultimate {
        ThreadFailure::Bolt
    } else if bolt_threads <= ultimate {
        ThreadFailure::BoltThreads
    } else {
        ThreadFailure::NutThreads
    };
    let recalled = match method {
        StripMethod::Alexander { .. } => Some("the stripping strength of Alexander, SAE 770420"),
        StripMethod::Vdi2230 { .. } => Some("the stripping strength of VDI 2230"),
        StripMethod::FedStdH28 | StripMethod::ShearStrength => None,
    };
    let cautions = Cautions::default()
        .with(recalled.map(|method| Caution::MethodFromMemory { method }))
        .and(bolt.cautions)
        .and(nut.cautions)
        .and(areas.cautions());
    Ok(StrippingStrength {
        areas: *areas,
        bolt: *bolt,
        nut: *nut,
        bolt_shear_strength,
        nut_shear_strength,
        strength_ratio,
        factors,
        bolt_threads,
        nut_threads,
        tensile_stress_area,
        breaking_load,
        ultimate,
        first,
        cautions,
    })
}

/// Formula 2a or 2b of Machinery's Handbook for Unified threads, the nominal stress area for metric ones.
fn handbook_stress_area(areas: &StripAreas, tensile_strength: Stress) -> Result<Area, Error> {
    let thread = &areas.thread;
    let strong = thread.is_unified() && tensile_strength > ksi(100.0);
    if strong && areas.form == StripForm::MinimumMaterial {
        area::unified_high_strength(areas.bolt_pitch_diameter, thread.pitch())
    } else {
        Ok(thread.tensile_stress_area())
    }
}

/// Engagement at which the bolt breaks before any thread strips, as FED-STD-H28/2 and Machinery's
/// Handbook work it.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::strip::{ThreadMaterial, minimum_engagement};
/// use shankline::uom::si::length::inch;
/// # fn main() -> Result<(), shankline::Error> {
/// // A 1/2-13 bolt of 90 ksi in cast iron of 30 ksi (strengths invented).
/// let fit = "1/2-13 UNC".parse::<Thread>()?.fit("2A".parse()?, "2B".parse()?)?;
/// let bolt = ThreadMaterial::new(ksi(90.0), None)?;
/// let iron = ThreadMaterial::new(ksi(30.0), None)?;
/// let least = minimum_engagement(&fit, &bolt, &iron)?;
/// assert!((least.equal_materials.get::<inch>() - 0.3643).abs() < 5e-5);
/// assert!((least.strength_ratio - 2.080).abs() < 5e-4);
/// assert!((least.engagement.get::<inch>() - 0.7578).abs() < 5e-5);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct MinimumEngagement {
    /// Tensile stress area of the bolt At.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub tensile_stress_area: Area,
    /// Engagement for materials of equal strength, Le = 2 At / (As for each unit of length).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub equal_materials: Length,
    /// Shear areas over that engagement.
    pub areas: StripAreas,
    /// Tensile strength of the bolt material.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub bolt_tensile_strength: Stress,
    /// Tensile strength of the nut material.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub nut_tensile_strength: Stress,
    /// J = (As x tensile strength of the bolt) / (An x tensile strength of the nut).
    pub strength_ratio: f64,
    /// Least engagement of full threads: Le, or Q = J Le where J is above 1.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub engagement: Length,
}

/// The least engagement of full threads by FED-STD-H28/2 and Machinery's Handbook, formulas 1 to 6:
///
/// ```text
/// Le = 2 At / { pi Kn,max [1/2 + 0.57735 n (Es,min - Kn,max)] }
/// J  = As x tensile strength of the bolt / (An x tensile strength of the nut)
/// least engagement: Le if J <= 1, Q = J Le if J > 1
/// ```
///
/// The 2 takes the shear strength as half of the tensile strength. At is the tensile stress area, for
/// Unified bolts over 100 ksi that at the least pitch diameter.
///
/// Source: Machinery's Handbook, 24th ed., in paraphrase (read); an engineering page on FED-STD-H28/2B
/// (read).
///
/// # Errors
///
/// Those of [`ThreadFit::strip_areas`]; [`Error::OutOfRange`] for lengths that are not finite.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::strip::{ThreadMaterial, minimum_engagement};
/// # fn main() -> Result<(), shankline::Error> {
/// let fit = "M10".parse::<Thread>()?.fit("6g".parse()?, "6H".parse()?)?;
/// let steel = ThreadMaterial::new(megapascals(830.0), None)?;
/// let least = minimum_engagement(&fit, &steel, &steel)?;
/// assert_eq!(least.engagement, least.equal_materials); // J is below 1: An exceeds As
/// # Ok(())
/// # }
/// ```
pub fn minimum_engagement(
    fit: &ThreadFit,
    bolt: &ThreadMaterial,
    nut: &ThreadMaterial,
) -> Result<MinimumEngagement, Error> {
    let pitch = fit.bolt.thread.pitch();
    let per_pitch = fit.strip_areas(EngagedLength::new(pitch)?)?;
    let tensile_stress_area = handbook_stress_area(&per_pitch, bolt.tensile_strength)?;
    let equal_materials = 2.0 * tensile_stress_area / per_pitch.bolt_rate();
    let areas = per_pitch.over(equal_materials)?;
    let strengths = (bolt.tensile_strength / nut.tensile_strength).value;
    let strength_ratio = (areas.bolt_threads / areas.nut_threads).value * strengths;
    let engagement = strength_ratio.max(1.0) * equal_materials;
    Ok(MinimumEngagement {
        tensile_stress_area,
        equal_materials,
        areas,
        bolt_tensile_strength: bolt.tensile_strength,
        nut_tensile_strength: nut.tensile_strength,
        strength_ratio,
        engagement: positive("least engagement", engagement)?,
    })
}

/// Engagement that carries a load.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::strip::engagement_for_load;
/// use shankline::thread::strip::EngagedLength;
/// # fn main() -> Result<(), shankline::Error> {
/// let fit = "M10".parse::<Thread>()?.fit("6g".parse()?, "6H".parse()?)?;
/// let areas = fit.strip_areas(EngagedLength::new(millimetres(10.0))?)?;
/// let least =
///     engagement_for_load(&areas, newtons(20_000.0), megapascals(400.0), megapascals(130.0))?;
/// assert_eq!(least.engagement, least.nut_threads);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct EngagementForLoad {
    /// The load.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub load: Force,
    /// Shear stress the bolt threads may have.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub bolt_shear_stress: Stress,
    /// Shear stress the nut threads may have.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub nut_shear_stress: Stress,
    /// The shear areas the lengths follow from.
    pub areas: StripAreas,
    /// Engagement the bolt threads need.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub bolt_threads: Length,
    /// Engagement the nut threads need.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub nut_threads: Length,
    /// The longer of both, of full threads.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub engagement: Length,
}

/// Engagement of full threads that carries a load at given shear stresses, ultimate or allowable:
/// LE = load / (stress x area for each unit of length), for bolt and nut.
///
/// Source: the general form of the formulas above; Handbook of Bolts and Bolted Joints (abstract of
/// the chapter on stripping, read).
///
/// # Errors
///
/// [`Error::OutOfRange`] unless load and stresses are positive and finite and so is the length.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::strip::engagement_for_load;
/// use shankline::thread::strip::EngagedLength;
/// # fn main() -> Result<(), shankline::Error> {
/// let fit = "3/8-16 UNC".parse::<Thread>()?.fit("2A".parse()?, "2B".parse()?)?;
/// let areas = fit.strip_areas(EngagedLength::new(inches(0.5))?)?;
/// assert!(engagement_for_load(&areas, pounds_force(0.0), ksi(60.0), ksi(20.0)).is_err());
/// # Ok(())
/// # }
/// ```
pub fn engagement_for_load(
    areas: &StripAreas,
    load: Force,
    bolt_shear_stress: Stress,
    nut_shear_stress: Stress,
) -> Result<EngagementForLoad, Error> {
    positive("axial load", load)?;
    positive("shear stress of the bolt threads", bolt_shear_stress)?;
    positive("shear stress of the nut threads", nut_shear_stress)?;
    let bolt_threads: Length = load / bolt_shear_stress / areas.bolt_rate();
    let nut_threads: Length = load / nut_shear_stress / areas.nut_rate();
    Ok(EngagementForLoad {
        load,
        bolt_shear_stress,
        nut_shear_stress,
        areas: *areas,
        bolt_threads: positive("engagement of the bolt threads", bolt_threads)?,
        nut_threads: positive("engagement of the nut threads", nut_threads)?,
        engagement: bolt_threads.max(nut_threads),
    })
}

/// A nut by its proof load against the bolt it is put on.
///
/// Nut standards state what a nut bears without stripping on a hard mandrel. A nut whose proof load is
/// not below the breaking load of the bolt lets the bolt break.
///
/// ```
/// use shankline::{prelude::*, strength::strip::nut_proof};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "5/8-11 UNC".parse()?;
/// let bolt = SaeGrade::Grade5.strength(thread.nominal_diameter())?;
/// let nut = NutGrade::SaeJ995Grade5.strength(NutShape::Hex, &thread)?;
/// let proof = nut_proof(&thread, &bolt, &nut)?;
/// assert!(proof.bolt_breaks_first());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NutProof {
    /// Proof load of the nut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub nut_proof_load: Force,
    /// Breaking load of the bolt, of its minimum tensile strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub bolt_breaking_load: Force,
    /// Proof load of the nut over breaking load of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub ratio: Ratio,
    cautions: Cautions,
}

impl NutProof {
    /// Whether the nut bears the breaking load of a bolt of minimum tensile strength.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::nut_proof};
    /// # fn main() -> Result<(), shankline::Error> {
    /// // A jam nut does not hold until the bolt breaks.
    /// let thread: Thread = "5/8-11 UNC".parse()?;
    /// let bolt = SaeGrade::Grade8.strength(thread.nominal_diameter())?;
    /// let nut = NutGrade::SaeJ995Grade8.strength(NutShape::HexJam, &thread)?;
    /// assert!(!nut_proof(&thread, &bolt, &nut)?.bolt_breaks_first());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn bolt_breaks_first(&self) -> bool {
        self.nut_proof_load >= self.bolt_breaking_load
    }

    /// What to be warned of: strengths that were recalled or stated.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::nut_proof};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M12".parse()?;
    /// let bolt = PropertyClass::Class8_8.strength(thread.nominal_diameter())?;
    /// let nut = NutGrade::Iso898_2Class8.strength(NutShape::Style1, &thread)?;
    /// assert_eq!(nut_proof(&thread, &bolt, &nut)?.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn cautions(&self) -> Cautions {
        self.cautions
    }
}

/// Compares the proof load of a nut with the breaking load of a bolt on the same thread.
///
/// Source: proof stresses of SAE J995, ASTM A563, ASTM A194 and ISO 898-2, by the row of the nut.
///
/// # Errors
///
/// [`Error::OutOfRange`] if a load is not positive and finite.
///
/// ```
/// use shankline::{prelude::*, strength::strip::nut_proof};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M16".parse()?;
/// let bolt = PropertyClass::Class10_9.strength(thread.nominal_diameter())?;
/// let soft = NutGrade::Iso898_2Class8.strength(NutShape::Style1, &thread)?;
/// assert!(nut_proof(&thread, &bolt, &soft)?.ratio.value < 1.0);
/// # Ok(())
/// # }
/// ```
pub fn nut_proof(
    thread: &Thread,
    bolt: &BoltStrength,
    nut: &NutStrength,
) -> Result<NutProof, Error> {
    let bolt_breaking_load = bolt.tensile_strength * thread.tensile_stress_area();
    positive("breaking load of the bolt", bolt_breaking_load)?;
    let nut_proof_load = positive("proof load of the nut", nut.proof_load(thread))?;
    Ok(NutProof {
        nut_proof_load,
        bolt_breaking_load,
        ratio: nut_proof_load / bolt_breaking_load,
        cautions: ThreadMaterial::of_bolt(bolt).cautions.and(nut.cautions()),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{megapascals, millimetres};

    /// Where the polynomials hand over to constants they agree to the digits the constants have.
    #[test]
    fn factors_are_continuous() {
        let at = |ratio| AlexanderFactors::new(None, millimetres(10.0), ratio).unwrap();
        assert!((at(1.0 + 1e-9).bolt_bending - 0.897).abs() < 5e-4);
        assert!((at(1.0 - 1e-9).nut_bending - 0.897).abs() < 5e-4);
        assert!((at(2.2).bolt_bending - 1.187).abs() < 5e-4);
        assert!((at(9.0).bolt_bending - at(2.2).bolt_bending).abs() < 1e-12);
        let wide = |share: f64| {
            let width = Some(millimetres(10.0 * share));
            AlexanderFactors::new(width, millimetres(10.0), 1.0)
        };
        assert!((wide(1.9).unwrap().dilation - 1.0).abs() < 1e-12);
        assert!((wide(3.0).unwrap().dilation - 1.0).abs() < 1e-12);
        assert!((wide(1.4).unwrap().dilation - 0.75).abs() < 1e-12);
        assert!(wide(1.39).is_err());
    }

    #[test]
    fn refuses_nonsense() {
        let steel = ThreadMaterial::new(megapascals(800.0), None).unwrap();
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            assert!(ThreadMaterial::new(megapascals(bad), None).is_err());
            assert!(ThreadMaterial::new(megapascals(1.0), Some(megapascals(bad))).is_err());
            assert!(steel.with_shear_ratio(bad).is_err());
            assert!(AlexanderFactors::new(None, millimetres(10.0), bad).is_err());
            let width = Some(millimetres(bad));
            assert!(AlexanderFactors::new(width, millimetres(10.0), 1.0).is_err());
        }
        assert!(ThreadMaterial::new(megapascals(1.0), Some(megapascals(2.0))).is_err());
        let thread: Thread = "M12".parse().unwrap();
        let engaged = EngagedLength::new(millimetres(10.0)).unwrap();
        let areas = thread.strip_areas_basic(engaged).unwrap();
        let strip = |material, method| stripping(&areas, &steel, material, method);
        assert!(strip(&steel, StripMethod::ShearStrength).is_err());
        // A kilometre of thread of a strength near the end of f64.
        let too_strong = ThreadMaterial::new(megapascals(1.7e302), None).unwrap();
        let long = areas.over(millimetres(1e6)).unwrap();
        assert!(stripping(&long, &steel, &too_strong, StripMethod::FedStdH28).is_err());
    }
}
