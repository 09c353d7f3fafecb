//! Area, stress and factor of each method.

use alloc::{format, string::ToString};

use super::{AiscEdition, ShearBasis, ShearMethod};
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::material::{AstmGrade, BoltGrade, BoltStrength, PropertyClass};
use crate::parts::Zone;
use crate::strength::check::{Level, Resistance};
use crate::tables::strengths::{DesignStress, StressPlane, StressQuantity};
use crate::thread::Thread;
use crate::units::{Area, Force, Stress, ksi, megapascals};

/// Shear yield over tensile yield by the distortion-energy theory, 1/sqrt 3, as Shigley prints it.
const DISTORTION_ENERGY: f64 = 0.577;
/// The same in full: IS 800 writes sqrt 3.
const ONE_OVER_SQRT_3: f64 = 0.577_350_269_189_625_8;
/// Net area of a thread over shank area, IS 800.
const IS_800_NET: f64 = 0.78;

/// How a method turns the load of its stress into resistances.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Factors {
    /// What stress times area is.
    pub(super) of: Level,
    /// What the nominal load is multiplied by for the design resistance.
    pub(super) resistance: Option<f64>,
    /// What the nominal load is divided by for the allowable load.
    pub(super) safety: Option<f64>,
}

impl Factors {
    pub(super) fn resistance(self, load: Force) -> Resistance {
        Resistance {
            nominal: (self.of == Level::Nominal).then_some(load),
            design: match self.of {
                Level::Design => Some(load),
                _ => self.resistance.map(|factor| factor * load),
            },
            allowable: match self.of {
                Level::Allowable => Some(load),
                _ => self.safety.map(|factor| load / factor),
            },
        }
    }
}

impl ShearMethod {
    /// The method, if the numbers in it are in their ranges; a capacity checks them too, but only where the method
    /// is used.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a factor that is not from 1 to 100, or a shear strength that is not positive.
    ///
    /// ```
    /// use shankline::strength::shear::{ShearBasis, ShearMethod};
    /// let odd = ShearMethod::DistortionEnergy { basis: ShearBasis::Yield, design_factor: -3.0 };
    /// assert!(odd.checked().is_err());
    /// ```
    pub fn checked(self) -> Result<Self, Error> {
        self.factors()?;
        if let Self::MilHdbk5 { shear_strength, .. } | Self::NasaStd5020 { shear_strength, .. } =
            self
        {
            positive("shear strength", shear_strength)?;
        }
        Ok(self)
    }

    /// Checks the numbers the caller put in the method, and gives its factors.
    #[inline]
    pub(super) fn factors(self) -> Result<Factors, Error> {
        let factors = |resistance, safety| Factors {
            of: Level::Nominal,
            resistance,
            safety,
        };
        Ok(match self {
            Self::DistortionEnergy { design_factor, .. } => {
                factors(None, Some(sane_factor("design factor", design_factor)?))
            }
            Self::Aisc360 { .. } => factors(Some(0.75), Some(2.00)),
            // EN and IS divide by 1.25, which is the 0.80 that AS and CSA multiply by.
            Self::En1993 | Self::Is800 | Self::As4100 | Self::CsaS16 => factors(Some(0.80), None),
            Self::Bs5950 => Factors {
                of: Level::Design,
                ..factors(None, None)
            },
            Self::Bs449 => Factors {
                of: Level::Allowable,
                ..factors(None, None)
            },
            Self::MilHdbk5 {
                ultimate_factor, ..
            } => factors(None, Some(sane_factor("ultimate factor", ultimate_factor)?)),
            Self::NasaStd5020 {
                ultimate_factor,
                fitting_factor,
                ..
            } => factors(
                None,
                Some(
                    sane_factor("ultimate factor", ultimate_factor)?
                        * sane_factor("fitting factor", fitting_factor)?,
                ),
            ),
        })
    }

    /// Shear stress of one plane through a zone of the bolt, and the area it acts on.
    #[inline]
    pub(super) fn plane(
        self,
        thread: &Thread,
        strength: &BoltStrength,
        zone: Zone,
    ) -> Result<(Stress, Area), Error> {
        let in_shank = zone == Zone::Shank;
        let shank = thread.shank_area();
        let pick = |in_thread: Area| if in_shank { shank } else { in_thread };
        Ok(match self {
            Self::DistortionEnergy { basis, .. } => (
                DISTORTION_ENERGY * basis.stress(strength)?,
                pick(thread.minor_area()),
            ),
            // The area is that of the shank in both zones; threads lower the stress.
            Self::Aisc360 { edition } => (aisc_stress(edition, strength, in_shank), shank),
            Self::En1993 => (
                en_stress(strength.grade, in_shank)?,
                pick(thread.tensile_stress_area()),
            ),
            Self::Bs5950 => (
                bs_5950_stress(strength.grade)?,
                pick(thread.tensile_stress_area()),
            ),
            Self::Bs449 => (bs_449_stress(strength.grade)?, shank),
            Self::As4100 => (0.62 * strength.tensile_strength, pick(thread.minor_area())),
            Self::Is800 => (
                ONE_OVER_SQRT_3 * strength.tensile_strength,
                pick(IS_800_NET * shank),
            ),
            // The standard lowers the resistance by 30 %; stress or area is the same.
            Self::CsaS16 => (
                if in_shank { 0.60 } else { 0.60 * 0.70 } * strength.tensile_strength,
                shank,
            ),
            Self::MilHdbk5 { shear_strength, .. } if in_shank => {
                (positive("shear strength", shear_strength)?, shank)
            }
            Self::MilHdbk5 { .. } => return Err(no_thread_in_plane()),
            Self::NasaStd5020 { shear_strength, .. } => (
                positive("shear strength", shear_strength)?,
                pick(thread.minor_area()),
            ),
        })
    }

