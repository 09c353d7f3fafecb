//! The verdict on a connection: one word, each bolt, each case, and what the bolts do together.

use alloc::{string::String, vec::Vec};

use super::BoltLoad;
use crate::caution::Caution;
use crate::joint::{Finding, Missing, SetAside, TighteningOrder, Verdict, Word};
use crate::source::Method;
use crate::strength::check::Check;
use crate::strength::group::Point;
use crate::units::Force;

/// One bolt, by the worst that comes to it.
///
/// ```
/// # use shankline::connection::BoltVerdict;
/// fn line(bolt: &BoltVerdict) -> String {
///     format!("bolt {}: {} in case {}", bolt.number, bolt.verdict.word(), bolt.case + 1)
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct BoltVerdict {
    /// Counted from 1, in the order of the pattern.
    pub number: usize,
    /// Where it stands.
    pub at: Point,
    /// The case in which it is worst, counted from 0 in [`ConnectionVerdict::cases`].
    pub case: usize,
    /// What it carries in that case.
    pub load: BoltLoad,
    /// Its verdict in that case.
    pub verdict: Verdict,
    /// Greatest force across its axis in any case.
    pub most_across: Force,
    /// Greatest pull along its axis in any case; below zero where it is always relieved.
    pub most_along: Force,
    /// Least pull along its axis in any case.
    pub least_along: Force,
    /// Greatest utilisation in any case; none if nothing was compared.
    pub utilisation: Option<f64>,
}

/// One load case, combination or alternation.
///
/// ```
/// # use shankline::connection::CaseVerdict;
/// fn line(case: &CaseVerdict) -> String {
///     format!("{}: {}, bolt {}", case.name, case.word, case.bolt)
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CaseVerdict {
    /// Its name; of an alternation both names.
    pub name: String,
    /// What comes to each bolt; of an alternation the greater of both.
    pub loads: Vec<BoltLoad>,
    /// The word of all bolts and of what they do together.
    pub word: Word,
    /// The worst bolt, counted from 1.
    pub bolt: usize,
    /// The greatest utilisation of a bolt, or of all together; none if nothing was compared.
    pub utilisation: Option<f64>,
}

/// A check of all bolts together, in the case in which it is worst.
///
/// ```
/// # use shankline::connection::ConnectionCheck;
/// fn line(own: &ConnectionCheck) -> String {
///     format!("{} in case {}", own.check, own.case + 1)
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ConnectionCheck {
    /// The case, counted from 0 in [`ConnectionVerdict::cases`].
    pub case: usize,
    /// The check.
    pub check: Check,
}

/// The verdict on a [`Connection`](super::Connection).
///
/// ```
/// # use shankline::connection::ConnectionVerdict;
/// # use shankline::joint::Word;
/// fn may_be_built(verdict: &ConnectionVerdict) -> bool {
///     verdict.word() == Word::Holds
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct ConnectionVerdict {
    /// What a drawing would call it.
    pub title: String,
    /// By which methods the loads came to the bolts.
    pub methods: Vec<&'static Method>,
    /// Each bolt.
    pub bolts: Vec<BoltVerdict>,
    /// Each case or combination, and after them the alternations.
    pub cases: Vec<CaseVerdict>,
    /// What the bolts do together, the highest utilisation first.
    pub checks: Vec<ConnectionCheck>,
    /// What else was found of the connection.
    pub findings: Vec<Finding>,
    /// What could not be checked of the connection, and of any bolt in any case, each once.
    pub missing: Vec<Missing>,
    /// What the caller has set aside.
    pub set_aside: Vec<SetAside>,
    /// In which order to tighten.
    pub order: TighteningOrder,
    /// What the user must be told.
    pub cautions: Vec<Caution>,
}

