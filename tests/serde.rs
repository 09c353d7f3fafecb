//! Data in and out: quantities carry their unit, unknown fields and wrong dimensions are refused
//! with a message that names the field, and what was written reads back the same.

#![cfg(feature = "serde")]

use proptest::prelude::*;
use serde_json::{Value, from_str, from_value, json, to_value};
use shankline::joint::{Criterion, Finish, JointPly, JointWasher, Ranking};
use shankline::prelude::*;
use shankline::tables::{
    friction::Condition,
    grades::HardnessScale,
    nut_grades::NutThreads,
    strengths::StressPlane,
    thread_tolerances::EngagementGroup,
    threads::{MetricSeries, UnifiedSeries},
    tightening::TighteningMethod,
};
use shankline::units::{Length, Torque, quantity};

#[derive(Debug, PartialEq, serde::Serialize, serde::Deserialize)]
struct Wrench {
    #[serde(with = "quantity")]
    torque: Torque,
}

fn stack() -> Stack {
    Stack::builder()
        .washer_under_head(Spread::exact(millimetres(3.0)))
        .ply("ear", inches(0.5).plus_minus(inches(0.015)))
        .ply("tongue", inches(1.0).plus_minus(inches(0.020)))
        .shear_planes([1])
        .washers_under_nut(millimetres(3.0).plus_minus(millimetres(0.3)), 1)
        .build()
        .unwrap()
}

#[allow(clippy::needless_pass_by_value)] // the callers write the value in place
fn refused<T: serde::de::DeserializeOwned + std::fmt::Debug>(value: Value, parts: &[&str]) {
    let message = from_value::<T>(value.clone())
        .expect_err("accepted")
        .to_string();
    for part in parts {
        assert!(
            message.contains(part),
            "{value}: \"{message}\" lacks \"{part}\""
        );
    }
}

#[test]
fn quantities_are_objects_out_and_objects_or_text_in() {
    let wrench = Wrench {
        torque: pound_force_feet(75.0),
    };
    let value = to_value(&wrench).unwrap();
    assert_eq!(value["torque"]["unit"], "N m");
    let back: Wrench = from_value(value).unwrap();
    assert!((back.torque - wrench.torque).abs() < newton_metres(1e-9));
    for text in [
        r#"{"torque": "75 lbf ft"}"#,
        r#"{"torque": {"value": 75, "unit": "lbf ft"}}"#,
    ] {
        let read: Wrench = from_str(text).unwrap();
        assert!((read.torque - wrench.torque).abs() < newton_metres(1e-9));
    }
    refused::<Wrench>(json!({"torque": 75}), &["75", "no unit"]);
    refused::<Wrench>(json!({"torque": "16 mm"}), &["16 mm", "length", "torque"]);
    refused::<Wrench>(json!({"torque": {"value": 1.0}}), &["value and unit"]);
    refused::<Wrench>(
        json!({"torque": {"value": 1.0, "unit": "N m", "note": 1}}),
        &["note"],
    );
    refused::<Wrench>(json!({"torque": null}), &["text with a unit"]);
    let twice = r#"{"torque": {"value": 1.0, "value": 2.0, "unit": "N m"}}"#;
    assert!(
        from_str::<Wrench>(twice)
            .unwrap_err()
            .to_string()
            .contains("duplicate field `value`")
    );
}

