//! The steps, one after the other.

use alloc::{format, vec::Vec};

use super::joint::{
    Assembly, AxialCycles, BoltSpring, ConcentricJoint, Embedding, PlateSpring, RolledThread,
    Scatter, ShearSection, Transverse,
};
use super::result::{ConcentricCheck, FacePressure, RequiredPreload, Safeties, Slipping};
use super::{LEAST_FATIGUE, LEAST_SHEAR};
use crate::caution::Cautions;
use crate::error::{
    Allowed, Error, not_negative, out_of_range, positive, sane_stiffness, sane_stress, within,
};
use crate::material::{BoltGrade, PropertyClass};
use crate::preload::{
    ElasticJoint, Friction, FrictionForm, PreloadRange, TighteningStress, TorqueForm, TorsionModel,
    VdiPreload, scatter_of, tightening_factor,
};
use crate::source::Method;
use crate::spread::Spread;
use crate::strength::check::{Check, Level, Mode, NotChecked, Place};
use crate::strength::strip::{StripMethod, StrippingStrength};
use crate::strength::surface::{SurfaceOutcome, surface_pressure};
use crate::tables::methods;
use crate::tension::{
    BoltStiffnessMethod, JointDiagram, JointState, LoadShare, MembersMethod, VdiFatigue,
    VdiFatigueStrength, VdiThread,
};
use crate::units::{Area, Force, Length, Stress, newtons, percent};

/// No bolt of the guideline carries a thousandth of it; sums of forces stay finite.
const MOST_LOAD: Force = newtons(1e12);
/// Cycles from which the endurance limit counts.
const ENDURANCE_CYCLES: f64 = 2e6;

impl ConcentricJoint {
    /// Works the steps R1 to R13.
    ///
    /// A joint that opens under its load, slips or yields is a result whose checks fail; refused is what has no meaning.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for an inch thread, a form of the torque or a spring of another system, parts of another size, a
    /// face that is not larger than its hole, stripping by another method; [`Error::NoValue`] for a bolt without yield
    /// strength; [`Error::OutOfRange`] for loads that are negative, out of order or beyond any bolt, for a factor outside
    /// its range, and where the losses take all of the least preload.
    ///
    /// ```
    /// use shankline::Error;
    /// use shankline::vdi_2230::{ConcentricCheck, ConcentricJoint};
    /// fn both(joint: &ConcentricJoint) -> Result<(ConcentricCheck, ConcentricCheck), Error> {
    ///     let softer = ConcentricJoint { introduction: 0.5 * joint.introduction, ..joint.clone() };
    ///     Ok((joint.check()?, softer.check()?))
    /// }
    /// ```
    pub fn check(&self) -> Result<ConcentricCheck, Error> {
        let yield_strength = self.sound()?;
        let loads = &self.loads;
        let thread = self.form.thread();
        let (bolt, plates) = (self.bolt.stiffness(), self.plates.stiffness());

        // R1 to R3.
        let tightening_factor = self.tightening_factor()?;
        let slip_clamp = self.slip_clamp()?;
        let required_clamp = slip_clamp.unwrap_or_default().max(loads.seal);
        let share = LoadShare::new(bolt, plates)?.introduced_at(self.introduction)?;
        let phi = share.share.value;
        let additional = phi * loads.axial_greatest;
        let relief = (1.0 - phi) * loads.axial_greatest;

        // R4 to R6.
        let embedding = self.embedding_of_all()?;
        let springs = ElasticJoint::new(thread.pitch(), bolt, plates)?;
        let embedding_loss = springs.embedment_loss(embedding)?;
        let least = required_clamp + relief + embedding_loss + self.thermal.loss;
        let required = RequiredPreload {
            least,
            greatest: not_negative("required assembly preload", tightening_factor * least)?,
        };

        // R7.
        let form = self.least_friction()?;
        let permitted =
            form.assembly_preload(yield_strength, self.utilisation, TorsionModel::Vdi2230)?;
        let assembly = match self.assembly {
            Assembly::Permitted => permitted.preload.nominal,
            Assembly::Greatest(force) => {
                within("greatest assembly preload", force, newtons(1e-3), MOST_LOAD)?
            }
        };
        let preload = VdiPreload::new(assembly, tightening_factor)?
            .with_embedment_loss(embedding_loss)?
            .with_thermal(self.thermal.gain, self.thermal.loss)?
            .range()?;
        let assembly_stress = form.tightening_stress(assembly, TorsionModel::Vdi2230)?;

        // R8. The torsion over the elastic modulus: what is recalled of R8, and more than R7 would leave.
        let bolt_force = JointDiagram::new(share, preload.service_max)?
            .under(loads.axial_greatest)?
            .bolt;
        let working_stress = form
            .tightening_stress(assembly, TorsionModel::JisB1083)?
            .in_service(
                (bolt_force - assembly).max(Force::default()),
                TighteningStress::VDI_TORSION_LEFT,
            )?;

        // R9 to R12.
        let mut missing = Vec::new();
        let fatigue = match self.amplitude(share, &preload) {
            Ok(fatigue) => fatigue,
            Err(why) => {
                missing.push(NotChecked::new(Mode::Fatigue, why));
                None
            }
        };
        let pressures = self.pressures(assembly, bolt_force)?;
        let residual_clamp = (preload.service_min - relief).max(Force::default());
        let slip = self.slipping(slip_clamp, residual_clamp)?;
        self.unsaid(&mut missing);

        let mut check = ConcentricCheck {
            joint: self.clone(),
            tightening_factor,
            required_clamp,
            share,
            additional,
            relief,
            embedding,
            embedding_loss,
            required,
            permitted,
            assembly,
            preload,
            assembly_stress,
            bolt_force,
            working_stress,
            fatigue,
            residual_clamp,
            slip,
            torque: self.form.torque(assembly)?.min,
            safeties: Safeties {
                preload: (preload.initial.min / required.least).value,
                tightening: (permitted.preload.nominal / assembly).value,
                working: (yield_strength / working_stress.equivalent).value,
                fatigue: fatigue.map(|fatigue| fatigue.safety),
                pressure: pressures.iter().map(|face| face.safety).reduce(f64::min),
                threads: self.threads.as_ref().map(outlasting),
                slip: slip.map(|slip| slip.safety),
                shear: slip.map(|slip| slip.shear_safety),
            },
            pressures,
            checks: Vec::new(),
            missing,
        };
        check.checks = check.all()?;
        Ok(check)
    }

