//! What a ply bears: bearing at the hole, tear-out to its end, its net and gross section.
//!
//! | method | bearing | tear-out | net section | gross section |
//! |---|---|---|---|---|
//! | [`MachineDesign`](PlyMethod::MachineDesign) | Sy d t | 2 x 0.577 Sy e1 t | Sy (w - dh) t | Sy w t |
//! | [`Aisc360`](PlyMethod::Aisc360) | 2.4 Fu d t, or 3.0 where the deformation does not matter | 1.2 Fu Lc t, or 1.5 | Fu (w - dh - 1/16 in) t | Fy w t |
//! | [`En1993`](PlyMethod::En1993) | k1 ab fu d t | in ab | 0.9 fu (w - d0) t | fy w t |
//! | [`MilHdbk5`](PlyMethod::MilHdbk5) | Fbru d t | in Fbru, by e / D | none | none |
//!
//! d bolt, dh = d0 hole, t ply, w width that the load of one bolt comes through, e1 from the hole's centre to
//! the end along the load, e2 to the side, p1 and p2 to the next holes along and across, Lc the clear distance
//! (e1 - dh/2 at the end, p1 - dh inside).
//!
//! Factors: machine design divides by nd; AISC 0.75 and 2.00, gross section 0.90 and 1.67; EN 1.25 and, in the
//! gross section, 1.0; MIL-HDBK-5 divides by the ultimate factor.
//!
//! EN: ab = min(e1 / (3 d0), p1 / (3 d0) - 1/4, fub / fu, 1), k1 = min(2.8 e2 / d0 - 1.7, 1.4 p2 / d0 - 1.7,
//! 2.5).
//!
//! Sources: Shigley, Mechanical Engineering Design, 9th ed., Example 8-6; AISC 360 J3.10 and D2 (bearing and
//! tear-out met in a handbook example and its factors read, J3.10 of 2010; 1.5, 3.0 and section rules
//! recalled); EN 1993-1-8:2005 Tables 3.3 and 3.4 and EN 1993-1-1 6.2.3 in a European design guide;
//! MIL-HDBK-5 as quoted. AISC's block shear and EN's are in [`BlockShear`].

mod block;
mod distances;

pub use block::{BlockMethod, BlockResistance, BlockShear, Stagger, StaggerRule, block_shear};
pub use distances::{DistanceKind, ShortDistance};

use super::check::{Check, Level, Mode, Place, Resistance};
use super::shear::AiscEdition;
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Amount, Error, out_of_range, positive, sane_length};
use crate::tables::plies::PlyMaterial;
use crate::units::{Area, Force, Length, Stress, inches};
use alloc::vec::Vec;
use core::fmt;

/// A published method for plies.
///
/// ```
/// use shankline::strength::ply::PlyMethod;
/// assert_eq!(PlyMethod::En1993.to_string(), "EN 1993-1-8:2005 Table 3.4, bearing");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case", deny_unknown_fields)
)]
#[non_exhaustive]
pub enum PlyMethod {
    /// Machine design: onset of yield.
    MachineDesign {
        /// The factor nd the allowable load is divided by.
        design_factor: f64,
    },
    /// AISC 360 J3.10 (J3.11 in 2022) and D2.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360 {
        /// Edition.
        edition: AiscEdition,
        /// Whether a deformation of about 1/4 in at service load matters.
        deformation_matters: bool,
    },
    /// EN 1993-1-8:2005 Table 3.4 and EN 1993-1-1 6.2.3, recommended partial factors.
    #[cfg_attr(feature = "serde", serde(rename = "en_1993_1_8"))]
    En1993,
    /// MIL-HDBK-5: bearing strength by edge distance, dry pins.
    #[cfg_attr(feature = "serde", serde(rename = "mil_hdbk_5"))]
    MilHdbk5 {
        /// Ultimate load over limit load, 1.5 for aircraft.
        ultimate_factor: f64,
    },
}