#[test]
fn plies_and_tolerances() {
    let exact = JointPly::new("web", Spread::exact(millimetres(12.0)));
    let read: JointPly = from_value(json!({"name": "web", "thickness": "12 mm"})).unwrap();
    assert_eq!(read, exact);
    let toleranced = inches(0.5).plus_minus(inches(0.015));
    for thickness in [
        json!("0.500 +/- 0.015 in"),
        json!("1/2 in ± 0.015 in"),
        json!({"nominal": "1/2 in", "plus_minus": "0.015 in"}),
        json!({"min": "0.485 in", "nominal": {"value": 0.5, "unit": "in"}, "max": "0.515 in"}),
    ] {
        let read: Spread<Length> = from_value(thickness.clone()).unwrap();
        for (a, b) in [
            (read.min, toleranced.min),
            (read.nominal, toleranced.nominal),
            (read.max, toleranced.max),
        ] {
            assert!((a - b).abs() < inches(1e-12), "{thickness}");
        }
    }
    refused::<JointPly>(
        json!({"name": "tongue", "thickness": "75 lbf ft"}),
        &["thickness of \"tongue\"", "torque", "length"],
    );
    refused::<JointPly>(
        json!({"name": "tongue", "thickness": "1 in", "tikness": 1}),
        &["tikness"],
    );
    refused::<JointPly>(json!({"name": "tongue"}), &["thickness"]);
    refused::<JointPly>(
        json!({"name": "tongue", "thickness": {"nominal": "1 in", "plus_minus": "5 kN"}}),
        &["thickness of \"tongue\"", "plus_minus", "force"],
    );
}

#[test]
fn a_stack_is_checked_as_the_builder_does() {
    let stack = stack();
    let value = to_value(&stack).unwrap();
    assert_eq!(
        to_value(from_value::<Stack>(value.clone()).unwrap()).unwrap(),
        value
    );
    let with = |field: &str, new: Value| {
        let mut changed = value.clone();
        changed[field] = new;
        changed
    };
    refused::<Stack>(with("shear_planes", json!([2])), &["shear plane", "2"]);
    refused::<Stack>(with("plies", json!([])), &["plies"]);
    refused::<Stack>(
        with(
            "washers_under_nut",
            json!({"thickness": "3 kN", "count": 1}),
        ),
        &["washers_under_nut", "force"],
    );
    refused::<Stack>(
        with("washers_under_nut", json!({"count": 1})),
        &["thickness"],
    );
    refused::<Stack>(with("washer_under_nut", json!(1)), &["washer_under_nut"]);
    refused::<Stack>(
        with(
            "plies",
            json!([{"name": "thin", "thickness": "-1 mm"}, {"name": "back", "thickness": "5 mm"}]),
        ),
        &["thickness", "thin"],
    );
}

/// As a data file would say it: every feature that a stack may have.
#[test]
fn a_stack_of_every_kind_is_read() {
    let value = json!({
        "head_seat": {"recessed": {"depth": "1.5 +/- 0.5 mm"}},
        "washer_to_add_under_head": {"thickness": "2 +/- 0.2 mm"},
        "plies": [
            {"name": "lug", "thickness": "20 +/- 1 mm", "pull": 0.625},
            {"name": "mat", "thickness": "6 mm", "crush": "2 mm", "pull": 0},
            {"name": "rocker", "thickness": "30 +/- 0.1 mm", "pull": -1},
            {"name": "arm", "thickness": "10 mm", "pull": 0.375},
        ],
        "gaps": [{"after_ply": 1, "width": {"min": "0 mm", "nominal": "0.5 mm", "max": "1 mm"}}],
        "sleeves": [
            {"name": "bushing", "length": "30.5 +/- 0.1 mm", "first_ply": 3, "last_ply": 3},
        ],
        "shear_planes": [2, 3],
        "spot_face_under_nut": "1 mm",
        "other_washers_under_nut": [{"name": "cup", "thickness": "3 mm"}],
        "washers_under_nut": {"thickness": "2 +/- 0.2 mm", "count": 1},
    });
    let stack: Stack = from_value(value.clone()).unwrap();
    assert_eq!(stack.gap_after(1).unwrap().max, millimetres(1.0));
    assert_eq!(stack.plane_shares(), [0.625, 0.375]);
    let written = to_value(&stack).unwrap();
    assert_eq!(
        to_value(from_value::<Stack>(written.clone()).unwrap()).unwrap(),
        written
    );
    // What a stack does not have is not written.
    let keys = |stack: &Stack| to_value(stack).unwrap().as_object().unwrap().len();
    assert_eq!(keys(&stack), value.as_object().unwrap().len() + 1); // and washers_under_head
    assert_eq!(keys(&self::stack()), 4);
    let tapped = json!({
        "plies": [{"name": "cover", "thickness": "20 mm"}],
        "shear_planes": [1],
        "tapped_part": {"name": "bed"},
    });
    assert!(from_value::<Stack>(tapped).unwrap().tapped_part().is_some());
    for (field, wrong, words) in [
        (
            "gaps",
            json!([{"after_ply": 9, "width": "1 mm"}]),
            "gap after ply 9",
        ),
        (
            "head_seat",
            json!({"recessed": {"depth": "25 mm"}}),
            "left by its recess",
        ),
        (
            "plies",
            json!([
                {"name": "lug", "thickness": "20 mm", "pull": 1},
                {"name": "mat", "thickness": "6 mm"},
                {"name": "rocker", "thickness": "30 mm", "pull": -1},
                {"name": "arm", "thickness": "10 mm", "pull": 0},
            ]),
            "\"mat\" does not say what it pulls",
        ),
        (
            "sleeves",
            json!([{"name": "s", "length": "0 mm", "first_ply": 1, "last_ply": 1}]),
            "length",
        ),
        (
            "tapped_part",
            json!({"name": "bed", "dept": "3 mm"}),
            "dept",
        ),
    ] {
        let mut changed = value.clone();
        changed[field] = wrong;
        refused::<Stack>(changed, &[words]);
    }
}

