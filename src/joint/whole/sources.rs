//! Where the numbers of a joint come from: of every row that was looked up, who printed it; of parts of the caller's own,
//! that the caller states them.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};
use core::fmt::Display;

use super::case::{Closing, NutOf, closing, engaged};
use super::material::{CaseMaterial, CaseTimber};
use super::{Joint, Verdict};
use crate::error::Error;
use crate::joint::JointMaterial;
use crate::parts::{ScrewSeries, Washer};
use crate::source::{Basis, Provenance, Source};
use crate::strength::shear::AiscEdition;
use crate::tables::expansion::Expansion;
use crate::tables::holes::{ClearanceHole, HoleFit, StructuralHole};
use crate::units::{Length, SAME_LENGTH, UnitSystem, shown};

/// What stands for the source of a part of the caller's own.
const STATED: &str = "stated by the caller";

/// What is from where, each source once.
struct Sources(Vec<(Vec<String>, String)>);

impl Sources {
    fn add(&mut self, what: impl Into<String>, from: &dyn Display) {
        let (what, from) = (what.into(), from.to_string());
        match self.0.iter_mut().find(|(_, own)| *own == from) {
            Some((whats, _)) if whats.contains(&what) => {}
            Some((whats, _)) => whats.push(what),
            None => self.0.push((Vec::from([what]), from)),
        }
    }

    fn add_value(&mut self, what: String, source: Option<&Source>, basis: Option<Basis>) {
        if let (Some(source), Some(basis)) = (source, basis) {
            self.add(what, &format!("{source}, {basis}"));
        }
    }
}

/// One line a source: length, strength and thread of the bolt, the nut, washers, holes, and what the plies are made of.
pub(in crate::joint) fn sources(
    joint: &Joint,
    verdict: &Verdict,
    screws: Option<&ScrewSeries>,
    units: UnitSystem,
) -> Result<Vec<String>, Error> {
    let mut all = Sources(Vec::new());
    match screws {
        Some(screws) => all.add("length", &screws.provenance(&verdict.candidate.screw)),
        None => all.add("length", &STATED),
    }
    match verdict.strength.provenance {
        Some(row) => all.add("strength", &row),
        None => all.add("strength", &STATED),
    }
    match joint.bolt.thread.provenance() {
        Some(row) => all.add("thread", &row),
        None => all.add(
            "thread",
            &"its designation, by the formulas of its standard",
        ),
    }
    nut(joint, &mut all)?;
    let washers = joint.stack.washers_of(&verdict.candidate);
    for (washer, _) in washers.into_iter().flatten() {
        match washer.style {
            Some(style) => all.add(
                washer.name.clone(),
                &Washer::find(style, &joint.bolt.thread)?.provenance,
            ),
            None => all.add(format!("washer \"{}\"", washer.name), &STATED),
        }
    }
    holes(joint, units, &mut all);
    plies(joint, verdict, &mut all)?;
    let lines = all.0.into_iter();
    Ok(lines
        .map(|(whats, from)| format!("{}: {from}", whats.join(", ")))
        .collect())
}

fn nut(joint: &Joint, all: &mut Sources) -> Result<(), Error> {
    let Closing::Nut(nut) = closing(joint)? else {
        return Ok(());
    };
    match nut.of {
        NutOf::Own(_) => all.add("nut", &STATED),
        NutOf::Listed(row) => all.add("nut", &row.provenance),
    }
    if let Some(Ok(strength)) = nut.strength {
        all.add("strength of the nut", &strength.provenance);
    }
    Ok(())
}

/// A hole as wide as one of a table has its figure from there, whoever looked it up.
fn holes(joint: &Joint, units: UnitSystem, all: &mut Sources) {
    let thread = &joint.bolt.thread;
    let is = |own: Length, tabled: Length| (own - tabled).abs() < SAME_LENGTH;
    for hole in joint.stack.plies().iter().filter_map(|ply| ply.hole) {
        let fits = [HoleFit::Normal, HoleFit::Close, HoleFit::Loose];
        let rows = fits.map(|fit| ClearanceHole::find(thread, fit));
        let fit = rows.into_iter().flatten();
        let fit = fit
            .filter(|row| is(hole, row.diameter_min))
            .map(|row| row.provenance);
        let editions = [AiscEdition::E2010, AiscEdition::E2022];
        let rows = editions.map(|edition| StructuralHole::find(thread, edition));
        let structural = rows.into_iter().flatten();
        let structural = structural.filter(|row| is(hole, row.standard));
        let row: Option<Provenance> = fit.chain(structural.map(|row| row.provenance)).next();
        let what = format!("hole of {}", shown(hole, units));
        match row {
            Some(row) => all.add(what, &row),
            None => all.add(what, &STATED),
        }
    }
}

fn plies(joint: &Joint, verdict: &Verdict, all: &mut Sources) -> Result<(), Error> {
    let stack = &joint.stack;
    for (ply, number) in stack.plies().iter().zip(1..) {
        let thickness = stack.bearing_thickness(number).unwrap_or(ply.thickness.min);
        if let Some(material) = &ply.material {
            of_material(joint, verdict, material, Some(thickness), all)?;
        }
        match ply.timber.as_ref().map(CaseTimber::of).transpose()? {
            Some(CaseTimber::Listed(row)) => {
                all.add(row.name, &row.provenance);
                let across = row.compression().map(|across| across.provenance);
                if let Some(across) = across {
                    all.add(format!("{} across the grain", row.name), &across);
                }
            }
            Some(CaseTimber::Own(own)) => all.add(format!("\"{}\"", own.name), &STATED),
            None => {}
        }
    }
    if let Some(part) = stack.tapped_part() {
        if let Some(material) = &part.material {
            let engaged = engaged(part, &verdict.candidate);
            of_material(joint, verdict, material, engaged, all)?;
        }
    }
    let warms = verdict.preload.is_some() && !joint.environment.is_at_room_temperature();
    if warms {
        if let Ok(row) = Expansion::of_bolt(joint.bolt.grade) {
            all.add("expansion of the bolt", &row.provenance);
        }
    }
    Ok(())
}

/// Strengths at the thickness; modulus and expansion where a preload hangs on them.
fn of_material(
    joint: &Joint,
    verdict: &Verdict,
    material: &JointMaterial,
    thickness: Option<Length>,
    all: &mut Sources,
) -> Result<(), Error> {
    let row = match CaseMaterial::of(material)? {
        CaseMaterial::Own(own) => {
            all.add(format!("\"{}\"", own.name), &STATED);
            return Ok(());
        }
        CaseMaterial::Listed(row) => row,
    };
    let there = thickness.and_then(|thickness| row.at_thickness(thickness).ok());
    all.add(row.name, &there.unwrap_or(*row).provenance);
    let given = joint
        .torque()
        .is_some_and(|torque| torque.stiffness.is_some());
    let springs = verdict.preload.is_some_and(|own| own.springs.is_some());
    if springs && !given {
        let (source, basis) = (row.elastic_modulus_source, row.elastic_modulus_basis);
        all.add_value(
            format!("modulus of {}", row.name),
            Some(source),
            Some(basis),
        );
    }
    if verdict.preload.is_some() && !joint.environment.is_at_room_temperature() {
        let what = format!("expansion of {}", row.name);
        all.add_value(what, row.expansion_source, row.expansion_basis);
    }
    Ok(())
}
