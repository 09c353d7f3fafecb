//! Every check of a joint.

use alloc::vec::Vec;

use super::{Finding, Joint, JointCheck, NotChecked, Subject};
use crate::caution::{Caution, Cautions, GENERAL};
use crate::derivation::Derivation;
use crate::error::Error;
use crate::joint::{Candidate, LengthSearch, NutOption};
use crate::material::{BoltGrade, BoltStrength};
use crate::parts::{ScrewSeries, Zone};
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::shear::{LoadedPlane, PlaneRule, ShearReductions, shear_resistance};
use crate::strength::strip::nut_proof;
use crate::tables::locking::{ServiceTemperature, TemperatureLimited};
use crate::units::Force;

/// What is collected on the way.
pub(super) struct Report {
    pub(super) checks: Vec<Check>,
    pub(super) findings: Vec<Finding>,
    not_checked: Vec<NotChecked>,
    cautions: Vec<Caution>,
    /// The workings, if they are wanted.
    workings: Option<Vec<Derivation>>,
}

impl Report {
    /// Whether workings are wanted.
    pub(super) const fn works(&self) -> bool {
        self.workings.is_some()
    }

    /// Keeps a working, if workings are wanted: otherwise it is not even written.
    pub(super) fn work(&mut self, derivation: impl FnOnce() -> Derivation) {
        if let Some(workings) = &mut self.workings {
            workings.push(derivation());
        }
    }

    /// The same of one of several alike, with the place in its title.
    pub(super) fn work_at(&mut self, place: Place, derivation: impl FnOnce() -> Derivation) {
        self.work(|| {
            let derivation = derivation();
            let title = alloc::format!("{}, {place}", derivation.title());
            derivation.titled(title)
        });
    }

    pub(super) fn skip(&mut self, mode: Mode, reason: &'static str) {
        self.miss(Subject::Mode(mode), reason);
    }

    /// The same, where with a bolt of another size or grade it could be checked.
    pub(super) fn skip_bolt(&mut self, mode: Mode, reason: &'static str) {
        self.list(NotChecked {
            subject: Subject::Mode(mode),
            reason,
            of_bolt: true,
        });
    }

    pub(super) fn miss(&mut self, subject: Subject, reason: &'static str) {
        self.list(NotChecked {
            subject,
            reason,
            of_bolt: false,
        });
    }

    /// Lists what was not checked, once.
    fn list(&mut self, missing: NotChecked) {
        if !self.not_checked.contains(&missing) {
            self.not_checked.push(missing);
        }
    }

    pub(super) fn warn(&mut self, cautions: Cautions) {
        for caution in cautions.iter() {
            if !self.cautions.contains(caution) {
                self.cautions.push(*caution);
            }
        }
    }
}

impl Joint {
    /// Finds the length if none is given, and checks everything that the description allows.
    ///
    /// Checks come by falling utilisation, so that the first one governs; equal ones in the order of
    /// the modes. What cannot be checked is listed with the reason.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] or [`Error::NoValue`] for parts that do not exist, [`Error::OutOfRange`]
    /// for loads, temperatures or rules that make no sense.
    ///
    /// ```
    /// use shankline::joint::{Joint, JointBolt, JointLoad, JointMethods, JointNut};
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M12".parse()?;
    /// let ply = millimetres(20.0).plus_minus(millimetres(0.3));
    /// let swing = Joint {
    ///     title: "swing hanger (invented)".into(),
    ///     bolt: JointBolt {
    ///         product: ScrewProduct::Iso4014,
    ///         thread,
    ///         grade: BoltGrade::Iso(PropertyClass::Class8_8),
    ///         length: None,
    ///     },
    ///     nut: Some(JointNut { style: NutStyle::Iso4032, grade: None }),
    ///     tapped: None,
    ///     stack: Stack::builder().ply("beam", ply).ply("plate", ply).shear_planes([1]).build()?,
    ///     plies: Vec::new(),
    ///     load: JointLoad { across: newtons(4e3), shock_factor: 2.0, ..JointLoad::default() },
    ///     environment: shankline::joint::Environment { rotates: true, ..Default::default() },
    ///     tightening: None,
    ///     rules: LengthRules::fabrication(UnitSystem::Si),
    ///     methods: JointMethods::machine_design(2.0),
    /// };
    /// let verdict = swing.check()?;
    /// assert!(verdict.checks.iter().all(|check| check.holds()));
    /// assert!(!verdict.holds()); // strong enough, but a plain nut on a hinge comes off
    /// # Ok(())
    /// # }
    /// ```
    pub fn check(&self) -> Result<JointCheck, Error> {
        self.run(false).map(|(check, _)| check)
    }

