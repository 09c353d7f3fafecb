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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::strength::check::{Check, Level, Mode, Place};
    use crate::units::newtons;

    /// A utilisation as it stands in a document beside its load, of a resistance of 1 N.
    fn agrees(load: f64, used: f64, holds: bool) -> bool {
        static TEST: crate::source::Method = crate::source::Method::own("test");
        let (mode, place, level) = (Mode::BoltShear, Place::Joint, Level::Nominal);
        let check = Check::new(mode, place, newtons(load), newtons(1.0), level, &TEST).unwrap();
        let mut check = ReportCheck::new(&check);
        (check.utilisation, check.holds) = (used, holds);
        check.agrees_with_itself()
    }

    /// Twelve digits are written: a difference in the ninth is none of rounding, be the figure small or large.
    #[test]
    fn figures_agree_to_their_digits() {
        for load in [0.002, 0.02, 0.5, 0.9, 2.0, 50.0] {
            let holds = load < 1.0;
            assert!(agrees(load, load, holds), "{load}");
            assert!(agrees(load, load * (1.0 + 1e-12), holds), "{load}");
            assert!(!agrees(load, load * (1.0 + 1e-9), holds), "{load}");
            assert!(!agrees(load, load * (1.0 - 1e-9), holds), "{load}");
            assert!(!agrees(load, load, !holds), "{load}");
        }
        assert!(agrees(0.0, 0.0, true) && !agrees(0.0, 1e-9, true));
        // At the limit rounding may have taken either side.
        assert!(agrees(1.0, 1.0, true) && agrees(1.0, 1.0, false));
    }
}
