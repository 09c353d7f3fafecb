//! Which parts of a space exist for one thread, and what rules the others out.

use alloc::vec::Vec;

use super::mass::{self, BoltMass};
use super::space::Ordered;
use super::{DesignSpace, HoleRule, RuledOut, RuledOutReason};
use crate::error::Error;
use crate::joint::{Joint, JointNut, JointWasher, NutEnd, Stack, StackBuilder};
use crate::material::{
    BoltGrade, BoltStrength, Finish, NutGrade, NutStrength, NutTapping, Severity,
};
use crate::parts::{Nut, NutStyle, ScrewLength, ScrewProduct, ScrewSeries, Washer, WasherStyle};
use crate::strength::strip::nut_pairing;
use crate::tables::holes::{ClearanceHole, HoleFit};
use crate::tables::nanometres;
use crate::tables::nut_grades::{BoltCoating, NutGradeRow, NutPairing, NutShape};
use crate::thread::Thread;
use crate::units::{Length, Mass};

/// The parts of a space for one thread.
pub(super) struct Parts {
    pub(super) thread: Thread,
    pub(super) stacks: Vec<WasheredStack>,
    pub(super) screws: Vec<Screws>,
    pub(super) nuts: Vec<FoundNut>,
    pub(super) grades: Vec<BoltStrength>,
}

/// The stack with one style of washer.
pub(super) struct WasheredStack {
    pub(super) style: Option<WasherStyle>,
    pub(super) stack: Stack,
    /// Mass of one washer; zero for washers that are not from the tables.
    pub(super) washer: Option<Mass>,
}

pub(super) struct Screws {
    pub(super) series: ScrewSeries,
    pub(super) mass: Option<BoltMass>,
    /// Lengths on hand in the number wanted, with their grades: by length, each of both once.
    on_hand: Vec<(ScrewLength, BoltGrade)>,
    /// Whether any stock length has all its dimensions.
    pub(super) is_stocked: bool,
}

pub(super) struct FoundNut {
    pub(super) nut: JointNut,
    pub(super) end: NutEnd,
    pub(super) mass: Option<Mass>,
    /// The grades it comes in as it is tapped, the weakest first, if the caller gave none.
    grades: Vec<NutStrength>,
}

impl Parts {
    /// What there is of a space for a thread. What there is not goes to `ruled_out`, with the number of
    /// combinations that it takes away.
    pub(super) fn find(
        joint: &Joint,
        space: &DesignSpace,
        lists: &Ordered,
        thread: Thread,
        ruled_out: &mut Vec<RuledOut>,
    ) -> Result<Option<Self>, Error> {
        let mut exclude = |reason, combinations| {
            // Nothing is left that it could rule out if another reason did so before.
            if combinations > 0 {
                ruled_out.push(RuledOut {
                    thread,
                    reason,
                    combinations,
                });
            }
        };
        let of_one_washer = lists.products.len() * lists.nuts.len() * lists.grades.len();
        let drilled = match drilled(joint, space.holes, &thread) {
            Ok(drilled) => drilled,
            Err(reason) => {
                exclude(reason, lists.washers.len() * of_one_washer);
                return Ok(None);
            }
        };

        let mut stacks = Vec::with_capacity(lists.washers.len());
        for &style in &lists.washers {
            let Some(style) = style else {
                let stack = drilled.clone().build()?;
                let washer = Some(Mass::default());
                stacks.push(WasheredStack {
                    style: None,
                    stack,
                    washer,
                });
                continue;
            };
            let found = Washer::find(style, &thread)
                .and_then(|row| Ok((row, JointWasher::find(style, &thread)?)));
            match found {
                Ok((row, washer)) => stacks.push(WasheredStack {
                    style: Some(style),
                    stack: drilled.clone().washers_of(&washer).build()?,
                    washer: mass::of_washer(row),
                }),
                Err(error) => exclude(RuledOutReason::NoWasher { style, error }, of_one_washer),
            }
        }

        let of_one_product = stacks.len() * lists.nuts.len() * lists.grades.len();
        let mut screws = Vec::with_capacity(lists.products.len());
        for &product in &lists.products {
            match Screws::find(product, &thread, space, joint.bolt.finish) {
                Ok(found) => screws.push(found),
                Err(error) => exclude(RuledOutReason::NoScrew { product, error }, of_one_product),
            }
        }

        let of_one_nut = stacks.len() * screws.len() * lists.grades.len();
        let mut nuts = Vec::with_capacity(lists.nuts.len());
        for &nut in &lists.nuts {
            match FoundNut::find(nut, &thread) {
                Ok(found) => nuts.push(found),
                Err(error) => {
                    let style = nut.style;
                    exclude(RuledOutReason::NoNut { style, error }, of_one_nut);
                }
            }
        }

        let of_one_grade = stacks.len() * screws.len() * nuts.len();
        let mut grades = Vec::with_capacity(lists.grades.len());
        for &grade in &lists.grades {
            match grade.strength(thread.nominal_diameter()) {
                Ok(strength) => grades.push(strength),
                Err(error) => exclude(RuledOutReason::NoGrade { grade, error }, of_one_grade),
            }
        }
        Ok(Some(Self {
            thread,
            stacks,
            screws,
            nuts,
            grades,
        }))
    }
}

