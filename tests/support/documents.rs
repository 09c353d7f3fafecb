//! Joints as documents: what stands where, taking it away, making it more.

use serde_json::Value;

/// Keys and indices from the root.
pub type Path = Vec<String>;

/// Every place of a document, keys of objects and elements of lists, that says something. Value and unit of a
/// quantity are one.
pub fn paths(document: &Value) -> Vec<Path> {
    let mut found = Vec::new();
    walk(document, &mut Vec::new(), &mut found);
    found
}

fn walk(at: &Value, path: &mut Path, found: &mut Vec<Path>) {
    let children: Vec<(String, &Value)> = match at {
        Value::Object(of) if of.contains_key("value") => return,
        Value::Object(of) => of.iter().map(|(key, own)| (key.clone(), own)).collect(),
        Value::Array(of) => (0..)
            .zip(of)
            .map(|(at, own): (usize, _)| (at.to_string(), own))
            .collect(),
        _ => return,
    };
    for (key, own) in children {
        if own.is_null() {
            continue;
        }
        path.push(key);
        found.push(path.clone());
        walk(own, path, found);
        path.pop();
    }
}

/// What stands at a place.
pub fn at<'a>(document: &'a mut Value, path: &[String]) -> Option<&'a mut Value> {
    path.iter().try_fold(document, |at, key| match at {
        Value::Array(of) => of.get_mut(key.parse::<usize>().ok()?),
        Value::Object(of) => of.get_mut(key),
        _ => None,
    })
}

/// Takes away what stands at a place.
pub fn remove(document: &mut Value, path: &[String]) {
    let (last, parent) = path.split_last().expect("the root stays");
    match at(document, parent) {
        Some(Value::Object(of)) => {
            of.remove(last);
        }
        Some(Value::Array(of)) => {
            let index: usize = last.parse().expect("elements are numbered");
            if index < of.len() {
                of.remove(index);
            }
        }
        _ => {}
    }
}

/// Multiplies a quantity, or each of the three of a spread; nothing where nothing stands.
pub fn scale(document: &mut Value, path: &str, times: f64) {
    let path: Path = path.split('.').map(str::to_string).collect();
    let Some(own) = at(document, &path) else {
        return;
    };
    if own.get("min").is_some() {
        for part in ["min", "nominal", "max"] {
            scale(own, part, times);
        }
    } else if let Some(Value::Number(value)) = own.get("value") {
        let value = value.as_f64().expect("a finite number") * times;
        own["value"] = value.into();
    }
}

/// Whether a path is one of a pattern, in which `*` is any one key or index.
pub fn is_like(path: &[String], pattern: &str) -> bool {
    let keys: Vec<&str> = pattern.split('.').collect();
    keys.len() == path.len()
        && keys
            .iter()
            .zip(path)
            .all(|(key, own)| *key == "*" || key == own)
}
