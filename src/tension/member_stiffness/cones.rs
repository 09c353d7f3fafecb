//! Pressure cones of any half angle, through any layers.

use alloc::{format, string::String, vec::Vec};
use core::f64::consts::PI;

use super::{Layer, MemberStiffness, MembersMethod};
use crate::derivation::{Derivation, Step};
use crate::error::Error;
use crate::math;
use crate::tables::methods;
use crate::tension::{part_length, sane_stiffness, within};
use crate::units::{Angle, Length, Stiffness, Stress, degrees, from_base};

/// Share of the grip below which a slice of a layer is rounding, not material.
const SLIVER: f64 = 1e-12;
/// Frusta whose resiliences are added in one step of a working: more make no formula that anybody reads.
const MOST_IN_A_STEP: usize = 40;

/// The pressure cones that open from both bearing faces and meet at half the grip.
///
/// Each layer is a frustum, or two where it crosses the middle; washers are layers. The cones are as
/// wide as they grow: for members narrower than that the stiffness is too high (take
/// [`VdiPlates`](super::VdiPlates), which ends the cone at the edge, or [`hollow_cylinder`](super::hollow_cylinder)).
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
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub(super) hole: Length,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub(super) bearing: Length,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub(super) half_angle: Angle,
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
    /// [`Error::OutOfRange`] for lengths outside the [ranges](crate::tension#ranges), a bearing face not between one hole and a hundred
    /// of them, or an angle outside its range.
    ///
    /// ```
    /// use shankline::{prelude::*, tension::Cones, units::degrees};
    /// assert!(Cones::new(millimetres(17.0), millimetres(24.0), degrees(30.0)).is_ok());
    /// assert!(Cones::new(millimetres(17.0), millimetres(16.0), degrees(30.0)).is_err());
    /// ```
    pub fn new(hole: Length, bearing: Length, half_angle: Angle) -> Result<Self, Error> {
        part_length("hole", hole)?;
        part_length("diameter of the bearing face", bearing)?;
        // The ratio is under the logarithm: near one or without end it would be all rounding. No face is as wide as 100 holes.
        within(
            "diameter of the bearing face",
            bearing,
            hole * (1.0 + 1e-6),
            hole * 100.0,
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
    /// [`Error::OutOfRange`] for a diameter outside the [ranges](crate::tension#ranges).
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
            self.hole * 1e3,
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
            let mut bottom = top + layer.thickness;
            // A boundary at half the grip is the middle: rounding must leave no sliver beside it.
            if (bottom - middle).abs() <= SLIVER * grip {
                bottom = middle;
            }
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
    /// Those of [`stiffness`](Self::stiffness); for a layer so thin beside the others that its frustum has no figure.
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
        for piece in &pieces {
            sane_stiffness("stiffness of a frustum", piece.stiffness)?;
        }
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
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thickness: Length,
    /// Modulus of elasticity.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub modulus: Stress,
    /// Diameter of its small end.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub small_diameter: Length,
    /// Its stiffness.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
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
        serde(serialize_with = "crate::units::quantity::round")
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
        let mut terms: Vec<(String, Stiffness)> = Vec::new();
        for (index, piece) in self.pieces.iter().enumerate() {
            let symbol = format!("k{}", index + 1);
            terms.push((symbol.clone(), piece.stiffness));
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
                .source(methods::SHIGLEY_9TH_ED_EQ_8_20),
            );
        }
        // Many frusta are put in series by groups, and the groups by groups.
        let mut groups = 0;
        while terms.len() > MOST_IN_A_STEP {
            let mut grouped = Vec::new();
            for group in terms.chunks(MOST_IN_A_STEP) {
                groups += 1;
                let resilience: f64 = group.iter().map(|(_, k)| 1.0 / k.value).sum();
                let (symbol, stiffness) = (format!("kg{groups}"), from_base(1.0 / resilience));
                let (name, out) = ("frusta in series, one group of them", symbol.clone());
                derivation = derivation.step(in_series(name, out, group, stiffness));
                grouped.push((symbol, stiffness));
            }
            terms = grouped;
        }
        let name = "stiffness of the members";
        derivation.step(in_series(name, "km".into(), &terms, self.stiffness))
    }
}

/// The step that puts springs in series.
fn in_series(
    name: &'static str,
    symbol: String,
    springs: &[(String, Stiffness)],
    stiffness: Stiffness,
) -> Step {
    let terms: Vec<String> = springs.iter().map(|(k, _)| format!("1 / {k}")).collect();
    let formula = format!("1 / ({})", terms.join(" + "));
    let step = Step::new(name, symbol, formula, stiffness).source(methods::SHIGLEY_9TH_ED_EQ_8_18);
    springs
        .iter()
        .fold(step, |step, (k, value)| step.with(k.clone(), *value))
}
