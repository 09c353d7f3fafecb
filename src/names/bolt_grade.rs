//! Bolt grades of all standards: how they print and how they are read.

use core::{fmt, str::FromStr};

use super::bolt_names::NAMES;
use super::{
    AstmGrade, Key, PropertyClass, SaeGrade, StainlessClass, code_of, iso, keys, label_of,
};
use crate::error::Error;

/// A bolt material.
///
/// Parses from `"SAE J429 grade 5"`, `"SAE grade 5"`, `"grade 5"`, `"gr 5"`, `"SAE 5"`, `"ISO 898-1 class 8.8"`,
/// `"class 8.8"`, `"8.8"`, `"ISO 3506-1 class A2-70"`, `"A2-70"`, `"ASTM A193 B7"`, `"A193 B7"`, `"B7"`, and from
/// its [code](Key::code). A bare number with a point is a class of ISO 898-1, never a grade of SAE
/// or of ASTM F568M. `"A325"` and `"A490"` are refused with the grades they could mean: the types need nuts of
/// their own, and A325 was weaker above 1 in until 2014.
///
/// ```
/// use shankline::material::{AstmGrade, BoltGrade, PropertyClass, SaeGrade};
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!("grade 8".parse::<BoltGrade>()?, SaeGrade::Grade8.into());
/// assert_eq!("8.8".parse::<BoltGrade>()?, PropertyClass::Class8_8.into());
/// assert_eq!("ASTM F3125 A325 type 1".parse::<BoltGrade>()?, AstmGrade::F3125A325Type1.into());
/// assert_eq!(BoltGrade::from(SaeGrade::Grade8).to_string(), "SAE J429 grade 8");
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[non_exhaustive]
pub enum BoltGrade {
    /// A material the caller states the strengths of: see [`BoltStrength::stated`](crate::material::BoltStrength::stated).
    Stated,
    /// A grade of SAE J429.
    Sae(SaeGrade),
    /// A property class of ISO 898-1.
    Iso(PropertyClass),
    /// A grade of an ASTM standard.
    Astm(AstmGrade),
    /// A property class of ISO 3506-1, stainless steel.
    Stainless(StainlessClass),
}

impl From<SaeGrade> for BoltGrade {
    fn from(grade: SaeGrade) -> Self {
        Self::Sae(grade)
    }
}

impl From<AstmGrade> for BoltGrade {
    fn from(grade: AstmGrade) -> Self {
        Self::Astm(grade)
    }
}

impl From<StainlessClass> for BoltGrade {
    fn from(class: StainlessClass) -> Self {
        Self::Stainless(class)
    }
}

impl From<PropertyClass> for BoltGrade {
    fn from(class: PropertyClass) -> Self {
        Self::Iso(class)
    }
}

impl Key for BoltGrade {
    const FAMILY: &'static str = "bolt grade";

    /// Every grade of the tables; [`BoltGrade::Stated`] is none of them.
    const ALL: &'static [Self] = &keys(&NAMES);

    fn code(self) -> &'static str {
        match self {
            Self::Stated => "stated",
            grade => code_of(&NAMES, grade),
        }
    }

    fn label(self) -> &'static str {
        match self {
            Self::Stated => "stated strengths",
            grade => label_of(&NAMES, grade),
        }
    }
}

impl fmt::Display for BoltGrade {
    /// The label.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

impl FromStr for BoltGrade {
    type Err = Error;

    /// [`Key::read`]; a bare number with a point is a class of ISO 898-1.
    fn from_str(text: &str) -> Result<Self, Error> {
        // A bare "8.2" or "5.2" would be an SAE grade; no ISO class has such a name.
        let plain = text.trim();
        let class = iso::NAMES.iter().find(|(_, name)| *name == plain);
        class.map_or_else(|| Self::read(text), |(class, _)| Ok(Self::Iso(*class)))
    }
}

#[cfg(feature = "serde")]
mod serde_text {
    use super::{AstmGrade, BoltGrade, Key, PropertyClass, SaeGrade, StainlessClass};
    use alloc::string::String;

    impl serde::Serialize for BoltGrade {
        fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            serializer.serialize_str(self.code())
        }
    }

    // The code alone tells a grade from those of other standards.
    impl serde::Serialize for SaeGrade {
        fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            BoltGrade::from(*self).serialize(serializer)
        }
    }

    impl serde::Serialize for PropertyClass {
        fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            BoltGrade::from(*self).serialize(serializer)
        }
    }

    impl serde::Serialize for AstmGrade {
        fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            BoltGrade::from(*self).serialize(serializer)
        }
    }

    impl serde::Serialize for StainlessClass {
        fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            BoltGrade::from(*self).serialize(serializer)
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
    use alloc::string::ToString;

    use super::super::{astm, sae, stainless};
    use super::*;

    #[test]
    fn every_grade_prints_and_reads_back() {
        let stainless = stainless::NAMES
            .iter()
            .map(|(class, _)| BoltGrade::from(*class));
        let astm = astm::NAMES.iter().map(|(grade, _)| BoltGrade::from(*grade));
        let sae = sae::NAMES.iter().map(|(grade, _)| BoltGrade::from(*grade));
        let iso = iso::NAMES.iter().map(|(class, _)| BoltGrade::from(*class));
        let grades = sae.chain(iso).chain(stainless).chain(astm);
        assert!(grades.clone().eq(BoltGrade::ALL.iter().copied()));
        for grade in grades {
            assert_eq!(grade.to_string().parse::<BoltGrade>().unwrap(), grade);
        }
        assert!("grade 9".parse::<BoltGrade>().is_err());
        let error = "ASTM A354".parse::<BoltGrade>().unwrap_err().to_string();
        assert!(
            error.ends_with(
                "known are ASTM A354 BC; ASTM A354 BD to 2011; ASTM A354 BD (the nearest of 117)"
            ),
            "{error}"
        );
        assert!("8.2".parse::<BoltGrade>().is_err());
    }
}
