//! Pictures of joints: nothing lies on anything else, nothing leaves the page, numbers are those of the assembly, and every
//! reader of XML or DXF understands them.
#![cfg(all(feature = "drawing", feature = "serde"))]

#[path = "../support/verdicts.rs"]
mod verdicts;

mod connections;
mod dxf;
mod joints;
mod kept;
mod patterns;
mod pictures;
mod svg;
