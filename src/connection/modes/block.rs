//! Block shear: every block of rows and columns that the bolts could tear out of a plate.
//!
//! ```text
//!   U:  shear along two columns, tension between them
//!   L:  shear along one column, tension from it across those beyond it to their side
//!   II: shear along two columns, tension from each to its side
//! ```
//!
//! Shear runs from any row to the end that lies beyond it, in each of the four directions of the pattern. The load of a
//! block is what its own bolts bring, whole, if it acts within 45 degrees of the direction.

use alloc::vec::Vec;

use super::{Loaded, Told};
use crate::connection::Connection;
use crate::connection::outline::{Outline, Vector, dot, metres, turned, unit};
use crate::error::Error;
use crate::joint::Need;
use crate::math::{hypot, sqrt};
use crate::strength::check::{Check, Level, Mode};
use crate::strength::ply::{
    BlockMethod, BlockResistance, BlockRule, BlockShear, PlyMethod, block_shear,
};
use crate::units::{Area, Length, Stress, from_base};

const MODE: Mode = Mode::BlockShear;
/// Bolts so far out of line are in line still: a drawing, not a proof.
const IN_LINE: f64 = 1e-5;

/// Bolts in full rows and columns, seen in one direction: the end of the plate lies ahead.
struct Grid {
    ahead: Vector,
    /// Levels of the rows, rising ahead.
    rows: Vec<f64>,
    /// Places of the columns across.
    columns: Vec<f64>,
}

/// A block: its shear and tension lines, with the holes in them.
struct Block {
    shear: f64,
    shear_holes: f64,
    tension: f64,
    tension_holes: f64,
    even: bool,
    /// Lines of bolts of a block torn to one side.
    to_one_side: Option<usize>,
}

impl Block {
    /// Whether the tension on it is even.
    fn is_even(&self, method: PlyMethod, turned: bool) -> bool {
        match (method, self.to_one_side) {
            (PlyMethod::En1993 | PlyMethod::CsaS16, _) => self.even && !turned,
            // Uneven only with several columns in the tension line (commentary of AISC 360; recalled).
            (_, Some(lines)) => lines == 1 || self.even && !turned,
            (_, None) => self.even,
        }
    }
}

struct Plate<'a> {
    outline: &'a Outline,
    thickness: Length,
    hole: Length,
    yields: Stress,
    breaks: Stress,
}

pub(super) fn look(connection: &Connection, loaded: &Loaded, told: &mut Vec<Told>) {
    let method = connection.joint.methods.plies;
    let rule = match BlockRule::of(method) {
        Ok(rule) => rule,
        Err(why) => {
            told.push(Told::Missing(MODE, Need::Method(why)));
            return;
        }
    };
    if loaded.lacks(MODE, told) {
        return;
    }
    let facts = loaded.facts;
    let (Some(plate), Some(thickness), Some(hole), Some(yields), Some(breaks)) = (
        loaded.plate,
        facts.thickness,
        facts.hole,
        facts.yields,
        facts.breaks,
    ) else {
        return;
    };
    let plate = Plate {
        outline: &plate.outline,
        thickness,
        hole: hole + rule.oversize,
        yields,
        breaks,
    };
    let Some(axis) = axis(loaded.places) else {
        told.push(not_in_rows());
        return;
    };
    let mut worst: Option<Torn> = None;
    let mut none = true;
    // The first of what stops a block: of many that do not tear one way or the other, one is enough to leave it open.
    let (mut no_edge, mut refused) = (false, None);
    for ahead in [
        axis,
        turned(axis),
        (-axis.0, -axis.1),
        turned((-axis.0, -axis.1)),
    ] {
        let Some(grid) = Grid::of(loaded.places, ahead) else {
            told.push(not_in_rows());
            return;
        };
        let sums = Sums::of(&grid, loaded);
        grid.each_block(&plate, &rule, |bolts, block| {
            let sum = sums.of_block(&bolts);
            let load = hypot(sum.0, sum.1);
            let ahead = dot(sum, grid.ahead).abs();
            if load <= ROUNDING * sums.size || ahead < load * (1.0 - 1e-9) / sqrt(2.0) {
                return;
            }
            none = false;
            let Some(block) = block else {
                no_edge = true;
                return;
            };
            let by = if block.is_even(method, loaded.turned) {
                rule.even
            } else {
                rule.uneven
            };
            match torn(&plate, &block, by, load, loaded.level) {
                Ok(torn) => {
                    if worst.as_ref().is_none_or(|worst| torn.used > worst.used) {
                        worst = Some(torn);
                    }
                }
                Err(error) => {
                    refused.get_or_insert(error);
                }
            }
        });
    }
    if no_edge {
        let why = "the edge that a block tears out to is not found in the outline";
        told.push(Told::Missing(MODE, Need::Method(why)));
    }
    let worst = worst.map(|worst| {
        let check = worst
            .bears
            .check(from_base(worst.load), loaded.level, facts.number)?;
        let check = check.warned(rule.cautions_to_one_side(worst.to_one_side));
        Ok(Check {
            place: facts.place,
            ..check
        })
    });
    match worst.transpose() {
        Ok(Some(worst)) => told.push(Told::Check(worst)),
        Ok(None) if none => told.push(Told::NotConcerned(MODE)),
        Ok(None) => {}
        Err(error) => {
            refused.get_or_insert(error);
        }
    }
    if let Some(error) = refused {
        told.push(Told::Missing(MODE, Need::Refused(error.into())));
    }
}

