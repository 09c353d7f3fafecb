//! The search for a design where something of the joint belongs to its own parts, or weighs.
#![cfg(feature = "serde")]

#[path = "support/hanger.rs"]
mod hanger;

use std::ops::ControlFlow;

use hanger::{hanger, joint};
use serde_json::{Value, json};
use shankline::joint::{
    DesignChoice, DesignSpace, Designs, JointBolt, JointMethods, Objective, OnHand,
};
use shankline::prelude::*;
use shankline::tables::holes::HoleFit;

fn threads(names: &[&str]) -> DesignSpace {
    DesignSpace::new()
        .threads(names.iter().map(|name| name.parse::<Thread>().unwrap()))
        .holes(HoleFit::Normal)
}

#[test]
fn what_belongs_to_one_diameter_does_not_go_with_another() {
    let refused = |pointer: &str, what: Value, named: &str| {
        let mut value = hanger();
        let (parent, key) = pointer.rsplit_once('/').unwrap();
        value.pointer_mut(parent).unwrap()[key] = what;
        let joint = joint(&value);
        assert!(joint.design(&threads(&["M12"]), &[]).is_ok(), "{named}");
        let error = joint.design(&threads(&["M12", "M16"]), &[]).unwrap_err();
        assert!(error.to_string().contains(named), "{named}: {error}");
    };
    assert!(
        joint(&hanger())
            .design(&threads(&["M12", "M16"]), &[])
            .is_ok()
    );
    refused(
        "/stack/washer_to_add_under_head",
        json!({ "thickness": "2.5 mm" }),
        "no style of washer is named",
    );
    refused(
        "/stack/head_seat",
        json!({ "recessed": { "depth": "5 mm" } }),
        "counterbore of the head",
    );
    refused("/stack/spot_face_under_nut", json!("1 mm"), "spot face");
    refused(
        "/stack/plies/0/slot",
        json!({ "length": "30 mm", "direction": "along" }),
        "slot of a ply",
    );
    refused(
        "/stack/plies/0/bearing_strength",
        json!("500 MPa"),
        "bearing strength given",
    );
    refused(
        "/methods/timber",
        json!({ "en_1995_1_1": { "axial": "4 kN", "kmod": 0.8, "gamma_m": 1.3 } }),
        "axial capacity",
    );
}

#[test]
fn what_belongs_to_one_grade_or_lock_does_not_go_with_another() {
    let mut value = hanger();
    value["methods"]["timber"] = json!({ "nds": { "bending_yield": "92 ksi", "adjustment": 1.0 } });
    let own = DesignSpace::new().grades([PropertyClass::Class8_8]);
    let other = DesignSpace::new().grades([PropertyClass::Class8_8, PropertyClass::Class4_6]);
    assert!(joint(&value).design(&own, &[]).is_ok());
    let error = joint(&value).design(&other, &[]).unwrap_err().to_string();
    assert!(error.contains("bending yield strength given"), "{error}");
    assert!(joint(&hanger()).design(&other, &[]).is_ok());

    // A plain nut has no running torque: with one in the wrench it would be overtightened.
    let mut value = hanger();
    value["nut"]["style"] = json!("iso_7040");
    value["tightening"] = json!({ "torque": {
        "nut_factor": { "min": 0.16, "nominal": 0.18, "max": 0.21 }, "target": "reusable",
        "prevailing": { "min": "1 N m", "nominal": "8 N m", "max": "15 N m" },
    } });
    let locks = DesignSpace::new().nut_styles([NutStyle::Iso7040]);
    let plain = DesignSpace::new().nut_styles([NutStyle::Iso4032, NutStyle::Iso7040]);
    assert!(joint(&value).design(&locks, &[]).is_ok());
    let error = joint(&value).design(&plain, &[]).unwrap_err().to_string();
    assert!(error.contains("running torque given is that of"), "{error}");
}

/// A square washer that is not from the tables is a washer, but weighs nothing here; the one beside it does.
#[test]
fn special_washers_do_not_take_the_weight_of_others() {
    let mut value = hanger();
    value["stack"]["washers_under_nut"] = json!({ "thickness": "2.5 mm", "count": 1 });
    let space = threads(&["M12"]).washers([WasherStyle::Iso7089]);
    let plain = joint(&value).design(&space, &[Objective::Mass]).unwrap();
    value["stack"]["other_washers_under_nut"] = json!([{ "name": "square washer", "thickness": "0.1 mm", "outside": "30 mm", "inside": "13 mm", "hardness": 200 }]);
    let special = joint(&value).design(&space, &[Objective::Mass]).unwrap();
    let (plain, special) = (plain.best().unwrap(), special.best().unwrap());
    assert_eq!(
        plain.candidate.screw.nominal,
        special.candidate.screw.nominal
    );
    let (weighed, counted) = (plain.mass.unwrap(), special.mass.unwrap());
    assert_eq!(weighed.washers, counted.washers);
    assert!(weighed.washers_weighed > 0 && counted.washers_weighed == weighed.washers_weighed);
    assert_eq!(special.washers, plain.washers + 1);
    special.mass_derivation().unwrap().check().unwrap();
}

