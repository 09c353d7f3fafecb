//! Checks of a joint with timber in it.

use super::checks::Report;
use super::{Joint, JointPly};
use crate::error::Error;
use crate::joint::Candidate;
use crate::material::BoltStrength;
use crate::math::sqrt;
use crate::parts::Zone;
use crate::strength::check::Mode;
use crate::strength::ply::DistanceKind;
use crate::strength::timber::{
    MemberMaterial, TimberConnection, TimberDistances, TimberFact, TimberMember, TimberMethod,
};
use crate::tables::plies::PlyMaterial;
use crate::tables::timber::Timber;
use crate::thread::Thread;
use crate::units::{Force, Length, Ratio, degrees, from_base};

const MEMBER_UNKNOWN: &str = "material or hole of a ply is not given, or a sleeve carries it";

impl Joint {
    /// The bolt in timber: yield of timber and bolt together, and least distances in the timber.
    pub(super) fn timber_checks(
        &self,
        candidate: &Candidate,
        strength: &BoltStrength,
        report: &mut Report,
    ) -> Result<(), Error> {
        let timber = self.plies.iter().any(|ply| ply.timber.is_some());
        let loaded = self.load.across > Force::default() && !self.stack.shear_planes().is_empty();
        // Plies that are not described are listed with the other checks of plies.
        if !timber || self.plies.len() != self.stack.plies().len() {
            return Ok(());
        }
        if loaded || self.load.along > Force::default() || self.tightening.is_some() {
            report.skip(
                Mode::Bearing,
                "head, nut and washers on the timber are not checked",
            );
        }
        if !loaded {
            return Ok(());
        }
        report.skip(
            Mode::NetSection,
            "no method here knows the net section of timber",
        );
        report.skip(
            Mode::TearOut,
            "row shear, block shear and splitting of timber are not known here",
        );
        let Some(method) = self.methods.timber else {
            report.skip(Mode::TimberYield, "no method for bolts in timber is chosen");
            return Ok(());
        };
        let in_row = |ply: &JointPly| ply.timber.is_some() && ply.pitch.is_some();
        if matches!(method, TimberMethod::En1995 { .. }) && self.plies.iter().any(in_row) {
            report.skip(
                Mode::TimberYield,
                "of a row along the grain: its effective number of bolts, EN 1995-1-1 8.5.1.1(4), is not taken off",
            );
        }
        let joint = self.timber_connection(candidate, method)?;
        let geometry = self.timber_distances(joint.as_ref().ok(), method, report)?;
        match joint {
            Ok(joint) => self.timber_yield(&joint, geometry, strength, method, report)?,
            Err(reason) => report.skip(Mode::TimberYield, reason),
        }
        Ok(())
    }

