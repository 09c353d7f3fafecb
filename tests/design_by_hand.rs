//! Which parts and which length the search for a design keeps, turns down and rules out, by hand.
//!
//! M12, class 8.8, two plates of 15 mm: 50 mm of ISO 4014 has its shank to 11.25 mm and the plane at 15 mm in its run-out,
//! 55 mm has it to 16.25 mm. 0.577 x 640 MPa x 84.3 mm2 / 2 = 15.6 kN in the thread, x 113.1 mm2 / 2 = 20.9 kN on shank.
#![cfg(feature = "serde")]

#[path = "support/hanger.rs"]
mod hanger;

use std::ops::ControlFlow;

use hanger::joint;
use serde_json::{Value, json};
use shankline::joint::{
    DesignSpace, Designs, Fact, Finding, Granted, JointBolt, JointWasher, Objective, OnHand,
    RuledOutReason, Score, TurnedDownReason,
};
use shankline::prelude::*;
use shankline::tables::holes::HoleFit;

/// The hanger with close holes and a washer, at twice the load.
fn hanger() -> Value {
    let mut value = hanger::hanger();
    for ply in ["0", "1"] {
        let hole = value.pointer_mut(&format!("/stack/plies/{ply}/hole"));
        *hole.unwrap() = json!("13.5 mm");
    }
    value["stack"]["washers_under_nut"] = json!({ "style": "iso_7089", "count": 1 });
    value["load"]["across"] = json!("10 kN");
    value
}

fn threads(names: &[&str]) -> DesignSpace {
    DesignSpace::new().threads(names.iter().map(|name| name.parse::<Thread>().unwrap()))
}

fn best_length(designs: &Designs) -> f64 {
    let best = designs.best().expect("one does");
    (best.candidate.screw.nominal / millimetres(1.0)).value
}

fn is(found: f64, by_hand: f64) -> bool {
    (found - by_hand).abs() < 1e-6
}

/// 18 kN are too many for 50 mm and not for 55 mm, which no reason against 50 mm says beforehand.
#[test]
fn a_longer_bolt_holds_where_the_shorter_has_its_thread_in_the_plane() {
    let mut value = hanger();
    let lengths = [Objective::Length];
    let weak = joint(&value).design(&DesignSpace::new(), &lengths).unwrap();
    assert!(is(best_length(&weak), 50.0));
    value["load"]["across"] = json!("18 kN");
    let designs = joint(&value).design(&DesignSpace::new(), &lengths).unwrap();
    assert!(is(best_length(&designs), 55.0));
    value["load"]["across"] = json!("21 kN");
    let none = joint(&value).design(&DesignSpace::new(), &lengths).unwrap();
    assert!(none.best().is_none());
}

/// The search goes by length where nothing else is known, and yet finds the lower utilisation: 10 / 20.9 and not 10 / 15.6.
#[test]
fn the_least_used_length_is_found_behind_the_first() {
    let only = [Objective::Utilisation];
    let designs = joint(&hanger()).design(&DesignSpace::new(), &only).unwrap();
    assert!(is(best_length(&designs), 55.0));
    let used = designs.best().unwrap().utilisation().value;
    assert!((used - 10.0 / 20.88).abs() < 1e-3, "{used}");
    // Among those on shank the search for the least used ends at the shortest of them, and a known objective goes first.
    let shank_first = [Objective::ShankInPlanes, Objective::Utilisation];
    let designs = joint(&hanger())
        .design(&DesignSpace::new(), &shank_first)
        .unwrap();
    assert!(is(best_length(&designs), 55.0));
    let length_first = [Objective::Length, Objective::Utilisation];
    let designs = joint(&hanger())
        .design(&DesignSpace::new(), &length_first)
        .unwrap();
    assert!(is(best_length(&designs), 50.0));
}

/// A utilisation that is the limit is within it.
#[test]
fn the_limit_of_utilisation_is_included() {
    let only = [Objective::Utilisation];
    let used = joint(&hanger()).design(&DesignSpace::new(), &only).unwrap();
    let used = used.best().unwrap().utilisation();
    let at_most = |limit: Ratio| {
        let space = DesignSpace::new().utilisation_at_most(limit);
        joint(&hanger()).design(&space, &only).unwrap()
    };
    assert!(at_most(used).best().is_some());
    let less = at_most(used * 0.999_999);
    assert!(less.best().is_none());
    let above = |reason: &TurnedDownReason| matches!(reason, TurnedDownReason::AboveLimit { .. });
    assert!(less.rejected()[0].reasons.iter().all(above));
}

