//! Stiffness of what the bolt clamps.

use alloc::{format, vec::Vec};
use core::f64::consts::PI;

use super::{part_length, sane_stiffness, sane_stress, within};
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range};
use crate::math;
use crate::units::{Angle, Length, Stiffness, Stress, degrees, from_base};

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
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub thickness: Length,
    /// Modulus of elasticity.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub modulus: Stress,
}

#[cfg(feature = "serde")]
#[derive(serde::Deserialize)]
#[serde(deny_unknown_fields, expecting = "a layer with thickness and modulus")]
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
    /// [`Error::OutOfRange`] for a thickness that is none of a part, or a modulus that is none.
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

/// The pressure cones that open from both bearing faces and meet at half the grip.
///
/// Each layer is a frustum, or two where it crosses the middle; washers are layers. The cones are as
/// wide as they grow: for members narrower than that the stiffness is too high (take
/// [`VdiPlates`], which ends the cone at the edge, or [`hollow_cylinder`]).
///
/// Splitting a layer into thinner ones of the same material changes nothing: the frusta add up to
/// the same integral.
///
/// Source: Shigley, Mechanical Engineering Design, 9th ed., section 8-5, Eq. 8-20. Checked against
/// its Examples 8-4 and 8-5.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tension::{Cones, Layer};
/// # fn main() -> Result<(), shankline::Error> {
/// // Example 8-5: washer and steel plate over cast iron, grip 1 in: 17.4 Mlbf/in.
/// let layers = [
///     Layer::new(inches(0.0625), ksi(30e3))?,
///     Layer::new(inches(0.625), ksi(30e3))?,
///     Layer::new(inches(0.3125), ksi(16e3))?,
/// ];
/// let stiffness = Cones::shigley(inches(0.625))?.stiffness(&layers)?;
/// let mlbf_in = shankline::units::pounds_force_per_inch(1e6);
/// assert!(((stiffness / mlbf_in).value - 17.4).abs() < 0.01);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Cones {
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    hole: Length,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    bearing: Length,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    half_angle: Angle,
    #[cfg_attr(feature = "serde", serde(skip))]
    tangent: f64,
}

impl Cones {
    /// Cones for a hole, the diameter of the bearing face and a half angle from 1 to 60 degrees.
    ///
    /// Shigley takes 30 degrees and the nominal diameter of the bolt as the hole; 25 to 33 degrees
    /// fit most joints.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for lengths that are none of a part, a bearing face that is not wider
    /// than the hole, or an angle outside its range.
    ///
    /// ```
    /// use shankline::{prelude::*, tension::Cones, units::degrees};
    /// assert!(Cones::new(millimetres(17.0), millimetres(24.0), degrees(30.0)).is_ok());
    /// assert!(Cones::new(millimetres(17.0), millimetres(16.0), degrees(30.0)).is_err());
    /// ```
    pub fn new(hole: Length, bearing: Length, half_angle: Angle) -> Result<Self, Error> {
        part_length("hole", hole)?;
        part_length("diameter of the bearing face", bearing)?;
        // The ratio is under the logarithm: below this it would be all rounding.
        within(
            "diameter of the bearing face",
            bearing,
            hole * (1.0 + 1e-6),
            hole * 1e6,
        )?;
        within("half angle", half_angle, degrees(1.0), degrees(60.0))?;
        Ok(Self {
            hole,
            bearing,
            half_angle,
            tangent: math::tan(half_angle.value),
        })
    }

    /// Shigley's cones for a bolt of diameter d: hole d, bearing face 1.5 d, 30 degrees.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter that is none of a part.
    ///
    /// ```
    /// use shankline::{prelude::*, tension::Cones};
    /// assert_eq!(Cones::shigley(inches(0.5)).unwrap().bearing_diameter(), inches(0.75));
    /// ```
    pub fn shigley(diameter: Length) -> Result<Self, Error> {
        part_length("nominal diameter", diameter)?;
        Self::new(diameter, 1.5 * diameter, degrees(30.0))
    }

    /// The diameter of the bearing face.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::Cones};
    /// assert_eq!(Cones::shigley(inches(1.0)).unwrap().bearing_diameter(), inches(1.5));
    /// ```
    #[must_use]
    pub const fn bearing_diameter(&self) -> Length {
        self.bearing
    }

