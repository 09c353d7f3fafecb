//! The schemas in `examples/data` are current; spoiled requests and answers, what the crate says of them, and random
//! documents are laid out for `.ci/schemas.py`, which holds them against the schemas.
//!
//! `UPDATE_EXAMPLES=1 cargo test --all-features --test schema` rewrites the schemas.
#![cfg(feature = "schema")]

use std::fmt::Write as _;
use std::path::Path;

use schemars::generate::SchemaSettings;
use serde_json::{Value, json};
use shankline::joint::{DesignReport, DesignSpace, Joint, LengthReport, Report, schema};
use shankline::units::UnitSystem;

#[path = "support/verdicts.rs"]
mod verdicts;

use verdicts::{for_all, selection, space};

#[test]
fn the_schemas_are_current() {
    let named = schema::NAMES.map(|name| (name, schema::named(name).unwrap()));
    let assembly = ("assembly", shankline::assembly::schema());
    for (name, current) in named.into_iter().chain([assembly]) {
        let file = format!("examples/data/{name}.schema.json");
        if std::env::var_os("UPDATE_EXAMPLES").is_some() {
            std::fs::write(&file, &current).unwrap();
        }
        let kept = std::fs::read_to_string(&file).unwrap_or_default();
        assert!(
            kept == current,
            "{file}: run this test with UPDATE_EXAMPLES=1"
        );
    }
}

fn lay_out(name: &str, lines: &str) {
    let path = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    std::fs::write(path, lines).unwrap();
}

#[test]
fn random_documents_are_laid_out() {
    let lines = std::cell::RefCell::new(String::new());
    for_all(150, |joint, dice| {
        let mut lines = lines.borrow_mut();
        let document = serde_json::to_value(joint).unwrap();
        writeln!(
            lines,
            "{}",
            json!({ "schema": "joint", "document": document })
        )
        .unwrap();
        let units = if dice.now_and_then(50.0) {
            UnitSystem::Si
        } else {
            UnitSystem::UsCustomary
        };
        let assembly = joint
            .check()
            .and_then(|verdict| joint.assembly(&verdict.candidate));
        if let Ok(assembly) = assembly {
            let document = serde_json::to_value(&assembly).unwrap();
            let line = json!({ "schema": "assembly", "document": document });
            writeln!(lines, "{line}").unwrap();
        }
        if let Ok(report) = joint.report(units) {
            let document = serde_json::to_value(&report).unwrap();
            let line = json!({ "schema": "report", "document": document });
            writeln!(lines, "{line}").unwrap();
        }
        if let Some(selection) = selection(joint) {
            let document = serde_json::to_value(selection.report(units)).unwrap();
            let line = json!({ "schema": "length_report", "document": document });
            writeln!(lines, "{line}").unwrap();
        }
        let designs = joint.design(&space(joint, dice), &[]);
        if let Ok(report) = designs.and_then(|designs| designs.report(units)) {
            let document = serde_json::to_value(&report).unwrap();
            let line = json!({ "schema": "design_report", "document": document });
            writeln!(lines, "{line}").unwrap();
        }
        Ok(())
    });
    lay_out("documents.jsonl", &lines.borrow());
    // The other way: a request that is written, an answer that is read, in documents of one's own.
    let written = SchemaSettings::draft2020_12().for_serialize();
    let written = written.into_generator().into_root_schema_for::<Joint>();
    lay_out("written_joint.schema.json", &written.as_value().to_string());
    let read = || {
        SchemaSettings::draft2020_12()
            .for_deserialize()
            .into_generator()
    };
    let report = read().into_root_schema_for::<Report>();
    lay_out("read_report.schema.json", &report.as_value().to_string());
    let lengths = read().into_root_schema_for::<LengthReport>();
    lay_out(
        "read_length_report.schema.json",
        &lengths.as_value().to_string(),
    );
    let designs = read().into_root_schema_for::<DesignReport>();
    lay_out(
        "read_design_report.schema.json",
        &designs.as_value().to_string(),
    );
}

