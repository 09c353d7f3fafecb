//! Joints as documents: what stands where, taking it away, making it more; which facts a joint may be silent about
//! without falling silent itself.

use serde_json::Value;
use shankline::joint::Joint;
use shankline::units::newtons;

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

/// What may be left out without the verdict having to fall silent, by path, each with its reason. To leave any of
/// these out asks about another joint, or about the same with a standing rule in place of the fact. Elements of lists
/// are parts, and are not told apart here: a joint without them is another joint.
const ANOTHER_QUESTION: &[(&str, &str)] = &[
    ("bolt.length", "the best length is looked for: another bolt"),
    (
        "stack.washers_under_head",
        "no washers there: another stack",
    ),
    ("stack.washers_under_nut", "no washers there: another stack"),
    (
        "stack.washers_under_head.*.thickness",
        "as thick as its style has it: another washer",
    ),
    (
        "stack.washers_under_nut.thickness",
        "as thick as its style has it: another washer",
    ),
    (
        "stack.other_washers_under_nut.*.thickness",
        "as thick as its style has it: another washer",
    ),
    (
        "stack.washer_to_add_under_head.thickness",
        "as thick as its style has it: another washer",
    ),
    (
        "stack.other_washers_under_nut",
        "no washers there: another stack",
    ),
    (
        "stack.washer_to_add_under_head",
        "none to add: another stack",
    ),
    ("stack.gaps", "plies that touch: another stack"),
    ("stack.sleeves", "no sleeve: another stack"),
    ("stack.head_seat", "a flat seat: another part"),
    ("stack.spot_face_under_nut", "a flat seat: another part"),
    (
        "stack.tapped_part.counterbore",
        "thread from the face on: another part",
    ),
    (
        "stack.tapped_part.lock",
        "no lock: another screw, which may do where nothing shakes",
    ),
    ("stack.plies.*.crush", "a hard ply: another part"),
    ("stack.plies.*.slot", "a round hole: another part"),
    (
        "stack.plies.*.pull",
        "the planes are loaded alike: another load on the same parts",
    ),
    (
        "rules.protrusion_max_pitches",
        "no such limit is set: another rule",
    ),
    (
        "rules.washers_under_head_max",
        "no such limit is set: another rule",
    ),
    ("rules.washers_max", "no such limit is set: another rule"),
    (
        "rules.thread_in_holes_max_pitches",
        "no such limit is set: another rule",
    ),
    (
        "rules.end_not_counted_pitches",
        "chamfers count: another rule",
    ),
    (
        "tightening.torque.settling",
        "left to the relaxation, which is then the whole loss",
    ),
    (
        "tightening.torque.relaxation",
        "left to the settling, which is then the whole loss; without both nothing is decided",
    ),
    (
        "tightening.torque.prevailing",
        "measured on each nut and added: a thing to do",
    ),
    ("tightening.torque.stiffness", "worked out from the parts"),
];

/// Distances that machine design asks for only where a load across wants them; given, they are held against geometry.
const OF_A_LOAD_ACROSS: [&str; 5] = ["end_distance", "edge_distance", "pitch", "gauge", "width"];

/// Whether leaving out what stands at this place asks about another joint, or under another standing rule.
pub fn is_another_question(joint: &Joint, path: &[String]) -> bool {
    // Where nothing is sheared, planes say only where shank has to be: a rule for the length.
    if is_like(path, "stack.shear_planes") && joint.load.across == newtons(0.0) {
        return true;
    }
    let distance = path
        .last()
        .is_some_and(|last| OF_A_LOAD_ACROSS.contains(&last.as_str()));
    if distance && joint.load.across == newtons(0.0) {
        return true;
    }
    let element = path
        .last()
        .is_some_and(|last| last.parse::<usize>().is_ok());
    element || ANOTHER_QUESTION.iter().any(|(own, _)| is_like(path, own))
}
