//! The answer to a design search as one document.

use alloc::{string::String, vec::Vec};
use core::fmt;

use crate::error::Error;
#[cfg(doc)]
use crate::joint::Joint;
use crate::joint::report::gather::{bolt, line, planes};
use crate::joint::report::render::one_line;
use crate::joint::{
    Design, DesignChoice, Designs, FORMAT, Objective, PartsMass, Report, ReportBolt, ReportCheck,
    ReportLine, ReportPlane, RuledOut, RuledOutReason, TurnedDown, TurnedDownReason,
};
use crate::thread::Thread;
use crate::units::{Stress, UnitSystem, tidy};

/// The answer to [`Joint::design`] as one document: the designs that hold, those that do not and why, what cannot be put
/// together, and the whole [`Report`] of the best one with its cautions.
///
/// Plain data, written and read back as a [`Report`] is: English text, and beside it codes and values; rounded to
/// twelve digits.
///
/// ```
/// use shankline::joint::{DesignReport, DesignSpace, Joint};
/// use shankline::units::UnitSystem;
/// fn document(joint: &Joint, space: &DesignSpace) -> Result<DesignReport, shankline::Error> {
///     joint.design(space, &[])?.report(UnitSystem::Si)
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct DesignReport {
    /// [`FORMAT`] of the version that wrote it. A later one than this is refused.
    #[cfg_attr(feature = "serde", serde(deserialize_with = "super::known_format"))]
    pub format: u32,
    /// What a drawing would call the joint.
    pub title: String,
    /// The units of the texts.
    pub units: UnitSystem,
    /// What decided the order.
    pub objectives: Vec<Objective>,
    /// How many combinations of thread, product, grade, nut and washer the space has. Each is feasible, rejected, or
    /// among those ruled out.
    pub combinations: usize,
    /// The designs that hold, the best first: of each combination its best length.
    pub feasible: Vec<ReportDesign>,
    /// The combinations that do not hold or are undecided, the nearest to holding first.
    pub rejected: Vec<ReportTurnedDown>,
    /// The combinations that cannot be put together, in the order of the threads.
    pub ruled_out: Vec<ReportRuledOut>,
    /// The joint with the best design, in full; none if nothing holds.
    pub best: Option<Report>,
}

/// A design that holds, in a [`DesignReport`].
///
/// ```
/// # use shankline::joint::ReportDesign;
/// fn print(design: &ReportDesign) {
///     println!("{}: {} washers added", design.text, design.bolt.washers_added);
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct ReportDesign {
    /// The parts, by their codes.
    pub choice: DesignChoice,
    /// The parts in one line.
    pub text: String,
    /// The bolt with its washers and its cut.
    pub bolt: ReportBolt,
    /// Where its shear planes lie.
    pub planes: Vec<ReportPlane>,
    /// What the loads use most, the tightening not counted; none if nothing was compared.
    pub governing: Option<ReportCheck>,
    /// Mass of the parts, to the milligram; none where a dimension is not known.
    pub mass: Option<PartsMass>,
    /// Whether enough of these bolts are on hand.
    pub on_hand: bool,
    /// Tensile strength of the grade at the size.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Stress>"))]
    pub tensile_strength: Stress,
    /// How it does by the objectives, in their order.
    pub scores: Vec<ReportScore>,
    /// The objective by which it comes before the next one; none for the last, and where only the tie-break decides.
    pub decided_by: Option<Objective>,
}

/// How a [`ReportDesign`] does by an objective.
///
/// ```
/// # use shankline::joint::ReportScore;
/// fn print(score: &ReportScore) {
///     println!("{} {}", score.objective, score.text);
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct ReportScore {
    /// The objective.
    pub objective: Objective,
    /// The score: less is better. Its value stands in the design: mass, length, utilisation, washers.
    pub text: String,
}

/// A combination that does not hold or is undecided, in a [`DesignReport`].
///
/// ```
/// # use shankline::joint::ReportTurnedDown;
/// fn print(other: &ReportTurnedDown) {
///     for reason in &other.reasons {
///         println!("not {}: {}", other.text, reason.text);
///     }
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct ReportTurnedDown {
    /// The parts, by their codes, with the length that comes nearest.
    pub choice: DesignChoice,
    /// The parts in one line.
    pub text: String,
    /// All reasons, overloads first, the worst of them first.
    pub reasons: Vec<ReportLine>,
}

/// Combinations that cannot be put together, in a [`DesignReport`].
///
/// ```
/// # use shankline::joint::ReportRuledOut;
/// fn print(group: &ReportRuledOut) {
///     println!("{} combinations with {}: {}", group.combinations, group.thread, group.reason.text);
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct ReportRuledOut {
    /// Their thread.
    pub thread: Thread,
    /// How many they are.
    pub combinations: usize,
    /// What rules them out.
    pub reason: ReportLine,
}

