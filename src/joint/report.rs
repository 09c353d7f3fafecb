//! The answer to a joint as one document: data for a program, text for a person.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};

use super::whole::closing_end;
use super::{
    Account, Candidate, Finding, Granted, Joint, LengthSearch, Missing, Reason, Scope, SetAside,
    Sheet, SheetStep, Verdict, Word,
};
use crate::caution::Caution;
use crate::error::{Amount, Error};
use crate::parts::{ScrewSeries, Zone};
use crate::spread::Spread;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::units::{Force, Length, Torque, UnitSystem, shown, tidy, twelve_digits};

mod conditions;
#[cfg(feature = "serde")]
mod datum;
mod render;

#[cfg(feature = "serde")]
pub use datum::Datum;
pub use render::RenderedReport;

/// The number of the document format. It rises when a field changes its meaning or goes; new fields may come without.
pub const FORMAT: u32 = 1;

/// The answer to a joint as one document: the word and why, the bolt with its lengths, every check and finding, what was
/// missing and taken for granted, the workshop sheet, sources and cautions.
///
/// Plain data. With the feature `serde` it is written and read; each line has its English text, and a stable code with
/// values, from which a program can say it in another language. Lengths and forces are rounded to twelve digits, so
/// that they read well and a round trip is exact.
///
/// ```
/// use shankline::joint::ReportStyle;
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let joint = Joint::builder("M12")
///     .ply("bracket", "12 mm").material("S275 steel")
///         .end_distance("35 mm").edge_distance("30 mm").width("60 mm")
///     .ply("rail", "20 mm").material("S275 steel")
///         .end_distance("35 mm").edge_distance("30 mm").width("60 mm")
///     .across("9 kN")
///     .build()?;
/// let report = joint.report(UnitSystem::Si)?;
/// assert_eq!(report.word, Word::Holds);
/// assert_eq!(report.bolt.length, millimetres(55.0));
/// println!("{}", report.render(ReportStyle::Text));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Report {
    /// [`FORMAT`] of the version that wrote it.
    pub format: u32,
    /// What a drawing would call the joint.
    pub title: String,
    /// The units of the texts.
    pub units: UnitSystem,
    /// Holds, does not hold, undecided.
    pub word: Word,
    /// What the word speaks of.
    pub scope: Scope,
    /// The word and why, in one line.
    pub headline: String,
    /// What it was checked for: loads, surroundings, tightening, methods with their factors.
    #[cfg_attr(feature = "serde", serde(default))]
    pub conditions: Vec<String>,
    /// The bolt.
    pub bolt: ReportBolt,
    /// What it goes through, from the head.
    pub layers: Vec<ReportLayer>,
    /// Where its shear planes lie.
    pub planes: Vec<ReportPlane>,
    /// The other stock lengths, and why not those.
    pub other_lengths: Vec<ReportLength>,
    /// Every comparison of a load with a resistance, the highest utilisation first: the first one governs.
    pub checks: Vec<ReportCheck>,
    /// What forbids the joint besides loads that are more than their resistance.
    pub faults: Vec<ReportLine>,
    /// What else was found: to know and to do.
    pub notes: Vec<ReportLine>,
    /// What could not be checked, and for want of what.
    pub missing: Vec<ReportLine>,
    /// What the caller has set aside.
    pub set_aside: Vec<SetAside>,
    /// What was taken for granted.
    pub granted: Vec<Granted>,
    /// Modes that were looked at and are in order, without a figure to show.
    pub in_order: Vec<Mode>,
    /// Modes that are not concerned, and why.
    pub not_concerned: Vec<ReportUnconcerned>,
    /// Torque and preload; none if no torque is controlled.
    pub tightening: Option<ReportTightening>,
    /// Steps for the workshop.
    pub assembly: Vec<ReportStep>,
    /// Steps for the inspector.
    pub inspection: Vec<ReportStep>,
    /// Where the numbers come from.
    pub sources: Vec<String>,
    /// What the user must be told.
    pub cautions: Vec<ReportLine>,
}

