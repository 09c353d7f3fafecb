//! Sections of a plate between its bolts and the side on which it is held.
//!
//! At every row of holes the plate carries what the bolts beyond it bring. A load straight to or from the held side is
//! tension on the net section, along the worst path through holes of that row and those beyond it, and where it presses
//! the plate that may buckle (`pressed.rs`); a load along it is shear, and the bending that goes with it is checked by EN
//! 1993 for plates too short to buckle. What else bends the plate in its plane, or slants, is not covered by the methods
//! here.

use alloc::vec::Vec;

use super::held::{Cut, Held, IN_LINE, NOTHING};
use super::{Loaded, Told, pressed};
use crate::caution::{Caution, Cautions};
use crate::connection::Connection;
use crate::connection::outline::{Vector, dot, metres, turned};
use crate::error::Error;
use crate::joint::{Finding, Need};
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode};
use crate::strength::ply::{
    PlateShear, PlateShearMethod, Ply, PlyBolt, PlyMethod, PlyOutcome, Stagger, plate_bending,
    plate_shear, shortest_plate_that_buckles,
};
use crate::tables::methods;
use crate::units::{Force, Torque, from_base};

const BOTH: [Mode; 2] = [Mode::NetSection, Mode::GrossSection];

pub(super) fn look(connection: &Connection, loaded: &Loaded, told: &mut Vec<Told>) {
    let lacks = [
        loaded.lacks(Mode::NetSection, told),
        loaded.lacks(Mode::GrossSection, told),
    ];
    let (Some(plate), Some(thickness), Some(hole)) =
        (loaded.plate, loaded.facts.thickness, loaded.facts.hole)
    else {
        return;
    };
    let Some(side) = plate.held else {
        told.extend(BOTH.map(|mode| Told::Missing(mode, Need::HeldSide)));
        return;
    };
    if lacks.contains(&true) {
        return;
    }
    let method = connection.joint.methods.plies;
    let held = Held::new(plate, side, (thickness, hole), method);
    let cuts = match held.known_cuts(method, loaded) {
        Ok(cuts) => cuts,
        Err(why) => {
            told.extend(BOTH.map(|mode| Told::Missing(mode, Need::Method(why))));
            return;
        }
    };
    let most = cuts.iter().map(Cut::size).fold(0.0, f64::max);
    let bends = cuts.iter().map(|cut| cut.moment.abs()).fold(0.0, f64::max);
    if most <= 0.0 && bends <= 0.0 {
        told.extend(BOTH.map(Told::NotConcerned));
        return;
    }
    // What slants, or acts along the held side, bends the plate there: it has an arm.
    if !cuts.iter().any(Cut::is_bent) {
        in_tension(connection, loaded, &held, &cuts, told);
        pressed::look(connection, loaded, plate, &held, &cuts, told);
        return;
    }
    let sheared = cuts.iter().all(|cut| cut.pull.abs() <= NOTHING * most);
    if most > 0.0 && sheared {
        in_shear(connection, loaded, &held, &cuts, told);
        if in_bending(method, loaded, &held, &cuts, told) {
            return;
        }
    } else {
        let why = "a load that slants to the side where the plate is held is not covered by a method here";
        told.push(Told::Missing(Mode::NetSection, Need::Method(why)));
    }
    let why = "the plate is bent in its plane, and no method here has its bending, or its buckling where it is long";
    told.push(Told::Missing(Mode::GrossSection, Need::Method(why)));
}

/// The plate of one bolt. Its sections are those of its joint, which has no held side: here is what it does not ask.
pub(super) fn of_one_bolt(connection: &Connection, loaded: &Loaded, told: &mut Vec<Told>) {
    const MODE: Mode = Mode::GrossSection;
    let Some(plate) = loaded.plate else { return };
    let Some(side) = plate.held else {
        told.push(Told::Missing(MODE, Need::HeldSide));
        return;
    };
    if loaded.lacks(MODE, told) {
        return;
    }
    let (Some(thickness), Some(hole)) = (loaded.facts.thickness, loaded.facts.hole) else {
        return;
    };
    let method = connection.joint.methods.plies;
    let held = Held::new(plate, side, (thickness, hole), method);
    match held.known_cuts(method, loaded) {
        Err(why) => told.push(Told::Missing(MODE, Need::Method(why))),
        Ok(cuts) => {
            if cuts.iter().any(Cut::is_bent) {
                told.push(Told::Missing(MODE, Need::Method(ONE_BOLT_BENDS)));
            } else {
                pressed::look(connection, loaded, plate, &held, &cuts, told);
                told.push(Told::NotConcerned(MODE));
            }
        }
    }
}

