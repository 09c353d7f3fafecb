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
//! | [`En1993`](ShearMethod::En1993) | 0.6 fub A | 0.6 fub As (4.6, 5.6, 8.8), 0.5 fub As (4.8, 5.8, 6.8, 10.9) | design = nominal / 1.25 |
//! | [`Bs5950`](ShearMethod::Bs5950) | ps A | ps At | ps is a design strength |
//! | [`Bs449`](ShearMethod::Bs449) | fs A | fs A | fs is an allowable stress |
//! | [`As4100`](ShearMethod::As4100) | 0.62 fuf A | 0.62 fuf Ac | design = 0.80 nominal |
//! | [`Is800`](ShearMethod::Is800) | fub A / sqrt 3 | 0.78 fub A / sqrt 3 | design = nominal / 1.25 |
//! | [`CsaS16`](ShearMethod::CsaS16) | 0.60 Fu A | 0.60 x 0.70 Fu A | design = 0.80 nominal |
//! | [`MilHdbk5`](ShearMethod::MilHdbk5) | Fsu A | refused | allowable at limit load = nominal / (ultimate factor x fitting factor) |
//! | [`NasaStd5020`](ShearMethod::NasaStd5020) | Fsu A | Fsu Ar | allowable at limit load = nominal / (ultimate factor x fitting factor) |
//!
//! S is the yield strength or the proof stress, Fu, fub and fuf the tensile strength, Fsu the ultimate
//! shear strength, A = (pi/4) d^2 the shank area, As = At the tensile stress area, Ar = Ac the area at
//! the thread root ([`Thread::minor_area`](crate::thread::Thread::minor_area)). EN takes the nominal fub
//! of its Table 3.1 (800 MPa for class 8.8), the others the minimum of the bolt standard.
//! The stresses mean different things: distortion energy is the onset of yield, the others the fracture
//! of the bolt. Mixing the area of one row with the stress of another is the classic error.
//!
//! [`bolt_shear`] is the short form for methods with an allowable load and planes loaded alike;
//! [`shear_resistance`] serves all methods, unequal planes and the reductions for long joints, long
//! grips, packing and wide holes. What a method wants to know for them is data: [`ShearMethod::needs`]
//! says it, and a resistance names in `unknown` what it was not told.

mod bolt;
mod facts;
mod planes;
mod reductions;
mod stress;
mod working;

pub use crate::names::AiscEdition;
pub use bolt::{BoltShear, bolt_shear};
pub use facts::{ConnectionFacts, JointLength, ReductionNeed, ReductionNeeds};
pub use planes::{
    LoadedPlane, PlaneRule, ShearResistance, shear_resistance, shear_resistance_on_printed_area,
};
pub use reductions::AppliedReductions;

use core::fmt;

