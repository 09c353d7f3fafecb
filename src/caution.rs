//! What the user of a result must be told.
//!
//! A caution is no error: the number stands, and the caution says what to check before relying on it. A program
//! shows the sentences of `cautions()` beside the result, and [`GENERAL`] once in every report.
//!
//! | caution | what to do |
//! |---|---|
//! | [`FromMemory`](Caution::FromMemory), [`MethodFromMemory`](Caution::MethodFromMemory) | look the value or the formula up in the document it names |
//! | [`OneWitness`](Caution::OneWitness) | look the strengths up in the standard where a life depends on them |
//! | [`MaterialOutsideMethod`](Caution::MaterialOutsideMethod), [`NotForScrews`](Caution::NotForScrews) | choose another method or part, or justify the use |
//! | [`AgainstAdvice`](Caution::AgainstAdvice) | keep to the advice, or show by test or analysis that it may be left |
//! | [`TypicalStrength`](Caution::TypicalStrength), [`Stated`](Caution::Stated) | take a specified minimum or a listed part, or answer for the figures |
//! | [`BasicMinorArea`](Caution::BasicMinorArea) | take off what the sentence names |
//! | [`InsertSizes`](Caution::InsertSizes) | ask the maker of the insert, or test it |
//! | [`ProvisionalSurfacePressure`](Caution::ProvisionalSurfacePressure), [`CommonPractice`](Caution::CommonPractice) | rest nothing on it that could hurt someone without a test or a source |
//! | [`PreloadAboveTarget`](Caution::PreloadAboveTarget), [`PreloadAboveProof`](Caution::PreloadAboveProof) | lower the torque, or control the friction |
//! | [`EnduranceAtLowPreload`](Caution::EnduranceAtLowPreload) | take the lower of this and [`EnFatigue`](crate::tension::EnFatigue) |
//! | [`StockLengths`](Caution::StockLengths) | ask a dealer |
//! | [`PlatesOfConnection`](Caution::PlatesOfConnection) | give the outline of the plate and where it is held, or check by hand whether it buckles or bends |
//! | [`NominalSizes`](Caution::NominalSizes) | take the worst case for a joint that is built |

use alloc::vec::Vec;
use core::fmt;

use crate::source::{Method, Provenance};
use crate::units::Ratio;

/// A warning that goes with a result. `Display` writes it as a sentence.
///
/// ```
/// use shankline::caution::Caution;
/// assert!(Caution::Estimate.to_string().contains("not a certification"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Caution {
    /// Results are estimates.
    Estimate,
    /// Failures that can kill need a licensed engineer.
    QualifiedEngineer,
    /// A value in the result was recalled, not read in any document.
    FromMemory {
        /// The value.
        value: &'static str,
        /// Where it should be checked.
        provenance: Provenance,
    },
    /// The strengths of a bolt grade were read in one document alone, and no second one was found.
    OneWitness {
        /// The grade, by its label.
        grade: &'static str,
        /// The document, and where it was read.
        provenance: Provenance,
    },
    /// The numbers of a method were recalled for this edition, not read in it.
    MethodFromMemory {
        /// The method and edition.
        #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
        method: &'static Method,
    },
    /// The figures of a part are the caller's own.
    Stated {
        /// Of which part.
        part: StatedPart,
    },
    /// No hexagon bolts or screws are made of the grade: only studs, sems, structural bolts or socket
    /// screws.
    NotForScrews,
    /// The area at the root is that of the basic thread, not of the smallest its class allows.
    BasicMinorArea,
    /// The limits of the hole of a thread insert were computed, and the strength of its wire is not checked.
    InsertSizes,
    /// The list of stock lengths is trade practice or recalled.
    StockLengths,
    /// A plate of a connection of one bolt has no outline: whether a load that presses it makes it buckle is not asked.
    PlatesOfConnection,
    /// A length was taken on nominal sizes, without tolerances.
    NominalSizes,
    /// The method was written for other materials than the one it is used with.
    MaterialOutsideMethod {
        /// The method.
        #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
        method: &'static Method,
        /// The materials it was written for.
        written_for: &'static str,
    },
    /// The guideline itself marks its limiting surface pressure as not yet checked against newer research.
    ProvisionalSurfacePressure,
    /// A rule is common practice; no source of it was found.
    CommonPractice {
        /// The rule.
        rule: &'static str,
    },
    /// What was given is allowed by the method, but its publisher advises against it.
    AgainstAdvice {
        /// The method.
        #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
        method: &'static Method,
        /// What is advised.
        advice: &'static str,
    },
    /// Strengths of a material are typical ones, not minima.
    TypicalStrength,
    /// The preload may pass the fraction of the proof load that was aimed at.
    PreloadAboveTarget {
        /// Greatest preload over proof load.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_ratio")
        )]
        fraction: Ratio,
        /// The fraction aimed at.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_ratio")
        )]
        target: Ratio,
    },
    /// The preload may pass the proof load: the bolt may stretch permanently.
    PreloadAboveProof {
        /// Greatest preload over proof load.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_ratio")
        )]
        fraction: Ratio,
    },
    /// An endurance strength at zero mean stress is used for a bolt with little preload.
    EnduranceAtLowPreload {
        /// Stress of the preload over proof stress.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_ratio")
        )]
        fraction: Ratio,
    },
}

