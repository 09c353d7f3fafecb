//! What no other length can cure, and what another may.

use super::*;
use crate::joint::{JointMethods, JointStiffness, NutReason, Reason, Tightening, TorqueTightening};
use crate::material::{AstmGrade, Hydrogen};
use crate::preload::{NutFactor, PreloadTarget};
use crate::strength::shear::AiscEdition;
use crate::tables::methods;
use crate::units::{celsius, millimetres, newtons, newtons_per_millimetre, volts};

fn joint() -> Joint {
    let joint = Joint::builder("M12")
        .ply("bracket", "12 mm")
        .ply("rail", "12 mm")
        .across("4 kN");
    joint.build().unwrap()
}

fn against(joint: &Joint) -> Against<'_> {
    Against {
        joint,
        same_strength: true,
        all_on_shank: true,
    }
}

fn check(mode: Mode, place: Place) -> Check {
    let one = newtons(1.0);
    let level = crate::strength::check::Level::Design;
    Check::new(mode, place, one, one, level, methods::COMMON_PRACTICE).unwrap()
}

/// Every length presses the ply alike, and no length has more than the whole shank.
#[test]
fn a_check_that_no_length_changes_ends_the_search() {
    let joint = joint();
    let usual = against(&joint);
    let (ply, head, whole) = (Place::Ply(1), Place::Head, Place::Joint);
    for (mode, place, ends) in [
        (Mode::Bearing, ply, true),
        (Mode::Bearing, head, false),
        (Mode::BoltBearing, ply, true),
        (Mode::BoltBearing, head, false),
        (Mode::TearOut, ply, true),
        (Mode::NetSection, ply, true),
        (Mode::GrossSection, ply, true),
        (Mode::GrossSection, head, false),
        (Mode::Stripping, Place::Nut, true),
        (Mode::Tightening, whole, true),
        (Mode::BoltShear, Place::Plane(1), true),
        (Mode::BoltTension, whole, false),
        (Mode::Combined, whole, false),
        (Mode::Slip, whole, false),
        (Mode::Fatigue, whole, false),
    ] {
        let check = check(mode, place);
        assert_eq!(usual.check(&check), ends, "{mode}, {place}");
        // Long bolts of some grades are weaker: their short ones may hold.
        let weaker = Against {
            same_strength: false,
            ..against(&joint)
        };
        assert!(!weaker.check(&check), "{mode}, {place}");
        // A plane in the thread of this length may lie on the shank of another.
        let in_thread = Against {
            all_on_shank: false,
            ..against(&joint)
        };
        let ends = ends && mode != Mode::BoltShear;
        assert_eq!(in_thread.check(&check), ends, "{mode}, {place}");
    }
}

/// The springs of bolt and plies share a pull along the bolt, and their expansion moves the preload: both go with the
/// length, unless the springs are given. A rule for long grips goes with it too.
#[test]
fn what_goes_with_the_length_may_be_cured() {
    let torque = |given: bool| {
        let factor = NutFactor::new(0.15, 0.18, 0.2).unwrap();
        let mut torque = TorqueTightening::new(factor, PreloadTarget::Reusable);
        let spring = newtons_per_millimetre(1e5);
        torque.stiffness = given.then_some(JointStiffness {
            bolt: spring,
            members: spring,
        });
        Some(Tightening::Torque(torque))
    };
    let snug = Some(Tightening::Snug);
    for (tightening, pull, hottest, strips, tightens) in [
        (snug, 0.0, 20.0, true, true),
        (snug, 1.0, 20.0, true, true),
        (snug, 1.0, 80.0, true, true),
        (torque(false), 0.0, 20.0, true, true),
        (torque(false), 1.0, 20.0, false, true),
        (torque(true), 1.0, 20.0, true, true),
        (torque(true), 0.0, 80.0, false, false),
        (torque(false), 0.0, 80.0, false, false),
        (torque(false), 1.0, 80.0, false, false),
    ] {
        let mut joint = joint();
        joint.tightening = tightening;
        joint.load.along = newtons(pull);
        joint.environment.hottest = celsius(hottest);
        let against = against(&joint);
        let ends = [
            against.check(&check(Mode::Stripping, Place::Nut)),
            against.check(&check(Mode::Tightening, Place::Joint)),
        ];
        assert_eq!(ends, [strips, tightens], "{tightening:?} {pull} {hottest}");
    }
    // AISC 360 takes from A307 bolts with their grip, and from no others.
    let shear = check(Mode::BoltShear, Place::Plane(1));
    let mut joint = joint();
    joint.methods = JointMethods::aisc_lrfd(AiscEdition::E2016);
    joint.bolt.grade = AstmGrade::A307A.into();
    assert!(!against(&joint).check(&shear));
    joint.bolt.grade = AstmGrade::F3125A325Type1.into();
    assert!(against(&joint).check(&shear));
}

