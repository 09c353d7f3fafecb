//! Screws in the thread of a part.

use core::f64::consts::PI;

use crate::joints::{
    BARE, check_of, force, frame, is_open, near, open, plate, plus_minus, text, tightened, verdict,
    workings_are_true,
};
use shankline::error::Amount;
use shankline::joint::{
    DesignSpace, Finding, Joint, JointBolt, JointWasher, ScrewLocking, TappedHole, TappedPart, Word,
};
use shankline::prelude::*;
use shankline::strength::check::{Mode, Place};

/// A winch foot on a cast bed: M12 of class 8.8, 20 mm of thread wanted of 32 mm, in grey iron of 207 MPa.
pub fn foot() -> Joint {
    let mut joint = frame();
    let thread: Thread = "M12".parse().unwrap();
    joint.title = "winch foot (invented)".into();
    joint.bolt = JointBolt {
        product: ScrewProduct::Iso4017,
        thread,
        grade: BoltGrade::Iso(PropertyClass::Class8_8),
        length: Some(millimetres(50.0)),
        finish: BARE,
    };
    joint.nut = None;
    joint.stack = on_bed(20.0);
    joint.load.across = newtons(3e3);
    joint.load.along = newtons(5e3);
    joint
}

/// The foot with its washer on a bed that the screw is to fill this far.
fn on_bed(engagement: f64) -> Stack {
    let washer = JointWasher::find(WasherStyle::Iso7089, &"M12".parse().unwrap()).unwrap();
    let bed = TappedPart::new("bed")
        .thread(
            millimetres(engagement),
            TappedHole::Blind {
                depth: millimetres(32.0),
            },
        )
        .material("grey cast iron class 30")
        .lock(ScrewLocking::Preload);
    Stack::builder()
        .washer_under_head(washer)
        .add(plate("foot", plus_minus(17.0, 0.3)).hole(millimetres(13.5)))
        .tapped(bed)
        .shear_planes([1])
        .build()
        .unwrap()
}

/// Threads by FED-STD-H28/2: shear areas over the engagement, half of the tensile strength.
#[test]
fn both_threads_of_a_tapped_part_are_checked() {
    let mut joint = foot();
    joint.tightening = tightened(0.16, 0.20);
    workings_are_true(&joint);
    let found = verdict(&joint);
    let stripping = |place| check_of(&found, Mode::Stripping, place);
    // Shortest screw, thickest washer and foot: 49.5 - 2.7 - 17.3 = 29.5 mm, less a pitch of 1.75: 27.75 mm.
    // 6g and 6H limits of M12 (ISO 965-2): d min 11.701, d2 min 10.679, D2 max 11.063, D1 max 10.441.
    let (length, pitch) = (27.75_f64, 1.75_f64);
    let root_3 = 3.0_f64.sqrt();
    let bolt = PI * length / pitch * 10.441 * (pitch / 2.0 + (10.679 - 10.441) / root_3);
    let bed = PI * length / pitch * 11.701 * (pitch / 2.0 + (11.701 - 11.063) / root_3);
    let of_bolt = stripping(Place::Bolt(1));
    near(force(of_bolt.resistance), bolt * 800.0 / 2.0, 1e-3);
    near(
        force(stripping(Place::TappedPart).resistance),
        bed * 207.0 / 2.0,
        5e-3,
    );
    // The washer and the bed have no stiffness together: all of the load, with its factor of 2, comes on top of the
    // greatest preload.
    let most = found.preload.unwrap().preload.max + newtons(10e3);
    assert_eq!(of_bolt.demand, Amount::Force(most));
    // 74.9 kN in the iron, more than the 800 MPa x 84.3 mm2 = 67.4 kN that break the bolt.
    assert_eq!(found.faults().count(), 0, "{}", text(&found));
    assert_eq!(found.nut, None);
}

#[test]
fn a_short_thread_strips_first_and_that_is_a_fault() {
    let mut joint = foot();
    joint.stack = on_bed(8.0);
    joint.bolt.length = Some(millimetres(30.0));
    let found = verdict(&joint);
    let weaker = |found: &&Finding| matches!(found, Finding::ThreadsWeaker { .. });
    let Some(Finding::ThreadsWeaker { ratio }) = found.findings.iter().find(weaker) else {
        panic!("{:?}", found.findings)
    };
    // 29.5 - 2.7 - 17.3 - 1.75 = 7.75 mm in place of the 27.75 mm that hold 74.9 kN.
    near(ratio.value, 74.9 / 67.4 * 7.75 / 27.75, 0.02);
    assert_eq!(found.word(), Word::DoesNotHold);
}

/// What bears in the bed, and what locks the screw under vibration.
#[test]
fn the_thread_of_the_part_bears_and_wants_a_lock() {
    let joint = foot();
    // Cast iron has no yield strength: machine design has no bearing of it.
    assert!(
        is_open(&joint, "bearing, tapped part: no yield strength"),
        "{:?}",
        open(&joint)
    );
    let mut shaken = joint;
    shaken.environment.vibration = true;
    assert!(
        is_open(
            &shaken,
            "locking, tapped part: preload alone holds the screw"
        ),
        "{:?}",
        open(&shaken)
    );
}

#[test]
fn nut_and_tapped_part_are_one_or_the_other() {
    let nut = frame().nut;
    let both = Joint { nut, ..foot() };
    let neither = Joint {
        nut: None,
        ..frame()
    };
    for joint in [both, neither] {
        let error = joint.check().unwrap_err();
        assert!(error.to_string().contains("nut"), "{error}");
    }
    assert!(foot().check().is_ok() && frame().check().is_ok());
    let space = DesignSpace::new();
    assert!(foot().design(&space, &[]).is_err());
}
