//! What a builder takes for granted stays granted as long as nobody says otherwise, and not longer; what a set of methods is
//! called, and which loads make sense.

use shankline::joint::{
    Fact, Finish, Granted, HeadSeat, Joint, JointBuilder, JointLoad, JointMethods, JointWasher,
    Repeats, TappedHole, TappedPart,
};
use shankline::prelude::*;
use shankline::strength::shear::AiscEdition;
use shankline::tables::galvanic::Metal;

fn mm(length: f64) -> Spread<Length> {
    Spread::exact(millimetres(length))
}

fn lap() -> JointBuilder {
    let said = Joint::builder("M12").ply("bracket", "12 mm");
    said.material("S275 steel")
        .ply("rail", "12 mm")
        .material("S275 steel")
}

fn sheared() -> Joint {
    lap().across("4 kN").build().unwrap()
}

fn is_granted(joint: &Joint, fact: Fact) -> bool {
    let found = joint.check().unwrap();
    found.granted.iter().any(|granted| granted.fact == fact)
}

fn value(joint: &Joint, fact: Fact) -> Option<String> {
    let mut granted = joint.granted.iter();
    let found = granted.find(|granted| granted.fact == fact);
    found.map(|granted| granted.value.clone())
}

/// The same joint with its stack built anew: these washers under the head, so many of one under the nut, and one more kind
/// there; holes and planes as given.
struct Anew {
    head: Vec<JointWasher>,
    nut: (JointWasher, usize),
    other: Option<JointWasher>,
    hole: Length,
    planes: Vec<usize>,
}

impl Anew {
    fn of(self, joint: &Joint) -> Joint {
        let mut stack = Stack::builder();
        for washer in self.head {
            stack = stack.washer_under_head(washer);
        }
        for ply in joint.stack.plies() {
            stack = stack.add(ply.clone().hole(self.hole));
        }
        if let Some(other) = self.other {
            stack = stack.washer_under_nut(other);
        }
        let stack = stack.washers_under_nut(self.nut.0, self.nut.1);
        let stack = stack.shear_planes(self.planes).build().unwrap();
        Joint {
            stack,
            ..joint.clone()
        }
    }
}

/// A field that was set by hand is no longer granted; every other one is.
#[test]
fn what_was_set_by_hand_was_said() {
    let joint = sheared();
    let all: Vec<Fact> = joint.granted.iter().map(|granted| granted.fact).collect();
    let thread: Thread = "M12".parse().unwrap();
    let changed = |fact, change: fn(&mut Joint)| {
        let mut own = sheared();
        change(&mut own);
        (fact, own)
    };
    let other = || JointWasher::find(WasherStyle::Iso7093, &thread).unwrap();
    let usual = || JointWasher::find(WasherStyle::Iso7089, &thread).unwrap();
    // ISO 273, medium: 13.5 mm for M12.
    let same = || Anew {
        head: vec![usual()],
        nut: (usual(), 1),
        other: None,
        hole: millimetres(13.5),
        planes: vec![1],
    };
    let anew = |fact, change: &dyn Fn(&mut Anew)| {
        let mut own = same();
        change(&mut own);
        (fact, own.of(&joint))
    };
    let all_changes = vec![
        changed(Fact::Product, |own| {
            own.bolt.product = ScrewProduct::Iso4017;
        }),
        changed(Fact::Grade, |own| {
            own.bolt.grade = PropertyClass::Class10_9.into();
        }),
        changed(Fact::BoltFinish, |own| {
            own.bolt.finish = Some(Finish::ZincFlake);
        }),
        changed(Fact::Nut, |own| {
            own.nut.as_mut().unwrap().style = NutStyle::Iso7040;
        }),
        changed(Fact::NutGrade, |own| {
            own.nut.as_mut().unwrap().grade = Some(NutGrade::Iso898_2Class10);
        }),
        changed(Fact::NutFinish, |own| {
            own.nut.as_mut().unwrap().finish = Some(Finish::Bare(Metal::Zinc));
        }),
        changed(Fact::Surroundings, |own| own.environment.refits = 1),
        changed(Fact::Surroundings, |own| own.environment.vibration = true),
        anew(Fact::Washers, &|own| own.head = vec![other()]),
        anew(Fact::Washers, &|own| own.head = vec![]),
        anew(Fact::Washers, &|own| own.head.push(usual())),
        anew(Fact::Washers, &|own| own.nut.0 = other()),
        anew(Fact::Washers, &|own| own.nut.1 = 2),
        anew(Fact::Washers, &|own| own.other = Some(other())),
        anew(Fact::Holes, &|own| own.hole = millimetres(14.0)),
        anew(Fact::ShearPlanes, &|own| own.planes = vec![]),
    ];
    for (fact, own) in all_changes {
        let found = own.check().unwrap().granted;
        let left: Vec<Fact> = found.iter().map(|granted| granted.fact).collect();
        let rest: Vec<Fact> = all.iter().copied().filter(|own| *own != fact).collect();
        assert_eq!(left, rest, "{fact}");
    }
    assert_eq!(same().of(&joint).check().unwrap().granted, joint.granted);
}