    /// R10 and R11 need more than loads and springs.
    fn unsaid(&self, missing: &mut Vec<NotChecked>) {
        let mut note = |mode, quantity, reason| {
            missing.push(NotChecked::new(
                mode,
                Error::NoValue {
                    quantity,
                    subject: format!("{}", self.form.thread()),
                    reason,
                },
            ));
        };
        if self.faces.is_empty() {
            let reason = "no face under head, nut or washer was stated";
            note(Mode::Pressure, "surface pressure", reason);
        }
        if self.threads.is_none() {
            let reason = "their engagement was not stated";
            note(Mode::Stripping, "load of the threads", reason);
        }
    }

    /// Refuses what does not belong together; gives `R_p0.2`.
    fn sound(&self) -> Result<Stress, Error> {
        let thread = self.form.thread();
        let mismatch = |text: &str| Err(Error::Mismatch(format!("{thread}: {text}")));
        if thread.is_unified() {
            return mismatch("VDI 2230 is for metric threads");
        }
        if self.form.form() != TorqueForm::Linear {
            return mismatch("VDI 2230 has the linear form of the torque");
        }
        let diameter = thread.nominal_diameter();
        if (self.strength.nominal_diameter - diameter).abs() > crate::units::SAME_LENGTH {
            return mismatch("the strength of the bolt is for another diameter");
        }
        if let BoltSpring::Parts(parts) = &self.bolt {
            let of_this = (parts.segments[0].area / thread.shank_area()).value - 1.0;
            if parts.method != BoltStiffnessMethod::Vdi2230 || of_this.abs() > 1e-9 {
                return mismatch(
                    "the stiffness of the bolt is not that of this thread by VDI 2230",
                );
            }
        }
        if let PlateSpring::Parts(parts) = &self.plates {
            let known = matches!(
                parts.method,
                MembersMethod::Vdi2230 { .. } | MembersMethod::HollowCylinder { .. }
            );
            if !known {
                return mismatch("the stiffness of the plates is not by VDI 2230");
            }
        }
        sane_stiffness("stiffness of the bolt", self.bolt.stiffness())?;
        sane_stiffness("stiffness of the plates", self.plates.stiffness())?;
        if let Some(threads) = &self.threads {
            // Not the whole thread: that of the areas knows its tolerances.
            let engaged = &threads.areas.thread;
            let same = |a: Length, b: Length| (a - b).abs() <= crate::units::SAME_LENGTH;
            if !same(engaged.nominal_diameter(), diameter) || !same(engaged.pitch(), thread.pitch())
            {
                return mismatch("the engaged threads are not of this size");
            }
            if !matches!(threads.method, StripMethod::Vdi2230 { .. }) {
                return mismatch("the load of the threads is not by VDI 2230");
            }
        }
        let loads = &self.loads;
        for (quantity, force) in [
            ("greatest load along the bolt", loads.axial_greatest),
            ("least load along the bolt", loads.axial_least),
            ("clamp force for sealing", loads.seal),
            ("preload that heat adds", self.thermal.gain),
            ("preload that heat takes", self.thermal.loss),
        ] {
            not_negative(quantity, force)?;
            if force > MOST_LOAD {
                let allowed = Allowed::AtMost(MOST_LOAD.into());
                return Err(out_of_range(quantity, force, allowed));
            }
        }
        if loads.axial_least > loads.axial_greatest {
            return Err(out_of_range(
                "least load along the bolt",
                loads.axial_least,
                Allowed::AtMost(loads.axial_greatest.into()),
            ));
        }
        within(
            "utilisation of yield",
            self.utilisation,
            percent(1.0),
            percent(90.0),
        )?;
        self.strength.yield_strength.ok_or_else(|| Error::NoValue {
            quantity: "yield strength",
            subject: format!("{}", self.strength.grade),
            reason: "VDI 2230 tightens against it",
        })
    }

