//! Bolt materials: grades and property classes, and how strong they are at a size.

use alloc::{format, string::ToString};
use core::{fmt, str::FromStr};

use crate::error::{Allowed, Error, out_of_range, positive};
use crate::source::Provenance;
use crate::tables::grades::{PropertyClassRow, SaeGradeRow};
use crate::tables::nanometres;
use crate::thread::Thread;
use crate::units::{Area, Force, Length, Stress};

/// Grades of SAE J429.
///
/// Grade 4 and 8.1 are studs only, 5.1 is for screw and washer assemblies, 7 is withdrawn.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!(SaeGrade::Grade8.strength(inches(0.5))?.proof_stress, Some(ksi(120.0)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum SaeGrade {
    /// Grade 1.
    Grade1,
    /// Grade 2. Bolts and screws over 6 in long take the strengths of grade 1.
    Grade2,
    /// Grade 4 (studs).
    Grade4,
    /// Grade 5.
    Grade5,
    /// Grade 5.1 (screw and washer assemblies).
    Grade5_1,
    /// Grade 5.2.
    Grade5_2,
    /// Grade 7 (withdrawn).
    Grade7,
    /// Grade 8.
    Grade8,
    /// Grade 8.1 (studs).
    Grade8_1,
    /// Grade 8.2.
    Grade8_2,
}

/// Property classes of ISO 898-1.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!(PropertyClass::Class10_9.strength(millimetres(12.0))?.proof_stress, Some(megapascals(830.0)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum PropertyClass {
    /// Class 3.6, dropped from the 2009 edition.
    Class3_6,
    /// Class 4.6.
    Class4_6,
    /// Class 4.8.
    Class4_8,
    /// Class 5.6.
    Class5_6,
    /// Class 5.8.
    Class5_8,
    /// Class 6.8.
    Class6_8,
    /// Class 8.8.
    Class8_8,
    /// Class 9.8, up to 16 mm.
    Class9_8,
    /// Class 10.9.
    Class10_9,
    /// Class 12.9.
    Class12_9,
    /// Class 12.9 with the underlined marking: leaner steel, lower tempering temperature.
    Class12_9Underlined,
}

/// A bolt material.
///
/// Parses from `"SAE J429 grade 5"`, `"SAE grade 5"`, `"grade 5"`, `"ISO 898-1 class 8.8"`,
/// `"class 8.8"` and `"8.8"`.
///
/// ```
/// use shankline::material::{BoltGrade, PropertyClass, SaeGrade};
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!("grade 8".parse::<BoltGrade>()?, SaeGrade::Grade8.into());
/// assert_eq!("8.8".parse::<BoltGrade>()?, PropertyClass::Class8_8.into());
/// assert_eq!(BoltGrade::from(SaeGrade::Grade8).to_string(), "SAE J429 grade 8");
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum BoltGrade {
    /// A grade of SAE J429.
    Sae(SaeGrade),
    /// A property class of ISO 898-1.
    Iso(PropertyClass),
}

impl From<SaeGrade> for BoltGrade {
    fn from(grade: SaeGrade) -> Self {
        Self::Sae(grade)
    }
}

impl From<PropertyClass> for BoltGrade {
    fn from(class: PropertyClass) -> Self {
        Self::Iso(class)
    }
}

/// Specified minimum strengths of a grade at a size.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let strength = PropertyClass::Class8_8.strength(millimetres(20.0))?;
/// assert_eq!(strength.proof_stress, Some(megapascals(600.0)));
/// assert_eq!(strength.tensile_strength, megapascals(830.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BoltStrength {
    /// The grade.
    pub grade: BoltGrade,
    /// Proof stress Sp: proof load over tensile stress area. None where the standard gives none.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub proof_stress: Option<Stress>,
    /// Minimum yield strength Sy. None where the standard gives none.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub yield_strength: Option<Stress>,
    /// Minimum tensile strength Su.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub tensile_strength: Stress,
    /// The longest screw these values hold for, where the standard sets such a limit.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub length_limit: Option<Length>,
    /// What the row warns of, such as products the grade is not made in.
    pub note: Option<&'static str>,
    /// Source of the values.
    pub provenance: Provenance,
}

