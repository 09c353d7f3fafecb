//! A plate seen from its bolts towards the side on which it is held, and what sections through it carry.
//!
//! From the row next to the held side on, a plate counts beside its bolts no farther than the load spreads at 30 degrees, and
//! 2.5 holes in any case, as a plate so narrow counts whole and more of it takes nothing away. Sections at rows before that
//! one carry a part of the load, and count whole as the publisher has it: what the bolts tear out there is a block. Of a
//! shear along the held side no spread is published: there it is 2.5 holes.

use alloc::vec::Vec;

use super::Loaded;
use crate::connection::outline::{Outline, Vector, dot, turned};
use crate::connection::{Plate, Side};
use crate::math::hypot;
use crate::strength::ply::PlyMethod;
use crate::units::{Length, inches, millimetres};

/// Holes so far out of line are in one row still.
pub(super) const IN_LINE: f64 = 1e-5;
/// Part of a load that is rounding.
pub(super) const NOTHING: f64 = 1e-6;
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
    pub(super) hole: Length,
    /// What a net section of the code counts more than the hole.
    pub(super) more: Length,
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
    pub(super) sheared: (f64, f64),
    pub(super) pull: f64,
    pub(super) shear: f64,
    pub(super) moment: f64,
}

impl Cut {
    pub(super) fn width(&self) -> f64 {
        self.to - self.from
    }

    /// Whether less counts than is there.
    pub(super) fn is_wider(&self) -> bool {
        self.spread < self.width() - IN_LINE
    }

    pub(super) fn size(&self) -> f64 {
        hypot(self.pull, self.shear)
    }

    pub(super) fn is_bent(&self) -> bool {
        self.moment.abs() > NOTHING * self.width() * self.size().max(f64::MIN_POSITIVE)
    }
}

/// What is left of a section beside its holes.
pub(super) struct NetWidth {
    pub(super) width: f64,
    /// Whether its path does not run straight.
    pub(super) zigzag: bool,
}

impl<'a> Held<'a> {
    /// By its thickness and holes.
    pub(super) fn new(
        plate: &'a Plate,
        side: Side,
        (thickness, hole): (Length, Length),
        method: PlyMethod,
    ) -> Self {
        Self {
            outline: &plate.outline,
            to: side.direction(),
            thickness,
            hole,
            more: match method {
                PlyMethod::Aisc360 { .. } => inches(1.0 / 16.0),
                PlyMethod::CsaS16 => millimetres(2.0),
                _ => Length::default(),
            },
        }
    }

    /// The cuts of a plate that the method is for, or why there are none.
    pub(super) fn known_cuts(
        &self,
        method: PlyMethod,
        loaded: &Loaded,
    ) -> Result<Vec<Cut>, &'static str> {
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

    /// The least net width at every cut; found once a plate, as no load changes it. Rows come the farthest from the held side
    /// first.
    pub(super) fn net_widths(&self, loaded: &Loaded, cuts: &[Cut]) -> Vec<Option<NetWidth>> {
        let mut narrowest = f64::INFINITY;
        let net_width = |cut: &Cut| {
            narrowest = narrowest.min(cut.width());
            self.net_width(loaded, cut, narrowest)
        };
        cuts.iter().map(net_width).collect()
    }

    /// The least net width through a hole of the row and any beyond it, with the holes counted as the code has them, and
    /// whether its path is a zigzag. One that goes on into rows beyond is no wider than the narrowest of them.
    fn net_width(&self, loaded: &Loaded, cut: &Cut, narrowest: f64) -> Option<NetWidth> {
        let across = turned(self.to);
        let lost = (self.hole + self.more).value;
        let mut holes: Vec<Vector> = loaded
            .places
            .iter()
            .map(|at| (dot(*at, across), self.level(*at)))
            .filter(|(_, level)| *level <= cut.level + IN_LINE)
            .collect();
        holes.sort_by(|a, b| a.0.total_cmp(&b.0));
        // Of each hole the most that paths ending there lose: with no hole of the row in them or one, straight or not; without
        // end where there is no such path.
        let mut paths: Vec<[f64; 4]> = Vec::with_capacity(holes.len());
        for hole in &holes {
            let in_row = usize::from(hole.1 >= cut.level - IN_LINE);
            let mut own = [f64::INFINITY; 4];
            *own.get_mut(in_row)? = -lost;
            let before = holes.partition_point(|other| hole.0 - other.0 > IN_LINE);
            for (other, path) in holes.iter().zip(&paths).take(before) {
                let (gauge, stagger) = (hole.0 - other.0, (hole.1 - other.1).abs());
                let next = stagger * stagger / (4.0 * gauge) - lost;
                let turns = if stagger > IN_LINE { 2 } else { 0 };
                for (state, so_far) in path.iter().enumerate() {
                    let slot = own.get_mut(state | in_row | turns)?;
                    *slot = slot.min(so_far + next);
                }
            }
            paths.push(own);
        }
        let least = |state: usize| {
            let ends = paths.iter().filter_map(|path| path.get(state).copied());
            let least = ends.fold(f64::INFINITY, f64::min);
            least.is_finite().then_some(least)
        };
        let straight = least(1).map(|lost| cut.spread + lost);
        let narrowest = narrowest.min(cut.spread);
        let zigzag = least(3).map(|lost| narrowest + lost);
        match (straight, zigzag) {
            (Some(straight), Some(zigzag)) if zigzag < straight => Some(NetWidth {
                width: zigzag,
                zigzag: true,
            }),
            (Some(width), _) => Some(NetWidth {
                width,
                zigzag: false,
            }),
            (None, zigzag) => zigzag.map(|width| NetWidth {
                width,
                zigzag: true,
            }),
        }
    }
}

#[cfg(test)]
mod tests;
