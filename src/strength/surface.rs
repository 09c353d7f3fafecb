//! Pressure under a bolt head, a nut or a washer, and pulling either through the ply.
//!
//! ```text
//! Ap = pi/4 (dw^2 - dh^2)      p = F / Ap <= pG
//! Bp = 0.6 pi dm tp fu         pull-through, EN 1993-1-8 Table 3.4; over 1.25
//! Vp = pi dw t Sy / sqrt(3)    punching by statics, for machine design
//! ```
//!
//! dw is the least outer diameter of the face ([`ClampFace`]), dh the greatest hole or its
//! chamfer, whichever is wider, dm the mean of the widths across flats and corners, the smaller of head and nut.
//! F is the **greatest** force of the bolt: the top of the scatter of tightening, the share of the pull, the change with
//! the temperature.
//!
//! | limit | where it comes from |
//! |---|---|
//! | [`SurfaceLimit::listed`], [`SurfaceLimit::of_ply`] | pG of VDI 2230, by edition: of 2003 for mild steel twice that of 1986 |
//! | [`SurfaceLimit::yielding`] | the yield strength of the ply: common practice, no source; below every pG of 2003 that is listed beside it |
//! | [`SurfaceLimit::stated`] | a test or a data sheet of the caller's |
//!
//! Beneath a washer the pressure spreads to dw + 1.6 h (VDI 2230, recalled), and to its edge at most. A soft washer is
//! a ply of its own: both faces count. The values hold at room temperature.

use core::f64::consts::{FRAC_PI_4, PI};
use core::fmt;

use alloc::string::ToString;

use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, positive, sane_length};
use crate::math;
use crate::parts::{ClampFace, WasherFace};
use crate::strength::check::{Check, Level, Mode, Place, Resistance};
use crate::tables::plies::{PlyMaterial, StrengthKind};
use crate::tables::surface::{Kinship, PlySurfacePressure, PressureEdition, SurfacePressure};
use crate::units::{Area, Force, Length, Stress};

/// Share of the washer thickness by which a pressure spreads, on the diameter: VDI 2230 Part 1, 5.5.4, recalled.
const SPREAD: f64 = 1.6;
/// VDI 2230 Part 1:2003, R10/3, by an engineer's list of errata: bolts tightened to yield or by angle press with up to
/// 1.40 times the tabled assembly force.
///
/// The writer of the list thinks 1.25 enough for classes 10.9 and 12.9. For other methods the greatest preload of
/// the scatter is the force.
///
/// ```
/// use shankline::strength::surface::YIELD_CONTROLLED;
/// assert_eq!(YIELD_CONTROLLED, 1.4);
/// ```
pub const YIELD_CONTROLLED: f64 = 1.4;
/// Partial factor gamma M2 of EN 1993-1-8 Table 2.1, the recommended value.
const GAMMA_M2: f64 = 1.25;

/// The pressure a ply or washer bears under a head.
///
/// ```
/// use shankline::strength::surface::SurfaceLimit;
/// use shankline::tables::plies::PlyMaterial;
/// use shankline::tables::surface::PressureEdition;
/// use shankline::units::{ksi, megapascals};
/// # fn main() -> Result<(), shankline::Error> {
/// let edition = PressureEdition::Vdi2230_2003;
/// let plate = SurfaceLimit::of_ply(PlyMaterial::find("ASTM A36 steel")?, edition)?;
/// assert_eq!(plate.stress, megapascals(490.0)); // that of S235
/// let bar = SurfaceLimit::of_ply(PlyMaterial::find("AISI 1018 steel")?, edition)?;
/// assert_eq!(bar.stress, ksi(54.0)); // not listed: its yield strength
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct SurfaceLimit {
    /// The pressure.
    pub stress: Stress,
    /// Where it comes from.
    pub kind: SurfaceLimitKind,
}

/// Where the limit of a pressure comes from.
///
/// ```
/// use shankline::strength::surface::{SurfaceLimit, SurfaceLimitKind};
/// use shankline::units::megapascals;
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!(SurfaceLimit::stated(megapascals(300.0))?.kind, SurfaceLimitKind::Stated);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum SurfaceLimitKind {
    /// A limiting surface pressure of VDI 2230.
    Listed {
        /// The row.
        row: &'static SurfacePressure,
        /// Whether it is that of the material itself.
        kinship: Kinship,
    },
    /// The yield strength of the material.
    Yield {
        /// Whether it is a typical value and no minimum.
        typical: bool,
    },
    /// Stated by the caller.
    Stated,
}