    /// Stiffness of one frustum of thickness t whose small end has the diameter D:
    /// k = pi E d tan a / ln(((2 t tan a + D - d) (D + d)) / ((2 t tan a + D + d) (D - d))).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a small end that is no wider than the hole.
    ///
    /// ```
    /// use shankline::{prelude::*, tension::{Cones, Layer}};
    /// // Example 8-5, upper frustum: 46.46 Mlbf/in.
    /// let cones = Cones::shigley(inches(0.625)).unwrap();
    /// let layer = Layer::new(inches(0.5), ksi(30e3)).unwrap();
    /// let k = cones.frustum(layer, inches(0.9375)).unwrap();
    /// let mlbf_in = shankline::units::pounds_force_per_inch(1e6);
    /// assert!(((k / mlbf_in).value - 46.46).abs() < 0.005);
    /// ```
    pub fn frustum(&self, layer: Layer, small_diameter: Length) -> Result<Stiffness, Error> {
        within(
            "small diameter of the frustum",
            small_diameter,
            self.hole * (1.0 + 1e-6),
            self.hole * 1e12,
        )?;
        let stiffness =
            from_base(1.0 / self.resilience(layer.thickness, layer.modulus.value, small_diameter));
        sane_stiffness("stiffness of the frustum", stiffness)
    }

    #[inline]
    fn logarithm(&self, thickness: Length, small: Length) -> f64 {
        let (d, s) = (self.hole.value, small.value);
        let large = 2.0 * thickness.value * self.tangent + s;
        math::ln(((large - d) * (s + d)) / ((large + d) * (s - d)))
    }

    #[inline]
    fn resilience(&self, thickness: Length, modulus: f64, small: Length) -> f64 {
        self.logarithm(thickness, small) / (PI * self.tangent * modulus * self.hole.value)
    }

    /// Calls `piece` for each frustum from the head to the nut.
    #[inline]
    fn each_piece(
        &self,
        layers: &[Layer],
        mut piece: impl FnMut(Length, Stress, Length),
    ) -> Length {
        let zero: Length = from_base(0.0);
        let grip = layers.iter().fold(zero, |sum, layer| sum + layer.thickness);
        let middle = 0.5 * grip;
        // A depth of -1e-18 m, by rounding, does no harm.
        let small = |depth: Length| self.bearing + 2.0 * self.tangent * depth;
        let mut top = zero;
        for layer in layers {
            let bottom = top + layer.thickness;
            if top < middle {
                let end = bottom.min(middle);
                piece(end - top, layer.modulus, small(top));
            }
            if bottom > middle {
                let start = top.max(middle);
                piece(bottom - start, layer.modulus, small(grip - bottom));
            }
            top = bottom;
        }
        grip
    }

    /// Stiffness km of the layers, from the head to the nut: all frusta in series.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] without layers, or for a grip beyond any joint.
    ///
    /// ```
    /// use shankline::{prelude::*, tension::{Cones, Layer}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let cones = Cones::shigley(millimetres(16.0))?;
    /// let whole = cones.stiffness(&[Layer::new(millimetres(40.0), megapascals(207e3))?])?;
    /// let halves = cones.stiffness(&[Layer::new(millimetres(20.0), megapascals(207e3))?; 2])?;
    /// assert!(((whole / halves).value - 1.0).abs() < 1e-12);
    /// # Ok(())
    /// # }
    /// ```
    #[inline]
    pub fn stiffness(&self, layers: &[Layer]) -> Result<Stiffness, Error> {
        // The factor of all frusta is taken out of the sum.
        let mut sum = 0.0;
        let grip = self.each_piece(layers, |thickness, modulus, small| {
            sum += self.logarithm(thickness, small) / modulus.value;
        });
        part_length("grip", grip)?;
        let stiffness = from_base(PI * self.tangent * self.hole.value / sum);
        sane_stiffness("stiffness of the members", stiffness)
    }

