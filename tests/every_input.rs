//! Every object that is read, wherever it stands in a document: a field that it does not have is refused by name, and
//! so is a list in its place, which would be taken field after field (and an empty one for an object of defaults:
//! `"load": []` for no load).
//!
//! The objects are found in the JSON schemas of what is read, which are derived where the reading is. A document on the
//! way to such an object has nothing but that way in it: what is missing is told last. Types that are in no document are
//! held by `tests/serde.rs`, which looks for the two words of serde in the sources.
#![cfg(feature = "schema")]

use std::collections::BTreeSet;

use schemars::{JsonSchema, generate::SchemaSettings};
use serde_json::{Map, Value, json};
use shankline::connection::Connection;
use shankline::joint::{DesignReport, DesignSpace, Joint, LengthReport, Report};

/// No type has such a field, and it comes first in every object.
const UNKNOWN: &str = "!unknown";

/// One step from the root of a document: a key, with what else its object must say to be told from its like; or an element.
#[derive(Clone)]
enum Step {
    Key(String, Map<String, Value>),
    Element,
}

/// An object of a document.
struct Spot {
    way: Vec<Step>,
    /// What tells it from its like, such as `"form": "linear"`.
    marks: Map<String, Value>,
    /// Whether a list may stand in its place as well.
    or_list: bool,
}

impl Spot {
    fn document(&self, inside: Value) -> Value {
        self.way
            .iter()
            .rev()
            .fold(inside, |inside, step| match step {
                Step::Element => json!([inside]),
                Step::Key(key, marks) => {
                    let mut object = marks.clone();
                    object.insert(key.clone(), inside);
                    object.into()
                }
            })
    }

    fn name(&self) -> String {
        let steps = self.way.iter().map(|step| match step {
            Step::Element => "/*".into(),
            Step::Key(key, _) => format!("/{key}"),
        });
        steps.collect()
    }
}

struct Walk<'a> {
    root: &'a Value,
    /// Definitions that were walked: one way to each type is enough.
    walked: BTreeSet<String>,
    spots: Vec<Spot>,
}

impl Walk<'_> {
    /// What may stand at one place, alternatives laid side by side.
    fn alternatives<'v>(
        &'v self,
        schema: &'v Value,
        found: &mut Vec<(Option<String>, &'v Value)>,
        of: Option<String>,
    ) {
        if let Some(name) = schema["$ref"].as_str() {
            let target = self.root.pointer(&name[1..]).expect("a definition");
            // A definition that only lists others stands for them.
            self.alternatives(target, found, Some(name.to_owned()));
            return;
        }
        let lists = ["anyOf", "oneOf", "allOf"];
        for own in lists
            .iter()
            .filter_map(|key| schema[*key].as_array())
            .flatten()
        {
            let of = of.as_ref().map(|name| format!("{name} {own}"));
            self.alternatives(own, found, of);
        }
        found.push((of, schema));
    }

    fn place(&mut self, schema: &Value, way: &[Step]) {
        let root = self.root;
        let mut found = Vec::new();
        let finder = Walk {
            root,
            walked: BTreeSet::new(),
            spots: Vec::new(),
        };
        finder.alternatives(schema, &mut found, None);
        let or_list = found.iter().any(|(_, one)| one["type"] == "array");
        for (name, one) in found {
            if name.is_some_and(|name| !self.walked.insert(name)) {
                continue;
            }
            if one.get("items").is_some() {
                self.place(&one["items"], &[way, &[Step::Element]].concat());
            }
            let Some(fields) = one["properties"].as_object() else {
                continue;
            };
            let marks: Map<String, Value> = fields
                .iter()
                .filter_map(|(key, field)| Some((key.clone(), field.get("const")?.clone())))
                .collect();
            self.spots.push(Spot {
                way: way.to_vec(),
                marks: marks.clone(),
                or_list,
            });
            for (key, field) in fields {
                self.place(
                    field,
                    &[way, &[Step::Key(key.clone(), marks.clone())]].concat(),
                );
            }
        }
    }
}

/// How many objects a document of this kind may have in it.
fn refuse_everywhere<T: JsonSchema + serde::de::DeserializeOwned>() -> usize {
    let settings = SchemaSettings::draft2020_12().for_deserialize();
    let schema = settings.into_generator().into_root_schema_for::<T>();
    let root = schema.as_value();
    let mut walk = Walk {
        root,
        walked: BTreeSet::new(),
        spots: Vec::new(),
    };
    walk.place(root, &[]);
    for spot in &walk.spots {
        let why = |inside: Value| {
            let document = spot.document(inside);
            let read = serde_json::from_value::<T>(document.clone()).err();
            let error = read.unwrap_or_else(|| panic!("{} is read: {document}", spot.name()));
            (document, error.to_string())
        };
        let mut more = spot.marks.clone();
        more.insert(UNKNOWN.into(), json!(1));
        let (document, message) = why(more.into());
        assert!(
            message.contains(UNKNOWN),
            "{}: {document}: {message}",
            spot.name()
        );
        for list in [json!([]), json!([1]), json!(vec!["1 mm"; 12])] {
            if spot.or_list {
                continue;
            }
            let (document, message) = why(list);
            let told = message.contains("a list stands where")
                || message.contains("invalid type: sequence");
            assert!(told, "{}: {document}: {message}", spot.name());
        }
    }
    walk.spots.len()
}

#[test]
fn no_unknown_field_and_no_list_is_taken() {
    let found = [
        refuse_everywhere::<Joint>(),
        refuse_everywhere::<DesignSpace>(),
        refuse_everywhere::<Connection>(),
        refuse_everywhere::<Report>(),
        refuse_everywhere::<LengthReport>(),
        refuse_everywhere::<DesignReport>(),
    ];
    println!("{found:?}");
    // Fewer would mean that the walk has lost its way.
    let least = [90, 10, 100, 20, 8, 30];
    assert!(
        found
            .iter()
            .zip(least)
            .all(|(found, least)| *found >= least),
        "{found:?}"
    );
}