impl SurfaceLimit {
    /// The limit for a ply: the pG of an edition for it or its kin; where there is none its yield strength.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for a material with neither.
    ///
    /// ```
    /// use shankline::strength::surface::SurfaceLimit;
    /// use shankline::tables::plies::PlyMaterial;
    /// use shankline::tables::surface::PressureEdition;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let iron = PlyMaterial::find("grey cast iron class 30")?;
    /// assert!(SurfaceLimit::of_ply(iron, PressureEdition::Vdi2230_1986).is_ok());
    /// assert!(SurfaceLimit::of_ply(iron, PressureEdition::Vdi2230_2003).is_err()); // it has no yield strength
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_ply(ply: &PlyMaterial, edition: PressureEdition) -> Result<Self, Error> {
        if let Some(kin) = PlySurfacePressure::of(ply, edition) {
            let row = kin.pressure()?;
            return Ok(Self {
                stress: row.limiting_pressure,
                kind: SurfaceLimitKind::Listed {
                    row,
                    kinship: kin.kinship,
                },
            });
        }
        let stress = ply.yield_strength.ok_or_else(|| Error::NoValue {
            quantity: "limiting surface pressure",
            subject: ply.to_string(),
            reason: "VDI 2230 lists no kindred material in that edition, and no yield strength was read",
        })?;
        Ok(Self {
            stress,
            kind: SurfaceLimitKind::Yield {
                typical: ply.strength_kind == StrengthKind::Typical,
            },
        })
    }

    /// The limit of a material of VDI 2230 that the part is made of.
    ///
    /// ```
    /// use shankline::strength::surface::SurfaceLimit;
    /// use shankline::tables::surface::{PressureEdition, SurfacePressure};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let s355 = SurfacePressure::find("S355J0 (St 52-3 U, 1.0553)", PressureEdition::Vdi2230_2003)?;
    /// assert_eq!(SurfaceLimit::listed(s355).stress, s355.limiting_pressure);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn listed(row: &'static SurfacePressure) -> Self {
        Self {
            stress: row.limiting_pressure,
            kind: SurfaceLimitKind::Listed {
                row,
                kinship: Kinship::Same,
            },
        }
    }

    /// The least yield strength of the part as its limit: common practice of machine design, no source.
    ///
    /// No design factor is taken off: the greatest force of the bolt is held against it, and in the table of 2003 every
    /// listed material bears more under a head than it yields at.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a strength that is not positive and finite.
    ///
    /// ```
    /// use shankline::{strength::surface::SurfaceLimit, units::ksi};
    /// assert!(SurfaceLimit::yielding(ksi(50.0)).is_ok());
    /// assert!(SurfaceLimit::yielding(ksi(f64::NAN)).is_err());
    /// ```
    pub fn yielding(strength: Stress) -> Result<Self, Error> {
        Ok(Self {
            stress: positive("yield strength of the ply", strength)?,
            kind: SurfaceLimitKind::Yield { typical: false },
        })
    }

    /// A limit of the caller's, from a test or a data sheet.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a pressure that is not positive and finite.
    ///
    /// ```
    /// use shankline::{strength::surface::SurfaceLimit, units::megapascals};
    /// assert!(SurfaceLimit::stated(megapascals(0.0)).is_err());
    /// ```
    pub fn stated(pressure: Stress) -> Result<Self, Error> {
        Ok(Self {
            stress: positive("limiting surface pressure", pressure)?,
            kind: SurfaceLimitKind::Stated,
        })
    }

    /// Name of the method, for reports.
    ///
    /// ```
    /// use shankline::{strength::surface::SurfaceLimit, units::ksi};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(SurfaceLimit::yielding(ksi(36.0))?.name(), "yield strength of the ply, common practice");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn name(&self) -> &'static str {
        match self.kind {
            SurfaceLimitKind::Listed { row, .. } => row.edition.name(),
            SurfaceLimitKind::Yield { .. } => "yield strength of the ply, common practice",
            SurfaceLimitKind::Stated => "stated surface pressure",
        }
    }

    /// What the user must be told.
    ///
    /// ```
    /// use shankline::strength::surface::SurfaceLimit;
    /// use shankline::tables::plies::PlyMaterial;
    /// use shankline::tables::surface::PressureEdition;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let sheet = PlyMaterial::find("6061-T6 aluminium, A-basis")?;
    /// let limit = SurfaceLimit::of_ply(sheet, PressureEdition::Vdi2230_2003)?;
    /// assert_eq!(limit.cautions().iter().count(), 2); // by its kin; which the guideline has not checked
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        match self.kind {
            SurfaceLimitKind::Listed { row, kinship } => {
                let kin = (kinship == Kinship::Kin).then_some(Caution::MaterialOutsideMethod {
                    method: row.edition.name(),
                    written_for: row.material,
                });
                Cautions::default().with(kin).and(row.cautions())
            }
            SurfaceLimitKind::Yield { typical } => Cautions::default()
                .with(Some(Caution::CommonPractice {
                    rule: "the pressure under a head is held below the yield strength of the ply",
                }))
                .with(typical.then_some(Caution::TypicalStrength)),
            SurfaceLimitKind::Stated => Cautions::default(),
        }
    }
}

