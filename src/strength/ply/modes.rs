//! The modes of a ply, each by itself: what it asks for, and what becomes of it.

use alloc::vec::Vec;
use core::fmt;

use super::{HoleKind, Ply, PlyBolt, PlyMethod, PlyResistance};
use crate::error::{Allowed, Error, out_of_range};
use crate::source::Method;
use crate::strength::check::{Mode, Resistance};
use crate::strength::code::{aisc_360, as_4100, bs_5950, csa_s16, en_1993, is_800, mil_hdbk_5};
use crate::tables::methods;
use crate::units::{Area, Length, Stress};

/// The modes of a ply and of the bolt in it, in the order they are given.
pub(super) const MODES: [Mode; 5] = [
    Mode::Bearing,
    Mode::BoltBearing,
    Mode::TearOut,
    Mode::NetSection,
    Mode::GrossSection,
];

/// What a mode or a code needs to know of a ply and was not told.
///
/// ```
/// use shankline::strength::ply::PlyNeed;
/// assert_eq!(PlyNeed::EdgeDistance.to_string(), "edge distance");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum PlyNeed {
    /// Yield strength of the ply.
    YieldStrength,
    /// Tensile strength of the ply.
    TensileStrength,
    /// Ultimate bearing strength of the ply at its edge distance.
    BearingStrength,
    /// Yield strength of the ply in bearing at its edge distance.
    BearingYield,
    /// Yield strength of the bolt.
    BoltYieldStrength,
    /// Tensile strength fub of the bolt by EN 1993-1-8 Table 3.1.
    BoltTensileStrength,
    /// End distance e1; for an inner hole the pitch p1.
    EndDistance,
    /// Edge distance e2; for an inner hole the gauge p2.
    EdgeDistance,
    /// Length of the slot.
    SlotLength,
    /// Width that the load of one bolt comes through.
    Width,
}

impl fmt::Display for PlyNeed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::YieldStrength => "yield strength",
            Self::TensileStrength => "tensile strength",
            Self::BearingStrength => "bearing strength",
            Self::BearingYield => "yield strength in bearing",
            Self::BoltYieldStrength => "yield strength of the bolt",
            Self::BoltTensileStrength => "tensile strength of the bolt",
            Self::EndDistance => "end distance",
            Self::EdgeDistance => "edge distance",
            Self::SlotLength => "slot length",
            Self::Width => "width",
        })
    }
}

/// What became of one mode.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::check::Mode;
/// use shankline::strength::ply::{Ply, PlyBolt, PlyMethod, PlyNeed, PlyOutcome};
/// use shankline::tables::plies::PlyMaterial;
/// # fn main() -> Result<(), shankline::Error> {
/// let plate = Ply::of(PlyMaterial::find("ASTM A36 steel")?, millimetres(10.0), millimetres(18.0));
/// let method = PlyMethod::MachineDesign { design_factor: 2.0 };
/// let gross = plate.in_mode(Mode::GrossSection, millimetres(16.0), PlyBolt::default(), method)?;
/// assert_eq!(gross, PlyOutcome::Missing(vec![PlyNeed::Width]));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
// Nearly every outcome is the large one.
#[allow(clippy::large_enum_variant)]
pub enum PlyOutcome {
    /// A resistance.
    Found(PlyResistance),
    /// It cannot be told: this is missing.
    Missing(Vec<PlyNeed>),
    /// The method deals with it in another mode; why.
    NotNeeded(&'static str),
    /// The method has no such mode, so it stays unchecked; why.
    NotGiven(&'static str),
    /// Nothing is left to carry a load: a fault; why.
    Nothing(&'static str),
}

impl PlyOutcome {
    /// The resistance, if there is one.
    ///
    /// ```
    /// use shankline::strength::ply::PlyOutcome;
    /// assert!(PlyOutcome::NotGiven("no such mode").found().is_none());
    /// ```
    #[must_use]
    pub const fn found(&self) -> Option<&PlyResistance> {
        match self {
            Self::Found(resistance) => Some(resistance),
            _ => None,
        }
    }
}

/// One mode of a ply and what became of it.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::check::Mode;
/// use shankline::strength::ply::{Ply, PlyBolt, PlyMethod, PlyNeed, PlyOutcome};
/// use shankline::tables::plies::PlyMaterial;
/// # fn main() -> Result<(), shankline::Error> {
/// let plate = Ply {
///     end_distance: Some(millimetres(40.0)),
///     width: Some(millimetres(80.0)),
///     ..Ply::of(PlyMaterial::find("S275 steel")?, millimetres(10.0), millimetres(18.0))
/// };
/// let bolt = PlyBolt::of(&PropertyClass::Class8_8.strength(millimetres(16.0))?);
/// let modes = plate.assess(millimetres(16.0), bolt, PlyMethod::En1993)?;
/// // Bearing wants the edge distance; the sections are given all the same.
/// assert_eq!(modes[0].outcome, PlyOutcome::Missing(vec![PlyNeed::EdgeDistance]));
/// assert!(modes.iter().any(|mode| mode.mode == Mode::NetSection && mode.outcome.found().is_some()));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PlyMode {
    /// The mode.
    pub mode: Mode,
    /// What became of it.
    pub outcome: PlyOutcome,
}

/// What is asked of a ply.
pub(crate) struct Asked<'a> {
    pub(in crate::strength) ply: &'a Ply,
    pub(in crate::strength) diameter: Length,
    pub(in crate::strength) bolt: PlyBolt,
    pub(in crate::strength) method: PlyMethod,
}

/// The value, or a note of what is missing.
pub(in crate::strength) fn need<T>(
    value: Option<T>,
    name: PlyNeed,
    missing: &mut Vec<PlyNeed>,
) -> Option<T> {
    if value.is_none() {
        missing.push(name);
    }
    value
}

impl Asked<'_> {
    pub(crate) fn in_mode(&self, mode: Mode) -> Result<PlyOutcome, Error> {
        match mode {
            Mode::Bearing => self.bearing(),
            Mode::BoltBearing => self.bolt_bearing(),
            Mode::TearOut => self.tear_out(),
            Mode::NetSection => self.net_section(),
            Mode::GrossSection => self.gross_section(),
            _ => Ok(PlyOutcome::NotGiven("it is no mode of a ply")),
        }
    }

