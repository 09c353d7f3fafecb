//! Sections of a plate between its bolts and the side on which it is held.
//!
//! At every row of holes the plate carries what the bolts beyond it bring. A load straight to or from the held side is
//! tension on the net section, along the worst path through holes of that row and those beyond it, and where it presses
//! the plate that may buckle (`pressed.rs`); a load along it is shear, and the bending that goes with it is checked by EN
//! 1993 for plates too short to buckle. What else bends the plate in its plane, or slants, is not covered by the methods
//! here.
//!
//! From the row next to the held side on, a plate counts beside its bolts no farther than the load spreads at 30 degrees, and
//! 2.5 holes in any case, as a plate so narrow counts whole and more of it takes nothing away. Sections at rows before that
//! one carry a part of the load, and count whole as the publisher has it: what the bolts tear out there is a block. Of a
//! shear along the held side no spread is published: there it is 2.5 holes.

use alloc::vec::Vec;

use super::{Loaded, Told, pressed};
use crate::caution::{Caution, Cautions};
use crate::connection::Connection;
use crate::connection::outline::{Outline, Vector, dot, metres, turned};
use crate::joint::{Finding, Need};
use crate::math::hypot;
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode};
use crate::strength::ply::{
    PlateShear, PlateShearMethod, Ply, PlyBolt, PlyMethod, PlyNeed, PlyOutcome, Stagger,
    plate_bending, plate_shear, shortest_plate_that_buckles,
};
use crate::tables::methods;
use crate::units::{Force, Length, Torque, from_base, inches, millimetres};

const BOTH: [Mode; 2] = [Mode::NetSection, Mode::GrossSection];
/// Holes so far out of line are in one row still.
const IN_LINE: f64 = 1e-5;
/// Part of a load that is rounding.
const NOTHING: f64 = 1e-6;
/// Tangent of 30 degrees, at which a load spreads from its bolts: Whitmore, AISC Manual, part 9.
const SPREAD: f64 = 0.577_350_269_189_625_8;
/// What lies so many holes from the outermost bolt counts without a spread, as in any strap of usual edges: common practice,
/// no source.
pub(in crate::connection) const BESIDE: f64 = 2.5;

/// A plate seen from its bolts towards where it is held.
pub(super) struct Held<'a> {
    pub(super) outline: &'a Outline,
    pub(super) to: Vector,
    pub(super) thickness: Length,
    hole: Length,
    /// What a net section of the code counts more than the hole.
    more: Length,
}

/// What a cut carries.
pub(super) struct Cut {
    pub(super) level: f64,
    /// From where to where.
    from: f64,
    to: f64,
    /// What of it counts against a pull or push.
    pub(super) spread: f64,
    /// What of it counts against a shear: from where to where.
    sheared: (f64, f64),
    pub(super) pull: f64,
    shear: f64,
    moment: f64,
}

impl Cut {
    fn width(&self) -> f64 {
        self.to - self.from
    }

    /// Whether less counts than is there.
    pub(super) fn is_wider(&self) -> bool {
        self.spread < self.width() - IN_LINE
    }

    fn size(&self) -> f64 {
        hypot(self.pull, self.shear)
    }