/// A value that only begins as what the joint has is another one.
#[test]
fn the_whole_value_must_be_the_same() {
    for (text, right) in [
        ("ISO 898-1 class 8.8", true),
        ("ISO 898-1 class 8.8 x", false),
        ("ISO 898-1 class 8", false),
    ] {
        let mut joint = sheared();
        joint.granted = vec![Granted::new(Fact::Grade, text)];
        assert_eq!(is_granted(&joint, Fact::Grade), right, "{text}");
    }
}

/// Planes lie between all plies; three that nobody gives pulls pull in turn. A tapped part is one more.
#[test]
fn planes_are_granted_between_all_plies() {
    let plain = "one between each two plies";
    let in_turn = "one between each two plies, which pull in turn, this way and that";
    let three = || lap().ply("strap", "12 mm").across("4 kN");
    let said = || {
        let ply = |name, pull| JointPly::new(name, mm(12.0)).pulls(pull);
        let stack = Joint::builder("M12").add(ply("a", 0.5)).add(ply("b", -1.0));
        stack.add(ply("c", 0.5)).across("4 kN")
    };
    let bed = || TappedPart::new("bed").thread(millimetres(14.0), TappedHole::Through);
    for (builder, expected, planes) in [
        (lap().across("4 kN"), Some(plain), vec![1]),
        (three(), Some(in_turn), vec![1, 2]),
        (said(), Some(plain), vec![1, 2]),
        (lap().along("4 kN"), None, vec![]),
        (
            Joint::builder("M12")
                .ply("lid", "12 mm")
                .tapped(bed())
                .across("4 kN"),
            Some(plain),
            vec![1],
        ),
        (
            lap().tapped(bed()).across("4 kN"),
            Some(in_turn),
            vec![1, 2],
        ),
        (
            Joint::builder("M12").ply("alone", "12 mm").across("4 kN"),
            None,
            vec![],
        ),
    ] {
        let joint = builder.build().unwrap();
        assert_eq!(value(&joint, Fact::ShearPlanes).as_deref(), expected);
        assert_eq!(joint.stack.shear_planes(), planes);
        assert_eq!(is_granted(&joint, Fact::ShearPlanes), expected.is_some());
    }
}

/// Washers are granted where nobody says any, and never under a countersunk head.
#[test]
fn washers_are_granted_where_nobody_says() {
    let thread: Thread = "M12".parse().unwrap();
    let own = JointWasher::find(WasherStyle::Iso7093, &thread).unwrap();
    assert!(value(&sheared(), Fact::Washers).is_some());
    let washered = lap()
        .stack(|stack| stack.washer_under_head(own))
        .across("4 kN");
    let washered = washered.build().unwrap();
    assert_eq!(value(&washered, Fact::Washers), None);
    assert_eq!(washered.stack.washers_under_head().len(), 1);
    let seat = HeadSeat::Countersunk {
        below_flush: mm(0.0),
        head_height: millimetres(6.0),
    };
    let sunk = lap()
        .stack(|stack| stack.head_seat(seat))
        .across("4 kN")
        .build();
    let sunk = sunk.unwrap();
    assert_eq!(value(&sunk, Fact::Washers), None);
    assert!(sunk.stack.washers_under_head().is_empty());
}

/// A ply that came with the stack is said already: what is said of it again must be the same.
#[test]
fn details_of_a_ply_that_came_whole() {
    let whole = |name| JointPly::new(name, mm(12.0)).material("S275 steel");
    let stack = || Joint::builder("M12").stack(|stack| stack.add(whole("a")).add(whole("b")));
    let other = stack().material("S355 steel").build();
    assert!(other.unwrap_err().to_string().contains("material"));
    assert!(stack().material("S275 steel").build().is_ok());
    // A change of the stack that adds no ply leaves what was said of the last one.
    let kept = lap().stack(|stack| stack).material("S355 steel").build();
    assert!(kept.is_err());
    // A joint again: its plies may be said anew, and stay those of before where the stack gets none.
    let again = sheared().to_builder().material("S355 steel").build();
    assert!(again.is_ok(), "{again:?}");
    let again = sheared().to_builder().stack(|stack| stack);
    assert!(again.material("S355 steel").build().is_ok());
    let more = sheared().to_builder().stack(|stack| stack.add(whole("c")));
    assert!(more.material("S355 steel").build().is_err());
}

