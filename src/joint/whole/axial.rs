//! Checks along the axis: tension, separation, fatigue, and with them slip and combined loads.

use alloc::vec::Vec;

use super::checks::Report;
use super::{Finding, Joint, JointPreload, Subject};
use crate::error::Error;
use crate::joint::Candidate;
use crate::material::{BoltLoads, BoltStrength};
use crate::parts::Zone;
use crate::strength::bolt_tension::{BoltTension, bolt_tension};
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::interaction::interaction;
use crate::strength::slip::{SlipFaces, SlipHole, SlipPreload, slip_resistance};
use crate::tables::plies::PlyMaterial;
use crate::tension::{
    BoltStiffness, Cones, FatigueCriterion, FatigueStrengths, FatigueStress, GripSections,
    JointDiagram, Layer, LoadShare, MachineDesignFatigue,
};
use crate::units::{Force, Ratio, Stress, megapascals};

/// Modulus of elasticity of bolt and washers: steel, as Shigley's chapter 8 takes it (30 Mpsi).
const STEEL: Stress = megapascals(207e3);

impl Joint {
    /// Tension of the bolt by the code, for the whole load; then as the preloaded joint shares it.
    pub(super) fn tension(
        &self,
        share: Option<LoadShare>,
        strength: &BoltStrength,
        loads: &BoltLoads,
        preload: Option<&JointPreload>,
        greatest: Force,
        report: &mut Report,
    ) -> Result<(), Error> {
        if self.load.along <= Force::default() {
            return Ok(());
        }
        let level = self.methods.level;
        let load = self.load.factor(level) * self.load.along;
        let code = self.code_tension(strength)?;
        report.work(|| code.derivation());
        report.checks.push(code.check(load, level)?);
        report.miss(
            Subject::Prying,
            "the load along the axis is taken to have it in it",
        );
        report.miss(
            Subject::PullThrough,
            "bending of the plies and shear around head and nut are not known here",
        );
        let Some(preload) = preload else {
            report.skip(Mode::Separation, "nobody controls the tightening");
            report.skip(
                Mode::Fatigue,
                "without preload the bolt takes the whole change of the load",
            );
            return Ok(());
        };
        // In service, without load factors: what the joint really sees.
        let load = self.load.shock_factor * self.load.along;
        let (separation, method) = match share {
            Some(share) => {
                let least = JointDiagram::new(share, preload.in_service)?;
                if report.works() {
                    let most = JointDiagram::new(share, preload.preload.max)?;
                    Self::diagram_working(most, load, loads, "greatest preload", report)?;
                    Self::diagram_working(least, load, loads, "preload in service", report)?;
                }
                (
                    least.separation_load,
                    "joint diagram (Shigley, 9th ed., Eqs. 8-24 to 8-30)",
                )
            }
            // Bounds of the diagram for any stiffness.
            None => (
                preload.in_service,
                "bounds of the joint diagram for any stiffness",
            ),
        };
        if let Some(proof) = loads.proof {
            let check = Check::new(
                Mode::BoltTension,
                Place::Bolt(1),
                greatest,
                proof,
                Level::Nominal,
            )?;
            report.checks.push(check.by(method));
        } else {
            report.skip_bolt(
                Mode::BoltTension,
                "with the preload: the grade has no proof load",
            );
        }
        if separation > Force::default() {
            let check = Check::new(
                Mode::Separation,
                Place::Joint,
                load,
                separation,
                Level::Nominal,
            )?;
            report.checks.push(check.by(method));
        } else {
            report.findings.push(Finding::NoPreloadLeft);
        }
        self.fatigue(share, strength, loads, preload, report)
    }

    /// The greatest force in the bolt: its greatest preload with its share of the load along it, or all of
    /// that load where the share is not known.
    pub(super) fn greatest_bolt_force(
        &self,
        share: Option<LoadShare>,
        preload: Option<&JointPreload>,
    ) -> Result<Force, Error> {
        let load = self.load.shock_factor * self.load.along;
        let Some(preload) = preload else {
            return Ok(load);
        };
        if load <= Force::default() {
            return Ok(preload.preload.max);
        }
        match share {
            Some(share) => Ok(JointDiagram::new(share, preload.preload.max)?
                .under(load)?
                .bolt),
            None => Ok(preload.preload.max + load),
        }
    }

