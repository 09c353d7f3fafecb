//! What pickling, plating and hot dipping do to hard bolts: hydrogen makes them brittle.

use crate::source::cite;
use crate::tables::methods;
use alloc::vec::Vec;
use core::fmt;

use super::{BoltGrade, BoltStrength, Finish, PropertyClass, Severity, Sizes};
use crate::tables::grades::{AstmGradeRow, HardnessScale, PropertyClassRow, SaeGradeRow};
use crate::units::{Length, Stress, ksi, megapascals};

/// Rockwell C from which plated bolts are baked.
const BAKED_FROM: f64 = 40.0;
/// Least Rockwell C of a product from which hot dipping is a risk.
const DIPPED_BELOW: f64 = 33.0;
/// Tensile strength from which hot dipping is a risk.
const DIPPED_BELOW_STRENGTH: Stress = ksi(150.0);
/// Hard bolts are the ones that plating and pickling make brittle: common practice, no source.
const HARD: Stress = megapascals(1000.0);

/// What there is to say of hydrogen in a bolt. `Display` writes it with its source.
///
/// ```
/// use shankline::material::{Hydrogen, Severity};
/// assert_eq!(Hydrogen::CoatingForbidden.severity(), Severity::Fault);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Hydrogen {
    /// The standard of the bolt forbids the coating.
    CoatingForbidden,
    /// Too hard or too strong for hot dipping.
    TooHardToDip {
        /// Least Rockwell C hardness of the grade, where one has been read.
        hardness: Option<f64>,
        /// Least tensile strength of the grade.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        strength: Stress,
    },
    /// May be dipped, by a shop that takes care in cleaning.
    DippedWithCare,
    /// Plated, so hard that it must be baked, and not said to be.
    NotBaked {
        /// Greatest Rockwell C hardness of the grade.
        hardness: f64,
    },
    /// Plated and baked, but so hard that baking may not be enough.
    PlatedHard {
        /// Greatest Rockwell C hardness of the grade.
        hardness: f64,
    },
    /// Strong and plated, and nobody has read how hard the grade may be.
    HardnessUnknown,
    /// Strong, and nobody says what it is coated with.
    FinishUnknown,
}

impl Hydrogen {
    /// What it weighs.
    ///
    /// ```
    /// use shankline::material::{Hydrogen, Severity};
    /// assert_eq!(Hydrogen::FinishUnknown.severity(), Severity::Undecided);
    /// ```
    #[must_use]
    pub const fn severity(self) -> Severity {
        match self {
            Self::CoatingForbidden | Self::TooHardToDip { .. } | Self::NotBaked { .. } => {
                Severity::Fault
            }
            Self::HardnessUnknown | Self::FinishUnknown => Severity::Undecided,
            Self::DippedWithCare | Self::PlatedHard { .. } => Severity::Caution,
        }
    }
}

impl fmt::Display for Hydrogen {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (words, source) = match self {
            Self::CoatingForbidden => (
                "the standard of the bolt forbids zinc and other metallic coatings but zinc flake",
                Some(methods::ASTM_A490_COATINGS),
            ),
            Self::TooHardToDip { .. } => (
                "the bolt is too hard to be hot-dip galvanized: hydrogen may make it brittle",
                Some(methods::ASTM_F2329_A143_HARD_BOLTS),
            ),
            Self::DippedWithCare => (
                "bolts of class 10.9 are dipped only by a shop that takes care in cleaning",
                Some(methods::ISO_10684_CLASS_10_9),
            ),
            Self::NotBaked { .. } => (
                "a plated bolt so hard must be baked after plating",
                Some(methods::ASTM_F1941_ISO_4042_BAKING),
            ),
            Self::PlatedHard { .. } => (
                "baking may not be enough for a bolt so hard: ask the plater for a test",
                Some(methods::ISO_4042_HARD_PARTS),
            ),
            Self::HardnessUnknown => ("no greatest hardness of the grade has been read", None),
            Self::FinishUnknown => ("the coating of this hard bolt is not described", None),
        };
        cite(f, words, source)
    }
}