/// Axial loads at which a bolt reaches its specified strengths.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::units::pound_force;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "1/2-13 UNC".parse()?;
/// let loads = SaeGrade::Grade5.strength(thread.nominal_diameter())?.loads(&thread);
/// // SAE J429 prints 12 100 lbf, rounded up from 85 ksi x 0.1419 in2
/// assert!((loads.proof.unwrap().get::<pound_force>() - 12_060.0).abs() < 10.0);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BoltLoads {
    /// The tensile stress area the loads are taken on.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub tensile_stress_area: Area,
    /// Proof load Sp As.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub proof: Option<Force>,
    /// Load at the minimum yield strength, Sy As.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub yielding: Option<Force>,
    /// Minimum breaking load Su As.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub tensile: Force,
}

impl BoltStrength {
    /// Proof, yield and tensile load of a bolt with this thread, on the formula stress area
    /// ([`Thread::tensile_stress_area`]).
    ///
    /// Standards print these loads from the rounded area and round them again, so a printed load
    /// may differ by up to about one per cent.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M12".parse()?;
    /// let loads = PropertyClass::Class8_8.strength(thread.nominal_diameter())?.loads(&thread);
    /// assert!(loads.proof < loads.yielding && loads.yielding < Some(loads.tensile));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn loads(&self, thread: &Thread) -> BoltLoads {
        self.loads_on(thread.tensile_stress_area())
    }

    /// The same loads on a given area, such as the printed one.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::pound_force;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let loads = SaeGrade::Grade8.strength(inches(0.75))?.loads_on(square_inches(0.334));
    /// assert!((loads.tensile.get::<pound_force>() - 50_100.0).abs() < 1e-6);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn loads_on(&self, area: Area) -> BoltLoads {
        BoltLoads {
            tensile_stress_area: area,
            proof: self.proof_stress.map(|stress| stress * area),
            yielding: self.yield_strength.map(|stress| stress * area),
            tensile: self.tensile_strength * area,
        }
    }
}

impl BoltGrade {
    /// Specified strengths of this grade at a nominal diameter.
    ///
    /// Where the standard distinguishes lengths (SAE J429 grade 2: over 6 in the strengths of
    /// grade 1) this gives the row for the shorter screws, with its limit in
    /// [`BoltStrength::length_limit`]; [`strength_at_length`](Self::strength_at_length) decides.
    ///
    /// Source: SAE J429 Table 1; ISO 898-1 (2009, 2013) Table 3. Size ranges are "over 1 in
    /// through 1-1/2 in", so a special size just over 1 in is already in the upper range.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if the standard does not cover the size; the message gives the range
    /// of the grade.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let grade = BoltGrade::from(SaeGrade::Grade5);
    /// assert_eq!(grade.strength(inches(1.0))?.proof_stress, Some(ksi(85.0)));
    /// assert_eq!(grade.strength(inches(1.001))?.proof_stress, Some(ksi(74.0)));
    /// # Ok(())
    /// # }
    /// ```
    pub fn strength(self, diameter: Length) -> Result<BoltStrength, Error> {
        self.look_up(diameter, None)
    }

    /// Specified strengths of this grade at a nominal diameter and screw length.
    ///
    /// # Errors
    ///
    /// As [`strength`](Self::strength); also for a length that is not positive and finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let grade = BoltGrade::from(SaeGrade::Grade2);
    /// assert_eq!(grade.strength_at_length(inches(0.5), inches(6.0))?.tensile_strength, ksi(74.0));
    /// assert_eq!(grade.strength_at_length(inches(0.5), inches(6.5))?.tensile_strength, ksi(60.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn strength_at_length(
        self,
        diameter: Length,
        length: Length,
    ) -> Result<BoltStrength, Error> {
        self.look_up(diameter, Some(positive("screw length", length)?))
    }

    fn look_up(self, diameter: Length, length: Option<Length>) -> Result<BoltStrength, Error> {
        positive("nominal diameter", diameter)?;
        match self {
            Self::Sae(grade) => sae_strength(grade, diameter, length),
            Self::Iso(class) => iso_strength(class, diameter),
        }
    }
}

impl SaeGrade {
    /// [`BoltGrade::strength`] of this grade.
    ///
    /// # Errors
    ///
    /// As there.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(SaeGrade::Grade8_2.strength(inches(1.125)).is_err());
    /// ```
    pub fn strength(self, diameter: Length) -> Result<BoltStrength, Error> {
        BoltGrade::Sae(self).strength(diameter)
    }
}

