//! What to change when no length does what is wanted.

use alloc::{string::String, vec::Vec};

use super::{Candidate, LengthRules, LengthSearch, NutEnd, Stack};
use crate::error::Error;
use crate::parts::ScrewSeries;
use crate::units::{Length, UnitSystem};

mod change;
mod finding;

#[cfg(feature = "serde")]
use change::serialize_screws;
pub use change::{Alternative, Change};

/// What a bolt length is wanted to do.
///
/// ```
/// use shankline::joint::Goal;
/// assert!(Goal::Fits < Goal::EveryPlaneOnShank);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Goal {
    /// Clamp, and reach through the nut, by the rules.
    Fits,
    /// That, and no shear plane in full thread in the worst case; run-out is let pass.
    NoPlaneInThread,
    /// That, and every shear plane on guaranteed shank in the worst case.
    EveryPlaneOnShank,
}

impl Goal {
    /// Whether a candidate does it.
    ///
    /// ```
    /// use shankline::{joint::Goal, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// assert!(Goal::EveryPlaneOnShank.is_met_by(selection.best().unwrap()));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn is_met_by(self, candidate: &Candidate) -> bool {
        let planes = match self {
            Self::Fits => 0,
            Self::NoPlaneInThread => candidate.planes_in_thread,
            Self::EveryPlaneOnShank => {
                let in_run_out = candidate.planes_in_run_out;
                in_run_out.saturating_add(candidate.planes_in_thread)
            }
        };
        candidate.fits() && planes == 0
    }
}

/// Stack, product, nut and rules of one length search, to change and search again.
///
/// ```
/// use shankline::{joint::{Arrangement, Change, Goal}, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// // A stage rail: a thin base under the nut leaves no room for the run-out.
/// let thread: Thread = "M10".parse()?;
/// let stack = Stack::builder()
///     .ply("post foot", millimetres(30.0).plus_minus(millimetres(0.3)))
///     .ply("base plate", millimetres(6.0).plus_minus(millimetres(0.2)))
///     .shear_planes([1])
///     .washers_under_nut(millimetres(2.0).plus_minus(millimetres(0.2)), 1)
///     .build()?;
/// let arrangement = Arrangement::new(
///     stack,
///     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
///     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
///     LengthRules::fabrication(UnitSystem::Si).with_washers_under_nut(1),
/// );
/// assert!(arrangement.best(Goal::EveryPlaneOnShank)?.is_none());
/// let advice = arrangement.advice(Goal::EveryPlaneOnShank, &[])?;
/// // The least effort: put the bolt in from the other side, so that the thick ply is at the nut.
/// assert_eq!(advice.advice[0].changes, [Change::TurnBolt]);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Arrangement {
    /// What the bolt goes through.
    pub stack: Stack,
    /// The product.
    #[cfg_attr(feature = "serde", serde(serialize_with = "serialize_screws"))]
    pub screws: ScrewSeries,
    /// The nut.
    pub nut: NutEnd,
    /// The rules.
    pub rules: LengthRules,
}

/// A change, or two together, and what the search finds with them.
///
/// ```
/// use shankline::{joint::{Arrangement, Goal}, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let ply = millimetres(4.0).plus_minus(millimetres(0.1));
/// # let stack = Stack::builder().ply("a", ply).ply("b", ply).shear_planes([1]).build()?;
/// # let arrangement = Arrangement::new(
/// #     stack,
/// #     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
/// #     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
/// #     LengthRules::fabrication(UnitSystem::Si),
/// # );
/// for advice in arrangement.advice(Goal::EveryPlaneOnShank, &[])?.advice {
///     assert!(Goal::EveryPlaneOnShank.is_met_by(&advice.outcome));
///     println!("{}", advice.text(UnitSystem::Si));
/// }
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Advice {
    /// The change; two where no single one does, the second reckoned with the first made.
    pub changes: Vec<Change>,
    /// The best candidate with the changes made.
    pub outcome: Candidate,
}