/// The bolt of a [`Report`].
///
/// ```
/// # use shankline::joint::ReportBolt;
/// fn name(bolt: &ReportBolt) -> &str {
///     &bolt.name
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
pub struct ReportBolt {
    /// As it is ordered: thread, length, product, grade.
    pub name: String,
    /// Its nut, if it has one.
    pub nut: Option<String>,
    /// Nominal length.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub length: Length,
    /// From under the head full shank reaches at least so far.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub body_length_min: Length,
    /// From under the head full thread begins at the latest here.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub grip_gaging_length_max: Length,
    /// Washers under the head, all of them.
    pub washers_under_head: usize,
    /// Washers under the nut, all of them.
    pub washers_under_nut: usize,
    /// Of these were added by the search.
    pub washers_added: usize,
    /// What is clamped.
    pub grip: Spread<Length>,
    /// How far the bolt sticks out as bought; the thread beyond what must be filled in a tapped part.
    pub protrusion: Spread<Length>,
    /// Threads between the nut and the run-out when it clamps the thinnest stack.
    pub clear_threads: f64,
    /// The length to cut it to, from under the head; none if it is not cut, or marked at the fit-up.
    #[cfg_attr(
        feature = "serde",
        serde(default, with = "crate::units::quantity::option")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub cut_to: Option<Length>,
    /// Whether it is cut.
    pub is_cut: bool,
}

/// A layer of a [`Report`], with where it begins.
///
/// ```
/// # use shankline::joint::ReportLayer;
/// fn print(layer: &ReportLayer) {
///     println!("{}", layer.name);
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
pub struct ReportLayer {
    /// Washer, ply, gap or tapped part.
    pub kind: LayerKind,
    /// Its name.
    pub name: String,
    /// How thick it is.
    pub thickness: Spread<Length>,
    /// The hole of a ply.
    #[cfg_attr(
        feature = "serde",
        serde(default, with = "crate::units::quantity::option")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub hole: Option<Length>,
    /// What a ply is made of, by name.
    #[cfg_attr(feature = "serde", serde(default))]
    pub material: Option<String>,
}

/// What a [`ReportLayer`] is.
///
/// ```
/// use shankline::joint::LayerKind;
/// assert_eq!(LayerKind::Ply.to_string(), "ply");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum LayerKind {
    /// A washer.
    Washer,
    /// A ply.
    Ply,
    /// A gap between plies.
    Gap,
}

impl core::fmt::Display for LayerKind {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.pad(match self {
            Self::Washer => "washer",
            Self::Ply => "ply",
            Self::Gap => "gap",
        })
    }
}

/// A shear plane of a [`Report`].
///
/// ```
/// # use shankline::joint::ReportPlane;
/// # use shankline::parts::Zone;
/// fn is_good(plane: &ReportPlane) -> bool {
///     plane.worst == Zone::Shank
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
pub struct ReportPlane {
    /// It lies after this ply.
    pub after_ply: usize,
    /// Where, from under the head.
    pub position: Spread<Length>,
    /// What it cuts in the worst case.
    pub worst: Zone,
}

/// Another stock length in a [`Report`].
///
/// ```
/// # use shankline::joint::ReportLength;
/// fn print(other: &ReportLength) {
///     println!("{}: {}", other.name, other.reasons.len());
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
pub struct ReportLength {
    /// The length as it is sold.
    pub name: String,
    /// Nominal length.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub length: Length,
    /// Why it does not fit; none if it does, and only ranks behind.
    pub reasons: Vec<ReportLine>,
}

/// A check of a [`Report`].
///
/// ```
/// # use shankline::joint::ReportCheck;
/// fn print(check: &ReportCheck) {
///     println!("{:.0} % {}", 100.0 * check.utilisation, check.text);
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
pub struct ReportCheck {
    /// What could fail.
    pub mode: Mode,
    /// Where.
    pub place: Place,
    /// The load.
    pub demand: Amount,
    /// What it is held against.
    pub resistance: Amount,
    /// How much safety is in the resistance.
    pub level: Level,
    /// Share of the resistance in use.
    pub utilisation: f64,
    /// Resistance over load, what is left beside the safety that is in the resistance; none without a load.
    pub reserve: Option<f64>,
    /// Whether it is not exceeded.
    pub holds: bool,
    /// The method: publisher, edition, clause.
    pub method: String,
    /// The check in one line.
    pub text: String,
}

/// A line of a [`Report`].
///
/// ```
/// # use shankline::joint::ReportLine;
/// fn print(line: &ReportLine) {
///     println!("{}", line.text);
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
pub struct ReportLine {
    /// What it says, as a stable word.
    #[cfg(feature = "serde")]
    pub code: String,
    /// The values in it.
    #[cfg(feature = "serde")]
    pub values: Datum,
    /// The mode of failure it speaks of.
    #[cfg_attr(feature = "serde", serde(default))]
    pub mode: Option<Mode>,
    /// Where.
    #[cfg_attr(feature = "serde", serde(default))]
    pub place: Option<Place>,
    /// The line in English.
    pub text: String,
}