impl PropertyClass {
    /// [`BoltGrade::strength`] of this class.
    ///
    /// # Errors
    ///
    /// As there.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let m16 = PropertyClass::Class8_8.strength(millimetres(16.0))?;
    /// assert_eq!(m16.tensile_strength, megapascals(800.0)); // 830 MPa begins above 16 mm
    /// # Ok(())
    /// # }
    /// ```
    pub fn strength(self, diameter: Length) -> Result<BoltStrength, Error> {
        BoltGrade::Iso(self).strength(diameter)
    }
}

fn covers(size: i64, from: Option<Length>, over: Option<Length>, thru: Length) -> bool {
    from.is_none_or(|from| nanometres(from) <= size)
        && over.is_none_or(|over| nanometres(over) < size)
        && size <= nanometres(thru)
}

fn sae_strength(
    grade: SaeGrade,
    diameter: Length,
    length: Option<Length>,
) -> Result<BoltStrength, Error> {
    let size = nanometres(diameter);
    let length = length.map(nanometres);
    let mut rows = SaeGradeRow::all().iter().filter(|row| row.grade == grade);
    let fits = |row: &&SaeGradeRow| {
        covers(size, row.size_from, row.size_over, row.size_thru)
            && match length {
                None => row.length_over.is_none(),
                Some(length) => {
                    row.length_over.is_none_or(|over| nanometres(over) < length)
                        && row
                            .length_thru
                            .is_none_or(|thru| length <= nanometres(thru))
                }
            }
    };
    match rows.find(fits) {
        Some(row) => Ok(BoltStrength {
            grade: grade.into(),
            proof_stress: Some(row.proof_stress),
            yield_strength: row.yield_strength,
            tensile_strength: row.tensile_strength,
            length_limit: row.length_thru,
            note: row.note,
            provenance: row.provenance,
        }),
        None => Err(size_error(
            grade.into(),
            diameter,
            SaeGradeRow::all()
                .iter()
                .filter(|row| row.grade == grade)
                .map(|row| (row.size_from, row.size_thru)),
        )),
    }
}

fn iso_strength(class: PropertyClass, diameter: Length) -> Result<BoltStrength, Error> {
    let size = nanometres(diameter);
    let rows = || {
        PropertyClassRow::all()
            .iter()
            .filter(move |row| row.class == class)
    };
    match rows().find(|row| covers(size, row.size_from, row.size_over, row.size_thru)) {
        Some(row) => Ok(BoltStrength {
            grade: class.into(),
            proof_stress: Some(row.proof_stress),
            yield_strength: Some(row.yield_strength),
            tensile_strength: row.tensile_strength,
            length_limit: None,
            note: row.note,
            provenance: row.provenance,
        }),
        None => Err(size_error(
            class.into(),
            diameter,
            rows().map(|row| (row.size_from, row.size_thru)),
        )),
    }
}

/// The error for a size outside the ranges of a grade, with the whole range it has.
fn size_error(
    grade: BoltGrade,
    diameter: Length,
    ranges: impl Iterator<Item = (Option<Length>, Length)>,
) -> Error {
    let (mut low, mut high) = (None::<Length>, None::<Length>);
    for (from, thru) in ranges {
        if let Some(from) = from {
            low = Some(low.map_or(from, |low| if from < low { from } else { low }));
        }
        high = Some(high.map_or(thru, |high| if thru > high { thru } else { high }));
    }
    let allowed = match (low, high) {
        (Some(low), Some(high)) => Allowed::FromTo(low.into(), high.into()),
        _ => Allowed::Positive,
    };
    out_of_range(format!("nominal diameter for {grade}"), diameter, allowed)
}

const SAE_NAMES: [(SaeGrade, &str); 10] = [
    (SaeGrade::Grade1, "1"),
    (SaeGrade::Grade2, "2"),
    (SaeGrade::Grade4, "4"),
    (SaeGrade::Grade5, "5"),
    (SaeGrade::Grade5_1, "5.1"),
    (SaeGrade::Grade5_2, "5.2"),
    (SaeGrade::Grade7, "7"),
    (SaeGrade::Grade8, "8"),
    (SaeGrade::Grade8_1, "8.1"),
    (SaeGrade::Grade8_2, "8.2"),
];

const ISO_NAMES: [(PropertyClass, &str); 11] = [
    (PropertyClass::Class3_6, "3.6"),
    (PropertyClass::Class4_6, "4.6"),
    (PropertyClass::Class4_8, "4.8"),
    (PropertyClass::Class5_6, "5.6"),
    (PropertyClass::Class5_8, "5.8"),
    (PropertyClass::Class6_8, "6.8"),
    (PropertyClass::Class8_8, "8.8"),
    (PropertyClass::Class9_8, "9.8"),
    (PropertyClass::Class10_9, "10.9"),
    (PropertyClass::Class12_9, "12.9"),
    (PropertyClass::Class12_9Underlined, "12.9 underlined"),
];

