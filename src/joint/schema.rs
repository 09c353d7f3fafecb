//! JSON Schema (draft 2020-12) of the documents that programs exchange with this crate (feature `schema`).
//!
//! | document | schema of | kept as |
//! |---|---|---|
//! | a joint to check | [`joint`] | `examples/data/joint.schema.json` |
//! | what a design may choose from | [`design_space`] | `examples/data/design_space.schema.json` |
//! | the answer to a joint | [`report`] | `examples/data/report.schema.json` |
//! | the answer to a length search | [`length_report`] | `examples/data/length_report.schema.json` |
//! | the answer to a design | [`design_report`] | `examples/data/design_report.schema.json` |
//!
//! An editor with such a schema completes and explains a request while it is typed; a form, a client or a check in front
//! of a service is made from it. Descriptions are the first paragraphs of the docs of the types.
//!
//! A schema knows names, kinds, units and what must be there, and no more: a document that passes can still be
//! refused for its sense (a grade that no table has, limits out of order, a nut on a tapped part). What it
//! refuses, the crate refuses too, but for spellings nobody needs, such as `{ "permitted": null }` for `"permitted"`.
//!
//! [`Joint`], [`DesignSpace`], [`Report`], [`LengthReport`] and [`DesignReport`] have [`schemars::JsonSchema`] themselves, for documents of your own with one
//! in them.
//!
//! ```
//! use shankline::joint::schema;
//! let text = schema::joint();
//! assert!(text.contains("https://json-schema.org/draft/2020-12/schema"));
//! ```

use alloc::{format, string::String};

use schemars::generate::SchemaSettings;
use schemars::transform::RecursiveTransform;
use schemars::{JsonSchema, Schema};

use super::{DesignReport, DesignSpace, Joint, LengthReport, Report};

mod parts;

pub(crate) use parts::Methods;

/// The names that [`named`] knows.
///
/// ```
/// use shankline::joint::schema;
/// assert!(schema::NAMES.iter().all(|name| schema::named(name).is_some()));
/// ```
pub const NAMES: [&str; 5] = [
    "joint",
    "design_space",
    "report",
    "length_report",
    "design_report",
];

/// The schema of that name; none for a name that is not in [`NAMES`].
///
/// ```
/// use shankline::joint::schema;
/// assert_eq!(schema::named("report"), Some(schema::report()));
/// assert_eq!(schema::named("bolt"), None);
/// ```
#[must_use]
pub fn named(name: &str) -> Option<String> {
    match name {
        "joint" => Some(joint()),
        "design_space" => Some(design_space()),
        "report" => Some(report()),
        "length_report" => Some(length_report()),
        "design_report" => Some(design_report()),
        _ => None,
    }
}

/// Schema of a [`Joint`] as it is read: parts by name or of one's own, rules and methods by name or in full, quantities
/// as text with a unit or as value and unit.
///
/// ```
/// use shankline::joint::schema;
/// assert!(schema::joint().contains("\"en_1090_preloaded\""));
/// ```
#[must_use]
pub fn joint() -> String {
    text_of::<Joint>(SchemaSettings::draft2020_12().for_deserialize())
}

/// Schema of a [`DesignSpace`] as it is read.
///
/// ```
/// use shankline::joint::schema;
/// assert!(schema::design_space().contains("\"utilisation_max\""));
/// ```
#[must_use]
pub fn design_space() -> String {
    text_of::<DesignSpace>(SchemaSettings::draft2020_12().for_deserialize())
}

/// Schema of a [`Report`] as it is written.
///
/// It is that of this version, and refuses other fields, as the reader of a [`Report`] does. A later version may add
/// some: see [`FORMAT`](super::FORMAT).
///
/// ```
/// use shankline::joint::schema;
/// assert!(schema::report().contains("\"does_not_hold\""));
/// ```
#[must_use]
pub fn report() -> String {
    text_of::<Report>(SchemaSettings::draft2020_12().for_serialize())
}

/// Schema of a [`LengthReport`] as it is written; see [`report`] for later versions.
///
/// ```
/// use shankline::joint::schema;
/// assert!(schema::length_report().contains("\"not_assessed\""));
/// ```
#[must_use]
pub fn length_report() -> String {
    text_of::<LengthReport>(SchemaSettings::draft2020_12().for_serialize())
}

/// Schema of a [`DesignReport`] as it is written; see [`report`] for later versions.
///
/// ```
/// use shankline::joint::schema;
/// assert!(schema::design_report().contains("\"ruled_out\""));
/// ```
#[must_use]
pub fn design_report() -> String {
    text_of::<DesignReport>(SchemaSettings::draft2020_12().for_serialize())
}

pub(crate) fn text_of<T: JsonSchema>(settings: SchemaSettings) -> String {
    let settings = settings.with_transform(RecursiveTransform(first_paragraph));
    let schema = settings.into_generator().into_root_schema_for::<T>();
    format!("{:#}\n", schema.as_value())
}

/// Docs are for those who write Rust: examples and errors have no place in a schema, nor have links.
fn first_paragraph(schema: &mut Schema) {
    let Some(docs) = schema.get("description").and_then(|docs| docs.as_str()) else {
        return;
    };
    let paragraph = docs.split("\n\n").next().unwrap_or_default();
    let plain = without_links(&paragraph.replace('\n', " "));
    schema.insert("description".into(), plain.into());
}

/// Markdown without the targets of its links: `[a](b)` is `a`, and so is `[a]`.
fn without_links(text: &str) -> String {
    let mut plain = String::new();
    let mut rest = text;
    while let Some((before, after)) = rest.split_once('[') {
        plain.push_str(before);
        let Some((name, after)) = after.split_once(']') else {
            rest = after;
            break;
        };
        plain.push_str(name);
        let target = after
            .strip_prefix('(')
            .and_then(|link| link.split_once(')'));
        rest = target.map_or(after, |(_, after)| after);
    }
    plain.push_str(rest);
    plain
}