    fn bearing(&self) -> Result<PlyOutcome, Error> {
        let ply = self.ply;
        let (coefficient, stress, name) = match self.method {
            PlyMethod::MachineDesign { .. } => (1.0, ply.yield_strength, PlyNeed::YieldStrength),
            PlyMethod::Aisc360 {
                deformation_matters,
                ..
            } => {
                let coefficient = aisc_360::ply::bearing(ply.hole_kind, deformation_matters);
                (coefficient, ply.tensile_strength, PlyNeed::TensileStrength)
            }
            PlyMethod::En1993 => return en_1993::ply::bearing(self),
            PlyMethod::MilHdbk5 { .. } => {
                if let Some(thin) = mil_hdbk_5::too_thin(self) {
                    return Ok(thin);
                }
                (1.0, ply.bearing_strength, PlyNeed::BearingStrength)
            }
            PlyMethod::Bs5950 => return bs_5950::ply::bearing(self),
            PlyMethod::Is800 => return is_800::ply::bearing(self),
            PlyMethod::As4100 | PlyMethod::CsaS16 if ply.hole_kind != HoleKind::Standard => {
                return Ok(OTHER_HOLES);
            }
            PlyMethod::As4100 => (
                as_4100::ply::BEARING,
                ply.tensile_strength,
                PlyNeed::TensileStrength,
            ),
            PlyMethod::CsaS16 => (
                csa_s16::ply::BEARING,
                ply.tensile_strength,
                PlyNeed::TensileStrength,
            ),
        };
        let Some(stress) = stress else {
            let mut missing = Vec::from([name]);
            // The table's strengths go by the edge distance.
            if name == PlyNeed::BearingStrength && ply.end_distance.is_none() {
                missing.push(PlyNeed::EndDistance);
            }
            return Ok(PlyOutcome::Missing(missing));
        };
        let area = Geometry::new(self.diameter * ply.thickness, "d * t", ply.hole);
        self.found(Mode::Bearing, coefficient, stress, area)
    }

