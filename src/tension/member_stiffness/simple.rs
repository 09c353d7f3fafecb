//! Members of one material: the exponential fit, and the tube.

use core::f64::consts::PI;

use super::{Layer, MemberStiffness, MembersMethod};
use crate::error::Error;
use crate::math;
use crate::tension::{part_length, sane_stiffness, within};
use crate::units::{Length, from_base};

/// Materials of the exponential fit.
///
/// ```
/// use shankline::tension::WilemanMaterial;
/// assert_eq!(WilemanMaterial::Steel.constants(), (0.78715, 0.62873));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum WilemanMaterial {
    /// Steel.
    Steel,
    /// Aluminium; constants recalled, not read.
    Aluminium,
    /// Copper; constants recalled, not read.
    Copper,
    /// Gray cast iron.
    GrayCastIron,
    /// Any material.
    General,
}

impl WilemanMaterial {
    /// The constants A and B.
    ///
    /// ```
    /// # use shankline::tension::WilemanMaterial;
    /// assert_eq!(WilemanMaterial::GrayCastIron.constants(), (0.77871, 0.61616));
    /// ```
    #[must_use]
    pub const fn constants(self) -> (f64, f64) {
        match self {
            Self::Steel => (0.787_15, 0.628_73),
            Self::Aluminium => (0.796_70, 0.638_16),
            Self::Copper => (0.795_68, 0.635_53),
            Self::GrayCastIron => (0.778_71, 0.616_16),
            Self::General => (0.789_52, 0.629_14),
        }
    }
}

/// Stiffness by the exponential fit km = E d A exp(B d / l), for members of one material whose
/// bearing face is 1.5 d wide.
///
/// Source: Wileman, Choudhury and Green, Journal of Mechanical Design 113 (1991), by Shigley, 9th
/// ed., Eq. 8-23 and Table 8-8: steel, gray cast iron and general expression were read there, the
/// constants of aluminium and copper are recalled and bring a caution. Checked against Example 8-4.
///
/// # Errors
///
/// [`Error::OutOfRange`] for lengths outside the [ranges](crate::tension#ranges), or a bolt so short that the
/// stiffness is outside them.
///
/// ```
/// # use shankline::{prelude::*, tension::{Layer, WilemanMaterial, wileman}};
/// let members = Layer::new(millimetres(40.0), megapascals(70e3)).unwrap();
/// let km = wileman(WilemanMaterial::Aluminium, millimetres(12.0), members).unwrap();
/// assert_eq!(km.cautions().iter().count(), 1);
/// ```
#[inline]
pub fn wileman(
    material: WilemanMaterial,
    diameter: Length,
    members: Layer,
) -> Result<MemberStiffness, Error> {
    part_length("nominal diameter", diameter)?;
    let (a, b) = material.constants();
    let stiffness = members.modulus.value
        * diameter.value
        * a
        * math::exp(b * (diameter / members.thickness).value);
    Ok(MemberStiffness {
        method: MembersMethod::Wileman { material, diameter },
        members,
        stiffness: sane_stiffness("stiffness of the members", from_base(stiffness))?,
    })
}

/// Stiffness of a tube, E pi (Dc^2 - dh^2) / (4 l): for members no wider than the head, such as a
/// bushing.
///
/// Source: definition of the modulus of elasticity.
///
/// # Errors
///
/// [`Error::OutOfRange`] for lengths outside the [ranges](crate::tension#ranges), or a hole as wide as the tube.
///
/// ```
/// use shankline::{prelude::*, tension::{Layer, hollow_cylinder}};
/// let bush = Layer::new(millimetres(30.0), megapascals(207e3)).unwrap();
/// let k = hollow_cylinder(millimetres(24.0), millimetres(13.0), bush).unwrap();
/// k.derivation().check().unwrap();
/// ```
#[inline]
pub fn hollow_cylinder(
    outside: Length,
    hole: Length,
    members: Layer,
) -> Result<MemberStiffness, Error> {
    part_length("hole", hole)?;
    part_length("outside diameter", outside)?;
    within(
        "outside diameter",
        outside,
        hole * (1.0 + 1e-6),
        crate::error::LONGEST,
    )?;
    let stiffness =
        members.modulus * PI * (outside * outside - hole * hole) / (4.0 * members.thickness);
    Ok(MemberStiffness {
        method: MembersMethod::HollowCylinder { outside, hole },
        members,
        stiffness: sane_stiffness("stiffness of the members", from_base(stiffness.value))?,
    })
}
