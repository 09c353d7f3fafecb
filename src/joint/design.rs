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

use core::ops::ControlFlow;

use super::Joint;
use crate::error::Error;
use parts::Parts;
pub(super) use parts::nut_grade_for;
use search::Search;

impl Joint {
    /// The best of many joints: this one with every combination of thread, product, grade, nut and
    /// washers of a space, in every length that fits.
    ///
    /// What is not varied stays as it is: plies, loads, environment, tightening (its target is a share of
    /// the strength, so torque and preload follow the bolt), rules, methods, scope, what is set aside; also the
    /// coatings of bolt and nut and the metal of the washers, and a running torque or a stiffness where they are
    /// given. Holes and washers follow the thread as the space says. A given length is not kept: the length
    /// follows the stack.
    ///
    /// Lengths that fit are checked by [`check`](Self::check), nothing is estimated: all of them but those
    /// that cannot be better any more, or that fail for the same reason as one before. A design is feasible
    /// if its verdict [holds](super::Verdict::holds) and the loads use no more than the space permits. What is
    /// undecided is turned down with what it [lacks](TurnedDownReason::Undecided): describe the joint as far as
    /// its own verdict [asks](super::Verdict::to_decide), or [set the mode aside](Self::set_aside). Of each
    /// combination the best length under the objectives is kept. For parts and length only, without loads,
    /// [`Mode::Loads`](crate::strength::check::Mode::Loads) is set aside, or the [scope](Self::scope) is narrower. No
    /// objective at all means [`Objective::DEFAULT`]. Equal designs are ordered by diameter, strength of the bolt,
    /// and the order of the parts in their types, so that neither the order of the lists nor repetitions in them
    /// change anything.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for loads, temperatures, rules or a greatest utilisation that make no sense,
    /// and for more than [`DesignSpace::MOST_COMBINATIONS`]; [`Error::Mismatch`] if the
    /// diameter varies but something of the joint is made for its own (washers without a named style, a
    /// sleeve, a countersink, a counterbore, a spot face, a slot, a bearing strength of a ply, an axial capacity in
    /// timber, a running torque or a stiffness that is given), if the grade varies beside a bending yield strength of
    /// NDS, or the lock of the nut beside a running torque, if the stack ends in a tapped part, or for bolts on hand
    /// without a length or without a coating where the joint has one. Parts that do not exist are no error: see
    /// [`Designs::ruled_out`].
    ///
    /// ```
    /// use shankline::joint::*;
    /// use shankline::prelude::*;
    /// use shankline::tables::holes::HoleFit;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // The hanger of a mezzanine walkway, shaken by steps; loads invented.
    /// let ply = |name, thickness| {
    ///     JointPly::new(name, millimetres(thickness).plus_minus(millimetres(0.5)))
    ///         .material("ASTM A36 steel")
    ///         .end_distance(millimetres(45.0))
    ///         .edge_distance(millimetres(40.0))
    ///         .width(millimetres(80.0))
    /// };
    /// let thread = "M12".parse()?;
    /// let washer = JointWasher::find(WasherStyle::Iso7089, &thread)?;
    /// let finish = Some(Finish::ZincPlated { baked: false });
    /// let hanger = Joint {
    ///     title: "mezzanine hanger (invented)".into(),
    ///     bolt: JointBolt {
    ///         product: ScrewProduct::Iso4014,
    ///         thread,
    ///         grade: PropertyClass::Class8_8.into(),
    ///         length: None,
    ///         finish,
    ///     },
    ///     nut: Some(JointNut { style: NutStyle::Iso7040, grade: None, finish }),
    ///     stack: Stack::builder()
    ///         .washer_under_head(washer.clone())
    ///         .add(ply("cleat", 15.0))
    ///         .add(ply("hanger", 20.0))
    ///         .add(ply("cleat", 15.0))
    ///         .shear_planes([1, 2])
    ///         .washers_under_nut(washer, 1)
    ///         .build()?,
    ///     pattern: Pattern::Single,
    ///     load: JointLoad { shock_factor: 1.25, ..JointLoad::across(newtons(22e3)) },
    ///     environment: Environment { vibration: true, ..Environment::workshop() },
    ///     tightening: Some(Tightening::Snug),
    ///     rules: LengthRules::fabrication(UnitSystem::Si),
    ///     methods: JointMethods::machine_design(2.0),
    ///     scope: Scope::Joint,
    ///     set_aside: Vec::new(),
    ///     granted: Vec::new(),
    ///     own: OwnParts::default(),
    /// };
    /// let space = DesignSpace::new()
    ///     .threads(["M10".parse()?, "M12".parse()?, "M16".parse()?, "M20".parse()?])
    ///     .grades([PropertyClass::Class5_8, PropertyClass::Class8_8])
    ///     .nut_styles([NutStyle::Iso4032, NutStyle::Iso7040])
    ///     .washers([WasherStyle::Iso7089])
    ///     .holes(HoleFit::Normal);
    /// let designs = hanger.design(&space, &[Objective::Mass])?;
    ///
    /// let best = designs.best().expect("something holds");
    /// assert_eq!(best.choice.bolt.thread.to_string(), "M12");
    /// assert_eq!(best.choice.bolt.grade, PropertyClass::Class8_8.into());
    /// assert_eq!(best.choice.nut.style, NutStyle::Iso7040); // a plain nut spins off
    /// assert_eq!(best.choice.nut.grade, Some(NutGrade::Iso898_2Class8)); // that of ISO 898-2 for the bolt
    /// let verdict = designs.verdict.as_ref().expect("that of the best");
    /// assert_eq!(verdict.word(), Word::Holds);
    /// // On M10 the hanger bears too little, whatever the grade, and the reason says by how much.
    /// let small = designs.rejected().iter().find(|other| other.choice.bolt.thread.to_string() == "M10");
    /// assert!(matches!(&small.unwrap().reasons[0], TurnedDownReason::Overloaded(check) if !check.holds()));
    ///
    /// // What nobody knows is not proposed.
    /// let undescribed = Joint { tightening: None, ..hanger };
    /// let designs = undescribed.design(&space, &[])?;
    /// assert!(designs.best().is_none());
    /// assert!(matches!(designs.rejected()[0].reasons[0], TurnedDownReason::Undecided(_)));
    /// # Ok(())
    /// # }
    /// ```
    pub fn design(&self, space: &DesignSpace, objectives: &[Objective]) -> Result<Designs, Error> {
        match self.design_watched(space, objectives, |_, _| ControlFlow::Continue(()))? {
            ControlFlow::Continue(designs) => Ok(designs),
            // Nobody stops it.
            ControlFlow::Break(()) => Err(Error::Mismatch("the search was stopped".into())),
        }
    }

