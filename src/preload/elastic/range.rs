//! The preload at the coldest and the hottest of a joint that is warm all through.

use alloc::{format, vec::Vec};

use super::{ElasticJoint, ThermalChange, ThermalLayer};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::spread::{Spread, ordered};
use crate::units::{
    Force, Length, TemperatureCoefficient, TemperatureInterval, ThermodynamicTemperature, from_base,
};

/// Layers whose growth the working writes out.
const WRITTEN_OUT: usize = 12;

/// Changes of a preload between the coldest and the hottest service, from the temperature of assembly.
///
/// The whole joint has one temperature at a time. Where bolt and plies differ, see
/// [`ElasticJoint::thermal_change`].
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::expansion::{Expansion, ExpandingMetal};
/// use shankline::units::{celsius, kilonewtons, newtons_per_millimetre};
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = Expansion::of_bolt(PropertyClass::Class8_8.into())?.expansion;
/// let aluminium = Expansion::of(ExpandingMetal::Aluminium)?.expansion;
/// let (kb, km) = (newtons_per_millimetre(940e3), newtons_per_millimetre(1170e3));
/// let range = ElasticJoint::new(millimetres(2.0), kb, km)?.thermal_range(
///     bolt, &[(millimetres(40.0), aluminium)], celsius(20.0), celsius(-20.0), celsius(150.0),
/// )?;
/// let preload = range.applied_to(Spread::exact(kilonewtons(60.0)))?;
/// assert!(preload.min < kilonewtons(60.0) && preload.max > kilonewtons(85.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ThermalRange {
    /// Expansion of the bolt.
    #[cfg_attr(feature = "serde", serde(skip))]
    bolt: TemperatureCoefficient,
    /// Thickness and expansion of the members.
    #[cfg_attr(feature = "serde", serde(skip))]
    layers: Vec<(Length, TemperatureCoefficient)>,
    /// Temperature of assembly.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub assembled: ThermodynamicTemperature,
    /// Lowest temperature in service.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub coldest: ThermodynamicTemperature,
    /// Highest temperature in service.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub hottest: ThermodynamicTemperature,
    /// Change at the lowest temperature.
    pub at_coldest: ThermalChange,
    /// Change at the highest temperature.
    pub at_hottest: ThermalChange,
}

