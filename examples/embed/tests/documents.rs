//! The answers are those that the library keeps in `examples/data`, to the bit; and what is refused says where.

use serde_json::{Value, json};
use shankline_embed::{Answers, Cases, QUESTIONS, answer, sweep};

const JOINTS: [&str; 3] = ["davit_socket", "seesaw_pivot", "winch_foot"];

fn kept(name: &str) -> String {
    std::fs::read_to_string(format!("../data/{name}")).unwrap()
}

fn document(name: &str) -> Value {
    serde_json::from_str(&kept(name)).unwrap()
}

fn joint(name: &str) -> Value {
    document(&format!("{name}.json"))
}

fn ask(question: &str, request: &Value) -> Vec<u8> {
    match answer(question, request.to_string().as_bytes()) {
        Ok(answer) => answer,
        Err(refusal) => panic!("{}", String::from_utf8(refusal.document()).unwrap()),
    }
}

fn asked(question: &str, request: &Value) -> Value {
    serde_json::from_slice(&ask(question, request)).unwrap()
}

fn refused(question: &str, request: &str) -> Value {
    let refusal = answer(question, request.as_bytes()).unwrap_err();
    serde_json::from_slice(&refusal.document()).unwrap()
}

#[test]
fn the_kept_answers_come_through() {
    for name in JOINTS {
        let joint = joint(name);
        let report = asked("check", &json!({ "joint": joint, "units": "si" }));
        assert_eq!(report, document(&format!("{name}_report.json")));
        let verdict = asked("verdict", &json!({ "joint": joint, "units": "si" }));
        for field in ["word", "scope", "headline"] {
            assert_eq!(verdict[field], report[field]);
        }
        assert_eq!(verdict["governing"]["mode"], report["checks"][0]["mode"]);
        // The report has twelve digits of it.
        let used = |of: &Value| of["utilisation"].as_f64().unwrap();
        let [own, of_report] = [&verdict["governing"], &report["checks"][0]].map(used);
        assert!((own - of_report).abs() <= 1e-12, "{own} {of_report}");
        assert_eq!(
            verdict["cautions"].as_array().unwrap().len(),
            report["cautions"].as_array().unwrap().len()
        );
        let explain = |show: &str, format: &str| {
            let request = json!({ "joint": joint, "show": show, "format": format, "units": "si" });
            String::from_utf8(ask("explain", &request)).unwrap()
        };
        assert_eq!(
            explain("report", "text"),
            kept(&format!("{name}_report.txt"))
        );
        assert_eq!(
            explain("working", "markdown"),
            kept(&format!("{name}_working.md"))
        );
        for (show, format) in [
            ("report", "markdown"),
            ("working", "text"),
            ("working", "latex"),
            ("sheet", "text"),
        ] {
            assert!(explain(show, format).len() > 500, "{show} {format}");
        }
    }
    let request = document("walkway_hanger_design.json");
    let designs = document("walkway_hanger_designs.json");
    let mut request = request.clone();
    request["units"] = "si".into();
    assert_eq!(asked("design", &request), designs);
}

/// A bolt that has a fault, and all bolts together that tear a block out: the worse of the two governs.
#[test]
fn the_worse_of_a_bolt_and_all_together_governs() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/callers/bracket.json");
    let text = std::fs::read_to_string(path).unwrap();
    let mut connection: Value = serde_json::from_str(&text).unwrap();
    connection["combinations"] = json!([]);
    connection["cases"].as_array_mut().unwrap().truncate(1);
    connection["bolts"].as_array_mut().unwrap().truncate(4);
    for ply in connection["joint"]["stack"]["plies"]
        .as_array_mut()
        .unwrap()
    {
        ply["thickness"] = "10 +/- 0.5 mm".into();
    }
    let case = &mut connection["cases"][0];
    (case["force_x"], case["x"]) = ("0 kN".into(), "0 mm".into());
    for (force, bolt, mode) in [
        ("-200 kN", json!(1), "bolt_shear"),
        ("-300 kN", json!(null), "block_shear"),
    ] {
        connection["cases"][0]["force_y"] = force.into();
        let found = asked("check_connection", &json!({ "connection": connection }));
        assert_eq!(found["verdict"]["word"], "does_not_hold");
        assert!(!found["faults"].as_array().unwrap().is_empty());
        assert_eq!(found["governing"]["bolt"], bolt, "{force}");
        assert_eq!(found["governing"]["check"]["mode"], mode, "{force}");
    }
}