    /// Two plies, or three; otherwise why not.
    fn timber_connection(
        &self,
        candidate: &Candidate,
        method: TimberMethod,
    ) -> Result<Result<TimberConnection, &'static str>, Error> {
        let planes = self.stack.shear_planes();
        let gaps = planes.iter().filter_map(|&ply| self.stack.gap_after(ply));
        let gap = gaps.fold(Length::default(), |widest, gap| widest.max(gap.max));
        let member = |number: usize| {
            let ply = number
                .checked_sub(1)
                .and_then(|index| self.plies.get(index));
            match (ply, self.stack.bearing_thickness(number)) {
                (Some(ply), Some(thickness)) => ply.member(thickness),
                _ => Ok(None),
            }
        };
        let (side, main, far) = match (self.plies.len(), planes) {
            (2, [1]) => (member(1)?, member(2)?, None),
            (3, [1, 2]) => {
                let Some(last) = member(3)? else {
                    return Ok(Err(MEMBER_UNKNOWN));
                };
                (member(1)?, member(2)?, Some(last))
            }
            _ => {
                return Ok(Err(
                    "only two plies, or three with a shear plane on both sides of the middle one, are known",
                ));
            }
        };
        let (Some(side), Some(main)) = (side, main) else {
            return Ok(Err(MEMBER_UNKNOWN));
        };
        let steel = |member: &TimberMember| matches!(member.material, MemberMaterial::Steel { .. });
        if steel(&main) && (steel(&side) || far.as_ref().is_some_and(steel)) {
            return Ok(Err("no ply at the shear planes is timber"));
        }
        let mut planes = self.stack.planes_of(candidate);
        let threaded = planes.any(|plane| plane.worst != Zone::Shank);
        let diameter = match method {
            TimberMethod::Nds { .. } if threaded => root_diameter(&self.bolt.thread),
            _ => self.bolt.thread.nominal_diameter(),
        };
        Ok(Ok(TimberConnection {
            diameter,
            main,
            side,
            far_side: far,
            gap,
        }))
    }

    fn timber_yield(
        &self,
        joint: &TimberConnection,
        geometry: Ratio,
        strength: &BoltStrength,
        method: TimberMethod,
        report: &mut Report,
    ) -> Result<(), Error> {
        if !method.covers(joint.diameter) {
            report.skip_bolt(
                Mode::TimberYield,
                "the method does not know bolts of this diameter (NDS: at the root, if thread is in a plane)",
            );
            return Ok(());
        }
        let level = self.methods.level;
        let found = match joint.resistance(strength, method) {
            Ok(found) => found.reduced(geometry, from_base(1.0))?,
            Err(Error::NoValue { reason, .. }) => {
                report.skip(Mode::TimberYield, reason);
                return Ok(());
            }
            Err(error) => return Err(error),
        };
        if found.resistance.at(level).is_err() {
            report.skip(
                Mode::TimberYield,
                "the method for timber has no resistance at the level of the loads",
            );
            return Ok(());
        }
        report.work(|| found.derivation());
        // The equations load both planes alike: where one takes more, both are held to take as much.
        let greatest = self.stack.plane_shares().fold(0.0, f64::max);
        let load =
            greatest * f64::from(joint.planes()) * self.load.factor(level) * self.load.across;
        report.checks.push(found.check(load, level)?);
        Ok(())
    }

    /// Distances that are too short, and the share of the load that short ones leave.
    fn timber_distances(
        &self,
        joint: Option<&TimberConnection>,
        method: TimberMethod,
        report: &mut Report,
    ) -> Result<Ratio, Error> {
        let mut geometry: Ratio = from_base(1.0);
        let diameter = self.bolt.thread.nominal_diameter();
        let known = method.covers(diameter);
        for (number, ply) in (1..).zip(&self.plies) {
            let Some(name) = &ply.timber else { continue };
            report.warn(Timber::find(name)?.cautions());
            let thickness = self.stack.bearing_thickness(number);
            let Some(thickness) = thickness.filter(|_| known) else {
                continue;
            };
            let Some(member) = ply.member(thickness)? else {
                continue;
            };
            let own = TimberDistances {
                end: ply.end_distance,
                edge: ply.edge_distance,
                pitch: ply.pitch,
                gauge: ply.gauge,
                ..TimberDistances::default()
            };
            let slenderness = match joint {
                Some(joint) => joint.slenderness(diameter)?,
                None => thickness / diameter,
            };
            let found = own.judged(&member, diameter, slenderness, method)?;
            if found.geometry < geometry {
                geometry = found.geometry;
            }
            for rule in found.faults() {
                let kind = match rule.fact {
                    TimberFact::EndDistance => DistanceKind::End,
                    TimberFact::EdgeDistance => DistanceKind::Edge,
                    TimberFact::Pitch => DistanceKind::Pitch,
                    _ => DistanceKind::Gauge,
                };
                let (Some(distance), Some(least)) = (rule.own, rule.least) else {
                    continue;
                };
                report.warn(rule.cautions());
                report.findings.push(super::Finding::ShortDistance {
                    ply: number,
                    kind,
                    distance,
                    least,
                });
            }
        }
        Ok(geometry)
    }
}

/// Root diameter of the thread, by its area at the root.
fn root_diameter(thread: &Thread) -> Length {
    from_base(sqrt(
        4.0 / core::f64::consts::PI * thread.minor_area().value,
    ))
}

impl JointPly {
    /// The ply as a member of a timber joint; none without timber, or material and hole.
    fn member(&self, thickness: Length) -> Result<Option<TimberMember>, Error> {
        if let Some(timber) = &self.timber {
            let angle = self.grain_angle.unwrap_or(degrees(0.0));
            return Ok(Some(TimberMember::wood(
                thickness,
                Timber::find(timber)?,
                angle,
            )));
        }
        let (Some(material), Some(hole)) = (&self.material, self.hole) else {
            return Ok(None);
        };
        let tensile = PlyMaterial::find(material)?.tensile_strength;
        Ok(tensile.map(|tensile| TimberMember::steel(thickness, tensile, hole)))
    }
}
