//! What coatings do: hydrogen in hard bolts, threads that do not fit, galling, and whether the bolt may be used again.

use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need, NotConcerned};
use crate::joint::{galling, reuse};
use crate::material::{CoatedFit, Finish, Hydrogen, Severity, coated_fit, hydrogen};
use crate::parts::Locking;
use crate::strength::check::{Mode, Place};
use crate::tables::galvanic::Metal;

pub(super) fn check(case: &Case, out: &mut Outcomes) {
    brittle(case, out);
    fit(case, out);
    seizing(case, out);
    again(case, out);
}

/// Whether hydrogen may have made the bolt brittle.
fn brittle(case: &Case, out: &mut Outcomes) {
    const MODE: Mode = Mode::Coating;
    out.in_order(MODE);
    // Such a surface on steel is plated, and whether it was baked is not said.
    let plated = matches!(
        case.joint.bolt.finish,
        Some(Finish::Bare(
            Metal::Tin
                | Metal::Chromium
                | Metal::HighBrass
                | Metal::Brass
                | Metal::Copper
                | Metal::Nickel
                | Metal::Silver
                | Metal::Gold
                | Metal::Lead
        ))
    );
    if plated && hydrogen(&case.strength, None).contains(&Hydrogen::FinishUnknown) {
        out.missing(MODE, Place::Bolt(1), Need::BoltFinish);
    }
    // A least strength says nothing of the greatest hardness.
    let electroplated = matches!(
        case.joint.bolt.finish,
        Some(Finish::ZincPlated { .. } | Finish::CadmiumPlated { .. })
    );
    if case.joint.own.strength.is_some() && (electroplated || plated) {
        let why =
            "how hard the bolt is at most is not known: a plated one may be brittle with hydrogen";
        out.missing(MODE, Place::Bolt(1), Need::Method(why));
    }
    for found in hydrogen(&case.strength, case.joint.bolt.finish) {
        match (found, found.severity()) {
            (Hydrogen::FinishUnknown, _) => {
                out.missing(MODE, Place::Bolt(1), Need::BoltFinish);
            }
            (_, Severity::Undecided) => {
                let why = "no greatest hardness of the grade has been read";
                out.missing(MODE, Place::Bolt(1), Need::Method(why));
            }
            _ => out.find(Finding::Hydrogen(found)),
        }
    }
}

/// Whether the nut goes on the bolt, and holds.
fn fit(case: &Case, out: &mut Outcomes) {
    const MODE: Mode = Mode::ThreadFit;
    let Some(nut) = case.nut() else {
        tapped(case, out);
        return;
    };
    out.in_order(MODE);
    let bolt = case.joint.bolt.finish;
    if bolt.is_none() {
        out.missing(MODE, Place::Bolt(1), Need::BoltFinish);
    }
    if nut.finish.is_none() {
        out.missing(MODE, Place::Nut, Need::NutFinish);
    }
    let (Some(bolt), Some(finish)) = (bolt, nut.finish) else {
        return;
    };
    let found = coated_fit(bolt, nut.grade, finish, case.thread);
    match out.attempt(MODE, Place::Nut, found) {
        Some(CoatedFit::NotFit { why }) => out.find(Finding::ThreadsDoNotFit { why }),
        Some(CoatedFit::Fits {
            note: Some(note), ..
        }) => {
            if note.severity() >= Severity::Undecided {
                out.missing(MODE, Place::Nut, Need::Fit(note));
            } else {
                out.find(Finding::Fit(note));
            }
        }
        _ => {}
    }
}

/// Whether the screw goes into its tapped hole, which is taken for one of the usual size.
fn tapped(case: &Case, out: &mut Outcomes) {
    const MODE: Mode = Mode::ThreadFit;
    match case.joint.bolt.finish {
        None => out.missing(MODE, Place::Bolt(1), Need::BoltFinish),
        // ISO 10684 and ASTM A563: the room for the zinc is in the hole.
        Some(Finish::HotDipGalvanized | Finish::MechanicalZinc) => {
            let why = "thick zinc needs a thread tapped oversize, and strips it sooner: that of the part is not described";
            out.missing(MODE, Place::TappedPart, Need::Method(why));
        }
        Some(_) => out.in_order(MODE),
    }
}

