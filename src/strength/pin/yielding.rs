//! Pins that stay elastic in bending, by machine design.

use super::PinJoint;
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, positive, sane_stress};
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::tables::methods;
use crate::units::{Force, Stress, Torque};

const METHOD: &Method = methods::BENDING_YIELD;

/// A pin whose outer fibre just yields, and what is left of that by a design factor.
///
/// ```
/// use shankline::strength::pin::{PinJoint, yielding_pin};
/// use shankline::units::{megapascals, millimetres, newtons};
/// # fn main() -> Result<(), shankline::Error> {
/// let mm = millimetres;
/// let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0))?;
/// let pin = yielding_pin(&joint, megapascals(355.0), 2.0)?;
/// // pi / 32 x 30^3 x 355 / 2 = 470.5 N m against 240 N m
/// assert!((pin.check(newtons(40e3), shankline::strength::check::Level::Allowable)?
///     .utilisation.value - 240.0 / 470.5).abs() < 1e-4);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct YieldingPin {
    /// The joint.
    pub joint: PinJoint,
    /// Yield strength Sy of the pin.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub yield_strength: Stress,
    /// Design factor n.
    pub design_factor: f64,
    /// Moment at first yield, pi/32 d^3 Sy.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal: Torque,
    /// Allowable moment, the nominal one over n.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub allowable: Torque,
}

/// A pin in bending by the flexure formula: M = pi/32 d^3 Sy, over a design factor.
///
/// Source: Shigley, Mechanical Engineering Design, 9th ed., Eq. 3-24 for the stress 32 M / (pi d^3) of a
/// round bar; the design factor is the caller's.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a strength outside 1 Pa to 1e6 GPa, a factor below 1, or a moment
/// that overflows.
///
/// ```
/// use shankline::strength::pin::{PinJoint, yielding_pin};
/// use shankline::units::{megapascals, millimetres};
/// let mm = millimetres;
/// let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0)).unwrap();
/// assert!(yielding_pin(&joint, megapascals(355.0), 0.5).is_err());
/// ```
pub fn yielding_pin(
    joint: &PinJoint,
    yield_strength: Stress,
    design_factor: f64,
) -> Result<YieldingPin, Error> {
    sane_stress("yield strength of the pin", yield_strength)?;
    positive("design factor", design_factor)?;
    if design_factor < 1.0 {
        let allowed = Allowed::AtLeast(1.0.into());
        return Err(out_of_range("design factor", design_factor, allowed));
    }
    let moment: Torque = crate::units::from_base(joint.section_modulus() * yield_strength.value);
    let nominal = positive("moment resistance", moment)?;
    Ok(YieldingPin {
        joint: *joint,
        yield_strength,
        design_factor,
        nominal,
        allowable: positive("moment resistance", nominal / design_factor)?,
    })
}

impl YieldingPin {
    /// Checks the moment of a load against the resistance of a level.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is negative or not finite; [`Error::NoValue`] for a design
    /// resistance, which the method does not have.
    ///
    /// ```
    /// use shankline::strength::{check::Level, pin::{PinJoint, yielding_pin}};
    /// use shankline::units::{megapascals, millimetres, newtons};
    /// let mm = millimetres;
    /// let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0)).unwrap();
    /// let pin = yielding_pin(&joint, megapascals(355.0), 2.0).unwrap();
    /// assert!(pin.check(newtons(40e3), Level::Nominal).unwrap().holds());
    /// assert!(pin.check(newtons(40e3), Level::Design).is_err());
    /// ```
    pub fn check(&self, load: Force, level: Level) -> Result<Check, Error> {
        let resistance = match level {
            Level::Nominal => self.nominal,
            Level::Allowable => self.allowable,
            Level::Design => {
                return Err(Error::NoValue {
                    quantity: "design resistance",
                    subject: METHOD.citation.into(),
                    reason: "the method compares service loads",
                });
            }
        };
        let moment = self.joint.moment(load)?;
        Check::new(
            Mode::BoltBending,
            Place::Bolt(1),
            moment,
            resistance,
            level,
            METHOD,
        )
    }

    /// The working, to the allowable moment.
    ///
    /// ```
    /// # use shankline::strength::pin::{PinJoint, yielding_pin};
    /// # use shankline::units::{megapascals, millimetres};
    /// # let mm = millimetres;
    /// # let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0)).unwrap();
    /// yielding_pin(&joint, megapascals(355.0), 2.0).unwrap().derivation().check().unwrap();
    /// ```
    pub fn derivation(&self) -> Derivation {
        let joint = &self.joint;
        Derivation::new("Pin in double shear, elastic bending")
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
                .source(methods::STATICS_OF_PLIES_THAT_BEAR_EVENLY),
            )
            .step(
                Step::new("moment at yield", "My", "pi / 32 * d^3 * Sy", self.nominal)
                    .with("d", joint.diameter)
                    .with("Sy", self.yield_strength)
                    .source(methods::SHIGLEY_9TH_ED_EQ_3_24),
            )
            .step(
                Step::new("allowable moment", "Ma", "My / n", self.allowable)
                    .with("My", self.nominal)
                    .with("n", self.design_factor),
            )
    }
}