impl Advice {
    /// The changes as a sentence, lengths in the reader's units.
    ///
    /// ```
    /// # use shankline::{joint::{Arrangement, Goal}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let stack = Stack::builder()
    /// #     .ply("a", Spread::exact(millimetres(30.0)))
    /// #     .ply("b", Spread::exact(millimetres(5.0)))
    /// #     .shear_planes([1])
    /// #     .build()?;
    /// # let arrangement = Arrangement::new(
    /// #     stack,
    /// #     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
    /// #     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
    /// #     LengthRules::fabrication(UnitSystem::Si),
    /// # );
    /// let list = arrangement.advice(Goal::EveryPlaneOnShank, &[])?;
    /// assert!(list.advice[0].text(UnitSystem::Si).starts_with("put the bolt in from the other side"));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        let texts: Vec<String> = self
            .changes
            .iter()
            .map(|change| change.text(system))
            .collect();
        texts.join(", and ")
    }
}

/// What would do, in the order of effort: changes that do it alone, or, where there is none, pairs.
///
/// ```
/// use shankline::{joint::{Arrangement, Goal}, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let arrangement = |ply| -> Result<Arrangement, shankline::Error> { Ok(Arrangement::new(
/// #     Stack::builder().ply("a", ply).ply("b", ply).shear_planes([1]).build()?,
/// #     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
/// #     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
/// #     LengthRules::fabrication(UnitSystem::Si),
/// # )) };
/// // Two 4 mm plies: M10 has a transition of 7.5 mm.
/// let thin = arrangement(Spread::exact(millimetres(4.0)))?;
/// let advice = thin.advice(Goal::EveryPlaneOnShank, &[])?;
/// assert!((advice.margin.unwrap() + millimetres(3.5)).abs() < millimetres(1e-9));
/// // Nothing to advise where a length does what is wanted.
/// let thick = arrangement(Spread::exact(millimetres(20.0)))?;
/// assert!(thick.advice(Goal::EveryPlaneOnShank, &[])?.advice.is_empty());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AdviceList {
    /// What was wanted.
    pub goal: Goal,
    /// The feasibility identity at the shortest transition of the product and with every permitted
    /// washer: (least thickness after the last plane) - Y - c P - (spread up to the last plane).
    /// Negative: no length whatever of the product has every plane on shank and clamps. None
    /// without shear planes, and for products threaded to the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub margin: Option<Length>,
    /// The advice; empty if a length does what is wanted already, or if nothing here helps.
    pub advice: Vec<Advice>,
}

