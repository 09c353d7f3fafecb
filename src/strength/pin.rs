//! Pins and bolts that bend: plies with gaps between them, in double shear.
//!
//! ```text
//!      F/2 <- [ outer ply, a ]
//!                 gap c
//!             [ inner ply, b ] -> F
//!                 gap c
//!      F/2 <- [ outer ply, a ]
//! ```
//!
//! With every ply bearing evenly over its thickness the moment at mid-pin is
//! M = (F/2)(a/2 + b/4 + c) = F (b + 4 c + 2 a) / 8. EN 1993-1-8 Figure 3.11 and the lug method of
//! airframes (Melcon and Hoblit) write the same; the arm of the latter was recalled, the sum follows
//! from statics. A clamped bolt bends less, for the clamp carries the load by friction first; nothing is
//! taken off for it.

use core::f64::consts::PI;

use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, positive, sane_length};
use crate::math;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::thread::area::circle;
use crate::units::{Area, Force, Length, Ratio, Stress, Torque};

/// Plastic over elastic section modulus of a round bar, 16 / (3 pi).
///
/// ```
/// assert!((shankline::strength::pin::ROUND_SHAPE_FACTOR - 1.70).abs() < 0.005);
/// ```
pub const ROUND_SHAPE_FACTOR: f64 = 16.0 / (3.0 * PI);

const METHOD: &str = "EN 1993-1-8:2005 Table 3.10";
/// Partial factor of pins in shear, recommended value.
const GAMMA_M2: f64 = 1.25;

/// A solid pin through two outer plies and one inner ply.
///
/// ```
/// use shankline::{strength::pin::PinJoint, units::{millimetres, newtons}};
/// # fn main() -> Result<(), shankline::Error> {
/// let mm = millimetres;
/// let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0))?;
/// // 40 kN x (20 + 4 x 1 + 2 x 12) mm / 8
/// assert!((joint.moment(newtons(40e3))?.value - 240.0).abs() < 1e-9);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PinJoint {
    /// Diameter d of the pin.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub diameter: Length,
    /// Thickness a of each outer ply.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub outer: Length,
    /// Thickness b of the inner ply.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub inner: Length,
    /// Gap c on each side; a sleeve in it carries no load across.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub gap: Length,
}

impl PinJoint {
    /// Pin diameter, thickness of one outer ply, of the inner ply, and gap on each side.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter or thickness that is not positive, a gap that is negative, or
    /// any of them beyond a kilometre.
    ///
    /// ```
    /// use shankline::{strength::pin::PinJoint, units::millimetres};
    /// let mm = millimetres;
    /// assert!(PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(-1.0)).is_err());
    /// ```
    pub fn new(diameter: Length, outer: Length, inner: Length, gap: Length) -> Result<Self, Error> {
        not_negative("gap", gap)?;
        if gap.value > 0.0 {
            sane_length("gap", gap)?;
        }
        Ok(Self {
            diameter: sane_length("pin diameter", diameter)?,
            outer: sane_length("outer ply", outer)?,
            inner: sane_length("inner ply", inner)?,
            gap,
        })
    }

    /// Arm of half the load about mid-pin: a/2 + b/4 + c.
    ///
    /// ```
    /// use shankline::{strength::pin::PinJoint, units::millimetres};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let mm = millimetres;
    /// let arm = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0))?.arm();
    /// assert!((arm - mm(12.0)).abs() < mm(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    #[inline]
    #[must_use]
    pub fn arm(&self) -> Length {
        0.5 * self.outer + 0.25 * self.inner + self.gap
    }

    /// Greatest moment in the pin under a load.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is negative or not finite, or a moment beyond all numbers.
    ///
    /// ```
    /// use shankline::{strength::pin::PinJoint, units::{millimetres, newtons}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let mm = millimetres;
    /// let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(0.0))?;
    /// assert_eq!(joint.moment(newtons(0.0))?.value, 0.0);
    /// # Ok(())
    /// # }
    /// ```
    #[inline]
    pub fn moment(&self, load: Force) -> Result<Torque, Error> {
        let load = not_negative("load on the pin", load)?;
        not_negative("moment in the pin", Torque::from(0.5 * load * self.arm()))
    }