    /// The same, for a search that somebody watches: told how many combinations are done of how many, before each kind
    /// of bolt and nut, and at the end; it may stop the search.
    ///
    /// # Errors
    ///
    /// Those of [`design`](Self::design).
    ///
    /// ```
    /// use core::ops::ControlFlow;
    /// use shankline::joint::{DesignSpace, Designs, Joint};
    /// fn with_patience(joint: &Joint, space: &DesignSpace) -> Result<Option<Designs>, shankline::Error> {
    ///     let start = std::time::Instant::now();
    ///     let found = joint.design_watched(space, &[], |done, of| {
    ///         println!("{done} of {of}");
    ///         if start.elapsed().as_secs() < 10 { ControlFlow::Continue(()) } else { ControlFlow::Break(()) }
    ///     })?;
    ///     Ok(match found {
    ///         ControlFlow::Continue(designs) => Some(designs),
    ///         ControlFlow::Break(()) => None,
    ///     })
    /// }
    /// ```
    pub fn design_watched(
        &self,
        space: &DesignSpace,
        objectives: &[Objective],
        mut watch: impl FnMut(usize, usize) -> ControlFlow<()>,
    ) -> Result<ControlFlow<(), Designs>, Error> {
        if !self.own.is_empty() {
            return Err(Error::Mismatch(
                "the search chooses among listed bolts and nuts, and would put them in place of those of your own: \
                 check the joint as it is"
                    .into(),
            ));
        }
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
        // What was taken for granted is told of the best one only.
        let start = Self {
            rules,
            granted: alloc::vec::Vec::new(),
            ..self.clone()
        };
        let mut search = Search::new(start, space, objectives);
        let all = lists.combinations();
        let of_thread = all / lists.threads.len().max(1);
        for (number, &thread) in lists.threads.iter().enumerate() {
            let before = number * of_thread;
            let parts = Parts::find(self, space, &lists, thread, &mut search.ruled_out)?;
            let Some(parts) = parts else { continue };
            let flow = search.of_thread(&parts, |done, steps| {
                watch(before + of_thread * done / steps, all)
            })?;
            if flow.is_break() {
                return Ok(ControlFlow::Break(()));
            }
        }
        if watch(all, all).is_break() {
            return Ok(ControlFlow::Break(()));
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
        Ok(ControlFlow::Continue(designs))
    }
}
