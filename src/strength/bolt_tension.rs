//! Resistance of a bolt to a load along its axis, thread in tension.
//!
//! | method | load | factors | known how |
//! |---|---|---|---|
//! | [`Proof`](TensionMethod::Proof) | Sp At | allowable = nominal / nd | Shigley, Mechanical Engineering Design, 9th ed., chapter 8 |
//! | [`Aisc360`](TensionMethod::Aisc360) | Fnt A, with Fnt of Table J3.2: A325 90 ksi, A490 113 ksi, A307 45 ksi, other material 0.75 Fu | design = 0.75 nominal, allowable = nominal / 2.00 | 2005 and 2010 read, later editions recalled |
//! | [`En1993`](TensionMethod::En1993) | 0.9 fub As, countersunk 0.63 fub As | design = nominal / 1.25 | EN 1993-1-8:2005 Table 3.4, its page read |
//!
//! A is the shank area, At = As the tensile stress area: AISC puts the threads into its stress, the
//! others into the area. Preload is not taken off: in a joint that stays closed the bolt feels only a
//! part of the load; these resistances are for the
//! whole load on the bolt, prying included.

use core::fmt;

use super::check::{Check, Level, Mode, Place, Resistance};
use super::shear::{AiscEdition, aisc_cautions, en_cautions, en_tensile_strength};
use crate::caution::Cautions;
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range};
use crate::material::{AstmGrade, BoltGrade, BoltStrength};
use crate::thread::Thread;
use crate::units::{Area, Force, Stress, ksi};

/// A published method for the tension of a bolt.
///
/// ```
/// use shankline::strength::bolt_tension::TensionMethod;
/// assert_eq!(TensionMethod::Proof { design_factor: 1.2 }.name(), "proof load");
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
pub enum TensionMethod {
    /// Machine design: the proof load over a factor.
    Proof {
        /// The factor nd the allowable load is divided by.
        design_factor: f64,
    },
    /// AISC 360, J3.6 (J3.7 in 2022) and Table J3.2.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360 {
        /// Edition.
        edition: AiscEdition,
    },
    /// EN 1993-1-8:2005 Table 3.4, with the recommended partial factor 1.25.
    #[cfg_attr(feature = "serde", serde(rename = "en_1993_1_8"))]
    En1993 {
        /// Whether the head is countersunk.
        countersunk: bool,
    },
}

impl TensionMethod {
    /// The method, if the numbers in it are in their ranges; a capacity checks them too, but only where the method
    /// is used.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a design factor that is not from 1 to 100.
    ///
    /// ```
    /// use shankline::strength::bolt_tension::TensionMethod;
    /// assert!(TensionMethod::Proof { design_factor: -3.0 }.checked().is_err());
    /// ```
    pub fn checked(self) -> Result<Self, Error> {
        match self {
            Self::Proof { design_factor } if !(1.0..=100.0).contains(&design_factor) => {
                let allowed = Allowed::FromTo(1.0.into(), 100.0.into());
                Err(out_of_range("design factor", design_factor, allowed))
            }
            _ => Ok(self),
        }
    }

    /// Publisher, edition and clause.
    ///
    /// ```
    /// use shankline::strength::bolt_tension::TensionMethod;
    /// let plain = TensionMethod::En1993 { countersunk: false };
    /// assert_eq!(plain.to_string(), "EN 1993-1-8:2005 Table 3.4, tension");
    /// ```
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Proof { .. } => "proof load",
            Self::Aisc360 { edition } => match edition {
                AiscEdition::E2005 => "AISC 360-05 J3.6, tension",
                AiscEdition::E2010 => "AISC 360-10 J3.6, tension",
                AiscEdition::E2016 => "AISC 360-16 J3.6, tension",
                AiscEdition::E2022 => "AISC 360-22 J3.7, tension",
            },
            Self::En1993 { .. } => "EN 1993-1-8:2005 Table 3.4, tension",
        }
    }

    fn cautions(self, grade: BoltGrade) -> Cautions {
        match self {
            Self::Aisc360 { edition } => aisc_cautions(edition, grade),
            Self::En1993 { .. } => en_cautions(grade),
            Self::Proof { .. } => Cautions::default(),
        }
    }
}

impl fmt::Display for TensionMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.name())
    }
}

/// Resistance of one bolt to tension.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::bolt_tension::{TensionMethod, bolt_tension};
/// use shankline::strength::check::Level;
/// use shankline::uom::si::force::kilonewton;
/// # fn main() -> Result<(), shankline::Error> {
/// // M20 class 8.8: 0.9 x 800 x 245 / 1.25 = 141 kN, as tension tables print it
/// let thread: Thread = "M20".parse()?;
/// let strength = PropertyClass::Class8_8.strength(millimetres(20.0))?;
/// let tension = bolt_tension(&thread, &strength, TensionMethod::En1993 { countersunk: false })?;
/// assert!((tension.resistance.at(Level::Design)?.get::<kilonewton>() - 141.0).abs() < 0.5);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BoltTension {
    /// The method.
    pub method: TensionMethod,
    /// The bolt material.
    pub grade: BoltGrade,
    /// The area the stress is taken on.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub area: Area,
    /// The stress of the method on that area.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub stress: Stress,
    /// What nominal resistance is multiplied by for the design resistance.
    pub resistance_factor: Option<f64>,
    /// What nominal resistance is divided by for the allowable load.
    pub safety_factor: Option<f64>,
    /// Nominal, design and allowable load, as far as the method defines them.
    pub resistance: Resistance,
}