    /// The frusta one by one, and the stiffness of all.
    ///
    /// # Errors
    ///
    /// Those of [`stiffness`](Self::stiffness).
    ///
    /// ```
    /// use shankline::{prelude::*, tension::{Cones, Layer}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let layers = [Layer::new(inches(1.0), ksi(30e3))?, Layer::new(inches(0.5), ksi(10e3))?];
    /// let frusta = Cones::shigley(inches(0.5))?.frusta(&layers)?;
    /// assert_eq!(frusta.pieces.len(), 3); // the first layer crosses the middle
    /// frusta.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn frusta(&self, layers: &[Layer]) -> Result<Frusta, Error> {
        let stiffness = self.stiffness(layers)?;
        let mut pieces = Vec::with_capacity(layers.len() + 1);
        self.each_piece(layers, |thickness, modulus, small_diameter| {
            let resilience = self.resilience(thickness, modulus.value, small_diameter);
            pieces.push(FrustumPiece {
                thickness,
                modulus,
                small_diameter,
                stiffness: from_base(1.0 / resilience),
            });
        });
        Ok(Frusta {
            cones: *self,
            pieces,
            stiffness,
        })
    }

    /// Stiffness of members of one material and grip l in closed form:
    /// km = pi E d tan a / (2 ln(((l tan a + dw - d) (dw + d)) / ((l tan a + dw + d) (dw - d)))).
    ///
    /// With 30 degrees and dw = 1.5 d this is Shigley's Eq. 8-22.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] as for a [`Layer`].
    ///
    /// ```
    /// use shankline::{prelude::*, tension::{Cones, Layer}};
    /// // Example 8-4: no. 25 cast iron, grip 1.5 in, 5/8 in bolt: 8.95 Mlbf/in.
    /// let cones = Cones::shigley(inches(0.625)).unwrap();
    /// let km = cones.identical(Layer::new(inches(1.5), ksi(14e3)).unwrap()).unwrap();
    /// let mlbf_in = shankline::units::pounds_force_per_inch(1e6);
    /// assert!(((km.stiffness / mlbf_in).value - 8.95).abs() < 0.005);
    /// ```
    pub fn identical(&self, members: Layer) -> Result<MemberStiffness, Error> {
        let half = self.resilience(0.5 * members.thickness, members.modulus.value, self.bearing);
        let stiffness = sane_stiffness("stiffness of the members", from_base(0.5 / half))?;
        Ok(MemberStiffness {
            method: MembersMethod::Identical { cones: *self },
            members,
            stiffness,
        })
    }
}

/// One frustum of [`Frusta`].
///
/// ```
/// # use shankline::{prelude::*, tension::{Cones, Layer}};
/// # fn main() -> Result<(), shankline::Error> {
/// let frusta = Cones::shigley(inches(0.5))?.frusta(&[Layer::new(inches(1.0), ksi(30e3))?])?;
/// assert_eq!(frusta.pieces[0].thickness, inches(0.5));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct FrustumPiece {
    /// Thickness.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub thickness: Length,
    /// Modulus of elasticity.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub modulus: Stress,
    /// Diameter of its small end.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub small_diameter: Length,
    /// Its stiffness.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub stiffness: Stiffness,
}

/// The frusta of a stack of layers; from [`Cones::frusta`].
///
/// ```
/// # use shankline::{prelude::*, tension::{Cones, Layer}};
/// # fn main() -> Result<(), shankline::Error> {
/// let frusta = Cones::shigley(inches(0.5))?.frusta(&[Layer::new(inches(1.0), ksi(30e3))?])?;
/// assert!(frusta.stiffness < frusta.pieces[0].stiffness);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Frusta {
    /// The cones.
    pub cones: Cones,
    /// The frusta, from the head to the nut.
    pub pieces: Vec<FrustumPiece>,
    /// Stiffness km of all in series.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub stiffness: Stiffness,
}

impl Frusta {
    /// The working.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{Cones, Layer}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let frusta = Cones::shigley(inches(0.5))?.frusta(&[Layer::new(inches(1.0), ksi(30e3))?])?;
    /// assert_eq!(frusta.derivation().steps().len(), 3);
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let mut derivation = Derivation::new("Stiffness of the members, pressure cones");
        let mut sum = alloc::string::String::new();
        for (index, piece) in self.pieces.iter().enumerate() {
            let symbol = format!("k{}", index + 1);
            if !sum.is_empty() {
                sum.push_str(" + ");
            }
            sum.push_str("1 / ");
            sum.push_str(&symbol);
            derivation = derivation.step(
                Step::new(
                    "frustum",
                    symbol,
                    "pi * E * d * tan(a) / ln((2 * t * tan(a) + D - d) * (D + d) \
                     / ((2 * t * tan(a) + D + d) * (D - d)))",
                    piece.stiffness,
                )
                .with("E", piece.modulus)
                .with("d", self.cones.hole)
                .with("a", self.cones.half_angle)
                .with("t", piece.thickness)
                .with("D", piece.small_diameter)
                .source("Shigley, 9th ed., Eq. 8-20"),
            );
        }
        let mut total = Step::new(
            "stiffness of the members",
            "km",
            format!("1 / ({sum})"),
            self.stiffness,
        );
        for (index, piece) in self.pieces.iter().enumerate() {
            total = total.with(format!("k{}", index + 1), piece.stiffness);
        }
        derivation.step(total.source("Shigley, 9th ed., Eq. 8-18"))
    }
}

