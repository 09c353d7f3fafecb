//! One joint under many loads: what does not depend on them is worked out once.
//!
//! The whole check stays the only judge. Of each kind of load (across or not, along or not, steady or not) it is run
//! once; how each of its checks goes with the load is read from that ([`laws`]), held against a second run, and what
//! cannot be read so is left to the whole check, load by load: slower, and never another answer.

use alloc::{boxed::Box, format};

use super::laws::{Lanes, Laws, Loads};
use super::{Joint, JointLoad, JointPreload, Repeats, Verdict, Word};
use crate::error::Error;
use crate::joint::Candidate;
use crate::strength::check::Mode;
use crate::units::{Force, Ratio};

/// One case of load on one bolt: the greatest load of each kind, and the least where they come and go.
///
/// ```
/// use shankline::joint::BoltCase;
/// use shankline::units::newtons;
/// let gust = BoltCase::steady(newtons(12e3), newtons(3e3));
/// let wave = BoltCase { across_least: newtons(-4e3), ..gust };
/// assert!(wave != gust);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct BoltCase {
    /// Greatest load across the axis, whichever way it acts: not negative.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub across: Force,
    /// Greatest load along the axis; below zero for one that presses the plies together all the time.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub along: Force,
    /// Least load across: the same as the greatest for a steady one, below zero for one that reverses, down to as much
    /// the other way.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub across_least: Force,
    /// Least load along: the same as the greatest for a steady one, of any sign.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub along_least: Force,
}

impl BoltCase {
    /// Loads that neither come nor go.
    ///
    /// ```
    /// use shankline::{joint::BoltCase, units::newtons};
    /// let case = BoltCase::steady(newtons(5.0), newtons(-2.0));
    /// assert_eq!(case.along_least, case.along);
    /// ```
    #[must_use]
    pub const fn steady(across: Force, along: Force) -> Self {
        Self {
            across,
            along,
            across_least: across,
            along_least: along,
        }
    }

    /// The case as the load of a joint: shock, load factor, prying and the number of cycles stay those of `usual`.
    ///
    /// A load that presses the plies together all the time pulls the bolt by nothing; what it changes by is kept.
    ///
    /// ```
    /// use shankline::joint::{BoltCase, JointLoad, Repeats};
    /// use shankline::units::newtons;
    /// let usual = JointLoad { shock_factor: 1.5, ..JointLoad::none() };
    /// let load = BoltCase::steady(newtons(5.0), newtons(-2.0)).of(&usual);
    /// assert_eq!((load.along, load.repeats, load.shock_factor), (newtons(0.0), Repeats::Never, 1.5));
    /// ```
    #[must_use]
    pub fn of(&self, usual: &JointLoad) -> JointLoad {
        let cycles = match usual.repeats {
            Repeats::Between { cycles, .. } => cycles,
            Repeats::Never => None,
        };
        let pressed = self.along.min(Force::default());
        let (along, along_least) = (self.along - pressed, self.along_least - pressed);
        let swings = self.across_least != self.across || along_least != along;
        JointLoad {
            across: self.across,
            along,
            repeats: if swings {
                Repeats::Between {
                    across_least: self.across_least,
                    along_least,
                    cycles,
                }
            } else {
                Repeats::Never
            },
            ..*usual
        }
    }

    /// The loads as numbers in newtons, if they make sense.
    #[inline]
    fn loads(&self) -> Option<Loads> {
        let pressed = self.along.value.min(0.0);
        let loads = Loads {
            across: self.across.value,
            along: self.along.value - pressed,
            across_least: self.across_least.value,
            along_least: self.along_least.value - pressed,
        };
        let sane = (0.0..=MOST).contains(&loads.across)
            && (0.0..=MOST).contains(&loads.along)
            && (-loads.across..=loads.across).contains(&loads.across_least)
            && (-MOST..=loads.along).contains(&loads.along_least);
        sane.then_some(loads)
    }
}

/// What [`JointLoad::validate`] refuses above, in newtons.
const MOST: f64 = super::load::MOST.value;

/// The answer for one case: the word of the verdict, and what governs.
///
/// ```
/// use shankline::joint::{CaseAnswer, Word};
/// assert_eq!(CaseAnswer::default().word, Word::Undecided); // before anything was asked
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CaseAnswer {
    /// The word.
    pub word: Word,
    /// The mode of the highest utilisation; none if nothing was compared.
    pub mode: Option<Mode>,
    /// The highest utilisation; 0 if nothing was compared.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub utilisation: Ratio,
}

impl Default for CaseAnswer {
    fn default() -> Self {
        Self {
            word: Word::Undecided,
            mode: None,
            utilisation: Ratio::default(),
        }
    }
}

impl From<&Verdict> for CaseAnswer {
    fn from(verdict: &Verdict) -> Self {
        let governing = verdict.governing();
        Self {
            word: verdict.word(),
            mode: governing.map(|check| check.mode),
            utilisation: governing.map_or_else(Ratio::default, |check| check.utilisation),
        }
    }
}