/// What decides the word of a connection, or is nearest to it.
///
/// ```
/// # use shankline::connection::ConnectionVerdict;
/// fn line(verdict: &ConnectionVerdict) -> Option<String> {
///     let governs = verdict.governing()?;
///     let case = verdict.cases.get(governs.case)?;
///     let check = governs.check?;
///     Some(match governs.bolt {
///         Some(bolt) => format!("bolt {} in {}: {check}", bolt.number, case.name),
///         None => format!("all bolts together in {}: {check}", case.name),
///     })
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Governing<'a> {
    /// The case, counted from 0 in [`ConnectionVerdict::cases`].
    pub case: usize,
    /// The bolt; none where it is what all of them do together.
    pub bolt: Option<&'a BoltVerdict>,
    /// The check with the highest utilisation; none if nothing was compared. A fault may speak against the bolt all the same.
    pub check: Option<&'a Check>,
}

impl ConnectionVerdict {
    /// The word: a fault anywhere makes it one that does not hold, anything open one that is undecided.
    ///
    /// ```
    /// # use shankline::connection::ConnectionVerdict;
    /// fn print(verdict: &ConnectionVerdict) {
    ///     println!("{}: {}", verdict.title, verdict.word());
    /// }
    /// ```
    #[must_use]
    pub fn word(&self) -> Word {
        let words = self.cases.iter().map(|case| case.word);
        let words = words.chain(self.bolts.iter().map(|bolt| bolt.verdict.word()));
        let mut word = words.fold(Word::Holds, worse);
        if !self.open().is_empty() {
            word = worse(word, Word::Undecided);
        }
        let exceeded = self.checks.iter().any(|own| !own.check.holds());
        if exceeded || self.findings.iter().any(Finding::is_fault) || self.bolts.is_empty() {
            word = Word::DoesNotHold;
        }
        word
    }

    /// Whether it holds.
    ///
    /// ```
    /// # use shankline::connection::ConnectionVerdict;
    /// fn stamp(verdict: &ConnectionVerdict) -> &'static str {
    ///     if verdict.holds() { "to the workshop" } else { "back to the desk" }
    /// }
    /// ```
    #[must_use]
    pub fn holds(&self) -> bool {
        self.word() == Word::Holds
    }

    /// The worst bolt; its case is [`BoltVerdict::case`].
    ///
    /// ```
    /// # use shankline::connection::ConnectionVerdict;
    /// fn worst(verdict: &ConnectionVerdict) -> Option<usize> {
    ///     verdict.governing_bolt().map(|bolt| bolt.number)
    /// }
    /// ```
    #[must_use]
    pub fn governing_bolt(&self) -> Option<&BoltVerdict> {
        let rank = |bolt: &BoltVerdict| (bolt.verdict.word(), bolt.utilisation);
        self.bolts.iter().reduce(|worst, bolt| {
            if is_worse(rank(bolt), rank(worst)) {
                bolt
            } else {
                worst
            }
        })
    }

    /// What governs: the worst bolt, or what all do together where that is worse; none without a bolt.
    ///
    /// ```
    /// # use shankline::connection::ConnectionVerdict;
    /// fn governing_case(verdict: &ConnectionVerdict) -> Option<&str> {
    ///     let governs = verdict.governing()?;
    ///     verdict.cases.get(governs.case).map(|case| case.name.as_str())
    /// }
    /// ```
    #[must_use]
    pub fn governing(&self) -> Option<Governing<'_>> {
        let bolt = self.governing_bolt()?;
        let check = bolt.verdict.governing();
        let used = check.map(|check| check.utilisation.value);
        let rank = (bolt.verdict.word(), used);
        // They stand with the highest utilisation first.
        let together = self.checks.first().filter(|own| {
            let word = if own.check.holds() {
                Word::Holds
            } else {
                Word::DoesNotHold
            };
            is_worse((word, Some(own.check.utilisation.value)), rank)
        });
        Some(match together {
            Some(own) => Governing {
                case: own.case,
                bolt: None,
                check: Some(&own.check),
            },
            None => Governing {
                case: bolt.case,
                bolt: Some(bolt),
                check,
            },
        })
    }

    /// The greatest utilisation of any bolt, and of all together; none if nothing was compared.
    ///
    /// ```
    /// # use shankline::connection::ConnectionVerdict;
    /// fn percent(verdict: &ConnectionVerdict) -> Option<f64> {
    ///     verdict.utilisation().map(|used| 100.0 * used)
    /// }
    /// ```
    #[must_use]
    pub fn utilisation(&self) -> Option<f64> {
        let bolts = self.bolts.iter().filter_map(|bolt| bolt.utilisation);
        let checks = self.checks.iter().map(|own| own.check.utilisation.value);
        bolts.chain(checks).reduce(f64::max)
    }

    /// What keeps the word from being decided.
    ///
    /// ```
    /// # use shankline::connection::ConnectionVerdict;
    /// fn ask(verdict: &ConnectionVerdict) {
    ///     for missing in verdict.open() {
    ///         println!("not checked: {missing}");
    ///     }
    /// }
    /// ```
    #[must_use]
    pub fn open(&self) -> Vec<&Missing> {
        let aside = |missing: &&Missing| self.set_aside.iter().all(|own| own.mode != missing.mode);
        self.missing.iter().filter(aside).collect()
    }
}