    fn tightening_factor(&self) -> Result<f64, Error> {
        match self.scatter {
            Scatter::Stated(factor) => Ok(factor),
            Scatter::Listed(row) => match row.tightening_factor_max {
                Some(factor) => Ok(factor),
                None => tightening_factor(scatter_of(row)?),
            },
        }
    }

    fn embedding_of_all(&self) -> Result<Length, Error> {
        let embedding = match self.embedding {
            Embedding::Stated(length) => length,
            Embedding::Faces {
                row,
                bearing_faces,
                interfaces,
            } => {
                if bearing_faces == 0 {
                    let allowed = Allowed::AtLeast(1_usize.into());
                    return Err(out_of_range("number of bearing faces", 0_usize, allowed));
                }
                row.of_joint(bearing_faces, interfaces)
            }
        };
        not_negative("embedding", embedding)
    }

    /// `F_KQerf`; none without a load across the bolt.
    fn slip_clamp(&self) -> Result<Option<Force>, Error> {
        let Transverse::Load {
            force,
            friction,
            interfaces,
            ..
        } = self.loads.transverse
        else {
            return Ok(None);
        };
        within("load across the bolt", force, newtons(1e-3), MOST_LOAD)?;
        within("friction of the interfaces", friction, 1e-3, 2.0)?;
        if interfaces == 0 {
            let allowed = Allowed::AtLeast(1_usize.into());
            return Err(out_of_range("number of interfaces", 0_usize, allowed));
        }
        Ok(Some(force / (f64::from(interfaces) * friction)))
    }

    /// The form at its least friction, where a torque gives the greatest preload; of a lock nut the greatest drag.
    fn least_friction(&self) -> Result<FrictionForm, Error> {
        let least = |friction: Friction| {
            let least = friction.min();
            Friction::new(least, least, least)
        };
        FrictionForm::linear(
            self.form.thread(),
            self.form.bearing_diameter(),
            least(self.form.thread_friction())?,
            least(self.form.bearing_friction())?,
        )?
        .with_prevailing(Spread::exact(self.form.prevailing_torque().max))
    }

