//! Capacity of a bolt in shear.
//!
//! A method fixes area, stress and factor together, as one publisher in one edition does. What
//! can be chosen is the method; nobody can combine the area of one with the stress of another.
//!
//! | method | plane in shank | plane in thread | factors |
//! |---|---|---|---|
//! | [`DistortionEnergy`](ShearMethod::DistortionEnergy) | 0.577 S A | 0.577 S Ar | allowable = nominal / nd, nd chosen by the caller |
//! | [`Aisc360`](ShearMethod::Aisc360), 2005 | 0.50 Fu A | 0.40 Fu A | design = 0.75 nominal, allowable = nominal / 2.00 |
//! | [`Aisc360`](ShearMethod::Aisc360), 2010 to 2022 | 0.563 Fu A | 0.450 Fu A | the same |
//!
//! S is the yield strength or the proof stress, Fu the tensile strength, A = (pi/4) d^2 the shank
//! area, Ar the area at the thread root ([`Thread::minor_area`]).
//! The stresses mean different things: distortion energy is the onset of yield, AISC the fracture
//! of the bolt.

use core::fmt;

use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range};
use crate::material::{AstmGrade, BoltGrade, BoltStrength};
use crate::parts::Zone;
use crate::thread::Thread;
use crate::units::{Area, Force, Stress, ksi};

/// Shear yield over tensile yield by the distortion-energy theory, 1/sqrt 3, as Shigley prints it.
const DISTORTION_ENERGY: f64 = 0.577;

/// The tensile property a machine-design shear check starts from.
///
/// ```
/// use shankline::prelude::*;
/// let homework = ShearMethod::DistortionEnergy { basis: ShearBasis::Yield, design_factor: 2.0 };
/// assert_eq!(homework.to_string(), "distortion energy, yield");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum ShearBasis {
    /// Minimum yield strength Sy (Shigley's problems).
    Yield,
    /// Proof stress Sp (Shigley's Example 8-6, 9th ed.).
    Proof,
}

/// Editions of AISC 360, Specification for Structural Steel Buildings.
///
/// ```
/// use shankline::prelude::*;
/// let method = ShearMethod::Aisc360 { edition: AiscEdition::E2016 };
/// assert_eq!(method.to_string(), "AISC 360-16 J3.6");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub enum AiscEdition {
    /// AISC 360-05.
    #[cfg_attr(feature = "serde", serde(rename = "2005"))]
    E2005,
    /// AISC 360-10.
    #[cfg_attr(feature = "serde", serde(rename = "2010"))]
    E2010,
    /// AISC 360-16. Stresses recalled, the same as in 2010.
    #[cfg_attr(feature = "serde", serde(rename = "2016"))]
    E2016,
    /// AISC 360-22. Stresses recalled, the same as in 2010.
    #[cfg_attr(feature = "serde", serde(rename = "2022"))]
    E2022,
}

/// A published method for the shear capacity of a bolt.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "3/4-10 UNC".parse()?;
/// let strength = SaeGrade::Grade5.strength(inches(0.75))?;
/// let method = ShearMethod::Aisc360 { edition: AiscEdition::E2010 };
/// let shear = bolt_shear(&thread, &strength, &[Zone::Thread], method)?;
/// assert!(shear.design.unwrap() > shear.allowable);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case", deny_unknown_fields)
)]
#[non_exhaustive]
pub enum ShearMethod {
    /// Machine design: shear yield by distortion energy on the section the plane cuts.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., chapter 8.
    DistortionEnergy {
        /// What the shear yield is taken from.
        basis: ShearBasis,
        /// The factor nd the allowable load is divided by; prints use 1.5 to 2.4.
        design_factor: f64,
    },
    /// AISC 360, J3.6 and Table J3.2: nominal shear stress on the shank area, lowered where the
    /// threads are not excluded from the plane.
    ///
    /// ASTM A307, A325 and A490 bolts have the stresses of their rows (27, 54 / 68 and 68 / 84 ksi
    /// from 2010 on); other material has the row of threaded parts, 0.450 and 0.563 of its tensile
    /// strength. Not taken off: the table's reductions for end-loaded joints longer than 38 in (50 in
    /// in 2005) and for A307 bolts with a grip over 5 diameters.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360 {
        /// Edition.
        edition: AiscEdition,
    },
}

impl fmt::Display for ShearMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::DistortionEnergy {
                basis: ShearBasis::Yield,
                ..
            } => "distortion energy, yield",
            Self::DistortionEnergy {
                basis: ShearBasis::Proof,
                ..
            } => "distortion energy, proof",
            Self::Aisc360 { edition } => match edition {
                AiscEdition::E2005 => "AISC 360-05 J3.6",
                AiscEdition::E2010 => "AISC 360-10 J3.6",
                AiscEdition::E2016 => "AISC 360-16 J3.6",
                AiscEdition::E2022 => "AISC 360-22 J3.6",
            },
        })
    }
}