/// A kind of part whose figures a caller may state.
///
/// ```
/// use shankline::caution::{Caution, StatedPart};
/// let caution = Caution::Stated { part: StatedPart::BoltStrength };
/// assert!(caution.to_string().starts_with("The strengths of the bolt were stated by the caller"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum StatedPart {
    /// Strengths of a bolt.
    BoltStrength,
    /// Lengths and head of a bolt.
    Bolt,
    /// Size and strength of a nut.
    Nut,
    /// Size or hardness of a washer.
    Washer,
    /// Strengths and other figures of the material of a ply or tapped part.
    Material,
    /// Figures of a timber.
    Timber,
}

impl fmt::Display for StatedPart {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::BoltStrength => "strengths of the bolt",
            Self::Bolt => "dimensions of the bolt",
            Self::Nut => "dimensions and strength of the nut",
            Self::Washer => "figures of a washer",
            Self::Material => "figures of a material",
            Self::Timber => "figures of a timber",
        })
    }
}

impl Caution {
    /// The warning that goes with a method of weak basis.
    pub(crate) fn of_method(method: &'static Method) -> Option<Self> {
        method
            .basis
            .is_weak()
            .then_some(Self::MethodFromMemory { method })
    }

    /// The warning that goes with a value of weak basis.
    pub(crate) fn from_memory(value: &'static str, provenance: Provenance) -> Option<Self> {
        provenance
            .basis
            .is_weak()
            .then_some(Self::FromMemory { value, provenance })
    }
}

/// A list of warnings without repeats, in the order they were found.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let nut = Nut::find(NutStyle::Iso7042, &"M12".parse()?)?;
/// for caution in nut.cautions().iter() {
///     println!("{caution}");
/// }
/// assert_eq!(nut.cautions().iter().count(), 1);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Cautions {
    // Nearly every list is empty: then it takes three words and no memory beyond them.
    list: Vec<Caution>,
}

impl Cautions {
    /// No warning, for constants.
    pub(crate) const NONE: Self = Self { list: Vec::new() };

    /// The warnings.
    ///
    /// ```
    /// use shankline::caution::Cautions;
    /// assert!(Cautions::default().iter().next().is_none());
    /// ```
    pub fn iter(&self) -> impl Iterator<Item = &Caution> {
        self.list.iter()
    }

    /// The warnings of both lists.
    #[must_use]
    #[inline]
    pub(crate) fn and(mut self, other: Self) -> Self {
        if self.list.is_empty() {
            return other;
        }
        self.extend(&other);
        self
    }

    /// In place.
    #[inline]
    pub(crate) fn extend(&mut self, other: &Self) {
        for caution in &other.list {
            self.add(*caution);
        }
    }

    /// The list with one more warning at its end, if there is one and it is not there yet.
    #[must_use]
    #[inline]
    pub(crate) fn with(mut self, caution: Option<Caution>) -> Self {
        if let Some(caution) = caution {
            self.add(caution);
        }
        self
    }

    fn add(&mut self, caution: Caution) {
        if !self.list.contains(&caution) {
            self.list.push(caution);
        }
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Cautions {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.iter())
    }
}

