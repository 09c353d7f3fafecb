//! AS 4100, 9.6 (9.5 in 2020): distances of bolts.

use alloc::vec::Vec;

use crate::source::Method;
use crate::strength::ply::{
    AskedDistance, DistanceKind, DistanceStanding as Standing, EdgeFinish, Limits, PlyNeed,
};
use crate::tables::methods;
use crate::units::{Length, millimetres};

const CLAUSE: &Method = methods::AS_4100_9_6;

pub(in crate::strength) fn limits(asked: &AskedDistance, missing: &mut Vec<PlyNeed>) -> Limits {
    let (d, t) = (asked.diameter, asked.ply.thickness);
    let slot = asked.half_slot(missing);
    let limits = Limits::default();
    if asked.kind.is_edge() {
        // Of other holes the distance counts from their nearer edge, with half the bolt.
        let other = if asked.ply.hole_kind.is_standard() {
            Length::default()
        } else {
            slot + 0.5 * (asked.ply.hole - d)
        };
        // 1.25 d is for edges as rolled, 1.5 d for those cut smooth; nobody tells the two apart.
        let (sheared, smooth) = match asked.conditions.finish {
            Some(EdgeFinish::Smooth) => (None, Standing::Undecided),
            Some(EdgeFinish::Sheared) => (Some(Standing::Fault), Standing::Fault),
            None => (Some(Standing::Undecided), Standing::Undecided),
        };
        let limits = limits
            .least(1.25 * d + other, Standing::Fault, CLAUSE)
            .least(1.5 * d + other, smooth, CLAUSE);
        return match sheared {
            Some(standing) => limits.least(1.75 * d + other, standing, CLAUSE),
            None => limits,
        }
        .greatest((12.0 * t).min(millimetres(150.0)), Standing::Fault, CLAUSE);
    }
    let most = millimetres(200.0);
    let within = (15.0 * t).min(most);
    let limits = limits.least(2.5 * d + 2.0 * slot, Standing::Fault, CLAUSE);
    if asked.kind == DistanceKind::Gauge {
        return limits.greatest(within, Standing::Fault, CLAUSE);
    }
    // An outer line along the load has a limit of its own, and nobody says which line a bolt stands in.
    let outer = (4.0 * t + millimetres(100.0)).min(most);
    limits
        .greatest(within.min(outer), Standing::Undecided, CLAUSE)
        .greatest(within.max(outer), Standing::Fault, CLAUSE)
}
