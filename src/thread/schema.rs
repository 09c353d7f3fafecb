//! JSON Schema of a thread.

use alloc::borrow::Cow;

use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};

use super::Thread;

impl JsonSchema for Thread {
    fn schema_name() -> Cow<'static, str> {
        "Thread".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "description": "A thread by its designation.",
            "type": "string",
            "pattern": r"\d",
            "examples": ["M12", "M20x1.5", "3/4-10 UNC"]
        })
    }
}