/// Three styles of washer, three products, four nuts and five grades for M20, of each one that is not made for it: F436 is
/// an inch washer, ASME B18.2.1 an inch screw, the plain hexagon nut an inch nut, and class 9.8 ends at M16. No hexagon bolt of
/// ISO 4014 or 4017 is made in SAE grade 8. For M24 the hole is too small.
#[test]
fn each_reason_rules_out_what_it_says_and_no_more() {
    let mut value = hanger();
    for ply in [0, 1] {
        value["stack"]["plies"][ply]["hole"] = json!("22 mm");
    }
    value["bolt"]["thread"] = json!("M20");
    value["load"]["across"] = json!("20 kN");
    let space = threads(&["M20", "M24"])
        .products([
            ScrewProduct::Iso4014,
            ScrewProduct::Iso4017,
            ScrewProduct::HexCapScrew,
        ])
        .grades([
            BoltGrade::Iso(PropertyClass::Class5_8),
            BoltGrade::Iso(PropertyClass::Class8_8),
            BoltGrade::Iso(PropertyClass::Class9_8),
            BoltGrade::Iso(PropertyClass::Class10_9),
            BoltGrade::Sae(SaeGrade::Grade8),
        ])
        .nut_styles([
            NutStyle::Hex,
            NutStyle::Iso4032,
            NutStyle::Iso4033,
            NutStyle::Iso7040,
        ])
        .washers([
            WasherStyle::F436,
            WasherStyle::Iso7089,
            WasherStyle::Iso7093,
        ]);
    let designs = joint(&value).design(&space, &[]).unwrap();
    let all = 3 * 3 * 4 * 5;
    assert_eq!(designs.combinations, 2 * all);
    let mut found: Vec<(&str, usize)> = designs
        .ruled_out()
        .iter()
        .map(|group| {
            let what = match group.reason {
                RuledOutReason::HoleTooSmall { .. } => "hole",
                RuledOutReason::NoWasher { .. } => "washer",
                RuledOutReason::NoScrew { .. } => "screw",
                RuledOutReason::NoNut { .. } => "nut",
                RuledOutReason::NoGrade { .. } => "grade",
                RuledOutReason::GradeOfOtherProduct { .. } => "grade of another product",
                _ => "something else",
            };
            (what, group.combinations)
        })
        .collect();
    found.sort_unstable();
    let expected = [
        ("grade", 2 * 2 * 3),
        ("grade of another product", 2 * 3),
        ("grade of another product", 2 * 3),
        ("hole", all),
        ("nut", 2 * 2 * 5),
        ("screw", 2 * 4 * 5),
        ("washer", 3 * 4 * 5),
    ];
    assert_eq!(found, expected);
    let judged = designs.feasible().len() + designs.rejected().len();
    assert_eq!(judged, 2 * 2 * 3 * 3);
}

/// Steps of two threads, one washer, two products and three nuts: every third combination of the 36.
#[test]
fn whoever_watches_sees_every_step() {
    let space = threads(&["M12", "M16"])
        .products([ScrewProduct::Iso4014, ScrewProduct::Iso4017])
        .nut_styles([NutStyle::Iso4032, NutStyle::Iso4033, NutStyle::Iso7040])
        .grades([
            PropertyClass::Class5_8,
            PropertyClass::Class8_8,
            PropertyClass::Class10_9,
        ])
        .washers([WasherStyle::Iso7089])
        .holes(HoleFit::Normal);
    let mut seen = Vec::new();
    let watched = joint(&hanger()).design_watched(&space, &[], |done, of| {
        seen.push((done, of));
        ControlFlow::Continue(())
    });
    assert!(matches!(watched, Ok(ControlFlow::Continue(_))));
    let expected: Vec<(usize, usize)> = (0..=12).map(|step| (3 * step, 36)).collect();
    assert_eq!(seen, expected);
}