#[test]
fn every_input_type_reads_back() {
    /// Quantities are written with 12 digits, so what is compared is the text.
    fn round_trip<T: serde::Serialize + serde::de::DeserializeOwned>(value: &T) {
        let text = serde_json::to_string(value).unwrap();
        let read: T = from_str(&text).unwrap();
        assert_eq!(serde_json::to_string(&read).unwrap(), text);
    }
    round_trip(&stack());
    round_trip(&Ranking::by(&[Criterion::Cut, Criterion::Length]));
    round_trip(
        &LengthRules::fabrication(UnitSystem::Si)
            .with_thread_in_holes(2.0)
            .with_washers_in_all(4),
    );
    round_trip(&"3/4-10 UNC-2A".parse::<Thread>().unwrap());
    round_trip(&"M12x1.25".parse::<Thread>().unwrap());
    round_trip(&BoltGrade::from(SaeGrade::Grade8));
    round_trip(&BoltGrade::from(PropertyClass::Class10_9));
    round_trip(&NutStyle::Iso7040);
    round_trip(&NutStyle::InsertLockNe);
    round_trip(&WasherStyle::TypeANarrow);
    round_trip(&ScrewProduct::Iso4014);
    round_trip(&ScrewProduct::Iso8765);
    round_trip(&ScrewProduct::HeavyHexBolt);
    round_trip(&ScrewProduct::MetricHexCapScrew);
    round_trip(&ScrewProduct::Iso4762);
    round_trip(&ScrewProduct::En14399_3);
    round_trip(&Zone::RunOut);
    round_trip(&UnifiedSeries::Un12);
    round_trip(&MetricSeries::Fine);
    round_trip(&Condition::ZincPlated);
    round_trip(&TighteningMethod::TorqueWrench);
    round_trip(&EngagementGroup::Long);
    round_trip(&HardnessScale::RockwellC);
    round_trip(&StressPlane::Thread);
    round_trip(&NutThreads::Un12AndFiner);
    round_trip(&UnitSystem::UsCustomary);
    round_trip(&NutFactor::new(0.15, 0.2, 0.25).unwrap());
    round_trip(&Friction::new(0.10, 0.12, 0.16).unwrap());
    round_trip(&PreloadTarget::AiscJ31 {
        edition: AiscEdition::E2016,
    });
    for target in [
        PreloadTarget::Is800,
        PreloadTarget::Bs4604,
        PreloadTarget::As4100,
    ] {
        round_trip(&target);
    }
    round_trip(&TorsionModel::Vdi2230);
    round_trip(&BearingFace::new(millimetres(16.6), millimetres(13.5)).unwrap());
    round_trip(&BearingPressure::UniformPressure);
    round_trip(&PreloadTarget::Permanent);
    round_trip(&ShearMethod::DistortionEnergy {
        basis: ShearBasis::Yield,
        design_factor: 2.0,
    });
    round_trip(&ShearMethod::Aisc360 {
        edition: AiscEdition::E2016,
    });
    round_trip(&LengthRules::fabrication(UnitSystem::UsCustomary));
    round_trip(&LengthRules::fabrication(UnitSystem::Si).with_cut(CutRule::Never));
    round_trip(&Spread::exact(millimetres(12.0)));
}

