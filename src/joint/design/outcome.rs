//! What a design search found.

use alloc::{string::String, vec::Vec};
use core::cmp::Ordering;

use super::{HoleRule, Objective, PartsMass};
use crate::error::Error;
use crate::joint::{Candidate, Finding, Joint, JointBolt, JointNut};
use crate::material::BoltGrade;
use crate::parts::{NutStyle, ScrewProduct, Washer, WasherStyle};
use crate::strength::check::{Check, Mode};
use crate::thread::Thread;
use crate::units::{Length, Ratio, Stress, UnitSystem, shown};

/// What [`Joint::design`] found: designs that hold, the best first; those that do not, with reasons; and
/// what could not even be put together.
///
/// ```
/// use shankline::joint::Designs;
/// use shankline::units::UnitSystem;
/// fn print(designs: &Designs) {
///     for design in designs.feasible() {
///         println!("{}", design.choice.text(UnitSystem::Si));
///     }
///     for other in designs.rejected() {
///         for reason in &other.reasons {
///             println!("not {}: {}", other.choice.text(UnitSystem::Si), reason.text(UnitSystem::Si));
///         }
///     }
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Designs {
    /// What decided the order.
    pub objectives: Vec<Objective>,
    /// How many combinations of thread, product, grade, nut and washer the space has. Each is feasible,
    /// rejected or among those ruled out.
    pub combinations: usize,
    pub(super) feasible: Vec<Design>,
    pub(super) rejected: Vec<TurnedDown>,
    pub(super) ruled_out: Vec<RuledOut>,
    #[cfg_attr(feature = "serde", serde(skip))]
    pub(super) start: Joint,
    #[cfg_attr(feature = "serde", serde(skip))]
    pub(super) holes: HoleRule,
}

/// One choice of parts: what is put into the joint.
///
/// ```
/// use shankline::joint::{DesignChoice, JointBolt, JointNut};
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let choice = DesignChoice {
///     bolt: JointBolt {
///         product: ScrewProduct::Iso4014,
///         thread: "M12".parse()?,
///         grade: PropertyClass::Class8_8.into(),
///         length: Some(millimetres(70.0)),
///     },
///     nut: JointNut { style: NutStyle::Iso4032, grade: Some(NutGrade::Iso898_2Class8) },
///     washers: None,
/// };
/// assert_eq!(
///     choice.text(UnitSystem::Si),
///     "M12 x 70.00 mm hexagon bolt ISO 4014, ISO 898-1 class 8.8; hex nut, ISO 898-2 class 8",
/// );
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct DesignChoice {
    /// The bolt.
    pub bolt: JointBolt,
    /// The nut; its grade is none where no standard names one.
    pub nut: JointNut,
    /// Style of all washers; none for those the joint has.
    pub washers: Option<WasherStyle>,
}

impl DesignChoice {
    /// One line for a person.
    ///
    /// ```
    /// # use shankline::joint::DesignChoice;
    /// # use shankline::units::UnitSystem;
    /// fn print(choice: &DesignChoice) {
    ///     println!("{}", choice.text(UnitSystem::UsCustomary));
    /// }
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        let JointBolt {
            product,
            thread,
            grade,
            length,
        } = self.bolt;
        let mut text = alloc::format!("{thread}");
        if let Some(length) = length {
            text += &alloc::format!(" x {}", shown(length, system));
        }
        text += &alloc::format!(" {product}, {grade}; {}", self.nut.style);
        if let Some(grade) = self.nut.grade {
            text += &alloc::format!(", {grade}");
        }
        if let Some(style) = self.washers {
            text += &alloc::format!("; {style}");
        }
        text
    }
}