/// Where something stands in a document.
type At = Vec<Step>;

#[derive(Clone)]
enum Step {
    Key(String),
    Index(usize),
}

fn places(value: &Value, at: &mut At, found: &mut Vec<At>) {
    found.push(at.clone());
    match value {
        Value::Object(fields) => {
            for (key, inner) in fields {
                at.push(Step::Key(key.clone()));
                places(inner, at, found);
                at.pop();
            }
        }
        Value::Array(list) => {
            for (index, inner) in list.iter().enumerate() {
                at.push(Step::Index(index));
                places(inner, at, found);
                at.pop();
            }
        }
        _ => {}
    }
}

fn reach<'a>(value: &'a mut Value, at: &[Step]) -> &'a mut Value {
    at.iter().fold(value, |value, step| match step {
        Step::Key(key) => &mut value[key.as_str()],
        Step::Index(index) => &mut value[*index],
    })
}

/// What a hand or a program may make of a value, and what that is called.
fn spoilt(value: &Value, key: Option<&str>) -> Vec<(&'static str, Value)> {
    let mut all = vec![("null", Value::Null)];
    let other_unit = |unit: &str| {
        let unit = unit.trim_end();
        if unit.ends_with("mm") || unit.ends_with("in") {
            "kN"
        } else {
            "mm"
        }
    };
    match value {
        Value::Object(fields) => {
            all.push(("a list for an object", json!([])));
            all.push(("text for an object", json!("something")));
            all.push(("a number for an object", json!(1)));
            if fields.is_empty() {
                all.push(("one thing too many", json!({ "invented": 1 })));
            }
        }
        Value::Array(_) => {
            all.push(("an object for a list", json!({})));
            all.push(("text for a list", json!("something")));
        }
        Value::String(text) => {
            all.push(("a number for text", json!(12)));
            all.push(("a list for text", json!([text])));
            all.push(("an object for text", json!({ "value": text })));
            all.push(("yes for text", json!(true)));
            if key == Some("unit") {
                all.push(("a unit of another kind", json!(other_unit(text))));
                all.push(("an unknown unit", json!("furlong")));
            } else if !matches!(key, Some("title" | "name" | "reason" | "value" | "thread")) {
                let number = text.trim_end_matches(|c: char| !c.is_ascii_digit());
                if text.starts_with(|c: char| c.is_ascii_digit()) && text != number {
                    let text = format!("{number} {}", other_unit(text));
                    all.push(("a unit of another kind", json!(text)));
                    all.push(("an unknown unit", json!(format!("{number} furlong"))));
                    all.push(("no unit", json!(number)));
                    all.push(("a comma for the point", json!(format!("1,5{}", &text[1..]))));
                } else {
                    all.push(("an unknown word", json!(format!("{text}_of_old"))));
                    all.push(("capitals", json!(text.to_uppercase())));
                }
            } else if key == Some("thread") {
                all.push(("an unknown word", json!("twelve")));
            }
        }
        Value::Number(number) => {
            all.push(("text for a number", json!(number.to_string())));
            all.push(("a list for a number", json!([number])));
            all.push(("an object for a number", json!({ "value": number })));
            if number.is_u64() {
                all.push(("less than zero", json!(-1)));
                all.push(("no whole number", json!(1.5)));
            }
        }
        Value::Bool(flag) => {
            all.push(("text for yes or no", json!(flag.to_string())));
            all.push(("a number for yes or no", json!(u8::from(*flag))));
        }
        Value::Null => {
            all.push(("a list for nothing", json!([])));
            all.push(("a number for nothing", json!(7)));
        }
    }
    all
}

