//! Bearing and tear-out by BS 5950-1, IS 800, AS 4100 and CSA S16, where they are more than a number times d t, and the sections of
//! BS 5950-1.

use alloc::vec::Vec;

use super::modes::{Asked, Geometry, OTHER_HOLES, PlyNeed, PlyOutcome, need};
use crate::error::Error;
use crate::strength::check::Mode;
use crate::strength::code::{bs_5950, csa_s16, is_800};
use crate::units::Length;

const NOTHING: PlyOutcome =
    PlyOutcome::Nothing("the hole reaches the end of the ply or the next hole");

impl Asked<'_> {
    /// Pbs = kbs d t pbs, at most 0.5 kbs e t pbs. A hole with no end before it is not told from one whose end is not known.
    pub(super) fn bs_5950_bearing(&self) -> Result<PlyOutcome, Error> {
        let ply = self.ply;
        let mut missing = Vec::new();
        let end = need(ply.end_distance, PlyNeed::EndDistance, &mut missing);
        let fy = need(ply.yield_strength, PlyNeed::YieldStrength, &mut missing);
        let fu = need(ply.tensile_strength, PlyNeed::TensileStrength, &mut missing);
        let (Some(end), Some(fy), Some(fu)) = (end, fy, fu) else {
            return Ok(PlyOutcome::Missing(missing));
        };
        let width = self.diameter.min(0.5 * end);
        let area = Geometry::new(width * ply.thickness, "min(d, e1 / 2) * t", ply.hole);
        let stress = bs_5950::bearing_of_ply(fy, fu);
        self.found(
            Mode::Bearing,
            bs_5950::hole_factor(ply.hole_kind),
            stress,
            area,
        )
    }

    /// Pbb = d t pbb.
    pub(super) fn bs_5950_bolt_bearing(&self) -> Result<PlyOutcome, Error> {
        let mut missing = Vec::new();
        let yielding = self.bolt.yield_strength;
        let yielding = need(yielding, PlyNeed::BoltYieldStrength, &mut missing);
        let breaking = self.bolt.tensile_strength;
        let breaking = need(breaking, PlyNeed::BoltTensileStrength, &mut missing);
        let (Some(yielding), Some(breaking)) = (yielding, breaking) else {
            return Ok(PlyOutcome::Missing(missing));
        };
        let Some(stress) = bs_5950::bearing_of_bolt(yielding, breaking) else {
            return Ok(PlyOutcome::NotGiven(
                "BS 5950-1 Table 31 has classes 4.6, 8.8 and 10.9, and the bolt is softer than all",
            ));
        };
        let area = Geometry::new(self.diameter * self.ply.thickness, "d * t", self.ply.hole);
        self.found(Mode::BoltBearing, 1.0, stress, area)
    }

    /// py Ag, and py Ke An, which counts no more than the gross section: both are checked.
    pub(super) fn bs_5950_section(&self, mode: Mode) -> Result<PlyOutcome, Error> {
        let ply = self.ply;
        let mut missing = Vec::new();
        let fy = need(ply.yield_strength, PlyNeed::YieldStrength, &mut missing);
        let fu = need(ply.tensile_strength, PlyNeed::TensileStrength, &mut missing);
        let width = need(ply.width, PlyNeed::Width, &mut missing);
        let (hole, formula) = if mode == Mode::GrossSection {
            (Some(Length::default()), "w * t")
        } else {
            let hole = need(ply.hole_across(), PlyNeed::SlotLength, &mut missing);
            (hole, "(w - dh) * t")
        };
        let (Some(fy), Some(fu), Some(width), Some(hole)) = (fy, fu, width, hole) else {
            return Ok(PlyOutcome::Missing(missing));
        };
        let left = width - hole;
        if left <= Length::default() {
            return Ok(PlyOutcome::Nothing("the hole takes the whole width"));
        }
        let (py, ke) = bs_5950::net_section(fy, fu);
        let coefficient = if mode == Mode::GrossSection { 1.0 } else { ke };
        let shown = if mode == Mode::GrossSection {
            ply.hole
        } else {
            hole
        };
        let area = Geometry::new(left * ply.thickness, formula, shown);
        self.found(mode, coefficient, py, area)
    }

    /// Vnpb = 2.5 kb d t fu. A distance along the load is wanted, as EN 1993-1-8 wants it.
    pub(super) fn is_800_bearing(&self) -> Result<PlyOutcome, Error> {
        let ply = self.ply;
        let Some(hole) = is_800::hole_factor(ply.hole_kind) else {
            return Ok(PlyOutcome::NotGiven(
                "IS 800 10.3.4 has no bearing in slots along the load",
            ));
        };
        let d0 = ply.hole;
        let end = ply.end_distance.map(|e| (e / (3.0 * d0)).value);
        let pitch = ply.pitch.map(|p| (p / (3.0 * d0)).value - 0.25);
        let along = match (end, pitch) {
            (Some(end), Some(pitch)) => Some(end.min(pitch)),
            (end, pitch) => end.or(pitch),
        };
        let mut missing = Vec::new();
        let along = need(along, PlyNeed::EndDistance, &mut missing);
        let fu = need(ply.tensile_strength, PlyNeed::TensileStrength, &mut missing);
        let fub = self.bolt.tensile_strength;
        let fub = need(fub, PlyNeed::BoltTensileStrength, &mut missing);
        let (Some(along), Some(fu), Some(fub)) = (along, fu, fub) else {
            return Ok(PlyOutcome::Missing(missing));
        };
        let kb = along.min((fub / fu).value).min(1.0);
        if kb <= 0.0 {
            return Ok(PlyOutcome::Nothing(
                "IS 800 10.3.4 leaves no bearing so near to the next hole",
            ));
        }
        let area = Geometry::new(self.diameter * ply.thickness, "d * t", d0);
        self.found(Mode::Bearing, hole * 2.5 * kb, fu, area)
    }

    /// Vb = ae t fu, ae from the edge of the hole to the end, or to the edge of the next hole, and half the bolt.
    pub(super) fn as_4100_tear_out(&self) -> Result<PlyOutcome, Error> {
        let ply = self.ply;
        if !ply.hole_kind.is_standard() {
            return Ok(OTHER_HOLES);
        }
        let mut missing = Vec::new();
        let fu = need(ply.tensile_strength, PlyNeed::TensileStrength, &mut missing);
        let end = ply.end_distance.map(|e| e - 0.5 * ply.hole);
        let inside = ply.pitch.map(|p| p - ply.hole);
        let clear = need(lesser(end, inside), PlyNeed::EndDistance, &mut missing);
        let (Some(fu), Some((clear, to_end))) = (fu, clear) else {
            return Ok(PlyOutcome::Missing(missing));
        };
        if clear <= Length::default() {
            return Ok(NOTHING);
        }
        let formula = if to_end {
            "(e1 - dh / 2 + d / 2) * t"
        } else {
            "(p1 - dh + d / 2) * t"
        };
        let area = (clear + 0.5 * self.diameter) * ply.thickness;
        self.found(
            Mode::TearOut,
            1.0,
            fu,
            Geometry::new(area, formula, ply.hole),
        )
    }

    /// 0.6 Agv (Fy + Fu) / 2, two planes from the centre of the hole to the end or to the next one.
    pub(super) fn csa_s16_tear_out(&self) -> Result<PlyOutcome, Error> {
        let ply = self.ply;
        if !ply.hole_kind.is_standard() {
            return Ok(OTHER_HOLES);
        }
        let mut missing = Vec::new();
        let fy = need(ply.yield_strength, PlyNeed::YieldStrength, &mut missing);
        let fu = need(ply.tensile_strength, PlyNeed::TensileStrength, &mut missing);
        let along = lesser(ply.end_distance, ply.pitch);
        let along = need(along, PlyNeed::EndDistance, &mut missing);
        let (Some(fy), Some(fu), Some((length, to_end))) = (fy, fu, along) else {
            return Ok(PlyOutcome::Missing(missing));
        };
        let formula = if to_end { "2 * e1 * t" } else { "2 * p1 * t" };
        let area = Geometry::new(2.0 * (length * ply.thickness), formula, ply.hole);
        self.found(Mode::TearOut, 0.6, csa_s16::tear_out(fy, fu), area)
    }
}

/// The lesser of what lies before the end and inside, and whether it is the end.
pub(super) fn lesser(end: Option<Length>, inside: Option<Length>) -> Option<(Length, bool)> {
    match (end, inside) {
        (Some(end), Some(inside)) if inside < end => Some((inside, false)),
        (Some(end), _) => Some((end, true)),
        (None, inside) => inside.map(|inside| (inside, false)),
    }
}