/// The ring on which a head, nut or washer bears.
///
/// ```
/// use shankline::strength::surface::SurfaceContact;
/// use shankline::units::millimetres;
/// # fn main() -> Result<(), shankline::Error> {
/// // M12 hexagon head on a 13.5 mm hole: pi/4 (16.63^2 - 13.5^2)
/// let ring = SurfaceContact::new(millimetres(16.63), millimetres(13.5))?;
/// assert!((ring.area().unwrap().value * 1e6 - 74.07).abs() < 0.01);
/// // The same head on a 22 mm hole falls in.
/// assert!(SurfaceContact::new(millimetres(16.63), millimetres(22.0))?.area().is_none());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct SurfaceContact {
    /// Least outer diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub outer: Length,
    /// Greatest inner diameter: hole, chamfer or bore, whichever is widest. The diameter of the rim of a slot is its
    /// length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub inner: Length,
}

impl SurfaceContact {
    /// Least outer and greatest inner diameter. The outer one may be the smaller: then nothing bears.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for diameters that are not positive and finite, or beyond a kilometre.
    ///
    /// ```
    /// use shankline::{strength::surface::SurfaceContact, units::millimetres};
    /// assert!(SurfaceContact::new(millimetres(16.63), millimetres(0.0)).is_err());
    /// ```
    pub fn new(outer: Length, inner: Length) -> Result<Self, Error> {
        Ok(Self {
            outer: sane_length("outer diameter of the bearing face", outer)?,
            inner: sane_length("diameter of the hole under the bearing face", inner)?,
        })
    }

    /// The ring of a head or nut on its hole: the transition under the head does not bear, and counts where it is wider
    /// than the hole.
    ///
    /// # Errors
    ///
    /// As [`new`](Self::new).
    ///
    /// ```
    /// use shankline::parts::{ClampFace, ScrewProduct};
    /// use shankline::strength::surface::SurfaceContact;
    /// use shankline::units::millimetres;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let head = ClampFace::of_screw(ScrewProduct::Iso4014, &"M12".parse()?)?;
    /// let medium = SurfaceContact::under(&head, millimetres(13.5))?;
    /// assert_eq!(medium.inner, millimetres(13.7)); // da, wider than the medium hole
    /// # Ok(())
    /// # }
    /// ```
    pub fn under(face: &ClampFace, hole: Length) -> Result<Self, Error> {
        let hole = sane_length("diameter of the hole under the bearing face", hole)?;
        Self::new(face.outer_min, widest(face, hole))
    }

    /// Area of the ring; none where the face is not larger than the hole.
    ///
    /// ```
    /// use shankline::{strength::surface::SurfaceContact, units::millimetres};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert!(SurfaceContact::new(millimetres(20.0), millimetres(20.0))?.area().is_none());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn area(&self) -> Option<Area> {
        // As a product of sum and difference, which keeps its digits where the two are close.
        let ring: Area = FRAC_PI_4 * ((self.outer - self.inner) * (self.outer + self.inner));
        (self.outer > self.inner && ring.value > 0.0).then_some(ring)
    }
}

