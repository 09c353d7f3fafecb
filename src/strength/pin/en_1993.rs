//! Pins by EN 1993-1-8.

use super::PinJoint;
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, positive, sane_stress};
use crate::math;
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::code::en_1993::GAMMA_M2;
use crate::tables::methods;
use crate::thread::area::circle;
use crate::units::{Area, Force, Length, Stress, Torque};

pub(crate) const METHOD: &Method = methods::EN_1993_1_8_2005_TABLE_3_10;

/// Strengths a pin joint is checked with by EN 1993-1-8.
///
/// ```
/// use shankline::{strength::pin::PinStrengths, units::megapascals};
/// let steel = PinStrengths {
///     pin_yield: megapascals(355.0),
///     pin_tensile: megapascals(490.0),
///     ply_yield: megapascals(275.0),
/// };
/// assert!(steel.ply_yield < steel.pin_yield);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
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
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub area: Area,
    /// Design shear resistance of one plane, 0.6 A fup / 1.25.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub shear_plane: Force,
    /// Design moment resistance, 1.5 Wel fyp.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub moment: Torque,
    /// Design bearing resistance of the inner ply, 1.5 b d fy.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub inner_bearing: Force,
    /// Design bearing resistance of both outer plies together, 1.5 (2 a) d fy.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub outer_bearing: Force,
    /// Moment a replaceable pin may carry in service, 0.8 Wel fyp.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub service_moment: Torque,
    /// Load a replaceable pin may carry in service by bearing on its weaker ply, 0.6 t d fy.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub service_bearing: Force,
    /// Design load at which shear and bending together are exhausted:
    /// (M / MRd)^2 + (Fv / FvRd)^2 = 1 with Fv = F/2.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub combined: Force,
}

/// Pin joint by EN 1993-1-8:2005 Table 3.10 and Figure 3.11, with the recommended partial factors
/// (gM0 = gM6,ser = 1.0, gM2 = 1.25); a national annex may set others.
///
/// A pin that must come out again has limits in service as well: [`EnPin::service_checks`] and
/// [`EnPin::contact_check`], which want the characteristic load.
///
/// In bearing fy is the lower of pin and ply. Read: an extract of the standard with Table 3.10. A
/// paper of 2023 (Journal of Constructional Steel Research 201) finds these checks in need of revision.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a strength outside 1 Pa to 1e6 GPa, a tensile strength below the
/// yield strength, or a resistance that overflows.
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
/// };
/// let near = en_1993_pin(&PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(0.0))?, &strengths)?;
/// let far = en_1993_pin(&PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(10.0))?, &strengths)?;
/// assert!(far.combined < near.combined); // a gap costs load
/// # Ok(())
/// # }
/// ```
pub fn en_1993_pin(joint: &PinJoint, strengths: &PinStrengths) -> Result<EnPin, Error> {
    let fyp = sane_stress("yield strength of the pin", strengths.pin_yield)?;
    let fup = sane_stress("tensile strength of the pin", strengths.pin_tensile)?;
    let fy = sane_stress("yield strength of the ply", strengths.ply_yield)?;
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
    Ok(EnPin {
        joint: *joint,
        strengths: *strengths,
        area,
        shear_plane,
        moment,
        inner_bearing: positive("bearing resistance", bearing(1.5, joint.inner))?,
        outer_bearing: positive("bearing resistance", bearing(1.5, 2.0 * joint.outer))?,
        service_moment: crate::units::from_base(0.8 * modulus * fyp.value),
        service_bearing: positive(
            "bearing resistance",
            bearing(0.6, joint.inner.min(2.0 * joint.outer)),
        )?,
        combined: positive("resistance in shear and bending", combined)?,
    })
}

