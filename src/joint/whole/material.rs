//! Materials of plies as the modes ask for them, whether a table has them or the caller.

use crate::caution::Cautions;
use crate::error::Error;
use crate::joint::whole::Need;
use crate::joint::{
    JointMaterial, JointTimber, MaterialKind, OwnMaterial, OwnTimber, TimberFigures,
};
use crate::strength::ply::Ply;
use crate::strength::strip::ThreadMaterial;
use crate::strength::surface::SurfaceLimit;
use crate::strength::timber::{TimberMember, TimberMethod, Wood};
use crate::tables::heat::PlyTemperatureLimit;
use crate::tables::plies::{PlyBearing, PlyMaterial};
use crate::tables::surface::PressureEdition;
use crate::tables::timber::{Timber, TimberCompression};
use crate::units::{Angle, Length, Stress, TemperatureCoefficient, megapascals};

/// The material of a ply or tapped part with its row.
#[derive(Clone, Copy)]
pub(super) enum CaseMaterial<'a> {
    Listed(&'static PlyMaterial),
    Own(&'a OwnMaterial),
}

/// Strengths at a thickness.
#[derive(Clone, Copy)]
pub(super) struct PlyStrengths {
    pub(super) yields: Option<Stress>,
    pub(super) breaks: Option<Stress>,
}

impl<'a> CaseMaterial<'a> {
    pub(super) fn of(material: &'a JointMaterial) -> Result<Self, Error> {
        Ok(match material {
            JointMaterial::Listed(name) => Self::Listed(PlyMaterial::find(name)?),
            JointMaterial::Own(own) => Self::Own(own),
        })
    }

    /// Whether it is a steel such as the structural codes are written for: none that is stainless.
    pub(super) fn is_carbon_steel(self) -> bool {
        match self {
            Self::Listed(row) => row.is_carbon_steel(),
            Self::Own(own) => own.kind == MaterialKind::CarbonSteel,
        }
    }

    /// Whether it may be brittle in hard frost.
    pub(super) fn may_be_brittle(self) -> bool {
        match self {
            Self::Listed(row) => row.is_carbon_steel() || row.name.contains("iron"),
            Self::Own(own) => !matches!(
                own.kind,
                MaterialKind::StainlessSteel | MaterialKind::Aluminium
            ),
        }
    }

    /// Steel; of listed materials by the modulus of elasticity: nothing else in the table of plies comes near.
    pub(super) fn is_steel(self) -> bool {
        const STEEL: [Stress; 2] = [megapascals(185e3), megapascals(215e3)];
        match self {
            Self::Listed(row) => (STEEL[0]..=STEEL[1]).contains(&row.elastic_modulus_min),
            Self::Own(own) => matches!(
                own.kind,
                MaterialKind::CarbonSteel | MaterialKind::StainlessSteel
            ),
        }
    }

    pub(super) const fn elastic_modulus(self) -> Option<Stress> {
        match self {
            Self::Listed(row) => Some(row.elastic_modulus_min),
            Self::Own(own) => own.elastic_modulus,
        }
    }

    /// The coefficient of expansion, or what is missing.
    pub(super) fn expansion(self) -> Result<TemperatureCoefficient, Need> {
        let why = "no coefficient of expansion of its material is known";
        match self {
            Self::Listed(row) => row.expansion.ok_or(Need::Method(why)),
            Self::Own(own) => own.expansion.ok_or(Need::Expansion),
        }
    }

    /// The strengths that hold at a thickness. Those of the caller hold at any that the stack was built with.
    pub(super) fn at_thickness(self, thickness: Length) -> Result<PlyStrengths, Error> {
        match self {
            Self::Listed(row) => row.at_thickness(thickness).map(|row| PlyStrengths {
                yields: row.yield_strength,
                breaks: row.tensile_strength,
            }),
            Self::Own(_) => Ok(self.without_thickness()),
        }
    }

    /// The strengths where no thickness is known: none of a material whose strengths go by it.
    pub(super) const fn without_thickness(self) -> PlyStrengths {
        let (yields, breaks) = match self {
            Self::Listed(row) => (row.yield_strength, row.tensile_strength),
            Self::Own(own) => (own.yield_strength, own.tensile_strength),
        };
        PlyStrengths { yields, breaks }
    }

    /// A ply around a hole; without strengths outside the thicknesses they hold for.
    pub(super) fn ply(self, thickness: Length, hole: Length) -> Ply {
        match self {
            Self::Listed(row) => Ply::of(row, thickness, hole),
            Self::Own(own) => Ply {
                yield_strength: own.yield_strength,
                tensile_strength: own.tensile_strength,
                ..Ply::without_strengths(thickness, hole)
            },
        }
    }

    /// The ply with what its table has for its bearing strengths, and that they were recalled; the caller states those of the ply,
    /// not of a material.
    pub(super) fn with_bearing(self, ply: Ply) -> (Ply, Cautions) {
        let Self::Listed(row) = self else {
            return (ply, Cautions::NONE);
        };
        let found = ply.with_bearing_of(row);
        let cautions = (found.bearing_strength.and(ply.end_distance))
            .and_then(|end| row.bearing_at((end / ply.hole).value).ok())
            .map_or(Cautions::NONE, PlyBearing::cautions);
        (found, cautions)
    }

    /// Whether its table has bearing strengths, which go by the end distance.
    pub(super) fn has_bearing(self) -> bool {
        matches!(self, Self::Listed(row) if !row.bearing().is_empty())
    }

    /// What it bears under a head or nut, or what is missing. The yield strength does not stand in for a limit that
    /// the caller does not state.
    pub(super) fn surface_limit(self, thickness: Option<Length>) -> Result<SurfaceLimit, Need> {
        let limit = match self {
            Self::Listed(row) => {
                let there = thickness.and_then(|thickness| row.at_thickness(thickness).ok());
                SurfaceLimit::of_ply(there.as_ref().unwrap_or(row), PressureEdition::Vdi2230_2003)
            }
            Self::Own(own) => {
                SurfaceLimit::stated(own.surface_pressure.ok_or(Need::SurfacePressure)?)
            }
        };
        limit.map_err(|error| Need::Refused(error.into()))
    }

    /// The material of the thread of a tapped part, or what is missing.
    pub(super) fn thread(self, engaged: Length) -> Result<ThreadMaterial, Need> {
        let refused = |error: Error| Need::Refused(error.into());
        match self {
            Self::Listed(row) => row
                .at_thickness(engaged)
                .and_then(|row| ThreadMaterial::of_ply(&row))
                .map_err(refused),
            Self::Own(own) => {
                let breaks = own.tensile_strength.ok_or(Need::TensileStrength)?;
                // FED-STD-H28/2 takes half of the tensile strength for the shear strength: what is weaker in shear is
                // taken for a material of so much less.
                let ratio = own.shear_ratio.ok_or(Need::ShearRatio)?;
                ThreadMaterial::new((2.0 * ratio).min(1.0) * breaks, None).map_err(refused)
            }
        }
    }

    /// To which temperature it has its strengths, if a table says so.
    pub(super) fn temperature_limit(self) -> Option<&'static PlyTemperatureLimit> {
        match self {
            Self::Listed(row) => PlyTemperatureLimit::of(row),
            Self::Own(_) => None,
        }
    }
}