/// The two rings where a washer lies under a head or nut: head on washer, washer on ply.
///
/// The pressure on the ply has spread to dw + 1.6 h, and to the edge of the washer at most (VDI 2230 Part 1, recalled).
/// A thin washer over a wide hole so falls in although it covers the hole: it dishes.
///
/// # Errors
///
/// [`Error::OutOfRange`] for diameters that are not positive and finite.
///
/// ```
/// use shankline::parts::{ClampFace, WasherFace};
/// use shankline::prelude::*;
/// use shankline::strength::surface::through_washer;
/// # fn main() -> Result<(), shankline::Error> {
/// let washer = WasherFace::of(Washer::find(WasherStyle::Iso7089, &"M12".parse()?)?)?;
/// let head = ClampFace::of_screw(ScrewProduct::Iso4014, &"M12".parse()?)?;
/// let (on_washer, on_ply) = through_washer(&head, &washer, millimetres(13.5))?;
/// assert_eq!(on_washer.inner, millimetres(13.7)); // the transition under the head, wider than the bore
/// // 16.63 + 1.6 x 2.3, less than the 23.48 of the washer
/// assert!((on_ply.outer - millimetres(20.31)).abs() < millimetres(1e-9));
/// # Ok(())
/// # }
/// ```
pub fn through_washer(
    face: &ClampFace,
    washer: &WasherFace,
    hole: Length,
) -> Result<(SurfaceContact, SurfaceContact), Error> {
    let hole = sane_length("diameter of the hole under the washer", hole)?;
    let on_washer = SurfaceContact::under(face, washer.inner_max)?;
    let spread = (face.outer_min + SPREAD * washer.thickness_min).min(washer.outer_min);
    let on_ply = SurfaceContact::new(spread, hole.max(washer.inner_max))?;
    Ok((on_washer, on_ply))
}

/// A hole, or the transition under the head where that is wider.
fn widest(face: &ClampFace, hole: Length) -> Length {
    face.inner_max.map_or(hole, |inner| hole.max(inner))
}

/// What becomes of a head on its hole.
///
/// ```
/// use shankline::strength::surface::{SurfaceContact, SurfaceLimit, SurfaceOutcome, surface_pressure};
/// use shankline::units::{megapascals, millimetres, newtons};
/// # fn main() -> Result<(), shankline::Error> {
/// let wide = SurfaceContact::new(millimetres(16.63), millimetres(22.0))?;
/// let outcome = surface_pressure(newtons(15e3), wide, SurfaceLimit::stated(megapascals(490.0))?)?;
/// assert!(matches!(outcome, SurfaceOutcome::FallsIn(_)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum SurfaceOutcome {
    /// It bears.
    Bears(SurfaceBearing),
    /// The face is not larger than the hole: the head falls in.
    FallsIn(SurfaceContact),
}

/// Pressure between a face and what it bears on.
///
/// ```
/// use shankline::strength::surface::{SurfaceContact, SurfaceLimit, SurfaceOutcome, surface_pressure};
/// use shankline::strength::check::Place;
/// use shankline::units::{megapascals, millimetres, newtons};
/// # fn main() -> Result<(), shankline::Error> {
/// // M12 class 8.8 at 75 % of proof, 36.67 kN / 74.07 mm2 = 495 MPa, on AW-6082 (230 MPa).
/// let ring = SurfaceContact::new(millimetres(16.63), millimetres(13.5))?;
/// let limit = SurfaceLimit::stated(megapascals(230.0))?;
/// let SurfaceOutcome::Bears(bearing) = surface_pressure(newtons(36.67e3), ring, limit)? else {
///     unreachable!("the head is larger than the hole");
/// };
/// assert!((bearing.pressure - megapascals(495.1)).abs() < megapascals(0.1));
/// assert!(!bearing.check(Place::Ply(1))?.holds());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct SurfaceBearing {
    /// Greatest force of the bolt.
    pub force: Force,
    /// The ring.
    pub contact: SurfaceContact,
    /// Its area Ap.
    pub area: Area,
    /// The pressure p.
    pub pressure: Stress,
    /// The limit.
    pub limit: SurfaceLimit,
}