use crate::source::Method;
use crate::strength::check::Level;
use crate::tables::methods;
use crate::units::Stress;

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
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum ShearBasis {
    /// Minimum yield strength Sy (Shigley's problems).
    Yield,
    /// Proof stress Sp (Shigley's Example 8-6, 9th ed.).
    Proof,
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
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
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
    /// AISC 360, J3.6 (J3.7 in 2022) and Table J3.2: nominal shear stress on the shank area, lowered where the
    /// threads are not excluded from the plane.
    ///
    /// ASTM A307, A325 and A490 bolts have the stresses of their rows (27, 54 / 68 and 68 / 84 ksi
    /// from 2010 on); other material has the row of threaded parts, 0.450 and 0.563 of its tensile
    /// strength. [`bolt_shear`] does not take off the table's reductions for end-loaded joints longer
    /// than 38 in (50 in in 2005) and for A307 bolts with a grip over 5 diameters, and names them as
    /// unknown; [`shear_resistance`] takes them off.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360 {
        /// Edition.
        edition: AiscEdition,
    },
    /// EN 1993-1-8:2005 Table 3.4, with the recommended partial factor 1.25 of bolts; a national annex may
    /// set another. Classes 4.6 to 10.9 of ISO 898-1, with the nominal strengths of Table 3.1.
    ///
    /// Read: the page with Table 3.4 in full; four resistance tables agree. Of Table 3.1 the strengths of classes
    /// 4.8, 5.8 and 6.8 were read on a page about property classes.
    #[cfg_attr(feature = "serde", serde(rename = "en_1993_1_8"))]
    En1993,
    /// BS 5950-1:2000, 6.3.2.1 and Table 30: classes 4.6, 8.8 and 10.9, ordinary bolts.
    ///
    /// Read: reproduced capacity tables.
    #[cfg_attr(feature = "serde", serde(rename = "bs_5950"))]
    Bs5950,
    /// BS 449-2, allowable stresses on the shank area in both zones: classes 6.8, 8.8 and 10.9.
    ///
    /// Read: reproduced capacity tables.
    #[cfg_attr(feature = "serde", serde(rename = "bs_449"))]
    Bs449,
    /// AS 4100, 9.3.2.1: minimum tensile strength, core area in the thread; bolts of 1000 MPa and more take 0.83 there, as the
    /// edition of 2020 has it for grade 10.9, which that of 1998 does not know.
    ///
    /// Read: bolt tables of a manufacturer's handbook. Pages that put the tensile stress area in place of
    /// the core area do not meet them.
    #[cfg_attr(feature = "serde", serde(rename = "as_4100"))]
    As4100,
    /// IS 800:2007, 10.3.3, with the net area 0.78 A of the design office tables.
    #[cfg_attr(feature = "serde", serde(rename = "is_800"))]
    Is800,
    /// CSA S16, 13.12.1.2 (2009 to 2019; the 2024 edition numbers it anew).
    ///
    /// Read: three reference pages of one publisher, two of which agree; the third writes 0.65 for
    /// the 0.70 and does not meet its own table.
    #[cfg_attr(feature = "serde", serde(rename = "csa_s16"))]
    CsaS16,
    /// MIL-HDBK-5 Table 8.1.5(a): ultimate single shear of the full shank of aircraft bolts.
    ///
    /// Read: quoted rows of the table. Planes across the thread are refused.
    #[cfg_attr(feature = "serde", serde(rename = "mil_hdbk_5"))]
    MilHdbk5 {
        /// Ultimate shear strength Fsu of the bolt: 75, 95, 108 or 125 ksi in the table.
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Stress>"))]
        shear_strength: Stress,
        /// Ultimate load over limit load, 1.5 for aircraft.
        ultimate_factor: f64,
        /// Fitting factor of 14 CFR 25.625, at least 1; 1.15 in data files that say none, and less only by test.
        #[cfg_attr(
            feature = "serde",
            serde(default = "crate::strength::code::mil_hdbk_5::fitting")
        )]
        fitting_factor: f64,
    },
    /// NASA-STD-5020B, Eq. 12 to 14: ultimate shear of the full diameter, or of the minor area where
    /// threads are in the plane.
    ///
    /// Read: the equations as quoted with their numbers in public engineering notes. The
    /// standard takes the minimum minor diameter; this takes the basic one.
    #[cfg_attr(feature = "serde", serde(rename = "nasa_std_5020"))]
    NasaStd5020 {
        /// Allowable ultimate shear strength Fsu of the fastener material.
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Stress>"))]
        shear_strength: Stress,
        /// Ultimate factor of safety, typically 1.4.
        ultimate_factor: f64,
        /// Fitting factor, at least 1.
        fitting_factor: f64,
    },
}

impl fmt::Display for ShearMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.method().citation)
    }
}

