//! Blocks of a ply that tear out between several bolts.
//!
//! ```text
//!   U: shear along both outer rows, tension between them     L: shear along one row, tension to the edge
//!   II: shear along both outer rows, tension from each to its edge
//! ```
//!
//! The load on a block is that of the most loaded bolt times all bolts. Shear runs from the innermost bolt to the end.

use crate::joint::Pattern;
use crate::joint::whole::case::{Case, CasePly};
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Need, NotConcerned};
use crate::strength::check::Mode;
use crate::strength::ply::{BlockRule, BlockShear, block_shear};
use crate::units::{Area, Length, Stress};

const MODE: Mode = Mode::BlockShear;

pub(super) fn check(case: &Case, out: &mut Outcomes) {
    if !case.is_sheared() {
        out.not_concerned(MODE, NotConcerned::NoLoadAcross);
        return;
    }
    if case.member.is_some() {
        out.not_concerned(MODE, NotConcerned::OfConnection);
        return;
    }
    if case.joint.pattern == Pattern::Single {
        out.not_concerned(MODE, NotConcerned::SingleBolt);
        return;
    }
    for own in case.plies.iter().filter(|own| own.pulls()) {
        if own.timber.is_none() {
            one(case, own, out);
        }
    }
    out.not_concerned(MODE, NotConcerned::TimberElsewhere);
}

fn one(case: &Case, own: &CasePly, out: &mut Outcomes) {
    let rule = match BlockRule::of(case.joint.methods.plies) {
        Ok(rule) => rule,
        Err(why) => {
            out.missing(MODE, own.place, Need::Method(why));
            return;
        }
    };
    let (concentric, one_sided) = (rule.even, rule.uneven);
    let Some(shape) = Shape::of(case, own, rule.oversize, out) else {
        return;
    };
    let count = case.joint.pattern.along() * case.joint.pattern.across();
    // At most 1e6: exact.
    #[allow(clippy::cast_precision_loss)]
    let load = count as f64 * own.load;
    let lines = case.joint.pattern.across();
    let to_one_edge = shape.to_one_edge(rule.holes_to_one_side(lines));
    for (method, block, lines) in [
        (concentric, shape.between_rows(), None),
        (one_sided, Some(to_one_edge), Some(lines)),
        (concentric, shape.to_both_edges(), None),
    ] {
        let Some(block) = block else { continue };
        let Some(found) = out.attempt(MODE, own.place, block_shear(&block, method)) else {
            continue;
        };
        out.work_at(own.place, || found.derivation());
        let check = found.check(load, case.level, own.number);
        let check = check.map(|check| check.warned(rule.cautions_to_one_side(lines)));
        out.try_check(MODE, own.place, check);
    }
}

/// The bolts of a ply, and how far they are from each other and from its edges.
struct Shape {
    along: f64,
    across: f64,
    thickness: Length,
    /// Hole as net areas count it.
    hole: Length,
    end: Length,
    edge: Length,
    pitch: Length,
    gauge: Length,
    yield_strength: Stress,
    tensile_strength: Stress,
}

impl Shape {
    /// As far as everything is known; what is not is listed.
    fn of(case: &Case, own: &CasePly, oversize: Length, out: &mut Outcomes) -> Option<Self> {
        let (Some(ply), Some(thickness)) = (own.ply, own.thickness) else {
            let why = "blocks of a tapped part, or around a sleeve, are not known here";
            out.missing(MODE, own.place, Need::Method(why));
            return None;
        };
        let (along, across) = (case.joint.pattern.along(), case.joint.pattern.across());
        let material = own
            .material
            .and_then(|row| row.at_thickness(thickness).ok());
        let mut need = |value: Option<Length>, need: Need| {
            if value.is_none() {
                out.missing(MODE, own.place, need);
            }
            value
        };
        let hole = need(ply.hole, Need::Hole);
        let end = need(ply.end_distance, Need::EndDistance);
        let edge = need(ply.edge_distance, Need::EdgeDistance);
        // One row, or one bolt in each, has no distance to the next.
        let none = Some(Length::default());
        let pitch = need(if along > 1 { ply.pitch } else { none }, Need::Pitch);
        let gauge = need(if across > 1 { ply.gauge } else { none }, Need::Gauge);
        let yields = material.and_then(|row| row.yields);
        let breaks = material.and_then(|row| row.breaks);
        for (value, need) in [
            (yields, Need::YieldStrength),
            (breaks, Need::TensileStrength),
        ] {
            match (own.material, value) {
                (None, _) => out.missing(MODE, own.place, Need::Material),
                (Some(_), None) => out.missing(MODE, own.place, need),
                _ => {}
            }
        }
        // At most 1000 rows: exact.
        #[allow(clippy::cast_precision_loss)]
        Some(Self {
            along: along as f64,
            across: across as f64,
            thickness,
            hole: hole? + oversize,
            end: end?,
            edge: edge?,
            pitch: pitch?,
            gauge: gauge?,
            yield_strength: yields?,
            tensile_strength: breaks?,
        })
    }

    fn block(&self, rows: f64, tension: Length, holes: f64) -> BlockShear {
        let strip = |length: Length| -> Area { length * self.thickness };
        let row = self.end + (self.along - 1.0) * self.pitch;
        BlockShear {
            yield_strength: self.yield_strength,
            tensile_strength: self.tensile_strength,
            gross_shear: rows * strip(row),
            net_shear: rows * strip(row - (self.along - 0.5) * self.hole),
            gross_tension: strip(tension),
            net_tension: strip(tension - holes * self.hole),
        }
    }

    /// U.
    fn between_rows(&self) -> Option<BlockShear> {
        let spaces = self.across - 1.0;
        (spaces > 0.0).then(|| self.block(2.0, spaces * self.gauge, spaces))
    }

    /// L.
    fn to_one_edge(&self, holes: f64) -> BlockShear {
        let tension = (self.across - 1.0) * self.gauge + self.edge;
        self.block(1.0, tension, holes)
    }

    /// II.
    fn to_both_edges(&self) -> Option<BlockShear> {
        (self.across > 1.0).then(|| self.block(2.0, 2.0 * self.edge, 1.0))
    }
}