impl ShearMethod {
    /// What the method calls its nominal load: the onset of yield or the fracture of the bolt.
    ///
    /// ```
    /// use shankline::strength::shear::{AiscEdition, ShearMethod};
    /// let method = ShearMethod::Aisc360 { edition: AiscEdition::E2022 };
    /// assert_eq!(method.nominal_meaning(), "shear fracture of the bolt");
    /// ```
    #[must_use]
    pub const fn nominal_meaning(self) -> &'static str {
        match self {
            Self::DistortionEnergy {
                basis: ShearBasis::Yield,
                ..
            } => "onset of shear yield",
            Self::DistortionEnergy {
                basis: ShearBasis::Proof,
                ..
            } => "shear at the proof stress",
            Self::Aisc360 { .. } => "shear fracture of the bolt",
        }
    }

    /// Nominal shear stress of one plane through a zone of the bolt, and the area it acts on.
    #[inline]
    fn plane(
        self,
        thread: &Thread,
        strength: &BoltStrength,
        zone: Zone,
    ) -> Result<(Stress, Area), Error> {
        let in_shank = zone == Zone::Shank;
        Ok(match self {
            Self::DistortionEnergy { basis, .. } => {
                let area = if in_shank {
                    thread.shank_area()
                } else {
                    thread.minor_area()
                };
                (DISTORTION_ENERGY * basis.stress(strength)?, area)
            }
            // The area is that of the shank in both zones; threads lower the stress.
            Self::Aisc360 { edition } => (
                aisc_stress(edition, strength, in_shank),
                thread.shank_area(),
            ),
        })
    }

    /// What goes with a capacity by this method. The stresses of AISC 360-05 were read in a
    /// reproduction of its table, those of 360-10 in the table; those of later editions were recalled.
    fn cautions(self, grade: BoltGrade) -> Cautions {
        let Self::Aisc360 { edition } = self else {
            return Cautions::default();
        };
        let by_analogy = match grade {
            BoltGrade::Stated => false, // the caller has been told already
            BoltGrade::Sae(_) | BoltGrade::Iso(_) | BoltGrade::Stainless(_) => true,
            BoltGrade::Astm(grade) => matches!(grade.standard(), "A574" | "F593"),
        };
        let analogy = by_analogy.then_some(Caution::MaterialOutsideMethod {
            method: "AISC 360 Table J3.2",
            written_for: "ASTM structural bolts and threaded parts",
        });
        let a307 = matches!(grade, BoltGrade::Astm(AstmGrade::A307A | AstmGrade::A307B));
        let grip = a307.then_some(Caution::LongGripOfA307);
        let recalled = match edition {
            AiscEdition::E2005 | AiscEdition::E2010 => None,
            AiscEdition::E2016 => Some("AISC 360-16 Table J3.2"),
            AiscEdition::E2022 => Some("AISC 360-22 Table J3.2"),
        };
        Cautions::default()
            .with(analogy)
            .with(grip)
            .with(recalled.map(|method| Caution::MethodFromMemory { method }))
    }
}

/// Nominal shear stress of AISC 360 Table J3.2.
///
/// A307, A325 and A490 bolts with their twist-off kinds have rows of their own, in whole ksi. All
/// other material is the row of threaded parts, a share of its tensile strength; A354 BC is
/// stronger than the group the 2010 edition puts it in, and gets no more than the group.
fn aisc_stress(edition: AiscEdition, strength: &BoltStrength, in_shank: bool) -> Stress {
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

/// Capacity of one bolt in shear, all planes loaded alike.
///
/// The load is carried to the planes in equal shares, so n planes carry n times the weakest:
/// `F = n min(R_k)`. Methods of some codes add unequal planes instead; this one does not.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M20".parse()?;
/// let strength = PropertyClass::Class8_8.strength(millimetres(20.0))?;
/// let method = ShearMethod::DistortionEnergy { basis: ShearBasis::Yield, design_factor: 2.0 };
/// let shear = bolt_shear(&thread, &strength, &[Zone::Shank, Zone::Thread], method)?;
/// assert_eq!((shear.planes, shear.governing_plane), (2, 2)); // the plane in thread is the weaker
/// assert_eq!(shear.nominal, 2.0 * shear.plane_nominal);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct BoltShear {
    /// The method.
    pub method: ShearMethod,
    /// Number of shear planes.
    pub planes: usize,
    /// The weakest plane, counted from the head, from 1.
    pub governing_plane: usize,
    /// What the weakest plane cuts.
    pub governing_zone: Zone,
    /// Nominal capacity of the weakest plane.
    pub plane_nominal: Force,
    /// Nominal capacity of the bolt: no factor taken off. See
    /// [`ShearMethod::nominal_meaning`].
    pub nominal: Force,
    /// Design strength, for factored loads (LRFD). Only for methods that define one.
    pub design: Option<Force>,
    /// Allowable load, for service loads.
    pub allowable: Force,
    /// The area the weakest plane is taken on.
    pub area: Area,
    /// The shear stress the weakest plane is taken to carry: `plane_nominal / area`.
    pub stress: Stress,
    /// What the nominal load is multiplied by for the design strength.
    pub resistance_factor: Option<f64>,
    /// What the nominal load is divided by for the allowable load.
    pub safety_factor: f64,
    /// The bolt material.
    pub grade: BoltGrade,
}