/// Resistance of one bolt to tension by a method.
///
/// # Errors
///
/// [`Error::NoValue`] if the grade has no proof stress or the code lists no such bolt;
/// [`Error::OutOfRange`] for a design factor that is not from 1 to 100; [`Error::Mismatch`] if the
/// strengths hold for another diameter.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::bolt_tension::{TensionMethod, bolt_tension};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "3/4-10 UNC".parse()?;
/// let strength = AstmGrade::A307A.strength(inches(0.75))?;
/// // A307 has no proof load: none is made up
/// assert!(bolt_tension(&thread, &strength, TensionMethod::Proof { design_factor: 2.0 }).is_err());
/// # Ok(())
/// # }
/// ```
pub fn bolt_tension(
    thread: &Thread,
    strength: &BoltStrength,
    method: TensionMethod,
) -> Result<BoltTension, Error> {
    strength.matches(thread)?;
    let thread_area = thread.tensile_stress_area();
    let (stress, area, resistance_factor, safety_factor) = match method.checked()? {
        TensionMethod::Proof { design_factor } => {
            let proof = strength.proof_stress.ok_or_else(|| Error::NoValue {
                quantity: "proof stress",
                subject: alloc::format!("{}", strength.grade),
                reason: "its standard gives none",
            })?;
            (proof, thread_area, None, Some(design_factor))
        }
        TensionMethod::Aisc360 { edition } => (
            aisc_stress(edition, strength),
            thread.shank_area(),
            Some(0.75),
            Some(2.00),
        ),
        TensionMethod::En1993 { countersunk } => {
            let share = if countersunk { 0.63 } else { 0.9 };
            let tensile = en_tensile_strength(strength.grade)?;
            (share * tensile, thread_area, Some(1.0 / 1.25), None)
        }
    };
    let load = stress * area;
    let resistance = Resistance::from_levels(
        Some(load),
        resistance_factor.map(|factor| factor * load),
        safety_factor.map(|factor| load / factor),
    )?;
    Ok(BoltTension {
        method,
        grade: strength.grade,
        area,
        stress,
        resistance_factor,
        safety_factor,
        resistance,
    })
}

/// Fnt of AISC 360 Table J3.2, the same in its editions from 2005 on.
///
/// A354 BC is in the group of A325 from 2010 on, and gets no more than the group.
fn aisc_stress(edition: AiscEdition, strength: &BoltStrength) -> Stress {
    use AstmGrade as G;
    match strength.grade {
        BoltGrade::Astm(G::A307A | G::A307B) => ksi(45.0),
        BoltGrade::Astm(
            G::A325To2014
            | G::F3125A325Type1
            | G::F3125A325Type3
            | G::F3125A325m
            | G::F3125F1852Type1
            | G::F3125F1852Type3,
        ) => ksi(90.0),
        BoltGrade::Astm(
            G::F3125A490Type1
            | G::F3125A490Type3
            | G::F3125A490m
            | G::F3125F2280Type1
            | G::F3125F2280Type3,
        ) => ksi(113.0),
        BoltGrade::Astm(G::A354Bc) if edition != AiscEdition::E2005 => ksi(90.0),
        _ => 0.75 * strength.tensile_strength,
    }
}

impl BoltTension {
    /// Checks a load on the bolt against its resistance.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the method defines no resistance at that level; [`Error::OutOfRange`] for a
    /// load that is negative or not finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::bolt_tension::{TensionMethod, bolt_tension};
    /// use shankline::strength::check::Level;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "1/2-13 UNC".parse()?;
    /// let strength = SaeGrade::Grade5.strength(inches(0.5))?;
    /// let tension = bolt_tension(&thread, &strength, TensionMethod::Proof { design_factor: 2.0 })?;
    /// let check = tension.check(pounds_force(3000.0), Level::Allowable)?;
    /// assert!((check.utilisation.value - 0.497).abs() < 0.001); // 85 ksi x 0.1419 in2 / 2
    /// # Ok(())
    /// # }
    /// ```
    pub fn check(&self, load: Force, level: Level) -> Result<Check, Error> {
        let resistance = self.resistance.at(level)?;
        let check = Check::new(Mode::BoltTension, Place::Bolt(1), load, resistance, level)?;
        Ok(check.by(self.method.name()).warned(self.cautions()))
    }