    /// The ply bears on the bolt as the bolt on the ply.
    fn bolt_bearing(&self) -> Result<PlyOutcome, Error> {
        match self.method {
            PlyMethod::MachineDesign { .. } => {}
            PlyMethod::Aisc360 { .. } => {
                return Ok(PlyOutcome::NotNeeded(
                    "AISC 360 J3.10 checks the connected parts only",
                ));
            }
            PlyMethod::En1993 => {
                return Ok(PlyOutcome::NotNeeded(
                    "fub / fu in the bearing of EN 1993-1-8 Table 3.4",
                ));
            }
            PlyMethod::MilHdbk5 { .. } => {
                return Ok(PlyOutcome::NotGiven(
                    "MIL-HDBK-5 has the bearing of the sheet only",
                ));
            }
            PlyMethod::Bs5950 => return bs_5950::ply::bolt_bearing(self),
            PlyMethod::Is800 => {
                return Ok(PlyOutcome::NotNeeded("fub / fu in kb of IS 800 10.3.4"));
            }
            PlyMethod::As4100 | PlyMethod::CsaS16 => {
                return Ok(PlyOutcome::NotNeeded(
                    "AS 4100 and CSA S16 check the connected parts only",
                ));
            }
        }
        let Some(stress) = self.bolt.yield_strength else {
            return Ok(PlyOutcome::Missing([PlyNeed::BoltYieldStrength].into()));
        };
        let area = Geometry::new(self.diameter * self.ply.thickness, "d * t", self.ply.hole);
        self.found(Mode::BoltBearing, 1.0, stress, area)
    }

    fn tear_out(&self) -> Result<PlyOutcome, Error> {
        let ply = self.ply;
        // AISC's number holds for both planes together, machine design's for each.
        let (coefficient, stress, name, planes) = match self.method {
            PlyMethod::MachineDesign { .. } => {
                (0.577, ply.yield_strength, PlyNeed::YieldStrength, 2.0)
            }
            PlyMethod::Aisc360 {
                deformation_matters,
                ..
            } => {
                let coefficient = aisc_360::ply::tear_out(ply.hole_kind, deformation_matters);
                let name = PlyNeed::TensileStrength;
                (coefficient, ply.tensile_strength, name, 1.0)
            }
            PlyMethod::En1993 => {
                return Ok(PlyOutcome::NotNeeded(
                    "e1 / (3 d0) in the bearing of EN 1993-1-8 Table 3.4",
                ));
            }
            PlyMethod::MilHdbk5 { .. } => {
                return Ok(PlyOutcome::NotNeeded(
                    "MIL-HDBK-5 has the edge distance in the bearing strength",
                ));
            }
            PlyMethod::Bs5950 => {
                return Ok(PlyOutcome::NotNeeded(
                    "0.5 e in the bearing of BS 5950-1 6.3.3.3",
                ));
            }
            PlyMethod::Is800 => {
                return Ok(PlyOutcome::NotNeeded("e / (3 d0) in kb of IS 800 10.3.4"));
            }
            PlyMethod::As4100 => return as_4100::ply::tear_out(self),
            PlyMethod::CsaS16 => return csa_s16::ply::tear_out(self),
        };
        let mut missing = Vec::new();
        let stress = need(stress, name, &mut missing);
        let known = ply.end_distance.or(ply.pitch);
        let known = need(known, PlyNeed::EndDistance, &mut missing);
        let hole = need(ply.hole_along(), PlyNeed::SlotLength, &mut missing);
        let (Some(stress), Some(_), Some(hole)) = (stress, known, hole) else {
            return Ok(PlyOutcome::Missing(missing));
        };
        let end = ply.end_distance.map(|e1| e1 - 0.5 * hole);
        let inside = ply.pitch.map(|p1| p1 - hole);
        let (clear, to_end) = lesser(end, inside).unwrap_or_default();
        if clear <= Length::default() {
            return Ok(NOTHING);
        }
        let formula = match (planes > 1.0, to_end) {
            (true, true) => "2 * (e1 - dh / 2) * t",
            (true, false) => "2 * (p1 - dh) * t",
            (false, true) => "(e1 - dh / 2) * t",
            (false, false) => "(p1 - dh) * t",
        };
        let area = Geometry::new(planes * (clear * ply.thickness), formula, hole);
        self.found(Mode::TearOut, coefficient, stress, area)
    }

