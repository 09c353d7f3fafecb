//! EN 1993-1-8:2005, Table 3.3: distances of bolts.

use alloc::vec::Vec;

use crate::source::Method;
use crate::strength::ply::{
    AskedDistance, DistanceKind, DistanceStanding as Standing, Exposure, Limits, PlyNeed,
};
use crate::tables::methods;
use crate::units::millimetres;

const TABLE: &Method = methods::EN_1993_1_8_2005_TABLE_3_3;

pub(in crate::strength) fn limits(asked: &AskedDistance, missing: &mut Vec<PlyNeed>) -> Limits {
    let (d0, t) = (asked.ply.hole, asked.ply.thickness);
    let slot = asked.half_slot(missing);
    let kind = asked.ply.hole_kind;
    let is_slot = kind.is_slot_along() || kind.is_slot_across();
    let limits = Limits::default();
    let member = (14.0 * t).min(millimetres(200.0));
    match asked.kind {
        DistanceKind::End | DistanceKind::Edge => {
            let limits = if is_slot {
                limits
                    .least(1.5 * d0 + slot, Standing::Fault, TABLE)
                    .recalled(methods::EN_1993_1_8_TABLE_3_3_SLOTS)
            } else {
                limits.least(1.2 * d0, Standing::Fault, TABLE)
            };
            let exposed = 4.0 * t + millimetres(40.0);
            match asked.conditions.exposure {
                Some(Exposure::Sheltered) => limits,
                Some(Exposure::Corrosive) => limits.greatest(exposed, Standing::Fault, TABLE),
                Some(Exposure::WeatheringSteel) => {
                    let most = (8.0 * t).max(millimetres(125.0));
                    limits.greatest(most, Standing::Fault, TABLE)
                }
                None => limits.greatest(exposed, Standing::Undecided, TABLE),
            }
        }
        // Inner rows of tension members may go to 28 t; which row this is nobody says.
        DistanceKind::Pitch => limits
            .least(2.2 * d0 + 2.0 * slot, Standing::Fault, TABLE)
            .greatest(member, Standing::Undecided, TABLE)
            .greatest((28.0 * t).min(millimetres(400.0)), Standing::Fault, TABLE),
        DistanceKind::Gauge => limits
            .least(2.4 * d0 + 2.0 * slot, Standing::Fault, TABLE)
            .greatest(member, Standing::Undecided, TABLE),
    }
}