    /// What goes with a capacity by this method. The stresses of AISC 360-05 were read in a
    /// reproduction of its table, those of 360-10 in the table; those of later editions were recalled.
    pub(super) fn cautions(self, grade: BoltGrade, any_in_thread: bool) -> Cautions {
        match self {
            Self::Aisc360 { edition } => aisc_cautions(edition, grade),
            Self::En1993 => en_cautions(grade),
            Self::As4100 => outside(grade, "AS 4100 9.3.2.1", "ISO metric bolts", is_iso),
            Self::Is800 => outside(grade, "IS 800:2007 10.3.3", "ISO metric bolts", is_iso),
            Self::CsaS16 => outside(
                grade,
                "CSA S16 13.12.1.2",
                "ASTM structural bolts",
                |grade| matches!(grade, BoltGrade::Astm(_)),
            ),
            Self::NasaStd5020 { .. } if any_in_thread => {
                Cautions::default().with(Some(Caution::BasicMinorArea))
            }
            _ => Cautions::default(),
        }
    }
}

fn is_iso(grade: BoltGrade) -> bool {
    matches!(grade, BoltGrade::Iso(_))
}

fn outside(
    grade: BoltGrade,
    method: &'static str,
    written_for: &'static str,
    covers: fn(BoltGrade) -> bool,
) -> Cautions {
    // Of stated strengths the caller has been told already.
    let by_analogy = grade != BoltGrade::Stated && !covers(grade);
    Cautions::default().with(by_analogy.then_some(Caution::MaterialOutsideMethod {
        method,
        written_for,
    }))
}

/// What goes with Table J3.2 of AISC 360: material it was not written for, stresses that were recalled.
pub(crate) fn aisc_cautions(edition: AiscEdition, grade: BoltGrade) -> Cautions {
    let by_analogy = match grade {
        BoltGrade::Stated => false, // the caller has been told already
        BoltGrade::Sae(_) | BoltGrade::Iso(_) | BoltGrade::Stainless(_) => true,
        BoltGrade::Astm(grade) => matches!(grade.standard(), "A574" | "F593"),
    };
    let analogy = by_analogy.then_some(Caution::MaterialOutsideMethod {
        method: "AISC 360 Table J3.2",
        written_for: "ASTM structural bolts and threaded parts",
    });
    let recalled = match edition {
        AiscEdition::E2005 | AiscEdition::E2010 => None,
        AiscEdition::E2016 => Some("AISC 360-16 Table J3.2"),
        AiscEdition::E2022 => Some("AISC 360-22 Table J3.2"),
    };
    Cautions::default()
        .with(analogy)
        .with(recalled.map(|method| Caution::MethodFromMemory { method }))
}

pub(super) fn is_a307(grade: BoltGrade) -> bool {
    matches!(grade, BoltGrade::Astm(AstmGrade::A307A | AstmGrade::A307B))
}

#[inline]
fn sane_factor(name: &'static str, factor: f64) -> Result<f64, Error> {
    if (1.0..=100.0).contains(&factor) {
        Ok(factor)
    } else {
        Err(out_of_range(
            name,
            factor,
            Allowed::FromTo(1.0.into(), 100.0.into()),
        ))
    }
}

#[cold]
fn no_thread_in_plane() -> Error {
    Error::Mismatch(
        "MIL-HDBK-5 Table 8.1.5(a) gives the shear strength of the full shank only; \
         a plane across the thread has none"
            .to_string(),
    )
}

/// The row of a code for one property class that is wanted. Names are compared last: they cost most.
fn row_for_class(
    code: &'static str,
    grade: BoltGrade,
    wanted: impl Fn(&DesignStress) -> bool,
) -> Result<&'static DesignStress, Error> {
    let BoltGrade::Iso(class) = grade else {
        return Err(not_listed(grade, code));
    };
    let bolts = match class {
        PropertyClass::Class4_6 => "class 4.6",
        PropertyClass::Class4_8 => "class 4.8",
        PropertyClass::Class5_6 => "class 5.6",
        PropertyClass::Class5_8 => "class 5.8",
        PropertyClass::Class6_8 => "class 6.8",
        PropertyClass::Class8_8 => "class 8.8",
        PropertyClass::Class10_9 => "class 10.9",
        _ => return Err(not_listed(grade, code)),
    };
    DesignStress::all_metric()
        .iter()
        .find(|row| wanted(row) && row.bolts == bolts && row.code == code)
        .ok_or_else(|| not_listed(grade, code))
}

