//! Members of a timber joint.

use super::{TimberMethod, check_diameter, en, nds};
use crate::caution::Caution;
use crate::error::{Allowed, Error, out_of_range, part_length, sane_length, sane_stress};
use crate::source::Provenance;
use crate::tables::timber::{Timber, TimberKind};
use crate::units::{Angle, Density, Force, Length, Stress, degrees};

/// Timber as a member: its one number for each publisher, and how the load crosses its grain.
///
/// ```
/// use shankline::{strength::timber::Wood, tables::timber::Timber, units::degrees};
/// # fn main() -> Result<(), shankline::Error> {
/// let post = Wood::of(Timber::find("Douglas Fir-Larch")?, degrees(90.0));
/// assert_eq!(post.specific_gravity, Some(0.50));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Wood {
    /// Softwood or hardwood.
    pub kind: TimberKind,
    /// Specific gravity G by NDS, 0.31 to 0.73 in its table.
    pub specific_gravity: Option<f64>,
    /// Characteristic density `rho_k` by EN 338 or EN 14080, 250 to 1000 kg/m3.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub characteristic_density: Option<Density>,
    /// Angle between load and grain, 0 (along the grain) to 90 deg.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub grain_angle: Angle,
    /// Where gravity or density were read; none for numbers of the caller's own. Recalled ones bring a
    /// caution to the result.
    pub provenance: Option<Provenance>,
}

impl Wood {
    /// A timber of the tables, loaded at an angle to its grain.
    ///
    /// ```
    /// use shankline::{strength::timber::Wood, tables::timber::Timber, units::degrees};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let beam = Wood::of(Timber::find("GL 24h")?, degrees(0.0));
    /// assert!(beam.specific_gravity.is_none()); // European classes have none
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn of(timber: &Timber, grain_angle: Angle) -> Self {
        Self {
            kind: timber.kind,
            specific_gravity: timber.specific_gravity,
            characteristic_density: timber.characteristic_density,
            grain_angle,
            provenance: Some(timber.provenance),
        }
    }

    fn caution(&self) -> Option<Caution> {
        let value = if self.specific_gravity.is_some() {
            "specific gravity"
        } else {
            "characteristic density"
        };
        Caution::from_memory(value, self.provenance?)
    }

    pub(super) fn check_angle(&self) -> Result<(), Error> {
        let right = degrees(90.0);
        let angle = self.grain_angle;
        if angle.value >= 0.0 && angle <= right {
            return Ok(());
        }
        let allowed = Allowed::FromTo(Angle::default().into(), right.into());
        Err(out_of_range("angle of load to grain", angle, allowed))
    }

    /// Dowel bearing strength Fe by NDS for a bolt of diameter D, at the angle of the grain.
    ///
    /// Fe = 11200 G psi along and 6100 G^1.45 / sqrt(D) psi across the grain, D in inches; between them
    /// Hankinson: Fpar Fperp / (Fpar sin2 a + Fperp cos2 a). Not rounded to the 50 psi of its table. Source:
    /// NDS 2018 Table 12.3.3 and Eq. 12.3-11.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] without a specific gravity; [`Error::OutOfRange`] for one that is not from 0.31 to
    /// 0.73, a diameter that is not from 1/4 to 1 in, or an angle that is not from 0 to 90 deg.
    ///
    /// ```
    /// use shankline::{strength::timber::Wood, tables::timber::Timber};
    /// use shankline::units::{degrees, inches, pound_force_per_square_inch};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let along = Wood::of(Timber::find("Douglas Fir-Larch")?, degrees(0.0));
    /// let strength = along.dowel_bearing_strength(inches(0.75))?;
    /// assert!((strength.get::<pound_force_per_square_inch>() - 5600.0).abs() < 1e-6);
    /// # Ok(())
    /// # }
    /// ```
    pub fn dowel_bearing_strength(&self, diameter: Length) -> Result<Stress, Error> {
        let method = TimberMethod::Nds {
            bending_yield: Stress::default(),
            adjustment: 1.0,
        };
        check_diameter(diameter, method)?;
        nds::bearing(self, diameter).map(crate::units::from_base)
    }