/// Springs one behind the other: 1 / k = sum of 1 / ki.
///
/// Members of two materials, each half the grip: each half has twice the stiffness that the whole
/// grip would have of its material, and the halves are in series (Shigley, problems 8-19 and 8-20).
///
/// # Errors
///
/// [`Error::OutOfRange`] without springs, or for a stiffness that is none.
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
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        diameter: Length,
    },
    /// A tube: E A / l.
    HollowCylinder {
        /// Outside diameter.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        outside: Length,
        /// Hole.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
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
            serde(serialize_with = "crate::units::quantity::serialize")
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

/// Stiffness by the exponential fit km = E d A exp(B d / l), for members of one material whose
/// bearing face is 1.5 d wide.
///
/// Source: Wileman, Choudhury and Green, Journal of Mechanical Design 113 (1991), by Shigley, 9th
/// ed., Eq. 8-23 and Table 8-8: steel, gray cast iron and general expression were read there, the
/// constants of aluminium and copper are recalled and bring a caution. Checked against Example 8-4.
///
/// # Errors
///
/// [`Error::OutOfRange`] for lengths that are none of a part, or a bolt so short that the
/// stiffness is none.
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
/// [`Error::OutOfRange`] for lengths that are none of a part, or a hole as wide as the tube.
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

/// Where the clamped plates end.
///
/// ```
/// use shankline::tension::ClampEnd;
/// assert_ne!(ClampEnd::ThroughBolt, ClampEnd::TappedHole);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum ClampEnd {
    /// Bolt and nut: a cone from either end, w = 1.
    ThroughBolt,
    /// Screw in a tapped hole: one cone from the head, w = 2.
    TappedHole,
}

/// Clamped plates by VDI 2230 Part 1, one material, not eccentric.
///
/// The cone opens with tan f = 0.362 + 0.032 ln(bL / 2) + 0.153 ln y for a through bolt and 0.348 +
/// 0.013 ln bL + 0.193 ln y in a tapped hole, bL = l / dw, y = DA / dw, and becomes a sleeve where it
/// meets the outside diameter DA. The angle formulas and the lengths of the standard were
/// recalled: the result carries a [`Caution`]. The resilience of cone and sleeve themselves
/// follows from the geometry, and is the same as that of [`Cones`] of the same angle.
///
/// ```
/// use shankline::{prelude::*, tension::{ClampEnd, Layer, VdiPlates}};
/// # fn main() -> Result<(), shankline::Error> {
/// let plates = VdiPlates::new(
///     ClampEnd::ThroughBolt, millimetres(13.5), millimetres(16.6), millimetres(60.0),
/// )?;
/// let km = plates.stiffness(Layer::new(millimetres(30.0), megapascals(205e3))?)?;
/// assert_eq!(km.cautions().iter().count(), 1);
/// km.derivation().check()?;
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct VdiPlates {
    /// Bolt and nut, or tapped hole.
    pub end: ClampEnd,
    /// Hole dh.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub hole: Length,
    /// Diameter dw of the bearing face.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub bearing: Length,
    /// Outside diameter DA of the members, or of the circle the interface allows.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub outside: Length,
}

