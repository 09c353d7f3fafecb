//! The limits of each rule.

use super::{DistanceConditions, DistanceKind, DistanceRule, EdgeFinish, Exposure, Limit, Limits};
use super::{DistanceStanding as Standing, Ply, PlyNeed};
use crate::caution::{Caution, Cautions};
use crate::math;
use crate::source::Method;
use crate::strength::ply::HoleKind;
use crate::strength::shear::AiscEdition;
use crate::tables::edge_distances::EdgeDistance;
use crate::tables::methods;
use crate::units::{Length, inches, megapascals, millimetres};
use alloc::vec::Vec;

const EN_TABLE: &Method = methods::EN_1993_1_8_2005_TABLE_3_3;
const BS_EDGES: &Method = methods::BS_5950_1_2000_6_2_3_TABLE_29;
const BS_FAR_EDGES: &Method = methods::BS_5950_1_2000_6_2_4;
const BS_SPACING: &Method = methods::BS_5950_1_2000_6_2_2;

/// One distance of a ply, and what its limits depend on.
pub(super) struct Asked<'a> {
    pub(super) ply: &'a Ply,
    pub(super) diameter: Length,
    pub(super) conditions: DistanceConditions,
    pub(super) kind: DistanceKind,
}

impl Limits {
    fn least(mut self, length: Length, standing: Standing, clause: &'static Method) -> Self {
        self.least.push(limit(length, standing, clause));
        self
    }

    fn greatest(mut self, length: Length, standing: Standing, clause: &'static Method) -> Self {
        self.greatest.push(limit(length, standing, clause));
        self
    }

    /// Adds a caution to the last of the least distances.
    fn warned(mut self, cautions: Cautions) -> Self {
        if let Some(last) = self.least.last_mut() {
            last.cautions = cautions;
        }
        self
    }

    fn recalled(self, method: &'static Method) -> Self {
        self.warned(Cautions::default().with(Caution::of_method(method)))
    }
}

const fn limit(length: Length, standing: Standing, clause: &'static Method) -> Limit {
    Limit {
        length,
        standing,
        clause,
        cautions: Cautions::NONE,
    }
}