/// A block with its load, and how much of what it bears that is.
struct Torn {
    load: f64,
    bears: BlockResistance,
    used: f64,
    to_one_side: Option<usize>,
}

fn not_in_rows() -> Told {
    let why = "blocks of bolts that do not stand in full rows and columns are not known here";
    Told::Missing(MODE, Need::Method(why))
}

fn torn(
    plate: &Plate,
    block: &Block,
    by: BlockMethod,
    load: f64,
    level: Level,
) -> Result<Torn, Error> {
    let strip = |length: f64, holes: f64| -> (Area, Area) {
        let length = metres(length);
        (
            length * plate.thickness,
            (length - holes * plate.hole) * plate.thickness,
        )
    };
    let (gross_shear, net_shear) = strip(block.shear, block.shear_holes);
    let (gross_tension, net_tension) = strip(block.tension, block.tension_holes);
    let areas = BlockShear {
        yield_strength: plate.yields,
        tensile_strength: plate.breaks,
        gross_shear,
        net_shear,
        gross_tension,
        net_tension,
    };
    let bears = block_shear(&areas, by)?;
    let used = load / bears.resistance.at(level)?.value;
    Ok(Torn {
        load,
        bears,
        used,
        to_one_side: block.to_one_side,
    })
}

/// The direction from a bolt to its nearest neighbour.
pub(in crate::connection) fn axis(places: &[Vector]) -> Option<Vector> {
    let mut nearest: Option<(f64, Vector)> = None;
    for (n, a) in places.iter().enumerate() {
        for b in places.iter().skip(n + 1) {
            let offset = (b.0 - a.0, b.1 - a.1);
            let away = hypot(offset.0, offset.1);
            if away > IN_LINE && nearest.is_none_or(|(least, _)| away < least - IN_LINE) {
                nearest = Some((away, offset));
            }
        }
    }
    unit(nearest?.1)
}

/// Where bolts stand in a direction, each place once, rising.
pub(in crate::connection) fn levels(places: &[Vector], direction: Vector) -> Vec<f64> {
    let mut levels: Vec<f64> = places.iter().map(|place| dot(*place, direction)).collect();
    levels.sort_by(f64::total_cmp);
    levels.dedup_by(|next, last| *next - *last <= IN_LINE);
    levels
}

/// Which bolts a block has: rows from one on, and columns within or without two, which are in it; counted from 0.
struct Takes {
    from_row: usize,
    low: usize,
    high: usize,
    within: bool,
}

/// What is left of forces that cancel, as part of all of them.
const ROUNDING: f64 = 1e-12;

/// What the bolts of a grid bring, added up, so that a block of many costs no more than one of few.
struct Sums {
    /// Of each row and those beyond it, in the columns before each: one more than there are columns.
    beyond: Vec<Vec<Vector>>,
    size: f64,
}

impl Sums {
    fn of(grid: &Grid, loaded: &Loaded) -> Self {
        let none = alloc::vec![(0.0, 0.0); grid.columns.len()];
        let mut own = alloc::vec![none; grid.rows.len()];
        let mut size = 0.0;
        for (place, force) in loaded.places.iter().zip(&loaded.forces) {
            size += hypot(force.0, force.1);
            let (row, column) = grid.cell(*place);
            if let Some(cell) = own.get_mut(row).and_then(|row| row.get_mut(column)) {
                *cell = (cell.0 + force.0, cell.1 + force.1);
            }
        }
        let mut of_columns = alloc::vec![(0.0, 0.0); grid.columns.len()];
        let mut beyond = Vec::with_capacity(own.len());
        for row in own.iter().rev() {
            let (mut sums, mut so_far) = (Vec::with_capacity(row.len() + 1), (0.0, 0.0));
            sums.push(so_far);
            for (column, cell) in of_columns.iter_mut().zip(row) {
                *column = (column.0 + cell.0, column.1 + cell.1);
                so_far = (so_far.0 + column.0, so_far.1 + column.1);
                sums.push(so_far);
            }
            beyond.push(sums);
        }
        beyond.reverse();
        Self { beyond, size }
    }

