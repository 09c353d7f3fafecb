//! Checks of the plies.

use alloc::format;

use super::bending::en_yield_strength;
use super::checks::Report;
use super::{Joint, JointPly};
use crate::error::Error;
use crate::material::BoltStrength;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::pin::{EN_PIN, en_1993_bearing};
use crate::strength::ply::{
    DistanceConditions, DistanceRule, DistanceStanding, Hole, HoleClass, HoleKind, HoleRule, Ply,
    PlyBolt, PlyMethod, PlyOutcome,
};
use crate::tables::plies::PlyMaterial;
use crate::units::{Force, Length};

/// What a ply is not checked for when its description is missing.
const MODES: [Mode; 3] = [Mode::Bearing, Mode::TearOut, Mode::NetSection];

impl Joint {
    /// Bearing, tear-out and sections of every ply that is described.
    ///
    /// A ply takes what the shear planes beside it bring. Where several plies lie between two planes
    /// nothing here says how they divide the load, and they are listed as not checked.
    pub(super) fn ply_checks(
        &self,
        strength: &BoltStrength,
        report: &mut Report,
    ) -> Result<(), Error> {
        for (number, detail) in (1..).zip(&self.plies) {
            if let (Some(material), Some(timber)) = (&detail.material, &detail.timber) {
                return Err(Error::Mismatch(format!(
                    "ply {number} is said to be of {material} and of {timber}"
                )));
            }
        }
        let planes = self.stack.shear_planes();
        if self.load.across <= Force::default() || planes.is_empty() {
            return Ok(());
        }
        let level = self.methods.level;
        let plies = self.stack.plies();
        if self.plies.len() != plies.len() {
            for mode in MODES {
                report.skip(mode, "the plies are not described");
            }
            return Ok(());
        }
        let of_a_group = |ply: &JointPly| ply.pitch.is_some() || ply.gauge.is_some();
        if self.plies.iter().any(of_a_group) {
            report.skip(
                Mode::BlockShear,
                "a joint is one bolt of its group here: check the holes together by strength::ply",
            );
        }
        let across = self.load.factor(level) * self.load.across;
        // Plane k lies after ply k: what it brings, if there is one.
        let plane_after = |ply: usize| {
            let mut loads = planes.iter().zip(self.stack.plane_shares());
            loads
                .find(|(plane, _)| **plane == ply)
                .map(|(_, share)| share)
        };
        for (number, detail) in (1..).zip(&self.plies) {
            // A ply of its own has a plane, or an end of the stack, on both sides.
            let (before, after) = (plane_after(number - 1), plane_after(number));
            let alone =
                (before.is_some() || number == 1) && (after.is_some() || number == plies.len());
            if !alone {
                report.skip(
                    Mode::Bearing,
                    "several plies between two planes share one load",
                );
                continue;
            }
            // Timber is checked together with its bolt.
            if detail.timber.is_some() {
                continue;
            }
            let share = before.unwrap_or(0.0) + after.unwrap_or(0.0);
            let load = share * across;
            let Some(thickness) = self.stack.bearing_thickness(number) else {
                for mode in MODES {
                    report.skip(mode, "a ply around a sleeve bears on the sleeve");
                }
                continue;
            };
            let Some(mut ply) = detail.ply(thickness)? else {
                for mode in MODES {
                    report.skip(mode, "material or hole of a ply is not given");
                }
                continue;
            };
            ply.hole_kind = self.hole_kind(ply.hole)?;
            self.one_ply(number, &ply, load, strength, level, report)?;
            if planes.len() == 1 && detail.pitch.is_none() {
                self.single_lap(number, &ply, load, report)?;
            }
        }
        Ok(())
    }