impl PlyMethod {
    /// Publisher, edition and clause.
    ///
    /// ```
    /// use shankline::strength::ply::PlyMethod;
    /// let shop = PlyMethod::MachineDesign { design_factor: 2.0 };
    /// assert_eq!(shop.name(), "machine design, yield of the ply");
    /// ```
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::MachineDesign { .. } => "machine design, yield of the ply",
            Self::Aisc360 { edition, .. } => match edition {
                AiscEdition::E2005 => "AISC 360-05 J3.10, D2",
                AiscEdition::E2010 => "AISC 360-10 J3.10, D2",
                AiscEdition::E2016 => "AISC 360-16 J3.10, D2",
                AiscEdition::E2022 => "AISC 360-22 J3.11, D2",
            },
            Self::En1993 => "EN 1993-1-8:2005 Table 3.4, bearing",
            Self::MilHdbk5 { .. } => "MIL-HDBK-5, bearing",
        }
    }

    fn cautions(self, mode: Mode) -> Cautions {
        let recalled = match self {
            Self::Aisc360 {
                deformation_matters: false,
                ..
            } => Some("AISC 360 J3.10, 3.0 and 1.5"),
            Self::Aisc360 { .. } if matches!(mode, Mode::NetSection | Mode::GrossSection) => {
                Some("AISC 360 D2")
            }
            _ => None,
        };
        Cautions::default().with(recalled.map(|method| Caution::MethodFromMemory { method }))
    }
}

impl fmt::Display for PlyMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.name())
    }
}

/// Kinds of hole, as far as they change the bearing.
///
/// ```
/// use shankline::strength::ply::HoleKind;
/// assert_eq!(HoleKind::default(), HoleKind::Standard);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum HoleKind {
    /// Standard (normal) holes.
    #[default]
    Standard,
    /// Oversize holes: EN takes 0.8 of the bearing, recalled.
    Oversize,
    /// Long slots across the load: AISC 2.0 and 1.0, EN 0.6 of the bearing, recalled.
    LongSlotAcross,
}

/// A ply around one hole. Dimensions that are not known are left out; what needs them is not checked.
///
/// ```
/// use shankline::strength::ply::Ply;
/// use shankline::tables::plies::PlyMaterial;
/// use shankline::units::inches;
/// # fn main() -> Result<(), shankline::Error> {
/// let a36 = PlyMaterial::find("ASTM A36 steel")?;
/// let lug = Ply { end_distance: Some(inches(1.5)), ..Ply::of(a36, inches(0.375), inches(0.9375)) };
/// assert!(lug.width.is_none());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Ply {
    /// Thickness t.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub thickness: Length,
    /// Hole diameter dh = d0.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub hole: Length,
    /// Kind of hole.
    pub hole_kind: HoleKind,
    /// Yield strength Sy = Fy = fy.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub yield_strength: Option<Stress>,
    /// Tensile strength Fu = fu.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub tensile_strength: Option<Stress>,
    /// Ultimate bearing strength Fbru at its edge distance.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub bearing_strength: Option<Stress>,
    /// From the centre of the hole to the end of the ply, along the load, e1.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub end_distance: Option<Length>,
    /// From the centre of the hole to the side of the ply, across the load, e2.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub edge_distance: Option<Length>,
    /// To the next hole along the load, p1.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub pitch: Option<Length>,
    /// To the next hole across the load, p2.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub gauge: Option<Length>,
    /// Width that the load of one bolt comes through, w.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub width: Option<Length>,
}

