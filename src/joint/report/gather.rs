//! How the answer to a joint is put together.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};

#[cfg(feature = "serde")]
use super::datum;
use super::{
    FORMAT, LayerKind, Report, ReportBolt, ReportCheck, ReportLayer, ReportLength, ReportLine,
    ReportPlane, ReportStep, ReportTightening, ReportUnconcerned, conditions,
};
use crate::caution::Caution;
use crate::error::{Amount, Error};
#[cfg(doc)]
use crate::joint::LengthSearch;
use crate::joint::whole::{bolt_and_nut, sources};
use crate::joint::{
    Account, Candidate, Finding, Joint, JointWasher, Missing, Reason, Sheet, SheetStep,
    TighteningOrder, Verdict,
};
use crate::parts::ScrewSeries;
use crate::spread::Spread;
use crate::strength::check::{Check, Mode};
use crate::tables::nanometres;
use crate::units::{Length, UnitSystem, shown, tidy, twelve_digits};

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
        Report::of(self, &self.check()?, None, units)
    }
}

impl Report {
    /// The answer of a joint that has been checked, with its sheet; for a group of such bolts with their order.
    ///
    /// # Errors
    ///
    /// Those of [`LengthSearch`], and of the look-up of the nut; [`Error::Mismatch`] if the verdict is that of another joint.
    ///
    /// ```
    /// # use shankline::joint::{Joint, Report, TighteningOrder};
    /// # use shankline::units::UnitSystem;
    /// fn of_group(joint: &Joint, order: TighteningOrder) -> Result<Report, shankline::Error> {
    ///     let verdict = joint.check()?;
    ///     Report::new(joint, &verdict, Some(order), UnitSystem::Si)
    /// }
    /// ```
    pub fn new(
        joint: &Joint,
        verdict: &Verdict,
        order: Option<TighteningOrder>,
        units: UnitSystem,
    ) -> Result<Self, Error> {
        Self::of(joint, &verdict.confirmed(joint)?, order, units)
    }

    /// The answer of a joint and the verdict it has just got.
    fn of(
        joint: &Joint,
        verdict: &Verdict,
        order: Option<TighteningOrder>,
        units: UnitSystem,
    ) -> Result<Self, Error> {
        let sheet = Sheet::of(joint, verdict)?;
        let sheet = match order {
            Some(order) => sheet.for_group(order),
            None => sheet,
        };
        // A bolt of the caller's own is in no table.
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
        let not_concerned = Mode::ALL.into_iter().filter_map(|mode| {
            let Account::NotConcerned(why) = verdict.account(mode) else {
                return None;
            };
            let why = why.to_string();
            Some(ReportUnconcerned { mode, why })
        });
        Ok(Self {
            format: FORMAT,
            title: joint.title.clone(),
            units,
            word: verdict.word(),
            scope: verdict.scope,
            headline: verdict.headline(units),
            conditions: conditions::lines(joint, units),
            bolt: bolt(joint, &verdict.candidate)?,
            layers: layers(joint, &verdict.candidate),
            planes: planes(joint, &verdict.candidate),
            other_lengths: other_lengths(joint, verdict, units)?,
            checks: verdict.checks.iter().map(ReportCheck::new).collect(),
            faults: found(true),
            notes: found(false),
            missing: verdict.open().map(of_missing).collect(),
            set_aside: verdict.set_aside.clone(),
            granted: verdict.granted.clone(),
            in_order: verdict.in_order_without_figure().collect(),
            not_concerned: not_concerned.collect(),
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
            sources: sources(joint, verdict, screws.as_ref(), units)?,
            cautions: verdict.cautions.iter().map(of_caution).collect(),
            joint: Some(joint.clone()),
        })
    }
}