/// The stack with the holes for a thread, or why the thread does not go with those that are kept.
fn drilled(joint: &Joint, rule: HoleRule, thread: &Thread) -> Result<StackBuilder, RuledOutReason> {
    let stack = joint.stack.to_builder();
    let drilled = rule
        .drilled(thread)
        .map_err(|error| RuledOutReason::NoHole { error })?;
    let stack = match (rule, drilled) {
        (HoleRule::Missing(_), Some(hole)) => stack.missing_holes_of(hole),
        (_, Some(hole)) => return Ok(stack.holes_of(hole)),
        (_, None) => stack,
    };
    let diameter = nanometres(thread.nominal_diameter());
    let is_other = diameter != nanometres(joint.bolt.thread.nominal_diameter());
    let largest: Option<Length> = ClearanceHole::find(thread, HoleFit::Loose)
        .ok()
        .filter(|_| is_other)
        .map(|hole| hole.diameter_max.unwrap_or(hole.diameter_min));
    for (ply, detail) in (1..).zip(joint.stack.plies()) {
        let Some(hole) = detail.hole else { continue };
        if nanometres(hole) < diameter {
            return Err(RuledOutReason::HoleTooSmall { ply, hole });
        }
        if let Some(largest) = largest.filter(|&largest| nanometres(hole) > nanometres(largest)) {
            return Err(RuledOutReason::HoleTooLarge { ply, hole, largest });
        }
    }
    Ok(stack)
}

impl Screws {
    fn find(
        product: ScrewProduct,
        thread: &Thread,
        space: &DesignSpace,
        finish: Option<Finish>,
    ) -> Result<Self, Error> {
        let series = ScrewSeries::new(product, thread)?;
        let (mut on_hand, mut unknown) = (Vec::new(), None);
        for item in &space.on_hand {
            let is_own = item.bolt.product == product
                && item.bolt.finish == finish
                && item.bolt.thread.is_same_size(thread);
            let enough = is_own && item.count >= space.bolts;
            let Some(length) = item.bolt.length.filter(|_| enough) else {
                continue;
            };
            match series.length(length) {
                Ok(screw) => on_hand.push((screw, item.bolt.grade)),
                Err(error) => unknown = Some(error),
            }
        }
        on_hand.sort_by(|(a, _), (b, _): &(ScrewLength, BoltGrade)| {
            a.nominal.value.total_cmp(&b.nominal.value)
        });
        let mut kept: Vec<(ScrewLength, BoltGrade)> = Vec::new();
        for (screw, grade) in on_hand {
            let same_length = |(kept, _): &&(ScrewLength, BoltGrade)| kept.nominal == screw.nominal;
            let mut alike = kept.iter().rev().take_while(same_length);
            if !alike.any(|(_, own)| *own == grade) {
                kept.push((screw, grade));
            }
        }
        let on_hand = kept;
        let mut lengths = series.stock_lengths();
        let is_stocked = lengths.any(|length| match series.length(length) {
            Ok(_) => true,
            Err(error) => {
                unknown = Some(error);
                false
            }
        });
        if !is_stocked && on_hand.is_empty() {
            return Err(unknown.unwrap_or_else(|| Error::NoValue {
                quantity: "stock length",
                subject: alloc::string::ToString::to_string(&series),
                reason: "none has been read at that size",
            }));
        }
        Ok(Self {
            mass: BoltMass::new(product, thread),
            series,
            on_hand,
            is_stocked,
        })
    }

    /// The lengths on hand in any grade, each once, the shortest first.
    pub(super) fn lengths_on_hand(&self) -> impl Iterator<Item = ScrewLength> {
        let runs = self
            .on_hand
            .chunk_by(|(a, _), (b, _)| a.nominal == b.nominal);
        runs.filter_map(|run| run.first().map(|(screw, _)| *screw))
    }

    /// Whether any length is on hand in a grade.
    pub(super) fn has_grade(&self, grade: BoltGrade) -> bool {
        self.on_hand.iter().any(|(_, own)| *own == grade)
    }

    /// Whether a length is on hand in a grade.
    pub(super) fn has(&self, nominal: Length, grade: BoltGrade) -> bool {
        let from = self
            .on_hand
            .partition_point(|(screw, _)| screw.nominal < nominal);
        let mut alike =
            (self.on_hand.iter().skip(from)).take_while(|(screw, _)| screw.nominal == nominal);
        alike.any(|(_, own)| *own == grade)
    }