impl Arrangement {
    /// Puts the parts of a search together; they are checked when it runs.
    ///
    /// ```
    /// use shankline::{joint::Arrangement, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10".parse()?;
    /// let arrangement = Arrangement::new(
    ///     Stack::builder().ply("plate", Spread::exact(millimetres(40.0))).build()?,
    ///     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
    ///     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
    ///     LengthRules::fabrication(UnitSystem::Si),
    /// );
    /// assert!(arrangement.search()?.run()?.best().is_some());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn new(stack: Stack, screws: ScrewSeries, nut: NutEnd, rules: LengthRules) -> Self {
        Self {
            stack,
            screws,
            nut,
            rules,
        }
    }

    /// The search over the stock lengths.
    ///
    /// # Errors
    ///
    /// Those of [`LengthSearch::new`].
    ///
    /// ```
    /// # use shankline::{joint::Arrangement, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let arrangement = Arrangement::new(
    /// #     Stack::builder().ply("plate", Spread::exact(millimetres(40.0))).build()?,
    /// #     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
    /// #     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
    /// #     LengthRules::fabrication(UnitSystem::Si),
    /// # );
    /// assert!(!arrangement.search()?.run()?.accepted().is_empty());
    /// # Ok(())
    /// # }
    /// ```
    pub fn search(&self) -> Result<LengthSearch<'_>, Error> {
        LengthSearch::new(&self.stack, &self.screws, self.nut, self.rules)
    }

    /// The best stock length that does what is wanted, if any.
    ///
    /// # Errors
    ///
    /// Those of [`LengthSearch::new`].
    ///
    /// ```
    /// # use shankline::{joint::{Arrangement, Goal}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let arrangement = Arrangement::new(
    /// #     Stack::builder().ply("plate", Spread::exact(millimetres(40.0))).build()?,
    /// #     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
    /// #     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
    /// #     LengthRules::fabrication(UnitSystem::Si),
    /// # );
    /// assert_eq!(arrangement.best(Goal::Fits)?.unwrap().screw.nominal, millimetres(55.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn best(&self, goal: Goal) -> Result<Option<Candidate>, Error> {
        match self.search()?.run() {
            Ok(selection) => {
                let mut accepted = selection.accepted().iter();
                Ok(accepted
                    .find(|candidate| goal.is_met_by(candidate))
                    .copied())
            }
            // Nothing is stocked at that size.
            Err(Error::NoValue { .. }) => Ok(None),
            Err(error) => Err(error),
        }
    }

    /// The smallest changes that would do what is wanted, in the order of effort: each by itself, or,
    /// where no single one does, a turned bolt, a cut or another product together with a second.
    ///
    /// Amounts come from the inequalities of the search, LB >= x max and LG <= G min - c P, over the
    /// stock lengths; every change that is returned was made and searched again. `others` are the
    /// products and diameters that could be had.
    ///
    /// # Errors
    ///
    /// Those of [`LengthSearch::new`].
    ///
    /// ```
    /// use shankline::{joint::{Arrangement, Change, Goal}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10".parse()?;
    /// let ply = Spread::exact(millimetres(8.0));
    /// let arrangement = Arrangement::new(
    ///     Stack::builder()
    ///         .ply("rail foot", ply)
    ///         .ply("base plate", ply)
    ///         .shear_planes([1])
    ///         .washers_under_nut(Spread::exact(millimetres(2.0)), 1)
    ///         .build()?,
    ///     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
    ///     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
    ///     LengthRules::fabrication(UnitSystem::Si).with_washers_under_nut(1),
    /// );
    /// // The shortest ISO 4014 bolt is 45 mm: its thread begins at 19 mm, the stack ends at 18 mm.
    /// let advice = arrangement.advice(Goal::Fits, &[])?;
    /// assert_eq!(advice.advice[0].changes, [Change::AddWashers { count: 2, permitted: 1 }]);
    /// let Change::Spacer { at_least, .. } = advice.advice[1].changes[0] else { panic!() };
    /// assert!((at_least - millimetres(1.0)).abs() < millimetres(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn advice(&self, goal: Goal, others: &[Alternative]) -> Result<AdviceList, Error> {
        let mut list = AdviceList {
            goal,
            margin: self.margin()?,
            advice: Vec::new(),
        };
        if self.best(goal)?.is_some() {
            return Ok(list);
        }
        let products: Vec<Change> = self.same_diameter(others, true).collect();
        let diameters: Vec<Change> = self.same_diameter(others, false).collect();
        let one = |(change, outcome)| Advice {
            changes: alloc::vec![change],
            outcome,
        };
        let singles = self.single_changes(goal, &products, &diameters)?;
        list.advice.extend(singles.into_iter().map(one));
        if !list.advice.is_empty() {
            return Ok(list);
        }
        let firsts = self
            .turn()
            .into_iter()
            .chain(self.allow_cut())
            .chain(products);
        for first in firsts {
            let changed = first.applied(self)?;
            for (second, outcome) in changed.single_changes(goal, &[], &diameters)? {
                // A turn and a cut come in this order alone.
                if second != Change::TurnBolt {
                    list.advice.push(Advice {
                        changes: alloc::vec![first, second],
                        outcome,
                    });
                }
            }
        }
        Ok(list)
    }
}
