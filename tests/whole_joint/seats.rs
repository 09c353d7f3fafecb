//! Washers and seats: how hard and how thick they must be, and what a slot takes of them.

use crate::joints::{self, check_of, faults, frame, mm, near, plate, tightened, verdict};
use shankline::error::Amount;
use shankline::joint::{
    Account, Finding, Joint, JointMethods, JointWasher, NotConcerned, OwnStrength, Tightening,
};
use shankline::prelude::*;
use shankline::strength::check::{Mode, Place};
use shankline::strength::ply::SlotDirection;

/// A washer of one's own, 30 mm over 17 mm.
fn own(thickness: f64, hardness: Option<f64>) -> JointWasher {
    let mut washer = JointWasher::new("washer", mm(thickness));
    washer.outside = Some(millimetres(30.0));
    washer.inside = Some(millimetres(17.0));
    washer.hardness = hardness;
    washer
}

fn listed(style: WasherStyle) -> JointWasher {
    // Of ISO 7091 no limits of the thickness were read.
    JointWasher::find(style, &"M16".parse().unwrap()).unwrap_or_else(|_| {
        let mut washer = JointWasher::new("washer", mm(3.0));
        washer.style = Some(style);
        washer
    })
}

/// The frame with this washer under the head alone.
fn under_head(washer: JointWasher, plies: [JointPly; 2]) -> Joint {
    let mut joint = frame();
    joint.load.across = newtons(2e3);
    let [first, second] = plies;
    let stack = Stack::builder().washer_under_head(washer);
    let stack = stack.add(first).add(second).shear_planes([1]);
    joint.stack = stack.build().unwrap();
    joint
}

fn plates() -> [JointPly; 2] {
    ["a", "b"].map(|name| plate(name, mm(20.0)))
}

fn lacks(joint: &Joint, part: &str) -> bool {
    joints::lacks(joint, Mode::Washers, part)
}

#[derive(Debug, PartialEq)]
enum Said {
    Fine,
    TooSoft,
    ToVerify,
    Verified,
    HowHard,
}

fn said(joint: &Joint) -> Said {
    let found = verdict(joint).findings;
    let soft = |finding: &Finding| {
        matches!(
            finding,
            Finding::OwnWasherTooSoft { .. } | Finding::WasherTooSoft { .. }
        )
    };
    match () {
        () if found.iter().any(soft) => Said::TooSoft,
        () if lacks(joint, "a washer so soft goes with") => Said::Verified,
        () if lacks(joint, "how hard the washer is") => Said::HowHard,
        () if found.contains(&Finding::WasherToVerify { place: Place::Head }) => Said::ToVerify,
        () => Said::Fine,
    }
}

/// ISO 898-3 table 1: 100 HV never goes with 6.8 and stronger, 200 HV never with 12.9 and with 9.8 and 10.9 where it is
/// verified, 300 HV with 12.9 where it is verified. Snug, nothing is there to verify.
#[test]
fn washers_are_as_hard_as_the_class_of_the_bolt_wants() {
    use PropertyClass::{Class4_6, Class6_8, Class8_8, Class10_9, Class12_9};
    use Said::{Fine, HowHard, ToVerify, TooSoft, Verified};
    for (class, hardness, snug, tight) in [
        (Class4_6, Some(50.0), Fine, Fine),
        (Class4_6, None, Fine, Fine),
        (Class6_8, Some(199.0), TooSoft, TooSoft),
        (Class6_8, Some(200.0), Fine, Fine),
        (Class8_8, Some(50.0), TooSoft, TooSoft),
        (Class8_8, Some(199.0), TooSoft, TooSoft),
        (Class8_8, Some(200.0), Fine, Fine),
        (Class8_8, None, HowHard, HowHard),
        (Class10_9, Some(199.0), TooSoft, TooSoft),
        (Class10_9, Some(200.0), ToVerify, Verified),
        (Class10_9, Some(299.0), ToVerify, Verified),
        (Class10_9, Some(300.0), Fine, Fine),
        (Class12_9, Some(299.0), TooSoft, TooSoft),
        (Class12_9, Some(300.0), ToVerify, Verified),
        (Class12_9, Some(380.0), Fine, Fine),
    ] {
        let mut joint = under_head(own(3.0, hardness), plates());
        joint.bolt.grade = class.into();
        assert_eq!(said(&joint), snug, "{class} {hardness:?} snug");
        joint.tightening = tightened(0.16, 0.2);
        assert_eq!(said(&joint), tight, "{class} {hardness:?}");
    }
}