/// The cautions that go with every result of this crate.
///
/// ```
/// use shankline::caution;
/// assert!(caution::GENERAL.iter().all(|caution| caution.to_string().ends_with('.')));
/// ```
pub const GENERAL: &[Caution] = &[Caution::Estimate, Caution::QualifiedEngineer];

impl fmt::Display for Caution {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Estimate => f.write_str(
                "These are estimates from published tables and formulas, not a certification; \
                 local codes and the maker's instructions rule.",
            ),
            Self::QualifiedEngineer => f.write_str(
                "Where a failure can hurt someone (lifting, steering, guard rails, structures, \
                 pressure), a licensed engineer must check the joint.",
            ),
            Self::FromMemory { value, provenance } => write!(
                f,
                "The {value} was recalled and not read in any document; check it against {}.",
                provenance.source
            ),
            Self::OneWitness { grade, provenance } => write!(
                f,
                "The strengths of {grade} at this size were read in one document alone; where a life depends on \
                 them, check them against {}.",
                provenance.source
            ),
            Self::MethodFromMemory { method } => write!(
                f,
                "The formulas and numbers of {method} were recalled and not read in it; check them there."
            ),
            Self::Stated { part } => write!(
                f,
                "The {part} were stated by the caller; nothing here vouches for them."
            ),
            Self::NotForScrews => f.write_str(
                "No hexagon bolts or cap screws are made of this grade, only other parts (studs, sems, \
                 structural bolts, socket screws); their heads, threads and lengths differ.",
            ),
            Self::BasicMinorArea => f.write_str(
                "The area at the thread root is that of the basic thread; the method takes the \
                 smallest its class allows, a few per cent less.",
            ),
            Self::InsertSizes => f.write_str(
                "The hole of the thread insert is taken with the tolerance of an ordinary thread so large, as the limits \
                 of its standard were not read, and its wire for no weaker than the thread of the bolt: ask its maker.",
            ),
            Self::PlatesOfConnection => f.write_str(
                "A plate has one bolt and no outline: whether it buckles where the load presses it, or bends in its plane, is not \
                 asked; check that by hand.",
            ),
            Self::StockLengths => f.write_str(
                "The list of stock lengths is common practice or recalled: ask your dealer.",
            ),
            Self::NominalSizes => f.write_str(
                "This length is that of a textbook, by nominal sizes without tolerances: in a real joint thread may \
                 lie in a shear plane, or the nut may reach the shank; search the worst case before buying.",
            ),
            Self::MaterialOutsideMethod {
                method,
                written_for,
            } => write!(
                f,
                "{method} is written for {written_for}; it is used here by analogy."
            ),
            Self::ProvisionalSurfacePressure => f.write_str(
                "The guideline marks this limiting surface pressure as not yet checked against newer research.",
            ),
            Self::CommonPractice { rule } => write!(
                f,
                "That {rule} is common practice; no source of it was found."
            ),
            Self::AgainstAdvice { method, advice } => {
                write!(f, "{method} advises {advice}; what was given is beyond it.")
            }
            Self::TypicalStrength => f.write_str(
                "The strengths of this material are typical values and not minima: they are not for \
                 design.",
            ),
            Self::PreloadAboveTarget { fraction, target } => write!(
                f,
                "The preload may reach {:.0} % of the proof load, above the {:.0} % aimed at.",
                fraction.value * 100.0,
                target.value * 100.0
            ),
            Self::PreloadAboveProof { fraction } => write!(
                f,
                "The preload may reach {:.0} % of the proof load: the bolt may stretch for good.",
                fraction.value * 100.0
            ),
            Self::EnduranceAtLowPreload { fraction } => write!(
                f,
                "The preload is only {:.0} % of proof: there an endurance strength at zero mean stress allows \
                 up to six times the amplitude of EN 1993-1-9; hold the range against that, too.",
                fraction.value * 100.0
            ),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_warning_is_listed_once_and_none_is_lost() {
        let recalled: Vec<_> = Method::all()
            .iter()
            .filter_map(|method| Caution::of_method(method))
            .take(8)
            .collect();
        let full = (recalled.iter()).fold(Cautions::default(), |list, one| list.with(Some(*one)));
        assert_eq!(full.iter().count(), 8);
        assert_eq!(full.clone().with(Some(recalled[0])).with(None), full);
        assert_eq!(full.clone().and(full.clone()), full);
    }
}
