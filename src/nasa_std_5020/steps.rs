//! From the preload to the margins.

use alloc::{format, vec::Vec};

use super::joint::{
    AllowableOf, Factors, FastenedJoint, JointSlip, LimitLoads, LoadCycles, SeparationHazard,
    SlipFriction,
};
use super::result::{FastenedCheck, Margins};
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, not_negative, out_of_range, positive, sane_stress, within};
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode, NotChecked, Place};
use crate::strength::interaction::{Interaction, InteractionRule, interaction};
use crate::tables::methods;
use crate::units::{Force, Ratio, Stress, newtons};

/// No bolt carries a thousandth of it; sums of forces stay finite.
const MOST_LOAD: Force = newtons(1e12);
/// No allowable is less.
const LEAST_ALLOWABLE: Force = newtons(1e-3);
/// Factors beyond it are slips of the pen.
const MOST_FACTOR: f64 = 100.0;
/// Sums of a joint and shares of its bolts are the same load to this part.
const SAME_LOAD: f64 = 1e-9;
/// The fitting factor of joints that are not tested to their ultimate load.
const FITTING: f64 = 1.15;

impl Factors {
    pub(super) fn cautions(&self) -> Cautions {
        let advice =
            "a fitting factor of 1.15, and 1 only where the joint is tested to its ultimate load";
        Cautions::default().with((self.fitting < FITTING).then_some(Caution::AgainstAdvice {
            method: methods::NASA_STD_5020_FITTING_FACTOR,
            advice,
        }))
    }
}

/// Whether `P'sep` comes before `P'tu` or `P'ty`; where one of them never comes, the other is first.
pub(super) fn separates_first(separation: Option<Force>, breaks: Option<Force>) -> bool {
    match (separation, breaks) {
        (Some(separation), Some(breaks)) => separation < breaks,
        (separation, _) => separation.is_some(),
    }
}

impl FastenedJoint {
    /// Works the preloads and the margins of safety.
    ///
    /// A joint that parts, slips, yields or breaks is a result whose checks fail; refused is what has no meaning.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for loads that are negative or beyond any bolt, for allowables that are not positive or out of
    /// order, for factors below 1 or above 100, for a yield factor above the ultimate one, for a share of the bolt that is not
    /// from 0 to 1, for friction of more than 1, and where the losses take all of the least preload;
    /// [`Error::Mismatch`] for a preload of [several bolts](crate::preload::NasaPreload::not_separation_critical) where a hazard
    /// hangs on the separation, or of others than those that resist slip; and for a bolt that has less than its part of the loads
    /// that the joint resists slip under.
    ///
    /// ```
    /// use shankline::Error;
    /// use shankline::nasa_std_5020::{FastenedCheck, FastenedJoint, Factors, SeparationHazard};
    /// fn both(joint: &FastenedJoint) -> Result<(FastenedCheck, FastenedCheck), Error> {
    ///     let factors = Factors { hazard: SeparationHazard::Catastrophic, ..joint.factors };
    ///     Ok((joint.check()?, FastenedJoint { factors, ..joint.clone() }.check()?))
    /// }
    /// ```
    pub fn check(&self) -> Result<FastenedCheck, Error> {
        self.sound()?;
        let preload = self.preload.range()?;
        let (greatest, felt) = (preload.service_max, self.share.share.value);
        let allowable = &self.allowable;
        let separation_load = (felt < 1.0).then(|| greatest / (1.0 - felt));
        let at = |load: Force| (felt > 0.0).then(|| (load - greatest) / felt);
        let rupture_load = at(allowable.ultimate_tension);
        let yield_load = at(allowable.yield_tension);
        let first = |breaks: Option<Force>, own: Force| match breaks {
            Some(breaks) if !separates_first(separation_load, Some(breaks)) => breaks,
            // Of rigid members: the preload alone.
            None if greatest > own => own - greatest,
            _ => own,
        };
        let ultimate = first(rupture_load, allowable.ultimate_tension);
        let yielding = first(yield_load, allowable.yield_tension);
        let mut check = FastenedCheck {
            joint: self.clone(),
            preload,
            separation_load,
            rupture_load,
            yield_load,
            ultimate,
            yielding,
            combined: None,
            margins: Margins {
                ultimate_tension: self.margin(ultimate, self.factors.ultimate, self.loads.tension),
                yielding: self.margin(yielding, self.factors.yielding, self.loads.tension),
                separation: self.margin(
                    preload.service_min,
                    self.factors.separation(),
                    self.loads.tension,
                ),
                shear: self.margin(
                    allowable.ultimate_shear,
                    self.factors.ultimate,
                    self.loads.shear,
                ),
                combined: None,
                slip: None,
            },
            checks: Vec::new(),
            missing: self.unsaid(),
        };
        check.all()?;
        Ok(check)
    }

    /// Allowable over FF FS P, less one; none where nothing acts.
    fn margin(&self, allowable: Force, factor: f64, load: Force) -> Option<f64> {
        let factored = self.factors.fitting * factor * load;
        (load > Force::default()).then(|| (allowable / factored).value - 1.0)
    }