#[test]
fn bad_inputs_are_refused_by_name() {
    refused::<Thread>(json!("3/4-11 UNC"), &["3/4-11 UNC", "3/4-10 UNC"]);
    refused::<BoltGrade>(json!("grade 9"), &["grade 9", "SAE J429 grade 8"]);
    refused::<Friction>(
        json!({"min": 0.2, "nominal": 0.1, "max": 0.3}),
        &["coefficient of friction", "0.1"],
    );
    refused::<NutFactor>(
        json!({"min": 0.3, "nominal": 0.2, "max": 0.4}),
        &["nut factor"],
    );
    refused::<NutFactor>(
        json!({"min": 0.1, "nominal": 0.2, "max": 0.4, "mean": 0.2}),
        &["mean"],
    );
    refused::<ShearMethod>(json!({"aisc_360": {"edition": "1999"}}), &["1999", "2005"]);
    refused::<ShearMethod>(
        json!({"distortion_energy": {"basis": "yield", "design_factor": 1.5, "phi": 0.75}}),
        &["phi"],
    );
    let mut rules = to_value(LengthRules::fabrication(UnitSystem::Si)).unwrap();
    rules["cut"]["step"] = json!("1 kN");
    refused::<LengthRules>(rules.clone(), &["step", "force"]);
    rules["cut"] = json!({"allowed": true});
    refused::<LengthRules>(rules.clone(), &["tolerance"]);
    rules["cut"] = json!({"allowed": false});
    rules["protrusions"] = json!(2);
    refused::<LengthRules>(rules, &["protrusions"]);
}

