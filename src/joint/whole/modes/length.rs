//! The length: shear planes on shank, a nut that clamps, protrusion, washers, cut.

use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need};
use crate::parts::{ScrewProduct, Zone};
use crate::strength::check::{Mode, Place};
use crate::strength::ply::PlyMethod;

pub(super) fn check(case: &Case, out: &mut Outcomes) {
    let candidate = &case.candidate;
    for reason in candidate.reasons() {
        out.find(Finding::Length(*reason));
    }
    for plane in case.planes.iter().filter(|plane| plane.zone != Zone::Shank) {
        out.find(Finding::PlaneInThread {
            after_ply: plane.after_ply,
        });
    }
    if candidate.washers_added_under_head > 0 {
        out.find(Finding::AddWashersUnderHead {
            count: candidate.washers_added_under_head,
        });
    }
    if candidate.washers_added > 0 {
        out.find(Finding::AddWashers {
            count: candidate.washers_added,
        });
    }
    if candidate.needs_cut {
        let to = candidate.cut.filter(|cut| cut.holds_window);
        out.find(Finding::Cut {
            to: to.map(|cut| cut.length),
        });
    }
    clear_threads(case, out);
    if case.tapped().is_some_and(|part| part.hole.is_none()) {
        out.missing(Mode::Length, Place::TappedPart, Need::TappedHole);
    }
    out.in_order(Mode::Length);
}

/// EN 1090-2, 8.2.2 (2008, a scan of the page): full threads that stay clear between nut and shank, one of a bolt that is
/// not preloaded and four of one that is. Sets of EN 14399-4 have a table of clamp lengths instead, which is not here.
fn clear_threads(case: &Case, out: &mut Outcomes) {
    // A pin that turns clamps nothing.
    let clamps = case.nut().is_some() && !case.joint.environment.rotates;
    if case.joint.methods.plies != PlyMethod::En1993 || !clamps || case.has_timber() {
        return;
    }
    let preloaded = case.torque().is_some();
    if preloaded && case.joint.bolt.product == ScrewProduct::En14399_4 {
        let why = "EN 1090-2 has a table of clamp lengths for preloaded bolts of EN 14399-4, which was not read";
        out.missing(Mode::Length, Place::Bolt(1), Need::Method(why));
        return;
    }
    let least = if preloaded { 4.0 } else { 1.0 };
    let found = case.candidate.clear_threads;
    if found < least {
        out.find(Finding::ClearThreads { found, least });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::joint::{Joint, JointMethods, TappedHole, TappedPart, Tightening};
    use crate::units::millimetres;

    /// M16 x 70, ISO 4014: 38 mm of thread, so that it begins 32 mm from the head. Between head and nut 32.5 mm leave a quarter of
    /// a pitch of 2 mm clear, 34.5 mm one and a quarter.
    fn lap(each: &str, tapped: bool) -> Joint {
        let mut said = Joint::builder("M16")
            .product("ISO 4014")
            .length("70 mm")
            .no_washers();
        said = said.ply("a", each).hole("18 mm");
        said = if tapped {
            said.tapped(TappedPart::new("bed").thread(millimetres(20.0), TappedHole::Through))
        } else {
            said.ply("b", each).hole("18 mm")
        };
        let rules = crate::joint::LengthRules::fabrication(crate::units::UnitSystem::Si);
        said.rules(rules.with_clear_threads(0.0).with_protrusion(1.0, None))
            .across("1 kN")
            .methods(JointMethods::en_1993())
            .load_factor(1.5)
            .build()
            .unwrap()
    }

    fn told(joint: &Joint) -> Option<(f64, f64)> {
        let found = joint.check().unwrap().findings;
        found.iter().find_map(|own| match own {
            Finding::ClearThreads { found, least } => Some((*found, *least)),
            _ => None,
        })
    }

    /// EN 1090-2, 8.2.2: one thread of a bolt that is not preloaded, four of one that is; of no other code, no pin and no screw.
    #[test]
    fn clear_threads_are_asked_for_by_en_1090() {
        let (found, least) = told(&lap("16.25 mm", false)).unwrap();
        assert!(
            (found - 0.25).abs() < 1e-9 && least <= 1.0,
            "{found} {least}"
        );
        assert_eq!(told(&lap("17.25 mm", false)), None);
        let mut pin = lap("16.25 mm", false);
        pin.environment.rotates = true;
        assert_eq!(told(&pin), None);
        let mut machine = lap("16.25 mm", false);
        machine.methods = JointMethods::machine_design(2.0);
        assert_eq!(told(&machine), None);
        assert_eq!(told(&lap("32.5 mm", true)), None);
        let mut tight = lap("17.25 mm", false);
        let factor = crate::preload::NutFactor::new(0.15, 0.18, 0.2).unwrap();
        let torque =
            crate::joint::TorqueTightening::new(factor, crate::preload::PreloadTarget::Reusable);
        tight.tightening = Some(Tightening::Torque(torque));
        let (found, least) = told(&tight).unwrap();
        assert!(
            (found - 1.25).abs() < 1e-9 && least >= 4.0,
            "{found} {least}"
        );
    }

    /// A washer that the search puts under the head is told of, and none where there is none.
    #[test]
    fn washers_that_are_added_are_told() {
        let joint = lap("16.25 mm", false);
        let added = |joint: &Joint| {
            let found = joint.check().unwrap().findings;
            found
                .iter()
                .any(|own| matches!(own, Finding::AddWashersUnderHead { .. }))
        };
        assert!(!added(&joint));
        let mut helped = lap("15.5 mm", false);
        let stack = helped.stack.to_builder();
        let washer = crate::spread::Spread::exact(millimetres(3.0));
        helped.stack = stack.washer_to_add_under_head(washer).build().unwrap();
        assert!(!added(&helped));
        helped.rules = helped.rules.with_washers_under_head(1);
        assert!(added(&helped));
    }
}
