//! Tolerances of a joint two ways: worst case, and root sum square.

use alloc::{format, string::String, vec::Vec};

use super::stack::Term;
use super::{Candidate, NutEnd, Stack};
use crate::derivation::Derivation;
use crate::error::{Allowed, Error, out_of_range};
use crate::spread::Spread;
use crate::units::Length;

mod chain;
mod normal;
mod working;

pub use chain::{ChainRange, ChainTerm, ToleranceChain, ToleranceMethod};

/// The margins of one bolt in one joint, by one method.
///
/// Body length LB and grip gaging length LG have only one limit in the standards. Both methods take
/// them at that limit, so the shares of root sum square are on the safe side.
///
/// ```
/// use shankline::{joint::{JointTolerances, ToleranceMethod}, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
/// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
/// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
/// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
/// # let rules = LengthRules::fabrication(UnitSystem::Si);
/// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
/// let best = selection.best().unwrap();
/// let worst = JointTolerances::of(&stack, best, nut, ToleranceMethod::WorstCase)?;
/// assert!((worst.jam_margin.min - best.jam_margin).abs() < millimetres(1e-9));
/// assert_eq!(worst.planes_to_run_out.len(), 1);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct JointTolerances {
    /// The method.
    pub method: ToleranceMethod,
    /// Length of the bolt: as bought, or as cut where the candidate is to be cut to a fixed length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub length: Spread<Length>,
    /// Everything between the bearing faces of head and nut, G.
    pub grip: ChainRange,
    /// G - LG: below zero the nut reaches the run-out before it clamps.
    pub jam_margin: ChainRange,
    /// Bolt length beyond the nut, or beyond the engagement wanted in a tapped part.
    pub protrusion: ChainRange,
    /// LB - x of every shear plane, from the head: below zero it is not on guaranteed shank.
    pub planes_to_run_out: Vec<ChainRange>,
    /// What was added up for each of these, in this order, with its symbol.
    #[cfg_attr(feature = "serde", serde(skip))]
    chains: Vec<(String, String, ToleranceChain)>,
}