impl Ply {
    /// A ply of a material of the tables, without any distance.
    ///
    /// ```
    /// use shankline::strength::ply::Ply;
    /// use shankline::tables::plies::PlyMaterial;
    /// use shankline::units::millimetres;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let plate = Ply::of(PlyMaterial::find("ASTM A36 steel")?, millimetres(10.0), millimetres(18.0));
    /// assert!(plate.yield_strength.is_some());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn of(material: &PlyMaterial, thickness: Length, hole: Length) -> Self {
        Self {
            thickness,
            hole,
            hole_kind: HoleKind::Standard,
            yield_strength: material.yield_strength,
            tensile_strength: material.tensile_strength,
            bearing_strength: None,
            end_distance: None,
            edge_distance: None,
            pitch: None,
            gauge: None,
            width: None,
        }
    }

    fn check_inputs(&self, diameter: Length) -> Result<(), Error> {
        sane_length("bolt diameter", diameter)?;
        sane_length("ply thickness", self.thickness)?;
        sane_length("hole diameter", self.hole)?;
        if self.hole < diameter {
            return Err(out_of_range(
                "hole diameter",
                self.hole,
                Allowed::AtLeast(diameter.into()),
            ));
        }
        for (name, stress) in [
            ("yield strength of the ply", self.yield_strength),
            ("tensile strength of the ply", self.tensile_strength),
            ("bearing strength of the ply", self.bearing_strength),
        ] {
            if let Some(stress) = stress {
                positive(name, stress)?;
            }
        }
        let half = 0.5 * self.hole;
        for (name, distance, least) in [
            ("end distance", self.end_distance, half),
            ("edge distance", self.edge_distance, half),
            ("pitch of the holes", self.pitch, self.hole),
            ("gauge of the holes", self.gauge, self.hole),
            ("width of the ply", self.width, self.hole),
        ] {
            if let Some(distance) = distance {
                sane_length(name, distance)?;
                if distance <= least {
                    return Err(out_of_range(name, distance, Allowed::Above(least.into())));
                }
            }
        }
        Ok(())
    }
}

/// Resistance of a ply in one mode, for the load of one bolt: coefficient x stress x area.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::check::{Level, Mode};
/// use shankline::strength::ply::{Ply, PlyMethod};
/// use shankline::tables::plies::PlyMaterial;
/// use shankline::units::kip;
/// # fn main() -> Result<(), shankline::Error> {
/// // 7/8 in bolt, 3/8 in A36 plate, 1.5 in from the end: 20.2 kip in a handbook example
/// let a36 = PlyMaterial::find("ASTM A36 steel")?;
/// let plate = Ply { end_distance: Some(inches(1.5)), ..Ply::of(a36, inches(0.375), inches(0.9375)) };
/// let method = PlyMethod::Aisc360 { edition: AiscEdition::E2010, deformation_matters: true };
/// let modes = plate.resistances(inches(0.875), None, method)?;
/// let tear_out = modes.iter().find(|mode| mode.mode == Mode::TearOut).unwrap();
/// assert!((tear_out.resistance.at(Level::Design)?.get::<kip>() - 20.2).abs() < 0.05);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PlyResistance {
    /// Mode of failure.
    pub mode: Mode,
    /// The method.
    pub method: PlyMethod,
    /// The ply.
    pub ply: Ply,
    /// Bolt diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub diameter: Length,
    /// Tensile strength of the bolt, if the method asks for it.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub bolt_tensile_strength: Option<Stress>,
    /// What multiplies stress and area.
    pub coefficient: f64,
    /// The strength of the ply that is used.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub stress: Stress,
    /// The area it acts on.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub area: Area,
    /// What nominal resistance is multiplied by for the design resistance.
    pub resistance_factor: Option<f64>,
    /// What nominal resistance is divided by for the allowable load.
    pub safety_factor: Option<f64>,
    /// Nominal, design and allowable load, as far as the method defines them.
    pub resistance: Resistance,
    /// How the area follows from the ply, for the working.
    area_formula: &'static str,
    cautions: Cautions,
}