    /// Elastic bending stress 32 M / (pi d^3) under a load.
    ///
    /// # Errors
    ///
    /// As [`moment`](Self::moment).
    ///
    /// ```
    /// use shankline::{strength::pin::PinJoint, units::{millimetres, newtons}};
    /// use shankline::uom::si::pressure::megapascal;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let mm = millimetres;
    /// let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0))?;
    /// // 240 N m over pi 30^3 / 32 = 2650.7 mm3
    /// assert!((joint.bending_stress(newtons(40e3))?.get::<megapascal>() - 90.54).abs() < 0.005);
    /// # Ok(())
    /// # }
    /// ```
    #[inline]
    pub fn bending_stress(&self, load: Force) -> Result<Stress, Error> {
        let moment = self.moment(load)?;
        let modulus = self.section_modulus();
        not_negative(
            "bending stress",
            crate::units::from_base(moment.value / modulus),
        )
    }

    /// Elastic section modulus in cubic metres.
    fn section_modulus(&self) -> f64 {
        let d = self.diameter.value;
        PI / 32.0 * (d * d * d)
    }
}

/// Share of a bending moment that a bolt takes inside a loose sleeve of the same modulus of elasticity.
///
/// Both bend to one curvature, so they share by their second moments:
/// d^4 / (d^4 + D^4 - Di^4), D and Di the diameters of the sleeve. Source: beam theory. It holds where
/// the sleeve is continuous over the bent length.
///
/// # Errors
///
/// [`Error::OutOfRange`] for lengths that are not positive, a bore smaller than the bolt or not smaller
/// than the sleeve.
///
/// ```
/// use shankline::{strength::pin::share_in_sleeve, units::millimetres};
/// # fn main() -> Result<(), shankline::Error> {
/// let mm = millimetres;
/// let share = share_in_sleeve(mm(12.0), mm(20.0), mm(12.0))?;
/// assert!((share.value - 0.6_f64.powi(4)).abs() < 1e-12);
/// # Ok(())
/// # }
/// ```
pub fn share_in_sleeve(bolt: Length, sleeve: Length, bore: Length) -> Result<Ratio, Error> {
    let bolt = sane_length("bolt diameter", bolt)?;
    let sleeve = sane_length("sleeve diameter", sleeve)?;
    let bore = sane_length("bore of the sleeve", bore)?;
    if bore < bolt {
        let allowed = Allowed::AtLeast(bolt.into());
        return Err(out_of_range("bore of the sleeve", bore, allowed));
    }
    if sleeve <= bore {
        let allowed = Allowed::Above(bore.into());
        return Err(out_of_range("sleeve diameter", sleeve, allowed));
    }
    // Relative to the bolt, so that small sizes do not underflow.
    let fourth = |length: Length| {
        let square = (length / bolt).value * (length / bolt).value;
        square * square
    };
    Ok(Ratio::from(1.0 / (1.0 + fourth(sleeve) - fourth(bore))))
}

/// Strengths a pin joint is checked with by EN 1993-1-8.
///
/// ```
/// use shankline::{strength::pin::PinStrengths, units::megapascals};
/// let steel = PinStrengths {
///     pin_yield: megapascals(355.0),
///     pin_tensile: megapascals(490.0),
///     ply_yield: megapascals(275.0),
///     replaceable: false,
/// };
/// assert!(steel.ply_yield < steel.pin_yield);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct PinStrengths {
    /// Yield strength fyp of the pin.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub pin_yield: Stress,
    /// Tensile strength fup of the pin.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub pin_tensile: Stress,
    /// Yield strength fy of the weakest ply.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub ply_yield: Stress,
    /// Whether the pin must come out again: then service loads keep it elastic
    /// ([`EnPin::service_moment`], [`EnPin::service_bearing`]).
    pub replaceable: bool,
}

/// Resistances of a pin joint by EN 1993-1-8 Table 3.10.
///
/// ```
/// use shankline::strength::pin::{PinJoint, PinStrengths, en_1993_pin};
/// use shankline::units::{megapascals, millimetres, newtons};
/// # fn main() -> Result<(), shankline::Error> {
/// let mm = millimetres;
/// let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0))?;
/// let steel = PinStrengths {
///     pin_yield: megapascals(355.0),
///     pin_tensile: megapascals(490.0),
///     ply_yield: megapascals(275.0),
///     replaceable: false,
/// };
/// let pin = en_1993_pin(&joint, &steel)?;
/// let governing = pin.governing(newtons(100e3))?;
/// assert!(governing.holds());
/// assert!(!pin.governing(newtons(300e3))?.holds());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct EnPin {
    /// The joint.
    pub joint: PinJoint,
    /// The strengths.
    pub strengths: PinStrengths,
    /// Section of the pin.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub area: Area,
    /// Design shear resistance of one plane, 0.6 A fup / 1.25.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub shear_plane: Force,
    /// Design moment resistance, 1.5 Wel fyp.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub moment: Torque,
    /// Design bearing resistance of the inner ply, 1.5 b d fy.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub inner_bearing: Force,
    /// Design bearing resistance of both outer plies together, 1.5 (2 a) d fy.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub outer_bearing: Force,
    /// Moment a replaceable pin may carry in service, 0.8 Wel fyp.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub service_moment: Option<Torque>,
    /// Load a replaceable pin may carry in service by bearing on its weaker ply, 0.6 t d fy.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub service_bearing: Option<Force>,
    /// Design load at which shear and bending together are exhausted:
    /// (M / MRd)^2 + (Fv / FvRd)^2 = 1 with Fv = F/2.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub combined: Force,
}