#[test]
fn every_result_type_writes_its_units() {
    let thread: Thread = "1/2-13 UNC".parse().unwrap();
    let strength = SaeGrade::Grade5.strength(inches(0.5)).unwrap();
    let value = to_value(strength).unwrap();
    assert_eq!(value["grade"], "sae_j429_5");
    assert_eq!(value["proof_stress"]["unit"], "MPa");
    assert_eq!(value["provenance"]["basis"], "reproduced");
    let loads = to_value(strength.loads(&thread).unwrap()).unwrap();
    assert_eq!(loads["tensile"]["unit"], "N");

    let fit = thread
        .fit("2A".parse().unwrap(), "2B".parse().unwrap())
        .unwrap();
    let value = to_value(fit).unwrap();
    assert_eq!(value["bolt"]["thread"], "1/2-13 UNC-2A");
    assert_eq!(value["bolt"]["pitch_diameter"]["min"]["unit"], "mm");
    assert_eq!(value["nut"]["root_diameter"]["max"], Value::Null);

    let method = ShearMethod::Aisc360 {
        edition: AiscEdition::E2022,
    };
    let shear = bolt_shear(&thread, &strength, &[Zone::Shank, Zone::RunOut], method).unwrap();
    let value = to_value(shear).unwrap();
    assert_eq!(
        (&value["governing_zone"], &value["governing_plane"]),
        (&json!("run_out"), &json!(2))
    );
    assert_eq!(value["design"]["unit"], "N");
    assert_eq!(
        value["cautions"][0]["material_outside_method"]["method"],
        "AISC 360 Table J3.2"
    );

    let form = ShortForm::new(NutFactor::new(0.15, 0.2, 0.25).unwrap(), inches(0.5)).unwrap();
    let preload = form.preload(pound_force_feet(75.0)).unwrap();
    assert_eq!(to_value(preload).unwrap()["max"]["unit"], "N");
    let usage = proof_use(
        preload,
        strength.loads(&thread).unwrap().proof.unwrap(),
        PreloadTarget::Reusable,
    )
    .unwrap();
    assert!(
        to_value(usage).unwrap()["fraction"]["nominal"]
            .as_f64()
            .unwrap()
            > 0.7
    );

    let friction = Friction::new(0.10, 0.12, 0.16).unwrap();
    let form = FrictionForm::shigley(&thread, friction, friction).unwrap();
    let limit = form.yield_point(ksi(92.0), TorsionModel::JisB1083).unwrap();
    let value = to_value(limit).unwrap();
    assert_eq!(value["model"], "jis_b1083");
    assert_eq!(value["form"]["form"], "lead_angle");
    assert_eq!(value["torque"]["min"]["unit"], "N m");
    let stress = form
        .tightening_stress(limit.preload.nominal, TorsionModel::Vdi2230)
        .unwrap();
    assert_eq!(to_value(stress).unwrap()["tension"]["unit"], "MPa");
    let range = VdiPreload::new(limit.preload.max, 1.6)
        .unwrap()
        .range()
        .unwrap();
    assert_eq!(
        to_value(range).unwrap()["method"]["vdi2230"]["tightening_factor"],
        1.6
    );

    let stack = stack();
    let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &thread).unwrap();
    let nut = NutEnd::of(Nut::find(NutStyle::Hex, &thread).unwrap()).unwrap();
    let rules = LengthRules::fabrication(UnitSystem::UsCustomary);
    let selection = LengthSearch::new(&stack, &screws, nut, rules)
        .unwrap()
        .run()
        .unwrap();
    let value = to_value(selection.report(UnitSystem::UsCustomary)).unwrap();
    let first = &value["accepted"][0];
    assert_eq!(first["reasons"], json!([]));
    assert!(value["rejected"][0]["reasons"][0]["code"].is_string());
    assert!(value["cautions"].is_array() && value["not_assessed"] == json!([]));
    assert_eq!(first["length"]["unit"], "mm");
    assert!(first["grip"]["min"]["value"].as_f64().unwrap() > 38.0);
    let plane = stack
        .planes(&selection.best().unwrap().screw)
        .next()
        .unwrap();
    assert_eq!(to_value(plane).unwrap()["after_ply"], 1);
}

