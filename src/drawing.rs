//! Pictures of joints, as SVG and DXF (feature `drawing`).
//!
//! | question | begins at |
//! |---|---|
//! | what the joint looks like, and where shank, run-out and thread lie in the worst case | [`section`] |
//! | how far each check is used, what is at fault, what is not checked | [`utilisation`] |
//! | why this length and not another | [`lengths`] |
//! | what bolt and plies carry of a load along the bolt | [`joint_diagram`] |
//! | where the bolts of a connection stand, and what comes to each of them | [`pattern`] |
//! | the section or the pattern for a drawing program, 1 to 1 | [`section_dxf`], [`pattern_dxf`] |
//! | a picture of one's own with the same lines and labels | [`Drawing`] |
//!
//! ```
//! use shankline::drawing;
//! use shankline::prelude::*;
#![doc = include_str!("joint/whole/example.txt")]
//! let verdict = joint.check()?;
//! let assembly = joint.assembly(&verdict.candidate)?;
//! let svg = drawing::section(&assembly, Some(&verdict), UnitSystem::Si).svg();
//! let dxf = drawing::section_dxf(&assembly, UnitSystem::Si);
//! assert!(svg.starts_with("<svg ") && dxf.ends_with("EOF\n"));
//! # Ok(())
//! # }
//! ```
//!
//! Every picture is plain text, the same on every machine, without fonts, styles or scripts from elsewhere. It has a title
//! and a description for screen readers, follows the light or dark scheme of the reader, and tells nothing by colour alone.
//! Labels are laid out by widths estimated from above, so that none lies on another whatever typeface the reader has.
//!
//! A picture is no check. The section shows nominal sizes and the worst case of the length; what the joint carries is
//! in the [`Verdict`](crate::joint::Verdict), whose word stands on every picture that is made from one.

mod bars;
mod canvas;
mod diagram;
mod dxf;
mod fasteners;
mod holes;
mod kinds;
mod legend;
mod lengths;
mod number;
mod page;
mod pattern;
mod pattern_dxf;
mod pattern_tables;
mod plan;
mod plan_loads;
mod plan_sizes;
mod room;
mod section;
mod shapes;
mod strip;
mod svg;
mod text;

pub use bars::utilisation;
pub use canvas::{Drawing, spread_out};
pub use diagram::joint_diagram;
pub use dxf::section_dxf;
pub use kinds::{Anchor, Fill, Label, Line};
pub use lengths::lengths;
pub use pattern::pattern;
pub use pattern_dxf::pattern_dxf;
pub use section::section;
pub use text::Style;
