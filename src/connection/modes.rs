//! What the bolts of a connection do together to its plates.
//!
//! Every mode says something of every ply that the load reaches: a check, what is missing, or that it is not concerned.

use alloc::vec::Vec;
use core::cell::OnceCell;

use super::forces::Edge;
use super::outline::Vector;
use super::verdict::{ConnectionCheck, worse};
use super::{BoltLoad, Connection, Plate};
use crate::caution::{Caution, GENERAL};
use crate::error::Error;
use crate::joint::{Finding, Joint, Missing, Need, PlyFacts, Word};
use crate::math::hypot;
use crate::strength::check::{Check, Level, Mode, Place};

mod bent;
mod block;
pub(super) mod group;
mod held;
mod pressed;
mod sections;
mod strip;

pub(super) use block::{axis, levels};
pub(super) use held::BESIDE;
use held::NetWidth;

/// Modes of the plates that are of the connection.
pub(super) const OF_PLATES: [Mode; 3] = [Mode::BlockShear, Mode::NetSection, Mode::GrossSection];

/// What is to be looked at.
pub(super) struct OfCase<'a> {
    pub(super) connection: &'a Connection,
    /// Counted from 0.
    pub(super) number: usize,
    pub(super) loads: &'a [BoltLoad],
    /// Whether the load turns the connection in its plane.
    pub(super) turned: bool,
    /// What it tilts a plate onto.
    pub(super) edge: Option<&'a Edge>,
}

/// One ply under the bolts of a case.
struct Loaded<'a> {
    facts: &'a PlyFacts,
    plate: Option<&'a Plate>,
    places: &'a [Vector],
    /// What each bolt brings, at the level of the methods.
    forces: Vec<Vector>,
    /// Plus if it is of the part that the loads act on, minus if it holds that; none if nobody says which part that is.
    sense: Option<f64>,
    /// Whether plies that pull one way and the other lie evenly on both sides of each other.
    in_line: bool,
    level: Level,
    turned: bool,
    /// At its cuts, found when asked for.
    net_widths: &'a OnceCell<Vec<Option<NetWidth>>>,
}

/// What a mode says.
enum Told {
    Check(Check),
    Find(Finding),
    Missing(Mode, Need),
    NotConcerned(Mode),
}

/// What is found of all cases.
pub(super) struct Done {
    pub(super) checks: Vec<ConnectionCheck>,
    pub(super) findings: Vec<Finding>,
    pub(super) missing: Vec<Missing>,
    pub(super) cautions: Vec<Caution>,
}

/// Collects it.
pub(super) struct Own {
    plies: Vec<PlyFacts>,
    places: Vec<Vector>,
    /// How far each is from the next; found when it is asked for, for it grows with the square of their number.
    apart: OnceCell<Vec<f64>>,
    /// Net widths of each ply.
    net_widths: Vec<OnceCell<Vec<Option<NetWidth>>>>,
    in_line: bool,
    done: Done,
}

impl Own {
    pub(super) fn new(connection: &Connection) -> Result<Self, Error> {
        let bolts = connection.bolts.bolts().iter();
        let plies = connection.joint.ply_facts()?;
        Ok(Self {
            net_widths: plies.iter().map(|_| OnceCell::new()).collect(),
            plies,
            places: bolts.map(|bolt| (bolt.x.value, bolt.y.value)).collect(),
            apart: OnceCell::new(),
            in_line: is_in_line(&connection.joint),
            done: Done {
                checks: Vec::new(),
                findings: Vec::new(),
                missing: Vec::new(),
                cautions: GENERAL.to_vec(),
            },
        })
    }

    /// From each bolt to the nearest of the others; without end where there is none.
    fn apart(&self) -> &[f64] {
        self.apart.get_or_init(|| {
            let places = || self.places.iter().enumerate();
            let nearest = places().map(|(n, at)| {
                let others = places().filter(|(m, _)| *m != n);
                let others = others.map(|(_, other)| hypot(other.0 - at.0, other.1 - at.1));
                others.fold(f64::INFINITY, f64::min)
            });
            nearest.collect()
        })
    }

