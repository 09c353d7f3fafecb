//! The verdict: one word, what it rests on, and an account of every mode.

use alloc::{format, vec, vec::Vec};
use core::fmt;

use super::outcome::{MODES, Outcomes};
use super::{Finding, Granted, Joint, JointPreload, Missing, Need, NotConcerned, Scope, SetAside};
use crate::caution::Caution;
use crate::error::Error;
use crate::joint::{Candidate, NutOption};
use crate::material::{BoltLoads, BoltStrength};
use crate::strength::check::{Check, Mode, Place};

/// The word of a [`Verdict`].
///
/// ```
/// use shankline::joint::Word;
/// assert_eq!(Word::DoesNotHold.to_string(), "does not hold");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Word {
    /// Every mode that is concerned was checked, or set aside by the caller, and nothing speaks against it.
    Holds,
    /// A load is more than its resistance, or something forbids the joint.
    DoesNotHold,
    /// Nothing speaks against it so far, but a mode that is concerned could not be checked.
    Undecided,
}

impl Word {
    /// How bad it is: the worse, the greater.
    pub(crate) const fn severity(self) -> u8 {
        match self {
            Self::Holds => 0,
            Self::Undecided => 1,
            Self::DoesNotHold => 2,
        }
    }
}

impl fmt::Display for Word {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Holds => "holds",
            Self::DoesNotHold => "does not hold",
            Self::Undecided => "undecided",
        })
    }
}

/// What became of one mode.
///
/// ```
/// use shankline::joint::{Account, NotConcerned};
/// assert_eq!(Account::NotConcerned(NotConcerned::Dry).to_string(), "not concerned: dry for life");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Account {
    /// A load is more than its resistance, or something forbids the joint.
    Fault,
    /// Part of it could not be checked.
    Missing,
    /// Part of it could not be checked, and the caller has set that aside.
    SetAside,
    /// Checked, and in order.
    InOrder,
    /// Not concerned, and why.
    NotConcerned(NotConcerned),
}

impl fmt::Display for Account {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Fault => f.pad("at fault"),
            Self::Missing => f.pad("not checked"),
            Self::SetAside => f.pad("set aside"),
            Self::InOrder => f.pad("in order"),
            Self::NotConcerned(why) => write!(f, "not concerned: {why}"),
        }
    }
}

/// The verdict on a [`Joint`]: one word, and everything that it rests on.
///
/// ```
/// use shankline::joint::{Account, Word};
/// use shankline::prelude::*;
/// use shankline::strength::check::Mode;
#[doc = include_str!("example.txt")]
/// let verdict = joint.check()?;
/// assert_eq!(verdict.word(), Word::Holds);
/// // The checks stand in order: the first one governs.
/// let governing = verdict.governing().expect("something was compared");
/// assert_eq!(*governing, verdict.checks[0]);
/// // Every mode is accounted for.
/// for mode in Mode::ALL {
///     println!("{mode}: {}", verdict.account(mode));
/// }
/// // What the user must be told belongs in every report.
/// assert!(verdict.cautions.starts_with(shankline::caution::GENERAL));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Verdict {
    /// What the word speaks of.
    pub scope: Scope,
    /// The bolt length with its washers, cut and shear planes.
    pub candidate: Candidate,
    /// Strength of the bolt at its size and length.
    pub strength: BoltStrength,
    /// Its proof, yield and tensile load.
    pub loads: BoltLoads,
    /// Torque and preload; none if no torque is controlled.
    pub preload: Option<JointPreload>,
    /// Every comparison of a load with a resistance, the highest utilisation first.
    pub checks: Vec<Check>,
    /// What else was found: what is wrong, what is to be known, and what is to be done.
    pub findings: Vec<Finding>,
    /// What could not be checked, and for want of what.
    pub missing: Vec<Missing>,
    /// What the caller has set aside.
    pub set_aside: Vec<SetAside>,
    /// What nobody said and the builder of the joint took for granted.
    pub granted: Vec<Granted>,
    /// What speaks for and against the kind of nut in this environment; none in a tapped part.
    pub nut: Option<NutOption>,
    /// What the user must be told.
    pub cautions: Vec<Caution>,
    accounts: [Account; MODES],
}