/// ASTM A449 names a stronger nut on thick zinc, where nuts are tapped oversize; where nothing is named, none is
/// taken for good.
#[test]
fn the_nut_of_a_galvanized_bolt_is_that_for_zinc() {
    let mut value = hanger();
    value["bolt"] = json!({
        "product": "hex_cap_screw", "thread": "1/2-13 UNC",
        "grade": serde_json::to_value(BoltGrade::Astm(AstmGrade::A449Type1)).unwrap(),
        "finish": { "zinc_plated": { "baked": false } },
    });
    let grade = |value: &Value, style: &str| {
        let mut value = value.clone();
        value["nut"] = json!({ "style": style, "finish": value["bolt"]["finish"] });
        let designs = joint(&value).design(&DesignSpace::new(), &[]).unwrap();
        let other = designs.rejected().first().map(|other| other.choice);
        let choice = designs.best().map(|best| best.choice).or(other);
        choice.unwrap().nut.grade
    };
    // Plain up to 1 1/2 in it names a hex nut: of the heavy ones the weakest that will do.
    assert_eq!(grade(&value, "heavy_hex"), Some(NutGrade::AstmA194_1));
    let zinc = "hot_dip_galvanized";
    value["bolt"]["finish"] = json!(zinc);
    assert_eq!(grade(&value, "heavy_hex"), Some(NutGrade::AstmA563Dh));
}

#[test]
fn a_choice_refuses_what_it_does_not_know() {
    let designs = joint(&hanger()).design(&threads(&["M12"]), &[]).unwrap();
    let choice = designs.best().unwrap().choice;
    let mut text = serde_json::to_value(choice).unwrap();
    assert_eq!(
        serde_json::from_value::<DesignChoice>(text.clone()).unwrap(),
        choice
    );
    text["washer"] = json!("iso_7089");
    assert!(serde_json::from_value::<DesignChoice>(text).is_err());
}

/// What cannot be checked with a bolt is no reserve of it: NDS ends at 1 in, and ASTM A307 has no proof load.
#[test]
fn bolts_that_cannot_be_checked_are_turned_down() {
    let mut value = hanger();
    value["bolt"] = json!({
        "product": "hex_cap_screw", "thread": "3/4-10 UNC", "grade": "SAE J429 grade 5",
        "finish": value["bolt"]["finish"],
    });
    value["nut"]["style"] = json!("hex");
    let timber = |name: &str| {
        json!({
            "name": name, "thickness": "2 in", "timber": "Southern Pine", "grain_angle": "0 deg",
            "end_distance": "10 in", "edge_distance": "3 in", "width": "8 in",
        })
    };
    value["stack"] = json!({ "plies": [timber("rail"), timber("post")], "shear_planes": [1] });
    value["load"]["across"] = json!("400 lbf");
    value["methods"]["timber"] = json!({ "nds": { "bending_yield": "45 ksi", "adjustment": 1.0 } });
    // Of these no method is known here.
    value["set_aside"] = json!([
        { "mode": "net_section", "reason": "net area looked after by hand (invented)" },
        { "mode": "tear_out", "reason": "one bolt far from the end (invented)" },
    ]);
    value["stack"]["washers_under_head"] = json!([{ "thickness": "3 mm" }]);
    value["stack"]["washers_under_nut"] = json!({ "thickness": "3 mm", "count": 1 });
    let space = threads(&["3/4-10 UNC", "1 1/4-7 UNC"]).washers([WasherStyle::TypeAWide]);
    let designs = joint(&value)
        .design(&space, &[Objective::Utilisation])
        .unwrap();
    let text = |choice: &DesignChoice| choice.text(UnitSystem::UsCustomary);
    assert_eq!(designs.feasible().len(), 1, "{:?}", designs.rejected());
    assert!(text(&designs.best().unwrap().choice).starts_with("3/4-10 UNC"));
    let said = |designs: &Designs, start: &str| {
        let mut reasons = designs.rejected()[0].reasons.iter();
        reasons.any(|reason| reason.text(UnitSystem::Si).starts_with(start))
    };
    let (refused, rejected) = ("undecided: yield in timber", designs.rejected());
    assert!(said(&designs, refused), "{rejected:?}");

    let mut value = hanger();
    value["bolt"] = json!({
        "product": "hex_cap_screw", "thread": "1/2-13 UNC", "grade": "SAE J429 grade 5",
        "finish": value["bolt"]["finish"],
    });
    value["nut"]["style"] = json!("hex");
    value["load"]["across"] = json!("100 lbf");
    let methods = JointMethods::aisc_lrfd(AiscEdition::E2010);
    value["methods"] = serde_json::to_value(methods).unwrap();
    value["bolt"]["grade"] =
        serde_json::to_value(BoltGrade::Astm(AstmGrade::F3125A325Type1)).unwrap();
    value["tightening"] = json!({ "torque": {
        "nut_factor": { "min": 0.16, "nominal": 0.18, "max": 0.21 },
        "target": { "aisc_j31": { "edition": "2010" } },
    } });
    let space = threads(&["1/2-13 UNC"]).grades([AstmGrade::A307A]);
    let designs = joint(&value).design(&space, &[]).unwrap();
    assert!(designs.feasible().is_empty());
    let refused = "undecided: tightening: no known pretension by AISC 360 Table J3.1";
    let rejected = designs.rejected();
    assert!(said(&designs, refused), "{rejected:?}");
}