/// The pressure of the greatest force of a bolt on a ring, held against a limit.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a force that is negative or not finite, or a pressure that overflows.
///
/// ```
/// use shankline::strength::surface::{SurfaceContact, SurfaceLimit, surface_pressure};
/// use shankline::units::{ksi, millimetres, newtons};
/// # fn main() -> Result<(), shankline::Error> {
/// let ring = SurfaceContact::new(millimetres(16.63), millimetres(13.5))?;
/// assert!(surface_pressure(newtons(-1.0), ring, SurfaceLimit::yielding(ksi(36.0))?).is_err());
/// # Ok(())
/// # }
/// ```
pub fn surface_pressure(
    greatest_force: Force,
    contact: SurfaceContact,
    limit: SurfaceLimit,
) -> Result<SurfaceOutcome, Error> {
    let force = not_negative("greatest force of the bolt", greatest_force)?;
    let Some(area) = contact.area() else {
        return Ok(SurfaceOutcome::FallsIn(contact));
    };
    Ok(SurfaceOutcome::Bears(SurfaceBearing {
        force,
        contact,
        area,
        pressure: not_negative("pressure under the head", Stress::from(force / area))?,
        limit,
    }))
}

impl SurfaceBearing {
    /// The check of the pressure. Nominal: neither the limit nor the force has a factor in it.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if the utilisation overflows.
    ///
    /// ```
    /// use shankline::strength::check::{Check, Place};
    /// use shankline::strength::surface::SurfaceBearing;
    /// fn of_head(bearing: &SurfaceBearing) -> Result<Check, shankline::Error> {
    ///     bearing.check(Place::Ply(1))
    /// }
    /// ```
    pub fn check(&self, place: Place) -> Result<Check, Error> {
        let check = Check::new(
            Mode::SurfacePressure,
            place,
            self.pressure,
            self.limit.stress,
            Level::Nominal,
        )?;
        Ok(check.by(self.limit.name()).warned(self.limit.cautions()))
    }

    /// The working.
    ///
    /// ```
    /// use shankline::derivation::Derivation;
    /// use shankline::strength::surface::SurfaceBearing;
    /// fn of_head(bearing: &SurfaceBearing) -> Derivation {
    ///     bearing.derivation()
    /// }
    /// ```
    pub fn derivation(&self) -> Derivation {
        Derivation::new("Pressure under the head, nut or washer")
            .step(
                Step::new("area that bears", "Ap", "pi / 4 * (dw^2 - dh^2)", self.area)
                    .with("dw", self.contact.outer)
                    .with("dh", self.contact.inner)
                    .source("areas of circles"),
            )
            .step(
                Step::new("pressure", "p", "F / Ap", self.pressure)
                    .with("F", self.force)
                    .with("Ap", self.area),
            )
            .step(Step::given("limit", "pG", self.limit.stress).source(self.limit.name()))
            .step(
                Step::new(
                    "share of the limit",
                    "u",
                    "p / pG",
                    (self.pressure / self.limit.stress).value,
                )
                .with("p", self.pressure)
                .with("pG", self.limit.stress),
            )
    }
}

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
    /// Name of the method, for reports.
    ///
    /// ```
    /// use shankline::strength::surface::PullThroughMethod;
    /// let method = PullThroughMethod::Statics { design_factor: 2.0 };
    /// assert_eq!(method.name(), "punching shear at yield, by statics");
    /// ```
    #[must_use]
    pub const fn name(&self) -> &'static str {
        match self {
            Self::En1993 => "EN 1993-1-8:2005 Table 3.4, punching shear",
            Self::Statics { .. } => "punching shear at yield, by statics",
        }
    }
}

