//! The resistance of a ply in each mode by each method.

use super::{HoleKind, Ply, PlyMethod, PlyResistance};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::strength::check::{Mode, Resistance};
use crate::units::{Area, Length, Stress, inches};

/// What is asked of a ply.
pub(super) struct Asked<'a> {
    pub(super) ply: &'a Ply,
    pub(super) diameter: Length,
    pub(super) bolt: Option<Stress>,
    pub(super) method: PlyMethod,
}

impl Asked<'_> {
    pub(super) fn bearing(&self) -> Result<PlyResistance, Error> {
        let method = self.method;
        let area = self.diameter * self.ply.thickness;
        let slot = self.ply.hole_kind == HoleKind::LongSlotAcross;
        let (coefficient, stress) = match method {
            PlyMethod::MachineDesign { .. } => (1.0, self.needed_yield()?),
            PlyMethod::Aisc360 {
                deformation_matters,
                ..
            } => (
                match (slot, deformation_matters) {
                    (true, _) => 2.0,
                    (false, true) => 2.4,
                    (false, false) => 3.0,
                },
                self.needed_tensile()?,
            ),
            PlyMethod::En1993 => {
                let tensile = self.needed_tensile()?;
                (self.en_coefficient(tensile)?, tensile)
            }
            PlyMethod::MilHdbk5 { .. } => (
                1.0,
                needed(self.ply.bearing_strength, "bearing strength", method)?,
            ),
        };
        self.resistance(Mode::Bearing, coefficient, stress, area, "d * t")
    }

    /// k1 ab of EN 1993-1-8 Table 3.4. An end distance or side distance that is not known is a refusal: the
    /// coefficient has no value without it.
    fn en_coefficient(&self, tensile: Stress) -> Result<f64, Error> {
        let d0 = self.ply.hole;
        let end = needed_length(self.ply.end_distance.or(self.ply.pitch), "end distance")?;
        let side = needed_length(self.ply.edge_distance.or(self.ply.gauge), "edge distance")?;
        let mut alpha: f64 = 1.0;
        match self.ply.end_distance {
            Some(e1) => alpha = alpha.min((e1 / (3.0 * d0)).value),
            None => alpha = alpha.min((end / (3.0 * d0)).value - 0.25),
        }
        if let Some(p1) = self.ply.pitch {
            alpha = alpha.min((p1 / (3.0 * d0)).value - 0.25);
        }
        let bolt = needed(self.bolt, "tensile strength of the bolt", self.method)?;
        alpha = alpha.min((bolt / tensile).value);
        let mut k1: f64 = 2.5;
        match self.ply.edge_distance {
            Some(e2) => k1 = k1.min(2.8 * (e2 / d0).value - 1.7),
            None => k1 = k1.min(1.4 * (side / d0).value - 1.7),
        }
        if let Some(p2) = self.ply.gauge {
            k1 = k1.min(1.4 * (p2 / d0).value - 1.7);
        }
        let hole = match self.ply.hole_kind {
            HoleKind::Standard => 1.0,
            HoleKind::Oversize => 0.8,
            HoleKind::LongSlotAcross => 0.6,
        };
        positive(
            "bearing coefficient k1 ab",
            hole * k1.max(0.0) * alpha.max(0.0),
        )
    }

    pub(super) fn tear_out(&self) -> Result<Option<PlyResistance>, Error> {
        let method = self.method;
        let half = 0.5 * self.ply.hole;
        match method {
            PlyMethod::MachineDesign { .. } => {
                let Some(end) = self.ply.end_distance else {
                    return Ok(None);
                };
                // Two planes, each from the centre of the hole to the end.
                let area = 2.0 * end * self.ply.thickness;
                let stress = self.needed_yield()?;
                self.resistance(Mode::TearOut, 0.577, stress, area, "2 * e1 * t")
                    .map(Some)
            }
            PlyMethod::Aisc360 {
                deformation_matters,
                ..
            } => {
                let end = self.ply.end_distance.map(|end| end - half);
                let inside = self.ply.pitch.map(|pitch| pitch - self.ply.hole);
                let (clear, formula) = match (end, inside) {
                    (Some(end), Some(inside)) if inside < end => (inside, "(p1 - dh) * t"),
                    (Some(end), _) => (end, "(e1 - dh / 2) * t"),
                    (None, Some(inside)) => (inside, "(p1 - dh) * t"),
                    (None, None) => return Ok(None),
                };
                let coefficient = match (self.ply.hole_kind, deformation_matters) {
                    (HoleKind::LongSlotAcross, _) => 1.0,
                    (_, true) => 1.2,
                    (_, false) => 1.5,
                };
                let stress = self.needed_tensile()?;
                let area = clear * self.ply.thickness;
                self.resistance(Mode::TearOut, coefficient, stress, area, formula)
                    .map(Some)
            }
            PlyMethod::En1993 | PlyMethod::MilHdbk5 { .. } => Ok(None),
        }
    }

    pub(super) fn net_section(&self) -> Result<Option<PlyResistance>, Error> {
        let method = self.method;
        let Some(width) = self.ply.width else {
            return Ok(None);
        };
        let (coefficient, stress, lost, formula) = match method {
            PlyMethod::MachineDesign { .. } => {
                (1.0, self.needed_yield()?, self.ply.hole, "(w - dh) * t")
            }
            PlyMethod::Aisc360 { .. } => (
                1.0,
                self.needed_tensile()?,
                self.ply.hole + inches(1.0 / 16.0),
                "(w - dh - in / 16) * t",
            ),
            PlyMethod::En1993 => (0.9, self.needed_tensile()?, self.ply.hole, "(w - dh) * t"),
            PlyMethod::MilHdbk5 { .. } => return Ok(None),
        };
        if width <= lost {
            return Err(out_of_range(
                "width of the ply",
                width,
                Allowed::Above(lost.into()),
            ));
        }
        let area = (width - lost) * self.ply.thickness;
        self.resistance(Mode::NetSection, coefficient, stress, area, formula)
            .map(Some)
    }

    pub(super) fn gross_section(&self) -> Result<Option<PlyResistance>, Error> {
        let method = self.method;
        let (Some(width), false) = (self.ply.width, matches!(method, PlyMethod::MilHdbk5 { .. }))
        else {
            return Ok(None);
        };
        let stress = self.needed_yield()?;
        let area = width * self.ply.thickness;
        self.resistance(Mode::GrossSection, 1.0, stress, area, "w * t")
            .map(Some)
    }

    fn needed_yield(&self) -> Result<Stress, Error> {
        needed(self.ply.yield_strength, "yield strength", self.method)
    }

    fn needed_tensile(&self) -> Result<Stress, Error> {
        needed(self.ply.tensile_strength, "tensile strength", self.method)
    }

    fn resistance(
        &self,
        mode: Mode,
        coefficient: f64,
        stress: Stress,
        area: Area,
        area_formula: &'static str,
    ) -> Result<PlyResistance, Error> {
        let method = self.method;
        let gross = mode == Mode::GrossSection;
        let (resistance_factor, safety_factor) = match method {
            PlyMethod::MachineDesign { design_factor } => {
                (None, Some(factor("design factor", design_factor)?))
            }
            PlyMethod::Aisc360 { .. } if gross => (Some(0.90), Some(1.67)),
            PlyMethod::Aisc360 { .. } => (Some(0.75), Some(2.00)),
            PlyMethod::En1993 if gross => (Some(1.0), None),
            PlyMethod::En1993 => (Some(1.0 / 1.25), None),
            PlyMethod::MilHdbk5 { ultimate_factor } => {
                (None, Some(factor("ultimate factor", ultimate_factor)?))
            }
        };
        let nominal = coefficient * stress * area;
        let resistance = Resistance::from_levels(
            Some(nominal),
            resistance_factor.map(|factor| factor * nominal),
            safety_factor.map(|factor| nominal / factor),
        )?;
        Ok(PlyResistance {
            mode,
            method,
            ply: *self.ply,
            diameter: self.diameter,
            bolt_tensile_strength: self.bolt,
            coefficient,
            stress,
            area,
            resistance_factor,
            safety_factor,
            resistance,
            area_formula,
        })
    }
}

fn needed(
    stress: Option<Stress>,
    quantity: &'static str,
    method: PlyMethod,
) -> Result<Stress, Error> {
    stress.ok_or_else(|| Error::NoValue {
        quantity,
        subject: alloc::format!("the ply, for {method}"),
        reason: "it was not given",
    })
}

fn needed_length(length: Option<Length>, quantity: &'static str) -> Result<Length, Error> {
    length.ok_or_else(|| Error::NoValue {
        quantity,
        subject: "the ply, for EN 1993-1-8 Table 3.4".into(),
        reason: "it was not given",
    })
}

pub(super) fn factor(name: &'static str, factor: f64) -> Result<f64, Error> {
    if (1.0..=100.0).contains(&factor) {
        Ok(factor)
    } else {
        Err(out_of_range(
            name,
            factor,
            Allowed::FromTo(1.0.into(), 100.0.into()),
        ))
    }
}
