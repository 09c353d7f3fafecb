//! Bending of the bolt, where gaps or play let it bend.

use core::f64::consts::PI;

use super::checks::Report;
use super::{Finding, Joint, Subject};
use crate::error::Error;
use crate::joint::Candidate;
use crate::material::{BoltLoads, BoltStrength};
use crate::math::sqrt;
use crate::strength::check::{Level, Mode};
use crate::strength::pin::{PinJoint, PinStrengths, en_1993_pin, yielding_pin};
use crate::strength::shear::{ShearMethod, en_tensile_strength, en_yield_strength};
use crate::tables::plies::PlyMaterial;
use crate::units::{Force, Length, Stress, from_base};

impl Joint {
    /// Bending of a bolt in double shear across gaps, or of a pivot, which nothing clamps.
    ///
    /// With the plies at their greatest thickness and the wider gap on both sides; neither a sleeve over the
    /// bolt nor the clamping of its ends is counted on. If a plane may cut thread, the whole bolt bends as
    /// its tensile stress area.
    pub(super) fn bending(
        &self,
        candidate: &Candidate,
        strength: &BoltStrength,
        loads: &BoltLoads,
        report: &mut Report,
    ) -> Result<(), Error> {
        let planes = self.stack.shear_planes();
        if self.load.across <= Force::default() || planes.is_empty() {
            return Ok(());
        }
        if self.plies.iter().any(|ply| ply.timber.is_some()) {
            report.skip(
                Mode::BoltBending,
                "in timber the bolt bends within its yield, which has a check of its own",
            );
            return Ok(());
        }
        let gap = self.widest_gap();
        if gap <= Length::default() && !self.environment.rotates {
            report.skip(
                Mode::BoltBending,
                "the plies touch and nothing turns: how far a clamped bolt bends is not modelled",
            );
            return Ok(());
        }
        if self.stack.tapped_part().is_some() {
            report.skip(
                Mode::BoltBending,
                "how far a screw bends at a tapped part is not modelled",
            );
            return Ok(());
        }
        let &[first, second] = planes else {
            report.skip(
                Mode::BoltBending,
                "only double shear has a method here: gaps and play bend other bolts too",
            );
            return Ok(());
        };
        let mut shares = self.stack.plane_shares();
        if shares.next() != shares.next() {
            report.skip(
                Mode::BoltBending,
                "the two shear planes carry unequal loads",
            );
            return Ok(());
        }
        let thickness = |plies: &[crate::joint::Layer]| {
            plies
                .iter()
                .fold(Length::default(), |sum, ply| sum + ply.thickness.max)
        };
        let plies = self.stack.plies();
        let (Some(before), Some(inside), Some(after)) = (
            plies.get(..first),
            plies.get(first..second),
            plies.get(second..),
        ) else {
            return Ok(());
        };
        // Gaps between the plies of one side put its load further out.
        let apart = |plies: core::ops::Range<usize>| {
            let gaps = plies.filter_map(|ply| self.stack.gap_after(ply));
            gaps.fold(Length::default(), |sum, gap| sum + gap.max)
        };
        let outer = (thickness(before) + apart(1..first))
            .max(thickness(after) + apart(second + 1..plies.len()));
        let in_thread = candidate.planes_in_run_out + candidate.planes_in_thread > 0;
        let diameter = if in_thread {
            from_base(sqrt(4.0 / PI * loads.tensile_stress_area.value))
        } else {
            self.bolt.thread.nominal_diameter()
        };
        let pin = PinJoint::new(diameter, outer, thickness(inside), gap)?;
        self.bent(&pin, strength, report)
    }