/// A step of the sheet in a [`Report`].
///
/// ```
/// # use shankline::joint::ReportStep;
/// fn print(step: &ReportStep) {
///     println!("[ ] {} ({})", step.line.text, step.source);
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
pub struct ReportStep {
    /// What is to be done.
    pub line: ReportLine,
    /// Who says so.
    pub source: String,
}

/// A mode of a [`Report`] that is not concerned.
///
/// ```
/// # use shankline::joint::ReportUnconcerned;
/// fn print(mode: &ReportUnconcerned) {
///     println!("{}: {}", mode.mode, mode.why);
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
pub struct ReportUnconcerned {
    /// The mode.
    pub mode: Mode,
    /// Why.
    pub why: String,
}

/// Torque and preload of a [`Report`].
///
/// ```
/// # use shankline::joint::ReportTightening;
/// fn wrench(tightening: &ReportTightening) -> f64 {
///     tightening.torque.get::<shankline::uom::si::torque::newton_meter>()
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
pub struct ReportTightening {
    /// Torque on the wrench.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Torque>"))]
    pub torque: Torque,
    /// Preload it gives.
    pub preload: Spread<Force>,
    /// What is left of the least in service.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Force>"))]
    pub in_service: Force,
}

impl Joint {
    /// Checks the joint, and gives the whole answer as a document in the units of its reader.
    ///
    /// # Errors
    ///
    /// Those of [`check`](Self::check), of [`LengthSearch`] and of [`Sheet::new`].
    ///
    /// ```
    /// # use shankline::joint::{Joint, ReportStyle};
    /// # use shankline::units::UnitSystem;
    /// fn markdown(joint: &Joint) -> Result<String, shankline::Error> {
    ///     Ok(joint.report(UnitSystem::Si)?.render(ReportStyle::Markdown).to_string())
    /// }
    /// ```
    pub fn report(&self, units: UnitSystem) -> Result<Report, Error> {
        let verdict = self.check()?;
        let sheet = Sheet::new(self, &verdict)?;
        Report::new(self, &verdict, &sheet, units)
    }
}

impl Report {
    /// The answer of a joint that has been checked, with its sheet.
    ///
    /// # Errors
    ///
    /// Those of [`LengthSearch`].
    ///
    /// ```
    /// # use shankline::joint::{Joint, Report, Sheet, TighteningOrder};
    /// # use shankline::units::UnitSystem;
    /// fn of_group(joint: &Joint, order: TighteningOrder) -> Result<Report, shankline::Error> {
    ///     let verdict = joint.check()?;
    ///     let sheet = Sheet::new(joint, &verdict)?.for_group(order);
    ///     Report::new(joint, &verdict, &sheet, UnitSystem::Si)
    /// }
    /// ```
    pub fn new(
        joint: &Joint,
        verdict: &Verdict,
        sheet: &Sheet,
        units: UnitSystem,
    ) -> Result<Self, Error> {
        // A bolt of the caller's own has one length, and no table.
        let screws = match joint.own.screw {
            Some(_) => None,
            None => Some(ScrewSeries::new(joint.bolt.product, &joint.bolt.thread)?),
        };
        let found = |fault: bool| {
            let findings = verdict.findings.iter();
            findings
                .filter(move |finding| finding.is_fault() == fault)
                .map(|finding| of_finding(finding, units))
                .collect()
        };
        let mut sources: Vec<String> = Vec::from([match &screws {
            Some(screws) => format!("length: {}", screws.provenance(&verdict.candidate.screw)),
            None => String::from("length: stated by the caller"),
        }]);
        let strength = verdict.strength.provenance;
        sources.extend(strength.map(|provenance| format!("strength: {provenance}")));
        let mut in_order = Vec::new();
        let mut not_concerned = Vec::new();
        for mode in Mode::ALL {
            match verdict.account(mode) {
                Account::InOrder if !verdict.checks.iter().any(|check| check.mode == mode) => {
                    in_order.push(mode);
                }
                Account::NotConcerned(why) => not_concerned.push(ReportUnconcerned {
                    mode,
                    why: why.to_string(),
                }),
                _ => {}
            }
        }
        Ok(Self {
            format: FORMAT,
            title: joint.title.clone(),
            units,
            word: verdict.word(),
            scope: verdict.scope,
            headline: verdict.headline(units),
            conditions: conditions::lines(joint, units),
            bolt: bolt(joint, verdict, sheet),
            layers: layers(joint, &verdict.candidate),
            planes: planes(joint, &verdict.candidate),
            other_lengths: match &screws {
                Some(screws) => other_lengths(joint, verdict, screws, units)?,
                None => Vec::new(),
            },
            checks: verdict.checks.iter().map(of_check).collect(),
            faults: found(true),
            notes: found(false),
            missing: verdict.open().map(of_missing).collect(),
            set_aside: verdict.set_aside.clone(),
            granted: verdict.granted.clone(),
            in_order,
            not_concerned,
            tightening: verdict.preload.map(|preload| ReportTightening {
                torque: tidy(preload.torque),
                preload: preload.preload.map(tidy),
                in_service: tidy(preload.in_service),
            }),
            assembly: sheet
                .assembly
                .iter()
                .map(|step| of_step(step, units))
                .collect(),
            inspection: sheet
                .inspection
                .iter()
                .map(|step| of_step(step, units))
                .collect(),
            sources,
            cautions: verdict.cautions.iter().map(of_caution).collect(),
        })
    }

