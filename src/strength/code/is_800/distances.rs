//! IS 800:2007, 10.2: distances of bolts.

use alloc::vec::Vec;

use crate::math;
use crate::source::Method;
use crate::strength::ply::{
    AskedDistance, DistanceStanding as Standing, EdgeFinish, Exposure, Limits, PlyNeed,
};
use crate::tables::methods;
use crate::units::{megapascals, millimetres};

const CLAUSE: &Method = methods::IS_800_2007_10_2;

pub(in crate::strength) fn limits(asked: &AskedDistance, missing: &mut Vec<PlyNeed>) -> Limits {
    let (d0, t) = (asked.ply.hole, asked.ply.thickness);
    let slot = asked.half_slot(missing);
    let limits = Limits::default();
    if !asked.kind.is_edge() {
        return limits
            .least(2.5 * asked.diameter + 2.0 * slot, Standing::Fault, CLAUSE)
            .recalled(CLAUSE)
            .greatest(
                (12.0 * t).min(millimetres(200.0)),
                Standing::Undecided,
                CLAUSE,
            )
            .greatest((32.0 * t).min(millimetres(300.0)), Standing::Fault, CLAUSE);
    }
    let sheared = match asked.conditions.finish {
        Some(EdgeFinish::Smooth) => None,
        Some(EdgeFinish::Sheared) => Some(Standing::Fault),
        None => Some(Standing::Undecided),
    };
    let mut limits = limits
        .least(1.5 * d0 + slot, Standing::Fault, CLAUSE)
        .recalled(CLAUSE);
    if let Some(standing) = sheared {
        limits = limits
            .least(1.7 * d0 + slot, standing, CLAUSE)
            .recalled(CLAUSE);
    }
    if let Some(fy) = asked.ply.yield_strength {
        let epsilon = math::sqrt((megapascals(250.0) / fy).value);
        limits = limits.greatest(12.0 * epsilon * t, Standing::Fault, CLAUSE);
    } else if !missing.contains(&PlyNeed::YieldStrength) {
        missing.push(PlyNeed::YieldStrength);
    }
    let exposed = 4.0 * t + millimetres(40.0);
    match asked.conditions.exposure {
        Some(Exposure::Sheltered) => limits,
        Some(_) => limits.greatest(exposed, Standing::Fault, CLAUSE),
        None => limits.greatest(exposed, Standing::Undecided, CLAUSE),
    }
}