    fn of_block(&self, bolts: &Takes) -> Vector {
        let Some(row) = self.beyond.get(bolts.from_row) else {
            return (0.0, 0.0);
        };
        let before = |column: usize| row.get(column).copied().unwrap_or_default();
        let less = |a: Vector, b: Vector| (a.0 - b.0, a.1 - b.1);
        if bolts.within {
            return less(before(bolts.high + 1), before(bolts.low));
        }
        let all = row.last().copied().unwrap_or_default();
        let between = less(before(bolts.high), before(bolts.low + 1));
        less(all, between)
    }
}

impl Grid {
    /// None if the bolts do not fill rows and columns in this direction.
    fn of(places: &[Vector], ahead: Vector) -> Option<Self> {
        let grid = Self {
            ahead,
            rows: levels(places, ahead),
            columns: levels(places, turned(ahead)),
        };
        let full = grid.rows.len() * grid.columns.len() == places.len();
        // As many bolts as crossings, and no two at one.
        let mut cells: Vec<(usize, usize)> = places.iter().map(|place| grid.cell(*place)).collect();
        cells.sort_unstable();
        cells.dedup();
        (full && cells.len() == places.len()).then_some(grid)
    }

    /// Row and column of a bolt: the levels next to it. Those of a level begin with the lowest of them.
    fn cell(&self, place: Vector) -> (usize, usize) {
        let at = |levels: &[f64], level: f64| {
            levels
                .partition_point(|own| *own <= level)
                .saturating_sub(1)
        };
        (
            at(&self.rows, dot(place, self.ahead)),
            at(&self.columns, dot(place, turned(self.ahead))),
        )
    }

    fn place(&self, row: f64, column: f64) -> Vector {
        let across = turned(self.ahead);
        (
            row * self.ahead.0 + column * across.0,
            row * self.ahead.1 + column * across.1,
        )
    }

    /// Every block with the bolts in it; without its lines where an edge is not found.
    #[allow(clippy::cast_precision_loss)] // at most some hundreds
    fn each_block(
        &self,
        plate: &Plate,
        rule: &BlockRule,
        mut take: impl FnMut(Takes, Option<Block>),
    ) {
        let (Some(first), Some(last)) = (self.columns.first(), self.columns.last()) else {
            return;
        };
        let across = turned(self.ahead);
        let back = (-across.0, -across.1);
        let count = self.columns.len() as f64;
        for (n, &row) in self.rows.iter().enumerate() {
            let holes = (self.rows.len() - n) as f64 - 0.5;
            let ahead = |column: f64| plate.outline.reach(self.place(row, column), self.ahead);
            let low = plate.outline.reach(self.place(row, *first), back);
            let high = plate.outline.reach(self.place(row, *last), across);
            let shears: Vec<Option<f64>> =
                self.columns.iter().map(|column| ahead(*column)).collect();
            for (at, (&column, shear)) in self.columns.iter().zip(&shears).enumerate() {
                let end = self.columns.len() - 1;
                let sides = [
                    (low, (0, *first), (at, column)),
                    (high, (at, column), (end, *last)),
                ];
                for (side, (low_at, from), (high_at, to)) in sides {
                    let lines = high_at - low_at + 1;
                    let lines_of = side.zip(*shear).map(|(side, shear)| Block {
                        shear,
                        shear_holes: holes,
                        tension: to - from + side,
                        tension_holes: rule.holes_to_one_side(lines),
                        // Beside one of some columns its mirror tears with it, and both go straight; all of them turn.
                        even: lines < self.columns.len(),
                        to_one_side: Some(lines),
                    });
                    let takes = Takes {
                        from_row: n,
                        low: low_at,
                        high: high_at,
                        within: true,
                    };
                    take(takes, lines_of);
                }
            }
            for (at, (&from, from_shear)) in self.columns.iter().zip(&shears).enumerate() {
                // Between two columns there may be a notch.
                let solid = plate.outline.reach(self.place(row, from), across);
                for (to_at, (&to, to_shear)) in
                    self.columns.iter().zip(&shears).enumerate().skip(at + 1)
                {
                    let shear = from_shear.zip(*to_shear).map(|(a, b)| a + b);
                    let shear = shear.filter(|_| solid.is_some_and(|solid| solid > to - from));
                    let between = (to_at - at) as f64;
                    let takes = |within| Takes {
                        from_row: n,
                        low: at,
                        high: to_at,
                        within,
                    };
                    take(
                        takes(true),
                        shear.map(|shear| Block {
                            shear,
                            shear_holes: 2.0 * holes,
                            tension: to - from,
                            tension_holes: between,
                            even: true,
                            to_one_side: None,
                        }),
                    );
                    let sides = low.zip(high).zip(shear);
                    take(
                        takes(false),
                        sides.map(|((low, high), shear)| Block {
                            shear,
                            shear_holes: 2.0 * holes,
                            tension: low + (from - first) + (last - to) + high,
                            tension_holes: count - between,
                            even: true,
                            to_one_side: None,
                        }),
                    );
                }
            }
        }
    }
}

#[cfg(test)]
mod tests;