    /// Fatigue by the machine-design system with the Goodman line, at the greatest preload.
    fn fatigue(
        &self,
        share: Option<LoadShare>,
        strength: &BoltStrength,
        loads: &BoltLoads,
        preload: &JointPreload,
        report: &mut Report,
    ) -> Result<(), Error> {
        if !self.load.alternates {
            return Ok(());
        }
        let Some(share) = share else {
            report.skip(Mode::Fatigue, "the materials of the plies are not given");
            return Ok(());
        };
        let strengths = match FatigueStrengths::of_bolt(strength) {
            Ok(strengths) => strengths,
            Err(Error::NoValue { .. } | Error::NotInTable { .. }) => {
                report.skip_bolt(
                    Mode::Fatigue,
                    "no endurance strength of the grade and size is known",
                );
                return Ok(());
            }
            Err(error) => return Err(error),
        };
        let diagram = JointDiagram::new(share, preload.preload.max)?;
        let shock = self.load.shock_factor;
        let (least, greatest) = (shock * self.load.along_least, shock * self.load.along);
        let area = loads.tensile_stress_area;
        let fatigue = FatigueStress::of_joint(&diagram, area, least, greatest).and_then(|stress| {
            MachineDesignFatigue::new(strengths, stress, FatigueCriterion::Goodman)
        });
        let fatigue = match fatigue {
            Ok(fatigue) => fatigue,
            Err(Error::OutOfRange { .. }) => {
                report.skip(
                    Mode::Fatigue,
                    "the load does not change, separates the joint, or the preload is beyond the line",
                );
                return Ok(());
            }
            Err(error) => return Err(error),
        };
        report.work(|| fatigue.derivation());
        let check = Check::new(
            Mode::Fatigue,
            Place::Bolt(1),
            fatigue.stress.amplitude,
            fatigue.strength_amplitude,
            Level::Nominal,
        )?;
        report.checks.push(
            check
                .by("Goodman (Shigley, 9th ed., 8-11), rolled threads")
                .warned(fatigue.cautions()),
        );
        Ok(())
    }

    /// The share of the load that the bolt takes, by the stiffnesses given or, if the material of every ply
    /// is given, by those of hard plies on each other.
    pub(super) fn load_share(&self, candidate: &Candidate) -> Result<Option<LoadShare>, Error> {
        if let Some(given) = self.tightening.and_then(|tightening| tightening.stiffness) {
            return LoadShare::new(given.bolt, given.members).map(Some);
        }
        let Some((bolt, layers)) = self.springs_of_parts(candidate)? else {
            return Ok(None);
        };
        let members = self.cones()?.stiffness(&layers)?;
        LoadShare::new(bolt.stiffness, members).map(Some)
    }

    fn cones(&self) -> Result<Cones, Error> {
        Cones::shigley(self.bolt.thread.nominal_diameter())
    }

    /// The bolt and the layers that it clamps, if the material of every ply is given and they lie plainly on
    /// each other.
    fn springs_of_parts(
        &self,
        candidate: &Candidate,
    ) -> Result<Option<(BoltStiffness, Vec<Layer>)>, Error> {
        let plies = self.stack.plies();
        if self.plies.len() != plies.len() {
            return Ok(None);
        }
        let mut layers = Vec::new();
        let stack = &self.stack;
        // The cones of pressure are those of hard plies on each other.
        if !stack.is_plain() {
            return Ok(None);
        }
        let added = stack.washer_to_add_under_head().into_iter();
        for thickness in added.cycle().take(candidate.washers_added_under_head) {
            layers.push(Layer::new(thickness.nominal, STEEL)?);
        }
        for washer in stack.washers_under_head() {
            layers.push(Layer::new(washer.thickness.nominal, STEEL)?);
        }
        for (ply, detail) in plies.iter().zip(&self.plies) {
            let Some(material) = &detail.material else {
                return Ok(None);
            };
            let modulus = PlyMaterial::find(material)?.elastic_modulus_min;
            layers.push(Layer::new(ply.thickness.nominal, modulus)?);
        }
        for washer in stack.other_washers_under_nut() {
            layers.push(Layer::new(washer.thickness.nominal, STEEL)?);
        }
        if let Some((thickness, _)) = stack.washers_under_nut() {
            for _ in 0..candidate.washers_under_nut {
                layers.push(Layer::new(thickness.nominal, STEEL)?);
            }
        }
        let thread = &self.bolt.thread;
        let sections = GripSections::of_screw(&candidate.screw, candidate.grip.nominal)?;
        let bolt = BoltStiffness::shigley(thread, sections, STEEL)?;
        Ok(Some((bolt, layers)))
    }

    /// The stiffness of bolt and members, where it was not given.
    pub(super) fn stiffness_working(
        &self,
        candidate: &Candidate,
        report: &mut Report,
    ) -> Result<(), Error> {
        let given = self.tightening.and_then(|tightening| tightening.stiffness);
        if given.is_none()
            && let Some((bolt, layers)) = self.springs_of_parts(candidate)?
        {
            let frusta = self.cones()?.frusta(&layers)?;
            report.work(|| bolt.derivation());
            report.work(|| frusta.derivation());
        }
        Ok(())
    }

    fn diagram_working(
        diagram: JointDiagram,
        load: Force,
        loads: &BoltLoads,
        preload: &str,
        report: &mut Report,
    ) -> Result<(), Error> {
        // Of a grade without a proof load there are no factors to work out.
        let Some(proof) = loads.proof else {
            report.work(|| diagram.share.derivation());
            return Ok(());
        };
        let check = diagram.check(load, proof)?;
        report.work(|| {
            let derivation = check.derivation();
            let title = alloc::format!("{}, {preload}", derivation.title());
            derivation.titled(title)
        });
        Ok(())
    }

