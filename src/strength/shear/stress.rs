//! Area, stress and factor of each method.

use alloc::string::ToString;

use super::{AiscEdition, ShearBasis, ShearMethod};
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::material::{AstmGrade, BoltGrade, BoltStrength, PropertyClass};
use crate::parts::Zone;
use crate::source::Method;
use crate::strength::check::{Level, Resistance};
use crate::strength::section::{Base, Section, StressOf};
use crate::tables::methods;
use crate::tables::strengths::{DesignStress, StressPlane, StressQuantity};
use crate::units::{Force, Stress, ksi, megapascals};

/// Shear yield over tensile yield by the distortion-energy theory, 1/sqrt 3, as Shigley prints it.
const DISTORTION_ENERGY: f64 = 0.577;
/// The same in full: IS 800 writes sqrt 3.
const ONE_OVER_SQRT_3: f64 = 0.577_350_269_189_625_8;

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

    /// Shear stress of one plane through a zone of the bolt, and the section it acts on.
    #[inline]
    pub(super) fn plane(
        self,
        strength: &BoltStrength,
        zone: Zone,
    ) -> Result<(StressOf, Section), Error> {
        let in_shank = zone == Zone::Shank;
        let pick = |in_thread: Section| if in_shank { Section::Shank } else { in_thread };
        Ok(match self {
            Self::DistortionEnergy { basis, .. } => (basis.stress(strength)?, pick(Section::Root)),
            // The area is that of the shank in both zones; threads lower the stress.
            Self::Aisc360 { edition } => (aisc_stress(edition, strength, in_shank), Section::Shank),
            Self::En1993 => (en_stress(strength.grade, in_shank)?, pick(Section::Stress)),
            Self::Bs5950 => (
                StressOf::table(bs_5950_stress(strength.grade, StressQuantity::ShearDesign)?),
                pick(Section::Stress),
            ),
            Self::Bs449 => (
                StressOf::table(bs_449_stress(strength.grade)?),
                Section::Shank,
            ),
            Self::As4100 => (
                StressOf::share(0.62, Base::tensile("fuf", strength), "0.62 * fuf"),
                pick(Section::Root),
            ),
            Self::Is800 => (
                StressOf::share(
                    ONE_OVER_SQRT_3,
                    Base::tensile("fub", strength),
                    "fub / sqrt(3)",
                ),
                pick(Section::Net),
            ),
            // The standard lowers the resistance by 30 %; stress or area is the same.
            Self::CsaS16 => {
                let base = Base::tensile("Fu", strength);
                let stress = if in_shank {
                    StressOf::share(0.60, base, "0.60 * Fu")
                } else {
                    StressOf::share(0.60 * 0.70, base, "0.60 * 0.70 * Fu")
                };
                (stress, Section::Shank)
            }
            Self::MilHdbk5 { shear_strength, .. } if in_shank => (
                StressOf::stated(positive("shear strength", shear_strength)?),
                Section::Shank,
            ),
            Self::MilHdbk5 { .. } => return Err(no_thread_in_plane(strength.grade)),
            Self::NasaStd5020 { shear_strength, .. } => (
                StressOf::stated(positive("shear strength", shear_strength)?),
                pick(Section::Root),
            ),
        })
    }

    /// What goes with a capacity by this method. The stresses of AISC 360-05 were read in a
    /// reproduction of its table, those of 360-10 in the table; those of later editions were recalled.
    pub(super) fn cautions(self, grade: BoltGrade, any_in_thread: bool) -> Cautions {
        match self {
            Self::Aisc360 { edition } => aisc_cautions(edition, grade),
            Self::En1993 => en_cautions(grade),
            Self::As4100 => outside(grade, methods::AS_4100_9_3_2_1, "ISO metric bolts", is_iso),
            Self::Is800 => outside(
                grade,
                methods::IS_800_2007_10_3_3,
                "ISO metric bolts",
                is_iso,
            ),
            Self::CsaS16 => outside(
                grade,
                methods::CSA_S16_13_12_1_2,
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
    method: &'static Method,
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
        method: methods::AISC_360_TABLE_J3_2,
        written_for: "ASTM structural bolts and threaded parts",
    });
    let recalled = match edition {
        AiscEdition::E2005 | AiscEdition::E2010 => None,
        AiscEdition::E2016 => Some(methods::AISC_360_16_TABLE_J3_2),
        AiscEdition::E2022 => Some(methods::AISC_360_22_TABLE_J3_2),
    };
    Cautions::default()
        .with(analogy)
        .with(recalled.and_then(Caution::of_method))
}