    /// Refuses what does not belong together.
    fn sound(&self) -> Result<(), Error> {
        let Factors {
            fitting,
            ultimate,
            yielding,
            hazard,
        } = self.factors;
        within("fitting factor", fitting, 1.0, MOST_FACTOR)?;
        within("ultimate factor", ultimate, 1.0, MOST_FACTOR)?;
        within("yield factor", yielding, 1.0, ultimate)?;
        // The fields of a share are open.
        let share = self.share.share;
        if !(0.0..=1.0).contains(&share.value) {
            let allowed = Allowed::FromTo(0.0.into(), 1.0.into());
            return Err(out_of_range(
                "share of the bolt in the load",
                share,
                allowed,
            ));
        }
        if let SeparationHazard::None { test } = hazard {
            within("factor of the test", test, 1.0, MOST_FACTOR)?;
        } else if self.preload.bolts().is_some() {
            return Err(Error::Mismatch(
                "the preload is that of a joint that is not separation-critical, and a hazard hangs on its separation"
                    .into(),
            ));
        }
        let allowable = &self.allowable;
        for (quantity, force) in [
            ("ultimate tension", allowable.ultimate_tension),
            ("yield tension", allowable.yield_tension),
            ("ultimate shear", allowable.ultimate_shear),
        ] {
            within(quantity, force, LEAST_ALLOWABLE, MOST_LOAD)?;
        }
        if allowable.yield_tension > allowable.ultimate_tension {
            let allowed = Allowed::AtMost(allowable.ultimate_tension.into());
            return Err(out_of_range(
                "yield tension",
                allowable.yield_tension,
                allowed,
            ));
        }
        sane_stress("ultimate bending stress", allowable.bending)?;
        for (quantity, force) in [
            ("tension of the bolt", self.loads.tension),
            ("shear of the bolt", self.loads.shear),
        ] {
            sane_load(quantity, force)?;
        }
        if self.loads.bending != Stress::default() {
            sane_stress("bending stress of the bolt", self.loads.bending)?;
        }
        self.sound_slip()
    }

    fn sound_slip(&self) -> Result<(), Error> {
        let JointSlip::Resisted {
            bolts,
            tension,
            shear,
            friction,
            factor,
        } = self.slip
        else {
            return Ok(());
        };
        sane_load("tension of the joint", tension)?;
        sane_load("shear of the joint", shear)?;
        if let SlipFriction::Tested(tested) = friction {
            within("friction of the faces", tested, 1e-3, 1.0)?;
        }
        within("factor against slip", factor, 1.0, MOST_FACTOR)?;
        if self.preload.bolts().is_some_and(|own| own != bolts) {
            return Err(Error::Mismatch(format!(
                "the scatter of the preload averages out over other bolts than the {bolts} that hold the joint against slip"
            )));
        }
        let count = f64::from(bolts.get());
        for (kind, own, whole) in [
            ("tension", self.loads.tension, tension),
            ("shear", self.loads.shear, shear),
        ] {
            if own * count < whole * (1.0 - SAME_LOAD) {
                return Err(Error::Mismatch(format!(
                    "the {kind} of the bolt is less than its part of the {kind} of the joint, and no bolt has more"
                )));
            }
        }
        Ok(())
    }

    /// Whether the bolt is sheared by more than its part of the joint, which the formula against slip has no place for.
    fn has_uneven_shear(&self) -> bool {
        match self.slip {
            JointSlip::Resisted { bolts, shear, .. } => {
                self.loads.shear * f64::from(bolts.get()) > shear * (1.0 + SAME_LOAD)
            }
            JointSlip::Permitted => false,
        }
    }

    fn unsaid(&self) -> Vec<NotChecked> {
        let mut missing = Vec::new();
        let mut note = |mode, quantity, reason| {
            missing.push(NotChecked::new(
                mode,
                Error::NoValue {
                    quantity,
                    subject: format!("{mode}"),
                    reason,
                },
            ));
        };
        let unstated = "nobody stated it: say that there is none";
        if !self.preload.is_torque_tolerance_said() {
            note(Mode::Tightening, "tolerance of the torque", unstated);
        }
        if !self.preload.is_creep_said() {
            note(Mode::Settling, "loss by creep", unstated);
        }
        if !self.preload.is_thermal_said() {
            note(Mode::Settling, "change with the temperature", unstated);
        }
        if self.has_uneven_shear() {
            let reason = "the bolt has more than its part of the shear of the joint: a moment in the plane, or uneven shares";
            note(Mode::Slip, "slip of the joint", reason);
        }
        if self.loads.cycles == LoadCycles::Repeated {
            let reason = "NASA-STD-5020 leaves it to fracture control and an analysis of its own";
            note(Mode::Fatigue, "life", reason);
        }
        if self.allowable.of == AllowableOf::Bolt {
            let reason = "the allowable tension is that of the bolt alone";
            note(
                Mode::Stripping,
                "tension of nut, insert or tapped thread",
                reason,
            );
        }
        missing
    }

