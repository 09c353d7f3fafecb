//! JSON Schema of what is not written as its Rust type: listed parts or own ones, methods, values in a report.

use alloc::{borrow::Cow, format};

use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};

use crate::joint::data::ListedOr;
use crate::joint::{Datum, JointMaterial, JointMethods, JointTimber, OwnMaterial, OwnTimber};
use crate::names::Key;
use crate::schema::named;
use crate::tables::{plies::PlyMaterial, timber::Timber};

impl JsonSchema for Datum {
    fn schema_name() -> Cow<'static, str> {
        "Datum".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({ "description": "Any value: which ones, the code beside it says." })
    }
}

/// A listed one by its name, or one of a caller's own as an object. A name that no table has is told by the check, and
/// not by the reader of the file.
fn listed_or_own<K: Key, O: JsonSchema>(
    description: &str,
    generator: &mut SchemaGenerator,
) -> Schema {
    let listed = named::<K>("One of the tables by its code or name.", generator);
    let own = generator.subschema_for::<O>();
    json_schema!({ "description": description, "anyOf": [listed, own] })
}

impl JsonSchema for JointMaterial {
    fn schema_name() -> Cow<'static, str> {
        "JointMaterial".into()
    }

    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        listed_or_own::<&'static PlyMaterial, OwnMaterial>("What a ply is made of.", generator)
    }
}

impl JsonSchema for JointTimber {
    fn schema_name() -> Cow<'static, str> {
        "JointTimber".into()
    }

    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        listed_or_own::<&'static Timber, OwnTimber>("The timber of a ply.", generator)
    }
}

impl<L: JsonSchema, O: JsonSchema> JsonSchema for ListedOr<L, O> {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> Cow<'static, str> {
        format!("{}_or_{}", L::schema_name(), O::schema_name()).into()
    }

    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        let listed = generator.subschema_for::<L>();
        let own = generator.subschema_for::<O>();
        json_schema!({ "anyOf": [listed, own] })
    }
}

/// Methods by the name of their set, or in full.
pub(crate) struct Methods;

impl JsonSchema for Methods {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> Cow<'static, str> {
        "Methods".into()
    }

    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        let full = generator.subschema_for::<JointMethods>();
        json_schema!({ "anyOf": [{ "enum": JointMethods::NAMES }, full] })
    }
}
