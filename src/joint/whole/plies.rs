//! Checks of the plies.

use alloc::format;

use super::checks::Report;
use super::{Joint, JointPly};
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::Error;
use crate::material::BoltStrength;
use crate::parts::SAME_LENGTH;
use crate::strength::check::{Check, Level, Mode, Place, Resistance};
use crate::strength::pin::{EN_PIN, en_1993_bearing};
use crate::strength::ply::{HoleKind, Ply, PlyMethod};
use crate::strength::shear::en_tensile_strength;
use crate::tables::plies::PlyMaterial;
use crate::units::{Force, Length, Stress, millimetres};

/// The most a ply bears in a single lap with one row of bolts, over fu d t.
const SINGLE_LAP: f64 = 1.5;
/// Partial factor of bolts and plies in bearing, recommended value.
const GAMMA_M2: f64 = 1.25;

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
            if self.is_oversize(ply.hole) {
                ply.hole_kind = HoleKind::Oversize;
                report.warn(Cautions::default().with(Some(Caution::MethodFromMemory {
                    method: "EN 1090-2 Table 11, clearance of normal holes",
                })));
            }
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
        let bolt = bolt_strength(method, strength)?;
        let diameter = self.bolt.thread.nominal_diameter();
        let modes = match ply.resistances(diameter, bolt, method) {
            Ok(modes) => modes,
            Err(Error::NoValue { .. }) => {
                for mode in MODES {
                    report.skip(
                        mode,
                        "a strength or distance that the method needs is not given",
                    );
                }
                return Ok(());
            }
            Err(error) => return Err(error),
        };
        for mode in [Mode::TearOut, Mode::NetSection] {
            let inside = mode == Mode::TearOut && matches!(method, PlyMethod::En1993);
            if !inside && !modes.iter().any(|found| found.mode == mode) {
                report.skip(mode, "a distance or width of a ply is not given");
            }
        }
        for mode in modes {
            report.work_at(Place::Ply(number), || mode.derivation());
            report.checks.push(mode.check(load, level, number)?);
        }
        if self.environment.rotates && matches!(method, PlyMethod::En1993) {
            self.around_pivot(number, ply, load, strength, report)?;
        }
        for short in ply.short_distances(diameter, method)? {
            report.warn(short.cautions());
            report.findings.push(super::Finding::ShortDistance {
                ply: number,
                kind: short.kind,
                distance: short.distance,
                least: short.least,
            });
        }
        Ok(())
    }
}

impl Joint {
    /// Whether a hole is wider than the normal ones of EN 1090-2 Table 11 (recalled), for which alone Table 3.4 of
    /// EN 1993-1-8 holds as it stands: 2 mm of clearance up to M24, 3 mm beyond.
    fn is_oversize(&self, hole: Length) -> bool {
        let diameter = self.bolt.thread.nominal_diameter();
        let clearance = if diameter < millimetres(26.0) {
            millimetres(2.0)
        } else {
            millimetres(3.0)
        };
        matches!(self.methods.plies, PlyMethod::En1993) && hole > diameter + clearance + SAME_LENGTH
    }

    /// A single lap with one row of bolts tilts them: by EN 1993-1-8, 3.6.1(10), a ply bears 1.5 fu d t at most.
    ///
    /// The rule was read in a handbook of bridges, its factor recalled.
    fn single_lap(
        &self,
        number: usize,
        ply: &Ply,
        load: Force,
        report: &mut Report,
    ) -> Result<(), Error> {
        let (PlyMethod::En1993, Some(fu)) = (self.methods.plies, ply.tensile_strength) else {
            return Ok(());
        };
        let level = self.methods.level;
        let diameter = self.bolt.thread.nominal_diameter();
        let nominal: Force = SINGLE_LAP * (ply.thickness * diameter * fu);
        let resistance = Resistance::from_levels(Some(nominal), Some(nominal / GAMMA_M2), None)?;
        let place = Place::Ply(number);
        report.work_at(place, || {
            let step = Step::new("bearing in a single lap", "Fb", "c * fu * d * t", nominal)
                .with("c", SINGLE_LAP)
                .with("fu", fu)
                .with("d", diameter)
                .with("t", ply.thickness)
                .source("EN 1993-1-8:2005 Eq. 3.2");
            Derivation::new("Single lap with one row of bolts").step(step)
        });
        let check = Check::new(Mode::Bearing, place, load, resistance.at(level)?, level)?;
        let recalled = Caution::MethodFromMemory {
            method: "EN 1993-1-8, 3.6.1(10), the factor 1.5",
        };
        let check = check.by("EN 1993-1-8:2005 3.6.1(10), single lap, one row of bolts");
        report
            .checks
            .push(check.warned(Cautions::default().with(Some(recalled))));
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
        let fyp = crate::strength::shear::en_yield_strength(strength.grade).ok();
        let fy = (ply.yield_strength, fyp);
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

fn bolt_strength(method: PlyMethod, strength: &BoltStrength) -> Result<Option<Stress>, Error> {
    match method {
        PlyMethod::En1993 => en_tensile_strength(strength.grade).map(Some),
        _ => Ok(None),
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
