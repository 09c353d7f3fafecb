//! Pulling a head or nut through its ply.

use core::f64::consts::PI;
use core::fmt;

use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, positive, sane_length};
use crate::math;
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode, Place, Resistance};
use crate::strength::code::en_1993::GAMMA_M2;
use crate::tables::methods;
use crate::units::{Force, Length, Stress};

/// How the resistance to pulling a head or nut through its ply is taken.
///
/// ```
/// use shankline::strength::surface::PullThroughMethod;
/// assert_eq!(PullThroughMethod::En1993.to_string(), "EN 1993-1-8:2005 Table 3.4, punching shear");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum PullThroughMethod {
    /// EN 1993-1-8:2005 Table 3.4, on the tensile strength of the ply.
    En1993,
    /// Shear at yield on the cylinder under the rim of the face, over a design factor: statics, no publisher.
    Statics {
        /// Design factor n, at least 1.
        design_factor: f64,
    },
}

impl PullThroughMethod {
    /// The method: publisher, edition and clause.
    ///
    /// ```
    /// use shankline::strength::surface::PullThroughMethod;
    /// let method = PullThroughMethod::Statics { design_factor: 2.0 };
    /// assert_eq!(method.method().citation, "punching shear at yield, by statics");
    /// ```
    #[must_use]
    pub const fn method(&self) -> &'static Method {
        match self {
            Self::En1993 => methods::EN_1993_1_8_2005_TABLE_3_4_PUNCHING_SHEAR,
            Self::Statics { .. } => methods::PUNCHING_STATICS,
        }
    }
}

impl fmt::Display for PullThroughMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.method().citation)
    }
}

/// Resistance to pulling a head or nut through its ply.
///
/// ```
/// use shankline::strength::check::{Level, Place};
/// use shankline::strength::surface::pull_through_en_1993;
/// use shankline::units::{megapascals, millimetres, newtons};
/// # fn main() -> Result<(), shankline::Error> {
/// // A published sheet: dm = 30 mm, 8 mm of fu = 360 MPa: 130.3 kN.
/// let plate = pull_through_en_1993(millimetres(30.0), millimetres(8.0), megapascals(360.0))?;
/// assert!((plate.resistance.at(Level::Design)? - newtons(130.3e3)).abs() < newtons(50.0));
/// assert!(plate.check(newtons(100e3), Place::Ply(1), Level::Design)?.holds());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PullThrough {
    /// Method.
    pub method: PullThroughMethod,
    /// Diameter of the sheared cylinder: dm or dw.
    pub diameter: Length,
    /// Thickness of the ply.
    pub thickness: Length,
    /// Strength of the ply: tensile fu or yield Sy.
    pub strength: Stress,
    /// The resistance: nominal and design by EN 1993-1-8, nominal and allowable by statics.
    pub resistance: Resistance,
}

fn sound(diameter: Length, thickness: Length, strength: Stress) -> Result<(), Error> {
    sane_length("diameter of the head or nut", diameter)?;
    sane_length("thickness of the ply", thickness)?;
    positive("strength of the ply", strength).map(|_| ())
}

/// Punching shear of EN 1993-1-8 Table 3.4: Bp,Rd = 0.6 pi dm tp fu / 1.25.
///
/// `mean_width` is dm, the smaller of head and nut ([`ClampFace::mean_width_min`](crate::parts::ClampFace::mean_width_min)).
/// The table has no such check for countersunk bolts and rivets. Only a bolt with a pull on it needs it.
///
/// Source: two copies of the table, and a published sheet (M20, 8 mm, 360 MPa: 130.3 kN). That dm is the mean of the
/// widths and the smaller of the two parts was recalled.
///
/// # Errors
///
/// [`Error::OutOfRange`] for values that are not positive and finite.
///
/// ```
/// use shankline::strength::surface::pull_through_en_1993;
/// use shankline::units::{megapascals, millimetres};
/// assert!(pull_through_en_1993(millimetres(30.0), millimetres(-8.0), megapascals(360.0)).is_err());
/// ```
pub fn pull_through_en_1993(
    mean_width: Length,
    thickness: Length,
    tensile_strength: Stress,
) -> Result<PullThrough, Error> {
    sound(mean_width, thickness, tensile_strength)?;
    let nominal: Force = 0.6 * PI * (mean_width * thickness) * tensile_strength;
    Ok(PullThrough {
        method: PullThroughMethod::En1993,
        diameter: mean_width,
        thickness,
        strength: tensile_strength,
        resistance: Resistance::from_levels(Some(nominal), Some(nominal / GAMMA_M2), None)?,
    })
}

