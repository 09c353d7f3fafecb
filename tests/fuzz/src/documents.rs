//! Documents: what is read is written and read again the same, and a joint in it is sound.

use serde::{Serialize, de::DeserializeOwned};
use serde_json::{Map, Value, json};
use shankline::connection::Connection;
use shankline::joint::{DesignReport, DesignSpace, Joint, LengthReport, Report};

use crate::any_joint::Dice;
use crate::{Random, finite, row, sound, texts};

pub fn run(input: &[u8]) -> Result<(), String> {
    let Ok(text) = core::str::from_utf8(input) else {
        return Ok(());
    };
    // The choices of what is done to a joint depend on the document alone.
    let choices = row(&input[..input.len().min(64)]);
    if let Some(joint) = again::<Joint>(text)? {
        sound::joint(&joint, &mut Dice::new(&choices))?;
    }
    again::<Report>(text)?;
    again::<LengthReport>(text)?;
    again::<DesignReport>(text)?;
    if let Some(connection) = again::<Connection>(text)? {
        if let Ok(verdict) = connection.check() {
            finite(&format!("{verdict:?}"))?;
        }
    }
    again::<DesignSpace>(text)?;
    let Ok(Value::Object(mut both)) = serde_json::from_str(text) else {
        return Ok(());
    };
    let (Some(joint), Some(space)) = (both.remove("joint"), both.remove("space")) else {
        return Ok(());
    };
    let joint = serde_json::from_value::<Joint>(joint);
    let space = serde_json::from_value::<DesignSpace>(space);
    if let (Ok(joint), Ok(space)) = (joint, space) {
        if let Ok(design) = joint.design(&space, &[]) {
            let report = design
                .report(shankline::units::UnitSystem::Si)
                .map_err(|why| format!("no report: {why}"))?;
            let text = serde_json::to_string(&report).map_err(|why| why.to_string())?;
            again::<DesignReport>(&text)?.ok_or("the report of a design is not read back")?;
        }
    }
    Ok(())
}

/// What is read is written and read again the same; nothing if it is not read.
fn again<T: Serialize + DeserializeOwned>(text: &str) -> Result<Option<T>, String> {
    let Ok(read) = serde_json::from_str::<T>(text) else {
        return Ok(None);
    };
    let written = serde_json::to_string(&read).map_err(|why| format!("not written: {why}"))?;
    let second = serde_json::from_str::<T>(&written);
    let second = second.map_err(|why| format!("not read back: {why}\n{written}"))?;
    let twice = serde_json::to_string(&second).map_err(|why| why.to_string())?;
    if twice == written {
        Ok(Some(read))
    } else {
        Err(format!("reads back as another\n{written}\n{twice}"))
    }
}

/// Every request and answer that the library keeps for its readers.
pub fn seeds() -> Vec<Vec<u8>> {
    let root = concat!(env!("CARGO_MANIFEST_DIR"), "/../..");
    let mut seeds = Vec::new();
    for folder in ["examples/data", "tests/data/format_1"] {
        let files =
            std::fs::read_dir(format!("{root}/{folder}")).expect("the folder of the examples");
        let mut files: Vec<_> = files.filter_map(|file| Some(file.ok()?.path())).collect();
        files.sort();
        for file in files {
            let name = file.to_string_lossy();
            if name.ends_with(".json") && !name.ends_with(".schema.json") {
                seeds.push(std::fs::read(&file).expect("a file of the examples"));
            }
        }
    }
    let cases = std::fs::read_to_string(format!("{root}/tests/data/whole_joints.toml"))
        .expect("whole joints");
    let cases: Value = toml::from_str(&cases).expect("cases in TOML");
    for case in cases["case"].as_array().into_iter().flatten() {
        seeds.push(case["joint"].to_string().into_bytes());
    }
    seeds
}

type Place = Vec<String>;

