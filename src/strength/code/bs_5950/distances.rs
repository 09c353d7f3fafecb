//! BS 5950-1:2000, 6.2: distances of bolts.

use alloc::vec::Vec;

use crate::math;
use crate::source::Method;
use crate::strength::ply::{
    AskedDistance, DistanceKind, DistanceStanding as Standing, EdgeFinish, Exposure, Limits,
    PlyNeed,
};
use crate::tables::methods;
use crate::units::{megapascals, millimetres};

const EDGES: &Method = methods::BS_5950_1_2000_6_2_3_TABLE_29;
const FAR_EDGES: &Method = methods::BS_5950_1_2000_6_2_4;
const SPACING: &Method = methods::BS_5950_1_2000_6_2_2;

pub(in crate::strength) fn limits(asked: &AskedDistance, missing: &mut Vec<PlyNeed>) -> Limits {
    let (d0, t) = (asked.ply.hole, asked.ply.thickness);
    let limits = Limits::default();
    let corrosive = match asked.conditions.exposure {
        Some(Exposure::Sheltered) => None,
        Some(_) => Some(Standing::Fault),
        None => Some(Standing::Undecided),
    };
    if asked.kind.is_edge() {
        let sheared = match (asked.kind, asked.conditions.finish) {
            (DistanceKind::Edge, Some(EdgeFinish::Smooth)) => None,
            (DistanceKind::Edge, None) => Some(Standing::Undecided),
            // Every end is taken as a sheared edge.
            _ => Some(Standing::Fault),
        };
        let mut limits = limits.least(1.25 * d0, Standing::Fault, EDGES);
        if let Some(standing) = sheared {
            limits = limits.least(1.4 * d0, standing, EDGES);
        }
        if let Some(py) = asked.ply.yield_strength {
            let epsilon = math::sqrt((megapascals(275.0) / py).value);
            limits = limits.greatest(11.0 * epsilon * t, Standing::Fault, FAR_EDGES);
        } else if !missing.contains(&PlyNeed::YieldStrength) {
            missing.push(PlyNeed::YieldStrength);
        }
        return match corrosive {
            Some(standing) => limits.greatest(4.0 * t + millimetres(40.0), standing, FAR_EDGES),
            None => limits,
        };
    }
    let limits = if asked.kind == DistanceKind::Pitch {
        limits
            .least(
                2.5 * asked.diameter,
                Standing::Fault,
                methods::BS_5950_1_2000_6_2_1,
            )
            .greatest(14.0 * t, Standing::Fault, SPACING)
    } else {
        limits
    };
    match corrosive {
        Some(standing) => limits.greatest((16.0 * t).min(millimetres(200.0)), standing, SPACING),
        None => limits,
    }
}
