//! The effective diameter of the turned face.

use crate::error::{Allowed, Error, out_of_range, sane_length};
use crate::units::Length;

/// How the pressure spreads under the turned head or nut.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let face = BearingFace::new(millimetres(16.63), millimetres(13.5))?;
/// let wear = face.effective_diameter(BearingPressure::UniformWear);
/// let pressure = face.effective_diameter(BearingPressure::UniformPressure);
/// assert!(wear < pressure && pressure < 1.01 * wear);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum BearingPressure {
    /// Pressure falls with the radius as a worn face wears: Db = (Do + dh) / 2. VDI 2230 (Dkm), Shigley.
    UniformWear,
    /// The same pressure everywhere: Db = (2/3) (Do^3 - dh^3) / (Do^2 - dh^2). JIS B 1083. The larger,
    /// by a few per cent at most; a finite element study (Gong, Liu, Ding 2016) finds it the closer.
    UniformPressure,
}

/// The ring on which the turned head or nut slides.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let face = BearingFace::new(millimetres(16.63), millimetres(13.5))?;
/// let effective = face.effective_diameter(BearingPressure::UniformWear);
/// assert!((effective - millimetres(15.065)).value.abs() < 1e-12);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "RawBearingFace")
)]
pub struct BearingFace {
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    outer: Length,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    hole: Length,
}

#[cfg(feature = "serde")]
#[derive(serde::Deserialize)]
#[serde(
    crate = "crate::objects",
    deny_unknown_fields,
    expecting = "a bearing face with outer and hole diameter"
)]
struct RawBearingFace {
    #[serde(deserialize_with = "crate::units::quantity::deserialize")]
    outer: Length,
    #[serde(deserialize_with = "crate::units::quantity::deserialize")]
    hole: Length,
}

#[cfg(feature = "serde")]
impl TryFrom<RawBearingFace> for BearingFace {
    type Error = Error;
    fn try_from(raw: RawBearingFace) -> Result<Self, Error> {
        Self::new(raw.outer, raw.hole)
    }
}

impl BearingFace {
    /// The ring from the hole to the outer diameter of the face.
    ///
    /// Outer diameter: the washer face of head or nut, or the washer where it turns along. Hole:
    /// the clearance hole or its chamfer, the larger.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter that is not positive and finite or beyond a kilometre, or an
    /// outer diameter not above the hole.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(BearingFace::new(millimetres(13.5), millimetres(16.6)).is_err());
    /// ```
    pub fn new(outer: Length, hole: Length) -> Result<Self, Error> {
        sane_length("hole diameter", hole)?;
        sane_length("outer diameter of the bearing face", outer)?;
        if outer > hole {
            Ok(Self { outer, hole })
        } else {
            Err(out_of_range(
                "outer diameter of the bearing face",
                outer,
                Allowed::Above(hole.into()),
            ))
        }
    }

    /// Outer diameter Do.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let face = BearingFace::new(millimetres(16.6), millimetres(13.5)).unwrap();
    /// assert_eq!(face.outer(), millimetres(16.6));
    /// ```
    #[must_use]
    pub const fn outer(&self) -> Length {
        self.outer
    }

    /// Diameter of the hole dh.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let face = BearingFace::new(millimetres(16.6), millimetres(13.5)).unwrap();
    /// assert_eq!(face.hole(), millimetres(13.5));
    /// ```
    #[must_use]
    pub const fn hole(&self) -> Length {
        self.hole
    }

    /// Effective diameter Db: the friction torque of the face is mu F Db / 2.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let face = BearingFace::new(millimetres(30.0), millimetres(10.0))?;
    /// let effective = face.effective_diameter(BearingPressure::UniformPressure);
    /// assert!((effective - millimetres(65.0 / 3.0)).value.abs() < 1e-12);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn effective_diameter(&self, pressure: BearingPressure) -> Length {
        let (outer, hole) = (self.outer, self.hole);
        match pressure {
            BearingPressure::UniformWear => 0.5 * (outer + hole),
            // Divided by Do - dh above and below the line, and by Do: no cubes that vanish.
            BearingPressure::UniformPressure => {
                let part = hole / outer;
                outer
                    * ((1.0 + part.value + part.value * part.value) / (1.0 + part.value))
                    * (2.0 / 3.0)
            }
        }
    }
}