/// A design that holds, with its best length under the objectives.
///
/// ```
/// use shankline::joint::Design;
/// fn print(design: &Design) {
///     println!("{:?}, {} washers", design.governing, design.washers);
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Design {
    /// The parts.
    pub choice: DesignChoice,
    /// The length with its shear planes, washers and cut.
    pub candidate: Candidate,
    /// What the loads use most, the tightening not counted; none if nothing was compared.
    pub governing: Option<Check>,
    /// Mass of the parts; none where a dimension is not known.
    pub mass: Option<PartsMass>,
    /// Washers under head and nut.
    pub washers: usize,
    /// Whether enough of these bolts are on hand.
    pub on_hand: bool,
    /// Tensile strength of the grade at the size: the weaker one goes first between equals.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub tensile_strength: Stress,
}

impl Design {
    /// What the loads use of what they use most; zero if nothing was compared.
    ///
    /// ```
    /// # use shankline::joint::Design;
    /// fn reserve(design: &Design) -> f64 {
    ///     1.0 - design.utilisation().value
    /// }
    /// ```
    #[must_use]
    pub fn utilisation(&self) -> Ratio {
        self.governing
            .map_or_else(Ratio::default, |check| check.utilisation)
    }

    /// Whether it is no worse than another by some objectives.
    pub(super) fn is_as_good(&self, other: &Self, objectives: &[Objective]) -> bool {
        objectives
            .iter()
            .map(|&objective| self.score(objective).order(other.score(objective)))
            .find(|order| order.is_ne())
            .is_none_or(Ordering::is_lt)
    }

    /// Order under objectives; between equals smaller diameter, weaker bolt, and then the order of the
    /// parts in their types, so that no two designs rank alike.
    pub(super) fn compare(&self, other: &Self, objectives: &[Objective]) -> Ordering {
        objectives
            .iter()
            .map(|&objective| self.score(objective).order(other.score(objective)))
            .find(|order| order.is_ne())
            .unwrap_or_else(|| {
                let size = |design: &Self| design.choice.bolt.thread.nominal_diameter().value;
                let strength = |design: &Self| design.tensile_strength.value;
                size(self)
                    .total_cmp(&size(other))
                    .then(strength(self).total_cmp(&strength(other)))
                    .then_with(|| order::choices(&self.choice, &other.choice))
            })
    }
}

/// A combination that does not hold, with the length that comes nearest.
///
/// ```
/// use shankline::joint::TurnedDown;
/// use shankline::units::UnitSystem;
/// fn print(other: &TurnedDown) {
///     for reason in &other.reasons {
///         println!("{}", reason.text(UnitSystem::Si));
///     }
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TurnedDown {
    /// The parts. The length is the one with the fewest reasons against it, and of those the one least
    /// overloaded, among the lengths that were checked: where a reason holds for every length, the first.
    pub choice: DesignChoice,
    /// All reasons, overloads first, the worst of them first.
    pub reasons: Vec<TurnedDownReason>,
}

impl TurnedDown {
    /// The highest utilisation among the reasons.
    pub(super) fn worst(&self) -> f64 {
        self.reasons
            .iter()
            .map(|reason| match reason {
                TurnedDownReason::Overloaded(check)
                | TurnedDownReason::AboveLimit { check, .. } => check.utilisation.value,
                _ => 0.0,
            })
            .fold(0.0, f64::max)
    }

    /// The least bad first; total.
    pub(super) fn compare(&self, other: &Self) -> Ordering {
        self.reasons
            .len()
            .cmp(&other.reasons.len())
            .then(self.worst().total_cmp(&other.worst()))
            .then_with(|| order::choices(&self.choice, &other.choice))
    }
}

/// Why a combination is turned down.
///
/// ```
/// use shankline::joint::{NutReason, Finding, TurnedDownReason};
/// use shankline::units::UnitSystem;
/// let reason = TurnedDownReason::Fault(Finding::Nut(NutReason::SpinsFree));
/// assert!(reason.text(UnitSystem::Si).starts_with("nut: nothing but preload holds it"));
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum TurnedDownReason {
    /// A load is more than its resistance.
    Overloaded(Check),
    /// A load uses more of its resistance than the space permits.
    AboveLimit {
        /// The check.
        check: Check,
        /// What is permitted.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_ratio")
        )]
        limit: Ratio,
    },
    /// Something found forbids it: of the length, the nut, a distance, the temperature.
    Fault(Finding),
    /// The methods do not apply to these parts.
    NotCheckable(#[cfg_attr(feature = "serde", serde(serialize_with = "as_text"))] Error),
}