/// Inputs of calculations come back as they went, and refuse by the name of the field.
#[test]
fn inputs_of_calculations_read_back() {
    use shankline::preload::{ElasticJoint, FrictionForm, ShortForm};
    use shankline::strength::pin::PinJoint;
    use shankline::tension;
    use shankline::units::newtons_per_millimetre;

    fn again<T>(input: &T, unknown: &str) -> T
    where
        T: serde::Serialize + serde::de::DeserializeOwned + PartialEq + std::fmt::Debug,
    {
        let value = to_value(input).unwrap();
        let back: T = from_value(value.clone()).unwrap();
        assert_eq!(to_value(&back).unwrap(), value);
        let mut spoiled = value;
        spoiled[unknown] = json!(1);
        refused::<T>(spoiled, &[unknown]);
        back
    }

    let mm = millimetres;
    let pin = again(
        &PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0)).unwrap(),
        "slot",
    );
    assert_eq!(pin.gap, mm(1.0));
    refused::<PinJoint>(
        json!({ "diameter": "30 mm", "outer": "12 kN", "inner": "20 mm", "gap": "0 mm" }),
        &["outer", "12 kN"],
    );
    refused::<PinJoint>(
        json!({ "diameter": "30 mm", "outer": "12 mm", "inner": "20 mm", "gap": "-1 mm" }),
        &["gap"],
    );

    again(
        &tension::Layer::new(inches(0.5), ksi(30e3)).unwrap(),
        "name",
    );
    refused::<tension::Layer>(json!({ "thickness": "8 mm", "modulus": 207 }), &["modulus"]);

    let k = newtons_per_millimetre(300e3);
    again(&ElasticJoint::new(mm(1.75), k, 2.0 * k).unwrap(), "plies");
    let read: ElasticJoint =
        from_value(json!({ "pitch": "2 mm", "bolt": "300 kN/mm", "members": "300 kN/mm" }))
            .unwrap();
    assert!((read.stiffness() - 0.5 * k).value.abs() < 1e-3);
    refused::<ElasticJoint>(
        json!({ "pitch": "0 mm", "bolt": "300 kN/mm", "members": "300 kN/mm" }),
        &["pitch"],
    );

    let running = Spread {
        min: newton_metres(2.0),
        nominal: newton_metres(5.0),
        max: newton_metres(8.0),
    };
    let form = ShortForm::new(NutFactor::new(0.15, 0.2, 0.25).unwrap(), mm(16.0)).unwrap();
    let form = again(&form.with_prevailing(running).unwrap(), "lubricant");
    assert_eq!(form.prevailing_torque().max, running.max);
    refused::<ShortForm>(
        json!({
            "nut_factor": { "min": 0.1, "nominal": 0.2, "max": 0.3 },
            "diameter": "16 mm",
            "prevailing": { "min": "5 N m", "nominal": "4 N m", "max": "8 N m" },
        }),
        &["prevailing torque"],
    );

    let friction = Friction::new(0.10, 0.12, 0.16).unwrap();
    let thread: Thread = "M12".parse().unwrap();
    let linear = FrictionForm::linear(&thread, mm(15.0), friction, friction).unwrap();
    let read: FrictionForm = from_value(json!({
        "form": "linear",
        "thread": "M12",
        "bearing_diameter": "15 mm",
        "thread_friction": friction,
        "bearing_friction": friction,
    }))
    .unwrap();
    assert_eq!(read, linear);
    again(&linear, "lubricant");
    refused::<FrictionForm>(
        json!({
            "form": "three_term",
            "thread": "M12",
            "bearing_diameter": "15 mm",
            "thread_friction": friction,
            "bearing_friction": friction,
        }),
        &["thread_diameter"],
    );
}

/// What a person may leave out is none, and given it comes back; what decides may not be left out.
#[test]
fn surroundings_parts_and_tightening_read_back() {
    use shankline::joint::{Environment, JointNut, Tightening};
    use shankline::tables::galvanic::{Exposure, Metal};

    let surroundings = json!({
        "coldest": "-10 C",
        "hottest": "60 C",
        "vibration": true,
        "rotates": false,
        "dangerous_if_lost": false,
        "refits": 2,
        "exposure": "harsh",
    });
    let environment: Environment = from_value(surroundings.clone()).unwrap();
    assert_eq!(environment.exposure, Exposure::Harsh);
    let back: Environment = from_value(to_value(environment).unwrap()).unwrap();
    assert_eq!(back, environment);
    for field in surroundings.as_object().unwrap().keys() {
        let mut without = surroundings.clone();
        without.as_object_mut().unwrap().remove(field);
        refused::<Environment>(without, &[field]);
    }
    let mut damp = surroundings;
    damp["exposure"] = json!("damp");
    refused::<Environment>(damp, &["damp"]);

    let nut: JointNut = from_value(json!({
        "style": "iso_7040",
        "grade": "ISO 898-2 class 8",
        "finish": { "zinc_plated": { "baked": false } },
    }))
    .unwrap();
    assert_eq!(nut.finish, Some(Finish::ZincPlated { baked: false }));
    let bare: JointNut = from_value(json!({ "style": "iso_7040" })).unwrap();
    assert_eq!((bare.grade, bare.finish), (None, None));
    let ply: JointPly =
        from_value(json!({ "name": "lug", "thickness": "5 mm", "metal": "aluminium_2000" }))
            .unwrap();
    assert_eq!(ply.metal, Some(Metal::Aluminium2000));
    let washer: JointWasher =
        from_value(json!({ "style": "iso_7089", "thickness": "2.5 mm" })).unwrap();
    assert_eq!(washer.style, Some(WasherStyle::Iso7089));
    refused::<JointWasher>(json!({ "thickness": "2.5 mm", "count": 1 }), &["count"]);

    assert_eq!(
        from_value::<Tightening>(json!("snug")).unwrap(),
        Tightening::Snug
    );
    let factor = json!({ "min": 0.1, "nominal": 0.2, "max": 0.3 });
    let torque = |value: Value| match from_value(json!({ "torque": value })).unwrap() {
        Tightening::Torque(torque) => torque,
        other => panic!("{other:?}"),
    };
    let least = torque(json!({ "nut_factor": factor, "target": "reusable" }));
    assert_eq!(
        (
            least.relaxation,
            least.prevailing,
            least.settling,
            least.stiffness
        ),
        (None, None, None, None)
    );
    let all = torque(json!({
        "nut_factor": factor,
        "target": { "aisc_j31": { "edition": "2016" } },
        "relaxation": 0.05,
        "prevailing": { "min": "2 N m", "nominal": "5 N m", "max": "8 N m" },
        "settling": "11 um",
        "stiffness": { "bolt": "300 kN/mm", "members": "1200 kN/mm" },
    }));
    let written = to_value(Tightening::Torque(all)).unwrap();
    let back: Tightening = from_value(written.clone()).unwrap();
    assert_eq!(to_value(back).unwrap(), written);
    assert_eq!(all.prevailing.unwrap().max, newton_metres(8.0));
    refused::<Tightening>(json!({ "nut_factor": factor }), &["nut_factor"]);
}