    /// The report for a person.
    ///
    /// ```
    /// # use shankline::joint::{Report, ReportStyle};
    /// fn print(report: &Report) {
    ///     print!("{}", report.render(ReportStyle::Text));
    /// }
    /// ```
    #[must_use]
    pub const fn render(&self, style: ReportStyle) -> RenderedReport<'_> {
        RenderedReport::of(self, style)
    }
}

/// How a [`Report`] is written.
///
/// ```
/// use shankline::joint::ReportStyle;
/// assert_ne!(ReportStyle::Text, ReportStyle::Markdown);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum ReportStyle {
    /// For a terminal.
    Text,
    /// With headings, lists and a table.
    Markdown,
}

fn of_amount(amount: Amount) -> Amount {
    match amount {
        Amount::Length(v) => Amount::Length(tidy(v)),
        Amount::Area(v) => Amount::Area(tidy(v)),
        Amount::Force(v) => Amount::Force(tidy(v)),
        Amount::Stress(v) => Amount::Stress(tidy(v)),
        Amount::Torque(v) => Amount::Torque(tidy(v)),
        other => other,
    }
}

fn bolt(joint: &Joint, verdict: &Verdict, sheet: &Sheet) -> ReportBolt {
    let candidate = &verdict.candidate;
    let parts = sheet.assembly.iter().find_map(|step| match step {
        SheetStep::Parts { bolt, nut, .. } => Some((bolt.clone(), nut.clone())),
        _ => None,
    });
    let (name, nut) = parts.unwrap_or_default();
    ReportBolt {
        name,
        nut,
        length: tidy(candidate.screw.nominal),
        body_length_min: tidy(candidate.screw.body_length_min),
        grip_gaging_length_max: tidy(candidate.screw.grip_gaging_length_max),
        washers_under_head: joint.stack.washers_under_head().len()
            + candidate.washers_added_under_head,
        washers_under_nut: joint.stack.other_washers_under_nut().len()
            + candidate.washers_under_nut,
        washers_added: candidate.washers_added + candidate.washers_added_under_head,
        grip: candidate.grip.map(tidy),
        protrusion: candidate.protrusion.map(tidy),
        clear_threads: twelve_digits(candidate.clear_threads),
        cut_to: candidate
            .cut
            .filter(|cut| cut.holds_window)
            .map(|cut| tidy(cut.length)),
        is_cut: candidate.needs_cut,
    }
}