impl Ply {
    /// The resistance in every mode that the method has and the known dimensions allow.
    ///
    /// `bolt_tensile_strength` is fub of EN 1993-1-8; the other methods do not ask for it.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a dimension or strength that is not positive and finite, a hole smaller than
    /// the bolt, a distance inside the hole, or a factor that is not from 1 to 100; [`Error::NoValue`] if the
    /// strength the method starts from is not given.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::ply::{Ply, PlyMethod};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let a36 = PlyMaterial::find("ASTM A36 steel")?;
    /// let plate = Ply::of(a36, millimetres(10.0), millimetres(18.0));
    /// let method = PlyMethod::MachineDesign { design_factor: 2.0 };
    /// // Only bearing: no distance and no width is known.
    /// assert_eq!(plate.resistances(millimetres(16.0), None, method)?.len(), 1);
    /// # Ok(())
    /// # }
    /// ```
    pub fn resistances(
        &self,
        diameter: Length,
        bolt_tensile_strength: Option<Stress>,
        method: PlyMethod,
    ) -> Result<Vec<PlyResistance>, Error> {
        self.check_inputs(diameter)?;
        let asked = Asked {
            ply: self,
            diameter,
            bolt: bolt_tensile_strength,
            method,
        };
        let mut modes = Vec::with_capacity(4);
        modes.push(asked.bearing()?);
        modes.extend(asked.tear_out()?);
        modes.extend(asked.net_section()?);
        modes.extend(asked.gross_section()?);
        Ok(modes)
    }
}

/// What is asked of a ply.
struct Asked<'a> {
    ply: &'a Ply,
    diameter: Length,
    bolt: Option<Stress>,
    method: PlyMethod,
}