/// Loads and methods: none of what decides is taken for harmless.
#[test]
fn loads_and_methods_are_said_in_full() {
    use shankline::joint::{JointLoad, JointMethods, Prying, Repeats, Slip};
    use shankline::strength::slip::SlipMethod;

    let loads = json!({
        "across": "8 kN",
        "along": "2 kN",
        "repeats": { "between": { "across_least": "-8 kN", "along_least": "0 N", "cycles": 2e6 } },
        "shock_factor": 1.5,
        "load_factor": 1.6,
        "prying": "in_load",
    });
    let load: JointLoad = from_value(loads.clone()).unwrap();
    assert_eq!(
        (load.prying, load.load_factor),
        (Some(Prying::InLoad), Some(1.6))
    );
    let least = match load.repeats {
        Repeats::Between { across_least, .. } => across_least,
        other => panic!("{other:?}"),
    };
    assert_eq!(least, newtons(-8e3));
    assert_eq!(
        from_value::<JointLoad>(to_value(load).unwrap()).unwrap(),
        load
    );
    for field in ["across", "along", "repeats", "shock_factor"] {
        let mut without = loads.clone();
        without.as_object_mut().unwrap().remove(field);
        refused::<JointLoad>(without, &[field]);
    }
    refused::<Repeats>(
        json!({ "between": { "across_least": "0 N" } }),
        &["along_least"],
    );

    let clamped = JointMethods {
        slip: Slip::Resisted(SlipMethod::Stated {
            friction: 0.2,
            safety_factor: 1.5,
        }),
        ..JointMethods::machine_design(2.0)
    };
    let written = to_value(clamped).unwrap();
    assert_eq!(
        from_value::<JointMethods>(written.clone()).unwrap(),
        clamped
    );
    for field in ["slip", "margin", "level", "shear", "tension", "plies"] {
        let mut without = written.clone();
        without.as_object_mut().unwrap().remove(field);
        refused::<JointMethods>(without, &[field]);
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]
    /// What is written reads back to the 12 digits it is written with, and prints the same again.
    #[test]
    fn lengths_read_back(value in 1e-6..1e3f64) {
        for length in [inches(value), millimetres(value)] {
            let text = serde_json::to_string(&Spread::exact(length)).unwrap();
            let read: Spread<Length> = from_str(&text).unwrap();
            prop_assert!((read.nominal - length).abs() <= 6e-12 * length);
            prop_assert_eq!(serde_json::to_string(&read).unwrap(), text);
        }
    }
}