impl BoltShear {
    /// What the user of this capacity must be told, beyond the
    /// [general cautions](crate::caution::GENERAL).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "3/4-10 UNC".parse()?;
    /// let strength = SaeGrade::Grade5.strength(thread.nominal_diameter())?;
    /// let method = ShearMethod::Aisc360 { edition: AiscEdition::E2010 };
    /// let shear = bolt_shear(&thread, &strength, &[Zone::Thread], method)?;
    /// assert_eq!(shear.cautions().iter().count(), 1); // AISC 360 names ASTM bolts, not SAE grades
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.method.cautions(self.grade)
    }
}

#[cfg(feature = "serde")]
mod serde_fields {
    use super::BoltShear;
    use crate::units::quantity::AsObject;
    use serde::{Serialize, Serializer, ser::SerializeStruct};

    impl Serialize for BoltShear {
        /// The fields, and the cautions, which are worked out only when asked for.
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut object = serializer.serialize_struct("BoltShear", 14)?;
            object.serialize_field("method", &self.method)?;
            object.serialize_field("grade", &self.grade)?;
            object.serialize_field("planes", &self.planes)?;
            object.serialize_field("governing_plane", &self.governing_plane)?;
            object.serialize_field("governing_zone", &self.governing_zone)?;
            object.serialize_field("area", &AsObject(self.area))?;
            object.serialize_field("stress", &AsObject(self.stress))?;
            object.serialize_field("plane_nominal", &AsObject(self.plane_nominal))?;
            object.serialize_field("nominal", &AsObject(self.nominal))?;
            object.serialize_field("resistance_factor", &self.resistance_factor)?;
            object.serialize_field("design", &self.design.map(AsObject))?;
            object.serialize_field("safety_factor", &self.safety_factor)?;
            object.serialize_field("allowable", &AsObject(self.allowable))?;
            object.serialize_field("cautions", &self.cautions())?;
            object.end()
        }
    }
}