/// Pin joint by EN 1993-1-8:2005 Table 3.10 and Figure 3.11, with the recommended partial factors
/// (gM0 = gM6,ser = 1.0, gM2 = 1.25); a national annex may set others.
///
/// In bearing fy is the lower of pin and ply. Read: an extract of the standard with Table 3.10. A
/// paper of 2023 (Journal of Constructional Steel Research 201) finds these checks in need of revision.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a strength that is not positive and finite, a tensile strength below the
/// yield strength, or a resistance beyond all numbers.
///
/// ```
/// use shankline::strength::pin::{PinJoint, PinStrengths, en_1993_pin};
/// use shankline::units::{megapascals, millimetres};
/// # fn main() -> Result<(), shankline::Error> {
/// let mm = millimetres;
/// let strengths = PinStrengths {
///     pin_yield: megapascals(355.0),
///     pin_tensile: megapascals(490.0),
///     ply_yield: megapascals(275.0),
///     replaceable: true,
/// };
/// let near = en_1993_pin(&PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(0.0))?, &strengths)?;
/// let far = en_1993_pin(&PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(10.0))?, &strengths)?;
/// assert!(far.combined < near.combined); // a gap costs load
/// # Ok(())
/// # }
/// ```
pub fn en_1993_pin(joint: &PinJoint, strengths: &PinStrengths) -> Result<EnPin, Error> {
    let fyp = positive("yield strength of the pin", strengths.pin_yield)?;
    let fup = positive("tensile strength of the pin", strengths.pin_tensile)?;
    let fy = positive("yield strength of the ply", strengths.ply_yield)?;
    if fup < fyp {
        let allowed = Allowed::AtLeast(fyp.into());
        return Err(out_of_range("tensile strength of the pin", fup, allowed));
    }
    let area = circle(joint.diameter);
    let modulus = joint.section_modulus();
    let weaker = fy.min(fyp);
    let bearing = |factor: f64, thickness: Length| factor * (thickness * joint.diameter * weaker);
    let shear_plane = 0.6 / GAMMA_M2 * (area * fup);
    let moment: Torque = crate::units::from_base(1.5 * modulus * fyp.value);
    // Per newton of load: M / MRd and Fv / FvRd.
    let bending = 0.5 * joint.arm().value / positive("moment resistance", moment)?.value;
    let shear = 0.5 / positive("shear resistance", shear_plane)?.value;
    let combined: Force = crate::units::from_base(1.0 / math::hypot(bending, shear));
    let service = strengths.replaceable;
    Ok(EnPin {
        joint: *joint,
        strengths: *strengths,
        area,
        shear_plane,
        moment,
        inner_bearing: positive("bearing resistance", bearing(1.5, joint.inner))?,
        outer_bearing: positive("bearing resistance", bearing(1.5, 2.0 * joint.outer))?,
        service_moment: service.then(|| crate::units::from_base(0.8 * modulus * fyp.value)),
        service_bearing: service.then(|| bearing(0.6, joint.inner.min(2.0 * joint.outer))),
        combined: positive("resistance in shear and bending", combined)?,
    })
}