/// Whether the threads seize while they are turned: no standard has a number, so it is told and no more.
fn seizing(case: &Case, out: &mut Outcomes) {
    const MODE: Mode = Mode::Galling;
    let nut = match (case.nut(), case.insert) {
        (Some(nut), _) => (nut.grade, nut.finish),
        // The wire is austenitic (ASME B18.29.2M, an extract).
        (None, Some(_)) => (None, Some(Finish::Bare(Metal::Stainless18Chromium))),
        (None, None) => {
            out.not_concerned(MODE, NotConcerned::NoNut);
            return;
        }
    };
    let bolt = (case.joint.bolt.grade, case.joint.bolt.finish);
    match galling(bolt, nut, None) {
        Some(found) => {
            out.find(Finding::Galling(found));
            out.in_order(MODE);
        }
        None => out.not_concerned(MODE, NotConcerned::NoGalling),
    }
}

/// How often a lock nut is taken off when it is tested: ASME B18.16.6 has the running torque of the fifth removal (ISO
/// 2320 too, recalled).
const TESTED_REMOVALS: usize = 5;

/// Whether it may be taken apart and put together again.
fn again(case: &Case, out: &mut Outcomes) {
    const MODE: Mode = Mode::Reuse;
    if case.joint.environment.refits == 0 {
        out.not_concerned(MODE, NotConcerned::NeverRefitted);
        return;
    }
    let locking = case.nut().map(|nut| nut.locking);
    if case.joint.environment.refits > TESTED_REMOVALS
        && matches!(locking, Some(Locking::Insert | Locking::AllMetal))
    {
        let why = "lock nuts are tested for five removals: after that its running torque is measured each time, or a new \
                   nut taken";
        out.missing(MODE, Place::Nut, Need::Method(why));
    }
    let target = case.torque().map(|torque| torque.target);
    let found = reuse(case.joint.bolt.grade, case.joint.bolt.finish, target);
    match found {
        crate::joint::Reuse::FinishUnknown => {
            out.missing(MODE, Place::Bolt(1), Need::BoltFinish);
        }
        found => {
            // Nothing is known for or against it: common practice lets such bolts be used again.
            if found == crate::joint::Reuse::NoRule {
                out.not_concerned(MODE, NotConcerned::NoRule);
            } else {
                out.in_order(MODE);
            }
            out.find(Finding::Reuse(found));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::joint::{Joint, Verdict};
    use crate::material::BoltGrade;
    use crate::names::Key;

    /// A plated bolt of a grade of which nobody read how hard it may be at most: that is open, not passed over as a note.
    #[test]
    fn a_hardness_that_nobody_read_is_missing() {
        let zinc = Finish::ZincPlated { baked: false };
        let mut seen = 0;
        for &grade in BoltGrade::ALL {
            let Ok(strength) = grade.strength(crate::units::millimetres(20.0)) else {
                continue;
            };
            let unknown = hydrogen(&strength, Some(zinc)).contains(&Hydrogen::HardnessUnknown);
            let said = Joint::builder("M20").ply("a", "20 mm").ply("b", "20 mm");
            let joint = said.grade(grade).finish(zinc).across("1 kN").build();
            let Ok(Ok(found)) = joint.map(|joint| joint.check()) else {
                continue;
            };
            let open = |found: &Verdict| {
                let mut missing = found.missing.iter();
                missing.any(|own| {
                    let needs = matches!(&own.need, Need::Method(why) if why.contains("hardness"));
                    own.mode == Mode::Coating && own.place == Place::Bolt(1) && needs
                })
            };
            assert_eq!(open(&found), unknown, "{grade}");
            seen += usize::from(unknown);
        }
        assert!(seen > 0);
    }
}
