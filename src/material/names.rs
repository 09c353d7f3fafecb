//! Names of grades: how they print and how they are read.

use core::{fmt, str::FromStr};

use super::bolt_names::NAMES;
use super::{BoltGrade, iso};
use crate::error::Error;
use crate::names::{Key, code_of, keys, label_of};

/// The name of a grade in the list of its kind.
pub(super) fn name_of<T: Copy + PartialEq>(names: &[(T, &'static str)], grade: T) -> &'static str {
    let found = names.iter().find(|(known, _)| *known == grade);
    found.map_or("", |(_, name)| name)
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
    use super::super::{AstmGrade, BoltGrade, PropertyClass, SaeGrade, StainlessClass};
    use crate::names::Key;
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