impl ShearMethod {
    /// Publisher, edition and clause.
    ///
    /// ```
    /// assert_eq!(shankline::strength::shear::ShearMethod::Bs5950.method().citation, "BS 5950-1:2000 6.3.2.1");
    /// ```
    #[must_use]
    pub const fn method(self) -> &'static Method {
        match self {
            Self::DistortionEnergy {
                basis: ShearBasis::Yield,
                ..
            } => methods::DISTORTION_ENERGY_YIELD,
            Self::DistortionEnergy {
                basis: ShearBasis::Proof,
                ..
            } => methods::DISTORTION_ENERGY_PROOF,
            Self::Aisc360 { edition } => match edition {
                AiscEdition::E2005 => methods::AISC_360_05_J3_6,
                AiscEdition::E2010 => methods::AISC_360_10_J3_6,
                AiscEdition::E2016 => methods::AISC_360_16_J3_6,
                AiscEdition::E2022 => methods::AISC_360_22_J3_7,
            },
            Self::En1993 => methods::EN_1993_1_8_2005_TABLE_3_4,
            Self::Bs5950 => methods::BS_5950_1_2000_6_3_2_1,
            Self::Bs449 => methods::BS_449_2,
            Self::As4100 => methods::AS_4100_9_3_2_1,
            Self::Is800 => methods::IS_800_2007_10_3_3,
            Self::CsaS16 => methods::CSA_S16_13_12_1_2,
            Self::MilHdbk5 { .. } => methods::MIL_HDBK_5_TABLE_8_1_5_A,
            Self::NasaStd5020 { .. } => methods::NASA_STD_5020B_EQ_12_TO_14,
        }
    }

    /// The levels at which the method states a resistance. Which of them want factored loads says
    /// [`Level::wants_factored_loads`].
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::check::Level;
    /// assert_eq!(ShearMethod::Bs5950.levels(), [Level::Design]);
    /// assert!(!ShearMethod::En1993.levels().contains(&Level::Allowable));
    /// ```
    #[must_use]
    pub const fn levels(self) -> &'static [Level] {
        match self {
            Self::Aisc360 { .. } => &[Level::Nominal, Level::Design, Level::Allowable],
            Self::En1993 | Self::As4100 | Self::Is800 | Self::CsaS16 => {
                &[Level::Nominal, Level::Design]
            }
            Self::Bs5950 => &[Level::Design],
            Self::Bs449 => &[Level::Allowable],
            Self::DistortionEnergy { .. } | Self::MilHdbk5 { .. } | Self::NasaStd5020 { .. } => {
                &[Level::Nominal, Level::Allowable]
            }
        }
    }

    /// Whether the code adds the planes of a bolt, thread or shank, instead of checking each.
    ///
    /// ```
    /// use shankline::strength::shear::ShearMethod;
    /// assert!(ShearMethod::As4100.adds_planes() && !ShearMethod::En1993.adds_planes());
    /// ```
    #[must_use]
    pub const fn adds_planes(self) -> bool {
        matches!(self, Self::As4100 | Self::Is800 | Self::CsaS16)
    }

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
            _ => "shear fracture of the bolt",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Error;
    use crate::material::{AstmGrade, PropertyClass, SaeGrade};
    use crate::parts::Zone;
    use crate::strength::code::aisc_360;
    use crate::thread::Thread;
    use crate::units::ksi;
    use crate::units::{inches, kip, millimetres};

    const AISC: ShearMethod = ShearMethod::Aisc360 {
        edition: AiscEdition::E2010,
    };

    /// The area that the method takes where a thread lies in the plane is one of its own; a plane in the shank has none of it.
    #[test]
    fn basic_minor_area_is_cautioned_where_a_thread_is_cut() {
        let thread: Thread = "3/4-10 UNC".parse().unwrap();
        let strength = SaeGrade::Grade8.strength(inches(0.75)).unwrap();
        let method = ShearMethod::NasaStd5020 {
            shear_strength: ksi(90.0),
            ultimate_factor: 1.4,
            fitting_factor: 1.15,
        };
        for (planes, warns) in [
            (&[Zone::Shank][..], false),
            (&[Zone::Thread], true),
            (&[Zone::RunOut], true),
            (&[Zone::Shank, Zone::Shank], false),
            (&[Zone::Shank, Zone::Thread], true),
        ] {
            let shear = bolt_shear(&thread, &strength, planes, method).unwrap();
            let cautions = shear.cautions();
            let found = cautions
                .iter()
                .any(|own| *own == crate::caution::Caution::BasicMinorArea);
            assert_eq!(found, warns, "{planes:?}");
        }
    }

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
            let stress = |in_shank| {
                aisc_360::shear(edition, &strength, in_shank)
                    .unwrap()
                    .stress
            };
            assert!((stress(false) - ksi(in_thread)).abs() < ksi(1e-9));
            assert!((stress(true) - ksi(in_shank)).abs() < ksi(1e-9));
        }
    }

    /// NASA-STD-5020: the allowable load is the ultimate one over both factors together, 1.4 x 1.15.
    #[test]
    fn factors_of_nasa_multiply() {
        let thread: Thread = "3/8-24 UNF".parse().unwrap();
        let strength = SaeGrade::Grade8.strength(inches(0.375)).unwrap();
        let method = ShearMethod::NasaStd5020 {
            shear_strength: ksi(95.0),
            ultimate_factor: 1.4,
            fitting_factor: 1.15,
        };
        let shear = bolt_shear(&thread, &strength, &[Zone::Shank], method).unwrap();
        assert!((shear.safety_factor - 1.61).abs() < 1e-12);
        let share = (shear.nominal / shear.allowable).value;
        assert!((share - 1.61).abs() < 1e-12);
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

    /// NASA-STD-5020 divides by the ultimate factor times the fitting factor.
    #[test]
    fn nasa_divides_by_both_factors() {
        let thread: Thread = "1/2-20 UNF".parse().unwrap();
        let strength = SaeGrade::Grade8.strength(inches(0.5)).unwrap();
        let of = |ultimate_factor, fitting_factor| {
            let method = ShearMethod::NasaStd5020 {
                shear_strength: ksi(95.0),
                ultimate_factor,
                fitting_factor,
            };
            bolt_shear(&thread, &strength, &[Zone::Shank], method).map(|shear| shear.allowable)
        };
        // 95 ksi x 0.19635 in2 / (1.4 x 1.15) = 11.586 kip.
        let allowed = of(1.4, 1.15).unwrap().get::<kip>();
        assert!((allowed - 11.586).abs() < 0.001, "{allowed}");
        assert!(of(1.4, 0.9).is_err() && of(0.9, 1.15).is_err());
    }
}
