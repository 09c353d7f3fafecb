//! Names of grades: how they print and how they are read.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};
use core::{fmt, str::FromStr};

use super::{BoltGrade, astm, iso, sae, stainless};
use crate::error::Error;

/// The name of a grade in the list of its kind.
pub(super) fn name_of<T: Copy + PartialEq>(names: &[(T, &'static str)], grade: T) -> &'static str {
    let found = names.iter().find(|(known, _)| *known == grade);
    found.map_or("", |(_, name)| name)
}

fn named<T: Copy>(names: &[(T, &str)], text: &str) -> Option<T> {
    let found = names
        .iter()
        .find(|(_, name)| name.eq_ignore_ascii_case(text));
    found.map(|(grade, _)| *grade)
}

impl fmt::Display for BoltGrade {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Stated => f.pad("stated strengths"),
            Self::Sae(grade) => f.pad(&format!("SAE J429 grade {grade}")),
            Self::Iso(class) => f.pad(&format!("ISO 898-1 class {class}")),
            Self::Astm(grade) => f.pad(&format!("ASTM {grade}")),
            Self::Stainless(class) => f.pad(&format!("ISO 3506-1 class {class}")),
        }
    }
}

impl FromStr for BoltGrade {
    type Err = Error;
    fn from_str(text: &str) -> Result<Self, Error> {
        let plain = text.trim().to_ascii_lowercase();
        let after = |prefixes: &[&str]| {
            prefixes
                .iter()
                .find_map(|prefix| plain.strip_prefix(prefix))
        };
        let sae = after(&["sae j429 grade ", "sae grade ", "grade "]);
        // A bare "8.2" or "5.2" would be an SAE grade; no ISO class has such a name.
        let iso = after(&["iso 898-1 class ", "iso class ", "class "]).unwrap_or(&plain);
        let stainless = after(&["iso 3506-1 class ", "iso class ", "class "]).unwrap_or(&plain);
        let astm = after(&["astm "]).unwrap_or(&plain);
        let sae = sae.and_then(|name| named(&sae::NAMES, name.trim()).map(Self::Sae));
        sae.or_else(|| named(&iso::NAMES, iso.trim()).map(Self::Iso))
            .or_else(|| named(&astm::NAMES, astm.trim()).map(Self::Astm))
            .or_else(|| named(&stainless::NAMES, stainless.trim()).map(Self::Stainless))
            .ok_or_else(|| Error::UnknownName {
                what: "bolt grade",
                text: text.to_string(),
                known: known_names(&plain),
            })
    }
}

/// Names to offer for one that is not known: the grades of the ASTM standard it begins with, or
/// one of each kind.
fn known_names(plain: &str) -> String {
    let standard = plain.trim_start_matches("astm").trim_start();
    let standard = standard.split(' ').next().unwrap_or_default();
    let astm: Vec<&str> = astm::NAMES
        .iter()
        .map(|(_, name)| *name)
        .filter(|name| {
            let begins = name
                .get(..standard.len())
                .is_some_and(|start| start.eq_ignore_ascii_case(standard));
            !standard.is_empty() && begins
        })
        .collect();
    if astm.is_empty() {
        "\"grade 1\", 2, 4, 5, 5.1, 5.2, 7, 8, 8.1, 8.2 of SAE J429, \"class 4.6\", 4.8, 5.6, 5.8, \
         6.8, 8.8, 9.8, 10.9, 12.9 of ISO 898-1, classes of ISO 3506-1 such as A2-70, and grades of ASTM A307, A449, F3125, A354, A193, \
         A574 and F593 such as \"A193 B7\""
            .to_string()
    } else {
        astm.join(", ")
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

    #[test]
    fn every_grade_prints_and_reads_back() {
        let stainless = stainless::NAMES
            .iter()
            .map(|(class, _)| BoltGrade::from(*class));
        let astm = astm::NAMES.iter().map(|(grade, _)| BoltGrade::from(*grade));
        let sae = sae::NAMES.iter().map(|(grade, _)| BoltGrade::from(*grade));
        let iso = iso::NAMES.iter().map(|(class, _)| BoltGrade::from(*class));
        for grade in sae.chain(iso).chain(astm).chain(stainless) {
            assert_eq!(grade.to_string().parse::<BoltGrade>().unwrap(), grade);
        }
        assert!("grade 9".parse::<BoltGrade>().is_err());
        let error = "ASTM A354".parse::<BoltGrade>().unwrap_err().to_string();
        assert!(
            error.ends_with("A354 BC, A354 BD to 2011, A354 BD"),
            "{error}"
        );
        assert!("8.2".parse::<BoltGrade>().is_err());
    }
}