/// The worse of two words.
pub(super) fn worse(a: Word, b: Word) -> Word {
    if b.severity() > a.severity() { b } else { a }
}

/// Whether one word with its utilisation is worse than another.
pub(super) fn is_worse(one: (Word, Option<f64>), than: (Word, Option<f64>)) -> bool {
    let used = |of: Option<f64>| of.unwrap_or(-1.0);
    let (a, b) = (one.0.severity(), than.0.severity());
    a > b || a == b && used(one.1) > used(than.1)
}

#[cfg(feature = "serde")]
mod written {
    //! Verdicts as data: the word stands first, and of each bolt its checks in place of its whole verdict.

    use alloc::vec::Vec;

    use serde::{Serialize, Serializer};

    use super::{
        BoltLoad, BoltVerdict, CaseVerdict, Caution, Check, ConnectionCheck, ConnectionVerdict,
        Finding, Force, Missing, Point, SetAside, TighteningOrder, Word,
    };

    #[derive(Serialize)]
    struct Written<'a> {
        title: &'a str,
        methods: Vec<&'static str>,
        word: Word,
        utilisation: Option<f64>,
        bolts: &'a [BoltVerdict],
        cases: &'a [CaseVerdict],
        checks: &'a [ConnectionCheck],
        findings: &'a [Finding],
        missing: &'a [Missing],
        set_aside: &'a [SetAside],
        order: &'a TighteningOrder,
        cautions: &'a [Caution],
    }

    impl Serialize for ConnectionVerdict {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            Written {
                title: &self.title,
                methods: self.methods.iter().map(|own| own.citation).collect(),
                word: self.word(),
                utilisation: self.utilisation(),
                bolts: &self.bolts,
                cases: &self.cases,
                checks: &self.checks,
                findings: &self.findings,
                missing: &self.missing,
                set_aside: &self.set_aside,
                order: &self.order,
                cautions: &self.cautions,
            }
            .serialize(serializer)
        }
    }

    #[derive(Serialize)]
    struct WrittenBolt<'a> {
        number: usize,
        at: Point,
        word: Word,
        utilisation: Option<f64>,
        case: usize,
        load: BoltLoad,
        #[serde(serialize_with = "crate::units::quantity::round")]
        most_across: Force,
        #[serde(serialize_with = "crate::units::quantity::round")]
        most_along: Force,
        #[serde(serialize_with = "crate::units::quantity::round")]
        least_along: Force,
        checks: &'a [Check],
        findings: &'a [Finding],
        missing: &'a [Missing],
    }

    impl Serialize for BoltVerdict {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            WrittenBolt {
                number: self.number,
                at: self.at,
                word: self.verdict.word(),
                utilisation: self.utilisation,
                case: self.case,
                load: self.load,
                most_across: self.most_across,
                most_along: self.most_along,
                least_along: self.least_along,
                checks: &self.verdict.checks,
                findings: &self.verdict.findings,
                missing: &self.verdict.missing,
            }
            .serialize(serializer)
        }
    }
}

#[cfg(test)]
mod tests;