    fn is_bent(&self) -> bool {
        self.moment.abs() > NOTHING * self.width() * self.size().max(f64::MIN_POSITIVE)
    }
}

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
    let held = Held {
        outline: &plate.outline,
        to: side.direction(),
        thickness,
        hole,
        more: match method {
            PlyMethod::Aisc360 { .. } => inches(1.0 / 16.0),
            PlyMethod::CsaS16 => millimetres(2.0),
            _ => Length::default(),
        },
    };
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
    let pulled = cuts.iter().all(|cut| cut.shear.abs() <= NOTHING * most);
    let sheared = cuts.iter().all(|cut| cut.pull.abs() <= NOTHING * most);
    if most > 0.0 && pulled && !cuts.iter().any(Cut::is_bent) {
        in_tension(connection, loaded, &held, &cuts, told);
        pressed::look(connection, loaded, plate, &held, &cuts, told);
        return;
    }
    if most > 0.0 && sheared {
        in_shear(connection, loaded, &held, &cuts, told);
        if !cuts.iter().any(Cut::is_bent) || in_bending(method, loaded, &held, &cuts, told) {
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
    let held = Held {
        outline: &plate.outline,
        to: side.direction(),
        thickness,
        hole,
        more: Length::default(),
    };
    match held.known_cuts(connection.joint.methods.plies, loaded) {
        Err(why) => told.push(Told::Missing(MODE, Need::Method(why))),
        Ok(cuts) => {
            let most = cuts.iter().map(Cut::size).fold(0.0, f64::max);
            let pulled = cuts.iter().all(|cut| cut.shear.abs() <= NOTHING * most);
            if pulled && !cuts.iter().any(Cut::is_bent) {
                pressed::look(connection, loaded, plate, &held, &cuts, told);
                told.push(Told::NotConcerned(MODE));
            } else {
                told.push(Told::Missing(MODE, Need::Method(ONE_BOLT_BENDS)));
            }
        }
    }
}

const ONE_BOLT_BENDS: &str =
    "the load of its one bolt bends the plate in its plane, and no method here has that";

impl Held<'_> {
    /// The cuts of a plate that the method is for, or why there are none.
    fn known_cuts(&self, method: PlyMethod, loaded: &Loaded) -> Result<Vec<Cut>, &'static str> {
        let is_code = !matches!(
            method,
            PlyMethod::MachineDesign { .. } | PlyMethod::MilHdbk5 { .. }
        );
        if is_code && !loaded.facts.is_carbon_steel {
            return Err(
                "the code is written for structural steel, and the ply is of another material",
            );
        }
        self.cuts(loaded)
            .ok_or("the outline is cut more than once by a section through its holes")
    }

    pub(super) fn level(&self, place: Vector) -> f64 {
        dot(place, self.to)
    }

    /// Levels of the rows, the farthest from the held side first.
    pub(super) fn rows(&self, loaded: &Loaded) -> Vec<f64> {
        let mut levels: Vec<f64> = loaded.places.iter().map(|at| self.level(*at)).collect();
        levels.sort_by(f64::total_cmp);
        levels.dedup_by(|next, last| *next - *last <= IN_LINE);
        levels
    }

    /// At every row of holes and at every corner between the first of them and the held side, the farthest from that side
    /// first. None if the outline is not cut just once.
    fn cuts(&self, loaded: &Loaded) -> Option<Vec<Cut>> {
        let mut levels = self.rows(loaded);
        let first = *levels.first()?;
        let corners = self.outline.levels(self.to);
        let most = corners.fold(f64::NEG_INFINITY, f64::max);
        // Just beside each corner, where the plate is as wide as there.
        let corners = self.outline.levels(self.to);
        let beside = corners.flat_map(|level| [level - IN_LINE, level + IN_LINE]);
        levels.extend(beside.filter(|level| *level > first && *level < most));
        levels.sort_by(f64::total_cmp);
        levels
            .into_iter()
            .map(|level| self.cut(loaded, level))
            .collect()
    }

    fn cut(&self, loaded: &Loaded, level: f64) -> Option<Cut> {
        let across = turned(self.to);
        let through = (level * self.to.0, level * self.to.1);
        let (from, to) = self.outline.cut(through, self.to)?;
        let middle = 0.5 * (from + to);
        let beyond = |n: usize| {
            let at = loaded.places.get(n);
            at.is_some_and(|at| self.level(*at) <= level + IN_LINE)
        };
        let sum = loaded.sum(beyond);
        let beside = BESIDE * self.hole.value;
        // From where to where the load of the bolts beyond comes, by a spread or none.
        let reach = |spread: f64| {
            let own = loaded.places.iter().enumerate().filter(|(n, _)| beyond(*n));
            own.fold(
                (f64::INFINITY, f64::NEG_INFINITY),
                |(low, high), (_, at)| {
                    let (side, far) = (dot(*at, across), (level - self.level(*at)) * spread);
                    let far = far.max(beside);
                    (low.min(side - far), high.max(side + far))
                },
            )
        };
        let within = |(low, high): (f64, f64)| (from.max(low), to.min(high));
        let carries_all = (0..loaded.places.len()).all(beyond);
        let spread = if carries_all {
            // What counts lies evenly about the load, which here acts along the middle of the plate, or bends it.
            let (low, high) = within(reach(SPREAD));
            2.0 * (middle - low).min(high - middle)
        } else {
            to - from
        };
        let bolts = loaded.places.iter().zip(&loaded.forces).enumerate();
        let moment = bolts
            .filter(|(n, _)| beyond(*n))
            .map(|(_, (at, force))| {
                let (up, side) = (self.level(*at) - level, dot(*at, across) - middle);
                up * dot(*force, across) - side * dot(*force, self.to)
            })
            .sum();
        Some(Cut {
            level,
            from,
            to,
            spread,
            sheared: within(reach(0.0)),
            pull: dot(sum, self.to),
            shear: dot(sum, across),
            moment,
        })
    }

    /// The least net width through a hole of the row and any beyond it, with the holes counted as the code has them, and
    /// whether its path is a zigzag. One that goes on into rows beyond is no wider than the narrowest of them.
    fn net_width(&self, loaded: &Loaded, cut: &Cut, narrowest: f64) -> Option<(f64, bool)> {
        let across = turned(self.to);
        let lost = (self.hole + self.more).value;
        let mut holes: Vec<Vector> = loaded
            .places
            .iter()
            .map(|at| (dot(*at, across), self.level(*at)))
            .filter(|(_, level)| *level <= cut.level + IN_LINE)
            .collect();
        holes.sort_by(|a, b| a.0.total_cmp(&b.0));
        // Of each hole the most that paths ending there lose: with no hole of the row in them or one, straight or not.
        let mut paths: Vec<[Option<f64>; 4]> = Vec::with_capacity(holes.len());
        for (n, hole) in holes.iter().enumerate() {
            let in_row = hole.1 >= cut.level - IN_LINE;
            let mut own = [None; 4];
            *own.get_mut(usize::from(in_row))? = Some(-lost);
            for (other, path) in holes.iter().zip(&paths).take(n) {
                let (gauge, stagger) = (hole.0 - other.0, (hole.1 - other.1).abs());
                if gauge <= IN_LINE {
                    continue;
                }
                let next = stagger * stagger / (4.0 * gauge) - lost;
                for (state, from) in path.iter().enumerate() {
                    let Some(so_far) = from else { continue };
                    let turns = if stagger > IN_LINE { 2 } else { 0 };
                    let slot = own.get_mut(state | usize::from(in_row) | turns)?;
                    let best = slot.map_or(f64::INFINITY, |best: f64| best);
                    *slot = Some(best.min(so_far + next));
                }
            }
            paths.push(own);
        }
        let straight = paths.iter().filter_map(|[_, through, ..]| *through);
        let zigzag = paths.iter().filter_map(|[.., through]| *through);
        let straight = straight.reduce(f64::min).map(|lost| cut.spread + lost);
        let narrowest = narrowest.min(cut.spread);
        let zigzag = zigzag.reduce(f64::min).map(|lost| narrowest + lost);
        match (straight, zigzag) {
            (Some(straight), Some(zigzag)) if zigzag < straight => Some((zigzag, true)),
            (Some(straight), _) => Some((straight, false)),
            (None, zigzag) => zigzag.map(|zigzag| (zigzag, true)),
        }
    }
}

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
    let mut look = |mode: Mode, width: f64, cut: &Cut, zigzag: bool, told: &mut Vec<Told>| {
        ply.width = Some(metres(width));
        let load: Force = from_base(cut.pull.abs());
        // The method of the code takes one hole off.
        let diameter = connection.joint.bolt.thread.nominal_diameter();
        let no_bolt = PlyBolt {
            yield_strength: None,
            tensile_strength: None,
        };
        let asked = ply.asked(diameter, no_bolt, connection.joint.methods.plies);
        let outcome = asked.and_then(|asked| asked.in_mode(mode));
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
            Ok(PlyOutcome::Missing(needs)) => {
                let need = match needs.first() {
                    Some(PlyNeed::YieldStrength) => Need::YieldStrength,
                    Some(PlyNeed::TensileStrength) => Need::TensileStrength,
                    _ => Need::Method("something that the section needs is not known"),
                };
                Told::Missing(mode, need)
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
    // Rows come the farthest from the held side first.
    let mut narrowest = f64::INFINITY;
    for cut in cuts {
        look(Mode::GrossSection, cut.spread, cut, false, told);
        narrowest = narrowest.min(cut.width());
        if let Some((net, zigzag)) = held.net_width(loaded, cut, narrowest) {
            let counted = (held.hole + held.more).value;
            look(Mode::NetSection, net + counted, cut, zigzag, told);
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
    // At most 500: exact.
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