    pub(in crate::strength) fn net_section(&self) -> Result<PlyOutcome, Error> {
        let ply = self.ply;
        let (coefficient, stress, name, more, formula) = match self.method {
            PlyMethod::MachineDesign { .. } => (
                1.0,
                ply.yield_strength,
                PlyNeed::YieldStrength,
                Length::default(),
                "(w - dh) * t",
            ),
            PlyMethod::Aisc360 { .. } => (
                1.0,
                ply.tensile_strength,
                PlyNeed::TensileStrength,
                aisc_360::ply::MORE_OF_HOLE,
                aisc_360::ply::NET_AREA,
            ),
            PlyMethod::En1993 => (
                en_1993::ply::NET,
                ply.tensile_strength,
                PlyNeed::TensileStrength,
                Length::default(),
                "(w - dh) * t",
            ),
            PlyMethod::MilHdbk5 { .. } => return Ok(NO_SECTIONS),
            PlyMethod::Bs5950 => return bs_5950::ply::section(self, Mode::NetSection),
            PlyMethod::Is800 | PlyMethod::As4100 => (
                if self.method == PlyMethod::Is800 {
                    is_800::ply::NET
                } else {
                    as_4100::ply::NET
                },
                ply.tensile_strength,
                PlyNeed::TensileStrength,
                Length::default(),
                "(w - dh) * t",
            ),
            PlyMethod::CsaS16 => (
                1.0,
                ply.tensile_strength,
                PlyNeed::TensileStrength,
                csa_s16::ply::MORE_OF_HOLE,
                csa_s16::ply::NET_AREA,
            ),
        };
        let mut missing = Vec::new();
        let stress = need(stress, name, &mut missing);
        let width = need(ply.width, PlyNeed::Width, &mut missing);
        let hole = need(ply.hole_across(), PlyNeed::SlotLength, &mut missing);
        let (Some(stress), Some(width), Some(hole)) = (stress, width, hole) else {
            return Ok(PlyOutcome::Missing(missing));
        };
        let net = width - hole - more;
        if net <= Length::default() {
            return Ok(PlyOutcome::Nothing("the hole takes the whole width"));
        }
        let area = Geometry::new(net * ply.thickness, formula, hole);
        self.found(Mode::NetSection, coefficient, stress, area)
    }

    fn gross_section(&self) -> Result<PlyOutcome, Error> {
        let ply = self.ply;
        match self.method {
            PlyMethod::MilHdbk5 { .. } => return Ok(NO_SECTIONS),
            PlyMethod::Bs5950 => return bs_5950::ply::section(self, Mode::GrossSection),
            _ => {}
        }
        let mut missing = Vec::new();
        let stress = need(ply.yield_strength, PlyNeed::YieldStrength, &mut missing);
        let width = need(ply.width, PlyNeed::Width, &mut missing);
        let (Some(stress), Some(width)) = (stress, width) else {
            return Ok(PlyOutcome::Missing(missing));
        };
        let area = Geometry::new(width * ply.thickness, "w * t", ply.hole);
        self.found(Mode::GrossSection, 1.0, stress, area)
    }

    pub(in crate::strength) fn found(
        &self,
        mode: Mode,
        coefficient: f64,
        stress: Stress,
        geometry: Geometry,
    ) -> Result<PlyOutcome, Error> {
        let method = self.method;
        let gross = mode == Mode::GrossSection;
        let both = |(phi, omega): (f64, f64)| (Some(phi), Some(omega));
        let (resistance_factor, safety_factor) = match method {
            PlyMethod::MachineDesign { design_factor } => {
                (None, Some(factor("design factor", design_factor)?))
            }
            PlyMethod::Aisc360 { .. } if gross => both(aisc_360::YIELDING),
            PlyMethod::Aisc360 { .. } => both(aisc_360::RUPTURE),
            PlyMethod::En1993 => (Some(en_1993::ply::factor(mode)), None),
            PlyMethod::MilHdbk5 {
                ultimate_factor,
                fitting_factor,
            } => {
                let ultimate = factor("ultimate factor", ultimate_factor)?;
                let fitting = factor("fitting factor", fitting_factor)?;
                (None, Some(ultimate * fitting))
            }
            // Its stresses are design strengths.
            PlyMethod::Bs5950 => (None, None),
            PlyMethod::Is800 => (Some(is_800::ply_factor(mode)), None),
            PlyMethod::As4100 => (Some(as_4100::PLY_FACTOR), None),
            PlyMethod::CsaS16 => (Some(csa_s16::ply_factor(mode)), None),
        };
        let load = coefficient * stress * geometry.area;
        let resistance = if method == PlyMethod::Bs5950 {
            Resistance::from_levels(None, Some(load), None)?
        } else {
            Resistance::from_levels(
                Some(load),
                resistance_factor.map(|factor| factor * load),
                safety_factor.map(|factor| load / factor),
            )?
        };
        Ok(PlyOutcome::Found(PlyResistance {
            mode,
            method,
            ply: *self.ply,
            diameter: self.diameter,
            bolt: self.bolt,
            coefficient,
            stress,
            area: geometry.area,
            resistance_factor,
            safety_factor,
            resistance,
            clause: clause(method, mode),
            area_formula: geometry.formula,
            hole_size: geometry.hole,
        }))
    }
}