impl EnPin {
    /// The design load beside every resistance: shear and bending together, shear, bending, bearing
    /// inside and outside.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is negative or not finite.
    ///
    /// ```
    /// # use shankline::strength::pin::{PinJoint, PinStrengths, en_1993_pin};
    /// # use shankline::units::{megapascals, millimetres, newtons};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let mm = millimetres;
    /// # let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0))?;
    /// # let strengths = PinStrengths { pin_yield: megapascals(355.0), pin_tensile: megapascals(490.0), ply_yield: megapascals(275.0), replaceable: false };
    /// let pin = en_1993_pin(&joint, &strengths)?;
    /// assert_eq!(pin.checks(newtons(50e3))?.len(), 5);
    /// # Ok(())
    /// # }
    /// ```
    pub fn checks(&self, load: Force) -> Result<[Check; 5], Error> {
        let half = 0.5 * not_negative("load on the pin", load)?;
        let moment = self.joint.moment(load)?;
        let design = Level::Design;
        let bolt = Place::Bolt(1);
        Ok([
            Check::new(Mode::Combined, bolt, load, self.combined, design)?,
            Check::new(Mode::BoltShear, bolt, half, self.shear_plane, design)?,
            Check::new(Mode::BoltBending, bolt, moment, self.moment, design)?,
            Check::new(
                Mode::Bearing,
                Place::Ply(2),
                load,
                self.inner_bearing,
                design,
            )?,
            Check::new(
                Mode::Bearing,
                Place::Ply(1),
                load,
                self.outer_bearing,
                design,
            )?,
        ]
        .map(|check| check.by(METHOD)))
    }

    /// The check that governs.
    ///
    /// # Errors
    ///
    /// As [`checks`](Self::checks).
    ///
    /// ```
    /// # use shankline::strength::pin::{PinJoint, PinStrengths, en_1993_pin};
    /// # use shankline::strength::check::Mode;
    /// # use shankline::units::{megapascals, millimetres, newtons};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let mm = millimetres;
    /// # let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0))?;
    /// # let strengths = PinStrengths { pin_yield: megapascals(355.0), pin_tensile: megapascals(490.0), ply_yield: megapascals(275.0), replaceable: false };
    /// let pin = en_1993_pin(&joint, &strengths)?;
    /// assert_eq!(pin.governing(pin.combined)?.utilisation.value, 1.0);
    /// # Ok(())
    /// # }
    /// ```
    pub fn governing(&self, load: Force) -> Result<Check, Error> {
        let [first, rest @ ..] = self.checks(load)?;
        Ok(rest.into_iter().fold(first, |worst, next| {
            if next.utilisation > worst.utilisation {
                next
            } else {
                worst
            }
        }))
    }

    /// The working, to the load that shear and bending together allow.
    ///
    /// ```
    /// # use shankline::strength::pin::{PinJoint, PinStrengths, en_1993_pin};
    /// # use shankline::units::{megapascals, millimetres};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let mm = millimetres;
    /// # let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0))?;
    /// # let strengths = PinStrengths { pin_yield: megapascals(355.0), pin_tensile: megapascals(490.0), ply_yield: megapascals(275.0), replaceable: false };
    /// en_1993_pin(&joint, &strengths)?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let Self {
            joint, strengths, ..
        } = self;
        let fy = strengths.ply_yield.min(strengths.pin_yield);
        Derivation::new("Pin in double shear with gaps")
            .step(
                Step::new(
                    "arm of half the load",
                    "e",
                    "a / 2 + b / 4 + c",
                    joint.arm(),
                )
                .with("a", joint.outer)
                .with("b", joint.inner)
                .with("c", joint.gap)
                .source("EN 1993-1-8:2005 Figure 3.11"),
            )
            .step(
                Step::new("area of the pin", "A", "pi / 4 * d^2", self.area)
                    .with("d", joint.diameter),
            )
            .step(
                Step::new(
                    "shear resistance of a plane",
                    "FvRd",
                    "0.6 * A * fup / gM2",
                    self.shear_plane,
                )
                .with("A", self.area)
                .with("fup", strengths.pin_tensile)
                .with("gM2", GAMMA_M2)
                .source(METHOD),
            )
            .step(
                Step::new(
                    "moment resistance",
                    "MRd",
                    "1.5 * pi / 32 * d^3 * fyp",
                    self.moment,
                )
                .with("d", joint.diameter)
                .with("fyp", strengths.pin_yield)
                .source(METHOD),
            )
            .step(
                Step::new(
                    "bearing resistance of the inner ply",
                    "FbRd",
                    "1.5 * b * d * fy",
                    self.inner_bearing,
                )
                .with("b", joint.inner)
                .with("d", joint.diameter)
                .with("fy", fy)
                .source(METHOD),
            )
            .step(
                Step::new(
                    "bearing resistance of the outer plies",
                    "FbRd'",
                    "1.5 * 2 * a * d * fy",
                    self.outer_bearing,
                )
                .with("a", joint.outer)
                .with("d", joint.diameter)
                .with("fy", fy)
                .source(METHOD),
            )
            .step(
                Step::new(
                    "load that shear and bending allow",
                    "FRd",
                    "1 / sqrt((e / (2 * MRd))^2 + (1 / (2 * FvRd))^2)",
                    self.combined,
                )
                .with("e", joint.arm())
                .with("MRd", self.moment)
                .with("FvRd", self.shear_plane)
                .source(METHOD),
            )
    }
}

