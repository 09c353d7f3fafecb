//! The answer to a length search as one document.

use alloc::{string::String, vec::Vec};
use core::fmt;

#[cfg(doc)]
use crate::joint::LengthSearch;
use crate::joint::report::gather::{length_name, line, of_caution, of_reason};
use crate::joint::{Candidate, Cut, FORMAT, ReportLength, ReportLine, Selection};
use crate::spread::Spread;
use crate::units::{Length, UnitSystem, shown, tidy, twelve_digits};

/// The answer to [`LengthSearch::run`] as one document: the stock lengths that fit, the best first; those that do not and
/// why; those that nobody could judge.
///
/// Plain data, written and read back as a [`Report`](crate::joint::Report) is: English text, and beside it codes and
/// values; rounded to twelve digits.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
/// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
/// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
/// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
/// # let rules = LengthRules::fabrication(UnitSystem::Si);
/// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
/// let report = selection.report(UnitSystem::Si);
/// assert_eq!(report.accepted[0].name, "55 mm");
/// println!("{report}");
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
pub struct LengthReport {
    /// [`FORMAT`] of the version that wrote it. A later one than this is refused.
    #[cfg_attr(feature = "serde", serde(deserialize_with = "super::known_format"))]
    pub format: u32,
    /// The units of the texts.
    pub units: UnitSystem,
    /// The lengths that fit, the best first.
    pub accepted: Vec<ReportCandidate>,
    /// The lengths that do not, the nearest to fitting first.
    pub rejected: Vec<ReportCandidate>,
    /// The lengths that could not be judged.
    pub not_assessed: Vec<ReportLength>,
    /// What the user must be told.
    pub cautions: Vec<ReportLine>,
}

/// A length with its washers and its cut, in a [`LengthReport`].
///
/// ```
/// # use shankline::joint::ReportCandidate;
/// fn print(candidate: &ReportCandidate) {
///     println!("{}: {} reasons against it", candidate.name, candidate.reasons.len());
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
pub struct ReportCandidate {
    /// The length in the units of the texts.
    pub name: String,
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
    /// Washers to add under the nut, beyond those always there.
    pub washers_added: usize,
    /// All washers under the nut of the kind that may be added.
    pub washers_under_nut: usize,
    /// Washers to add under the head.
    pub washers_added_under_head: usize,
    /// What is clamped.
    pub grip: Spread<Length>,
    /// How far the nut is from the run-out when it clamps the thinnest stack; negative: it may jam before.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub jam_margin: Length,
    /// The same in threads.
    pub clear_threads: f64,
    /// Bolt length beyond the nut as bought; in a tapped part, beyond the wanted engagement.
    pub protrusion: Spread<Length>,
    /// Shear planes on guaranteed shank, in the worst case.
    pub planes_on_shank: usize,
    /// Shear planes that may lie in the run-out.
    pub planes_in_run_out: usize,
    /// Shear planes in full thread.
    pub planes_in_thread: usize,
    /// Whether it is to be cut.
    pub needs_cut: bool,
    /// The fixed length to cut to; none where it is not cut, or cut at the fit-up.
    pub cut: Option<ReportCut>,
    /// Why it does not fit; none if it does.
    pub reasons: Vec<ReportLine>,
}

/// How a bolt is cut to length, in a [`ReportCandidate`].
///
/// ```
/// # use shankline::joint::ReportCut;
/// # use shankline::units::Length;
/// fn saw(cut: &ReportCut) -> Option<Length> {
///     cut.holds_window.then_some(cut.length)
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
pub struct ReportCut {
    /// Finished length, from under the head.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub length: Length,
    /// The same with its tolerance.
    pub finished: Spread<Length>,
    /// What comes off the nominal length.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub removed: Length,
    /// Thread left between the run-out and the cut end.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub thread_left: Length,
    /// Bolt length beyond the nut after the cut.
    pub protrusion: Spread<Length>,
    /// Whether this one length keeps every assembly inside the wanted protrusion.
    pub holds_window: bool,
}