/// The same of styles: ISO 7089 is made in 200 and 300 HV, ISO 7091 in 100 HV, F436 from 38 HRC, some 370 HV.
#[test]
fn styles_are_as_hard_as_they_are_made() {
    use PropertyClass::{Class8_8, Class10_9, Class12_9};
    use WasherStyle::{En14399_6, F436, Iso7089, Iso7091};
    let inch = |style| JointWasher::find(style, &"5/8-11 UNC".parse().unwrap()).unwrap();
    for (class, washer, tight) in [
        (Class8_8, listed(Iso7089), Said::Fine),
        (Class8_8, listed(Iso7091), Said::TooSoft),
        (Class10_9, listed(Iso7089), Said::HowHard),
        (Class10_9, listed(En14399_6), Said::Fine),
        (Class12_9, listed(Iso7089), Said::HowHard),
        (Class12_9, listed(En14399_6), Said::Verified),
    ] {
        let mut joint = under_head(washer, plates());
        joint.bolt.grade = class.into();
        joint.tightening = tightened(0.16, 0.2);
        assert_eq!(said(&joint), tight, "{class}");
    }
    for (tensile, tight) in [(1000.0, Said::Fine), (1200.0, Said::Verified)] {
        let mut joint = under_head(inch(F436), plates());
        joint.bolt.thread = "5/8-11 UNC".parse().unwrap();
        joint.bolt.product = ScrewProduct::HexCapScrew;
        joint.nut.as_mut().unwrap().style = NutStyle::Hex;
        joint.tightening = tightened(0.16, 0.2);
        let strength = OwnStrength::new("shop steel (invented)", megapascals(tensile));
        assert_eq!(said(&joint.with_strength(strength)), tight, "{tensile}");
    }
}

/// A strength of another standard counts as the class that is as strong: 12.9 from 1200 MPa, 9.8 from 900, 6.8 from 600.
#[test]
fn other_strengths_count_as_a_class() {
    use Said::{Fine, TooSoft, Verified};
    for (tensile, hardness, expected) in [
        (1200.0, 250.0, TooSoft),
        (1199.0, 250.0, Verified),
        (900.0, 250.0, Verified),
        (899.0, 250.0, Fine),
        (600.0, 150.0, TooSoft),
        (599.0, 150.0, Fine),
    ] {
        let mut joint = under_head(own(3.0, Some(hardness)), plates());
        joint.tightening = tightened(0.16, 0.2);
        let strength = OwnStrength::new("shop steel (invented)", megapascals(tensile));
        assert_eq!(said(&joint.with_strength(strength)), expected, "{tensile}");
    }
}

/// Timber gives way before a washer does: only the one on steel must be hard.
#[test]
fn a_soft_washer_on_timber_will_do() {
    let beam = || JointPly::new("beam", mm(60.0)).timber("C24", shankline::units::degrees(0.0));
    for (hardness, on_timber, on_steel) in [
        (Some(100.0), Said::Fine, Said::TooSoft),
        (None, Said::Fine, Said::HowHard),
    ] {
        let steel = || plate("plate", mm(10.0));
        let joint = under_head(own(3.0, hardness), [beam(), steel()]);
        assert_eq!(said(&joint), on_timber);
        let joint = under_head(own(3.0, hardness), [steel(), beam()]);
        assert_eq!(said(&joint), on_steel);
    }
}

/// A 5/8 in A325 bolt by AISC 360-16, this washer under its head, over a hole or slot of so many inches.
fn by_aisc(washer: Option<JointWasher>, hole: f64, slot: Option<f64>) -> Joint {
    let ply = |name: &str, hole| plate(name, mm(20.0)).hole(inches(hole));
    let mut first = ply("a", hole);
    if let Some(length) = slot {
        first = first.slot(inches(hole), inches(length), SlotDirection::Across);
    }
    let mut joint = frame();
    joint.bolt.product = ScrewProduct::StructuralBolt;
    joint.bolt.thread = "5/8-11 UNC".parse().unwrap();
    joint.bolt.grade = BoltGrade::Astm(AstmGrade::F3125A325Type1);
    joint.nut.as_mut().unwrap().style = NutStyle::HeavyHex;
    joint.load.across = newtons(2e3);
    joint.methods = JointMethods::aisc_lrfd(AiscEdition::E2016);
    let mut stack = Stack::builder();
    if let Some(washer) = washer {
        stack = stack.washer_under_head(washer);
    }
    let stack = stack.add(first).add(ply("b", 0.6875)).shear_planes([1]);
    joint.stack = stack.build().unwrap();
    joint
}