#[cfg(feature = "serde")]
fn as_text<S: serde::Serializer>(error: &Error, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_str(error)
}

impl TurnedDownReason {
    /// One line for a person.
    ///
    /// ```
    /// use shankline::joint::{Finding, TurnedDownReason};
    /// use shankline::units::{UnitSystem, celsius};
    /// let reason = TurnedDownReason::Fault(Finding::BoltTooHot { limit: celsius(150.0) });
    /// assert_eq!(reason.text(UnitSystem::Si), "the bolt is specified up to 150 °C only");
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        match self {
            Self::Overloaded(check) => alloc::format!(
                "{check}: {} on {}",
                check.demand.shown(system),
                check.resistance.shown(system)
            ),
            Self::AboveLimit { check, limit } => {
                alloc::format!("{check}, above {:.1} %", limit.value * 100.0)
            }
            Self::Fault(finding) => finding.text(system),
            Self::NotCheckable(error) => alloc::format!("cannot be checked: {error}"),
        }
    }
}

/// Combinations that were not checked, because of something that they have in common.
///
/// ```
/// use shankline::joint::RuledOut;
/// fn print(group: &RuledOut) {
///     println!("{} combinations with {}: {}", group.combinations, group.thread, group.reason);
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct RuledOut {
    /// Their thread.
    pub thread: Thread,
    /// What rules them out.
    pub reason: RuledOutReason,
    /// How many they are. A combination with several reasons is counted with the first: holes, washers,
    /// product, nut, grade, grade in the product, stock.
    pub combinations: usize,
}

/// Why combinations cannot be put together. `Display` writes a sentence.
///
/// ```
/// use shankline::joint::RuledOutReason;
/// use shankline::material::SaeGrade;
/// use shankline::parts::ScrewProduct;
/// let reason = RuledOutReason::GradeOfOtherProduct {
///     product: ScrewProduct::Iso4014,
///     grade: SaeGrade::Grade8.into(),
/// };
/// assert_eq!(reason.to_string(), "hexagon bolt ISO 4014 is not made in SAE J429 grade 8");
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum RuledOutReason {
    /// The table has no hole for the thread.
    NoHole {
        /// What the table says.
        #[cfg_attr(feature = "serde", serde(serialize_with = "as_text"))]
        error: Error,
    },
    /// The thread does not pass through a hole that is kept.
    HoleTooSmall {
        /// Ply, counted from 1 at the head.
        ply: usize,
        /// Its hole.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        hole: Length,
    },
    /// A hole that is kept is larger than a loose clearance hole for the thread.
    HoleTooLarge {
        /// Ply, counted from 1 at the head.
        ply: usize,
        /// Its hole.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        hole: Length,
        /// The loose clearance hole.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        largest: Length,
    },
    /// There is no such washer, or its thickness is not known.
    NoWasher {
        /// Its style.
        style: WasherStyle,
        /// What the tables say.
        #[cfg_attr(feature = "serde", serde(serialize_with = "as_text"))]
        error: Error,
    },
    /// There is no such screw, or none of known lengths.
    NoScrew {
        /// The product.
        product: ScrewProduct,
        /// What the tables say.
        #[cfg_attr(feature = "serde", serde(serialize_with = "as_text"))]
        error: Error,
    },
    /// There is no such nut, its height is not known, or it does not come in the grade.
    NoNut {
        /// The nut.
        style: NutStyle,
        /// What the tables say.
        #[cfg_attr(feature = "serde", serde(serialize_with = "as_text"))]
        error: Error,
    },
    /// The grade is not made in the size.
    NoGrade {
        /// The grade.
        grade: BoltGrade,
        /// What the tables say.
        #[cfg_attr(feature = "serde", serde(serialize_with = "as_text"))]
        error: Error,
    },
    /// The product is not made in the grade.
    GradeOfOtherProduct {
        /// The product.
        product: ScrewProduct,
        /// The grade.
        grade: BoltGrade,
    },
    /// Too few are on hand in any length.
    NotOnHand {
        /// The product.
        product: ScrewProduct,
        /// The grade.
        grade: BoltGrade,
    },
}

