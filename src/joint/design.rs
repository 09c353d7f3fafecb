//! Which of many joints: the search over thread, product, grade, length, nut and washers.

mod mass;
mod objective;
mod order;
mod outcome;
mod parts;
mod reasons;
mod search;
mod space;

pub use mass::PartsMass;
pub use objective::{Objective, Score};
pub use outcome::{Design, DesignChoice, Designs};
pub use reasons::{RuledOut, RuledOutReason, TurnedDown, TurnedDownReason};
pub use space::{DesignSpace, HoleRule, OnHand};

use super::Joint;
use crate::error::Error;
use parts::Parts;
use search::Search;

impl Joint {
    /// The best of many joints: this one with every combination of thread, product, grade, nut and
    /// washers of a space, in every length that fits.
    ///
    /// What is not varied stays as it is: plies, loads, environment, tightening (its target is a share of
    /// the strength, so torque and preload follow the bolt), rules, methods; also the coatings, and a
    /// running torque or a stiffness where they are given. Holes and washers follow the
    /// thread as the space says. A given length is not kept: the length follows the stack.
    ///
    /// Lengths that fit are checked by [`check`](Self::check), nothing is estimated: all of them but those
    /// that cannot be better any more, or that fail for the same reason as one before. A design is feasible
    /// if the check [holds](super::JointCheck::holds), the loads use no more than the space permits, and
    /// nothing is left unchecked for want of a number of that bolt
    /// ([`NotChecked::of_bolt`](super::NotChecked::of_bolt)). Of each combination the best length under the
    /// objectives is kept. Without loads it is a search for parts and length only. No objective at all means
    /// [`Objective::DEFAULT`]. Equal designs are ordered by diameter, strength of the bolt, and the order of
    /// the parts in their types, so that neither the order of the lists nor repetitions in them change
    /// anything.
    ///
    /// What the check does not look at the design does not either: [`Designs::verdict`] says what that is.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for loads, temperatures, rules or a greatest utilisation that make no sense,
    /// and for more than [`DesignSpace::MOST_COMBINATIONS`]; [`Error::Mismatch`] if the
    /// diameter varies but something of the joint is made for its own (washers without a named style, a
    /// sleeve, a countersink, a counterbore, a spot face, an axial capacity in timber, a running torque or a
    /// stiffness that is given), if the grade varies beside a bending yield strength of NDS, or the lock of the
    /// nut beside a running torque, if the stack ends in a tapped part, or for bolts on hand without a length.
    /// Parts that do not exist are no error: see [`Designs::ruled_out`].
    ///
    /// ```
    /// use shankline::joint::{
    ///     DesignSpace, Environment, Joint, JointBolt, JointLoad, JointMethods, JointNut, Objective,
    ///     TurnedDownReason,
    /// };
    /// use shankline::prelude::*;
    /// use shankline::tables::holes::HoleFit;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // The hanger of a mezzanine walkway, shaken by steps; loads invented.
    /// let cleat = millimetres(15.0).plus_minus(millimetres(0.4));
    /// let hanger = Joint {
    ///     title: "mezzanine hanger (invented)".into(),
    ///     bolt: JointBolt {
    ///         product: ScrewProduct::Iso4014,
    ///         thread: "M12".parse()?,
    ///         grade: PropertyClass::Class8_8.into(),
    ///         length: None,
    ///     },
    ///     nut: Some(JointNut { style: NutStyle::Iso7040, grade: None }),
    ///     tapped: None,
    ///     stack: Stack::builder()
    ///         .ply("cleat", cleat)
    ///         .ply("hanger", millimetres(20.0).plus_minus(millimetres(0.5)))
    ///         .ply("cleat", cleat)
    ///         .shear_planes([1, 2])
    ///         .washers_under_nut(Washer::find(WasherStyle::Iso7089, &"M12".parse()?)?.thickness()?, 1)
    ///         .build()?,
    ///     plies: Vec::new(),
    ///     load: JointLoad { across: newtons(40e3), shock_factor: 1.25, ..JointLoad::default() },
    ///     environment: Environment { vibration: true, ..Environment::default() },
    ///     tightening: None,
    ///     rules: LengthRules::fabrication(UnitSystem::Si),
    ///     methods: JointMethods::machine_design(2.0),
    /// };
    /// let space = DesignSpace::new()
    ///     .threads(["M10".parse()?, "M12".parse()?, "M16".parse()?, "M20".parse()?])
    ///     .grades([PropertyClass::Class8_8, PropertyClass::Class10_9])
    ///     .nut_styles([NutStyle::Iso4032, NutStyle::Iso7040])
    ///     .washers([WasherStyle::Iso7089])
    ///     .holes(HoleFit::Normal);
    /// let designs = hanger.design(&space, &[Objective::Mass])?;
    ///
    /// let best = designs.best().expect("something holds");
    /// assert_eq!(best.choice.bolt.thread.to_string(), "M12");
    /// assert_eq!(best.choice.bolt.grade, PropertyClass::Class10_9.into());
    /// assert_eq!(best.choice.nut.style, NutStyle::Iso7040); // a plain nut spins off
    /// let verdict = designs.verdict.as_ref().expect("that of the best");
    /// assert!(verdict.holds() && !verdict.not_checked.is_empty());
    /// // M10 is too weak in any grade, and the reason says by how much.
    /// let small = designs.rejected().iter().find(|other| other.choice.bolt.thread.to_string() == "M10");
    /// assert!(matches!(small.unwrap().reasons[0], TurnedDownReason::Overloaded(check) if !check.holds()));
    /// # Ok(())
    /// # }
    /// ```
    pub fn design(&self, space: &DesignSpace, objectives: &[Objective]) -> Result<Designs, Error> {
        self.load.validate()?;
        self.methods.checked()?;
        self.environment.check()?;
        let rules = self.rules.checked()?;
        let lists = space.of(self)?;
        let objectives = if objectives.is_empty() {
            Objective::DEFAULT
        } else {
            objectives
        };
        let start = Self {
            rules,
            ..self.clone()
        };
        let mut search = Search::new(start, space, objectives);
        for &thread in &lists.threads {
            let parts = Parts::find(self, space, &lists, thread, &mut search.ruled_out)?;
            if let Some(parts) = parts {
                search.of_thread(&parts)?;
            }
        }
        let (feasible, rejected, ruled_out) = search.ranked();
        let mut designs = Designs {
            objectives: objectives.to_vec(),
            combinations: lists.combinations(),
            verdict: None,
            feasible,
            rejected,
            ruled_out,
            start: self.clone(),
            holes: space.holes,
        };
        if let Some(best) = designs.best() {
            designs.verdict = Some(designs.joint(&best.choice)?.check()?);
        }
        Ok(designs)
    }
}