impl Designs {
    /// The whole answer as a document in the units of its reader.
    ///
    /// # Errors
    ///
    /// Those of [`Report::new`] for the best design.
    ///
    /// ```
    /// # use shankline::joint::Designs;
    /// # use shankline::units::UnitSystem;
    /// fn text(designs: &Designs) -> Result<String, shankline::Error> {
    ///     Ok(designs.report(UnitSystem::Si)?.to_string())
    /// }
    /// ```
    pub fn report(&self, units: UnitSystem) -> Result<DesignReport, Error> {
        let best = match (self.best_joint()?, &self.verdict) {
            (Some(joint), Some(verdict)) => Some(Report::new(&joint, verdict, None, units)?),
            _ => None,
        };
        let feasible = (0..).zip(self.feasible());
        let feasible: Result<Vec<ReportDesign>, Error> = feasible
            .map(|(rank, design)| self.of_design(rank, design, units))
            .collect();
        Ok(DesignReport {
            format: FORMAT,
            title: self.start.title.clone(),
            units,
            objectives: self.objectives.clone(),
            combinations: self.combinations,
            feasible: feasible?,
            rejected: self
                .rejected()
                .iter()
                .map(|other| of_turned_down(other, units))
                .collect(),
            ruled_out: self.ruled_out().iter().map(of_ruled_out).collect(),
            best,
        })
    }

    fn of_design(
        &self,
        rank: usize,
        design: &Design,
        units: UnitSystem,
    ) -> Result<ReportDesign, Error> {
        let joint = self.joint(&design.choice)?;
        let score = |&objective: &Objective| ReportScore {
            objective,
            text: design.score(objective).text(units),
        };
        Ok(ReportDesign {
            choice: of_choice(design.choice),
            text: design.choice.text(units),
            bolt: bolt(&joint, &design.candidate)?,
            planes: planes(&joint, &design.candidate),
            governing: design.governing.as_ref().map(ReportCheck::new),
            mass: design.mass.map(PartsMass::to_the_milligram),
            on_hand: design.on_hand,
            tensile_strength: tidy(design.tensile_strength),
            scores: self.objectives.iter().map(score).collect(),
            decided_by: self.decided_by(rank),
        })
    }
}

fn of_choice(mut choice: DesignChoice) -> DesignChoice {
    choice.bolt.length = choice.bolt.length.map(tidy);
    choice
}

fn of_turned_down(other: &TurnedDown, units: UnitSystem) -> ReportTurnedDown {
    let reason = |reason: &TurnedDownReason| {
        let (mode, place) = match reason {
            TurnedDownReason::Overloaded(check) | TurnedDownReason::AboveLimit { check, .. } => {
                (Some(check.mode), Some(check.place))
            }
            TurnedDownReason::Fault(finding) => (Some(finding.mode()), None),
            TurnedDownReason::Undecided(missing) => (Some(missing.mode), Some(missing.place)),
            TurnedDownReason::NotCheckable(_) => (None, None),
        };
        ReportLine {
            mode,
            place,
            ..line(reason, reason.text(units))
        }
    };
    ReportTurnedDown {
        choice: of_choice(other.choice),
        text: other.choice.text(units),
        reasons: other.reasons.iter().map(reason).collect(),
    }
}

fn of_ruled_out(group: &RuledOut) -> ReportRuledOut {
    let reason: &RuledOutReason = &group.reason;
    ReportRuledOut {
        thread: group.thread,
        combinations: group.combinations,
        reason: line(reason, alloc::format!("{reason}")),
    }
}

/// As text, in the units of the document: every design that holds, the nearest of the others, and the report of the
/// best one.
impl fmt::Display for DesignReport {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        /// How many of those that do not hold are shown.
        const NEAREST: usize = 6;
        writeln!(
            f,
            "{}\n{} combinations",
            one_line(&self.title),
            self.combinations
        )?;
        writeln!(f, "\nHold, the best first")?;
        for (rank, design) in (1..).zip(&self.feasible) {
            writeln!(f, "{rank:>3}. {}", design.text)?;
            let mut before = "     ";
            for score in &design.scores {
                write!(f, "{before}{} {}", score.objective, score.text)?;
                before = ", ";
            }
            writeln!(f)?;
            if let Some(check) = &design.governing {
                writeln!(f, "     {}", check.text)?;
            }
            if let Some(objective) = design.decided_by {
                writeln!(f, "     before the next by: {objective}")?;
            }
        }
        writeln!(
            f,
            "\nDo not hold or are undecided, the nearest to holding first"
        )?;
        for other in self.rejected.iter().take(NEAREST) {
            writeln!(f, "  {}", other.text)?;
            for reason in &other.reasons {
                writeln!(f, "     {}", reason.text)?;
            }
        }
        if let Some(more @ 1..) = self.rejected.len().checked_sub(NEAREST) {
            writeln!(f, "  and {more} more")?;
        }
        writeln!(f, "\nCannot be put together")?;
        for group in &self.ruled_out {
            let (count, thread) = (group.combinations, group.thread);
            let why = &group.reason.text;
            writeln!(f, "  {count} combinations with {thread}: {why}")?;
        }
        match &self.best {
            Some(best) => write!(f, "\nThe best one in full\n\n{best}"),
            None => Ok(()),
        }
    }
}