impl ThermalRange {
    /// The change that leaves the least preload: negative, or nothing if no service temperature slackens the bolt.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::units::{celsius, newtons_per_millimetre, ppm_per_kelvin};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let k = newtons_per_millimetre(500e3);
    /// let range = ElasticJoint::new(millimetres(2.0), k, k)?.thermal_range(
    ///     ppm_per_kelvin(12.0), &[(millimetres(40.0), ppm_per_kelvin(23.0))],
    ///     celsius(20.0), celsius(20.0), celsius(60.0),
    /// )?;
    /// assert_eq!(range.least(), newtons(0.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn least(&self) -> Force {
        let (cold, hot) = (self.at_coldest.change, self.at_hottest.change);
        from_base(cold.value.min(hot.value).min(0.0))
    }

    /// The change that gives the greatest preload: positive, or nothing if no service temperature tightens the bolt.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::units::{celsius, newtons_per_millimetre, ppm_per_kelvin};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let k = newtons_per_millimetre(500e3);
    /// let range = ElasticJoint::new(millimetres(2.0), k, k)?.thermal_range(
    ///     ppm_per_kelvin(12.0), &[(millimetres(40.0), ppm_per_kelvin(23.0))],
    ///     celsius(20.0), celsius(-10.0), celsius(60.0),
    /// )?;
    /// assert!((range.greatest() - newtons(4400.0)).abs() < newtons(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn greatest(&self) -> Force {
        let (cold, hot) = (self.at_coldest.change, self.at_hottest.change);
        from_base(cold.value.max(hot.value).max(0.0))
    }

    /// The preload with its changes: the least one at the temperature that slackens it most, the greatest at the one
    /// that tightens it most. The nominal one stays that of assembly.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a preload that is negative, not finite or out of order.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::units::{celsius, newtons_per_millimetre, ppm_per_kelvin};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let k = newtons_per_millimetre(500e3);
    /// let range = ElasticJoint::new(millimetres(2.0), k, k)?.thermal_range(
    ///     ppm_per_kelvin(12.0), &[(millimetres(40.0), ppm_per_kelvin(23.0))],
    ///     celsius(20.0), celsius(-180.0), celsius(60.0),
    /// )?;
    /// // All of a small preload goes in the cold.
    /// assert_eq!(range.applied_to(Spread::exact(newtons(9e3)))?.min, newtons(0.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn applied_to(&self, preload: Spread<Force>) -> Result<Spread<Force>, Error> {
        let preload = ordered("preload", preload)?;
        let least = preload.min + self.least();
        Ok(Spread {
            min: from_base(least.value.max(0.0)),
            nominal: preload.nominal,
            max: not_negative("preload", preload.max + self.greatest())?,
        })
    }

    /// The working at both temperatures.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::units::{celsius, newtons_per_millimetre, ppm_per_kelvin};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let k = newtons_per_millimetre(500e3);
    /// let range = ElasticJoint::new(millimetres(2.0), k, k)?.thermal_range(
    ///     ppm_per_kelvin(12.0), &[(millimetres(40.0), ppm_per_kelvin(23.0))],
    ///     celsius(20.0), celsius(-10.0), celsius(60.0),
    /// )?;
    /// range.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let title = "Change of the preload between the coldest and the hottest service";
        let joint = self.at_coldest.joint;
        let length: Length = from_base(self.layers.iter().map(|layer| layer.0.value).sum());
        let mut derivation =
            joint
                .steps(title)
                .step(Step::given("temperature of assembly", "T0", self.assembled));
        for (name, temperature, change, [t, d, gb, gm, df]) in [
            (
                "coldest",
                self.coldest,
                &self.at_coldest,
                ["Tc", "dTc", "gbc", "gmc", "dFc"],
            ),
            (
                "hottest",
                self.hottest,
                &self.at_hottest,
                ["Th", "dTh", "gbh", "gmh", "dFh"],
            ),
        ] {
            let interval = interval(self.assembled, temperature);
            let what = format!("growth of the members, {name}");
            let members = if self.layers.len() <= WRITTEN_OUT {
                let products: Vec<_> = (1..=self.layers.len())
                    .map(|index| format!("a{index} * t{index}"))
                    .collect();
                let formula = format!("({}) * {d}", products.join(" + "));
                let step = Step::new(what, gm, formula, change.member_growth).with(d, interval);
                self.layers
                    .iter()
                    .zip(1..)
                    .fold(step, |step, (layer, index)| {
                        step.with(format!("a{index}"), layer.1.value)
                            .with(format!("t{index}"), layer.0)
                    })
            } else {
                Step::given(what, gm, change.member_growth)
            };
            derivation = derivation
                .step(Step::given(format!("{name} service"), t, temperature))
                .step(
                    Step::new(
                        format!("change of temperature, {name}"),
                        d,
                        format!("{t} - T0"),
                        interval,
                    )
                    .with(t, temperature)
                    .with("T0", self.assembled),
                )
                .step(
                    Step::new(
                        format!("growth of the bolt, {name}"),
                        gb,
                        format!("ab * L * {d}"),
                        change.bolt_growth,
                    )
                    .with("ab", self.bolt.value)
                    .with("L", length)
                    .with(d, interval),
                )
                .step(members)
                .step(
                    Step::new(
                        format!("change of the preload, {name}"),
                        df,
                        format!("({gm} - {gb}) * k"),
                        change.change,
                    )
                    .with(gm, change.member_growth)
                    .with(gb, change.bolt_growth)
                    .with("k", joint.both),
                );
        }
        derivation
    }
}

fn interval(from: ThermodynamicTemperature, to: ThermodynamicTemperature) -> TemperatureInterval {
    from_base(to.value - from.value)
}