    /// Keeps a check if it is the worst of its mode and place, and says what it comes to.
    pub(super) fn take(&mut self, case: usize, check: Check) -> Word {
        let word = if check.holds() {
            Word::Holds
        } else {
            Word::DoesNotHold
        };
        for caution in check.cautions() {
            if !self.done.cautions.contains(caution) {
                self.done.cautions.push(*caution);
            }
        }
        let same = |own: &&mut ConnectionCheck| {
            (own.check.mode, own.check.place, own.check.method.citation)
                == (check.mode, check.place, check.method.citation)
        };
        let known = self.done.checks.iter_mut().find(same);
        match known {
            Some(known) if known.check.utilisation < check.utilisation => {
                *known = ConnectionCheck { case, check };
            }
            Some(_) => {}
            None => self.done.checks.push(ConnectionCheck { case, check }),
        }
        word
    }

    /// Every mode of every ply in one case.
    pub(super) fn look(&mut self, case: &OfCase) -> (Word, Option<f64>) {
        let joint = &case.connection.joint;
        let sheared = case.loads.iter().any(|load| load.across.value > 0.0);
        let mut told: Vec<(Place, Vec<Told>)> = Vec::new();
        if let Some(edge) = case.edge {
            bent::at_edge(case.connection, self, edge, &mut told);
        }
        bent::between(case.connection, self, case.loads, &mut told);
        let level = joint.methods.level;
        let factor = joint.load_factor(level);
        let acts_on = case.connection.loaded.as_deref();
        let own = |facts: &&PlyFacts| facts.name.as_deref() == acts_on && facts.pull != 0.0;
        let acts_on = acts_on.and_then(|_| self.plies.iter().find(own));
        let plies = self.plies.iter().zip(&self.net_widths);
        for (facts, net_widths) in plies.filter(|(facts, _)| sheared && facts.pull != 0.0) {
            let share = factor * facts.pull.abs();
            let bring = |load: &BoltLoad| (share * load.x.value, share * load.y.value);
            let name = facts.name.as_deref();
            let loaded = Loaded {
                facts,
                plate: name.and_then(|name| case.connection.plate_of(name)),
                places: &self.places,
                forces: case.loads.iter().map(bring).collect(),
                sense: acts_on.map(|own| (own.pull * facts.pull).signum()),
                in_line: self.in_line,
                level,
                turned: case.turned,
                net_widths,
            };
            told.push((facts.place, of_ply(case.connection, &loaded)));
        }
        if self.places.len() < 2 && told.iter().any(|(_, told)| told.is_empty()) {
            let unasked = Caution::PlatesOfConnection;
            if !self.done.cautions.contains(&unasked) {
                self.done.cautions.push(unasked);
            }
        }
        let (mut word, mut used) = (Word::Holds, None);
        for (place, told) in told {
            for one in told {
                word = worse(word, self.tell(case, place, one, &mut used));
            }
        }
        (word, used)
    }

    fn tell(&mut self, case: &OfCase, place: Place, told: Told, used: &mut Option<f64>) -> Word {
        let scope = case.connection.joint.scope;
        match told {
            Told::Check(check) if scope.covers(check.mode) => {
                let own = check.utilisation.value;
                *used = Some(used.map_or(own, |most: f64| most.max(own)));
                self.take(case.number, check)
            }
            Told::Find(finding) if scope.covers(finding.mode()) => {
                let fault = finding.is_fault();
                if !self.done.findings.contains(&finding) {
                    self.done.findings.push(finding);
                }
                if fault {
                    Word::DoesNotHold
                } else {
                    Word::Holds
                }
            }
            Told::Missing(mode, need) if scope.covers(mode) => {
                let missing = Missing::new(mode, place, need);
                if !self.done.missing.contains(&missing) {
                    self.done.missing.push(missing);
                }
                let aside = &case.connection.joint.set_aside;
                if aside.iter().any(|own| own.mode == mode) {
                    Word::Holds
                } else {
                    Word::Undecided
                }
            }
            _ => Word::Holds,
        }
    }