/// The timber of a ply with its row.
#[derive(Clone, Copy)]
pub(super) enum CaseTimber<'a> {
    Listed(&'static Timber),
    Own(&'a OwnTimber),
}

impl<'a> CaseTimber<'a> {
    pub(super) fn of(timber: &'a JointTimber) -> Result<Self, Error> {
        Ok(match timber {
            JointTimber::Listed(name) => Self::Listed(Timber::find(name)?),
            JointTimber::Own(own) => Self::Own(own),
        })
    }

    pub(super) const fn member(self, thickness: Length, grain_angle: Angle) -> TimberMember {
        let own = match self {
            Self::Listed(row) => return TimberMember::wood(thickness, row, grain_angle),
            Self::Own(own) => own,
        };
        let (specific_gravity, characteristic_density) = match own.figures {
            TimberFigures::Nds {
                specific_gravity, ..
            } => (Some(specific_gravity), None),
            TimberFigures::En1995 {
                characteristic_density,
                ..
            } => (None, Some(characteristic_density)),
        };
        let wood = Wood {
            kind: own.kind,
            specific_gravity,
            characteristic_density,
            grain_angle,
            provenance: None,
        };
        TimberMember {
            thickness,
            material: crate::strength::timber::MemberMaterial::Wood(wood),
        }
    }

    /// The strength across the grain, if it is one of the method.
    pub(super) fn compression_across(self, method: TimberMethod) -> Option<Stress> {
        match (self, method) {
            (Self::Listed(row), _) => row.compression().and_then(TimberCompression::strength),
            (Self::Own(own), method) => match (own.figures, method) {
                (
                    TimberFigures::Nds {
                        compression_across, ..
                    },
                    TimberMethod::Nds { .. },
                )
                | (
                    TimberFigures::En1995 {
                        compression_across, ..
                    },
                    TimberMethod::En1995 { .. },
                ) => compression_across,
                _ => None,
            },
        }
    }
}
