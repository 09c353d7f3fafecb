//! Corrosion of unlike metals, and what coatings do to hard bolts.

use super::checks::Report;
use super::{Finding, Joint, Subject};
use crate::joint::{Finish, Part};
use crate::material::{AstmGrade, BoltGrade, BoltStrength};
use crate::tables::galvanic::{AnodicIndex, Exposure, Metal};
use crate::tables::grades::{AstmGradeRow, HardnessScale, PropertyClassRow, SaeGradeRow};
use crate::tables::locking::ServiceTemperature;
use crate::units::{Stress, megapascals};

/// Rockwell C from which plated bolts are baked. ASTM F1941 (a supplier's page: 40 HRC or above shall be
/// baked, below it is not mandatory); ISO 4042:2018 says above 390 HV, which is 40 HRC in SAE J1648.
const BAKED_FROM: f64 = 40.0;
/// Above it hot-dip galvanizing makes brittle: ASTM A143, "approximately 150 ksi (1100 MPa)".
const GALVANIZED_MOST: Stress = megapascals(1100.0);
/// Hard bolts are the ones that plating and pickling make brittle: common practice, no source.
const HARD: Stress = megapascals(1000.0);

impl Joint {
    /// Every pair of bolt, nut and plies in contact, and the coatings. Washers are not looked at.
    pub(super) fn corrosion(&self, strength: &BoltStrength, report: &mut Report) {
        let Some(contact) = self.environment.contact else {
            report.miss(
                Subject::Corrosion,
                "metals and coatings in contact are not described",
            );
            if strength.tensile_strength >= HARD {
                report.miss(
                    Subject::Embrittlement,
                    "the coating of this hard bolt is not described",
                );
            }
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
        self.coating(contact.bolt, strength, report);
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
    fn coating(&self, finish: Finish, strength: &BoltStrength, report: &mut Report) {
        let metallic = !matches!(finish, Finish::Bare(_) | Finish::ZincFlake);
        if metallic && is_a490(self.bolt.grade) {
            report.findings.push(Finding::CoatingForbidden);
            return;
        }
        if finish == Finish::HotDipGalvanized && strength.tensile_strength > GALVANIZED_MOST {
            report.findings.push(Finding::GalvanizedTooStrong {
                strength: strength.tensile_strength,
                most: GALVANIZED_MOST,
            });
        }
        let (Finish::ZincPlated { baked } | Finish::CadmiumPlated { baked }) = finish else {
            return;
        };
        match greatest_hardness(self.bolt.grade) {
            Some(hardness) if hardness >= BAKED_FROM => {
                report.findings.push(if baked {
                    Finding::PlatedHard { hardness }
                } else {
                    Finding::NotBaked { hardness }
                });
            }
            None if strength.tensile_strength >= HARD => report.miss(
                Subject::Embrittlement,
                "no greatest hardness of the grade has been read",
            ),
            _ => {}
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
    let row = |metal: Option<Metal>| metal.and_then(AnodicIndex::of);
    let (Some(first), Some(second)) = (row(a.1), row(b.1)) else {
        report.miss(
            Subject::Corrosion,
            "the metal of a ply, or the index of a coating, is not given",
        );
        return;
    };
    let (anode, cathode) = if first.anodic_index >= second.anodic_index {
        (a.0, b.0)
    } else {
        (b.0, a.0)
    };
    let permitted = exposure.permitted();
    let difference = (first.anodic_index - second.anodic_index).abs();
    // Indices have two decimals: half a unit of the third keeps 0.40 - 0.25 at 0.15.
    report.warn(first.cautions());
    report.warn(second.cautions());
    if difference.value > permitted.value + 5e-4 {
        report.findings.push(Finding::Galvanic {
            anode,
            cathode,
            difference,
            permitted,
        });
    }
}

/// ASTM A490-00, 5.4: neither hot-dip nor mechanical zinc nor plating on these bolts (quoted in a mailing
/// list of engineers). F2280 are the same bolts with a splined end: common practice, no source.
const fn is_a490(grade: BoltGrade) -> bool {
    use AstmGrade::{F3125A490Type1, F3125A490Type3, F3125F2280Type1, F3125F2280Type3};
    matches!(
        grade,
        BoltGrade::Astm(F3125A490Type1 | F3125A490Type3 | F3125F2280Type1 | F3125F2280Type3)
    )
}

/// The greatest Rockwell C hardness that any size of a grade may have; zero for grades measured on a softer
/// scale, none if nobody has read one.
fn greatest_hardness(grade: BoltGrade) -> Option<f64> {
    let on_c = |scale: HardnessScale, value: f64| match scale {
        HardnessScale::RockwellC => value,
        _ => 0.0,
    };
    let greatest = |a: f64, b: f64| a.max(b);
    match grade {
        BoltGrade::Iso(class) => PropertyClassRow::all()
            .iter()
            .filter(|row| row.class == class)
            .map(|row| row.rockwell_c_max.unwrap_or(0.0))
            .reduce(greatest),
        BoltGrade::Sae(grade) => SaeGradeRow::all()
            .iter()
            .filter(|row| row.grade == grade)
            .map(|row| on_c(row.core_hardness_scale, row.core_hardness_max))
            .reduce(greatest),
        BoltGrade::Astm(grade) => AstmGradeRow::all_inch()
            .iter()
            .chain(AstmGradeRow::all_metric())
            .filter(|row| row.grade == grade)
            .filter_map(|row| Some(on_c(row.core_hardness_max_scale?, row.core_hardness_max?)))
            .reduce(greatest),
        // No hardness is tabled of the others.
        _ => None,
    }
}