/// One ply around a pin in bearing, 1.5 t d fy, with fy the lower of pin and ply.
pub(crate) fn around_pin(
    thickness: Length,
    diameter: Length,
    fy: Stress,
    load: Force,
) -> Result<(Check, Derivation), Error> {
    let resistance: Force = 1.5 * (thickness * diameter * fy);
    let derivation = Derivation::new("Ply around a pin").step(
        Step::new("bearing resistance", "FbRd", "1.5 * t * d * fy", resistance)
            .with("t", thickness)
            .with("d", diameter)
            .with("fy", fy)
            .source(METHOD),
    );
    let check = Check::new(
        Mode::Bearing,
        Place::Ply(1),
        load,
        resistance,
        Level::Design,
        METHOD,
    )?;
    Ok((check, derivation))
}

/// Ends and sides of a plate around a pin, EN 1993-1-8 Table 3.9, type A: past the edge of the hole there
/// is at least F / (2 t fy) + 2 d0 / 3 to the end, and F / (2 t fy) + d0 / 3 to the side. From the centre of the hole
/// half of d0 comes on top.
///
/// None where the distance is not given.
pub(crate) fn en_1993_lug(
    thickness: Length,
    hole: Length,
    fy: Stress,
    load: Force,
    distances: [Option<Length>; 2],
) -> Result<[Option<Check>; 2], Error> {
    let strip: Length = load / (2.0 * (thickness * fy));
    let check = |distance: Option<Length>, share: f64| -> Result<Option<Check>, Error> {
        let Some(distance) = distance else {
            return Ok(None);
        };
        let wanted = strip + (share + 0.5) * hole;
        let check = Check::new(
            Mode::TearOut,
            Place::Ply(1),
            wanted,
            distance,
            Level::Design,
            methods::EN_1993_1_8_2005_TABLE_3_9_TYPE_A,
        )?;
        Ok(Some(check.not_proportional()))
    };
    Ok([
        check(distances[0], 2.0 / 3.0)?,
        check(distances[1], 1.0 / 3.0)?,
    ])
}

impl EnPin {
    /// Checks the design load against every resistance: shear and bending together, shear, bending, bearing
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
    /// # let strengths = PinStrengths { pin_yield: megapascals(355.0), pin_tensile: megapascals(490.0), ply_yield: megapascals(275.0) };
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
            Check::new(Mode::Combined, bolt, load, self.combined, design, METHOD)?,
            Check::new(
                Mode::BoltShear,
                bolt,
                half,
                self.shear_plane,
                design,
                METHOD,
            )?,
            Check::new(Mode::BoltBending, bolt, moment, self.moment, design, METHOD)?,
            Check::new(
                Mode::Bearing,
                Place::Ply(2),
                load,
                self.inner_bearing,
                design,
                METHOD,
            )?,
            Check::new(
                Mode::Bearing,
                Place::Ply(1),
                load,
                self.outer_bearing,
                design,
                METHOD,
            )?,
        ])
    }

    /// Of the design checks the one that governs.
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
    /// # let strengths = PinStrengths { pin_yield: megapascals(355.0), pin_tensile: megapascals(490.0), ply_yield: megapascals(275.0) };
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
    /// # let strengths = PinStrengths { pin_yield: megapascals(355.0), pin_tensile: megapascals(490.0), ply_yield: megapascals(275.0) };
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
                .source(methods::EN_1993_1_8_2005_FIGURE_3_11),
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{megapascals, millimetres, newtons};

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
        };
        let pin = en_1993_pin(&joint, &strengths).unwrap();
        assert!((pin.shear_plane.value - 166_253.0).abs() < 10.0);
        assert!((pin.moment.value - 1411.5).abs() < 0.1);
        assert!((pin.inner_bearing.value - 1.5 * 20.0 * 30.0 * 275.0).abs() < 1e-6);
        let at = pin.checks(pin.combined).unwrap();
        let sum = at[1].utilisation.value.powi(2) + at[2].utilisation.value.powi(2);
        assert!((sum - 1.0).abs() < 1e-12);
        assert!(pin.service_moment < pin.moment);
        assert!(pin.checks(newtons(f64::NAN)).is_err());
    }
}