#[test]
fn every_question_is_answered() {
    let joint = joint("seesaw_pivot");
    let mut connection = document("mezzanine_bracket.json");
    connection["cases"] = json!([{
        "name": "crowd", "force_x": "0 kN", "force_y": "-20 kN", "force_z": "0 kN",
        "moment_x": "0 N m", "moment_y": "0 N m", "moment_z": "0 N m", "x": "0 mm", "y": "0 mm", "z": "0 mm",
    }]);
    let lengths = asked("lengths", &json!({ "joint": joint }));
    assert!(!lengths["accepted"].as_array().unwrap().is_empty());
    assert!(asked("assembly", &json!({ "joint": joint }))["layers"].is_array());
    for (picture, format, has) in [
        ("section", "svg", "<svg "),
        ("section", "dxf", "SECTION"),
        ("checks", "svg", "<svg "),
        ("lengths", "svg", "<svg "),
    ] {
        let request = json!({ "joint": joint, "picture": picture, "format": format, "units": "us_customary" });
        let drawn = String::from_utf8(ask("draw", &request)).unwrap();
        assert!(drawn.contains(has), "{picture} {format}");
    }
    let found = asked("check_connection", &json!({ "connection": connection }));
    assert!(
        found["headline"].as_str().unwrap().starts_with("HOLDS"),
        "{}",
        found["headline"]
    );
    assert_eq!(found["verdict"]["word"], "holds");
    assert_eq!(found["governing"]["case"], "crowd");
    assert_eq!(found["governing"]["holds"], true);
    assert!(!found["cautions"].as_array().unwrap().is_empty());
    assert_eq!(found["missing"], json!([]));
    assert_eq!(found["faults"], json!([]));
    let mut open = connection.clone();
    open["joint"]["set_aside"] = json!([]);
    let found = asked("check_connection", &json!({ "connection": open }));
    assert_eq!(found["verdict"]["word"], "undecided");
    let missing = found["missing"].as_array().unwrap();
    assert!(
        missing
            .iter()
            .any(|own| own["need"] == "held_side" && own["place"] == json!({ "ply": 1 })),
        "{missing:?}"
    );
    assert!(missing.iter().all(|own| own["text"].is_string()));
    let mut worse = connection.clone();
    worse["cases"][0]["force_y"] = "-20 MN".into();
    let found = asked("check_connection", &json!({ "connection": worse }));
    assert_eq!(found["verdict"]["word"], "does_not_hold");
    assert_eq!(found["governing"]["holds"], false);
    // With one case and one word for all, what governs is what is used most.
    for force in ["-20 kN", "-20 MN"] {
        connection["cases"][0]["force_y"] = force.into();
        let found = asked("check_connection", &json!({ "connection": connection }));
        let (governing, verdict) = (&found["governing"], &found["verdict"]);
        assert_eq!(governing["check"]["utilisation"], verdict["utilisation"]);
    }
    for format in ["svg", "dxf"] {
        assert!(
            ask(
                "draw_connection",
                &json!({ "connection": connection, "format": format })
            )
            .len()
                > 1000
        );
    }
    let lists = asked("catalogue", &json!({}));
    let nuts = lists["families"]["nut_styles"].as_array().unwrap();
    assert!(nuts.contains(&json!({ "code": "iso_4032", "label": "hex nut ISO 4032" })));
    let fitting = asked("catalogue", &json!({ "thread": "M12" }));
    assert!(fitting["products"][0]["grades"][0]["code"].is_string());
    assert_eq!(fitting["holes"].as_array().unwrap().len(), 3);
    let version = asked("version", &json!({}));
    let names: Vec<&str> = QUESTIONS.iter().map(|(name, _)| *name).collect();
    assert_eq!(version["questions"], json!(names));
    assert!(version["cautions"].as_array().unwrap().len() > 1);
}