/// A bolt may fill its hole; a hole may be as wide as the coarse series of ISO 273 has it for another size.
#[test]
fn holes_that_are_there_are_judged_at_their_limits() {
    let ruled_out = |hole: &str, thread: &str| {
        let mut value = hanger();
        for ply in [0, 1] {
            value["stack"]["plies"][ply]["hole"] = json!(hole);
        }
        let space = threads(&[thread]).washers([WasherStyle::Iso7089]);
        let designs = joint(&value).design(&space, &[]).unwrap();
        designs.ruled_out().first().map(|group| match group.reason {
            RuledOutReason::HoleTooSmall { ply, .. } => ("small", ply),
            RuledOutReason::HoleTooLarge { ply, .. } => ("large", ply),
            _ => ("something else", 0),
        })
    };
    assert_eq!(ruled_out("12 mm", "M12"), None);
    assert_eq!(ruled_out("11.99 mm", "M12"), Some(("small", 1)));
    assert_eq!(ruled_out("12 mm", "M10"), None);
    assert_eq!(ruled_out("12.01 mm", "M10"), Some(("large", 1)));
    // Of the size that was drilled for, the verdict says whether it is too wide.
    assert_eq!(ruled_out("15 mm", "M12"), None);
}

/// A drawer counts if it has as many as are wanted, of the product, the finish and the grade.
#[test]
fn only_what_lies_in_the_drawer_is_on_hand() {
    let joint = joint(&hanger());
    let zinc = joint.bolt.finish;
    let bolt = |length: f64, grade: PropertyClass| JointBolt {
        length: Some(millimetres(length)),
        grade: grade.into(),
        ..joint.bolt
    };
    let (c8, c10) = (PropertyClass::Class8_8, PropertyClass::Class10_9);
    let on_hand = |bolts: &[(JointBolt, usize)], objectives: &[Objective]| {
        let drawers = bolts.iter().map(|&(bolt, count)| OnHand { bolt, count });
        let space = DesignSpace::new()
            .grades([c8, c10])
            .on_hand(drawers, 8)
            .only_on_hand();
        let designs = joint.design(&space, objectives).unwrap();
        let text = |design: &shankline::joint::Design| {
            let length = (design.candidate.screw.nominal / millimetres(1.0)).value;
            assert!(design.on_hand);
            (design.choice.bolt.grade == c10.into(), length.round())
        };
        designs.feasible().iter().map(text).collect::<Vec<_>>()
    };
    let length = &[Objective::Length][..];
    assert_eq!(on_hand(&[(bolt(55.0, c8), 8)], length), [(false, 55.0)]);
    assert_eq!(on_hand(&[(bolt(55.0, c8), 7)], length), []);
    let screw = JointBolt {
        product: ScrewProduct::Iso4017,
        ..bolt(55.0, c8)
    };
    assert_eq!(on_hand(&[(screw, 9)], length), []);
    let bare = JointBolt {
        finish: Some(shankline::joint::Finish::HotDipGalvanized),
        ..bolt(55.0, c8)
    };
    assert_ne!(bare.finish, zinc);
    assert_eq!(on_hand(&[(bare, 9)], length), []);
    // Of two lengths in one grade the shorter, in whatever order they lie there.
    let (long, short) = ((bolt(60.0, c8), 9), (bolt(55.0, c8), 9));
    assert_eq!(on_hand(&[long, short], length), [(false, 55.0)]);
    assert_eq!(on_hand(&[short, long], length), [(false, 55.0)]);
    // And of two grades in one length both.
    let stronger = (bolt(55.0, c10), 9);
    let both = on_hand(&[short, stronger, short, long], length);
    assert_eq!(both, [(false, 55.0), (true, 55.0)]);
    let apart = on_hand(&[(bolt(60.0, c10), 9), short], length);
    assert_eq!(apart, [(false, 55.0), (true, 60.0)]);
}

/// 24 kN are too many for either grade: 20.9 kN for class 8.8, 0.577 x 420 MPa x 113.1 mm2 / 2 = 13.7 kN for class 5.8.
#[test]
fn the_least_overloaded_is_turned_down_first() {
    let mut value = hanger();
    value["load"]["across"] = json!("24 kN");
    let space = DesignSpace::new().grades([PropertyClass::Class5_8, PropertyClass::Class8_8]);
    let designs = joint(&value).design(&space, &[]).unwrap();
    let rejected = designs.rejected();
    let grades: Vec<BoltGrade> = rejected.iter().map(|own| own.choice.bolt.grade).collect();
    let stronger = PropertyClass::Class8_8.into();
    assert_eq!(grades, [stronger, PropertyClass::Class5_8.into()]);
    assert_eq!(rejected[0].reasons.len(), rejected[1].reasons.len());
    // The same where a limit of the utilisation is what is passed.
    value["load"]["across"] = json!("8 kN");
    let space = space.utilisation_at_most(Ratio::from(0.1));
    let designs = joint(&value).design(&space, &[]).unwrap();
    assert_eq!(designs.rejected()[0].choice.bolt.grade, stronger);
}