/// A pin too weak in bending for plies bearing evenly: they bear only next to the shear faces.
///
/// ```
/// use shankline::strength::pin::{PinJoint, weak_pin};
/// use shankline::units::{megapascals, millimetres, newton_metres};
/// # fn main() -> Result<(), shankline::Error> {
/// let mm = millimetres;
/// let joint = PinJoint::new(mm(20.0), mm(40.0), mm(60.0), mm(0.0))?;
/// let bearing = megapascals(400.0);
/// let weak = weak_pin(&joint, newton_metres(500.0), bearing, bearing)?;
/// // With even bearing 500 N m would be reached at 2 M / e = 28.6 kN.
/// assert!(weak.load.value > 28.6e3);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct WeakPin {
    /// The joint.
    pub joint: PinJoint,
    /// Moment strength of the pin.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub moment: Torque,
    /// Bearing strength of an outer ply.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub outer_bearing: Stress,
    /// Bearing strength of the inner ply.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub inner_bearing: Stress,
    /// Load at which the pin gives by bending, at the level of the strengths.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub load: Force,
    /// Thickness of each outer ply that bears, F / (2 d Fbo).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub outer_active: Length,
    /// Thickness of the inner ply that bears, half of it at each face, F / (d Fbi).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub inner_active: Length,
}

/// Load of a pin whose plies bear at full strength next to the shear faces only.
///
/// With line strengths wo = d Fbo of one outer ply and wi = d Fbi of the inner ply, and
/// C = wo wi / (wo + wi): F = 2 C (sqrt(c^2 + 2 M / C) - c).
///
/// Source: derived here from equilibrium (the bearing blocks as long as the load needs); the lug method
/// of the Air Force manual is recalled to have the same form. The result carries a caution.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a strength that is not positive and finite, and where the load would need
/// more thickness than a ply has: then the pin is not the weak part, and the plies govern with even bearing.
///
/// ```
/// use shankline::strength::pin::{PinJoint, weak_pin};
/// use shankline::units::{megapascals, millimetres, newton_metres};
/// # fn main() -> Result<(), shankline::Error> {
/// let mm = millimetres;
/// let joint = PinJoint::new(mm(20.0), mm(4.0), mm(6.0), mm(0.0))?;
/// let bearing = megapascals(400.0);
/// assert!(weak_pin(&joint, newton_metres(500.0), bearing, bearing).is_err()); // thin plies govern
/// # Ok(())
/// # }
/// ```
pub fn weak_pin(
    joint: &PinJoint,
    moment: Torque,
    outer_bearing: Stress,
    inner_bearing: Stress,
) -> Result<WeakPin, Error> {
    let strength = positive("moment strength of the pin", moment)?.value;
    let d = joint.diameter.value;
    let outer = d * positive("bearing strength of the outer ply", outer_bearing)?.value;
    let inner = d * positive("bearing strength of the inner ply", inner_bearing)?.value;
    // As 1 / (1/wo + 1/wi), so that the product cannot overflow.
    let both = 1.0 / (1.0 / outer + 1.0 / inner);
    let gap = joint.gap.value;
    // 2 C (sqrt(c^2 + q) - c) without the difference of near equals.
    let q = 2.0 * strength / both;
    let load: Force = crate::units::from_base(2.0 * both * (q / (math::sqrt(gap * gap + q) + gap)));
    positive("load of the pin", load)?;
    let outer_active: Length = crate::units::from_base(load.value / (2.0 * outer));
    let inner_active: Length = crate::units::from_base(load.value / inner);
    for (name, active, ply) in [
        ("bearing length in the outer ply", outer_active, joint.outer),
        ("bearing length in the inner ply", inner_active, joint.inner),
    ] {
        if active > ply {
            return Err(out_of_range(name, active, Allowed::AtMost(ply.into())));
        }
    }
    Ok(WeakPin {
        joint: *joint,
        moment,
        outer_bearing,
        inner_bearing,
        load,
        outer_active,
        inner_active,
    })
}

