//! The answer to a joint as one document: data for a program, text for a person.

use alloc::{string::String, vec::Vec};

use super::{Granted, Joint, Scope, SetAside, Word};
#[cfg(doc)]
use super::{Sheet, Verdict};
use crate::error::Amount;
use crate::parts::Zone;
use crate::spread::Spread;
use crate::strength::check::{Level, Mode, Place};
use crate::units::{Force, Length, Torque, UnitSystem};

mod conditions;
#[cfg(feature = "serde")]
mod datum;
mod designs;
mod gather;
mod lengths;
mod render;
#[cfg(feature = "serde")]
mod sound;

#[cfg(feature = "serde")]
pub use datum::Datum;
pub use designs::{DesignReport, ReportDesign, ReportRuledOut, ReportScore, ReportTurnedDown};
pub(crate) use gather::length_name;
pub use lengths::{LengthReport, ReportCandidate, ReportCut};
pub use render::RenderedReport;
pub(super) use render::{header, what_n_is};

/// The number of the document format. It rises when a field changes its meaning or goes; new fields may come without.
pub const FORMAT: u32 = 1;

/// A document of a later format may say what this version does not know: it is refused.
#[cfg(feature = "serde")]
fn known_format<'de, D: serde::Deserializer<'de>>(deserializer: D) -> Result<u32, D::Error> {
    use serde::de::Error;
    let format: u32 = serde::Deserialize::deserialize(deserializer)?;
    if (1..=FORMAT).contains(&format) {
        Ok(format)
    } else {
        Err(D::Error::custom(alloc::format!(
            "format {format} is not known here, only those up to {FORMAT}"
        )))
    }
}

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
    serde(crate = "crate::objects", deny_unknown_fields, remote = "Self")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(!remote))]
#[non_exhaustive]
pub struct Report {
    /// [`FORMAT`] of the version that wrote it. A later one than this is refused.
    #[cfg_attr(feature = "serde", serde(deserialize_with = "known_format"))]
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
    /// The other lengths in stock or of the caller's own bolt, and why not those.
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
    /// The joint that was asked about, exactly as it was: see [`answers`](Self::answers). None in documents of versions
    /// that did not write it.
    #[cfg_attr(
        feature = "serde",
        serde(default, skip_serializing_if = "Option::is_none")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::AskedJoint>")
    )]
    pub joint: Option<Joint>,
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
    /// n, resistance over load as they stand here: what is left beside the safety that is in the resistance, and over a
    /// nominal one the factor of safety on it. None without a load, and where it would be no factor on the load: of a
    /// distance, a contact pressure, friction beside a pull.
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

impl Report {
    /// Whether it is the answer to this joint: the one that was asked about equals it in every fact, its title and what
    /// was taken for granted included. A document that does not hold its joint answers none.
    ///
    /// It says that the question is the same, and nothing of the answer: a file is as good as the hands it went through, and
    /// another version of this crate may answer otherwise. Where it counts, ask again: `joint.report(report.units)`.
    /// Read with `serde_json`, the numbers of a joint come back exactly with its feature `float_roundtrip` only.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let joint = Joint::builder("M12").ply("bracket", "12 mm").ply("rail", "20 mm").across("9 kN").build()?;
    /// let report = joint.report(UnitSystem::Si)?;
    /// assert!(report.answers(&joint));
    /// let heavier = joint.to_builder().across("12 kN").build()?;
    /// assert!(!report.answers(&heavier)); // a kept report says nothing of it
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn answers(&self, joint: &Joint) -> bool {
        self.joint.as_ref() == Some(joint)
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
