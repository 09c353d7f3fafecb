//! Tension and torsion while tightening, where only the nut factor is known.

use super::{TighteningStress, TorsionModel};
use crate::caution::Cautions;
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range};
use crate::preload::{Friction, FrictionForm, NutFactor, ShortForm};
use crate::spread::Spread;
use crate::tables::methods;
use crate::tables::nanometres;
use crate::thread::Thread;
use crate::units::{Force, Length, Ratio, Stress, degrees};

/// Stresses at the end of tightening with a torque set by a nut factor: the greatest preload, and with it the torsion
/// of the friction that the least nut factor implies.
///
/// The least nut factor goes with the greatest preload. What it leaves for the friction is shared as if thread and
/// face had the same coefficient; a running torque counts with its greatest value, all of it in the thread. A
/// slipperier face than thread would twist the bolt more.
///
/// Not for a tensioner, which does not twist the bolt: there the stress is the preload over the stress area.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::units::kilonewtons;
/// # fn main() -> Result<(), shankline::Error> {
/// // M12 8.8 at 90 % of proof with K from 0.20 to 0.22 is 95 % of the proof load, yet it yields.
/// let form = ShortForm::new(NutFactor::new(0.20, 0.21, 0.22)?, millimetres(12.0))?;
/// let (thread, greatest) = ("M12".parse()?, kilonewtons(46.2));
/// let stress = form.tightening_stress(
///     &thread, millimetres(15.07), greatest, megapascals(640.0), TorsionModel::Vdi2230,
/// )?;
/// assert!(stress.utilisation.value > 1.0);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LumpedStress {
    /// Least nut factor.
    pub nut_factor: f64,
    /// Coefficient of thread and face that it implies.
    pub friction: f64,
    /// Effective diameter of the turned face, Db.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bearing_diameter: Length,
    /// Tension, torsion and equivalent stress at the greatest preload with that friction; all three of each
    /// spread are the same. `stress.in_service` goes on to the service load.
    pub stress: TighteningStress,
    /// Yield strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub yield_strength: Stress,
    /// Equivalent stress over yield strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub utilisation: Ratio,
}

impl LumpedStress {
    /// Equivalent stress by von Mises, sqrt(sigma^2 + 3 tau^2).
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let form = ShortForm::new(NutFactor::new(0.20, 0.21, 0.22)?, millimetres(12.0))?;
    /// let stress = form.tightening_stress(
    ///     &"M12".parse()?, millimetres(15.07), newtons(40e3), megapascals(640.0), TorsionModel::JisB1083,
    /// )?;
    /// assert!(stress.equivalent() > stress.stress.tension);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn equivalent(&self) -> Stress {
        self.stress.equivalent.nominal
    }

    /// What the user must be told of the torque form.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let form = ShortForm::new(NutFactor::new(0.20, 0.21, 0.22)?, millimetres(12.0))?;
    /// let stress = form.tightening_stress(
    ///     &"M12".parse()?, millimetres(15.07), newtons(40e3), megapascals(640.0), TorsionModel::Vdi2230,
    /// )?;
    /// assert_eq!(stress.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.stress.cautions()
    }

    /// The working: friction implied, torque in the thread, stresses, share of yield.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let form = ShortForm::new(NutFactor::new(0.20, 0.21, 0.22)?, millimetres(12.0))?;
    /// let stress = form.tightening_stress(
    ///     &"M12".parse()?, millimetres(15.07), newtons(40e3), megapascals(640.0), TorsionModel::Vdi2230,
    /// )?;
    /// stress.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let thread = self.stress.form.thread();
        Derivation::new(alloc::format!(
            "Tension and torsion of {thread} during tightening"
        ))
        .step(Step::given("least nut factor", "K", self.nut_factor))
        .step(
            Step::new(
                "friction of thread and face that it implies",
                "mu",
                "(K * d - P / (2 * pi)) / (d2 / (2 * cos(alpha)) + Db / 2)",
                self.friction,
            )
            .with("K", self.nut_factor)
            .with("d", thread.nominal_diameter())
            .with("P", thread.lead())
            .with("d2", thread.basic_pitch_diameter())
            .with("alpha", degrees(30.0))
            .with("Db", self.bearing_diameter)
            .source(methods::JIS_B_1083_SOLVED_FOR_THE_FRICTION),
        )
        .and(self.stress.derivation())
        .step(
            Step::new(
                "share of the yield strength",
                "u",
                "sigmae / Rp",
                self.utilisation,
            )
            .with("sigmae", self.equivalent())
            .with("Rp", self.yield_strength),
        )
    }
}