impl Asked<'_> {
    fn bearing(&self) -> Result<PlyResistance, Error> {
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
        let mut bearing = self.resistance(Mode::Bearing, coefficient, stress, area, "d * t")?;
        let recalled = method == PlyMethod::En1993 && self.ply.hole_kind != HoleKind::Standard;
        bearing.cautions = bearing
            .cautions
            .with(recalled.then_some(Caution::MethodFromMemory {
                method: "EN 1993-1-8, bearing in oversize holes and slots",
            }));
        Ok(bearing)
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
        if let Some(bolt) = self.bolt {
            positive("tensile strength of the bolt", bolt)?;
            alpha = alpha.min((bolt / tensile).value);
        }
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

    fn tear_out(&self) -> Result<Option<PlyResistance>, Error> {
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

    fn net_section(&self) -> Result<Option<PlyResistance>, Error> {
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

    fn gross_section(&self) -> Result<Option<PlyResistance>, Error> {
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
            cautions: method.cautions(mode),
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
        reason: "the material gives none",
    })
}

fn needed_length(length: Option<Length>, quantity: &'static str) -> Result<Length, Error> {
    length.ok_or_else(|| Error::NoValue {
        quantity,
        subject: "the ply, for EN 1993-1-8 Table 3.4".into(),
        reason: "it was not given",
    })
}

fn factor(name: &'static str, factor: f64) -> Result<f64, Error> {
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

impl PlyResistance {
    /// The load of one bolt beside the resistance of ply number `ply`, counted from 1 at the head.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the method defines no resistance at that level; [`Error::OutOfRange`] for a load
    /// that is negative or not finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::check::{Level, Place};
    /// use shankline::strength::ply::{Ply, PlyMethod};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let plate = Ply::of(PlyMaterial::find("ASTM A36 steel")?, inches(0.5), inches(0.8125));
    /// let bearing = plate.resistances(inches(0.75), None, PlyMethod::MachineDesign { design_factor: 2.0 })?[0];
    /// let check = bearing.check(pounds_force(5000.0), Level::Allowable, 2)?;
    /// assert_eq!(check.place, Place::Ply(2));
    /// # Ok(())
    /// # }
    /// ```
    pub fn check(&self, load: Force, level: Level, ply: usize) -> Result<Check, Error> {
        let check = Check::new(
            self.mode,
            Place::Ply(ply),
            load,
            self.resistance.at(level)?,
            level,
        )?;
        Ok(check.by(self.method.name()).warned(self.cautions))
    }

    /// What the user must be told.
    ///
    /// ```
    /// # use shankline::strength::ply::PlyResistance;
    /// fn print(resistance: &PlyResistance) {
    ///     for caution in resistance.cautions().iter() {
    ///         println!("{caution}");
    ///     }
    /// }
    /// ```
    #[must_use]
    pub const fn cautions(&self) -> Cautions {
        self.cautions
    }

    /// The working.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::ply::{Ply, PlyMethod};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let plate = Ply::of(PlyMaterial::find("ASTM A36 steel")?, inches(0.5), inches(0.8125));
    /// for mode in plate.resistances(inches(0.75), None, PlyMethod::MachineDesign { design_factor: 2.0 })? {
    ///     mode.derivation().check()?;
    /// }
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let ply = &self.ply;
        let mut area = Step::new("area", "A", self.area_formula, self.area)
            .with("t", ply.thickness)
            .with("d", self.diameter)
            .with("dh", ply.hole)
            .with("in", inches(1.0));
        for (symbol, length) in [
            ("e1", ply.end_distance),
            ("p1", ply.pitch),
            ("w", ply.width),
        ] {
            if let Some(length) = length {
                area = area.with(symbol, length);
            }
        }
        let coefficient = if self.method == PlyMethod::En1993 && self.mode == Mode::Bearing {
            self.en_working()
        } else {
            Derivation::new("")
                .step(Step::given("coefficient", "c", self.coefficient).source(self.method.name()))
        };
        let mut derivation = Derivation::new(alloc::format!("Ply: {}", self.mode))
            .and(coefficient)
            .step(Step::given("strength", "F", self.stress))
            .step(area);
        let Some(nominal) = self.resistance.nominal else {
            return derivation;
        };
        derivation = derivation.step(
            Step::new("nominal resistance", "Rn", "c * F * A", nominal)
                .with("c", self.coefficient)
                .with("F", self.stress)
                .with("A", self.area),
        );
        if let (Some(factor), Some(design)) = (self.resistance_factor, self.resistance.design) {
            derivation = derivation.step(
                Step::new("design resistance", "Rd", "phi * Rn", design)
                    .with("phi", factor)
                    .with("Rn", nominal),
            );
        }
        if let (Some(factor), Some(allowable)) = (self.safety_factor, self.resistance.allowable) {
            derivation = derivation.step(
                Step::new("allowable load", "Ra", "Rn / n", allowable)
                    .with("Rn", nominal)
                    .with("n", factor),
            );
        }
        derivation
    }

    /// k1 and ab of EN 1993-1-8 Table 3.4, with the distances that are known.
    fn en_working(&self) -> Derivation {
        let ply = &self.ply;
        let mut alpha = Vec::from(["1"]);
        let mut k1 = Vec::from(["2.5"]);
        let mut terms = Vec::from([("d0", Amount::from(ply.hole)), ("fu", self.stress.into())]);
        for (known, symbol, limit, list) in [
            (ply.end_distance, "e1", "e1 / (3 * d0)", &mut alpha),
            (ply.edge_distance, "e2", "2.8 * e2 / d0 - 1.7", &mut k1),
        ] {
            if let Some(length) = known {
                list.push(limit);
                terms.push((symbol, length.into()));
            }
        }
        for (known, symbol, limit, list) in [
            (ply.pitch, "p1", "p1 / (3 * d0) - 1 / 4", &mut alpha),
            (ply.gauge, "p2", "1.4 * p2 / d0 - 1.7", &mut k1),
        ] {
            if let Some(length) = known {
                list.push(limit);
                terms.push((symbol, length.into()));
            }
        }
        if let Some(bolt) = self.bolt_tensile_strength {
            alpha.push("fub / fu");
            terms.push(("fub", bolt.into()));
        }
        let hole = match ply.hole_kind {
            HoleKind::Standard => 1.0,
            HoleKind::Oversize => 0.8,
            HoleKind::LongSlotAcross => 0.6,
        };
        let formula = alloc::format!("ch * min({}) * min({})", k1.join(", "), alpha.join(", "));
        let step = Step::new("coefficient ch k1 ab", "c", formula, self.coefficient)
            .with("ch", hole)
            .source(self.method.name());
        let step = terms
            .into_iter()
            .fold(step, |step, (symbol, value)| step.with(symbol, value));
        Derivation::new("").step(step)
    }
}