#[test]
fn scores_count_what_they_say() {
    let mut value = hanger();
    let score = |value: &Value, objective| {
        let designs = joint(value).design(&DesignSpace::new(), &[]).unwrap();
        designs.best().unwrap().score(objective)
    };
    assert_eq!(score(&value, Objective::Washers), Score::Count(1));
    // Bolt, nut and washer.
    assert_eq!(score(&value, Objective::PartNumbers), Score::Count(3));
    value["stack"]["washers_under_head"] =
        json!([{ "style": "iso_7089" }, { "style": "iso_7089" }]);
    assert_eq!(score(&value, Objective::Washers), Score::Count(3));
    value["stack"]["other_washers_under_nut"] = json!([{ "name": "square washer", "thickness": "0.1 mm", "outside": "30 mm", "inside": "13 mm", "hardness": 200 }]);
    assert_eq!(score(&value, Objective::Washers), Score::Count(4));
    assert_eq!(score(&value, Objective::PartNumbers), Score::Count(3));
    value = hanger();
    value["stack"]["washers_under_nut"] = Value::Null;
    assert_eq!(score(&value, Objective::Washers), Score::Count(0));
    assert_eq!(score(&value, Objective::PartNumbers), Score::Count(2));
    assert!(Score::Count(1) < Score::Count(2) && Score::Count(2) > Score::Count(1));
    let unknown = Score::Mass(None);
    assert!(Score::Length(millimetres(2.0)) < unknown && unknown > Score::Count(9));
}

/// Washers that a length needs under its head are washers of the design: 65 mm has its thread from 35 mm, and the plates end
/// at 29.4 mm.
#[test]
fn washers_added_under_the_head_are_counted() {
    let mut value = hanger();
    value["stack"]["washer_to_add_under_head"] = json!({ "style": "iso_7089" });
    value["rules"]["washers_under_head_max"] = json!(4);
    value["rules"]["washers_under_nut_max"] = json!(1);
    let joint = joint(&value);
    let bolt = JointBolt {
        length: Some(millimetres(65.0)),
        ..joint.bolt
    };
    let space = DesignSpace::new()
        .on_hand([OnHand { bolt, count: 1 }], 1)
        .only_on_hand();
    let designs = joint.design(&space, &[]).unwrap();
    let best = designs.best().unwrap();
    // ISO 7089, M12: 2.3 mm at least. 29.4 + 2.3 (nut) + 2.3 = 34.0, and one more: 36.3.
    assert_eq!(best.candidate.washers_added_under_head, 2);
    assert_eq!(best.washers, 3);
    assert_eq!(best.mass.unwrap().washers_weighed, 3);
}

/// Copper under the head eats a zinc ply away; only a bolt that needs such a washer has one.
#[test]
fn a_length_without_the_harmful_washer_is_found_behind_one_with_it() {
    let mut value = hanger();
    value["environment"]["exposure"] = json!("harsh");
    value["stack"]["washer_to_add_under_head"] = json!({
        "name": "copper washer", "thickness": "2.5 mm", "metal": "copper", "outside": "24 mm", "inside": "13 mm",
    });
    for ply in [0, 1] {
        value["stack"]["plies"][ply]["metal"] = json!("zinc");
    }
    value["stack"]["washers_under_nut"] = Value::Null;
    value["rules"]["washers_under_head_max"] = json!(4);
    value["set_aside"] =
        json!([{ "mode": "washers", "reason": "copper washers, looked after by hand (invented)" }]);
    let joint = joint(&value);
    let bolt = JointBolt {
        length: Some(millimetres(65.0)),
        ..joint.bolt
    };
    let space = DesignSpace::new().on_hand([OnHand { bolt, count: 1 }], 1);
    let first = [Objective::OnHand, Objective::Length];
    let only = joint.design(&space.clone().only_on_hand(), &first).unwrap();
    let harmful = |reason: &TurnedDownReason| {
        matches!(reason, TurnedDownReason::Fault(Finding::Galvanic { .. }))
    };
    let rejected = only.rejected();
    assert!(rejected[0].reasons.iter().any(harmful), "{rejected:?}");
    let designs = joint.design(&space, &first).unwrap();
    let best = designs.best().expect("a shorter one does");
    assert_eq!(best.candidate.washers_added_under_head, 0);
    assert!(!best.on_hand);
}