pub(in crate::strength) fn is_a307(grade: BoltGrade) -> bool {
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
fn no_thread_in_plane(grade: BoltGrade) -> Error {
    Error::NoValue {
        quantity: "shear strength across the thread",
        subject: grade.to_string(),
        reason: "MIL-HDBK-5 Table 8.1.5(a) gives that of the full shank only",
    }
}

const EN: &str = "EN 1993-1-8";
const BS: &str = "BS 5950-1:2000";

/// The row of a code for one property class that is wanted. Names are compared last: they cost most.
fn row_for_class(
    code: &'static str,
    grade: BoltGrade,
    wanted: impl Fn(&DesignStress) -> bool,
) -> Option<&'static DesignStress> {
    let BoltGrade::Iso(class) = grade else {
        return None;
    };
    let bolts = match class {
        PropertyClass::Class4_6 => "class 4.6",
        PropertyClass::Class4_8 => "class 4.8",
        PropertyClass::Class5_6 => "class 5.6",
        PropertyClass::Class5_8 => "class 5.8",
        PropertyClass::Class6_8 => "class 6.8",
        PropertyClass::Class8_8 => "class 8.8",
        PropertyClass::Class10_9 => "class 10.9",
        _ => return None,
    };
    DesignStress::all_metric()
        .iter()
        .find(|row| wanted(row) && row.bolts == bolts && row.code == code)
}

fn en_row(grade: BoltGrade, of: StressQuantity) -> Option<Stress> {
    row_for_class(EN, grade, |row| row.quantity == of)?.stress
}

/// [`en_tensile_strength`] where the table has the grade.
pub(crate) fn en_tensile_strength_if_listed(grade: BoltGrade) -> Option<Stress> {
    en_row(grade, StressQuantity::TensileStrength)
}

fn en_strength(
    grade: BoltGrade,
    of: StressQuantity,
    quantity: &'static str,
) -> Result<Stress, Error> {
    en_row(grade, of).ok_or_else(|| {
        not_listed(
            quantity,
            grade,
            "EN 1993-1-8 Table 3.1 has classes 4.6 to 10.9",
        )
    })
}

/// Nominal tensile strength fub of EN 1993-1-8 Table 3.1, below that of ISO 898-1 for class 8.8.
pub(crate) fn en_tensile_strength(grade: BoltGrade) -> Result<Stress, Error> {
    en_strength(grade, StressQuantity::TensileStrength, "tensile strength")
}

/// Nominal yield strength fyb of EN 1993-1-8 Table 3.1.
pub(crate) fn en_yield_strength(grade: BoltGrade) -> Result<Stress, Error> {
    en_strength(grade, StressQuantity::YieldStrength, "yield strength")
}

/// fub of EN 1993-1-8 for a working.
pub(in crate::strength) fn en_base(grade: BoltGrade) -> Result<Base, Error> {
    Ok(Base {
        what: "nominal tensile strength",
        symbol: "fub",
        value: en_tensile_strength(grade)?,
        table: Some(methods::EN_1993_1_8_2005_TABLE_3_1),
    })
}

/// Strengths of EN 1993-1-8 Table 3.1 that were recalled: classes 4.8, 5.8 and 6.8.
pub(crate) fn en_cautions(grade: BoltGrade) -> Cautions {
    let of_tension = |row: &DesignStress| row.quantity == StressQuantity::TensileStrength;
    let row = row_for_class(EN, grade, of_tension);
    Cautions::default()
        .with(row.and_then(|row| Caution::from_memory("nominal tensile strength", row.provenance)))
}

/// The factor for shear times fub, of EN 1993-1-8 Tables 3.1 and 3.4.
fn en_stress(grade: BoltGrade, in_shank: bool) -> Result<StressOf, Error> {
    let plane = if in_shank {
        StressPlane::Shank
    } else {
        StressPlane::Thread
    };
    let base = en_base(grade)?;
    row_for_class(EN, grade, |row| row.plane == Some(plane))
        .and_then(|row| row.share_of_tensile)
        .map(|share| StressOf::factor(("av", share), base, "av * fub"))
        .ok_or_else(|| {
            not_listed(
                "shear stress",
                grade,
                "EN 1993-1-8 Table 3.4 has no such class",
            )
        })
}