    fn bent(
        &self,
        pin: &PinJoint,
        strength: &BoltStrength,
        report: &mut Report,
    ) -> Result<(), Error> {
        let level = self.methods.level;
        let load = self.load.factor(level) * self.load.across;
        match (self.methods.shear, level) {
            (
                ShearMethod::DistortionEnergy { design_factor, .. },
                Level::Allowable | Level::Nominal,
            ) => {
                let Some(yield_strength) = strength.yield_strength else {
                    report.skip_bolt(Mode::BoltBending, "the grade has no yield strength");
                    return Ok(());
                };
                let pin = yielding_pin(pin, yield_strength, design_factor)?;
                report.work(|| pin.derivation());
                report.checks.push(pin.check(load, level)?);
            }
            (ShearMethod::En1993, Level::Design) => {
                let Some(ply_yield) = self.weakest_ply()? else {
                    report.skip(
                        Mode::BoltBending,
                        "the materials of the plies are not given",
                    );
                    return Ok(());
                };
                let Ok(pin_yield) = en_yield_strength(strength.grade) else {
                    report.skip_bolt(
                        Mode::BoltBending,
                        "EN 1993-1-8 has no yield strength of the grade",
                    );
                    return Ok(());
                };
                let strengths = PinStrengths {
                    pin_yield,
                    pin_tensile: en_tensile_strength(strength.grade)?,
                    ply_yield,
                };
                let pin = en_1993_pin(pin, &strengths)?;
                report.work(|| pin.derivation());
                // Shear and bearing of plies have their own checks.
                let bending = |mode| matches!(mode, Mode::BoltBending | Mode::Combined);
                let checks = pin.checks(load)?.into_iter();
                report
                    .checks
                    .extend(checks.filter(|check| bending(check.mode)));
            }
            _ => report.skip(
                Mode::BoltBending,
                "the method for shear gives no resistance of a bolt in bending",
            ),
        }
        Ok(())
    }

    /// The greatest distance of the plies at a shear plane: its gap, and with it the end play of plies on
    /// sleeves that end there, which may lie all on one side.
    fn widest_gap(&self) -> Length {
        let none = Length::default();
        let at_plane = |&plane: &usize| {
            let sleeves = self.stack.sleeves().iter();
            let plays = sleeves
                .filter(|sleeve| sleeve.last_ply == plane || sleeve.first_ply == plane + 1)
                .map(|sleeve| sleeve.play.max.max(none));
            let gap = self.stack.gap_after(plane).map_or(none, |gap| gap.max);
            plays.fold(gap, |sum, play| sum + play)
        };
        let planes = self.stack.shear_planes().iter();
        planes.map(at_plane).fold(none, Length::max)
    }

    /// Gaps that a preload has to pull together first, because no sleeve keeps them open; and plies that
    /// go on giving under it.
    pub(super) fn gaps_under_preload(&self, report: &mut Report) {
        if self.tightening.is_none() {
            return;
        }
        let crushed = self.stack.plies().iter();
        let mut soft = crushed.map(|ply| ply.crush > Length::default());
        if soft.any(|soft| soft) || self.plies.iter().any(|ply| ply.timber.is_some()) {
            report.miss(
                Subject::Creep,
                "only the relaxation given is taken off: measure it, and tighten again after some time",
            );
        }
        for gap in self.stack.gaps() {
            let inside = |sleeve: &crate::joint::Sleeve| {
                (sleeve.first_ply..sleeve.last_ply).contains(&gap.after_ply)
            };
            if !self.stack.sleeves().iter().any(inside) {
                report.findings.push(Finding::GapUnderPreload {
                    after_ply: gap.after_ply,
                    width: gap.width.max,
                });
            }
        }
    }

    /// The least yield strength of the plies, if all are known.
    fn weakest_ply(&self) -> Result<Option<Stress>, Error> {
        if self.plies.len() != self.stack.plies().len() {
            return Ok(None);
        }
        let mut weakest: Option<Stress> = None;
        for ply in &self.plies {
            let Some(name) = &ply.material else {
                return Ok(None);
            };
            let Some(strength) = PlyMaterial::find(name)?.yield_strength else {
                return Ok(None);
            };
            weakest = Some(weakest.map_or(strength, |least| least.min(strength)));
        }
        Ok(weakest)
    }
}