/// What a verdict is put together from, besides the outcomes.
pub(super) struct Parts {
    pub(super) candidate: Candidate,
    pub(super) strength: BoltStrength,
    pub(super) loads: BoltLoads,
    pub(super) preload: Option<JointPreload>,
    pub(super) nut: Option<NutOption>,
}

impl Verdict {
    pub(super) fn new(joint: &Joint, parts: Parts, mut out: Outcomes) -> Self {
        let scope = joint.scope;
        // Outside the scope nothing counts against the word: it does not speak of it.
        out.missing.retain(|missing| scope.covers(missing.mode));
        out.findings
            .retain(|finding| scope.covers(finding.mode()) || !finding.is_fault());
        let mut checks = core::mem::take(&mut out.checks);
        checks.retain(|check| scope.covers(check.mode));
        sort_by_use(&mut checks);
        for check in &checks {
            out.warn(&check.cautions);
        }
        let accounts = accounts(joint, &checks, &out);
        // A mode that said nothing is a mode that nobody checked.
        for (mode, account) in Mode::ALL.into_iter().zip(accounts) {
            if account == Account::Missing
                && !out.missing.iter().any(|missing| missing.mode == mode)
            {
                out.missing(mode, Place::Joint, Need::Method("it was not looked at"));
            }
        }
        Self {
            scope,
            candidate: parts.candidate,
            strength: parts.strength,
            loads: parts.loads,
            preload: parts.preload,
            checks,
            findings: out.findings,
            missing: out.missing,
            set_aside: joint.set_aside.clone(),
            granted: still_granted(joint),
            nut: parts.nut,
            cautions: out.cautions,
            accounts,
        }
    }

    /// The word.
    ///
    /// ```
    /// # use shankline::joint::{Verdict, Word};
    /// fn may_be_built(verdict: &Verdict) -> bool {
    ///     verdict.word() == Word::Holds
    /// }
    /// ```
    #[must_use]
    pub fn word(&self) -> Word {
        let mut word = Word::Holds;
        for account in &self.accounts {
            match account {
                Account::Fault => return Word::DoesNotHold,
                Account::Missing => word = Word::Undecided,
                Account::SetAside | Account::InOrder | Account::NotConcerned(_) => {}
            }
        }
        word
    }

    /// Whether the word is [`Word::Holds`].
    ///
    /// ```
    /// # use shankline::joint::Verdict;
    /// fn stamp(verdict: &Verdict) -> &'static str {
    ///     if verdict.holds() { "holds" } else { "does not hold, or nobody knows" }
    /// }
    /// ```
    #[must_use]
    pub fn holds(&self) -> bool {
        self.word() == Word::Holds
    }

    /// The verdict again, with every caution. Refuses a joint that gets another one: what is written of the two together
    /// would be true of neither. Cautions do not count, as a verdict of a design has fewer.
    pub(in crate::joint) fn confirmed(&self, joint: &Joint) -> Result<Self, Error> {
        let mut own = joint.check()?;
        let cautions = core::mem::replace(&mut own.cautions, self.cautions.clone());
        if own == *self {
            own.cautions = cautions;
            return Ok(own);
        }
        let title = &joint.title;
        Err(Error::Mismatch(format!(
            "the verdict is not that of the joint \"{title}\": check it again"
        )))
    }

    /// What became of a mode.
    ///
    /// ```
    /// # use shankline::joint::{Account, Verdict};
    /// # use shankline::strength::check::Mode;
    /// fn is_fatigue_settled(verdict: &Verdict) -> bool {
    ///     matches!(verdict.account(Mode::Fatigue), Account::InOrder | Account::NotConcerned(_))
    /// }
    /// ```
    #[must_use]
    pub fn account(&self, mode: Mode) -> Account {
        let at = self.accounts.get(mode as usize);
        at.copied().unwrap_or(Account::Missing)
    }

    /// The check with the highest utilisation.
    ///
    /// ```
    /// # use shankline::joint::Verdict;
    /// fn worst(verdict: &Verdict) -> Option<String> {
    ///     verdict.governing().map(|check| check.to_string())
    /// }
    /// ```
    #[must_use]
    pub fn governing(&self) -> Option<&Check> {
        self.checks.first()
    }

    /// What forbids the joint, besides loads that are more than their resistance.
    ///
    /// ```
    /// # use shankline::joint::Verdict;
    /// fn count(verdict: &Verdict) -> usize {
    ///     verdict.faults().count()
    /// }
    /// ```
    pub fn faults(&self) -> impl Iterator<Item = &Finding> {
        self.findings.iter().filter(|finding| finding.is_fault())
    }

