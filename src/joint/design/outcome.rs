//! What a design search found.

use alloc::{format, string::String, vec::Vec};
use core::cmp::Ordering;

use super::{HoleRule, Objective, PartsMass, RuledOut, TurnedDown, order};
use crate::error::Error;
use crate::joint::{Candidate, Joint, JointBolt, JointNut, JointWasher, Verdict};
use crate::parts::WasherStyle;
use crate::strength::check::Check;
use crate::units::{Ratio, Stress, UnitSystem, shown};

/// What [`Joint::design`] found: designs that hold, the best first; those that do not, or of which nobody
/// knows, with reasons; and what could not even be put together. An example that runs stands at [`Joint::design`].
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
#[non_exhaustive]
pub struct Designs {
    /// What decided the order.
    pub objectives: Vec<Objective>,
    /// How many combinations of thread, product, grade, nut and washer the space has. Each is feasible,
    /// rejected or among those ruled out.
    pub combinations: usize,
    /// The whole check of the best design, with what was set aside and the cautions; none if nothing holds. As a
    /// document it is in the [`report`](Self::report).
    pub verdict: Option<Verdict>,
    pub(super) feasible: Vec<Design>,
    pub(super) rejected: Vec<TurnedDown>,
    pub(super) ruled_out: Vec<RuledOut>,
    pub(in crate::joint) start: Joint,
    pub(super) holes: HoleRule,
}

/// One choice of parts: what is put into the joint.
///
/// ```
/// use shankline::joint::{DesignChoice, Finish, JointBolt, JointNut};
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let zinc = Finish::ZincPlated { baked: false };
/// let choice = DesignChoice {
///     bolt: JointBolt {
///         product: ScrewProduct::Iso4014,
///         thread: "M12".parse()?,
///         grade: PropertyClass::Class8_8.into(),
///         length: Some(millimetres(70.0)),
///         finish: Some(zinc),
///     },
///     nut: JointNut {
///         style: NutStyle::Iso4032,
///         grade: Some(NutGrade::Iso898_2Class8),
///         finish: Some(zinc),
///     },
///     washers: None,
/// };
/// assert_eq!(
///     choice.text(UnitSystem::Si),
///     "M12 x 70.00 mm hexagon bolt ISO 4014, ISO 898-1 class 8.8; hex nut ISO 4032, ISO 898-2 class 8",
/// );
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
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
            ..
        } = self.bolt;
        let length = length.map_or_else(String::new, |length| {
            format!(" x {}", shown(length, system))
        });
        let nut = self.nut.style;
        let nut_grade = self
            .nut
            .grade
            .map_or_else(String::new, |grade| format!(", {grade}"));
        let washers = self
            .washers
            .map_or_else(String::new, |style| format!("; {style}"));
        format!("{thread}{length} {product}, {grade}; {nut}{nut_grade}{washers}")
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
#[derive(Clone, Debug, PartialEq)]
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
            .clone()
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

    /// The combinations that do not hold or are undecided, the least bad first: fewest reasons, then least
    /// overload.
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

    /// The combinations that cannot be put together, in the order of the threads.
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

    /// The joint with the parts of the best design; none if nothing holds.
    ///
    /// # Errors
    ///
    /// Those of [`joint`](Self::joint).
    ///
    /// ```
    /// use shankline::joint::{Designs, Joint};
    /// fn chosen(designs: &Designs) -> Result<Option<Joint>, shankline::Error> {
    ///     designs.best_joint()
    /// }
    /// ```
    pub fn best_joint(&self) -> Result<Option<Joint>, Error> {
        self.best().map(|best| self.joint(&best.choice)).transpose()
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
        // What was chosen is no longer taken for granted.
        joint.granted.retain(|granted| {
            use crate::joint::Fact;
            !matches!(
                granted.fact,
                Fact::Product
                    | Fact::Grade
                    | Fact::Nut
                    | Fact::NutGrade
                    | Fact::Washers
                    | Fact::Holes
            )
        });
        joint.nut = Some(choice.nut);
        let mut stack = joint.stack.to_builder();
        if let Some(style) = choice.washers {
            stack = stack.washers_of(&JointWasher::find(style, &choice.bolt.thread)?);
        }
        if let Some(drilled) = self.holes.drilled(&choice.bolt.thread)? {
            stack = if matches!(self.holes, HoleRule::Missing(_)) {
                stack.missing_holes_of(drilled)
            } else {
                stack.holes_of(drilled)
            };
        }
        joint.stack = stack.build()?;
        Ok(joint)
    }
}