    /// What the user must be told.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::bolt_tension::{TensionMethod, bolt_tension};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let strength = SaeGrade::Grade5.strength(inches(0.5))?;
    /// let method = TensionMethod::Aisc360 { edition: AiscEdition::E2010 };
    /// let tension = bolt_tension(&"1/2-13 UNC".parse()?, &strength, method)?;
    /// assert_eq!(tension.cautions().iter().count(), 1); // written for ASTM bolts
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.method.cautions(self.grade)
    }

    /// The working.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::bolt_tension::{TensionMethod, bolt_tension};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let strength = SaeGrade::Grade5.strength(inches(0.5))?;
    /// let method = TensionMethod::Proof { design_factor: 2.0 };
    /// bolt_tension(&"1/2-13 UNC".parse()?, &strength, method)?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let mut derivation = Derivation::new("Tension of the bolt")
            .step(Step::given("area", "A", self.area))
            .step(Step::given("stress", "F", self.stress).source(self.method.name()));
        let Some(nominal) = self.resistance.nominal else {
            return derivation;
        };
        derivation = derivation.step(
            Step::new("nominal resistance", "Rn", "F * A", nominal)
                .with("F", self.stress)
                .with("A", self.area),
        );
        self.resistance
            .factored(derivation, self.resistance_factor, self.safety_factor)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::material::AstmGrade;
    use crate::units::inches;

    /// The 2022 edition has a clause more before these: every clause of J3 is one further on.
    #[test]
    fn clauses_of_2022_are_one_further_on() {
        use crate::strength::ply::PlyMethod;
        use crate::strength::shear::ShearMethod;
        use crate::strength::slip::{SlipClass, SlipHole, SlipMethod};
        let edition = AiscEdition::E2022;
        let slip = SlipMethod::Aisc360 {
            edition,
            class: SlipClass::A,
            hole: SlipHole::Standard,
            fillers: false,
        };
        let deformation_matters = true;
        let ply = PlyMethod::Aisc360 {
            edition,
            deformation_matters,
        };
        assert_eq!(ShearMethod::Aisc360 { edition }.name(), "AISC 360-22 J3.7");
        assert!(
            TensionMethod::Aisc360 { edition }
                .name()
                .starts_with("AISC 360-22 J3.7")
        );
        assert_eq!(slip.name(), "AISC 360-22 J3.9");
        assert!(ply.name().starts_with("AISC 360-22 J3.11"));
    }

    /// A354 BC (125 ksi) is in the 120 ksi group from 2010 on, as it is in shear; in 2005 it was a
    /// threaded part.
    #[test]
    fn a354_bc_gets_no_more_than_its_group() {
        let strength = AstmGrade::A354Bc.strength(inches(0.75)).unwrap();
        let thread = "3/4-10 UNC".parse().unwrap();
        for (edition, expected) in [
            (AiscEdition::E2005, 0.75 * 125.0),
            (AiscEdition::E2010, 90.0),
            (AiscEdition::E2022, 90.0),
        ] {
            let found = bolt_tension(&thread, &strength, TensionMethod::Aisc360 { edition });
            assert!((found.unwrap().stress - ksi(expected)).abs() < ksi(1e-9));
        }
    }

    /// Strengths of three classes of EN 1993-1-8 Table 3.1 were recalled: both say so. The page of Table 3.4
    /// was read, countersunk heads and planes in the shank included.
    #[test]
    fn recalled_classes_of_en_are_told() {
        use crate::material::PropertyClass as C;
        use crate::parts::Zone;
        use crate::strength::shear::{
            LoadedPlane, PlaneRule, ShearMethod, ShearReductions, shear_resistance,
        };
        let thread = "M12".parse().unwrap();
        for (class, count) in [
            (C::Class4_6, 0),
            (C::Class4_8, 1),
            (C::Class5_6, 0),
            (C::Class5_8, 1),
            (C::Class6_8, 1),
            (C::Class8_8, 0),
            (C::Class10_9, 0),
        ] {
            let strength = class.strength(crate::units::millimetres(12.0)).unwrap();
            let method = TensionMethod::En1993 { countersunk: true };
            let tension = bolt_tension(&thread, &strength, method).unwrap();
            assert_eq!(tension.cautions().iter().count(), count, "{class}");
            for zone in [Zone::Shank, Zone::Thread] {
                let shear = shear_resistance(
                    &thread,
                    &strength,
                    &LoadedPlane::equal(&[zone]),
                    PlaneRule::Each,
                    ShearMethod::En1993,
                    &ShearReductions::default(),
                );
                assert_eq!(shear.unwrap().cautions().iter().count(), count, "{class}");
            }
        }
    }

    /// Shear and tension of one bolt by AISC carry the same cautions about its material.
    #[test]
    fn material_outside_the_code_is_told_as_in_shear() {
        use crate::parts::Zone;
        use crate::strength::shear::{ShearMethod, bolt_shear};
        let edition = AiscEdition::E2010;
        for grade in [AstmGrade::A574, AstmGrade::F593Group1A, AstmGrade::A354Bc] {
            let strength = grade.strength(inches(0.5)).unwrap();
            let thread = "1/2-13 UNC".parse().unwrap();
            let tension = bolt_tension(&thread, &strength, TensionMethod::Aisc360 { edition });
            let method = ShearMethod::Aisc360 { edition };
            let shear = bolt_shear(&thread, &strength, &[Zone::Thread], method).unwrap();
            assert_eq!(tension.unwrap().cautions(), shear.cautions(), "{grade}");
        }
    }
}