/// Timber with its grain, metal, slot and gauge are those of the ply added last, and of no other.
#[test]
fn what_is_said_is_of_the_last_ply() {
    use shankline::joint::{JointMaterial, JointTimber};
    use shankline::strength::ply::{Slot, SlotDirection};
    let joint = Joint::builder("M12")
        .ply("plate", "8 mm")
        .material("S275 steel")
        .metal(Metal::HotDipZinc)
        .slot("13.5 mm", "22 mm", SlotDirection::Across)
        .gauge("50 mm")
        .ply("post", "60 mm")
        .timber("C24", "30 deg")
        .build()
        .unwrap();
    let [plate, post] = joint.stack.plies() else {
        panic!("two plies")
    };
    assert_eq!(plate.material, Some(JointMaterial::from("S275 steel")));
    assert_eq!((plate.metal, post.metal), (Some(Metal::HotDipZinc), None));
    let slot = Slot {
        length: millimetres(22.0),
        direction: SlotDirection::Across,
    };
    assert_eq!(
        (plate.slot, plate.hole),
        (Some(slot), Some(millimetres(13.5)))
    );
    assert_eq!((plate.gauge, post.gauge), (Some(millimetres(50.0)), None));
    assert_eq!((plate.timber.clone(), plate.grain_angle), (None, None));
    assert_eq!(post.timber, Some(JointTimber::from("C24")));
    assert!((post.grain_angle.unwrap().value.to_degrees() - 30.0).abs() < 1e-9);
    assert_eq!((post.slot, post.material.clone()), (None, None));
}

#[test]
fn methods_have_their_names() {
    use AiscEdition::{E2005, E2010, E2016, E2022};
    for (edition, year) in [(E2005, 2005), (E2010, 2010), (E2016, 2016), (E2022, 2022)] {
        let named = |name: String| JointMethods::named(&name).unwrap();
        assert_eq!(
            named(format!("aisc_lrfd_{year}")),
            JointMethods::aisc_lrfd(edition)
        );
        assert_eq!(
            named(format!("aisc_asd_{year}")),
            JointMethods::aisc_asd(edition)
        );
    }
    for name in [
        "aisc_lrfd_2017",
        "aisc_lrfd__2016",
        "aisc_asd__2016",
        "abcdefghi_2016",
        "abcdefgh_2016",
        "aisc_lrfd_",
        "aisc_2016",
    ] {
        assert!(JointMethods::named(name).is_err(), "{name}");
    }
}

#[test]
fn least_loads_are_not_above_the_greatest() {
    let with = |across_least: f64, along_least: f64| JointLoad {
        across: newtons(8e3),
        along: newtons(5e3),
        repeats: Repeats::Between {
            across_least: newtons(1e3 * across_least),
            along_least: newtons(1e3 * along_least),
            cycles: None,
        },
        ..JointLoad::none()
    };
    for (across, along, refused) in [
        (8.0, 5.0, None),
        (-8.0, 5.0, None),
        (8.1, 5.0, Some("least load across the axis is 8.1")),
        (8.0, 5.1, Some("least load along the axis is 5.1")),
        (-8.1, 5.0, Some("it must be at least -8")),
        (8.0, -1e9, None),
        (8.0, -1.1e9, Some("it must be at least -1")),
        (f64::NAN, 5.0, Some("least load across the axis")),
        (8.0, f64::NEG_INFINITY, Some("least load along the axis")),
    ] {
        let found = with(across, along)
            .validate()
            .err()
            .map(|error| error.to_string());
        match (found, refused) {
            (None, None) => {}
            (Some(text), Some(part)) => assert!(text.contains(part), "{text}"),
            other => panic!("{across} {along}: {other:?}"),
        }
    }
}

/// EN 14399-3 is made in 8.8 and 10.9; one made to order has strengths of its own.
#[test]
fn a_product_in_a_grade_that_it_is_not_made_in() {
    let mut joint = sheared();
    joint.bolt.product = ScrewProduct::En14399_3;
    assert!(joint.check().is_ok(), "{:?}", joint.check());
    joint.bolt.grade = PropertyClass::Class4_6.into();
    let error = joint.check().unwrap_err().to_string();
    assert!(error.contains("is not made in"), "{error}");
    let strength = shankline::joint::OwnStrength::new("to order (invented)", megapascals(400.0));
    assert!(joint.with_strength(strength).check().is_ok());
}