/// A joint made ready for many cases of load: [`Joint::prepare`].
///
/// An answer takes some ten nanoseconds and allocates nothing. It is that of the whole check: the same word, always; the
/// same utilisation to 1e-9 of it; the same mode, but where two come out alike to that. Each kind of load is prepared
/// when it first comes, which is why the answers want `&mut`; threads take a clone each.
///
/// ```
/// use shankline::joint::{BoltCase, CaseAnswer};
/// use shankline::prelude::*;
#[doc = include_str!("example.txt")]
/// let mut prepared = joint.prepare()?;
/// let cases: Vec<BoltCase> =
///     (1..=100).map(|step| BoltCase::steady(newtons(100.0 * f64::from(step)), newtons(0.0))).collect();
/// let mut answers = vec![CaseAnswer::default(); cases.len()];
/// prepared.sweep(&cases, &mut answers)?;
/// let (worst, answer) = prepared.worst(&cases)?.expect("there are cases");
/// assert_eq!((worst, answer), (99, answers[99]));
/// // The verdict of any case, whole:
/// let verdict = prepared.verdict(&cases[worst])?;
/// assert_eq!(verdict.word(), answer.word);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug)]
pub struct PreparedJoint {
    joint: Joint,
    /// Its length and its preload, which are what they are without regard to the load.
    candidate: Candidate,
    preload: Option<JointPreload>,
    kinds: [Option<Kind>; KINDS],
}

/// Kinds of load: none, steady, coming and going, or reversing across; none or some along, steady or not.
const KINDS: usize = 16;

/// How many cases of a slice are worked out side by side: few enough to stay close to the processor.
const BLOCK: usize = 32;

/// What is known of one kind of load.
#[derive(Clone, Debug)]
enum Kind {
    /// Every check, as it goes with the load.
    Laws(Box<Laws>),
    /// The whole check has to say.
    Whole,
}

impl Joint {
    /// Makes the joint ready for many cases of load: what does not depend on the load is worked out once.
    ///
    /// Shock factor, load factor, prying and the number of cycles are those of [`Joint::load`]; its loads themselves
    /// do not count.
    ///
    /// # Errors
    ///
    /// Those of [`check`](Self::check).
    ///
    /// ```
    /// use shankline::joint::BoltCase;
    /// use shankline::prelude::*;
    #[doc = include_str!("example.txt")]
    /// let mut prepared = joint.prepare()?;
    /// let answer = prepared.answer(&BoltCase::steady(newtons(900e3), newtons(0.0)))?;
    /// assert_eq!(answer.word, shankline::joint::Word::DoesNotHold);
    /// # Ok(())
    /// # }
    /// ```
    pub fn prepare(&self) -> Result<PreparedJoint, Error> {
        let verdict = self.check()?;
        Ok(PreparedJoint {
            joint: self.clone(),
            candidate: verdict.candidate,
            preload: verdict.preload,
            kinds: [const { None }; KINDS],
        })
    }
}

impl PreparedJoint {
    /// Word, governing mode and utilisation of one case.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for loads that [`JointLoad::validate`] refuses.
    ///
    /// ```
    /// use shankline::joint::{BoltCase, PreparedJoint, Word};
    /// fn holds(prepared: &mut PreparedJoint, case: &BoltCase) -> bool {
    ///     prepared.answer(case).is_ok_and(|answer| answer.word == Word::Holds)
    /// }
    /// ```
    #[inline]
    pub fn answer(&mut self, case: &BoltCase) -> Result<CaseAnswer, Error> {
        let Some(loads) = case.loads() else {
            // Refused there, with the reason.
            return self.whole(case);
        };
        if let Some(Some(Kind::Laws(laws))) = self.kinds.get(loads.kind()) {
            if let Some(answer) = laws.answer(&loads) {
                return Ok(answer);
            }
        }
        self.first_or_whole(case, &loads)
    }

    /// The answers for many cases, in their order.
    ///
    /// # Errors
    ///
    /// That of the first case that is refused; the answers before it stand. [`Error::Mismatch`] if there are not as many
    /// answers as cases.
    ///
    /// ```
    /// use shankline::joint::{BoltCase, CaseAnswer, PreparedJoint};
    /// fn all(prepared: &mut PreparedJoint, cases: &[BoltCase]) -> Result<Vec<CaseAnswer>, shankline::Error> {
    ///     let mut answers = vec![CaseAnswer::default(); cases.len()];
    ///     prepared.sweep(cases, &mut answers)?;
    ///     Ok(answers)
    /// }
    /// ```
    pub fn sweep(&mut self, cases: &[BoltCase], answers: &mut [CaseAnswer]) -> Result<(), Error> {
        if cases.len() != answers.len() {
            let (cases, answers) = (cases.len(), answers.len());
            return Err(Error::Mismatch(format!(
                "{cases} cases of load want as many answers, and there is room for {answers}"
            )));
        }
        let mut blocks = cases.chunks_exact(BLOCK);
        let mut room = answers.chunks_exact_mut(BLOCK);
        for (cases, answers) in blocks.by_ref().zip(room.by_ref()) {
            if !self.block(cases, answers) {
                self.one_by_one(cases, answers)?;
            }
        }
        self.one_by_one(blocks.remainder(), room.into_remainder())
    }