impl ShortForm {
    /// Stresses at the end of tightening to the greatest preload, by the least nut factor of this form.
    ///
    /// `bearing_diameter` is the effective diameter of the turned face, such as
    /// [`BearingFace::effective_diameter`](crate::preload::BearingFace::effective_diameter): the smaller, the more of the
    /// torque twists the bolt. `model` names the torsion: [`TorsionModel::Vdi2230`] plastic,
    /// [`TorsionModel::JisB1083`] elastic.
    ///
    /// Source: VDI 2230 Part 1 (2001) for the stresses; JIS B 1083 for the torque.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a thread of another diameter than the form;
    /// [`Error::OutOfRange`] for a least nut factor below that of the bare pitch, a bearing diameter that is not
    /// positive and finite, a preload that is negative or not finite, or a yield strength that is not positive and
    /// finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let form = ShortForm::new(NutFactor::new(0.15, 0.18, 0.22)?, inches(0.5))?;
    /// let stress = form.tightening_stress(
    ///     &"1/2-13 UNC".parse()?, inches(0.625), pounds_force(9000.0), ksi(92.0), TorsionModel::Vdi2230,
    /// )?;
    /// assert!(stress.friction > 0.1 && stress.utilisation.value < 0.85);
    /// # Ok(())
    /// # }
    /// ```
    pub fn tightening_stress(
        &self,
        thread: &Thread,
        bearing_diameter: Length,
        greatest: Force,
        yield_strength: Stress,
        model: TorsionModel,
    ) -> Result<LumpedStress, Error> {
        if nanometres(thread.nominal_diameter()) != nanometres(self.nominal_diameter()) {
            return Err(Error::Mismatch(alloc::format!(
                "the torque is not that of {thread}: it is for another diameter"
            )));
        }
        let least = self.nut_factor().min();
        let friction = Friction::from_nut_factor(
            NutFactor::new(least, least, least)?,
            thread,
            bearing_diameter,
        )?;
        let form = FrictionForm::linear(thread, bearing_diameter, friction, friction)?
            .with_prevailing(Spread::exact(self.prevailing_torque().max))?;
        let stress = form.tightening_stress(greatest, model)?;
        let utilisation = stress.utilisation(yield_strength)?.nominal;
        if !utilisation.value.is_finite() {
            return Err(out_of_range(
                "yield strength",
                yield_strength,
                Allowed::Positive,
            ));
        }
        Ok(LumpedStress {
            nut_factor: least,
            friction: friction.nominal(),
            bearing_diameter,
            stress,
            yield_strength,
            utilisation,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::material::PropertyClass;
    use crate::units::{megapascals, millimetres, newton_metres, newtons};

    const YIELD: Stress = megapascals(640.0);

    fn m12(model: TorsionModel, greatest: Force) -> Result<LumpedStress, Error> {
        let form = ShortForm::new(NutFactor::new(0.20, 0.21, 0.22)?, millimetres(12.0))?;
        form.tightening_stress(&"M12".parse()?, millimetres(15.07), greatest, YIELD, model)
    }

    fn near(found: Stress, mpa: f64) {
        assert!(
            (found - megapascals(mpa)).abs() < megapascals(0.5),
            "{found:?} {mpa}"
        );
    }

    /// M12 8.8 at 90 % of proof: the tension is 95 % of the proof stress, with torsion it passes yield.
    #[test]
    fn torsion_takes_a_permanent_preload_past_yield() {
        let thread: Thread = "M12".parse().unwrap();
        let bolt = PropertyClass::Class8_8.strength(millimetres(12.0)).unwrap();
        let proof = bolt.loads(&thread).unwrap().proof.unwrap();
        let greatest = 0.9 * proof * (0.21 / 0.20);
        let plastic = m12(TorsionModel::Vdi2230, greatest).unwrap();
        // By hand: mu = (2.4 - 0.2785) / (6.272 + 7.535) = 0.1537, a = 1.242 mm, 46.2 kN, W = 290.96 mm3.
        assert!((plastic.friction - 0.1537).abs() < 1e-4);
        near(plastic.stress.tension, 548.1);
        near(plastic.stress.torsion.nominal, 197.2);
        near(plastic.equivalent(), 646.0);
        assert!(plastic.utilisation.value > 1.0);
        let elastic = m12(TorsionModel::JisB1083, greatest).unwrap();
        near(elastic.equivalent(), 712.2);
        for stress in [plastic, elastic] {
            stress.derivation().check().unwrap();
        }
        // Friction of 0.16 in place of what K = 0.20 implies.
        let sixteen = Friction::new(0.16, 0.16, 0.16).unwrap();
        let form = FrictionForm::linear(&thread, millimetres(15.07), sixteen, sixteen).unwrap();
        let of = |model| form.tightening_stress(greatest, model).unwrap();
        near(of(TorsionModel::Vdi2230).equivalent.nominal, 651.6);
        near(of(TorsionModel::JisB1083).equivalent.nominal, 721.9);
    }

    #[test]
    fn a_running_torque_twists_the_bolt_too() {
        let free = ShortForm::new(NutFactor::new(0.2, 0.21, 0.22).unwrap(), millimetres(12.0));
        let lock = Spread {
            min: newton_metres(2.0),
            nominal: newton_metres(5.0),
            max: newton_metres(8.0),
        };
        let (thread, force) = ("M12".parse().unwrap(), newtons(40e3));
        let of = |form: ShortForm| {
            form.tightening_stress(
                &thread,
                millimetres(15.0),
                force,
                YIELD,
                TorsionModel::Vdi2230,
            )
            .unwrap()
            .stress
            .thread_torque
            .nominal
        };
        let free = free.unwrap();
        let more = of(free.with_prevailing(lock).unwrap()) - of(free);
        assert!((more - newton_metres(8.0)).abs() < newton_metres(1e-9));
    }

    #[test]
    fn refuses_nonsense_at_the_door() {
        for bad in [-1.0, f64::NAN, f64::INFINITY] {
            assert!(m12(TorsionModel::Vdi2230, newtons(bad)).is_err(), "{bad}");
        }
        let k = |least| NutFactor::new(least, 0.2, 0.2).unwrap();
        let of = |least, thread: &str, db, strength| {
            ShortForm::new(k(least), millimetres(12.0))
                .unwrap()
                .tightening_stress(
                    &thread.parse().unwrap(),
                    millimetres(db),
                    newtons(40e3),
                    megapascals(strength),
                    TorsionModel::Vdi2230,
                )
        };
        assert!(of(0.1, "M12", 15.0, 640.0).is_ok());
        assert!(of(0.1, "M16", 15.0, 640.0).is_err());
        // Below the bare pitch, 1.75 / (2 pi 12) = 0.0232, no friction is left.
        assert!(of(0.023, "M12", 15.0, 640.0).is_err());
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            assert!(of(0.1, "M12", bad, 640.0).is_err(), "{bad}");
            assert!(of(0.1, "M12", 15.0, bad).is_err(), "{bad}");
        }
    }
}
