//! The sheet of a joint: what it says of torque, nut, thread and order.

use crate::joints::{frame, tightened, torque, verdict};
use crate::tapped::foot;
use shankline::joint::{Joint, JointStiffness, Sheet, Tightening, tightening_order};
use shankline::prelude::*;
use shankline::strength::group::BoltPattern;
use shankline::units::{micrometres, newtons_per_millimetre};

fn sheet(joint: &Joint) -> String {
    let found = verdict(joint);
    let sheet = Sheet::new(joint, &found).unwrap();
    sheet.render(UnitSystem::Si).to_string()
}

#[test]
fn a_screw_in_a_part_speaks_of_no_nut() {
    let sheet = sheet(&foot());
    assert!(sheet.contains("into the thread of \"bed\""), "{sheet}");
    assert!(
        sheet.contains("fills at least 20.00 mm of the 32.00 mm of thread"),
        "{sheet}"
    );
    assert!(
        !sheet.contains("nut ISO") && !sheet.contains("used nut"),
        "{sheet}"
    );
}

/// A torque that nobody gave is neither marked nor checked.
#[test]
fn a_joint_without_a_torque_has_none_to_inspect() {
    let mut joint = frame();
    joint.load.across = newtons(1e3);
    for word in ["witness mark", "check the torque", "Tighten to"] {
        assert!(!sheet(&joint).contains(word), "{word}");
    }
    joint.tightening = tightened(0.16, 0.20);
    let sheet = sheet(&joint);
    for word in ["witness mark", "check the torque", "Tighten to"] {
        assert!(sheet.contains(word), "{word}: {sheet}");
    }
}

#[test]
fn a_group_has_its_order() {
    let mut joint = frame();
    joint.load.along = newtons(8e3);
    joint.tightening = tightened(0.16, 0.20);
    let found = verdict(&joint);
    let flange = BoltPattern::circle(4, millimetres(160.0)).unwrap();
    let sheet = Sheet::new(&joint, &found)
        .unwrap()
        .for_group(tightening_order(&flange))
        .render(UnitSystem::Si)
        .to_string();
    let order = sheet
        .find("Order: bolts 1, 3, 2, 4; all of them to 30 %, then 70 %")
        .unwrap();
    assert!(order < sheet.find("Tighten to").unwrap());
}

#[test]
fn the_running_torque_is_felt_before_the_nut_seats() {
    let mut joint = frame();
    joint.nut.as_mut().unwrap().style = NutStyle::Iso7040;
    joint.load.across = newtons(5e3);
    let running = Spread {
        min: newton_metres(4.0),
        nominal: newton_metres(14.0),
        max: newton_metres(24.0),
    };
    joint.tightening = Some(Tightening::Torque(torque(0.15, 0.22).prevailing(running)));
    let sheet = sheet(&joint);
    assert!(
        sheet.contains("has 14.0 N m for it. Outside 4.00 N m to 24.0 N m"),
        "{sheet}"
    );
}

#[test]
fn a_nut_that_turned_has_lost_so_much() {
    let mut joint = frame();
    joint.load.across = newtons(5e3);
    let mut tight = torque(0.18, 0.18);
    tight.settling = Some(micrometres(11.0));
    tight.stiffness = Some(JointStiffness {
        bolt: newtons_per_millimetre(300e3),
        members: newtons_per_millimetre(1200e3),
    });
    joint.tightening = Some(Tightening::Torque(tight));
    // By hand: 10/360 x 2 mm x 240 kN/mm = 13.33 kN of 68.15; all of it at 51.1 deg.
    let sheet = sheet(&joint);
    let lost = "moved by 10 deg has lost about 13 kN of 68 kN; at about 51 deg nothing is left";
    assert!(sheet.contains(lost), "{sheet}");
    assert!(sheet.contains("Settling takes about 2.6 kN"), "{sheet}");
}

/// A pivot keeps its play: pulled together at the fit-up, it is marked further out, or the bolt ended inside the nut.
#[cfg(feature = "serde")]
#[test]
fn the_mark_of_a_pivot_leaves_room_for_its_play() {
    let text = include_str!("../../examples/data/seesaw_pivot.json");
    let joint: Joint = serde_json::from_str(text).unwrap();
    let sheet = sheet(&joint);
    // By the rules 0.22 in from the nut, and the gaps of 2 x 0.08 in: 0.38 in.
    assert!(sheet.contains("9.65 mm past the face"), "{sheet}");
}

/// Turning a screw to check its torque breaks the adhesive that holds it.
#[cfg(feature = "serde")]
#[test]
fn a_glued_screw_is_glued_and_then_left_alone() {
    let text = include_str!("../../examples/data/winch_foot.json");
    for lock in ["adhesive", "patch"] {
        let mut document: serde_json::Value = serde_json::from_str(text).unwrap();
        document["stack"]["tapped_part"]["lock"] = lock.into();
        let joint: Joint = serde_json::from_value(document).unwrap();
        let glued = lock == "adhesive";
        // FAA AC 43.13-1B, 7-40: what a lock takes of the torque does not stretch the bolt.
        let told = joint.check().unwrap().findings;
        assert_eq!(
            told.contains(&shankline::joint::Finding::AddRunningTorque),
            !glued
        );
        let sheet = sheet(&joint);
        for (step, there) in [
            ("wet them with the adhesive", glued),
            ("Do not turn the screw to check its torque", glued),
            ("slacken it, tighten it to the value", !glued),
            ("read the running torque before it seats", !glued),
        ] {
            assert_eq!(sheet.contains(step), there, "{lock}: {step}\n{sheet}");
        }
    }
}