const ONE_BOLT_BENDS: &str =
    "the load of its one bolt bends the plate in its plane, and no method here has that";

/// By which method a plate counts less than its width.
pub(super) const fn spread_method(method: PlyMethod) -> &'static Method {
    match method {
        PlyMethod::Aisc360 { .. } => methods::WHITMORE_SECTION,
        _ => methods::LOAD_SPREAD_AT_30_DEGREES,
    }
}

/// A check of the code on a width by spread.
fn on_width(check: Check, method: &'static Method) -> Check {
    let check = Check { method, ..check };
    check.warned(Cautions::default().with(Caution::of_method(method)))
}

/// Tension: net sections at the rows, the gross one anywhere.
fn in_tension(
    connection: &Connection,
    loaded: &Loaded,
    held: &Held,
    cuts: &[Cut],
    told: &mut Vec<Told>,
) {
    let facts = loaded.facts;
    let mut ply = Ply {
        yield_strength: facts.yields,
        tensile_strength: facts.breaks,
        ..Ply::without_strengths(held.thickness, held.hole)
    };
    let by_spread = spread_method(connection.joint.methods.plies);
    let tell = |mode: Mode,
                outcome: Result<PlyOutcome, Error>,
                cut: &Cut,
                zigzag: bool,
                told: &mut Vec<Told>| {
        let load: Force = from_base(cut.pull.abs());
        told.push(match outcome {
            Ok(PlyOutcome::Found(found)) => match found.check(load, loaded.level, facts.number) {
                Ok(check) => {
                    let cautions = zigzag.then(Stagger::cautions).unwrap_or_default();
                    let check = check.warned(cautions);
                    let check = Check {
                        place: facts.place,
                        ..check
                    };
                    Told::Check(if cut.is_wider() {
                        on_width(check, by_spread)
                    } else {
                        check
                    })
                }
                Err(error) => Told::Missing(mode, Need::Refused(error.into())),
            },
            // Hole, width and strengths are there: that was looked at before.
            Ok(PlyOutcome::Missing(_)) => {
                let why = "something that the section needs is not known";
                Told::Missing(mode, Need::Method(why))
            }
            Ok(PlyOutcome::NotNeeded(_)) => Told::NotConcerned(mode),
            Ok(PlyOutcome::NotGiven(why)) => Told::Missing(mode, Need::Method(why)),
            Ok(PlyOutcome::Nothing(why)) => Told::Find(Finding::NothingLeft {
                place: facts.place,
                mode,
                why,
            }),
            Err(error) => Told::Missing(mode, Need::Refused(error.into())),
        });
    };
    let mut look = |mode: Mode, width: f64, cut: &Cut, zigzag: bool, told: &mut Vec<Told>| {
        ply.width = Some(metres(width));
        // The method of the code takes one hole off.
        let diameter = connection.joint.bolt.thread.nominal_diameter();
        let no_bolt = PlyBolt {
            yield_strength: None,
            tensile_strength: None,
        };
        let methods = &connection.joint.methods;
        let asked = ply.asked(diameter, no_bolt, methods.plies);
        let outcome = asked.and_then(|asked| asked.in_mode(mode));
        tell(mode, outcome, cut, zigzag, told);
        if mode == Mode::NetSection && methods.slip.is_category_c() {
            let outcome = ply.net_section_without_slip(diameter, methods.plies);
            tell(mode, outcome, cut, zigzag, told);
        }
    };
    let net_widths = loaded
        .net_widths
        .get_or_init(|| held.net_widths(loaded, cuts));
    for (cut, net) in cuts.iter().zip(net_widths) {
        look(Mode::GrossSection, cut.spread, cut, false, told);
        if let Some(net) = net {
            let counted = (held.hole + held.more).value;
            look(Mode::NetSection, net.width + counted, cut, net.zigzag, told);
        }
    }
}