    /// The highest utilisation first.
    pub(super) fn done(mut self) -> Done {
        self.done.checks.sort_by(|a, b| {
            b.check
                .utilisation
                .value
                .total_cmp(&a.check.utilisation.value)
        });
        self.done
    }
}

/// Whether what the plies pull makes no moment about the face between them, to a twentieth of the thinnest that pulls. Where a
/// tapped part holds them it does, and across gaps nobody knows.
fn is_in_line(joint: &Joint) -> bool {
    let stack = &joint.stack;
    if stack.pulls().len() != stack.plies().len() || !stack.gaps().is_empty() {
        return false;
    }
    let (mut above, mut moment, mut thinnest) = (0.0, 0.0, f64::INFINITY);
    for (ply, pull) in stack.plies().iter().zip(stack.pulls()) {
        let thickness = ply.clamped().min.value;
        moment += pull * (above + 0.5 * thickness);
        above += thickness;
        if *pull != 0.0 {
            thinnest = thickness.min(thinnest);
        }
    }
    moment.abs() <= 0.05 * thinnest
}

/// Every mode of one ply. One that says nothing is one that nobody looked at.
fn of_ply(connection: &Connection, loaded: &Loaded) -> Vec<Told> {
    let mut told = Vec::new();
    if loaded.facts.is_timber {
        // Of timber the joint of each bolt says that no method knows them.
        told.extend(OF_PLATES.map(Told::NotConcerned));
        return told;
    }
    if loaded.places.len() < 2 {
        sections::of_one_bolt(connection, loaded, &mut told);
        return told;
    }
    block::look(connection, loaded, &mut told);
    sections::look(connection, loaded, &mut told);
    for mode in silent(&told) {
        told.push(Told::Missing(mode, Need::Method("it was not looked at")));
    }
    told
}

/// The modes of a plate of which nothing is said.
fn silent(told: &[Told]) -> Vec<Mode> {
    let says = |mode: &Mode| {
        told.iter().any(|one| match one {
            Told::Check(check) => check.mode == *mode,
            Told::Find(finding) => finding.mode() == *mode,
            Told::Missing(own, _) | Told::NotConcerned(own) => own == mode,
        })
    };
    OF_PLATES.into_iter().filter(|mode| !says(mode)).collect()
}

impl Loaded<'_> {
    /// The sum of what some bolts bring.
    fn sum(&self, takes: impl Fn(usize) -> bool) -> Vector {
        let forces = self.forces.iter().enumerate();
        let forces = forces.filter(|(n, _)| takes(*n));
        forces.fold((0.0, 0.0), |sum, (_, force)| {
            (sum.0 + force.0, sum.1 + force.1)
        })
    }

    /// What is not known of the ply that every mode of a plate needs.
    fn lacks(&self, mode: Mode, told: &mut Vec<Told>) -> bool {
        let before = told.len();
        let facts = self.facts;
        if facts.name.is_none() || facts.thickness.is_none() {
            let why = "plates of a tapped part, or around a sleeve, are not known here";
            told.push(Told::Missing(mode, Need::Method(why)));
            return true;
        }
        let lists = [
            (self.plate.is_none(), Need::Outline),
            (facts.hole.is_none(), Need::Hole),
            (!facts.has_material, Need::Material),
            (
                facts.has_material && facts.yields.is_none(),
                Need::YieldStrength,
            ),
            (
                facts.has_material && facts.breaks.is_none(),
                Need::TensileStrength,
            ),
        ];
        for (lacks, need) in lists {
            if lacks {
                told.push(Told::Missing(mode, need));
            }
        }
        told.len() > before
    }
}

#[cfg(test)]
mod tests;
