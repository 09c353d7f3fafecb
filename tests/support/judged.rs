//! The judged joints of `tests/data/judged`, read. The file that uses it has `mod support;` beside it.
#![allow(dead_code)] // each test file uses its own part

use std::collections::BTreeMap;
use std::fs;

use serde::Deserialize;
use serde_json::Value;

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct File {
    pub base: BTreeMap<String, Value>,
    pub case: Vec<Case>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Case {
    pub name: String,
    pub base: String,
    #[serde(default)]
    pub set: BTreeMap<String, Value>,
    #[serde(default)]
    pub remove: Vec<String>,
    #[serde(default)]
    pub word: Option<String>,
    #[serde(default)]
    pub mode: Option<String>,
    #[serde(default)]
    pub place: Option<String>,
    #[serde(default)]
    pub utilisation: Option<f64>,
    #[serde(default)]
    pub fault: Option<String>,
    #[serde(default)]
    pub missing: Vec<String>,
    #[serde(default)]
    pub error: Option<String>,
    pub hand: Vec<String>,
    pub source: String,
}

/// A joint described in a file, its cases still to be set.
pub fn document(file: &File, case: &Case) -> Value {
    let base = file.base.get(&case.base);
    let mut joint = base
        .unwrap_or_else(|| panic!("{}: no base {}", case.name, case.base))
        .clone();
    for (path, value) in &case.set {
        set(&mut joint, path, value.clone());
    }
    for path in &case.remove {
        assert!(remove(&mut joint, path), "{}: nothing at {path}", case.name);
    }
    joint
}

fn step<'a>(at: &'a mut Value, key: &str) -> &'a mut Value {
    match key.parse::<usize>() {
        Ok(index) => at
            .get_mut(index)
            .unwrap_or_else(|| panic!("no element {index}")),
        Err(_) => at
            .as_object_mut()
            .unwrap_or_else(|| panic!("{key} of something that is no object"))
            .entry(key)
            .or_insert(Value::Object(serde_json::Map::new())),
    }
}

fn set(joint: &mut Value, path: &str, value: Value) {
    let place = path.split('.').fold(joint, step);
    *place = value;
}

fn remove(joint: &mut Value, path: &str) -> bool {
    let (parent, last) = path.rsplit_once('.').unwrap_or(("", path));
    let place = parent
        .split('.')
        .filter(|key| !key.is_empty())
        .fold(joint, step);
    match last.parse::<usize>() {
        Ok(index) => {
            let items = place.as_array_mut().unwrap();
            let there = index < items.len();
            if there {
                items.remove(index);
            }
            there
        }
        Err(_) => place.as_object_mut().unwrap().remove(last).is_some(),
    }
}

pub fn files() -> Vec<(String, File)> {
    let folder = super::support::repository("tests/data/judged");
    let mut files: Vec<_> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|end| end == "toml"))
        .collect();
    files.sort();
    files
        .into_iter()
        .map(|path| {
            let text = fs::read_to_string(&path).unwrap();
            let name = path.display().to_string();
            let file = toml::from_str(&text).unwrap_or_else(|e| panic!("{name}: {e}"));
            (name, file)
        })
        .collect()
}
