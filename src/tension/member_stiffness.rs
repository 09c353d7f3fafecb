//! Stiffness of what the bolt clamps.

use super::{part_length, sane_stiffness, sane_stress};
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::Error;
use crate::tables::methods;
use crate::units::{Length, Stiffness, Stress, from_base};

mod cones;
mod simple;
mod vdi;

pub use cones::{Cones, Frusta, FrustumPiece};
pub use simple::{WilemanMaterial, hollow_cylinder, wileman};
pub use vdi::{ClampEnd, VdiPlates};

/// One clamped layer: a ply, a washer, or the part of a tapped plate within the grip.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tension::Layer;
/// assert!(Layer::new(inches(0.5), ksi(30e3)).is_ok());
/// assert!(Layer::new(inches(0.0), ksi(30e3)).is_err());
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "RawLayer")
)]
#[non_exhaustive]
pub struct Layer {
    /// Thickness.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thickness: Length,
    /// Modulus of elasticity.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub modulus: Stress,
}

#[cfg(feature = "serde")]
#[derive(serde::Deserialize)]
#[serde(
    crate = "crate::objects",
    deny_unknown_fields,
    expecting = "a layer with thickness and modulus"
)]
struct RawLayer {
    thickness: crate::units::quantity::RawQuantity,
    modulus: crate::units::quantity::RawQuantity,
}

#[cfg(feature = "serde")]
impl TryFrom<RawLayer> for Layer {
    type Error = alloc::string::String;
    fn try_from(raw: RawLayer) -> Result<Self, Self::Error> {
        Self::new(
            raw.thickness.named("thickness")?,
            raw.modulus.named("modulus")?,
        )
        .map_err(|error| alloc::format!("{error}"))
    }
}

impl Layer {
    /// A layer.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a thickness or modulus outside the [ranges](crate::tension#ranges).
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::Layer};
    /// assert!(Layer::new(millimetres(8.0), megapascals(f64::NAN)).is_err());
    /// ```
    pub fn new(thickness: Length, modulus: Stress) -> Result<Self, Error> {
        part_length("thickness of a layer", thickness)?;
        sane_stress("modulus of elasticity of a layer", modulus)?;
        Ok(Self { thickness, modulus })
    }
}

/// Springs one behind the other: 1 / k = sum of 1 / ki.
///
/// Members of two materials, each half the grip: each half has twice the stiffness that the whole
/// grip would have of its material, and the halves are in series (Shigley, problems 8-19 and 8-20).
///
/// # Errors
///
/// [`Error::OutOfRange`] without springs, or for a stiffness outside the [ranges](crate::tension#ranges).
///
/// ```
/// use shankline::{tension::in_series, units::newtons_per_millimetre};
/// let k = in_series(&[newtons_per_millimetre(2e5), newtons_per_millimetre(2e5)]).unwrap();
/// assert!(((k / newtons_per_millimetre(1e5)).value - 1.0).abs() < 1e-12);
/// ```
pub fn in_series(springs: &[Stiffness]) -> Result<Stiffness, Error> {
    let mut resilience = 0.0;
    for &spring in springs {
        sane_stiffness("stiffness of a spring", spring)?;
        resilience += 1.0 / spring.value;
    }
    sane_stiffness("stiffness in series", from_base(1.0 / resilience))
}

/// A method for members of one material.
///
/// ```
/// use shankline::{prelude::*, tension::{MembersMethod, hollow_cylinder, Layer}};
/// let bush = Layer::new(millimetres(30.0), megapascals(207e3)).unwrap();
/// let k = hollow_cylinder(millimetres(24.0), millimetres(13.0), bush).unwrap();
/// assert!(matches!(k.method, MembersMethod::HollowCylinder { .. }));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum MembersMethod {
    /// Pressure cones in closed form, Shigley Eq. 8-22.
    Identical {
        /// The cones.
        cones: Cones,
    },
    /// Exponential fit of Wileman, Choudhury and Green (1991), Shigley Eq. 8-23.
    Wileman {
        /// Material of the constants.
        material: WilemanMaterial,
        /// Diameter of the bolt.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        diameter: Length,
    },
    /// A tube: E A / l.
    HollowCylinder {
        /// Outside diameter.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        outside: Length,
        /// Hole.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        hole: Length,
    },
    /// Deformation cone, and sleeve where the members end before it, VDI 2230 Part 1.
    #[cfg_attr(feature = "serde", serde(rename = "vdi_2230"))]
    Vdi2230 {
        /// The plates.
        plates: VdiPlates,
        /// Tangent of the cone angle.
        tangent: f64,
        /// Length of all cones together.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        cone_length: Length,
    },
}

