//! What a joint ends in: a nut, or the thread of a tapped part and what that holds.

use super::checks::Report;
use super::{Finding, Joint, JointNut, JointTapped};
use crate::error::Error;
use crate::joint::{Candidate, NutEnd};
use crate::material::BoltStrength;
use crate::parts::{Locking, Nut};
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::strip::{StripMethod, ThreadFailure, ThreadMaterial, stripping};
use crate::tables::plies::PlyMaterial;
use crate::thread::ThreadFit;
use crate::thread::strip::{EndLoss, EngagedLength};
use crate::units::{Force, Length};

/// What a joint ends in.
pub(super) enum End<'a> {
    Nut(JointNut),
    Tapped(&'a JointTapped),
}

impl Joint {
    /// The nut or the tapped thread, whichever the stack goes with.
    pub(super) fn end(&self) -> Result<End<'_>, Error> {
        match (self.stack.tapped_part(), self.nut, &self.tapped) {
            (None, Some(nut), None) => Ok(End::Nut(nut)),
            (Some(_), None, Some(tapped)) => Ok(End::Tapped(tapped)),
            (None, ..) => Err(Error::Mismatch(
                "a stack without a tapped part ends in a nut: give it and no tapped thread".into(),
            )),
            (Some(_), ..) => Err(Error::Mismatch(
                "the stack ends in a tapped part: give its thread and no nut".into(),
            )),
        }
    }

    /// The same as a length search sees it.
    pub(super) fn nut_end(&self) -> Result<NutEnd, Error> {
        match self.end()? {
            End::Nut(nut) => NutEnd::of(Nut::find(nut.style, &self.bolt.thread)?),
            End::Tapped(tapped) => NutEnd::tapped(tapped.engagement, tapped.depth),
        }
    }

    pub(super) fn locking(&self) -> Option<Locking> {
        self.nut.map(|nut| nut.style.locking())
    }

    /// Stripping of both threads in a tapped part, over the engagement of the shortest screw in the thickest
    /// stack, less one pitch for the chamfers of screw and hole.
    pub(super) fn tapped_strength(
        &self,
        candidate: &Candidate,
        strength: &BoltStrength,
        greatest: Force,
        report: &mut Report,
    ) -> Result<(), Error> {
        let Some(tapped) = &self.tapped else {
            return Ok(());
        };
        report.skip(
            Mode::Bearing,
            "the tapped part is not described as the plies are",
        );
        let Some(material) = &tapped.material else {
            report.skip(
                Mode::Stripping,
                "the material of the tapped part is not given",
            );
            return Ok(());
        };
        // Cut to the stack in hand, it fills what is wanted and no more.
        let fixed = candidate.cut.filter(|cut| cut.holds_window);
        let beyond = match (candidate.needs_cut, fixed) {
            (false, _) => candidate.protrusion.min,
            (true, Some(cut)) => cut.protrusion.min,
            (true, None) => Length::default(),
        };
        let reached = tapped.engagement + beyond;
        let engaged = tapped.depth.map_or(reached, |depth| reached.min(depth));
        let areas = self.tapped_fit().and_then(|fit| {
            let engaged = EngagedLength::new(engaged)?;
            fit.strip_areas(engaged.less(EndLoss::Chamfers(1), &self.bolt.thread)?)
        });
        let areas = match areas {
            Ok(areas) => areas,
            Err(Error::OutOfRange { .. }) => {
                report.skip(Mode::Stripping, "the screw does not reach into the thread");
                return Ok(());
            }
            Err(Error::NoValue { .. } | Error::NotInTable { .. }) => {
                report.skip(
                    Mode::Stripping,
                    "no limits of size of that thread are known",
                );
                return Ok(());
            }
            Err(error) => return Err(error),
        };
        let part = match ThreadMaterial::of_ply(PlyMaterial::find(material)?) {
            Ok(part) => part,
            Err(Error::NoValue { .. }) => {
                let why = "no tensile strength of the tapped part is known";
                report.skip(Mode::Stripping, why);
                return Ok(());
            }
            Err(error) => return Err(error),
        };
        let bolt = ThreadMaterial::of_bolt(strength);
        let method = StripMethod::FedStdH28;
        let found = stripping(&areas, &bolt, &part, method)?;
        report.work(|| found.derivation());
        report.warn(found.cautions());
        if found.first != ThreadFailure::Bolt {
            report.findings.push(Finding::ThreadsWeaker {
                ratio: found.ultimate / found.breaking_load,
            });
        }
        if greatest > Force::default() {
            for (place, resistance) in [
                (Place::Bolt(1), found.bolt_threads),
                (Place::TappedPart, found.nut_threads),
            ] {
                let check =
                    Check::new(Mode::Stripping, place, greatest, resistance, Level::Nominal)?;
                report
                    .checks
                    .push(check.by("FED-STD-H28/2, half of the tensile strength"));
            }
        }
        Ok(())
    }

    /// The usual fit: 6H/6g or 2B/2A.
    fn tapped_fit(&self) -> Result<ThreadFit, Error> {
        let thread = &self.bolt.thread;
        let (bolt, hole) = if thread.is_unified() {
            ("2A", "2B")
        } else {
            ("6g", "6H")
        };
        thread.fit(bolt.parse()?, hole.parse()?)
    }
}