impl ElasticJoint {
    /// Changes of the preload at the coldest and the hottest service against the temperature of assembly.
    ///
    /// `bolt` is the expansion of the bolt, whose length is that of all `layers`; these are thickness and expansion of
    /// plies and washers. Take the expansions of
    /// [`PlyMaterial`](crate::tables::plies::PlyMaterial) and
    /// [`Expansion`](crate::tables::expansion::Expansion). The stiffnesses are those at room temperature, which gives
    /// a little too much when hot; what creep and relaxation take is not in it.
    ///
    /// Source: as [`thermal_change`](Self::thermal_change).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for no layer, a thickness that is not positive and finite, an expansion that is not
    /// finite, a temperature below absolute zero or not finite, or a lowest temperature above the highest.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::{celsius, newtons_per_millimetre, ppm_per_kelvin};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let (kb, km) = (newtons_per_millimetre(300e3), newtons_per_millimetre(600e3));
    /// let joint = ElasticJoint::new(millimetres(1.75), kb, km)?;
    /// let steel = ppm_per_kelvin(12.0);
    /// let range = joint.thermal_range(
    ///     steel,
    ///     &[(millimetres(30.0), ppm_per_kelvin(23.0)), (millimetres(10.0), steel)],
    ///     celsius(20.0), celsius(-20.0), celsius(100.0),
    /// )?;
    /// assert!((range.at_hottest.change - newtons(5280.0)).abs() < newtons(1e-6));
    /// assert!((range.at_coldest.change + newtons(2640.0)).abs() < newtons(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    pub fn thermal_range(
        &self,
        bolt: TemperatureCoefficient,
        layers: &[(Length, TemperatureCoefficient)],
        assembled: ThermodynamicTemperature,
        coldest: ThermodynamicTemperature,
        hottest: ThermodynamicTemperature,
    ) -> Result<ThermalRange, Error> {
        for (name, temperature) in [
            ("temperature of assembly", assembled),
            ("lowest temperature in service", coldest),
            ("highest temperature in service", hottest),
        ] {
            not_negative(name, temperature)?;
        }
        if coldest > hottest {
            return Err(out_of_range(
                "lowest temperature in service",
                coldest,
                Allowed::AtMost(hottest.into()),
            ));
        }
        let length = layers
            .iter()
            .fold(Length::default(), |sum, layer| sum + layer.0);
        let at = |temperature| {
            let change = interval(assembled, temperature);
            let of = |(length, expansion)| ThermalLayer {
                expansion,
                length,
                change,
            };
            let members: Vec<_> = layers.iter().copied().map(of).collect();
            self.thermal_change(of((length, bolt)), &members)
        };
        Ok(ThermalRange {
            bolt,
            layers: layers.to_vec(),
            assembled,
            coldest,
            hottest,
            at_coldest: at(coldest)?,
            at_hottest: at(hottest)?,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::material::PropertyClass;
    use crate::tables::expansion::{ExpandingMetal, Expansion};
    use crate::tension::{BoltStiffness, GripSections, Layer, WilemanMaterial, wileman};
    use crate::units::{
        celsius, kilonewtons, megapascals, millimetres, newtons, newtons_per_millimetre,
        ppm_per_kelvin,
    };

    fn joint() -> ElasticJoint {
        let k = newtons_per_millimetre(500e3);
        ElasticJoint::new(millimetres(2.0), k, k).unwrap()
    }

    /// M16 8.8 through 40 mm of aluminium from 20 to 150 degC: about 30 kN more, by springs of Shigley and Wileman.
    #[test]
    fn aluminium_tightens_a_steel_bolt_when_hot() {
        let thread: crate::thread::Thread = "M16".parse().unwrap();
        let sections = GripSections::new(millimetres(26.0), millimetres(14.0)).unwrap();
        let kb = BoltStiffness::shigley(&thread, sections, megapascals(205e3)).unwrap();
        let members = Layer::new(millimetres(40.0), megapascals(71e3)).unwrap();
        let km = wileman(WilemanMaterial::Aluminium, millimetres(16.0), members).unwrap();
        let (kb, km) = (kb.stiffness, km.stiffness);
        let bolt = Expansion::of_bolt(PropertyClass::Class8_8.into()).unwrap();
        let ply = Expansion::of(ExpandingMetal::Aluminium).unwrap();
        let plies = [(millimetres(20.0), ply.expansion); 2];
        let range = ElasticJoint::new(thread.pitch(), kb, km)
            .unwrap()
            .thermal_range(
                bolt.expansion,
                &plies,
                celsius(20.0),
                celsius(-20.0),
                celsius(150.0),
            )
            .unwrap();
        let hot = range.greatest();
        assert!(
            kilonewtons(28.0) < hot && hot < kilonewtons(32.0),
            "{hot:?}"
        );
        assert!(((range.least() / hot).value + 40.0 / 130.0).abs() < 1e-9);
        range.derivation().check().unwrap();
    }

    #[test]
    fn both_ends_count_whichever_way_the_metals_differ() {
        // A stainless bolt in steel: heat slackens it, cold tightens it.
        let layers = [(millimetres(40.0), ppm_per_kelvin(12.0))];
        let range = joint()
            .thermal_range(
                ppm_per_kelvin(16.0),
                &layers,
                celsius(20.0),
                celsius(-30.0),
                celsius(120.0),
            )
            .unwrap();
        assert!((range.least() + newtons(4000.0)).abs() < newtons(1e-6));
        assert!((range.greatest() - newtons(2000.0)).abs() < newtons(1e-6));
        let all = range
            .applied_to(Spread {
                min: newtons(10e3),
                nominal: newtons(20e3),
                max: newtons(30e3),
            })
            .unwrap();
        assert!((all.min - newtons(6e3)).abs() < newtons(1e-6));
        assert_eq!(all.nominal, newtons(20e3));
        assert!((all.max - newtons(32e3)).abs() < newtons(1e-6));
        // Assembled warmer than it ever serves: the preload of assembly is still there at first.
        let cold = joint()
            .thermal_range(
                ppm_per_kelvin(16.0),
                &layers,
                celsius(20.0),
                celsius(-30.0),
                celsius(-20.0),
            )
            .unwrap();
        assert_eq!(cold.least(), newtons(0.0));
        // Many layers: the working no longer writes them out.
        let many = [(millimetres(1.0), ppm_per_kelvin(12.0)); 200];
        let range = joint()
            .thermal_range(
                ppm_per_kelvin(16.0),
                &many,
                celsius(20.0),
                celsius(-30.0),
                celsius(120.0),
            )
            .unwrap();
        range.derivation().check().unwrap();
    }

    #[test]
    fn refuses_nonsense_at_the_door() {
        let of = |a: f64, t: f64, cold: f64, hot: f64| {
            joint().thermal_range(
                ppm_per_kelvin(12.0),
                &[(millimetres(t), ppm_per_kelvin(a))],
                celsius(20.0),
                celsius(cold),
                celsius(hot),
            )
        };
        assert!(of(23.0, 40.0, 0.0, 100.0).is_ok());
        assert!(of(23.0, 40.0, 100.0, 0.0).is_err());
        assert!(of(23.0, 40.0, -300.0, 0.0).is_err());
        for bad in [f64::NAN, f64::INFINITY, -f64::INFINITY] {
            assert!(of(bad, 40.0, 0.0, 100.0).is_err(), "{bad}");
            assert!(of(23.0, bad, 0.0, 100.0).is_err(), "{bad}");
            assert!(of(23.0, 40.0, bad, 100.0).is_err(), "{bad}");
            assert!(of(23.0, 40.0, 0.0, bad).is_err(), "{bad}");
        }
        for bad in [0.0, -1.0] {
            assert!(of(23.0, bad, 0.0, 100.0).is_err(), "{bad}");
        }
        let none = joint().thermal_range(
            ppm_per_kelvin(12.0),
            &[],
            celsius(20.0),
            celsius(0.0),
            celsius(100.0),
        );
        assert!(none.is_err());
        let range = of(23.0, 40.0, 0.0, 100.0).unwrap();
        for bad in [-1.0, f64::NAN, f64::INFINITY] {
            assert!(
                range.applied_to(Spread::exact(newtons(bad))).is_err(),
                "{bad}"
            );
        }
    }
}