    /// Slip, if the joint must not slip; and tension, shear and bending together, those that act.
    pub(super) fn together(
        &self,
        candidate: &Candidate,
        strength: &BoltStrength,
        preload: Option<&JointPreload>,
        report: &mut Report,
    ) -> Result<(), Error> {
        if self.load.across <= Force::default() {
            return Ok(());
        }
        if self.load.alternates || self.environment.vibration {
            report.skip(
                Mode::Fatigue,
                "of bolt and plies under a load across the axis that comes and goes: no method is known here",
            );
        }
        self.slip(preload, report)?;
        let level = self.methods.level;
        let along = self.load.factor(level) * self.load.along;
        let used = |report: &Report, mode| {
            let checks = report.checks.iter().filter(|check| check.mode == mode);
            checks.fold(0.0, |most, check| check.utilisation.value.max(most))
        };
        let shear = used(report, Mode::BoltShear);
        let bending = used(report, Mode::BoltBending);
        let pulled = along > Force::default();
        // A pin by EN 1993-1-8 has shear and bending together already.
        let done = !pulled && (bending <= 0.0 || used(report, Mode::Combined) > 0.0);
        if shear <= 0.0 || done {
            return Ok(());
        }
        let tension = if pulled {
            self.code_tension(strength)?
                .check(along, level)?
                .utilisation
        } else {
            Ratio::from(0.0)
        };
        // What the worst plane cuts decides the exponents.
        let in_thread = candidate.planes_in_run_out + candidate.planes_in_thread > 0;
        let zone = if in_thread { Zone::Thread } else { Zone::Shank };
        let rule = self.methods.interaction;
        let with = |bending| interaction(rule, Ratio::from(shear), tension, bending, zone);
        let both = match with(Ratio::from(bending)) {
            Err(Error::NoValue { .. }) => {
                report.skip(
                    Mode::Combined,
                    "the rule for tension and shear has no place for the bending of the bolt",
                );
                with(Ratio::from(0.0))
            }
            both => both,
        }?;
        report.work(|| both.derivation());
        report.checks.push(both.check(level)?);
        Ok(())
    }

    /// Tension of the bolt by the code, with the head that its seat tells.
    fn code_tension(&self, strength: &BoltStrength) -> Result<BoltTension, Error> {
        let head = self.stack.head_seat().shape();
        bolt_tension(
            &self.bolt.thread,
            strength,
            self.methods.tension,
            head,
            None,
        )
    }

    /// Slip of the face that takes most of the load.
    fn slip(&self, preload: Option<&JointPreload>, report: &mut Report) -> Result<(), Error> {
        let Some(method) = self.methods.slip else {
            report.skip(
                Mode::Slip,
                "no method is asked for: it may slip into bearing",
            );
            return Ok(());
        };
        let planes = self.stack.shear_planes();
        if planes.is_empty() {
            report.skip(Mode::Slip, "the stack has no shear plane");
            return Ok(());
        }
        let Some(preload) = preload.map(|preload| preload.in_service) else {
            report.skip(Mode::Slip, "nobody controls the tightening");
            return Ok(());
        };
        if !self.stack.sleeves().is_empty() {
            let why = "the preload clamps a sleeve, not the plies around it";
            report.skip(Mode::Slip, why);
            return Ok(());
        }
        if planes
            .iter()
            .any(|&ply| self.stack.gap_after(ply).is_some())
        {
            let why = "the preload closes a gap before it clamps the faces";
            report.skip(Mode::Slip, why);
            return Ok(());
        }
        let level = self.methods.level;
        let factor = self.load.factor(level);
        let faces = planes.len();
        // Every face holds alike: where one takes more, all are held to take as much.
        let greatest = self.stack.plane_shares().fold(0.0, f64::max);
        let even = self.stack.plane_shares().all(|share| share >= greatest);
        // At most 1000 plies: exact.
        #[allow(clippy::cast_precision_loss)]
        let uneven = if even { 1.0 } else { greatest * faces as f64 };
        let (across, along) = (uneven * factor * self.load.across, factor * self.load.along);
        let faces = SlipFaces::new(faces, SlipHole::Standard);
        let basis = if method.wants_specified_preload() {
            SlipPreload::Specified(preload)
        } else {
            SlipPreload::Least(preload)
        };
        if preload > Force::default() {
            // A method that makes no sense is no slip.
            slip_resistance(method, basis, faces, Force::default())?;
        }
        let slip = slip_resistance(method, basis, faces, along);
        match slip.and_then(|slip| Ok((slip.check(across, level)?, slip))) {
            Ok((check, slip)) => {
                report.work(|| slip.derivation());
                report.checks.push(check);
            }
            // The tension takes all of the clamp force.
            Err(Error::OutOfRange { .. }) => report.findings.push(Finding::Slips),
            Err(Error::NoValue { .. }) => {
                report.skip(Mode::Slip, "its method defines no resistance of this level");
            }
            Err(error) => return Err(error),
        }
        Ok(())
    }
}