/// Punching shear for machine design: pi dw t Sy / sqrt(3), over a design factor.
///
/// The cylinder under the rim of the face shears at its yield strength in shear (von Mises). Source: statics; no
/// publisher's rule for machines was found.
///
/// # Errors
///
/// [`Error::OutOfRange`] for values that are not positive and finite, or a design factor below 1.
///
/// ```
/// use shankline::strength::{check::Level, surface::punching_by_statics};
/// use shankline::units::{megapascals, millimetres};
/// # fn main() -> Result<(), shankline::Error> {
/// // M12 head on 3 mm of 250 MPa: pi x 16.63 x 3 x 250 / 1.732 = 22.6 kN, half of it with a factor of 2.
/// let sheet = punching_by_statics(millimetres(16.63), millimetres(3.0), megapascals(250.0), 2.0)?;
/// assert!((sheet.resistance.at(Level::Allowable)?.value - 11_311.0).abs() < 1.0);
/// # Ok(())
/// # }
/// ```
pub fn punching_by_statics(
    face_outer: Length,
    thickness: Length,
    yield_strength: Stress,
    design_factor: f64,
) -> Result<PullThrough, Error> {
    sound(face_outer, thickness, yield_strength)?;
    if !(1.0..f64::INFINITY).contains(&design_factor) {
        let allowed = Allowed::AtLeast(1.0.into());
        return Err(out_of_range("design factor", design_factor, allowed));
    }
    let nominal: Force = PI * (face_outer * thickness) * (yield_strength / math::sqrt(3.0));
    Ok(PullThrough {
        method: PullThroughMethod::Statics { design_factor },
        diameter: face_outer,
        thickness,
        strength: yield_strength,
        resistance: Resistance::from_levels(Some(nominal), None, Some(nominal / design_factor))?,
    })
}

impl PullThrough {
    /// Checks a pull on the bolt.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the method defines no resistance at that level; [`Error::OutOfRange`] for a pull that is
    /// negative or not finite.
    ///
    /// ```
    /// use shankline::strength::check::{Level, Place};
    /// use shankline::strength::surface::punching_by_statics;
    /// use shankline::units::{megapascals, millimetres, newtons};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let sheet = punching_by_statics(millimetres(16.63), millimetres(3.0), megapascals(250.0), 2.0)?;
    /// assert!(sheet.check(newtons(12e3), Place::Ply(1), Level::Design).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn check(&self, pull: Force, place: Place, level: Level) -> Result<Check, Error> {
        let resistance = self.resistance.at(level)?;
        let check = Check::new(
            Mode::PullThrough,
            place,
            pull,
            resistance,
            level,
            self.method.method(),
        )?;
        Ok(check.warned(self.cautions()))
    }

    /// What the user must be told.
    ///
    /// ```
    /// use shankline::strength::surface::pull_through_en_1993;
    /// use shankline::units::{megapascals, millimetres};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let plate = pull_through_en_1993(millimetres(30.0), millimetres(8.0), megapascals(360.0))?;
    /// assert_eq!(plate.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(match self.method {
            PullThroughMethod::En1993 => None,
            PullThroughMethod::Statics { .. } => Some(Caution::CommonPractice {
                rule: "a ply shears at yield under the rim of the head",
            }),
        })
    }

    /// The working.
    ///
    /// ```
    /// use shankline::strength::surface::pull_through_en_1993;
    /// use shankline::units::{megapascals, millimetres};
    /// # fn main() -> Result<(), shankline::Error> {
    /// pull_through_en_1993(millimetres(30.0), millimetres(8.0), megapascals(360.0))?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let derivation = Derivation::new("Pulling the head or nut through the ply");
        let Some(nominal) = self.resistance.nominal else {
            return derivation;
        };
        let (formula, diameter, strength) = match self.method {
            PullThroughMethod::En1993 => ("0.6 * pi * dm * t * fu", "dm", "fu"),
            PullThroughMethod::Statics { .. } => ("pi * dw * t * Sy / sqrt(3)", "dw", "Sy"),
        };
        let derivation = derivation.step(
            Step::new("nominal resistance", "Rn", formula, nominal)
                .with(diameter, self.diameter)
                .with("t", self.thickness)
                .with(strength, self.strength)
                .source(self.method.method()),
        );
        match self.method {
            PullThroughMethod::En1993 => {
                self.resistance
                    .factored(derivation, Some(1.0 / GAMMA_M2), None)
            }
            PullThroughMethod::Statics { design_factor } => {
                self.resistance
                    .factored(derivation, None, Some(design_factor))
            }
        }
    }
}