    /// What keeps the word from being decided: what is missing and not set aside.
    ///
    /// ```
    /// # use shankline::joint::Verdict;
    /// fn print(verdict: &Verdict) {
    ///     for missing in verdict.open() {
    ///         println!("not checked: {missing}");
    ///     }
    /// }
    /// ```
    pub fn open(&self) -> impl Iterator<Item = &Missing> {
        self.missing
            .iter()
            .filter(|missing| self.account(missing.mode) != Account::SetAside)
    }

    /// The quickest way to a decided answer: each fact that is missing, once, with the places that want it, the
    /// one that most modes wait for first.
    ///
    /// ```
    /// # use shankline::joint::Verdict;
    /// fn ask(verdict: &Verdict) {
    ///     for (fact, places) in verdict.to_decide() {
    ///         println!("{} of {} places", fact.name(), places.len());
    ///     }
    /// }
    /// ```
    #[must_use]
    pub fn to_decide(&self) -> Vec<(&Need, Vec<Place>)> {
        let mut facts: Vec<(&Need, Vec<Place>, usize)> = Vec::new();
        for missing in self.open().filter(|missing| missing.need.is_fact()) {
            if let Some((_, places, count)) =
                facts.iter_mut().find(|(need, ..)| **need == missing.need)
            {
                *count += 1;
                if !places.contains(&missing.place) {
                    places.push(missing.place);
                }
            } else {
                facts.push((&missing.need, vec![missing.place], 1));
            }
        }
        facts.sort_by_key(|(.., count)| core::cmp::Reverse(*count));
        facts
            .into_iter()
            .map(|(need, places, _)| (need, places))
            .collect()
    }
}

/// The highest utilisation first; between equals the order of the modes stays. Checks are large, so their places are
/// sorted, and then each of them moves once.
fn sort_by_use(checks: &mut Vec<Check>) {
    let mut order: Vec<(f64, usize)> = checks
        .iter()
        .enumerate()
        .map(|(at, check)| (check.utilisation.value, at))
        .collect();
    order.sort_unstable_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(&b.1)));
    let mut found: Vec<Option<Check>> = core::mem::take(checks).into_iter().map(Some).collect();
    checks.extend(
        order
            .iter()
            .filter_map(|(_, at)| found.get_mut(*at)?.take()),
    );
}

/// What was taken for granted and is still so: a field that was set by hand since then was said.
fn still_granted(joint: &Joint) -> Vec<Granted> {
    let granted = joint.granted.iter();
    let still = granted.filter(|own| super::builder::still_granted(joint, own));
    still.cloned().collect()
}

/// What became of every mode.
fn accounts(joint: &Joint, checks: &[Check], out: &Outcomes) -> [Account; MODES] {
    let mut accounts = [Account::Missing; MODES];
    let mut seen = [None; MODES];
    // From the weakest statement to the strongest.
    for (at, (slot, why)) in seen.iter_mut().zip(out.not_concerned).enumerate() {
        if out.in_order.get(at).is_some_and(|&fine| fine) {
            *slot = Some(Account::InOrder);
        } else if let Some(why) = why {
            *slot = Some(Account::NotConcerned(why));
        }
    }
    let mut put = |mode: Mode, account: Account| {
        if let Some(slot) = seen.get_mut(mode as usize) {
            *slot = Some(account);
        }
    };
    for check in checks {
        put(check.mode, Account::InOrder);
    }
    let aside = |mode| joint.set_aside.iter().any(|own| own.mode == mode);
    for missing in &out.missing {
        let aside = aside(missing.mode);
        put(
            missing.mode,
            if aside {
                Account::SetAside
            } else {
                Account::Missing
            },
        );
    }
    for check in checks.iter().filter(|check| !check.holds()) {
        put(check.mode, Account::Fault);
    }
    for finding in out.findings.iter().filter(|finding| finding.is_fault()) {
        put(finding.mode(), Account::Fault);
    }
    for ((mode, slot), account) in Mode::ALL.into_iter().zip(seen).zip(&mut accounts) {
        *account = if joint.scope.covers(mode) {
            slot.unwrap_or(Account::Missing)
        } else {
            Account::NotConcerned(NotConcerned::OutOfScope)
        };
    }
    accounts
}
