//! What heat does to a preload.

use super::ElasticJoint;
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, sane_length};
use crate::units::{Force, Length, TemperatureCoefficient, TemperatureInterval, from_base};

/// A bolt or a ply that changes its temperature.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::plies::PlyMaterial;
/// use shankline::units::kelvins;
/// # fn main() -> Result<(), shankline::Error> {
/// let layer = ThermalLayer {
///     expansion: PlyMaterial::find("ASTM A36 steel")?.expansion.unwrap(),
///     length: millimetres(20.0),
///     change: kelvins(60.0),
/// };
/// assert!(layer.length > millimetres(0.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ThermalLayer {
    /// Coefficient of thermal expansion.
    pub expansion: TemperatureCoefficient,
    /// Length: grip of the bolt, thickness of a ply.
    pub length: Length,
    /// Change of temperature since tightening, with its sign.
    pub change: TemperatureInterval,
}

impl ThermalLayer {
    fn growth(&self, name: &'static str) -> Result<Length, Error> {
        sane_length(name, self.length)?;
        let growth = self.expansion.value * self.change.value * self.length.value;
        if growth.is_finite() {
            Ok(from_base(growth))
        } else if self.change.value.is_finite() {
            Err(out_of_range(
                "coefficient of expansion",
                self.expansion.value,
                Allowed::NotNegative,
            ))
        } else {
            Err(out_of_range(
                "change of temperature",
                self.change,
                Allowed::NotNegative,
            ))
        }
    }
}

/// Change of a preload with the temperature.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::units::{TemperatureCoefficient, kelvins, newtons_per_millimetre};
/// use shankline::uom::si::temperature_coefficient::ppm_per_kelvin;
/// # fn main() -> Result<(), shankline::Error> {
/// let k = newtons_per_millimetre(300e3);
/// let steel = ThermalLayer {
///     expansion: TemperatureCoefficient::new::<ppm_per_kelvin>(12.0),
///     length: millimetres(40.0),
///     change: kelvins(80.0),
/// };
/// // All of one material and one temperature: nothing changes.
/// let change = ElasticJoint::new(millimetres(1.75), k, k)?.thermal_change(steel, &[steel])?;
/// assert_eq!(change.change, newtons(0.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ThermalChange {
    /// The joint.
    pub joint: ElasticJoint,
    /// Free growth of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_growth: Length,
    /// Free growth of the members.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub member_growth: Length,
    /// Change of the preload: positive tightens.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub change: Force,
}

impl ThermalChange {
    /// Preload at temperature, nothing if the members have come free.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a preload that is negative, not finite or too large.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::units::{TemperatureCoefficient, kelvins, newtons_per_millimetre};
    /// # use shankline::uom::si::temperature_coefficient::ppm_per_kelvin;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let k = newtons_per_millimetre(300e3);
    /// # let layer = |ppm: f64| ThermalLayer {
    /// #     expansion: TemperatureCoefficient::new::<ppm_per_kelvin>(ppm),
    /// #     length: millimetres(40.0),
    /// #     change: kelvins(-80.0),
    /// # };
    /// let change = ElasticJoint::new(millimetres(1.75), k, k)?.thermal_change(layer(12.0), &[layer(23.0)])?;
    /// assert!(change.applied_to(newtons(20e3))? < newtons(20e3)); // cold aluminium shrinks more
    /// # Ok(())
    /// # }
    /// ```
    pub fn applied_to(&self, preload: Force) -> Result<Force, Error> {
        not_negative("preload", preload)?;
        let changed = preload + self.change;
        not_negative("preload", from_base(changed.value.max(0.0)))
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::units::{TemperatureCoefficient, kelvins, newtons_per_millimetre};
    /// # use shankline::uom::si::temperature_coefficient::ppm_per_kelvin;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let k = newtons_per_millimetre(300e3);
    /// # let layer = |ppm: f64| ThermalLayer {
    /// #     expansion: TemperatureCoefficient::new::<ppm_per_kelvin>(ppm),
    /// #     length: millimetres(40.0),
    /// #     change: kelvins(80.0),
    /// # };
    /// let joint = ElasticJoint::new(millimetres(1.75), k, k)?;
    /// joint.thermal_change(layer(12.0), &[layer(23.0)])?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        self.joint
            .steps("Change of the preload with the temperature")
            .step(Step::given("growth of the bolt", "gb", self.bolt_growth))
            .step(Step::given(
                "growth of the members",
                "gm",
                self.member_growth,
            ))
            .step(
                Step::new("change of the preload", "dF", "(gm - gb) * k", self.change)
                    .with("gm", self.member_growth)
                    .with("gb", self.bolt_growth)
                    .with("k", self.joint.both),
            )
    }
}

impl ElasticJoint {
    /// Change of the preload when bolt and members warm up or cool down, each by its own change:
    /// dF = [sum(alpha L dT) of the members - alpha L dT of the bolt] / (1/kb + 1/km).
    ///
    /// Positive where the members grow more. `bolt` has the length between the bearing faces. The
    /// stiffnesses are those at temperature: a modulus falls with it, and with it the preload.
    ///
    /// Source: statics; read in this form on a public page of bolt formulas, and the free growths in
    /// M.-Z. Lee, How internal loads affect bolt preload, Machine Design, November 2010.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not positive and finite, an expansion or change that
    /// is not finite, or a result that is not finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::{TemperatureCoefficient, kelvins, newtons_per_millimetre};
    /// use shankline::uom::si::temperature_coefficient::ppm_per_kelvin;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let layer = |ppm: f64, length: f64| ThermalLayer {
    ///     expansion: TemperatureCoefficient::new::<ppm_per_kelvin>(ppm),
    ///     length: millimetres(length),
    ///     change: kelvins(80.0),
    /// };
    /// let (kb, km) = (newtons_per_millimetre(300e3), newtons_per_millimetre(600e3));
    /// let joint = ElasticJoint::new(millimetres(1.75), kb, km)?;
    /// // Steel bolt through 30 mm of aluminium and 10 mm of steel.
    /// let change = joint.thermal_change(layer(12.0, 40.0), &[layer(23.0, 30.0), layer(12.0, 10.0)])?;
    /// assert!((change.change - newtons(5280.0)).abs() < newtons(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    pub fn thermal_change(
        &self,
        bolt: ThermalLayer,
        members: &[ThermalLayer],
    ) -> Result<ThermalChange, Error> {
        let bolt_growth = bolt.growth("length of the bolt")?;
        let mut member_growth = Length::default();
        for layer in members {
            member_growth += layer.growth("thickness of a member")?;
        }
        let change = (member_growth - bolt_growth).value * self.both.value;
        if !change.is_finite() {
            return Err(out_of_range(
                "thermal growth",
                member_growth,
                Allowed::AtMost(crate::error::LONGEST.into()),
            ));
        }
        Ok(ThermalChange {
            joint: *self,
            bolt_growth,
            member_growth,
            change: from_base(change),
        })
    }
}