impl Asked<'_> {
    pub(super) fn limits(&self, rule: DistanceRule, missing: &mut Vec<PlyNeed>) -> Limits {
        match rule {
            DistanceRule::MachineDesign => self.machine_design(missing),
            DistanceRule::Aisc360 { edition } => self.aisc(edition),
            DistanceRule::En1993 => self.en_1993(missing),
            DistanceRule::Bs5950 => self.bs_5950(missing),
            DistanceRule::MilHdbk5 => self.mil_hdbk_5(),
            DistanceRule::Is800 => self.is_800(missing),
            DistanceRule::As4100 => self.not_read(methods::AS_4100_9_6_NOT_READ),
            DistanceRule::CsaS16 => self.not_read(methods::CSA_S16_22_3_NOT_READ),
        }
    }

    /// Whether the hole is a slot that points to this edge.
    const fn slot_points_there(&self) -> bool {
        match self.kind {
            DistanceKind::End | DistanceKind::Pitch => self.ply.hole_kind.is_slot_along(),
            DistanceKind::Edge | DistanceKind::Gauge => self.ply.hole_kind.is_slot_across(),
        }
    }

    /// What a slot that points to an edge takes of the distance: from the centre of the hole to that of the round
    /// at its end.
    fn half_slot(&self, missing: &mut Vec<PlyNeed>) -> Length {
        if !self.slot_points_there() {
            return Length::default();
        }
        let Some(length) = self.ply.slot_length else {
            if !missing.contains(&PlyNeed::SlotLength) {
                missing.push(PlyNeed::SlotLength);
            }
            return Length::default();
        };
        0.5 * (length - self.ply.hole)
    }

    fn machine_design(&self, missing: &mut Vec<PlyNeed>) -> Limits {
        if !self.kind.is_edge() {
            return Limits::default();
        }
        let slot = self.half_slot(missing);
        Limits::default()
            .least(
                self.diameter + slot,
                Standing::Fault,
                methods::DISTANCE_ONE_DIAMETER,
            )
            .least(
                1.5 * self.ply.hole + slot,
                Standing::Undecided,
                methods::DISTANCE_RIVETED,
            )
    }

    fn aisc(&self, edition: AiscEdition) -> Limits {
        let (d, t) = (self.diameter, self.ply.thickness);
        let inch = EdgeDistance::is_inch_size(d);
        let round = |inch_value, millimetre_value| {
            if inch {
                inches(inch_value)
            } else {
                millimetres(millimetre_value)
            }
        };
        if self.kind.is_edge() {
            let most = (12.0 * t).min(round(6.0, 150.0));
            return self
                .aisc_edge(edition)
                .greatest(most, Standing::Fault, methods::AISC_360_J3_5);
        }
        let spacing =
            Limits::default().least(8.0 / 3.0 * d, Standing::Fault, methods::AISC_360_J3_3);
        if self.kind == DistanceKind::Gauge {
            return spacing;
        }
        let (most, clause) = if self.conditions.exposure == Some(Exposure::WeatheringSteel) {
            ((14.0 * t).min(round(7.0, 180.0)), methods::AISC_360_J3_5_B)
        } else {
            ((24.0 * t).min(round(12.0, 305.0)), methods::AISC_360_J3_5_A)
        };
        spacing.greatest(most, Standing::Fault, clause)
    }

    fn aisc_edge(&self, edition: AiscEdition) -> Limits {
        let d = self.diameter;
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
        let points_there = self.slot_points_there();
        let addition = match self.ply.hole_kind {
            HoleKind::Oversize => row.oversize_addition,
            HoleKind::ShortSlotAcross | HoleKind::ShortSlotAlong if points_there => {
                row.short_slot_addition
            }
            // Half of what the slot is shorter than the longest may be taken off: it is left as it is.
            HoleKind::LongSlotAcross | HoleKind::LongSlotAlong if points_there => 0.75 * d,
            _ => Length::default(),
        };
        let cautions = if addition > Length::default() {
            row.cautions()
        } else {
            row.distance_cautions()
        };
        let least = row.least + addition;
        let under_the_table = match edition {
            AiscEdition::E2005 | AiscEdition::E2010 => Standing::Fault,
            AiscEdition::E2016 | AiscEdition::E2022 => Standing::Permitted,
        };
        let Some(sheared) = row.sheared.map(|sheared| sheared + addition) else {
            return floor.least(least, under_the_table, clause).warned(cautions);
        };
        let limits = match self.conditions.finish {
            Some(EdgeFinish::Smooth) => floor,
            Some(EdgeFinish::Sheared) => floor.least(sheared, under_the_table, clause),
            None => floor.least(sheared, Standing::Undecided, clause),
        };
        limits
            .warned(cautions.clone())
            .least(least, under_the_table, clause)
            .warned(cautions)
    }

    fn en_1993(&self, missing: &mut Vec<PlyNeed>) -> Limits {
        let (d0, t) = (self.ply.hole, self.ply.thickness);
        let slot = self.half_slot(missing);
        let kind = self.ply.hole_kind;
        let is_slot = kind.is_slot_along() || kind.is_slot_across();
        let limits = Limits::default();
        let member = (14.0 * t).min(millimetres(200.0));
        match self.kind {
            DistanceKind::End | DistanceKind::Edge => {
                let limits = if is_slot {
                    limits
                        .least(1.5 * d0 + slot, Standing::Fault, EN_TABLE)
                        .recalled(methods::EN_1993_1_8_TABLE_3_3_SLOTS)
                } else {
                    limits.least(1.2 * d0, Standing::Fault, EN_TABLE)
                };
                let exposed = 4.0 * t + millimetres(40.0);
                match self.conditions.exposure {
                    Some(Exposure::Sheltered) => limits,
                    Some(Exposure::Corrosive) => {
                        limits.greatest(exposed, Standing::Fault, EN_TABLE)
                    }
                    Some(Exposure::WeatheringSteel) => {
                        let most = (8.0 * t).max(millimetres(125.0));
                        limits.greatest(most, Standing::Fault, EN_TABLE)
                    }
                    None => limits.greatest(exposed, Standing::Undecided, EN_TABLE),
                }
            }
            // Inner rows of tension members may go to 28 t; which row this is nobody says.
            DistanceKind::Pitch => limits
                .least(2.2 * d0 + 2.0 * slot, Standing::Fault, EN_TABLE)
                .greatest(member, Standing::Undecided, EN_TABLE)
                .greatest(
                    (28.0 * t).min(millimetres(400.0)),
                    Standing::Fault,
                    EN_TABLE,
                ),
            DistanceKind::Gauge => limits
                .least(2.4 * d0 + 2.0 * slot, Standing::Fault, EN_TABLE)
                .greatest(member, Standing::Undecided, EN_TABLE),
        }
    }

    fn bs_5950(&self, missing: &mut Vec<PlyNeed>) -> Limits {
        let (d0, t) = (self.ply.hole, self.ply.thickness);
        let limits = Limits::default();
        let corrosive = match self.conditions.exposure {
            Some(Exposure::Sheltered) => None,
            Some(_) => Some(Standing::Fault),
            None => Some(Standing::Undecided),
        };
        if self.kind.is_edge() {
            let sheared = match (self.kind, self.conditions.finish) {
                (DistanceKind::Edge, Some(EdgeFinish::Smooth)) => None,
                (DistanceKind::Edge, None) => Some(Standing::Undecided),
                // Every end is taken as a sheared edge.
                _ => Some(Standing::Fault),
            };
            let mut limits = limits.least(1.25 * d0, Standing::Fault, BS_EDGES);
            if let Some(standing) = sheared {
                limits = limits.least(1.4 * d0, standing, BS_EDGES);
            }
            if let Some(py) = self.ply.yield_strength {
                let epsilon = math::sqrt((megapascals(275.0) / py).value);
                limits = limits.greatest(11.0 * epsilon * t, Standing::Fault, BS_FAR_EDGES);
            } else if !missing.contains(&PlyNeed::YieldStrength) {
                missing.push(PlyNeed::YieldStrength);
            }
            return match corrosive {
                Some(standing) => {
                    limits.greatest(4.0 * t + millimetres(40.0), standing, BS_FAR_EDGES)
                }
                None => limits,
            };
        }
        let limits = if self.kind == DistanceKind::Pitch {
            limits
                .least(
                    2.5 * self.diameter,
                    Standing::Fault,
                    methods::BS_5950_1_2000_6_2_1,
                )
                .greatest(14.0 * t, Standing::Fault, BS_SPACING)
        } else {
            limits
        };
        match corrosive {
            Some(standing) => {
                limits.greatest((16.0 * t).min(millimetres(200.0)), standing, BS_SPACING)
            }
            None => limits,
        }
    }

    fn mil_hdbk_5(&self) -> Limits {
        if !self.kind.is_edge() {
            return Limits::default();
        }
        let custom = Limits::default()
            .least(
                2.0 * self.ply.hole,
                Standing::Permitted,
                methods::FAA_AC_43_13_1B_TWO_DIAMETERS,
            )
            .recalled(methods::FAA_AC_43_13_1B_EDGE_DISTANCES);
        if self.kind == DistanceKind::Edge {
            return custom;
        }
        custom
            .least(
                1.5 * self.ply.hole,
                Standing::Undecided,
                methods::MIL_HDBK_5_BELOW_1_5_DIAMETERS_BY_TEST,
            )
            .recalled(methods::MIL_HDBK_5_LEAST_EDGE_DISTANCE)
    }

    /// IS 800:2007, 10.2.
    fn is_800(&self, missing: &mut Vec<PlyNeed>) -> Limits {
        const CLAUSE: &Method = methods::IS_800_2007_10_2;
        let (d0, t) = (self.ply.hole, self.ply.thickness);
        let slot = self.half_slot(missing);
        let limits = Limits::default();
        if !self.kind.is_edge() {
            return limits
                .least(2.5 * self.diameter + 2.0 * slot, Standing::Fault, CLAUSE)
                .recalled(CLAUSE)
                .greatest(
                    (12.0 * t).min(millimetres(200.0)),
                    Standing::Undecided,
                    CLAUSE,
                )
                .greatest((32.0 * t).min(millimetres(300.0)), Standing::Fault, CLAUSE);
        }
        let sheared = match self.conditions.finish {
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
        if let Some(fy) = self.ply.yield_strength {
            let epsilon = math::sqrt((megapascals(250.0) / fy).value);
            limits = limits.greatest(12.0 * epsilon * t, Standing::Fault, CLAUSE);
        } else if !missing.contains(&PlyNeed::YieldStrength) {
            missing.push(PlyNeed::YieldStrength);
        }
        let exposed = 4.0 * t + millimetres(40.0);
        match self.conditions.exposure {
            Some(Exposure::Sheltered) => limits,
            Some(_) => limits.greatest(exposed, Standing::Fault, CLAUSE),
            None => limits.greatest(exposed, Standing::Undecided, CLAUSE),
        }
    }

    /// Of a code whose distances are not here.
    fn not_read(&self, clause: &'static Method) -> Limits {
        Limits {
            unknown: Some(clause),
            ..Limits::default().least(
                self.diameter,
                Standing::Fault,
                methods::DISTANCE_ONE_DIAMETER,
            )
        }
    }
}
