//! AISC 360, J3.3 to J3.5: distances of bolts.

use crate::strength::ply::{
    AskedDistance, DistanceKind, DistanceStanding as Standing, EdgeFinish, Exposure, HoleKind,
    Limits,
};
use crate::strength::shear::AiscEdition;
use crate::tables::edge_distances::EdgeDistance;
use crate::tables::methods;
use crate::units::{Length, inches, millimetres};

pub(in crate::strength) fn limits(asked: &AskedDistance, edition: AiscEdition) -> Limits {
    let (d, t) = (asked.diameter, asked.ply.thickness);
    let inch = EdgeDistance::is_inch_size(d);
    let round = |inch_value, millimetre_value| {
        if inch {
            inches(inch_value)
        } else {
            millimetres(millimetre_value)
        }
    };
    if asked.kind.is_edge() {
        let most = (12.0 * t).min(round(6.0, 150.0));
        return edge(asked, edition).greatest(most, Standing::Fault, methods::AISC_360_J3_5);
    }
    let spacing = Limits::default().least(8.0 / 3.0 * d, Standing::Fault, methods::AISC_360_J3_3);
    if asked.kind == DistanceKind::Gauge {
        return spacing;
    }
    let (most, clause) = if asked.conditions.exposure == Some(Exposure::WeatheringSteel) {
        ((14.0 * t).min(round(7.0, 180.0)), methods::AISC_360_J3_5_B)
    } else {
        ((24.0 * t).min(round(12.0, 305.0)), methods::AISC_360_J3_5_A)
    };
    spacing.greatest(most, Standing::Fault, clause)
}

fn edge(asked: &AskedDistance, edition: AiscEdition) -> Limits {
    let d = asked.diameter;
    let clause = match edition {
        AiscEdition::E2005 => methods::AISC_360_05_TABLE_J3_4,
        AiscEdition::E2010 => methods::AISC_360_10_TABLE_J3_4,
        AiscEdition::E2016 => methods::AISC_360_16_TABLE_J3_4_NOTE_A,
        AiscEdition::E2022 => methods::AISC_360_22_TABLE_J3_4_NOTE_A,
    };
    let floor = Limits::default().least(d, Standing::Fault, clause);
    let Ok(row) = EdgeDistance::at(d, edition) else {
        return Limits {
            unknown: Some(methods::AISC_360_J3_4_NONE),
            ..floor
        };
    };
    let points_there = asked.slot_points_there();
    let addition = match asked.ply.hole_kind {
        HoleKind::Oversize => row.oversize_addition,
        HoleKind::ShortSlotAcross | HoleKind::ShortSlotAlong if points_there => {
            row.short_slot_addition
        }
        // Half of what the slot is shorter than the longest may be taken off: it is left as it is.
        HoleKind::LongSlotAcross | HoleKind::LongSlotAlong if points_there => 0.75 * d,
        _ => Length::default(),
    };
    let cautions = row.cautions();
    let least = row.least + addition;
    let under_the_table = match edition {
        AiscEdition::E2005 | AiscEdition::E2010 => Standing::Fault,
        AiscEdition::E2016 | AiscEdition::E2022 => Standing::Permitted,
    };
    let Some(sheared) = row.sheared.map(|sheared| sheared + addition) else {
        return floor.least(least, under_the_table, clause).warned(cautions);
    };
    let limits = match asked.conditions.finish {
        Some(EdgeFinish::Smooth) => floor,
        Some(EdgeFinish::Sheared) => floor.least(sheared, under_the_table, clause),
        None => floor.least(sheared, Standing::Undecided, clause),
    };
    limits
        .warned(cautions.clone())
        .least(least, under_the_table, clause)
        .warned(cautions)
}