fn walk(own: &Value, place: &mut Place, found: &mut Vec<Place>) {
    found.push(place.clone());
    let children: Vec<(String, &Value)> = match own {
        Value::Object(of) => of.iter().map(|(key, own)| (key.clone(), own)).collect(),
        Value::Array(of) => of
            .iter()
            .enumerate()
            .map(|(at, own)| (at.to_string(), own))
            .collect(),
        _ => return,
    };
    for (key, own) in children {
        place.push(key);
        walk(own, place, found);
        place.pop();
    }
}

fn all_places(document: &Value) -> Vec<Place> {
    let mut found = Vec::new();
    walk(document, &mut Vec::new(), &mut found);
    found
}

/// A document with a few of its values changed, taken away, doubled or taken from another document.
pub fn mutate(own: &[u8], others: &[Vec<u8>], random: &mut Random) -> Vec<u8> {
    let Ok(mut document) = serde_json::from_slice::<Value>(own) else {
        return texts::change_bytes(own, others, random);
    };
    if random.once_in(12) {
        return texts::change_bytes(own, others, random);
    }
    for _ in 0..=random.below(3) {
        let all = all_places(&document);
        let place = random.one(&all).clone();
        if let Some(changed) = another(&place, &mut document, others, random) {
            if let Some(own) = crate::places::at(&mut document, &place) {
                *own = changed;
            }
        }
    }
    document.to_string().into_bytes()
}

fn another(
    place: &[String],
    document: &mut Value,
    others: &[Vec<u8>],
    random: &mut Random,
) -> Option<Value> {
    let own = crate::places::at(document, place)?;
    match random.below(10) {
        // From the same place of another document, else from a place of the same name.
        0..=2 => {
            let mut other = serde_json::from_slice::<Value>(random.one::<Vec<u8>>(others)).ok()?;
            if let Some(same) = crate::places::at(&mut other, place) {
                return Some(same.take());
            }
            let all = all_places(&other);
            let alike: Vec<_> = all
                .iter()
                .filter(|own| own.last() == place.last())
                .collect();
            if alike.is_empty() {
                return None;
            }
            let from = (*random.one(&alike)).clone();
            crate::places::at(&mut other, &from).map(Value::take)
        }
        3 => {
            if !place.is_empty() {
                crate::places::remove(document, place);
            }
            None
        }
        4 => match own {
            Value::Object(fields) => {
                fields.insert("!unknown".into(), json!(1));
                None
            }
            Value::Array(list) => {
                let twice = list.clone();
                list.extend(twice);
                None
            }
            _ => Some(Value::Null),
        },
        5 => {
            let odd = [
                json!(null),
                json!([]),
                json!({}),
                json!(""),
                json!(0),
                json!(-1),
                json!(1e308),
                json!(5e-324),
                json!(true),
                json!("0 mm"),
                json!("1e308 mm"),
                json!("20 +/- 1 mm"),
                json!(u64::MAX),
                json!("\u{0}"),
            ];
            Some(random.one(&odd).clone())
        }
        _ => match own {
            Value::Number(number) => {
                let figure = number.as_f64()?;
                let times = 10_f64.powf(random.hundredths(0, 400) - 2.0);
                let figure = if random.once_in(20) {
                    figure * 1e30 * times
                } else {
                    figure * times
                };
                Some(if number.is_u64() && random.once_in(2) {
                    json!(random.below(9))
                } else {
                    json!(figure)
                })
            }
            Value::String(text) => {
                // A quantity with another number, or with a tolerance.
                let end = text.find(|c: char| !c.is_ascii_digit() && c != '.')?;
                let figure: f64 = text[..end].parse().ok()?;
                let figure = figure * 10_f64.powf(random.hundredths(0, 400) - 2.0);
                Some(json!(format!("{figure}{}", &text[end..])))
            }
            Value::Object(fields) => {
                // Fields in another place.
                let mut less = Map::new();
                for (key, own) in fields.iter() {
                    if !random.once_in(6) {
                        less.insert(key.clone(), own.clone());
                    }
                }
                Some(less.into())
            }
            _ => None,
        },
    }
}
