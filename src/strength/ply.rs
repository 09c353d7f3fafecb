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
//! recalled); EN 1993-1-8:2005 Tables 3.3 and 3.4 (the page of 3.4 itself read, with its factors for
//! oversize holes and slots) and EN 1993-1-1 6.2.3 in a European design guide; MIL-HDBK-5 as quoted. AISC's
//! block shear and EN's are in [`BlockShear`].

mod asked;
mod block;
mod distances;
mod result;

pub use block::{BlockMethod, BlockResistance, BlockShear, Stagger, StaggerRule, block_shear};
pub use distances::{DistanceKind, ShortDistance};

use super::check::{Mode, Resistance};
use asked::Asked;

use super::shear::AiscEdition;
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, positive, sane_length, sane_stress};
use crate::tables::plies::PlyMaterial;
use crate::units::{Area, Length, Stress};
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
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
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
    /// The method, if the numbers in it are in their ranges; a check of a ply checks them too, but only where the
    /// method is used.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a factor that is not from 1 to 100.
    ///
    /// ```
    /// use shankline::strength::ply::PlyMethod;
    /// assert!(PlyMethod::MachineDesign { design_factor: -3.0 }.checked().is_err());
    /// ```
    pub fn checked(self) -> Result<Self, Error> {
        match self {
            Self::MachineDesign { design_factor } => asked::factor("design factor", design_factor),
            Self::MilHdbk5 { ultimate_factor } => asked::factor("ultimate factor", ultimate_factor),
            Self::Aisc360 { .. } | Self::En1993 => Ok(1.0),
        }
        .map(|_| self)
    }

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

    fn cautions(self, mode: Mode, hole: HoleKind) -> Cautions {
        let section = matches!(mode, Mode::NetSection | Mode::GrossSection);
        let recalled = match self {
            Self::Aisc360 { .. } if section => Some("AISC 360 D2"),
            Self::Aisc360 { .. } if hole == HoleKind::LongSlotAcross => {
                Some("AISC 360 J3.10, 2.0 and 1.0 of long slots")
            }
            Self::Aisc360 {
                deformation_matters: false,
                ..
            } => Some("AISC 360 J3.10, 3.0 and 1.5"),
            Self::Aisc360 {
                edition: AiscEdition::E2016,
                ..
            } => Some("AISC 360-16 J3.10"),
            Self::Aisc360 {
                edition: AiscEdition::E2022,
                ..
            } => Some("AISC 360-22 J3.11"),
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
    /// Oversize holes: EN takes 0.8 of the bearing.
    Oversize,
    /// Long slots across the load: AISC 2.0 and 1.0, recalled; EN 0.6 of the bearing.
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
}

impl Ply {
    /// The resistance in every mode that the method has and the known dimensions allow.
    ///
    /// `bolt_tensile_strength` is fub of EN 1993-1-8, which has no bearing without it; the other methods do
    /// not ask for it.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a dimension or strength that is not positive and finite, a hole smaller than
    /// the bolt, a distance inside the hole, or a factor that is not from 1 to 100; [`Error::NoValue`] if the
    /// strength or distance the method starts from is not given.
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
        // Also where the method has no use for it: the result keeps it.
        if let Some(bolt) = bolt_tensile_strength {
            sane_stress("tensile strength of the bolt", bolt)?;
        }
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