/// What is wanted under the head: a washer, with the least thickness in inches, or 0; and whether it must be hardened.
fn wanted(joint: &Joint) -> (Vec<f64>, bool) {
    let at_head = faults(joint).into_iter().filter_map(|fault| match fault {
        Finding::WasherWanted {
            place: Place::Head,
            thickness,
            ..
        } => Some(thickness.map_or(0.0, |least| (least / inches(1.0)).value)),
        _ => None,
    });
    (
        at_head.collect(),
        lacks(joint, "head: the code demands a hardened washer"),
    )
}

/// AISC 360 J3.2 and RCSC 6: nothing over a standard hole; a hardened washer over an oversize one or a short slot; over a slot a
/// washer of F436 or a plate of 5/16 in, over a long one the plate.
#[test]
fn holes_and_slots_want_their_washers_by_aisc() {
    let style = |style| JointWasher::find(style, &"5/8-11 UNC".parse().unwrap()).ok();
    let f436 = || style(WasherStyle::F436);
    let thin = || Some(own(3.0, None));
    let plate = |hardness| Some(own(8.0, hardness));
    let (standard, oversize) = (0.6875, 0.8125);
    let (short, long) = (Some(0.875), Some(1.5));
    let none = Vec::new;
    for (number, (washer, hole, slot, expected)) in [
        (None, standard, None, (none(), false)),
        (None, oversize, None, (vec![0.0], false)),
        (f436(), oversize, None, (none(), false)),
        (thin(), oversize, None, (none(), true)),
        (Some(own(3.0, Some(369.0))), oversize, None, (none(), true)),
        (Some(own(3.0, Some(370.0))), oversize, None, (none(), false)),
        (None, standard, short, (vec![0.3125, 0.0], false)),
        (f436(), standard, short, (none(), false)),
        (thin(), standard, short, (vec![0.3125], true)),
        (plate(None), standard, short, (none(), true)),
        (plate(Some(370.0)), standard, short, (none(), false)),
        (plate(None), standard, long, (none(), false)),
        (Some(own(7.9375, None)), standard, long, (none(), false)),
        (
            Some(own(7.93, None)),
            standard,
            long,
            (vec![0.3125, 0.3125], false),
        ),
        (f436(), standard, long, (vec![0.3125], false)),
    ]
    .into_iter()
    .enumerate()
    {
        assert_eq!(wanted(&by_aisc(washer, hole, slot)), expected, "{number}");
    }
}

/// Codes of which the rule for washers was not read leave a place without one open; machine design has none.
#[test]
fn where_no_rule_was_read() {
    let unread = "head: where the code of the plies wants washers was not read";
    for (methods, right) in [
        (JointMethods::bs_5950(), true),
        (JointMethods::is_800(), true),
        (JointMethods::en_1993(), false),
    ] {
        let mut bare = frame();
        bare.load.across = newtons(2e3);
        let [first, second] = plates();
        let stack = Stack::builder().add(first).add(second).shear_planes([1]);
        bare.stack = stack.build().unwrap();
        bare.methods = methods;
        assert_eq!(lacks(&bare, unread), right);
        let mut with = under_head(listed(WasherStyle::Iso7089), plates());
        with.methods = methods;
        assert!(!lacks(&with, unread));
    }
    let machine = under_head(listed(WasherStyle::Iso7089), plates());
    let none = Account::NotConcerned(NotConcerned::NoRule);
    assert_eq!(verdict(&machine).account(Mode::Washers), none);
    assert_eq!(
        verdict(&by_aisc(None, 0.6875, None)).account(Mode::Washers),
        Account::InOrder
    );
}

