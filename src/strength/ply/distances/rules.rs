//! One distance that a rule is asked about; the limits stand in the rooms of the publishers.

use alloc::vec::Vec;

use super::{DistanceConditions, DistanceKind, DistanceRule, DistanceStanding as Standing};
use super::{Limit, Limits, Ply, PlyNeed};
use crate::caution::{Caution, Cautions};
use crate::source::Method;
use crate::strength::code::{
    aisc_360, as_4100, bs_5950, en_1993, is_800, machine_design, mil_hdbk_5,
};
use crate::tables::methods;
use crate::units::Length;

/// One distance of a ply, and what its limits depend on.
pub(in crate::strength) struct AskedDistance<'a> {
    pub(in crate::strength) ply: &'a Ply,
    pub(in crate::strength) diameter: Length,
    pub(in crate::strength) conditions: DistanceConditions,
    pub(in crate::strength) kind: DistanceKind,
}

impl Limits {
    pub(in crate::strength) fn least(
        mut self,
        length: Length,
        standing: Standing,
        clause: &'static Method,
    ) -> Self {
        self.least.push(limit(length, standing, clause));
        self
    }

    pub(in crate::strength) fn greatest(
        mut self,
        length: Length,
        standing: Standing,
        clause: &'static Method,
    ) -> Self {
        self.greatest.push(limit(length, standing, clause));
        self
    }

    /// Adds a caution to the last of the least distances.
    pub(in crate::strength) fn warned(mut self, cautions: Cautions) -> Self {
        if let Some(last) = self.least.last_mut() {
            last.cautions = cautions;
        }
        self
    }

    pub(in crate::strength) fn recalled(self, method: &'static Method) -> Self {
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

impl AskedDistance<'_> {
    pub(super) fn limits(&self, rule: DistanceRule, missing: &mut Vec<PlyNeed>) -> Limits {
        match rule {
            DistanceRule::MachineDesign => machine_design::distances(self, missing),
            DistanceRule::Aisc360 { edition } => aisc_360::distances::limits(self, edition),
            DistanceRule::En1993 => en_1993::distances::limits(self, missing),
            DistanceRule::Bs5950 => bs_5950::distances::limits(self, missing),
            DistanceRule::MilHdbk5 => mil_hdbk_5::distances(self),
            DistanceRule::Is800 => is_800::distances::limits(self, missing),
            DistanceRule::As4100 => as_4100::distances::limits(self, missing),
            DistanceRule::CsaS16 => self.not_read(methods::CSA_S16_22_3_NOT_READ),
        }
    }

    /// Whether the hole is a slot that points to this edge.
    pub(in crate::strength) const fn slot_points_there(&self) -> bool {
        match self.kind {
            DistanceKind::End | DistanceKind::Pitch => self.ply.hole_kind.is_slot_along(),
            DistanceKind::Edge | DistanceKind::Gauge => self.ply.hole_kind.is_slot_across(),
        }
    }

    /// What a slot that points to an edge takes of the distance: from the centre of the hole to that of the round
    /// at its end.
    pub(in crate::strength) fn half_slot(&self, missing: &mut Vec<PlyNeed>) -> Length {
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
