//! What its coating does to a hard bolt, and whether it bears the heat.

use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need, NotConcerned};
use crate::joint::{Finish, Part};
use crate::material::{AstmGrade, BoltGrade};
use crate::strength::check::{Mode, Place};
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

pub(super) fn check(case: &Case, out: &mut Outcomes) {
    let (bolt, nut) = (
        case.joint.bolt.finish,
        case.nut().map(|nut| nut.given.finish),
    );
    out.in_order(Mode::Coating);
    out.in_order(Mode::ThreadFit);
    out.not_concerned(Mode::Galling, NotConcerned::NoGalling);
    out.not_concerned(Mode::Reuse, NotConcerned::NeverRefitted);
    match bolt {
        None if case.strength.tensile_strength >= HARD => {
            out.missing(Mode::Coating, Place::Bolt(1), Need::BoltFinish);
        }
        None => {}
        Some(finish) => {
            coating(case, finish, out);
            hot_coating(case, Part::Bolt, finish, out);
        }
    }
    if let Some(Some(finish)) = nut {
        hot_coating(case, Part::Nut, finish, out);
    }
}

/// Whether hydrogen may have made the bolt brittle.
fn coating(case: &Case, finish: Finish, out: &mut Outcomes) {
    let grade = case.joint.bolt.grade;
    let metallic = !matches!(finish, Finish::Bare(_) | Finish::ZincFlake);
    if metallic && is_a490(grade) {
        out.find(Finding::CoatingForbidden);
        return;
    }
    let tensile = case.strength.tensile_strength;
    if finish == Finish::HotDipGalvanized && tensile > GALVANIZED_MOST {
        out.find(Finding::GalvanizedTooStrong {
            strength: tensile,
            most: GALVANIZED_MOST,
        });
    }
    let (Finish::ZincPlated { baked } | Finish::CadmiumPlated { baked }) = finish else {
        return;
    };
    match greatest_hardness(grade) {
        Some(hardness) if hardness >= BAKED_FROM => out.find(if baked {
            Finding::PlatedHard { hardness }
        } else {
            Finding::NotBaked { hardness }
        }),
        None if tensile >= HARD => {
            let why = "no greatest hardness of the grade has been read";
            out.missing(Mode::Coating, Place::Bolt(1), Need::Method(why));
        }
        _ => {}
    }
}

fn hot_coating(case: &Case, part: Part, finish: Finish, out: &mut Outcomes) {
    let Some(element) = finish.temperature_limited() else {
        return;
    };
    let limits = ServiceTemperature::of(element)
        .filter_map(|row| row.temperature_max.map(|limit| (row, limit)));
    let Some((row, limit)) = limits.reduce(|a, b| if b.1 < a.1 { b } else { a }) else {
        return;
    };
    if case.joint.environment.hottest > limit {
        out.warn(row.cautions());
        out.find(Finding::CoatingTooHot { part, limit });
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