#[cfg(feature = "schema")]
#[test]
fn the_kept_schemas_come_through() {
    for name in [
        "joint",
        "design_space",
        "report",
        "length_report",
        "design_report",
        "connection",
    ] {
        assert_eq!(
            ask("schema", &json!({ "document": name })),
            kept(&format!("{name}.schema.json")).into_bytes()
        );
    }
    let wrong = refused("schema", r#"{"document": "bolt"}"#);
    assert_eq!(wrong["place"]["field"], "document");
}

/// As many rows as the file of that name has, and of a washer every size.
#[cfg(feature = "tables")]
#[test]
fn every_row_of_the_tables_comes_through() {
    let names = asked("tables", &json!({}));
    for name in names.as_array().unwrap() {
        let name = name.as_str().unwrap();
        let rows = asked("tables", &json!({ "table": name }));
        let file = format!("../../tables/{name}.csv");
        // A row is a line, below that of the names.
        let lines = std::fs::read_to_string(&file).unwrap().lines().count();
        assert_eq!(rows.as_array().unwrap().len(), lines - 1, "{name}");
    }
    let washers = asked("tables", &json!({ "table": "washers_metric" }));
    assert_eq!(washers[0]["nominal_diameter"]["unit"], "mm");
    assert_eq!(
        refused("tables", r#"{"table": "bolts"}"#)["code"],
        "unknown_name"
    );
}

#[test]
fn a_refusal_says_what_and_where() {
    let text = json!({ "joint": joint("davit_socket") }).to_string();
    let spoiled = |right: &str, wrong: &str| {
        let spoiled = text.replacen(right, wrong, 1);
        assert_ne!(spoiled, text, "{right}");
        refused("check", &spoiled)
    };
    let no_force = spoiled(r#""across":"4 kN""#, r#""across":"4 mm""#);
    assert_eq!(
        (&no_force["code"], &no_force["place"]["field"]),
        (&json!("request"), &json!("joint.load.across"))
    );
    assert!(no_force["text"].as_str().unwrap().contains("4 mm"));
    assert_eq!(no_force["place"]["line"], 1);
    assert!(no_force["place"]["column"].as_u64().unwrap() > 100);
    let misspelt = spoiled(r#""across""#, r#""acros""#);
    assert_eq!(misspelt["place"]["field"], "joint.load.acros");
    let no_thread = spoiled("\"M16\"", "\"M16.3\"");
    assert_eq!(no_thread["place"]["field"], "joint.bolt.thread");
    // A value that is wrong as a whole, whether another stands behind it or not, and one that is missing.
    for (right, wrong, field) in [
        (r#""12 +/- 0.3 mm""#, r#""10 kN""#, "joint.stack.plies[0]"),
        (r#""25 +/- 0.3 mm""#, r#""10 kN""#, "joint.stack.plies[1]"),
        (r#""name":"deck doubler","#, "", "joint.stack.plies[1]"),
        (
            r#""shear_planes":[1]"#,
            r#""shear_planes":[1,true]"#,
            "joint.stack.shear_planes[1]",
        ),
        (
            r#""shear_planes":[1]"#,
            r#""shear_planes":1"#,
            "joint.stack.shear_planes",
        ),
        (
            r#""count":1"#,
            r#""count":-1"#,
            "joint.stack.washers_under_nut.count",
        ),
        (
            r#""coldest":"-15 C""#,
            r#""coldest":"-15""#,
            "joint.environment.coldest",
        ),
        (r#""title":"#, r#""name":"#, "joint.name"),
    ] {
        assert_eq!(spoiled(right, wrong)["place"]["field"], field);
    }
    // What only the whole joint can say has no place, but the amounts.
    let negative = spoiled(r#""across":"4 kN""#, r#""across":"-4 kN""#);
    assert_eq!(
        (&negative["code"], &negative["place"]),
        (&json!("out_of_range"), &Value::Null)
    );
    assert_eq!(negative["value"]["value"], -4000.0);
    for (question, request, code) in [
        ("check", "", "request_json"),
        ("check", "{\"joint\": ", "request_json"),
        ("check", "[{}]", "request"),
        ("check", "{} {}", "request"),
        ("chek", "{}", "question"),
        (
            "draw",
            &json!({ "joint": joint("davit_socket"), "picture": "checks", "format": "dxf" })
                .to_string(),
            "request",
        ),
    ] {
        assert_eq!(
            refused(question, request)["code"],
            code,
            "{question} {request}"
        );
    }
    let deep = format!("{{\"joint\": {}", "[".repeat(100_000));
    assert_eq!(refused("check", &deep)["code"], "request");
}

fn answers<'a>(
    words: &'a mut [u8],
    modes: &'a mut [u8],
    utilisations: &'a mut [f64],
) -> Answers<'a> {
    Answers {
        words,
        modes,
        utilisations,
    }
}

#[test]
fn a_sweep_is_the_check_of_every_case() {
    let request = json!({ "joint": joint("seesaw_pivot") });
    let across: Vec<f64> = (0..1000).map(|step| 40.0 * f64::from(step)).collect();
    let along: Vec<f64> = (0..1000)
        .map(|step| if step % 7 == 0 { 500.0 } else { -100.0 })
        .collect();
    let none = vec![0.0; 1000];
    let mut words = vec![9; 1000];
    let mut modes = vec![9; 1000];
    let mut utilisations = vec![9.0; 1000];
    let cases = Cases {
        across: &across,
        along: &along,
        across_least: None,
        along_least: Some(&along),
    };
    let text = request.to_string();
    sweep(
        text.as_bytes(),
        cases,
        answers(&mut words, &mut modes, &mut utilisations),
    )
    .unwrap();

    let lists = asked("catalogue", &json!({}));
    let joint: shankline::joint::Joint = serde_json::from_value(request["joint"].clone()).unwrap();
    let mut prepared = joint.prepare().unwrap();
    for at in (0..1000).step_by(37) {
        let (across, along) = [across[at], along[at]]
            .map(shankline::units::newtons)
            .into();
        let case = shankline::joint::BoltCase::steady(across, along);
        let own = prepared.answer(&case).unwrap();
        assert_eq!(own.utilisation.value.to_bits(), utilisations[at].to_bits());
        let word = ["undecided", "holds", "does_not_hold"][usize::from(words[at])];
        assert_eq!(serde_json::to_value(own.word).unwrap(), word);
        let mode = own
            .mode
            .map_or(Value::Null, |mode| serde_json::to_value(mode).unwrap());
        let listed = lists["families"]["modes"].get(usize::from(modes[at]));
        assert_eq!(listed.map_or(&Value::Null, |own| &own["code"]), &mode);
    }

    // The case that makes no sense is named; those before it stand, and nothing behind it is good.
    for (bad, column) in [
        (300, f64::NAN),
        (511, -1.0),
        (999, f64::INFINITY),
        (0, f64::NAN),
    ] {
        let mut across = across.clone();
        across[bad] = column;
        let mut least = across.clone();
        least[bad] = 0.0;
        let cases = Cases {
            across: &across,
            along: &none,
            across_least: Some(&least),
            along_least: None,
        };
        let refusal = sweep(
            text.as_bytes(),
            cases,
            answers(&mut words, &mut modes, &mut utilisations),
        )
        .unwrap_err();
        assert_eq!(refusal.place().unwrap().case, Some(bad));
        assert!(
            words[bad..].iter().all(|&word| word == 0)
                && utilisations[bad..].iter().all(|&used| used == 0.0)
        );
        assert!(utilisations[1..bad.max(1)].iter().all(|&used| used > 0.0));
    }
    let short = Cases {
        across: &across,
        along: &none[1..],
        across_least: None,
        along_least: None,
    };
    assert!(
        sweep(
            text.as_bytes(),
            short,
            answers(&mut words, &mut modes, &mut utilisations)
        )
        .is_err()
    );
    assert!(words.iter().all(|&word| word == 0));
}