impl WeakPin {
    /// What the user must be told: the form was derived and recalled, not read.
    ///
    /// ```
    /// # use shankline::strength::pin::{PinJoint, weak_pin};
    /// # use shankline::units::{megapascals, millimetres, newton_metres};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let mm = millimetres;
    /// # let joint = PinJoint::new(mm(20.0), mm(40.0), mm(60.0), mm(0.0))?;
    /// let weak = weak_pin(&joint, newton_metres(500.0), megapascals(400.0), megapascals(400.0))?;
    /// assert_eq!(weak.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Some(Caution::MethodFromMemory {
            method: "the lug method for weak pins",
        }))
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::strength::pin::{PinJoint, weak_pin};
    /// # use shankline::units::{megapascals, millimetres, newton_metres};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let mm = millimetres;
    /// # let joint = PinJoint::new(mm(20.0), mm(40.0), mm(60.0), mm(2.0))?;
    /// let weak = weak_pin(&joint, newton_metres(500.0), megapascals(400.0), megapascals(300.0))?;
    /// weak.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        const FORMULA: &str = "2 * d * Fo * Fi / (Fo + Fi) \
             * (sqrt(c^2 + 2 * M * (Fo + Fi) / (d * Fo * Fi)) - c)";
        Derivation::new("Weak pin").step(
            Step::new("load at which the pin bends", "F", FORMULA, self.load)
                .with("d", self.joint.diameter)
                .with("Fo", self.outer_bearing)
                .with("Fi", self.inner_bearing)
                .with("c", self.joint.gap)
                .with("M", self.moment)
                .source("equilibrium of bearing blocks at the shear faces"),
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{megapascals, millimetres, newton_metres, newtons};

    /// The active blocks put back into the statics give the moment strength again.
    #[test]
    fn weak_pin_is_in_equilibrium() {
        let mm = millimetres;
        for gap in [0.0, 0.5, 8.0] {
            let joint = PinJoint::new(mm(20.0), mm(60.0), mm(90.0), mm(gap)).unwrap();
            let (outer, inner) = (megapascals(300.0), megapascals(450.0));
            let weak = weak_pin(&joint, newton_metres(700.0), outer, inner).unwrap();
            let active =
                PinJoint::new(mm(20.0), weak.outer_active, weak.inner_active, mm(gap)).unwrap();
            let moment = active.moment(weak.load).unwrap();
            assert!((moment.value - 700.0).abs() < 1e-9, "{moment:?}");
        }
    }

    /// 30 mm pin, worked by hand: A = 706.86 mm2, `FvRd` = 0.6 x 706.86 x 490 / 1.25 = 166.26 kN,
    /// `MRd` = 1.5 x 2650.7 x 355 = 1.4115 kN m.
    #[test]
    fn en_pin_by_hand() {
        let mm = millimetres;
        let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0)).unwrap();
        let strengths = PinStrengths {
            pin_yield: megapascals(355.0),
            pin_tensile: megapascals(490.0),
            ply_yield: megapascals(275.0),
            replaceable: true,
        };
        let pin = en_1993_pin(&joint, &strengths).unwrap();
        assert!((pin.shear_plane.value - 166_253.0).abs() < 10.0);
        assert!((pin.moment.value - 1411.5).abs() < 0.1);
        assert!((pin.inner_bearing.value - 1.5 * 20.0 * 30.0 * 275.0).abs() < 1e-6);
        let at = pin.checks(pin.combined).unwrap();
        let sum = at[1].utilisation.value.powi(2) + at[2].utilisation.value.powi(2);
        assert!((sum - 1.0).abs() < 1e-12);
        assert!(pin.service_moment.unwrap() < pin.moment);
        assert!(pin.checks(newtons(f64::NAN)).is_err());
    }

    #[test]
    fn extremes_are_errors_not_numbers() {
        let mm = millimetres;
        for d in [1e-300, 1e-9, 1e6] {
            if let Ok(joint) = PinJoint::new(mm(d), mm(1e6), mm(1e6), mm(1e6)) {
                let strengths = PinStrengths {
                    pin_yield: megapascals(1e300),
                    pin_tensile: megapascals(1e301),
                    ply_yield: megapascals(1e300),
                    replaceable: true,
                };
                if let Ok(pin) = en_1993_pin(&joint, &strengths) {
                    assert!(pin.combined.value.is_finite());
                }
                let weak = weak_pin(
                    &joint,
                    newton_metres(1e300),
                    megapascals(1e-300),
                    megapascals(1e300),
                );
                assert!(weak.is_err() || weak.unwrap().load.value.is_finite());
            }
        }
    }
}
