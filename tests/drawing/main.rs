//! Pictures of joints: nothing lies on anything else, nothing leaves the page, numbers are those of the assembly, and every
//! reader of XML or DXF understands them.
#![cfg(all(feature = "drawing", feature = "serde"))]

mod joints;
mod pictures;