impl JointTolerances {
    /// The margins of a candidate of a length search.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for parameters of the method out of their range, or a candidate with more
    /// than 200 washers under the nut; [`Error::Mismatch`] where one of stack, candidate and nut ends in a
    /// tapped part and another does not.
    ///
    /// ```
    /// use shankline::{joint::{JointTolerances, ToleranceMethod}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// let method = ToleranceMethod::RootSumSquare { sigmas_per_tolerance: 3.0, confidence: 0.9973 };
    /// let likely = JointTolerances::of(&stack, selection.best().unwrap(), nut, method)?;
    /// // How many bolts of a run show fewer than two threads?
    /// let share = likely.protrusion.share_below(2.0 * thread.pitch()).unwrap();
    /// assert!(share.value < 1e-3);
    /// # Ok(())
    /// # }
    /// ```
    pub fn of(
        stack: &Stack,
        candidate: &Candidate,
        nut: NutEnd,
        method: ToleranceMethod,
    ) -> Result<Self, Error> {
        let tapped = nut.is_tapped();
        if tapped != candidate.ends_in_tapped_part || tapped != stack.tapped_part().is_some() {
            return Err(Error::Mismatch(
                "stack, candidate and nut do not all end in a tapped part, or all in a nut".into(),
            ));
        }
        let (beyond, closing) = if tapped {
            ("length beyond the wanted engagement", "wanted engagement")
        } else {
            ("protrusion", "nut")
        };
        // The fields of a candidate are open to all.
        let (head, nut_side) = (
            candidate.washers_added_under_head,
            candidate.washers_under_nut,
        );
        for (quantity, count) in [
            ("number of washers under the nut", nut_side),
            ("number of washers added under the head", head),
        ] {
            if count > 200 {
                let allowed = Allowed::AtMost(200_usize.into());
                return Err(out_of_range(quantity, count, allowed));
            }
        }
        let bought = candidate.screw.length();
        let length = candidate.cut.map_or(bought, |cut| cut.finished);
        let grip = grip(stack, candidate);
        let sum = |terms: &[ChainTerm]| {
            let terms = terms.iter().cloned();
            terms.fold(ToleranceChain::new(), ToleranceChain::and)
        };
        let taken_off = |chain: ToleranceChain, terms: &[ChainTerm]| {
            terms.iter().fold(chain, |chain, term| {
                chain.and(ChainTerm {
                    adds: !term.adds,
                    ..term.clone()
                })
            })
        };
        let thread_start = Spread::exact(candidate.screw.grip_gaging_length_max);
        let shank = Spread::exact(candidate.screw.body_length_min);
        let mut chains = alloc::vec![
            ("grip".into(), "G".into(), sum(&grip)),
            (
                "jam margin".into(),
                "J".into(),
                sum(&grip).minus("grip gaging length of the bolt", thread_start),
            ),
            (
                beyond.into(),
                "p".into(),
                taken_off(ToleranceChain::new().plus("bolt", length), &grip)
                    .minus(closing, nut.height()),
            ),
        ];
        for (index, &after_ply) in stack.shear_planes().iter().enumerate() {
            let chain = ToleranceChain::new().plus("shank of the bolt", shank);
            chains.push((
                format!("shank beyond shear plane {}", index + 1),
                format!("s{}", index + 1),
                taken_off(chain, &up_to(stack, candidate, after_ply)),
            ));
        }
        let range = |index: usize| {
            let chain = chains.get(index).map(|(_, _, chain)| chain);
            chain.unwrap_or(&ToleranceChain::new()).range(method)
        };
        let planes = (3..chains.len()).map(range);
        Ok(Self {
            method,
            length,
            grip: range(0)?,
            jam_margin: range(1)?,
            protrusion: range(2)?,
            planes_to_run_out: planes.collect::<Result<_, _>>()?,
            chains,
        })
    }
}

impl JointTolerances {
    /// The working of every margin.
    ///
    /// ```
    /// use shankline::{joint::{JointTolerances, ToleranceMethod}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// let best = selection.best().unwrap();
    /// let worst = JointTolerances::of(&stack, best, nut, ToleranceMethod::WorstCase)?;
    /// assert!(worst.derivation().check().is_ok());
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let title = format!("Margins by {}", self.method);
        let chains = self.chains.iter();
        // They were summed without a refusal before.
        let workings = chains
            .filter_map(|(what, symbol, chain)| chain.derivation(self.method, what, symbol).ok());
        workings.fold(Derivation::new(title), Derivation::and)
    }
}

/// Everything up to a ply, each length by itself; a sleeve and the plies around it are one.
fn up_to(stack: &Stack, candidate: &Candidate, thru_ply: usize) -> Vec<ChainTerm> {
    let added = stack.washer_to_add_under_head().into_iter();
    added
        .cycle()
        .take(candidate.washers_added_under_head)
        .map(|washer| ChainTerm {
            name: String::from("washer added under the head"),
            adds: true,
            size: washer.thickness,
        })
        .chain(stack.terms(thru_ply).map(chain_term))
        .collect()
}

/// Everything between the bearing faces of head and nut, each length by itself.
fn grip(stack: &Stack, candidate: &Candidate) -> Vec<ChainTerm> {
    let mut terms = up_to(stack, candidate, stack.plies().len());
    terms.extend(stack.terms_at_nut().map(chain_term));
    let washers = stack.washers_under_nut().into_iter().cycle();
    terms.extend(
        washers
            .take(candidate.washers_under_nut)
            .map(|(washer, _)| ChainTerm {
                name: String::from("washer under the nut"),
                adds: true,
                size: washer.thickness,
            }),
    );
    terms
}

fn chain_term(term: Term<'_>) -> ChainTerm {
    ChainTerm {
        name: term.name.into(),
        adds: term.adds,
        size: term.size,
    }
}

#[cfg(test)]
mod tests;