/// EN 1993-1-8, 3.6.1(11): in a single lap with one row hardened washers for 8.8 and 10.9; EN 1090-2: preloaded 8.8 under the
/// part that is turned.
#[test]
fn hardened_washers_by_en() {
    let hardened = "head: the code demands a hardened washer";
    let joint = |class: PropertyClass, washer| {
        let mut joint = under_head(washer, plates());
        joint.bolt.grade = class.into();
        joint.methods = JointMethods::en_1993();
        joint
    };
    let (plain, hard) = (own(3.0, Some(299.0)), own(3.0, Some(300.0)));
    assert!(lacks(
        &joint(PropertyClass::Class8_8, plain.clone()),
        hardened
    ));
    assert!(!lacks(&joint(PropertyClass::Class8_8, hard), hardened));
    let en = listed(WasherStyle::En14399_6);
    assert!(!lacks(&joint(PropertyClass::Class8_8, en), hardened));
    assert!(!lacks(
        &joint(PropertyClass::Class4_6, plain.clone()),
        hardened
    ));
    // Pulled alone it is no lap; preloaded, it is the nut that is turned.
    let mut pulled = joint(PropertyClass::Class8_8, plain);
    pulled.load.across = newtons(0.0);
    pulled.load.along = newtons(1e3);
    assert!(!lacks(&pulled, hardened));
    pulled.tightening = tightened(0.16, 0.2);
    assert!(!lacks(&pulled, hardened));
    let at_nut = Finding::WasherWanted {
        place: Place::Nut,
        thickness: None,
        clause: "",
    };
    let wants = |joint: &Joint| {
        faults(joint).iter().any(|fault| {
            core::mem::discriminant(fault) == core::mem::discriminant(&at_nut)
                && matches!(
                    fault,
                    Finding::WasherWanted {
                        place: Place::Nut,
                        ..
                    }
                )
        })
    };
    assert!(wants(&pulled));
    pulled.tightening = Some(Tightening::Snug);
    assert!(!wants(&pulled));
}

/// A slot of 17 mm under a face of 22 mm. Short, it takes 17 x 5 + pi/4 17^2 = 312.0 mm2, as a round hole of 19.93 mm does; longer
/// than the face, a strip of 0.5 x 22^2 (r sqrt(1 - r^2) + asin r) = 332.4 mm2 with r = 17 / 22, as one of 20.57 mm. 20 kN press
/// with 293.5 and 419.1 MPa.
#[test]
fn a_slot_takes_as_much_of_the_face_as_a_round_hole() {
    for (length, pressure) in [(22.0, 293.459), (40.0, 419.111)] {
        let mut joint = frame();
        let slot = plate("a", mm(20.0)).slot(
            millimetres(17.0),
            millimetres(length),
            SlotDirection::Across,
        );
        let stack = Stack::builder().add(slot).add(plate("b", mm(20.0)));
        joint.stack = stack.build().unwrap();
        joint.load.along = newtons(10e3);
        match check_of(&verdict(&joint), Mode::Pressure, Place::Head).demand {
            Amount::Stress(found) => near(found.value / 1e6, pressure, 1e-5),
            other => panic!("{other:?}"),
        }
    }
}

/// Washers that cannot be: too small for the bolt, wider than 8 diameters, or with figures that their style has already.
#[test]
fn washers_that_cannot_be_are_refused() {
    let refused = |change: fn(&mut JointWasher), washer: JointWasher| {
        let mut washer = washer;
        change(&mut washer);
        under_head(washer, plates())
            .check()
            .err()
            .map(|error| error.to_string())
    };
    let given = || own(3.0, Some(300.0));
    let style = || listed(WasherStyle::Iso7089);
    let has = |found: Option<String>, part: &str| {
        assert!(
            found.as_ref().is_some_and(|text| text.contains(part)),
            "{part}: {found:?}"
        );
    };
    assert_eq!(
        refused(|own| own.inside = Some(millimetres(16.0)), given()),
        None
    );
    has(
        refused(|own| own.inside = Some(millimetres(15.9)), given()),
        "does not go over",
    );
    assert_eq!(
        refused(|own| own.outside = Some(millimetres(127.9)), given()),
        None
    );
    has(
        refused(|own| own.outside = Some(millimetres(128.1)), given()),
        "outside diameter",
    );
    let twice = "which has its diameters and hardness";
    has(
        refused(|own| own.outside = Some(millimetres(30.0)), style()),
        twice,
    );
    has(
        refused(|own| own.inside = Some(millimetres(17.0)), style()),
        twice,
    );
    // ISO 7089 is made in two hardnesses, EN 14399-6 in one.
    assert_eq!(refused(|own| own.hardness = Some(300.0), style()), None);
    has(
        refused(
            |own| own.hardness = Some(300.0),
            listed(WasherStyle::En14399_6),
        ),
        twice,
    );
    // ISO 7089, M16: 2.7 to 3.3 mm.
    for (thickness, right) in [(2.6, false), (2.7, true), (3.3, true), (3.4, false)] {
        let mut washer = style();
        washer.thickness = mm(thickness);
        let found = refused(|_| (), washer);
        assert_eq!(found.is_none(), right, "{thickness} {found:?}");
        if let Some(text) = found {
            assert!(text.contains("is not as thick as"), "{text}");
        }
    }
}
