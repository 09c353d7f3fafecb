//! Corrosion of unlike metals, and what coatings do to hard bolts.

use super::checks::Report;
use super::{Finding, Joint, Subject};
use crate::joint::{Part, galvanic_pair};
use crate::material::{BoltStrength, Finish, Hydrogen, Severity, hydrogen};
use crate::tables::galvanic::{Exposure, Metal};
use crate::tables::locking::ServiceTemperature;
use crate::units::ksi;

impl Joint {
    /// Every pair of bolt, nut and plies in contact, and the coatings. Washers are not looked at.
    pub(super) fn corrosion(&self, strength: &BoltStrength, report: &mut Report) {
        let Some(contact) = self.environment.contact else {
            report.miss(
                Subject::Corrosion,
                "metals and coatings in contact are not described",
            );
            Self::coating(None, strength, report);
            return;
        };
        let bolt = contact.bolt.metal();
        let nut = contact.nut.metal();
        let exposure = contact.exposure;
        let mut pair = |a: (Part, Option<Metal>), b: (Part, Option<Metal>)| {
            touching(exposure, a, b, report);
        };
        let has_nut = self.nut.is_some();
        if has_nut {
            pair((Part::Bolt, bolt), (Part::Nut, nut));
        }
        let count = self.stack.plies().len();
        // The shank touches every ply, the nut the last one, and each ply the next. Timber is no metal.
        let metal = |number: usize| {
            let ply = number.checked_sub(1).and_then(|at| self.plies.get(at));
            (Part::Ply(number), ply.and_then(|ply| ply.metal))
        };
        let is_metal = |number: usize| {
            let ply = number.checked_sub(1).and_then(|at| self.plies.get(at));
            ply.is_none_or(|ply| ply.timber.is_none())
        };
        for number in (1..=count).filter(|&number| is_metal(number)) {
            pair((Part::Bolt, bolt), metal(number));
            if number == count {
                if has_nut {
                    pair((Part::Nut, nut), metal(number));
                }
            } else if is_metal(number + 1) {
                pair(metal(number), metal(number + 1));
            }
        }
        Self::coating(Some(contact.bolt), strength, report);
        self.hot_coating(Part::Bolt, contact.bolt, report);
        if has_nut {
            self.hot_coating(Part::Nut, contact.nut, report);
        } else {
            report.miss(
                Subject::Corrosion,
                "the metal of the tapped part is not described",
            );
        }
    }

    /// Whether hydrogen may have made the bolt brittle.
    fn coating(finish: Option<Finish>, strength: &BoltStrength, report: &mut Report) {
        for found in hydrogen(strength, finish) {
            match found {
                Hydrogen::CoatingForbidden => report.findings.push(Finding::CoatingForbidden),
                Hydrogen::TooHardToDip { strength, .. } => {
                    report.findings.push(Finding::GalvanizedTooStrong {
                        strength,
                        most: ksi(150.0),
                    });
                }
                Hydrogen::NotBaked { hardness } => {
                    report.findings.push(Finding::NotBaked { hardness });
                }
                Hydrogen::PlatedHard { hardness } => {
                    report.findings.push(Finding::PlatedHard { hardness });
                }
                Hydrogen::FinishUnknown => report.miss(
                    Subject::Embrittlement,
                    "the coating of this hard bolt is not described",
                ),
                Hydrogen::HardnessUnknown => report.miss(
                    Subject::Embrittlement,
                    "no greatest hardness of the grade has been read",
                ),
                _ => {}
            }
        }
    }

    fn hot_coating(&self, part: Part, finish: Finish, report: &mut Report) {
        let Some(element) = finish.temperature_limited() else {
            return;
        };
        let limits = ServiceTemperature::of(element)
            .filter_map(|row| row.temperature_max.map(|limit| (row, limit)));
        let Some((row, limit)) = limits.reduce(|a, b| if b.1 < a.1 { b } else { a }) else {
            return;
        };
        if self.environment.hottest > limit {
            report.warn(row.cautions());
            report.findings.push(Finding::CoatingTooHot { part, limit });
        }
    }
}

fn touching(
    exposure: Exposure,
    a: (Part, Option<Metal>),
    b: (Part, Option<Metal>),
    report: &mut Report,
) {
    let pair = galvanic_pair(exposure, a, b);
    let Some(difference) = pair.difference else {
        report.miss(
            Subject::Corrosion,
            "the metal of a ply, or the index of a coating, is not given",
        );
        return;
    };
    report.warn(pair.cautions());
    if pair.severity() == Severity::Fault {
        report.findings.push(Finding::Galvanic {
            anode: pair.anode,
            cathode: pair.cathode,
            difference,
            permitted: pair.permitted,
        });
    }
}