impl core::fmt::Display for RuledOutReason {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        use crate::error::Amount;
        match self {
            Self::NoHole { error }
            | Self::NoWasher { error, .. }
            | Self::NoScrew { error, .. }
            | Self::NoNut { error, .. }
            | Self::NoGrade { error, .. } => error.fmt(f),
            Self::HoleTooSmall { ply, hole } => write!(
                f,
                "it does not pass the hole of {} in ply {ply}",
                Amount::from(*hole)
            ),
            Self::HoleTooLarge { ply, hole, largest } => write!(
                f,
                "the hole of {} in ply {ply} is too large, a loose one is {}",
                Amount::from(*hole),
                Amount::from(*largest)
            ),
            Self::GradeOfOtherProduct { product, grade } => {
                write!(f, "{product} is not made in {grade}")
            }
            Self::NotOnHand { product, grade } => {
                write!(f, "too few {product} in {grade} are on hand")
            }
        }
    }
}

impl Designs {
    /// The best design, if any holds.
    ///
    /// ```
    /// # use shankline::joint::Designs;
    /// # use shankline::units::UnitSystem;
    /// fn answer(designs: &Designs) -> String {
    ///     designs.best().map_or("nothing holds".into(), |best| best.choice.text(UnitSystem::Si))
    /// }
    /// ```
    #[must_use]
    pub fn best(&self) -> Option<&Design> {
        self.feasible.first()
    }

    /// The designs that hold, the best first: of each combination its best length.
    ///
    /// ```
    /// # use shankline::joint::Designs;
    /// fn top_five(designs: &Designs) -> impl Iterator<Item = &shankline::joint::Design> {
    ///     designs.feasible().iter().take(5)
    /// }
    /// ```
    #[must_use]
    pub fn feasible(&self) -> &[Design] {
        &self.feasible
    }

    /// The combinations that do not hold, the least bad first: fewest reasons, then least overload.
    ///
    /// ```
    /// # use shankline::joint::Designs;
    /// fn nearest_miss(designs: &Designs) -> Option<&shankline::joint::TurnedDown> {
    ///     designs.rejected().first()
    /// }
    /// ```
    #[must_use]
    pub fn rejected(&self) -> &[TurnedDown] {
        &self.rejected
    }

    /// What was not checked, in the order of the threads.
    ///
    /// ```
    /// # use shankline::joint::Designs;
    /// fn never_checked(designs: &Designs) -> usize {
    ///     designs.ruled_out().iter().map(|group| group.combinations).sum()
    /// }
    /// ```
    #[must_use]
    pub fn ruled_out(&self) -> &[RuledOut] {
        &self.ruled_out
    }

    /// The objective by which a feasible design comes before the next one; none for the last, and where
    /// only the tie-break decides.
    ///
    /// ```
    /// # use shankline::joint::Designs;
    /// fn why_the_best(designs: &Designs) -> String {
    ///     match designs.decided_by(0) {
    ///         Some(objective) => format!("least {objective}"),
    ///         None => "no objective tells it from the next".into(),
    ///     }
    /// }
    /// ```
    #[must_use]
    pub fn decided_by(&self, rank: usize) -> Option<Objective> {
        let next = self.feasible.get(rank.checked_add(1)?)?;
        let design = self.feasible.get(rank)?;
        self.objectives
            .iter()
            .copied()
            .find(|&objective| design.score(objective) != next.score(objective))
    }