/// An answer with one element in each of its lists: the others are of the same kind, and cost time.
fn shortened(answer: Value) -> Value {
    match answer {
        Value::Array(list) => list.into_iter().take(1).map(shortened).collect(),
        Value::Object(fields) => {
            let fields = fields.into_iter();
            Value::Object(fields.map(|(key, own)| (key, shortened(own))).collect())
        }
        other => other,
    }
}

const SPELLINGS: &[&str] = &[
    "12 mm",
    "12mm",
    " 12 mm ",
    "12. mm",
    ".5 in",
    "+5 mm",
    "-5 mm",
    "5/8 in",
    "1-1/2 in",
    "1 1/2 in",
    "1 - 1/2 in",
    "1- 1/2 in",
    "1 -1/2 in",
    "5 /8 in",
    "5/ 8 in",
    "-5/8 in",
    "+5/8 in",
    "5/0 in",
    "5/08 in",
    "1/2/3 in",
    "1e3 mm",
    "1.2.3 mm",
    "1,5 mm",
    "1 000 mm",
    "12 m m",
    "12 MM",
    "12 Mm",
    "1 IN",
    "1 Inch",
    "1 inches",
    "1\"",
    "1 \u{2033}",
    "12 mm.",
    "12 mm -",
    "12 .mm",
    "12 mm 3",
    "mm",
    "",
    " ",
    "12",
    "12 x",
    "12\tmm",
    "12 \u{b5}m",
    "NaN mm",
    "inf mm",
    "12 kN",
    "12 kn",
    "12 KN",
    "12 k N",
    "9000 lbf",
    "9000 LBF",
    "9000 lb",
    "9 kip",
    "9 kips",
    "12 N",
    "12 MN",
    "20 +/- 0.3 mm",
    "20 mm +/- 0.3 mm",
    "20 mm +/- 0.3",
    "20 mm \u{b1} 0.3 mm",
    "20 mm +0.1/-0.2",
    "20 +0.1 -0.2 mm",
    "20 mm +0.1/-0",
    "20 mm +0.1",
    "20 mm -0.1",
    "20 +0.1/-0.2",
    "20 mm +0.1 mm/-0.2 mm",
    "20 mm +0.1/0.2",
    "20 mm +-0.1/-0.2",
    "20 mm +/- -0.3",
    "1/2 +/- 1/64 in",
    "1-1/2 in +1/64/-1/32",
    "1-1/2 +/- 1/64 in",
    "20 mm +0.1 / -0.2",
    "20 mm + 0.1 - 0.2",
    "20 mm +0.1-0.2",
    "20 mm +0.1/\u{2212}0.2",
    "\u{2212}5 mm",
    "20 mm +/- 1 kN",
    "20 mm +/- 0.01 in",
    "+20 +/- 1 mm",
    "20 mm +/-",
    "+/- 1 mm",
    "12 kN +/- 1 kN",
    "12 kN \u{b1} 500 N",
];