    /// The answers for cases that are all of one kind which is prepared already; false if they are not.
    fn block(&self, cases: &[BoltCase], answers: &mut [CaseAnswer]) -> bool {
        let Ok(answers) = <&mut [CaseAnswer; BLOCK]>::try_from(answers) else {
            return false;
        };
        let mut lanes = Lanes::<BLOCK>::new();
        let mut first = None;
        for (lane, case) in cases.iter().enumerate() {
            let Some(loads) = case.loads() else {
                return false;
            };
            if *first.get_or_insert(loads.kind()) != loads.kind() {
                return false;
            }
            lanes.put(lane, &loads);
        }
        match first.and_then(|kind| self.kinds.get(kind)) {
            Some(Some(Kind::Laws(laws))) => laws.answers(&lanes, answers),
            _ => false,
        }
    }

    fn one_by_one(&mut self, cases: &[BoltCase], answers: &mut [CaseAnswer]) -> Result<(), Error> {
        for (case, answer) in cases.iter().zip(answers) {
            *answer = self.answer(case)?;
        }
        Ok(())
    }

    /// The worst of many cases, by its place: one that does not hold before one that is undecided, that before one that
    /// holds; of those alike the one with the highest utilisation, and of equals the first. None if there are no cases.
    ///
    /// # Errors
    ///
    /// That of the first case that is refused.
    ///
    /// ```
    /// use shankline::joint::{BoltCase, PreparedJoint, Verdict};
    /// fn envelope(prepared: &mut PreparedJoint, cases: &[BoltCase]) -> Result<Option<Verdict>, shankline::Error> {
    ///     match prepared.worst(cases)? {
    ///         Some((place, _)) => prepared.verdict(&cases[place]).map(Some),
    ///         None => Ok(None),
    ///     }
    /// }
    /// ```
    pub fn worst(&mut self, cases: &[BoltCase]) -> Result<Option<(usize, CaseAnswer)>, Error> {
        let mut worst: Option<(usize, CaseAnswer)> = None;
        for (place, case) in cases.iter().enumerate() {
            let answer = self.answer(case)?;
            let is_worse = worst.is_none_or(|(_, worst)| answer.is_worse_than(&worst));
            if is_worse {
                worst = Some((place, answer));
            }
        }
        Ok(worst)
    }

    /// The whole check of one case.
    ///
    /// # Errors
    ///
    /// Those of [`Joint::check`].
    ///
    /// ```
    /// use shankline::joint::{BoltCase, PreparedJoint};
    /// fn explain(prepared: &PreparedJoint, case: &BoltCase) -> Result<String, shankline::Error> {
    ///     let verdict = prepared.verdict(case)?;
    ///     Ok(verdict.render(shankline::units::UnitSystem::Si).to_string())
    /// }
    /// ```
    pub fn verdict(&self, case: &BoltCase) -> Result<Verdict, Error> {
        self.joint(case).check()
    }

    /// The joint with the load of one case.
    ///
    /// ```
    /// use shankline::joint::{BoltCase, Joint, PreparedJoint};
    /// fn to_draw(prepared: &PreparedJoint, case: &BoltCase) -> Joint {
    ///     prepared.joint(case)
    /// }
    /// ```
    #[must_use]
    pub fn joint(&self, case: &BoltCase) -> Joint {
        Joint {
            load: case.of(&self.joint.load),
            ..self.joint.clone()
        }
    }

    /// Prepares the kind of load, if it is new; else the case is one of those that the whole check decides.
    #[cold]
    #[inline(never)]
    fn first_or_whole(&mut self, case: &BoltCase, loads: &Loads) -> Result<CaseAnswer, Error> {
        if let Some(kind @ None) = self.kinds.get_mut(loads.kind()) {
            let laws = Laws::of(&self.joint, &self.candidate, self.preload.as_ref(), loads);
            let answer = laws.as_ref().and_then(|laws| laws.answer(loads));
            *kind = Some(laws.map_or(Kind::Whole, |laws| Kind::Laws(Box::new(laws))));
            if let Some(answer) = answer {
                return Ok(answer);
            }
        }
        self.whole(case)
    }

    #[cold]
    fn whole(&self, case: &BoltCase) -> Result<CaseAnswer, Error> {
        self.verdict(case).map(|verdict| CaseAnswer::from(&verdict))
    }

    /// How many of the kinds of load that came are left to the whole check.
    #[doc(hidden)]
    #[must_use]
    pub fn unread_kinds(&self) -> usize {
        let kinds = self.kinds.iter().flatten();
        kinds.filter(|kind| matches!(kind, Kind::Whole)).count()
    }
}

impl CaseAnswer {
    fn is_worse_than(&self, other: &Self) -> bool {
        match self.word.severity().cmp(&other.word.severity()) {
            core::cmp::Ordering::Equal => self.utilisation > other.utilisation,
            order => order.is_gt(),
        }
    }
}

#[cfg(test)]
mod tests;
