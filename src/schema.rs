//! JSON Schema (feature `schema`) of what is not written as its Rust type: quantities, tolerances, names.

use alloc::{borrow::Cow, format, string::String, vec::Vec};
use core::marker::PhantomData;

use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};

use crate::error::Amount;
use crate::names::Key;
use crate::names::{BoltGrade, NutGrade};
use crate::spread::Spread;
use crate::units::{Dimension, Measured, text, written_units};

/// What a quantity is in data files: for `#[schemars(with = "crate::schema::Quantity<Length>")]`.
pub(crate) struct Quantity<Q>(PhantomData<Q>);

/// A number as [`parse`](crate::units::parse) reads it: a decimal, a fraction, a mixed number.
const NUMBER: &str = r"(?:[-+]?(?:\d+\.?\d*|\.\d+)|(?:\d+ *[- ])?\d+/ *0*[1-9]\d*)";

/// The same without a sign in front, as the second and third number of a tolerance are.
const UNSIGNED: &str = r"(?:\d+\.?\d*|\.\d+|(?:\d+ *[- ])?\d+/ *0*[1-9]\d*)";

fn article(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Area | Dimension::Angle | Dimension::Potential => "An",
        _ => "A",
    }
}

/// Text of one quantity.
fn one(dimension: Dimension) -> String {
    let unit = text::unit_pattern(dimension);
    format!(r"^\s*{NUMBER}\s*{unit}\s*$")
}

/// Text of a quantity with a tolerance; a unit stands behind one number at least.
fn with_tolerance(dimension: Dimension) -> String {
    let unit = text::unit_pattern(dimension);
    let (n, m, may) = (NUMBER, UNSIGNED, format!(r"(?:{unit})?"));
    let plus_minus =
        format!(r"(?:{n}\s*{unit}\s*(?:\+/-|±)\s*{m}\s*{may}|{n}\s*(?:\+/-|±)\s*{m}\s*{unit})");
    let minus = r"(?:\s*/\s*| )[-−]\s*";
    let two_sides = format!(
        r"(?:{n}\s*{unit}\s*\+\s*{m}\s*{may}{minus}{m}\s*{may}|{n}\s*\+\s*{m}\s*(?:{unit}{minus}{m}\s*{may}|{minus}{m}\s*{unit}))"
    );
    format!(r"^\s*(?:{plus_minus}|{two_sides})\s*$")
}

/// Value and unit.
fn object(dimension: Dimension) -> Schema {
    let unit = text::unit_pattern(dimension);
    let examples: Vec<&str> = text::unit_names(dimension).collect();
    json_schema!({
        "type": "object",
        "properties": {
            "value": { "type": "number" },
            "unit": { "type": "string", "pattern": format!(r"^{unit}$"), "examples": examples }
        },
        "required": ["value", "unit"],
        "additionalProperties": false
    })
}

/// Value and unit as answers have them: the unit is always the same but for values beyond its range.
fn written(dimension: Dimension) -> Schema {
    let units: Vec<&str> = written_units(dimension).collect();
    json_schema!({
        "description": format!("{} {dimension}: value and unit.", article(dimension)),
        "type": "object",
        "properties": {
            "value": { "type": "number" },
            "unit": { "enum": units }
        },
        "required": ["value", "unit"],
        "additionalProperties": false
    })
}

fn name_of(prefix: &str, dimension: Dimension) -> Cow<'static, str> {
    format!("{prefix}{dimension}").replace(' ', "_").into()
}

impl<Q: Measured> JsonSchema for Quantity<Q> {
    fn schema_name() -> Cow<'static, str> {
        name_of("", Q::DIMENSION)
    }

    fn schema_id() -> Cow<'static, str> {
        name_of("shankline::quantity::", Q::DIMENSION)
    }

    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        if generator.contract().is_serialize() {
            return written(Q::DIMENSION);
        }
        json_schema!({
            "description": format!("{} {} with its unit, such as {}.", article(Q::DIMENSION), Q::DIMENSION, Q::DIMENSION.examples()),
            "anyOf": [{ "type": "string", "pattern": one(Q::DIMENSION) }, object(Q::DIMENSION)]
        })
    }
}

impl<Q: Measured> JsonSchema for Spread<Q> {
    fn schema_name() -> Cow<'static, str> {
        name_of("toleranced_", Q::DIMENSION)
    }

    fn schema_id() -> Cow<'static, str> {
        name_of("shankline::spread::", Q::DIMENSION)
    }

    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        let one = generator.subschema_for::<Quantity<Q>>();
        let limits = json_schema!({
            "description": "Least, nominal and greatest value.",
            "type": "object",
            "properties": { "min": one, "nominal": one, "max": one },
            "required": ["min", "nominal", "max"],
            "additionalProperties": false
        });
        if generator.contract().is_serialize() {
            return limits;
        }
        json_schema!({
            "description": format!("{} {} with its tolerance: text such as \"20 mm\" or \"20 mm +0.1/-0.2\" in units of its kind, or an object.", article(Q::DIMENSION), Q::DIMENSION),
            "anyOf": [
                one,
                { "type": "string", "pattern": with_tolerance(Q::DIMENSION) },
                limits,
                {
                    "type": "object",
                    "properties": { "nominal": one, "plus_minus": one },
                    "required": ["nominal", "plus_minus"],
                    "additionalProperties": false
                }
            ]
        })
    }
}

impl JsonSchema for Amount {
    fn schema_name() -> Cow<'static, str> {
        "amount".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "description": "A quantity of any kind, or a number without a unit.",
            "anyOf": [
                { "type": "number" },
                {
                    "type": "object",
                    "properties": { "value": { "type": "number" }, "unit": { "type": "string" } },
                    "required": ["value", "unit"],
                    "additionalProperties": false
                }
            ]
        })
    }
}

/// A mass as answers have it.
pub(crate) struct Kilograms;

impl JsonSchema for Kilograms {
    fn schema_name() -> Cow<'static, str> {
        "mass".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "description": "A mass: value and unit.",
            "type": "object",
            "properties": { "value": { "type": "number" }, "unit": { "enum": ["kg"] } },
            "required": ["value", "unit"],
            "additionalProperties": false
        })
    }
}

/// Codes to complete from, and any other name that [`Key::read`] takes.
pub(crate) fn named<K: Key>(description: &str, generator: &SchemaGenerator) -> Schema {
    let codes: Vec<&str> = K::ALL.iter().map(|key| key.code()).collect();
    let codes = json_schema!({ "enum": codes });
    if generator.contract().is_serialize() {
        return json_schema!({ "description": description, "type": "string" });
    }
    json_schema!({
        "description": description,
        "anyOf": [codes, { "type": "string", "pattern": "[A-Za-z0-9]" }]
    })
}

macro_rules! names {
    ($($key:ty, $name:literal, $description:literal;)*) => {$(
        impl JsonSchema for $key {
            fn schema_name() -> Cow<'static, str> {
                $name.into()
            }

            fn json_schema(generator: &mut SchemaGenerator) -> Schema {
                named::<$key>($description, generator)
            }
        }
    )*};
}
names! {
    BoltGrade, "BoltGrade", "A bolt grade by its code or name.";
    NutGrade, "NutGrade", "A nut grade by its code or name.";
}

/// The joint in a report: it has a schema of its own, which that of the report does not repeat.
pub(crate) struct AskedJoint;

impl JsonSchema for AskedJoint {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> Cow<'static, str> {
        "AskedJoint".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "type": "object",
            "required": ["title", "bolt", "stack", "pattern", "load", "environment", "rules", "methods"],
        })
    }
}