    /// R9; nothing where the load does not repeat or does not change.
    fn amplitude(
        &self,
        share: LoadShare,
        preload: &PreloadRange,
    ) -> Result<Option<VdiFatigue>, Error> {
        let loads = &self.loads;
        let AxialCycles::Repeated { cycles, rolled } = loads.cycles else {
            return Ok(None);
        };
        if loads.axial_least >= loads.axial_greatest {
            return Ok(None);
        }
        let listed = [
            PropertyClass::Class8_8,
            PropertyClass::Class10_9,
            PropertyClass::Class12_9,
            PropertyClass::Class12_9Underlined,
        ];
        if !listed
            .iter()
            .any(|class| self.strength.grade == BoltGrade::Iso(*class))
        {
            return Err(Error::NoValue {
                quantity: "fatigue strength",
                subject: format!("{}", self.strength.grade),
                reason: "VDI 2230 has it for classes 8.8, 10.9 and 12.9",
            });
        }
        let thread = self.form.thread();
        let joint = JointDiagram::new(share, preload.service_min)?;
        if joint.under(loads.axial_greatest)?.state != JointState::Clamped {
            return Err(out_of_range(
                "greatest load along the bolt",
                loads.axial_greatest,
                Allowed::AtMost(joint.separation_load.into()),
            ));
        }
        let made = match rolled {
            RolledThread::BeforeHeatTreatment => VdiThread::RolledBeforeHeatTreatment,
            RolledThread::AfterHeatTreatment => {
                let mean = 0.5 * share.share.value * (loads.axial_least + loads.axial_greatest);
                let yields =
                    self.strength.yield_strength.unwrap_or_default() * thread.tensile_stress_area();
                VdiThread::RolledAfterHeatTreatment {
                    preload_ratio: ((preload.service_max + mean) / yields).value,
                }
            }
        };
        let strength = VdiFatigueStrength::new(thread.nominal_diameter(), made)?;
        // Infinity and NaN are no numbers of cycles.
        let strength = if (ENDURANCE_CYCLES..f64::INFINITY).contains(&cycles) {
            strength
        } else {
            strength.for_cycles(cycles)?
        };
        let (low, high) = (loads.axial_least, loads.axial_greatest);
        VdiFatigue::new(strength, &joint, thread, low, high).map(Some)
    }

    fn pressures(&self, assembly: Force, working: Force) -> Result<Vec<FacePressure>, Error> {
        self.faces
            .iter()
            .map(|face| {
                let at = |force| match surface_pressure(force, face.contact, face.limit)? {
                    SurfaceOutcome::Bears(bearing) => Ok(bearing),
                    SurfaceOutcome::FallsIn(_) => Err(Error::Mismatch(format!(
                        "{}: the bearing face is not larger than the hole, it falls in",
                        face.place
                    ))),
                };
                let (first, later) = (at(assembly)?, at(working)?);
                let greatest = first.pressure.max(later.pressure);
                Ok(FacePressure {
                    face: *face,
                    area: first.area,
                    assembly: first.pressure,
                    working: later.pressure,
                    safety: (face.limit.stress / greatest).value,
                })
            })
            .collect()
    }

    fn slipping(&self, clamp: Option<Force>, residual: Force) -> Result<Option<Slipping>, Error> {
        let Transverse::Load {
            force,
            kind,
            section,
            shear_strength,
            ..
        } = self.loads.transverse
        else {
            return Ok(None);
        };
        sane_stress("shear strength of the bolt", shear_strength)?;
        let thread = self.form.thread();
        let area: Area = match section {
            ShearSection::Shank => thread.shank_area(),
            ShearSection::Thread => thread.minor_area(),
        };
        let clamp = clamp.unwrap_or_default();
        let stress = positive("shear stress of the bolt", force / area)?;
        Ok(Some(Slipping {
            clamp,
            safety: (residual / clamp).value,
            least_safety: kind.least_safety(),
            area,
            stress,
            shear_safety: (shear_strength / stress).value,
        }))
    }

    /// What goes with the values that were given.
    pub(super) fn cautions(&self) -> Cautions {
        let mut all = self.form.cautions().and(self.strength.cautions());
        if let BoltSpring::Parts(parts) = &self.bolt {
            all.extend(&parts.cautions());
        }
        if let PlateSpring::Parts(parts) = &self.plates {
            all.extend(&parts.cautions());
        }
        if let Scatter::Listed(row) = self.scatter {
            all.extend(&row.cautions());
        }
        if let Embedding::Faces { row, .. } = self.embedding {
            all.extend(&row.cautions());
        }
        all
    }
}