    /// The check with the working of every step that has one.
    ///
    /// # Errors
    ///
    /// Those of [`check`](Self::check).
    ///
    /// ```
    /// use shankline::derivation::Format;
    /// use shankline::joint::Joint;
    /// use shankline::units::UnitSystem;
    /// fn homework(joint: &Joint) -> Result<(), shankline::Error> {
    ///     let (verdict, workings) = joint.check_with_working()?;
    ///     for working in workings {
    ///         println!("{}", working.render(Format::Markdown, UnitSystem::Si));
    ///     }
    ///     println!("{}", verdict.render(UnitSystem::Si));
    ///     Ok(())
    /// }
    /// ```
    pub fn check_with_working(&self) -> Result<(JointCheck, Vec<Derivation>), Error> {
        self.run(true)
    }

    fn run(&self, with_working: bool) -> Result<(JointCheck, Vec<Derivation>), Error> {
        self.load.check()?;
        self.methods.checked()?;
        // Room for what most joints need, so that the lists grow once.
        let mut report = Report {
            checks: Vec::with_capacity(24),
            findings: Vec::with_capacity(8),
            not_checked: Vec::new(),
            cautions: Vec::with_capacity(6),
            workings: with_working.then(Vec::new),
        };
        report.cautions.extend_from_slice(GENERAL);

        let candidate = self.candidate(&mut report)?;
        let strength = self
            .bolt
            .grade
            .strength_at_length(self.bolt.thread.nominal_diameter(), candidate.screw.nominal)?;
        let loads = strength.loads(&self.bolt.thread)?;
        report.warn(strength.cautions());
        report.work(|| candidate.derivation());
        if with_working {
            let loads = strength.load_derivation(&self.bolt.thread)?;
            report.work(|| loads);
        }
        let nut = self.nut_option(&mut report)?;
        self.temperatures_of_bolt(&mut report);

        self.shear(&candidate, &strength, &mut report)?;
        self.gaps_under_preload(&mut report);
        self.bending(&candidate, &strength, &loads, &mut report)?;
        self.ply_checks(&strength, &mut report)?;
        self.timber_checks(&candidate, &strength, &mut report)?;
        let share = if self.needs_stiffness() {
            self.load_share(&candidate)?
        } else {
            None
        };
        if with_working && share.is_some() {
            self.stiffness_working(&candidate, &mut report)?;
        }
        let preload = self.preload(&loads, share, &mut report)?;
        let greatest = self.greatest_bolt_force(share, preload.as_ref())?;
        self.tension(
            share,
            &strength,
            &loads,
            preload.as_ref(),
            greatest,
            &mut report,
        )?;
        self.together(&candidate, &strength, preload.as_ref(), &mut report)?;
        self.nut_strength(&strength, greatest, &mut report)?;
        self.tapped_strength(&candidate, &strength, greatest, &mut report)?;

        self.corrosion(&strength, &mut report);
        // A stable sort keeps the order of the modes between equals. Checks are large: their places are
        // sorted, and each of them moves once.
        let found = core::mem::take(&mut report.checks);
        let used = |index: &usize| found[*index].utilisation.value;
        let mut order: Vec<usize> = (0..found.len()).collect();
        order.sort_by(|a, b| used(b).total_cmp(&used(a)));
        report
            .checks
            .extend(order.iter().map(|&index| found[index]));
        for index in 0..report.checks.len() {
            report.warn(report.checks[index].cautions);
        }
        let check = JointCheck {
            candidate,
            strength,
            loads,
            preload,
            checks: report.checks,
            findings: report.findings,
            not_checked: report.not_checked,
            nut,
            cautions: report.cautions,
        };
        Ok((check, report.workings.unwrap_or_default()))
    }

    /// The length given, or the best one; if nothing fits, the nearest, with the reasons against it.
    fn candidate(&self, report: &mut Report) -> Result<Candidate, Error> {
        let screws = ScrewSeries::new(self.bolt.product, &self.bolt.thread)?;
        let nut = self.nut_end()?;
        report.warn(nut.cautions());
        let search = LengthSearch::new(&self.stack, &screws, nut, self.rules)?;
        let candidate = if let Some(length) = self.bolt.length {
            search.assess(screws.length(length)?)?
        } else {
            match search.best()? {
                Some(best) => best,
                // Of those that do not fit, the nearest tells why.
                None => *search
                    .run()?
                    .rejected()
                    .first()
                    .ok_or_else(|| Error::NoValue {
                        quantity: "stock length",
                        subject: alloc::string::ToString::to_string(&screws),
                        reason: "none has been read at that size",
                    })?,
            }
        };
        report.warn(screws.cautions(&candidate.screw));
        let findings = &mut report.findings;
        findings.extend(candidate.reasons().copied().map(Finding::Length));
        for plane in self.stack.planes_of(&candidate) {
            if plane.worst != Zone::Shank {
                findings.push(Finding::PlaneInThread {
                    after_ply: plane.after_ply,
                });
            }
        }
        if candidate.washers_added_under_head > 0 {
            findings.push(Finding::AddWashersUnderHead {
                count: candidate.washers_added_under_head,
            });
        }
        if candidate.washers_added > 0 {
            findings.push(Finding::AddWashers {
                count: candidate.washers_added,
            });
        }
        if candidate.needs_cut {
            let to = candidate.cut.filter(|cut| cut.holds_window);
            findings.push(Finding::Cut {
                to: to.map(|cut| cut.length),
            });
        }
        Ok(candidate)
    }