/// What there is to say of hydrogen in a bolt of a grade and finish; nothing where nothing speaks against it.
///
/// Limits of hardness hold for the size of the strengths, and that of strength for stated ones as well.
/// Of stainless bolts whose finish nobody gives, it is taken that they have none.
///
/// | rule | limit | source |
/// |---|---|---|
/// | hot dipping is a risk from a least product hardness of | 33 HRC | ASTM F2329, 7.2.2 (a supplier quotes it) |
/// | hot dipping is a risk from a tensile strength of about | 150 ksi (1034 MPa) | ASTM A143 (a supplier quotes it; its 1100 MPa is a slip of the print) |
/// | classes up to 10.9 are dipped, 10.9 with care in cleaning | 320 HV | ISO 10684, scope (published); the care is recalled |
/// | plated bolts are baked from a hardness of | 40 HRC | ASTM F1941 (a supplier's page); ISO 4042:2018 above 390 HV, the same in SAE J1648 |
/// | A490 and F2280 take no metal but zinc flake | | ASTM A490-00, 5.4 (quoted in a mailing list of engineers); F3125 from 2015 on (a supplier's answer) |
///
/// ```
/// use shankline::material::{Finish, Severity, hydrogen};
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = SaeGrade::Grade8.strength(inches(0.75))?;
/// let found = hydrogen(&bolt, Some(Finish::HotDipGalvanized));
/// assert_eq!(found[0].severity(), Severity::Fault);
/// let milder = SaeGrade::Grade5.strength(inches(0.75))?;
/// assert!(hydrogen(&milder, Some(Finish::HotDipGalvanized)).is_empty());
/// # Ok(())
/// # }
/// ```
#[must_use]
pub fn hydrogen(bolt: &BoltStrength, finish: Option<Finish>) -> Vec<Hydrogen> {
    let mut found = Vec::new();
    let strong = bolt.tensile_strength >= HARD;
    let Some(finish) = finish.map(Finish::of_coat) else {
        if strong && !matches!(bolt.grade, BoltGrade::Stainless(_)) {
            found.push(Hydrogen::FinishUnknown);
        }
        return found;
    };
    let metallic = !matches!(finish, Finish::Bare(_) | Finish::ZincFlake);
    if metallic && bolt.grade.is_a490() {
        found.push(Hydrogen::CoatingForbidden);
        return found;
    }
    if finish.is_hot_dipped() {
        found.extend(dipped(bolt));
    }
    let (Finish::ZincPlated { baked } | Finish::CadmiumPlated { baked }) = finish else {
        return found;
    };
    match greatest_hardness(bolt.grade) {
        Some(hardness) if hardness >= BAKED_FROM => found.push(if baked {
            Hydrogen::PlatedHard { hardness }
        } else {
            Hydrogen::NotBaked { hardness }
        }),
        None if strong => found.push(Hydrogen::HardnessUnknown),
        _ => {}
    }
    found
}

fn dipped(bolt: &BoltStrength) -> Option<Hydrogen> {
    let hardness = least_hardness(bolt.grade, bolt.nominal_diameter);
    let strong = bolt.tensile_strength >= DIPPED_BELOW_STRENGTH;
    match bolt.grade {
        // Its own standard takes in what the American rules would leave out by a hair: 1040 MPa, 32 HRC.
        BoltGrade::Iso(PropertyClass::Class10_9) => Some(Hydrogen::DippedWithCare),
        _ if strong || hardness.is_some_and(|hardness| hardness >= DIPPED_BELOW) => {
            Some(Hydrogen::TooHardToDip {
                hardness,
                strength: bolt.tensile_strength,
            })
        }
        _ => None,
    }
}

/// The least Rockwell C hardness of a grade at a size; none for grades measured on another scale, or if
/// nobody has read one.
fn least_hardness(grade: BoltGrade, diameter: Length) -> Option<f64> {
    let covers = |from, over, thru| Sizes { from, over, thru }.cover(diameter);
    let on_c = |scale: Option<HardnessScale>, value: Option<f64>| {
        value.filter(|_| scale == Some(HardnessScale::RockwellC))
    };
    match grade {
        BoltGrade::Iso(class) => PropertyClassRow::all()
            .iter()
            .filter(|row| row.class == class)
            .find(|row| covers(row.size_from, row.size_over, Some(row.size_thru)))
            .and_then(|row| row.rockwell_c_min),
        BoltGrade::Sae(grade) => SaeGradeRow::all()
            .iter()
            .filter(|row| row.grade == grade)
            .find(|row| covers(row.size_from, row.size_over, Some(row.size_thru)))
            .and_then(|row| on_c(Some(row.core_hardness_scale), Some(row.core_hardness_min))),
        BoltGrade::Astm(grade) => AstmGradeRow::all_inch()
            .iter()
            .chain(AstmGradeRow::all_metric())
            .filter(|row| row.grade == grade)
            .find(|row| covers(row.size_from, row.size_over, row.size_thru))
            .and_then(|row| on_c(row.core_hardness_min_scale, row.core_hardness_min)),
        // No hardness is tabled of the others.
        _ => None,
    }
}