/// Shear capacity of one bolt: single shear with one plane, double shear with two, or more.
///
/// `planes` tells what each plane cuts, from the head; run-out counts as thread. The zones come
/// from a length search, from [`ScrewLength::zone_at`](crate::parts::ScrewLength::zone_at), or are
/// simply stated.
///
/// Sources: see [`ShearMethod`]. Checked against Shigley's Example 8-6 and problems of its chapter 8,
/// the AISC 360-05 example of a structural steel primer, and the 17.9 kip cell of the AISC manual.
///
/// # Errors
///
/// [`Error::OutOfRange`] without planes, or for a design factor below 1 or not finite;
/// [`Error::NoValue`] where the grade has no yield or proof strength; [`Error::Mismatch`] if the
/// strengths hold for another nominal diameter than the thread has.
///
/// # Examples
///
/// Shigley, Mechanical Engineering Design, 9th ed., Example 8-6: two 3/4-16 grade 5 bolts on each
/// side of a splice, two planes each, threads not in the planes, design factor 1.5. Printed:
/// 57.8 kip.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::units::kip;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "3/4-16 UNF".parse()?;
/// let strength = SaeGrade::Grade5.strength(thread.nominal_diameter())?;
/// let method = ShearMethod::DistortionEnergy { basis: ShearBasis::Proof, design_factor: 1.5 };
/// let shear = bolt_shear(&thread, &strength, &[Zone::Shank, Zone::Shank], method)?;
/// assert!((2.0 * shear.allowable.get::<kip>() - 57.8).abs() < 0.05);
/// # Ok(())
/// # }
/// ```
#[inline]
pub fn bolt_shear(
    thread: &Thread,
    strength: &BoltStrength,
    planes: &[Zone],
    method: ShearMethod,
) -> Result<BoltShear, Error> {
    let (phi, divisor) = match method {
        ShearMethod::DistortionEnergy { design_factor, .. } => {
            if !(1.0..=100.0).contains(&design_factor) {
                return Err(out_of_range(
                    "design factor",
                    design_factor,
                    Allowed::FromTo(1.0.into(), 100.0.into()),
                ));
            }
            (None, design_factor)
        }
        ShearMethod::Aisc360 { .. } => (Some(0.75), 2.00),
    };
    // A plane in thread is never stronger than one in shank, so the first of the worst governs.
    let governing = planes
        .iter()
        .position(|zone| *zone != Zone::Shank)
        .unwrap_or(0);
    let Some(&governing_zone) = planes.get(governing) else {
        return Err(out_of_range(
            "number of shear planes",
            planes.len(),
            Allowed::AtLeast(1_usize.into()),
        ));
    };
    strength.matches(thread)?;
    let (stress, area) = method.plane(thread, strength, governing_zone)?;
    let plane_nominal = stress * area;
    // At most a few planes: exact in f64.
    #[allow(clippy::cast_precision_loss)]
    let nominal = planes.len() as f64 * plane_nominal;
    Ok(BoltShear {
        method,
        planes: planes.len(),
        governing_plane: governing + 1,
        governing_zone,
        plane_nominal,
        nominal,
        design: phi.map(|phi: f64| phi * nominal),
        allowable: nominal / divisor,
        area,
        stress,
        resistance_factor: phi,
        safety_factor: divisor,
        grade: strength.grade,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::material::{PropertyClass, SaeGrade};
    use crate::units::{inches, kip, millimetres};

    const AISC: ShearMethod = ShearMethod::Aisc360 {
        edition: AiscEdition::E2010,
    };

    #[test]
    fn governing_plane_is_the_first_in_thread() {
        let thread: Thread = "3/4-10 UNC".parse().unwrap();
        let strength = SaeGrade::Grade8.strength(inches(0.75)).unwrap();
        let planes = [Zone::Shank, Zone::RunOut, Zone::Thread];
        let shear = bolt_shear(&thread, &strength, &planes, AISC).unwrap();
        assert_eq!((shear.planes, shear.governing_plane), (3, 2));
        assert_eq!(shear.governing_zone, Zone::RunOut);
    }

    #[test]
    fn aisc_cell_of_a_three_quarter_inch_bolt() {
        // AISC 360-10 Table J3.2, group A, threads included: 54 ksi; 0.75 x 54 x 0.4418 = 17.9 kip.
        // SAE grade 5 has the same tensile strength of 120 ksi as A325.
        let thread: Thread = "3/4-10 UNC".parse().unwrap();
        let strength = SaeGrade::Grade5.strength(inches(0.75)).unwrap();
        let shear = bolt_shear(&thread, &strength, &[Zone::Thread], AISC).unwrap();
        assert!((shear.design.unwrap().get::<kip>() - 17.9).abs() < 0.05);
    }

    /// A354 BC (125 ksi) is in the 120 ksi group from 2010 on; in 2005 it was a threaded part.
    #[test]
    fn a354_bc_gets_no_more_than_its_group() {
        let strength = AstmGrade::A354Bc.strength(inches(0.75)).unwrap();
        for (edition, in_thread, in_shank) in [
            (AiscEdition::E2005, 0.40 * 125.0, 0.50 * 125.0),
            (AiscEdition::E2010, 54.0, 68.0),
        ] {
            let stress = |in_shank| aisc_stress(edition, &strength, in_shank);
            assert!((stress(false) - ksi(in_thread)).abs() < ksi(1e-9));
            assert!((stress(true) - ksi(in_shank)).abs() < ksi(1e-9));
        }
    }

    #[test]
    fn refuses_what_has_no_meaning() {
        let thread: Thread = "M12".parse().unwrap();
        let strength = PropertyClass::Class8_8.strength(millimetres(12.0)).unwrap();
        assert!(bolt_shear(&thread, &strength, &[], AISC).is_err());
        for bad in [0.0, 0.99, f64::NAN, f64::INFINITY, -2.0] {
            let method = ShearMethod::DistortionEnergy {
                basis: ShearBasis::Yield,
                design_factor: bad,
            };
            assert!(
                bolt_shear(&thread, &strength, &[Zone::Shank], method).is_err(),
                "{bad}"
            );
        }
        let sems = SaeGrade::Grade5_1.strength(inches(0.25)).unwrap();
        let thread: Thread = "1/4-20 UNC".parse().unwrap();
        let method = ShearMethod::DistortionEnergy {
            basis: ShearBasis::Yield,
            design_factor: 2.0,
        };
        assert!(matches!(
            bolt_shear(&thread, &sems, &[Zone::Shank], method),
            Err(Error::NoValue { .. })
        ));
    }
}