    /// What speaks for and against the nut in this environment.
    fn nut_option(&self, report: &mut Report) -> Result<Option<NutOption>, Error> {
        let Some(nut) = self.nut else {
            self.environment.check()?;
            let shaken = self.environment.vibration || self.environment.rotates;
            if shaken || self.environment.dangerous_if_lost {
                report.miss(
                    Subject::Locking,
                    "nothing here says what keeps a screw from turning in a tapped part",
                );
            }
            return Ok(None);
        };
        let own = NutOption::of(nut.style, &self.bolt.thread, &self.environment)?;
        report
            .findings
            .extend(own.reasons.iter().copied().map(Finding::Nut));
        Ok(Some(own))
    }

    fn temperatures_of_bolt(&self, report: &mut Report) {
        let (element, publisher) = match self.bolt.grade {
            BoltGrade::Iso(_) => (TemperatureLimited::Iso898Steel, "ISO 898"),
            BoltGrade::Stainless(_) => (TemperatureLimited::Iso3506Stainless, "ISO 3506"),
            _ => (TemperatureLimited::LowAlloySteel, "NASA RP-1228"),
        };
        let Some(row) = ServiceTemperature::latest(element, publisher) else {
            return;
        };
        if let Some(limit) = row
            .temperature_max
            .filter(|&limit| self.environment.hottest > limit)
        {
            report.findings.push(Finding::BoltTooHot { limit });
        }
        if let Some(limit) = row
            .temperature_min
            .filter(|&limit| self.environment.coldest < limit)
        {
            report.findings.push(Finding::BoltTooCold { limit });
        }
    }

    /// Every shear plane by itself, each with its share of the load.
    fn shear(
        &self,
        candidate: &Candidate,
        strength: &BoltStrength,
        report: &mut Report,
    ) -> Result<(), Error> {
        let count = self.stack.shear_planes().len();
        if count == 0 {
            report.skip(Mode::BoltShear, "the stack has no shear plane");
            return Ok(());
        }
        let level = self.methods.level;
        let load = self.load.factor(level) * self.load.across;
        let planes = self.stack.planes_of(candidate);
        for (number, (plane, share)) in (1..).zip(planes.zip(self.stack.plane_shares())) {
            let alone = LoadedPlane {
                zone: plane.worst,
                share: 1.0,
            };
            let shear = shear_resistance(
                &self.bolt.thread,
                strength,
                &[alone],
                PlaneRule::Each,
                self.methods.shear,
                &ShearReductions::default(),
            )?;
            let place = Place::Plane(number);
            report.work_at(place, || shear.derivation());
            let resistance = shear.resistance.at(level)?;
            let check = Check::new(Mode::BoltShear, place, share * load, resistance, level)?;
            report
                .checks
                .push(check.by(self.methods.shear.name()).warned(shear.cautions()));
        }
        Ok(())
    }

    /// Whether nut and bolt belong together, and whether the nut bears the preload.
    fn nut_strength(
        &self,
        strength: &BoltStrength,
        greatest: Force,
        report: &mut Report,
    ) -> Result<(), Error> {
        let Some(nut) = self.nut else {
            return Ok(());
        };
        let Some(grade) = nut.grade else {
            report.skip(Mode::Stripping, "the grade of the nut is not given");
            return Ok(());
        };
        let Some(shape) = nut.style.shape() else {
            report.skip(Mode::Stripping, "nut strengths are for other shapes of nut");
            return Ok(());
        };
        let nut = grade.strength(shape, &self.bolt.thread)?;
        let proof = nut_proof(&self.bolt.thread, strength, &nut)?;
        report.work(|| proof.derivation());
        report.warn(nut.cautions());
        if !proof.bolt_breaks_first() {
            report
                .findings
                .push(Finding::NutWeaker { ratio: proof.ratio });
        }
        if greatest > Force::default() {
            let check = Check::new(
                Mode::Stripping,
                Place::Nut,
                greatest,
                proof.nut_proof_load,
                Level::Nominal,
            )?;
            report.checks.push(check.by("proof load of the nut"));
        }
        Ok(())
    }
}