const NO_SECTIONS: PlyOutcome =
    PlyOutcome::NotGiven("MIL-HDBK-5 has strengths of materials, and no rule for sections");

/// Nothing is left between the hole and the next edge.
pub(in crate::strength) const NOTHING: PlyOutcome =
    PlyOutcome::Nothing("the hole reaches the end of the ply or the next hole");

pub(in crate::strength) const OTHER_HOLES: PlyOutcome = PlyOutcome::NotGiven(
    "what the code takes off for holes that are oversize or slots was not read",
);

/// The area a stress acts on, how it is worked out, and the size of the hole in it.
#[derive(Clone, Copy)]
pub(in crate::strength) struct Geometry {
    area: Area,
    formula: &'static str,
    hole: Length,
}

impl Geometry {
    pub(in crate::strength) const fn new(area: Area, formula: &'static str, hole: Length) -> Self {
        Self {
            area,
            formula,
            hole,
        }
    }
}

/// The clause a mode follows, where that is not the one the method is named by.
fn clause(method: PlyMethod, mode: Mode) -> &'static Method {
    let own = match method {
        PlyMethod::MachineDesign { .. } if mode == Mode::BoltBearing => {
            Some(methods::BOLT_BEARING_YIELD)
        }
        PlyMethod::En1993 => en_1993::ply::clause(mode),
        PlyMethod::Bs5950 => bs_5950::ply::clause(mode),
        PlyMethod::Is800 => is_800::ply::clause(mode),
        PlyMethod::As4100 => as_4100::ply::clause(mode),
        PlyMethod::CsaS16 => csa_s16::ply::clause(mode),
        PlyMethod::MachineDesign { .. }
        | PlyMethod::Aisc360 { .. }
        | PlyMethod::MilHdbk5 { .. } => None,
    };
    own.unwrap_or_else(|| method.method())
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

/// The lesser of what lies before the end and inside, and whether it is the end.
pub(in crate::strength) fn lesser(
    end: Option<Length>,
    inside: Option<Length>,
) -> Option<(Length, bool)> {
    match (end, inside) {
        (Some(end), Some(inside)) if inside < end => Some((inside, false)),
        (Some(end), _) => Some((end, true)),
        (None, inside) => inside.map(|inside| (inside, false)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{megapascals, millimetres};

    fn slot(kind: HoleKind, length: f64) -> Ply {
        Ply {
            hole_kind: kind,
            slot_length: Some(millimetres(length)),
            yield_strength: Some(megapascals(250.0)),
            tensile_strength: Some(megapascals(400.0)),
            end_distance: Some(millimetres(25.0)),
            width: Some(millimetres(50.0)),
            ..Ply::without_strengths(millimetres(10.0), millimetres(18.0))
        }
    }

    /// A slot of 50 mm reaches an end at 25 mm, or both sides of a strap of 50 mm: nothing is left, and just less leaves metal.
    #[test]
    fn slots_that_reach_the_edge_leave_nothing() {
        let method = PlyMethod::MachineDesign { design_factor: 2.0 };
        let of = |mode, ply: Ply| {
            ply.in_mode(mode, millimetres(16.0), PlyBolt::default(), method)
                .unwrap()
        };
        for (mode, kind) in [
            (Mode::TearOut, HoleKind::LongSlotAlong),
            (Mode::NetSection, HoleKind::LongSlotAcross),
        ] {
            assert!(
                matches!(of(mode, slot(kind, 50.0)), PlyOutcome::Nothing(_)),
                "{mode:?}"
            );
            assert!(
                matches!(of(mode, slot(kind, 51.0)), PlyOutcome::Nothing(_)),
                "{mode:?}"
            );
            assert!(of(mode, slot(kind, 49.99)).found().is_some(), "{mode:?}");
        }
    }

    /// Where end and next hole leave as much, the end is named.
    #[test]
    fn the_end_is_named_of_equal_distances() {
        let mm = |value| Some(millimetres(value));
        for (end, inside, found) in [
            (mm(20.0), mm(20.0), Some((millimetres(20.0), true))),
            (mm(20.0), mm(19.0), Some((millimetres(19.0), false))),
            (mm(20.0), mm(21.0), Some((millimetres(20.0), true))),
            (None, mm(21.0), Some((millimetres(21.0), false))),
            (None, None, None),
        ] {
            assert_eq!(lesser(end, inside), found);
        }
    }
}