    /// The joint with the parts of a choice, to check it with all that the check says, or for its sheet.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] or [`Error::NoValue`] for washers or holes that do not exist, never for the
    /// choices in this result.
    ///
    /// ```
    /// use shankline::joint::{Designs, Sheet};
    /// fn sheet(designs: &Designs) -> Result<Option<Sheet>, shankline::Error> {
    ///     let Some(best) = designs.best() else { return Ok(None) };
    ///     let joint = designs.joint(&best.choice)?;
    ///     let verdict = joint.check()?;
    ///     Sheet::new(&joint, &verdict).map(Some)
    /// }
    /// ```
    pub fn joint(&self, choice: &DesignChoice) -> Result<Joint, Error> {
        let mut joint = self.start.clone();
        joint.bolt = choice.bolt;
        joint.nut = choice.nut;
        if let Some(style) = choice.washers {
            let washer = Washer::find(style, &choice.bolt.thread)?;
            joint.stack = joint
                .stack
                .to_builder()
                .washers_of(washer.thickness()?)
                .build()?;
        }
        if let Some(drilled) = self.holes.drilled(&choice.bolt.thread)? {
            for ply in &mut joint.plies {
                ply.hole = Some(drilled);
            }
        }
        Ok(joint)
    }
}

/// Whether a check says something of the loads: see [`Objective::Utilisation`].
pub(super) fn is_of_loads(check: &Check) -> bool {
    check.mode != Mode::Tightening
}

/// Orders of parts that have none of their own: that of the variants in their types.
pub(super) mod order {
    use core::cmp::Ordering;

    use super::DesignChoice;
    use crate::joint::JointNut;
    use crate::material::BoltGrade;
    use crate::parts::{ScrewProduct, WasherStyle};
    use crate::thread::Thread;

    pub(in crate::joint::design) fn threads(a: &Thread, b: &Thread) -> Ordering {
        let diameter = |thread: &Thread| thread.nominal_diameter().value;
        let pitch = |thread: &Thread| thread.pitch().value;
        diameter(a)
            .total_cmp(&diameter(b))
            .then(pitch(a).total_cmp(&pitch(b)))
            .then_with(|| {
                use alloc::string::ToString;
                a.to_string().cmp(&b.to_string())
            })
    }

    pub(in crate::joint::design) fn product(product: ScrewProduct) -> u32 {
        product as u32
    }

    pub(in crate::joint::design) fn grade(grade: BoltGrade) -> (u32, u32) {
        match grade {
            BoltGrade::Stated => (0, 0),
            BoltGrade::Sae(grade) => (1, grade as u32),
            BoltGrade::Iso(class) => (2, class as u32),
            BoltGrade::Astm(grade) => (3, grade as u32),
            BoltGrade::Stainless(class) => (4, class as u32),
        }
    }

    pub(in crate::joint::design) fn nut(nut: JointNut) -> (u32, Option<u32>) {
        (nut.style as u32, nut.grade.map(|grade| grade as u32))
    }

    pub(in crate::joint::design) fn washer(style: Option<WasherStyle>) -> Option<u32> {
        style.map(|style| style as u32)
    }

    pub(in crate::joint::design) fn choices(a: &DesignChoice, b: &DesignChoice) -> Ordering {
        let key = |choice: &DesignChoice| {
            (
                product(choice.bolt.product),
                grade(choice.bolt.grade),
                nut(choice.nut),
                washer(choice.washers),
            )
        };
        let length = |choice: &DesignChoice| choice.bolt.length.map_or(0.0, |length| length.value);
        threads(&a.bolt.thread, &b.bolt.thread)
            .then_with(|| key(a).cmp(&key(b)))
            .then_with(|| length(a).total_cmp(&length(b)))
    }
}
