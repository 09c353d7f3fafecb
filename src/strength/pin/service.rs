//! Limits in service of pins that must come out again, by EN 1993-1-8.

use super::en_1993::{EnPin, METHOD};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, sane_length};
use crate::math;
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::tables::methods;
use crate::units::{Force, Length, Stress, megapascals};

/// Modulus of elasticity of steel, EN 1993-1-1 3.2.6.
const STEEL: Stress = megapascals(210e3);
const CONTACT: &Method = methods::EN_1993_1_8_2005_EQ_3_14_TO_3_16;

impl EnPin {
    /// Bending and bearing of a replaceable pin in service: 0.8 Wel fyp and 0.6 t d fy, over gM6,ser = 1.0.
    ///
    /// `service` is the characteristic load, without load factors. The checks are of the allowable level, which
    /// service loads belong to. Contact stress needs the hole: [`contact_check`](Self::contact_check).
    ///
    /// Source: EN 1993-1-8:2005 Table 3.10, its page read.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is negative or not finite.
    ///
    /// ```
    /// use shankline::strength::check::Level;
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
    /// let [bending, bearing] = en_1993_pin(&joint, &steel)?.service_checks(newtons(80e3))?;
    /// // 480 N m of 0.8 x 2650.7 mm3 x 355 MPa = 752.8 N m; 80 kN of 0.6 x 20 x 30 x 275 = 99 kN
    /// assert!((bending.utilisation.value - 480.0 / 752.8).abs() < 1e-4);
    /// assert!((bearing.utilisation.value - 80.0 / 99.0).abs() < 1e-9);
    /// assert_eq!(bearing.level, Level::Allowable);
    /// # Ok(())
    /// # }
    /// ```
    pub fn service_checks(&self, service: Force) -> Result<[Check; 2], Error> {
        let load = not_negative("characteristic load on the pin", service)?;
        let moment = self.joint.moment(load)?;
        let level = Level::Allowable;
        let ply = if self.joint.inner <= 2.0 * self.joint.outer {
            Place::Ply(2)
        } else {
            Place::Ply(1)
        };
        Ok([
            Check::new(
                Mode::BoltBending,
                Place::Bolt(1),
                moment,
                self.service_moment,
                level,
                METHOD,
            )?,
            Check::new(
                Mode::Bearing,
                ply,
                load,
                self.service_bearing,
                level,
                METHOD,
            )?,
        ])
    }

    /// Contact stress of a replaceable pin in its hole, of steel on steel:
    /// 0.591 sqrt(E F (d0 - d) / (d^2 t)) against 2.5 fy / gM6,ser, F the characteristic load, d0 the hole.
    ///
    /// t is the inner ply or both outer ones, whichever is thinner. A hole without clearance has no such stress.
    ///
    /// Source: EN 1993-1-8:2005 Eq. 3.14 to 3.16, the page read; E = 210 GPa of EN 1993-1-1 3.2.6.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is negative or not finite, or a hole smaller than the pin.
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
    /// // 0.591 sqrt(210e3 x 80e3 x 1 / (900 x 20)) = 570.9 MPa of 2.5 x 275 = 687.5 MPa
    /// let contact = pin.contact_check(newtons(80e3), mm(31.0))?;
    /// assert!((contact.utilisation.value - 570.9 / 687.5).abs() < 1e-3);
    /// # Ok(())
    /// # }
    /// ```
    pub fn contact_check(&self, service: Force, hole: Length) -> Result<Check, Error> {
        let stress = self.contact_stress(service, hole)?;
        let check = Check::new(
            Mode::Bearing,
            Place::Joint,
            stress,
            2.5 * self.weaker_yield(),
            Level::Allowable,
            CONTACT,
        )?;
        // The pressure grows with the root of the load.
        Ok(check.not_proportional())
    }

    fn contact_stress(&self, service: Force, hole: Length) -> Result<Stress, Error> {
        let load = not_negative("characteristic load on the pin", service)?;
        let hole = sane_length("hole diameter", hole)?;
        let d = self.joint.diameter;
        if hole < d {
            return Err(out_of_range(
                "hole diameter",
                hole,
                Allowed::AtLeast(d.into()),
            ));
        }
        let clearance = ((hole - d) / d).value;
        let pressure: Stress = load / (d * self.thinner());
        let product = STEEL.value * pressure.value * clearance;
        not_negative(
            "contact stress",
            crate::units::from_base(0.591 * math::sqrt(product)),
        )
    }

    /// Thickness that carries the whole load: the inner ply or both outer ones.
    fn thinner(&self) -> Length {
        self.joint.inner.min(2.0 * self.joint.outer)
    }

    fn weaker_yield(&self) -> Stress {
        self.strengths.ply_yield.min(self.strengths.pin_yield)
    }

    /// The working of the limits in service; with the hole that of the contact stress too.
    ///
    /// # Errors
    ///
    /// Those of [`service_checks`](Self::service_checks) and [`contact_check`](Self::contact_check).
    ///
    /// ```
    /// # use shankline::strength::pin::{PinJoint, PinStrengths, en_1993_pin};
    /// # use shankline::units::{megapascals, millimetres, newtons};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let mm = millimetres;
    /// # let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0))?;
    /// # let steel = PinStrengths { pin_yield: megapascals(355.0), pin_tensile: megapascals(490.0), ply_yield: megapascals(275.0) };
    /// let pin = en_1993_pin(&joint, &steel)?;
    /// pin.service_derivation(newtons(80e3), Some(mm(31.0)))?.check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn service_derivation(
        &self,
        service: Force,
        hole: Option<Length>,
    ) -> Result<Derivation, Error> {
        let moment = self.joint.moment(service)?;
        let (d, fy) = (self.joint.diameter, self.weaker_yield());
        let mut derivation = Derivation::new("Replaceable pin in service")
            .step(
                Step::given("characteristic load", "F", service)
                    .source(methods::LOAD_ON_THE_JOINT_WITHOUT_LOAD_FACTORS),
            )
            .step(
                Step::new("moment in service", "M", "F / 2 * e", moment)
                    .with("F", service)
                    .with("e", self.joint.arm())
                    .source(methods::EN_1993_1_8_2005_FIGURE_3_11),
            )
            .step(
                Step::new(
                    "moment it may carry in service",
                    "Mser",
                    "0.8 * pi / 32 * d^3 * fyp",
                    self.service_moment,
                )
                .with("d", d)
                .with("fyp", self.strengths.pin_yield)
                .source(METHOD),
            )
            .step(
                Step::new(
                    "load it may carry in service by bearing",
                    "Fser",
                    "0.6 * t * d * fy",
                    self.service_bearing,
                )
                .with("t", self.thinner())
                .with("d", d)
                .with("fy", fy)
                .source(METHOD),
            );
        if let Some(hole) = hole {
            let stress = self.contact_stress(service, hole)?;
            derivation = derivation
                .step(
                    Step::new(
                        "contact stress",
                        "sh",
                        "0.591 * sqrt(E * F * (d0 - d) / (d^2 * t))",
                        stress,
                    )
                    .with("E", STEEL)
                    .with("F", service)
                    .with("d0", hole)
                    .with("d", d)
                    .with("t", self.thinner())
                    .source(CONTACT),
                )
                .step(
                    Step::new("contact stress it may have", "fh", "2.5 * fy", 2.5 * fy)
                        .with("fy", fy)
                        .source(CONTACT),
                );
        }
        Ok(derivation)
    }
}