impl VdiPlates {
    /// The plates.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for lengths that are none of a part, or unless hole < bearing face <=
    /// outside diameter; narrower members are a [`hollow_cylinder`].
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{ClampEnd, VdiPlates}};
    /// let (hole, face) = (millimetres(13.5), millimetres(16.6));
    /// assert!(VdiPlates::new(ClampEnd::ThroughBolt, hole, face, millimetres(15.0)).is_err());
    /// ```
    pub fn new(
        end: ClampEnd,
        hole: Length,
        bearing: Length,
        outside: Length,
    ) -> Result<Self, Error> {
        part_length("hole", hole)?;
        part_length("diameter of the bearing face", bearing)?;
        within(
            "diameter of the bearing face",
            bearing,
            hole * (1.0 + 1e-6),
            hole * 1e6,
        )?;
        within("outside diameter", outside, bearing, crate::error::LONGEST)?;
        Ok(Self {
            end,
            hole,
            bearing,
            outside,
        })
    }

    /// Stiffness of plates of one material, the grip as one layer.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] where the formula of the angle gives a cone that does not open (a grip far
    /// shorter than the bearing face is wide).
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{ClampEnd, Layer, VdiPlates}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let layer = Layer::new(millimetres(30.0), megapascals(205e3))?;
    /// let stiffness = |outside| {
    ///     VdiPlates::new(ClampEnd::ThroughBolt, millimetres(13.5), millimetres(16.6), outside)?
    ///         .stiffness(layer)
    /// };
    /// assert!(stiffness(millimetres(60.0))?.stiffness > stiffness(millimetres(20.0))?.stiffness);
    /// # Ok(())
    /// # }
    /// ```
    pub fn stiffness(&self, members: Layer) -> Result<MemberStiffness, Error> {
        let l = members.thickness;
        let length_ratio = (l / self.bearing).value;
        let width_ratio = (self.outside / self.bearing).value;
        let (tangent, w) = match self.end {
            ClampEnd::ThroughBolt => (
                0.362 + 0.032 * math::ln(0.5 * length_ratio) + 0.153 * math::ln(width_ratio),
                1.0,
            ),
            ClampEnd::TappedHole => (
                0.348 + 0.013 * math::ln(length_ratio) + 0.193 * math::ln(width_ratio),
                2.0,
            ),
        };
        if !(0.05..=10.0).contains(&tangent) {
            return Err(out_of_range(
                "tangent of the cone angle by VDI 2230",
                tangent,
                Allowed::FromTo(0.05.into(), 10.0.into()),
            ));
        }
        let cone_length = l.min((self.outside - self.bearing) / (w * tangent));
        let (dh, dw, da) = (self.hole.value, self.bearing.value, self.outside.value);
        let wide = dw + w * cone_length.value * tangent;
        let cone = 2.0 / (w * dh * tangent)
            * math::ln((dw + dh) * (wide - dh) / ((dw - dh) * (wide + dh)));
        let sleeve = 4.0 * (l - cone_length).value / (da * da - dh * dh);
        let stiffness = PI * members.modulus.value / (cone + sleeve);
        Ok(MemberStiffness {
            method: MembersMethod::Vdi2230 {
                plates: *self,
                tangent,
                cone_length,
            },
            members,
            stiffness: sane_stiffness("stiffness of the members", from_base(stiffness))?,
        })
    }
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
            } => Some("the exponential fit of member stiffness for aluminium and copper"),
            MembersMethod::Vdi2230 { .. } => Some("VDI 2230 Part 1, resilience of the plates"),
            _ => None,
        };
        Cautions::default().with(method.map(|method| Caution::MethodFromMemory { method }))
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
                .source("Shigley, 9th ed., Eq. 8-22"),
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
                        .source("Shigley, 9th ed., Eq. 8-23"),
                )
            }
            MembersMethod::HollowCylinder { outside, hole } => derivation.step(
                step("E * pi * (Dc^2 - dh^2) / (4 * l)")
                    .with("E", e)
                    .with("Dc", outside)
                    .with("dh", hole)
                    .with("l", l)
                    .source("E A / l"),
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
                .source("VDI 2230 Part 1, recalled"),
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
                    .source("VDI 2230 Part 1, recalled"),
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

impl VdiPlates {
    const fn w(&self) -> f64 {
        match self.end {
            ClampEnd::ThroughBolt => 1.0,
            ClampEnd::TappedHole => 2.0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{megapascals, millimetres};

    /// The cone of VDI 2230 is the frustum of Shigley, given the angle.
    #[test]
    fn a_vdi_cone_is_a_frustum_of_the_same_angle() {
        let layer = Layer::new(millimetres(30.0), megapascals(205e3)).unwrap();
        let (hole, face) = (millimetres(13.5), millimetres(16.6));
        let plates = VdiPlates::new(ClampEnd::ThroughBolt, hole, face, millimetres(60.0)).unwrap();
        let vdi = plates.stiffness(layer).unwrap();
        let MembersMethod::Vdi2230 { tangent, .. } = vdi.method else {
            unreachable!()
        };
        let angle = Angle::new::<uom::si::angle::radian>(math::atan(tangent));
        let cones = Cones::new(hole, face, angle).unwrap();
        let shigley = cones.identical(layer).unwrap();
        assert!(((vdi.stiffness / shigley.stiffness).value - 1.0).abs() < 1e-12);
    }
}