/// Nominal tensile strength fub of EN 1993-1-8 Table 3.1, below that of ISO 898-1 for class 8.8.
pub(crate) fn en_tensile_strength(grade: BoltGrade) -> Result<Stress, Error> {
    let of_tension = |row: &DesignStress| row.quantity == StressQuantity::TensileStrength;
    row_for_class("EN 1993-1-8", grade, of_tension)?
        .stress
        .ok_or_else(|| not_listed(grade, "EN 1993-1-8"))
}

/// Strengths of EN 1993-1-8 Table 3.1 that were recalled: classes 4.8, 5.8 and 6.8.
pub(crate) fn en_cautions(grade: BoltGrade) -> Cautions {
    let of_tension = |row: &DesignStress| row.quantity == StressQuantity::TensileStrength;
    let row = row_for_class("EN 1993-1-8", grade, of_tension).ok();
    Cautions::default()
        .with(row.and_then(|row| Caution::from_memory("nominal tensile strength", row.provenance)))
}

/// The factor for shear times fub, of EN 1993-1-8 Tables 3.1 and 3.4.
fn en_stress(grade: BoltGrade, in_shank: bool) -> Result<Stress, Error> {
    let plane = if in_shank {
        StressPlane::Shank
    } else {
        StressPlane::Thread
    };
    let tensile = en_tensile_strength(grade)?;
    row_for_class("EN 1993-1-8", grade, |row| row.plane == Some(plane))?
        .share_of_tensile
        .map(|share| share * tensile)
        .ok_or_else(|| not_listed(grade, "EN 1993-1-8"))
}

/// ps of BS 5950-1 Table 30.
fn bs_5950_stress(grade: BoltGrade) -> Result<Stress, Error> {
    let of_shear = |row: &DesignStress| row.quantity == StressQuantity::ShearDesign;
    row_for_class("BS 5950-1:2000", grade, of_shear)?
        .stress
        .ok_or_else(|| not_listed(grade, "BS 5950-1:2000"))
}

/// Allowable shear stress of BS 449-2 as reproduced capacity tables have it.
fn bs_449_stress(grade: BoltGrade) -> Result<Stress, Error> {
    match grade {
        BoltGrade::Iso(PropertyClass::Class6_8) => Ok(megapascals(140.0)),
        BoltGrade::Iso(PropertyClass::Class8_8) => Ok(megapascals(187.0)),
        BoltGrade::Iso(PropertyClass::Class10_9) => Ok(megapascals(233.0)),
        _ => Err(not_listed(grade, "BS 449-2")),
    }
}

#[cold]
fn not_listed(grade: BoltGrade, code: &str) -> Error {
    Error::NoValue {
        quantity: "shear stress",
        subject: format!("{grade} by {code}"),
        reason: "the code lists other bolts",
    }
}

/// Nominal shear stress of AISC 360 Table J3.2.
///
/// A307, A325 and A490 bolts with their twist-off kinds have rows of their own, in whole ksi. All
/// other material is the row of threaded parts, a share of its tensile strength; A354 BC is
/// stronger than the group the 2010 edition puts it in, and gets no more than the group.
pub(super) fn aisc_stress(edition: AiscEdition, strength: &BoltStrength, in_shank: bool) -> Stress {
    use AstmGrade as G;
    let old = edition == AiscEdition::E2005;
    let pick = |thread: f64, shank: f64| if in_shank { shank } else { thread };
    let threaded_part = if old {
        pick(0.40, 0.50)
    } else {
        pick(0.450, 0.563)
    } * strength.tensile_strength;
    let group_120 = ksi(if old {
        pick(48.0, 60.0)
    } else {
        pick(54.0, 68.0)
    });
    let BoltGrade::Astm(grade) = strength.grade else {
        return threaded_part;
    };
    match grade {
        // The one value holds with or without threads in the plane.
        G::A307A | G::A307B => ksi(if old { 24.0 } else { 27.0 }),
        G::A325To2014
        | G::F3125A325Type1
        | G::F3125A325Type3
        | G::F3125A325m
        | G::F3125F1852Type1
        | G::F3125F1852Type3 => group_120,
        G::F3125A490Type1
        | G::F3125A490m
        | G::F3125A490Type3
        | G::F3125F2280Type1
        | G::F3125F2280Type3 => ksi(if old {
            pick(60.0, 75.0)
        } else {
            pick(68.0, 84.0)
        }),
        G::A354Bc if !old && group_120 < threaded_part => group_120,
        _ => threaded_part,
    }
}

impl ShearBasis {
    #[inline]
    fn stress(self, strength: &BoltStrength) -> Result<Stress, Error> {
        let (stress, quantity) = match self {
            Self::Yield => (strength.yield_strength, "yield strength"),
            Self::Proof => (strength.proof_stress, "proof stress"),
        };
        stress.ok_or_else(|| missing(quantity, strength.grade))
    }
}

#[cold]
fn missing(quantity: &'static str, grade: BoltGrade) -> Error {
    use alloc::string::ToString;
    Error::NoValue {
        quantity,
        subject: grade.to_string(),
        reason: "its standard gives none",
    }
}
