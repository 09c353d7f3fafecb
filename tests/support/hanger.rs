//! A joint for the search for a design, as a document to be changed.

use serde_json::{Value, json};
use shankline::joint::{Environment, Joint, JointMethods};
use shankline::prelude::*;

/// A hanger of a playground beam, M12, with all that a verdict asks for; loads invented.
pub fn hanger() -> Value {
    let zinc = json!({ "zinc_plated": { "baked": false } });
    let ply = |name: &str| {
        json!({
            "name": name, "thickness": "15 +/- 0.3 mm", "material": "ASTM A36 steel", "hole": "18 mm",
            "end_distance": "40 mm", "edge_distance": "40 mm", "width": "80 mm",
        })
    };
    json!({
        "title": "hanger (invented)",
        "bolt": { "product": "iso_4014", "thread": "M12", "grade": "ISO 898-1 class 8.8", "finish": zinc },
        "nut": { "style": "iso_4032", "finish": zinc },
        "stack": { "plies": [ply("plate"), ply("beam")], "shear_planes": [1] },
        "pattern": "single",
        "load": { "across": "5 kN", "along": "0 N", "repeats": "never", "shock_factor": 1.0 },
        "environment": serde_json::to_value(Environment::workshop()).unwrap(),
        "tightening": "snug",
        "rules": serde_json::to_value(LengthRules::fabrication(UnitSystem::Si)).unwrap(),
        "methods": serde_json::to_value(JointMethods::machine_design(2.0)).unwrap(),
    })
}

pub fn joint(value: &Value) -> Joint {
    serde_json::from_value(value.clone()).unwrap()
}