/// ps or pt of BS 5950-1, Tables 30 and 34.
pub(in crate::strength) fn bs_5950_stress(
    grade: BoltGrade,
    of: StressQuantity,
) -> Result<Stress, Error> {
    let quantity = if of == StressQuantity::TensionDesign {
        "design strength in tension"
    } else {
        "design strength in shear"
    };
    row_for_class(BS, grade, |row| row.quantity == of)
        .and_then(|row| row.stress)
        .ok_or_else(|| not_listed(quantity, grade, "BS 5950-1 has classes 4.6, 8.8 and 10.9"))
}

/// Allowable shear stress of BS 449-2 as reproduced capacity tables have it.
fn bs_449_stress(grade: BoltGrade) -> Result<Stress, Error> {
    match grade {
        BoltGrade::Iso(PropertyClass::Class6_8) => Ok(megapascals(140.0)),
        BoltGrade::Iso(PropertyClass::Class8_8) => Ok(megapascals(187.0)),
        BoltGrade::Iso(PropertyClass::Class10_9) => Ok(megapascals(233.0)),
        _ => Err(not_listed(
            "allowable shear stress",
            grade,
            "of BS 449-2, those of classes 6.8, 8.8 and 10.9 are known",
        )),
    }
}

/// The one way in which a method refuses a grade that it does not list.
#[cold]
fn not_listed(quantity: &'static str, grade: BoltGrade, reason: &'static str) -> Error {
    Error::NoValue {
        quantity,
        subject: grade.to_string(),
        reason,
    }
}

/// Nominal shear stress of AISC 360 Table J3.2.
///
/// A307, A325 and A490 bolts with their twist-off kinds have rows of their own, in whole ksi. All
/// other material is the row of threaded parts, a share of its tensile strength; A354 BC is
/// stronger than the group the 2010 edition puts it in, and gets no more than the group.
pub(super) fn aisc_stress(
    edition: AiscEdition,
    strength: &BoltStrength,
    in_shank: bool,
) -> StressOf {
    use AstmGrade as G;
    let old = edition == AiscEdition::E2005;
    let pick = |thread: f64, shank: f64| if in_shank { shank } else { thread };
    let table = |thread: f64, shank: f64| StressOf::table(ksi(pick(thread, shank)));
    let (share, formula) = match (old, in_shank) {
        (true, false) => (0.40, "0.40 * Fu"),
        (true, true) => (0.50, "0.50 * Fu"),
        (false, false) => (0.450, "0.450 * Fu"),
        (false, true) => (0.563, "0.563 * Fu"),
    };
    let threaded_part = StressOf::share(share, Base::tensile("Fu", strength), formula);
    let group_120 = if old {
        table(48.0, 60.0)
    } else {
        table(54.0, 68.0)
    };
    let BoltGrade::Astm(grade) = strength.grade else {
        return threaded_part;
    };
    match grade {
        // The one value holds with or without threads in the plane.
        G::A307A | G::A307B => StressOf::table(ksi(if old { 24.0 } else { 27.0 })),
        grade if grade.is_a325() => group_120,
        grade if grade.is_a490() && old => table(60.0, 75.0),
        grade if grade.is_a490() => table(68.0, 84.0),
        G::A354Bc if !old && group_120.stress < threaded_part.stress => group_120,
        _ => threaded_part,
    }
}

impl ShearBasis {
    #[inline]
    fn stress(self, strength: &BoltStrength) -> Result<StressOf, Error> {
        let (stress, what, symbol, formula) = match self {
            Self::Yield => (
                strength.yield_strength,
                "yield strength",
                "Sy",
                "0.577 * Sy",
            ),
            Self::Proof => (strength.proof_stress, "proof stress", "Sp", "0.577 * Sp"),
        };
        let value =
            stress.ok_or_else(|| not_listed(what, strength.grade, "its standard gives none"))?;
        let base = Base {
            what,
            symbol,
            value,
            table: None,
        };
        Ok(StressOf::share(DISTORTION_ENERGY, base, formula))
    }
}