/// Bolts on hand are counted and looked up in order, not each against each: the same entry many times is one, and
/// what nobody can have in a drawer is refused.
#[test]
fn many_bolts_on_hand_are_taken_once_and_too_many_refused() {
    let joint = joint(&hanger());
    let entry = |millimetre: f64| OnHand {
        bolt: JointBolt {
            length: Some(millimetres(millimetre)),
            ..joint.bolt
        },
        count: 4,
    };
    let mut space = threads(&["M12"]);
    space.only_on_hand = true;
    space.on_hand = vec![entry(50.0), entry(60.0)];
    let few = joint.design(&space, &[]).unwrap();
    space.on_hand = (0..DesignSpace::MOST_ON_HAND)
        .map(|index| entry(if index % 2 == 0 { 60.0 } else { 50.0 }))
        .collect();
    assert_eq!(joint.design(&space, &[]).unwrap(), few);
    space.on_hand.push(entry(60.0));
    let error = joint.design(&space, &[]).unwrap_err().to_string();
    assert!(error.contains("bolts on hand"), "{error}");
}

/// A factor that no load of the joint needs is held to its range all the same.
#[test]
fn factors_that_are_not_used_are_checked_at_the_door() {
    for (method, what) in [
        (
            "shear",
            json!({ "distortion_energy": { "basis": "yield", "design_factor": -3.0 } }),
        ),
        ("tension", json!({ "proof": { "design_factor": -3.0 } })),
        (
            "plies",
            json!({ "machine_design": { "design_factor": 0.0 } }),
        ),
        (
            "slip",
            json!({ "resisted": { "stated": { "friction": 0.15, "safety_factor": -3.0 } } }),
        ),
        (
            "interaction",
            json!({ "nsts_08307": { "plastic_bending_factor": -3.0 } }),
        ),
        (
            "timber",
            json!({ "en_1995_1_1": { "axial": "4 kN", "kmod": -0.8, "gamma_m": 1.3 } }),
        ),
    ] {
        let mut value = hanger();
        value["load"]["across"] = json!("0 N");
        assert!(joint(&value).check().is_ok());
        value["methods"][method] = what;
        assert!(joint(&value).check().is_err(), "{method}");
        assert!(
            joint(&value).design(&threads(&["M12"]), &[]).is_err(),
            "{method}"
        );
    }
}

/// Somebody who watches sees it go on to the end, and may stop it anywhere.
#[test]
fn a_search_is_watched_and_stopped() {
    let joint = joint(&hanger());
    let space = threads(&["M8", "M10", "M12", "M16", "M20"])
        .grades([PropertyClass::Class5_8, PropertyClass::Class8_8])
        .nut_styles([NutStyle::Iso4032, NutStyle::Iso7040]);
    let mut seen = Vec::new();
    let watched = joint
        .design_watched(&space, &[], |done, of| {
            seen.push((done, of));
            ControlFlow::Continue(())
        })
        .unwrap();
    assert_eq!(
        watched,
        ControlFlow::Continue(joint.design(&space, &[]).unwrap())
    );
    assert!(seen.is_sorted(), "{seen:?}");
    assert_eq!((seen[0], *seen.last().unwrap()), ((0, 20), (20, 20)));
    for stop in 0..seen.len() {
        let mut calls = 0;
        let stopped = joint.design_watched(&space, &[], |_, _| {
            calls += 1;
            if calls > stop {
                ControlFlow::Break(())
            } else {
                ControlFlow::Continue(())
            }
        });
        assert_eq!(
            (stopped.unwrap(), calls),
            (ControlFlow::Break(()), stop + 1)
        );
    }
}