#[test]
fn a_fault_that_no_length_changes_ends_the_search() {
    let joint = joint();
    let usual = against(&joint);
    let weaker = Against {
        same_strength: false,
        ..against(&joint)
    };
    let galvanic = |anode, cathode| Finding::Galvanic {
        anode,
        cathode,
        difference: volts(0.5),
        permitted: volts(0.15),
    };
    let hot = celsius(120.0);
    let place = Place::Ply(1);
    let (hole, least) = (millimetres(12.0), millimetres(13.0));
    let nothing = Finding::NothingLeft {
        place,
        mode: Mode::NetSection,
        why: "the hole is as wide as the ply",
    };
    let washer = Part::WasherUnderNut;
    for (finding, ends, of_weaker) in [
        (Finding::Nut(NutReason::SpinsFree), true, true),
        (Finding::BoltTooHot { limit: hot }, true, true),
        (Finding::BoltTooCold { limit: hot }, true, true),
        (Finding::HoleTooSmall { place, hole, least }, true, true),
        (Finding::HoleWantsSlip { place }, true, true),
        (Finding::Hydrogen(Hydrogen::CoatingForbidden), true, false),
        (nothing, true, false),
        (galvanic(Part::Bolt, Part::Ply(1)), true, true),
        (galvanic(Part::Ply(2), Part::Ply(1)), true, true),
        // A washer more parts the nut from the ply, and none under the head touches nothing.
        (galvanic(Part::Ply(2), Part::Nut), false, false),
        (galvanic(washer, Part::Ply(2)), false, false),
        (galvanic(Part::Nut, washer), false, false),
        (Finding::Length(Reason::TooShort { by: hole }), false, false),
        (Finding::NoPreloadLeft, false, false),
        (Finding::Slips, false, false),
    ] {
        assert_eq!(usual.fault(&finding), ends, "{finding:?}");
        assert_eq!(weaker.fault(&finding), of_weaker, "{finding:?}");
    }
}

#[test]
fn what_no_length_tells_stays_open() {
    let joint = joint();
    let usual = against(&joint);
    let weaker = Against {
        same_strength: false,
        ..against(&joint)
    };
    let (whole, ply) = (Place::Joint, Place::Ply(1));
    for (mode, place, need, ends, of_weaker) in [
        (Mode::Loads, whole, Need::Load, true, true),
        (Mode::ThreadFit, whole, Need::NutGrade, true, true),
        (Mode::Reuse, whole, Need::BoltFinish, true, true),
        (Mode::Prying, whole, Need::Prying, true, true),
        (Mode::BlockShear, whole, Need::Outline, true, true),
        (Mode::Tightening, whole, Need::Tightening, true, true),
        (Mode::Tightening, whole, Need::Stiffness, false, false),
        (Mode::Pairing, Place::Nut, Need::NutGrade, true, false),
        (Mode::Coating, whole, Need::BoltFinish, true, false),
        (Mode::Temperature, whole, Need::Material, true, false),
        (Mode::Bearing, ply, Need::Material, true, false),
        (Mode::Bearing, Place::Head, Need::Material, false, false),
        (Mode::Holes, ply, Need::Hole, true, false),
        (Mode::Distances, ply, Need::EndDistance, true, false),
        (Mode::Fatigue, whole, Need::Load, true, true),
        (Mode::Fatigue, Place::Bolt(1), Need::Load, false, false),
        (Mode::Separation, whole, Need::Stiffness, false, false),
        (Mode::Length, whole, Need::Load, false, false),
    ] {
        let missing = Missing::new(mode, place, need);
        assert_eq!(usual.missing(&missing), ends, "{missing}");
        assert_eq!(weaker.missing(&missing), of_weaker, "{missing}");
    }
}