/// Stiffness of members of one material.
///
/// ```
/// use shankline::{prelude::*, tension::{Layer, WilemanMaterial, wileman}};
/// // Shigley, Example 8-4: 8.81 Mlbf/in.
/// let members = Layer::new(inches(1.5), ksi(14e3)).unwrap();
/// let km = wileman(WilemanMaterial::GrayCastIron, inches(0.625), members).unwrap();
/// let mlbf_in = shankline::units::pounds_force_per_inch(1e6);
/// assert!(((km.stiffness / mlbf_in).value - 8.81).abs() < 0.005);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct MemberStiffness {
    /// Method.
    pub method: MembersMethod,
    /// The whole grip as one layer.
    pub members: Layer,
    /// Stiffness km.
    pub stiffness: Stiffness,
}

impl MemberStiffness {
    /// What the user of this stiffness must be told, beyond the
    /// [general cautions](crate::caution::GENERAL).
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{Layer, hollow_cylinder}};
    /// let bush = Layer::new(millimetres(30.0), megapascals(207e3)).unwrap();
    /// let k = hollow_cylinder(millimetres(24.0), millimetres(13.0), bush).unwrap();
    /// assert_eq!(k.cautions().iter().count(), 0);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let method = match self.method {
            MembersMethod::Wileman {
                material: WilemanMaterial::Aluminium | WilemanMaterial::Copper,
                ..
            } => Some(methods::WILEMAN_RECALLED),
            MembersMethod::Vdi2230 { .. } => {
                Some(methods::VDI_2230_PART_1_RESILIENCE_OF_THE_PLATES)
            }
            _ => None,
        };
        Cautions::default().with(method.and_then(Caution::of_method))
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{Cones, Layer}};
    /// let members = Layer::new(inches(1.5), ksi(14e3)).unwrap();
    /// let km = Cones::shigley(inches(0.625)).unwrap().identical(members).unwrap();
    /// km.derivation().check().unwrap();
    /// ```
    pub fn derivation(&self) -> Derivation {
        let derivation = Derivation::new("Stiffness of the members");
        let (l, e) = (self.members.thickness, self.members.modulus);
        let step = |formula| Step::new("stiffness of the members", "km", formula, self.stiffness);
        match self.method {
            MembersMethod::Identical { cones } => derivation.step(
                step(
                    "pi * E * d * tan(a) / (2 * ln((l * tan(a) + dw - d) * (dw + d) \
                     / ((l * tan(a) + dw + d) * (dw - d))))",
                )
                .with("E", e)
                .with("d", cones.hole)
                .with("a", cones.half_angle)
                .with("l", l)
                .with("dw", cones.bearing)
                .source(methods::SHIGLEY_9TH_ED_EQ_8_22),
            ),
            MembersMethod::Wileman { material, diameter } => {
                let (a, b) = material.constants();
                derivation.step(
                    step("E * d * A * exp(B * d / l)")
                        .with("E", e)
                        .with("d", diameter)
                        .with("A", a)
                        .with("B", b)
                        .with("l", l)
                        .source(methods::SHIGLEY_9TH_ED_EQ_8_23),
                )
            }
            MembersMethod::HollowCylinder { outside, hole } => derivation.step(
                step("E * pi * (Dc^2 - dh^2) / (4 * l)")
                    .with("E", e)
                    .with("Dc", outside)
                    .with("dh", hole)
                    .with("l", l)
                    .source(methods::BAR_STIFFNESS),
            ),
            MembersMethod::Vdi2230 {
                plates,
                tangent,
                cone_length,
            } => Self::vdi_steps(derivation, plates, tangent, cone_length, l).step(
                step(
                    "pi * E / (2 / (w * dh * t) * ln((dw + dh) * (dw + w * lV * t - dh) \
                         / ((dw - dh) * (dw + w * lV * t + dh))) + 4 * (l - lV) / (DA^2 - dh^2))",
                )
                .with("E", e)
                .with("w", plates.w())
                .with("dh", plates.hole)
                .with("t", tangent)
                .with("dw", plates.bearing)
                .with("lV", cone_length)
                .with("l", l)
                .with("DA", plates.outside)
                .source(methods::VDI2230),
            ),
        }
    }

    fn vdi_steps(
        derivation: Derivation,
        plates: VdiPlates,
        tangent: f64,
        cone_length: Length,
        l: Length,
    ) -> Derivation {
        let formula = match plates.end {
            ClampEnd::ThroughBolt => "0.362 + 0.032 * ln(l / dw / 2) + 0.153 * ln(DA / dw)",
            ClampEnd::TappedHole => "0.348 + 0.013 * ln(l / dw) + 0.193 * ln(DA / dw)",
        };
        derivation
            .step(
                Step::new("tangent of the cone angle", "t", formula, tangent)
                    .with("l", l)
                    .with("dw", plates.bearing)
                    .with("DA", plates.outside)
                    .source(methods::VDI2230),
            )
            .step(
                Step::new(
                    "length of the cones",
                    "lV",
                    "min(l, (DA - dw) / (w * t))",
                    cone_length,
                )
                .with("l", l)
                .with("DA", plates.outside)
                .with("dw", plates.bearing)
                .with("w", plates.w())
                .with("t", tangent),
            )
    }
}