impl fmt::Display for BoltGrade {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let name = match self {
            Self::Sae(grade) => SAE_NAMES
                .iter()
                .find(|(known, _)| known == grade)
                .map(|(_, name)| format!("SAE J429 grade {name}")),
            Self::Iso(class) => ISO_NAMES
                .iter()
                .find(|(known, _)| known == class)
                .map(|(_, name)| format!("ISO 898-1 class {name}")),
        };
        f.pad(&name.unwrap_or_default())
    }
}

impl FromStr for BoltGrade {
    type Err = Error;
    fn from_str(text: &str) -> Result<Self, Error> {
        let trimmed = text.trim();
        let after = |prefixes: &[&str]| {
            prefixes
                .iter()
                .find_map(|prefix| trimmed.strip_prefix(prefix))
                .map(str::trim)
        };
        let sae = after(&["SAE J429 grade ", "SAE grade ", "grade ", "Grade "])
            .and_then(|name| SAE_NAMES.iter().find(|(_, known)| *known == name))
            .map(|(grade, _)| Self::Sae(*grade));
        let iso = || {
            let name =
                after(&["ISO 898-1 class ", "ISO class ", "class ", "Class "]).unwrap_or(trimmed);
            // A bare "8.2" or "5.2" would be an SAE grade; no ISO class has such a name.
            ISO_NAMES
                .iter()
                .find(|(_, known)| *known == name)
                .map(|(class, _)| Self::Iso(*class))
        };
        sae.or_else(iso).ok_or_else(|| Error::UnknownName {
            what: "bolt grade",
            text: text.to_string(),
            known: "\"grade 1\", 2, 4, 5, 5.1, 5.2, 7, 8, 8.1, 8.2 of SAE J429 and \"class 4.6\", \
                    4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9, 12.9 of ISO 898-1"
                .to_string(),
        })
    }
}

#[cfg(feature = "serde")]
mod serde_text {
    use super::BoltGrade;
    use alloc::string::String;

    impl serde::Serialize for BoltGrade {
        fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            serializer.collect_str(self)
        }
    }

    impl<'de> serde::Deserialize<'de> for BoltGrade {
        fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
            String::deserialize(deserializer)?
                .parse()
                .map_err(serde::de::Error::custom)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{inches, ksi, millimetres};

    #[test]
    fn every_grade_prints_and_reads_back() {
        let sae = SAE_NAMES.iter().map(|(grade, _)| BoltGrade::from(*grade));
        let iso = ISO_NAMES.iter().map(|(class, _)| BoltGrade::from(*class));
        for grade in sae.chain(iso) {
            assert_eq!(grade.to_string().parse::<BoltGrade>().unwrap(), grade);
        }
        assert!("grade 9".parse::<BoltGrade>().is_err());
        assert!("8.2".parse::<BoltGrade>().is_err());
    }

    #[test]
    fn size_ranges_are_over_and_through() {
        let grade2 = BoltGrade::from(SaeGrade::Grade2);
        assert_eq!(
            grade2.strength(inches(0.75)).unwrap().proof_stress,
            Some(ksi(55.0))
        );
        assert_eq!(
            grade2.strength(inches(0.7501)).unwrap().proof_stress,
            Some(ksi(33.0))
        );
        assert!(grade2.strength(inches(0.2499)).is_err());
        assert!(PropertyClass::Class9_8.strength(millimetres(18.0)).is_err());
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            assert!(grade2.strength(inches(bad)).is_err());
            assert!(grade2.strength_at_length(inches(0.5), inches(bad)).is_err());
        }
    }

    #[test]
    fn grade_2_over_six_inches_is_grade_1_only_up_to_three_quarters() {
        let grade2 = BoltGrade::from(SaeGrade::Grade2);
        let long = |size| {
            grade2
                .strength_at_length(inches(size), inches(8.0))
                .unwrap()
        };
        assert_eq!(long(0.5).tensile_strength, ksi(60.0));
        assert_eq!(long(1.0).tensile_strength, ksi(60.0));
        assert_eq!(
            grade2.strength(inches(0.5)).unwrap().length_limit,
            Some(inches(6.0))
        );
    }
}