fn of_amount(amount: Amount) -> Amount {
    match amount {
        Amount::Length(v) => Amount::Length(tidy(v)),
        Amount::Area(v) => Amount::Area(tidy(v)),
        Amount::Force(v) => Amount::Force(tidy(v)),
        Amount::Stress(v) => Amount::Stress(tidy(v)),
        Amount::Torque(v) => Amount::Torque(tidy(v)),
        Amount::Number(v) => Amount::Number(twelve_digits(v)),
        other => other,
    }
}

pub(super) fn bolt(joint: &Joint, candidate: &Candidate) -> Result<ReportBolt, Error> {
    let (name, nut) = bolt_and_nut(joint, candidate.screw.nominal)?;
    Ok(ReportBolt {
        name,
        nut,
        length: tidy(candidate.screw.nominal),
        body_length_min: tidy(candidate.screw.body_length_min),
        grip_gaging_length_max: tidy(candidate.screw.grip_gaging_length_max),
        washers_under_head: (candidate.washers_added_under_head)
            .saturating_add(joint.stack.washers_under_head().len()),
        washers_under_nut: (candidate.washers_under_nut)
            .saturating_add(joint.stack.other_washers_under_nut().len()),
        washers_added: candidate
            .washers_added
            .saturating_add(candidate.washers_added_under_head),
        grip: candidate.grip.map(tidy),
        protrusion: candidate.protrusion.map(tidy),
        clear_threads: twelve_digits(candidate.clear_threads),
        cut_to: candidate
            .cut
            .filter(|cut| cut.holds_window)
            .map(|cut| tidy(cut.length)),
        is_cut: candidate.needs_cut,
    })
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
    let [under_head, under_nut] = stack.washers_of(candidate);
    let each = |(washer, count): (&JointWasher, usize)| {
        let own = layer(LayerKind::Washer, &washer.name, washer.thickness);
        core::iter::repeat_n(own, count)
    };
    layers.extend(under_head.flat_map(each));
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
    layers.extend(under_nut.flat_map(each));
    layers
}

pub(super) fn planes(joint: &Joint, candidate: &Candidate) -> Vec<ReportPlane> {
    let planes = joint.stack.planes_of(candidate);
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
    units: UnitSystem,
) -> Result<Vec<ReportLength>, Error> {
    let selection = joint.lengths()?;
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

/// A length as its product is sold: `4 in`, `80 mm`; `62.50 mm` of one that is not.
pub(crate) fn length_name(length: Length, inch: bool) -> String {
    match crate::units::inch_fraction(length).filter(|_| inch) {
        Some(fraction) => format!("{fraction} in"),
        None if inch => format!("{}", shown(length, UnitSystem::UsCustomary)),
        // A bolt of the caller's own need not be of a whole length.
        None if nanometres(length) % 1_000_000 != 0 => format!("{}", shown(length, UnitSystem::Si)),
        None => format!("{:.0}", shown(length, UnitSystem::Si)),
    }
}

impl ReportCheck {
    pub(in crate::joint) fn new(check: &Check) -> Self {
        let utilisation = twelve_digits(check.utilisation.value);
        Self {
            mode: check.mode,
            place: check.place,
            demand: of_amount(check.demand),
            resistance: of_amount(check.resistance),
            level: check.level,
            utilisation,
            reserve: (check.proportional && utilisation > 0.0)
                .then(|| twelve_digits(1.0 / utilisation)),
            holds: check.holds(),
            method: check.method.citation.into(),
            text: check.to_string(),
        }
    }
}

/// A line from what can be written as data.
#[cfg(feature = "serde")]
pub(super) fn line<T: serde::Serialize>(of: &T, text: String) -> ReportLine {
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
pub(super) fn line<T>(_: &T, text: String) -> ReportLine {
    ReportLine {
        mode: None,
        place: None,
        text,
    }
}

pub(super) fn of_reason(reason: &Reason, units: UnitSystem) -> ReportLine {
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
        source: step.source().citation.into(),
    }
}

pub(super) fn of_caution(caution: &Caution) -> ReportLine {
    line(caution, caution.to_string())
}