/// What is spoiled, with its schema.
fn requests_and_answers() -> Vec<(&'static str, Value)> {
    let mut requests: Vec<(&'static str, Value)> = Vec::new();
    let read = |name: &str| -> Value {
        let text = std::fs::read_to_string(format!("examples/data/{name}.json")).unwrap();
        serde_json::from_str(&text).unwrap()
    };
    for name in ["davit_socket", "seesaw_pivot", "winch_foot"] {
        requests.push(("joint", read(name)));
    }
    let design = read("walkway_hanger_design");
    requests.push(("joint", design["joint"].clone()));
    requests.push(("design_space", design["space"].clone()));
    let written = std::cell::RefCell::new(Vec::new());
    for_all(4, |joint, _| {
        let value = serde_json::to_value(joint).unwrap();
        written.borrow_mut().push(("joint", value));
        Ok(())
    });
    requests.append(&mut written.borrow_mut());
    // Answers, by the schemas of what is read; of a design the lists alone, for its best joint is a report.
    requests.push(("read_report", shortened(read("winch_foot_report"))));
    let davit: Joint = serde_json::from_value(requests[0].1.clone()).unwrap();
    let lengths = selection(&davit).unwrap().report(UnitSystem::Si);
    let lengths = serde_json::to_value(lengths).unwrap();
    requests.push(("read_length_report", shortened(lengths)));
    let mut designs = shortened(read("walkway_hanger_designs"));
    designs["best"] = Value::Null;
    requests.push(("read_design_report", designs));
    requests
}

#[test]
fn spoiled_documents_are_laid_out() {
    let requests = requests_and_answers();
    let mut lines = String::new();
    let (mut count, mut refused) = (0, 0);
    let mut add = |schema: &str, kind: &str, at: &[Step], document: &Value| {
        let text = document.to_string();
        let error = match schema {
            "joint" => serde_json::from_str::<Joint>(&text).err(),
            "read_report" => serde_json::from_str::<Report>(&text).err(),
            "read_length_report" => serde_json::from_str::<LengthReport>(&text).err(),
            "read_design_report" => serde_json::from_str::<DesignReport>(&text).err(),
            _ => serde_json::from_str::<DesignSpace>(&text).err(),
        };
        count += 1;
        refused += usize::from(error.is_some());
        let mut path = String::new();
        for step in at {
            match step {
                Step::Key(key) => write!(path, "/{key}").unwrap(),
                Step::Index(index) => write!(path, "/{index}").unwrap(),
            }
        }
        let line = json!({
            "schema": schema, "kind": kind, "at": path,
            "refusal": error.map(|error| error.to_string()), "document": document,
        });
        writeln!(lines, "{line}").unwrap();
    };
    // Quantities as people write them, rightly and wrongly: by the unit patterns and by the crate.
    for spelling in SPELLINGS {
        for field in [
            "/stack/plies/0/thickness",
            "/stack/plies/0/hole",
            "/load/across",
        ] {
            let mut document = requests[0].1.clone();
            *document.pointer_mut(field).unwrap() = json!(spelling);
            let at = [Step::Key(field[1..].into())];
            add("joint", "a spelling of a quantity", &at, &document);
        }
    }
    for (schema, request) in &requests {
        let mut all = Vec::new();
        places(request, &mut At::new(), &mut all);
        for at in &all {
            // The joint in an answer is a request, which is spoiled by itself; the schema of the answer does not repeat it.
            let of_joint = |step: &Step| matches!(step, Step::Key(key) if key == "joint");
            if schema.starts_with("read_") && at.iter().any(of_joint) {
                continue;
            }
            let mut copy = request.clone();
            let value = reach(&mut copy, at).clone();
            let key = match at.last() {
                Some(Step::Key(key)) => Some(key.as_str()),
                _ => None,
            };
            for (kind, spoilt) in spoilt(&value, key) {
                let mut document = request.clone();
                *reach(&mut document, at) = spoilt;
                add(schema, kind, at, &document);
            }
            let Value::Object(fields) = &value else {
                continue;
            };
            let changed = |change: &dyn Fn(&mut serde_json::Map<String, Value>)| {
                let mut document = request.clone();
                if let Value::Object(fields) = reach(&mut document, at) {
                    change(fields);
                }
                document
            };
            for key in fields.keys() {
                let at = [at.clone(), vec![Step::Key(key.clone())]].concat();
                let document = changed(&|fields| {
                    fields.remove(key);
                });
                add(schema, "a missing field", &at, &document);
                let document = changed(&|fields| {
                    let inner = fields.remove(key).unwrap_or_default();
                    fields.insert(format!("{key}s"), inner);
                });
                add(schema, "a misspelt key", &at, &document);
            }
            let document = changed(&|fields| {
                fields.insert("colour".into(), json!("red"));
            });
            add(schema, "an unknown key", at, &document);
        }
    }
    assert!(count > 1000 && refused > 1000, "{refused} of {count}");
    lay_out("spoiled.jsonl", &lines);
}