impl fmt::Display for PullThroughMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.name())
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
/// `mean_width` is dm, the smaller of head and nut ([`ClampFace::mean_width_min`]).
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
        let check = Check::new(Mode::PullThrough, place, pull, resistance, level)?;
        Ok(check.by(self.method.name()).warned(self.cautions()))
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
                .source(self.method.name()),
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::parts::{ScrewProduct, Washer, WasherStyle};
    use crate::units::{megapascals, millimetres, newtons};

    /// The table of 2003 lists limits above the yield strength for every ply that has both: so the yield strength
    /// is the cautious stand-in. (6061-T6 typical: 276 MPa is no minimum, and above its kin.)
    #[test]
    fn yield_is_below_the_listed_pressure() {
        let mut compared = 0;
        for ply in PlyMaterial::all() {
            let listed = PlySurfacePressure::of(ply, PressureEdition::Vdi2230_2003);
            let (Some(listed), Some(yielding)) = (listed, ply.yield_strength) else {
                continue;
            };
            let limit = listed.pressure().unwrap().limiting_pressure;
            let aluminium = ply.name.contains("6061");
            assert!(
                yielding <= limit || (aluminium && yielding < 1.21 * limit),
                "{ply}: {yielding:?} {limit:?}"
            );
            compared += 1;
        }
        assert!(compared >= 7, "{compared}");
    }

    /// The kindred material is the strongest of its kind that is no stronger than the ply.
    #[test]
    fn kin_are_no_stronger() {
        for row in PlySurfacePressure::all() {
            let ply = PlyMaterial::find(row.ply).unwrap();
            let (Some(own), Some(kin)) = (
                ply.tensile_strength,
                row.pressure().unwrap().tensile_strength_min,
            ) else {
                continue;
            };
            assert!(kin <= own, "{ply}");
        }
    }

    #[test]
    fn workings_follow() {
        let limit = SurfaceLimit::stated(megapascals(490.0)).unwrap();
        for (outer, inner) in [(16.63, 13.5), (16.63, 16.62), (1000.0, 1.0)] {
            let ring = SurfaceContact::new(millimetres(outer), millimetres(inner)).unwrap();
            let outcome = surface_pressure(newtons(30e3), ring, limit).unwrap();
            let SurfaceOutcome::Bears(bearing) = outcome else {
                panic!("{outer} {inner}");
            };
            bearing.derivation().check().unwrap();
        }
        let sheet = punching_by_statics(
            millimetres(16.63),
            millimetres(3.0),
            megapascals(250.0),
            2.0,
        );
        sheet.unwrap().derivation().check().unwrap();
    }

    /// U12: the head of an M12 without washer on a hole of 22 mm.
    #[test]
    fn a_head_smaller_than_its_hole_falls_in() {
        let head = ClampFace::of_screw(ScrewProduct::Iso4014, &"M12".parse().unwrap()).unwrap();
        let limit = SurfaceLimit::stated(megapascals(490.0)).unwrap();
        for hole in [16.63, 16.7, 22.0] {
            let ring = SurfaceContact::new(head.outer_min, millimetres(hole)).unwrap();
            let outcome = surface_pressure(newtons(0.0), ring, limit).unwrap();
            assert_eq!(outcome, SurfaceOutcome::FallsIn(ring), "{hole}");
        }
    }

    /// The spread is held at the edge of the washer, and its bore counts where it is wider than the hole.
    #[test]
    fn washers_spread_to_their_edge() {
        let washer =
            WasherFace::of(Washer::find(WasherStyle::Iso7092, &"M12".parse().unwrap()).unwrap())
                .unwrap();
        let head = ClampFace::of_screw(ScrewProduct::Iso4014, &"M12".parse().unwrap()).unwrap();
        // 16.63 + 1.6 x 1.8 = 19.51 mm; the washer has 19.48.
        let (_, on_ply) = through_washer(&head, &washer, millimetres(12.5)).unwrap();
        assert_eq!(on_ply.outer, washer.outer_min);
        assert_eq!(on_ply.inner, washer.inner_max);
    }

    #[test]
    fn nonsense_is_refused() {
        let limit = SurfaceLimit::stated(megapascals(490.0)).unwrap();
        let ring = SurfaceContact::new(millimetres(20.0), millimetres(13.0)).unwrap();
        for bad in [f64::NAN, f64::INFINITY, -1.0, 0.0] {
            assert!(SurfaceContact::new(millimetres(bad), millimetres(13.0)).is_err());
            assert!(SurfaceLimit::yielding(megapascals(bad)).is_err());
            let punch = |d, t, s, n| {
                punching_by_statics(millimetres(d), millimetres(t), megapascals(s), n).is_err()
            };
            assert!(punch(bad, 1.0, 1.0, 1.0) && punch(1.0, bad, 1.0, 1.0));
            assert!(punch(1.0, 1.0, bad, 1.0) && punch(1.0, 1.0, 1.0, bad));
            if bad != 0.0 {
                assert!(surface_pressure(newtons(bad), ring, limit).is_err());
            }
        }
        assert!(surface_pressure(newtons(f64::MAX), ring, limit).is_err());
    }
}
