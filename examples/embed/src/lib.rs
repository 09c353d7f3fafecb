//! A door to `shankline` for programs in C, C++ and Python and for a page in a browser: a question by name and a JSON document
//! in, a document out. The same source makes the shared library, the static library and the module for a browser.
//!
//! | file | holds |
//! |---|---|
//! | `questions.rs` | [`answer`]: the questions, and how those are answered that everybody asks |
//! | `reports.rs`, `pictures.rs`, `design.rs`, `connections.rs` | the others, each a feature of its own |
//! | `catalogue.rs`, `rows.rs` | the lists to choose from; the rows of the tables |
//! | `sweep.rs` | [`sweep()`]: one joint under many load cases, as numbers and not as JSON |
//! | `refusal.rs`, `place.rs` | [`Refusal`]: why there is no answer, as a document; [`Place`]: in which field, line and column |
//! | `door.rs` | the functions of `shankline.h`, and all of the unsafe code |

pub mod door;

mod catalogue;
#[cfg(feature = "connections")]
mod connections;
#[cfg(feature = "design")]
mod design;
#[cfg(feature = "pictures")]
mod pictures;
mod place;
mod questions;
mod refusal;
#[cfg(feature = "reports")]
mod reports;
#[cfg(feature = "tables")]
mod rows;
mod sweep;

pub use place::Place;
pub use questions::{QUESTIONS, answer};
pub use refusal::Refusal;
pub use sweep::{Answers, Cases, sweep};

/// The number of the interface, `SHANKLINE_INTERFACE` of the header: a caller compares it before anything else.
///
/// It rises when a function, the layout of a struct, the name of a question or the meaning of a field in a request changes
/// or goes. It stays when questions, functions, optional fields of requests or fields of answers are added. The documents of
/// the library have a number of their own, `format`.
pub const INTERFACE: u32 = 1;