    /// Embedment strength `fh,a,k` by EN 1995-1-1 for a bolt of diameter d, at the angle of the grain.
    ///
    /// fh,0,k = 0.082 (1 - 0.01 d) `rho_k` N/mm2 with d in mm and `rho_k` in kg/m3, over k90 sin2 a + cos2 a.
    /// Source: EN 1995-1-1:2004 Eqs. 8.31 to 8.33.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] without a characteristic density; [`Error::OutOfRange`] for one that is not from 250 to
    /// 1000 kg/m3, a diameter that is not from 6 to 30 mm, or an angle that is not from 0 to 90 deg.
    ///
    /// ```
    /// use shankline::{strength::timber::Wood, tables::timber::Timber};
    /// use shankline::units::{degrees, megapascals, millimetres};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let along = Wood::of(Timber::find("C24")?, degrees(0.0));
    /// // 0.082 x 0.88 x 350
    /// assert!((along.embedment_strength(millimetres(12.0))? - megapascals(25.256)).abs() < megapascals(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn embedment_strength(&self, diameter: Length) -> Result<Stress, Error> {
        let method = TimberMethod::En1995 {
            axial: Force::default(),
            kmod: 1.0,
            gamma_m: 1.0,
        };
        check_diameter(diameter, method)?;
        en::embedment(self, diameter).map(crate::units::from_base)
    }
}

/// What a member of a timber joint is made of.
///
/// ```
/// use shankline::{strength::timber::MemberMaterial, units::{inches, ksi}};
/// let plate = MemberMaterial::Steel { tensile_strength: ksi(58.0), hole: inches(0.8125) };
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum MemberMaterial {
    /// Timber.
    Wood(Wood),
    /// Steel plate.
    Steel {
        /// Tensile strength Fu.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        tensile_strength: Stress,
        /// Diameter of its hole: EN counts a plate as thick only if the bolt fits well.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        hole: Length,
    },
}

/// One member of a timber joint.
///
/// ```
/// use shankline::strength::timber::{MemberMaterial, TimberMember, Wood};
/// use shankline::{tables::timber::Timber, units::{degrees, millimetres}};
/// # fn main() -> Result<(), shankline::Error> {
/// let beam = TimberMember {
///     thickness: millimetres(75.0),
///     material: MemberMaterial::Wood(Wood::of(Timber::find("C24")?, degrees(0.0))),
/// };
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct TimberMember {
    /// Thickness: the length on which it bears on the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thickness: Length,
    /// What it is made of.
    pub material: MemberMaterial,
}

impl TimberMember {
    /// A timber of the tables.
    ///
    /// ```
    /// use shankline::strength::timber::TimberMember;
    /// use shankline::{tables::timber::Timber, units::{degrees, inches}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let joist = TimberMember::wood(inches(1.5), Timber::find("Hem-Fir")?, degrees(90.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn wood(thickness: Length, timber: &Timber, grain_angle: Angle) -> Self {
        Self {
            thickness,
            material: MemberMaterial::Wood(Wood::of(timber, grain_angle)),
        }
    }

    /// A steel plate.
    ///
    /// ```
    /// use shankline::{strength::timber::TimberMember, units::{inches, ksi}};
    /// let plate = TimberMember::steel(inches(0.25), ksi(58.0), inches(0.8125));
    /// ```
    #[must_use]
    pub const fn steel(thickness: Length, tensile_strength: Stress, hole: Length) -> Self {
        Self {
            thickness,
            material: MemberMaterial::Steel {
                tensile_strength,
                hole,
            },
        }
    }

    pub(super) const fn is_steel(&self) -> bool {
        matches!(self.material, MemberMaterial::Steel { .. })
    }

    pub(super) fn caution(&self) -> Option<Caution> {
        match self.material {
            MemberMaterial::Wood(wood) => wood.caution(),
            MemberMaterial::Steel { .. } => None,
        }
    }

    pub(super) fn check(&self, diameter: Length) -> Result<(), Error> {
        part_length("thickness of a member", self.thickness)?;
        match self.material {
            MemberMaterial::Wood(wood) => wood.check_angle(),
            MemberMaterial::Steel {
                tensile_strength,
                hole,
            } => {
                sane_stress("tensile strength of the plate", tensile_strength)?;
                sane_length("hole of the plate", hole)?;
                if hole < diameter {
                    let allowed = Allowed::AtLeast(diameter.into());
                    return Err(out_of_range("hole of the plate", hole, allowed));
                }
                Ok(())
            }
        }
    }
}