    /// Eq. 20 or 22; none where neither bending nor two kinds of load act. Of a joint that parts first the bolt has the load alone
    /// when it breaks; else shear and bending find the preload in it as well.
    fn together(&self, closed: Option<Force>) -> Result<Option<Interaction>, Error> {
        let none = Force::default();
        let LimitLoads {
            tension,
            shear,
            bending,
            ..
        } = self.loads;
        let bent = bending > Stress::default();
        if !bent && (tension <= none || shear <= none) {
            return Ok(None);
        }
        let factor = self.factors.fitting * self.factors.ultimate;
        let factored = factor * tension;
        let felt = closed.map_or(factored, |closed| closed.max(factored));
        let ratio = |load: Ratio| factor * load;
        interaction(
            InteractionRule::NasaStd5020,
            ratio(shear / self.allowable.ultimate_shear),
            felt / self.allowable.ultimate_tension,
            ratio(bending / self.allowable.bending),
            self.allowable.plane,
        )
        .map(Some)
    }
}

fn sane_load(quantity: &'static str, force: Force) -> Result<Force, Error> {
    not_negative(quantity, force)?;
    if force > MOST_LOAD {
        return Err(out_of_range(
            quantity,
            force,
            Allowed::AtMost(MOST_LOAD.into()),
        ));
    }
    Ok(force)
}

impl FastenedCheck {
    /// A check for every margin, and the margins that come of one.
    fn all(&mut self) -> Result<(), Error> {
        let joint = self.joint.clone();
        let Factors {
            fitting,
            ultimate,
            yielding,
            ..
        } = joint.factors;
        let tension = joint.loads.tension;
        let allowable = &joint.allowable;
        let mut all = Vec::from([
            self.tension(
                fitting * ultimate * tension,
                self.ultimate,
                allowable.ultimate_tension,
                methods::NASA_STD_5020_EQ_6_AND_7,
            )?,
            self.tension(
                fitting * yielding * tension,
                self.yielding,
                allowable.yield_tension,
                methods::NASA_STD_5020_EQ_6_AND_7_AT_YIELD,
            )?,
        ]);
        let least = positive("least preload in service", self.preload.service_min)?;
        all.push(force_check(
            Mode::Separation,
            fitting * joint.factors.separation() * tension,
            least,
            methods::NASA_STD_5020_EQ_19,
        )?);
        all.push(
            Check::new(
                Mode::BoltShear,
                Place::Bolt(1),
                fitting * ultimate * joint.loads.shear,
                allowable.ultimate_shear,
                Level::Nominal,
                methods::NASA_STD_5020B_EQ_12_TO_14,
            )?
            .warned_of_method(),
        );
        let closed =
            (!self.separates_before_rupture()).then(|| self.closed(fitting * ultimate * tension));
        if let Some(both) = joint.together(closed)? {
            self.combined = Some(both);
            self.margins.combined = Some(1.0 / both.utilisation.value - 1.0);
            let check = both.check(Level::Nominal)?;
            all.push(match closed {
                Some(_) => check.not_proportional(),
                None => check,
            });
        }
        if let JointSlip::Resisted {
            bolts,
            tension,
            shear,
            friction,
            factor,
        } = joint.slip
        {
            let mu = friction.value();
            let holds = f64::from(bolts.get()) * mu * least;
            let pushes = fitting * factor * (shear + mu * tension);
            if pushes > Force::default() {
                self.margins.slip = Some((holds / pushes).value - 1.0);
            }
            let check = force_check(Mode::Slip, pushes, holds, methods::NASA_STD_5020_JOINT_SLIP)?;
            all.push(if matches!(friction, SlipFriction::Tested(_)) {
                check
            } else {
                let assumed = Caution::of_method(methods::NASA_STD_5020_FRICTION);
                check.warned(Cautions::default().with(assumed))
            });
        }
        self.checks = all;
        Ok(())
    }

    /// What the bolt of a joint that is still closed has under a load.
    fn closed(&self, factored: Force) -> Force {
        self.preload.service_max + self.joint.share.share.value * factored
    }

    /// Eq. 6 or 7. Where tightening takes all, nothing is left to hold against a load: then Eq. 10 as a sum.
    fn tension(
        &self,
        factored: Force,
        counts: Force,
        allowable: Force,
        method: &'static Method,
    ) -> Result<Check, Error> {
        let (mode, place) = (Mode::BoltTension, Place::Bolt(1));
        if counts > Force::default() {
            return Check::new(mode, place, factored, counts, Level::Nominal, method)
                .map(Check::warned_of_method);
        }
        let felt = self.closed(factored).max(factored);
        let check = Check::new(mode, place, felt, allowable, Level::Nominal, method)?;
        Ok(check.not_proportional().warned_of_method())
    }
}

fn force_check(
    mode: Mode,
    demand: Force,
    resistance: Force,
    method: &'static Method,
) -> Result<Check, Error> {
    let check = Check::new(
        mode,
        Place::Joint,
        demand,
        resistance,
        Level::Nominal,
        method,
    )?;
    Ok(check.warned_of_method())
}