/// Of any size: inch or metric as it was said, and the threads of that system are tried.
#[test]
fn any_size_is_of_its_units() {
    for (units, unified) in [(UnitSystem::UsCustomary, true), (UnitSystem::Si, false)] {
        let ply = |builder: JointBuilder, name: &str| {
            let said = builder.ply(name, "12 mm").material("ASTM A36 steel");
            said.end_distance("60 mm")
                .edge_distance("60 mm")
                .width("120 mm")
        };
        let builder = ply(ply(Joint::any_size(units), "a"), "b").across("1 kN");
        let designs = builder.choose().unwrap();
        let best = designs.best().unwrap();
        assert_eq!(best.choice.bolt.thread.is_unified(), unified);
    }
}

/// Coarse threads are those of ISO 4014, fine ones of ISO 8765, inch ones of hex cap screws; what neither is made in is looked
/// for in the usual one, and no list has it.
#[test]
fn the_usual_product_is_of_the_thread() {
    use shankline::{joint::OwnNut, parts::Locking};
    for (thread, product) in [
        ("M12", ScrewProduct::Iso4014),
        ("M12x1.25", ScrewProduct::Iso8765),
        ("1/2-13 UNC", ScrewProduct::HexCapScrew),
        ("M11", ScrewProduct::Iso4014),
    ] {
        let nut = OwnNut::new("turned nut (invented)", mm(10.0), Locking::None);
        let said = Joint::builder(thread).ply("a", "12 mm").hole("14 mm");
        let joint = said.no_washers().own_nut(nut).build().unwrap();
        assert_eq!(joint.bolt.product, product, "{thread}");
        assert_eq!(value(&joint, Fact::Product), Some(product.to_string()));
    }
}

/// What was said of the bolt stays as it was said, and the rest is of the system of its thread.
#[test]
fn what_was_said_is_not_chosen_again() {
    let ply = |builder: JointBuilder, name: &str| {
        let said = builder.ply(name, "12 mm").material("S275 steel");
        said.end_distance("60 mm")
            .edge_distance("60 mm")
            .width("120 mm")
    };
    let two = |builder| ply(ply(builder, "a"), "b").across("1 kN");
    let of = |builder| {
        let designs = two(builder).choose().unwrap();
        assert!(designs.best().is_some(), "{:?}", designs.rejected());
        let own = designs.feasible().iter().map(|design| {
            let choice = &design.choice;
            let (bolt, nut) = (choice.bolt, choice.nut.style);
            (bolt.thread.to_string(), bolt.product, bolt.grade, nut)
        });
        own.collect::<Vec<_>>()
    };
    let metric = of(Joint::builder("M10").product("ISO 4017"));
    assert!(
        metric
            .iter()
            .all(|own| own.0 == "M10" && own.1 == ScrewProduct::Iso4017)
    );
    // Grades and nuts, of which nothing was said, are tried.
    for grade in [PropertyClass::Class8_8, PropertyClass::Class10_9] {
        assert!(metric.iter().any(|own| own.2 == grade.into()));
    }
    assert!(metric.iter().any(|own| own.3 != metric[0].3));
    let nut = of(Joint::builder("M10").nut("ISO 7042"));
    assert!(nut.iter().all(|own| own.3 == NutStyle::Iso7042));
    let grade = of(Joint::builder("M10").grade("10.9"));
    assert!(
        grade
            .iter()
            .all(|own| own.2 == PropertyClass::Class10_9.into())
    );
    let inch = of(Joint::builder("1/2-13 UNC"));
    assert!(inch.iter().all(|own| own.1 == ScrewProduct::HexCapScrew));
    // A325 begins at 1/2 in: of any size it is looked for from there on.
    let structural = Joint::any_size(UnitSystem::UsCustomary).grade("ASTM F3125 A325 type 1");
    let designs = two(structural.product(ScrewProduct::StructuralBolt))
        .choose()
        .unwrap();
    let mut tried = designs
        .rejected()
        .iter()
        .map(|own| own.choice.bolt.thread.to_string());
    assert!(tried.any(|thread| thread == "1/2-13 UNC"));
}

/// The name of a set of rules in a file: cuts are rounded as the thread is measured.
#[cfg(feature = "serde")]
#[test]
fn rules_by_name_go_by_the_thread() {
    use shankline::units::UnitSystem;
    for (thread, system) in [
        ("M12", UnitSystem::Si),
        ("1/2-13 UNC", UnitSystem::UsCustomary),
    ] {
        let said = Joint::builder(thread).ply("a", "12 mm").ply("b", "12 mm");
        let joint = said.across("2 kN").build().unwrap();
        let mut file = serde_json::to_value(&joint).unwrap();
        file["rules"] = serde_json::json!("fabrication");
        let read: Joint = serde_json::from_value(file).unwrap();
        assert_eq!(read.rules, LengthRules::fabrication(system), "{thread}");
    }
}