/// Bending by a shear along the held side, where the methods have it; whether that is all of it.
fn in_bending(
    method: PlyMethod,
    loaded: &Loaded,
    held: &Held,
    cuts: &[Cut],
    told: &mut Vec<Told>,
) -> bool {
    let facts = loaded.facts;
    let (PlyMethod::En1993, Level::Design, Some(yields)) = (method, loaded.level, facts.yields)
    else {
        return false;
    };
    let across = turned(held.to);
    let mut lever = 0.0_f64;
    for cut in cuts {
        lever = lever.max(cut.moment.abs() / cut.shear.abs());
        let in_cut = |at: &&Vector| (held.level(**at) - cut.level).abs() <= IN_LINE;
        let holes = loaded.places.iter().filter(in_cut);
        let (from, to) = cut.sheared;
        let middle = 0.5 * (from + to);
        let mut holes = holes.map(|at| metres(dot(*at, across) - middle)).peekable();
        let mode = if holes.peek().is_some() {
            Mode::NetSection
        } else {
            Mode::GrossSection
        };
        let bears = plate_bending(yields, metres(to - from), held.thickness, held.hole, holes);
        let moment: Torque = from_base(cut.moment.abs());
        let method = methods::STEEL_BUILDINGS_IN_EUROPE_PLATES_IN_BENDING;
        let check = Check::new(mode, facts.place, moment, bears, loaded.level, method);
        told.push(match check {
            Ok(check) => Told::Check(check),
            Err(error) => Told::Missing(mode, Need::Refused(error.into())),
        });
    }
    // The plate is as long as from where it is held to the middle of its bolts, wherever the load acts.
    let count = loaded.places.len().max(1);
    // At most some hundreds: exact.
    #[allow(clippy::cast_precision_loss)]
    let mean = loaded.places.iter().map(|at| held.level(*at)).sum::<f64>() / count as f64;
    let end = held.outline.levels(held.to).fold(mean, f64::max);
    lever = lever.max(end - mean);
    lever <= shortest_plate_that_buckles(held.thickness).value
}

/// Shear along the held side: by the codes that have it.
fn in_shear(
    connection: &Connection,
    loaded: &Loaded,
    held: &Held,
    cuts: &[Cut],
    told: &mut Vec<Told>,
) {
    let facts = loaded.facts;
    let by = match connection.joint.methods.plies {
        PlyMethod::Aisc360 { .. } => PlateShearMethod::Aisc360,
        PlyMethod::En1993 => PlateShearMethod::En1993 { bent: true },
        _ => {
            let why = "the publisher of the method for plies gives no shear of plates here";
            told.extend(BOTH.map(|mode| Told::Missing(mode, Need::Method(why))));
            return;
        }
    };
    let (Some(yield_strength), Some(tensile_strength)) = (facts.yields, facts.breaks) else {
        return;
    };
    for cut in cuts {
        // Shear along the cut takes the holes in its own line; a zigzag is longer.
        let holes = loaded
            .places
            .iter()
            .filter(|at| (held.level(**at) - cut.level).abs() <= IN_LINE);
        // At most 10 000: exact.
        #[allow(clippy::cast_precision_loss)]
        let lost = holes.count() as f64 * (held.hole + held.more).value;
        let gross = cut.sheared.1 - cut.sheared.0;
        let net = gross - lost;
        if net <= 0.0 {
            told.push(Told::Find(Finding::NothingLeft {
                place: facts.place,
                mode: Mode::NetSection,
                why: "the holes take the whole width",
            }));
            continue;
        }
        let plate = PlateShear {
            yield_strength,
            tensile_strength,
            gross: metres(gross) * held.thickness,
            net: metres(net) * held.thickness,
        };
        let checks = plate_shear(&plate, by)
            .and_then(|found| found.checks(from_base(cut.shear.abs()), loaded.level, facts.number));
        match checks {
            Ok(checks) => told.extend(checks.map(|check| {
                Told::Check(Check {
                    place: facts.place,
                    ..check
                })
            })),
            Err(error) => {
                told.extend(
                    BOTH.map(|mode| Told::Missing(mode, Need::Refused(error.clone().into()))),
                );
            }
        }
    }
}

#[cfg(test)]
mod tests;