impl ConcentricCheck {
    fn all(&self) -> Result<Vec<Check>, Error> {
        let loads = &self.joint.loads;
        let in_service = self.preload.service_min;
        let mut all = Vec::from([
            force_check(
                Mode::Preload,
                self.required.least,
                self.preload.initial.min,
                Level::Nominal,
                methods::VDI2230_R5,
            )?,
            force_check(
                Mode::Tightening,
                self.assembly,
                self.permitted.preload.nominal,
                Level::Allowable,
                methods::TIGHTENING_TORSION,
            )?,
            Check::new(
                Mode::BoltTension,
                Place::Bolt(1),
                self.working_stress.equivalent,
                self.permitted.yield_strength,
                Level::Nominal,
                methods::VDI2230_R8,
            )?
            .not_proportional()
            .warned(self.working_stress.cautions())
            .warned_of_method(),
        ]);
        if let Some(fatigue) = &self.fatigue {
            all.push(bolt_check(
                Mode::Fatigue,
                fatigue.amplitude,
                fatigue.strength.amplitude / LEAST_FATIGUE,
                methods::VDI_2230_PART_1_FATIGUE,
            )?);
        }
        for face in &self.pressures {
            let SurfaceOutcome::Bears(bearing) = surface_pressure(
                self.bolt_force.max(self.assembly),
                face.face.contact,
                face.face.limit,
            )?
            else {
                continue;
            };
            all.push(bearing.check(face.face.place)?.not_proportional());
        }
        if let Some(threads) = &self.joint.threads {
            let place = match threads.method {
                StripMethod::Vdi2230 {
                    width_across_flats: Some(_),
                } => Place::Nut,
                _ => Place::TappedPart,
            };
            let check = Check::new(
                Mode::Stripping,
                place,
                threads.breaking_load,
                threads.bolt_threads.min(threads.nut_threads),
                Level::Nominal,
                methods::VDI2230_STRIPPING,
            )?;
            // What the threads must bear is the bolt, not the load.
            all.push(
                check
                    .not_proportional()
                    .warned(threads.cautions())
                    .warned_of_method(),
            );
        }
        // F_KRmin >= F_KP with all terms positive, so that a joint that opens has a utilisation too.
        all.push(force_check(
            Mode::Separation,
            loads.seal + self.relief,
            in_service,
            Level::Nominal,
            methods::VDI2230_R2,
        )?);
        if let (Some(slip), Transverse::Load { shear_strength, .. }) =
            (&self.slip, loads.transverse)
        {
            // The same of F_KRmin >= S_G F_KQerf.
            all.push(force_check(
                Mode::Slip,
                slip.least_safety * slip.clamp + self.relief,
                in_service,
                Level::Allowable,
                methods::VDI2230_R12_SLIP,
            )?);
            all.push(bolt_check(
                Mode::BoltShear,
                slip.stress,
                shear_strength / LEAST_SHEAR,
                methods::VDI2230_R12_SHEAR,
            )?);
        }
        Ok(all)
    }
}

/// The weaker thread over the bolt.
fn outlasting(threads: &StrippingStrength) -> f64 {
    let weaker = threads.bolt_threads.min(threads.nut_threads);
    (weaker / threads.breaking_load).value
}

/// A stress of the bolt beside what is left of its strength by the safety that is wanted.
fn bolt_check(
    mode: Mode,
    demand: Stress,
    allowable: Stress,
    method: &'static Method,
) -> Result<Check, Error> {
    let check = Check::new(
        mode,
        Place::Bolt(1),
        demand,
        allowable,
        Level::Allowable,
        method,
    )?;
    Ok(check.warned_of_method())
}

/// A balance of forces at the joint: other terms than the load are in it, so the quotient is no factor on the load.
fn force_check(
    mode: Mode,
    demand: Force,
    resistance: Force,
    level: Level,
    method: &'static Method,
) -> Result<Check, Error> {
    let check = Check::new(mode, Place::Joint, demand, resistance, level, method)?;
    Ok(check.not_proportional().warned_of_method())
}
