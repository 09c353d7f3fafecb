//! A report that is read back says what its own lines say.

use alloc::{format, string::String};

use serde::de::Error;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::{Report, ReportCheck};
use crate::joint::Word;

impl Serialize for Report {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        Self::serialize(self, serializer)
    }
}

impl<'de> Deserialize<'de> for Report {
    /// Refuses a document whose word is another than its checks, faults and gaps make it: somebody has changed it, or it
    /// was cut short.
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let report = Self::deserialize(deserializer)?;
        match report.contradiction() {
            Some(why) => Err(D::Error::custom(why)),
            None => Ok(report),
        }
    }
}

impl Report {
    fn contradiction(&self) -> Option<String> {
        if let Some(check) = self.checks.iter().find(|check| !check.agrees_with_itself()) {
            return Some(format!(
                "the figures of a check contradict each other: {}",
                check.text
            ));
        }
        let word = self.word_of_lines();
        (word != self.word).then(|| {
            format!(
                "the word is \"{}\", and what the report lists makes it \"{word}\"",
                self.word
            )
        })
    }

    /// The word that its checks, faults and gaps come to.
    fn word_of_lines(&self) -> Word {
        let is_set_aside = |mode| self.set_aside.iter().any(|aside| Some(aside.mode) == mode);
        if !self.faults.is_empty() || self.checks.iter().any(|check| !check.holds) {
            Word::DoesNotHold
        } else if self
            .missing
            .iter()
            .any(|missing| !is_set_aside(missing.mode))
        {
            Word::Undecided
        } else {
            Word::Holds
        }
    }
}

impl ReportCheck {
    /// Whether load, resistance, utilisation and the answer go together, to the digits that a report has.
    fn agrees_with_itself(&self) -> bool {
        const DIGITS: f64 = 1e-10;
        let used = self.utilisation;
        let answers = self.holds == (used <= 1.0) || (used - 1.0).abs() < DIGITS;
        // A sum of loads is held against 1.
        let wanted = self.demand.base() / self.resistance.base();
        answers && (used - wanted).abs() <= DIGITS * wanted.max(1e-3)
    }
}