    /// Whether the product is made in the grade: [`ScrewProduct::grades`].
    pub(super) fn is_made_in(&self, strength: &BoltStrength) -> bool {
        self.series.product().is_made_in(strength)
    }
}

impl FoundNut {
    fn find(nut: JointNut, thread: &Thread) -> Result<Self, Error> {
        let row = Nut::find(nut.style, thread)?;
        let tapping = nut.finish.map_or(NutTapping::Usual, Finish::nut_tapping);
        let grades = match (nut.grade, nut.style.shape()) {
            (Some(grade), Some(shape)) => {
                // That it exists: whether its strength is known as it is tapped, the check says.
                grade.strength(shape, thread, NutTapping::Usual)?;
                Vec::new()
            }
            (None, Some(shape)) => grades_of(shape, thread, tapping),
            (_, None) => Vec::new(),
        };
        Ok(Self {
            nut,
            end: NutEnd::of(row)?,
            mass: mass::of_nut(row, thread),
            grades,
        })
    }

    /// The nut with a grade for a bolt, if the caller gave none and one is known.
    pub(super) fn for_bolt(
        &self,
        bolt: &BoltStrength,
        finish: Option<Finish>,
        thread: &Thread,
    ) -> JointNut {
        let grade = || self.grade_for(bolt, finish, thread);
        JointNut {
            grade: self.nut.grade.or_else(grade),
            ..self.nut
        }
    }

    /// The grade that the standard of the bolt names for its coating, or else the weakest that is shown to let
    /// the bolt break first. If none is, the strongest: the check says what it lacks.
    fn grade_for(
        &self,
        bolt: &BoltStrength,
        finish: Option<Finish>,
        thread: &Thread,
    ) -> Option<NutGrade> {
        let coating = finish.or(self.nut.finish);
        let coating = coating.map_or(BoltCoating::Plain, Finish::bolt_coating);
        let rows = NutPairing::for_bolt(bolt.grade, bolt.nominal_diameter, coating);
        let named = rows.into_iter().flatten().filter_map(|row| {
            self.grades.iter().find(|own| {
                own.grade == row.nut && row.shape.is_none_or(|wanted| wanted == own.shape)
            })
        });
        let alike = |nut: &&NutStrength| is_of_steel_like(nut.grade, bolt.grade);
        let others = self.grades.iter().filter(alike);
        let shown = |nut: &&NutStrength| {
            let pairing = nut_pairing(bolt, finish, nut.grade, self.nut.finish, nut.shape, thread);
            pairing.is_ok_and(|pairing| pairing.severity() == Severity::Fine)
        };
        let strongest = others.clone().next_back();
        let grade = named.chain(others).find(shown).or(strongest);
        grade.map(|nut| nut.grade)
    }
}

/// The grade of a nut for a bolt, by the rule of the search; none where the nut has no strengths in the tables.
pub(in crate::joint) fn nut_grade_for(
    bolt: &BoltStrength,
    finish: Finish,
    style: NutStyle,
    thread: &Thread,
) -> Result<Option<NutGrade>, Error> {
    let nut = JointNut {
        style,
        grade: None,
        finish: Some(finish),
    };
    Ok(FoundNut::find(nut, thread)?.grade_for(bolt, Some(finish), thread))
}

/// Whether a nut that nobody named is of a steel for a bolt: stainless for stainless, and weathering steel for none.
fn is_of_steel_like(nut: NutGrade, bolt: BoltGrade) -> bool {
    let is_weathering = matches!(nut, NutGrade::AstmA563C3 | NutGrade::AstmA563Dh3);
    nut.is_stainless() == bolt.is_stainless() && !is_weathering
}

/// The grades in which nuts of this shape are made with a thread, as they are tapped, the weakest first.
fn grades_of(shape: NutShape, thread: &Thread, tapping: NutTapping) -> Vec<NutStrength> {
    let mut grades: Vec<NutStrength> = Vec::new();
    let rows = NutGradeRow::all_inch()
        .iter()
        .chain(NutGradeRow::all_metric());
    for row in rows.filter(|row| row.shape == shape && row.threads.covers(thread)) {
        // Classes that are tapped oversize by definition are for galvanized bolts only.
        let other_tapping = row.grade.is_oversize() && tapping == NutTapping::Usual;
        if other_tapping || grades.iter().any(|known| known.grade == row.grade) {
            continue;
        }
        grades.extend(row.grade.strength(shape, thread, tapping).ok());
    }
    grades.sort_by(|a, b| a.proof_stress.value.total_cmp(&b.proof_stress.value));
    grades
}

#[cfg(test)]
mod tests;