    fn one_ply(
        &self,
        number: usize,
        ply: &Ply,
        load: Force,
        strength: &BoltStrength,
        level: Level,
        report: &mut Report,
    ) -> Result<(), Error> {
        let method = self.methods.plies;
        let diameter = self.bolt.thread.nominal_diameter();
        for mode in ply.assess(diameter, PlyBolt::of(strength), method)? {
            match mode.outcome {
                PlyOutcome::Found(found) => {
                    report.work_at(Place::Ply(number), || found.derivation());
                    report.checks.push(found.check(load, level, number)?);
                }
                PlyOutcome::Missing(_) => report.skip(
                    mode.mode,
                    "a strength, distance or width that the method needs is not given",
                ),
                PlyOutcome::NotNeeded(_) => {}
                PlyOutcome::NotGiven(why) | PlyOutcome::Nothing(why) => {
                    report.skip(mode.mode, why);
                }
            }
        }
        if self.environment.rotates && matches!(method, PlyMethod::En1993) {
            self.around_pivot(number, ply, load, strength, report)?;
        }
        let conditions = DistanceConditions::default();
        let judged = ply.distances(diameter, DistanceRule::from(method), conditions)?;
        for finding in judged.findings {
            report.warn(finding.cautions);
            if let (Some(least), DistanceStanding::Fault) = (finding.least, finding.standing) {
                report.findings.push(super::Finding::ShortDistance {
                    ply: number,
                    kind: finding.kind,
                    distance: finding.distance,
                    least,
                });
            }
        }
        Ok(())
    }
}

impl Joint {
    /// What EN 1090-2 makes of a hole; other methods take it as it is.
    fn hole_kind(&self, hole: Length) -> Result<HoleKind, Error> {
        let hole = Hole {
            diameter: hole,
            slot: None,
        };
        if !matches!(self.methods.plies, PlyMethod::En1993) {
            return Ok(HoleKind::Standard);
        }
        Ok(match hole.classify(&self.bolt.thread, HoleRule::En1090)? {
            HoleClass::Known { kind, .. } => kind,
            HoleClass::TooLarge { .. } => HoleKind::Oversize,
            _ => HoleKind::Standard,
        })
    }

    /// A single lap with one row of bolts tilts them: by EN 1993-1-8, 3.6.1(10), a ply bears 1.5 fu d t at most.
    fn single_lap(
        &self,
        number: usize,
        ply: &Ply,
        load: Force,
        report: &mut Report,
    ) -> Result<(), Error> {
        let diameter = self.bolt.thread.nominal_diameter();
        if let PlyOutcome::Found(found) = ply.single_lap(diameter, self.methods.plies)? {
            report.work_at(Place::Ply(number), || found.derivation());
            report
                .checks
                .push(found.check(load, self.methods.level, number)?);
        }
        Ok(())
    }

    /// A ply that turns on the bolt: EN 1993-1-8, 3.13.1 (recalled), has it checked as one on a pin, which
    /// bears less.
    fn around_pivot(
        &self,
        number: usize,
        ply: &Ply,
        load: Force,
        strength: &BoltStrength,
        report: &mut Report,
    ) -> Result<(), Error> {
        report.skip(
            Mode::TearOut,
            "ends and widths of plies that turn on a pin, EN 1993-1-8 Table 3.9, are not checked",
        );
        let level = self.methods.level;
        let fy = (ply.yield_strength, en_yield_strength(strength.grade));
        let ((Some(ply_yield), Some(pin_yield)), Level::Design) = (fy, level) else {
            report.skip(
                Mode::Bearing,
                "plies that turn on a pin: a yield strength or the level is not that of EN 1993-1-8",
            );
            return Ok(());
        };
        let diameter = self.bolt.thread.nominal_diameter();
        let (resistance, working) =
            en_1993_bearing(ply.thickness, diameter, ply_yield.min(pin_yield));
        let place = Place::Ply(number);
        report.work_at(place, || working);
        let check = Check::new(Mode::Bearing, place, load, resistance, level)?;
        report.checks.push(check.by(EN_PIN));
        Ok(())
    }
}

impl JointPly {
    /// The ply at its least thickness; none without material or hole.
    fn ply(&self, thickness: Length) -> Result<Option<Ply>, Error> {
        let (Some(material), Some(hole)) = (&self.material, self.hole) else {
            return Ok(None);
        };
        let material = PlyMaterial::find(material)?;
        Ok(Some(Ply {
            hole_kind: HoleKind::Standard,
            end_distance: self.end_distance,
            edge_distance: self.edge_distance,
            pitch: self.pitch,
            gauge: self.gauge,
            width: self.width,
            ..Ply::of(material, thickness, hole)
        }))
    }
}
