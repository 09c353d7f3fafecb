//! Coefficients of thermal expansion of bolts, and of plies that are no material of
//! [`plies`](super::plies).

use alloc::string::ToString;

use super::generated;
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::names::{AstmGrade, BoltGrade};
use crate::source::Provenance;
use crate::units::{TemperatureCoefficient, ThermodynamicTemperature};

/// A family of metals that expands alike.
///
/// ```
/// use shankline::tables::expansion::{Expansion, ExpandingMetal};
/// let steel = Expansion::of(ExpandingMetal::StructuralSteel).unwrap();
/// assert!(steel.expansion < Expansion::of(ExpandingMetal::Aluminium).unwrap().expansion);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum ExpandingMetal {
    /// Carbon and low-alloy steel of bolts.
    CarbonAndAlloySteel,
    /// Structural steel of plies, by EN 1993-1-1.
    StructuralSteel,
    /// Austenitic stainless steel: A1 to A8, 302 to 316.
    AusteniticStainlessSteel,
    /// Duplex stainless steel: D2 to D8.
    DuplexStainlessSteel,
    /// Ferritic stainless steel: F1, 430.
    FerriticStainlessSteel,
    /// Martensitic stainless steel: C1, C3, C4, 410, 431.
    MartensiticStainlessSteel,
    /// Precipitation-hardened stainless steel 630.
    PrecipitationHardenedStainlessSteel,
    /// Aluminium alloys.
    Aluminium,
    /// Grey cast iron.
    GreyIron,
}

/// Mean coefficient of linear expansion of a family of metals.
///
/// All of them are recalled, and warn; alloys of a family differ by some per cent, publishers by as much.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::expansion::Expansion;
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = Expansion::of_bolt(PropertyClass::Class8_8.into())?;
/// let stainless = Expansion::of_bolt(StainlessClass::A2_70.into())?;
/// assert!(bolt.expansion < stainless.expansion);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Expansion {
    /// The metals.
    pub metal: ExpandingMetal,
    /// The coefficient.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub expansion: TemperatureCoefficient,
    /// Lower end of the temperatures it is the mean for.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub from: Option<ThermodynamicTemperature>,
    /// Upper end of the temperatures it is the mean for.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub thru: Option<ThermodynamicTemperature>,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl Expansion {
    /// Every row.
    ///
    /// ```
    /// assert_eq!(shankline::tables::expansion::Expansion::all().len(), 9);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::expansions::EXPANSIONS
    }

    /// The row of a family.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the table has none.
    ///
    /// ```
    /// use shankline::tables::expansion::{Expansion, ExpandingMetal};
    /// assert!(Expansion::of(ExpandingMetal::GreyIron).is_ok());
    /// ```
    pub fn of(metal: ExpandingMetal) -> Result<&'static Self, Error> {
        Self::all()
            .iter()
            .find(|row| row.metal == metal)
            .ok_or_else(|| Error::NoValue {
                quantity: "coefficient of expansion",
                subject: alloc::format!("{metal:?}"),
                reason: "no row was read",
            })
    }

    /// The row of a bolt grade.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for [`BoltGrade::Stated`]: nothing says what metal that is.
    ///
    /// ```
    /// use shankline::material::BoltGrade;
    /// use shankline::tables::expansion::Expansion;
    /// assert!(Expansion::of_bolt(BoltGrade::Stated).is_err());
    /// ```
    pub fn of_bolt(grade: BoltGrade) -> Result<&'static Self, Error> {
        let metal = match grade {
            BoltGrade::Stated => {
                return Err(Error::NoValue {
                    quantity: "coefficient of expansion",
                    subject: grade.to_string(),
                    reason: "the strengths of the bolt are stated, its metal is not",
                });
            }
            BoltGrade::Sae(_) | BoltGrade::Iso(_) => ExpandingMetal::CarbonAndAlloySteel,
            BoltGrade::Astm(grade) => of_astm(grade),
            // The letter of ISO 3506-1 names the structure of the steel.
            BoltGrade::Stainless(class) => match class.to_string().chars().next() {
                Some('C') => ExpandingMetal::MartensiticStainlessSteel,
                Some('D') => ExpandingMetal::DuplexStainlessSteel,
                Some('F') => ExpandingMetal::FerriticStainlessSteel,
                _ => ExpandingMetal::AusteniticStainlessSteel,
            },
        };
        Self::of(metal)
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::expansion::{ExpandingMetal, Expansion};
    /// # fn main() -> Result<(), shankline::Error> {
    /// // Every coefficient was read.
    /// let row = Expansion::of(ExpandingMetal::Aluminium)?;
    /// assert_eq!(row.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory(
            "coefficient of expansion",
            self.provenance,
        ))
    }
}

fn of_astm(grade: AstmGrade) -> ExpandingMetal {
    use AstmGrade as G;
    match grade {
        G::A193B8Class1
        | G::A193B8mClass1
        | G::A193B8Class2
        | G::A193B8mClass2
        | G::F593Group1Af
        | G::F593Group1A
        | G::F593Group1Cw1
        | G::F593Group1Cw2
        | G::F593Group2Af
        | G::F593Group2A
        | G::F593Group2Cw1
        | G::F593Group2Cw2 => ExpandingMetal::AusteniticStainlessSteel,
        G::F593Group4A | G::F593Group4Cw1 | G::F593Group4Cw2 => {
            ExpandingMetal::FerriticStainlessSteel
        }
        G::A193B6 | G::F593Group5H | G::F593Group5Ht | G::F593Group6H | G::F593Group6Ht => {
            ExpandingMetal::MartensiticStainlessSteel
        }
        G::F593Group7Ah => ExpandingMetal::PrecipitationHardenedStainlessSteel,
        _ => ExpandingMetal::CarbonAndAlloySteel,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::ppm_per_kelvin;

    #[test]
    fn every_family_of_bolts_has_its_row() {
        for (grade, expected) in [
            ("8.8", 11.7),
            ("A193 B7", 11.7),
            ("A2-50", 16.0),
            ("A193 B8 class 1", 16.0),
            ("D6-80", 13.0),
            ("F1-45", 10.0),
            ("F593 group 4 A", 10.0),
            ("C4-70", 10.5),
            ("A193 B6", 10.5),
            ("F593 group 7 AH", 10.9),
        ] {
            let grade: BoltGrade = grade.parse().unwrap();
            let row = Expansion::of_bolt(grade).unwrap();
            assert_eq!(row.expansion, ppm_per_kelvin(expected), "{grade}");
            assert!(
                row.from
                    .zip(row.thru)
                    .is_none_or(|(from, thru)| from < thru)
            );
        }
    }
}