fn layers(joint: &Joint, candidate: &Candidate) -> Vec<ReportLayer> {
    let layer = |kind, name: &str, thickness: Spread<Length>| ReportLayer {
        kind,
        name: name.into(),
        thickness: thickness.map(tidy),
        hole: None,
        material: None,
    };
    let stack = &joint.stack;
    let mut layers = Vec::new();
    let added = candidate.washers_added_under_head;
    let more = stack.washer_to_add_under_head();
    let at_head = more
        .into_iter()
        .flat_map(|own| core::iter::repeat_n(own, added));
    for washer in at_head.chain(stack.washers_under_head()) {
        layers.push(layer(LayerKind::Washer, &washer.name, washer.thickness));
    }
    for (ply, number) in stack.plies().iter().zip(1..) {
        layers.push(ReportLayer {
            hole: ply.hole.map(tidy),
            material: (ply.material.as_ref().map(ToString::to_string))
                .or_else(|| ply.timber.as_ref().map(ToString::to_string)),
            ..layer(LayerKind::Ply, &ply.name, ply.thickness)
        });
        if let Some(gap) = stack.gap_after(number) {
            layers.push(layer(LayerKind::Gap, "gap", gap));
        }
    }
    for washer in stack.other_washers_under_nut() {
        layers.push(layer(LayerKind::Washer, &washer.name, washer.thickness));
    }
    if let Some((washer, _)) = stack.washers_under_nut() {
        for _ in 0..candidate.washers_under_nut {
            layers.push(layer(LayerKind::Washer, &washer.name, washer.thickness));
        }
    }
    layers
}

fn planes(joint: &Joint, candidate: &Candidate) -> Vec<ReportPlane> {
    let planes = joint.stack.planes(&candidate.screw);
    planes
        .map(|plane| ReportPlane {
            after_ply: plane.after_ply,
            position: plane.position.map(tidy),
            worst: plane.worst,
        })
        .collect()
}

fn other_lengths(
    joint: &Joint,
    verdict: &Verdict,
    screws: &ScrewSeries,
    units: UnitSystem,
) -> Result<Vec<ReportLength>, Error> {
    let search = LengthSearch::new(&joint.stack, screws, closing_end(joint)?, joint.rules)?;
    let selection = search.run()?;
    let all = selection.accepted().iter().chain(selection.rejected());
    let others = all.filter(|other| other.screw.nominal != verdict.candidate.screw.nominal);
    let mut lengths: Vec<ReportLength> = others
        .map(|other| ReportLength {
            name: length_name(other.screw.nominal, joint.bolt.thread.is_unified()),
            length: tidy(other.screw.nominal),
            reasons: other
                .reasons()
                .map(|reason| of_reason(reason, units))
                .collect(),
        })
        .collect();
    lengths.sort_by(|a, b| a.length.value.total_cmp(&b.length.value));
    Ok(lengths)
}

/// A length as its product is sold: `4 in`, `80 mm`.
pub(super) fn length_name(length: Length, inch: bool) -> String {
    match crate::units::inch_fraction(length).filter(|_| inch) {
        Some(fraction) => format!("{fraction} in"),
        None if inch => format!("{}", shown(length, UnitSystem::UsCustomary)),
        None => format!("{:.0}", shown(length, UnitSystem::Si)),
    }
}

fn of_check(check: &Check) -> ReportCheck {
    let utilisation = twelve_digits(check.utilisation.value);
    ReportCheck {
        mode: check.mode,
        place: check.place,
        demand: of_amount(check.demand),
        resistance: of_amount(check.resistance),
        level: check.level,
        utilisation,
        reserve: (utilisation > 0.0).then(|| twelve_digits(1.0 / utilisation)),
        holds: check.holds(),
        method: check.method.into(),
        text: check.to_string(),
    }
}

/// A line from what can be written as data.
#[cfg(feature = "serde")]
fn line<T: serde::Serialize>(of: &T, text: String) -> ReportLine {
    let (code, values) = datum::coded(of);
    ReportLine {
        code,
        values,
        mode: None,
        place: None,
        text,
    }
}

#[cfg(not(feature = "serde"))]
fn line<T>(_: &T, text: String) -> ReportLine {
    ReportLine {
        mode: None,
        place: None,
        text,
    }
}

fn of_reason(reason: &Reason, units: UnitSystem) -> ReportLine {
    line(reason, reason.text(units))
}

fn of_finding(finding: &Finding, units: UnitSystem) -> ReportLine {
    ReportLine {
        mode: Some(finding.mode()),
        ..line(finding, finding.text(units))
    }
}

fn of_missing(missing: &Missing) -> ReportLine {
    ReportLine {
        mode: Some(missing.mode),
        place: Some(missing.place),
        ..line(&missing.need, missing.to_string())
    }
}

fn of_step(step: &SheetStep, units: UnitSystem) -> ReportStep {
    ReportStep {
        line: line(step, step.text(units)),
        source: step.source().into(),
    }
}

fn of_caution(caution: &Caution) -> ReportLine {
    line(caution, caution.to_string())
}