/// The greatest Rockwell C hardness that any size of a grade may have; zero for grades measured on a softer
/// scale, none if nobody has read one.
fn greatest_hardness(grade: BoltGrade) -> Option<f64> {
    let on_c = |scale: HardnessScale, value: f64| match scale {
        HardnessScale::RockwellC => value,
        _ => 0.0,
    };
    let greatest = |a: f64, b: f64| a.max(b);
    match grade {
        BoltGrade::Iso(class) => PropertyClassRow::all()
            .iter()
            .filter(|row| row.class == class)
            .map(|row| row.rockwell_c_max.unwrap_or(0.0))
            .reduce(greatest),
        BoltGrade::Sae(grade) => SaeGradeRow::all()
            .iter()
            .filter(|row| row.grade == grade)
            .map(|row| on_c(row.core_hardness_scale, row.core_hardness_max))
            .reduce(greatest),
        BoltGrade::Astm(grade) => AstmGradeRow::all_inch()
            .iter()
            .chain(AstmGradeRow::all_metric())
            .filter(|row| row.grade == grade)
            .filter_map(|row| Some(on_c(row.core_hardness_max_scale?, row.core_hardness_max?)))
            .reduce(greatest),
        // No hardness is tabled of the others.
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::material::{AstmGrade, SaeGrade};
    use crate::units::{inches, millimetres};

    const DIPPED: Option<Finish> = Some(Finish::HotDipGalvanized);

    fn worst(grade: impl Into<BoltGrade>, size: Length, finish: Option<Finish>) -> Severity {
        let bolt = grade.into().strength(size).unwrap();
        let found = hydrogen(&bolt, finish).into_iter().map(Hydrogen::severity);
        found.max().unwrap_or(Severity::Fine)
    }

    /// ASTM F2329, 7.2.2, as a supplier reads it: A490, A354 BD and SAE grade 8 are not to be dipped.
    #[test]
    fn hard_bolts_are_not_dipped() {
        let inch = inches(0.75);
        for grade in [SaeGrade::Grade8, SaeGrade::Grade8_1, SaeGrade::Grade8_2] {
            assert_eq!(worst(grade, inch, DIPPED), Severity::Fault, "{grade}");
        }
        for grade in [AstmGrade::A354Bd, AstmGrade::A354BdTo2011, AstmGrade::A574] {
            assert_eq!(worst(grade, inch, DIPPED), Severity::Fault, "{grade}");
        }
        for grade in [SaeGrade::Grade5, SaeGrade::Grade7, SaeGrade::Grade2] {
            assert_eq!(worst(grade, inch, DIPPED), Severity::Fine, "{grade}");
        }
        for grade in [AstmGrade::F3125A325Type1, AstmGrade::A449Type1] {
            assert_eq!(worst(grade, inch, DIPPED), Severity::Fine, "{grade}");
        }
        // Over 2-1/2 in the old grade BD has 140 ksi and 31 HRC.
        let large = worst(AstmGrade::A354BdTo2011, inches(3.0), DIPPED);
        assert_eq!(large, Severity::Fine);
    }

    #[test]
    fn iso_classes_are_dipped_up_to_10_9() {
        let of = |class| worst(class, millimetres(12.0), DIPPED);
        assert_eq!(of(PropertyClass::Class8_8), Severity::Fine);
        assert_eq!(of(PropertyClass::Class10_9), Severity::Caution);
        assert_eq!(of(PropertyClass::Class12_9), Severity::Fault);
        let undersize = Some(Finish::HotDipGalvanizedUndersize);
        let hard = worst(PropertyClass::Class12_9, millimetres(12.0), undersize);
        assert_eq!(hard, Severity::Fault);
    }

    #[test]
    fn every_a490_stays_without_metal() {
        let plated = Some(Finish::ZincPlated { baked: true });
        for (grade, size) in [
            (AstmGrade::F3125A490Type1, inches(0.75)),
            (AstmGrade::F3125A490Type3, inches(0.75)),
            (AstmGrade::F3125F2280Type1, inches(0.75)),
            (AstmGrade::F3125F2280Type3, inches(0.75)),
            (AstmGrade::F3125A490m, millimetres(20.0)),
        ] {
            let bolt = grade.strength(size).unwrap();
            for finish in [DIPPED, plated, Some(Finish::MechanicalZinc)] {
                assert_eq!(hydrogen(&bolt, finish), [Hydrogen::CoatingForbidden]);
            }
            assert_eq!(hydrogen(&bolt, Some(Finish::ZincFlake)), []);
        }
    }

    #[test]
    fn what_is_not_known_of_hard_bolts_is_told() {
        let stated = BoltStrength::stated(inches(0.5), None, None, ksi(160.0)).unwrap();
        assert_eq!(hydrogen(&stated, None), [Hydrogen::FinishUnknown]);
        let plated = Some(Finish::ZincPlated { baked: true });
        assert_eq!(hydrogen(&stated, plated), [Hydrogen::HardnessUnknown]);
        let strength = ksi(160.0);
        let too_hard = Hydrogen::TooHardToDip {
            hardness: None,
            strength,
        };
        assert_eq!(hydrogen(&stated, DIPPED), [too_hard]);
        let milder = BoltStrength::stated(inches(0.5), None, None, ksi(120.0)).unwrap();
        assert_eq!(hydrogen(&milder, None), []);
    }

    #[test]
    fn plated_bolts_are_baked_from_40_hrc() {
        let plated = |baked| Some(Finish::ZincPlated { baked });
        let of = |class: PropertyClass, baked| {
            hydrogen(&class.strength(millimetres(12.0)).unwrap(), plated(baked))
        };
        assert_eq!(of(PropertyClass::Class10_9, false), []); // up to 39 HRC
        let hardness = 44.0;
        let hard = PropertyClass::Class12_9;
        assert_eq!(of(hard, false), [Hydrogen::NotBaked { hardness }]);
        assert_eq!(of(hard, true), [Hydrogen::PlatedHard { hardness }]);
    }

    fn plated(grade: impl Into<BoltGrade>, size: Length) -> Vec<Hydrogen> {
        let bolt = grade.into().strength(size).unwrap();
        hydrogen(&bolt, Some(Finish::ZincPlated { baked: false }))
    }

    /// Greatest hardness by the standard of the grade, of all its sizes: SAE J429 grade 5.1 has 40 HRC, from which bolts are baked,
    /// and grade 8 39; ASTM A574 45, A354 BD 38; ASTM F568M 12.9 44 and 10.9 39.
    #[test]
    fn hardness_decides_on_baking() {
        let half = inches(0.5);
        let hard = |hardness| Vec::from([Hydrogen::NotBaked { hardness }]);
        assert_eq!(plated(SaeGrade::Grade5_1, half), hard(40.0));
        assert_eq!(plated(SaeGrade::Grade8, half), []);
        assert_eq!(plated(SaeGrade::Grade2, half), []);
        assert_eq!(plated(AstmGrade::A574, half), hard(45.0));
        assert_eq!(plated(AstmGrade::A354Bd, half), []);
        assert_eq!(plated(AstmGrade::F568m12_9, millimetres(12.0)), hard(44.0));
        assert_eq!(plated(AstmGrade::F568m10_9, millimetres(12.0)), []);
    }

    /// Least hardness by the standard of the grade, told with the bolt that is too hard to dip: SAE J429 grade 8 33 HRC, ISO 898-1
    /// class 12.9 39, ASTM A574 39 up to 1/2 in and 37 above. From 33 HRC on it is too hard whatever its strength.
    #[test]
    fn hardness_is_told_with_what_is_not_dipped() {
        let told = |grade: BoltGrade, size| {
            let bolt = grade.strength(size).unwrap();
            match hydrogen(&bolt, DIPPED)[..] {
                [Hydrogen::TooHardToDip { hardness, .. }] => hardness,
                ref other => panic!("{grade}: {other:?}"),
            }
        };
        assert_eq!(told(SaeGrade::Grade8.into(), inches(0.5)), Some(33.0));
        assert_eq!(
            told(PropertyClass::Class12_9.into(), millimetres(12.0)),
            Some(39.0)
        );
        assert_eq!(told(AstmGrade::A574.into(), inches(0.5)), Some(39.0));
        assert_eq!(told(AstmGrade::A574.into(), inches(0.75)), Some(37.0));
        for (grade, strength, hard) in [
            (SaeGrade::Grade8, ksi(140.0), true),
            (SaeGrade::Grade8_1, ksi(140.0), false), // 32 HRC
            (SaeGrade::Grade8_1, ksi(150.0), true),
            (SaeGrade::Grade8_1, ksi(149.9), false),
        ] {
            let bolt = BoltStrength {
                tensile_strength: strength,
                ..grade.strength(inches(0.5)).unwrap()
            };
            assert_eq!(
                hydrogen(&bolt, DIPPED).len(),
                usize::from(hard),
                "{grade} {strength:?}"
            );
        }
    }

    /// From 1000 MPa on a bolt is hard enough to ask for its finish and hardness.
    #[test]
    fn what_is_asked_of_strong_bolts() {
        let of = |strength: f64, finish| {
            let bolt =
                BoltStrength::stated(inches(0.5), None, None, megapascals(strength)).unwrap();
            hydrogen(&bolt, finish)
        };
        let plated = Some(Finish::CadmiumPlated { baked: false });
        assert_eq!(of(1000.0, None), [Hydrogen::FinishUnknown]);
        assert_eq!(of(999.9, None), []);
        assert_eq!(of(1000.0, plated), [Hydrogen::HardnessUnknown]);
        assert_eq!(of(999.9, plated), []);
    }
}
