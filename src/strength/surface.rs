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
//! | [`SurfaceLimit::yielding`] | the yield strength of the ply: common practice, no source |
//! | [`SurfaceLimit::stated`] | a test or a data sheet of the caller's |
//!
//! Beneath a washer the pressure spreads to dw + 1.6 h (VDI 2230, recalled), and to its edge at most. A soft washer is
//! a ply of its own: both faces count. The values hold at room temperature.

use core::f64::consts::FRAC_PI_4;

use crate::derivation::{Derivation, Step};
use crate::error::{Error, not_negative, sane_length};
use crate::parts::{ClampFace, WasherFace};
use crate::strength::check::{Check, Level, Mode, Place};
use crate::tables::methods;
use crate::units::{Area, Force, Length, Stress};

mod limit;
mod pull_through;

pub use limit::{SurfaceLimit, SurfaceLimitKind};
pub use pull_through::{PullThrough, PullThroughMethod, pull_through_en_1993, punching_by_statics};

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
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub outer: Length,
    /// Greatest inner diameter: hole, chamfer or bore, whichever is widest. The diameter of the rim of a slot is its
    /// length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
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
        (ring.value > 0.0).then_some(ring)
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
    let on_ply = SurfaceContact::new(spread(face, washer), hole.max(washer.inner_max))?;
    Ok((on_washer, on_ply))
}

/// How far a washer spreads the pressure of a face on it.
pub(crate) fn spread(face: &ClampFace, washer: &WasherFace) -> Length {
    (face.outer_min + SPREAD * washer.thickness_min).min(washer.outer_min)
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
            Mode::Pressure,
            place,
            self.pressure,
            self.limit.stress,
            Level::Nominal,
            self.limit.method(),
        )?;
        Ok(check.warned(self.limit.cautions()))
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
                    .source(methods::AREAS_OF_CIRCLES),
            )
            .step(
                Step::new("pressure", "p", "F / Ap", self.pressure)
                    .with("F", self.force)
                    .with("Ap", self.area),
            )
            .step(Step::given("limit", "pG", self.limit.stress).source(self.limit.method()))
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::parts::{ScrewProduct, Washer, WasherStyle};
    use crate::tables::plies::PlyMaterial;
    use crate::tables::surface::{PlySurfacePressure, PressureEdition};
    use crate::units::{megapascals, millimetres, newtons};
    use alloc::string::ToString;

    /// The table of 2003 lists limits above the yield strength for the plies that have both: so the yield strength is
    /// the cautious stand-in. But for 6061-T6, 248 and 276 MPa, whose kin is of a weaker condition, 230 MPa.
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

    /// Without a listed pressure the yield strength stands in, and that it is a typical one is told.
    #[test]
    fn typical_strengths_are_told() {
        let edition = PressureEdition::Vdi2230_2003;
        let mut met = [false; 2];
        for ply in PlyMaterial::all() {
            if PlySurfacePressure::of(ply, edition).is_some() || ply.yield_strength.is_none() {
                continue;
            }
            let typical = ply.strength_kind == crate::tables::plies::StrengthKind::Typical;
            met[usize::from(typical)] = true;
            let limit = SurfaceLimit::of_ply(ply, edition).unwrap();
            let told = |one| limit.cautions().iter().any(|own| *own == one);
            assert_eq!(
                told(crate::caution::Caution::TypicalStrength),
                typical,
                "{ply}"
            );
        }
        assert_eq!(met, [true; 2]);
    }

    /// Whatever is not a size is refused by its name, before the resistance is.
    #[test]
    fn punching_refuses_by_name() {
        let punch = |d, t, s| {
            let strength = megapascals(s);
            let text = |found: Result<PullThrough, Error>| found.unwrap_err().to_string();
            [
                text(pull_through_en_1993(
                    millimetres(d),
                    millimetres(t),
                    strength,
                )),
                text(punching_by_statics(
                    millimetres(d),
                    millimetres(t),
                    strength,
                    2.0,
                )),
            ]
        };
        for (d, t, s, name) in [
            (-1.0, 8.0, 360.0, "diameter of the head or nut"),
            (1.1e6, 8.0, 360.0, "diameter of the head or nut"),
            (30.0, 0.0, 360.0, "thickness of the ply"),
            (30.0, 8.0, -360.0, "strength of the ply"),
            // Two that are negative make a positive product.
            (-30.0, -8.0, 360.0, "diameter of the head or nut"),
            (30.0, -8.0, -360.0, "thickness of the ply"),
        ] {
            for text in punch(d, t, s) {
                assert!(text.contains(name), "{name}: {text}");
            }
        }
    }
}