/// Whatever derives its reading and has fields of its own refuses lists and unknown fields by two words. What they do is
/// seen in `tests/every_input.rs`, at every object of a document; here no type is without them, in a document or not.
#[test]
fn every_derived_input_refuses_lists_and_unknown_fields() {
    fn sources(folder: &std::path::Path, found: &mut Vec<std::path::PathBuf>) {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                sources(&path, found);
            } else if path.extension().is_some_and(|end| end == "rs") {
                found.push(path);
            }
        }
    }
    let mut files = Vec::new();
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    sources(&root, &mut files);
    let mut read = 0;
    for file in files {
        let text = std::fs::read_to_string(&file).unwrap();
        // Items stand apart by a blank line; examples in comments do not count.
        let code: String = text
            .lines()
            .filter(|line| !line.trim_start().starts_with("//"))
            .flat_map(|line| [line, "\n"])
            .collect();
        for item in code.split("\n\n") {
            let Some(attributes_end) = item.find("struct ").or_else(|| item.find("enum ")) else {
                continue;
            };
            let (attributes, item) = item.split_at(attributes_end);
            let derives = attributes.contains("derive(") && attributes.contains("Deserialize");
            let by_another = attributes.contains("from = ");
            // Braces within the braces of an enum are fields of a variant.
            let depth = if item.starts_with("enum") { 2 } else { 1 };
            let has_fields = item
                .lines()
                .filter(|line| !line.trim_start().starts_with('#'))
                .filter(|line| line.ends_with('{'))
                .count()
                >= depth;
            if !derives || by_another || !has_fields {
                continue;
            }
            read += 1;
            for word in ["crate = \"crate::objects\"", "deny_unknown_fields"] {
                assert!(
                    attributes.contains(word),
                    "{}: {word} is missing of {item}",
                    file.display()
                );
            }
        }
    }
    assert!(read >= 50, "only {read} were found");
}

/// Of types that are in no document.
#[test]
fn misspelt_fields_are_refused_in_inputs_of_calculations() {
    use shankline::joint::ToleranceMethod;
    use shankline::strength::group::{NeutralAxis, PlaneLoad};
    refused::<PlaneLoad>(
        json!({"force_x": "1 N", "force_y": "0 N", "at": {"x": "0 mm", "y": "0 mm"}, "moment": "0 N m", "torque": 1}),
        &["torque"],
    );
    refused::<NeutralAxis>(json!({"lowest_edge": {"y": "1 mm", "x": "1 mm"}}), &["x"]);
    refused::<NeutralAxis>(json!({"lowest_edge": ["1 mm"]}), &["sequence"]);
    refused::<ToleranceMethod>(
        json!({"root_sum_square": {"sigmas_per_tolerance": 3.0, "confidence": 0.95, "sigma": 2.0}}),
        &["sigma"],
    );
}

/// What was read can be written and read again, at the end of the range of numbers too.
#[test]
fn the_largest_quantities_read_back() {
    #[derive(Debug, PartialEq, serde::Serialize, serde::Deserialize)]
    struct Ends {
        #[serde(with = "quantity")]
        length: Length,
        #[serde(with = "quantity")]
        area: shankline::units::Area,
        #[serde(with = "quantity")]
        stress: shankline::units::Stress,
        #[serde(with = "quantity")]
        angle: shankline::units::Angle,
        #[serde(with = "quantity")]
        stiffness: shankline::units::Stiffness,
    }
    let text = r#"{"length": {"value": 1e308, "unit": "in"}, "area": {"value": 1e308, "unit": "in2"},
        "stress": {"value": 1e301, "unit": "ksi"}, "angle": {"value": 1.7e308, "unit": "rad"},
        "stiffness": {"value": 1e302, "unit": "kip/in"}}"#;
    let read: Ends = from_str(text).unwrap();
    let again: Ends = from_str(&serde_json::to_string(&read).unwrap()).unwrap();
    let near = |a: f64, b: f64| (a / b - 1.0).abs() < 1e-9;
    assert!(near(read.length.value, again.length.value));
    assert!(near(read.area.value, again.area.value));
    assert!(near(read.angle.value, again.angle.value));
    assert!(near(read.stress.value, again.stress.value));
    assert!(near(read.stiffness.value, again.stiffness.value));
}