impl Selection {
    /// The whole answer as a document in the units of its reader.
    ///
    /// ```
    /// # use shankline::joint::Selection;
    /// # use shankline::units::UnitSystem;
    /// fn print(selection: &Selection) {
    ///     print!("{}", selection.report(UnitSystem::UsCustomary));
    /// }
    /// ```
    #[must_use]
    pub fn report(&self, units: UnitSystem) -> LengthReport {
        let all = |candidates: &[Candidate]| {
            let candidates = candidates.iter();
            candidates.map(|own| of_candidate(own, units)).collect()
        };
        let not_assessed = self.not_assessed().iter();
        LengthReport {
            format: FORMAT,
            units,
            accepted: all(self.accepted()),
            rejected: all(self.rejected()),
            not_assessed: not_assessed
                .map(|&length| of_unread(length, units))
                .collect(),
            cautions: self.cautions().iter().map(of_caution).collect(),
        }
    }
}

/// Why a length was not judged.
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
enum Unread {
    NotRead,
}

fn of_unread(length: Length, units: UnitSystem) -> ReportLength {
    let why = "a dimension of it has not been read in any table";
    ReportLength {
        name: name(length, units),
        length: tidy(length),
        reasons: Vec::from([line(&Unread::NotRead, why.into())]),
    }
}

fn name(length: Length, units: UnitSystem) -> String {
    length_name(length, units == UnitSystem::UsCustomary)
}

fn of_candidate(candidate: &Candidate, units: UnitSystem) -> ReportCandidate {
    let screw = &candidate.screw;
    ReportCandidate {
        name: name(screw.nominal, units),
        length: tidy(screw.nominal),
        body_length_min: tidy(screw.body_length_min),
        grip_gaging_length_max: tidy(screw.grip_gaging_length_max),
        washers_added: candidate.washers_added,
        washers_under_nut: candidate.washers_under_nut,
        washers_added_under_head: candidate.washers_added_under_head,
        grip: candidate.grip.map(tidy),
        jam_margin: tidy(candidate.jam_margin),
        clear_threads: twelve_digits(candidate.clear_threads),
        protrusion: candidate.protrusion.map(tidy),
        planes_on_shank: candidate.planes_on_shank,
        planes_in_run_out: candidate.planes_in_run_out,
        planes_in_thread: candidate.planes_in_thread,
        needs_cut: candidate.needs_cut,
        cut: candidate.cut.as_ref().map(of_cut),
        reasons: candidate
            .reasons()
            .map(|reason| of_reason(reason, units))
            .collect(),
    }
}

fn of_cut(cut: &Cut) -> ReportCut {
    ReportCut {
        length: tidy(cut.length),
        finished: cut.finished.map(tidy),
        removed: tidy(cut.removed),
        thread_left: tidy(cut.thread_left),
        protrusion: cut.protrusion.map(tidy),
        holds_window: cut.holds_window,
    }
}

/// As text, in the units of the document.
impl fmt::Display for LengthReport {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "Fit, the best first")?;
        for own in &self.accepted {
            own.line(f, self.units)?;
        }
        writeln!(f, "\nDo not fit, the nearest first")?;
        let others = self.rejected.iter().map(|own| (&own.name, &own.reasons));
        let unread = self.not_assessed.iter();
        for (name, reasons) in others.chain(unread.map(|own| (&own.name, &own.reasons))) {
            let reasons: Vec<&str> = reasons.iter().map(|own| own.text.as_str()).collect();
            writeln!(f, "  {name}: {}", reasons.join("; "))?;
        }
        if !self.cautions.is_empty() {
            writeln!(f, "\nCautions")?;
        }
        for caution in &self.cautions {
            writeln!(f, "  {}", caution.text)?;
        }
        Ok(())
    }
}

impl ReportCandidate {
    /// Its planes, washers and cut in one line.
    fn line(&self, f: &mut fmt::Formatter<'_>, units: UnitSystem) -> fmt::Result {
        let (shank, out, thread) = (
            self.planes_on_shank,
            self.planes_in_run_out,
            self.planes_in_thread,
        );
        write!(
            f,
            "  {}: shear planes: {shank} on shank, {out} in the run-out, {thread} in the thread; sticks out {} to {}",
            self.name,
            shown(self.protrusion.min, units),
            shown(self.protrusion.max, units)
        )?;
        let added = self
            .washers_added
            .saturating_add(self.washers_added_under_head);
        if added > 0 {
            write!(f, "; {added} washers added")?;
        }
        match &self.cut {
            Some(cut) if cut.holds_window => write!(f, "; cut to {}", shown(cut.length, units))?,
            _ if self.needs_cut => write!(f, "; cut at the fit-up")?,
            _ => {}
        }
        writeln!(f)
    }
}