/// What the search chooses is no longer taken for granted, and all else still is.
#[test]
fn what_was_chosen_is_not_taken_for_granted() {
    let chosen = [
        Fact::Product,
        Fact::Grade,
        Fact::Nut,
        Fact::NutGrade,
        Fact::Washers,
        Fact::Holes,
    ];
    let kept = [Fact::Repeats, Fact::Tightening, Fact::Pattern];
    let mut joint = joint(&hanger());
    joint.granted = chosen
        .iter()
        .chain(&kept)
        .map(|&fact| Granted::new(fact, "so (invented)"))
        .collect();
    let designs = joint.design(&DesignSpace::new(), &[]).unwrap();
    let made = designs.best_joint().unwrap().unwrap();
    let facts: Vec<Fact> = made.granted.iter().map(|granted| granted.fact).collect();
    assert_eq!(facts, kept);
}

/// A washer of a style has its thickness from the thread of its joint, and alone has none.
#[test]
fn a_washer_alone_is_given_its_thickness() {
    let read = |value: Value| serde_json::from_value::<JointWasher>(value);
    let error = read(json!({ "style": "iso_7089" }))
        .unwrap_err()
        .to_string();
    assert!(error.contains("missing field `thickness`"), "{error}");
    assert!(read(json!({ "style": "iso_7089", "thickness": "2.5 mm" })).is_ok());
}

/// Two threads of one size and pitch stand in one order, whichever was named first.
#[test]
fn threads_of_one_size_have_an_order() {
    let space = |names: [&str; 2]| threads(&names).holes(HoleFit::Normal);
    let designs = |names| joint(&hanger()).design(&space(names), &[]).unwrap();
    let (one, other) = (designs(["M12", "M12-6g"]), designs(["M12-6g", "M12"]));
    assert_eq!(one.combinations, 2);
    let order = |designs: &Designs| -> Vec<String> {
        designs
            .feasible()
            .iter()
            .map(|own| own.choice.bolt.thread.to_string())
            .collect()
    };
    assert_eq!(order(&one), order(&other));
}

/// Of 2 in no stock lengths are listed: a screw of that size in a drawer is looked at all the same, and without it there is
/// none.
#[test]
fn what_is_not_stocked_may_lie_in_a_drawer() {
    let mut value = hanger();
    let grade = BoltGrade::Astm(AstmGrade::A449Type1);
    value["bolt"] = json!({
        "product": "hex_cap_screw", "thread": "2-4.5 UNC", "grade": serde_json::to_value(grade).unwrap(),
        "finish": value["bolt"]["finish"],
    });
    value["nut"]["style"] = json!("hex");
    value["stack"]["washers_under_nut"] = Value::Null;
    for ply in [0, 1] {
        value["stack"]["plies"][ply]["thickness"] = json!("3 in");
        value["stack"]["plies"][ply]["hole"] = json!("2.1 in");
    }
    let joint = joint(&value);
    let bolt = JointBolt {
        length: Some(inches(9.0)),
        ..joint.bolt
    };
    let space = DesignSpace::new().on_hand([OnHand { bolt, count: 2 }], 2);
    let judged = |space: &DesignSpace| {
        let designs = joint.design(space, &[]).unwrap();
        let feasible = designs.feasible().iter().map(|own| own.choice.bolt.length);
        let rejected = designs.rejected().iter().map(|own| own.choice.bolt.length);
        let lengths: Vec<_> = feasible.chain(rejected).collect();
        let reasons = designs.ruled_out().iter().map(|group| group.reason.clone());
        (lengths, reasons.collect::<Vec<_>>())
    };
    assert_eq!(judged(&space), (vec![Some(inches(9.0))], vec![]));
    let (none, why) = judged(&DesignSpace::new());
    assert!(
        none.is_empty() && matches!(why[..], [RuledOutReason::NoScrew { .. }]),
        "{why:?}"
    );
}
